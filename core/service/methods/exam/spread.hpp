// Readings of one finding that lie further apart than measuring explains are asked back (value.unusual). Of a motion that is the smallest
// change to believe with its instrument (the error rows of the edition, 95 %), and where none was named, or no row speaks of it, what
// readings need to contradict each other (30 degrees, our convention). Of another quantity that is summed by its mean no error is held: the
// largest more than twice the smallest, and more than 10 units over it (our convention). The best or the last of several may well differ.
#pragma once

#include "core/interpret/motion/reading.hpp"
#include "core/reference/edition.hpp"
#include "core/wire/fault.hpp"
#include "core/wire/number.hpp"

#include <algorithm>
#include <optional>
#include <span>
#include <string>
#include <type_traits>
#include <variant>
#include <vector>

namespace limbledger::service {

namespace detail {

constexpr std::int64_t tenths_a_unit = 10;

struct Spread {
  std::int64_t apart = 0;     // tenths of the unit
  std::int64_t believed = 0;  // what measuring itself explains
};

struct SpreadOf {
  const reference::Edition& edition;
  const model::Observation& observation;
  const model::Item& item;

  std::optional<Spread> operator()(const model::Angle& value) const {
    if (!value.trials || value.trials->size() < 2) {
      return std::nullopt;
    }
    const auto [least, most] = std::minmax_element(value.trials->begin(), value.trials->end());
    interpret::Reading reading;
    reading.item = &item;
    if (observation.instrument) {
      reading.instruments.insert(observation.instrument->text);
    }
    const auto precision = interpret::precision_of(edition, {&reading});
    return Spread{most->steps - least->steps, precision ? precision->mdc95 / 100 : interpret::contradicts_without_error};
  }
  template <class V>
  std::optional<Spread> operator()(const V& value) const {
    if constexpr (requires { value.trials; }) {
      if (!value.trials || value.trials->size() < 2 || item.of_trials.value_or(model::OfTrials::mean) != model::OfTrials::mean) {
        return std::nullopt;
      }
      const auto [least, most] = std::minmax_element(value.trials->begin(), value.trials->end());
      const std::int64_t unit = tenths_a_unit / std::decay_t<decltype(*least)>::wire_rule.per_unit;
      return Spread{(most->steps - least->steps) * unit, std::max(least->steps * unit, 10 * tenths_a_unit)};
    }
    return std::nullopt;
  }
};

}  // namespace detail

// Of an observation as it was sent; nothing where they agree, or somebody has confirmed.
[[nodiscard]] inline std::optional<wire::Fault> spread_fault(const reference::Edition& edition, const model::Observation& observation,
                                                             std::span<const std::string> confirmed, const std::string& path) {
  const model::Item* item = edition.item(observation.item);
  if (item == nullptr || std::find(confirmed.begin(), confirmed.end(), "value.unusual") != confirmed.end()) {
    return std::nullopt;
  }
  const auto spread = std::visit(detail::SpreadOf{edition, observation, *item}, observation.value);
  if (!spread || spread->apart <= spread->believed) {
    return std::nullopt;
  }
  const std::string apart = wire::write_number(spread->apart, detail::tenths_a_unit);
  const std::string believed = wire::write_number(spread->believed, detail::tenths_a_unit);
  return wire::Fault("value.unusual", path + "/value/trials", "readings not more than " + believed + " apart", apart).with("apart", apart).with("believed", believed);
}

}  // namespace limbledger::service
