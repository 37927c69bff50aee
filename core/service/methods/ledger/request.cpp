#include "core/service/methods/ledger/request.hpp"

#include "core/ledger/fold/fold.hpp"
#include "core/ledger/log/log.hpp"
#include "core/service/desk.hpp"

namespace limbledger::service {

Result<RequestReadResult> request_read(Context& context, const RequestReadParams& params) {
  ledger::Log& log = context.desk->log();
  RequestReadResult result;
  result.state = RequestState::unknown;
  const auto known = log.index().requests.find(params.request);
  if (known == log.index().requests.end()) {
    return result;
  }
  const bool own = context.caller.exam && model::as_object(*context.caller.exam) == known->second;
  if (context.caller.scope == Scope::kiosk && !own) {
    return result;
  }
  const auto operations = log.operations(known->second);
  if (!operations) {
    return operations.error();
  }
  const ledger::Graph graph(*operations);
  std::vector<model::EntryId> entries;
  for (const std::size_t node : graph.of_request(params.request)) {
    entries.push_back(graph.at(node).entry());
  }
  if (entries.empty()) {
    return result;
  }
  result.state = RequestState::recorded;
  result.object = known->second;
  result.revision = {entries.back()};
  result.entries = std::move(entries);
  return result;
}

}  // namespace limbledger::service
