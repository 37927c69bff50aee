#include "rpc/transport/stdio.hpp"

#include <doctest/doctest.h>

#include <csignal>
#include <sys/socket.h>
#include <unistd.h>

#include <array>

namespace limbledger::rpc {

namespace {

// Both ends of a connection; what is written into `ours` is read from `theirs`.
struct Pair {
  int ours = -1;
  int theirs = -1;
  Pair() {
    std::array<int, 2> ends{};
    REQUIRE(::socketpair(AF_UNIX, SOCK_STREAM, 0, ends.data()) == 0);
    ours = ends[0];
    theirs = ends[1];
  }
  ~Pair() {
    ::close(ours);
    ::close(theirs);
  }
  void send(std::string_view bytes) const { REQUIRE(::write(ours, bytes.data(), bytes.size()) == static_cast<ssize_t>(bytes.size())); }
  void hang_up() const { ::shutdown(ours, SHUT_WR); }
  [[nodiscard]] std::string received() const {
    std::string text;
    std::array<char, 4096> piece{};
    ssize_t got = 0;
    while ((got = ::recv(ours, piece.data(), piece.size(), MSG_DONTWAIT)) > 0) {
      text.append(piece.data(), static_cast<std::size_t>(got));
    }
    return text;
  }
};

StdioOutcome run(const Pair& pair, Framing framing, int stop = -1) {
  Stdio stdio;
  stdio.framing = framing;
  stdio.in = pair.theirs;
  stdio.out = pair.theirs;
  stdio.stop = stop;
  stdio.limits.message_bytes = 20;
  return serve_stdio(
      stdio,
      [](std::string_view text) -> std::optional<std::string> {
        return text == "\"quiet\"" ? std::nullopt : std::optional("<" + std::string(text) + ">");
      },
      [] { return std::string("too large"); });
}

}  // namespace

TEST_CASE("lines are answered in order, notifications are not, and the end of the input ends it well") {
  const Pair pair;
  pair.send("1\n\"quiet\"\n" + std::string(50, 'x') + "\n2\r\n3");
  pair.hang_up();
  const StdioOutcome outcome = run(pair, Framing::lines);
  CHECK(outcome.end == StdioEnd::input_ended);
  CHECK(outcome.why.empty());
  CHECK(pair.received() == "<1>\ntoo large\n<2>\n<3>\n");
}

TEST_CASE("a last line that is not whole is not answered") {
  const Pair pair;
  pair.send("1\n{\"jsonr");
  pair.hang_up();
  CHECK(run(pair, Framing::lines).end == StdioEnd::broken_frame);
  CHECK(pair.received() == "<1>\n");
}

TEST_CASE("frames with headers are answered with headers, and a bad header ends it with the reason") {
  const Pair pair;
  pair.send(framed(Framing::headers, "\"\xC3\xA9\"") + "Content-Length: x\r\n\r\n");
  const StdioOutcome outcome = run(pair, Framing::headers);
  CHECK(outcome.end == StdioEnd::broken_frame);
  CHECK(outcome.why == "Content-Length is not a whole number of bytes");
  CHECK(pair.received() == "Content-Length: 6\r\n\r\n<\"\xC3\xA9\">");
}

TEST_CASE("the stop descriptor ends it although the input stays open") {
  const Pair pair;
  const Pair stop;
  stop.send("x");
  CHECK(run(pair, Framing::lines, stop.theirs).end == StdioEnd::stopped);
}

TEST_CASE("it says that nothing comes, and still answers what comes then") {
  const Pair pair;
  Stdio stdio;
  stdio.in = pair.theirs;
  stdio.out = pair.theirs;
  stdio.idle_ms = 1;
  int count = 0;
  stdio.idle = [&] {
    if (++count == 2) {
      pair.send("1\n");
      pair.hang_up();
    }
  };
  const auto outcome = serve_stdio(stdio, [](std::string_view text) { return std::optional(std::string(text)); }, [] { return std::string(); });
  CHECK(outcome.end == StdioEnd::input_ended);
  CHECK(pair.received() == "1\n");
  CHECK(count >= 2);
}

TEST_CASE("it ends when nobody reads any more") {
  std::signal(SIGPIPE, SIG_IGN);
  std::array<int, 2> ends{};
  REQUIRE(::pipe(ends.data()) == 0);
  ::close(ends[0]);
  const Pair pair;
  pair.send("1\n");
  Stdio stdio;
  stdio.in = pair.theirs;
  stdio.out = ends[1];
  const auto outcome = serve_stdio(stdio, [](std::string_view) { return std::optional(std::string("reply")); }, [] { return std::string(); });
  CHECK(outcome.end == StdioEnd::nobody_reads);
  ::close(ends[1]);
}

}  // namespace limbledger::rpc
