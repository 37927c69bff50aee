// Worked cases of what is exchanged or filed: head, run, have-map, hello, same, want, receipt, parcel, keyring; and
// of the examiner's signature and the state digest.

import { base32, hex, text, zero } from './bytes.mjs';
import { H, open_aead, passphrase_key, plain_hash, sign_pair } from './crypto.mjs';
import * as c from './ledger_cases.mjs';
import * as L from './ledger.mjs';

const seeds = c.seeds;

export const exchange = () => {
  const chain = c.exam_chain();
  const other = new L.Chain(c.clinic, seeds.second_device);
  other.add({ kind: L.KIND.intro, milliseconds: c.start_ms, body: text('stands for any entry') });
  const run = chain.run(1);
  const rows = [{ ...chain.place(2), flags: 0 }, { ...other.place(1), flags: 1 }];
  const parked = { ...other.place(1), seq: 9, flags: 2 };
  const digest = L.have_digest([...rows, parked]);
  const inputs = { root_seed: hex(seeds.root), device_seed: hex(seeds.device) };
  const places = rows.map((row) => hex(L.place_bytes(row)));
  const received = [{ ...chain.place(2), level: 2 }, { ...other.place(1), level: 1 }];
  const hub = new L.Chain(c.clinic, seeds.hub);
  hub.add({ kind: L.KIND.witness, milliseconds: c.start_ms, body: L.witness_body([chain.place(2)]) });
  const parcel_of = (runs, entries) => L.parcel({
    clinic: c.clinic, salt: seeds.salt, epoch: 1, flags: 0, epoch_pub: c.epoch_1.pub, parcel_key: seeds.parcel_key,
    box_seed: seeds.seal_2, stream_header: seeds.stream_header, runs, entries,
  });
  const parcel_inputs = {
    ...inputs, salt: hex(seeds.salt), epoch: 1, flags: 0, epoch_secret: hex(seeds.epoch_1), parcel_key: hex(seeds.parcel_key),
    seal_seed: hex(seeds.seal_2), stream_header: hex(seeds.stream_header),
  };
  const long = new L.Chain(c.clinic, seeds.device);
  long.add({ kind: 200, milliseconds: c.start_ms, body: new Uint8Array(70000).fill(0x2a) });
  const long_parcel = parcel_of([long.run(1)], 1);
  return [
    { name: 'head', about: 'the signed head after two entries (chain of `key` and `op`)', inputs: { ...inputs, seq: 2, entry_hash: hex(chain.e) }, outputs: { head: hex(chain.head()) } },
    { name: 'run', about: 'both entries whole, with the head', inputs: { ...inputs, first: 1, count: 2 }, outputs: { run: hex(run) } },
    { name: 'run_part', about: 'the second entry alone: the run starts from the hash before it', inputs: { ...inputs, first: 2, count: 1 }, outputs: { run: hex(chain.run(2)) } },
    {
      name: 'have', about: 'two leaves, one with holes, and a parked row, which the digest leaves out',
      inputs: { ...inputs, second_device_seed: hex(seeds.second_device), leaves: places, flags: [0, 1], parked: hex(L.place_bytes(parked)) },
      outputs: { rows: [...rows, parked].map((row) => hex(L.have_row(row, row.flags))), digest: hex(digest) },
    },
    { name: 'hello', about: 'first message of an exchange', inputs: { ...inputs, exporter: hex(seeds.exporter), flags: 0, digest: hex(digest) }, outputs: { hello: hex(L.hello({ clinic: c.clinic, replica: chain.replica, seed: seeds.device, exporter: seeds.exporter, flags: 0, digest })) } },
    { name: 'same', about: 'its answer by the hub: nothing to exchange', inputs: { hub_seed: hex(seeds.hub), exporter: hex(seeds.exporter), status: 0, digest: hex(digest) }, outputs: { same: hex(L.same({ seed: seeds.hub, exporter: seeds.exporter, status: 0, digest })) } },
    { name: 'want', about: 'a range, and a range of bodies only', inputs: { replica: hex(chain.replica), from: 1, to: 2 }, outputs: { whole: hex(L.want_row(chain.replica, 1, 2, 0)), bodies: hex(L.want_row(chain.replica, 1, 2, 1)) } },
    {
      name: 'receipt', about: 'the hub\'s word for two leaves, at levels 2 and 1',
      inputs: { hub_seed: hex(seeds.hub), device: hex(seeds.device_id), wall_ms: c.start_ms + 7000, leaves: received.map((row) => hex(L.place_bytes(row))), levels: [2, 1] },
      outputs: {
        receipt: hex(L.receipt({
          clinic: c.clinic, seed: seeds.hub, holder: hub.replica, device: seeds.device_id, seq: 1, e: hub.e,
          wall: c.start_ms + 7000, rows: received,
        })),
      },
    },
    { name: 'parcel', about: 'one run in one chunk, then the trailer', inputs: { ...parcel_inputs, runs: [hex(run)], entries: 2 }, outputs: { parcel: hex(parcel_of([run], 2)) } },
    {
      name: 'parcel_two_chunks', about: 'one entry of unknown kind with a body of 70,000 bytes 2a: the run needs two chunks',
      inputs: { ...parcel_inputs, kind: 200, body_length: 70000, body_byte: 42, milliseconds: c.start_ms, entries: 1 },
      outputs: { length: long_parcel.length, first_160: hex(long_parcel.slice(0, 160)), last_105: hex(long_parcel.slice(-105)), blake2b_256: hex(plain_hash(long_parcel)) },
    },
  ];
};

export const keyrings = () => {
  const passphrase = 'invented passphrase é';
  const [t, m_kib] = [1, 64];
  const slot_key = passphrase_key(passphrase, seeds.salt, t, m_kib);
  const first = L.slot({
    type: 1, t, m_kib, salt: seeds.salt, examiner: c.examiner, label: 'Dr Invented', nonce: seeds.slot_nonce, slot_key,
    master: seeds.master, seed: seeds.examiner,
  });
  const code_key = H('limb.code.1', seeds.second_salt, seeds.code);
  const code = L.slot({
    type: 2, t: 0, m_kib: 0, salt: seeds.second_salt, label: 'recovery code', nonce: seeds.second_nonce,
    slot_key: code_key, master: seeds.master, seed: zero(32),
  });
  const admin_key = passphrase_key('invented admin passphrase', seeds.third_salt, t, m_kib);
  const admin = L.slot({
    type: 5, t, m_kib, salt: seeds.third_salt, label: 'admin', nonce: seeds.third_nonce, slot_key: admin_key,
    master: seeds.master, seed: seeds.admin,
  });
  const file = (slots, epochs, generation) => L.keyring({
    generation, slots, vault_nonce: seeds.vault_nonce, master: seeds.master, sign_seed: seeds.device,
    box_secret: seeds.box_secret, epochs, shelf_key: seeds.shelf_key,
  });
  const one = file([first], [{ epoch: 1, secret: seeds.epoch_1 }], 1);
  open_aead(slot_key, seeds.slot_nonce, one.slice(16, 16 + 92), one.slice(16 + 92, 16 + 172));
  const inputs = {
    passphrase, t, m_kib, salt: hex(seeds.salt), examiner: hex(c.examiner), label: 'Dr Invented', slot_nonce: hex(seeds.slot_nonce),
    master: hex(seeds.master), examiner_seed: hex(seeds.examiner), vault_nonce: hex(seeds.vault_nonce), sign_seed: hex(seeds.device),
    box_secret: hex(seeds.box_secret), epochs: [{ epoch: 1, secret: hex(seeds.epoch_1) }], shelf_key: hex(seeds.shelf_key),
  };
  const code_text = base32(seeds.code);
  return [
    { name: 'keyring', about: 'one passphrase slot and the vault; small cost parameters for the test only', inputs: { generation: 1, ...inputs }, outputs: { slot_key: hex(slot_key), keyring: hex(one) } },
    {
      name: 'keyring_three_slots', about: 'passphrase, printed code and admin slot, two epochs',
      inputs: {
        generation: 3, ...inputs, epochs: [{ epoch: 1, secret: hex(seeds.epoch_1) }, { epoch: 2, secret: hex(seeds.epoch_2) }],
        code: hex(seeds.code), code_written: code_text, code_salt: hex(seeds.second_salt), code_nonce: hex(seeds.second_nonce), code_label: 'recovery code',
        admin_passphrase: 'invented admin passphrase', admin_seed: hex(seeds.admin), admin_salt: hex(seeds.third_salt), admin_nonce: hex(seeds.third_nonce), admin_label: 'admin',
      },
      outputs: {
        root_seed_of_code: hex(c.recovery_root_seed(seeds.code)), code_slot_key: hex(code_key), admin_slot_key: hex(admin_key),
        keyring: hex(file([first, code, admin], [{ epoch: 1, secret: seeds.epoch_1 }, { epoch: 2, secret: seeds.epoch_2 }], 3)),
      },
    },
  ];
};

export const signed = () => {
  const chain = c.exam_chain();
  const [key, op] = chain.entries;
  const body = { saw: [base32(op.e.slice(0, 16))], shown: { statements: [], alerts: [], edition: 'facts.1' } };
  const written = JSON.stringify(body);
  const sig = L.examiner_signature({ clinic: c.clinic, object: c.exam, examiner: c.examiner, seed: seeds.examiner, covered: [op.e], body: written });
  const said = { key: hex(sign_pair(seeds.examiner).pub), count: 1, covers: hex(plain_hash(op.e)), signature: hex(sig) };
  const json = c.payload({ op: 'sign', wall_ms: c.start_ms + 3000, after: [op.e], body, sig: said });
  const entry = c.add_op(chain, json);
  const person = L.object_id(c.clinic, 1, seeds.request, 1);
  const objects = [
    { object: c.exam, unreplaced: [entry.e, op.e], conflicts: [], erased: false },
    { object: person, unreplaced: [key.e, entry.e], conflicts: [[key.e, entry.e]], erased: true },
  ];
  return [
    {
      name: 'sign', about: 'the examiner signs what the exam holds; third entry of the chain of `key` and `op`',
      inputs: { examiner_seed: hex(seeds.examiner), covered: [hex(op.e)], body: written, text: json },
      outputs: { signature: hex(sig), ...c.shown(chain, entry, json), head: hex(chain.head()) },
    },
    {
      name: 'state_digest', about: 'two invented objects, one with an open conflict and erased',
      inputs: {
        objects: objects.map((o) => ({
          object: hex(o.object), unreplaced: o.unreplaced.map(hex), conflicts: o.conflicts.map((heads) => heads.map(hex)), erased: o.erased,
        })),
      },
      outputs: { digest: hex(L.state_digest(objects)) },
    },
  ];
};
