// The files of a front end that is served beside the methods, under the addresses of the sidecar itself: a page from anywhere
// else may not call. They hold nothing of anybody, so that no token is needed to read them.
#pragma once

#include <cstdint>
#include <functional>
#include <map>
#include <string>
#include <string_view>

namespace limbledger::rpc {

struct Page {
  std::string_view type;  // as Content-Type says it
  std::string text;
  std::string fields{};                     // header lines of its own; empty: those of `page_fields`
  std::function<const Page*()> later{};     // makes the page when it is first asked for, and keeps it
};

// By the path of the address: "/", "/form.js".
using Pages = std::map<std::string, Page, std::less<>>;

// What a page may do: load and call nothing but this sidecar, and stand in no other page. Its WebSocket is named as well: not
// every browser counts it as of the page's own address. Source: Content Security Policy 3.
[[nodiscard]] inline std::string page_fields(std::uint16_t port) {
  const std::string number = std::to_string(port);
  return "Content-Security-Policy: default-src 'self'; connect-src 'self' ws://127.0.0.1:" + number + " ws://localhost:" + number +
         "; img-src 'self' data:; style-src 'self' 'unsafe-inline'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'\r\n"
         "Referrer-Policy: no-referrer\r\n";
}

}  // namespace limbledger::rpc
