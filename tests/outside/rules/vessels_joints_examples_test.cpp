// The worked examples of the rules of vessels, a child's hip, worn joints, the sacroiliac joint and the meniscus, each as an exam whose
// findings hold the example's numbers: what a number on the limit does is read from the finding, not from a class. Editions and sources
// stand in tests/outside/data/rules/rule_examples_vessels_joints.csv. People are invented.
#include "core/reference/edition.hpp"
#include "tests/outside/truth_table.hpp"
#include "tests/unit/interpret/alerts/bench.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <functional>
#include <set>

using namespace limbledger;
using namespace limbledger::interpret_test;

namespace {

using Setter = std::function<void(Bench&, const std::string&)>;

struct ExampleRule {
  std::string rule;
  std::string complaint;
  std::map<std::string, Setter> inputs;
  std::map<std::string, std::set<std::string>> named;  // the example's input -> ours
  std::function<void(Bench&)> besides = [](Bench&) {};
};

bool is_true(const std::string& value) { return value == "true"; }

Setter answer_at(const std::string& item, Side side = Side::left) {
  return [item, side](Bench& made, const std::string& value) { made.answer(item, side, is_true(value) ? model::AnswerWord::yes : model::AnswerWord::no); };
}
Setter test_at(const std::string& item, Side side = Side::left) {
  return [item, side](Bench& made, const std::string& value) { interpret_test::test(made, item, side, is_true(value)); };
}
Setter count_at(const std::string& item, std::int64_t times = 1) {
  return [item, times](Bench& made, const std::string& value) { made.count(item, std::stoll(value) * times); };
}
const Setter of_age = [](Bench& made, const std::string& value) { made.born(2026 - std::stoi(value), 1, 1); };
const Setter nothing = [](Bench&, const std::string&) {};

void turn_inward(Bench& made, const std::string& value) { inward(made, Side::left, std::stoll(value)); }

std::int64_t tenths_of(const std::string& value) {
  const auto dot = value.find('.');
  return std::stoll(value.substr(0, dot)) * 10 + (dot == std::string::npos ? 0 : std::stoll(value.substr(dot + 1, 1)));
}

std::map<std::string, Setter> wells_inputs_set() {
  return {{"age", of_age},
          {"pregnant", [](Bench& made, const std::string& value) { made.answer("body.pregnancy", Side::midline, is_true(value) ? model::AnswerWord::yes : model::AnswerWord::no); }},
          {"cancer", answer_at("history.cancer_active", Side::midline)},
          {"paralysis", answer_at("history.leg_paralysed_or_plaster")},
          {"bed", answer_at("history.immobile_or_surgery_recent", Side::midline)},
          {"tender", answer_at("leg.calf_tender_vein")},
          {"whole", answer_at("vessel.whole_leg_swollen")},
          {"calf_mm",
           [](Bench& made, const std::string& value) {
             for (const auto& [side, mm] : {std::pair(Side::left, std::int64_t{350 + std::stoll(value)}), std::pair(Side::right, std::int64_t{350})}) {
               model::Length length;
               length.mm = model::Millimetres{mm};
               made.add("leg.calf_girth_10cm", side, length);
             }
           }},
          {"pit", answer_at("vessel.oedema_more_this_side")},
          {"collat", answer_at("vessel.veins_collateral")},
          {"prior", answer_at("history.clot_before", Side::midline)},
          {"alt", answer_at("history.other_cause_as_likely")}};
}

std::map<std::string, ExampleRule> example_rules() {
  const auto suspected = [](Bench& made) { made.yes("history.examiner_suspects_clot", Side::midline); };
  const auto child = [](Bench& made) { made.born(2021, 1, 1); };
  std::map<std::string, ExampleRule> all;
  all["kocher"] = {"rule.kocher",
                   "limping_child",
                   {{"age", of_age},
                    {"excl",
                     [](Bench& made, const std::string& value) {
                       made.add("history.hip_count_exclusions", Side::midline, model::Choices{{{is_true(value) ? "ex_kidney" : "none_of_these"}}});
                     }},
                    {"fever_max",
                     [](Bench& made, const std::string& value) {
                       model::Temperature warmest;
                       warmest.cel = model::Celsius{tenths_of(value)};
                       made.add("general.temperature_highest_7_days", Side::midline, warmest);
                     }},
                    {"nwb", answer_at("history.refuses_weight")},
                    {"esr", count_at("general.lab_esr")},
                    {"wbc", [](Bench& made, const std::string& value) { made.count("general.lab_white_cells", tenths_of(value) * 100); }}},
                   {{"esr", {"esr_high"}}, {"wbc", {"white_cells_high"}}, {"nwb", {"no_weight"}}}};
  all["crp2"] = {"rule.singhal", "limping_child", {{"nwb", answer_at("history.refuses_weight")}, {"crp", count_at("general.lab_crp")}}, {{"nwb", {"no_weight"}}},
                 [child](Bench& made) {
                   child(made);
                   made.add("history.hip_count_exclusions", Side::midline, model::Choices{{{"none_of_these"}}});
                 }};
  all["wells03"] = {"rule.wells_dvt", "calf_pain", wells_inputs_set(), {{"alt", {"other_cause"}}, {"calf_mm", {"calf_thicker"}}}, suspected};
  all["wells97"] = {"rule.wells_dvt_1997", "calf_pain", wells_inputs_set(), {}, suspected};
  all["kd"] = {"rule.knee_vessels",
               "acute_knee",
               {{"hard",
                 [](Bench& made, const std::string& value) {
                   for (const char* item : {"vessel.foot_cold", "vessel.haematoma_expanding", "vessel.bleeding_active", "vessel.bruit_popliteal", "vessel.thrill"}) {
                     answer_at(item)(made, value);
                   }
                 }},
                {"dist_pulse",
                 [](Bench& made, const std::string& value) {
                   pulses(made, Side::left, value == "normal" ? "2" : (value == "reduced" ? "1" : "0"));
                   pulses(made, Side::right, "2");
                 }},
                {"ankle", [](Bench& made, const std::string& value) { pressure(made, "vessel.pressure_posterior_tibial", Side::left, std::stoll(value)); }},
                {"brach", [](Bench& made, const std::string& value) { pressure(made, "vessel.pressure_arm", Side::left, std::stoll(value)); }},
                {"reduced", answer_at("history.joint_put_back")}},
               {{"ankle", {"pressure_ratio"}}},
               [](Bench& made) { made.yes("history.knee_dislocated", Side::left); }};
  const auto stiff = count_at("history.morning_stiffness_minutes");
  all["acrk"] = {"rule.acr_knee_oa",
                 "chronic_knee",
                 {{"age", of_age},
                  {"pain", answer_at("history.pain_most_days")},
                  {"stiff", stiff},
                  {"crep", answer_at("knee.crepitus")},
                  {"btend",
                   [](Bench& made, const std::string& value) {
                     answer_at("knee.bone_tender_elsewhere")(made, value);
                     answer_at("knee.patella_tender")(made, value);
                   }},
                  {"benl", answer_at("knee.bony_enlargement")},
                  {"warmth", answer_at("knee.look_skin_hot_red")}},
                 {{"warmth", {"joint_warm"}}, {"crep", {"crepitus"}}, {"btend", {"bone_tender", "kneecap_tender"}}}};
  all["eular"] = {"rule.eular_knee_oa",
                  "chronic_knee",
                  {{"age", of_age},
                   {"pain", answer_at("history.pain_with_use")},
                   {"stiff", stiff},
                   {"func", answer_at("history.function_reduced", Side::midline)},
                   {"crep", answer_at("knee.crepitus")},
                   {"rom",
                    [](Bench& made, const std::string& value) {
                      made.angle("knee.flexion_passive", Side::left, is_true(value) ? 1090 : 1100);
                      made.angle("knee.extension_passive", Side::left, 0);
                    }},
                   {"benl", answer_at("knee.bony_enlargement")}},
                  {{"rom", {"motion_less"}}}};
  all["acrh"] = {"rule.acr_hip_oa",
                 "hip_groin",
                 {{"age", of_age},
                  {"pain", answer_at("history.pain_most_days")},
                  {"ir", &turn_inward},
                  {"pir", test_at("hip.internal_rotation_overpressure")},
                  {"stiff", stiff},
                  {"esr", [](Bench& made, const std::string& value) { value == "not_done" ? void() : void(made.count("general.lab_esr", std::stoll(value))); }},
                  {"flex", [](Bench& made, const std::string& value) { made.angle("hip.flexion_passive", Side::left, std::stoll(value) * 10); }}},
                 {{"ir", {"inward_turn"}}}};
  all["sut"] = {"rule.sutlive",
                "hip_groin",
                {{"squat", answer_at("history.pain_squatting")},
                 {"aflex", test_at("hip.pain_flexion_active")},
                 {"scour", test_at("hip.scour_adduction")},
                 {"aext", test_at("hip.pain_extension_active")},
                 {"ir", &turn_inward}},
                {{"scour", {"pain_sweep"}}},
                [](Bench& made) { made.born(1966, 1, 1); }};
  all["las"] = {"rule.laslett",
                "posterior_hip",
                {{"dist", test_at("pelvis.distraction")},
                 {"comp", test_at("pelvis.compression")},
                 {"thigh", test_at("pelvis.thigh_thrust")},
                 {"sac", test_at("pelvis.sacral_thrust")},
                 {"gl", test_at("pelvis.gaenslen")},
                 {"gr", test_at("pelvis.gaenslen", Side::right)}},
                {{"gl", {"edge_this_thigh"}}}};
  all["low"] = {"rule.lowery",
                "chronic_knee",
                {{"lock", answer_at("history.locking")},
                 {"ext", test_at("knee.pain_forced_extension")},
                 {"flx", test_at("knee.pain_full_flexion")},
                 {"mcm", test_at("knee.mcmurray_pain")},
                 {"jlt",
                  [](Bench& made, const std::string& value) {
                    answer_at("knee.joint_line_medial_tender")(made, value);
                    answer_at("knee.joint_line_lateral_tender")(made, value);
                  }}},
                {{"ext", {"pain_straight"}}}};
  all["nice"] = {"rule.nice_oa",
                 "chronic_knee",
                 {{"age", of_age},
                  {"act", answer_at("history.pain_with_use")},
                  {"stiff", stiff},
                  {"atyp",
                   [](Bench& made, const std::string& value) {
                     made.add("history.mechanism", Side::midline, model::Choice{{"no_injury"}});
                     answer_at("history.rapid_worsening", Side::midline)(made, value);
                     made.no("knee.look_skin_hot_red", Side::left);
                     for (const char* item : {"history.fever", "history.weight_loss", "history.cancer_known"}) {
                       made.no(item, Side::midline);
                     }
                   }}},
                 {{"stiff", {"stiff_morning"}}, {"atyp", {"hurt_before", "worse_fast", "joint_hot", "infection_or_growth"}}}};
  return all;
}

// The example's exam.
Bench exam_of_example(const ExampleRule& rule, const std::string& inputs) {
  Bench made(*reference::built_in_edition());
  made.exam.complaint = {rule.complaint};
  if (rule.complaint != "acute_knee") {
    made.exam.injured_on.reset();
  }
  rule.besides(made);
  const auto given = wire::parse(inputs);
  REQUIRE(given.has_value());
  for (std::uint32_t at = given->root().first; at != 0; at = given->at(at).next) {
    const wire::Node& node = given->at(at);
    const auto setter = rule.inputs.find(std::string(node.key));
    CAPTURE(std::string(node.key));
    REQUIRE(setter != rule.inputs.end());
    if (node.kind != wire::NodeKind::null) {
      setter->second(made, std::string(node.kind == wire::NodeKind::text ? node.text : node.raw));
    }
  }
  return made;
}

// Every example of the table as an exam, with its rule and its row.
template <class Each>
std::size_t for_each_example(const Each& each) {
  const std::map<std::string, ExampleRule> all = example_rules();
  std::istringstream rows(outside_test::slurp("rule_examples_vessels_joints.csv"));
  std::size_t examples = 0;
  for (std::string line; std::getline(rows, line);) {
    if (line.empty() || line.front() == '#' || line.starts_with("example_id")) {
      continue;
    }
    const std::vector<std::string> cells = outside_test::cells_of(line);
    REQUIRE(cells.size() >= 5);
    CAPTURE(cells[0]);
    const auto rule = all.find(cells[0].substr(0, cells[0].rfind('-')));
    REQUIRE(rule != all.end());
    each(rule->second, cells, exam_of_example(rule->second, cells[2]));
    ++examples;
  }
  return examples;
}

std::optional<interpret::RuleResult> result_of(const Bench& made, const std::string& rule, Side side) {
  for (const auto& one : made.assess().rules) {
    if (one.rule.text == rule && one.side == side) {
      return one;
    }
  }
  return std::nullopt;
}

Bench mirrored(Bench made) {
  made.exam.side = interpret::other_side(*made.exam.side);
  for (model::Finding& finding : *made.exam.findings) {
    finding.side = interpret::other_side(finding.side);
  }
  return made;
}

// An answer or a test that says so; nothing where the item takes something else.
std::optional<model::Value> answer_to(const model::Item& item, const std::string& named) {
  if (named != "yes" && named != "no") {
    return std::nullopt;
  }
  if (item.value == model::ValueKind::test) {
    return model::Test{named == "yes" ? model::TestResult::positive : model::TestResult::negative, std::nullopt};
  }
  return item.value == model::ValueKind::answer ? std::optional<model::Value>(model::Answer{named == "yes" ? model::AnswerWord::yes : model::AnswerWord::no}) : std::nullopt;
}

}  // namespace

TEST_CASE("the 80 worked examples of vessels, a child's hip, worn joints, the sacroiliac joint and the meniscus, each as an exam") {
  const std::size_t examples = for_each_example([](const ExampleRule& rule, const std::vector<std::string>& cells, const Bench& made) {
    const auto result = result_of(made, rule.rule, Side::left);
    REQUIRE(result);
    CHECK(result->edition.text == cells[1]);
    CHECK((result->band ? result->band->text : outside_test::outcome_word(result->outcome)) == cells[3]);
    std::set<std::string> expected;
    std::istringstream settle(cells[4]);
    for (std::string name; std::getline(settle, name, ';');) {
      const auto named = rule.named.find(name);
      REQUIRE(named != rule.named.end());
      expected.insert(named->second.begin(), named->second.end());
    }
    std::set<std::string> got;
    for (const auto& one : result->settle) {
      got.insert(one.input.text);
    }
    CHECK(got == expected);
  });
  CHECK(examples == 80);
}

TEST_CASE("the worked examples with left and right exchanged give the same of the other side") {
  for_each_example([](const ExampleRule& rule, const std::vector<std::string>&, const Bench& made) {
    const auto here = result_of(made, rule.rule, Side::left);
    const auto there = result_of(mirrored(made), rule.rule, Side::right);
    REQUIRE(here);
    REQUIRE(there);
    CHECK(here->outcome == there->outcome);
    CHECK(here->band == there->band);
    CHECK(settle_of(*here) == settle_of(*there));
  });
}

TEST_CASE("what an open worked example says that an answer gives, it gives when it is recorded") {
  std::size_t held = 0;
  for_each_example([&held](const ExampleRule& rule, const std::vector<std::string>&, const Bench& made) {
    const auto result = result_of(made, rule.rule, Side::left);
    REQUIRE(result);
    for (const auto& settle : result->settle) {
      for (const auto& answer : settle.answers) {
        const model::Item* item = settle.item ? made.edition->item(*settle.item) : nullptr;
        const auto value = item != nullptr ? answer_to(*item, answer.if_.text) : std::nullopt;
        if (!value) {
          continue;
        }
        Bench then = made;
        then.add(item->item.text, *settle.side, *value);
        const auto after = result_of(then, rule.rule, Side::left);
        REQUIRE(after);
        CAPTURE(settle.input.text);
        CAPTURE(answer.if_.text);
        CHECK(after->outcome == answer.gives);
        CHECK(after->band == answer.band);
        ++held;
      }
    }
  });
  CHECK(held >= 20);
}
