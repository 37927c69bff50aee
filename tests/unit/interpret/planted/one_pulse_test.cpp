// Planted cases of one pulse of a foot that is not felt while the other is full. Sources: the red flags page, sections 3 and 5 ("pulse newly absent (or no
// Doppler signal)"; a sign and a symptom); decision rules page, sections 7, 8 and 24; clinical safety C2 and C13. What is our own rule says so. All is invented.
#include "tests/unit/interpret/alerts/story.hpp"

using namespace limbledger;
using namespace limbledger::interpret_test;

namespace {

const std::string full_right = "vessel.pulse_dorsalis_pedis right 2; vessel.pulse_posterior_tibial right 2; ";
const std::string walks_warm = "history.mechanism twist; vessel.foot_cold left no; nerve.sensation_foot_reduced left no; gait.steps_now 4; " + full_right;
const std::string dorsal_lost = walks_warm + "vessel.pulse_dorsalis_pedis left 0; vessel.pulse_posterior_tibial left 2; ";
const std::string tibial_lost = walks_warm + "vessel.pulse_dorsalis_pedis left 2; vessel.pulse_posterior_tibial left 0; ";

// The pulse of this story read twice, each at its own hour before noon (none: nobody wrote it).
void read_twice(Bench& bench, const std::string& item, const char* first, std::optional<int> at, const char* second, std::optional<int> later) {
  auto& all = *bench.exam.findings;
  const auto reading = std::find_if(all.begin(), all.end(), [&](const model::Finding& one) { return one.item.text == item && one.side == Side::left; });
  REQUIRE(reading != all.end());
  const auto tell_of = [&](model::Finding& one, const char* grade, std::optional<int> hour) {
    std::get<model::Grade>(one.value).grade.text = grade;
    if (hour) {
      one.examined_at = at_noon(2026, 11, 24);
      one.examined_at->ms += *hour * 3'600'000LL;
    }
  };
  model::Finding other = *reading;
  other.finding = id_of(900 + static_cast<int>(all.size()));
  tell_of(*reading, first, at);
  tell_of(other, second, later);
  all.push_back(other);
}

Bench twice(const std::string& complaint, const std::string& story, const std::string& item, const char* first, std::optional<int> at, const char* second, std::optional<int> later) {
  Bench bench = visit(complaint, 1996, story);
  read_twice(bench, item, first, at, second, later);
  return bench;
}

std::string first_question(const Bench& bench) {
  const auto questions = bench.assess().questions;
  return questions.empty() ? "none" : questions.front().message.text;
}

}  // namespace

// Decision rules page, section 24, example 11 ("no PAD flag; Doppler advised"); red flags page, sections 3 and 5. What nobody looked at leaves the
// injury as the symptom: our own rule.
TEST_CASE("planted: one dorsal pulse lost after a sprain of a warm foot that feels and moves asks for a Doppler first; a second sign, both pulses or a knee that was out is now") {
  const std::string lost = "history.mechanism twist; vessel.pulse_dorsalis_pedis left 0; vessel.pulse_posterior_tibial left 2; vessel.pulse_dorsalis_pedis right 2; vessel.pulse_posterior_tibial right 2; ";
  const std::string well = lost + "vessel.foot_cold left no; nerve.sensation_foot_reduced left no; gait.steps_now 4; ";
  const Bench sprain = visit("ankle_injury", 2001, well);
  CHECK_FALSE(alert(sprain, "ali"));
  REQUIRE(question(sprain, "ali"));
  CHECK(question(sprain, "ali")->message.text == "msg.question.ali.one_pulse");
  CHECK(question(sprain, "ali")->rank.steps == 1);
  CHECK(question(sprain, "ali")->ask.front().item.text == "vessel.doppler_arterial_audible");
  CHECK(flag(sprain, "ali") != "asked_no");
  // Heard, it ends; not heard, the foot has no flow.
  const Bench heard = visit("ankle_injury", 2001, well + "vessel.doppler_arterial_audible left yes");
  CHECK_FALSE(alert(heard, "ali"));
  CHECK_FALSE(question(heard, "ali"));
  CHECK(flag(heard, "ali") == "cannot_answer");  // and the pulse stays named
  CHECK(is_now(visit("ankle_injury", 2001, well + "vessel.doppler_arterial_audible left no"), "ali"));
  for (const char* second : {"vessel.foot_cold left yes", "vessel.foot_colour left colour_pale", "vessel.foot_colour left colour_dusky", "vessel.capillary_refill_slow left yes",
                             "nerve.sensation_foot_reduced left yes", "ankle.movement left no", "nerve.foot_drop left yes", "history.pain_out_of_proportion left yes",
                             "history.numb_or_tingling left yes", "vessel.pulse_posterior_tibial left 0", "history.injury_severe_or_crush yes", "body.cast left cast_ankle"}) {
    CAPTURE(second);
    CHECK(is_now(visit("ankle_injury", 2001, well + second), "ali"));
  }
  // Nobody looked: the pulse that the injury took is called for until somebody did.
  CHECK(is_now(visit("ankle_injury", 2001, lost + "vessel.foot_cold left no; gait.steps_now 4"), "ali"));
  CHECK(is_now(visit("ankle_injury", 2001, lost + "nerve.sensation_foot_reduced left no; gait.steps_now 4"), "ali"));
  CHECK(is_now(visit("ankle_injury", 2001, lost + "nerve.sensation_foot_reduced left no; vessel.foot_cold left no"), "ali"));
  // A knee that was out, or of which nobody asked it.
  CHECK(is_now(visit("acute_knee", 1981, well + "history.knee_dislocated left yes"), "knee_disloc_vasc"));
  CHECK(is_now(visit("acute_knee", 1981, well), "ali"));
  CHECK_FALSE(alert(visit("acute_knee", 1981, well + "history.knee_dislocated left no; knee.look_deformity left no; knee.bruising left no"), "ali"));
  // Nobody hurt it: the Doppler is advised, behind what is more dangerous.
  const Bench of_nobody_hurt = visit("chronic_knee", 1958, "history.mechanism no_injury; vessel.pulse_dorsalis_pedis left 0; vessel.pulse_posterior_tibial left 2; vessel.foot_cold left no");
  CHECK_FALSE(alert(of_nobody_hurt, "ali"));
  CHECK_FALSE(alert(of_nobody_hurt, "clti"));
  CHECK(asks(of_nobody_hurt, "clti", "vessel.doppler_arterial_audible"));
  CHECK_FALSE(asks(visit("chronic_knee", 1958, "history.mechanism no_injury; vessel.pulse_dorsalis_pedis left 0; vessel.pulse_posterior_tibial left 2; vessel.doppler_arterial_audible left yes"), "clti",
                   "vessel.doppler_arterial_audible"));
}

// Section 5: "pulse newly absent". A pulse that was felt is none that some healthy people lack.
TEST_CASE("planted: a pulse of the foot that was felt at this exam and is gone is now, warm and walked on or not; one that came back is not") {
  const std::string dorsal = "vessel.pulse_dorsalis_pedis", tibial = "vessel.pulse_posterior_tibial";
  for (const std::string& item : {dorsal, tibial}) {
    CAPTURE(item);
    const std::string story = item == dorsal ? dorsal_lost : tibial_lost + "vessel.capillary_refill_slow left no; ";
    CHECK(is_now(twice("ankle_injury", story, item, "2", -2, "0", -1), "ali"));
    CHECK(is_now(twice("ankle_injury", story, item, "1", -2, "0", -1), "ali"));
    CHECK(is_now(twice("ankle_injury", story, item, "0", -1, "2", -2), "ali"));  // in whichever order it was written
    CHECK(is_now(twice("acute_knee", story + "history.knee_dislocated left no; knee.look_deformity left no", item, "2", -2, "0", -1), "ali"));
    // Nobody wrote when: the one that raises more counts.
    CHECK(is_now(twice("ankle_injury", story, item, "2", std::nullopt, "0", std::nullopt), "ali"));
    // It came back, or was weak and not lost.
    CHECK_FALSE(raised(twice("ankle_injury", story, item, "0", -2, "2", -1), "ali"));
    CHECK_FALSE(raised(twice("ankle_injury", story, item, "2", -2, "1", -1), "ali"));
    // Nobody hurt it: with a symptom of these days; alone it is a sign without one.
    const std::string unhurt = "history.mechanism no_injury; history.weeks_since_onset 0; vessel.foot_cold left no; " + full_right + "vessel.pulse_dorsalis_pedis left 2; vessel.pulse_posterior_tibial left 2; ";
    CHECK(is_now(twice("calf_pain", unhurt + "nerve.sensation_foot_reduced left yes", item, "2", -2, "0", -1), "ali"));
    // Alone it is asked after first, and is no "asked, answered no"; with no signal it is now.
    const Bench alone = twice("calf_pain", unhurt + "nerve.sensation_foot_reduced left no; ankle.movement left yes; history.pain_out_of_proportion left no", item, "2", -2, "0", -1);
    CHECK_FALSE(raised(alone, "ali"));
    CHECK(flag(alone, "ali") == "not_asked");
    REQUIRE(question(alone, "ali"));
    CHECK(question(alone, "ali")->message.text == "msg.question.ali.pulse_gone");
    CHECK(asks(alone, "ali", "vessel.doppler_arterial_audible"));
    // Two readings stand beside each other, and what the answer would change is judged of both.
    const auto steps = alone.assess().steps;
    REQUIRE_FALSE(steps.empty());
    CHECK(std::any_of(steps.front().changes.begin(), steps.front().changes.end(), [](const model::Word& one) { return one.text == "alert.ali"; }));
    CHECK(is_now(twice("calf_pain", unhurt + "nerve.sensation_foot_reduced left no; vessel.doppler_arterial_audible left no", item, "2", -2, "0", -1), "ali"));
  }
  // Felt, and an hour later not to be felt any more: no value says it. Knowing the first reading raises no less than not knowing it.
  for (const std::string& item : {dorsal, tibial}) {
    CAPTURE(item);
    Bench no_more = visit("after_operation", 1996, "history.weeks_since_onset 0; vessel.foot_cold left yes; vessel.foot_cold right no; nerve.sensation_foot_reduced left yes; " + full_right + item + " left 2; ");
    model::Finding later = no_more.exam.findings->back();
    later.finding = id_of(990);
    later.value = model::NotDone{model::WhyNot::not_palpable, std::nullopt};
    no_more.exam.findings->push_back(later);
    CHECK(is_now(no_more, "ali"));
    const auto line = alert(no_more, "ali");
    REQUIRE(line);
    CHECK(std::find(line->because.begin(), line->because.end(), *later.finding) != line->because.end());
  }
  // Felt again after that, it is there.
  Bench back = visit("after_operation", 1996, "history.weeks_since_onset 0; vessel.foot_cold left no; nerve.sensation_foot_reduced left no; " + full_right + "vessel.pulse_posterior_tibial left 2; vessel.pulse_dorsalis_pedis left 2; ");
  for (const int hour : {-2, -1, 0}) {
    model::Finding reading = back.exam.findings->back();
    if (hour != -2) {
      reading.finding = id_of(991 + hour);
      reading.value = hour == -1 ? model::Value(model::NotDone{model::WhyNot::not_palpable, std::nullopt}) : back.exam.findings->front().value;
      reading.value = hour == 0 ? model::Value(model::Grade{{"pulse/0-3"}, {"2"}, std::nullopt, std::nullopt, std::nullopt}) : reading.value;
    } else {
      back.exam.findings->pop_back();
    }
    reading.examined_at = at_noon(2026, 11, 24);
    reading.examined_at->ms += hour * 3'600'000LL;
    back.exam.findings->push_back(reading);
  }
  CHECK_FALSE(raised(back, "ali"));
  CHECK((!question(back, "ali") || question(back, "ali")->message.text != "msg.question.ali.pulse_gone"));
  CHECK(is_now(twice("hip_groin", "history.mechanism no_injury; history.weeks_since_onset 0; vessel.pulse_femoral left 2", "vessel.pulse_femoral", "2", -2, "0", -1), "ali"));
  // Behind the knee, above a plaster that hides the foot.
  CHECK(is_now(twice("after_plaster", "history.weeks_since_onset 0; body.cast left cast_shin+cast_foot; vessel.pulse_popliteal left 2", "vessel.pulse_popliteal", "2", -2, "0", -1), "ali"));
  // Both lost, by nobody's blow, and nothing else that speaks: now.
  const std::string neither = "history.mechanism no_injury; history.weeks_since_onset 0; vessel.foot_cold left no; nerve.sensation_foot_reduced left no; ankle.movement left yes; history.rest_pain_foot left no; " + full_right + "vessel.pulse_dorsalis_pedis left 2; vessel.pulse_posterior_tibial left 2; ";
  Bench both = twice("calf_pain", neither, dorsal, "2", -2, "0", -1);
  read_twice(both, tibial, "2", -2, "0", -1);
  CHECK(is_now(both, "ali"));
  // Both readings are among the grounds: since when it is gone.
  const Bench lost = twice("ankle_injury", dorsal_lost, dorsal, "2", -2, "0", -1);
  const auto line = alert(lost, "ali");
  REQUIRE(line.has_value());
  CHECK(std::count_if(lost.exam.findings->begin(), lost.exam.findings->end(), [&](const model::Finding& one) {
          return one.item.text == dorsal && one.side == Side::left && std::find(line->because.begin(), line->because.end(), *one.finding) != line->because.end();
        }) == 2);
}

// Section 5: "(or no Doppler signal)", "sensory loss", "weakness"; decision rules page, section 7 (0.90; a signal that is absent counts as 0) and 24 (times of
// refill by age and sex); C13. What is recorded says the same in whichever item it stands.
TEST_CASE("planted: what was measured, touched or answered by who cannot tell speaks beside one lost pulse as well") {
  const std::string arms = "vessel.pressure_arm left 130; vessel.pressure_arm right 130; ";
  const auto with = [](const std::string& lost, const std::string& story) { return visit("ankle_injury", 1966, lost + story); };
  for (const std::string& lost : {dorsal_lost, tibial_lost + "vessel.capillary_refill_slow left no; "}) {
    CAPTURE(lost);
    for (const std::string& second : {arms + "vessel.pressure_dorsalis_pedis left 60; vessel.pressure_posterior_tibial left 60", arms + "vessel.pressure_posterior_tibial left 116",
                                      std::string("nerve.touch_first_web left felt_less"), std::string("nerve.touch_sole left not_felt"),
                                      std::string("nerve.power_great_toe_extension left 2"), std::string("general.answers_reliable no"), std::string("general.consciousness mind_voice")}) {
      CAPTURE(second);
      CHECK(is_now(with(lost, second), "ali"));
    }
    for (const std::string& ordinary : {arms + "vessel.pressure_posterior_tibial left 117", arms + "vessel.pressure_dorsalis_pedis left 60; vessel.pressure_posterior_tibial left 130",
                                        std::string("nerve.touch_first_web left felt_as_elsewhere"), std::string("general.answers_reliable yes")}) {
      CAPTURE(ordinary);
      CHECK_FALSE(raised(with(lost, ordinary), "ali"));
      CHECK(asks(with(lost, ordinary), "ali", "vessel.doppler_arterial_audible"));
    }
  }
  for (const char* artery : {"vessel.pressure_dorsalis_pedis", "vessel.pressure_posterior_tibial"}) {
    Bench silent = with(dorsal_lost, "");
    model::Pressure none;
    none.signal = model::Signal::absent;
    silent.add(artery, Side::left, none);
    CHECK(is_now(silent, "ali"));
  }
  // FLEMING2015: 4 s at the foot of a child; SCHRIGER1988: a man of 60 2 s, of 62 and older 4.5 s; of no known age the longest is given.
  const auto refill = [](int born, std::int64_t tenths) {
    Bench bench = visit("ankle_injury", born == 0 ? 1966 : born, dorsal_lost);
    if (born == 0) {
      bench.person->birth.reset();
    }
    bench.person->sex = model::Sex::male;
    bench.person->norm_sex = model::NormSex::male;
    model::Duration time;
    time.s = model::Seconds{tenths};
    bench.add("vessel.capillary_refill_great_toe", Side::left, time);
    return is_now(bench, "ali");
  };
  CHECK(refill(1966, 80));
  CHECK(refill(1966, 21));
  CHECK_FALSE(refill(1966, 20));
  CHECK(refill(2018, 41));
  CHECK_FALSE(refill(2018, 40));
  CHECK(refill(1950, 46));
  CHECK_FALSE(refill(1950, 45));
  CHECK(refill(0, 46));
  CHECK_FALSE(refill(0, 45));
}

// The pages say of the dorsal pulse alone that healthy people lack it; so behind the ankle the colour has to be looked at as well (our own rule).
TEST_CASE("planted: only the pulse behind the ankle lost after a sprain asks for a Doppler where colour comes back in time too, and else is now") {
  const Bench sprain = visit("ankle_injury", 2001, tibial_lost + "vessel.capillary_refill_slow left no");
  CHECK_FALSE(alert(sprain, "ali"));
  CHECK(first_question(sprain) == "msg.question.ali.one_pulse_behind");
  CHECK(flag(sprain, "ali") != "asked_no");
  CHECK(is_now(visit("ankle_injury", 2001, tibial_lost), "ali"));
  for (const char* second : {"vessel.foot_cold left yes", "vessel.foot_colour left colour_pale", "nerve.sensation_foot_reduced left yes", "ankle.movement left no",
                             "vessel.capillary_refill_slow left yes", "vessel.doppler_arterial_audible left no", "body.cast left cast_ankle"}) {
    CAPTURE(second);
    CHECK(is_now(visit("ankle_injury", 2001, tibial_lost + "vessel.capillary_refill_slow left no; " + second), "ali"));
  }
  const Bench heard = visit("ankle_injury", 2001, tibial_lost + "vessel.capillary_refill_slow left no; vessel.doppler_arterial_audible left yes");
  CHECK_FALSE(alert(heard, "ali"));
  CHECK(flag(heard, "ali") == "cannot_answer");
}

// Decision rules page, section 24, example 11.
TEST_CASE("planted: both dorsal pulses not felt in who complains of no side: the Doppler is advised of both feet") {
  const std::string both = "history.mechanism no_injury; vessel.pulse_dorsalis_pedis both 0; vessel.pulse_posterior_tibial both 2; vessel.foot_cold both no; ";
  Bench healthy = visit("no_complaint", 1976, both);
  healthy.exam.side.reset();
  CHECK(healthy.assess().alerts.empty());
  for (const Side side : {Side::left, Side::right}) {
    const auto questions = healthy.assess().questions;
    CHECK(std::any_of(questions.begin(), questions.end(), [&](const interpret::Question& one) {
      return one.side == side && one.message.text == "msg.question.clti.one_pulse" && one.ask.front().item.text == "vessel.doppler_arterial_audible";
    }));
  }
  CHECK_FALSE(asks(healthy, "clti", "history.foot_ulcer_over_2_weeks"));  // no sore is recorded whose weeks could be told
  // Of one side complained of, that side alone; heard, none.
  CHECK(asks(visit("chronic_knee", 1976, both), "clti", "vessel.doppler_arterial_audible"));
  Bench heard = visit("no_complaint", 1976, both + "vessel.doppler_arterial_audible both yes");
  heard.exam.side.reset();
  CHECK_FALSE(asks(heard, "clti", "vessel.doppler_arterial_audible"));
}
