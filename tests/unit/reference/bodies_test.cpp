// data/bodies.json as the loader checks it: what does not resolve is refused by the row's name. On the built-in edition: every level
// of an amputation reaches what the next lower one reaches, every message and every comparator's word is there. Logic tests.
#include "core/report/words/words.hpp"
#include "core/reference/edition.hpp"
#include "tests/unit/invented/edition.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>

using namespace limbledger;

namespace {

[[nodiscard]] std::string body_faults(const std::string& row) {
  InventedTexts texts = invented_texts();
  texts.bodies = R"({"bodies":[)" + row + "]}";
  const auto edition = reference::Edition::load(texts.view());
  if (edition) {
    return "taken";
  }
  std::string all;
  for (const wire::Fault& fault : edition.error().faults) {
    all += (all.empty() ? "" : " ") + fault.code + "@" + fault.path;
  }
  return all;
}
[[nodiscard]] std::string body_row(const std::string& members) {
  return R"({"body":"body_state.invented",)" + members + R"("message":"msg.body.invented","sources":["INVENTED1"],"status":"read"})";
}
[[nodiscard]] const reference::BodyRow& row_named(const std::string& name) {
  const auto rows = reference::built_in_edition()->bodies();
  const auto found = std::find_if(rows.begin(), rows.end(), [&](const auto& one) { return one.body.text == "body_state." + name; });
  REQUIRE(found != rows.end());
  return *found;
}

}  // namespace

TEST_CASE("a body row names items, choices, positions and sources that are there, and each part with what belongs to it") {
  CHECK(body_faults(body_row(R"("item":"body.knee_fused",)")) == "taken");
  CHECK(body_faults(body_row(R"("item":"body.no_such",)")) == "item.unknown@/bodies/0/item");
  CHECK(body_faults(body_row("")) == "params.missing@/bodies/0/item");
  CHECK(body_faults(body_row(R"("item":"body.knee_fused","choices":["whole"],)")).starts_with("value.disagrees@/bodies/0/choices"));
  CHECK(body_faults(body_row(R"("item":"body.knee_fused","absent":["knee.no_such"],"why_not":"fused",)")) == "item.unknown@/bodies/0/absent/0");
  CHECK(body_faults(body_row(R"("item":"body.knee_fused","absent":["knee."],)")) == "params.missing@/bodies/0/why_not");
  CHECK(body_faults(body_row(R"("item":"body.knee_fused","uncompared":["knee."],)")) == "params.missing@/bodies/0/comparators");
  CHECK(body_faults(body_row(R"("item":"body.knee_fused","uncompared":["knee."],"comparators":["mood"],)")) == "params.unknown_word@/bodies/0/comparators/0");
  CHECK(body_faults(body_row(R"("item":"body.knee_fused","cannot":["fly"],)")) == "params.unknown_word@/bodies/0/cannot/0");
  CHECK(body_faults(body_row(R"("item":"body.knee_fused","gate":"fused",)")) == "params.missing@/bodies/0/gate_regions");
  CHECK(body_faults(body_row(R"("age_from":5,"age_under":2,)")) == "value.out_of_range@/bodies/0/age_under");
}

TEST_CASE("what a higher amputation takes away holds what every lower one takes away") {
  const auto& edition = *reference::built_in_edition();
  const std::vector<std::string> levels{"limb_at_hip", "limb_through_thigh", "limb_at_knee", "limb_through_shin", "limb_at_ankle"};
  for (std::size_t i = 0; i + 1 < levels.size(); ++i) {
    const auto& higher = edition.reach_of(row_named(levels[i])).absent;
    const auto& lower = edition.reach_of(row_named(levels[i + 1])).absent;
    for (const model::Item& item : edition.items()) {
      CHECK_MESSAGE((!lower[edition.index(item)] || higher[edition.index(item)]), levels[i] << " keeps " << item.item.text);
    }
  }
  for (const model::Item& item : edition.items()) {
    if (item.region.text == "ankle" || item.region.text == "foot") {
      CHECK(edition.reach_of(row_named("limb_through_shin")).absent[edition.index(item)]);
    }
    if (item.region.text == "hip" || item.region.text == "knee") {
      CHECK_FALSE(edition.reach_of(row_named("limb_through_shin")).absent[edition.index(item)]);
    }
  }
}

TEST_CASE("every state of a body has its words, and every item that opens one is in the catalogue") {
  const report::Words* words = report::built_in_words();
  REQUIRE(words != nullptr);
  for (const reference::BodyRow& row : reference::built_in_edition()->bodies()) {
    CHECK_MESSAGE(words->has(row.message.text), row.message.text);
    if (row.gate) {
      CHECK_MESSAGE(words->has("msg.rule.gate." + row.gate->text), row.gate->text);
    } else if (row.uncompared) {
      const std::string state = row.message.text.substr(row.message.text.rfind('.') + 1);
      CHECK_MESSAGE(words->has("msg.body.state." + state), state);
    }
  }
}
