// What a reader of the printed pages could not answer at once, each as a test: every danger and every part of the minimum set that is
// open, with the reason; no plain "no" beside what speaks for it; one urgency with its day on every page; allergies beside a drug; times
// with their offset. Source: clinical safety, part A and requirements 11, 14, 18 and 19; else a logic test of our own rule.
#include "core/report/after/transfer_note.hpp"
#include "core/report/brief/brief.hpp"
#include "core/report/home/home.hpp"
#include "core/report/letter/letter.hpp"
#include "core/report/letter/letter_parts.hpp"
#include "core/report/page_judged.hpp"

#include "tests/unit/report/printer.hpp"

#include <algorithm>
#include <regex>

using namespace limbledger;
using namespace limbledger::report_test;

namespace {

using model::Side;

std::string letter_read(const Printer& printer, int shortened, std::optional<model::LetterUrgency> urgency = std::nullopt) {
  report::LetterAsk ask;
  ask.question = "What next?";
  ask.urgency = urgency;
  return on_one_line(report::sheet_text(report::letter_of_length(printer.view(), ask, shortened), *report::built_in_words()));
}

std::string home_read(const Printer& printer) {
  return on_one_line(report::sheet_text(report::home_sheet(printer.view(), {{}, true}).sheet, *report::built_in_words()));
}

std::string note_read(const Printer& printer) {
  return report::exam_page(printer.exam, printer.person, printer.assessment, *report::built_in_words(), *reference::built_in_edition(), printer.names);
}

std::string transfer_read(const Printer& printer) {
  const report::Sheet sheet = report::transfer_sheet(printer.exam, printer.person, printer.assessment, *report::built_in_words(), *reference::built_in_edition(), printer.names, std::nullopt);
  return on_one_line(report::sheet_text(sheet, *report::built_in_words()));
}

std::string part_of(const std::string& text, const std::string& from, const std::string& to) {
  const std::size_t at = text.find(from);
  REQUIRE(at != std::string::npos);
  return text.substr(at, text.find(to, at) - at);
}

}  // namespace

TEST_CASE("C18: at every length a letter names each danger that was not asked after and each item of the minimum set that is open, or the joint that nobody looked at") {
  std::size_t dangers = 0;
  std::size_t items = 0;
  for (const char* name : printed_people) {
    const Printer printer(name);
    const report::PageView view = printer.view();
    for (int shortened = 0; shortened <= report::letter_shortest; ++shortened) {
      const std::string open = part_of(letter_read(printer, shortened), "Not examined ---", "Reply ---");
      CAPTURE(std::string(name));
      CAPTURE(shortened);
      for (const interpret::Flag& flag : printer.assessment.flags) {
        if (report::is_open_flag(view, flag) && !report::is_hidden_flag(view, flag)) {
          ++dangers;
          CHECK_MESSAGE(has(open, report::flag_label(view, flag.flag.text)), flag.flag.text);
        }
      }
      for (const interpret::MissingItem& missing : printer.assessment.missing) {
        ++items;
        const std::string region = reference::built_in_edition()->item(missing.item)->region.text;
        const bool joint = report::is_not_examined(view, region, missing.side) && (has(open, report::word_of(*report::built_in_words(), "joint", region) + ": ") || (region == "ankle" && has(open, "ankle joint: ")));
        CHECK_MESSAGE((joint || has(open, view.label(missing.item))), missing.item.text);
      }
      CHECK((printer.assessment.missing.empty() || has(open, "(reason not recorded)")));
    }
  }
  CHECK(dangers > 100);
  CHECK(items > 300);
}

TEST_CASE("no page says how many more of something there are in the place of what they are") {
  const std::regex count_alone("(and|;|,) [0-9]+ more");
  for (const char* name : printed_people) {
    Printer printer(name);
    CAPTURE(std::string(name));
    CHECK(!std::regex_search(on_one_line(note_read(printer)), count_alone));
    for (int shortened = 0; shortened <= report::letter_shortest; ++shortened) {
      CHECK(!std::regex_search(letter_read(printer, shortened), count_alone));
    }
    printer.exam.transfer = std::vector<model::Transferred>{model::Transferred{}};
    CHECK(!std::regex_search(transfer_read(printer), count_alone));
  }
  CHECK(has(on_one_line(note_read(Printer("sole"))), "Great toe extension, passive, foot hanging; and further steps of: "));
}

TEST_CASE("C18: a joint of which one thing was looked at does not read as examined") {
  for (int shortened = 0; shortened <= report::letter_shortest; ++shortened) {
    const std::string letter = part_of(letter_read(Printer("stiff"), shortened), "Not examined ---", "Reply ---");
    CHECK(has(letter, "hip RIGHT and LEFT: only Hip inward rotation, lying, hip straight"));
    CHECK(has(part_of(letter_read(Printer("football"), shortened), "Not examined ---", "Reply ---"), "ankle LEFT: only Moves foot and toes"));
  }
}

TEST_CASE("A: beside a weak pulse, that blood is cut off is no plain no: what speaks for it and what against stand in note and letter") {
  const Printer sole("sole");
  const std::string signs = section(note_read(sole), "Danger signs asked after");
  const std::string spoken = "though something speaks for it (signs of): blood flow to the foot cut off";
  CHECK(has(signs, spoken + " RIGHT (for it: Pulse on the back of the foot: grade 1 (Diminished); against it: "));
  const std::size_t plain = signs.find("Asked or looked at, answered no (signs of)");
  CHECK((plain == std::string::npos || !has(signs.substr(plain, signs.find("Not asked", plain) - plain), "blood flow")));
  for (int shortened = 0; shortened <= report::letter_shortest; ++shortened) {
    CHECK(has(letter_read(sole, shortened), spoken + " (for it: Pulse on the back of the foot: grade 1 (Diminished); against it: "));
  }
  service::ExamDocument strong = document("sole");
  for (model::Finding& finding : strong.findings) {
    if (auto* grade = std::get_if<model::Grade>(&finding.value); grade != nullptr && finding.item.text.starts_with("vessel.pulse_")) {
      grade->grade = {"2"};
    }
  }
  CHECK(has(section(note_read(Printer(strong)), "Danger signs asked after"), "Asked or looked at, answered no (signs of): blood flow to the foot cut off RIGHT ("));
}

TEST_CASE("C18: how somebody walks stands among what was found") {
  const std::string child = letter_read(Printer("child"), 0);
  CHECK(has(part_of(child, "Found, and how", "Given here"), "LEFT, OUT OF THE ORDINARY: Way of walking: Turned out"));
  CHECK(!has(part_of(child, "Can, and can no longer", "Found, and how"), "Way of walking"));
}

TEST_CASE("C18: what the person does not bear stands at the top of each page and beside each drug that is named") {
  Printer sole("sole");
  sole.exam.plan->push_back({std::nullopt, model::PlanKind::medicine, {"invented tablet"}, std::nullopt, std::nullopt, std::nullopt, std::nullopt});
  sole.exam.transfer = std::vector<model::Transferred>{model::Transferred{}};
  const std::string allergies = "ALLERGIES: \u2068penicillin, a rash all over\u2069";
  for (const std::string& page : {on_one_line(note_read(sole)), letter_read(sole, 0), letter_read(sole, report::letter_shortest), transfer_read(sole)}) {
    CHECK(page.find(allergies) < page.find("---"));
    CHECK(has(page, "tissue for the laboratory first where that is quick (" + allergies + ")"));
    CHECK(has(page, "\u2068invented tablet\u2069 (" + allergies + ")"));
  }
  CHECK(has(home_read(sole), "\u2068invented tablet\u2069 (" + allergies + ")"));
  CHECK(has(head(note_read(Printer("fall"))), "Allergies: not asked"));
  CHECK(has(head(note_read(Printer("hip"))), "Allergies: none known, as told"));
  // Of two answers that stand, from two tablets, no "none": whichever was written last.
  for (const bool yes_last : {true, false}) {
    service::ExamDocument hip = document("hip");
    const auto told = std::find_if(hip.findings.begin(), hip.findings.end(), [](const model::Finding& one) { return one.item.text == "history.allergy_known"; });
    REQUIRE(told != hip.findings.end());
    model::Finding other = *told;
    std::get<model::Answer>((yes_last ? other : *told).value).answer = model::AnswerWord::yes;
    hip.findings.push_back(other);
    CHECK_FALSE(has(note_read(Printer(hip)), "Allergies: none known"));
  }
}

TEST_CASE("one urgency with one day on note, letter and take-home sheet; that the examiner has not stated one is said at every length") {
  Printer sole("sole");
  for (int shortened = 0; shortened <= report::letter_shortest; ++shortened) {
    const std::string letter = letter_read(sole, shortened);
    CHECK(has(letter, "THE SAME DAY, 2026-11-24, by the program from the record:"));
    CHECK(has(letter, "The examiner has not stated how soon. THE SOONER HOLDS: 2026-11-24."));
  }
  CHECK(has(section(note_read(sole), "Plan"), "How soon: THE SAME DAY, 2026-11-24, by the program's alerts below."));
  const std::string home = home_read(sole);
  CHECK(has(home, "Seen on 2026-11-24. GO THE SAME DAY, 2026-11-24"));
  CHECK(!has(home, "2026-11-25"));  // the plan's day is later than what was found asks for
  CHECK(!has(home, "For the clinic"));  // it goes to who prints the sheet, as a remark
  // The plan's own day where it comes before the two weeks are over.
  CHECK(has(letter_read(Printer("infant"), 0), "BY 2026-12-01 AT THE LATEST, the day of the examiner's plan"));
  CHECK(has(home_read(Printer("infant")), "GO WITHIN TWO WEEKS: by 2026-12-01 at the latest."));
  // Of what nobody raised the examiner's letter says it.
  Printer football("football");
  CHECK(!has(home_read(football), "GO "));
  model::Letter letter;
  letter.urgency = model::LetterUrgency::two_weeks;
  football.exam.letters = std::vector<model::Letter>{letter};
  CHECK(has(home_read(football), "GO WITHIN TWO WEEKS: by 2026-12-08 at the latest."));
  letter.protected_ = true;
  letter.urgency = model::LetterUrgency::now;
  football.exam.letters = std::vector<model::Letter>{letter};
  CHECK(!has(home_read(football), "GO "));
}

TEST_CASE("C19: the sheet says what to do until seen, from what was raised, and what the examiner thinks with how sure") {
  const std::string child = home_read(Printer("child"));
  CHECK(has(child, "Until you are seen there: no weight on the leg at all: carried or wheeled; nothing to eat or drink."));
  CHECK(has(child, "The examiner thinks: LEFT side: \u2068Knee pain"));
  CHECK(has(child, "in the examiner's words: \u2068open\u2069"));
  CHECK(has(home_read(Printer("lock")), "nobody forces the knee straight; walk with crutches"));
  CHECK(!has(home_read(Printer("ankle")), "Until you are seen"));
  Printer silent("ankle");
  silent.exam.impression->certainty.reset();
  CHECK(has(home_read(silent), "The examiner thinks it may be (how sure is not said): "));
}

TEST_CASE("C11: every time of a transfer note stands with its date and its offset, and who wrote it and when") {
  Printer hip("hip");
  hip.exam.transfer = std::vector<model::Transferred>{model::Transferred{}};
  hip.exam.transfer->front().at = *hip.exam.examined_at;
  hip.exam.transfer->front().set.onset = wire::Remark{"yesterday evening"};
  std::string note = transfer_read(hip);
  CHECK(has(note, "\"today\", \"yesterday\" and bare hours below are the writer's words, of that time (injured 2026-11-23)."));
  CHECK(has(note, "pain-killer by mouth as the local protocol has it, at 09:30\u2069 (Allergies: none known, as told) (time not recorded)"));
  // Without what people wrote.
  note = std::regex_replace(note, std::regex("\u2068[^\u2069]*\u2069"), "");
  const std::regex time("[0-9]{2}:[0-9]{2}");
  const std::regex whole("[0-9]{4}-[0-9]{2}-[0-9]{2} [0-9]{2}:[0-9]{2} UTC[+][0-9]{2}:[0-9]{2}");
  const auto count = [&](const std::regex& one) { return std::distance(std::sregex_iterator(note.begin(), note.end(), one), std::sregex_iterator()); };
  CHECK(count(whole) >= 4);
  CHECK(count(time) == 2 * count(whole));  // the time and its offset
}

TEST_CASE("an instant is printed with the offset it was told in") {
  const model::Instant noon = *Printer("hip").exam.examined_at;  // 06:40 UTC
  CHECK(report::local_time(noon, 180) == "2026-11-24 09:40 UTC+03:00");
  CHECK(report::local_time(noon, -570) == "2026-11-23 21:10 UTC-09:30");
  CHECK(report::local_time(noon, 0) == "2026-11-24 06:40 UTC");
}

TEST_CASE("C14: a letter says whether it refers the person or asks, and what the person was told or not") {
  CHECK(has(part_of(letter_read(Printer("football"), 0), "Question ---", "How soon"), "REFERRAL: "));
  const std::string stiff = letter_read(Printer("stiff"), 0);
  CHECK(has(part_of(stiff, "Question ---", "How soon"), "no referral is recorded"));
  CHECK(has(stiff, "stick in the left hand\u2069 (told)"));
  CHECK(has(stiff, "cannot bear weight.\u2069 (NOT RECORDED AS TOLD)"));
  CHECK(has(section(note_read(Printer("football")), "Plan"), "limit: \u2068No football until reviewed\u2069; NOT RECORDED AS TOLD"));
}

TEST_CASE("a reason to come back reads as one in note and letter, answers no alert, and keeps its own words where they say it") {
  const Printer ankle("ankle");
  const std::string trigger = "COME BACK IF: \u2068You cannot stand on the foot tomorrow\u2069";
  CHECK(has(section(note_read(ankle), "What the person was told"), trigger + "; told"));
  CHECK(has(letter_read(ankle, 0), trigger + " (told; said back: yes)"));
  CHECK(!has(note_read(ankle), "safety net"));
  CHECK(has(section(note_read(Printer("stiff")), "What the person was told"), "WHEN TO COME BACK: \u2068Come back the same day"));
  Printer hip("hip");
  hip.exam.plan->push_back({std::nullopt, model::PlanKind::safety_net, {"The foot turns cold"}, std::nullopt, std::nullopt, std::nullopt, std::nullopt});
  REQUIRE(!hip.assessment.alerts.empty());
  hip.assessment.alerts.front().handled.reset();
  hip.assessment.alerts.front().state = interpret::AlertState::raised;
  CHECK(has(section(note_read(hip), "What the person was told"), "COME BACK IF: \u2068The foot turns cold\u2069"));
  // It answers no alert: beside one it is named where the plan holds nothing else.
  CHECK(has(section(note_read(hip), "Alerts, and what was done"), "The plan above holds: splint; medicine, as the examiner wrote it; referral; advice. A call or other action: not recorded"));
  hip.exam.plan->erase(hip.exam.plan->begin(), hip.exam.plan->end() - 1);
  CHECK(has(section(note_read(hip), "Alerts, and what was done"), "The plan above holds: a reason to come back. A call or other action"));
}

TEST_CASE("of who was in the room no page says that they were told") {
  const auto told = [](const Printer& printer) { return section(note_read(printer), "What the person was told"); };
  CHECK(has(told(Printer("child")), "None of them is recorded as told of what stands in this section."));
  CHECK(has(told(Printer("stiff")), "What stands as NOT RECORDED AS TOLD, none of them is recorded as told."));
  CHECK(has(told(Printer("sole")), "Which of them was told is not recorded."));
  for (const char* name : printed_people) {
    CHECK(!has(note_read(Printer(name)), "Nobody else is recorded as told"));
  }
}

TEST_CASE("a day of the plan before the two weeks end leads on note and letter and is the only day; the end itself needs no owner") {
  const std::string owned = "BY 2026-12-01 AT THE LATEST, the day of the examiner's plan, which holds before the two weeks asked for";
  for (const char* name : {"lock", "infant"}) {
    CHECK(has(letter_read(Printer(name), 0), owned + ", by the program from the record:"));
    CHECK(has(on_one_line(note_read(Printer(name))), "How soon: " + owned + ". A referral is asked for below, by the program."));
  }
  // No second day beside it: the end of the two weeks stands nowhere on these.
  CHECK(!has(letter_read(Printer("lock"), 0), "2026-12-08"));
  CHECK(!has(note_read(Printer("lock")), "2026-12-08"));
  const std::string football = letter_read(Printer("football"), 0, model::LetterUrgency::two_weeks);
  CHECK(has(football, "By the examiner: WITHIN TWO WEEKS, by 2026-12-08 at the latest."));
  CHECK(!has(football, "the day of the examiner's plan"));
}

TEST_CASE("what to do until seen stays beside what was done of an alert, on note and letter, until the person was received") {
  Printer clot("clot");
  REQUIRE(clot.assessment.alerts.size() == 1);
  interpret::Alert& alert = clot.assessment.alerts.front();
  model::AlertHandled done;
  done.alert = alert.alert;
  done.action = wire::Remark{"scan room called"};
  alert.handled = done;
  alert.state = interpret::AlertState::handled;
  const auto alerts = [&] { return section(note_read(clot), "Alerts, and what was done"); };
  CHECK(has(alerts(), ": \u2068scan room called\u2069"));
  CHECK(has(alerts(), "TO DO until seen, asked for by the program (by whom, and if told: not recorded but where said): no massage, no stockings, no pumps"));
  // Both girths stand in the record: nobody measures them again to find out.
  CHECK(has(alerts(), "Of this is recorded: measure both calves 10 cm below the tubercle (RIGHT: 351 mm; LEFT: 392 mm)."));
  CHECK(has(alerts(), "no massage, no stockings"));
  CHECK(has(letter_read(clot, 0), "TO DO until seen, asked for by the program (by whom, and if told: not recorded but where said): no massage, no stockings, no pumps"));
  CHECK(has(letter_read(clot, 0), "Of this is recorded: measure both calves 10 cm below the tubercle"));
  for (int shortened = 0; shortened <= report::letter_shortest; ++shortened) {
    CHECK(!has(letter_read(clot, shortened), "not recorded): measure both calves"));
  }
  for (model::PlanItem& item : *clot.exam.plan) {
    item.became = item.kind == model::PlanKind::referral ? std::optional(model::Became::arranged) : item.became;
  }
  CHECK(has(alerts(), "no massage, no stockings"));  // arranged is not received
  for (model::PlanItem& item : *clot.exam.plan) {
    item.became = item.kind == model::PlanKind::referral ? std::optional(model::Became::received) : item.became;
  }
  CHECK(!has(alerts(), "no massage, no stockings"));
}

TEST_CASE("that the plan is later than what was found stands in the line that says how soon, on note and letter; an urgency of the letter alone counts too") {
  const std::string later = "THE SOONER HOLDS: 2026-11-24. The examiner's plan names a later day (referral, RIGHT, by 2026-11-25); a reason, if one was written, stands in the plan's own words.";
  CHECK(has(section(note_read(Printer("sole")), "Plan"), "How soon: THE SAME DAY, 2026-11-24, by the program's alerts below. " + later));
  const std::string sole = letter_read(Printer("sole"), report::letter_shortest, model::LetterUrgency::same_day);
  CHECK(has(sole, "THE SAME DAY, 2026-11-24, by the examiner, and by the program from the record:"));
  CHECK(has(sole, later));
  const std::string football = letter_read(Printer("football"), 0, model::LetterUrgency::same_day);
  CHECK(has(football, "by 2026-12-08, LATER than the examiner's letter asks for: 2026-11-24 holds"));
  CHECK(!has(letter_read(Printer("football"), 0, model::LetterUrgency::two_weeks), "LATER"));
}

TEST_CASE("who says how soon is the same on note and letter: the alerts alone, or the examiner's letter with them; a letter names the gaps that its signature names") {
  Printer clot("clot");
  model::Letter letter;
  letter.urgency = model::LetterUrgency::same_day;
  clot.exam.letters = std::vector<model::Letter>{letter};
  CHECK(has(section(note_read(clot), "Plan"), "How soon: THE SAME DAY, 2026-11-24, by the examiner's letter, and by the program's alerts below."));
  clot.exam.letters->front().urgency = model::LetterUrgency::two_weeks;
  CHECK(has(section(note_read(clot), "Plan"), "How soon: THE SAME DAY, 2026-11-24, by the program's alerts below."));
  CHECK(!has(letter_read(clot, 0), "; incomplete: "));
  clot.exam.incomplete = std::vector<model::Word>{{"minimum_set"}};
  model::Signed by;
  by.by = *clot.exam.examiner;
  clot.exam.signed_ = by;
  CHECK(has(letter_read(clot, 0), "; incomplete: minimum set"));
}

TEST_CASE("C16: an alert that is kept apart is told by nothing else of a page, and what the person carries does not say that it can wait") {
  Printer ankle("ankle");
  ankle.names.protected_note = report::ProtectedNote::mentioned;
  REQUIRE(ankle.assessment.alerts.empty());
  const std::string calm = "Nothing was raised that asks for a ";
  CHECK(has(section(note_read(ankle), "Plan"), calm));
  interpret::Alert hidden;
  hidden.alert = {"alert.protected"};
  hidden.state = interpret::AlertState::raised;
  hidden.urgency = interpret::Urgency::same_day;
  hidden.message = {"msg.alert.see_protected_note"};
  hidden.audience = interpret::Audience::protected_;
  ankle.assessment.alerts.push_back(hidden);
  model::Letter letter;
  letter.urgency = model::LetterUrgency::routine;
  ankle.exam.letters = std::vector<model::Letter>{letter};
  model::Signed by;
  by.by = *ankle.exam.examiner;
  ankle.exam.signed_ = by;
  ankle.exam.incomplete = std::vector<model::Word>{{"alerts"}, {"minimum_set"}};
  CHECK(!has(note_read(ankle), calm));
  CHECK(has(section(note_read(ankle), "Plan"), "What stands in the protected note may ask for a sooner day."));
  for (const std::string& page : {letter_read(ankle, 0), home_read(ankle)}) {
    CHECK(!has(page, "alerts for which"));
    CHECK(!has(page, "protected"));
  }
  CHECK(has(letter_read(ankle, 0), "; incomplete: minimum set"));
  CHECK(!has(home_read(ankle), "can wait its turn"));
  CHECK(has(home_read(ankle), "Go on the day that your examiner told you."));
  ankle.assessment.alerts.clear();
  CHECK(has(home_read(ankle), "Go on the day that your examiner told you."));
}

TEST_CASE("a letter that may not be sent asks under a condition, and what is arranged is not arranged by it") {
  const std::string fall = letter_read(Printer("fall"), 0);
  CHECK(has(fall, "NOT TO BE SENT until the person has been asked"));
  CHECK(has(fall, "ONLY ONCE THE PERSON AGREES TO SENDING does this letter ask anything of its reader. FILM is arranged already"));
  CHECK(has(fall, "arranged, by the record; not by this letter"));
  CHECK(!has(fall, "Care and referral of the person go on"));
  CHECK(has(letter_read(Printer("lock"), 0), "IF THE PERSON HANDS THIS OVER, this goes with it: REFERRAL: the plan sends the person"));
  const std::string sole = letter_read(Printer("sole"), 0);
  CHECK(has(sole, "REFERRAL: the plan sends the person"));
  CHECK(!has(sole, "this goes with it"));
  // That nothing is arranged stands under no condition.
  Printer bare("fall");
  bare.exam.plan.reset();
  const std::string nothing = letter_read(bare, 0);
  CHECK(has(nothing, "NOTHING IS RECORDED AS ARRANGED"));
  CHECK(!has(nothing, "this goes with it"));
}

TEST_CASE("the noes that the complaint turns on stand in the letter: locking, giving way, the parts of the points for a clot") {
  const auto noes = [](const char* name) { return part_of(letter_read(Printer(name), 7), "Asked by name, answered no: ", " - "); };
  CHECK(has(noes("football"), "Locks, LEFT"));
  CHECK(has(noes("lock"), "Gives way, RIGHT"));
  const std::string clot = noes("clot");
  CHECK(has(clot, "Cancer under treatment or within six months"));
  CHECK(has(clot, "This leg paralysed, weak or lately in plaster, LEFT"));
  CHECK(has(clot, "Another cause fits at least as well as a clot, LEFT"));
}

TEST_CASE("a danger of which one part was answered no and that is open all the same says in note and letter what of it is not recorded") {
  const Printer football("football");
  const std::string letter = letter_read(football, 0);
  CHECK(has(part_of(letter, "Asked by name, answered no: ", " - "), "Knee went out of joint, LEFT"));
  const std::string open = part_of(letter, "Danger signs not asked after, or not all of it", "Reply ---");
  CHECK(has(open, "a knee out of joint, or its artery (not recorded: "));
  CHECK(has(open, "a kneecap out of place (not recorded: Height of the kneecap)"));
  const std::string signs = section(note_read(football), "Danger signs asked after");
  CHECK(has(signs, "a knee out of joint, or its artery LEFT (what is not recorded of it stands above, still to be asked)"));
  // Where nothing of it was asked, there is no part to name.
  service::ExamDocument unasked = document("football");
  drop(unasked, "history.patella_dislocated");
  CHECK(has(letter_read(Printer(unasked), 0), "a kneecap out of place; "));
}

TEST_CASE("what was tried and is not possible is no longer called not recorded under what can be done") {
  const std::string stiff = part_of(letter_read(Printer("stiff"), 0), "Can, and can no longer ---", "Found, and how");
  CHECK(has(stiff, "Squat, RIGHT: not done: unable"));
  CHECK(!has(stiff, "Not recorded"));
  service::ExamDocument untried = document("stiff");
  drop(untried, "knee.squat");
  CHECK(has(part_of(letter_read(Printer(untried), 0), "Can, and can no longer ---", "Found, and how"), "Not recorded"));
}

TEST_CASE("of a person by whom a reply cannot be filed, note and letter say which identifiers are missing; the letter carries the number of its exam") {
  const std::string none = "NOT RECORDED of the person: date of birth, number, home";
  Printer fall("fall");
  CHECK(has(head(note_read(fall)), none));
  CHECK(has(letter_read(fall, report::letter_shortest), none));
  CHECK(has(head(note_read(Printer("ankle"))), "Born 1994-06. NOT RECORDED of the person: number, home"));
  CHECK(!has(note_read(Printer("sole")), "NOT RECORDED of the person"));
  model::ExamId id;
  fall.exam.exam = id;
  CHECK(has(letter_read(fall, 0), "Exam: " + id.to_text()));
}

TEST_CASE("a letter says through whom the person is spoken to, and who consents for one who cannot alone") {
  const std::string child = letter_read(Printer("child"), report::letter_shortest);
  CHECK(has(child, "Interpreter: relative (\u2068grandmother\u2069). Capacity: not able to consent alone. Consent by \u2068grandmother; the boy agrees\u2069."));
  CHECK(!has(letter_read(Printer("sole"), 0), "Capacity: "));
}
