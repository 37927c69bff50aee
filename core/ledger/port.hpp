// The storage port: all that the ledger asks of a store, in eight calls. A store keeps bytes; it opens nothing and checks
// nothing but that a row does not contradict one it has. `append` answers only when everything is as durable as `durability` says,
// unless its flush was put off.
#pragma once

#include "core/model/ids.hpp"
#include "core/wire/fault.hpp"

#include <array>
#include <cstdint>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace limbledger::ledger {

using Bytes = std::vector<std::uint8_t>;
using Hash = std::array<std::uint8_t, 32>;
using Signature = std::array<std::uint8_t, 64>;

enum class RowState : std::uint8_t { whole = 0, erased = 1, pruned = 2, withheld = 3 };
enum class Durability : std::uint8_t { memory, browser, disk };

// One entry as stored or received: 32 bytes of header and its body (or, when the state is not whole, the body's hash).
struct Row {
  model::ReplicaId replica;
  std::uint64_t seq = 0;
  Hash hash{};  // the entry's hash
  RowState state = RowState::whole;
  std::array<std::uint8_t, 32> header{};
  Bytes body;
};

struct Head {
  model::ReplicaId replica;
  std::uint64_t seq = 0;
  Hash hash{};
  Signature signature{};
  friend bool operator==(const Head&, const Head&) = default;
};

// What a store keeps beside the entries so as to find them, where it does not agree with them.
struct ListDamage {
  std::string list;            // entries_by_key; entries, chains, heads, parked: the pages of that table; pages: others of the file
  std::uint64_t left_out = 0;  // entries that are there and that the list leaves out
  bool mended = false;
};

using Meta = std::map<std::string, Bytes>;

struct Heads {
  std::vector<Head> newest;  // one a leaf: several for a replica only after a fork
  std::vector<Head> kept;    // every stored head, by replica and seq
  Meta meta;
};

class LogStore {
 public:
  LogStore() = default;
  LogStore(const LogStore&) = delete;
  LogStore& operator=(const LogStore&) = delete;
  virtual ~LogStore() = default;

  // All or nothing, in one transaction. A row that is already there, byte for byte, changes nothing. An empty value in
  // `meta` removes that name. A head replaces the newest head of its leaf; every thousandth entry's head is kept.
  [[nodiscard]] virtual Result<void> append(std::span<const Row> rows, std::span<const Head> heads, const Meta& meta) = 0;
  // While `is_put_off`, `append` and `park` need not wait for the disk: `flush` waits for all of it, and so does the first of them that
  // is not put off. `flush` ends it. Nothing of it may be acknowledged before; after a failed one, none succeeds.
  virtual void put_off_flush(bool is_put_off) { static_cast<void>(is_put_off); }
  [[nodiscard]] virtual Result<void> flush() { return {}; }
  // Waits where something of this chain was put off, with all that was put off before it; what came of other chains alone may wait on.
  [[nodiscard]] virtual Result<void> flush_chain(const model::ReplicaId& replica) {
    static_cast<void>(replica);
    return flush();
  }
  // Rows of one replica with from <= seq <= to, in order of seq and then hash; `limit` rows at most.
  [[nodiscard]] virtual Result<std::vector<Row>> read(const model::ReplicaId& replica, std::uint64_t from, std::uint64_t to,
                                                      std::size_t limit) = 0;
  // Rows under one key, in order of replica, seq, hash.
  [[nodiscard]] virtual Result<std::vector<Row>> read_kid(const model::KeyId& kid) = 0;
  [[nodiscard]] virtual Result<Heads> heads() = 0;
  // Replaces the bodies of the named entries by their hash, with the given state. Unknown entries are passed over.
  [[nodiscard]] virtual Result<void> drop_bodies(std::span<const model::EntryId> entries, RowState state) = 0;
  // Keeps rows that do not join yet, apart from the log; with `rows` empty gives back what is parked and forgets it.
  [[nodiscard]] virtual Result<std::vector<Row>> park(std::span<const Row> rows) = 0;

  // Lists that do not agree with the entries. With `mend` one that is made from the entries is made anew, in one transaction; the
  // entries are not touched. A store without lists has none that could be damaged.
  [[nodiscard]] virtual Result<std::vector<ListDamage>> check_lists(bool mend) {
    static_cast<void>(mend);
    return std::vector<ListDamage>{};
  }

  [[nodiscard]] virtual Durability durability() const = 0;
};

// While it lives, what is written need not wait for the disk; what anybody writes afterwards waits, for this too.
class FlushPutOff {
 public:
  explicit FlushPutOff(LogStore& store) : store_(store) { store_.put_off_flush(true); }
  ~FlushPutOff() { store_.put_off_flush(false); }
  FlushPutOff(const FlushPutOff&) = delete;
  FlushPutOff& operator=(const FlushPutOff&) = delete;

 private:
  LogStore& store_;
};

}  // namespace limbledger::ledger
