#include "core/ledger/fold/fold.hpp"

#include <algorithm>
#include <set>

namespace limbledger::ledger {

namespace {

// By node: of an entry and its repeat, written by a device that was put back, one may be named and the other stand.
[[nodiscard]] std::set<std::size_t> nodes_of(const Graph& graph, std::span<const model::EntryId> entries) {
  std::set<std::size_t> out;
  for (const model::EntryId& entry : entries) {
    if (const auto node = graph.find(entry)) {
      out.insert(*node);
    }
  }
  return out;
}

}  // namespace

std::vector<PutOff> put_offs(std::span<const Opened> operations, std::string_view about, std::span<const model::EntryId> entries,
                             const std::vector<model::PersonId>& persons) {
  std::vector<PutOff> out;
  if (std::none_of(operations.begin(), operations.end(), [](const Opened& one) { return std::holds_alternative<model::PutOffBody>(one.body()); })) {
    return out;
  }
  const Graph graph(operations);
  const std::set<std::size_t> standing = nodes_of(graph, entries);
  std::vector<std::size_t> places;
  for (std::size_t i = 0; i < graph.size(); ++i) {
    const auto* said = std::get_if<model::PutOffBody>(&graph.at(i).body());
    if (said == nullptr || said->about.text != about || said->persons.value_or(std::vector<model::PersonId>{}) != persons) {
      continue;
    }
    PutOff one{graph.at(i).entry(), graph.at(i).operation().by, {graph.at(i).operation().at.wall_ms.steps}, *said};
    if (persons.empty()) {
      const std::set<std::size_t> named = nodes_of(graph, said->entries);
      if (std::none_of(standing.begin(), standing.end(), [&](std::size_t node) { return named.contains(node); })) {
        continue;  // another line, or one that was settled
      }
      one.changed = !std::includes(named.begin(), named.end(), standing.begin(), standing.end());
    } else {
      // Decisions about a pair stand in the clinic's record, not in the person's.
      one.changed = std::any_of(entries.begin(), entries.end(), [&](const model::EntryId& entry) { return std::find(said->entries.begin(), said->entries.end(), entry) == said->entries.end(); });
    }
    out.push_back(std::move(one));
    places.push_back(i);
  }
  for (std::size_t i = 0; i < out.size(); ++i) {
    out[i].again = std::any_of(places.begin(), places.end(), [&](std::size_t later) { return graph.saw(later, places[i]); });
  }
  return out;
}

}  // namespace limbledger::ledger
