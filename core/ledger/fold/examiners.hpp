// How examiners are called, by their own word: under the clinic's key, signed by the one who is named, so that it reaches every device
// and nobody names another. One who says it on two devices that had not seen each other is called by both, and a reader shows both.
// A word without a signature that holds names nobody. Source: ledger, items 7, 17 and 18.
#pragma once

#include "core/ledger/fold/fold.hpp"

#include <map>
#include <span>
#include <vector>

namespace limbledger::ledger {

struct SaidName {
  model::EntryId entry;
  model::ExaminerNameBody said;
};

// What stands of each, by entry; several where devices differ.
using ExaminerNames = std::map<model::ExaminerId, std::vector<SaidName>>;

[[nodiscard]] ExaminerNames fold_examiners(std::span<const Opened> clinic_operations, const ExaminerKeys& keys, const model::ClinicId& clinic);

}  // namespace limbledger::ledger
