// From findings to a rule's inputs: what is known, or why it is not. No reason why something was not done, and no empty slot,
// ever reads as no. Two examiners or two devices that disagree leave the input unknown. Source: decision rules page, section 0;
// clinical safety, requirement 8.
#pragma once

#include "core/interpret/tri.hpp"
#include "core/interpret/view.hpp"

#include <cstdint>
#include <functional>
#include <optional>
#include <string_view>

namespace limbledger::interpret {

// The classes (bits) that an input may be in, or nothing when it is unknown for `state`.
struct Heard {
  std::optional<std::uint8_t> bits;
  std::string_view state = "not_asked";
  Findings findings;  // those that were handed in

  [[nodiscard]] Tri as_tri() const;  // bit 0 no, bit 1 yes
};

// What one value says: bits, or nothing with the reason. The word of a state is not copied: it is a literal, or stands in the edition.
struct Said {
  std::optional<std::uint8_t> bits;
  std::string_view state;
};
using Says = std::function<Said(const model::Finding&)>;

[[nodiscard]] Heard hear(Findings findings, std::uint8_t all_bits, const Says& says);
[[nodiscard]] Said says_answer(const model::Finding& finding);
// The page's word for a reason: refused, unable_pain, unable_limb_absent, not_reliable; else the reason's own name.
[[nodiscard]] std::string_view state_of(model::WhyNot reason);
// Guarded, badly felt, or perhaps beside the landmark: its no is none.
[[nodiscard]] bool badly_examined(const model::Finding& finding);
// Why a finding settles nothing, or empty when it may.
[[nodiscard]] std::string_view unsettled_by(const model::Finding& finding);

}  // namespace limbledger::interpret
