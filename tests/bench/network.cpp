// What a call costs over WebSocket and over HTTP against a bare TCP echo of the same bytes, all on one core, in turns: an empty
// call (the carriers, the token and the envelope beside the kernel), a call that copies 2 KB up and 1 KB down, and document.assess
// of an exam with 12 findings. The first two are judged. Assessing takes nine times as long as the echo wherever it is done, so that
// of it what the carrier adds is shown: its time less the same call in this process. Last, shown too, a finding that is on disk, over
// WebSocket and in this process, in turns, against the sum of that and an empty call; on one core it also holds what the writer's own
// session is told after the reply. Every figure is the median of the rounds' medians; p99/p50 is of all calls.
#include "core/reference/edition.hpp"
#include "tests/bench/echo.hpp"
#include "tests/bench/few_findings.hpp"
#include "tests/bench/recording.hpp"
#include "tests/bench/served.hpp"

namespace limbledger::bench {

namespace {

constexpr int rounds = 15;
constexpr std::size_t calls_a_round = 2000;
constexpr std::size_t assessments_a_round = 200;
constexpr int exams_recorded = 12;

struct Nothing {};
BOOST_DESCRIBE_STRUCT(Nothing, (), ())

Result<Nothing> nothing(service::Context&, const Nothing&) { return Nothing{}; }
Result<wire::Raw> copies(service::Context&, const wire::Raw&) {
  static const wire::Raw reply{"{\"text\":\"" + std::string(920, 'x') + "\"}"};
  return reply;
}

constexpr std::array own_rows{
    service::bind<&nothing>("call.empty", service::to_anybody, "does nothing"),
    service::bind<&copies>("call.large", service::to_anybody, "takes much and gives much"),
};

std::vector<service::Method> whole_table() {
  std::vector<service::Method> table(own_rows.begin(), own_rows.end());
  table.insert(table.end(), service::methods().begin(), service::methods().end());
  return table;
}

struct Timed {
  std::vector<double> medians;
  std::vector<double> all;

  template <class Call>
  void round(std::size_t calls, Call&& call) {
    round(calls, [] {}, call);
  }
  template <class Before, class Call>
  void round(std::size_t calls, Before&& before, Call&& call) {
    std::vector<double> times;
    for (std::size_t i = 0; i < calls; ++i) {
      before();
      times.push_back(seconds(call));
    }
    medians.push_back(median(times));
    all.insert(all.end(), times.begin(), times.end());
  }
  [[nodiscard]] double us() const { return median(medians) * 1e6; }
  [[nodiscard]] double spread() const {
    std::vector<double> sorted = all;
    std::sort(sorted.begin(), sorted.end());
    return sorted[sorted.size() * 99 / 100] / sorted[sorted.size() / 2];
  }
};

// One connection: what is sent, and how much comes back.
class Peer {
 public:
  Peer(std::uint16_t port, std::string request, std::size_t reply_bytes) : file_(connected(port)), request_(std::move(request)), reply_bytes_(reply_bytes) {}
  ~Peer() { ::close(file_); }
  Peer(const Peer&) = delete;
  Peer& operator=(const Peer&) = delete;

  Timed timed;
  void round(std::size_t calls) {
    timed.round(calls, [&] { call(); });
  }
  void call() {
    send_all(file_, request_);
    take(reply_bytes_);
  }
  [[nodiscard]] int file() const { return file_; }

 private:
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

  int file_;
  std::string request_;
  std::size_t reply_bytes_;
  std::string room_;
};

struct Figures {
  double echo = 0;
  double websocket = 0;
  double http = 0;
  double here = 0;  // in this process
};

template <class Here>
Figures measure(const char* what, const Served& served, const std::string& method, const std::string& params, std::size_t calls, Here&& here) {
  const std::string call = R"({"jsonrpc":"2.0","method":")" + method + R"(","params":)" + params + R"(,"id":1})";
  const std::string request = as_http(served.port(), "/rpc", served.authorization(), call);
  const int first = connected(served.port());
  send_all(first, request);
  const std::string reply = taken(first, [](const std::string& got) {
    const std::size_t head = got.find("\r\n\r\n");
    const std::size_t length = got.find("Content-Length: ");
    return head != std::string::npos && length < head && got.size() == head + 4 + std::stoul(got.substr(length + 16));
  });
  ::close(first);
  if (reply.find(R"("result":)") == std::string::npos) {
    std::fprintf(stderr, "%s: %s\n", what, reply.c_str());
    std::exit(1);
  }
  const std::size_t down = reply.size() - reply.find("\r\n\r\n") - 4;
  Peer http(served.port(), request, reply.size());
  Peer websocket(served.port(), as_frame(call), framed_bytes(down));
  send_all(websocket.file(), as_upgrade(served.port(), "/rpc"));
  static_cast<void>(taken(websocket.file(), [](const std::string& got) { return got.find("\r\n\r\n") != std::string::npos; }));
  const std::string opening = R"({"jsonrpc":"2.0","method":"session.open","params":{"token":")" + served.token + R"("},"id":1})";
  send_all(websocket.file(), as_frame(opening));
  static_cast<void>(taken(websocket.file(), [](std::string got) { return text_of(got).has_value(); }));
  const Echo echoing(call.size(), down, [] {});
  Peer echo(echoing.port, call, down);
  Timed inside;
  for (int round = 0; round < rounds; ++round) {
    echo.round(calls);
    websocket.round(calls);
    http.round(calls);
    // Each after a round trip of the echo, as it is when it comes over a socket: the kernel's work leaves other things in the caches.
    inside.round(calls, [&] { echo.call(); }, here);
  }
  const Figures found{echo.timed.us(), websocket.timed.us(), http.timed.us(), inside.us()};
  std::printf("%s, %zu bytes up, %zu down: echo %.1f us, WebSocket %.1f us (%.2f x), HTTP %.1f us (%.2f x), in this process %.1f us\n", what, call.size(), down, found.echo,
              found.websocket, found.websocket / found.echo, found.http, found.http / found.echo, found.here);
  std::printf("  p99/p50: echo %.2f, WebSocket %.2f, HTTP %.2f\n", echo.timed.spread(), websocket.timed.spread(), http.timed.spread());
  return found;
}

// Two ledgers on this disk, recorded into in turns.
void recording(const service::Context& facts, double empty_us) {
  const Folder here;
  const Folder there;
  OnDisk near(here.path + "/ledger.sqlite", store::Flush::full);
  OnDisk far(there.path + "/ledger.sqlite", store::Flush::full);
  const auto near_desk = need(service::Desk::open(*near.store, near.world, *facts.edition, near.keyring), "desk");
  const auto far_desk = need(service::Desk::open(*far.store, far.world, *facts.edition, far.keyring), "desk");
  static_cast<void>(need(near_desk->unlock("", near.wanted.passphrase), "unlock"));
  static_cast<void>(need(far_desk->unlock("", far.wanted.passphrase), "unlock"));
  service::Context near_context;
  service::Context far_context;
  far_context.desk = far_desk.get();
  far_context.edition = facts.edition;
  BenchWorld world;
  const Served served(service::methods(), far_context, world, [] {});
  SocketSession session(served.port(), served.token);
  RecordingForm inside(in_process(near_context, *near_desk));
  RecordingForm outside([&](const std::string& method, const std::string& params) { return session.ask(method, params); });
  std::vector<double> inside_times;
  std::vector<double> outside_times;
  for (int exam = 0; exam < exams_recorded; ++exam) {
    inside.open_exam();
    outside.open_exam();
    for (std::size_t i = 0; i < findings_an_exam_recorded; ++i) {
      inside_times.push_back(seconds([&] { inside.record(i); }));
      outside_times.push_back(seconds([&] { outside.record(i); }));
    }
  }
  const double in_us = median(inside_times) * 1e6;
  const double out_us = median(outside_times) * 1e6;
  std::printf("a finding on disk: in this process %.0f us, over WebSocket %.0f us; an empty call %.1f us: %.2f x the two together (aim 1.00 x)\n", in_us, out_us, empty_us,
              out_us / (in_us + empty_us));
}

int run() {
  stay_on(0);
  const Folder folder;
  OnDisk disk(folder.path + "/ledger.sqlite", store::Flush::off);
  const auto desk = need(service::Desk::open(*disk.store, disk.world, *reference::built_in_edition(), disk.keyring), "desk");
  static_cast<void>(need(desk->unlock("", disk.wanted.passphrase), "unlock"));
  BenchWorld world;
  service::Context context;
  context.desk = desk.get();
  context.edition = reference::built_in_edition();
  const std::vector<service::Method> table = whole_table();
  Figures empty;
  Figures large;
  Figures assessed;
  {
    const Served served(table, context, world, [] {});
    service::Context own;
    own.edition = context.edition;
    own.caller.scope = service::Scope::examiner;
    std::size_t said = 0;
    const auto inside = [&](const std::string& method, const std::string& params) {
      return [&own, &table, &said, method, params] {
        const auto document = need(wire::parse(params), "params");
        said += need(service::call(table, own, method, document, &document.root()), method.c_str()).size();
      };
    };
    const std::string texts = R"({"texts":[")" + std::string(1930, 'y') + R"("]})";
    const std::string assess = assess_params();
    large = measure("a call that copies", served, "call.large", texts, calls_a_round, inside("call.large", texts));
    assessed = measure("an assessment of 12 findings", served, "document.assess", assess, assessments_a_round, inside("document.assess", assess));
    empty = measure("an empty call", served, "call.empty", "{}", calls_a_round, inside("call.empty", "{}"));
    if (said == 0) {
      std::fprintf(stderr, "nothing was said\n");
      return 1;
    }
  }
  int failed = judge("an empty call over WebSocket against the echo", empty.websocket / empty.echo, 1.5, 1.35);
  failed += judge("an empty call over HTTP against the echo", empty.http / empty.echo, 1.9, 1.4);
  failed += judge("2 KB up and 1 KB down over WebSocket against the echo", large.websocket / large.echo, 1.5, 1.35);
  failed += judge("2 KB up and 1 KB down over HTTP against the echo", large.http / large.echo, 1.9, 1.4);
  std::printf("an assessment without its own time against the echo: over WebSocket %.2f x (aim 1.35 x), over HTTP %.2f x (aim 1.40 x)\n",
              (assessed.websocket - assessed.here) / assessed.echo, (assessed.http - assessed.here) / assessed.echo);
  recording(context, empty.websocket);
  std::printf("%d passed, %d failed\n", 4 - failed, failed);
  return failed;
}

}  // namespace

}  // namespace limbledger::bench

int main() { return limbledger::bench::run(); }
