// Days that cannot be, what was not shown, a second countersignature, and words that an exchange of sides did not turn. Source: clinical
// safety, requirements 10, 14, 24 and 25; contract, sections 4 and 9. All is invented; the clock stands at 2026-11-24T10:15Z.
#include "tests/unit/service/after/clinic.hpp"

namespace limbledger::service::test::added {

namespace {

const std::string stated = R"(,"examined_at":"2026-11-20T10:00:00.000Z")";
const std::string confirmed_unusual = R"(,"confirmed":["value.unusual"])";

// An exam whose day its writer stated: four days ago.
struct Stated : TwoExaminers {
  std::string referral;
  explicit Stated(LedgerKind kind = LedgerKind::clinic) : TwoExaminers(kind) {
    const std::string reply = ok("exam.open", R"({"person":")" + person + R"(","complaint":"acute_knee","side":"left","setting":"outreach","offset_min":180)" + stated + "," + request() + "}");
    exam = at(reply, "/exam/exam");
    seen = at(reply, "/revision");
    referral = at(write("plan.record", R"("plan_items":[{"kind":"referral","text":"knee clinic, LEFT","side":"left","by":"2026-12-08"}],"replaces":[])"), "/exam/plan/0/plan_item");
  }
};

std::string outcome_on(const std::string& day) { return R"("found":{"kind":"film","text":"no break seen","on":")" + day + "\"}"; }

}  // namespace

TEST_CASE("what was found later, or became of a plan, is not before the examination nor in the future; each is named by its path") {
  Stated clinic;
  const auto old = clinic.attempt("outcome.record", outcome_on("1950"));
  CHECK(codes_of(old) == "value.date_order");
  CHECK(path_of(old) == "/found/on");
  CHECK(codes_of(clinic.attempt("outcome.record", outcome_on("2026-11-19") + confirmed_unusual)) == "value.date_order");
  CHECK(codes_of(clinic.attempt("outcome.record", outcome_on("2026-11-26"))) == "value.unusual");
  clinic.write("outcome.record", outcome_on("2026-11-20"));
  clinic.write("outcome.record", outcome_on("2026-11"));
  const auto became = clinic.attempt("plan.follow", R"("plan_item":")" + clinic.referral + R"(","became":"sent","on":"1950-01-01")");
  CHECK(codes_of(became) == "value.date_order");
  CHECK(path_of(became) == "/on");
  // Where only a clock says when the exam was, it is asked and can be answered for.
  TwoExaminers stamped;
  CHECK(codes_of(stamped.attempt("outcome.record", outcome_on("1950"))) == "value.unusual");
  CHECK(codes_of(stamped.attempt("outcome.record", outcome_on("1950") + confirmed_unusual)) == "answered");
}

TEST_CASE("a plan that was due before it was made, care told of long before, a check in the past, and pages dated in the future are asked about") {
  Stated clinic;
  const auto due = clinic.attempt("plan.record", R"("plan_items":[{"kind":"review","text":"again","by":"1950"}],"replaces":[])");
  CHECK(codes_of(due) == "value.unusual");
  CHECK(path_of(due) == "/plan_items/0/by");
  const auto done = clinic.attempt("plan.record", R"("plan_items":[{"kind":"splint","text":"long","became":"given","became_on":"2027-01-01"}],"replaces":[])");
  CHECK(path_of(done) == "/plan_items/0/became_on");
  CHECK(codes_of(clinic.attempt("plan.record", R"("plan_items":[{"kind":"review","text":"again","by":"1950"}],"replaces":[])" + confirmed_unusual)) == "answered");
  clinic.see();
  const auto given = clinic.attempt("exam.transfer", R"("set":{"given":[{"what":"splint","at":"2026-10-01T10:00:00.000Z"}]})");
  CHECK(codes_of(given) == "value.unusual");
  CHECK(path_of(given) == "/set/given/0/at");
  CHECK(path_of(clinic.attempt("exam.transfer", R"("set":{"next_check":"1996-01-01T10:00:00.000Z"})")) == "/set/next_check");
  const auto protocol = clinic.call("place.amend", R"({"changes":{"name":"Other Ford","protocols":[{"text":"splint first","dated":"2031"}]},)" + clinic.request() + "}");
  CHECK(codes_of(protocol) == "value.unusual");
  CHECK(path_of(protocol) == "/changes/protocols/0/dated");
  const auto read = clinic.call("place.amend", R"({"changes":{"name":"Other Ford","reviewed":[{"language":"en","by":"Invented Reader","on":"1890"}]},)" + clinic.request() + "}");
  CHECK(path_of(read) == "/changes/reviewed/0/on");
  const auto injured = clinic.call("exam.open", R"({"complaint":"free","setting":"outreach","injured_on":"1850",)" + clinic.request() + "}");
  CHECK(codes_of(injured) == "value.unusual");
}

TEST_CASE("who disagrees, or tells of an outcome, has been shown what stands: a revision that is not the newest is answered as stale") {
  TwoExaminers clinic;
  clinic.record(TwoExaminers::answered("knee.patella_tender", "left", "yes"));
  const std::string before = clinic.seen;
  clinic.record(TwoExaminers::answered("knee.fibular_head_tender", "left", "yes"));
  const std::string now = clinic.seen;
  clinic.seen = before;
  const auto disagree = clinic.attempt("statement.disagree", R"("statement":"rule.ottawa_knee:left","because":"as I was shown it")");
  CHECK(codes_of(disagree) == "revision.old");
  CHECK(path_of(disagree) == "/seen");
  CHECK(codes_of(clinic.attempt("outcome.record", R"("found":{"kind":"film","text":"x"})")) == "revision.old");
  clinic.seen = now;
  clinic.write("statement.disagree", R"("statement":"rule.ottawa_knee:left","because":"as it stands")");
  clinic.write("outcome.record", R"("found":{"kind":"film","text":"x"})");
}

TEST_CASE("C25: the same supervisor countersigns once; after an addendum once more") {
  TwoExaminers clinic;
  clinic.record(TwoExaminers::answered("knee.patella_tender", "left", "no"));
  clinic.sign();
  clinic.second_unlocks();
  clinic.write("exam.countersign", R"("remark":"seen together")");
  const auto again = clinic.attempt("exam.countersign", R"("remark":"and again")");
  CHECK(codes_of(again) == "exam.countersigned");
  CHECK(path_of(again) == "/exam");
  CHECK(at(clinic.read(), "/exam/countersigned/1") == "");
  clinic.write("addendum.record", R"("kind":"text","reason":"told by telephone","text":"fell again")");
  clinic.write("exam.countersign", R"("remark":"with the addendum")");
  CHECK(at(clinic.read(), "/exam/countersigned/1/remark") == "with the addendum");
}

TEST_CASE("words of impression and plan written before the sides were exchanged are marked, on the note, in a letter and on the sheet; later words are not") {
  Stated clinic(LedgerKind::demonstration);
  const std::string entry = at(clinic.write("impression.record", R"("impression":{"text":"torn meniscus, LEFT","side":"left"},"replaces":[])"), "/revision/0");
  const std::string warning = "RIGHT AND LEFT WERE EXCHANGED on 2026-11-24 13:15 UTC+03:00; written before, and not turned by it: check every side named here.";
  CHECK(!says(unwrapped(clinic.note()), warning));
  const std::string swapped = clinic.write("exam.swap_sides", R"("reason":"taken from the other end of the couch")");
  CHECK(at(clinic.read(), "/exam/sides_exchanged/0/written_before") == R"(["impression",")" + clinic.referral + "\"]");
  std::string note = unwrapped(clinic.note());
  const auto first = note.find(warning);
  REQUIRE(first != std::string::npos);
  CHECK(note.find(warning, first + 1) != std::string::npos);  // under the impression and under the plan
  const std::string letter = clinic.write("letter.write", R"("question":"Torn?")");
  CHECK(says(unwrapped(at(letter, "/text")), warning));
  CHECK(says(unwrapped(at(clinic.ok("take_home.write", R"({"exam":")" + clinic.exam + "\"}"), "/text")), "RIGHT and LEFT were exchanged in the record on 2026-11-24 13:15"));
  // Written anew it is no longer marked.
  clinic.write("impression.record", R"("impression":{"text":"torn meniscus, RIGHT","side":"right"},"replaces":[")" + entry + "\"]");
  CHECK(at(clinic.read(), "/exam/sides_exchanged/0/written_before") == "[\"" + clinic.referral + "\"]");
  note = unwrapped(clinic.note());
  CHECK(note.find(warning, note.find(warning) + 1) == std::string::npos);
  // An exchange back leaves the words of the plan as right as they were.
  clinic.write("exam.swap_sides", R"("reason":"it was right before")");
  CHECK(at(clinic.read(), "/exam/sides_exchanged/0/written_before") == "[]");
  CHECK(at(clinic.read(), "/exam/sides_exchanged/1/written_before") == R"(["impression"])");
}

}  // namespace limbledger::service::test::added
