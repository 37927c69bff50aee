// Tokens given out at the start, each in a file of its own that the owner alone reads (0600): made anew before they expire,
// taken away with a token that was ended, and at a clean stop. Source: contract, section 11.
#pragma once

#include "rpc/access/token.hpp"
#include "rpc/program/options.hpp"

#include <vector>

namespace limbledger::rpc {

class GivenFiles {
 public:
  // Throws Problem where another file lies there, or none can be written. A token left by a crash is replaced.
  GivenFiles(const std::vector<GivenAtStart>& wanted, Tokens& tokens, ledger::World& world);
  ~GivenFiles();
  GivenFiles(const GivenFiles&) = delete;
  GivenFiles& operator=(const GivenFiles&) = delete;

  void ended(std::uint64_t number);
  // Makes anew what has less than half its time left. False where a file could not be written: tried again the next time.
  bool renew();

 private:
  struct Given {
    GivenAtStart wanted;
    std::uint64_t number = 0;
    std::int64_t made_up_ms = 0;
    bool there = false;
  };
  void make(Given& one);

  Tokens& tokens_;
  ledger::World& world_;
  std::vector<Given> given_;
};

}  // namespace limbledger::rpc
