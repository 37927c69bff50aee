// Sentences beside what an assessment holds, by the same words as the page of note.write; and the line above every page of a
// ledger that holds nobody. The interpretation itself knows no words.
#pragma once

#include "core/interpret/statement.hpp"
#include "core/model/exam/exam.hpp"
#include "core/reference/edition.hpp"
#include "core/report/words/words.hpp"
#include "core/service/desk.hpp"

#include <optional>
#include <string>

namespace limbledger::service {

// Null where no language was asked for. Faults: params.unknown_word at /language, internal.failure.
[[nodiscard]] Result<const report::Words*> words_in(const std::optional<model::Word>& language);
void add_texts(const model::Exam& exam, const report::Words& words, const reference::Edition& edition, interpret::Assessment& assessment);
// DEMONSTRATION, PRACTICE; empty for a clinic.
[[nodiscard]] std::string banner_of(LedgerKind kind, const report::Words& words);

}  // namespace limbledger::service
