// limbledger day, loops, count, conflicts: the clinic's lists, printed as a person reads them from a ledger that nobody serves now.
#include "core/service/call.hpp"
#include "rpc/program/commands.hpp"
#include "rpc/program/opened.hpp"
#include "rpc/program/passphrase.hpp"

#include <iostream>

namespace limbledger::rpc {

namespace {

struct PrintedList {
  std::string_view method;
  std::string_view day_member;  // empty: the list is of no day
};

[[nodiscard]] PrintedList printed_list(ClinicList list) {
  switch (list) {
    case ClinicList::day:
      return {"day.list", "day"};
    case ClinicList::loops:
      return {"loop.list", "as_of"};
    case ClinicList::count:
      return {"district.count", "from"};
    case ClinicList::conflicts:
      return {"conflict.list", {}};
  }
  return {"day.list", "day"};
}

// What district.report takes beside the period: the reports that the count has just named, and an id of its own.
[[nodiscard]] std::string report_params(service::Desk& desk, const Result<wire::Document>& counted) {
  std::string seen;
  for (int i = 0; counted; ++i) {
    const wire::Node* entry = counted->at_pointer("/reported/" + std::to_string(i) + "/report/entry");
    if (entry == nullptr) {
      break;
    }
    seen += (seen.empty() ? "" : ",") + wire::quoted(entry->text);
  }
  model::RequestId request;
  desk.world().random(request.bytes);
  return R"(,"seen":[)" + seen + R"(],"request":)" + wire::quoted(request.to_text());
}

}  // namespace

ExitCode print_list(const Options& options) {
  const PrintedList list = printed_list(options.list);
  const std::string folder = options.folder.empty() ? default_folder() : options.folder;
  OpenedLedger opened(folder, "ask the running program: the method " + std::string(list.method) + ", at the address in sidecar.json");
  bool unlocked = opened.unlock_if_told(options.passphrase_fd);
  if (!opened.why_locked().empty()) {
    std::cerr << "limbledger: " << opened.why_locked() << "\n";
  }
  if (!unlocked && has_terminal()) {
    std::string passphrase = ask_passphrase("Passphrase: ");
    const auto result = opened.desk().unlock({}, passphrase);
    wipe(passphrase);
    if (!result) {
      throw problem_of(result.error(), folder);
    }
  }
  service::Context context;
  context.desk = &opened.desk();
  context.edition = &opened.desk().edition();
  const auto answer = [&](std::string_view method, const std::string& params) {
    const auto sent = wire::parse(params);
    if (!sent) {
      throw problem_of(sent.error(), "DATE");
    }
    auto result = service::call(service::methods(), context, method, *sent, &sent->root());
    if (!result) {
      throw problem_of(result.error(), folder);
    }
    return wire::parse(*result);
  };
  std::string params = R"({"language":"en")";
  if (!options.day.empty() && !list.day_member.empty()) {
    params += "," + wire::quoted(list.day_member) + ":" + wire::quoted(options.day);
  }
  if (options.list == ClinicList::conflicts) {
    params += R"(,"limit":500)";  // a page says where it holds a part alone
  }
  if (options.reported != 0) {
    params += R"(,"report":)" + std::to_string(options.reported);
  }
  if (options.report) {
    params += report_params(opened.desk(), answer(list.method, params + "}"));
  }
  const auto ask = [&] { return answer(options.report ? "district.report" : list.method, params + "}"); };
  auto document = ask();
  // Nobody else waits for this program: it goes on until all records are compared.
  while (document && document->child(document->root(), "looking") != nullptr) {
    document = ask();
  }
  const wire::Node* text = document ? document->child(document->root(), "text") : nullptr;
  if (text == nullptr) {
    throw Problem(ExitCode::internal, "the list holds no page");
  }
  std::cout << text->text;
  return ExitCode::done;
}

}  // namespace limbledger::rpc
