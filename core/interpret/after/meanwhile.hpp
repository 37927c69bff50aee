// What is done until an alert is answered, as its row says, and instead: at a replaced joint, and at a place that is known not to have what
// it takes. Not listed is unknown and changes nothing.
#pragma once

#include "core/interpret/alerts/alerts.hpp"

#include <vector>

namespace limbledger::interpret {

[[nodiscard]] std::vector<model::MessageId> meanwhile_of(const View& view, const JudgedFlag& judged, const model::Place* place);

}  // namespace limbledger::interpret
