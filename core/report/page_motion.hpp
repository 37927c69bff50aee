// Motion in the words of the page: whom a norm was measured on, its interval, and the span of a reading with its error. Degrees; the
// span is the reading and 1.96 times the error on either side, which is what decides (clinical safety, part A; norms page).
#pragma once

#include "core/interpret/statement.hpp"
#include "core/reference/edition.hpp"
#include "core/report/words/words.hpp"

#include <string>

namespace limbledger::report {

// "boys and men 9 to 19 years".
[[nodiscard]] std::string people_of(const reference::NormRow& row, const Words& words);
// "SOUCIE2011, boys and men 9 to 19 years, passive, lying on the back, long goniometer": what a reading was compared with.
[[nodiscard]] std::string compared_with(const reference::NormRow& row, const Words& words);
// The same where people and mode are said already: source, position, instrument.
[[nodiscard]] std::string figures_of(const reference::NormRow& row, const Words& words);
// A number toward the item's direction: "3.4° short of straight" of an extension, whose bare sign is read in two ways; else "124.7".
[[nodiscard]] std::string toward_words(const std::string& number, const Args& params, const Words& words);
// "124.7 to 150.7" of the params `low` and `high`; an open end in words.
[[nodiscard]] std::string interval_of(const Args& params, const Words& words);
// "111.4 to 125.6" by the errors the statement rests on; empty where no single number was read, or no error is known.
[[nodiscard]] std::string span_of(const interpret::Statement& statement, const Args& params, const Words& words, const reference::Edition& edition);

}  // namespace limbledger::report
