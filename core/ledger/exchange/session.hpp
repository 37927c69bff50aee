// An exchange between two replicas of one clinic without a transport: bytes out, bytes in. One side calls, the other answers
// each call by itself; HTTPS carries one message a request. Cut anywhere, it starts anew from HELLO, and what was taken stays
// taken; with nothing new it is HELLO and SAME alone. Both work on the store of a locked ledger; a log that is open on it catches
// up afterwards. A receiver commits what comes without waiting for the disk; before it gives of it, signs a receipt, says what it holds
// (HELLO, SAME) or calls the exchange over, one flush covers all of it. Source: ledger, items 21 to 25; contract, section 9 (compare, offer, take).
#pragma once

#include "core/ledger/exchange/message.hpp"
#include "core/ledger/exchange/receipt.hpp"
#include "core/ledger/exchange/take.hpp"

#include <optional>
#include <set>
#include <vector>

namespace limbledger::ledger {

// Runs of about this size a message, so that whoever answers others meanwhile does so between two; a single run may be longer, up to
// the next kept head.
constexpr std::size_t message_budget = std::size_t{256} << 10U;

struct Exchanged {
  model::ReplicaId peer;
  Taken taken;                          // here
  std::uint64_t given = 0;              // entries that were new there
  std::uint64_t waiting_there = 0;      // entries that the other put aside
  std::size_t messages = 0;             // calls made
  std::size_t sent_size = 0, got_size = 0;  // bytes of all messages
  bool is_same = false;                 // at the end both hold the same
};

class Caller {
 public:
  Caller(Member member, const Exporter& exporter, std::size_t budget = message_budget);

  // What to send; nothing when the exchange is over. The same again until its answer was received.
  [[nodiscard]] Result<std::optional<Bytes>> next();
  // The answer to it. After a fault the exchange is over; what was taken before stays.
  [[nodiscard]] Result<void> receive(View answer);
  // Instead of `receive`, so that both sides work at once: entries that came are put aside, and `next` first gives of the own chain what
  // can go without them. `take_in` takes them while that call is under way; where nothing goes before them, `next` does. Fault as `receive`.
  [[nodiscard]] Result<void> put_aside(Bytes answer);
  [[nodiscard]] Result<void> take_in();
  // It was refused instead. True: `next` gives another call. There is more that this side can show of itself (whom it was once introduced
  // to may have been put back to an older copy, or it was another), or something was given ahead. False: the exchange is over.
  [[nodiscard]] bool shows_more(std::string_view code);

  [[nodiscard]] const Exchanged& exchanged() const { return out_; }

 private:
  enum class Step : std::uint8_t { hello, ask, give, over };

  [[nodiscard]] Result<std::optional<Bytes>> make();
  [[nodiscard]] Result<Bytes> make_hello();
  [[nodiscard]] Result<void> add_introduction(Hello& hello);
  [[nodiscard]] Result<std::optional<Bytes>> make_ask();
  [[nodiscard]] Result<std::optional<Bytes>> make_take();
  [[nodiscard]] Result<std::optional<Bytes>> make_take_ahead();
  [[nodiscard]] Bytes take_of(Sending sending, bool is_last);
  [[nodiscard]] Result<void> receive_same(View answer);
  [[nodiscard]] Result<void> receive_runs(View answer);
  [[nodiscard]] Result<void> receive_receipt(View answer);
  [[nodiscard]] Result<void> compare();
  [[nodiscard]] Result<bool> needs_receipt();
  [[nodiscard]] Result<void> know_peer(const Same& same);

  Member member_;
  Exporter exporter_;
  std::size_t budget_;
  Step step_ = Step::hello;
  std::optional<Bytes> waiting_for_answer_;
  std::optional<Bytes> aside_;           // RUNS that came and are not taken yet
  bool gives_ahead_ = true;
  std::vector<HaveRow> theirs_;          // leaves of the other, as far as it told
  std::set<model::ReplicaId> asked_;     // by the last ASK
  std::set<model::ReplicaId> given_up_;  // chains whose missing entries the other could not give
  std::size_t rounds_ = 0;
  bool shows_all_ = false;               // of itself, in the hello
  std::vector<HaveRow> sent_;            // ends of the runs of the last TAKE
  bool has_sent_last_ = false;
  bool owes_last_ = false;      // a TAKE that was not the last: the one with the receipt must follow
  bool gives_no_more_ = false;
  bool has_given_ = false;
  Exchanged out_;
};

class Answerer {
 public:
  Answerer(Member member, const Exporter& exporter, std::size_t budget = message_budget);

  // Faults: exchange.message (not a message, or not the one that may come now), exchange.foreign, exchange.purpose, replica.unknown,
  // replica.revoked, entry.* for bytes that do not hold, and the store's own.
  [[nodiscard]] Result<Bytes> answer(View message);

  // Who called; known after its HELLO.
  [[nodiscard]] const std::optional<model::ReplicaId>& caller() const { return caller_; }
  [[nodiscard]] const Taken& taken() const { return taken_; }

 private:
  [[nodiscard]] Result<Bytes> answer_hello(View message);
  [[nodiscard]] Result<Bytes> answer_ask(View message);
  [[nodiscard]] Result<Bytes> answer_take(View message);

  Member member_;
  Exporter exporter_;
  std::size_t budget_;
  std::optional<model::ReplicaId> caller_;
  model::DeviceId device_;
  Taken taken_;
};

// All chains held, those with orders first: what comes after them is then enrolled where it arrives.
[[nodiscard]] Result<std::vector<model::ReplicaId>> chains_to_give(LogStore& store);

// A hub writes down the heads it holds, where they are others than at its last witness; other replicas write nothing.
[[nodiscard]] Result<void> witness_if_hub(Member& member);

}  // namespace limbledger::ledger
