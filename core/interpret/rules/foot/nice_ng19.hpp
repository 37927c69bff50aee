// How often feet are looked at by NICE NG19 (classes as its training pages restate them: NG19_TRAINING; the guideline: NICE_NG19). low:
// none of deformity, neuropathy, ischaemia, callus alone allowed; moderate: one of the three; high: an earlier ulcer, an amputation,
// renal replacement, neuropathy with ischaemia, or either with callus or deformity; active: ulcer, spreading infection, gangrene, a hot
// red swollen foot, or narrowed arteries with rest pain of over two weeks. Of the person: either foot is enough for a yes. Shown beside
// the category of the feet; where both hold, the shorter interval counts unless local protocol says otherwise.
#pragma once

#include "core/interpret/rules/rule.hpp"
#include "core/interpret/rules/sheet.hpp"

namespace limbledger::interpret {

inline constexpr std::string_view nice_feet_rule = "rule.nice_feet";
inline constexpr std::string_view nice_feet_edition = "nice_ng19";
// The rules of one question, how soon these feet are looked at again.
inline constexpr std::string_view question_of_feet = "question.feet_again";

// The sums of the groups, each 0 or 1: any of it.
enum class NiceGroup : std::uint8_t { active, rest_pain, numb, narrowed, deformity, callus, history };
[[nodiscard]] SheetAnswer decide_nice_feet(std::span<const std::int64_t> groups);
// When the category of the feet is given.
[[nodiscard]] std::vector<JudgedRule> run_nice_feet(const View& view);

}  // namespace limbledger::interpret
