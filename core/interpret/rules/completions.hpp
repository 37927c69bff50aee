// A rule over every completion of what is unknown. Each input has a few classes that the rule tells apart, and a set of the
// classes it may be in (one bit each): one bit is known, several are unknown. If every completion agrees, the outcome
// stands; if not it is undetermined, and an input settles when some completion of the others leaves the outcome to it.
// Source: decision rules page, section 0.
#pragma once

#include "core/interpret/statement.hpp"

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <type_traits>
#include <vector>

namespace limbledger::interpret {

inline constexpr std::size_t classes_max = 4;
using Classes = std::uint16_t;  // bit i: may be in class i

// Result is the outcome, or a rule's own categories; either has a value `undetermined`.
template <std::size_t Count, class Result = Outcome>
struct Completed {
  Result outcome = Result::undetermined;
  std::array<bool, Count> settles{};
  // What an input gives alone, by class; undetermined where the others still matter, nothing where it cannot be.
  std::array<std::array<std::optional<Result>, classes_max>, Count> gives{};
};

// `decide` takes one class for every input and gives a result that is not undetermined.
template <std::size_t Count, class Decide, class Result = std::invoke_result_t<Decide&, const std::array<std::uint8_t, Count>&>>
[[nodiscard]] Completed<Count, Result> complete(const std::array<Classes, Count>& may_be, Decide decide) {
  std::array<std::array<std::uint8_t, classes_max>, Count> choices{};
  std::array<std::size_t, Count> choice_count{};
  std::array<std::size_t, Count> stride{};
  std::size_t total = 1;
  for (std::size_t i = 0; i < Count; ++i) {
    for (std::uint8_t c = 0; c < classes_max; ++c) {
      if ((may_be[i] >> c & 1U) != 0) {
        choices[i][choice_count[i]++] = c;
      }
    }
    stride[i] = total;
    total *= choice_count[i];
  }
  Completed<Count, Result> completed;
  if (total == 0) {
    return completed;
  }
  // Counted through as an odometer is, the first input fastest: the completion `n` has choice `at[i]` of input i.
  std::array<std::size_t, Count> at{};
  const auto next = [&] {
    for (std::size_t i = 0; i < Count && ++at[i] == choice_count[i]; ++i) {
      at[i] = 0;
    }
  };
  std::vector<Result> outcomes(total);
  for (Result& outcome : outcomes) {
    std::array<std::uint8_t, Count> in{};
    for (std::size_t i = 0; i < Count; ++i) {
      in[i] = choices[i][at[i]];
    }
    outcome = decide(in);
    next();
  }
  bool agree = true;
  for (std::size_t n = 0; n < total; ++n) {
    agree = agree && outcomes[n] == outcomes[0];
    for (std::size_t i = 0; i < Count; ++i) {
      completed.settles[i] = completed.settles[i] || outcomes[n - at[i] * stride[i]] != outcomes[n];
      std::optional<Result>& gives = completed.gives[i][choices[i][at[i]]];
      gives = !gives || *gives == outcomes[n] ? outcomes[n] : Result::undetermined;
    }
    next();
  }
  completed.outcome = agree ? outcomes[0] : Result::undetermined;
  return completed;
}

}  // namespace limbledger::interpret
