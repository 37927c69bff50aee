// One connection without a network: which head is refused with which status and code, sessions over WebSocket, what is told
// unasked. Statuses: RFC 9110; close codes: RFC 6455, section 7.4.1; the codes of faults are the table's.
#include "rpc/access/visit.hpp"
#include "tests/unit/service/desk_fixture.hpp"

namespace limbledger::rpc {

namespace {

using service::Scope;
using service::test::at;

constexpr std::uint16_t port = 40211;

struct House {
  service::test::DeskFixture desk;
  service::Context context;
  Service service{service::methods(), context, {}, {}, {}};
  Tokens tokens{desk.world};
  Visits visits{service, tokens, port, {{"/", {"text/html; charset=utf-8", "<!doctype html>"}}, {"/form.js", {"text/javascript; charset=utf-8", "let x;"}}}};
  std::string token = tokens.make({Scope::examiner, std::nullopt}).text;

  House() {
    context.desk = desk.desk.get();
    context.edition = &desk.desk->edition();
    context.caller.scope = Scope::none;
  }
};

std::string call_text(std::string_view method, std::string_view params = "{}") {
  return R"({"jsonrpc":"2.0","id":1,"method":")" + std::string(method) + R"(","params":)" + std::string(params) + "}";
}
std::string fault_of(std::string_view reply) { return at(reply, "/error/data/faults/0/code"); }

HttpHead good_head() {
  HttpHead head;
  head.method = "POST";
  head.target = "/rpc";
  head.host = "127.0.0.1:40211";
  head.content_type = "application/json";
  return head;
}

// "status code" of a head that is refused; "taken" of one that is not.
std::string refused(House& house, const HttpHead& head) {
  const auto visit = house.visits.begin();
  const auto reply = visit->head(head);
  return reply ? std::to_string(reply->status) + (reply->body.empty() ? "" : " " + fault_of(reply->body)) : "taken";
}

std::string register_text(unsigned number) {
  return call_text("person.register", R"({"names":[{"text":"Awa Invented"}],"sex":"female","request":")" + service::test::request_id(number) + "\"}");
}

// A WebSocket's conversation and what was sent to it unasked.
struct VisitLine {
  std::vector<std::string> told;
  std::unique_ptr<Conversation> talk;

  explicit VisitLine(House& house) : talk(house.visits.begin()) {
    talk->socket_opened([this](std::string text) { told.push_back(std::move(text)); });
  }
  std::string say(const std::string& text) {
    const SocketReply reply = talk->message(text);
    CHECK(reply.close == 0);
    talk->after_reply();
    return reply.text.value_or("nothing");
  }
};

}  // namespace

TEST_CASE("HC-110: a good head is taken, and each bad one has its status and code") {
  House house;
  const std::string bearer = "Bearer " + house.token;
  const std::string basic = "Basic " + house.token;
  const auto with = [&](auto&& change) {
    HttpHead head = good_head();
    head.authorization = bearer;
    change(head);
    return refused(house, head);
  };
  CHECK(with([](HttpHead&) {}) == "taken");
  CHECK(with([](HttpHead& h) { h.authorization.reset(); }) == "taken");
  CHECK(with([](HttpHead& h) { h.origin = "http://localhost:40211"; }) == "taken");
  CHECK(with([](HttpHead& h) { h.upgrade = true, h.method = "GET", h.content_type.reset(); }) == "taken");
  CHECK(with([](HttpHead& h) { h.host.reset(); }) == "403 host.refused");
  CHECK(with([](HttpHead& h) { h.host = "evil.example:40211"; }) == "403 host.refused");
  CHECK(with([](HttpHead& h) { h.origin = "http://evil.example"; }) == "403 origin.refused");
  CHECK(with([](HttpHead& h) { h.origin = "null"; }) == "403 origin.refused");
  CHECK(with([](HttpHead& h) { h.fetch_site = "cross-site"; }) == "403 origin.refused");
  CHECK(with([](HttpHead& h) { h.upgrade = true, h.method = "GET", h.origin = "http://evil.example"; }) == "403 origin.refused");
  CHECK(with([](HttpHead& h) { h.target = "/"; }) == "404 http.path");  // a page is read, not called
  CHECK(with([](HttpHead& h) { h.target = "/other.js", h.method = "GET"; }) == "404 http.path");
  CHECK(with([](HttpHead& h) { h.target = "/favicon.ico"; }) == "404 http.path");
  HttpHead icon = good_head();  // every browser asks for it unbidden: nothing, and no error in its console
  icon.target = "/favicon.ico";
  icon.method = "GET";
  const auto no_icon = house.visits.begin()->head(icon);
  REQUIRE(no_icon.has_value());
  CHECK((no_icon->status == 204 && no_icon->body.empty()));
  CHECK(with([](HttpHead& h) { h.target = "/../keyring", h.method = "GET"; }) == "404 http.path");
  CHECK(with([](HttpHead& h) { h.target = "/form.js", h.method = "GET", h.host = "evil.example:40211"; }) == "403 host.refused");
  CHECK(with([](HttpHead& h) { h.target = "/form.js", h.method = "GET", h.fetch_site = "cross-site"; }) == "403 origin.refused");
  CHECK(with([](HttpHead& h) { h.target = "/rpc?token=x"; }) == "404 http.path");
  CHECK(with([](HttpHead& h) { h.method = "GET"; }) == "405 http.method");
  CHECK(with([](HttpHead& h) { h.method = "OPTIONS"; }) == "405 http.method");
  CHECK(with([](HttpHead& h) { h.content_type = "text/plain"; }) == "415 http.content_type");
  CHECK(with([](HttpHead& h) { h.content_type.reset(); }) == "415 http.content_type");
  CHECK(with([](HttpHead& h) { h.authorization = "Bearer wrong"; }) == "401 token.unknown");
  CHECK(with([&](HttpHead& h) { h.authorization = house.token; }) == "401 token.unknown");
  CHECK(with([&](HttpHead& h) { h.authorization = basic; }) == "401 token.unknown");
  CHECK(with([](HttpHead& h) { h.ambiguous = true; }) == "400 http.request");
  house.desk.world.pass(token_ms);
  CHECK(with([](HttpHead&) {}) == "401 token.expired");
}

TEST_CASE("a token that is not as it was given, and a file that came after the start, are refused with what would be taken") {
  House house;
  const auto said = [&](const std::string& authorization, std::string_view target, std::string_view method) {
    HttpHead head = good_head();
    head.authorization = authorization;
    head.target = target;
    head.method = method;
    const auto reply = house.visits.begin()->head(head);
    return reply ? at(reply->body, "/error/data/faults/0/expected") : "taken";
  };
  const std::string bearer = "Bearer " + house.token;
  CHECK(said(bearer, "/rpc", "POST") == "taken");
  CHECK(said(house.token, "/rpc", "POST") == "Authorization: Bearer TOKEN");
  CHECK(said("Bearer abc", "/rpc", "POST") == "a whole token, which has 43 characters");  // 32 bytes in base64 without padding: RFC 4648, section 5
  CHECK(said("Bearer " + std::string(43, 'A'), "/rpc", "POST") == "a token of this launch");
  CHECK(said(bearer, "/late.js", "GET") == "/rpc, or a file that was in the folder of --pages at the start");
  CHECK(said(bearer, "/late.js", "POST") == "/rpc");
  const wire::FaultCode* unknown = wire::find_fault_code("token.unknown");
  CHECK(unknown->hint.find("behind the word Bearer") < unknown->hint.find("where the program was started again"));
  CHECK(wire::find_fault_code("origin.refused")->hint.find("--pages DIR") != std::string_view::npos);
}

TEST_CASE("a page is answered across origins only where it is ours, by name and never by a star") {
  House house;
  HttpHead preflight = good_head();
  preflight.method = "OPTIONS";
  preflight.content_type.reset();
  preflight.preflight = "POST";
  preflight.origin = "http://localhost:40211";
  const auto answered = house.visits.begin()->head(preflight);
  REQUIRE(answered.has_value());
  CHECK(answered->status == 204);
  CHECK(answered->fields.find("Access-Control-Allow-Origin: http://localhost:40211\r\n") != std::string::npos);
  CHECK(answered->fields.find("Vary: Origin\r\n") != std::string::npos);
  CHECK(answered->fields.find('*') == std::string::npos);
  preflight.origin = "http://evil.example";
  const auto foreign = house.visits.begin()->head(preflight);
  REQUIRE(foreign.has_value());
  CHECK(foreign->status == 403);
  CHECK(foreign->fields.find("Access-Control") == std::string::npos);
}

// Content Security Policy 3: what a page may load and call; RFC 9110, section 9.3.2: HEAD is answered as GET would be.
TEST_CASE("the files of a front end are read without a token, and its page may load and call nothing but this sidecar") {
  House house;
  HttpHead head = good_head();
  head.content_type.reset();
  for (const std::string_view method : {"GET", "HEAD"}) {
    head.method = method;
    for (const auto& [target, text] : {std::pair<std::string_view, std::string_view>{"/", "<!doctype html>"}, {"/?once=no", "<!doctype html>"}, {"/form.js", "let x;"}}) {
      head.target = target;
      const auto page = house.visits.begin()->head(head);
      REQUIRE(page.has_value());
      CHECK(page->status == 200);
      CHECK(page->body == text);
      CHECK(page->type == (target == "/form.js" ? "text/javascript; charset=utf-8" : "text/html; charset=utf-8"));
      CHECK(page->fields.find("default-src 'self'") != std::string::npos);
      CHECK(page->fields.find("connect-src 'self' ws://127.0.0.1:40211 ws://localhost:40211;") != std::string::npos);
      CHECK(page->fields.find("frame-ancestors 'none'") != std::string::npos);
    }
  }
}

TEST_CASE("over HTTP each request shows its token, and without one only what anybody may ask is answered") {
  House house;
  const auto visit = house.visits.begin();
  HttpHead head = good_head();
  REQUIRE_FALSE(visit->head(head).has_value());
  CHECK(at(visit->body(call_text("health.check")).body, "/result/state") == "ready");
  CHECK(fault_of(visit->body(call_text("person.find")).body) == "token.missing");
  CHECK(fault_of(visit->body(call_text("session.open")).body) == "token.missing");
  const std::string bearer = "bearer " + house.token;
  head.authorization = bearer;
  REQUIRE_FALSE(visit->head(head).has_value());
  CHECK(at(visit->body(call_text("person.find")).body, "/result/people") == "[]");
  CHECK(at(visit->body(call_text("session.open")).body, "/result/scope") == "examiner");
  head.authorization.reset();
  REQUIRE_FALSE(visit->head(head).has_value());
  CHECK(fault_of(visit->body(call_text("person.find")).body) == "token.missing");
  CHECK(house.context.caller.scope == Scope::none);
}

TEST_CASE("a message that only notifies is answered with 204 and nothing") {
  House house;
  const auto visit = house.visits.begin();
  REQUIRE_FALSE(visit->head(good_head()).has_value());
  const HttpReply reply = visit->body(R"({"jsonrpc":"2.0","method":"health.check"})");
  CHECK(reply.status == 204);
  CHECK(reply.body.empty());
}

TEST_CASE("what the transport refuses has its status or close code, and the words") {
  House house;
  const auto http = [&](Trouble trouble) {
    const HttpReply reply = house.visits.begin()->http_trouble(trouble, call_text("health.check"));
    return std::to_string(reply.status) + " " + fault_of(reply.body);
  };
  CHECK(http(Trouble::malformed) == "400 http.request");
  CHECK(http(Trouble::large_head) == "431 limit.head");
  CHECK(http(Trouble::large_message) == "413 limit.size");
  CHECK(http(Trouble::slow) == "408 limit.time");
  CHECK(http(Trouble::often) == "429 limit.rate");
  CHECK(http(Trouble::crowded) == "503 limit.rate");
  const auto socket = [&](Trouble trouble) {
    const SocketReply reply = house.visits.begin()->socket_trouble(trouble, call_text("health.check"));
    return std::to_string(reply.close) + " " + fault_of(reply.text.value_or("{}")) + " " + at(reply.text.value_or("{}"), "/id");
  };
  CHECK(socket(Trouble::large_message) == "1009 limit.size null");
  CHECK(socket(Trouble::binary) == "1003 websocket.binary null");
  CHECK(socket(Trouble::silent) == "1008 token.missing null");
  CHECK(socket(Trouble::often) == "0 limit.rate 1");  // the caller's own id, so that its promise ends
}

TEST_CASE("over WebSocket session.open comes first, with a token or a one-time code") {
  House house;
  VisitLine line(house);
  CHECK_FALSE(line.talk->admitted());
  CHECK(at(line.say(call_text("health.check")), "/result/state") == "ready");
  CHECK(fault_of(line.say(call_text("person.find"))) == "token.missing");
  const std::string wrong = line.say(call_text("session.open", R"({"token":"wrong"})"));
  CHECK(fault_of(wrong) == "token.unknown");
  CHECK(at(wrong, "/error/data/faults/0/path") == "/token");
  CHECK(fault_of(line.say(call_text("session.open", R"({"token":"a","once":"b"})"))) == "value.all_or_one");
  CHECK_FALSE(line.talk->admitted());
  const std::string opened = line.say(call_text("session.open", R"({"token":")" + house.token + "\"}"));
  CHECK(at(opened, "/result/scope") == "examiner");
  CHECK(at(opened, "/result/expires_at") == "2026-11-25T10:15:00.000Z");
  CHECK_FALSE(at(opened, "/result/cursor").empty());
  CHECK(at(opened, "/result/token").empty());
  CHECK(line.talk->admitted());
  CHECK(at(line.say(call_text("person.find")), "/result/people") == "[]");

  VisitLine other(house);
  const std::string code = house.tokens.make_once({Scope::viewer, std::nullopt}).text;
  const std::string traded = other.say(call_text("session.open", R"({"once":")" + code + "\"}"));
  CHECK(at(traded, "/result/scope") == "viewer");
  CHECK(at(traded, "/result/token").size() == 43);
  CHECK(fault_of(other.say(register_text(1))) == "token.scope");
  CHECK(fault_of(VisitLine(house).say(call_text("session.open", R"({"once":")" + code + "\"}"))) == "token.used");
  const std::string told = VisitLine(house).say(call_text("session.open", R"({"once":")" + code + R"(","language":"en"})"));
  CHECK(at(told, "/error/data/faults/0/text") == "This link was opened before. Go on where it was opened, or open the form by a new link.");
}

TEST_CASE("ending a session closes its WebSocket, and its traded token with it") {
  House house;
  VisitLine line(house);
  const std::string code = house.tokens.make_once({Scope::viewer, std::nullopt}).text;
  const std::string token = at(line.say(call_text("session.open", R"({"once":")" + code + "\"}")), "/result/token");
  const SocketReply ended = line.talk->message(call_text("session.end"));
  CHECK(at(ended.text.value_or("{}"), "/result/ended") == "true");
  CHECK(ended.close == 1000);
  CHECK_FALSE(line.talk->admitted());
  CHECK_FALSE(house.tokens.find(token).has_value());
}

TEST_CASE("over HTTP the end of a session is the end of its token; a WebSocket that ends leaves the token others talk with") {
  House house;
  VisitLine line(house);
  line.say(call_text("session.open", R"({"token":")" + house.token + "\"}"));
  CHECK(line.talk->message(call_text("session.end")).close == 1000);
  CHECK(house.tokens.find(house.token).has_value());
  const std::string bearer = "Bearer " + house.token;
  HttpHead head = good_head();
  head.authorization = bearer;
  const auto visit = house.visits.begin();
  CHECK_FALSE(visit->head(head).has_value());
  CHECK(at(visit->body(call_text("session.end")).body, "/result/ended") == "true");
  CHECK(refused(house, head) == "401 token.expired");
}

TEST_CASE("a WebSocket does not outlive its token") {
  House house;
  VisitLine line(house);
  line.say(call_text("session.open", R"({"token":")" + house.token + "\"}"));
  house.desk.world.pass(token_ms);
  const std::string reply = line.say(call_text("person.find"));
  CHECK(fault_of(reply) == "token.expired");
  CHECK(at(reply, "/id") == "1");
  CHECK_FALSE(line.talk->admitted());
}

TEST_CASE("HC-116: every session that may know is told once of what changed, the writer after its reply") {
  House house;
  VisitLine writer(house);
  VisitLine viewer(house);
  VisitLine stranger(house);
  VisitLine kiosk(house);
  writer.say(call_text("session.open", R"({"token":")" + house.token + "\"}"));
  viewer.say(call_text("session.open", R"({"token":")" + house.tokens.make({Scope::viewer, std::nullopt}).text + "\"}"));
  kiosk.say(call_text("session.open", R"({"token":")" + house.tokens.make({Scope::kiosk, model::ExamId{}}).text + "\"}"));
  const std::string person = at(writer.say(register_text(1)), "/result/person/person");
  REQUIRE(writer.told.size() == 1);
  CHECK(at(writer.told[0], "/method") == "ledger.changed");
  CHECK(at(writer.told[0], "/id").empty());
  CHECK(at(writer.told[0], "/params/changes/0/kind") == "person");
  CHECK(at(writer.told[0], "/params/changes/0/object") == person);
  CHECK(viewer.told == writer.told);
  CHECK(stranger.told.empty());
  CHECK(kiosk.told.empty());
  writer.say(register_text(1));  // a repeat
  writer.say(call_text("person.find"));
  CHECK(writer.told.size() == 1);
  // What was told goes on from there.
  const std::string read = viewer.say(call_text("changes.read", R"({"cursor":")" + at(viewer.told[0], "/params/cursor") + "\"}"));
  CHECK(at(read, "/result/changes") == "[]");
}

TEST_CASE("a session that began while the ledger was locked is told where it stands once it is open") {
  House house;
  house.desk.desk->lock();
  VisitLine first(house);
  VisitLine second(house);
  for (VisitLine* line : {&first, &second}) {
    CHECK(at(line->say(call_text("session.open", R"({"token":")" + house.token + "\"}")), "/result/locked") == "true");
  }
  first.say(call_text("ledger.unlock", R"({"passphrase":")" + std::string(service::test::passphrase) + "\"}"));
  REQUIRE(second.told.size() == 1);
  CHECK(at(second.told[0], "/params/changes") == "[]");
  first.say(register_text(1));
  CHECK(second.told.size() == 2);
}

TEST_CASE("a call that waits for changes is answered when one comes, once its time is over, when the ledger locks, or at the end") {
  House house;
  const std::string bearer = "Bearer " + house.token;
  HttpHead head = good_head();
  head.authorization = bearer;
  std::vector<HttpReply> late;
  const auto visit = house.visits.begin();
  visit->http_opened([&](HttpReply reply) { late.push_back(std::move(reply)); });
  const auto ask = [&](std::string_view method, const std::string& params) {
    REQUIRE_FALSE(visit->head(head).has_value());
    return visit->body(call_text(method, params));
  };
  const auto wait_from = [](const std::string& cursor) { return R"({"cursor":")" + cursor + R"(","wait_ms":60000})"; };
  const std::string start = at(ask("changes.read", R"({"wait_ms":60000})").body, "/result/cursor");
  CHECK_FALSE(start.empty());  // without a cursor there is nothing to wait for

  VisitLine writer(house);
  writer.say(call_text("session.open", R"({"token":")" + house.token + "\"}"));
  SUBCASE("a change") {
    CHECK(ask("changes.read", wait_from(start)).later);
    writer.say(call_text("person.find"));
    visit->look(false);
    CHECK(late.empty());
    const std::string person = at(writer.say(register_text(1)), "/result/person/person");
    REQUIRE(late.size() == 1);
    CHECK(late[0].status == 200);
    CHECK(at(late[0].body, "/result/changes/0/object") == person);
    CHECK_FALSE(ask("changes.read", wait_from(start)).later);  // there is something to say already
    visit->look(true);
    CHECK(late.size() == 1);
  }
  SUBCASE("the time") {
    CHECK(ask("changes.read", wait_from(start)).later);
    house.desk.world.pass(59'999);
    visit->look(false);
    CHECK(late.empty());
    house.desk.world.pass(1);
    visit->look(false);
    REQUIRE(late.size() == 1);
    CHECK(at(late[0].body, "/result/changes") == "[]");
    CHECK(at(late[0].body, "/result/cursor") == start);
  }
  SUBCASE("the lock") {
    CHECK(ask("changes.read", wait_from(start)).later);
    writer.say(call_text("ledger.lock"));
    REQUIRE(late.size() == 1);
    CHECK(fault_of(late[0].body) == "ledger.locked");
  }
  SUBCASE("the end") {
    CHECK(ask("changes.read", wait_from(start)).later);
    visit->look(true);
    REQUIRE(late.size() == 1);
    CHECK(at(late[0].body, "/result/changes") == "[]");
  }
  SUBCASE("over WebSocket other calls are answered meanwhile, and the late answer has its own id") {
    VisitLine line(house);
    line.say(call_text("session.open", R"({"token":")" + house.token + "\"}"));
    CHECK(line.say(R"({"jsonrpc":"2.0","id":"late","method":"changes.read","params":)" + wait_from(start) + "}") == "nothing");
    CHECK(at(line.say(call_text("person.find")), "/result/people") == "[]");
    CHECK(line.told.empty());
    const std::string person = at(writer.say(register_text(1)), "/result/person/person");
    REQUIRE(line.told.size() == 2);
    CHECK(at(line.told[0], "/id") == "late");
    CHECK(at(line.told[0], "/result/changes/0/object") == person);
    CHECK(at(line.told[1], "/method") == "ledger.changed");
  }
  SUBCASE("in a batch nothing waits, and nothing is written twice") {
    const HttpReply both = [&] {
      REQUIRE_FALSE(visit->head(head).has_value());
      return visit->body("[" + call_text("changes.read", wait_from(start)) + "," + register_text(1) + "]");
    }();
    CHECK_FALSE(both.later);
    CHECK(at(both.body, "/0/result/changes") == "[]");
    CHECK_FALSE(at(both.body, "/1/result/person/person").empty());
  }
  SUBCASE("what changed is nothing for this caller") {
    const std::string kiosk = "Bearer " + house.tokens.make({Scope::kiosk, model::ExamId{}}).text;
    head.authorization = kiosk;
    CHECK(ask("changes.read", wait_from(start)).later);
    writer.say(register_text(1));
    CHECK(late.empty());
    house.desk.world.pass(60'000);
    visit->look(false);
    REQUIRE(late.size() == 1);
    CHECK(at(late[0].body, "/result/changes") == "[]");
  }
}

// Contract: the ledger locks when idle. A form that asks by itself is no examiner at work.
TEST_CASE("asking for changes does not keep a ledger open that nobody uses") {
  House house;
  VisitLine line(house);
  line.say(call_text("session.open", R"({"token":")" + house.token + "\"}"));
  house.desk.world.pass(service::Desk::idle_ms - 1);
  CHECK(fault_of(line.say(call_text("changes.read"))).empty());
  house.desk.world.pass(1);
  CHECK(fault_of(line.say(call_text("changes.read"))) == "ledger.locked");
}

TEST_CASE("what goes over the network is byte for byte what the standard input gets") {
  House house;
  service::Context own = house.context;
  own.caller.scope = Scope::examiner;
  const Service stdio{service::methods(), own, {}, {}, {}};
  VisitLine line(house);
  line.say(call_text("session.open", R"({"token":")" + house.token + "\"}"));
  const std::string bearer = "Bearer " + house.token;
  HttpHead head = good_head();
  head.authorization = bearer;
  const auto http = house.visits.begin();
  const std::string deep = std::string(40, '[') + std::string(40, ']');
  for (const std::string& text : {call_text("health.check"), call_text("catalogue.read", R"({"region":"knee"})"), call_text("person.read", R"({"person":"x"})"),
                                  call_text("no.such"), std::string("{\"jsonrpc\":"), std::string("[]"), std::string("[1,2]"), deep, std::string("\xff\xfe"),
                                  "[" + call_text("person.find") + "," + call_text("exam.find") + "]"}) {
    CAPTURE(text);
    const std::string expected = answer(text, stdio).value_or("nothing");
    REQUIRE_FALSE(http->head(head).has_value());
    CHECK(http->body(text).body == expected);
    CHECK(line.say(text) == expected);
  }
}

}  // namespace limbledger::rpc
