// examiner.add: one more examiner of this device, by the printed code: for a device whose examiners have all lost their
// passphrase, and for a colleague. Who added nobody could otherwise be anybody, so each has an own id, key and passphrase;
// the slots that are there stay, and with them the names of who signed. A passphrase goes in and comes out nowhere.
#pragma once

#include "core/service/context.hpp"
#include "core/wire/fault.hpp"
#include "core/wire/type.hpp"

#include <array>
#include <optional>

namespace limbledger::service {

struct ExaminerAddParams {
  wire::Name code;
  wire::Name examiner;
  wire::Name passphrase;
};
BOOST_DESCRIBE_STRUCT(ExaminerAddParams, (), (code, examiner, passphrase))
constexpr auto notes(const ExaminerAddParams*) {
  return std::array{wire::Note{"code", "the recovery code as printed when the ledger was made"},
                    wire::Note{"examiner", "the name to unlock with on this device, 24 bytes at most; not one that is there"},
                    wire::Note{"passphrase", "12 characters at least, known to this examiner alone"}};
}
struct ExaminerAddResult {
  model::ExaminerId examiner;  // new, also where a person of that name had one before
  std::optional<bool> repeat;  // was there already, under this name and passphrase
};
BOOST_DESCRIBE_STRUCT(ExaminerAddResult, (), (examiner, repeat))
// Scope E, also while locked; the ledger stays locked or open as it was. Faults: ledger.passphrase and ledger.wait at /code,
// examiner.taken, passphrase.short, limit.text, ledger.read_only.
[[nodiscard]] Result<ExaminerAddResult> examiner_add(Context& context, const ExaminerAddParams& params);

}  // namespace limbledger::service
