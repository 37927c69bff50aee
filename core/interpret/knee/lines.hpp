// Pieces that the statements on one knee share: figures of the edition as rows, a pair of readings as params, and what a
// graded or plain test counts as. Agreement figures are named beside a statement and compute nothing.
#pragma once

#include "core/interpret/motion/compare.hpp"
#include "core/interpret/motion/lines.hpp"

#include <optional>
#include <string_view>
#include <vector>

namespace limbledger::interpret {

// Rows of figures.json about this, for this item (or none: of any item), added to statement and working.
void figure_rows(const View& view, std::string_view about, std::string_view item, Judged& judged);
// The first of them, or null.
[[nodiscard]] const reference::FigureRow* figure_of(const View& view, std::string_view about, std::string_view item);

// "deg"/"toward_deg" of the reading, "other_deg", "difference_deg", "needed_deg", "methods_differ"; findings and inputs of the other;
// the lines "118 - 110 = 8", "8 does not exceed 10". False where the two cannot be compared: then the message says why.
[[nodiscard]] bool pair_lines(const Reading& reading, const Reading& other, const Difference& difference, std::string_view prefix, Params& params,
                              Judged& judged);

// What was found at one item on one side that may settle something, and what it counts as: nothing where the examiners
// disagree, a value is held in conflict with another, or no row of the catalogue counts it.
struct Found {
  std::vector<const model::Finding*> findings;
  std::optional<model::TestResult> result;
  bool disagree = false;
  bool guarded = false;  // guarded, poor contact, landmark unsure, or effort limited on any of them

  [[nodiscard]] bool any() const { return !findings.empty(); }
  [[nodiscard]] bool is(model::TestResult wanted) const { return result && *result == wanted; }
};
[[nodiscard]] Found found_at(const View& view, std::string_view item, model::Side side);
// The grade that all of them name, or empty.
[[nodiscard]] std::string grade_of(const Found& found);
// A statement on one item and side that is no reading in degrees; grade cannot_tell until it is told.
[[nodiscard]] Judged begin_knee(std::string_view kind, const model::ItemId& item, model::Side side, const Found& found);
// msg.<what>, in statement and working.
void name_knee(Judged& judged, std::string_view what);

}  // namespace limbledger::interpret
