// stage: outside
// A demonstration in memory (serve --demo) over its real carriers: the same calls give the same answers, and --trouble plays what else can
// happen; its description page in the system's own Chromium, by keyboard, at two widths. Contrast and size of what is touched: WCAG 2.2,
// success criteria 1.4.6 (7 to 1) and 2.5.5 (44 px); no sideways scrolling: 1.4.10.
//   node description.mjs [FOLDER]   takes limbledger of $LIMBLEDGER_BUILD; with FOLDER each screen is kept there as a picture

import { spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, openSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import WebSocket from 'ws';
import { open_browser } from './lib/browser.mjs';
import { Count } from './lib/count.mjs';
import { guard, post, raw } from './lib/network.mjs';

const top = fileURLToPath(new URL('../../../', import.meta.url));
const program = join(process.env.LIMBLEDGER_BUILD ?? join(top, 'build'), 'limbledger');
const pictures = process.argv[2];
const scratch = mkdtempSync(join(tmpdir(), 'limbledger-description-'));
const count = new Count();
const is = (found, expected) => JSON.stringify(found) === JSON.stringify(expected) || `${JSON.stringify(found)}, expected ${JSON.stringify(expected)}`;
const running = [];

// Starts it and waits for its address; its tokens stand in the folder that it names.
const serve = async (...words) => {
  const child = spawn(program, ['serve', '--http', '0', ...words], { stdio: ['ignore', 'ignore', 'pipe'], env: { ...process.env, TMPDIR: scratch } });
  const ended = new Promise((resolve) => child.on('close', (code, signal) => resolve(signal ?? code)));
  running.push(child);
  let said = '';
  const wanted = words.includes('--once') ? /(http:\S+#once=[\w-]+)\n/ : /serving on (\S+)\n/;
  const link = await guard(new Promise((resolve, reject) => {
    child.stderr.on('data', (part) => { said += part; const found = wanted.exec(said); if (found) resolve(found[1]); });
    ended.then(() => reject(new Error(`ended: ${said}`)));
  }), 'no address');
  const folder = words.includes('--ledger') ? words[words.indexOf('--ledger') + 1] : /sidecar\.json lies in (\S+)\n/.exec(said)[1];
  const sidecar = JSON.parse(readFileSync(join(folder, 'sidecar.json'), 'utf8'));
  const token = sidecar.tokens[0].token;
  const ask = async (method, params = {}) => JSON.parse((await post(sidecar.http, JSON.stringify({ jsonrpc: '2.0', id: 1, method, params }), { Authorization: `Bearer ${token}` })).text);
  return { link, folder, ended, ask, token, said: () => said, ...sidecar, stop: (signal = 'SIGTERM') => { child.kill(signal); return guard(ended, 'still running'); } };
};
const uuid = (number) => `00000000-0000-4000-8000-${String(number).padStart(12, '0')}`;
const code_of = (reply) => reply.error?.data.faults[0].code ?? 'answered';
const register = (number) => ['person.register', { names: [{ text: 'Wulan Invented' }], sex: 'female', request: uuid(number) }];
const run = (...words) => spawnSync(program, words, { encoding: 'utf8', timeout: 60000 });

// ---- the demonstration, and trouble

await count.check('the same calls on a demonstration in memory get the same bytes, and it leaves nothing behind', async () => {
  const told = [];
  for (const turn of [1, 2]) {
    const demo = await serve('--demo');
    const all = [];
    all.push(await demo.ask('person.find', { text: 'invented' }), await demo.ask(...register(1)));
    const opened = await demo.ask('exam.open', { complaint: 'acute_knee', side: 'left', setting: 'outreach', request: uuid(2) });
    const exam = opened.result.exam.exam;
    all.push(opened, await demo.ask('finding.record', { exam, seen: opened.result.revision, request: uuid(3),
      findings: [{ item: 'vessel.pulse_dorsalis_pedis', side: 'left', value: { kind: 'grade', scale: 'pulse/0-3', grade: '0' } }] }));
    all.push(await demo.ask('exam.assess', { exam, language: 'en' }), await demo.ask('note.write', { exam }), await demo.ask('ledger.verify'));
    told.push(JSON.stringify(all));
    if (all.some((one) => one.error)) return JSON.stringify(all.find((one) => one.error));
    if ((await demo.ask('health.check')).result.ledger_kind !== 'demonstration') return `turn ${turn}: not said to be a demonstration`;
    await demo.stop();
    if (existsSync(demo.folder)) return `${demo.folder} is left`;
  }
  return told[0] === told[1] || 'they differ';
});
await count.check('slow: a reply comes no sooner than it is told to', async () => {
  const demo = await serve('--demo', '--trouble', 'slow=300');
  const before = process.hrtime.bigint();
  const { result } = await demo.ask('health.check');
  const ms = Number(process.hrtime.bigint() - before) / 1e6;
  await demo.stop();
  return (ms >= 300 && result.state === 'ready') || `${ms} ms`;
});
await count.check('HC-111: full after two messages: what came before is read, nothing is written, and health.check says read_only', async () => {
  const demo = await serve('--demo', '--trouble', 'full=2');
  const codes = [code_of(await demo.ask(...register(1))), code_of(await demo.ask('person.find', { text: 'wulan' })), code_of(await demo.ask(...register(2)))];
  const state = (await demo.ask('health.check')).result.state;
  const found = (await demo.ask('person.find', { text: 'wulan' })).result.people.length;
  await demo.stop();
  return is([codes, state, found], [['answered', 'answered', 'ledger.read_only'], 'read_only', 1]);
});
await count.check('HC-114: locked after one message, over WebSocket: the typed answer, and the examiner of the page unlocks it', async () => {
  const demo = await serve('--demo', '--trouble', 'locked=1');
  const socket = new WebSocket(demo.websocket);
  const replies = [];
  const waiting = [];
  socket.on('message', (data) => { const one = JSON.parse(data); if (one.id) { replies.push(one); waiting.shift()?.(); } });
  await guard(new Promise((resolve) => socket.on('open', resolve)), 'no line');
  const say = (method, params = {}) => guard(new Promise((resolve) => { waiting.push(resolve); socket.send(JSON.stringify({ jsonrpc: '2.0', id: 1, method, params })); }), `no answer to ${method}`);
  await say('session.open', { token: demo.token });
  await say('person.find', { text: 'x' });
  await say('ledger.unlock', { examiner: 'Amina Invented', passphrase: 'four invented words here' });
  await say('person.find', { text: 'x' });
  socket.terminate();
  await demo.stop();
  return is(replies.map(code_of), ['answered', 'ledger.locked', 'answered', 'answered']);
});
await count.check('kill: the call is carried out and no reply comes; after a start the same request says so and writes nothing twice', async () => {
  const ledger = join(scratch, 'kill');
  if (run('new', ledger, '--demo').status !== 0) return 'no ledger';
  const killed = await serve('--ledger', ledger, '--trouble', 'kill=1');
  const first = await killed.ask('health.check');
  const lost = await killed.ask(...register(7)).then(() => 'answered', () => 'no answer');
  const how = await guard(killed.ended, 'still running');
  const again = await serve('--ledger', ledger);
  const read = (await again.ask('request.read', { request: uuid(7) })).result?.state;
  const { repeat } = (await again.ask(...register(7))).result;
  const people = (await again.ask('person.find', { text: 'wulan' })).result.people.length;
  await again.stop();
  return is([first.error, lost, how, read, repeat, people], [undefined, 'no answer', 'SIGKILL', 'recorded', true, 1]);
});
await count.check('kill=METHOD: whatever was asked before is answered, and the first call of that method is carried out without a reply', async () => {
  const ledger = join(scratch, 'kill-method');
  if (run('new', ledger, '--demo').status !== 0) return 'no ledger';
  const killed = await serve('--ledger', ledger, '--trouble', 'kill=person.register');
  const before = [code_of(await killed.ask('health.check')), code_of(await killed.ask('person.find', { text: 'x' })), code_of(await killed.ask('exam.find'))];
  const lost = await killed.ask(...register(8)).then(() => 'answered', () => 'no answer');
  const how = await guard(killed.ended, 'still running');
  const again = await serve('--ledger', ledger);
  const read = (await again.ask('request.read', { request: uuid(8) })).result?.state;
  await again.stop();
  const both = [run('verify', ledger).status, run('verify', '--ledger', ledger).status];
  return is([before, lost, how, read, both], [['answered', 'answered', 'answered'], 'no answer', 'SIGKILL', 'recorded', [0, 0]]);
});
await count.check('another link: serve says the line that makes one, also in memory; without --ledger the error names it first; an icon opens the browser with a link', async () => {
  const demo = await serve('--demo');
  const line = /another link: limbledger (token make .*)\n/;
  await guard((async () => { while (!line.test(demo.said())) await new Promise((resolve) => setTimeout(resolve, 5)); })(), 'no line for another link');  // it follows the address
  const said = line.exec(demo.said())[1];
  const made = run(...said.replaceAll('"', '').split(' '));
  const link = /: http:\S+#once=([\w-]+)\n/.exec(made.stdout)?.[1];
  const open = async (once) => code_of(JSON.parse((await post(demo.http, JSON.stringify({ jsonrpc: '2.0', id: 1, method: 'session.open', params: { once } }))).text));
  const codes = [await open(link), await open(link), await open('none of it')];
  const bin = join(scratch, 'bin');
  mkdirSync(bin);
  writeFileSync(join(bin, 'xdg-open'), `#!/bin/sh\nprintf %s "$1" > ${join(scratch, 'opened')}\n`, { mode: 0o755 });
  symlinkSync(program, join(bin, 'limbledger'));
  const icon = spawnSync('sh', [join(top, 'examples/sidecar/open'), demo.folder], { encoding: 'utf8', env: { ...process.env, PATH: `${bin}:${process.env.PATH}` } });
  const opened = readFileSync(join(scratch, 'opened'), 'utf8');
  const by_icon = [icon.status, opened.startsWith(new URL('/', demo.http).href), await open(/#once=([\w-]+)$/.exec(opened)[1])];
  await demo.stop();
  const none = spawnSync(program, ['token', 'make', '--scope', 'examiner', '--once'], { encoding: 'utf8', env: { ...process.env, XDG_DATA_HOME: scratch } });
  return is([codes, by_icon, none.status, /ledger\.none\)\n {2}what to do: name the folder of the ledger, with --ledger DIR/.test(none.stderr)],
    [['answered', 'token.used', 'token.unknown'], [0, true, 'answered'], 2, true]);
});
await count.check('the six commands with which README has a front end begun do what is said beside them', async () => {
  const block = /^limbledger serve --demo[^`]*/m.exec(readFileSync(join(top, 'README.md'), 'utf8'))[0];
  const lines = block.trim().split('\n').map((line) => line.split(' #')[0].trim().replaceAll('LEDGER', join(scratch, 'begun')).replaceAll('PAGES', join(scratch, 'pages')).replace('8470', '0'));
  const [demo, ledger, pages, page, served, link] = lines;
  const words_of = (line) => line.split(' ').slice(1);
  const first = await serve(...words_of(demo).filter((word) => word === '--demo' || word === '--once'));
  await first.stop();
  const made = [run(...words_of(ledger)).status, ...[pages, page].map((line) => spawnSync('sh', ['-c', line]).status)];
  const second = await serve(...words_of(served).slice(1).filter((word, at, all) => word !== '--http' && all[at - 1] !== '--http'));
  const shown = (await raw(new URL('/', second.http).href, { method: 'GET' })).text.includes('<h1>A form</h1>');
  const again = run(...words_of(link));
  await second.stop();
  return is([lines.length, demo, made, shown, again.status, /#once=[\w-]+\n/.test(again.stdout)], [6, 'limbledger serve --demo --http 0 --once', [0, 0, 0], true, 0, true]);
});
await count.check('trouble and wrong words are refused before anything is served: on a ledger for people, on one for practice, beside a ledger', () => {
  const secret = join(scratch, 'secret');
  writeFileSync(secret, 'four words that fit\n');
  const told = [];
  for (const [name, words] of [['people', []], ['practice', ['--practice']]]) {
    const ledger = join(scratch, name);
    const made = spawnSync(program, ['new', ledger, ...words, '--passphrase-fd', '3'], { stdio: ['ignore', 'pipe', 'pipe', openSync(secret, 'r')], encoding: 'utf8' });
    const before = readdirSync(ledger).join();
    const served = run('serve', '--ledger', ledger, '--stdio', 'lines', '--trouble', 'full');
    told.push([made.status, served.status, /no demonstration\n {2}what to do: /.test(served.stderr), readdirSync(ledger).join() === before]);
  }
  const wrong = run('serve', '--demo', '--stdio', 'lines', '--trouble', 'fire');
  const both = run('serve', '--demo', '--ledger', join(scratch, 'kill'), '--stdio', 'lines');
  return is([told, wrong.status, /slow=MS/.test(wrong.stderr), both.status], [[[0, 2, true, true], [0, 2, true, true]], 2, true, 2]);
});

// ---- the page

const plain = await serve('--ledger', join(scratch, 'kill'));
await count.check('a ledger on disk serves the description without a try-out, with a policy of its own, and needs no token for it', async () => {
  const at = new URL('/description', plain.http).href;
  const { status, headers, text } = await raw(at, { method: 'GET' });
  const foreign = await raw(at, { method: 'GET', headers: { Origin: 'http://elsewhere.example' } });
  const root = await raw(new URL('/', plain.http).href, { method: 'GET' });
  return is([status, headers['content-type'], /^default-src 'none'; script-src 'self'; style-src 'self'; /.test(headers['content-security-policy']), text.includes('<form'), foreign.status, root.status],
    [200, 'text/html; charset=utf-8', true, false, 403, 404]);
});
await plain.stop();

if (!(await count.note('Chromium is there, or can be installed', spawnSync('bash', [join(top, '.ci/needs'), 'browser']).status === 0))) {
  count.close();
  process.exit(1);
}
if (pictures) mkdirSync(pictures, { recursive: true });
const browser = await open_browser();
const demo = await serve('--demo', '--once');
const keep = async (page, name) => { if (pictures) writeFileSync(join(pictures, `${name}.png`), await page.picture()); };
// Of every kind of text on the page the least contrast with what lies behind it, as WCAG counts it.
const least_contrast = `(() => {
  const parts = (text) => text.match(/[\\d.]+/g).map(Number);
  const light = (text) => { const [r, g, b] = parts(text).slice(0, 3).map((one) => one / 255).map((one) => (one <= 0.04045 ? one / 12.92 : ((one + 0.055) / 1.055) ** 2.4)); return 0.2126 * r + 0.7152 * g + 0.0722 * b; };
  const behind = (one) => { for (let at = one; at; at = at.parentElement) { const colour = getComputedStyle(at).backgroundColor; if ((parts(colour)[3] ?? 1) > 0) return colour; } return 'rgb(255,255,255)'; };
  let least = 21;
  for (const one of document.querySelectorAll('p, h1, h2, h3, h4, th, td, dt, dd, a, summary, button:not([disabled]), label, pre, textarea, input, select')) {
    const [a, b] = [light(getComputedStyle(one).color), light(behind(one))].sort((x, y) => y - x);
    least = Math.min(least, (a + 0.05) / (b + 0.05));
  }
  return least;
})()`;
try {
  const page = await browser.open_page(demo.link, { width: 1280, height: 900 });
  await page.until(`document.querySelector('#session')?.textContent.includes('A session is open')`);
  await keep(page, '1280-top');
  await count.check('the page has each method that rpc.discover lists, and is marked as a demonstration', async () => {
    const { result } = await demo.ask('rpc.discover');
    const listed = await page.value(`[...document.querySelectorAll('#methods article')].map((one) => one.id)`);
    return is([listed, await page.value(`document.querySelector('#banner').innerText.startsWith('DEMONSTRATION')`), await page.value('location.hash')], [result.methods.map((one) => one.name), true, '']);
  });
  for (const width of [1280, 800]) {
    const seen = width === 1280 ? page : await browser.open_page(new URL('/description', demo.http).href, { width, height: 1100 });
    await seen.until(`document.querySelector('#shapes article')`);
    await count.check(`at ${width} px nothing is cut off or scrolls sideways, what is touched is large enough, and text stands out`, async () => {
      const over = await seen.value('document.documentElement.scrollWidth - innerWidth');
      const small = await seen.value(`[...document.querySelectorAll('button, input, select, textarea, summary, nav a')].filter((one) => one.offsetParent && (one.getBoundingClientRect().height < 44 || one.getBoundingClientRect().width < 44)).map((one) => one.textContent.slice(0, 20))`);
      const contrast = await seen.value(least_contrast);
      return (over <= 0 && small.length === 0 && contrast >= 7) || JSON.stringify({ over, small, contrast });
    });
    await keep(seen, `${width}-first`);
    await seen.value(`document.getElementById('finding.record').scrollIntoView()`);
    await keep(seen, `${width}-method`);
    await seen.value(`document.getElementById('faults').scrollIntoView()`);
    await keep(seen, `${width}-faults`);
    await seen.value('scrollTo(0, 0)');
  }
  await count.check('by keyboard alone: a word finds methods, and a method is tried', async () => {
    await page.value(`document.getElementById('find').focus()`);
    await page.type('person.find');
    await page.until(`document.getElementById('found').textContent.startsWith('1 of ')`);
    const reach = async (test) => { for (let i = 0; i < 60; ++i) { if (await page.value(test)) return true; await page.press('Tab'); } return false; };
    if (!(await reach(`document.activeElement.closest?.('[data-method="person.find"]') && document.activeElement.type === 'submit'`))) return 'Send is not reached';
    await page.press('Enter');
    await page.until(`document.querySelector('[data-method="person.find"] output')?.innerText.startsWith('Result')`);
    await keep(page, '1280-tried');
    await page.value(`(() => { const find = document.getElementById('find'); find.value = ''; find.dispatchEvent(new Event('input')); })()`);
    return true;
  });
  await count.check('a broken text is answered by the page, and a refusal is shown with its fault', async () => {
    const form = `document.querySelector('[data-method="exam.read"]')`;
    await page.value(`(() => { const form = ${form}; form.querySelector('textarea').value = '{'; form.requestSubmit(); })()`);
    await page.until(`${form}.querySelector('output').innerText.startsWith('This is no JSON')`);
    await page.value(`(() => { const form = ${form}; form.querySelector('textarea').value = '{"exam":"nothing"}'; form.requestSubmit(); })()`);
    return page.until(`${form}.querySelector('output').innerText.includes('"path": "/exam"')`).then(() => true);
  });
  // The whole day is played up to each method's last line and the method sent: what ends the session comes last.
  const methods = await page.value(`[...new Set([...document.querySelectorAll('.try')].map((one) => one.dataset.method))]`);
  for (const method of [...methods.filter((one) => one !== 'session.end'), 'session.end']) {
    await count.check(`${method} can be tried`, async () => {
      const form = `document.querySelector('[data-method="${method}"]')`;
      await page.value(`(() => { const form = ${form}; const choice = form.querySelector('select'); choice.selectedIndex = choice.options.length - 1; choice.dispatchEvent(new Event('change')); form.querySelector('.day').click(); })()`);
      await page.until(`!${form}.querySelector('.day').disabled && (${form}.querySelector('output').innerText.startsWith('Played') || ${form}.querySelector('output').innerText.startsWith('Error'))`);
      const played = await page.value(`${form}.querySelector('output').innerText`);
      if (!played.startsWith('Played')) return played.slice(0, 400);
      await page.value(`${form}.requestSubmit()`);
      await page.until(`/^(Result|Error)/.test(${form}.querySelector('output').innerText)`);
      const said = await page.value(`${form}.querySelector('output').innerText`);
      return said.startsWith('Result') || said.slice(0, 400);
    });
  }
  await count.note('the page complains of nothing', page.complaints().length === 0, page.complaints().join('\n'));

  // ---- a first form, written from the README and the page alone

  const own = await serve('--demo', '--once', '--pages', join(top, 'examples/knee-form'));
  const form = await browser.open_page(own.link, { width: 800, height: 1100 });
  const field = (item, side = 'left') => `document.querySelector('[data-item="${item}"][data-side="${side}"], [data-item="${item}"][data-side="midline"]')`;
  const gives = async (item, value, side) => {
    await form.until(field(item, side));
    await form.value(`(() => { const field = ${field(item, side)}; field.querySelector('select, input').value = ${JSON.stringify(value)}; field.querySelector('button').click(); })()`);
    await form.until(`!['', 'sending'].includes(${field(item, side)}.querySelector('.state').textContent)`);
    return form.value(`${field(item, side)}.querySelector('.state').innerText`);
  };
  await count.check('the first form records a knee exam, shows the alert with its words, asks back, and says what is refused', async () => {
    await form.until(`document.getElementById('day')`);
    await form.value(`document.getElementById('day').value = '2026-11-23'; document.querySelector('#form button').click()`);
    const story = [await gives('history.mechanism', 'twist'), await gives('vessel.pulse_dorsalis_pedis', '2', 'right')];
    const cold = await gives('vessel.pulse_dorsalis_pedis', '0');
    await form.until(`document.querySelector('#alerts p')?.textContent.includes(' ')`);
    const alert = await form.value(`document.querySelector('#alerts').innerText`);
    const unusual = await gives('knee.flexion_active', '168');
    await form.value(`${field('knee.flexion_active')}.querySelector('.state button').click()`);
    await form.until(`${field('knee.flexion_active')}.querySelector('.state').textContent === 'recorded'`);
    const refused = await gives('knee.extension_passive', '500');
    if (pictures) writeFileSync(join(pictures, 'form.png'), await form.picture());
    const [exam] = (await own.ask('exam.find')).result.exams;
    const held = (await own.ask('exam.read', { exam: exam.exam })).result.exam.findings.map((one) => [one.item, one.side]);
    return is([...story, cold, alert.length > 20 && !alert.includes('msg.') && !alert.startsWith('alert.'), unusual.includes('value.unusual'), refused.includes('value.out_of_range'), held, form.complaints().length],
      ['recorded', 'recorded', 'recorded', true, true, true, [['history.mechanism', 'midline'], ['knee.flexion_active', 'left'], ['vessel.pulse_dorsalis_pedis', 'left'], ['vessel.pulse_dorsalis_pedis', 'right']], 0]) || alert;
  });
  await count.check('loaded again, the first form has its session still, and a link that was opened before is told apart', async () => {
    await form.value('location.reload()');
    await form.until(`document.getElementById('day') && document.getElementById('form').innerText.includes('injured on')`);
    const other = await browser.open_page(own.link, { width: 800, height: 1100 });
    await other.until(`document.getElementById('form').innerText.includes('opened before')`);
    return is([await form.value('Object.keys(localStorage).length'), form.complaints().length], [0, 0]);
  });
  await count.check('beside a front end of its own the description stands under its name, and the root is the front end', async () =>
    (await raw(new URL('/', own.http).href, { method: 'GET' })).text.includes('A knee, examined') && (await raw(new URL('/description', own.http).href, { method: 'GET' })).text.includes('What can be called'));
} finally {
  await browser.close();
  for (const child of running) child.kill('SIGKILL');
  rmSync(scratch, { recursive: true, force: true });
}
count.close();
