// Trouble on purpose, for whoever tests a front end: slow replies, a disk that is full, a ledger that locks, a program that is killed,
// a clock that was set wrong. On a demonstration ledger alone. What is counted are the messages that were answered, over whichever carrier; times in ms.
#pragma once

#include "core/ledger/port.hpp"
#include "core/service/desk.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace limbledger::rpc {

struct TroubleAsk {
  std::optional<std::int64_t> slow_ms;
  std::optional<std::int64_t> full_after;    // from then on nothing is written
  std::optional<std::int64_t> locked_after;  // then the ledger locks itself, once
  std::optional<std::int64_t> kill_after;    // the next one is carried out, and the program is killed before its reply
  std::string kill_method;                   // likewise the first message that calls this method

  std::optional<std::int64_t> clock_ms;      // what the clock claims at the start, since 1970; it goes on from there

  [[nodiscard]] bool any() const { return slow_ms || full_after || locked_after || kill_after || !kill_method.empty() || clock_ms; }
};

// Takes one word of --trouble: slow=MS, full, full=N, locked, locked=N, kill=N, kill=METHOD, clock=INSTANT. False where it is none.
[[nodiscard]] bool take_trouble(std::string_view word, TroubleAsk& ask);

// The store behind a gate that can be shut for writing, as a full disk is.
class GatedStore final : public ledger::LogStore {
 public:
  explicit GatedStore(ledger::LogStore& store) : store_(store) {}
  void shut(bool shut) { shut_ = shut; }

  [[nodiscard]] Result<void> append(std::span<const ledger::Row> rows, std::span<const ledger::Head> heads, const ledger::Meta& meta) override;
  void put_off_flush(bool is_put_off) override { store_.put_off_flush(is_put_off); }
  [[nodiscard]] Result<void> flush() override { return store_.flush(); }
  [[nodiscard]] Result<void> flush_chain(const model::ReplicaId& replica) override { return store_.flush_chain(replica); }
  [[nodiscard]] Result<std::vector<ledger::Row>> read(const model::ReplicaId& replica, std::uint64_t from, std::uint64_t to, std::size_t limit) override {
    return store_.read(replica, from, to, limit);
  }
  [[nodiscard]] Result<std::vector<ledger::Row>> read_kid(const model::KeyId& kid) override { return store_.read_kid(kid); }
  [[nodiscard]] Result<ledger::Heads> heads() override { return store_.heads(); }
  [[nodiscard]] Result<void> drop_bodies(std::span<const model::EntryId> entries, ledger::RowState state) override { return store_.drop_bodies(entries, state); }
  [[nodiscard]] Result<std::vector<ledger::Row>> park(std::span<const ledger::Row> rows) override { return store_.park(rows); }
  [[nodiscard]] Result<std::vector<ledger::ListDamage>> check_lists(bool mend) override { return store_.check_lists(mend); }
  [[nodiscard]] ledger::Durability durability() const override { return store_.durability(); }

 private:
  ledger::LogStore& store_;
  bool shut_ = false;
};

class TroublePlay {
 public:
  TroublePlay(const TroubleAsk& ask, service::Desk& desk, GatedStore& store) : ask_(ask), desk_(desk), store_(store) {}
  void asked();
  void called(std::string_view method);
  void worked_out();

 private:
  TroubleAsk ask_;
  service::Desk& desk_;
  GatedStore& store_;
  std::int64_t answered_ = 0;
  bool kills_ = false;  // the method was called
  bool has_locked_ = false;
};

}  // namespace limbledger::rpc
