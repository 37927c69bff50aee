// A protected alert of which nothing is recorded: its signer is asked once, an examiner may ask for its exams, and nothing else differs by a
// byte from a record without one. Logic tests of our own rules (clinical safety, C9, C14, C16); everything is invented.
#include "tests/unit/service/clinic/queue_visit.hpp"

#include <string>
#include <vector>

namespace limbledger::service::test::protected_notes {

using queue_lines::Visit;

namespace {

struct Guarded : Visit {
  // Two records of the same length that differ by this answer alone.
  void afraid(const std::string& answer) {
    findings(R"({"item":"history.hurt_or_afraid","side":"midline","value":{"kind":"answer","answer":")" + answer + R"("}})");
  }
  [[nodiscard]] Result<std::string> try_to_sign(const std::string& more = {}) {
    return call("exam.sign", R"({"exam":")" + exam + R"(","read_aloud":"Kofi Invented, born 2001, LEFT knee",)" + more + R"("language":"en","seen":)" + seen() + "," + request() + "}");
  }
  std::string handled(const std::string& with) { return write("alert.handle", R"("alert":"alert.nai",)" + with); }
  [[nodiscard]] std::string waiting() const { return ok("loop.list", R"({"as_of":"2026-11-24","protected":true,"language":"en"})"); }
  // All that lists and counts, as an examiner and as a viewer get it.
  [[nodiscard]] std::vector<std::string> lists(bool with_health = true) {
    std::vector<std::string> out;
    for (const Scope scope : {Scope::examiner, Scope::viewer}) {
      caller.scope = scope;
      out.push_back(ok("loop.list", R"({"as_of":"2026-12-24","language":"en"})"));
      out.push_back(ok("loop.list", R"({"as_of":"2026-12-24","protected":false})"));
      out.push_back(ok("day.list", R"({"day":"2026-11-24","language":"en"})"));
      out.push_back(ok("district.count", R"({"from":"2026-11-24","as_of":"2026-12-24","language":"en"})"));
      out.push_back(ok("conflict.list", R"({"language":"en"})"));
      out.push_back(ok("exam.find", "{}"));
      if (with_health) {
        out.push_back(ok("health.check", "{}"));
      }
    }
    caller.scope = Scope::examiner;
    return out;
  }
};

}  // namespace

TEST_CASE("C16: lists, counts and health are the same bytes with and without a protected alert, open, signed and answered") {
  Guarded with;
  Guarded without;
  with.afraid("yes");
  without.afraid("no");
  CHECK(with.lists() == without.lists());
  REQUIRE(with.try_to_sign(R"("confirmed":["note.protected"],)").has_value());
  REQUIRE(without.try_to_sign(R"("confirmed":["note.protected"],)").has_value());
  CHECK(with.lists() == without.lists());
  // What was done about it is an entry, which health counts as it does every other.
  const auto before = with.lists(false);
  with.handled(R"("action":"told whom the clinic named")");
  CHECK(with.lists(false) == before);
}

TEST_CASE("C14: whoever signs beside a protected alert without an action or a reason is asked once, in words that tell nothing more; signing is never refused") {
  Guarded visit;
  visit.afraid("yes");
  const auto asked = visit.try_to_sign();
  REQUIRE(codes_of(asked) == "note.protected");
  const wire::Refusal refusal = asked.error();
  CHECK(refusal.number() == wire::FaultClass::asked_back);
  const wire::Fault fault = refusal.faults.front();
  CHECK(fault.text == "See protected note before signing.");
  CHECK(fault.expected.empty());
  CHECK(fault.got.empty());
  CHECK(at(visit.ok("exam.read", R"({"exam":")" + visit.exam + "\"}"), "/exam/state") == "open");
  SUBCASE("a reason answers it") {
    visit.handled(R"("reason":"known to who cares for it since last week")");
    CHECK(visit.try_to_sign().has_value());
    CHECK(at(visit.waiting(), "/people") == "[]");
  }
  SUBCASE("so does a second word, which answers nothing else") {
    CHECK(visit.try_to_sign(R"("confirmed":["note.protected"],)").has_value());
    CHECK(at(visit.waiting(), "/people/0/loops/0/exam") == visit.exam);
  }
  SUBCASE("another word does not") { CHECK(codes_of(visit.try_to_sign(R"("confirmed":["person.mismatch"],)")) == "note.protected"); }
}

TEST_CASE("nobody is asked at signing for an alert that is no protected one, nor for an answer that raises none") {
  Guarded visit;
  visit.afraid("no");
  visit.findings(R"({"item":"vessel.pulse_dorsalis_pedis","side":"right","value":{"kind":"grade","scale":"pulse/0-3","grade":"2"}},{"item":"vessel.pulse_dorsalis_pedis","side":"left","value":{"kind":"grade","scale":"pulse/0-3","grade":"0"}})");
  CHECK(visit.try_to_sign().has_value());
}

TEST_CASE("C14, C16: an examiner who asks for them gets the exams of whose protected alerts nothing is recorded, those alone, without a page; nobody else does") {
  Guarded visit;
  CHECK(at(visit.waiting(), "/people") == "[]");
  visit.afraid("yes");
  const std::string open = visit.waiting();
  CHECK(at(open, "/people/0/person/names/0/text") == "Kofi Invented");
  CHECK(at(open, "/people/0/loops/0/loop") == "protected_note");
  CHECK(at(open, "/people/0/loops/0/exam") == visit.exam);
  CHECK(at(open, "/people/0/loops/0/text") == "See protected note (exam of 2026-11-24)");
  // Of the same exam the other list says that it is not signed; here nothing is mixed in, and nothing tells what the note says.
  CHECK(at(open, "/people/0/loops/1").empty());
  CHECK(at(open, "/text").empty());
  for (const char* told : {"nai", "afraid", "urgency", "same_day"}) {
    CHECK(open.find(told) == std::string::npos);
  }
  for (const Scope scope : {Scope::viewer, Scope::kiosk, Scope::sync}) {
    visit.caller.scope = scope;
    CHECK(codes_of(visit.call("loop.list", R"({"protected":true})")) == "token.scope");
  }
  visit.caller.scope = Scope::examiner;
  visit.handled(R"("action":"told whom the clinic named")");
  CHECK(at(visit.waiting(), "/people") == "[]");
}

TEST_CASE("what an addendum raises for a person's protection waits too, and an exam that was withdrawn does not") {
  Guarded visit;
  REQUIRE(visit.try_to_sign().has_value());
  CHECK(at(visit.waiting(), "/people") == "[]");
  visit.write("addendum.record", R"("kind":"findings","reason":"said on the way out","findings":[{"item":"history.hurt_or_afraid","side":"midline","value":{"kind":"answer","answer":"yes"}}])");
  CHECK(at(visit.waiting(), "/people/0/loops/0/exam") == visit.exam);
  visit.write("exam.withdraw", R"("reason":"of another person")");
  CHECK(at(visit.waiting(), "/people") == "[]");
}

}  // namespace limbledger::service::test::protected_notes
