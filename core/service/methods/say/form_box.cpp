#include "core/service/methods/say/form_box.hpp"

#include "core/report/sheet.hpp"
#include "core/report/text.hpp"

#include <algorithm>

namespace limbledger::service {

namespace {

using report::html_text;
using report::Words;

[[nodiscard]] std::string ring(const std::string& text) { return "<i>" + html_text(text) + "</i> "; }
[[nodiscard]] std::string gap() { return "<u></u>"; }

// Whether a reading short of zero is to be expected, counted in the direction that the item is named for.
[[nodiscard]] bool may_fall_short(const FormStep& step) {
  const auto limits = step.confirm ? step.confirm : step.refuse;
  if (!limits || limits->size() != 2 || !step.axis || !step.toward) {
    return true;
  }
  return *step.axis == *step.toward ? limits->front().steps < 0 : limits->back().steps > 0;
}

[[nodiscard]] std::string angle_box(const FormStep& step, const Words& words) {
  if (step.value == model::ValueKind::arc) {
    return "<i>" + gap() + "\u2013" + gap() + "\u2013" + gap() + "\u00b0</i> <small>" + html_text(words.say("msg.paper.arc_order")) + "</small> " + gap();
  }
  const bool short_too = may_fall_short(step);
  const bool from_the_axis = step.axis && step.toward && *step.axis == *step.toward;
  std::string out = "<i>" + (short_too && !from_the_axis ? html_text(words.say("msg.paper.beyond_zero")) + " " : std::string()) + gap() + "\u00b0</i> ";
  if (short_too) {
    out += "<i>" + html_text(words.say("msg.paper.short_of_zero")) + " " + gap() + "\u00b0</i>";
  }
  return out;
}

// A small count is of so many: 2 of 3 touches felt.
[[nodiscard]] std::string count_range(const FormStep& step, const Words& words) {
  constexpr std::int64_t few = 100;  // tenths
  if (step.value != model::ValueKind::count || !step.refuse || step.refuse->size() != 2 || step.refuse->back().steps > few) {
    return {};
  }
  return " <small>" +
         html_text(words.say("msg.paper.range", {{"low", std::to_string(step.refuse->front().steps / 10), true}, {"high", std::to_string(step.refuse->back().steps / 10), true}})) +
         "</small>";
}

[[nodiscard]] std::string grade_box(const FormStep& step, const Words& words) {
  std::string out;
  for (const FormOption& option : step.choices.value_or(std::vector<FormOption>{})) {
    if (option.grade) {
      out += ring(option.grade->text + (option.shades.value_or(false) ? " (\u2212 +)" : ""));
    }
  }
  return step.takes_mm.value_or(false) ? out + "<i>" + gap() + html_text(report::word_of(words, "unit", "mm")) + "</i>" : out;
}

[[nodiscard]] std::string choice_box(const FormStep& step, const Words& words, bool sided) {
  if (sided && writes_number(step)) {
    return gap();
  }
  std::string out;
  int number = 0;
  for (const FormOption& option : step.choices.value_or(std::vector<FormOption>{})) {
    out += sided ? ring(std::to_string(++number)) : "<i>\u2610 " + html_text(words.say(option.label.text)) + "</i> ";
  }
  return out;
}

}  // namespace

bool writes_number(const FormStep& step) {
  const bool chosen = step.control == Control::choice || step.control == Control::choices;
  return chosen && step.choices && step.choices->size() > choices_to_ring;
}

bool is_measured(const FormStep& step) { return step.control == Control::angle || (step.control == Control::number && step.unit); }

std::string numbered_choices(const FormStep& step, const Words& words) {
  if (step.control != Control::choice && step.control != Control::choices) {
    return {};
  }
  std::string out;
  int number = 0;
  for (const FormOption& option : step.choices.value_or(std::vector<FormOption>{})) {
    out += (out.empty() ? "" : ", ") + std::to_string(++number) + "\u00a0" + words.say(option.label.text);
  }
  return "<br><small>" + html_text(out) + "</small>";
}

std::string form_box(const FormStep& step, const Words& words, bool sided) {
  const auto say = [&](const char* name) { return words.say("msg.paper." + std::string(name)); };
  switch (step.control) {
    case Control::angle:
      return angle_box(step, words);
    case Control::number:
      return "<i>" + gap() + (step.unit ? html_text(report::word_of(words, "unit", step.unit->text)) : std::string()) + "</i>" + count_range(step, words);
    case Control::grade:
      return grade_box(step, words);
    case Control::test:
      return ring(say("negative")) + ring(say("positive")) + ring("?") + (sided ? "" : " ") + ring(say("familiar"));
    case Control::answer:
      return ring(say("no")) + ring(say("yes")) + ring("?");
    case Control::choice:
    case Control::choices:
      return choice_box(step, words, sided);
    case Control::text:
      break;
  }
  return gap();
}

}  // namespace limbledger::service
