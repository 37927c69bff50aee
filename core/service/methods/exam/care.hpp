// consent.record, impression.record, plan.record, exam.sign, addendum.record: what the examiner states in their own name.
// The impression is never filled by the program. Signing is never refused for what is missing: that is listed. After it the
// record changes no more; an addendum is added under a signature of its own.
#pragma once

#include "core/interpret/statement.hpp"
#include "core/service/methods/exam/common.hpp"
#include "core/service/methods/exam/finding.hpp"

namespace limbledger::service {

// What a signature now would list as missing.
[[nodiscard]] std::vector<model::Word> what_is_left(Context& context, const model::ExamId& exam);

struct ConsentRecordParams {
  model::ExamId exam;
  std::optional<model::Consent> consent;
  std::optional<model::Company> company;
  std::optional<model::WhoSpoke> who_spoke;
  std::optional<model::Interpreter> interpreter;
  std::vector<model::EntryId> seen;
  model::RequestId request;
  std::optional<model::Word> language = std::nullopt;
  std::optional<wire::Remark> reason = std::nullopt;
  std::optional<std::vector<wire::Name>> confirmed = std::nullopt;  // codes a person has answered for: alert.would_end, consent.turned
};
BOOST_DESCRIBE_STRUCT(ConsentRecordParams, (), (exam, consent, company, who_spoke, interpreter, seen, request, language, reason, confirmed))
inline constexpr std::string_view why_note = "why, or how it is known: kept, and printed where values stood against each other; needed where it decides between such";
constexpr auto notes(const ConsentRecordParams*) {
  return std::array{wire::Note{"seen", seen_note}, wire::Note{"language", sentences_note}, wire::Note{"reason", why_note}, wire::Note{"confirmed", confirmed_note}};
}
// What is not given stays as it was recorded.
[[nodiscard]] Result<ExamReply> consent_record(Context& context, const ConsentRecordParams& params);

struct ImpressionRecordParams {
  model::ExamId exam;
  model::Impression impression;
  std::vector<model::EntryId> replaces;
  std::vector<model::EntryId> seen;
  model::RequestId request;
  std::optional<wire::Remark> reason = std::nullopt;
  std::optional<FaultLanguage> language = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(ImpressionRecordParams, (), (exam, impression, replaces, seen, request, reason, language))
constexpr auto notes(const ImpressionRecordParams*) {
  return std::array{wire::Note{"language", fault_words_note}, wire::Note{"replaces", "the entries of every impression that stands; none where none does"}, wire::Note{"seen", seen_note}, wire::Note{"reason", why_note}};
}
[[nodiscard]] Result<ExamReply> impression_record(Context& context, const ImpressionRecordParams& params);

struct PlanRecordParams {
  model::ExamId exam;
  std::vector<model::PlanItem> plan_items;
  std::vector<model::EntryId> replaces;
  std::vector<model::EntryId> seen;
  model::RequestId request;
  std::optional<std::vector<wire::Name>> confirmed;  // codes a person has answered for: value.unusual
  std::optional<FaultLanguage> language = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(PlanRecordParams, (), (exam, plan_items, replaces, seen, request, confirmed, language))
constexpr auto notes(const PlanRecordParams*) { return std::array{wire::Note{"language", fault_words_note}, wire::Note{"plan_items", "needed: at least one"}, wire::Note{"seen", seen_note}}; }
struct PlanRecordResult {
  model::Exam exam;
  std::vector<model::EntryId> revision;
  std::optional<bool> repeat;
  std::vector<model::PlanItem> open_loops;  // decided, and nothing became of it yet
};
BOOST_DESCRIBE_STRUCT(PlanRecordResult, (), (exam, revision, repeat, open_loops))
[[nodiscard]] Result<PlanRecordResult> plan_record(Context& context, const PlanRecordParams& params);

struct ExamSignParams {
  model::ExamId exam;
  wire::Remark read_aloud;  // the line that was read: name, age, side, main finding
  std::optional<std::vector<wire::Name>> identified;
  std::optional<std::vector<model::Shown>> shown;
  std::vector<model::EntryId> seen;
  model::RequestId request;
  std::optional<std::vector<wire::Name>> confirmed;  // codes a person has answered for: person.mismatch, note.protected
  std::optional<model::Word> language = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(ExamSignParams, (), (exam, read_aloud, identified, shown, seen, request, confirmed, language))
constexpr auto notes(const ExamSignParams*) {
  return std::array{
      wire::Note{"read_aloud", "what whoever signs has read out before signing: name, age, side in words, main finding; kept as it is sent"},
      wire::Note{"identified", identified_note},
      wire::Note{"shown", "the alerts and statements that were on the screen, by the members of exam.assess: id is the statement or the alert's name (with its side: alert.acs:left), message and params as they "
                          "came, answered what was said of it; they are kept with the signature. May be left out"},
      wire::Note{"seen", seen_note},
      wire::Note{"confirmed", confirmed_note},
      wire::Note{"language", "en, es or fr: incomplete also in words (incomplete_text), and a fault with `text`; what nobody has translated is English and ends in (en)"}};
}
struct ExamSignResult {
  model::Signed signed_;
  std::vector<model::Word> incomplete;
  std::vector<model::EntryId> revision;
  std::optional<bool> repeat;
  std::optional<std::vector<wire::LongText>> incomplete_text = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(ExamSignResult, (), (signed_, incomplete, revision, repeat, incomplete_text))
constexpr auto notes(const ExamSignResult*) {
  return std::array{
      wire::Note{"incomplete", "what was left, one word each, never a bar: person (the exam is of nobody yet), consent (to be examined and to be recorded: not recorded, or no yes), findings (none), impression (none), "
                               "conflicts (values that disagree), damaged_entries, minimum_set (not all of the complaint's is recorded or said not to have been done), not_examined (all of it was left for lack of time), "
                               "alerts (one stands raised, without an action or a reason)"},
      wire::Note{"incomplete_text", "with a language: the same in words, one for one"}};
}
// Faults: exam.signed, format.newer (parts that only a newer edition can read), ledger.locked (opened by the printed code),
// person.mismatch (identifiers that are not those of the exam's person), note.protected (nothing was recorded of what stands there).
[[nodiscard]] Result<ExamSignResult> exam_sign(Context& context, const ExamSignParams& params);

struct AddendumRecordParams {
  model::ExamId exam;
  model::AddendumKind kind{};
  wire::Remark reason;
  std::optional<wire::LongText> text;
  std::optional<std::vector<NewFinding>> findings;
  std::vector<model::EntryId> seen;
  model::RequestId request;
  std::optional<model::Word> language = std::nullopt;
  std::optional<model::PartialDate> examined_on = std::nullopt;
  std::optional<std::vector<wire::Name>> confirmed = std::nullopt;
  std::optional<std::vector<model::PlanItem>> plan_items = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(AddendumRecordParams, (), (exam, kind, reason, text, findings, seen, request, language, examined_on, confirmed, plan_items))
constexpr auto notes(const AddendumRecordParams*) {
  return std::array{wire::Note{"seen", seen_note}, wire::Note{"language", sentences_note}, wire::Note{"examined_on", examined_on_note},
                    wire::Note{"confirmed", "codes a person has answered for: value.unusual, about examined_on and the days in plan_items"},
                    wire::Note{"plan_items", "what is to be done now, each new: it stands in the plan, and in loop.list (planned_after_signature) until plan.follow says that it was done, given, answered or declined"}};
}
struct AddendumRecordResult {
  model::Addendum addendum;
  std::vector<model::EntryId> revision;
  std::optional<bool> repeat;
  std::vector<model::LetterId> stale_letters;
  std::optional<std::vector<interpret::Alert>> call_backs = std::nullopt;  // alerts that were not there when the exam was signed
};
BOOST_DESCRIBE_STRUCT(AddendumRecordResult, (), (addendum, revision, repeat, stale_letters, call_backs))
[[nodiscard]] Result<AddendumRecordResult> addendum_record(Context& context, const AddendumRecordParams& params);

}  // namespace limbledger::service
