// The sheet that rules are judged by, on invented decisions; and that every rule of the list is described in the facts.
#include "core/interpret/rules/rule.hpp"
#include "core/interpret/rules/sheet.hpp"
#include "core/reference/edition.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <array>

using namespace limbledger;
using namespace limbledger::interpret;

namespace {

// Two of three, where the third is worth minus one.
SheetAnswer two_points(std::span<const std::uint8_t> in) {
  const std::int64_t points = std::int64_t{in[0]} + in[1] - in[2];
  return {points >= 2 ? Outcome::positive : Outcome::negative, {}, {}, points};
}

constexpr Classes no_class = 1;
constexpr Classes yes_class = 2;

}  // namespace

TEST_CASE("a sheet says what agrees over every completion, what settles, and between which points it lies") {
  const SheetCompleted known = complete_sheet(std::array<Classes, 3>{yes_class, yes_class, no_class}, &two_points);
  CHECK(known.answer.outcome == Outcome::positive);
  CHECK(known.answer.points == 2);
  CHECK(known.points_most == 2);

  const SheetCompleted open = complete_sheet(std::array<Classes, 3>{yes_class, no_or_yes, no_class}, &two_points);
  CHECK(open.answer.outcome == Outcome::undetermined);
  CHECK(open.answer.points == 1);
  CHECK(open.points_most == 2);
  CHECK(open.settles == std::vector<bool>{false, true, false});
  CHECK(open.gives[1][1]->outcome == Outcome::positive);
  CHECK(open.gives[1][0]->outcome == Outcome::negative);

  const SheetCompleted decided = complete_sheet(std::array<Classes, 3>{no_class, no_or_yes, no_or_yes}, &two_points);
  CHECK(decided.answer.outcome == Outcome::negative);
  CHECK(decided.answer.points == -1);
  CHECK(decided.points_most == 1);
  CHECK(decided.settles == std::vector<bool>{false, false, false});
}

TEST_CASE("with two inputs open, one answer may settle alone and the other leave it open") {
  const SheetCompleted open = complete_sheet(std::array<Classes, 3>{yes_class, no_or_yes, no_or_yes}, &two_points);
  CHECK(open.answer.outcome == Outcome::undetermined);
  CHECK(open.settles == std::vector<bool>{false, true, true});
  CHECK(open.gives[1][0]->outcome == Outcome::negative);
  CHECK(open.gives[1][1]->outcome == Outcome::undetermined);
  CHECK(open.gives[2][1]->outcome == Outcome::negative);
  CHECK(open.gives[2][0]->outcome == Outcome::undetermined);
}

TEST_CASE("every rule of the list is described in the facts, with the version it follows, and none besides") {
  const reference::Edition* edition = reference::built_in_edition();
  REQUIRE(edition != nullptr);
  const auto described = edition->decision_rules();
  CHECK(described.size() == all_rules().size());
  for (const Rule& rule : all_rules()) {
    const auto row = std::find_if(described.begin(), described.end(), [&](const reference::RuleRow& one) { return one.rule.text == rule.rule; });
    CAPTURE(rule.rule);
    REQUIRE(row != described.end());
    CHECK(row->edition.text == rule.edition);
  }
}
