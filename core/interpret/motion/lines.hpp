// Pieces that the statements on motion share: names, params and the lines of the working.
#pragma once

#include "core/interpret/motion/reading.hpp"
#include "core/interpret/params.hpp"
#include "core/interpret/statement.hpp"

namespace limbledger::interpret {

// The statement's name, side, findings; grade cannot_tell until it is told.
[[nodiscard]] Judged begin_motion(std::string_view kind, Comparator comparator, const Reading& reading);
// `deg` for an item named for the positive direction, else `toward` and `toward_deg`; both ends where they differ.
void reading_params(const Reading& reading, Params& params);
void error_rows(const Precision& precision, Judged& judged);
// "118.5", "at least 120", "110 to 118"
[[nodiscard]] std::string reading_text(std::int64_t low, std::int64_t high);
void name_message(Judged& judged, std::string_view what);

}  // namespace limbledger::interpret
