// What was added after the signature, and what was written for a transfer: a page that prints the value that was signed and says nothing
// of the one that corrects it is believed as it stands. People are invented. Source: clinical safety, requirements 11, 17 (what protects
// a person stands on no page by default) and 18; the rest is a logic test of our own rule.
#include "core/report/after/transfer_note.hpp"
#include "core/report/letter/letter.hpp"

#include "tests/unit/report/forbidden.hpp"
#include "tests/unit/report/printer.hpp"

using namespace limbledger;
using namespace limbledger::report_test;

namespace {

using model::Side;

model::Observation angle_of(const std::string& item, Side side, std::int64_t degrees) {
  model::Observation one;
  one.item = {item};
  one.side = side;
  model::Angle angle;
  angle.toward_deg = model::Degrees{degrees * 10};
  one.value = angle;
  return one;
}

model::Addendum addendum_of(const Printer& printer, model::AddendumKind kind, const std::string& reason, std::int64_t hours = 0) {
  model::Addendum added;
  added.by = *printer.exam.examiner;
  added.at = {printer.exam.examined_at->ms + hours * 3'600'000};
  added.kind = kind;
  added.reason = wire::Remark{reason};
  return added;
}

// A stiff knee whose passive flexion of 98 was misread for 118.
Printer corrected() {
  Printer stiff("stiff");
  model::Addendum words = addendum_of(stiff, model::AddendumKind::correction, "read off the wrong end", 1);
  words.text = wire::LongText{"Right knee flexion is 118, not 98."};
  model::Addendum value = addendum_of(stiff, model::AddendumKind::findings, "as the paper sheet has it", 2);
  value.findings = std::vector{angle_of("knee.flexion_passive", Side::right, 118)};
  stiff.exam.addenda = std::vector{words, value};
  return stiff;
}

std::string note_after(const Printer& printer) {
  return report::exam_page(printer.exam, printer.person, printer.assessment, *report::built_in_words(), *reference::built_in_edition(), printer.names);
}
std::string letter_after(const Printer& printer, int shortened, bool sealed = false) {
  report::LetterAsk ask;
  ask.question = "What next?";
  ask.protected_ = sealed;
  return on_one_line(report::sheet_text(report::letter_of_length(printer.view(), ask, shortened), *report::built_in_words()));
}
std::string transfer_after(const Printer& printer) {
  return on_one_line(report::sheet_text(
      report::transfer_sheet(printer.exam, printer.person, printer.assessment, *report::built_in_words(), *reference::built_in_edition(), printer.names, std::nullopt),
      *report::built_in_words()));
}

constexpr std::string_view mark = "an ADDENDUM of 2026-11-24 has: 118°";

}  // namespace

TEST_CASE("consent as it was signed says that what was added since may have withdrawn it, on the note") {
  const std::string words = "As it stood at the signature: an addendum below may say that it was withdrawn.";
  Printer stiff = corrected();
  CHECK(on_one_line(note_after(stiff)).find(words) != std::string::npos);
  stiff.exam.addenda.reset();
  CHECK(on_one_line(note_after(stiff)).find(words) == std::string::npos);
}

TEST_CASE("what an addendum has otherwise stands on the note beside every value that was signed, at its head, and where it was judged") {
  const std::string page = note_after(corrected());
  CHECK(has(head(page), "AFTER THE SIGNATURE: 2 addenda were written, the last on 2026-11-24; one is a CORRECTION. Read \"Added after the signature\""));
  for (const std::string title : {"Found out of the ordinary", "Findings", "Within the error", "Compared with"}) {
    CAPTURE(title);
    CHECK(has(section(page, title), mark));
  }
  CHECK(has(section(page, "Compared with"), "Judged AS SIGNED; since then an addendum has another value of: Knee flexion, passive, RIGHT 98°"));
  const std::string added = section(page, "Added after the signature");
  CHECK(has(added, "CORRECTION (an addendum), 2026-11-24 11:05 UTC+03:00, \u2068Ines Invented\u2069, because: \u2068read off the wrong end\u2069"));
  CHECK(has(added, "Addendum, 2026-11-24 12:05 UTC+03:00"));
  CHECK(has(added, "Knee flexion, passive, RIGHT: 118° (signed: 98°)"));
  for (const std::string& word : forbidden_in(added)) {
    FAIL_CHECK(word);
  }
  // What is said again as it was signed is no other value.
  Printer same("stiff");
  model::Addendum again = addendum_of(same, model::AddendumKind::findings, "measured again");
  again.findings = std::vector{angle_of("knee.flexion_passive", Side::right, 98)};
  same.exam.addenda = std::vector{again};
  CHECK(!has(on_one_line(note_after(same)), "has: 98°"));
  CHECK(!has(on_one_line(note_after(Printer("stiff"))), "AFTER THE SIGNATURE"));
}

TEST_CASE("C18: a letter of any length tells what was added after the signature, right after its question, and marks the value that was signed; a sealed one does not") {
  for (int shortened = 0; shortened <= report::letter_shortest; ++shortened) {
    CAPTURE(shortened);
    const std::string letter = letter_after(corrected(), shortened);
    CHECK(has(letter, "AFTER THE SIGNATURE: 2 addenda were written"));
    const auto question = letter.find("What next?");
    const auto added = letter.find("Added after the signature ---");
    const auto soon = letter.find("How soon, and why");
    REQUIRE(added != std::string::npos);
    CHECK(question < added);
    CHECK(added < soon);
    CHECK(has(letter, "\u2068Right knee flexion is 118, not 98.\u2069"));
    CHECK(has(letter.substr(soon), mark));
  }
  CHECK(!has(letter_after(corrected(), 0, true), "118"));
  CHECK(!has(letter_after(corrected(), 0, true), "AFTER THE SIGNATURE"));
}

TEST_CASE("C18: a value of the other side that an addendum has otherwise bears its mark beside the value that is read against it") {
  Printer stiff("stiff");
  model::Addendum added = addendum_of(stiff, model::AddendumKind::findings, "as the paper sheet has it");
  added.findings = std::vector{angle_of("knee.flexion_passive", Side::left, 138)};
  stiff.exam.addenda = std::vector{added};
  CHECK(has(letter_after(stiff, 0), "(LEFT: 128°, long goniometer, supine, an ADDENDUM of 2026-11-24 has: 138°)"));
}

TEST_CASE("what an addendum holds of a side that the signature left open is told where the gap is") {
  Printer stiff("stiff");
  model::Addendum added = addendum_of(stiff, model::AddendumKind::findings, "looked at afterwards");
  model::Observation squat;
  squat.item = {"knee.squat"};
  squat.side = Side::right;
  squat.value = model::NotDone{model::WhyNot::declined, std::nullopt};
  added.findings = std::vector{squat};
  stiff.exam.addenda = std::vector{added};
  CHECK(has(section(note_after(stiff), "Not done, with the reason"), "an ADDENDUM of 2026-11-24 has: declined"));
}

TEST_CASE("C17: what protects a person stands on no page through an addendum either, nor does one that holds nothing else") {
  Printer stiff("stiff");
  model::Addendum apart = addendum_of(stiff, model::AddendumKind::findings, "asked alone");
  model::Observation afraid;
  afraid.item = {"history.hurt_or_afraid"};
  afraid.side = Side::midline;
  afraid.value = model::Answer{model::AnswerWord::yes};
  apart.findings = std::vector{afraid};
  stiff.exam.addenda = std::vector{apart};
  const std::string label = report::built_in_words()->say("msg.item.history_hurt_or_afraid.short");
  for (const auto note : {report::ProtectedNote::absent, report::ProtectedNote::mentioned}) {
    stiff.names.protected_note = note;
    for (const std::string& page : {on_one_line(note_after(stiff)), letter_after(stiff, 0), transfer_after(stiff)}) {
      CHECK(!has(page, label));
      CHECK(!has(page, "asked alone"));
      CHECK(!has(page, "AFTER THE SIGNATURE"));
    }
  }
  CHECK(has(on_one_line(note_after(stiff)), "See protected note"));
  stiff.names.protected_note = report::ProtectedNote::shown;
  CHECK(has(section(note_after(stiff), "Added after the signature"), label + ": yes"));
  CHECK(has(letter_after(stiff, 0, true), "Added 2026-11-24: " + label + ": yes"));
  // The transfer note is carried by hand, whoever asks for it.
  CHECK(!has(transfer_after(stiff), label));
}

TEST_CASE("C11: note and letter tell that a transfer note was written and what it holds: what thins the blood, food, the last look at vessels and nerves, the next one") {
  Printer hip("hip");
  CHECK(!has(on_one_line(note_after(hip)), "By the transfer note"));
  model::Transferred stopped;
  stopped.at = {hip.exam.examined_at->ms + 1'800'000};
  stopped.by = hip.exam.examiner;
  stopped.set.to = wire::Name{"district hospital (invented)"};
  stopped.set.blood_thinners = wire::Remark{"warfarin, dose not known"};
  stopped.set.last_meal = wire::Remark{"tea at 06:00, nothing since"};
  stopped.set.vessel_check = model::LastCheck{wire::Remark{"pulse felt, foot warm"}, model::Instant{hip.exam.examined_at->ms + 900'000}};
  stopped.set.nerve_check = model::LastCheck{wire::Remark{"feels and moves the toes"}, std::nullopt};
  stopped.set.given = std::vector{model::GivenSoFar{wire::Remark{"pillow between the legs"}, std::nullopt}};
  stopped.set.called = std::vector{model::WasCalled{wire::Name{"surgeon on call"}, wire::Name{"000"}, std::nullopt, std::nullopt}};
  stopped.set.next_check = model::Instant{hip.exam.examined_at->ms + 3'600'000};
  hip.exam.transfer = std::vector{stopped};
  for (const std::string& page : {on_one_line(note_after(hip)), letter_after(hip, 0), letter_after(hip, report::letter_shortest)}) {
    CHECK(has(page, "A transfer note was written 2026-11-24 10:10 UTC+03:00 by \u2068Ines Invented\u2069, for \u2068district hospital (invented)\u2069."));
    for (const std::string part : {"Blood thinners: \u2068warfarin, dose not known\u2069", "Last meal or drink: \u2068tea at 06:00, nothing since\u2069",
                                   "Vessels: \u2068pulse felt, foot warm\u2069 (2026-11-24 09:55 UTC+03:00)", "Nerves: \u2068feels and moves the toes\u2069 (time not recorded)",
                                   "Given so far: \u2068pillow between the legs\u2069 (time not recorded)", "Called: \u2068surgeon on call\u2069, \u2068000\u2069, time not recorded",
                                   "Next check of vessels and nerves: 2026-11-24 10:40 UTC+03:00"}) {
      CAPTURE(part);
      CHECK(has(page, part));
    }
    CHECK(!has(page, "Tetanus"));  // nobody wrote of it, and the page that travels says so
  }
  CHECK(!has(letter_after(hip, 0, true), "warfarin"));
}

TEST_CASE("C11: a transfer note tells what was told, and apart from it what is planned and not recorded as told") {
  Printer hip("hip");
  model::PlanItem limit;
  limit.kind = model::PlanKind::limit;
  limit.text = wire::Remark{"Not to stand or walk"};
  hip.exam.plan->push_back(limit);
  hip.exam.transfer = std::vector{model::Transferred{}};
  const std::string page = transfer_after(hip);
  CHECK(has(page, "Of the plan, NOT RECORDED AS TOLD: limit: \u2068Not to stand or walk\u2069"));
  const auto told = page.find("Told, of the plan: ");
  REQUIRE(told != std::string::npos);
  CHECK(!has(page.substr(told, page.find(" - ", told) - told), "Not to stand or walk"));
  CHECK(has(page.substr(told), "Nothing on the leg"));
}

TEST_CASE("C18: a head that was struck, or may have been, stands with what thins the blood at the head of note and letter; a no does not") {
  Printer hip("hip");
  for (model::Finding& one : *hip.exam.findings) {
    if (one.item.text == "history.head_injury") {
      one.value = model::Answer{model::AnswerWord::unsure};
    }
  }
  const std::string together = "Of the person, as told: Takes blood thinners: yes; Head struck, or knocked out: unsure; Frail: yes";
  CHECK(has(head(note_after(hip)), together));
  CHECK(has(letter_after(hip, report::letter_shortest), together));
  CHECK(!has(head(note_after(Printer("hip"))), "Head struck"));
}

TEST_CASE("C19: a day of the plan that is later than the examiner's own letter asks for names the letter, and what was found where that asks for it too") {
  Printer infant("infant");  // what was found asks for two weeks
  const std::string by = infant.exam.examined_at->to_text().substr(0, 10);
  model::PlanItem film;
  film.kind = model::PlanKind::film;
  film.text = wire::Remark{"Hips"};
  film.by = model::date_of({infant.exam.examined_at->ms + 4 * 86'400'000LL}, 0);
  infant.exam.plan = std::vector{film};
  report::LetterAsk ask;
  ask.question = "What next?";
  ask.urgency = model::LetterUrgency::same_day;
  const auto printed = [&] { return on_one_line(report::sheet_text(report::letter_of_length(infant.view(), ask, 0), *report::built_in_words())); };
  CHECK(has(printed(), "LATER than the examiner's letter asks for: " + by + " holds"));
  CHECK(!has(printed(), "LATER than what was found"));
  Printer sole("sole");  // what was found asks for the same day
  ask.urgency = model::LetterUrgency::same_day;
  CHECK(has(on_one_line(report::sheet_text(report::letter_of_length(sole.view(), ask, 0), *report::built_in_words())),
            "LATER than what was found and the examiner's letter ask for: 2026-11-24 holds"));
  // The program reads no free text: that no reason is recorded it cannot say.
  CHECK(has(on_one_line(note_after(sole)), "a reason, if one was written, stands in the plan's own words."));
  CHECK(!has(on_one_line(note_after(sole)), "why is not recorded"));
}
