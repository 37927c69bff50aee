// The four ways that a message travels, each as {name, said(bytes) -> answers, stop()}: an answer is {text, parsed}. What a way
// cannot carry as it is given `undefined` for: a line end inside a message by lines. Bytes that are no UTF-8 end a WebSocket with
// 1007 (RFC 6455, section 8.1), given as {closed: 1007}; the next message goes over a new one.

import { isUtf8 } from 'node:buffer';
import { spawn } from 'node:child_process';
import { guard, open_socket, raw } from './network.mjs';
import { Peer, answers_to } from './peer.mjs';

const marker = (id) => JSON.stringify({ jsonrpc: '2.0', method: 'no.such.method', id });
const answer = (text) => ({ text, parsed: JSON.parse(text) });

export const by_lines = (command) => {
  const peer = new Peer([...command, '--stdio', 'lines'], 'lines');
  return {
    name: 'lines',
    said: async (bytes) => (bytes.includes(10) ? undefined : answers_to(peer, bytes)),
    stop: () => peer.close(),
  };
};

export const by_headers = (command) => {
  const peer = new Peer([...command, '--stdio', 'headers'], 'headers');
  return { name: 'Content-Length', said: (bytes) => answers_to(peer, bytes), stop: () => peer.close() };
};

export const by_http = (url, headers = {}) => ({
  name: 'HTTP',
  said: async (bytes) => {
    const { status, text } = await raw(url, { body: bytes, headers: { 'Content-Type': 'application/json', 'Content-Length': bytes.length, ...headers } });
    if (status === 204) return [];
    if (status !== 200) throw new Error(`status ${status}`);
    return [answer(text)];
  },
  stop: async () => 0,
});

export const by_websocket = (url, begin = async () => {}) => {
  let line;
  let asked = 0;
  return {
    name: 'WebSocket',
    said: async (bytes) => {
      if (!line) {
        line = await open_socket(url);
        await begin(line);
      }
      line.socket.send(bytes, { binary: false });
      if (!isUtf8(bytes)) {
        const closed = await line.closed();
        line = undefined;
        return { closed };
      }
      const id = `carrier ${++asked}`;
      line.say(marker(id));
      const answers = [];
      for (;;) {
        const text = await line.next();
        if (text === undefined) throw new Error('the connection was closed');
        const one = answer(text);
        if (one.parsed?.id === id) return answers;
        answers.push(one);
      }
    },
    stop: async () => (line ? line.close().then(() => 0) : 0),
  };
};

// The test table, over all four.
export const table_carriers = async (command) => {
  const child = spawn(command[0], [...command.slice(1), '--http', '0'], { stdio: ['pipe', 'pipe', 'inherit'] });
  const ended = new Promise((resolve) => child.on('close', resolve));
  const port = await guard(new Promise((resolve, reject) => {
    child.stdout.on('data', (said) => resolve(Number(said)));
    child.on('error', reject);
  }), 'no port');
  const http = by_http(`http://127.0.0.1:${port}/rpc`);
  return [by_lines(command), by_headers(command), http,
    { ...by_websocket(`ws://127.0.0.1:${port}/rpc`), last: async () => { child.stdin.end(); return guard(ended, 'still running'); } }];
};
