// stage: outside --check
// The rules of vessels, compartments, a child's hip, worn joints, the sacroiliac joint and the meniscus as two-valued definitions on
// complete inputs, written from the published lists, and brute force over every completion of the unknown ones.
//
//   node rules_vessels_joints.mjs             writes ../data/rules/vessels_joints_digest.json's text to standard output
//   node rules_vessels_joints.mjs --check     recomputes and compares with that file
//   node rules_vessels_joints.mjs --lines R   prints the lines of one rule, to find a difference
//
// A line: the class of each input as a digit, ? for unknown, | between; " -> " outcome, ":" and the band or gate where there is one;
// "; points=" least ".." most of a rule that counts; "; settle=" the inputs on which it depends, commas between. Digests are BLAKE2b-256
// over the lines of one rule, each ended by one line feed. The last input changes fastest, unknown comes last.

import { readFileSync } from 'node:fs';
import { blake2b } from '@noble/hashes/blake2.js';
import { bytesToHex } from '@noble/hashes/utils.js';

const yes_no = [false, true];
const count = (...signs) => signs.filter(Boolean).length;
const met = (holds) => (holds ? { outcome: 'positive', word: 'met' } : { outcome: 'negative', word: 'not_met' });
const gate = (word) => ({ outcome: 'not_applicable', word });

// One point each, two off for another cause. Ages stand for their class: 17 under, 18 and more.
const wells = (score, band) => ({
  inputs: {
    adult: yes_no, pregnant: yes_no, cancer: yes_no, paralysis: yes_no, bed: yes_no, tender: yes_no, whole: yes_no,
    calf_mm: [29, 30, 31], pit: yes_no, collat: yes_no, prior: yes_no, alt: yes_no,
  },
  decide: (p) => {
    const points = score(p);
    return { ...(!p.adult ? gate('age') : p.pregnant ? gate('pregnancy') : band(points)), points };
  },
});

const kocher = (with_crp) => ({
  inputs: {
    age: [15, 16], excl: yes_no, fever_tenths: [385, 386], nwb: yes_no, esr: [39, 40], wbc: [12000, 12001], ...(with_crp ? { crp: [20, 21] } : {}),
  },
  decide: ({ age, excl, fever_tenths, nwb, esr, wbc, crp = 0 }) => {
    if (age >= 16) return { ...gate('age'), points: 0 };
    if (excl) return { ...gate('exclusions'), points: 0 };
    const points = count(fever_tenths > 385, nwb, esr >= 40, wbc > 12000, crp > 20);
    return { outcome: points > 0 ? 'positive' : 'negative', word: `count_${points}`, points };
  },
});

const rules = {
  wells_dvt: wells(
    (p) => count(p.cancer, p.paralysis, p.bed, p.tender, p.whole, p.calf_mm >= 30, p.pit, p.collat, p.prior) - (p.alt ? 2 : 0),
    (points) => (points >= 2 ? { outcome: 'positive', word: 'two_or_more' } : { outcome: 'negative', word: 'under_two' }),
  ),
  wells_dvt_1997: wells(
    (p) => count(p.cancer, p.paralysis, p.bed, p.tender, p.whole, p.calf_mm > 30, p.pit, p.collat) - (p.alt ? 2 : 0),
    (points) => {
      if (points <= 0) return { outcome: 'negative', word: 'low' };
      return { outcome: 'positive', word: points <= 2 ? 'moderate' : 'high' };
    },
  ),
  // The states of the route, one by one.
  clot_route: {
    inputs: { points: ['under', 'two'], scan: ['not_done', 'none', 'clot'], d_dimer: ['negative', 'positive'] },
    decide: ({ points, scan, d_dimer }) => {
      const next = {
        'two not_done negative': 'scan_first', 'two not_done positive': 'scan_first',
        'two none negative': 'other_cause', 'two none positive': 'scan_again',
        'under not_done negative': 'other_cause', 'under not_done positive': 'scan_after_d_dimer',
        'under none negative': 'other_cause', 'under none positive': 'other_cause',
      }[`${points} ${scan} ${d_dimer}`] ?? 'clot_seen';
      return { outcome: next === 'other_cause' ? 'negative' : 'positive', word: next };
    },
  },
  knee_vessels: {
    inputs: { hard: yes_no, pulse: ['felt', 'weaker', 'none'], pressures: [[108, 120], [107, 120]] },
    decide: ({ hard, pulse, pressures: [ankle, arm] }) => {
      if (hard || pulse === 'none') return { outcome: 'positive', word: 'emergency' };
      if (pulse === 'weaker' || 10 * ankle < 9 * arm) return { outcome: 'positive', word: 'imaging_now' };
      return { outcome: 'negative', word: 'watched' };
    },
  },
  kocher: kocher(false),
  caird: kocher(true),
  singhal: {
    inputs: { age: [15, 16], excl: yes_no, nwb: yes_no, crp: [20, 21] },
    decide: ({ age, excl, nwb, crp }) => {
      if (age >= 16) return { ...gate('age'), points: 0 };
      if (excl) return { ...gate('exclusions'), points: 0 };
      const points = count(nwb, crp > 20);
      return { outcome: points > 0 ? 'positive' : 'negative', word: ['neither', 'one', 'both'][points], points };
    },
  },
  nice_oa: {
    inputs: { age: [44, 45], act: yes_no, stiff: [30, 31], trauma: yes_no, worse: yes_no, hot: yes_no, suspected: yes_no },
    decide: ({ age, act, stiff, trauma, worse, hot, suspected }) => {
      if (!(age >= 45 && act && stiff <= 30)) return { outcome: 'negative', word: 'not_met' };
      return { outcome: 'positive', word: trauma || worse || hot || suspected ? 'met_but_unusual' : 'met' };
    },
  },
  acr_knee_oa: {
    inputs: { age: [17, 50, 51], pain: yes_no, stiff: [29, 30], crep: yes_no, bone: yes_no, kneecap: yes_no, benl: yes_no, warmth: yes_no },
    decide: ({ age, pain, stiff, crep, bone, kneecap, benl, warmth }) =>
      (age < 18 ? gate('age') : met(pain && count(age > 50, stiff < 30, crep, bone || kneecap, benl, !warmth) >= 3)),
  },
  acr_knee_tree_oa: {
    inputs: { age: [17, 37, 38], pain: yes_no, stiff: [30, 31], crep: yes_no, benl: yes_no },
    decide: ({ age, pain, stiff, crep, benl }) => (age < 18 ? gate('age') : met(pain && ((crep && age >= 38 && stiff <= 30) || benl))),
  },
  eular_knee_oa: {
    inputs: { age: [17, 40, 41], pain: yes_no, stiff: [30, 31], func: yes_no, crep: yes_no, rom: yes_no, benl: yes_no },
    decide: ({ age, pain, stiff, func, crep, rom, benl }) =>
      (age < 18 ? gate('age') : met(age > 40 && pain && stiff <= 30 && func && (crep || rom || benl))),
  },
  acr_hip_oa: {
    inputs: { pain: yes_no, ir: [14, 15], pir: yes_no, stiff: [60, 61], age: [17, 50, 51], esr: ['not_done', 45, 46], flex: [115, 116] },
    decide: ({ pain, ir, pir, stiff, age, esr, flex }) =>
      (age < 18 ? gate('age')
        : met(pain && ((ir >= 15 && pir && stiff <= 60 && age > 50) || (ir < 15 && (esr === 'not_done' ? flex <= 115 : esr <= 45))))),
  },
  sutlive: {
    inputs: { age: [40, 41], squat: yes_no, aflex: yes_no, scour: yes_no, aext: yes_no, ir: [25, 26] },
    decide: ({ age, squat, aflex, scour, aext, ir }) => {
      if (age <= 40) return { ...gate('age'), points: 0 };
      const points = count(squat, aflex, scour, aext, ir <= 25);
      return points >= 3 ? { outcome: 'positive', word: `count_${points}`, points } : { outcome: 'negative', word: 'under_3', points };
    },
  },
  laslett: {
    inputs: { age: [17, 18], pregnant: yes_no, dist: yes_no, comp: yes_no, thigh: yes_no, sac: yes_no, gr: yes_no, gl: yes_no },
    decide: ({ age, pregnant, ...tests }) => {
      if (age < 18) return { ...gate('age'), points: 0 };
      const points = count(...Object.values(tests));
      if (points >= 3) return { outcome: 'positive', word: 'three_or_more', points };
      if (pregnant) return { ...gate('pregnancy'), points };
      return points === 0 ? { outcome: 'negative', word: 'none_of_set', points } : { outcome: 'undetermined', word: 'one_or_two', points };
    },
  },
  lowery: {
    inputs: { lock: yes_no, ext: yes_no, flx: yes_no, mcm: yes_no, jlt: yes_no },
    decide: (findings) => {
      const points = count(...Object.values(findings));
      return points >= 3 ? { outcome: 'positive', word: `count_${points}`, points } : { outcome: 'negative', word: 'under_3', points };
    },
  },
};

const said = ({ outcome, word }) => outcome + (word ? `:${word}` : '');

const complete = (choices, decide) => {
  const names = Object.keys(choices);
  const sizes = names.map((name) => choices[name].length);
  const total = sizes.reduce((product, size) => product * size, 1);
  const answers = new Array(total);
  let least = Infinity;
  let most = -Infinity;
  const at = new Array(names.length).fill(0);
  for (let number = 0; number < total; ++number) {
    const person = {};
    names.forEach((name, i) => { person[name] = choices[name][at[i]]; });
    const answer = decide(person);
    answers[number] = said(answer);
    least = Math.min(least, answer.points ?? 0);
    most = Math.max(most, answer.points ?? 0);
    for (let i = names.length - 1; i >= 0 && ++at[i] === sizes[i]; --i) at[i] = 0;
  }
  const settle = names.filter((name, i) => {
    const step = sizes.slice(i + 1).reduce((product, size) => product * size, 1);
    return sizes[i] > 1 && answers.some((answer, number) => answers[number - step * (Math.floor(number / step) % sizes[i])] !== answer);
  });
  return { answer: answers.every((one) => one === answers[0]) ? answers[0] : 'undetermined', least, most, settle };
};

// Every combination of classes and unknown; of the long scores those with at most `open_most` unknown: the rest is shown to follow by
// complete_points against complete_sheet in the unit tests.
const lines_of = function* ({ inputs, decide, open_most = Infinity }) {
  const names = Object.keys(inputs);
  const counts = decide(Object.fromEntries(names.map((name) => [name, inputs[name][0]]))).points !== undefined;
  const chosen = new Array(names.length).fill(0);
  const last = names.map((name) => inputs[name].length);
  for (;;) {
    if (chosen.filter((value, i) => value === last[i]).length <= open_most) {
      const choices = Object.fromEntries(names.map((name, i) => [name, chosen[i] === last[i] ? inputs[name] : [inputs[name][chosen[i]]]]));
      const { answer, least, most, settle } = complete(choices, decide);
      const words = chosen.map((value, i) => (value === last[i] ? '?' : String(value))).join('|');
      yield `${words} -> ${answer}${counts ? `; points=${least}..${most}` : ''}; settle=${settle.join(',')}\n`;
    }
    let i = names.length - 1;
    while (i >= 0 && ++chosen[i] > last[i]) chosen[i--] = 0;
    if (i < 0) return;
  }
};
rules.wells_dvt.open_most = 3;
rules.wells_dvt_1997.open_most = 3;

// The page's order for a compartment, with a limb in danger that nobody asked after as a value of its own, and a pressure that was
// not measured. What is unknown of the two pains is completed; so is the danger, but where pain beyond the hurt is known.
const compartment_page = ({ danger, beyond, stretch, tell, pressure }) => {
  if ((beyond || stretch) && danger) return { outcome: 'positive' };
  if (beyond && stretch) return { outcome: 'positive' };
  if (pressure === 'below') return { outcome: 'positive' };
  if (!tell && danger) return { outcome: 'undetermined' };
  if (danger) return { outcome: 'negative', word: 'hourly' };
  return { outcome: 'negative' };
};
const compartment_lines = function* () {
  const three = [[false], [true], yes_no];
  for (const [d, danger] of three.entries()) for (const [b, beyond] of three.entries()) for (const [s, stretch] of three.entries()) {
    for (const [t, tell] of [true, false].entries()) for (const [p, pressure] of ['not_measured', 'from', 'below'].entries()) {
      const choices = {
        danger: d === 2 && b === 1 ? [true] : danger, beyond, stretch, tell: [tell],
        pressure: !tell && p === 0 ? ['from', 'below'] : [pressure],
      };
      const { answer, settle } = complete(choices, compartment_page);
      yield `${[d, b, s].map((one) => (one === 2 ? '?' : one)).join('|')}|${t}|${p} -> ${answer}; settle=${settle.join(',')}\n`;
    }
  }
};

const lines_by_rule = Object.fromEntries([
  ...Object.entries(rules).map(([name, rule]) => [name, () => lines_of(rule)]),
  ['compartment_signs', compartment_lines],
]);

const digests = () => ({
  source: 'Made by tests/outside/node/rules_vessels_joints.mjs: the published lists as two-valued definitions and brute force over completions. The grammar of a line stands at the top of that file.',
  rules: Object.fromEntries(Object.entries(lines_by_rule).map(([name, make]) => {
    const hash = blake2b.create({ dkLen: 32 });
    let lines = 0;
    for (const line of make()) {
      hash.update(new TextEncoder().encode(line));
      lines += 1;
    }
    return [name, { lines, digest: bytesToHex(hash.digest()) }];
  })),
});

const [mode, rule] = process.argv.slice(2);
if (mode === '--lines') {
  for (const line of lines_by_rule[rule]()) process.stdout.write(line);
} else if (mode === '--check') {
  const made = digests();
  const stored = JSON.parse(readFileSync(new URL('../data/rules/vessels_joints_digest.json', import.meta.url), 'utf8'));
  const wrong = Object.keys(made.rules).filter((name) => JSON.stringify(made.rules[name]) !== JSON.stringify(stored.rules[name]));
  for (const name of wrong) console.error(`${name} differs`);
  console.log(`${Object.keys(made.rules).length - wrong.length} passed, ${wrong.length} failed`);
  if (wrong.length > 0) process.exit(1);
} else {
  process.stdout.write(`${JSON.stringify(digests(), null, 1)}\n`);
}
