// The ankle-brachial index of one leg (abi/aha2016: AHA_ACC2016): the higher of the two ankle arteries over the higher of the two
// arms, in hundredths, rounded half up; the band is taken from the rounded number. A signal that is absent counts as 0, and is
// a finding. One ankle artery alone bounds the index from below, one arm alone from above: a band stands where both ends agree.
// Bands in our words: low <= 0.90 (printed: abnormal), borderline 0.91-0.99, expected 1.00-1.40, noncompressible > 1.40.
#pragma once

#include "core/interpret/rules/knee/inputs.hpp"
#include "core/interpret/rules/rule.hpp"

#include <array>
#include <cstdint>
#include <optional>

namespace limbledger::interpret {

inline constexpr std::string_view ankle_brachial_rule = "rule.ankle_brachial";
inline constexpr std::string_view ankle_brachial_edition = "abi/aha2016";

enum class IndexInput : std::uint8_t { dp, pt, ra, la };
inline constexpr std::size_t index_input_count = 4;
enum class IndexBand : std::uint8_t { low, borderline, expected, noncompressible };

// mmHg, in the order of IndexInput: the artery on the back of the foot, the one behind the ankle, right arm, left arm.
using AnklePressures = std::array<std::optional<Between>, index_input_count>;

struct AnkleIndex {
  Outcome outcome = Outcome::undetermined;
  std::optional<IndexBand> band;
  std::optional<std::int64_t> low;  // hundredths; nothing where that end is open
  std::optional<std::int64_t> high;
  std::array<bool, index_input_count> settles{};
};

[[nodiscard]] AnkleIndex ankle_brachial(const AnklePressures& in);
// Once for each leg with a pressure at the ankle.
[[nodiscard]] std::vector<JudgedRule> run_ankle_brachial(const View& view);

}  // namespace limbledger::interpret
