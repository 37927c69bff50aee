#include "core/model/quantity.hpp"

#include "core/model/value.hpp"
#include "core/wire/read.hpp"
#include "core/wire/write.hpp"

#include <doctest/doctest.h>

using namespace limbledger;

namespace {

// The code of the first fault, or the text written back.
template <class Q>
[[nodiscard]] std::string read_back(std::string_view json) {
  const auto read = wire::read_text<Q>(json);
  if (!read) {
    const wire::Refusal refusal = read.error();
    return refusal.faults.front().code;
  }
  return wire::write(*read);
}

}  // namespace

TEST_CASE("a quantity is read from its digits and written with the fewest") {
  CHECK(read_back<model::Degrees>("118.5") == "118.5");
  CHECK(read_back<model::Degrees>("118.50") == "118.5");
  CHECK(read_back<model::Degrees>("1.185e2") == "118.5");
  CHECK(read_back<model::Degrees>("0.1") == "0.1");
  CHECK(read_back<model::Celsius>("36.8") == "36.8");
  CHECK(read_back<model::Kilograms>("70") == "70");
}

TEST_CASE("extra decimals are refused, not rounded") {
  CHECK(read_back<model::Degrees>("118.55") == "value.step");
  CHECK(read_back<model::Millimetres>("865.5") == "value.step");
  CHECK(read_back<model::Newtons>("210.1") == "value.step");
  CHECK(read_back<model::MillimetresOfMercury>("140.5") == "value.step");
  CHECK(read_back<model::Seconds>("30.25") == "value.step");
}

TEST_CASE("HC-102: huge and tiny numbers, and minus zero") {
  CHECK(read_back<model::Degrees>("1e30") == "value.out_of_range");
  CHECK(read_back<model::Degrees>("1e400") == "value.out_of_range");
  CHECK(read_back<model::Degrees>(std::string(400, '9')) == "value.out_of_range");
  // What is kept as it was written must be readable by others, so nothing that they would take for infinite is kept.
  CHECK(read_back<wire::Raw>(R"({"deg":[1e400]})") == "value.out_of_range");
  CHECK(read_back<model::Degrees>("-0") == "0");
  CHECK(read_back<model::Degrees>("-0.0") == "0");
  CHECK(read_back<model::Degrees>("0.1e-400") == "value.step");
  CHECK(read_back<model::Degrees>("0e400") == "0");
}

TEST_CASE("HC-103: not a number is no angle") {
  CHECK(read_back<model::Degrees>("NaN") == "json.syntax");
  CHECK(read_back<model::Degrees>("Infinity") == "json.syntax");
  CHECK(read_back<model::Degrees>("\"NaN\"") == "params.wrong_type");
  CHECK(read_back<model::Degrees>("\"110\"") == "params.wrong_type");
  // Null reads as absent: the required member is named as missing.
  const auto count = wire::read_text<model::CountValue>(R"({"count":null})");
  REQUIRE(count.has_error());
  const wire::Refusal refusal = count.error();
  CHECK(refusal.faults.front().code == "params.missing");
  CHECK(refusal.faults.front().path == "/count");
}
