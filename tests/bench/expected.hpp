// An exam of both limbs with as many findings as are wanted, everything as the catalogue says that it is expected. Invented.
#pragma once

#include "core/model/exam/exam.hpp"
#include "core/reference/edition.hpp"
#include "core/wire/read.hpp"
#include "tests/bench/bench.hpp"

#include <algorithm>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace limbledger::bench {

[[nodiscard]] inline std::int64_t middle_of(const model::Item& item) {
  const auto& limits = item.confirm ? item.confirm : item.refuse;
  return limits && limits->size() == 2 ? ((*limits)[0].steps + (*limits)[1].steps) / 2 : 0;  // tenths of the unit
}

// Grades as the catalogue has them for a sound leg, or each the first of its scale: no power and no pulse, which is an emergency.
enum class Graded { as_expected, first };

// A value as expected, by the kind; nothing for what has none (own words, arcs).
[[nodiscard]] inline std::optional<model::Value> expected_value(const model::Item& item, const reference::Edition& edition, Graded graded) {
  const auto first_ordinary = [&](std::string_view or_else) { return item.ordinary && !item.ordinary->empty() ? item.ordinary->front().text : std::string(or_else); };
  switch (item.value) {
    case model::ValueKind::angle: {
      model::Angle angle;
      angle.deg = angle.toward_deg = model::Degrees{middle_of(item)};
      angle.toward = item.toward;
      return angle;
    }
    case model::ValueKind::length:
      return model::Length{model::Millimetres{middle_of(item) / 10}, {}, {}, {}};
    case model::ValueKind::pressure:
      return model::Pressure{model::MillimetresOfMercury{middle_of(item) / 10}, {}, {}, {}, {}};
    case model::ValueKind::time:
      return model::Duration{model::Seconds{middle_of(item)}, {}, {}, {}};
    case model::ValueKind::answer:
      return model::Answer{first_ordinary("no") == "yes" ? model::AnswerWord::yes : model::AnswerWord::no};
    case model::ValueKind::test:
      return model::Test{first_ordinary("negative") == "positive" ? model::TestResult::positive : model::TestResult::negative, {}};
    case model::ValueKind::grade: {
      const model::Scale* scale = item.scale ? edition.scale(*item.scale) : nullptr;
      if (scale == nullptr || scale->grades.empty()) {
        return std::nullopt;
      }
      const bool named = graded == Graded::as_expected && scale->ordinary && !scale->ordinary->empty();
      return model::Grade{*item.scale, named ? scale->ordinary->front() : scale->grades.front().grade, {}, {}, {}};
    }
    case model::ValueKind::choice:
      return item.choices && !item.choices->empty() ? std::optional<model::Value>(model::Choice{{first_ordinary(item.choices->front().text)}}) : std::nullopt;
    default:
      return std::nullopt;
  }
}

// The steps of the whole limb, then what else the catalogue has, on both sides.
[[nodiscard]] inline model::Exam exam_of(std::size_t count, const reference::Edition& edition, Graded graded = Graded::as_expected) {
  model::Exam exam;
  exam.complaint = {"whole_limb"};
  exam.examined_at = need(wire::read_text<model::Instant>("\"2026-11-24T10:15:00.000Z\""), "instant");
  exam.findings.emplace();
  std::vector<const model::Item*> items;
  for (const auto& step : edition.sequence({"whole_limb"})->steps) {
    items.push_back(edition.item(step.item));
  }
  for (const model::Item& item : edition.items()) {
    if (std::find(items.begin(), items.end(), &item) == items.end() && item.region.text != "body") {
      items.push_back(&item);
    }
  }
  for (const model::Item* item : items) {
    for (const model::Side side : item->sides) {
      const auto value = expected_value(*item, edition, graded);
      if (value && exam.findings->size() < count) {
        model::Finding finding;
        finding.item = item->item;
        finding.side = side;
        finding.value = *value;
        finding.finding = model::FindingId{};
        finding.finding->bytes[0] = static_cast<std::uint8_t>(exam.findings->size());
        finding.finding->bytes[1] = static_cast<std::uint8_t>(exam.findings->size() >> 8U);
        if (item->instruments && !item->instruments->empty()) {
          finding.instrument = item->instruments->front();
        }
        if (item->positions && !item->positions->empty()) {
          finding.position = item->positions->front();
        }
        exam.findings->push_back(std::move(finding));
      }
    }
  }
  // As a folded exam brings them: by the letters of the item, then left, midline, right.
  const auto place = [](const model::Finding& one) { return std::pair(std::string_view(one.item.text), one.side == model::Side::left ? 0 : (one.side == model::Side::midline ? 1 : 2)); };
  std::stable_sort(exam.findings->begin(), exam.findings->end(), [&](const model::Finding& a, const model::Finding& b) { return place(a) < place(b); });
  return exam;
}

}  // namespace limbledger::bench
