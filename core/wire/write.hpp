// A described value -> JSON text, members in the order of their description, absent optionals
// left out, no white space. The same value gives the same bytes on every machine.
#pragma once

#include "core/wire/type.hpp"

namespace limbledger::wire {

void write_onto(const Type& type, const void* value, std::string& out);

template <class T>
[[nodiscard]] std::string write(const T& value) {
  std::string out;
  write_onto(type_of<T>(), &value, out);
  return out;
}

// A text in double quotes with what JSON asks to be escaped; everything else as it is.
void write_quoted(std::string_view text, std::string& out);
[[nodiscard]] std::string quoted(std::string_view text);

}  // namespace limbledger::wire
