// Sentences beside what a reply holds, by the same words as the page of note.write; and the line above every page of a
// ledger that holds nobody. The interpretation itself knows no words.
#pragma once

#include "core/interpret/statement.hpp"
#include "core/model/exam/exam.hpp"
#include "core/reference/edition.hpp"
#include "core/report/words/words.hpp"
#include "core/service/desk.hpp"

#include <optional>
#include <string>
#include <vector>

namespace limbledger::service {

// English where none was asked for. Faults: params.unknown_word with the languages there are.
[[nodiscard]] Result<const report::Words*> language_known(const std::optional<model::Word>& language);
// The same; null where none was asked for.
[[nodiscard]] Result<const report::Words*> words_if_asked(const std::optional<model::Word>& language);
// Of pages that there are in English alone: null where no language was asked for. Faults: params.unknown_word at /language, internal.failure.
[[nodiscard]] Result<const report::Words*> words_in(const std::optional<model::Word>& language);

// Whoever asks in another language than English gets whole English sentences with its mark: half a warning is worse.
class Sentences {
 public:
  // None where no language was asked for. Faults: params.unknown_word at /language, internal.failure.
  [[nodiscard]] static Result<Sentences> in(const std::optional<model::Word>& language);
  [[nodiscard]] bool wanted() const { return words_ != nullptr; }
  [[nodiscard]] const report::Words& words() const { return *words_; }
  [[nodiscard]] wire::LongText whole(std::string sentence) const;

 private:
  const report::Words* words_ = nullptr;
  bool marked_ = false;
};
// These leave what they are given as it is where no sentences are wanted.
void add_texts(const model::Exam& exam, const Sentences& sentences, const reference::Edition& edition, interpret::Assessment& assessment);
void add_alert_texts(const model::Exam& exam, const Sentences& sentences, const reference::Edition& edition, std::vector<interpret::Alert>& alerts);
void add_step_texts(const model::Exam& exam, const Sentences& sentences, const reference::Edition& edition, std::vector<interpret::Step>& steps);
// The sentence of what is explained, as its assessment has it, and what would change it.
void add_working_texts(const model::Exam& exam, const Sentences& sentences, const interpret::Assessment& assessment, interpret::Working& working);
// A label with its side, where there is one to name: "Lachman test, LEFT".
[[nodiscard]] std::string item_of_side(const report::Words& words, const reference::Edition& edition, const model::ItemId& item, model::Side side);
// Why a step is not advised now, and until when: "A fracture at the knee is not settled, until a film is seen". `by`: concern.* or alert.*
[[nodiscard]] std::string withheld_text(const report::Words& words, const reference::Edition& edition, const model::Word& by);
// DEMONSTRATION, PRACTICE; empty for a clinic.
[[nodiscard]] std::string banner_of(LedgerKind kind, const report::Words& words);

}  // namespace limbledger::service
