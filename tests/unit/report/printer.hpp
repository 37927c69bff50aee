// An invented exam (exams/*.json), judged and ready to be printed as any page.
#pragma once

#include "core/report/page_parts.hpp"
#include "core/report/words/words.hpp"
#include "tests/unit/report/printed.hpp"

#include <array>
#include <string>

namespace limbledger::report_test {

// The nine of which each page is read: knee twisted at football, stiff knee, child with an unexamined hip, sprained ankle, hip after a
// fall, clot, foot with diabetes, infant's hip, locked knee; and a fall on the kneecap.
inline constexpr std::array<const char*, 10> printed_people{"football", "stiff", "child", "ankle", "hip", "clot", "sole", "infant", "lock", "fall"};

struct Printer {
  explicit Printer(const std::string& name) : Printer(document(name)) {}
  explicit Printer(const service::ExamDocument& read) {
    service::DocumentAssessParams params;
    params.document = read;
    service::Context context;
    context.edition = reference::built_in_edition();
    const auto judged = service::document_assess(context, params);
    REQUIRE(judged.has_value());
    assessment = *judged;
    const auto checked = service::check_document(*context.edition, read, std::nullopt);
    REQUIRE(checked.has_value());
    exam = checked->exam;
    person = checked->person;
    names.places[model::PlaceId(*exam.place)] = "Upper Ford (invented)";
    names.examiners[model::ExaminerId(*exam.examiner)] = "Ines Invented";
    names.protected_note = report::ProtectedNote::absent;
  }
  [[nodiscard]] report::PageView view() const { return {exam, person, assessment, *report::built_in_words(), *reference::built_in_edition(), names}; }

  model::Exam exam;
  std::optional<model::Person> person;
  interpret::Assessment assessment;
  report::PageNames names;
};

}  // namespace limbledger::report_test
