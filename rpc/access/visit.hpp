// One connection over HTTP or WebSocket, as the other side of the transport: who may call, which refusal gets which status
// or close code, and what is told unasked. Visits is what all of them share. Over HTTP every request shows its token;
// over WebSocket session.open comes first. A reply is byte for byte what the standard input would get; one to a call that
// would rather wait (Context::wait_ms) is held back until something changed, its time is over or the ledger is locked.
#pragma once

#include "core/service/admission.hpp"
#include "core/service/methods/ledger/session.hpp"
#include "rpc/access/origin.hpp"
#include "rpc/access/pages.hpp"
#include "rpc/access/token.hpp"
#include "rpc/protocol/envelope.hpp"
#include "rpc/transport/answerer.hpp"
#include "rpc/transport/net_limits.hpp"

#include <functional>
#include <memory>
#include <set>

namespace limbledger::rpc {

// The one address that is called.
inline constexpr std::string_view rpc_path = "/rpc";
// Calls of one WebSocket that wait at the same time; one more is answered at once.
inline constexpr std::size_t waits_max = 8;

// As health.check publishes them.
[[nodiscard]] service::NetworkLimits published(const NetLimits& limits, const TokenLimits& tokens);

class Visit;

class Visits {
 public:
  Visits(const Service& service, Tokens& tokens, std::uint16_t port, Pages pages = {}, const NetLimits& limits = {})
      : service_(service), tokens_(tokens), limits_(limits), addresses_(port), pages_(std::move(pages)), page_fields_(page_fields(port)) {}
  Visits(const Visits&) = delete;
  Visits& operator=(const Visits&) = delete;

  [[nodiscard]] std::unique_ptr<Conversation> begin();
  // ledger.changed, to every session that may know and where there is something new; and the answers to those who wait for it.
  void tell_changes();

 private:
  void tell_staff_called();
  friend class Visit;

  const Service& service_;
  Tokens& tokens_;
  NetLimits limits_;  // as the listener keeps them, to be named in refusals
  OwnAddresses addresses_;
  Pages pages_;
  std::string page_fields_;
  std::set<Visit*> sockets_;
  std::set<Visit*> waiting_;  // those who hold an answer back
  std::uint64_t told_mark_ = 0;
};

}  // namespace limbledger::rpc
