#include "rpc/emit/page/page.hpp"

#include "core/service/call.hpp"
#include "core/wire/html.hpp"
#include "core/wire/number.hpp"
#include "core/wire/schema.hpp"
#include "core/wire/write.hpp"
#include "rpc/access/scope.hpp"
#include "rpc/emit/files.hpp"
#include "rpc/emit/page/faults_of.hpp"
#include "rpc/emit/page/shapes.hpp"
#include "rpc/emit/page/shortened.hpp"
#include "rpc/protocol/envelope.hpp"
#include "rpc/protocol/error.hpp"

#include <algorithm>
#include <utility>
#include <vector>

namespace limbledger::rpc {

namespace {

constexpr std::size_t shown_bytes_max = 6000;  // of an answer: the rest stands in the OpenRPC document

[[nodiscard]] std::string element_text(std::string_view name, std::string_view inside) {
  return "<" + std::string(name) + ">" + std::string(inside) + "</" + std::string(name) + ">";
}

[[nodiscard]] std::string fault_link(std::string_view code) { return "<a href=\"#fault-" + wire::html_escaped(code) + "\"><code>" + wire::html_escaped(code) + "</code></a>"; }

[[nodiscard]] std::string fault_list(std::span<const std::string_view> codes) {
  std::string list;
  for (const std::string_view code : codes) {
    list += (list.empty() ? "" : ", ") + fault_link(code);
  }
  return list;
}

[[nodiscard]] std::string block(std::string_view text) { return "<pre tabindex=\"0\">" + wire::html_escaped(text) + "</pre>"; }

[[nodiscard]] std::string json_block(std::string_view json) {
  std::string laid = laid_out(json);
  if (laid.size() > shown_bytes_max) {
    laid.resize(laid.rfind('\n', shown_bytes_max));
    laid += "\n... the rest stands in what rpc.discover answers";
  }
  return block(laid);
}

// A form is long, and its end says as much as its beginning.
[[nodiscard]] std::string result_block(const Example& example) { return example.method == "form.describe" ? block(shortened(example.result)) : json_block(example.result); }

[[nodiscard]] std::string who_text(const service::Method& method) {
  std::string text = element_text("dt", "May be called by") + element_text("dd", wire::html_escaped(scopes_text(method.scopes)));
  text += element_text("dt", "Writes") + element_text("dd", method.writes ? "yes; the same <code>request</code> again writes nothing new" : "no");
  const bool kiosk = method.of_own_exam && method.scopes.allows(service::Scope::kiosk);
  text += element_text("dt", "While the ledger is locked") +
          element_text("dd", method.while_locked ? "answers" : (kiosk ? "answers a kiosk about its own exam; nobody else" : "<code>ledger.locked</code>"));
  return "<dl class=\"facts\">" + text + "</dl>";
}

[[nodiscard]] std::string call_block(const Example& example) {
  return json_block("{\"jsonrpc\":\"2.0\",\"id\":1,\"method\":" + wire::quoted(example.method) + ",\"params\":" + example.params + "}");
}

[[nodiscard]] std::string examples_of(std::string_view method, std::span<const Example> examples) {
  std::string text;
  for (const Example& example : examples) {
    if (example.method == method) {
      text += "<details><summary>Example: " + wire::html_escaped(example.title) + "</summary><h4>Call</h4>" +
              call_block(example) + "<h4>Result</h4>" + result_block(example) + "</details>";
    }
  }
  return text;
}

[[nodiscard]] std::string walk_section(std::span<const Example> walk) {
  std::string text;
  for (std::size_t at = 0; at < walk.size(); ++at) {
    const Example& example = walk[at];
    const std::string name = wire::html_escaped(example.method);
    text += "<h3>" + std::to_string(at + 1) + ". <a href=\"#" + name + "\"><code>" + name + "</code></a></h3><p>" + wire::html_escaped(example.title) + "</p><details><summary>Call</summary>" +
            call_block(example) + "</details><details><summary>Result</summary>" + block(example.method == "form.describe" ? shortened(example.result) : laid_out(example.result)) + "</details>";
  }
  return text.empty() ? text
                      : "<section id=\"walk\"><h2>A form in eight messages</h2><p>From the link to a signed exam, as it was really answered. Each is a POST to <code>/rpc</code>; all but the first carry the "
                        "token, and that one none. What writes is kept by the form, with its <code>request</code>, until it is answered, and is sent again as it was where no answer came: the same words are then answered with "
                        "<code>\"repeat\":true</code>, and stand once. Of a form's answer one step of each control is shown, and how many more there are.</p>" +
                            text + "</section>";
}

[[nodiscard]] std::string try_form(std::string_view method, std::span<const TryLine> lines) {
  std::string choices;
  for (std::size_t at = 0; at < lines.size(); ++at) {
    if (lines[at].method == method) {
      choices += "<option value=\"" + std::to_string(at) + "\">" + wire::html_escaped(lines[at].title) + "</option>";
    }
  }
  if (choices.empty()) {
    return {};
  }
  const std::string id = "try-" + std::string(method);
  return "<form class=\"try\" data-method=\"" + wire::html_escaped(method) + "\"><h4>Try it on the demonstration</h4><p><label for=\"" + id + "-line\">Start from</label> <select id=\"" + id +
         "-line\">" + choices + "</select> <button type=\"button\" class=\"day\">Play the day up to here</button></p><p><label for=\"" + id + "-params\">Params of " + wire::html_escaped(method) +
         "</label></p><textarea id=\"" + id + "-params\" rows=\"6\" spellcheck=\"false\"></textarea><p><button type=\"submit\">Send</button></p><output aria-live=\"polite\"></output></form>";
}

[[nodiscard]] std::string method_article(const service::Method& method, const PageAsk& ask) {
  const std::string name = wire::html_escaped(method.name);
  std::string text = "<article id=\"" + name + "\"><h3><code>" + name + "</code></h3><p class=\"purpose\">" + wire::html_escaped(method.summary) + "</p>" + who_text(method);
  text += "<h4>Params</h4>" + (method.params().fields.empty() ? element_text("p", "None.") : members_table(method.params(), {}));
  text += "<h4>Result</h4><p>" + kind_text(method.result()) + "</p>";
  const auto codes = faults_of(method);
  text += "<h4>Faults</h4><p>" + (codes.empty() ? std::string("None of its own; ") : fault_list(codes) + "; and ") + "<a href=\"#every-call\">those of every call</a>.</p>";
  text += examples_of(method.name, ask.examples);
  return text + try_form(method.name, ask.try_out) + "</article>";
}

[[nodiscard]] std::string discover_article() {
  return "<article id=\"rpc.discover\"><h3><code>rpc.discover</code></h3><p class=\"purpose\">all of this for programs: an OpenRPC 1.3.2 document</p><dl class=\"facts\"><dt>May be called "
         "by</dt><dd>anybody with a token</dd><dt>Writes</dt><dd>no</dd><dt>While the ledger is locked</dt><dd>answers</dd></dl><h4>Params</h4><p>None.</p><h4>Result</h4><p>an "
         "object as OpenRPC describes it. Of each method <code>x-writes</code>, <code>x-needs-token</code>, <code>x-scopes</code> and "
         "<code>x-while-locked</code> (the scopes that are answered then) say what this page says in words, <code>errors</code> and <code>x-faults</code> what may be answered instead, beside <code>x-faults-of-every-call</code>; <code>x-notifications</code> names what comes unasked.</p><h4>Faults</h4><p>"
         "None of its own; <a href=\"#every-call\">those of every call</a>.</p></article>";
}

[[nodiscard]] std::string faults_section() {
  std::string rows;
  for (const wire::FaultCode& row : wire::fault_codes()) {
    rows += "<tr id=\"fault-" + wire::html_escaped(row.code) + "\"><th scope=\"row\"><code>" + wire::html_escaped(row.code) + "</code></th><td>" + std::to_string(static_cast<int>(row.number)) + "</td><td>" +
            (row.retry ? "yes" : "no") + "</td><td>" + wire::html_escaped(row.meaning) + "</td><td>" + wire::html_escaped(row.hint) + "</td></tr>";
  }
  std::string numbers;
  for (const ErrorNumber& number : error_numbers()) {
    numbers += "<tr><th scope=\"row\">" + std::to_string(static_cast<int>(number.number)) + "</th><td>" + wire::html_escaped(number.message) + "</td></tr>";
  }
  return "<section id=\"faults\"><h2>Errors and their faults</h2><p>An error of JSON-RPC has a number; its <code>data</code> (" + shape_link("ErrorData") +
         ") holds every fault that was found, each with its code, the place in the params, what was expected and what to do. Codes are never renamed. Number 2 is no refusal: "
         "a person is asked, and the same call with the code in <code>confirmed</code> is then taken.</p><table><thead><tr><th scope=\"col\">Number</th><th scope=\"col\">Says</th></tr></thead><tbody>" +
         numbers + "</tbody></table><h3 id=\"every-call\">Faults of every call</h3><p>" + fault_list(faults_of_every_call()) +
         "</p><h3>All faults</h3><div class=\"wide\" tabindex=\"0\"><table><thead><tr><th scope=\"col\">Code</th><th scope=\"col\">Number</th><th scope=\"col\">The same again may be taken</th><th "
         "scope=\"col\">Means</th><th scope=\"col\">What to do</th></tr></thead><tbody>" +
         rows + "</tbody></table></div></section>";
}

template <class T>
[[nodiscard]] std::string limit_rows(const T& limits) {
  std::string rows;
  const wire::Type& type = wire::type_of<T>();
  for (const wire::Field& field : type.fields) {
    const std::int64_t value = field.type().get(field.at(const_cast<T*>(&limits)));
    rows += "<tr><th scope=\"row\"><code>" + wire::html_escaped(field.name) + "</code></th><td>" + std::to_string(value) + "</td><td>" + wire::html_escaped(field.note) + "</td></tr>";
  }
  return rows;
}

[[nodiscard]] std::string limits_section(const PageAsk& ask) {
  std::string rows;
  const auto add = [&](std::string_view name, std::size_t value, std::string_view what) {
    rows += "<tr><th scope=\"row\">" + wire::html_escaped(name) + "</th><td>" + std::to_string(value) + "</td><td>" + wire::html_escaped(what) + "</td></tr>";
  };
  add("message", ask.limits.message_bytes, "bytes of one message");
  add("depth", ask.limits.depth, "lists and objects inside one another");
  add("batch", ask.limits.batch_calls, "calls of one batch");
  return "<section id=\"limits\"><h2>Limits</h2><p>As <a href=\"#health.check\"><code>health.check</code></a> tells them; whatever is over one is refused by a fault that names it, and times are in "
         "milliseconds.</p><div class=\"wide\" tabindex=\"0\"><table><thead><tr><th scope=\"col\">Limit</th><th scope=\"col\">At most</th><th scope=\"col\">Of what</th></tr></thead><tbody>" +
         rows + limit_rows(ask.network) + "</tbody></table></div></section>";
}

// Those that speak in no language, of what an examiner or a kiosk calls.
[[nodiscard]] std::string wordless(std::span<const service::Method> table) {
  std::string list;
  for (const service::Method& method : table) {
    const auto fields = method.params().fields;
    const bool takes = std::any_of(fields.begin(), fields.end(), [](const wire::Field& field) { return field.name == "language"; });
    const bool called = method.scopes.open || method.scopes.allows(service::Scope::examiner) || method.scopes.allows(service::Scope::kiosk);
    if (!takes && called) {
      list += (list.empty() ? "" : ", ") + element_text("code", wire::html_escaped(method.name));
    }
  }
  return list;
}

constexpr std::string_view how_to_call = R"html(<section id="how"><h2>How to call</h2>
<p>Over HTTP a call is a POST to <code>/rpc</code> with <code>Content-Type: application/json</code> and <code>Authorization: Bearer TOKEN</code>; over WebSocket, at the same address, the first call is
<a href="#session.open"><code>session.open</code></a> with the token; over the standard input there is no token. Token and address stand in <code>sidecar.json</code> in the ledger's folder while the program serves.
A page may call only where it is served from: <code>limbledger serve --http 8470 --pages DIR --once</code> serves yours (any port that is free, and the same one each time) and prints a link. Its
<code>#once=CODE</code> is good once, for two minutes; <code>session.open</code> with <code>once</code> gives the token for it; that call goes without <code>Authorization</code>, for an old token there is refused (401) before anything else is read. Without the field at all
<code>health.check</code> and <code>session.open</code> are answered, and of all else the answer, with 200, is the number 6 and <code>token.missing</code>.</p>
<p><b>Scripts stand in files of their own</b> in <code>DIR</code>, beside <code>index.html</code>: a page is served with a policy that keeps the browser from running a script, or a handler in
an attribute, that is written into the HTML. Styles may stand in either. Nothing is loaded from elsewhere. The program says at its start where it finds a script that will not run, one that is loaded from elsewhere or is not there among them.
It reads the files of <code>DIR</code> once, at its start: what is changed or added is served after the next start, and asked for before then it is a 404 with <code>http.path</code>.</p>
<p>A form comes from <a href="#form.describe"><code>form.describe</code></a>: what to draw, position by position. One exam is a short walk: <a href="#exam.open"><code>exam.open</code></a> (with
<code>injured_on</code> where something was hurt: alerts and rules rest on it; where its reply remarks <code>clock_suspect</code>, ask for the day and send it as
<code>examined_on</code>: until then nothing is judged by age), then
<a href="#finding.record"><code>finding.record</code></a> for each answer (its reply has the alerts, which are shown at once), <a href="#exam.assess"><code>exam.assess</code></a> for what the findings support,
<a href="#note.write"><code>note.write</code></a> for a page to read, and <a href="#exam.sign"><code>exam.sign</code></a>. The <a href="#walk">eight messages</a> of it stand below.</p>
<ul><li>What writes takes a <code>request</code>: a UUID that the form makes once and sends again when no answer came. It then writes nothing twice.</li>
<li>What writes to an exam, a person or a place that is there takes <code>seen</code>: the <code>revision</code> of the newest reply about it that was shown. Each reply has the next one. An older one is taken for
another place: two findings that waited with the same <code>seen</code> are both recorded. The number 3 (<code>finding.stale</code>) comes only where that very place was filled, and then <code>data</code> has both,
<code>held</code> (one finding) and <code>sent</code>: keep what was typed at its field, show <code>held</code> beside it, and let a person choose. What they choose is a new call, with <code>replaces</code> (the
<code>entry</code> of <code>held</code>, which was wrong) or <code>"beside":true</code> (both hold). Where several findings stand at one place, the others are in the list <code>held_also</code>. Each is corrected by
itself: <code>replaces</code> names the entry of that one, and the others stay beside it when they had been shown (<code>seen</code>); with <code>"beside":true</code> as well they stay in any case. One that is to stand no more
is taken away with <a href="#finding.withdraw"><code>finding.withdraw</code></a>. What has neither <code>replaces</code> nor <code>beside</code> (<code>exam.sign</code>, <code>letter.write</code> ...) says
<code>revision.old</code> when something came since: read the exam again, show it, and send it with the newer <code>seen</code>. Where two taps sent the same, <code>held</code> has the value of <code>sent</code>, and nothing is left to ask.</li>
<li>A finding without <code>examined_at</code> has the time at which its exam was opened. Send it where that is not the time at which it was found: for a second look, and for what waited while the program was away.
A second look an hour later is no correction, and the first stays as it was: it is sent with <code>"beside":true</code> and its own <code>examined_at</code>, as an example of <a href="#finding.record"><code>finding.record</code></a>
shows. Both then stand, and where they differ the graver one counts for what cannot wait. <code>replaces</code> is for what was written wrongly.</li>
<li>A reply to a writing method means that it is on disk.</li><li>A word that your form does not know is shown as it is, and never read as a no.</li>
<li>Names such as <code>msg.item.knee_lachman.short</code> stand for words, and no form has to show one: <code>form.describe</code> with <code>"language":"en"</code> adds <code>texts</code>, the words of every
name in it, and whatever else names messages takes <code>language</code> too. An alert then has its <code>text</code>, and what to do until help comes in <code>meanwhile_text</code>: in
<code>exam.assess</code>, and at once in the reply of <code>finding.record</code>.</li>
<li>An alert with <code>"interrupts":true</code> and the state <code>raised</code> is shown over whatever is on the screen, once for each number in <code>times_raised</code>: it goes up when the alert becomes
graver, rests on something new, or is answered no more. Keep the highest that was shown of each alert and side. With the state <code>handled</code> nothing is shown again, whatever the number: the answer in
<code>handled</code> still stands under the sentence. Where it stands no more the state is <code>raised</code> again and the answer moves to <code>handled_before</code>. So a knee out of line that was answered by
&quot;splinted, car called&quot; comes again when a pulse of the foot goes, for its sentence is a graver one then, and not when a bruise is found as well. The foot's own alert says no more than that, stands inside
it and is not listed: one box, and one answer for both (<code>handled_also</code> keeps what had been done about it).</li>
<li>A fault has a <code>hint</code> for whoever makes the form and, where the call names a <code>language</code>, a <code>text</code> for whoever is at it. Every method takes one but these, which refuse it as any member they do not know: @wordless@. The <code>path</code> of a fault
is the field. What is refused before a call is read (401, no answer at all) has no <code>text</code>: those two sentences are the page's own.</li>
<li>An error with the number 2 asks back, and nothing is recorded: show its faults, and once a person has looked send the same call with the same <code>request</code> and the codes in
<code>confirmed</code>: of that finding, where a finding was asked about, and else (<code>exam.open</code>, <code>person.register</code>, <code>exam.sign</code> ...) beside the other params. Nothing else of
the call changes; <code>seen</code> may be newer. An answer that is changed instead is a new call: take the asked one out, and give the new one a <code>request</code> of its own. Each call of a form is sent by itself:
somebody is registered once, also where <code>exam.open</code> is asked back after it. <code>item.withheld</code> is answered for otherwise: a danger, or a break that is not settled (also while a rule still asks for answers, as in an exam of a hurt knee that was just opened),
speaks against the step. <code>finding.record</code>, <code>form.describe</code> with the <code>exam</code> and <code>step.suggest</code> go by one judgement. Where it was done all the same, the finding takes
<code>"despite":{"how":"knowingly","because":"..."}</code>; <code>how</code> is <code>before</code>, <code>elsewhere</code> or <code>knowingly</code>. Such a step moves from <code>positions</code> of
<code>form.describe</code> to <code>withheld</code> and stays there whole (<code>step</code>), so that a form can go on asking about it. Where the answer itself is refused (an empty <code>because</code>), the question is still
open: keep the value until the call is answered.</li>
<li>A message is strict JSON in UTF-8. A member that stands twice in one object refuses the whole message (<code>json.duplicate_member</code>), though the grammar allows it: two values for one thing have no place in a record.</li></ul>
<h3 id="again">Stopped and started again</h3>
<p>The program may be stopped, or die, at any moment; what it had answered is on disk. A form that is open then gets no answer, and after the start a 401 with <code>token.unknown</code>: tokens are of one start
of the program. So that nothing is lost or doubled:</p>
<ul><li>Serve at a fixed port (<code>--http 8470</code>). With <code>--http 0</code> the port changes, and with it the origin: what the page had put into <code>localStorage</code> is out of its reach.</li>
<li>Put each writing call into <code>localStorage</code>, params and <code>request</code>, before it is sent, with a number that goes up by one for each: <code>localStorage</code> gives its keys in no order. Take it out once it was answered, or refused for good (not by the numbers 2 to 5, nor for its token, nor a finding by <code>exam.signed</code>). Keep also the exam, its newest <code>revision</code> and the
<code>times_raised</code> that were shown. Never the token there, nor a passphrase anywhere.</li>
<li>So that a page can be loaded again, an examiner's token may stand in <code>sessionStorage</code>: it is of this one tab, goes with it, and only scripts of this sidecar read it, as they could read the page's own
memory. <code>localStorage</code> would keep it for every tab and after the day. A kiosk's stands nowhere: its form ends with <a href="#session.end"><code>session.end</code></a>, and whoever comes next has a link of their own.</li>
<li>On <code>token.unknown</code> (the program was started again) or <code>token.expired</code> ask for a new link; <code>token.used</code> says that the link was opened before, and its session goes on where it was. <code>limbledger token make --ledger DIR --scope examiner --once</code> prints one (<code>DIR</code> is the folder that is served; <code>serve</code> says the whole line at its start), and so does <code>serve --once</code>. On a tablet without a terminal an icon does it:
<code>examples/sidecar/open</code> makes a link and opens the browser with it. A page with a good token makes one itself, for another tab: <a href="#token.make"><code>token.make</code></a> with <code>"once":true</code>. A
link that is opened in the tab where the form is changes nothing but the part behind <code>#</code>: listen for <code>hashchange</code>, and trade its code by <code>session.open</code>.</li>
<li>Then send what was left, unchanged, the lowest number first and each only once the one before it was answered; <b>no <code>exam.sign</code> while a finding of that exam waits</b>, also one that was asked back.
A finding that is answered <code>exam.signed</code> all the same is kept and shown: what was found is added with <a href="#addendum.record"><code>addendum.record</code></a> (<code>findings</code>, under a <code>request</code> of its own), and only then taken out.
Read the exam again (<a href="#exam.read"><code>exam.read</code></a>): its <code>revision</code> is the next <code>seen</code>. A ledger for people is locked after a start;
<code>ledger.locked</code> is answered until <a href="#ledger.unlock"><code>ledger.unlock</code></a>, and nothing that waits need be dropped for it.</li></ul>
<h3>What each control sends</h3>
<p>A step of <code>form.describe</code> has a <code>control</code> to draw and the kind of <code>value</code> to send. Each of its <code>sides</code> is a finding of its own: <code>{"item":ITEM,"side":"left","value":VALUE}</code>,
with one of its <code>instruments</code> and <code>positions</code> where it names any.</p>
<div class="wide" tabindex="0"><table><thead><tr><th scope="col">Control</th><th scope="col">Value</th><th scope="col">Value to send</th></tr></thead><tbody>
<tr><th scope="row">answer</th><td>answer</td><td><code>{"kind":"answer","answer":"yes"}</code>, <code>no</code> or <code>unsure</code>. What a yes and a no say here stands in <code>text.yes</code> and <code>text.no</code> of the step: they are the words on the buttons</td></tr>
<tr><th scope="row">test</th><td>test</td><td><code>{"kind":"test","result":"positive"}</code>, <code>negative</code> or <code>equivocal</code>. <code>text.yes</code> of the step says what positive means, <code>text.no</code> what negative does. With <code>"reproduces":"familiar"</code>
the test brought on the pain that the person comes with, with <code>other</code> another one</td></tr>
<tr><th scope="row">grade</th><td>grade</td><td><code>{"kind":"grade","scale":"mrc/1976","grade":"4"}</code>: <code>scale</code> of the step, <code>grade</code> of one of its <code>choices</code></td></tr>
<tr><th scope="row">choice, choices</th><td>the same</td><td><code>{"kind":"choice","choice":"twist"}</code>; <code>{"kind":"choices","choices":["twist"]}</code>: of the step's <code>choices</code></td></tr>
<tr><th scope="row">angle</th><td>angle</td><td><code>{"kind":"angle","toward_deg":112}</code>, counted in the direction of <code>toward</code></td></tr>
<tr><th scope="row">angle</th><td>angle, read several times</td><td><code>{"kind":"angle","trials":[111,113],"toward_deg":112}</code>: readings are counted along the <code>axis</code>, where the way toward its low end (extension of
knee and hip, plantar flexion, internal rotation, inversion ...) is less than zero. A knee that is read 10 and 12 short of straight is <code>"trials":[10,12],"toward_deg":-11</code> of an extension; 10 and 12 beyond straight is
<code>"trials":[-10,-12],"toward_deg":11</code>. Send both: where they do not agree that is refused (<code>value.disagrees</code>: turn the sign of the readings, or of <code>toward_deg</code>); readings alone that can be meant either way are asked back (<code>value.sign</code>)</td></tr>
<tr><th scope="row">angle</th><td>arc</td><td><code>{"kind":"angle","entered":"5-0-130","order":"extension_zero_flexion"}</code>: <code>order</code> is one of the step's <code>orders</code></td></tr>
<tr><th scope="row">number</th><td>temperature, length, time ...</td><td><code>{"kind":"temperature","cel":37.5}</code>: the member is named as the step's <code>unit</code>; of a count it is <code>count</code></td></tr>
<tr><th scope="row">text</th><td>text</td><td><code>{"kind":"text","text":"..."}</code></td></tr>
<tr><th scope="row">any</th><td>any</td><td>not examined: <code>{"kind":"not_done","reason":"pain"}</code>, a reason of <code>why_not</code>; its words are <code>msg.why.pain</code> of <code>texts</code></td></tr>
<tr><th scope="row">any</th><td>any, beside <code>value</code></td><td>pain while it was examined: <code>"pain":{"score":6,"familiar":true}</code>, with every item; each member may be left out. <code>score</code> is 0 to 10, <code>familiar</code> says
whether it is the pain that the person comes with, whatever was examined; of a test <code>reproduces</code>, in the value, says that the test brought it on. A negative test with either is asked back (<code>finding.contradicts</code>)</td></tr>
<tr><th scope="row">any</th><td>any, beside <code>value</code></td><td>done though it is withheld: <code>"despite":{"how":"elsewhere","because":"..."}</code>, with a <code>because</code> that is never empty; <code>how</code> is <code>before</code> (it was known),
<code>elsewhere</code> (by somebody else) or <code>knowingly</code>, in words <code>msg.despite.before</code> and so on</td></tr>
</tbody></table></div></section>)html";

[[nodiscard]] std::string group_of(std::string_view method) { return std::string(method.substr(0, method.find('.'))); }

[[nodiscard]] std::string contents(const PageAsk& ask) {
  std::vector<std::pair<std::string, std::string>> groups;  // in the order in which each is first named
  const auto add = [&](std::string_view name) {
    const std::string group = group_of(name);
    auto at = std::find_if(groups.begin(), groups.end(), [&](const auto& one) { return one.first == group; });
    if (at == groups.end()) {
      at = groups.insert(groups.end(), {group, {}});
    }
    at->second += "<li><a href=\"#" + wire::html_escaped(name) + "\">" + wire::html_escaped(name) + "</a></li>";
  };
  add(discover_name);
  for (const service::Method& method : ask.table) {
    add(method.name);
  }
  std::string list;
  for (const auto& [group, names] : groups) {
    list += "<li><b>" + wire::html_escaped(group) + "</b><ul>" + names + "</ul></li>";
  }
  return "<nav aria-label=\"Contents\"><p><label for=\"find\">Show methods with</label> <input id=\"find\" type=\"search\" autocomplete=\"off\"> <span id=\"found\" aria-live=\"polite\"></span></p><ul "
         "class=\"parts\"><li><a href=\"#how\">How to call</a></li><li><a href=\"#walk\">A first walk</a></li><li><a href=\"#methods\">Methods</a></li><li><a href=\"#unasked\">Unasked</a></li><li><a href=\"#faults\">Errors</a></li><li><a "
         "href=\"#limits\">Limits</a></li><li><a href=\"#shapes\">Shapes</a></li></ul><ul class=\"methods\">" +
         list + "</ul></nav>";
}

[[nodiscard]] std::string try_data(const PageAsk& ask) {
  std::string lines;
  for (const TryLine& line : ask.try_out) {
    lines += (lines.empty() ? "" : ",") + ("{\"method\":" + wire::quoted(line.method)) + ",\"params\":" + std::string(line.params) + ",\"keep\":" + line.keep + "}";
  }
  // Data, which no policy runs; a slash keeps `</script>` from ending it.
  std::string text = "{\"kept\":" + ask.kept + ",\"lines\":[" + lines + "]}";
  for (std::size_t at = text.find("</"); at != std::string::npos; at = text.find("</", at + 3)) {
    text.replace(at, 2, "<\\/");
  }
  return "<script type=\"application/json\" id=\"day\">" + text + "</script>";
}

}  // namespace

std::string description_page(const PageAsk& ask) {
  std::string methods = discover_article();
  for (const service::Method& method : ask.table) {
    methods += method_article(method, ask);
  }
  const bool tries = !ask.try_out.empty();
  const std::string banner =
      tries ? "<p id=\"banner\" role=\"note\"><b>DEMONSTRATION</b> in memory, with invented people. What you send is gone when the program ends, and no ledger of anybody can be reached from "
              "here. Its examiner is <code>" +
                  wire::html_escaped(ask.examiner) + "</code>, with the passphrase <code>" + wire::html_escaped(ask.passphrase) + "</code>. <span id=\"session\">Open the link that the program printed to try the methods.</span></p>"
            : "<p id=\"banner\" role=\"note\">This page only describes. To try every method on invented people, in memory, start <code>limbledger serve --demo --http 0 --once</code> and open the link that "
              "it prints.</p>";
  std::string how(how_to_call);
  how.replace(how.find("@wordless@"), std::string_view("@wordless@").size(), wordless(ask.table));
  return "<!doctype html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"><meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"><link rel=\"icon\" href=\"data:,\"><link "
         "rel=\"stylesheet\" href=\"/description.css\"><title>limbledger: what can be called</title></head><body><a class=\"skip\" href=\"#methods\">To the methods</a><header><h1>What can be "
         "called</h1><p>limbledger " +
         std::string(service::program_version) + ", protocol " + std::to_string(service::protocol_newest) +
         ". It supports the judgement of people who are trained and licensed to examine, and does not replace it.</p>" + banner + "</header>" + contents(ask) + "<main>" +
         how + walk_section(ask.walk) + "<section id=\"methods\"><h2>Methods</h2>" + methods + "</section>" +
         "<section id=\"unasked\"><h2>What comes unasked</h2><p>Over WebSocket, once a session is open, two notifications come:</p><dl><dt><code>" + std::string(changed_name) +
         "</code></dt><dd>which records changed, as " + shape_link("ChangesReadResult") + "; what was missed meanwhile, <a href=\"#changes.read\"><code>changes.read</code></a> gives from the last cursor on</dd><dt><code>" +
         std::string(staff_called_name) + "</code></dt><dd>to examiners, also while the ledger is locked: an answer at a kiosk asks its person to call the staff; as " + shape_link("StaffCalled") +
         "</dd></dl></section>" + faults_section() + limits_section(ask) + shapes_section(ask.table) + "</main>" + (tries ? try_data(ask) : "") +
         "<script src=\"/description.js\" defer></script></body></html>\n";
}

}  // namespace limbledger::rpc
