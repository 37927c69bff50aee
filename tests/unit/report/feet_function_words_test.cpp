// What the page says of the rules of feet, of timed and counted tests and of joints that move far; and that each has a sentence for
// every outcome it can have, an own name for every answer that settles, and a hint of no fall only with what it does not tell.
// Wording: clinical safety, part A.
#include "core/interpret/rules/rule.hpp"
#include "core/report/page.hpp"
#include "core/report/page_judged.hpp"

#include "tests/unit/interpret/support.hpp"
#include "tests/unit/report/has.hpp"

#include <doctest/doctest.h>

using namespace limbledger;
using report_test::has;
using namespace limbledger::interpret_test;

namespace limbledger::feet_function_words {

const report::Words& english() { return *report::built_in_words(); }

std::string lines_of(const Bench& made, const std::string& id, Side side) {
  std::string out;
  const auto assessment = made.assess();
  for (const auto& rule : assessment.rules) {
    if (rule.rule.text == id && rule.side == side) {
      for (const std::string& line : report::rule_lines(rule, made.exam, made.person, assessment.as_of, english(), *made.edition)) {
        out += line + "\n";
      }
    }
  }
  return out;
}

Bench older() {
  REQUIRE(reference::built_in_edition() != nullptr);
  Bench made(*reference::built_in_edition());
  made.exam.complaint = {"free"};
  made.exam.injured_on.reset();
  made.born(1954, 3, 1);
  return made;
}

void timed(Bench& made, const std::string& item, Side side, std::int64_t tenths) {
  model::Duration time;
  time.s = model::Seconds{tenths};
  made.add(item, side, time);
}

TEST_CASE("each rule of feet and function has its sentences: a name, every band or outcome, open and not applicable, and every input") {
  const std::vector<std::pair<std::string, std::vector<std::string>>> bands{
      {"nice_feet", {"class_low", "class_moderate", "class_high"}},
      {"hypermobility", {"met", "not_met"}},
      {"foot_posture", {"highly_supinated", "supinated", "neutral", "pronated", "highly_pronated"}},
      {"heel_rise_sides", {"none_here", "fewer_here", "within_error", "more_here", "none_there", "none_on_either"}},
      {"up_and_go", {}},
      {"chair_stand", {}},
      {"four_stances", {}},
      {"five_stands", {}}};
  for (const auto& one_rule : bands) {
    const std::string& rule = one_rule.first;
    const std::vector<std::string>& names = one_rule.second;
    const std::string begin = "msg.rule." + rule + ".";
    CAPTURE(rule);
    for (const std::string always : {"name", "undetermined", "not_applicable"}) {
      CHECK(english().has(begin + always));
    }
    for (const std::string& band : names) {
      CHECK_MESSAGE(english().has(begin + "band_" + band), band);
      CHECK_MESSAGE(english().has(begin + "gives_" + band), band);
    }
    for (const std::string outcome : {"positive", "negative", "negative_with_gaps"}) {
      CHECK((!names.empty() || english().has(begin + outcome)));
    }
    const auto rows = reference::built_in_edition()->decision_rules();
    const auto row = std::find_if(rows.begin(), rows.end(), [&](const auto& one) { return one.rule.text == "rule." + rule; });
    REQUIRE(row != rows.end());
    for (const auto& asks : row->asks) {
      CHECK_MESSAGE(english().has("msg.change." + asks.input.text), asks.input.text);
    }
  }
}

TEST_CASE("a test of falls that finds nothing says that falls are not excluded, and names the other cut where it is between both") {
  Bench made = older();
  timed(made, "function.timed_up_and_go", Side::midline, 119);
  CHECK(has(lines_of(made, "rule.up_and_go", Side::midline), "Falls are not excluded by this"));
  std::get<model::Duration>(made.find("function.timed_up_and_go").value).s = model::Seconds{134};
  const std::string slow = lines_of(made, "rule.up_and_go", Side::midline);
  CHECK(has(slow, "a sign that falls threaten"));
  CHECK(has(slow, "another published cut is 13.5 s"));
  CHECK_FALSE(has(slow, "film"));
  Bench chair = older();
  chair.count("function.chair_stand_30s", 12);
  CHECK(has(lines_of(chair, "rule.chair_stand", Side::midline), "Cannot say yet: needs whether arms were used"));
  chair.no("function.chair_stand_arms_used", Side::midline);
  CHECK(has(lines_of(chair, "rule.chair_stand", Side::midline), "Falls are not excluded by this"));
  Bench stances = older();
  timed(stances, "function.stance_tandem", Side::midline, 100);
  CHECK(has(lines_of(stances, "rule.four_stances", Side::midline), "Falls are not excluded by this"));
  Bench none = older();
  none.not_done("function.timed_up_and_go", Side::midline, model::WhyNot::pain);
  CHECK(has(lines_of(none, "rule.up_and_go", Side::midline), "Nothing is concluded (it was not done, from which nothing follows)"));
}

TEST_CASE("the page gives a sum of a foot with its range, the signs of nine with what is missing, and heel rises with what to squeeze") {
  Bench made = older();
  for (const char* item : {"foot.posture_talar_head", "foot.posture_heel", "foot.posture_arch", "foot.posture_forefoot"}) {
    made.add(item, Side::left, model::Grade{{"fpi6/2005"}, {"+1"}, {}, {}, {}});
  }
  const std::string open = lines_of(made, "rule.foot_posture", Side::left);
  CHECK(has(open, "Sum 0 to 8 (−12 to +12). No band yet: needs curves above and below the lateral malleolus, bulge at the talonavicular joint"));
  Bench far = older();
  far.count("body.hypermobility", 3);
  const std::string signs = lines_of(far, "rule.hypermobility", Side::midline);
  CHECK(has(signs, "3 signs of nine. Cannot say yet: needs palms on the floor ever, "));
  far.find("body.hypermobility").value = model::CountValue{{2}};
  CHECK(has(lines_of(far, "rule.hypermobility", Side::midline), "Joints that move far everywhere are not excluded by this"));
  Bench heels = older();
  heels.add("function.heel_rise_count_incline", Side::left, model::CountValue{{20}});
  CHECK(has(lines_of(heels, "rule.heel_rise_sides", Side::left), "needs heel rises of the other leg"));
  CHECK(has(lines_of(heels, "rule.heel_rise_sides", Side::left), "none on the other leg gives none on the other, this one can"));
  heels.add("function.heel_rise_count_incline", Side::right, model::CountValue{{0}});
  CHECK(has(lines_of(heels, "rule.heel_rise_sides", Side::right), "squeeze this calf"));
}

TEST_CASE("both tables of the feet say which interval counts, and a short stance is told with where its cut comes from") {
  Bench made = older();
  made.yes("history.diabetes", Side::midline);
  made.no("history.kidney_failure", Side::midline);
  for (const Side side : {Side::left, Side::right}) {
    for (const char* item : {"nerve.monofilament_great_toe", "nerve.monofilament_metatarsal_head_1", "nerve.monofilament_metatarsal_head_5"}) {
      made.add(item, side, model::CountValue{{3}});
    }
    for (const char* item : {"vessel.pulse_dorsalis_pedis", "vessel.pulse_posterior_tibial"}) {
      made.add(item, side, model::Grade{{"pulse/0-3"}, {"2"}, {}, {}, {}});
    }
    for (const char* item : {"skin.ulcer", "skin.redness_spreading", "skin.black_toe", "foot.hot_red_swollen", "history.foot_ulcer_before", "history.amputation_before"}) {
      made.no(item, side);
    }
    made.add("skin.gangrene", side, model::Choice{{"gangrene_none"}});
    made.yes("foot.deformity", side);
  }
  CHECK(has(lines_of(made, "rule.nice_feet", Side::midline), "again in 3 to 6 months"));
  CHECK(has(lines_of(made, "rule.nice_feet", Side::midline), "the shorter one counts, unless the place has its own protocol"));
  CHECK(has(lines_of(made, "rule.foot_category", Side::midline), "the shorter one counts, unless the place has its own protocol"));
  timed(made, "function.single_leg_stance_eyes_open", Side::left, 49);
  const auto statement = made.statement("function.short_stance:function.single_leg_stance_eyes_open:left");
  const std::string text = report::statement_text(statement, made.exam, english(), *made.edition);
  CHECK(has(text, "4.9 s"));
  CHECK(has(text, "under 5 s is a cut of its own for falls with injury in older people (from memory)"));
}

}  // namespace limbledger::feet_function_words
