// The Pittsburgh knee rule (pkr/1994, SEABERG1994, SEABERG1998): which knees that fell or were struck need a film. Positive if the
// mechanism was a fall or a blow and any of: under 12 years; over 50 years; fewer than four steps now, at the examination. Both
// ages are strict: 12 and 50 are not met. Negative otherwise, also after a twist however the person walks: that is shown as
// contradicted. Not made for: injuries more than 7 days old (some restatements: 6), the published exclusions (taught value).
#pragma once

#include "core/interpret/rules/knee/inputs.hpp"
#include "core/interpret/rules/rule.hpp"

namespace limbledger::interpret {

inline constexpr std::string_view pittsburgh_knee_rule = "rule.pittsburgh_knee";
inline constexpr std::string_view pittsburgh_knee_edition = "pkr/1994";

struct PittsburghKnee {
  std::optional<Between> age;   // completed years
  std::optional<Between> days;  // since the injury
  Tri blunt = Tri::undetermined;
  std::optional<Between> steps;
  Tri excl = Tri::undetermined;
  Tri pregnant = Tri::no;  // not among the published exclusions; what would be negative does not stand
};

enum class PittsburghInput : std::uint8_t { age, days, blunt, steps, excl, pregnant };
inline constexpr std::size_t pittsburgh_input_count = 6;

[[nodiscard]] Completed<pittsburgh_input_count> pittsburgh_knee(const PittsburghKnee& in);
[[nodiscard]] std::vector<JudgedRule> run_pittsburgh_knee(const View& view);

}  // namespace limbledger::interpret
