// Alerts, questions, flags and referral prompts of one exam. An alert rests on recorded answers; what could still become one is a
// question, three of which are shown; the two-week class is a referral prompt among the statements. Handled alerts sink; one that
// a correction, or an answer that came later, removed stays as withdrawn_by_correction. What protects a child or partner is masked unless asked for.
// Source: clinical safety, C2, C3, C8, C13 and C16; red flags page.
#pragma once

#include "core/interpret/alerts/red_flag.hpp"
#include "core/interpret/assess_ask.hpp"
#include "core/interpret/statement.hpp"
#include "core/model/place.hpp"

#include <functional>
#include <span>
#include <vector>

namespace limbledger::interpret {

struct AlertsAsk {
  bool protected_ = false;                            // show what is masked
  std::span<const model::Exam> before_corrections{};  // the exam as it stood while an alert was raised that is no more
  const model::Place* place = nullptr;                // where the exam is done, where that is known
  std::span<const KnownOtherwise> known_otherwise{};
};

struct AlertsJudged {
  std::vector<Alert> alerts;
  std::vector<Question> questions;  // three at most
  std::size_t questions_more = 0;
  std::vector<Flag> flags;
  std::vector<Judged> prompts;
};

// One danger on one side, as it stands.
struct JudgedFlag {
  const RedFlag* flag = nullptr;
  const reference::AlertRow* row = nullptr;
  std::optional<model::Side> side;
  Raised raised;
};

// Those that apply to this person, for the side of the complaint (both where none is named) and for a side where something
// found there raises one or points to it.
[[nodiscard]] std::vector<JudgedFlag> judge_flags(const View& view);
// The same of the dangers that are wanted alone.
using WantedRows = std::function<bool(const reference::AlertRow&)>;
[[nodiscard]] std::vector<JudgedFlag> judge_flags(const View& view, const WantedRows& wanted);
// On which side it is now, where it was judged as its writers were shown it: it goes with the leg that it rests on.
[[nodiscard]] std::optional<model::Side> side_since(const JudgedFlag& judged, const std::vector<model::EntryId>& turned);
// Raised, and no mere prompt to refer.
[[nodiscard]] bool stands_as_alert(const JudgedFlag& judged);
// Shown inside the other, which is raised on that side or of the person as a whole: no line of its own, and what is done about the other
// answers it.
[[nodiscard]] bool is_inside(const JudgedFlag& judged, const JudgedFlag& other);
// What the list of alerts names of those; the others are shown inside a graver one.
[[nodiscard]] std::vector<const JudgedFlag*> listed_alerts(const std::vector<JudgedFlag>& flags);
class Spared;
// What of an open clue of this danger may be asked now.
[[nodiscard]] std::vector<Ask> asks_now(const View& view, const Spared& spared, const JudgedFlag& judged, const Clue& clue);
// Those that wait for an answer, in the order they are asked: what something points to first, then class, then time to harm.
[[nodiscard]] std::vector<const JudgedFlag*> asked_flags(const View& view, const std::vector<JudgedFlag>& flags);
[[nodiscard]] std::vector<const JudgedFlag*> asked_flags(const View& view, const std::vector<JudgedFlag>& flags, const Spared& spared);
// The side of the complaint; where none is named, one on which something was found.
[[nodiscard]] bool of_interest(const View& view, model::Side side);
// The alerts alone, for a reply that shows nothing else.
[[nodiscard]] std::vector<Alert> raised_alerts(const View& view, const std::vector<JudgedFlag>& flags, const AlertsAsk& ask);
[[nodiscard]] AlertsJudged judge_alerts(const View& view, const std::vector<JudgedFlag>& flags, const AlertsAsk& ask);

// Whether a yes to this item, given at a kiosk, calls the staff.
[[nodiscard]] bool calls_staff(const reference::Edition& edition, const model::ItemId& item, const model::Value& value);

}  // namespace limbledger::interpret
