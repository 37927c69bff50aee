// exam.assess and statement.explain for a recorded exam: the fold gives the exam, its person and the person's earlier
// exams; the interpretation is one pure call over them.
#pragma once

#include "core/service/methods/exam/common.hpp"
#include "core/service/methods/say/assess.hpp"
#include "core/service/methods/say/explain.hpp"

namespace limbledger::service {

[[nodiscard]] Result<interpret::Assessment> exam_assess(Context& context, const ExamAssessParams& params);
[[nodiscard]] Result<interpret::Working> statement_explain(Context& context, const StatementExplainParams& params);

}  // namespace limbledger::service
