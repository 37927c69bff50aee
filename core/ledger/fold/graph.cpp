#include "core/ledger/fold/fold.hpp"

#include "core/ledger/keys/sign.hpp"
#include "core/wire/write.hpp"

#include <algorithm>

namespace limbledger::ledger {

namespace {

// What makes two operations of one request the same act: everything the person did, nothing the device added.
[[nodiscard]] bool same_act(const model::Operation& a, const model::Operation& b) {
  return a.op == b.op && a.object == b.object && a.replaces == b.replaces && a.by == b.by && a.examined_at == b.examined_at &&
         a.edition == b.edition && a.body == b.body;
}

[[nodiscard]] bool earlier(const Opened& a, const Opened& b) {
  return a.stamp() == b.stamp() ? a.entry() < b.entry() : a.stamp() < b.stamp();
}

}  // namespace

Graph::Graph(std::span<const Opened> operations) {
  fold_repeats(operations);
  see();
}

void Graph::fold_repeats(std::span<const Opened> operations) {
  std::vector<const Opened*> sorted;
  for (const Opened& opened : operations) {
    sorted.push_back(&opened);
  }
  // By entry first: which of two repeats stands for both must not depend on clocks.
  std::sort(sorted.begin(), sorted.end(), [](const Opened* a, const Opened* b) { return a->entry() < b->entry(); });
  sorted.erase(std::unique(sorted.begin(), sorted.end(), [](const Opened* a, const Opened* b) { return a->entry() == b->entry(); }), sorted.end());
  std::map<std::pair<model::RequestId, std::int64_t>, std::vector<const Opened*>> by_request;
  std::map<model::EntryId, const Opened*> stands_for;
  std::vector<const Opened*> kept;
  for (const Opened* opened : sorted) {
    auto& same = by_request[{opened->operation().request, opened->operation().part.steps}];
    const auto twin = std::find_if(same.begin(), same.end(), [&](const Opened* other) { return same_act(other->operation(), opened->operation()); });
    if (twin != same.end()) {
      stands_for[opened->entry()] = *twin;
      continue;
    }
    same.push_back(opened);
    stands_for[opened->entry()] = opened;
    kept.push_back(opened);
  }
  for (const auto& [request, same] : by_request) {
    if (same.size() > 1) {
      model::Conflict conflict;
      conflict.about.text = "request";
      for (const Opened* opened : same) {
        conflict.entries.push_back(opened->entry());
      }
      request_conflicts_.push_back(std::move(conflict));
    }
  }
  std::sort(kept.begin(), kept.end(), [](const Opened* a, const Opened* b) { return earlier(*a, *b); });
  std::map<const Opened*, std::size_t> place;
  for (const Opened* opened : kept) {
    place[opened] = nodes_.size();
    nodes_.push_back({opened, {}, false, false});
  }
  for (const auto& [entry, opened] : stands_for) {
    index_[entry] = place[opened];
  }
}

void Graph::see() {
  const std::size_t count = nodes_.size();
  enum class State : std::uint8_t { fresh, open, done };
  std::vector<State> state(count, State::fresh);
  // A stack of our own: a long exam must not depend on the depth of the machine's.
  std::vector<std::size_t> stack;
  const auto targets = [&](std::size_t node) {
    std::vector<std::size_t> found;
    for (const auto* list : {&nodes_[node].opened->operation().after, &nodes_[node].opened->operation().replaces}) {
      for (const model::EntryId& entry : *list) {
        const auto at = find(entry);
        if (at && *at != node) {
          found.push_back(*at);
        } else if (!at) {
          nodes_[node].waits = true;
        }
      }
    }
    return found;
  };
  for (std::size_t start = 0; start < count; ++start) {
    stack.push_back(start);
    while (!stack.empty()) {
      const std::size_t node = stack.back();
      if (state[node] == State::done) {
        stack.pop_back();
        continue;
      }
      const auto below = targets(node);
      if (state[node] == State::fresh) {
        state[node] = State::open;
        for (const std::size_t target : below) {
          if (state[target] == State::fresh) {
            stack.push_back(target);
          }
        }
        continue;
      }
      nodes_[node].seen = NodeSet(count);
      nodes_[node].lacks = nodes_[node].waits;
      for (const std::size_t target : below) {
        nodes_[node].lacks = nodes_[node].lacks || nodes_[target].lacks;
        nodes_[node].seen.add(target);
        nodes_[node].seen.join(nodes_[target].seen);
      }
      state[node] = State::done;
      stack.pop_back();
    }
  }
}

std::optional<std::size_t> Graph::find(const model::EntryId& entry) const {
  const auto at = index_.find(entry);
  return at == index_.end() ? std::nullopt : std::optional<std::size_t>(at->second);
}

std::vector<bool> Graph::closure(std::span<const model::EntryId> of) const {
  NodeSet seen(nodes_.size());
  for (const model::EntryId& entry : of) {
    if (const auto at = find(entry)) {
      seen.add(*at);
      seen.join(nodes_[*at].seen);
    }
  }
  std::vector<bool> in(nodes_.size());
  for (std::size_t i = 0; i < in.size(); ++i) {
    in[i] = seen.has(i);
  }
  return in;
}

std::vector<model::EntryId> Graph::whole(std::span<const model::EntryId> shown) const {
  const auto lacks = [this](const model::EntryId& entry) {
    const auto at = find(entry);
    return at && nodes_[*at].lacks;
  };
  if (std::none_of(shown.begin(), shown.end(), lacks)) {
    return {shown.begin(), shown.end()};
  }
  const std::vector<bool> known = closure(shown);
  NodeSet covered(nodes_.size());
  for (std::size_t i = 0; i < nodes_.size(); ++i) {
    if (known[i] && !nodes_[i].lacks) {
      covered.join(nodes_[i].seen);
    }
  }
  std::vector<model::EntryId> out;
  for (std::size_t i = 0; i < nodes_.size(); ++i) {
    if (known[i] && !nodes_[i].lacks && !covered.has(i)) {
      out.push_back(nodes_[i].opened->entry());
    }
  }
  std::sort(out.begin(), out.end());
  return out;
}

std::vector<model::EntryId> Graph::heads() const {
  NodeSet covered(nodes_.size());
  for (const Node& node : nodes_) {
    covered.join(node.seen);
  }
  std::vector<model::EntryId> heads;
  for (std::size_t i = 0; i < nodes_.size(); ++i) {
    if (!covered.has(i)) {
      heads.push_back(nodes_[i].opened->entry());
    }
  }
  std::sort(heads.begin(), heads.end());
  return heads;
}

std::vector<std::size_t> Graph::of_request(const model::RequestId& request) const {
  std::vector<std::size_t> found;
  for (std::size_t i = 0; i < nodes_.size(); ++i) {
    if (nodes_[i].opened->operation().request == request) {
      found.push_back(i);
    }
  }
  std::sort(found.begin(), found.end(), [&](std::size_t a, std::size_t b) { return at(a).operation().part.steps < at(b).operation().part.steps; });
  return found;
}

bool signed_by_examiner(const Opened& opened, std::span<const Opened> operations, const ExaminerKeys& keys, const model::ClinicId& clinic) {
  const model::Operation& operation = opened.operation();
  if (!operation.sig || !operation.by || !keys(*operation.by, operation.sig->key.bytes)) {
    return false;
  }
  auto covered = seen_entries(operations, operation.after);
  if (!covered) {
    return false;
  }
  const Covered digest = cover(*covered);
  if (digest.digest != operation.sig->covers.bytes || digest.count != operation.sig->count.steps) {
    return false;
  }
  const SignedMatter matter{clinic, operation.object, *operation.by, std::move(*covered), as_bytes(operation.body.json)};
  return verify_matter(operation.sig->key.bytes, matter, operation.sig->signature.bytes);
}

std::vector<model::EntryId> clinic_revision(const Graph& graph) {
  std::vector<model::EntryId> heads = graph.heads();
  std::erase_if(heads, [&](const model::EntryId& head) { return std::holds_alternative<model::ExaminerNameBody>(graph.at(*graph.find(head)).body()); });
  return heads;
}

}  // namespace limbledger::ledger
