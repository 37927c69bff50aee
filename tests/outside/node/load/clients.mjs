// stage: outside
// As many clients as the program takes, half over HTTP and half over WebSocket, each in a closed loop: every fourth writes (an exam
// of its own, findings, a person), the others read and let judge. No call may fail. Then the same call of 8 clients is timed beside 8
// polite ones and beside 8 that are slow, half-open or rude, in turns: they may delay the others at most twice as much.
//   node clients.mjs      takes limbledger of $LIMBLEDGER_BUILD; LIMBLEDGER_LOAD_SECONDS is the time, 2 or by the full tier 60

import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { Agent, request as http_request } from 'node:http';
import { connect } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { randomUUID } from 'node:crypto';
import { Count } from '../lib/count.mjs';
import { open_exam, record_next, request } from '../lib/invented.mjs';
import { open_socket, serve } from '../lib/network.mjs';

const build = process.env.LIMBLEDGER_BUILD ?? fileURLToPath(new URL('../../../../build', import.meta.url));
const full = process.env.LIMBLEDGER_TIER === 'full';
const seconds = Number(process.env.LIMBLEDGER_LOAD_SECONDS ?? (full ? 60 : 2));
const clients_wanted = 64; // as many as health.check says may be connected
const program = join(build, 'limbledger');
const count = new Count();
const scratch = mkdtempSync(join(tmpdir(), 'limbledger-load-'));
const ledger = join(scratch, 'demo');
let server;

const result_of = (text) => {
  const { result, error } = JSON.parse(text);
  if (!result) throw new Error(JSON.stringify(error));
  return result;
};

const by_http = async (sidecar, token) => {
  const agent = new Agent({ keepAlive: true, maxSockets: 1 });
  const ask = (method, params) => new Promise((resolve, reject) => {
    const body = JSON.stringify(request(method, params));
    const sent = http_request(sidecar.http, { method: 'POST', agent, headers: { 'Content-Type': 'application/json', 'Content-Length': Buffer.byteLength(body), Authorization: `Bearer ${token}` } }, (response) => {
      const parts = [];
      response.on('data', (part) => parts.push(part));
      response.on('end', () => {
        try {
          resolve(result_of(Buffer.concat(parts).toString('utf8')));
        } catch (error) {
          reject(new Error(`${method}: ${response.statusCode} ${error.message}`));
        }
      });
    });
    sent.on('error', reject);
    sent.end(body);
  });
  return { ask, stop: async () => agent.destroy() };
};

const by_websocket = async (sidecar, token) => {
  const line = await open_socket(sidecar.websocket);
  let number = 0;
  const ask = async (method, params) => {
    const id = ++number;
    line.say(JSON.stringify(request(method, params, id)));
    for (;;) {
      const text = await line.next();
      if (text === undefined) throw new Error(`${method}: closed`);
      if (!text.startsWith('{"jsonrpc":"2.0","method":"ledger.changed"')) return result_of(text); // told unasked
    }
  };
  await ask('session.open', { token });
  return { ask, stop: () => line.close() };
};

// What one reader asks in turns.
const read_calls = (shared) => [
  ['health.check', {}], ['exam.read', { exam: shared.exam }], ['exam.assess', { exam: shared.exam }], ['person.find', { text: 'tuma' }], ['exam.find', { person: shared.person }],
  ['form.describe', { complaint: 'chronic_knee', minutes: 5 }], ['finding.history', { exam: shared.exam, item: 'knee.flexion_passive', side: 'left' }], ['note.write', { exam: shared.exam }],
  ['catalogue.read', { region: 'knee' }], ['changes.read', { cursor: shared.cursor }],
];

const percentile = (sorted, share) => sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))];
const milliseconds = (value) => `${value.toFixed(1)} ms`;

const mixed_load = async (sidecar, tokens, shared) => {
  const all = await Promise.all(Array.from({ length: clients_wanted }, (_, i) => (i % 2 ? by_websocket : by_http)(sidecar, i % 4 === 0 || i % 8 === 5 ? tokens[0] : tokens[1 + (i % (tokens.length - 1))])));
  const times = [];
  const failures = [];
  const until = Date.now() + seconds * 1000;
  const timed = (ask) => async (method, params) => {
    const start = performance.now();
    const result = await ask(method, params);
    times.push(performance.now() - start);
    return result;
  };
  await Promise.all(all.map(async ({ ask }, i) => {
    const calls = read_calls(shared);
    const writes = i % 4 === 0 || i % 8 === 5;
    let at;
    try {
      for (let turn = i; Date.now() < until; ++turn) {
        if (!writes) {
          await timed(ask)(...calls[turn % calls.length]);
        } else if (!at || at.number > 24) {
          const { person } = (await timed(ask)('person.register', { names: [{ text: `Invented ${i} ${turn}` }], sex: 'female', request: randomUUID() })).person;
          at = await open_exam(timed(ask), person);
        } else if (turn % 5 === 0) await timed(ask)('exam.assess', { exam: at.exam });
        else await record_next(timed(ask), at);
      }
    } catch (error) {
      failures.push(error.message);
    }
  }));
  await Promise.all(all.map(({ stop }) => stop()));
  times.sort((a, b) => a - b);
  console.log(`${clients_wanted} clients for ${seconds} s: ${times.length} calls, ${Math.round(times.length / seconds)} a second; half within ${milliseconds(percentile(times, 0.5))}, 99 % within ${milliseconds(percentile(times, 0.99))}`);
  count.note(`${clients_wanted} clients for ${seconds} s without an error`, failures.length === 0, failures.slice(0, 3).join('; '));
  count.note('every client came to its turn again and again', times.length >= clients_wanted * Math.min(seconds, 4), `${times.length} calls`);
};

// Eight that mean no harm: each with a token of its own asks, waits for its answer and asks again, and waits where it is told to.
const polite = async (sidecar, tokens) => {
  const all = await Promise.all(Array.from({ length: 8 }, (_, i) => (i % 2 ? by_websocket : by_http)(sidecar, tokens[i])));
  let on = true;
  const ended = Promise.all(all.map(async ({ ask, stop }) => {
    while (on) await ask('health.check', {}).catch(() => new Promise((resolve) => { setTimeout(resolve, 200); }));
    await stop();
  }));
  return async () => { on = false; await ended; };
};

// Eight that do harm, for as long as it lasts, and begin again when they are thrown out: half a head, a byte at a time, a body that
// never ends, answers that nobody reads, bytes that are no request, too much, half a WebSocket, and hello without a word.
const rude = async (sidecar) => {
  const { port } = new URL(sidecar.http);
  const host = `Host: 127.0.0.1:${port}\r\nContent-Type: application/json\r\n`;
  const call = JSON.stringify(request('health.check'));
  const acts = [
    (socket) => { socket.write(`POST /rpc HTTP/1.1\r\n${host.slice(0, 9)}`); },
    (socket) => {
      const text = `POST /rpc HTTP/1.1\r\n${host}Content-Length: ${call.length}\r\n\r\n${call}`;
      let at = 0;
      return setInterval(() => { socket.write(text[at % text.length]); at += 1; }, 5);
    },
    (socket) => { socket.write(`POST /rpc HTTP/1.1\r\n${host}Content-Length: 900000\r\n\r\n{`); },
    (socket) => {
      socket.pause();
      return setInterval(() => { socket.write(`POST /rpc HTTP/1.1\r\n${host}Content-Length: ${call.length}\r\n\r\n${call}`.repeat(4)); }, 10);
    },
    (socket) => { socket.write('\x16\x03\x01 nonsense\r\n\r\n'.repeat(100)); },
    (socket) => { socket.write(`POST /rpc HTTP/1.1\r\n${host}Content-Length: 9000000\r\n\r\n${'x'.repeat(1 << 20)}`); },
    (socket) => {
      socket.write(`GET /rpc HTTP/1.1\r\n${host}Upgrade: websocket\r\nConnection: Upgrade\r\nSec-WebSocket-Version: 13\r\nSec-WebSocket-Key: dGhlIHNhbXBsZSBub25jZQ==\r\n\r\n`);
      return setInterval(() => { socket.write(Buffer.from([0x01, 0x81, 0, 0, 0, 0, 0x7b])); }, 20);
    },
    () => {},
  ];
  let on = true;
  const open = new Set();
  const begin = (act) => {
    if (!on) return;
    const socket = connect(Number(port), '127.0.0.1');
    open.add(socket);
    let timer;
    socket.on('connect', () => { timer = act(socket); });
    socket.on('data', () => {});
    socket.on('error', () => {});
    socket.on('close', () => {
      clearInterval(timer);
      open.delete(socket);
      setTimeout(() => begin(act), 10);
    });
  };
  acts.forEach(begin);
  return async () => { on = false; for (const socket of open) socket.destroy(); };
};

// The middle time of one client's calls while the others do what they do.
const probed = async (sidecar, token, shared, beside) => {
  const end = await beside();
  const { ask, stop } = await by_http(sidecar, token);
  await new Promise((resolve) => { setTimeout(resolve, 50); });
  const times = [];
  for (let i = 0; i < (full ? 300 : 100); ++i) {
    const start = performance.now();
    await ask('exam.read', { exam: shared.exam });
    times.push(performance.now() - start);
  }
  await stop();
  await end();
  return times.sort((a, b) => a - b);
};

const manners = async (sidecar, tokens, shared) => {
  const middle = { alone: [], polite: [], rude: [] };
  for (let round = 0; round < (full ? 9 : 3); ++round) {
    for (const [name, beside] of [['alone', async () => async () => {}], ['polite', () => polite(sidecar, tokens.slice(1, 9))], ['rude', () => rude(sidecar)]]) {
      // In turns, so that a fast machine does not ask more of one token than a second allows.
      middle[name].push(percentile(await probed(sidecar, tokens[9 + (round % 4)], shared, beside), 0.5));
    }
  }
  const [alone, calm, harm] = ['alone', 'polite', 'rude'].map((name) => percentile(middle[name].sort((a, b) => a - b), 0.5));
  console.log(`one call takes ${milliseconds(alone)} alone, ${milliseconds(calm)} beside 8 polite clients, ${milliseconds(harm)} beside 8 rude ones`);
  count.note('8 slow, half-open and rude clients delay the others at most twice as much as 8 polite ones', harm <= 2 * calm, `${milliseconds(harm)} against ${milliseconds(calm)}`);
};

try {
  spawnSync(program, ['new', ledger, '--demo'], { input: '' });
  server = await serve([program], ledger);
  const { sidecar } = server;
  const own = sidecar.tokens[0].token;
  const first = await by_http(sidecar, own);
  const { person } = (await first.ask('person.register', { names: [{ text: 'Tuma Invented' }], birth: { date: '1971' }, sex: 'female', request: randomUUID() })).person;
  const at = await open_exam(first.ask, person);
  for (let i = 0; i < 6; ++i) await record_next(first.ask, at);
  const shared = { exam: at.exam, person, cursor: (await first.ask('changes.read', {})).cursor };
  // A token is held to 1,000 calls a second; whoever reads has one of twelve.
  const tokens = [own];
  for (let i = 0; i < 12; ++i) tokens.push((await first.ask('token.make', { scope: 'viewer', label: `reader ${i}` })).token);
  await first.stop();
  await mixed_load(sidecar, tokens, shared);
  await manners(sidecar, tokens, shared);
  await count.check('the program ends well', async () => (await server.stop()) === 0);
  const verified = spawnSync(program, ['verify', ledger], { encoding: 'utf8', input: '' });
  count.note('verify finds nothing wrong', verified.status === 0, verified.stderr);
} catch (error) {
  count.note('it came to its end', false, error.stack);
  server?.child.kill('SIGKILL');
} finally {
  rmSync(scratch, { recursive: true, force: true });
}
count.close();
