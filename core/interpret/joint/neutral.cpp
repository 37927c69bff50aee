#include "core/interpret/joint/neutral.hpp"

#include "core/interpret/knee/lines.hpp"
#include "core/interpret/motion/lines.hpp"

namespace limbledger::interpret {

namespace {

// Moved by the examiner, at hip, ankle or foot; the length of the hamstrings is no matter of a middle position.
[[nodiscard]] bool has_neutral(const model::Item& item) {
  const std::string& region = item.region.text;
  return mode_of(item) == reference::Mode::passive && item.toward && (region == "hip" || region == "ankle" || region == "foot");
}

void judge_short(const View& view, const Reading& reading, std::vector<Judged>& all) {
  Judged judged = begin_motion("motion.contracture", Comparator::none, reading);
  judged.working.formula = {"short of the middle position if reading + 1.96 x error < 0"};
  Params params;
  reading_params(reading, params);
  params.word("from", reading.item->region.text + "_" + reading.item->toward->text);
  const auto precision = precision_of(view.edition(), {&reading});
  if (!precision) {
    judged.statement.missing.push_back({"instrument"});
    judged.working.changes_if.push_back({"msg.change.instrument"});
    name_message(judged, "neutral_needs_instrument");
    judged.statement.params = params.raw();
    all.push_back(std::move(judged));
    return;
  }
  const bool beyond = short_of_neutral(view, reading) == Tri::yes;
  error_rows(*precision, judged);
  params.figure("error_deg", wire::round_divide(precision->mdc95 * 1000, 2772));
  if (reading.high < open_end) {
    judged.working.lines.push_back({in_tenths(reading.high) + " + 1.96 x " + in_tenths(wire::round_divide(precision->mdc95 * 1000, 2772)) + " = " +
                                    in_tenths(reading.high + wire::round_divide(precision->mdc95 * 70, 99)) + (beyond ? ", below 0" : ", not below 0")});
  }
  const auto age = view.age_on_exam();
  const bool hip_extension = reading.item->region.text == "hip" && reading.item->toward->text == "extension";
  const bool first_year = hip_extension && age && age->low == 0 && figure_of(view, "infant_extension", "hip.extension_passive_thomas") != nullptr;
  if (beyond && first_year) {
    figure_rows(view, "infant_extension", "hip.extension_passive_thomas", judged);
  }
  judged.statement.verdict = beyond ? Verdict::below : Verdict::not_distinguishable;
  judged.statement.grade = beyond && !first_year ? StatementGrade::notable : StatementGrade::unclear;
  name_message(judged, beyond ? (first_year ? "contracture_first_year" : "neutral_below") : "neutral_not_distinguishable");
  judged.working.changes_if.push_back({"msg.change.repeat_reading"});
  judged.statement.params = params.raw();
  all.push_back(std::move(judged));
}

}  // namespace

Tri short_of_neutral(const View& view, const Reading& reading) {
  if (reading.readable != Readable::number || reading.low >= 0) {
    return reading.readable == Readable::number ? Tri::no : Tri::undetermined;
  }
  const auto precision = precision_of(view.edition(), {&reading});
  return precision && reading.high < 0 && beyond_error(-reading.high, precision->mdc95) ? Tri::yes : Tri::undetermined;
}

std::vector<Judged> judge_neutral(const View& view, const std::vector<Reading>& readings) {
  std::vector<Judged> all;
  for (const Reading& reading : readings) {
    const bool open = reading.low <= -open_end && reading.high >= 0;  // "at most 20" tells nothing of it
    const bool less = reading.readable == Readable::number && reading.low < 0 && !open;
    if (less && has_neutral(*reading.item) && not_native(view, *reading.item, reading.side) != "fused") {
      judge_short(view, reading, all);
    }
  }
  return all;
}

}  // namespace limbledger::interpret
