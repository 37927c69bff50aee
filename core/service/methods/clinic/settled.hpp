// What was decided between values that were written without knowledge of each other, for replies and pages: in words where a language was
// named, and of the person whose exam it is.
#pragma once

#include "core/service/methods/exam/common.hpp"
#include "core/report/words/words.hpp"

#include <vector>

namespace limbledger::service {

void add_settled_texts(Context& context, const report::Words& words, model::Exam& exam);
void add_settled_texts(Context& context, const report::Words& words, const model::Exam& exam, model::Finding& finding);
// Nothing where the exam is nobody's.
[[nodiscard]] std::vector<model::Settled> settled_of_person(Context& context, const model::Exam& exam);

}  // namespace limbledger::service
