#include "core/interpret/joint/pairs.hpp"

#include "core/interpret/joint/printed.hpp"
#include "core/interpret/knee/lines.hpp"

#include <algorithm>

namespace limbledger::interpret {

namespace {

constexpr std::string_view knee_straight = "ankle.dorsiflexion_passive_knee_straight";
constexpr std::string_view knee_bent = "ankle.dorsiflexion_passive_knee_bent";
constexpr std::int64_t tight_below = 5'000;      // DIGIOVANNI2002, from memory: under 5 straight
constexpr std::int64_t free_from = 10'000;       // and 10 or more bent

void judge_gap(const View& view, const Reading& straight, const Reading& bent, std::vector<Judged>& all) {
  const Difference difference = difference_of(view.edition(), straight, bent, 0);
  Judged judged = begin_motion("motion.calf_gap", Comparator::none, straight);
  judged.working.formula = {"knee bent lets the foot up further if the difference exceeds the larger minimal detectable change"};
  Params params;
  if (pair_lines(straight, bent, difference, "calf_gap_", params, judged)) {
    const bool less = difference.below();
    const bool pattern = less && straight.high < tight_below && bent.low >= free_from;
    judged.statement.verdict = less ? Verdict::below : Verdict::not_distinguishable;
    judged.statement.grade = StatementGrade::unclear;
    if (pattern) {
      printed_rows(view, {"motion_rule.gastroc_02"}, judged);
      judged.working.lines.push_back({"knee straight under 5, knee bent 10 or more: a taught pattern of a tight calf"});
    }
    printed_rows(view, {"motion_rule.gastroc_01"}, judged);
    name_message(judged, pattern ? "calf_gap_pattern_taught" : (less ? "calf_gap_below" : "calf_gap_not_distinguishable"));
  }
  judged.statement.params = params.raw();
  all.push_back(std::move(judged));
}

[[nodiscard]] bool of_side(const std::vector<Reading>& readings, const model::ItemId& item, model::Side side) {
  return std::any_of(readings.begin(), readings.end(), [&](const Reading& one) { return one.item->item == item && one.side == side; });
}

}  // namespace

std::vector<Judged> judge_calf_gap(const View& view, const std::vector<Reading>& readings) {
  std::vector<Judged> all;
  for (const model::Side side : {model::Side::left, model::Side::right}) {
    const Reading* straight = number_at(readings, knee_straight, side);
    const Reading* bent = number_at(readings, knee_bent, side);
    if (straight != nullptr && bent != nullptr && not_native(view, *straight->item, side).empty()) {
      judge_gap(view, *straight, *bent, all);
    }
  }
  return all;
}

std::vector<Judged> judge_unlike(const View& view, const std::vector<Reading>& readings) {
  std::vector<Judged> all;
  const auto& complaint = view.exam().side;
  for (const Reading& here : readings) {
    const bool asked = !complaint || *complaint == model::Side::midline || *complaint == here.side;
    if (!asked || here.readable != Readable::number || of_side(readings, here.item->item, other_side(here.side))) {
      continue;
    }
    const auto there = std::find_if(readings.begin(), readings.end(), [&](const Reading& one) {
      return one.side == other_side(here.side) && one.readable == Readable::number && one.item->family == here.item->family &&
             mode_of(*one.item) == mode_of(*here.item) && one.item->toward == here.item->toward && !of_side(readings, one.item->item, here.side);
    });
    if (there == readings.end()) {
      continue;
    }
    Judged judged = begin_motion("motion.unlike", Comparator::none, here);
    const std::vector<model::FindingId> others = ids_of(there->findings);
    judged.statement.findings.insert(judged.statement.findings.end(), others.begin(), others.end());
    for (WorkingInput& input : begin_motion("motion.unlike", Comparator::none, *there).working.inputs) {
      judged.working.inputs.push_back(std::move(input));
    }
    Params params;
    reading_params(here, params);
    judged.statement.params = params.word("other_item", there->item->item.text).raw();
    judged.working.formula = {"no comparison: position and load make them two quantities"};
    judged.working.changes_if.push_back({"msg.change.same_position"});
    name_message(judged, "unlike");
    all.push_back(std::move(judged));
  }
  return all;
}

}  // namespace limbledger::interpret
