// stage: outside --check
// The Ottawa knee rule (okr/1995) as a two-valued definition on complete inputs, and brute force over every
// completion of the unknown ones. Source: STIELL1995 (criteria, "55 years or older"), ages from 5 as BULLOCH2003 and
// VIJAYASANKAR2009. It shares nothing with the program, which reasons with three values instead.
//
//   node ottawa_knee.mjs                     writes ../data/rules/ottawa_knee_digest.json's text to standard output
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

import { rule_table } from './lib/rule_table.mjs';

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

rule_table({
  domain, any_number, decide,
  block_by: ['age', 'days'],
  examples_file: 'rule_examples_okr.csv', examples_prefix: 'okr-', examples_count: 18,
  digest_file: 'ottawa_knee_digest.json',
  source: 'Made by tests/outside/node/ottawa_knee.mjs: a two-valued definition of okr/1995 (STIELL1995) and brute force over completions. The grammar of a line stands at the top of that file.',
}).run(process.argv.slice(2));
