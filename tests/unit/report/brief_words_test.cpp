// What note and letter say in a line or leave out for length: danger signs, blood, feeling and movement, what measurement leaves open,
// what was not done, facts of the person, the value of the other side, steps not advised. Source: clinical safety, part A and
// requirements 9, 11 and 18; where nothing is named, a logic test of our own rule.
#include "core/report/after/transfer_note.hpp"
#include "core/report/brief/brief.hpp"
#include "core/report/letter/letter.hpp"
#include "core/report/letter/letter_parts.hpp"
#include "core/report/ordinary.hpp"
#include "core/report/page_judged.hpp"

#include "tests/unit/report/printer.hpp"

#include <array>
#include <filesystem>
#include <set>

using namespace limbledger;
using namespace limbledger::report_test;

namespace {

using model::Side;

std::string letter_at(const report::PageView& view, int shortened) {
  report::LetterAsk ask;
  ask.question = "What next?";
  return on_one_line(report::sheet_text(report::letter_of_length(view, ask, shortened), *report::built_in_words()));
}

std::string note_of(const Printer& printer) {
  return report::exam_page(printer.exam, printer.person, printer.assessment, *report::built_in_words(), *reference::built_in_edition(), printer.names);
}

// From one title to another.
std::string between(const std::string& text, const std::string& from, const std::string& to) {
  const std::size_t at = text.find(from);
  REQUIRE(at != std::string::npos);
  const std::size_t end = text.find(to, at);
  return text.substr(at, end == std::string::npos ? end : end - at);
}

std::string found_in(const std::string& letter) { return between(letter, "Found, and how ---", "Given here ---"); }
std::string not_examined_in(const std::string& letter) { return between(letter, "Not examined ---", "Reply ---"); }

std::size_t count_of(const std::string& text, const std::string& part) {
  std::size_t count = 0;
  for (auto at = text.find(part); at != std::string::npos; at = text.find(part, at + 1)) {
    ++count;
  }
  return count;
}

}  // namespace

TEST_CASE("C18: at every length a letter names each danger that was asked after, and of the side complained of blood, feeling and movement") {
  std::size_t dangers = 0;
  std::size_t of_foot = 0;
  for (const char* name : printed_people) {
    const Printer printer(name);
    const report::PageView view = printer.view();
    for (int shortened = 0; shortened <= report::letter_shortest; ++shortened) {
      const std::string letter = letter_at(view, shortened);
      CAPTURE(std::string(name));
      CAPTURE(shortened);
      for (const interpret::Flag& flag : printer.assessment.flags) {
        const interpret::FlagAnswer answer = report::printed_answer(view, flag);
        if (answer == interpret::FlagAnswer::asked_no || answer == interpret::FlagAnswer::cannot_answer) {
          ++dangers;
          const std::string label = report::flag_label(view, flag.flag.text);
          CHECK_MESSAGE(has(letter, label), label);
        }
      }
      for (const interpret::Alert& alert : printer.assessment.alerts) {
        CHECK(has(letter, on_one_line(report::alert_text(alert, *report::built_in_words()))));
      }
      for (const model::Finding* finding : view.findings) {
        if (finding->side == printer.exam.side && report::blood_feeling_or_movement(*finding)) {
          ++of_foot;
          CHECK_MESSAGE(has(letter, view.label(finding->item)), finding->item.text);
        }
      }
    }
  }
  CHECK(dangers > 100);
  CHECK(of_foot > 100);
}

TEST_CASE("what a letter leaves out for length names a title of the note under which it is read") {
  std::set<std::string> titles;
  std::size_t folded = 0;
  for (const char* name : printed_people) {
    const Printer printer(name);
    const std::string note = note_of(printer);
    const std::string letter = letter_at(printer.view(), report::letter_shortest);
    // A record that is not to be passed on is asked after at the clinic, and named nowhere else.
    const auto send = printer.exam.consent ? printer.exam.consent->send : std::nullopt;
    const bool stays = send && *send != model::ConsentWord::yes;
    CHECK(has(letter, "in the clinic's note: ") != stays);
    CHECK(has(letter, "kept at the clinic (ask there): ") == stays);
    const std::string_view begins = stays ? "kept at the clinic (ask there): " : "in the clinic's note: ";
    for (auto at = letter.find(begins); at != std::string::npos; at = letter.find(begins, at + 1)) {
      ++folded;
      bool there = false;
      for (const char* title : {"Findings", "Danger signs asked after", "Not examined", "Alerts, and what was done", "Not done, with the reason",
                                "Within the error of measurement, and rules without a result"}) {
        const bool is = letter.compare(at + begins.size(), std::string_view(title).size(), title) == 0;
        there = there || (is && has(note, "\n" + std::string(title) + "\n---"));
      }
      CHECK_MESSAGE(there, name << ": " << letter.substr(at, 60));
    }
    CHECK(count_of(letter, "more, in the clinic's note") == count_of(letter, "more, in the clinic's note: "));
  }
  CHECK(folded > 10);
}

TEST_CASE("what the error of measurement leaves open is said in one line of note and letter, with both values; of a letter sides alone") {
  const Printer child("child");
  const std::string flexion = "Knee flexion, passive, LEFT 140°: cannot be told from the other side (141; ";
  const std::string note = section(note_of(child), "Within the error of measurement, and rules without a result");
  CHECK(has(note, "decided neither way"));
  CHECK(has(note, flexion));
  const std::string letter = found_in(letter_at(child.view(), 0));
  CHECK(count_of(letter, "Within the error of measurement: ") == 1);
  CHECK(has(letter, flexion));
  // Of two sides it is one thing, and a letter compares with no figures.
  CHECK(count_of(letter, "Knee flexion, passive, ") == 1);
  CHECK(!has(letter, "the edge of"));
}

TEST_CASE("a rule that is still open is said in one line of note and letter with what it needs, and its result nowhere") {
  service::ExamDocument one = document("ankle");
  CHECK(!has(note_of(Printer(one)), "Rules without a result: "));
  drop(one, "gait.steps_now");
  drop(one, "history.steps_at_once");
  const Printer open(one);
  const std::string says = "Ottawa ankle rule, RIGHT: Cannot say yet: needs ";
  CHECK(has(section(note_of(open), "Within the error of measurement, and rules without a result"), "Rules without a result: " + says));
  const std::string letter = found_in(letter_at(open.view(), 0));
  CHECK(has(letter, "Rules without a result: " + says));
  CHECK(!has(letter, "Film not required"));
}

TEST_CASE("what was not done stands with its reason under what was not examined, and never under what was found") {
  std::size_t undone = 0;
  for (const char* name : printed_people) {
    const Printer printer(name);
    const report::PageView view = printer.view();
    const std::string letter = letter_at(view, 0);
    for (const model::Finding* finding : view.findings) {
      if (!std::holds_alternative<model::NotDone>(finding->value)) {
        continue;
      }
      ++undone;
      // One reason is said once, before all that it stands for.
      const std::string what = view.label(finding->item) + view.side_after(finding->side);
      const std::string of_reason = not_examined_in(letter);
      const std::size_t at = of_reason.find(what);
      REQUIRE_MESSAGE(at != std::string::npos, name << ": " << what);
      const std::size_t begins = of_reason.rfind("; ", at) == std::string::npos ? of_reason.rfind("- ", at) : of_reason.rfind("; ", at);
      CHECK_MESSAGE(of_reason.substr(begins, of_reason.find(';', at) - begins).find("not done") != std::string::npos, name << ": " << what);
      CHECK_MESSAGE(!has(found_in(letter), view.label(finding->item) + ": "), name << ": " << what);
    }
  }
  CHECK(undone >= 8);
  CHECK(has(not_examined_in(letter_at(Printer("hip").view(), 0)), "Log roll of the leg, LEFT: not done because of pain"));
}

TEST_CASE("a yes that is a fact of the person stands in the head, and is never called ordinary; a no of it is a no") {
  service::ExamDocument one = document("clot");
  drop(one, "body.pregnancy");
  drop(one, "history.blood_thinners");
  add(one, "body.pregnancy", Side::midline, model::Answer{model::AnswerWord::yes});
  add(one, "body.pregnancy_weeks", Side::midline, model::CountValue{{30}});
  add(one, "history.blood_thinners", Side::midline, model::Answer{model::AnswerWord::yes});
  const Printer printer(one);
  const std::string facts = "Of the person, as told: Pregnant: yes; Weeks of pregnancy: 30; Takes blood thinners: yes; Diabetes: yes";
  const std::string note = note_of(printer);
  CHECK(has(head(note), facts));
  for (int shortened = 0; shortened <= report::letter_shortest; ++shortened) {
    const std::string letter = letter_at(printer.view(), shortened);
    CHECK(has(letter.substr(0, letter.find("Question ---")), facts));
    CHECK(!has(found_in(letter), "Pregnant"));
    CHECK(!has(found_in(letter), "Diabetes"));
  }
  // Flat on the back from twenty weeks on: two states of the body ask for it, and it is said once.
  CHECK(count_of(on_one_line(note), "not face down; flat on the back in short turns alone") == 1);
  const std::string letter = found_in(letter_at(Printer("clot").view(), 0));
  CHECK(has(between(letter, "Asked by name, answered no", "."), "Pregnant"));
  CHECK(!has(letter, "Pregnant: no"));
}

TEST_CASE("an answer of which yes and no are both ordinary is called ordinary for neither") {
  const reference::Edition& edition = *reference::built_in_edition();
  std::size_t both = 0;
  for (const model::Item& item : edition.items()) {
    if (item.value != model::ValueKind::answer || !item.ordinary || item.ordinary->size() < 2) {
      continue;
    }
    ++both;
    for (const model::AnswerWord word : {model::AnswerWord::yes, model::AnswerWord::no}) {
      model::Finding finding;
      finding.item = item.item;
      finding.value = model::Answer{word};
      CHECK_MESSAGE(report::ordinary(edition, finding) != report::Ordinary::ordinary, item.item.text);
    }
  }
  CHECK(both >= 4);
}

TEST_CASE("each short sentence that compares with the other side holds the value of that side") {
  std::size_t compared = 0;
  const std::filesystem::path folder = std::filesystem::path(LIMBLEDGER_SOURCE_DIR) / "core/report/words";
  for (const auto& file : std::filesystem::recursive_directory_iterator(folder)) {
    std::ifstream in(file.path());
    for (std::string line; std::getline(in, line);) {
      const std::string name = line.substr(0, line.find(" = "));
      const bool compares = has(line, "less than the other side") || has(line, "more than the other side") || has(line, "told from the other side") ||
                            has(line, "of extension against the other side");
      // A pattern of several motions has each of them in a row of its own; a grade is itself the comparison.
      if (!name.starts_with("msg-m") || has(name, "capsular") || !compares) {
        continue;
      }
      ++compared;
      CHECK_MESSAGE((has(line, "{ $other }") || has(line, "{ $other_mm }")), name);
    }
  }
  CHECK(compared > 20);
}

TEST_CASE("in a letter the number of the side complained of stands with that of the other side, at every length where it stands") {
  const std::string letter = found_in(letter_at(Printer("clot").view(), 0));
  CHECK(has(letter, "Calf girth, 10 cm below the shin tubercle: 392 mm, tape (RIGHT: 351 mm)"));
  CHECK(count_of(letter, "351 mm") == 1);
  for (int shortened = 0; shortened <= report::letter_shortest; ++shortened) {
    const std::string one = found_in(letter_at(Printer("clot").view(), shortened));
    CHECK(has(one, "392 mm, tape (RIGHT: 351 mm)"));
  }
  // Taken in another way, and the sentence says how.
  service::ExamDocument by_eye = document("stiff");
  for (model::Finding& finding : by_eye.findings) {
    if (finding.item.text == "knee.flexion_passive" && finding.side == Side::left) {
      finding.instrument = model::Word{"by_eye"};
    }
  }
  const Printer stiff(by_eye);
  CHECK(has(found_in(letter_at(stiff.view(), 0)), "(LEFT: 128°, estimate by eye, supine)"));
}

TEST_CASE("what alerts advise against stands in the letter under what holds until seen, and in the note; without an alert nothing does") {
  std::size_t with = 0;
  for (const char* name : printed_people) {
    const Printer printer(name);
    const report::PageView view = printer.view();
    const std::string letter = letter_at(view, 0);
    const std::string until = between(letter, "What next ---", "Examiner's impression");
    for (const report::StoppedSteps& stopped : report::stopped_steps(view)) {
      for (const std::string& label : stopped.labels) {
        ++with;
        CHECK_MESSAGE(has(until, label), name << ": " << label);
        CHECK_MESSAGE(has(section(note_of(printer), "Alerts, and what was done"), label), name << ": " << label);
      }
    }
    const bool none = report::stopped_steps(view).empty();
    CHECK_MESSAGE(has(until, "Not advised until ") == !none, name);
    CHECK_MESSAGE(has(until, "Not advised until seen there: ") == (!none && report::refers(view)), name);
  }
  CHECK(with > 10);
  CHECK(has(between(letter_at(Printer("hip").view(), 0), "What next ---", "Examiner's impression"), "LEFT: Hip inward rotation, seated (and its variants); Hip outward rotation, seated; Hip flexion, passive"));
  // What was left out of the visit for it stands in the same list, and not as the next thing to do.
  CHECK(has(between(letter_at(Printer("child").view(), 0), "What next ---", "Examiner's impression"), "Log roll of the leg"));
  CHECK(has(on_one_line(note_of(Printer("child"))), "Log roll of the leg, LEFT (not advised now)"));
  CHECK(report::stopped_steps(Printer("ankle").view()).empty());
}

TEST_CASE("what an alert rests on is named under what was found at every length") {
  const Printer sole("sole");
  for (int shortened = 0; shortened <= report::letter_shortest; ++shortened) {
    const std::string found = found_in(letter_at(sole.view(), shortened));
    for (const char* what : {"Ulcer now", "Signs of infection at the wound", "Redness, how far from the edge"}) {
      CHECK_MESSAGE(has(found, what), what);
    }
  }
}

TEST_CASE("C11: what the plan gave and told travels with the person, and nothing is said to be not given that was") {
  Printer hip("hip");
  hip.exam.transfer = std::vector<model::Transferred>{model::Transferred{}};
  const auto note = [&] {
    const report::Sheet sheet = report::transfer_sheet(hip.exam, hip.person, hip.assessment, *report::built_in_words(), *reference::built_in_edition(), hip.names, std::nullopt);
    return on_one_line(report::sheet_text(sheet, *report::built_in_words()));
  };
  const std::string whole = note();
  CHECK(has(whole, "Given so far, of the plan: splint, LEFT: \u2068Pillow between the legs, the leg as it lies\u2069; medicine, as the examiner wrote it: \u2068pain-killer by mouth"));
  CHECK(has(whole, "Told, of the plan: advice: \u2068Nothing on the leg, nothing to eat until seen by the surgeon\u2069"));
  CHECK(!has(whole, "Given so far: nothing recorded"));
  CHECK(has(whole, "Blood thinners, as recorded at the examination: Takes blood thinners: yes"));
  for (model::PlanItem& item : *hip.exam.plan) {
    item.became.reset();
  }
  const std::string open = note();
  CHECK(has(open, "Given so far: nothing recorded"));
  CHECK(has(open, "Of the plan, not recorded as given: splint, LEFT: \u2068Pillow"));
  for (model::PlanItem& item : *hip.exam.plan) {
    item.became = model::Became::declined;
  }
  CHECK(!has(note(), "pain-killer by mouth"));
}

TEST_CASE("C18: what holds meanwhile of a danger that waits two weeks stands in the letter at every length") {
  for (int shortened = 0; shortened <= report::letter_shortest; ++shortened) {
    CAPTURE(shortened);
    const std::string lock = letter_at(Printer("lock").view(), shortened);
    const std::string next = between(lock, "What next ---", "Examiner's impression");
    CHECK(has(next, "TO DO until seen, asked for by the program (by whom"));
    CHECK(has(next, "not recorded"));
    CHECK(has(next, "nobody forces it straight; crutches"));
    const std::string infant = letter_at(Printer("infant").view(), shortened);
    CHECK(has(between(infant, "What next ---", "Examiner's impression"), "nobody pushes or straps the thighs"));
  }
}

TEST_CASE("what was not done on the side complained of stands in the letter with its reason at every length but the last, and a joint nobody looked at says that no reason is recorded") {
  const std::string sole = not_examined_in(letter_at(Printer("sole").view(), report::letter_shortest - 1));
  CHECK(has(sole, "Ulcer, probe meets bone, RIGHT: not done: no instrument"));
  CHECK(has(sole, "ankle joint: LEFT (reason not recorded)."));
  Printer stopped("sole");
  stopped.exam.transfer = std::vector<model::Transferred>{model::Transferred{}};
  CHECK(!has(not_examined_in(letter_at(stopped.view(), 0)), "reason not recorded"));
}

TEST_CASE("of a long list the joint complained of is kept before others, and a measured angle before an estimate") {
  const std::string stiff = found_in(letter_at(Printer("stiff").view(), 0));
  CHECK(stiff.find("Knee extension, passive: 12") < stiff.find("Hip inward rotation"));
  CHECK(stiff.find("Knee flexion, passive: 98") < stiff.find("Hip inward rotation"));
}

TEST_CASE("what the person can do is not called not recorded, and a reason to come back reads as one") {
  const std::string ankle = letter_at(Printer("ankle").view(), 0);
  const std::string function = between(ankle, "Can, and can no longer ---", "Found, and how");
  CHECK(has(function, "Asked or seen, and can: "));
  CHECK(has(function, "Steps taken now (0 to 4): 4"));
  CHECK(has(ankle, "COME BACK IF: \u2068You cannot stand on the foot tomorrow\u2069"));
  CHECK(has(between(letter_at(Printer("infant").view(), 0), "Can, and can no longer ---", "Found, and how"), "Not recorded."));
}
