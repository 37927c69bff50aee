#include "core/ledger/stamp.hpp"
#include "tests/unit/ledger/support.hpp"

#include <doctest/doctest.h>

#include <map>

using namespace limbledger::ledger;

namespace {

constexpr std::int64_t day_ms = std::int64_t{24} * 3600 * 1000;
constexpr std::int64_t built_ms = 1763000000000;

Reading at(std::int64_t wall_ms, ClockQuality clock = ClockQuality::person) {
  Reading out;
  out.wall_ms = wall_ms;
  out.clock = clock;
  return out;
}

std::int64_t number_member(const std::string& json, const std::string& name, std::size_t from) {
  const std::size_t key = json.find('"' + name + "\":", from);
  return std::stoll(json.substr(key + name.size() + 3));
}

}  // namespace

// Source: tests/outside/data/hlc_trace.json, run by hand-checked code of the rules of Kulkarni et al. 2014.
TEST_CASE("the published rules of sending and receiving give the trace of three nodes") {
  const std::string json = test::outside_data("hlc_trace.json");
  REQUIRE_FALSE(json.empty());

  std::map<std::string, HybridClock> nodes;
  std::map<std::string, Stamp> sent;
  int step_count = 0;
  for (std::size_t from = json.find("\"node\""); from != std::string::npos; from = json.find("\"node\"", from + 1)) {
    const std::string node = test::text_member(json, "node", from);
    const std::string event = test::text_member(json, "event", from);
    HybridClock& clock = nodes.try_emplace(node, 0).first->second;
    const Reading reading = at(number_member(json, "pt", from));
    const Stamp before = clock.last();
    Stamp stamp;
    if (event.rfind("recv ", 0) == 0) {
      stamp = clock.receive(sent.at(event.substr(5)), reading).stamp;
      CHECK(stamp > sent.at(event.substr(5)));
    } else {
      stamp = clock.next(reading);
    }
    if (event.rfind("send ", 0) == 0) {
      sent[event.substr(5)] = stamp;
    }
    CHECK(stamp.ms == number_member(json, "l", from));
    CHECK(stamp.counter == number_member(json, "c", from));
    CHECK(stamp > before);
    ++step_count;
  }
  CHECK(step_count == 15);
}

TEST_CASE("the next stamp is always later, also when the wall clock goes back") {
  HybridClock clock(built_ms);
  Stamp last = clock.next(at(built_ms + 5000));
  for (const std::int64_t wall : {4000, 5000, 0, -7, 5001, 3}) {
    const Stamp stamp = clock.next(at(built_ms + wall));
    CHECK(stamp > last);
    last = stamp;
  }
}

TEST_CASE("the counter overflows into the next millisecond and does not wait") {
  HybridClock clock(built_ms, Stamp{built_ms + 10, 0xffff});
  CHECK(clock.next(at(built_ms)) == Stamp{built_ms + 11, 0});
  HybridClock receiver(built_ms);
  CHECK(receiver.receive(Stamp{built_ms + 10, 0xffff}, at(built_ms)).stamp == Stamp{built_ms + 11, 0});
}

TEST_CASE("HC-083: a stamp more than a day ahead of a plausible clock is flagged and not followed") {
  HybridClock clock(built_ms);
  const Stamp own = clock.next(at(built_ms + 1000));
  const auto near = clock.receive(Stamp{built_ms + 1000 + day_ms, 0}, at(built_ms + 1000));
  CHECK(near.adopted);
  HybridClock careful(built_ms, own);
  const auto far = careful.receive(Stamp{built_ms + 1001 + day_ms, 0}, at(built_ms + 1000));
  CHECK_FALSE(far.adopted);
  CHECK(careful.last() == own);
  CHECK(careful.next(at(built_ms + 2000)).ms == built_ms + 2000);
}

TEST_CASE("a clock that is unset or older than the program follows the others") {
  for (const Reading& reading : {at(0, ClockQuality::unset), at(built_ms - 1), at(built_ms + 5, ClockQuality::unset)}) {
    HybridClock clock(built_ms);
    CHECK_FALSE(clock.is_plausible(reading));
    const Stamp peer{built_ms + 400 * day_ms, 7};
    CHECK(clock.receive(peer, reading).adopted);
    CHECK(clock.next(reading) > peer);
    // But not to the end of the 48 bits, where no later stamp is left.
    CHECK_FALSE(clock.receive(Stamp{stamp_ms_max, 0xffff}, reading).adopted);
  }
}
