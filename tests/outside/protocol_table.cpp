// Speaks JSON-RPC with the methods of the specification's own examples, so that clients written by others can be run
// against our envelope, framing and network: protocol_table --stdio lines|headers [--limit BYTES] (largest message and
// header), or protocol_table --http PORT, which prints the port and ends with its input.
#include "rpc/access/visit.hpp"
#include "rpc/program/world.hpp"
#include "rpc/protocol/envelope.hpp"
#include "rpc/transport/listener.hpp"
#include "rpc/transport/stdio.hpp"
#include "tests/outside/rpc/protocol_methods.hpp"

#include <charconv>
#include <csignal>
#include <iostream>

namespace {

using namespace limbledger;

int serve_network(const rpc::Service& service, std::uint16_t wanted) {
  rpc::NetLimits limits;
  limits.session_ms = 600'000;  // the table has no sessions
  std::string why;
  const auto listener = rpc::Listener::open(wanted, limits, why);
  if (!listener) {
    std::cerr << "protocol_table: " << why << "\n";
    return 1;
  }
  rpc::MachineWorld world;
  rpc::Tokens tokens(world);
  rpc::Visits visits(service, tokens, listener->port());
  std::cout << listener->port() << std::endl;
  listener->run([&] { return visits.begin(); }, 0, nullptr, 1000);
  return 0;
}

}  // namespace

int main(int count, char** words) {
  rpc::Stdio stdio;
  std::optional<std::uint16_t> port;
  bool understood = count == 3 || count == 5;
  const auto number = [&](std::string_view text, auto& into) {
    understood = std::from_chars(text.data(), text.data() + text.size(), into).ec == std::errc{};
  };
  for (int i = 1; understood && i < count; i += 2) {
    const std::string_view name = words[i];
    const std::string_view value = words[i + 1];
    if (name == "--stdio" && (value == "lines" || value == "headers")) {
      stdio.framing = value == "lines" ? rpc::Framing::lines : rpc::Framing::headers;
    } else if (name == "--http") {
      number(value, port.emplace());
    } else if (name == "--limit") {
      std::size_t bytes = 0;
      number(value, bytes);
      stdio.limits.message_bytes = bytes;
      stdio.limits.header_bytes = bytes;
    } else {
      understood = false;
    }
  }
  if (!understood) {
    std::cerr << "usage: protocol_table --stdio lines|headers [--limit BYTES], or protocol_table --http PORT\n";
    return 2;
  }
  std::signal(SIGPIPE, SIG_IGN);
  service::Context context;
  const rpc::Service service{rpc::protocol_methods(), context, stdio.limits, {}, {}};
  if (port) {
    return serve_network(service, *port);
  }
  const auto outcome = rpc::serve_stdio(
      stdio, [&](std::string_view text) { return rpc::answer(text, service); }, [&] { return rpc::answer_too_large(service); });
  if (!outcome.why.empty()) {
    std::cerr << "protocol_table: " << outcome.why << "\n";
  }
  return outcome.end == rpc::StdioEnd::input_ended ? 0 : 1;
}
