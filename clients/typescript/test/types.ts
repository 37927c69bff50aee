// Compiled, never run: what a caller may write and what the compiler refuses, beside the types of a browser.

import { AskedBack, Client, Stale, is_ledger_error, new_request, type FaultCode, type LedgerError, type WritingMethod } from 'limbledger-client';

const client = new Client({ at: { websocket: 'ws://127.0.0.1:1/rpc', token: 'x' }, WebSocket, fetch });

export const used = async () => {
  const { exam, revision } = await client.call('exam.open', { complaint: 'acute_knee', setting: 'outreach', request: new_request() });
  const id: string = exam.exam ?? '';
  await client.call('health.check');
  await client.call('person.find', { text: 'Tuma' }, { signal: new AbortController().signal, timeout_ms: 1000 });

  // @ts-expect-error no such method
  await client.call('exam.close', { exam: id });
  // @ts-expect-error the request is missing
  await client.call('finding.record', { exam: id, seen: revision, findings: [] });
  // @ts-expect-error no parameters at all
  await client.call('exam.read');
  // @ts-expect-error no such word
  await client.call('exam.open', { complaint: 'acute_knee', setting: 'spaceship', request: new_request() });
  // @ts-expect-error an angle has no millimetres
  await client.call('finding.check', { findings: [{ item: 'knee.flexion_active', side: 'left', value: { kind: 'angle', mm: 3 } }] });
  // @ts-expect-error a result has no such member
  (await client.call('exam.read', { exam: id })).colour;
};

export const told = (error: unknown): string => {
  if (!is_ledger_error(error)) throw error;
  return words(error);
};

// Every kind has its branch: a new one would not compile.
const words = (error: LedgerError): string => {
  switch (error.kind) {
    case 'asked_back':
      return error.faults.map((one) => one.hint).join();
    case 'stale':
      return `${error.held.item} ${error.sent.value.kind}`;
    case 'no_answer':
      return error.because;
    case 'refused': case 'locked': case 'read_only': case 'denied': case 'busy': case 'unknown': case 'untrusted': case 'failed':
      return error.has('exam.signed') ? 'signed' : error.message;
  }
};

export const code: FaultCode = 'finding.stale';
export const writes: WritingMethod = 'finding.record';
// @ts-expect-error it only reads
export const reads: WritingMethod = 'request.read';
// @ts-expect-error a question and a refusal are not the same
export const confused = (asked: AskedBack): Stale => asked;
