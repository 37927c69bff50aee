// What the methods of one exam share: the exam as it stands for a writer, and the replies that several of them give.
#pragma once

#include "core/interpret/statement.hpp"
#include "core/model/exam/exam.hpp"
#include "core/model/place.hpp"
#include "core/reference/edition.hpp"
#include "core/report/words/words.hpp"
#include "core/service/writing.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace limbledger::service {

inline constexpr std::string_view alerts_note =
    "all alerts of the exam as of now, as on the reply to a finding; absent where this call changes nothing that they are judged by";

inline constexpr std::string_view identified_note =
    "the two identifiers by which the person was asked for and answered, as they were said: a name, a birth date or year, a number, the home; what is not the exam's person is asked back (person.mismatch)";

// The exam with its revision; `repeat` when this very request had been recorded before.
struct ExamReply {
  model::Exam exam;
  std::vector<model::EntryId> revision;
  std::optional<bool> repeat;
  std::optional<std::vector<model::Word>> remarks = std::nullopt;
  std::optional<std::vector<model::LetterId>> stale_letters = std::nullopt;
  std::optional<std::vector<interpret::Alert>> alerts = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(ExamReply, (), (exam, revision, repeat, remarks, stale_letters, alerts))
constexpr auto notes(const ExamReply*) {
  return std::array{wire::Note{"remarks", "clock_suspect: an exam was opened whose day nobody can tell by the clock of the device, and examined_on does not say it"},
                    wire::Note{"stale_letters", "letters of this exam that the record no longer agrees with and that no other corrects"},
                    wire::Note{"alerts", alerts_note}};
}

// Stands above every print of a ledger that is not for people; empty for a clinic's.
[[nodiscard]] std::string banner_of(const Desk& desk, const report::Words& words);

// Faults: exam.unknown, exam.not_yours (a kiosk asks for another's).
[[nodiscard]] Result<const ledger::ExamRecord*> exam_to_read(Context& context, const model::ExamId& exam);
// What is kept apart (protected items, and what was done about such a danger) is the examiner's alone: a viewer's or a kiosk's exam
// is as if it were not there (clinical safety, C16).
[[nodiscard]] bool sees_protected(const Context& context);
[[nodiscard]] bool is_protected(const Context& context, const model::ItemId& item);
void leave_out_protected(const Context& context, model::Exam& exam);
// Items whose remarks are the examiner's alone as well (interpret/after/private_remarks.hpp), judged with all that is recorded.
[[nodiscard]] std::vector<model::ItemId> remarks_kept_apart(const Context& context, const model::Exam& exam);
// Leaves the exam as the caller may see it: without what is kept apart, and to a kiosk what it was opened with and what was answered
// there; nothing that examiners found, think, decided or say among themselves, and no trace of an alert.
void leave_out_unseen(const Context& context, model::Exam& exam);
// Adds: exam.signed, exam.withdrawn, and `seen` must be a revision of it.
[[nodiscard]] Result<void> exam_takes_changes(const ledger::ExamRecord& record);

// The exam for a writer who was shown `seen`. Faults: those of exam_to_read, params.missing, revision.unknown.
[[nodiscard]] Result<const ledger::ExamRecord*> exam_shown_to(Context& context, const model::ExamId& exam, const std::vector<model::EntryId>& seen);
// What may still be added, also after the signature: not to a withdrawn exam, nor to one that misses an entry.
[[nodiscard]] Result<void> exam_takes_additions(const ledger::ExamRecord& record);
// Whoever decides between what stands there says why: something that somebody wrote is not taken.
[[nodiscard]] bool stands_in_conflict(const model::Exam& exam, std::string_view about);
// Fault exam.not_closed: a supervised exam that its examiner has not signed takes nobody else's findings or impression.
[[nodiscard]] Result<void> exam_takes_from_here(const Context& context, const ledger::ExamRecord& record);

// Those of `heads` that a writer shown `seen` had seen: what a new value of a register replaces.
[[nodiscard]] std::vector<model::EntryId> seen_of(const std::vector<model::EntryId>& heads, const std::vector<model::EntryId>& seen,
                                                  const std::vector<ledger::Opened>& operations);
// Of a method that takes `replaces`: fault finding.stale when a value stands that the writer had not seen and not named.
[[nodiscard]] Result<void> register_is_free(const std::vector<model::EntryId>& heads, const std::vector<model::EntryId>& replaces,
                                            const std::string& path);
// Of one that says by `seen` alone what it had been shown (those of `heads` in it): fault revision.old.
[[nodiscard]] Result<void> nothing_came_since(const std::vector<model::EntryId>& heads, const std::vector<model::EntryId>& seen);

// The exam as a writer shown `seen` knew it; the same on every repeat of a request, whatever came since.
[[nodiscard]] std::optional<ledger::ExamFold> exam_as_seen(Context& context, const model::ExamId& exam, const ledger::ExamRecord& record,
                                                           const std::vector<model::EntryId>& seen);
// What these operations alone say of it; nothing when none opens it.
[[nodiscard]] std::optional<ledger::ExamFold> fold_operations(Context& context, const model::ExamId& exam, const std::vector<ledger::Opened>& operations);

// The place of the exam as it is known now; nothing where none is named or it cannot be read.
[[nodiscard]] std::optional<model::Place> place_of_exam(Context& context, const model::Exam& exam);

// Letters that the record no longer agrees with and that no other letter corrects; none for a kiosk.
[[nodiscard]] std::optional<std::vector<model::LetterId>> stale_letters(const Context& context, const model::Exam& exam);

// The exam after a write, with what the caller has now been shown as its revision.
[[nodiscard]] Result<ExamReply> exam_reply(Context& context, const model::ExamId& exam, const Written& written);

}  // namespace limbledger::service
