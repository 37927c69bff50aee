// stage: outside
// Everything that is said on the wire, and every schema, against two JSON Schema validators and the OpenRPC
// meta-schema.
//   node validate.mjs [SCHEMAS_DIR [FILE...]]
// SCHEMAS_DIR holds <Type>.schema.json, openrpc.json and faults.json (default: schemas/ of this project). FILE holds
// one JSON text a line (default: all talks of the tests, of the example and of $LIMBLEDGER_BUILD/talks):
//   {"schema":"Finding","value":{}}                         a type, or "finding.record.params", "finding.record.result"
//   > {"jsonrpc":"2.0","id":1,"method":"...","params":{}}   a request, and
//   < {"jsonrpc":"2.0","id":1,"result":{}}                  its reply
// Blank lines and lines that start with # are left out. Each good object is also tried with a member that nobody
// knows, and without each member it must have: both validators must then refuse it.

import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Count } from './lib/count.mjs';
import { Schemas } from './lib/schemas.mjs';

const top = fileURLToPath(new URL('../../../', import.meta.url));
const build = process.env.LIMBLEDGER_BUILD ?? join(top, 'build');
const jsonl_in = (folder) => (existsSync(folder)
  ? readdirSync(folder, { recursive: true }).filter((name) => name.endsWith('.jsonl')).sort().map((name) => join(folder, name))
  : []);

const [folder = join(top, 'schemas'), ...named] = process.argv.slice(2);
const files = named.length > 0
  ? named
  : ['tests/unit/talks', 'tests/outside/data'].map((name) => join(top, name)).concat(['talks', 'outreach-day'].map((name) => join(build, name))).flatMap(jsonl_in);

const count = new Count();
const tally = { schemas: 0, values: 0, requests: 0, replies: 0, faults: 0, planted: 0 };
const schemas = new Schemas(folder);

await count.check('openrpc.json obeys the OpenRPC meta-schema', () => schemas.openrpc_faults() || true);
await count.check('method names are not repeated', () => schemas.methods.size === schemas.openrpc.methods.length);
for (const name of schemas.names()) {
  await count.check(`schema ${name} compiles in both validators`, async () => {
    await schemas.validators(name);
    tally.schemas += 1;
  });
}

// Bad neighbours of a good object. Only what every closed object refuses: an unknown member, a required one left out.
const plant = async (name, value) => {
  if (value === null || typeof value !== 'object' || Array.isArray(value)) return;
  const spoilt = [{ ...value, no_such_member: 1 }];
  const required = name.endsWith('.params')
    ? schemas.methods.get(name.slice(0, -'.params'.length)).params.filter((param) => param.required).map((param) => param.name)
    : [];
  for (const member of required) {
    const { [member]: _, ...rest } = value;
    spoilt.push(rest);
  }
  for (const bad of spoilt) {
    const { good } = await schemas.judge(name, bad);
    if (good) throw new Error(`${name} lets a planted fault through`);
    tally.planted += 1;
  }
};

const must_obey = async (name, value, closed = true) => {
  const { good, why } = await schemas.judge(name, value);
  if (!good) return `${name}: ${why}`;
  if (closed) await plant(name, value);
  return true;
};

const known_codes = () => {
  const file = join(folder, 'faults.json');
  return existsSync(file) ? readFileSync(file, 'utf8') : undefined;
};
const fault_table = known_codes();

const error_shape = ({ code, message, data }) => {
  if (!Number.isInteger(code) || typeof message !== 'string') return 'an error needs a whole code and a message';
  if ([-32700, -32600, -32601].includes(code) && data === undefined) return true;
  if (!Array.isArray(data?.faults) || typeof data.retry !== 'boolean') return 'error.data needs faults and retry';
  for (const fault of data.faults) {
    if (!/^[a-z_]+\.[a-z_]+$/.test(fault.code)) return `a fault code reads ${fault.code}`;
    if (fault_table !== undefined && !fault_table.includes(`"${fault.code}"`)) return `${fault.code} is not in faults.json`;
  }
  return true;
};

const pair = async (where, request, reply) => {
  const method = schemas.methods.get(request.method);
  if (reply.error !== undefined) {
    tally.faults += 1;
    await count.check(`${where}: fault of ${request.method}`, () => error_shape(reply.error));
    return;
  }
  if (!count.note(`${where}: ${request.method} is in openrpc.json`, method !== undefined)) return;
  await count.check(`${where}: params of ${request.method}`, () => must_obey(`${request.method}.params`, request.params ?? {}));
  tally.requests += 1;
  if (method.result === undefined) return;
  await count.check(`${where}: result of ${request.method}`, () => must_obey(`${request.method}.result`, reply.result, false));
  tally.replies += 1;
};

const parsed = (text) => {
  try {
    const value = JSON.parse(text);
    return Array.isArray(value) ? value : [value];
  } catch {
    return [];
  }
};

for (const file of files) {
  const asked = new Map();
  for (const [at, line] of readFileSync(file, 'utf8').split('\n').entries()) {
    const where = `${file.replace(top, '')}:${at + 1}`;
    if (line.startsWith('> ')) {
      for (const request of parsed(line.slice(2))) if (request?.id !== undefined) asked.set(JSON.stringify(request.id), request);
    } else if (line.startsWith('< ')) {
      const replies = parsed(line.slice(2));
      count.note(`${where}: a reply is JSON`, replies.length > 0);
      for (const reply of replies) {
        const request = asked.get(JSON.stringify(reply.id));
        if (request !== undefined) await pair(where, request, reply);
        else if (reply.error !== undefined) await count.check(`${where}: fault`, () => error_shape(reply.error));
      }
    } else if (line.startsWith('{"schema"')) {
      const { schema, value } = JSON.parse(line);
      tally.values += 1;
      await count.check(`${where}: value of ${schema}`, () => must_obey(schema, value));
    } else if (line.trim() !== '' && !line.startsWith('#')) {
      count.note(`${where}: a line this file may hold`, false, line.slice(0, 60));
    }
  }
}

for (const { name, examples = [] } of schemas.openrpc.methods) {
  count.note(`${name} has an example`, examples.length > 0);
  for (const example of examples) {
    const params = Object.fromEntries((example.params ?? []).map((param) => [param.name, param.value]));
    await count.check(`example of ${name}: params`, () => must_obey(`${name}.params`, params));
    if (example.result) await count.check(`example of ${name}: result`, () => must_obey(`${name}.result`, example.result.value, false));
  }
}

if (named.length === 0) count.note('the talks of the tests were found', tally.requests > 0, 'no request and reply in any talk');
console.log(Object.entries(tally).map(([what, number]) => `${number} ${what}`).join(', '));
count.close();
