// Which norm a reading is compared with. Of the default rows that speak of the item: those of this age in completed months, this sex
// (or both mixed), and no other position; of them the ones of the item's own mode before others, read before taught, in the recorded
// position, of this sex, of the narrower ages. Two of one standing are both given where the edition says that they are in dispute.
// No row is an ordinary answer and has its reason. Source: norms page (defaults, conflicts); clinical safety, C6 (nobody above 84).
#pragma once

#include "core/interpret/motion/reading.hpp"

namespace limbledger::interpret {

inline constexpr std::int64_t measured_to_years = 84;  // completed years; above, handbooks alone say "adult"
inline constexpr std::int64_t wider_from_years = 80;   // mean - 2.5 SD: suggested, not published

struct Limits {
  std::int64_t low = -open_end;
  std::int64_t high = open_end;
  friend bool operator==(const Limits&, const Limits&) = default;
};
// mean - 2 SD to mean + 2 SD, or what the source printed; nothing where the row says neither.
[[nodiscard]] std::optional<Limits> limits_of(const reference::NormRow& row, std::int64_t age_months = 0);

struct NormQuestion {
  const model::Item* item = nullptr;
  model::NormSex sex{};  // male or female
  std::int64_t age_months = 0;
  std::set<std::string> positions;
};

enum class WhyNone : std::uint8_t { none, motion, over_84, age, sex, position, spread };
[[nodiscard]] std::string_view why_word(WhyNone why);

struct NormChoice {
  std::vector<const reference::NormRow*> rows;  // more than one: of one standing and in dispute
  const reference::NormRow* shown = nullptr;    // without limits: shown beside the reading, judges nothing
  WhyNone why = WhyNone::none;                  // why there are no rows
};
[[nodiscard]] NormChoice choose_norm(const reference::Edition& edition, const NormQuestion& question);
// The first of them, or null.
[[nodiscard]] const reference::NormRow* norm_row(const reference::Edition& edition, const NormQuestion& question);
// The first later month in which another row may hold.
[[nodiscard]] std::int64_t next_change(const reference::Edition& edition, const model::Item& item, std::int64_t age_months);

}  // namespace limbledger::interpret
