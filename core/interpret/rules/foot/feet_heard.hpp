// What the rules of both feet hear in the same way: feeling, arteries, an earlier amputation, an answer; and when such rules run. Either
// foot is enough for a yes, and no foot that is there may be left out for a no. Source: decision rules page, sections 17 and 25.
#pragma once

#include "core/interpret/rules/injury.hpp"

#include <array>
#include <string>
#include <string_view>
#include <vector>

namespace limbledger::interpret {

inline constexpr std::array<model::Side, 2> both_feet{model::Side::left, model::Side::right};

struct FeetHearing {
  explicit FeetHearing(const View& of);

  const View& view;
  std::vector<JudgedRule> sensation;
  std::vector<JudgedRule> index;
  std::vector<const model::Finding*> findings;
  std::vector<model::FindingId> of_rules;

  // All that was heard, sorted and each once.
  [[nodiscard]] std::vector<model::FindingId> all_findings() const;
};

struct OneFoot {
  Told told;
  std::string item;  // what to record where it is open
};

[[nodiscard]] bool foot_is_gone(const View& view, model::Side side);
// A numb foot of any cause counts; a felt one that something contradicts stays open.
[[nodiscard]] OneFoot hear_numb(FeetHearing& heard, model::Side side);
// No pulse at both arteries of one foot, or a low index. One pulse that is not felt happens in healthy feet: it leaves it open until an
// index stands beside it. An index above 1.40 leaves it open whatever is felt.
[[nodiscard]] OneFoot hear_arteries(FeetHearing& heard, model::Side side);
[[nodiscard]] OneFoot hear_amputation(FeetHearing& heard, model::Side side);
[[nodiscard]] OneFoot hear_foot(FeetHearing& heard, std::string_view item, model::Side side, const Says& says = &says_answer);

// Something of a foot was examined, in a person with diabetes or a numb foot.
[[nodiscard]] bool feet_are_judged(const View& view);

}  // namespace limbledger::interpret
