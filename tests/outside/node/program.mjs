// stage: outside
// The program as a person or a script meets it: exit codes, what it says on its error output, who may read its files, what
// holds and lets go of a ledger. Exit codes are those that --help lists.
//   node program.mjs [PROGRAM]      without it, limbledger of $LIMBLEDGER_BUILD

import { spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, openSync, readFileSync, readdirSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Count } from './lib/count.mjs';

const build = process.env.LIMBLEDGER_BUILD ?? fileURLToPath(new URL('../../../build', import.meta.url));
const program = process.argv[2] ?? join(build, 'limbledger');
const count = new Count();
const scratch = mkdtempSync(join(tmpdir(), 'limbledger-program-'));
const at = (name) => join(scratch, name);

// Without a terminal, so that nothing is asked; `secret` goes in by descriptor 3.
const run = (words, { input = '', secret } = {}) => {
  const stdio = ['pipe', 'pipe', 'pipe'];
  if (secret !== undefined) {
    writeFileSync(at('secret'), `${secret}\n`);
    stdio.push(openSync(at('secret'), 'r'));
  }
  const done = spawnSync('setsid', ['-w', program, ...words], { input, stdio, encoding: 'utf8', timeout: 60000 });
  return { code: done.status, out: done.stdout, err: done.stderr };
};

const serve = (ledger, ...words) => {
  const child = spawn(program, ['serve', '--ledger', ledger, '--stdio', 'lines', ...words], { stdio: ['pipe', 'pipe', 'pipe'] });
  const lines = [];
  const waiting = [];
  let held = '';
  let err = '';
  child.stderr.on('data', (bytes) => { err += bytes; });
  child.stdout.on('data', (bytes) => {
    held += bytes;
    for (let end = held.indexOf('\n'); end >= 0; end = held.indexOf('\n')) {
      const line = held.slice(0, end);
      held = held.slice(end + 1);
      const resolve = waiting.shift();
      if (resolve) resolve(line);
      else lines.push(line);
    }
  });
  const exited = new Promise((resolve) => child.on('close', (code, signal) => {
    for (const one of waiting.splice(0)) one(undefined);
    resolve({ code, signal, err });
  }));
  let id = 0;
  const ask = async (method, params = {}) => {
    child.stdin.write(`${JSON.stringify({ jsonrpc: '2.0', id: ++id, method, params })}\n`);
    const line = lines.shift() ?? await new Promise((resolve) => waiting.push(resolve));
    if (line === undefined) throw new Error(`no reply: ${err}`);
    return JSON.parse(line);
  };
  return { child, ask, exited };
};

const mode = (path) => (statSync(path).mode & 0o777).toString(8);
const demo = at('demo');
const practice = at('practice');
const passphrase = 'four words that fit';

await count.check('help and version end with 0, a wrong line with 2', () => run(['--help']).code === 0 && run(['--version']).code === 0
  && run([]).code === 2 && run(['nonsense']).code === 2 && run(['serve', '--stdio', 'words']).code === 2);
await count.check('a demonstration ledger is made without a question', () => {
  const made = run(['new', demo, '--demo']);
  if (made.code !== 0) return made.err;
  return made.out.includes('DEMONSTRATION') && /Recovery code, shown this once:\n\n +\S/.test(made.out) && / takes \d+\.\d ms/.test(made.out);
});
await count.check('folder and files are for the owner alone', () => mode(demo) === '700'
  && readdirSync(demo).every((name) => statSync(join(demo, name)).isDirectory() || mode(join(demo, name)) === '600'));
await count.check('a folder that holds something is refused and left alone', () => {
  const again = run(['new', demo, '--demo']);
  return again.code === 2 && again.err.includes('not empty') && again.err.includes('what to do:');
});
await count.check('a short passphrase and a missing one are refused before anything is kept', () => run(['new', at('a'), '--passphrase-fd', '3'], { secret: 'short' }).code === 2
  && run(['new', at('b')]).code === 2);
await count.check('a practice ledger takes its passphrase from a descriptor', () => {
  const made = run(['new', practice, '--practice', '--examiner', 'Amina', '--passphrase-fd', '3'], { secret: passphrase });
  if (made.code !== 0) return made.err;
  return made.out.includes('PRACTICE') && !existsSync(join(practice, 'demo-passphrase')) && !made.out.includes(passphrase);
});
await count.check('where there is no ledger, the way to make one is said', () => {
  const none = run(['serve', '--ledger', at('nowhere'), '--stdio', 'lines']);
  return none.code === 2 && none.err.includes('limbledger new');
});
await count.check('a wrong passphrase ends with 3', () => {
  const wrong = run(['verify', practice, '--passphrase-fd', '3'], { secret: 'not this one at all' });
  return wrong.code === 3 && wrong.err.includes('ledger.passphrase') ? true : `${wrong.code} ${wrong.err}`;
});
await count.check('verify passes with and without the passphrase', async () => {
  await new Promise((resolve) => setTimeout(resolve, 1100)); // the wait after one wrong passphrase
  const closed = run(['verify', practice]);
  const opened = run(['verify', practice, '--passphrase-fd', '3'], { secret: passphrase });
  return closed.code === 0 && opened.code === 0 && opened.out.includes('opens') ? true : `${closed.code} ${closed.err} ${opened.code} ${opened.err}`;
});

await count.check('health.check answers while the ledger is locked; the rest is refused until it is unlocked', async () => {
  const { child, ask, exited } = serve(practice);
  const before = await ask('health.check');
  const refused = await ask('person.find', {});
  const wrong = await ask('ledger.unlock', { examiner: 'Amina', passphrase: 'not this one at all' });
  await new Promise((resolve) => setTimeout(resolve, 1100));
  const right = await ask('ledger.unlock', { examiner: 'Amina', passphrase });
  const after = await ask('health.check');
  child.stdin.end();
  const end = await exited;
  return before.result?.state === 'locked' && refused.error?.code === 4 && wrong.error?.code === 4 && right.result !== undefined
    && after.result?.state === 'ready' && end.code === 0 ? true : JSON.stringify({ before, refused, wrong, right, after, end });
});
await count.check('a ledger in use is refused with the number of the process that holds it', async () => {
  const { child, ask, exited } = serve(demo);
  await ask('health.check');
  const second = run(['serve', '--ledger', demo, '--stdio', 'lines']);
  child.kill('SIGTERM');
  const end = await exited;
  return second.code === 4 && second.err.includes(`process ${child.pid}`) && end.code === 0 ? true : JSON.stringify({ second, end });
});
await count.check('the lock of a killed program holds nobody up', async () => {
  const { child, ask, exited } = serve(demo);
  await ask('health.check');
  child.kill('SIGKILL');
  await exited;
  return run(['verify', demo]).code === 0;
});
await count.check('SIGINT stops it well', async () => {
  const { child, ask, exited } = serve(demo);
  await ask('health.check');
  child.kill('SIGINT');
  return (await exited).code === 0;
});
await count.check('a header that cannot be read closes the connection with the reason and 1', () => {
  const bad = run(['serve', '--ledger', demo, '--stdio', 'headers'], { input: 'Content-Length: x\r\n\r\n{}' });
  return bad.code === 1 && bad.err.includes('Content-Length is not a whole number');
});
await count.check('nothing that was sent reaches the log', async () => {
  const { child, ask, exited } = serve(demo);
  await ask('Wulan Invented', {});
  await ask('person.register', { names: [{ text: 'Wulan Invented' }], sex: 'Wulan Invented' });
  child.stdin.end();
  await exited;
  const log = readFileSync(join(demo, 'log/limbledger.log'), 'utf8');
  return !log.includes('Wulan') && log.includes('person.register') && log.includes('method.unknown') && mode(join(demo, 'log/limbledger.log')) === '600';
});

await count.check('a document that is not JSON is refused with its name and 1', () => {
  const bad = run(['assess', '-'], { input: '{"format":' });
  return bad.code === 1 && bad.err.includes('json.syntax');
});
await count.check('a document that says nothing of an exam is refused with every place', () => {
  writeFileSync(at('empty.json'), '{"format":"limbledger-exam/1"}');
  const bad = run(['assess', at('empty.json')]);
  return bad.code === 1 && bad.err.includes('/as_of') && bad.err.includes('params.missing');
});
await count.check('the page of a document says first that its ledger was a demonstration or for practice, and of a clinic nothing', () => {
  const first = (kind) => {
    const exam = { complaint: 'free', setting: 'outreach' };
    writeFileSync(at('kind.json'), JSON.stringify({ format: 'limbledger-exam/1', as_of: '2026-11-24', exam, findings: [], ...(kind && { ledger_kind: kind }) }));
    return run(['assess', at('kind.json')]).out.split('\n')[0];
  };
  const said = ['demonstration', 'practice', 'clinic', undefined].map(first);
  return (said[0].startsWith('DEMONSTRATION') && said[1].startsWith('PRACTICE') && said[2].startsWith('EXAMINATION') && said[3].startsWith('EXAMINATION')) || said.join('; ');
});
await count.check('a file that is not there ends with 1', () => run(['assess', at('none.json')]).code === 1);
await count.check('the decision rules are listed with number, version, inputs and source, as text and as JSON alike', () => {
  const text = run(['rules']);
  const json = run(['rules', '--json']);
  if (text.code !== 0 || json.code !== 0 || text.err || json.err) return 'exit code';
  const rows = JSON.parse(json.out);
  const facts = JSON.parse(readFileSync(new URL('../../../core/reference/data/decision_rules.json', import.meta.url), 'utf8')).decision_rules;
  if (!text.out.startsWith(`${facts.length} decision rules, edition `) || rows.length !== facts.length) return 'number of rules';
  const missing = facts.flatMap((fact) => {
    const row = rows.find((one) => one.rule === fact.rule);
    const block = text.out.split('\n\n').find((one) => one.startsWith(`${fact.rule}  ${fact.edition}\n`));
    if (!row || !block) return [fact.rule];
    const same = row.edition === fact.edition && JSON.stringify(row.asks) === JSON.stringify(fact.asks) && JSON.stringify(row.sources) === JSON.stringify(fact.sources);
    const named = block.includes(`inputs, ${fact.asks.length}:`) && block.includes(`status: ${fact.status}`)
      && fact.asks.every(({ input, items }) => block.includes(items.length === 0 ? `    ${input}` : `    ${input} (${items.join(', ')})`))
      && fact.sources.every((source) => block.includes(`  source: ${source}, `)) && !block.includes('not in the list');
    return same && named ? [] : [fact.rule];
  });
  return missing.length === 0 || missing.join(', ');
});
await count.check('a rule that was listed is one that judges: its result has the edition and the inputs of the list', () => {
  const findings = [{ item: 'function.timed_up_and_go', side: 'midline', value: { kind: 'time', s: 12 } }];
  const person = { birth: { date: '1950-01-01' }, sex: 'female', norm_sex: 'female' };
  writeFileSync(at('rule.json'), JSON.stringify({ format: 'limbledger-exam/1', as_of: '2026-11-24', person, exam: { complaint: 'free', setting: 'outreach' }, findings }));
  const listed = JSON.parse(run(['rules', '--json']).out).find(({ rule }) => rule === 'rule.up_and_go');
  const [result] = JSON.parse(run(['assess', '--json', at('rule.json')]).out).rules.filter(({ rule }) => rule === 'rule.up_and_go');
  return result.outcome === 'positive' && result.edition === listed.edition
    && JSON.stringify(result.inputs.map(({ input }) => input)) === JSON.stringify(listed.asks.map(({ input }) => input));
});
await count.check('assess --names lists what --explain takes, and --explain prints the working with its sources', () => {
  const file = at('rule.json');
  const names = run(['assess', file, '--names']);
  const name = names.out.split('\n').map((line) => line.match(/^ {2}- (rule\.up_and_go\S*)/)?.[1]).find(Boolean);
  const said = run(['assess', file, '--explain', name]);
  const json = JSON.parse(run(['assess', file, '--explain', name, '--json']).out);
  return names.code === 0 && said.code === 0 && said.out.includes(`WORKING of ${name}`) && json.statement === name && json.rows.length > 0
    && said.out.includes(json.rows[0].source);
});
await count.check('a name that cannot be explained ends with 1 and says how the names are listed', () => {
  const wrong = run(['assess', at('rule.json'), '--explain', 'alert.none']);
  return wrong.code === 1 && wrong.err.includes('--names');
});
await count.check('the schemas come out the same twice', () => {
  if (run(['schemas', at('s1')]).code !== 0 || run(['schemas', at('s2')]).code !== 0) return 'exit code';
  const files = readdirSync(at('s1'), { recursive: true }).sort();
  return files.length > 20 && files.every((name) => statSync(join(at('s1'), name)).isDirectory()
    || readFileSync(join(at('s1'), name)).equals(readFileSync(join(at('s2'), name))));
});
rmSync(scratch, { recursive: true });
count.close();
