#include "core/wire/text.hpp"

#include <cstdint>

namespace limbledger::wire {

std::size_t code_points(std::string_view utf8) {
  std::size_t count = 0;
  for (const char c : utf8) {
    count += (static_cast<unsigned char>(c) & 0xC0U) != 0x80U ? 1U : 0U;
  }
  return count;
}

namespace {

// White space and marks that show nothing: a text of these alone says nothing.
[[nodiscard]] bool says_nothing(std::string_view utf8) {
  for (std::size_t i = 0; i < utf8.size();) {
    const std::string_view rest = utf8.substr(i);
    if (rest.front() == ' ' || rest.front() == '\t' || rest.front() == '\n') {
      i += 1;
    } else if (rest.starts_with("\xC2\xA0")) {
      i += 2;  // U+00A0
    } else if (rest.starts_with("\xE2\x80") && rest.size() > 2 && static_cast<unsigned char>(rest[2]) <= 0x8F) {
      i += 3;  // U+2000 to U+200F
    } else if (rest.starts_with("\xE2\x81\xA0") || rest.starts_with("\xE3\x80\x80") || rest.starts_with("\xEF\xBB\xBF")) {
      i += 3;  // U+2060, U+3000, U+FEFF
    } else {
      return false;
    }
  }
  return true;
}

}  // namespace

TextProblem check_text(std::string_view utf8, std::size_t length_max, bool many_lines) {
  if (says_nothing(utf8)) {
    return "value.empty";
  }
  for (std::size_t i = 0; i < utf8.size(); ++i) {
    const auto byte = static_cast<unsigned char>(utf8[i]);
    const bool allowed = many_lines && (utf8[i] == '\n' || utf8[i] == '\t');
    if ((byte < 0x20 && !allowed) || byte == 0x7F) {
      return "value.control_character";
    }
    const unsigned char second = i + 1 < utf8.size() ? static_cast<unsigned char>(utf8[i + 1]) : std::uint8_t{0};
    if (byte == 0xC2 && second < 0xA0) {
      return "value.control_character";  // U+0080 to U+009F
    }
    const unsigned char third = i + 2 < utf8.size() ? static_cast<unsigned char>(utf8[i + 2]) : std::uint8_t{0};
    if (!many_lines && byte == 0xE2 && second == 0x80 && (third == 0xA8 || third == 0xA9)) {
      return "value.control_character";  // the line and paragraph separators, in a text of one line
    }
    // Overrides and isolates of the writing direction: they could turn RIGHT and LEFT round on a page.
    const bool turns = byte == 0xE2 && ((second == 0x80 && third >= 0xAA && third <= 0xAE) || (second == 0x81 && third >= 0xA6 && third <= 0xA9));
    if (turns) {
      return "value.control_character";
    }
  }
  return code_points(utf8) > length_max ? TextProblem("limit.text") : TextProblem{};
}

}  // namespace limbledger::wire
