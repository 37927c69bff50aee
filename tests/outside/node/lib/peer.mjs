// A program spoken to over its standard input and output, in one of the two framings. Bytes go in exactly as given;
// what comes back is cut into messages and nothing is repaired. A program that says nothing for `patience_ms` fails
// the case at hand: the time is a guard against hanging, never a measurement.

import { spawn } from 'node:child_process';

const patience_ms = 20000;

export class Peer {
  constructor(command, framing) {
    this.framing = framing;
    this.messages = [];
    this.waiting = [];
    this.held = Buffer.alloc(0);
    this.ended = false;
    this.stray = false;
    this.child = spawn(command[0], command.slice(1), { stdio: ['pipe', 'pipe', 'inherit'] });
    this.child.stdin.on('error', () => {});
    this.child.stdout.on('data', (bytes) => this.take(bytes));
    this.exited = new Promise((resolve) => {
      this.child.on('error', () => resolve(undefined));
      this.child.on('close', (code) => resolve(code));
    });
    this.exited.then(() => {
      this.ended = true;
      this.stray = this.held.length > 0;
      for (const resolve of this.waiting.splice(0)) resolve(undefined);
    });
  }

  take(bytes) {
    this.held = Buffer.concat([this.held, bytes]);
    for (let message = this.cut(); message !== undefined; message = this.cut()) {
      const resolve = this.waiting.shift();
      if (resolve) resolve(message);
      else this.messages.push(message);
    }
  }

  cut() {
    if (this.framing === 'lines') {
      const at = this.held.indexOf(10);
      if (at < 0) return undefined;
      const message = this.held.subarray(0, at).toString('utf8');
      this.held = this.held.subarray(at + 1);
      return message;
    }
    const at = this.held.indexOf('\r\n\r\n');
    if (at < 0) return undefined;
    const length = /^Content-Length: (\d+)$/im.exec(this.held.subarray(0, at).toString('latin1').replaceAll('\r', ''));
    if (!length) throw new Error('a reply without Content-Length');
    const [start, end] = [at + 4, at + 4 + Number(length[1])];
    if (this.held.length < end) return undefined;
    const message = this.held.subarray(start, end).toString('utf8');
    this.held = this.held.subarray(end);
    return message;
  }

  raw(bytes) {
    this.child.stdin.write(bytes);
  }

  send(message) {
    const body = Buffer.from(message);
    if (this.framing === 'lines') this.raw(Buffer.concat([body, Buffer.from('\n')]));
    else this.raw(Buffer.concat([Buffer.from(`Content-Length: ${body.length}\r\n\r\n`), body]));
  }

  end() {
    this.child.stdin.end();
  }

  // The next message as text, or undefined once the program has closed its output.
  async next() {
    if (this.messages.length > 0) return this.messages.shift();
    if (this.ended) return undefined;
    return this.guard(new Promise((resolve) => this.waiting.push(resolve)), 'no reply');
  }

  async close() {
    this.end();
    return this.guard(this.exited, 'still running after the end of its input');
  }

  async guard(promise, complaint) {
    let timer;
    const late = new Promise((_, reject) => {
      timer = setTimeout(() => {
        this.child.kill('SIGKILL');
        reject(new Error(complaint));
      }, patience_ms);
    });
    try {
      return await Promise.race([promise, late]);
    } finally {
      clearTimeout(timer);
    }
  }
}

// What the program answered to one message: all that comes before the answer to a question asked right after it.
let asked = 0;
export const answers_to = async (peer, message) => {
  peer.send(message);
  return answers_before_marker(peer);
};

export const answers_before_marker = async (peer) => {
  const id = `marker ${++asked}`;
  peer.send(JSON.stringify({ jsonrpc: '2.0', method: 'no.such.method', id }));
  const answers = [];
  for (;;) {
    const message = await peer.next();
    if (message === undefined) throw new Error('the program closed its output');
    const parsed = JSON.parse(message);
    if (parsed?.id === id) return answers;
    answers.push({ text: message, parsed });
  }
};
