// The page that travels with a person whose examination was stopped: one page, verb first, side in words and capitals, what cannot
// wait and what was done, the last check of vessels and nerves, what was given, whom to call. It is carried by hand, so nothing that
// protects a person stands on it, not even that there is something. Source: clinical safety, requirements 11 and 16.
#pragma once

#include "core/model/place.hpp"
#include "core/report/page.hpp"

#include <optional>

namespace limbledger::report {

// `exam` holds its transfer; what it lacks is printed as not recorded, with room to write.
[[nodiscard]] Sheet transfer_sheet(const model::Exam& exam, const std::optional<model::Person>& person, const interpret::Assessment& assessment,
                                   const Words& words, const reference::Edition& edition, const PageNames& names,
                                   const std::optional<model::Place>& place);

}  // namespace limbledger::report
