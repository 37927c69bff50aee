// limbledger join against somebody who stands between: the key that the clinic's card shows must be the one that the connection has
// proved, or nothing is asked and nothing is made.
#include "rpc/program/commands.hpp"
#include "tests/unit/rpc/exchange/served_house.hpp"

#include <sys/eventfd.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <iostream>
#include <sstream>

namespace limbledger::rpc::exchange_test {

namespace {

// Passes every message on to the clinic's own hub, but on a connection with a key of its own.
class Between final : public TlsConversation {
 public:
  Between(service::LettingIn& clinic, int& messages) : clinic_(clinic), messages_(messages) {}
  TlsReply post(std::string_view /*target*/, std::span<const std::uint8_t> body) override {
    ++messages_;
    auto answer = clinic_.post(this, body);
    TlsReply reply;
    reply.status = !answer ? 403 : *answer ? 200 : 202;
    reply.body = answer && *answer ? **answer : ledger::Bytes();
    return reply;
  }
  bool knows_caller() const override { return false; }

 private:
  service::LettingIn& clinic_;
  int& messages_;
};

}  // namespace

TEST_CASE("where another key answers than the clinic's card shows, a device that would join is told so and shows no digits") {
  service::test::DeskFixture clinic(service::LedgerKind::demonstration);
  auto door = service::ExchangeDoor::open(*clinic.desk);
  REQUIRE(door.has_value());
  for (const bool stands_between : {true, false}) {
    CAPTURE(stands_between);
    auto letting_in = service::LettingIn::begin(**door, clinic.made.recovery_code);
    REQUIRE(letting_in.has_value());
    std::array<std::uint8_t, 32> seed{};
    seed.fill(7);
    if (!stands_between) {
      (*door)->with_seed([&](TlsSeed own) { std::copy(own.begin(), own.end(), seed.begin()); });
    }
    std::string why;
    const auto listener = TlsListener::open("127.0.0.1", 0, seed, {}, why);
    REQUIRE_MESSAGE(listener != nullptr, why);
    const int stop = ::eventfd(0, EFD_CLOEXEC);
    int messages = 0;
    std::thread serving([&] { listener->run([&](const TlsShared&) { return std::make_unique<Between>(**letting_in, messages); }, stop); });
    const Scratch scratch;
    Options options;
    options.folder = scratch.path("joined");
    options.with = "https://127.0.0.1:" + std::to_string(listener->port());
    options.demonstration = true;
    // Nothing is typed: who comes as far as the digits has made nothing either, and says so.
    std::string said;
    ExitCode code = ExitCode::done;
    std::istringstream nothing;
    std::ostringstream out;
    std::streambuf* const typed = std::cin.rdbuf(nothing.rdbuf());
    std::streambuf* const shown = std::cout.rdbuf(out.rdbuf());
    try {
      code = join_clinic(options);
    } catch (const Problem& problem) {
      code = problem.code();
      said = problem.what();
    }
    std::cin.rdbuf(typed);
    std::cout.rdbuf(shown);
    const std::uint64_t one = 1;
    REQUIRE(::write(stop, &one, sizeof one) == sizeof one);
    serving.join();
    ::close(stop);
    CHECK(code == ExitCode::bad_answer);
    CHECK((said.find("enrol.code") != std::string::npos) == stands_between);
    CHECK((out.str().find("six digits") == std::string::npos) == stands_between);
    CHECK(messages == (stands_between ? 1 : 2));
    CHECK_FALSE(std::filesystem::exists(scratch.path("joined/keyring")));
  }
}

}  // namespace limbledger::rpc::exchange_test
