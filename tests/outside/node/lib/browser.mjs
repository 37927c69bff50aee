// The system's own Chromium without a window, spoken to over its DevTools protocol: one page that is opened, asked and pressed.

import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import WebSocket from 'ws';

const patience_ms = 60000; // a guard against hanging, never a measurement

export const open_browser = async () => {
  const folder = mkdtempSync(join(tmpdir(), 'limbledger-browser-'));
  const child = spawn('chromium', ['--headless=new', '--no-sandbox', '--disable-gpu', '--disable-dev-shm-usage', '--no-first-run', '--disable-background-networking',
    '--disable-component-update', '--remote-debugging-port=0', `--user-data-dir=${folder}`, 'about:blank'], { stdio: ['ignore', 'ignore', 'pipe'] });
  const ended = new Promise((resolve) => child.on('close', resolve));
  let said = '';
  const address = await new Promise((resolve, reject) => {
    child.on('error', reject);
    child.stderr.on('data', (part) => {
      said += part;
      const found = /DevTools listening on (ws:\S+)\n/.exec(said);
      if (found) resolve(found[1]);
    });
    ended.then(() => reject(new Error(`Chromium ended: ${said.slice(-500)}`)));
  });
  const socket = new WebSocket(address);
  await new Promise((resolve, reject) => socket.on('open', resolve).on('error', reject));
  const waiting = new Map();
  const heard = [];
  let last = 0;
  socket.on('message', (data) => {
    const message = JSON.parse(data);
    const one = waiting.get(message.id);
    waiting.delete(message.id);
    if (one) message.error ? one.reject(new Error(message.error.message)) : one.resolve(message.result);
    else heard.push(message);
  });
  const send = (method, params = {}, sessionId = undefined) => new Promise((resolve, reject) => {
    waiting.set(++last, { resolve, reject });
    socket.send(JSON.stringify({ id: last, method, params, sessionId }));
  });

  const open_page = async (url, { width = 800, height = 1100, before } = {}) => {
    const { targetId } = await send('Target.createTarget', { url: 'about:blank' });
    const { sessionId } = await send('Target.attachToTarget', { targetId, flatten: true });
    const ask = (method, params) => send(method, params, sessionId);
    await ask('Page.enable');
    await ask('Runtime.enable');
    await ask('Log.enable');
    await ask('Emulation.setDeviceMetricsOverride', { width, height, deviceScaleFactor: 1, mobile: false });
    if (before) await ask('Page.addScriptToEvaluateOnNewDocument', { source: before });
    await ask('Page.navigate', { url });
    const value = async (expression) => {
      const { result, exceptionDetails } = await ask('Runtime.evaluate', { expression, awaitPromise: true, returnByValue: true });
      if (exceptionDetails) throw new Error(exceptionDetails.exception?.description ?? exceptionDetails.text);
      return result.value;
    };
    // Until the expression gives something; what stands on the page instead is the complaint.
    const until = async (expression) => {
      for (const end = Date.now() + patience_ms; Date.now() < end;) {
        const found = await value(expression).catch(() => undefined);
        if (found) return found;
        await new Promise((resolve) => setTimeout(resolve, 20));
      }
      throw new Error(`never: ${expression}; the page says: ${await value('document.body.innerText')}`);
    };
    const press = async (key) => {
      const code = { Tab: 9, Enter: 13, ' ': 32 }[key];
      await ask('Input.dispatchKeyEvent', { type: 'keyDown', key, code: key, windowsVirtualKeyCode: code, text: key === 'Enter' ? '\r' : key === ' ' ? ' ' : undefined });
      await ask('Input.dispatchKeyEvent', { type: 'keyUp', key, code: key, windowsVirtualKeyCode: code });
    };
    const type = (text) => ask('Input.insertText', { text });
    const picture = async () => Buffer.from((await ask('Page.captureScreenshot', { format: 'png' })).data, 'base64');
    const complaints = () => heard.filter((one) => one.sessionId === sessionId && (one.method === 'Runtime.exceptionThrown'
      || (one.method === 'Log.entryAdded' && one.params.entry.level === 'error'))).map((one) => JSON.stringify(one.params).slice(0, 300));
    return { value, until, press, type, picture, complaints };
  };
  const close = async () => {
    socket.close();
    child.kill();
    await ended;
    rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
  };
  return { open_page, close };
};
