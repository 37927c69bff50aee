// At most one thing to examine next: only if one of its answers would change an alert, its urgency, or what a rule says of a film.
// Each answer is tried beside what was found, on the dangers that ask for it and the rules that it would settle. What is asked for safety first, painless before painful, never provoking while an
// alert on that limb is open, never withheld, none once something is planned. Source: clinical safety, C21.
#pragma once

#include "core/interpret/held.hpp"

#include <optional>
#include <vector>

namespace limbledger::interpret {

[[nodiscard]] std::optional<Step> next_step(const View& view, const std::vector<JudgedFlag>& flags, const std::vector<JudgedRule>& rules,
                                            const std::vector<OpenConcern>& concerns,
                                            std::optional<std::int64_t> seconds_left = std::nullopt);
// Where there is none and nothing is planned: whether nothing is asked, all that is asked is withheld, or no one answer changes anything by itself.
[[nodiscard]] model::MessageId why_no_step(const View& view, const std::vector<JudgedFlag>& flags, const std::vector<OpenConcern>& concerns);

}  // namespace limbledger::interpret
