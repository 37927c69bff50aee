// Findings beyond the knee that do not fit together: each is asked about, and is not where one of the two is missing or says otherwise.
// The pairs are our convention; pulse and index after the vessel rule's bands (AHA_ACC2016), tender without pain after the decision rules
// page, sections 3 and 4.
#include "core/reference/edition.hpp"

#include "tests/unit/interpret/knee/bench.hpp"

#include <doctest/doctest.h>

using namespace limbledger;
using namespace limbledger::interpret_test;
using model::TestResult;

namespace {

[[nodiscard]] model::Length mm(std::int64_t number) {
  model::Length value;
  value.mm = model::Millimetres{number};
  return value;
}

struct LimbBench : KneeBench {
  LimbBench() : KneeBench(*reference::built_in_edition()) {
    exam.complaint = {"free"};
    exam.injured_on.reset();
  }
  void choose(const std::string& item, const std::string& choice, Side side = Side::left) { add(item, side, model::Choice{{choice}}); }
  void pressure(const std::string& item, Side side, std::int64_t mm_hg) {
    model::Pressure value;
    value.mm_hg = model::MillimetresOfMercury{mm_hg};
    add(item, side, value).instrument = model::Word{"doppler"};
  }
  void degrees(const std::string& item, std::int64_t toward_tenths, const std::string& position, Side side = Side::left) {
    const model::Item* row = edition->item(std::string_view(item));
    const std::int64_t sign = row->end && *row->end == model::AxisEnd::low ? -1 : 1;
    model::Angle value;
    value.deg = model::Degrees{sign * toward_tenths};
    value.toward = row->toward;
    value.toward_deg = model::Degrees{toward_tenths};
    model::Finding& finding = add(item, side, value);
    finding.instrument = model::Word{"goniometer_long"};
    finding.position = model::Word{position};
  }
  [[nodiscard]] bool asked(const std::string& name, const std::string& side = "left") const {
    const auto all = assess().contradictions;
    return std::any_of(all.begin(), all.end(), [&](const auto& one) { return one.contradiction.text == "contradiction." + name + ":" + side; });
  }
};

}  // namespace

TEST_CASE("tender bone where no pain is said to be is asked about at ankle and midfoot") {
  LimbBench made;
  made.yes("ankle.medial_malleolus_tender", Side::left);
  made.yes("foot.navicular_tender", Side::left);
  CHECK_FALSE(made.asked("tender_without_pain_ankle"));
  made.no("ankle.pain_malleolar_zone", Side::left);
  made.no("foot.pain_midfoot_zone", Side::left);
  CHECK(made.asked("tender_without_pain_ankle"));
  CHECK(made.asked("tender_without_pain_midfoot"));
  CHECK_FALSE(made.asked("tender_without_pain_ankle", "right"));
}

TEST_CASE("who cannot take four steps and hops, or rises on one leg, is asked about") {
  LimbBench made;
  made.count("gait.steps_now", 2);
  CHECK_FALSE(made.asked("steps_and_hop", "midline"));
  made.add("function.hop_distance", Side::right, mm(900));
  CHECK(made.asked("steps_and_hop", "midline"));
  made.drop("function.hop_distance");
  made.not_done("hip.hop", Side::left, model::WhyNot::pain);
  CHECK_FALSE(made.asked("steps_and_hop", "midline"));
  made.drop("hip.hop");
  made.test("hip.hop", TestResult::positive);
  CHECK(made.asked("steps_and_hop", "midline"));
  made.drop("gait.steps_now");
  made.count("gait.steps_now", 4);
  CHECK_FALSE(made.asked("steps_and_hop", "midline"));
}

TEST_CASE("a kneecap out of place beside a full arc without pain is asked about; with pain, or less of an arc, it is not") {
  LimbBench made;
  made.choose("knee.look_patella_height", "laterally_displaced");
  made.angle("knee.flexion_active", Side::left, 1300);
  CHECK(made.asked("kneecap_and_arc"));
  made.find("knee.flexion_active").pain = model::Pain{};
  made.find("knee.flexion_active").pain->score = wire::Count<0, 10>{4};
  CHECK_FALSE(made.asked("kneecap_and_arc"));
  made.drop("knee.flexion_active");
  made.angle("knee.flexion_active", Side::left, 600);
  CHECK_FALSE(made.asked("kneecap_and_arc"));
}

TEST_CASE("no pulse in a foot beside an index of 1.00 is asked about; one pulse, or a low index, is not") {
  LimbBench made;
  made.grade("vessel.pulse_dorsalis_pedis", "0");
  made.grade("vessel.pulse_posterior_tibial", "0");
  made.pressure("vessel.pressure_dorsalis_pedis", Side::left, 120);
  made.pressure("vessel.pressure_posterior_tibial", Side::left, 120);
  made.pressure("vessel.pressure_arm", Side::left, 120);
  made.pressure("vessel.pressure_arm", Side::right, 120);
  CHECK(made.asked("pulses_and_index"));
  made.drop("vessel.pulse_dorsalis_pedis");
  made.grade("vessel.pulse_dorsalis_pedis", "2");
  CHECK_FALSE(made.asked("pulses_and_index"));
  made.drop("vessel.pulse_dorsalis_pedis");
  made.grade("vessel.pulse_dorsalis_pedis", "0");
  for (model::Finding& finding : *made.exam.findings) {
    if (finding.item.text.starts_with("vessel.pressure_") && finding.item.text != "vessel.pressure_arm") {
      std::get<model::Pressure>(finding.value).mm_hg = model::MillimetresOfMercury{60};
    }
  }
  CHECK_FALSE(made.asked("pulses_and_index"));
}

TEST_CASE("feeling, warmth, swelling, heel rise and prosthesis that do not fit are asked about") {
  const auto two = [](const auto& first, const auto& second, const std::string& name, const std::string& side = "left") {
    LimbBench alone;
    first(alone);
    CHECK_MESSAGE(!alone.asked(name, side), name);
    second(alone);
    CHECK_MESSAGE(alone.asked(name, side), name);
  };
  two([](LimbBench& a) { a.yes("body.feeling_lost", Side::left); },
      [](LimbBench& a) { a.add("nerve.monofilament_great_toe", Side::left, model::CountValue{{3}}); }, "feeling_and_filament");
  two([](LimbBench& a) { a.yes("vessel.foot_cold", Side::left); }, [](LimbBench& a) { a.yes("vessel.foot_warm", Side::left); }, "foot_cold_and_warm");
  two([](LimbBench& a) { a.grade("vessel.oedema_pitting", "2+"); }, [](LimbBench& a) { a.choose("vessel.oedema_level", "oedema_none"); }, "pitting_and_level");
  two([](LimbBench& a) { a.grade("vessel.oedema_pitting", "0"); }, [](LimbBench& a) { a.choose("vessel.oedema_level", "oedema_shin"); }, "no_pit_and_level");
  two([](LimbBench& a) { a.choose("ankle.heel_rise_single", "rises_not"); },
      [](LimbBench& a) { a.add("ankle.heel_rise_count", Side::left, model::CountValue{{12}}); }, "heel_rise_and_count");
  two([](LimbBench& a) { a.yes("body.prosthesis", Side::left); }, [](LimbBench& a) { a.choose("body.limb_level", "limb_whole"); }, "prosthesis_and_limb");
  two([](LimbBench& a) { a.choose("gait.heel_walk", "walk_able"); }, [](LimbBench& a) { a.yes("nerve.foot_drop", Side::left); }, "heel_walk_and_power");
  two([](LimbBench& a) { a.choose("gait.toe_walk", "walk_able"); }, [](LimbBench& a) { a.grade("nerve.power_ankle_plantarflexion", "2"); }, "toe_walk_and_power");
  two([](LimbBench& a) { a.choose("pelvis.crest_level_standing", "low"); }, [](LimbBench& a) { a.choose("pelvis.crest_level_standing", "low", Side::right); },
      "crest_on_both", "midline");
  two([](LimbBench& a) {
        a.yes("skin.intact", Side::left);
        a.yes("skin.ulcer", Side::left);
      },
      [](LimbBench& a) { a.add("skin.ulcer_site", Side::left, model::Choices{{{"at_heel"}}}); }, "skin_whole_and_open");
}

TEST_CASE("shape against angle, and a hip held bent that goes back, are asked about beyond the error of the reading alone") {
  LimbBench made;
  made.choose("knee.alignment_standing", "bowed");
  made.degrees("knee.tibiofemoral_angle_standing", 70, "standing");  // 7.0: within 1.96 x 10 / 2.772 = 7.07
  CHECK_FALSE(made.asked("bowed_and_angle"));
  made.drop("knee.tibiofemoral_angle_standing");
  made.degrees("knee.tibiofemoral_angle_standing", 80, "standing");
  CHECK(made.asked("bowed_and_angle"));
  CHECK_FALSE(made.asked("knock_kneed_and_angle"));
  LimbBench hip;
  hip.degrees("hip.extension_passive_thomas", -200, "supine");
  hip.degrees("hip.extension_passive_prone", 90, "prone");  // 9.0: within 1.96 x 13 / 2.772 = 9.19
  CHECK_FALSE(hip.asked("hip_bent_and_back"));
  hip.drop("hip.extension_passive_prone");
  hip.degrees("hip.extension_passive_prone", 100, "prone");
  CHECK(hip.asked("hip_bent_and_back"));
}

TEST_CASE("knees apart and ankles apart at once are asked about") {
  LimbBench made;
  made.add("knee.intercondylar_distance_standing", Side::midline, mm(30));
  made.add("knee.intermalleolar_distance_standing", Side::midline, mm(0));
  const auto apart = [&] {
    const auto all = made.assess().contradictions;
    return std::any_of(all.begin(), all.end(), [](const auto& one) { return one.contradiction.text.starts_with("contradiction.knees_and_ankles_apart:"); });
  };
  CHECK_FALSE(apart());
  made.find("knee.intermalleolar_distance_standing").value = mm(20);
  CHECK(apart());
}

TEST_CASE("warmer, fuller, thinner or lower than the other side, said of both sides, is asked back; of one side it is not") {
  for (const char* item : {"vessel.foot_warm", "leg.calf_wasting", "leg.thigh_wasting", "ankle.swelling_lateral", "hip.look_swelling"}) {
    LimbBench made;
    made.yes(item, Side::left);
    CHECK_MESSAGE(!made.asked("more_on_both", "midline"), item);
    made.yes(item, Side::right);
    CHECK_MESSAGE(made.asked("more_on_both", "midline"), item);
  }
  LimbBench lower;
  lower.add("hip.knee_height_lower", Side::left, model::Test{model::TestResult::positive, std::nullopt});
  lower.add("hip.knee_height_lower", Side::right, model::Test{model::TestResult::negative, std::nullopt});
  CHECK_FALSE(lower.asked("more_on_both", "midline"));
}
