// Bone that gives way under load, without one injury: at the hip the same day and no hop, elsewhere within two weeks. Source: red flags
// page, section 9; clinical safety, C13.
#include "core/interpret/alerts/circumstances.hpp"
#include "core/interpret/alerts/limits.hpp"
#include "core/interpret/alerts/red_flag.hpp"

namespace limbledger::interpret {

using model::Side;

// Groin or thigh that hurts under load, with more load, too little food for it, or years of bone medicine. What is asked in private
// counts and is not asked after here.
Raised hip_bone_stress(const Answers& answers, Side side) {
  const Clue under_load = answers.yes("history.exertional_groin_pain", side);
  const Clue site = answers.chosen("history.pain_site", side, {"site_groin", "site_thigh_front", "site_thigh_outer"});
  const Clue medicine = answers.yes("history.bone_drugs");
  const FilmShows film = film_shows(answers, side, {"femoral_neck_stress_seen"});
  const Clue& seen = film.clue;
  const Clue reason = led_by(either({answers.yes("history.load_changed"), medicine}),
                             {unasked(answers.yes("history.low_energy_intake")), answers.positive("hip.fulcrum", side), answers.positive("hip.hop", side)});
  Raised raised;
  raised.clue = led_by(every({under_load, reason}), {every({medicine, site}), seen});
  if (raised.clue.value == Tri::undetermined && !under_load.is_yes()) {
    raised.clue.because.clear();  // more load alone points to no bone
  }
  raised.what = seen.is_yes() ? (film.of_no_side ? "seen_no_side" : "seen") : (medicine.is_yes() ? "medicine" : "raised");
  raised.of_no_side = film.of_no_side && seen.is_yes();
  raised.clue.because.add(seen.is_yes() ? seen.because : FindingTrail{});
  if (hip_taken_off(answers, side).is_yes() && !seen.is_yes()) {
    raised.applies = Tri::no;
  }
  return raised;
}

// One sharp spot of bone without an injury, after more load: a film or another look within two weeks. With a fever it is another danger.
Raised bone_stress(const Answers& answers, Side side) {
  const std::string& complaint = answers.view().exam().complaint.text;
  const Clue heel = answers.positive("foot.calcaneal_squeeze", side);
  // Asked after where the page of the complaint names it; elsewhere nobody is asked after each bone.
  const Clue lead = complaint == "heel_pain" ? heel
                    : complaint == "forefoot_pain"
                        ? either({answers.yes("foot.metatarsal_second_tender", side), answers.yes("foot.metatarsal_third_tender", side), answers.yes("foot.metatarsal_fourth_tender", side)})
                        : Clue{};
  const Clue spot = led_by(lead, {answers.any_yes({"leg.tibial_spot_tender", "leg.fibular_shaft_tender", "foot.navicular_dorsum_tender",
                                            "foot.fifth_metatarsal_junction_tender", "foot.metatarsal_second_tender", "foot.metatarsal_third_tender",
                                            "foot.metatarsal_fourth_tender"},
                                           side),
                           heel, answers.positive("foot.bone_fork_pain", side)});
  const Clue load = led_by(answers.yes("history.load_changed"), {answers.chosen("history.onset", Side::midline, {"onset_after_new_load"})});
  const Clue told = answers.yes("history.fever");
  const Clue warm = answers.warm_at_least(fever_tenths);
  const Clue hot = led_by(told.value == Tri::undetermined && warm.is_no() ? warm : told, {warm});
  Raised raised;
  raised.clue = every({spot, bare_no(load), circumstance(negate(injured(answers))), bare_no(negate(hot))});
  raised.urgency = AlertClass::two_weeks;
  if (raised.clue.value == Tri::undetermined && !spot.is_yes()) {
    raised.clue.because.clear();
  }
  return raised;
}

}  // namespace limbledger::interpret
