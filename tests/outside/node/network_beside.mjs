// stage: outside
// The program with all its doors open at once: a page is served with a one-time link, a call waits for a change over HTTP, and
// the standard input beside them makes that change; its end is the program's. Statuses: RFC 9110.
//   node network_beside.mjs       takes limbledger of $LIMBLEDGER_BUILD

import { spawn, spawnSync } from 'node:child_process';
import { randomUUID } from 'node:crypto';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';
import { Count } from './lib/count.mjs';
import { guard, open_socket, post, raw } from './lib/network.mjs';

const program = join(process.env.LIMBLEDGER_BUILD ?? fileURLToPath(new URL('../../../build', import.meta.url)), 'limbledger');
const count = new Count();
const scratch = mkdtempSync(join(tmpdir(), 'limbledger-beside-'));
const ledger = join(scratch, 'demo');
const pages = join(scratch, 'pages');
const is = (found, expected) => JSON.stringify(found) === JSON.stringify(expected) || `${JSON.stringify(found)}, expected ${JSON.stringify(expected)}`;
const call = (method, params = {}, id = 1) => JSON.stringify({ jsonrpc: '2.0', id, method, params });

try {
  spawnSync(program, ['new', ledger, '--demo'], { input: '' });
  mkdirSync(pages);
  writeFileSync(join(pages, 'index.html'), '<!doctype html><title>form</title>');
  writeFileSync(join(pages, 'form.js'), 'let form;');
  const child = spawn(program, ['serve', '--ledger', ledger, '--http', '0', '--stdio', 'lines', '--pages', pages, '--once'], { stdio: ['pipe', 'pipe', 'pipe'] });
  const exited = new Promise((resolve) => child.on('close', resolve));
  const lines = createInterface({ input: child.stdout })[Symbol.asyncIterator]();
  let said = '';
  const link = await guard(new Promise((resolve) => child.stderr.on('data', (part) => {
    said += part;
    const found = /(http:\S+\/)#once=([\w-]+)\n/.exec(said);
    if (found) resolve({ page: found[1], once: found[2] });
  })), 'no link');
  const { http, websocket, tokens: [{ token }] } = JSON.parse(readFileSync(join(ledger, 'sidecar.json'), 'utf8'));
  const bearer = { Authorization: `Bearer ${token}` };
  const by_line = async (text) => {
    child.stdin.write(`${text}\n`);
    return JSON.parse((await guard(lines.next(), 'no line')).value);
  };

  await count.check('the link\'s page and what it loads are read without a token', async () => {
    const [page, script, other] = [await raw(link.page, { method: 'GET' }), await raw(`${link.page}form.js`, { method: 'GET' }), await raw(`${link.page}keyring`, { method: 'GET' })];
    return is([page.status, page.headers['content-type'], page.text, script.status, script.text, other.status],
      [200, 'text/html; charset=utf-8', '<!doctype html><title>form</title>', 200, 'let form;', 404]);
  });
  await count.check('HEAD is answered as GET, without the body', async () => {
    const [got, asked] = [await raw(link.page, { method: 'GET' }), await raw(link.page, { method: 'HEAD' })];
    return is([asked.status, asked.headers['content-length'], asked.text], [200, got.headers['content-length'], '']);
  });
  await count.check('the page trades the code for a session, and for a token that HTTP takes', async () => {
    const line = await open_socket(websocket, { origin: new URL(http).origin });
    line.say(call('session.open', { once: link.once }));
    const { result } = JSON.parse(await line.next());
    const reply = await post(http, call('person.find'), { Authorization: `Bearer ${result.token}` });
    await line.close();
    return is([result.scope, reply.status], ['examiner', 200]);
  });
  await count.check('a call that waits over HTTP is answered with what the standard input wrote', async () => {
    const { result: { cursor } } = JSON.parse((await post(http, call('changes.read'), bearer)).text);
    const waiting = post(http, call('changes.read', { cursor, wait_ms: 60000 }), bearer);
    const { result: { state } } = JSON.parse((await post(http, call('health.check'))).text); // others are answered meanwhile
    const written = await by_line(call('person.register', { names: [{ text: 'Awa Invented' }], sex: 'female', request: randomUUID() }));
    const { result } = JSON.parse((await waiting).text);
    return is([state, result.changes], ['ready', [{ kind: 'person', object: written.result.person.person }]]);
  });
  await count.check('the end of the standard input ends the program, with answers for those who wait', async () => {
    const { result: { cursor } } = JSON.parse((await post(http, call('changes.read'), bearer)).text);
    const line = await open_socket(websocket);
    line.say(call('session.open', { token }));
    await line.next();
    line.say(call('changes.read', { cursor, wait_ms: 60000 }, 'late'));
    line.say(call('health.check', {}, 'meanwhile'));
    const first = JSON.parse(await line.next());
    child.stdin.end();
    const late = JSON.parse(await line.next());
    return is([first.id, late.id, late.result.changes, await line.closed(), await guard(exited, 'still running'), existsSync(join(ledger, 'sidecar.json'))],
      ['meanwhile', 'late', [], 1001, 0, false]);
  });
} finally {
  rmSync(scratch, { recursive: true, force: true });
}
count.close();
