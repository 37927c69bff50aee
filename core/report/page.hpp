// One exam as a clinician reads it: who, when and with whose consent; the examiner's impression first, what is out of the ordinary, then
// the plan; alerts and what was done, the next step; what measurement left open, what was not done and not examined; what the findings
// support, the rules with what would settle them; what was found, side by side; what was asked and what was not; who was
// there, signature, and what the page is. RIGHT always stands before LEFT.
// Nothing here judges: it prints an exam and its assessment.
#pragma once

#include "core/interpret/statement.hpp"
#include "core/model/exam/exam.hpp"
#include "core/model/person.hpp"
#include "core/reference/edition.hpp"
#include "core/report/sheet.hpp"
#include "core/report/words/words.hpp"

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace limbledger::report {

// What protects a child, a partner or a person who depends on others: not even its being there is told; one line tells that it is
// there; or it is shown, by a deliberate act of an examiner.
enum class ProtectedNote : std::uint8_t { absent, mentioned, shown };

// What the exam itself does not hold. Examiners with their roles; one without a name is printed by the id, with the words that the name
// is not known.
struct PageNames {
  std::map<model::PlaceId, std::string> places;
  std::map<model::ExaminerId, std::string> examiners;
  std::string banner;  // above everything: DEMONSTRATION, PRACTICE
  ProtectedNote protected_note = ProtectedNote::mentioned;
  std::vector<model::Settled> of_person = {};  // what was decided between of the person
  std::vector<std::string> undecided = {};    // what stands against each other of the exam and its person, in a sentence each
  std::optional<model::Instant> now;  // when it is printed: a day that was named may have passed
};

[[nodiscard]] Sheet exam_sheet(const model::Exam& exam, const std::optional<model::Person>& person, const interpret::Assessment& assessment,
                               const Words& words, const reference::Edition& edition, const PageNames& names = {});
// The same as plain text of 80 columns.
[[nodiscard]] std::string exam_page(const model::Exam& exam, const std::optional<model::Person>& person, const interpret::Assessment& assessment,
                                    const Words& words, const reference::Edition& edition, const PageNames& names = {});

}  // namespace limbledger::report
