// One day of a simulated clinic, from a seed: a hub and tablets, people at work at each, a network that comes and goes and spoils what
// it carries, sticks, power that goes, clocks that jump, disks that lie, copies that are put back or go on beside the original. In the
// evening all comes home, and the oracle judges.
#pragma once

#include "tests/simulation/clinic/oracle.hpp"
#include "tests/simulation/clinic/people.hpp"

namespace limbledger::ledger::clinic_sim {

struct Counts {
  std::size_t days = 0, replicas = 0, acts = 0, operations = 0, repeats = 0, overtaken = 0, exams = 0, conflicts = 0;
  std::size_t exchanges = 0, messages = 0, spoiled = 0, sticks = 0, sticks_spoiled = 0, parked = 0;
  std::size_t crashes = 0, file_crashes = 0, lies = 0, restores = 0, clones = 0, forked = 0, heirs = 0, jumps = 0, partitions = 0, newer = 0;
  std::size_t third_meetings = 0;  // two each are enough to come home
};

class Day {
 public:
  Day(std::uint64_t seed, Planted planted, Counts& counts);

  // Throws a Complaint.
  void pass();
  void come_home();
  void pass_the_next();
  // Adds what this clinic was to the counts.
  void count();

 private:
  [[nodiscard]] Seat& some_seat() { return seats_[dice_.roll(seats_.size())]; }
  [[nodiscard]] bool can_meet(std::size_t a, std::size_t b) const { return a != b && islands_[a] == islands_[b]; }
  void happen();
  void mishap();
  void meet(std::size_t a, std::size_t b, bool is_rough);
  void note_receipts(Device& calls, Device& answers);
  [[nodiscard]] Bytes carry(const Bytes& message, const Device& from) const;
  void write_stick(Seat& seat);
  void read_stick(Seat& seat, bool is_rough);
  void power_back(Seat& seat);
  void copy_or_restore(Seat& seat);
  void clone(Seat& seat);
  void jump_clock(Device& device);
  void settle_forks();
  [[nodiscard]] std::uint64_t next_seed() { return dice_.next(); }

  Planted planted_;
  Dice dice_;
  Counts& counts_;
  People people_;
  std::vector<Seat> seats_;
  std::vector<std::uint64_t> islands_;
  std::vector<Bytes> sticks_;
  Judged judged_;
};

}  // namespace limbledger::ledger::clinic_sim
