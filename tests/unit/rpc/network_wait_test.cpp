// changes.read with wait_ms over real connections: the answer comes with the change, with the end of the program, or where
// the caller says that it sends no more; and the connection goes on afterwards. No time is waited for.
#include "tests/unit/rpc/network_client.hpp"

namespace limbledger::rpc {

namespace {

using namespace test;
using service::test::at;

struct Clinic {
  explicit Clinic(const NetLimits& limits = patient()) : running(limits, fixture.desk.get()) {}

  service::test::DeskFixture fixture;
  std::string start = at(fixture.ok("changes.read", "{}"), "/cursor");
  Running running;

  [[nodiscard]] std::string wait() const {
    return R"({"jsonrpc":"2.0","id":1,"method":"changes.read","params":{"cursor":")" + start + R"(","wait_ms":60000}})";
  }
  [[nodiscard]] std::string token() const { return "Authorization: Bearer " + running.token + "\r\n"; }
  void write(unsigned number) const {
    Client writer(running);
    writer.post(R"({"jsonrpc":"2.0","id":2,"method":"person.register","params":{"names":[{"text":"Awa Invented"}],"sex":"female","request":")" +
                    service::test::request_id(number) + "\"}}",
                token());
    CHECK(holds(writer.reply(), "200 "));
  }
};

constexpr std::string_view health = R"({"jsonrpc":"2.0","id":3,"method":"health.check"})";

}  // namespace

TEST_CASE("over HTTP a call that waits is answered with the change, and the next request on its connection after it") {
  const Clinic clinic;
  Client client(clinic.running);
  client.post(clinic.wait(), clinic.token());
  clinic.write(1);
  CHECK(holds(client.reply(), R"("kind":"person")"));
  // Sent while the first still waits, whole or in part, the second waits its turn.
  Client hasty(clinic.running);
  const std::string second = hasty.head("Content-Length: " + std::to_string(health.size()) + "\r\n\r\n") + std::string(health);
  hasty.send(hasty.head(clinic.token() + "Content-Length: " + std::to_string(clinic.wait().size()) + "\r\n\r\n") + clinic.wait() + second);
  CHECK(holds(hasty.reply(), R"("kind":"person")"));  // what had changed already
  CHECK(holds(hasty.reply(), R"("state":"ready")"));
}

TEST_CASE("requests sent while a call waits are answered in order once it is") {
  const Clinic clinic;
  for (const std::size_t piece : {std::size_t{1}, std::size_t{40}, std::size_t{100'000}}) {
    CAPTURE(piece);
    Client client(clinic.running);
    const std::string cursor_read = R"({"jsonrpc":"2.0","id":4,"method":"changes.read"})";
    client.post(cursor_read, clinic.token());
    const std::string cursor = at(client.reply().substr(4), "/result/cursor");
    client.post(R"({"jsonrpc":"2.0","id":1,"method":"changes.read","params":{"cursor":")" + cursor + R"(","wait_ms":60000}})", clinic.token());
    const std::string second = client.head("Content-Length: " + std::to_string(health.size()) + "\r\n\r\n") + std::string(health);
    client.send(std::string_view(second).substr(0, piece));
    clinic.write(static_cast<unsigned>(piece));
    CHECK(holds(client.reply(), R"("kind":"person")"));
    if (piece < second.size()) {
      client.send(std::string_view(second).substr(piece));
    }
    CHECK(holds(client.reply(), R"("state":"ready")"));
  }
}

TEST_CASE("a caller that sends no more is answered early and its connection ends; one that is gone leaves room") {
  const Clinic clinic;
  Client client(clinic.running);
  client.post(clinic.wait(), clinic.token());
  client.no_more();
  CHECK(holds(client.reply(), R"("changes":[])"));
  CHECK(client.ends());
  NetLimits one = patient();
  one.connections = 1;
  const Clinic small(one);
  {
    Client gone(small.running);
    gone.post(small.wait(), small.token());
  }
  std::string reply;
  for (int tries = 0; tries < 10'000 && !reply.starts_with("200 "); ++tries) {
    Client next(small.running);
    next.post(health);
    reply = next.reply();  // until the first is seen to be gone, that there are too many
  }
  CHECK(reply.starts_with("200 "));
}

TEST_CASE("the end of the program answers every call that waits, and says goodbye") {
  auto clinic = std::make_unique<Clinic>();
  Client http(clinic->running);
  http.post(clinic->wait(), clinic->token());
  Client socket(clinic->running);
  socket.upgrade();
  CHECK(holds(socket.reply(), "101"));
  socket.text(R"({"jsonrpc":"2.0","id":1,"method":"session.open","params":{"token":")" + clinic->running.token + "\"}}");
  CHECK(holds(socket.next(), R"("scope":"examiner")"));
  socket.text(clinic->wait());
  socket.text(health);
  CHECK(holds(socket.next(), R"("state":"ready")"));  // meanwhile
  Client after(clinic->running);
  after.post(health);
  CHECK(holds(after.reply(), "200 "));  // by now the first has been read
  clinic.reset();
  CHECK(holds(http.reply(), R"("changes":[])"));
  CHECK(http.ends());
  CHECK(holds(socket.next(), R"("changes":[])"));
  CHECK(socket.next() == "close 1001");
}

}  // namespace limbledger::rpc
