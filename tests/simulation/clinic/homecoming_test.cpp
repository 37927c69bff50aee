// A large day comes home: 12 tablets, 40 exams each, 60 findings an exam, to the clinic's hub by exchanges and by parcels, in several
// orders and twice, always to one state digest. Time and bytes are printed and bound nothing. The whole day with LIMBLEDGER_TIER=full;
// otherwise a small one, by the same steps.
#include "core/ledger/parcel/carry.hpp"
#include "core/ledger/trust/enrol.hpp"
#include "tests/simulation/clinic/device.hpp"

#include <doctest/doctest.h>

#include <chrono>
#include <string_view>

namespace limbledger::ledger::clinic_sim {

namespace {

struct Size {
  std::size_t tablets = 3, exams = 4, findings = 12;
  std::size_t budget = 9000;  // of one message: many are needed in the small day too
};

Size size_of_day() {
  const char* tier = std::getenv("LIMBLEDGER_TIER");
  return tier != nullptr && std::string_view(tier) == "full" ? Size{12, 40, 60, message_budget} : Size{};
}

model::RequestId numbered(std::size_t tablet, std::size_t number) {
  model::RequestId out;
  put_integer(out.bytes.data(), tablet + 1, 8);
  put_integer(out.bytes.data() + 8, number + 1, 8);
  return out;
}

// An exam with all its findings, ten a request.
void examine(Device& device, std::size_t exam, std::size_t findings) {
  const std::size_t first = exam * 1000;
  const model::ObjectId object = object_of(the_clinic(), ObjectType::exam, numbered(device.number, first), 0);
  std::vector<model::EntryId> seen;
  for (std::size_t request = 0; request * 10 < findings + 10; ++request) {
    std::vector<NewOperation> operations;
    for (std::size_t i = 0; i < (request == 0 ? 1 : std::min<std::size_t>(10, findings - (request - 1) * 10)); ++i) {
      NewOperation one;
      one.object = object;
      one.request = numbered(device.number, first + request);
      one.by = device.examiner;
      one.after = seen;
      one.op = request == 0 ? "exam" : "finding";
      const std::string deg = std::to_string((exam * 7 + i * 3) % 140);
      one.body_json = request == 0 ? R"({"complaint":"free","setting":"outreach"})"
                                   : R"({"finding":")" + object_of(the_clinic(), ObjectType::finding, one.request, static_cast<std::uint16_t>(i)).to_text() +
                                         R"(","observation":{"item":"knee.flexion_passive","side":"left","value":{"kind":"angle","deg":)" + deg +
                                         R"(,"toward":"flexion","toward_deg":)" + deg + R"(},"remark":"no. )" + std::to_string(request * 10 + i) + R"("}})";
      operations.push_back(std::move(one));
    }
    device.world.pass(20000);
    const auto written = device.log->append(operations, model::EditionId{"facts.test"}, nullptr);
    REQUIRE(written.has_value());
    seen = {written->back().entry()};
  }
}

Hash state_of(Device& device) {
  ByteWriter all;
  for (const auto& [object, known] : device.log->index().objects) {
    const auto operations = device.log->operations(object);
    REQUIRE(operations.has_value());
    all.raw(state_digest(object, *operations));
  }
  return hash256(all.view());
}

struct Carried {
  std::size_t bytes = 0;
  std::size_t messages = 0;
  std::uint64_t entries = 0;  // new where they came to
};

Carried by_exchange(Device& tablet, Device& hub) {
  Caller caller(tablet.member(), Exporter{}, size_of_day().budget);
  Answerer answerer(hub.member(), Exporter{}, size_of_day().budget);
  for (auto message = caller.next(); message && *message; message = caller.next()) {
    const auto answer = answerer.answer(**message);
    REQUIRE(answer.has_value());
    REQUIRE(caller.receive(*answer).has_value());
  }
  const Exchanged& done = caller.exchanged();
  CHECK(done.is_same);
  CHECK(done.taken.parked == 0);
  return {done.sent_size + done.got_size, done.messages, done.given};
}

Carried by_parcel(Device& tablet, Device& hub) {
  const auto written = write_on_stick(tablet, std::nullopt);
  REQUIRE(written.has_value());
  const auto taken = take_off_stick(hub, *written, false, 65536);
  REQUIRE(taken.has_value());
  CHECK(taken->is_whole);
  return {written->size(), 0, taken->taken.entries};
}

}  // namespace

TEST_CASE("a day of many tablets comes home by exchange and by parcel, in several orders and twice, to one state digest") {
  const Size size = size_of_day();
  std::vector<std::unique_ptr<Device>> tablets;
  Device hub(0, Planted::none, 1000, false);
  std::vector<NewOrder> orders{{OrderKind::enrol, Enrol{hub.replica(), hub.device, roles::write | roles::hub}.to_fields()}};
  Meta meta;
  meta[std::string(hub_key_name)] = Bytes(hub.key->pub().begin(), hub.key->pub().end());
  for (std::size_t i = 1; i <= size.tablets; ++i) {
    tablets.push_back(std::make_unique<Device>(i, Planted::none, 1000 + i, false));
    REQUIRE(tablets.back()->disk->append({}, {}, meta).has_value());
    orders.push_back({OrderKind::enrol, Enrol{tablets.back()->replica(), tablets.back()->device, roles::write}.to_fields()});
    for (std::size_t exam = 0; exam < size.exams; ++exam) {
      examine(*tablets.back(), exam, size.findings);
    }
  }
  Member root = hub.member();
  REQUIRE(append_orders(root, root_key(), orders).has_value());
  hub.open();

  std::optional<Hash> state;
  // Which tablet comes when, and by what: network, stick, or one as the other.
  const std::vector<std::string_view> ways{"network", "stick", "either"};
  for (std::size_t way = 0; way < ways.size(); ++way) {
    Device home(hub, 2000 + way);
    home.open();
    std::vector<std::unique_ptr<Device>> out;
    for (const auto& tablet : tablets) {
      out.push_back(std::make_unique<Device>(*tablet, 3000 + way * 100 + tablet->number));
    }
    std::vector<std::size_t> order;
    Dice dice(way + 1);
    for (std::size_t i = 0; i < out.size(); ++i) {
      order.insert(order.begin() + static_cast<std::ptrdiff_t>(dice.roll(order.size() + 1)), i);
    }
    for (const std::string_view time : {"first", "second"}) {
      Carried all;
      const auto begun = std::chrono::steady_clock::now();
      for (const std::size_t who : order) {
        const bool by_stick = way == 1 || (way == 2 && who % 2 == 0);
        const Carried one = by_stick ? by_parcel(*out[who], home) : by_exchange(*out[who], home);
        all.bytes += one.bytes;
        all.messages += one.messages;
        all.entries += one.entries;
      }
      const auto took = std::chrono::duration_cast<std::chrono::milliseconds>(std::chrono::steady_clock::now() - begun).count();
      home.catch_up();
      const Hash now = state_of(home);
      state = state.value_or(now);
      CHECK(now == *state);
      CHECK(home.log->index().objects.size() == size.tablets * size.exams);
      CHECK((all.entries == 0) == (time == "second"));
      MESSAGE(size.tablets << " tablets x " << size.exams << " exams x " << size.findings << " findings, by " << ways[way] << ", the " << time << " time: " << all.entries
                           << " new entries, " << all.bytes << " bytes, " << all.messages << " calls, " << took << " ms");
    }
    // All go home with all of it; then nothing is new.
    for (const auto& tablet : out) {
      (void)by_exchange(*tablet, home);
    }
    for (const auto& tablet : out) {
      (void)by_exchange(*tablet, home);
      const Carried again = by_exchange(*tablet, home);
      CHECK(again.messages == 1);
      CHECK(again.bytes <= 256);
    }
    out.front()->open();
    CHECK(state_of(*out.front()) == *state);
    const auto verified = verify_store(*home.disk, the_clinic(), nullptr);
    CHECK(verified->damage.empty());
  }
}

}  // namespace limbledger::ledger::clinic_sim
