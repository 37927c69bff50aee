// Exams of the whole limb made from a seed: every complaint, any body, any age, all items of the built-in edition by what the catalogue
// says of them; what rules, hypotheses and dangers ask is read from the program's own lists when the tests start. Invented.
#pragma once

#include "tests/unit/interpret/draw.hpp"
#include "tests/unit/interpret/support.hpp"

#include <cstdint>
#include <optional>
#include <vector>

namespace limbledger::limb_exams {

using interpret_test::Bench;
using interpret_test::Draw;

struct Place {
  const model::Item* item = nullptr;
  model::Side side{};
  friend bool operator==(const Place&, const Place&) = default;
};

[[nodiscard]] const reference::Edition& facts();
// A value as the item's kind takes it, or a reason why it was not done (one in `not_done_one_in`); nothing for arcs and own words.
[[nodiscard]] std::optional<model::Value> any_value(const model::Item& item, Draw& draw, std::uint64_t not_done_one_in);
// With position, instrument and end feel, at times of little worth or not observed today (one in `weak_one_in`).
model::Finding& give(Bench& made, const Place& place, model::Value value, Draw& draw, std::uint64_t weak_one_in);
// What the rules of a complaint ask, as far as they can be led.
[[nodiscard]] const std::vector<Place>& asked_by_rules(const model::Word& complaint);

[[nodiscard]] Bench random_limb(std::uint64_t seed);

}  // namespace limbledger::limb_exams
