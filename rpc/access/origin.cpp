#include "rpc/access/origin.hpp"

#include <algorithm>

namespace limbledger::rpc {

namespace {

constexpr std::uint16_t http_port = 80;

[[nodiscard]] std::string small(std::string_view text) {
  std::string out(text);
  std::transform(out.begin(), out.end(), out.begin(), [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
  return out;
}

[[nodiscard]] std::string without_blanks(std::string_view text) {
  std::string out = small(text);
  std::erase_if(out, [](char c) { return c == ' ' || c == '\t'; });
  return out;
}

}  // namespace

OwnAddresses::OwnAddresses(std::uint16_t port) {
  for (const char* name : {"127.0.0.1", "localhost", "[::1]"}) {
    hosts_.push_back(std::string(name) + ":" + std::to_string(port));
    if (port == http_port) {
      hosts_.emplace_back(name);
    }
  }
}

bool OwnAddresses::is_host(std::string_view host) const { return std::find(hosts_.begin(), hosts_.end(), small(host)) != hosts_.end(); }

bool OwnAddresses::is_origin(std::string_view origin) const {
  constexpr std::string_view scheme = "http://";
  return origin.starts_with(scheme) && std::find(hosts_.begin(), hosts_.end(), origin.substr(scheme.size())) != hosts_.end();
}

bool is_json(std::string_view content_type) {
  std::string left = without_blanks(content_type);
  const auto part = [&left] {
    const auto end = std::min(left.find(';'), left.size());
    std::string one = left.substr(0, end);
    left.erase(0, end + 1);
    return one;
  };
  if (part() != "application/json") {
    return false;
  }
  while (!left.empty()) {
    const std::string one = part();
    if (one.starts_with("charset=") && one != "charset=utf-8" && one != "charset=\"utf-8\"") {
      return false;
    }
  }
  return true;
}

}  // namespace limbledger::rpc
