// exam.assess: what the interpretation says of an exam as it stands. The exam, the person and the earlier exams come from the
// fold; the day to judge by is the day of the examination, so that asking again tomorrow gives the same answer.
#pragma once

#include "core/interpret/assess.hpp"

#include <optional>
#include <vector>

namespace limbledger::service {

struct ExamAssessParams {
  model::ExamId exam;
  std::optional<std::vector<wire::Name>> only;
};
BOOST_DESCRIBE_STRUCT(ExamAssessParams, (), (exam, only))
constexpr auto notes(const ExamAssessParams*) {
  return std::array{wire::Note{"only", "lists (rules, statements, contradictions) or beginnings of names (rule.ottawa_knee, motion.norm)"}};
}

[[nodiscard]] interpret::AssessAsk make_ask(const model::PartialDate& as_of, const std::optional<std::vector<wire::Name>>& only);
// The day of the examination at its place; `otherwise` where the exam has no time.
[[nodiscard]] model::PartialDate day_of(const model::Exam& exam, const model::PartialDate& otherwise);

}  // namespace limbledger::service
