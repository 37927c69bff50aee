// statement.explain: the working of one statement or rule, of a recorded exam or of a document.
#pragma once

#include "core/service/methods/say/document.hpp"

#include <optional>

namespace limbledger::service {

struct StatementExplainParams {
  std::optional<model::ExamId> exam;
  std::optional<ExamDocument> document;
  model::StatementId statement;
  std::optional<std::vector<interpret::TypedPrior>> priors;
};
BOOST_DESCRIBE_STRUCT(StatementExplainParams, (), (exam, document, statement, priors))
constexpr auto notes(const StatementExplainParams*) {
  return std::array{
      wire::Note{"exam", "exactly one of exam and document; with it the ledger must be unlocked"},
      wire::Note{"statement",
                 "motion.norm:knee.flexion_passive:left, or a rule or hypothesis with its side: rule.ottawa_knee:left, condition.acl_tear:left"},
      wire::Note{"priors", "as they were given to the assessment that is explained"}};
}

// Where the params hold a document. A document that was asked about before is not asked about again.
[[nodiscard]] Result<interpret::Working> explain_document(Context& context, const StatementExplainParams& params);

}  // namespace limbledger::service
