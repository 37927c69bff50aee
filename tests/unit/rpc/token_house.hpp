// A ledger behind the network side without a network: tokens, visits and the desk that asks which kiosks live. Each call is a
// request over HTTP of its own.
#pragma once

#include "core/service/methods/ledger/token.hpp"
#include "rpc/access/visit.hpp"
#include "tests/unit/service/desk_fixture.hpp"

namespace limbledger::rpc::test {

using service::test::at;

inline std::string refused_for(std::string_view reply) { return at(reply, "/error/data/faults/0/code"); }

struct TokenHouse {
  explicit TokenHouse(const TokenLimits& limits = {}) : tokens(desk.world, limits) {
    context.desk = desk.desk.get();
    context.edition = &desk.desk->edition();
    context.caller.scope = service::Scope::none;
    context.tokens = &tokens;
    tell();
  }
  ~TokenHouse() { desk.desk->kiosks_by({}); }
  TokenHouse(const TokenHouse&) = delete;
  TokenHouse& operator=(const TokenHouse&) = delete;

  service::test::DeskFixture desk;
  service::Context context;
  Service service{service::methods(), context, {}, {}, {}};
  Tokens tokens;
  Visits visits{service, tokens, 40211};
  std::string examiner = tokens.make({service::Scope::examiner, std::nullopt}).text;
  unsigned status = 0;  // of the last reply

  void tell() {
    desk.desk->kiosks_by([this] { return tokens.kiosks(); });
  }
  void locks() { CHECK(at(asks(examiner, "ledger.lock"), "/result/locked") == "true"); }

  std::string asks(const std::string& token, std::string_view method, std::string_view params = "{}") {
    const std::string bearer = "Bearer " + token;
    HttpHead head;
    head.method = "POST";
    head.target = "/rpc";
    head.host = "127.0.0.1:40211";
    head.content_type = "application/json";
    if (!token.empty()) {
      head.authorization = bearer;
    }
    const auto visit = visits.begin();
    auto reply = visit->head(head);
    if (!reply) {
      reply = visit->body(R"({"jsonrpc":"2.0","id":1,"method":")" + std::string(method) + R"(","params":)" + std::string(params) + "}");
    }
    status = reply->status;
    return reply->body;
  }
  std::string open_exam(unsigned number) {
    return at(asks(examiner, "exam.open", R"({"complaint":"acute_knee","side":"left","setting":"outreach","request":")" + service::test::request_id(number + 9000) + "\"}"),
              "/result/exam/exam");
  }
};

}  // namespace limbledger::rpc::test
