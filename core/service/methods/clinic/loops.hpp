// loop.list: what is left open, by name, for whoever goes out next: alerts without an action, call-backs, urgent ones of which nobody recorded what became, exams nobody signed, values in
// conflict, what was written into a person's only exam that somebody withdrew, what an addendum decided (planned_after_signature), referrals unanswered past their day, reviews overdue, three visits without an impression. Who has several records is one.
// Every line names its exam. What protects a person is in none of it; `protected` asks for the exams of which nothing was recorded about
// such an alert, for those alone, an examiner alone, and not as a page. Source: clinical safety, requirements 14 and 16.
#pragma once

#include "core/service/methods/clinic/listed.hpp"
#include "core/service/methods/clinic/put_off.hpp"

namespace limbledger::service {

struct LoopListParams {
  std::optional<model::PartialDate> as_of;   // absent: today, by the clock of this device
  std::optional<model::PlaceId> place;       // exams of one place alone
  std::optional<model::Word> language;       // with the page to print
  std::optional<bool> protected_ = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(LoopListParams, (), (as_of, place, language, protected_))
constexpr auto notes(const LoopListParams*) {
  return std::array{wire::Note{"as_of", "the day by which something is past; absent: today by this device's clock"},
                    wire::Note{"protected", "true, by an examiner, on purpose and where nobody reads along: instead of everything else the exams, signed or not, with a protected note of which nothing is recorded "
                                            "(loop protected_note); it is answered with alert.handle. There is no page of it"}};
}

// In the order in which they are asked after.
enum class LoopWord { call_back, alert_without_action, urgent_without_outcome, in_conflict, withdrawn_alone, planned_after_signature, unsigned_exam, referral_past_day, review_overdue, third_visit_without_impression, protected_note };
BOOST_DESCRIBE_ENUM(LoopWord, call_back, alert_without_action, urgent_without_outcome, in_conflict, withdrawn_alone, planned_after_signature, unsigned_exam, referral_past_day, review_overdue, third_visit_without_impression, protected_note)

struct ListedLoop {
  LoopWord loop{};
  model::ExamId exam;
  std::optional<model::PartialDate> examined_on;
  std::optional<model::Word> alert;
  std::optional<model::Side> side;
  std::optional<interpret::Urgency> urgency;
  std::optional<model::PlanItemId> plan_item;
  std::optional<wire::Remark> plan;          // in the words of who planned it
  std::optional<model::PartialDate> by;
  std::optional<wire::LongText> text;
  std::optional<std::vector<ToldPutOff>> put_off = std::nullopt;
  std::optional<wire::Remark> action = std::nullopt;  // what was done about an alert, in the words of who did it
  std::optional<wire::Remark> reason = std::nullopt;  // or why nothing was
};
BOOST_DESCRIBE_STRUCT(ListedLoop, (), (loop, exam, examined_on, alert, side, urgency, plan_item, plan, by, text, put_off, action, reason))
constexpr auto notes(const ListedLoop*) { return std::array{wire::Note{"loop", "urgent_without_outcome: what was done about an alert of class now, or why nothing was, is recorded (action, reason), and not what became of the person; it goes with outcome.record (but not with not_arrived), an answered referral or a later visit (not with an exam that was opened alone)"},
                                                     wire::Note{"put_off", "of what disagrees: who was asked, and when to look again; other lines of the exam may wait for nobody"}}; }
struct OpenPerson {
  ListedPerson person;
  std::vector<ListedLoop> loops;
};
BOOST_DESCRIBE_STRUCT(OpenPerson, (), (person, loops))
struct LoopListResult {
  model::PartialDate as_of;
  std::vector<OpenPerson> people;            // who cannot wait first
  std::optional<wire::LongText> text;
};
BOOST_DESCRIBE_STRUCT(LoopListResult, (), (as_of, people, text))
// Scope E V. Faults: token.scope (protected, by a viewer).
[[nodiscard]] Result<LoopListResult> loop_list(Context& context, const LoopListParams& params);

}  // namespace limbledger::service
