#include "core/interpret/rules/function/heel_rise_sides.hpp"

#include "core/interpret/body.hpp"
#include "core/interpret/params.hpp"
#include "core/interpret/rules/function/timed.hpp"
#include "core/wire/number.hpp"

#include <algorithm>
#include <array>

namespace limbledger::interpret {

namespace {

using model::Side;

constexpr std::string_view slope_item = "function.heel_rise_count_incline";
constexpr std::string_view flat_item = "ankle.heel_rise_count";
constexpr std::int64_t error_of_rises = 6;
constexpr std::int64_t rises_most = 500;  // as the catalogue takes it

[[nodiscard]] Timed rises_at(const View& view, std::string_view item, Side side, std::vector<const model::Finding*>& findings) {
  Timed timed = timed_at(view, item, side, findings);
  if (timed.unable && !timed.measured.between) {
    timed.measured = {Between{0, 0}, "known", "unable"};
  }
  return timed;
}

[[nodiscard]] bool leg_is_gone(const View& view, Side side) {
  const OpenBody* gate = view.bodies().gate("ankle", side);
  return gate != nullptr && gate->row->gate->text == "no_limb";
}

[[nodiscard]] JudgedRule judge_heel_rises(const View& view, std::string_view item, Side side) {
  RuleSheet sheet{heel_rise_rule, heel_rise_edition, side, {}, false, "more than 6 apart is beyond the error of the test; none here while the other can is named by itself", {}, {}};
  sheet.rows = {{{"table.heelrise/2017.side_difference.1"}, {"HEBERT2017"}, model::Status::read, Params().exact("over", error_of_rises * 1000).raw()}};
  const Timed here = rises_at(view, item, side, sheet.findings);
  const Timed there = rises_at(view, item, other_side(side), sheet.findings);
  const Between any{0, rises_most};
  const Classes may_be = heel_rises_between(here.measured.between.value_or(any), there.measured.between.value_or(any));
  const std::vector<std::string_view> classes{"none here", "over 6 fewer here", "within 6", "over 6 more here", "none on the other", "none on either"};
  // The comparison stands with the leg that is open; what is known of the other is its own line.
  const bool open_here = !here.measured.between;
  const auto add = [&](std::string_view input, std::string_view said, Side leg, const Timed& timed, bool compared) {
    const bool known = timed.measured.between.has_value();
    sheet.inputs.push_back({input, said, compared ? classes : std::vector<std::string_view>{known ? "recorded" : "not recorded"}, item, leg, compared ? may_be : Classes{1},
                            timed.measured.state, timed.measured.reading});
  };
  add("rises_here", "heel rises of this leg", side, here, open_here);
  add("rises_other", "heel rises of the other leg", other_side(side), there, !open_here);
  if (leg_is_gone(view, other_side(side))) {
    return judge_sheet(view, sheet, [](std::span<const std::uint8_t>) { return SheetAnswer{Outcome::not_applicable, {}, "one_leg"}; });
  }
  if ((here.not_done && !there.measured.between) || (there.not_done && !here.measured.between)) {
    return judge_not_done(view, sheet);
  }
  const auto decide = [&](std::span<const std::uint8_t> in) { return decide_heel_rises(static_cast<HeelRises>(in[open_here ? 0 : 1])); };
  JudgedRule judged = judge_sheet(view, sheet, for_who_walks(view, here.unable || there.unable, decide));
  if (here.measured.between && there.measured.between) {
    const std::int64_t apart = std::max(here.measured.between->high, there.measured.between->high) - std::min(here.measured.between->low, there.measured.between->low);
    judged.working.lines.push_back({"at most " + wire::write_number(apart, 1) + " apart; over " + wire::write_number(error_of_rises, 1) + " is beyond the error"});
  }
  if (item == flat_item && judged.result.band) {
    judged.result.flags.push_back({"error_from_slope"});
  }
  return judged;
}

}  // namespace

HeelRises compare_heel_rises(std::int64_t here, std::int64_t there) {
  if (here == 0 || there == 0) {
    return here == there ? HeelRises::none_on_either : (here == 0 ? HeelRises::none_here : HeelRises::none_there);
  }
  if (here - there > error_of_rises) {
    return HeelRises::more_here;
  }
  return there - here > error_of_rises ? HeelRises::fewer_here : HeelRises::within_error;
}

Classes heel_rises_between(const Between& here, const Between& there) {
  const Between one{std::max<std::int64_t>(here.low, 1), std::min(here.high, rises_most)};
  const Between two{std::max<std::int64_t>(there.low, 1), std::min(there.high, rises_most)};
  const bool here_some = one.low <= one.high;
  const bool there_some = two.low <= two.high;
  const bool both = here_some && there_some;
  const auto bit = [](HeelRises rises, bool may) { return may ? 1U << static_cast<unsigned>(rises) : 0U; };
  return static_cast<Classes>(bit(HeelRises::none_here, here.low <= 0 && there_some) | bit(HeelRises::none_there, there.low <= 0 && here_some) |
                              bit(HeelRises::none_on_either, here.low <= 0 && there.low <= 0) |
                              bit(HeelRises::fewer_here, both && two.high - one.low > error_of_rises) |
                              bit(HeelRises::more_here, both && one.high - two.low > error_of_rises) |
                              bit(HeelRises::within_error, both && one.low - two.high <= error_of_rises && two.low - one.high <= error_of_rises));
}

SheetAnswer decide_heel_rises(HeelRises rises) {
  switch (rises) {
    case HeelRises::none_here:
      return {Outcome::positive, "none_here"};
    case HeelRises::fewer_here:
      return {Outcome::positive, "fewer_here"};
    case HeelRises::within_error:
      return {Outcome::negative, "within_error"};
    case HeelRises::more_here:
      return {Outcome::negative, "more_here"};
    case HeelRises::none_there:
      return {Outcome::negative, "none_there"};
    case HeelRises::none_on_either:
      return {Outcome::positive, "none_on_either"};
  }
  return {};
}

std::vector<JudgedRule> run_heel_rises(const View& view) {
  const auto recorded = [&](std::string_view item) { return !view.at(item, Side::left).empty() || !view.at(item, Side::right).empty(); };
  const std::string_view item = recorded(slope_item) ? slope_item : flat_item;
  std::vector<JudgedRule> judged;
  if (!recorded(item)) {
    return judged;
  }
  for (const Side side : {Side::left, Side::right}) {
    if (!leg_is_gone(view, side)) {
      judged.push_back(judge_heel_rises(view, item, side));
    }
  }
  return judged;
}

}  // namespace limbledger::interpret
