// stage: outside --check
// Loss of protective sensation of one foot (lops/iwgdf) as a two-valued definition on complete inputs, and brute force over every
// completion of the unknown ones. Source: the working group's text on the filament (IWGDF_ADDENDUM: a place is absent with at least
// 2 of 3 answers wrong), a restatement of the fork (FORK_RESTATED), the touch of six toes (IWGDF2019; at least 2 of 6 from memory).
//
//   node protective_sensation.mjs            writes ../data/rules/protective_sensation_digest.json's text to standard output
//   node protective_sensation.mjs --check    recomputes and compares with that file; also the worked examples
//   node protective_sensation.mjs --lines [FILAMENT TOUCH]  prints all lines, or those of one block, to find a difference
//
// Lines, as in ottawa_knee.mjs. Inputs in this order:
//   filament touch                           no yes: whether that method was begun; the filament stands in where neither was
//   site_toe site_head_1 site_head_5 fork    no yes unknown: yes is lost
//   toe_1 toe_3 toe_5                        no yes unknown: yes is a touch not felt, of this foot
//   toes_of_other_foot                       0 1 2 unknown 0-1: how many of its three do not feel a touch

import { rule_table } from './lib/rule_table.mjs';

const tri = ['no', 'yes', 'unknown'];

const decide = ({ filament, touch, fork, toes_of_other_foot, ...places }) => {
  const sites_lost = [places.site_toe, places.site_head_1, places.site_head_5].filter(Boolean).length;
  const own_toes_lost = [places.toe_1, places.toe_3, places.toe_5].filter(Boolean).length;
  const by_filament = (filament || !touch) && sites_lost > 0;
  const six = own_toes_lost + toes_of_other_foot;
  const by_touch = touch && six >= 2 && own_toes_lost !== 0;
  return by_filament || fork || by_touch ? 'positive' : 'negative';
};

rule_table({
  domain: {
    filament: ['no', 'yes'],
    touch: ['no', 'yes'],
    site_toe: tri, site_head_1: tri, site_head_5: tri,
    fork: tri,
    toe_1: tri, toe_3: tri, toe_5: tri,
    toes_of_other_foot: ['0', '1', '2', 'unknown', '0-1'],
  },
  any_number: { toes_of_other_foot: [0, 1, 2, 3] },
  decide,
  block_by: ['filament', 'touch'],
  examples_file: 'rule_examples_lops.csv', examples_prefix: 'lops-', examples_count: 6,
  digest_file: 'protective_sensation_digest.json',
  source: 'Made by tests/outside/node/protective_sensation.mjs: a two-valued definition of lops/iwgdf and brute force over completions. The grammar of a line stands at the top of that file.',
}).run(process.argv.slice(2));
