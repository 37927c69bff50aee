// stage: outside
// The program over HTTP and WebSocket: two JSON-RPC clients that know nothing of this project hold the same talk over both;
// what may not be sent is refused with its status, code or close code; replies are byte for byte those of the standard
// input; and the specification's own examples run over both carriers against the test table.
// Statuses: RFC 9110; close codes: RFC 6455, section 7.4.1.
//   node network_clients.mjs      takes limbledger and protocol_table of $LIMBLEDGER_BUILD

import { spawn, spawnSync } from 'node:child_process';
import { randomUUID } from 'node:crypto';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Count } from './lib/count.mjs';
import { bytes, clients, guard, open_socket, post, raw, refused_socket, serve } from './lib/network.mjs';
import { answers_to, Peer } from './lib/peer.mjs';
import { keeping, talk } from './lib/program_talk.mjs';
import { data, judge } from './lib/protocol_cases.mjs';

const build = process.env.LIMBLEDGER_BUILD ?? fileURLToPath(new URL('../../../build', import.meta.url));
const program = [join(build, 'limbledger')];
const count = new Count();
const scratch = mkdtempSync(join(tmpdir(), 'limbledger-network-'));
const ledger = join(scratch, 'demo');
mkdirSync(join(build, 'talks'), { recursive: true });

const call = (method, params = {}, id = 1) => JSON.stringify({ jsonrpc: '2.0', id, method, params });
const code_of = (text) => JSON.parse(text).error?.data?.faults?.[0]?.code;
const is = (found, expected) => JSON.stringify(found) === JSON.stringify(expected) || `${JSON.stringify(found)}, expected ${JSON.stringify(expected)}`;

// What a reading client may ask, good and bad, and what no client should.
const said_everywhere = [
  call('health.check'), call('rpc.discover'), call('catalogue.read', { region: 'knee' }), call('person.find'), call('person.read', { person: 'x' }),
  call('exam.read', { exam: 'a'.repeat(26), colour: 'blue' }), call('no.such.method'), '{"jsonrpc":', '[]', '[1,{}]', '{"jsonrpc":"2.0","id":"\\u00e9 \\ud83d\\ude00","method":"health.check"}',
  `[${call('person.find', {}, 1)},${call('exam.find', {}, 2)},{"jsonrpc":"2.0","method":"person.find"}]`, `[${Array.from({ length: 101 }, () => '1').join(',')}]`,
  `${'['.repeat(40)}${']'.repeat(40)}`, '{"jsonrpc":"2.0","method":"person.find"}', `{"jsonrpc":"2.0","id":1,"id":2,"method":"x"}`,
];

try {
  const made = spawnSync(program[0], ['new', ledger, '--demo'], { encoding: 'utf8', input: '' });
  count.note('a demonstration ledger is made', made.status === 0, made.stderr);
  const peer = new Peer([...program, 'serve', '--ledger', ledger, '--stdio', 'lines'], 'lines');
  const by_stdio = [];
  for (const text of said_everywhere) by_stdio.push((await answers_to(peer, text)).map((one) => one.text));
  await peer.close();

  const server = await serve(program, ledger, '--once');
  const { http, websocket, tokens } = server.sidecar;
  const [{ token }] = tokens;
  const bearer = { Authorization: `Bearer ${token}` };
  const origin = new URL(http).origin;

  await count.check('sidecar.json is the owner\'s alone and names where to call', () => (statSync(server.file).mode & 0o777) === 0o600
    && server.sidecar.pid === server.child.pid && /^http:\/\/127\.0\.0\.1:\d+\/rpc$/.test(http) && websocket === http.replace('http', 'ws')
    && tokens.length === 1 && tokens[0].scope === 'examiner' && /^[\w-]{43}$/.test(token) && Date.parse(tokens[0].expires_at) > Date.now());
  await count.check('a second program on the same ledger is refused and takes nothing away', () => {
    const second = spawnSync(program[0], ['serve', '--ledger', ledger, '--http', '0'], { encoding: 'utf8', input: '' });
    return (second.status === 4 && server.there()) || second.stderr;
  });
  await count.check('a port in use ends with 4 and its number', () => {
    const other = join(scratch, 'other');
    spawnSync(program[0], ['new', other, '--demo'], { input: '' });
    const { port } = new URL(http);
    const second = spawnSync(program[0], ['serve', '--ledger', other, '--http', port], { encoding: 'utf8', input: '' });
    return (second.status === 4 && second.stderr.includes(port) && second.stderr.includes('what to do')) || second.stderr;
  });

  for (const [name, connect] of Object.entries(clients)) {
    const client = await connect(server.sidecar, token);
    const lines = [];
    await talk(count, client, keeping(client.ask, lines), name);
    writeFileSync(join(build, 'talks', `network_${name.replaceAll(/\W+/g, '_')}.jsonl`), `${lines.join('\n')}\n`);
    await count.check(`${name}: the session ends`, () => client.stop());
  }

  // The ledger has grown meanwhile, so what counts it or lists people is asked of a fresh program on the same ledger below.
  await server.stop();
  await count.check('SIGTERM takes sidecar.json away', () => !server.there());
  const again = new Peer([...program, 'serve', '--ledger', ledger, '--stdio', 'lines'], 'lines');
  const expected = [];
  for (const text of said_everywhere) expected.push((await answers_to(again, text)).map((one) => one.text));
  await again.close();

  const reader = await serve(program, ledger);
  {
    const { http: url, websocket: ws_url, tokens: [{ token: shown }] } = reader.sidecar;
    await count.check('a token of the launch before is refused', async () => {
      const reply = await post(url, call('person.find'), bearer);
      return is([reply.status, code_of(reply.text)], [401, 'token.unknown']);
    });
    const line = await open_socket(ws_url);
    line.say(call('session.open', { token: shown }));
    await line.next();
    for (const [at, text] of said_everywhere.entries()) {
      const label = text.slice(0, 60);
      await count.check(`HTTP says the same bytes as the standard input: ${label}`, async () => {
        const reply = await post(url, text, { Authorization: `Bearer ${shown}` });
        if (expected[at].length === 0) return is([reply.status, reply.text], [204, '']);
        return reply.status === 200 && reply.headers['content-type'] === 'application/json' && is([reply.text], expected[at]);
      });
      await count.check(`WebSocket says the same bytes as the standard input: ${label}`, async () => {
        line.say(text);
        line.say(call('health.check', {}, 'marker'));
        const found = [];
        for (let said = await line.next(); !said.endsWith('"id":"marker"}'); said = await line.next()) found.push(said);
        return is(found, expected[at]);
      });
    }
    await line.close();
    await count.check('SIGINT ends it well with WebSockets open', async () => {
      const open = await open_socket(ws_url);
      const end = await reader.stop('SIGINT');
      return is([end, await open.closed(), reader.there()], [0, 1001, false]);
    });
  }

  const judged = await serve(program, ledger, '--once');
  {
    const { http: url, websocket: ws_url, tokens: [{ token: shown }] } = judged.sidecar;
    const good = { Authorization: `Bearer ${shown}` };
    const own = new URL(url).origin;
    const large = `{"jsonrpc":"2.0","id":1,"method":"person.find","params":{"text":"${'x'.repeat(1 << 20)}"}}`;
    for (const [name, expectation, send] of [
      ['a wrong token', [401, 'token.unknown'], () => post(url, call('person.find'), { Authorization: 'Bearer wrong' })],
      ['no token', [200, 'token.missing'], () => post(url, call('person.find'))],
      ['a foreign Host', [403, 'host.refused'], () => post(url, call('person.find'), { ...good, Host: 'rebound.example' })],
      ['a foreign Host with our port', [403, 'host.refused'], () => post(url, call('person.find'), { ...good, Host: `rebound.example:${new URL(url).port}` })],
      ['a foreign Origin', [403, 'origin.refused'], () => post(url, call('person.find'), { ...good, Origin: 'http://page.example' })],
      ['the Origin null', [403, 'origin.refused'], () => post(url, call('person.find'), { ...good, Origin: 'null' })],
      ['a form\'s content type', [415, 'http.content_type'], () => post(url, call('person.find'), { ...good, 'Content-Type': 'text/plain' })],
      ['another address', [404, 'http.path'], () => post(`${own}/`, call('person.find'), good)],
      ['a token in the address', [404, 'http.path'], () => post(`${url}?token=${shown}`, call('person.find'))],
      ['another method', [405, 'http.method'], () => raw(url, { method: 'PUT', headers: good })],
      ['an oversized message', [413, 'limit.size'], () => post(url, large, good)],
      ['a deep message', [200, 'limit.depth'], () => post(url, '['.repeat(100) + ']'.repeat(100), good)],
      ['a head that is too long', [431, 'limit.head'], () => post(url, call('person.find'), { ...good, 'X-Long': 'x'.repeat(9000) })],
    ]) {
      await count.check(`HTTP: ${name} is answered ${expectation.join(' ')}`, async () => {
        const reply = await send();
        return is([reply.status, code_of(reply.text)], expectation);
      });
    }
    await count.check('HTTP: a request without Host is refused', async () => {
      const reply = await bytes(url, 'POST /rpc HTTP/1.1\r\nContent-Type: application/json\r\nContent-Length: 0\r\nConnection: close\r\n\r\n');
      return (reply.startsWith('HTTP/1.1 403 ') && reply.includes('host.refused')) || reply;
    });
    await count.check('HTTP: a page of ours may ask before it calls, a foreign one may not', async () => {
      const ask = (from) => raw(url, { method: 'OPTIONS', headers: { Origin: from, 'Access-Control-Request-Method': 'POST', 'Access-Control-Request-Headers': 'authorization,content-type' } });
      const [ours, foreign] = [await ask(own), await ask('http://page.example')];
      return is([ours.status, ours.headers['access-control-allow-origin'], ours.headers['access-control-allow-methods'], foreign.status, foreign.headers['access-control-allow-origin'] ?? 'none'],
        [204, own, 'POST', 403, 'none']);
    });
    await count.check('the localhost name and, where there is one, the IPv6 address are served too', async () => {
      const { port } = new URL(url);
      const reply = await post(`http://localhost:${port}/rpc`, call('person.find'), good);
      return reply.status === 200;
    });

    for (const [name, expectation, options] of [
      ['a foreign Origin', [403, 'origin.refused'], { origin: 'http://page.example' }],
      ['a foreign Host', [403, 'host.refused'], { headers: { Host: 'rebound.example' } }],
      ['another version', [426, 'http.request'], { protocolVersion: 8 }],
    ]) {
      await count.check(`WebSocket: ${name} is refused at the handshake`, async () => {
        const reply = await refused_socket(ws_url, options);
        return is([reply.status, code_of(reply.text)], expectation);
      });
    }
    await count.check('WebSocket: our own Origin is let in', async () => {
      const line = await open_socket(ws_url, { origin: own });
      line.say(call('health.check'));
      const { result } = JSON.parse(await line.next());
      return is([result.state, await line.close()], ['ready', 1000]);
    });
    for (const [name, expectation, act] of [
      ['an oversized message', ['limit.size', 1009], (line) => line.say(large)],
      ['a binary message', ['websocket.binary', 1003], (line) => line.say(Buffer.from('{}'))],
      ['no session within 5 seconds', ['token.missing', 1008], () => {}],
    ]) {
      await count.check(`WebSocket: ${name} is answered, then closed with ${expectation[1]}`, async () => {
        const line = await open_socket(ws_url);
        act(line);
        return is([code_of(await line.next()), await line.closed()], expectation);
      });
    }
    await count.check('WebSocket: a deep message and a wrong token are answered, and the session goes on', async () => {
      const line = await open_socket(ws_url);
      line.say('['.repeat(100) + ']'.repeat(100));
      const deep = code_of(await line.next());
      line.say(call('session.open', { token: 'wrong' }));
      const wrong = code_of(await line.next());
      line.say(call('person.find'));
      const missing = code_of(await line.next());
      line.say(call('session.open', { token: shown }));
      const opened = JSON.parse(await line.next()).result?.scope;
      await line.close();
      return is([deep, wrong, missing, opened], ['limit.depth', 'token.unknown', 'token.missing', 'examiner']);
    });
    await count.check('the printed link opens one session, once', async () => {
      const once = /#once=([\w-]+)/.exec(judged.said())[1];
      const first = JSON.parse((await post(url, call('session.open', { once }))).text).result;
      const second = code_of((await post(url, call('session.open', { once }))).text);
      const works = await post(url, call('person.find'), { Authorization: `Bearer ${first.token}` });
      await post(url, call('session.end'), { Authorization: `Bearer ${first.token}` });
      const ended = await post(url, call('person.find'), { Authorization: `Bearer ${first.token}` });
      return is([first.scope, second, works.status, ended.status], ['examiner', 'token.used', 200, 401]);
    });
    await count.check('what one client records, another is told of, and the cursor goes on from there', async () => {
      const line = await open_socket(ws_url);
      line.say(call('session.open', { token: shown }));
      const { cursor } = JSON.parse(await line.next()).result;
      const reply = JSON.parse((await post(url, call('person.register', { request: randomUUID(), names: [{ text: 'Tuma Invented' }], sex: 'unknown' }), good)).text);
      const told = JSON.parse(await line.next());
      const read = JSON.parse((await post(url, call('changes.read', { cursor }), good)).text).result;
      const after = JSON.parse((await post(url, call('changes.read', { cursor: told.params.cursor }), good)).text).result;
      await line.close();
      return is([told.method, 'id' in told, told.params.changes, read.changes, after.changes],
        ['ledger.changed', false, [{ kind: 'person', object: reply.result.person.person }], told.params.changes, []]);
    });
    await count.check('session.end over HTTP ends the token, and sidecar.json names a new one', async () => {
      await post(url, call('session.end'), good);
      const after = await post(url, call('person.find'), good);
      const next = JSON.parse(readFileSync(join(ledger, 'sidecar.json'), 'utf8')).tokens[0].token;
      const works = await post(url, call('person.find'), { Authorization: `Bearer ${next}` });
      return is([after.status, code_of(after.text), next !== shown, works.status], [401, 'token.expired', true, 200]);
    });
    await count.check('no token and no code reaches the log', () => {
      const log = readFileSync(join(ledger, 'log/limbledger.log'), 'utf8');
      const once = /#once=([\w-]+)/.exec(judged.said())[1];
      return !log.includes(shown) && !log.includes(once) && log.includes('token.unknown');
    });
    await count.check('after a kill the file stays, and the next start replaces it', async () => {
      await judged.stop('SIGKILL');
      const left = judged.there();
      const next = await serve(program, ledger, '--scope', 'viewer');
      const fresh = next.sidecar.tokens[0];
      const denied = code_of((await post(next.sidecar.http, call('exam.open', { request: randomUUID(), complaint: 'free', setting: 'outreach' }), { Authorization: `Bearer ${fresh.token}` })).text);
      const end = await next.stop();
      return is([left, fresh.scope, fresh.token !== shown, denied, end, next.there()], [true, 'viewer', true, 'token.scope', 0, false]);
    });
  }
  const verified = spawnSync(program[0], ['verify', ledger], { encoding: 'utf8', input: '' });
  count.note('verify finds nothing wrong', verified.status === 0, verified.stderr);

  const table = spawn(join(build, 'protocol_table'), ['--http', '0'], { stdio: ['pipe', 'pipe', 'inherit'] });
  const port = await guard(new Promise((resolve) => table.stdout.on('data', (said) => resolve(Number(said)))), 'no port');
  const line = await open_socket(`ws://127.0.0.1:${port}/rpc`);
  for (const file of ['jsonrpc_spec_examples.json', 'jsonrpc_edge_cases.json']) {
    for (const { name, send, expect } of data(file).cases) {
      await count.check(`HTTP: ${name}`, async () => {
        const reply = await post(`http://127.0.0.1:${port}/rpc`, send);
        if (reply.status !== 200 && reply.status !== 204) return `status ${reply.status}`;
        return judge(expect, reply.status === 204 ? [] : [{ text: reply.text, parsed: JSON.parse(reply.text) }]);
      });
      await count.check(`WebSocket: ${name}`, async () => {
        line.say(send);
        line.say(call('no.such.method', {}, 'marker'));
        const answers = [];
        for (let text = await line.next(); !text.endsWith('"id":"marker"}'); text = await line.next()) answers.push({ text, parsed: JSON.parse(text) });
        return judge(expect, answers);
      });
    }
  }
  await line.close();
  table.stdin.end();
  await count.check('the test table ends with its input', () => guard(new Promise((resolve) => table.on('close', (code) => resolve(code === 0))), 'still running'));
} catch (error) {
  count.note('the talk came to its end', false, error.stack);
} finally {
  rmSync(scratch, { recursive: true, force: true });
}
count.close();
