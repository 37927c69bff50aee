#include "core/ledger/fold/fold.hpp"

#include <algorithm>

namespace limbledger::ledger {

namespace {

// The operation that goes on where another ends.
[[nodiscard]] std::optional<std::size_t> next_of(const Graph& graph, std::size_t node) {
  const model::Operation& before = graph.at(node).operation();
  for (std::size_t i = 0; i < graph.size(); ++i) {
    const model::Operation& operation = graph.at(i).operation();
    const bool follows = operation.request == before.request && operation.part.steps == before.part.steps + 1 && std::holds_alternative<model::ReportBody>(graph.at(i).body());
    if (follows && std::any_of(operation.after.begin(), operation.after.end(), [&](const model::EntryId& entry) { return graph.find(entry) == node; })) {
      return i;
    }
  }
  return std::nullopt;
}

}  // namespace

bool ReportFold::is_among(std::span<const model::EntryId> named) const {
  return std::any_of(named.begin(), named.end(), [&](const model::EntryId& one) { return std::find(entries.begin(), entries.end(), one) != entries.end(); });
}

std::vector<ReportFold> fold_reports(std::span<const Opened> operations) {
  const Graph graph(operations);
  std::vector<ReportFold> out;
  for (std::size_t i = 0; i < graph.size(); ++i) {
    const auto* body = std::get_if<model::ReportBody>(&graph.at(i).body());
    const model::Operation& first = graph.at(i).operation();
    if (body == nullptr || first.part.steps != 1) {
      continue;
    }
    ReportFold one{graph.at(i).entry(), {}, first.by, {first.at.wall_ms.steps}, first.edition, *body, true};
    std::size_t last = i;
    for (std::int64_t part = 2; part <= first.of.steps; ++part) {
      const auto next = next_of(graph, last);
      if (!next) {
        one.whole = false;
        break;
      }
      last = *next;
      const auto& more = std::get<model::ReportBody>(graph.at(last).body()).exams;
      one.said.exams.insert(one.said.exams.end(), more.begin(), more.end());
      one.entry = graph.at(last).entry();
    }
    for (const Opened& opened : operations) {
      if (graph.find(opened.entry()) == last) {
        one.entries.push_back(opened.entry());
      }
    }
    out.push_back(std::move(one));
  }
  std::sort(out.begin(), out.end(), [](const ReportFold& a, const ReportFold& b) { return a.entry < b.entry; });
  return out;
}

}  // namespace limbledger::ledger
