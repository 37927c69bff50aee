// Plain text for people: wrapping at 80 columns, capitals of sides, words of enumerators and of the catalogue, one finding's value.
// Marks that isolate direction take no column. Nothing is rounded again here.
#pragma once

#include "core/model/exam/exam.hpp"
#include "core/reference/edition.hpp"
#include "core/report/words/words.hpp"
#include "core/wire/type.hpp"

#include <string>
#include <string_view>

namespace limbledger::report {

inline constexpr std::size_t columns = 80;

// What somebody wrote, in the marks that isolate its direction.
[[nodiscard]] std::string as_written(std::string_view text);
// Columns that a text takes.
[[nodiscard]] std::size_t width_of(std::string_view utf8);
// `text` in lines, the first begun with `first`, the others indented by its width; ends with a line feed.
[[nodiscard]] std::string wrapped(std::string_view text, std::string_view first = {});

// The message for a word of the vocabulary (msg.<kind>.<word>), or the word itself with spaces.
[[nodiscard]] std::string word_of(const Words& words, std::string_view kind, std::string_view word);
template <class E>
[[nodiscard]] std::string enum_word(const Words& words, std::string_view kind, E value) {
  return word_of(words, kind, wire::type_of<E>().words[static_cast<std::size_t>(value)]);
}
// All findings of an exam, none where it has none.
[[nodiscard]] const std::vector<model::Finding>& findings_of(const model::Exam& exam);
[[nodiscard]] std::string side_of(const Words& words, model::Side side);
[[nodiscard]] std::string item_label(const Words& words, const reference::Edition& edition, const model::ItemId& item);
// Graded as a difference from the other side; and whether anything of that item stands on the other side.
[[nodiscard]] bool grades_against_other(const reference::Edition& edition, const model::ItemId& item);
[[nodiscard]] bool holds_other_side(const model::Exam& exam, const model::ItemId& item, model::Side side);
// The value, how it was taken, and what must be known about it; not the item, not the side.
[[nodiscard]] std::string value_text(const Words& words, const reference::Edition& edition, const model::Finding& finding);
// The value alone, with what it says where the catalogue has it in words.
[[nodiscard]] std::string bare_value_text(const Words& words, const reference::Edition& edition, const model::Finding& finding);
// The number or text of an angle alone: 118.5°, -20° toward extension, at least 120°.
[[nodiscard]] std::string angle_text(const Words& words, const model::Angle& angle);
// Date and time with the offset from UTC: a page is read where another time is kept.
[[nodiscard]] std::string local_time(model::Instant instant, std::int64_t offset_min);
[[nodiscard]] std::string joined(const std::vector<std::string>& parts, std::string_view between = ", ");

}  // namespace limbledger::report
