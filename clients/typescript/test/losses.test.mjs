// Kills and cut connections: what was acknowledged stands, once; what was not stands once or not at all.

import assert from 'node:assert/strict';
import { describe, test } from 'node:test';
import { NoAnswer } from 'limbledger-client';
import { carriers, client_of, cutting_proxy, make_ledger, note, open_exam, serve, sidecar_of, texts_of } from './lib.mjs';

const calls = 200;
const at_a_time = 10;
const texts = Array.from({ length: calls }, (_, at) => `word ${String(at).padStart(3, '0')}`);

// Takes the texts in order, so many at a time; `after(count)` runs after each acknowledgement.
const record_all = async (client, opened, after = () => {}) => {
  const acknowledged = [];
  const left = [...texts];
  await Promise.all(Array.from({ length: at_a_time }, async () => {
    for (let text = left.shift(); text !== undefined; text = left.shift()) {
      try {
        await client.call('finding.record', note(opened, text));
      } catch (error) {
        if (!(error instanceof NoAnswer)) throw error;
        return;
      }
      acknowledged.push(text);
      after(acknowledged.length);
    }
  }));
  return acknowledged.sort();
};

for (const carrier of carriers) {
  describe(`over ${carrier}`, () => {
    test('SIGKILL amid 200 calls and started again: each of them stands once', async (t) => {
      const ledger = make_ledger(t, '--demo');
      let sidecar = await serve(t, ledger);
      const states = [];
      const client = client_of(t, sidecar_of(ledger), carrier, { on_connection: (state) => states.push(state), timeout_ms: 120000 });
      const opened = await open_exam(client);
      const restarts = [];
      const acknowledged = await record_all(client, opened, (count) => {
        if (count % 60 !== 0) return;
        restarts.push(sidecar.kill().then(async () => { sidecar = await serve(t, ledger); }));
      });
      await Promise.all(restarts);
      assert.deepEqual(acknowledged, texts);
      assert.deepEqual(await texts_of(client, opened.exam), texts);
      assert.equal(restarts.length, 3);
      assert.deepEqual(states.slice(0, 3), ['open', 'lost', 'open']);
    });

    test('SIGKILL amid 200 calls and given up: what was acknowledged stands once, nothing else than what was sent', async (t) => {
      const ledger = make_ledger(t, '--demo');
      const sidecar = await serve(t, ledger);
      const client = client_of(t, sidecar_of(ledger), carrier);
      const opened = await open_exam(client);
      const acknowledged = await record_all(client, opened, (count) => {
        if (count === 90) sidecar.kill().then(() => client.close());
      });
      await serve(t, ledger);
      const found = await texts_of(client_of(t, sidecar_of(ledger), carrier), opened.exam);
      assert.equal(new Set(found).size, found.length);
      assert.deepEqual(acknowledged.filter((text) => !found.includes(text)), []);
      assert(acknowledged.length >= 90 && acknowledged.length < calls, `${acknowledged.length} acknowledged`);
      // At most those that were on their way.
      assert(found.length <= acknowledged.length + at_a_time, `${found.length} found, ${acknowledged.length} acknowledged`);
      assert.deepEqual(found.filter((text) => !texts.includes(text)), []);
    });

    test('the connection is cut again and again at any byte: each of 200 calls stands once', async (t) => {
      const ledger = make_ledger(t, '--demo');
      await serve(t, ledger);
      const { http, websocket, tokens } = sidecar_of(ledger)();
      const direct = client_of(t, sidecar_of(ledger), carrier);
      const opened = await open_exam(direct);
      const proxy = await cutting_proxy(t, http, 6000);
      const client = client_of(t, { http: proxy.at(http), websocket: proxy.at(websocket), tokens }, carrier, { timeout_ms: 120000 });
      assert.deepEqual(await record_all(client, opened), texts);
      assert.deepEqual(await texts_of(direct, opened.exam), texts);
      assert(proxy.cuts() >= 20, `${proxy.cuts()} cuts`);
    });
  });
}
