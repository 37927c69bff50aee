// What the timed and counted tests of the whole person share: a time, or that it could not be done (not done, unable), which is no
// missing value; not done for any other reason, from which nothing is concluded; and the gates by age. Times in 0.1 s. Source: decision
// rules page, section 20 (CDC_TUG, CDC_CHAIR, CDC_4STAGE) and 23.
#pragma once

#include "core/interpret/rules/sheet.hpp"

namespace limbledger::interpret {

struct Timed {
  MeasuredAt measured;
  bool unable = false;     // tried, and could not
  bool not_done = false;   // recorded as not done, for reasons that say nothing of what the person can
  bool recorded = false;
};
[[nodiscard]] Timed timed_at(const View& view, std::string_view item, model::Side side, std::vector<const model::Finding*>& findings);

// A number cut at rising limits as add_number does, with one more class at the end: unable.
void add_timed(RuleSheet& sheet, std::string_view input, std::string_view said, std::string_view item, model::Side side, const Timed& timed,
               std::span<const std::int64_t> limits, std::vector<std::string_view> classes);

// Made for people of 65 and over: under 18 not applicable; from 18 to 64 what is positive stands and nothing else is said (our convention).
inline constexpr std::uint8_t aged_under_18 = 0;
inline constexpr std::uint8_t aged_18_to_64 = 1;
void add_age_of_65(const View& view, RuleSheet& sheet);
[[nodiscard]] SheetAnswer answer_for_65(std::uint8_t age_class, bool positive);
// The flag for a positive of somebody younger.
void flag_made_for_65(const View& view, RuleResult& result);

// Made for people who walk on two legs: of who uses a wheelchair, or lacks a leg from the ankle up, nothing is negative; that somebody in
// a wheelchair could not do it is no result either. What was measured and is positive stands (our convention).
[[nodiscard]] std::string_view gate_of_legs(const View& view);
[[nodiscard]] SheetAnswer answer_on_legs(const SheetAnswer& answer, std::string_view gate, bool unable);
template <class Decision>
[[nodiscard]] auto for_who_walks(const View& view, bool unable, Decision decide) {
  return [gate = gate_of_legs(view), unable, decide](auto classes) { return answer_on_legs(decide(classes), gate, unable); };
}

// Nothing is concluded from what was not done.
[[nodiscard]] JudgedRule judge_not_done(const View& view, const RuleSheet& sheet);

}  // namespace limbledger::interpret
