// token.make, token.list, token.end over HTTP; which scope may call which method; the rate of one token. Source of the table of
// scopes: contract, section 9 (E examiner, K kiosk, V viewer, S sync, A any token), with the changes that DEVELOPERS.md names
// under "Decisions and why".
#include "tests/unit/rpc/token_house.hpp"

#include "rpc/protocol/envelope.hpp"

#include <map>

namespace limbledger::rpc {

namespace {

using namespace test;
using service::Scope;

// Of the page, method by method. To K no unlocking, locking or assessing (DEVELOPERS.md).
const std::map<std::string, std::string>& scopes_of_the_page() {
  static const std::map<std::string, std::string> table{
      {"health.check", "-"},         {"session.open", "-"},        {"session.end", "EKVS"},      {"ledger.unlock", "EVS"},       {"ledger.lock", "E"},
      {"token.make", "E"},           {"token.list", "E"},          {"token.end", "E"},           {"catalogue.read", "EKVS"},     {"form.describe", "EKV"},
      {"form.write", "EV"},          {"person.register", "E"},     {"person.amend", "E"},        {"person.find", "EV"},          {"person.read", "EV"},
      {"exam.open", "EK"},           {"exam.read", "EKV"},         {"exam.find", "EV"},          {"consent.record", "E"},        {"impression.record", "E"},
      {"plan.record", "E"},          {"alert.handle", "E"},        {"statement.disagree", "E"},  {"exam.sign", "E"},             {"exam.transfer", "E"},
      {"place.read", "EV"},          {"place.amend", "E"},         {"exam.withdraw", "E"},       {"exam.move", "E"},             {"exam.swap_sides", "E"},
      {"addendum.record", "E"},      {"finding.check", "EK"},      {"finding.record", "EK"},     {"finding.withdraw", "EK"},     {"finding.history", "EV"},
      {"exam.assess", "EV"},         {"document.assess", "EVS"},   {"statement.explain", "EV"},  {"step.suggest", "E"},          {"note.write", "EV"},
      {"letter.write", "E"},         {"take_home.write", "E"},     {"ledger.verify", "EV"},      {"changes.read", "EKV"},        {"request.read", "EK"},
      {"exam.countersign", "E"},     {"pair.list", "EV"},          {"pair.decide", "E"},         {"day.list", "EV"},             {"loop.list", "EV"},
      {"conflict.list", "EV"},       {"conflict.settle", "E"},     {"conflict.put_off", "E"},     {"district.count", "EV"},        {"district.report", "E"},     {"replica.list", "EVS"},      {"exchange.begin", "ES"},       {"exchange.read", "ES"},
      {"exchange.end", "ES"},        {"parcel.write", "ES"},       {"parcel.take", "ES"},        {"replica.enrol", "E"},         {"replica.let_in", "E"}};
  return table;
}

std::string token_number_of(const std::string& made) { return at(made, "/result/number"); }

}  // namespace

TEST_CASE("each scope may call what the page allows it, and everything else is refused by its code before anything is looked at") {
  TokenHouse house;
  const std::map<char, std::string> tokens{{'E', house.examiner},
                                           {'K', house.tokens.make({Scope::kiosk, std::nullopt}).text},
                                           {'V', house.tokens.make({Scope::viewer, std::nullopt}).text},
                                           {'S', house.tokens.make({Scope::sync, std::nullopt}).text}};
  int refused = 0;
  for (const auto& row : scopes_of_the_page()) {
    const std::string& method = row.first;
    const std::string& scopes = row.second;
    CAPTURE(method);
    const auto known = std::find_if(service::methods().begin(), service::methods().end(), [&](const service::Method& one) { return one.name == method; });
    REQUIRE(known != service::methods().end());
    CHECK((refused_for(house.asks("", method, R"({"no":1})")) == "token.missing") == (scopes != "-"));
    for (const auto& one : tokens) {
      CAPTURE(one.first);
      // An unknown member: what is allowed is refused for that, and runs nothing.
      const std::string code = refused_for(house.asks(one.second, method, R"({"no":1})"));
      const bool allowed = scopes == "-" || scopes.find(one.first) != std::string::npos;
      CHECK((code == "token.scope") == !allowed);
      refused += code == "token.scope" ? 1 : 0;
    }
  }
  CHECK(refused > 80);
  // What the page does not name is for examiners, or reading for a viewer too; a kiosk and a copying program get none of it.
  for (const service::Method& method : service::methods()) {
    if (!scopes_of_the_page().contains(std::string(method.name))) {
      CAPTURE(method.name);
      CHECK(refused_for(house.asks(tokens.at('K'), method.name)) == "token.scope");
      CHECK(refused_for(house.asks(tokens.at('S'), method.name)) == "token.scope");
    }
  }
}

TEST_CASE("an examiner makes tokens with scope and end, sees them listed without their texts, and ends them") {
  TokenHouse house;
  const std::string viewer = house.asks(house.examiner, "token.make", R"({"scope":"viewer","minutes":30,"label":"screen in the corridor"})");
  const std::string token = at(viewer, "/result/token");
  CHECK(token.size() == 43);
  CHECK(at(viewer, "/result/once").empty());
  CHECK(at(viewer, "/result/expires_at") == "2026-11-24T10:45:00.000Z");
  CHECK(at(house.asks(token, "person.find"), "/result/people") == "[]");
  const std::string listed = house.asks(house.examiner, "token.list");
  CHECK(at(listed, "/result/tokens/0/scope") == "examiner");
  CHECK(at(listed, "/result/tokens/1/scope") == "viewer");
  CHECK(at(listed, "/result/tokens/1/state") == "good");
  CHECK(at(listed, "/result/tokens/1/label") == "screen in the corridor");
  CHECK(at(listed, "/result/tokens/1/number") == token_number_of(viewer));
  CHECK(listed.find(token) == std::string::npos);
  CHECK(listed.find(house.examiner) == std::string::npos);
  // Also while the ledger is locked: a tablet that was left somewhere is shut out at once.
  house.locks();
  CHECK(refused_for(house.asks(house.examiner, "token.make", R"({"scope":"kiosk"})")) == "ledger.locked");
  CHECK(at(house.asks(house.examiner, "token.end", R"({"number":)" + token_number_of(viewer) + "}"), "/result/ended") == "true");
  CHECK(refused_for(house.asks(token, "person.find")) == "token.expired");
  CHECK(house.status == 401);
  CHECK(at(house.asks(house.examiner, "token.list"), "/result/tokens/1/state") == "ended");
  const std::string again = house.asks(house.examiner, "token.end", R"({"number":)" + token_number_of(viewer) + "}");
  CHECK(refused_for(again) == "token.unknown");
  CHECK(at(again, "/error/data/faults/0/path") == "/number");
  CHECK(refused_for(house.asks(house.examiner, "token.end", R"({"number":99})")) == "token.unknown");
}

TEST_CASE("a token for a link is a code that is traded once and keeps its number and its end") {
  TokenHouse house;
  const std::string exam = house.open_exam(1);
  const std::string made = house.asks(house.examiner, "token.make", R"({"scope":"kiosk","exam":")" + exam + R"(","minutes":5,"once":true})");
  CHECK(at(made, "/result/token").empty());
  CHECK(at(house.asks(house.examiner, "token.list"), "/result/tokens/1/state") == "waiting");
  const std::string opened = house.asks("", "session.open", R"({"once":")" + at(made, "/result/once") + "\"}");
  CHECK(at(opened, "/result/scope") == "kiosk");
  CHECK(at(opened, "/result/expires_at") == "2026-11-24T10:20:00.000Z");
  CHECK(refused_for(house.asks("", "session.open", R"({"once":")" + at(made, "/result/once") + "\"}")) == "token.used");
  const std::string token = at(opened, "/result/token");
  CHECK(at(house.asks(token, "exam.read", R"({"exam":")" + exam + "\"}"), "/result/exam/exam") == exam);
  CHECK(at(house.asks(house.examiner, "token.list"), "/result/tokens/1/number") == token_number_of(made));
  CHECK(at(house.asks(house.examiner, "token.list"), "/result/tokens/1/exam") == exam);
  house.desk.world.pass(5 * 60'000);
  CHECK(refused_for(house.asks(token, "exam.read", R"({"exam":")" + exam + "\"}")) == "token.expired");
  // A code that nobody has used is ended like a token.
  const std::string unused = house.asks(house.examiner, "token.make", R"({"scope":"viewer","once":true})");
  CHECK(at(house.asks(house.examiner, "token.end", R"({"number":)" + token_number_of(unused) + "}"), "/result/ended") == "true");
  CHECK(refused_for(house.asks("", "session.open", R"({"once":")" + at(unused, "/result/once") + "\"}")) == "token.expired");
}

TEST_CASE("what no token can be made for is refused by its code") {
  TokenHouse house;
  const std::string exam = house.open_exam(1);
  const auto refused = [&](const std::string& params) { return refused_for(house.asks(house.examiner, "token.make", params)); };
  CHECK(refused(R"({"scope":"viewer","exam":")" + exam + "\"}") == "token.exam");
  CHECK(refused(R"({"scope":"kiosk","exam":"aaaaaaaaaaaaaaaaaaaaaaaaaa"})") == "exam.unknown");
  CHECK(refused(R"({"scope":"kiosk","minutes":1441})") == "value.out_of_range");
  CHECK(refused(R"({"scope":"nobody"})") == "params.unknown_word");
  const std::string seen = at(house.asks(house.examiner, "exam.read", R"({"exam":")" + exam + "\"}"), "/result/revision");
  house.asks(house.examiner, "exam.withdraw", R"({"exam":")" + exam + R"(","reason":"opened twice","seen":)" + seen + R"(,"request":")" + service::test::request_id(5) + "\"}");
  const std::string withdrawn = house.asks(house.examiner, "token.make", R"({"scope":"kiosk","exam":")" + exam + "\"}");
  CHECK(refused_for(withdrawn) == "exam.withdrawn");
  CHECK(at(withdrawn, "/error/data/faults/0/path") == "/exam");
  // On the standard input alone there are no tokens.
  house.context.tokens = nullptr;
  CHECK(refused(R"({"scope":"viewer"})") == "token.not_served");
  CHECK(refused_for(house.asks(house.examiner, "token.list")) == "token.not_served");
  CHECK(refused_for(house.asks(house.examiner, "token.end", R"({"number":1})")) == "token.not_served");
}

TEST_CASE("so many tokens at one time, with the limit named; an ended one makes room") {
  TokenHouse house({3, 1000, 2000});
  const std::string first = house.asks(house.examiner, "token.make", R"({"scope":"viewer"})");
  house.asks(house.examiner, "token.make", R"({"scope":"viewer"})");
  const std::string refused = house.asks(house.examiner, "token.make", R"({"scope":"viewer"})");
  CHECK(refused_for(refused) == "limit.tokens");
  CHECK(at(refused, "/error/code") == "7");
  CHECK(at(refused, "/error/data/faults/0/params/tokens") == "3");
  house.asks(house.examiner, "token.end", R"({"number":)" + token_number_of(first) + "}");
  CHECK(refused_for(house.asks(house.examiner, "token.make", R"({"scope":"viewer"})")).empty());
}

TEST_CASE("the rate is of a token, whatever connections it comes over, and another token has its own") {
  TokenHouse house({64, 2, 3});
  const std::string viewer = house.tokens.make({Scope::viewer, std::nullopt}).text;
  for (int i = 0; i < 3; ++i) {
    CHECK(refused_for(house.asks(viewer, "person.find")).empty());
  }
  const std::string refused = house.asks(viewer, "person.find");
  CHECK(house.status == 429);
  CHECK(refused_for(refused) == "limit.rate");
  CHECK(at(refused, "/id") == "1");
  CHECK(at(refused, "/error/data/retry") == "true");
  CHECK(at(refused, "/error/data/faults/0/params/messages_a_second") == "2");
  CHECK(at(refused, "/error/data/faults/0/params/messages_at_once") == "3");
  CHECK(at(refused, "/error/data/faults/0/params/wait_ms") == "1000");
  const auto line = house.visits.begin();  // a WebSocket with the same token
  line->socket_opened([](std::string) {});
  CHECK(at(line->message(R"({"jsonrpc":"2.0","id":2,"method":"session.open","params":{"token":")" + viewer + "\"}}").text.value_or("{}"), "/result/scope") == "viewer");
  CHECK(refused_for(line->message(R"({"jsonrpc":"2.0","id":3,"method":"person.find"})").text.value_or("{}")) == "limit.rate");
  CHECK(refused_for(house.asks(house.examiner, "person.find")).empty());
  house.desk.world.pass(500);
  CHECK(refused_for(house.asks(viewer, "person.find")).empty());
  CHECK(refused_for(house.asks(viewer, "person.find")) == "limit.rate");
}

TEST_CASE("a WebSocket whose token was ended is told nothing more of what changes") {
  TokenHouse house;
  const std::string made = house.asks(house.examiner, "token.make", R"({"scope":"viewer"})");
  std::vector<std::string> told;
  const auto line = house.visits.begin();
  line->socket_opened([&](std::string text) { told.push_back(std::move(text)); });
  static_cast<void>(line->message(R"({"jsonrpc":"2.0","id":1,"method":"session.open","params":{"token":")" + at(made, "/result/token") + "\"}}"));
  house.open_exam(1);
  house.visits.tell_changes();
  CHECK(told.size() == 1);
  house.asks(house.examiner, "token.end", R"({"number":)" + token_number_of(made) + "}");
  house.open_exam(2);
  house.visits.tell_changes();
  CHECK(told.size() == 1);
}

TEST_CASE("health.check publishes what every connection is held to, and refusals name it") {
  TokenHouse house;
  const service::NetworkLimits network = published({}, {});
  house.context.network = &network;
  const std::string told_health = house.asks("", "health.check");
  for (const auto& one : std::map<std::string, std::string>{{"head_bytes", "8192"},      {"connections", "64"},    {"messages_a_second", "1000"},
                                                                         {"messages_at_once", "2000"}, {"waiting_calls", "8"},   {"tokens", "64"},
                                                                         {"head_ms", "10000"},         {"request_ms", "30000"},  {"idle_ms", "60000"},
                                                                         {"session_ms", "5000"},       {"socket_idle_ms", "120000"}}) {
    CAPTURE(one.first);
    CHECK(at(told_health, "/result/network/" + one.first) == one.second);
  }
  const auto named = [&](Trouble trouble, const std::string& param) {
    return at(house.visits.begin()->http_trouble(trouble, "{}").body, "/error/data/faults/0/params/" + param);
  };
  CHECK(named(Trouble::large_head, "head_bytes") == "8192");
  CHECK(named(Trouble::slow, "head_ms") == "10000");
  CHECK(named(Trouble::slow, "request_ms") == "30000");
  CHECK(named(Trouble::crowded, "connections") == "64");
  CHECK(named(Trouble::large_message, "bytes") == "1048576");
  CHECK(at(house.visits.begin()->socket_trouble(Trouble::silent, "").text.value_or("{}"), "/error/data/faults/0/params/session_ms") == "5000");
}

}  // namespace limbledger::rpc
