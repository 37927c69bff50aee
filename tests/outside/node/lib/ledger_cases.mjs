// What every worked case of the ledger starts from, and how an entry is shown. All seeds are one byte repeated,
// so that nobody can take them for real ones.

import { base32, fill, hex } from './bytes.mjs';
import { H, box_pair, sign_pair } from './crypto.mjs';
import { Chain, KIND, LAST, PADDED, clinic_id, key_body, key_id, object_id } from './ledger.mjs';

export const start_ms = 1764000000000;

export const seeds = {
  root: fill(32, 0x01),
  device: fill(32, 0x02),
  request: fill(16, 0x03),
  exam_key: fill(32, 0x04),
  admin: fill(32, 0x05),
  examiner: fill(32, 0x06),
  box_secret: fill(32, 0x07),
  epoch_1: fill(32, 0x08),
  epoch_2: fill(32, 0x09),
  shelf_key: fill(32, 0x0a),
  master: fill(32, 0x0b),
  seal_1: fill(32, 0x0c),
  exporter: fill(32, 0x0d),
  hub: fill(32, 0x0e),
  auditor: fill(32, 0x0f),
  parcel_key: fill(32, 0x10),
  device_id: fill(16, 0x11),
  second_device: fill(32, 0x12),
  examiner_request: fill(16, 0x13),
  second_key: fill(32, 0x14),
  seal_2: fill(32, 0x15),
  hub_box_secret: fill(32, 0x16),
  seal_3: fill(32, 0x17),
  seal_4: fill(32, 0x18),
  salt: fill(16, 0x19),
  stream_header: fill(24, 0x1a),
  second_device_id: fill(16, 0x1b),
  boot: fill(8, 0x1c),
  access_device: fill(32, 0x1d),
  access_key: fill(32, 0x1e),
  slot_nonce: fill(24, 0x1f),
  vault_nonce: fill(24, 0x20),
  code: fill(20, 0x21),
  second_salt: fill(16, 0x22),
  second_nonce: fill(24, 0x23),
  third_salt: fill(16, 0x24),
  third_nonce: fill(24, 0x25),
  second_box_secret: fill(32, 0x26),
  admin_of_code: fill(32, 0x27),
};

export const root_pub = sign_pair(seeds.root).pub;
export const clinic = clinic_id(root_pub);
export const exam = object_id(clinic, 2, seeds.request, 0);
export const examiner = object_id(clinic, 5, seeds.examiner_request, 0);
export const clinic_object = object_id(clinic, 0, fill(16, 0), 0);
export const epoch_1 = box_pair(seeds.epoch_1);
export const epoch_2 = box_pair(seeds.epoch_2);

export const name_of = (e) => base32(e.slice(0, 16));

// 8-4-4-4-12 hexadecimal digits.
const uuid = (bytes) => hex(bytes).replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');

export const payload = ({
  v = 1, min = 1, op, request = seeds.request, part = 1, of = 1, object = exam, after = [], replaces = [], wall_ms,
  body, more = '', sig,
}) => {
  const said = {
    v, min, op, request: uuid(request), part, of, object: base32(object), after: after.map(name_of),
    replaces: replaces.map(name_of), by: base32(examiner), examined_at: '2025-11-24T16:00:00.000Z',
    at: { wall_ms, up_ms: wall_ms - start_ms + 60000, boot: hex(seeds.boot), clock: 'person' },
    edition: 'facts.1',
  };
  const start = JSON.stringify(said).slice(0, -1);
  const end = sig === undefined ? '' : `,"sig":${JSON.stringify(sig)}`;
  return `${start},"body":${JSON.stringify(body)}${more}${end}}`;
};

// A chain of the first device that already holds one exam: KEY and first op in one commit.
export const exam_chain = () => {
  const chain = new Chain(clinic, seeds.device);
  chain.add({
    kind: KIND.key, flags: 0, milliseconds: start_ms, kid: key_id(seeds.exam_key, exam),
    body: key_body(1, epoch_1.pub, seeds.exam_key, exam, seeds.seal_1),
  });
  chain.add({
    kind: KIND.op, codec: PADDED, milliseconds: start_ms, counter: 1, kid: key_id(seeds.exam_key, exam),
    key: seeds.exam_key, json: payload({ op: 'exam', wall_ms: start_ms, body: { complaint: 'acute_knee', side: 'left' } }),
  });
  return chain;
};

export const add_op = (chain, json, { key = seeds.exam_key, object = exam, kid, flags = LAST } = {}) => chain.add({
  kind: KIND.op, codec: PADDED, flags, milliseconds: start_ms + 1000 * (chain.seq + 1), key,
  kid: kid ?? key_id(key, object), json,
});

export const shown = (chain, entry, json) => ({
  clinic: hex(chain.clinic), replica: hex(chain.replica), seq: entry.seq, previous: hex(entry.previous),
  header: hex(entry.header), ...(json === undefined ? {} : { aad: hex(entry.aad) }), body: hex(entry.body),
  body_hash: hex(entry.b), entry_hash: hex(entry.e), name: name_of(entry.e),
});

export const recovery_root_seed = (code) => H('limb.root.1', code);
