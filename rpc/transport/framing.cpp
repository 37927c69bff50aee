#include "rpc/transport/framing.hpp"

#include <algorithm>

namespace limbledger::rpc {

namespace {

[[nodiscard]] char lower(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

[[nodiscard]] bool same_word(std::string_view a, std::string_view b) {
  return a.size() == b.size() && std::equal(a.begin(), a.end(), b.begin(), [](char x, char y) { return lower(x) == lower(y); });
}

[[nodiscard]] std::string_view trimmed(std::string_view text) {
  const auto first = text.find_first_not_of(" \t");
  const auto last = text.find_last_not_of(" \t");
  return first == std::string_view::npos ? std::string_view{} : text.substr(first, last - first + 1);
}

// Absent when the text is not a plain count or has more digits than any length in use.
[[nodiscard]] std::optional<std::uint64_t> plain_count(std::string_view text) {
  if (text.empty() || text.size() > 18) {
    return std::nullopt;
  }
  std::uint64_t value = 0;
  for (const char c : text) {
    if (c < '0' || c > '9') {
      return std::nullopt;
    }
    value = value * 10 + static_cast<std::uint64_t>(c - '0');
  }
  return value;
}

[[nodiscard]] bool charset_is_utf8(std::string_view content_type) {
  while (!content_type.empty()) {
    const auto semicolon = content_type.find(';');
    std::string_view part = trimmed(content_type.substr(0, semicolon));
    content_type = semicolon == std::string_view::npos ? std::string_view{} : content_type.substr(semicolon + 1);
    const auto equals = part.find('=');
    if (equals == std::string_view::npos || !same_word(trimmed(part.substr(0, equals)), "charset")) {
      continue;
    }
    part = trimmed(part.substr(equals + 1));
    if (part.size() >= 2 && part.front() == '"' && part.back() == '"') {
      part = part.substr(1, part.size() - 2);
    }
    return same_word(part, "utf-8") || same_word(part, "utf8");
  }
  return true;
}

}  // namespace

void Decoder::give(FrameKind kind, std::string text) { frames_.push_back({kind, std::move(text)}); }

void Decoder::stop(std::string why) {
  give(FrameKind::broken, std::move(why));
  state_ = State::broken;
  kept_.clear();
}

std::optional<Frame> Decoder::next() {
  if (frames_.empty()) {
    return std::nullopt;
  }
  Frame frame = std::move(frames_.front());
  frames_.pop_front();
  return frame;
}

void Decoder::feed(std::string_view bytes) {
  if (state_ == State::start) {
    state_ = framing_ == Framing::lines ? State::line : State::header;
  }
  while (!bytes.empty() && state_ != State::broken) {
    std::size_t taken = 0;
    switch (state_) {
      case State::line:
      case State::skip_line:
        taken = take_line(bytes);
        break;
      case State::header:
        taken = take_header(bytes);
        break;
      default:
        taken = take_body(bytes);
        break;
    }
    bytes.remove_prefix(taken);
  }
}

std::size_t Decoder::take_line(std::string_view bytes) {
  const auto end = bytes.find('\n');
  const std::string_view piece = bytes.substr(0, end);
  if (state_ == State::line) {
    // One byte more than the limit may be a CR that belongs to the line end.
    if (kept_.size() + piece.size() > limits_.message_bytes + 1) {
      give(FrameKind::too_large, {});
      kept_.clear();
      kept_.shrink_to_fit();
      state_ = State::skip_line;
    } else {
      kept_ += piece;
    }
  }
  if (end == std::string_view::npos) {
    return bytes.size();
  }
  if (state_ == State::line) {
    end_line();
  }
  state_ = State::line;
  return end + 1;
}

void Decoder::end_line() {
  if (!kept_.empty() && kept_.back() == '\r') {
    kept_.pop_back();
  }
  if (kept_.size() > limits_.message_bytes) {
    give(FrameKind::too_large, {});
  } else if (kept_.find_first_not_of(" \t\r") != std::string::npos) {
    give(FrameKind::message, std::move(kept_));
  }
  kept_.clear();
}

std::size_t Decoder::take_header(std::string_view bytes) {
  std::size_t taken = 0;
  for (const char c : bytes) {
    ++taken;
    const auto byte = static_cast<unsigned char>(c);
    const bool after_cr = !kept_.empty() && kept_.back() == '\r';
    if ((c == '\n') != after_cr) {
      stop("a header line must end with CR LF");
      return taken;
    }
    if (byte >= 0x7F || (byte < 0x20 && c != '\r' && c != '\n' && c != '\t')) {
      stop("a header may hold ASCII characters only");
      return taken;
    }
    kept_.push_back(c);
    if (kept_.size() > limits_.header_bytes) {
      stop("the header is longer than " + std::to_string(limits_.header_bytes) + " bytes");
      return taken;
    }
    if (c == '\n' && (kept_.size() == 2 || kept_.ends_with("\r\n\r\n"))) {
      end_header();
      return taken;
    }
  }
  return taken;
}

std::string Decoder::read_field(std::string_view field) {
  const auto colon = field.find(':');
  if (colon == 0 || colon == std::string_view::npos || field.substr(0, colon).find_first_of(" \t") != std::string_view::npos) {
    return "a header line must be a name, a colon and a value";
  }
  const std::string_view name = field.substr(0, colon);
  const std::string_view value = trimmed(field.substr(colon + 1));
  if (same_word(name, "Content-Length")) {
    if (length_) {
      return "Content-Length stands twice in one header";
    }
    length_ = plain_count(value);
    if (!length_) {
      return "Content-Length is not a whole number of bytes";
    }
    if (*length_ > limits_.skipped_bytes) {
      return "Content-Length is over " + std::to_string(limits_.skipped_bytes) + " bytes";
    }
  } else if (same_word(name, "Content-Type") && !charset_is_utf8(value)) {
    return "Content-Type names a character set other than UTF-8";
  }
  return {};
}

void Decoder::end_header() {
  length_.reset();
  std::string_view rest = kept_;
  while (rest.size() > 2) {
    const auto end = rest.find("\r\n");
    if (std::string why = read_field(rest.substr(0, end)); !why.empty()) {
      return stop(std::move(why));
    }
    rest.remove_prefix(end + 2);
  }
  if (!length_) {
    return stop("the header has no Content-Length");
  }
  kept_.clear();
  left_ = *length_;
  if (left_ == 0) {
    give(FrameKind::message, {});
    return;
  }
  state_ = left_ > limits_.message_bytes ? State::skip_body : State::body;
}

std::size_t Decoder::take_body(std::string_view bytes) {
  const std::size_t taken = static_cast<std::size_t>(std::min<std::uint64_t>(left_, bytes.size()));
  if (state_ == State::body) {
    kept_ += bytes.substr(0, taken);
  }
  left_ -= taken;
  if (left_ == 0) {
    give(state_ == State::body ? FrameKind::message : FrameKind::too_large, std::move(kept_));
    kept_.clear();
    state_ = State::header;
  }
  return taken;
}

void Decoder::end() {
  const bool cut = (state_ == State::header && !kept_.empty()) || state_ == State::body || state_ == State::skip_body;
  if (cut) {
    return stop("the stream ended inside a message");
  }
  if (state_ == State::line && kept_.find_first_not_of(" \t\r") != std::string::npos) {
    give(kept_.size() > limits_.message_bytes ? FrameKind::too_large : FrameKind::unended, std::move(kept_));
  }
  kept_.clear();
}

std::string framed(Framing framing, std::string_view message) {
  if (framing == Framing::lines) {
    return std::string(message) + "\n";
  }
  return "Content-Length: " + std::to_string(message.size()) + "\r\n\r\n" + std::string(message);
}

}  // namespace limbledger::rpc
