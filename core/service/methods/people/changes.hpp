// What amending a record member by member shares: a value that stands must be named in `replaces` before another takes its
// place, `replaces` names only entries of the record, and an entry with parts from a newer edition is not replaced here.
#pragma once

#include "core/ledger/fold/fold.hpp"
#include "core/service/writing.hpp"
#include "core/wire/type.hpp"
#include "core/wire/write.hpp"

#include <algorithm>
#include <optional>
#include <span>
#include <string>
#include <variant>
#include <vector>

namespace limbledger::service {

// Faults: revision.unknown with the place in `replaces`, format.newer.
[[nodiscard]] inline Result<void> check_replaces(const std::vector<model::EntryId>& replaces, std::span<const ledger::Opened> operations) {
  for (std::size_t i = 0; i < replaces.size(); ++i) {
    const std::string path = "/replaces/" + std::to_string(i);
    const auto found =
        std::find_if(operations.begin(), operations.end(), [&](const ledger::Opened& opened) { return opened.entry() == replaces[i]; });
    if (found == operations.end()) {
      return wire::Fault{"revision.unknown", path, "an entry of this record"};
    }
    if (found->newer_parts()) {
      return wire::Fault{"format.newer", path, "an entry that this edition can write whole", replaces[i].to_text()};
    }
  }
  return {};
}

// A revision may be a line that was put off: who names that as replaced names the values that its writer had been shown, whatever came since.
[[nodiscard]] inline std::vector<model::EntryId> values_named(const model::PersonId& person, const std::vector<model::EntryId>& replaces, std::span<const ledger::Opened> operations) {
  std::vector<model::EntryId> values;
  const auto add = [&values](const model::EntryId& one) {
    if (std::find(values.begin(), values.end(), one) == values.end()) {
      values.push_back(one);
    }
  };
  for (const model::EntryId& one : replaces) {
    const auto named = std::find_if(operations.begin(), operations.end(), [&](const ledger::Opened& opened) { return opened.entry() == one; });
    if (named == operations.end() || !std::holds_alternative<model::PutOffBody>(named->body())) {
      add(one);
      continue;
    }
    const ledger::Graph graph(operations);
    const std::vector<bool> known = graph.closure({&one, 1});
    std::vector<ledger::Opened> shown;
    for (std::size_t i = 0; i < graph.size(); ++i) {
      if (known[i]) {
        shown.push_back(graph.at(i));
      }
    }
    const auto fold = ledger::fold_person(person, shown);
    for (const model::EntryId& head : fold ? fold->value_heads : std::vector<model::EntryId>{}) {
      add(head);
    }
  }
  return values;
}

template <class Body>
[[nodiscard]] bool changes_anything(const Body& body) {
  bool any = false;
  boost::mp11::mp_for_each<boost::describe::describe_members<Body, boost::describe::mod_public>>([&](auto member) {
    const auto& value = body.*member.pointer;
    if constexpr (requires { value.has_value(); }) {
      any = any || value.has_value();
    }
  });
  return any;
}

// Fault finding.stale with both values when a member that stands is given anew and its entry is not in `replaces`. `nodes`
// are the entries of the record in `graph`; `joins` says which members add to each other instead.
template <class Body, class Joins>
[[nodiscard]] Result<void> values_are_named(const ledger::Graph& graph, const std::vector<std::size_t>& nodes, const Body& wanted,
                                            const std::vector<model::EntryId>& replaces, Joins joins) {
  wire::Refusal refusal;
  const auto named = [&](const std::vector<model::EntryId>& entries, std::size_t node) {
    return std::any_of(entries.begin(), entries.end(), [&](const model::EntryId& entry) { return graph.find(entry) == node; });
  };
  boost::mp11::mp_for_each<boost::describe::describe_members<Body, boost::describe::mod_public>>([&](auto member) {
    const auto value_of = [&](const Body& body) -> const auto& { return body.*member.pointer; };
    if constexpr (requires { value_of(wanted).has_value(); }) {
      if (!value_of(wanted).has_value() || joins(member.name)) {
        return;
      }
      for (const std::size_t node : nodes) {
        const auto& held = value_of(std::get<Body>(graph.at(node).body()));
        const bool superseded = std::any_of(nodes.begin(), nodes.end(), [&](std::size_t later) {
          return later != node && value_of(std::get<Body>(graph.at(later).body())).has_value() && named(graph.at(later).operation().replaces, node);
        });
        if (!held.has_value() || superseded || named(replaces, node)) {
          continue;
        }
        refusal.faults.push_back(wire::Fault{"finding.stale", "/changes/" + std::string(member.name), "its entry in replaces: " + graph.at(node).entry().to_text(),
                                             graph.at(node).entry().to_text()});
        if (!refusal.held_json) {
          refusal.held_json = "{" + wire::quoted(member.name) + ":" + wire::write(*held) + "}";
          refusal.sent_json = "{" + wire::quoted(member.name) + ":" + wire::write(*value_of(wanted)) + "}";
        }
      }
    }
  });
  if (refusal.faults.empty()) {
    return {};
  }
  return refusal;
}

}  // namespace limbledger::service
