// Writes src/generated.ts from schemas/: every type, what each method takes and gives, and the codes of errors.
//   node generate.mjs             writes the file
//   node generate.mjs --check     exit 1 where the file is not what would be written

import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { compile } from 'json-schema-to-typescript';

const schemas = new URL('../../schemas/', import.meta.url);
const target = fileURLToPath(new URL('./src/generated.ts', import.meta.url));
const read = (name) => JSON.parse(readFileSync(new URL(name, schemas), 'utf8'));
const openrpc = read('openrpc.json');
const { faults } = read('faults.json');

// Texts that are the same everywhere get a name, so that the members say what they hold.
const names = {
  Id: '26 characters of lower-case base32',
  Name: 'a name from the catalogue',
  Instant: 'an instant in UTC such as 2026-11-24T10:15:00.000Z',
  CalendarDate: 'a calendar date: 1971, 1971-05 or 1971-05-12',
  RequestId: 'a UUID made by the client',
};

// References of the document point into components; here all types stand in one schema.
const moved = (schema) => JSON.parse(JSON.stringify(schema), (key, inner) => {
  if (key === '$ref') return inner.replace('#/components/schemas/', '#/$defs/');
  if (inner === null || typeof inner !== 'object' || Array.isArray(inner)) return inner;
  const [name] = Object.entries(names).find(([, text]) => inner.type === 'string' && inner.description?.includes(text)) ?? [];
  if (name) return inner.description === names[name] ? { $ref: `#/$defs/${name}` } : { ...inner, tsType: name };
  const { maxItems, ...rest } = inner;
  return typeof maxItems === 'number' ? rest : inner;
});
const type_of = (method) => method.name.split(/[._]/).map((word) => word[0].toUpperCase() + word.slice(1)).join('');
const result_of = (method) => method.result.schema.$ref?.split('/').pop() ?? 'Record<string, unknown>';

const { $defs, $schema, ...error_object } = read('ErrorObject.schema.json'); // the error itself is no component of the document
const types = moved({ ...openrpc.components.schemas, ErrorObject: error_object });
for (const [name, description] of Object.entries(names)) {
  if (types[name]) throw new Error(`${name} is a type already`);
  types[name] = { type: 'string', description };
}
for (const method of openrpc.methods) {
  const name = `${type_of(method)}Params`;
  if (types[name]) throw new Error(`${name} is a type already`);
  types[name] = {
    type: 'object',
    properties: Object.fromEntries(method.params.map((one) => [one.name, moved(one.schema)])),
    required: method.params.filter((one) => one.required).map((one) => one.name),
    additionalProperties: false,
  };
}

const options = {
  bannerComment: '',
  additionalProperties: false,
  unreachableDefinitions: true,
  ignoreMinAndMaxItems: true,
  unknownAny: true,
  style: { singleQuote: true, printWidth: 140 },
};
const whole = { title: 'AllTypes', type: 'object', properties: {}, additionalProperties: false, $defs: types };
const declared = (await compile(whole, 'AllTypes', options))
  .replace(/export interface AllTypes \{\s*\}\n/, '')
  // Which definition a type came from is no news: it is the type's own name.
  .replace(/( \*\n)? \* This interface was referenced by `AllTypes`'s JSON-Schema\n \* via the `definition` "[^"]+"\.\n/g, '')
  .replace(/^ *\/\*\*\n *\*\/\n/gm, '')
  .trim();

const sentence = (text) => text.replaceAll('*/', '* /');
const needs_request = (method) => method.params.some((one) => one.name === 'request' && one.required) && /\bWrites;/.test(method.description);
const lines = [
  '// Made by generate.mjs from schemas/; not written by hand.',
  '',
  declared,
  '',
  '/** What each method takes and gives. */',
  'export interface Methods {',
  ...openrpc.methods.flatMap((one) => [
    `  /** ${sentence(one.summary)} */`,
    `  '${one.name}': { params: ${type_of(one)}Params; result: ${result_of(one)} };`,
  ]),
  '}',
  '',
  '/** Methods that write: they take a `request`, and the same one again writes nothing twice. */',
  `export type WritingMethod =\n${openrpc.methods.filter(needs_request).map((one) => `  | '${one.name}'`).join('\n')};`,
  '',
  '/** Every code of an error: its number in JSON-RPC, whether the same call may succeed later, and what to do. */',
  'export const faults = {',
  ...faults.flatMap((one) => [
    `  /** ${sentence(one.meaning)} */`,
    `  '${one.code}': { number: ${one.number}, retry: ${one.retry}, hint: ${JSON.stringify(one.hint)} },`,
  ]),
  '} as const;',
  '',
  'export type FaultCode = keyof typeof faults;',
  '',
];
const text = lines.join('\n');
if (process.argv.includes('--check')) {
  if (readFileSync(target, 'utf8') !== text) {
    console.error('src/generated.ts is not what schemas/ gives; what to do: npm run generate');
    process.exit(1);
  }
} else {
  writeFileSync(target, text);
}
