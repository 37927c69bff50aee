// What a hand fills in for one step on paper, by its control: blanks with a unit, or words to ring. HTML.
#pragma once

#include "core/report/words/words.hpp"
#include "core/service/methods/say/form.hpp"

#include <cstddef>
#include <string>

namespace limbledger::service {

// Choices that take no more columns than this are marked on a line for each side; of a longer list, the words are written.
inline constexpr std::size_t letters_to_mark = 75;
[[nodiscard]] bool writes_words(const FormStep& step, const report::Words& words);
// An answer whose yes is the ordinary one (`ordinary` of the catalogue).
[[nodiscard]] bool is_good_yes(const model::Item& item);
// Of a sided step: its label stands over both boxes.
[[nodiscard]] bool takes_whole_row(const FormStep& step, const model::Item& item);

[[nodiscard]] bool is_measured(const FormStep& step);
// The choices of a long list, to stand once behind its label; nothing for another step.
[[nodiscard]] std::string listed_choices(const FormStep& step, const report::Words& words);
// What pos and neg of a test say, by its item's words.
[[nodiscard]] std::string test_meaning(const FormStep& step, const report::Words& words);
// `item`: what the catalogue says of the step. `sided`: one of two narrow boxes; else one wide one.
[[nodiscard]] std::string form_box(const FormStep& step, const model::Item& item, const report::Words& words, bool sided);

}  // namespace limbledger::service
