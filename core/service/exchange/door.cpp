#include "core/service/exchange/door.hpp"

#include "core/ledger/log/log.hpp"
#include "core/ledger/parcel/carry.hpp"
#include "core/service/exchange/door_inside.hpp"

#include <algorithm>

namespace limbledger::service {

namespace {

void note_taken(ExchangeState& state, const ledger::Taken& taken) {
  state.taken = taken.entries;
  state.waiting = taken.parked;
  state.turned_away = taken.turned_away;
  state.was_restored = taken.own_came_back;
}

class DoorAnswering final : public Answering {
 public:
  DoorAnswering(Desk& desk, const ledger::Member& member, const Exporter& exporter) : desk_(desk), answerer_(member, exporter) {}

  Result<ledger::Bytes> answer(std::span<const std::uint8_t> message) override {
    ++state_.calls;
    state_.bytes_got += message.size();
    auto out = answerer_.answer(message);
    // Also after a fault: part of it may be there.
    if (auto read = desk_.catch_up(); !read && out) {
      return read.error();
    }
    state_.bytes_sent += out ? out->size() : 0;
    return out;
  }
  bool knows_caller() const override { return answerer_.caller().has_value(); }
  ExchangeState state() const override {
    ExchangeState out = state_;
    note_taken(out, answerer_.taken());
    if (answerer_.caller()) {
      out.peer = *answerer_.caller();
    }
    return out;
  }

 private:
  Desk& desk_;
  ledger::Answerer answerer_;
  ExchangeState state_;
};

class DoorCalling final : public Calling {
 public:
  DoorCalling(Desk& desk, const ledger::Member& member, const Exporter& exporter) : desk_(desk), caller_(member, exporter) {}

  Result<std::optional<ledger::Bytes>> next() override {
    auto out = caller_.next();
    if (auto read = read_on({}); !read && out) {
      return read.error();
    }
    return out;
  }
  Result<void> receive(ledger::Bytes answer) override { return read_on(caller_.put_aside(std::move(answer))); }
  Result<void> take_in() override { return read_on(caller_.take_in()); }
  bool shows_more(std::string_view code) override { return caller_.shows_more(code); }
  ExchangeState state() const override {
    const ledger::Exchanged& done = caller_.exchanged();
    ExchangeState out;
    note_taken(out, done.taken);
    out.peer = done.peer;
    out.given = done.given;
    out.waiting_there = done.waiting_there;
    out.calls = done.messages;
    out.bytes_sent = done.sent_size;
    out.bytes_got = done.got_size;
    out.is_same = done.is_same;
    return out;
  }

 private:
  // Also after a fault: part of it may be there.
  Result<void> read_on(Result<void> done) {
    auto read = desk_.catch_up();
    return done ? read : done;
  }

  Desk& desk_;
  ledger::Caller caller_;
};

class DoorParcelOut final : public ParcelOut {
 public:
  DoorParcelOut(Desk& desk, ledger::ParcelWriting writing) : desk_(desk), writing_(std::move(writing)) {}

  Result<ledger::Bytes> next() override { return desk_.locked() ? Result<ledger::Bytes>(wire::Fault{"ledger.locked", ""}) : writing_.next(); }
  WrittenParcel written() const override { return {writing_.written().entries, writing_.written().runs, writing_.written().size}; }

 private:
  Desk& desk_;
  ledger::ParcelWriting writing_;
};

class DoorParcelIn final : public ParcelIn {
 public:
  DoorParcelIn(Desk& desk, ledger::Member member, bool cut_too, bool takes)
      : desk_(desk), epochs_(desk.log().identity().epochs), taking_(member, epochs_, cut_too, takes) {}

  Result<ParcelWants> feed(std::span<const std::uint8_t> piece) override {
    if (desk_.locked()) {
      return wire::Fault{"ledger.locked", ""};
    }
    const auto fed = taking_.feed(piece);
    // Also after a fault: part of it may be there.
    const auto read = desk_.catch_up();
    if (!fed || !read) {
      return fed ? read.error() : fed.error();
    }
    return *fed == ledger::ParcelTaking::Wants::more ? ParcelWants::more : *fed == ledger::ParcelTaking::Wants::from_start ? ParcelWants::from_start : ParcelWants::nothing;
  }
  std::uint64_t looked_at() const override { return taking_.looked_at(); }
  TakenParcel taken() const override {
    const ledger::ParcelTaken& done = taking_.taken();
    return {done.entries, done.taken.entries, done.taken.known, done.taken.parked, done.taken.turned_away, done.is_whole, done.taken.own_came_back, done.after_end};
  }
  WrittenParcel seen() const override { return {taking_.taken().entries, taking_.taken().runs, 0}; }

 private:
  Desk& desk_;
  std::map<std::uint32_t, ledger::BoxPair> epochs_;
  ledger::ParcelTaking taking_;
};

std::string_view word_of(ledger::ReceiptLevel level) {
  switch (level) {
    case ledger::ReceiptLevel::opened:
      return "opened";
    case ledger::ReceiptLevel::witnessed:
      return "witnessed";
    case ledger::ReceiptLevel::held:
      break;
  }
  return "held";
}

}  // namespace

ExchangeDoor::ExchangeDoor(std::unique_ptr<Inside> inside) : inside_(std::move(inside)) {}

ExchangeDoor::~ExchangeDoor() = default;

Result<std::unique_ptr<ExchangeDoor>> ExchangeDoor::open(Desk& desk) {
  if (desk.locked()) {
    return wire::Fault{"ledger.locked", "", "a ledger that was unlocked once since the start"};
  }
  return std::unique_ptr<ExchangeDoor>(new ExchangeDoor(std::make_unique<Inside>(desk, desk.log().identity().device_key)));
}

const DeviceKey& ExchangeDoor::key() const { return inside_->key.pub(); }

model::ReplicaId ExchangeDoor::replica() const { return inside_->member().replica(); }

void ExchangeDoor::with_seed(const std::function<void(std::span<const std::uint8_t, 32>)>& use) const {
  const ledger::Secret32 seed = inside_->key.seed();
  use(std::span<const std::uint8_t, 32>(seed.data(), 32));
}

Result<std::optional<DeviceKey>> ExchangeDoor::hub_key() const {
  const auto heads = inside_->desk.store().heads();
  if (!heads) {
    return heads.error();
  }
  std::optional<DeviceKey> out;
  const auto found = heads->meta.find(std::string(ledger::hub_key_name));
  if (found != heads->meta.end() && found->second.size() == 32) {
    std::copy(found->second.begin(), found->second.end(), out.emplace().begin());
  }
  return out;
}

Result<bool> ExchangeDoor::is_hub() const {
  const ledger::Member member = inside_->member();
  const auto trust = ledger::stored_trust(member.store, member.clinic);
  if (!trust) {
    return trust.error();
  }
  const auto find = [&member](const model::ReplicaId& replica) { return ledger::stored_intro(member.store, member.clinic, replica); };
  return (ledger::roles_of_replica(*trust, member.clinic, member.replica(), find) & ledger::roles::hub) != 0;
}

Result<void> ExchangeDoor::finish() { return inside_->desk.flush(); }

std::unique_ptr<Answering> ExchangeDoor::answering(const Exporter& exporter) {
  return std::make_unique<DoorAnswering>(inside_->desk, inside_->member(), exporter);
}

std::unique_ptr<Calling> ExchangeDoor::calling(const Exporter& exporter) {
  return std::make_unique<DoorCalling>(inside_->desk, inside_->member(), exporter);
}

Result<std::unique_ptr<ParcelOut>> ExchangeDoor::parcel_out(const std::optional<model::ReplicaId>& holder) {
  if (inside_->desk.locked() || inside_->desk.log().identity().epochs.empty()) {
    return wire::Fault{"ledger.locked", ""};
  }
  const auto newest = inside_->desk.log().identity().epochs.rbegin();
  ledger::Member member = inside_->member();
  auto writing = ledger::ParcelWriting::begin(member, newest->first, newest->second.pub(), holder);
  if (!writing) {
    return writing.error();
  }
  return std::unique_ptr<ParcelOut>(std::make_unique<DoorParcelOut>(inside_->desk, std::move(*writing)));
}

Result<std::unique_ptr<ParcelIn>> ExchangeDoor::parcel_in(bool cut_too, bool takes) {
  if (inside_->desk.locked()) {
    return wire::Fault{"ledger.locked", ""};
  }
  return std::unique_ptr<ParcelIn>(std::make_unique<DoorParcelIn>(inside_->desk, inside_->member(), cut_too, takes));
}

Result<std::vector<HeldBy>> ExchangeDoor::held_elsewhere() {
  ledger::Member member = inside_->member();
  const auto known = ledger::held_elsewhere(member);
  if (!known) {
    return known.error();
  }
  std::vector<HeldBy> out;
  for (const ledger::HeldElsewhere& one : *known) {
    out.push_back({one.holder, one.held, one.not_held, std::string(word_of(one.level)), one.wall_ms});
  }
  return out;
}

Result<std::vector<WaitingRun>> ExchangeDoor::waiting() {
  const auto runs = ledger::waiting(inside_->desk.store());
  if (!runs) {
    return runs.error();
  }
  std::vector<WaitingRun> out;
  for (const ledger::Waiting& one : *runs) {
    out.push_back({one.replica, one.first, one.entries, one.held_to});
  }
  return out;
}

}  // namespace limbledger::service
