// Which of several values a person took where they stood against each other, from what each entry corrects and what it says; of one
// value of a record at a time (the findings, the impression, a birth). Of a decision that replaces a decision the values are those of both,
// so that one that is undone still names whose values they were. A function of the set, as every fold. Source: ledger, items 29 and 30.
#pragma once

#include "core/ledger/fold/fold.hpp"
#include "core/wire/write.hpp"

#include <functional>
#include <map>
#include <optional>
#include <set>
#include <string_view>
#include <vector>

namespace limbledger::ledger {

struct Decision {
  std::size_t entry = 0;
  std::optional<std::size_t> taken;  // nothing: a value of its own
  std::vector<std::size_t> among;    // in the order of display
};

struct Values {
  std::map<std::size_t, std::vector<std::size_t>> corrects;  // each entry that gives the value, with those of them that it corrects
  std::function<bool(std::size_t, std::size_t)> same;
  // Of two that say the same, the one that is meant.
  std::function<bool(std::size_t, std::size_t)> names = [](std::size_t, std::size_t) { return true; };
  // Says of itself that it decides (settle).
  std::function<bool(std::size_t)> decides = [](std::size_t) { return false; };
  // A reading of its writer's own, whatever it equals.
  std::function<bool(std::size_t)> own = [](std::size_t) { return false; };
  // What was taken where it is none of those that stood: an earlier one of them, taken again.
  std::function<std::optional<std::size_t>(std::size_t)> earlier = [](std::size_t) { return std::optional<std::size_t>(); };
};

class Settling {
 public:
  Settling(const Graph& graph, Values values);
  // What an entry says by a decision, and the decisions that it undid, newest first; empty where nothing was decided.
  [[nodiscard]] std::vector<Decision> of(std::size_t entry) const;

 private:
  const std::optional<Decision>& judge(std::size_t entry);

  const Graph& graph_;
  Values values_;
  std::map<std::size_t, std::optional<Decision>> judged_;
};

using ValueOf = std::function<std::optional<wire::Raw>(std::size_t)>;
// Decisions of one value as a reader is told them; of each entry who wrote it, and when.
[[nodiscard]] std::vector<model::Settled> told(const Graph& graph, const std::vector<Decision>& decisions, std::string_view about, const ValueOf& value);

template <class T>
[[nodiscard]] std::optional<wire::Raw> as_raw(const T& value) {
  return wire::Raw{wire::write(value)};
}
template <class T>
[[nodiscard]] std::optional<wire::Raw> as_raw(const std::optional<T>& value) {
  if (!value) {
    return std::nullopt;
  }
  return as_raw(*value);
}

}  // namespace limbledger::ledger
