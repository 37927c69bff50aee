// A page whose every value was decided on: the letter stays one sheet and says where the rest is read; note and letter say nothing of
// a decision about what is kept apart. People are invented.
#include "core/report/brief/settled.hpp"
#include "core/report/letter/letter.hpp"
#include "core/wire/write.hpp"

#include "tests/unit/report/forbidden.hpp"
#include "tests/unit/report/printer.hpp"

#include <algorithm>

using namespace limbledger;
using namespace limbledger::report_test;

namespace {

model::EntryId numbered(std::uint8_t number) {
  model::EntryId entry;
  entry.bytes.fill(number);
  return entry;
}

// Each value of an exam, taken by somebody who had seen the signature, over another's.
void decide_all(Printer& printer) {
  for (model::Finding& finding : *printer.exam.findings) {
    model::Observation seen;
    seen.item = finding.item;
    seen.side = finding.side;
    seen.value = finding.value;
    const wire::Raw value{wire::write(seen)};
    model::Settled settled;
    settled.about.text = "finding";
    settled.entry = numbered(1);
    settled.by = printer.exam.examiner;
    settled.reason = wire::Remark{"looked at again together"};
    settled.value = value;
    settled.taken = numbered(2);
    settled.among = {{numbered(2), printer.exam.examiner, {0}, value, std::nullopt}, {numbered(3), printer.exam.examiner, {0}, value, std::nullopt}};
    settled.after_signature = model::AfterSignature::seen;
    finding.settled = std::vector{settled};
  }
}

}  // namespace

TEST_CASE("a letter of an exam whose every value was decided on stays one sheet, marks each, and says where it is told whole") {
  for (const std::string name : printed_people) {
    CAPTURE(name);
    Printer printer(name);
    decide_all(printer);
    const report::PageView view = printer.view();
    report::LetterAsk ask;
    ask.question = "What is to be done?";
    const report::SheetSection shortest = report::letter_settled(view, true);
    REQUIRE(shortest.lines.size() == 1);
    CHECK(shortest.lines.front().text.find(view.label(view.findings.front()->item)) != std::string::npos);
    CHECK(shortest.lines.front().text.find("and " + std::to_string(view.findings.size() - 4) + " more") != std::string::npos);
    const report::SheetSection whole = report::settled_section(view);
    CHECK(whole.lines.size() == view.findings.size());
    CHECK(whole.lines.size() <= printer.exam.findings->size());  // what is kept apart is in neither
    for (const report::SheetLine& line : whole.lines) {
      CHECK(line.text.find("looked at again together") != std::string::npos);
      CHECK(line.text.find("after the signature") != std::string::npos);
    }
    const report::Sheet letter = report::letter_sheet(view, ask);
    CHECK(std::any_of(letter.sections.begin(), letter.sections.end(), [&](const report::SheetSection& one) { return one.title == whole.title; }));
    CHECK(report::letter_lines(letter) <= report::letter_lines_max);
  }
}
