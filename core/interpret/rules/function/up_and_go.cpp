#include "core/interpret/rules/function/up_and_go.hpp"

#include "core/interpret/params.hpp"
#include "core/interpret/rules/function/timed.hpp"

#include <array>

namespace limbledger::interpret {

namespace {

using model::Side;

constexpr std::string_view up_and_go_item = "function.timed_up_and_go";
constexpr std::array<std::int64_t, 1> up_and_go_cut{120};
constexpr std::int64_t up_and_go_other_cut = 135;

}  // namespace

SheetAnswer decide_up_and_go(std::span<const std::uint8_t> classes) { return answer_for_65(classes[0], classes[1] > 0); }

std::vector<JudgedRule> run_up_and_go(const View& view) {
  if (view.at(up_and_go_item, Side::midline).empty()) {
    return {};
  }
  RuleSheet sheet{up_and_go_rule, up_and_go_edition, Side::midline, {}, false, "positive from 12.0 s, or unable; another cut is 13.5 s", {}, {}};
  sheet.rows = {{{"table.steadi_tug/2017.time.65-.1"}, {"CDC_TUG"}, model::Status::read, Params().figure("at_least_s", 12000).raw()},
                {{"table.tug/barry2014.time.60-.1"}, {"BARRY2014"}, model::Status::read, Params().figure("at_least_s", 13500).raw()}};
  const Timed timed = timed_at(view, up_and_go_item, Side::midline, sheet.findings);
  add_age_of_65(view, sheet);
  add_timed(sheet, "up_and_go", "time", up_and_go_item, Side::midline, timed, up_and_go_cut, {"under 12.0 s", "12.0 s or more"});
  if (timed.not_done) {
    return {judge_not_done(view, sheet)};
  }
  JudgedRule judged = judge_sheet(view, sheet, for_who_walks(view, timed.unable, &decide_up_and_go));
  flag_made_for_65(view, judged.result);
  const auto& between = timed.measured.between;
  if (judged.result.outcome == Outcome::positive) {
    if (timed.unable) {
      judged.result.flags.push_back({"unable"});
    } else if (between && between->high < up_and_go_other_cut) {
      judged.result.flags.push_back({"below_other_cut"});
    }
  }
  return {std::move(judged)};
}

}  // namespace limbledger::interpret
