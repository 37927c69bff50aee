#include "core/ledger/exchange/take.hpp"

#include <algorithm>
#include <iterator>

namespace limbledger::ledger {

namespace {

constexpr std::string_view parked_name = "parked";
constexpr std::size_t branch_count_max = 4096;

// A run that waits, without its rows: where it starts, and its head.
void put_waiting(ByteWriter& out, const Run& run) {
  out.u64(run.first).raw(run.before).raw(run.head.replica.bytes).u64(run.head.seq).raw(run.head.hash).raw(run.head.signature);
}

std::vector<Run> read_waiting(const Meta& meta) {
  std::vector<Run> out;
  const auto found = meta.find(std::string(parked_name));
  if (found == meta.end()) {
    return out;
  }
  ByteReader in(found->second);
  while (in.left() >= 160) {
    Run run;
    run.first = in.u64();
    run.before = in.array<32>();
    run.head.replica.bytes = in.array<16>();
    run.head.seq = in.u64();
    run.head.hash = in.array<32>();
    run.head.signature = in.array<64>();
    run.replica = run.head.replica;
    out.push_back(std::move(run));
  }
  return out;
}

using ParkedRows = std::map<std::pair<model::ReplicaId, std::uint64_t>, std::vector<const Row*>>;

// Gives a waiting run its rows back, by the hashes that link them. False: some are gone.
bool fill(Run& run, const ParkedRows& parked) {
  Joint joint{run.first - 1, run.before};
  while (joint.seq < run.head.seq) {
    const auto level = parked.find({run.replica, joint.seq + 1});
    const Row* next = nullptr;
    for (const Row* row : level == parked.end() ? std::vector<const Row*>() : level->second) {
      next = entry_hash(joint.hash, row->seq, row->header, body_hash(*row)) == row->hash ? row : next;
    }
    if (next == nullptr) {
      return false;
    }
    run.rows.push_back(*next);
    joint = {next->seq, next->hash};
  }
  return joint.hash == run.head.hash;
}

bool same_run(const Run& a, const Run& b) { return a.first == b.first && a.head == b.head; }

enum class Verdict : std::uint8_t { joins, waits };

class Taking {
 public:
  Taking(Member& member, const Heads& heads) : member_(member), heads_(heads), own_(member.replica()) {}

  [[nodiscard]] Result<Taken> run(std::vector<Run> arriving) {
    const FlushPutOff late(member_.store);
    const auto own = stored_intro(member_.store, member_.clinic, own_);
    if (!own) {
      return wire::Fault("ledger.none", "", "a ledger whose own chain has begun");
    }
    purpose_ = own->purpose;
    auto trust = trust_with(arriving, {});
    if (!trust) {
      return trust.error();
    }
    for (const Run& one : arriving) {
      note_intro(one);
    }
    // Nothing is moved before all that arrived was found sound.
    if (auto done = settle(arriving, *trust, true); !done) {
      return done.error();
    }
    std::vector<Run> waited = read_waiting(heads_.meta);
    const bool had_parked = !waited.empty();
    if (had_parked) {
      if (auto done = unpark(waited, arriving); !done) {
        return done.error();
      }
    }
    park(waited, false);
    park(arriving, true);
    return store(had_parked);
  }

 private:
  // By what is stored, and by what waits or has just arrived: an order is bound to its place and signed by its admin, so it holds
  // wherever it is read.
  [[nodiscard]] Result<Trust> trust_with(const std::vector<Run>& arriving, const std::vector<Run>& waited) {
    auto orders = stored_orders(member_.store);
    if (!orders) {
      return orders.error();
    }
    for (const std::vector<Run>* runs : {&arriving, &waited, static_cast<const std::vector<Run>*>(&accepted_)}) {
      for (const Run& one : *runs) {
        std::copy_if(one.rows.begin(), one.rows.end(), std::back_inserter(*orders),
                     [](const Row& row) { return row.header[1] == static_cast<std::uint8_t>(Kind::order); });
      }
    }
    return Trust(member_.clinic, *orders, member_.checked_orders);
  }

  void note_intro(const Run& run) {
    if (run.first == 1) {
      if (const auto intro = intro_of(run.rows.front())) {
        arrived_.emplace(run.replica, *intro);
      }
    }
  }

  [[nodiscard]] std::optional<Intro> find_intro(const model::ReplicaId& replica) const {
    if (auto held = stored_intro(member_.store, member_.clinic, replica)) {
      return held;
    }
    const auto came = arrived_.find(replica);
    return came == arrived_.end() ? std::nullopt : std::optional<Intro>(came->second);
  }

  [[nodiscard]] Result<Verdict> judge(const Run& run, const Trust& trust) {
    if (run.first == 1) {
      if (const auto stated = origin_of(member_.clinic, run.rows.front()); !stated) {
        return stated.error();
      }
    }
    const auto intro = find_intro(run.replica);
    if (!intro) {
      return Verdict::waits;
    }
    if (intro->purpose != purpose_) {
      return wire::Fault("exchange.purpose", "", "entries of a ledger of the same purpose");
    }
    const Origin origin{member_.clinic, run.replica, intro->sign_pub};
    if (auto signed_head = verify_head(member_.clinic, origin.sign_pub, run.head); !signed_head) {
      return signed_head.error();
    }
    if (run.first == 1 && run.before != start_of(origin).hash) {
      return entry_fault("entry.hash", run.replica, 1, run.rows.front().hash, "the start that the introduction gives");
    }
    const auto find = [this](const model::ReplicaId& replica) { return find_intro(replica); };
    if (roles_of_replica(trust, member_.clinic, run.replica, find) == 0) {
      return Verdict::waits;
    }
    if (run.first == 1 || follows_accepted(run)) {
      return Verdict::joins;
    }
    const auto held = holds(member_.store, have_row({run.replica, run.first - 1, run.before}));
    if (!held) {
      return held.error();
    }
    return *held ? Verdict::joins : Verdict::waits;
  }

  // Whether what is accepted so far has the entry that this run starts from.
  [[nodiscard]] bool follows_accepted(const Run& run) const {
    return std::any_of(accepted_.begin(), accepted_.end(), [&run](const Run& one) {
      return one.replica == run.replica && one.first < run.first && run.first - one.first <= one.rows.size() && one.rows[run.first - one.first - 1].hash == run.before;
    });
  }

  // Moves what joins from `runs` to what is accepted, until nothing more does. A bad run refuses all (`strict`) or is dropped.
  [[nodiscard]] Result<void> settle(std::vector<Run>& runs, const Trust& trust, bool strict) {
    for (bool moved = true; moved;) {
      moved = false;
      std::vector<Run> left;
      for (Run& run : runs) {
        const auto verdict = judge(run, trust);
        if (!verdict && strict) {
          return verdict.error();
        }
        if (!verdict) {
          continue;
        }
        if (*verdict == Verdict::waits) {
          left.push_back(std::move(run));
          continue;
        }
        accepted_.push_back(std::move(run));
        moved = true;
      }
      runs = std::move(left);
    }
    return {};
  }

  [[nodiscard]] Result<void> unpark(std::vector<Run>& waited, std::vector<Run>& arriving) {
    auto parked = member_.store.park({});
    if (!parked) {
      return parked.error();
    }
    ParkedRows rows;
    for (const Row& row : *parked) {
      rows[{row.replica, row.seq}].push_back(&row);
    }
    std::erase_if(waited, [&](Run& run) { return !fill(run, rows); });
    for (const Run& one : waited) {
      note_intro(one);
    }
    const auto trust = trust_with(arriving, waited);
    if (!trust) {
      return trust.error();
    }
    for (std::size_t before = SIZE_MAX; before != accepted_.size();) {
      before = accepted_.size();
      if (auto done = settle(waited, *trust, false); !done) {
        return done;
      }
      if (auto done = settle(arriving, *trust, false); !done) {
        return done;
      }
    }
    return {};
  }

  void park(std::vector<Run>& runs, bool arrived_now) {
    for (Run& run : runs) {
      if (std::any_of(waiting_.begin(), waiting_.end(), [&](const Run& known) { return same_run(known, run); })) {
        continue;
      }
      if (const auto kept = member_.store.park(run.rows); !kept) {
        out_.turned_away += run.rows.size();
        continue;
      }
      out_.parked += arrived_now ? run.rows.size() : 0;
      waiting_.push_back(std::move(run));
    }
  }

  [[nodiscard]] Result<Taken> store(bool had_parked) {
    std::vector<Row> rows;
    std::vector<Head> heads;
    std::set<Hash> fresh;  // of runs that may bring the same
    std::size_t count = 0;
    for (const Run& run : accepted_) {
      count += run.rows.size();
    }
    rows.reserve(count);
    for (Run& run : accepted_) {
      heads.push_back(run.head);
      const auto held = member_.store.read(run.replica, run.first, run.head.seq, SIZE_MAX >> 1U);
      if (!held) {
        return held.error();
      }
      const bool is_alone = std::none_of(accepted_.begin(), accepted_.end(), [&run](const Run& one) {
        return &one != &run && one.replica == run.replica && one.first <= run.head.seq && run.first <= one.head.seq;
      });
      auto at = held->begin();
      for (Row& row : run.rows) {
        // Both go by sequence; of a fork several are held at one.
        at = std::find_if(at, held->end(), [&row](const Row& one) { return one.seq >= row.seq; });
        const auto level = std::find_if(at, held->end(), [&row](const Row& one) { return one.seq != row.seq || one.hash == row.hash; });
        const bool is_held = level != held->end() && level->seq == row.seq;
        if (is_held || (!is_alone && !fresh.insert(row.hash).second)) {
          ++out_.known;
          if (row.state != RowState::whole) {
            continue;
          }
        } else {
          ++out_.entries;
          out_.own_came_back = out_.own_came_back || run.replica == own_;
        }
        if (row.state == RowState::erased) {
          row.state = RowState::withheld;  // another's word is no order: the body may still come
        }
        rows.push_back(std::move(row));
      }
    }
    Meta meta;
    note_orders(heads_, new_rows(rows), meta);
    if (out_.own_came_back) {
      meta[std::string(restored_name)] = Bytes(own_.bytes.begin(), own_.bytes.end());
    }
    if (had_parked || !waiting_.empty()) {
      ByteWriter words;
      for (const Run& run : waiting_) {
        put_waiting(words, run);
      }
      meta[std::string(parked_name)] = words.take();
    }
    if (!rows.empty() || !heads.empty() || !meta.empty()) {
      if (auto stored = member_.store.append(rows, heads, meta); !stored) {
        if (had_parked) {
          (void)member_.store.park(rows);  // what waited goes on waiting
        }
        return stored.error();
      }
    }
    return out_;
  }

  // Of these, the ones that were not held: an order is noted once.
  [[nodiscard]] std::vector<Row> new_rows(const std::vector<Row>& rows) const {
    std::vector<Row> out;
    std::set<Hash> noted;
    const auto known = heads_.meta.find(std::string(orders_name));
    if (known != heads_.meta.end()) {
      ByteReader in(known->second);
      while (in.left() >= 56) {
        noted.insert(read_place(in).hash);
      }
    }
    for (const Row& row : rows) {
      if (row.header[1] == static_cast<std::uint8_t>(Kind::order) && noted.insert(row.hash).second) {
        out.push_back(row);
      }
    }
    return out;
  }

  Member& member_;
  const Heads& heads_;
  model::ReplicaId own_;
  Purpose purpose_ = Purpose::record;
  std::map<model::ReplicaId, Intro> arrived_;
  std::vector<Run> accepted_;
  std::vector<Run> waiting_;
  Taken out_;
};

}  // namespace

Result<Taken> take(Member& member, std::vector<Run> runs) {
  const auto heads = member.store.heads();
  if (!heads) {
    return heads.error();
  }
  return Taking(member, *heads).run(std::move(runs));
}

Result<std::vector<Waiting>> waiting(LogStore& store) {
  const auto heads = store.heads();
  if (!heads) {
    return heads.error();
  }
  std::vector<Waiting> out;
  for (const Run& run : read_waiting(heads->meta)) {
    Waiting one{run.replica, run.first, run.head.seq - run.first + 1, 0};
    for (const Head& head : heads->newest) {
      one.held_to = head.replica == run.replica ? std::max(one.held_to, head.seq) : one.held_to;
    }
    out.push_back(one);
  }
  return out;
}

std::optional<Intro> stored_intro(LogStore& store, const model::ClinicId& clinic, const model::ReplicaId& replica) {
  const auto rows = store.read(replica, 1, 1, branch_count_max);
  if (!rows || rows->empty() || !origin_of(clinic, rows->front())) {
    return std::nullopt;
  }
  const auto intro = intro_of(rows->front());
  return intro ? std::optional<Intro>(*intro) : std::nullopt;
}

Result<Trust> stored_trust(LogStore& store, const model::ClinicId& clinic) {
  CheckedOrders none;
  return stored_trust(store, clinic, none);
}

Result<Trust> stored_trust(LogStore& store, const model::ClinicId& clinic, CheckedOrders& checked) {
  const auto orders = stored_orders(store);
  if (!orders) {
    return orders.error();
  }
  return Trust(clinic, *orders, checked);
}

}  // namespace limbledger::ledger
