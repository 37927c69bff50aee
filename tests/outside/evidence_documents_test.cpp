// Hypotheses of the built-in edition through document.assess and statement.explain, against the worked values of
// tests/outside/data/evidence_checks.csv (K01 ...; sources named there) and against published predictive values. The working
// prints three decimals. Lachman and pivot shift: SOKAL2022, VANECK2013; Thessaly: GOOSSENS2015; McMurray and joint line:
// HEGEDUS2007; history: DECARY2018ACL, WAGEMAKERS2010; moving apprehension: AHMAD2009; drawer: BENJAMINSE2006.
#include "core/service/methods/say/document.hpp"
#include "core/service/methods/say/explain.hpp"
#include "core/wire/read.hpp"
#include "core/wire/write.hpp"

#include "tests/outside/csv.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <cstdio>

using namespace limbledger;

namespace {

struct KneeDocument {
  std::string complaint = "chronic_knee";
  std::string setting = "primary_care";
  std::string injured_on = "2026-09-01";
  std::string born = "1996-01-01";
  std::string condition = "condition.acl_tear";
  int prior = 0;  // per cent; 0: the default
  std::vector<std::string> findings;

  KneeDocument& test(const std::string& item, const std::string& result) {
    findings.push_back(R"({"item":")" + item + R"(","side":"left","value":{"kind":"test","result":")" + result + R"("}})");
    return *this;
  }
  KneeDocument& lax(const std::string& item, const std::string& grade, const std::string& end_feel) {
    findings.push_back(R"({"item":")" + item + R"(","side":"left","value":{"kind":"grade","scale":"laxity/difference","grade":")" + grade +
                       R"("},"end_feel":")" + end_feel + R"("})");
    return *this;
  }
  KneeDocument& pivot(const std::string& grade) {
    findings.push_back(R"({"item":"knee.pivot_shift","side":"left","value":{"kind":"grade","scale":"pivot/0-3","grade":")" + grade + R"("}})");
    return *this;
  }
  KneeDocument& answer(const std::string& item, const std::string& word) {
    findings.push_back(R"({"item":")" + item + R"(","side":"left","value":{"kind":"answer","answer":")" + word + R"("}})");
    return *this;
  }
  KneeDocument& choice(const std::string& item, const std::string& side, const std::string& chosen) {
    findings.push_back(R"({"item":")" + item + R"(","side":")" + side + R"(","value":{"kind":"choice","choice":")" + chosen + R"("}})");
    return *this;
  }
  [[nodiscard]] std::string json(const std::string& rest) const {
    std::string all;
    for (const std::string& finding : findings) {
      all += (all.empty() ? "" : ",") + finding;
    }
    const std::string priors = prior == 0 ? "" : R"(,"priors":[{"condition":")" + condition + R"(","per_cent":)" + std::to_string(prior) + "}]";
    return R"({"document":{"format":"limbledger-exam/1","as_of":"2026-11-24","person":{"birth":{"date":")" + born +
           R"("},"sex":"male","norm_sex":"male"},"exam":{"complaint":")" + complaint + R"(","side":"left","setting":")" + setting +
           R"(","injured_on":")" + injured_on + R"("},"findings":[)" + all + "]}" + priors + rest + "}";
  }
  [[nodiscard]] interpret::Hypothesis hypothesis() const {
    service::Context context;
    context.edition = reference::built_in_edition();
    const auto params = wire::read_text<service::DocumentAssessParams>(json(R"(,"only":["hypotheses"])"));
    REQUIRE(params.has_value());
    const auto assessment = service::document_assess(context, *params);
    REQUIRE(assessment.has_value());
    for (const auto& one : assessment->hypotheses) {
      if (one.hypothesis.text == condition) {
        return one;
      }
    }
    FAIL("no hypothesis " << condition);
    return {};
  }
  [[nodiscard]] interpret::Working working() const {
    service::Context context;
    context.edition = reference::built_in_edition();
    const auto params = wire::read_text<service::StatementExplainParams>(json(R"(,"statement":")" + condition + R"(:left")"));
    REQUIRE(params.has_value());
    const auto working = service::explain_document(context, *params);
    REQUIRE(working.has_value());
    return *working;
  }
  [[nodiscard]] std::string line(const std::string& piece) const {
    for (const auto& one : working().lines) {
      if (one.text.find(piece) != std::string::npos) {
        return one.text;
      }
    }
    return "no line with " + piece;
  }
  // The last number of the line "point: ...".
  [[nodiscard]] double point() const {
    const std::string text = line("point: ");
    return std::stod(text.substr(text.rfind("= ") + 2));
  }
};

// The value of a check, which must exist.
double worked(const std::string& id) {
  static const std::vector<tests::CsvRow> rows = tests::read_csv("evidence_checks.csv");
  for (const auto& row : rows) {
    if (row.at("check_id") == id) {
      return std::stod(row.at("value"));
    }
  }
  FAIL("no check " << id);
  return 0;
}

bool prints(double printed, double exact) { return std::abs(printed - exact) <= 0.00051; }
std::string three(double value) {
  char text[32];
  std::snprintf(text, sizeof text, "%.3f", value);
  std::string out = text;
  while (out.back() == '0') {
    out.pop_back();
  }
  return out;
}

}  // namespace

TEST_CASE("K01: the Lachman test at a prior of 30 in 100, positive and negative, with its error") {
  KneeDocument made;
  made.prior = 30;
  made.lax("knee.lachman", "2", "soft");
  CHECK(prints(made.point(), worked("K01c")));
  CHECK(made.line("translation: ") == "translation: lachman positive: 0.81 / (1 - 0.85) = 5.4");
  CHECK(made.line("error: ") == "error: root of (" + three(worked("K01g")) + ")^2 = " + three(worked("K01g")));
  KneeDocument other;
  other.prior = 30;
  other.lax("knee.lachman", "0", "firm");
  CHECK(prints(other.point(), worked("K01d")));
}

TEST_CASE("K03: the pivot shift at a prior of 52 in 100") {
  KneeDocument made;
  made.prior = 52;
  made.pivot("1");
  CHECK(prints(made.point(), worked("K03c")));
  KneeDocument other;
  other.prior = 52;
  other.pivot("0");
  CHECK(prints(other.point(), worked("K03d")));
}

TEST_CASE("K05 and K06: the Thessaly test at 20 degrees, by its printed ratios") {
  KneeDocument made;
  made.condition = "condition.meniscal_tear";
  made.prior = 30;
  made.test("knee.thessaly_20", "positive");
  CHECK(prints(made.point(), worked("K05a")));
  KneeDocument other = made;
  other.findings.clear();
  other.test("knee.thessaly_20", "negative");
  CHECK(prints(other.point(), worked("K06a")));
}

TEST_CASE("K10: pivoting and a pop in general practice, by the validated ratio and the default prior") {
  KneeDocument made;
  made.complaint = "acute_knee";
  made.injured_on = "2026-11-23";
  made.choice("history.mechanism", "midline", "twist").answer("history.pop", "yes");
  CHECK(prints(made.point(), worked("K10a")));
  CHECK(made.line("prior ") == "prior 0.209 (0.149 to 0.285): pretest.acl_tear.primary_care.WAGEMAKERS2010");
  made.setting = "outreach";  // falls back to primary care
  CHECK(prints(made.point(), worked("K10a")));
}

TEST_CASE("K12: moving apprehension with a zero cell") {
  KneeDocument made;
  made.condition = "condition.patellar_instability";
  made.prior = 17;
  made.test("knee.patellar_apprehension_moving", "positive");
  CHECK(prints(made.point(), worked("K12i_pos_0.17")));
  CHECK(made.line("ratio ").find("ratio " + three(worked("K12g_LR+")) + " to " + three(worked("K12h_LR+"))) != std::string::npos);
  // Without a typed prior there is none: an emergency series of dislocations is no prior for instability.
  made.prior = 0;
  made.setting = "emergency";
  CHECK(!made.hypothesis().bands.has_value());
  CHECK(made.hypothesis().support == interpret::Support::for_);
}

TEST_CASE("K15, K16: Lachman, drawer and pivot shift positive count as translation and rotation, one each") {
  KneeDocument made;
  made.prior = 30;
  made.lax("knee.lachman", "2", "soft").pivot("2").lax("knee.anterior_drawer", "2", "soft");
  CHECK(prints(made.point(), worked("K16h")));
  CHECK(made.line("exp ").find("exp " + three(worked("K16g"))) != std::string::npos);
  CHECK(made.line("undiscounted product") ==
        "best single " + three(0.55 / 0.06) + "; undiscounted product " + three(worked("K16a")) + ", held to 25");
  CHECK(prints(std::stod(made.line("low: ").substr(made.line("low: ").rfind("= ") + 2)), worked("K16f")));
  CHECK(prints(std::stod(made.line("high: ").substr(made.line("high: ").rfind("= ") + 2)), worked("K31")));
  bool same_group = false;
  for (const auto& one : made.hypothesis().left_out) {
    same_group = same_group || one.because.text == "same_group";
  }
  CHECK(same_group);
}

TEST_CASE("K17: Lachman positive and pivot shift negative are not discounted against each other") {
  KneeDocument made;
  made.prior = 30;
  made.lax("knee.lachman", "2", "soft").pivot("0");
  CHECK(prints(made.point(), worked("K17h")));
  CHECK(prints(std::stod(made.line("high: ").substr(made.line("high: ").rfind("= ") + 2)), worked("K17f")));
}

TEST_CASE("K19: McMurray and the joint line at a prior of 25 in 100; over 45 years the joint line tells nothing") {
  KneeDocument made;
  made.condition = "condition.meniscal_tear";
  made.prior = 25;
  made.test("knee.mcmurray", "positive").answer("knee.joint_line_medial_tender", "yes");
  CHECK(prints(made.point(), worked("K19h")));
  KneeDocument older = made;
  older.born = "1976-01-01";
  CHECK(older.line("joint_line") == "joint_line: left out: age_over_45");
}

TEST_CASE("K22: Thessaly and McMurray both positive count once, within 0.005 of what was observed together (0.374118)") {
  KneeDocument made;
  made.condition = "condition.meniscal_tear";
  made.prior = 30;
  made.test("knee.thessaly_20", "positive").test("knee.mcmurray", "positive");
  CHECK(std::abs(made.point() - 0.374118) <= 0.005);
}

TEST_CASE("K31: rotation, history and translation together are held to a ratio of 25") {
  KneeDocument made;
  made.prior = 30;
  made.lax("knee.lachman", "2", "soft").pivot("2").choice("history.mechanism", "midline", "twist").answer("history.pop", "yes");
  CHECK(prints(made.point(), worked("K31")));
  CHECK(made.line("exp ").find("held to 25") != std::string::npos);
}

TEST_CASE("C5: the drawer of an old knee at 21 in 100 gives 0.73; adding the Lachman test gives 0.59 and keeps 0.73 as the upper end") {
  KneeDocument made;
  made.prior = 21;
  made.lax("knee.anterior_drawer", "2", "soft");
  CHECK(std::abs(made.point() - 0.73) <= 0.005);
  const auto before = made.hypothesis();
  made.lax("knee.lachman", "2", "soft");
  CHECK(std::abs(made.point() - 0.59) <= 0.005);
  CHECK(made.hypothesis().range->high == before.range->high);
  CHECK(made.line("replaced by").starts_with("anterior_drawer positive gave 0.731, replaced by lachman"));
}

TEST_CASE("C5: McMurray at 9 in 100 gives 0.19; adding the Thessaly test gives 0.12 and keeps the former as the upper end") {
  KneeDocument made;
  made.condition = "condition.meniscal_tear";
  made.test("knee.mcmurray", "positive");
  CHECK(made.line("prior ").starts_with("prior 0.09 "));
  CHECK(std::abs(made.point() - 0.19) <= 0.005);
  const auto before = made.hypothesis();
  made.test("knee.thessaly_20", "positive");
  CHECK(std::abs(made.point() - 0.12) <= 0.005);
  CHECK(made.hypothesis().range->high == before.range->high);
}

TEST_CASE("WAGEMAKERS2010: a pop in general practice predicts 0.39 in print, within the 0.03 that missing answers take") {
  KneeDocument made;
  made.complaint = "acute_knee";
  made.injured_on = "2026-11-20";
  made.answer("history.pop", "yes");
  CHECK(std::abs(made.point() - 0.39) <= 0.03);
  // 2 of 3: 0.42 in print.
  made.answer("history.giving_way", "yes").answer("history.swelling_noticed", "no");
  CHECK(made.line("history: ").starts_with("history: two_of_three positive: 2.5 as printed"));
  CHECK(std::abs(made.point() - 0.42) <= 0.03);
}

TEST_CASE("rapid swelling takes the prior of knees full of blood (OLSSON2016, 52 in 100), and no ratio for the swelling") {
  KneeDocument made;
  made.complaint = "acute_knee";
  made.setting = "outreach";
  made.injured_on = "2026-11-23";
  made.choice("history.swelling_onset", "left", "within_2h").answer("history.pop", "yes");
  made.answer("history.giving_way", "yes").answer("history.swelling_noticed", "yes");
  CHECK(made.line("prior ") == "prior 0.52 (0.49 to 0.55): pretest.acl_tear.emergency.OLSSON2016");
  CHECK(made.line("two_of_three") == "two_of_three: left out: in_prior");
  CHECK(made.line("history: ").starts_with("history: pop positive: 2.3"));
}

TEST_CASE("S07: an athlete of 15, Lachman stopped by guarding: direction at most, and never against") {
  KneeDocument made;
  made.complaint = "acute_knee";
  made.born = "2011-03-01";
  made.injured_on = "2026-11-24";
  made.findings.push_back(
      R"({"item":"knee.lachman","side":"left","value":{"kind":"grade","scale":"laxity/difference","grade":"0"},"end_feel":"firm","quality":["guarded"]})");
  auto hypothesis = made.hypothesis();
  CHECK(!hypothesis.bands.has_value());
  CHECK(hypothesis.support == interpret::Support::neither);
  made.pivot("2");
  hypothesis = made.hypothesis();
  CHECK(!hypothesis.bands.has_value());
  CHECK(hypothesis.support == interpret::Support::for_);
  CHECK(made.line("pivot_shift") == "pivot_shift positive: direction only: younger_than_studied");
}

TEST_CASE("PCL and collateral tests of this edition give a direction only, and the working says why") {
  KneeDocument made;
  made.condition = "condition.pcl_tear";
  made.prior = 20;
  made.test("knee.posterior_sag", "positive").lax("knee.posterior_drawer", "3", "soft");
  CHECK(!made.hypothesis().bands.has_value());
  CHECK(made.line("posterior_drawer") == "posterior_drawer positive: direction only: not_read, case_control, low_confidence");
  made.condition = "condition.mcl_tear";
  made.lax("knee.valgus_30", "2", "soft");
  CHECK(!made.hypothesis().bands.has_value());
}

TEST_CASE("a typed prior for a condition that computes nothing is refused with those that do") {
  KneeDocument made;
  made.condition = "condition.knee_fracture";
  made.prior = 20;
  service::Context context;
  context.edition = reference::built_in_edition();
  const auto params = wire::read_text<service::DocumentAssessParams>(made.json(""));
  REQUIRE(params.has_value());
  const auto refused = service::document_assess(context, *params);
  REQUIRE(!refused.has_value());
  CHECK(refused.error().faults[0].code == "params.unknown_word");
  CHECK(refused.error().faults[0].path == "/priors/0/condition");
  CHECK(refused.error().faults[0].expected.find("condition.acl_tear") != std::string::npos);
}
