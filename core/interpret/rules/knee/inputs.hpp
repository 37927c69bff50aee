// What the rules of an injured knee share: age, days, steps, exclusions, pregnancy, a knee that is replaced or not there, and which
// knees were injured. Ages in completed years on the day of the injury. Internal to the rules; no blank ever reads as no.
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

inline constexpr std::int64_t days_max = 7;
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

struct KneeHeard {
  std::optional<Between> age;
  std::string age_state;
  std::optional<Between> days;
  std::string days_state;
  std::optional<Between> steps;
  std::string steps_state;
  Told excluded;
  Told pregnant;
  bool unreliable = false;  // answers are not reliable: a gate of its own name
  bool could_be_pregnant = false;
  bool pregnancy_recorded = false;
  bool replaced = false;  // this knee, so far as anybody said
  bool fused = false;     // likewise: that it does not bend is nothing new
  bool no_injury = false; // the history says so: these rules were made for injured knees
  bool against_no = false;  // a film that shows a break, or bone tender where neither rule looks
  bool no_limb = false;   // the limb ends above, or every item of this knee that was tried says so
  std::vector<const model::Finding*> findings;

  [[nodiscard]] bool pregnancy_asked_for() const { return pregnancy_recorded || could_be_pregnant; }
};
[[nodiscard]] KneeHeard hear_knee(const View& view, model::Side side);

// An item on this side, and said of the person as a whole.
[[nodiscard]] std::vector<const model::Finding*> at_side_or_midline(const View& view, std::string_view item, model::Side side);
// An answer, with what it rests on added to `findings`. A no that this body cannot give (pressing a numb foot, steps of who never
// walked) is unknown.
[[nodiscard]] Told tell(const View& view, std::string_view item, model::Side side, const Says& says, std::vector<const model::Finding*>& findings);
// Four steps as an answer or as a number of steps.
[[nodiscard]] Said says_four_steps(const model::Finding& finding);
// Who gave the history was said not to be reliable.
[[nodiscard]] bool history_not_reliable(const View& view);

// Which knees were injured: the side of the complaint, and any side with tender bone. Without a side, every knee examined; where the
// complaint is not the knee (a free visit), the side of the complaint only if its knee was examined.
[[nodiscard]] std::vector<model::Side> injured_knees(const View& view);

// One thing that could settle an outcome, with what each class of its answers gives.
[[nodiscard]] Settle settle_by(const View& view, std::string_view input, std::string_view item, model::Side side,
                               const std::array<std::string_view, 3>& classes, const std::array<std::optional<Outcome>, classes_max>& gives);

// For the working: "62", "54 to 55", "at least 120", "not known"; "met", "not met", "open".
[[nodiscard]] std::string number_line(const std::optional<Between>& value, std::int32_t per_unit);
[[nodiscard]] std::string met_line(Tri value);

}  // namespace limbledger::interpret
