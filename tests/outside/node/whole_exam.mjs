// stage: outside
// The whole exam of an invented adult: every item of the catalogue, on every side that it has, recorded through JSON-RPC, signed,
// read back equal after the program ended and started again, and printed. Motions are entered as their two ends in one exam and
// in neutral-zero text in a second. The values are ours and mean nobody; what is checked is that each comes back as it was sent.
//   node whole_exam.mjs [PROGRAM]      without it, limbledger of $LIMBLEDGER_BUILD

import { spawnSync } from 'node:child_process';
import { randomUUID } from 'node:crypto';
import { mkdtempSync, readFileSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Count } from './lib/count.mjs';
import { Peer } from './lib/peer.mjs';

const build = process.env.LIMBLEDGER_BUILD ?? fileURLToPath(new URL('../../../build', import.meta.url));
const program = process.argv[2] ?? join(build, 'limbledger');
const words_folder = fileURLToPath(new URL('../../../core/report/words', import.meta.url));
const count = new Count();
const scratch = mkdtempSync(join(tmpdir(), 'limbledger-whole-'));
const ledger = join(scratch, 'demo');

let peer;
let id = 0;
const start = () => { peer = new Peer([program, 'serve', '--ledger', ledger, '--stdio', 'lines'], 'lines'); };
const stop = async () => { peer.child.stdin.end(); await peer.exited; };
const ask = async (method, params = {}) => {
  peer.raw(`${JSON.stringify({ jsonrpc: '2.0', id: ++id, method, params })}\n`);
  const reply = JSON.parse(await peer.next());
  if (reply.error) throw Object.assign(new Error(`${method}: ${JSON.stringify(reply.error).slice(0, 600)}`), { error: reply.error });
  return reply.result;
};

// The labels as the page has them: a dot of a message name is a dash in the files.
const labels = new Map();
for (const name of readdirSync(words_folder, { recursive: true }).filter((one) => /^en[._].*\.ftl$/.test(one))) {
  for (const line of readFileSync(join(words_folder, name), 'utf8').split('\n')) {
    const found = /^(msg-item-\S+-short) = (.*)$/.exec(line);
    if (found) labels.set(found[1], found[2].trim());
  }
}
const label_of = (item) => labels.get(item.text.short.replaceAll('.', '-'));

const middle = ([low, high]) => Math.round((Number(low) + Number(high)) / 2);
const members = { length: 'mm', time: 's', force: 'n', pressure: 'mm_hg', temperature: 'cel', mass: 'kg', count: 'count' };
// One plausible value of each kind; the left side is one step above the right, so that an exchange would be seen.
const value_of = (item, side, scales) => {
  const step = side === 'left' ? 1 : 0;
  switch (item.value) {
    case 'angle': return { kind: 'angle', deg: middle(item.confirm ?? item.refuse) + step };
    case 'grade': {
      const scale = scales.get(item.scale);
      return { kind: 'grade', scale: item.scale, grade: scale.grades[0].grade };
    }
    case 'test': return { kind: 'test', result: step ? 'equivocal' : 'negative' };
    case 'answer': return { kind: 'answer', answer: step ? 'unsure' : 'no' };
    case 'choice': return { kind: 'choice', choice: item.choices[0] };
    case 'choices': return { kind: 'choices', choices: [item.choices[0]] };
    case 'text': return { kind: 'text', text: `invented words, ${item.item}, ${side}` };
    default: return { kind: item.value, [members[item.value]]: middle(item.confirm ?? item.refuse) + step };
  }
};
const finding_of = (item, side, value) => ({ item: item.item, side, value, ...(item.positions ? { position: item.positions[0] } : {}),
  ...(item.instruments ? { instrument: item.instruments[0] } : {}) });

// What is asked back is confirmed, as the answer asks; any other fault ends the test.
const asked_back = new Map();
const record = async (exam, seen, findings) => {
  const request = randomUUID();
  for (let round = 0; round < 20; ++round) {
    try {
      return await ask('finding.record', { exam, findings, seen, request });
    } catch (error) {
      if (error.error?.code !== 2) throw error;
      for (const fault of error.error.data.faults) {
        const finding = findings[Number(/^\/findings\/(\d+)/.exec(fault.path)[1])];
        asked_back.set(fault.code, (asked_back.get(fault.code) ?? 0) + 1);
        if (fault.code === 'item.withheld') finding.despite = { how: 'elsewhere', because: 'invented' };
        else finding.confirmed = [...new Set([...(finding.confirmed ?? []), fault.code])];
      }
    }
  }
  throw new Error('asked back again and again');
};

// One exam with these findings: opened, recorded in calls of at most 100, signed. Gives its id.
const examine = async (person, complaint, findings) => {
  const opened = await ask('exam.open', { person, complaint, setting: 'outreach', request: randomUUID() });
  const exam = opened.exam.exam;
  let seen = opened.revision;
  for (let at = 0; at < findings.length; at += 100) {
    seen = (await record(exam, seen, findings.slice(at, at + 100))).revision;
  }
  const signed = await ask('exam.sign', { exam, read_aloud: 'Wholly Invented, 40 years, LEFT leg, invented', seen, request: randomUUID() });
  return { exam, signed };
};

const same = (sent, held) => Object.entries(sent).every(([name, value]) => JSON.stringify(held?.[name]) === JSON.stringify(value));

const made = spawnSync(program, ['new', ledger, '--demo'], { encoding: 'utf8' });
if (made.status !== 0) throw new Error(made.stderr);
start();
try {
  const { items, scales: scale_rows } = await ask('catalogue.read');
  const scales = new Map(scale_rows.map((scale) => [scale.scale, scale]));
  const person = (await ask('person.register', { names: [{ text: 'Wholly Invented' }], birth: { date: '1986' }, sex: 'female', request: randomUUID() })).person.person;
  const each = (wanted) => items.filter((item) => (item.value === 'arc') === wanted).flatMap((item) => item.sides.map((side) => ({ item, side })));
  const ends = each(false).map(({ item, side }) => finding_of(item, side, value_of(item, side, scales)));
  const arcs = each(true).map(({ item, side }) => {
    const [low, high] = [item.arc.low, item.arc.high].map((name) => items.find((one) => one.item === name));
    return { item, side, low, high, finding: finding_of(item, side, { kind: 'angle', entered: side === 'left' ? '5-0-30' : '0-0-25', order: `${low.toward}_zero_${high.toward}` }) };
  });
  console.log(`${items.length} items; ${ends.length} findings with a value of their own, ${arcs.length} in neutral-zero text`);
  await count.check('the catalogue holds the whole limb: 800 items and 1,300 findings at least', () => items.length >= 800 && ends.length + arcs.length >= 1300);

  const whole = await examine(person, 'whole_limb', ends);
  const written = await examine(person, 'free', arcs.map((one) => one.finding));
  await stop();
  start();

  const read = await ask('exam.read', { exam: whole.exam });
  await count.check('the exam is signed', () => read.exam.state === 'signed');
  await count.check('as many findings as were sent, no conflict', () => read.exam.findings.length === ends.length && (read.conflicts ?? []).length === 0);
  const held = new Map(read.exam.findings.map((finding) => [`${finding.item} ${finding.side}`, finding]));
  for (const sent of ends) {
    const back = held.get(`${sent.item} ${sent.side}`);
    count.note(`${sent.item} ${sent.side} comes back as it was sent`, back !== undefined && same(sent.value, back.value) && back.position === sent.position
      && back.instrument === sent.instrument && back.standing === 'current', JSON.stringify({ sent, back }).slice(0, 400));
  }

  const second = new Map((await ask('exam.read', { exam: written.exam })).exam.findings.map((finding) => [`${finding.item} ${finding.side}`, finding]));
  for (const { item, side, low, high, finding } of arcs) {
    const [first, last] = [second.get(`${low.item} ${side}`), second.get(`${high.item} ${side}`)];
    const [toward_low, toward_high] = side === 'left' ? [5, 30] : [0, 25];
    count.note(`${item.item} ${side} comes back as its two ends`, first?.value.toward_deg === toward_low && last?.value.toward_deg === toward_high
      && first.value.entered === finding.value.entered && last.value.entered === finding.value.entered, JSON.stringify({ first, last }).slice(0, 400));
  }

  const note = await ask('note.write', { exam: whole.exam });
  const page = note.html.replaceAll('&#39;', "'").replaceAll('&quot;', '"').replaceAll('&amp;', '&');
  for (const item of items.filter((one) => one.value !== 'arc' && !one.protected && one.item !== 'history.unexplained_bruises')) {
    const label = label_of(item);
    count.note(`${item.item} is printed under its label`, label !== undefined && page.includes(label.replace(/\{.*$/, '')), label);
  }
  console.log(`asked back: ${[...asked_back].map(([code, times]) => `${code} ${times}`).join(', ') || 'nothing'}; the page has ${note.text.split('\n').length} lines`);
} catch (error) {
  count.note('the talk', false, error.message);
} finally {
  await stop();
  rmSync(scratch, { recursive: true, force: true });
}
count.close();
