// finding.check, finding.record, finding.withdraw, finding.history. A call records all of its findings or none. A place
// that is filled is written with `replaces` (the entries it corrects) or `beside` (a finding of its own); with neither the
// call is answered finding.stale, with what is held and what was sent.
#pragma once

#include "core/interpret/statement.hpp"
#include "core/service/methods/exam/common.hpp"

namespace limbledger::service {

inline constexpr std::size_t findings_a_call_max = 100;

struct NewFinding {
  model::ItemId item;
  model::Side side{};
  model::Value value;
  std::optional<model::Word> instrument;
  std::optional<model::Word> position;
  std::optional<model::Word> end_feel;
  std::optional<model::Pain> pain;
  std::optional<std::vector<model::Quality>> quality;
  std::optional<model::Origin> origin;
  std::optional<model::Despite> despite;
  std::optional<wire::Remark> remark;
  std::optional<model::ExaminerId> examiner;   // who examined, where it is not who records
  std::optional<model::Instant> examined_at;   // absent: as the exam
  std::vector<model::EntryId> replaces;
  std::optional<bool> beside;
  std::optional<std::vector<wire::Name>> confirmed;  // codes a person has answered for: value.unusual, finding.contradicts
};
BOOST_DESCRIBE_STRUCT(NewFinding, (), (item, side, value, instrument, position, end_feel, pain, quality, origin, despite, remark, examiner,
                                       examined_at, replaces, beside, confirmed))
constexpr auto notes(const NewFinding*) {
  return std::array{wire::Note{"examined_at", "when it was found, where that was not when the exam was opened (without it, that is its time): a second look, and what waited for the program"},
                    wire::Note{"pain", "pain while it was examined, of any item: familiar where it is the pain that the person comes with; of a test, reproduces in its value says that the test brought it on"},
                    wire::Note{"despite", "how and why a step was done that is not advised now: answers item.withheld"},
                    wire::Note{"replaces", "the entries of one finding that it corrects: what was written was wrong. A place that is filled takes nothing without it or beside. Where several findings stand beside each other it names the "
                                           "one that was wrong, and those that had been shown (seen) stay; with beside true they stay also where something came since"},
                    wire::Note{"beside", "true: a finding of its own beside the one that is there: a second look later, or another examiner's; both stand"},
                    wire::Note{"confirmed", "codes that were asked back and that a person has answered for, such as value.unusual, or alert.would_end where it decides between values that stand against each other; item.withheld is answered for by despite"}};
}

// A finding under somebody's own signature (an addendum, a countersignature) is that examiner's, of that time, and replaces nothing:
// finding.not_kept names each of examiner (another one), examined_at, replaces and beside that was sent.
[[nodiscard]] std::vector<wire::Fault> faults_of_what_is_not_kept(const NewFinding& finding, const model::ExaminerId& signer, const std::string& path);

struct FindingRecordParams {
  model::ExamId exam;
  std::vector<NewFinding> findings;
  std::vector<model::EntryId> seen;
  model::RequestId request;
  std::optional<model::Word> language = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(FindingRecordParams, (), (exam, findings, seen, request, language))
constexpr auto notes(const FindingRecordParams*) {
  return std::array{wire::Note{"findings", "needed: 1 to 100, all or none"}, wire::Note{"seen", seen_note}, wire::Note{"language", sentences_note}};
}

struct RecordedFinding {
  model::FindingId finding;
  model::EntryId entry;
};
BOOST_DESCRIBE_STRUCT(RecordedFinding, (), (finding, entry))
struct FindingRecordResult {
  std::vector<RecordedFinding> recorded;  // an arc gives two
  std::vector<model::EntryId> revision;
  std::optional<bool> repeat;
  std::vector<interpret::Alert> alerts;  // as of now; none for a kiosk
  std::optional<bool> tell_staff;        // to a kiosk, of a dangerous answer: the person is asked to call the staff
  std::optional<std::vector<model::LetterId>> stale_letters;
};
BOOST_DESCRIBE_STRUCT(FindingRecordResult, (), (recorded, revision, repeat, alerts, tell_staff, stale_letters))
[[nodiscard]] Result<FindingRecordResult> finding_record(Context& context, const FindingRecordParams& params);

struct FindingCheckParams {
  std::optional<model::ExamId> exam;
  std::vector<NewFinding> findings;
  std::optional<model::Word> language = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(FindingCheckParams, (), (exam, findings, language))
constexpr auto notes(const FindingCheckParams*) { return std::array{wire::Note{"findings", "needed: 1 to 100"}, wire::Note{"language", sentences_note}}; }
struct CheckedFault {
  wire::Name code;
  wire::Remark path;
  std::optional<wire::Remark> expected;
  std::optional<wire::Remark> got;
  wire::Remark hint;
  std::optional<wire::LongText> text;
};
BOOST_DESCRIBE_STRUCT(CheckedFault, (), (code, path, expected, got, hint, text))
constexpr auto notes(const CheckedFault*) {
  return std::array{wire::Note{"hint", "what to do, for whoever makes the form"}, wire::Note{"text", "with a language: what to do, for whoever is at the form"}};
}
struct FindingCheckResult {
  std::vector<CheckedFault> faults;   // would be refused
  std::vector<CheckedFault> confirm;  // would be asked back
};
BOOST_DESCRIBE_STRUCT(FindingCheckResult, (), (faults, confirm))
[[nodiscard]] Result<FindingCheckResult> finding_check(Context& context, const FindingCheckParams& params);

struct FindingWithdrawParams {
  model::ExamId exam;
  model::FindingId finding;
  wire::Remark reason;
  std::vector<model::EntryId> seen;
  model::RequestId request;
  std::optional<model::Word> language = std::nullopt;
  std::optional<std::vector<wire::Name>> confirmed = std::nullopt;  // codes a person has answered for: alert.would_end
};
BOOST_DESCRIBE_STRUCT(FindingWithdrawParams, (), (exam, finding, reason, seen, request, language, confirmed))
constexpr auto notes(const FindingWithdrawParams*) { return std::array{wire::Note{"seen", seen_note}, wire::Note{"language", sentences_note}, wire::Note{"confirmed", confirmed_note}}; }
struct FindingWithdrawResult {
  model::FindingId finding;
  model::EntryId entry;
  std::vector<model::EntryId> revision;
  std::optional<bool> repeat;
  std::vector<interpret::Alert> alerts;
  std::optional<std::vector<model::LetterId>> stale_letters = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(FindingWithdrawResult, (), (finding, entry, revision, repeat, alerts, stale_letters))
[[nodiscard]] Result<FindingWithdrawResult> finding_withdraw(Context& context, const FindingWithdrawParams& params);

struct FindingHistoryParams {
  model::ExamId exam;
  model::ItemId item;
  std::optional<model::Side> side;
  std::optional<model::Word> language = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(FindingHistoryParams, (), (exam, item, side, language))
constexpr auto notes(const FindingHistoryParams*) { return std::array{wire::Note{"language", "with what was decided between values in words"}}; }
struct FindingHistoryResult {
  std::vector<model::Finding> findings;  // oldest first
};
BOOST_DESCRIBE_STRUCT(FindingHistoryResult, (), (findings))
[[nodiscard]] Result<FindingHistoryResult> finding_history(Context& context, const FindingHistoryParams& params);

// The observation a new finding states, and its check against the catalogue.
[[nodiscard]] model::Observation observation_of(const NewFinding& finding);

}  // namespace limbledger::service
