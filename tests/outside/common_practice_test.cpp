// What the trade teaches about the knee (tests/outside/data/common_practice.csv, no publication behind it) against what the program
// accepts: none of it may be refused or asked back, and what it calls ordinary must fit inside the limits.
#include "core/model/check.hpp"
#include "core/reference/edition.hpp"
#include "core/reference/embedded.hpp"
#include "tests/outside/csv.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>

using namespace limbledger;

namespace {

[[nodiscard]] tests::CsvRow practice(const std::string& id) {
  for (const tests::CsvRow& row : tests::read_csv("common_practice.csv")) {
    if (row.at("id") == id) {
      return row;
    }
  }
  FAIL(id);
  return {};
}

// Whether a number of degrees toward the named direction is recorded without a question.
[[nodiscard]] bool taken(const std::string& item, const std::string& degrees) {
  const reference::Edition* edition = reference::built_in_edition();
  REQUIRE(edition != nullptr);
  model::Observation observation;
  observation.item.text = item;
  model::Angle angle;
  angle.toward_deg.emplace();
  REQUIRE(wire::read_number(degrees, model::Degrees::wire_rule.per_unit, angle.toward_deg->steps).empty());
  observation.value = angle;
  return model::check(observation, edition->catalogue(), {}, "").faults.empty();
}

[[nodiscard]] std::string words_of(std::string_view message) {
  const std::string_view words = reference::embedded("en_catalogue.ftl");
  const std::size_t at = words.find("\n" + std::string(message) + " = ");
  REQUIRE(at != std::string_view::npos);
  return std::string(words.substr(at, words.find('\n', at + 1) - at));
}

}  // namespace

TEST_CASE("CP06, CP07: the knee extends to straight, and to 15 beyond it, without a question") {
  CHECK(taken("knee.extension_passive", practice("CP06").at("low")));
  CHECK(taken("knee.extension_passive", practice("CP07").at("low")));
  CHECK(taken("knee.extension_passive", practice("CP07").at("high")));
  CHECK(!taken("knee.extension_passive", "15.1"));
}

TEST_CASE("CP08: flexion as it is taught is taken without a question, although its upper figure exceeds every mean") {
  const tests::CsvRow row = practice("CP08");
  CHECK(taken("knee.flexion_active", row.at("low")));
  CHECK(taken("knee.flexion_active", row.at("high")));
  std::int64_t upper = 0;
  REQUIRE(wire::read_number(row.at("high"), reference::Figure::wire_rule.per_unit, upper).empty());
  const auto norms = reference::built_in_edition()->norms();
  CHECK(std::none_of(norms.begin(), norms.end(), [&](const reference::NormRow& norm) { return norm.mean.steps >= upper; }));
}

TEST_CASE("CP09: the Lachman test is done at 20 to 30 degrees") {
  const std::string how = words_of("msg-item-knee_lachman-how");
  CHECK(how.find(practice("CP09").at("low") + " to " + practice("CP09").at("high") + " degrees") != std::string::npos);
}

TEST_CASE("CP11: a Lachman test tells a firm end from a soft one") {
  const model::Item* item = reference::built_in_edition()->item(model::ItemId{"knee.lachman"});
  REQUIRE(item != nullptr);
  REQUIRE(item->end_feels.has_value());
  for (const char* feel : {"firm", "soft"}) {
    CHECK(std::find(item->end_feels->begin(), item->end_feels->end(), model::Word{feel}) != item->end_feels->end());
  }
}

TEST_CASE("CP15: in the free sequence the active motion comes before the passive one") {
  const auto items = reference::built_in_edition()->items();
  const auto place = [&](const char* name) {
    return std::find_if(items.begin(), items.end(), [&](const model::Item& item) { return item.item.text == name; }) - items.begin();
  };
  CHECK(place("knee.flexion_active") < place("knee.flexion_passive"));
  CHECK(place("knee.extension_active") < place("knee.extension_passive"));
  CHECK(place("knee.flexion_passive") < place("knee.lachman"));
}
