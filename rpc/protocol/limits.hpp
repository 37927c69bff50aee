// How large a message may be. The figures are the contract's (section 1); tests set smaller ones.
#pragma once

#include "core/wire/parse.hpp"

#include <cstddef>

namespace limbledger::rpc {

struct Limits {
  std::size_t message_bytes = wire::message_bytes_max;
  std::size_t depth = wire::depth_max_default;
  std::size_t batch_calls = 100;
  std::size_t header_bytes = std::size_t{8} * 1024;         // of one Content-Length frame
  std::size_t skipped_bytes = std::size_t{16} * 1024 * 1024;  // a longer body ends the connection instead of being passed over
};

}  // namespace limbledger::rpc
