#include "core/model/ids.hpp"
#include "core/service/call.hpp"
#include "core/wire/parse.hpp"
#include "rpc/protocol/envelope.hpp"
#include "tests/fuzz/invented_ledger.hpp"
#include "tests/fuzz/targets.hpp"

#include <memory>
#include <string>

namespace limbledger::fuzz {

namespace {

constexpr std::size_t lines_max = 8;

void call_as(service::Caller& caller, std::string_view who) {
  caller = {};
  if (who == "#viewer") {
    caller.scope = service::Scope::viewer;
  } else if (who == "#sync") {
    caller.scope = service::Scope::sync;
  } else if (who == "#none") {
    caller.scope = service::Scope::none;
  } else if (who == "#kiosk") {
    caller.scope = service::Scope::kiosk;
    const std::string quoted = kept("exam");
    model::ExamId exam;
    if (model::ExamId::from_text(std::string_view(quoted).substr(1, quoted.size() - 2), exam).empty()) {
      caller.exam = exam;
    }
  }
}

// Nothing ran that could have left a trace.
bool left_no_trace(std::string_view text, const std::optional<std::string>& reply) {
  return reply && reply->find("\"result\":") == std::string::npos && text.find("unlock") == std::string_view::npos &&
         text.find("examiner.add") == std::string_view::npos && reply->find("internal.") == std::string::npos;
}

}  // namespace

void request(std::string_view bytes) {
  static auto& at = *new std::unique_ptr<Desktop>;  // never taken down: what it closes with would be gone before it
  bool untouched = true;
  if (!at) {
    at = new_desktop();
  }
  at->context.caller = {};
  for (std::size_t count = 0; count < lines_max && !bytes.empty(); ++count) {
    const std::size_t end = bytes.find('\n');
    const std::string_view line = bytes.substr(0, end);
    bytes = end == std::string_view::npos ? std::string_view() : bytes.substr(end + 1);
    if (line.starts_with('#')) {
      call_as(at->context.caller, line);
      continue;
    }
    const std::string text = filled(line);
    rpc::Service service{service::methods(), at->context, {}, {}, {}};
    service.discover = [] { return std::string("{}"); };
    bool broke = false;
    service.failed = [&broke](std::string_view, std::string_view code) {
      broke = broke || code == "internal.failure";
      return std::string("0123456789abcdef");
    };
    const auto reply = rpc::answer(text, service);
    must(!broke, "no bytes make a method fail inside");
    if (reply) {
      must(reply->find_first_of("\r\n") == std::string::npos, "a reply is one line");
      must(wire::parse(*reply, 64).has_value(), "a reply is JSON");
    }
    untouched = untouched && left_no_trace(text, reply);
  }
  if (!untouched) {
    at.reset();
  }
}

}  // namespace limbledger::fuzz
