// Whether a text holds a part.
#pragma once

#include <string_view>

namespace limbledger::rpc {

inline bool holds(std::string_view text, std::string_view part) { return text.find(part) != std::string_view::npos; }

}  // namespace limbledger::rpc
