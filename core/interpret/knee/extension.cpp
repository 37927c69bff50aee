#include "core/interpret/knee/extension.hpp"

#include "core/interpret/joint/active.hpp"
#include "core/interpret/knee/lines.hpp"

#include <algorithm>
#include <array>
#include <utility>

namespace limbledger::interpret {

namespace {

constexpr std::string_view extension_active = "knee.extension_active";
constexpr std::string_view extension_passive = "knee.extension_passive";
constexpr std::string_view flexion_active = "knee.flexion_active";
constexpr std::string_view flexion_passive = "knee.flexion_passive";
constexpr std::array left_and_right{model::Side::left, model::Side::right};
constexpr std::int64_t between_sides_least = 10'000;  // as for other side differences

[[nodiscard]] std::string_view why_not(const View& view, const Reading& reading) { return not_native(view, *reading.item, reading.side); }

void end_feel_param(const Reading& reading, Params& params) {
  std::string feel;
  for (const model::Finding* finding : reading.findings) {
    if (!finding->end_feel || (!feel.empty() && feel != finding->end_feel->text)) {
      return;
    }
    feel = finding->end_feel->text;
  }
  params.word("end_feel", feel);
}

void conclude(Judged& judged, Verdict verdict, StatementGrade grade, std::string_view message) {
  judged.statement.verdict = verdict;
  judged.statement.grade = grade;
  name_message(judged, message);
}

// Without an instrument a reading has no error, and whether it is straight cannot be said.
void judge_straight(const View& view, const std::vector<Reading>& readings, model::Side side, std::vector<Judged>& all) {
  const Reading* reading = number_at(readings, extension_passive, side);
  if (reading == nullptr || reading->low >= 0 || why_not(view, *reading) == "fused") {
    return;
  }
  Judged judged = begin_motion("motion.contracture", Comparator::none, *reading);
  judged.working.formula = {"short of straight if reading + 1.96 x error < 0"};
  Params params;
  reading_params(*reading, params);
  end_feel_param(*reading, params);
  const auto precision = precision_of(view.edition(), {reading});
  if (!precision) {
    judged.statement.missing.push_back({"instrument"});
    judged.working.changes_if.push_back({"msg.change.instrument"});
    name_message(judged, "contracture_needs_instrument");
  } else {
    const bool beyond = reading->high < 0 && beyond_error(-reading->high, precision->mdc95);
    error_rows(*precision, judged);
    params.figure("error_deg", wire::round_divide(precision->mdc95 * 1000, 2772));
    const std::int64_t end = reading->high + wire::round_divide(precision->mdc95 * 70, 99);
    if (reading->high < open_end) {
      judged.working.lines.push_back({in_tenths(reading->high) + " + 1.96 x " + in_tenths(wire::round_divide(precision->mdc95 * 1000, 2772)) + " = " +
                                      in_tenths(end) + (beyond ? ", below 0" : ", not below 0")});
    }
    const auto age = view.age_on_exam();
    const auto* infant = figure_of(view, "infant_extension", extension_passive);
    if (beyond && age && age->low == 0 && infant != nullptr) {
      figure_rows(view, "infant_extension", extension_passive, judged);
      conclude(judged, Verdict::below, StatementGrade::unclear, "contracture_first_year");
    } else if (beyond) {
      conclude(judged, Verdict::below, StatementGrade::notable, "contracture_below");
    } else {
      conclude(judged, Verdict::not_distinguishable, StatementGrade::unclear, "contracture_not_distinguishable");
    }
    judged.working.changes_if.push_back({"msg.change.repeat_reading"});
  }
  judged.statement.params = params.raw();
  all.push_back(std::move(judged));
}

// Beyond straight by more than the error: the other knee is asked before any table.
void judge_beyond(const View& view, const std::vector<Reading>& readings, model::Side side, std::vector<Judged>& all) {
  const Reading* reading = number_at(readings, extension_passive, side);
  if (reading == nullptr || reading->low <= 0 || !why_not(view, *reading).empty()) {
    return;
  }
  const auto precision = precision_of(view.edition(), {reading});
  if (!precision || !beyond_error(reading->low, precision->mdc95)) {
    return;  // a few degrees that the error covers: the norm speaks of them
  }
  Judged judged = begin_motion("motion.hyperextension", Comparator::other_side, *reading);
  judged.working.formula = {"beyond straight if reading - 1.96 x error > 0; then against the other side"};
  judged.working.lines.push_back({in_tenths(reading->low) + " - 1.96 x " + in_tenths(wire::round_divide(precision->mdc95 * 1000, 2772)) + " = " +
                                  in_tenths(reading->low - wire::round_divide(precision->mdc95 * 70, 99)) + ", above 0"});
  Params params;
  const Reading* other = number_at(readings, extension_passive, other_side(side));
  if (other == nullptr || !why_not(view, *other).empty()) {
    reading_params(*reading, params);
    error_rows(*precision, judged);
    judged.statement.comparator = Comparator::none;
    judged.statement.missing.push_back({"other_side"});
    judged.working.changes_if.push_back({"msg.change.other_side"});
    conclude(judged, Verdict::above, StatementGrade::unclear, "hyperextension_alone");
  } else {
    const Difference difference = difference_of(view.edition(), *reading, *other, between_sides_least);
    if (pair_lines(*reading, *other, difference, "side_", params, judged)) {
      const auto* limit = figure_of(view, "hypermobile", extension_passive);
      const bool wide = limit != nullptr && limit->value && reading->low > limit->value->steps && other->low > limit->value->steps;
      if (difference.above()) {
        figure_rows(view, "hyperextension_one_side", extension_passive, judged);
        conclude(judged, Verdict::above, StatementGrade::notable, "hyperextension_one_side");
      } else if (wide) {
        figure_rows(view, "hypermobile", extension_passive, judged);
        conclude(judged, Verdict::not_distinguishable, StatementGrade::unclear, "hyperextension_both_wide");
      } else {
        conclude(judged, Verdict::not_distinguishable, StatementGrade::unclear, "hyperextension_both");
      }
    }
  }
  judged.statement.params = params.raw();
  all.push_back(std::move(judged));
}

void judge_deficit(const View& view, const std::vector<Reading>& readings, model::Side side, std::vector<Judged>& all) {
  const ExtensionDeficit deficit = extension_deficit(view, readings, side);
  // A knee that extends as far as the other, or further, lacks nothing: the other's statement says what there is to say.
  if (deficit.reading == nullptr || deficit.reading->low >= deficit.other->high) {
    return;
  }
  Judged judged = begin_motion("motion.extension_deficit", Comparator::other_side, *deficit.reading);
  judged.working.formula = {"a lack of extension if the difference exceeds the larger minimal detectable change"};
  Params params;
  if (pair_lines(*deficit.reading, *deficit.other, deficit.difference, "side_", params, judged)) {
    const bool lacks = deficit.beyond_error == Tri::yes;
    end_feel_param(*deficit.reading, params);
    conclude(judged, lacks ? Verdict::below : Verdict::not_distinguishable, lacks ? StatementGrade::notable : StatementGrade::unclear,
             lacks ? "extension_deficit_below" : "extension_deficit_not_distinguishable");
  }
  judged.statement.params = params.raw();
  all.push_back(std::move(judged));
}

struct Losses {
  const Reading* flexion = nullptr;
  Difference of_flexion;  // reading - other: a loss is negative
  Difference of_extension;
};

[[nodiscard]] std::optional<Losses> losses_of(const View& view, const std::vector<Reading>& readings, model::Side side) {
  const Reading* flexion = number_at(readings, flexion_passive, side);
  const Reading* extension = number_at(readings, extension_passive, side);
  const Reading* flexion_other = number_at(readings, flexion_passive, other_side(side));
  const Reading* extension_other = number_at(readings, extension_passive, other_side(side));
  for (const Reading* one : {flexion, extension, flexion_other, extension_other}) {
    if (one == nullptr || !one->exact() || !why_not(view, *one).empty()) {
      return std::nullopt;
    }
  }
  Losses losses{flexion, difference_of(view.edition(), *flexion, *flexion_other, 0), difference_of(view.edition(), *extension, *extension_other, 0)};
  if (!losses.of_flexion.below() || !losses.of_extension.below()) {
    return std::nullopt;
  }
  return losses;
}

// Loss of extension over loss of flexion, against the other knee; asked only where both are lost by more than
// their error: a ratio of what cannot be told from the other side would be one of errors.
void judge_capsular(const View& view, const std::vector<Reading>& readings, model::Side side, std::vector<Judged>& all) {
  const auto* ratio = figure_of(view, "capsular_ratio", flexion_passive);
  const auto losses = losses_of(view, readings, side);
  if (ratio == nullptr || !ratio->low || !ratio->high || !losses) {
    return;
  }
  const std::int64_t flexion = -losses->of_flexion.low;
  const std::int64_t extension = -losses->of_extension.low;
  Judged judged = begin_motion("motion.capsular", Comparator::other_side, *losses->flexion);
  std::vector<const model::Finding*> used;
  for (const Reading& reading : readings) {
    if (reading.item->item.text == flexion_passive || reading.item->item.text == extension_passive) {
      used.insert(used.end(), reading.findings.begin(), reading.findings.end());
    }
  }
  judged.statement.findings = ids_of(used);
  judged.working.inputs.clear();
  for (const Reading& reading : readings) {
    if (reading.item->item.text == flexion_passive || reading.item->item.text == extension_passive) {
      const Judged one = begin_motion("motion.capsular", Comparator::none, reading);
      judged.working.inputs.insert(judged.working.inputs.end(), one.working.inputs.begin(), one.working.inputs.end());
    }
  }
  figure_rows(view, "capsular_ratio", flexion_passive, judged);
  figure_rows(view, "capsular_seldom", flexion_passive, judged);
  error_rows(losses->of_flexion.precision, judged);
  // Exact: thousandths of a ratio times degrees on both sides.
  const bool low = 1000 * extension < ratio->low->steps * flexion;
  const bool high = 1000 * extension > ratio->high->steps * flexion;
  judged.working.formula = {"loss of extension / loss of flexion, both against the other side"};
  judged.working.lines.push_back({in_tenths(extension) + " / " + in_tenths(flexion) + " = " +
                                  wire::write_number(wire::round_divide(1000 * extension, flexion), 1000) +
                                  (low || high ? ", outside " : ", inside ") + wire::write_number(ratio->low->steps, 1000) + " to " +
                                  wire::write_number(ratio->high->steps, 1000)});
  judged.working.lines.push_back({"described, not tested: agreement is poor and most worn knees do not show it"});
  judged.statement.params = Params()
                                .figure("flexion_loss_deg", flexion)
                                .figure("extension_loss_deg", extension)
                                .exact("ratio", wire::round_divide(1000 * extension, flexion))
                                .exact("ratio_low", ratio->low->steps)
                                .exact("ratio_high", ratio->high->steps)
                                .raw();
  conclude(judged, low ? Verdict::below : (high ? Verdict::above : Verdict::within), StatementGrade::unclear,
           low || high ? "capsular_outside" : "capsular_within");
  judged.working.changes_if.push_back({"msg.change.repeat_reading"});
  all.push_back(std::move(judged));
}

}  // namespace

ExtensionDeficit extension_deficit(const View& view, const std::vector<Reading>& readings, model::Side side) {
  ExtensionDeficit deficit;
  for (const std::string_view item : {extension_passive, extension_active}) {
    const Reading* reading = number_at(readings, item, side);
    const Reading* other = number_at(readings, item, other_side(side));
    if (reading == nullptr || other == nullptr || !why_not(view, *reading).empty() || !why_not(view, *other).empty()) {
      continue;
    }
    deficit.reading = reading;
    deficit.other = other;
    deficit.difference = difference_of(view.edition(), *reading, *other, 0);
    if (deficit.difference.comparable == Comparable::yes) {
      const bool surely_not = deficit.difference.low >= -deficit.difference.needed;
      deficit.beyond_error = deficit.difference.below() ? Tri::yes : (surely_not ? Tri::no : Tri::undetermined);
      return deficit;
    }
  }
  return deficit;
}

std::vector<Judged> judge_knee_motion(const View& view, const std::vector<Reading>& readings) {
  std::vector<Judged> all;
  for (const model::Side side : left_and_right) {
    for (const auto& [active, passive] : {std::pair(extension_active, extension_passive), std::pair(flexion_active, flexion_passive)}) {
      judge_active(view, number_at(readings, active, side), number_at(readings, passive, side), all);
    }
    judge_straight(view, readings, side, all);
    judge_beyond(view, readings, side, all);
    judge_deficit(view, readings, side, all);
    judge_capsular(view, readings, side, all);
  }
  return all;
}

}  // namespace limbledger::interpret
