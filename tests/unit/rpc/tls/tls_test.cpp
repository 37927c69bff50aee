// HTTPS between a clinic's devices, over loopback: who is let in by which key, and what is held to. RFC 8446 (TLS 1.3), RFC 9266
// (both ends share a value that no other connection has); the rest are logic tests of our own rules.
#include "rpc/transport/tls.hpp"

#include <doctest/doctest.h>

#include <unistd.h>

#include <algorithm>
#include <atomic>
#include <mutex>
#include <thread>
#include <vector>

namespace limbledger::rpc {

namespace {

constexpr std::array<std::uint8_t, 32> seed_of(std::uint8_t byte) {
  std::array<std::uint8_t, 32> out{};
  out.fill(byte);
  return out;
}

// Gives back what came; is known once it was told "known".
class Echo final : public TlsConversation {
 public:
  TlsReply post(std::string_view target, std::span<const std::uint8_t> body) override {
    TlsReply reply;
    reply.status = target == "/refuse" ? 403 : 200;
    reply.body.assign(body.begin(), body.end());
    known_ = known_ || target == "/known";
    return reply;
  }
  bool knows_caller() const override { return known_; }

 private:
  bool known_ = false;
};

class Served {
 public:
  explicit Served(std::uint8_t seed, const TlsLimits& limits = {}) {
    std::string why;
    listener = TlsListener::open("127.0.0.1", 0, seed_of(seed), limits, why);
    REQUIRE_MESSAGE(listener != nullptr, why);
    REQUIRE(::pipe(stop_) == 0);
    thread_ = std::thread([this] {
      listener->run(
          [this](const TlsShared& shared) {
            const std::lock_guard guard(mutex);
            all_shared.push_back(shared);
            return std::make_unique<Echo>();
          },
          stop_[0]);
    });
  }
  ~Served() {
    static_cast<void>(::write(stop_[1], "x", 1) == 1);
    thread_.join();
    ::close(stop_[0]);
    ::close(stop_[1]);
  }
  Served(const Served&) = delete;
  Served& operator=(const Served&) = delete;

  std::unique_ptr<TlsListener> listener;
  std::mutex mutex;
  std::vector<TlsShared> all_shared;

 private:
  int stop_[2] = {-1, -1};
  std::thread thread_;
};

std::unique_ptr<TlsCaller> call_on(Served& served, const std::optional<TlsKey>& pinned, bool* is_other = nullptr) {
  std::string why;
  bool other = false;
  auto caller = TlsCaller::connect("127.0.0.1", served.listener->port(), pinned, {}, why, other);
  if (is_other != nullptr) {
    *is_other = other;
  }
  return caller;
}

}  // namespace

TEST_CASE("a device is known by its key alone, message after message, and both ends share what no other connection has") {
  Served served(7);
  const auto first = call_on(served, std::nullopt);
  REQUIRE(first != nullptr);
  const TlsKey key = first->key();
  const auto second = call_on(served, key);
  REQUIRE(second != nullptr);
  CHECK(second->key() == key);
  CHECK(first->shared() != second->shared());
  std::string why;
  for (std::uint8_t i = 0; i < 5; ++i) {
    const ledger::Bytes body(1000, i);
    const auto reply = second->post("/exchange", body, why);
    REQUIRE_MESSAGE(reply.has_value(), why);
    CHECK(reply->status == 200);
    CHECK(reply->body == body);
  }
  CHECK(second->post("/refuse", ledger::Bytes(3, 1), why)->status == 403);
  const std::lock_guard guard(served.mutex);
  for (const auto* caller : {first.get(), second.get()}) {
    CHECK(std::count(served.all_shared.begin(), served.all_shared.end(), caller->shared()) == 1);
  }
}

TEST_CASE("where another key answers than the one that was compared, nothing is sent") {
  Served hub(7);
  Served stranger(8);
  const TlsKey key = call_on(hub, std::nullopt)->key();
  bool is_other = false;
  CHECK(call_on(stranger, key, &is_other) == nullptr);
  CHECK(is_other);
  CHECK(call_on(hub, key, &is_other) != nullptr);
  CHECK_FALSE(is_other);
  const std::lock_guard guard(stranger.mutex);
  CHECK(stranger.all_shared.empty());
}

TEST_CASE("who has not proved who it is says nothing long, and a few at most are there at one time") {
  TlsLimits limits;
  limits.connections_unknown = 3;
  Served served(7, limits);
  const auto caller = call_on(served, std::nullopt);
  REQUIRE(caller != nullptr);
  std::string why;
  CHECK(caller->post("/exchange", ledger::Bytes(limits.unknown_bytes, 1), why).has_value());
  const auto refused = caller->post("/exchange", ledger::Bytes(limits.unknown_bytes + 1, 1), why);
  CHECK((!refused || refused->status == 413));  // or cut off while it still sends
  const auto known = call_on(served, std::nullopt);
  REQUIRE(known != nullptr);
  REQUIRE(known->post("/known", {}, why).has_value());
  const auto answered = known->post("/exchange", ledger::Bytes(3000000, 1), why);
  REQUIRE_MESSAGE(answered.has_value(), why);
  CHECK(answered->body.size() == 3000000);
  std::vector<std::unique_ptr<TlsCaller>> strangers;
  for (int i = 0; i < 3; ++i) {
    strangers.push_back(call_on(served, std::nullopt));
    CHECK(strangers.back() != nullptr);
  }
  CHECK(call_on(served, std::nullopt) == nullptr);
  CHECK(known->post("/exchange", ledger::Bytes(10, 1), why).has_value());
}

TEST_CASE("where the machine is there and its port shut, the program is said to be locked or not running, and not the network") {
  std::string why;
  std::uint16_t port = 0;
  {
    std::array<std::uint8_t, 32> seed{};
    seed.fill(3);
    const auto once = TlsListener::open("127.0.0.1", 0, seed, {}, why);
    REQUIRE(once != nullptr);
    port = once->port();
  }
  bool other = false;
  CHECK(TlsCaller::connect("127.0.0.1", port, std::nullopt, {}, why, other) == nullptr);
  CHECK(why.find("not running on it, or is locked") != std::string::npos);
  CHECK_FALSE(other);
}

TEST_CASE("an address that is none, and a port that is taken, are said at once") {
  Served served(7);
  std::string why;
  CHECK(TlsListener::open("clinic.invalid", 0, seed_of(1), {}, why) == nullptr);
  CHECK_FALSE(why.empty());
  why.clear();
  CHECK(TlsListener::open("127.0.0.1", served.listener->port(), seed_of(1), {}, why) == nullptr);
  CHECK_FALSE(why.empty());
}

}  // namespace limbledger::rpc
