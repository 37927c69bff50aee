// exam.assess and statement.explain for a recorded exam: the fold gives the exam, its person and the person's earlier
// exams; the interpretation is one pure call over them.
#pragma once

#include "core/service/methods/exam/watch.hpp"
#include "core/service/methods/say/assess.hpp"
#include "core/service/methods/say/explain.hpp"

#include <optional>
#include <string>
#include <vector>

namespace limbledger::service {

// What an exam is judged from. In a record that misses an entry the findings are marked, so that none settles anything.
struct Gathered : ToJudge {
  std::vector<model::Exam> earlier;  // oldest first, none withdrawn
  std::string digest;
};
[[nodiscard]] Result<Gathered> gather(Context& context, const model::ExamId& exam);

[[nodiscard]] Result<interpret::Assessment> exam_assess(Context& context, const ExamAssessParams& params);
[[nodiscard]] Result<interpret::Working> statement_explain(Context& context, const StatementExplainParams& params);

}  // namespace limbledger::service
