// What was done or said about an alert, and whether it still answers it: as long as the alert stands in its class, and in no graver sentence
// (the row's `graver`; after a reason to do nothing: in the same), by what its writer had been shown, on the leg and of the person that it was
// said of. What is found beside that, and what was measured again since and says no worse, is nothing new; in doubt it is. What was done answers
// what stood inside as well. Else it is raised again, with what was said before beside it. Our convention; clinical safety, C2.
#pragma once

#include "core/interpret/alerts/alerts.hpp"

#include <cstddef>
#include <string_view>

namespace limbledger::interpret {

// Among the sentences of one danger: those that its row names are graver than the rest, the last the most.
[[nodiscard]] std::ptrdiff_t gravity_of(const reference::AlertRow& row, std::string_view what);
// `gone`: it is raised no more, and what was said of it stays beside it whatever came since.
void take_handling(const View& view, const JudgedFlag& judged, bool gone, Alert& alert);
// And what was done or said of one that stands inside it, and has no line of its own.
void take_handling_inside(const View& view, const JudgedFlag& inner, Alert& alert);

}  // namespace limbledger::interpret
