// What readers of printed pages could not use: a name without its answer, one answer in two wordings, a danger that is open without a
// reason, words of a danger where none was raised. People are invented. Source: clinical safety, part A and requirement 18; the rest is a
// logic test of our own rule.
#include "core/report/brief/brief.hpp"
#include "core/report/letter/letter.hpp"

#include "tests/unit/report/printer.hpp"

using namespace limbledger;
using namespace limbledger::report_test;

namespace {

std::string plain_note(const Printer& printer) {
  return report::exam_page(printer.exam, printer.person, printer.assessment, *report::built_in_words(), *reference::built_in_edition(), printer.names);
}
std::string plain_letter(const Printer& printer, int shortened, bool bullets = false) {
  report::LetterAsk ask;
  ask.question = "What next?";
  return on_one_line(report::sheet_text(report::letter_of_length(printer.view(), ask, shortened, bullets), *report::built_in_words()));
}
std::string history_of(const std::string& letter) {
  const auto at = letter.find("History: ");
  REQUIRE(at != std::string::npos);
  return letter.substr(at, letter.find("Asked by name", at) - at);
}

}  // namespace

TEST_CASE("C18: the shortest letter gives each answer of the history, not its name alone, and the criteria by which a rule advises a film") {
  const std::string football = history_of(plain_letter(Printer("football"), report::letter_shortest));
  CHECK(has(football, "How it happened: Twist"));
  CHECK(has(football, "When the swelling came, LEFT: Within two hours"));
  CHECK(!has(football, "by name ("));
  service::ExamDocument twisted = document("football");
  for (model::Finding& one : twisted.findings) {
    if (one.item.text == "knee.fibular_head_tender") {
      one.value = model::Answer{model::AnswerWord::yes};
    }
  }
  CHECK(has(plain_letter(Printer(twisted), report::letter_shortest), "Film of the knee advised by the Ottawa knee rule (met: head of the fibula tender"));
}

TEST_CASE("a danger that a look alone speaks against is worded alike on note and letter") {
  const std::string words = "Not suggested by what was seen, and not excluded (signs of): ";
  for (const char* name : {"hip", "child", "infant"}) {
    const Printer printer(name);
    const report::PageView view = printer.view();
    const std::string signs = section(plain_note(printer), "Danger signs asked after");
    for (const interpret::Flag& flag : printer.assessment.flags) {
      if (report::printed_answer(view, flag) != interpret::FlagAnswer::asked_no || report::looks_alone(view, flag).empty() || !report::speaking_for(view, flag).empty() || report::is_hidden_flag(view, flag)) {
        continue;
      }
      const std::string label = report::flag_label(view, flag.flag.text);
      CAPTURE(label);
      const auto noes = signs.find("Asked or looked at, answered no (signs of)");
      const auto seen = signs.find(words);
      REQUIRE(seen != std::string::npos);
      CHECK(has(signs.substr(seen), label));
      CHECK((noes == std::string::npos || !has(signs.substr(noes, seen - noes), label)));
      CHECK(has(plain_letter(printer, 0), words));
    }
  }
}

TEST_CASE("what is asked for until seen does not say of one open sore that it is kept moist and dry") {
  const std::string sole = on_one_line(plain_note(Printer("sole")));
  if (has(sole, "moist dressing")) {
    CHECK(!has(sole, "; dry and covered, nothing cut away"));
  }
  const std::vector<model::MessageId> dry{{"msg.meanwhile.dry_and_covered"}};
  const Printer printer("sole");
  CHECK(report::until_seen(printer.view(), dry, model::Side::right).left.front() == "a dead part, where there is one: dry and covered; nothing cut away");
  CHECK(report::until_seen(Printer("stiff").view(), dry, model::Side::right).left.front() == "dry and covered, nothing cut away");
}

TEST_CASE("who says which holds stands beside what is asked for until seen, where the plan has a limit or a splint of its own") {
  const std::string who = "Where a limit or splint of the plan differs: the examiner says which holds.";
  Printer hip("hip");
  CHECK(has(section(plain_note(hip), "Plan"), who));
  CHECK(has(plain_letter(hip, report::letter_shortest), who));
  std::erase_if(*hip.exam.plan, [](const model::PlanItem& item) { return item.kind == model::PlanKind::splint || item.kind == model::PlanKind::limit; });
  CHECK(!has(section(plain_note(hip), "Plan"), who));
  CHECK(!has(plain_letter(hip, 0), who));
}

TEST_CASE("that a danger is acted on all the same is said where one was raised, and of lines without figures not that figures are not added up") {
  const std::string acted = "What was raised above as a danger is acted on all the same.";
  CHECK(!has(on_one_line(plain_note(Printer("ankle"))), acted));
  CHECK(has(section(plain_note(Printer("child")), "What the findings support"), acted));
  for (const char* name : printed_people) {
    const Printer printer(name);
    const std::string lines = section(plain_note(printer), "What the findings support");
    const auto& all = printer.assessment.hypotheses;
    const bool figures = std::any_of(all.begin(), all.end(), [](const interpret::Hypothesis& one) { return one.range.has_value(); });
    CHECK_MESSAGE((figures || !has(lines, "These figures")), name);
    for (const interpret::Hypothesis& one : all) {
      if (!one.used.empty()) {
        CHECK_MESSAGE(has(lines, " By: "), name);
      }
    }
  }
}

TEST_CASE("a comparison with last time that is not there is said not to be there; one who was moved on is not said to lack a reason to come back alone") {
  CHECK(has(section(plain_note(Printer("stiff")), "Compared with"), "With last time nothing is compared here: that says nothing of a change."));
  Printer hip("hip");
  hip.exam.transfer = std::vector{model::Transferred{}};
  CHECK(has(on_one_line(plain_note(hip)), "WHEN TO COME BACK: not recorded; stopped for transfer."));
  CHECK(has(plain_letter(hip, 0), "WHEN TO COME BACK: not recorded; stopped for transfer."));
}

TEST_CASE("a letter that does not fit keeps a line for each of what was found before it runs all together") {
  Printer football("football");
  for (int more = 0; more < 6; ++more) {
    model::PlanItem advice;
    advice.kind = model::PlanKind::advice;
    advice.text = wire::Remark{std::string(200, 'x')};
    football.exam.plan->push_back(advice);
  }
  report::LetterAsk ask;
  ask.question = "What next?";
  const report::Sheet sheet = report::letter_sheet(football.view(), ask);
  CHECK(report::letter_lines(sheet) <= report::letter_lines_max);
  const auto found = std::find_if(sheet.sections.begin(), sheet.sections.end(), [](const report::SheetSection& one) { return one.title == "Found, and how"; });
  REQUIRE(found != sheet.sections.end());
  CHECK(found->lines.size() > 3);
  CHECK(found->lines.front().kind == report::LineKind::bullet);
}
