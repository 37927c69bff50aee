// Who can tell of what they feel, and whose word is taken for a no.
#include "core/interpret/alerts/circumstances.hpp"
#include "core/interpret/alerts/limits.hpp"

#include <algorithm>

namespace limbledger::interpret {

using model::Side;

namespace {

// Too young, or perhaps so. Of somebody whose age is not known, or may be that of a grown person, an exam of a small child alone says so: every adult without a day of
// birth would else be unable to answer.
bool perhaps_too_young(const Answers& answers) {
  const Tri small = answers.aged(0, tells_of_pain_from - 1);
  if (small != Tri::undetermined || answers.child() == Tri::yes) {
    return small != Tri::no;
  }
  const View& view = answers.view();
  const std::string& why = view.exam().complaint.text;
  const auto told = [&](std::string_view item) {
    return !view.at(item, Side::left).empty() || !view.at(item, Side::right).empty() || !view.at(item, Side::midline).empty();
  };
  return why == "infant_hip" || why == "limping_child" || why == "child_alignment" || told("history.moves_about") || told("history.child_not_moving_leg") ||
         told("history.walking_age_months") || told("hip.ortolani") || told("hip.barlow") || told("hip.leg_not_moved");
}

}  // namespace

// Only an answer that is known to be reliable is a no: unsure, and nobody able to judge it, are not.
UntoldBy pain_untold_by(const Answers& answers) {
  const View& view = answers.view();
  const auto& spoke = view.exam().who_spoke;
  const bool of_others = spoke && !spoke->who.text.starts_with("self");
  if (spoke && (spoke->reliable ? *spoke->reliable != model::Reliable::yes : of_others)) {
    return UntoldBy::speaker;  // said by another, and nobody said how reliably
  }
  const auto& interpreter = view.exam().interpreter;
  if (interpreter && interpreter->kind == model::InterpreterKind::child) {
    return UntoldBy::interpreter;
  }
  const Findings all = view.at("general.answers_reliable", Side::midline);
  const bool in_doubt = std::any_of(all.begin(), all.end(), [](const model::Finding* finding) {
    const auto* answer = std::get_if<model::Answer>(&finding->value);
    const auto* undone = std::get_if<model::NotDone>(&finding->value);
    return (answer != nullptr && answer->answer != model::AnswerWord::yes) || (undone != nullptr && undone->reason == model::WhyNot::unable);
  });
  return in_doubt ? UntoldBy::answers : (perhaps_too_young(answers) ? UntoldBy::age : UntoldBy::nothing);
}

Clue cannot_speak_for_pain(const Answers& answers) {
  return answers.once(Known::unable_to_speak_for_pain, Side::midline, [&]() -> Clue {
    return led_by(Clue{}, {answers.no("general.answers_reliable"),
                           answers.chosen("general.consciousness", Side::midline, {"mind_new_confusion", "mind_voice", "mind_pain", "mind_none"}),
                           answers.chosen("history.knee_rule_exclusions", Side::midline, {"altered_consciousness"}), answers.yes("history.memory_poor"),
                           fact(pain_untold_by(answers) != UntoldBy::nothing)});
  });
}

Clue cannot_tell_of_bladder(const Answers& answers) {
  const auto without = [&](Side side) { return led_by(answers.yes("body.feeling_lost", side), {answers.yes("body.paralysis", side)}); };
  return led_by(Clue{}, {cannot_speak_for_pain(answers), every({without(Side::left), without(Side::right)})});
}

Clue cannot_tell_of_pain(const Answers& answers, Side side) {
  return answers.once(Known::untold_pain, side, [&]() -> Clue {
    return led_by(Clue{}, {cannot_speak_for_pain(answers), answers.yes("body.feeling_lost", side), answers.yes("body.paralysis", side),
                           answers.chosen("nerve.sensation_loss_level", side, {"loss_whole_foot_or_more"})});
  });
}

}  // namespace limbledger::interpret
