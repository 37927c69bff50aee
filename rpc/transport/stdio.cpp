#include "rpc/transport/stdio.hpp"

#include "core/wire/parse.hpp"

#include <poll.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <vector>

namespace limbledger::rpc {

namespace {

// A pipe that polls writable takes this much without blocking, so that a stop is never waited out.
constexpr std::size_t write_bytes_max = 4096;

enum class Ready : std::uint8_t { yes, idle, stopped, failed };

// Plain poll: an event queue would refuse a regular file, and requests kept in a file are a common way in.
[[nodiscard]] Ready wait_for(const Stdio& stdio, int descriptor, short what, int idle_ms) {
  std::array<pollfd, 3> all{{{descriptor, what, 0}, {stdio.stop, POLLIN, 0}, {stdio.beside, POLLIN, 0}}};
  for (;;) {
    const int count = ::poll(all.data(), all.size(), idle_ms);
    if (count < 0 && errno == EINTR) {
      continue;
    }
    if (count < 0) {
      return Ready::failed;
    }
    if (count == 0) {
      return Ready::idle;
    }
    if (all[1].revents != 0) {
      return Ready::stopped;
    }
    if (all[2].revents != 0) {
      stdio.ready();
    }
    if (all[0].revents != 0) {
      return Ready::yes;
    }
  }
}

[[nodiscard]] std::optional<StdioOutcome> write_all(const Stdio& stdio, std::string_view bytes) {
  while (!bytes.empty()) {
    switch (wait_for(stdio, stdio.out, POLLOUT, -1)) {
      case Ready::stopped:
        return StdioOutcome{StdioEnd::stopped, {}};
      case Ready::failed:
        return StdioOutcome{StdioEnd::failed, "the output cannot be waited for"};
      case Ready::yes:
      case Ready::idle:
        break;
    }
    const ssize_t written = ::write(stdio.out, bytes.data(), std::min(bytes.size(), write_bytes_max));
    if (written >= 0) {
      bytes.remove_prefix(static_cast<std::size_t>(written));
    } else if (errno == EPIPE) {
      return StdioOutcome{StdioEnd::nobody_reads, {}};
    } else if (errno != EINTR && errno != EAGAIN) {
      return StdioOutcome{StdioEnd::failed, "the output cannot be written"};
    }
  }
  return std::nullopt;
}

}  // namespace

StdioOutcome serve_stdio(const Stdio& stdio, const std::function<std::optional<std::string>(std::string_view)>& reply,
                         const std::function<std::string()>& too_large) {
  Decoder decoder(stdio.framing, stdio.limits);
  const auto answer_all = [&]() -> std::optional<StdioOutcome> {
    while (const auto frame = decoder.next()) {
      if (frame->kind == FrameKind::broken) {
        return StdioOutcome{StdioEnd::broken_frame, frame->text};
      }
      if (frame->kind == FrameKind::unended && !wire::parse(frame->text, stdio.limits.depth)) {
        return StdioOutcome{StdioEnd::broken_frame, "the stream ended inside a message"};
      }
      const auto text = frame->kind == FrameKind::too_large ? std::optional(too_large()) : reply(frame->text);
      if (!text) {
        continue;
      }
      if (auto ended = write_all(stdio, framed(stdio.framing, *text))) {
        return ended;
      }
    }
    return std::nullopt;
  };
  std::vector<char> buffer(std::size_t{64} * 1024);
  for (;;) {
    switch (wait_for(stdio, stdio.in, POLLIN, stdio.idle ? stdio.idle_ms : -1)) {
      case Ready::idle:
        stdio.idle();
        continue;
      case Ready::stopped:
        return {StdioEnd::stopped, {}};
      case Ready::failed:
        return {StdioEnd::failed, "the input cannot be waited for"};
      case Ready::yes:
        break;
    }
    const ssize_t got = ::read(stdio.in, buffer.data(), buffer.size());
    if (got < 0 && (errno == EINTR || errno == EAGAIN)) {
      continue;
    }
    if (got < 0) {
      return {StdioEnd::failed, "the input cannot be read"};
    }
    if (got == 0) {
      decoder.end();
    } else {
      decoder.feed({buffer.data(), static_cast<std::size_t>(got)});
    }
    if (auto ended = answer_all()) {
      return std::move(*ended);
    }
    if (got == 0) {
      return {StdioEnd::input_ended, {}};
    }
  }
}

}  // namespace limbledger::rpc
