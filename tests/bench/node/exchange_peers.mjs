// Three general-purpose replication libraries with the records of tests/bench/exchange.cpp: two replicas, half of the records written on
// each, brought together both ways. A line on standard input names the library (pouchdb, automerge or yjs), the answer is a line of JSON:
// seconds, records that each replica holds at the end, what it is held to. None of them seals or signs, and none waits for the disk.
import { createInterface } from 'node:readline';
import { mkdtempSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import PouchDB from 'pouchdb-core';
import leveldb from 'pouchdb-adapter-leveldb';
import replication from 'pouchdb-replication';
import * as Automerge from '@automerge/automerge';
import * as Yjs from 'yjs';

PouchDB.plugin(leveldb).plugin(replication);

const [folder, records, body] = [process.argv[2], Number(process.argv[3]), Number(process.argv[4])];
const batch = 1000;
const half = records / 2;
const text = (side, i) => `${side}${i} `.padEnd(body, 'an invented remark ');
const names = (side) => Array.from({ length: half }, (_, i) => [`${side}${String(i).padStart(6, '0')}`, text(side, i)]);
const seconds = async (work) => {
  const start = performance.now();
  await work();
  return (performance.now() - start) / 1000;
};

// Kept by LevelDB in files, which it does not flush.
async function pouchdb() {
  const at = mkdtempSync(join(folder, 'pouchdb-'));
  const sides = ['a', 'b'].map((side) => new PouchDB(join(at, side), { adapter: 'leveldb' }));
  for (const [n, side] of ['a', 'b'].entries()) {
    const all = names(side).map(([_id, remark]) => ({ _id, remark }));
    for (let i = 0; i < all.length; i += batch) await sides[n].bulkDocs(all.slice(i, i + batch));
  }
  const took = await seconds(() => sides[0].sync(sides[1], { batch_size: batch }));
  const held = await Promise.all(sides.map(async (side) => (await side.info()).doc_count));
  await Promise.all(sides.map((side) => side.close()));
  rmSync(at, { recursive: true });
  return { took, held };
}

// In memory. Strings that nobody edits letter by letter, a thousand a change: its best batching.
async function automerge() {
  let sides = [Automerge.init(), Automerge.init()];
  for (const [n, side] of ['a', 'b'].entries()) {
    const all = names(side);
    for (let i = 0; i < all.length; i += batch) {
      sides[n] = Automerge.change(sides[n], (doc) => {
        for (const [name, remark] of all.slice(i, i + batch)) doc[name] = new Automerge.ImmutableString(remark);
      });
    }
  }
  const took = await seconds(() => {
    const states = [Automerge.initSyncState(), Automerge.initSyncState()];
    for (let quiet = 0; quiet < 2; ) {
      quiet = 0;
      for (const from of [0, 1]) {
        const [state, message] = Automerge.generateSyncMessage(sides[from], states[from]);
        states[from] = state;
        if (message === null) quiet += 1;
        else [sides[1 - from], states[1 - from]] = Automerge.receiveSyncMessage(sides[1 - from], states[1 - from], message);
      }
    }
  });
  return { took, held: sides.map((doc) => Object.keys(doc).length) };
}

// In memory.
async function yjs() {
  const sides = [new Yjs.Doc(), new Yjs.Doc()];
  for (const [n, side] of ['a', 'b'].entries()) {
    for (const [name, remark] of names(side)) sides[n].getMap('records').set(name, remark);
  }
  const took = await seconds(() => {
    const known = sides.map((doc) => Yjs.encodeStateVector(doc));
    const updates = [0, 1].map((from) => Yjs.encodeStateAsUpdate(sides[from], known[1 - from]));
    for (const from of [0, 1]) Yjs.applyUpdate(sides[1 - from], updates[from]);
  });
  return { took, held: sides.map((doc) => doc.getMap('records').size) };
}

const libraries = { pouchdb, automerge, yjs };
for await (const line of createInterface({ input: process.stdin })) {
  globalThis.gc?.();
  console.log(JSON.stringify(await libraries[line]()));
}
