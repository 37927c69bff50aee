// stage: outside --check
// The rules of feet, of timed and counted tests and of joints that move far, each as a two-valued definition on complete inputs written
// from its source, and brute force over every completion of the unknown ones. Sources: NG19_TRAINING, MALFAIT2017, FPI_BANDS, CDC_TUG,
// CDC_CHAIR, CDC_4STAGE, BOHANNON2006 and KLUKOWSKA2021, HEBERT2017 (core/reference/data/sources.json).
//
//   node rules_feet_function.mjs                 writes ../data/rules/rules_feet_function_digest.json's text to standard output
//   node rules_feet_function.mjs --check         recomputes and compares with that file; also the worked examples of three rules
//   node rules_feet_function.mjs --lines RULE    prints the lines of one rule, to find a difference
//
// A line: the inputs in the order of the rule, parted by "|", "?" where not known; " -> "; the outcome, with ":" and the band or the gate
// where there is one; "; settle=" and the inputs that settle, parted by ",". Digests are BLAKE2b-256 over the lines, each ended by one
// line feed. An unknown input settles when some completion of the other unknown inputs leaves an outcome that depends on it.

import { readFileSync } from 'node:fs';
import { blake2b } from '@noble/hashes/blake2.js';
import { bytesToHex } from '@noble/hashes/utils.js';

const unknown = '?';
const tri = [false, true];
const range = (low, high) => Array.from({ length: high - low + 1 }, (_, at) => low + at);

// Nine signs and five questions stand as "yes+unknown": which of them it is makes no difference.
const counts_of = (most) => range(0, most).flatMap((yes) => range(0, most - yes).map((open) => `${yes}+${open}`));
const counted = (value) => {
  const [yes, open] = value.split('+').map(Number);
  return range(yes, yes + open);
};

const made_for_65 = (age, positive) => {
  if (age < 18) return 'not_applicable:under_18';
  if (positive) return 'positive';
  return age < 65 ? 'not_applicable:under_65' : 'negative';
};

// CDC_CHAIR as printed: first age of the row, men below, women below.
const chair_table = [[60, 14, 12], [65, 12, 11], [70, 12, 10], [75, 11, 10], [80, 10, 9], [85, 8, 8], [90, 7, 4]];

// Each input: the values it is given in the table, and those that stand for an unknown one. `open` says which values may be several.
const rules = {
  nice_feet: {
    inputs: {
      active: { given: tri }, rest_pain: { given: tri }, neuro: { given: tri }, isch: { given: tri }, deform: { given: tri },
      callus: { given: tri }, hx_ulcer: { given: tri }, hx_amp: { given: tri }, rrt: { given: tri },
    },
    decide: (p) => {
      if (p.active || (p.isch && p.rest_pain)) return 'not_applicable:active_foot';
      const high = [p.hx_ulcer, p.hx_amp, p.rrt, p.neuro && p.isch, p.neuro && (p.callus || p.deform), p.isch && (p.callus || p.deform)];
      if (high.includes(true)) return 'positive:class_high';
      return [p.deform, p.neuro, p.isch].includes(true) ? 'positive:class_moderate' : 'negative:class_low';
    },
  },
  hypermobility: {
    inputs: {
      signs: { given: counts_of(9), open: counted }, questions: { given: counts_of(5), open: counted }, prepub: { given: tri }, age: { given: [50, 51] },
    },
    decide: ({ signs, questions, prepub, age }) => {
      let cut = 5;
      if (prepub) cut = 6;
      else if (age > 50) cut = 4;
      return signs >= cut || (signs + 1 === cut && questions >= 2) ? 'positive:met' : 'negative:not_met';
    },
  },
  foot_posture: {
    inputs: Object.fromEntries(['talar_head', 'malleolar_curves', 'heel', 'talonavicular', 'arch', 'forefoot'].map((name) => [name, { given: range(-2, 2) }])),
    decide: (foot) => {
      const sum = Object.values(foot).reduce((one, other) => one + other, 0);
      if (sum >= 10) return 'negative:highly_pronated';
      if (sum >= 6) return 'negative:pronated';
      if (sum >= 0) return 'negative:neutral';
      return sum >= -4 ? 'negative:supinated' : 'negative:highly_supinated';
    },
  },
  up_and_go: {
    inputs: { age: { given: [17, 18, 64, 65, 94] }, up_and_go: { given: [3.0, 11.9, 12.0, 13.4, 13.5, 60.0, 'unable'] } },
    decide: ({ age, up_and_go }) => made_for_65(age, up_and_go === 'unable' || up_and_go >= 12),
  },
  chair_stand: {
    inputs: {
      sex: { given: ['male', 'female'] },
      age: { given: [59, 60, 64, 65, 69, 70, 74, 75, 79, 80, 84, 85, 89, 90, 94, 95] },
      chair_count: { given: range(0, 20) },
      arms_used: { given: tri },
    },
    decide: ({ sex, age, chair_count, arms_used }) => {
      if (age < 60 || age > 94) return 'not_applicable:no_row_for_age';
      const [, men, women] = chair_table.findLast(([first]) => age >= first);
      return (arms_used ? 0 : chair_count) < (sex === 'male' ? men : women) ? 'positive' : 'negative';
    },
  },
  four_stances: {
    inputs: { age: { given: [17, 18, 64, 65, 94] }, heel_to_toe: { given: [0.0, 9.9, 10.0, 'unable'] } },
    decide: ({ age, heel_to_toe }) => made_for_65(age, heel_to_toe === 'unable' || heel_to_toe < 10),
  },
  five_stands: {
    inputs: {
      age: { given: [17, 18, 59, 60, 69, 70, 79, 80, 89, 90] },
      five_stands: { given: [5.0, 11.4, 11.5, 12.3, 12.4, 12.6, 12.7, 14.8, 14.9, 40.0, 'unable'] },
    },
    decide: ({ age, five_stands }) => {
      if (age < 18 || age >= 90) return 'not_applicable:no_row_for_age';
      const limit = age < 60 ? 12.39 : { 6: 11.4, 7: 12.6, 8: 14.8 }[Math.floor(age / 10)];
      return five_stands === 'unable' || five_stands > limit ? 'positive' : 'negative';
    },
  },
  heel_rise_sides: {
    inputs: { rises_here: { given: range(0, 40) }, rises_other: { given: range(0, 40) } },
    decide: ({ rises_here, rises_other }) => {
      if (rises_here === 0 && rises_other === 0) return 'positive:none_on_either';
      if (rises_here === 0) return 'positive:none_here';
      if (rises_other === 0) return 'negative:none_there';
      if (Math.abs(rises_here - rises_other) <= 6) return 'negative:within_error';
      return rises_here < rises_other ? 'positive:fewer_here' : 'negative:more_here';
    },
    skip: (recorded) => recorded.rises_here === unknown && recorded.rises_other === unknown, // then it does not run
  },
};

const completions_of = (input, value) => {
  if (input.open) return input.open(value);
  return value === unknown ? input.given : [value];
};

const evaluate = (rule, recorded) => {
  const names = Object.keys(rule.inputs);
  const choices = names.map((name) => completions_of(rule.inputs[name], recorded[name]));
  const steps = [];
  let total = 1;
  for (let at = names.length - 1; at >= 0; --at) {
    steps[at] = total;
    total *= choices[at].length;
  }
  const outcomes = [];
  const complete = {};
  for (let number = 0; number < total; ++number) {
    for (let at = 0; at < names.length; ++at) complete[names[at]] = choices[at][Math.floor(number / steps[at]) % choices[at].length];
    outcomes.push(rule.decide(complete));
  }
  const agree = outcomes.every((one) => one === outcomes[0]);
  const settle = agree ? [] : names.filter((_, at) => choices[at].length > 1 && outcomes.some((outcome, number) =>
    outcomes[number - steps[at] * (Math.floor(number / steps[at]) % choices[at].length)] !== outcome));
  if (!agree && settle.length === 0) throw new Error('an open outcome needs an input that settles it');
  return { outcome: agree ? outcomes[0] : 'undetermined', settle };
};

const word = (value) => {
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return typeof value === 'number' && !Number.isInteger(value) ? value.toFixed(1) : String(value);
};

const combinations = function* (rule, from = 0, chosen = {}) {
  const names = Object.keys(rule.inputs);
  if (from === names.length) {
    if (!rule.skip || !rule.skip(chosen)) yield chosen;
    return;
  }
  const input = rule.inputs[names[from]];
  for (const value of input.open ? input.given : [...input.given, unknown]) yield* combinations(rule, from + 1, { ...chosen, [names[from]]: value });
};

const lines_of = function* (rule) {
  for (const recorded of combinations(rule)) {
    const { outcome, settle } = evaluate(rule, recorded);
    yield `${Object.keys(rule.inputs).map((name) => word(recorded[name])).join('|')} -> ${outcome}; settle=${settle.join(',')}\n`;
  }
};

const digest = (rule) => {
  const hash = blake2b.create({ dkLen: 32 });
  let lines = 0;
  for (const line of lines_of(rule)) {
    hash.update(new TextEncoder().encode(line));
    lines += 1;
  }
  return { lines, digest: bytesToHex(hash.digest()) };
};

// The worked examples: the page's own names for inputs and outcomes.
const cells_of = (row) => [...row.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,]*))/g)]
  .map(([, quoted, bare]) => (quoted === undefined ? bare : quoted.replaceAll('""', '"')));
const open_count = (value, most) => (value === null ? `0+${most}` : `${value}+0`);
const examples = {
  nice_feet: {
    file: 'rule_examples_ng19.csv', prefix: 'ng19-', count: 7, says: { 'positive:class_high': 'high', 'positive:class_moderate': 'moderate', 'negative:class_low': 'low', 'not_applicable:active_foot': 'active' },
    record: (given) => ({ rest_pain: false, ...given }),
  },
  hypermobility: {
    file: 'rule_examples_hypermobility.csv', prefix: 'bei-', count: 9, says: { 'positive:met': 'met', 'negative:not_met': 'not_met' }, settles: { questions: 'q', signs: 'score' },
    record: ({ score, q, prepub, age }) => ({ signs: open_count(score, 9), questions: open_count(q, 5), prepub, age }),
  },
  chair_stand: {
    file: 'rule_examples_chair.csv', prefix: 'chair-', count: 11, settles: { chair_count: 'count', arms_used: 'arms' },
    says: { positive: 'below_average', negative: 'not_below', 'not_applicable:no_row_for_age': 'not_applicable' },
    record: ({ sex, age, count, arms }) => ({ sex: { M: 'male', F: 'female' }[sex] ?? null, age, chair_count: count, arms_used: arms }),
  },
};

const check_examples = () => {
  let checked = 0;
  for (const [name, one] of Object.entries(examples)) {
    const rows = readFileSync(new URL(`../data/rules/${one.file}`, import.meta.url), 'utf8').split('\n').filter((row) => row.startsWith(one.prefix)).map(cells_of);
    if (rows.length !== one.count) throw new Error(`${name}: ${rows.length} worked examples`);
    for (const [id, , given, expected, expected_settle] of rows) {
      const recorded = Object.fromEntries(Object.entries(one.record(JSON.parse(given))).map(([input, value]) => [input, value === null ? unknown : value]));
      const { outcome, settle } = evaluate(rules[name], recorded);
      const said = one.says[outcome] ?? outcome;
      const named = settle.map((input) => one.settles?.[input] ?? input).join(';');
      if (said !== expected || named !== expected_settle) throw new Error(`${id}: ${said} (${named}), the table says ${expected} (${expected_settle})`);
      checked += 1;
    }
  }
  return checked;
};

const [mode, which] = process.argv.slice(2);
const checked = check_examples();
if (mode === '--lines') {
  for (const line of lines_of(rules[which])) process.stdout.write(line);
} else {
  const made = {
    source: 'Made by tests/outside/node/rules_feet_function.mjs: the definitions there and brute force over completions. The grammar of a line stands at the top of that file.',
    hash: 'BLAKE2b-256 over the lines, each ended by one line feed',
    rules: Object.fromEntries(Object.entries(rules).map(([name, rule]) => [name, digest(rule)])),
  };
  if (mode === '--check') {
    const stored = JSON.parse(readFileSync(new URL('../data/rules/rules_feet_function_digest.json', import.meta.url), 'utf8'));
    const wrong = Object.keys(rules).filter((name) => JSON.stringify(made.rules[name]) !== JSON.stringify(stored.rules[name]));
    for (const name of wrong) console.error(`${name} differs from what is stored`);
    console.log(`${checked + Object.keys(rules).length - wrong.length} passed, ${wrong.length} failed`);
    process.exitCode = wrong.length === 0 ? 0 : 1;
  } else {
    process.stdout.write(`${JSON.stringify(made, null, 1)}\n`);
  }
}
