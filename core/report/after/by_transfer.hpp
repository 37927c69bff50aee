// What was written for a transfer, as note and letter tell it: a reader of one of them may never see the page that travelled.
#pragma once

#include "core/report/page_parts.hpp"

#include <string>
#include <string_view>

namespace limbledger::report {

// `what`: vessel, nerve. "Vessels: pulse felt (2026-11-24 13:00 UTC)".
[[nodiscard]] std::string last_check_line(const PageView& view, std::string_view what, const model::LastCheck& check);
[[nodiscard]] std::string given_words(const PageView& view, const model::GivenSoFar& given);
[[nodiscard]] std::string called_line(const PageView& view, const model::WasCalled& called);

}  // namespace limbledger::report
