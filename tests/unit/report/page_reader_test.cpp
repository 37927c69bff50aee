// What a reader of a page asked and did not find, or found twice and otherwise. Source: clinical safety, part A and requirements 11, 18
// and 19; where nothing is named, a logic test of our own rule.
#include "core/report/after/transfer_note.hpp"
#include "core/report/home/home.hpp"
#include "core/report/letter/letter.hpp"
#include "core/report/letter/letter_parts.hpp"
#include "core/report/ordinary.hpp"
#include "core/report/page_judged.hpp"
#include "core/service/methods/exam/form.hpp"

#include "tests/unit/report/printer.hpp"

#include <algorithm>

using namespace limbledger;
using namespace limbledger::report_test;

namespace {

using model::Side;

std::string letter_of_length(const Printer& printer, int shortened, std::optional<model::LetterUrgency> urgency = std::nullopt) {
  report::LetterAsk ask;
  ask.question = "What next?";
  ask.urgency = urgency;
  return on_one_line(report::sheet_text(report::letter_of_length(printer.view(), ask, shortened), *report::built_in_words()));
}

std::string home_of(const Printer& printer) {
  return on_one_line(report::sheet_text(report::home_sheet(printer.view(), {{}, true}).sheet, *report::built_in_words()));
}

std::string note_page(const Printer& printer) {
  return report::exam_page(printer.exam, printer.person, printer.assessment, *report::built_in_words(), *reference::built_in_edition(), printer.names);
}

}  // namespace

TEST_CASE("C18: what is out of the ordinary on either side is named in a letter of every length, and an outside reader is sent to no record") {
  std::size_t named = 0;
  for (const char* name : printed_people) {
    const Printer printer(name);
    const report::PageView view = printer.view();
    for (int shortened = 0; shortened <= report::letter_shortest; ++shortened) {
      const std::string letter = letter_of_length(printer, shortened);
      CHECK(!has(letter, "in the record:"));
      for (const model::Finding* finding : view.findings) {
        const bool undone = std::holds_alternative<model::NotDone>(finding->value);
        if (!undone && finding->side != Side::midline && report::ordinary(*reference::built_in_edition(), *finding) == report::Ordinary::unusual) {
          ++named;
          CHECK_MESSAGE(has(letter, view.label(finding->item)), name << " " << shortened << " " << finding->item.text);
        }
      }
    }
  }
  CHECK(named > 300);
  // The foot that is not complained of has its values too.
  CHECK(has(letter_of_length(Printer("sole"), report::letter_shortest), "LEFT, OUT OF THE ORDINARY: "));
  CHECK(has(letter_of_length(Printer("sole"), report::letter_shortest), "Filament, pulp of the great toe / Filament, under the first metatarsal head: 0"));
}

TEST_CASE("C18: one urgency leads a letter, the most urgent; the examiner's stands with its question, and a later date of the plan says that it is later") {
  const std::string sole = letter_of_length(Printer("sole"), 0, model::LetterUrgency::two_weeks);
  CHECK(has(sole, "How soon, and why ----------------- THE SAME DAY, because of what was found:"));
  CHECK(has(sole, "By the examiner, for the question above: WITHIN TWO WEEKS."));
  CHECK(has(sole, "by 2026-11-25, planned later than what was found asks for"));
  const std::string hip = letter_of_length(Printer("hip"), 0, model::LetterUrgency::same_day);
  CHECK(has(hip, "By the examiner: THE SAME DAY."));
  CHECK(!has(hip, "planned later than"));
}

TEST_CASE("C18: a letter names the outcome of a rule that bears on a film with its edition, and the alert that asks for one all the same") {
  for (int shortened = 0; shortened < report::letter_shortest; ++shortened) {
    CHECK(has(letter_of_length(Printer("football"), shortened), "Ottawa knee rule, LEFT (okr/1995): film not required by it (all items checked today)"));
    CHECK(has(letter_of_length(Printer("lock"), shortened), "but what was raised asks for one: film for a loose body"));
  }
  CHECK(has(letter_of_length(Printer("fall"), 0), "Ottawa knee rule, RIGHT (okr/1995): Film of the knee advised"));
}

TEST_CASE("C18: a letter says who signed and when, or that nobody has") {
  Printer printer("ankle");
  CHECK(has(letter_of_length(printer, 0), "The record is not signed yet"));
  printer.exam.signed_ = model::Signed{*printer.exam.examiner, *printer.exam.examined_at, {}, {}};
  CHECK(has(letter_of_length(printer, 0), "Signed by \u2068Ines Invented\u2069, 2026-11-24"));
}

TEST_CASE("C11: a transfer note says when it was found, and when it was written down where that was later") {
  Printer hip("hip");
  hip.exam.transfer = std::vector<model::Transferred>{model::Transferred{}};
  const model::Instant found = *hip.exam.examined_at;
  for (model::Finding& finding : *hip.exam.findings) {
    finding.entered_at = model::Instant{found.ms + 2 * 24 * 3'600'000};
  }
  const auto note = [&] {
    return on_one_line(report::sheet_text(report::transfer_sheet(hip.exam, hip.person, hip.assessment, *report::built_in_words(), *reference::built_in_edition(), hip.names, std::nullopt), *report::built_in_words()));
  };
  const std::string at = hip.view().local(found);
  CHECK(has(note(), "Found at the examination, " + at + " (written down 2026-11-26"));
  CHECK(has(note(), "Rests on, found " + at + " (written down 2026-11-26"));
  for (model::Finding& finding : *hip.exam.findings) {
    finding.entered_at = found;
  }
  CHECK(has(note(), "Found at the examination, " + at + ": "));
  CHECK(!has(note(), "written down"));
}

TEST_CASE("C19: a dose that was given is no thing to do, and what is there already is no reason to come back if it comes") {
  const std::string hip = home_of(Printer("hip"));
  CHECK(!has(hip, "- \u2068pain-killer by mouth"));
  CHECK(has(hip, "Given to you: \u2068pain-killer by mouth"));
  CHECK(!has(hip, "looks shorter or turned out"));
  CHECK(has(hip, "anything that you have now gets worse"));
  const std::string fall = home_of(Printer("fall"));
  CHECK(!has(fall, "cannot lift the straight leg"));
  CHECK(!has(fall, "cannot put weight on the leg"));
  const std::string clot = home_of(Printer("clot"));
  CHECK(!has(clot, "the calf swells"));
  CHECK(has(clot, "- you are short of breath or have pain in the chest: come at once, by day or night"));
  const std::string infant = home_of(Printer("infant"));
  CHECK(!has(infant, "no longer stands"));
  CHECK(has(infant, "the child has a fever or looks ill"));
  const std::string football = home_of(Printer("football"));
  CHECK(has(football, "Your examiner: LEFT side: \u2068Come back") == false);
  CHECK(has(football, "When to come back"));
  CHECK(!has(football, "if: - \u2068Come back"));
}

TEST_CASE("an infected bone of a foot or a hip is not asked after at the knee") {
  for (const char* name : {"sole", "infant"}) {
    const std::string signs = section(note_page(Printer(name)), "Danger signs asked after");
    CHECK_MESSAGE(has(signs, "an infected bone"), name);
    CHECK_MESSAGE(!has(signs, "Kneecap tender"), name);
    CHECK_MESSAGE(!has(signs, "Head of the fibula tender"), name);
  }
  CHECK(has(section(note_page(Printer("sole")), "Danger signs asked after"), "tender bone at or near the foot"));
}

TEST_CASE("what an alert rests on stands in the order of the body, in whatever order it was entered") {
  for (const char* name : {"sole", "clot", "hip"}) {
    service::ExamDocument there = document(name);
    service::ExamDocument back = there;
    std::reverse(back.findings.begin(), back.findings.end());
    CHECK_MESSAGE(section(note_page(Printer(there)), "Alerts, and what was done") == section(note_page(Printer(back)), "Alerts, and what was done"), name);
  }
}

TEST_CASE("a test that was not done is ordinary in nobody") {
  CHECK(!has(letter_of_length(Printer("clot"), 0), "nothing out of the ordinary: Blood: D-dimer: Not done"));
  CHECK(has(letter_of_length(Printer("clot"), 0), "Blood: D-dimer: Not done"));
}

TEST_CASE("a form in a language for review says once, on top, that sentences marked are in English") {
  service::Context context;
  context.edition = reference::built_in_edition();
  for (const auto& one : {std::pair<const char*, const char*>{"es", "Las frases marcadas (en) est"}, {"fr", "Les phrases marqu"}}) {
    service::FormWriteParams params;
    params.complaint = {"acute_knee"};
    params.language = model::Word{one.first};
    const auto form = service::form_write(context, params);
    REQUIRE(form.has_value());
    CHECK_MESSAGE(has(form->html.text, one.second), one.first);
  }
}
