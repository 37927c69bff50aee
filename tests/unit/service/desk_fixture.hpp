// A desk at work in memory for the tests of the methods: one clinic, one invented examiner, a world whose clock moves only
// when told and whose randomness is counted, a cheap Argon2id and the built-in edition. Calls go through service::call,
// as a client's do; answers are JSON text, read by JSON Pointer.
#pragma once

#include "core/ledger/bytes.hpp"
#include "core/ledger/entry.hpp"
#include "core/reference/edition.hpp"
#include "core/service/call.hpp"
#include "core/service/desk.hpp"
#include "core/store/memory.hpp"
#include "core/wire/parse.hpp"

#include <doctest/doctest.h>

#include <cstdio>
#include <memory>
#include <string>
#include <string_view>

namespace limbledger::service::test {

class FixedWorld final : public ledger::World {
 public:
  explicit FixedWorld(std::uint8_t seed = 1) : seed_(seed) { restart(); }

  ledger::Reading now() override { return reading; }
  void random(std::span<std::uint8_t> bytes) override {
    for (std::uint8_t& byte : bytes) {
      if (used_ == block_.size()) {
        std::array<std::uint8_t, 9> input{seed_};
        ledger::put_integer(input.data() + 1, ++count_, 8);
        block_ = ledger::hash256(input);
        used_ = 0;
      }
      byte = block_[used_++];
    }
  }
  void pass(std::int64_t ms) {
    reading.wall_ms += ms;
    reading.up_ms += ms;
  }
  // The machine starts again: the wall clock goes on, the other begins anew.
  void restart() {
    reading.up_ms = 0;
    random(reading.boot);
  }

  ledger::Reading reading{1795515300000, 0, {}, ledger::ClockQuality::person};  // 2026-11-24T10:15:00Z

 private:
  std::uint8_t seed_;
  std::uint64_t count_ = 0;
  ledger::Hash block_{};
  std::size_t used_ = sizeof(ledger::Hash);
};

inline constexpr std::string_view examiner_label = "Invented Examiner";
inline constexpr std::string_view passphrase = "nine invented words in a row";

// A client's request id: the same number, the same id.
inline std::string request_id(unsigned number) {
  char text[37];
  std::snprintf(text, sizeof text, "00000000-0000-4000-8000-%012x", number);
  return text;
}

[[nodiscard]] inline Result<std::string> call(Desk& desk, std::string_view method, std::string_view params_json, const Caller& caller = {},
                                              std::span<const Method> table = methods()) {
  const auto params = wire::parse(params_json);
  if (!params) {
    return params.error();
  }
  Context context;
  context.desk = &desk;
  context.edition = &desk.edition();
  context.caller = caller;
  return service::call(table, context, method, *params, &params->root());
}

// What a call was refused with: its codes in order, parted by spaces; "answered" when it was not.
inline std::string codes_of(const Result<std::string>& result) {
  if (result) {
    return "answered";
  }
  std::string codes;
  for (const wire::Fault& fault : result.error().faults) {
    codes += (codes.empty() ? "" : " ") + fault.code;
  }
  return codes;
}
inline std::string path_of(const Result<std::string>& result) { return result ? "" : result.error().faults.front().path; }

// The value at a JSON Pointer: a text unescaped, anything else as written; empty where there is none.
inline std::string at(std::string_view json, std::string_view pointer) {
  const auto document = wire::parse(json);
  REQUIRE(document.has_value());
  const wire::Node* node = document->at_pointer(pointer);
  if (node == nullptr) {
    return {};
  }
  return std::string(node->kind == wire::NodeKind::text ? node->text : node->raw);
}

class DeskFixture {
 public:
  explicit DeskFixture(LedgerKind kind = LedgerKind::clinic, std::uint8_t seed = 1) : world(seed) {
    NewLedger wanted;
    wanted.examiner_label = examiner_label;
    wanted.passphrase = passphrase;
    wanted.kind = kind;
    wanted.argon_passes = 1;
    wanted.argon_kib = 8;
    auto result = make_ledger(store, world, wanted);
    REQUIRE(result.has_value());
    made = std::move(*result);
    open();
    unlock();
  }

  // A new desk over what the store holds; locked. The old one is gone without a goodbye when `crashes`.
  void reopen(bool crashes = false) {
    if (crashes) {
      store.refuse_writes(true);
    }
    desk.reset();
    store.refuse_writes(false);
    world.restart();
    open();
  }
  void unlock() {
    const auto unlocked = desk->unlock("", passphrase);
    REQUIRE(unlocked.has_value());
  }

  [[nodiscard]] Result<std::string> call(std::string_view method, std::string_view params_json) const {
    return test::call(*desk, method, params_json, caller);
  }
  // A call that must be answered.
  std::string ok(std::string_view method, std::string_view params_json) const {
    auto result = call(method, params_json);
    INFO(method);
    INFO(params_json);
    REQUIRE(codes_of(result) == "answered");
    return std::move(*result);
  }

  store::MemoryStore store;
  FixedWorld world;
  MadeLedger made;
  std::unique_ptr<Desk> desk;
  Caller caller;

 private:
  void open() {
    REQUIRE(reference::built_in_edition() != nullptr);
    auto opened = Desk::open(store, world, *reference::built_in_edition(), made.keyring);
    REQUIRE(opened.has_value());
    desk = std::move(*opened);
  }
};

}  // namespace limbledger::service::test
