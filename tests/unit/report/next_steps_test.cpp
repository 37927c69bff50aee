// What next and when, as note and letter tell it: each step with whom and by which day, when to come back, what became of a letter. A
// reader without the record answered this least often. Source: clinical safety, requirements 1, 11, 14 and 18; where nothing is named, a
// logic test of our own rule.
#include "core/report/brief/brief.hpp"
#include "core/report/home/home.hpp"
#include "core/report/letter/letter.hpp"
#include "core/report/letter/letter_parts.hpp"
#include "tests/unit/report/printer.hpp"

using namespace limbledger;
using namespace limbledger::report_test;

namespace {

std::string letter_next(const Printer& printer, int shortened = 0) {
  report::LetterAsk ask;
  ask.question = "What next?";
  const std::string letter = report::sheet_text(report::letter_of_length(printer.view(), ask, shortened), *report::built_in_words());
  return section(letter, "What next");
}

std::string note_next(const Printer& printer) {
  return report::exam_page(printer.exam, printer.person, printer.assessment, *report::built_in_words(), *reference::built_in_edition(), printer.names);
}

// An exam with one letter, of its referral where it has one.
Printer with_letter(const char* name) {
  Printer printer(name);
  model::Letter letter;
  letter.at = *printer.exam.examined_at;
  letter.to = wire::Name{"a reader"};
  letter.question = wire::Remark{"What next?"};
  for (model::PlanItem& item : *printer.exam.plan) {
    if (item.kind == model::PlanKind::referral) {
      item.plan_item = model::PlanItemId{};
      letter.plan_item = item.plan_item;
    }
  }
  printer.exam.letters = std::vector<model::Letter>{letter};
  return printer;
}

}  // namespace

TEST_CASE("C1: each step that sends the person on or calls them back says with whom and by which day, or that the record does not say, the same on note and letter") {
  std::size_t steps = 0;
  for (const char* name : printed_people) {
    const Printer printer(name);
    const std::string plan = section(note_next(printer), "Plan");
    for (int shortened = 0; shortened <= report::letter_shortest; ++shortened) {
      const std::string next = letter_next(printer, shortened);
      for (const model::PlanItem& item : *printer.exam.plan) {
        if (item.kind != model::PlanKind::referral && item.kind != model::PlanKind::film && item.kind != model::PlanKind::review) {
          continue;
        }
        ++steps;
        const std::string whom = item.who ? "\u2068" + item.who->text + "\u2069" : std::string("by whom: not recorded");
        REQUIRE(item.by);
        CHECK_MESSAGE(has(plan, item.text.text + "\u2069; " + whom + "; by " + item.by->to_text()), name);
        CHECK_MESSAGE(has(next, item.text.text + "\u2069, " + whom + ", by " + item.by->to_text()), name);
      }
    }
  }
  CHECK(steps > 80);
  Printer bare("infant");
  for (model::PlanItem& item : *bare.exam.plan) {
    item.by.reset();
  }
  CHECK(has(section(note_next(bare), "Plan"), "district hospital (invented)\u2069; by which day: not recorded"));
  CHECK(has(letter_next(bare), "both hips again\u2069, by whom and by which day: not recorded"));
  // What is over asks for nobody any more.
  for (model::PlanItem& item : *bare.exam.plan) {
    item.became = model::Became::done;
  }
  CHECK(!has(section(note_next(bare), "Plan"), "not recorded"));
}

TEST_CASE("C18: note and letter say when to come back, or that it is not recorded; one that was declined is none") {
  const std::string none = "WHEN TO COME BACK: not recorded.";
  std::size_t without = 0;
  for (const char* name : printed_people) {
    Printer printer(name);
    const auto& plan = *printer.exam.plan;
    const bool named = std::any_of(plan.begin(), plan.end(), [](const model::PlanItem& item) { return item.kind == model::PlanKind::safety_net; });
    without += named ? 0U : 1U;
    CHECK_MESSAGE(has(section(note_next(printer), "What the person was told, and when to come back"), none) == !named, name);
    for (int shortened = 0; shortened <= report::letter_shortest; ++shortened) {
      CHECK_MESSAGE(has(letter_next(printer, shortened), none) == !named, name);
    }
  }
  CHECK(without == 5);
  Printer declined("football");
  for (model::PlanItem& item : *declined.exam.plan) {
    item.became = model::Became::declined;
  }
  CHECK(has(note_next(declined), none));
  CHECK(has(letter_next(declined), none));
}

TEST_CASE("a letter leads with what was decided, and a note says where what is to be done until seen stands") {
  for (const char* name : printed_people) {
    const Printer printer(name);
    CHECK_MESSAGE(has(letter_next(printer), "What next --------- Decided: "), name);
    const bool raised = report::how_soon(printer.view()).found;
    CHECK_MESSAGE(has(section(note_next(printer), "Plan"), "TO DO until seen: see \"Alerts, and what was done\".") == raised, name);
    CHECK_MESSAGE(has(section(note_next(printer), "Alerts, and what was done"), "TO DO until seen, asked for by the program") == raised, name);
  }
}

TEST_CASE("C14: a letter that was made is not called sent: what became of it is what the record of its referral says") {
  const auto letters = [](const Printer& printer) { return section(note_next(printer), "Letters made"); };
  CHECK(has(letters(with_letter("football")), "made 2026-11-24 09:15 UTC+03:00, addressed to \u2068a reader\u2069: \u2068What next?\u2069; not recorded as sent or handed over"));
  CHECK(has(letters(with_letter("stiff")), "FOR THE PERSON'S OWN HAND; not recorded as handed over"));
  CHECK(has(letters(with_letter("lock")), "FOR THE PERSON'S OWN HAND; not recorded as handed over"));
  CHECK(has(letters(with_letter("fall")), "NOT TO BE SENT until the person was asked"));
  Printer football = with_letter("football");
  const auto becomes = [&](model::Became became) {
    for (model::PlanItem& item : *football.exam.plan) {
      item.became = item.kind == model::PlanKind::referral ? std::optional(became) : item.became;
    }
    return letters(football);
  };
  const std::pair<model::Became, std::string> all[]{{model::Became::sent, "of the letter: sent"}, {model::Became::answered, "of the letter: answered"}, {model::Became::lost, "of the letter: lost"}};
  for (const auto& one : all) {
    CHECK_MESSAGE(has(becomes(one.first), one.second), one.second);
    CHECK_MESSAGE(!has(becomes(one.first), "not recorded as sent"), one.second);
  }
  CHECK(has(becomes(model::Became::written), "not recorded as sent or handed over"));
  // What became of the referral is nothing of a letter that was not written for it.
  football.exam.letters->front().plan_item.reset();
  CHECK(has(becomes(model::Became::sent), "not recorded as sent or handed over"));
}

TEST_CASE("the summary gives the end feel beside a motion that it tells apart, and names what it does not sum up") {
  const std::string lock = section(note_next(Printer("lock")), "Found out of the ordinary");
  CHECK(has(lock, "Knee extension, passive 15° short of straight, end feel springy block: "));
  const std::string stiff = section(note_next(Printer("stiff")), "Found out of the ordinary");
  CHECK(has(stiff, "12° short of straight, end feel bone to bone: "));
  CHECK(has(stiff, "Thigh girth, 10 cm above the kneecap 415 mm"));
  CHECK(has(stiff, "whether ordinary is not said here): Hip inward rotation, lying, hip straight: 28° toward internal rotation"));
  CHECK(has(section(note_next(Printer("fall")), "Found out of the ordinary"), "Gap below the kneecap: unsure"));
  const std::string clot = section(note_next(Printer("clot")), "Found out of the ordinary");
  CHECK(has(clot, "RIGHT: nothing out of the ordinary among what was examined"));
}

TEST_CASE("what is not planned is named on note and letter: a reader looks for no referral and no review that nobody wrote") {
  const auto both = [](const char* name, const std::string& says) {
    const Printer printer(name);
    CHECK_MESSAGE(has(section(note_next(printer), "Plan"), says), name);
    for (int shortened = 0; shortened <= report::letter_shortest; ++shortened) {
      CHECK_MESSAGE(has(letter_next(printer, shortened), says), name);
    }
  };
  both("fall", "Not recorded as planned: referral, review here.");
  both("football", "Not recorded as planned: review here.");
  both("ankle", "Not recorded as planned: referral.");
  CHECK(!has(section(note_next(Printer("infant")), "Plan"), "Not recorded as planned"));
  // One that was declined is not planned.
  Printer infant("infant");
  for (model::PlanItem& item : *infant.exam.plan) {
    item.became = model::Became::declined;
  }
  CHECK(has(section(note_next(infant), "Plan"), "Not recorded as planned: referral, review here."));
}

TEST_CASE("the day of the plan leads where nothing else says how soon; without one that is said too") {
  CHECK(has(section(note_next(Printer("football")), "Plan"), "How soon: BY 2026-12-08 AT THE LATEST: referral, LEFT, by the examiner's plan. Nothing was raised that asks for a sooner day."));
  CHECK(has(section(note_next(Printer("stiff")), "Plan"), "How soon: BY 2027-02-23 AT THE LATEST: review, RIGHT, by the examiner's plan. "));
  Printer silent("stiff");
  for (model::PlanItem& item : *silent.exam.plan) {
    item.became = model::Became::done;  // a day that is over is not how soon
  }
  CHECK(has(section(note_next(silent), "Plan"), "How soon: not recorded. Nothing was raised that asks for a day."));
  silent.exam.plan.reset();
  CHECK(has(section(note_next(silent), "Plan"), "How soon: not recorded. Nothing was raised that asks for a day."));
}

TEST_CASE("a letter says how much of what was told was said back, and that a film is arranged already") {
  CHECK(has(letter_next(Printer("sole")), "look at both soles each evening\u2069 (told; said back: partly)"));
  CHECK(has(letter_next(Printer("ankle")), "tomorrow\u2069 (told; said back: yes)"));
  CHECK(has(letter_next(Printer("stiff")), "stick in the left hand\u2069 (told)"));
  const auto question = [](const Printer& printer) {
    report::LetterAsk ask;
    ask.question = "Broken?";
    return section(report::sheet_text(report::letter_of_length(printer.view(), ask, 0), *report::built_in_words()), "Question");
  };
  Printer fall("fall");
  CHECK(has(question(fall), "FILM is arranged already, by the record (see Decided)"));
  for (model::PlanItem& item : *fall.exam.plan) {
    item.became.reset();
  }
  CHECK(has(question(fall), "FILM asked for; a referral is not recorded"));
}

TEST_CASE("what was raised stands with the impression, and what has no alert of its own is named in the letter") {
  const auto impression = [](const char* name) { return section(note_next(Printer(name)), "Examiner's impression"); };
  CHECK(has(impression("child"), "RAISED beside the impression (signs of): a slipped upper femoral epiphysis (growing hip) LEFT; a limp of a child that nothing explains; acted on until settled"));
  CHECK(has(impression("lock"), "a locked knee RIGHT; acted on until settled"));
  CHECK(!has(impression("football"), "RAISED"));
  for (int shortened = 0; shortened <= report::letter_shortest; ++shortened) {
    report::LetterAsk ask;
    ask.question = "What next?";
    const auto found = [&](const char* name) { return section(report::sheet_text(report::letter_of_length(Printer(name).view(), ask, shortened), *report::built_in_words()), "Found, and how"); };
    CHECK(has(found("child"), "Raised besides (signs of): a limp of a child that nothing explains."));
    CHECK(!has(found("lock"), "Raised besides"));
    CHECK(!has(found("clot"), "Raised besides"));
  }
}

TEST_CASE("a note says that no medicine was asked after, names the items of the other side that no joint holds, and what a test leaves open") {
  CHECK(has(head(note_next(Printer("child"))), "Allergies: not asked. Medicines: not asked."));
  CHECK(!has(head(note_next(Printer("clot"))), "Medicines: not asked"));
  CHECK(has(section(note_next(Printer("ankle")), "Not examined"), "of the minimum set, LEFT (the other side): "));
  CHECK(has(section(note_next(Printer("infant")), "Found out of the ordinary"), "cannot be told from the test: Lift and lead outward (Ortolani): negative (no clunk; a dislocated hip is not excluded)"));
  CHECK(has(section(note_next(Printer("lock")), "Found out of the ordinary"), "cannot be told from the test: Lachman test: grade 0"));
  CHECK(!has(section(note_next(Printer("football")), "Found out of the ordinary"), "cannot be told from the test"));
}

TEST_CASE("an answer taken over from an earlier exam is not one that was asked today, and a pain at night stands with what takes the alarm out of it") {
  const auto found = [](const char* name) {
    report::LetterAsk ask;
    ask.question = "What next?";
    return section(report::sheet_text(report::letter_of_length(Printer(name).view(), ask, 0), *report::built_in_words()), "Found, and how");
  };
  CHECK(has(found("ankle"), "Taken over from an earlier exam and not asked today, no: Diabetes."));
  CHECK(!has(found("ankle"), "Asked by name, answered no: Diabetes"));
  CHECK(has(found("stiff"), "Pain at night: yes"));
  CHECK(has(found("stiff"), "Night pain eases on turning: yes"));
  CHECK(has(found("stiff"), "Night pain is getting worse"));
}

TEST_CASE("what read both ways says one thing: instead or afterwards, one of several, lifts or cannot lift, a response to nothing") {
  const auto letter = [](const char* name) {
    report::LetterAsk ask;
    ask.question = "What next?";
    return on_one_line(report::sheet_text(report::letter_of_length(Printer(name).view(), ask, 0), *report::built_in_words()));
  };
  CHECK(has(letter("child"), "Nothing is recorded as given."));
  CHECK(!has(letter("child"), "Response to it"));
  CHECK(has(letter("hip"), "Response to it: not recorded."));
  CHECK(has(letter("infant"), "ultrasound (from six months of age a film of the pelvis instead)"));
  CHECK(has(letter("clot"), "scan the same day, its result within 4 hours where that can be had"));  // NICE NG158
  CHECK(has(letter("hip"), "Straight leg lift, a hand's width: positive (cannot lift it, or groin pain)"));
  CHECK(has(section(note_next(Printer("sole")), "Rules"), "Graver than what the classes sort (one or more of: an ulcer"));
  CHECK(has(head(note_next(Printer("fall"))), "Care of the person, and the film, go on."));
  CHECK(!has(head(note_next(Printer("fall"))), "Care and referral"));
}

TEST_CASE("where a sense is counted, the count stands with what it is out of") {
  const std::string sole = note_next(Printer("sole"));
  CHECK(has(section(sole, "Findings"), "Filament, under the fifth metatarsal head RIGHT 1 of 3, monofilament"));
  CHECK(has(section(sole, "Found out of the ordinary"), "Filament, pulp of the great toe: 0 of 3"));
  CHECK(has(section(sole, "Findings"), "Diabetes, for how many years: 14 "));
}

TEST_CASE("C21: how long a step takes is told in seconds below a minute, and in whole minutes above, never shorter than it takes") {
  const Printer printer("football");
  const auto said = [&](std::int64_t seconds) {
    interpret::Step step;
    step.step = {"knee.patella_tender"};
    step.side = model::Side::left;
    step.seconds.steps = seconds;
    return report::step_text(printer.view(), step, "msg.step.would_help_most");
  };
  CHECK(has(said(10), ", 10 s, because"));
  CHECK(has(said(60), ", 1 min, because"));
  CHECK(has(said(61), ", 2 min, because"));
}

TEST_CASE("that it can wait its turn takes back no day of the plan, nor what is said of the danger signs that are open") {
  Printer football = with_letter("football");
  football.exam.letters->front().urgency = model::LetterUrgency::routine;
  const std::string plan = section(note_next(football), "Plan");
  CHECK(has(plan, "How soon: BY 2026-12-08 AT THE LATEST: referral, LEFT, by the examiner's plan. By the examiner's letter it can wait its turn until then."));
  CHECK(has(plan, "Danger signs not asked after, or still open: "));
  report::LetterAsk ask;
  ask.question = "What next?";
  ask.urgency = model::LetterUrgency::routine;
  const std::string letter = section(report::sheet_text(report::letter_of_length(football.view(), ask, 0), *report::built_in_words()), "How soon, and why");
  CHECK(has(letter, "By the examiner: can wait its turn."));
  CHECK(has(letter, "BY 2026-12-08 AT THE LATEST: referral, LEFT, by the examiner's plan. Danger signs not asked after, or still open: "));
}

TEST_CASE("a month of the plan ends with its last day, after a day in it and before the next month") {
  Printer football("football");
  const auto date = [](std::int16_t year, std::uint8_t month, std::uint8_t day) { return model::PartialDate{year, month, day}; };
  for (model::PlanItem& item : *football.exam.plan) {
    item.by = item.kind == model::PlanKind::referral ? std::optional(date(2026, 12, 0)) : std::nullopt;
  }
  model::PlanItem review;
  review.kind = model::PlanKind::review;
  review.text.text = "Looked at again";
  review.by = date(2026, 12, 5);
  football.exam.plan->push_back(review);
  CHECK(has(section(note_next(football), "Plan"), "How soon: BY 2026-12-05 AT THE LATEST: review, by the examiner's plan."));
  football.exam.plan->back().by = date(2027, 1, 5);
  CHECK(has(section(note_next(football), "Plan"), "How soon: BY 2026-12 AT THE LATEST: referral, LEFT, by the examiner's plan."));
}

TEST_CASE("nobody is sent to what is done") {
  Printer football("football");
  const auto home = [&] { return report::sheet_text(report::home_sheet(football.view(), {}).sheet, *report::built_in_words()); };
  CHECK(has(home(), "Knee clinic"));
  for (model::PlanItem& item : *football.exam.plan) {
    item.became = item.kind == model::PlanKind::referral ? std::optional(model::Became::answered) : item.became;
  }
  CHECK(!has(home(), "Knee clinic"));
}
