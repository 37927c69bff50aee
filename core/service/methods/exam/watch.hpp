// Alerts, rules and concerns of a recorded exam, for everything that must not differ about them: the reply to a finding, what is
// asked back as withheld, the next step, handling an alert, and the signature.
#pragma once

#include "core/interpret/judged.hpp"
#include "core/service/methods/exam/common.hpp"
#include "core/service/methods/say/texts.hpp"
#include "core/service/once_raised.hpp"

#include <optional>
#include <vector>

namespace limbledger::service {

// An exam as it is judged: what a missing entry may have corrected settles nothing.
struct ToJudge {
  model::Exam exam;
  std::optional<model::Person> person;
  model::PartialDate as_of;
  std::optional<interpret::KnownOtherwise> at_signature;  // as its signer had been shown it and knew its person, where something came since
  std::optional<model::Place> place = std::nullopt;       // where it is done, with what is there
  std::vector<interpret::KnownOtherwise> known_otherwise{};     // while an alert was raised that is no more (raised.hpp)
  std::vector<interpret::KnownOtherwise> since_signature{};     // with what was added since, at each change of it or of its person
  TimesRaised times_raised{};
};
[[nodiscard]] ToJudge exam_to_judge(Context& context, const ledger::ExamRecord& record);
[[nodiscard]] interpret::Watched watch(Context& context, const ToJudge& judged, bool protected_too);

// A decision by which an alert that stands now would be no more, or less urgent, is asked back (alert.would_end at `path`): of two values the
// more cautious stands until a person has answered for the other (clinical safety, C7), and what is taken back leaves nothing known in its
// place. What protects a person is not asked about: the question alone would tell of it. A kiosk is never asked.
// `turned`: left and right are exchanged, and an alert that stands on the other leg then is the same one.
[[nodiscard]] Result<void> check_ends_no_alert(Context& context, const ToJudge& now, const ToJudge& then, const Confirmed& confirmed, const std::string& path, bool turned = false);
// The same of an exam that would be withdrawn whole: of those of which nothing is recorded, and of whoever was sent urgently and not told of.
[[nodiscard]] Result<void> check_leaves_no_alert(Context& context, const ToJudge& now, const Confirmed& confirmed, const std::string& path);
// As it would be judged without these entries, and with these observations instead.
[[nodiscard]] ToJudge without(ToJudge judged, const std::vector<model::EntryId>& entries, const std::vector<model::Observation>& instead = {});

// Raised for a person's protection, and neither an action nor a reason is recorded.
[[nodiscard]] bool is_protected_unanswered(const interpret::Alert& alert);

// Marks what came after the signature, and adds what the findings of an addendum raise; in the order of alerts.
void add_call_backs(Context& context, const ToJudge& judged, bool protected_too, std::vector<interpret::Alert>& alerts);

// Those alone that came after the signature; none that protects a person.
[[nodiscard]] std::vector<interpret::Alert> call_backs_of(Context& context, const model::ExamId& exam, const Sentences& sentences);

// The alerts that ride on a reply; none for a kiosk. After the signature those that came since are marked.
[[nodiscard]] Result<std::vector<interpret::Alert>> alerts_of(Context& context, const model::ExamId& exam, const Sentences& sentences);

// The exam after a write by which it may be judged otherwise, with its alerts.
[[nodiscard]] Result<ExamReply> judged_reply(Context& context, const model::ExamId& exam, const Written& written, const Sentences& sentences);

// Which of these observations are steps that are withheld now and were not answered for, each as a question at its path. A
// step is asked about where it is withheld by what stands and by what will stand: no test withholds itself by what it found.
struct AtPath {
  const model::Observation* observation = nullptr;
  std::string path;
  bool checked = false;  // finding.contradicts was answered for
};
// Which of these say that something was found at a part that the exam records as taken off, each as a question (finding.contradicts).
[[nodiscard]] std::vector<wire::Fault> absent_part_faults(Context& context, const ledger::ExamRecord& record, const std::vector<AtPath>& observations);
[[nodiscard]] std::vector<wire::Fault> withheld_faults(Context& context, const ledger::ExamRecord& record, const std::vector<AtPath>& observations);

}  // namespace limbledger::service
