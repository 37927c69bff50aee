#include "core/ledger/fold/settling.hpp"
#include "core/ledger/keys/sign.hpp"
#include "core/wire/write.hpp"

#include <algorithm>
#include <set>

namespace limbledger::ledger {

namespace {

// One member of a record that is edited member by member: an entry's value stands until another entry that names it in
// `replaces` gives the same member. What two writers changed apart does not meet.
template <class Body>
class Members {
 public:
  Members(const Graph& graph, std::vector<std::size_t> nodes) : graph_(graph), nodes_(std::move(nodes)) {}

  // The values that still stand, in the order of display; the entries that give them are noted.
  template <class T>
  [[nodiscard]] std::vector<T> standing(std::optional<T> Body::*member, std::string_view name, std::vector<model::Conflict>& conflicts) {
    std::vector<std::size_t> heads;
    for (const std::size_t node : nodes_) {
      if (body(node).*member && !superseded(node, member)) {
        heads.push_back(node);
        heads_.insert(graph_.at(node).entry());
      }
    }
    std::vector<T> values;
    std::vector<std::size_t> distinct;
    for (const std::size_t head : heads) {
      const T& value = *(body(head).*member);
      if (std::find(values.begin(), values.end(), value) == values.end()) {
        values.push_back(value);
        distinct.push_back(head);
      }
    }
    if (values.size() > 1) {
      std::sort(distinct.begin(), distinct.end(), [&](std::size_t a, std::size_t b) { return graph_.at(a).entry() < graph_.at(b).entry(); });
      model::Conflict conflict;
      conflict.about.text = std::string(name);
      conflict.values.emplace();
      for (const std::size_t head : distinct) {
        conflict.entries.push_back(graph_.at(head).entry());
        conflict.values->push_back({wire::write(*(body(head).*member))});
      }
      conflicts.push_back(std::move(conflict));
    }
    return values;
  }

  // One value, or none while two stand against each other: no clock chooses.
  template <class T>
  void one(std::optional<T> Body::*member, std::string_view name, std::vector<model::Conflict>& conflicts, std::optional<T>& out) {
    const std::vector<T> values = standing(member, name, conflicts);
    if (values.size() == 1) {
      out = values.front();
    }
  }

  // Every item of every list that stands: a name or a number is never lost, and nothing is to be settled.
  template <class T>
  void all(std::optional<std::vector<T>> Body::*member, std::optional<std::vector<T>>& out) {
    std::vector<model::Conflict> joined;
    for (const std::vector<T>& list : standing(member, "", joined)) {
      if (!out) {
        out.emplace();
      }
      for (const T& item : list) {
        if (std::find(out->begin(), out->end(), item) == out->end()) {
          out->push_back(item);
        }
      }
    }
  }

  // How a person decided, where values of several writers had stood against each other.
  template <class T>
  void settled(std::optional<T> Body::*member, std::string_view name, std::vector<model::Settled>& out) const {
    Values values;
    for (const std::size_t node : nodes_) {
      if (body(node).*member) {
        auto& corrects = values.corrects[node];
        for (const model::EntryId& entry : graph_.at(node).operation().replaces) {
          const auto at = graph_.find(entry);
          if (at && *at != node && std::find(nodes_.begin(), nodes_.end(), *at) != nodes_.end() && body(*at).*member) {
            corrects.push_back(*at);
          }
        }
      }
    }
    values.same = [this, member](std::size_t a, std::size_t b) { return body(a).*member == body(b).*member; };
    const Settling settling(graph_, values);
    for (const auto& [node, corrects] : values.corrects) {
      if (!superseded(node, member)) {
        std::vector<model::Settled> decided = told(graph_, settling.of(node), name, [&](std::size_t one) { return as_raw(body(one).*member); });
        if constexpr (requires { &Body::reason; }) {
          for (model::Settled& one : decided) {
            one.reason = body(*graph_.find(one.entry)).reason;
          }
        }
        out.insert(out.end(), decided.begin(), decided.end());
      }
    }
  }

  [[nodiscard]] std::vector<model::EntryId> heads() const { return {heads_.begin(), heads_.end()}; }

 private:
  [[nodiscard]] const Body& body(std::size_t node) const { return std::get<Body>(graph_.at(node).body()); }

  template <class T>
  [[nodiscard]] bool superseded(std::size_t node, std::optional<T> Body::*member) const {
    return std::any_of(nodes_.begin(), nodes_.end(), [&](std::size_t later) {
      const auto& replaces = graph_.at(later).operation().replaces;
      return body(later).*member && std::any_of(replaces.begin(), replaces.end(), [&](const model::EntryId& entry) {
               return graph_.find(entry) == node && later != node;
             });
    });
  }

  const Graph& graph_;
  std::vector<std::size_t> nodes_;
  std::set<model::EntryId> heads_;
};

}  // namespace

std::optional<PersonFold> fold_person(const model::PersonId& person, std::span<const Opened> operations) {
  const Graph graph(operations);
  PersonFold out;
  std::vector<std::size_t> nodes;
  bool registered = false;
  for (std::size_t i = 0; i < graph.size(); ++i) {
    const Opened& opened = graph.at(i);
    if (std::holds_alternative<model::PersonBody>(opened.body())) {
      nodes.push_back(i);
      registered = registered || opened.operation().op.text == "person";
    } else if (!opened.readable()) {
      ++out.unread;
      out.marks.push_back({opened.entry(), {"newer_edition"}});
    }
  }
  if (!registered) {
    return std::nullopt;
  }
  Members<model::PersonBody> members(graph, nodes);
  out.person.person = person;
  members.all(&model::PersonBody::names, out.person.names);
  members.one(&model::PersonBody::birth, "birth", out.conflicts, out.person.birth);
  std::optional<model::Sex> sex;
  members.one(&model::PersonBody::sex, "sex", out.conflicts, sex);
  out.person.sex = sex.value_or(model::Sex::unknown);
  std::optional<model::NormSex> norm_sex;
  members.one(&model::PersonBody::norm_sex, "norm_sex", out.conflicts, norm_sex);
  out.person.norm_sex = norm_sex.value_or(model::NormSex::unspecified);
  members.one(&model::PersonBody::home, "home", out.conflicts, out.person.home);
  members.all(&model::PersonBody::identifiers, out.person.identifiers);
  members.settled(&model::PersonBody::names, "names", out.settled);
  members.settled(&model::PersonBody::birth, "birth", out.settled);
  members.settled(&model::PersonBody::sex, "sex", out.settled);
  members.settled(&model::PersonBody::norm_sex, "norm_sex", out.settled);
  members.settled(&model::PersonBody::home, "home", out.settled);
  members.settled(&model::PersonBody::identifiers, "identifiers", out.settled);
  out.value_heads = members.heads();
  out.person.revision = graph.heads();
  for (const model::Conflict& conflict : graph.request_conflicts()) {
    out.conflicts.push_back(conflict);
  }
  return out;
}

std::vector<PlaceFold> fold_places(std::span<const Opened> operations) {
  const Graph graph(operations);
  std::map<model::PlaceId, std::vector<std::size_t>> places;
  for (std::size_t i = 0; i < graph.size(); ++i) {
    if (const auto* body = std::get_if<model::PlaceBody>(&graph.at(i).body())) {
      places[body->place].push_back(i);
    }
  }
  std::vector<PlaceFold> out;
  for (const auto& [id, nodes] : places) {
    PlaceFold fold;
    Members<model::PlaceBody> members(graph, nodes);
    fold.place.place = id;
    members.one(&model::PlaceBody::name, "name", fold.conflicts, fold.place.name);
    members.one(&model::PlaceBody::travel, "travel", fold.conflicts, fold.place.travel);
    members.one(&model::PlaceBody::telephones, "telephones", fold.conflicts, fold.place.telephones);
    members.one(&model::PlaceBody::here, "here", fold.conflicts, fold.place.here);
    members.one(&model::PlaceBody::protocols, "protocols", fold.conflicts, fold.place.protocols);
    members.one(&model::PlaceBody::endemic, "endemic", fold.conflicts, fold.place.endemic);
    members.one(&model::PlaceBody::reviewed, "reviewed", fold.conflicts, fold.place.reviewed);
    fold.value_heads = members.heads();
    fold.place.revision = clinic_revision(graph);
    out.push_back(std::move(fold));
  }
  return out;
}

Hash state_digest(const model::ObjectId& object, std::span<const Opened> operations) {
  const Graph graph(operations);
  std::set<model::EntryId> replaced;
  for (std::size_t i = 0; i < graph.size(); ++i) {
    replaced.insert(graph.at(i).operation().replaces.begin(), graph.at(i).operation().replaces.end());
  }
  std::vector<Hash> standing;
  for (std::size_t i = 0; i < graph.size(); ++i) {
    if (!replaced.contains(graph.at(i).entry())) {
      standing.push_back(graph.at(i).hash());
    }
  }
  std::sort(standing.begin(), standing.end());
  ByteWriter bytes(16 + 32 * standing.size());
  bytes.raw(object.bytes);
  for (const Hash& hash : standing) {
    bytes.raw(hash);
  }
  return hash256(bytes.view());
}

}  // namespace limbledger::ledger
