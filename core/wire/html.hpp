// Text inside HTML, element or attribute: nothing of it is markup. The one place where the pages of the program escape; refuses nothing.
#pragma once

#include <string>
#include <string_view>

namespace limbledger::wire {

[[nodiscard]] inline std::string html_escaped(std::string_view text) {
  std::string out;
  for (const char c : text) {
    switch (c) {
      case '&':
        out += "&amp;";
        break;
      case '<':
        out += "&lt;";
        break;
      case '>':
        out += "&gt;";
        break;
      case '"':
        out += "&quot;";
        break;
      case '\'':
        out += "&#39;";
        break;
      default:
        out += c;
    }
  }
  return out;
}

}  // namespace limbledger::wire
