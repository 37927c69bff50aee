// stage: outside
// The client library as somebody gets it: its generated types are what schemas/ gives, its package is made, installed into an
// empty folder and used there against real sidecars; the tests are its own (clients/typescript/test, node:test).
//   node client_typescript.mjs      takes limbledger of $LIMBLEDGER_BUILD

import { spawn, spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdtempSync, readFileSync, readdirSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Count } from './lib/count.mjs';

const top = fileURLToPath(new URL('../../../', import.meta.url));
const client = join(top, 'clients/typescript');
const program = join(process.env.LIMBLEDGER_BUILD ?? join(top, 'build'), 'limbledger');
const scratch = mkdtempSync(join(tmpdir(), 'limbledger-package-'));
const folder = join(scratch, 'empty');
const count = new Count();

const run = (words, at = client, environment = {}) => {
  const done = spawnSync(words[0], words.slice(1), { cwd: at, encoding: 'utf8', env: { ...process.env, ...environment } });
  return { good: done.status === 0, out: done.stdout, why: `${words.join(' ')}: ${done.error ?? ''}${done.stdout}${done.stderr}`.slice(-2000) };
};
const succeeds = (...all) => {
  const done = run(...all);
  return done.good || done.why;
};
const quiet = ['--no-audit', '--no-fund', '--loglevel=error'];

try {
  await count.check('what the library is made with is installed', () => succeeds(['npm', 'ci', '--ignore-scripts', ...quiet]));
  await count.check('it needs nothing at run time, and its lock file names no place to load from', () => {
    const { dependencies, peerDependencies, optionalDependencies } = JSON.parse(readFileSync(join(client, 'package.json'), 'utf8'));
    const lock = readFileSync(join(client, 'package-lock.json'), 'utf8');
    return !dependencies && !peerDependencies && !optionalDependencies && !lock.includes('"resolved"');
  });
  await count.check('the generated types are what schemas/ gives', () => succeeds(['node', 'generate.mjs', '--check']));
  await count.check('that would be seen where they are not', () => {
    const other = join(scratch, 'other');
    cpSync(join(client, 'generate.mjs'), join(other, 'clients/typescript/generate.mjs'));
    cpSync(join(client, 'src'), join(other, 'clients/typescript/src'), { recursive: true });
    symlinkSync(join(client, 'node_modules'), join(other, 'clients/typescript/node_modules'));
    cpSync(join(top, 'schemas'), join(other, 'schemas'), { recursive: true });
    const before = run(['node', 'generate.mjs', '--check'], join(other, 'clients/typescript'));
    const faults = join(other, 'schemas/faults.json');
    writeFileSync(faults, readFileSync(faults, 'utf8').replace('"exam.signed"', '"exam.planted"'));
    const after = run(['node', 'generate.mjs', '--check'], join(other, 'clients/typescript'));
    return (before.good && !after.good && after.why.includes('npm run generate')) || before.why + after.why;
  });
  await count.check('the package is made', () => succeeds(['npm', 'pack', '--pack-destination', scratch, ...quiet]));
  await count.check('what a caller may write compiles, and what not does not', () => succeeds(['node', 'node_modules/typescript/bin/tsc', '-p', 'test/tsconfig.json']));

  const tarball = join(scratch, readdirSync(scratch).find((name) => name.endsWith('.tgz')) ?? 'none');
  cpSync(join(client, 'test'), join(folder, 'test'), { recursive: true });
  writeFileSync(join(folder, 'package.json'), '{"private":true,"type":"module"}');
  await count.check('it installs into an empty folder, and brings nothing along', () => {
    const done = succeeds(['npm', 'install', '--offline', '--ignore-scripts', ...quiet, tarball, join(client, 'node_modules/ws')], folder);
    const there = readdirSync(join(folder, 'node_modules')).filter((name) => !name.startsWith('.')).sort().join();
    const inside = readdirSync(join(folder, 'node_modules/limbledger-client')).sort().join();
    return done === true ? (there === 'limbledger-client,ws' && inside === 'README.md,dist,package.json') || `${there}; ${inside}` : done;
  });

  await count.check('the first five minutes of its README run as they are written', async () => {
    const ledger = join(scratch, 'show');
    spawnSync(program, ['new', ledger, '--demo'], { input: '' });
    const sidecar = spawn(program, ['serve', '--ledger', ledger, '--http', '0'], { stdio: 'ignore' });
    try {
      writeFileSync(join(folder, 'first.mjs'), /```js\n(.*?)```/s.exec(readFileSync(join(client, 'README.md'), 'utf8'))[1]);
      for (let tries = 0; tries < 500 && !existsSync(join(ledger, 'sidecar.json')); tries += 1) await new Promise((resolve) => setTimeout(resolve, 20));
      const done = run(['node', 'first.mjs', ledger], folder);
      return (done.good && done.out.includes('LEFT')) || done.why;
    } finally {
      sidecar.kill();
    }
  });

  // Its own tests, one by one as they are counted there.
  const tests = readdirSync(join(folder, 'test')).filter((name) => name.endsWith('.test.mjs')).map((name) => join('test', name));
  const ran = run(['node', '--test', '--test-reporter=tap', ...tests], folder, { LIMBLEDGER_PROGRAM: program });
  const number = (word) => Number(new RegExp(`^# ${word} (\\d+)$`, 'm').exec(ran.out)?.[1] ?? 0);
  count.passed += number('pass');
  count.failed += number('fail') + number('cancelled');
  count.note('its own tests ran to their end', ran.good && number('pass') >= 27, ran.good ? `${number('pass')} passed` : ran.out.slice(-6000));
} finally {
  rmSync(scratch, { recursive: true, force: true });
}
count.close();
