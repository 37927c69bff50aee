#include "core/interpret/rules/function/four_stances.hpp"

#include "core/interpret/params.hpp"
#include "core/interpret/rules/function/timed.hpp"

#include <algorithm>
#include <array>

namespace limbledger::interpret {

namespace {

using model::Side;

constexpr std::int64_t stance_held = 100;
constexpr Classes is_held = 1;
constexpr Classes is_not_held = 2;

struct Stance {
  std::string_view input;
  std::string_view said;
  std::string_view item;
};
constexpr std::array<Stance, 3> three_stances{{{"feet_together", "feet side by side", "function.stance_side_by_side"},
                                               {"instep_to_toe", "instep beside the big toe", "function.stance_semi_tandem"},
                                               {"heel_to_toe", "heel to toe", "function.stance_tandem"}}};
constexpr std::string_view one_leg_item = "function.single_leg_stance_eyes_open";

[[nodiscard]] Classes stance_classes(const Timed& timed) {
  const auto& between = timed.measured.between;
  Classes may_be = timed.unable ? is_not_held : Classes{0};
  if (between) {
    may_be = static_cast<Classes>(may_be | (between->high >= stance_held ? is_held : 0U) | (between->low < stance_held ? is_not_held : 0U));
  }
  return may_be == 0 ? static_cast<Classes>(is_held | is_not_held) : may_be;
}

// The test stops at the first stance that is not held: what comes after was not reached, unless one that was held shows that it went on.
void add_stances(RuleSheet& sheet, const std::array<Timed, 3>& timed) {
  bool stopped = false;
  for (std::size_t n = 0; n < timed.size(); ++n) {
    const Timed& one = timed[n];
    SheetInput input{three_stances[n].input, three_stances[n].said, {"10 s or more", "under 10 s or not reached"}, three_stances[n].item, Side::midline, stance_classes(one),
                     one.unable && !one.measured.between ? "known" : one.measured.state, one.measured.reading};
    const bool nothing_said = !one.recorded || one.not_done;
    if (stopped && nothing_said) {
      input.may_be = is_not_held;
      input.state = "known_not_reached";
    }
    stopped = (stopped && input.may_be != is_held) || input.may_be == is_not_held;
    sheet.inputs.push_back(std::move(input));
  }
}

// On neither leg for 10 s, so far as it was tried.
[[nodiscard]] bool one_leg_short(const View& view, std::vector<const model::Finding*>& findings) {
  bool tried = false;
  bool held = false;
  for (const Side side : {Side::left, Side::right}) {
    const Timed timed = timed_at(view, one_leg_item, side, findings);
    tried = tried || timed.unable || (timed.measured.between && timed.measured.between->high < stance_held);
    held = held || (timed.measured.between && timed.measured.between->high >= stance_held);
  }
  return tried && !held;
}

}  // namespace

SheetAnswer decide_four_stances(std::span<const std::uint8_t> classes) { return answer_for_65(classes[0], classes[1] > 0); }

std::vector<JudgedRule> run_four_stances(const View& view) {
  RuleSheet sheet{four_stances_rule, four_stances_edition, Side::midline, {}, false, "positive where heel to toe is held for less than 10.0 s or was not reached", {}, {}};
  std::array<Timed, 3> timed;
  for (std::size_t n = 0; n < timed.size(); ++n) {
    timed[n] = timed_at(view, three_stances[n].item, Side::midline, sheet.findings);
  }
  if (std::none_of(timed.begin(), timed.end(), [](const Timed& one) { return one.recorded; })) {
    return {};
  }
  sheet.rows = {{{"table.steadi_4stage/2017.tandem.1"}, {"CDC_4STAGE"}, model::Status::read, Params().figure("held_s", 10000).raw()}};
  add_age_of_65(view, sheet);
  add_stances(sheet, timed);
  if (std::all_of(timed.begin(), timed.end(), [](const Timed& one) { return !one.recorded || one.not_done; })) {
    return {judge_not_done(view, sheet)};
  }
  const bool unable = std::any_of(timed.begin(), timed.end(), [](const Timed& one) { return one.unable; });
  const bool failed_before = sheet.inputs[1].may_be == is_not_held || sheet.inputs[2].may_be == is_not_held;
  const auto decide = for_who_walks(view, unable, &decide_four_stances);
  JudgedRule judged = judge_sheet(view, sheet, [&](std::span<const std::uint8_t> classes) {
    const SheetAnswer answer = decide(std::array<std::uint8_t, 2>{classes[0], classes[3]});
    const SheetAnswer failed = decide(std::array<std::uint8_t, 2>{classes[0], 1});
    // A stance that was not held stands as a sign of its own; one held after it contradicts that sign and does not take it away.
    const bool takes_away = failed_before && answer.outcome == Outcome::not_applicable && failed.outcome == Outcome::positive;
    return takes_away ? SheetAnswer{} : answer;
  });
  flag_made_for_65(view, judged.result);
  if (judged.result.outcome == Outcome::negative) {
    if (failed_before) {
      judged.result.flags.push_back({"contradicted"});  // held what comes after one that was not
    }
    if (one_leg_short(view, sheet.findings)) {
      judged.result.flags.push_back({"one_leg_short"});
      judged.result.findings = ids_of(sheet.findings);
    }
  }
  return {std::move(judged)};
}

}  // namespace limbledger::interpret
