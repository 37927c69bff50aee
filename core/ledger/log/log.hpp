// The log of this replica at work: appends own operations (stamped, sealed, chained, head signed, one transaction a
// commit), opens what is stored, and keeps the index. One commit is one request's entries: all there or none.
// Faults when appending: ledger.read_only and the store's own. Nothing is remembered that the store did not take.
#pragma once

#include "core/ledger/log/index.hpp"
#include "core/ledger/keys/sign.hpp"
#include "core/ledger/keys/wrap.hpp"
#include "core/ledger/fold/opened.hpp"
#include "core/ledger/world.hpp"

#include <functional>
#include <memory>
#include <set>
#include <span>
#include <string>
#include <vector>

namespace limbledger::ledger {

inline constexpr std::int64_t release_ms = model::first_release_ms;
// Rows read from the store at once.
inline constexpr std::size_t page_rows = 4096;

// Whose log this is and with which keys it writes; taken from an opened keyring.
struct Identity {
  model::ClinicId clinic;
  SignKey device_key;
  std::map<std::uint32_t, BoxPair> epochs;
  BlobKey shelf;
  // Where no epoch can be opened: the public half that new keys are sealed to, so that what is written is not read again.
  std::optional<std::pair<std::uint32_t, PublicKey>> sealed_to = std::nullopt;

  [[nodiscard]] model::ReplicaId replica() const { return replica_of(clinic, device_key.pub()); }
};

struct NewOperation {
  model::ObjectId object;
  ObjectType type = ObjectType::exam;
  std::string op;
  model::RequestId request;
  std::vector<model::EntryId> after;  // what the writer was shown; later operations of one commit see the earlier ones too
  std::vector<model::EntryId> replaces;
  std::optional<model::ExaminerId> by;
  std::optional<model::Instant> examined_at;
  std::string body_json;
  bool sign = false;  // carries the examiner's signature
};

class Log;
// The list row of an object, as JSON, from all its operations; empty where it must be folded later.
using RowMaker = std::function<std::string(const Log&, const model::ObjectId&, ObjectType, std::span<const Opened>)>;

class Log {
 public:
  // Reads what the index does not cover, checking chain and heads. Faults: entry.* with the place, format.newer never.
  // With `make_row` the rows of the lists are made in the same reading.
  [[nodiscard]] static Result<std::unique_ptr<Log>> open(LogStore& store, World& world, Identity identity, const RowMaker& make_row = {});

  // The same log for writing on while it is locked: it signs and seals as this device, and of all keys it holds those of the
  // objects kept alone. It cannot open an epoch, so whatever else is in the store stays shut to it, and it keeps no index.
  [[nodiscard]] std::unique_ptr<Log> narrowed(const std::set<model::ObjectId>& kept) const;
  // Forgets the keys of all other objects.
  void keep_only(const std::set<model::ObjectId>& kept);

  // The entries of the operations, in their order. `examiner_key` signs where an operation asks for it.
  [[nodiscard]] Result<std::vector<Opened>> append(std::span<const NewOperation> operations, const model::EditionId& edition,
                                                   const SignKey* examiner_key);
  // Publishes an examiner's key for this device, once.
  [[nodiscard]] Result<void> introduce_examiner(const model::ExaminerId& examiner, const SignKey& key);
  // Reads what an exchange has stored since, own orders and witnesses included; gives the objects that changed. A fork is walked
  // from its start. Where the own chain has a second branch, or came back to a restored device, nothing is appended any more:
  // fault replica.forked, and the way on is a new replica.
  [[nodiscard]] Result<std::vector<model::ObjectId>> catch_up();
  // Takes a run of another replica of this clinic, checked to its signed head; known entries change nothing.
  [[nodiscard]] Result<std::size_t> take(const Origin& origin, std::vector<Row> rows, const Head& head);

  // All operations of an object that open; `unopened` counts the others (damaged or of a key that is not here).
  [[nodiscard]] Result<std::vector<Opened>> operations(const model::ObjectId& object, std::size_t* unopened = nullptr);
  // The id an object made by this request has: nothing is drawn, so a repeat makes the same.
  [[nodiscard]] model::ObjectId object_for(ObjectType type, const model::RequestId& request, std::uint16_t index) const;
  [[nodiscard]] model::ObjectId clinic_object() const { return ledger::clinic_object(identity_.clinic); }

  [[nodiscard]] const Index& index() const { return index_; }
  [[nodiscard]] const Identity& identity() const { return identity_; }
  [[nodiscard]] bool knows_examiner(const model::ExaminerId& examiner, const PublicKey& pub) const;
  // On whatever device.
  [[nodiscard]] bool is_examiner(const model::ExaminerId& examiner) const;
  void set_row(const model::ObjectId& object, std::string row_json);
  // What was found wrong while opening: the chain is read up to there, and nothing is appended to a damaged own chain.
  [[nodiscard]] const std::vector<wire::Fault>& damage() const { return damage_; }
  // Writes the index beside the log; called when idle, on locking, and every few thousand entries.
  [[nodiscard]] Result<void> save_index();
  [[nodiscard]] bool index_is_old() const { return !identity_.sealed_to && unsaved_ >= index_every; }

 private:
  static constexpr std::size_t index_every = 4096;

  Log(LogStore& store, World& world, Identity identity);
  [[nodiscard]] Result<void> load(const RowMaker& make_row);
  [[nodiscard]] Result<void> load_chains(const Heads& heads, const RowMaker& make_row);
  void load_index(const Heads& heads);
  [[nodiscard]] Result<void> load_replica(const model::ReplicaId& replica, const std::vector<Head>& leaves);
  void adopt(const VerifiedEntry& entry);
  void adopt_key(const VerifiedEntry& entry);
  [[nodiscard]] Result<void> read_touched(const RowMaker& make_row);
  void note(const Opened& opened);
  struct Commit;
  [[nodiscard]] const ObjectKey& key_to_write(const NewOperation& operation, Commit& commit);
  [[nodiscard]] Result<model::Operation> describe(const NewOperation& wanted, std::size_t part, std::size_t of, const model::EditionId& edition,
                                                  const SignKey* examiner_key, Commit& commit);
  [[nodiscard]] Result<void> write_operation(const model::Operation& operation, const NewOperation& wanted, bool last, Commit& commit);
  [[nodiscard]] Result<void> open_sealed(Commit& commit);
  [[nodiscard]] Result<void> keep(Commit& commit);

  LogStore& store_;
  World& world_;
  Identity identity_;
  HybridClock clock_;
  Index index_;
  Joint joint_;                       // the end of the own chain
  std::optional<std::set<model::ObjectId>> caught_;  // while catching up: all that was touched
  std::set<model::ObjectId> touched_;  // of which entries or a key came, and whose operations are not noted yet
  std::vector<wire::Fault> damage_;
  std::size_t unsaved_ = 0;
};

// Damage found by going through everything: replica, sequence, entry and code of each.
struct Verification {
  struct Damage {
    model::ReplicaId replica;
    std::uint64_t seq = 0;
    std::optional<model::EntryId> entry;
    std::string code;
  };
  std::uint64_t entries = 0;
  std::uint64_t opened = 0;     // whose seals were opened too
  std::uint64_t other_kinds = 0;  // of a kind that only a newer edition knows: kept and passed on, not read
  std::size_t replicas = 0;
  std::vector<Damage> damage;
  std::vector<ListDamage> lists;   // of the store, by which entries are found
  std::vector<Head> vouched_to;  // the newest head of each replica that holds
};

// With a log (unlocked) every seal is opened as well. Without, chain and heads only. `mend`: a list of the store that leaves entries
// out is made anew from them.
[[nodiscard]] Result<Verification> verify_store(LogStore& store, const model::ClinicId& clinic, const Log* log, bool mend = false);

}  // namespace limbledger::ledger
