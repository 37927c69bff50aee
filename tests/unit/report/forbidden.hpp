// Words that no message and no page may use of its own; "not excluded" may stand. Source: clinical safety, part A.
#pragma once

#include <algorithm>
#include <cctype>
#include <string>
#include <vector>

namespace limbledger::report_test {

inline std::string lower(std::string text) {
  std::transform(text.begin(), text.end(), text.begin(), [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
  return text;
}

// Where a word or phrase stands on its own.
inline std::vector<std::size_t> places_of(const std::string& text, const std::string& word) {
  const auto letter = [](char c) { return std::isalpha(static_cast<unsigned char>(c)) != 0; };
  std::vector<std::size_t> places;
  for (std::size_t at = text.find(word); at != std::string::npos; at = text.find(word, at + 1)) {
    const bool left = at == 0 || !letter(text[at - 1]);
    const bool right = at + word.size() == text.size() || !letter(text[at + word.size()]);
    if (left && right) {
      places.push_back(at);
    }
  }
  return places;
}

inline std::vector<std::string> forbidden_in(const std::string& message) {
  const std::string text = lower(message);
  std::vector<std::string> found;
  for (const std::string word :
       {"excluded",    "excludes",  "ruled out", "rule out",  "rules out",    "safe",     "safely", "clear",     "cleared", "all clear", "normal",
        "abnormal",    "normally",  "diagnosis", "diagnosed", "confirmed",    "confirms", "risk",   "risks",     "score",   "scores",    "no fracture",
        "no red flags", "improved", "unlikely",  "likely",    "probability",  "percent",  "rare",   "must",      "required to", "recommended", "take",
        "forbidden",   "serious"}) {
    for (const std::size_t at : places_of(text, word)) {
      const bool not_before = at >= 4 && text.compare(at - 4, 4, "not ") == 0;
      if (!(word == "excluded" && not_before)) {
        found.push_back(word);
      }
    }
  }
  if (text.find('%') != std::string::npos) {
    found.emplace_back("%");
  }
  return found;
}

}  // namespace limbledger::report_test
