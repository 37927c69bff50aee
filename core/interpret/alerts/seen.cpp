// What is seen or told after an injury and needs no other sign: blood that runs, a break on a film, a leg newly bent, a pelvis out of
// shape. They are heard where they were answered and asked after nowhere, so nothing of them is said where nobody saw one. Their class is
// our convention where the line beside it names no source; none is among what interrupts (clinical safety, C2).
#include "core/interpret/alerts/circumstances.hpp"
#include "core/interpret/alerts/red_flag.hpp"

#include <array>

namespace limbledger::interpret {

using model::Side;

namespace {

// Only what was found is a line of its own.
[[nodiscard]] Raised only_where_found(Raised raised) {
  raised.applies = tri(raised.clue.is_yes());
  raised.clue.ask.clear();
  return raised;
}

struct SeenBreak {
  std::string_view choice;
  std::string_view concern;
};
constexpr std::array<SeenBreak, 4> seen_breaks{{{"shaft_fracture_seen", "concern.shaft_fracture"},
                                                {"knee_fracture_seen", "concern.knee_fracture"},
                                                {"ankle_fracture_seen", "concern.ankle_fracture"},
                                                {"foot_fracture_seen", "concern.foot_fracture"}}};

// There the break is known and treated.
[[nodiscard]] bool comes_after_treatment(const Answers& answers) {
  const std::string& why = answers.view().exam().complaint.text;
  return why == "after_plaster" || why == "after_operation" || why == "after_amputation" || why == "review";
}

}  // namespace

// Hard signs of a torn vessel (MILLS2004); the first of all questions, stopped by pressure (BOAST_OPEN).
Raised bleeding_now(const Answers& answers, Side side) {
  const Clue runs = answers.yes("vessel.bleeding_active", side);
  Raised raised;
  raised.clue = led_by(runs, {answers.yes("vessel.haematoma_expanding", side)});
  raised.urgency = AlertClass::now;
  raised.what = runs.is_yes() ? "raised" : "inside";
  return only_where_found(raised);
}

// Bent, twisted or stepped since an injury, with whole skin too; or a break that a film shows.
Raised broken_bone(const Answers& answers, Side side) {
  const Clue bent = every({circumstance(hurt_lately(answers)), answers.yes("leg.look_deformity", side)});
  Raised raised;
  Clue seen;
  for (const SeenBreak& one : seen_breaks) {
    const Clue here = answers.chosen("history.film_result", side, {one.choice});
    if (here.is_yes() && !comes_after_treatment(answers)) {
      seen = seen.is_yes() ? seen : here;
      raised.opens.push_back(one.concern);
    }
  }
  raised.clue = led_by(bent, {seen});
  raised.what = seen.is_yes() ? "seen" : "raised";
  if (bent.is_yes() && raised.opens.empty()) {
    raised.opens.push_back("concern.shaft_fracture");
  }
  return only_where_found(raised);
}

// Looked at and asked after only, never sprung (LEE2007, SCOTT2013); a film alone leaves time.
Raised broken_pelvis(const Answers& answers, Side) {
  const Clue hurt = circumstance(hurt_lately(answers));
  const Clue looks = every({hurt, led_by(answers.yes("pelvis.injury_deformity"), {answers.yes("pelvis.perineum_bruise"), answers.yes("pelvis.blood_at_meatus")})});
  const auto film = [&](Side side) { return answers.chosen("history.film_result", side, {"pelvic_fracture_seen"}); };
  const Clue seen = comes_after_treatment(answers) ? Clue{} : led_by(film(Side::midline), {film(Side::left), film(Side::right)});
  Raised raised;
  raised.clue = led_by(looks, {seen});
  raised.urgency = looks.is_yes() ? AlertClass::now : AlertClass::same_day;
  raised.what = looks.is_yes() ? "raised" : "seen";
  return only_where_found(raised);
}

}  // namespace limbledger::interpret
