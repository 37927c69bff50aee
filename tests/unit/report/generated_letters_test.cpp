// Letters and take-home sheets of generated exams: what neither may ever say, and that a letter fits one sheet. Source: clinical
// safety, wording A and requirements 16, 18 and 19.
#include "core/report/home/home.hpp"
#include "core/report/letter/letter.hpp"

#include "tests/unit/interpret/draw.hpp"
#include "tests/unit/interpret/support.hpp"
#include "tests/unit/report/forbidden.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <cctype>
#include <memory>
#include <vector>

using namespace limbledger;
using namespace limbledger::interpret_test;

namespace {

constexpr std::uint64_t drawn_exams = 30;
constexpr std::array<const char*, 6> complaints{"acute_knee", "chronic_knee", "ankle_injury", "hip_after_fall", "limping_child", "wound_or_numb_foot"};

std::optional<model::Value> drawn_value(const reference::Edition& edition, const model::Item& item, Draw& draw) {
  if (draw.one_in(8)) {
    return model::NotDone{static_cast<model::WhyNot>(draw.below(16)), std::nullopt};
  }
  switch (item.value) {
    // Most of what is looked for is not found.
    case model::ValueKind::test:
      return model::Test{draw.one_in(4) ? static_cast<model::TestResult>(draw.below(3)) : model::TestResult::negative, std::nullopt};
    case model::ValueKind::answer:
      return model::Answer{draw.one_in(4) ? static_cast<model::AnswerWord>(draw.below(3)) : model::AnswerWord::no};
    case model::ValueKind::grade: {
      const auto& grades = edition.scale(*item.scale)->grades;
      return model::Grade{*item.scale, grades[draw.below(grades.size())].grade, std::nullopt, std::nullopt, std::nullopt};
    }
    case model::ValueKind::choice:
      return model::Choice{(*item.choices)[draw.below(item.choices->size())]};
    case model::ValueKind::choices:
      return model::Choices{{(*item.choices)[draw.below(item.choices->size())]}};
    case model::ValueKind::count:
      return model::CountValue{{static_cast<std::int64_t>(draw.below(10))}};
    case model::ValueKind::angle: {
      model::Angle angle;
      angle.deg = model::Degrees{static_cast<std::int64_t>(draw.below(90)) * 10};
      angle.toward = item.toward;
      angle.toward_deg = angle.deg;
      return angle;
    }
    default:
      return std::nullopt;
  }
}

Bench drawn_exam(std::uint64_t seed) {
  const reference::Edition& edition = *reference::built_in_edition();
  Draw draw(seed);
  Bench made(edition);
  made.exam.complaint = {complaints[seed % complaints.size()]};
  made.exam.side = static_cast<Side>(draw.below(2));
  made.born(draw.one_in(3) ? 2015 : 1950, 3, 1);
  for (const model::SequenceStep& step : edition.sequence(made.exam.complaint)->steps) {
    const model::Item& item = *edition.item(step.item);
    for (const Side side : item.sides) {
      const auto value = draw.one_in(3) ? std::nullopt : drawn_value(edition, item, draw);
      if (value) {
        model::Finding& finding = made.add(item.item.text, side, *value);
        if (item.instruments && !item.instruments->empty()) {
          finding.instrument = item.instruments->front();
        }
        if (draw.one_in(10)) {
          finding.origin = static_cast<model::Origin>(draw.below(5));
        }
      }
    }
  }
  made.exam.impression = model::Impression{{"what the examiner wrote"}, made.exam.side, std::nullopt, std::nullopt, std::nullopt};
  return made;
}

struct DrawnView {
  explicit DrawnView(std::uint64_t seed) : made(drawn_exam(seed)), assessment(made.assess()) {
    names.protected_note = report::ProtectedNote::absent;
    // Bands as if they were asked for: none may find its way into a letter.
    interpret::AssessAsk bands = made.ask();
    bands.only = {{"hypotheses"}};
    assessment.hypotheses = interpret::assess(made.exam, made.person, made.earlier, *made.edition, bands).hypotheses;
    view = std::make_unique<report::PageView>(made.exam, made.person, assessment, *report::built_in_words(), *made.edition, names);
  }
  Bench made;
  interpret::Assessment assessment;
  report::PageNames names;
  std::unique_ptr<report::PageView> view;
};

report::LetterAsk question() {
  report::LetterAsk ask;
  ask.question = "What next?";
  return ask;
}

std::string one_line(const std::string& text) {
  std::string out;
  for (const char c : text) {
    if (c != '\n' && c != ' ') {
      out += c;
    } else if (!out.empty() && out.back() != ' ') {
      out += ' ';
    }
  }
  return out;
}

// The label of an item, which says what somebody could take.
std::string without_label(std::string text) {
  const std::string label = report::built_in_words()->say("msg.item.history_steps_at_once.short");
  for (auto at = text.find(label); at != std::string::npos; at = text.find(label)) {
    text.erase(at, label.size());
  }
  return text;
}

}  // namespace

TEST_CASE("C18: no letter of a generated exam holds a band, a share of a hundred or a word that a finding does not earn") {
  std::size_t with_bands = 0;
  for (std::uint64_t seed = 1; seed <= drawn_exams; ++seed) {
    const DrawnView drawn(seed);
    const report::Sheet sheet = report::letter_sheet(*drawn.view, question());
    const std::string text = one_line(report::sheet_text(sheet, *report::built_in_words()));
    CAPTURE(seed);
    CAPTURE(text);
    for (const std::string& word : report_test::forbidden_in(without_label(text))) {
      FAIL_CHECK(word);
    }
    for (const char* band : {"speak against", "speaks against", "leave open", "leave it open", "favour", "in 100", "out of 100", "study clinics"}) {
      CHECK_MESSAGE(text.find(band) == std::string::npos, band);
    }
    with_bands += drawn.assessment.hypotheses.empty() ? 0U : 1U;
  }
  // The draw is no test unless bands were there to be left out.
  CHECK(with_bands > 0);
}

TEST_CASE("C18: a letter of a generated exam fits one sheet unless more than two alerts stand, and says how much of the record it leaves out") {
  constexpr std::size_t alerts_that_fit = 2;
  std::size_t fitted = 0;
  std::size_t shortened = 0;
  for (std::uint64_t seed = 1; seed <= drawn_exams; ++seed) {
    const DrawnView drawn(seed);
    const report::Sheet sheet = report::letter_sheet(*drawn.view, question());
    CAPTURE(seed);
    const bool fits = report::letter_lines(sheet) <= report::letter_lines_max;
    fitted += fits ? 1U : 0U;
    CHECK((fits || drawn.assessment.alerts.size() > alerts_that_fit));
    shortened += report::sheet_text(sheet, *report::built_in_words()).find("in the clinic's note") != std::string::npos ? 1U : 0U;
  }
  CHECK(shortened > 0);
  CHECK(fitted > drawn_exams / 2);
}

TEST_CASE("C18: a letter of a generated exam whose alert nobody answered says at every length that no record is not no action") {
  std::size_t unanswered = 0;
  for (std::uint64_t seed = 1; seed <= drawn_exams; ++seed) {
    const DrawnView drawn(seed);
    const bool any = std::any_of(drawn.assessment.alerts.begin(), drawn.assessment.alerts.end(), [](const interpret::Alert& alert) {
      return alert.state == interpret::AlertState::raised && alert.audience == interpret::Audience::clinician && !alert.handled;
    });
    if (!any) {
      continue;
    }
    ++unanswered;
    CAPTURE(seed);
    for (const int length : {0, report::letter_shortest}) {
      const std::string text = one_line(report::sheet_text(report::letter_of_length(*drawn.view, question(), length), *report::built_in_words()));
      CHECK((text.find("Where no DONE stands") != std::string::npos || text.find("Not marked DONE: not recorded") != std::string::npos));
    }
  }
  CHECK(unanswered > 20);
}

TEST_CASE("C18: no danger stands in a letter both as answered no and as not asked after: where the sides differ, each is named") {
  std::size_t compared = 0;
  for (std::uint64_t seed = 1; seed <= drawn_exams; ++seed) {
    const DrawnView drawn(seed);
    const std::string text = one_line(report::sheet_text(report::letter_of_length(*drawn.view, question(), 0), *report::built_in_words()));
    const auto list_after = [&](const std::string& title) {
      std::vector<std::string> labels;
      const std::size_t at = text.find(title);
      if (at == std::string::npos) {
        return labels;
      }
      std::string list = text.substr(at + title.size(), text.find('.', at) - at - title.size());
      for (std::size_t end = list.find("; "); end != std::string::npos; end = list.find("; ")) {
        labels.push_back(list.substr(0, end));
        list.erase(0, end + 2);
      }
      labels.push_back(list);
      for (std::string& label : labels) {
        label.erase(std::min(label.find(" (not recorded"), label.size()));  // what of it is open
      }
      return labels;
    };
    const std::vector<std::string> no = list_after("Danger signs asked or looked at, answered no (signs of): ");
    const std::vector<std::string> open = list_after("Danger signs not asked after, or not all of it (signs of): ");
    for (const std::string& one : open) {
      ++compared;
      CHECK_MESSAGE(std::find(no.begin(), no.end(), one) == no.end(), one);
    }
  }
  CHECK(compared > 50);
}

TEST_CASE("C16: no letter and no sheet of a generated exam tells of a person's protection") {
  for (std::uint64_t seed = 1; seed <= drawn_exams; ++seed) {
    const DrawnView drawn(seed);
    const std::string letter = report::sheet_text(report::letter_sheet(*drawn.view, question()), *report::built_in_words());
    const std::string home = report::sheet_text(report::home_sheet(*drawn.view, {{}, true}).sheet, *report::built_in_words());
    for (const model::Item& item : drawn.made.edition->items()) {
      if (item.protected_.value_or(false)) {
        const std::string label = report::built_in_words()->say(item.text.short_.text);
        CHECK_MESSAGE(one_line(letter).find(label) == std::string::npos, label);
        CHECK_MESSAGE(one_line(home).find(label) == std::string::npos, label);
      }
    }
    CHECK(letter.find("rotected") == std::string::npos);
    CHECK(home.find("rotected") == std::string::npos);
  }
}

TEST_CASE("C19: a sheet for the person holds no number of the program's, no illness nobody typed and no frightening word") {
  for (std::uint64_t seed = 1; seed <= drawn_exams; ++seed) {
    const DrawnView drawn(seed);
    report::HomeSheet home = report::home_sheet(*drawn.view, {{}, true});
    home.sheet.examined.clear();
    REQUIRE(home.sheet.head.at(0).starts_with("Seen on "));  // the day of the visit is no number of the program's
    home.sheet.head.erase(home.sheet.head.begin());
    const std::string text = one_line(report::sheet_text(home.sheet, *report::built_in_words()));
    CAPTURE(text);
    for (const std::string& word : report_test::forbidden_in(text)) {
      FAIL_CHECK(word);
    }
    for (const char c : text) {
      CHECK(std::isdigit(static_cast<unsigned char>(c)) == 0);
    }
    for (const char* word : {"cancer", "tumour", "fracture", "infection", "clot", "septic", "compartment", "dislocat", "rupture", "dangerous"}) {
      CHECK_MESSAGE(report_test::lower(text).find(word) == std::string::npos, word);
    }
    CHECK(home.sheet.sections.at(2).lines.size() >= 3);
  }
}
