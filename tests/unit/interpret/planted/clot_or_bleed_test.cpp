// Planted cases of swollen and pulled calves: two legs that swell alike, and blood that runs thin. Sources: the red flags page, section 10 ("unilateral
// new leg swelling"; bleeding risk) and 4, rule acs/boast2014 ("a bleeding disorder or anticoagulant adds risk"), clinical safety C2 and C3, NICE_NG51 for
// oxygen; one line for two equal legs and the bleed of a calf are our own rules. People and findings are invented.
#include "tests/unit/interpret/alerts/story.hpp"

using namespace limbledger;
using namespace limbledger::interpret_test;

namespace {

Bench legs(int born, const std::string& story) {
  Bench bench = visit("swollen_legs", born, story);
  bench.exam.side.reset();
  return bench;
}
// The lines of a clot: message and side.
std::string clots(const Bench& bench) {
  std::string told;
  for (const auto& one : bench.assess().alerts) {
    if (one.alert.text == "alert.dvt") {
      told += (told.empty() ? "" : ", ") + one.message.text.substr(one.message.text.rfind('.') + 1) + (one.interrupts ? "!" : "") +
              (one.side ? (*one.side == Side::left ? " left" : " right") : " none");
    }
  }
  return told;
}

}  // namespace

TEST_CASE("planted: two legs swollen alike are one line of a clot and of no side; one that points to it has its own") {
  const std::string alike = "leg.calf_swelling both yes; ";
  CHECK(clots(legs(1948, alike + "history.breathless yes; history.weeks_since_onset 30; history.examiner_suspects_clot no")) == "both_chest! none");
  CHECK(clots(legs(1948, "vessel.whole_leg_swollen both yes; history.breathless yes")) == "both_chest! none");
  CHECK(clots(legs(1999, alike + "body.pregnancy yes; history.breathless no; leg.calf_girth_10cm left 378; leg.calf_girth_10cm right 380")) == "both none");
  CHECK(clots(legs(1948, alike + "history.examiner_suspects_clot yes; history.breathless no")) == "both none");
  for (const char* points : {"leg.calf_tender_vein left yes", "vessel.oedema_more_this_side left yes", "vessel.veins_collateral left yes",
                             "leg.calf_girth_10cm left 400; leg.calf_girth_10cm right 375", "vessel.foot_colour left colour_blue"}) {
    CAPTURE(points);
    CHECK(clots(legs(1948, alike + "history.breathless yes; " + points)) == "chest! left, chest! right");
  }
  // Both legs are among the grounds.
  const Bench two = legs(1948, alike + "history.breathless yes");
  std::size_t named = 0;
  const auto lung = alert(two, "dvt");
  REQUIRE(lung.has_value());
  for (const auto& id : lung->because) {
    named += std::any_of(two.exam.findings->begin(), two.exam.findings->end(), [&](const auto& one) { return one.finding == id && one.item.text == "leg.calf_swelling"; }) ? 1U : 0U;
  }
  CHECK(named == 2);
  CHECK(clots(legs(1948, "leg.calf_swelling left yes; leg.calf_swelling right no; history.breathless yes")) == "chest! left");
  CHECK(clots(legs(1948, "leg.calf_swelling left no; leg.calf_swelling right yes; history.breathless yes")) == "chest! right");
}

TEST_CASE("planted: oxygen of old lungs beside a leg swollen for weeks is asked after; lower, or with another sign, it is the chest") {
  for (const char* which : {"leg.calf_swelling both yes; ", "leg.calf_swelling left yes; "}) {
    CAPTURE(which);
    const std::string old = std::string(which) + "history.weeks_since_onset 200; history.examiner_suspects_clot no; history.breathless no; ";
    const Bench lungs = legs(1955, old + "general.respiratory_rate 22; general.oxygen_saturation 91");
    CHECK(clots(lungs).empty());
    CHECK(asks(lungs, "dvt", "history.cancer_active"));
    for (const char* more : {"general.oxygen_saturation 87", "general.oxygen_saturation 91; general.pulse_rate 112", "general.oxygen_saturation 91; history.breathless yes",
                             "general.oxygen_saturation 91; general.blood_pressure_systolic 84", "general.oxygen_saturation 91; history.weeks_since_onset 1"}) {
      CAPTURE(more);
      CHECK(clots(legs(1955, old + more)).find("chest!") != std::string::npos);
    }
  }
}

TEST_CASE("planted: a pulled calf on a blood thinner is a bleed of the same day too, and a compartment by the letter while it hurts on stretch") {
  const std::string pulled = "history.mechanism other_mechanism; knee.stretch_pain_calf left yes; history.pain_out_of_proportion left no; leg.tense_compartment left no; "
                             "leg.calf_swelling left no; history.injury_severe_or_crush no; ";
  for (const char* thin : {"history.blood_thinners yes; ", "history.bleeding_disorder yes; "}) {
    CAPTURE(thin);
    const Bench bench = visit("calf_pain", 1962, pulled + thin);
    CHECK(line_of(bench, "bleed_joint") == "calf");
    CHECK_FALSE(is_now(bench, "bleed_joint"));
    CHECK(meanwhile_says(bench, "bleed_joint", "calf_felt_again"));
    CHECK_FALSE(meanwhile_says(bench, "bleed_joint", "rest_joint"));
    CHECK(is_now(bench, "acs"));
    // Swollen after a hurt: a clot is not all that it may be.
    CHECK(line_of(visit("calf_pain", 1962, std::string(thin) + "history.mechanism twist; leg.calf_swelling left yes"), "bleed_joint") == "calf");
    CHECK(line_of(visit("calf_pain", 1962, std::string(thin) + "history.mechanism no_injury; leg.calf_swelling left yes"), "bleed_joint") == "none");
    CHECK(is_now(visit("calf_pain", 1962, std::string(thin) + "history.mechanism other_mechanism; knee.stretch_pain_calf left yes"), "acs"));
  }
  // The same calf of who takes none.
  const Bench plain = visit("calf_pain", 1962, pulled + "history.blood_thinners no; history.bleeding_disorder no");
  CHECK(plain.assess().alerts.empty());
}
