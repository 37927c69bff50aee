// What a call can end with instead of its result. `kind` tells them apart. A question (asked_back) is no refusal: nothing is
// wrong with it, nothing was written, and the same call may be sent again once a person has looked.

import type { ErrorObject, FaultCode, Finding, Observation, ShownFault } from './generated.js';

/** A newer sidecar may send a code that this edition does not know. */
export type Fault = Omit<ShownFault, 'code'> & { code: FaultCode | (string & {}) };

interface About {
  method: string;
  request: string | undefined;
}

/** The sidecar has answered, and not with a result. */
export abstract class Answered extends Error {
  abstract readonly kind: string;
  readonly method: string;
  /** What to send again, where the call has one. */
  readonly request: string | undefined;
  /** The number of JSON-RPC. */
  readonly number: number;
  readonly faults: Fault[];
  /** The same call may succeed later. */
  readonly retry: boolean;
  /** What the sidecar's log calls it, where something went wrong inside. */
  readonly incident: string | undefined;

  constructor(about: About, error: ErrorObject) {
    const faults = error.data?.faults ?? [];
    super(`${about.method}: ${error.message}${faults.map((one) => `; ${one.code}${one.path ? ` at ${one.path}` : ''}: ${one.hint}`).join('')}`);
    this.name = new.target.name;
    this.method = about.method;
    this.request = about.request;
    this.number = error.code;
    this.faults = faults;
    this.retry = error.data?.retry ?? false;
    this.incident = error.data?.incident;
  }

  has(...codes: FaultCode[]): boolean {
    return this.faults.some((one) => (codes as string[]).includes(one.code));
  }
}

/** What was sent cannot be taken: change it. */
export class Refused extends Answered {
  readonly kind = 'refused';
}

/** Nothing was written. Show `faults` to a person, then send the same call with `with_confirmed`, the same request. */
export class AskedBack extends Answered {
  readonly kind = 'asked_back';
}

/**
 * The place is filled by a value that the writer had not seen. Show all of it; a person chooses `replaces` or `beside`. With the code
 * `revision.old` (of what has neither, such as exam.sign) nothing is held: read the exam again, show it, send it with the newer `seen`.
 */
export class Stale extends Answered {
  readonly kind = 'stale';
  readonly held: Finding;
  /** What else stands at this place. */
  readonly held_also: readonly Finding[];
  readonly sent: Observation;

  constructor(about: About, error: ErrorObject) {
    super(about, error);
    this.held = error.data.held as unknown as Finding;
    this.held_also = (error.data.held_also ?? []) as unknown as Finding[];
    this.sent = error.data.sent as unknown as Observation;
  }
}

/** The ledger is locked: ask for the passphrase, call ledger.unlock, send it again. */
export class Locked extends Answered {
  readonly kind = 'locked';
}

/** Nothing can be written now: the disk is full or failed, or another program holds the ledger. */
export class ReadOnly extends Answered {
  readonly kind = 'read_only';
}

/** Who calls may not. */
export class Denied extends Answered {
  readonly kind = 'denied';
}

/** Too much at once. The client waits and sends again by itself, as long as the call has time. */
export class Busy extends Answered {
  readonly kind = 'busy';
}

/** What was named is not there. */
export class Unknown extends Answered {
  readonly kind = 'unknown';
}

/** Entries or keys do not hold. */
export class Untrusted extends Answered {
  readonly kind = 'untrusted';
}

/** Something went wrong inside the sidecar. */
export class Failed extends Answered {
  readonly kind = 'failed';
}

/** Nobody knows whether it was done. A call with a `request` is sent again with the same one, or asked after by request.read. */
export class NoAnswer extends Error {
  readonly kind = 'no_answer';
  readonly method: string;
  readonly request: string | undefined;
  readonly because: 'timeout' | 'aborted' | 'closed' | 'lost';

  constructor(about: About, because: NoAnswer['because'], cause?: unknown) {
    super(`${about.method}: no answer (${because}); it may or may not have been done`, { cause });
    this.name = 'NoAnswer';
    this.method = about.method;
    this.request = about.request;
    this.because = because;
  }
}

export type LedgerError = Refused | AskedBack | Stale | Locked | ReadOnly | Denied | Busy | Unknown | Untrusted | Failed | NoAnswer;

export const is_ledger_error = (error: unknown): error is LedgerError => error instanceof Answered || error instanceof NoAnswer;

type AnsweredClass = new (about: About, error: ErrorObject) => Answered;
const classes: Record<number, AnsweredClass> = {
  2: AskedBack, 3: Stale, 4: Locked, 5: ReadOnly, 6: Denied, 7: Busy, 8: Unknown, 9: Untrusted, [-32603]: Failed,
};

export const error_of = (about: About, error: ErrorObject): Answered => new (classes[error.code] ?? Refused)(about, error);

interface Confirmable {
  findings?: { confirmed?: string[] }[];
  confirmed?: string[];
}

/**
 * The same call with the questions answered "yes, so it is": each code stands in the finding it was asked about. Only after a
 * person has looked. A step that is not advised (item.withheld) takes `despite` from that person instead and is left as it is.
 */
export const with_confirmed = <P extends object>(params: P, asked: AskedBack): P => {
  const again = JSON.parse(JSON.stringify(params)) as P & Confirmable;
  for (const { code, path } of asked.faults) {
    if (code === 'item.withheld') continue;
    const at = /^\/findings\/(\d+)(\/|$)/.exec(path ?? '');
    const place: { confirmed?: string[] } | undefined = at ? again.findings?.[Number(at[1])] : again;
    if (place && !place.confirmed?.includes(code)) place.confirmed = [...(place.confirmed ?? []), code];
  }
  return again;
};
