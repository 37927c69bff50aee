// The neutral-zero table of tests/outside/data/motion/neutral_zero.csv, both ways. Order and meaning: NEUTRALZERO (Cave and Roberts 1936;
// Ryf C, Weymann A 1995); the signs of the two ends are worked out in the table by hand.
#include "core/model/check.hpp"
#include "core/model/notation.hpp"
#include "core/reference/edition.hpp"
#include "tests/outside/csv.hpp"

#include <doctest/doctest.h>

using namespace limbledger;

TEST_CASE("the ten triples of the table mean what the table says, and are written back as they were") {
  const auto rows = tests::read_csv("motion/neutral_zero.csv");
  CHECK(rows.size() == 10);
  for (const tests::CsvRow& row : rows) {
    const auto ends = model::read_neutral_zero(row.at("triple"));
    REQUIRE_MESSAGE(ends.has_value(), row.at("triple"));
    CHECK(ends->first.to_text() == row.at("e"));
    CHECK(ends->second.to_text() == row.at("f"));
    CHECK((ends->first + ends->second).to_text() == row.at("arc"));
    CHECK(model::write_neutral_zero(*ends) == row.at("triple"));
    const auto order = model::read_order(model::Word{row.at("first") + "_zero_" + row.at("second")});
    REQUIRE(order.has_value());
    CHECK(order->first.text == row.at("first"));
    CHECK(order->second.text == row.at("second"));
  }
}

TEST_CASE("the knee triples of the table are recorded as extension and flexion on one axis") {
  const reference::Edition* edition = reference::built_in_edition();
  REQUIRE(edition != nullptr);
  const std::vector<std::string> confirmed{"value.unusual"};  // fixed recurvatum is asked back, and exists
  int seen = 0;
  for (const tests::CsvRow& row : tests::read_csv("motion/neutral_zero.csv")) {
    if (!row.at("meaning").starts_with("knee")) {
      continue;
    }
    ++seen;
    model::Observation observation;
    observation.item.text = "knee.arc_passive";
    model::Angle angle;
    angle.entered = wire::Name{row.at("triple")};
    angle.order = model::Word{row.at("first") + "_zero_" + row.at("second")};
    observation.value = angle;
    const auto checked = model::check(observation, edition->catalogue(), confirmed, "");
    REQUIRE_MESSAGE(checked.observations.size() == 2, row.at("triple"));
    const auto& extension = std::get<model::Angle>(checked.observations[0].value);
    const auto& flexion = std::get<model::Angle>(checked.observations[1].value);
    CHECK(extension.toward_deg->to_text() == row.at("e"));
    CHECK(flexion.toward_deg->to_text() == row.at("f"));
    // On the flexion axis the arc is the high end less the low end.
    CHECK((*flexion.deg - *extension.deg).to_text() == row.at("arc"));
  }
  CHECK(seen == 5);
}

TEST_CASE("what the table's rule refuses is refused: a negative arc, a broken number, a triple without a zero") {
  for (const char* text : {"0-110-20", "20-30-0", "10-20-140", "0-20-110.5", "0--20-110"}) {
    CHECK_MESSAGE(model::read_neutral_zero(text).has_error(), text);
  }
}
