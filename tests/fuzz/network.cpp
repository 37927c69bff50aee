// One thread and no clock: the connection's other end is a pair of sockets in this process, and the network runs until it has
// nothing left to do.
#include "rpc/access/visit.hpp"
#include "rpc/transport/connection.hpp"
#include "core/service/methods/ledger/session.hpp"
#include "tests/fuzz/invented_ledger.hpp"
#include "tests/fuzz/targets.hpp"
#include "tests/outside/rpc/protocol_methods.hpp"

#include <sys/socket.h>
#include <unistd.h>

#include <string>
#include <vector>

namespace limbledger::fuzz {

namespace {

constexpr std::string_view piece_end = "\xFF|";
constexpr int quiet_rounds = 3;

struct Served {
  StillWorld world;
  service::Context context;
  std::vector<service::Method> table;
  rpc::Tokens tokens{world};
  std::string token = tokens.make({service::Scope::examiner, std::nullopt}).text;

  Served() {
    const auto protocol = rpc::protocol_methods();
    table.assign(protocol.begin(), protocol.end());
    for (const service::Method& method : service::methods()) {
      if (method.name == "session.open" || method.name == "session.end") {
        table.push_back(method);
      }
    }
    context.caller.scope = service::Scope::none;
    static const Desktop& desktop = *new_desktop().release();  // session.open says how it stands with it
    context.desk = desktop.desk.get();
    context.edition = desktop.context.edition;
  }
};

// The token stands in the input as so many '@'.
std::string with_token(std::string_view bytes, const std::string& token) {
  std::string out(bytes);
  const std::string place(token.size(), '@');
  for (std::size_t at = out.find(place); at != std::string::npos; at = out.find(place, at + token.size())) {
    out.replace(at, place.size(), token);
  }
  return out;
}

// Runs what is ready; what is sent is read away, so that nobody waits for room.
void run_ready(rpc::Network& network, int client, std::size_t& heard) {
  char buffer[16384];
  for (int quiet = 0; quiet < quiet_rounds;) {
    if (network.io.stopped()) {
      network.io.restart();
    }
    const std::size_t ran = network.io.poll();
    const ssize_t got = ::recv(client, buffer, sizeof buffer, MSG_DONTWAIT);
    heard += got > 0 ? static_cast<std::size_t>(got) : 0;
    quiet = ran == 0 && got <= 0 ? quiet + 1 : 0;
  }
}

}  // namespace

void network(std::string_view bytes) {
  Served served;
  rpc::Service service{served.table, served.context, {}, {}, {}};
  rpc::Visits visits(service, served.tokens, 40211);
  rpc::NetLimits limits;
  limits.message_bytes = 4096;
  service.limits.message_bytes = limits.message_bytes;
  rpc::Network inside(limits);
  inside.begin = [&] { return visits.begin(); };
  int ends[2];
  must(::socketpair(AF_UNIX, SOCK_STREAM, 0, ends) == 0, "there is a pair of sockets");
  rpc::Socket socket(inside.io.get_executor());
  rpc::ErrorCode failed;
  socket.assign(boost::asio::ip::tcp::v4(), ends[0], failed);
  must(!failed, "the socket is taken");
  rpc::begin_http(inside, std::move(socket), false);
  const std::string sent = with_token(bytes, served.token);
  std::string_view left = sent;
  std::size_t heard = 0;
  run_ready(inside, ends[1], heard);
  while (!left.empty()) {
    const std::size_t end = left.find(piece_end);
    std::string_view piece = left.substr(0, end);
    left = end == std::string_view::npos ? std::string_view() : left.substr(end + piece_end.size());
    while (!piece.empty()) {
      const ssize_t went = ::send(ends[1], piece.data(), piece.size(), MSG_DONTWAIT | MSG_NOSIGNAL);
      run_ready(inside, ends[1], heard);
      if (went <= 0) {
        break;  // the other end has closed
      }
      piece.remove_prefix(static_cast<std::size_t>(went));
    }
    visits.tell_changes();
  }
  ::shutdown(ends[1], SHUT_WR);
  run_ready(inside, ends[1], heard);
  const bool outlived = !inside.connections.empty();
  ::close(ends[1]);
  const std::vector<std::pair<rpc::Connection* const, std::shared_ptr<rpc::Connection>>> rest(inside.connections.begin(), inside.connections.end());
  for (const auto& [name, connection] : rest) {
    connection->drop();
  }
  inside.stopping = true;
  do {
    inside.io.restart();
  } while (inside.io.poll() != 0);
  must(!outlived, "no connection outlives its client");
  must(inside.refusals == 0 && inside.giving_way == 0, "what is counted is counted back");
}

}  // namespace limbledger::fuzz
