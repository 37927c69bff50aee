// One call at a time: what comes back where it goes well, is asked back, refused, denied, locked, or never answered.

import assert from 'node:assert/strict';
import { createServer } from 'node:net';
import { describe, test } from 'node:test';
import { AskedBack, Client, Denied, Locked, NoAnswer, Refused, Stale, Unknown, faults, is_ledger_error, new_request, with_confirmed } from 'limbledger-client';
import { carriers, client_of, flexion, make_ledger, open_exam, serve, sidecar_of } from './lib.mjs';

for (const carrier of carriers) {
  describe(`over ${carrier}`, () => {
    test('an exam is opened, filled and read', async (t) => {
      const ledger = make_ledger(t, '--demo');
      await serve(t, ledger);
      const client = client_of(t, sidecar_of(ledger), carrier);
      const { exam, revision } = await open_exam(client);
      const record = { exam, seen: revision, request: new_request(), findings: [flexion(114)] };
      const first = await client.call('finding.record', record);
      const again = await client.call('finding.record', record);
      assert.equal(again.repeat, true);
      assert.deepEqual([again.recorded, again.revision], [first.recorded, first.revision]);
      const { exam: read } = await client.call('exam.read', { exam });
      assert.deepEqual(read.findings.map((one) => [one.item, one.value.toward_deg, one.standing]), [['knee.flexion_active', 114, 'current']]);
      const { state, object } = await client.call('request.read', { request: record.request });
      assert.deepEqual([state, object], ['recorded', exam]);
    });

    test('a question is no refusal: nothing is written until it is sent again as confirmed', async (t) => {
      const ledger = make_ledger(t, '--demo');
      await serve(t, ledger);
      const client = client_of(t, sidecar_of(ledger), carrier);
      const { exam, revision } = await open_exam(client);
      const record = { exam, seen: revision, request: new_request(), findings: [flexion(168)] };
      const asked = await client.call('finding.record', record).catch((error) => error);
      assert(asked instanceof AskedBack && !(asked instanceof Refused), asked.message);
      assert.deepEqual([asked.kind, asked.number, asked.has('value.unusual'), asked.request], ['asked_back', 2, true, record.request]);
      assert.equal((await client.call('exam.read', { exam })).exam.findings?.length ?? 0, 0);
      const sure = with_confirmed(record, asked);
      assert.equal('confirmed' in record.findings[0], false);
      await client.call('finding.record', sure);
      assert.equal((await client.call('exam.read', { exam })).exam.findings[0].value.toward_deg, 168);
    });

    test('an exam is not signed while a finding of it waits that is then asked back', async (t) => {
      const ledger = make_ledger(t, '--demo');
      await serve(t, ledger);
      const client = client_of(t, sidecar_of(ledger), carrier);
      const { exam, revision } = await open_exam(client);
      const record = { exam, seen: revision, request: new_request(), findings: [flexion(168)] };
      const sign = { exam, seen: revision, request: new_request(), read_aloud: 'Nobody, LEFT knee' };
      const [asked, not_signed] = await Promise.all([client.call('finding.record', record).catch((error) => error), client.call('exam.sign', sign).catch((error) => error)]);
      assert(asked instanceof AskedBack && not_signed === asked, `${not_signed}`);
      assert.equal(not_signed.method, 'finding.record');
      const recorded = await client.call('finding.record', with_confirmed(record, asked));
      await client.call('exam.sign', { ...sign, seen: recorded.revision });
      const late = await client.call('finding.record', { ...record, seen: recorded.revision, request: new_request(), findings: [flexion(114, { beside: true })] }).catch((error) => error);
      assert(late instanceof Refused && late.has('exam.signed'), `${late}`);
    });

    test('what is impossible is refused with its place and what to do', async (t) => {
      const ledger = make_ledger(t, '--demo');
      await serve(t, ledger);
      const client = client_of(t, sidecar_of(ledger), carrier);
      const { exam, revision } = await open_exam(client);
      const refused = await client.call('finding.record', { exam, seen: revision, request: new_request(), findings: [flexion(190)] }).catch((error) => error);
      assert(refused instanceof Refused && is_ledger_error(refused), refused.message);
      assert.deepEqual([refused.faults[0].code, refused.number], ['value.out_of_range', faults['value.out_of_range'].number]);
      assert.match(refused.faults[0].path, /^\/findings\/0\/value/);
      assert.equal(refused.faults[0].hint, faults['value.out_of_range'].hint);
      const nobody = await client.call('exam.read', { exam: 'a'.repeat(26) }).catch((error) => error);
      assert(nobody instanceof Unknown && nobody.has('exam.unknown'));
    });

    test('two clients write one place: the later one gets both values', async (t) => {
      const ledger = make_ledger(t, '--demo');
      await serve(t, ledger);
      const [one, other] = [client_of(t, sidecar_of(ledger), carrier), client_of(t, sidecar_of(ledger), carrier)];
      const { exam, revision } = await open_exam(one);
      await one.call('finding.record', { exam, seen: revision, request: new_request(), findings: [flexion(114)] });
      const late = { exam, seen: revision, request: new_request(), findings: [flexion(96)] };
      const stale = await other.call('finding.record', late).catch((error) => error);
      assert(stale instanceof Stale, stale.message);
      assert.deepEqual([stale.held.value.toward_deg, stale.sent.value.toward_deg, stale.held.item], [114, 96, stale.sent.item]);
      await other.call('finding.record', { ...late, findings: [flexion(96, { replaces: [stale.held.entry] })] });
      const { exam: read } = await one.call('exam.read', { exam });
      assert.deepEqual(read.findings.map((found) => found.value.toward_deg), [96]);
    });

    test('a wrong token is denied, and at once', async (t) => {
      const ledger = make_ledger(t, '--demo');
      await serve(t, ledger);
      const { http, websocket } = sidecar_of(ledger)();
      for (const at of [{ http, websocket, token: 'wrong' }, () => ({ http, websocket, token: 'wrong' })]) {
        const denied = await client_of(t, at, carrier).call('person.find').catch((error) => error);
        assert(denied instanceof Denied && denied.has('token.unknown'), denied.message);
      }
      const missing = await client_of(t, { http, websocket }, carrier).call('person.find').catch((error) => error);
      assert(missing instanceof Denied && missing.has('token.missing'), missing.message);
    });

    test('a sidecar started again at the same port has another token, which is looked up', async (t) => {
      const ledger = make_ledger(t, '--demo');
      const sidecar = await serve(t, ledger);
      const client = client_of(t, sidecar_of(ledger), carrier);
      await client.call('person.find');
      const before = sidecar_of(ledger)();
      await sidecar.kill();
      await serve(t, ledger, '--http', new URL(before.http).port);
      await client.call('person.find');
      const fixed = await client_of(t, before, carrier).call('person.find').catch((error) => error);
      assert(fixed instanceof Denied && fixed.has('token.unknown'), fixed.message);
    });

    test('a locked ledger says so; after the passphrase the same call goes through', async (t) => {
      const ledger = make_ledger(t, '--examiner', 'Amina', '--passphrase-fd', '3');
      await serve(t, ledger);
      const client = client_of(t, sidecar_of(ledger), carrier);
      assert.equal((await client.call('health.check')).state, 'locked');
      const register = { names: [{ text: 'Tuma Invented' }], sex: 'unknown', request: new_request() };
      const locked = await client.call('person.register', register).catch((error) => error);
      assert(locked instanceof Locked && locked.has('ledger.locked') && locked.retry, locked.message);
      await client.call('ledger.unlock', { examiner: 'Amina', passphrase: 'four words that fit' });
      const { person, repeat } = await client.call('person.register', register);
      assert.deepEqual([person.names[0].text, repeat], ['Tuma Invented', undefined]);
      await client.call('ledger.lock');
      assert((await client.call('person.find').catch((error) => error)) instanceof Locked);
    });

    test('the code of a link lets in once, and the client stays in', async (t) => {
      const ledger = make_ledger(t, '--demo');
      const { once } = await serve(t, ledger, '--once');
      const { http, websocket } = sidecar_of(ledger)();
      const client = client_of(t, { http, websocket }, carrier, { once });
      await Promise.all([client.call('person.find'), client.call('exam.find')]);
      assert.equal((await client.call('session.open')).scope, 'examiner');
      const second = await client_of(t, { http, websocket }, carrier, { once }).call('person.find').catch((error) => error);
      assert(second instanceof Denied && second.has('token.used'), second.message);
    });

    test('a message that is too large is refused alone', async (t) => {
      const ledger = make_ledger(t, '--demo');
      await serve(t, ledger);
      const client = client_of(t, sidecar_of(ledger), carrier);
      await client.call('health.check');
      const [large, ...others] = await Promise.all([
        client.call('person.find', { text: 'x'.repeat(1 << 20) }).catch((error) => error),
        client.call('person.find'), client.call('exam.find'),
      ]);
      assert(large instanceof Refused && large.has('limit.size'), large.message);
      assert.equal(others.length, 2);
    });

    test('no answer: time over, taken back, closed; each names the request to send again', async (t) => {
      const open = new Set();
      const silent = createServer((socket) => open.add(socket));
      await new Promise((resolve) => silent.listen(0, '127.0.0.1', resolve));
      t.after(() => {
        silent.close();
        for (const one of open) one.destroy();
      });
      const { port } = silent.address();
      const client = client_of(t, { http: `http://127.0.0.1:${port}/rpc`, websocket: `ws://127.0.0.1:${port}/rpc`, token: 'x' }, carrier);
      const request = new_request();
      const register = { sex: 'unknown', request };
      const late = await client.call('person.register', register, { timeout_ms: 60 }).catch((error) => error);
      const taker = new AbortController();
      const taken = client.call('person.register', register, { signal: taker.signal }).catch((error) => error);
      taker.abort('gone home');
      const ended = client.call('person.register', register).catch((error) => error);
      const before = [late, await taken];
      client.close();
      for (const [at, error] of [...before, await ended, await client.call('health.check').catch((failed) => failed)].entries()) {
        assert(error instanceof NoAnswer && is_ledger_error(error), error.message);
        assert.equal(error.because, ['timeout', 'aborted', 'closed', 'closed'][at]);
        if (at < 3) assert.equal(error.request, request);
      }
      assert.equal((await taken).cause, 'gone home');
    });
  });
}

test('without a WebSocket in the environment HTTP is used, and asking for one is an error', (t) => {
  if (globalThis.WebSocket !== undefined) return t.skip('this Node has one');
  assert.throws(() => new Client({ at: {}, carrier: 'websocket' }), TypeError);
  assert(new Client({ at: {} }));
});
