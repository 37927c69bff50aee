#include "core/model/check_run.hpp"
#include "core/model/entered.hpp"

#include <algorithm>
#include <array>

namespace limbledger::model {

namespace {

// Each unit in which a quantity may be written, the item's own first; codes as UCUM has them and as people write them.
constexpr std::array length_units{WrittenUnit{"mm", 1, 1}, WrittenUnit{"cm", 10, 1}, WrittenUnit{"m", 1000, 1}};
constexpr std::array time_units{WrittenUnit{"s", 10, 1}, WrittenUnit{"min", 10, 60}};
constexpr std::array force_units{WrittenUnit{"N", 1, 1}};
constexpr std::array pressure_units{WrittenUnit{"mmHg", 1, 1}, WrittenUnit{"mm Hg", 1, 1}, WrittenUnit{"mm[Hg]", 1, 1}};
constexpr std::array temperature_units{WrittenUnit{"Cel", 10, 1}, WrittenUnit{"\u00b0C", 10, 1}, WrittenUnit{"C", 10, 1}};
constexpr std::array mass_units{WrittenUnit{"kg", 10, 1}, WrittenUnit{"g", 1, 1}};

[[nodiscard]] std::string unit_names(std::span<const WrittenUnit> units) {
  std::string out;
  for (const WrittenUnit& unit : units) {
    out += (out.empty() ? "" : ", ") + std::string(unit.text);
  }
  return out;
}

// "did you mean 870 mm?": the same digits in another unit, where that would be possible.
template <class Q>
[[nodiscard]] std::string other_unit(const CheckRun& run, const EnteredNumber& number, std::span<const WrittenUnit> units) {
  for (const WrittenUnit& unit : units) {
    std::int64_t steps = 0;
    if (unit.text != number.unit && wire::read_number(number.token, unit.per_unit, steps).empty() && steps < Q::wire_rule.high &&
        run.possible(tenths_of(steps * unit.times, Q::wire_rule.per_unit))) {
      return "; did you mean " + number.token + " " + std::string(unit.text) + "?";
    }
  }
  return {};
}

template <class Q>
[[nodiscard]] std::optional<Q> read_entered(const CheckRun& run, const std::string& text, std::span<const WrittenUnit> units) {
  const auto number = read_entered_number(text);
  if (!number || number->bound) {
    run.fault("params.wrong_type", "/value/entered", "a number with its unit: " + unit_names(units));
    return std::nullopt;
  }
  const WrittenUnit* unit = find_unit(units, number->unit);
  if (unit == nullptr) {
    run.fault(number->unit.empty() ? "value.unit_missing" : "params.wrong_type", "/value/entered", "a number with its unit: " + unit_names(units));
    return std::nullopt;
  }
  Q quantity;
  wire::TextProblem problem = wire::read_number(number->token, unit->per_unit, quantity.steps);
  if (unit->text == "g" && problem.empty()) {
    // 100 g are one step of a mass; less is not kept.
    problem = quantity.steps % 100 == 0 ? wire::TextProblem{} : wire::TextProblem{"value.step"};
    quantity.steps /= 100;
  }
  if (problem.empty() && (quantity.steps > Q::wire_rule.high || quantity.steps < Q::wire_rule.low)) {
    problem = "value.out_of_range";
  }
  if (!problem.empty()) {
    run.fault(problem, "/value/entered", "steps of " + wire::write_number(1, Q::wire_rule.per_unit) + " " + std::string(units.front().text));
    return std::nullopt;
  }
  quantity.steps *= unit->times;
  if (!run.possible(tenths_of(quantity.steps, Q::wire_rule.per_unit))) {
    run.within_limits(tenths_of(quantity.steps, Q::wire_rule.per_unit), "/value/entered", false, other_unit<Q>(run, *number, units));
    return std::nullopt;
  }
  return quantity;
}

// `member`: the JSON name of the number. `no_signal`: a reading of nothing, which no limit speaks of.
template <class V, class Q>
void check_quantity(const CheckRun& run, V& value, std::optional<Q> V::*number, std::string_view member, std::span<const WrittenUnit> units,
                    bool no_signal = false) {
  const std::size_t before = run.faults.size();
  if (!(value.*number) && !value.entered && !value.trials) {
    if (!no_signal) {
      run.fault("value.all_or_one", "/value", "exactly one of " + std::string(member) + ", entered, trials");
    }
    return;
  }
  const auto summed = check_trials(run, value.trials, value.of_trials);
  std::string where = "/value/" + std::string(member);
  std::optional<Q> read;
  if (value.entered) {
    read = read_entered<Q>(run, value.entered->text, units);
  }
  if (run.faults.size() != before) {
    return;
  }
  if (!(value.*number)) {
    where = read ? "/value/entered" : "/value/trials";
    value.*number = read ? read : summed;
  } else if (read && !(*read == *(value.*number))) {
    run.fault("value.disagrees", where, read->to_text(), (value.*number)->to_text());
    return;
  }
  if (summed && !(*summed == *(value.*number))) {
    run.fault("value.disagrees", where, summed->to_text(), (value.*number)->to_text());
    return;
  }
  if (!no_signal) {
    run.within_limits(tenths_of((value.*number)->steps, Q::wire_rule.per_unit), where);
  }
}

}  // namespace

void check_length(const CheckRun& run, Length& value) { check_quantity(run, value, &Length::mm, "mm", length_units); }
void check_time(const CheckRun& run, Duration& value) { check_quantity(run, value, &Duration::s, "s", time_units); }
void check_force(const CheckRun& run, Force& value) { check_quantity(run, value, &Force::n, "n", force_units); }
void check_temperature(const CheckRun& run, Temperature& value) { check_quantity(run, value, &Temperature::cel, "cel", temperature_units); }
void check_mass(const CheckRun& run, Mass& value) { check_quantity(run, value, &Mass::kg, "kg", mass_units); }

void check_pressure(const CheckRun& run, Pressure& value) {
  const std::size_t before = run.faults.size();
  check_quantity(run, value, &Pressure::mm_hg, "mm_hg", pressure_units, value.signal.has_value());
  if (run.faults.size() == before && value.signal && value.mm_hg && value.mm_hg->steps != 0) {
    run.fault("value.disagrees", "/value/signal", "0 where the signal is absent", value.mm_hg->to_text());
  }
}

// A test that is negative did not bring the pain on.
void check_test(const CheckRun& run, const Test& value, const std::optional<Pain>& pain) {
  if (value.result != TestResult::negative || run.is_confirmed("finding.contradicts")) {
    return;
  }
  if (value.reproduces) {
    run.fault("finding.contradicts", "/value/reproduces", "no pain reproduced with the result negative");
  }
  if (pain && pain->familiar.value_or(false)) {
    run.fault("finding.contradicts", "/pain/familiar", "no familiar pain with the result negative");
  }
}

void check_grade(const CheckRun& run, const Grade& value, const CatalogueView& catalogue) {
  const Scale* scale = run.item.scale ? catalogue.scale(*run.item.scale) : nullptr;
  if (scale == nullptr || !(value.scale == scale->scale)) {
    run.fault("value.grade", "/value/scale", run.item.scale ? run.item.scale->text : "");
    return;
  }
  const ScaleGrade* found = nullptr;
  std::string known;
  for (const ScaleGrade& grade : scale->grades) {
    known += (known.empty() ? "" : ", ") + grade.grade.text;
    if (grade.grade == value.grade) {
      found = &grade;
    }
  }
  if (found == nullptr) {
    run.fault("value.grade", "/value/grade", known);
    return;
  }
  if (value.shade && !found->shades.value_or(false)) {
    run.fault("value.grade", "/value/shade", "no shade with this grade");
  }
  if (value.mm && !scale->takes_mm.value_or(false)) {
    run.fault("value.grade", "/value/mm", "no measured displacement on this scale");
  } else if (value.mm && scale->mm_most && *scale->mm_most < *value.mm) {
    const std::string most = scale->mm_most->to_text();
    run.faults.push_back(wire::Fault("value.out_of_range", run.path + "/value/mm", "0 to " + most, value.mm->to_text()).with("low", "0").with("high", most));
  } else if (value.mm && ((found->mm_low && *value.mm < *found->mm_low) || (found->mm_high && *found->mm_high < *value.mm)) &&
             !run.is_confirmed("finding.contradicts")) {
    const std::string low = found->mm_low ? found->mm_low->to_text() : "0";
    const std::string band = found->mm_high ? low + " to " + found->mm_high->to_text() : low + " or more";
    run.fault("finding.contradicts", "/value/mm", band + " mm with this grade", value.mm->to_text());
  }
}

namespace {

[[nodiscard]] bool is_choice(const Item& item, const ChoiceId& choice) {
  return item.choices && std::find(item.choices->begin(), item.choices->end(), choice) != item.choices->end();
}

[[nodiscard]] std::string known_choices(const Item& item) {
  std::string out;
  for (const ChoiceId& choice : item.choices.value_or(std::vector<ChoiceId>{})) {
    out += (out.empty() ? "" : ", ") + choice.text;
  }
  return out;
}

}  // namespace

void check_choice(const CheckRun& run, const Choice& value) {
  if (!is_choice(run.item, value.choice)) {
    run.fault("params.unknown_word", "/value/choice", known_choices(run.item));
  }
}

void check_choices(const CheckRun& run, const Choices& value) {
  if (value.choices.empty()) {
    run.fault("value.empty", "/value/choices", known_choices(run.item));
  }
  for (std::size_t i = 0; i < value.choices.size(); ++i) {
    const ChoiceId& choice = value.choices[i];
    const std::string member = "/value/choices/" + std::to_string(i);
    if (!is_choice(run.item, choice)) {
      run.fault("params.unknown_word", member, known_choices(run.item));
    } else if (std::find(value.choices.begin(), value.choices.begin() + static_cast<std::ptrdiff_t>(i), choice) !=
               value.choices.begin() + static_cast<std::ptrdiff_t>(i)) {
      run.fault("value.disagrees", member, "each choice once");
    } else if (choice.text == "none_of_these" && value.choices.size() > 1) {
      run.fault("value.disagrees", member, "none_of_these alone");
    }
  }
}

}  // namespace limbledger::model
