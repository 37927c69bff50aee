// The alerts of an assessment as lines of a page, and one line of what was asked, not asked, and could not be answered. What
// protects a child or partner is never printed here: it has a sealed letter of its own. Source: clinical safety, A, C2, C16.
#pragma once

#include "core/interpret/statement.hpp"
#include "core/reference/edition.hpp"
#include "core/report/words/words.hpp"

#include <string>
#include <vector>

namespace limbledger::report {

// Each alert with what is done meanwhile.
[[nodiscard]] std::vector<std::string> alert_lines(const interpret::Assessment& assessment, const Words& words);
[[nodiscard]] std::string flags_line(const interpret::Assessment& assessment, const Words& words, const reference::Edition& edition);
// "referral.perthes:left" and the like, which compare no reading.
[[nodiscard]] bool is_referral(const interpret::Statement& statement);
[[nodiscard]] std::string referral_text(const interpret::Statement& statement, const Words& words);

}  // namespace limbledger::report
