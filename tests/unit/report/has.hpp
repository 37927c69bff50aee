// Whether a page or a text holds a part.
#pragma once

#include <string_view>

namespace limbledger::report_test {

inline bool has(std::string_view text, std::string_view part) { return text.find(part) != std::string_view::npos; }

}  // namespace limbledger::report_test
