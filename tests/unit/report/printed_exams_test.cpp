// Five invented knee examinations as documents, printed. Who, which side, what was found, what it favours and how sure, impression
// and plan, and what was not examined must stand on each page (clinical safety, part A and requirements 1, 4, 8, 17, 18); and no
// page may say what a finding does not earn.
#include "core/report/page.hpp"
#include "core/report/text.hpp"
#include "core/service/methods/say/document.hpp"
#include "core/wire/parse.hpp"
#include "core/wire/read.hpp"

#include "tests/unit/report/forbidden.hpp"
#include "tests/unit/report/has.hpp"

#include <doctest/doctest.h>

#include <fstream>
#include <iterator>
#include <string>
#include <vector>

using namespace limbledger;
using report_test::has;

namespace {

service::ExamDocument document(const std::string& name) {
  std::ifstream file(std::string(LIMBLEDGER_SOURCE_DIR) + "/tests/unit/report/exams/" + name + ".json");
  const std::string text{std::istreambuf_iterator<char>(file), {}};
  const auto parsed = wire::parse(text);
  REQUIRE(parsed.has_value());
  auto read = wire::read<service::ExamDocument>(*parsed, parsed->root(), wire::Unknown::refuse, "/document");
  REQUIRE(read.has_value());
  return std::move(*read);
}

std::string page_of(const service::ExamDocument& document) {
  service::DocumentAssessParams params;
  params.document = document;
  service::Context context;
  context.edition = reference::built_in_edition();
  const auto assessment = service::document_assess(context, params);
  REQUIRE(assessment.has_value());
  const auto checked = service::check_document(*context.edition, document, std::nullopt);
  REQUIRE(checked.has_value());
  return report::exam_page(checked->exam, checked->person, *assessment, *report::built_in_words(), *context.edition);
}

// Lines joined.
std::string on_one_line(const std::string& text) {
  std::string out;
  for (const char c : text) {
    const char put = c == '\n' ? ' ' : c;
    if (put != ' ' || out.empty() || out.back() != ' ') {
      out += put;
    }
  }
  return out;
}

std::string section(const std::string& page, const std::string& title) {
  const auto at = page.find("\n" + title);
  REQUIRE(at != std::string::npos);
  return on_one_line(page.substr(at, page.find("\n\n", at + 1) - at));
}

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
  CHECK(has(section(page_of(document("fall")), "Findings"), "What positive means: - Lifts the straight leg: Cannot lift it,"));
}

TEST_CASE("an impression that the findings do not share stands first and unchanged; group entries and carried values are marked") {
  const std::string page = page_of(document("lock"));
  CHECK(has(section(page, "Examiner's impression"), "Front cruciate sprain, old."));
  const std::string found = section(page, "Findings");
  CHECK(has(found, "LEFT no abnormality noted (group entry)"));
  CHECK(has(found, "A group entry was made for several items at once."));
  CHECK(has(found, "carried over from an earlier exam"));
  CHECK(has(section(page, "Consent and company"), "Send: withdrawn."));
}
