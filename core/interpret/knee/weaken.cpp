#include "core/interpret/knee/weaken.hpp"

#include "core/interpret/evidence/choose.hpp"

#include <algorithm>
#include <array>

namespace limbledger::interpret {

namespace {

using model::TestResult;

constexpr std::array<std::string_view, 4> forward{"knee.lachman", "knee.lachman_dropped_leg", "knee.lachman_prone", "knee.anterior_drawer"};
constexpr std::string_view pivot = "knee.pivot_shift";
constexpr std::string_view sag = "knee.posterior_sag";
constexpr std::string_view drawer_back = "knee.posterior_drawer";

[[nodiscard]] bool pulls_forward(const model::Item& item) { return std::find(forward.begin(), forward.end(), item.item.text) != forward.end(); }

[[nodiscard]] bool recorded(const View& view, const model::ItemId& item, model::Side side) { return found_at(view, item.text, side).any(); }

// The first alternative for this reason that the catalogue names and nobody has done yet.
[[nodiscard]] std::string instead_of(const View& view, const model::Item& item, std::string_view when, model::Side side) {
  for (const model::Instead& one : item.instead.value_or(std::vector<model::Instead>{})) {
    if (one.when.text == when && !recorded(view, one.item, side)) {
      return one.item.text;
    }
  }
  return {};
}

struct Measured {
  std::int64_t tenths = 0;
  const model::Finding* finding = nullptr;
};

// Every length that was read of one item, on this side or in the midline.
[[nodiscard]] std::vector<Measured> lengths_of(const View& view, const model::ItemId& item, model::Side side) {
  std::vector<Measured> lengths;
  for (const model::Finding* finding : view.findings()) {
    const auto* length = std::get_if<model::Length>(&finding->value);
    const bool here = finding->side == side || finding->side == model::Side::midline;
    if (length != nullptr && length->mm && finding->item == item && here && settles(*finding)) {
      lengths.push_back({length->mm->steps * (10 / model::Millimetres::wire_rule.per_unit), finding});
    }
  }
  return lengths;
}

// A printed limit of the item's row, each reason once. Beyond it by every reading: readings that differ about it settle nothing.
void hold_limits(const View& view, const model::Item& item, model::Side side, std::vector<Weakened>& all) {
  for (const model::Instead& one : item.instead.value_or(std::vector<model::Instead>{})) {
    const bool named = std::any_of(all.begin(), all.end(), [&](const Weakened& w) { return w.because == one.when.text; });
    if (!one.measured || named) {
      continue;
    }
    const std::vector<Measured> lengths = lengths_of(view, *one.measured, side);
    const bool beyond = !lengths.empty() && std::all_of(lengths.begin(), lengths.end(), [&](const Measured& length) {
      return (one.over && length.tenths > one.over->steps) || (one.under && length.tenths < one.under->steps);
    });
    if (!beyond) {
      continue;
    }
    Weakened weakened{one.when.text, false, instead_of(view, item, one.when.text, side), {}};
    for (const Measured& length : lengths) {
      weakened.findings.push_back(length.finding);
    }
    all.push_back(std::move(weakened));
  }
}

[[nodiscard]] std::string alternative(const View& view, const model::Item& item, std::string_view when, model::Side side,
                                      std::string_view otherwise) {
  const std::string named = instead_of(view, item, when, side);
  return named.empty() && !recorded(view, {std::string(otherwise)}, side) ? std::string(otherwise) : named;
}

}  // namespace

std::vector<Weakened> weakened_by(const View& view, const model::Item& item, model::Side side, const Found& found) {
  std::vector<Weakened> all;
  const bool negative = found.is(TestResult::negative);
  const bool forward_test = pulls_forward(item);
  const Found sagged = found_at(view, sag, side);
  if (sagged.is(TestResult::positive) && forward_test && !negative) {
    all.push_back({"posterior_sag", true, alternative(view, item, "posterior_sag", side, drawer_back), sagged.findings});
  }
  if (sagged.is(TestResult::positive) && item.item.text == drawer_back && negative) {
    all.push_back({"sagged_start", true, alternative(view, item, "posterior_sag", side, "knee.quadriceps_active"), sagged.findings});
  }
  const bool by_end_alone = found.is(TestResult::positive) && grade_of(found) == "0";
  if ((negative || by_end_alone) && found.guarded) {
    all.push_back({"guarded", true, instead_of(view, item, "guarding", side), {}});
  }
  const Found stroke = found_at(view, "knee.effusion_stroke", side);
  if (negative && forward_test && grade_of(stroke) == "3+") {
    all.push_back({"tense_effusion", true, {}, stroke.findings});
  }
  const Found medial = found_at(view, "knee.valgus_30", side);
  if (negative && item.item.text == pivot && grade_of(medial) == "3") {
    all.push_back({"medial_side_loose", true, instead_of(view, item, "medial_side_loose", side), medial.findings});
  }
  hold_limits(view, item, side, all);
  if (negative && (forward_test || item.item.text == pivot) && circumstances_of(view, side).acute) {
    all.push_back({"first_weeks", false, {}, {}});
  }
  return all;
}

}  // namespace limbledger::interpret
