#include "core/interpret/after/handling.hpp"

#include "core/interpret/after/told_apart.hpp"

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string_view>
#include <variant>
#include <vector>

namespace limbledger::interpret {

std::ptrdiff_t gravity_of(const reference::AlertRow& row, std::string_view what) {
  if (!row.graver) {
    return -1;
  }
  const auto found = std::find_if(row.graver->begin(), row.graver->end(), [&](const model::Word& one) { return one.text == what; });
  return found == row.graver->end() ? -1 : found - row.graver->begin();
}

namespace {

using model::Side;

[[nodiscard]] bool stands_in(const View& view, const JudgedFlag& judged) {
  const Raised raised = judged.flag->judge(Answers(view), judged.side.value_or(Side::midline));
  return raised.applies != Tri::no && raised.clue.is_yes();
}

[[nodiscard]] bool may_stand_inside(const JudgedFlag& judged, const model::AlertHandled& handled) {
  const auto& inside = judged.row->inside;
  return inside && std::find(inside->begin(), inside->end(), handled.alert) != inside->end();
}

// It stands by these findings alone, in this class and in no lighter words: what its writer was shown may have been a mistake that was taken
// back, and what is found later was answered by nobody. A reason to do nothing is one for the sentence that was read; something that was done,
// as a call, holds for whatever else is found, until a graver sentence stands there. What was said of a graver alert answers what stood inside that one.
[[nodiscard]] bool answers_by(const View& shown, const JudgedFlag& judged, const model::AlertHandled& handled) {
  const bool of_outer = handled.alert != judged.row->alert;
  const auto answered = [&](const Raised& then) {
    return !(of_outer && then.tells_of == itself) && then.urgency <= judged.raised.urgency &&
           (then.what == judged.raised.what || (handled.action && gravity_of(*judged.row, judged.raised.what) <= gravity_of(*judged.row, then.what)));
  };
  if (!tells_apart(shown)) {
    const Raised raised = judged.flag->judge(Answers(shown), judged.side.value_or(Side::midline));
    return raised.applies != Tri::no && raised.clue.is_yes() && answered(raised);
  }
  const std::vector<JudgedFlag> flags = judge_flags(shown, [&](const reference::AlertRow& row) { return row.alert == judged.row->alert; });
  return std::any_of(flags.begin(), flags.end(), [&](const JudgedFlag& one) {
    return one.flag == judged.flag && (one.side == judged.side || !one.side) && stands_as_alert(one) && answered(one.raised);
  });
}

// The one number of a value; null where it has none, or several.
[[nodiscard]] std::int64_t* number_in(model::Value& value) {
  const auto steps = [](auto& quantity) { return quantity ? &quantity->steps : nullptr; };
  if (auto* length = std::get_if<model::Length>(&value)) {
    return steps(length->mm);
  }
  if (auto* time = std::get_if<model::Duration>(&value)) {
    return steps(time->s);
  }
  if (auto* pressure = std::get_if<model::Pressure>(&value)) {
    return steps(pressure->mm_hg);
  }
  if (auto* heat = std::get_if<model::Temperature>(&value)) {
    return steps(heat->cel);
  }
  if (auto* mass = std::get_if<model::Mass>(&value)) {
    return steps(mass->kg);
  }
  if (auto* count = std::get_if<model::CountValue>(&value)) {
    return &count->count.steps;
  }
  auto* angle = std::get_if<model::Angle>(&value);
  return angle != nullptr ? steps(angle->toward_deg) : nullptr;
}

// Whether the alert would go if the value went on the way that it went: then it has come nearer to that, and says no worse.
[[nodiscard]] bool goes_further_on(const View& view, const JudgedFlag& judged, const model::Finding& now, model::Value was) {
  model::Finding further = now;
  if (auto* grade = std::get_if<model::Grade>(&further.value)) {
    const auto* before = std::get_if<model::Grade>(&was);
    const model::Scale* scale = before != nullptr && before->scale == grade->scale ? view.edition().scale(grade->scale) : nullptr;
    const auto place = [&](const wire::Name& name) {
      return scale == nullptr ? 0 : std::find_if(scale->grades.begin(), scale->grades.end(), [&](const auto& one) { return one.grade == name; }) - scale->grades.begin();
    };
    if (scale == nullptr || scale->grades.empty() || place(grade->grade) == place(before->grade)) {
      return false;
    }
    grade->grade = place(grade->grade) < place(before->grade) ? scale->grades.front().grade : scale->grades.back().grade;
    return !stands_in(View(view, further), judged);
  }
  std::int64_t* number = number_in(further.value);
  const std::int64_t* before = number_in(was);
  if (number == nullptr || before == nullptr || further.value.index() != was.index() || *number == *before) {
    return false;
  }
  constexpr std::int64_t steps_on = 1024;
  const std::int64_t step = *number - *before;
  for (std::int64_t times = 1; times <= steps_on; times *= 2) {
    *number += step * times;
    if (auto* angle = std::get_if<model::Angle>(&further.value)) {
      angle->deg.reset();
    }
    if (!stands_in(View(view, further), judged)) {
      return true;
    }
  }
  return false;
}

[[nodiscard]] bool says_no_worse(const View& view, const JudgedFlag& judged, const model::MeasuredAgain& again) {
  const auto& all = view.findings();
  const auto at = std::find_if(all.begin(), all.end(), [&](const model::Finding* one) { return one->entry == again.entry; });
  if (at == all.end() || again.was.empty()) {
    return false;
  }
  // Said with each of the values that it had: an alert that went and came again is another one.
  const bool stood = std::all_of(again.was.begin(), again.was.end(), [&](const model::Value& value) {
    model::Finding then = **at;
    then.value = value;
    return stands_in(View(view, then), judged);
  });
  const model::Value& shown = again.was.back();
  if (!stood || shown == (*at)->value) {
    return stood;
  }
  const auto* choices = std::get_if<model::Choices>(&(*at)->value);
  const auto* before = std::get_if<model::Choices>(&shown);
  if (choices != nullptr && before != nullptr) {
    return std::all_of(choices->choices.begin(), choices->choices.end(),
                       [&](const model::ChoiceId& one) { return std::find(before->choices.begin(), before->choices.end(), one) != before->choices.end(); });
  }
  return goes_further_on(view, judged, **at, shown);
}

[[nodiscard]] bool still_answers(const View& view, const JudgedFlag& judged, const model::AlertHandled& handled) {
  if (!handled.unseen || answers_by(View(view, *handled.unseen), judged, handled)) {
    return true;
  }
  std::vector<model::EntryId> news = *handled.unseen;
  for (const model::MeasuredAgain& again : handled.measured_again.value_or(std::vector<model::MeasuredAgain>{})) {
    if (says_no_worse(view, judged, again)) {
      news.erase(std::remove(news.begin(), news.end(), again.entry), news.end());
    }
  }
  return news.size() != handled.unseen->size() && answers_by(View(view, news), judged, handled);
}

[[nodiscard]] bool was_corrected(const model::AlertHandled& handled, std::string_view what) {
  return handled.corrected && std::any_of(handled.corrected->begin(), handled.corrected->end(), [&](const model::Word& one) { return one.text == what; });
}

// Worked out for the judgement, and for nobody else.
void shorten(model::AlertHandled& handled) {
  handled.unseen.reset();
  handled.measured_again.reset();
}

}  // namespace

// An action answers the class it was recorded for and those below it, and what stood inside the alert that it was recorded for. Of what was
// said the last that answers stands first; the rest is kept beside it.
void take_handling(const View& view, const JudgedFlag& judged, bool gone, Alert& alert) {
  const auto& all = view.exam().alerts_handled;
  const bool rests_on_a_leg = judged.side && judged.raised.clue.because.any([](const model::Finding* finding) { return finding->side != Side::midline; });
  std::vector<model::AlertHandled> also;
  for (const model::AlertHandled& handled : all ? *all : std::vector<model::AlertHandled>{}) {
    const bool turned = was_corrected(handled, "exam.sides");
    // What rests on no leg was turned by no exchange, and stands where it was said.
    const bool stayed = turned && !rests_on_a_leg && handled.side;
    const std::optional<Side> said_of = stayed ? std::optional(other_side(*handled.side)) : handled.side;
    // What was said while nobody knew the side was said of either.
    const bool of_outer = handled.alert != alert.alert;
    const bool of_other_side = said_of && said_of != alert.side && (alert.side || !of_outer);
    if (of_other_side || (of_outer && (gone || judged.raised.tells_of == itself || !may_stand_inside(judged, handled)))) {
      continue;
    }
    const bool of_this = !was_corrected(handled, "exam.person") && !(turned && rests_on_a_leg);
    const bool answers = (alert.urgency != Urgency::now || handled.urgent) && (gone || (of_this && still_answers(view, judged, handled)));
    if (of_outer && !answers) {
      continue;
    }
    if (answers || !alert.handled) {
      auto& kept = answers ? alert.handled : alert.handled_before;
      kept = handled;
    }
    also.push_back(handled);
  }
  if (alert.handled) {
    alert.state = AlertState::handled;
    alert.handled_before.reset();
  }
  const auto is_first = [&](const model::AlertHandled& one) { return alert.handled == one || alert.handled_before == one; };
  also.erase(std::remove_if(also.begin(), also.end(), is_first), also.end());
  for (auto* kept : {&alert.handled, &alert.handled_before}) {
    if (*kept) {
      shorten(**kept);
    }
  }
  std::for_each(also.begin(), also.end(), shorten);
  if (!also.empty()) {
    alert.handled_also = std::move(also);
  }
}

void take_handling_inside(const View& view, const JudgedFlag& inner, Alert& alert) {
  const bool hidden = inner.row->protected_.value_or(false);
  if (hidden && alert.audience != Audience::protected_) {
    return;
  }
  Alert alone;
  alone.alert = inner.row->alert;
  alone.side = inner.side;
  alone.urgency = inner.raised.urgency == AlertClass::now ? Urgency::now : Urgency::same_day;
  take_handling(view, inner, false, alone);
  std::vector<model::AlertHandled> also = alone.handled_also.value_or(std::vector<model::AlertHandled>{});
  for (const auto* kept : {&alone.handled_before, &alone.handled}) {
    if (*kept) {
      also.push_back(**kept);
    }
  }
  also.erase(std::remove_if(also.begin(), also.end(), [&](const model::AlertHandled& one) { return one.alert != alone.alert; }), also.end());
  if (!also.empty()) {
    auto& all = alert.handled_also ? *alert.handled_also : alert.handled_also.emplace();
    all.insert(all.end(), also.begin(), also.end());
  }
}

}  // namespace limbledger::interpret
