#include "core/interpret/step/tried.hpp"

#include <algorithm>
#include <array>
#include <initializer_list>

namespace limbledger::interpret {

namespace {

// Tenths of a degree toward the named direction: rotation lost and free, flexion below 90 and 110 and beyond, extension short and full.
constexpr std::array<std::int64_t, 5> angles_tried{-200, 0, 400, 1000, 1300};

[[nodiscard]] std::vector<model::Value> values_to_try(const model::Item& item) {
  std::vector<model::Value> values;
  switch (item.value) {
    case model::ValueKind::answer:
      values = {model::Answer{model::AnswerWord::yes}, model::Answer{model::AnswerWord::no}};
      break;
    case model::ValueKind::test:
      values = {model::Test{model::TestResult::positive, std::nullopt}, model::Test{model::TestResult::negative, std::nullopt}};
      break;
    case model::ValueKind::count:
      for (const std::int64_t count : {0, 1, 4, 7, 40, 120}) {
        values.emplace_back(model::CountValue{{count}});
      }
      break;
    case model::ValueKind::temperature:
      for (const std::int64_t tenths : {368, 382, 390}) {
        model::Temperature temperature;
        temperature.cel = model::Celsius{tenths};
        values.emplace_back(temperature);
      }
      break;
    case model::ValueKind::choice:
      for (const model::ChoiceId& choice : item.choices.value_or(std::vector<model::ChoiceId>{})) {
        values.emplace_back(model::Choice{choice});
      }
      break;
    case model::ValueKind::choices:
      for (const model::ChoiceId& choice : item.choices.value_or(std::vector<model::ChoiceId>{})) {
        values.emplace_back(model::Choices{{choice}});
      }
      break;
    case model::ValueKind::grade:
      for (const char* grade : {"0", "1", "2", "2+", "3", "3+"}) {
        values.emplace_back(model::Grade{item.scale.value_or(model::ScaleId{}), {grade}, std::nullopt, std::nullopt, std::nullopt});
      }
      break;
    case model::ValueKind::angle:
      for (const std::int64_t toward : angles_tried) {
        model::Angle angle;
        angle.toward = item.toward;
        angle.toward_deg = model::Degrees{toward};
        angle.deg = model::Degrees{item.end == model::AxisEnd::low ? -toward : toward};
        values.emplace_back(angle);
      }
      break;
    default:
      break;
  }
  return values;
}

}  // namespace

std::vector<model::Finding> answers_to_try(const model::Item& item, model::Side side) {
  std::vector<model::Value> values = values_to_try(item);
  std::vector<model::Finding> findings;
  findings.reserve(values.size());
  for (model::Value& value : values) {
    model::Finding finding;
    finding.item = item.item;
    finding.side = side;
    finding.value = std::move(value);
    if (item.value == model::ValueKind::angle && item.instruments && !item.instruments->empty()) {
      finding.instrument = item.instruments->front();
    }
    findings.push_back(std::move(finding));
  }
  return findings;
}

}  // namespace limbledger::interpret
