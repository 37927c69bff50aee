// The bounds are the plan's: half a second to a second, between 19 MiB with 2 passes and 256 MiB with 4.
#include "rpc/access/calibrate.hpp"

#include <doctest/doctest.h>

#include <algorithm>

namespace limbledger::rpc {

namespace {

struct Machine {
  double ms_a_mib = 1;            // for one pass over one MiB
  std::uint32_t kib_max = 1 << 30;
  std::uint32_t kib_seen = 0;

  ArgonCost settle() {
    return calibrate([this](const ArgonCost& cost) -> std::optional<std::int64_t> {
      kib_seen = std::max(kib_seen, cost.kib);
      if (cost.kib > kib_max) {
        return std::nullopt;
      }
      return took(cost);
    });
  }
  [[nodiscard]] std::int64_t took(const ArgonCost& cost) const {
    return static_cast<std::int64_t>(ms_a_mib * cost.passes * (cost.kib / 1024.0));
  }
};

}  // namespace

TEST_CASE("unlocking costs half a second to a second on every machine that the bounds allow") {
  // From one that takes a second for the least that is allowed, to one that takes half a second for the most.
  for (double ms_a_mib = 1000.0 / 38; ms_a_mib > 500.0 / 1024; ms_a_mib *= 0.97) {
    CAPTURE(ms_a_mib);
    Machine machine{ms_a_mib};
    const ArgonCost cost = machine.settle();
    CHECK(machine.took(cost) >= 499);
    CHECK(machine.took(cost) <= 1000);
    CHECK(cost.kib >= 19 * 1024);
    CHECK(cost.kib <= 256 * 1024);
    CHECK(cost.passes >= 2);
    CHECK(cost.passes <= 4);
  }
}

TEST_CASE("beyond the bounds it stays at them, and memory that is not there is not asked for again") {
  CHECK(Machine{1000}.settle() == ArgonCost{2, 19 * 1024});
  CHECK(Machine{0.001}.settle() == ArgonCost{4, 256 * 1024});
  Machine quick_and_small{0.001, 100 * 1024};
  CHECK(quick_and_small.settle() == ArgonCost{3, 96 * 1024});
  CHECK(quick_and_small.kib_seen == 128 * 1024);
  CHECK(Machine{4, 40 * 1024}.settle() == ArgonCost{2, 32 * 1024});
  CHECK(Machine{4}.settle() == ArgonCost{});  // 768 ms: the default stays
}

TEST_CASE("one derivation is really made and timed") {
  CHECK(measure_cost({2, 19 * 1024}).has_value());
  CHECK_FALSE(measure_cost({2, 1U << 31}).has_value());  // 2 TiB
}

}  // namespace limbledger::rpc
