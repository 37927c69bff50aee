// A child that is ill as a whole: a fever with a rash, an infant that nobody measured, and one of which nobody knows whether it is as young. Source:
// NICE_NG51 (under three months 38.0 or more is high risk; cold feet and sore legs are lesser signs of a child: from memory); red flags page,
// sections 0 and 8. How many signs make which class is our own rule.
#include "core/interpret/alerts/circumstances.hpp"
#include "core/interpret/alerts/limits.hpp"
#include "core/interpret/alerts/red_flag.hpp"

#include <string>
#include <string_view>
#include <utility>

namespace limbledger::interpret {

using model::Side;

namespace {

// A fever with a rash, told or seen, and two of: both feet cold, both legs hurt, looks ill. Rash and fever alone are what children have every winter.
[[nodiscard]] Clue rash_with_fever(const Answers& answers) {
  const Clue rash = led_by(answers.yes("history.rash"), {answers.any_yes({"skin.rash"}, Side::left), answers.any_yes({"skin.rash"}, Side::right)});
  const Clue heat = fever(answers);
  if (answers.child() != Tri::yes || !rash.is_yes() || !heat.is_yes() || told_fever_is_past(answers).is_yes()) {
    return {};
  }
  const Clue cold = every({answers.yes("vessel.foot_cold", Side::left), answers.yes("vessel.foot_cold", Side::right)});
  const Clue sore = answers.yes("history.leg_pain_both");
  const Clue unwell = answers.yes("history.unwell");
  return every({rash, heat, either({every({unwell, cold}), every({unwell, sore}), every({cold, sore})})});
}

// An infant that may be under three months, and is unwell: whether it is hot is what decides, and nobody measured it.
[[nodiscard]] Clue unwell_and_not_measured(const Answers& answers) {
  const Clue unwell = answers.yes("history.unwell");
  const Clue heat = answers.warm_at_least(fever_tenths);
  return perhaps_newborn(answers) && unwell.is_yes() && heat.value == Tri::undetermined ? every({unwell, heat}) : Clue{};
}

// Brought as a child, hot or cold, of no known age, and nobody told how it moves about, or as an infant of whom something is recorded that none has:
// it may be under three months.
[[nodiscard]] Clue ill_of_no_known_age(const Answers& answers) {
  constexpr std::int64_t highest_age = 200;
  const std::string& why = answers.view().exam().complaint.text;
  const bool brought = why == "limping_child" || why == "child_alignment" || (brought_as_infant(answers) && no_infant(answers));
  const bool walks = answers.count_at_least("gait.steps_now", 1).is_yes() || answers.yes("gait.limp").is_yes() ||
                     answers.count_at_least("history.limp_days", 1).is_yes() ||
                     answers.chosen("history.walks_usually", Side::midline, {"walks_alone", "walks_indoors", "walks_with_aid", "walks_with_person"}).is_yes();
  if (walks || answers.aged(0, highest_age) == Tri::yes || !brought) {
    return {};
  }
  const Clue ill = led_by(Clue{}, {fever(answers), answers.colder_than(temperature_low_tenths)});
  return ill.is_yes() ? every({ill, answers.chosen("history.moves_about", Side::midline, {"moves_not_yet", "moves_rolls"})}) : Clue{};
}

}  // namespace

Raised acutely_ill_at_any_age(const Answers& answers, Side side) {
  Raised raised = acutely_ill(answers, side);
  const bool applied = raised.applies != Tri::no;
  if (applied && raised.clue.is_yes() && raised.urgency == AlertClass::now) {
    return raised;
  }
  const Clue rash = rash_with_fever(answers);
  if (rash.is_yes()) {
    raised.applies = Tri::yes;
    raised.clue = rash;
    raised.urgency = AlertClass::now;
    raised.interrupts = true;
    raised.what = "rash";
    return raised;
  }
  if (applied && raised.clue.is_yes()) {
    return raised;
  }
  const Clue infant = unwell_and_not_measured(answers);
  const Clue age = ill_of_no_known_age(answers);
  for (const auto& [open, asks] : {std::pair<const Clue*, std::string_view>(&infant, "newborn"), {&age, no_infant(answers) ? "which_age" : "how_old"}, {&rash, ""}}) {
    if (open->value == Tri::undetermined && open->warm()) {
      raised.clue = applied ? left_open(raised.clue, *open) : Clue{};
      raised.clue.because.add(open->because);
      raised.clue.open.add(open->open);
      raised.clue.ask.add(open->ask);
      raised.applies = Tri::yes;
      raised.asks = asks;
      raised.ask_first = true;
      return raised;
    }
  }
  return raised;
}

}  // namespace limbledger::interpret
