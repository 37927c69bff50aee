// What note and letter both say in a line: facts of the person that weigh whatever is complained of, what measurement left open, and
// what is not advised until somebody has seen the person. A fact is neither a finding nor ordinary.
#pragma once

#include "core/report/page_parts.hpp"

#include <cstddef>
#include <string>
#include <vector>

namespace limbledger::report {

// Told of the person or lasting, and no look at a side: pregnant, in a chair.
[[nodiscard]] bool is_lasting_fact(const PageView& view, const model::Finding& finding);
// One of those that a reader has to know whatever the complaint is: pregnant, on blood thinners, diabetes. A no is none.
[[nodiscard]] bool is_weighty_fact(const model::Finding& finding);
[[nodiscard]] std::vector<std::string> weighty_facts(const PageView& view);

// Differences that are within their error, each with both values; one for each item. Of sides alone, or also from figures and last time.
[[nodiscard]] std::vector<std::string> within_error(const PageView& view, bool sides_alone);
// The same of sides alone, by name.
[[nodiscard]] std::vector<std::string> within_error_named(const PageView& view);
// Rules that say nothing yet, by name, or with what they need.
[[nodiscard]] std::vector<std::string> rules_still_open(const PageView& view, bool with_needs);
[[nodiscard]] SheetSection unsettled_section(const PageView& view);  // no lines: nothing

// "hip: RIGHT and LEFT": the part complained of and the joints around it, where nobody looked.
[[nodiscard]] std::vector<std::string> places_not_examined(const PageView& view);
// No transfer stopped the exam, and nothing at any of these places was entered as not done for a reason.
[[nodiscard]] bool places_without_reason(const PageView& view);

// What alerts and prompts to refer advise against, of the steps of this complaint; one label for the variants of one test.
struct StoppedSteps {
  std::optional<model::Side> side;
  std::vector<std::string> labels;
  std::size_t others = 0;  // beyond the steps of this complaint
};
[[nodiscard]] std::vector<StoppedSteps> stopped_steps(const PageView& view);

}  // namespace limbledger::report
