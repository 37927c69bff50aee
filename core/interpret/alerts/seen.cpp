// What is seen or told after an injury and needs no other sign: blood that runs, a break on a film, a leg newly bent, a pelvis out of
// shape. They are heard where they were answered and asked after nowhere, so nothing of them is said where nobody saw one. Their class is
// our convention where the line beside it names no source; none is among what interrupts (clinical safety, C2).
#include "core/interpret/alerts/circumstances.hpp"
#include "core/interpret/alerts/limits.hpp"
#include "core/interpret/alerts/red_flag.hpp"

#include <algorithm>
#include <array>
#include <utility>

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

// There the break is known, and treated or old.
[[nodiscard]] bool comes_after_treatment(const Answers& answers) {
  const std::string& why = answers.view().exam().complaint.text;
  if (hurt_long_ago(answers)) {
    return true;  // the film of an injury whose day is known and long past
  }
  return why == "after_plaster" || why == "after_operation" || why == "after_amputation" || why == "review";
}

// Bone of ankle, foot or heel that is tender after an injury, and not a step is possible: no rule of a film speaks for heel and toes, and one that
// is negative by its letter is contradicted there (clinical safety, C7; the class is our own). Of a heel four steps count, as in the rules of its
// neighbours; of who took none before steps are no measure, and tender bone is enough (our own rule). That of a heel the other heel and the back are looked at
// too is from memory, and from no page. A film that shows no break of it ends that.
struct FootBreak {
  Clue clue;
  bool heel = false;
};
[[nodiscard]] FootBreak foot_carries_not(const Answers& answers, Side side) {
  FootBreak out;
  if (!cannot_walk(answers).is_yes() && !took_no_steps_before(answers).is_yes()) {
    return out;
  }
  const Clue heel = answers.positive("foot.calcaneal_squeeze", side);
  const Clue carries_not = led_by(heel.is_yes() ? cannot_walk(answers) : cannot_stand(answers), {took_no_steps_before(answers)});
  if (!carries_not.is_yes()) {
    return out;
  }
  const Clue ankle = bone_tender_at_ankle(answers, side);
  const Clue foot = led_by(bone_tender_at_foot(answers, side), {answers.any_yes({"foot.lisfranc_line_tender"}, side)});
  if (!(ankle.is_yes() || foot.is_yes() || heel.is_yes()) || comes_after_treatment(answers) || foot_taken_off(answers, side).is_yes()) {
    return out;
  }
  const bool by_film = film_shows(answers, side, {"ankle_fracture_not_seen", "foot_fracture_not_seen"}).clue.is_yes();
  out.clue = by_film ? Clue{} : every({circumstance(hurt_lately(answers)), led_by(heel, {foot, ankle}), carries_not});
  out.heel = heel.is_yes();
  return out;
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

// Bent, twisted or stepped since an injury, with whole skin too; or a break that a film shows; or bone of thigh or shin that is tender in a
// leg that does not carry: no rule of a film speaks for the shaft (page, section 1: what suspects a break; the class is our own). Of a limb that was taken off the part that
// is left is out of shape, wherever on it that was recorded.
Raised broken_bone(const Answers& answers, Side side) {
  const Clue stump = led_by(foot_taken_off(answers, side).is_yes() ? answers.any_yes({"ankle.look_deformity", "foot.look_deformity"}, side) : Clue{},
                            {knee_taken_off(answers, side).is_yes() ? answers.any_yes({"knee.look_deformity"}, side) : Clue{}});
  const Clue out = led_by(answers.yes("leg.look_deformity", side), {stump});
  const Clue bent = out.is_yes() ? out_of_shape(answers, side, out) : Clue{};
  Raised raised;
  bool of_no_side = false;
  Clue seen;
  for (const SeenBreak& one : seen_breaks) {
    const FilmShows film = film_shows(answers, side, {one.choice});
    const Clue& here = film.clue;
    if (here.is_yes() && !comes_after_treatment(answers)) {
      seen = seen.is_yes() ? seen : here;
      of_no_side = of_no_side || film.of_no_side;
      raised.opens.push_back(one.concern);
    }
  }
  const Clue shaft = bone_tender_at_shaft(answers, side);
  const Clue carries_not = shaft.is_yes() ? every({circumstance(hurt_lately(answers)), shaft, led_by(cannot_walk(answers), {took_no_steps_before(answers)})}) : Clue{};
  // Who took no steps before breaks a bone in bed, without an injury that anybody saw: there a new bend is enough, and where walking went with it
  // (our own rule).
  const auto of_old_trouble = [&] { return answers.count_at_least("history.weeks_since_onset", lately_weeks + 1).is_yes(); };
  const Clue by_itself = out.is_yes() && !bent.is_yes() && !of_old_trouble() ? every({out, led_by(took_no_steps_before(answers), {answers.yes("history.walking_lost")})}) : Clue{};
  const bool known = bent.is_yes() || seen.is_yes() || carries_not.is_yes() || by_itself.is_yes();
  const FootBreak below = known ? FootBreak{} : foot_carries_not(answers, side);
  raised.clue = led_by(bent, {seen, carries_not, by_itself.is_yes() ? by_itself : Clue{}, below.clue});
  raised.clue.because.add(seen.is_yes() ? seen.because : FindingTrail{});
  const Clue gone = bent.is_yes() && !seen.is_yes() ? foot_taken_off(answers, side) : Clue{};
  raised.clue.because.add(gone.is_yes() ? gone.because : FindingTrail{});
  if (below.clue.is_yes()) {
    raised.what = below.heel ? "heel_carries_not" : "foot_carries_not";
    for (const auto& [here, concern] : {std::pair(bone_tender_at_ankle(answers, side).is_yes(), "concern.ankle_fracture"), std::pair(true, "concern.foot_fracture")}) {
      if (here) {
        raised.opens.push_back(concern);
      }
    }
    return only_where_found(raised);
  }
  const bool alone = by_itself.is_yes() && !carries_not.is_yes();
  raised.what = seen.is_yes() ? "seen" : alone ? "without_steps" : (gone.is_yes() ? "stump" : (bent.is_yes() || !carries_not.is_yes() ? "raised" : "carries_not"));
  if (of_no_side && !bent.is_yes() && !carries_not.is_yes()) {
    raised.of_no_side = true;
    raised.what = "seen_no_side";
  }
  const bool shaft_open = std::find(raised.opens.begin(), raised.opens.end(), "concern.shaft_fracture") != raised.opens.end();
  if (((bent.is_yes() || by_itself.is_yes()) && raised.opens.empty()) || (carries_not.is_yes() && !shaft_open)) {
    raised.opens.push_back("concern.shaft_fracture");
  }
  return only_where_found(raised);
}

// Looked at and asked after only, never sprung (LEE2007, SCOTT2013); a film alone leaves time. Pain or a tender ring after an injury bleeds
// within where there are signs of shock; after a crash a tender ring, or a painful one that is not stood on, is broken until a film shows
// otherwise (LEE2007: by how it happened and by pain; the classes are our own).
Raised broken_pelvis(const Answers& answers, Side) {
  const Clue hurt = circumstance(hurt_lately(answers));
  const Clue signs = led_by(answers.yes("pelvis.injury_deformity"), {answers.yes("pelvis.perineum_bruise"), answers.yes("pelvis.blood_at_meatus")});
  // Out of shape is asked of an injury, so only an injury denied or old speaks against it; beside signs of shock nothing does (our own rule).
  const Clue shock = signs.is_yes() ? led_by(body_fails(answers), {unasked(answers.count_at_least("general.pulse_rate", pulse_clot_over + 1))}) : Clue{};
  const Clue shape = every({fact(not_(tri(hurt.is_no()))), answers.yes("pelvis.injury_deformity")});
  const Clue looks = led_by(every({hurt, signs}), {shape, every({signs, shock})});
  const auto film = [&](Side side) { return answers.chosen("history.film_result", side, {"pelvic_fracture_seen"}); };
  const Clue seen = comes_after_treatment(answers) ? Clue{} : led_by(film(Side::midline), {film(Side::left), film(Side::right)});
  const Clue ring = answers.any_yes({"pelvis.ring_tender_light"}, Side::midline);
  const Clue pain = answers.any_yes({"pelvis.injury_pain"}, Side::midline);
  const Clue sore = led_by(ring, {pain});
  const Clue bleeds = sore.is_yes() ? every({hurt, sore, body_fails(answers)}) : Clue{};
  const Clue crash = sore.is_yes() ? answers.chosen("history.mechanism", Side::midline, {"vehicle"}) : Clue{};
  const Clue tender = crash.is_yes() ? every({hurt, crash, led_by(ring, {every({pain, led_by(cannot_stand(answers), {took_no_steps_before(answers)})})})}) : Clue{};
  Raised raised;
  raised.clue = led_by(looks, {bleeds, tender, seen});
  const bool at_once = looks.is_yes() || bleeds.is_yes();
  raised.urgency = at_once ? AlertClass::now : AlertClass::same_day;
  raised.what = looks.is_yes() ? "raised" : (bleeds.is_yes() ? "shock" : (seen.is_yes() ? "seen" : "tender"));
  return only_where_found(raised);
}

}  // namespace limbledger::interpret
