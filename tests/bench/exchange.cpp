// Two replicas of a clinic with 10,000 records, half of them written on each, brought together by one exchange: messages in process, as
// the peers have theirs; the hub on a thread of its own, as it is a machine of its own, so that it works while the tablet does. Beside it
// the same with each waiting for the other, on one thread. Timed until both stores have flushed all of it and the tablet has the hub's
// receipt for everything it wrote: both may be locked so far, as a hub is. What it takes besides until both logs have opened what came is
// printed beside it, since Automerge and Yjs hand over what can be read at once. Peers, in turns in the same run (tests/bench/node):
// PouchDB over LevelDB, Automerge at its best batching, Yjs; none of them seals, signs or waits for the disk, and the last two work in
// memory.
#include "core/ledger/exchange/session.hpp"
#include "core/ledger/trust/enrol.hpp"
#include "tests/bench/bench.hpp"
#include "tests/bench/node_program.hpp"

#include <array>
#include <condition_variable>
#include <mutex>
#include <thread>

namespace limbledger::bench {

namespace {

using namespace ledger;

constexpr int rounds = 5;
constexpr std::size_t exams_a_side = 100;
constexpr std::size_t operations_an_exam = 50;
constexpr std::size_t records = exams_a_side * operations_an_exam * 2;
constexpr std::size_t body_bytes = 300;

Secret32 secret_of(std::uint8_t byte) {
  std::array<std::uint8_t, 32> bytes{};
  bytes.fill(byte);
  return Secret32(bytes);
}

const SignKey& root_key() {
  static const SignKey key(secret_of(1));
  return key;
}
model::ClinicId the_clinic() { return clinic_of(root_key().pub()); }

class Replica {
 public:
  Replica(const std::string& path, std::uint8_t number) : number_(number), key_(secret_of(static_cast<std::uint8_t>(10 + number))) {
    device_.bytes.fill(number);
    examiner_.bytes.fill(number);
    store::SqliteOptions options;
    options.clinic = the_clinic();
    options.flush = store::Flush::full;
    options.begin_writing = rpc::writing_begins(path);
    store_ = need(store::SqliteStore::open(path, options), "open the store");
    Intro intro;
    intro.storage = Storage::disk;
    intro.box_pub = BoxPair::from_seed(secret_of(number)).pub();
    intro.device = device_;
    intro.program = "limbledger bench";
    Member own = member();
    need(begin_chain(own, intro), "begin");
    Identity identity{the_clinic(), key_, {}, BlobKey(secret_of(3))};
    identity.epochs.emplace(1, BoxPair(secret_of(2)));
    log_ = need(Log::open(*store_, world_, std::move(identity)), "log");
  }
  [[nodiscard]] Member member() { return {*store_, world_, the_clinic(), key_}; }

  // This one is the hub, and that one a tablet.
  void enrol(Replica& tablet) {
    need(tablet.store_->append({}, {}, {{std::string(hub_key_name), Bytes(key_.pub().begin(), key_.pub().end())}}), "hub's key");
    Member own = member();
    need(append_orders(own, root_key(),
                       std::vector<NewOrder>{{OrderKind::enrol, Enrol{replica(), device_, roles::write | roles::hub}.to_fields()},
                                             {OrderKind::enrol, Enrol{tablet.replica(), tablet.device_, roles::write}.to_fields()}}),
         "orders");
    catch_up();
  }
  void examine(std::size_t exam) {
    NewOperation opening;
    put_integer(opening.request.bytes.data(), number_, 8);
    put_integer(opening.request.bytes.data() + 8, exam + 1, 8);
    opening.object = log_->object_for(ObjectType::exam, opening.request, 0);
    opening.op = "exam";
    opening.by = examiner_;
    opening.body_json = R"({"complaint":"free","setting":"outreach"})";
    std::vector<NewOperation> operations{opening};
    for (std::size_t i = 1; i < operations_an_exam; ++i) {
      NewOperation finding = opening;
      finding.op = "finding";
      finding.body_json = R"({"finding":")" + log_->object_for(ObjectType::finding, opening.request, static_cast<std::uint16_t>(i)).to_text() +
                          R"(","observation":{"item":"knee.flexion_passive","side":"left","value":{"kind":"angle","deg":)" + std::to_string(60 + i) +
                          R"(,"toward":"flexion","toward_deg":)" + std::to_string(60 + i) + R"(},"remark":")";
      finding.body_json += std::string(body_bytes - 3 - finding.body_json.size(), 'x') + R"("}})";
      operations.push_back(std::move(finding));
    }
    static_cast<void>(need(log_->append(operations, model::EditionId{"facts.1"}, nullptr), "exam"));
  }
  void catch_up() { static_cast<void>(need(log_->catch_up(), "catch up")); }
  [[nodiscard]] model::ReplicaId replica() const { return replica_of(the_clinic(), key_.pub()); }
  [[nodiscard]] std::uint64_t entry_count() const { return log_->index().entry_count; }

  [[nodiscard]] bool has_receipt_for_all() {
    Member own = member();
    std::uint64_t written = 0;
    for (const Head& head : need(store_->heads(), "heads").newest) {
      written = head.replica == replica() ? head.seq : written;
    }
    const auto elsewhere = need(held_elsewhere(own), "receipts");
    return elsewhere.size() == 1 && elsewhere.front().held == written;
  }

 private:
  std::uint8_t number_;
  BenchWorld world_;
  SignKey key_;
  model::DeviceId device_;
  model::ExaminerId examiner_;
  std::unique_ptr<store::SqliteStore> store_;
  std::unique_ptr<Log> log_;
};

// One way between the two threads; nothing at the end of the exchange.
class Way {
 public:
  void put(std::optional<Bytes> message) {
    {
      const std::lock_guard lock(mutex_);
      message_ = std::move(message);
      is_there_ = true;
    }
    came_.notify_one();
  }
  [[nodiscard]] std::optional<Bytes> get() {
    std::unique_lock lock(mutex_);
    came_.wait(lock, [this] { return is_there_; });
    is_there_ = false;
    return std::move(message_);
  }

 private:
  std::mutex mutex_;
  std::condition_variable came_;
  std::optional<Bytes> message_;
  bool is_there_ = false;
};

Exchanged bring_together(Replica& tablet, Replica& hub) {
  Caller caller(tablet.member(), Exporter{});
  Way calls;
  Way answers;
  std::thread answering([&] {
    Answerer answerer(hub.member(), Exporter{});
    while (const auto message = calls.get()) {
      answers.put(need(answerer.answer(*message), "answer"));
    }
  });
  while (auto message = need(caller.next(), "message")) {
    calls.put(std::move(message));
    need(caller.take_in(), "take in");
    need(caller.put_aside(*answers.get()), "receive");
  }
  calls.put(std::nullopt);
  answering.join();
  return caller.exchanged();
}

Exchanged bring_together_in_turns(Replica& tablet, Replica& hub) {
  Caller caller(tablet.member(), Exporter{});
  Answerer answerer(hub.member(), Exporter{});
  while (const auto message = need(caller.next(), "message")) {
    need(caller.receive(need(answerer.answer(*message), "answer")), "receive");
  }
  return caller.exchanged();
}

struct Ours {
  double took = 0;
  double opening = 0;
  std::size_t bytes = 0;
};

Ours exchange_once(const std::string& folder, Exchanged (*bring)(Replica&, Replica&)) {
  Replica hub(folder + "/hub.sqlite", 1);
  Replica tablet(folder + "/tablet.sqlite", 2);
  hub.enrol(tablet);
  for (std::size_t exam = 0; exam < exams_a_side; ++exam) {
    hub.examine(exam);
    tablet.examine(exam);
  }
  Ours ours;
  ours.took = seconds([&] {
    const Exchanged done = bring(tablet, hub);
    ours.bytes = done.sent_size + done.got_size;
  });
  if (!tablet.has_receipt_for_all()) {
    std::fprintf(stderr, "no receipt for all of it\n");
    std::exit(1);
  }
  ours.opening = seconds([&] {
    tablet.catch_up();
    hub.catch_up();
  });
  if (tablet.entry_count() < records || hub.entry_count() < records) {
    std::fprintf(stderr, "not all of it came across\n");
    std::exit(1);
  }
  return ours;
}

double told(const std::string& answer) {
  const std::string both = "[" + std::to_string(records) + "," + std::to_string(records) + "]";
  if (answer.find(both) == std::string::npos) {
    std::fprintf(stderr, "a peer does not hold all of it: %s", answer.c_str());
    std::exit(1);
  }
  return std::stod(between(answer, "\"took\":", ","));
}

int run() {
  struct Peer {
    const char* name;
    double at_least;
    std::vector<double> took;
  };
  std::array<Peer, 3> peers{{{"pouchdb", 20, {}}, {"automerge", 4, {}}, {"yjs", 1, {}}}};
  std::vector<double> ours;
  std::vector<double> in_turns;
  std::vector<double> opened;
  std::size_t bytes = 0;
  const Folder all;
  NodeProgram node({"--expose-gc", LIMBLEDGER_SOURCE_DIR "/tests/bench/node/exchange_peers.mjs", all.path, std::to_string(records), std::to_string(body_bytes)});
  for (int round = 0; round < rounds; ++round) {
    const Folder folder;
    const Ours one = exchange_once(folder.path, bring_together);
    const Folder other;
    in_turns.push_back(exchange_once(other.path, bring_together_in_turns).took);
    ours.push_back(one.took);
    opened.push_back(one.took + one.opening);
    bytes = one.bytes;
    for (Peer& peer : peers) {
      peer.took.push_back(told(node.ask(peer.name)));
    }
  }
  std::printf("%zu records of %zu bytes: %.0f ms, %.0f records a second, %.0f bytes of messages a record; on one thread %.0f ms; with both logs opened %.0f ms\n", records,
              body_bytes, median(ours) * 1e3, static_cast<double>(records) / median(ours), static_cast<double>(bytes) / static_cast<double>(records), median(in_turns) * 1e3,
              median(opened) * 1e3);
  int passed = 0;
  for (const Peer& peer : peers) {
    const double ratio = median(peer.took) / median(ours);
    std::printf("%s: %.0f ms, %.2f x ours (at least %.0f x); %.2f x on one thread, %.2f x with both logs opened\n", peer.name, median(peer.took) * 1e3, ratio,
                peer.at_least, median(peer.took) / median(in_turns), median(peer.took) / median(opened));
    passed += ratio >= peer.at_least ? 1 : 0;
  }
  const int failed = static_cast<int>(peers.size()) - passed;
  std::printf("%d passed, %d failed\n", passed, failed);
  return failed == 0 ? 0 : 1;
}

}  // namespace

}  // namespace limbledger::bench

int main() {
  limbledger::store::SqliteStore::count_no_memory();  // as the program does
  return limbledger::bench::run();
}
