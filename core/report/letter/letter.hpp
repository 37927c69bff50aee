// The letter about one exam (clinical safety, requirement 18): what is asked of the reader, how soon and because of which finding,
// the examiner's impression, what the person can no longer do, what was found and by which method, what was given, medicines and
// allergies, what was not examined, how to reply. It holds no hypothesis, of rules what decides on a film, a scan or a surgeon, and nothing that is kept from a page by
// default; a protected letter holds that alone. Lists that grow lose their values to fit one sheet of A4, by name and with where
// they are read; what people wrote, alerts, medicines, allergies and what is out of the ordinary never lose their names.
#pragma once

#include "core/model/exam/letter.hpp"
#include "core/model/place.hpp"
#include "core/report/page_parts.hpp"

#include <optional>
#include <string>
#include <vector>

namespace limbledger::report {

struct LetterAsk {
  std::optional<std::string> to;
  std::string question;
  std::optional<model::LetterUrgency> urgency;  // the examiner's own
  bool protected_ = false;
  std::optional<std::string> corrects;          // when the letter was written whose place this one has
  std::vector<std::string> changed;             // what has come since, in words
  std::vector<model::Telephone> telephones;
};

// Lines of one sheet of A4 in the letter's own layout; tried out with a browser.
inline constexpr std::size_t letter_lines_max = 68;

inline constexpr int letter_shortest = 9;

[[nodiscard]] Sheet letter_sheet(const PageView& view, const LetterAsk& ask);
// At one length, 0 (all of it) to letter_shortest; letter_sheet takes the first that fits.
// `bullets`: the shortest keeps a line for each, where they fit.
[[nodiscard]] Sheet letter_of_length(const PageView& view, const LetterAsk& ask, int shortened, bool bullets = false);
[[nodiscard]] std::size_t letter_lines(const Sheet& sheet);
[[nodiscard]] model::LetterPage letter_page(const Sheet& sheet);
// As it was written, and when (`written`, in words; the page itself was made before it was known); with `stale_because` it says on top what
// has changed since.
[[nodiscard]] Sheet letter_sheet(const model::LetterPage& page, const Words& words, const std::vector<model::Word>& stale_because, const std::string& written = {});

}  // namespace limbledger::report
