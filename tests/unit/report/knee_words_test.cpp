// What the page says of motion, fluid and looseness: side in capitals, figures with their source, a better test by its name, and none of
// the words that a finding does not earn (clinical safety, part A: "cannot be told from last time").
#include "core/report/page.hpp"
#include "core/report/page_judged.hpp"

#include "tests/unit/interpret/knee/bench.hpp"
#include "tests/unit/report/has.hpp"

#include <doctest/doctest.h>

using namespace limbledger;
using report_test::has;
using namespace limbledger::interpret_test;

namespace {

KneeBench real_knee() {
  REQUIRE(reference::built_in_edition() != nullptr);
  return KneeBench(*reference::built_in_edition());
}

std::string said(const KneeBench& made, const std::string& id) {
  return report::statement_text(made.statement(id), made.exam, *report::built_in_words(), *made.edition);
}

}  // namespace

TEST_CASE("a lag, a fixed flexion and a lack of extension are said with what is needed to believe them") {
  KneeBench made = real_knee();
  made.extends("active", -250);
  made.extends("passive", -100);
  made.extends("passive", 0, Side::right);
  CHECK(has(said(made, "motion.lag:knee.extension_active:left"), "LEFT"));
  CHECK(has(said(made, "motion.lag:knee.extension_active:left"), "a lag of extension, more than the 6 needed to believe it"));
  CHECK(has(said(made, "motion.contracture:knee.extension_passive:left"), "does not reach straight, by more than the error of the inclinometer"));
  CHECK(has(said(made, "motion.extension_deficit:knee.extension_passive:left"), "lacks 10 of extension against the other side (straight)"));
}

TEST_CASE("last time: cannot be told, other convention and other position are said in words") {
  KneeBench then = real_knee();
  then.extends("passive", 50);
  then.exam.examined_at = at_noon(2026, 10, 1);
  KneeBench now = real_knee();
  now.extends("passive", -50);
  for (auto* made : {&then, &now}) {
    auto& angle = std::get<model::Angle>(made->exam.findings->front().value);
    angle.entered = wire::Name{"+5"};
    angle.order = model::Word{made == &then ? "extension" : "flexion"};
  }
  now.earlier = {then.exam};
  const std::string past = "motion.past:knee.extension_passive:left";
  CHECK(has(said(now, past), "written in another convention"));
  now.exam.findings->front().position = model::Word{"prone"};
  CHECK(has(said(now, past), "measured in different positions"));
  CHECK(has(said(now, past), "prone"));
  KneeBench same = real_knee();
  same.extends("passive", 20);
  same.earlier = {then.exam};
  CHECK(has(said(same, past), "cannot be told from last time (5° beyond straight)"));
}

TEST_CASE("a test that tells less says why, and names the one that would tell more") {
  KneeBench made = real_knee();
  made.grade("knee.lachman", "0", "firm");
  made.length("leg.thigh_girth_10cm", Side::left, 460);
  const std::string text = said(made, "laxity.test:knee.lachman:left");
  CHECK(has(text, "cannot be told from this test now"));
  CHECK(has(text, "heavy thigh"));
  CHECK(has(text, "would tell more:"));
  CHECK(has(text, "DRAPER1995"));
  CHECK_FALSE(has(text, "msg."));
}

TEST_CASE("no statement on a knee is printed with a name of a message, an open variable or a word it does not earn") {
  KneeBench made = real_knee();
  made.exam.injured_on = day(2026, 11, 20);
  for (const Side side : {Side::left, Side::right}) {
    made.extends("passive", side == Side::left ? -200 : 120, side);
    made.extends("active", side == Side::left ? -350 : 100, side);
    made.angle("knee.flexion_passive", side, side == Side::left ? 900 : 1400, "inclinometer");
    made.angle("knee.flexion_active", side, 800, "inclinometer");
    made.grade("knee.effusion_stroke", side == Side::left ? "3+" : "0", "", side);
    made.test("knee.effusion_ballottement", model::TestResult::negative, side);
    made.test("knee.posterior_sag", side == Side::left ? model::TestResult::positive : model::TestResult::negative, side);
    made.grade("knee.anterior_drawer", "2", "firm", side);
    made.grade("knee.posterior_drawer", "0", "firm", side);
    made.grade("knee.pivot_shift", "0", "", side);
    made.grade("knee.valgus_30", "1", "firm", side);
  }
  const auto statements = made.assess().statements;
  CHECK(statements.size() > 25);
  for (const auto& statement : statements) {
    CHECK_MESSAGE(report::built_in_words()->has(statement.message.text), statement.message.text);
    const std::string text = said(made, statement.statement.text);
    for (const char* never : {"msg.", "{", "}", " normal", "improved", "excluded", "safe", "confirmed"}) {
      CHECK_FALSE_MESSAGE(has(text, never), text);
    }
  }
}
