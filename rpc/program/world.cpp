#include "rpc/program/world.hpp"

#include <sys/random.h>
#include <sys/timex.h>
#include <time.h>

#include <cerrno>
#include <cstdlib>

namespace limbledger::rpc {

namespace {

constexpr std::int64_t ask_every_ms = 1000;
constexpr std::int64_t released_ms = 1'793'491'200'000;  // 2026-11-01T00:00:00Z

[[nodiscard]] std::int64_t read_clock(clockid_t clock) {
  timespec time{};
  ::clock_gettime(clock, &time);
  return static_cast<std::int64_t>(time.tv_sec) * 1000 + time.tv_nsec / 1'000'000;
}

// Whether the machine's clock is kept by a time service.
[[nodiscard]] bool synchronised() {
  timex state{};
  const int answer = ::adjtimex(&state);
  return answer != -1 && answer != TIME_ERROR && (state.status & STA_UNSYNC) == 0;
}

}  // namespace

MachineWorld::MachineWorld() { random(boot_); }

ledger::Reading MachineWorld::now() {
  ledger::Reading reading;
  reading.wall_ms = read_clock(CLOCK_REALTIME) + beside_ms_;
  reading.up_ms = read_clock(CLOCK_BOOTTIME);
  reading.boot = boot_;
  if (reading.wall_ms < released_ms) {
    reading.clock = ledger::ClockQuality::unset;
  } else {
    // The kernel is asked once a second: a call reads the clock several times, and each question is a system call.
    if (!asked_up_ms_ || reading.up_ms - *asked_up_ms_ >= ask_every_ms) {
      asked_up_ms_ = reading.up_ms;
      synchronised_ = synchronised();
    }
    reading.clock = synchronised_ ? ledger::ClockQuality::network : ledger::ClockQuality::person;
  }
  return reading;
}

void MachineWorld::set_clock(std::int64_t wall_ms) { beside_ms_ = wall_ms - read_clock(CLOCK_REALTIME); }

void MachineWorld::random(std::span<std::uint8_t> bytes) {
  while (!bytes.empty()) {
    const ssize_t got = ::getrandom(bytes.data(), bytes.size(), 0);
    if (got > 0) {
      bytes = bytes.subspan(static_cast<std::size_t>(got));
    } else if (errno != EINTR) {
      std::abort();  // keys made without randomness would be worse than no program
    }
  }
}

std::string new_incident(ledger::World& world) {
  static constexpr char digits[] = "0123456789abcdef";
  std::array<std::uint8_t, 8> bytes{};
  world.random(bytes);
  std::string text;
  for (const std::uint8_t byte : bytes) {
    text += digits[byte >> 4U];
    text += digits[byte & 0xFU];
  }
  return text;
}

}  // namespace limbledger::rpc
