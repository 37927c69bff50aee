#include "core/service/methods/say/texts.hpp"

#include "core/report/page_judged.hpp"
#include "core/report/text.hpp"

namespace limbledger::service {

namespace {

constexpr std::string_view only_language = "en";

}  // namespace

Result<const report::Words*> words_in(const std::optional<model::Word>& language) {
  if (!language) {
    return static_cast<const report::Words*>(nullptr);
  }
  if (language->text != only_language) {
    return wire::Fault{"params.unknown_word", "/language", std::string(only_language)};
  }
  const report::Words* words = report::built_in_words();
  if (words == nullptr) {
    return wire::Fault{"internal.failure", "", "words that load"};
  }
  return words;
}

void add_texts(const model::Exam& exam, const report::Words& words, const reference::Edition& edition, interpret::Assessment& assessment) {
  for (interpret::Alert& alert : assessment.alerts) {
    alert.text = wire::LongText{report::alert_text(alert, words) + "."};
  }
  for (interpret::Question& question : assessment.questions) {
    question.text = wire::LongText{report::question_text(question, words, edition) + "."};
  }
  for (interpret::Statement& statement : assessment.statements) {
    const bool prompt = statement.statement.text.starts_with("referral.");
    statement.text = wire::LongText{prompt ? report::prompt_text(statement, words) + "." : report::statement_text(statement, exam, words, edition)};
  }
  for (interpret::MissingItem& missing : assessment.missing) {
    const std::string label = report::item_label(words, edition, missing.item);
    const std::string where = missing.side == model::Side::midline ? label : label + ", " + report::side_of(words, missing.side);
    missing.text = wire::LongText{missing.why ? where + ": " + words.say("msg.missing_why." + missing.why->text) : where};
  }
  for (interpret::NotExamined& one : assessment.not_examined) {
    one.text = wire::LongText{report::word_of(words, "joint", one.joint.text) + ", " + report::side_of(words, one.side) + ": " +
                              words.say("msg.not_examined_why." + one.why.text)};
  }
  for (interpret::Contradiction& contradiction : assessment.contradictions) {
    contradiction.text = wire::LongText{report::contradiction_text(contradiction, words)};
  }
}

std::string banner_of(LedgerKind kind, const report::Words& words) {
  switch (kind) {
    case LedgerKind::clinic:
      return {};
    case LedgerKind::demonstration:
      return words.say("msg.page.demonstration");
    case LedgerKind::practice:
      return words.say("msg.page.practice");
  }
  return {};
}

}  // namespace limbledger::service
