// What a second reader of the printed pages took for what it was not, each as a test: what was not done among what was measured, grounds
// without their value, a referral that nobody planned, a day without what is due by it, a follower who has no name. Source: clinical
// safety, part A and requirements 14 and 18; else a logic test of our own rule.
#include "core/report/brief/brief.hpp"
#include "core/report/letter/letter.hpp"
#include "core/report/ordinary.hpp"

#include "tests/unit/report/printer.hpp"

#include <algorithm>
#include <utility>

using namespace limbledger;
using namespace limbledger::report_test;

namespace {

using model::Side;

std::string letter_due(const Printer& printer, int shortened) {
  report::LetterAsk ask;
  ask.question = "What next?";
  return on_one_line(report::sheet_text(report::letter_of_length(printer.view(), ask, shortened), *report::built_in_words()));
}

std::string note_due(const Printer& printer) {
  return report::exam_page(printer.exam, printer.person, printer.assessment, *report::built_in_words(), *reference::built_in_edition(), printer.names);
}

std::string from_to(const std::string& text, const std::string& from, const std::string& to) {
  const std::size_t at = text.find(from);
  REQUIRE(at != std::string::npos);
  return text.substr(at, text.find(to, at) - at);
}

service::ExamDocument with_value(const char* name, const std::string& item, Side side, model::Value value) {
  service::ExamDocument one = document(name);
  drop(one, item);
  add(one, item, side, std::move(value));
  return one;
}

// Not among what was found, on the note and on a letter of any length, and among what was not done on both.
void check_not_done(const service::ExamDocument& one, const std::string& label) {
  const Printer printer(one);
  const std::string note = note_due(printer);
  CAPTURE(label);
  CHECK(!has(section(note, "Found out of the ordinary"), label));
  CHECK(!has(section(note, "Findings"), label));
  CHECK(has(section(note, "Not done, with the reason"), label));
  for (int shortened = 0; shortened <= report::letter_shortest; ++shortened) {
    const std::string letter = letter_due(printer, shortened);
    CHECK(!has(from_to(letter, "Found, and how ---", "Given here ---"), label));
    CHECK(has(from_to(letter, "Not examined ---", "Reply ---"), label));
  }
}

}  // namespace

TEST_CASE("C18: what was not done, whatever the reason, stands among what was not done and never among what was measured or described") {
  check_not_done(document("clot"), "Blood: D-dimer");
  CHECK(has(section(note_due(Printer("clot")), "Not done, with the reason"), "Blood: D-dimer: Not done (reason not recorded)"));
  for (const model::WhyNot why : {model::WhyNot::declined, model::WhyNot::pain, model::WhyNot::no_instrument, model::WhyNot::not_reliable, model::WhyNot::no_time, model::WhyNot::withheld}) {
    check_not_done(with_value("clot", "general.lab_d_dimer", Side::midline, model::NotDone{why, std::nullopt}), "Blood: D-dimer");
  }
  check_not_done(with_value("clot", "general.scan_leg_veins", Side::left, model::Choice{{"scan_not_done"}}), "Scan of the leg veins");
  check_not_done(document("sole"), "Ulcer, how deep");
  // What was done keeps its place.
  const Printer tested(with_value("clot", "general.lab_d_dimer", Side::midline, model::Choice{{"lab_positive"}}));
  CHECK(has(section(note_due(tested), "Found out of the ordinary"), "Blood: D-dimer: Positive"));
  CHECK(!has(section(note_due(tested), "Not done, with the reason"), "D-dimer"));
}

TEST_CASE("a choice of the catalogue whose words say that a thing was not done, declined or not to be seen is none of what was found") {
  const report::Words& words = *report::built_in_words();
  std::size_t undone = 0;
  for (const model::Item& item : reference::built_in_edition()->items()) {
    if (!item.choices || item.region.text == "history") {
      continue;  // a question is answered by whatever is told
    }
    for (const model::ChoiceId& choice : *item.choices) {
      const std::string said = words.say("msg.choice." + choice.text);
      const bool says_so = said == "Not done" || has(said, "declined") || said == "Cannot be seen" || said == "Not to be judged" ||
                           said == "Not possible in private" || has(said, "Left to those who receive") || said == "No shoes here";
      model::Finding finding;
      finding.item = item.item;
      finding.value = item.value == model::ValueKind::choices ? model::Value(model::Choices{{choice}}) : model::Value(model::Choice{choice});
      CHECK_MESSAGE(report::left_undone(finding) == says_so, choice.text);
      if (says_so) {
        ++undone;
        CHECK_MESSAGE(report::ordinary(*reference::built_in_edition(), finding) == report::Ordinary::described, choice.text);
      }
    }
  }
  CHECK(undone >= 8);
}

TEST_CASE("C18: what an alert rests on stands with its value in the letter, and what a rule counts as no is told at every length") {
  const Printer clot("clot");
  for (int shortened = 0; shortened <= report::letter_shortest; ++shortened) {
    CAPTURE(shortened);
    const std::string letter = letter_due(clot, shortened);
    CHECK(!has(letter, "values below"));
    const std::string rests = from_to(letter, "Rests on: ", " What next ---");
    if (shortened >= 4 && shortened < report::letter_shortest) {
      CHECK(has(rests, "In bed or operated on lately / Examiner suspects a clot / Clot in a leg vein before"));
      CHECK(has(rests, "yes: In bed or operated on lately"));
      CHECK(has(rests, "shin tubercle, RIGHT: 351 mm"));
    }
    const std::string noes = from_to(letter, "Asked by name, answered no: ", " - ");
    for (const char* no : {"Cancer under treatment or within six months", "This leg paralysed, weak or lately in plaster, LEFT", "Another cause fits at least as well as a clot, LEFT"}) {
      CHECK_MESSAGE(has(noes, no), no);
    }
    const std::string found = from_to(letter, "Found, and how ---", "Given here ---");
    CHECK(has(found, "Whole leg swollen"));
    CHECK(has(found, "New surface veins, not varicose"));
  }
  // As it is sent: one sheet.
  CHECK(report::letter_lines(report::letter_sheet(clot.view(), {})) <= report::letter_lines_max);
  // A no that no rule counts may still give way.
  CHECK(!has(letter_due(Printer("football"), report::letter_shortest), "Locks, LEFT"));
}

TEST_CASE("C14: what goes on without consent to send is what is planned, on note and letter; nobody is told to wait until seen there where nobody is sent") {
  Printer fall("fall");
  const auto heads = [&](const std::string& care) {
    CHECK_MESSAGE(has(letter_due(fall, 0), "(consent to send: not asked). " + care + " without it."), care);
    CHECK_MESSAGE(has(head(note_due(fall)), "until the person was asked. " + care + "."), care);
  };
  heads("Care of the person, and the film, go on");
  const std::string held = "Not advised until what was raised is settled: RIGHT: Turning on one leg, knee 20";
  CHECK(has(letter_due(fall, 0), held));
  CHECK(!has(letter_due(fall, 0), "until seen there"));
  fall.exam.plan->push_back({std::nullopt, model::PlanKind::referral, {"Knee clinic"}, std::nullopt, std::nullopt, std::nullopt, std::nullopt});
  heads("Care and referral of the person go on");
  CHECK(has(letter_due(fall, 0), "Not advised until seen there: RIGHT: Turning on one leg, knee 20"));
  fall.exam.plan->back().became = model::Became::declined;
  heads("Care of the person, and the film, go on");
  CHECK(has(letter_due(fall, 0), held));
  fall.exam.plan->clear();
  heads("Care of the person goes on");
  // Stopped for transfer, the person is sent whatever the plan holds.
  fall.exam.transfer = std::vector<model::Transferred>{model::Transferred{}};
  heads("Care and transfer of the person go on");
  CHECK(has(letter_due(fall, 0), "Not advised until seen there: RIGHT"));
  fall.exam.transfer.reset();
  fall.exam.consent->send = model::ConsentWord::withdrawn;
  CHECK(has(letter_due(fall, 0), "It belongs to the person: whoever is given it answers on it, gives it back, and asks before it is filed, copied or sent on. Care of the person goes on."));
  CHECK(has(head(note_due(fall)), "(consent to send: withdrawn). Care of the person goes on."));
}

TEST_CASE("C14: the day that leads by the plan stands with what is due by it, all of it") {
  Printer football("football");
  const auto soon = [&] { return from_to(section(note_due(football), "Plan"), "How soon: ", ". Nothing was raised"); };
  CHECK(soon() == "How soon: BY 2026-12-08 AT THE LATEST: referral, LEFT, by the examiner's plan");
  const auto planned = [&](model::PlanKind kind, const char* day) {
    model::PlanItem item;
    item.kind = kind;
    item.text = {"as said"};
    model::PartialDate by;
    REQUIRE(model::PartialDate::from_text(day, by).empty());
    item.by = by;
    football.exam.plan->push_back(item);
  };
  planned(model::PlanKind::review, "2026-12-08");
  CHECK(soon() == "How soon: BY 2026-12-08 AT THE LATEST: referral, LEFT; review, by the examiner's plan");
  planned(model::PlanKind::film, "2026-12-01");
  CHECK(soon() == "How soon: BY 2026-12-01 AT THE LATEST: film, by the examiner's plan");
  planned(model::PlanKind::review, "2027-01-05");
  CHECK(soon() == "How soon: BY 2026-12-01 AT THE LATEST: film, by the examiner's plan");
}

TEST_CASE("C14: who follows a referral until the child has been seen is named, or said to be not recorded, on note and letter") {
  Printer infant("infant");
  const std::string follows = "somebody of the clinic that refers follows the referral until the child has been seen (who: not recorded";
  for (const std::string& page : {on_one_line(note_due(infant)), letter_due(infant, 0), letter_due(infant, report::letter_shortest)}) {
    CHECK(has(page, follows + ")"));
    CHECK(!has(page, "somebody here"));
  }
  for (model::PlanItem& item : *infant.exam.plan) {
    if (item.kind == model::PlanKind::review) {
      item.who = wire::Name{"Ines Invented"};
    }
  }
  CHECK(has(on_one_line(note_due(infant)), follows + "; the review is by \u2068Ines Invented\u2069)"));
  CHECK(has(letter_due(infant, 0), follows + "; the review is by \u2068Ines Invented\u2069)"));
}
