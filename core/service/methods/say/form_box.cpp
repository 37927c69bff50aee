#include "core/service/methods/say/form_box.hpp"

#include "core/report/sheet.hpp"
#include "core/report/text.hpp"

#include <algorithm>
#include <array>
#include <string_view>
#include <vector>

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

// The name of a direction in the words of its joint, or of the direction alone: what a "toward" counts, and what falls short of it.
[[nodiscard]] std::string way_of(const FormStep& step, const Words& words, const char* which) {
  const std::string stem = "msg.paper_" + std::string(which) + ".";
  const std::string region = step.item.text.substr(0, step.item.text.find('.'));
  const std::string of_joint = stem + region + "_" + step.toward->text;
  return html_text(words.say(words.has(of_joint) ? of_joint : stem + step.toward->text)) + " ";
}

[[nodiscard]] std::string angle_box(const FormStep& step, const Words& words) {
  if (step.value == model::ValueKind::arc) {
    std::string out = "<i>" + gap() + "\u2013" + gap() + "\u2013" + gap() + "\u00b0</i> ";
    for (const model::Word& order : step.orders.value_or(std::vector<model::Word>{})) {
      const auto middle = order.text.find("_zero_");
      if (middle != std::string::npos) {
        out += ring(report::word_of(words, "toward", order.text.substr(0, middle)) + "\u20130\u2013" +
                    report::word_of(words, "toward", order.text.substr(middle + std::string_view("_zero_").size())));
      }
    }
    return out;
  }
  std::string out = "<i>" + (step.toward ? way_of(step, words, "way") : std::string()) + gap() + "\u00b0</i> ";
  return step.toward && may_fall_short(step) ? out + "<i>" + way_of(step, words, "short") + gap() + "\u00b0</i>" : out;
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

// A circle takes one mark, a square as many as hold: so the control, not the length of the list, says how many.
[[nodiscard]] std::string choice_box(const FormStep& step, const Words& words, bool sided) {
  if (sided && writes_words(step, words)) {
    return "<u class=\"long\"></u>";
  }
  const std::string mark = step.control == Control::choices ? "\u2610 " : "\u25cb ";
  std::string out;
  for (const FormOption& option : step.choices.value_or(std::vector<FormOption>{})) {
    out += "<i>" + mark + html_text(words.say(option.label.text)) + "</i> ";
  }
  return out;
}

// On paper a yes that one hopes for stands first, and each answer says what it means.
[[nodiscard]] std::string answer_box(const FormStep& step, const model::Item& item, const Words& words) {
  const std::string no = words.say("msg.paper.no");
  const std::string yes = words.say("msg.paper.yes");
  if (!is_good_yes(item)) {
    return ring(no) + ring(yes) + ring("?");
  }
  const auto told = [](const std::string& text) { return "<i class=\"told\">" + html_text(text) + "</i> "; };
  return told(yes + " = " + words.say(step.text.yes->text)) + told(no + " = " + words.say(step.text.no->text)) + ring("?");
}

[[nodiscard]] std::size_t letters_of(const FormStep& step, const Words& words) {
  std::size_t letters = 0;
  for (const FormOption& option : step.choices.value_or(std::vector<FormOption>{})) {
    letters += report::width_of(words.say(option.label.text)) + 3;
  }
  return letters;
}

[[nodiscard]] bool is_choice(const FormStep& step) { return step.control == Control::choice || step.control == Control::choices; }

}  // namespace

bool is_good_yes(const model::Item& item) {
  return item.value == model::ValueKind::answer && item.text.yes && item.text.no && item.ordinary == std::vector{model::Word{"yes"}};
}

bool writes_words(const FormStep& step, const Words& words) { return is_choice(step) && letters_of(step, words) > letters_to_mark; }

bool takes_whole_row(const FormStep& step, const model::Item& item) { return is_choice(step) || step.control == Control::test || is_good_yes(item); }

bool is_measured(const FormStep& step) { return step.control == Control::angle || (step.control == Control::number && step.unit); }

std::string listed_choices(const FormStep& step, const Words& words) {
  if (!writes_words(step, words)) {
    return {};
  }
  std::vector<std::string> listed;
  for (const FormOption& option : step.choices.value_or(std::vector<FormOption>{})) {
    listed.push_back(words.say(option.label.text));
  }
  const std::string how = words.say(step.control == Control::choices ? "msg.paper.write_all" : "msg.paper.write_one");
  return " <small>" + html_text(how + " " + report::joined(listed, " \u00b7 ")) + "</small>";
}

// What no more than denies the pain or sign is left unsaid, unless it warns that something is not excluded.
std::string test_meaning(const FormStep& step, const Words& words) {
  if (step.control != Control::test || !step.text.yes || !step.text.no) {
    return {};
  }
  const std::string no = words.say(step.text.no->text);
  const bool says_more = !no.starts_with("no ") || no.find(';') != std::string::npos || no.find(',') != std::string::npos;
  std::string out = words.say("msg.paper.positive") + " = " + words.say(step.text.yes->text);
  out += says_more ? ". " + words.say("msg.paper.negative") + " = " + no : std::string();
  return " <small>\u00b7 " + html_text(out) + "</small>";
}

std::string form_box(const FormStep& step, const model::Item& item, const Words& words, bool sided) {
  const auto say = [&](const char* name) { return words.say("msg.paper." + std::string(name)); };
  switch (step.control) {
    case Control::angle:
      return angle_box(step, words);
    case Control::number:
      return "<i>" + gap() + (step.unit ? html_text(report::word_of(words, "unit", step.unit->text)) : std::string()) + "</i>" + count_range(step, words);
    case Control::grade:
      return grade_box(step, words);
    case Control::test:
      return ring(say("negative")) + ring(say("positive")) + ring("?") + "<i class=\"apart\">\u2610 " + html_text(say("familiar")) + "</i> ";
    case Control::answer:
      return answer_box(step, item, words);
    case Control::choice:
    case Control::choices:
      return choice_box(step, words, sided);
    case Control::text:
      break;
  }
  return gap();
}

}  // namespace limbledger::service
