#include "core/service/methods/say/form_step.hpp"

#include "core/reference/edition.hpp"

#include <algorithm>

namespace limbledger::service {

namespace {

using model::ValueKind;
using model::WhyNot;

[[nodiscard]] Control control_of(ValueKind kind) {
  switch (kind) {
    case ValueKind::angle:
    case ValueKind::arc:
      return Control::angle;
    case ValueKind::grade:
      return Control::grade;
    case ValueKind::test:
      return Control::test;
    case ValueKind::answer:
      return Control::answer;
    case ValueKind::choice:
      return Control::choice;
    case ValueKind::choices:
      return Control::choices;
    case ValueKind::text:
      return Control::text;
    default:
      return Control::number;
  }
}

[[nodiscard]] bool is_asked(const model::Item& item) {
  return item.region.text == "history" || item.region.text == "body" || (item.region.text == "general" && item.value == ValueKind::answer);
}

// Why this may not have been done; the others of the list are recordable all the same.
[[nodiscard]] std::vector<WhyNot> reasons_of(const model::Item& item) {
  if (is_asked(item)) {
    return {WhyNot::declined, WhyNot::cannot_answer, WhyNot::not_reliable, WhyNot::no_time, WhyNot::other};
  }
  std::vector<WhyNot> why{WhyNot::declined, WhyNot::pain};
  const auto also = [&](bool holds, std::initializer_list<WhyNot> reasons) {
    if (holds) {
      why.insert(why.end(), reasons);
    }
  };
  const bool motion = item.value == ValueKind::angle || item.value == ValueKind::arc;
  const bool by_hand = item.value == ValueKind::test || item.value == ValueKind::grade;
  const bool sided = item.sides.size() > 1;
  const auto tools = item.instruments.value_or(std::vector<model::Word>{});
  const bool needs_tool = std::any_of(tools.begin(), tools.end(), [](const model::Word& one) { return one.text != "hand" && one.text != "by_eye"; });
  also(motion || by_hand, {WhyNot::blocked, WhyNot::unable, WhyNot::baseline_unable});
  also(by_hand, {WhyNot::cannot_hold});
  also(sided, {WhyNot::no_limb, WhyNot::covered});
  also(motion, {WhyNot::fused, WhyNot::implant});
  also(item.family.text == "vessel.pulse", {WhyNot::not_palpable});
  also(needs_tool, {WhyNot::no_instrument, WhyNot::beyond_instrument});
  also(item.withheld_by.has_value(), {WhyNot::withheld});
  also(true, {WhyNot::no_time, WhyNot::other});
  return why;
}

[[nodiscard]] std::optional<std::vector<FormOption>> options_of(const model::Item& item, const model::Scale* scale) {
  std::vector<FormOption> options;
  if (scale != nullptr) {
    for (const model::ScaleGrade& grade : scale->grades) {
      options.push_back({grade.grade, std::nullopt, grade.means, grade.shades});
    }
  }
  for (const model::ChoiceId& choice : item.choices.value_or(std::vector<model::ChoiceId>{})) {
    options.push_back({std::nullopt, choice, model::MessageId{"msg.choice." + choice.text}, std::nullopt});
  }
  return options.empty() ? std::nullopt : std::optional(std::move(options));
}

// Both ways to write the three numbers of an arc; nothing for what is no arc.
[[nodiscard]] std::optional<std::vector<model::Word>> orders_of(const reference::Edition& edition, const model::Item& item) {
  const model::Item* low = item.arc ? edition.item(item.arc->low) : nullptr;
  const model::Item* high = item.arc ? edition.item(item.arc->high) : nullptr;
  if (low == nullptr || high == nullptr || !low->toward || !high->toward) {
    return std::nullopt;
  }
  const auto order = [](const model::Word& first, const model::Word& last) { return model::Word{first.text + "_zero_" + last.text}; };
  return std::vector<model::Word>{order(*low->toward, *high->toward), order(*high->toward, *low->toward)};
}

}  // namespace

FormStep form_step(const reference::Edition& edition, const model::Item& item) {
  const model::Scale* scale = item.scale ? edition.scale(*item.scale) : nullptr;
  FormStep step;
  step.item = item.item;
  step.sides = item.sides;
  step.control = control_of(item.value);
  step.value = item.value;
  step.axis = item.axis;
  step.toward = item.toward;
  step.orders = orders_of(edition, item);
  step.label = item.text.short_;
  step.text = item.text;
  step.choices = options_of(item, scale);
  step.scale = item.scale;
  step.takes_mm = scale != nullptr ? scale->takes_mm : std::nullopt;
  step.unit = item.unit;
  step.refuse = item.refuse;
  step.confirm = item.confirm;
  step.positions = item.positions;
  step.instruments = item.instruments;
  step.trials_max = item.trials_max;
  step.end_feels = item.end_feels;
  step.why_not = reasons_of(item);
  step.seconds = item.seconds;
  step.discomfort = item.discomfort;
  step.safety = item.safety;
  step.instead = item.instead;
  return step;
}

}  // namespace limbledger::service
