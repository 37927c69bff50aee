#include "core/reference/facts.hpp"
#include "core/wire/parse.hpp"

#include <utility>

namespace limbledger::reference {

namespace {

void change_sign(Figure& figure) { figure.steps = -figure.steps; }

void turn(NormRow& row) {
  if (row.mean) {
    change_sign(*row.mean);
  }
  for (const auto& [low, high] : {std::pair{&row.ci95_low, &row.ci95_high}, std::pair{&row.typical_low, &row.typical_high}}) {
    std::swap(*low, *high);
    for (auto* figure : {low, high}) {
      if (*figure) {
        change_sign(**figure);
      }
    }
  }
}

[[nodiscard]] const model::Item* motion_of(const Facts& facts, const model::FamilyId& family) {
  for (const model::Item& item : facts.items) {
    if (item.family == family && item.value == model::ValueKind::angle && item.toward) {
      return &item;
    }
  }
  return nullptr;
}

// The other end of the same plane of the same joint.
[[nodiscard]] bool is_opposite(const Facts& facts, const model::Item& motion, const model::Word& toward) {
  for (const model::Item& item : facts.items) {
    if (item.region == motion.region && item.axis == motion.axis && item.end != motion.end && item.toward == toward) {
      return true;
    }
  }
  return false;
}

}  // namespace

void turn_norms(Facts& facts, Faults& faults) {
  for (std::size_t i = 0; i < facts.norms.size(); ++i) {
    NormRow& row = facts.norms[i];
    const std::string path = "/norms" + wire::pointer_step(i);
    // What only is shown keeps the direction it was printed in; a row that names its items says no direction unless it must be turned.
    if (row.described.value_or(false) || (row.items && !row.toward)) {
      continue;
    }
    const model::Item* motion = row.items && !row.items->empty() ? facts.item(row.items->front()) : motion_of(facts, row.family);
    if (motion == nullptr || !motion->toward || !row.toward) {
      faults.emplace_back("item.unknown", path + "/family", row.row.text + ": the family of an item measured in degrees");
    } else if (!(*row.toward == *motion->toward)) {
      if (is_opposite(facts, *motion, *row.toward)) {
        turn(row);
        row.toward = *motion->toward;
      } else {
        faults.emplace_back("params.unknown_word", path + "/toward", row.row.text + ": a direction of this motion");
      }
    }
  }
}

}  // namespace limbledger::reference
