// What people who had only the printed pages before them asked back: an answer that reads both ways, a score that cannot be counted
// again, a no that counts for nothing and does not say why, a thing said twice. Source: clinical safety, part A and requirements 2, 10,
// 18 and 19; where nothing is named, a logic test of our own rule.
#include "core/report/brief/brief.hpp"
#include "core/report/home/home.hpp"
#include "core/report/letter/letter.hpp"

#include "tests/unit/report/printer.hpp"

#include <algorithm>
#include <regex>

using namespace limbledger;
using namespace limbledger::report_test;

namespace {

using model::Side;

std::string cold_letter(const Printer& printer, int shortened = 0) {
  report::LetterAsk ask;
  ask.question = "What next?";
  return on_one_line(report::sheet_text(report::letter_of_length(printer.view(), ask, shortened), *report::built_in_words()));
}

std::string cold_home(const Printer& printer) {
  return on_one_line(report::sheet_text(report::home_sheet(printer.view(), {{}, true}).sheet, *report::built_in_words()));
}

std::string cold_note(const Printer& printer) {
  return report::exam_page(printer.exam, printer.person, printer.assessment, *report::built_in_words(), *reference::built_in_edition(), printer.names);
}

std::size_t count_in(const std::string& text, const std::string& part) {
  std::size_t count = 0;
  for (auto at = text.find(part); at != std::string::npos; at = text.find(part, at + 1)) {
    ++count;
  }
  return count;
}

model::AlertHandled handled_so(const std::string& alert, const std::optional<std::string>& action, const std::optional<std::string>& reason) {
  model::AlertHandled one;
  one.alert = {alert};
  one.side = Side::left;
  if (action) {
    one.action = wire::Remark{*action};
  }
  if (reason) {
    one.reason = wire::Remark{*reason};
  }
  return one;
}

}  // namespace

TEST_CASE("an answer comes before what it says: \"a break of the skin (no)\" read as none") {
  const std::regex answer_last("[a-z0-9°)] \\((no|yes|positive|negative)\\)");
  for (const char* name : printed_people) {
    const Printer printer(name);
    CAPTURE(std::string(name));
    CHECK(!std::regex_search(on_one_line(cold_note(printer)), answer_last));
    CHECK(!std::regex_search(cold_letter(printer), answer_last));
  }
  const Printer sole("sole");
  CHECK(has(section(cold_note(sole), "Findings"), "Skin of foot and ankle whole RIGHT no (a break of the skin) LEFT yes (no break of the skin)"));
  CHECK(has(cold_letter(sole), "Reaches the own feet: no (does not reach the own feet)"));
}

TEST_CASE("the points for a clot can be counted again from note and letter, with what is not known and why there are two numbers") {
  const auto check_counted = [](const service::ExamDocument& read, const std::string& says) {
    const Printer clot(read);
    CHECK(has(section(cold_note(clot), "Rules"), "Counted: " + says + "."));
    for (int shortened = 0; shortened < report::letter_shortest; ++shortened) {
      CHECK(has(cold_letter(clot, shortened), "(counted: " + says + ")"));
    }
  };
  service::ExamDocument clot = document("clot");
  const std::string four = "a point each for in bed or operated on lately; calf thicker by 30 mm or more; pitting in this leg alone, or more; clot in a leg vein before";
  const std::string vein = "not known, and would add a point each: tender along the deep veins";
  CHECK(has(cold_letter(Printer(clot)), ": 4 to 5 points, two or more"));  // four of them are named, and one is open
  check_counted(clot, four + "; " + vein);
  // WELLS2003: another cause at least as likely takes two points.
  drop(clot, "history.other_cause_as_likely");
  check_counted(clot, four + "; not known, and would take two points: whether another cause is at least as probable; " + vein);
  add(clot, "history.other_cause_as_likely", Side::left, model::Answer{model::AnswerWord::yes});
  check_counted(clot, four + "; two points less, another cause is at least as probable; " + vein);
  drop(clot, "leg.calf_tender_vein");
  add(clot, "leg.calf_tender_vein", Side::left, model::Answer{model::AnswerWord::no});
  check_counted(clot, four + "; two points less, another cause is at least as probable");
  CHECK(!has(cold_letter(Printer("football")), "(counted: "));
}

TEST_CASE("C2: a letter tells all that was done or said of an alert, as its note does, and why nothing was done") {
  Printer hip("hip");
  REQUIRE(hip.assessment.alerts.size() == 1);
  interpret::Alert& alert = hip.assessment.alerts.front();
  alert.state = interpret::AlertState::handled;
  alert.handled = handled_so("alert.hip_fx_old", "surgeon called", std::nullopt);
  alert.handled_also = std::vector{handled_so("alert.hip_fx_old", "car sent for", std::nullopt), handled_so("alert.fracture", std::nullopt, "no film here")};
  for (int shortened = 0; shortened <= report::letter_shortest; ++shortened) {
    const std::string letter = cold_letter(hip, shortened);
    CHECK(has(letter, "Done: \u2068surgeon called\u2069"));
    CHECK(has(letter, "Done or said of it besides: \u2068car sent for\u2069"));
    CHECK(has(letter, "Done or said of what stands inside it (a broken leg): \u2068no film here\u2069"));
  }
  alert.handled = handled_so("alert.hip_fx_old", std::nullopt, "she went before");
  CHECK(has(cold_letter(hip), "Nothing done, because: \u2068she went before\u2069"));
}

TEST_CASE("C18: a letter says who examined, not only whom it is from") {
  CHECK(has(cold_letter(Printer("hip")), "Examined by \u2068Ines Invented\u2069, 2026-11-24 09:40 UTC+03:00"));
}

TEST_CASE("a record that stays speaks of referral only where somebody is sent, on note as on letter") {
  CHECK(has(head(cold_note(Printer("stiff"))), "not to be passed on (consent to send: no). Care of the person goes on."));
  CHECK(has(head(cold_note(Printer("lock"))), "Care and referral of the person go on."));
  Printer sent("stiff");
  sent.exam.plan->push_back({std::nullopt, model::PlanKind::referral, {"Joint clinic"}, std::nullopt, std::nullopt, std::nullopt, std::nullopt});
  CHECK(has(head(cold_note(sent)), "Care and referral of the person go on."));
}

TEST_CASE("what belongs to a joint that nobody looked at is said with the joint, once; what was carried over is no look") {
  const std::string football = section(cold_note(Printer("football")), "Not examined");
  CHECK(has(football, "- hip: RIGHT; ankle: RIGHT (reason not recorded)"));
  CHECK(has(football, "of the minimum set, RIGHT (the other side): Kneecap tender"));
  CHECK(count_in(football, "Hip inward rotation") == 1);  // of the LEFT hip, all that was looked at
  CHECK(has(football, "hip LEFT: only Hip inward rotation"));
  for (const std::string& page : {section(cold_note(Printer("lock")), "Not examined"), cold_letter(Printer("lock"))}) {
    CHECK(has(page, "hip: RIGHT and LEFT"));
    CHECK(!has(page, "hip RIGHT: only"));
  }
  // Every item of the minimum set is named, or its joint on that side.
  std::size_t items = 0;
  for (const char* name : printed_people) {
    const Printer printer(name);
    const report::PageView view = printer.view();
    const std::string open = section(cold_note(printer), "Not examined");
    for (const interpret::MissingItem& missing : printer.assessment.missing) {
      ++items;
      const std::string region = reference::built_in_edition()->item(missing.item)->region.text;
      const bool joint = report::is_not_examined(view, region, missing.side) && has(open, report::word_of(*report::built_in_words(), "joint", region) + ": ");
      const bool other_part = has(open, view.label(missing.item)) || joint;
      const model::Sequence* sequence = view.edition.sequence(view.exam.complaint);
      const bool part_unseen = sequence->part && report::is_not_examined(view, sequence->part->text, missing.side);  // that side in one line
      CHECK_MESSAGE((other_part || part_unseen), name << " " << missing.item.text);
    }
  }
  CHECK(items > 40);
}

TEST_CASE("what lies at the edge of published figures is named in the first half of a note, and its span stands once, beside the figures") {
  const std::string note = on_one_line(cold_note(Printer("football")));
  const std::string early = section(cold_note(Printer("football")), "Within the error of measurement, and rules without a result");
  CHECK(has(early, "At the edge of the published figures within the error"));
  for (const char* reading : {"Hip inward rotation, lying, hip straight, LEFT 38° toward internal rotation", "Knee extension, passive, LEFT 5° short of straight",
                              "Knee extension, passive, RIGHT 3° beyond straight"}) {
    CHECK_MESSAGE(has(early, reading), reading);
  }
  CHECK(count_in(note, "(28.8 to 47.2)") == 1);
  CHECK(has(section(cold_note(Printer("football")), "Compared with published figures"), "(28.8 to 47.2)"));
  CHECK(has(early, "a lack of extension cannot be told from the other side (3° beyond straight; 10 needed)"));
}

TEST_CASE("C10: beside a finding of the other side, what a danger rests on has its own side too") {
  const std::string signs = section(cold_note(Printer("football")), "Danger signs asked after");
  CHECK(has(signs, "a locked knee LEFT (Knee extension, passive, RIGHT: 3° beyond straight, long goniometer, supine; Knee extension, passive, LEFT: 5° short of straight"));
  CHECK(has(signs, "torn extensor tendons LEFT (Straight leg raise, by the person: "));  // of one side alone it stands with the danger
}

TEST_CASE("C17: a no about pain that is no answer says why where who spoke or the age is the reason, on note and letter") {
  const std::string no = "Pain beyond what the hurt explains, LEFT: no: that no is no answer here, because ";
  const auto check_why = [&](const service::ExamDocument& read, const std::string& why) {
    const Printer printer(read);
    CHECK(has(section(cold_note(printer), "Danger signs asked after"), no + why + "."));
    for (int shortened = 0; shortened <= report::letter_shortest; ++shortened) {
      CHECK(has(cold_letter(printer, shortened), no + why + "."));
    }
  };
  const Printer self("clot");
  CHECK(!has(on_one_line(cold_note(self)), "no is no answer"));
  CHECK(!has(cold_letter(self), "no is no answer"));
  service::ExamDocument other = document("clot");
  other.exam.who_spoke->who.text = "neighbour";
  other.exam.who_spoke->reliable.reset();
  check_why(other, "the history is from \u2068neighbour\u2069, who is not recorded as reliable");
  service::ExamDocument child = document("clot");
  child.exam.interpreter = model::Interpreter{model::InterpreterKind::child, std::nullopt};
  check_why(child, "a child interpreted");
  service::ExamDocument unsure = document("clot");
  add(unsure, "general.answers_reliable", Side::midline, model::Answer{model::AnswerWord::unsure});
  check_why(unsure, "it is not settled whether the answers can be relied on");
  service::ExamDocument small = document("clot");
  REQUIRE(model::PartialDate::from_text("2024-12-01", *small.person->birth->date).empty());
  check_why(small, "the person is younger than 3 years, or may be");
}

TEST_CASE("C10: a finding that has no side says that it compares both") {
  const std::string says = "Folds of buttock and thigh uneven (infant): yes (folds of RIGHT and LEFT not alike; no side is part of the question)";
  CHECK(has(cold_letter(Printer("infant")), says));
  CHECK(has(section(cold_note(Printer("infant")), "Found out of the ordinary"), says));
}

TEST_CASE("C19: what the examiner wrote for the sheet stands as the examiner's words, which may speak of a third person") {
  for (const char* name : printed_people) {
    const std::string home = cold_home(Printer(name));
    CHECK_MESSAGE(has(home, "What to do ---------- In your examiner's words: - "), name);
  }
  Printer silent("ankle");
  silent.exam.plan->clear();
  CHECK(!has(cold_home(silent), "In your examiner's words"));
}

TEST_CASE("the lines to answer on are not broken in the middle of a blank") {
  for (const char* name : {"football", "stiff"}) {
    report::LetterAsk ask;
    ask.question = "What next?";
    const std::string letter = report::sheet_text(report::letter_sheet(Printer(name).view(), ask), *report::built_in_words());
    CHECK_MESSAGE(std::regex_search(letter, std::regex("\n(Seen on _+ Found _+ Advised|Answer _+ By _+ On) _+\n")), name);
  }
}

TEST_CASE("two weeks that a prompt asks for are not said to be because of alerts, of which there is none") {
  for (const char* name : {"lock", "infant"}) {
    CHECK_MESSAGE(has(section(cold_note(Printer(name)), "Plan"), "How soon: WITHIN TWO WEEKS, because of the referral that is asked for below. At the latest on 2026-12-01"), name);
  }
}

TEST_CASE("the invented people are consistent: days in their order, one side, and no old injury within the first weeks") {
  constexpr std::int64_t six_weeks_ms = std::int64_t{42} * 24 * 3'600'000;
  for (const char* name : printed_people) {
    const Printer printer(name);
    CAPTURE(std::string(name));
    const std::string day = printer.view().day().to_text();
    for (const model::PlanItem& item : *printer.exam.plan) {
      CHECK((!item.by || item.by->to_text() >= day));
      CHECK((!item.side || item.side == printer.exam.side));
    }
    CHECK((!printer.exam.impression->side || !printer.exam.side || printer.exam.impression->side == printer.exam.side));
    if (printer.exam.injured_on) {
      CHECK(printer.exam.injured_on->to_text() <= day);
      const std::string long_ago = model::date_of({printer.exam.examined_at->ms - six_weeks_ms}, 0).to_text();
      const bool lately = printer.exam.injured_on->to_text() > long_ago;
      const std::string& thought = printer.exam.impression->text.text;
      CHECK((!lately || !std::regex_search(thought, std::regex("\\bold\\b"))));
    }
  }
}
