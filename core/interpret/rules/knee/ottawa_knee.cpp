#include "core/interpret/rules/knee/ottawa_knee.hpp"

#include "core/interpret/params.hpp"
#include "core/interpret/rules/input.hpp"

#include <algorithm>
#include <array>
#include <string>
#include <utility>

namespace limbledger::interpret {

namespace {

using model::Side;

constexpr std::int64_t days_max = 7;
constexpr std::int64_t flexion_needed = 900;  // tenths of a degree: exactly 90 is able
constexpr std::int64_t steps_needed = 4;
constexpr Classes no_or_yes = 3;

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
// What to record to settle an input; age and days are facts of the person and the exam.
constexpr std::array<std::string_view, ottawa_input_count> input_items{
    "",
    "",
    "knee.fibular_head_tender",
    "knee.patella_tender",
    "knee.bone_tender_elsewhere",
    "knee.flexion_active",
    "history.steps_at_once",
    "gait.steps_now",
    "history.knee_rule_exclusions",
    "body.pregnancy",
};

[[nodiscard]] constexpr std::size_t at(OttawaInput input) { return static_cast<std::size_t>(input); }

[[nodiscard]] Classes classes_of(Tri value) {
  switch (value) {
    case Tri::no:
      return 1;
    case Tri::yes:
      return 2;
    case Tri::undetermined:
      return no_or_yes;
  }
  return no_or_yes;
}

// Classes cut at rising limits: below the first, from the first to below the second ...
template <std::size_t Count>
[[nodiscard]] Classes classes_of(const std::optional<Between>& value, const std::array<std::int64_t, Count>& limits) {
  Classes may_be = 0;
  for (std::size_t c = 0; c <= Count; ++c) {
    const bool reaches = !value || c == 0 || value->high >= limits[c - 1];
    const bool stays = !value || c == Count || value->low < limits[c];
    may_be = static_cast<Classes>(may_be | (reaches && stays ? 1U << c : 0U));
  }
  return may_be;
}

[[nodiscard]] std::array<Classes, ottawa_input_count> classes_of(const OttawaKnee& in) {
  return {classes_of<2>(in.age, {5, 55}),
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

// ---- from an exam -------------------------------------------------------------------------------------------------

struct Inputs {
  OttawaKnee knee;
  std::array<std::string, ottawa_input_count> states;
  std::vector<const model::Finding*> findings;
  bool unreliable = false;  // answers are not reliable: a gate of its own name
  bool could_be_pregnant = false;
  bool pregnancy_recorded = false;
  std::vector<std::pair<const model::Finding*, model::Degrees>> flexions;

  [[nodiscard]] bool pregnancy_asked_for() const { return pregnancy_recorded || could_be_pregnant; }
};

[[nodiscard]] std::optional<Between> age_of(const View& view, std::string& state) {
  std::optional<model::AgeInterval> age;
  if (view.exam().injured_on && view.exam().injured_on->first_day() <= view.examined_on().last_day()) {
    age = view.age_on_day(*view.exam().injured_on);
  } else {
    age = view.age_on_exam();
  }
  state = age ? (age->low == age->high ? "known" : "known_in_part") : "not_asked";
  return age ? std::optional(Between{age->low, age->high}) : std::nullopt;
}

[[nodiscard]] std::optional<Between> days_of(const View& view, std::string& state) {
  const auto& injured = view.exam().injured_on;
  state = "not_asked";
  if (!injured) {
    return std::nullopt;
  }
  const Between days{view.examined_on().first_day() - injured->last_day(), view.examined_on().last_day() - injured->first_day()};
  if (days.high < 0) {
    state = "after_the_examination";
    return std::nullopt;
  }
  const bool exact = days.low == days.high;
  state = exact ? "known" : "known_in_part";
  return Between{std::max<std::int64_t>(days.low, 0), days.high};
}

// Four steps as an answer or as a number of steps.
[[nodiscard]] Said says_four_steps(const model::Finding& finding) {
  if (const auto* count = std::get_if<model::CountValue>(&finding.value)) {
    return {static_cast<std::uint8_t>(count->count.steps >= steps_needed ? 2 : 1), "known"};
  }
  return says_answer(finding);
}

[[nodiscard]] bool is_pregnancy(const model::ChoiceId& choice) { return choice.text == "pregnancy"; }
[[nodiscard]] bool is_none(const model::ChoiceId& choice) { return choice.text == "none_of_these" || choice.text == "none"; }

// Pregnancy is an exclusion of its own kind and is not counted here.
[[nodiscard]] Said says_excluded(const model::Finding& finding) {
  std::vector<model::ChoiceId> named;
  if (const auto* choices = std::get_if<model::Choices>(&finding.value)) {
    named = choices->choices;
  } else if (const auto* choice = std::get_if<model::Choice>(&finding.value)) {
    named = {choice->choice};
  } else {
    return says_answer(finding);
  }
  const bool any = std::any_of(named.begin(), named.end(), [](const auto& c) { return !is_none(c) && !is_pregnancy(c); });
  return {static_cast<std::uint8_t>(any ? 2 : 1), "known"};
}

[[nodiscard]] bool names_pregnancy(const model::Finding& finding) {
  if (const auto* choices = std::get_if<model::Choices>(&finding.value)) {
    return std::any_of(choices->choices.begin(), choices->choices.end(), is_pregnancy);
  }
  const auto* choice = std::get_if<model::Choice>(&finding.value);
  return choice != nullptr && is_pregnancy(choice->choice);
}

// Flexion that one finding allows, in tenths of a degree. "Full" and "as the other side" are words and give no number.
[[nodiscard]] std::optional<Between> flexion_of(const model::Finding& finding, std::string& state) {
  constexpr Between any{-36000, 36000};
  const auto* angle = std::get_if<model::Angle>(&finding.value);
  if (angle == nullptr || angle->reads || !(angle->toward_deg || angle->deg)) {
    state = "unresolved";
    return std::nullopt;
  }
  const std::int64_t reached = angle->toward_deg ? angle->toward_deg->steps : angle->deg->steps;
  Between between{reached, reached};
  if (angle->bound) {
    (*angle->bound == model::Bound::at_least ? between.high : between.low) = *angle->bound == model::Bound::at_least ? any.high : any.low;
  }
  state = "known";
  return between;
}

// The lowest of active and passive recorded. Readings of one motion that differ span what they span.
void hear_flexion(const View& view, Side side, Inputs& inputs) {
  std::string& state = inputs.states[at(OttawaInput::flex)];
  state = "not_asked";
  std::optional<Between> lowest;
  bool conflict = false;
  bool open = false;
  bool blocked = false;
  for (const std::string_view item : {"knee.flexion_active", "knee.flexion_passive", "knee.mcmurray"}) {
    std::optional<Between> motion;
    for (const model::Finding* finding : view.at(item, side)) {
      const bool in_conflict = finding->standing && *finding->standing == model::Standing::in_conflict;
      const bool mcmurray = item == "knee.mcmurray";
      std::string why(unsettled_by(*finding));
      if (const auto* not_done = std::get_if<model::NotDone>(&finding->value)) {
        blocked = blocked || (why.empty() && not_done->reason == model::WhyNot::blocked);
        why = why.empty() ? std::string(state_of(not_done->reason)) : why;
      }
      if (mcmurray) {
        if (blocked) {
          inputs.findings.push_back(finding);
        }
        continue;
      }
      inputs.findings.push_back(finding);
      const std::optional<Between> read = why.empty() ? flexion_of(*finding, why) : std::nullopt;
      conflict = conflict || in_conflict;
      // Another examiner's "could not" beside a reading leaves the motion open.
      const bool beside = unsettled_by(*finding).empty() && view.at(item, side).size() > 1;
      open = open || (!read && (in_conflict || beside));
      if (!read) {
        state = lowest || motion ? state : why;
        continue;
      }
      inputs.flexions.emplace_back(finding,
                                   model::Degrees{std::get<model::Angle>(finding->value).toward_deg.value_or(model::Degrees{read->low}).steps});
      motion = motion ? Between{std::min(motion->low, read->low), std::max(motion->high, read->high)} : *read;
    }
    if (motion) {
      lowest = lowest ? Between{std::min(lowest->low, motion->low), std::min(lowest->high, motion->high)} : *motion;
    }
  }
  if (lowest && !open) {
    inputs.knee.flex = lowest;
    const bool decided = lowest->high < flexion_needed || lowest->low >= flexion_needed;
    state = decided ? "known" : (conflict ? "in_conflict" : "not_precise_enough");
  } else if (lowest) {
    state = "in_conflict";
  } else if (blocked) {
    // A joint that blocks before the test's starting position does not reach 90 degrees.
    inputs.knee.flex = Between{0, flexion_needed - 1};
    state = "known";
  }
}

[[nodiscard]] Inputs hear_all(const View& view, Side side) {
  Inputs inputs;
  inputs.knee.age = age_of(view, inputs.states[at(OttawaInput::age)]);
  inputs.knee.days = days_of(view, inputs.states[at(OttawaInput::days)]);
  const auto both_of = [&](std::string_view item) {
    std::vector<const model::Finding*> found = view.at(item, side);
    const std::vector<const model::Finding*> midline = view.at(item, Side::midline);
    found.insert(found.end(), midline.begin(), midline.end());
    return found;
  };
  const auto take = [&](OttawaInput input, const Says& says) {
    Heard heard = hear(both_of(input_items[at(input)]), no_or_yes, says);
    inputs.states[at(input)] = heard.state;
    inputs.findings.insert(inputs.findings.end(), heard.findings.begin(), heard.findings.end());
    return heard.as_tri();
  };
  inputs.knee.fib = take(OttawaInput::fib, &says_answer);
  inputs.knee.pat = take(OttawaInput::pat, &says_answer);
  inputs.knee.other = take(OttawaInput::other, &says_answer);
  hear_flexion(view, side, inputs);
  inputs.knee.imm = take(OttawaInput::imm, &says_four_steps);
  const auto& spoke = view.exam().who_spoke;
  if (inputs.knee.imm != Tri::undetermined && spoke && spoke->reliable && *spoke->reliable == model::Reliable::no) {
    inputs.knee.imm = Tri::undetermined;
    inputs.states[at(OttawaInput::imm)] = "not_reliable";
  }
  const Tri now = take(OttawaInput::steps, &says_four_steps);
  if (now != Tri::undetermined) {
    inputs.knee.steps = now == Tri::yes ? Between{steps_needed, steps_needed} : Between{0, steps_needed - 1};
  }
  inputs.knee.excl = take(OttawaInput::excl, &says_excluded);

  const Heard reliable = hear(both_of("general.answers_reliable"), no_or_yes, &says_answer);
  inputs.findings.insert(inputs.findings.end(), reliable.findings.begin(), reliable.findings.end());
  if (!reliable.findings.empty() && reliable.as_tri() != Tri::yes) {
    inputs.unreliable = reliable.as_tri() == Tri::no;
    inputs.knee.excl = or_(inputs.knee.excl, not_(reliable.as_tri()));
    inputs.states[at(OttawaInput::excl)] = inputs.unreliable ? "known" : "not_reliable";
  }

  const Heard pregnant = hear(both_of("body.pregnancy"), no_or_yes, &says_answer);
  inputs.findings.insert(inputs.findings.end(), pregnant.findings.begin(), pregnant.findings.end());
  const auto exclusions = both_of(input_items[at(OttawaInput::excl)]);
  const bool named = std::any_of(exclusions.begin(), exclusions.end(), [](const auto* f) { return settles(*f) && names_pregnancy(*f); });
  inputs.pregnancy_recorded = !pregnant.findings.empty() || named;
  const bool male = view.person() && view.person()->sex == model::Sex::male;
  inputs.could_be_pregnant = !male && (!inputs.knee.age || (inputs.knee.age->high >= 12 && inputs.knee.age->low <= 55));
  // From 12 to 55 years (our convention) not asked is never read as not pregnant.
  const Tri unasked = inputs.could_be_pregnant ? Tri::undetermined : Tri::no;
  inputs.knee.pregnant = named ? Tri::yes : (pregnant.findings.empty() ? unasked : pregnant.as_tri());
  inputs.states[at(OttawaInput::pregnant)] = named ? "known" : pregnant.state;
  return inputs;
}

// Which knees were injured: the side of the complaint, and any side with tender bone. Without a side, every knee examined.
[[nodiscard]] std::vector<Side> injured_sides(const View& view) {
  std::vector<Side> sides;
  const auto& complaint = view.exam().side;
  const bool sided = complaint && *complaint != Side::midline;
  bool any_input = view.exam().complaint.text == "acute_knee" || view.exam().injured_on.has_value();
  for (const model::Finding* finding : view.findings()) {
    any_input = any_input || (std::find(input_items.begin() + 2, input_items.begin() + 5, finding->item.text) != input_items.begin() + 5) ||
                finding->item.text == "history.steps_at_once" || finding->item.text == "gait.steps_now";
  }
  if (!any_input) {
    return sides;
  }
  for (const Side side : {Side::left, Side::right}) {
    bool tender = false;
    for (const OttawaInput input : {OttawaInput::fib, OttawaInput::pat, OttawaInput::other}) {
      tender = tender || view.says_yes(input_items[at(input)], side);
    }
    const auto& all = view.findings();
    const bool examined = std::any_of(all.begin(), all.end(), [&](const auto* f) { return f->side == side && f->item.text.starts_with("knee."); });
    if (tender || (sided ? *complaint == side : examined)) {
      sides.push_back(side);
    }
  }
  return sides;
}

[[nodiscard]] std::optional<model::Word> failed_gate(const OttawaKnee& in, bool unreliable) {
  if (in.age && in.age->high < 5) {
    return model::Word{"age"};
  }
  if (in.days && in.days->low > days_max) {
    return model::Word{"days"};
  }
  if (in.excl == Tri::yes) {
    return model::Word{unreliable ? "answers_reliable" : "exclusions"};
  }
  return model::Word{"pregnancy"};
}

[[nodiscard]] std::vector<model::Word> flags_of(const Inputs& inputs, Outcome outcome, bool both_sides) {
  const OttawaKnee& in = inputs.knee;
  std::vector<model::Word> flags;
  const bool cannot_now = in.steps && in.steps->high < steps_needed;
  if (in.age && in.age->high < 5) {
    flags.push_back({"one_study_from_2_years"});
  } else if (in.age && in.age->low <= 17) {
    flags.push_back({"paediatric_extension"});
  }
  if (outcome == Outcome::negative && (cannot_now || in.other == Tri::yes)) {
    flags.push_back({"contradicted"});
  }
  if (outcome == Outcome::positive && in.pregnant == Tri::yes) {
    flags.push_back({"outside_derivation"});
  }
  if (inputs.could_be_pregnant && !inputs.pregnancy_recorded) {
    flags.push_back({"pregnancy_not_asked"});
  }
  if (both_sides && cannot_now && in.imm == Tri::no) {
    flags.push_back({"side_not_assignable"});
  }
  return flags;
}

[[nodiscard]] std::string number_line(const std::optional<Between>& value, std::int32_t per_unit) {
  if (!value) {
    return "not known";
  }
  const std::string low = wire::write_number(value->low, per_unit);
  return value->low == value->high
             ? low
             : (value->high >= 36000 ? "at least " + low
                                     : (value->low <= -36000 ? "at most " : low + " to ") + wire::write_number(value->high, per_unit));
}

[[nodiscard]] std::string yes_no(bool met, bool open) { return open ? "open" : (met ? "met" : "not met"); }

void explain(const Inputs& inputs, const RuleResult& result, Working& working) {
  const OttawaKnee& in = inputs.knee;
  const auto classes = classes_of(in);
  const auto state = [&](Tri value) { return yes_no(value == Tri::yes, value == Tri::undetermined); };
  const auto line = [&](const std::string& text) { working.lines.push_back({text}); };
  const Tri old = classes[0] == 4 ? Tri::yes : ((classes[0] & 4U) == 0 ? Tri::no : Tri::undetermined);
  const Tri stiff = classes[5] == 1 ? Tri::yes : (classes[5] == 2 ? Tri::no : Tri::undetermined);
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
  const Inputs inputs = hear_all(view, side);
  const auto completed = ottawa_knee(inputs.knee);
  JudgedRule judged;
  RuleResult& result = judged.result;
  result.rule = {std::string(ottawa_knee_rule)};
  result.edition = {std::string(ottawa_knee_edition)};
  result.side = side;
  result.outcome = completed.outcome;
  if (result.outcome == Outcome::not_applicable) {
    result.gate = failed_gate(inputs.knee, inputs.unreliable);
  }
  for (std::size_t i = 0; i < ottawa_input_count; ++i) {
    if (i != at(OttawaInput::pregnant) || inputs.pregnancy_asked_for()) {
      result.inputs.push_back({{std::string(input_names[i])}, {inputs.states[i]}});
    }
    if (!completed.settles[i]) {
      continue;
    }
    Settle settle;
    settle.input = {std::string(input_names[i])};
    if (!input_items[i].empty()) {
      settle.item = model::ItemId{std::string(input_items[i])};
      const model::Item* item = view.edition().item(*settle.item);
      const bool sided =
          item == nullptr ? settle.item->text.starts_with("knee.") : std::find(item->sides.begin(), item->sides.end(), side) != item->sides.end();
      settle.side = sided ? side : Side::midline;
    }
    for (std::size_t c = 0; c < 3; ++c) {
      if (completed.gives[i][c]) {
        settle.answers.push_back({{std::string(class_names[i][c])}, *completed.gives[i][c]});
      }
    }
    result.settle.push_back(std::move(settle));
  }
  result.flags = flags_of(inputs, result.outcome, both_sides);
  result.findings = ids_of(inputs.findings);
  explain(inputs, result, judged.working);
  return judged;
}

}  // namespace

Completed<ottawa_input_count> ottawa_knee(const OttawaKnee& in) { return complete(classes_of(in), &decide); }

std::vector<JudgedRule> run_ottawa_knee(const View& view) {
  const std::vector<Side> sides = injured_sides(view);
  std::vector<JudgedRule> judged;
  for (const Side side : sides) {
    judged.push_back(judge(view, side, sides.size() == 2));
  }
  return judged;
}

}  // namespace limbledger::interpret
