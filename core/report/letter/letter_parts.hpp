// The sections of a letter that rest on findings; letter.cpp puts them in order. `shortened` from 0 (all) to 9: what grows loses its
// values and keeps its names, with where the values are read; what was ordinary or is not advised is named by part of the body in the
// end. What is out of the ordinary on either side, danger signs whether asked after or not, what was not examined or not done, what was
// asked by name, and pulses, feeling and movement of the side that is complained of keep their names at every length; noes that
// the complaint alone turns on go with the last two.
#pragma once

#include "core/report/letter/letter.hpp"

namespace limbledger::report {

// Joined; in the place of what does not fit, what the others are and under which title of the record (`where`).
[[nodiscard]] std::string some_of(const PageView& view, const std::vector<std::string>& parts, std::size_t kept, const std::string& others, std::string_view where);
// A record that is not to be passed on is asked after at the clinic.
[[nodiscard]] bool record_stays(const PageView& view);
// Consent to send was asked for and given.
[[nodiscard]] bool may_be_sent(const PageView& view);
// Where nobody said which side, or both: each is complained of.
[[nodiscard]] bool is_complained_of(const PageView& view, model::Side side);
// Whether the foot has blood, feels and moves.
[[nodiscard]] bool blood_feeling_or_movement(const model::Finding& finding);
// What the person can do, was given or takes has a section of its own.
[[nodiscard]] bool speaks_of_function(const model::Finding& finding);
[[nodiscard]] bool stands_elsewhere(const model::Finding& finding);
// "no", "negative", "grade 2": what a list can do with.
[[nodiscard]] std::string value_in_a_word(const PageView& view, const model::Finding& finding);
// A rule that counts points, and that the letter tells of, rests on it: a no to it is a point that was not given.
[[nodiscard]] bool counts_in_points(const PageView& view, const model::Finding& finding);
// What was raised turns on it, for or against: an ordinary sign beside a danger is what a reader weighs it by.
[[nodiscard]] bool bears_on_raised(const PageView& view, const model::Finding& finding);
[[nodiscard]] std::string with_label(const PageView& view, const model::Finding& finding);

// What says the same is said once: "Skin hot or red / Kneecap tender: no".
struct SaidAlike {
  std::string value;
  std::vector<std::string> labels;
};
void add_alike(std::vector<SaidAlike>& all, const std::string& label, const std::string& value);
[[nodiscard]] std::string alike_text(const std::vector<SaidAlike>& all, bool answer_first = true);
// Where what is not in the letter is read: the clinic's note, under that title.
[[nodiscard]] std::string kept_where(const PageView& view, std::string_view title);
void add_unsettled(const PageView& view, int shortened, SheetSection& section);
void add_rules(const PageView& view, int shortened, SheetSection& section);

[[nodiscard]] SheetSection letter_urgency(const PageView& view, const LetterAsk& ask, int shortened);
[[nodiscard]] SheetSection letter_until(const PageView& view, const LetterAsk& ask, int shortened);
[[nodiscard]] SheetSection letter_function(const PageView& view, int shortened);
[[nodiscard]] SheetSection letter_found(const PageView& view, int shortened);
// With its side where the same danger was answered otherwise on the other one.
[[nodiscard]] std::string danger_named(const PageView& view, const interpret::Flag& flag);
[[nodiscard]] std::string danger_sides(const PageView& view);  // of which side those are that name none
void add_noes(const PageView& view, int shortened, SheetSection& section);
[[nodiscard]] SheetSection letter_treatment(const PageView& view);
[[nodiscard]] SheetSection letter_medicines(const PageView& view);
[[nodiscard]] SheetSection letter_not_examined(const PageView& view, int shortened);
// What is kept from a page by default, for a protected letter alone.
[[nodiscard]] SheetSection letter_private(const PageView& view);

}  // namespace limbledger::report
