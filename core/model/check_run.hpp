// What the parts of the check share: the item, where the faults go, limits and readings. Internal to model; the door is
// check.hpp. Limits are in tenths of the item's unit, as in the catalogue.
#pragma once

#include "core/model/check.hpp"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace limbledger::model {

struct CheckRun {
  const Item& item;
  std::span<const std::string> confirmed;
  const std::string& path;  // of the observation
  std::vector<wire::Fault>& faults;

  void fault(std::string_view code, std::string_view member, std::string expected = {}, std::string got = {}) const {
    faults.emplace_back(code, path + std::string(member), std::move(expected), std::move(got));
  }
  [[nodiscard]] bool is_confirmed(std::string_view code) const;
  // Refused outside `refuse`, asked back outside `confirm`. `turned`: the value is toward the low end of the axis, so the limits
  // are shown with their sign changed. False when refused.
  bool within_limits(std::int64_t tenths, std::string_view member, bool turned = false, std::string_view mind = {}) const;
  // Whether the item would refuse it, without saying so.
  [[nodiscard]] bool possible(std::int64_t tenths) const;
};

[[nodiscard]] std::string list_of_words(const std::vector<Word>& words);

// Tenths of the unit from steps of which `per_unit` make one unit (1 or 10).
[[nodiscard]] constexpr std::int64_t tenths_of(std::int64_t steps, std::int32_t per_unit) { return steps * (10 / per_unit); }

// The number that the readings stand for: the mean rounded to the step, the best, or the last. At least one reading.
template <class Q>
[[nodiscard]] Q sum_trials(const std::vector<Q>& trials, OfTrials how, bool smaller_is_better) {
  if (how == OfTrials::last) {
    return trials.back();
  }
  Q result = trials.front();
  std::int64_t total = 0;
  for (const Q& trial : trials) {
    total += trial.steps;
    if (smaller_is_better ? trial < result : result < trial) {
      result = trial;
    }
  }
  if (how == OfTrials::mean) {
    result.steps = wire::round_divide(total, static_cast<std::int64_t>(trials.size()));
  }
  return result;
}

// Number of readings, the way they are summed, each one possible. The summed value, or nothing when there is none or a fault.
template <class Q>
[[nodiscard]] std::optional<Q> check_trials(const CheckRun& run, const std::optional<std::vector<Q>>& trials, std::optional<OfTrials>& of_trials,
                                            bool smaller_is_better = false) {
  const OfTrials how = run.item.of_trials.value_or(OfTrials::mean);
  if (of_trials && (*of_trials != how || !trials)) {
    run.fault("value.disagrees", "/value/of_trials", trials ? "the way this item sums its readings" : "readings in trials");
    return std::nullopt;
  }
  if (!trials) {
    return std::nullopt;
  }
  const std::int64_t most = run.item.trials_max ? run.item.trials_max->steps : 1;
  if (trials->empty() || static_cast<std::int64_t>(trials->size()) > most) {
    run.fault("value.trials", "/value/trials", "1 to " + std::to_string(most) + " readings", std::to_string(trials->size()));
    return std::nullopt;
  }
  bool good = true;
  for (std::size_t i = 0; i < trials->size(); ++i) {
    const std::int64_t tenths = tenths_of((*trials)[i].steps, Q::wire_rule.per_unit);
    if (!run.possible(tenths)) {
      good = run.within_limits(tenths, "/value/trials/" + std::to_string(i)) && good;
    }
  }
  if (!good) {
    return std::nullopt;
  }
  of_trials = how;
  return sum_trials(*trials, how, smaller_is_better);
}

// Each leaves the value as it will be recorded, and says what is wrong with it.
void check_angle(const CheckRun& run, Angle& angle);
void check_length(const CheckRun& run, Length& value);
void check_time(const CheckRun& run, Duration& value);
void check_force(const CheckRun& run, Force& value);
void check_pressure(const CheckRun& run, Pressure& value);
void check_temperature(const CheckRun& run, Temperature& value);
void check_mass(const CheckRun& run, Mass& value);
void check_grade(const CheckRun& run, const Grade& value, const CatalogueView& catalogue);
void check_test(const CheckRun& run, const Test& value, const std::optional<Pain>& pain);
void check_choices(const CheckRun& run, const Choices& value);
void check_choice(const CheckRun& run, const Choice& value);

// A neutral-zero text as the two ends it stands for; nothing when refused.
[[nodiscard]] std::vector<Observation> check_arc(const CheckRun& run, const Observation& observation, const CatalogueView& catalogue);

}  // namespace limbledger::model
