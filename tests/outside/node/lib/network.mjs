// A program that serves HTTP and WebSocket, and the clients that speak to it: jayson and json-rpc-2.0, each over both, as
// they come from the registry; raw requests where a client would not send what is to be refused.

import { spawn } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { request } from 'node:http';
import { connect } from 'node:net';
import { join } from 'node:path';
import jayson from 'jayson';
import { JSONRPCClient } from 'json-rpc-2.0';
import WebSocket from 'ws';

const patience_ms = 20000; // a guard against hanging, never a measurement

export const guard = async (promise, complaint) => {
  let timer;
  const late = new Promise((_, reject) => { timer = setTimeout(() => reject(new Error(complaint)), patience_ms); });
  try {
    return await Promise.race([promise, late]);
  } finally {
    clearTimeout(timer);
  }
};

// Starts the program and waits for the line that names its address.
export const serve = async (command, ledger, ...words) => {
  const child = spawn(command[0], [...command.slice(1), 'serve', '--ledger', ledger, '--http', '0', ...words], { stdio: ['ignore', 'ignore', 'pipe'] });
  let said = '';
  const exited = new Promise((resolve) => child.on('close', (code) => resolve(code)));
  const ready = new Promise((resolve, reject) => {
    child.stderr.on('data', (bytes) => {
      said += bytes;
      const found = /serving on (http:\S+)\n/.exec(said);
      if (found && (!words.includes('--once') || said.includes('#once='))) resolve(found[1]);
    });
    exited.then(() => reject(new Error(`ended: ${said}`)));
  });
  await guard(ready, 'no address');
  const file = join(ledger, 'sidecar.json');
  const sidecar = JSON.parse(readFileSync(file, 'utf8'));
  return {
    child,
    file,
    sidecar,
    said: () => said,
    there: () => existsSync(file),
    stop: (signal = 'SIGTERM') => {
      child.kill(signal);
      return guard(exited, 'still running');
    },
  };
};

// One request as it is given, and all of the answer.
export const raw = (url, { method = 'POST', headers = {}, body = '' } = {}) => guard(new Promise((resolve, reject) => {
  const sent = request(url, { method, headers, agent: false }, (response) => {
    const parts = [];
    response.on('data', (bytes) => parts.push(bytes));
    response.on('end', () => resolve({ status: response.statusCode, headers: response.headers, text: Buffer.concat(parts).toString('utf8') }));
  });
  sent.on('error', reject);
  sent.end(body);
}), 'no answer');

export const post = (url, body, headers = {}) => raw(url, { body, headers: { 'Content-Type': 'application/json', 'Content-Length': Buffer.byteLength(body), ...headers } });

// Bytes that no library would send; what comes back until the other side ends.
export const bytes = (url, text) => guard(new Promise((resolve, reject) => {
  const { port, hostname } = new URL(url);
  let got = '';
  const socket = connect(Number(port), hostname, () => socket.end(text));
  socket.on('data', (part) => { got += part; });
  socket.on('end', () => resolve(got));
  socket.on('error', reject);
}), 'no answer');

// A WebSocket whose messages are taken one by one; `closed` gives the code.
export const open_socket = async (url, options = {}) => {
  const socket = new WebSocket(url, options);
  const messages = [];
  const waiting = [];
  const closed = new Promise((resolve) => socket.on('close', (code) => {
    for (const one of waiting.splice(0)) one(undefined);
    resolve(code);
  }));
  socket.on('message', (data, binary) => {
    const text = binary ? data : data.toString('utf8');
    const one = waiting.shift();
    if (one) one(text);
    else messages.push(text);
  });
  await guard(new Promise((resolve, reject) => {
    socket.on('open', resolve);
    socket.on('error', reject);
  }), 'no handshake');
  return {
    socket,
    next: () => (messages.length > 0 ? Promise.resolve(messages.shift()) : guard(new Promise((resolve) => waiting.push(resolve)), 'no message')),
    say: (text) => socket.send(text),
    closed: () => guard(closed, 'not closed'),
    close: () => {
      socket.close();
      return guard(closed, 'not closed');
    },
  };
};

// The status of a handshake that is refused, and the body.
export const refused_socket = (url, options) => guard(new Promise((resolve, reject) => {
  const socket = new WebSocket(url, options);
  socket.on('open', () => reject(new Error('it was opened')));
  socket.on('error', () => {});
  socket.on('unexpected-response', (_, response) => {
    let text = '';
    response.on('data', (part) => { text += part; });
    response.on('end', () => resolve({ status: response.statusCode, text }));
  });
}), 'no answer');

// A client is {ask(method, params) -> result or a throw with code and data, stop()}.
const by_callback = (client) => (method, params) => guard(new Promise((resolve, reject) => {
  client.request(method, params, (failed, error, result) => {
    if (failed) reject(failed);
    else if (error) reject(Object.assign(new Error(error.message), error));
    else resolve(result);
  });
}), 'no reply');

export const clients = {
  'jayson over HTTP': async ({ http }, token) => {
    const { hostname, port, pathname } = new URL(http);
    const client = jayson.Client.http({ hostname, port, path: pathname, headers: { Authorization: `Bearer ${token}` } });
    return { ask: by_callback(client), stop: async () => true };
  },
  'json-rpc-2.0 over HTTP': async ({ http }, token) => {
    const client = new JSONRPCClient(async (message) => {
      const response = await fetch(http, {
        method: 'POST', body: JSON.stringify(message), headers: { 'content-type': 'application/json', authorization: `Bearer ${token}` },
      });
      if (response.status === 200) client.receive(await response.json());
      else if (message.id !== undefined) throw new Error(`status ${response.status}`);
    });
    return { ask: (method, params) => client.request(method, params), stop: async () => true };
  },
  'jayson over WebSocket': async ({ websocket }, token) => {
    const client = jayson.Client.websocket({ url: websocket });
    await guard(new Promise((resolve, reject) => {
      client.ws.on('open', resolve);
      client.ws.on('error', reject);
    }), 'no handshake');
    const ask = by_callback(client);
    await ask('session.open', { token });
    return { ask, stop: async () => (await ask('session.end', {})).ended };
  },
  'json-rpc-2.0 over WebSocket': async ({ websocket }, token) => {
    const line = await open_socket(websocket);
    const client = new JSONRPCClient(async (message) => line.say(JSON.stringify(message)));
    line.socket.on('message', (data) => client.receive(JSON.parse(data.toString('utf8'))));
    const ask = (method, params) => guard(client.request(method, params), 'no reply');
    await ask('session.open', { token });
    return {
      ask,
      stop: async () => (await ask('session.end', {})).ended && (await line.closed()) === 1000,
    };
  },
};
