// Whether a request was meant for this program and comes from a page that may call it. A page elsewhere can have its own
// name resolve to this machine, so Host must be a loopback name with our port; and a WebSocket knows no CORS, so Origin
// must be one of ours wherever it is sent. A program that is no browser sends none. Source: the Fetch standard, RFC 6454.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace limbledger::rpc {

class OwnAddresses {
 public:
  explicit OwnAddresses(std::uint16_t port);

  [[nodiscard]] bool is_host(std::string_view host) const;
  // Exactly, as browsers write it; "null" never is.
  [[nodiscard]] bool is_origin(std::string_view origin) const;

 private:
  std::vector<std::string> hosts_;
};

// application/json, in UTF-8 where it says.
[[nodiscard]] bool is_json(std::string_view content_type);

}  // namespace limbledger::rpc
