// Where it hurts, as far as a rule for one joint may take the complaint for it; and several readings of one motion as one number.
#pragma once

#include "core/interpret/rules/sheet_inputs.hpp"

namespace limbledger::interpret {

// One of these complaints on this side; or a visit for no joint in particular whose pain on this side begins so (site_knee).
[[nodiscard]] bool complains_at(const View& view, model::Side side, std::initializer_list<std::string_view> complaints,
                                std::initializer_list<std::string_view> sites);
// What any of these items measured: several that stand span what they span.
[[nodiscard]] MeasuredAt measure_any(const View& view, std::initializer_list<std::string_view> items, model::Side side,
                                     std::vector<const model::Finding*>& findings);

}  // namespace limbledger::interpret
