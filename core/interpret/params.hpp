// Params of a message as one JSON object, members in the order they are given. Figures come in thousandths and leave in
// steps of 0.1, rounded by the one rounding function.
#pragma once

#include "core/wire/number.hpp"
#include "core/wire/type.hpp"
#include "core/wire/write.hpp"

#include <cstdint>
#include <string>
#include <string_view>

namespace limbledger::interpret {

[[nodiscard]] inline std::string in_tenths(std::int64_t thousandths) { return wire::write_number(wire::round_divide(thousandths, 100), 10); }

class Params {
 public:
  Params& figure(std::string_view name, std::int64_t thousandths) { return json(name, in_tenths(thousandths)); }
  // With all its decimals: a figure as its row has it.
  Params& exact(std::string_view name, std::int64_t thousandths) { return json(name, wire::write_number(thousandths, 1000)); }
  Params& word(std::string_view name, std::string_view text) { return json(name, wire::quoted(text)); }
  Params& yes(std::string_view name) { return json(name, "true"); }
  [[nodiscard]] wire::Raw raw() const { return {"{" + members_ + "}"}; }

 private:
  Params& json(std::string_view name, const std::string& value) {
    members_ += (members_.empty() ? "" : ",") + wire::quoted(name) + ":" + value;
    return *this;
  }

  std::string members_;
};

}  // namespace limbledger::interpret
