// Eight clients that each ask, wait for the answer and ask again: our network side against the npm package jayson, a JSON-RPC server
// for Node, with the same calls over the same carrier, in turns. One core asks and one core answers, whoever it is. Every
// figure is the median of the rounds. HTTP is judged; over WebSocket jayson's own part is small and the ratio was about
// two when this was written, so that it is shown alone.
#include "rpc/access/visit.hpp"
#include "rpc/transport/listener.hpp"
#include "tests/bench/bench.hpp"
#include "tests/outside/rpc/protocol_methods.hpp"

#include <arpa/inet.h>
#include <netinet/in.h>
#include <netinet/tcp.h>
#include <pthread.h>
#include <sched.h>
#include <sys/epoll.h>
#include <sys/socket.h>
#include <sys/wait.h>
#include <time.h>
#include <unistd.h>

#include <array>
#include <thread>

namespace limbledger::bench {

namespace {

constexpr int rounds = 7;
constexpr int clients = 8;
constexpr double round_seconds = 0.7;
constexpr double at_least = 4;

[[noreturn]] void give_up(const char* what) {
  std::perror(what);
  std::exit(1);
}

void stay_on(unsigned core) {
  cpu_set_t set;
  CPU_ZERO(&set);
  CPU_SET(core % std::max(1U, std::thread::hardware_concurrency()), &set);
  ::sched_setaffinity(0, sizeof set, &set);
}

int connected(std::uint16_t port) {
  sockaddr_in address{};
  address.sin_family = AF_INET;
  address.sin_port = htons(port);
  address.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
  const int file = ::socket(AF_INET, SOCK_STREAM, 0);
  if (::connect(file, reinterpret_cast<const sockaddr*>(&address), sizeof address) != 0) {
    give_up("connect");
  }
  const int yes = 1;
  ::setsockopt(file, IPPROTO_TCP, TCP_NODELAY, &yes, sizeof yes);
  return file;
}

void send_all(int file, const std::string& bytes) {
  if (::send(file, bytes.data(), bytes.size(), MSG_NOSIGNAL) != static_cast<ssize_t>(bytes.size())) {
    give_up("send");
  }
}

// What comes until `whole` says that it is all.
template <class Whole>
std::string taken(int file, Whole whole) {
  std::string got;
  std::array<char, 65536> piece{};
  while (!whole(got)) {
    const ssize_t count = ::recv(file, piece.data(), piece.size(), 0);
    if (count <= 0) {
      give_up("recv");
    }
    got.append(piece.data(), static_cast<std::size_t>(count));
  }
  return got;
}

struct Peer {
  std::string first;  // sent once, before the calls; empty for HTTP
  std::string call;
  std::uint16_t port = 0;
  std::size_t reply_bytes = 0;
  clockid_t answering{};  // the time of the processor that who answers has used
  std::vector<double> rates;
  std::vector<double> costs;

  [[nodiscard]] double used() const {
    timespec time{};
    ::clock_gettime(answering, &time);
    return static_cast<double>(time.tv_sec) + static_cast<double>(time.tv_nsec) * 1e-9;
  }

  [[nodiscard]] int begin() {
    const int file = connected(port);
    if (!first.empty()) {
      send_all(file, first);
      static_cast<void>(taken(file, [](const std::string& got) { return got.find("\r\n\r\n") != std::string::npos; }));
    }
    if (reply_bytes == 0) {
      send_all(file, call);
      const std::string reply = taken(file, [](const std::string& got) { return got.find("\"result\":3") != std::string::npos && got.back() == '}'; });
      reply_bytes = reply.size();
    }
    return file;
  }

  // Every answer has the same size, so the bytes say how many came.
  void round() {
    std::array<int, clients> files{};
    std::array<std::size_t, clients> have{};
    const int queue = ::epoll_create1(0);
    for (unsigned i = 0; i < clients; ++i) {
      files[i] = begin();
      epoll_event event{};
      event.events = EPOLLIN;
      event.data.u32 = i;
      ::epoll_ctl(queue, EPOLL_CTL_ADD, files[i], &event);
      send_all(files[i], call);
    }
    std::array<epoll_event, clients> ready{};
    std::array<char, 65536> piece{};
    std::size_t answers = 0;
    const double used_before = used();
    const auto start = std::chrono::steady_clock::now();
    double passed = 0;
    while (passed < round_seconds) {
      const int count = ::epoll_wait(queue, ready.data(), clients, 1000);
      for (int n = 0; n < count; ++n) {
        const std::uint32_t i = ready[static_cast<std::size_t>(n)].data.u32;
        const ssize_t got = ::recv(files[i], piece.data(), piece.size(), 0);
        if (got <= 0) {
          give_up("recv");
        }
        have[i] += static_cast<std::size_t>(got);
        if (have[i] == reply_bytes) {
          have[i] = 0;
          ++answers;
          send_all(files[i], call);
        }
      }
      passed = std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
    }
    for (const int file : files) {
      ::close(file);
    }
    ::close(queue);
    rates.push_back(static_cast<double>(answers) / passed);
    costs.push_back((used() - used_before) / static_cast<double>(std::max<std::size_t>(answers, 1)));
  }
};

const std::string sum_call = R"({"jsonrpc":"2.0","method":"sum","params":[1,2],"id":1})";

Peer http_peer(std::uint16_t port, const std::string& path, const std::string& fields) {
  return {"",
          "POST " + path + " HTTP/1.1\r\nHost: 127.0.0.1:" + std::to_string(port) + "\r\n" + fields +
              "Content-Type: application/json\r\nContent-Length: " + std::to_string(sum_call.size()) + "\r\n\r\n" + sum_call,
          port, 0, {}, {}, {}};
}

Peer websocket_peer(std::uint16_t port, const std::string& path) {
  std::string frame = "\x81";
  frame += static_cast<char>(0x80U | sum_call.size());
  const std::string mask = "\x5a\xa5\x3c\xc3";
  frame += mask;
  for (std::size_t i = 0; i < sum_call.size(); ++i) {
    frame += static_cast<char>(sum_call[i] ^ mask[i % 4]);
  }
  return {"GET " + path + " HTTP/1.1\r\nHost: 127.0.0.1:" + std::to_string(port) +
              "\r\nUpgrade: websocket\r\nConnection: Upgrade\r\nSec-WebSocket-Version: 13\r\nSec-WebSocket-Key: dGhlIHNhbXBsZSBub25jZQ==\r\n\r\n",
          frame, port, 0, {}, {}, {}};
}

// Node with the package, on the answering core; its two ports.
struct Jayson {
  std::array<int, 2> in{};
  std::array<int, 2> out{};
  pid_t child = 0;
  std::uint16_t http = 0;
  std::uint16_t websocket = 0;

  Jayson() {
    if (::pipe(in.data()) != 0 || ::pipe(out.data()) != 0) {
      give_up("pipe");
    }
    child = ::fork();
    if (child == 0) {
      ::dup2(in[0], 0);
      ::dup2(out[1], 1);
      ::close(in[1]);
      ::close(out[0]);
      stay_on(1);
      ::execlp("node", "node", LIMBLEDGER_SOURCE_DIR "/tests/outside/node/load/jayson_server.mjs", nullptr);
      std::perror("node");
      ::_exit(127);
    }
    ::close(in[0]);
    ::close(out[1]);
    std::string line;
    for (char c = 0; c != '\n'; line += c) {
      if (::read(out[0], &c, 1) != 1) {
        give_up("jayson did not start");
      }
    }
    unsigned first = 0;
    unsigned second = 0;
    if (std::sscanf(line.c_str(), "%u %u", &first, &second) != 2) {
      give_up("jayson named no ports");
    }
    http = static_cast<std::uint16_t>(first);
    websocket = static_cast<std::uint16_t>(second);
  }
  ~Jayson() {
    ::close(in[1]);
    ::close(out[0]);
    ::waitpid(child, nullptr, 0);
  }
  Jayson(const Jayson&) = delete;
  Jayson& operator=(const Jayson&) = delete;
};

int compare(const char* carrier, Peer ours, clockid_t our_time, Peer theirs, clockid_t their_time) {
  ours.answering = our_time;
  theirs.answering = their_time;
  for (int round = 0; round < rounds; ++round) {
    ours.round();
    theirs.round();
  }
  const double ratio = median(ours.rates) / median(theirs.rates);
  std::printf("%d clients over %s: %.0f calls a second, jayson %.0f: %.2f x (at least %.1f x)\n", clients, carrier, median(ours.rates), median(theirs.rates), ratio, at_least);
  std::printf("  of the answering core one call takes %.1f us, of jayson %.1f us: %.2f x; a busy machine changes this least\n", median(ours.costs) * 1e6, median(theirs.costs) * 1e6,
              median(theirs.costs) / median(ours.costs));
  return ratio >= at_least ? 0 : 1;  // judged for HTTP alone
}

int run() {
  const Jayson jayson;  // first, so that it holds no file of ours open
  BenchWorld world;
  service::Context context;
  context.caller.scope = service::Scope::none;
  const rpc::Service service{rpc::protocol_methods(), context, {}, {}, {}};
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
  std::thread serving([&] {
    stay_on(1);
    listener->run([&] { return visits.begin(); }, stop[0], nullptr, 1000);
  });
  stay_on(0);
  clockid_t our_time{};
  clockid_t their_time{};
  if (::pthread_getcpuclockid(serving.native_handle(), &our_time) != 0 || ::clock_getcpuclockid(jayson.child, &their_time) != 0) {
    give_up("clocks");
  }
  const int http = compare("HTTP", http_peer(listener->port(), "/rpc", "Authorization: Bearer " + token + "\r\n"), our_time, http_peer(jayson.http, "/", ""), their_time);
  static_cast<void>(compare("WebSocket", websocket_peer(listener->port(), "/rpc"), our_time, websocket_peer(jayson.websocket, "/"), their_time));
  ::close(stop[1]);
  serving.join();
  std::printf("%d passed, %d failed\n", 1 - http, http);
  return http;
}

}  // namespace

}  // namespace limbledger::bench

int main() { return limbledger::bench::run(); }
