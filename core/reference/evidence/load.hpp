// Reads and cross-checks the evidence of one edition; internal to reference, the door is edition.hpp. Refuses by the row's
// name: figures out of order, ratios that do not follow from their shares without a reason, defaults that stand twice or were
// not read, texts nobody maps, items and sources that are not there.
#pragma once

#include "core/reference/evidence/rows.hpp"
#include "core/reference/facts.hpp"

namespace limbledger::reference {

// Nothing where all five texts are empty (an edition without evidence).
[[nodiscard]] Evidence read_evidence(const EvidenceTexts& texts, Faults& faults);

void check_evidence(const Evidence& evidence, const Facts& facts, Faults& faults);

}  // namespace limbledger::reference
