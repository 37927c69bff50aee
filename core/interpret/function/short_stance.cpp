#include "core/interpret/function/short_stance.hpp"

#include "core/interpret/params.hpp"
#include "core/interpret/rules/sheet.hpp"

#include <string>
#include <string_view>

namespace limbledger::interpret {

namespace {

using model::Side;

constexpr std::string_view short_stance_item = "function.single_leg_stance_eyes_open";
constexpr std::int64_t short_stance_below = 50;
constexpr std::int64_t short_stance_from_age = 60;

[[nodiscard]] Judged say_short_stance(Side side, std::int64_t tenths, const std::vector<const model::Finding*>& findings) {
  Judged judged;
  Statement& statement = judged.statement;
  statement.statement = {"function.short_stance:" + std::string(short_stance_item) + ":" + std::string(side_word(side))};
  statement.side = side;
  statement.grade = StatementGrade::unclear;
  statement.comparator = Comparator::none;
  statement.message = {"msg.function.short_stance"};
  statement.params = Params().figure("s", tenths * 100).raw();
  statement.findings = ids_of(findings);
  Working& working = judged.working;
  working.statement = statement.statement;
  working.message = statement.message;
  for (const model::FindingId& finding : statement.findings) {
    working.inputs.push_back({finding, std::nullopt, std::nullopt, std::nullopt});
  }
  working.formula = {"named below 5.0 s from 60 years on; the cut is from memory (Vellas 1997)"};
  working.lines.push_back({in_tenths(tenths * 100) + " is below 5"});
  working.changes_if.push_back({"msg.change.repeat_reading"});
  return judged;
}

}  // namespace

std::vector<Judged> judge_short_stance(const View& view) {
  std::vector<Judged> all;
  const std::optional<model::AgeInterval> age = view.age_on_exam();
  if (!age || age->low < short_stance_from_age) {
    return all;
  }
  for (const Side side : {Side::left, Side::right}) {
    std::vector<const model::Finding*> findings;
    const MeasuredAt measured = measure_at(view, short_stance_item, side, findings);
    if (measured.between && measured.between->high < short_stance_below) {
      all.push_back(say_short_stance(side, measured.between->high, findings));
    }
  }
  return all;
}

}  // namespace limbledger::interpret
