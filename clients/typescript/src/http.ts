// Over HTTP: a POST a call, each with the token.

import { Access, Lost, type Answer, type Carrier, type Message } from './carrier.js';
import { globals, type Fetch, type Signal } from './environment.js';
import type { SessionOpenResult } from './generated.js';

// The sidecar takes 64 connections from everybody; calls that wait for a change are not counted here.
const at_once = 6;

export class HttpCarrier implements Carrier {
  #access: Access;
  #fetch: Fetch;
  #name: string;
  #free = at_once;
  #queue: (() => void)[] = [];
  #trading: Promise<Answer> | undefined;

  constructor(access: Access, fetch: Fetch, name: string) {
    this.#access = access;
    this.#fetch = fetch;
    this.#name = name;
  }

  async ask(message: Message, signal: Signal): Promise<Answer> {
    if ('wait_ms' in message.params) return this.#admitted(message, signal);
    if (this.#free > 0) this.#free -= 1;
    else await new Promise<void>((resolve) => this.#queue.push(resolve));
    try {
      return await this.#admitted(message, signal);
    } finally {
      const next = this.#queue.shift();
      if (next) next();
      else this.#free += 1;
    }
  }

  drop(): void {}

  async #admitted(message: Message, signal: Signal): Promise<Answer> {
    const entry = await this.#access.entry();
    if (entry.once !== undefined) {
      this.#trading ??= this.#post({ jsonrpc: '2.0', id: 0, method: 'session.open', params: { once: entry.once, client: this.#name, protocol: 1 } }, undefined, signal)
        .finally(() => { this.#trading = undefined; });
      const answer = await this.#trading;
      if ('error' in answer) return answer;
      this.#access.traded((answer.result as SessionOpenResult).token);
      if (message.method === 'session.open') return answer;
    }
    return this.#post(message, (await this.#access.entry()).token, signal);
  }

  async #post(message: Message, token: string | undefined, signal: Signal): Promise<Answer> {
    const { http } = await this.#access.address();
    if (http === undefined) throw new TypeError('the address names no http');
    const headers: Record<string, string> = { 'Content-Type': 'application/json' };
    if (token !== undefined) headers['Authorization'] = `Bearer ${token}`;
    let text: string;
    try {
      // Called without an owner: browsers refuse it otherwise.
      const send = this.#fetch;
      const reply = await send(http, { method: 'POST', headers, body: JSON.stringify(message), signal, redirect: 'error' });
      text = await reply.text();
    } catch (cause) {
      throw new Lost(true, cause);
    }
    try {
      const { result, error } = JSON.parse(text);
      return error ? { error } : { result };
    } catch (cause) {
      throw new Lost(true, cause);
    }
  }
}

export const fetch_of = (given: unknown): Fetch => {
  const found = (given ?? globals.fetch) as Fetch | undefined;
  if (!found) throw new TypeError('there is no fetch here: hand one in as options.fetch');
  return found;
};
