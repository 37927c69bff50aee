#include "core/service/writing.hpp"

#include "core/ledger/log/log.hpp"
#include "core/reference/edition.hpp"

#include <algorithm>

namespace limbledger::service {

namespace {

[[nodiscard]] bool are_before(const ledger::Graph& graph, const std::vector<model::EntryId>& entries, const std::vector<model::EntryId>& shown) {
  const std::vector<bool> known = graph.closure(shown);
  return !entries.empty() && std::all_of(entries.begin(), entries.end(), [&](const model::EntryId& entry) {
    const auto at = graph.find(entry);
    return at && known[*at];
  });
}

// An exam may hold entries before which something has not come yet: what they rest on is not named as seen.
void name_what_was_seen(Context& context, std::vector<ledger::NewOperation>& operations) {
  ledger::NewOperation& first = operations.front();
  if (first.type != ledger::ObjectType::exam || first.after.empty()) {
    return;
  }
  const auto record = context.desk->records().exam(model::ExamId{first.object.bytes});
  const auto& marks = record ? (*record)->fold.exam.marks : std::optional<std::vector<model::EntryMark>>();
  if (marks && std::any_of(marks->begin(), marks->end(), [](const model::EntryMark& one) { return one.mark.text == "waits"; })) {
    const ledger::Graph graph((*record)->operations);
    for (ledger::NewOperation& one : operations) {
      one.after = graph.whole(one.after);
    }
  }
}

// Whether the recorded operations are what this call would write. Only a finding says itself what it replaces; elsewhere
// that follows from what had been seen. What is named as seen may be less than what was shown (Graph::whole).
[[nodiscard]] bool same_call(const ledger::Graph& graph, const std::vector<std::size_t>& recorded, std::span<const ledger::NewOperation> wanted) {
  if (recorded.size() != wanted.size()) {
    return false;
  }
  for (std::size_t i = 0; i < wanted.size(); ++i) {
    const model::Operation& held = graph.at(recorded[i]).operation();
    const bool same = held.op.text == wanted[i].op && held.object == wanted[i].object && held.body.json == wanted[i].body_json &&
                      (held.op.text != "finding" || held.replaces == wanted[i].replaces) && held.examined_at == wanted[i].examined_at &&
                      (i != 0 || held.after == wanted[i].after || are_before(graph, held.after, wanted[i].after));
    if (!same) {
      return false;
    }
  }
  return true;
}

}  // namespace

Result<void> check_seen(const std::vector<model::EntryId>& seen, std::span<const ledger::Opened> operations) {
  if (seen.empty()) {
    return wire::Fault{"params.missing", "/seen", "the revision that was shown"};
  }
  for (std::size_t i = 0; i < seen.size(); ++i) {
    const bool here = std::any_of(operations.begin(), operations.end(), [&](const ledger::Opened& opened) { return opened.entry() == seen[i]; });
    if (!here) {
      return wire::Fault{"revision.unknown", "/seen/" + std::to_string(i), "an entry of this record"};
    }
  }
  return {};
}

Result<Written> write(Context& context, std::vector<ledger::NewOperation> operations, const std::function<Result<void>()>& before_writing) {
  ledger::Log& log = context.desk->log();
  Written written;
  const auto known = log.index().requests.find(operations.front().request);
  if (known != log.index().requests.end()) {
    const auto held = log.operations(known->second);
    if (!held) {
      return held.error();
    }
    const ledger::Graph graph(*held);
    const auto recorded = graph.of_request(operations.front().request);
    if (!same_call(graph, recorded, operations)) {
      return wire::Fault{"request.reused", "/request", "a UUID that was not used before"};
    }
    for (const std::size_t index : recorded) {
      written.entries.push_back(graph.at(index).entry());
    }
    written.revision = {written.entries.back()};
    written.repeat = true;
    return written;
  }
  if (auto allowed = before_writing(); !allowed) {
    return allowed.error();
  }
  for (const ledger::NewOperation& operation : operations) {
    // What nobody could read again would hold the record shut for good.
    if (auto readable = ledger::check_body(operation.op, operation.body_json); !readable) {
      return readable.error();
    }
  }
  name_what_was_seen(context, operations);
  const auto appended = log.append(operations, context.edition != nullptr ? context.desk->edition().id() : model::EditionId{},
                                   context.desk->examiner_key());
  if (!appended) {
    return appended.error();
  }
  context.desk->records().changed(*appended);
  if (log.index_is_old()) {
    static_cast<void>(context.desk->records().save());  // local and made anew when missing
  }
  for (const ledger::Opened& opened : *appended) {
    written.entries.push_back(opened.entry());
  }
  written.revision = {written.entries.back()};
  return written;
}

ledger::NewOperation operation_for(Context& context, const model::ObjectId& object, ledger::ObjectType type, std::string op,
                                   const model::RequestId& request, const std::vector<model::EntryId>& seen) {
  ledger::NewOperation operation;
  operation.object = object;
  operation.type = type;
  operation.op = std::move(op);
  operation.request = request;
  operation.after = seen;
  // What a kiosk sends is the person's own word, entered by no examiner.
  if (context.caller.scope == Scope::examiner && context.desk->examiner_key() != nullptr) {
    operation.by = context.desk->examiner();
  }
  return operation;
}

}  // namespace limbledger::service
