// A decision rule as a two-valued definition on complete inputs, and brute force over every completion of the unknown ones.
// A rule gives its domain (each input with its values, the first the outermost loop), the numbers that stand for an unknown
// number, and `decide`. Blocks are the lines of one value of each of the `block_by` inputs. Digests are BLAKE2b-256 over the
// lines, each ended by one line feed (no carriage return), the last one too. An unknown input settles when some completion of
// the other unknown inputs leaves an outcome that depends on it.

import { readFileSync } from 'node:fs';
import { blake2b } from '@noble/hashes/blake2.js';
import { bytesToHex } from '@noble/hashes/utils.js';

// One row of a CSV table whose cells may stand in double quotes.
const cells_of = (row) => [...row.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,]*))/g)]
  .map(([, quoted, bare]) => (quoted === undefined ? bare : quoted.replaceAll('""', '"')));

export const rule_table = ({ domain, any_number, decide, block_by, examples_file, examples_prefix, examples_count, digest_file, source }) => {
  const inputs = Object.keys(domain);

  const completions_of = (input, value) => {
    if (input in any_number) {
      if (value === 'unknown') return any_number[input];
      const [low, high] = value.split('-').map(Number);
      if (high === undefined) return [low];
      return Array.from({ length: high - low + 1 }, (_, at) => low + at);
    }
    return value === 'unknown' ? [false, true] : [value === 'yes'];
  };

  const evaluate = (recorded) => {
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

  const check_examples = () => {
    const rows = readFileSync(new URL(`../../data/rules/${examples_file}`, import.meta.url), 'utf8')
      .split('\n').filter((row) => row.startsWith(examples_prefix)).map(cells_of);
    for (const [id, , given, expected, expected_settle] of rows) {
      const recorded = Object.fromEntries(Object.entries(JSON.parse(given)).map(([input, value]) => {
        if (value === null) return [input, 'unknown'];
        if (typeof value === 'boolean') return [input, value ? 'yes' : 'no'];
        return [input, String(value)];
      }));
      const { outcome, settle } = evaluate(recorded);
      if (outcome !== expected || settle.join(';') !== expected_settle) {
        throw new Error(`${id}: ${outcome} (${settle}), the table says ${expected} (${expected_settle})`);
      }
    }
    if (rows.length !== examples_count) throw new Error(`${rows.length} worked examples, ${examples_count} expected`);
    return rows.length;
  };

  const block_of = (recorded) => block_by.map((input) => recorded[input]).join('|');

  const digest = () => {
    const whole = blake2b.create({ dkLen: 32 });
    const counts = { positive: 0, negative: 0, not_applicable: 0, undetermined: 0 };
    const blocks = {};
    let lines = 0;
    const block_hashes = new Map();
    for (const recorded of combinations()) {
      const result = evaluate(recorded);
      const line = new TextEncoder().encode(line_of(recorded, result));
      const block = block_of(recorded);
      if (!block_hashes.has(block)) block_hashes.set(block, blake2b.create({ dkLen: 32 }));
      block_hashes.get(block).update(line);
      whole.update(line);
      counts[result.outcome] = (counts[result.outcome] ?? 0) + 1; // a rule may have categories of its own
      lines += 1;
    }
    for (const [block, hash] of block_hashes) blocks[block] = bytesToHex(hash.digest());
    return {
      source, hash: 'BLAKE2b-256 over the lines, each ended by one line feed',
      lines, counts, digest: bytesToHex(whole.digest()), blocks,
    };
  };

  // Without a mode: writes the digest file's text. --check: recomputes and compares, and the worked examples. --lines: all lines,
  // or those of one block, to find a difference.
  const run = ([mode, ...block]) => {
    const checked = check_examples();
    if (mode === '--lines') {
      for (const recorded of combinations()) {
        if (block.length !== 0 && block_of(recorded) !== block.join('|')) continue;
        process.stdout.write(line_of(recorded, evaluate(recorded)));
      }
    } else if (mode === '--check') {
      const made = digest();
      const stored = JSON.parse(readFileSync(new URL(`../../data/rules/${digest_file}`, import.meta.url), 'utf8'));
      if (JSON.stringify(made) !== JSON.stringify(stored)) {
        for (const [name, value] of Object.entries(made.blocks)) {
          if (stored.blocks[name] !== value) console.error(`block ${name} differs`);
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
  };

  return { evaluate, run };
};
