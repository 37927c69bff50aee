#include "core/interpret/rules/function/five_stands.hpp"

#include "core/interpret/params.hpp"
#include "core/interpret/rules/function/timed.hpp"

#include <array>

namespace limbledger::interpret {

namespace {

using model::Side;

constexpr std::string_view five_stands_item = "function.five_times_sit_to_stand";
constexpr std::array<std::int64_t, 5> five_stands_ages{18, 60, 70, 80, 90};
constexpr std::array<std::int64_t, 4> five_stands_cuts{115, 124, 127, 149};  // the first tenth above 11.4, 12.39, 12.6 and 14.8
constexpr std::array<std::uint8_t, 4> worse_from{2, 1, 3, 4};                // the class of time, from 18, 60, 70 and 80 years

}  // namespace

SheetAnswer decide_five_stands(std::span<const std::uint8_t> classes) {
  if (classes[0] == 0 || classes[0] > worse_from.size()) {
    return {Outcome::not_applicable, {}, "no_row_for_age"};
  }
  return {classes[1] >= worse_from[classes[0] - 1U] ? Outcome::positive : Outcome::negative};
}

std::vector<JudgedRule> run_five_stands(const View& view) {
  if (view.at(five_stands_item, Side::midline).empty()) {
    return {};
  }
  RuleSheet sheet{five_stands_rule, five_stands_edition, Side::midline, {}, false, "positive over 11.4 s at 60 to 69, 12.6 at 70 to 79, 14.8 at 80 to 89, 12.39 at 18 to 59; or unable", {}, {}};
  const auto row = [&](std::string_view name, std::string_view source, std::int64_t over) {
    sheet.rows.push_back({{"table.sts5/" + std::string(name)}, {std::string(source)}, model::Status::read, Params().exact("over_s", over).raw()});
  };
  row("bohannon2006.time.60-69.1", "BOHANNON2006", 11400);
  row("bohannon2006.time.70-79.1", "BOHANNON2006", 12600);
  row("bohannon2006.time.80-89.1", "BOHANNON2006", 14800);
  row("klukowska2021.time.18-.1", "KLUKOWSKA2021", 12390);
  const Timed timed = timed_at(view, five_stands_item, Side::midline, sheet.findings);
  add_number(sheet, "age", "age", {}, Side::midline, age_at_exam(view), five_stands_ages, {"under 18", "18 to 59", "60 to 69", "70 to 79", "80 to 89", "90 and over"});
  add_timed(sheet, "five_stands", "time", five_stands_item, Side::midline, timed, five_stands_cuts,
            {"up to 11.4 s", "11.5 to 12.3 s", "12.4 to 12.6 s", "12.7 to 14.8 s", "over 14.8 s"});
  if (timed.not_done) {
    return {judge_not_done(view, sheet)};
  }
  JudgedRule judged = judge_sheet(view, sheet, for_who_walks(view, timed.unable, &decide_five_stands));
  const std::optional<model::AgeInterval> age = view.age_on_exam();
  const bool decided = judged.result.outcome == Outcome::positive || judged.result.outcome == Outcome::negative;
  if (decided && age && age->low < five_stands_ages[1]) {
    judged.result.flags.push_back({"upper_limit_of_adults"});
  }
  if (judged.result.outcome == Outcome::positive && timed.unable) {
    judged.result.flags.push_back({"unable"});
  }
  return {std::move(judged)};
}

}  // namespace limbledger::interpret
