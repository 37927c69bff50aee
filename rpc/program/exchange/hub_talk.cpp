#include "rpc/program/exchange/hub_talk.hpp"

#include "rpc/program/exchange/carried.hpp"

#include <ifaddrs.h>
#include <netdb.h>
#include <sys/socket.h>

#include <algorithm>
#include <array>
#include <exception>
#include <new>
#include <string_view>

namespace limbledger::rpc {

namespace {

[[nodiscard]] TlsReply refused(const wire::Refusal& refusal) {
  TlsReply reply;
  reply.status = refusal.number() == wire::FaultClass::read_only || refusal.number() == wire::FaultClass::limit || refusal.number() == wire::FaultClass::internal ? 503 : 403;
  reply.body = refusal_bytes(refusal);
  reply.type = "application/json";
  return reply;
}

class HubTalk final : public TlsConversation {
 public:
  HubTalk(const HubTalks& all, const TlsShared& shared) : all_(all), answering_(all.door.answering(shared)) {}
  ~HubTalk() override {
    static_cast<void>(all_.turn([this] {
      if (service::LettingIn* letting_in = all_.letting_in()) {
        letting_in->leave(this);
      }
      const service::ExchangeState state = answering_->state();
      if (all_.door.finish() && all_.brought && (state.taken != 0 || state.waiting != 0 || state.turned_away != 0)) {
        all_.brought(state);
      }
    }));
  }

  TlsReply post(std::string_view target, std::span<const std::uint8_t> body) override {
    TlsReply reply = refused(wire::Fault("exchange.no_answer", ""));
    try {
      static_cast<void>(all_.turn([&] { reply = answered(target, body); }));
    } catch (const std::bad_alloc&) {
      reply = refused(wire::Fault("internal.memory", ""));
    } catch (const std::exception&) {
      reply = refused(wire::Fault("internal.failure", ""));
    }
    return reply;
  }
  bool knows_caller() const override { return answering_->knows_caller(); }
  bool waits_for_person() const override { return waits_for_person_; }

 private:
  [[nodiscard]] TlsReply answered(std::string_view target, std::span<const std::uint8_t> body) {
    if (target == enrol_target) {
      return enrolled(body);
    }
    if (target != exchange_target) {
      return refused(wire::Fault("http.path", ""));
    }
    auto answer = answering_->answer(body);
    if (!answer) {
      return refused(answer.error());
    }
    TlsReply reply;
    reply.body = std::move(*answer);
    return reply;
  }

  [[nodiscard]] TlsReply enrolled(std::span<const std::uint8_t> body) {
    service::LettingIn* letting_in = all_.letting_in();
    if (letting_in == nullptr) {
      return refused(wire::Fault("enrol.closed", ""));
    }
    auto answer = letting_in->post(this, body);
    waits_for_person_ = letting_in->compares_with(this);
    if (!answer) {
      return refused(answer.error());
    }
    TlsReply reply;
    reply.status = *answer ? 200 : 202;
    reply.body = *answer ? std::move(**answer) : ledger::Bytes();
    return reply;
  }

  const HubTalks& all_;
  std::unique_ptr<service::Answering> answering_;
  bool waits_for_person_ = false;  // as it was at its last message
};

[[nodiscard]] std::string url_of(const std::string& address, std::uint16_t port) {
  return "https://" + (address.find(':') == std::string::npos ? address : "[" + address + "]") + ":" + std::to_string(port);
}

}  // namespace

std::unique_ptr<TlsConversation> hub_talk(const HubTalks& all, const TlsShared& shared) { return std::make_unique<HubTalk>(all, shared); }

std::string line_of_brought(const service::ExchangeState& state) {
  std::string out = "Replica " + state.peer.to_text() + ": " + std::to_string(state.taken) + " entries were new";
  if (state.waiting + state.turned_away != 0) {
    out += ", " + std::to_string(state.waiting + state.turned_away) + " wait for earlier ones";
  }
  return out;
}

std::vector<std::string> addresses_to_call(const std::string& address, std::uint16_t port) {
  if (address != "0.0.0.0" && address != "::") {
    return {url_of(address, port)};
  }
  std::vector<std::string> out;
  ifaddrs* all = nullptr;
  if (::getifaddrs(&all) == 0) {
    for (const ifaddrs* one = all; one != nullptr; one = one->ifa_next) {
      const int family = one->ifa_addr == nullptr ? AF_UNSPEC : one->ifa_addr->sa_family;
      if (family != AF_INET && (family != AF_INET6 || address != "::")) {
        continue;
      }
      std::array<char, 128> text{};
      const socklen_t size = family == AF_INET ? sizeof(sockaddr_in) : sizeof(sockaddr_in6);
      if (::getnameinfo(one->ifa_addr, size, text.data(), text.size(), nullptr, 0, NI_NUMERICHOST) != 0) {
        continue;
      }
      const std::string_view numbers = text.data();
      // Not of this machine alone, and not of one line, which needs the name of the caller's own line beside it.
      if (!numbers.starts_with("127.") && numbers != "::1" && numbers.find('%') == std::string_view::npos) {
        out.push_back(url_of(std::string(numbers), port));
      }
    }
    ::freeifaddrs(all);
  }
  if (out.empty()) {
    out.push_back(url_of(address == "::" ? "::1" : "127.0.0.1", port));
  }
  std::sort(out.begin(), out.end());
  out.erase(std::unique(out.begin(), out.end()), out.end());
  return out;
}

}  // namespace limbledger::rpc
