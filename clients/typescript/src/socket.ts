// Over one WebSocket: session.open first, then calls whose answers may come in any order, and messages nobody asked for.

import { Access, Lost, type Answer, type Carrier, type Message } from './carrier.js';
import { globals, type Signal, type Socket, type SocketClass } from './environment.js';
import type { ChangesReadResult, ErrorObject, SessionOpenResult } from './generated.js';

const handshake_ms = 5000;
const session_id = 0; // calls count from 1

interface Waiting {
  size: number;
  resolve(answer: Answer): void;
  reject(lost: Lost): void;
}

class Refusal {
  constructor(readonly error: ErrorObject) {}
}

export class SocketCarrier implements Carrier {
  #access: Access;
  #class: SocketClass;
  #name: string;
  #told: ((changes: ChangesReadResult) => void) | undefined;
  #opening: Promise<Socket> | undefined;
  #socket: Socket | undefined;
  #waiting = new Map<number, Waiting>();

  constructor(access: Access, socket_class: SocketClass, name: string, told?: (changes: ChangesReadResult) => void) {
    this.#access = access;
    this.#class = socket_class;
    this.#name = name;
    this.#told = told;
  }

  async ask(message: Message, signal: Signal): Promise<Answer> {
    let socket: Socket;
    try {
      this.#opening ??= this.#open();
      socket = await this.#opening;
    } catch (error) {
      if (error instanceof Refusal) return { error: error.error };
      throw error;
    }
    if (signal.aborted) throw new Lost(false);
    return new Promise((resolve, reject) => {
      const ended = () => {
        this.#waiting.delete(message.id);
        reject(new Lost(true));
      };
      const settle = () => signal.removeEventListener('abort', ended);
      signal.addEventListener('abort', ended);
      const text = JSON.stringify(message);
      this.#waiting.set(message.id, {
        size: text.length,
        resolve: (answer) => { settle(); resolve(answer); },
        reject: (lost) => { settle(); reject(lost); },
      });
      try {
        socket.send(text);
      } catch (cause) {
        this.#broken(socket, cause);
      }
    });
  }

  drop(): void {
    const socket = this.#socket;
    if (socket) this.#broken(socket);
  }

  async #open(): Promise<Socket> {
    try {
      const { websocket } = await this.#access.address();
      if (websocket === undefined) throw new TypeError('the address names no websocket');
      const entry = await this.#access.entry();
      const socket = new this.#class(websocket);
      this.#socket = socket;
      const timer = globals.setTimeout(() => this.#broken(socket), handshake_ms);
      const session = new Promise<Answer>((resolve, reject) => this.#waiting.set(session_id, { size: 0, resolve, reject }));
      socket.onopen = () => {
        socket.send(JSON.stringify({ jsonrpc: '2.0', id: session_id, method: 'session.open', params: { ...entry, client: this.#name, protocol: 1 } }));
      };
      socket.onmessage = ({ data }) => this.#take(socket, data);
      socket.onerror = () => this.#broken(socket);
      socket.onclose = () => this.#broken(socket);
      const answer = await session.finally(() => globals.clearTimeout(timer));
      if ('error' in answer) {
        this.#broken(socket);
        throw new Refusal(answer.error);
      }
      this.#access.traded((answer.result as SessionOpenResult).token);
      return socket;
    } catch (error) {
      this.#opening = undefined;
      throw error instanceof Lost ? new Lost(false, error) : error;
    }
  }

  #take(socket: Socket, data: unknown): void {
    let message: { id?: unknown; method?: unknown; params?: unknown; result?: unknown; error?: ErrorObject };
    try {
      message = JSON.parse(String(data));
    } catch (cause) {
      return this.#broken(socket, cause);
    }
    if (message.method === 'ledger.changed') {
      this.#told?.(message.params as ChangesReadResult);
      return;
    }
    // What was refused before it was read has no id. It is the largest, and sent again it would end the next connection too.
    const id = message.id ?? (message.error ? this.#largest() : undefined);
    const waiting = this.#waiting.get(id as number);
    if (!waiting) return;
    this.#waiting.delete(id as number);
    waiting.resolve(message.error ? { error: message.error } : { result: message.result });
  }

  #largest(): number | undefined {
    const [largest] = [...this.#waiting].sort(([, a], [, b]) => b.size - a.size);
    return largest?.[0];
  }

  // Whoever waits is told; the next call opens another.
  #broken(socket: Socket, cause?: unknown): void {
    if (this.#socket !== socket) return;
    this.#socket = undefined;
    this.#opening = undefined;
    socket.onopen = socket.onmessage = socket.onclose = null;
    socket.onerror = () => {};
    try {
      socket.close();
    } catch {
      // it was never open
    }
    const waiting = [...this.#waiting.values()];
    this.#waiting.clear();
    for (const one of waiting) one.reject(new Lost(true, cause));
  }
}

export const socket_class_of = (given: unknown): SocketClass | undefined => (given ?? globals.WebSocket) as SocketClass | undefined;
