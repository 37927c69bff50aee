// stage: outside
// Nothing about a person, no token and no passphrase leaves the sealed entries: a program that records marked, invented people,
// and is made to refuse with every kind of error, is looked through afterwards: its log, what it says on the terminal, the
// discovery file, its own command line and surroundings under /proc, and every file of the ledger's folder. Source: the
// design's rule that a log names codes and methods only; contract, sections 8 and 11.
//   node quiet.mjs      takes limbledger of $LIMBLEDGER_BUILD

import { spawnSync } from 'node:child_process';
import { randomUUID } from 'node:crypto';
import { readFileSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Clinic, call, marked, passphrase } from './lib/clinic.mjs';
import { Count } from './lib/count.mjs';
import { open_socket, post, raw } from './lib/network.mjs';

const build = process.env.LIMBLEDGER_BUILD ?? fileURLToPath(new URL('../../../build', import.meta.url));
const count = new Count();
const clinic = new Clinic([join(build, 'limbledger')]);

const files_below = (folder) => readdirSync(folder, { withFileTypes: true }).flatMap((one) => (one.isDirectory() ? files_below(join(folder, one.name)) : [join(folder, one.name)]));
const tried = (name, text, words) => count.check(name, () => {
  const found = words.filter((word) => text.includes(word));
  return found.length === 0 || `says ${found.join(', ')}`;
});

try {
  count.note('a ledger is made', clinic.made.status === 0, clinic.made.stderr);
  const code = /[A-Z2-7]{4}(?:[ -][A-Z2-7]{4}){8}/.exec(clinic.made.stdout)?.[0];
  count.note('its recovery code was printed', code !== undefined, clinic.made.stdout);
  await clinic.serve('--once');
  const { examiner, url } = clinic;
  await clinic.ask(examiner, 'person.find', { text: marked[0] });
  await clinic.ask(examiner, 'ledger.unlock', { examiner: marked[0], passphrase: `wrong ${marked[1]}` });
  await clinic.ask(examiner, 'ledger.unlock', { examiner: 'Amina', passphrase: `wrong ${marked[1]}` });
  await clinic.ask(examiner, 'ledger.unlock', { examiner: 'Amina', passphrase });
  await new Promise((resolve) => { setTimeout(resolve, 1500); });
  await clinic.unlock();
  await clinic.fill();
  const kiosk = (await clinic.need(examiner, 'token.make', { scope: 'kiosk', exam: clinic.second, label: 'waiting room' })).token;
  const finding = (item, side, value) => ({ exam: clinic.exam, seen: clinic.seen, request: randomUUID(), findings: [{ item, side, value }] });
  const yes = { kind: 'answer', answer: 'yes' };
  const again = randomUUID();
  await clinic.need(examiner, 'person.register', { request: again, names: [{ text: marked[0] }], sex: 'female' });
  for (const [method, params] of [
    ['finding.record', finding(marked[4], 'left', yes)], ['finding.record', finding('history.pop', marked[4], yes)], ['finding.record', finding('history.pop', 'left', { kind: 'answer', answer: marked[4] })],
    ['finding.record', finding('history.pop', 'left', yes)], ['finding.record', finding('knee.flexion_active', 'left', { kind: 'angle', deg: 190 })], ['finding.record', finding('knee.flexion_active', 'left', { kind: 'angle', deg: 168 })],
    ['person.register', { request: again, names: [{ text: marked[1] }], sex: 'male' }], ['person.register', { request: randomUUID(), names: [{ text: `${marked[0]}\u0007` }], sex: 'female' }],
    ['person.register', { request: randomUUID(), names: [{ text: marked[0].repeat(20) }], sex: 'female' }], ['person.register', { request: randomUUID(), names: [{ text: marked[0] }], sex: marked[1] }],
    ['person.register', { request: randomUUID(), names: [{ text: marked[0] }], sex: 'female', [marked[1]]: 1 }], ['person.read', { person: marked[3] }], ['person.read', { person: 'a'.repeat(26) }],
    ['exam.open', { request: randomUUID(), complaint: marked[4], setting: 'outreach' }], ['exam.read', { exam: marked[3] }], ['person.find', { text: marked[0], cursor: marked[1] }], [marked[1], { text: marked[0] }],
    ['changes.read', { cursor: marked[1] }], ['session.open', { token: marked[0] }], ['session.open', { once: marked[0] }], ['examiner.add', { code: marked[3], examiner: marked[0], passphrase: `${marked[1]} and more words` }],
    ['note.write', { exam: clinic.exam, language: marked[1] }], ['place.read', { place: marked[3] }], ['impression.record', { exam: clinic.exam, seen: [marked[3]], request: randomUUID(), impression: { text: marked[5] }, replaces: [] }],
  ]) {
    await clinic.ask(examiner, method, params);
  }
  await clinic.ask(kiosk, 'person.find', { text: marked[0] });
  await clinic.ask(kiosk, 'exam.read', { exam: clinic.exam });
  for (const text of [`{"${marked[0]}`, `["${marked[0]}"]`, `{"jsonrpc":"${marked[0]}","id":"${marked[1]}","method":"x"}`, `${'['.repeat(50)}"${marked[0]}"${']'.repeat(50)}`, `{"jsonrpc":"2.0","id":1,"method":"person.find","params":{"text":"${marked[0].repeat(1 << 16)}"}}`]) {
    clinic.noted(await post(url, text, { Authorization: `Bearer ${examiner}` }));
  }
  clinic.noted(await post(`${clinic.origin}/${encodeURIComponent(marked[0])}`, '{}', { Authorization: `Bearer ${examiner}` }));
  clinic.noted(await post(url, call('person.find'), { Authorization: `Bearer ${marked[0]}` }));
  clinic.noted(await post(url, call('person.find'), { Origin: `http://${marked[0].replaceAll(' ', '.')}.example` }));
  await raw(url, { method: 'GET', headers: { 'X-Name': marked[0] } });
  const line = await open_socket(clinic.sidecar.websocket);
  line.say(call('session.open', { token: examiner, client: marked[0] }));
  await line.next();
  line.say(call('exam.read', { exam: clinic.exam, [marked[1]]: 1 }, marked[0]));
  await line.next();
  await line.close();

  // Every number that a refusal of a caller can have; what is left is a full disk, damage, too many calls and a failure inside.
  const numbers = new Set(clinic.codes.values());
  for (const number of [-32700, -32600, -32601, -32602, 1, 2, 3, 4, 6, 8]) {
    count.note(`an error of the number ${number} was provoked`, numbers.has(number), [...clinic.codes.keys()].join(' '));
  }
  const secrets = [passphrase, examiner, kiosk, /#once=([\w-]+)/.exec(clinic.said)[1], code];
  await tried('the log names nobody', clinic.log(), [...marked, ...secrets, clinic.person, clinic.exam]);
  await count.check('and names codes and methods', () => ['token.scope', 'person.register', 'value.out_of_range', 'json.syntax'].every((word) => clinic.log().includes(word)));
  await tried('nor does what it says on the terminal', clinic.said, [...marked, passphrase, examiner, kiosk, code]);
  await tried('the discovery file names nobody', readFileSync(join(clinic.ledger, 'sidecar.json'), 'utf8'), [...marked, passphrase, kiosk, code]);
  await count.check('the discovery file is the owner\'s alone', () => (statSync(join(clinic.ledger, 'sidecar.json')).mode & 0o777) === 0o600);
  const proc = `/proc/${clinic.child.pid}`;
  await tried('its command line holds no person, token or passphrase', readFileSync(`${proc}/cmdline`, 'latin1'), [...marked, ...secrets]);
  // Another user cannot read it at all; root, as in a container, can.
  let around = '';
  try {
    around = readFileSync(`${proc}/environ`, 'latin1');
  } catch (error) {
    count.note('its surroundings cannot even be read', error.code === 'EACCES', error.code);
  }
  await tried('nor do its surroundings', around, [...marked, ...secrets]);
  for (const file of files_below(clinic.ledger).filter((name) => !name.endsWith('sidecar.json'))) {
    await tried(`${file.slice(clinic.ledger.length + 1)} holds nothing readable of anybody`, readFileSync(file, 'latin1'), [...marked, ...secrets]);
  }
  // The command of the owner: the token goes into a file, and is said nowhere.
  const limbledger = (...words) => spawnSync(join(build, 'limbledger'), [...words, '--ledger', clinic.ledger], { encoding: 'utf8', input: '' });
  const to = join(clinic.scratch, 'viewer');
  const made = limbledger('token', 'make', '--scope', 'viewer', '--minutes', '30', '--to', to);
  const viewer = readFileSync(to, 'utf8').trim();
  const listed = limbledger('token', 'list');
  await count.check('a token made by the command is the owner\'s alone and printed nowhere', async () => {
    const works = await clinic.ask(viewer, 'person.find');
    return made.status === 0 && (statSync(to).mode & 0o777) === 0o600 && viewer.length === 43 && works.result !== undefined && !`${made.stdout}${made.stderr}${listed.stdout}`.includes(viewer) && listed.stdout.includes('viewer');
  });
  await count.check('and is ended by it', async () => {
    const ended = limbledger('token', 'end', /token (\d+)/.exec(made.stdout)[1]);
    const after = await clinic.ask(viewer, 'person.find');
    return (ended.status === 0 && after.status === 401 && after.code === 'token.expired') || `${ended.stderr} ${after.text}`;
  });
  await count.check('a second program on this ledger is refused by name', () => {
    const second = limbledger('serve', '--http', '0');
    return (second.status === 4 && second.stderr.includes('ledger.in_use') && second.stderr.includes(String(clinic.child.pid))) || second.stderr;
  });
  count.note('it ends well', (await clinic.stop()) === 0);
  await count.check('after a clean stop nothing serves there, and the command says so', () => {
    const alone = limbledger('token', 'list');
    return (alone.status === 4 && alone.stderr.includes('what to do')) || alone.stderr;
  });

  // The other command that opens a ledger.
  const wrong = spawnSync(join(build, 'limbledger'), ['verify', clinic.ledger, '--passphrase-fd', '3'], { encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe', 'ignore'] });
  await tried('what verify says names nobody', wrong.stdout + wrong.stderr, [...marked, ...secrets]);
} catch (error) {
  count.note('the talk came to its end', false, error.stack);
} finally {
  clinic.child?.kill('SIGKILL');
  clinic.gone();
}
count.close();
