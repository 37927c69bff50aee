// The ledger's bytes, written from schemas/ledger-format.md (the section numbers are that page's) and nothing else.

import {
  compare, concat, equal, fixed, tag16, text, u8, u16, u32, u48, u64, zero,
} from './bytes.mjs';
import {
  H, STREAM_FINAL, STREAM_MESSAGE, SecretStream, box_pair, id16, keyed_blake2b_192, open_aead, pad, plain_hash,
  seal_aead, seal_box, sign, sign_pair, subkey, verify,
} from './crypto.mjs';

export const KIND = { op: 1, key: 2, intro: 3, order: 4, witness: 5, access: 6, examiner: 7 };
export const STATE = { whole: 0, erased: 1, pruned: 2, withheld: 3 };
export const NO_KID = zero(16);
export const PADDED = 0x10;
export const PLAIN = 0x00;
export const LAST = 0x01;

// Names (section 3).
export const clinic_id = (root_pub) => id16('limb.clinic.1', root_pub);
export const replica_id = (clinic, sign_pub) => id16('limb.replica.1', clinic, sign_pub);
export const object_id = (clinic, type, request, index) =>
  id16('limb.object.1', clinic, u8(type), request, u16(index));
export const key_id = (key, object) => id16('limb.kid.1', key, object);

// Entry, hashes (section 4).
export const header = ({ kind, codec, flags, length, milliseconds, counter, kid }) =>
  concat(u8(1), u8(kind), u8(codec), u8(flags), u32(length), u48(milliseconds), u16(counter), kid);
export const body_hash = (body) => H('limb.body.1', body);
export const entry_hash = (previous, seq, head, hash_of_body) =>
  H('limb.entry.1', previous, u64(seq), head, hash_of_body);
export const genesis = (clinic, replica, sign_pub) => H('limb.chain.1', clinic, replica, sign_pub);

// Sealed body (section 5): the nonce is a keyed hash of all that is sealed and bound.
export const seal_aad = (clinic, replica, seq, head) =>
  concat(tag16('limb.seal.1'), clinic, replica, u64(seq), head);
export const sealed_length = (json) => 24 + pad(text(json)).length + 16;
export const seal_body = (key, aad, json) => {
  const padded = pad(text(json));
  const nonce = keyed_blake2b_192(subkey(key, 2), concat(aad, padded));
  return concat(nonce, seal_aead(subkey(key, 1), nonce, aad, padded));
};
export const open_body = (key, aad, body) => open_aead(subkey(key, 1), body.slice(0, 24), aad, body.slice(24));

// Plain bodies (sections 6 to 10).
export const key_body = (epoch, epoch_pub, key, object, seed) =>
  concat(u32(epoch), seal_box(epoch_pub, concat(key, object), seed));

export const intro_body = ({
  clinic, replica, access = false, storage, demo, sign_pub, box_pub, device, predecessor, program,
}) => {
  const before = predecessor
    ? concat(predecessor.replica, u64(predecessor.seq), predecessor.e)
    : zero(56);
  const heir = predecessor
    ? sign(predecessor.seed, tag16('limb.heir.1'), clinic, replica, before)
    : zero(64);
  return concat(
    u8(1), u8(access ? 2 : 1), u8(storage), u8(demo), clinic, sign_pub, box_pub, device, before, heir,
    u16(text(program).length), text(program),
  );
};

export const examiner_body = (clinic, replica, examiner, seed) => concat(
  examiner, sign_pair(seed).pub, sign(seed, tag16('limb.examiner.1'), clinic, replica, examiner),
);

export const place_bytes = ({ replica, seq, e }) => concat(replica, u64(seq), e);
const by_place = (a, b) => compare(place_bytes(a), place_bytes(b));

export const witness_body = (heads) =>
  concat(u16(heads.length), ...[...heads].sort(by_place).map(place_bytes));

export const order_body = ({ clinic, replica, seq, sub, fields, admin_seed }) => {
  const said = concat(u8(sub), u8(1), u16(fields.length), fields);
  return concat(
    said, sign_pair(admin_seed).pub,
    sign(admin_seed, tag16('limb.order.1'), clinic, replica, u64(seq), said),
  );
};

// An epoch's secret for one device.
export const key_box = (device_pub, secret, seed) => seal_box(device_pub, secret, seed);

// Old epoch secret under the new one: nonce 24, ciphertext 32, tag 16.
export const chain_epoch_secret = (clinic, epoch, new_secret, old_secret) => {
  const key = H('limb.epoch.1', clinic, u32(epoch), new_secret);
  const aad = concat(tag16('limb.epoch.1'), clinic, u32(epoch));
  const nonce = keyed_blake2b_192(key, concat(aad, old_secret));
  return concat(nonce, seal_aead(key, nonce, aad, old_secret));
};

// A chain of one replica. `add` gives the entry as it is stored, and keeps the chain's own state.
export class Chain {
  constructor(clinic, seed) {
    this.clinic = clinic;
    this.seed = seed;
    this.sign_pub = sign_pair(seed).pub;
    this.replica = replica_id(clinic, this.sign_pub);
    this.genesis = genesis(clinic, this.replica, this.sign_pub);
    this.entries = [];
  }

  get seq() { return this.entries.length; }
  get e() { return this.seq === 0 ? this.genesis : this.entries[this.seq - 1].e; }

  branch(at_seq) {
    const other = new Chain(this.clinic, this.seed);
    other.entries = this.entries.slice(0, at_seq);
    return other;
  }

  add({ kind, codec = PLAIN, flags = LAST, milliseconds, counter = 0, kid = NO_KID, body, json, key }) {
    const seq = this.seq + 1;
    const length = json === undefined ? body.length : sealed_length(json);
    const head = header({ kind, codec, flags, length, milliseconds, counter, kid });
    const aad = seal_aad(this.clinic, this.replica, seq, head);
    const whole = json === undefined ? body : seal_body(key, aad, json);
    const b = body_hash(whole);
    const entry = { seq, header: head, body: whole, b, previous: this.e, e: entry_hash(this.e, seq, head, b), aad };
    this.entries.push(entry);
    return entry;
  }

  head(at_seq = this.seq) {
    const { e } = at_seq === 0 ? { e: this.genesis } : this.entries[at_seq - 1];
    const signature = sign(this.seed, tag16('limb.head.1'), this.clinic, this.replica, u64(at_seq), e);
    return concat(this.replica, u64(at_seq), e, signature);
  }

  place(at_seq = this.seq) {
    return { replica: this.replica, seq: at_seq, e: this.entries[at_seq - 1].e };
  }

  // `states` maps a sequence number to a row state other than whole: its body is replaced by its hash.
  run(first, last = this.seq, states = {}) {
    const picked = this.entries.slice(first - 1, last);
    return concat(
      this.replica, u64(first), picked[0].previous, u32(picked.length),
      ...picked.map(({ seq, header: head, body, b }) => {
        const state = states[seq] ?? STATE.whole;
        return concat(u8(state), head, state === STATE.whole ? body : b);
      }),
      this.head(last),
    );
  }
}

// Reads a run back and follows its hashes; throws where something does not join or verify.
export const verify_run = (clinic, sign_pub, run) => {
  let at = 0;
  const take = (count) => {
    if (at + count > run.length) throw new Error('run is cut');
    at += count;
    return run.slice(at - count, at);
  };
  const number = (count) => Number(BigInt(`0x${Buffer.from(take(count)).toString('hex')}`));
  const replica = take(16);
  const first = number(8);
  let e = take(32);
  const count = number(4);
  const entries = [];
  for (let at_entry = 0; at_entry < count; ++at_entry) {
    const state = number(1);
    const head = take(32);
    const length = new DataView(head.buffer, head.byteOffset).getUint32(4);
    const body = state === STATE.whole ? take(length) : undefined;
    const b = body === undefined ? take(32) : body_hash(body);
    e = entry_hash(e, first + at_entry, head, b);
    entries.push({ seq: first + at_entry, state, header: head, body, b, e });
  }
  const [head_replica, head_seq, head_e, signature] = [take(16), take(8), take(32), take(64)];
  if (at !== run.length) throw new Error('bytes after the head');
  if (!equal(head_replica, replica) || !equal(head_seq, u64(first + count - 1)) || !equal(head_e, e)) {
    throw new Error('head does not join');
  }
  if (!verify(sign_pub, signature, tag16('limb.head.1'), clinic, replica, head_seq, e)) throw new Error('head signature');
  return entries;
};

// Exchange (section 12).
export const have_row = ({ replica, seq, e }, flags = 0) => concat(replica, u64(seq), e.slice(0, 8), u8(flags));
export const have_digest = (rows) => H('limb.have.1', ...rows
  .filter(({ flags = 0 }) => (flags & 2) === 0)
  .map((row) => concat(place_bytes(row), u8((row.flags ?? 0) & 1)))
  .sort(compare));
export const hint = (clinic, salt) => H('limb.hint.1', clinic, salt).slice(0, 8);
export const hello = ({ clinic, replica, seed, exporter, flags, digest }) => {
  const before = concat(u8(1), u8(flags), hint(clinic, exporter), replica, digest);
  return concat(before, sign(seed, tag16('limb.hello.1'), exporter, before));
};
export const same = ({ seed, exporter, status, digest }) => {
  const before = concat(u8(status), digest);
  return concat(before, sign(seed, tag16('limb.same.1'), exporter, before));
};
export const want_row = (replica, from, to, flags) => concat(replica, u64(from), u64(to), u8(flags));
export const receipt = ({ clinic, seed, holder, device, seq, e, wall, rows }) => {
  const before = concat(
    holder, device, u64(seq), e, u64(wall), u16(rows.length),
    ...[...rows].sort(by_place).map((row) => concat(place_bytes(row), u8(row.level))),
  );
  return concat(before, sign(seed, tag16('limb.receipt.1'), clinic, before));
};

// Parcel (section 13).
const CHUNK_TEXT_MAX = 65536 - 17;
export const parcel = ({ clinic, salt, epoch, flags, epoch_pub, parcel_key, box_seed, stream_header, runs, entries }) => {
  const preamble = concat(
    text('LIMBPCL1'), salt, hint(clinic, salt), u32(epoch), u32(flags), seal_box(epoch_pub, parcel_key, box_seed),
    stream_header,
  );
  const inside = concat(...runs);
  const stream = new SecretStream(parcel_key, stream_header);
  const chunks = [];
  let aad = preamble;
  const push = (message, tag) => {
    const ciphertext = stream.push(message, aad, tag);
    chunks.push(concat(u32(ciphertext.length), ciphertext));
    aad = zero(0);
  };
  for (let at = 0; at < inside.length; at += CHUNK_TEXT_MAX) push(inside.slice(at, at + CHUNK_TEXT_MAX), STREAM_MESSAGE);
  push(concat(u64(entries), u32(runs.length), plain_hash(inside)), STREAM_FINAL);
  return concat(preamble, ...chunks);
};

// Keyring (section 11).
export const slot = ({ type, t, m_kib, salt, examiner = NO_KID, label, nonce, slot_key, master, seed }) => {
  const before = concat(
    u8(type), zero(3), u32(t), u32(m_kib), salt, examiner, fixed(text(label), 24), nonce,
  );
  return concat(before, seal_aead(slot_key, nonce, before, concat(master, seed)), zero(4));
};
export const keyring = ({ generation, slots, vault_nonce, master, sign_seed, box_secret, epochs, shelf_key }) => {
  const inside = concat(
    sign_seed, box_secret, ...epochs.map(({ epoch, secret }) => concat(u32(epoch), secret)), shelf_key,
  );
  const before = concat(
    text('LIMBKEY1'), u32(generation), u8(slots.length), zero(3), ...slots, vault_nonce, u32(inside.length + 16),
  );
  return concat(before, seal_aead(master, vault_nonce, before, inside));
};

// Examiner's signature and state digest (sections 14 and 15).
export const examiner_signature = ({ clinic, object, examiner, seed, covered, body }) => sign(
  seed, tag16('limb.sign.1'), clinic, object, examiner, u32(covered.length),
  plain_hash(...[...covered].sort(compare)), plain_hash(text(body)),
);
export const state_digest = (objects) => plain_hash(...objects
  .map(({ object, unreplaced, conflicts, erased }) => concat(
    object, u32(unreplaced.length), ...[...unreplaced].sort(compare), u32(conflicts.length),
    ...conflicts.map((heads) => concat(u32(heads.length), ...[...heads].sort(compare))).sort(compare), u8(erased ? 1 : 0),
  ))
  .sort(compare));

export { box_pair, sign_pair };
