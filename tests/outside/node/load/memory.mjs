// stage: outside
// The memory of a program that is used all day, over the standard input, HTTP and WebSocket: reads, refusals and repeats leave nothing
// behind, and once what is kept on purpose is full, a recorded finding costs at most 1 KiB. What counts is the resident set as the
// kernel states it (proc(5), VmRSS), after a warm-up.
//   node memory.mjs      takes limbledger of $LIMBLEDGER_BUILD; LIMBLEDGER_CALLS and LIMBLEDGER_FINDINGS are the sizes, by the tier
//                        20,000 calls and 2,000 findings, or 1,000,000 and 20,000; findings over the standard input alone in the
//                        shorter tier; LIMBLEDGER_WAY names one way (stdio, HTTP, WebSocket)

import { randomUUID } from 'node:crypto';
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Agent, request as http_request } from 'node:http';
import { Count } from '../lib/count.mjs';
import { finding, open_exam, record_next, request } from '../lib/invented.mjs';
import { open_socket, serve } from '../lib/network.mjs';
import { Peer } from '../lib/peer.mjs';

const build = process.env.LIMBLEDGER_BUILD ?? fileURLToPath(new URL('../../../../build', import.meta.url));
const full = process.env.LIMBLEDGER_TIER === 'full';
const calls_wanted = Number(process.env.LIMBLEDGER_CALLS ?? (full ? 1_000_000 : 20_000));
const findings_wanted = Number(process.env.LIMBLEDGER_FINDINGS ?? (full ? 20_000 : 2_000));
const program = join(build, 'limbledger');
const count = new Count();
const scratch = mkdtempSync(join(tmpdir(), 'limbledger-memory-'));
const batch_calls = 50;
const fill = 20_000;
const wait = (ms) => new Promise((resolve) => { setTimeout(resolve, ms); });

// Each way: the process that answers, what a text is answered with, and the end.
const by_stdio = (ledger) => {
  const peer = new Peer([program, 'serve', '--ledger', ledger, '--stdio', 'lines'], 'lines');
  return {
    pid: peer.child.pid,
    said: async (text) => {
      peer.send(text);
      return peer.next();
    },
    stop: () => peer.close(),
    kill: () => peer.child.kill('SIGKILL'),
  };
};

const by_http = async (ledger) => {
  const server = await serve([program], ledger);
  const agent = new Agent({ keepAlive: true, maxSockets: 1 });
  const headers = { 'Content-Type': 'application/json', Authorization: `Bearer ${server.sidecar.tokens[0].token}` };
  return {
    pid: server.child.pid,
    said: (text) => new Promise((resolve, reject) => {
      const sent = http_request(server.sidecar.http, { method: 'POST', agent, headers: { ...headers, 'Content-Length': Buffer.byteLength(text) } }, (response) => {
        const parts = [];
        response.on('data', (part) => parts.push(part));
        response.on('end', () => resolve(Buffer.concat(parts).toString('utf8')));
      });
      sent.on('error', reject);
      sent.end(text);
    }),
    stop: () => {
      agent.destroy();
      return server.stop();
    },
    kill: () => server.child.kill('SIGKILL'),
  };
};

const by_websocket = async (ledger) => {
  const server = await serve([program], ledger);
  const line = await open_socket(server.sidecar.websocket);
  const said = async (text) => {
    line.say(text);
    for (;;) {
      const reply = await line.next();
      if (reply === undefined) throw new Error('closed');
      if (!/^\{"jsonrpc":"2.0","method":/.test(reply)) return reply; // told unasked
    }
  };
  await said(JSON.stringify(request('session.open', { token: server.sidecar.tokens[0].token })));
  return { pid: server.child.pid, said, stop: async () => { await line.close(); return server.stop(); }, kill: () => server.child.kill('SIGKILL') };
};

const measure = async (name, begin, findings_too) => {
  const ledger = join(scratch, name);
  let way;
  try {
    spawnSync(program, ['new', ledger, '--demo'], { input: '' });
    way = await begin(ledger);
    const resident = () => Number(/VmRSS:\s+(\d+) kB/.exec(readFileSync(`/proc/${way.pid}/status`, 'utf8'))[1]);
    const say = async (message) => {
      const text = typeof message === 'string' ? message : JSON.stringify(message);
      for (;;) {
        const reply = JSON.parse(await way.said(text));
        const first = Array.isArray(reply) ? reply[0] : reply;
        if (first.error?.data?.faults?.[0]?.code !== 'limit.rate') return reply;
        await wait(50);
      }
    };
    const ask = async (method, params) => {
      const { result, error } = await say(request(method, params));
      if (!result) throw new Error(`${method}: ${JSON.stringify(error)}`);
      return result;
    };

    const registered = { names: [{ text: 'Tuma Invented' }], birth: { date: '1971' }, sex: 'female', request: randomUUID() };
    const { person } = (await ask('person.register', registered)).person;
    const opened = { person, complaint: 'chronic_knee', side: 'left', setting: 'outreach', request: randomUUID() };
    const { exam, revision } = await ask('exam.open', opened);
    const recorded = { exam: exam.exam, findings: [finding(0), finding(1)], seen: revision, request: randomUUID() };
    await ask('finding.record', recorded);
    const { cursor } = await ask('changes.read', {});

    // As often each: what reads, what is refused, and what was sent before.
    const mixed = [
      ['health.check', {}], ['exam.read', { exam: exam.exam }], ['person.find', { text: 'tuma' }], ['person.read', { person }], ['exam.find', { person }],
      ['finding.history', { exam: exam.exam, item: 'knee.flexion_passive', side: 'left' }], ['changes.read', { cursor }], ['request.read', { request: recorded.request }],
      ['no.such.method', {}], ['exam.read', {}], ['exam.read', { exam: exam.exam, colour: 'blue' }], ['exam.read', { exam: 'a'.repeat(26) }],
      ['finding.record', { ...recorded, findings: [{ ...finding(0), value: { kind: 'angle', toward_deg: 900 } }], request: randomUUID() }],
      ['finding.record', { ...recorded, request: randomUUID() }], ['ledger.unlock', { examiner: 'nobody', passphrase: 'x' }],
      ['finding.record', recorded], ['exam.open', opened], ['person.register', registered],
    ];
    let done = 0;
    const refused_texts = ['{"jsonrpc":', '[]', '['.repeat(100), '{"jsonrpc":"2.0","id":1,"method":"exam.read","params":{"exam":"\\ud800"}}'];
    const kinds = { result: 0, error: 0 };
    const some_calls = async () => {
      const batch = Array.from({ length: batch_calls }, (_, i) => request(...mixed[(done + i) % mixed.length], i));
      done += batch_calls;
      for (const one of await say(batch)) kinds[one.error ? 'error' : 'result'] += 1;
      kinds.error += (await say(refused_texts[done % refused_texts.length])).error ? 1 : 0;
    };

    while (done < Math.max(20_000, calls_wanted / 20)) await some_calls();
    const before = resident();
    const until = done + calls_wanted;
    while (done < until) await some_calls();
    const grown = resident() - before;
    console.log(`${name}: ${calls_wanted} reads, refusals and repeats: ${before} KiB grew by ${grown} KiB`);
    count.note(`${name}: reads, refusals and repeats leave less than 1 MiB behind`, grown < 1024, `${grown} KiB`);
    count.note(`${name}: they were answered, refused and answered once more`, kinds.result > 0 && kinds.error > 0 && kinds.result + kinds.error > done, JSON.stringify(kinds));

    // Forty findings an exam; every other call replaces what stood. First so many that what is kept on purpose is full: the pages of
    // the store (16 MB), the newest folded exams and what they have raised.
    const record = async (wanted) => {
      for (let made = 0; made < wanted;) {
        const at = await open_exam(ask);
        for (; at.number < 40 && made < wanted; made += 4) await record_next(ask, at, 1, 2, 3);
      }
    };
    if (findings_too) {
      const empty = resident();
      await record(fill);
      const first = resident();
      await record(findings_wanted);
      const each = (resident() - first) * 1024 / findings_wanted;
      console.log(`${name}: ${fill} findings fill what is kept, by ${first - empty} KiB; ${findings_wanted} more: ${Math.round(each)} bytes of the resident set each`);
      count.note(`${name}: a recorded finding costs at most 1 KiB`, each <= 1024, `${Math.round(each)} bytes`);
      count.note(`${name}: what is kept on purpose stays below 64 MiB`, first < 64 * 1024, `${first} KiB`);
    }
    await count.check(`${name}: the program ends well`, async () => (await way.stop()) === 0);
  } catch (error) {
    count.note(`${name}: it came to its end`, false, error.stack);
    way?.kill();
  }
};

const wanted_way = process.env.LIMBLEDGER_WAY;
for (const [name, begin] of [['stdio', by_stdio], ['HTTP', by_http], ['WebSocket', by_websocket]]) {
  if (!wanted_way || wanted_way === name) await measure(name, begin, full || name === 'stdio' || wanted_way !== undefined);
}
rmSync(scratch, { recursive: true, force: true });
count.close();
