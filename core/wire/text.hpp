// Text members: what a text leaf must offer to be read, written and described, and the free texts with their limits.
// Lengths are code points. No control characters but tab and line feed, and none at all in names.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace limbledger::wire {

struct TextRule {
  std::string_view expected;  // for people: "a calendar date, 1971 or 1971-05 or 1971-05-12"
  std::string_view pattern;   // ECMA 262, for the schema; empty for free text
  std::size_t length_max;     // code points
};

// Empty, or the code of the fault that the text is.
using TextProblem = std::string_view;

// Code points of valid UTF-8.
[[nodiscard]] std::size_t code_points(std::string_view utf8);
// Empty, "limit.text", "value.empty" (nothing that shows) or "value.control_character" (also marks that turn the writing
// direction: a page's words for sides must not be turned by what stands beside them).
[[nodiscard]] TextProblem check_text(std::string_view utf8, std::size_t length_max, bool many_lines);

template <std::size_t LengthMax, bool ManyLines>
struct Text {
  std::string text;

  static constexpr TextRule wire_rule{ManyLines ? "text" : "text on one line, no control characters", "", LengthMax};
  [[nodiscard]] std::string to_text() const { return text; }
  [[nodiscard]] static TextProblem from_text(std::string_view from, Text& out) {
    const TextProblem problem = check_text(from, LengthMax, ManyLines);
    if (problem.empty()) {
      out.text = std::string(from);
    }
    return problem;
  }
  friend bool operator==(const Text&, const Text&) = default;
  friend bool operator<(const Text& a, const Text& b) { return a.text < b.text; }
};

using Name = Text<200, false>;
using Remark = Text<4000, true>;
using LongText = Text<20000, true>;

// A JSON value kept as it was written, without its outer white space; the writer copies it.
struct Raw {
  std::string json;
  friend bool operator==(const Raw&, const Raw&) = default;
};

}  // namespace limbledger::wire
