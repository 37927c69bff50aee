#include "tests/simulation/clinic/disk.hpp"

#include "core/store/sqlite.hpp"

namespace limbledger::ledger::clinic_sim {

namespace {

wire::Fault dark() { return wire::Fault("ledger.read_only", "", "a disk with power"); }

void copy_store(LogStore& from, LogStore& to) {
  const auto heads = from.heads();
  for (const Head& head : heads->newest) {
    const auto rows = from.read(head.replica, 1, head.seq, SIZE_MAX >> 1U);
    (void)to.append(*rows, {}, {});
  }
  (void)to.append({}, heads->kept, heads->meta);
  const auto parked = from.park({});
  if (!parked->empty()) {
    (void)from.park(*parked);
    (void)to.park(*parked);
  }
}

}  // namespace

Disk::Disk(Planted planted, std::uint64_t seed, const std::optional<model::ClinicId>& on_file) : planted_(planted), dice_(seed), clinic_(on_file) {
  if (on_file) {
    power_ = std::make_unique<simulation::PowerCutDisk>(seed);
    open_file();
  } else {
    inner_ = std::make_unique<store::MemoryStore>();
  }
}

void Disk::open_file() {
  store::SqliteOptions options;
  options.clinic = clinic_;
  options.vfs = power_->vfs_name();
  auto opened = store::SqliteStore::open("ledger", options);
  if (!opened) {
    throw Complaint{"damaged", "a ledger's file does not open after the power came back"};
  }
  inner_ = std::move(*opened);
}

std::unique_ptr<Disk> Disk::copy(std::uint64_t seed) {
  disarm();  // what waits is taken out and put back while it is copied
  auto out = std::make_unique<Disk>(planted_, seed, std::nullopt);
  copy_store(*inner_, *out->inner_);
  out->keep();
  return out;
}

void Disk::arm() {
  if (power_) {
    power_->cut_at(dice_.roll(60));
  } else {
    dies_in_ = 1 + dice_.roll(4);
  }
}

void Disk::disarm() {
  dies_in_ = 0;
  if (power_ && !power_->is_cut()) {
    power_->resume();
  }
}

void Disk::power_back() {
  is_dark_ = false;
  dies_in_ = 0;
  if (power_) {
    inner_.reset();
    power_->restart();
    open_file();
  } else if (is_lying_ || planted_ == Planted::yes_before_disk) {
    auto before = std::make_unique<store::MemoryStore>();
    copy_store(*kept_, *before);
    inner_ = std::move(before);
  } else if (flushed_) {
    inner_ = std::move(flushed_);
  }
  flushed_.reset();
  is_put_off_ = false;
  is_lying_ = false;
}

void Disk::keep() {
  if (planted_ == Planted::yes_before_disk || is_lying_) {
    kept_ = std::make_unique<store::MemoryStore>();
    copy_store(*inner_, *kept_);
  }
}

void Disk::begin_lying() {
  is_lying_ = !power_;
  keep();
}

void Disk::stop_lying() { is_lying_ = false; }

Result<void> Disk::append(std::span<const Row> rows, std::span<const Head> heads, const Meta& meta) {
  if (is_dark_) {
    return dark();
  }
  ++commits_;
  if (dies_in_ != 0 && --dies_in_ == 0) {
    is_dark_ = true;
    if (planted_ == Planted::torn_commit && !rows.empty()) {
      (void)inner_->append(rows.first(1 + dice_.roll(rows.size())), {}, {});
    } else if (dice_.one_in(2)) {
      note_waited(inner_->append(rows, heads, meta).has_value());
    }
    return dark();
  }
  auto done = inner_->append(rows, heads, meta);
  is_dark_ = is_dark_ || (power_ && power_->is_cut());
  for (const Row& row : rows) {
    put_off_chains_.insert(row.replica);
  }
  note_waited(done.has_value());
  if (done && planted_ == Planted::yes_before_disk && (kept_ == nullptr || dice_.one_in(4))) {
    keep();
  }
  return done;
}

// A write that was waited for takes with it all that was put off before.
void Disk::note_waited(bool is_written) {
  if (is_written && !is_put_off_) {
    flushed_.reset();
    put_off_chains_.clear();
  }
}

// What stands now is what the power leaves, until it was waited for.
void Disk::put_off_flush(bool is_put_off) {
  is_put_off_ = is_put_off;
  if (power_) {
    inner_->put_off_flush(is_put_off);
  } else if (is_put_off && !is_dark_ && !flushed_) {
    flushed_ = std::make_unique<store::MemoryStore>();
    copy_store(*inner_, *flushed_);
  }
}

Result<void> Disk::flush() {
  is_put_off_ = false;
  if (is_dark_) {
    return dark();
  }
  if (flushed_ && dies_in_ != 0 && --dies_in_ == 0) {
    is_dark_ = true;
    return dark();
  }
  flushed_.reset();
  put_off_chains_.clear();
  auto done = inner_->flush();
  is_dark_ = is_dark_ || (power_ && power_->is_cut());
  return done;
}

Result<void> Disk::flush_chain(const model::ReplicaId& replica) {
  if (!power_) {
    return is_dark_ ? Result<void>(dark()) : put_off_chains_.contains(replica) ? flush() : Result<void>();
  }
  auto done = inner_->flush_chain(replica);
  is_dark_ = is_dark_ || power_->is_cut();
  return is_dark_ ? Result<void>(dark()) : done;
}

Result<std::vector<Row>> Disk::read(const model::ReplicaId& replica, std::uint64_t from, std::uint64_t to, std::size_t limit) {
  return is_dark_ ? Result<std::vector<Row>>(dark()) : inner_->read(replica, from, to, limit);
}

Result<std::vector<Row>> Disk::read_kid(const model::KeyId& kid) { return is_dark_ ? Result<std::vector<Row>>(dark()) : inner_->read_kid(kid); }

Result<Heads> Disk::heads() {
  auto out = is_dark_ ? Result<Heads>(dark()) : inner_->heads();
  if (out && planted_ == Planted::one_branch) {
    std::erase_if(out->newest, [&out](const Head& head) {
      return std::any_of(out->kept.begin(), out->kept.end(), [&head](const Head& other) {
        return other.replica == head.replica && (other.seq > head.seq || (other.seq == head.seq && other.hash > head.hash));
      });
    });
  }
  return out;
}

Result<void> Disk::drop_bodies(std::span<const model::EntryId> entries, RowState state) {
  return is_dark_ ? Result<void>(dark()) : inner_->drop_bodies(entries, state);
}

Result<std::vector<Row>> Disk::park(std::span<const Row> rows) {
  auto out = is_dark_ ? Result<std::vector<Row>>(dark()) : inner_->park(rows);
  is_dark_ = is_dark_ || (power_ && power_->is_cut());
  note_waited(out.has_value());
  return out;
}

}  // namespace limbledger::ledger::clinic_sim
