// The Ottawa knee rule (okr/1995, STIELL1995): which acute knee injuries need a film. Positive if any of: 55 years or older;
// bony tenderness of the head of the fibula; tenderness of the patella alone; flexion does not reach 90 degrees; four steps
// neither at once nor now. Ages in completed years on the day of the injury, angles in 0.1 degree. Not made for: under 5
// years, injuries more than 7 days old, the published exclusions; in pregnancy only a positive stands.
#pragma once

#include "core/interpret/rules/completions.hpp"
#include "core/interpret/rules/knee/inputs.hpp"
#include "core/interpret/rules/rule.hpp"
#include "core/interpret/tri.hpp"

#include <cstdint>
#include <optional>

namespace limbledger::interpret {

inline constexpr std::string_view ottawa_knee_rule = "rule.ottawa_knee";
inline constexpr std::string_view ottawa_knee_edition = "okr/1995";

struct OttawaKnee {
  std::optional<Between> age;   // completed years
  std::optional<Between> days;  // since the injury
  Tri fib = Tri::undetermined;
  Tri pat = Tri::undetermined;
  Tri other = Tri::undetermined;
  std::optional<Between> flex;  // tenths of a degree reached
  Tri imm = Tri::undetermined;
  std::optional<Between> steps;
  Tri excl = Tri::undetermined;
  Tri pregnant = Tri::no;  // an exclusion of its own kind: a positive stands
};

enum class OttawaInput : std::uint8_t { age, days, fib, pat, other, flex, imm, steps, excl, pregnant };
inline constexpr std::size_t ottawa_input_count = 10;

[[nodiscard]] Completed<ottawa_input_count> ottawa_knee(const OttawaKnee& in);
[[nodiscard]] std::vector<JudgedRule> run_ottawa_knee(const View& view);

}  // namespace limbledger::interpret
