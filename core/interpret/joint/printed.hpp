// Printed rules and lines of printed tables that a statement names: as rows with their first source. They compute nothing.
#pragma once

#include "core/interpret/statement.hpp"
#include "core/interpret/view.hpp"

#include <initializer_list>
#include <string_view>

namespace limbledger::interpret {

// Those of the edition, in the order given; an edition without them leaves them out.
void printed_rows(const View& view, std::initializer_list<std::string_view> rows, Judged& judged);

}  // namespace limbledger::interpret
