// The rules of vessels, compartments, a child's hip, worn joints, the sacroiliac joint and the meniscus over every combination of their
// inputs, against digests made from the published lists and brute force in another language (tests/outside/node/rules_vessels_joints.mjs).
#include "core/interpret/rules/hip/child_hip.hpp"
#include "core/interpret/rules/hip/hip_wear.hpp"
#include "core/interpret/rules/joint/nice_oa.hpp"
#include "core/interpret/rules/knee/knee_vessels.hpp"
#include "core/interpret/rules/knee/knee_wear.hpp"
#include "core/interpret/rules/knee/meniscus.hpp"
#include "core/interpret/rules/leg/compartment.hpp"
#include "core/interpret/rules/pelvis/sacroiliac.hpp"
#include "core/interpret/rules/vessel/clot_route.hpp"
#include "core/interpret/rules/vessel/wells.hpp"
#include "tests/outside/truth_table.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <functional>

using namespace limbledger;
using namespace limbledger::interpret;
using namespace limbledger::outside_test;

namespace {

struct ListedInput {
  std::string name;
  std::uint8_t classes = 2;
};
struct ListedRule {
  std::string name;
  std::vector<ListedInput> inputs;
  std::function<SheetCompleted(std::span<const Classes>)> complete;
  bool counts = false;
  std::size_t open_most = 99;
};

std::function<SheetCompleted(std::span<const Classes>)> by_sheet(SheetAnswer (*decide)(std::span<const std::uint8_t>)) {
  return [decide](std::span<const Classes> may_be) { return complete_sheet(may_be, decide); };
}

std::string answer_words(const SheetAnswer& answer) {
  const std::string_view word = answer.band.empty() ? answer.gate : answer.band;
  return outcome_word(answer.outcome) + (word.empty() ? "" : ":" + std::string(word));
}

std::string settle_list(const SheetCompleted& completed, const std::vector<ListedInput>& inputs) {
  std::string out;
  for (std::size_t i = 0; i < inputs.size(); ++i) {
    out += completed.settles[i] ? (out.empty() ? "" : ",") + inputs[i].name : "";
  }
  return out;
}

std::vector<ListedRule> listed_rules() {
  const std::vector<ListedInput> wells{{"adult"}, {"pregnant"}, {"cancer"}, {"paralysis"}, {"bed"}, {"tender"}, {"whole"}, {"calf_mm", 3}, {"pit"}, {"collat"}, {"prior"}, {"alt"}};
  return {
      {"wells_dvt", wells, &wells_2003, true, 3},
      {"wells_dvt_1997", wells, &wells_1997, true, 3},
      {"clot_route", {{"points"}, {"scan", 3}, {"d_dimer"}}, by_sheet(&decide_clot_route)},
      {"knee_vessels", {{"hard"}, {"pulse", 3}, {"pressures"}}, by_sheet(&decide_knee_vessels)},
      {"kocher", {{"age"}, {"excl"}, {"fever_tenths"}, {"nwb"}, {"esr"}, {"wbc"}}, by_sheet(&decide_child_hip), true},
      {"caird", {{"age"}, {"excl"}, {"fever_tenths"}, {"nwb"}, {"esr"}, {"wbc"}, {"crp"}}, by_sheet(&decide_child_hip), true},
      {"singhal", {{"age"}, {"excl"}, {"nwb"}, {"crp"}}, by_sheet(&decide_singhal), true},
      {"nice_oa", {{"age"}, {"act"}, {"stiff"}, {"trauma"}, {"worse"}, {"hot"}, {"suspected"}}, by_sheet(&decide_nice_oa)},
      {"acr_knee_oa", {{"age", 3}, {"pain"}, {"stiff"}, {"crep"}, {"bone"}, {"kneecap"}, {"benl"}, {"warmth"}}, by_sheet(&decide_acr_knee)},
      {"acr_knee_tree_oa", {{"age", 3}, {"pain"}, {"stiff"}, {"crep"}, {"benl"}}, by_sheet(&decide_acr_knee_tree)},
      {"eular_knee_oa", {{"age", 3}, {"pain"}, {"stiff"}, {"func"}, {"crep"}, {"rom"}, {"benl"}}, by_sheet(&decide_eular_knee)},
      {"acr_hip_oa", {{"pain"}, {"ir"}, {"pir"}, {"stiff"}, {"age", 3}, {"esr", 3}, {"flex"}}, by_sheet(&decide_acr_hip)},
      {"sutlive", {{"age"}, {"squat"}, {"aflex"}, {"scour"}, {"aext"}, {"ir"}}, by_sheet(&decide_sutlive), true},
      {"laslett", {{"age"}, {"pregnant"}, {"dist"}, {"comp"}, {"thigh"}, {"sac"}, {"gr"}, {"gl"}}, by_sheet(&decide_laslett), true},
      {"lowery", {{"lock"}, {"ext"}, {"flx"}, {"mcm"}, {"jlt"}}, by_sheet(&decide_lowery), true},
  };
}

// The last input changes fastest; unknown comes after the classes.
std::string lines_of_rule(const ListedRule& rule, std::size_t& lines) {
  std::string all;
  std::vector<std::uint8_t> chosen(rule.inputs.size());
  std::vector<Classes> may_be(rule.inputs.size());
  for (;;) {
    std::size_t open = 0;
    std::string words;
    for (std::size_t i = 0; i < chosen.size(); ++i) {
      const bool unknown = chosen[i] == rule.inputs[i].classes;
      open += unknown ? 1 : 0;
      may_be[i] = static_cast<Classes>(unknown ? (1U << rule.inputs[i].classes) - 1U : 1U << chosen[i]);
      words += (i == 0 ? "" : "|") + (unknown ? "?" : std::to_string(chosen[i]));
    }
    if (open <= rule.open_most) {
      const SheetCompleted completed = rule.complete(may_be);
      const std::string points = rule.counts ? "; points=" + std::to_string(completed.answer.points) + ".." + std::to_string(completed.points_most) : "";
      all += words + " -> " + answer_words(completed.answer) + points + "; settle=" + settle_list(completed, rule.inputs) + "\n";
      ++lines;
    }
    std::size_t i = chosen.size();
    while (i > 0 && ++chosen[i - 1] > rule.inputs[i - 1].classes) {
      chosen[--i] = 0;
    }
    if (i == 0) {
      return all;
    }
  }
}

std::string compartment_lines(std::size_t& lines) {
  const std::vector<ListedInput> inputs{{"danger"}, {"beyond"}, {"stretch"}, {"tell"}, {"pressure", 3}};
  constexpr std::array<Tri, 3> tris{Tri::no, Tri::yes, Tri::undetermined};
  constexpr std::array<std::string_view, 3> digits{"0", "1", "?"};
  std::string all;
  for (std::size_t d = 0; d < 3; ++d) {
    for (std::size_t b = 0; b < 3; ++b) {
      for (std::size_t s = 0; s < 3; ++s) {
        for (std::size_t t = 0; t < 2; ++t) {
          for (std::size_t p = 0; p < 3; ++p) {
            const Tri pressure = p == 0 ? Tri::undetermined : tri(p == 2);
            const auto classes = compartment_classes({tris[d], tris[b], tris[s], t == 0, pressure});
            const SheetCompleted completed = complete_sheet(classes, &decide_compartment);
            all += std::string(digits[d]) + "|" + std::string(digits[b]) + "|" + std::string(digits[s]) + "|" + std::to_string(t) + "|" + std::to_string(p) + " -> " +
                   answer_words(completed.answer) + "; settle=" + settle_list(completed, inputs) + "\n";
            ++lines;
          }
        }
      }
    }
  }
  return all;
}

void check_digest(const wire::Document& document, const std::string& name, const std::string& text, std::size_t lines) {
  CAPTURE(name);
  const wire::Node* rules = document.child(document.root(), "rules");
  REQUIRE(rules != nullptr);
  const wire::Node* stored = document.child(*rules, name);
  REQUIRE(stored != nullptr);
  CHECK(document.child(*stored, "lines")->raw == std::to_string(lines));
  CHECK(blake2b_256(text) == document.child(*stored, "digest")->text);
}

}  // namespace

TEST_CASE("the rules of vessels and joints are the published lists, over every combination of their inputs") {
  const std::string text = slurp("vessels_joints_digest.json");
  const auto document = wire::parse(text);
  REQUIRE(document.has_value());
  for (const ListedRule& rule : listed_rules()) {
    std::size_t lines = 0;
    const std::string all = lines_of_rule(rule, lines);
    check_digest(*document, rule.name, all, lines);
  }
  std::size_t lines = 0;
  const std::string all = compartment_lines(lines);
  check_digest(*document, "compartment_signs", all, lines);
}

// The seven worked examples of acs/boast2014 (BOAST_ACS, BOAST_ACS_SUM).
TEST_CASE("compartment signs answer the seven worked examples of their page") {
  const auto judge = [](const CompartmentIn& in) { return complete_sheet(compartment_classes(in), &decide_compartment); };
  constexpr Tri yes = Tri::yes, no = Tri::no, open = Tri::undetermined;
  CHECK(judge({yes, no, yes, true, open}).answer.outcome == Outcome::positive);
  CHECK(judge({yes, yes, open, true, open}).answer.outcome == Outcome::positive);
  const SheetCompleted third = judge({no, yes, open, true, open});
  CHECK(third.answer.outcome == Outcome::undetermined);
  CHECK(third.settles == std::vector<bool>{false, false, true, false, false});
  const SheetCompleted fourth = judge({yes, no, no, false, open});
  CHECK(fourth.answer.outcome == Outcome::undetermined);
  CHECK(fourth.settles == std::vector<bool>{false, false, false, false, true});
  CHECK(judge({yes, no, no, true, open}).answer.band == "hourly");
  CHECK(judge({yes, no, no, true, no}).answer.band == "hourly");
  CHECK(judge({yes, no, no, true, yes}).answer.outcome == Outcome::positive);
  const SheetCompleted seventh = judge({no, no, no, true, open});
  CHECK(seventh.answer.outcome == Outcome::negative);
  CHECK(seventh.answer.band.empty());
}

// The worked examples of kd_abi/2004 (MILLS2004): the ratio itself, not its rounded number.
TEST_CASE("an ankle pressure of 107 to 119 is below 0.90 exactly, 108 to 120 is not") {
  const auto at = [](std::int64_t pressure) { return std::optional(Between{pressure, pressure}); };
  CHECK(knee_pressure_low(at(108), at(120)) == Tri::no);
  CHECK(knee_pressure_low(at(107), at(120)) == Tri::yes);
  CHECK(knee_pressure_low(at(107), at(119)) == Tri::yes);
  CHECK(knee_pressure_low(std::nullopt, at(119)) == Tri::undetermined);
  CHECK(knee_pressure_low(Between{105, 110}, at(120)) == Tri::undetermined);
}
