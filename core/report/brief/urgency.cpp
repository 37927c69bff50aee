// How soon the person is seen: the same on note, letter, transfer note and take-home sheet, because all of them ask here.
#include "core/model/exam/day.hpp"
#include "core/report/brief/brief.hpp"
#include "core/report/page_judged.hpp"

#include <algorithm>

namespace limbledger::report {

namespace {

using model::LetterUrgency;

constexpr std::int64_t day_ms = 24 * 3'600'000LL;
constexpr std::int64_t two_weeks_days = 14;

[[nodiscard]] bool is_sooner(LetterUrgency one, LetterUrgency other) { return static_cast<int>(one) < static_cast<int>(other); }

}  // namespace

bool sends_on(const model::PlanItem& item) {
  return (item.kind == model::PlanKind::referral || item.kind == model::PlanKind::film) && item.became != model::Became::declined;
}

namespace {

[[nodiscard]] bool is_transferred(const PageView& view) { return view.exam.transfer && !view.exam.transfer->empty(); }

}  // namespace

bool refers(const PageView& view) {
  const std::vector<model::PlanItem> plan = view.exam.plan.value_or(std::vector<model::PlanItem>{});
  return is_transferred(view) || std::any_of(plan.begin(), plan.end(), [](const model::PlanItem& item) { return sends_on(item) && item.kind == model::PlanKind::referral; });
}

std::string care_goes_on(const PageView& view) {
  const std::vector<model::PlanItem> plan = view.exam.plan.value_or(std::vector<model::PlanItem>{});
  const bool sends = std::any_of(plan.begin(), plan.end(), sends_on);
  if (is_transferred(view)) {
    return view.say("consent.care_and_transfer");
  }
  return view.say(refers(view) ? "consent.care_and_referral" : (sends ? "consent.care_and_film" : "consent.care"));
}

bool was_sent_on(const PageView& view) {
  const std::vector<model::PlanItem> plan = view.exam.plan.value_or(std::vector<model::PlanItem>{});
  return std::any_of(plan.begin(), plan.end(), [](const model::PlanItem& item) {
    const auto& became = item.became;
    return sends_on(item) && (became == model::Became::done || became == model::Became::given || became == model::Became::received ||
                              became == model::Became::seen || became == model::Became::answered);
  });
}

bool alert_in_letter(const PageView& view, const interpret::Alert& alert, bool private_letter) {
  const bool is_private = alert.audience == interpret::Audience::protected_;
  return alert.state != interpret::AlertState::withdrawn_by_correction && is_private == private_letter && (private_letter || !is_hidden(view, alert));
}

LetterUrgency urgency_found(const PageView& view, bool private_letter) {
  LetterUrgency soonest = LetterUrgency::routine;
  for (const interpret::Alert& alert : view.assessment.alerts) {
    const auto here = alert.urgency == interpret::Urgency::now ? LetterUrgency::now : LetterUrgency::same_day;
    soonest = alert_in_letter(view, alert, private_letter) && is_sooner(here, soonest) ? here : soonest;
  }
  for (const interpret::Statement& statement : view.assessment.statements) {
    const std::string& name = statement.statement.text;
    const std::string danger = name.substr(0, name.find(':'));
    if (!private_letter && referral_prompt(danger) && !is_protected_danger(view, danger) && is_sooner(LetterUrgency::two_weeks, soonest)) {
      soonest = LetterUrgency::two_weeks;
    }
  }
  return soonest;
}

bool asks_answer_alone(const PageView& view) {
  const std::vector<model::PlanItem> plan = view.exam.plan.value_or(std::vector<model::PlanItem>{});
  return urgency_found(view, false) == LetterUrgency::routine && std::none_of(plan.begin(), plan.end(), sends_on);
}

HowSoon how_soon(const PageView& view) {
  HowSoon soon;
  if (const LetterUrgency found = urgency_found(view, false); found != LetterUrgency::routine) {
    soon = {found, true, false};
  }
  for (const model::Letter& letter : view.exam.letters.value_or(std::vector<model::Letter>{})) {
    const bool stands = !letter.corrected_by && !letter.protected_.value_or(false);
    if (!stands || !letter.urgency) {
      continue;
    }
    if (!soon.urgency || is_sooner(*letter.urgency, *soon.urgency)) {
      soon = {letter.urgency, false, true};
    }
    soon.written = soon.written || letter.urgency == soon.urgency;
  }
  return soon;
}

namespace {

// None where nobody recorded a day, or no more than its month: there is nothing to count from.
[[nodiscard]] std::optional<std::string> end_of_two_weeks(const PageView& view) {
  const auto day = view.day();
  const bool recorded = day && model::when_done(view.exam).day && day->day != 0;
  return recorded ? std::optional(model::date_of({(day->first_day() + two_weeks_days) * day_ms}, 0).to_text()) : std::nullopt;
}

}  // namespace

std::optional<std::string> due_day(const PageView& view, LetterUrgency urgency) {
  const auto examined = view.day();
  if (urgency == LetterUrgency::routine || !examined || (examined->day == 0 && urgency != LetterUrgency::two_weeks)) {
    return std::nullopt;
  }
  if (urgency != LetterUrgency::two_weeks) {
    return examined->to_text();
  }
  std::optional<std::string> ends = end_of_two_weeks(view);
  if (!ends) {
    return std::nullopt;
  }
  std::string last = *ends;
  // One day on every page: the plan's own, where that comes before.
  for (const model::PlanItem& item : view.exam.plan.value_or(std::vector<model::PlanItem>{})) {
    const std::string by = item.by && sends_on(item) ? model::date_of({item.by->last_day() * day_ms}, 0).to_text() : std::string();
    if (!by.empty() && by < last && by >= examined->to_text()) {
      last = by;
    }
  }
  return last;
}

FirstDue first_due(const PageView& view) {
  FirstDue first;
  std::int64_t last = 0;
  for (const model::PlanItem& item : view.exam.plan.value_or(std::vector<model::PlanItem>{})) {
    const bool goes = (sends_on(item) || item.kind == model::PlanKind::review) && !is_over(item) && item.by;
    // A month or a year ends with its last day.
    if (!goes || (!first.day.empty() && item.by->last_day() > last)) {
      continue;
    }
    if (first.day.empty() || item.by->last_day() != last) {
      last = item.by->last_day();
      first = {item.by->to_text(), {}, model::date_of({last * day_ms}, 0).to_text()};
    }
    first.what.push_back(enum_word(view.words, "plan", item.kind) + view.side_after(item.side));
  }
  return first;
}

std::string planned_day_passed(const PageView& view, const FirstDue& first) { return !first.day.empty() && view.has_passed(first.ends) ? view.say("page.planned_day_passed") : std::string(); }

OpenSigns open_danger_signs(const PageView& view) {
  OpenSigns open;
  for (const interpret::Flag& flag : view.assessment.flags) {
    const bool asked = printed_answer(view, flag) == interpret::FlagAnswer::cannot_answer;
    std::vector<std::string>& of = asked ? open.unsettled : open.not_asked;
    const std::string label = flag_label(view, flag.flag.text);
    if (is_open_flag(view, flag) && !is_hidden_flag(view, flag) && std::find(of.begin(), of.end(), label) == of.end()) {
      of.push_back(label);
    }
  }
  return open;
}

std::string beside_open_signs(const PageView& view) {
  const OpenSigns open = open_danger_signs(view);
  const auto count = static_cast<std::int64_t>(open.not_asked.size() + open.unsettled.size());
  return count == 0 ? std::string() : view.say("page.how_soon_beside_open", {{"count", wire::write_number(count, 1), true}});
}

bool ends_after(const model::PartialDate& date, const std::string& day) {
  model::PartialDate limit;
  return !model::PartialDate::from_text(day, limit).empty() || date.last_day() > limit.last_day();
}

namespace {

// With a letter that is being written, and by whom it is asked for.
[[nodiscard]] HowSoon how_soon_with(const PageView& view, std::optional<LetterUrgency> written) {
  HowSoon soon = how_soon(view);
  if (written && (!soon.urgency || is_sooner(*written, *soon.urgency))) {
    soon = {written, false, true};
  }
  soon.written = soon.written || (written && written == soon.urgency);
  return soon;
}

}  // namespace

std::string later_than(const PageView& view, const model::PlanItem& item, std::optional<LetterUrgency> written) {
  if (!is_too_late(view, item, written)) {
    return {};
  }
  const HowSoon soon = how_soon_with(view, written);
  const std::string_view than = soon.found && soon.written ? "plan.later_both" : (soon.written ? "plan.later_letter" : "plan.later");
  return view.say(than, {{"day", sooner_day(view, written), false, true}});
}

std::string sooner_day(const PageView& view, std::optional<LetterUrgency> written) {
  const HowSoon soon = how_soon_with(view, written);
  return soon.urgency ? due_day(view, *soon.urgency).value_or(std::string()) : std::string();
}

bool is_too_late(const PageView& view, const model::PlanItem& item, std::optional<LetterUrgency> written) {
  const std::string day = sooner_day(view, written);
  return !day.empty() && item.by && sends_on(item) && item.became != model::Became::done && ends_after(*item.by, day);
}

std::string planned_later(const PageView& view, std::optional<LetterUrgency> written) {
  std::vector<std::string> days;
  for (const model::PlanItem& item : view.exam.plan.value_or(std::vector<model::PlanItem>{})) {
    if (is_too_late(view, item, written)) {
      days.push_back(enum_word(view.words, "plan", item.kind) + view.side_after(item.side) + ", " + view.say("plan.by", {{"date", item.by->to_text(), false, true}}));
    }
  }
  return days.empty() ? std::string() : view.say("page.how_soon_later", {{"day", sooner_day(view, written), false, true}, {"days", joined(days, "; "), false, true}});
}

bool was_handed_over(const PageView& view) {
  const std::vector<model::PlanItem> plan = view.exam.plan.value_or(std::vector<model::PlanItem>{});
  return std::any_of(plan.begin(), plan.end(), [](const model::PlanItem& item) {
    const auto& became = item.became;
    return item.kind == model::PlanKind::referral && (became == model::Became::received || became == model::Became::seen || became == model::Became::answered);
  });
}

std::string urgency_with_day(const PageView& view, LetterUrgency urgency) {
  const std::string word = enum_word(view.words, "letter_urgency", urgency);
  const std::optional<std::string> day = due_day(view, urgency);
  if (!day || view.has_passed(*day)) {
    return word;
  }
  const bool two_weeks = urgency == LetterUrgency::two_weeks;
  // A day of the plan before the two weeks end leads: beside "two weeks" one of the two would be passed over.
  if (const std::optional<std::string> ends = two_weeks ? end_of_two_weeks(view) : std::nullopt; ends && *day < *ends) {
    return view.say("page.urgency_by_plan", {{"day", *day, false, true}});
  }
  return view.say(two_weeks ? "page.urgency_by" : "page.urgency_on", {{"urgency", word, false, true}, {"day", *day, false, true}});
}

std::string passed_text(const PageView& view, LetterUrgency urgency) {
  const std::optional<std::string> day = due_day(view, urgency);
  if (!day || !view.has_passed(*day)) {
    return {};
  }
  const std::string_view passed = was_sent_on(view) ? "page.due_passed_done" : (urgency == LetterUrgency::two_weeks ? "page.due_passed_by" : "page.due_passed");
  return view.say(passed, {{"day", *day, false, true}});
}

}  // namespace limbledger::report
