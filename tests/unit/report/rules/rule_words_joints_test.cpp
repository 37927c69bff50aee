// What the page says of the rules of vessels, a child's hip, worn joints, the sacroiliac joint and the meniscus: whole sentences in every
// outcome that the exams below bring about, none of the words that are never used of a person, and no figure in hundred (C6).
#include "core/report/page_judged.hpp"

#include "tests/unit/interpret/alerts/bench.hpp"
#include "tests/unit/report/forbidden.hpp"
#include "tests/unit/report/has.hpp"

#include <doctest/doctest.h>

#include <map>
#include <set>

using namespace limbledger;
using report_test::has;
using namespace limbledger::interpret_test;

namespace {

std::string all_lines(const Bench& made, const std::string& id, Side side = Side::left) {
  std::string out;
  const auto assessment = made.assess();
  for (const auto& rule : assessment.rules) {
    if (rule.rule.text == id && rule.side == side) {
      for (const std::string& line : report::rule_lines(rule, made.exam, made.person, assessment.as_of, *report::built_in_words(), *made.edition)) {
        out += line + "\n";
      }
    }
  }
  return out;
}

// Every answer and test of an exam turned to one result.
Bench all_answered(const std::string& complaint, int born, const std::map<std::string, std::string>& items, bool yes) {
  Bench made = sore_knee(born);
  made.exam.complaint = {complaint};
  for (const auto& one : items) {
    const auto* known = made.edition->item(one.first);
    REQUIRE_MESSAGE(known != nullptr, one.first);
    for (const Side side : known->sides) {
      if (one.second == "answer") {
        made.answer(one.first, side, yes ? model::AnswerWord::yes : model::AnswerWord::no);
      } else {
        interpret_test::test(made, one.first, side, yes);
      }
    }
  }
  return made;
}

struct Shown {
  std::string complaint;
  int born = 1960;
  std::map<std::string, std::string> items;
  std::set<std::string> rules;
};

std::vector<Shown> shown_exams() {
  return {
      {"calf_pain", 1960, {{"leg.calf_swelling", "answer"}, {"history.cancer_active", "answer"}, {"history.immobile_or_surgery_recent", "answer"},
        {"history.clot_before", "answer"}, {"history.leg_paralysed_or_plaster", "answer"}, {"leg.calf_tender_vein", "answer"}, {"history.breathless", "answer"},
        {"vessel.whole_leg_swollen", "answer"}, {"vessel.oedema_more_this_side", "answer"}, {"vessel.veins_collateral", "answer"},
        {"history.other_cause_as_likely", "answer"}, {"history.examiner_suspects_clot", "answer"}}, {"rule.wells_dvt", "rule.clot_route"}},
      {"acute_knee", 1990, {{"history.knee_dislocated", "answer"}, {"vessel.foot_cold", "answer"}, {"history.pain_out_of_proportion", "answer"},
        {"knee.stretch_pain_calf", "answer"}, {"history.injury_severe_or_crush", "answer"}, {"knee.pain_full_flexion", "test"}, {"knee.pain_forced_extension", "test"},
        {"knee.mcmurray_pain", "test"}, {"history.locking", "answer"}, {"knee.joint_line_medial_tender", "answer"}, {"knee.joint_line_lateral_tender", "answer"}},
       {"rule.lowery"}},
      {"limping_child", 2021, {{"history.refuses_weight", "answer"}, {"history.fever", "answer"}, {"history.unwell", "answer"}}, {}},
      {"chronic_knee", 1960, {{"history.pain_most_days", "answer"}, {"history.pain_with_use", "answer"}, {"history.function_reduced", "answer"}, {"knee.crepitus", "answer"},
        {"knee.bony_enlargement", "answer"}, {"knee.bone_tender_elsewhere", "answer"}, {"knee.patella_tender", "answer"}, {"knee.look_skin_hot_red", "answer"},
        {"history.rapid_worsening", "answer"}, {"history.fever", "answer"}, {"history.weight_loss", "answer"}, {"history.cancer_known", "answer"}},
       {"rule.nice_oa", "rule.acr_knee_oa", "rule.acr_knee_tree_oa", "rule.eular_knee_oa"}},
      {"hip_groin", 1960, {{"history.pain_most_days", "answer"}, {"history.pain_squatting", "answer"}, {"hip.pain_flexion_active", "test"}, {"hip.pain_extension_active", "test"},
        {"hip.scour_adduction", "test"}, {"hip.internal_rotation_overpressure", "test"}}, {"rule.acr_hip_oa", "rule.sutlive"}},
      {"posterior_hip", 1980, {{"pelvis.distraction", "test"}, {"pelvis.compression", "test"}, {"pelvis.thigh_thrust", "test"}, {"pelvis.sacral_thrust", "test"},
        {"pelvis.gaenslen", "test"}}, {"rule.laslett"}},
  };
}

}  // namespace

TEST_CASE("the page says each of these rules in whole sentences, by no word that is never used of a person and in no hundredths") {
  std::set<std::string> said;
  for (const Shown& shown : shown_exams()) {
    for (const bool yes : {false, true}) {
      const Bench made = all_answered(shown.complaint, shown.born, shown.items, yes);
      for (const auto& rule : made.assess().rules) {
        const std::string lines = all_lines(made, rule.rule.text, rule.side);
        CAPTURE(lines);
        said.insert(rule.rule.text);
        CHECK_FALSE(lines.empty());
        CHECK_FALSE(has(lines, "msg."));
        CHECK_FALSE(has(lines, "{"));
        CHECK(report_test::forbidden_in(lines).empty());
      }
      for (const std::string& rule : yes ? shown.rules : std::set<std::string>{}) {
        CHECK_MESSAGE(said.count(rule) == 1, rule);
      }
    }
  }
}

TEST_CASE("the page gives the points for a clot with what each open answer gives, and a count of none with its caution") {
  Bench made = sore_knee();
  made.exam.complaint = {"calf_pain"};
  made.yes("leg.calf_swelling", Side::left);
  const std::string open = all_lines(made, "rule.wells_dvt");
  CHECK(has(open, "Cannot say yet (by what is known -2 to 9 points)"));
  Bench none = all_answered("posterior_hip", 1980,
                            {{"pelvis.distraction", "test"}, {"pelvis.compression", "test"}, {"pelvis.thigh_thrust", "test"}, {"pelvis.sacral_thrust", "test"}, {"pelvis.gaenslen", "test"}}, false);
  const std::string zero = all_lines(none, "rule.laslett");
  // Nobody asked whether the pain draws in, and then somebody who was not sure: the count says which.
  CHECK(has(zero, "NOT ASKED: whether the pain draws toward the middle"));
  none.add("pelvis.lumbar_pain_centralises", Side::midline, model::Answer{model::AnswerWord::unsure});
  CHECK(has(all_lines(none, "rule.laslett"), "not known, though it was asked or tried: whether the pain draws toward the middle"));
  CHECK(has(zero, "0 of 6. Pain of the sacroiliac joint is not excluded"));
}

TEST_CASE("the page says where sets for a worn joint differ, also beside the one that is not met") {
  Bench made = sore_knee();
  made.yes("history.pain_most_days", Side::left);
  made.count("history.morning_stiffness_minutes", 10);
  made.yes("knee.crepitus", Side::left);
  made.no("knee.bony_enlargement", Side::left);
  made.no("knee.look_skin_hot_red", Side::left);
  made.born(1986, 1, 1);
  made.no("knee.bone_tender_elsewhere", Side::left);
  made.no("knee.patella_tender", Side::left);
  made.find("history.morning_stiffness_minutes").value = model::CountValue{{30}};
  CHECK(has(all_lines(made, "rule.acr_knee_oa"), "Not met. A worn knee is not excluded"));
  CHECK(has(all_lines(made, "rule.acr_knee_oa"), "do not say the same"));
  CHECK(has(all_lines(made, "rule.acr_knee_tree_oa"), "do not say the same"));
}
