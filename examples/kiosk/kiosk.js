// One session, one exam, one question at a time. Each answer is sent as it is given and counts once the sidecar has said so; the
// same request is sent again after "Try again". Nothing is kept in the browser, and the page forgets after a minute.

const main = document.getElementById('main');
const say = (id, text) => { document.getElementById(id).textContent = text; };
const forget_ms = 60000;
const warn_ms = 40000;

let token;    // of this page's session; a link's code is good once
let line;     // the connection
let exam;     // {id, revision, complaint, side}
let steps = [];
let place = 0;  // of the question that is shown
let texts = new Map();
let kept = new Map();  // item -> {entry, words}: what the sidecar said is on disk
let clock;             // until the page forgets
let warned = false;    // that it soon will

// ---- what is on the screen

const element = (name, attributes = {}, ...children) => {
  const made = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) {
    if (key.startsWith('on')) made.addEventListener(key.slice(2), value);
    else if (value !== false && value !== undefined) made.setAttribute(key, value === true ? '' : value);
  }
  made.append(...children);
  return made;
};
const button = (text, action, kind = '') => element('button', { type: 'button', class: kind, onclick: action }, text);

const show = (title, ...children) => {
  const heading = element('h1', { tabindex: '-1' }, title);
  warned = false;
  main.className = '';
  main.replaceChildren(heading, ...children);
  heading.focus();
};
const warn = (title, ...children) => {
  show(title, ...children.map((one) => (typeof one === 'string' ? element('p', {}, one) : one)));
  main.className = 'warn';
};
const count_kept = () => `${kept.size} ${kept.size === 1 ? 'answer is' : 'answers are'} kept.`;

// ---- the sidecar

const asked = (error, ...codes) => (error.data?.faults ?? []).some((one) => codes.includes(one.code));

const open_line = (entry) => new Promise((resolve, reject) => {
  const socket = new WebSocket(`ws://${location.host}/rpc`);
  const waiting = new Map();
  let last = 0;
  const call = (method, params = {}) => new Promise((good, bad) => {
    waiting.set(++last, { good, bad });
    socket.send(JSON.stringify({ jsonrpc: '2.0', id: last, method, params }));
  });
  socket.onmessage = ({ data }) => {
    const { id, result, error } = JSON.parse(data);
    const one = waiting.get(id);
    waiting.delete(id);
    if (one) error ? one.bad(error) : one.good(result);
  };
  socket.onopen = () => call('session.open', { ...entry, client: 'kiosk page', protocol: 1 }).then((session) => {
    token = session.token ?? token;
    resolve({ call, scope: session.scope, exam: session.exam, end: () => { socket.onclose = null; socket.close(); } });
  }, reject);
  socket.onclose = () => {
    reject({ lost: true });
    for (const { bad } of waiting.values()) bad({ lost: true });
    if (line) lost();
  };
});

// Every way a call can fail has its own screen; where it helps, the very same call can be sent again.
const failed = (error, again) => {
  const retry = element('div', { class: 'choices' }, button('Try again', again, 'main'));
  const unkept = exam ? ['This answer is not kept yet.'] : [];
  if (error.lost) return lost();
  switch (error.code) {
    case 4:
      return warn('The record is locked', ...unkept, 'Please give the tablet to the staff: an examiner has to unlock the record. Then try again.', retry);
    case 5:
      return warn('Nothing can be written now', ...unkept, 'Please tell the staff: the record can be read but not written; its disk may be full.', retry);
    case 6:
      if (asked(error, 'token.expired')) return warn('This form is closed', ...unkept, 'Its time is over, or the record was started anew. Please give the tablet to the staff.', ...for_staff());
      if (asked(error, 'examiner.needed')) return warn('Nothing can be written now', ...unkept, 'Please tell the staff: the record was opened for reading only.', retry);
      return warn('This link cannot be used', 'It was used before, or it is too old. Please ask the staff for a new one.');
    case 7:
      return warn('Too much at once', ...unkept, retry);
    default:
      return warn('This could not be kept', ...(error.data?.faults ?? []).map((one) => `${one.hint} (${one.code})`), 'Please tell the staff.', retry);
  }
};

const for_staff = () => (exam ? [element('p', { class: 'mark' }, `For the staff: exam ${exam.id}; add the person to it.`)] : []);

const lost = () => {
  line = undefined;
  stop_clock();
  warn('The connection to the record is lost', ...(exam ? [`${count_kept()} An answer that was on its way may not be.`] : []), 'If it stays lost, please give the tablet to the staff.', ...for_staff(),
    element('div', { class: 'choices' }, button('Try again', go_on, 'main')));
};

// A token has one exam, over all its connections.
const go_on = async () => {
  try {
    line = await open_line({ token });
    if (!exam) return start();
    await read_back();
    touched();
    ask(place);
  } catch (error) {
    error.lost ? lost() : failed(error, go_on);
  }
};

// ---- forgetting

const stop_clock = () => clearTimeout(clock);
const touched = () => {
  if (warned) return;
  stop_clock();
  if (exam) clock = setTimeout(ask_still_there, warn_ms);
};
for (const kind of ['pointerdown', 'keydown', 'input']) addEventListener(kind, touched, true);

const ask_still_there = () => {
  const before = [...main.childNodes];
  const kind = main.className;
  const stay = () => {
    warned = false;
    main.className = kind;
    main.replaceChildren(...before);
    main.querySelector('h1')?.focus();
    touched();
  };
  warn('Is somebody still there?', 'The form closes soon, so that nobody else reads it.', element('div', { class: 'choices' }, button('Yes, go on', stay, 'main')));
  warned = true;
  clock = setTimeout(() => {
    const words = count_kept();
    const staff = for_staff();
    close_form();
    warn('The form was closed', `Nobody answered for a minute. ${words} Please give the tablet back: the staff opens each form with a link of its own.`, ...staff);
  }, forget_ms - warn_ms);
};

// Nobody goes on with what somebody else began: the token ends with the form.
const close_form = () => {
  stop_clock();
  const old = line;
  line = undefined;
  exam = undefined;
  token = undefined;
  old?.call('session.end').catch(() => {}).finally(old.end);
  kept = new Map();
  steps = [];
  say('place', '');
};

// ---- the questions

// What a person can answer alone: the history, as yes or no, one of a list, nought to ten, or in their own words.
const is_asked = (step) => step.item.startsWith('history.') && (['answer', 'choice'].includes(step.control) || step.item === 'history.own_words'
  || (step.control === 'number' && step.refuse?.[0] === 0 && step.refuse?.[1] === 10));
const side_of = (step) => (step.sides.includes('midline') ? 'midline' : exam.side);
const word = (name, otherwise) => texts.get(name) ?? otherwise;

const title_of = (step) => {
  if (step.item === 'history.own_words') return 'In your own words: what brings you here';
  const side = side_of(step);
  return `${word(step.label, step.item)}${side === 'midline' ? '' : `, ${word(`msg.side.${side}`, side)} leg`}`;
};

const ask = (at) => {
  if (at >= steps.length) return finish();
  place = at;
  const step = steps[at];
  const side = side_of(step);
  say('place', `Question ${at + 1} of ${steps.length}`);
  const give = (value, words) => send(at, { item: step.item, side, value, origin: 'self_reported' }, words);
  const pick = (value, words) => {
    const made = button(words, () => give(value, words));
    if (kept.get(step.item)?.words === words) made.setAttribute('aria-pressed', 'true');
    return made;
  };
  const choices = element('div', { class: 'choices' });
  if (step.control === 'answer') {
    choices.append(pick({ kind: 'answer', answer: 'yes' }, word(step.text.yes, 'Yes')), pick({ kind: 'answer', answer: 'no' }, word(step.text.no, 'No')),
      pick({ kind: 'answer', answer: 'unsure' }, 'Not sure'));
  } else if (step.control === 'choice') {
    choices.append(...step.choices.map((one) => pick({ kind: 'choice', choice: one.choice }, word(one.label, one.choice.replaceAll('_', ' ')))));
  } else if (step.control === 'number') {
    choices.classList.add('scale');
    choices.append(...Array.from({ length: 11 }, (_, count) => pick({ kind: 'count', count }, String(count))));
  } else {
    const box = element('textarea', { maxlength: '2000', 'aria-label': 'in your own words' });
    box.value = kept.get(step.item)?.words ?? '';
    const keep = button('Keep this', () => give({ kind: 'text', text: box.value.trim() }, box.value.trim()), 'main');
    const ready = () => { keep.disabled = box.value.trim() === ''; };
    box.addEventListener('input', ready);
    ready();
    choices.classList.add('words');
    choices.append(box, element('p'), keep);
  }
  const back = button('Back', () => ask(at - 1), 'quiet');
  back.disabled = at === 0;
  show(title_of(step), choices, element('div', { class: 'choices' }, button('I would rather not say', () => give({ kind: 'not_done', reason: 'declined' }, 'not said'), 'quiet'),
    button('Leave it open', () => ask(at + 1), 'quiet'), back));
};

const send = (at, finding, words, request = crypto.randomUUID()) => {
  const held = kept.get(finding.item);
  if (held) finding.replaces = [held.entry];
  for (const one of main.querySelectorAll('button')) one.disabled = true;
  const params = { exam: exam.id, seen: exam.revision, request, findings: [finding] };
  const attempt = () => line.call('finding.record', params).then((reply) => {
    exam.revision = reply.revision;
    kept.set(finding.item, { entry: reply.recorded[0].entry, words });
    reply.tell_staff ? call_staff(at) : ask(at + 1);
  }, (error) => {
    if (error.code !== 2) return failed(error, attempt);
    // A question, no refusal: nothing is kept until the person has looked again.
    const sure = () => send(at, { ...finding, confirmed: error.data.faults.map((one) => one.code) }, words, request);
    show('Please look at this answer again', element('p', {}, `${title_of(steps[at])}: you answered “${words}”. Is that what you mean?`),
      element('div', { class: 'choices' }, button('Yes, it is so', sure), button('No, change it', () => ask(at))));
  });
  attempt();
};

const call_staff = (at) => warn('Please tell the staff now', 'What you have just answered has to be looked at without waiting. Your answer is kept.',
  element('div', { class: 'choices' }, button('The staff knows; go on', () => ask(at + 1), 'main')));

const finish = () => line.call('exam.read', { exam: exam.id }).then(({ exam: read }) => {
  say('place', '');
  // As the record has it, in the order it was asked.
  const found = new Map((read.findings ?? []).map((one) => [one.item, one]));
  const open = steps.filter((step) => !found.has(step.item)).length;
  const rows = steps.filter((step) => found.has(step.item)).flatMap((step) => [element('dt', {}, title_of(step)),
    element('dd', {}, kept.get(step.item)?.words ?? '', element('div', { class: 'mark' }, found.get(step.item).origin === 'self_reported' ? 'reported, not examined' : found.get(step.item).origin))]);
  show('Thank you', element('p', {}, `${count_kept()} ${open} left open: the staff will ask. Please give the tablet back. Nobody has examined you yet.`), element('dl', {}, ...rows),
    ...for_staff(), element('div', { class: 'choices' }, button('Back to the questions', () => ask(0), 'quiet'), button('Close the form', done, 'main')));
}, (error) => failed(error, finish));

const done = () => {
  const words = count_kept();
  const staff = for_staff();
  close_form();
  show('The form is closed', element('p', {}, `Thank you. ${words} Please give the tablet back.`), ...staff);
};

// ---- the beginning

const fill = async ({ exam: read, revision }) => {
  exam = { id: read.exam, revision, side: read.side };
  const form = await line.call('form.describe', { complaint: read.complaint, exam: exam.id, language: 'en' });
  texts = new Map(form.texts.map((one) => [one.message, one.text]));
  steps = form.positions.flatMap((one) => one.steps).filter(is_asked).filter(side_of);
  await read_back();
  touched();
  ask(0);
};

// What the record holds counts, not what this page believes.
const read_back = async () => {
  const { exam: read, revision } = await line.call('exam.read', { exam: exam.id });
  exam.revision = revision;
  const before = kept;
  const own = (read.findings ?? []).filter((one) => one.origin === 'self_reported');
  kept = new Map(own.map((one) => [one.item, { entry: one.entry, words: before.get(one.item)?.words }]));
};

const open_exam = (complaint, side, request) => {
  const attempt = () => line.call('exam.open', { complaint, side, setting: 'outreach', request, offset_min: -new Date().getTimezoneOffset() })
    .then(fill).catch((error) => failed(error, attempt));
  attempt();
};

const start = async () => {
  try {
    const { state, ledger_kind } = await line.call('health.check');
    say('kind', ledger_kind === 'clinic' ? '' : `${ledger_kind.toUpperCase()}: invented people only`);
    if (line.scope !== 'kiosk') return warn('This link opens more than a kiosk may', 'Make one with limbledger token make --ledger DIR --scope kiosk --once.');
    if (line.exam) return await fill(await line.call('exam.read', { exam: line.exam }));
    if (state === 'locked') return failed({ code: 4 }, start);
    if (state === 'read_only') return failed({ code: 5 }, start);
    const { complaints } = await line.call('catalogue.read', { items: ['history.own_words'] });
    const why = element('select', {}, ...complaints.map((one) => element('option', { value: one, selected: one === 'acute_knee' }, one.replaceAll('_', ' '))));
    const side = (name) => element('label', { class: 'tick' }, element('input', { type: 'radio', name: 'side', value: name }), name);
    const known = element('input', { type: 'checkbox' });
    const go = button('Hand over', () => open_exam(why.value, main.querySelector('[name=side]:checked').value, crypto.randomUUID()), 'main');
    const ready = () => { go.disabled = !(known.checked && main.querySelector('[name=side]:checked')); };
    show('For the staff: before you hand over', element('label', {}, 'Why the person is here', why),
      element('fieldset', { onchange: ready }, element('legend', {}, 'Which leg'), side('left'), side('right')),
      element('label', { class: 'tick', onchange: ready }, known, 'I asked for two things that name this person, such as name and birth'),
      element('div', { class: 'choices' }, go));
    ready();
  } catch (error) {
    failed(error, start);
  }
};

const code = /#once=([\w-]+)/.exec(location.hash)?.[1];
history.replaceState(null, '', location.pathname);
if (code) {
  open_line({ once: code }).then((opened) => {
    line = opened;
    start();
  }, (error) => failed(error, () => location.reload()));
} else {
  warn('This page needs its link', 'Please ask the staff for a new one: a link opens the page once.');
}
