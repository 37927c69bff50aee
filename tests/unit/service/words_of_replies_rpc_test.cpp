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
    std::vector<wire::Fault> faults{wire::Fault(code, "/a", "expected", "concern.knee_fracture").with("low", "-30").with("high", "170").with("step", "0.1").with("items", "3").with("characters", "9")};
    add_fault_texts(words, edition, faults);
    const std::string& said = faults.front().text;
    CHECK(!said.empty());
    CHECK(said.find("msg.") == std::string::npos);
    CHECK(said.find("{$") == std::string::npos);
    CHECK(said.find("member") == std::string::npos);  // the words of whoever makes the form
    CHECK(said.find("params") == std::string::npos);
    CHECK(said.find("confirmed") == std::string::npos);
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
  CHECK(impossible.error().faults.front().expected == "a day that the calendar has");
  const auto unformed = registered(R"("names":[{"text":"Kofi Invented"}],"birth":{"date":"30.2.1990"})");
  REQUIRE(codes_of(unformed) == "params.wrong_type");
  CHECK(unformed.error().faults.front().expected == "a calendar date: 1971, 1971-05 or 1971-05-12");
}
