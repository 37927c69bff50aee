// Pages that are printed on a later day than the day asked for, and what a cold reader of the printed pages misread. Source: clinical
// safety, part A and requirements 11, 18 and 19; where nothing is named, a logic test of our own rule.
#include "core/report/after/transfer_note.hpp"
#include "core/report/home/home.hpp"
#include "core/report/letter/letter.hpp"

#include "tests/unit/report/printer.hpp"

#include <algorithm>

using namespace limbledger;
using namespace limbledger::report_test;

namespace {

using model::Side;

std::string later_letter(const Printer& printer, int shortened = 0) {
  report::LetterAsk ask;
  ask.question = "What next?";
  return on_one_line(report::sheet_text(report::letter_of_length(printer.view(), ask, shortened), *report::built_in_words()));
}

std::string later_home(const Printer& printer) {
  return on_one_line(report::sheet_text(report::home_sheet(printer.view(), {{}, true}).sheet, *report::built_in_words()));
}

std::string later_note(const Printer& printer) {
  return on_one_line(report::exam_page(printer.exam, printer.person, printer.assessment, *report::built_in_words(), *reference::built_in_edition(), printer.names));
}

model::Instant days_after_exam(const Printer& printer, std::int64_t days) { return {printer.exam.examined_at->ms + days * 24 * 3'600'000}; }

}  // namespace

TEST_CASE("C18: a day that has passed when a page is printed is named as passed on letter, note and sheet, and not before") {
  Printer hip("hip");
  hip.names.now = days_after_exam(hip, 0);
  CHECK(has(later_letter(hip), "THE SAME DAY, 2026-11-24, by the program from the record:"));
  CHECK(has(later_home(hip), "GO THE SAME DAY, 2026-11-24"));
  hip.names.now = days_after_exam(hip, 2);
  const std::string passed = "That day, 2026-11-24, has passed: now at once, unless seen since.";
  CHECK(has(later_letter(hip), passed));
  CHECK(has(later_note(hip), passed));
  CHECK(has(later_home(hip), "GO AT ONCE, do not wait: the day for it, 2026-11-24, has passed."));
  CHECK(!has(later_home(hip), "GO THE SAME DAY"));
  // Where it was done, nobody is called for.
  for (model::PlanItem& item : *hip.exam.plan) {
    item.became = model::Became::done;
  }
  CHECK(has(later_note(hip), "That day, 2026-11-24, has passed; the plan says that it was done."));
  CHECK(!has(later_home(hip), "GO AT ONCE"));
  Printer infant("infant");
  infant.names.now = days_after_exam(infant, 5);
  CHECK(has(later_letter(infant), "BY 2026-12-01 AT THE LATEST"));
  infant.names.now = days_after_exam(infant, 30);
  CHECK(has(later_letter(infant), "The last day for it, 2026-12-01, has passed: now at once, unless seen since."));
}

TEST_CASE("a day of the plan alone is named as passed too, a month by its last day, and not once it is known what became of it") {
  Printer football("football");
  const std::string passed = "That day has passed, and what became of it is not recorded.";
  football.names.now = days_after_exam(football, 14);  // 2026-12-08, the day itself
  CHECK(!has(later_letter(football), passed));
  football.names.now = days_after_exam(football, 15);
  CHECK(has(later_letter(football), "BY 2026-12-08 AT THE LATEST: referral, LEFT, by the examiner's plan. " + passed));
  CHECK(has(later_note(football), passed));
  for (model::PlanItem& item : *football.exam.plan) {
    item.by = item.by ? std::optional(model::PartialDate{2026, 12, 0}) : item.by;
  }
  CHECK(!has(later_letter(football), passed));
  football.names.now = days_after_exam(football, 38);  // the new year
  CHECK(has(later_letter(football), passed));
  for (model::PlanItem& item : *football.exam.plan) {
    item.became = model::Became::answered;
  }
  CHECK(!has(later_letter(football), passed));
}

TEST_CASE("that the examiner has not stated how soon is said where the record has neither a day of the exam nor one of the plan") {
  Printer infant("infant");
  infant.exam.plan.reset();
  infant.exam.examined_at.reset();
  CHECK(has(later_letter(infant), "WITHIN TWO WEEKS, by the program from the record:"));
  CHECK(has(later_letter(infant), "The examiner has not stated how soon."));
}

TEST_CASE("C11: a transfer note that is written on a later day names the day of the examination beside hours that have none") {
  Printer hip("hip");
  model::Transferred stopped;
  stopped.at = days_after_exam(hip, 2);
  stopped.set.last_meal = wire::Remark{"tea at 06:00"};
  hip.exam.transfer = std::vector<model::Transferred>{stopped};
  hip.names.now = stopped.at;
  const auto written = [&] {
    return on_one_line(report::sheet_text(report::transfer_sheet(hip.exam, hip.person, hip.assessment, *report::built_in_words(), *reference::built_in_edition(), hip.names, std::nullopt),
                                          *report::built_in_words()));
  };
  const std::string late = written();
  CHECK(has(late, "That day, 2026-11-24, has passed: now at once, unless seen since."));
  CHECK(has(late, "tea at 06:00\u2069 (written on 2026-11-26; an hour or a day in these words may be of the examination, 2026-11-24: ask)"));
  CHECK(has(late, "at 09:30\u2069 (Allergies: none known, as told) (time not recorded) (of the examination of 2026-11-24)"));
  hip.exam.transfer->front().at = days_after_exam(hip, 0);
  CHECK(!has(written(), "(written on "));
}

TEST_CASE("\"only\" is said of a foot or a leg where nothing of it was recorded by its skin, vessels or nerves") {
  CHECK(!has(later_note(Printer("sole")), "foot RIGHT: only"));
  CHECK(!has(later_note(Printer("clot")), "LEFT: only Calf"));
  CHECK(has(later_note(Printer("hip")), "hip RIGHT: only How the leg lies"));
  Printer bare("sole");
  std::vector<model::Finding>& all = *bare.exam.findings;
  all.erase(std::remove_if(all.begin(), all.end(), [](const model::Finding& one) { return one.side == Side::left && one.item.text != "foot.deformity"; }), all.end());
  CHECK(has(later_note(bare), "foot LEFT: only Shape that presses"));
}

TEST_CASE("what is not advised now has that reason in the minimum set, and is not said to lack one") {
  const Printer child("child");
  const std::string note = later_note(child);
  // The roll too is withheld by the slip that was raised: none of the LEFT set lacks a reason.
  CHECK(!has(note, "of the minimum set, LEFT:"));
  CHECK(has(note, "Log roll of the leg, LEFT"));
  CHECK(has(note, "of the minimum set, not advised now by what was raised: "));
  CHECK(has(note, "Hip outward rotation, seated, LEFT"));
}

TEST_CASE("an infant's hip of which one side was tried names the other as not examined") {
  const std::string note = later_note(Printer("infant"));
  const auto from = note.find("of the minimum set, RIGHT (the other side):");
  REQUIRE(from != std::string::npos);
  const std::string right = note.substr(from, note.find("(reason not recorded)", from) - from);
  CHECK(has(right, "Lift and lead outward (Ortolani)"));
  CHECK(has(right, "Lead inward and push back (Barlow)"));
}

TEST_CASE("a danger that something speaks for and nothing against was not answered no") {
  const Printer lock("lock");
  for (const std::string& page : {later_note(lock), later_letter(lock)}) {
    CHECK(!has(page, "though something speaks for it (signs of): blood in the joint"));
    CHECK(has(page, "blood in the joint of one who bleeds more than others"));
  }
  CHECK(has(later_note(lock), "(for it: When the swelling came: Later; nothing recorded speaks against it)"));
}

TEST_CASE("C18: a letter files under nothing out of the ordinary no test of which the note says that it cannot be told from it") {
  for (int shortened = 0; shortened <= report::letter_shortest; ++shortened) {
    const std::string lock = later_letter(Printer("lock"), shortened);
    const auto ordinary = lock.find("RIGHT, nothing out of the ordinary:");
    if (ordinary != std::string::npos) {
      CHECK(!has(lock.substr(ordinary, lock.find(shortened == report::letter_shortest ? " \u2022 " : " - ", ordinary) - ordinary), "Lachman"));
    }
    CHECK(has(lock, "RIGHT, cannot be told from the test: Lachman test: grade 0"));
    CHECK(has(later_letter(Printer("infant"), shortened), "LEFT, cannot be told from the test: Lift and lead outward (Ortolani): negative (no clunk; a dislocated hip is not excluded)"));
  }
  CHECK(has(later_letter(Printer("sole")), "Foot hot, red and swollen: no (not hot with swelling or redness), beside the wound (Signs of infection at the wound: Redness, Warmth)"));
}

TEST_CASE("C18: a letter that asks for a written answer alone says of nobody that they are sent or seen") {
  const std::string stiff = later_letter(Printer("stiff"));
  CHECK(has(stiff, "A WRITTEN ANSWER is asked for; no referral is recorded"));
  CHECK(has(stiff, "Meanwhile, by the plan: "));
  CHECK(has(stiff, "Care of the person goes on."));
  CHECK(!has(stiff, "Until seen"));
  CHECK(!has(stiff, "Seen on"));
  CHECK(!has(stiff, "Care and referral"));
  CHECK(has(later_letter(Printer("hip")), "Seen on ____"));
  // Beside a danger a written answer is not enough: nobody has arranged anything yet.
  Printer hip("hip");
  hip.exam.plan.reset();
  CHECK(has(later_letter(hip), "NOTHING IS RECORDED AS ARRANGED"));
  CHECK(!has(later_letter(hip), "a written answer is asked for"));
}

TEST_CASE("the note says of an impression that no line weighs that this edition holds no figures, or too few findings, for it") {
  CHECK(has(later_note(Printer("stiff")), "Of what the impression names and no line here does, this edition holds no figures"));
  Printer none("stiff");
  none.exam.impression.reset();
  CHECK(!has(later_note(none), "Of what the impression names"));
}

TEST_CASE("C19: a day of the plan that is later than what was found asks for is flagged in note and letter; the person's sheet leaves it out and asks nobody to settle it") {
  const Printer sole("sole");
  CHECK(has(later_note(sole), "by 2026-11-25; LATER than what was found asks for: 2026-11-24 holds"));
  CHECK(has(later_letter(sole), "by 2026-11-25, LATER than what was found asks for: 2026-11-24 holds"));
  const report::HomeSheet home = report::home_sheet(sole.view(), {{}, true});
  CHECK(home.plan_later);
  CHECK(!has(later_home(sole), "Settle it"));
  CHECK(!has(later_home(sole), "2026-11-25"));
  CHECK_FALSE(report::home_sheet(Printer("hip").view(), {{}, true}).plan_later);
  // A month ends with its last day: "by November" is later than the 24th of it.
  Printer month("sole");
  for (model::PlanItem& item : *month.exam.plan) {
    if (item.by) {
      item.by = model::PartialDate{2026, 11, 0};
    }
  }
  CHECK(report::home_sheet(month.view(), {{}, true}).plan_later);
}

TEST_CASE("C19: reasons to come back that were written bare are introduced, and no advice stands that cannot fit") {
  CHECK(has(later_home(Printer("ankle")), "Your examiner: come back if: \u2068You cannot stand on the foot tomorrow\u2069"));
  CHECK(has(later_home(Printer("football")), "Your examiner: \u2068Come back the same day if"));
  CHECK(!has(later_home(Printer("lock")), "loosen"));
  CHECK(has(later_home(Printer("ankle")), "loosen what is bound"));
  CHECK(!has(later_home(Printer("child")), "walking gets harder"));
}
