// How the description looks: one column of names beside one of text, names above the text where the screen is narrow. Contrast of
// text is 7 to 1 or more (WCAG 2.2, 1.4.6); what is touched is 44 px high (2.5.5).
#include "rpc/emit/page/page.hpp"

namespace limbledger::rpc {

std::string_view description_style() {
  return R"css(:root { --paper: #fbfaf6; --ink: #1d2420; --line: #b9bdb0; --deep: #143d35; --tint: #e9efe6; --warm: #7a2e0e; }
* { box-sizing: border-box; }
html { scroll-padding-top: 1rem; }
body { margin: 0; padding: 0 1.25rem 4rem; background: var(--paper); color: var(--ink); font: 1.0625rem/1.55 Georgia, "DejaVu Serif", serif; }
code, pre, textarea, input, select, button, nav { font-family: "DejaVu Sans", Verdana, sans-serif; font-size: .92em; }
code, pre, textarea { font-family: "DejaVu Sans Mono", Consolas, monospace; }
a { color: var(--deep); }
:focus-visible { outline: 3px solid var(--warm); outline-offset: 2px; }
.skip { position: absolute; left: -200rem; }
.skip:focus { position: static; }
h1 { font-size: 1.9rem; margin: 1.2rem 0 .3rem; }
h2 { font-size: 1.5rem; margin: 2.6rem 0 .6rem; padding-bottom: .2rem; border-bottom: 3px solid var(--deep); }
h3 { font-size: 1.2rem; margin: 2rem 0 .3rem; }
h4 { font-size: 1rem; margin: 1.1rem 0 .3rem; color: var(--deep); }
#banner { border-left: .6rem solid var(--deep); background: var(--tint); padding: .7rem 1rem; margin: 1rem 0; }
.demonstration #banner { border-color: var(--warm); background: #fdeedd; }
article { border-top: 1px solid var(--line); }
article[hidden], li[hidden] { display: none; }
.purpose { font-size: 1.1em; margin: .2rem 0 .6rem; }
.facts { display: grid; grid-template-columns: max-content 1fr; gap: .1rem 1rem; margin: .4rem 0; }
.facts dt { color: var(--deep); }
.facts dd { margin: 0; }
.wide { overflow-x: auto; }
table { border-collapse: collapse; width: 100%; }
th, td { text-align: left; vertical-align: top; padding: .3rem .7rem .3rem 0; border-bottom: 1px solid var(--line); }
thead th { color: var(--deep); font-weight: normal; }
tbody th { font-weight: normal; white-space: nowrap; }
pre { background: var(--tint); padding: .7rem 1rem; overflow: auto; max-height: 24rem; margin: .3rem 0; }
summary { cursor: pointer; padding: .6rem 0; min-height: 44px; }
.try { border: 2px solid var(--warm); padding: .2rem 1rem 1rem; margin: 1rem 0; background: #fff; }
.try h4 { color: var(--warm); }
textarea { width: 100%; padding: .5rem; border: 1px solid var(--ink); background: #fff; color: var(--ink); }
input, select, button { min-height: 44px; padding: .3rem .8rem; border: 1px solid var(--ink); background: #fff; color: var(--ink); max-width: 100%; }
button { background: var(--deep); color: #fff; border-color: var(--deep); cursor: pointer; }
button[disabled] { background: #55605a; }
nav ul { list-style: none; margin: 0; padding: 0; }
nav a { display: inline-block; padding: .75rem .3rem .5rem; min-height: 44px; min-width: 44px; }
nav .parts li { display: inline-block; margin-right: .5rem; }
nav .methods > li { break-inside: avoid; margin-top: .6rem; }
nav input { width: 100%; }
@media (min-width: 62rem) {
  body { display: grid; grid-template: auto 1fr / 17rem minmax(0, 60rem); column-gap: 2.5rem; }
  .skip, header { grid-column: 1 / -1; }
  nav { position: sticky; top: 0; max-height: 100vh; overflow-y: auto; padding-right: .5rem; }
}
@media (max-width: 61.99rem) {
  nav .methods { columns: 3 13rem; border-top: 1px solid var(--line); }
}
@media print { nav, .try { display: none; } }
)css";
}

std::string_view description_script() {
  return R"js(// Finds methods by a word, and on a demonstration in memory tries them: each form sends its params as they stand in it.
const find = document.getElementById('find');
const found = document.getElementById('found');
const articles = [...document.querySelectorAll('#methods article')];
find.addEventListener('input', () => {
  const words = find.value.toLowerCase().split(/\s+/).filter(Boolean);
  let shown = 0;
  for (const article of articles) {
    const text = `${article.id} ${article.querySelector('.purpose').textContent} ${[...article.querySelectorAll('th')].map((one) => one.textContent).join(' ')}`.toLowerCase();
    article.hidden = !words.every((word) => text.includes(word));
    shown += article.hidden ? 0 : 1;
    document.querySelector(`nav .methods a[href="#${article.id}"]`).parentElement.hidden = article.hidden;
  }
  for (const group of document.querySelectorAll('nav .methods > li')) group.hidden = !group.querySelector('li:not([hidden])');
  found.textContent = words.length ? `${shown} of ${articles.length}` : '';
});

const data = document.getElementById('day');
if (data) {
  document.body.className = 'demonstration';
  const { kept, lines } = JSON.parse(data.textContent);
  const session = document.getElementById('session');
  const store_name = 'limbledger demonstration';
  let token = sessionStorage.getItem(store_name) ?? undefined;
  // What ends the page's own session, and what waits for others, is no part of a day that is played.
  const left_out = ['session.open', 'session.end', 'token.end', 'health.check', 'rpc.discover'];

  const call = async (method, params) => {
    const reply = await fetch('/rpc', {
      method: 'POST',
      headers: { 'Content-Type': 'application/json', ...(token ? { Authorization: `Bearer ${token}` } : {}) },
      body: JSON.stringify({ jsonrpc: '2.0', id: 1, method, params }),
    });
    return reply.json();
  };
  const at = (value, pointer) => pointer.split('/').slice(1).reduce((inner, step) => inner?.[step], value);
  // Open places become what was kept; a request is a new one each time, so that it writes.
  const filled = (value, name) => {
    if (Array.isArray(value)) return value.map((one) => filled(one));
    if (value && typeof value === 'object') return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, filled(one, key)]));
    if (name === 'request') return crypto.randomUUID();
    return typeof value === 'string' && value.startsWith('@') && kept[value.slice(1)] !== undefined ? kept[value.slice(1)] : value;
  };
  const keep = (line, result) => {
    for (const [name, pointer] of Object.entries(line.keep)) {
      const value = at(result, pointer);
      if (value !== undefined) kept[name] = value;
    }
  };
  const params_of = (line) => filled(line.params);
  const open_places = (params) => [...JSON.stringify(params).matchAll(/"@(\w+)"/g)].map((one) => one[1]);

  const say_session = () => {
    session.textContent = token ? 'A session is open: every method below can be tried.' : 'Open the link that the program printed to try the methods; it is good once, within two minutes.';
    for (const button of document.querySelectorAll('.try button')) button.disabled = !token;
  };
  const show = (form, reply) => {
    const output = form.querySelector('output');
    const title = document.createElement('p');
    title.textContent = reply.error ? `Error ${reply.error.code}: ${reply.error.message}` : 'Result';
    const text = document.createElement('pre');
    text.tabIndex = 0;
    text.textContent = JSON.stringify(reply.error ?? reply.result, null, 2);
    output.replaceChildren(title, text);
    if (reply.error?.data?.faults?.some((one) => one.code === 'token.expired' || one.code === 'token.unknown')) {
      token = undefined;
      sessionStorage.removeItem(store_name);
      say_session();
    }
  };
  const say = (form, words) => {
    const text = document.createElement('p');
    text.textContent = words;
    form.querySelector('output').replaceChildren(text);
  };

  for (const form of document.querySelectorAll('.try')) {
    const method = form.dataset.method;
    const choice = form.querySelector('select');
    const area = form.querySelector('textarea');
    const line = () => lines[Number(choice.value)];
    const fill = () => {
      const params = params_of(line());
      area.value = JSON.stringify(params, null, 2);
      area.rows = Math.min(18, area.value.split('\n').length + 1);
      const open = open_places(params);
      if (open.length) say(form, `Open: ${open.join(', ')}. "Play the day up to here" fills them, or write your own.`);
      else form.querySelector('output').replaceChildren();
    };
    choice.addEventListener('change', fill);
    fill();
    form.addEventListener('submit', async (event) => {
      event.preventDefault();
      let params;
      try {
        params = JSON.parse(area.value.trim() || '{}');
      } catch (error) {
        return say(form, `This is no JSON: ${error.message}`);
      }
      try {
        const reply = await call(method, params);
        if (reply.result) keep(line(), reply.result);
        if (method === 'session.end' && reply.result) { token = undefined; sessionStorage.removeItem(store_name); say_session(); }
        show(form, reply);
      } catch {
        say(form, 'No answer came. The program may have ended; a writing call may be sent again with the same request.');
      }
    });
    form.querySelector('.day').addEventListener('click', async (event) => {
      event.target.disabled = true;
      try {
        for (const [index, one] of lines.slice(0, Number(choice.value)).entries()) {
          if (left_out.includes(one.method)) continue;
          const params = params_of(one);
          if (params.wait_ms) params.wait_ms = 0;
          const reply = await call(one.method, params);
          if (reply.error) {
            show(form, reply);
            return;
          }
          keep(one, reply.result);
          say(form, `${index + 1} of ${choice.value}: ${one.method}`);
        }
        fill();
        say(form, 'Played. What is open above stands filled; Send makes this call.');
        area.focus();
      } catch {
        say(form, 'No answer came. The program may have ended.');
      } finally {
        event.target.disabled = !token;
      }
    });
  }

  const code = /#once=([\w-]+)/.exec(location.hash);
  if (code) {
    history.replaceState(null, '', location.pathname);
    call('session.open', { once: code[1], client: 'description page', protocol: 1 }).then(({ result }) => {
      token = result?.token ?? token;
      if (token) sessionStorage.setItem(store_name, token);
      say_session();
    }, say_session);
  } else {
    say_session();
  }
}
)js";
}

}  // namespace limbledger::rpc
