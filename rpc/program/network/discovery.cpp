#include "rpc/program/network/discovery.hpp"

#include "core/service/call.hpp"
#include "core/wire/write.hpp"
#include "rpc/access/visit.hpp"

#include <unistd.h>

namespace limbledger::rpc {

Sidecar sidecar_at(std::uint16_t port) {
  const std::string address = "127.0.0.1:" + std::to_string(port) + std::string(rpc_path);
  Sidecar sidecar;
  sidecar.protocol.steps = service::protocol_newest;
  sidecar.pid.steps = ::getpid();
  sidecar.http.text = "http://" + address;
  sidecar.websocket.text = "ws://" + address;
  return sidecar;
}

SidecarFile::SidecarFile(const Folder& folder) : path_(folder.file("sidecar.json")) { ::unlink(path_.c_str()); }

SidecarFile::~SidecarFile() { ::unlink(path_.c_str()); }

void SidecarFile::write(const Sidecar& sidecar) const { write_file(path_, wire::write(sidecar) + "\n"); }

}  // namespace limbledger::rpc
