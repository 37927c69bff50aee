// What several red flags ask: was there an injury, how long ago, fever, walking, a swollen or restricted knee, the hip's rotation.
#pragma once

#include "core/interpret/alerts/answers.hpp"

namespace limbledger::interpret {

inline constexpr ItemKey dorsal_pulse = "vessel.pulse_dorsalis_pedis", tibial_pulse = "vessel.pulse_posterior_tibial";

// A no beside which something of the danger, or of one of its kind, was found settles nothing: both are named, and nobody is asked again.
[[nodiscard]] Clue left_open(Clue no, const Clue& found);
// The complaint itself says so, while nothing recorded says otherwise.
[[nodiscard]] bool complains_of_something_recent(const View& view);
// An injury that can explain today's knee. A complaint alone is not one.
[[nodiscard]] Clue injured(const Answers& answers);
// A complaint that is itself of something recent, an injury told without its day, and weeks that are of an older trouble of the same part
// (our own rule): the weeks date the trouble, not the injury. They leave it no explanation of what is found (`injured`), and no no.
[[nodiscard]] bool hurt_anew(const Answers& answers);
// An injury as it was told, today's on an old trouble with it.
[[nodiscard]] Clue hurt_as_told(const Answers& answers);
// For what happens to no knee by itself (out of joint, deformed): the complaint of something recent is enough until an answer says no.
[[nodiscard]] Clue hurt_lately(const Answers& answers);
// The same beside a sign of it: a fall these days is one in any complaint, and where nobody told of an injury, or of its day beside an older
// trouble, that is asked once the sign is there.
// `a_wound`: of a sore that nobody was hurt for "no injury" is an answer.
[[nodiscard]] Clue hurt_beside(const Answers& answers, const Clue& sign, bool a_wound = false);
// No injury was told, undated and of nothing old.
[[nodiscard]] bool denied_beside(const Answers& answers);
// A part of the leg out of shape after an injury. Beside a foot without its pulses it waits for no day of it and for no complaint of something
// recent (red flags page, sections 3 and 5): only an injury denied speaks against it.
[[nodiscard]] Clue out_of_shape(const Answers& answers, model::Side side, const Clue& shape);
// An injury that is known to be over six weeks back, by its day or by the weeks of the trouble; and one that is not over half a year back: what
// never was put back, or still blocks, is seen by a surgeon. No is never said, and nothing is asked.
[[nodiscard]] Clue injury_long_ago(const Answers& answers);
[[nodiscard]] Clue injury_left_alone(const Answers& answers);
// It began within two weeks.
[[nodiscard]] Clue of_short_history(const Answers& answers);
[[nodiscard]] Clue over_two_weeks(const Answers& answers);
[[nodiscard]] Clue fever(const Answers& answers);
[[nodiscard]] Clue fever_of_child(const Answers& answers);  // measured, from half a degree higher on
// A painkiller of the last hours hides a fever: its no is none.
[[nodiscard]] Clue unless_drug_hides(const Answers& answers, Clue fever);
// No injury. It is asked after only where all the rest says yes: then it is what is missing.
[[nodiscard]] Clue no_injury_beside(const Answers& answers, const Clue& rest);
// One of these ways of walking, of whichever leg it was recorded.
[[nodiscard]] Clue walks_as(const Answers& answers, std::initializer_list<std::string_view> gaits);
// Took no steps before this trouble: a chair, a bed, not walking yet. Whoever is told to have walked before did. No is never said, and nothing
// is asked.
[[nodiscard]] Clue took_no_steps_before(const Answers& answers);
// Fewer than four steps now, or said to have stopped walking. Steps that were not taken before either are no loss: there the hip, the leg and
// what is refused speak, and a count of steps says neither yes nor no ("unexplained loss of walking": red flags page, section 12).
[[nodiscard]] Clue cannot_walk(const Answers& answers);
// Not a step.
[[nodiscard]] Clue cannot_stand(const Answers& answers);
[[nodiscard]] Clue limps(const Answers& answers);
// Of whom nobody knows the age, in a complaint that is no child's: a leg that does not carry, by itself, tells of no child and of no old person, and
// the age is asked (our own rule; red flags page, sections 0 and 12). Whether these grounds are nothing else.
[[nodiscard]] bool of_walking_alone(const Answers& answers, const Clue& clue);
// A child that holds this leg still: seen, or told.
[[nodiscard]] Clue leg_not_moved(const Answers& answers, model::Side side);
[[nodiscard]] Clue hot(const Answers& answers, model::Side side);
[[nodiscard]] Clue swollen(const Answers& answers, model::Side side);
[[nodiscard]] Clue tender(const Answers& answers, model::Side side);
[[nodiscard]] Clue bone_tender(const Answers& answers, model::Side side);
[[nodiscard]] Clue restricted(const Answers& answers, model::Side side);
[[nodiscard]] Clue severe_pain_on_passive(const Answers& answers, model::Side side);
// One of these was stopped by pain, or hurt badly. Nothing is asked.
[[nodiscard]] Clue hurts_badly_on(const Answers& answers, model::Side side, std::initializer_list<ItemKey> moved);
// The knee bends less than the other by more than the error of a difference.
[[nodiscard]] Clue flexion_lacking(const Answers& answers, model::Side side);
// Inward rotation of the hip: lost, or less than on the other side by more than the error of a difference.
[[nodiscard]] Clue hip_rotation_lost(const Answers& answers, model::Side side);
// The knee lacks extension against the other side by more than the error of a difference.
[[nodiscard]] Clue extension_lacking(const Answers& answers, model::Side side);
// Read short of straight, and less than the other side or with nothing of it to compare with; what was read. No error makes that a no.
[[nodiscard]] FindingTrail extension_short(const Answers& answers, model::Side side);
// With the hip bent, the leg opens less than the other by more than the error of a difference.
[[nodiscard]] Clue abduction_lacking(const Answers& answers, model::Side side);
// The ankle moves less than the other by more than the error of a difference, or pain or a block stopped it.
[[nodiscard]] Clue ankle_restricted(const Answers& answers, model::Side side);
// Bone below the knee and of the thigh that was found tender; no is never said, and nothing is asked.
[[nodiscard]] Clue bone_tender_at_ankle(const Answers& answers, model::Side side);
[[nodiscard]] Clue bone_tender_at_foot(const Answers& answers, model::Side side);
[[nodiscard]] Clue bone_tender_at_pelvis(const Answers& answers, model::Side side);
// Trochanter and heel, sore for other reasons in many: an infection with a fever alone.
[[nodiscard]] Clue bone_often_tender(const Answers& answers, model::Side side);
[[nodiscard]] Clue bone_tender_at_shaft(const Answers& answers, model::Side side);
// Nerves of this foot are ill, whatever the cause: feeling lost, leprosy, or diabetes for long.
[[nodiscard]] Clue numb_foot(const Answers& answers, model::Side side);
// Numb, and by no nerves that are known to be ill. No is never said for those that are.
[[nodiscard]] Clue newly_numb(const Answers& answers, model::Side side);
// Foot or ankle warm against the other.
[[nodiscard]] Clue foot_hot(const Answers& answers, model::Side side);
// Broken skin or dead tissue of the foot.
[[nodiscard]] Clue foot_wound(const Answers& answers, model::Side side);
// Two signs of infection at it, or heat and swelling.
[[nodiscard]] Clue wound_infected(const Answers& answers, model::Side side);
// Two signs or more of heat or cold, pulse, breaths and white cells: an infected wound is severe by them.
[[nodiscard]] Clue whole_body_answers(const Answers& answers);
// Any sign of the whole body was looked at, or a foot was found slow to refill.
[[nodiscard]] bool signs_recorded(const Answers& answers);
// One sign of shock or sepsis that stands alone: low pressure, a mind newly changed, fast breaths, little oxygen, a racing pulse, a
// child's slow one. Nothing is asked.
[[nodiscard]] Clue body_fails(const Answers& answers);
// Two of them, of a child one of pressure, mind, oxygen or a slow pulse: fear alone makes a child's heart and breath fast.
[[nodiscard]] Clue body_fails_twice(const Answers& answers);
// The same beside a part that is ill: of who is well and neither hot nor cold, one sign that fear, old lungs, training or sleep makes is none.
[[nodiscard]] Clue body_fails_by_illness(const Answers& answers);
// One sign so far out that it is a danger whatever else was answered. Nothing is asked.
[[nodiscard]] Clue fails_alone(const Answers& answers);
// Below 35.0, of a child under five below 36.0.
[[nodiscard]] Clue too_cold(const Answers& answers);
// A fever of the last days in who is well now and was measured neither hot nor cold.
[[nodiscard]] Clue told_fever_is_past(const Answers& answers);
// Signs none of which need be a danger alone: how they stand together. Nothing is asked, and no is never said.
struct SignsTogether {
  Clue clue;
  bool three = false;  // the same day
  bool now = false;
  bool pale = false;      // of a child that looks ill
  bool mottled = false;   // of a grown person who looks ill: mottled or slow to refill on both feet, or pale
  bool circulation = false;  // pulse and pressure both out, and how the person looks: hurt or not
  bool of_blood = false;  // three of them, of which one is pulse or pressure
  bool by_breath = false;  // not three without breath that is newly short: of lungs sooner than of blood
  bool seen_of_blood = false;  // the same, of which one is how the person looks; beside an injury alone
  bool of_blood_perhaps = false;  // one of them, beside an injury that bleeds
  bool breath_with_it = false;    // with it a breath that is raised, or how the person looks
  bool plain = false;     // pulse, breath and pressure, each a little out and nothing else: what pain and fear make of a small person
  bool holds = false;     // says to be well, and pain, cold or a faint makes how the skin, the pulse and the pressure are
  bool unmeasured = false;        // a look of who feels ill, or two, and nobody took pulse and pressure
  bool looks_like_shock = false;  // two looks with feeling ill or a changed mind, or three: after a crash nobody waits for numbers
  Clue again;             // not raised, and too far out to be left: what is looked at or measured next
};
[[nodiscard]] SignsTogether signs_together(const Answers& answers);
// What is looked at or measured where signs stand open: each settles it when it is out as well.
[[nodiscard]] AskTrail to_look_at(const Answers& answers, bool of_blood);
// Breath newly short: what nobody counted of it. No is never said.
[[nodiscard]] Clue breath_unmeasured(const Answers& answers);
// The body fails, or answers by two signs of which one is heat or cold: what is hot and red for another reason has fast breaths too.
[[nodiscard]] Clue hot_body_answers(const Answers& answers);
// Brought as an infant of whom nobody knows the age; and recorded of whom, what no infant has.
[[nodiscard]] bool brought_as_infant(const Answers& answers);
[[nodiscard]] bool no_infant(const Answers& answers);
// Under three months, or perhaps so: an age that allows it, or none told of an infant; and nothing shows it older.
[[nodiscard]] bool perhaps_newborn(const Answers& answers);
// As the age has them: a child's are no adult's.
[[nodiscard]] Clue pulse_raised(const Answers& answers);
// A pulse that speaks for a clot of the lung beside a swollen leg: over 100 of who is grown. Of children under 12 what is a danger at their
// age, and in pregnancy, which itself quickens it, what is high in anybody (NICE_NG51); the page's figure is for neither (NICE_NG158: from 18).
[[nodiscard]] Clue pulse_of_clot(const Answers& answers);
[[nodiscard]] Clue breaths_raised(const Answers& answers);
[[nodiscard]] Clue pressure_low(const Answers& answers);
// The pressure that is a danger by itself. In pregnancy 90 is what many have (our own rule).
[[nodiscard]] Clue pressure_fails(const Answers& answers);
// Breaths that are a danger at this age, or little oxygen in the blood.
[[nodiscard]] Clue breathes_badly(const Answers& answers);
// Exactly, not rounded: ankle pressure below 0.90 of the higher arm pressure.
[[nodiscard]] Tri ankle_pressure_low(const View& view, model::Side side);
// grade_1, grade_2a, grade_2b, grade_3 of a limb without blood; empty where what was recorded settles none.
[[nodiscard]] std::string_view ischaemia_grade(const Answers& answers, model::Side side);
// The region of the complaint, or none: hip, knee, leg, ankle, foot, pelvis.
[[nodiscard]] std::string_view part_complained_of(const Answers& answers);
// What is asked, without the items of the knee: of another part its own are asked after.
[[nodiscard]] AskTrail without_the_knee(const Answers& answers, const AskTrail& asked);
// Nobody tells of pain here: not awake, not reliable, perhaps too young to say what exceeds a hurt, told by others, or a leg without feeling. That none is told
// of is then no answer (BOAST_ACS; rule acs/boast2014). No is never said, and nothing is asked.
[[nodiscard]] Clue cannot_tell_of_pain(const Answers& answers, model::Side side);
// The same of the person alone, not of the leg: awake, reliable, old enough, of clear memory, and speaking for themselves.
[[nodiscard]] Clue cannot_speak_for_pain(const Answers& answers);
// Why that is, where no finding says so by itself: who spoke, who interpreted, answers of which nobody is sure, the age.
enum class UntoldBy : std::uint8_t { nothing, speaker, interpreter, answers, age };
[[nodiscard]] UntoldBy pain_untold_by(const Answers& answers);
// Nor of what is numb between the legs, of bladder, bowel and sex: the same, and who has no feeling or power in either leg for long.
[[nodiscard]] Clue cannot_tell_of_bladder(const Answers& answers);
// Pain told to be severe, sudden or by its figure, wherever it is (what counts as severe is our own rule).
[[nodiscard]] Clue severe_pain_told(const Answers& answers);
// Pain at rest in this foot: told of it, or severe pain at rest of whom this foot or ankle is examined for (our own rule).
[[nodiscard]] Clue foot_hurts_at_rest(const Answers& answers, model::Side side);
// Dead tissue of this foot: gangrene or a black toe. No is the choice that says none.
[[nodiscard]] Clue dead_tissue(const Answers& answers, model::Side side);
// A pulse of the foot is lost and the other is not full: not felt, weak, or nobody felt for it. No is never said.
[[nodiscard]] Clue pulses_lost(const Answers& answers, model::Side side);
// Both pulses of the foot poor, and one of them gone. One that is full, or that nobody felt for, is another matter.
[[nodiscard]] Clue one_gone_one_poor(const Answers& answers, model::Side side);
// The pulse of the groin is lost, or of a stump the one behind the knee: nothing reaches what lies below (our own rule). Behind a knee with
// its foot a pulse is often not found. No is never said, and nothing is asked.
[[nodiscard]] Clue pulse_above_lost(const Answers& answers, model::Side side);
// What a film shows of this side. One that was recorded of no side is of the side complained of; where none is, of nobody knows which.
struct FilmShows {
  Clue clue;
  bool of_no_side = false;
};
[[nodiscard]] FilmShows film_shows(const Answers& answers, model::Side side, std::initializer_list<std::string_view> choices);
// A break that a dated injury of more than six weeks ago made is known.
[[nodiscard]] bool hurt_long_ago(const Answers& answers);
// A day of injury that is known and more than two weeks back.
[[nodiscard]] bool injured_weeks_ago(const Answers& answers);
// The joint is gone with the limb, or the foot alone.
[[nodiscard]] Clue hip_taken_off(const Answers& answers, model::Side side);
[[nodiscard]] Clue knee_taken_off(const Answers& answers, model::Side side);
// Recorded as gone from the ankle up, or higher.
[[nodiscard]] Clue foot_taken_off(const Answers& answers, model::Side side);
// Ankle, foot or shin newly out of shape.
[[nodiscard]] Clue foot_deformed(const Answers& answers, model::Side side);
// A pulse of the foot that cannot be felt: one, or both.
[[nodiscard]] Clue pulse_absent(const Answers& answers, const ItemKey& item, model::Side side);

}  // namespace limbledger::interpret
