// A reason to come back as it was written, under words that make it read as one.
#include "core/report/brief/brief.hpp"

#include <algorithm>
#include <array>

namespace limbledger::report {

bool says_come_back(std::string_view text) {
  std::string words = " ";
  for (const char c : text) {
    const bool upper = c >= 'A' && c <= 'Z';
    const bool letter = upper || (c >= 'a' && c <= 'z') || static_cast<unsigned char>(c) >= 0x80;
    words += upper ? static_cast<char>(c - 'A' + 'a') : (letter ? c : ' ');
  }
  words += ' ';
  constexpr std::array<std::string_view, 10> said{" if ", " when ", " whenever ", " should ", " come ", " comes ", " return ", " call ", " unless ", " in case "};
  return std::any_of(said.begin(), said.end(), [&](std::string_view one) { return words.find(one) != std::string::npos; });
}

std::string come_back_words(const PageView& view, const model::PlanItem& item) {
  return view.say(says_come_back(item.text.text) ? "plan.come_back" : "plan.come_back_if", {{"side", view.side_after(item.side), false, true}, {"text", item.text.text}});
}

}  // namespace limbledger::report
