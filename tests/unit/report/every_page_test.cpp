// Each page of each invented person: what it answers in its first half, the words it may not say, and what it says of itself. Source:
// clinical safety, part A (words), requirements 1, 18, 19 and 24 (not tested on real people, intended use on every print).
#include "core/report/after/transfer_note.hpp"
#include "core/report/home/home.hpp"
#include "core/report/letter/letter.hpp"
#include "core/report/page_judged.hpp"

#include "tests/unit/report/forbidden.hpp"
#include "tests/unit/report/printer.hpp"

#include <map>

using namespace limbledger;
using namespace limbledger::report_test;

namespace {

// Without what people wrote: what the program says is judged, not they.
service::ExamDocument without_written(const std::string& name) {
  service::ExamDocument one = document(name);
  one.exam.impression->text.text = "as written";
  one.exam.impression->certainty.reset();
  one.exam.impression->alternatives.reset();
  for (model::PlanItem& item : *one.exam.plan) {
    item.text.text = "as written";
  }
  for (model::Finding& finding : one.findings) {
    finding.remark.reset();
    if (auto* words = std::get_if<model::Words>(&finding.value)) {
      words->text.text = "own words";
    }
  }
  return one;
}

// Every page by its name, in text and in HTML.
std::map<std::string, report::Sheet> pages_of(const Printer& printer) {
  const report::PageView view = printer.view();
  const report::Words& words = *report::built_in_words();
  const reference::Edition& edition = *reference::built_in_edition();
  std::map<std::string, report::Sheet> pages;
  pages.emplace("note", report::exam_sheet(printer.exam, printer.person, printer.assessment, words, edition, printer.names));
  pages.emplace("home", report::home_sheet(view, {{{{"clinic office"}, {"000 111"}}}, true}).sheet);
  pages.emplace("transfer", report::transfer_sheet(printer.exam, printer.person, printer.assessment, words, edition, printer.names, std::nullopt));
  report::LetterAsk ask;
  ask.question = "as written";
  for (int shortened = 0; shortened <= report::letter_shortest; ++shortened) {
    pages.emplace("letter " + std::to_string(shortened), report::letter_of_length(view, ask, shortened));
  }
  ask.protected_ = true;
  pages.emplace("sealed letter", report::letter_sheet(view, ask));
  return pages;
}

// The label of an item, which says what somebody could take.
std::string without_steps_label(std::string text) {
  const std::string label = report::built_in_words()->say("msg.item.history_steps_at_once.short");
  for (auto at = text.find(label); at != std::string::npos; at = text.find(label)) {
    text.erase(at, label.size());
  }
  return text;
}

}  // namespace

TEST_CASE("A, C24: no page of anybody, at any length, says a word that is not earned; each says that it was not tested on real people and what stands above it") {
  for (const char* name : printed_people) {
    const Printer printer(without_written(name));
    for (const auto& page : pages_of(printer)) {
      CAPTURE(std::string(name));
      CAPTURE(page.first);
      const std::string text = on_one_line(report::sheet_text(page.second, *report::built_in_words()));
      const std::string html = report::sheet_html(page.second, *report::built_in_words());
      for (const std::string& word : forbidden_in(without_steps_label(text))) {
        FAIL_CHECK(word);
      }
      CHECK(has(lower(text), "not tested on real people"));
      CHECK(has(html, "Not tested on real people"));
      // What stands above the page: the examiner's judgement, or what the examiner told.
      const bool of_home = page.first == "home";
      CHECK(has(text, of_home ? "Where your examiner told you something else, do that." : "ecision support"));
      CHECK(has(text, of_home ? "printed by a program" : "examiner's judgement"));
    }
  }
}

TEST_CASE("C18: the first half of a note answers who, which side, what was found, how sure, what next, what was not examined, by whom and when") {
  for (const char* name : printed_people) {
    const Printer printer(name);
    const std::string page = report::exam_page(printer.exam, printer.person, printer.assessment, *report::built_in_words(), *reference::built_in_edition(), printer.names);
    const std::string half = on_one_line(page.substr(0, page.size() / 2));
    CAPTURE(std::string(name));
    const report::PageView view = printer.view();
    CHECK(has(half, printer.person->names->front().text.text));
    CHECK(has(half, ", " + report::side_of(*report::built_in_words(), *printer.exam.side)));
    CHECK(has(half, printer.exam.impression->text.text));
    CHECK(has(half, printer.exam.impression->certainty->text));
    CHECK(has(half, "Found out of the ordinary"));
    for (const model::PlanItem& item : *printer.exam.plan) {
      CHECK_MESSAGE(has(half, item.text.text), item.text.text);
    }
    CHECK(has(half, "Not done, with the reason"));
    CHECK(has(half, "Not examined ---"));
    const std::size_t at = half.find("Not examined: ");
    REQUIRE((at != std::string::npos || printer.assessment.not_examined.empty()));
    for (const interpret::NotExamined& one : printer.assessment.not_examined) {
      CHECK_MESSAGE(has(half.substr(at), report::word_of(*report::built_in_words(), "joint", one.joint.text)), one.joint.text);
    }
    CHECK(has(half, "Ines Invented"));
    CHECK(has(half, "Examined 2026-11-24"));
    CHECK(has(half, "Not signed."));
    for (const interpret::Alert& alert : printer.assessment.alerts) {
      CHECK(has(half, on_one_line(report::alert_text(alert, *report::built_in_words()))));
    }
    // The impression stands first.
    CHECK(half.find("Examiner's impression") < half.find("Found out of the ordinary"));
  }
}

TEST_CASE("C18: a letter answers the same on its one sheet, its head and impression before what was found, and what is decided is not left for the reader to guess") {
  for (const char* name : printed_people) {
    const Printer printer(name);
    report::LetterAsk ask;
    ask.question = "What next?";
    const report::Sheet sheet = report::letter_sheet(printer.view(), ask);
    const std::string text = on_one_line(report::sheet_text(sheet, *report::built_in_words()));
    CAPTURE(std::string(name));
    CHECK(report::letter_lines(sheet) <= report::letter_lines_max);
    CHECK(has(text.substr(0, text.find("Question ---")), printer.person->names->front().text.text));
    CHECK(has(text.substr(0, text.find("Question ---")), "From: \u2068Ines Invented\u2069"));
    CHECK(text.find(printer.exam.impression->text.text) < text.find("Found, and how"));
    CHECK(has(text, printer.exam.impression->certainty->text));
    for (const model::PlanItem& item : *printer.exam.plan) {
      CHECK_MESSAGE(has(text, item.text.text), item.text.text);
    }
    CHECK(text.find("Not examined") > text.find("Found, and how"));
  }
}
