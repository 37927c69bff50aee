// Speaks JSON-RPC with the methods of the specification's own examples, so that clients written by others can be run
// against our envelope and framing: protocol_table --stdio lines|headers [--limit BYTES] (largest message and header).
#include "rpc/protocol/envelope.hpp"
#include "rpc/transport/stdio.hpp"
#include "tests/outside/rpc/protocol_methods.hpp"

#include <charconv>
#include <csignal>
#include <iostream>

int main(int count, char** words) {
  using namespace limbledger;
  rpc::Stdio stdio;
  bool understood = count == 3 || count == 5;
  for (int i = 1; understood && i < count; i += 2) {
    const std::string_view name = words[i];
    const std::string_view value = words[i + 1];
    if (name == "--stdio" && (value == "lines" || value == "headers")) {
      stdio.framing = value == "lines" ? rpc::Framing::lines : rpc::Framing::headers;
    } else if (name == "--limit") {
      std::size_t bytes = 0;
      understood = std::from_chars(value.data(), value.data() + value.size(), bytes).ec == std::errc{};
      stdio.limits.message_bytes = bytes;
      stdio.limits.header_bytes = bytes;
    } else {
      understood = false;
    }
  }
  if (!understood) {
    std::cerr << "usage: protocol_table --stdio lines|headers [--limit BYTES]\n";
    return 2;
  }
  std::signal(SIGPIPE, SIG_IGN);
  service::Context context;
  const rpc::Service service{rpc::protocol_methods(), context, stdio.limits, {}, {}};
  const auto outcome = rpc::serve_stdio(
      stdio, [&](std::string_view text) { return rpc::answer(text, service); }, [&] { return rpc::answer_too_large(service); });
  if (!outcome.why.empty()) {
    std::cerr << "protocol_table: " << outcome.why << "\n";
  }
  return outcome.end == rpc::StdioEnd::input_ended ? 0 : 1;
}
