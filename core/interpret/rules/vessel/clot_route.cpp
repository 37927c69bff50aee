#include "core/interpret/rules/vessel/clot_route.hpp"

#include "core/interpret/rules/sheet_inputs.hpp"
#include "core/interpret/rules/vessel/wells.hpp"

#include <algorithm>

namespace limbledger::interpret {

namespace {

using model::Side;

// What was not done is known as not done: nobody waits for a report that does not exist.
[[nodiscard]] Said says_scan(const model::Finding& finding) {
  const std::vector<model::ChoiceId> named = choices_of(finding);
  if (named.empty()) {
    return {std::nullopt, "unsure"};
  }
  const std::string& word = named.front().text;
  return {static_cast<std::uint8_t>(word == "scan_clot_seen" ? 4 : (word == "scan_no_clot_seen" ? 2 : 1)), "known"};
}

[[nodiscard]] Said says_d_dimer(const model::Finding& finding) {
  const std::vector<model::ChoiceId> named = choices_of(finding);
  if (named.empty() || named.front().text == "lab_not_done") {
    return {std::nullopt, "not_done"};
  }
  return {static_cast<std::uint8_t>(named.front().text == "lab_positive" ? 2 : 1), "known"};
}

[[nodiscard]] JudgedRule judge_route(const View& view, const RuleResult& points, Side side) {
  RuleSheet sheet;
  sheet.rule = clot_route_rule;
  sheet.edition = clot_route_edition;
  sheet.side = side;
  const bool settled = points.outcome == Outcome::positive || points.outcome == Outcome::negative;
  const Classes may_be = settled ? (points.outcome == Outcome::positive ? 2 : 1) : no_or_yes;
  sheet.inputs.push_back({"clot_points", "points of 2003", {"fewer than two", "two or more"}, {}, side, may_be, settled ? "known" : "not_settled", {}});
  const Heard scan = hear(view.at("general.scan_leg_veins", side), 7, &says_scan);
  sheet.findings.insert(sheet.findings.end(), scan.findings.begin(), scan.findings.end());
  const Classes scanned = scan.findings.empty() ? Classes{1} : scan.bits.value_or(7);
  sheet.inputs.push_back({"leg_scan", "scan of the leg veins", {"not done", "no clot seen", "clot seen"}, "general.scan_leg_veins", side, scanned,
                          std::string(scan.findings.empty() ? "known" : scan.state), {}});
  const Heard d_dimer = hear(view.at("general.lab_d_dimer", Side::midline), no_or_yes, &says_d_dimer);
  sheet.findings.insert(sheet.findings.end(), d_dimer.findings.begin(), d_dimer.findings.end());
  sheet.inputs.push_back({"d_dimer", "D-dimer", {"negative", "positive"}, "general.lab_d_dimer", Side::midline, d_dimer.bits.value_or(no_or_yes), std::string(d_dimer.state), {}});
  sheet.formula = "the states of the route, in order";
  JudgedRule judged = judge_sheet(view, sheet, &decide_clot_route);
  judged.result.findings.insert(judged.result.findings.end(), points.findings.begin(), points.findings.end());
  std::sort(judged.result.findings.begin(), judged.result.findings.end());
  judged.result.findings.erase(std::unique(judged.result.findings.begin(), judged.result.findings.end()), judged.result.findings.end());
  if (!settled) {
    judged.result.flags.push_back({"planned_as_two_or_more"});
  }
  if (view.says_yes("history.breathless", Side::midline)) {
    judged.result.flags.push_back({"chest_first"});
  }
  return judged;
}

}  // namespace

SheetAnswer decide_clot_route(std::span<const std::uint8_t> classes) {
  const bool two_or_more = classes[0] == 1;
  const bool d_dimer_positive = classes[2] == 1;
  if (classes[1] == 2) {
    return {Outcome::positive, "clot_seen"};
  }
  if (classes[1] == 0) {
    return two_or_more ? SheetAnswer{Outcome::positive, "scan_first"}
                       : (d_dimer_positive ? SheetAnswer{Outcome::positive, "scan_after_d_dimer"} : SheetAnswer{Outcome::negative, "other_cause"});
  }
  return two_or_more && d_dimer_positive ? SheetAnswer{Outcome::positive, "scan_again"} : SheetAnswer{Outcome::negative, "other_cause"};
}

std::vector<JudgedRule> run_clot_route(const View& view) {
  std::vector<JudgedRule> judged;
  for (const JudgedRule& points : run_wells(view)) {
    const RuleResult& result = points.result;
    const bool asked_for = any_recorded(view, result.side, {"general.scan_leg_veins"}) || any_recorded(view, Side::midline, {"general.lab_d_dimer"});
    if (result.outcome == Outcome::not_applicable || (result.outcome == Outcome::undetermined && !asked_for)) {
      continue;
    }
    judged.push_back(judge_route(view, result, result.side));
  }
  return judged;
}

}  // namespace limbledger::interpret
