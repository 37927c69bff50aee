// exam.transfer: the exam is stopped and the person sent on, with the set that travels along; what was not done is then no gap. One
// call, and the set may be empty: the answer holds the note. transfer.write: the same note again, from the record as it stands.
#pragma once

#include "core/model/place.hpp"
#include "core/service/methods/exam/common.hpp"
#include "core/service/methods/exam/note.hpp"

namespace limbledger::service {

struct ExamTransferParams {
  model::ExamId exam;
  model::TransferSet set;
  std::vector<model::EntryId> seen;
  model::RequestId request;
  std::optional<std::vector<wire::Name>> confirmed;  // codes a person has answered for: value.unusual
  std::optional<FaultLanguage> language = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(ExamTransferParams, (), (exam, set, seen, request, confirmed, language))
constexpr auto notes(const ExamTransferParams*) {
  return std::array{wire::Note{"language", fault_words_note}, wire::Note{"seen", seen_note}, wire::Note{"set", "everything in it may be left out; a later call replaces the set that its caller was shown"}};
}
struct ExamTransferResult {
  model::Exam exam;
  std::vector<model::EntryId> revision;
  std::optional<bool> repeat;
  NoteText text;
  NoteText html;
};
BOOST_DESCRIBE_STRUCT(ExamTransferResult, (), (exam, revision, repeat, text, html))
// Faults: exam.unknown, exam.withdrawn, revision.old (another set that was not seen), value.unusual (a time in the future).
[[nodiscard]] Result<ExamTransferResult> exam_transfer(Context& context, const ExamTransferParams& params);

struct TransferWriteParams {
  model::ExamId exam;
  std::optional<model::Word> language;  // en
};
BOOST_DESCRIBE_STRUCT(TransferWriteParams, (), (exam, language))
struct TransferWriteResult {
  NoteText text;
  NoteText html;
  std::vector<model::EntryId> about;
  model::Word language;
};
BOOST_DESCRIBE_STRUCT(TransferWriteResult, (), (text, html, about, language))
constexpr auto notes(const TransferWriteResult*) {
  return std::array{wire::Note{"html", "a whole document, black on white, for A4; it loads nothing and runs nothing"},
                    wire::Note{"about", "the exam's revision that the note was written from"}};
}
// Faults: exam.not_transferred, params.unknown_word.
[[nodiscard]] Result<TransferWriteResult> transfer_write(Context& context, const TransferWriteParams& params);

}  // namespace limbledger::service
