// A ledger with a passphrase in a scratch folder, a program that serves it, and marked people in it: for the scripts that try
// what must be refused. All people are invented; their names stand nowhere else, so that they can be looked for.

import { spawn, spawnSync } from 'node:child_process';
import { randomUUID } from 'node:crypto';
import { closeSync, existsSync, mkdtempSync, openSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { guard, post } from './network.mjs';

export const passphrase = 'nine invented words nobody would ever guess';
export const marked = ['Zyxwulan Markedname', 'Qurotumo Zweitmark', 'Vlackhome Ford', 'MRN-77-ZQX-41', 'kneecap went yonderways', 'torn markedmeniscus', 'Mamre Markedclinic'];

export const call = (method, params = {}, id = 1) => JSON.stringify({ jsonrpc: '2.0', id, method, params });
export const code_of = (text) => JSON.parse(text).error?.data?.faults?.[0]?.code;

// Runs the program with the passphrase on descriptor 3.
const with_passphrase = (scratch, run) => {
  const file = join(scratch, `words-${randomUUID()}`);
  writeFileSync(file, `${passphrase}\n`, { mode: 0o600 });
  const descriptor = openSync(file, 'r');
  try {
    return run(descriptor);
  } finally {
    closeSync(descriptor);
    rmSync(file);
  }
};

export class Clinic {
  constructor(program) {
    this.program = program;
    this.scratch = mkdtempSync(join(tmpdir(), 'limbledger-clinic-'));
    this.ledger = join(this.scratch, 'ledger');
    this.codes = new Map();
    this.said = '';
    this.made = with_passphrase(this.scratch, (descriptor) => spawnSync(program[0], ['new', this.ledger, '--examiner', 'Amina', '--passphrase-fd', '3'],
      { encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe', descriptor] }));
  }

  // Locked, as a ledger starts.
  async serve(...words) {
    const child = spawn(this.program[0], ['serve', '--ledger', this.ledger, '--http', '0', ...words], { stdio: ['ignore', 'ignore', 'pipe'] });
    this.child = child;
    this.exited = new Promise((resolve) => child.on('close', (code) => resolve(code)));
    const from = this.said.length;
    const ready = new Promise((resolve, reject) => {
      child.stderr.on('data', (part) => {
        this.said += part;
        const now = this.said.slice(from);
        if (now.includes('serving on') && (!words.includes('--once') || now.includes('#once='))) resolve();
      });
      this.exited.then(() => reject(new Error(`ended: ${this.said}`)));
    });
    await guard(ready, 'no address');
    this.sidecar = JSON.parse(readFileSync(join(this.ledger, 'sidecar.json'), 'utf8'));
    this.url = this.sidecar.http;
    this.origin = new URL(this.url).origin;
    this.examiner = this.sidecar.tokens[0].token;
  }

  // The status and what was said; every code is remembered with its number.
  async ask(token, method, params = {}, headers = {}) {
    const reply = await post(this.url, call(method, params), { ...(token ? { Authorization: `Bearer ${token}` } : {}), ...headers });
    return this.noted(reply);
  }

  noted(reply) {
    const { error, result } = reply.text ? JSON.parse(reply.text) : {};
    for (const { code } of error?.data?.faults ?? []) this.codes.set(code, error.code);
    return { status: reply.status, code: error?.data?.faults?.[0]?.code, path: error?.data?.faults?.[0]?.path, result, error, text: reply.text };
  }

  async need(token, method, params = {}) {
    const { result, text } = await this.ask(token, method, params);
    if (!result) throw new Error(`${method}: ${text}`);
    return result;
  }

  unlock() {
    return this.need(this.examiner, 'ledger.unlock', { examiner: 'Amina', passphrase });
  }

  // One marked person with an exam, a second exam of nobody, and a place.
  async fill() {
    const { person } = await this.need(this.examiner, 'person.register', {
      request: randomUUID(), names: [{ text: marked[0] }, { text: marked[1] }], birth: { date: '1971-05-12' }, sex: 'female', home: marked[2], identifiers: [{ issuer: 'clinic K', text: marked[3] }],
    });
    this.person = person.person;
    await this.need(this.examiner, 'place.amend', { request: randomUUID(), changes: { name: marked[6] } });
    const opened = await this.need(this.examiner, 'exam.open', { request: randomUUID(), person: this.person, complaint: 'acute_knee', side: 'left', setting: 'outreach' });
    this.exam = opened.exam.exam;
    this.seen = opened.revision;
    await this.write('finding.record', { findings: [{ item: 'history.own_words', side: 'midline', value: { kind: 'text', text: marked[4] } }, { item: 'history.pop', side: 'left', value: { kind: 'answer', answer: 'yes' } }] });
    await this.write('impression.record', { impression: { text: marked[5] }, replaces: [] });
    const second = await this.need(this.examiner, 'exam.open', { request: randomUUID(), complaint: 'free', side: 'right', setting: 'outreach' });
    this.second = second.exam.exam;
    this.second_seen = second.revision;
  }

  async write(method, params) {
    const reply = await this.need(this.examiner, method, { exam: this.exam, seen: this.seen, request: randomUUID(), ...params });
    this.seen = reply.revision;
    return reply;
  }

  log() {
    return ['', '.1', '.2'].map((ending) => join(this.ledger, 'log', `limbledger${ending}.log`)).filter((file) => existsSync(file)).map((file) => readFileSync(file, 'utf8')).join('');
  }

  stop(signal = 'SIGTERM') {
    this.child.kill(signal);
    return guard(this.exited, 'still running');
  }

  gone() {
    rmSync(this.scratch, { recursive: true, force: true });
  }
}
