// What was read of one motion on one side, in thousandths of a degree toward the direction the item is named for. A bound
// ("more than 120") leaves one end open; readings that differ (two examiners, two devices) span what they span; words such as
// "full", and a text with no agreed meaning, give no number. Nothing is guessed.
#pragma once

#include "core/interpret/view.hpp"

#include <cstdint>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace limbledger::interpret {

inline constexpr std::int64_t open_end = 1'000'000'000;  // no limit on this side

enum class Readable : std::uint8_t { number, unresolved, words_only };

struct Reading {
  const model::Item* item = nullptr;
  model::Side side{};
  Readable readable = Readable::number;
  std::int64_t low = -open_end;
  std::int64_t high = open_end;
  std::vector<const model::Finding*> findings;
  std::set<std::string> instruments;
  std::set<std::string> positions;
  bool instrument_missing = false;

  [[nodiscard]] bool exact() const { return low == high; }
};

// One for each motion and side that has a value, by item and side.
[[nodiscard]] std::vector<Reading> read_motions(const View& view);
// The reading of one motion on one side, of what stands there; nothing where none of it has a value.
[[nodiscard]] std::optional<Reading> read_motion(const model::Item& item, model::Side side, Findings findings);
// The same of lengths, times and counts for which there are norms; in thousandths of the item's unit.
[[nodiscard]] std::vector<Reading> read_measures(const View& view);

// Of all lengths, times and counts.
[[nodiscard]] std::vector<Reading> read_amounts(const View& view);

// Why a joint's motions and tests are nobody's to compare with: fused, implant; empty when they are.
[[nodiscard]] std::string_view not_native(const View& view, const model::Item& item, model::Side side);
// The same, and what else makes this comparator (norm, other_side) not valid here: hypermobile, paralysis ...
[[nodiscard]] std::string_view not_compared(const View& view, const model::Item& item, model::Side side, std::string_view comparator);

using reference::mode_of;
// 1 when the item is named for the positive direction of its axis, else -1.
[[nodiscard]] std::int64_t direction_of(const model::Item& item);
// The smallest change to believe with the instruments of both, in thousandths, with the rows it came from; nothing when an
// instrument was not recorded or has no row.
struct Precision {
  std::int64_t mdc95 = 0;
  std::vector<const reference::ErrorRow*> rows;
};
// Readings that no error is held for (no instrument named) contradict each other only from here on, in 0.1 degree: our convention.
constexpr std::int64_t contradicts_without_error = 300;
// The largest error that any instrument of these motions has: what is beyond it is beyond that of the instrument that nobody named. Thousandths of a degree.
[[nodiscard]] std::optional<std::int64_t> widest_error(const reference::Edition& edition, const std::vector<const Reading*>& readings);
[[nodiscard]] std::optional<Precision> precision_of(const reference::Edition& edition, const std::vector<const Reading*>& readings);

}  // namespace limbledger::interpret
