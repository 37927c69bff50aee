// Whoever sends many messages at once waits for each as others wait for theirs, also while replies that go out together are put off and sent.
// A logic test of our own rule; the work of a call is longer than replies are put off.
#include "tests/unit/rpc/network_client.hpp"

#include <chrono>
#include <mutex>

namespace limbledger::rpc::test {

namespace {

// Who asked, in the order of service.
struct Turns {
  std::mutex mutex;
  std::string order;
};

class TurnsWorker final : public Conversation {
 public:
  explicit TurnsWorker(Turns& served) : served_(served) {}
  std::optional<HttpReply> head(const HttpHead& /*head*/) override { return std::nullopt; }
  HttpReply body(std::string_view text) override {
    HttpReply reply;
    reply.body = std::string(text);
    return reply;
  }
  void http_opened(std::function<void(HttpReply)> /*reply*/) override {}
  HttpReply http_trouble(Trouble /*trouble*/, std::string_view /*text*/) override { return {}; }
  void socket_opened(std::function<void(std::string)> /*send*/) override {}
  [[nodiscard]] bool admitted() const override { return true; }
  SocketReply message(std::string_view text) override {
    {
      const std::lock_guard lock(served_.mutex);
      served_.order += text.substr(0, 1);
    }
    std::this_thread::sleep_for(std::chrono::microseconds(300));
    return {std::string(text), 0};
  }
  SocketReply socket_trouble(Trouble /*trouble*/, std::string_view /*text*/) override { return {std::nullopt, 1011}; }
  void after_reply() override {}
  void look(bool /*going*/) override {}

 private:
  Turns& served_;
};

}  // namespace

TEST_CASE("two who send a hundred messages at once are served in turn, and each is answered in order") {
  constexpr int each = 100;
  Turns served;
  std::string why;
  const auto listener = Listener::open(0, patient(), why);
  REQUIRE_MESSAGE(listener != nullptr, why);
  std::array<int, 2> stop{};
  REQUIRE(::pipe(stop.data()) == 0);
  std::thread serving([&] { listener->run([&served] { return std::make_unique<TurnsWorker>(served); }, stop[0], nullptr, 1000); });
  {
    Client a(listener->port());
    Client b(listener->port());
    for (Client* one : {&a, &b}) {
      one->upgrade();
      CHECK(one->reply().starts_with("101 "));
    }
    for (int i = 0; i < each; ++i) {
      a.text("a" + std::to_string(i));
      b.text("b" + std::to_string(i));
    }
    for (int i = 0; i < each; ++i) {
      CHECK(a.next() == "text a" + std::to_string(i));
      CHECK(b.next() == "text b" + std::to_string(i));
    }
  }
  ::close(stop[1]);
  serving.join();
  ::close(stop[0]);
  // While both have messages there.
  const std::size_t first = std::max(served.order.find('a'), served.order.find('b'));
  const std::size_t last = std::min(served.order.rfind('a'), served.order.rfind('b'));
  std::size_t longest = 0;
  std::size_t run = 0;
  for (std::size_t i = first + 1; i < last; ++i) {
    run = served.order[i] == served.order[i - 1] ? run + 1 : 1;
    longest = std::max(longest, run);
  }
  CAPTURE(served.order);
  CHECK(longest <= 2);
}

}  // namespace limbledger::rpc::test
