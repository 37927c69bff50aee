// changes.read: which records changed since a cursor, oldest change first, each once. A cursor names how far each replica's
// chain was seen; it holds across restarts and is to be sent back as it came. The same result goes to WebSocket sessions
// as the notification ledger.changed. A kiosk is told of nothing but its own exam. Asking is no use of the ledger: a form
// that asks again and again does not keep it open.
#pragma once

#include "core/model/exam/finding.hpp"
#include "core/service/context.hpp"
#include "core/wire/fault.hpp"
#include "core/wire/type.hpp"

#include <array>
#include <optional>
#include <vector>

namespace limbledger::service {

class Desk;

struct ChangesReadParams {
  std::optional<wire::Remark> cursor;
  std::optional<wire::Count<0, 60000>> wait_ms;
};
BOOST_DESCRIBE_STRUCT(ChangesReadParams, (), (cursor, wait_ms))
constexpr auto notes(const ChangesReadParams*) {
  return std::array{wire::Note{"cursor", "as it came; left out: no changes, only where the ledger stands now"},
                    wire::Note{"wait_ms", "with a cursor: the longest wait for something to tell, over HTTP and WebSocket; in a batch and over the standard input the answer comes at once"}};
}
enum class ChangedKind { exam, person, clinic };
BOOST_DESCRIBE_ENUM(ChangedKind, exam, person, clinic)
struct Change {
  ChangedKind kind{};  // clinic: places and what else belongs to no record
  model::ObjectId object;
  std::optional<std::vector<model::ItemId>> staff_called = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(Change, (), (kind, object, staff_called))
constexpr auto notes(const Change*) {
  return std::array{wire::Note{"staff_called", "of an exam: what was answered at a kiosk since the cursor so that its person was asked to call the staff; never told to a kiosk"}};
}
// What the notification staff.called says; also while the ledger is locked, so that it names the exam and nothing of it.
struct StaffCalled {
  model::ExamId exam;
};
BOOST_DESCRIBE_STRUCT(StaffCalled, (), (exam))
struct ChangesReadResult {
  std::vector<Change> changes;
  wire::Remark cursor;
  std::optional<bool> more;  // ask again with this cursor
};
BOOST_DESCRIBE_STRUCT(ChangesReadResult, (), (changes, cursor, more))
// Scope E K V. Faults: params.wrong_type for a cursor that is none.
[[nodiscard]] Result<ChangesReadResult> changes_read(Context& context, const ChangesReadParams& params);

// Where the ledger stands now. The desk must be unlocked.
[[nodiscard]] wire::Remark change_cursor(Desk& desk);
// Differs whenever something was added; 0 while locked.
[[nodiscard]] std::uint64_t change_mark(Desk& desk);

}  // namespace limbledger::service
