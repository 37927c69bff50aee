#include "core/interpret/rules/ankle/series.hpp"

#include "core/interpret/params.hpp"
#include "core/interpret/rules/ankle/ottawa_ankle.hpp"
#include "core/interpret/rules/ankle/ottawa_midfoot.hpp"
#include "core/interpret/rules/ankle/series_inputs.hpp"

#include <algorithm>
#include <string>

namespace limbledger::interpret {

using model::Side;

namespace {

constexpr std::array<std::array<std::string_view, 3>, foot_input_count> foot_classes{{
    {"under 2", "2 or more", ""},
    {"10 or less", "more than 10", ""},
    {"no", "yes", ""},
    {"no", "yes", ""},
    {"no", "yes", ""},
    {"no", "yes", ""},
    {"3 or fewer", "4", ""},
    {"no", "yes", ""},
    {"no", "yes", ""},
}};

[[nodiscard]] constexpr std::size_t slot(FootInput input) { return static_cast<std::size_t>(input); }

[[nodiscard]] std::array<Classes, foot_input_count> classes_of(const FootInjury& in) {
  return {classes_of<1>(in.age, {foot_age_min}),
          classes_of<1>(in.days, {foot_days_max + 1}),
          classes_of(in.zone),
          classes_of(in.first),
          classes_of(in.second),
          classes_of(in.imm),
          classes_of<1>(in.steps, {steps_needed}),
          classes_of(in.excl),
          classes_of(in.pregnant)};
}

[[nodiscard]] Outcome decide_foot(const std::array<std::uint8_t, foot_input_count>& in) {
  const auto is = [&](FootInput input) { return in[slot(input)] == 1; };
  if (!is(FootInput::age) || is(FootInput::days) || is(FootInput::excl)) {
    return Outcome::not_applicable;
  }
  const bool cannot_walk = !is(FootInput::imm) && !is(FootInput::steps);
  if (is(FootInput::zone) && (is(FootInput::first) || is(FootInput::second) || cannot_walk)) {
    return Outcome::positive;
  }
  return is(FootInput::pregnant) ? Outcome::not_applicable : Outcome::negative;
}

// Replaced or fused ankles: what speaks for a film stands, a negative would reassure wrongly.
[[nodiscard]] Outcome decide_foot_operated(const std::array<std::uint8_t, foot_input_count>& in) {
  const Outcome outcome = decide_foot(in);
  return outcome == Outcome::negative ? Outcome::not_applicable : outcome;
}

[[nodiscard]] Outcome decide_no_foot(const std::array<std::uint8_t, foot_input_count>&) { return Outcome::not_applicable; }

[[nodiscard]] std::string_view foot_gate(const FootHeard& heard) {
  if (heard.no_limb) {
    return "no_limb";
  }
  if (heard.no_injury) {
    return "no_injury";
  }
  if (heard.age && heard.age->high < foot_age_min) {
    return "age";
  }
  if (heard.days && heard.days->low > foot_days_max) {
    return "days";
  }
  if (heard.foot.excl == Tri::yes) {
    return "exclusions";
  }
  return heard.replaced ? "implant" : (heard.fused ? "fused" : "pregnancy");
}

[[nodiscard]] std::vector<model::Word> foot_flags(const FootHeard& heard, Outcome outcome, bool both_sides) {
  const FootInjury& in = heard.foot;
  std::vector<model::Word> flags;
  const bool cannot_now = in.steps && in.steps->high < steps_needed;
  const bool tender_without_pain = in.zone == Tri::no && (in.first == Tri::yes || in.second == Tri::yes);
  if (in.age && in.age->high >= foot_age_min && in.age->low <= 17) {
    flags.push_back({"paediatric_extension"});
  }
  if (outcome == Outcome::negative && (cannot_now || heard.walks_not || tender_without_pain || heard.against_no)) {
    flags.push_back({"contradicted"});
  }
  if (outcome == Outcome::positive && in.pregnant == Tri::yes) {
    flags.push_back({"outside_derivation"});
  }
  if (heard.replaced) {
    flags.push_back({"replaced_joint"});
  }
  if (heard.could_be_pregnant && !heard.pregnancy_recorded) {
    flags.push_back({"pregnancy_not_asked"});
  }
  if (both_sides && cannot_now && in.imm == Tri::no) {
    flags.push_back({"side_not_assignable"});
  }
  return flags;
}

void explain_foot(const FootHeard& heard, const Series& series, const RuleResult& result, Working& working) {
  const FootInjury& in = heard.foot;
  const auto classes = classes_of(in);
  const auto line = [&](std::string_view text, Tri met) { working.lines.push_back({std::string(text) + ": " + met_line(met)}); };
  const Tri cannot_now = !in.steps ? Tri::undetermined : tri(in.steps->high < steps_needed);
  const Classes days = classes[slot(FootInput::days)];
  line(series.lines[0], in.zone);
  line(series.lines[1], in.first);
  line(series.lines[2], in.second);
  line("four steps neither at once nor now", and_(not_(in.imm), cannot_now));
  line("days since the injury " + number_line(in.days, 1) + ", 10 or less", days == 1 ? Tri::yes : (days == 2 ? Tri::no : Tri::undetermined));
  working.statement = {result.rule.text + ":" + std::string(side_word(result.side))};
  working.message = {"msg." + result.rule.text + "." + std::string(wire::type_of<Outcome>().words[static_cast<std::size_t>(result.outcome)])};
  working.formula = {"positive with pain in the zone and any of the three other criteria; negative without the pain, or if none of them is met"};
  working.rows.push_back({{std::string(series.edition)}, {"STIELL1993"}, model::Status::read, Params().figure("steps", 4000).raw()});
  working.rows.push_back({{std::string(series.edition)}, {"PLINT1999"}, model::Status::read, Params().figure("age", 2000).raw()});
  working.rows.push_back({{std::string(series.edition)}, {"MEMORY_TEXT"}, model::Status::memory, Params().figure("days", 10000).raw()});
  for (std::size_t i = 0; i < foot_input_count; ++i) {
    if (i != slot(FootInput::pregnant) || heard.pregnancy_asked_for()) {
      working.inputs.push_back({std::nullopt, model::Word{std::string(series.names[i])}, model::Word{heard.states[i]}, std::nullopt});
    }
  }
  for (const Settle& settle : result.settle) {
    const bool own = settle.input.text == "zone";  // each of the two has its own
    working.changes_if.push_back({own ? "msg." + result.rule.text + ".input_zone" : "msg.change." + settle.input.text});
  }
}

[[nodiscard]] JudgedRule judge_foot(const View& view, Side side, const Series& series, bool both_sides) {
  const FootHeard heard = hear_foot(view, side, series);
  const bool not_made = heard.no_limb || heard.no_injury;
  const bool operated = heard.replaced || heard.fused;
  const auto completed = complete(classes_of(heard.foot), not_made ? &decide_no_foot : (operated ? &decide_foot_operated : &decide_foot));
  JudgedRule judged;
  RuleResult& result = judged.result;
  result.rule = {std::string(series.rule)};
  result.edition = {std::string(series.edition)};
  result.side = side;
  result.outcome = completed.outcome;
  if (result.outcome == Outcome::not_applicable) {
    result.gate = model::Word{std::string(foot_gate(heard))};
  }
  for (std::size_t i = 0; i < foot_input_count; ++i) {
    if (i != slot(FootInput::pregnant) || heard.pregnancy_asked_for()) {
      result.inputs.push_back({{std::string(series.names[i])}, {heard.states[i]}});
    }
    if (completed.settles[i]) {
      Settle settle = settle_by(view, series.names[i], series.items[i], side, foot_classes[i], completed.gives[i]);
      for (SettleAnswer& answer : settle.answers) {
        // Where a "no" counts for nothing today it settles nothing, and nor does a memory of steps.
        const bool is_felt = i == slot(FootInput::zone) || i == slot(FootInput::first) || i == slot(FootInput::second);
        const bool lost = heard.unreliable && ((is_felt && answer.if_.text == "no") || (i == slot(FootInput::imm) && answer.if_.text == "yes"));
        answer.gives = lost ? Outcome::undetermined : answer.gives;
      }
      result.settle.push_back(std::move(settle));
    }
  }
  result.flags = foot_flags(heard, result.outcome, both_sides);
  result.findings = ids_of(heard.findings);
  explain_foot(heard, series, result, judged.working);
  return judged;
}

}  // namespace

const Series* series_of(std::string_view rule) {
  for (const Series* series : {&ottawa_ankle_series(), &ottawa_midfoot_series()}) {
    if (series->rule == rule) {
      return series;
    }
  }
  return nullptr;
}

bool says_tender(const model::Finding& finding) {
  const auto* answer = std::get_if<model::Answer>(&finding.value);
  const auto* test = std::get_if<model::Test>(&finding.value);
  const auto* joints = std::get_if<model::Choices>(&finding.value);
  if (joints != nullptr && finding.item.text == "foot.lisfranc_tender_joints") {
    return std::any_of(joints->choices.begin(), joints->choices.end(), [](const model::ChoiceId& one) { return one.text != "joint_none"; });
  }
  return (answer != nullptr && answer->answer == model::AnswerWord::yes) || (test != nullptr && test->result == model::TestResult::positive);
}

Completed<foot_input_count> ottawa_series(const FootInjury& in) { return complete(classes_of(in), &decide_foot); }

std::vector<JudgedRule> run_series(const View& view, const Series& series) {
  const std::vector<Side> sides = injured_feet(view, series);
  std::vector<JudgedRule> judged;
  for (const Side side : sides) {
    judged.push_back(judge_foot(view, side, series, sides.size() == 2));
  }
  return judged;
}

}  // namespace limbledger::interpret
