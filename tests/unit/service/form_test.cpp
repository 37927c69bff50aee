// form.describe: the form of a complaint. Logic on the invented edition; what the built-in edition's forms hold; and through a desk,
// with an exam whose findings open a concern.
#include "core/service/methods/say/form.hpp"

#include "core/wire/write.hpp"
#include "tests/unit/invented/edition.hpp"
#include "tests/unit/service/desk_fixture.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>
#include <string>
#include <vector>

using namespace limbledger;
using service::Cannot;
using service::FormAsk;
using service::FormDescribeResult;

namespace {

[[nodiscard]] FormAsk ask_of(const reference::Edition& edition, const std::string& complaint) {
  FormAsk ask;
  const auto sequence = service::find_sequence(edition, model::Word{complaint});
  REQUIRE(sequence.has_value());
  ask.sequence = *sequence;
  return ask;
}

[[nodiscard]] const service::FormStep* step_of(const FormDescribeResult& form, const std::string& item) {
  for (const service::FormPosition& position : form.positions) {
    for (const service::FormStep& step : position.steps) {
      if (step.item.text == item) {
        return &step;
      }
    }
  }
  return nullptr;
}

[[nodiscard]] bool left_out(const FormDescribeResult& form, const std::string& item, service::WhyLeft why) {
  return std::any_of(form.left_out.begin(), form.left_out.end(),
                     [&](const service::LeftStep& one) { return one.item.text == item && one.why == why; });
}

[[nodiscard]] std::vector<std::string> texts(const std::vector<model::ItemId>& ids) {
  std::vector<std::string> out;
  for (const model::ItemId& id : ids) {
    out.push_back(id.text);
  }
  return out;
}

// A value made of what the step says, as clients/README.md tells it.
[[nodiscard]] std::string value_for(const service::FormStep& step) {
  const std::string kind(wire::type_of<model::ValueKind>().words[static_cast<std::size_t>(step.value)]);
  const auto low = [&] { return wire::write((step.confirm ? step.confirm : step.refuse)->at(0)); };
  switch (step.control) {
    case service::Control::angle:
      return step.value == model::ValueKind::arc ? R"({"kind":"angle","entered":"0-0-20","order":")" + step.orders->at(0).text + "\"}"
                                                 : R"({"kind":"angle","trials":[)" + low() + "]}";
    case service::Control::number:
      return R"({"kind":")" + kind + R"(",")" + (step.value == model::ValueKind::count ? "count" : step.unit->text) + "\":" + low() + "}";
    case service::Control::grade:
      return R"({"kind":"grade","scale":")" + step.scale->text + R"(","grade":")" + step.choices->at(0).grade->text + "\"}";
    case service::Control::test:
      return R"({"kind":"test","result":"negative"})";
    case service::Control::answer:
      return R"({"kind":"answer","answer":"no"})";
    case service::Control::choice:
      return R"({"kind":"choice","choice":")" + step.choices->at(0).choice->text + "\"}";
    case service::Control::choices:
      return R"({"kind":"choices","choices":[")" + step.choices->at(0).choice->text + "\"]}";
    case service::Control::text:
      break;
  }
  return R"({"kind":"text","text":"in their words"})";
}

}  // namespace

// A law of our own: whoever draws a form from its steps alone never sends what is refused.
TEST_CASE("a value made from each step of each form is taken, on every side, in every position and with every instrument named") {
  const service::test::DeskFixture fixture;
  const reference::Edition& edition = *reference::built_in_edition();
  std::size_t checked = 0;
  for (const model::Sequence& sequence : edition.sequences()) {
    for (const service::FormPosition& position : service::lay_out_form(edition, ask_of(edition, sequence.complaint.text)).positions) {
      for (const service::FormStep& step : position.steps) {
        std::vector<std::string> ways{""};
        for (const model::Word& one : step.positions.value_or(std::vector<model::Word>{})) {
          ways.push_back(R"(,"position":")" + one.text + "\"");
        }
        for (const model::Word& one : step.instruments.value_or(std::vector<model::Word>{})) {
          ways.push_back(R"(,"instrument":")" + one.text + "\"");
        }
        for (const model::Side side : step.sides) {
          const std::string start = R"({"findings":[{"item":")" + step.item.text + R"(","side":")" +
                                    std::string(wire::type_of<model::Side>().words[static_cast<std::size_t>(side)]) + R"(","value":)" + value_for(step);
          for (const std::string& way : ways) {
            CAPTURE(start);
            CAPTURE(way);
            CHECK(service::test::at(fixture.ok("finding.check", start + way + "}]}"), "/faults") == "[]");
            ++checked;
          }
        }
      }
    }
  }
  CHECK(checked > 500);
}

TEST_CASE("a form gives the steps by position with control, options, limits and reasons") {
  const FormDescribeResult form = service::lay_out_form(invented_edition(), ask_of(invented_edition(), "invented_complaint"));
  REQUIRE(form.positions.size() == 3);
  CHECK(form.positions[0].position.text == "supine");
  CHECK(form.positions[1].position.text == "standing");
  CHECK(form.positions[2].position.text == "supine");
  CHECK(form.minutes->steps == 7);
  CHECK(form.not_to_miss.size() == 3);
  CHECK(texts(form.minimum) == std::vector<std::string>{"knee.flexion_passive", "knee.lachman"});
  const service::FormStep* lachman = step_of(form, "knee.lachman");
  REQUIRE(lachman != nullptr);
  CHECK(lachman->control == service::Control::grade);
  CHECK(lachman->choices->size() == 3);
  CHECK(lachman->takes_mm == true);
  CHECK(lachman->minimum == true);
  CHECK(std::find(lachman->why_not.begin(), lachman->why_not.end(), model::WhyNot::cannot_hold) != lachman->why_not.end());
  const service::FormStep* flexion = step_of(form, "knee.flexion_passive");
  REQUIRE(flexion != nullptr);
  CHECK(flexion->control == service::Control::angle);
  CHECK(flexion->refuse->back().steps == 1700);
  const service::FormStep* fever = step_of(form, "history.fever");
  REQUIRE(fever != nullptr);
  CHECK(std::find(fever->why_not.begin(), fever->why_not.end(), model::WhyNot::pain) == fever->why_not.end());
}

TEST_CASE("below an age the minimum set is larger; without an age the step says below which") {
  FormAsk ask = ask_of(invented_edition(), "invented_complaint");
  CHECK(step_of(service::lay_out_form(invented_edition(), ask), "hip.log_roll")->minimum_under->steps == 16);
  ask.age = model::AgeInterval{15, 16};
  const FormDescribeResult maybe = service::lay_out_form(invented_edition(), ask);
  CHECK(texts(maybe.minimum) == std::vector<std::string>{"knee.flexion_passive", "knee.lachman", "hip.log_roll"});
  CHECK(step_of(maybe, "hip.log_roll")->minimum == true);
  ask.age = model::AgeInterval{16, 16};
  CHECK(service::lay_out_form(invented_edition(), ask).minimum.size() == 2);
}

TEST_CASE("what cannot be done is replaced by the catalogue's alternative, or left out by name") {
  FormAsk ask = ask_of(invented_edition(), "invented_complaint");
  ask.cannot = {Cannot::stand};
  const FormDescribeResult form = service::lay_out_form(invented_edition(), ask);
  CHECK(step_of(form, "knee.squat") == nullptr);
  CHECK(left_out(form, "knee.squat", service::WhyLeft::cannot));
  ask.cannot = {Cannot::lie_supine};
  const FormDescribeResult seated = service::lay_out_form(invented_edition(), ask);
  CHECK(step_of(seated, "knee.flexion_passive") != nullptr);  // done prone instead
  CHECK(left_out(seated, "knee.lachman", service::WhyLeft::cannot));
  CHECK(texts(seated.minimum) == std::vector<std::string>{"knee.flexion_passive", "knee.lachman"});
  for (const service::FormPosition& position : seated.positions) {
    CHECK(position.position.text != "supine");
  }
}

TEST_CASE("few minutes leave out steps, never the minimum set nor what is asked for safety") {
  FormAsk ask = ask_of(invented_edition(), "invented_complaint");
  ask.age = model::AgeInterval{40, 40};
  const FormDescribeResult whole = service::lay_out_form(invented_edition(), ask);
  ask.seconds = 60;
  const FormDescribeResult brief = service::lay_out_form(invented_edition(), ask);
  CHECK(step_of(brief, "knee.lachman") != nullptr);
  CHECK(step_of(brief, "knee.flexion_passive") != nullptr);
  CHECK(step_of(brief, "history.fever") != nullptr);
  CHECK(left_out(brief, "knee.squat", service::WhyLeft::no_minutes));
  CHECK(brief.seconds.steps < whole.seconds.steps);
  ask.seconds = whole.seconds.steps;
  CHECK(service::lay_out_form(invented_edition(), ask).left_out.empty());
}

TEST_CASE("an open concern withholds a step on its side; standing and the midline on both") {
  FormAsk ask = ask_of(invented_edition(), "invented_complaint");
  const model::Concern& concern = invented_edition().concerns()[0];
  ask.open = {{&concern, model::Side::right}};
  const FormDescribeResult form = service::lay_out_form(invented_edition(), ask);
  CHECK(step_of(form, "knee.flexion_passive")->sides == std::vector{model::Side::left});
  CHECK(step_of(form, "knee.squat") == nullptr);
  CHECK(step_of(form, "history.fever") != nullptr);
  CHECK(step_of(form, "knee.lachman")->sides.size() == 2);  // nothing withholds it here
  const auto held = std::find_if(form.withheld.begin(), form.withheld.end(),
                                 [](const service::WithheldStep& one) { return one.item.text == "knee.flexion_passive"; });
  REQUIRE(held != form.withheld.end());
  CHECK(held->sides == std::vector{model::Side::right});
  CHECK(held->until.text == "msg.until.invented");
  CHECK(held->minimum == true);
  // What is withheld is drawn as it would be at its place, for the sides that are withheld.
  const service::FormStep* other = step_of(form, "knee.flexion_passive");
  CHECK(held->step.item.text == "knee.flexion_passive");
  CHECK(held->step.sides == std::vector{model::Side::right});
  CHECK(held->step.control == other->control);
  CHECK(held->step.label == other->label);
  CHECK(held->step.refuse.has_value() == other->refuse.has_value());
  CHECK(held->step.why_not == other->why_not);
  const auto place = std::find_if(form.positions.begin(), form.positions.end(), [&](const service::FormPosition& one) {
    return std::any_of(one.steps.begin(), one.steps.end(), [](const service::FormStep& step) { return step.item.text == "knee.flexion_passive"; });
  });
  REQUIRE(place != form.positions.end());
  CHECK(held->position == place->position);
  ask.open = {{&concern, model::Side::midline}};
  CHECK(step_of(service::lay_out_form(invented_edition(), ask), "knee.flexion_passive") == nullptr);
}

TEST_CASE("the form of an acute knee holds every step of its sequence once, and a whole form of the catalogue can be drawn") {
  const reference::Edition& edition = *reference::built_in_edition();
  for (const char* complaint : {"acute_knee", "chronic_knee", "free"}) {
    const FormAsk ask = ask_of(edition, complaint);
    const FormDescribeResult form = service::lay_out_form(edition, ask);
    std::size_t steps = 0;
    for (const service::FormPosition& position : form.positions) {
      steps += position.steps.size();
    }
    CHECK_MESSAGE(steps == ask.sequence->steps.size(), complaint);
    CHECK(form.withheld.empty());
    CHECK(form.left_out.empty());
  }
  const FormDescribeResult acute = service::lay_out_form(edition, ask_of(edition, "acute_knee"));
  CHECK(acute.positions.size() == 3);
}

TEST_CASE("a person who cannot lie face down, or stand, keeps a way to each ligament") {
  const reference::Edition& edition = *reference::built_in_edition();
  FormAsk ask = ask_of(edition, "chronic_knee");
  ask.cannot = {Cannot::lie_prone, Cannot::stand};
  const FormDescribeResult form = service::lay_out_form(edition, ask);
  CHECK(step_of(form, "knee.lachman") != nullptr);
  CHECK(step_of(form, "knee.popliteal_swelling") != nullptr);  // lying on the back or on the side
  CHECK(left_out(form, "gait.pattern", service::WhyLeft::cannot));
  for (const service::FormPosition& position : form.positions) {
    CHECK(position.position.text != "prone");
    CHECK(position.position.text != "standing");
    CHECK(position.position.text != "walking");
  }
}

TEST_CASE("an unknown complaint is refused with those there are") {
  const auto wrong = service::find_sequence(*reference::built_in_edition(), model::Word{"acute_nee"});
  REQUIRE(wrong.has_error());
  const wire::Refusal refusal = wrong.error();
  CHECK(refusal.faults[0].code == "params.unknown_word");
  CHECK(refusal.faults[0].expected.find("acute_knee") != std::string::npos);
}

TEST_CASE("through the desk: an exam's open concern is withheld, and a kiosk reads neither it nor what not to miss") {
  using service::test::at;
  service::test::DeskFixture fixture;
  service::Desk& desk = *fixture.desk;
  const auto plain = service::test::call(desk, "form.describe", R"({"complaint":"acute_knee"})");
  REQUIRE(plain.has_value());
  CHECK(service::test::at(*plain, "/not_to_miss/0") == "msg.not_to_miss.knee_dislocated");
  service::Caller kiosk;
  kiosk.scope = service::Scope::kiosk;
  const auto alone = service::test::call(desk, "form.describe", R"({"complaint":"acute_knee"})", kiosk);
  REQUIRE(alone.has_value());
  CHECK(service::test::at(*alone, "/not_to_miss/0").empty());
  CHECK(service::test::codes_of(service::test::call(desk, "form.describe", R"({"complaint":"nothing"})")) == "params.unknown_word");

  unsigned requests = 9000;
  const auto request = [&] { return R"("request":")" + service::test::request_id(++requests) + "\""; };
  const std::string opened = fixture.ok("exam.open", R"({"complaint":"acute_knee","side":"right","setting":"outreach",)" + request() + "}");
  const std::string exam = R"("exam":")" + at(opened, "/exam/exam") + "\"";
  std::string seen = at(opened, "/revision/0");
  const auto record = [&](const std::string& finding) {
    const std::string reply =
        fixture.ok("finding.record", R"({"findings":[)" + finding + "]," + exam + R"(,"seen":[")" + seen + R"("],)" + request() + "}");
    seen = at(reply, "/revision/0");
  };
  const auto withheld = [&] { return at(fixture.ok("form.describe", R"({"complaint":"acute_knee",)" + exam + "}"), "/withheld/0/by"); };
  CHECK(withheld() == "concern.knee_fracture");  // nothing is recorded, and a break is not settled
  record(R"({"item":"general.concern_knee_fracture","side":"right","value":{"kind":"answer","answer":"yes"}})");
  CHECK(withheld() == "concern.knee_fracture");
  // What is asked back says why, and the form still has the step to ask it by.
  const auto asked = service::test::call(desk, "finding.record", R"({"findings":[{"item":"knee.lachman","side":"right","value":{"kind":"grade","scale":"laxity/difference","grade":"0"}}],)" + exam +
                                                                     R"(,"seen":[")" + seen + R"("],"language":"en",)" + request() + "}");
  REQUIRE(service::test::codes_of(asked) == "item.withheld");
  CHECK(asked.error().faults.front().text == "Not advised now: A fracture at the knee is not settled, until a film is seen. Was it done all the same? Then say how and why.");
  CHECK(at(fixture.ok("form.describe", R"({"complaint":"acute_knee",)" + exam + "}"), "/withheld/0/step/control") != "");
  // A film of the other knee lifts nothing.
  record(R"({"item":"history.film_result","side":"left","value":{"kind":"choices","choices":["knee_fracture_not_seen"]}})");
  CHECK(withheld() == "concern.knee_fracture");
  record(R"({"item":"history.film_result","side":"right","value":{"kind":"choices","choices":["knee_fracture_not_seen"]}})");
  CHECK(withheld().empty());
}

TEST_CASE("what is withheld is one list: of the form, beside the next step, and at a finding that is recorded; also of an exam that was just opened") {
  using service::test::at;
  service::test::DeskFixture fixture;
  unsigned requests = 9500;
  const auto request = [&] { return R"("request":")" + service::test::request_id(++requests) + "\""; };
  const std::vector<std::string> told{"", R"({"item":"knee.patella_tender","side":"left","value":{"kind":"answer","answer":"yes"}})",
                                      R"({"item":"vessel.pulse_dorsalis_pedis","side":"left","value":{"kind":"grade","scale":"pulse/0-3","grade":"0"}})",
                                      R"({"item":"general.concern_knee_fracture","side":"left","value":{"kind":"answer","answer":"no"}})"};
  for (const char* complaint : {"acute_knee", "ankle_injury", "hip_after_fall", "chronic_knee"}) {
    const std::string opened = fixture.ok("exam.open", R"({"complaint":")" + std::string(complaint) + R"(","side":"left","setting":"outreach","injured_on":"2026-11-23",)" + request() + "}");
    const std::string exam = R"("exam":")" + at(opened, "/exam/exam") + "\"";
    std::string seen = at(opened, "/revision/0");
    for (const std::string& finding : told) {
      if (!finding.empty()) {
        seen = at(fixture.ok("finding.record", R"({"findings":[)" + finding + "]," + exam + R"(,"seen":[")" + seen + R"("],)" + request() + "}"), "/revision/0");
      }
      CAPTURE(complaint);
      CAPTURE(finding);
      const std::string form = fixture.ok("form.describe", R"({"complaint":")" + std::string(complaint) + R"(","language":"en",)" + exam + "}");
      const std::string next = fixture.ok("step.suggest", "{" + exam + "}");
      std::set<std::string> of_form;
      for (std::size_t i = 0; !at(form, "/withheld/" + std::to_string(i) + "/item").empty(); ++i) {
        const std::string row = "/withheld/" + std::to_string(i);
        CHECK(form.find("{\"message\":\"" + at(form, row + "/because") + "\"") != std::string::npos);
        for (std::size_t side = 0; !at(form, row + "/sides/" + std::to_string(side)).empty(); ++side) {
          of_form.insert(at(form, row + "/item") + " " + at(form, row + "/sides/" + std::to_string(side)) + " " + at(form, row + "/by"));
        }
      }
      std::set<std::string> of_step;
      for (std::size_t i = 0; !at(next, "/withheld/" + std::to_string(i) + "/item").empty(); ++i) {
        const std::string row = "/withheld/" + std::to_string(i);
        of_step.insert(at(next, row + "/item") + " " + at(next, row + "/side") + " " + at(next, row + "/by"));
      }
      CHECK(of_form == of_step);
      const auto lachman = fixture.call("finding.check", R"({"findings":[{"item":"knee.lachman","side":"left","value":{"kind":"grade","scale":"laxity/difference","grade":"0"}}],)" + exam + "}");
      REQUIRE(lachman.has_value());
      const bool asked = at(*lachman, "/confirm/0/code") == "item.withheld";
      if (std::string(complaint) == "acute_knee") {
        CHECK(asked == of_form.contains("knee.lachman left concern.knee_fracture"));
        CHECK((asked || finding.find("general.concern") != std::string::npos));
      }
    }
  }
}
