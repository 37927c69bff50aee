// form.write: what stands on the paper form. Our own rules (contract, section 9; clinical safety, C9, C10).
#include "core/report/words/words.hpp"
#include "core/service/methods/say/form_paper.hpp"

#include "tests/unit/service/desk_fixture.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>

using namespace limbledger;

namespace {

[[nodiscard]] std::string paper_of(const std::string& complaint, const std::vector<service::Cannot>& cannot = {}) {
  const reference::Edition& edition = *reference::built_in_edition();
  service::FormAsk ask;
  ask.sequence = edition.sequence(model::Word{complaint});
  REQUIRE(ask.sequence != nullptr);
  ask.cannot = cannot;
  ask.without_protected = true;
  return service::form_paper(edition, service::lay_out_form(edition, ask), *report::built_in_words(), "");
}

[[nodiscard]] std::size_t times(const std::string& text, const std::string& part) {
  std::size_t count = 0;
  for (auto at = text.find(part); at != std::string::npos; at = text.find(part, at + part.size())) {
    ++count;
  }
  return count;
}

// Without its tags and its style.
[[nodiscard]] std::string seen(std::string html) {
  const auto style = html.find("<style>");
  html.erase(style, html.find("</style>") - style);
  std::string out;
  bool inside = false;
  for (const char c : html) {
    inside = c == '<' || (inside && c != '>');
    out += inside ? ' ' : (c == '>' ? ' ' : c);
  }
  return out;
}

}  // namespace

TEST_CASE("every sided box of a paper form carries its word, RIGHT before LEFT in every row") {
  for (const model::Sequence& sequence : reference::built_in_edition()->sequences()) {
    const std::string html = paper_of(sequence.complaint.text);
    CAPTURE(sequence.complaint.text);
    const std::size_t right = times(html, "<b>RIGHT</b>");
    CHECK(right == times(html, "<b>LEFT</b>"));
    std::size_t sided = 0;
    for (const model::SequenceStep& step : sequence.steps) {
      const model::Item& item = *reference::built_in_edition()->item(step.item);
      // A sheet for anybody knows no age: what is for the first months alone is named at its end.
      const bool boxed = item.value != model::ValueKind::text && !item.protected_ && !step.until_months;
      sided += item.sides.size() > 1 && boxed ? 1U : 0U;
    }
    CHECK(right == sided);
    for (auto at = html.find("<b>RIGHT</b>"); at != std::string::npos; at = html.find("<b>RIGHT</b>", at + 1)) {
      const auto left = html.find("<b>LEFT</b>", at);
      const auto row = html.find("</tr>", at);
      CHECK(left < row);
    }
  }
}

TEST_CASE("a paper form asks for two identifiers, marks the minimum set, and says how it is entered later") {
  const reference::Edition& edition = *reference::built_in_edition();
  for (const model::Sequence& sequence : edition.sequences()) {
    CAPTURE(sequence.complaint.text);
    const std::string html = paper_of(sequence.complaint.text);
    const std::string text = seen(html);
    CHECK(text.find("second identifier") != std::string::npos);
    CHECK(text.find("origin &quot;from paper&quot;") != std::string::npos);
    CHECK(text.find("Not tested on real people") != std::string::npos);
    CHECK(times(html, "class=\"min") ==
          static_cast<std::size_t>(std::count_if(sequence.steps.begin(), sequence.steps.end(),
                                                 [](const model::SequenceStep& step) { return step.minimum.value_or(false) || step.minimum_under; })));
    // It loads nothing and runs nothing.
    CHECK(html.find("<script") == std::string::npos);
    CHECK(html.find("http:") == std::string::npos);
    CHECK(html.find("https:") == std::string::npos);
  }
}

TEST_CASE("a paper form names what it leaves out and why, and tells which steps wait while something is open") {
  const std::string text = seen(paper_of("acute_knee", {service::Cannot::lie_supine}));
  CHECK(text.find("Left out of this sheet:") != std::string::npos);
  CHECK(text.find("the person cannot") != std::string::npos);
  CHECK(text.find("A fracture at the knee is not settled") != std::string::npos);
}

TEST_CASE("a test on paper says what pos and neg mean, and a familiar pain is marked apart from them") {
  const std::string text = seen(paper_of("hip_after_fall"));
  CHECK(text.find("pos = cannot lift it, or groin pain. neg = lifts it without groin pain; a fracture is not excluded") != std::string::npos);
  CHECK(text.find("pos = duller than the other side. neg = as loud as the other side; a fracture is not excluded") != std::string::npos);
  CHECK(text.find("pos = pain in groin or hip on the push. neg = no pain in groin or hip on the push; a fracture is not excluded") != std::string::npos);
  CHECK(paper_of("hip_after_fall").find("<i>?</i> <i class=\"apart\">\u2610 fam</i>") != std::string::npos);
  for (const model::Sequence& sequence : reference::built_in_edition()->sequences()) {
    CAPTURE(sequence.complaint.text);
    const std::string words = seen(paper_of(sequence.complaint.text));
    const auto tests = static_cast<std::size_t>(std::count_if(sequence.steps.begin(), sequence.steps.end(), [](const model::SequenceStep& step) {
      const model::Item& item = *reference::built_in_edition()->item(step.item);
      return item.value == model::ValueKind::test && !item.protected_ && !step.until_months;  // nobody's age is known on paper
    }));
    CHECK(times(words, "pos = ") == tests);
  }
}

TEST_CASE("choices on paper stand in words, and the control says whether one or several are marked") {
  const std::string html = paper_of("back_leg");
  CHECK(html.find("<i>\u25cb Felt as elsewhere</i> <i>\u25cb Felt less</i> <i>\u25cb Not felt</i> <i>\u25cb Unpleasant or burning</i>") != std::string::npos);
  CHECK(seen(paper_of("diabetic_foot")).find("Write all that hold: None of these") != std::string::npos);
  CHECK(seen(paper_of("no_complaint")).find("Write one: Even") != std::string::npos);
  for (const model::Sequence& sequence : reference::built_in_edition()->sequences()) {
    CAPTURE(sequence.complaint.text);
    const std::string words = paper_of(sequence.complaint.text);
    CHECK(words.find("</b><i>1</i>") == std::string::npos);
  }
}

TEST_CASE("both directions of an angle are named on paper, and an answer that is hoped to be yes says what each word means") {
  const std::string knee = seen(paper_of("acute_knee"));
  CHECK(knee.find("beyond straight") != std::string::npos);
  CHECK(knee.find("short of straight") != std::string::npos);
  CHECK(seen(paper_of("child_alignment")).find("heel outward") != std::string::npos);
  CHECK(seen(paper_of("child_alignment")).find("heel inward") != std::string::npos);
  CHECK(knee.find("yes = reliable") != std::string::npos);
  CHECK(knee.find("no = not reliable today") != std::string::npos);
  CHECK(seen(paper_of("diabetic_foot")).find("yes = no break of the skin") != std::string::npos);
  for (const model::Sequence& sequence : reference::built_in_edition()->sequences()) {
    const std::string text = seen(paper_of(sequence.complaint.text));
    CAPTURE(sequence.complaint.text);
    // A name that has no words is shown as it is.
    CHECK(text.find("msg.") == std::string::npos);
  }
}

TEST_CASE("head and foot of a paper form, which stand again on each sheet, hold title, person, key and page number") {
  const std::string html = paper_of("acute_knee");
  const std::string head = html.substr(html.find("<thead>"), html.find("</thead>") - html.find("<thead>"));
  const std::string foot = html.substr(html.find("<tfoot>"), html.find("</tfoot>") - html.find("<tfoot>"));
  CHECK(head.find("Examination on paper: ") != std::string::npos);
  for (const char* part : {"Name", "second identifier", "Not done: one letter", "A fracture at the knee is not settled", "Grades.", "0 = Not felt"}) {
    CHECK_MESSAGE(foot.find(part) != std::string::npos, part);
  }
  CHECK(html.find("counter(page)") != std::string::npos);
  CHECK(seen(paper_of("infant_hip")).find("look for an infant&#39;s hip out of joint") != std::string::npos);
}

TEST_CASE("form.write goes to an examiner and a viewer, in English, while locked; a demonstration says so on it") {
  using service::test::at;
  service::test::DeskFixture fixture;
  service::Desk& desk = *fixture.desk;
  const auto told = service::test::call(desk, "form.write", R"({"complaint":"acute_knee","minutes":10})");
  REQUIRE(told.has_value());
  CHECK(at(*told, "/language") == "en");
  CHECK(at(*told, "/html").starts_with("<!DOCTYPE html>"));
  desk.lock();
  CHECK(service::test::codes_of(service::test::call(desk, "form.write", R"({"complaint":"acute_knee"})")) == "answered");
  CHECK(service::test::codes_of(service::test::call(desk, "form.write", R"({"complaint":"acute_nee"})")) == "params.unknown_word");
  CHECK(service::test::codes_of(service::test::call(desk, "form.write", R"({"complaint":"acute_knee","language":"xx"})")) == "params.unknown_word");
  service::Caller kiosk;
  kiosk.scope = service::Scope::kiosk;
  CHECK(service::test::codes_of(service::test::call(desk, "form.write", R"({"complaint":"acute_knee"})", kiosk)) == "token.scope");
}
