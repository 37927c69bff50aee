#include "tests/simulation/clinic/day.hpp"

#include "core/ledger/trust/enrol.hpp"

namespace limbledger::ledger::clinic_sim {

Day::Day(std::uint64_t seed, Planted planted, Counts& counts) : planted_(planted), dice_(seed), counts_(counts), people_(planted, seed * 2 + 1) {
  // Three to twelve, more often few: the rest comes from clones.
  const std::size_t replicas = 3 + std::min(dice_.roll(9), dice_.roll(9));
  // One tablet in some clinics on a real file, on a disk that tears.
  const std::size_t on_file = planted == Planted::none && dice_.one_in(4) ? 1 : replicas;
  std::vector<NewOrder> orders;
  for (std::size_t i = 0; i < replicas; ++i) {
    Seat seat;
    seat.device = std::make_unique<Device>(i, planted, next_seed(), i == on_file);
    orders.push_back({OrderKind::enrol, Enrol{seat.device->replica(), seat.device->device, i == 0 ? std::uint16_t(roles::write | roles::hub) : roles::write}.to_fields()});
    seats_.push_back(std::move(seat));
  }
  Member hub = seats_.front().device->member();
  if (!append_orders(hub, root_key(), orders)) {
    throw Complaint{"refused", "the hub's first orders"};
  }
  Meta meta;
  meta[std::string(hub_key_name)] = Bytes(hub.device_key.pub().begin(), hub.device_key.pub().end());
  for (Seat& seat : seats_) {
    if (&seat != &seats_.front()) {
      (void)seat.device->disk->append({}, {}, meta);
    }
    seat.device->catch_up();
    jump_clock(*seat.device);
  }
  islands_.assign(seats_.size(), 0);
  people_.begin_day(seats_.front());
  // In the morning most fetch whom the clinic has enrolled, and what lies open from the day before.
  for (std::size_t i = 1; i < seats_.size(); ++i) {
    if (!dice_.one_in(6)) {
      meet(i, 0, false);
    }
  }
  for (Seat& seat : seats_) {
    seat.device->disk->keep();
  }
  ++counts_.days;
}

void Day::pass() {
  const std::size_t steps = 10 * seats_.size() + dice_.roll(60);
  for (std::size_t i = 0; i < steps; ++i) {
    happen();
    settle_forks();
  }
}

// Devices whose chain has ended go on under new ones, and all is done once more with what is there.
void Day::pass_the_next() {
  for (Seat& seat : seats_) {
    if (seat.device->has_ended()) {
      ++counts_.heirs;
      seat.device->go_on_as_heir();
    }
  }
  sticks_.clear();
  pass();
}

void Day::happen() {
  const std::uint64_t what = dice_.roll(100);
  if (what < 58) {
    people_.work(some_seat());
  } else if (what < 74) {
    const std::size_t a = dice_.roll(seats_.size());
    const std::size_t b = dice_.one_in(2) ? 0 : dice_.roll(seats_.size());
    if (can_meet(a, b)) {
      meet(a, b, true);
    }
  } else if (what < 78) {
    write_stick(some_seat());
  } else if (what < 82) {
    read_stick(some_seat(), true);
  } else {
    mishap();
  }
}

Bytes Day::carry(const Bytes& message, const Device& from) const {
  if (planted_ != Planted::own_chain_only) {
    return message;
  }
  const auto kind = message_kind(message);
  if (kind != MessageKind::runs && kind != MessageKind::take) {
    return message;
  }
  auto runs = Runs::from_bytes(message, *kind);
  if (!runs) {
    return message;
  }
  std::erase_if(runs->runs, [&from](const Run& run) { return run.replica != from.replica(); });
  return runs->to_bytes();
}

void Day::meet(std::size_t a, std::size_t b, bool is_rough) {
  Device& calls = *seats_[a].device;
  Device& answers = *seats_[b].device;
  if (calls.is_dark() || answers.is_dark()) {
    return;
  }
  ++counts_.exchanges;
  Exporter exporter{};
  put_integer(exporter.data(), next_seed(), 8);
  const std::size_t budget = is_rough && dice_.one_in(2) ? 1 + dice_.roll(4000) : message_budget;
  Caller caller(calls.member(), exporter, budget);
  Answerer answerer(answers.member(), exporter, budget);
  const bool works_meanwhile = (exporter[0] & 1U) != 0;
  // Of a message sent anew on another connection the other knows nothing: it is answered out of order, or too late.
  std::optional<Bytes> late;
  bool is_spoiled = false;
  const auto check = [&](const wire::Refusal& refusal) {
    const std::string& code = refusal.faults.front().code;
    const bool may = is_spoiled || calls.is_dark() || answers.is_dark() || (is_rough && code == "replica.unknown");
    if (!may) {
      throw Complaint{"diverged", "devices " + std::to_string(calls.number) + " and " + std::to_string(answers.number) + " cannot exchange: " + code};
    }
  };
  for (std::size_t count = 0; count < 2000; ++count) {
    const auto message = caller.next();
    if (!message) {
      check(message.error());
      break;
    }
    if (!*message) {
      break;
    }
    ++counts_.messages;
    const Bytes sent = carry(**message, calls);
    if (works_meanwhile) {
      if (const auto taken = caller.take_in(); !taken) {
        check(taken.error());
        break;
      }
    }
    const std::uint64_t fate = is_rough ? dice_.roll(40) : 39;
    if (fate == 0) {
      ++counts_.spoiled;
      break;  // it never arrives
    }
    if (fate == 1) {
      is_spoiled = true;
      ++counts_.spoiled;
      (void)answerer.answer(View(sent).first(dice_.roll(sent.size())));
      break;
    }
    if (fate == 2) {
      // Twice: the first answer is on its way when the second is made.
      ++counts_.spoiled;
      if (const auto first = answerer.answer(sent)) {
        late = *first;
      }
    }
    auto answer = answerer.answer(sent);
    if (!answer && caller.shows_more(answer.error().faults.front().code)) {
      continue;
    }
    if (!answer) {
      check(answer.error());
      break;
    }
    if (fate == 3) {
      ++counts_.spoiled;
      continue;  // the answer is lost, and the same is sent again
    }
    if (fate == 4) {
      is_spoiled = true;
      ++counts_.spoiled;
      answer->resize(dice_.roll(answer->size()));
    } else if (fate == 2 && late) {
      answer->swap(*late);
    } else if (fate == 5 && late) {
      is_spoiled = true;
      answer = *late;  // an answer to something else
    }
    late = *answer;
    const auto received = works_meanwhile ? caller.put_aside(carry(*answer, answers)) : caller.receive(carry(*answer, answers));
    if (!received) {
      check(received.error());
      break;
    }
    if (is_rough && dice_.one_in(6)) {
      calls.catch_up();
      answers.catch_up();
      people_.work(dice_.one_in(2) ? seats_[a] : seats_[b]);
    }
    if (calls.is_dark() || answers.is_dark()) {
      break;
    }
  }
  calls.catch_up();
  answers.catch_up();
  note_receipts(calls, answers);
}

// What the caller's screen says of what the other holds, it may rely on.
void Day::note_receipts(Device& calls, Device& answers) {
  if (calls.is_dark() || answers.is_dark()) {
    return;
  }
  Member own = calls.member();
  const auto elsewhere = held_elsewhere(own);
  if (!elsewhere) {
    return;
  }
  for (const HeldElsewhere& one : *elsewhere) {
    if (one.holder != answers.replica()) {
      continue;
    }
    for (const auto& [act, place] : calls.promised.own) {
      if (place.replica == calls.replica() && place.seq <= one.held) {
        answers.promised.acts.insert(act);
      }
    }
    std::uint64_t holds_to = 0;
    const auto leaves = leaves_of(*answers.disk);
    for (const Place& leaf : *leaves) {
      holds_to = leaf.replica == calls.replica() ? std::max(holds_to, leaf.seq) : holds_to;
    }
    if (one.held > holds_to && !answers.fell_back) {
      throw Complaint{"lost", "device " + std::to_string(answers.number) + " has receipted more than it holds"};
    }
  }
}

void Day::write_stick(Seat& seat) {
  // The carrier that lets only one chain through is of the network; what a sealed parcel holds nobody can pick from.
  if (seat.device->is_dark() || planted_ == Planted::own_chain_only) {
    return;
  }
  std::optional<model::ReplicaId> holder;
  if (dice_.one_in(2)) {
    holder = seats_.front().device->replica();
  }
  auto written = write_on_stick(*seat.device, holder);
  if (!written && seat.device->is_dark()) {
    return;  // the power went in the middle of it
  }
  if (!written) {
    throw Complaint{"diverged", "no parcel can be written: " + written.error().faults.front().code};
  }
  sticks_.push_back(std::move(*written));
  ++counts_.sticks;
}

void Day::read_stick(Seat& seat, bool is_rough) {
  if (sticks_.empty() || seat.device->is_dark()) {
    return;
  }
  Bytes bytes = sticks_[dice_.roll(sticks_.size())];  // it may be read again, and by others
  const std::uint64_t fate = is_rough ? dice_.roll(6) : 5;
  if (fate == 0) {
    bytes.resize(dice_.roll(bytes.size()));
  } else if (fate == 1) {
    bytes[dice_.roll(bytes.size())] ^= static_cast<std::uint8_t>(1 + dice_.roll(255));
  }
  counts_.sticks_spoiled += fate < 2 ? 1U : 0U;
  const bool cut_too = dice_.one_in(2);
  const auto taken = take_off_stick(*seat.device, bytes, cut_too, 3000);
  seat.device->catch_up();
  counts_.parked += taken ? taken->taken.parked : 0;
  // A changed length of its last piece makes a parcel one that was cut short: what is whole before it is taken where that was asked for.
  if (fate == 1 && taken && (!cut_too || taken->is_whole)) {
    throw Complaint{"damaged", "a parcel with a changed byte was taken"};
  }
  if (!taken && fate > 1 && !seat.device->is_dark()) {
    throw Complaint{"diverged", "a whole parcel is refused: " + taken.error().faults.front().code};
  }
}

void Day::come_home() {
  islands_.assign(seats_.size(), 0);
  for (Seat& seat : seats_) {
    if (seat.device->is_dark()) {
      power_back(seat);
    }
    seat.device->disk->disarm();
    seat.device->disk->stop_lying();
  }
  for (std::size_t i = 0; i < sticks_.size(); ++i) {
    read_stick(some_seat(), false);
  }
  for (Seat& seat : seats_) {
    people_.send_again(seat);
  }
  for (int round = 0; round < 2; ++round) {
    std::vector<std::size_t> order;
    for (std::size_t i = 1; i < seats_.size(); ++i) {
      order.insert(order.begin() + static_cast<std::ptrdiff_t>(dice_.roll(order.size() + 1)), i);
    }
    for (const std::size_t who : order) {
      meet(who, 0, false);
    }
  }
  for (std::size_t i = 1; i < seats_.size(); ++i) {
    if (seats_[i].device->have() != seats_.front().device->have()) {
      meet(i, 0, false);
      ++counts_.third_meetings;
    }
  }
  std::vector<Device*> devices;
  for (Seat& seat : seats_) {
    devices.push_back(seat.device.get());
    judge_screen(*seat.device, people_.doings());
  }
  judged_ = judge_home(devices, people_.doings());
  for (std::size_t i = 1; i < seats_.size(); ++i) {
    Caller caller(seats_[i].device->member(), Exporter{}, message_budget);
    Answerer answerer(devices.front()->member(), Exporter{}, message_budget);
    const auto message = caller.next();
    const auto answer = answerer.answer(**message);
    const bool ends = answer && caller.receive(*answer) && caller.next() && !*caller.next();
    if (!ends || !caller.exchanged().is_same) {
      throw Complaint{"diverged", "one more exchange with nothing new is more than one call"};
    }
  }
}

void Day::count() {
  std::map<model::ReplicaId, std::size_t> ends;
  const auto leaves = leaves_of(*seats_.front().device->disk);
  for (const Place& leaf : *leaves) {
    counts_.forked += ++ends[leaf.replica] == 2 ? 1U : 0U;
  }
  const Doings& doings = people_.doings();
  for (ActId act = 0; act < doings.size(); ++act) {
    counts_.operations += doings.at(act).parts.size();
    counts_.newer += doings.at(act).by_newer_program || doings.at(act).place ? 1U : 0U;
  }
  counts_.replicas += ends.size();
  counts_.acts += people_.acknowledged();
  counts_.repeats += people_.repeats();
  counts_.overtaken += people_.overtaken();
  counts_.exams += judged_.exams;
  counts_.conflicts += judged_.conflicts;
}

}  // namespace limbledger::ledger::clinic_sim
