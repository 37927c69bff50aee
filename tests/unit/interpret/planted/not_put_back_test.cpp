// Planted cases of a leg out of place whose injury is old, undated, or told under another complaint, each beside its quiet neighbour. Sources: the
// red flags page, sections 2 and 3 (no limit of time stands there), 5, 18 and 20, and clinical safety C2; that an injury of over six weeks is the
// same day or a referral, and that it ends at half a year, is our own rule. People and findings are invented; the day is 2026-11-24.
#include "tests/unit/interpret/alerts/story.hpp"

using namespace limbledger;
using namespace limbledger::interpret_test;

namespace {

Bench dated_visit(const std::string& complaint, int born, const std::string& story, unsigned month, unsigned on) {
  Bench bench = visit(complaint, born, story);
  bench.exam.injured_on = day(2026, static_cast<std::uint8_t>(month), static_cast<std::uint8_t>(on));
  return bench;
}
std::string told_line(const std::string& complaint, const std::string& story, const std::string& name) { return line_of(visit(complaint, 1971, story), name); }
bool complains_of_today(const std::string& complaint) { return complaint == "acute_knee" || complaint == "ankle_injury"; }
bool is_grounded_on(const Bench& bench, const std::string& name, const std::string& item) {
  const auto found = alert(bench, name);
  return found && std::any_of(found->because.begin(), found->because.end(), [&](const auto& id) {
           return std::any_of(bench.exam.findings->begin(), bench.exam.findings->end(), [&](const auto& one) { return one.finding == id && one.item.text == item; });
         });
}

}  // namespace

TEST_CASE("planted: a part out of shape beside lost pulses is now, whatever the weeks, the day or the complaint; full pulses and a denied injury are not") {
  const std::string none = "vessel.pulse_dorsalis_pedis left 0; vessel.pulse_posterior_tibial left 0; ";
  const std::string old = "history.mechanism fall; history.weeks_since_onset 150; ";
  const std::string knee = "knee.look_deformity left yes; ";
  for (const char* why : {"chronic_knee", "free", "whole_limb", "hip_groin", "acute_knee"}) {
    CAPTURE(why);
    const Bench out = visit(why, 1971, old + knee + none);
    CHECK(line_of(out, "knee_disloc_vasc") == "no_pulse");
    CHECK(is_now(out, "knee_disloc_vasc"));
    CHECK(is_grounded_on(out, "knee_disloc_vasc", "knee.look_deformity"));
    CHECK(is_grounded_on(out, "knee_disloc_vasc", "vessel.pulse_posterior_tibial"));
  }
  // Of a day eight weeks back; told without weeks; one pulse gone and the other weak; told not to be of these days.
  CHECK(is_now(dated_visit("acute_knee", 1971, "history.mechanism fall; " + knee + none, 9, 25), "knee_disloc_vasc"));
  CHECK(is_now(visit("chronic_knee", 1971, knee + none), "knee_disloc_vasc"));
  CHECK(is_now(visit("chronic_knee", 1971, old + knee + "vessel.pulse_dorsalis_pedis left 0; vessel.pulse_posterior_tibial left 1"), "knee_disloc_vasc"));
  CHECK(is_now(visit("chronic_knee", 1971, old + knee + none + "history.fall_recent no"), "knee_disloc_vasc"));
  // The foot, the ankle, and thigh or shin, of which the foot speaks.
  for (const char* part : {"ankle.look_deformity left yes; ", "foot.look_deformity left yes; "}) {
    CAPTURE(part);
    CHECK(is_now(visit("calf_pain", 1971, old + part + none), "ankle_disloc"));
    CHECK(is_now(visit("forefoot_pain", 1971, old + part + none), "ali"));
  }
  CHECK(is_now(visit("calf_pain", 1971, old + "leg.look_deformity left yes; " + none), "ali"));
  CHECK(line_of(visit("chronic_knee", 1971, old + "leg.look_deformity left yes; " + none), "fracture") == "raised");
  CHECK(is_now(visit("ankle_injury", 1971, "history.mechanism twist; history.weeks_since_onset 60; ankle.look_deformity left yes; ankle.skin_tented left yes"), "ankle_disloc"));
  // A worn knee out of line beside ill arteries, which nobody hurt; full pulses; pulses that nobody felt for are asked.
  CHECK(told_line("chronic_knee", "history.mechanism no_injury; history.weeks_since_onset 150; " + knee + none, "knee_disloc_vasc") == "none");
  const Bench full = visit("chronic_knee", 1971, old + knee + "vessel.pulse_dorsalis_pedis left 2; vessel.pulse_posterior_tibial left 2; gait.steps_now 4");
  CHECK(full.assess().alerts.empty());
  CHECK(asks(full, "knee_disloc_vasc", "history.fall_recent"));
  CHECK(asks(visit("forefoot_pain", 1971, old + "foot.look_deformity left yes; vessel.pulse_dorsalis_pedis left 0"), "ankle_disloc", "history.fall_recent"));
}

TEST_CASE("planted: a hip held bent and turned since an old injury is the same day, and a fall of these days makes it now; a leg that lay so for years is asked") {
  for (const char* lies : {"hip.leg_attitude left attitude_bent_turned_in", "hip.leg_attitude left attitude_bent_turned_out"}) {
    for (const char* why : {"hip_after_fall", "hip_groin", "chronic_knee", "free"}) {
      CAPTURE(lies);
      CAPTURE(why);
      const Bench left = dated_visit(why, 1996, std::string("history.mechanism vehicle; gait.steps_now 4; ") + lies, 10, 5);
      CHECK(line_of(left, "not_put_back") == "raised");
      CHECK_FALSE(is_now(left, "not_put_back"));
      CHECK(line_of(left, "hip_disloc") == "none");
    }
  }
  const std::string held = "hip.leg_attitude left attitude_bent_turned_in; ";
  const std::string crash = "history.mechanism vehicle; ";
  // By the weeks of the trouble, and where the leg does not carry at any time; whether it is of these days is asked all the same.
  CHECK(told_line("hip_groin", crash + held + "history.weeks_since_onset 20; gait.steps_now 4", "not_put_back") == "raised");
  const Bench carries_not = visit("hip_groin", 1986, crash + held + "history.weeks_since_onset 100; gait.steps_now 0");
  CHECK(line_of(carries_not, "not_put_back") == "raised");
  CHECK(is_grounded_on(carries_not, "not_put_back", "gait.steps_now"));
  CHECK(asks(carries_not, "hip_disloc", "history.fall_recent"));
  CHECK(is_now(visit("hip_groin", 1986, crash + held + "history.weeks_since_onset 100; history.fall_recent yes"), "hip_disloc"));
  // Two years back and walking: a referral. Nobody hurt it: nothing.
  const Bench years = visit("hip_groin", 1986, crash + held + "history.weeks_since_onset 100; gait.steps_now 4");
  CHECK(years.assess().alerts.empty());
  CHECK(referral_of(years, "not_put_back") == "not_put_back.hip");
  const Bench never_hurt = visit("hip_groin", 1986, "history.mechanism no_injury; history.weeks_since_onset 100; " + held);
  CHECK(never_hurt.assess().alerts.empty());
  CHECK(referral_of(never_hurt, "not_put_back") == "none");
  // Spastic legs that always lay so, after a slip: asked, on either side, until pain or a lost walk says that it is new; of weeks that are few it is now.
  const std::string spastic = "body.spastic_tone both yes; history.mechanism fall; hip.leg_attitude both attitude_bent_turned_in; ";
  const Bench always = visit("hip_after_fall", 2009, spastic + "history.weeks_since_onset 400; gait.steps_now 4");
  CHECK(line_of(always, "hip_disloc") == "none");
  CHECK(line_of(always, "not_put_back") == "none");
  CHECK(asks(always, "hip_disloc", "history.walking_lost"));
  for (const char* newly : {"history.walking_lost yes", "history.pain_severe_sudden yes", "hip.pain_passive_severe left yes", "gait.steps_now 0"}) {
    CAPTURE(newly);
    CHECK(is_now(visit("hip_after_fall", 2009, spastic + "history.weeks_since_onset 400; " + newly), "hip_disloc"));
  }
  CHECK(is_now(visit("hip_after_fall", 2009, spastic + "history.weeks_since_onset 0"), "hip_disloc"));
  CHECK(is_now(visit("hip_after_fall", 2009, spastic), "hip_disloc"));
}

TEST_CASE("planted: what an injury of the last half year left out of shape, blocked or without its cord is referred; what is older, or was not hurt, is not") {
  for (const auto& one : std::vector<std::pair<const char*, std::string>>{{"acute_knee", "knee.look_deformity left yes"},
                                                                          {"ankle_injury", "ankle.look_deformity left yes"},
                                                                          {"forefoot_pain", "foot.look_deformity left yes"},
                                                                          {"chronic_knee", "knee.look_patella_height left laterally_displaced"},
                                                                          {"calf_pain", "leg.look_deformity left yes"},
                                                                          {"ankle_injury", "ankle.calf_squeeze left absent"}}) {
    const auto& complaint = one.first;
    const std::string& sign = one.second;
    CAPTURE(sign);
    const Bench dated = dated_visit(complaint, 1976, "history.mechanism fall; " + sign, 9, 28);
    CHECK(referral_of(dated, "not_put_back") == (sign.starts_with("ankle.calf") ? "not_put_back.cord" : "not_put_back"));
    CHECK(dated.assess().alerts.empty());
    CHECK(referral_of(visit(complaint, 1976, "history.mechanism fall; history.weeks_since_onset 20; " + sign), "not_put_back") ==
          (complains_of_today(complaint) ? "none" : referral_of(dated, "not_put_back")));
    CHECK(referral_of(dated_visit(complaint, 1976, "history.mechanism fall; " + sign, 4, 28), "not_put_back") == "none");
    CHECK(referral_of(visit(complaint, 1976, "history.mechanism no_injury; history.weeks_since_onset 12; " + sign), "not_put_back") == "none");
    CHECK(referral_of(visit(complaint, 1976, "history.mechanism fall; history.fall_recent yes; history.weeks_since_onset 12; " + sign), "not_put_back") ==
          (sign.starts_with("ankle.calf") ? referral_of(visit(complaint, 1976, "history.mechanism fall; history.weeks_since_onset 12; " + sign), "not_put_back") : "none"));
  }
  CHECK(referral_of(dated_visit("ankle_injury", 1976, "history.mechanism fall; body.paralysis left yes; ankle.calf_squeeze left absent", 9, 28), "not_put_back") == "none");
  CHECK(referral_of(dated_visit("ankle_injury", 1976, "history.mechanism fall; ankle.calf_squeeze left full; ankle.look_deformity left no", 9, 28), "not_put_back") == "none");
  // A knee that sticks and does not straighten: of a child the same day whatever the weeks, of an adult a referral while the injury is of half a year.
  const std::string blocked = "history.mechanism twist; history.locking left yes; knee.extension_passive left -25; knee.extension_passive right 0; ";
  CHECK(line_of(dated_visit("chronic_knee", 2013, blocked, 9, 28), "locked_knee") == "raised");
  CHECK(line_of(visit("chronic_knee", 2013, blocked + "history.weeks_since_onset 60"), "locked_knee") == "raised");
  CHECK(referral_of(dated_visit("chronic_knee", 1986, blocked, 9, 28), "locked_knee") == "locked_knee");
  CHECK(referral_of(visit("chronic_knee", 1986, blocked + "history.weeks_since_onset 20"), "locked_knee") == "locked_knee");
  // Worn for years; and a knee that does not stick is stiff.
  CHECK(referral_of(visit("chronic_knee", 1956, blocked + "history.weeks_since_onset 150"), "locked_knee") == "none");
  CHECK(line_of(dated_visit("chronic_knee", 2013, "history.mechanism twist; history.locking left no; knee.extension_passive left -25; knee.extension_passive right 0", 9, 28),
                "locked_knee") == "none");
}
