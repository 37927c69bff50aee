// take_home.write: the sheet that a person carries home, written anew from the record each time and stored nowhere. It is printed
// in a language whose texts a named clinician of this clinic has read (place.amend, `reviewed`); in a ledger of invented people
// also without, marked as for review. What was said back is recorded with the plan (plan.record, `said_back`). Never to a kiosk.
#pragma once

#include "core/service/methods/exam/note.hpp"

#include <optional>
#include <vector>

namespace limbledger::service {

struct TakeHomeWriteParams {
  model::ExamId exam;
  std::optional<model::Word> language;
};
BOOST_DESCRIBE_STRUCT(TakeHomeWriteParams, (), (exam, language))
constexpr auto notes(const TakeHomeWriteParams*) {
  return std::array{wire::Note{"language", "en by default; only one that a named clinician has read, by a place of this clinic"}};
}

struct TakeHomeWriteResult {
  NoteText text;  // 80 columns
  NoteText html;
  std::vector<model::EntryId> about;
  model::Word language;
  std::optional<bool> for_review;
  std::optional<wire::Count<1, 1000>> left_out;
  std::optional<std::vector<model::Word>> remarks = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(TakeHomeWriteResult, (), (text, html, about, language, for_review, left_out, remarks))
constexpr auto notes(const TakeHomeWriteResult*) {
  return std::array{wire::Note{"about", "the exam's revision that the sheet was written from"},
                    wire::Note{"for_review", "nobody has read the texts of this language yet; the sheet says so"},
                    wire::Note{"left_out", "so many things to do did not fit among three: decline what matters least, or say them"},
                    wire::Note{"remarks", "plan_later: the plan names a later day than what was found asks for; the sheet leaves it out, settle it before it is handed out"}};
}
// Faults: language.not_reviewed, language.no_texts, params.unknown_word, exam.withdrawn.
[[nodiscard]] Result<TakeHomeWriteResult> take_home_write(Context& context, const TakeHomeWriteParams& params);

}  // namespace limbledger::service
