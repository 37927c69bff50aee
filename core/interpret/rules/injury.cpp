#include "core/interpret/rules/injury.hpp"

#include "core/interpret/alerts/circumstances.hpp"
#include "core/interpret/body.hpp"
#include "core/wire/number.hpp"

#include <algorithm>

namespace limbledger::interpret {

using model::Side;

namespace {

[[nodiscard]] std::optional<Between> age_when_injured(const View& view, std::string& state) {
  std::optional<model::AgeInterval> age;
  const auto& day = view.examined_on();
  if (day && view.exam().injured_on && view.exam().injured_on->first_day() <= day->last_day()) {
    age = view.age_on_day(*view.exam().injured_on);
  }
  if (!age) {
    age = view.age_on_exam();  // also where the injury is recorded before the birth: one of the two is wrong, the person is here
  }
  state = age ? (age->low == age->high ? "known" : "known_in_part") : (view.age_lacks() == "day" ? "day_not_known" : "not_asked");
  return age ? std::optional(Between{age->low, age->high}) : std::nullopt;
}

// Of a complaint that is itself an injury the weeks since it began date it where nobody recorded its day: whole weeks, 0 within the first. A fall these
// days is of these days (our own rule).
[[nodiscard]] std::optional<Between> days_by_weeks(const View& view, std::string& state, std::vector<const model::Finding*>& findings) {
  constexpr std::int64_t week_days = 7;
  if (!complains_of_something_recent(view) || view.says_yes("history.fall_recent", Side::midline)) {
    return std::nullopt;
  }
  std::optional<Between> days;
  for (const model::Finding* finding : view.at("history.weeks_since_onset", Side::midline)) {
    const auto* weeks = std::get_if<model::CountValue>(&finding->value);
    if (weeks == nullptr || !settles(*finding)) {
      return std::nullopt;
    }
    const Between told{weeks->count.steps * week_days, weeks->count.steps * week_days + week_days - 1};
    days = days ? Between{std::min(days->low, told.low), std::max(days->high, told.high)} : told;
    findings.push_back(finding);
  }
  state = days ? "known_in_part" : state;
  return days;
}

[[nodiscard]] std::optional<Between> days_since_injury(const View& view, std::string& state, std::vector<const model::Finding*>& findings) {
  const auto& injured = view.exam().injured_on;
  state = "not_asked";
  if (!injured) {
    return days_by_weeks(view, state, findings);
  }
  const auto& day = view.examined_on();
  if (!day) {
    state = "day_not_known";
    return std::nullopt;
  }
  const Between days{day->first_day() - injured->last_day(), day->last_day() - injured->first_day()};
  if (days.high < 0) {
    state = "after_the_examination";
    return std::nullopt;
  }
  const bool exact = days.low == days.high;
  state = exact ? "known" : "known_in_part";
  return Between{std::max<std::int64_t>(days.low, 0), days.high};
}

[[nodiscard]] bool names_pregnancy(const model::Finding& finding) {
  const std::vector<model::ChoiceId> named = choices_of(finding);
  return std::any_of(named.begin(), named.end(), &is_pregnancy);
}

// The history says that there was none, and nothing else recorded speaks of one: nobody is asked after the day of an injury that was not.
[[nodiscard]] bool had_no_injury(const View& view, Side side, std::vector<const model::Finding*>& findings) {
  if (view.exam().injured_on || view.says_yes("history.fall_or_blow", side) || view.says_yes("history.fall_or_blow", Side::midline)) {
    return false;
  }
  std::vector<const model::Finding*> told;
  const Told none = tell(view, "history.mechanism", side, [](const model::Finding& finding) -> Said {
    const auto* choice = std::get_if<model::Choice>(&finding.value);
    if (choice == nullptr || choice->choice.text == "not_known") {
      return {std::nullopt, "unsure"};
    }
    return {static_cast<std::uint8_t>(choice->choice.text == "no_injury" ? 2 : 1), "known"};
  }, told);
  if (none.value != Tri::yes) {
    return false;
  }
  findings.insert(findings.end(), told.begin(), told.end());
  return true;
}

void hear_pregnancy(const View& view, Side side, std::string_view exclusions_item, InjuryHeard& heard) {
  const bool asked = !at_side_or_midline(view, "body.pregnancy", side).empty();
  heard.pregnant = tell(view, "body.pregnancy", side, &says_answer, heard.findings);
  const auto exclusions = at_side_or_midline(view, exclusions_item, side);
  const bool named = std::any_of(exclusions.begin(), exclusions.end(), [](const auto* f) { return settles(*f) && names_pregnancy(*f); });
  heard.pregnancy_recorded = asked || named;
  const bool male = view.person() && view.person()->sex == model::Sex::male;
  heard.could_be_pregnant = !male && (!heard.age || (heard.age->high >= 12 && heard.age->low <= 55));
  // From 12 to 55 years (our convention) not asked is never read as not pregnant.
  if (named) {
    heard.pregnant = {Tri::yes, "known"};
  } else if (!asked) {
    heard.pregnant.value = heard.could_be_pregnant ? Tri::undetermined : Tri::no;
  }
}

[[nodiscard]] bool of_a_limb(std::string_view item) {
  return item.starts_with("knee.") || item.starts_with("ankle.") || item.starts_with("foot.");
}

}  // namespace

bool is_pregnancy(const model::ChoiceId& choice) { return choice.text == "pregnancy"; }
bool is_none(const model::ChoiceId& choice) { return choice.text == "none_of_these" || choice.text == "none"; }

std::vector<model::ChoiceId> choices_of(const model::Finding& finding) {
  if (const auto* choices = std::get_if<model::Choices>(&finding.value)) {
    return choices->choices;
  }
  const auto* choice = std::get_if<model::Choice>(&finding.value);
  return choice != nullptr ? std::vector{choice->choice} : std::vector<model::ChoiceId>{};
}

Classes classes_of(Tri value) {
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

namespace {

[[nodiscard]] std::vector<const model::Finding*> known_at_side_or_midline(const View& view, const model::Item* known, std::string_view item, Side side) {
  if (known != nullptr && view.of(*known).empty()) {
    return {};  // most of what a rule asks after was not recorded
  }
  const auto at = [&](Side one) { return known != nullptr ? view.at(*known, one) : view.at(item, one); };
  const Findings here = at(side);
  const Findings midline = at(Side::midline);
  std::vector<const model::Finding*> found(here.begin(), here.end());
  found.insert(found.end(), midline.begin(), midline.end());
  return found;
}

}  // namespace

std::vector<const model::Finding*> at_side_or_midline(const View& view, std::string_view item, Side side) {
  return known_at_side_or_midline(view, view.edition().item(item), item, side);
}

Told tell(const View& view, std::string_view item, Side side, const Says& says, std::vector<const model::Finding*>& findings) {
  return tell(view, view.edition().item(item), item, side, says, findings);
}

Told tell(const View& view, const model::Item* known, std::string_view item, Side side, const Says& says, std::vector<const model::Finding*>& findings) {
  const std::vector<const model::Finding*> here = known_at_side_or_midline(view, known, item, side);
  const Heard heard = hear(here, no_or_yes, says);
  findings.insert(findings.end(), heard.findings.begin(), heard.findings.end());
  if (heard.as_tri() == Tri::no && view.bodies().not_reliable(item, side) != nullptr) {
    return {Tri::undetermined, "not_reliable"};
  }
  return {heard.as_tri(), std::string(heard.state)};
}

Said says_four_steps(const model::Finding& finding) {
  if (const auto* count = std::get_if<model::CountValue>(&finding.value)) {
    return {static_cast<std::uint8_t>(count->count.steps >= steps_needed ? 2 : 1), "known"};
  }
  return says_answer(finding);
}

bool says_no_walking(const model::Finding& finding) {
  const std::string& item = finding.item.text;
  const auto* count = std::get_if<model::CountValue>(&finding.value);
  const auto* answer = std::get_if<model::Answer>(&finding.value);
  const auto* choice = std::get_if<model::Choice>(&finding.value);
  const auto* not_done = std::get_if<model::NotDone>(&finding.value);
  const auto chosen = [&](std::string_view what) { return choice != nullptr && choice->choice.text == what; };
  if (item == "gait.steps_now") {
    return (count != nullptr && count->count.steps < steps_needed) || (answer != nullptr && answer->answer == model::AnswerWord::no) ||
           (not_done != nullptr && (not_done->reason == model::WhyNot::pain || not_done->reason == model::WhyNot::unable));
  }
  if (item == "history.walking_lost" || item == "history.refuses_weight") {
    return answer != nullptr && answer->answer == model::AnswerWord::yes;
  }
  return (item == "gait.pattern" && chosen("will_not_walk")) || (item == "history.weight_bearing" && chosen("bears_not")) || (item == "gait.aid" && chosen("aid_carried")) ||
         (item == "general.child_at_play" && chosen("play_will_not_move"));
}

bool history_not_reliable(const View& view) {
  const auto& spoke = view.exam().who_spoke;
  return spoke && spoke->reliable && *spoke->reliable == model::Reliable::no;
}

InjuryHeard hear_injury(const View& view, Side side, std::string_view exclusions_item) {
  InjuryHeard heard;
  heard.no_injury = had_no_injury(view, side, heard.findings);
  heard.age = age_when_injured(view, heard.age_state);
  heard.days = days_since_injury(view, heard.days_state, heard.findings);
  const Told now = tell(view, "gait.steps_now", side, &says_four_steps, heard.findings);
  heard.steps_state = now.state;
  if (now.value != Tri::undetermined) {
    heard.steps = now.value == Tri::yes ? Between{steps_needed, steps_needed} : Between{0, steps_needed - 1};
  } else if (const Clue walks_not = cannot_walk(Answers(view)); walks_not.is_yes()) {
    heard.walks_not = true;
    for (const model::Finding* finding : walks_not.because.written()) {
      heard.findings.push_back(finding);
    }
  }
  hear_pregnancy(view, side, exclusions_item, heard);
  return heard;
}

Settle settle_by(const View& view, std::string_view input, std::string_view item, Side side, const std::array<std::string_view, 3>& classes,
                 const std::array<std::optional<Outcome>, classes_max>& gives) {
  Settle settle;
  settle.input = {std::string(input)};
  if (!item.empty()) {
    settle.item = model::ItemId{std::string(item)};
    const model::Item* known = view.edition().item(*settle.item);
    const bool sided =
        known == nullptr ? of_a_limb(settle.item->text) : std::find(known->sides.begin(), known->sides.end(), side) != known->sides.end();
    settle.side = sided ? side : Side::midline;
  }
  for (std::size_t c = 0; c < classes.size(); ++c) {
    if (gives[c]) {
      // In a body whose "no" is not believed it settles nothing; fewer than four steps are such a "no".
      const bool is_no = classes[c] == "no" || classes[c] == "3 or fewer";
      const bool counts = !is_no || item.empty() || view.bodies().not_reliable(item, side) == nullptr;
      settle.answers.push_back({{std::string(classes[c])}, counts ? *gives[c] : Outcome::undetermined});
    }
  }
  return settle;
}

std::string number_line(const std::optional<Between>& value, std::int32_t per_unit) {
  if (!value) {
    return "not known";
  }
  const std::string low = wire::write_number(value->low, per_unit);
  return value->low == value->high
             ? low
             : (value->high >= 36000 ? "at least " + low
                                     : (value->low <= -36000 ? "at most " : low + " to ") + wire::write_number(value->high, per_unit));
}

std::string met_line(Tri value) { return value == Tri::undetermined ? "open" : (value == Tri::yes ? "met" : "not met"); }

}  // namespace limbledger::interpret
