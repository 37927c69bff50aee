#include "core/interpret/rules/knee/ottawa_knee.hpp"

#include "core/interpret/params.hpp"
#include "core/interpret/rules/knee/ottawa_knee_inputs.hpp"

#include <algorithm>
#include <array>
#include <string>
#include <utility>

namespace limbledger::interpret {

namespace {

using model::Side;

constexpr std::array<std::string_view, ottawa_input_count> input_names{"age",  "days", "fib",   "pat",  "other",
                                                                       "flex", "imm",  "steps", "excl", "pregnant"};
constexpr std::array<std::array<std::string_view, 3>, ottawa_input_count> class_names{{
    {"under 5", "5 to 54", "55 or more"},
    {"7 or less", "more than 7", ""},
    {"no", "yes", ""},
    {"no", "yes", ""},
    {"no", "yes", ""},
    {"below 90", "90 or more", ""},
    {"no", "yes", ""},
    {"3 or fewer", "4", ""},
    {"no", "yes", ""},
    {"no", "yes", ""},
}};

constexpr std::int64_t film_from_years = 55;

[[nodiscard]] std::array<Classes, ottawa_input_count> classes_of(const OttawaKnee& in) {
  return {classes_of<2>(in.age, {5, film_from_years}),
          classes_of<1>(in.days, {days_max + 1}),
          classes_of(in.fib),
          classes_of(in.pat),
          classes_of(in.other),
          classes_of<1>(in.flex, {flexion_needed}),
          classes_of(in.imm),
          classes_of<1>(in.steps, {steps_needed}),
          classes_of(in.excl),
          classes_of(in.pregnant)};
}

[[nodiscard]] Outcome decide(const std::array<std::uint8_t, ottawa_input_count>& in) {
  const auto is = [&](OttawaInput input) { return in[at(input)] == 1; };
  if (in[at(OttawaInput::age)] == 0 || is(OttawaInput::days) || is(OttawaInput::excl)) {
    return Outcome::not_applicable;
  }
  const bool patella_alone = is(OttawaInput::pat) && !is(OttawaInput::fib) && !is(OttawaInput::other);
  const bool cannot_walk = !is(OttawaInput::imm) && !is(OttawaInput::steps);
  const bool met = in[at(OttawaInput::age)] == 2 || is(OttawaInput::fib) || patella_alone || !is(OttawaInput::flex) || cannot_walk;
  if (met) {
    return Outcome::positive;
  }
  return is(OttawaInput::pregnant) ? Outcome::not_applicable : Outcome::negative;
}

// Nobody says that a replaced knee was among those studied: what speaks for a film stands, a negative would reassure wrongly.
[[nodiscard]] Outcome decide_replaced(const std::array<std::uint8_t, ottawa_input_count>& in) {
  const Outcome outcome = decide(in);
  return outcome == Outcome::negative ? Outcome::not_applicable : outcome;
}

// A fused knee never bent to 90: that it does not now is no sign of a break. A negative would reassure wrongly here too.
[[nodiscard]] Outcome decide_fused(const std::array<std::uint8_t, ottawa_input_count>& in) {
  auto bends = in;
  bends[at(OttawaInput::flex)] = 1;
  return decide_replaced(bends);
}

// No limb, or no injury.
[[nodiscard]] Outcome decide_no_knee(const std::array<std::uint8_t, ottawa_input_count>&) { return Outcome::not_applicable; }

[[nodiscard]] std::optional<model::Word> failed_gate(const OttawaHeard& inputs) {
  const OttawaKnee& in = inputs.knee;
  if (inputs.no_limb) {
    return model::Word{"no_limb"};
  }
  if (inputs.no_injury) {
    return model::Word{"no_injury"};
  }
  if (in.age && in.age->high < 5) {
    return model::Word{"age"};
  }
  if (in.days && in.days->low > days_max) {
    return model::Word{"days"};
  }
  if (in.excl == Tri::yes) {
    return model::Word{inputs.unreliable ? "answers_reliable" : "exclusions"};
  }
  return model::Word{inputs.replaced ? "implant" : (inputs.fused ? "fused" : "pregnancy")};
}

// Of somebody of 55 or more no other criterion is met, or none can be believed: the age asks for the film by itself.
[[nodiscard]] bool by_age_alone(const OttawaHeard& inputs, Outcome outcome, bool cannot_now) {
  const OttawaKnee& in = inputs.knee;
  if (!in.age || in.age->low < film_from_years) {
    return false;
  }
  const bool bone = in.fib == Tri::yes || (in.pat == Tri::yes && in.fib == Tri::no && in.other == Tri::no);
  const bool stiff = !inputs.fused && in.flex && in.flex->high < flexion_needed;
  const bool other = bone || stiff || (in.imm == Tri::no && cannot_now);
  return outcome == Outcome::positive ? !other : outcome == Outcome::not_applicable && inputs.unreliable && in.excl == Tri::yes && !inputs.no_limb && !inputs.no_injury;
}

[[nodiscard]] std::vector<model::Word> flags_of(const OttawaHeard& inputs, Outcome outcome, bool both_sides) {
  const OttawaKnee& in = inputs.knee;
  std::vector<model::Word> flags;
  const bool cannot_now = in.steps && in.steps->high < steps_needed;
  if (in.age && in.age->high < 5) {
    flags.push_back({"one_study_from_2_years"});
  } else if (in.age && in.age->low <= 17) {
    flags.push_back({"paediatric_extension"});
  }
  if (outcome == Outcome::negative && (cannot_now || inputs.walks_not || in.other == Tri::yes || inputs.against_no)) {
    flags.push_back({"contradicted"});
  }
  if (outcome == Outcome::positive && in.pregnant == Tri::yes) {
    flags.push_back({"outside_derivation"});
  }
  if (inputs.replaced) {
    flags.push_back({"replaced_joint"});
  }
  if (inputs.could_be_pregnant && !inputs.pregnancy_recorded) {
    flags.push_back({"pregnancy_not_asked"});
  }
  if (by_age_alone(inputs, outcome, cannot_now)) {
    flags.push_back({"age_decides"});
  }
  if (both_sides && cannot_now && in.imm == Tri::no) {
    flags.push_back({"side_not_assignable"});
  }
  return flags;
}

void explain(const OttawaHeard& inputs, const RuleResult& result, Working& working) {
  const OttawaKnee& in = inputs.knee;
  const auto classes = classes_of(in);
  const auto state = [](Tri value) { return met_line(value); };
  const auto line = [&](const std::string& text) { working.lines.push_back({text}); };
  const Tri old = classes[0] == 4 ? Tri::yes : ((classes[0] & 4U) == 0 ? Tri::no : Tri::undetermined);
  const Tri stiff = inputs.fused ? Tri::no : classes[5] == 1 ? Tri::yes : (classes[5] == 2 ? Tri::no : Tri::undetermined);
  const Tri cannot_now = !in.steps ? Tri::undetermined : tri(in.steps->high < steps_needed);
  line("age " + number_line(in.age, 1) + ", 55 or older: " + state(old));
  line("head of the fibula tender: " + state(in.fib));
  line("patella tender and no other bone: " + state(and_(in.pat, and_(not_(in.fib), not_(in.other)))));
  const bool blocked = in.flex && inputs.flexions.empty();
  line(blocked ? "movement blocked, flexion below 90: " + state(stiff) : "flexion " + number_line(in.flex, 10) + ", below 90: " + state(stiff));
  line("four steps neither at once nor now: " + state(and_(not_(in.imm), cannot_now)));
  line("days since the injury " + number_line(in.days, 1) +
       ", 7 or less: " + state(classes[1] == 1 ? Tri::yes : (classes[1] == 2 ? Tri::no : Tri::undetermined)));
  working.statement = {result.rule.text + ":" + std::string(side_word(result.side))};
  working.message = {"msg." + result.rule.text + "." + std::string(wire::type_of<Outcome>().words[static_cast<std::size_t>(result.outcome)])};
  working.formula = {"positive if any of the five criteria is met; negative only if none is"};
  working.rows.push_back({{"okr/1995"},
                          {"STIELL1995"},
                          model::Status::read,
                          Params().figure("age", 55000).figure("flexion_deg", 90000).figure("steps", 4000).figure("days", 7000).raw()});
  for (std::size_t i = 0; i < ottawa_input_count; ++i) {
    if (i == at(OttawaInput::pregnant) && !inputs.pregnancy_asked_for()) {
      continue;
    }
    working.inputs.push_back({std::nullopt, model::Word{std::string(input_names[i])}, model::Word{inputs.states[i]}, std::nullopt});
  }
  for (const auto& [finding, deg] : inputs.flexions) {
    working.inputs.push_back({finding->finding, model::Word{"flex"}, std::nullopt, deg});
  }
  for (const Settle& settle : result.settle) {
    working.changes_if.push_back({"msg.change." + settle.input.text});
  }
}

[[nodiscard]] JudgedRule judge(const View& view, Side side, bool both_sides) {
  const OttawaHeard inputs = hear_ottawa(view, side);
  const auto classes = classes_of(inputs.knee);
  const auto completed = inputs.no_limb || inputs.no_injury ? complete(classes, &decide_no_knee) : complete(classes, inputs.fused ? &decide_fused : (inputs.replaced ? &decide_replaced : &decide));
  JudgedRule judged;
  RuleResult& result = judged.result;
  result.rule = {std::string(ottawa_knee_rule)};
  result.edition = {std::string(ottawa_knee_edition)};
  result.side = side;
  result.outcome = completed.outcome;
  if (result.outcome == Outcome::not_applicable) {
    result.gate = failed_gate(inputs);
  }
  for (std::size_t i = 0; i < ottawa_input_count; ++i) {
    if (i != at(OttawaInput::pregnant) || inputs.pregnancy_asked_for()) {
      result.inputs.push_back({{std::string(input_names[i])}, {inputs.states[i]}});
    }
    if (completed.settles[i]) {
      result.settle.push_back(settle_by(view, input_names[i], ottawa_items[i], side, class_names[i], completed.gives[i]));
    }
  }
  result.flags = flags_of(inputs, result.outcome, both_sides);
  result.findings = ids_of(inputs.findings);
  explain(inputs, result, judged.working);
  return judged;
}

}  // namespace

Completed<ottawa_input_count> ottawa_knee(const OttawaKnee& in) { return complete(classes_of(in), &decide); }

std::vector<JudgedRule> run_ottawa_knee(const View& view) {
  const std::vector<Side> sides = injured_knees(view);
  std::vector<JudgedRule> judged;
  for (const Side side : sides) {
    judged.push_back(judge(view, side, sides.size() == 2));
  }
  return judged;
}

}  // namespace limbledger::interpret
