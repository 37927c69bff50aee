// stage: outside --check
// How often feet are looked at (iwgdf_risk/2019, IWGDF2019; the table is unchanged in 2023) as a two-valued definition on complete
// inputs, and brute force over every completion of the unknown ones.
//
//   node foot_category.mjs            writes ../data/rules/foot_category_digest.json's text to standard output
//   node foot_category.mjs --check    recomputes and compares with that file; also the 10 worked examples
//   node foot_category.mjs --lines [ULCER_NOW LOPS]  prints all lines, or those of one block, to find a difference
//
// Lines, as in ottawa_knee.mjs; all inputs are no, yes or unknown, in this order: ulcer_now (open ulcer), lops (loss of protective
// sensation), pad (narrowed arteries), deform, hx_ulcer, hx_amp, esrd. The outcome is 0, 1, 2, 3, not_applicable(active) or undetermined.

import { rule_table } from './lib/rule_table.mjs';

const tri = ['no', 'yes', 'unknown'];

// Each row of the printed table, the highest that holds.
const rows = [
  ['3', ({ lops, pad, hx_ulcer, hx_amp, esrd }) => (lops || pad) && (hx_ulcer || hx_amp || esrd)],
  ['2', ({ lops, pad, deform }) => (lops && pad) || (lops && deform) || (pad && deform)],
  ['1', ({ lops, pad }) => lops || pad],
  ['0', () => true],
];

rule_table({
  domain: { ulcer_now: tri, lops: tri, pad: tri, deform: tri, hx_ulcer: tri, hx_amp: tri, esrd: tri },
  any_number: {},
  decide: (person) => (person.ulcer_now ? 'not_applicable(active)' : rows.find(([, holds]) => holds(person))[0]),
  block_by: ['ulcer_now', 'lops'],
  examples_file: 'rule_examples_iwgdf.csv', examples_prefix: 'iw-', examples_count: 10,
  digest_file: 'foot_category_digest.json',
  source: 'Made by tests/outside/node/foot_category.mjs: the printed table of iwgdf_risk/2019 (IWGDF2019) and brute force over completions. The grammar of a line stands at the top of that file.',
}).run(process.argv.slice(2));
