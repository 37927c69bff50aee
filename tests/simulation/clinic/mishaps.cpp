// What goes wrong on a day: the network, the power, the disks, the clocks, and people who copy devices.
#include "tests/simulation/clinic/day.hpp"

namespace limbledger::ledger::clinic_sim {

namespace {

constexpr std::size_t replicas_max = 12;
constexpr std::int64_t year_ms = std::int64_t{365} * 24 * 3600 * 1000;

}  // namespace

void Day::mishap() {
  Seat& seat = some_seat();
  switch (dice_.roll(12)) {
    case 0:  // the network falls apart, or comes together
      ++counts_.partitions;
      for (std::uint64_t& island : islands_) {
        island = dice_.one_in(3) ? dice_.roll(3) : 0;
      }
      return;
    case 1:
    case 2:
      seat.device->disk->arm();
      return;
    case 3:
      seat.device->disk->go_dark();
      return;
    case 4:
      return jump_clock(*seat.device);
    case 5:
    case 6:
    case 7:
    case 8:
      return copy_or_restore(seat);
    case 9:
      if (dice_.one_in(2)) {
        return clone(seat);
      }
      if (!seat.device->is_dark() && &seat != &seats_.front() && !seat.device->disk->is_file() && !seat.device->disk->is_lying()) {
        seat.device->before_lie = seat.device->promised;
        seat.device->disk->begin_lying();
      }
      return;
    case 10:
      if (dice_.one_in(2)) {
        people_.write_other_kind(seat);
      }
      return;
    default:
      if (seat.device->is_dark()) {
        power_back(seat);
      } else {
        people_.send_again(seat);
      }
  }
}

void Day::jump_clock(Device& device) {
  Reading& reading = device.world.reading;
  switch (dice_.roll(5)) {
    case 0:  // the battery was out
      reading.wall_ms -= 25 * year_ms;
      reading.clock = ClockQuality::unset;
      break;
    case 1:
      reading.wall_ms += static_cast<std::int64_t>(dice_.roll(40)) * 24 * 3600 * 1000;
      reading.clock = ClockQuality::suspect;
      break;
    case 2:
      reading.wall_ms -= static_cast<std::int64_t>(dice_.roll(3 * 3600 * 1000));
      break;
    case 3:
      reading.wall_ms = 1795515300000 + static_cast<std::int64_t>(dice_.roll(8 * 3600 * 1000));
      reading.clock = ClockQuality::person;
      break;
    default:
      reading.wall_ms += 3 * year_ms;
  }
  ++counts_.jumps;
}

void Day::power_back(Seat& seat) {
  ++counts_.crashes;
  counts_.file_crashes += seat.device->disk->is_file() ? 1U : 0U;
  counts_.lies += seat.device->disk->is_lying() ? 1U : 0U;
  seat.device->power_back();
  judge_screen(*seat.device, people_.doings());
  if (dice_.one_in(2)) {
    seat.form.reset();
    seat.page.reset();
  }
  if (!dice_.one_in(3)) {
    people_.send_again(seat);
  }
}

void Day::copy_or_restore(Seat& seat) {
  // The hub's own copies come with the rebuilding of a hub; what is put back here are tablets.
  if (seat.device->is_dark() || &seat == &seats_.front()) {
    return;
  }
  if (!seat.copy || dice_.one_in(2)) {
    seat.copy = std::make_unique<Device>(*seat.device, next_seed());
    seat.copy->disk->stop_lying();
    return;
  }
  ++counts_.restores;
  seat.device = std::move(seat.copy);
  seat.device->fell_back = true;
  seat.device->open();
  seat.form.reset();
  seat.page.reset();
  judge_screen(*seat.device, people_.doings());
  if (dice_.one_in(2)) {
    people_.repeat_recent(seat);
  }
}

// Two devices from one: both go on.
void Day::clone(Seat& seat) {
  if (seat.device->is_dark() || seat.device->disk->is_lying() || &seat == &seats_.front() || seats_.size() >= replicas_max) {
    return;
  }
  ++counts_.clones;
  Seat other;
  other.device = std::make_unique<Device>(*seat.device, next_seed());
  other.device->fell_back = true;
  seat.device->fell_back = true;
  other.device->open();
  seats_.push_back(std::move(other));
  islands_.push_back(0);
}

void Day::settle_forks() {
  for (Seat& seat : seats_) {
    if (!seat.device->is_dark() && seat.device->has_ended() && dice_.one_in(3)) {
      ++counts_.heirs;
      seat.device->go_on_as_heir();
    }
  }
}

}  // namespace limbledger::ledger::clinic_sim
