// Planted cases in which an alert must not stay silent: a pulse that could not be felt, a hot joint of a child, a complaint of weeks over a
// sign of today, and two answers that differ. Sources: the red flags page (joint of a child, infected joint, limb without blood), clinical
// safety C2, C3, C13; what is our own convention says so where it stands. All is invented.
#include "tests/outside/knee_document.hpp"

using namespace limbledger;
using limbledger::tests::KneeVisit;
using limbledger::tests::visit_with;

namespace {

std::optional<interpret::Alert> silent_alert(const KneeVisit& visit, const std::string& name) {
  for (const interpret::Alert& one : visit.assess().alerts) {
    if (one.alert.text == "alert." + name && one.side == model::Side::left) {
      return one;
    }
  }
  return std::nullopt;
}
std::string silent_line(const KneeVisit& visit, const std::string& name) {
  const auto found = silent_alert(visit, name);
  return found ? found->message.text.substr(found->message.text.rfind('.') + 1) : "none";
}
std::string silent_flag(const KneeVisit& visit, const std::string& name) {
  for (const interpret::Flag& one : visit.assess().flags) {
    if (one.flag.text == "alert." + name && one.side == model::Side::left) {
      return std::string(wire::type_of<interpret::FlagAnswer>().words[static_cast<std::size_t>(one.answer)]);
    }
  }
  return "no flag";
}
bool silent_apart(const KneeVisit& visit) {
  const auto all = visit.assess().contradictions;
  return std::any_of(all.begin(), all.end(), [&](const interpret::Contradiction& one) { return one.contradiction.text == "contradiction.two_answers:left"; });
}

const std::string felt_for = "vessel.pulse_dorsalis_pedis left not:not_palpable;vessel.pulse_posterior_tibial left not:not_palpable";
const std::string absent = "vessel.pulse_dorsalis_pedis left grade:0;vessel.pulse_posterior_tibial left grade:0";

}  // namespace

// Each case twice: as grade 0, which the page's examples have, and as "could not be felt". The same is said of both.
TEST_CASE("planted: a pulse that was not done because it could not be felt is a pulse of grade 0, for every alert and rule") {
  const std::string numb = ";nerve.sensation_foot_reduced left answer:yes;history.weeks_since_onset midline count:0;vessel.pulse_dorsalis_pedis right grade:2";
  const std::string out = ";history.knee_dislocated left answer:yes;ankle.movement left answer:no";
  struct Case {
    std::string complaint;
    std::string lines;
    std::string injured_on;
    std::string alert;
  };
  const std::vector<Case> cases{{"calf_pain", numb, "", "ali"},
                                {"acute_knee", out, "2026-11-24", "knee_disloc_vasc"},
                                {"acute_knee", out, "2026-11-24", "ali"},
                                {"acute_knee", "", "2026-11-24", "ali"}};
  for (const Case& one : cases) {
    CAPTURE(one.complaint);
    CAPTURE(one.alert);
    const KneeVisit graded = visit_with(one.complaint, "1961-01-01", absent + one.lines, one.injured_on);
    const KneeVisit undone = visit_with(one.complaint, "1961-01-01", felt_for + one.lines, one.injured_on);
    CHECK(silent_line(undone, one.alert) == silent_line(graded, one.alert));
    REQUIRE(silent_line(undone, one.alert) != "none");
    CHECK(silent_alert(undone, one.alert)->interrupts);
  }
  const KneeVisit rule = visit_with("acute_knee", "1990-01-01", felt_for + out, "2026-11-24");
  CHECK(rule.rule("knee_vessels").outcome == visit_with("acute_knee", "1990-01-01", absent + out, "2026-11-24").rule("knee_vessels").outcome);
  CHECK(rule.rule("knee_vessels").outcome == interpret::Outcome::positive);
  // Under a plaster nobody felt for it, and nothing else than a pulse is read so.
  CHECK(silent_line(visit_with("acute_knee", "1990-01-01", "vessel.pulse_dorsalis_pedis left not:covered;vessel.pulse_posterior_tibial left not:covered", "2026-11-24"), "ali") ==
        "none");
}

// LIMP_RCHT for the fever; that heat or fluid in the joint stands for the limp is our convention, as that an injury explains fluid alone.
TEST_CASE("planted: a hot or full joint of a child with a fever is raised without a limp, and what was found makes a no impossible") {
  const std::string still = "gait.limp midline answer:no;knee.flexion_passive left 140 goniometer_long";
  for (const char* found : {"knee.look_skin_hot_red left answer:yes", "knee.effusion_stroke left grade:3+", "ankle.hot_red left answer:yes"}) {
    CAPTURE(found);
    const KneeVisit burning = visit_with("limping_child", "2020-01-01", still + ";" + found + ";general.temperature midline cel:39.2");
    CHECK(silent_line(burning, "septic_child") == "burning");
    CHECK(silent_alert(burning, "septic_child")->urgency == interpret::Urgency::same_day);
    const KneeVisit cool = visit_with("limping_child", "2020-01-01", still + ";" + found + ";general.temperature midline cel:36.8;history.fever midline answer:no");
    CHECK(silent_line(cool, "septic_child") == "none");
    CHECK(silent_flag(cool, "septic_child") != "asked_no");
    const KneeVisit untaken = visit_with("limping_child", "2020-01-01", still + ";" + found);
    CHECK(silent_flag(untaken, "septic_child") == "not_asked");
  }
  const KneeVisit hurt = visit_with("acute_knee", "2014-01-01", "knee.look_skin_hot_red left answer:yes;knee.effusion_stroke left grade:3+;gait.limp midline answer:no;"
                                                                  "knee.flexion_passive left 20 goniometer_long;general.temperature midline cel:39.9", "2026-11-20");
  CHECK(silent_line(hurt, "septic_child") == "burning");
  // Nothing found: a fever alone still asks whether the joint is hot, and a well child is answered.
  CHECK(silent_flag(visit_with("limping_child", "2020-01-01", still + ";general.temperature midline cel:39.2"), "septic_child") == "not_asked");
  CHECK(silent_flag(visit_with("limping_child", "2020-01-01", still + ";general.temperature midline cel:36.8;history.fever midline answer:no"), "septic_child") == "asked_no");
}

// How long a complaint has lasted is not how long today's sign has been there: our convention, beyond the page's two weeks.
TEST_CASE("planted: weeks since it began do not take away what is there today, a foot without blood or a burning joint") {
  const std::string cold = absent + ";vessel.foot_cold left answer:yes";
  for (const char* weeks : {"0", "3", "10"}) {
    CAPTURE(weeks);
    const std::string since = ";history.weeks_since_onset midline count:" + std::string(weeks);
    CHECK(silent_line(visit_with("chronic_knee", "1954-01-01", cold + since), "ali") == "no_pulse");
    const KneeVisit plaster = visit_with("after_plaster", "2001-01-01", "vessel.foot_cold left answer:yes;vessel.pulse_dorsalis_pedis left grade:0;vessel.pulse_posterior_tibial left not:covered;"
                                                                          "nerve.sensation_foot_reduced left answer:yes;ankle.movement left answer:no" + since);
    CHECK(silent_line(plaster, "ali") != "none");
    CHECK(silent_alert(plaster, "ali")->interrupts);
    const std::string joint = "knee.look_skin_hot_red left answer:yes;knee.effusion_stroke left grade:3+;knee.joint_line_medial_tender left answer:yes;"
                              "knee.flexion_active left 30 goniometer_long;general.temperature midline cel:39.6";
    CHECK(silent_line(visit_with("chronic_knee", "1986-01-01", joint + since), "septic_adult") == "raised");
    const std::string hip = "hip.pain_passive_severe left answer:yes;hip.log_roll left test:positive;general.temperature midline cel:39.6";
    CHECK(silent_line(visit_with("hip_groin", "1986-01-01", hip + since), "septic_adult") == "hip");
  }
  // Pain of the foot at rest that is known to last is the other trouble, and a swollen knee of weeks without a high fever stays with its own.
  CHECK(silent_line(visit_with("whole_limb", "1954-01-01", cold + ";history.rest_pain_over_2_weeks left answer:yes"), "ali") == "none");
  CHECK(silent_line(visit_with("chronic_knee", "1986-01-01", "knee.look_skin_hot_red left answer:yes;knee.effusion_stroke left grade:3+;knee.joint_line_medial_tender left answer:yes;"
                                                               "knee.flexion_active left 30 goniometer_long;general.temperature midline cel:37.2;history.weeks_since_onset midline count:8"),
                    "septic_adult") == "none");
}

// Nothing acknowledged is lost: of two answers that both stand the one that raises more counts (our convention), and which holds is asked.
TEST_CASE("planted: two standing answers that differ leave the alert raised, and are named under what does not fit") {
  const KneeVisit both = visit_with("acute_knee", "2001-01-01", "vessel.foot_cold left answer:yes;vessel.foot_cold left answer:no;"
                                                                  "vessel.pulse_dorsalis_pedis left grade:0;vessel.pulse_dorsalis_pedis left grade:2", "2026-11-24");
  CHECK(silent_line(both, "ali") != "none");
  CHECK(silent_apart(both));
  // A movement that is there and is not: the no is what raises.
  const KneeVisit moves = visit_with("acute_knee", "2001-01-01", "vessel.foot_cold left answer:yes;ankle.movement left answer:yes;ankle.movement left answer:no", "2026-11-24");
  CHECK(silent_line(moves, "ali") != "none");
  // The same said twice is no conflict; two that differ of what raises nothing raise nothing.
  CHECK_FALSE(silent_apart(visit_with("acute_knee", "2001-01-01", "vessel.foot_cold left answer:no;vessel.foot_cold left answer:no", "2026-11-24")));
  CHECK(silent_line(visit_with("acute_knee", "2001-01-01", "history.pop left answer:no;history.pop left answer:yes", "2026-11-24"), "ali") == "none");
}

// However much else was told in two ways, before it or after it in the order of the items, and of however much that it asks for itself.
TEST_CASE("planted: a limb without blood that one of two answers tells of is raised beside any number of other contradictions") {
  const std::string cold = "vessel.pulse_dorsalis_pedis left grade:0;vessel.pulse_posterior_tibial left grade:0;vessel.foot_cold left answer:yes;vessel.foot_cold left answer:no";
  const std::vector<std::string> others{"ankle.atfl_tender", "ankle.cfl_tender", "ankle.ptfl_tender", "ankle.deltoid_tender", "history.giving_way", "history.locking", "history.pop",
                                        "ankle.hot_red", "knee.look_open_wound", "knee.joint_line_medial_tender", "knee.look_skin_hot_red", "history.swelling_noticed"};
  REQUIRE(silent_line(visit_with("acute_knee", "1980-01-01", cold), "ali") != "none");
  std::string lines = cold;
  for (const std::string& other : others) {
    lines += ";" + other + " left answer:yes;" + other + " left answer:no";
    CAPTURE(lines);
    const KneeVisit visit = visit_with("acute_knee", "1980-01-01", lines);
    CHECK(silent_line(visit, "ali") == silent_line(visit_with("acute_knee", "1980-01-01", cold), "ali"));
    REQUIRE(silent_alert(visit, "ali"));
    CHECK(silent_alert(visit, "ali")->interrupts);
  }
  // With the knee out of line told both ways as well it is the knee's line that tells of the pulse, and the foot's stands inside it (C2).
  const KneeVisit knee_too = visit_with("acute_knee", "1980-01-01", lines + ";knee.look_deformity left answer:yes;knee.look_deformity left answer:no");
  CHECK(silent_line(knee_too, "knee_disloc_vasc") == "no_pulse");
  CHECK(silent_line(knee_too, "ali") == "none");
  CHECK(silent_flag(knee_too, "ali") == "raised");
  // Every sign of the foot told both ways, so that only the worse of each together raises it.
  const KneeVisit all = visit_with("acute_knee", "1980-01-01",
                                     lines + ";vessel.pulse_dorsalis_pedis left grade:2;vessel.pulse_posterior_tibial left grade:2;ankle.movement left answer:yes;ankle.movement left answer:no;"
                                             "history.rest_pain_foot left answer:yes;history.rest_pain_foot left answer:no;nerve.sensation_foot_reduced left answer:yes;"
                                             "nerve.sensation_foot_reduced left answer:no");
  REQUIRE(silent_alert(all, "ali"));
  CHECK(silent_alert(all, "ali")->urgency == interpret::Urgency::now);
}
