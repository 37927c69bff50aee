// What others record: told from a cursor on, over a restart of the sidecar, none left out.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import { Locked, new_request } from 'limbledger-client';
import { carriers, client_of, make_ledger, serve, sidecar_of } from './lib.mjs';

const register = async (client, name) => (await client.call('person.register', { names: [{ text: name }], sex: 'unknown', request: new_request() })).person.person;

for (const carrier of carriers) {
  test(`changes over ${carrier}: what came before, while and after a restart is told`, async (t) => {
    const ledger = make_ledger(t, '--demo');
    const sidecar = await serve(t, ledger);
    const pushed = [];
    const listener = client_of(t, sidecar_of(ledger), carrier, { on_changed: ({ changes }) => pushed.push(...(changes ?? [])) });
    const writer = client_of(t, sidecar_of(ledger), 'http');
    const taker = new AbortController();
    const told = listener.changes({ signal: taker.signal });
    const { value: { cursor } } = await told.next();
    const first = await register(writer, 'Awa Invented');
    assert.deepEqual((await told.next()).value.changes, [{ kind: 'person', object: first }]);

    const waiting = told.next();
    await sidecar.kill();
    await serve(t, ledger);
    const second = await register(writer, 'Tuma Invented');
    assert.deepEqual((await waiting).value.changes, [{ kind: 'person', object: second }]);

    // Another day, from the cursor that was kept.
    const later = client_of(t, sidecar_of(ledger), carrier).changes({ cursor });
    assert.deepEqual((await later.next()).value.changes.map((one) => one.object), [first, second]);

    const last = told.next();
    taker.abort();
    assert.equal((await last).done, true);
    if (carrier === 'websocket') assert(pushed.some((one) => one.object === first), 'ledger.changed was handed on');
  });
}

test('a ledger that locks ends the telling with Locked', async (t) => {
  const ledger = make_ledger(t, '--examiner', 'Amina', '--passphrase-fd', '3');
  await serve(t, ledger);
  const client = client_of(t, sidecar_of(ledger), 'websocket');
  await client.call('ledger.unlock', { passphrase: 'four words that fit' });
  const told = client.changes();
  await told.next();
  const waiting = told.next().catch((error) => error);
  await client.call('ledger.lock');
  assert((await waiting) instanceof Locked);
});
