// Whatever would end a warning by a decision is asked back: writing over values that stand against each other, taking a finding back, moving an
// exam, withdrawing one whose warning nobody answered (clinical safety, C7 and C14). Everything is invented.
#include "tests/unit/service/clinic/queue_visit.hpp"

namespace limbledger::service::test::queue_lines {

namespace {

const std::string twisted = R"({"item":"history.mechanism","side":"midline","value":{"kind":"choice","choice":"twist"}})";

std::string pulse(const std::string& side, const std::string& grade) {
  return R"({"item":"vessel.pulse_dorsalis_pedis","side":")" + side + R"(","value":{"kind":"grade","scale":"pulse/0-3","grade":")" + grade + R"("})";
}

// Nothing is written by a refusal.
struct Asked : Visit {
  std::string felt;  // the reply to the finding that raised it
  Asked() { felt = findings(twisted + "," + pulse("right", "2") + "}," + pulse("left", "0") + "}"); }
  Result<std::string> attempt(const std::string& method, const std::string& more) {
    return call(method, R"({"exam":")" + exam + "\"," + more + R"(,"seen":)" + seen() + "," + request() + "}");
  }
  void asks_back(const std::string& method, const std::string& more) {
    const std::string before = seen();
    CHECK(codes_of(attempt(method, more)) == "alert.would_end");
    CHECK(seen() == before);
  }
  static std::string answered() { return R"(,"confirmed":["alert.would_end"])"; }
};

}  // namespace

TEST_CASE("two findings of one place: the graver is not taken back unasked, nor written over as if the other were not there") {
  Asked visit;
  model::FindingId finding;
  finding.bytes.fill(8);
  visit.elsewhere("finding", R"({"finding":")" + finding.to_text() + R"(","observation":)" + pulse("left", "2") + "}}");
  visit.asks_back("finding.withdraw", R"("finding":")" + at(visit.felt, "/recorded/2/finding") + R"(","reason":"felt by the other")");
  const std::string over = R"("findings":[)" + pulse("left", "2") + R"(,"replaces":[")" + at(visit.felt, "/recorded/2/entry") + "\"]}]";
  CHECK(codes_of(visit.attempt("finding.record", over)) == "finding.stale");
  CHECK(at(visit.queue(), "/total") == "1");
}

TEST_CASE("two values of one finding, written over by one: asked back where the warning would go, not where it stays") {
  Asked visit;
  const std::string first = at(visit.felt, "/recorded/2/entry");
  const std::string id = at(visit.felt, "/recorded/2/finding");
  // Another device corrects the first value, unseen by this one, which corrects it as well.
  const std::string here = at(visit.write("finding.record", R"("findings":[)" + pulse("left", "1") + R"(,"replaces":[")" + first + "\"]}]"), "/recorded/0/entry");
  const std::string there = visit.elsewhere("finding", R"({"finding":")" + id + R"(","observation":)" + pulse("left", "0") + "}}", {first});
  REQUIRE(at(visit.queue(), "/total") == "1");
  const auto over = [&](const std::string& grade, const std::string& more) {
    return R"("findings":[)" + pulse("left", grade) + R"(,"replaces":[")" + here + R"(",")" + there + "\"]" + more + "}]";
  };
  visit.asks_back("finding.record", over("2", ""));
  visit.asks_back("finding.record", over("2", R"(,"confirmed":["value.unusual"])"));
  CHECK(visit.attempt("finding.record", over("0", "")).has_value());
  CHECK(at(visit.queue(), "/total") == "0");
}

TEST_CASE("a finding that is taken back leaves nothing known: asked where a warning goes with it, answered or not; a plain correction is told and not asked") {
  Asked visit;
  const std::string taking = R"("finding":")" + at(visit.felt, "/recorded/2/finding") + R"(","reason":"the other leg")";
  visit.asks_back("finding.withdraw", taking);
  const std::string calm = visit.findings(R"({"item":"history.pop","side":"left","value":{"kind":"answer","answer":"no"}})");
  CHECK(visit.attempt("finding.withdraw", R"("finding":")" + at(calm, "/recorded/0/finding") + R"(","reason":"not looked at")").has_value());  // no warning goes with it
  const std::string corrected = visit.write("finding.record", R"("findings":[)" + pulse("left", "2") + R"(,"replaces":[")" + at(visit.felt, "/recorded/2/entry") + "\"]}]");
  CHECK(corrected.find("withdrawn_by_correction") != std::string::npos);
  CHECK(visit.attempt("finding.withdraw", taking).has_value());  // it is gone already
}

TEST_CASE("an exam with a warning that nobody answered is withdrawn after a question; once it is answered, without one") {
  Asked visit;
  visit.asks_back("exam.withdraw", R"("reason":"begun twice")");
  visit.write("alert.handle", R"("alert":")" + at(visit.felt, "/alerts/0/alert") + R"(","side":"left","action":"sent to the hospital at 14:20")");
  visit.asks_back("exam.withdraw", R"("reason":"begun twice")");  // who was sent is still on the way
  const auto loops = [&] { return visit.ok("loop.list", R"({"language":"en"})"); };
  CHECK(at(loops(), "/people/0/loops/0/loop") == "urgent_without_outcome");
  CHECK(at(loops(), "/people/0/loops/0/action") == "sent to the hospital at 14:20");
  CHECK(holds(at(loops(), "/text"), "What became of the person is not recorded"));
  const auto tell = [&](const std::string& kind) { visit.write("outcome.record", R"("found":{"kind":")" + kind + R"(","text":"by telephone"})"); };
  tell("not_arrived");
  CHECK(at(loops(), "/people/0/loops/0/loop") == "urgent_without_outcome");
  // Another exam that was opened alone tells nothing of the person.
  visit.ok("exam.open", R"({"person":")" + visit.person + R"(","complaint":"acute_knee","side":"left","setting":"outreach","offset_min":180,)" + visit.request() + "}");
  CHECK(at(loops(), "/people/0/loops/0/loop") == "urgent_without_outcome");
  visit.asks_back("exam.withdraw", R"("reason":"begun twice")");
  tell("arrived");
  CHECK(at(loops(), "/people/0/loops/0/loop") != "urgent_without_outcome");
  CHECK(visit.attempt("exam.withdraw", R"("reason":"begun twice")").has_value());
  Asked other;
  CHECK(other.attempt("exam.withdraw", R"("reason":"begun twice")" + Asked::answered()).has_value());
}

TEST_CASE("an exam that is moved to somebody of whom the warning would not be raised is asked back; to another child it is not") {
  Visit visit;
  const auto move_to = [&](const std::string& person, const std::string& more) {
    return visit.call("exam.move", R"({"exam":")" + visit.exam + R"(","person":")" + person + R"(","reason":"namesake")" + more + R"(,"seen":)" + visit.seen() + "," + visit.request() + "}");
  };
  REQUIRE(move_to(visit.registered("Rumi Invented", "2013-05-01"), "").has_value());
  // A slip at the growing hip is of 8 to 16 years (red flags page, section 4).
  const std::string turned = visit.findings(R"({"item":"hip.leg_attitude","side":"left","value":{"kind":"choice","choice":"attitude_turned_out"},"position":"supine"})");
  REQUIRE(at(turned, "/alerts/0/alert") == "alert.scfe");
  CHECK(codes_of(move_to(visit.registered("Ilse Madeup", "1986-05-01"), "")) == "alert.would_end");
  CHECK(move_to(visit.registered("Tavi Nobody", "2012-02-03"), "").has_value());
  CHECK(move_to(visit.registered("Ilse Invented", "1986-05-02"), Asked::answered()).has_value());
}

TEST_CASE("a birth that is corrected so that the warning of an exam would go is asked back by name of the danger; one that changes nothing is not") {
  Visit visit;
  const std::string girl = visit.registered("Rumi Invented", "2013-05-01");
  visit.write("exam.move", R"("person":")" + girl + R"(","reason":"it is hers")");
  REQUIRE(at(visit.findings(R"({"item":"hip.leg_attitude","side":"left","value":{"kind":"choice","choice":"attitude_turned_out"},"position":"supine"})"), "/alerts/0/alert") == "alert.scfe");
  const auto born = [&](const std::string& day, const std::string& more) {
    const std::string shown = at(visit.ok("person.read", R"({"person":")" + girl + "\"}"), "/revision");
    return visit.call("person.amend", R"({"person":")" + girl + R"(","changes":{"birth":{"date":")" + day + R"("}},"replaces":)" + shown + R"(,"seen":)" + shown + more + "," + visit.request() + "}");
  };
  const auto refused = born("1983-05-01", R"(,"language":"en")");
  REQUIRE(codes_of(refused) == "alert.would_end");
  CHECK(refused.error().faults.front().text.find("slip") != std::string::npos);
  CHECK(born("2012-05-01", "").has_value());
  CHECK(born("1983-05-01", Asked::answered()).has_value());
}

TEST_CASE("the complaint an exam was opened for, the day of the injury, and left and right end no warning unasked; what keeps it asks nothing") {
  Asked visit;  // injured the day before
  visit.asks_back("exam.amend", R"("changes":{"injured_on":"2025-01-02"})");
  CHECK(visit.attempt("exam.amend", R"("changes":{"injured_on":"2026-11-22"})").has_value());
  // The cold leg of the two is then the other one, and stays called.
  const auto turned = visit.attempt("exam.swap_sides", R"("reason":"seen from the foot of the couch")");
  REQUIRE(turned.has_value());
  CHECK(at(*turned, "/alerts/0/side") == "right");
  CHECK(visit.attempt("exam.amend", R"("changes":{"injured_on":"2025-01-02"})" + Asked::answered()).has_value());
}

TEST_CASE("what protects a person is not asked about: the question alone would tell of it") {
  Visit visit;
  const std::string said = visit.findings(R"({"item":"history.hurt_or_afraid","side":"midline","value":{"kind":"answer","answer":"yes"}})");
  CHECK(visit.call("finding.withdraw", R"({"exam":")" + visit.exam + R"(","finding":")" + at(said, "/recorded/0/finding") + R"(","reason":"of another person","seen":)" + visit.seen() + "," + visit.request() + "}").has_value());
  CHECK(visit.call("exam.withdraw", R"({"exam":")" + visit.exam + R"(","reason":"begun twice","seen":)" + visit.seen() + "," + visit.request() + "}").has_value());
}

}  // namespace limbledger::service::test::queue_lines
