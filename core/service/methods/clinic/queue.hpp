// conflict.list and conflict.settle: what disagrees since the day came home, in the order of possible harm (our convention): first what an
// alert without an action hangs on, the most urgent of them before the others; then whose exam it is, which side, what could raise a danger, what came after a signature, other values, opinions, what is known of a person, and
// who looks alike. Each in clinical words, with who wrote what, when, and what each had seen. Nothing has to be settled: what is left
// waits, both values stand, and rules take them for unknown. Settling takes one of the values as it was written; to undo it, settle
// with the other. Source: ledger, items 18, 27 to 30; clinical safety, part D.
#pragma once

#include "core/service/methods/clinic/listed.hpp"
#include "core/service/methods/clinic/pair.hpp"
#include "core/service/methods/clinic/put_off.hpp"
#include "core/service/methods/exam/common.hpp"

namespace limbledger::service {

// By possible harm, the gravest first.
enum class Harm { wrong_person, wrong_side, danger, after_signature, value, opinion, about_person, look_alike };
BOOST_DESCRIBE_ENUM(Harm, wrong_person, wrong_side, danger, after_signature, value, opinion, about_person, look_alike)

struct QueueEntry {
  model::EntryId entry;
  std::optional<model::ExaminerId> by;
  std::optional<wire::Remark> by_name;       // name and role, or in words that the name is not known here
  model::Instant at;                         // when it was written, as that device's clock claimed
  std::vector<model::EntryId> had_seen;      // of the other entries here
  std::optional<wire::Raw> value;            // as it was written
  std::optional<wire::LongText> text;        // the same in words
  std::optional<model::Instant> examined_at = std::nullopt;  // of a finding, where its writer said when it was found
};
BOOST_DESCRIBE_STRUCT(QueueEntry, (), (entry, by, by_name, at, had_seen, value, text, examined_at))

// An alert, and what was done about it or why nothing was.
struct AnsweredAlert {
  model::Word alert;
  std::optional<model::Side> side;
  interpret::Urgency urgency{};
  std::optional<wire::Remark> action;
  std::optional<wire::Remark> reason;
  std::optional<wire::Remark> by_name;
  model::Instant at;
  std::optional<wire::LongText> text;
};
BOOST_DESCRIBE_STRUCT(AnsweredAlert, (), (alert, side, urgency, action, reason, by_name, at, text))

struct QueueRow {
  Harm harm{};
  model::Word about;
  std::optional<model::ExamId> exam;
  std::optional<ListedPerson> person;
  std::optional<model::ItemId> item;
  std::optional<model::Side> side;
  std::vector<QueueEntry> entries;
  std::vector<model::EntryId> revision;      // for `seen` of the method that settles it
  model::Word settle_by;
  std::optional<ToldPair> pair;              // of a look-alike, and of decisions that stand against each other
  std::optional<wire::LongText> text;
  std::optional<std::vector<QueueEntry>> before = std::nullopt;       // what they corrected
  std::optional<std::vector<ListedAlert>> alerts = std::nullopt;      // without an action, and hanging on it
  std::optional<std::vector<model::EntryId>> replaces = std::nullopt; // for `replaces` of the method that settles it
  std::optional<std::vector<model::ExamId>> other_exams = std::nullopt;  // of what was written into a withdrawn exam: the person's others that stand here
  std::optional<std::vector<ToldPutOff>> put_off = std::nullopt;         // who was asked about it, and when to look again
  std::optional<std::vector<AnsweredAlert>> answered = std::nullopt;     // hanging on it as well, with what was done or said of them
};
BOOST_DESCRIBE_STRUCT(QueueRow, (), (harm, about, exam, person, item, side, entries, revision, settle_by, pair, text, before, alerts, replaces, other_exams, put_off, answered))
constexpr auto notes(const QueueRow*) {
  return std::array{wire::Note{"about", "finding, withdrawal, person, impression, plan, consent, request, a member of a person or place, pair, look_alike, or the mark of what was unseen: side_exchange_unseen, exchanged_twice, "
                                        "late, signature_unseen, withdrawal_unseen; births_of_one: who was decided to be one person has two days of birth"},
                    wire::Note{"settle_by", "the method that settles it; leaving it is no answer and loses nothing"}};
}

struct ConflictListParams {
  std::optional<model::ExamId> exam;         // of one exam alone
  std::optional<bool> look_alikes;           // false: without those who look alike
  std::optional<wire::Count<1, 500>> limit;  // 100
  std::optional<wire::Count<0, 1000000>> from;  // how many to pass over
  std::optional<model::Word> language;       // with sentences
};
BOOST_DESCRIBE_STRUCT(ConflictListParams, (), (exam, look_alikes, limit, from, language))
struct ConflictListResult {
  std::vector<QueueRow> queue;
  wire::Count<0, 1000000> total;
  std::optional<Looking> looking;            // present while records are left to compare: who looks alike is listed when it is gone
  std::optional<wire::LongText> text;
};
BOOST_DESCRIBE_STRUCT(ConflictListResult, (), (queue, total, looking, text))
// Scope E V. Faults: exam.unknown.
[[nodiscard]] Result<ConflictListResult> conflict_list(Context& context, const ConflictListParams& params);

struct ConflictSettleParams {
  model::ExamId exam;
  model::EntryId take;                       // the value that holds, as it was written
  wire::Remark reason;
  std::vector<model::EntryId> seen;
  model::RequestId request;
  std::optional<model::Word> language = std::nullopt;
  std::optional<std::vector<wire::Name>> confirmed = std::nullopt;  // codes a person has answered for: alert.would_end
};
BOOST_DESCRIBE_STRUCT(ConflictSettleParams, (), (exam, take, reason, seen, request, language, confirmed))
constexpr auto notes(const ConflictSettleParams*) {
  return std::array{wire::Note{"take", "an entry of exam.read, finding.history or conflict.list; any value that was ever recorded there, so that a settlement can be undone"},
                    wire::Note{"seen", seen_note}, wire::Note{"language", sentences_note}, wire::Note{"confirmed", confirmed_note}};
}
// The reply tells the alerts as they are now: a decision may raise one, or take one back. Scope E; writes, signed by the examiner; also after the signature. Faults: finding.unknown, finding.stale (a value of this place that was not
// seen), value.empty (no reason), alert.would_end (asked back: an alert would go, or be less urgent), exam.withdrawn, revision.unknown, format.newer.
[[nodiscard]] Result<ExamReply> conflict_settle(Context& context, const ConflictSettleParams& params);

// What is not decided of an exam and of its person, in a sentence each, for a page of that exam: all but what the page says where it
// stands (findings, impressions, the plan). A page that leaves the clinic does not name the people of whom it is open whose exam it is.
[[nodiscard]] std::vector<std::string> undecided_of(Context& context, const model::Exam& exam, const report::Words& words, bool leaves_the_clinic);

}  // namespace limbledger::service
