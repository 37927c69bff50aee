// What a hand fills in for one step on paper, by its control: blanks with a unit, or words to ring. HTML.
#pragma once

#include "core/report/words/words.hpp"
#include "core/service/methods/say/form.hpp"

#include <cstddef>
#include <string>

namespace limbledger::service {

// So many numbered choices are ringed; of more, the number is written.
inline constexpr std::size_t choices_to_ring = 6;
[[nodiscard]] bool writes_number(const FormStep& step);

[[nodiscard]] bool is_measured(const FormStep& step);
// The choices of a step by number, to stand once below its label; nothing for another control.
[[nodiscard]] std::string numbered_choices(const FormStep& step, const report::Words& words);
// `sided`: one of two narrow boxes; else one wide one.
[[nodiscard]] std::string form_box(const FormStep& step, const report::Words& words, bool sided);

}  // namespace limbledger::service
