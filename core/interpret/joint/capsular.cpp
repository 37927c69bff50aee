#include "core/interpret/joint/capsular.hpp"

#include "core/interpret/joint/printed.hpp"
#include "core/interpret/motion/lines.hpp"

#include <algorithm>
#include <array>
#include <optional>

namespace limbledger::interpret {

namespace {

using model::Side;

// The motion that is lost first and most, and the one it is set against.
struct OrderPattern {
  std::string_view first;
  std::string_view second;
  std::string_view row;
};
constexpr std::array order_patterns{
    OrderPattern{"ankle.plantarflexion_passive_knee_bent", "ankle.dorsiflexion_passive_knee_bent", "motion_rule.caps_ankle"},
    OrderPattern{"ankle.subtalar_inversion_passive", "ankle.subtalar_eversion_passive", "motion_rule.caps_subtalar"},
    OrderPattern{"foot.mtp_first_extension_passive", "foot.mtp_first_flexion_passive", "motion_rule.caps_mtp1"},
};
// The way in which rotation was measured on both sides; the first that holds.
constexpr std::array<std::string_view, 3> rotations{"hip.internal_rotation_passive_seated", "hip.internal_rotation_passive_supine",
                                                    "hip.internal_rotation_passive_prone"};

struct MotionLoss {
  const Reading* reading = nullptr;
  const Reading* other = nullptr;
  Difference difference;  // reading - other: a loss is negative

  [[nodiscard]] bool lost() const { return difference.below(); }
  [[nodiscard]] std::int64_t size() const { return -difference.low; }
};

[[nodiscard]] std::optional<MotionLoss> loss_of(const View& view, const std::vector<Reading>& readings, std::string_view item, Side side) {
  MotionLoss loss{number_at(readings, item, side), number_at(readings, item, other_side(side)), {}};
  for (const Reading* one : {loss.reading, loss.other}) {
    if (one == nullptr || !one->exact() || !not_native(view, *one->item, one->side).empty()) {
      return std::nullopt;
    }
  }
  loss.difference = difference_of(view.edition(), *loss.reading, *loss.other, 0);
  return loss.difference.comparable == Comparable::yes ? std::optional(loss) : std::nullopt;
}

void take_loss(const MotionLoss& loss, std::vector<const model::Finding*>& used, Judged& judged) {
  for (const Reading* one : {loss.reading, loss.other}) {
    used.insert(used.end(), one->findings.begin(), one->findings.end());
    const Judged begun = begin_motion("motion.capsular", Comparator::none, *one);
    judged.working.inputs.insert(judged.working.inputs.end(), begun.working.inputs.begin(), begun.working.inputs.end());
  }
  const std::string size = in_tenths(loss.difference.low < 0 ? -loss.difference.low : loss.difference.low);
  judged.working.lines.push_back({loss.reading->item->item.text + ": " + in_tenths(loss.reading->low) + " against " + in_tenths(loss.other->low) + ", " + size +
                                  (loss.lost() ? " exceeds " : " does not exceed ") + in_tenths(loss.difference.needed) +
                                  (loss.difference.low > 0 && loss.difference.above() ? ", and is more than the other side" : "")});
}

[[nodiscard]] Judged begin_pattern(const MotionLoss& first) {
  Judged judged = begin_motion("motion.capsular", Comparator::other_side, *first.reading);
  judged.working.inputs.clear();
  judged.statement.grade = StatementGrade::unclear;
  return judged;
}

void end_pattern(Verdict verdict, std::string_view message, const std::vector<const model::Finding*>& used, Judged& judged) {
  judged.statement.findings = ids_of(used);
  judged.statement.verdict = verdict;
  name_message(judged, message);
  judged.working.lines.push_back({"described, not tested: no fixed order was found in worn joints"});
  judged.working.changes_if.push_back({"msg.change.repeat_reading"});
}

void judge_order(const View& view, const std::vector<Reading>& readings, const OrderPattern& pattern, Side side, std::vector<Judged>& all) {
  const auto first = loss_of(view, readings, pattern.first, side);
  const auto second = loss_of(view, readings, pattern.second, side);
  if (!first || !second || (!first->lost() && !second->lost())) {
    return;
  }
  const std::int64_t needed = std::max(first->difference.needed, second->difference.needed);
  const bool more = first->lost() && (!second->lost() || first->size() - second->size() > needed);
  const bool less = second->lost() && (!first->lost() || second->size() - first->size() > needed);
  Judged judged = begin_pattern(*first);
  judged.working.formula = {"lost against the other side beyond its error; the first more than the second"};
  std::vector<const model::Finding*> used;
  take_loss(*first, used, judged);
  take_loss(*second, used, judged);
  printed_rows(view, {pattern.row}, judged);
  judged.statement.params = Params()
                                .figure("first_loss_deg", first->size())
                                .figure("second_loss_deg", second->size())
                                .word("other_item", pattern.second)
                                .raw();
  end_pattern(more ? Verdict::within : (less ? Verdict::above : Verdict::not_distinguishable),
              more ? "capsular_order_within" : (less ? "capsular_order_outside" : "capsular_order_open"), used, judged);
  all.push_back(std::move(judged));
}

// Inward rotation, flexion and abduction: the three that all editions name. Said only where all three were compared.
void judge_hip_pattern(const View& view, const std::vector<Reading>& readings, Side side, std::vector<Judged>& all) {
  std::optional<MotionLoss> rotation;
  for (const std::string_view item : rotations) {
    rotation = rotation ? rotation : loss_of(view, readings, item, side);
  }
  const auto flexion = loss_of(view, readings, "hip.flexion_passive", side);
  const auto abduction = loss_of(view, readings, "hip.abduction_passive", side);
  if (!rotation || !flexion || !abduction) {
    return;
  }
  const std::array<MotionLoss, 3> three{*rotation, *flexion, *abduction};
  const auto lost = std::count_if(three.begin(), three.end(), [](const MotionLoss& one) { return one.lost(); });
  if (lost == 0) {
    return;
  }
  Judged judged = begin_pattern(*rotation);
  judged.working.formula = {"lost against the other side beyond its error: inward rotation, flexion, abduction"};
  std::vector<const model::Finding*> used;
  for (const MotionLoss& one : three) {
    take_loss(one, used, judged);
  }
  printed_rows(view, {"motion_rule.caps_hip_cyriax", "motion_rule.caps_hip_evidence", "motion_rule.caps_hipknee_evidence"}, judged);
  judged.statement.params = Params()
                                .figure("rotation_loss_deg", rotation->size())
                                .figure("flexion_loss_deg", flexion->size())
                                .figure("abduction_loss_deg", abduction->size())
                                .figure("lost", static_cast<std::int64_t>(lost) * 1000)
                                .raw();
  end_pattern(lost == 3 ? Verdict::within : Verdict::not_distinguishable, lost == 3 ? "capsular_hip_all" : "capsular_hip_some", used, judged);
  all.push_back(std::move(judged));
}

}  // namespace

std::vector<Judged> judge_patterns(const View& view, const std::vector<Reading>& readings) {
  std::vector<Judged> all;
  for (const Side side : {Side::left, Side::right}) {
    judge_hip_pattern(view, readings, side, all);
    for (const OrderPattern& pattern : order_patterns) {
      judge_order(view, readings, pattern, side, all);
    }
  }
  return all;
}

}  // namespace limbledger::interpret
