// A program that serves, without a network for its front end: calls go through the method table, and between them what waits on other
// threads has its turn. The clinic's devices meet over real TLS on this machine's own address.
#pragma once

#include "core/service/exchange/enrolment.hpp"
#include "rpc/program/exchange/served.hpp"
#include "rpc/program/problem.hpp"
#include "tests/unit/rpc/scratch.hpp"
#include "tests/unit/service/desk_fixture.hpp"

#include <atomic>
#include <chrono>
#include <functional>
#include <memory>
#include <thread>

namespace limbledger::rpc::exchange_test {

using service::test::at;
using service::test::codes_of;
using service::test::path_of;

inline constexpr std::string_view second_passphrase = "seven other invented words here";

struct ServedHouse {
  service::Desk& desk;
  Handover handover;
  ServedExchange exchanges;
  service::Scope scope = service::Scope::examiner;

  explicit ServedHouse(service::Desk& of, bool is_hub) : desk(of), exchanges(of, handover, is_hub ? std::optional(HubAt{"127.0.0.1", 0}) : std::nullopt) {}

  [[nodiscard]] Result<std::string> call(std::string_view method, std::string_view params_json = "{}") {
    const auto params = wire::parse(params_json);
    REQUIRE(params.has_value());
    service::Context context;
    context.desk = &desk;
    context.edition = &desk.edition();
    context.caller.scope = scope;
    context.exchanges = &exchanges;
    return service::call(service::methods(), context, method, *params, &params->root());
  }
  [[nodiscard]] std::string state() { return at(*call("exchange.read"), "/errand/state"); }
  [[nodiscard]] std::string enrolling() { return at(*call("replica.enrolling"), "/state"); }
  [[nodiscard]] std::string url() { return at(*call("exchange.read"), "/answering/addresses/0"); }
};

// Gives each its turns until it is so; a minute is far more than any of it takes.
inline void until(std::initializer_list<ServedHouse*> houses, const std::function<bool()>& is_so) {
  const auto end = std::chrono::steady_clock::now() + std::chrono::minutes(1);
  while (!is_so()) {
    REQUIRE(std::chrono::steady_clock::now() < end);
    for (ServedHouse* house : houses) {
      house->handover.work();
    }
    std::this_thread::sleep_for(std::chrono::milliseconds(1));
  }
}

// The new device's half, on a thread of its own as if it were another machine.
struct Newcomer {
  store::MemoryStore store;
  service::test::FixedWorld world;
  service::MadeLedger made;
  std::string digits;
  std::string refused_for;
  std::atomic<bool> has_digits = false, is_over = false;
  std::atomic<bool> goes_away = false;  // before anybody has decided
  std::thread thread;
  std::unique_ptr<service::Desk> desk;

  explicit Newcomer(const std::string& url, std::uint8_t seed = 9) : world(seed) {
    thread = std::thread([this, url] {
      join(*address_in(url));
      is_over = true;
    });
  }
  ~Newcomer() {
    goes_away = true;
    if (thread.joinable()) {
      thread.join();
    }
  }
  Newcomer(const Newcomer&) = delete;
  Newcomer& operator=(const Newcomer&) = delete;

  // Its ledger, once it was let in.
  void open() {
    REQUIRE(refused_for.empty());
    auto opened = service::Desk::open(store, world, *reference::built_in_edition(), made.keyring);
    REQUIRE(opened.has_value());
    desk = std::move(*opened);
    REQUIRE(desk->unlock({}, second_passphrase).has_value());
  }

 private:
  void join(const HubAddress& hub) {
    std::string why;
    bool is_other_key = false;
    const auto caller = TlsCaller::connect(hub.host, hub.port, std::nullopt, {}, why, is_other_key);
    auto joining = service::Joining::begin(world);
    if (!caller || !joining) {
      refused_for = why;
      return;
    }
    const auto post = [&](const ledger::Bytes& body) {
      auto reply = caller->post(enrol_target, body, why);
      if (!reply || reply->status >= 400) {
        refused_for = reply ? refusal_in(reply->body, reply->status).code : why;
      }
      return reply ? std::move(*reply) : TlsReply{599, {}, {}};
    };
    const TlsReply card = post((*joining)->commit());
    if (!refused_for.empty()) {
      return;
    }
    const auto shown = (*joining)->show(card.body);
    if (!shown) {
      refused_for = shown.error().faults.front().code;
      return;
    }
    TlsReply answer = post(*shown);
    digits = (*joining)->digits();
    has_digits = true;
    for (answer.status = 202; answer.status == 202 && !goes_away; answer = post({})) {
      std::this_thread::sleep_for(std::chrono::milliseconds(5));
    }
    if (answer.status != 200) {
      return;
    }
    service::NewLedger wanted;
    wanted.examiner_label = "Second Examiner";
    wanted.passphrase = second_passphrase;
    wanted.argon_passes = 1;
    wanted.argon_kib = 8;
    auto finished = (*joining)->finish(store, answer.body, wanted);
    finished ? static_cast<void>(made = std::move(*finished)) : static_cast<void>(refused_for = finished.error().faults.front().code);
  }
};

// A device that the hub has let in, as a front end does it.
inline std::unique_ptr<Newcomer> let_in(ServedHouse& hub, const std::string& code, std::uint8_t seed = 9) {
  const auto begun = hub.call("replica.enrol", R"({"code":")" + code + R"("})");
  REQUIRE_MESSAGE(begun.has_value(), codes_of(begun));
  CHECK(at(*begun, "/state") == "waits");
  auto newcomer = std::make_unique<Newcomer>(hub.url(), seed);
  until({&hub}, [&] { return newcomer->has_digits && hub.enrolling() == "compares"; });
  const auto let = hub.call("replica.let_in", R"({"digits":")" + newcomer->digits + R"("})");
  REQUIRE_MESSAGE(let.has_value(), codes_of(let));
  CHECK(at(*let, "/state") == "let_in");
  until({&hub}, [&] { return newcomer->is_over.load(); });
  newcomer->open();
  return newcomer;
}

inline std::string register_one(ServedHouse& house, unsigned number, const std::string& name) {
  const auto made = house.call("person.register", R"({"names":[{"text":")" + name + R"("}],"sex":"female","request":")" + service::test::request_id(number) + R"("})");
  REQUIRE_MESSAGE(made.has_value(), codes_of(made));
  return at(*made, "/person/person");
}

}  // namespace limbledger::rpc::exchange_test
