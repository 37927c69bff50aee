// Another device of the clinic, beside the desk that the methods are called on: it holds a copy of all, writes to its own chain, and gives
// that chain alone.
#pragma once

#include "core/ledger/fold/records.hpp"
#include "tests/unit/ledger/kept_store.hpp"
#include "tests/unit/service/desk_fixture.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <memory>
#include <optional>
#include <utility>
#include <vector>

namespace limbledger::service::test {

struct OtherDevice {
  ledger::test::KeptStore store;
  FixedWorld world;
  ledger::Identity identity;
  std::unique_ptr<ledger::Log> log;
  std::optional<std::pair<model::ExaminerId, ledger::SignKey>> examiner;

  OtherDevice(const DeskFixture& fixture, ledger::LogStore& from, std::uint8_t seed) : store(from), world(seed), identity(ledger::test::other_device(fixture, seed)) {
    ledger::test::introduce(store, world, identity);
    auto opened = ledger::Log::open(store, world, identity);
    REQUIRE(opened.has_value());
    log = std::move(*opened);
  }
  model::EntryId write(const model::ObjectId& exam, unsigned request, std::string op, std::string body_json, std::vector<model::EntryId> after,
                       bool sign = false) {
    ledger::NewOperation operation;
    operation.object = exam;
    operation.op = std::move(op);
    REQUIRE(model::RequestId::from_text(request_id(request), operation.request).empty());
    operation.after = std::move(after);
    operation.body_json = std::move(body_json);
    operation.sign = sign;
    if (examiner) {
      operation.by = examiner->first;
    }
    const auto written = log->append({&operation, 1}, model::EditionId{"facts.test"}, examiner ? &examiner->second : nullptr);
    REQUIRE(written.has_value());
    return written->front().entry();
  }
  // From here on this examiner writes, with a key of the device's own.
  void is_used_by(const model::ExaminerId& who) {
    std::array<std::uint8_t, 32> seed{};
    world.random(seed);
    examiner.emplace(who, ledger::SignKey(ledger::Secret32(seed)));
    REQUIRE(log->introduce_examiner(who, examiner->second).has_value());
  }
  model::EntryId says(unsigned request, std::string body_json, bool sign = true) { return write(log->clinic_object(), request, "examiner", std::move(body_json), {}, sign); }
  // Its own chain alone reaches the desk.
  void give_to(const DeskFixture& fixture) {
    const auto rows = store.read(identity.replica(), 1, 1000, 1000);
    const ledger::Head head = *std::find_if(store.all.newest.begin(), store.all.newest.end(), [&](const ledger::Head& one) { return one.replica == identity.replica(); });
    REQUIRE(fixture.desk->log().take({identity.clinic, identity.replica(), identity.device_key.pub()}, *rows, head).has_value());
    std::vector<model::ObjectId> objects;
    for (const auto& [object, known] : fixture.desk->log().index().objects) {
      objects.push_back(object);
    }
    fixture.desk->records().forget(objects);
  }
};

}  // namespace limbledger::service::test
