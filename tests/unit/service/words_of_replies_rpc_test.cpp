// No form has to show a raw name: every message that a reply names has its words beside it, once a language is named. Held over the types
// of all replies, and over the forms of all complaints. Contract, section 9; everything is invented.
#include "core/report/words/words.hpp"
#include "core/service/fault_texts.hpp"
#include "core/service/methods/exam/alert.hpp"
#include "core/service/methods/say/form_texts.hpp"
#include "rpc/emit/page/faults_of.hpp"
#include "tests/unit/service/desk_fixture.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <map>
#include <set>
#include <vector>

using namespace limbledger;
using namespace limbledger::service;
using namespace limbledger::service::test;

namespace {

const wire::Field* member(const wire::Type& type, std::string_view name) {
  const auto found = std::find_if(type.fields.begin(), type.fields.end(), [&](const wire::Field& one) { return one.name == name; });
  return found == type.fields.end() ? nullptr : &*found;
}

// Messages, one or a list of them.
bool names_messages(const wire::Type& type) {
  const bool holds_one = type.kind == wire::Kind::optional || type.kind == wire::Kind::list;
  return &type == &wire::type_of<model::MessageId>() || (holds_one && names_messages(type.inner()));
}

// "Alert.meanwhile" of each member that names a message without words of its own.
void wordless(const wire::Type& type, std::set<const wire::Type*>& seen, std::set<std::string>& out) {
  if (!seen.insert(&type).second) {
    return;
  }
  for (const wire::Field& field : type.fields) {
    const bool own = member(type, std::string(field.name) + "_text") != nullptr || ((field.name == "message" || field.name == "until") && member(type, "text") != nullptr);
    if (names_messages(field.type()) && !own) {
      out.insert(std::string(type.name) + "." + std::string(field.name));
    }
    wordless(field.type(), seen, out);
  }
  for (const wire::Alternative& alternative : type.alternatives) {
    wordless(alternative.type(), seen, out);
  }
  if (type.inner != nullptr) {
    wordless(type.inner(), seen, out);
  }
}

bool reaches(const wire::Type& type, const wire::Type& wanted, std::set<const wire::Type*>& seen) {
  if (!seen.insert(&type).second) {
    return false;
  }
  const auto in = [&](const auto& one) { return reaches(one.type(), wanted, seen); };
  return &type == &wanted || std::any_of(type.fields.begin(), type.fields.end(), in) || std::any_of(type.alternatives.begin(), type.alternatives.end(), in) ||
         (type.inner != nullptr && reaches(type.inner(), wanted, seen));
}

std::vector<std::string> strings_of(const wire::Document& document, const wire::Node& node) {
  std::vector<std::string> out;
  if (node.kind == wire::NodeKind::text) {
    out.emplace_back(node.text);
  }
  for (std::uint32_t index = node.first; index != 0; index = document.at(index).next) {
    const std::vector<std::string> inside = strings_of(document, document.at(index));
    out.insert(out.end(), inside.begin(), inside.end());
  }
  return out;
}

// The names of messages in a reply that its `texts` do not say.
std::set<std::string> unsaid(const std::string& reply) {
  const auto document = wire::parse(reply);
  REQUIRE(document.has_value());
  std::set<std::string> said;
  const wire::Node* texts = document->at_pointer("/texts");
  REQUIRE(texts != nullptr);
  for (std::uint32_t index = texts->first; index != 0; index = document->at(index).next) {
    const wire::Node* text = document->child(document->at(index), "text");
    CHECK(text->text.find("msg.") == std::string_view::npos);
    CHECK(text->text.find("{$") == std::string_view::npos);
    said.insert(std::string(document->child(document->at(index), "message")->text));
  }
  std::set<std::string> out;
  for (const std::string& one : strings_of(*document, document->root())) {
    if (one.starts_with("msg.") && !said.contains(one)) {
      out.insert(one);
    }
  }
  return out;
}

}  // namespace

TEST_CASE("every reply that names messages has their words beside them, and takes the language to say them in") {
  for (const Method& method : methods()) {
    CAPTURE(method.name);
    std::set<const wire::Type*> seen;
    std::set<std::string> raw;
    const bool texts = member(method.result(), "texts") != nullptr;
    if (!texts) {
      wordless(method.result(), seen, raw);
    }
    raw.erase("Shown.message");  // what the form itself sent with a signature
    for (const std::string& one : raw) {
      CAPTURE(one);
      CHECK(false);
    }
    // The replies that share ExamReply and change nothing that alerts are judged by have none (alerts_note).
    const std::set<std::string_view> no_alerts{"exam.open", "impression.record", "statement.disagree", "plan.follow", "outcome.record", "exam.withdraw", "conflict.settle", "person.register"};
    seen.clear();
    const bool alerts = reaches(method.result(), wire::type_of<interpret::Alert>(), seen) && !no_alerts.contains(method.name);
    seen.clear();
    const bool withheld = reaches(method.result(), wire::type_of<WithheldNow>(), seen);
    CHECK((!(texts || alerts || withheld) || member(method.params(), "language") != nullptr));
  }
}

TEST_CASE_FIXTURE(DeskFixture, "no name of a form is without words: labels, technique, purpose, cautions, what counts as positive, what a yes and a no say") {
  const std::string all = ok("catalogue.read", R"({"language":"en","words":true})");
  CHECK(unsaid(all).empty());
  const auto document = wire::parse(all);
  const wire::Node* complaints = document->at_pointer("/complaints");
  std::vector<std::string> named;
  for (std::uint32_t index = complaints->first; index != 0; index = document->at(index).next) {
    named.emplace_back(document->at(index).text);
  }
  REQUIRE(named.size() > 15);
  for (const std::string& complaint : named) {
    CAPTURE(complaint);
    const std::string form = ok("form.describe", R"({"complaint":")" + complaint + R"(","language":"en"})");
    const std::set<std::string> left = unsaid(form);
    CHECK(left.empty());
    for (const std::string& one : left) {
      CAPTURE(one);
      CHECK(false);
    }
  }
  // A yes of a straight leg raise is read both ways without its words.
  const std::string form = ok("form.describe", R"({"complaint":"acute_knee","language":"en"})");
  CHECK(form.find(R"({"message":"msg.item.knee_straight_leg_raise_active.yes","text":"cannot lift the straight leg)") != std::string::npos);
  const std::string spanish = ok("form.describe", R"({"complaint":"heel_pain","language":"es"})");
  CHECK(unsaid(spanish).empty());
}

TEST_CASE("every fault that a call with a language may answer has a sentence for whoever is at the form") {
  const report::Words* words = report::built_in_words();
  REQUIRE(words != nullptr);
  std::set<std::string_view> codes(rpc::faults_of_every_call().begin(), rpc::faults_of_every_call().end());
  for (const Method& method : methods()) {
    if (member(method.params(), "language") != nullptr) {
      const auto own = rpc::faults_of(method);
      codes.insert(own.begin(), own.end());
    }
  }
  REQUIRE(codes.size() > 60);
  const reference::Edition& edition = *reference::built_in_edition();
  for (const std::string_view code : codes) {
    CAPTURE(code);
    std::vector<wire::Fault> faults{wire::Fault(code, "/a", "expected", "concern.knee_fracture").with("low", "-30").with("high", "170").with("step", "0.1").with("items", "3").with("characters", "9").with("wait_s", "9")};
    add_fault_texts(words, edition, faults, true);
    const std::string& said = faults.front().text;
    CHECK(!said.empty());
    CHECK(said.find("msg.") == std::string::npos);
    CHECK(said.find("{$") == std::string::npos);
    CHECK(said.find("member") == std::string::npos);  // the words of whoever makes the form
    CHECK(said.find("params") == std::string::npos);
    CHECK(said.find("confirmed") == std::string::npos);
    // Whoever only looks at something had nothing to record.
    add_fault_texts(words, edition, faults, false);
    CHECK(said.find("not recorded") == std::string::npos);
    CHECK(said.find("nothing was recorded") == std::string::npos);
  }
}

TEST_CASE("every method that writes, and each that an examiner's form calls before it, takes the language of its faults; the languages are those of the words") {
  const std::set<std::string_view> of_a_form{"session.open", "ledger.unlock", "examiner.add", "person.find", "person.read", "exam.find", "exam.read", "form.describe", "finding.check", "place.read", "request.read", "letter.read"};
  std::size_t found = 0;
  for (const Method& method : methods()) {
    CAPTURE(method.name);
    const bool asked = of_a_form.contains(method.name);
    CHECK((!(method.writes || asked) || member(method.params(), "language") != nullptr));
    found += asked ? 1 : 0;
  }
  CHECK(found == of_a_form.size());
  std::set<std::string_view> codes;
  for (const report::Language& one : report::languages()) {
    codes.insert(one.code);
  }
  const auto& words = wire::type_of<FaultLanguage>().words;
  CHECK(codes == std::set<std::string_view>(words.begin(), words.end()));
}

TEST_CASE_FIXTURE(DeskFixture, "who is at the form reads what is wrong with a birth, a day, a passphrase, and how long to wait") {
  unsigned number = 0;
  const auto said = [&](const std::string& method, const std::string& members, const std::string& code) {
    const auto reply = call(method, "{" + members + R"(,"request":")" + request_id(++number) + R"(","language":"en"})");
    CHECK(codes_of(reply) == code);
    return reply ? std::string() : reply.error().faults.front().text;
  };
  const auto born = [&](const std::string& birth, const std::string& code) { return said("person.register", R"("names":[{"text":"Kofi Invented"}],"sex":"male","birth":)" + birth, code); };
  CHECK(born(R"({"date":"19x8"})", "params.wrong_type") == "This is no date: the year, year-month or year-month-day, such as 1971, 1971-05 or 1971-05-12.");
  CHECK(born(R"({"date":"1990-02-30"})", "value.date") == "There is no such day in the years 1850 to 2200: look at day, month and year.");
  CHECK(born(R"({"date":"2031"})", "value.unusual").starts_with("By the clock of this device it is 2026-11-24 in UTC, "));
  CHECK(born(R"({"date":"1850"})", "value.unusual") == "This is more than 110 years ago. Check it; confirm it, or change it.");
  CHECK(call("person.register", R"({"names":[{"text":"Kofi Invented"}],"sex":"male","birth":{"date":"19x8"},"request":")" + request_id(80) + "\"}").error().faults.front().text.empty());
  CHECK(codes_of(call("person.register", R"({"names":[{"text":"Kofi Invented"}],"sex":"male","request":")" + request_id(81) + R"(","language":"xx"})")) == "params.unknown_word");
  const std::string person = at(ok("person.register", R"({"names":[{"text":"Kofi Invented"}],"sex":"male","birth":{"date":"2001"},"request":")" + request_id(82) + "\"}"), "/person/person");
  const auto opened = [&](const std::string& members, const std::string& code) {
    return said("exam.open", R"("person":")" + person + R"(","complaint":"acute_knee","setting":"outreach",)" + members, code);
  };
  CHECK(opened(R"("examined_on":"2026-11-20","injured_on":"2026-11-22")", "value.date_order") == "Examined before the injury: correct the day of the examination, or of the injury.");
  CHECK(opened(R"("injured_on":"1999")", "value.date_order") == "Hurt before the birth: correct the day of the injury, or the birth.");
  CHECK(opened(R"("injured_on":"2031")", "value.unusual") != "");
  const auto unlock = [&] { return call("ledger.unlock", R"({"passphrase":"not this one at all","language":"en"})"); };
  static_cast<void>(ok("ledger.lock", "{}"));
  CHECK(unlock().error().faults.front().text == "This does not open the ledger. Look at capitals and at the name of the examiner, and try again.");
  const auto wait = unlock();
  CHECK(codes_of(wait) == "ledger.wait");
  CHECK(wait.error().faults.front().text == "Too many wrong tries. Wait 1 s, then try again.");
  // A call that reads had nothing to record.
  CHECK(call("exam.find", R"({"language":"en"})").error().faults.front().text == "The ledger is locked. Unlock it to see this.");
  CHECK(said("person.register", R"("names":[{"text":"Kofi Invented"}],"sex":"male")", "ledger.locked") == "The ledger is locked. Unlock it; this was not recorded yet.");
}

TEST_CASE_FIXTURE(DeskFixture, "rules and flags of an assessment carry their words, and an empty list is not called too many") {
  const std::string opened = ok("exam.open", R"({"complaint":"acute_knee","side":"left","setting":"outreach","injured_on":"2026-11-23","request":")" + request_id(90) + "\"}");
  const std::string exam = R"("exam":")" + at(opened, "/exam/exam") + "\"";
  const std::string words = ok("exam.assess", "{" + exam + R"(,"language":"en"})");
  CHECK(at(words, "/rules/0/rule") == "rule.ottawa_knee");
  CHECK(at(words, "/rules/0/text").find("msg.") == std::string::npos);
  CHECK(at(words, "/rules/0/text").size() > 20);
  CHECK(!at(words, "/flags/0/flag").empty());
  for (std::size_t i = 0; !at(words, "/flags/" + std::to_string(i) + "/flag").empty(); ++i) {
    const std::string text = at(words, "/flags/" + std::to_string(i) + "/text");
    CHECK(text.find("msg.") == std::string::npos);
    CHECK(text.find(": ") != std::string::npos);
  }
  CHECK(at(ok("exam.assess", "{" + exam + "}"), "/rules/0/text").empty());
  const auto nothing = call("finding.record", "{" + exam + R"(,"findings":[],"seen":[")" + at(opened, "/revision/0") + R"("],"language":"en","request":")" + request_id(91) + "\"}");
  REQUIRE(codes_of(nothing) == "limit.items");
  CHECK(nothing.error().faults.front().text == "Nothing was sent: at least one is needed.");
  const auto member_of_none = call("health.check", R"({"language":"en"})");
  REQUIRE(codes_of(member_of_none) == "params.unknown_member");
  CHECK(member_of_none.error().faults.front().expected == "no member: nothing is taken here");
  const std::string form = ok("form.describe", R"({"complaint":"acute_knee","language":"en"})");
  CHECK(form.find(R"({"message":"msg.urgency.same_day","text":"the same day"})") != std::string::npos);
}

// An hourly look at a pulse: each is a finding of its own, and what cannot wait rests on the graver one, whichever came first.
TEST_CASE_FIXTURE(DeskFixture, "a second look beside the first keeps both with their times, and a danger counts from either") {
  for (const auto& pair : {std::pair("2", "0"), std::pair("0", "2")}) {
    const auto& first = pair.first;
    const auto& second = pair.second;
    CAPTURE(first);
    const unsigned base = first[0] == '2' ? 1 : 11;
    const std::string opened = ok("exam.open", R"({"complaint":"acute_knee","setting":"outreach","side":"left","injured_on":"2026-11-24","request":")" + request_id(base) + "\"}");
    const std::string exam = at(opened, "/exam/exam");
    const auto pulse = [](const std::string& side, const std::string& grade, const std::string& more) {
      return R"({"item":"vessel.pulse_dorsalis_pedis","side":")" + side + R"(","value":{"kind":"grade","scale":"pulse/0-3","grade":")" + grade + "\"}" + more + "}";
    };
    const auto record = [&](const std::string& findings, const std::string& seen, unsigned number) {
      return ok("finding.record", R"({"exam":")" + exam + R"(","seen":[")" + seen + R"("],"request":")" + request_id(base + number) + R"(","language":"en","findings":[)" + findings + "]}");
    };
    const std::string one = record(R"({"item":"history.mechanism","side":"midline","value":{"kind":"choice","choice":"twist"}},)" + pulse("right", "2", "") + "," + pulse("left", first, ""), at(opened, "/revision/0"), 1);
    const std::string two = record(pulse("left", second, R"(,"examined_at":"2026-11-24T11:20:00.000Z","beside":true)"), at(one, "/revision/0"), 2);
    CHECK(at(two, "/alerts/0/state") == "raised");
    CHECK(at(two, "/alerts/0/side") == "left");
    const std::string all = ok("exam.read", R"({"exam":")" + exam + "\"}");
    std::map<std::string, std::string> times;
    for (int i = 0; i < 4; ++i) {
      const std::string place = "/exam/findings/" + std::to_string(i);
      CHECK(at(all, place + "/standing") == "current");
      if (at(all, place + "/side") == "left") {
        times[at(all, place + "/value/grade")] = at(all, place + "/examined_at");
      }
    }
    CHECK(times.size() == 2);
    CHECK(times[second] == "2026-11-24T11:20:00.000Z");
    CHECK(times[first] == at(all, "/exam/examined_at"));
  }
}

TEST_CASE_FIXTURE(DeskFixture, "a refused finding says at its field what to do, in the language of the call, and the hint stays beside it") {
  const std::string opened = ok("exam.open", R"({"complaint":"acute_knee","setting":"outreach","side":"left","request":")" + request_id(1) + "\"}");
  const std::string exam = at(opened, "/exam/exam");
  const auto record = [&](const std::string& finding, const std::string& language) {
    return call("finding.record", R"({"exam":")" + exam + R"(","seen":[")" + at(opened, "/revision/0") + R"("],"request":")" + request_id(2) + R"(","findings":[{"side":"left",)" + finding + "}]" +
                                      (language.empty() ? "" : R"(,"language":")" + language + "\"") + "}");
  };
  const std::string impossible = R"("item":"knee.flexion_passive","value":{"kind":"angle","toward_deg":400})";
  const auto refused = record(impossible, "en");
  REQUIRE(codes_of(refused) == "value.out_of_range");
  CHECK(refused.error().faults.front().path == "/findings/0/value/toward_deg");
  CHECK(refused.error().faults.front().text == "This value is not possible: -30 to 170. Measure again, or look at what was typed.");
  CHECK(record(impossible, "").error().faults.front().text.empty());
  CHECK(record(impossible, "es").error().faults.front().text.ends_with("typed. (en)"));
  CHECK(codes_of(record(impossible, "xx")) == "params.unknown_word");
  // What cannot be read has no limits yet: those of the item come with a number.
  const auto worded = record(R"("item":"knee.flexion_passive","value":{"kind":"angle","toward_deg":""})", "en");
  REQUIRE(codes_of(worded) == "params.wrong_type");
  CHECK(worded.error().faults.front().expected == "a number of deg in steps of 0.1");
  CHECK(worded.error().faults.front().text == "This cannot be read: look at what was typed.");
  const std::string checked = ok("finding.check", R"({"language":"en","findings":[{"side":"left","item":"knee.flexion_passive","value":{"kind":"angle","toward_deg":168}}]})");
  CHECK(at(checked, "/confirm/0/code") == "value.unusual");
  CHECK(at(checked, "/confirm/0/hint") == wire::find_fault_code("value.unusual")->hint);
  CHECK(at(checked, "/confirm/0/text") == "This is possible but unusual: mostly 0 to 165. Check it; confirm it, or change it.");
}

TEST_CASE_FIXTURE(DeskFixture, "hints do not mislead: an empty text that is needed, one that may be left out, and a day that no calendar has") {
  const auto registered = [&](const std::string& members) {
    return call("person.register", R"({"sex":"male","request":")" + request_id(1) + "\"," + members + "}");
  };
  const auto needed = registered(R"("names":[{"text":""}])");
  REQUIRE(codes_of(needed) == "value.empty");
  CHECK(needed.error().faults.front().expected.find("no such member") == std::string::npos);
  const auto optional = registered(R"("names":[{"text":"Kofi Invented"}],"home":" ")");
  REQUIRE(codes_of(optional) == "value.empty");
  CHECK(optional.error().faults.front().expected.ends_with(", or no such member"));
  const auto impossible = registered(R"("names":[{"text":"Kofi Invented"}],"birth":{"date":"1990-02-30"})");
  REQUIRE(codes_of(impossible) == "value.date");
  CHECK(impossible.error().faults.front().expected == "a day that the calendar has, in the years 1850 to 2200");
  const auto unformed = registered(R"("names":[{"text":"Kofi Invented"}],"birth":{"date":"30.2.1990"})");
  REQUIRE(codes_of(unformed) == "params.wrong_type");
  CHECK(unformed.error().faults.front().expected == "a calendar date: 1971, 1971-05 or 1971-05-12");
}
