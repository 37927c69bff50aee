// Exams for tests of the interpretation, built in a line or two. People and numbers are invented.
#pragma once

#include "core/interpret/assess.hpp"

#include <algorithm>
#include <string>
#include <utility>
#include <vector>

namespace limbledger::interpret_test {

using model::Side;

inline model::PartialDate day(int year, int month, int day_of_month) {
  model::PartialDate date;
  date.year = static_cast<std::int16_t>(year);
  date.month = static_cast<std::uint8_t>(month);
  date.day = static_cast<std::uint8_t>(day_of_month);
  return date;
}

inline model::Instant at_noon(int year, unsigned month, unsigned day_of_month) {
  return {(model::days_from_civil(year, month, day_of_month) * 24 + 12) * 3'600'000};
}

inline model::FindingId id_of(int number) {
  model::FindingId id;
  id.bytes[14] = static_cast<std::uint8_t>(number / 256);
  id.bytes[15] = static_cast<std::uint8_t>(number % 256);
  return id;
}

struct Bench {
  model::Exam exam;
  std::optional<model::Person> person;
  std::vector<model::Exam> earlier;
  const reference::Edition* edition = nullptr;

  explicit Bench(const reference::Edition& facts) : edition(&facts) {
    exam.complaint = {"acute_knee"};
    exam.side = Side::left;
    exam.examined_at = at_noon(2026, 11, 24);
    exam.injured_on = day(2026, 11, 23);
    exam.findings.emplace();
    person.emplace();
    person->sex = model::Sex::male;
    person->norm_sex = model::NormSex::male;
    born(1996, 1, 1);
  }

  void born(int year, int month, int day_of_month) {
    person->birth.emplace();
    person->birth->date = day(year, month, day_of_month);
  }
  model::Finding& add(const std::string& item, Side side, model::Value value) {
    model::Finding finding;
    finding.finding = id_of(static_cast<int>(exam.findings->size()) + 1);
    finding.item = {item};
    finding.side = side;
    finding.value = std::move(value);
    exam.findings->push_back(std::move(finding));
    return exam.findings->back();
  }
  model::Finding& answer(const std::string& item, Side side, model::AnswerWord word) { return add(item, side, model::Answer{word}); }
  model::Finding& no(const std::string& item, Side side) { return answer(item, side, model::AnswerWord::no); }
  model::Finding& yes(const std::string& item, Side side) { return answer(item, side, model::AnswerWord::yes); }
  model::Finding& not_done(const std::string& item, Side side, model::WhyNot why) { return add(item, side, model::NotDone{why, std::nullopt}); }
  model::Finding& count(const std::string& item, std::int64_t number) { return add(item, Side::midline, model::CountValue{{number}}); }
  // Tenths of a degree toward the direction the item is named for.
  model::Finding& angle(const std::string& item, Side side, std::int64_t toward_tenths, const std::string& instrument = "goniometer_long") {
    model::Angle angle;
    const bool low_end = item.find("extension") != std::string::npos;
    angle.deg = model::Degrees{low_end ? -toward_tenths : toward_tenths};
    angle.toward = model::Word{low_end ? "extension" : "flexion"};
    angle.toward_deg = model::Degrees{toward_tenths};
    model::Finding& finding = add(item, side, angle);
    if (!instrument.empty()) {
      finding.instrument = model::Word{instrument};
    }
    finding.position = model::Word{"supine"};
    return finding;
  }
  // The eight inputs that make the knee rule negative for an adult, on the left.
  void nothing_found() {
    no("knee.fibular_head_tender", Side::left);
    no("knee.patella_tender", Side::left);
    no("knee.bone_tender_elsewhere", Side::left);
    angle("knee.flexion_active", Side::left, 1200);
    yes("history.steps_at_once", Side::midline);
    count("gait.steps_now", 4);
    add("history.knee_rule_exclusions", Side::midline, model::Choices{{{"none_of_these"}}});
  }

  [[nodiscard]] model::Finding& find(const std::string& item) {
    return *std::find_if(exam.findings->begin(), exam.findings->end(), [&](const auto& f) { return f.item.text == item; });
  }
  void drop(const std::string& item) {
    auto& all = *exam.findings;
    all.erase(std::remove_if(all.begin(), all.end(), [&](const auto& f) { return f.item.text == item; }), all.end());
  }
  [[nodiscard]] interpret::AssessAsk ask() const {
    interpret::AssessAsk ask;
    ask.as_of = day(2026, 11, 24);
    return ask;
  }
  [[nodiscard]] interpret::Assessment assess() const { return interpret::assess(exam, person, earlier, *edition, ask()); }
  [[nodiscard]] interpret::RuleResult rule(Side side = Side::left) const {
    for (const auto& result : assess().rules) {
      if (result.side == side) {
        return result;
      }
    }
    return {};
  }
  [[nodiscard]] const interpret::Statement statement(const std::string& id) const {
    for (const auto& statement : assess().statements) {
      if (statement.statement.text == id) {
        return statement;
      }
    }
    return {};
  }
  [[nodiscard]] interpret::Working explain(const std::string& id) const {
    auto working = interpret::explain(exam, person, earlier, *edition, ask(), {id});
    return working ? *working : interpret::Working{};
  }
};

inline std::string settle_of(const interpret::RuleResult& rule) {
  std::string out;
  for (const auto& settle : rule.settle) {
    out += (out.empty() ? "" : ",") + settle.input.text;
  }
  return out;
}
inline bool flagged(const interpret::RuleResult& rule, const std::string& flag) {
  return std::any_of(rule.flags.begin(), rule.flags.end(), [&](const auto& word) { return word.text == flag; });
}
inline std::string state_of(const interpret::RuleResult& rule, const std::string& input) {
  for (const auto& one : rule.inputs) {
    if (one.input.text == input) {
      return one.state.text;
    }
  }
  return "no such input";
}

}  // namespace limbledger::interpret_test
