// What the trade teaches about knee and hip (tests/outside/data/common_practice.csv: common practice, no source) against what the program
// accepts: none of it may be refused or asked back, and what it calls ordinary must fit inside the limits.
#include "core/model/check.hpp"
#include "core/reference/edition.hpp"
#include "core/report/words/words.hpp"
#include "tests/outside/csv.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

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
  REQUIRE_MESSAGE(report::built_in_words()->has(message), message);
  return report::built_in_words()->say(message);
}

[[nodiscard]] bool says(std::string_view message, std::string_view piece) { return words_of(message).find(piece) != std::string::npos; }

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
  CHECK(std::none_of(norms.begin(), norms.end(), [&](const reference::NormRow& norm) { return norm.family.text == "knee.flexion" && norm.mean && norm.mean->steps >= upper; }));
}

TEST_CASE("CP09: the Lachman test is done at 20 to 30 degrees") {
  const std::string how = words_of("msg.item.knee_lachman.how");
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

TEST_CASE("CP01: hip flexion as it is taught is taken without a question, and lies among the means of adults") {
  const tests::CsvRow row = practice("CP01");
  CHECK(taken("hip.flexion_passive", row.at("low")));
  CHECK(taken("hip.flexion_passive", row.at("high")));
  std::int64_t low = 0;
  std::int64_t high = 0;
  REQUIRE(wire::read_number(row.at("low"), reference::Figure::wire_rule.per_unit, low).empty());
  REQUIRE(wire::read_number(row.at("high"), reference::Figure::wire_rule.per_unit, high).empty());
  for (const reference::NormRow& norm : reference::built_in_edition()->norms()) {
    if (norm.source.text == "SOUCIE2011" && norm.family.text == "hip.flexion" && norm.age_low.steps >= 20) {
      CHECK_MESSAGE((norm.mean->steps >= low && norm.mean->steps <= high), norm.row.text);
    }
  }
}

TEST_CASE("CP04: inward rotation of the hip is the foot going outward, and the reverse; the item is named for the thigh") {
  for (const char* name : {"hip.internal_rotation_passive_seated", "hip.external_rotation_passive_seated"}) {
    const model::Item* item = reference::built_in_edition()->item(model::ItemId{name});
    REQUIRE(item != nullptr);
    CHECK(item->axis == model::Word{"external_rotation"});
  }
  CHECK(says("msg.item.hip_internal_rotation_passive_seated.how", "FOOT goes outward"));
  CHECK(says("msg.item.hip_external_rotation_passive_seated.how", "FOOT goes inward"));
  // 30 inward and 30 outward are both ordinary numbers toward the direction that each item is named for.
  CHECK(taken("hip.internal_rotation_passive_seated", "30"));
  CHECK(taken("hip.external_rotation_passive_seated", "30"));
}

TEST_CASE("CP10: the drawers are done with the foot held, hip at 45 and knee at 90") {
  const tests::CsvRow row = practice("CP10");
  for (const char* message : {"msg.item.knee_anterior_drawer.how", "msg.item.knee_posterior_drawer.how"}) {
    CHECK(says(message, "hip bent " + row.at("low") + ", knee " + row.at("high")));
    CHECK(says(message, "held"));
  }
}

TEST_CASE("CP12: an acute knee is asked for the hollows, the stroke test and the tap, in this order") {
  const model::Sequence* sequence = reference::built_in_edition()->sequence(model::Word{"acute_knee"});
  REQUIRE(sequence != nullptr);
  const auto place = [&](const char* name) {
    return std::find_if(sequence->steps.begin(), sequence->steps.end(), [&](const model::SequenceStep& step) { return step.item.text == name; }) -
           sequence->steps.begin();
  };
  CHECK(place("knee.look_swelling_spread") < place("knee.effusion_stroke"));
  CHECK(place("knee.effusion_stroke") < place("knee.effusion_ballottement"));
  CHECK(place("knee.effusion_ballottement") < static_cast<std::ptrdiff_t>(sequence->steps.size()));
}

TEST_CASE("CP13: the meniscus is tested from full flexion with fingers on the joint line, both turns") {
  for (const char* piece : {"fully bent", "fingers on the joint line", "shin out", "turn it in"}) {
    CHECK_MESSAGE(says("msg.item.knee_mcmurray.how", piece), piece);
  }
}

TEST_CASE("CP16: for a heavy thigh or small hands the drawer is among the alternatives, after the better ones") {
  const model::Item* item = reference::built_in_edition()->item(model::ItemId{"knee.lachman"});
  REQUIRE(item != nullptr);
  for (const char* when : {"heavy_thigh", "small_hands"}) {
    std::vector<std::string> order;
    for (const model::Instead& one : *item->instead) {
      if (one.when.text == when) {
        order.push_back(one.item.text);
      }
    }
    CHECK(order == std::vector<std::string>{"knee.lachman_dropped_leg", "knee.lachman_prone", "knee.anterior_drawer"});
  }
}
