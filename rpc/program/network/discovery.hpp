// DIR/sidecar.json, by which a front end on this machine finds the program: addresses, process and tokens. For the owner
// alone (0600), whole or not there, and gone after a clean stop. Source: contract, section 11.
#pragma once

#include "core/wire/type.hpp"
#include "rpc/access/token.hpp"
#include "rpc/program/folder.hpp"

#include <string>
#include <vector>

namespace limbledger::rpc {

struct SidecarToken {
  wire::Name scope;
  wire::Name token;
  model::Instant expires_at;
};
BOOST_DESCRIBE_STRUCT(SidecarToken, (), (scope, token, expires_at))
struct Sidecar {
  wire::Count<0, 9999> protocol;
  wire::Count<0, 9007199254740991> pid;
  wire::Name http;
  wire::Name websocket;
  std::vector<SidecarToken> tokens;
};
BOOST_DESCRIBE_STRUCT(Sidecar, (), (protocol, pid, http, websocket, tokens))

[[nodiscard]] Sidecar sidecar_at(std::uint16_t port);

// The file, for as long as this lives.
class SidecarFile {
 public:
  explicit SidecarFile(const Folder& folder);  // takes away what a crash has left
  ~SidecarFile();
  SidecarFile(const SidecarFile&) = delete;
  SidecarFile& operator=(const SidecarFile&) = delete;

  // Throws Problem when it cannot be written.
  void write(const Sidecar& sidecar) const;

 private:
  std::string path_;
};

}  // namespace limbledger::rpc
