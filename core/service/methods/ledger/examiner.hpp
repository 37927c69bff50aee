// examiner.add: one more examiner of this device, by the printed code: for a device whose examiners have all lost their
// passphrase, and for a colleague. Who added nobody could otherwise be anybody, so each has an own id, key and passphrase;
// the slots that are there stay, and with them the names of who signed. A passphrase goes in and comes out nowhere.
// examiner.read and examiner.amend: how the examiners of all devices are called. The name to unlock with is said when its owner first
// unlocks; the whole name and the role are the owner's to write, and nobody names another. Sealed, they travel with every exchange.
#pragma once

#include "core/model/operation.hpp"
#include "core/service/context.hpp"
#include "core/service/writing.hpp"
#include "core/wire/fault.hpp"
#include "core/wire/type.hpp"

#include <array>
#include <optional>

namespace limbledger::service {

struct ExaminerAddParams {
  wire::Name code;
  wire::Name examiner;
  wire::Name passphrase;
  std::optional<FaultLanguage> language = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(ExaminerAddParams, (), (code, examiner, passphrase, language))
constexpr auto notes(const ExaminerAddParams*) {
  return std::array{wire::Note{"language", fault_words_note}, wire::Note{"code", "the recovery code as printed when the ledger was made"},
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

struct SaidOfExaminer {
  wire::Name name;
  std::optional<wire::Name> role;
  model::EntryId entry;
};
BOOST_DESCRIBE_STRUCT(SaidOfExaminer, (), (name, role, entry))
struct ShownExaminer {
  model::ExaminerId examiner;
  std::vector<SaidOfExaminer> said;
  std::vector<model::EntryId> revision;
};
BOOST_DESCRIBE_STRUCT(ShownExaminer, (), (examiner, said, revision))
constexpr auto notes(const ShownExaminer*) {
  return std::array{wire::Note{"said", "several where two devices call the examiner differently; empty where no word has come here yet"}};
}
struct ExaminerReadParams {
  std::optional<model::ExaminerId> examiner;
  std::optional<FaultLanguage> language = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(ExaminerReadParams, (), (examiner, language))
constexpr auto notes(const ExaminerReadParams*) { return std::array{wire::Note{"language", fault_words_note}}; }
struct ExaminerReadResult {
  std::vector<ShownExaminer> examiners;
};
BOOST_DESCRIBE_STRUCT(ExaminerReadResult, (), (examiners))
// Scope E V. Faults: examiner.unknown.
[[nodiscard]] Result<ExaminerReadResult> examiner_read(Context& context, const ExaminerReadParams& params);

struct ExaminerAmendParams {
  wire::Name name;
  std::optional<wire::Name> role;
  std::vector<model::EntryId> seen;
  model::RequestId request;
  std::optional<FaultLanguage> language = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(ExaminerAmendParams, (), (name, role, seen, request, language))
constexpr auto notes(const ExaminerAmendParams*) {
  return std::array{wire::Note{"language", fault_words_note}, wire::Note{"name", "of the examiner who is unlocked here, as it is to stand beside a signature"},
                    wire::Note{"role", "in the examiner's own words; absent: none is named"},
                    wire::Note{"seen", "the revision of examiner.read; empty while nothing was said"}};
}
struct ExaminerAmendResult {
  ShownExaminer examiner;
  std::optional<bool> repeat;
};
BOOST_DESCRIBE_STRUCT(ExaminerAmendResult, (), (examiner, repeat))
// Scope E; writes, signed by the examiner. Faults: value.empty, revision.old (another word of the same examiner that was not seen),
// revision.unknown.
[[nodiscard]] Result<ExaminerAmendResult> examiner_amend(Context& context, const ExaminerAmendParams& params);

}  // namespace limbledger::service
