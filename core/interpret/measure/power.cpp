#include "core/interpret/measure/power.hpp"

#include <algorithm>

namespace limbledger::interpret {

namespace {

[[nodiscard]] bool held_back(const model::Finding& finding) {
  const auto& quality = finding.quality;
  return quality && std::find(quality->begin(), quality->end(), model::Quality::effort_limited) != quality->end();
}

}  // namespace

std::vector<Judged> judge_held_back(const View& view) {
  std::vector<Judged> all;
  for (const model::Finding* finding : view.findings()) {
    const auto* grade = std::get_if<model::Grade>(&finding->value);
    const bool less = grade != nullptr && finding->item.text.starts_with("nerve.power_") && grade->grade.text != "5";
    if (!less || !held_back(*finding) || !settles(*finding)) {
      continue;
    }
    const Findings same = view.at(finding->item.text, finding->side);
    const auto first = std::find_if(same.begin(), same.end(), [](const model::Finding* one) { return held_back(*one); });
    if (first != same.end() && *first != finding) {
      continue;  // said once
    }
    Judged judged = begin_measure("power", Comparator::none, finding->item, finding->side, {finding});
    judged.working.formula = {"an effort that was held back is no grade of the muscle"};
    judged.working.changes_if.push_back({"msg.change.repeat_test"});
    judged.statement.params = Params().word("grade", grade->grade.text).raw();
    name_measure(judged, "power_held_back");
    all.push_back(std::move(judged));
  }
  return all;
}

}  // namespace limbledger::interpret
