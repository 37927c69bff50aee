// The project's schemas in two validators that share no code: ajv (2020-12, with ajv-formats) and
// @hyperjump/json-schema. A verdict counts only where both give it.
//
// Types come from <Type>.schema.json and, a second time, from components.schemas of openrpc.json. Params of a method
// are one closed object made from its by-name parameters, its result is the schema of `result`.

import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import Ajv2020 from 'ajv/dist/2020.js';
import draft_7 from 'ajv/dist/refs/json-schema-draft-07.json' with { type: 'json' };
import addFormats from 'ajv-formats';
import { jsonSchema as json_schema_meta } from '@json-schema-tools/meta-schema';
import { openrpcDocument as openrpc_meta } from '@open-rpc/meta-schema';
import { registerSchema, setShouldValidateFormat, validate } from '@hyperjump/json-schema/draft-2020-12';
import '@hyperjump/json-schema/draft-07';
import '@hyperjump/json-schema/formats';

const base = 'https://schemas.invalid/';
const dialect = 'https://json-schema.org/draft/2020-12/schema';

setShouldValidateFormat(true);

// Copies a schema with every reference into components.schemas pointed at $defs, where both validators look.
const moved = (schema) => {
  if (Array.isArray(schema)) return schema.map(moved);
  if (schema === null || typeof schema !== 'object') return schema;
  return Object.fromEntries(Object.entries(schema).map(([name, value]) => [
    name,
    name === '$ref' && typeof value === 'string' ? value.replace('#/components/schemas/', '#/$defs/') : moved(value),
  ]));
};

const params_schema = (params) => ({
  type: 'object',
  properties: Object.fromEntries(params.map(({ name, schema }) => [name, moved(schema)])),
  required: params.filter(({ required }) => required).map(({ name }) => name),
  additionalProperties: false,
});

export class Schemas {
  constructor(folder) {
    this.folder = folder;
    this.places = new Map();
    this.compiled = new Map();
    this.ajv = new Ajv2020({ strict: false, allErrors: true });
    this.ajv.addMetaSchema(draft_7);
    addFormats(this.ajv);
    this.openrpc = JSON.parse(readFileSync(join(folder, 'openrpc.json'), 'utf8'));
    this.methods = new Map(this.openrpc.methods.map((method) => [method.name, method]));
    for (const file of readdirSync(folder).filter((name) => name.endsWith('.schema.json')).sort()) {
      this.add(JSON.parse(readFileSync(join(folder, file), 'utf8')), file, file.replace('.schema.json', ''));
    }
    const defs = Object.fromEntries(Object.entries(this.openrpc.components?.schemas ?? {}).map(([name, schema]) => [name, moved(schema)]));
    for (const { name, params, result } of this.openrpc.methods) {
      defs[`${name}.params`] = params_schema(params);
      if (result) defs[`${name}.result`] = moved(result.schema);
    }
    this.add({ $schema: dialect, $id: `${base}openrpc`, $defs: defs }, 'openrpc');
    for (const name of Object.keys(defs)) this.place(name, `${base}openrpc#/$defs/${name}`);
  }

  add(schema, file, name) {
    const uri = new URL(schema.$id ?? file, base).href;
    const placed = { ...schema, $id: uri };
    this.ajv.addSchema(placed);
    registerSchema(placed, uri, dialect);
    if (name !== undefined) this.place(name, uri);
  }

  place(name, uri) {
    this.places.set(name, [...(this.places.get(name) ?? []), uri]);
  }

  names() {
    return [...this.places.keys()];
  }

  // Compiled once per place, by both. Throws where a schema itself is not valid.
  async validators(name) {
    if (!this.places.has(name)) throw new Error(`no schema is named ${name}`);
    if (!this.compiled.has(name)) {
      const both = [];
      for (const uri of this.places.get(name)) {
        const by_ajv = this.ajv.getSchema(uri);
        if (by_ajv === undefined) throw new Error(`ajv does not find ${uri}`);
        const by_hyperjump = await validate(uri);
        both.push({ by_ajv, by_hyperjump });
      }
      this.compiled.set(name, both);
    }
    return this.compiled.get(name);
  }

  // true or false where all agree; throws with both verdicts where they do not.
  async judge(name, value) {
    const verdicts = [];
    let why = '';
    for (const { by_ajv, by_hyperjump } of await this.validators(name)) {
      const first = by_ajv(value);
      if (!first) why = this.ajv.errorsText(by_ajv.errors?.slice(0, 3), { dataVar: '' });
      verdicts.push(first, by_hyperjump(value).valid);
    }
    if (verdicts.some((one) => one !== verdicts[0])) throw new Error(`validators disagree on ${name}: ${verdicts} ${why}`);
    return { good: verdicts[0], why };
  }

  // The whole document against the OpenRPC meta-schema. Its $schema names an address that is never fetched.
  openrpc_faults() {
    const ajv = new Ajv2020({ strict: false, allErrors: false });
    ajv.addMetaSchema(draft_7);
    addFormats(ajv);
    ajv.addSchema({ ...json_schema_meta, $schema: undefined });
    // The two packages write the same address with and without its last slash; here it always has one.
    const text = JSON.stringify({ ...openrpc_meta, $schema: undefined });
    const check = ajv.compile(JSON.parse(text.replaceAll(/"https:\/\/meta\.json-schema\.tools(?=["#])/g, '"https://meta.json-schema.tools/')));
    return check(this.openrpc) ? '' : ajv.errorsText(check.errors, { dataVar: '' });
  }
}
