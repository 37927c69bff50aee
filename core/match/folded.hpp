// A name as it is compared and searched, never as it is shown or stored: letters without case, marks and joiners, words
// apart. Latin letters lose their diacritics, Greek and Cyrillic their case, Arabic and Hebrew their vowel signs; every
// other script is compared code point by code point. Letters by the canonical decompositions of the Unicode Character
// Database 15; what has none (o with stroke, sharp s ...) by how it is commonly written without the letter.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace limbledger::match {

using Letters = std::u32string;

[[nodiscard]] Letters to_letters(std::string_view utf8);

// The words in the order written. Hyphens, points, commas and spaces part words; apostrophes vanish.
[[nodiscard]] std::vector<Letters> folded_words(std::string_view utf8);

// Words sorted and joined by one space: "Diallo, Amina" and "amina diallo" are the same name.
[[nodiscard]] Letters folded_name(std::string_view utf8);

// A folded name with Cyrillic and Greek letters that look like Latin ones as those: only to say that two names may look the same.
[[nodiscard]] Letters look_alike_skeleton(const Letters& name);

// Letters put in, left out, changed, or exchanged with their neighbour; stops counting at `most` + 1.
[[nodiscard]] std::size_t slips_between(const Letters& a, const Letters& b, std::size_t most);

// Without the spaces before and after it, of whatever width.
[[nodiscard]] std::string trimmed(std::string_view text);

}  // namespace limbledger::match
