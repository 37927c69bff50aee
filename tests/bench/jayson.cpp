// Eight clients that each ask, wait for the answer and ask again: our network side against the npm package jayson, a JSON-RPC server
// for Node, with the same calls over the same carrier, in turns. One core asks and one core answers, whoever it is. Every
// figure is the median of the rounds. Beside both a TCP echo of the same bytes, and how busy the answering core was: under 90 % it
// was not who answers that was measured. Judged is a call with an exam of 12 findings up (2.7 KB) and 1 KB down, which both read as
// JSON and answer with what is ready: jayson has no assessment. Shown besides is a sum of two numbers: its answers cost jayson so little that
// the bare echo makes no more than three times as many.
#include "tests/bench/echo.hpp"
#include "tests/bench/few_findings.hpp"
#include "tests/bench/node_program.hpp"
#include "tests/bench/served.hpp"
#include "tests/outside/rpc/protocol_methods.hpp"

#include <time.h>

namespace limbledger::bench {

namespace {

constexpr int rounds = 7;
constexpr int clients = 8;
constexpr double round_seconds = 0.7;
constexpr double at_least = 4;

struct Peer {
  std::string first;  // sent once, before the calls; empty for HTTP
  std::string call;
  std::string expected;  // of the answer
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
      const std::string reply = taken(file, [this](const std::string& got) { return got.find(expected) != std::string::npos && got.back() == '}'; });
      reply_bytes = reply.size();
    }
    return file;
  }

  // Asks once, to learn how much comes back.
  [[nodiscard]] std::size_t reply_size() {
    ::close(begin());
    return reply_bytes;
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

// Both answer it with what is ready: of the assessment the first kilobyte.
const std::string& ready() {
  static const std::string text = first_flags(1024);
  return text;
}
Result<wire::Raw> look(service::Context&, const wire::Raw&) { return wire::Raw{ready()}; }

std::vector<service::Method> methods() {
  std::vector<service::Method> table{service::bind<&look>("look", service::to_anybody, "reads a document")};
  table.insert(table.end(), rpc::protocol_methods().begin(), rpc::protocol_methods().end());
  return table;
}

struct Call {
  const char* what;
  std::string text;
  std::string answer;
  bool is_judged;
};

std::string call_of(const std::string& method, const std::string& params) { return R"({"jsonrpc":"2.0","method":")" + method + R"(","params":)" + params + R"(,"id":1})"; }

Peer http_peer(const Call& call, std::uint16_t port, const std::string& path, const std::string& fields) {
  return {"", as_http(port, path, fields, call.text), call.answer, port, 0, {}, {}, {}};
}

Peer websocket_peer(const Call& call, std::uint16_t port, const std::string& path) { return {as_upgrade(port, path), as_frame(call.text), call.answer, port, 0, {}, {}, {}}; }

// The package on the answering core, and its two ports.
struct Jayson {
  NodeProgram program{{LIMBLEDGER_SOURCE_DIR "/tests/outside/node/load/jayson_server.mjs"}, [] { stay_on(1); }};
  std::uint16_t http = 0;
  std::uint16_t websocket = 0;

  Jayson() {
    unsigned first = 0;
    unsigned second = 0;
    if (std::sscanf(program.next_line().c_str(), "%u %u", &first, &second) != 2) {
      give_up("jayson named no ports");
    }
    program.tell(ready());
    http = static_cast<std::uint16_t>(first);
    websocket = static_cast<std::uint16_t>(second);
  }
};

void show(const char* who, const Peer& peer) {
  const double rate = median(peer.rates);
  const double cost = median(peer.costs);
  std::printf("  %s: %.0f calls a second, %.1f us of the answering core each, which was busy %.0f %% of the time\n", who, rate, cost * 1e6, rate * cost * 100);
}

int compare(const Call& call, const char* carrier, Peer ours, clockid_t our_time, Peer theirs, clockid_t their_time) {
  ours.answering = our_time;
  theirs.answering = their_time;
  Echo echoing(ours.call.size(), ours.reply_size(), [] { stay_on(1); });
  Peer floor{"", ours.call, "", echoing.port, ours.reply_bytes, echoing.time(), {}, {}};
  for (int round = 0; round < rounds; ++round) {
    floor.round();
    ours.round();
    theirs.round();
  }
  const double ratio = median(ours.rates) / median(theirs.rates);
  std::printf("%s, %zu bytes up and %zu down, %d clients over %s: %.2f x the calls a second of jayson (%s); by the answering core's time %.2f x, which a busy machine changes least\n",
              call.what, ours.call.size(), ours.reply_bytes, clients, carrier, ratio, call.is_judged ? "at least 4 x" : "shown alone", median(theirs.costs) / median(ours.costs));
  show("a TCP echo of the same bytes", floor);
  show("limbledger", ours);
  show("jayson", theirs);
  return call.is_judged && ratio < at_least ? 1 : 0;
}

int run() {
  Jayson jayson;  // first, so that it holds no file of ours open
  BenchWorld world;
  service::Context context;
  const std::vector<service::Method> table = methods();
  Served served(table, context, world, [] { stay_on(1); });
  stay_on(0);
  clockid_t their_time{};
  if (::clock_getcpuclockid(jayson.program.process(), &their_time) != 0) {
    give_up("clocks");
  }
  const std::array calls{Call{"an exam of 12 findings", call_of("look", assess_params()), "\"result\":" + ready(), true},
                         Call{"a sum", call_of("sum", "[1,2]"), "\"result\":3", false}};
  int passed = 0;
  int failed = 0;
  for (const Call& call : calls) {
    const int slow = compare(call, "HTTP", http_peer(call, served.port(), "/rpc", served.authorization()), served.time(), http_peer(call, jayson.http, "/", ""), their_time) +
                     compare(call, "WebSocket", websocket_peer(call, served.port(), "/rpc"), served.time(), websocket_peer(call, jayson.websocket, "/"), their_time);
    failed += slow;
    passed += call.is_judged ? 2 - slow : 0;
  }
  std::printf("%d passed, %d failed\n", passed, failed);
  return failed == 0 ? 0 : 1;
}

}  // namespace

}  // namespace limbledger::bench

int main() { return limbledger::bench::run(); }
