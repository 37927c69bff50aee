// The part of the page that comes from the assessment: statements and rules as sentences.
#pragma once

#include "core/interpret/statement.hpp"
#include "core/model/exam/exam.hpp"
#include "core/model/person.hpp"
#include "core/reference/edition.hpp"
#include "core/report/words/words.hpp"

#include <optional>
#include <string>
#include <vector>

namespace limbledger::report {

[[nodiscard]] std::string statement_text(const interpret::Statement& statement, const model::Exam& exam, const Words& words,
                                         const reference::Edition& edition);
// The first line is the outcome; the others are criteria met, what would settle it, and remarks.
[[nodiscard]] std::vector<std::string> rule_lines(const interpret::RuleResult& rule, const model::Exam& exam,
                                                  const std::optional<model::Person>& person, const model::PartialDate& as_of, const Words& words,
                                                  const reference::Edition& edition);
[[nodiscard]] std::string contradiction_text(const interpret::Contradiction& contradiction, const Words& words);

}  // namespace limbledger::report
