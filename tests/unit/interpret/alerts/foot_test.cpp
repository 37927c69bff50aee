// The foot that feels little or lacks blood, by the red flags page (sections 21 and 22, with its examples), clinical safety C13 and F
// (S09), and the hard case named. Grades of an infected sore: IWGDF_IDSA_DFI. How soon: NICE_NG19.
#include "core/interpret/held.hpp"
#include "tests/unit/interpret/alerts/story.hpp"

using namespace limbledger;
using namespace limbledger::interpret_test;

TEST_CASE("charcot: diabetic, protective feeling lost, hot swollen foot with little pain is the same day, and nobody walks on it") {
  Bench bench = visit("diabetic_foot", 1966, "history.diabetes yes; foot.hot_red_swollen left yes; foot.navicular_tender left no; skin.intact left yes");
  CHECK_FALSE(raised(bench, "charcot"));
  CHECK(asks(bench, "charcot", "nerve.monofilament_great_toe"));  // feeling unknown: the filament
  tell(bench, "nerve.monofilament_great_toe left 0; nerve.monofilament_metatarsal_head_1 left 0; nerve.monofilament_metatarsal_head_5 left 1");
  CHECK(line_of(bench, "charcot") == "raised");
  CHECK_FALSE(is_now(bench, "charcot"));
  CHECK(alert(bench, "charcot")->urgency == interpret::Urgency::same_day);
  CHECK(stops(bench, "charcot", "ankle.heel_rise_count"));
  CHECK(stops(bench, "charcot", "gait.pattern"));
}

TEST_CASE("HC-047: feet without feeling and a warm swollen midfoot: any cause of the numbness counts, and no pain takes nothing back") {
  for (const char* cause : {"body.feeling_lost left yes", "history.leprosy yes", "nerve.sensation_foot_reduced left yes", "history.diabetes_years 14"}) {
    CAPTURE(cause);
    Bench bench = visit("free", 1966, "vessel.foot_warm left yes");
    CHECK_FALSE(raised(bench, "charcot"));
    tell(bench, cause);
    CHECK(raised(bench, "charcot"));
    CHECK_FALSE(alert(bench, "charcot")->because.empty());
  }
  Bench few_years = visit("free", 1966, "vessel.foot_warm left yes; history.diabetes_years 3");
  CHECK_FALSE(raised(few_years, "charcot"));
}

TEST_CASE("charcot: a foot that is not warm is asked and answered no; only that it feels is not; two degrees between the feet count as warm") {
  Bench bench = visit("wound_or_numb_foot", 1966, "body.feeling_lost left yes; foot.hot_red_swollen left no");
  CHECK(flag(bench, "charcot") == "asked_no");
  Bench felt = visit("wound_or_numb_foot", 1966, "body.feeling_lost left no");
  CHECK(flag(felt, "charcot") == "not_asked");
  Bench refused = visit("wound_or_numb_foot", 1966, "body.feeling_lost left yes; foot.hot_red_swollen left declined");
  CHECK(flag(refused, "charcot") == "cannot_answer");
  Bench measured = visit("wound_or_numb_foot", 1966, "body.feeling_lost left yes; vessel.skin_temperature_foot right 300; vessel.skin_temperature_foot left 319");
  CHECK_FALSE(raised(measured, "charcot"));
  tell(measured, "vessel.skin_temperature_foot left 320");
  CHECK(raised(measured, "charcot"));
}

TEST_CASE("df_infect: redness of 20 mm is mild, 21 mm moderate; a pulse of 92 with 38.1 is severe and interrupts (the page's examples)") {
  Bench bench = visit("diabetic_foot", 1966, "history.diabetes yes; skin.ulcer left yes; skin.ulcer_depth left depth_skin_only");
  CHECK(line_of(bench, "df_infect") == "not_looked");
  tell(bench, "skin.infection_signs left sign_redness+sign_swelling");
  CHECK(line_of(bench, "df_infect") == "infected");
  tell(bench, "skin.redness_margin left 20");
  CHECK(line_of(bench, "df_infect") == "mild");
  tell(bench, "skin.redness_margin left 21");
  CHECK(line_of(bench, "df_infect") == "moderate");
  tell(bench, "general.pulse_rate 92");
  CHECK(line_of(bench, "df_infect") == "moderate");
  CHECK_FALSE(is_now(bench, "df_infect"));
  tell(bench, "general.temperature 381");
  CHECK(line_of(bench, "df_infect") == "severe");
  CHECK(is_now(bench, "df_infect"));
  Bench exactly = visit("diabetic_foot", 1966, "history.diabetes yes; skin.ulcer left yes; skin.ulcer_depth left depth_skin_only; skin.infection_signs left sign_redness+sign_pus; skin.redness_margin left 10;"
                                               "general.pulse_rate 90; general.temperature 380; general.respiratory_rate 20; general.lab_white_cells 12000");
  CHECK(line_of(exactly, "df_infect") == "mild");
}

TEST_CASE("df_infect: a dry sore with one sign is not infected, and is seen within one working day all the same") {
  Bench bench = visit("diabetic_foot", 1966, "history.diabetes yes; skin.ulcer left yes; skin.infection_signs left sign_warmth");
  CHECK(line_of(bench, "df_infect") == "raised");
  CHECK_FALSE(is_now(bench, "df_infect"));
}

TEST_CASE("df_infect: bone met, bone seen, dead tissue and poor blood are the same day at once; wet dead tissue interrupts") {
  const auto with = [](const char* sign) {
    Bench bench = visit("wound_or_numb_foot", 1966, "body.feeling_lost left yes; skin.ulcer left yes; skin.infection_signs left none_of_these");
    tell(bench, sign);
    return bench;
  };
  CHECK(line_of(with("skin.ulcer_probe_to_bone left yes"), "df_infect") == "bone");
  CHECK(line_of(with("skin.bone_visible left yes"), "df_infect") == "bone");
  CHECK(line_of(with("skin.black_toe left yes"), "df_infect") == "dead");
  CHECK(line_of(with("vessel.pulse_dorsalis_pedis left 0; vessel.pulse_posterior_tibial left 1"), "df_infect") == "poor_flow");
  // Dead tissue alone is no sore; dry, it is kept dry, and an open sore beside it is dressed moist: which is which is said.
  const std::string poor = "history.diabetes yes; history.weeks_since_onset 5; vessel.pulse_dorsalis_pedis left 0; vessel.pulse_posterior_tibial left 0; ";
  Bench dry = visit("diabetic_foot", 1954, poor + "skin.gangrene left gangrene_dry");
  CHECK(line_of(dry, "df_infect") == "dead_poor_flow");
  CHECK(meanwhile_says(dry, "df_infect", "dry_then_antibiotic"));
  CHECK(meanwhile_says(dry, "clti", "dry_and_covered"));
  tell(dry, "skin.ulcer left yes; skin.infection_signs left sign_pus+sign_redness");
  CHECK(line_of(dry, "df_infect") == "poor_flow");
  CHECK(meanwhile_says(dry, "df_infect", "sore_moist_then_antibiotic"));
  CHECK(meanwhile_says(dry, "clti", "dead_part_dry"));
  CHECK_FALSE(meanwhile_says(dry, "clti", "dry_and_covered"));
  tell(dry, "skin.gangrene left gangrene_wet");
  CHECK_FALSE(meanwhile_says(dry, "clti", "dry_and_covered"));
  CHECK_FALSE(meanwhile_says(dry, "clti", "dead_part_dry"));
  CHECK(line_of(visit("diabetic_foot", 1954, poor + "skin.ulcer left yes"), "df_infect") == "poor_flow");
  const Bench wet = with("skin.gangrene left gangrene_wet");
  CHECK(line_of(wet, "nsti") == "dead");  // the graver one, inside which the sore is shown
  CHECK(is_now(wet, "nsti"));
  CHECK_FALSE(alert(wet, "df_infect"));
}

TEST_CASE("df_infect: whole skin is asked and answered no; without diabetes and with a foot that feels it is none; one of them unknown is asked") {
  Bench whole = visit("diabetic_foot", 1966, "history.diabetes yes; skin.intact left yes");
  CHECK(flag(whole, "df_infect") == "asked_no");
  Bench felt = visit("wound_or_numb_foot", 1966, "skin.ulcer left yes; history.diabetes no");
  CHECK(flag(felt, "df_infect") == "not_asked");
  CHECK(asks(felt, "df_infect", "body.feeling_lost"));
  tell(felt, "body.feeling_lost left no");
  CHECK_FALSE(raised(felt, "df_infect"));
  CHECK(flag(felt, "df_infect") == "not_asked");  // that somebody has no diabetes is no answer about a sore
}

TEST_CASE("C13: clti: pain at rest, a sore or dead tissue for over two weeks with poor pulses is the same day, whatever the cause") {
  for (const char* sign : {"history.rest_pain_over_2_weeks left yes", "history.foot_ulcer_over_2_weeks left yes", "skin.black_toe left yes; history.weeks_since_onset 5"}) {
    CAPTURE(sign);
    Bench bench = visit("free", 1950, sign);
    CHECK_FALSE(raised(bench, "clti"));
    CHECK(asks(bench, "clti", "vessel.pulse_posterior_tibial"));
    tell(bench, "vessel.pulse_dorsalis_pedis left 1; vessel.pulse_posterior_tibial left 0");
    CHECK(raised(bench, "clti"));
    CHECK(alert(bench, "clti")->urgency == interpret::Urgency::same_day);
    CHECK_FALSE(is_now(bench, "clti"));
    tell(bench, "vessel.pulse_dorsalis_pedis left 2; vessel.pulse_posterior_tibial left 2");
    CHECK_FALSE(raised(bench, "clti"));
  }
  Bench pressed = visit("free", 1950, "history.rest_pain_over_2_weeks left yes; vessel.pressure_arm both 140; vessel.pressure_posterior_tibial left 70");
  CHECK(raised(pressed, "clti"));
  Bench neither = visit("diabetic_foot", 1950, "history.rest_pain_over_2_weeks left no; history.foot_ulcer_over_2_weeks left no; vessel.pulse_dorsalis_pedis left 0");
  CHECK(flag(neither, "clti") == "asked_no");
}

TEST_CASE("S09: treated for leprosy, sole ulcer, new foot drop, warm midfoot, no pain, no diabetes: three alerts the same day, no heel rise, nothing routine") {
  Bench bench = visit("wound_or_numb_foot", 1976,
                      "history.diabetes no; history.leprosy yes; skin.ulcer left yes; skin.ulcer_site left at_midfoot_sole; foot.hot_red_swollen left yes;"
                      "nerve.foot_drop left yes; history.foot_drop_new left yes; history.pain_now 0; foot.navicular_tender left no;"
                      "foot.fifth_metatarsal_base_tender left no; foot.pain_midfoot_zone left no");
  CHECK(line_of(bench, "charcot") == "with_wound");
  CHECK(raised(bench, "df_infect"));
  CHECK(raised(bench, "foot_drop_new"));
  for (const char* name : {"charcot", "df_infect", "foot_drop_new"}) {
    CHECK(alert(bench, name)->urgency == interpret::Urgency::same_day);
    CHECK_FALSE(alert(bench, name)->interrupts);
  }
  for (const char* rise : {"ankle.heel_rise_double", "ankle.heel_rise_single", "ankle.heel_rise_count"}) {
    CHECK_MESSAGE(stops(bench, "charcot", rise), rise);
  }
  for (const auto& rule : bench.assess().rules) {
    CHECK(rule.outcome != interpret::Outcome::negative);  // tender bone is not felt there, and no category is 0
    CHECK_FALSE((rule.band && rule.band->text == "category_0"));
  }
  for (const auto& step : bench.assess().steps) {
    CHECK_FALSE(step.step.text.starts_with("ankle.heel_rise"));
  }
}

TEST_CASE("S09: what the place is known not to have changes what is done meanwhile; not listed is unknown and changes nothing") {
  Bench bench = visit("wound_or_numb_foot", 1976, "history.leprosy yes; skin.ulcer left yes; foot.hot_red_swollen left yes");
  const auto at_place = [&](std::vector<model::Here> here) {
    interpret::AssessAsk ask = bench.ask();
    ask.place.emplace();
    ask.place->here = std::move(here);
    std::vector<std::string> said;
    for (const auto& one : interpret::assess(bench.exam, bench.person, {}, *bench.edition, ask).alerts) {
      for (const auto& message : one.meanwhile) {
        said.push_back(one.alert.text + " " + message.text);
      }
      CHECK(one.meanwhile.size() <= 3);
    }
    return said;
  };
  const auto says = [](const std::vector<std::string>& said, const char* line) { return std::find(said.begin(), said.end(), line) != said.end(); };
  CHECK(says(at_place({}), "alert.charcot msg.meanwhile.offload"));
  CHECK(says(at_place({{{"offloading"}, model::YesNo::yes}}), "alert.charcot msg.meanwhile.offload"));
  const auto without = at_place({{{"offloading"}, model::YesNo::no}, {{"dressings"}, model::YesNo::no}, {{"film"}, model::YesNo::no}});
  CHECK(says(without, "alert.charcot msg.meanwhile.offload_none_here"));
  CHECK(says(without, "alert.df_infect msg.meanwhile.offload_none_here"));
  CHECK(says(without, "alert.df_infect msg.meanwhile.cover_then_antibiotic"));
  CHECK(says(without, "alert.charcot msg.meanwhile.film_elsewhere"));
}

TEST_CASE("red flags 22: a moist dressing is for what is open: of a toe that is dry and dead the same foot is not told both, and a sore beside it keeps it") {
  const auto dressing = [](const std::string& found) {
    const Bench bench = visit("diabetic_foot", 1958, "history.diabetes yes; history.weeks_since_onset 5; vessel.pulse_dorsalis_pedis left 0; vessel.pulse_posterior_tibial left 0; " + found);
    std::vector<std::string> said;
    for (const auto& one : interpret::assess(bench.exam, bench.person, {}, *bench.edition, bench.ask()).alerts) {
      for (const auto& message : one.meanwhile) {
        if (one.alert.text == "alert.df_infect" && message.text.find("antibiotic") != std::string::npos) {
          said.push_back(message.text);
        }
      }
    }
    return said;
  };
  using Said = std::vector<std::string>;
  CHECK(dressing("skin.black_toe left yes; skin.gangrene left gangrene_dry") == Said{"msg.meanwhile.dry_then_antibiotic"});
  CHECK(dressing("skin.ulcer left yes; skin.gangrene left gangrene_dry; skin.infection_signs left redness_05_2") != Said{"msg.meanwhile.dry_then_antibiotic"});
  CHECK(dressing("skin.black_toe left yes; skin.ulcer left yes; skin.infection_signs left redness_05_2") == Said{"msg.meanwhile.sample_then_antibiotic"});
}
