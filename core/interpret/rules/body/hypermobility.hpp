// Joints that move far everywhere: nine signs against a cut by puberty and age (beighton/2017-cutoffs: MALFAIT2017; signs BEIGHTON_BEYOND,
// counted strictly beyond 90 and beyond 10 degrees). Cut 6 before puberty, 5 from puberty to 50 years inclusive, 4 over 50; one sign
// below the cut with two or more of five questions (HAKIM2003, from memory) meets it as well. A sign that cannot be tried is unknown,
// never no. Puberty is asked, not worked out of the age; from 18 years on nobody is asked (our convention).
#pragma once

#include "core/interpret/rules/rule.hpp"
#include "core/interpret/rules/sheet.hpp"

namespace limbledger::interpret {

inline constexpr std::string_view hypermobility_rule = "rule.hypermobility";
inline constexpr std::string_view hypermobility_edition = "beighton/2017-cutoffs";

// Sums: signs of nine; questions answered yes, of which two are enough; before puberty; over 50.
enum class HypermobilityGroup : std::uint8_t { signs, questions, before_puberty, over_50 };
[[nodiscard]] SheetAnswer decide_hypermobility(std::span<const std::int64_t> sums);
// Once a person, where a sign or the count of signs was recorded.
[[nodiscard]] std::vector<JudgedRule> run_hypermobility(const View& view);

}  // namespace limbledger::interpret
