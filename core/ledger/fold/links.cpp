#include "core/ledger/fold/links.hpp"

#include <algorithm>

namespace limbledger::ledger {

namespace {

[[nodiscard]] Decided decided_by(const Opened& opened) {
  const auto& body = std::get<model::LinkBody>(opened.body());
  return {opened.entry(), body.same, body.reason, body.shown_under, opened.operation().by, {opened.operation().at.wall_ms.steps}};
}

[[nodiscard]] PairFold fold_pair(const Graph& graph, const std::vector<std::size_t>& nodes) {
  PairFold out;
  const auto& persons = std::get<model::LinkBody>(graph.at(nodes.front()).body()).persons;
  out.persons = std::minmax(persons[0], persons[1]);
  for (const std::size_t node : nodes) {
    out.history.push_back(decided_by(graph.at(node)));
    const bool replaced = std::any_of(nodes.begin(), nodes.end(), [&](std::size_t later) {
      const auto& replaces = graph.at(later).operation().replaces;
      return later != node && std::any_of(replaces.begin(), replaces.end(), [&](const model::EntryId& entry) { return graph.find(entry) == node; });
    });
    if (!replaced) {
      out.heads.push_back(out.history.back());
    }
  }
  std::sort(out.heads.begin(), out.heads.end(), [](const Decided& a, const Decided& b) { return a.entry < b.entry; });
  out.in_conflict = std::any_of(out.heads.begin(), out.heads.end(), [&](const Decided& one) { return one.same != out.heads.front().same; });
  if (!out.in_conflict && !out.heads.empty() && out.heads.front().same != model::SamePerson::undo) {
    out.same = out.heads.front().same;
  }
  return out;
}

// Everybody who is reached by a yes; a walk of our own stack, since chains of records may be long and may close.
[[nodiscard]] std::set<model::PersonId> reached_from(const model::PersonId& start, const std::map<model::PersonId, std::set<model::PersonId>>& joined) {
  std::set<model::PersonId> seen{start};
  std::vector<model::PersonId> waiting{start};
  while (!waiting.empty()) {
    const model::PersonId person = waiting.back();
    waiting.pop_back();
    if (const auto found = joined.find(person); found != joined.end()) {
      for (const model::PersonId& other : found->second) {
        if (seen.insert(other).second) {
          waiting.push_back(other);
        }
      }
    }
  }
  return seen;
}

void make_groups(LinkFold& fold) {
  std::map<model::PersonId, std::set<model::PersonId>> joined;
  for (const auto& [persons, pair] : fold.pairs) {
    if (pair.same == model::SamePerson::yes) {
      joined[persons.first].insert(persons.second);
      joined[persons.second].insert(persons.first);
    }
  }
  std::set<model::PersonId> done;
  for (const auto& [person, others] : joined) {
    if (done.contains(person)) {
      continue;
    }
    const std::set<model::PersonId> group = reached_from(person, joined);
    done.insert(group.begin(), group.end());
    bool contradicted = false;
    std::set<model::PersonId> chosen;
    for (const auto& [persons, pair] : fold.pairs) {
      const bool inside = group.contains(persons.first) && group.contains(persons.second);
      contradicted = contradicted || (inside && (pair.same == model::SamePerson::no || pair.in_conflict));
      for (const Decided& one : inside && pair.same ? pair.heads : std::vector<Decided>{}) {
        if (one.shown_under && group.contains(*one.shown_under)) {
          chosen.insert(*one.shown_under);
        }
      }
    }
    if (contradicted) {
      for (auto& [persons, pair] : fold.pairs) {
        pair.contradicted = pair.contradicted || (pair.same == model::SamePerson::yes && group.contains(persons.first));
      }
      continue;
    }
    const model::PersonId under = chosen.empty() ? *group.begin() : *chosen.begin();
    for (const model::PersonId& one : group) {
      fold.groups[one] = group;
      fold.shown_under[one] = under;
    }
  }
}

}  // namespace

std::set<model::PersonId> LinkFold::group_of(const model::PersonId& person) const {
  const auto found = groups.find(person);
  return found == groups.end() ? std::set<model::PersonId>{person} : found->second;
}

LinkFold fold_links(std::span<const Opened> clinic_operations, const ExaminerKeys& keys, const model::ClinicId& clinic) {
  const Graph graph(clinic_operations);
  LinkFold out;
  std::map<PersonPair, std::vector<std::size_t>> of_pair;
  for (std::size_t i = 0; i < graph.size(); ++i) {
    const Opened& opened = graph.at(i);
    const auto* body = std::get_if<model::LinkBody>(&opened.body());
    if (body == nullptr) {
      continue;
    }
    if (body->persons.size() != 2 || body->persons[0] == body->persons[1]) {
      out.marks.push_back({opened.entry(), {"void_pair"}});
    } else if (!signed_by_examiner(opened, clinic_operations, keys, clinic)) {
      const bool waits = !seen_entries(clinic_operations, opened.operation().after).has_value();
      out.marks.push_back({opened.entry(), {waits ? "signature_waits" : "signature_bad"}});
    } else {
      of_pair[std::minmax(body->persons[0], body->persons[1])].push_back(i);
    }
  }
  for (const auto& [persons, nodes] : of_pair) {
    out.pairs.emplace(persons, fold_pair(graph, nodes));
  }
  make_groups(out);
  return out;
}

}  // namespace limbledger::ledger
