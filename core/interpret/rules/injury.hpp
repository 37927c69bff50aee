// What the rules of injured people share, at whatever joint: age, days, steps, pregnancy, what an answer says and what would settle
// an outcome. Ages in completed years on the day of the injury. Internal to the rules; no blank ever reads as no.
#pragma once

#include "core/interpret/rules/completions.hpp"
#include "core/interpret/rules/input.hpp"
#include "core/interpret/tri.hpp"

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace limbledger::interpret {

// Known only to lie between, both ends included.
struct Between {
  std::int64_t low = 0;
  std::int64_t high = 0;
};

inline constexpr std::int64_t steps_needed = 4;
inline constexpr Classes no_or_yes = 3;

[[nodiscard]] Classes classes_of(Tri value);
// Classes cut at rising limits: below the first, from the first to below the second ...
template <std::size_t Count>
[[nodiscard]] Classes classes_of(const std::optional<Between>& value, const std::array<std::int64_t, Count>& limits) {
  Classes may_be = 0;
  for (std::size_t c = 0; c <= Count; ++c) {
    const bool reaches = !value || c == 0 || value->high >= limits[c - 1];
    const bool stays = !value || c == Count || value->low < limits[c];
    may_be = static_cast<Classes>(may_be | (reaches && stays ? 1U << c : 0U));
  }
  return may_be;
}

struct Told {
  Tri value = Tri::undetermined;
  std::string state = "not_asked";
};

struct InjuryHeard {
  std::optional<Between> age;
  std::string age_state;
  std::optional<Between> days;
  std::string days_state;
  std::optional<Between> steps;
  std::string steps_state;
  bool walks_not = false;  // told, or tried and stopped, where no number of steps is known: it answers no criterion, and speaks against a negative
  Told excluded;
  Told pregnant;
  bool unreliable = false;  // answers are not reliable today
  bool could_be_pregnant = false;
  bool pregnancy_recorded = false;
  bool no_injury = false;  // the history says so: these rules were made for injured people
  std::vector<const model::Finding*> findings;

  [[nodiscard]] bool pregnancy_asked_for() const { return pregnancy_recorded || could_be_pregnant; }
};
// All but `excluded`, which each rule reads in its own way; the item of its exclusions may name a pregnancy.
[[nodiscard]] InjuryHeard hear_injury(const View& view, model::Side side, std::string_view exclusions_item);

// An item on this side, and said of the person as a whole.
[[nodiscard]] std::vector<const model::Finding*> at_side_or_midline(const View& view, std::string_view item, model::Side side);
// An answer, with what it rests on added to `findings`. A no that this body cannot give (pressing a numb foot, steps of who never
// walked) is unknown.
[[nodiscard]] Told tell(const View& view, std::string_view item, model::Side side, const Says& says, std::vector<const model::Finding*>& findings);
// The same of an item that was looked up; null where the edition does not have it.
[[nodiscard]] Told tell(const View& view, const model::Item* known, std::string_view item, model::Side side, const Says& says,
                        std::vector<const model::Finding*>& findings);
// Whether this finding says that the person does not walk now, in whatever way it is told.
[[nodiscard]] bool says_no_walking(const model::Finding& finding);
// Four steps as an answer or as a number of steps.
[[nodiscard]] Said says_four_steps(const model::Finding& finding);
// Who gave the history was said not to be reliable.
[[nodiscard]] bool history_not_reliable(const View& view);

// Of which a rule's exclusions say something: none of these, or a pregnancy, which is an exclusion of its own kind.
[[nodiscard]] bool is_pregnancy(const model::ChoiceId& choice);
[[nodiscard]] bool is_none(const model::ChoiceId& choice);
[[nodiscard]] std::vector<model::ChoiceId> choices_of(const model::Finding& finding);

// One thing that could settle an outcome, with what each class of its answers gives.
[[nodiscard]] Settle settle_by(const View& view, std::string_view input, std::string_view item, model::Side side,
                               const std::array<std::string_view, 3>& classes, const std::array<std::optional<Outcome>, classes_max>& gives);

// For the working: "62", "54 to 55", "at least 120", "not known"; "met", "not met", "open".
[[nodiscard]] std::string number_line(const std::optional<Between>& value, std::int32_t per_unit);
[[nodiscard]] std::string met_line(Tri value);

}  // namespace limbledger::interpret
