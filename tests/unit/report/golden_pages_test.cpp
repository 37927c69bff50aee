// Two letters, a take-home sheet and a note as they are printed, read by a person and kept in data/. The people are invented
// (exams/*.json). A change of wording changes these files; whoever changes them reads them again. Order and wording: clinical
// safety, parts A and C (requirements 16 to 19).
#include "core/report/home/home.hpp"
#include "core/report/letter/letter.hpp"
#include "core/report/page_parts.hpp"

#include "tests/unit/report/forbidden.hpp"
#include "tests/unit/report/printer.hpp"

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

// What a reader of these letters missed. Source: clinical safety, requirement 18 (treatment, findings with method, side) and part A.

TEST_CASE("C18: a letter says what holds until seen: limits, advice, splint and reasons to come back of the plan, and what an alert says meanwhile") {
  const std::string hip = on_one_line(letter_of("hip", "", "Film?", model::LetterUrgency::same_day));
  CHECK(has(hip, "Meanwhile, by the plan: "));
  CHECK(has(hip, "\u2068Nothing on the leg, nothing to eat until seen by the surgeon\u2069"));
  CHECK(has(hip, "splint, LEFT: \u2068Pillow between the legs, the leg as it lies\u2069"));
  CHECK(has(hip, "no trial of standing"));
  const std::string knee = on_one_line(letter_of("football", "", "Torn?", model::LetterUrgency::two_weeks));
  CHECK(has(knee, "limit: \u2068No football until reviewed\u2069"));
  CHECK(has(knee, "Come back the same day if the foot is cold, numb or pale, or the pain grows."));
  Printer declined("football");
  for (model::PlanItem& item : *declined.exam.plan) {
    item.became = model::Became::declined;
  }
  const std::string none = on_one_line(report::sheet_text(report::letter_sheet(declined.view(), {}), *report::built_in_words()));
  CHECK(!has(none, "No football"));
  CHECK(has(none, "The plan names no splint, limit or advice. WHEN TO COME BACK: not recorded."));
}

TEST_CASE("C18: a no that a reader would ask back is in the letter: the head of somebody who takes blood thinners, whatever is left out") {
  const std::string hip = on_one_line(letter_of("hip", "", "Film?", model::LetterUrgency::same_day));
  CHECK(has(hip, "Takes blood thinners: yes"));
  CHECK(has(hip, "Asked by name, answered no: Head struck"));
  Printer silent("hip");
  std::vector<model::Finding>& all = *silent.exam.findings;
  all.erase(std::remove_if(all.begin(), all.end(), [](const model::Finding& one) { return one.item.text == "history.head_injury"; }), all.end());
  CHECK(!has(on_one_line(report::sheet_text(report::letter_sheet(silent.view(), {}), *report::built_in_words())), "answered no: Head struck"));
}

TEST_CASE("a test that was not done for pain is not printed as pain found by it") {
  const std::string hip = on_one_line(letter_of("hip", "", "Film?", model::LetterUrgency::same_day));
  CHECK(has(hip, "Log roll of the leg, LEFT: not done because of pain"));
  CHECK(!has(hip, "Log roll of the leg, LEFT: pain"));
}

TEST_CASE("a danger that only a look at the leg speaks against was not answered no: not suggested, and not excluded") {
  service::ExamDocument lies_even = document("hip");
  for (model::Finding& finding : lies_even.findings) {
    if (finding.item.text == "hip.leg_attitude") {
      finding.value = model::Choice{{"attitude_even"}};
    }
  }
  const Printer even(lies_even);
  const std::string seen = on_one_line(report::sheet_text(report::letter_sheet(even.view(), {}), *report::built_in_words()));
  CHECK(has(seen, "Not suggested by what was seen, and not excluded (signs of): a hip out of joint (by: How the leg lies)"));
  // Short and turned out, it speaks for a break, and is no proof that the joint is in place.
  const std::string hip = on_one_line(letter_of("hip", "", "Film?", model::LetterUrgency::same_day));
  CHECK(!has(hip, "Not suggested by what was seen, and not excluded (signs of): a hip out of joint"));
  for (const std::string& letter : {seen, hip}) {
    const std::size_t no = letter.find("Danger signs asked or looked at, answered no");
    REQUIRE(no != std::string::npos);
    CHECK(!has(letter.substr(no, letter.find(". ", no) - no), "a hip out of joint"));
  }
  CHECK(has(hip, "Danger signs asked after, still open (signs of): a hip out of joint"));
}

TEST_CASE("steps that were lost are told with those that are taken now") {
  const std::string knee = on_one_line(letter_of("football", "", "Torn?", model::LetterUrgency::two_weeks));
  const std::size_t then = knee.find("Then: Could take four steps at once after the injury: no (four steps could not be taken). Now: ");
  REQUIRE(then != std::string::npos);
  CHECK(knee.find(": 4", then) < knee.find("Found, and how"));
  Printer silent("football");
  std::vector<model::Finding>& all = *silent.exam.findings;
  all.erase(std::remove_if(all.begin(), all.end(), [](const model::Finding& one) { return one.item.text == "gait.steps_now"; }), all.end());
  CHECK(has(on_one_line(report::sheet_text(report::letter_sheet(silent.view(), {}), *report::built_in_words())), "Now: not recorded."));
}

TEST_CASE("the side that is complained of is read first, and its pulses, feeling and movement are never left out for length") {
  const std::string knee = on_one_line(letter_of("football", "", "Torn?", model::LetterUrgency::two_weeks));
  const std::size_t found = knee.find("Found, and how");
  const std::size_t left = knee.find("- LEFT", found);
  REQUIRE(left != std::string::npos);
  CHECK(left < knee.find("- RIGHT", found));
  const std::string of_left = knee.substr(left, knee.find("- RIGHT", found) - left);
  for (const char* label : {"Pulse on the back of the foot", "Pulse behind the inner ankle", "Lachman test", "Knee flexion, active: 112", "Knee extension, passive: 5"}) {
    CHECK_MESSAGE(has(of_left, label), label);
  }
  for (const char* item : {"vessel.foot_cold", "ankle.movement"}) {
    const Printer printer("football");
    CHECK_MESSAGE(has(of_left, printer.view().label({item})), item);
  }
  for (const char* item : {"knee.valgus_30", "knee.varus_30"}) {
    CHECK_MESSAGE(has(of_left, Printer("football").view().label({item})), item);
  }
  // However long the rest becomes.
  Printer crowded("football");
  for (model::PlanItem& item : *crowded.exam.plan) {
    if (item.kind == model::PlanKind::limit) {
      for (int i = 0; i < 60; ++i) {
        item.text.text += " and nothing that turns, jumps or carries for others";
      }
    }
  }
  std::string long_one = on_one_line(report::sheet_text(report::letter_sheet(crowded.view(), {}), *report::built_in_words()));
  constexpr std::string_view bullet = "\u2022";  // of a paragraph of them
  for (auto at = long_one.find(bullet); at != std::string::npos; at = long_one.find(bullet)) {
    long_one.replace(at, bullet.size(), "-");
  }
  CHECK(has(long_one, "in the clinic's note"));
  const std::size_t again = long_one.find("- LEFT", long_one.find("Found, and how"));
  const std::string short_left = long_one.substr(again, long_one.find("- RIGHT", again) - again);
  CHECK(has(short_left, "Pulse on the back of the foot"));
  CHECK(has(short_left, "Pulse behind the inner ankle"));
  CHECK(has(short_left, crowded.view().label({"ankle.movement"})));
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

TEST_CASE("C19: the program says once that one cannot stand, whatever the examiner wrote, and what is no better is a reason too") {
  Printer printer("ankle");
  const std::string text = home_text(printer.view());
  CHECK(has(text, "Come back the same day it happens"));
  CHECK(!has(text, "today"));
  CHECK(times(text, "you cannot stand on the foot or walk a few steps") == 1);
  printer.exam.plan->clear();
  CHECK(times(home_text(printer.view()), "you cannot stand on the foot or walk a few steps") == 1);
  CHECK(has(home_text(printer.view()), "after five days standing is no better"));
}

TEST_CASE("C19: after an injury, or under a splint, the sheet tells of a cold foot and of pain that grows, beside the other reasons") {
  Printer printer("ankle");
  const std::string text = home_text(printer.view());
  CHECK(has(text, "the foot turns cold, numb, pale or blue"));
  CHECK(has(text, "loosen what is bound round the leg and come"));
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
  CHECK(!has(home_text(printer.view()), "it hurts badly when somebody moves the toes"));
}
