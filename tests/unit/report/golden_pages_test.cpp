// Two letters, a take-home sheet and a note as they are printed, read by a person and kept in data/. The people are invented
// (exams/*.json). A change of wording changes these files; whoever changes them reads them again. Order and wording: clinical
// safety, parts A and C (requirements 16 to 19).
#include "core/report/home/home.hpp"
#include "core/report/letter/letter.hpp"
#include "core/report/page_parts.hpp"

#include "tests/unit/report/forbidden.hpp"
#include "tests/unit/report/printed.hpp"

#include <algorithm>
#include <cstdlib>

using namespace limbledger;
using namespace limbledger::report_test;

namespace {

std::string path_of_page(const std::string& name) { return std::string(LIMBLEDGER_SOURCE_DIR) + "/tests/unit/report/data/" + name + ".txt"; }

std::string kept_page(const std::string& name) {
  std::ifstream file(path_of_page(name));
  return {std::istreambuf_iterator<char>(file), {}};
}

// With LIMBLEDGER_KEEP_PAGES the pages are written anew, to be read and committed.
void check_page(const std::string& name, const std::string& text) {
  if (std::getenv("LIMBLEDGER_KEEP_PAGES") != nullptr) {
    std::ofstream(path_of_page(name)) << text;
  }
  CHECK(text == kept_page(name));
}

struct Printer {
  explicit Printer(const std::string& name) {
    const service::ExamDocument read = document(name);
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

std::string letter_of(const std::string& name, const std::string& to, const std::string& question, model::LetterUrgency urgency) {
  const Printer printer(name);
  const report::PageView view = printer.view();
  report::LetterAsk ask;
  ask.to = to;
  ask.question = question;
  ask.urgency = urgency;
  ask.telephones = {{{"clinic office"}, {"000 111"}}};
  const report::Sheet sheet = report::letter_sheet(view, ask);
  CHECK(report::letter_lines(sheet) <= report::letter_lines_max);
  return report::sheet_text(sheet, *report::built_in_words());
}

}  // namespace

TEST_CASE("a letter about a twisted knee, as it is printed") {
  check_page("letter_knee", letter_of("football", "knee clinic, district hospital (invented)",
                                      "Is the front cruciate ligament torn, and does the meniscus need an operation?", model::LetterUrgency::two_weeks));
}

TEST_CASE("a letter about a hip after a fall, as it is printed") {
  check_page("letter_hip", letter_of("hip", "surgeon on call, district hospital (invented)", "Film and operation for a broken hip?", model::LetterUrgency::same_day));
}

TEST_CASE("a take-home sheet of a sprained ankle, as it is printed") {
  const Printer printer("ankle");
  const report::PageView view = printer.view();
  check_page("home_ankle", report::sheet_text(report::home_sheet(view, {{{{"clinic office"}, {"000 111"}}}, true}).sheet, *report::built_in_words()));
}

TEST_CASE("a note of a sprained ankle, as it is printed: no band waits for a minimum set that could give none, and what was carried over is marked") {
  Printer printer("ankle");
  printer.names.protected_note = report::ProtectedNote::mentioned;
  const std::string note = report::exam_page(printer.exam, printer.person, printer.assessment, *report::built_in_words(), *reference::built_in_edition(), printer.names);
  check_page("note_ankle", note);
  CHECK(note.find("carried over from an earlier exam") != std::string::npos);
}

TEST_CASE("no finished page says what a finding does not earn") {
  for (const char* name : {"letter_knee", "letter_hip", "home_ankle"}) {
    std::string text = on_one_line(kept_page(name));
    CHECK(text.size() > 500);
    // The label of an item, which says what somebody could take.
    const std::string label = report::built_in_words()->say("msg.item.history_steps_at_once.short");
    for (auto at = text.find(label); at != std::string::npos; at = text.find(label)) {
      text.erase(at, label.size());
    }
    for (const std::string& word : forbidden_in(text)) {
      FAIL_CHECK(std::string(name) << ": " << word);
    }
  }
}

// The sheet for the person. Source: clinical safety, requirement 19.

namespace {

std::string home_text(const report::PageView& view) {
  return on_one_line(report::sheet_text(report::home_sheet(view, {{{{"clinic office"}, {"000 111"}}}, true}).sheet, *report::built_in_words()));
}

std::size_t times(const std::string& text, const std::string& part) {
  std::size_t count = 0;
  for (auto at = text.find(part); at != std::string::npos; at = text.find(part, at + 1)) {
    ++count;
  }
  return count;
}

}  // namespace

TEST_CASE("C19: the sheet says that one cannot stand once, whoever says it, and names no day that passes") {
  Printer printer("ankle");
  const std::string text = home_text(printer.view());
  CHECK(has(text, "Come back the same day it happens"));
  CHECK(!has(text, "today"));
  CHECK(!has(text, "after some days"));
  CHECK(times(text, "cannot stand on") == 1);
  printer.exam.plan->clear();
  CHECK(times(home_text(printer.view()), "cannot stand on") == 1);
  // Written of something else: the program's line stays.
  model::PlanItem other;
  other.kind = model::PlanKind::safety_net;
  other.text.text = "You cannot stand it any longer";
  printer.exam.plan->push_back(other);
  CHECK(has(home_text(printer.view()), "you cannot stand on the foot or walk a few steps"));
}

TEST_CASE("C19: after an injury, or under a splint, the sheet tells of a cold foot and of pain that grows, beside the other reasons") {
  Printer printer("ankle");
  const std::string text = home_text(printer.view());
  CHECK(has(text, "the foot turns cold, numb, pale or blue"));
  CHECK(has(text, "loosen the bandage and come"));
  CHECK(has(text, "kick at the heel"));
  CHECK(has(text, "Your examiner: \u2068Ines Invented\u2069"));
  CHECK(has(text, "by 2026-11-30"));
  CHECK(!has(text, "Said back"));
  // Neither hurt nor bound: they are not told.
  printer.exam.complaint = {"chronic_knee"};
  printer.exam.injured_on.reset();
  printer.exam.plan->clear();
  std::vector<model::Finding>& all = *printer.exam.findings;
  all.erase(std::remove_if(all.begin(), all.end(), [](const model::Finding& one) { return one.item.text == "history.mechanism"; }), all.end());
  CHECK(!has(home_text(printer.view()), "loosen the bandage"));
}
