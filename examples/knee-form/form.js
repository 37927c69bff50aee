// One exam of a left knee. Every answer is a call of its own: nothing that was told as recorded is lost, and what is asked back holds
// nothing else up.

const form = document.getElementById('form');
const alerts = document.getElementById('alerts');
let token;
let exam;
let seen;

const call = async (method, params) => {
  const reply = await fetch('/rpc', {
    method: 'POST',
    headers: { 'Content-Type': 'application/json', ...(token ? { Authorization: `Bearer ${token}` } : {}) },
    body: JSON.stringify({ jsonrpc: '2.0', id: 1, method, params }),
  });
  const { result, error } = await reply.json();
  if (error) throw error;
  return result;
};
const element = (name, attributes = {}, ...children) => {
  const made = Object.assign(document.createElement(name), attributes);
  made.append(...children);
  return made;
};

// What each control sends: the table "What each control sends" of /description.
const value_of = (step, typed) => {
  switch (step.control) {
    case 'answer': return { kind: 'answer', answer: typed };
    case 'test': return { kind: 'test', result: typed };
    case 'grade': return { kind: 'grade', scale: step.scale, grade: typed };
    case 'choice': return { kind: 'choice', choice: typed };
    case 'choices': return { kind: 'choices', choices: typed.split(' ') };
    case 'angle': return step.value === 'arc' ? { kind: 'angle', entered: typed, order: step.orders[0] } : { kind: 'angle', toward_deg: Number(typed) };
    case 'text': return { kind: 'text', text: typed };
    default: return { kind: step.value, [step.unit ?? 'count']: Number(typed) };
  }
};
const options_of = (step, words) => {
  if (step.control === 'answer') return [['yes', 'yes'], ['no', 'no'], ['unsure', 'not sure']];
  if (step.control === 'test') return [['positive', 'positive'], ['negative', 'negative'], ['equivocal', 'in between']];
  return step.choices?.map((one) => [one.grade ?? one.choice, words.get(one.label) ?? one.label]);
};

// The reply to a finding has each alert with its words, and what to do until help comes.
const show_alerts = (all) => alerts.replaceChildren(...all.map((one) =>
  element('p', {}, `${one.text ?? one.alert}${one.state === 'raised' ? ` ${(one.meanwhile_text ?? []).join('; ')}` : ` (${one.state})`}`)));

const record = async (step, side, value, state, request, answered = {}) => {
  const finding = { item: step.item, side, value, ...(step.instruments ? { instrument: step.instruments[0] } : {}), ...(step.positions ? { position: step.positions[0] } : {}), ...answered };
  state.textContent = 'sending';
  try {
    const reply = await call('finding.record', { exam, seen, request, findings: [finding], language: 'en' });
    seen = reply.revision;
    state.textContent = 'recorded';
    show_alerts(reply.alerts);
  } catch (error) {
    if (error.data === undefined) {
      state.replaceChildren('no answer came ', element('button', { type: 'button', textContent: 'Send again', onclick: () => record(step, side, value, state, request, answered) }));
      return;
    }
    state.replaceChildren(...error.data.faults.map((one) => element('span', {}, `${one.text ?? one.hint} (${one.code}) `)));
    if (error.code === 2) {  // asked back: a person looks, and the same call is sent with the codes, or with why it was done all the same
      const codes = error.data.faults.map((one) => one.code).filter((code) => code !== 'item.withheld');
      const because = element('input', { type: 'text', size: 24, ariaLabel: 'done all the same, because' });
      const withheld = codes.length < error.data.faults.length;
      const again = () => (!withheld || because.value) && record(step, side, value, state, request, {
        ...answered, ...(codes.length ? { confirmed: [...answered.confirmed ?? [], ...codes] } : {}), ...(withheld ? { despite: { how: 'knowingly', because: because.value } } : {}),
      });
      state.append(...(withheld ? ['Done all the same, because ', because] : []), element('button', { type: 'button', textContent: 'It is so', onclick: again }));
    }
  }
};

const draw_step = (step, side, words) => {
  const state = element('span', { className: 'state', role: 'status' });
  const options = options_of(step, words);
  const typed = options
    ? element('select', { multiple: step.control === 'choices' }, ...(step.control === 'choices' ? [] : [element('option', { value: '', textContent: '' })]), ...options.map(([value, text]) => element('option', { value, textContent: text })))
    : element('input', { type: step.control === 'number' ? 'number' : 'text', step: 'any', size: 12 });
  typed.setAttribute('aria-label', `${words.get(step.label)}, ${side}`);
  const text = () => (step.control === 'choices' ? [...typed.selectedOptions].map((one) => one.value).join(' ') : typed.value);
  const send = element('button', { type: 'button', textContent: 'Record', onclick: () => text() && record(step, side, value_of(step, text()), state, crypto.randomUUID()) });
  const field = element('fieldset', {}, element('legend', {}, `${words.get(step.label) ?? step.label}, ${side}${step.unit ? ` (${step.unit})` : ''}`), typed, send, state);
  field.dataset.item = step.item;
  field.dataset.side = side;
  return field;
};

const request = crypto.randomUUID();  // of the opening; sent again, it opens no second exam
const begin = async (injured_on) => {
  const begun = await call('exam.open', { complaint: 'acute_knee', side: 'left', setting: 'outreach', ...(injured_on ? { injured_on } : {}), offset_min: -new Date().getTimezoneOffset(), request, language: 'en' });
  exam = begun.exam.exam;
  seen = begun.revision;
  const described = await call('form.describe', { complaint: 'acute_knee', exam, language: 'en' });
  const words = new Map(described.texts.map((one) => [one.message, one.text]));
  form.replaceChildren(...described.positions.flatMap((position) => [
    element('h2', {}, words.get(position.label) ?? position.position),
    ...position.steps.flatMap((step) => step.sides.map((side) => draw_step(step, side, words))),
  ]), ...described.withheld.flatMap((one) => [  // not advised now, and still to be recorded where it was done
    element('p', {}, `Not advised now: ${words.get(one.because)}, ${words.get(one.until)}`),
    ...one.step.sides.map((side) => draw_step(one.step, side, words)),
  ]));
};

try {
  const once = /#once=(.+)/.exec(location.hash)?.[1];
  token = once ? undefined : sessionStorage.getItem('token');  // of this tab alone: the page may be loaded again
  const opened = await call('session.open', { ...(once ? { once } : {}), client: 'knee form', protocol: 1, language: 'en' });
  history.replaceState(null, '', location.pathname);
  token = opened.token ?? token;
  sessionStorage.setItem('token', token);
  // When it happened is asked first: alerts and rules rest on it.
  const day = element('input', { type: 'text', id: 'day', size: 12 });
  const told = element('p', { role: 'status' });
  form.replaceChildren(
    element('label', { htmlFor: 'day' }, 'Left knee, injured on (2026-11-23, or 2026-11, or 2026) '), day, ' ',
    element('button', { type: 'button', textContent: 'Begin', onclick: () => begin(day.value).catch((error) => told.replaceChildren(error.data?.faults.map((one) => one.text ?? one.hint).join(' ') ?? 'no answer came')) }), told,
  );
} catch (error) {
  form.replaceChildren(element('p', {}, error.data?.faults?.map((one) => one.text ?? 'Open this form by a new link from the program.').join(' ') ?? 'No session: open the link that the program printed.'));
}
