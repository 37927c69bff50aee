// exam.open, exam.amend, exam.read, exam.find, exam.withdraw, exam.move, exam.swap_sides. An exam belongs to at most one person at a
// time; moving it or exchanging its sides is an operation with a reason, and nothing is overwritten.
#pragma once

#include "core/ledger/log/index.hpp"
#include "core/service/methods/exam/common.hpp"
#include "core/service/methods/say/names.hpp"

namespace limbledger::service {

struct ExamOpenParams {
  std::optional<model::PersonId> person;
  model::Word complaint;
  model::Setting setting{};
  std::optional<model::Side> side;
  std::optional<model::PlaceId> place;
  std::optional<model::Instant> examined_at;  // absent: now
  std::optional<model::OffsetMinutes> offset_min;
  std::optional<model::PartialDate> injured_on;
  std::optional<std::vector<wire::Name>> identified;  // the two identifiers that were confirmed
  model::RequestId request;
  std::optional<std::vector<wire::Name>> confirmed;  // codes a person has answered for: value.unusual, person.mismatch
  std::optional<model::ExamId> reviews = std::nullopt;   // with the complaint review: the exam whose plan is looked at again
  std::optional<bool> supervised = std::nullopt;         // closed by its examiner before anybody else's opinion and before bands
  std::optional<model::PartialDate> examined_on = std::nullopt;
  std::optional<FaultLanguage> language = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(ExamOpenParams, (), (person, complaint, setting, side, place, examined_at, offset_min, injured_on, identified, request, confirmed, reviews,
                                           supervised, examined_on, language))
constexpr auto notes(const ExamOpenParams*) {
  return std::array{wire::Note{"language", fault_words_note}, wire::Note{"examined_on", examined_on_note}, wire::Note{"confirmed", confirmed_note}, wire::Note{"identified", identified_note},
                    wire::Note{"reviews", "with the complaint review alone: the exam of the same person whose plan is looked at again; form.describe then names how its measures were taken"},
                    wire::Note{"supervised", "true: the examiner closes findings and impression by signing before a supervisor records any, and no bands are given before"}};
}
// Faults: person.unknown, place.unknown, params.unknown_word (no sequence for the complaint), value.date_order (born after
// the exam, injured before birth or after the exam, a time of another day than examined_on), value.unusual (a day in the future), person.mismatch (identifiers),
// exam.not_reviewed (reviews names no earlier exam of this person, or the complaint is not review).
[[nodiscard]] Result<ExamReply> exam_open(Context& context, const ExamOpenParams& params);

// What is not given stays. Who the exam is of is exam.move. The day is said by examined_on, of a signed exam by addendum.record; the time
// with which it was opened stays.
struct ExamChanges {
  std::optional<model::Word> complaint;
  std::optional<model::Side> side;
  std::optional<model::Setting> setting;
  std::optional<model::PlaceId> place;
  std::optional<model::OffsetMinutes> offset_min;
  std::optional<model::PartialDate> injured_on;
  std::optional<model::ExamId> reviews = std::nullopt;
  std::optional<bool> supervised = std::nullopt;
  std::optional<model::PartialDate> examined_on = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(ExamChanges, (), (complaint, side, setting, place, offset_min, injured_on, reviews, supervised, examined_on))
constexpr auto notes(const ExamChanges*) { return std::array{wire::Note{"examined_on", examined_on_note}}; }
struct ExamAmendParams {
  model::ExamId exam;
  ExamChanges changes;
  std::vector<model::EntryId> seen;
  model::RequestId request;
  std::optional<std::vector<wire::Name>> confirmed;  // codes a person has answered for: value.unusual
  std::optional<model::Word> language = std::nullopt;
  std::optional<std::vector<model::Word>> not_known = std::nullopt;
  std::optional<wire::Remark> reason = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(ExamAmendParams, (), (exam, changes, seen, request, confirmed, language, not_known, reason))
constexpr auto notes(const ExamAmendParams*) {
  return std::array{wire::Note{"seen", seen_note}, wire::Note{"confirmed", confirmed_note}, wire::Note{"language", sentences_note},
                    wire::Note{"not_known", "side, place, injured_on: what is not known after all, and stands as not recorded; none of them also in changes"},
                    wire::Note{"reason", "why; it is kept, and stands beside what was decided between values that stood against each other; needed where it decides between such"}};
}
// Faults: those of exam.open for what is changed, exam.signed, exam.withdrawn, revision.old (amended by another, not seen), value.all_or_one (in
// changes and in not_known), value.empty (no reason, where two versions stand against each other).
[[nodiscard]] Result<ExamReply> exam_amend(Context& context, const ExamAmendParams& params);

struct ExamReadParams {
  model::ExamId exam;
  std::optional<model::Word> language = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(ExamReadParams, (), (exam, language))
constexpr auto notes(const ExamReadParams*) { return std::array{wire::Note{"language", "with what was decided between values in words"}}; }
struct ExamReadResult {
  model::Exam exam;
  std::vector<model::EntryId> revision;
  std::optional<ExamNames> names;  // of its place and its examiners, so far as they are known here
};
BOOST_DESCRIBE_STRUCT(ExamReadResult, (), (exam, revision, names))
[[nodiscard]] Result<ExamReadResult> exam_read(Context& context, const ExamReadParams& params);

struct ExamFindParams {
  std::optional<model::PersonId> person;
  std::optional<model::PartialDate> from;  // calendar dates where the exam was done, both inclusive
  std::optional<model::PartialDate> to;
  std::optional<model::ExamState> state;
  std::optional<wire::Count<1, 500>> limit;
  std::optional<wire::Name> cursor;
  std::optional<FaultLanguage> language = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(ExamFindParams, (), (person, from, to, state, limit, cursor, language))
constexpr auto notes(const ExamFindParams*) { return std::array{wire::Note{"language", fault_words_note}}; }
struct ExamFindResult {
  std::vector<ledger::ListedExam> exams;  // newest first
  std::optional<wire::Name> cursor;       // for the next page; absent on the last
};
BOOST_DESCRIBE_STRUCT(ExamFindResult, (), (exams, cursor))
[[nodiscard]] Result<ExamFindResult> exam_find(Context& context, const ExamFindParams& params);

struct ExamReasonParams {
  model::ExamId exam;
  wire::Remark reason;
  std::vector<model::EntryId> seen;
  model::RequestId request;
  std::optional<FaultLanguage> language = std::nullopt;
  std::optional<std::vector<wire::Name>> confirmed = std::nullopt;  // codes a person has answered for: alert.would_end
};
BOOST_DESCRIBE_STRUCT(ExamReasonParams, (), (exam, reason, seen, request, language, confirmed))
constexpr auto notes(const ExamReasonParams*) {
  return std::array{wire::Note{"language", fault_words_note}, wire::Note{"seen", seen_note},
                    wire::Note{"confirmed", "codes a person has answered for: alert.would_end, where an alert is raised of which nothing is recorded (alert.handle says what was done), or nothing of what became of somebody who was sent at once (outcome.record): what loop.list says of it would go"}};
}
[[nodiscard]] Result<ExamReply> exam_withdraw(Context& context, const ExamReasonParams& params);

struct ExamMoveParams {
  model::ExamId exam;
  model::PersonId person;
  wire::Remark reason;
  std::vector<model::EntryId> seen;
  model::RequestId request;
  std::optional<std::vector<wire::Name>> confirmed;
  std::optional<model::Word> language = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(ExamMoveParams, (), (exam, person, reason, seen, request, confirmed, language))
constexpr auto notes(const ExamMoveParams*) {
  return std::array{wire::Note{"seen", seen_note}, wire::Note{"confirmed", confirmed_note}, wire::Note{"language", sentences_note}};
}
[[nodiscard]] Result<ExamReply> exam_move(Context& context, const ExamMoveParams& params);

struct SwapSidesParams {
  model::ExamId exam;
  wire::Remark reason;
  std::vector<model::EntryId> seen;
  model::RequestId request;
  std::optional<model::Word> language = std::nullopt;
  std::optional<std::vector<wire::Name>> confirmed = std::nullopt;  // codes a person has answered for: alert.would_end
};
BOOST_DESCRIBE_STRUCT(SwapSidesParams, (), (exam, reason, seen, request, language, confirmed))
constexpr auto notes(const SwapSidesParams*) { return std::array{wire::Note{"seen", seen_note}, wire::Note{"language", sentences_note}, wire::Note{"confirmed", confirmed_note}}; }
struct ExchangedFinding {
  model::FindingId finding;
  model::ItemId item;
  model::Side side{};  // as it now is
};
BOOST_DESCRIBE_STRUCT(ExchangedFinding, (), (finding, item, side))
struct SwapSidesResult {
  model::Exam exam;
  std::vector<model::EntryId> revision;
  std::optional<bool> repeat;
  std::vector<ExchangedFinding> exchanged;
  std::vector<model::Word> texts_to_read;  // ids of findings, plan items and addenda, "impression", "exam.side": what names a side and was not turned
  std::optional<std::vector<model::LetterId>> stale_letters;
  std::optional<std::vector<interpret::Alert>> alerts = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(SwapSidesResult, (), (exam, revision, repeat, exchanged, texts_to_read, stale_letters, alerts))
constexpr auto notes(const SwapSidesResult*) { return std::array{wire::Note{"alerts", alerts_note}}; }
// Scope E; writes. Faults: exam.withdrawn, revision.unknown, finding.stale (an exchange that was not shown), alert.would_end (asked back).
[[nodiscard]] Result<SwapSidesResult> exam_swap_sides(Context& context, const SwapSidesParams& params);

}  // namespace limbledger::service
