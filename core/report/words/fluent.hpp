// The tree that a Fluent file reads as, and its reader. Only words.cpp looks at it.
#pragma once

#include "core/wire/fault.hpp"

#include <cstdint>
#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace limbledger::report {

struct Variant;

enum class PieceKind : std::uint8_t { text, variable, message, term, select };

struct Piece {
  PieceKind kind = PieceKind::text;
  std::string text;       // the text, or the name without $ and -
  std::string attribute;  // of a message or term
  std::vector<Variant> variants;
};
using Pattern = std::vector<Piece>;

struct Variant {
  std::string key;
  bool is_default = false;
  Pattern pattern;
};

struct Message {
  Pattern pattern;
  std::map<std::string, Pattern> attributes;
};

// Terms keep their leading dash.
using Messages = std::map<std::string, Message>;

// Adds one file. Faults: internal.failure with the line as its path.
[[nodiscard]] Result<bool> read_fluent(std::string_view text, Messages& messages);

}  // namespace limbledger::report
