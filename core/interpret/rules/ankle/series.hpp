// What the two Ottawa rules of an injured ankle share: one form (pain in a zone, and bone tender at one of two places or four steps
// neither at once nor now), other places. Not made for: under 2 years, injuries more than 10 days old (taught value), the published
// exclusions; in pregnancy only a positive stands. Where feeling is reduced, another injury hurts more, swelling hides the bone, or
// answers are not reliable, a "no" settles nothing. Source: decision rules page, sections 3 and 4 (STIELL1993, PLINT1999).
#pragma once

#include "core/interpret/rules/injury.hpp"
#include "core/interpret/rules/rule.hpp"

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <string_view>

namespace limbledger::interpret {

inline constexpr std::int64_t foot_days_max = 10;
inline constexpr std::int64_t foot_age_min = 2;

struct FootInjury {
  std::optional<Between> age;   // completed years
  std::optional<Between> days;  // since the injury
  Tri zone = Tri::undetermined;
  Tri first = Tri::undetermined;   // lateral malleolus; base of the fifth metatarsal
  Tri second = Tri::undetermined;  // medial malleolus; navicular
  Tri imm = Tri::undetermined;
  std::optional<Between> steps;
  Tri excl = Tri::undetermined;
  Tri pregnant = Tri::no;  // an exclusion of its own kind: a positive stands
};

enum class FootInput : std::uint8_t { age, days, zone, first, second, imm, steps, excl, pregnant };
inline constexpr std::size_t foot_input_count = 9;

// Where one of the two rules looks, and what it does not look at.
struct Series {
  std::string_view rule;
  std::string_view edition;
  std::string_view region;  // whose replaced, fused or missing joint it is
  std::array<std::string_view, foot_input_count> names;
  std::array<std::string_view, foot_input_count> items;  // what to record to settle an input
  std::array<std::string_view, 3> lines;                 // of the working: zone and the two places
  std::string_view film;                                 // the choice of history.film_result that contradicts a negative
  std::span<const std::string_view> elsewhere;           // bone whose tenderness contradicts a negative

  [[nodiscard]] std::string_view item(FootInput input) const { return items[static_cast<std::size_t>(input)]; }
};

// A yes, a positive test (some bone is squeezed, not felt), or a joint named.
[[nodiscard]] bool says_tender(const model::Finding& finding);
// Nothing for a rule that is not of the two.
[[nodiscard]] const Series* series_of(std::string_view rule);

[[nodiscard]] Completed<foot_input_count> ottawa_series(const FootInjury& in);
[[nodiscard]] std::vector<JudgedRule> run_series(const View& view, const Series& series);

}  // namespace limbledger::interpret
