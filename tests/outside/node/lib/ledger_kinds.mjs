// One entry of each kind, and one of each thing that is exchanged or filed.

import { base32, concat, equal, fill, hex, text, u16, u32, u64, u8 } from './bytes.mjs';
import { box_pair, open_box, sign_pair, unpad } from './crypto.mjs';
import * as c from './ledger_cases.mjs';
import * as L from './ledger.mjs';

const seeds = c.seeds;
const must = (truth, what) => {
  if (!truth) throw new Error(`does not hold: ${what}`);
};

export const worked = () => {
  const chain = new L.Chain(c.clinic, seeds.device);
  const json = '{"v":1,"min":1,"op":"test"}';
  const kid = L.key_id(seeds.exam_key, c.exam);
  const entry = chain.add({
    kind: L.KIND.op, codec: L.PADDED, milliseconds: c.start_ms, kid, key: seeds.exam_key, json,
  });
  must(new TextDecoder().decode(unpad(L.open_body(seeds.exam_key, entry.aad, entry.body))) === json, 'opens again');
  return {
    name: 'worked', about: 'the smallest sealed operation, as the format page shows it',
    inputs: {
      root_seed: hex(seeds.root), device_seed: hex(seeds.device), type: 2, request: hex(seeds.request), index: 0,
      key: hex(seeds.exam_key), seq: 1, milliseconds: c.start_ms, counter: 0, flags: 1, text: json,
    },
    outputs: {
      ...c.shown(chain, entry, json), object: hex(c.exam), kid: hex(kid), nonce: hex(entry.body.slice(0, 24)),
      genesis: hex(chain.genesis), head: hex(chain.head()),
    },
  };
};

export const names = () => {
  const types = [['person', 1], ['exam', 2], ['finding', 3], ['link', 4], ['examiner', 5], ['place', 6], ['plan_item', 7], ['letter', 8], ['report', 9]];
  const object = (type) => L.object_id(c.clinic, type, seeds.request, 258);
  return {
    name: 'names', about: 'ids of every type of object for one request at index 258, and their written form',
    inputs: { root_seed: hex(seeds.root), device_seed: hex(seeds.device), request: hex(seeds.request), index: 258, key: hex(seeds.exam_key) },
    outputs: {
      root_pub: hex(c.root_pub), sign_pub: hex(sign_pair(seeds.device).pub), clinic: hex(c.clinic), clinic_written: base32(c.clinic),
      replica: hex(L.replica_id(c.clinic, sign_pair(seeds.device).pub)), clinic_object: hex(c.clinic_object),
      ...Object.fromEntries(types.map(([name, type]) => [name, hex(object(type))])),
      exam_written: base32(object(2)), kid_of_exam: hex(L.key_id(seeds.exam_key, object(2))),
    },
  };
};

export const introductions = () => {
  const chain = new L.Chain(c.clinic, seeds.device);
  const say = {
    clinic: c.clinic, replica: chain.replica, storage: 1, demo: 0, sign_pub: chain.sign_pub,
    box_pub: box_pair(seeds.box_secret).pub, device: seeds.device_id, program: 'limbledger 1',
  };
  const first = chain.add({ kind: L.KIND.intro, milliseconds: c.start_ms, body: L.intro_body(say) });
  const signs = chain.add({
    kind: L.KIND.examiner, milliseconds: c.start_ms, counter: 1,
    body: L.examiner_body(c.clinic, chain.replica, c.examiner, seeds.examiner),
  });
  const heir = new L.Chain(c.clinic, seeds.second_device);
  const after_restore = heir.add({
    kind: L.KIND.intro, milliseconds: c.start_ms + 60000,
    body: L.intro_body({
      ...say, replica: heir.replica, sign_pub: heir.sign_pub, predecessor: { ...chain.place(2), seed: seeds.device },
    }),
  });
  const inputs = {
    root_seed: hex(seeds.root), device_seed: hex(seeds.device), box_secret: hex(seeds.box_secret), device: hex(seeds.device_id),
    class: 1, storage: 1, demo: 0, program: say.program, milliseconds: c.start_ms,
  };
  return [
    { name: 'intro', about: 'first entry of a chain without predecessor', inputs: { ...inputs, seq: 1, counter: 0 }, outputs: { genesis: hex(chain.genesis), ...c.shown(chain, first) } },
    {
      name: 'examiner', about: 'an examiner\'s public half on this device; second entry of the chain of `intro`',
      inputs: { device_seed: hex(seeds.device), examiner_request: hex(seeds.examiner_request), examiner_seed: hex(seeds.examiner), milliseconds: c.start_ms, counter: 1 },
      outputs: { examiner: hex(c.examiner), ...c.shown(chain, signs), head: hex(chain.head()) },
    },
    {
      name: 'intro_heir', about: 'first entry of the replica that goes on after a restore; the predecessor\'s key signs it',
      inputs: { ...inputs, device_seed: hex(seeds.second_device), predecessor_seed: hex(seeds.device), predecessor: hex(L.place_bytes(chain.place(2))), milliseconds: c.start_ms + 60000 },
      outputs: { genesis: hex(heir.genesis), ...c.shown(heir, after_restore) },
    },
  ];
};

const put_off = () => {
  const chain = c.exam_chain();
  const opening = chain.entries[1].e;
  const json = c.payload({
    op: 'put_off', request: fill(16, 0x13), wall_ms: c.start_ms + 3000, after: [opening],
    body: { about: 'late', entries: [c.name_of(opening)], asked: 'Musa Invented, whether he meant the left knee', look_again: '2025-12-01' },
  });
  const entry = c.add_op(chain, json);
  return {
    name: 'put_off', about: 'a later operation of the same exam: a line of what disagrees is put off, with whom and what was asked, and when to look again',
    inputs: { device_seed: hex(seeds.device), key: hex(seeds.exam_key), milliseconds: c.start_ms + 3000, counter: 0, flags: 1, text: json },
    outputs: { ...c.shown(chain, entry, json), run: hex(chain.run(1)) },
  };
};

const report = () => {
  const request = fill(16, 0x14);
  const key = fill(32, 0x2a);
  const object = L.object_id(c.clinic, 9, request, 0);
  const chain = c.exam_chain();
  const opening = chain.entries[1].e;
  const add_key = chain.add({
    kind: L.KIND.key, flags: 0, milliseconds: c.start_ms + 3000, kid: L.key_id(key, object),
    body: L.key_body(1, c.epoch_1.pub, key, object, fill(32, 0x2b)),
  });
  const json = c.payload({
    op: 'report', request, object, wall_ms: c.start_ms + 3000,
    body: {
      from: '2025-11', to: '2025-11', report: 1, as_of: '2025-12-01', after: [],
      had: [{ replica: base32(chain.replica), seq: 2, entry: c.name_of(opening) }],
      counts: [{ count: 'exams', number: 1 }, { count: 'people', number: 1 }, { count: 'complaint', of: 'acute_knee', number: 1 }],
      exams: [{ in: [0, 1, 2], exams: [base32(c.exam)] }],
    },
  });
  const entry = c.add_op(chain, json, { key, object });
  return {
    name: 'report', about: 'the count of a month as it was reported, under an object and a key of its own, in a chain that has one exam',
    inputs: { device_seed: hex(seeds.device), key: hex(key), request: hex(request), seal_seed: hex(fill(32, 0x2b)), milliseconds: c.start_ms + 4000, counter: 0, flags: 1, text: json },
    outputs: { ...c.shown(chain, entry, json), object: hex(object), key_body: hex(add_key.body), run: hex(chain.run(1)) },
  };
};

export const key_and_op = () => {
  const chain = c.exam_chain();
  const [key, op] = chain.entries;
  const opened = open_box(c.epoch_1, key.body.slice(4));
  must(equal(opened, concat(seeds.exam_key, c.exam)), 'the key opens again');
  const json = c.payload({ op: 'exam', wall_ms: c.start_ms, body: { complaint: 'acute_knee', side: 'left' } });
  return [
    {
      name: 'key', about: 'an exam\'s key sealed to epoch 1; not the last entry of its commit',
      inputs: { device_seed: hex(seeds.device), epoch: 1, epoch_secret: hex(seeds.epoch_1), epoch_pub: hex(c.epoch_1.pub), key: hex(seeds.exam_key), object: hex(c.exam), seal_seed: hex(seeds.seal_1), milliseconds: c.start_ms, counter: 0, flags: 0 },
      outputs: c.shown(chain, key),
    },
    put_off(),
    report(),
    {
      name: 'op', about: 'the first operation under that key, in the same commit',
      inputs: { device_seed: hex(seeds.device), key: hex(seeds.exam_key), milliseconds: c.start_ms, counter: 1, flags: 1, text: json },
      outputs: { ...c.shown(chain, op, json), head: hex(chain.head()), run: hex(chain.run(1)) },
    },
  ];
};

export const orders = () => {
  const chain = c.exam_chain();
  const other = new L.Chain(c.clinic, seeds.second_device);
  const lost = other.add({ kind: L.KIND.intro, milliseconds: c.start_ms, body: text('stands for any entry') });
  const box = (secret, seed, device_secret) => L.key_box(box_pair(device_secret).pub, secret, seed);
  const said = [
    ['grant', 1, seeds.root, concat(sign_pair(seeds.admin).pub, u16(4 + 8 + 16)), 'the clinic\'s root key makes an admin key: enrol and revoke, erase, epoch'],
    ['enrol', 2, seeds.admin, concat(other.replica, seeds.second_device_id, u16(1)), 'a second device may write'],
    ['revoke', 3, seeds.admin, concat(seeds.second_device_id, L.place_bytes(other.place(1))), 'a lost device, cut at its first entry'],
    ['admit', 4, seeds.admin, concat(other.replica, u64(2), u64(5), lost.e), 'entries 2 to 5 past a cut are folded after all'],
    ['epoch', 5, seeds.admin, concat(
      u32(2), c.epoch_2.pub, L.chain_epoch_secret(c.clinic, 2, seeds.epoch_2, seeds.epoch_1),
      chain.replica, box(seeds.epoch_2, seeds.seal_3, seeds.box_secret),
    ), 'epoch 2, its secret for one device, the secret of epoch 1 under it'],
    ['erase', 6, seeds.admin, concat(u32(7), u8(1), L.key_id(seeds.exam_key, c.exam)), 'case 7: one key, on request of the person'],
    ['erase_done', 7, seeds.root, u32(7), 'case 7 carried out, by another admin key'],
    ['erase_cancel', 8, seeds.admin, u32(8), 'case 8 called off'],
    ['gap', 9, seeds.admin, concat(other.replica, u64(2), u64(3), lost.e), 'entries 2 to 3 are lost for ever'],
    ['hubcert', 10, seeds.admin, fill(32, 0x28), 'the hub\'s public key (SHA-256 of its SPKI)'],
    ['auditor', 11, seeds.admin, box_pair(seeds.auditor).pub, 'the auditor\'s public half'],
  ];
  return said.map(([name, sub, admin_seed, fields, about], at) => {
    const entry = chain.add({
      kind: L.KIND.order, milliseconds: c.start_ms + 1000 * (at + 1),
      body: L.order_body({ clinic: c.clinic, replica: chain.replica, seq: chain.seq + 1, sub, fields, admin_seed }),
    });
    return {
      name: `order_${name}`, about,
      inputs: { device_seed: hex(seeds.device), admin_seed: hex(admin_seed), sub, version: 1, fields: hex(fields), milliseconds: c.start_ms + 1000 * (at + 1) },
      outputs: c.shown(chain, entry),
    };
  });
};

export const witness_and_access = () => {
  const hub = new L.Chain(c.clinic, seeds.hub);
  const tablet = c.exam_chain();
  const other = new L.Chain(c.clinic, seeds.second_device);
  other.add({ kind: L.KIND.intro, milliseconds: c.start_ms, body: text('stands for any entry') });
  const heads = [tablet.place(2), other.place(1)];
  const witness = hub.add({ kind: L.KIND.witness, milliseconds: c.start_ms + 5000, body: L.witness_body(heads) });
  const reads = new L.Chain(c.clinic, seeds.access_device);
  const kid = L.key_id(seeds.access_key, c.clinic_object);
  reads.add({
    kind: L.KIND.intro, milliseconds: c.start_ms,
    body: L.intro_body({
      clinic: c.clinic, replica: reads.replica, access: true, storage: 1, demo: 0, sign_pub: reads.sign_pub,
      box_pub: box_pair(seeds.box_secret).pub, device: seeds.device_id, program: 'limbledger 1',
    }),
  });
  const auditor_key = reads.add({
    kind: L.KIND.key, flags: 0, milliseconds: c.start_ms + 1000, kid,
    body: L.key_body(0x80000001, box_pair(seeds.auditor).pub, seeds.access_key, c.clinic_object, seeds.seal_4),
  });
  const json = `{"v":1,"min":1,"op":"read","object":"${base32(c.exam)}","by":"${base32(c.examiner)}","at":{"wall_ms":1764000001000,"up_ms":61000,"boot":"${base32(seeds.boot)}","clock":"person"},"body":{"caller":"examiner","method":"exam.read"}}`;
  const access = reads.add({
    kind: L.KIND.access, codec: L.PADDED, milliseconds: c.start_ms + 1000, counter: 1, kid, key: seeds.access_key, json,
  });
  return [
    { name: 'witness', about: 'the hub writes down two heads, sorted', inputs: { device_seed: hex(seeds.hub), heads: heads.map((h) => hex(L.place_bytes(h))), milliseconds: c.start_ms + 5000 }, outputs: c.shown(hub, witness) },
    { name: 'access_key', about: 'the key of the chain of reads, on the auditor\'s line (top bit of the epoch)', inputs: { device_seed: hex(seeds.access_device), epoch: 0x80000001, auditor_secret: hex(seeds.auditor), key: hex(seeds.access_key), object: hex(c.clinic_object), seal_seed: hex(seeds.seal_4), milliseconds: c.start_ms + 1000, flags: 0 }, outputs: c.shown(reads, auditor_key) },
    { name: 'access', about: 'one read, in the chain of reads (introduced with class 2)', inputs: { device_seed: hex(seeds.access_device), key: hex(seeds.access_key), milliseconds: c.start_ms + 1000, counter: 1, text: json }, outputs: c.shown(reads, access, json) },
  ];
};
