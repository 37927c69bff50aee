// A worn joint by what is told (nice_oa/NG226: NICE_NG226; what is unusual: NICE_NG226_ATYP): 45 or over, pain with use, stiff in the
// morning for 30 minutes or less. Met, it needs no film; where something is unusual another or a further cause is looked for. Said of
// the joint complained of; no figure of how often it is right is published with it.
#pragma once

#include "core/interpret/rules/rule.hpp"
#include "core/interpret/rules/sheet.hpp"

namespace limbledger::interpret {

inline constexpr std::string_view nice_oa_rule = "rule.nice_oa";
inline constexpr std::string_view nice_oa_edition = "nice_oa/NG226";

// Age (under 45, 45 or more), pain with use, stiff (30 or less, over 30); hurt lately, worse fast, hot, infection or growth suspected.
[[nodiscard]] SheetAnswer decide_nice_oa(std::span<const std::uint8_t> classes);
[[nodiscard]] std::vector<JudgedRule> run_nice_oa(const View& view);

}  // namespace limbledger::interpret
