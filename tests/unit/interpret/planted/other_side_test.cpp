// Planted cases of a danger on one side and an impression or a plan of the other. Source: clinical safety, C10 (side is asked about, never
// settled); what explains an impression is our own rule. All is invented; the day is 2026-11-24.
#include "tests/outside/knee_document.hpp"

using namespace limbledger;
using limbledger::tests::KneeVisit;

namespace {

std::vector<std::string> beside_danger(const std::string& lines, const std::string& more, const std::string& finding_more = "") {
  KneeVisit visit;
  visit.complaint = "acute_knee";
  visit.complained_of = "right";
  visit.born = "1990-01-01";
  visit.injured_on = "2026-11-23";
  visit.add("history.knee_dislocated right answer:yes");
  visit.exam_more = more;
  if (!lines.empty()) {
    if (finding_more.empty()) {
      visit.add_all(lines);
    } else {
      visit.add(lines, finding_more);
    }
  }
  std::vector<std::string> names;
  for (const interpret::Contradiction& one : visit.assess().contradictions) {
    names.push_back(one.contradiction.text.substr(std::string("contradiction.").size()) + " " + one.message.text.substr(std::string("msg.contradiction.").size()));
  }
  return names;
}
bool asks_side(const std::vector<std::string>& all, const std::string& one) { return std::find(all.begin(), all.end(), one) != all.end(); }

const std::string thinks_left_knee = R"(,"impression":{"text":"torn ligament","side":"left"})";
const std::string plans_left_film = R"(,"plan":[{"kind":"film","text":"two views","side":"left"}])";
const std::string asked_impression = "impression_side:left impression_beside_danger";
const std::string asked_plan = "plan_side:left plan_beside_danger";

}  // namespace

TEST_CASE("planted: beside a danger of the right leg an impression or a plan of the left is asked back, whatever else stands on the left that explains neither") {
  CHECK(asks_side(beside_danger("", thinks_left_knee), asked_impression));
  CHECK(asks_side(beside_danger("", plans_left_film), asked_plan));
  for (const char* explains_nothing : {"history.swelling_noticed left answer:yes", "history.pop left answer:yes", "knee.flexion_passive left 120 goniometer_long;knee.flexion_passive right 140 goniometer_long",
                                       "skin.intact left answer:no", "knee.lachman left grade:0/firm", "body.knee_replaced left answer:yes"}) {
    CAPTURE(explains_nothing);
    CHECK(asks_side(beside_danger(explains_nothing, thinks_left_knee), asked_impression));
    CHECK(asks_side(beside_danger(explains_nothing, plans_left_film), asked_plan));
  }
  // A sign of before is none of today.
  CHECK(asks_side(beside_danger("knee.lachman left grade:3/soft", thinks_left_knee, R"(,"despite":{"how":"before","because":"years ago"})"), asked_impression));
}

TEST_CASE("planted: nothing is asked where a sign found on that side today explains it, where it too is in danger, or where the sides agree") {
  CHECK_FALSE(asks_side(beside_danger("knee.lachman left grade:3/soft", thinks_left_knee), asked_impression));
  CHECK_FALSE(asks_side(beside_danger("knee.effusion_stroke left grade:2+", plans_left_film), asked_plan));
  CHECK_FALSE(asks_side(beside_danger("history.knee_dislocated left answer:yes", thinks_left_knee), asked_impression));
  CHECK(beside_danger("", R"(,"impression":{"text":"knee out of joint","side":"right"})").empty());
  CHECK_FALSE(asks_side(beside_danger("", R"(,"plan":[{"kind":"film","text":"two views","side":"left","became":"declined"}])"), asked_plan));
}
