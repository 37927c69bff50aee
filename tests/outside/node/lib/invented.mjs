// What the load stages record: an invented person with an exam, and findings that are taken without a question. The values mean
// nobody.

import { randomUUID } from 'node:crypto';

export const request = (method, params = {}, id = 1) => ({ jsonrpc: '2.0', id, method, params });

// One item on one side, in turns; a motion that any adult may have.
const motions = ['knee.flexion_passive', 'knee.flexion_active'];
export const finding = (number, replaces = []) => ({
  item: motions[number % 2], side: number % 4 < 2 ? 'left' : 'right', value: { kind: 'angle', toward_deg: 90 + (number % 40) }, instrument: 'goniometer_long', position: 'supine', replaces,
});

// `ask(method, params)` gives the result or throws.
export const open_exam = async (ask, person) => {
  const opened = await ask('exam.open', { ...(person ? { person } : {}), complaint: 'free', setting: 'outreach', side: 'left', request: randomUUID() });
  return { exam: opened.exam.exam, seen: opened.revision, standing: new Map(), number: 0 };
};

// Records the next finding of an exam, in the place of what stood there.
export const record_next = async (ask, at, ...more) => {
  const numbers = [at.number, ...more.map((_, i) => at.number + i + 1)];
  at.number += numbers.length;
  const findings = numbers.map((number) => finding(number, at.standing.get(number % 4) ?? []));
  const answer = await ask('finding.record', { exam: at.exam, findings, seen: at.seen, request: randomUUID() });
  at.seen = answer.revision;
  numbers.forEach((number, i) => at.standing.set(number % 4, [answer.recorded[i].entry]));
  return answer;
};
