// The doors that bytes of others come in by, each as one function of bytes. Whatever comes, it returns: what must hold of
// every input and does not ends the process by `broken`. The programs of libFuzzer call them (program.cpp), and the unit
// tests replay what was found (replay_rpc_test.cpp).
#pragma once

#include <span>
#include <string_view>

namespace limbledger::fuzz {

struct Target {
  std::string_view name;
  void (*run)(std::string_view bytes);
};

// Lines, each one message to the whole table of methods over a ledger in memory; "@exam" and the like stand for what the
// example talk keeps under that name. A line "#viewer", "#kiosk", "#sync" or "#none" changes who calls.
void request(std::string_view bytes);
// Findings, parted by commas as in a list: judged in a document, then recorded in an exam.
void finding(std::string_view bytes);
// By the first byte: a header, a plain body, a row, a keyring, operations that are sealed and folded, or a ledger with
// bytes changed.
void entry(std::string_view bytes);
// One byte that chooses framing and pieces, then a stream.
void frames(std::string_view bytes);
// What a client sends to the network's port, in pieces that end at each 0xFF '|'.
void network(std::string_view bytes);

[[nodiscard]] std::span<const Target> targets();

[[noreturn]] void broken(std::string_view what);
inline void must(bool holds, std::string_view what) {
  if (!holds) {
    broken(what);
  }
}

}  // namespace limbledger::fuzz
