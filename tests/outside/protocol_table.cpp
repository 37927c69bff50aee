// Speaks JSON-RPC with the methods of the specification's own examples, so that clients written by others can be run
// against our envelope and framing: protocol_table --stdio lines|headers
#include "rpc/protocol/envelope.hpp"
#include "rpc/transport/stdio.hpp"
#include "tests/outside/rpc/protocol_methods.hpp"

#include <csignal>
#include <iostream>

int main(int count, char** words) {
  using namespace limbledger;
  const std::string_view how = count == 3 && std::string_view(words[1]) == "--stdio" ? words[2] : "";
  if (how != "lines" && how != "headers") {
    std::cerr << "usage: protocol_table --stdio lines|headers\n";
    return 2;
  }
  std::signal(SIGPIPE, SIG_IGN);
  service::Context context;
  const rpc::Service service{rpc::protocol_methods(), context, {}, {}, {}};
  rpc::Stdio stdio;
  stdio.framing = how == "lines" ? rpc::Framing::lines : rpc::Framing::headers;
  const auto outcome = rpc::serve_stdio(
      stdio, [&](std::string_view text) { return rpc::answer(text, service); }, [&] { return rpc::answer_too_large(service); });
  if (!outcome.why.empty()) {
    std::cerr << "protocol_table: " << outcome.why << "\n";
  }
  return outcome.end == rpc::StdioEnd::input_ended ? 0 : 1;
}
