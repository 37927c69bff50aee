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

// What a sentence about a statement is made of.
struct StatementWords {
  model::ItemId item;
  Args args;
  std::string reading;
  std::string interval;
  std::string how;                   // the instruments
  std::vector<std::string> people;   // whom the figures were measured on
  std::vector<std::string> sources;
  std::vector<std::string> compared; // the rows in full: source, people, mode, position, instrument
  std::vector<std::string> figures;   // of the same rows, people and mode left out
  std::vector<std::string> remarks;  // what must be known beside it
  bool taught = false;               // a figure that was not read at its source
};
[[nodiscard]] StatementWords statement_words(const interpret::Statement& statement, const model::Exam& exam, const Words& words,
                                             const reference::Edition& edition);
[[nodiscard]] std::string statement_text(const interpret::Statement& statement, const model::Exam& exam, const Words& words,
                                         const reference::Edition& edition);
// The first line is the outcome; the others are criteria met, what would settle it, and remarks.
[[nodiscard]] std::vector<std::string> rule_lines(const interpret::RuleResult& rule, const model::Exam& exam,
                                                  const std::optional<model::Person>& person, const model::PartialDate& as_of, const Words& words,
                                                  const reference::Edition& edition);
// The outcome alone; where a film is not asked for, without the list of what was checked.
[[nodiscard]] std::string rule_short(const interpret::RuleResult& rule, const model::Exam& exam, const Words& words);
// Of a rule that advises something, the criteria that were met; empty for the others.
[[nodiscard]] std::string rule_met(const interpret::RuleResult& rule, const model::Exam& exam, const std::optional<model::Person>& person,
                                   const model::PartialDate& as_of, const Words& words, const reference::Edition& edition);
// What the points of a score are counted from, and what is open of them; empty where the rule is no such score.
[[nodiscard]] std::string rule_counted(const interpret::RuleResult& rule, const model::Exam& exam, const std::optional<model::Person>& person,
                                       const model::PartialDate& as_of, const Words& words, const reference::Edition& edition);
// The class of an alert comes first, the side in capitals.
[[nodiscard]] std::string alert_text(const interpret::Alert& alert, const Words& words);
[[nodiscard]] std::string prompt_text(const interpret::Statement& prompt, const Words& words);  // a referral, as the alerts are said
// `most`: of what is asked, so many by name and the others by count.
[[nodiscard]] std::string question_text(const interpret::Question& question, const Words& words, const reference::Edition& edition,
                                        std::size_t most = 1000);
// The members of a flat object, in their order; empty where it is none.
[[nodiscard]] Args args_of(const wire::Raw& params);
[[nodiscard]] std::string contradiction_text(const interpret::Contradiction& contradiction, const Words& words);

}  // namespace limbledger::report
