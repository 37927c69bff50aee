// Disagreement, what became of the plan, what was found later, reviews, alerts that come after the signature. Source: clinical safety,
// requirements 12, 14, 16, 20 and 24.
#include "core/interpret/after/open_loops.hpp"
#include "tests/unit/service/after/clinic.hpp"

namespace limbledger::service::test::added {

namespace {

struct Planned : TwoExaminers {
  std::string referral;
  std::string splint;
  Planned() {
    const std::string reply = write("plan.record", R"("plan_items":[{"kind":"referral","text":"knee clinic","side":"left","by":"2026-12-08"},)"
                                                   R"({"kind":"splint","text":"long leg","side":"left"}],"replaces":[])");
    referral = at(reply, "/exam/plan/0/plan_item");
    splint = at(reply, "/exam/plan/1/plan_item");
  }
  static std::string fate(const std::string& item, const std::string& became, const std::string& more = "") {
    return R"("plan_item":")" + item + R"(","became":")" + became + "\"" + more;
  }
};

}  // namespace

TEST_CASE("C20: who disagrees stands beside the statement with the reason, and the statement stays as it is") {
  TwoExaminers clinic;
  clinic.record(TwoExaminers::answered("knee.patella_tender", "left", "yes"));
  const std::string before = at(clinic.assess(R"(,"only":["rule.ottawa_knee"])"), "/rules");
  CHECK(codes_of(clinic.attempt("statement.disagree", R"("statement":"rule.ottawa_knee:right","because":"x")")) == "statement.unknown");
  CHECK(path_of(clinic.attempt("statement.disagree", R"("statement":"rule.none:left","because":"x")")) == "/statement");
  CHECK(codes_of(clinic.attempt("statement.disagree", R"("statement":"rule.ottawa_knee:left","because":""))")) != "answered");
  const std::string sent = clinic.params(R"("statement":"rule.ottawa_knee:left","because":"the age is not known for certain")");
  const std::string first = clinic.ok("statement.disagree", sent);
  CHECK(at(clinic.ok("statement.disagree", sent), "/repeat") == "true");
  clinic.seen = at(first, "/revision");
  CHECK(at(clinic.read(), "/exam/disagreed/0/because") == "the age is not known for certain");
  CHECK(at(clinic.read(), "/exam/disagreed/1") == "");
  const std::string after = clinic.assess(R"(,"only":["rule.ottawa_knee"])");
  CHECK(at(after, "/rules") == before);
  CHECK(at(after, "/disagreed/0/statement") == "rule.ottawa_knee:left");
  const std::string note = unwrapped(clinic.note());
  const auto rule = note.find("Ottawa knee rule, LEFT");
  REQUIRE(rule != std::string::npos);
  CHECK(note.find("Invented Examiner disagrees, because: the age is not known for certain", rule) != std::string::npos);
  // Also after the signature, and by somebody else.
  clinic.sign();
  clinic.second_unlocks();
  clinic.write("statement.disagree", R"("statement":"rule.ottawa_knee:left","because":"I felt no tenderness")");
  CHECK(at(clinic.read(), "/exam/disagreed/1/by") == clinic.second);
  // A kiosk's own exam does not hold what examiners say among themselves.
  clinic.caller.scope = Scope::kiosk;
  REQUIRE(model::ExamId::from_text(clinic.exam, clinic.caller.exam.emplace()).empty());
  CHECK(at(clinic.read(), "/exam/disagreed") == "");
}

TEST_CASE("C16: disagreeing with what protects a person is told to nobody but an examiner who opens the protected note") {
  TwoExaminers clinic;
  clinic.ok("person.amend", R"({"person":")" + clinic.person + R"(","changes":{"birth":{"date":"2020-03"}},"replaces":)" +
                                at(clinic.ok("person.read", R"({"person":")" + clinic.person + "\"}"), "/revision") + R"(,"seen":)" +
                                at(clinic.ok("person.read", R"({"person":")" + clinic.person + "\"}"), "/revision") + "," + clinic.request() + "}");
  clinic.record(TwoExaminers::answered("history.unexplained_bruises", "midline", "yes"));
  const std::string open = clinic.assess(R"(,"only":["alerts"],"protected":true)");
  std::string name;
  for (int i = 0; i < 5; ++i) {
    const std::string alert = at(open, "/alerts/" + std::to_string(i) + "/alert");
    if (alert == "alert.nai") {
      const std::string side = at(open, "/alerts/" + std::to_string(i) + "/side");
      name = alert + (side.empty() ? "" : ":" + side);
    }
  }
  REQUIRE(!name.empty());
  clinic.write("statement.disagree", R"("statement":")" + name + R"(","because":"a fall that was seen")");
  CHECK(at(clinic.assess(), "/disagreed") == "");
  CHECK(at(clinic.assess(R"(,"protected":true)"), "/disagreed/0/statement") == name);
  CHECK(!says(clinic.note(), "a fall that was seen"));
  clinic.caller.scope = Scope::viewer;
  CHECK(!says(clinic.read(), "a fall that was seen"));
  CHECK(!says(clinic.assess(), "a fall that was seen"));
}

TEST_CASE("C14: a referral is sent, received, seen, answered, each with its day, also after the signature; the last is what stands") {
  Planned clinic;
  clinic.sign();
  const std::string sent = clinic.write("plan.follow", Planned::fate(clinic.referral, "sent", R"(,"on":"2026-11-24")"));
  CHECK(at(sent, "/exam/plan/0/became") == "sent");
  CHECK(at(sent, "/exam/plan/0/became_on") == "2026-11-24");
  clinic.world.pass(std::int64_t{10} * 24 * 3600 * 1000);
  clinic.unlock();
  const std::string params = clinic.params(Planned::fate(clinic.referral, "answered", R"(,"on":"2026-12-03","text":"meniscus torn")"));
  const std::string answered = clinic.ok("plan.follow", params);
  CHECK(at(clinic.ok("plan.follow", params), "/repeat") == "true");
  CHECK(at(answered, "/exam/plan/0/became") == "answered");
  CHECK(at(answered, "/exam/followed/0/became") == "sent");
  CHECK(at(answered, "/exam/followed/1/text") == "meniscus torn");
  CHECK(at(answered, "/exam/followed/2") == "");
  CHECK(at(answered, "/exam/state") == "signed");
  CHECK(says(unwrapped(clinic.note()), "referral, LEFT knee clinic: answered 2026-12-03"));
}

TEST_CASE("plan.follow names what is wrong: another plan item, a word of referrals alone, a day ahead, a step that was not seen") {
  Planned clinic;
  const std::string shown = clinic.seen;
  CHECK(codes_of(clinic.attempt("plan.follow", Planned::fate(clinic.person, "done"))) == "plan.unknown");
  const auto word = clinic.attempt("plan.follow", Planned::fate(clinic.splint, "received"));
  CHECK(codes_of(word) == "params.unknown_word");
  CHECK(path_of(word) == "/became");
  const auto ahead = clinic.attempt("plan.follow", Planned::fate(clinic.referral, "sent", R"(,"on":"2027-01-01")"));
  CHECK(codes_of(ahead) == "value.unusual");
  CHECK(path_of(ahead) == "/on");
  CHECK(codes_of(clinic.attempt("plan.follow", Planned::fate(clinic.referral, "sent", R"(,"on":"2027-01-01","confirmed":["value.unusual"])"))) == "answered");
  clinic.seen = shown;
  CHECK(codes_of(clinic.attempt("plan.follow", Planned::fate(clinic.referral, "lost"))) == "revision.old");
}

TEST_CASE("C24: what was found out later stands with the exam that asked, after the signature too") {
  Planned clinic;
  clinic.sign();
  CHECK(path_of(clinic.attempt("outcome.record", R"("found":{"kind":"film","text":"no break seen","on":"2027-02-01"})")) == "/found/on");
  CHECK(codes_of(clinic.attempt("outcome.record", R"("found":{"kind":"guess","text":"x"})")) == "params.unknown_word");
  const std::string sent = clinic.params(R"("found":{"kind":"film","text":"no break seen","side":"left","on":"2026-11-24","source":"report of the invented hospital"})");
  const std::string first = clinic.ok("outcome.record", sent);
  CHECK(at(clinic.ok("outcome.record", sent), "/repeat") == "true");
  CHECK(at(first, "/exam/outcomes/0/found/text") == "no break seen");
  CHECK(at(clinic.read(), "/exam/outcomes/1") == "");
  CHECK(says(unwrapped(clinic.note()), "Film, LEFT, 2026-11-24: no break seen"));
}

TEST_CASE("C14: a review names the exam that it reviews, and its form names the tools of that exam first, without their values") {
  TwoExaminers clinic;
  clinic.record(R"({"item":"knee.flexion_active","side":"left","value":{"kind":"angle","toward_deg":110},"instrument":"inclinometer","position":"supine"})");
  const std::string reviewed = clinic.exam;
  clinic.sign();
  const auto open = [&](const std::string& more) {
    return clinic.call("exam.open", R"({"setting":"outreach",)" + more + "," + clinic.request() + "}");
  };
  const std::string mine = R"("person":")" + clinic.person + "\",";
  const auto other = open(mine + R"("complaint":"acute_knee","reviews":")" + reviewed + "\"");
  CHECK(codes_of(other) == "exam.not_reviewed");
  CHECK(path_of(other) == "/reviews");
  CHECK(codes_of(open(R"("complaint":"review","reviews":")" + reviewed + "\"")) == "exam.not_reviewed");
  CHECK(codes_of(open(mine + R"("complaint":"review","reviews":")" + clinic.person + "\"")) == "exam.unknown");
  const auto review = open(mine + R"("complaint":"review","side":"left","reviews":")" + reviewed + "\"");
  REQUIRE(codes_of(review) == "answered");
  CHECK(at(*review, "/exam/reviews") == reviewed);
  const std::string form = clinic.ok("form.describe", R"({"complaint":"review","exam":")" + at(*review, "/exam/exam") + "\"}");
  CHECK(at(form, "/again/0/item") == "knee.flexion_active");
  CHECK(at(form, "/again/0/side") == "left");
  CHECK(at(form, "/again/0/instrument") == "inclinometer");
  CHECK(at(form, "/again/0/position") == "supine");
  CHECK(!says(at(form, "/again"), "110"));
  CHECK(at(form, "/again/1") == "");
  // Set later, too, and by a kiosk's form never seen.
  const auto late = open(mine + R"("complaint":"review")");
  const std::string amended = clinic.ok("exam.amend", R"({"exam":")" + at(*late, "/exam/exam") + R"(","seen":)" + at(*late, "/revision") +
                                                          R"(,"changes":{"reviews":")" + reviewed + R"("},)" + clinic.request() + "}");
  CHECK(at(amended, "/exam/reviews") == reviewed);
}

TEST_CASE("C12: an alert that first appears after the signature is a call-back; one that was there is not") {
  TwoExaminers clinic;
  clinic.record(TwoExaminers::answered("history.patella_dislocated", "left", "yes"));
  CHECK(at(clinic.assess(), "/alerts/0/call_back") == "");
  clinic.sign();
  CHECK(at(clinic.assess(), "/alerts/0/alert") == "alert.dislocation");
  CHECK(at(clinic.assess(), "/alerts/0/call_back") == "");
  const std::string added = clinic.write("addendum.record", R"("kind":"findings","reason":"told by telephone","findings":[)" + TwoExaminers::out_of_joint() + "]");
  CHECK(at(added, "/call_backs/0/alert") == "alert.knee_disloc_vasc");
  CHECK(at(added, "/call_backs/1") == "");
  const std::string after = clinic.assess();
  CHECK(at(after, "/alerts/0/alert") == "alert.knee_disloc_vasc");
  CHECK(at(after, "/alerts/0/call_back") == "true");
  CHECK(at(after, "/alerts/1/alert") == "alert.dislocation");
  CHECK(at(after, "/alerts/1/call_back") == "");
  CHECK(says(unwrapped(clinic.note()), "Not there when the exam was signed: call the person back."));
}

TEST_CASE("C16: the protected note is opened by an examiner's deliberate act alone, in the assessment as on the page") {
  TwoExaminers clinic;
  clinic.record(TwoExaminers::answered("history.unexplained_bruises", "midline", "yes"));
  CHECK(says(clinic.note(), "See protected note"));
  CHECK(!says(clinic.note(), "Bruises"));
  CHECK(says(clinic.note(R"(,"protected":true)"), "Bruises"));
  clinic.caller.scope = Scope::viewer;
  CHECK(!says(clinic.note(), "rotected"));
  CHECK(codes_of(clinic.call("note.write", R"({"exam":")" + clinic.exam + R"(","protected":true})")) == "token.scope");
  CHECK(!says(clinic.assess(R"(,"protected":true)"), "unexplained_bruises"));
  CHECK(!says(clinic.assess(R"(,"protected":true)"), "alert.nai"));
  CHECK(!says(clinic.read(), "unexplained_bruises"));
  clinic.caller.scope = Scope::kiosk;
  REQUIRE(model::ExamId::from_text(clinic.exam, clinic.caller.exam.emplace()).empty());
  CHECK(codes_of(clinic.call("note.write", R"({"exam":")" + clinic.exam + "\"}")) == "token.scope");
  CHECK(!says(clinic.read(), "unexplained_bruises"));
}

}  // namespace limbledger::service::test::added
