// document.assess: an exam that stands in no ledger, as one document, judged by the edition at hand. Each finding passes the
// same check as one that is recorded; faults carry paths into the document. Findings without an id are named by their place,
// counted from 1 in the last two bytes of an otherwise empty id; the second end of a neutral-zero triple has a
// 1 before them.
#pragma once

#include "core/interpret/assess.hpp"
#include "core/service/context.hpp"
#include "core/service/methods/ledger/session.hpp"
#include "core/service/methods/say/names.hpp"

#include <optional>
#include <string>
#include <vector>

namespace limbledger::service {

struct ExamDocument {
  wire::Name format;  // limbledger-exam/1
  model::PartialDate as_of;
  std::optional<model::Person> person;
  model::Exam exam;
  std::vector<model::Finding> findings;
  std::vector<model::Exam> earlier;
  std::optional<ExamNames> names;
  std::optional<LedgerKindWord> ledger_kind;
  std::optional<model::Place> place;
};
BOOST_DESCRIBE_STRUCT(ExamDocument, (), (format, as_of, person, exam, findings, earlier, names, ledger_kind, place))
constexpr auto notes(const ExamDocument*) {
  return std::array{wire::Note{"format", "limbledger-exam/1"}, wire::Note{"as_of", "the day to judge by where the exam has no examined_at. One of 2026-11-01 or later shows that an examined_at from before then and more than a year earlier is of a clock that was not set, and an examined_at of a later day than this one is of a clock that is ahead: no time is judged by that, and of the age what the birth settles, until examined_on says the day"},
                    wire::Note{"findings", "a finding without an id is named by its place, counted from 1 in the last bytes of the id"},
                    wire::Note{"earlier", "earlier exams of the same person, each with its findings"},
                    wire::Note{"names", "names for the ids of place and examiners, as exam.read gives them; printed on a page, never judged"},
                    wire::Note{"ledger_kind", "of the ledger it was taken from, as health.check says it: a demonstration or practice says so on every page"},
                    wire::Note{"place", "where it was, as place.read gives it: nothing is advised that is not there"}};
}

struct DocumentAssessParams {
  ExamDocument document;
  std::optional<std::vector<wire::Name>> only;
  std::optional<std::vector<wire::Name>> confirmed;
  std::optional<std::vector<interpret::TypedPrior>> priors;
  std::optional<model::Word> language;
};
BOOST_DESCRIBE_STRUCT(DocumentAssessParams, (), (document, only, confirmed, priors, language))
constexpr auto notes(const DocumentAssessParams*) {
  return std::array{
      wire::Note{"only", "lists (rules, statements, hypotheses, contradictions) or beginnings of names (rule.ottawa_knee, motion.norm)"},
      wire::Note{"confirmed", "codes of questions that were asked back and answered: value.unusual, finding.contradicts"},
      wire::Note{"priors", "the examiner's own figure for a condition, in place of the default"},
      wire::Note{"language", "as in exam.assess"}};
}

// The document's exam with its checked findings, and its earlier exams likewise.
struct CheckedDocument {
  std::optional<model::Person> person;
  model::Exam exam;
  std::vector<model::Exam> earlier;
};
// Faults besides those of the findings: value.date_order (born after the exam, injured before birth or after the exam),
// value.unusual (what lies after as_of), place.unknown (another place than that of the exam).
[[nodiscard]] Result<CheckedDocument> check_document(const reference::Edition& edition, const ExamDocument& document,
                                                     const std::optional<std::vector<wire::Name>>& confirmed);

[[nodiscard]] Result<interpret::Assessment> document_assess(Context& context, const DocumentAssessParams& params);

}  // namespace limbledger::service
