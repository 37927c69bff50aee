// One empty call over WebSocket and over HTTP against a bare TCP echo of the same bytes, all on one core, in turns: what the
// carriers, the token and the envelope cost beside the kernel. The second pair carries a message of 2 KB up and 1 KB down,
// for a call that copies; it is shown and not judged. Every figure is the median of the rounds' medians.
#include "rpc/access/visit.hpp"
#include "rpc/transport/listener.hpp"
#include "tests/bench/bench.hpp"

#include <arpa/inet.h>
#include <netinet/in.h>
#include <netinet/tcp.h>
#include <sched.h>
#include <sys/epoll.h>
#include <sys/socket.h>
#include <unistd.h>

#include <array>
#include <thread>

namespace limbledger::bench {

namespace {

constexpr int rounds = 15;
constexpr int calls_a_round = 2000;

struct Nothing {};
BOOST_DESCRIBE_STRUCT(Nothing, (), ())

Result<Nothing> nothing(service::Context&, const Nothing&) { return Nothing{}; }
Result<wire::Raw> copies(service::Context&, const wire::Raw&) {
  static const wire::Raw reply{"{\"text\":\"" + std::string(920, 'x') + "\"}"};
  return reply;
}

constexpr std::array table{
    service::bind<&nothing>("call.empty", service::to_anybody, "does nothing"),
    service::bind<&copies>("call.large", service::to_anybody, "takes much and gives much"),
};

void stay_on_one_core() {
  cpu_set_t one;
  CPU_ZERO(&one);
  CPU_SET(0, &one);
  ::sched_setaffinity(0, sizeof one, &one);
}

[[noreturn]] void give_up(const char* what) {
  std::perror(what);
  std::exit(1);
}

sockaddr_in loopback(std::uint16_t port) {
  sockaddr_in address{};
  address.sin_family = AF_INET;
  address.sin_port = htons(port);
  address.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
  return address;
}

void at_once(int file) {
  const int yes = 1;
  ::setsockopt(file, IPPROTO_TCP, TCP_NODELAY, &yes, sizeof yes);
}

// Takes `up` bytes and gives `down` bytes, for ever.
class Echo {
 public:
  Echo(std::size_t up, std::size_t down) : up_(up), down_(down), server_(::socket(AF_INET, SOCK_STREAM, 0)) {
    sockaddr_in address = loopback(0);
    socklen_t size = sizeof address;
    if (::bind(server_, reinterpret_cast<sockaddr*>(&address), size) != 0 || ::listen(server_, 1) != 0 ||
        ::getsockname(server_, reinterpret_cast<sockaddr*>(&address), &size) != 0) {
      give_up("echo");
    }
    port = ntohs(address.sin_port);
    thread_ = std::thread([this] { run(); });
  }
  ~Echo() {
    thread_.join();
    ::close(server_);
  }
  Echo(const Echo&) = delete;
  Echo& operator=(const Echo&) = delete;
  std::uint16_t port = 0;

 private:
  void run() const {
    const int file = ::accept4(server_, nullptr, nullptr, SOCK_NONBLOCK);
    at_once(file);
    const int queue = ::epoll_create1(0);
    epoll_event event{EPOLLIN, {}};
    ::epoll_ctl(queue, EPOLL_CTL_ADD, file, &event);
    std::vector<char> in(up_);
    const std::string out(down_, 'x');
    std::size_t have = 0;
    for (;;) {
      const ssize_t got = ::recv(file, in.data() + have, up_ - have, 0);
      if (got < 0) {
        ::epoll_wait(queue, &event, 1, -1);
        continue;
      }
      have += static_cast<std::size_t>(got);
      if (got == 0 || (have == up_ && ::send(file, out.data(), down_, MSG_NOSIGNAL) < 0)) {
        break;
      }
      have = have == up_ ? 0 : have;
    }
    ::close(queue);
    ::close(file);
  }

  std::size_t up_;
  std::size_t down_;
  int server_;
  std::thread thread_;
};

class Client {
 public:
  explicit Client(std::uint16_t port) : file_(::socket(AF_INET, SOCK_STREAM, 0)) {
    const sockaddr_in address = loopback(port);
    if (::connect(file_, reinterpret_cast<const sockaddr*>(&address), sizeof address) != 0) {
      give_up("connect");
    }
    at_once(file_);
  }
  ~Client() { ::close(file_); }
  Client(const Client&) = delete;
  Client& operator=(const Client&) = delete;

  void send(const std::string& bytes) const {
    if (::send(file_, bytes.data(), bytes.size(), MSG_NOSIGNAL) != static_cast<ssize_t>(bytes.size())) {
      give_up("send");
    }
  }
  void take(std::size_t count) {
    room_.resize(std::max(room_.size(), count));
    for (std::size_t have = 0; have < count;) {
      const ssize_t got = ::recv(file_, room_.data() + have, count - have, 0);
      if (got <= 0) {
        give_up("recv");
      }
      have += static_cast<std::size_t>(got);
    }
  }
  // What comes first, in one piece.
  std::string some() {
    room_.resize(65536);
    const ssize_t got = ::recv(file_, room_.data(), room_.size(), 0);
    return {room_.data(), static_cast<std::size_t>(std::max<ssize_t>(got, 0))};
  }

 private:
  int file_;
  std::string room_;
};

std::string masked_frame(const std::string& text) {
  std::string out = "\x81";
  if (text.size() < 126) {
    out += static_cast<char>(0x80U | text.size());
  } else {
    out += '\xFE';
    out += static_cast<char>(text.size() >> 8U);
    out += static_cast<char>(text.size() & 0xFFU);
  }
  const std::string mask = "\x5a\xa5\x3c\xc3";
  out += mask;
  for (std::size_t i = 0; i < text.size(); ++i) {
    out += static_cast<char>(text[i] ^ mask[i % 4]);
  }
  return out;
}

// A peer: what is sent, how much comes back, and the time of each call.
struct Peer {
  Client client;
  std::string request;
  std::size_t reply_bytes = 0;
  std::vector<double> medians;

  void round() {
    std::vector<double> times;
    for (int i = 0; i < calls_a_round; ++i) {
      times.push_back(seconds([&] {
        client.send(request);
        client.take(reply_bytes);
      }));
    }
    medians.push_back(median(times));
  }
  [[nodiscard]] double us() const { return median(medians) * 1e6; }
};

struct Ratios {
  double websocket = 0;
  double http = 0;
};

Ratios measure(std::uint16_t port, const std::string& token, const std::string& call) {
  const std::string host = "Host: 127.0.0.1:" + std::to_string(port) + "\r\n";
  Peer http{Client(port),
            "POST /rpc HTTP/1.1\r\n" + host + "Authorization: Bearer " + token + "\r\nContent-Type: application/json\r\nContent-Length: " +
                std::to_string(call.size()) + "\r\n\r\n" + call,
            0,
            {}};
  http.client.send(http.request);
  const std::string first = http.client.some();
  http.reply_bytes = first.size();
  const std::size_t down = first.size() - first.find("\r\n\r\n") - 4;

  Peer websocket{Client(port), masked_frame(call), down + (down < 126 ? 2 : 4), {}};
  websocket.client.send("GET /rpc HTTP/1.1\r\n" + host +
                        "Upgrade: websocket\r\nConnection: Upgrade\r\nSec-WebSocket-Version: 13\r\nSec-WebSocket-Key: dGhlIHNhbXBsZSBub25jZQ==\r\n\r\n");
  static_cast<void>(websocket.client.some());

  Ratios ratios;
  Echo echoing(call.size(), down);
  {
    Peer echo{Client(echoing.port), call, down, {}};
    for (int round = 0; round < rounds; ++round) {
      echo.round();
      websocket.round();
      http.round();
    }
    ratios = {websocket.us() / echo.us(), http.us() / echo.us()};
    std::printf("%zu bytes up, %zu down: echo %.1f us, WebSocket %.1f us (%.2f x), HTTP %.1f us (%.2f x)\n", call.size(), down, echo.us(), websocket.us(),
                ratios.websocket, http.us(), ratios.http);
  }
  return ratios;
}

int run() {
  stay_on_one_core();
  BenchWorld world;
  service::Context context;
  context.caller.scope = service::Scope::none;
  const rpc::Service service{table, context, {}, {}, {}};
  rpc::NetLimits limits;
  limits.messages_rush = 1e12;
  limits.session_ms = 3'600'000;
  std::string why;
  const auto listener = rpc::Listener::open(0, limits, why);
  if (!listener) {
    std::fprintf(stderr, "listen: %s\n", why.c_str());
    return 1;
  }
  rpc::Tokens tokens(world, {64, 1'000'000'000, 1'000'000'000'000});
  rpc::Visits visits(service, tokens, listener->port());
  const std::string token = tokens.make({service::Scope::examiner, std::nullopt}).text;
  std::array<int, 2> stop{};
  if (::pipe(stop.data()) != 0) {
    give_up("pipe");
  }
  std::thread serving([&] { listener->run([&] { return visits.begin(); }, stop[0], nullptr, 1000); });
  static_cast<void>(measure(listener->port(), token,
                            R"({"jsonrpc":"2.0","method":"call.large","params":{"texts":[")" + std::string(1930, 'y') + R"("]},"id":1})"));
  const Ratios ratios = measure(listener->port(), token, R"({"jsonrpc":"2.0","method":"call.empty","params":{},"id":1})");
  ::close(stop[1]);
  serving.join();
  const int websocket = judge("an empty call over WebSocket against the echo", ratios.websocket, 1.5, 1.35);
  const int http = judge("an empty call over HTTP against the echo", ratios.http, 1.9, 1.67);
  std::printf("%d passed, %d failed\n", 2 - websocket - http, websocket + http);
  return websocket + http;
}

}  // namespace

}  // namespace limbledger::bench

int main() { return limbledger::bench::run(); }
