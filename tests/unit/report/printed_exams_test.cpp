// Five invented knee examinations as documents, printed. Who, which side, what was found, what it favours and how sure, impression
// and plan, and what was not examined must stand on each page (clinical safety, part A and requirements 1, 4, 8, 17, 18); and no
// page may say what a finding does not earn.
#include "tests/unit/report/forbidden.hpp"
#include "tests/unit/report/printed.hpp"

#include <string>
#include <vector>

using namespace limbledger;
using namespace limbledger::report_test;

namespace {

const std::vector<std::string>& names() {
  static const std::vector<std::string> all{"football", "stiff", "child", "fall", "lock"};
  return all;
}

}  // namespace

TEST_CASE("a page answers from itself: who, which side, impression, how sure, plan, what was not examined") {
  for (const std::string& name : names()) {
    CAPTURE(name);
    const service::ExamDocument one = document(name);
    const std::string page = page_of(one);
    const std::string side = one.exam.side == model::Side::left ? "LEFT" : "RIGHT";
    CHECK(has(page, one.person->names->front().text.text));
    CHECK(has(page.substr(0, page.find("\n\n")), ", " + side));
    const std::string impression = section(page, "Examiner's impression");
    CHECK(has(impression, one.exam.impression->text.text));
    CHECK(has(impression, side + ": "));
    CHECK(has(impression, one.exam.impression->certainty->text));
    for (const model::PlanItem& item : *one.exam.plan) {
      CHECK(has(section(page, "Plan"), item.text.text));
    }
    CHECK(has(section(page, "Not examined"), "Other items were not part of this visit."));
    CHECK(has(section(page, "What this page is"), "Decision support for a licensed examiner."));
    CHECK(has(section(page, "What this page is"), "Not tested on real people."));
  }
}

TEST_CASE("no printed exam says a word that its findings do not earn, but in the words of the examiner and of the person") {
  for (const std::string& name : names()) {
    service::ExamDocument one = document(name);
    one.exam.impression.reset();
    one.exam.plan.reset();
    for (model::Finding& finding : one.findings) {
      finding.remark.reset();
      if (auto* words = std::get_if<model::Words>(&finding.value)) {
        words->text.text = "own words";
      }
    }
    // A question of the catalogue may ask whether steps could be taken.
    for (const std::string& word : report_test::forbidden_in(on_one_line(page_of(one)))) {
      CHECK_MESSAGE(word == "take", name << ": " << word);
    }
  }
}

TEST_CASE("a twisted knee: the findings favour a torn front cruciate in a range, in study clinics, and not everything is said") {
  const std::string page = page_of(document("football"));
  const std::string support = section(page, "What the findings support");
  CHECK(has(support, "LEFT: Findings favour an ACL tear (about ") );
  CHECK(has(support, "in study clinics; not studied here)"));
  CHECK(has(section(page, "Rules"), "Ottawa knee rule, LEFT"));
  CHECK(has(section(page, "Not done"), "McMurray test, LEFT: pain"));
}

TEST_CASE("a child: no band, because no figure may be used at this age, and the hip that nobody examined is named") {
  const std::string page = page_of(document("child"));
  CHECK(!has(section(page, "What the findings support"), " in 100"));
  const std::string missing = section(page, "Not examined");
  CHECK(has(missing, "hip: RIGHT and LEFT"));
  CHECK(has(missing, "of the minimum set, LEFT: "));
}

TEST_CASE("a fall on the kneecap: the rule and its criteria stand in words, and no band comes before the minimum set") {
  const std::string page = page_of(document("fall"));
  const std::string rules = section(page, "Rules");
  CHECK(has(rules, "Film of the knee advised by the Ottawa knee rule."));
  CHECK(has(rules, "Criteria met: kneecap tender, and no other bone; flexion 60° (below 90°); could not walk four steps, neither at once nor now."));
  CHECK(has(section(page, "Not examined"), "the LEFT knee"));
}

TEST_CASE("a test that reads both ways by its name stands with what positive means") {
  CHECK(has(section(page_of(document("fall")), "Findings"), "What positive means: - Straight leg raise, by the person: Cannot lift it,"));
}

TEST_CASE("an impression that the findings do not share stands first and unchanged; group entries and carried values are marked") {
  const std::string page = page_of(document("lock"));
  CHECK(has(section(page, "Examiner's impression"), "Front cruciate sprain, old."));
  const std::string found = section(page, "Findings");
  CHECK(has(found, "LEFT no abnormality noted (group entry)"));
  CHECK(has(found, "A group entry was made for several items at once."));
  CHECK(has(found, "carried over from an earlier exam"));
  CHECK(has(head(page), "THIS RECORD is not to be passed on (consent to send: withdrawn). Care and referral of the person go on."));
  CHECK(has(head(page), "Consent. Examine: yes. Record: yes. Send: withdrawn."));
}
