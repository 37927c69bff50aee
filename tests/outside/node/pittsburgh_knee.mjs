// stage: outside --check
// The Pittsburgh knee rule (pkr/1994) as a two-valued definition on complete inputs, and brute force over every
// completion of the unknown ones. Source: SEABERG1994, SEABERG1998 (a fall or a blow, and under 12, over 50, or not four
// steps now; both ages strict). It shares nothing with the program, which reasons with classes instead.
//
//   node pittsburgh_knee.mjs                     writes ../data/rules/pittsburgh_knee_digest.json's text to standard output
//   node pittsburgh_knee.mjs --check             recomputes and compares with that file; also the 9 worked examples
//   node pittsburgh_knee.mjs --lines [AGE DAYS]  prints all lines, or those of one block, to find a difference
//
// Lines. Inputs in this order, each with its values in this order; the first input is the outermost loop:
//   age    0 11 12 50 51 unknown 50-51 11-12   completed years; `50-51` is known only to lie between, ends included
//   days   0 7 8 unknown                       days since the injury
//   blunt  no yes unknown                      a fall or a blow was how it happened
//   steps  0 3 4 unknown                       steps taken now
//   excl   no yes unknown                      any published exclusion present
// One line each:  age|days|blunt|steps|excl -> outcome; settle=inputs
//   as in ottawa_knee.mjs. Example: 12|0|unknown|3|no -> undetermined; settle=blunt

import { rule_table } from './lib/rule_table.mjs';

const tri = ['no', 'yes', 'unknown'];
const domain = {
  age: ['0', '11', '12', '50', '51', 'unknown', '50-51', '11-12'],
  days: ['0', '7', '8', 'unknown'],
  blunt: tri,
  steps: ['0', '3', '4', 'unknown'],
  excl: tri,
};

// Values that stand for an unknown number: every class between two thresholds of the rule is met, at both its ends.
const any_number = {
  age: [0, 11, 12, 50, 51, 120],
  days: [0, 7, 8, 60],
  steps: [0, 3, 4],
};

// The rule itself: every input known.
const decide = ({ age, days, blunt, steps, excl }) => {
  if (days > 7 || excl) return 'not_applicable';
  if (!blunt) return 'negative';
  return age < 12 || age > 50 || steps < 4 ? 'positive' : 'negative';
};

rule_table({
  domain, any_number, decide,
  block_by: ['age', 'days'],
  examples_file: 'rule_examples_pkr.csv', examples_prefix: 'pkr-', examples_count: 9,
  digest_file: 'pittsburgh_knee_digest.json',
  source: 'Made by tests/outside/node/pittsburgh_knee.mjs: a two-valued definition of pkr/1994 (SEABERG1994, SEABERG1998) and brute force over completions. The grammar of a line stands at the top of that file.',
}).run(process.argv.slice(2));
