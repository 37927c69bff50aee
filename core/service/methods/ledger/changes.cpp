#include "core/service/methods/ledger/changes.hpp"

#include "core/ledger/fold/records.hpp"
#include "core/ledger/log/log.hpp"
#include "core/service/desk.hpp"
#include "core/service/methods/exam/told.hpp"

#include <algorithm>
#include <map>

namespace limbledger::service {

namespace {

constexpr std::size_t rows_a_call_max = 4096;

using Seen = std::map<model::ReplicaId, std::uint64_t>;

// How far each replica's chain reaches here. Of a chain with two ends the nearer: told twice is better than not at all.
[[nodiscard]] Seen reached(const ledger::Index& index) {
  Seen seen;
  for (const auto& [replica, leaves] : index.leaves) {
    for (const ledger::Joint& leaf : leaves) {
      const auto [found, fresh] = seen.emplace(replica, leaf.seq);
      if (!fresh) {
        found->second = std::min(found->second, leaf.seq);
      }
    }
  }
  return seen;
}

[[nodiscard]] wire::Remark to_cursor(const Seen& seen) {
  wire::Remark cursor;
  for (const auto& [replica, seq] : seen) {
    cursor.text += (cursor.text.empty() ? "" : ".") + replica.to_text() + std::to_string(seq);
  }
  return cursor;
}

[[nodiscard]] std::optional<Seen> from_cursor(std::string_view text) {
  constexpr std::size_t id_size = model::ReplicaId::wire_rule.length_max;
  Seen seen;
  while (!text.empty()) {
    const std::string_view part = text.substr(0, text.find('.'));
    text.remove_prefix(std::min(text.size(), part.size() + 1));
    model::ReplicaId replica;
    if (part.size() <= id_size || part.size() > id_size + 18 || !model::ReplicaId::from_text(part.substr(0, id_size), replica).empty()) {
      return std::nullopt;
    }
    std::uint64_t seq = 0;
    for (const char c : part.substr(id_size)) {
      if (c < '0' || c > '9') {
        return std::nullopt;
      }
      seq = seq * 10 + static_cast<std::uint64_t>(c - '0');
    }
    seen[replica] = seq;
  }
  return seen;
}

[[nodiscard]] std::optional<Change> change_of(const ledger::Index& index, const ledger::Row& row) {
  const auto header = ledger::Header::from_bytes(row.header);
  if (!header || header->kind != ledger::Kind::op) {
    return std::nullopt;
  }
  const auto object = index.object_of.find(header->kid);
  const auto known = object == index.object_of.end() ? index.objects.end() : index.objects.find(object->second);
  if (known == index.objects.end()) {
    return std::nullopt;
  }
  switch (known->second.type) {
    case ledger::ObjectType::exam:
      return Change{ChangedKind::exam, known->first};
    case ledger::ObjectType::person:
      return Change{ChangedKind::person, known->first};
    default:
      return Change{ChangedKind::clinic, known->first};
  }
}

[[nodiscard]] bool may_know(const Caller& caller, const Change& change) {
  return caller.scope != Scope::kiosk || (caller.exam && model::as_object(*caller.exam) == change.object);
}

// Each exam that changed with what of it, among these entries, called the staff.
void add_staff_called(Context& context, const std::vector<model::EntryId>& entries, std::vector<Change>& changes) {
  for (Change& change : changes) {
    const auto record = change.kind == ChangedKind::exam ? context.desk->records().exam(model::ExamId{change.object.bytes})
                                                          : Result<const ledger::ExamRecord*>(wire::Fault{"exam.unknown", ""});
    if (!record) {
      continue;  // what cannot be read is told of as changed
    }
    for (const model::Finding& finding : (*record)->fold.history) {
      const bool came = finding.entry && std::find(entries.begin(), entries.end(), *finding.entry) != entries.end();
      if (came && called_staff(*context.edition, finding)) {
        if (!change.staff_called) {
          change.staff_called.emplace();
        }
        change.staff_called->push_back(finding.item);
      }
    }
  }
}

}  // namespace

wire::Remark change_cursor(Desk& desk) { return to_cursor(reached(desk.log().index())); }

std::uint64_t change_mark(Desk& desk) { return desk.locked() ? 0 : desk.log().index().entry_count; }

Result<ChangesReadResult> changes_read(Context& context, const ChangesReadParams& params) {
  Desk& desk = *context.desk;
  const ledger::Index& index = desk.log().index();
  ChangesReadResult result;
  const Seen now = reached(index);
  if (!params.cursor) {
    result.cursor = to_cursor(now);
    return result;
  }
  auto seen = from_cursor(params.cursor->text);
  if (!seen) {
    return wire::Fault{"params.wrong_type", "/cursor", "the cursor of changes.read, session.open or ledger.changed"};
  }
  std::size_t left = rows_a_call_max;
  std::vector<model::EntryId> entries;
  for (const auto& [replica, seq] : now) {
    std::uint64_t& from = (*seen)[replica];
    if (from >= seq) {
      continue;
    }
    if (left == 0) {
      result.more = true;
      break;
    }
    const auto rows = desk.store().read(replica, from + 1, seq, left);
    if (!rows) {
      return rows.error();
    }
    for (const ledger::Row& row : *rows) {
      from = std::max(from, row.seq);
      entries.push_back(ledger::entry_id(row.hash));
      const auto change = change_of(index, row);
      const bool told = change && std::any_of(result.changes.begin(), result.changes.end(), [&](const Change& c) { return c.object == change->object; });
      if (change && !told && may_know(context.caller, *change)) {
        result.changes.push_back(*change);
      }
    }
    left -= std::min(left, rows->size());
    if (rows->empty()) {
      from = seq;  // nothing is there any more
    } else if (from < seq) {
      result.more = true;
    }
  }
  result.cursor = to_cursor(*seen);
  if (context.caller.scope != Scope::kiosk && context.edition != nullptr) {
    add_staff_called(context, entries, result.changes);
  }
  if (params.wait_ms && params.wait_ms->steps > 0 && result.changes.empty() && !result.more) {
    context.wait_ms = params.wait_ms->steps;
  }
  return result;
}

}  // namespace limbledger::service
