#include "core/wire/number.hpp"

#include <doctest/doctest.h>

namespace limbledger::wire {

namespace {

std::string read_as(std::string_view token, std::int32_t per_unit) {
  std::int64_t steps = 0;
  const TextProblem problem = read_number(token, per_unit, steps);
  return problem.empty() ? std::to_string(steps) : std::string(problem);
}

}  // namespace

TEST_CASE("a number is read from its digits as a whole count of steps") {
  CHECK(read_as("118.5", 10) == "1185");
  CHECK(read_as("118.50", 10) == "1185");
  CHECK(read_as("-0.1", 10) == "-1");
  CHECK(read_as("112", 10) == "1120");
  CHECK(read_as("1e2", 1) == "100");
  CHECK(read_as("1.5E1", 1) == "15");
  CHECK(read_as("1200e-2", 1) == "12");
  CHECK(read_as("0.125", 1000) == "125");
  CHECK(read_as("0.1", 10) == "1");  // exactly, though no double is 0.1
}

TEST_CASE("more decimals than the unit has are refused, not rounded") {
  CHECK(read_as("118.55", 10) == "value.step");
  CHECK(read_as("1.5", 1) == "value.step");
  CHECK(read_as("1e-1", 1) == "value.step");
}

// Hard case HC-102: -0 equals 0; the rest is refused by a written rule and no infinity comes to be.
TEST_CASE("huge and tiny numbers are refused and minus zero is zero") {
  CHECK(read_as("-0", 10) == "0");
  CHECK(read_as("-0.0e9", 10) == "0");
  CHECK(read_as("0.1e-400", 10) == "value.step");
  CHECK(read_as("1e400", 10) == "value.out_of_range");
  CHECK(read_as("1e999999999999999999999", 10) == "value.out_of_range");
  CHECK(read_as("1e-999999999999999999999", 10) == "value.step");
  CHECK(read_as(std::string(400, '7'), 1) == "value.out_of_range");
  CHECK(read_as("0." + std::string(400, '7'), 1) == "value.step");
  CHECK(read_as("0." + std::string(400, '0'), 10) == "0");
}

// ECMA-262, Number.MAX_SAFE_INTEGER.
TEST_CASE("a count past 2^53 - 1 is refused, because JavaScript could not hold it") {
  CHECK(read_as("9007199254740991", 1) == "9007199254740991");
  CHECK(read_as("9007199254740992", 1) == "value.out_of_range");
  CHECK(read_as("-9007199254740991", 1) == "-9007199254740991");
  CHECK(read_as("900719925474099.1", 10) == "9007199254740991");
  CHECK(read_as("900719925474099.2", 10) == "value.out_of_range");
}

TEST_CASE("a number is written with the fewest decimals, without exponent or minus zero") {
  CHECK(write_number(1185, 10) == "118.5");
  CHECK(write_number(1180, 10) == "118");
  CHECK(write_number(-1, 10) == "-0.1");
  CHECK(write_number(0, 10) == "0");
  CHECK(write_number(5, 1000) == "0.005");
  CHECK(write_number(-1250, 1000) == "-1.25");
  CHECK(write_number(9007199254740991, 1) == "9007199254740991");
}

TEST_CASE("every tenth between -200 and 200 comes back as it was written") {
  for (std::int64_t steps = -2000; steps <= 2000; ++steps) {
    std::int64_t again = 1;
    REQUIRE(read_number(write_number(steps, 10), 10, again).empty());
    REQUIRE(again == steps);
  }
}

TEST_CASE("the one rounding goes half away from zero") {
  CHECK(round_divide(5, 2) == 3);
  CHECK(round_divide(-5, 2) == -3);
  CHECK(round_divide(5, -2) == -3);
  CHECK(round_divide(7, 3) == 2);
  CHECK(round_divide(-7, 3) == -2);
  CHECK(round_divide(0, 7) == 0);
}

}  // namespace limbledger::wire
