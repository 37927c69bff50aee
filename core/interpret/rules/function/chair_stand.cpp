#include "core/interpret/rules/function/chair_stand.hpp"

#include "core/interpret/params.hpp"
#include "core/interpret/rules/function/timed.hpp"
#include "core/interpret/rules/grouped.hpp"

#include <algorithm>

namespace limbledger::interpret {

namespace {

using model::Side;

constexpr std::string_view chair_item = "function.chair_stand_30s";
constexpr std::string_view chair_arms_item = "function.chair_stand_arms_used";
constexpr std::int64_t chair_age_first = 60;
constexpr std::int64_t chair_age_last = 94;
constexpr std::int64_t chair_age_span = 5;

// The class just below which a count is below average.
[[nodiscard]] std::int64_t chair_class_of(std::int64_t limit) {
  return std::find(chair_limits.begin(), chair_limits.end(), limit) - chair_limits.begin() + 1;
}

void add_chair_sex(const View& view, RuleSheet& sheet) {
  const model::NormSex sex = view.person() ? view.person()->norm_sex : model::NormSex::unspecified;
  const bool known = sex != model::NormSex::unspecified;
  const Classes may_be = known ? (sex == model::NormSex::male ? 1 : 2) : 3;
  sheet.inputs.push_back({"sex", "sex", {"male", "female"}, {}, Side::midline, may_be, known ? "known" : "not_asked", {}});
}

void add_chair_age(const View& view, RuleSheet& sheet) {
  const MeasuredAt age = age_at_exam(view);
  Classes may_be = 0;
  for (std::size_t c = 0; c < chair_ages; ++c) {
    const std::int64_t first = chair_age_first + chair_age_span * static_cast<std::int64_t>(c);
    const bool in = !age.between || (age.between->low < first + chair_age_span && age.between->high >= first);
    may_be = static_cast<Classes>(may_be | (in ? 1U << c : 0U));
  }
  const bool out = !age.between || age.between->low < chair_age_first || age.between->high > chair_age_last;
  may_be = static_cast<Classes>(may_be | (out ? 1U << chair_ages : 0U));
  sheet.inputs.push_back({"age", "age", {"60 to 64", "65 to 69", "70 to 74", "75 to 79", "80 to 84", "85 to 89", "90 to 94", "under 60 or over 94"}, {}, Side::midline, may_be,
                          age.state, age.reading});
}

// The rows that may hold for this person; none where sex and age leave it wide open.
void add_chair_rows(RuleSheet& sheet) {
  for (std::size_t s = 0; s < chair_below.size(); ++s) {
    for (std::size_t c = 0; c < chair_ages; ++c) {
      if ((sheet.inputs[0].may_be >> s & 1U) == 0 || (sheet.inputs[1].may_be >> c & 1U) == 0) {
        continue;
      }
      const std::string first = std::to_string(chair_age_first + chair_age_span * static_cast<std::int64_t>(c));
      const std::string last = std::to_string(chair_age_first + chair_age_span * static_cast<std::int64_t>(c + 1) - 1);
      sheet.rows.push_back({{"table.steadi_chair30/2017.count." + std::string(s == 0 ? "male." : "female.") + first + "-" + last + ".1"},
                            {"CDC_CHAIR"},
                            model::Status::read,
                            Params().exact("below", chair_below[s][c] * 1000).raw()});
    }
  }
}

}  // namespace

SheetAnswer decide_chair_stand(std::span<const std::int64_t> classes) {
  const auto age = static_cast<std::size_t>(classes[1]);
  if (age >= chair_ages) {
    return {Outcome::not_applicable, {}, "no_row_for_age"};
  }
  const std::int64_t limit = chair_below[static_cast<std::size_t>(classes[0])][age];
  const bool below = classes[3] > 0 || classes[2] < chair_class_of(limit);
  return {below ? Outcome::positive : Outcome::negative};
}

std::vector<JudgedRule> run_chair_stand(const View& view) {
  const bool arms_told = view.says_yes(chair_arms_item, Side::midline);
  if (view.at(chair_item, Side::midline).empty() && !arms_told) {
    return {};
  }
  RuleSheet sheet{chair_stand_rule, chair_stand_edition, Side::midline, {}, false, "positive where the count is below the figure for sex and age; arms used counts as 0", {}, {}};
  Timed timed = timed_at(view, chair_item, Side::midline, sheet.findings);
  if (timed.unable && !timed.measured.between) {
    timed.measured.between = Between{0, 0};  // not once
    timed.measured.state = "known";
    timed.measured.reading = "unable";
  }
  add_chair_sex(view, sheet);
  add_chair_age(view, sheet);
  add_chair_rows(sheet);
  add_number(sheet, "chair_count", "count", chair_item, Side::midline, timed.measured, chair_limits,
             {"under 4", "4 to 6", "7", "8", "9", "10", "11", "12 or 13", "14 or more"});
  add_answer(view, sheet, "arms_used", "arms used", chair_arms_item, Side::midline);
  if (timed.not_done && !arms_told) {
    return {judge_not_done(view, sheet)};
  }
  SheetGroups groups;
  groups.add(0, {0, 1});
  groups.add(1, {0, 1, 2, 3, 4, 5, 6, 7});
  groups.add(2, {0, 1, 2, 3, 4, 5, 6, 7, 8});
  groups.add(3, {0, 1});
  JudgedRule judged = judge_groups(view, sheet, groups, for_who_walks(view, timed.unable, &decide_chair_stand));
  if (timed.unable && judged.result.outcome == Outcome::positive) {
    judged.result.flags.push_back({"unable"});
  }
  return {std::move(judged)};
}

}  // namespace limbledger::interpret
