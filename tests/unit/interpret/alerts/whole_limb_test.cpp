// Dangers read off hip, ankle, foot and story, by the red flags page (sections 1, 5, 8 to 12, 16, 17), and clinical safety C2, C3
// and C16. Numbers of examples are those of the page.
#include "tests/unit/interpret/alerts/bench.hpp"

using namespace limbledger;
using namespace limbledger::interpret_test;

namespace {

// 82 years, a hip after a fall; no date of an injury.
Bench fallen() {
  Bench bench(*reference::built_in_edition());
  bench.born(1944, 1, 1);
  bench.exam.complaint = {"hip_after_fall"};
  bench.exam.injured_on.reset();
  bench.yes("history.fall_recent", Side::midline);
  return bench;
}

Bench infant(int month, int day_of_month) {
  Bench bench = sore_knee();
  bench.exam.findings->clear();
  bench.exam.complaint = {"free"};
  bench.born(2026, month, day_of_month);
  return bench;
}

std::string line(const Bench& bench, const std::string& name) {
  const auto found = alert(bench, name);
  return found ? found->message.text : "not raised";
}

bool rests_on(const Bench& bench, const std::string& name, const std::string& item) {
  const auto found = alert(bench, name);
  return found && std::any_of(found->because.begin(), found->because.end(), [&](const auto& id) {
           return std::any_of(bench.exam.findings->begin(), bench.exam.findings->end(),
                              [&](const auto& finding) { return finding.finding == id && finding.item.text == item; });
         });
}

std::optional<interpret::Alert> protection(const Bench& bench) {
  interpret::AssessAsk ask = bench.ask();
  ask.protected_ = true;
  for (const auto& one : interpret::assess(bench.exam, bench.person, {}, *bench.edition, ask).alerts) {
    if (one.alert.text == "alert.nai") {
      return one;
    }
  }
  return std::nullopt;
}

void several(Bench& bench, const std::string& item, Side side, const char* word) { bench.add(item, side, model::Choices{{model::ChoiceId{word}}}); }

}  // namespace

TEST_CASE("hip_fx_old: 82, a fall and no date: each sign of the hip raises it, and a roll that does not hurt settles none") {
  const auto with = [](auto&& sign) {
    Bench bench = fallen();
    bench.count("gait.steps_now", 4);
    test(bench, "hip.log_roll", Side::left, false);
    CHECK(!raised(bench, "hip_fx_old"));
    CHECK(flag(bench, "hip_fx_old") == "asked_no");  // full painless rotation, walks
    sign(bench);
    return raised(bench, "hip_fx_old") && rests_on(bench, "hip_fx_old", "history.fall_recent") && !rests_on(bench, "hip_fx_old", "hip.log_roll");
  };
  CHECK(with([](Bench& bench) { choice(bench, "hip.leg_attitude", Side::left, "attitude_short_turned_out"); }));
  CHECK(with([](Bench& bench) { test(bench, "hip.straight_leg_lift", Side::left, true); }));
  CHECK(with([](Bench& bench) { bench.not_done("hip.straight_leg_lift", Side::left, model::WhyNot::unable); }));
  CHECK(with([](Bench& bench) { test(bench, "hip.heel_push", Side::left, true); }));
  CHECK(with([](Bench& bench) { test(bench, "hip.percussion_patellopubic", Side::left, true); }));
  CHECK(with([](Bench& bench) { several(bench, "history.pain_site", Side::left, "site_groin"); }));  // walks with groin pain
  CHECK(with([](Bench& bench) { bench.yes("history.walking_lost", Side::midline); }));
  CHECK(with([](Bench& bench) { bench.yes("history.refuses_weight", Side::left); }));
  CHECK(with([](Bench& bench) { bench.find("gait.steps_now").value = model::CountValue{{0}}; }));
  CHECK(!with([](Bench& bench) { choice(bench, "hip.leg_attitude", Side::left, "attitude_even"); }));
}

TEST_CASE("hip_fx_old: a painless roll alone leaves it open until standing and walking since the fall is known") {
  Bench bench = fallen();
  test(bench, "hip.log_roll", Side::left, false);
  CHECK(flag(bench, "hip_fx_old") == "not_asked");
  CHECK(asks(bench, "hip_fx_old", "history.walking_lost"));
  bench.no("history.walking_lost", Side::midline);
  CHECK(flag(bench, "hip_fx_old") == "asked_no");
}

TEST_CASE("hip_fx_old: beside a sore knee not walking is never answered by a painless roll alone") {
  Bench bench = injured_knee();
  bench.born(1942, 1, 1);
  bench.count("gait.steps_now", 0);
  test(bench, "hip.log_roll", Side::left, false);
  CHECK(flag(bench, "hip_fx_old") == "not_asked");
  CHECK(asks(bench, "hip_fx_old", "hip.leg_attitude"));  // an injured kneecap that nobody felt is not knocked on
  bench.no("knee.patella_tender", Side::left);
  CHECK(asks(bench, "hip_fx_old", "hip.percussion_patellopubic"));
  test(bench, "hip.percussion_patellopubic", Side::left, false);
  CHECK(flag(bench, "hip_fx_old") == "asked_no");
}

TEST_CASE("hip_fx_old: frail at 50 it is judged as well; memory that was poor counts with walking lost") {
  Bench bench = fallen();
  bench.born(1976, 1, 1);
  bench.yes("history.walking_lost", Side::midline);
  CHECK(!raised(bench, "hip_fx_old"));
  Bench frail = bench;
  frail.yes("history.frail", Side::midline);
  CHECK(raised(frail, "hip_fx_old"));
  bench.yes("history.memory_poor", Side::midline);
  CHECK(raised(bench, "hip_fx_old"));
}

TEST_CASE("septic_child: a leg that is not moved is the same day under one year without fever, and now with it, seen or told") {
  for (const char* item : {"hip.leg_not_moved", "history.child_not_moving_leg"}) {
    Bench bench = infant(3, 1);
    bench.yes(item, Side::left);
    CAPTURE(item);
    CHECK(line(bench, "septic_child") == "msg.alert.septic_child.not_moved");
    CHECK(!is_now(bench, "septic_child"));
    temperature(bench, 386);
    CHECK(line(bench, "septic_child") == "msg.alert.septic_child.not_moved_fever");
    CHECK(is_now(bench, "septic_child"));
  }
  Bench weeks_old = infant(10, 20);  // under three months
  weeks_old.yes("hip.leg_not_moved", Side::left);
  CHECK(is_now(weeks_old, "septic_child"));
  Bench two = infant(3, 1);
  two.born(2024, 3, 1);
  two.yes("hip.leg_not_moved", Side::left);
  CHECK(!raised(two, "septic_child"));
  temperature(two, 386);
  CHECK(is_now(two, "septic_child"));
}

TEST_CASE("septic_child: under one year the leg that is not moved is asked for, and no limp; moved as the other is an answer") {
  Bench bench = infant(3, 1);
  temperature(bench, 386);
  CHECK(asks(bench, "septic_child", "hip.leg_not_moved"));
  CHECK(!asks(bench, "septic_child", "gait.limp"));
  CHECK(!asks(bench, "limp_child", "gait.limp"));
  bench.no("hip.leg_not_moved", Side::left);
  CHECK(flag(bench, "septic_child") == "not_asked");  // a fever, and nobody looked whether a joint is hot or full
  bench.no("knee.look_skin_hot_red", Side::left);
  graded(bench, "knee.effusion_stroke", Side::left, "0", "effusion/stroke");
  CHECK(flag(bench, "septic_child") == "asked_no");
  Bench five = sore_knee(2021);
  temperature(five, 386);
  CHECK(asks(five, "septic_child", "gait.limp"));
}

TEST_CASE("septic_child: refusing weight and the highest temperature of the week count as not standing and fever now do") {
  Bench bench = sore_knee(2021);
  bench.yes("history.refuses_weight", Side::left);
  CHECK(raised(bench, "septic_child"));
  Bench week = sore_knee(2021);
  week.yes("gait.limp", Side::midline);
  temperature(week, 370);
  week.no("history.fever", Side::midline);
  model::Temperature highest;
  highest.cel = model::Celsius{385};
  week.add("general.temperature_highest_7_days", Side::midline, highest);
  CHECK(raised(week, "septic_child"));
}

TEST_CASE("osteomyelitis: a child's tender bone with sickle cell disease is raised without fever") {
  Bench bench = sore_knee(2014);
  bench.yes("knee.bone_tender_elsewhere", Side::left);
  bench.yes("history.sickle_cell", Side::midline);
  CHECK(raised(bench, "osteomyelitis"));
}

TEST_CASE("no pulse is said of the one that was felt for, and it stands among the grounds") {
  Bench bench = injured_knee();
  bench.yes("vessel.foot_cold", Side::left);
  bench.yes("nerve.sensation_foot_reduced", Side::left);
  CHECK(line(bench, "ali") == "msg.alert.ali.raised");
  pulse(bench, "vessel.pulse_dorsalis_pedis", Side::left, "0");
  CHECK(line(bench, "ali") == "msg.alert.ali.no_pulse_dorsal");
  CHECK(rests_on(bench, "ali", "vessel.pulse_dorsalis_pedis"));
  Bench behind = injured_knee();
  behind.yes("history.knee_dislocated", Side::left);
  pulse(behind, "vessel.pulse_posterior_tibial", Side::left, "0");
  CHECK(line(behind, "knee_disloc_vasc") == "msg.alert.knee_disloc_vasc.no_pulse_tibial");
  CHECK(rests_on(behind, "knee_disloc_vasc", "vessel.pulse_posterior_tibial"));
  pulse(bench, "vessel.pulse_posterior_tibial", Side::left, "0");
  CHECK(line(bench, "ali") == "msg.alert.ali.no_pulse");
}

TEST_CASE("ali: told to have turned cold and pale suddenly, with pain at rest, is now; pain at rest for longer is no symptom of it") {
  Bench bench = sore_knee();
  bench.yes("history.cold_pale_sudden", Side::left);
  CHECK(!raised(bench, "ali"));
  CHECK(asks(bench, "ali", "nerve.sensation_foot_reduced"));
  bench.yes("history.rest_pain_foot", Side::left);
  CHECK(is_now(bench, "ali"));
  bench.yes("history.rest_pain_over_2_weeks", Side::left);
  CHECK(!raised(bench, "ali"));
}

TEST_CASE("open_fx: a wound near a break, skin that bone lifts, and a wound of a foot out of shape are now; the foot out of shape asks") {
  Bench near = injured_knee();
  near.yes("skin.wound_over_bone", Side::left);
  CHECK(line(near, "open_fx") == "msg.alert.open_fx.near_break");
  CHECK(is_now(near, "open_fx"));
  Bench skin = injured_knee();
  skin.exam.complaint = {"free"};
  skin.yes("ankle.skin_tented", Side::left);
  CHECK(line(skin, "open_fx") == "msg.alert.open_fx.skin");
  CHECK(is_now(skin, "open_fx"));
  for (const char* part : {"ankle.look_deformity", "foot.look_deformity", "leg.look_deformity"}) {
    Bench bench = injured_knee();
    bench.exam.complaint = {"free"};
    bench.yes(part, Side::left);
    CAPTURE(part);
    CHECK(!raised(bench, "open_fx"));
    CHECK(asks(bench, "open_fx", "skin.wound_over_bone"));
    Bench wound = bench;
    wound.no("skin.intact", Side::left);
    CHECK(is_now(wound, "open_fx"));
    bench.no("skin.wound_over_bone", Side::left);
    bench.no("ankle.skin_tented", Side::left);
    CHECK(flag(bench, "open_fx") == "asked_no");
  }
  // Wound on the foot, no sign of a break, walks: wound care.
  Bench foot = injured_knee();
  foot.exam.complaint = {"free"};
  foot.no("skin.intact", Side::left);
  CHECK(!raised(foot, "open_fx"));
}

TEST_CASE("ces: weakness of both legs or by the day and a change in sex count with pain of the back, and none of them alone") {
  for (const char* item : {"history.both_legs_weak", "history.weakness_getting_worse", "history.sexual_function_change"}) {
    Bench bench = sore_knee();
    bench.yes(item, Side::midline);
    CAPTURE(item);
    CHECK(!raised(bench, "ces"));
    bench.yes("history.back_pain", Side::midline);
    CHECK(is_now(bench, "ces"));
  }
}

TEST_CASE("C16: the story of an injury, fear at home and missing care are protected at any age, masked unless asked for") {
  Bench story = sore_knee(2022);
  several(story, "history.injury_story", Side::midline, "none_of_these");
  CHECK(!protection(story));
  story.find("history.injury_story").value = model::Choices{{model::ChoiceId{"story_changes"}}};
  CHECK(protection(story));
  CHECK(!alert(story, "nai"));
  REQUIRE(alert(story, "protected"));
  CHECK(alert(story, "protected")->because.empty());
  CHECK(flag(story, "nai") == "no flag");
  for (const char* item : {"history.hurt_or_afraid", "history.neglect_concern"}) {
    Bench adult = sore_knee();
    adult.no(item, Side::midline);
    CHECK(!protection(adult));
    adult.find(item).value = model::Answer{model::AnswerWord::yes};
    CAPTURE(item);
    CHECK(protection(adult));
    CHECK(line(adult, "protected") == "msg.alert.see_protected_note");
  }
  Bench mark = sore_knee(2022);
  several(mark, "skin.bruise_pattern", Side::midline, "mark_bite");
  CHECK(protection(mark));
}

TEST_CASE("tumour: bone broken by almost nothing is a referral, at fifteen the same day, with a known cancer now; unexplained counts in the young") {
  Bench bench = sore_knee();
  bench.yes("history.fracture_minimal_force", Side::left);
  CHECK(referred(bench, "tumour"));
  CHECK(!alert(bench, "tumour"));
  bench.yes("history.cancer_known", Side::midline);
  REQUIRE(alert(bench, "tumour"));
  CHECK(alert(bench, "tumour")->urgency == interpret::Urgency::now);
  CHECK(!alert(bench, "tumour")->interrupts);  // C2 names what interrupts
  Bench young = sore_knee(2011);
  young.yes("history.fracture_minimal_force", Side::left);
  CHECK(line(young, "tumour") == "msg.alert.tumour.broke");
  Bench unexplained = sore_knee(2011);
  unexplained.yes("history.bone_pain_unexplained", Side::left);
  CHECK(line(unexplained, "tumour") == "msg.alert.tumour.raised");
  Bench adult = sore_knee();
  adult.yes("history.bone_pain_unexplained", Side::left);
  CHECK(!referred(adult, "tumour"));
  adult.yes("history.weight_loss", Side::midline);
  CHECK(referred(adult, "tumour"));
}

// WELLS2003: pitting more on this side, and collateral veins, are a point each.
TEST_CASE("dvt: pitting and new surface veins are a point each, are asked after, and with nothing else to explain it raise it") {
  Bench bench = sore_knee();
  bench.yes("vessel.whole_leg_swollen", Side::left);
  CHECK(asks(bench, "dvt", "vessel.veins_collateral"));
  bench.yes("vessel.oedema_more_this_side", Side::left);
  bench.yes("vessel.veins_collateral", Side::left);
  CHECK(!raised(bench, "dvt"));  // three points, and two off if something else explains it
  bench.yes("history.immobile_or_surgery_recent", Side::midline);
  CHECK(raised(bench, "dvt"));
}
