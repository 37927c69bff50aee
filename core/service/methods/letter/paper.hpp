// What the letter and the take-home sheet share: the view of a recorded exam to print from, and whether a language has texts for
// people that a clinician of this clinic has read (clinical safety, requirement 19).
#pragma once

#include "core/model/place.hpp"
#include "core/report/page_parts.hpp"
#include "core/service/methods/exam/judge.hpp"
#include "core/service/methods/exam/watch.hpp"

#include <memory>
#include <optional>
#include <string_view>
#include <vector>

namespace limbledger::service {

// What a page is printed from, all of it together: the view points into the rest.
struct Printed {
  ToJudge judged;
  interpret::Assessment assessment;
  report::PageNames names;
  std::vector<model::Telephone> telephones;  // of the exam's place
  std::unique_ptr<report::PageView> view;
};
[[nodiscard]] Result<std::unique_ptr<Printed>> to_print(Context& context, const model::ExamId& exam, const report::Words& words, bool with_protected);

// A language whose texts for people a named clinician has read, by any place of this clinic; a ledger of invented people needs none.
[[nodiscard]] Result<bool> language_reviewed(Context& context, std::string_view language);

}  // namespace limbledger::service
