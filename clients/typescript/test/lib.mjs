// A sidecar that is started for a test, killed and started again; and a proxy that cuts what runs through it.

import { spawn, spawnSync } from 'node:child_process';
import { closeSync, mkdtempSync, openSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { connect, createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Client, new_request } from 'limbledger-client';
import WebSocket from 'ws';

const program = process.env.LIMBLEDGER_PROGRAM ?? fileURLToPath(new URL('../../../build/limbledger', import.meta.url));

export const carriers = ['websocket', 'http'];

export const make_ledger = (test, ...words) => {
  const scratch = mkdtempSync(join(tmpdir(), 'limbledger-client-'));
  test.after(() => rmSync(scratch, { recursive: true, force: true }));
  const ledger = join(scratch, 'ledger');
  writeFileSync(join(scratch, 'secret'), 'four words that fit\n', { mode: 0o600 });
  const secret = openSync(join(scratch, 'secret'), 'r');
  const made = spawnSync(program, ['new', ledger, ...words], { stdio: ['ignore', 'pipe', 'pipe', secret], encoding: 'utf8' });
  closeSync(secret);
  if (made.status !== 0) throw new Error(made.stderr);
  return ledger;
};

// Ends with the test; `kill` leaves sidecar.json behind, as a power cut does.
export const serve = async (test, ledger, ...words) => {
  const port = words.includes('--http') ? [] : ['--http', '0'];
  const child = spawn(program, ['serve', '--ledger', ledger, ...port, ...words], { stdio: ['ignore', 'ignore', 'pipe'] });
  const ended = new Promise((resolve) => child.on('close', resolve));
  const kill = (signal = 'SIGKILL') => {
    child.kill(signal);
    return ended;
  };
  test.after(() => kill());
  let said = '';
  await new Promise((resolve, reject) => {
    child.stderr.on('data', (part) => {
      said += part;
      if (/serving on \S+\n/.test(said) && (!words.includes('--once') || /#once=[\w-]+\n/.test(said))) resolve();
    });
    ended.then(() => reject(new Error(`the sidecar ended: ${said}`)));
  });
  return { kill, once: /#once=([\w-]+)/.exec(said)?.[1] };
};

export const sidecar_of = (ledger) => () => JSON.parse(readFileSync(join(ledger, 'sidecar.json'), 'utf8'));

export const client_of = (test, at, carrier, more = {}) => {
  const client = new Client({ at, carrier, WebSocket, ...more });
  test.after(() => client.close());
  return client;
};

export const open_exam = async (client) => {
  const { exam, revision } = await client.call('exam.open', { complaint: 'acute_knee', side: 'left', setting: 'outreach', request: new_request() });
  return { exam: exam.exam, revision };
};

// A finding of its own each time, told from the others by its text.
export const note = ({ exam, revision }, text) => ({
  exam, seen: revision, request: new_request(), findings: [{ item: 'history.own_words', side: 'midline', value: { kind: 'text', text }, beside: true }],
});

// Every one that was ever written: an exam as it stands shows equal values as one.
export const texts_of = async (client, exam) => {
  const { findings } = await client.call('finding.history', { exam, item: 'history.own_words', side: 'midline' });
  return (findings ?? []).map((one) => one.value.text).sort();
};

export const flexion = (deg, more = {}) => ({ item: 'knee.flexion_active', side: 'left', value: { kind: 'angle', toward_deg: deg }, instrument: 'goniometer_long', position: 'supine', ...more });

// Forwards to the sidecar, and cuts each connection after as many bytes as the next number of a fixed row says. Host has to name
// the sidecar's own port, so that is put in; both ports have five digits.
export const cutting_proxy = async (test, target, most_bytes) => {
  const { port: real } = new URL(target);
  let drawn = 20261126;
  let cuts = 0;
  const draw = () => {
    drawn = (Math.imul(drawn, 1103515245) + 12345) >>> 0;
    return (drawn >>> 8) % most_bytes;
  };
  const open = new Set();
  const server = createServer((near) => {
    const far = connect(Number(real), '127.0.0.1');
    let left = draw();
    const end = () => {
      for (const one of [near, far]) {
        one.destroy();
        open.delete(one);
      }
    };
    for (const [from, to] of [[near, far], [far, near]]) {
      open.add(from);
      from.on('error', end).on('close', end).on('data', (part) => {
        const bytes = from === near ? Buffer.from(part.toString('latin1').replace(`127.0.0.1:${server.address().port}`, `127.0.0.1:${real}`), 'latin1') : part;
        if (bytes.length < left) {
          left -= bytes.length;
          to.write(bytes);
        } else {
          cuts += 1;
          to.write(bytes.subarray(0, left), end);
          left = 0;
        }
      });
    }
  });
  await new Promise((resolve) => server.listen(0, '127.0.0.1', resolve));
  test.after(() => {
    server.close();
    for (const one of open) one.destroy();
  });
  return { at: (address) => address.replace(`:${real}/`, `:${server.address().port}/`), cuts: () => cuts };
};
