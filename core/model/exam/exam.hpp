// One examination of one person at one place and time, as it stands now: open, then signed, after that only addenda.
// `revision` is the heads of the record: what a writer was shown, to be sent back as `seen`. Source: contract, section 6.
#pragma once

#include "core/model/exam/after.hpp"
#include "core/model/exam/consent.hpp"
#include "core/model/exam/finding.hpp"
#include "core/model/exam/letter.hpp"
#include "core/model/exam/plan.hpp"

#include <optional>
#include <vector>

namespace limbledger::model {

enum class ExamState { open, signed_, withdrawn };
BOOST_DESCRIBE_ENUM(ExamState, open, signed_, withdrawn)

enum class Setting { outreach, primary_care, emergency, orthopaedic, sports };
BOOST_DESCRIBE_ENUM(Setting, outreach, primary_care, emergency, orthopaedic, sports)

// What the signer saw: names and parameters of the statements and alerts on screen, and the answers to them.
struct Shown {
  StatementId id;
  std::optional<MessageId> message;
  std::optional<wire::Raw> params;
  std::optional<wire::Remark> answered;
  friend bool operator==(const Shown&, const Shown&) = default;
};
BOOST_DESCRIBE_STRUCT(Shown, (), (id, message, params, answered))

struct Signed {
  ExaminerId by;
  Instant at;
  wire::Name saw;  // digest of the entries the signer saw, hexadecimal
  std::optional<std::vector<Shown>> shown;
  friend bool operator==(const Signed&, const Signed&) = default;
};
BOOST_DESCRIBE_STRUCT(Signed, (), (by, at, saw, shown))

enum class AddendumKind { text, findings, correction };
BOOST_DESCRIBE_ENUM(AddendumKind, text, findings, correction)

struct Addendum {
  EntryId entry;
  ExaminerId by;
  Instant at;
  AddendumKind kind{};
  wire::Remark reason;
  std::optional<wire::LongText> text;
  std::optional<std::vector<Observation>> findings;
  std::optional<std::vector<Word>> marks;
  std::optional<PartialDate> examined_on = std::nullopt;  // the day of the exam, as its writer says
  std::optional<std::vector<PlanItem>> plan_items = std::nullopt;  // as they were decided; what became of them stands in the plan
  friend bool operator==(const Addendum&, const Addendum&) = default;
};
BOOST_DESCRIBE_STRUCT(Addendum, (), (entry, by, at, kind, reason, text, findings, marks, examined_on, plan_items))

struct Withdrawn {
  std::optional<ExaminerId> by;
  Instant at;
  wire::Remark reason;
  friend bool operator==(const Withdrawn&, const Withdrawn&) = default;
};
BOOST_DESCRIBE_STRUCT(Withdrawn, (), (by, at, reason))

// Values recorded without knowledge of each other; kept until a person settles it.
struct Conflict {
  Word about;  // finding, withdrawal, person, impression, plan, consent, request, names ...
  std::optional<ItemId> item;
  std::optional<Side> side;
  std::vector<EntryId> entries;
  std::optional<std::vector<wire::Raw>> values;  // what each entry says, in the order of `entries`
  friend bool operator==(const Conflict&, const Conflict&) = default;
};
BOOST_DESCRIBE_STRUCT(Conflict, (), (about, item, side, entries, values))

// Something about an entry that a reader must know: void, late, from a newer edition, a pointer that waits.
struct EntryMark {
  EntryId entry;
  Word mark;
  friend bool operator==(const EntryMark&, const EntryMark&) = default;
};
BOOST_DESCRIBE_STRUCT(EntryMark, (), (entry, mark))

// Of what is found now, a value that stands in the place of one that somebody had been shown.
struct MeasuredAgain {
  EntryId entry;
  std::vector<Value> was;  // newest first; the last is the one that was shown
  friend bool operator==(const MeasuredAgain&, const MeasuredAgain&) = default;
};
BOOST_DESCRIBE_STRUCT(MeasuredAgain, (), (entry, was))

// What was done about an alert, or why nothing was. `urgent`: it was of class now; one that becomes so later is raised again.
struct AlertHandled {
  Word alert;
  std::optional<Side> side;
  bool urgent = false;
  std::optional<wire::Remark> action;
  std::optional<wire::Remark> reason;
  std::optional<ExaminerId> by;
  Instant at;
  std::optional<std::vector<EntryId>> unseen;  // of what is found now, what its writer had not been shown; worked out, never stored
  std::optional<std::vector<MeasuredAgain>> measured_again = std::nullopt;  // of those; as little stored
  std::optional<std::vector<Word>> corrected = std::nullopt;                // exam.sides, exam.person: other than they were when it was said
  friend bool operator==(const AlertHandled&, const AlertHandled&) = default;
};
BOOST_DESCRIBE_STRUCT(AlertHandled, (), (alert, side, urgent, action, reason, by, at, unseen, measured_again, corrected))
constexpr auto notes(const AlertHandled*) {
  return std::array{wire::Note{"corrected", "exam.sides, exam.person: left and right were exchanged since, or the exam was moved to another person; it is then asked again"}};
}

struct Exam {
  std::optional<ExamId> exam;  // absent in a document
  std::optional<PersonId> person;
  std::optional<ExamState> state;
  Word complaint;
  std::optional<Side> side;
  Setting setting{};
  std::optional<PlaceId> place;
  std::optional<ExaminerId> examiner;
  std::optional<Instant> examined_at;
  std::optional<OffsetMinutes> offset_min;
  std::optional<PartialDate> injured_on;
  std::optional<EditionId> edition;
  std::optional<std::vector<EntryId>> revision;
  std::optional<Consent> consent;
  std::optional<Company> company;
  std::optional<WhoSpoke> who_spoke;
  std::optional<Interpreter> interpreter;
  std::optional<Impression> impression;
  std::optional<std::vector<PlanItem>> plan;
  std::optional<std::vector<Finding>> findings;
  std::optional<std::vector<AlertHandled>> alerts_handled;
  std::optional<std::vector<Addendum>> addenda;
  std::optional<std::vector<Letter>> letters;
  std::optional<Signed> signed_;
  std::optional<std::vector<Word>> incomplete;
  std::optional<Withdrawn> withdrawn;
  std::optional<std::vector<Conflict>> conflicts;
  std::optional<std::vector<EntryMark>> marks;
  std::optional<ExamId> reviews;    // the exam whose plan is looked at again
  std::optional<bool> supervised;   // closed by its examiner before anybody else's opinion and before bands
  std::optional<std::vector<Transferred>> transfer;  // one; several where their writers had not seen each other
  std::optional<std::vector<Disagreed>> disagreed;
  std::optional<std::vector<Followed>> followed;
  std::optional<std::vector<OutcomeTold>> outcomes;
  std::optional<std::vector<Countersigned>> countersigned;
  std::optional<std::vector<SidesExchanged>> sides_exchanged;
  std::optional<std::vector<Settled>> settled = std::nullopt;  // of all but findings, which hold their own; of each what holds, then what it undid
  std::optional<PartialDate> examined_on = std::nullopt;
  std::optional<bool> day_doubtful = std::nullopt;
  friend bool operator==(const Exam&, const Exam&) = default;
};
BOOST_DESCRIBE_STRUCT(Exam, (), (exam, person, state, complaint, side, setting, place, examiner, examined_at, offset_min, injured_on, edition, revision,
                                 consent, company, who_spoke, interpreter, impression, plan, findings, alerts_handled, addenda, letters, signed_, incomplete, withdrawn,
                                 conflicts, marks, reviews, supervised, transfer, disagreed, followed, outcomes, countersigned, sides_exchanged,
                                 settled, examined_on, day_doubtful))
constexpr auto notes(const Exam*) {
  return std::array{wire::Note{"examined_on", "the day as a person said it; it stands before that of examined_at"},
                    wire::Note{"day_doubtful", "true: examined_at tells no day (of a clock that cannot have been right), or two people said different days; nothing is judged by it until "
                                               "examined_on says one"}};
}

}  // namespace limbledger::model

// One table a type for the whole program, made in core/model/types.cpp: it is costly to make in every file.
namespace limbledger::wire {
extern template const Type& type_of<model::Exam>();
extern template const Type& type_of<model::Signed>();
extern template const Type& type_of<model::Addendum>();
extern template const Type& type_of<model::Conflict>();
}  // namespace limbledger::wire
