// A short talk with the real program, by two independent clients, over both framings. The ledger is a demonstration
// one in a fresh folder; all people are invented. Ends with the program's own verification of what was written.

import { spawn, spawnSync } from 'node:child_process';
import { randomUUID } from 'node:crypto';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { JSONRPCClient } from 'json-rpc-2.0';
import { StreamMessageReader, StreamMessageWriter, createMessageConnection } from 'vscode-jsonrpc/node';
import { Peer } from './peer.mjs';

const start = ([file, ...rest], ledger, framing) => [
  file, ...rest, 'serve', '--ledger', ledger, '--stdio', framing, '--scope', 'examiner',
];

// A client is a function (method, params) -> result that throws an object with `code` and `data`.
const by_headers = (command) => {
  const child = spawn(command[0], command.slice(1), { stdio: ['pipe', 'pipe', 'inherit'] });
  const connection = createMessageConnection(new StreamMessageReader(child.stdout), new StreamMessageWriter(child.stdin));
  connection.listen();
  const exited = new Promise((resolve) => child.on('close', resolve));
  return {
    ask: (method, params) => connection.sendRequest(method, params),
    stop: () => {
      child.stdin.end();
      return exited;
    },
  };
};

const by_lines = (command) => {
  const peer = new Peer(command, 'lines');
  const client = new JSONRPCClient(async (request) => {
    peer.send(JSON.stringify(request));
    const text = await peer.next();
    if (text === undefined) throw new Error('the program closed its output');
    client.receive(JSON.parse(text));
  });
  return {
    ask: (method, params) => client.request(method, params),
    stop: () => peer.close(),
  };
};

// The fault a call must give; its code, and what its data must say.
export const fault = async (ask, method, params) => {
  try {
    const result = await ask(method, params);
    return { message: `a result: ${JSON.stringify(result).slice(0, 200)}` };
  } catch (error) {
    return error;
  }
};

export const has_faults = (error, code, path) => {
  const faults = error.data?.faults;
  if (!Array.isArray(faults) || typeof error.data.retry !== 'boolean') return false;
  return faults.some((one) => one.code === code && (path === undefined || one.path === path));
};

const id_of = (reply, thing) => (typeof reply[thing] === 'string' ? reply[thing] : reply[thing]?.[thing]);
const revision_of = (reply, thing) => reply.revision ?? reply[thing]?.revision;

export const talk = async (count, client, ask, label) => {
  const check = (name, action) => count.check(`${label}: ${name}`, action);
  let person;
  let exam;
  let revision;
  await check('health.check says ready', async () => {
    const health = await ask('health.check', {});
    return health.state === 'ready' || `state ${health.state}`;
  });
  await check('rpc.discover gives an OpenRPC document that lists itself', async () => {
    const document = await ask('rpc.discover', {});
    return /^1\./.test(document.openrpc) && document.methods.some(({ name }) => name === 'rpc.discover');
  });
  await check('catalogue.read gives items', async () => (await ask('catalogue.read', { region: 'knee' })).items.length > 0);
  const registering = {
    request: randomUUID(), names: [{ text: 'Wulan Invented' }], birth: { date: '1971' }, sex: 'female', norm_sex: 'female',
  };
  await check('person.register gives a person', async () => {
    const reply = await ask('person.register', registering);
    person = id_of(reply, 'person');
    return /^[a-z2-7]{26}$/.test(person) || JSON.stringify(reply).slice(0, 200);
  });
  await check('the same request again gives the same person', async () => {
    const reply = await ask('person.register', registering);
    return id_of(reply, 'person') === person && reply.repeat === true;
  });
  await check('the same request with other params is refused', async () => {
    const error = await fault(ask, 'person.register', { ...registering, sex: 'male' });
    return has_faults(error, 'request.reused') || error.message;
  });
  await check('exam.open gives an open exam', async () => {
    const reply = await ask('exam.open', {
      request: randomUUID(), person, complaint: 'free', setting: 'outreach', side: 'left',
      injured_on: '2026-11-23',
    });
    exam = id_of(reply, 'exam');
    revision = revision_of(reply, 'exam');
    return (/^[a-z2-7]{26}$/.test(exam) && Array.isArray(revision)) || JSON.stringify(reply).slice(0, 200);
  });
  const flexion = (deg) => ({
    item: 'knee.flexion_active', side: 'left', value: { kind: 'angle', deg }, instrument: 'goniometer_long', position: 'supine',
  });
  await check('finding.record records two findings', async () => {
    const reply = await ask('finding.record', {
      request: randomUUID(), exam, seen: revision,
      findings: [flexion(118.5), { item: 'knee.joint_line_medial_tender', side: 'left', value: { kind: 'answer', answer: 'yes' } }],
    });
    const seen = revision;
    revision = revision_of(reply, 'exam');
    return (reply.recorded.length === 2 && JSON.stringify(revision) !== JSON.stringify(seen)) || JSON.stringify(reply).slice(0, 200);
  });
  await check('an impossible flexion is refused with its path', async () => {
    const error = await fault(ask, 'finding.record', { request: randomUUID(), exam, seen: revision, findings: [{ ...flexion(190), side: 'right' }] });
    return (error.code === 1 && has_faults(error, 'value.out_of_range', '/findings/0/value/deg')) || `${error.code} ${JSON.stringify(error.data ?? error.message)}`;
  });
  await check('an unlikely flexion is asked back once', async () => {
    const unlikely = { ...flexion(168), side: 'right' };
    const error = await fault(ask, 'finding.record', { request: randomUUID(), exam, seen: revision, findings: [unlikely] });
    return (error.code === 2 && has_faults(error, 'value.unusual')) || `${error.code} ${JSON.stringify(error.data ?? error.message)}`;
  });
  await check('exam.read gives both findings back', async () => {
    const reply = await ask('exam.read', { exam });
    const findings = reply.findings ?? reply.exam.findings;
    return findings.length === 2 && findings.some(({ value }) => value.deg === 118.5);
  });
  await check('exam.assess answers', async () => {
    const reply = await ask('exam.assess', { exam });
    const assessment = reply.assessment ?? reply;
    return Array.isArray(assessment.alerts) && Array.isArray(assessment.rules);
  });
  await check('form.describe answers for every complaint, and goes on where an exam stopped; form.write prints one', async () => {
    const { complaints, words } = await ask('catalogue.read', { region: 'knee', words: true });
    for (const complaint of complaints.filter((name) => name !== 'free')) {
      const form = await ask('form.describe', { complaint });
      if (form.positions.length === 0 || form.minimum.length === 0) return `${complaint}: nothing to draw`;
    }
    const going_on = await ask('form.describe', { complaint: 'chronic_knee', exam, minutes: 5, cannot: ['lie_prone', 'walk'] });
    const step = going_on.positions.flatMap(({ steps }) => steps).find(({ item }) => item === 'knee.joint_line_medial_tender');
    if (step?.recorded?.[0]?.side !== 'left') return `not told as recorded: ${JSON.stringify(step)}`;
    const { html } = await ask('form.write', { complaint: 'acute_knee' });
    return (html.startsWith('<!DOCTYPE html>') && words.some(({ label }) => label === 'msg.position.supine')) || html.slice(0, 100);
  });
  await check('an unknown method is -32601', async () => (await fault(ask, 'finding.imagine', {})).code === -32601);
  await check('an unknown member is -32602 and names its path', async () => {
    const error = await fault(ask, 'exam.read', { exam, colour: 'blue' });
    return (error.code === -32602 && has_faults(error, 'params.unknown_member')) || `${error.code} ${JSON.stringify(error.data ?? error.message)}`;
  });
};

// Wraps a client so that all that is said is kept, a line a message.
export const keeping = (ask, lines) => {
  let id = 0;
  return async (method, params) => {
    id += 1;
    lines.push(`> ${JSON.stringify({ jsonrpc: '2.0', id, method, params })}`);
    try {
      const result = await ask(method, params);
      lines.push(`< ${JSON.stringify({ jsonrpc: '2.0', id, result })}`);
      return result;
    } catch (error) {
      const { code, message, data } = error;
      lines.push(`< ${JSON.stringify({ jsonrpc: '2.0', id, error: { code, message, data } })}`);
      throw error;
    }
  };
};

export const program = async (count, command, build) => {
  const folder = mkdtempSync(join(tmpdir(), 'limbledger-talk-'));
  mkdirSync(join(build, 'talks'), { recursive: true });
  try {
    for (const [framing, connect] of [['headers', by_headers], ['lines', by_lines]]) {
      const ledger = join(folder, framing);
      const made = spawnSync(command[0], [...command.slice(1), 'new', ledger, '--demo'], { encoding: 'utf8', input: '' });
      if (!count.note(`${framing}: a demonstration ledger is made`, made.status === 0, made.stderr ?? String(made.error))) continue;
      const client = connect(start(command, ledger, framing));
      const lines = [];
      await talk(count, client, keeping(client.ask, lines), framing);
      writeFileSync(join(build, 'talks', `stdio_${framing}.jsonl`), `${lines.join('\n')}\n`);
      await count.check(`${framing}: the program ends with its input`, async () => (await client.stop()) === 0);
      const verified = spawnSync(command[0], [...command.slice(1), 'verify', ledger], { encoding: 'utf8', input: '' });
      count.note(`${framing}: verify finds nothing wrong`, verified.status === 0, verified.stderr ?? String(verified.error));
    }
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
};
