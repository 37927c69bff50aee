// stage: outside --check
// The ankle-brachial index (abi/aha2016) by exact fractions and brute force over what is unknown. Source: AHA_ACC2016 (higher ankle
// artery over higher arm, two decimals; bands at 0.90, 0.91 to 0.99, 1.00 to 1.40, above 1.40). It shares nothing with the program,
// which bounds the index from both ends instead.
//
//   node ankle_brachial.mjs           writes ../data/rules/ankle_brachial_digest.json's text to standard output
//   node ankle_brachial.mjs --check   recomputes and compares with that file
//   node ankle_brachial.mjs --lines   prints all lines, to find a difference
//
// Lines. dp, pt (mmHg at the two ankle arteries), ra, la (right, left arm), each with its values in this order, dp outermost:
//   dp pt  0 100 126 127 138 140 196 197 unknown
//   ra la  119 132 140 unknown
// One line each:  dp|pt|ra|la -> band; settle=inputs
//   band is low, borderline, expected, noncompressible or undetermined; inputs in the order above, joined by commas.
// An unknown pressure is any from 0 to 350 at the ankle and 20 to 350 at the arm; up to two unknown are tried at every mmHg, more
// than two at every tenth. An input settles where some completion of the others leaves the band to it.

import { readFileSync } from 'node:fs';
import { blake2b } from '@noble/hashes/blake2.js';
import { bytesToHex } from '@noble/hashes/utils.js';

const ankle = ['0', '100', '126', '127', '138', '140', '196', '197', 'unknown'];
const arm = ['119', '132', '140', 'unknown'];

// Half up to two decimals: n is the rounded number where 2n - 1 <= 200 * ankle / arm < 2n + 1.
const band_of = (dp, pt, ra, la) => {
  const a = Math.max(dp, pt);
  const b = Math.max(ra, la);
  const at_least = (n) => 200 * a >= (2 * n - 1) * b; // the rounded index is at least n hundredths
  if (at_least(141)) return 3;
  if (at_least(100)) return 2;
  return at_least(91) ? 1 : 0;
};
const words = ['low', 'borderline', 'expected', 'noncompressible'];

const line_of = (recorded) => {
  const unknown = recorded.filter((one) => one === 'unknown').length;
  const step = unknown > 2 ? 10 : 1;
  const values = recorded.map((one, at) => {
    if (one !== 'unknown') return [Number(one)];
    const all = [];
    for (let n = at < 2 ? 0 : 20; n <= 350; n += step) all.push(n);
    return all;
  });
  const sizes = values.map((one) => one.length);
  const bands = new Uint8Array(sizes[0] * sizes[1] * sizes[2] * sizes[3]);
  let at = 0;
  for (const dp of values[0]) for (const pt of values[1]) for (const ra of values[2]) for (const la of values[3]) bands[at++] = band_of(dp, pt, ra, la);
  const strides = [sizes[1] * sizes[2] * sizes[3], sizes[2] * sizes[3], sizes[3], 1];
  const settle = ['dp', 'pt', 'ra', 'la'].filter((_, input) => sizes[input] > 1 && bands.some((band, n) => {
    const first = n - strides[input] * (Math.floor(n / strides[input]) % sizes[input]);
    return bands[first] !== band;
  }));
  const agree = bands.every((band) => band === bands[0]);
  return `${recorded.join('|')} -> ${agree ? words[bands[0]] : 'undetermined'}; settle=${settle.join(',')}\n`;
};

// Worked examples of the index: AHA_ACC2016 bands at their edges; one artery or one arm missing.
const examples = [
  ['126|110|140|132', 'low', ''], ['127|110|140|132', 'borderline', ''], ['140|120|140|138', 'expected', ''], ['196|150|140|140', 'expected', ''],
  ['197|150|140|140', 'noncompressible', ''], ['100|unknown|140|132', 'undetermined', 'pt'], ['150|unknown|140|132', 'undetermined', 'pt'],
  ['110|100|140|unknown', 'low', ''], ['150|130|140|unknown', 'undetermined', 'la'], ['0|0|140|138', 'low', ''],
];
for (const [given, band, settle] of examples) {
  const line = line_of(given.split('|'));
  if (line !== `${given} -> ${band}; settle=${settle}\n`) throw new Error(`${line.trim()}, the worked example says ${band} (${settle})`);
}

let text = '';
const counts = {};
let lines = 0;
for (const dp of ankle) for (const pt of ankle) for (const ra of arm) for (const la of arm) {
  const line = line_of([dp, pt, ra, la]);
  const band = line.split(' -> ')[1].split(';')[0];
  counts[band] = (counts[band] ?? 0) + 1;
  text += line;
  lines += 1;
}
const made = {
  source: 'Made by tests/outside/node/ankle_brachial.mjs: exact fractions and brute force over unknown pressures. The grammar of a line stands at the top of that file.',
  hash: 'BLAKE2b-256 over the lines, each ended by one line feed',
  lines, counts, digest: bytesToHex(blake2b(new TextEncoder().encode(text), { dkLen: 32 })),
};
const [mode] = process.argv.slice(2);
if (mode === '--lines') {
  process.stdout.write(text);
} else if (mode === '--check') {
  const stored = JSON.parse(readFileSync(new URL('../data/rules/ankle_brachial_digest.json', import.meta.url), 'utf8'));
  const same = JSON.stringify(made) === JSON.stringify(stored);
  console.log(same ? `${examples.length + 1} passed, 0 failed` : `digest ${made.digest}, stored ${stored.digest}\n${examples.length} passed, 1 failed`);
  process.exit(same ? 0 : 1);
} else {
  process.stdout.write(`${JSON.stringify(made, null, 1)}\n`);
}
