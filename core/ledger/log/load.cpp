#include "core/ledger/log/log.hpp"

#include "core/ledger/log/plain.hpp"

#include <algorithm>

namespace limbledger::ledger {

namespace {

constexpr std::string_view index_name = "index";

}  // namespace

Log::Log(LogStore& store, World& world, Identity identity) : store_(store), world_(world), identity_(std::move(identity)), clock_(release_ms) {}

Result<std::unique_ptr<Log>> Log::open(LogStore& store, World& world, Identity identity, const RowMaker& make_row) {
  std::unique_ptr<Log> log(new Log(store, world, std::move(identity)));
  if (auto loaded = log->load(make_row); !loaded) {
    return loaded.error();
  }
  return log;
}

std::unique_ptr<Log> Log::narrowed(const std::set<model::ObjectId>& kept) const {
  Identity identity{identity_.clinic, identity_.device_key, {}, BlobKey(Secret32())};
  identity.sealed_to = identity_.sealed_to;
  if (!identity_.epochs.empty()) {
    identity.sealed_to.emplace(identity_.epochs.rbegin()->first, identity_.epochs.rbegin()->second.pub());
  }
  std::unique_ptr<Log> log(new Log(store_, world_, std::move(identity)));
  log->clock_ = clock_;
  log->joint_ = joint_;
  log->damage_ = damage_;
  log->index_.leaves = index_.leaves;
  log->index_.origins = index_.origins;
  // Random ids of requests, by which a repeat is known and no other's object is written to.
  log->index_.requests = index_.requests;
  log->index_.examiners = index_.examiners;
  log->index_.entry_count = index_.entry_count;
  log->index_.newest = index_.newest;
  for (const model::ObjectId& id : kept) {
    if (const auto object = index_.objects.find(id); object != index_.objects.end()) {
      log->index_.objects.insert(*object);
      for (const ObjectKey& key : object->second.keys) {
        log->index_.object_of[key.kid()] = id;
      }
    }
  }
  return log;
}

void Log::keep_only(const std::set<model::ObjectId>& kept) {
  std::erase_if(index_.objects, [&](const auto& one) { return !kept.contains(one.first); });
  std::erase_if(index_.object_of, [&](const auto& one) { return !kept.contains(one.second); });
}

Result<void> Log::load(const RowMaker& make_row) {
  const auto heads = store_.heads();
  if (!heads) {
    return heads.error();
  }
  load_index(*heads);
  return load_chains(*heads, make_row);
}

Result<void> Log::load_chains(const Heads& heads, const RowMaker& make_row) {
  std::map<model::ReplicaId, std::vector<Head>> leaves;
  for (const Head& head : heads.newest) {
    leaves[head.replica].push_back(head);
  }
  for (const auto& [replica, newest] : leaves) {
    const auto known = index_.leaves.find(replica);
    if (known != index_.leaves.end() && known->second.size() > 1) {
      continue;  // a fork that was walked whole; a new leaf of it has all walked again
    }
    if (auto loaded = load_replica(replica, newest); !loaded) {
      return loaded;
    }
  }
  if (auto read = read_touched(make_row); !read) {
    return read;
  }
  const auto own = index_.leaves.find(identity_.replica());
  if (own != index_.leaves.end() && !own->second.empty()) {
    joint_ = own->second.front();
  } else {
    joint_ = start_of({identity_.clinic, identity_.replica(), identity_.device_key.pub()});
  }
  const bool is_forked = own != index_.leaves.end() && own->second.size() > 1;
  if (is_forked || has_ended(heads.meta, identity_.replica())) {
    damage_.push_back(wire::Fault("replica.forked", "").with("replica", '"' + identity_.replica().to_text() + '"'));
  }
  clock_ = HybridClock(release_ms, std::max(clock_.last(), index_.newest));
  return {};
}

Result<std::vector<model::ObjectId>> Log::catch_up() {
  const auto heads = store_.heads();
  if (!heads) {
    return heads.error();
  }
  std::map<model::ReplicaId, std::size_t> branches;
  for (const Head& head : heads->newest) {
    ++branches[head.replica];
  }
  const bool is_forked = std::any_of(heads->newest.begin(), heads->newest.end(), [&](const Head& head) {
    const auto known = index_.leaves.find(head.replica);
    return branches[head.replica] > 1 && (known == index_.leaves.end() || std::none_of(known->second.begin(), known->second.end(), [&head](const Joint& leaf) {
                                            return leaf.hash == head.hash;
                                          }));
  });
  if (is_forked) {
    // A branch lies beside what was read: all is walked again.
    index_ = Index();
    touched_.clear();
  }
  const std::size_t damage_before = damage_.size();
  std::erase_if(damage_, [](const wire::Fault& fault) { return fault.code == "replica.forked"; });
  caught_.emplace();
  auto loaded = load_chains(*heads, {});
  std::vector<model::ObjectId> changed(caught_->begin(), caught_->end());
  caught_.reset();
  if (!loaded) {
    return loaded.error();
  }
  if (damage_.size() > damage_before && damage_.back().code != "replica.forked") {
    return damage_.back();
  }
  return changed;
}

// Thrown away unless it opens, is of this fold, and every leaf it covers still stands in the store.
void Log::load_index(const Heads& heads) {
  const auto found = heads.meta.find(std::string(index_name));
  if (found == heads.meta.end()) {
    return;
  }
  const auto plain = identity_.shelf.open(as_bytes(index_name), found->second);
  if (!plain) {
    return;
  }
  auto index = Index::from_bytes(*plain);
  if (!index) {
    return;
  }
  std::map<model::ReplicaId, std::size_t> branches;
  for (const Head& head : heads.newest) {
    ++branches[head.replica];
  }
  for (const auto& [replica, leaves] : index->leaves) {
    if (leaves.size() != 1 || branches[replica] != 1) {
      return;  // a forked chain is walked from its start
    }
    const auto rows = store_.read(replica, leaves.front().seq, leaves.front().seq, 8);
    if (!rows || std::none_of(rows->begin(), rows->end(), [&leaf = leaves.front()](const Row& row) { return row.hash == leaf.hash; })) {
      return;
    }
  }
  index_ = std::move(*index);
}

// Rows come by sequence; a fork has several at one. Each must continue one of the ends of the sequence before.
Result<void> Log::load_replica(const model::ReplicaId& replica, const std::vector<Head>& newest) {
  std::vector<Joint> ends;
  if (const auto covered = index_.leaves.find(replica); covered != index_.leaves.end()) {
    ends = covered->second;
  }
  std::vector<Joint> leaves;
  std::uint64_t from = ends.empty() ? 1 : ends.front().seq + 1;
  const auto last = std::max_element(newest.begin(), newest.end(), [](const Head& a, const Head& b) { return a.seq < b.seq; })->seq;
  std::vector<Joint> level;  // ends reached at the sequence under way
  while (from <= last) {
    auto rows = store_.read(replica, from, last, page_rows);
    if (!rows) {
      return rows.error();
    }
    // A full page may end between two rows of one sequence: leave that sequence to the next page.
    if (rows->size() == page_rows && rows->front().seq != rows->back().seq) {
      const std::uint64_t unfinished = rows->back().seq;
      std::erase_if(*rows, [&](const Row& row) { return row.seq == unfinished; });
    }
    if (rows->empty()) {
      damage_.push_back(entry_fault("entry.gap", replica, from, Hash{}, "an entry"));
      return {};
    }
    from = rows->back().seq + 1;
    for (Row& row : *rows) {
      if (row.seq == 1 && index_.origins.find(replica) == index_.origins.end()) {
        const auto origin = origin_of(identity_.clinic, row);
        if (!origin) {
          damage_.push_back(origin.error().faults.front());
          return {};
        }
        index_.origins[replica] = *origin;
      }
      if (ends.empty()) {
        ends = {start_of(index_.origins[replica])};
      }
      if (row.seq > ends.front().seq + 1 && !level.empty()) {
        ends = std::move(level);
        level.clear();
      }
      bool joined = false;
      wire::Refusal refusal;
      for (const Joint& end : ends) {
        Joint joint = end;
        // Of a fork the row is tried at several ends, and is still needed.
        auto entry = ends.size() == 1 ? verify_next(joint, std::move(row)) : verify_next(joint, row);
        if (entry) {
          adopt(*entry);
          level.push_back(joint);
          joined = true;
          break;
        }
        refusal = entry.error();
      }
      if (!joined) {
        damage_.push_back(refusal.faults.front());
        return {};
      }
      const Joint& reached = level.back();
      const bool is_leaf = std::any_of(newest.begin(), newest.end(), [&reached](const Head& head) { return head.hash == reached.hash; });
      if (is_leaf) {
        leaves.push_back(reached);
      }
    }
  }
  if (!leaves.empty()) {
    index_.leaves[replica] = std::move(leaves);
  }
  const Origin& origin = index_.origins[replica];
  for (const Head& head : newest) {
    const auto& known = index_.leaves[replica];
    const bool here = std::any_of(known.begin(), known.end(), [&](const Joint& leaf) { return leaf.seq == head.seq && leaf.hash == head.hash; });
    const auto holds = verify_head(identity_.clinic, origin.sign_pub, head);
    if (!here || !holds) {
      damage_.push_back(entry_fault("entry.head", replica, head.seq, head.hash, "the signed head of the chain"));
    }
  }
  return {};
}

void Log::adopt(const VerifiedEntry& entry) {
  ++index_.entry_count;
  ++unsaved_;
  index_.newest = std::max(index_.newest, clock_.receive(entry.header().stamp, world_.now()).stamp);
  if (!entry.is_whole()) {
    return;
  }
  switch (entry.header().kind) {
    case Kind::key:
      return adopt_key(entry);
    case Kind::examiner: {
      const auto body = ExaminerBody::from_bytes(entry.body());
      if (body && verify_examiner(identity_.clinic, entry.replica(), *body) && !knows_examiner(body->examiner, body->pub)) {
        index_.examiners.push_back({body->examiner, body->pub});
      }
      return;
    }
    case Kind::op: {
      const auto object = index_.object_of.find(entry.header().kid);
      if (object != index_.object_of.end()) {
        touched_.insert(object->second);
      }
      return;  // without its key: kept, passed on, counted by verify, read when the key comes
    }
    default:
      return;  // intro, order, witness, and what only a newer edition knows: kept and passed on
  }
}

void Log::adopt_key(const VerifiedEntry& entry) {
  const auto body = KeyBody::from_bytes(entry.body());
  if (!body || index_.object_of.contains(entry.header().kid)) {
    return;
  }
  const auto epoch = identity_.epochs.find(body->epoch);
  if (epoch == identity_.epochs.end()) {
    return;
  }
  if (const auto key = unwrap(*body, epoch->second, entry.header().kid)) {
    index_.objects[key->object()].keys.push_back(*key);
    index_.object_of[key->kid()] = key->object();
    touched_.insert(key->object());  // its operations may have come before it, in another chain
  }
}

// After all chains: a key and what it opens may lie in different ones, in either order.
Result<void> Log::read_touched(const RowMaker& make_row) {
  for (const model::ObjectId& id : touched_) {
    const auto all = operations(id);
    if (!all) {
      return all.error();
    }
    for (const Opened& opened : *all) {
      note(opened);
    }
    Index::Object& object = index_.objects[id];
    if (make_row && object.type != ObjectType::clinic) {
      object.row = make_row(*this, id, object.type, *all);
    }
  }
  if (caught_) {
    caught_->insert(touched_.begin(), touched_.end());
  }
  touched_.clear();
  return {};
}

Result<std::size_t> Log::take(const Origin& origin, std::vector<Row> rows, const Head& head) {
  Joint from = start_of(origin);
  if (const auto known = index_.leaves.find(origin.replica); known != index_.leaves.end() && !known->second.empty()) {
    from = known->second.front();
  }
  std::erase_if(rows, [&](const Row& row) { return row.seq <= from.seq; });
  if (rows.empty()) {
    return std::size_t{0};
  }
  const auto verified = verify_run(origin, from, rows, head);
  if (!verified) {
    return verified.error();
  }
  if (auto stored = store_.append(rows, {&head, 1}, {}); !stored) {
    return stored.error();
  }
  index_.origins[origin.replica] = origin;
  for (const VerifiedEntry& entry : *verified) {
    adopt(entry);
  }
  if (auto read = read_touched({}); !read) {
    return read.error();
  }
  index_.leaves[origin.replica] = {{head.seq, head.hash}};
  clock_ = HybridClock(release_ms, std::max(clock_.last(), index_.newest));
  return verified->size();
}

Result<void> Log::save_index() {
  if (unsaved_ == 0 || !damage_.empty() || identity_.sealed_to) {
    return {};
  }
  const Bytes plain = index_.to_bytes();
  Meta meta;
  meta[std::string(index_name)] = identity_.shelf.seal(as_bytes(index_name), plain);
  auto saved = store_.append({}, {}, meta);
  if (saved) {
    unsaved_ = 0;
  }
  return saved;
}

}  // namespace limbledger::ledger
