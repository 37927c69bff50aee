#include "core/report/page_criteria.hpp"

#include "core/report/text.hpp"

#include <algorithm>
#include <array>

namespace limbledger::report {

namespace {

// How a line of the working begins, and the last part of its message's name. A value stands between beginning and comma.
struct Criterion {
  std::string_view begins;
  std::string_view name;
  bool has_value = false;
};
constexpr std::array<Criterion, 19> criterion_words{{{"age ", "age", true},
                                             {"head of the fibula tender", "fib"},
                                             {"patella tender and no other bone", "pat"},
                                             {"flexion ", "flex", true},
                                             {"movement blocked", "blocked"},
                                             {"four steps neither at once nor now", "steps"},
                                             {"a fall or a blow", "blunt"},
                                             {"fewer than four steps now", "steps_now"},
                                             {"pain in the malleolar zone", "zone"},
                                             {"lateral malleolus tender", "lat"},
                                             {"medial malleolus tender", "med"},
                                             {"pain in the midfoot zone", "zone"},
                                             {"base of the fifth metatarsal tender", "mt5"},
                                             {"navicular tender", "nav"},
                                             {"filament not felt, great toe", "filament_toe"},
                                             {"filament not felt, first", "filament_first"},
                                             {"filament not felt, fifth", "filament_fifth"},
                                             {"tuning fork not felt", "fork"},
                                             {"toes that do not feel a touch ", "touch", true}}};

// 62, "at least 120", "55 to 60".
[[nodiscard]] std::string value_words(std::string_view value, const Words& words) {
  constexpr std::string_view least = "at least ";
  constexpr std::string_view most = "at most ";
  if (value.starts_with(least)) {
    return words.say("msg.value.at_least", {{"value", std::string(value.substr(least.size())), true}});
  }
  if (value.starts_with(most)) {
    return words.say("msg.value.at_most", {{"value", std::string(value.substr(most.size())), true}});
  }
  const auto to = value.find(" to ");
  if (to == std::string_view::npos) {
    return std::string(value);
  }
  const std::string low(value.substr(0, to));
  const std::string high(value.substr(to + 4));
  return words.say("msg.value.between", {{"low", low, true}, {"high", high, true}});
}

[[nodiscard]] std::string criterion_text(const interpret::RuleResult& rule, std::string_view line, const Words& words) {
  for (const Criterion& one : criterion_words) {
    const std::string name = "msg." + rule.rule.text + ".criterion_" + std::string(one.name);
    if (!line.starts_with(one.begins) || !words.has(name)) {
      continue;
    }
    const std::string_view rest = line.substr(one.begins.size());
    const std::string value = one.has_value ? value_words(rest.substr(0, rest.find(", ")), words) : std::string();
    return words.say(name, {{"value", value, true}});
  }
  return std::string(line);
}

// The classes that a line of a sheet leaves possible: "yes", or "open (no or yes)".
[[nodiscard]] std::vector<std::string_view> classes_left(std::string_view line) {
  constexpr std::string_view open = "open (";
  constexpr std::string_view between = " or ";
  std::string_view left = line.substr(line.rfind(": ") + 2);
  std::vector<std::string_view> classes;
  if (left.starts_with(open)) {
    left = left.substr(open.size(), left.size() - open.size() - 1);
  }
  for (auto at = left.find(between); at != std::string_view::npos; at = left.find(between)) {
    classes.push_back(left.substr(0, at));
    left.remove_prefix(at + between.size());
  }
  classes.push_back(left);
  return classes;
}

}  // namespace

std::vector<std::string> criteria_met(const interpret::RuleResult& rule, const interpret::Working& working, const Words& words) {
  constexpr std::string_view is_met = ": met";
  std::vector<std::string> met;
  for (const wire::Name& line : working.lines) {
    // That the injury is recent enough is no criterion; it is a gate.
    if (line.text.ends_with(is_met) && !line.text.starts_with("days ")) {
      met.push_back(criterion_text(rule, std::string_view(line.text).substr(0, line.text.size() - is_met.size()), words));
    }
  }
  return met;
}

std::string points_counted(const interpret::RuleResult& rule, const interpret::Working& working, const Words& words) {
  const std::string name = "msg." + rule.rule.text + ".counted";
  if (!words.has(name)) {
    return {};
  }
  std::vector<std::string> counted;
  std::vector<std::string> open;
  std::string less;
  // A sheet has one line for each input, in their order.
  for (std::size_t i = 0; i < std::min(rule.inputs.size(), working.lines.size()); ++i) {
    const std::string& input = rule.inputs[i].input.text;
    const std::string of_input = "msg." + rule.rule.text + ".counts_" + input;
    const bool takes = input == "other_cause";
    if (!takes && !words.has(of_input)) {
      continue;  // age and pregnancy say whom it was made for
    }
    const std::vector<std::string_view> classes = classes_left(working.lines[i].text);
    const auto counts = std::count_if(classes.begin(), classes.end(), [](std::string_view one) { return one != "no" && one != "under 30 mm"; });
    if (counts == 0) {
      continue;
    }
    const bool sure = counts == static_cast<std::ptrdiff_t>(classes.size());
    if (takes) {
      less = words.say(name + (sure ? "_less" : "_open_less"));
    } else {
      (sure ? counted : open).push_back(words.say(of_input));
    }
  }
  std::vector<std::string> parts;
  parts.push_back(counted.empty() ? words.say(name + "_nothing") : words.say(name, {{"counted", joined(counted, "; "), false, true}}));
  parts.push_back(less);
  parts.push_back(open.empty() ? std::string() : words.say(name + "_open", {{"open", joined(open, "; "), false, true}}));
  return joined(parts, "; ");
}

std::string input_text(const Words& words, const interpret::RuleResult& rule, std::string_view input) {
  const std::string own = "msg." + rule.rule.text + ".input_" + std::string(input);
  return words.say(words.has(own) ? own : "msg.change." + std::string(input));
}

std::string rule_word(const Words& words, const interpret::RuleResult& rule, std::string_view kind, std::string_view word) {
  const std::string own = "msg." + rule.rule.text + "." + std::string(kind) + "_" + std::string(word);
  return words.has(own) ? words.say(own) : word_of(words, "rule." + std::string(kind), word);
}

std::string if_text(const Words& words, std::string_view answer) {
  std::string slug(answer);
  std::replace(slug.begin(), slug.end(), ' ', '_');
  return word_of(words, "if", slug);
}

}  // namespace limbledger::report
