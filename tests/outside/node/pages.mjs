// stage: outside
// Pages that a sidecar serves, in the system's own Chromium without a window: the client library loaded by a page over both carriers,
// and the kiosk of examples/kiosk filled by the keyboard alone. Size of what is touched: WCAG 2.2, success criterion 2.5.5 (44 px).
//   node pages.mjs [FOLDER]      takes limbledger of $LIMBLEDGER_BUILD; with FOLDER each screen is kept there as a picture

import { spawn, spawnSync } from 'node:child_process';
import { randomUUID } from 'node:crypto';
import { cpSync, existsSync, mkdirSync, mkdtempSync, openSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { open_browser } from './lib/browser.mjs';
import { Count } from './lib/count.mjs';
import { guard, post } from './lib/network.mjs';

const top = fileURLToPath(new URL('../../../', import.meta.url));
const program = join(process.env.LIMBLEDGER_BUILD ?? join(top, 'build'), 'limbledger');
const client = join(top, 'clients/typescript');
const kiosk = join(top, 'examples/kiosk');
const pictures = process.argv[2];
const scratch = mkdtempSync(join(tmpdir(), 'limbledger-pages-'));
const count = new Count();
const is = (found, expected) => JSON.stringify(found) === JSON.stringify(expected) || `${JSON.stringify(found)}, expected ${JSON.stringify(expected)}`;
const call = (method, params = {}) => JSON.stringify({ jsonrpc: '2.0', id: 1, method, params });

const running = [];
const serve = async (ledger, ...words) => {
  const child = spawn(program, ['serve', '--ledger', ledger, '--http', '0', ...words], { stdio: ['ignore', 'ignore', 'pipe'] });
  const ended = new Promise((resolve) => child.on('close', resolve));
  running.push(child);
  let said = '';
  const link = await guard(new Promise((resolve) => child.stderr.on('data', (part) => {
    said += part;
    const found = (words.includes('--once') ? /(http:\S+#once=[\w-]+)\n/ : /serving on (\S+)\n/).exec(said);
    if (found) resolve(found[1]);
  })), 'no link');
  const sidecar = JSON.parse(readFileSync(join(ledger, 'sidecar.json'), 'utf8'));
  return { link, ...sidecar, token: sidecar.tokens[0].token, kill: (signal) => { child.kill(signal); return guard(ended, 'still running'); } };
};
const new_ledger = (name, ...words) => {
  const ledger = join(scratch, name);
  writeFileSync(join(scratch, 'secret'), 'four words that fit\n');
  const made = spawnSync(program, ['new', ledger, ...words], { stdio: ['ignore', 'pipe', 'pipe', openSync(join(scratch, 'secret'), 'r')], encoding: 'utf8' });
  return { ledger, printed: made.stdout };
};
// As the examiner, with the token of sidecar.json.
const ask = async ({ http, token }, method, params = {}) => {
  const { result, error } = JSON.parse((await post(http, call(method, params), { Authorization: `Bearer ${token}` })).text);
  if (error) throw new Error(`${method}: ${JSON.stringify(error)}`);
  return result;
};
const kiosk_link = async (sidecar, params = {}) =>
  `${new URL(sidecar.http).origin}/#once=${(await ask(sidecar, 'token.make', { scope: 'kiosk', once: true, ...params })).once}`;

// Timers of a second or more are run when the test says so.
const by_hand = `{
  const real = window.setTimeout, real_clear = window.clearTimeout, held = new Map();
  let last = 0;
  window.setTimeout = (action, ms, ...rest) => (ms >= 1000 ? (held.set(--last, action), last) : real(action, ms, ...rest));
  window.clearTimeout = (id) => (held.delete(id) ? undefined : real_clear(id));
  const open = window.WebSocket;
  window.sockets = [];
  window.WebSocket = class extends open { constructor(...words) { super(...words); window.sockets.push(this); } };
  window.run_timers = () => { const all = [...held.values()]; held.clear(); for (const one of all) one(); return all.length; };
}`;
// The next finding.record is answered by the page itself, with this error; what was sent is kept.
const answering = `{
  const send = WebSocket.prototype.send;
  window.sent = [];
  WebSocket.prototype.send = function (text) {
    const message = JSON.parse(text);
    if (message.method !== 'finding.record') return send.call(this, text);
    window.sent.push(message.params);
    const error = window.next_error;
    window.next_error = undefined;
    if (!error) return send.call(this, text);
    queueMicrotask(() => this.onmessage({ data: JSON.stringify({ jsonrpc: '2.0', id: message.id, error }) }));
  };
}`;
const error_of = (code, fault) => JSON.stringify({ code, message: 'x', data: { retry: false, faults: [{ code: fault, path: '/findings/0/value', hint: 'check it' }] } });
const text_of = (page) => page.value('document.querySelector("main").innerText');
const heading = (page, words) => page.until(`document.querySelector('h1')?.textContent.includes(${JSON.stringify(words)})`);
const keys = async (page, ...all) => { for (const key of all) await page.press(key); };
let shots = 0;
// Keeps what is seen, and gives what is too small to be touched.
const look = async (page, name) => {
  if (pictures) writeFileSync(join(pictures, `${String(++shots).padStart(2, '0')}-${name}.png`), await page.picture());
  return page.value(`[...document.querySelectorAll('button, select, textarea, .tick')].map((one) => [one.textContent.slice(0, 20), one.getBoundingClientRect()])
    .filter(([, at]) => at.width < 44 || at.height < 44).map(([words]) => words)`);
};

if (!(await count.note('Chromium is there, or can be installed', spawnSync('bash', [join(top, '.ci/needs'), 'browser']).status === 0))) {
  count.close();
  process.exit(1);
}
if (pictures) mkdirSync(pictures, { recursive: true });
const browser = await open_browser();
try {
  // What the page does is what its README says of a page.
  if (!existsSync(join(client, 'dist/index.js'))) {
    spawnSync('npm', ['ci', '--ignore-scripts', '--no-audit', '--no-fund'], { cwd: client });
    spawnSync('npm', ['run', 'build'], { cwd: client });
  }
  const pages = join(scratch, 'pages');
  cpSync(join(client, 'dist'), pages, { recursive: true, filter: (name) => !name.endsWith('.d.ts') });
  writeFileSync(join(pages, 'index.html'), '<!doctype html><link rel="icon" href="data:,"><title>client</title><script type="module" src="page.js"></script>');
  writeFileSync(join(pages, 'page.js'), `
    import { AskedBack, Client, new_request, with_confirmed } from './index.js';
    const once = /#once=(.+)/.exec(location.hash)[1];
    const at = { http: location.origin + '/rpc', websocket: 'ws://' + location.host + '/rpc' };
    const client = new Client({ at, once, carrier: new URLSearchParams(location.search).get('carrier') });
    try {
      const { exam: { exam }, revision } = await client.call('exam.open', { complaint: 'acute_knee', side: 'left', setting: 'outreach', request: new_request() });
      const told = client.changes();
      await told.next();
      const record = { exam, seen: revision, request: new_request(), findings: [{ item: 'knee.flexion_active', side: 'left', value: { kind: 'angle', toward_deg: 168 }, instrument: 'goniometer_long' }] };
      const asked = await client.call('finding.record', record).catch((error) => error);
      const waiting = told.next();
      const { recorded } = await client.call('finding.record', with_confirmed(record, asked));
      const { value } = await waiting;
      window.done = [asked instanceof AskedBack, recorded.length, value.changes[0].object === exam];
    } catch (error) { window.done = String(error); }
  `);
  for (const carrier of ['websocket', 'http']) {
    await count.check(`the client in a page, over ${carrier}: let in by the link, asked back, told of the change`, async () => {
      const { ledger } = new_ledger(`client-${carrier}`, '--demo');
      const { link } = await serve(ledger, '--pages', pages, '--once');
      const page = await browser.open_page(link.replace('/#', `/?carrier=${carrier}#`));
      return is([await page.until('window.done'), page.complaints()], [[true, 1, true], []]);
    });
  }

  const { ledger } = new_ledger('kiosk', '--demo');
  const sidecar = await serve(ledger, '--pages', kiosk);
  const page = await browser.open_page(await kiosk_link(sidecar), { before: by_hand });
  const small = [];
  let asked = [];
  await count.check('kiosk: the link opens it and leaves the address; it says whose answers they are and that people are invented', async () => {
    await heading(page, 'For the staff');
    small.push(...await look(page, 'start'));
    const head = await page.value('document.querySelector("header").innerText');
    return is([await page.value('location.hash'), head.includes('reported, not examined'), head.includes('DEMONSTRATION')], ['', true, true]);
  });
  await count.check('kiosk: nothing is handed over before the person was asked who they are', () => page.value('[...document.querySelectorAll("button")].every((one) => one.disabled)'));
  await count.check('kiosk: filled by the keyboard alone; a dangerous answer calls the staff', async () => {
    await keys(page, 'Tab', 'Tab', ' ', 'Tab', ' ', 'Tab', 'Enter');
    await heading(page, 'own words');
    await keys(page, 'Tab');
    await page.type('it went out when I turned');
    small.push(...await look(page, 'words'));
    await keys(page, 'Tab', 'Enter');
    let called = 0;
    for (let at = 2; ; at += 1) {
      const place = `Question ${at} of `;
      await page.until(`document.querySelector('#place').textContent.startsWith(${JSON.stringify(place)}) || document.querySelector('h1').textContent === 'Thank you'`);
      const title = await page.value('document.querySelector("h1").textContent');
      if (title === 'Thank you') break;
      asked.push(title);
      await keys(page, 'Tab');
      const outlined = await page.value('parseFloat(getComputedStyle(document.activeElement).outlineWidth) >= 3');
      if (!outlined) return `the focus cannot be seen at ${title}`;
      if (at < 15) small.push(...await look(page, `question-${at}`));
      const yes_and_no = await page.value('[...document.querySelectorAll("button")].some((one) => one.textContent === "No")');
      const fever = title.startsWith('Fever');
      await keys(page, ...(yes_and_no && !fever ? ['Tab'] : []), 'Enter');
      if (fever) {
        await heading(page, 'tell the staff now');
        small.push(...await look(page, 'staff'));
        called += 1;
        await keys(page, 'Tab', 'Enter');
      }
    }
    small.push(...await look(page, 'end'));
    return is([called, asked.length > 20], [1, true]);
  });
  await count.check('kiosk: everything that is touched is large enough', () => is(small, []));
  await count.check('kiosk: at the end every answer is marked, in the words of the record', async () => {
    const marks = await page.value('[...document.querySelectorAll("dd .mark")].map((one) => one.textContent)');
    return is([marks.length, new Set(marks).size, marks[0]], [asked.length + 1, 1, 'reported, not examined']);
  });
  await count.check('kiosk: an answer that is changed replaces the one before', async () => {
    await page.value('[...document.querySelectorAll("button")].find((one) => one.textContent === "Back to the questions").click()');
    await heading(page, 'own words');
    await keys(page, 'Tab');
    await page.type(', twice');
    await keys(page, 'Tab', 'Enter');
    await page.until('document.querySelector("#place").textContent.startsWith("Question 2 ")');
    return true;
  });
  await count.check('kiosk: it asks after a while whether somebody is there, goes on, and else forgets', async () => {
    await page.value('run_timers()');
    await heading(page, 'still there');
    const hidden = !(await text_of(page)).includes('How it happened');
    await look(page, 'still-there');
    await keys(page, 'Tab', 'Enter');
    await page.until('document.querySelector("h1").textContent === "How it happened"');
    await page.value('run_timers()');
    await heading(page, 'still there');
    await page.value('run_timers()');
    await heading(page, 'The form was closed');
    await look(page, 'closed');
    return is([hidden, (await text_of(page)).includes('it went out')], [true, false]);
  });
  await count.check('kiosk: the link of an exam that is open asks at once, goes on after a lost connection, and says what is kept', async () => {
    const { exam: { exam } } = await ask(sidecar, 'exam.open', { complaint: 'acute_knee', side: 'right', setting: 'outreach', request: randomUUID() });
    const next = await browser.open_page(await kiosk_link(sidecar, { exam }), { before: by_hand });
    await heading(next, 'own words');
    await keys(next, 'Tab');
    await next.type('somebody else');
    await keys(next, 'Tab', 'Enter');
    await next.until('document.querySelector("#place").textContent.startsWith("Question 2 ")');
    await next.value('sockets.at(-1).close()');
    await heading(next, 'connection to the record is lost');
    const words = await text_of(next);
    await look(next, 'lost');
    await keys(next, 'Tab', 'Enter');
    await heading(next, 'How it happened');
    await keys(next, 'Tab', 'Enter');
    await next.until('document.querySelector("#place").textContent.startsWith("Question 3 ")');
    await sidecar.kill('SIGKILL');
    await heading(next, 'connection to the record is lost');
    return is([words.includes('1 answer is kept'), (await text_of(next)).includes('2 answers are kept')], [true, true]);
  });
  await count.check('kiosk: the record holds two exams without a person, all of it reported by themselves and entered by nobody', async () => {
    const reader = await serve(ledger);
    const { exams } = await ask(reader, 'exam.find');
    const found = [];
    for (const one of exams) found.push((await ask(reader, 'exam.read', { exam: one.exam })).exam);
    await reader.kill();
    const [first, second] = found.sort((a, b) => b.findings.length - a.findings.length);
    const all = [...first.findings, ...second.findings];
    const words = ({ findings }) => findings.find((one) => one.item === 'history.own_words').value.text;
    return is([found.length, first.findings.length, second.findings.length, words(first), words(second), [...new Set(all.map((one) => one.origin))],
      all.some((one) => one.entered_by || one.examiner), found.some((one) => one.person)],
    [2, asked.length + 1, 2, 'it went out when I turned, twice', 'somebody else', ['self_reported'], false, false]);
  });

  await count.check('kiosk: locked, full or asked back amid the questions, the same request is sent again, and nothing counts before', async () => {
    const served = await serve(ledger, '--pages', kiosk);
    const form = await browser.open_page(await kiosk_link(served), { before: answering });
    await heading(form, 'For the staff');
    await keys(form, 'Tab', 'Tab', ' ', 'Tab', ' ', 'Tab', 'Enter');
    await heading(form, 'own words');
    await keys(form, 'Tab');
    await form.type('a third person');
    await form.value(`next_error = ${error_of(4, 'ledger.locked')}`);
    await keys(form, 'Tab', 'Enter');
    await heading(form, 'The record is locked');
    const unkept = (await text_of(form)).includes('not kept yet');
    await form.value(`next_error = ${error_of(5, 'ledger.read_only')}`);
    await keys(form, 'Tab', 'Enter');
    await heading(form, 'Nothing can be written now');
    await form.value(`next_error = ${error_of(2, 'value.unusual')}`);
    await keys(form, 'Tab', 'Enter');
    await heading(form, 'look at this answer again');
    await look(form, 'asked-back');
    await keys(form, 'Tab', 'Enter');
    await form.until('document.querySelector("#place").textContent.startsWith("Question 2 ")');
    const sent = await form.value('sent');
    await served.kill();
    return is([unkept, sent.length, new Set(sent.map((one) => one.request)).size, sent.map((one) => one.findings[0].confirmed ?? [])], [true, 4, 1, [[], [], [], ['value.unusual']]]);
  });

  const practice = new_ledger('practice', '--practice', '--examiner', 'Amina', '--passphrase-fd', '3');
  const served = await serve(practice.ledger, '--pages', kiosk);
  const unlock = (words) => ask(served, 'ledger.unlock', { passphrase: words });
  await count.check('kiosk: a locked record says so, and goes on once it is unlocked; a link is good once', async () => {
    await unlock('four words that fit');
    const link = await kiosk_link(served);
    await ask(served, 'ledger.lock');
    const shut = await browser.open_page(link);
    await heading(shut, 'The record is locked');
    await look(shut, 'locked');
    await unlock('four words that fit');
    await keys(shut, 'Tab', 'Enter');
    await heading(shut, 'For the staff');
    const head = await shut.value('document.querySelector("header").innerText');
    const again = await browser.open_page(link);
    await heading(again, 'This link cannot be used');
    await look(again, 'used');
    return head.includes('PRACTICE');
  });
  await count.check('kiosk: a form whose exam is there goes on while the record is locked, and closing it ends its token', async () => {
    const { exam: { exam } } = await ask(served, 'exam.open', { complaint: 'acute_knee', side: 'left', setting: 'outreach', request: randomUUID() });
    const link = await kiosk_link(served, { exam });
    await ask(served, 'ledger.lock');
    const form = await browser.open_page(link, { before: by_hand });
    await heading(form, 'own words');
    await keys(form, 'Tab');
    await form.type('told while locked');
    await keys(form, 'Tab', 'Enter');
    await form.until('document.querySelector("#place").textContent.startsWith("Question 2 ")');
    await form.value('run_timers()');
    await heading(form, 'still there');
    await form.value('run_timers()');
    await heading(form, 'The form was closed');
    await look(form, 'closed-locked');
    await unlock('four words that fit');
    const { exam: read } = await ask(served, 'exam.read', { exam });
    const { tokens } = await ask(served, 'token.list');
    return is([read.findings.map((one) => one.value.text), tokens.some((one) => one.exam === exam && one.state === 'good')], [['told while locked'], false]);
  });
  await count.check('kiosk: a record that was opened for reading only takes nothing, and says so', async () => {
    const [, recovery] = /Recovery code, shown this once:\n\n +(\S.*?)\s*\n/.exec(practice.printed);
    const link = await kiosk_link(served);
    await ask(served, 'ledger.lock');
    await unlock(recovery);
    const open = await browser.open_page(link);
    await heading(open, 'Nothing can be written now');
    await look(open, 'read-only');
    return true;
  });
  await count.check('kiosk: nothing was reported by the browser but the connection that broke', () => is(page.complaints().filter((one) => !/WebSocket|ERR_CONNECTION/.test(one)), []));
} finally {
  await browser.close();
  for (const one of running) one.kill('SIGKILL');
  rmSync(scratch, { recursive: true, force: true });
}
count.close();
