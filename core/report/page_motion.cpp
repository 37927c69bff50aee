#include "core/report/page_motion.hpp"

#include "core/interpret/params.hpp"
#include "core/report/text.hpp"

#include <algorithm>
#include <vector>

namespace limbledger::report {

namespace {

constexpr std::int64_t adult_from = 18;
constexpr std::int64_t months_to = 24;
constexpr std::int64_t no_end = 99;  // printed for adults of any age
// 1.96 / 2.772 = 70 / 99 exactly, as in the comparison itself.
constexpr std::int64_t span_times = 70;
constexpr std::int64_t span_over = 99;

[[nodiscard]] std::string param_text(const Args& params, std::string_view name) {
  const auto at = std::find_if(params.begin(), params.end(), [&](const Arg& arg) { return arg.name == name; });
  return at == params.end() ? std::string() : at->text;
}

[[nodiscard]] std::string from_to(const std::string& low, const std::string& high, const Words& words) {
  if (low.empty() || high.empty()) {
    return words.say(low.empty() ? "msg.value.at_most" : "msg.value.at_least", {{"value", low.empty() ? high : low, false, true}});
  }
  return words.say("msg.value.between", {{"low", low, false, true}, {"high", high, false, true}});
}

[[nodiscard]] std::string measured_how(const reference::NormRow& row, const Words& words) {
  const std::string position = row.position ? word_of(words, "position", row.position->text) : words.say("msg.motion.position_not_named");
  return position + ", " + (row.instrument ? word_of(words, "instrument", row.instrument->text) : words.say("msg.motion.instrument_not_named"));
}

}  // namespace

std::string people_of(const reference::NormRow& row, const Words& words) {
  const bool young = row.age_low.steps < adult_from;
  const bool grown = row.age_high.steps >= adult_from;
  const bool sexed = row.sex && *row.sex != model::NormSex::unspecified;
  const bool male = sexed && *row.sex == model::NormSex::male;
  std::string group = young ? (grown ? "people" : "children") : "people";
  if (sexed) {
    group = young ? (grown ? (male ? "boys_and_men" : "girls_and_women") : (male ? "boys" : "girls")) : (male ? "men" : "women");
  }
  // Infants are counted in months; "18 and above" is printed without an end.
  const bool months = row.months_high() < months_to || (row.age_months_high && row.age_months_low);
  const std::string name = months ? (row.months_low() == row.months_high() ? "msg.group_at_months" : "msg.group_months")
                                  : (row.age_high.steps >= no_end ? "msg.group_from" : (row.age_low == row.age_high ? "msg.group_at" : "msg.group"));
  return words.say(name, {{"group", group, false, true},
                          {"low", wire::write_number(months ? row.months_low() : row.age_low.steps, 1), true},
                          {"high", wire::write_number(months ? row.months_high() : row.age_high.steps, 1), true}});
}

std::string compared_with(const reference::NormRow& row, const Words& words) {
  std::vector<std::string> parts{row.source.text, people_of(row, words)};
  if (row.mode != reference::Mode::unspecified) {
    parts.push_back(enum_word(words, "mode", row.mode));
  }
  parts.push_back(measured_how(row, words));
  return joined(parts, ", ");
}

std::string figures_of(const reference::NormRow& row, const Words& words) { return row.source.text + ", " + measured_how(row, words); }

std::string toward_words(const std::string& number, const Args& params, const Words& words) {
  if (number.empty() || param_text(params, "toward") != "extension") {
    return number;
  }
  if (number == "0") {
    return words.say("msg.value.straight_word");
  }
  const bool is_short = number.front() == '-';
  return words.say(is_short ? "msg.value.short_of_straight" : "msg.value.beyond_straight", {{"value", is_short ? number.substr(1) : number, true}});
}

std::string interval_of(const Args& params, const Words& words) {
  const std::string low = param_text(params, "low");
  const std::string high = param_text(params, "high");
  return low.empty() && high.empty() ? std::string() : from_to(toward_words(low, params, words), toward_words(high, params, words), words);
}

std::string span_of(const interpret::Statement& statement, const Args& params, const Words& words, const reference::Edition& edition) {
  std::string number = param_text(params, "deg");
  number = number.empty() ? param_text(params, "toward_deg") : number;
  std::int64_t reading = 0;
  if (number.empty() || !wire::read_number(number, 1000, reading).empty()) {
    return {};
  }
  std::int64_t mdc95 = 0;
  for (const reference::ErrorRow& row : edition.errors()) {
    if (row.mdc95 && std::find(statement.rows.begin(), statement.rows.end(), row.row) != statement.rows.end()) {
      mdc95 = std::max(mdc95, row.mdc95->steps);
    }
  }
  if (mdc95 == 0) {
    return {};
  }
  const std::int64_t width = wire::round_divide(mdc95 * span_times, span_over);
  return from_to(toward_words(interpret::in_tenths(reading - width), params, words), toward_words(interpret::in_tenths(reading + width), params, words),
                 words);
}

}  // namespace limbledger::report
