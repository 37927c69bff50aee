// stage: outside --check
// The Ottawa ankle rule, ankle series (oar/1993), as a two-valued definition on complete inputs, and brute force over every
// completion of the unknown ones. Source: STIELL1993 (refined rule, without the age of 55 of 1992), from 2 years as PLINT1999;
// 10 days is a taught value. It shares nothing with the program, which reasons with three values instead.
//
//   node ottawa_ankle.mjs                     writes ../data/rules/ottawa_ankle_digest.json's text to standard output
//   node ottawa_ankle.mjs --check             recomputes and compares with that file; also the 10 worked examples
//   node ottawa_ankle.mjs --lines [AGE DAYS]  prints all lines, or those of one block, to find a difference
//
// Lines. Inputs in this order, each with its values in this order; the first input is the outermost loop:
//   age    1 2 17 18 55 unknown 1-2     completed years; `1-2` is known only to lie between, ends included
//   days   0 10 11 unknown 10-11        days since the injury
//   zone   no yes unknown               pain in the malleolar zone
//   lat    no yes unknown               bony tenderness of the lateral malleolus, posterior edge of its last 6 cm or tip
//   med    no yes unknown               the same of the medial malleolus
//   imm    no yes unknown               could take four steps at once after the injury
//   steps  0 3 4 unknown                steps taken now
//   excl   no yes unknown               any published exclusion present
// One line each:  age|days|zone|lat|med|imm|steps|excl -> outcome; settle=inputs
// Outcomes, settling inputs, blocks and digests are as in ottawa_knee.mjs.

import { rule_table } from './lib/rule_table.mjs';

const tri = ['no', 'yes', 'unknown'];
const domain = {
  age: ['1', '2', '17', '18', '55', 'unknown', '1-2'],
  days: ['0', '10', '11', 'unknown', '10-11'],
  zone: tri,
  lat: tri,
  med: tri,
  imm: tri,
  steps: ['0', '3', '4', 'unknown'],
  excl: tri,
};

// Values that stand for an unknown number: every class between two thresholds of the rule is met, at both its ends; also 55,
// which decided in 1992 and must not in 1993.
const any_number = {
  age: [0, 1, 2, 54, 55, 120],
  days: [0, 10, 11, 60],
  steps: [0, 3, 4],
};

// The rule itself: every input known.
const decide = ({ age, days, zone, lat, med, imm, steps, excl }) => {
  if (age < 2 || days > 10 || excl) return 'not_applicable';
  if (!zone) return 'negative';
  if (lat || med) return 'positive';
  const walked = imm || steps >= 4;
  return walked ? 'negative' : 'positive';
};

rule_table({
  domain, any_number, decide,
  block_by: ['age', 'days'],
  examples_file: 'rule_examples_oar.csv', examples_prefix: 'oar-', examples_count: 10,
  digest_file: 'ottawa_ankle_digest.json',
  source: 'Made by tests/outside/node/ottawa_ankle.mjs: a two-valued definition of oar/1993 (STIELL1993) and brute force over completions. The grammar of a line stands at the top of that file.',
}).run(process.argv.slice(2));
