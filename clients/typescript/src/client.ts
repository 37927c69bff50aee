// The calls of a sidecar, each tried again with the same request until it is answered or its time is over, so that what was
// written once stands once. What is no repeat of itself (a one-time code, a passphrase) is sent once.

import { Access, Lost, type AddressSource, type Answer, type Carrier } from './carrier.js';
import { globals, pause, type Signal } from './environment.js';
import { Busy, Denied, NoAnswer, error_of } from './errors.js';
import type { ChangesReadResult, Methods } from './generated.js';
import { HttpCarrier, fetch_of } from './http.js';
import { SocketCarrier, socket_class_of } from './socket.js';

export interface Options {
  /** What sidecar.json says, or a function that reads it: it is asked again when the sidecar was started anew. */
  at: AddressSource;
  /** The code of a link that ends in `#once=CODE`, in place of a token. */
  once?: string;
  /** Without it: WebSocket where there is one, else HTTP. */
  carrier?: 'websocket' | 'http';
  /** The class to use, such as that of `ws`, in Node before 22. */
  WebSocket?: unknown;
  fetch?: unknown;
  /** What the sidecar may call this client. */
  name?: string;
  /** How long a call may take, with everything that is tried for it. */
  timeout_ms?: number;
  /** Whether the last try came through. */
  on_connection?: (state: 'open' | 'lost') => void;
  /** Over WebSocket: `ledger.changed` as it comes. `changes()` is what misses nothing. */
  on_changed?: (changes: ChangesReadResult) => void;
}

export interface CallOptions {
  timeout_ms?: number;
  signal?: Signal;
}

type Params<M extends keyof Methods> = Methods[M]['params'];
type Rest<M extends keyof Methods> = object extends Params<M> ? [params?: Params<M>, options?: CallOptions] : [params: Params<M>, options?: CallOptions];

const timeout_ms_default = 30000;
const tries_in_a_call = 3; // so much of its time each silent try may take
const wait_ms = 25000;
const pause_ms_first = 50;
const pause_ms_most = 2000;

// Twice is not the same as once: a code is used up, a wrong passphrase counts, the name is taken, the session is over.
const sent_once: ReadonlySet<string> = new Set<keyof Methods>(['session.open', 'session.end', 'ledger.unlock', 'examiner.add']);

export class Client {
  #options: Options;
  #access: Access;
  #carrier: Carrier;
  #closed = new globals.AbortController();
  #last_id = 0;
  #writing = new Map<string, Set<Promise<unknown>>>(); // by exam: what is not answered yet
  #state: 'open' | 'lost' | undefined;

  constructor(options: Options) {
    const name = options.name ?? 'limbledger-client';
    this.#options = options;
    this.#access = new Access(options.at, options.once);
    const socket_class = socket_class_of(options.WebSocket);
    if (options.carrier === 'websocket' && !socket_class) throw new TypeError('there is no WebSocket here: hand one in as options.WebSocket');
    this.#carrier = socket_class && options.carrier !== 'http'
      ? new SocketCarrier(this.#access, socket_class, name, options.on_changed)
      : new HttpCarrier(this.#access, fetch_of(options.fetch), name);
  }

  /**
   * Calls one method. Rejects with one of LedgerError. exam.sign goes only when what this client still writes to that exam is recorded: where one
   * of those is not, it rejects with the error of that one (`method` names it), and nothing was signed.
   */
  async call<M extends keyof Methods>(method: M, ...[params, options]: Rest<M>): Promise<Methods[M]['result']> {
    const { exam, request } = (params ?? {}) as { exam?: string; request?: string };
    if (method === 'exam.sign') await Promise.all([...(this.#writing.get(exam ?? '') ?? [])]);
    const answer = this.#call(method, params ?? {}, options);
    return exam !== undefined && request !== undefined ? this.#written(exam, answer) : answer;
  }

  async #written<T>(exam: string, answer: Promise<T>): Promise<T> {
    const all = this.#writing.get(exam) ?? new Set();
    this.#writing.set(exam, all.add(answer));
    try {
      return await answer;
    } finally {
      all.delete(answer);
      if (all.size === 0) this.#writing.delete(exam);
    }
  }

  async #call<M extends keyof Methods>(method: M, sent: object, options?: CallOptions): Promise<Methods[M]['result']> {
    const about = { method, request: (sent as { request?: string }).request };
    const time_ms = options?.timeout_ms ?? this.#options.timeout_ms ?? timeout_ms_default;
    const waits_ms = (sent as { wait_ms?: number }).wait_ms ?? 0;
    const over = new globals.AbortController();
    const end = () => over.abort();
    const signals = [options?.signal, this.#closed.signal];
    for (const signal of signals) signal?.addEventListener('abort', end);
    const timer = globals.setTimeout(end, time_ms + waits_ms);
    if (signals.some((signal) => signal?.aborted)) end();
    let last: unknown;
    try {
      for (let tries = 0; !over.signal.aborted; tries += 1) {
        try {
          const answer = await this.#try(method, sent, over.signal, time_ms / tries_in_a_call + waits_ms);
          this.#said('open');
          if ('result' in answer) return answer.result as Methods[M]['result'];
          throw error_of(about, answer.error);
        } catch (error) {
          last = error;
          if (error instanceof Lost) {
            this.#said('lost');
            this.#access.forget();
            if (error.sent && sent_once.has(method)) break;
          } else if (error instanceof Denied && error.has('token.unknown', 'token.expired')) {
            this.#carrier.drop();
            if (!(await this.#access.renew())) throw error;
          } else if (!(error instanceof Busy)) {
            throw error;
          }
        }
        if (tries > 0 || last instanceof Busy) await pause(Math.min(pause_ms_first * 2 ** tries, pause_ms_most), over.signal);
      }
    } finally {
      globals.clearTimeout(timer);
      for (const signal of signals) signal?.removeEventListener('abort', end);
    }
    if (last instanceof Busy) throw last;
    const aborted = options?.signal?.aborted ?? false;
    const because = aborted ? 'aborted' : this.#closed.signal.aborted ? 'closed' : over.signal.aborted ? 'timeout' : 'lost';
    throw new NoAnswer(about, because, aborted ? options?.signal?.reason : last);
  }

  /**
   * What changes, from a cursor on; without one, from now on. Each step has the cursor to go on from after a restart; the first comes
   * at once. Lost connections are none of the caller's business; a ledger that locks ends it with Locked.
   */
  async *changes({ cursor, signal }: { cursor?: string; signal?: Signal } = {}): AsyncGenerator<ChangesReadResult, void, void> {
    let at = cursor;
    for (let first = true; ; first = false) {
      const params = at === undefined || first ? { cursor: at } : { cursor: at, wait_ms };
      let told: ChangesReadResult;
      try {
        told = await this.call('changes.read', params, { signal });
      } catch (error) {
        // Silence is no error here: the sidecar may be away for longer than one call's time.
        if (error instanceof NoAnswer && error.because === 'timeout') continue;
        if (error instanceof NoAnswer) return;
        throw error;
      }
      at = told.cursor;
      if (first || (told.changes?.length ?? 0) > 0) yield told;
    }
  }

  /** Calls that still wait end with NoAnswer. */
  close(): void {
    this.#closed.abort();
    this.#carrier.drop();
  }

  async #try(method: string, params: object, over: Signal, time_ms: number): Promise<Answer> {
    const one = new globals.AbortController();
    let end = () => {};
    const ended = new Promise<never>((_, reject) => {
      end = () => {
        one.abort();
        reject(new Lost(true));
      };
    });
    let silent = false;
    const timer = globals.setTimeout(() => { silent = true; end(); }, time_ms);
    over.addEventListener('abort', end);
    try {
      // A carrier may still wait for its turn.
      return await Promise.race([this.#carrier.ask({ jsonrpc: '2.0', id: ++this.#last_id, method, params }, one.signal), ended]);
    } finally {
      globals.clearTimeout(timer);
      over.removeEventListener('abort', end);
      if (silent) this.#carrier.drop(); // whoever does not answer may be gone without a word
    }
  }

  #said(state: 'open' | 'lost'): void {
    if (this.#state === state) return;
    this.#state = state;
    this.#options.on_connection?.(state);
  }
}
