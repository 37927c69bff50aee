// One exam as a clinician reads it, in plain text of 80 columns: who and when, the cautions, consent, the examiner's impression
// first, the plan, what was found, what was not done and why, what the findings support, the rules with what would settle them,
// what was not examined. RIGHT always stands before LEFT. Nothing here judges: it prints an exam and its assessment.
#pragma once

#include "core/interpret/statement.hpp"
#include "core/model/exam/exam.hpp"
#include "core/model/person.hpp"
#include "core/reference/edition.hpp"
#include "core/report/words/words.hpp"

#include <map>
#include <optional>
#include <string>

namespace limbledger::report {

// Names for ids, where the caller knows them; an id without a name is printed as it is.
struct PageNames {
  std::map<model::PlaceId, std::string> places;
  std::map<model::ExaminerId, std::string> examiners;
  std::string banner;  // above everything: DEMONSTRATION, PRACTICE
};

[[nodiscard]] std::string exam_page(const model::Exam& exam, const std::optional<model::Person>& person, const interpret::Assessment& assessment,
                                    const Words& words, const reference::Edition& edition, const PageNames& names = {});

}  // namespace limbledger::report
