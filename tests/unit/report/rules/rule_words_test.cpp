// What the page says of rules that advise no film: the outcome with its number or category, what is open and why it is doubted, and
// nothing of a film.
#include "core/report/page.hpp"
#include "core/report/page_judged.hpp"

#include "tests/unit/interpret/support.hpp"
#include "tests/unit/report/has.hpp"

#include <doctest/doctest.h>

using namespace limbledger;
using report_test::has;
using namespace limbledger::interpret_test;

namespace {

std::string lines_of(const Bench& made, const std::string& id) {
  std::string out;
  const auto assessment = made.assess();
  for (const auto& rule : assessment.rules) {
    if (rule.rule.text == id) {
      for (const std::string& line : report::rule_lines(rule, made.exam, made.person, assessment.as_of, *report::built_in_words(), *made.edition)) {
        out += line + "\n";
      }
    }
  }
  return out;
}

Bench real_exam() {
  REQUIRE(reference::built_in_edition() != nullptr);
  return Bench(*reference::built_in_edition());
}

void pressed(Bench& made, const std::string& item, Side side, std::int64_t mm_hg) {
  model::Pressure pressure;
  pressure.mm_hg = model::MillimetresOfMercury{mm_hg};
  made.add(item, side, pressure);
}

}  // namespace

TEST_CASE("the page gives a numb foot with the places that do not feel, and an open one with what each answer gives") {
  Bench made = real_exam();
  made.add("nerve.monofilament_great_toe", Side::left, model::CountValue{{3}});
  made.add("nerve.monofilament_metatarsal_head_1", Side::left, model::CountValue{{3}});
  const std::string open = lines_of(made, "rule.protective_sensation");
  CHECK(has(open, "Cannot say yet: needs filament under the fifth metatarsal head"));
  CHECK(has(open, "not felt gives feeling lost"));
  CHECK_FALSE(has(open, "film advised"));
  made.add("nerve.monofilament_metatarsal_head_5", Side::left, model::CountValue{{1}});
  const std::string lost = lines_of(made, "rule.protective_sensation");
  CHECK(has(lost, "Protective feeling lost in this foot"));
  CHECK(has(lost, "Criteria met: filament not felt under the fifth metatarsal head"));
}

TEST_CASE("the page gives the ankle-arm index with two decimals, or its bound and what is missing") {
  Bench made = real_exam();
  pressed(made, "vessel.pressure_dorsalis_pedis", Side::left, 150);
  pressed(made, "vessel.pressure_posterior_tibial", Side::left, 130);
  pressed(made, "vessel.pressure_arm", Side::right, 140);
  const std::string bound = lines_of(made, "rule.ankle_brachial");
  CHECK(has(bound, "1.07"));
  CHECK(has(bound, "at most"));
  CHECK(has(bound, "pressure at the left arm"));
  pressed(made, "vessel.pressure_arm", Side::left, 138);
  CHECK(has(lines_of(made, "rule.ankle_brachial"), "between 1.00 and 1.40"));
  made.add("vessel.pulse_dorsalis_pedis", Side::left, model::Grade{{"pulse/0-3"}, {"0"}, {}, {}, {}});
  CHECK(has(lines_of(made, "rule.ankle_brachial"), "a pulse of this foot was not felt: unsettled"));
}

TEST_CASE("the page gives the category of the feet with its interval, and an open ulcer as no category") {
  Bench made = real_exam();
  made.yes("history.diabetes", Side::midline);
  made.yes("body.feeling_lost", Side::left);
  made.yes("history.foot_ulcer_before", Side::left);
  made.no("skin.ulcer", Side::left);
  made.no("skin.ulcer", Side::right);
  CHECK(has(lines_of(made, "rule.foot_category"), "Look at the feet again in 1 to 3 months"));
  made.find("skin.ulcer").value = model::Answer{model::AnswerWord::yes};
  CHECK(has(lines_of(made, "rule.foot_category"), "Graver than what the categories sort (an open ulcer)"));
}
