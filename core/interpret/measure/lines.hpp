// Pieces that the statements on lengths, girths, times and grades share. Thousandths of the item's unit.
#pragma once

#include "core/interpret/motion/reading.hpp"
#include "core/interpret/params.hpp"
#include "core/interpret/statement.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace limbledger::interpret {

// measure.<kind>:<item>:<side>, with its findings; grade cannot_tell until it is told. Midline: of the person, or of no side.
[[nodiscard]] Judged begin_measure(std::string_view kind, Comparator comparator, const model::ItemId& item, model::Side side,
                                   const std::vector<const model::Finding*>& findings);
// msg.measure.<what>, in statement and working.
void name_measure(Judged& judged, std::string_view what);
void tell_measure(Judged& judged, Verdict verdict, StatementGrade grade, std::string_view what);
// Adds the findings of the other reading.
void beside_measure(Judged& judged, const Reading& other);

// The number read of an item on a side, or null.
[[nodiscard]] const Reading* amount_at(const std::vector<Reading>& amounts, std::string_view item, model::Side side);
// The complaint's side and, where none is named, both.
[[nodiscard]] bool asked_of_side(const View& view, model::Side side);
// Both positions were recorded and differ.
[[nodiscard]] bool positions_differ(const Reading& a, const Reading& b);
[[nodiscard]] std::int64_t distance_of(std::int64_t a, std::int64_t b);

}  // namespace limbledger::interpret
