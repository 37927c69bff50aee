#include "core/interpret/joint/active.hpp"

#include "core/interpret/knee/lines.hpp"

#include <algorithm>

namespace limbledger::interpret {

namespace {

constexpr std::string_view knee_extension = "knee.extension_active";
constexpr std::string_view knee_flexion = "knee.flexion_active";

}  // namespace

void judge_active(const View& view, const Reading* active, const Reading* passive, std::vector<Judged>& all) {
  if (active == nullptr || passive == nullptr || not_native(view, *active->item, active->side) == "fused") {
    return;
  }
  const bool lag = active->item->item.text == knee_extension;
  const std::string prefix = lag ? "lag_" : "active_";
  const Difference difference = difference_of(view.edition(), *active, *passive, 0);
  if (difference.above()) {
    return;  // further by itself than when it is moved: shown as a contradiction
  }
  Judged judged = begin_motion(lag ? "motion.lag" : "motion.active", Comparator::none, *active);
  judged.working.formula = {"less than passive if the difference exceeds the larger minimal detectable change"};
  Params params;
  if (pair_lines(*active, *passive, difference, prefix, params, judged)) {
    const bool less = difference.below();
    judged.statement.verdict = less ? Verdict::below : Verdict::not_distinguishable;
    judged.statement.grade = less ? StatementGrade::notable : StatementGrade::unclear;
    name_message(judged, prefix + (less ? "below" : "not_distinguishable"));
  }
  judged.statement.params = params.raw();
  all.push_back(std::move(judged));
}

std::vector<Judged> judge_active_motions(const View& view, const std::vector<Reading>& readings) {
  std::vector<Judged> all;
  for (const Reading& active : readings) {
    const std::string& name = active.item->item.text;
    if (mode_of(*active.item) != reference::Mode::active || active.readable != Readable::number || name == knee_extension || name == knee_flexion) {
      continue;
    }
    const std::string motion = motion_without_mode(*active.item);
    const auto passive = std::find_if(readings.begin(), readings.end(), [&](const Reading& one) {
      return one.side == active.side && one.readable == Readable::number && mode_of(*one.item) == reference::Mode::passive &&
             one.item->toward == active.item->toward && motion_without_mode(*one.item) == motion;
    });
    if (passive != readings.end()) {
      judge_active(view, &active, &*passive, all);
    }
  }
  return all;
}

}  // namespace limbledger::interpret
