// How one message gets there and back, once. Whether it is tried again is the client's business (client.ts).

import type { Signal } from './environment.js';
import type { ErrorObject } from './generated.js';

export interface Message {
  jsonrpc: '2.0';
  id: number;
  method: string;
  params: object;
}

export type Answer = { result: unknown } | { error: ErrorObject };

export interface Carrier {
  /** Rejects with Lost where no answer came. */
  ask(message: Message, signal: Signal): Promise<Answer>;
  /** Lets go of the connection; the next call opens another. */
  drop(): void;
}

/** The connection broke, or never came about (`sent` false: the sidecar cannot have seen the message). */
export class Lost extends Error {
  readonly sent: boolean;

  constructor(sent: boolean, cause?: unknown) {
    super('the connection was lost', { cause });
    this.sent = sent;
  }
}

/** What stands in sidecar.json, or as much of it as is needed. */
export interface Address {
  http?: string;
  websocket?: string;
  token?: string;
  tokens?: readonly { token: string }[];
}

export type AddressSource = Address | (() => Address | Promise<Address>);

/** Where to call and with which token, asked anew after each loss: a sidecar that was started again has another port and token. */
export class Access {
  #source: AddressSource;
  #once: string | undefined;
  #traded: string | undefined;
  #known: Promise<Address> | undefined;

  constructor(source: AddressSource, once: string | undefined) {
    this.#source = source;
    this.#once = once;
  }

  async address(): Promise<Address> {
    const source = this.#source;
    // No file yet, or half of one: the sidecar is about to start.
    this.#known ??= (async () => (typeof source === 'function' ? source() : source))().catch((cause) => { throw new Lost(false, cause); });
    return this.#known;
  }

  /** The parameters of session.open that let in. */
  async entry(): Promise<{ token?: string; once?: string }> {
    const { token, tokens } = await this.address();
    if (this.#traded) return { token: this.#traded };
    if (this.#once) return { once: this.#once };
    const shown = token ?? tokens?.[0]?.token;
    return shown === undefined ? {} : { token: shown };
  }

  /** A code is good once; from then on there is the token it was traded for. */
  traded(token: string | undefined): void {
    if (token === undefined) return;
    this.#traded = token;
    this.#once = undefined;
  }

  forget(): void {
    this.#known = undefined;
  }

  /** Asks the source again; false where it has nothing but the token that was refused. */
  async renew(): Promise<boolean> {
    if (typeof this.#source !== 'function') return false;
    try {
      const before = await this.entry();
      this.#traded = undefined;
      this.forget();
      const now = await this.entry();
      return now.token !== undefined && now.token !== before.token;
    } catch {
      this.forget();
      return true; // there is nothing to ask at the moment
    }
  }
}
