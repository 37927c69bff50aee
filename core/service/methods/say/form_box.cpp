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

[[nodiscard]] std::string toward_word(const Words& words, const FormStep& step) {
  return step.toward ? report::word_of(words, "toward", step.toward->text) : std::string();
}

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
    return "<i>" + gap() + "\u2013" + gap() + "\u2013" + gap() + "\u00b0</i> <small>" + html_text(words.say("msg.paper.arc_order")) + "</small>";
  }
  std::string out = "<i>" + gap() + "\u00b0</i> ";
  if (may_fall_short(step)) {
    out += "<i>" + html_text(words.say("msg.paper.short_of_zero")) + " " + gap() + "\u00b0</i>";
  }
  return out;
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
  std::string out;
  int number = 0;
  for (const FormOption& option : step.choices.value_or(std::vector<FormOption>{})) {
    out += sided ? ring(std::to_string(++number)) : "\u2610 " + html_text(words.say(option.label.text)) + " ";
  }
  return out;
}

}  // namespace

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
      return "<small>" + html_text(step.value == model::ValueKind::arc ? std::string() : toward_word(words, step)) + "</small> " + angle_box(step, words);
    case Control::number:
      return "<i>" + gap() + (step.unit ? html_text(report::word_of(words, "unit", step.unit->text)) : std::string()) + "</i>";
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
