// What the measurements share: a folder on this disk, a world for a ledger, a stopwatch, and the middle of several rounds.
// Speed is stated as a ratio against a peer of the same run, measured in turns, because machines differ.
#pragma once

#include "core/ledger/keys/keyring.hpp"
#include "core/ledger/log/log.hpp"
#include "core/service/desk.hpp"
#include "core/store/memory.hpp"
#include "core/store/sqlite.hpp"
#include "rpc/program/folder.hpp"

#include <sodium.h>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <string>
#include <vector>

namespace limbledger::bench {

class BenchWorld final : public ledger::World {
 public:
  ledger::Reading now() override { return {1795515300000 + ++ticks_, ticks_, {1, 2, 3, 4, 5, 6, 7, 8}, ledger::ClockQuality::person}; }
  void random(std::span<std::uint8_t> bytes) override { randombytes_buf(bytes.data(), bytes.size()); }

 private:
  std::int64_t ticks_ = 0;
};

// Made in the current folder, which must be on a disk: a file system in memory has no flush to compare with.
class Folder {
 public:
  Folder() {
    char name[] = "bench-XXXXXX";
    path = std::filesystem::absolute(mkdtemp(name)).string();
  }
  ~Folder() { std::filesystem::remove_all(path); }
  Folder(const Folder&) = delete;
  Folder& operator=(const Folder&) = delete;
  std::string path;
};

template <class Work>
[[nodiscard]] double seconds(Work&& work) {
  const auto start = std::chrono::steady_clock::now();
  work();
  return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

[[nodiscard]] inline double median(std::vector<double> values) {
  std::sort(values.begin(), values.end());
  return values[values.size() / 2];
}

// A request of its own for each call.
[[nodiscard]] inline std::string request_id(std::size_t number) {
  char text[37];
  std::snprintf(text, sizeof text, "00000000-0000-4000-8000-%012zx", number);
  return text;
}

// The text between two marks, for the few members of a reply that a measurement needs.
[[nodiscard]] inline std::string between(const std::string& text, const std::string& before, const std::string& after) {
  const auto from = text.find(before) + before.size();
  return text.substr(from, text.find(after, from) - from);
}

// The floor of the work must hold the ratio; the last line is counted by the runner.
[[nodiscard]] inline int judge(const char* what, double ratio, double at_most, double aim) {
  std::printf("%s: %.2f x (at most %.2f x, aim %.2f x)\n", what, ratio, at_most, aim);
  std::printf("%d passed, %d failed\n", ratio <= at_most ? 1 : 0, ratio <= at_most ? 0 : 1);
  return ratio <= at_most ? 0 : 1;
}

template <class T>
T need(Result<T> result, const char* what) {
  if (!result) {
    std::fprintf(stderr, "%s: %s\n", what, result.error().faults.front().code.c_str());
    std::exit(1);
  }
  return std::move(*result);
}
inline void need(Result<void> result, const char* what) {
  if (!result) {
    std::fprintf(stderr, "%s: %s\n", what, result.error().faults.front().code.c_str());
    std::exit(1);
  }
}

// A ledger on disk as the program makes it, with a cheap passphrase.
struct OnDisk {
  BenchWorld world;
  std::unique_ptr<store::SqliteStore> store;
  ledger::Bytes keyring;
  service::NewLedger wanted;

  OnDisk(const std::string& path, store::Flush flush) {
    wanted.examiner_label = "Invented";
    wanted.passphrase = "nine invented words in a row";
    wanted.argon_passes = ledger::slot_cost_low.t;
    wanted.argon_kib = ledger::slot_cost_low.m_kib;
    wanted.durability = ledger::Durability::disk;
    // The clinic is known only once its first entries are made, so they are made in memory first.
    store::MemoryStore first;
    service::MadeLedger made = need(service::make_ledger(first, world, wanted), "make the ledger");
    keyring = std::move(made.keyring);
    store::SqliteOptions options;
    options.clinic = made.clinic;
    options.flush = flush;
    options.begin_writing = rpc::writing_begins(path);
    store = need(store::SqliteStore::open(path, options), "open the store");
    const ledger::Heads heads = need(first.heads(), "heads");
    const auto rows = need(first.read(heads.newest.front().replica, 1, 1000, 1000), "rows");
    need(store->append(rows, heads.newest, heads.meta), "first entries");
  }
  [[nodiscard]] ledger::Identity identity() const {
    const auto unlocked = need(need(ledger::Keyring::from_bytes(keyring), "keyring").open_passphrase(wanted.passphrase), "open the keyring");
    ledger::Identity identity{store->clinic(), ledger::SignKey(unlocked.vault.sign_seed), {}, ledger::BlobKey(unlocked.vault.shelf_key)};
    for (const auto& [epoch, secret] : unlocked.vault.epoch_secrets) {
      identity.epochs.emplace(epoch, ledger::BoxPair(secret));
    }
    return identity;
  }
};

}  // namespace limbledger::bench
