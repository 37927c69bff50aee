// What a line of the queue says to somebody who was at none of the visits, and what follows from deciding it: dangers, sides, versions,
// withdrawn exams, births. Logic tests of our own rules (ledger, items 18, 27 to 30; clinical safety, part D); everything is invented.
#include "tests/unit/service/clinic/queue_visit.hpp"

namespace limbledger::service::test::queue_lines {

namespace {

const std::string both_pulses =
    R"({"item":"history.mechanism","side":"midline","value":{"kind":"choice","choice":"twist"}},{"item":"vessel.pulse_dorsalis_pedis","side":"right","value":{"kind":"grade","scale":"pulse/0-3","grade":"2"}},{"item":"vessel.pulse_dorsalis_pedis","side":"left","value":{"kind":"grade","scale":"pulse/0-3","grade":"0"}})";

}  // namespace

TEST_CASE("a line that an alert hangs on says so and comes first, and the decision that takes the alert back says that it did") {
  Visit visit;
  visit.findings(both_pulses);
  model::FindingId finding;
  finding.bytes.fill(8);
  const std::string full = visit.elsewhere(
      "finding", R"({"finding":")" + finding.to_text() + R"(","observation":{"item":"vessel.pulse_dorsalis_pedis","side":"left","value":{"kind":"grade","scale":"pulse/0-3","grade":"2"}}})");
  const std::string queue = visit.queue();
  CHECK(at(queue, "/queue/0/harm") == "danger");
  CHECK(at(queue, "/queue/0/alerts/0/urgency") == "now");
  CHECK(holds(visit.line(), "URGENT, and no action is recorded: Call now: no pulse"));
  CHECK(holds(visit.line(), "(alert.handle; alert " + at(queue, "/queue/0/alerts/0/alert") + ", side left)"));
  CHECK(holds(visit.line(), "Before, nothing stood there."));
  CHECK(holds(visit.line(), "Both may be true, of different times."));
  const auto settle = [&](const std::string& more) {
    return visit.call("conflict.settle", R"({"exam":")" + visit.exam + R"(","take":")" + full + R"(","reason":"felt again","language":"en",)" + more + R"("seen":)" + visit.seen() + "," + visit.request() + "}");
  };
  CHECK(codes_of(settle("")) == "alert.would_end");
  CHECK(at(visit.queue(), "/total") == "1");
  const auto settled = settle(R"("confirmed":["alert.would_end"],)");
  REQUIRE(settled.has_value());
  const std::string& reply = *settled;
  CHECK(reply.find("withdrawn_by_correction") != std::string::npos);
  CHECK_FALSE(at(reply, "/alerts/0/text").empty());
}

TEST_CASE("what was done about an alert stands on the line that it hangs on, and answers it still once its own value is taken") {
  Visit visit;
  const std::string felt = visit.findings(both_pulses);
  model::FindingId finding;
  finding.bytes.fill(8);
  visit.elsewhere(
      "finding", R"({"finding":")" + finding.to_text() + R"(","observation":{"item":"vessel.pulse_dorsalis_pedis","side":"left","value":{"kind":"grade","scale":"pulse/0-3","grade":"2"}}})");
  const std::string alert = at(visit.queue(), "/queue/0/alerts/0/alert");
  visit.write("alert.handle", R"("alert":")" + alert + R"(","side":"left","action":"sent to the hospital at 14:20")");
  const std::string queue = visit.queue();
  CHECK(at(queue, "/queue/0/alerts").empty());
  CHECK(at(queue, "/queue/0/answered/0/action") == "sent to the hospital at 14:20");
  CHECK(holds(visit.line(), "STILL STANDS: Call now: no pulse"));
  CHECK(holds(visit.line(), "was done: sent to the hospital at 14:20. That hangs on this line"));
  const std::string reply = visit.write("conflict.settle", R"("take":")" + at(felt, "/recorded/2/entry") + R"(","reason":"felt by both of us")");
  CHECK(at(reply, "/alerts/0/alert") == alert);
  CHECK(at(reply, "/alerts/0/state") == "handled");
}

TEST_CASE("of two records of consent the one that holds is written with how it is known, and nothing is sent until then") {
  Visit visit;
  visit.write("consent.record", R"("consent":{"examine":"yes","record":"yes","send":"no","by":"self"})");
  visit.elsewhere("consent", R"({"consent":{"examine":"yes","record":"yes","send":"yes","by":"his son"}})");
  REQUIRE(at(visit.queue(), "/queue/0/about") == "consent");
  const auto decide = [&](const std::string& more) {
    return visit.call("consent.record", R"({"exam":")" + visit.exam + R"(","consent":{"send":"yes","by":"self"},)" + more + R"("seen":)" + visit.seen() + "," + visit.request() + "}");
  };
  CHECK(codes_of(decide("")) == "value.empty");
  CHECK(codes_of(decide(R"("reason":"",)")) == "value.empty");
  CHECK(at(visit.queue(), "/total") == "1");
  // His own no stands against it.
  const auto asked = decide(R"("reason":"asked by telephone",)");
  CHECK(codes_of(asked) == "consent.turned");
  CHECK(path_of(asked) == "/consent/send");
  CHECK(at(visit.queue(), "/total") == "1");
  CHECK(decide(R"("reason":"asked by telephone","confirmed":["consent.turned"],)").has_value());
  CHECK(at(visit.queue(), "/total") == "0");
}

TEST_CASE("a no of the person becomes a yes only where that is confirmed; a yes becomes a no unasked") {
  Visit visit;
  const auto say = [&](const std::string& send, const std::string& more) {
    return visit.call("consent.record", R"({"exam":")" + visit.exam + R"(","consent":{"examine":"yes","record":"yes","send":")" + send + R"(","by":"her son"},)" + more + R"("seen":)" + visit.seen() + "," + visit.request() + "}");
  };
  CHECK(say("yes", "").has_value());
  CHECK(say("no", "").has_value());
  CHECK(codes_of(say("yes", "")) == "consent.turned");
  CHECK(holds(visit.note(), "consent to send: no"));
  CHECK(say("yes", R"("confirmed":["consent.turned"],)").has_value());
}

TEST_CASE("a value of the wrong side that was taken back leaves a trace on the page: whose it was, what it was, and why") {
  Visit visit;
  visit.write("exam.swap_sides", R"("reason":"the other knee was meant")");
  visit.elsewhere("finding", flexion_elsewhere("left", 96));
  CHECK(holds(visit.line(), "96\u00b0, long goniometer, supine"));
  model::FindingId finding;
  finding.bytes.fill(9);
  visit.write("finding.withdraw", R"("finding":")" + finding.to_text() + R"(","reason":"it was the right leg, he says")");
  CHECK(at(visit.queue(), "/total") == "0");
  const std::string note = visit.note();
  CHECK(holds(note, "Finding taken back: taken back, reason: it was the right leg, he says"));
  CHECK(holds(note, "Not taken: Knee flexion, active, LEFT: 96\u00b0"));
}

TEST_CASE("a signature does not say which side a value is of that was written before left and right were exchanged") {
  Visit visit;
  visit.write("exam.swap_sides", R"("reason":"the other knee was meant")");
  const std::string there = visit.elsewhere("finding", flexion_elsewhere("left", 96));
  REQUIRE(at(visit.queue(), "/queue/0/about") == "side_exchange_unseen");
  visit.write("exam.sign", R"("read_aloud":"Kofi Invented, LEFT knee")");
  CHECK(at(visit.queue(), "/queue/0/about") == "side_exchange_unseen");
  CHECK(holds(visit.note(), "NOT DECIDED: Which side?"));
  visit.write("conflict.settle", R"("take":")" + there + R"(","reason":"asked him")");
  CHECK(at(visit.queue(), "/total") == "0");
}

TEST_CASE("what stood against each other when the exam was signed leaves the queue by an addendum of somebody who had seen all of it, and by nothing earlier; the page keeps both") {
  Visit visit;
  visit.write("impression.record", R"("impression":{"text":"Bruise.","side":"left"},"replaces":[])");
  visit.elsewhere("impression", R"({"impression":{"text":"Torn ligament.","side":"left"}})");
  REQUIRE(at(visit.queue(), "/queue/0/settle_by") == "impression.record");
  visit.write("exam.sign", R"("read_aloud":"Kofi Invented, LEFT knee")");
  CHECK(at(visit.queue(), "/queue/0/settle_by") == "addendum.record");
  CHECK(holds(visit.ok("loop.list", R"({"as_of":"2026-12-24","language":"en"})"), "Kofi Invented"));
  visit.write("addendum.record", R"("kind":"text","text":"Torn ligament holds.","reason":"both asked")");
  CHECK(at(visit.queue(), "/total") == "0");
  CHECK_FALSE(holds(visit.ok("loop.list", R"({"as_of":"2026-12-24","language":"en"})"), "in_conflict"));
  CHECK(holds(visit.note(), "Bruise."));
  CHECK(holds(visit.note(), "Torn ligament holds."));
}

TEST_CASE("whom an alert calls for comes before which side it is of somebody who is calm") {
  Visit visit;
  model::FindingId finding;
  finding.bytes.fill(8);
  const std::string urgent = visit.exam;
  visit.findings(both_pulses);
  visit.elsewhere(
      "finding", R"({"finding":")" + finding.to_text() + R"(","observation":{"item":"vessel.pulse_dorsalis_pedis","side":"left","value":{"kind":"grade","scale":"pulse/0-3","grade":"2"}}})");
  const std::string calm = visit.ok("exam.open", R"({"complaint":"free","side":"left","setting":"outreach","offset_min":180,)" + visit.request() + "}");
  visit.exam = at(calm, "/exam/exam");
  visit.opened = at(calm, "/revision/0");
  visit.write("exam.swap_sides", R"("reason":"the other knee was meant")");
  visit.elsewhere("finding", flexion_elsewhere("left", 96));
  const std::string queue = visit.queue();
  CHECK(at(queue, "/total") == "2");
  CHECK(at(queue, "/queue/0/exam") == urgent);
  CHECK(at(queue, "/queue/1/harm") == "wrong_side");
}

TEST_CASE("of two versions of an exam each writer's own change is told, and what neither knows can be written as not known") {
  Visit visit;
  visit.write("exam.amend", R"("changes":{"side":"right"})");
  visit.elsewhere("exam", R"({"person":")" + visit.person + R"(","complaint":"acute_knee","side":"left","setting":"outreach","offset_min":180,"injured_on":"2026-11-20"})", {visit.opened});
  const std::string line = visit.line();
  CHECK(holds(line, "Side: RIGHT (before: LEFT)"));
  CHECK(holds(line, "Day of the injury: left as it was (2026-11-23)"));
  CHECK(holds(line, "Day of the injury: 2026-11-20 (before: 2026-11-23)"));
  CHECK(holds(line, "Side: left as it was (LEFT)"));
  CHECK(holds(line, "write what holds of Side, Day of the injury"));
  CHECK(holds(visit.note(), "NOT DECIDED: What is the exam of?"));
  const auto amend = [&](const std::string& more) {
    return visit.call("exam.amend", R"({"exam":")" + visit.exam + R"(",)" + more + R"(,"seen":)" + visit.seen() + "," + visit.request() + "}");
  };
  CHECK(codes_of(amend(R"("changes":{"side":"right"})")) == "params.missing");
  CHECK(codes_of(amend(R"("changes":{"side":"right"},"not_known":["complaint"])")).find("params.unknown_word") != std::string::npos);
  CHECK(codes_of(amend(R"("changes":{"side":"right","injured_on":"2026-11-20"},"not_known":["injured_on"])")) == "value.all_or_one");
  const auto done = amend(R"("changes":{"side":"right"},"not_known":["injured_on"],"reason":"asked him: the right one, and he does not know the day")");
  REQUIRE(done.has_value());
  CHECK(at(*done, "/exam/side") == "right");
  CHECK(at(*done, "/exam/injured_on").empty());
  CHECK(at(visit.queue(), "/total") == "0");
  CHECK(holds(visit.note(), "Side: RIGHT"));
  CHECK(holds(visit.note(), "Reason: asked him: the right one"));
  CHECK(holds(visit.note(), "Day of the injury: not known (a new value"));
}

TEST_CASE("a value that an exchange turned is told as it was written and as it stands, and one that was not turned as that") {
  Visit visit;
  visit.findings(R"({"item":"history.pop","side":"left","value":{"kind":"answer","answer":"no"}})");
  visit.write("exam.swap_sides", R"("reason":"the other knee was meant")");
  const std::string there = visit.elsewhere("finding", flexion_elsewhere("left", 96));
  const std::string line = visit.line();
  CHECK(holds(line, "LEFT: 96\u00b0, long goniometer, supine (as it was written; the exchange has not turned it, and it stands as LEFT)"));
  CHECK(holds(line, "The exam itself stands as: knee, recent injury or recent pain, LEFT."));
  CHECK(holds(line, "Turned by the exchange: "));
  CHECK(holds(line, "LEFT: no (written LEFT; turned by the exchange, it stands as RIGHT now)"));
  CHECK_FALSE(holds(line, "did not know"));
  model::FindingId finding;
  finding.bytes.fill(9);
  CHECK(holds(line, "finding " + finding.to_text()));  // for finding.withdraw
  CHECK(holds(visit.note(), "NOT DECIDED: Which side?"));
  // Who decides has to have been shown the exchange.
  CHECK(codes_of(visit.call("conflict.settle", R"({"exam":")" + visit.exam + R"(","take":")" + there + R"(","reason":"asked","seen":[")" + there + "\"]," + visit.request() + "}")) == "finding.stale");
  visit.write("conflict.settle", R"("take":")" + there + R"(","reason":"asked")");
  CHECK(at(visit.queue(), "/total") == "0");
}

TEST_CASE("who wrote into the only exam of a person that was withdrawn is not lost: it is said on the line, and the person stays on the list until there is another") {
  Visit visit;
  visit.write("exam.withdraw", R"("reason":"begun twice by mistake")");
  visit.elsewhere("finding", flexion_elsewhere("left", 95));
  CHECK(holds(visit.line(), "NO OTHER EXAM OF THIS PERSON IS HERE"));
  CHECK(at(visit.ok("day.list", R"({"day":"2026-11-24"})"), "/visits/0/unseen") == "true");
  const auto loops = [&] { return visit.ok("loop.list", R"({"as_of":"2026-12-24","language":"en"})"); };
  CHECK(loops().find("in_conflict") != std::string::npos);
  CHECK(loops().find("withdrawn_alone") != std::string::npos);
  visit.write("addendum.record", R"("kind":"text","reason":"the queue","text":"It stays withdrawn.")");
  CHECK(at(visit.queue(), "/total") == "0");
  CHECK(loops().find("in_conflict") == std::string::npos);
  CHECK(loops().find("withdrawn_alone") != std::string::npos);
  CHECK(holds(at(loops(), "/text"), "Kofi Invented"));
  const std::string again = visit.ok("exam.open", R"({"person":")" + visit.person + R"(","complaint":"acute_knee","side":"left","setting":"outreach","offset_min":180,)" + visit.request() + "}");
  const std::string other = at(again, "/exam/exam");
  CHECK(loops().find("withdrawn_alone") != std::string::npos);  // opened alone: nobody has been seen in it
  visit.ok("finding.record", R"({"exam":")" + other + R"(","findings":[{"item":"history.pop","side":"left","value":{"kind":"answer","answer":"no"}}],"seen":[")" +
                                 at(again, "/revision/0") + "\"]," + visit.request() + "}");
  CHECK(loops().find("withdrawn_alone") == std::string::npos);
  // A line that is still open names it.
  visit.elsewhere("finding", flexion_elsewhere("right", 95));
  CHECK(at(visit.queue(), "/queue/0/other_exams/0") == other);
  CHECK(holds(visit.line(), "Another exam of this person is here: knee, recent injury or recent pain, LEFT"));
}

TEST_CASE("an exchange of left and right after the signature stands in the head of the note, with who did it and why; one before it does not") {
  Visit visit;
  visit.findings(both_pulses);
  visit.write("exam.swap_sides", R"("reason":"seen from the foot of the couch")");
  visit.write("impression.record", R"("impression":{"text":"Sprained knee","side":"left"},"replaces":[])");
  visit.write("exam.sign", R"("read_aloud":"Kofi Invented, LEFT knee","confirmed":["note.protected"])");
  CHECK_FALSE(holds(visit.note(), "EXCHANGED AFTER THIS SIGNATURE"));
  visit.world.reading.wall_ms += 60'000;
  visit.write("exam.swap_sides", R"("reason":"the other knee was meant")");
  const std::string note = visit.note();
  CHECK(holds(note, "WERE EXCHANGED AFTER THIS SIGNATURE by"));
  CHECK(holds(note, "(reason: the other knee was meant): they are printed as they stand now, not as they were signed."));
  CHECK(note.find("EXCHANGED AFTER THIS SIGNATURE") < note.find("Complaint:"));
}

TEST_CASE("what was signed stands on the line of what the signer had not seen, and whose exam it is stands undecided on its page") {
  Visit visit;
  visit.write("impression.record", R"("impression":{"text":"Sprained knee","side":"left"},"replaces":[])");
  visit.write("exam.sign", R"("read_aloud":"Kofi Invented, LEFT knee")");
  visit.elsewhere("finding", flexion_elsewhere("left", 95));
  CHECK(holds(visit.line(), "signed the exam, reading out Kofi Invented, LEFT knee, with the impression Sprained knee"));
  Visit whose;
  const std::string yaw = whose.registered("Yaw Otherwise", "1990"), awa = whose.registered("Awa Elsewhere", "1991");
  whose.write("exam.move", R"("person":")" + yaw + R"(","reason":"namesake")");
  ledger::NewOperation operation;
  model::ExamId id;
  REQUIRE(model::ExamId::from_text(whose.exam, id).empty());
  operation.object = model::as_object(id);
  operation.op = "move";
  REQUIRE(model::RequestId::from_text(request_id(990), operation.request).empty());
  operation.after.emplace_back();
  REQUIRE(model::EntryId::from_text(whose.opened, operation.after.back()).empty());
  operation.replaces = operation.after;
  operation.by = whose.desk->examiner();
  operation.body_json = R"({"person":")" + awa + R"(","reason":"namesake"})";
  operation.sign = true;
  const auto appended = whose.desk->log().append({&operation, 1}, whose.desk->edition().id(), whose.desk->examiner_key());
  REQUIRE(appended.has_value());
  whose.desk->records().changed(*appended);
  CHECK(holds(whose.line(), "opened the exam for Kofi Invented"));
  CHECK(holds(whose.line(), "person " + yaw));
  CHECK(holds(whose.line(), "person " + awa));
  const std::string note = whose.note();
  CHECK(holds(note, "NOT DECIDED: Whose exam is it? It was given to two people."));
  CHECK(holds(note, "Yaw Otherwise"));
  CHECK(holds(note, "Whose exam it is has not been decided"));
  CHECK_FALSE(holds(note, "No name recorded"));
  const std::string left = at(whose.ok("loop.list", R"({"as_of":"2026-12-24","language":"en"})"), "/text");
  CHECK(holds(left, "Awa Elsewhere"));
  CHECK_FALSE(holds(left, "born 199"));
  // Once decided the page names the other's record and not the other.
  whose.write("exam.move", R"("person":")" + yaw + R"(","reason":"asked the family")");
  const std::string decided = whose.note();
  CHECK(holds(decided, "Whose exam it is: the record " + yaw));
  CHECK(holds(decided, "the record " + awa));
  CHECK_FALSE(holds(decided, "Awa Elsewhere"));
}

TEST_CASE("who was decided to be one person was born once: two days are asked after until a record is corrected") {
  Visit visit;
  const std::string other = visit.registered("Koffi Invented", "2001-02-04");
  visit.ok("pair.decide", R"({"persons":[")" + visit.person + R"(",")" + other + R"("],"same":"yes","reason":"asked_person","seen":[],)" + visit.request() + "}");
  const std::string queue = visit.queue();
  CHECK(at(queue, "/total") == "1");
  CHECK(at(queue, "/queue/0/about") == "births_of_one");
  CHECK(holds(visit.line(), "Koffi Invented, born 2001-02-04: person " + other));
  const std::string seen = at(visit.ok("person.read", R"({"person":")" + other + "\"}"), "/revision");
  visit.ok("person.amend", R"({"person":")" + other + R"(","changes":{"birth":{"date":"2001-04-02"}},"replaces":)" + seen + R"(,"seen":)" + seen + R"(,"reason":"read off his card",)" + visit.request() + "}");
  CHECK(at(visit.queue(), "/total") == "0");
}

TEST_CASE("two births, neither knowing of the other: the line is told in the clinic's time, names what to send, and the page says that it is not decided") {
  Visit visit;
  const std::string first = at(visit.ok("person.read", R"({"person":")" + visit.person + "\"}"), "/revision");
  const auto amend = [&](const std::string& birth, const std::string& replaces, const std::string& seen, const std::string& more = "") {
    return visit.call("person.amend", R"({"person":")" + visit.person + R"(","changes":{"birth":{"date":")" + birth + R"("}},"replaces":)" + replaces + R"(,"seen":)" + seen + more + "," + visit.request() + "}");
  };
  REQUIRE(amend("2001-04-20", first, first).has_value());
  visit.person_elsewhere(R"({"birth":{"date":"2002-04-02"}})", at(first, "/0"), {at(first, "/0")});
  const std::string queue = visit.queue();
  CHECK(holds(visit.line(), "UTC+03:00: born 2001-04-20"));
  CHECK_FALSE(holds(visit.line(), "UTC:"));
  CHECK(holds(visit.line(), "Before: "));
  CHECK(holds(visit.note(), "NOT DECIDED: Two births for one person."));
  const std::string revision = at(queue, "/queue/0/revision");
  const auto refused = amend("2002-04-02", "[]", revision);
  CHECK(codes_of(refused).find("finding.stale") != std::string::npos);
  REQUIRE(amend("2002-04-02", at(queue, "/queue/0/replaces"), revision, R"(,"reason":"read off his card")").has_value());
  CHECK(at(visit.queue(), "/total") == "0");
  CHECK(holds(visit.note(), "Reason: read off his card."));
}

}  // namespace limbledger::service::test::queue_lines
