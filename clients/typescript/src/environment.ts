// What is taken from the environment, and nothing else of it: these sources are compiled without the types of a browser or of
// Node, so that any other global is an error. fetch and WebSocket can be handed in instead (Options).

export interface Reply {
  readonly status: number;
  text(): Promise<string>;
}

/** As much of an AbortSignal as is used; one of a browser or of Node fits. */
export interface Signal {
  readonly aborted: boolean;
  readonly reason: unknown;
  addEventListener(type: 'abort', listener: () => void): void;
  removeEventListener(type: 'abort', listener: () => void): void;
}

interface Aborter {
  readonly signal: Signal;
  abort(): void;
}

export interface Socket {
  send(text: string): void;
  close(code?: number): void;
  onopen: ((event: never) => void) | null;
  onmessage: ((event: { data: unknown }) => void) | null;
  onerror: ((event: never) => void) | null;
  onclose: ((event: { code: number }) => void) | null;
}

export type Fetch = (
  url: string,
  options: { method: string; headers: Record<string, string>; body: string; signal: Signal; redirect: 'error' },
) => Promise<Reply>;

export type SocketClass = new (url: string) => Socket;

interface Globals {
  fetch?: Fetch;
  WebSocket?: SocketClass;
  crypto: { randomUUID(): string };
  AbortController: new () => Aborter;
  setTimeout(action: () => void, ms: number): unknown;
  clearTimeout(timer: unknown): void;
}

export const globals = globalThis as unknown as Globals;

/** The id of one form: made once when it is opened, and sent again when no answer came. */
export const new_request = (): string => globals.crypto.randomUUID();

/** Ends early, without complaint, when the signal says so. */
export const pause = (ms: number, signal?: Signal): Promise<void> =>
  new Promise((resolve) => {
    const end = () => {
      globals.clearTimeout(timer);
      signal?.removeEventListener('abort', end);
      resolve();
    };
    const timer = globals.setTimeout(end, ms);
    if (signal?.aborted) end();
    else signal?.addEventListener('abort', end);
  });
