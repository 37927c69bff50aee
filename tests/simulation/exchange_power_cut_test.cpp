// The power goes at every write and flush of an exchange, on either side: what a side had said by then that it holds, or had given on,
// is there when the power comes back, its own chain goes on without a fork, and the next exchange brings both together. The same with a
// disk that says yes to a flush that was put off, and has not done it, must fail.
#include "core/store/sqlite.hpp"
#include "tests/simulation/power_cut_vfs.hpp"
#include "tests/unit/exchange/clinic.hpp"

#include <deque>

namespace limbledger::ledger::exchange_test {

namespace {

using limbledger::simulation::PowerCutDisk;
using limbledger::store::SqliteStore;

constexpr std::size_t small_budget = 1000;  // a message for each chain
constexpr std::size_t chain_count = 7;

class Unfinished final : public LogStore {
 public:
  explicit Unfinished(LogStore& kept) : kept_(kept) {}
  Result<void> append(std::span<const Row> rows, std::span<const Head> heads, const Meta& meta) override { return kept_.append(rows, heads, meta); }
  void put_off_flush(bool is_put_off) override { kept_.put_off_flush(is_put_off); }
  Result<void> flush() override { return {}; }
  Result<std::vector<Row>> read(const model::ReplicaId& replica, std::uint64_t from, std::uint64_t to, std::size_t limit) override {
    return kept_.read(replica, from, to, limit);
  }
  Result<std::vector<Row>> read_kid(const model::KeyId& kid) override { return kept_.read_kid(kid); }
  Result<Heads> heads() override { return kept_.heads(); }
  Result<void> drop_bodies(std::span<const model::EntryId> entries, RowState state) override { return kept_.drop_bodies(entries, state); }
  Result<std::vector<Row>> park(std::span<const Row> rows) override { return kept_.park(rows); }
  [[nodiscard]] Durability durability() const override { return Durability::disk; }

 private:
  LogStore& kept_;
};

// A device whose ledger is a file on a disk that may lose its power.
class OnDisk {
 public:
  OnDisk(Device& of, std::uint64_t seed, bool finishes) : of_(of), finishes_(finishes), disk_(seed) {
    options_.clinic = the_clinic();
    options_.vfs = disk_.vfs_name();
    options_.checkpoint_pages = seed % 2 == 0 ? 12 : 1000;
    open();
    const auto heads = of.store().heads();
    for (const Head& head : heads->newest) {
      REQUIRE(store_->append(*of.store().read(head.replica, 1, head.seq, 1000000), {}, {}).has_value());
    }
    REQUIRE(store_->append({}, heads->kept, heads->meta).has_value());
    said_ = *leaves_of(*store_);
  }

  [[nodiscard]] PowerCutDisk& disk() { return disk_; }
  [[nodiscard]] LogStore& store() { return finishes_ ? static_cast<LogStore&>(*store_) : unfinished_.value(); }
  [[nodiscard]] Member member() { return {store(), of_.world(), the_clinic(), of_.key()}; }

  // It has given what ends there.
  void has_given(View message, MessageKind kind) {
    if (const auto given = Runs::from_bytes(message, kind); given && !disk_.is_cut()) {
      for (const Run& run : given->runs) {
        said_.push_back({run.replica, run.head.seq, run.head.hash});
      }
    }
  }
  // What it holds now, it has said that it holds.
  void has_said() {
    if (const auto leaves = leaves_of(*store_); leaves && !disk_.is_cut()) {
      said_ = *leaves;
    }
  }
  // One entry of its own, acknowledged.
  void write() {
    Member own = member();
    if (append_plain(own, {{Kind::witness, [this](const Position&) { return WitnessBody{said_}.to_bytes(); }}})) {
      has_said();
    }
  }
  // Empty, or what is wrong after the power came back.
  [[nodiscard]] std::string restart() {
    unfinished_.reset();
    store_.reset();
    disk_.restart();
    open();
    if (const auto lists = store_->check_lists(false); !lists || !lists->empty()) {
      return "its lists do not agree";
    }
    for (const Place& place : said_) {
      if (const auto held = holds(*store_, have_row(place)); !held || !*held) {
        return "it does not hold what it has said that it holds";
      }
    }
    if (!verify_store(*store_, the_clinic(), nullptr)->damage.empty()) {
      return "it does not verify";
    }
    return "";
  }

 private:
  void open() {
    auto opened = SqliteStore::open("ledger", options_);
    REQUIRE(opened.has_value());
    store_ = std::move(*opened);
    unfinished_.emplace(*store_);
  }

  Device& of_;
  bool finishes_;
  PowerCutDisk disk_;
  store::SqliteOptions options_;
  std::unique_ptr<SqliteStore> store_;
  std::optional<Unfinished> unfinished_;
  std::vector<Place> said_;
};

// A message by which its sender says what it holds, or gives of it.
void note_told(OnDisk& sender, View message) {
  const auto kind = message_kind(message);
  if (kind == MessageKind::runs || kind == MessageKind::take) {
    sender.has_given(message, *kind);
  } else if (kind != MessageKind::ask && (kind != MessageKind::receipt || message.size() > 17)) {
    sender.has_said();
  }
}

// Until it is over, or `messages` were answered, or somebody fails. `beside`: after that many, the one on the disk records something.
void talk(Member calls, Member answers, OnDisk& watched, bool watches_caller, bool works_meanwhile, std::size_t messages, std::size_t beside) {
  Caller caller(calls, exporter_of(7), small_budget);
  Answerer answerer(answers, exporter_of(7), small_budget);
  for (std::size_t i = 0; i < messages; ++i) {
    const auto message = caller.next();
    if (!message || !*message) {
      if (message && watches_caller) {
        watched.has_said();  // that it is over
      }
      return;
    }
    if (watches_caller) {
      note_told(watched, **message);
    }
    if (i == beside) {
      watched.write();
    }
    if (works_meanwhile && !caller.take_in()) {
      return;
    }
    const auto answer = answerer.answer(**message);
    if (!answer) {
      return;
    }
    if (!watches_caller) {
      note_told(watched, *answer);
    }
    if (const auto received = works_meanwhile ? caller.put_aside(*answer) : caller.receive(*answer); !received) {
      return;
    }
  }
}

struct CutExchanges {
  std::uint64_t cuts = 0;
  std::uint64_t lost_pieces = 0;
  std::uint64_t failures = 0;
  std::string first;
};

std::string cut_once(const Device& first_hub, const Device& first_tablet, std::uint64_t cut, bool cuts_hub, bool works_meanwhile, bool finishes, CutExchanges& out, bool& is_cut) {
  Device hub(first_hub);
  Device tablet(first_tablet);
  OnDisk watched(cuts_hub ? hub : tablet, 7000 + cut, finishes);
  const auto meet = [&](std::size_t messages, std::size_t beside) {
    talk(cuts_hub ? tablet.member() : watched.member(), cuts_hub ? watched.member() : hub.member(), watched, !cuts_hub, works_meanwhile, messages, beside);
  };
  watched.disk().cut_at(cut);
  meet(cuts_hub ? 7 : 3, SIZE_MAX);  // breaks off in the middle of what is taken
  meet(SIZE_MAX, cut % 2 == 0 ? 2 : SIZE_MAX);
  is_cut = watched.disk().is_cut();
  if (const std::string wrong = watched.restart(); !wrong.empty()) {
    return wrong;
  }
  out.lost_pieces += watched.disk().lost_piece_count();
  watched.write();
  meet(SIZE_MAX, SIZE_MAX);
  Device& other = cuts_hub ? tablet : hub;
  const auto here = leaves_of(watched.store());
  if (have_digest(*here) != other.have()) {
    return "they do not hold the same afterwards";
  }
  return here->size() == chain_count ? "" : "a chain is forked";
}

CutExchanges cut_everywhere(bool cuts_hub, bool works_meanwhile, bool finishes) {
  // What others wrote came to the hub, or by the tablet: each of the two has several chains to give.
  Device hub(1);
  Device tablet(2);
  std::deque<Device> others;
  std::vector<Device*> all{&tablet};
  for (std::uint8_t number = 3; number <= chain_count; ++number) {
    all.push_back(&others.emplace_back(number));
  }
  hub.enrol(all);
  for (Device* one : all) {
    REQUIRE(exchange(*one, hub).has_value());
  }
  REQUIRE(exchange(tablet, hub).has_value());  // knows the others now
  for (Device* one : all) {
    one->write_some(60, 5);
  }
  hub.write_some(61, 5);
  for (std::size_t i = 0; i < others.size(); ++i) {
    REQUIRE(exchange(others[i], i % 2 == 0 ? hub : tablet).has_value());
  }
  CutExchanges out;
  for (bool is_cut = true; is_cut; ++out.cuts) {
    const std::string wrong = cut_once(hub, tablet, out.cuts, cuts_hub, works_meanwhile, finishes, out, is_cut);
    if (!wrong.empty()) {
      ++out.failures;
      out.first = out.first.empty() ? "cut " + std::to_string(out.cuts) + ": " + wrong : out.first;
    }
  }
  return out;
}

}  // namespace

TEST_CASE("the power goes at any moment of an exchange: what was said to be held, or given on, is there, and nobody's chain is forked") {
  for (const bool cuts_hub : {true, false}) {
    for (const bool works_meanwhile : {false, true}) {
      CAPTURE(cuts_hub);
      CAPTURE(works_meanwhile);
      const CutExchanges outcome = cut_everywhere(cuts_hub, works_meanwhile, true);
      INFO(outcome.first);
      CHECK(outcome.failures == 0);
      CHECK(outcome.cuts > 40);
      CHECK(outcome.lost_pieces > outcome.cuts);
      MESSAGE(std::string(cuts_hub ? "hub: " : "tablet: ") << outcome.cuts << " cuts");
    }
  }
}

TEST_CASE("the same cuts, where a flush that was put off is answered and not done, lose what was said to be held") {
  for (const bool cuts_hub : {true, false}) {
    for (const bool works_meanwhile : {false, true}) {
      CAPTURE(cuts_hub);
      CAPTURE(works_meanwhile);
      const CutExchanges outcome = cut_everywhere(cuts_hub, works_meanwhile, false);
      CHECK(outcome.failures > 0);
      MESSAGE(std::string(cuts_hub ? "hub: " : "tablet: ") << outcome.failures << " of " << outcome.cuts << ", " << outcome.first);
    }
  }
}

}  // namespace limbledger::ledger::exchange_test
