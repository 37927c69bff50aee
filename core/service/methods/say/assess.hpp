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
  std::optional<std::vector<interpret::TypedPrior>> priors;
  std::optional<bool> protected_;
  std::optional<model::Word> language;
};
BOOST_DESCRIBE_STRUCT(ExamAssessParams, (), (exam, only, priors, protected_, language))
constexpr auto notes(const ExamAssessParams*) {
  return std::array{wire::Note{"only", "lists (alerts, questions, flags, missing, steps, rules, statements, hypotheses, contradictions) or beginnings of names (rule.ottawa_knee, motion.norm); "
                               "hypotheses come without it once the minimum set is recorded"},
                    wire::Note{"priors", "the examiner's own figure for a condition, in place of the default"},
                    wire::Note{"protected", "the examiner opens the protected note, by a deliberate act"},
                    wire::Note{"language", "en, es or fr: whatever carries a message also carries `text`, the sentence of note.write, and an alert meanwhile_text; in es and fr too they are whole "
                                           "sentences in English, which end in (en). Absent: message and params alone"}};
}

[[nodiscard]] interpret::AssessAsk make_ask(const model::PartialDate& as_of, const std::optional<std::vector<wire::Name>>& only,
                                            const std::optional<std::vector<interpret::TypedPrior>>& priors);
// Faults: a condition that computes nothing here, or one that is named twice.
[[nodiscard]] std::vector<wire::Fault> check_priors(const reference::Edition& edition,
                                                    const std::optional<std::vector<interpret::TypedPrior>>& priors);
// Faults: params.unknown_word for what names no list and begins no name that an assessment can give.
[[nodiscard]] std::vector<wire::Fault> check_only(const reference::Edition& edition, const std::optional<std::vector<wire::Name>>& only);
// The day of the examination at its place; `otherwise` where the exam has no time.
[[nodiscard]] model::PartialDate day_of(const model::Exam& exam, const model::PartialDate& otherwise);

}  // namespace limbledger::service
