// What a reader of a page asked and did not find, or found twice and otherwise; an answer that reads both ways, a score that cannot be
// counted again, a no that counts for nothing and does not say why. Source: clinical safety, part A and requirements 2, 10, 11, 17, 18
// and 19; where nothing is named, a logic test of our own rule.
#include "core/report/after/transfer_note.hpp"
#include "core/report/brief/brief.hpp"
#include "core/report/home/home.hpp"
#include "core/report/letter/letter.hpp"
#include "core/report/letter/letter_parts.hpp"
#include "core/report/ordinary.hpp"
#include "core/report/page_judged.hpp"
#include "core/service/methods/exam/form.hpp"

#include "tests/unit/report/printer.hpp"

#include <algorithm>
#include <regex>

using namespace limbledger;
using namespace limbledger::report_test;

namespace {

using model::Side;

std::string letter_of_length(const Printer& printer, int shortened = 0, std::optional<model::LetterUrgency> urgency = std::nullopt) {
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
  CHECK(has(letter_of_length(Printer("sole"), report::letter_shortest), "0 of 3: Filament, pulp of the great toe / Filament, under the first metatarsal head"));
}

TEST_CASE("C18: one urgency leads a letter, the most urgent; the examiner's stands with its question, and a later date of the plan says that it is later") {
  const std::string sole = letter_of_length(Printer("sole"), 0, model::LetterUrgency::two_weeks);
  CHECK(has(sole, "How soon, and why ----------------- THE SAME DAY, 2026-11-24, by the program from the record:"));
  CHECK(has(sole, "By the examiner, for the question above: WITHIN TWO WEEKS."));
  CHECK(has(sole, "by 2026-11-25, LATER than what was found asks for: 2026-11-24 holds"));
  const std::string hip = letter_of_length(Printer("hip"), 0, model::LetterUrgency::same_day);
  CHECK(has(hip, "THE SAME DAY, 2026-11-24, by the examiner, and by the program from the record:"));
  CHECK(!has(hip, "LATER"));
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

TEST_CASE("an answer comes before what it says: \"a break of the skin (no)\" read as none") {
  const std::regex answer_last("[a-z0-9°)] \\((no|yes|positive|negative)\\)");
  for (const char* name : printed_people) {
    const Printer printer(name);
    CAPTURE(std::string(name));
    CHECK(!std::regex_search(on_one_line(note_page(printer)), answer_last));
    CHECK(!std::regex_search(letter_of_length(printer), answer_last));
  }
  const Printer sole("sole");
  CHECK(has(section(note_page(sole), "Findings"), "Skin of foot and ankle whole RIGHT no (a break of the skin) LEFT yes (no break of the skin)"));
  CHECK(has(letter_of_length(sole), "Reaches the own feet: no (does not reach the own feet)"));
}

TEST_CASE("the points for a clot can be counted again from note and letter, with what is not known and why there are two numbers") {
  const auto check_counted = [](const service::ExamDocument& read, const std::string& says) {
    const Printer clot(read);
    CHECK(has(section(note_page(clot), "Rules"), "Counted: " + says + "."));
    for (int shortened = 0; shortened < report::letter_shortest; ++shortened) {
      CHECK(has(letter_of_length(clot, shortened), "(counted: " + says + ")"));
    }
  };
  service::ExamDocument clot = document("clot");
  const std::string four = "a point each for in bed or operated on lately; calf thicker by 30 mm or more; pitting in this leg alone, or more; clot in a leg vein before";
  const std::string vein = "not known, and would add a point each: tender along the deep veins";
  CHECK(has(letter_of_length(Printer(clot)), ": 4 to 5 points, two or more"));  // four of them are named, and one is open
  check_counted(clot, four + "; " + vein);
  // WELLS2003: another cause at least as likely takes two points.
  drop(clot, "history.other_cause_as_likely");
  check_counted(clot, four + "; not known, and two points less if so: whether another cause is at least as probable; " + vein);
  add(clot, "history.other_cause_as_likely", Side::left, model::Answer{model::AnswerWord::yes});
  check_counted(clot, four + "; two points less, another cause is at least as probable; " + vein);
  drop(clot, "leg.calf_tender_vein");
  add(clot, "leg.calf_tender_vein", Side::left, model::Answer{model::AnswerWord::no});
  check_counted(clot, four + "; two points less, another cause is at least as probable");
  CHECK(!has(letter_of_length(Printer("football")), "(counted: "));
}

TEST_CASE("C2: a letter tells all that was done or said of an alert, as its note does, and why nothing was done") {
  Printer hip("hip");
  REQUIRE(hip.assessment.alerts.size() == 1);
  interpret::Alert& alert = hip.assessment.alerts.front();
  alert.state = interpret::AlertState::handled;
  alert.handled = handled_so("alert.hip_fx_old", "surgeon called", std::nullopt);
  alert.handled_also = std::vector{handled_so("alert.hip_fx_old", "car sent for", std::nullopt), handled_so("alert.fracture", std::nullopt, "no film here")};
  for (int shortened = 0; shortened <= report::letter_shortest; ++shortened) {
    const std::string letter = letter_of_length(hip, shortened);
    CHECK(has(letter, "DONE, written "));
    CHECK(has(letter, ": \u2068surgeon called\u2069"));
    CHECK(has(letter, "Done or said of it besides: \u2068car sent for\u2069"));
    CHECK(has(letter, "Done or said of what stands inside it (a broken leg): \u2068no film here\u2069"));
  }
  alert.handled = handled_so("alert.hip_fx_old", std::nullopt, "she went before");
  CHECK(has(letter_of_length(hip), ", because: \u2068she went before\u2069"));
}

TEST_CASE("C18: a letter says who examined, not only whom it is from") {
  CHECK(has(letter_of_length(Printer("hip")), "Examined by \u2068Ines Invented\u2069, 2026-11-24 09:40 UTC+03:00"));
}

TEST_CASE("a record that stays speaks of referral only where somebody is sent, on note as on letter") {
  CHECK(has(head(note_page(Printer("stiff"))), "not to be passed on (consent to send: no). Care of the person goes on."));
  CHECK(has(head(note_page(Printer("lock"))), "Care and referral of the person go on."));
  Printer sent("stiff");
  sent.exam.plan->push_back({std::nullopt, model::PlanKind::referral, {"Joint clinic"}, std::nullopt, std::nullopt, std::nullopt, std::nullopt});
  CHECK(has(head(note_page(sent)), "Care and referral of the person go on."));
}

TEST_CASE("of the other side what belongs to a joint that nobody looked at is said with the joint, once; what was carried over is no look") {
  const std::string football = section(note_page(Printer("football")), "Not examined");
  CHECK(has(football, "- hip: RIGHT; ankle joint: RIGHT (reason not recorded)"));
  CHECK(has(football, "of the minimum set, RIGHT (the other side): Kneecap tender"));
  CHECK(count_in(football, "Hip inward rotation") == 1);  // of the LEFT hip, all that was looked at
  CHECK(has(football, "hip LEFT: only Hip inward rotation"));
  for (const std::string& page : {section(note_page(Printer("lock")), "Not examined"), letter_of_length(Printer("lock"))}) {
    CHECK(has(page, "hip: RIGHT and LEFT"));
    CHECK(!has(page, "hip RIGHT: only"));
  }
  // Every item of the minimum set is named, or its joint on that side.
  std::size_t items = 0;
  for (const char* name : printed_people) {
    const Printer printer(name);
    const report::PageView view = printer.view();
    const std::string open = section(note_page(printer), "Not examined");
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
  const std::string note = on_one_line(note_page(Printer("football")));
  const std::string early = section(note_page(Printer("football")), "Within the error of measurement, and rules without a result");
  CHECK(has(early, "Not told whether inside or outside the published figures, because the error of measurement reaches past their edge"));
  for (const char* reading : {"Hip inward rotation, lying, hip straight, LEFT 38° toward internal rotation", "Knee extension, passive, LEFT 5° short of straight",
                              "Knee extension, passive, RIGHT 3° beyond straight"}) {
    CHECK_MESSAGE(has(early, reading), reading);
  }
  CHECK(count_in(note, "(28.8 to 47.2)") == 1);
  CHECK(has(section(note_page(Printer("football")), "Compared with published figures"), "(28.8 to 47.2)"));
  CHECK(has(early, "a lack of extension cannot be told from the other side (3° beyond straight; believed above 10)"));
}

TEST_CASE("C10: beside a finding of the other side, what a danger rests on has its own side too") {
  const std::string signs = section(note_page(Printer("football")), "Danger signs asked after");
  CHECK(has(signs, "a locked knee LEFT (Knee extension, passive, RIGHT: 3° beyond straight, long goniometer, supine; Knee extension, passive, LEFT: 5° short of straight"));
  CHECK(has(signs, "torn extensor tendons LEFT (Straight leg raise, by the person: "));  // of one side alone it stands with the danger
}

TEST_CASE("C17: a no about pain that is no answer says why where who spoke or the age is the reason, on note and letter") {
  const std::string no = "Pain beyond what the hurt explains, LEFT: no";
  const std::string because = ": no answer here, because ";
  const auto check_why = [&](const service::ExamDocument& read, const std::string& why) {
    const Printer printer(read);
    const std::string signs = section(note_page(printer), "Danger signs asked after");
    CHECK(has(signs, no));
    CHECK(has(signs, because + why + "."));
    for (int shortened = 0; shortened <= report::letter_shortest; ++shortened) {
      const std::string letter = letter_of_length(printer, shortened);
      CHECK(has(letter, no));
      CHECK(has(letter, because + why + "."));
    }
  };
  const Printer self("clot");
  CHECK(!has(on_one_line(note_page(self)), "no is no answer"));
  CHECK(!has(letter_of_length(self), "no is no answer"));
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
  CHECK(has(letter_of_length(Printer("infant")), says));
  CHECK(has(section(note_page(Printer("infant")), "Found out of the ordinary"), says));
}

TEST_CASE("C19: what the examiner wrote for the sheet stands as the examiner's words, which may speak of a third person") {
  for (const char* name : printed_people) {
    const std::string home = home_of(Printer(name));
    CHECK_MESSAGE(has(home, "What to do ---------- In your examiner's words: - "), name);
  }
  Printer silent("ankle");
  silent.exam.plan->clear();
  CHECK(!has(home_of(silent), "In your examiner's words"));
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
    CHECK_MESSAGE(has(section(note_page(Printer(name)), "Plan"), "which holds before the two weeks asked for. A referral is asked for below, by the program."), name);
  }
}

TEST_CASE("the invented people are consistent: days in their order, one side, and no old injury within the first weeks") {
  constexpr std::int64_t six_weeks_ms = std::int64_t{42} * 24 * 3'600'000;
  for (const char* name : printed_people) {
    const Printer printer(name);
    CAPTURE(std::string(name));
    const std::string day = printer.view().day()->to_text();
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

TEST_CASE("a step of the minimum set that was not done is named where the bands are missing, and a motion without its instrument is said to lie at no edge") {
  auto read = document("football");
  bool not_done = false, without = false;
  for (auto& finding : read.findings) {
    if (finding.item.text == "knee.lachman" && finding.side == model::Side::left) {
      finding.value = model::NotDone{model::WhyNot::pain, std::nullopt};
      not_done = true;
    }
    if (finding.item.text == "knee.extension_passive") {
      finding.instrument.reset();
      without = true;
    }
  }
  REQUIRE(not_done);
  REQUIRE(without);
  const std::string note = on_one_line(note_page(Printer(read)));
  CHECK(has(note, "Nothing is said in bands, because of the minimum set this was not done: Lachman test, LEFT."));
  CHECK_FALSE(has(note, "Nothing can be said"));
  const std::string early = section(note_page(Printer(read)), "Within the error of measurement, and rules without a result");
  const std::size_t edge = early.find("reaches past their edge");
  CHECK(has(early, "needs the instrument"));
  CHECK((edge == std::string::npos || early.find("Knee extension, passive", edge) == std::string::npos || early.find("Knee extension, passive", edge) > early.find("Rules without a result", edge)));
}
