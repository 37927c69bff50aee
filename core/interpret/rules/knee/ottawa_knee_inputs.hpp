// What one exam says to the inputs of the Ottawa knee rule, and why an input is not known. Internal to the rule.
#pragma once

#include "core/interpret/rules/knee/ottawa_knee.hpp"

#include <array>
#include <string>
#include <utility>
#include <vector>

namespace limbledger::interpret {

inline constexpr std::int64_t flexion_needed = 900;  // tenths of a degree: exactly 90 is able

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

struct OttawaHeard : KneeHeard {
  OttawaKnee knee;
  std::array<std::string, ottawa_input_count> states;
  std::vector<std::pair<const model::Finding*, model::Degrees>> flexions;
};

[[nodiscard]] OttawaHeard hear_ottawa(const View& view, model::Side side);

}  // namespace limbledger::interpret
