// stage: outside --check
// How sure a chance is after one to three findings, drawn instead of worked out: every ratio and the prior are drawn from their printed
// intervals (or counts) 400,000 times, pushed through Bayes, and the mean, the median and the limits (2.5 and 97.5 in 100) written down.
// It reads the facts' JSON and shares no formula of intervals with the program, which adds variances of logarithms (delta method).
//
//   node evidence_intervals.mjs           writes ../data/evidence_intervals.csv
//   node evidence_intervals.mjs --check   draws the stored cases anew, from another seed, and says which differ by more than chance
//
// What is drawn: counts as shares from Beta(x + 0.5, n - x + 0.5); a printed ratio with limits as a normal logarithm; else sensitivity and
// specificity as normal logits, independent of each other; the prior as Beta where it was counted, else as a normal logit.
// Several findings: the logarithms for and those against, each strongest first by their printed values, count 1, 1/2, 1/4.
// Columns: `findings` are rows with their results; `spread` is the largest error of a logit, or of the logarithm of a ratio, that was drawn;
// fixed_* with the prior held at its best value, drawn_* with the prior drawn as well; `error` is the largest standard error of drawing
// among the eight figures, from twenty parts of the run.

import { readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const here = dirname(fileURLToPath(import.meta.url));
const facts = join(here, '../../../core/reference/data/evidence');
const file = join(here, '../data/evidence_intervals.csv');
const read = (name) => JSON.parse(readFileSync(join(facts, `${name}.json`), 'utf8'))[name];
const z = 1.959963985;
const figures = ['fixed_mean', 'fixed_median', 'fixed_low', 'fixed_high', 'drawn_mean', 'drawn_median', 'drawn_low', 'drawn_high'];
const columns = ['findings', 'prior', 'spread', ...figures, 'error'];

const rows = new Map(read('accuracy').map((row) => [row.row, row]));
const priors = new Map(read('pretest').map((row) => [row.row, row]));
const conditions = read('conditions').filter((one) => one.computes);
const groups = read('groups');

// --- numbers from a seed

function generator(seed) {
  // xorshift128 on 32 bits, twice for 53 bits.
  let [a, b, c, d] = [seed | 1, 362436069, 521288629, 88675123];
  const next = () => {
    const t = a ^ (a << 11);
    [a, b, c] = [b, c, d];
    d = d ^ (d >>> 19) ^ (t ^ (t >>> 8));
    return d >>> 0;
  };
  for (let i = 0; i < 64; ++i) next();
  const uniform = () => ((next() >>> 5) * 67108864 + (next() >>> 6) + 0.5) / 9007199254740992;
  const normal = () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
  // Marsaglia and Tsang, ACM Trans Math Softw 2000;26:363: a gamma variable from a normal and a uniform one; below shape 1 by way of shape + 1.
  const gamma = (shape) => {
    if (shape < 1) return gamma(shape + 1) * uniform() ** (1 / shape);
    const e = shape - 1 / 3;
    const f = 1 / Math.sqrt(9 * e);
    for (;;) {
      const x = normal();
      const v = (1 + f * x) ** 3;
      if (v > 0 && Math.log(uniform()) < 0.5 * x * x + e - e * v + e * Math.log(v)) return e * v;
    }
  };
  const beta = (p, q) => {
    const x = gamma(p);
    return x / (x + gamma(q));
  };
  return { normal, beta };
}

// --- what is drawn

const logit = (p) => Math.log(p / (1 - p));
const expit = (x) => 1 / (1 + Math.exp(-x));
const inside = (x) => x > 0 && x < 1;
const error_of = (low, high, scale) => (scale(high) - scale(low)) / (2 * z);

function share_of(row, name) {
  const [value, low, high] = [row[name], row[`${name}_low`], row[`${name}_high`]];
  return [value, low, high].every((x) => x !== undefined && inside(x)) ? { value, error: error_of(low, high, logit) } : undefined;
}

// The printed value of a ratio, how far it is uncertain, and a function that draws it; nothing where the row gives no interval.
function ratio_of(row, result) {
  const positive = result === 'positive';
  if (row.counts) {
    const { tp, fn, fp, tn } = row.counts;
    const [hit, miss, hit_free, miss_free] = positive ? [tp, fn, fp, tn] : [fn, tp, tn, fp];
    const add = [tp, fn, fp, tn].includes(0) ? 0.5 : 0;
    const value = (hit + add) / (hit + miss + 2 * add) / ((hit_free + add) / (hit_free + miss_free + 2 * add));
    return { value, spread: add ? 9 : 0, draw: (from) => from.beta(hit + 0.5, miss + 0.5) / from.beta(hit_free + 0.5, miss_free + 0.5) };
  }
  const name = positive ? 'lr_pos' : 'lr_neg';
  const [printed, low, high] = [row[name], row[`${name}_low`], row[`${name}_high`]];
  if (printed !== undefined) {
    if (!(low > 0) || high === undefined || row.lr_pos_cap !== undefined) return undefined;
    const error = error_of(low, high, Math.log);
    return { value: printed, spread: error, draw: (from) => Math.exp(Math.log(printed) + error * from.normal()) };
  }
  const [sens, spec] = [share_of(row, 'sens'), share_of(row, 'spec')];
  if (!sens || !spec) return undefined;
  const of = (s, c) => (positive ? s / (1 - c) : (1 - s) / c);
  return {
    value: of(sens.value, spec.value),
    spread: Math.max(sens.error, spec.error),
    draw: (from) => of(expit(logit(sens.value) + sens.error * from.normal()), expit(logit(spec.value) + spec.error * from.normal())),
  };
}

function prior_of(name) {
  const row = priors.get(name);
  if (!row) return { best: Number(name), draw: () => Number(name) };
  if (row.positive !== undefined && row.people !== undefined) {
    return { best: row.best, draw: (from) => from.beta(row.positive + 0.5, row.people - row.positive + 0.5) };
  }
  const error = error_of(row.low, row.high, logit);
  return { best: row.best, draw: (from) => expit(logit(row.best) + error * from.normal()) };
}

// --- one case

function weights_of(ratios) {
  const logs = ratios.map((ratio) => Math.log(ratio.value));
  const weights = logs.map(() => 1);
  for (const sign of [1, -1]) {
    const these = logs.map((log, i) => [sign * log, i]).filter(([log, i]) => (sign > 0 ? logs[i] >= 0 : logs[i] < 0));
    these.sort((p, q) => q[0] - p[0]);
    these.forEach(([, i], place) => { weights[i] = 0.5 ** place; });
  }
  return weights;
}

function summary(values) {
  const sorted = Float64Array.from(values).sort();
  const at = (share) => sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
  return [values.reduce((sum, value) => sum + value, 0) / values.length, at(0.5), at(0.025), at(0.975)];
}

function draw_case({ findings, prior }, seed, draws) {
  const parts = 20;
  const ratios = findings.map(([row, result]) => ratio_of(rows.get(row), result));
  const weights = weights_of(ratios);
  const before = prior_of(prior);
  const from = generator(seed);
  const all = [new Float64Array(draws), new Float64Array(draws)];
  for (let n = 0; n < draws; ++n) {
    let sum = 0;
    for (let i = 0; i < ratios.length; ++i) sum += weights[i] * Math.log(ratios[i].draw(from));
    all[0][n] = expit(logit(before.best) + sum);
    all[1][n] = expit(logit(before.draw(from)) + sum);
  }
  const whole = all.flatMap(summary);
  const pieces = [];
  for (let part = 0; part < parts; ++part) {
    pieces.push(all.flatMap((values) => summary(values.subarray((part * draws) / parts, ((part + 1) * draws) / parts))));
  }
  const errors = whole.map((_, k) => {
    const mean = pieces.reduce((sum, piece) => sum + piece[k], 0) / parts;
    return Math.sqrt(pieces.reduce((sum, piece) => sum + (piece[k] - mean) ** 2, 0) / (parts - 1) / parts);
  });
  return { whole, error: Math.max(...errors), spread: Math.max(...ratios.map((ratio) => ratio.spread)) };
}

// --- the cases

const may_compute = (row) =>
  row.status === 'read' && row.design !== 'case_control' && !row.range && !['d', 'low'].includes(row.confidence) &&
  (row.counts || (row.sens !== undefined && row.spec !== undefined) || (row.lr_pos !== undefined && row.lr_neg !== undefined));

function cases() {
  const made = [];
  for (const condition of conditions) {
    const of_it = [...rows.values()].filter((row) => condition.texts.includes(row.about) && may_compute(row));
    let before = [...priors.values()].filter((row) => row.default && condition.texts.includes(row.about)).map((row) => row.row).slice(0, 2);
    if (before.length === 0) before = ['0.17', '0.4'];
    for (const prior of before) {
      for (const row of of_it) {
        for (const result of ['positive', 'negative']) {
          if (ratio_of(row, result)) made.push({ findings: [[row.row, result]], prior });
        }
      }
    }
    // Of each mechanism the first test with an interval: two, and three, together.
    const firsts = [];
    for (const group of groups.find((one) => one.condition === condition.condition)?.groups ?? []) {
      const usable = (one) => one.default_for && ratio_of(one, 'positive') && ratio_of(one, 'negative');
      const row = group.members.map((member) => of_it.find((one) => one.test === member.test && usable(one))).find(Boolean);
      if (row) firsts.push(row.row);
    }
    const signs = ['positive', 'negative'];
    for (let i = 0; i < firsts.length; ++i) {
      for (let k = i + 1; k < firsts.length; ++k) {
        for (const p of signs) for (const q of signs) made.push({ findings: [[firsts[i], p], [firsts[k], q]], prior: before[0] });
      }
    }
    if (firsts.length > 2) {
      for (const p of signs) for (const q of signs) for (const r of signs) {
        made.push({ findings: [[firsts[0], p], [firsts[1], q], [firsts[2], r]], prior: before[0] });
      }
    }
  }
  return made;
}

const name_of = (one) => one.findings.map((finding) => finding.join(' ')).join('; ');

if (process.argv[2] !== '--check') {
  const lines = cases().map((one, i) => {
    const drawn = draw_case(one, 20261126 + 2 * i, 400000);
    return [name_of(one), one.prior, drawn.spread.toFixed(3), ...drawn.whole.map((value) => value.toFixed(6)), drawn.error.toFixed(6)].join(',');
  });
  const head = '# Chances after one to three findings, drawn 400,000 times from the printed intervals of rows and priors: made by\n' +
    '# tests/outside/node/evidence_intervals.mjs, which says what is drawn and what the columns are. `spread` 9: a count of zero.\n';
  writeFileSync(file, head + columns.join(',') + '\n' + lines.join('\n') + '\n');
  console.log(`${lines.length} cases`);
} else {
  const stored = readFileSync(file, 'utf8').split('\n').filter((line) => line && !line.startsWith('#')).map((line) => line.split(','));
  if (stored.shift().join() !== columns.join()) throw new Error('the stored columns are others');
  let [good, bad] = [0, 0];
  stored.forEach((fields, i) => {
    const one = { findings: fields[0].split('; ').map((text) => text.split(' ')), prior: fields[1] };
    const drawn = draw_case(one, 77 + 2 * i, 40000);
    // Five standard errors of the difference, of some hundreds of comparisons; what was written has six digits.
    const allowed = 5 * Math.hypot(drawn.error, Number(fields.at(-1))) + 1e-6;
    const wrong = figures.filter((_, k) => !(Math.abs(drawn.whole[k] - Number(fields[3 + k])) <= allowed));
    if (wrong.length) console.log(`differs: ${fields.slice(0, 2).join(' at ')}: ${wrong.join(', ')}`);
    if (wrong.length) ++bad; else ++good;
  });
  const known = new Set(stored.map((fields) => `${fields[0]},${fields[1]}`));
  const newer = cases().filter((one) => !known.has(`${name_of(one)},${one.prior}`)).length;
  if (newer) console.log(`${newer} cases of rows that came since are not in the file: node tests/outside/node/evidence_intervals.mjs`);
  console.log(`${good} passed, ${bad} failed`);
  process.exitCode = bad ? 1 : 0;
}
