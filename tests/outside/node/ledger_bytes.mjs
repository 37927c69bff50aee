// stage: outside --check
// Worked bytes of the ledger, made from schemas/ledger-format.md with libraries the program does not use.
//   node ledger_bytes.mjs                 writes the cases to standard output (kept as ../data/ledger_bytes.json)
//   node ledger_bytes.mjs --check [FILE]  recomputes and compares with that file and with the bytes that the format
//                                         page prints; exit 1 where anything differs

import { readFileSync } from 'node:fs';
import { key_and_op, introductions, names, orders, witness_and_access, worked } from './lib/ledger_kinds.mjs';
import { exchange, keyrings, signed } from './lib/ledger_exchange.mjs';
import { kept } from './lib/ledger_kept.mjs';

// What the format page prints. Two libraries and two languages gave the same bytes.
const printed = {
  clinic: '90441da2d987b8ae0bb3202a232d6c50',
  replica: '645d6c27d61c5fd5d74c51d501b7ebf1',
  object: '0056bd8ffb2789658cb0c0775eb98bf7',
  header: '0101100100000068019ab697e8000000ffc03934f6e02ccce5156669c01a62bf',
  nonce: 'e52cc870bc010150adabb1f388a7ca19a0e52b55cf04f599',
  body_hash: '70873412f84467508402b4f5516ab6d71fca657123a2932475ce949ee2327eeb',
  genesis: 'ec20758502697455a5cafe5a601c62e5569db313398f3191044d48f695ae87c8',
  entry_hash: '75435f9b7575759869cd4dbb6794cc15d374f9b6ce6d66d6bdd5efe96b42e302',
};
const printed_head_signature = /^df9398b9c9d91a98[0-9a-f]{102}cc8e49240d$/;

const smallest = worked();
for (const [member, value] of Object.entries(printed)) {
  if (smallest.outputs[member] !== value) {
    console.error(`the worked block differs in ${member}: ${smallest.outputs[member]}, printed ${value}`);
    process.exit(1);
  }
}
if (!printed_head_signature.test(smallest.outputs.head.slice(-128))) {
  console.error('the worked block differs in the head signature');
  process.exit(1);
}

const cases = [
  smallest, names(), ...introductions(), ...key_and_op(), ...orders(), ...witness_and_access(), ...exchange(),
  ...keyrings(), ...signed(), ...kept(),
];
const document = `${JSON.stringify({
  source: 'Made by tests/outside/node/ledger_bytes.mjs from schemas/ledger-format.md with @noble/curves, @noble/ciphers and @noble/hashes 2.4.0. Seeds are one byte repeated. Byte strings are hex.',
  format: 'limbledger ledger, version 1',
  cases,
}, null, 1)}\n`;

// The page prints `case.member` on a line of its own and the hex below it, each line moved in by two blanks.
const printed_in_page = () => {
  const page = readFileSync(new URL('../../../schemas/ledger-format.md', import.meta.url), 'utf8');
  const block = page.split('```worked\n')[1].split('\n```')[0];
  const found = new Map();
  let name;
  for (const line of block.split('\n')) {
    if (line.startsWith('  ')) found.set(name, (found.get(name) ?? '') + line.trim());
    else name = line;
  }
  return found;
};

if (process.argv[2] === '--check') {
  const kept_at = process.argv[3] ?? new URL('../data/ledger_bytes.json', import.meta.url);
  const stored = JSON.parse(readFileSync(kept_at, 'utf8'));
  let passed = 0;
  let failed = 0;
  const count = (good, complaint) => {
    if (!good) console.error(complaint);
    passed += good ? 1 : 0;
    failed += good ? 0 : 1;
  };
  for (const one of cases) {
    const found = stored.cases.find(({ name }) => name === one.name);
    count(JSON.stringify(found) === JSON.stringify(one), `case ${one.name} differs from the stored one`);
  }
  count(stored.cases.length === cases.length, `${stored.cases.length} stored cases, ${cases.length} made`);
  const page = printed_in_page();
  for (const [name, bytes] of page) {
    const [one, member] = name.split('.');
    count(cases.find((each) => each.name === one)?.outputs[member] === bytes, `the format page prints other bytes for ${name}`);
  }
  count(page.size >= 50, `the format page prints only ${page.size} byte strings`);
  console.log(`${passed} passed, ${failed} failed`);
  process.exitCode = failed === 0 ? 0 : 1;
} else {
  process.stdout.write(document);
}
