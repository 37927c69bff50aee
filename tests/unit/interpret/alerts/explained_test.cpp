// statement.explain of a danger: the answers that say it, those that are missing, and the page. What is expected follows from the red flags page,
// sections 4 and 11, as the planted cases have it; the statement of a danger is its name with its side. All is invented.
#include "core/interpret/assess.hpp"
#include "tests/unit/interpret/alerts/story.hpp"

using namespace limbledger;
using namespace limbledger::interpret_test;

namespace {

Result<interpret::Working> why(const Bench& bench, const std::string& name, bool shown = false) {
  interpret::AssessAsk ask;
  ask.as_of = bench.ask().as_of;
  ask.protected_ = shown;
  return interpret::explain(bench.exam, bench.person, {}, *bench.edition, ask, {name});
}
bool says(const interpret::Working& working, const std::string& line) {
  return std::any_of(working.lines.begin(), working.lines.end(), [&](const wire::Name& one) { return one.text == line; });
}

}  // namespace

TEST_CASE("a danger is explained: raised by the answers that say it, answered no by those that do, open by what is missing") {
  const Bench raised_one = visit("back_leg", 1966, "history.back_pain yes; history.saddle_numbness yes");
  const auto yes = why(raised_one, "alert.ces");
  REQUIRE(yes.has_value());
  CHECK(yes->message.text.starts_with("msg.alert.ces."));
  CHECK(says(*yes, "history.saddle_numbness speaks_for_it"));
  CHECK(says(*yes, "class now, interrupts"));
  CHECK(says(*yes, "history.bladder_bowel_change not_asked"));  // would tell how far it went
  REQUIRE_FALSE(yes->rows.empty());
  CHECK(yes->rows.front().source.text == "CES_GIRFT");

  const auto no = why(visit("acute_knee", 1990, "history.mechanism twist; knee.look_open_wound left no"), "alert.open_fx:left");
  REQUIRE(no.has_value());
  CHECK(says(*no, "knee.look_open_wound:left speaks_against_it"));

  const auto open = why(visit("acute_knee", 1990, "history.mechanism twist"), "alert.acs:left");
  REQUIRE(open.has_value());
  CHECK(open->message.text == "msg.flag.acs");
  CHECK(says(*open, "history.pain_out_of_proportion:left not_asked"));
  CHECK(open->changes_if.size() == 1);
}

TEST_CASE("a danger of both sides is asked for with its side, and what is protected is explained where it may be shown alone") {
  Bench both = visit("acute_knee", 1990, "history.mechanism twist; leg.tense_compartment both yes");
  both.exam.side.reset();
  const auto sides = why(both, "alert.acs");
  REQUIRE_FALSE(sides.has_value());
  CHECK(sides.error().faults.front().code == "statement.unknown");
  CHECK(why(both, "alert.acs:right").has_value());
  const Bench child = visit("limping_child", 2024, "");
  const auto hidden = [&](bool shown) {
    for (const reference::AlertRow& row : child.edition->alerts()) {
      if (row.protected_.value_or(false) && why(child, row.alert.text, shown).has_value()) {
        return true;
      }
    }
    return false;
  };
  CHECK_FALSE(hidden(false));
  CHECK(hidden(true));
}
