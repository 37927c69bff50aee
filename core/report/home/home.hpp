// The take-home sheet (clinical safety, requirement 19 and wording A): what we think, in the examiner's words; three things to do
// at most; when to come back the same day; who to call; the next visit. Whether it was said back is of the record alone. Large print,
// to be read aloud. Where the examiner wrote nothing there is a line to write on. No number of the program's own, no illness that
// nobody typed, nothing that is kept from a page.
#pragma once

#include "core/model/place.hpp"
#include "core/report/page_parts.hpp"

#include <vector>

namespace limbledger::report {

struct HomeAsk {
  std::vector<model::Telephone> telephones;
  bool reviewed = false;  // a clinician of this place has read the texts
};

struct HomeSheet {
  Sheet sheet;
  std::size_t left_out = 0;  // things to do that did not fit among three
  bool plan_later = false;   // a day of the plan is later than what was found asks for, and is left out
};

[[nodiscard]] HomeSheet home_sheet(const PageView& view, const HomeAsk& ask);

}  // namespace limbledger::report
