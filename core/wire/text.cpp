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

TextProblem check_text(std::string_view utf8, std::size_t length_max, bool many_lines) {
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
  }
  return code_points(utf8) > length_max ? TextProblem("limit.text") : TextProblem{};
}

}  // namespace limbledger::wire
