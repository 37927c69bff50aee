// What was told and found, a line each: "skin.ulcer left yes; gait.steps_now 4; vessel.pulse_dorsalis_pedis both 2". The catalogue says
// what kind of value an item takes; without a side it is the midline. Choices are joined by "+". Why it was not done: "pain", or "not:" and any reason. People and findings are invented.
#pragma once

#include "tests/unit/interpret/alerts/bench.hpp"

#include <sstream>
#include <string>
#include <vector>

namespace limbledger::interpret_test {

inline std::vector<std::string> parts_at(const std::string& text, char at) {
  std::vector<std::string> parts;
  std::istringstream in(text);
  for (std::string part; std::getline(in, part, at);) {
    const auto first = part.find_first_not_of(" \n");
    if (first != std::string::npos) {
      parts.push_back(part.substr(first, part.find_last_not_of(" \n") - first + 1));
    }
  }
  return parts;
}

inline model::Value value_of(const model::Item& item, const std::string& word) {
  const auto whole = [&] { return static_cast<std::int64_t>(std::stoll(word)); };
  switch (item.value) {
    case model::ValueKind::answer:
      return model::Answer{word == "yes" ? model::AnswerWord::yes : (word == "no" ? model::AnswerWord::no : model::AnswerWord::unsure)};
    case model::ValueKind::test:
      return model::Test{word == "positive" ? model::TestResult::positive : model::TestResult::negative, std::nullopt};
    case model::ValueKind::grade:
      return model::Grade{*item.scale, {word}, std::nullopt, std::nullopt, std::nullopt};
    case model::ValueKind::choice:
      return model::Choice{{word}};
    case model::ValueKind::choices: {
      model::Choices several;
      for (const std::string& one : parts_at(word, '+')) {
        several.choices.push_back({one});
      }
      return several;
    }
    case model::ValueKind::count:
      return model::CountValue{{whole()}};
    case model::ValueKind::length: {
      model::Length length;
      length.mm = model::Millimetres{whole() * model::Millimetres::wire_rule.per_unit};
      return length;
    }
    case model::ValueKind::time:  // tenths of a second
      return model::Duration{model::Seconds{whole()}, {}, {}, {}};
    case model::ValueKind::pressure: {
      model::Pressure pressure;
      pressure.mm_hg = model::MillimetresOfMercury{whole()};
      return pressure;
    }
    case model::ValueKind::temperature: {  // tenths
      model::Temperature temperature;
      temperature.cel = model::Celsius{whole()};
      return temperature;
    }
    case model::ValueKind::angle: {  // degrees toward what the item is named for
      model::Angle angle;
      angle.toward = item.toward;
      angle.toward_deg = model::Degrees{whole() * 10};
      angle.deg = model::Degrees{item.end == model::AxisEnd::low ? -whole() * 10 : whole() * 10};
      return angle;
    }
    default:
      return model::Words{{word}};
  }
}

// One line, on one side or on both; what stood there is replaced.
inline void tell_one(Bench& bench, const std::string& line) {
  const std::vector<std::string> words = parts_at(line, ' ');
  REQUIRE_MESSAGE(words.size() >= 2, line);
  const model::Item* item = bench.edition->item(std::string_view(words[0]));
  REQUIRE_MESSAGE(item != nullptr, line);
  const std::string& where = words[1];
  const bool sided = where == "left" || where == "right" || where == "both";
  REQUIRE_MESSAGE(words.size() == (sided ? 3U : 2U), line);
  std::vector<Side> sides{Side::midline};
  if (sided) {
    sides = where == "both" ? std::vector{Side::left, Side::right} : std::vector{where == "left" ? Side::left : Side::right};
  }
  for (const Side side : sides) {
    REQUIRE_MESSAGE(std::find(item->sides.begin(), item->sides.end(), side) != item->sides.end(), line);
    auto& all = *bench.exam.findings;
    all.erase(std::remove_if(all.begin(), all.end(), [&](const auto& held) { return held.item == item->item && held.side == side; }), all.end());
    model::Finding finding;
    static int number = 1000;
    finding.finding = id_of(++number % 60000);
    finding.item = item->item;
    finding.side = side;
    const bool reasoned = words.back().starts_with("not:");
    if (reasoned || words.back() == "pain" || words.back() == "unable" || words.back() == "declined") {
      const std::string reason = reasoned ? words.back().substr(4) : words.back();
      const auto reasons = wire::type_of<model::WhyNot>().words;
      const auto at = std::find(reasons.begin(), reasons.end(), reason);
      REQUIRE_MESSAGE(at != reasons.end(), line);
      finding.value = model::NotDone{static_cast<model::WhyNot>(at - reasons.begin()), std::nullopt};
    } else {
      finding.value = value_of(*item, words.back());
    }
    if (item->value == model::ValueKind::angle) {
      finding.instrument = model::Word{"goniometer_long"};
    }
    all.push_back(std::move(finding));
  }
}

inline void tell(Bench& bench, const std::string& story) {
  for (const std::string& line : parts_at(story, ';')) {
    tell_one(bench, line);
  }
}

// Complaint of the left side; nobody was hurt unless the story says so.
inline Bench visit(const std::string& complaint, int born, const std::string& story = {}) {
  Bench bench(*reference::built_in_edition());
  bench.exam.complaint = {complaint};
  bench.exam.injured_on.reset();
  bench.born(born, 1, 1);
  tell(bench, story);
  return bench;
}

inline std::string line_of(const Bench& bench, const std::string& name) {
  const auto found = alert(bench, name);
  return found ? found->message.text.substr(found->message.text.rfind('.') + 1) : "none";
}
inline std::string referral_of(const Bench& bench, const std::string& name) {
  for (const auto& one : bench.assess().statements) {
    if (one.statement.text.starts_with("referral." + name)) {
      return one.message.text.substr(std::string("msg.referral.").size());
    }
  }
  return "none";
}
inline bool meanwhile_says(const Bench& bench, const std::string& name, const std::string& message) {
  const auto found = alert(bench, name);
  return found && std::find(found->meanwhile.begin(), found->meanwhile.end(), model::MessageId{"msg.meanwhile." + message}) != found->meanwhile.end();
}
inline bool stops(const Bench& bench, const std::string& name, const std::string& item) {
  const auto found = alert(bench, name);
  return found && std::find(found->stop.begin(), found->stop.end(), model::ItemId{item}) != found->stop.end();
}

}  // namespace limbledger::interpret_test
