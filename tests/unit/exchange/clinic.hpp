// A clinic with a hub and tablets, each with a store, a chain and a log of its own, which exchange by the session's own messages: what
// the tests and the simulation of the exchange share. Nobody is invented but by numbers.
#pragma once

#include "core/ledger/exchange/session.hpp"
#include "core/ledger/fold/fold.hpp"
#include "core/ledger/log/log.hpp"
#include "core/ledger/trust/enrol.hpp"
#include "core/ledger/trust/witness.hpp"
#include "core/store/memory.hpp"
#include "tests/unit/ledger/support.hpp"
#include "tests/unit/service/desk_fixture.hpp"

#include <doctest/doctest.h>

#include <functional>
#include <memory>
#include <string>

namespace limbledger::ledger::exchange_test {

using test::code_of;
using test::secret_of;

inline const SignKey& root_key() {
  static const SignKey key(secret_of(1));
  return key;
}
inline model::ClinicId the_clinic() { return clinic_of(root_key().pub()); }

inline model::RequestId request_number(unsigned number) {
  model::RequestId request;
  REQUIRE(model::RequestId::from_text(service::test::request_id(number), request).empty());
  return request;
}

class Device {
 public:
  explicit Device(std::uint8_t number, Purpose purpose = Purpose::record, bool begins = true)
      : number_(number), world_(number), key_(secret_of(static_cast<std::uint8_t>(10 + number))), examiner_key_(secret_of(static_cast<std::uint8_t>(100 + number))) {
    device_.bytes.fill(number);
    examiner_.bytes.fill(number);
    if (begins) {
      Intro intro;
      intro.purpose = purpose;
      intro.storage = Storage::memory;
      intro.box_pub = BoxPair::from_seed(secret_of(number)).pub();
      intro.device = device_;
      intro.program = "limbledger test";
      Member own = member();
      REQUIRE(begin_chain(own, intro).has_value());
    }
    open();
  }
  // A copy of the whole device as it is now: its store and its keys.
  Device(const Device& other) : number_(other.number_), world_(other.number_), key_(other.key_), examiner_key_(other.examiner_key_), device_(other.device_), examiner_(other.examiner_), requests_(other.requests_ + 500) {
    copy_store(const_cast<Device&>(other).store_, store_);
    open();
  }
  Device& operator=(const Device&) = delete;

  [[nodiscard]] Member member() { return {store_, world_, the_clinic(), key_}; }
  [[nodiscard]] model::ReplicaId replica() const { return replica_of(the_clinic(), key_.pub()); }
  [[nodiscard]] const model::DeviceId& device() const { return device_; }
  [[nodiscard]] store::MemoryStore& store() { return store_; }
  [[nodiscard]] Log& log() { return *log_; }
  [[nodiscard]] service::test::FixedWorld& world() { return world_; }
  [[nodiscard]] const SignKey& key() const { return key_; }

  void open() {
    Identity identity{the_clinic(), key_, {}, BlobKey(secret_of(3))};
    identity.epochs.emplace(1, BoxPair(secret_of(2)));
    auto opened = Log::open(store_, world_, std::move(identity));
    REQUIRE(opened.has_value());
    log_ = std::move(*opened);
  }
  void catch_up() {
    const auto caught = log_->catch_up();
    REQUIRE_MESSAGE(caught.has_value(), (caught ? "" : code_of(caught.error())));
  }

  // The hub's first orders: itself as the hub, and these devices.
  void enrol(const std::vector<Device*>& others) {
    std::vector<NewOrder> orders{{OrderKind::enrol, Enrol{replica(), device_, roles::write | roles::hub}.to_fields()}};
    for (Device* other : others) {
      Meta meta;
      meta[std::string(hub_key_name)] = Bytes(key_.pub().begin(), key_.pub().end());
      REQUIRE(other->store_.append({}, {}, meta).has_value());
      orders.push_back({OrderKind::enrol, Enrol{other->replica(), other->device(), roles::write}.to_fields()});
    }
    Member own = member();
    REQUIRE(append_orders(own, root_key(), orders).has_value());
    catch_up();
  }

  // Opens an exam, or writes one more remark into it: one commit, of two entries where the exam is new here.
  Result<std::vector<Opened>> write(unsigned exam) {
    world_.pass(1000);
    NewOperation operation;
    operation.object = object_of(the_clinic(), ObjectType::exam, request_number(exam), 0);
    operation.op = "exam";
    operation.request = request_number(number_ * 10000U + ++requests_);
    operation.by = examiner_;
    operation.body_json = R"({"complaint":"free","setting":"outreach"})";
    return log_->append({&operation, 1}, model::EditionId{"facts.test"}, &examiner_key_);
  }
  void write_some(unsigned exam, unsigned count) {
    for (unsigned i = 0; i < count; ++i) {
      REQUIRE(write(exam).has_value());
    }
  }

  [[nodiscard]] Hash have() { return have_digest(*leaves_of(store_)); }
  [[nodiscard]] std::uint64_t seq_of(const model::ReplicaId& replica) {
    std::uint64_t out = 0;
    const auto leaves = leaves_of(store_);
    for (const Place& leaf : *leaves) {
      out = leaf.replica == replica ? std::max(out, leaf.seq) : out;
    }
    return out;
  }
  [[nodiscard]] std::uint64_t own_seq() { return seq_of(replica()); }
  // What the folds of all objects say, in one hash (ledger-format, section 15).
  [[nodiscard]] Hash said() {
    ByteWriter all;
    for (const auto& [object, known] : log_->index().objects) {
      const auto operations = log_->operations(object);
      REQUIRE(operations.has_value());
      all.raw(state_digest(object, *operations));
    }
    return hash256(all.view());
  }
  [[nodiscard]] std::uint64_t held_at(const Device& holder) {
    Member own = member();
    const auto elsewhere = held_elsewhere(own);
    REQUIRE(elsewhere.has_value());
    for (const HeldElsewhere& one : *elsewhere) {
      if (one.holder == holder.replica()) {
        return one.held;
      }
    }
    return 0;
  }

  static void copy_store(store::MemoryStore& from, store::MemoryStore& to) {
    const auto heads = from.heads();
    for (const Head& head : heads->newest) {
      const auto rows = from.read(head.replica, 1, head.seq, 1000000);
      REQUIRE(to.append(*rows, {}, {}).has_value());
    }
    REQUIRE(to.append({}, heads->kept, heads->meta).has_value());
  }

 private:
  std::uint8_t number_;
  store::MemoryStore store_;
  service::test::FixedWorld world_;
  SignKey key_;
  SignKey examiner_key_;
  model::DeviceId device_;
  model::ExaminerId examiner_;
  std::unique_ptr<Log> log_;
  unsigned requests_ = 0;
};

inline Exporter exporter_of(std::uint8_t byte) { return test::filled<32>(byte); }

// One exchange; `cut_after` messages it breaks off, with the answer of the last one lost. `taken` after each answer that the caller has read.
inline Result<Exchanged> exchange_as(const Member& calls, Device& answers, const std::function<void()>& taken = [] {}, std::size_t cut_after = SIZE_MAX, std::size_t budget = message_budget) {
  Caller caller(calls, exporter_of(7), budget);
  Answerer answerer(answers.member(), exporter_of(7), budget);
  std::size_t calls_made = 0;
  while (true) {
    const auto message = caller.next();
    if (!message) {
      return message.error();
    }
    if (!*message) {
      break;
    }
    REQUIRE(++calls_made < 1000);
    const auto answer = answerer.answer(**message);
    answers.catch_up();
    if (!answer && caller.shows_more(code_of(answer.error()))) {
      continue;
    }
    if (!answer) {
      return answer.error();
    }
    if (calls_made > cut_after) {
      break;
    }
    const auto received = caller.receive(*answer);
    taken();
    if (!received) {
      return received.error();
    }
  }
  return caller.exchanged();
}

inline Result<Exchanged> exchange(Device& calls, Device& answers, std::size_t cut_after = SIZE_MAX, std::size_t budget = message_budget) {
  return exchange_as(calls.member(), answers, [&] { calls.catch_up(); }, cut_after, budget);
}

}  // namespace limbledger::ledger::exchange_test
