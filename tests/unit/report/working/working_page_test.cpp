// The printed working: whatever an assessment names can be explained, each figure stands with its source, each finding with its value. The
// people are invented; the figures are those of their sources, which the reference tests hold.
#include "core/report/working/working_page.hpp"
#include "core/service/methods/say/explain.hpp"
#include "tests/unit/report/printer.hpp"

#include <sstream>

using namespace limbledger;
using report_test::Printer;

namespace {

Result<interpret::Working> working_of(const std::string& person, const std::string& name) {
  service::Context context;
  context.edition = reference::built_in_edition();
  service::StatementExplainParams params;
  params.document = report_test::document(person);
  params.statement = {name};
  params.language = model::Word{"en"};
  return service::explain_document(context, params);
}
std::string printed(const std::string& person, const std::string& name) {
  const Printer printer(person);
  const auto working = working_of(person, name);
  return working ? report::sheet_text(report::working_sheet(printer.view(), *working), *report::built_in_words()) : "refused: " + working.error().faults.front().code;
}
bool says(const std::string& text, const std::string& what) { return report_test::on_one_line(text).find(what) != std::string::npos; }

std::vector<std::string> names_on(const std::string& page) {
  std::vector<std::string> names;
  std::istringstream lines(page);
  for (std::string line; std::getline(lines, line);) {
    if (line.starts_with("  - ")) {
      names.push_back(line.substr(4));
    }
  }
  return names;
}

}  // namespace

TEST_CASE("a danger's working: what was found with its value, what is not asked with its side, the page and the time until harm") {
  const std::string open = printed("football", "alert.acs:left");
  CAPTURE(open);
  CHECK(says(open, "Pain beyond what the hurt explains, LEFT; not asked"));
  CHECK(says(open, "time until harm 60 minutes, for the order among one class"));
  CHECK(says(open, "British Orthopaedic Association standard"));
  CHECK(says(open, "an answer to what is asked"));
  CHECK_FALSE(says(open, "history.pain_out_of_proportion"));  // what a person reads holds no ids
}

TEST_CASE("of a danger that is open and that nobody is asked about, the working names what is not recorded, as the page does") {
  const std::string lump = printed("stiff", "alert.tumour");
  CAPTURE(lump);
  CHECK(says(lump, "; not recorded"));  // an item of its own, not the title
  CHECK(says(lump, "an answer to what is asked"));
}

TEST_CASE("a rule's working names what it read, with the published limits and their source") {
  const std::string rule = printed("football", "rule.ottawa_knee:left");
  CAPTURE(rule);
  CHECK(says(rule, "age 55, flexion deg 90, steps 4, days 7"));  // Stiell 1995
  CHECK(says(rule, "Ann Emerg Med 1995;26(4):405-413"));
  CHECK(says(rule, "Kneecap tender, LEFT: no"));
  CHECK(says(rule, "a correction of one of these answers"));
}

TEST_CASE("a hypothesis' working names the figures, the sum, and the tests of which nothing is recorded") {
  const std::string tear = printed("football", "condition.acl_tear:left");
  CAPTURE(tear);
  CHECK(says(tear, "sensitivity 0.81, specificity 0.81"));  // van Eck 2013, Lachman test in the acute knee
  CHECK(says(tear, "Lachman test, LEFT: grade 2"));
  CHECK(says(tear, "nothing recorded of rotation: pivot_shift"));
  CHECK(says(tear, "a test of a kind of which nothing is recorded yet"));
}

TEST_CASE("whatever the page of names lists can be explained, and each row of its working stands with a source of the list") {
  std::size_t explained = 0;
  for (const char* person : report_test::printed_people) {
    const Printer printer(person);
    const std::vector<std::string> names = names_on(report::sheet_text(report::names_sheet(printer.view()), *report::built_in_words()));
    REQUIRE_FALSE(names.empty());
    for (const std::string& name : names) {
      CAPTURE(person);
      CAPTURE(name);
      const std::string page = printed(person, name);
      CHECK(says(page, "WORKING of " + name));
      CHECK_FALSE(says(page, "not in the list of sources"));
      CHECK_FALSE(page.find("working.") != std::string::npos);  // a message that is missing prints its name
      ++explained;
    }
  }
  CHECK(explained > 250);
}

// The sentence above a working is that of its own leg: an index of 0.44 under "1.07" would send the wrong leg to a surgeon (clinical safety, C10).
TEST_CASE("where the two legs differ the working of each stands under its own sentence") {
  const auto pressure = [](const std::string& item, const std::string& side, const std::string& mm_hg) {
    return R"({"item":"vessel.pressure_)" + item + R"(","side":")" + side + R"(","value":{"kind":"pressure","mm_hg":)" + mm_hg + "}}";
  };
  service::Context context;
  context.edition = reference::built_in_edition();
  service::StatementExplainParams params;
  params.language = model::Word{"en"};
  params.document = report_test::document_of(
      R"({"format":"limbledger-exam/1","as_of":"2026-11-24","person":{"birth":{"date":"1960-03-10"},"sex":"male","norm_sex":"male"},"exam":{"complaint":"calf_pain","setting":"outreach","side":"right"},"findings":[)" +
      pressure("arm", "right", "140") + "," + pressure("arm", "left", "138") + "," + pressure("dorsalis_pedis", "right", "150") + "," + pressure("posterior_tibial", "right", "148") + "," +
      pressure("dorsalis_pedis", "left", "60") + "," + pressure("posterior_tibial", "left", "62") + "]}");
  const auto sentence = [&](const std::string& side) {
    params.statement = {"rule.ankle_brachial:" + side};
    const auto working = service::explain_document(context, params);
    REQUIRE(working.has_value());
    REQUIRE(working->text.has_value());
    return working->text->text;
  };
  CHECK(sentence("left").find("0.44") != std::string::npos);   // 62 / 140
  CHECK(sentence("right").find("1.07") != std::string::npos);  // 150 / 140
}

TEST_CASE("a name that is not of the assessment is refused") {
  const auto other = working_of("football", "alert.made_up");
  REQUIRE_FALSE(other.has_value());
  CHECK(other.error().faults.front().code == "statement.unknown");
}
