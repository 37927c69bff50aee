// What is asked, and what is not, beside an alert; and what a limb that does not carry stands for. Sources: clinical safety C2 (class, then time to harm),
// C7, C9 ("withheld means not suggested"), C18 and C21 ("never a provocative test while a flag on that limb is open"); the red flags page, sections 1, 3, 8, 9
// and 17. What is our own rule says so where the alert stands. People and findings are invented.
#include "core/interpret/held.hpp"
#include "core/interpret/judged.hpp"
#include "core/interpret/step/spared.hpp"
#include "core/report/page.hpp"
#include "core/report/page_judged.hpp"
#include "core/report/words/words.hpp"
#include "tests/unit/interpret/alerts/story.hpp"

using namespace limbledger;
using namespace limbledger::interpret_test;

namespace {

// What is asked or suggested and yet on a stop list of an alert of that limb.
std::vector<std::string> asked_against_a_stop(const Bench& bench) {
  std::vector<std::string> wrong;
  const auto made = bench.assess();
  const auto check = [&](const model::ItemId& item, model::Side side) {
    for (const auto& one : made.alerts) {
      const bool here = !one.side || side == model::Side::midline || *one.side == side;
      if (here && std::find(one.stop.begin(), one.stop.end(), item) != one.stop.end()) {
        wrong.push_back(item.text);
      }
    }
  };
  for (const auto& one : made.questions) {
    for (const auto& ask : one.ask) {
      check(ask.item, ask.side);
    }
  }
  for (const auto& one : made.steps) {
    check(one.step, one.side);
  }
  return wrong;
}
bool asks_for(const Bench& bench, const std::string& item) {
  const auto made = bench.assess();
  return std::any_of(made.questions.begin(), made.questions.end(), [&](const auto& one) {
           return std::any_of(one.ask.begin(), one.ask.end(), [&](const auto& ask) { return ask.item.text == item; });
         }) || std::any_of(made.steps.begin(), made.steps.end(), [&](const auto& one) { return one.step.text == item; });
}
std::size_t place_of(const Bench& bench, const std::string& name) {
  const auto made = bench.assess().questions;
  const auto found = std::find_if(made.begin(), made.end(), [&](const auto& one) { return one.question.text == "alert." + name; });
  return static_cast<std::size_t>(found - made.begin());
}
bool grounds_hold(const Bench& bench, const std::string& name, const std::string& item) {
  const auto found = alert(bench, name);
  return found && std::any_of(found->because.begin(), found->because.end(), [&](const auto& id) {
           return std::any_of(bench.exam.findings->begin(), bench.exam.findings->end(), [&](const auto& one) { return one.finding == id && one.item.text == item; });
         });
}
const interpret::RuleResult* rule_named(const std::vector<interpret::RuleResult>& rules, const std::string& name) {
  const auto found = std::find_if(rules.begin(), rules.end(), [&](const auto& one) { return one.rule.text == name; });
  return found == rules.end() ? nullptr : &*found;
}
bool has_word(const interpret::RuleResult& rule, const std::string& word) { return std::find(rule.flags.begin(), rule.flags.end(), model::Word{word}) != rule.flags.end(); }

}  // namespace

TEST_CASE("planted: an infant with a swollen, tender, still thigh has nothing bent for us, and the thigh is splinted") {
  Bench bench = visit("infant_hip", 2026, "history.mechanism not_known; history.weeks_since_onset 0; history.moves_about moves_rolls; hip.leg_not_moved left yes; "
                                          "hip.look_swelling left yes; leg.thigh_shaft_tender left yes; history.fever no; history.unwell no; general.temperature 369");
  REQUIRE(raised(bench, "septic_child"));
  CHECK(asked_against_a_stop(bench).empty());
  CHECK_FALSE(asks_for(bench, "hip.knee_height_lower"));
  CHECK_FALSE(asks_for(bench, "hip.abduction_passive_flexed"));
  CHECK(meanwhile_says(bench, "septic_child", "splint_as_is"));
  tell(bench, "leg.thigh_shaft_tender left no");
  CHECK(meanwhile_says(bench, "septic_child", "position_of_comfort"));
}

TEST_CASE("planted: a leg newly bent after a fall is not turned to look for a slip") {
  Bench bench = visit("limping_child", 2017, "history.mechanism fall; history.weeks_since_onset 0; leg.look_deformity left yes; gait.steps_now 0; history.fever no; history.unwell no");
  REQUIRE(raised(bench, "fracture"));
  CHECK(asked_against_a_stop(bench).empty());
  CHECK_FALSE(asks_for(bench, "hip.internal_rotation_passive_seated"));
}

TEST_CASE("C21: beside an alert of that limb nothing that provokes is asked for, but for what takes the limb within hours; of the other limb it is") {
  const std::string out = "history.mechanism twist; history.weeks_since_onset 0; history.patella_dislocated left yes; ";
  Bench bench = visit("acute_knee", 2000, out);
  REQUIRE(raised(bench, "dislocation"));
  const interpret::View view(bench.exam, bench.person, *bench.edition, day(2026, 11, 24));
  const auto seen = interpret::watch(view);
  const interpret::Spared spared(view, seen.flags);
  const auto flag_of = [&](std::string_view name) -> const interpret::JudgedFlag& {
    return *std::find_if(seen.flags.begin(), seen.flags.end(), [&](const auto& one) { return one.row->alert.text == name && (!one.side || *one.side == Side::left); });
  };
  const auto held = [&](std::string_view item, Side side, std::string_view by) { return spared.holds({bench.edition->item(item), side}, flag_of(by)); };
  CHECK(held("hip.pain_passive_severe", Side::left, "alert.septic_adult"));
  CHECK_FALSE(held("hip.pain_passive_severe", Side::right, "alert.septic_adult"));
  CHECK_FALSE(held("knee.stretch_pain_calf", Side::left, "alert.acs"));
  CHECK_FALSE(held("vessel.foot_cold", Side::left, "alert.ali"));
  CHECK(held("knee.lachman", Side::left, "alert.acs"));  // on the stop list
}

TEST_CASE("C2: beside a knee or kneecap that was out of joint the pressure in the leg is asked after before a clot and an infection") {
  Bench bench = visit("acute_knee", 1990, "history.mechanism hyperextension; history.weeks_since_onset 0; knee.bruising left yes; knee.look_swelling_spread left whole_limb; "
                                          "vessel.pulse_dorsalis_pedis left 1; vessel.pulse_posterior_tibial left 1; nerve.foot_drop left yes");
  REQUIRE(raised(bench, "knee_disloc_vasc"));
  CHECK(place_of(bench, "acs") == 0);
  Bench cap = visit("acute_knee", 2000, "history.mechanism twist; history.weeks_since_onset 0; history.patella_dislocated left yes; knee.look_skin_hot_red left yes; knee.effusion_stroke left 3+");
  REQUIRE(raised(cap, "dislocation"));
  CHECK(place_of(cap, "acs") < place_of(cap, "septic_adult"));
}

TEST_CASE("planted: how old the pain at rest or the sore is is asked of what is there, and after no weeks of a leg hurt today") {
  const std::string poor = "vessel.pulse_dorsalis_pedis left 0; vessel.pulse_posterior_tibial left 1; ";
  Bench bench = visit("wound_or_numb_foot", 1950, poor);
  CHECK_FALSE(asks_for(bench, "history.rest_pain_over_2_weeks"));
  CHECK_FALSE(asks_for(bench, "history.foot_ulcer_over_2_weeks"));
  const interpret::View view(bench.exam, bench.person, *bench.edition, day(2026, 11, 24));
  const auto asked_of = [&](const Bench& made) {
    const interpret::View here(made.exam, made.person, *made.edition, day(2026, 11, 24));
    std::vector<std::string> items;
    for (const auto& one : interpret::judge_flags(here)) {
      for (const auto& ask : one.row->alert.text == "alert.clti" ? one.raised.clue.ask.written() : std::vector<interpret::ToAsk>{}) {
        items.push_back(ask.item->item.text);
      }
    }
    return items;
  };
  const auto has = [](const std::vector<std::string>& items, const char* item) { return std::find(items.begin(), items.end(), item) != items.end(); };
  CHECK(has(asked_of(bench), "history.rest_pain_foot"));
  CHECK(has(asked_of(bench), "skin.ulcer"));
  tell(bench, "history.rest_pain_foot left yes; skin.ulcer left yes");
  CHECK(has(asked_of(bench), "history.rest_pain_over_2_weeks"));
  CHECK(has(asked_of(bench), "history.foot_ulcer_over_2_weeks"));
  Bench today = visit("acute_knee", 1995, "history.mechanism twist; history.weeks_since_onset 0; " + poor);
  CHECK_FALSE(has(asked_of(today), "history.rest_pain_foot"));
  CHECK_FALSE(has(asked_of(today), "history.rest_pain_over_2_weeks"));
}

TEST_CASE("C7: bone of heel, ankle or foot that is tender after an injury, and not a step: broken until a film; a step, no injury or a film says otherwise") {
  const std::string fell = "history.mechanism fall; history.weeks_since_onset 0; ";
  Bench heel = visit("heel_pain", 1984, fell + "gait.steps_now 0; foot.calcaneal_squeeze left positive");
  CHECK(line_of(heel, "fracture") == "heel_carries_not");
  CHECK(meanwhile_says(heel, "fracture", "splint_as_is"));
  CHECK(meanwhile_says(heel, "fracture", "film_heel"));
  CHECK_FALSE(alert(heel, "fracture")->interrupts);
  // Four steps count of a heel, which no rule looks at; of who took none before tender bone is enough.
  tell(heel, "gait.steps_now 2");
  CHECK(line_of(heel, "fracture") == "heel_carries_not");
  tell(heel, "gait.steps_now 4");
  CHECK_FALSE(raised(heel, "fracture"));
  const std::string chair = fell + "body.chair_user yes; history.walks_usually walks_wheelchair; ";
  CHECK(line_of(visit("ankle_injury", 1974, chair + "foot.calcaneal_squeeze left positive"), "fracture") == "heel_carries_not");
  CHECK(line_of(visit("ankle_injury", 1974, chair + "ankle.medial_malleolus_tender left yes"), "fracture") == "foot_carries_not");
  CHECK_FALSE(raised(visit("ankle_injury", 1974, chair + "foot.calcaneal_squeeze left negative"), "fracture"));
  for (const char* tender : {"ankle.lateral_malleolus_tender left yes", "foot.navicular_tender left yes", "foot.lisfranc_line_tender left yes"}) {
    CAPTURE(tender);
    Bench bench = visit("ankle_injury", 1984, fell + "gait.steps_now 0; " + tender);
    CHECK(line_of(bench, "fracture") == "foot_carries_not");
    CHECK(meanwhile_says(bench, "fracture", "film_foot"));
    tell(bench, "gait.steps_now 1");
    CHECK_FALSE(raised(bench, "fracture"));
    tell(bench, "gait.steps_now 0; history.film_result left ankle_fracture_not_seen");
    CHECK_FALSE(raised(bench, "fracture"));
  }
  tell(heel, "history.mechanism no_injury");
  CHECK_FALSE(raised(heel, "fracture"));
  CHECK_FALSE(raised(visit("after_plaster", 1984, fell + "gait.steps_now 0; ankle.lateral_malleolus_tender left yes"), "fracture"));
  CHECK_FALSE(raised(visit("ankle_injury", 1984, fell + "gait.steps_now 0; ankle.lateral_malleolus_tender left no"), "fracture"));
}

TEST_CASE("C7: a negative ankle rule beside a midfoot rule that is contradicted, and the other way round, says so and reassures of neither") {
  const std::string hurt = "history.mechanism twist; history.steps_at_once yes; gait.steps_now 4; history.ankle_rule_exclusions none_of_these; ankle.lateral_malleolus_tender left no; "
                           "ankle.medial_malleolus_tender left no; foot.fifth_metatarsal_base_tender left no; foot.navicular_tender left no; ";
  const auto rules_with = [&](const std::string& more) {
    Bench bench = visit("ankle_injury", 1991, hurt + more);
    bench.exam.injured_on = day(2026, 11, 23);
    return bench.assess().rules;
  };
  const auto of_midfoot = rules_with("foot.pain_midfoot_zone left yes; ankle.pain_malleolar_zone left no; foot.lisfranc_line_tender left yes");
  REQUIRE(rule_named(of_midfoot, "rule.ottawa_midfoot"));
  REQUIRE(rule_named(of_midfoot, "rule.ottawa_ankle"));
  CHECK(has_word(*rule_named(of_midfoot, "rule.ottawa_midfoot"), "contradicted"));
  CHECK(has_word(*rule_named(of_midfoot, "rule.ottawa_ankle"), "contradicted"));
  // The fibula is none of the midfoot: there the rule stands beside one that is contradicted.
  const auto of_ankle = rules_with("foot.pain_midfoot_zone left yes; ankle.pain_malleolar_zone left no; leg.fibular_neck_tender left yes");
  CHECK(has_word(*rule_named(of_ankle, "rule.ottawa_ankle"), "contradicted"));
  CHECK(has_word(*rule_named(of_ankle, "rule.ottawa_midfoot"), "beside_contradicted"));
  // Who was asked to walk and could not, or is told not to bear weight, took no steps by no number: no criterion, and no film refused.
  for (const char* stopped : {"gait.steps_now pain", "gait.steps_now unable", "gait.steps_now declined; history.weight_bearing left bears_not", "gait.steps_now declined; gait.pattern left will_not_walk"}) {
    CAPTURE(stopped);
    const auto walks_not = rules_with(std::string("foot.pain_midfoot_zone left no; ankle.pain_malleolar_zone left yes; ") + stopped);
    REQUIRE(rule_named(walks_not, "rule.ottawa_ankle"));
    CHECK(rule_named(walks_not, "rule.ottawa_ankle")->outcome == interpret::Outcome::negative);  // by its letter: four steps were taken at once
    CHECK(has_word(*rule_named(walks_not, "rule.ottawa_ankle"), "contradicted"));
  }
  const auto quiet = rules_with("foot.pain_midfoot_zone left yes; ankle.pain_malleolar_zone left no");
  REQUIRE(rule_named(quiet, "rule.ottawa_ankle"));
  CHECK(rule_named(quiet, "rule.ottawa_ankle")->outcome == interpret::Outcome::negative);
  CHECK(rule_named(quiet, "rule.ottawa_ankle")->flags.empty());
}

// Clinical safety, C7: "bone is tender where the rule does not look ... never prints film not required".
TEST_CASE("C7: whatever bone of foot, shin or fibula is tender, and the line of the midfoot by whatever test, no rule of that leg says that no film is required") {
  const std::string foot = "history.mechanism twist; history.steps_at_once yes; gait.steps_now 4; history.ankle_rule_exclusions none_of_these; ankle.pain_malleolar_zone left yes; "
                           "foot.pain_midfoot_zone left yes; ankle.lateral_malleolus_tender left no; ankle.medial_malleolus_tender left no; foot.fifth_metatarsal_base_tender left no; "
                           "foot.navicular_tender left no; ";
  const std::string knee = "history.mechanism twist; history.steps_at_once yes; gait.steps_now 4; history.knee_rule_exclusions none_of_these; knee.flexion_active left 120; "
                           "knee.patella_tender left no; knee.fibular_head_tender left no; knee.bone_tender_elsewhere left no; ";
  const auto unsettled = [](const std::string& complaint, const std::string& story) {
    Bench bench = visit(complaint, 1991, story);
    bench.exam.injured_on = day(2026, 11, 23);
    std::size_t doubted = 0;
    for (const auto& rule : bench.assess().rules) {
      const bool film = rule.rule.text.starts_with("rule.ottawa_") || rule.rule.text == "rule.pittsburgh_knee";
      REQUIRE((!film || rule.outcome == interpret::Outcome::negative));
      doubted += film && (has_word(rule, "contradicted") || has_word(rule, "beside_contradicted")) ? 1U : 0U;
    }
    return doubted;
  };
  for (const char* bone : {"foot.lisfranc_tender_joints left joint_second", "foot.lisfranc_tender_joints left joint_first+joint_third", "foot.piano_key left positive", "foot.lisfranc_line_tender left yes",
                           "foot.metatarsal_first_tender left yes", "foot.metatarsal_fifth_tender left yes", "foot.toe_bones_tender left yes", "foot.sesamoid_medial_tender left yes",
                           "foot.cuboid_tender left yes", "foot.calcaneal_squeeze left positive", "leg.fibular_shaft_tender left yes", "leg.tibial_spot_tender left yes"}) {
    CAPTURE(bone);
    CHECK(unsettled("ankle_injury", foot + bone) == 2);
  }
  CHECK(unsettled("ankle_injury", foot) == 0);
  CHECK(unsettled("ankle_injury", foot + "foot.lisfranc_tender_joints left joint_none; foot.piano_key left negative; foot.metatarsal_fifth_tender right yes") == 0);
  for (const char* bone : {"leg.tibial_crest_tender left yes", "leg.fibular_neck_tender left yes", "leg.shin_squeeze left positive", "leg.thigh_shaft_tender left yes", "knee.tibial_tubercle_tender left yes"}) {
    CAPTURE(bone);
    CHECK(unsettled("acute_knee", knee + bone) == 2);
  }
  CHECK(unsettled("acute_knee", knee) == 0);
  CHECK(unsettled("acute_knee", knee + "leg.tibial_crest_tender left no; leg.tibial_crest_tender right yes") == 0);
}

// C21 ("never a provocative test while a flag on that limb is open; painless before painful"); the red flags page, section 10 ("calf stretching, deep palpation").
TEST_CASE("C21: no calf is squeezed and no hip opened for us beside an alert of that limb; without one it is asked for") {
  for (const char* story : {"history.injury_severe_or_crush yes; history.pain_out_of_proportion left yes", "skin.deep_wound left wound_sting_or_snake; history.compartment_causes left cause_snake",
                            "history.mechanism fall; history.weeks_since_onset 0; gait.steps_now 0; ankle.lateral_malleolus_tender left yes",
                            "history.examiner_suspects_clot yes; leg.calf_swelling left yes; leg.calf_tender_vein left yes"}) {
    CAPTURE(story);
    Bench bench = visit("ankle_injury", 1990, story);
    if (std::string(story).starts_with("history.injury")) {
      tell(bench, "history.mechanism vehicle");
    }
    REQUIRE_FALSE(bench.assess().alerts.empty());
    CHECK_FALSE(asks_for(bench, "ankle.calf_squeeze"));
  }
  Bench sprain = visit("ankle_injury", 1990, "history.mechanism twist; history.weeks_since_onset 0; ankle.look_deformity left no; history.pain_out_of_proportion left no; knee.stretch_pain_calf left no; "
                                             "vessel.foot_cold left no; vessel.pulse_dorsalis_pedis left 2; vessel.pulse_posterior_tibial left 2");
  CHECK(asks_for(sprain, "ankle.calf_squeeze"));
  Bench infant = visit("infant_hip", 2026, "history.mechanism no_injury; leg.thigh_shaft_tender left yes; general.temperature 384; history.fever no; history.unwell no");
  REQUIRE(raised(infant, "osteomyelitis"));
  for (const char* moved : {"hip.abduction_passive_flexed", "hip.knee_height_lower"}) {
    CHECK_FALSE(asks_for(infant, moved));
  }
  CHECK(asks_for(visit("infant_hip", 2026, "history.mechanism no_injury; general.temperature 369; history.fever no; history.unwell no"), "hip.abduction_passive_flexed"));
  // Bone pain and a lump leave a child's hip to be turned.
  const Bench pain = visit("chronic_knee", 2013, "history.mechanism no_injury; history.night_pain yes; history.night_pain_relieved_by_turning no; history.weeks_since_onset 4; leg.tibial_spot_tender left yes; "
                                                 "gait.limp no; history.fever no; general.temperature 368; history.unwell no; gait.steps_now 4");
  REQUIRE(raised(pain, "tumour"));
  CHECK(asks_for(pain, "hip.internal_rotation_passive_seated"));
  const auto compartment = question(visit("ankle_injury", 1990, "history.mechanism twist; history.weeks_since_onset 0"), "acs");
  REQUIRE(compartment);
  CHECK(compartment->ask.front().item.text == "history.pain_out_of_proportion");
}

// C2 ("class; time to harm"); the red flags page, section 11: both halves of what the nerves of the back do are asked.
TEST_CASE("C2: what is asked first goes with the alert that stands: the other half of saddle and bladder, the leg that has hours, and not a foot that two say two things of") {
  const Bench saddle = visit("back_leg", 1976, "history.mechanism no_injury; history.back_pain yes; history.saddle_numbness yes");
  REQUIRE(raised(saddle, "ces"));
  CHECK(place_of(saddle, "ces") == 0);
  CHECK(asks(saddle, "ces", "history.bladder_bowel_change"));
  CHECK(asks(visit("back_leg", 1976, "history.mechanism no_injury; history.back_pain yes; history.bladder_bowel_change yes"), "ces", "history.saddle_numbness"));
  CHECK_FALSE(question(visit("back_leg", 1976, "history.mechanism no_injury; history.back_pain yes; history.saddle_numbness yes; history.bladder_bowel_change no"), "ces"));
  const std::string pale = "history.mechanism no_injury; history.weeks_since_onset 0; history.cold_pale_sudden left yes; vessel.foot_cold left yes; nerve.sensation_foot_reduced left yes; "
                           "vessel.pulse_dorsalis_pedis left 0; vessel.pulse_posterior_tibial left 0; vessel.pulse_dorsalis_pedis right 1; vessel.pulse_posterior_tibial right 1";
  const Bench blood = visit("calf_pain", 1956, pale);
  REQUIRE(raised(blood, "ali"));
  REQUIRE_FALSE(blood.assess().questions.empty());
  CHECK(blood.assess().questions.front().side == Side::left);
  const Bench knee = visit("acute_knee", 1996, "history.mechanism dashboard; gait.steps_now 4; vessel.pulse_dorsalis_pedis left 0; vessel.pulse_posterior_tibial left 0; knee.effusion_stroke left 2+; "
                                               "vessel.foot_cold left yes");
  REQUIRE(raised(knee, "ali"));
  CHECK(place_of(knee, "acs") < place_of(knee, "septic_adult"));
  Bench twice = visit("acute_knee", 1999, "history.mechanism vehicle; history.weeks_since_onset 0; history.knee_dislocated left yes; nerve.sensation_foot_reduced left no");
  model::Finding other = *std::find_if(twice.exam.findings->begin(), twice.exam.findings->end(), [](const auto& one) { return one.item.text == "nerve.sensation_foot_reduced"; });
  other.finding = id_of(60500);
  other.value = model::Answer{model::AnswerWord::yes};
  twice.exam.findings->push_back(other);
  CHECK_FALSE(question(twice, "ces"));
  REQUIRE_FALSE(twice.assess().questions.empty());
  CHECK(twice.assess().questions.front().side == Side::left);
}

// Clinical safety, part A and C7: a rule speaks of what it looks at; a film of another part is no reason for or against its own.
TEST_CASE("a film of the hip beside a negative rule of ankle or knee is said to be of another part") {
  const std::string foot = "history.mechanism fall; history.steps_at_once yes; gait.steps_now 4; history.ankle_rule_exclusions none_of_these; ankle.pain_malleolar_zone left yes; "
                           "ankle.lateral_malleolus_tender left no; ankle.medial_malleolus_tender left no; ";
  const auto page = [](const std::string& story) {
    Bench bench = visit("ankle_injury", 1954, story);
    bench.exam.injured_on = day(2026, 11, 23);
    std::string said = report::exam_page(bench.exam, bench.person, bench.assess(), *report::built_in_words(), *bench.edition);
    std::replace(said.begin(), said.end(), '\n', ' ');
    for (std::size_t at = said.find("  "); at != std::string::npos; at = said.find("  ")) {
      said.erase(at, 1);
    }
    return said;
  };
  const std::string sore = page(foot + "hip.log_roll left positive");
  CHECK_MESSAGE(sore.find("A film of another part is asked for above (") != std::string::npos, sore);
  CHECK(sore.find("whatever the rule says by itself") == std::string::npos);
  CHECK(page(foot + "hip.log_roll left negative; history.mechanism twist").find("A film of another part") == std::string::npos);
}

TEST_CASE("planted: skin over the ankle is asked after where ankle or foot is bent; of a bent thigh or shin the wound is") {
  const std::string fell = "history.mechanism fall; history.weeks_since_onset 0; ";
  const Bench shin = visit("limping_child", 2017, fell + "leg.look_deformity left yes; gait.steps_now 0; history.fever no; history.unwell no");
  REQUIRE(raised(shin, "fracture"));
  CHECK_FALSE(asks_for(shin, "ankle.skin_tented"));
  CHECK(asks(shin, "open_fx", "skin.wound_over_bone"));
  CHECK(asks(visit("ankle_injury", 1990, fell + "ankle.look_deformity left yes"), "open_fx", "ankle.skin_tented"));
  CHECK(asks(visit("ankle_injury", 1990, fell + "ankle.look_deformity left yes; leg.look_deformity left yes"), "open_fx", "ankle.skin_tented"));
  CHECK(raised(visit("ankle_injury", 1990, fell + "leg.look_deformity left yes; ankle.skin_tented left yes"), "open_fx"));
}

TEST_CASE("C18: bone pain and a lump are of the side of what was found, and rest on it; a lump in the soft parts is no bone pain and needs no crutches") {
  const std::string night = "history.mechanism no_injury; history.weeks_since_onset 6; history.night_pain yes; history.night_pain_relieved_by_turning no; ";
  Bench bone = visit("chronic_knee", 2012, night + "leg.thigh_shaft_tender left yes");
  REQUIRE(raised(bone, "tumour"));
  CHECK(alert(bone, "tumour")->side == Side::left);
  CHECK(grounds_hold(bone, "tumour", "leg.thigh_shaft_tender"));
  CHECK(meanwhile_says(bone, "tumour", "protect_from_break"));
  Bench other = visit("chronic_knee", 2012, night + "leg.thigh_shaft_tender right yes");
  CHECK_FALSE(alert(other, "tumour")->side);  // pain at night of the left, bone of the right: the grounds name theirs
  CHECK(grounds_hold(other, "tumour", "leg.thigh_shaft_tender"));
  // By the words for it no side is claimed, and none is said to be unrecorded while two are.
  CHECK(report::alert_text(*alert(other, "tumour"), *report::built_in_words()).find("48 hours, LEFT OR RIGHT (the record names no one side): at night") != std::string::npos);
  CHECK(alert(visit("chronic_knee", 2012, night), "tumour")->side == Side::left);  // of the side complained of
  Bench lump = visit("chronic_knee", 2012, "skin.lump right yes; skin.lump_size right 51; skin.lump_features right none_of_these");
  REQUIRE(line_of(lump, "tumour") == "lump");
  CHECK(alert(lump, "tumour")->side == Side::right);
  CHECK_FALSE(meanwhile_says(lump, "tumour", "protect_from_break"));
  CHECK(meanwhile_says(lump, "tumour", "no_needle"));
  // A second, small lump of the other leg takes the side away from none; two that are large are of both, and said so.
  tell(lump, "skin.lump left yes; skin.lump_size left 20");
  CHECK(alert(lump, "tumour")->side == Side::right);
  Bench two = visit("chronic_knee", 2012, "skin.lump both yes; skin.lump_size both 60");
  CHECK(line_of(two, "tumour") == "lump_both");
  CHECK(report::alert_text(*alert(two, "tumour"), *report::built_in_words()).find("LEFT AND RIGHT") != std::string::npos);
  CHECK_FALSE(meanwhile_says(two, "tumour", "protect_from_break"));
  CHECK(line_of(visit("chronic_knee", 2012, night + "leg.tibial_spot_tender both yes"), "tumour") == "raised_both");
  CHECK(referral_of(visit("chronic_knee", 1976, "skin.lump both yes; skin.lump_size both 60"), "tumour") == "tumour.lump_both");
  CHECK(referral_of(visit("chronic_knee", 1976, "skin.lump both yes; skin.lump_size left 60; skin.lump_size right 20"), "tumour") == "tumour.lump");
  tell(lump, "skin.lump_features right lump_on_bone");
  CHECK(meanwhile_says(lump, "tumour", "protect_from_break"));
  Bench stays = visit("chronic_knee", 2012, "history.mechanism no_injury; knee.look_swelling_spread left local; history.weeks_since_onset 8");
  CHECK(line_of(stays, "tumour") == "lump_stays");
  tell(lump, night);
  CHECK(line_of(lump, "tumour") == "raised");  // bone pain beside it is named
}

TEST_CASE("planted: an infected bone and an open break are asked after at the part complained of, not at the knee") {
  const auto of_knee = [](const Bench& bench) {
    const interpret::View view(bench.exam, bench.person, *bench.edition, day(2026, 11, 24));
    bool any = false;
    for (const auto& one : interpret::judge_flags(view)) {
      const bool here = one.raised.clue.warm() && (one.row->alert.text == "alert.osteomyelitis" || one.row->alert.text == "alert.open_fx");
      for (const auto& ask : here ? one.raised.clue.ask.written() : std::vector<interpret::ToAsk>{}) {
        any = any || ask.item->region.text == "knee";
      }
    }
    return any;
  };
  CHECK_FALSE(of_knee(visit("forefoot_pain", 1990, "history.mechanism no_injury; foot.metatarsal_third_tender left yes; history.fever no")));
  CHECK_FALSE(of_knee(visit("ankle_injury", 1990, "skin.deep_wound left wound_sting_or_snake; history.weeks_since_onset 0")));
  CHECK_FALSE(of_knee(visit("hip_groin", 1950, "history.mechanism no_injury; leg.thigh_shaft_tender left yes; history.fever no")));
  CHECK(of_knee(visit("chronic_knee", 1990, "history.mechanism no_injury; knee.bone_tender_elsewhere left yes")));
}
