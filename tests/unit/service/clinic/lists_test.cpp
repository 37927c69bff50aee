// day.list, loop.list and conflict.list with conflict.settle: what is left of a day, by name, and what disagrees, the gravest first.
// Requirement 14 of clinical safety names what the lists hold; people are invented.
#include "core/ledger/fold/records.hpp"
#include "core/ledger/log/log.hpp"
#include "core/report/words/words.hpp"
#include "tests/unit/service/desk_fixture.hpp"

namespace limbledger::service::test::clinic_lists {

namespace {

std::string name_on_list(const DeskFixture& fixture, const std::string& name, unsigned request) {
  return at(fixture.ok("person.register", R"({"names":[{"text":")" + name + R"("}],"sex":"male","birth":{"date":"2001"},"home":"Upper Ford","request":")" + request_id(request) + "\"}"),
            "/person/person");
}

struct OpenedExam {
  std::string exam;
  std::string seen;  // as JSON
};

OpenedExam knee_exam(const DeskFixture& fixture, const std::string& person, unsigned request, const std::string& more = "") {
  const std::string reply = fixture.ok("exam.open", R"({"person":")" + person + R"(","complaint":"acute_knee","side":"left","setting":"outreach","offset_min":0,"injured_on":"2026-11-23")" + more +
                                                        R"(,"request":")" + request_id(request) + "\"}");
  return {at(reply, "/exam/exam"), at(reply, "/revision")};
}

void record(const DeskFixture& fixture, OpenedExam& exam, const std::string& findings, unsigned request) {
  exam.seen = at(fixture.ok("finding.record", R"({"exam":")" + exam.exam + R"(","findings":[)" + findings + R"(],"seen":)" + exam.seen + R"(,"request":")" + request_id(request) + "\"}"), "/revision");
}

const std::string no_pulse =
    R"({"item":"history.mechanism","side":"midline","value":{"kind":"choice","choice":"twist"}},{"item":"vessel.pulse_dorsalis_pedis","side":"right","value":{"kind":"grade","scale":"pulse/0-3","grade":"2"}},{"item":"vessel.pulse_dorsalis_pedis","side":"left","value":{"kind":"grade","scale":"pulse/0-3","grade":"0"}})";

std::string settle(const OpenedExam& exam, const std::string& take, const std::string& seen, unsigned request, const std::string& reason = "looked at again together") {
  return R"({"exam":")" + exam.exam + R"(","take":")" + take + R"(","reason":")" + reason + R"(","seen":)" + seen + R"(,"request":")" + request_id(request) + "\"}";
}

// As another tablet would have written it that had been shown `after` and nothing since.
model::EntryId from_elsewhere(DeskFixture& fixture, const OpenedExam& exam, const std::string& op, const std::string& body, const std::string& after, unsigned request,
                              bool sign = false) {
  ledger::NewOperation operation;
  model::ExamId id;
  REQUIRE(model::ExamId::from_text(exam.exam, id).empty());
  operation.object = model::as_object(id);
  operation.op = op;
  REQUIRE(model::RequestId::from_text(request_id(request), operation.request).empty());
  model::EntryId seen;
  REQUIRE(model::EntryId::from_text(after, seen).empty());
  operation.after = {seen};
  operation.by = fixture.desk->examiner();
  operation.body_json = body;
  operation.sign = sign;
  const auto appended = fixture.desk->log().append({&operation, 1}, fixture.desk->edition().id(), fixture.desk->examiner_key());
  REQUIRE(appended.has_value());
  fixture.desk->records().changed(*appended);
  return appended->front().entry();
}

std::string flexion_elsewhere(int deg) {
  model::FindingId finding;
  finding.bytes.fill(9);
  return R"({"finding":")" + finding.to_text() + R"(","observation":{"item":"knee.flexion_active","side":"left","value":{"kind":"angle","deg":)" + std::to_string(deg) +
         R"(,"toward":"flexion","toward_deg":)" + std::to_string(deg) + R"(},"instrument":"goniometer_long","position":"supine"}})";
}

const std::string flexion_here =
    R"({"item":"knee.flexion_active","side":"left","value":{"kind":"angle","toward_deg":110},"instrument":"goniometer_long","position":"supine"})";

}  // namespace

TEST_CASE("the day list holds who came, what is left, and alerts without an action, until something was done about them") {
  const DeskFixture fixture;
  OpenedExam exam = knee_exam(fixture, name_on_list(fixture, "Kofi Invented", 1), 2);
  record(fixture, exam, no_pulse, 3);
  const std::string list = fixture.ok("day.list", R"({"day":"2026-11-24","language":"en"})");
  CHECK(at(list, "/came") == "1");
  CHECK(at(list, "/open") == "1");
  CHECK(at(list, "/with_alerts") == "1");
  CHECK(at(list, "/visits/0/person/names/0/text") == "Kofi Invented");
  CHECK(at(list, "/visits/0/alerts/0/urgency") == "now");
  CHECK(at(list, "/visits/0/left").find("impression") != std::string::npos);
  const std::string text = at(list, "/text");
  CHECK(text.find("DAY LIST 2026-11-24") != std::string::npos);
  CHECK(text.find("No action recorded: Call now: no pulse") != std::string::npos);
  fixture.ok("alert.handle", R"({"exam":")" + exam.exam + R"(","alert":")" + at(list, "/visits/0/alerts/0/alert") + R"(","side":"left","action":"told the surgeon","seen":)" + exam.seen +
                                 R"(,"request":")" + request_id(4) + "\"}");
  CHECK(at(fixture.ok("day.list", R"({"day":"2026-11-24"})"), "/with_alerts") == "0");
  CHECK(at(fixture.ok("day.list", R"({"day":"2026-11-23"})"), "/visits") == "[]");
  CHECK(at(fixture.ok("day.list", R"({"day":"2026-11"})"), "/came") == "1");  // a month is a list of its days
}

TEST_CASE("HC-084: an exam of a clock that cannot have been right belongs to no day and is named beside every one") {
  DeskFixture fixture;
  const std::string person = name_on_list(fixture, "Kofi Invented", 1);
  fixture.world.reading.wall_ms = 978307200000;  // 2001-01-01
  knee_exam(fixture, person, 2, R"(,"confirmed":["value.unusual"])");
  fixture.world.reading.wall_ms = 1795515300000;
  const std::string list = fixture.ok("day.list", R"({"day":"2026-11-24","language":"en"})");
  CHECK(at(list, "/visits") == "[]");
  CHECK(at(list, "/undated/0/person/names/0/text") == "Kofi Invented");
  CHECK(at(list, "/text").find("Of a day not known") != std::string::npos);
  CHECK(at(list, "/text").find("of a day not known: 1, below") != std::string::npos);
}

TEST_CASE("a viewer's lists hold nothing that protects a person, and say nothing of it") {
  DeskFixture fixture;
  OpenedExam exam = knee_exam(fixture, name_on_list(fixture, "Kofi Invented", 1), 2);
  const std::string before = fixture.ok("day.list", R"({"day":"2026-11-24","language":"en"})");
  record(fixture, exam, R"({"item":"history.hurt_or_afraid","side":"midline","value":{"kind":"answer","answer":"yes"}})", 3);
  fixture.caller.scope = Scope::viewer;
  const std::string after = fixture.ok("day.list", R"({"day":"2026-11-24","language":"en"})");
  CHECK(at(after, "/visits/0/alerts") == at(before, "/visits/0/alerts"));
  CHECK(at(after, "/text").find("protect") == std::string::npos);
  CHECK(fixture.ok("loop.list", R"({"as_of":"2026-12-24","language":"en"})").find("alert_without_action") == std::string::npos);
}

TEST_CASE("open loops are listed by name, who cannot wait first, and go when what was done is recorded") {
  const DeskFixture fixture;
  OpenedExam calm = knee_exam(fixture, name_on_list(fixture, "Awa Invented", 1), 2);
  const std::string planned = fixture.ok("plan.record", R"({"exam":")" + calm.exam + R"(","plan_items":[{"kind":"referral","text":"Knee clinic","side":"left","by":"2026-12-08"},{"kind":"review","text":"look again","by":"2026-12-01"}],"replaces":[],"seen":)" +
                                                           calm.seen + R"(,"request":")" + request_id(3) + "\"}");
  OpenedExam urgent = knee_exam(fixture, name_on_list(fixture, "Kofi Invented", 4), 5);
  record(fixture, urgent, no_pulse, 6);
  const std::string list = fixture.ok("loop.list", R"({"as_of":"2026-12-24","language":"en"})");
  CHECK(at(list, "/people/0/person/names/0/text") == "Kofi Invented");
  CHECK(at(list, "/people/0/loops/0/loop") == "alert_without_action");
  CHECK(at(list, "/people/0/loops/1/loop") == "unsigned_exam");
  CHECK(at(list, "/people/1/loops/0/loop") == "unsigned_exam");
  CHECK(at(list, "/people/1/loops/1/loop") == "referral_past_day");
  CHECK(at(list, "/people/1/loops/2/loop") == "review_overdue");
  CHECK(at(list, "/people/1/loops/1/plan") == "Knee clinic");
  CHECK(at(list, "/text").find("Referral without an answer, due 2026-12-08 (exam of 2026-11-24), LEFT:") != std::string::npos);
  // On the day itself nothing of it is past.
  CHECK(at(fixture.ok("loop.list", R"({"as_of":"2026-11-24"})"), "/people/1/loops").empty());
  fixture.ok("plan.follow", R"({"exam":")" + calm.exam + R"(","plan_item":")" + at(planned, "/exam/plan/0/plan_item") + R"(","became":"answered","seen":)" + at(planned, "/revision") +
                                R"(,"request":")" + request_id(7) + "\"}");
  CHECK(fixture.ok("loop.list", R"({"as_of":"2026-12-24"})").find("referral_past_day") == std::string::npos);
}

TEST_CASE("what is left open at one place knows what was answered at another") {
  const DeskFixture fixture;
  const auto place = [&](const std::string& name, unsigned request) {
    return at(fixture.ok("place.amend", R"({"changes":{"name":")" + name + R"("},"replaces":[],"seen":[],"request":")" + request_id(request) + "\"}"), "/places/0/place/place");
  };
  const std::string ford = place("Upper Ford", 20), hill = place("Far Hill", 21);
  const std::string person = name_on_list(fixture, "Awa Invented", 1);
  const OpenedExam first = knee_exam(fixture, person, 2, R"(,"place":")" + ford + "\"");
  fixture.ok("plan.record", R"({"exam":")" + first.exam + R"(","plan_items":[{"kind":"review","text":"look again","by":"2026-12-01"}],"replaces":[],"seen":)" + first.seen + R"(,"request":")" +
                                request_id(3) + "\"}");
  const auto at_ford = [&] { return fixture.ok("loop.list", R"({"as_of":"2026-12-24","place":")" + ford + "\"}"); };
  CHECK(at_ford().find("review_overdue") != std::string::npos);
  fixture.ok("exam.open", R"({"person":")" + person + R"(","complaint":"review","side":"left","setting":"outreach","offset_min":0,"place":")" + hill + R"(","reviews":")" + first.exam +
                              R"(","request":")" + request_id(4) + "\"}");
  CHECK(at_ford().find("review_overdue") == std::string::npos);
  CHECK(at_ford().find("unsigned_exam") != std::string::npos);
  CHECK(at(at_ford(), "/people/0/loops/1").empty());  // the other place's is not told here
  CHECK(at(fixture.ok("loop.list", R"({"as_of":"2026-12-24","place":")" + place("Nowhere Invented", 22) + "\"}"), "/people") == "[]");
}

TEST_CASE("HC-082: two values of one finding stand in the queue with who wrote them and what each had seen; taking one settles it, taking the other undoes that") {
  DeskFixture fixture;
  OpenedExam exam = knee_exam(fixture, name_on_list(fixture, "Kofi Invented", 1), 2);
  const std::string opened = at(fixture.ok("exam.read", R"({"exam":")" + exam.exam + "\"}"), "/revision/0");
  record(fixture, exam, flexion_here, 3);
  const std::string there = from_elsewhere(fixture, exam, "finding", flexion_elsewhere(95), opened, 900).to_text();
  const std::string queue = fixture.ok("conflict.list", R"({"language":"en"})");
  CHECK(at(queue, "/total") == "1");
  CHECK(at(queue, "/queue/0/harm") == "value");
  CHECK(at(queue, "/queue/0/about") == "finding");
  CHECK(at(queue, "/queue/0/settle_by") == "conflict.settle");
  CHECK(at(queue, "/queue/0/entries/0/had_seen") == "[]");
  CHECK(at(queue, "/queue/0/entries/1/had_seen") == "[]");
  CHECK(at(queue, "/queue/0/entries/0/by_name") == std::string(examiner_label));
  const std::string text = at(queue, "/queue/0/text");
  CHECK(text.find("95") != std::string::npos);
  CHECK(text.find("110") != std::string::npos);
  CHECK(text.find("without having seen the other") != std::string::npos);
  const std::string seen = at(queue, "/queue/0/revision");
  // Nobody settles what was not seen whole; "later" changes nothing.
  CHECK(codes_of(fixture.call("conflict.settle", settle(exam, there, "[\"" + there + "\"]", 4))) == "finding.stale");
  CHECK(codes_of(fixture.call("conflict.settle", settle(exam, opened, seen, 5))) == "finding.unknown");
  CHECK(codes_of(fixture.call("conflict.settle", settle(exam, there, seen, 6, ""))) == "value.empty");
  CHECK(fixture.ok("conflict.list", R"({"language":"en"})") == queue);
  const std::string settled = fixture.ok("conflict.settle", settle(exam, there, seen, 7));
  CHECK(at(settled, "/exam/conflicts").empty());
  CHECK(at(settled, "/exam/findings/0/value/deg") == "95");
  CHECK(at(fixture.ok("conflict.list", "{}"), "/total") == "0");
  // Undone: the other value, which is still there to be taken.
  const std::string history = fixture.ok("finding.history", R"({"exam":")" + exam.exam + R"(","item":"knee.flexion_active","side":"left"})");
  std::string here;
  for (int i = 0; i < 3 && here.empty(); ++i) {
    const std::string one = "/findings/" + std::to_string(i);
    here = at(history, one + "/value/deg") == "110" ? at(history, one + "/entry") : "";
  }
  const std::string undone = fixture.ok("conflict.settle", settle(exam, here, at(settled, "/revision"), 8));
  CHECK(at(undone, "/exam/findings/0/value/deg") == "110");
  CHECK(at(undone, "/exam/conflicts").empty());
  CHECK(at(fixture.ok("conflict.settle", settle(exam, here, at(settled, "/revision"), 8)), "/repeat") == "true");
}

TEST_CASE("whose exam it is and which side come before any value, and an addendum of somebody who saw both has looked at it, which no signature has") {
  DeskFixture fixture;
  const std::string kofi = name_on_list(fixture, "Kofi Invented", 1);
  const std::string yaw = name_on_list(fixture, "Yaw Otherwise", 2);
  const std::string awa = name_on_list(fixture, "Awa Elsewhere", 3);
  OpenedExam value = knee_exam(fixture, kofi, 4);
  const std::string value_opened = at(fixture.ok("exam.read", R"({"exam":")" + value.exam + "\"}"), "/revision/0");
  record(fixture, value, flexion_here, 5);
  from_elsewhere(fixture, value, "finding", flexion_elsewhere(95), value_opened, 900);
  OpenedExam side = knee_exam(fixture, kofi, 6);
  const std::string side_opened = at(fixture.ok("exam.read", R"({"exam":")" + side.exam + "\"}"), "/revision/0");
  fixture.ok("exam.swap_sides", R"({"exam":")" + side.exam + R"(","reason":"from the foot of the couch","seen":)" + side.seen + R"(,"request":")" + request_id(7) + "\"}");
  from_elsewhere(fixture, side, "finding", flexion_elsewhere(90), side_opened, 901);
  OpenedExam whose = knee_exam(fixture, kofi, 8);
  const std::string whose_opened = at(fixture.ok("exam.read", R"({"exam":")" + whose.exam + "\"}"), "/revision/0");
  fixture.ok("exam.move", R"({"exam":")" + whose.exam + R"(","person":")" + yaw + R"(","reason":"namesake","seen":)" + whose.seen + R"(,"request":")" + request_id(9) + "\"}");
  from_elsewhere(fixture, whose, "move", R"({"person":")" + awa + R"(","reason":"namesake"})", whose_opened, 902, true);
  const std::string queue = fixture.ok("conflict.list", R"({"look_alikes":false,"language":"en"})");
  CHECK(at(queue, "/total") == "3");
  CHECK(at(queue, "/queue/0/harm") == "wrong_person");
  CHECK(at(queue, "/queue/0/exam") == whose.exam);
  CHECK(at(queue, "/queue/0/settle_by") == "exam.move");
  CHECK(at(queue, "/queue/1/harm") == "wrong_side");
  CHECK(at(queue, "/queue/1/exam") == side.exam);
  CHECK(at(queue, "/queue/2/harm") == "value");
  CHECK(at(fixture.ok("conflict.list", R"({"exam":")" + side.exam + "\"}"), "/total") == "1");
  const std::string text = at(queue, "/text");
  CHECK(text.find("1. Whose exam is it?") != std::string::npos);
  CHECK(text.find("2. Which side?") != std::string::npos);
  // Who decides reads to whom it was given and why, of whom nothing else is said, and who had exchanged the sides.
  const std::string given = at(queue, "/queue/0/text");
  for (const char* said : {"Yaw Otherwise", "Awa Elsewhere", "reason: \u2068namesake", "exam.move"}) {
    CAPTURE(said);
    CHECK(given.find(said) != std::string::npos);
  }
  CHECK(given.find("Yaw Otherwise / Awa Elsewhere") == std::string::npos);
  CHECK(at(queue, "/queue/1/text").find("reason: \u2068from the foot of the couch") != std::string::npos);
  CHECK(text.find("waits and loses nothing") != std::string::npos);
  // It is also in the day's list and among the loops.
  CHECK(fixture.ok("day.list", R"({"day":"2026-11-24"})").find(R"("unseen":true)") != std::string::npos);
  CHECK(fixture.ok("loop.list", R"({"as_of":"2026-11-25"})").find("in_conflict") != std::string::npos);
  const std::string read = fixture.ok("exam.read", R"({"exam":")" + side.exam + "\"}");
  fixture.ok("exam.sign", R"({"exam":")" + side.exam + R"(","read_aloud":"Kofi Invented, LEFT knee","seen":)" + at(read, "/revision") + R"(,"request":")" + request_id(10) + "\"}");
  CHECK(at(fixture.ok("conflict.list", R"({"exam":")" + side.exam + "\"}"), "/total") == "1");
  const std::string signed_ = fixture.ok("exam.read", R"({"exam":")" + side.exam + "\"}");
  fixture.ok("addendum.record", R"({"exam":")" + side.exam + R"(","kind":"text","text":"It was the left knee.","reason":"asked him","seen":)" + at(signed_, "/revision") + R"(,"request":")" + request_id(11) + "\"}");
  CHECK(at(fixture.ok("conflict.list", R"({"exam":")" + side.exam + "\"}"), "/total") == "0");
}

TEST_CASE("what somebody wrote into an exam that was withdrawn elsewhere stands in the queue, though the exam does not") {
  DeskFixture fixture;
  OpenedExam exam = knee_exam(fixture, name_on_list(fixture, "Kofi Invented", 1), 2);
  const std::string opened = at(fixture.ok("exam.read", R"({"exam":")" + exam.exam + "\"}"), "/revision/0");
  fixture.ok("exam.withdraw", R"({"exam":")" + exam.exam + R"(","reason":"entered for the wrong person","seen":)" + exam.seen + R"(,"request":")" + request_id(3) + "\"}");
  CHECK(at(fixture.ok("conflict.list", "{}"), "/total") == "0");
  from_elsewhere(fixture, exam, "finding", flexion_elsewhere(95), opened, 900);
  const std::string queue = fixture.ok("conflict.list", R"({"language":"en"})");
  CHECK(at(queue, "/total") == "1");
  CHECK(at(queue, "/queue/0/exam") == exam.exam);
  CHECK(at(queue, "/text").find("Written for an exam that somebody else withdrew") != std::string::npos);
  CHECK(at(queue, "/text").find("not on this page") == std::string::npos);
  // Somebody looks at it, by the method that the line names; after that nothing more is added to an exam that does not stand.
  CHECK(at(queue, "/queue/0/settle_by") == "addendum.record");
  const auto addendum = [&](unsigned request) {
    return R"({"exam":")" + exam.exam + R"(","kind":"text","reason":"the queue","text":"It was his brother's knee.","seen":)" + at(queue, "/queue/0/revision") + R"(,"request":")" + request_id(request) + "\"}";
  };
  fixture.ok("addendum.record", addendum(4));
  CHECK(at(fixture.ok("conflict.list", "{}"), "/total") == "0");
  CHECK(codes_of(fixture.call("addendum.record", addendum(5))) == "exam.withdrawn");
}

TEST_CASE("a page that holds a part of the queue says so") {
  DeskFixture fixture;
  for (unsigned n = 0; n < 3; ++n) {
    OpenedExam exam = knee_exam(fixture, name_on_list(fixture, "Kofi Invented", 1 + 10 * n), 2 + 10 * n);
    const std::string opened = at(fixture.ok("exam.read", R"({"exam":")" + exam.exam + "\"}"), "/revision/0");
    record(fixture, exam, flexion_here, 3 + 10 * n);
    from_elsewhere(fixture, exam, "finding", flexion_elsewhere(95), opened, 900 + n);
  }
  const std::string part = fixture.ok("conflict.list", R"({"language":"en","look_alikes":false,"limit":2,"from":1})");
  CHECK(at(part, "/total") == "3");
  CHECK(at(part, "/text").find("These are 2 to 3 of 3; the others are not on this page.") != std::string::npos);
}

TEST_CASE("a value that an alert rests on comes before other values") {
  DeskFixture fixture;
  OpenedExam exam = knee_exam(fixture, name_on_list(fixture, "Kofi Invented", 1), 2);
  const std::string opened = at(fixture.ok("exam.read", R"({"exam":")" + exam.exam + "\"}"), "/revision/0");
  record(fixture, exam, no_pulse + "," + flexion_here, 3);
  model::FindingId pulse;
  pulse.bytes.fill(8);
  from_elsewhere(fixture, exam, "finding", flexion_elsewhere(95), opened, 900);
  from_elsewhere(fixture, exam, "finding", R"({"finding":")" + pulse.to_text() + R"(","observation":{"item":"vessel.pulse_dorsalis_pedis","side":"left","value":{"kind":"grade","scale":"pulse/0-3","grade":"2"}}})",
                 opened, 901);
  const std::string queue = fixture.ok("conflict.list", "{}");
  CHECK(at(queue, "/total") == "2");
  CHECK(at(queue, "/queue/0/harm") == "danger");
  CHECK(at(queue, "/queue/0/item") == "vessel.pulse_dorsalis_pedis");
  CHECK(at(queue, "/queue/1/harm") == "value");
}

TEST_CASE("what disagrees stands in the queue as it was written, with the method that settles it") {
  DeskFixture fixture;
  const std::string person = name_on_list(fixture, "Kofi Invented", 1);
  OpenedExam exam = knee_exam(fixture, person, 2);
  const std::string opened = at(fixture.ok("exam.read", R"({"exam":")" + exam.exam + "\"}"), "/revision/0");
  fixture.ok("impression.record", R"({"exam":")" + exam.exam + R"(","impression":{"text":"Torn meniscus","side":"left","certainty":"unsure"},"seen":)" + exam.seen + R"(,"request":")" + request_id(3) + "\"}");
  from_elsewhere(fixture, exam, "impression", R"({"impression":{"text":"Worn joint","side":"left"}})", opened, 900);
  const std::string queue = fixture.ok("conflict.list", R"({"language":"en"})");
  const std::string text = at(queue, "/queue/0/text");
  for (const char* said : {"Torn meniscus", "Worn joint", "certainty: \u2068unsure", "LEFT", "impression.record", "2026-11-24 10:15 UTC"}) {
    CAPTURE(said);
    CHECK(text.find(said) != std::string::npos);
  }
}

TEST_CASE("every kind of line in the queue, and every way to settle it, has words") {
  const report::Words* words = report::built_in_words();
  REQUIRE(words != nullptr);
  for (const char* about : {"finding", "withdrawal", "person", "exam", "impression", "plan", "consent", "transfer", "became", "request", "birth", "sex", "norm_sex", "home", "late",
                            "signature_unseen", "withdrawal_unseen", "side_exchange_unseen", "exchanged_twice"}) {
    CAPTURE(about);
    CHECK(words->has("msg.clinic.queue_" + std::string(about)));
  }
  for (const char* method : {"conflict_settle", "exam_move", "exam_amend", "impression_record", "plan_record", "plan_follow", "consent_record", "addendum_record", "person_amend", "pair_decide"}) {
    CAPTURE(method);
    CHECK(words->has("msg.clinic.settle_by_" + std::string(method)));
  }
  const DeskFixture fixture;
  // Nothing is first where nothing is listed, and that all agrees is not said.
  CHECK(at(fixture.ok("conflict.list", R"({"language":"en"})"), "/text").find("TO BE SETTLED: 0. What was decided") != std::string::npos);
}

}  // namespace limbledger::service::test::clinic_lists
