// Measured quantities as whole counts of their step, each its own type so that degrees never meet millimetres. Steps: deg 0.1,
// mm 1, s 0.1, mm_hg 1, cel 0.1, n 1, kg 0.1 (contract, section 1). The limits here are what the type can hold; what an
// item refuses or asks back stands in the catalogue.
#pragma once

#include "core/wire/number.hpp"
#include "core/wire/type.hpp"

#include <cstdint>
#include <string>

namespace limbledger::model {

template <class Unit>
struct Quantity {
  std::int64_t steps = 0;

  static constexpr wire::NumberRule wire_rule{Unit::low, Unit::high, Unit::per_unit, Unit::code};
  [[nodiscard]] std::string to_text() const { return wire::write_number(steps, Unit::per_unit); }

  friend bool operator==(const Quantity&, const Quantity&) = default;
  friend bool operator<(const Quantity& a, const Quantity& b) { return a.steps < b.steps; }
  friend Quantity operator-(const Quantity& a) { return {-a.steps}; }
  friend Quantity operator-(const Quantity& a, const Quantity& b) { return {a.steps - b.steps}; }
  friend Quantity operator+(const Quantity& a, const Quantity& b) { return {a.steps + b.steps}; }
};

struct DegreeUnit {
  static constexpr std::int64_t low = -36000, high = 36000;
  static constexpr std::int32_t per_unit = 10;
  static constexpr std::string_view code = "deg";
};
struct MillimetreUnit {
  static constexpr std::int64_t low = 0, high = 100000;
  static constexpr std::int32_t per_unit = 1;
  static constexpr std::string_view code = "mm";
};
struct SecondUnit {
  static constexpr std::int64_t low = 0, high = 864000;
  static constexpr std::int32_t per_unit = 10;
  static constexpr std::string_view code = "s";
};
struct NewtonUnit {
  static constexpr std::int64_t low = 0, high = 100000;
  static constexpr std::int32_t per_unit = 1;
  static constexpr std::string_view code = "N";
};
struct MillimetreOfMercuryUnit {
  static constexpr std::int64_t low = 0, high = 10000;
  static constexpr std::int32_t per_unit = 1;
  static constexpr std::string_view code = "mm[Hg]";
};
struct CelsiusUnit {
  static constexpr std::int64_t low = -1000, high = 1000;
  static constexpr std::int32_t per_unit = 10;
  static constexpr std::string_view code = "Cel";
};
struct KilogramUnit {
  static constexpr std::int64_t low = 0, high = 100000;
  static constexpr std::int32_t per_unit = 10;
  static constexpr std::string_view code = "kg";
};

using Degrees = Quantity<DegreeUnit>;
using Millimetres = Quantity<MillimetreUnit>;
using Seconds = Quantity<SecondUnit>;
using Newtons = Quantity<NewtonUnit>;
using MillimetresOfMercury = Quantity<MillimetreOfMercuryUnit>;
using Celsius = Quantity<CelsiusUnit>;
using Kilograms = Quantity<KilogramUnit>;

}  // namespace limbledger::model
