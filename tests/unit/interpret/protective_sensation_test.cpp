// From findings to the rule of protective sensation. The rule itself is checked elsewhere over all its inputs. Sources: decision
// rules page, section 25 (IWGDF_ADDENDUM, FORK_RESTATED, IWGDF2019); clinical safety, C7.
#include "core/interpret/rules/foot/protective_sensation.hpp"

#include "tests/unit/interpret/support.hpp"
#include "tests/unit/invented/edition.hpp"

#include <doctest/doctest.h>

using namespace limbledger;
using namespace limbledger::interpret_test;
using interpret::Outcome;

namespace {

interpret::RuleResult sensation(const Bench& bench, Side side = Side::left) {
  for (const auto& rule : bench.assess().rules) {
    if (rule.rule.text == interpret::protective_sensation_rule && rule.side == side) {
      return rule;
    }
  }
  return {};
}

void filament(Bench& bench, Side side, std::int64_t toe, std::int64_t first, std::int64_t fifth) {
  bench.add("nerve.monofilament_great_toe", side, model::CountValue{{toe}});
  bench.add("nerve.monofilament_metatarsal_head_1", side, model::CountValue{{first}});
  bench.add("nerve.monofilament_metatarsal_head_5", side, model::CountValue{{fifth}});
}

void touch(Bench& bench, Side side, const std::string& felt) {
  const std::array<std::string, 3> items{"nerve.toe_touch_great", "nerve.toe_touch_third", "nerve.toe_touch_fifth"};
  for (std::size_t n = 0; n < 3; ++n) {
    if (felt[n] != '?') {
      bench.answer(items[n], side, felt[n] == '+' ? model::AnswerWord::yes : model::AnswerWord::no);
    }
  }
}

}  // namespace

TEST_CASE("lops: two of three right answers at each place are felt, one of three at any place is lost (worked examples 1 and 2)") {
  Bench felt(invented_edition());
  filament(felt, Side::left, 2, 3, 2);
  CHECK(sensation(felt).outcome == Outcome::negative);
  Bench lost(invented_edition());
  filament(lost, Side::left, 3, 1, 3);
  CHECK(sensation(lost).outcome == Outcome::positive);
}

TEST_CASE("lops: a place that was not tried is never felt: it leaves the foot open and is what settles it (worked example 3)") {
  Bench made(invented_edition());
  filament(made, Side::left, 3, 3, 3);
  made.find("nerve.monofilament_metatarsal_head_5").value = model::NotDone{model::WhyNot::covered, std::nullopt};
  const auto rule = sensation(made);
  CHECK(rule.outcome == Outcome::undetermined);
  REQUIRE(rule.settle.size() == 1);
  CHECK(rule.settle[0].item->text == "nerve.monofilament_metatarsal_head_5");
  CHECK(flagged(rule, "place_out_of_reach"));
}

TEST_CASE("lops: one method is enough for a loss, and a fork alone shows nothing that protects (worked example 5)") {
  Bench made(invented_edition());
  made.add("nerve.tuning_fork_great_toe", Side::left, model::CountValue{{3}});
  CHECK(sensation(made).outcome == Outcome::undetermined);
  filament(made, Side::left, 3, 3, 3);
  CHECK(sensation(made).outcome == Outcome::negative);
  made.find("nerve.tuning_fork_great_toe").value = model::CountValue{{1}};
  CHECK(sensation(made).outcome == Outcome::positive);
}

TEST_CASE("lops: two of six toes are needed, over both feet, and each foot answers for its own (worked examples 6 and 7)") {
  Bench one(invented_edition());
  touch(one, Side::left, "-++");
  touch(one, Side::right, "+++");
  CHECK(sensation(one).outcome == Outcome::negative);
  Bench open(invented_edition());
  touch(open, Side::left, "-++");
  touch(open, Side::right, "++?");
  CHECK(sensation(open).outcome == Outcome::undetermined);
  CHECK(sensation(open, Side::right).outcome == Outcome::undetermined);
  REQUIRE(sensation(open).settle.size() == 1);
  CHECK(sensation(open).settle[0].item->text == "nerve.toe_touch_fifth");
  CHECK(sensation(open).settle[0].side == Side::right);
  Bench both(invented_edition());
  touch(both, Side::left, "-++");
  touch(both, Side::right, "+-+");
  CHECK(sensation(both).outcome == Outcome::positive);
  CHECK(sensation(both, Side::right).outcome == Outcome::positive);
  Bench right(invented_edition());
  touch(right, Side::left, "+++");
  touch(right, Side::right, "--+");
  CHECK(sensation(right).outcome == Outcome::negative);
  CHECK(sensation(right, Side::right).outcome == Outcome::positive);
}

TEST_CASE("lops: a toe that is missing settles nothing and is not asked for again; the fork farther up may still show a loss (worked example 8)") {
  Bench made(invented_edition());
  filament(made, Side::left, 3, 3, 3);
  made.find("nerve.monofilament_great_toe").value = model::NotDone{model::WhyNot::no_limb, std::nullopt};
  CHECK(sensation(made).outcome == Outcome::undetermined);
  CHECK(sensation(made).settle.empty());
  CHECK(flagged(sensation(made), "place_out_of_reach"));
  made.add("nerve.tuning_fork_ankle", Side::left, model::CountValue{{0}});
  CHECK(sensation(made).outcome == Outcome::positive);
}

TEST_CASE("lops: felt at every place of the rule beside a foot known to be numb is contradicted, never a bare negative") {
  Bench made(invented_edition());
  filament(made, Side::left, 3, 3, 3);
  CHECK_FALSE(flagged(sensation(made), "contradicted"));
  made.yes("body.feeling_lost", Side::left);
  CHECK(flagged(sensation(made), "contradicted"));
}

TEST_CASE("lops: felt with a filament that slipped, by a kiosk, or by one examiner of two does not count as felt") {
  Bench slipped(invented_edition());
  filament(slipped, Side::left, 3, 3, 3);
  slipped.find("nerve.monofilament_great_toe").quality = std::vector{model::Quality::poor_contact};
  CHECK(sensation(slipped).outcome == Outcome::undetermined);
  Bench alone(invented_edition());
  filament(alone, Side::left, 3, 3, 3);
  alone.find("nerve.monofilament_great_toe").origin = model::Origin::self_reported;
  CHECK(sensation(alone).outcome == Outcome::undetermined);
  Bench two(invented_edition());
  filament(two, Side::left, 3, 3, 3);
  two.add("nerve.monofilament_great_toe", Side::left, model::CountValue{{0}});
  CHECK(sensation(two).outcome == Outcome::undetermined);
}

TEST_CASE("lops: a numb foot opens no concern of a break and is no rule about a film") {
  Bench made(invented_edition());
  filament(made, Side::left, 0, 0, 0);
  CHECK(interpret::film_for({std::string(interpret::protective_sensation_rule)}).empty());
  made.nothing_found();
  for (const auto& rule : made.assess().rules) {
    CHECK_FALSE(flagged(rule, "rules_disagree"));
  }
}
