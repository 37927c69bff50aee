// stage: outside --check
// The Ottawa midfoot rule, foot series (omr/1993), as a two-valued definition on complete inputs, and brute force over every
// completion of the unknown ones. Source: STIELL1993 (refined rule, with the four steps and without the cuboid of 1992), from 2 years as PLINT1999;
// 10 days is a taught value. It shares nothing with the program, which reasons with three values instead.
//
//   node ottawa_midfoot.mjs                     writes ../data/rules/ottawa_midfoot_digest.json's text to standard output
//   node ottawa_midfoot.mjs --check             recomputes and compares with that file; also the 7 worked examples
//   node ottawa_midfoot.mjs --lines [AGE DAYS]  prints all lines, or those of one block, to find a difference
//
// Lines. Inputs in this order, each with its values in this order; the first input is the outermost loop:
//   age    1 2 17 18 55 unknown 1-2     completed years; `1-2` is known only to lie between, ends included
//   days   0 10 11 unknown 10-11        days since the injury
//   zone   no yes unknown               pain in the midfoot zone
//   mt5    no yes unknown               bony tenderness at the base of the fifth metatarsal
//   nav    no yes unknown               bony tenderness at the navicular
//   imm    no yes unknown               could take four steps at once after the injury
//   steps  0 3 4 unknown                steps taken now
//   excl   no yes unknown               any published exclusion present
// One line each:  age|days|zone|mt5|nav|imm|steps|excl -> outcome; settle=inputs
// Outcomes, settling inputs, blocks and digests are as in ottawa_knee.mjs.

import { rule_table } from './lib/rule_table.mjs';

const tri = ['no', 'yes', 'unknown'];
const domain = {
  age: ['1', '2', '17', '18', '55', 'unknown', '1-2'],
  days: ['0', '10', '11', 'unknown', '10-11'],
  zone: tri,
  mt5: tri,
  nav: tri,
  imm: tri,
  steps: ['0', '3', '4', 'unknown'],
  excl: tri,
};

// Values that stand for an unknown number: every class between two thresholds of the rule is met, at both its ends.
const any_number = {
  age: [0, 1, 2, 54, 55, 120],
  days: [0, 10, 11, 60],
  steps: [0, 3, 4],
};

// The rule itself: every input known.
const decide = ({ age, days, zone, mt5, nav, imm, steps, excl }) => {
  if (age < 2 || days > 10 || excl) return 'not_applicable';
  if (!zone) return 'negative';
  if (mt5 || nav) return 'positive';
  const walked = imm || steps >= 4;
  return walked ? 'negative' : 'positive';
};

rule_table({
  domain, any_number, decide,
  block_by: ['age', 'days'],
  examples_file: 'rule_examples_omr.csv', examples_prefix: 'omr-', examples_count: 7,
  digest_file: 'ottawa_midfoot_digest.json',
  source: 'Made by tests/outside/node/ottawa_midfoot.mjs: a two-valued definition of omr/1993 (STIELL1993) and brute force over completions. The grammar of a line stands at the top of that file.',
}).run(process.argv.slice(2));
