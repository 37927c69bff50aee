// Ledgers that must read the same for ever: a fork, a dropped body, operations and kinds of later editions, keys
// that do not belong where they stand, and a key change in mid-exam.

import { base32, equal, fill, hex, text, u32, concat } from './bytes.mjs';
import { box_pair, unpad } from './crypto.mjs';
import * as c from './ledger_cases.mjs';
import * as L from './ledger.mjs';

const seeds = c.seeds;
const note = (words, more = {}) => c.payload({ op: 'addendum', wall_ms: c.start_ms + 9000, body: { text: words }, ...more });
const base_inputs = () => ({ root_seed: hex(seeds.root), device_seed: hex(seeds.device), key: hex(seeds.exam_key), epoch_secret: hex(seeds.epoch_1) });

const checked = (chain, run) => {
  const read = L.verify_run(c.clinic, chain.sign_pub, run);
  for (const { seq, e } of read) {
    if (!equal(e, chain.entries[seq - 1].e)) throw new Error(`entry ${seq} has another hash`);
  }
  return hex(run);
};

const fork = () => {
  const left = c.exam_chain();
  const texts = ['common', 'left 4', 'left 5', 'right 4'].map((words) => note(words));
  c.add_op(left, texts[0]);
  const right = left.branch(3);
  c.add_op(left, texts[1]);
  c.add_op(left, texts[2]);
  c.add_op(right, texts[3]);
  return {
    name: 'fork', about: 'one replica, two branches after entry 3; both are kept and both are folded',
    inputs: { ...base_inputs(), texts },
    outputs: {
      left: checked(left, left.run(1)), right: checked(right, right.run(1)), right_branch_alone: checked(right, right.run(4)),
      last_common: hex(left.entries[2].e), leaves: [hex(left.e), hex(right.e)],
      have_rows: [left.place(), right.place()].map((place) => hex(L.have_row(place))), digest: hex(L.have_digest([left.place(), right.place()])),
    },
  };
};

const dropped = () => {
  const chain = c.exam_chain();
  c.add_op(chain, note('kept'));
  return {
    name: 'dropped_bodies', about: 'the same chain whole, with the bodies of entries 1 and 2 erased, pruned and withheld; one head fits all',
    inputs: base_inputs(),
    outputs: {
      whole: checked(chain, chain.run(1)), erased: checked(chain, chain.run(1, 3, { 1: 1, 2: 1 })), pruned: checked(chain, chain.run(1, 3, { 2: 2 })),
      withheld: checked(chain, chain.run(1, 3, { 2: 3 })), body_hashes: chain.entries.map(({ b }) => hex(b)),
    },
  };
};

const later_operation = (name, v, min, about) => {
  const chain = c.exam_chain();
  const json = note('from a later edition', { v, min, op: min > 1 ? 'of_a_later_edition' : 'addendum', more: ',"of_a_later_edition":{"a":1}' });
  const entry = c.add_op(chain, json);
  return { name, about, inputs: { ...base_inputs(), text: json }, outputs: { ...c.shown(chain, entry, json), run: checked(chain, chain.run(1)) } };
};

const unknown_kind = () => {
  const chain = c.exam_chain();
  const entry = chain.add({ kind: 200, codec: 0x75, flags: 0xf1, milliseconds: c.start_ms + 3000, counter: 65535, kid: fill(16, 0x29), body: text('a body that no edition knows') });
  c.add_op(chain, note('after it'));
  return {
    name: 'unknown_kind', about: 'an entry of kind 200 with unknown codec and flags: verified, kept, passed on, not read',
    inputs: base_inputs(), outputs: { ...c.shown(chain, entry), run: checked(chain, chain.run(1)) },
  };
};

const foreign_key = () => {
  const chain = new L.Chain(c.clinic, seeds.device);
  const other_exam = L.object_id(c.clinic, 2, seeds.request, 1);
  const kid = L.key_id(seeds.exam_key, c.exam);
  chain.add({
    kind: L.KIND.key, flags: 0, milliseconds: c.start_ms, kid,
    body: L.key_body(1, c.epoch_1.pub, seeds.exam_key, other_exam, seeds.seal_1),
  });
  const json = note('opens, and must not count');
  const entry = chain.add({ kind: L.KIND.op, codec: L.PADDED, milliseconds: c.start_ms, counter: 1, kid, key: seeds.exam_key, json });
  return {
    name: 'kid_of_another_object', about: 'the KEY body names another object than its kid was made of: the key is refused, the operation stays unread',
    inputs: { ...base_inputs(), object_in_body: hex(other_exam), kid_made_of: hex(c.exam), text: json },
    outputs: { kid_in_header: hex(kid), kid_of_body: hex(L.key_id(seeds.exam_key, other_exam)), ...c.shown(chain, entry, json), run: checked(chain, chain.run(1)) },
  };
};

const foreign_operation = () => {
  const chain = c.exam_chain();
  const other_exam = L.object_id(c.clinic, 2, seeds.request, 1);
  const json = note('names another exam', { object: other_exam });
  const entry = c.add_op(chain, json);
  return {
    name: 'op_of_another_object', about: 'an operation for one exam sealed under the key of another: opens, is flagged, does not count',
    inputs: { ...base_inputs(), object_of_key: hex(c.exam), object_in_text: hex(other_exam), text: json },
    outputs: { ...c.shown(chain, entry, json), run: checked(chain, chain.run(1)) },
  };
};

const epoch_change = () => {
  const chain = c.exam_chain();
  const before = note('before the key change');
  c.add_op(chain, before);
  const fields = concat(
    u32(2), c.epoch_2.pub, L.chain_epoch_secret(c.clinic, 2, seeds.epoch_2, seeds.epoch_1),
    chain.replica, L.key_box(box_pair(seeds.box_secret).pub, seeds.epoch_2, seeds.seal_3),
  );
  chain.add({
    kind: L.KIND.order, milliseconds: c.start_ms + 4000,
    body: L.order_body({ clinic: c.clinic, replica: chain.replica, seq: 4, sub: 5, fields, admin_seed: seeds.admin }),
  });
  const kid = L.key_id(seeds.second_key, c.exam);
  chain.add({
    kind: L.KIND.key, flags: 0, milliseconds: c.start_ms + 5000, kid,
    body: L.key_body(2, c.epoch_2.pub, seeds.second_key, c.exam, seeds.seal_2),
  });
  const after = note('after the key change');
  const last = c.add_op(chain, after, { key: seeds.second_key });
  const opened = new TextDecoder().decode(unpad(L.open_body(seeds.second_key, last.aad, last.body)));
  if (opened !== after) throw new Error('the second key does not open');
  return {
    name: 'epoch_change', about: 'one exam over a change of epoch: its first key under epoch 1, a fresh one under epoch 2 before the next operation',
    inputs: { ...base_inputs(), second_key: hex(seeds.second_key), second_epoch_secret: hex(seeds.epoch_2), admin_seed: hex(seeds.admin), box_secret: hex(seeds.box_secret), texts: [before, after] },
    outputs: { kids: [hex(L.key_id(seeds.exam_key, c.exam)), hex(kid)], order_fields: hex(fields), run: checked(chain, chain.run(1)), leaf: base32(chain.e.slice(0, 16)) },
  };
};

export const kept = () => [
  fork(), dropped(),
  later_operation('op_v99_min99', 99, 99, 'an operation this edition may not act on: kept, counted, the exam is incomplete'),
  later_operation('op_v99_min1', 99, 1, 'an operation of a later edition that this one may act on; the unknown member is left alone'),
  unknown_kind(), foreign_key(), foreign_operation(), epoch_change(),
];
