// Who may call over the network: tokens and one-time codes, Host and Origin, Content-Type. Rules: contract, section 11;
// RFC 6454 for origins, RFC 8259 for the media type, RFC 4648 section 5 for base64url.
#include "rpc/access/origin.hpp"
#include "rpc/access/token.hpp"
#include "tests/unit/service/desk_fixture.hpp"

namespace limbledger::rpc {

namespace {

using service::Caller;
using service::Scope;

template <class T>
std::string code_of(const Result<T>& result) {
  return result ? "good" : result.error().faults.front().code;
}

}  // namespace

TEST_CASE("a token is 32 bytes as base64url, and each one is another") {
  service::test::FixedWorld world;
  Tokens tokens(world);
  const MadeToken first = tokens.make({Scope::viewer, std::nullopt});
  const MadeToken second = tokens.make({Scope::viewer, std::nullopt});
  CHECK(first.text.size() == 43);
  CHECK(first.text.find_first_not_of("ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_") == std::string::npos);
  CHECK(first.text != second.text);
}

TEST_CASE("a token allows what it was made for, and nothing near it is one") {
  service::test::FixedWorld world;
  Tokens tokens(world);
  const model::ExamId exam{model::Bytes16{7}};
  const MadeToken kiosk = tokens.make({Scope::kiosk, exam});
  const MadeToken viewer = tokens.make({Scope::viewer, std::nullopt});
  const auto found = tokens.find(kiosk.text);
  REQUIRE(found.has_value());
  CHECK(found->caller.scope == Scope::kiosk);
  CHECK(found->caller.exam == exam);
  CHECK(tokens.find(viewer.text)->caller.scope == Scope::viewer);
  for (const std::string& wrong : {std::string(), kiosk.text.substr(1), kiosk.text + "A", kiosk.text.substr(0, 42) + "!", kiosk.text + "="}) {
    CHECK(code_of(tokens.find(wrong)) == "token.unknown");
  }
}

TEST_CASE("HC-117: a token of another launch is unknown") {
  service::test::FixedWorld world;
  Tokens before(world);
  const MadeToken old = before.make({Scope::examiner, std::nullopt});
  Tokens after(world);
  CHECK(code_of(after.find(old.text)) == "token.unknown");
}

TEST_CASE("a token expires by the machine's running time, and setting the clock does not move that") {
  service::test::FixedWorld world;
  Tokens tokens(world);
  const MadeToken made = tokens.make({Scope::examiner, std::nullopt});
  CHECK(made.expires_at.ms == world.reading.wall_ms + token_ms);
  world.reading.wall_ms += 10 * token_ms;
  CHECK(code_of(tokens.find(made.text)) == "good");
  world.pass(token_ms - 1);
  CHECK(code_of(tokens.find(made.text)) == "good");
  world.pass(1);
  CHECK(code_of(tokens.find(made.text)) == "token.expired");
}

TEST_CASE("a one-time code is traded once, within two minutes, and is no token itself") {
  service::test::FixedWorld world;
  Tokens tokens(world);
  const MadeToken code = tokens.make_once({Scope::viewer, std::nullopt});
  CHECK(code_of(tokens.find(code.text)) == "token.unknown");
  const auto traded = tokens.trade(code.text);
  REQUIRE(traded.has_value());
  CHECK(traded->grant.caller.scope == Scope::viewer);
  CHECK(tokens.find(traded->text)->caller.scope == Scope::viewer);
  // Used, and told apart from one that this launch never made.
  CHECK(code_of(tokens.trade(code.text)) == "token.used");
  CHECK(code_of(tokens.find(code.text)) == "token.unknown");
  CHECK(code_of(tokens.trade(traded->text)) == "token.unknown");
  CHECK(code_of(Tokens(world).trade(code.text)) == "token.unknown");
  CHECK(code_of(tokens.trade("")) == "token.unknown");
  const MadeToken late = tokens.make_once({Scope::viewer, std::nullopt});
  world.pass(2 * 60 * 1000);
  CHECK(code_of(tokens.trade(late.text)) == "token.expired");
}

TEST_CASE("a token that was ended is an expired one, and who publishes tokens is told; a traded one alone is ended where others may talk with it") {
  service::test::FixedWorld world;
  Tokens tokens(world);
  const MadeToken launch = tokens.make({Scope::examiner, std::nullopt});
  const auto traded = tokens.trade(tokens.make_once({Scope::examiner, std::nullopt}).text);
  REQUIRE(traded.has_value());
  std::vector<std::uint64_t> ended;
  tokens.tells_end([&](std::uint64_t number) { ended.push_back(number); });
  tokens.end_traded(launch.number);
  tokens.end_traded(traded->grant.number);
  CHECK(code_of(tokens.find(launch.text)) == "good");
  CHECK(code_of(tokens.find(traded->text)) == "token.expired");
  CHECK(code_of(tokens.find(traded->grant.number)) == "token.expired");
  tokens.end(launch.number);
  CHECK(code_of(tokens.find(launch.text)) == "token.expired");
  CHECK(ended == std::vector{traded->grant.number, launch.number});
}

TEST_CASE("a host is this machine's own name with our port, and nothing else") {
  const OwnAddresses own(40211);
  for (const char* good : {"127.0.0.1:40211", "localhost:40211", "LocalHost:40211", "[::1]:40211"}) {
    CAPTURE(good);
    CHECK(own.is_host(good));
  }
  for (const char* bad : {"", "127.0.0.1", "localhost", "127.0.0.1:40212", "localhost:80", "evil.example", "evil.example:40211", "localhost.evil.example:40211",
                          "127.0.0.1:40211.evil.example", "127.0.0.2:40211", "0.0.0.0:40211", "::1:40211", "user@127.0.0.1:40211", "127.0.0.1:040211"}) {
    CAPTURE(bad);
    CHECK_FALSE(own.is_host(bad));
  }
  CHECK(OwnAddresses(80).is_host("localhost"));
}

TEST_CASE("an origin is compared whole: scheme, host and port") {
  const OwnAddresses own(40211);
  for (const char* good : {"http://127.0.0.1:40211", "http://localhost:40211", "http://[::1]:40211"}) {
    CAPTURE(good);
    CHECK(own.is_origin(good));
  }
  for (const char* bad : {"", "null", "*", "https://127.0.0.1:40211", "http://127.0.0.1", "http://localhost:3000", "http://evil.example", "http://localhost:40211/",
                          "http://localhost:40211.evil.example", "http://evil.example/http://localhost:40211", "file://", "127.0.0.1:40211"}) {
    CAPTURE(bad);
    CHECK_FALSE(own.is_origin(bad));
  }
}

TEST_CASE("the content type is JSON in UTF-8, however it is written") {
  for (const char* good : {"application/json", "Application/JSON", "application/json; charset=utf-8", "application/json;charset=\"UTF-8\"", "application/json; v=1"}) {
    CAPTURE(good);
    CHECK(is_json(good));
  }
  // The first three are what a page may send elsewhere without asking first (Fetch standard).
  for (const char* bad : {"text/plain", "application/x-www-form-urlencoded", "multipart/form-data; boundary=x", "", "application/json-seq", "application/jsonp",
                          "text/plain; application/json", "application/json; charset=iso-8859-1"}) {
    CAPTURE(bad);
    CHECK_FALSE(is_json(bad));
  }
}

}  // namespace limbledger::rpc
