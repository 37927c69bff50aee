// What one exam says to the inputs of the Ottawa knee rule, and why an input is not known. Internal to the rule.
#pragma once

#include "core/interpret/rules/input.hpp"
#include "core/interpret/rules/knee/ottawa_knee.hpp"

#include <array>
#include <string>
#include <utility>
#include <vector>

namespace limbledger::interpret {

inline constexpr std::int64_t days_max = 7;
inline constexpr std::int64_t flexion_needed = 900;  // tenths of a degree: exactly 90 is able
inline constexpr std::int64_t steps_needed = 4;
inline constexpr Classes no_or_yes = 3;

// What to record to settle an input; age and days are facts of the person and the exam.
inline constexpr std::array<std::string_view, ottawa_input_count> ottawa_items{
    "",
    "",
    "knee.fibular_head_tender",
    "knee.patella_tender",
    "knee.bone_tender_elsewhere",
    "knee.flexion_active",
    "history.steps_at_once",
    "gait.steps_now",
    "history.knee_rule_exclusions",
    "body.pregnancy",
};

[[nodiscard]] constexpr std::size_t at(OttawaInput input) { return static_cast<std::size_t>(input); }

struct OttawaHeard {
  OttawaKnee knee;
  std::array<std::string, ottawa_input_count> states;
  std::vector<const model::Finding*> findings;
  bool unreliable = false;  // answers are not reliable: a gate of its own name
  bool could_be_pregnant = false;
  bool pregnancy_recorded = false;
  bool replaced = false;  // this knee, so far as anybody said
  bool no_limb = false;   // every item of this knee that was tried says so
  std::vector<std::pair<const model::Finding*, model::Degrees>> flexions;

  [[nodiscard]] bool pregnancy_asked_for() const { return pregnancy_recorded || could_be_pregnant; }
};

[[nodiscard]] OttawaHeard hear_ottawa(const View& view, model::Side side);
// Which knees were injured: the side of the complaint, and any side with tender bone. Without a side, every knee examined.
[[nodiscard]] std::vector<model::Side> injured_knees(const View& view);

}  // namespace limbledger::interpret
