// stage: outside
// What somebody on this machine could try against the program, each try refused with the code that schemas/faults.json says: no
// token and wrong ones, every scope at every method, foreign pages, rebound names, too large, too deep, too many, sent again,
// paths out of the pages, a kiosk out of its exam, guessed passphrases, slow and half requests. Statuses: RFC 9110; close
// codes: RFC 6455, section 7.4.1. All people are invented.
//   node attack.mjs      takes limbledger of $LIMBLEDGER_BUILD

import { randomUUID } from 'node:crypto';
import { mkdirSync, readFileSync, statSync, symlinkSync, writeFileSync } from 'node:fs';
import { connect } from 'node:net';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Clinic, call, code_of, passphrase } from './lib/clinic.mjs';
import { Count } from './lib/count.mjs';
import { bytes, guard, open_socket, post, raw, refused_socket } from './lib/network.mjs';

const build = process.env.LIMBLEDGER_BUILD ?? fileURLToPath(new URL('../../../build', import.meta.url));
const faults = new Set(JSON.parse(readFileSync(new URL('../../../schemas/faults.json', import.meta.url), 'utf8')).faults.map(({ code }) => code));
const count = new Count();
const clinic = new Clinic([join(build, 'limbledger')]);
const pages = join(clinic.scratch, 'pages');
let tries = 0;

const is = (found, expected) => JSON.stringify(found) === JSON.stringify(expected) || `${JSON.stringify(found)}, expected ${JSON.stringify(expected)}`;
// A try that must end as [status, code].
const refused = (name, expected, send) => count.check(name, async () => {
  tries += 1;
  if (!faults.has(expected[1])) return `${expected[1]} stands in no table`;
  const reply = await send();
  return is([reply.status, reply.code ?? (reply.text ? code_of(reply.text) : undefined)], expected);
});
const code_refused = (name, code, send) => refused(name, [200, code], send);

const hear = (socket) => guard(new Promise((resolve) => {
  let got = '';
  socket.on('data', (part) => { got += part; });
  socket.on('close', () => resolve(got));
  socket.on('error', () => resolve(got));
}), 'no end');
const status_of = (answer) => [Number(/^HTTP\/1\.1 (\d+)/.exec(answer)?.[1]), /"code":"([a-z_.]+)"/.exec(answer)?.[1]];

try {
  count.note('a ledger is made', clinic.made.status === 0, clinic.made.stderr);
  mkdirSync(pages);
  writeFileSync(join(pages, 'index.html'), '<!doctype html><title>form</title>');
  writeFileSync(join(pages, '.hidden.txt'), 'x');
  symlinkSync(join(clinic.ledger, 'keyring'), join(pages, 'keyring.txt'));
  const files = { viewer: join(clinic.scratch, 'viewer'), sync: join(clinic.scratch, 'sync') };
  await clinic.serve('--pages', pages, '--once', '--give', `viewer=${files.viewer}`, '--give', `sync=${files.sync}`);
  const before = clinic.examiner;
  await clinic.stop();
  await clinic.serve('--pages', pages, '--once', '--give', `viewer=${files.viewer}`, '--give', `sync=${files.sync}`);
  const { url, origin, examiner } = clinic;
  const { port } = new URL(url);
  const websocket = clinic.sidecar.websocket;
  const bearer = { Authorization: `Bearer ${examiner}` };
  const viewer = readFileSync(files.viewer, 'utf8').trim();
  const sync = readFileSync(files.sync, 'utf8').trim();
  await count.check('tokens given at the start are the owner\'s alone', () => is([statSync(files.viewer).mode & 0o777, statSync(files.sync).mode & 0o777, viewer.length], [0o600, 0o600, 43]));

  // Locked.
  await code_refused('records while locked', 'ledger.locked', () => clinic.ask(examiner, 'person.find'));
  await code_refused('a wrong passphrase', 'ledger.passphrase', () => clinic.ask(examiner, 'ledger.unlock', { examiner: 'Amina', passphrase: 'wrong words' }));
  await code_refused('another passphrase at once', 'ledger.wait', () => clinic.ask(viewer, 'ledger.unlock', { examiner: 'Amina', passphrase: 'other words' }));
  await code_refused('the right one before the wait is over tells nothing', 'ledger.wait', () => clinic.ask(examiner, 'ledger.unlock', { examiner: 'Amina', passphrase }));
  await code_refused('guessing over WebSocket waits as well', 'ledger.wait', async () => {
    const line = await open_socket(websocket);
    line.say(call('session.open', { token: sync }));
    await line.next();
    line.say(call('ledger.unlock', { examiner: 'Amina', passphrase: 'more words' }));
    const text = await line.next();
    await line.close();
    return { status: 200, text };
  });
  await count.check('after the wait the ledger opens', async () => {
    for (;;) {
      const reply = await clinic.ask(examiner, 'ledger.unlock', { examiner: 'Amina', passphrase });
      if (reply.result) return true;
      if (reply.code !== 'ledger.wait') return reply.text;
      await new Promise((resolve) => { setTimeout(resolve, 200); });
    }
  });
  await clinic.fill();
  const made = await clinic.need(examiner, 'token.make', { scope: 'kiosk', exam: clinic.second, label: 'waiting room' });
  const kiosk = made.token;

  // Tokens.
  for (const [name, headers] of [
    ['a word', { Authorization: 'Bearer word' }], ['none behind the word', { Authorization: 'Bearer ' }], ['one of the launch before', { Authorization: `Bearer ${before}` }],
    ['all but the last letter', { Authorization: `Bearer ${examiner.slice(0, -1)}` }], ['one letter more', { Authorization: `Bearer ${examiner}A` }],
    ['another case', { Authorization: `Bearer ${examiner.toUpperCase()}x` }], ['as a password', { Authorization: `Basic ${Buffer.from(`x:${examiner}`).toString('base64')}` }],
    ['without its word', { Authorization: examiner }], ['two in one', { Authorization: `Bearer ${examiner}, Bearer ${examiner}` }],
  ]) {
    await refused(`a token that is ${name}`, [401, 'token.unknown'], () => post(url, call('person.find'), headers));
  }
  await code_refused('a token in a cookie', 'token.missing', () => post(url, call('person.find'), { Cookie: `token=${examiner}` }));
  await refused('a token in the address', [404, 'http.path'], () => post(`${url}?token=${examiner}`, call('person.find')));
  await code_refused('a token among the params', 'params.unknown_member', () => clinic.ask(viewer, 'person.find', { token: examiner }));
  await refused('two Authorization fields', [400, 'http.request'], async () => {
    const answer = await bytes(url, `POST /rpc HTTP/1.1\r\nHost: 127.0.0.1:${port}\r\nContent-Type: application/json\r\nAuthorization: Bearer x\r\nAuthorization: Bearer ${examiner}\r\nContent-Length: 0\r\n\r\n`);
    const [status, code] = status_of(answer);
    return { status, code };
  });

  // Every scope at every method, as the description of the interface says who may call it.
  const { methods } = await clinic.need(examiner, 'rpc.discover');
  const by_scope = { examiner, kiosk, viewer, sync };
  for (const { name, description } of methods.filter((one) => one.name !== 'rpc.discover')) {
    const allowed = /^May be called by: ([a-z, ]+)\./.exec(description)[1];
    if (allowed === 'anybody') continue;
    await code_refused(`${name} without a token`, 'token.missing', () => clinic.ask(undefined, name));
    for (const [scope, token] of Object.entries(by_scope)) {
      if (!allowed.split(', ').includes(scope)) await code_refused(`${name} by ${scope}`, 'token.scope', () => clinic.ask(token, name));
    }
  }

  // Pages from elsewhere, and names that were rebound.
  for (const host of ['rebound.example', `rebound.example:${port}`, `127.0.0.1.rebound.example:${port}`, `localhost.rebound.example:${port}`, `0.0.0.0:${port}`, '127.0.0.1', `127.0.0.1:${Number(port) + 1}`, `x@127.0.0.1:${port}`]) {
    await refused(`the Host ${host}`, [403, 'host.refused'], () => post(url, call('health.check'), { ...bearer, Host: host }));
  }
  for (const from of ['http://page.example', 'null', `https://127.0.0.1:${port}`, 'http://127.0.0.1', `http://127.0.0.1:${port}.page.example`, 'file://', `${origin}/`, '*']) {
    await refused(`the Origin ${from}`, [403, 'origin.refused'], () => post(url, call('health.check'), { ...bearer, Origin: from }));
    await refused(`the Origin ${from} over WebSocket`, [403, 'origin.refused'], () => refused_socket(websocket, { headers: { Origin: from } }));
  }
  await refused('a rebound Host over WebSocket', [403, 'host.refused'], () => refused_socket(websocket, { headers: { Host: `rebound.example:${port}` } }));
  await refused('a call that the browser calls cross-site', [403, 'origin.refused'], () => post(url, call('health.check'), { ...bearer, 'Sec-Fetch-Site': 'cross-site' }));
  await count.check('a preflight from elsewhere is given nothing, and ours no star', async () => {
    tries += 1;
    const ask = (from) => raw(url, { method: 'OPTIONS', headers: { Origin: from, 'Access-Control-Request-Method': 'POST' } });
    const [foreign, ours] = [await ask('http://page.example'), await ask(origin)];
    return is([foreign.status, code_of(foreign.text), Object.keys(foreign.headers).filter((name) => name.startsWith('access-control')), ours.headers['access-control-allow-origin'], JSON.stringify(ours.headers).includes('*')],
      [403, 'origin.refused', [], origin, false]);
  });
  for (const type of ['text/plain', 'application/x-www-form-urlencoded', 'multipart/form-data; boundary=x', 'application/json; charset=utf-16']) {
    await refused(`the content type ${type}`, [415, 'http.content_type'], () => post(url, call('person.find'), { ...bearer, 'Content-Type': type }));
  }
  for (const method of ['GET', 'PUT', 'DELETE', 'PATCH', 'TRACE']) {
    await refused(`the method ${method}`, [405, 'http.method'], () => raw(url, { method, headers: bearer }));
  }

  // Out of the pages.
  for (const path of ['/../keyring', '/%2e%2e/keyring', '/..%2fledger.sqlite', '/./index.html', '//index.html', '/index.html%00', '/index.html/', '/sidecar.json', '/.hidden.txt', '/keyring.txt', '/..\\keyring', '/rpc/', '/RPC', '/etc/passwd', `http://127.0.0.1:${port}/index.html`]) {
    await refused(`the page ${path}`, [404, 'http.path'], async () => {
      const [status, code] = status_of(await bytes(url, `GET ${path} HTTP/1.1\r\nHost: 127.0.0.1:${port}\r\nConnection: close\r\n\r\n`));
      return { status, code };
    });
  }

  // Too large, too deep, too many.
  const big = `{"jsonrpc":"2.0","id":1,"method":"person.find","params":{"text":"${'x'.repeat(1 << 20)}"}}`;
  await refused('a message over 1 MiB', [413, 'limit.size'], () => post(url, big, bearer));
  await refused('a message over 1 MiB in chunks', [413, 'limit.size'], () => raw(url, { body: big, headers: { ...bearer, 'Content-Type': 'application/json', 'Transfer-Encoding': 'chunked' } }));
  await refused('a head over 8 KiB', [431, 'limit.head'], () => post(url, call('person.find'), { ...bearer, 'X-Long': 'x'.repeat(9000) }));
  await refused('a thousand header fields', [431, 'limit.head'], () => post(url, call('person.find'), { ...bearer, ...Object.fromEntries(Array.from({ length: 1000 }, (_, at) => [`X-${at}`, 'x'.repeat(8)])) }));
  await code_refused('lists a hundred deep', 'limit.depth', () => post(url, '['.repeat(100) + ']'.repeat(100), bearer));
  await code_refused('params a hundred deep', 'limit.depth', () => post(url, call('person.find', JSON.parse('{"a":'.repeat(99) + '1' + '}'.repeat(99))), bearer));
  await code_refused('a batch of 101', 'limit.batch', () => post(url, `[${Array.from({ length: 101 }, (_, at) => call('health.check', {}, at)).join(',')}]`, bearer));
  await code_refused('101 findings', 'limit.items', () => clinic.ask(examiner, 'finding.record', { exam: clinic.exam, seen: clinic.seen, request: randomUUID(), findings: Array.from({ length: 101 }, () => ({ item: 'history.pop', side: 'left', value: { kind: 'answer', answer: 'yes' } })) }));
  await code_refused('a name of 201 letters', 'limit.text', () => clinic.ask(examiner, 'person.register', { request: randomUUID(), names: [{ text: 'x'.repeat(201) }], sex: 'female' }));
  for (const [name, expected, text] of [
    ['a control character', 'value.control_character', '{"jsonrpc":"2.0","id":1,"method":"person.find","params":{"text":"a\\u0000b"}}'],
    ['a member named twice', 'json.duplicate_member', '{"jsonrpc":"2.0","id":1,"method":"person.find","method":"ledger.lock"}'],
    ['text that is no UTF-8', 'json.syntax', Buffer.from([0x22, 0xff, 0x22])],
    ['a method of another table', 'method.unknown', call('__proto__')],
    ['a member of every object', 'params.unknown_member', '{"jsonrpc":"2.0","id":1,"method":"person.find","params":{"__proto__":{"scope":"examiner"}}}'],
    ['an id that no double holds', 'request.envelope', '{"jsonrpc":"2.0","id":1e999,"method":"health.check"}'],
  ]) {
    await code_refused(name, expected, () => raw(url, { body: text, headers: { ...bearer, 'Content-Type': 'application/json' } }));
  }
  for (const [name, head] of [
    ['two lengths', 'Content-Length: 10\r\nContent-Length: 20\r\n\r\n'], ['a negative length', 'Content-Length: -1\r\n\r\n'], ['two hosts', 'Host: rebound.example\r\nContent-Length: 0\r\n\r\n'],
    ['a length and chunks', 'Content-Length: 5\r\nTransfer-Encoding: chunked\r\n\r\n0\r\n\r\n'], ['a request cut short', 'Content-Length: 100\r\n\r\n{"js'],
  ]) {
    await refused(name, [400, 'http.request'], async () => {
      const [status, code] = status_of(await bytes(url, `POST /rpc HTTP/1.1\r\nHost: 127.0.0.1:${port}\r\nContent-Type: application/json\r\n${head}`));
      return { status, code };
    });
  }
  await refused('no HTTP at all', [400, 'http.request'], async () => {
    const [status, code] = status_of(await bytes(url, '\x16\x03\x01\x02\x00\x01\x00\r\n\r\n'));
    return { status, code };
  });

  // Sent again.
  const again = { request: randomUUID(), names: [{ text: 'Awa Invented' }], sex: 'female' };
  await count.check('the same writing request again writes nothing twice', async () => {
    tries += 1;
    const [first, second] = [await clinic.need(examiner, 'person.register', again), await clinic.need(examiner, 'person.register', again)];
    return is([second.repeat, second.person.person], [true, first.person.person]);
  });
  await code_refused('its request with other params', 'request.reused', () => clinic.ask(examiner, 'person.register', { ...again, sex: 'male' }));
  await code_refused('its request in another method', 'request.reused', () => clinic.ask(examiner, 'exam.open', { request: again.request, complaint: 'free', setting: 'outreach' }));
  await code_refused('a revision of another record', 'revision.unknown', () => clinic.ask(examiner, 'finding.record', { exam: clinic.second, seen: clinic.seen, request: randomUUID(), findings: [{ item: 'history.pop', side: 'left', value: { kind: 'answer', answer: 'yes' } }] }));
  const once = /#once=([\w-]+)/g;
  const link = [...clinic.said.matchAll(once)].at(-1)[1];
  const { token: traded } = await clinic.need(undefined, 'session.open', { once: link });
  await code_refused('a link that was used', 'token.used', () => clinic.ask(undefined, 'session.open', { once: link }));
  await refused('a link as a token', [401, 'token.unknown'], () => post(url, call('person.find'), { Authorization: `Bearer ${link}` }));
  await clinic.need(traded, 'session.end');
  await refused('a session that has ended', [401, 'token.expired'], () => clinic.ask(traded, 'person.find'));

  // A kiosk out of its exam, also while the ledger is locked.
  const answer = (item) => ({ item, side: 'left', value: { kind: 'answer', answer: 'yes' } });
  const out_of_its_exam = async (when) => {
    const record = (exam, finding, more = {}) => clinic.ask(kiosk, 'finding.record', { exam, seen: clinic.second_seen, request: randomUUID(), findings: [finding], ...more });
    await code_refused(`${when}: a kiosk reads another exam`, 'exam.not_yours', () => clinic.ask(kiosk, 'exam.read', { exam: clinic.exam }));
    await code_refused(`${when}: a kiosk records in another exam`, 'exam.not_yours', () => record(clinic.exam, answer('history.pop')));
    await code_refused(`${when}: a kiosk checks against another exam`, 'exam.not_yours', () => clinic.ask(kiosk, 'finding.check', { exam: clinic.exam, findings: [answer('history.pop')] }));
    await code_refused(`${when}: a kiosk asks for the form of another exam`, 'exam.not_yours', () => clinic.ask(kiosk, 'form.describe', { complaint: 'free', exam: clinic.exam }));
    await code_refused(`${when}: a kiosk withdraws in another exam`, 'exam.not_yours', () => clinic.ask(kiosk, 'finding.withdraw', { exam: clinic.exam, finding: clinic.exam, reason: 'x', seen: clinic.seen, request: randomUUID() }));
    await code_refused(`${when}: a kiosk opens another exam`, 'exam.not_yours', () => clinic.ask(kiosk, 'exam.open', { request: randomUUID(), complaint: 'free', setting: 'outreach' }));
    await code_refused(`${when}: a kiosk opens an exam of a person`, 'token.scope', () => clinic.ask(kiosk, 'exam.open', { request: randomUUID(), person: clinic.person, complaint: 'free', setting: 'outreach' }));
    await code_refused(`${when}: a kiosk records what a hand finds`, 'item.hands_on', () => record(clinic.second, answer('knee.patella_tender')));
    await code_refused(`${when}: a kiosk records what is asked in private`, 'item.hands_on', () => record(clinic.second, { ...answer('history.hurt_or_afraid'), side: 'midline' }));
    await code_refused(`${when}: a kiosk names an examiner`, 'token.scope', () => record(clinic.second, { ...answer('history.pop'), examiner: clinic.person }));
    await count.check(`${when}: a kiosk learns nothing of another's request`, async () => {
      tries += 1;
      return is((await clinic.need(kiosk, 'request.read', { request: again.request })).state, 'unknown');
    });
    await count.check(`${when}: a kiosk reads its own exam`, async () => is((await clinic.need(kiosk, 'exam.read', { exam: clinic.second })).exam.exam, clinic.second));
  };
  await out_of_its_exam('unlocked');
  await clinic.need(examiner, 'ledger.lock');
  await out_of_its_exam('locked');
  await code_refused('a viewer while a kiosk goes on', 'ledger.locked', () => clinic.ask(viewer, 'exam.read', { exam: clinic.second }));
  await clinic.unlock();
  await clinic.need(examiner, 'token.end', { number: made.number });
  await refused('a kiosk whose token was ended', [401, 'token.expired'], () => clinic.ask(kiosk, 'exam.read', { exam: clinic.second }));
  await code_refused('ending a token twice', 'token.unknown', () => clinic.ask(examiner, 'token.end', { number: made.number }));

  // Slow, half, and many.
  const half = Array.from({ length: 80 }, () => connect(Number(port), '127.0.0.1', function begin() { this.write('POST /rpc HTTP/1.1\r\nHost: '); }).on('error', () => {}));
  await count.check('behind eighty half requests whoever asks is served', async () => {
    tries += 1;
    return is((await clinic.ask(examiner, 'health.check')).status, 200);
  });
  const slow = half.slice(-3).map((socket) => hear(socket));
  await count.check('a head that never ends is told so: 408, or 503 where it had to give way', async () => {
    tries += 1;
    const answers = (await Promise.all(slow)).map(status_of);
    return answers.every(([status, code]) => (status === 408 && code === 'limit.time') || (status === 503 && code === 'limit.rate')) || JSON.stringify(answers);
  });
  for (const socket of half) socket.destroy();
  await count.check('twenty thousand messages at once are all answered, those too many with limit.rate and their own id', async () => {
    tries += 1;
    const line = await open_socket(websocket);
    line.say(call('session.open', { token: viewer }, 'open'));
    await line.next();
    for (let at = 0; at < 20000; at += 1) line.say(call('session.open', {}, at));
    let too_many = 0;
    for (let at = 0; at < 20000; at += 1) {
      const said = await line.next();
      if (said === undefined) return `closed after ${at} with ${await line.closed()}`;
      const reply = JSON.parse(said);
      if (reply.id !== at) return `${reply.id} for ${at}`;
      too_many += reply.error?.data.faults[0].code === 'limit.rate' ? 1 : 0;
      if (reply.error && reply.error.data.faults[0].params.messages_a_second !== 1000) return said;
    }
    await line.close();
    return too_many > 0 || 'none was refused';
  });
  for (const [name, expected, act] of [
    ['too large', ['limit.size', 1009], (line) => line.say(big)], ['binary', ['websocket.binary', 1003], (line) => line.say(Buffer.from('{}'))], ['silence', ['token.missing', 1008], () => {}],
  ]) {
    await count.check(`WebSocket: ${name} is answered ${expected[0]} and closed with ${expected[1]}`, async () => {
      tries += 1;
      const line = await open_socket(websocket);
      act(line);
      return is([code_of(await line.next()), await line.closed()], expected);
    });
  }
  await count.check('WebSocket: calls before the session, and a wrong token, are refused', async () => {
    tries += 2;
    const line = await open_socket(websocket);
    line.say(call('person.find'));
    line.say(call('session.open', { token: before }));
    const found = [code_of(await line.next()), code_of(await line.next())];
    await line.close();
    return is(found, ['token.missing', 'token.unknown']);
  });
  await count.check('what a kiosk was told is recorded while the ledger is locked outlives a kill, as the person\'s own word', async () => {
    const { token } = await clinic.need(examiner, 'token.make', { scope: 'kiosk', exam: clinic.second });
    await clinic.need(examiner, 'ledger.lock');
    const { recorded } = await clinic.need(token, 'finding.record', { exam: clinic.second, seen: clinic.second_seen, request: randomUUID(), findings: [{ ...answer('history.pop'), side: 'right' }] });
    await clinic.stop('SIGKILL');
    await clinic.serve();
    const stale = await clinic.ask(token, 'exam.read', { exam: clinic.second });
    await clinic.unlock();
    const { exam } = await clinic.need(clinic.examiner, 'exam.read', { exam: clinic.second });
    return is([stale.code, exam.findings.map(({ finding, origin, entered_by }) => [finding, origin, entered_by ?? 'nobody'])], ['token.unknown', [[recorded[0].finding, 'self_reported', 'nobody']]]);
  });
  count.note('at least forty tries', tries >= 40, String(tries));
  await count.check('nothing was hurt: the ledger holds, and the program ends well', async () => {
    const { damage } = await clinic.need(clinic.examiner, 'ledger.verify');
    return is([damage, await clinic.stop()], [[], 0]);
  });
} catch (error) {
  count.note('the tries came to their end', false, error.stack);
} finally {
  clinic.child?.kill('SIGKILL');
  clinic.gone();
}
count.close();
