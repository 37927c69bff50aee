// The methods that the worked exchanges of the JSON-RPC 2.0 specification (section 7) call, as a table of their own.
#pragma once

#include "core/service/call.hpp"
#include "core/wire/number.hpp"

#include <array>

namespace limbledger::rpc {

using Whole = wire::Count<-1'000'000'000, 1'000'000'000>;

struct Subtraction {
  Whole minuend;
  Whole subtrahend;
};
BOOST_DESCRIBE_STRUCT(Subtraction, (), (minuend, subtrahend))

inline Result<Whole> subtract(service::Context&, const Subtraction& params) {
  return Whole{params.minuend.steps - params.subtrahend.steps};
}

inline Result<Whole> sum(service::Context&, const wire::Raw& params) {
  const auto numbers = wire::read_text<std::vector<Whole>>(params.json);
  if (!numbers) {
    return numbers.error();
  }
  Whole total;
  for (const Whole& number : *numbers) {
    total.steps += number.steps;
  }
  return total;
}

inline Result<wire::Raw> get_data(service::Context&, const wire::Raw&) { return wire::Raw{R"(["hello",5])"}; }
inline Result<wire::Raw> take_anything(service::Context&, const wire::Raw&) { return wire::Raw{"null"}; }

// Fails inside, for the answers that no specification shows.
inline Result<wire::Raw> break_down(service::Context&, const wire::Raw&) { return wire::Fault{"internal.failure", ""}; }
inline Result<wire::Raw> echo(service::Context&, const wire::Raw& params) { return params; }

inline std::span<const service::Method> protocol_methods() {
  static constexpr std::array table{
      service::bind<&subtract>("subtract", service::to_anybody, "minuend less subtrahend"),
      service::bind<&sum>("sum", service::to_anybody, "adds all numbers by position"),
      service::bind<&get_data>("get_data", service::to_anybody, "hello and 5"),
      service::bind<&take_anything>("notify_hello", service::to_anybody, "accepts anything"),
      service::bind<&take_anything>("notify_sum", service::to_anybody, "accepts anything"),
      service::bind<&take_anything>("update", service::to_anybody, "accepts anything"),
      service::bind<&break_down>("break_down", service::to_anybody, "always fails inside"),
      service::bind<&echo>("echo", service::to_anybody, "gives the params back as they were written"),
  };
  return table;
}

}  // namespace limbledger::rpc
