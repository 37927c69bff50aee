// From findings of both feet to their category. The table itself is checked elsewhere over all its inputs. Sources: decision rules
// page, section 17 (IWGDF2019), sections 24 and 25; clinical safety, C7.
#include "core/interpret/rules/foot/foot_category.hpp"

#include "tests/unit/interpret/support.hpp"
#include "tests/unit/invented/edition.hpp"

#include <doctest/doctest.h>

using namespace limbledger;
using namespace limbledger::interpret_test;
using interpret::Outcome;

namespace {

interpret::RuleResult category(const Bench& bench) {
  for (const auto& rule : bench.assess().rules) {
    if (rule.rule.text == interpret::foot_category_rule) {
      return rule;
    }
  }
  return {};
}

std::string band(const Bench& bench) {
  const auto rule = category(bench);
  return rule.band ? rule.band->text : "";
}

void pulses(Bench& bench, Side side, const std::string& dorsal, const std::string& tibial) {
  bench.add("vessel.pulse_dorsalis_pedis", side, model::Grade{{"pulse/0-3"}, {dorsal}, {}, {}, {}});
  bench.add("vessel.pulse_posterior_tibial", side, model::Grade{{"pulse/0-3"}, {tibial}, {}, {}, {}});
}

// A person with diabetes, both feet looked at, nothing found.
Bench screened() {
  Bench made(invented_edition());
  made.yes("history.diabetes", Side::midline);
  made.no("history.kidney_failure", Side::midline);
  for (const Side side : {Side::left, Side::right}) {
    for (const char* site : {"nerve.monofilament_great_toe", "nerve.monofilament_metatarsal_head_1", "nerve.monofilament_metatarsal_head_5"}) {
      made.add(site, side, model::CountValue{{3}});
    }
    pulses(made, side, "2", "2");
    for (const char* item : {"skin.ulcer", "foot.deformity", "history.foot_ulcer_before", "history.amputation_before"}) {
      made.no(item, side);
    }
  }
  return made;
}

model::Finding& of_side(Bench& bench, const std::string& item, Side side) {
  return *std::find_if(bench.exam.findings->begin(), bench.exam.findings->end(), [&](const auto& f) { return f.item.text == item && f.side == side; });
}

}  // namespace

TEST_CASE("feet: nothing found at both feet is category 0, once for the person") {
  const Bench made = screened();
  CHECK(band(made) == "category_0");
  CHECK(category(made).outcome == Outcome::negative);
  CHECK(category(made).side == Side::midline);
  CHECK(category(made).edition.text == "iwgdf_risk/2019");
}

TEST_CASE("feet: one numb foot is enough, and a foot that was not tried is never felt (lops worked example 4)") {
  Bench made = screened();
  of_side(made, "nerve.monofilament_metatarsal_head_1", Side::right).value = model::CountValue{{1}};
  CHECK(band(made) == "category_1");
  Bench open = screened();
  of_side(open, "nerve.monofilament_metatarsal_head_1", Side::right).value = model::NotDone{model::WhyNot::no_time, std::nullopt};
  CHECK(category(open).outcome == Outcome::undetermined);
  REQUIRE(category(open).settle.size() == 1);
  CHECK(category(open).settle[0].item->text == "nerve.monofilament_metatarsal_head_1");
  CHECK(category(open).settle[0].side == Side::right);
  CHECK(category(open).settle[0].answers[1].band->text == "category_1");
}

TEST_CASE("feet: no pulse at both arteries of one foot counts as narrowed, one that is not felt leaves it open until it is measured") {
  Bench both = screened();
  of_side(both, "vessel.pulse_dorsalis_pedis", Side::left).value = model::Grade{{"pulse/0-3"}, {"0"}, {}, {}, {}};
  CHECK(category(both).outcome == Outcome::undetermined);
  REQUIRE(category(both).settle.size() == 1);
  CHECK(category(both).settle[0].item->text == "vessel.pressure_dorsalis_pedis");
  Bench pressed = both;
  const auto mm_hg = [&](const char* item, Side side, std::int64_t steps) {
    model::Pressure pressure;
    pressure.mm_hg = model::MillimetresOfMercury{steps};
    pressed.add(item, side, pressure);
  };
  for (const Side arm : {Side::left, Side::right}) {
    mm_hg("vessel.pressure_arm", arm, 140);
  }
  mm_hg("vessel.pressure_posterior_tibial", Side::left, 150);
  mm_hg("vessel.pressure_dorsalis_pedis", Side::left, 130);
  CHECK(band(pressed) == "category_0");
  pressed.find("vessel.pressure_posterior_tibial").value = model::NotDone{model::WhyNot::beyond_instrument, std::nullopt};
  CHECK(category(pressed).outcome == Outcome::undetermined);
  of_side(both, "vessel.pulse_posterior_tibial", Side::left).value = model::Grade{{"pulse/0-3"}, {"0"}, {}, {}, {}};
  CHECK(band(both) == "category_1");
}

TEST_CASE("feet: an open ulcer is no category, whatever else was found (worked example 10)") {
  Bench made = screened();
  of_side(made, "skin.ulcer", Side::left).value = model::Answer{model::AnswerWord::yes};
  CHECK(category(made).outcome == Outcome::not_applicable);
  CHECK(category(made).gate->text == "ulcer_now");
  CHECK(band(made).empty());
  made.drop("skin.ulcer");
  CHECK(category(made).outcome == Outcome::undetermined);
}

TEST_CASE("feet: an earlier ulcer without either loss is 0 by its letter, contradicted, never a bare 0 (worked example 6)") {
  Bench made = screened();
  of_side(made, "history.foot_ulcer_before", Side::right).value = model::Answer{model::AnswerWord::yes};
  CHECK(band(made) == "category_0");
  CHECK(flagged(category(made), "contradicted"));
  CHECK(flagged(category(made), "literal_0_with_history"));
}

TEST_CASE("feet: a foot numb of another cause than diabetes is counted, and says that the table was made for diabetes") {
  Bench made = screened();
  made.drop("history.diabetes");
  CHECK(category(made).rule.text.empty());
  made.yes("body.feeling_lost", Side::left);
  CHECK(band(made) == "category_1");
  CHECK(flagged(category(made), "made_for_diabetes"));
}

TEST_CASE("feet: a foot that is gone is an amputation before and leaves nothing open of its own") {
  Bench made = screened();
  made.edition = reference::built_in_edition();
  REQUIRE(made.edition != nullptr);
  for (auto& finding : *made.exam.findings) {
    if (finding.side == Side::right && finding.item.text != "skin.ulcer" && finding.item.text != "history.foot_ulcer_before") {
      finding.side = Side::left;
    }
  }
  made.add("body.limb_level", Side::right, model::Choice{{"through_shin"}});
  CHECK(band(made) == "category_0");
  CHECK(flagged(category(made), "literal_0_with_history"));
  made.yes("body.feeling_lost", Side::left);
  CHECK(band(made) == "category_3");
}
