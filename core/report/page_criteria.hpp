// A rule's criteria and answers in the words of the page. Core's working names them in English for whoever checks it by hand;
// what a person reads comes from messages, and a criterion without one is shown as the working has it.
#pragma once

#include "core/interpret/statement.hpp"
#include "core/report/words/words.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace limbledger::report {

// The criteria of a positive rule that are met, in the order of its working.
[[nodiscard]] std::vector<std::string> criteria_met(const interpret::RuleResult& rule, const interpret::Working& working, const Words& words);
// What a score counts, by name, and what is not known and would change it; empty where the rule has no words for it.
[[nodiscard]] std::string points_counted(const interpret::RuleResult& rule, const interpret::Working& working, const Words& words);
// An input, and a word of a rule ("gate", "flag"): a rule's own message where it has one.
[[nodiscard]] std::string input_text(const Words& words, const interpret::RuleResult& rule, std::string_view input);
[[nodiscard]] std::string rule_word(const Words& words, const interpret::RuleResult& rule, std::string_view kind, std::string_view word);
// "below 90" of an answer that would settle a rule.
[[nodiscard]] std::string if_text(const Words& words, std::string_view answer);

}  // namespace limbledger::report
