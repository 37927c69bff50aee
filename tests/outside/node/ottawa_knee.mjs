// stage: outside --check
// The Ottawa knee rule (okr/1995) as a two-valued definition on complete inputs, and brute force over every
// completion of the unknown ones. Source: STIELL1995 (criteria, "55 years or older"), ages from 5 as BULLOCH2003 and
// VIJAYASANKAR2009. It shares nothing with the program, which reasons with three values instead.
//
//   node ottawa_knee.mjs                     writes ../data/ottawa_knee_digest.json's text to standard output
//   node ottawa_knee.mjs --check             recomputes and compares with that file; also the 18 worked examples
//   node ottawa_knee.mjs --lines [AGE DAYS]  prints all lines, or those of one block, to find a difference
//
// Lines. Inputs in this order, each with its values in this order; the first input is the outermost loop:
//   age    4 5 17 18 54 55 unknown 54-55 4-5   completed years; `54-55` is known only to lie between, ends included
//   days   0 7 8 unknown                       days since the injury
//   fib    no yes unknown                      bony tenderness at the head of the fibula
//   pat    no yes unknown                      tenderness of the patella
//   other  no yes unknown                      bony tenderness of the knee elsewhere
//   flex   0 89 90 120 unknown                 degrees of flexion reached
//   imm    no yes unknown                      could take four steps at once after the injury
//   steps  0 3 4 unknown                       steps taken now
//   excl   no yes unknown                      any published exclusion present
// One line each:  age|days|fib|pat|other|flex|imm|steps|excl -> outcome; settle=inputs
//   values as written above; outcome is positive, negative, not_applicable or undetermined; `inputs` are the names of
//   all inputs that settle, in the order above, joined by commas without spaces, nothing when there is none.
//   Example: 18|0|no|no|no|unknown|yes|4|no -> undetermined; settle=flex
// An unknown input settles when some completion of the other unknown inputs leaves an outcome that depends on it.
// A block is all lines of one age and one number of days. Digests are BLAKE2b-256 over the lines, each ended by one
// line feed (no carriage return), the last one too.

import { readFileSync } from 'node:fs';
import { blake2b } from '@noble/hashes/blake2.js';
import { bytesToHex } from '@noble/hashes/utils.js';

const tri = ['no', 'yes', 'unknown'];
const domain = {
  age: ['4', '5', '17', '18', '54', '55', 'unknown', '54-55', '4-5'],
  days: ['0', '7', '8', 'unknown'],
  fib: tri,
  pat: tri,
  other: tri,
  flex: ['0', '89', '90', '120', 'unknown'],
  imm: tri,
  steps: ['0', '3', '4', 'unknown'],
  excl: tri,
};
const inputs = Object.keys(domain);

// Values that stand for an unknown number: every class between two thresholds of the rule is met, at both its ends.
const any_number = {
  age: [0, 4, 5, 54, 55, 120],
  days: [0, 7, 8, 60],
  flex: [0, 89, 90, 160],
  steps: [0, 3, 4],
};

// The rule itself: every input known.
const decide = ({ age, days, fib, pat, other, flex, imm, steps, excl }) => {
  if (age < 5 || days > 7 || excl) return 'not_applicable';
  const isolated_patella = pat && !fib && !other;
  const cannot_bear_weight = !imm && steps < 4;
  return age >= 55 || fib || isolated_patella || flex < 90 || cannot_bear_weight ? 'positive' : 'negative';
};

const completions_of = (input, value) => {
  if (input in any_number) {
    if (value === 'unknown') return any_number[input];
    const [low, high] = value.split('-').map(Number);
    if (high === undefined) return [low];
    return Array.from({ length: high - low + 1 }, (_, at) => low + at);
  }
  return value === 'unknown' ? [false, true] : [value === 'yes'];
};

export const evaluate = (recorded) => {
  const choices = inputs.map((input) => completions_of(input, recorded[input]));
  const outcomes = [];
  const steps_of = [];
  let total = 1;
  for (let at = inputs.length - 1; at >= 0; --at) {
    steps_of[at] = total;
    total *= choices[at].length;
  }
  for (let number = 0; number < total; ++number) {
    const complete = {};
    inputs.forEach((input, at) => {
      complete[input] = choices[at][Math.floor(number / steps_of[at]) % choices[at].length];
    });
    outcomes.push(decide(complete));
  }
  const settles = (at) => outcomes.some((outcome, number) => {
    const first = number - steps_of[at] * (Math.floor(number / steps_of[at]) % choices[at].length);
    return outcomes[first] !== outcome;
  });
  const settle = inputs.filter((_, at) => choices[at].length > 1 && settles(at));
  const outcome = outcomes.every((one) => one === outcomes[0]) ? outcomes[0] : 'undetermined';
  if ((outcome === 'undetermined') !== (settle.length > 0)) throw new Error('an open outcome needs an input that settles it');
  return { outcome, settle };
};

const combinations = function* (from = 0, chosen = {}) {
  if (from === inputs.length) {
    yield chosen;
    return;
  }
  for (const value of domain[inputs[from]]) yield* combinations(from + 1, { ...chosen, [inputs[from]]: value });
};

const line_of = (recorded, { outcome, settle }) =>
  `${inputs.map((input) => recorded[input]).join('|')} -> ${outcome}; settle=${settle.join(',')}\n`;

// One row of a CSV table whose cells may stand in double quotes.
const cells_of = (row) => [...row.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,]*))/g)]
  .map(([, quoted, bare]) => (quoted === undefined ? bare : quoted.replaceAll('""', '"')));

const examples = () => readFileSync(new URL('../data/rule_examples_okr.csv', import.meta.url), 'utf8')
  .split('\n').filter((row) => row.startsWith('okr-')).map(cells_of);

const check_examples = () => {
  const rows = examples();
  for (const [id, , given, expected, expected_settle] of rows) {
    const recorded = Object.fromEntries(Object.entries(JSON.parse(given)).map(([input, value]) => {
      if (value === null) return [input, 'unknown'];
      if (typeof value === 'boolean') return [input, value ? 'yes' : 'no'];
      return [input, String(value)];
    }));
    const { outcome, settle } = evaluate(recorded);
    if (outcome !== expected || settle.join(',') !== expected_settle) {
      throw new Error(`${id}: ${outcome} (${settle}), the table says ${expected} (${expected_settle})`);
    }
  }
  if (rows.length !== 18) throw new Error(`${rows.length} worked examples, 18 expected`);
  return rows.length;
};

const digest = () => {
  const whole = blake2b.create({ dkLen: 32 });
  const counts = { positive: 0, negative: 0, not_applicable: 0, undetermined: 0 };
  const blocks = {};
  let lines = 0;
  const block_hashes = new Map();
  for (const recorded of combinations()) {
    const result = evaluate(recorded);
    const line = new TextEncoder().encode(line_of(recorded, result));
    const block = `${recorded.age}|${recorded.days}`;
    if (!block_hashes.has(block)) block_hashes.set(block, blake2b.create({ dkLen: 32 }));
    block_hashes.get(block).update(line);
    whole.update(line);
    counts[result.outcome] += 1;
    lines += 1;
  }
  for (const [block, hash] of block_hashes) blocks[block] = bytesToHex(hash.digest());
  return {
    source: 'Made by tests/outside/node/ottawa_knee.mjs: a two-valued definition of okr/1995 (STIELL1995) and brute force over completions. The grammar of a line stands at the top of that file.',
    hash: 'BLAKE2b-256 over the lines, each ended by one line feed',
    lines, counts, digest: bytesToHex(whole.digest()), blocks,
  };
};

const [mode, age, days] = process.argv.slice(2);
const checked = check_examples();
if (mode === '--lines') {
  for (const recorded of combinations()) {
    if (age !== undefined && (recorded.age !== age || recorded.days !== days)) continue;
    process.stdout.write(line_of(recorded, evaluate(recorded)));
  }
} else if (mode === '--check') {
  const made = digest();
  const stored = JSON.parse(readFileSync(new URL('../data/ottawa_knee_digest.json', import.meta.url), 'utf8'));
  if (JSON.stringify(made) !== JSON.stringify(stored)) {
    for (const [block, value] of Object.entries(made.blocks)) {
      if (stored.blocks[block] !== value) console.error(`block ${block} differs`);
    }
    console.error(`digest ${made.digest}, stored ${stored.digest}`);
    console.log(`${checked} passed, 1 failed`);
    process.exit(1);
  }
  console.log(`${made.lines} combinations as stored`);
  console.log(`${checked + Object.keys(made.blocks).length} passed, 0 failed`);
} else {
  process.stdout.write(`${JSON.stringify(digest(), null, 1)}\n`);
}
