// What an assessment holds, as it is written on the wire. Ids are made of what they are about (statement kind, item, side),
// so that the same findings give the same bytes. Params are numbers in steps of 0.1 and words; sentences are made elsewhere; `text` is filled
// there, where a caller asks for a language.
// Alerts, questions, flags, hypotheses and steps have their shapes here. Source: contract, section 7.
#pragma once

#include "core/model/exam/exam.hpp"
#include "core/model/item.hpp"
#include "core/model/place.hpp"
#include "core/model/time.hpp"
#include "core/wire/type.hpp"

#include <optional>
#include <vector>

namespace limbledger::interpret {

enum class StatementGrade { as_expected, unclear, notable, cannot_tell };
BOOST_DESCRIBE_ENUM(StatementGrade, as_expected, unclear, notable, cannot_tell)

enum class Verdict { below, within, above, not_distinguishable, no_norm, norms_disagree };
BOOST_DESCRIBE_ENUM(Verdict, below, within, above, not_distinguishable, no_norm, norms_disagree)

enum class Comparator { norm, other_side, own_past, none };
BOOST_DESCRIBE_ENUM(Comparator, norm, other_side, own_past, none)

enum class Outcome { positive, negative, undetermined, not_applicable };
BOOST_DESCRIBE_ENUM(Outcome, positive, negative, undetermined, not_applicable)

struct Statement {
  model::StatementId statement;  // motion.norm:knee.flexion_passive:left
  std::optional<model::Side> side;
  StatementGrade grade{};
  std::optional<Verdict> verdict;  // absent where nothing was measured: a referral prompt
  Comparator comparator{};
  model::MessageId message;
  wire::Raw params;
  std::vector<model::FindingId> findings;
  std::vector<model::RowId> rows;
  std::vector<model::Word> missing;  // what would have been needed: instrument, birth, meaning ...
  std::optional<wire::LongText> text = std::nullopt;  // in the language that was asked for
};
BOOST_DESCRIBE_STRUCT(Statement, (), (statement, side, grade, verdict, comparator, message, params, findings, rows, missing, text))
constexpr auto notes(const Statement*) {
  return std::array{
      wire::Note{"params",
                 "numbers and words for the message, in steps of 0.1; `deg` is on the axis, `toward_deg` in the direction the item is named for, "
                 "and `low`, `high` are in that direction; `instead` names an item that would tell more, and what weakens a test stands as "
                 "a word with `true` (guarded, heavy_thigh, first_weeks ...)"},
      wire::Note{"missing", "what the statement would have needed: instrument, birth, position, meaning, number, other_side"}};
}

struct RuleInput {
  model::Word input;
  model::Word state;  // known, not_asked, refused, not_reliable, in_conflict ...
};
BOOST_DESCRIBE_STRUCT(RuleInput, (), (input, state))

struct SettleAnswer {
  wire::Name if_;
  Outcome gives{};
  std::optional<model::Word> band = std::nullopt;  // where the rule has bands
};
BOOST_DESCRIBE_STRUCT(SettleAnswer, (), (if_, gives, band))

// An unknown input that can still change the outcome.
struct Settle {
  model::Word input;
  std::optional<model::ItemId> item;  // absent where it is no item: age, days
  std::optional<model::Side> side;
  std::vector<SettleAnswer> answers;
};
BOOST_DESCRIBE_STRUCT(Settle, (), (input, item, side, answers))

// A number that a rule works out, in hundredths.
struct RuleNumber {
  static constexpr wire::NumberRule wire_rule{0, 100000, 100, ""};
  std::int64_t steps = 0;
  friend bool operator==(const RuleNumber&, const RuleNumber&) = default;
};

// Both ends where it is known, the same twice; one where the other is open.
struct RuleValue {
  std::optional<RuleNumber> low;
  std::optional<RuleNumber> high;
};
BOOST_DESCRIBE_STRUCT(RuleValue, (), (low, high))

// What a rule counts: a score may go below nought.
struct RulePoint {
  static constexpr wire::NumberRule wire_rule{-100, 1000, 1, ""};
  std::int64_t steps = 0;
  friend bool operator==(const RulePoint&, const RulePoint&) = default;
};

// The same twice where it is known; while inputs are open, the least and the most it may come to.
struct RulePoints {
  RulePoint low;
  RulePoint high;
};
BOOST_DESCRIBE_STRUCT(RulePoints, (), (low, high))

struct RuleResult {
  model::RuleId rule;
  model::EditionId edition;  // the published version: okr/1995
  model::Side side{};
  Outcome outcome{};
  std::optional<model::Word> gate;  // why it is not applicable
  std::optional<model::Word> band;  // rules with points, a category or a number
  std::optional<RuleValue> value;  // the number: ankle-arm index
  std::optional<RulePoints> points;  // of a rule that counts
  std::vector<RuleInput> inputs;
  std::vector<Settle> settle;
  std::vector<model::Word> flags;
  std::vector<model::FindingId> findings;
  std::optional<wire::LongText> text = std::nullopt;  // with a language
};
BOOST_DESCRIBE_STRUCT(RuleResult, (), (rule, edition, side, outcome, gate, band, value, points, inputs, settle, flags, findings, text))

enum class AlertState { raised, handled, withdrawn_by_correction };
BOOST_DESCRIBE_ENUM(AlertState, raised, handled, withdrawn_by_correction)

enum class Urgency { now, same_day };
BOOST_DESCRIBE_ENUM(Urgency, now, same_day)

enum class Audience { clinician, protected_ };
BOOST_DESCRIBE_ENUM(Audience, clinician, protected_)

struct Alert {
  model::Word alert;
  std::optional<model::Side> side;
  AlertState state{};
  Urgency urgency{};
  bool interrupts = false;
  std::vector<model::FindingId> because;
  model::MessageId message;
  std::vector<model::MessageId> meanwhile;
  std::vector<model::ItemId> stop;
  Audience audience{};
  std::vector<model::SourceId> sources;
  std::optional<model::AlertHandled> handled;
  std::optional<wire::LongText> text = std::nullopt;  // in the language that was asked for
  std::optional<bool> call_back = std::nullopt;  // came after the signature
  std::optional<std::vector<model::Word>> corrected = std::nullopt;  // what it went by, where that is no finding
  std::optional<model::AlertHandled> handled_before = std::nullopt;  // what was said of it earlier, and does not answer it now
  std::optional<std::vector<model::AlertHandled>> handled_also = std::nullopt;  // nothing that was done or said is lost
  std::optional<std::vector<model::Finding>> rested_on = std::nullopt;          // of one that went: as it stood then
  std::optional<wire::Count<1, 100000>> times_raised = std::nullopt;            // goes up whenever it has to be shown again
  std::optional<std::vector<wire::LongText>> meanwhile_text = std::nullopt;     // beside `text`, in the order of meanwhile
};
BOOST_DESCRIBE_STRUCT(Alert, (), (alert, side, state, urgency, interrupts, because, message, meanwhile, stop, audience, sources, handled, text, call_back, corrected, handled_before, handled_also, rested_on,
                                  times_raised, meanwhile_text))
constexpr auto notes(const Alert*) {
  return std::array{wire::Note{"interrupts", "true: with the state raised, it is shown over whatever is on the screen, once for each number in times_raised; of one that is handled nothing is shown again, whatever its number"},
                    wire::Note{"state", "raised: nobody has answered what it says now; handled: `handled` answers it. One that was handled is raised again, with the old answer in handled_before, when it "
                                        "becomes more urgent, when its sentence becomes a graver one (a foot that was cold and has no pulse now), when a finding that the answer had rested on was taken "
                                        "back or another came in its place and says worse, and when it is of another leg or person. Further findings that leave class and sentence as grave as they were do not raise it again"},
                    wire::Note{"text", "with a language: message in words"},
                    wire::Note{"meanwhile_text", "with a language: meanwhile in words, one for one; a drug stands beside what is known of allergies"},
                    wire::Note{"times_raised", "1 when it is first raised; goes up when it is raised again after it was gone, becomes more urgent, says something that it did not say before, rests on "
                                               "a finding that it did not rest on, or what was done or said of it answers it no more; at nothing else, so neither when one of its findings goes nor at another alert. A "
                                               "form keeps the highest that it has shown of each alert and side, and lets it interrupt again above that once its state is raised; it goes up under an answer that stands as well, and shows nothing then. Absent: of a document, and of what is kept apart; go by the name and message then"},
                    wire::Note{"call_back", "true: it was not there when the exam was signed, so the person has to be called back"},
                    wire::Note{"corrected", "of one that is withdrawn_by_correction: person.birth, person.sex, person.norm_sex, exam.person, exam.complaint, exam.side, exam.injured_on, exam.who_spoke, exam.offset_min; absent: a finding"},
                    wire::Note{"handled_before", "what was done or said of it before; it has since been raised by other findings, became more urgent, says something graver, or is of another leg or person than it was said of, and this is no answer"},
                    wire::Note{"handled", "what answers it; of an alert that had stood inside another and came out of it as it was, what answered that one (its name is in it)"},
                    wire::Note{"handled_also", "what else was done or said of it, and of an alert that stands inside it, oldest first. One that says what a graver one beside it says (no pulse in the foot after a "
                                               "knee injury) stands inside that one and is not listed: one box, and one answer for both"},
                    wire::Note{"rested_on", "of one that is withdrawn_by_correction: the findings that raised it, as they stood then"}};
}

// Whom to call from this place, once an alert of class now stands unanswered.
struct UrgentWay {
  std::vector<model::StatementId> alerts;  // with their side
  wire::Count<1, 100000> window_minutes;   // the shortest time to harm among them
  std::optional<bool> call_first;
  std::vector<model::Travel> travel;
  std::vector<model::Telephone> telephones;
};
BOOST_DESCRIBE_STRUCT(UrgentWay, (), (alerts, window_minutes, call_first, travel, telephones))
constexpr auto notes(const UrgentWay*) {
  return std::array{wire::Note{"call_first", "true: travel from this place takes longer than that, so the call precedes every further question; absent: travel times of the place are not known"}};
}

struct Ask {
  model::ItemId item;
  model::Side side{};
};
BOOST_DESCRIBE_STRUCT(Ask, (), (item, side))

struct Question {
  model::Word question;
  std::optional<model::Side> side;
  wire::Count<1, 3> rank;
  std::vector<Ask> ask;
  model::MessageId message;
  std::optional<wire::LongText> text = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(Question, (), (question, side, rank, ask, message, text))

enum class FlagAnswer { raised, asked_no, not_asked, cannot_answer };
BOOST_DESCRIBE_ENUM(FlagAnswer, raised, asked_no, not_asked, cannot_answer)

struct Flag {
  model::Word flag;
  std::optional<model::Side> side;
  FlagAnswer answer{};
  std::vector<model::FindingId> findings;
  std::optional<wire::LongText> text = std::nullopt;  // with a language
};
BOOST_DESCRIBE_STRUCT(Flag, (), (flag, side, answer, findings, text))

enum class Band { speak_against, leave_open, favour, strongly_favour, cannot_tell };
BOOST_DESCRIBE_ENUM(Band, speak_against, leave_open, favour, strongly_favour, cannot_tell)

enum class Support { for_, against, neither };
BOOST_DESCRIBE_ENUM(Support, for_, against, neither)

enum class Strength { weak, moderate, strong };
BOOST_DESCRIBE_ENUM(Strength, weak, moderate, strong)

struct OutOf {
  wire::Count<0, 100> low;
  wire::Count<0, 100> high;
  wire::Count<100, 100> of;
};
BOOST_DESCRIBE_STRUCT(OutOf, (), (low, high, of))

struct Used {
  model::FindingId finding;
  model::Word group;
  model::RowId row;
};
BOOST_DESCRIBE_STRUCT(Used, (), (finding, group, row))

struct LeftOut {
  model::FindingId finding;
  model::Word because;
};
BOOST_DESCRIBE_STRUCT(LeftOut, (), (finding, because))

struct Hypothesis {
  model::Word hypothesis;
  std::optional<model::Side> side;
  std::optional<std::vector<Band>> bands;
  std::optional<OutOf> range;
  Support support{};
  Strength strength{};
  model::Word in;
  std::vector<Used> used;
  std::vector<LeftOut> left_out;
  model::MessageId message;
  std::optional<wire::LongText> text = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(Hypothesis, (), (hypothesis, side, bands, range, support, strength, in, used, left_out, message, text))

struct Step {
  model::ItemId step;
  model::Side side{};
  std::vector<model::Word> changes;
  wire::Count<0, 3600> seconds;
  model::Discomfort discomfort{};
  model::MessageId message;
  std::vector<model::Instead> instead;
  std::optional<wire::LongText> text = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(Step, (), (step, side, changes, seconds, discomfort, message, instead, text))

// Of the minimum set, what was not recorded.
struct MissingItem {
  model::ItemId item;
  model::Side side{};
  std::optional<model::Word> why = std::nullopt;
  std::optional<wire::LongText> text = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(MissingItem, (), (item, side, why, text))
constexpr auto notes(const MissingItem*) {
  return std::array{wire::Note{"why", "minimum: of the complaint's minimum set; other_side: the same on the side not complained of; child: asked for at this age, or where the age is not "
                                      "known; to_confirm: carried over or reported by the person alone; no_time: the whole set was left for lack of time"}};
}

// A joint nobody looked at on a side: of the complaint on the other side, or the one above or below it.
struct NotExamined {
  model::Word joint;  // a region of the catalogue
  model::Side side{};
  model::Word why;
  std::optional<wire::LongText> text = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(NotExamined, (), (joint, side, why, text))
constexpr auto notes(const NotExamined*) {
  return std::array{wire::Note{"why", "complaint: the part complained of; other_side: the same part on the other side; joint_around: the joint above or below it; "
                               "transfer: the exam was stopped for transfer, so it is no gap, and whoever takes over knows where nobody looked"}};
}

// Findings that do not fit together; shown as a question, never settled here.
struct Contradiction {
  model::StatementId contradiction;
  std::optional<model::Side> side;
  model::MessageId message;
  wire::Raw params;
  std::vector<model::FindingId> findings;
  std::optional<wire::LongText> text = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(Contradiction, (), (contradiction, side, message, params, findings, text))

struct Assessment {
  model::EditionId edition;
  model::PartialDate as_of;
  std::optional<wire::Name> saw;  // digest of the entries that were read; absent for a document
  std::vector<Alert> alerts;
  std::vector<Question> questions;
  wire::Count<0, 1000> questions_more;  // those beyond the three shown
  std::vector<Flag> flags;
  std::vector<RuleResult> rules;
  std::vector<Statement> statements;
  std::vector<Hypothesis> hypotheses;
  std::vector<Step> steps;
  std::vector<MissingItem> missing;
  std::vector<NotExamined> not_examined;
  std::vector<Contradiction> contradictions;
  std::optional<std::vector<model::Disagreed>> disagreed = std::nullopt;  // what the examiner disagrees with stands all the same
  std::optional<UrgentWay> urgent = std::nullopt;
  std::optional<bool> held_back = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(Assessment, (),
                      (edition, as_of, saw, alerts, questions, questions_more, flags, rules, statements, hypotheses, steps, missing, not_examined, contradictions,
                       disagreed, urgent, held_back))
constexpr auto notes(const Assessment*) {
  return std::array{wire::Note{"disagreed", "with which statement, rule, hypothesis or alert somebody disagrees and why; it stays where it is"},
                    wire::Note{"urgent", "once an alert of class now stands unanswered: whom to call, from the place of the exam"},
                    wire::Note{"held_back", "true: the exam is supervised, and no hypothesis is given before its examiner has signed"}};
}

// One reading or answer that the working used.
struct WorkingInput {
  std::optional<model::FindingId> finding;
  std::optional<model::Word> input;
  std::optional<model::Word> state;
  std::optional<model::Degrees> deg;
  std::optional<model::Side> side = std::nullopt;  // of an item without a finding
};
BOOST_DESCRIBE_STRUCT(WorkingInput, (), (finding, input, state, deg, side))

struct WorkingRow {
  model::RowId row;
  model::SourceId source;
  model::Status status{};
  wire::Raw numbers;
};
BOOST_DESCRIBE_STRUCT(WorkingRow, (), (row, source, status, numbers))

// How a statement or a rule's outcome came about, to be checked by hand.
struct Working {
  model::StatementId statement;
  model::MessageId message;
  std::vector<WorkingInput> inputs;
  std::vector<WorkingRow> rows;
  wire::Name formula;
  std::vector<wire::Name> lines;
  std::vector<model::MessageId> changes_if;
  std::optional<wire::LongText> text = std::nullopt;
  std::optional<std::vector<wire::LongText>> changes_if_text = std::nullopt;  // in the order of changes_if
};
BOOST_DESCRIBE_STRUCT(Working, (), (statement, message, inputs, rows, formula, lines, changes_if, text, changes_if_text))

// Both are made by the same code, so that the working cannot differ from what was said.
struct Judged {
  Statement statement;
  Working working;
};

struct JudgedRule {
  RuleResult result;
  Working working;
};

}  // namespace limbledger::interpret
