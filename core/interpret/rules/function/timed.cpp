#include "core/interpret/rules/function/timed.hpp"

#include "core/interpret/rules/sheet_inputs.hpp"

#include <algorithm>
#include <array>
#include <utility>

namespace limbledger::interpret {

namespace {

constexpr std::array<std::int64_t, 2> grown_and_65{18, 65};
constexpr std::string_view in_a_wheelchair = "chair_user";

[[nodiscard]] bool says_unable(const model::Finding& finding) {
  const auto* not_done = std::get_if<model::NotDone>(&finding.value);
  return not_done != nullptr && not_done->reason == model::WhyNot::unable && settles(finding);
}

}  // namespace

Timed timed_at(const View& view, std::string_view item, model::Side side, std::vector<const model::Finding*>& findings) {
  Timed timed;
  const std::size_t before = findings.size();
  timed.measured = measure_at(view, item, side, findings);
  const auto first = findings.begin() + static_cast<std::ptrdiff_t>(before);
  timed.recorded = first != findings.end();
  const bool conflict = timed.measured.state == "in_conflict";
  timed.unable = !conflict && std::any_of(first, findings.end(), [](const auto* finding) { return says_unable(*finding); });
  const bool all_not_done = std::all_of(first, findings.end(), [](const auto* finding) { return std::holds_alternative<model::NotDone>(finding->value); });
  timed.not_done = !timed.unable && all_not_done && std::any_of(first, findings.end(), [](const auto* finding) { return settles(*finding); });
  return timed;
}

void add_timed(RuleSheet& sheet, std::string_view input, std::string_view said, std::string_view item, model::Side side, const Timed& timed,
               std::span<const std::int64_t> limits, std::vector<std::string_view> classes) {
  const auto unable = static_cast<Classes>(1U << (limits.size() + 1));
  classes.push_back("unable");
  add_number(sheet, input, said, item, side, timed.measured, limits, std::move(classes));
  SheetInput& added = sheet.inputs.back();
  if (timed.unable) {
    added.may_be = timed.measured.between ? static_cast<Classes>(added.may_be | unable) : unable;
    added.state = timed.measured.between ? "examiners_disagree" : "known";
  } else if (!timed.measured.between) {
    added.may_be = static_cast<Classes>(added.may_be | unable);
  }
}

void add_age_of_65(const View& view, RuleSheet& sheet) {
  add_number(sheet, "age", "age", {}, model::Side::midline, age_at_exam(view), grown_and_65, {"under 18", "18 to 64", "65 or more"});
}

SheetAnswer answer_for_65(std::uint8_t age_class, bool positive) {
  if (age_class == aged_under_18) {
    return {Outcome::not_applicable, {}, "under_18"};
  }
  if (positive) {
    return {Outcome::positive};
  }
  return age_class == aged_18_to_64 ? SheetAnswer{Outcome::not_applicable, {}, "under_65"} : SheetAnswer{Outcome::negative};
}

void flag_made_for_65(const View& view, RuleResult& result) {
  const std::optional<model::AgeInterval> age = view.age_on_exam();
  if (result.outcome == Outcome::positive && age && age->low < grown_and_65[1]) {
    result.flags.push_back({"made_for_65"});
  }
}

std::string_view gate_of_legs(const View& view) {
  if (view.says_yes("body.chair_user", model::Side::midline)) {
    return in_a_wheelchair;
  }
  for (const model::Side side : {model::Side::left, model::Side::right}) {
    if (body_gate(view, "ankle", side) == "no_limb" || view.says_yes("body.prosthesis", side)) {
      return "leg_missing";
    }
  }
  return {};
}

SheetAnswer answer_on_legs(const SheetAnswer& answer, std::string_view gate, bool unable) {
  const bool stands = answer.outcome == Outcome::not_applicable || (answer.outcome == Outcome::positive && !(unable && gate == in_a_wheelchair));
  return gate.empty() || stands ? answer : SheetAnswer{Outcome::not_applicable, {}, gate};
}

JudgedRule judge_not_done(const View& view, const RuleSheet& sheet) {
  return judge_sheet(view, sheet, [](std::span<const std::uint8_t>) { return SheetAnswer{Outcome::not_applicable, {}, "not_done"}; });
}

}  // namespace limbledger::interpret
