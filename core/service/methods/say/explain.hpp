// statement.explain: the working of one statement, rule, hypothesis or danger, of a recorded exam or of a document.
#pragma once

#include "core/service/methods/say/document.hpp"

#include <optional>

namespace limbledger::service {

struct StatementExplainParams {
  std::optional<model::ExamId> exam;
  std::optional<ExamDocument> document;
  model::StatementId statement;
  std::optional<std::vector<interpret::TypedPrior>> priors;
  std::optional<model::Word> language = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(StatementExplainParams, (), (exam, document, statement, priors, language))
constexpr auto notes(const StatementExplainParams*) {
  return std::array{
      wire::Note{"exam", "exactly one of exam and document; with it the ledger must be unlocked"},
      wire::Note{"statement",
                 "motion.norm:knee.flexion_passive:left, or a rule, hypothesis or danger with its side: rule.ottawa_knee:left, condition.acl_tear:left, alert.bleed_joint:left (raised, answered no or open)"},
      wire::Note{"priors", "as they were given to the assessment that is explained"},
      wire::Note{"language", "en, es or fr: message and changes_if also in words, as in exam.assess; the lines of the working stay as they are"}};
}

// Where the params hold a document. A document that was asked about before is not asked about again.
[[nodiscard]] Result<interpret::Working> explain_document(Context& context, const StatementExplainParams& params);
// The working of what was asked for, with the sentence of its assessment where a language was named.
[[nodiscard]] Result<interpret::Working> explain_in_words(Context& context, const StatementExplainParams& params, const model::Exam& exam,
                                                          const std::optional<model::Person>& person, std::span<const model::Exam> earlier, interpret::AssessAsk ask);

}  // namespace limbledger::service
