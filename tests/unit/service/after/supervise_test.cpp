// A supervised examination: who learns closes findings and impression first, then who supervises, and what differs is listed; and how
// far examiners agree. Source: clinical safety, requirements 16 and 25; hard case HC-032.
#include "tests/unit/service/after/clinic.hpp"

namespace limbledger::service::test::added {

namespace {

const std::string two_of_them = R"({"item":"knee.joint_line_medial_tender","side":"left","value":{"kind":"answer","answer":"no"}},)"
                                R"({"item":"knee.flexion_active","side":"left","value":{"kind":"angle","toward_deg":110},"instrument":"goniometer_long","position":"supine"})";
const std::string seen_by_second = R"("findings":[{"item":"knee.joint_line_medial_tender","side":"left","value":{"kind":"answer","answer":"yes"}},)"
                                   R"({"item":"knee.flexion_active","side":"left","value":{"kind":"angle","toward_deg":110},"instrument":"goniometer_long","position":"supine"},)"
                                   R"({"item":"knee.patella_tender","side":"left","value":{"kind":"answer","answer":"no"}}],)"
                                   R"("impression":{"text":"torn meniscus, inner","side":"left"},"remark":"examined together")";

}  // namespace

TEST_CASE("C25: in a supervised exam nobody else records before its examiner has signed, and no band is given; ending that is an amendment") {
  TwoExaminers clinic(LedgerKind::clinic, R"(,"supervised":true)");
  CHECK(at(clinic.read(), "/exam/supervised") == "true");
  clinic.record(two_of_them + R"(,{"item":"knee.lachman","side":"left","value":{"kind":"grade","scale":"laxity/difference","grade":"2"},"end_feel":"soft",)"
                              R"("position":"supine","despite":{"how":"elsewhere","because":"told in the letter"}})");
  clinic.write("impression.record", R"("impression":{"text":"bruise","side":"left"},"replaces":[])");
  const std::string open = clinic.assess(R"(,"only":["hypotheses"])");
  CHECK(at(open, "/hypotheses") == "[]");
  CHECK(at(open, "/held_back") == "true");
  CHECK(says(unwrapped(clinic.note()), "Held back: the exam is supervised, and its examiner has not signed it yet."));
  CHECK(codes_of(clinic.call("statement.explain", R"({"exam":")" + clinic.exam + R"(","statement":"condition.acl_tear:left"})")) == "statement.unknown");
  clinic.second_unlocks();
  const std::string tender = R"("findings":[)" + TwoExaminers::answered("knee.patella_tender", "left", "yes") + "]";
  CHECK(codes_of(clinic.attempt("finding.record", tender)) == "exam.not_closed");
  CHECK(codes_of(clinic.attempt("impression.record", R"("impression":{"text":"torn"},"replaces":[])")) == "exam.not_closed");
  CHECK(codes_of(clinic.attempt("exam.sign", R"("read_aloud":"LEFT knee")")) == "exam.not_closed");
  CHECK(codes_of(clinic.attempt("exam.countersign", seen_by_second)) == "exam.not_signed");
  CHECK(codes_of(clinic.attempt("exam.transfer", R"("set":{})")) == "answered");
  clinic.see();
  clinic.write("exam.amend", R"("changes":{"supervised":false})");
  CHECK(codes_of(clinic.attempt("finding.record", tender)) == "answered");
  CHECK(at(clinic.assess(R"(,"only":["hypotheses"])"), "/hypotheses/0/hypothesis") == "condition.acl_tear");
}

// Contract, section 9: an unknown member is a fault that names it; so is one that is known and would not be kept.
TEST_CASE("planted: an addendum and a countersignature refuse each member of a finding that they do not keep, and drop none silently") {
  TwoExaminers clinic(LedgerKind::clinic, R"(,"supervised":true)");
  clinic.record(two_of_them);
  clinic.sign();
  const std::string entry = at(clinic.read(), "/exam/findings/0/entry");
  const std::string plain = R"({"item":"knee.patella_tender","side":"left","value":{"kind":"answer","answer":"no"})";
  const std::string kind = R"("kind":"findings","reason":"looked again",)";
  struct Sent {
    std::string more;
    std::string path;
  };
  const std::vector<Sent> all{{R"("examined_at":"2026-11-24T11:00:00.000Z")", "/findings/0/examined_at"},
                              {R"("replaces":[")" + entry + "\"]", "/findings/0/replaces"},
                              {R"("beside":true)", "/findings/0/beside"},
                              {R"("examiner":")" + clinic.second + "\"", "/findings/0/examiner"}};
  for (const Sent& one : all) {
    CAPTURE(one.more);
    const auto refused = clinic.attempt("addendum.record", kind + R"("findings":[)" + plain + "," + one.more + "}]");
    CHECK(codes_of(refused) == "finding.not_kept");
    CHECK(path_of(refused) == one.path);
  }
  CHECK(at(clinic.read(), "/exam/addenda") == "");
  const std::string own = at(clinic.read(), "/exam/signed/by");
  CHECK(codes_of(clinic.attempt("addendum.record", kind + R"("findings":[)" + plain + R"(,"examiner":")" + own + R"(","replaces":[],"beside":false}])")) == "answered");
  clinic.see();
  clinic.second_unlocks();
  for (const Sent& one : all) {
    const std::string more = one.path.ends_with("examiner") ? R"("examiner":")" + own + "\"" : one.more;
    CAPTURE(more);
    const auto refused = clinic.attempt("exam.countersign", R"("findings":[)" + plain + "," + more + "}]");
    CHECK(codes_of(refused) == "finding.not_kept");
    CHECK(path_of(refused) == one.path);
  }
}

TEST_CASE("C25: the countersignature keeps both, lists what differs, needs another examiner, and covers what was shown") {
  TwoExaminers clinic(LedgerKind::clinic, R"(,"supervised":true)");
  clinic.record(two_of_them);
  clinic.write("impression.record", R"("impression":{"text":"bruise","side":"left"},"replaces":[])");
  const std::string unsigned_yet = clinic.seen;
  clinic.sign();
  CHECK(at(clinic.assess(R"(,"only":["hypotheses"])"), "/held_back") == "");
  CHECK(codes_of(clinic.attempt("exam.countersign", seen_by_second)) == "examiner.own");
  clinic.second_unlocks();
  const std::string shown = clinic.seen;
  clinic.seen = unsigned_yet;
  CHECK(codes_of(clinic.attempt("exam.countersign", seen_by_second)) == "revision.old");
  clinic.seen = shown;
  CHECK(path_of(clinic.attempt("exam.countersign", R"("findings":[{"item":"knee.none","side":"left","value":{"kind":"answer","answer":"yes"}}])")).starts_with("/findings/0"));
  const std::string sent = clinic.params(seen_by_second);
  const std::string first = clinic.ok("exam.countersign", sent);
  const std::string again = clinic.ok("exam.countersign", sent);
  CHECK(at(again, "/repeat") == "true");
  CHECK(at(again, "/countersigned") == at(first, "/countersigned"));
  CHECK(at(first, "/countersigned/by") == clinic.second);
  CHECK(at(first, "/differences/0/item") == "knee.joint_line_medial_tender");
  CHECK(at(first, "/differences/0/signed/answer") == "no");
  CHECK(at(first, "/differences/0/supervisor/answer") == "yes");
  CHECK(at(first, "/differences/1/item") == "knee.patella_tender");
  CHECK(at(first, "/differences/1/signed") == "");
  CHECK(at(first, "/differences/2/about") == "impression");
  CHECK(at(first, "/differences/3") == "");
  // What was signed stays as it was.
  const std::string read = clinic.read();
  CHECK(at(read, "/exam/impression/text") == "bruise");
  CHECK(at(read, "/exam/countersigned/0/impression/text") == "torn meniscus, inner");
  CHECK(at(read, "/exam/signed/by") == clinic.made.examiner.to_text());
  CHECK(at(clinic.ok("ledger.verify", "{}"), "/damage") == "[]");
  const std::string note = unwrapped(clinic.note());
  CHECK(says(note, "Countersigned by Second Invented"));
  CHECK(says(note, "Impression of Second Invented: LEFT: torn meniscus, inner"));
  CHECK(says(note, "The two impressions differ; both stand."));
  CHECK(says(note, "Supervised examination"));
}

TEST_CASE("C25, HC-032: agreement counts items that two examiners looked at, side by side or under a countersignature, and names no person") {
  TwoExaminers clinic;
  CHECK(at(clinic.ok("agreement.read", "{}"), "/items") == "[]");
  CHECK(at(clinic.ok("agreement.read", "{}"), "/exams") == "1");
  clinic.record(two_of_them + "," + TwoExaminers::answered("history.unexplained_bruises", "midline", "no"));
  clinic.second_unlocks();
  clinic.record(R"({"item":"knee.joint_line_medial_tender","side":"left","value":{"kind":"answer","answer":"yes"},"beside":true},)" +
                TwoExaminers::answered("history.unexplained_bruises", "midline", "yes", R"(,"beside":true)"));
  const std::string read = clinic.ok("agreement.read", R"({"language":"en"})");
  CHECK(at(read, "/items/0/item") == "knee.joint_line_medial_tender");
  CHECK(at(read, "/items/0/agreement/pairs") == "1");
  CHECK(at(read, "/items/0/agreement/agree") == "0");
  CHECK(at(read, "/items/0/agreement/table/0/first") == "no");
  CHECK(at(read, "/items/0/agreement/table/0/second") == "yes");
  CHECK(at(read, "/items/0/agreement/kappa") == "0");
  // An angle is no word of the catalogue, and what protects a person is in no count.
  CHECK(at(read, "/items/1") == "");
  CHECK(says(at(read, "/items/0/text"), "Both said the same in 0 of 1 pairs (0 in 100). Kappa 0; of all answers 50 in 100 were"));
  for (const std::string& name : {std::string("Invented"), clinic.second, clinic.made.examiner.to_text()}) {
    CHECK(!says(read, name));
  }
  // Signed by the first, countersigned by the second: one more pair, of another exam.
  clinic.first_unlocks();
  clinic.open();
  clinic.record(two_of_them);
  clinic.sign();
  clinic.second_unlocks();
  clinic.write("exam.countersign", R"("findings":[)" + two_of_them + "]");
  const std::string more = clinic.ok("agreement.read", R"({"items":["knee.joint_line_medial_tender"]})");
  CHECK(at(more, "/items/0/agreement/pairs") == "2");
  CHECK(at(more, "/items/0/agreement/agree") == "50");
  CHECK(at(clinic.ok("agreement.read", R"({"from":"2027-01-01"})"), "/items") == "[]");
  const auto unknown = clinic.call("agreement.read", R"({"items":["knee.none"]})");
  CHECK(codes_of(unknown) == "item.unknown");
  CHECK(path_of(unknown) == "/items/0");
  CHECK(codes_of(clinic.call("agreement.read", R"({"language":"xx"})")) == "params.unknown_word");
}

}  // namespace limbledger::service::test::added
