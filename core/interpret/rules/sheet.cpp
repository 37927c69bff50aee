#include "core/interpret/rules/sheet.hpp"

#include "core/interpret/body.hpp"
#include "core/wire/number.hpp"

#include <algorithm>
#include <type_traits>
#include <utility>

namespace limbledger::interpret {

using model::Side;

namespace {

constexpr std::size_t sheet_classes_max = 16;
constexpr std::int64_t sheet_without_end = 1'000'000'000;

struct SheetReading {
  std::int64_t steps = 0;
  std::int32_t per_unit = 1;
  std::string_view unit;
  std::optional<model::Bound> bound;
};

template <class Quantity>
[[nodiscard]] std::optional<SheetReading> sheet_reading_of(const std::optional<Quantity>& quantity, std::int32_t per_unit, std::string_view unit) {
  return quantity ? std::optional(SheetReading{quantity->steps, per_unit, unit, {}}) : std::nullopt;
}

[[nodiscard]] std::optional<SheetReading> sheet_angle_of(const model::Angle& angle) {
  if (angle.reads || !(angle.toward_deg || angle.deg)) {
    return std::nullopt;
  }
  return SheetReading{angle.toward_deg ? angle.toward_deg->steps : angle.deg->steps, 10, "deg", angle.bound};
}

// A nought without the word that nothing was heard was not measured.
[[nodiscard]] std::optional<SheetReading> sheet_pressure_of(const model::Pressure& pressure) {
  if (pressure.signal) {
    return SheetReading{0, 1, "mmHg", {}};
  }
  return pressure.mm_hg && pressure.mm_hg->steps > 0 ? sheet_reading_of(pressure.mm_hg, 1, "mmHg") : std::nullopt;
}

[[nodiscard]] std::optional<SheetReading> read_for_sheet(const model::Value& value) {
  return std::visit(
      [](const auto& held) -> std::optional<SheetReading> {
        using Held = std::decay_t<decltype(held)>;
        if constexpr (std::is_same_v<Held, model::Angle>) {
          return sheet_angle_of(held);
        } else if constexpr (std::is_same_v<Held, model::Length>) {
          return sheet_reading_of(held.mm, 1, "mm");
        } else if constexpr (std::is_same_v<Held, model::Duration>) {
          return sheet_reading_of(held.s, 10, "s");
        } else if constexpr (std::is_same_v<Held, model::Pressure>) {
          return sheet_pressure_of(held);
        } else if constexpr (std::is_same_v<Held, model::Temperature>) {
          return sheet_reading_of(held.cel, 10, "Cel");
        } else if constexpr (std::is_same_v<Held, model::CountValue>) {
          return SheetReading{held.count.steps, 1, "", {}};
        } else {
          return std::nullopt;
        }
      },
      value);
}

[[nodiscard]] std::string reading_text(const Between& between, const SheetReading& last) {
  const auto written = [&](std::int64_t steps) { return wire::write_number(steps, last.per_unit); };
  const std::string unit = last.unit.empty() ? "" : " " + std::string(last.unit);
  if (between.high == sheet_without_end) {
    return "at least " + written(between.low) + unit;
  }
  if (between.low == -sheet_without_end) {
    return "at most " + written(between.high) + unit;
  }
  return written(between.low) + (between.low == between.high ? "" : " to " + written(between.high)) + unit;
}

// Of a rule of the whole person, an input of one side says which.
[[nodiscard]] std::string sheet_line(const SheetInput& input, Side of_rule) {
  std::string which;
  for (std::size_t c = 0; c < input.classes.size(); ++c) {
    if ((input.may_be >> c & 1U) != 0) {
      which += (which.empty() ? "" : " or ") + std::string(input.classes[c]);
    }
  }
  const bool open = (input.may_be & (input.may_be - 1U)) != 0;
  const std::string side = of_rule == Side::midline && input.side != Side::midline ? ", " + std::string(side_word(input.side)) : "";
  const std::string said = std::string(input.said) + side + (input.reading.empty() ? "" : " " + input.reading);
  return said + ": " + (open ? "open (" + which + ")" : which);
}

[[nodiscard]] Side sheet_side(const View& view, std::string_view item, Side side) {
  const model::Item* known = view.edition().item(item);
  const bool sided = known == nullptr || std::find(known->sides.begin(), known->sides.end(), side) != known->sides.end();
  return sided ? side : Side::midline;
}

[[nodiscard]] std::optional<model::Word> sheet_word(std::string_view text) {
  return text.empty() ? std::nullopt : std::optional(model::Word{std::string(text)});
}

[[nodiscard]] Settle sheet_settle(const View& view, const SheetInput& input, const std::vector<std::optional<SheetAnswer>>& gives) {
  Settle settle;
  settle.input = {std::string(input.input)};
  if (!input.item.empty()) {
    settle.item = model::ItemId{std::string(input.item)};
    settle.side = sheet_side(view, input.item, input.side);
  }
  for (std::size_t c = 0; c < input.classes.size(); ++c) {
    if (gives[c]) {
      // In a body whose "no" is not believed it settles nothing.
      const bool believed = input.classes[c] != "no" || input.item.empty() || view.bodies().not_reliable(input.item, input.side) == nullptr;
      const bool counts = believed && !(input.in_part && c == sheet_no);
      const SheetAnswer answer = counts ? *gives[c] : SheetAnswer{};
      settle.answers.push_back({{std::string(input.classes[c])}, answer.outcome, sheet_word(answer.band)});
    }
  }
  return settle;
}

void explain_sheet(const RuleSheet& sheet, const RuleResult& result, Working& working) {
  for (const SheetInput& input : sheet.inputs) {
    working.lines.push_back({sheet_line(input, sheet.side)});
    working.inputs.push_back({std::nullopt, model::Word{std::string(input.input)}, model::Word{input.state}, std::nullopt});
  }
  if (result.points) {
    const auto written = [](const RulePoint& point) { return wire::write_number(point.steps, 1); };
    const bool one = result.points->low == result.points->high;
    working.lines.push_back({"points: " + written(result.points->low) + (one ? "" : " to " + written(result.points->high))});
  }
  working.statement = {result.rule.text + ":" + std::string(side_word(result.side))};
  const std::string what = result.band ? "band_" + result.band->text : std::string(wire::type_of<Outcome>().words[static_cast<std::size_t>(result.outcome)]);
  working.message = {"msg." + result.rule.text + "." + what};
  working.formula = {std::string(sheet.formula)};
  working.rows = sheet.rows;
  for (const Settle& settle : result.settle) {
    working.changes_if.push_back({"msg.change." + settle.input.text});
  }
}

}  // namespace

SheetCompleted complete_sheet(std::span<const Classes> may_be, const SheetDecision& decide) {
  const std::size_t count = may_be.size();
  std::vector<std::vector<std::uint8_t>> choices(count);
  std::vector<std::size_t> stride(count);
  std::size_t total = 1;
  for (std::size_t i = 0; i < count; ++i) {
    for (std::uint8_t c = 0; c < sheet_classes_max; ++c) {
      if ((may_be[i] >> c & 1U) != 0) {
        choices[i].push_back(c);
      }
    }
    stride[i] = total;
    total *= choices[i].size();
  }
  SheetCompleted completed;
  completed.settles.resize(count);
  completed.gives.assign(count, std::vector<std::optional<SheetAnswer>>(sheet_classes_max));
  if (total == 0) {
    return completed;
  }
  std::vector<SheetAnswer> answers(total);
  std::vector<std::uint8_t> in(count);
  for (std::size_t n = 0; n < total; ++n) {
    for (std::size_t i = 0; i < count; ++i) {
      in[i] = choices[i][n / stride[i] % choices[i].size()];
    }
    answers[n] = decide(in);
  }
  bool agree = true;
  std::int64_t least = answers[0].points;
  completed.points_most = answers[0].points;
  for (std::size_t n = 0; n < total; ++n) {
    const SheetAnswer& answer = answers[n];
    agree = agree && answer.same_as(answers[0]);
    least = std::min(least, answer.points);
    completed.points_most = std::max(completed.points_most, answer.points);
    for (std::size_t i = 0; i < count; ++i) {
      const std::size_t position = n / stride[i] % choices[i].size();
      completed.settles[i] = completed.settles[i] || !answers[n - position * stride[i]].same_as(answer);
      std::optional<SheetAnswer>& gives = completed.gives[i][choices[i][position]];
      gives = !gives || gives->same_as(answer) ? answer : SheetAnswer{};
    }
  }
  completed.answer = agree ? answers[0] : SheetAnswer{};
  completed.answer.points = least;
  return completed;
}

JudgedRule judge_sheet(const View& view, const RuleSheet& sheet, const SheetDecision& decide) {
  std::vector<Classes> may_be;
  std::transform(sheet.inputs.begin(), sheet.inputs.end(), std::back_inserter(may_be), [](const SheetInput& input) { return input.may_be; });
  return judge_completed(view, sheet, complete_sheet(may_be, decide));
}

JudgedRule judge_completed(const View& view, const RuleSheet& sheet, const SheetCompleted& completed) {
  JudgedRule judged;
  RuleResult& result = judged.result;
  result.rule = {std::string(sheet.rule)};
  result.edition = {std::string(sheet.edition)};
  result.side = sheet.side;
  result.outcome = completed.answer.outcome;
  result.gate = sheet_word(completed.answer.gate);
  result.band = sheet_word(completed.answer.band);
  if (sheet.counts && result.outcome != Outcome::not_applicable) {
    result.points = RulePoints{{completed.answer.points}, {completed.points_most}};
  }
  for (std::size_t i = 0; i < sheet.inputs.size(); ++i) {
    const SheetInput& input = sheet.inputs[i];
    result.inputs.push_back({{std::string(input.input)}, {input.state}});
    // What is not there to be examined is not asked for.
    if (completed.settles[i] && input.state != "unable_limb_absent") {
      result.settle.push_back(sheet_settle(view, input, completed.gives[i]));
    }
  }
  result.findings = ids_of(sheet.findings);
  explain_sheet(sheet, result, judged.working);
  return judged;
}

Said says_test(const model::Finding& finding) {
  const auto* test = std::get_if<model::Test>(&finding.value);
  if (test == nullptr || test->result == model::TestResult::equivocal) {
    return {std::nullopt, "unsure"};
  }
  const bool positive = test->result == model::TestResult::positive;
  if (!positive && badly_examined(finding)) {
    return {std::nullopt, "not_reliable"};
  }
  return {static_cast<std::uint8_t>(positive ? 2 : 1), "known"};
}

void add_answer(const View& view, RuleSheet& sheet, std::string_view input, std::string_view said, std::string_view item, Side side, const Says& says) {
  const Told told = tell(view, item, side, says, sheet.findings);
  sheet.inputs.push_back({input, said, {"no", "yes"}, item, side, classes_of(told.value), told.state, {}});
}

MeasuredAt measure_at(const View& view, std::string_view item, Side side, std::vector<const model::Finding*>& findings) {
  MeasuredAt measured;
  std::optional<SheetReading> last;
  bool open = false;
  for (const model::Finding* finding : at_side_or_midline(view, item, side)) {
    findings.push_back(finding);
    const std::string_view why = unsettled_by(*finding);
    const auto* not_done = std::get_if<model::NotDone>(&finding->value);
    const std::optional<SheetReading> read = why.empty() ? read_for_sheet(finding->value) : std::nullopt;
    open = open || (finding->standing && *finding->standing == model::Standing::in_conflict);
    if (!read) {
      const std::string state(!why.empty() ? why : (not_done != nullptr ? state_of(not_done->reason) : std::string_view("unresolved")));
      measured.state = measured.between ? measured.state : state;
      continue;
    }
    Between one{read->steps, read->steps};
    if (read->bound) {
      (*read->bound == model::Bound::at_least ? one.high : one.low) = *read->bound == model::Bound::at_least ? sheet_without_end : -sheet_without_end;
    }
    measured.between = measured.between ? Between{std::min(measured.between->low, one.low), std::max(measured.between->high, one.high)} : one;
    last = read;
    measured.state = measured.between->low == measured.between->high ? "known" : "known_in_part";
  }
  if (open) {
    measured.between.reset();
    measured.state = "in_conflict";
  }
  measured.reading = measured.between && last ? reading_text(*measured.between, *last) : "";
  return measured;
}

void add_number(RuleSheet& sheet, std::string_view input, std::string_view said, std::string_view item, Side side, const MeasuredAt& measured,
                std::span<const std::int64_t> limits, std::vector<std::string_view> classes) {
  Classes may_be = 0;
  for (std::size_t c = 0; c <= limits.size(); ++c) {
    const bool reaches = !measured.between || c == 0 || measured.between->high >= limits[c - 1];
    const bool stays = !measured.between || c == limits.size() || measured.between->low < limits[c];
    may_be = static_cast<Classes>(may_be | (reaches && stays ? 1U << c : 0U));
  }
  const bool open = measured.between && (may_be & (may_be - 1U)) != 0;
  sheet.inputs.push_back({input, said, std::move(classes), item, side, may_be, open && measured.state == "known" ? "known_in_part" : measured.state, measured.reading});
}

MeasuredAt age_at_exam(const View& view) {
  const std::optional<model::AgeInterval> age = view.age_on_exam();
  MeasuredAt measured;
  if (age) {
    measured.between = Between{age->low, age->high};
    measured.state = age->low == age->high ? "known" : "known_in_part";
    measured.reading = std::to_string(age->low) + (age->low == age->high ? "" : " to " + std::to_string(age->high));
  } else if (view.age_lacks() == "day") {
    measured.state = "day_not_known";
  }
  return measured;
}

}  // namespace limbledger::interpret
