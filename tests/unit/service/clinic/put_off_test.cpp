// conflict.put_off: what cannot be decided now stays in the queue with who was asked and when to look again; nothing is settled, and nothing
// leaves the clinic with it. Logic tests of our own rules (ledger, items 26 to 32); everything is invented.
#include "tests/unit/service/clinic/queue_visit.hpp"

namespace limbledger::service::test::put_offs {

using queue_lines::flexion_elsewhere;
using queue_lines::holds;
using queue_lines::Visit;

namespace {

// Two readings of one flexion.
struct Apart : Visit {
  std::string own;
  std::string there;

  Apart() {
    own = at(findings(R"({"item":"knee.flexion_active","side":"left","value":{"kind":"angle","deg":108},"instrument":"goniometer_long","position":"supine"})"), "/recorded/0/entry");
    there = elsewhere("finding", flexion_elsewhere("left", 85));
  }
  [[nodiscard]] std::string row(const std::string& member) const { return at(queue(), "/queue/0/" + member); }
  [[nodiscard]] std::string both() const { return "[\"" + own + "\",\"" + there + "\"]"; }
  [[nodiscard]] std::string body(const std::string& asked, const std::string& day) const {
    return R"("exam":")" + exam + R"(","about":"finding","entries":)" + both() + R"(,"asked":")" + asked + R"(","look_again":")" + day + R"(","seen":)" + seen();
  }
  Result<std::string> put_off(const std::string& asked = "Musa Invented, who measured the 85", const std::string& day = "2026-12-01") {
    return call("conflict.put_off", "{" + body(asked, day) + "," + request() + "}");
  }
};

}  // namespace

TEST_CASE("a line that was put off stays where it was, says whom and when to look again, is due from that day, and goes when it is settled") {
  Apart visit;
  const std::string harm = visit.row("harm");
  const std::string sent = "{" + visit.body("Musa Invented, who measured the 85", "2026-12-01") + "," + visit.request() + "}";
  const std::string reply = visit.ok("conflict.put_off", sent);
  CHECK(at(reply, "/put_off/asked") == "Musa Invented, who measured the 85");
  CHECK(at(reply, "/put_off/look_again") == "2026-12-01");
  CHECK(at(reply, "/put_off/due") == "false");
  CHECK(at(reply, "/revision/0") == at(reply, "/put_off/entry"));
  CHECK(at(visit.queue(), "/total") == "1");
  CHECK(visit.row("harm") == harm);
  CHECK(visit.row("put_off/0/entry") == at(reply, "/put_off/entry"));
  CHECK(visit.row("put_off/0/due") == "false");
  CHECK(holds(visit.line(), "Asked: Musa Invented, who measured the 85. Look again on 2026-12-01."));
  CHECK_FALSE(holds(visit.line(), "That day has come."));
  CHECK(holds(visit.line(), "To settle it, say which value holds"));
  CHECK(at(visit.ok("exam.read", R"({"exam":")" + visit.exam + "\"}"), "/exam/conflicts/0/about") == "finding");
  // Nothing of it leaves with the exam.
  CHECK_FALSE(holds(visit.note(), "Musa Invented"));
  visit.days_on(6);
  CHECK(visit.row("put_off/0/due") == "false");
  visit.days_on(1);
  CHECK(visit.row("put_off/0/due") == "true");
  CHECK(holds(visit.line(), "Look again on 2026-12-01. That day has come."));
  visit.write("conflict.settle", R"("take":")" + visit.there + R"(","reason":"Musa has looked it up")");
  CHECK(at(visit.queue(), "/total") == "0");
  // The same request still says what it said.
  const std::string again = visit.ok("conflict.put_off", sent);
  CHECK(at(again, "/repeat") == "true");
  CHECK(at(again, "/put_off/entry") == at(reply, "/put_off/entry"));
  std::string other = sent;
  other.replace(other.find("Musa"), 4, "Tuma");
  CHECK(codes_of(visit.call("conflict.put_off", other)) == "request.reused");
}

TEST_CASE("what cannot be put off is refused where it is wrong, and nothing is written") {
  Apart visit;
  const std::string head = visit.seen();
  const auto refused = [&](std::string from, const std::string& part, const std::string& by) {
    const std::size_t found = from.find(part);
    REQUIRE(found != std::string::npos);
    return visit.call("conflict.put_off", "{" + from.replace(found, part.size(), by) + "," + visit.request() + "}");
  };
  const std::string good = visit.body("Musa Invented", "2026-11-24");
  const auto empty = refused(good, "Musa Invented", "");
  CHECK(codes_of(empty) == "value.empty");
  CHECK(path_of(empty) == "/asked");
  const auto passed = refused(good, "2026-11-24", "2026-11-23");
  CHECK(codes_of(passed) == "value.date_order");
  CHECK(path_of(passed) == "/look_again");
  CHECK(codes_of(refused(good, "\"finding\"", "\"impression\"")) == "conflict.unknown");
  CHECK(codes_of(refused(good, visit.both(), "[]")) == "conflict.unknown");
  const auto part = refused(good, visit.both(), "[\"" + visit.own + "\"]");
  CHECK(codes_of(part) == "finding.stale");
  CHECK(path_of(part) == "/entries");
  CHECK(codes_of(refused(good, "\"seen\":" + head, "\"seen\":[]")) == "params.missing");
  CHECK(codes_of(refused(good, "\"seen\":" + head, "\"seen\":[\"" + visit.exam + "\"]")) == "revision.unknown");
  CHECK(codes_of(refused(good, "\"exam\":\"" + visit.exam + "\",", "")) == "value.all_or_one");
  CHECK(codes_of(refused(good, "\"exam\":\"" + visit.exam + "\",", "\"exam\":\"" + visit.exam + "\",\"persons\":[\"" + visit.person + "\"],")) == "value.all_or_one");
  CHECK(codes_of(refused(good, "\"exam\":\"" + visit.exam + "\",", "\"persons\":[\"" + visit.person + "\",\"" + visit.person + "\"],")) == "value.empty");
  CHECK(codes_of(refused(good, "\"exam\":\"" + visit.exam + "\",", "\"persons\":[\"" + visit.exam + "\"],")) == "person.unknown");
  CHECK(codes_of(refused(good, "\"exam\":\"" + visit.exam, "\"exam\":\"" + visit.person)) == "exam.unknown");
  for (const Scope scope : {Scope::viewer, Scope::sync, Scope::kiosk}) {
    visit.caller.scope = scope;
    CHECK(codes_of(visit.call("conflict.put_off", "{" + good + "," + visit.request() + "}")) == "token.scope");
  }
  visit.caller.scope = Scope::examiner;
  CHECK(visit.seen() == head);
  // Today is a day to look again.
  const std::string today = visit.ok("conflict.put_off", "{" + good + "," + visit.request() + "}");
  CHECK(at(today, "/put_off/due") == "true");
}

TEST_CASE("a line that a warning hangs on is put off past tomorrow, and any line past a year, only by whoever says so") {
  Apart visit;
  const auto far = visit.put_off("Musa Invented", "2027-11-30");
  CHECK(codes_of(far) == "value.unusual");
  CHECK(path_of(far) == "/look_again");
  const auto confirmed = [&](const std::string& day) {
    return visit.call("conflict.put_off", "{" + visit.body("Musa Invented", day) + R"(,"confirmed":["value.unusual"],)" + visit.request() + "}");
  };
  CHECK(confirmed("2027-11-30").has_value());
  // A foot without a pulse: the line is the one of the pulse.
  queue_lines::Visit urgent;
  urgent.findings(
      R"({"item":"history.mechanism","side":"midline","value":{"kind":"choice","choice":"twist"}},{"item":"vessel.pulse_dorsalis_pedis","side":"right","value":{"kind":"grade","scale":"pulse/0-3","grade":"2"}},{"item":"vessel.pulse_dorsalis_pedis","side":"left","value":{"kind":"grade","scale":"pulse/0-3","grade":"0"}})");
  model::FindingId finding;
  finding.bytes.fill(8);
  urgent.elsewhere("finding", R"({"finding":")" + finding.to_text() + R"(","observation":{"item":"vessel.pulse_dorsalis_pedis","side":"left","value":{"kind":"grade","scale":"pulse/0-3","grade":"2"}}})");
  REQUIRE(at(urgent.queue(), "/queue/0/alerts/0/urgency") == "now");
  const std::string entries = "[\"" + at(urgent.queue(), "/queue/0/entries/0/entry") + "\",\"" + at(urgent.queue(), "/queue/0/entries/1/entry") + "\"]";
  const auto wait = [&](const std::string& day, const std::string& more) {
    return urgent.call("conflict.put_off", R"({"exam":")" + urgent.exam + R"(","about":"finding","entries":)" + entries + R"(,"asked":"Musa Invented","look_again":")" + day + R"(",)" + more + R"("language":"en","seen":)" +
                                               urgent.seen() + "," + urgent.request() + "}");
  };
  const auto later = wait("2026-11-26", "");
  CHECK(codes_of(later) == "value.unusual");
  CHECK(holds(later.error().faults.front().text, "A warning hangs on this line"));
  CHECK(wait("2026-11-25", "").has_value());
  CHECK(wait("2026-11-30", R"("confirmed":["value.unusual"],)").has_value());
}

TEST_CASE("a clock that cannot be right refuses no day, and no line waits by it") {
  Apart visit;
  visit.days_on(-25 * 365);
  const auto reply = visit.put_off("Musa Invented", "2020-01-01");
  REQUIRE(reply.has_value());
  CHECK(at(*reply, "/put_off/due") == "true");
}

TEST_CASE("what two devices put off both stands; put off again by who knew of it, the first is not due any more; a third value is due at once") {
  Apart visit;
  REQUIRE(visit.put_off().has_value());
  visit.elsewhere("put_off", R"({"about":"finding","entries":)" + visit.both() + R"(,"asked":"the mother","look_again":"2026-11-26"})");
  CHECK(holds(visit.line(), "Asked: the mother. Look again on 2026-11-26."));
  CHECK(holds(visit.line(), "Asked: Musa Invented, who measured the 85. Look again on 2026-12-01."));
  CHECK(visit.row("put_off/2/entry").empty());
  visit.days_on(3);
  CHECK(visit.row("put_off/0/due") != visit.row("put_off/1/due"));  // the mother's day
  REQUIRE(visit.put_off("the mother again", "2026-12-05").has_value());
  CHECK(visit.row("put_off/0/again") == "true");
  CHECK(visit.row("put_off/1/again") == "true");
  CHECK(visit.row("put_off/0/due") == "false");
  CHECK(visit.row("put_off/2/due") == "false");
  model::FindingId finding;
  finding.bytes.fill(11);
  visit.elsewhere("finding", R"({"finding":")" + finding.to_text() + R"(","observation":{"item":"knee.flexion_active","side":"left","value":{"kind":"angle","deg":60,"toward":"flexion","toward_deg":60},"instrument":"goniometer_long","position":"supine"}})");
  CHECK(visit.row("put_off/2/changed") == "true");
  CHECK(visit.row("put_off/2/due") == "true");
  CHECK(holds(visit.line(), "Something else has come to stand here since: look again now."));
}

TEST_CASE("what is left open names who was asked, as of its own day, and a signed exam takes it too") {
  Apart visit;
  visit.write("exam.sign", R"("read_aloud":"Kofi Invented, born 2001, LEFT knee")");
  REQUIRE(visit.put_off().has_value());
  CHECK(at(visit.ok("exam.read", R"({"exam":")" + visit.exam + "\"}"), "/exam/state") == "signed");
  CHECK(at(visit.queue(), "/total") == "1");
  const auto open = [&](const std::string& day) { return visit.ok("loop.list", R"({"as_of":")" + day + R"(","language":"en"})"); };
  const auto loop_of = [](const std::string& list) {
    for (int i = 0; i < 9; ++i) {
      const std::string found = at(list, "/people/0/loops/" + std::to_string(i) + "/put_off/0");
      if (!found.empty()) {
        CHECK(at(list, "/people/0/loops/" + std::to_string(i) + "/loop") == "in_conflict");
        return found;
      }
    }
    return std::string("{}");
  };
  CHECK(at(loop_of(open("2026-11-30")), "/due") == "false");
  CHECK(at(loop_of(open("2026-12-01")), "/due") == "true");
  CHECK(holds(at(open("2026-12-01"), "/text"), "Asked: Musa Invented, who measured the 85. Look again on 2026-12-01. That day has come."));
}

TEST_CASE("what was written into a withdrawn exam can be put off as well") {
  Visit visit;
  visit.write("exam.withdraw", R"("reason":"begun twice by mistake")");
  const std::string late = visit.elsewhere("finding", flexion_elsewhere("left", 95));
  CHECK(at(visit.queue(), "/queue/0/about") == "withdrawal_unseen");
  visit.write("conflict.put_off", R"("about":"withdrawal_unseen","entries":[")" + late + R"("],"asked":"whoever withdrew it","look_again":"2026-11-30")");
  CHECK(at(visit.queue(), "/total") == "1");
  CHECK(at(visit.queue(), "/queue/0/put_off/0/asked") == "whoever withdrew it");
}

TEST_CASE("two births of a person, and a pair that looks alike, are put off in the person's record; of a pair the line ends with the decision") {
  Visit visit;
  const std::string other = visit.registered("Kofi Invnted", "2001-02-04");
  const auto pairs = [&] { return visit.ok("conflict.list", R"({"language":"en"})"); };
  REQUIRE(at(pairs(), "/total") == "1");
  REQUIRE(at(pairs(), "/queue/0/about") == "look_alike");
  const std::string persons = at(pairs(), "/queue/0/pair/persons");
  const std::string first_seen = at(pairs(), "/queue/0/pair/people/0/revision");
  const auto of_pair = [&](const std::string& about) {
    return visit.call("conflict.put_off", R"({"persons":)" + persons + R"(,"about":")" + about + R"(","entries":[],"asked":"the aunt of both","look_again":"2026-12-08","seen":)" + first_seen + "," + visit.request() + "}");
  };
  CHECK(codes_of(of_pair("pair")) == "conflict.unknown");
  REQUIRE(of_pair("look_alike").has_value());
  CHECK(at(pairs(), "/queue/0/put_off/0/asked") == "the aunt of both");
  CHECK(holds(at(pairs(), "/text"), "Asked: the aunt of both. Look again on 2026-12-08."));
  CHECK(at(visit.ok("person.read", R"({"person":")" + other + "\"}"), "/person/names/0/text") == "Kofi Invnted");
  visit.ok("pair.decide", R"({"persons":)" + persons + R"(,"same":"no","reason":"asked_family","seen":[],)" + visit.request() + "}");
  CHECK(at(pairs(), "/total") == "0");
  CHECK(codes_of(of_pair("look_alike")) == "conflict.unknown");
  // Two births for one.
  visit.person_elsewhere(R"({"birth":{"date":"1999-01-01"}})");
  const std::string queue = visit.queue();
  REQUIRE(at(queue, "/queue/0/about") == "birth");
  visit.ok("conflict.put_off", R"({"persons":[")" + visit.person + R"("],"about":"birth","entries":[)" + "\"" + at(queue, "/queue/0/entries/0/entry") + "\",\"" + at(queue, "/queue/0/entries/1/entry") +
                                   R"("],"asked":"his mother","look_again":"2026-12","seen":)" + at(queue, "/queue/0/revision") + "," + visit.request() + "}");
  CHECK(at(visit.queue(), "/queue/0/put_off/0/asked") == "his mother");
  // Who amends by the revision that was shown, in which the put-off stands, replaces the values that stand with it.
  const std::string shown = at(visit.ok("person.read", R"({"person":")" + visit.person + "\"}"), "/revision");
  const std::string amend = R"({"person":")" + visit.person + R"(","changes":{"birth":{"date":"2001-04-02"}},"reason":"his mother knows","replaces":)" + shown + R"(,"seen":)" + shown + "," + visit.request() + "}";
  // A record in which the last thing written is a put-off is of a person still.
  CHECK(at(visit.ok("person.find", R"({"limit":10})"), "/people/1/person/person") != "");
  CHECK(at(visit.queue(), "/queue/0/put_off/0/due") == "false");
  visit.days_on(7);
  CHECK(at(visit.queue(), "/queue/0/put_off/0/due") == "true");
  visit.ok("person.amend", amend);
  CHECK(at(visit.queue(), "/total") == "0");
  CHECK(at(visit.ok("person.amend", amend), "/repeat") == "true");
}

}  // namespace limbledger::service::test::put_offs
