// What two people do to one record, neither knowing of the other, and what one does twice: it is asked after, or refused, and nothing that was
// written shuts the record. Logic tests of our own rules (ledger, items 26 to 32); everything is invented.
#include "tests/unit/service/clinic/queue_visit.hpp"

#include "core/ledger/fold/opened.hpp"

namespace limbledger::service::test::two_at_once {

using queue_lines::holds;
using queue_lines::Visit;

TEST_CASE("two exchanges of left and right by two who did not know of each other are asked after; no signature ends that, one who says the side does") {
  Visit visit;
  // Both knew of it.
  visit.opened = at(visit.findings(R"({"item":"history.pop","side":"left","value":{"kind":"answer","answer":"yes"}})"), "/revision/0");
  visit.write("exam.swap_sides", R"("reason":"from the foot of the couch")");
  visit.elsewhere("swap_sides", R"({"reason":"the other knee was meant"})");
  CHECK(at(visit.queue(), "/total") == "1");
  CHECK(at(visit.queue(), "/queue/0/about") == "exchanged_twice");
  CHECK(at(visit.queue(), "/queue/0/harm") == "wrong_side");
  CHECK(at(visit.queue(), "/queue/0/settle_by") == "exam.swap_sides");
  CHECK(holds(visit.line(), "from the foot of the couch"));
  CHECK(holds(visit.line(), "the other knee was meant"));
  CHECK(holds(visit.note(), "NOT DECIDED: Which side?"));
  SUBCASE("said before the signature") {
    visit.write("exam.amend", R"("changes":{"side":"left"},"reason":"asked him")");
    CHECK(at(visit.queue(), "/total") == "0");
  }
  SUBCASE("exchanged once more") {
    visit.write("exam.swap_sides", R"("reason":"it was the right knee")");
    CHECK(at(visit.queue(), "/total") == "0");
    CHECK(holds(visit.ok("exam.read", R"({"exam":")" + visit.exam + "\"}"), R"("side":"right")"));
  }
  SUBCASE("said after it") {
    visit.write("exam.sign", R"("read_aloud":"Kofi Invented, LEFT knee")");
    CHECK(at(visit.queue(), "/queue/0/settle_by") == "addendum.record");
    visit.write("addendum.record", R"("kind":"text","text":"It was the left knee.","reason":"asked him")");
    CHECK(at(visit.queue(), "/total") == "0");
  }
}

TEST_CASE("whoever was not shown that left and right were exchanged does not exchange them back") {
  Visit visit;
  visit.write("exam.swap_sides", R"("reason":"from the foot of the couch")");
  const auto again = visit.call("exam.swap_sides", R"({"exam":")" + visit.exam + R"(","reason":"from the foot of the couch","seen":[")" + visit.opened + "\"]," + visit.request() + "}");
  CHECK(codes_of(again) == "finding.stale");
  CHECK(path_of(again) == "/seen");
  CHECK(visit.call("exam.swap_sides", R"({"exam":")" + visit.exam + R"(","reason":"it was right at first","seen":)" + visit.seen() + "," + visit.request() + "}").has_value());
}

TEST_CASE("a letter about a plan of many words is written and read again, and the exam is signed after it") {
  Visit visit;
  std::string items;
  for (int i = 0; i < 8; ++i) {
    items += (i == 0 ? "" : ",") + std::string(R"({"kind":"advice","text":")") + std::string(2500, static_cast<char>('a' + i)) + "\"}";
  }
  visit.write("plan.record", R"("replaces":[],"plan_items":[)" + items + "]");
  visit.write("consent.record", R"("consent":{"examine":"yes","record":"yes","send":"yes","by":"self"})");
  const std::string letter = visit.write("letter.write", R"("to":"an invented hospital","question":"What next?")");
  CHECK(holds(at(letter, "/text"), std::string(40, 'h')));
  visit.write("exam.sign", R"("read_aloud":"Kofi Invented, LEFT knee")");
  CHECK(holds(visit.note(), "Signed by"));
}

TEST_CASE("what could not be read back is refused before it is written") {
  CHECK(ledger::check_body("swap_sides", R"({"reason":"asked"})").has_value());
  const auto refused = [](std::string_view op, const std::string& body) {
    const auto checked = ledger::check_body(op, body);
    return checked ? std::string() : checked.error().faults.front().code;
  };
  CHECK(refused("swap_sides", "{}") == "params.missing");
  CHECK(refused("impression", R"({"impression":{"text":")" + std::string(30'000, 'a') + "\"}}") == "limit.text");
  CHECK_FALSE(ledger::check_body("swap_sides", "{").has_value());
  CHECK(ledger::check_body("of_another_edition", "{}").has_value());
}

}  // namespace limbledger::service::test::two_at_once
