#include "core/interpret/rules/knee/pittsburgh_knee.hpp"

#include "core/interpret/params.hpp"

#include <algorithm>
#include <array>
#include <string>
#include <utility>

namespace limbledger::interpret {

namespace {

using model::Side;
using Input = PittsburghInput;

constexpr std::array<std::string_view, pittsburgh_input_count> pittsburgh_names{"age", "days", "blunt", "steps", "excl", "pregnant"};
constexpr std::array<std::string_view, pittsburgh_input_count> pittsburgh_items{
    "", "", "history.fall_or_blow", "gait.steps_now", "history.knee_rule_exclusions", "body.pregnancy"};
constexpr std::array<std::array<std::string_view, 3>, pittsburgh_input_count> pittsburgh_classes{{
    {"under 12", "12 to 50", "over 50"},
    {"7 or less", "more than 7", ""},
    {"no", "yes", ""},
    {"3 or fewer", "4", ""},
    {"no", "yes", ""},
    {"no", "yes", ""},
}};

[[nodiscard]] constexpr std::size_t place(Input input) { return static_cast<std::size_t>(input); }

constexpr std::int64_t blunt_film_under = 12;
constexpr std::int64_t blunt_film_over = 50;

[[nodiscard]] std::array<Classes, pittsburgh_input_count> classes_of(const PittsburghKnee& in) {
  return {classes_of<2>(in.age, {blunt_film_under, blunt_film_over + 1}), classes_of<1>(in.days, {days_max + 1}), classes_of(in.blunt),
          classes_of<1>(in.steps, {steps_needed}), classes_of(in.excl), classes_of(in.pregnant)};
}

[[nodiscard]] Outcome decide_pittsburgh(const std::array<std::uint8_t, pittsburgh_input_count>& in) {
  const auto is = [&](Input input) { return in[place(input)] == 1; };
  if (is(Input::days) || is(Input::excl)) {
    return Outcome::not_applicable;
  }
  const bool by_age = in[place(Input::age)] != 1;
  if (is(Input::blunt) && (by_age || !is(Input::steps))) {
    return Outcome::positive;
  }
  return is(Input::pregnant) ? Outcome::not_applicable : Outcome::negative;
}

// An earlier operation on this knee is among the published exclusions; and without a limb or an injury, no rule.
[[nodiscard]] Outcome decide_not_made(const std::array<std::uint8_t, pittsburgh_input_count>&) { return Outcome::not_applicable; }

struct PittsburghHeard : KneeHeard {
  PittsburghKnee knee;
  std::array<std::string, pittsburgh_input_count> states;
};

// What a mechanism says of a fall or a blow. A twist, a landing or a bending back may have come with a fall: they say nothing.
[[nodiscard]] Said says_blunt(const model::Finding& finding) {
  const auto* choice = std::get_if<model::Choice>(&finding.value);
  if (choice == nullptr) {
    return says_answer(finding);
  }
  const std::string& how = choice->choice.text;
  const bool blunt = how == "fall" || how == "direct_blow" || how == "dashboard" || how == "vehicle";
  if (!blunt && how != "no_injury") {
    return {std::nullopt, "not_asked"};
  }
  return {static_cast<std::uint8_t>(blunt ? 2 : 1), "known"};
}

void hear_blunt(const View& view, Side side, PittsburghHeard& inputs) {
  std::vector<const model::Finding*> told = at_side_or_midline(view, "history.fall_or_blow", side);
  for (const model::Finding* finding : at_side_or_midline(view, "history.mechanism", side)) {
    const bool answered = settles(*finding) && says_blunt(*finding).bits.has_value() && std::holds_alternative<model::Choice>(finding->value);
    if (answered) {
      told.push_back(finding);
    }
  }
  const Heard heard = hear(told, no_or_yes, &says_blunt);
  inputs.findings.insert(inputs.findings.end(), heard.findings.begin(), heard.findings.end());
  inputs.knee.blunt = heard.as_tri();
  inputs.states[place(Input::blunt)] = heard.state;
  if (inputs.knee.blunt != Tri::undetermined && history_not_reliable(view)) {
    inputs.knee.blunt = Tri::undetermined;
    inputs.states[place(Input::blunt)] = "not_reliable";
  }
}

[[nodiscard]] PittsburghHeard hear_pittsburgh(const View& view, Side side) {
  PittsburghHeard inputs{hear_knee(view, side), {}, {}};
  hear_blunt(view, side, inputs);
  inputs.knee.age = inputs.age;
  inputs.knee.days = inputs.days;
  inputs.knee.steps = inputs.steps;
  inputs.knee.excl = inputs.excluded.value;
  inputs.knee.pregnant = inputs.pregnant.value;
  inputs.states[place(Input::age)] = inputs.age_state;
  inputs.states[place(Input::days)] = inputs.days_state;
  inputs.states[place(Input::steps)] = inputs.steps_state;
  inputs.states[place(Input::excl)] = inputs.excluded.state;
  inputs.states[place(Input::pregnant)] = inputs.pregnant.state;
  return inputs;
}

// Fused knees were not among those studied: what speaks for a film stands, a negative would reassure wrongly.
[[nodiscard]] Outcome decide_pittsburgh_fused(const std::array<std::uint8_t, pittsburgh_input_count>& in) {
  const Outcome outcome = decide_pittsburgh(in);
  return outcome == Outcome::negative ? Outcome::not_applicable : outcome;
}

[[nodiscard]] std::string_view pittsburgh_gate(const PittsburghHeard& inputs) {
  if (inputs.no_limb) {
    return "no_limb";
  }
  if (inputs.no_injury) {
    return "no_injury";
  }
  if (inputs.replaced) {
    return "implant";
  }
  if (inputs.knee.days && inputs.knee.days->low > days_max) {
    return "days";
  }
  if (inputs.knee.excl == Tri::yes) {
    return inputs.unreliable ? "answers_reliable" : "exclusions";
  }
  return inputs.fused ? "fused" : "pregnancy";
}

[[nodiscard]] std::vector<model::Word> pittsburgh_flags(const View& view, Side side, const PittsburghHeard& inputs, Outcome outcome) {
  std::vector<model::Word> flags;
  const bool cannot_now = inputs.knee.steps && inputs.knee.steps->high < steps_needed;
  const bool bone = view.says_yes("knee.fibular_head_tender", side) || view.says_yes("knee.patella_tender", side) ||
                    view.says_yes("knee.bone_tender_elsewhere", side);
  // The rule looks at no bone, and after a twist not at walking either.
  if (outcome == Outcome::negative && (cannot_now || inputs.walks_not || bone || inputs.against_no)) {
    flags.push_back({"contradicted"});
  }
  if (outcome == Outcome::negative) {
    flags.push_back({"earlier_operation_not_asked"});
  }
  if (outcome == Outcome::positive && inputs.knee.pregnant == Tri::yes) {
    flags.push_back({"outside_derivation"});
  }
  if (inputs.replaced) {
    flags.push_back({"replaced_joint"});
  }
  if (inputs.could_be_pregnant && !inputs.pregnancy_recorded) {
    flags.push_back({"pregnancy_not_asked"});
  }
  // After a fall or a blow under 12 or over 50 years the steps do not matter, or were not told.
  const auto& age = inputs.knee.age;
  if (outcome == Outcome::positive && !cannot_now && age && (age->high < blunt_film_under || age->low > blunt_film_over)) {
    flags.push_back({"age_decides"});
  }
  return flags;
}

void explain_pittsburgh(const PittsburghHeard& inputs, const RuleResult& result, Working& working) {
  const PittsburghKnee& in = inputs.knee;
  const auto classes = classes_of(in);
  const auto line = [&](const std::string& text, Tri met) { working.lines.push_back({text + ": " + met_line(met)}); };
  const Classes age = classes[place(Input::age)];
  const Classes days = classes[place(Input::days)];
  const Tri by_age = (age & 2U) == 0 ? Tri::yes : (age == 2 ? Tri::no : Tri::undetermined);
  const Tri cannot_now = !in.steps ? Tri::undetermined : tri(in.steps->high < steps_needed);
  line("a fall or a blow", in.blunt);
  line("age " + number_line(in.age, 1) + ", under 12 or over 50", by_age);
  line("fewer than four steps now", cannot_now);
  line("days since the injury " + number_line(in.days, 1) + ", 7 or less", days == 1 ? Tri::yes : (days == 2 ? Tri::no : Tri::undetermined));
  working.statement = {result.rule.text + ":" + std::string(side_word(result.side))};
  working.message = {"msg." + result.rule.text + "." + std::string(wire::type_of<Outcome>().words[static_cast<std::size_t>(result.outcome)])};
  working.formula = {"positive after a fall or a blow if the age or the steps are met; negative otherwise"};
  working.rows.push_back({{"pkr/1994"},
                          {"SEABERG1994"},
                          model::Status::read,
                          Params().figure("age_under", 12000).figure("age_over", 50000).figure("steps", 4000).figure("days", 7000).raw()});
  for (std::size_t i = 0; i < pittsburgh_input_count; ++i) {
    if (i != place(Input::pregnant) || inputs.pregnancy_asked_for()) {
      working.inputs.push_back({std::nullopt, model::Word{std::string(pittsburgh_names[i])}, model::Word{inputs.states[i]}, std::nullopt});
    }
  }
  for (const Settle& settle : result.settle) {
    working.changes_if.push_back({"msg.change." + settle.input.text});
  }
}

[[nodiscard]] JudgedRule judge_pittsburgh(const View& view, Side side) {
  const PittsburghHeard inputs = hear_pittsburgh(view, side);
  const bool not_made = inputs.no_limb || inputs.no_injury || inputs.replaced;
  const auto completed = complete(classes_of(inputs.knee), not_made ? &decide_not_made : (inputs.fused ? &decide_pittsburgh_fused : &decide_pittsburgh));
  JudgedRule judged;
  RuleResult& result = judged.result;
  result.rule = {std::string(pittsburgh_knee_rule)};
  result.edition = {std::string(pittsburgh_knee_edition)};
  result.side = side;
  result.outcome = completed.outcome;
  if (result.outcome == Outcome::not_applicable) {
    result.gate = model::Word{std::string(pittsburgh_gate(inputs))};
  }
  for (std::size_t i = 0; i < pittsburgh_input_count; ++i) {
    if (i != place(Input::pregnant) || inputs.pregnancy_asked_for()) {
      result.inputs.push_back({{std::string(pittsburgh_names[i])}, {inputs.states[i]}});
    }
    if (completed.settles[i]) {
      result.settle.push_back(settle_by(view, pittsburgh_names[i], pittsburgh_items[i], side, pittsburgh_classes[i], completed.gives[i]));
    }
  }
  result.flags = pittsburgh_flags(view, side, inputs, result.outcome);
  result.findings = ids_of(inputs.findings);
  explain_pittsburgh(inputs, result, judged.working);
  return judged;
}

}  // namespace

Completed<pittsburgh_input_count> pittsburgh_knee(const PittsburghKnee& in) { return complete(classes_of(in), &decide_pittsburgh); }

std::vector<JudgedRule> run_pittsburgh_knee(const View& view) {
  std::vector<JudgedRule> judged;
  for (const Side side : injured_knees(view)) {
    judged.push_back(judge_pittsburgh(view, side));
  }
  return judged;
}

}  // namespace limbledger::interpret
