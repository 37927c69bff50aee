#include "core/interpret/after/open_loops.hpp"

#include <algorithm>
#include <map>
#include <string>

namespace limbledger::interpret {

namespace {

constexpr std::size_t visits_without_impression = 3;

[[nodiscard]] bool is_past(const std::optional<model::PartialDate>& by, const model::PartialDate& today) {
  return by && by->last_day() < today.first_day();  // a month is past when it is over
}

[[nodiscard]] bool is_void(const model::Exam& exam) { return exam.state == model::ExamState::withdrawn; }

[[nodiscard]] bool referral_open(const model::PlanItem& item, const model::PartialDate& today) {
  if (item.kind != model::PlanKind::referral || item.became == model::Became::answered || item.became == model::Became::declined) {
    return false;
  }
  return item.became == model::Became::lost || is_past(item.by, today);
}

[[nodiscard]] bool review_open(const model::PlanItem& item, const model::Exam& exam, std::span<const Visit> visits, const model::PartialDate& today) {
  if (item.kind != model::PlanKind::review || item.became == model::Became::done || item.became == model::Became::declined || !is_past(item.by, today)) {
    return false;
  }
  return std::none_of(visits.begin(), visits.end(), [&](const Visit& other) {
    return exam.exam && other.exam->reviews == exam.exam && !is_void(*other.exam);
  });
}

// Whoever signed has gone home with another plan, so what an addendum decided is asked after from its first day, until somebody says that
// it was done, given, answered or declined; a review may have been before it.
[[nodiscard]] bool added_open(const model::PlanItem& item, const model::Exam& exam, std::span<const Visit> visits, const model::PartialDate& today) {
  const std::vector<model::Addendum> addenda = exam.addenda.value_or(std::vector<model::Addendum>{});
  const bool added = std::any_of(addenda.begin(), addenda.end(), [&](const model::Addendum& one) {
    const std::vector<model::PlanItem> items = one.plan_items.value_or(std::vector<model::PlanItem>{});
    return std::any_of(items.begin(), items.end(), [&](const model::PlanItem& other) { return other.plan_item && other.plan_item == item.plan_item; });
  });
  const bool closed = item.became == model::Became::done || item.became == model::Became::given || item.became == model::Became::answered || item.became == model::Became::declined;
  return added && !closed && !referral_open(item, today) && !review_open(item, exam, visits, today);
}

void add_alerts(const Visit& visit, LoopKind loop, std::vector<OpenLoop>& out) {
  for (const Alert& alert : visit.alerts) {
    const bool back = alert.call_back.value_or(false);
    if (alert.state == AlertState::raised && alert.audience != Audience::protected_ && back == (loop == LoopKind::call_back)) {
      out.push_back({loop, visit.exam->exam, alert.alert, alert.side, std::nullopt, std::nullopt});
    }
  }
}

// Somebody was sent, called or treated, or was not: what became of the person is known once it or what was found later is recorded, a referral
// is answered, or the person was seen again. Who did not arrive is still looked for.
[[nodiscard]] bool is_told_of(const Visit& visit, std::span<const Visit> later) {
  const model::Exam& exam = *visit.exam;
  const std::vector<model::PlanItem> plan = exam.plan.value_or(std::vector<model::PlanItem>{});
  const bool answered = std::any_of(plan.begin(), plan.end(), [](const model::PlanItem& item) { return item.kind == model::PlanKind::referral && item.became == model::Became::answered; });
  const std::vector<model::OutcomeTold> outcomes = exam.outcomes.value_or(std::vector<model::OutcomeTold>{});
  const bool told = !outcomes.empty() && outcomes.back().found.kind != model::LaterKind::not_arrived;
  return answered || told ||
         std::any_of(later.begin(), later.end(), [](const Visit& other) { return !is_void(*other.exam) && !other.is_blank; });
}

void add_untold(const Visit& visit, std::span<const Visit> later, std::vector<OpenLoop>& out) {
  for (const Alert& alert : visit.alerts) {
    const bool answered = alert.urgency == Urgency::now && alert.handled && (alert.handled->action || alert.handled->reason);
    // Whoever was sent is on the way, whatever was corrected since.
    const bool asked = answered && (alert.state == AlertState::handled || (alert.state == AlertState::withdrawn_by_correction && alert.handled->action));
    if (asked && alert.audience != Audience::protected_ && !is_told_of(visit, later)) {
      out.push_back({LoopKind::urgent_without_outcome, visit.exam->exam, alert.alert, alert.side, std::nullopt, std::nullopt});
    }
  }
}

void add_planned(const Visit& visit, std::span<const Visit> visits, const model::PartialDate& today, LoopKind loop, std::vector<OpenLoop>& out) {
  for (const model::PlanItem& item : visit.exam->plan.value_or(std::vector<model::PlanItem>{})) {
    const bool open = loop == LoopKind::referral_past_day ? referral_open(item, today)
                      : loop == LoopKind::review_overdue  ? review_open(item, *visit.exam, visits, today)
                                                          : added_open(item, *visit.exam, visits, today);
    if (open) {
      out.push_back({loop, visit.exam->exam, std::nullopt, item.side, item.plan_item, item.by});
    }
  }
}

}  // namespace

std::vector<OpenLoop> open_loops(std::span<const Visit> visits, const model::PartialDate& today) {
  std::vector<OpenLoop> out;
  std::size_t without = 0;
  const model::Exam* newest = nullptr;
  for (std::size_t i = 0; i < visits.size(); ++i) {
    const Visit& visit = visits[i];
    if (is_void(*visit.exam)) {
      continue;
    }
    add_alerts(visit, LoopKind::alert_without_action, out);
    add_alerts(visit, LoopKind::call_back, out);
    add_untold(visit, visits.subspan(i + 1), out);
    add_planned(visit, visits, today, LoopKind::planned_after_signature, out);
    add_planned(visit, visits, today, LoopKind::referral_past_day, out);
    add_planned(visit, visits, today, LoopKind::review_overdue, out);
    without = visit.exam->impression ? 0 : without + 1;
    newest = visit.exam;
  }
  if (without >= visits_without_impression) {
    out.push_back({LoopKind::third_visit_without_impression, newest->exam, std::nullopt, std::nullopt, std::nullopt, std::nullopt});
  }
  return out;
}

std::vector<DisagreedCount> count_disagreed(std::span<const model::Exam* const> exams, const reference::Edition& edition) {
  std::map<std::string, DisagreedCount> counted;
  for (const model::Exam* exam : exams) {
    for (const model::Disagreed& one : is_void(*exam) ? std::vector<model::Disagreed>{} : exam->disagreed.value_or(std::vector<model::Disagreed>{})) {
      std::string name = one.statement.text;
      for (const std::string_view side : {":left", ":right", ":midline"}) {
        name.resize(name.ends_with(side) ? name.size() - side.size() : name.size());
      }
      const reference::AlertRow* row = edition.alert(name);
      if (row != nullptr && row->protected_.value_or(false)) {
        continue;
      }
      DisagreedCount& here = counted[name];
      here.statement.text = name;
      here.because.push_back(one.because);
      here.count.steps = static_cast<std::int64_t>(here.because.size());
    }
  }
  std::vector<DisagreedCount> out;
  for (auto& [name, one] : counted) {
    out.push_back(std::move(one));
  }
  return out;
}

void mark_call_backs(std::span<const Alert> at_signature, std::vector<Alert>& now) {
  for (Alert& alert : now) {
    const bool known = std::any_of(at_signature.begin(), at_signature.end(), [&](const Alert& one) {
      // One that was for today and is for now is another call.
      return one.alert == alert.alert && one.side == alert.side && one.state != AlertState::withdrawn_by_correction && one.urgency <= alert.urgency;
    });
    if (!known && alert.state != AlertState::withdrawn_by_correction) {
      alert.call_back = true;
    }
  }
}

}  // namespace limbledger::interpret
