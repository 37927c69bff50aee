// form.describe for special bodies, through the desk: what is not there or covered is listed with its reason and not asked for, late
// pregnancy is never laid face down, a chair user is not stood up; all of it can still be recorded. Clinical safety C9 and C22 (positions
// from about 20 weeks), S04, S06, S09; hard cases HC-017 and HC-024. All people are invented.
#include "core/service/methods/say/form.hpp"
#include "tests/unit/service/desk_fixture.hpp"

#include <algorithm>

using namespace limbledger;
using service::test::at;

namespace {

struct SpecialForm : service::test::DeskFixture {
  unsigned requests = 7000;
  std::string exam;
  std::string seen;
  std::string complaint;

  explicit SpecialForm(std::string of = "acute_knee") : complaint(std::move(of)) {
    const std::string opened = ok("exam.open", R"({"complaint":")" + complaint + R"(","side":"left","setting":"outreach",)" + request() + "}");
    exam = R"("exam":")" + at(opened, "/exam/exam") + "\"";
    seen = at(opened, "/revision/0");
  }
  std::string request() { return R"("request":")" + service::test::request_id(++requests) + "\""; }
  void record(const std::string& item, const std::string& side, const std::string& value) {
    const std::string reply = ok("finding.record", R"({"findings":[{"item":")" + item + R"(","side":")" + side + R"(","value":)" + value + "}]," + exam +
                                                       R"(,"seen":[")" + seen + R"("],)" + request() + "}");
    seen = at(reply, "/revision/0");
  }
  std::string form() { return ok("form.describe", R"({"complaint":")" + complaint + "\"," + exam + "}"); }
};

const std::string yes = R"({"kind":"answer","answer":"yes"})";

}  // namespace

TEST_CASE("HC-017: a form leaves out what is below the level with its reason, keeps the other side, and a finding there is asked back and still taken") {
  SpecialForm desk;
  CHECK(at(desk.form(), "/not_applicable/0/item").empty());
  desk.record("body.limb_level", "right", R"({"kind":"choice","choice":"through_thigh"})");
  const std::string form = desk.form();
  CHECK(at(form, "/not_applicable/0/reason") == "no_limb");
  CHECK(at(form, "/not_applicable/0/because") == "msg.body.limb_through_thigh");
  CHECK(at(form, "/not_applicable/0/sides/0") == "right");
  CHECK(at(form, "/not_applicable/0/sides/1").empty());
  desk.record("knee.patella_tender", "right", R"({"kind":"not_done","reason":"no_limb"})");
  const auto tender = [&](const std::string& side, const std::string& more) {
    return desk.call("finding.record", R"({"findings":[{"item":"knee.fibular_head_tender","side":")" + side + R"(","value":)" + yes + more + "}]," + desk.exam + R"(,"seen":[")" + desk.seen + R"("],)" + desk.request() + "}");
  };
  CHECK(service::test::codes_of(tender("right", "")) == "finding.contradicts");
  CHECK(tender("left", "").has_value());
  desk.seen = at(desk.ok("exam.read", "{" + desk.exam + "}"), "/revision/0");
  CHECK(tender("right", R"(,"confirmed":["finding.contradicts"])").has_value());  // never refused: there may be another leg
  const std::string assessment = desk.ok("exam.assess", "{" + desk.exam + "}");
  CHECK(assessment.find("contradiction.finding_below_level:right") != std::string::npos);
}

TEST_CASE("S04: from 20 weeks, or with the weeks not recorded, nobody is laid face down; at 12 weeks still") {
  SpecialForm desk("chronic_knee");
  CHECK(desk.form().find(R"("position":"prone")") != std::string::npos);
  desk.record("body.pregnancy", "midline", yes);
  CHECK(desk.form().find(R"("position":"prone")") == std::string::npos);
  desk.record("body.pregnancy_weeks", "midline", R"({"kind":"count","count":12})");
  CHECK(desk.form().find(R"("position":"prone")") != std::string::npos);
  SpecialForm late("chronic_knee");
  late.record("body.pregnancy_weeks", "midline", R"({"kind":"count","count":30})");
  CHECK(late.form().find(R"("position":"prone")") == std::string::npos);
}

TEST_CASE("S04: at 30 weeks the form of the back of the hip lays nobody face down or flat, and keeps the sacroiliac set of the minimum") {
  SpecialForm desk("posterior_hip");
  REQUIRE(desk.form().find(R"("position":"supine","label")") != std::string::npos);
  desk.record("body.pregnancy", "midline", yes);
  desk.record("body.pregnancy_weeks", "midline", R"({"kind":"count","count":30})");
  const std::string form = desk.form();
  CHECK(form.find(R"("position":"prone","label")") == std::string::npos);
  CHECK(form.find(R"("position":"supine","label")") == std::string::npos);
  CHECK(form.find(R"("position":"left_tilt","label":"msg.position_heading.left_tilt","advice":"msg.form.lies_tilted")") != std::string::npos);
  CHECK(form.find(R"("item":"pelvis.thigh_thrust","sides")") != std::string::npos);
  CHECK(form.find(R"({"item":"pelvis.sacral_thrust","why":"pregnancy")") != std::string::npos);
}

TEST_CASE("S06: declined is a reason that the form shows again, the step is done, and rotation is asked for seated") {
  SpecialForm desk("lateral_hip");
  CHECK(desk.form().find(R"({"item":"hip.trochanter_tender","side":"left"})") != std::string::npos);  // open in the minimum set
  desk.record("hip.trochanter_tender", "left", R"({"kind":"not_done","reason":"declined"})");
  const std::string form = desk.form();
  CHECK(form.find(R"("not_done":"declined")") != std::string::npos);
  CHECK(form.find(R"({"item":"hip.trochanter_tender","side":"left"})") == std::string::npos);
  CHECK(form.find(R"({"item":"hip.trochanter_tender","side":"right"})") != std::string::npos);
  CHECK(form.find(R"("item":"hip.internal_rotation_passive_seated","sides")") != std::string::npos);
}

TEST_CASE("S09: of a numb foot the form asks for no heel rise and no hop, and for shoes and soaking") {
  SpecialForm desk("wound_or_numb_foot");
  desk.record("body.feeling_lost", "left", yes);
  const std::string form = desk.form();
  for (const std::string never : {"heel_rise", "function.hop"}) {
    CHECK_MESSAGE(form.find(R"("item":")" + never) == std::string::npos, never);
    CHECK_MESSAGE(form.find(R"("item":"ankle.)" + never) == std::string::npos, never);
  }
  for (const std::string asked : {"history.shoes", "history.foot_soaking", "skin.shoes_inside"}) {
    CHECK_MESSAGE(form.find(R"("item":")" + asked + R"(","sides")") != std::string::npos, asked);
  }
}

TEST_CASE("HC-024: who uses a chair for all ways is not asked to stand or walk, and what is lost is named") {
  SpecialForm desk;
  CHECK(desk.form().find(R"("position":"walking")") != std::string::npos);
  desk.record("body.chair_user", "midline", yes);
  const std::string form = desk.form();
  CHECK(form.find(R"("position":"walking")") == std::string::npos);
  CHECK(form.find(R"("position":"standing")") == std::string::npos);
  CHECK(form.find(R"("item":"gait.steps_now","why":"cannot")") != std::string::npos);
}

TEST_CASE("HC-019: of a child under five the hip stands before the knee in each position, though the knee was complained of") {
  const reference::Edition& edition = *reference::built_in_edition();
  for (const std::string complaint : {"acute_knee", "chronic_knee"}) {
    service::FormAsk ask;
    ask.sequence = *service::find_sequence(edition, model::Word{complaint});
    const auto hip_after_knee = [&](const service::FormDescribeResult& form) {
      int after = 0;
      int hips = 0;
      for (const service::FormPosition& position : form.positions) {
        bool knee = false;
        for (const service::FormStep& step : position.steps) {
          const bool examined = step.positions.has_value();
          knee = knee || (examined && step.item.text.starts_with("knee."));
          const bool hip = step.item.text.starts_with("hip.");
          hips += hip ? 1 : 0;
          after += hip && knee ? 1 : 0;
        }
      }
      REQUIRE(hips > 0);
      return after;
    };
    CHECK(hip_after_knee(service::lay_out_form(edition, ask)) > 0);
    ask.age = model::AgeInterval{1, 1};
    CHECK(hip_after_knee(service::lay_out_form(edition, ask)) == 0);
  }
}
