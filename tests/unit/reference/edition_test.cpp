#include "core/reference/edition.hpp"

#include "tests/unit/reference/planted.hpp"

#include <doctest/doctest.h>

#include <string>

using namespace limbledger;

TEST_CASE("the built-in edition loads whole") {
  const reference::Edition* edition = reference::built_in_edition();
  REQUIRE(edition != nullptr);
  CHECK(edition->id().text == "facts.1");
  // The items that the first knee examination was planned with.
  for (const char* name :
       {"knee.flexion_active", "knee.flexion_passive", "knee.extension_active", "knee.extension_passive", "knee.arc_active", "knee.arc_passive",
        "knee.effusion_stroke", "knee.lachman", "knee.mcmurray", "knee.joint_line_medial_tender", "knee.fibular_head_tender", "knee.patella_tender",
        "knee.bone_tender_elsewhere", "nerve.power_knee_extension", "nerve.strength_knee_extension", "vessel.pulse_dorsalis_pedis",
        "vessel.pressure_posterior_tibial", "vessel.pressure_arm", "leg.thigh_girth_10cm", "general.temperature", "general.body_mass",
        "function.single_leg_stance_eyes_open", "gait.steps_now", "history.steps_at_once", "history.mechanism", "history.knee_rule_exclusions",
        "general.answers_reliable", "body.pregnancy", "body.knee_fused", "body.knee_replaced", "history.own_words"}) {
    CHECK_MESSAGE(edition->item(model::ItemId{name}) != nullptr, name);
  }
  CHECK(edition->item(model::ItemId{"knee.flexion"}) == nullptr);
  CHECK(edition->scale(model::ScaleId{"mrc/1976"}) != nullptr);
  CHECK(edition->source(model::SourceId{"SOUCIE2011"}) != nullptr);
  CHECK(edition->catalogue().nearest_item(model::ItemId{"knee.flexon_active"}) == "knee.flexion_active");
}

TEST_CASE("the built-in edition says its name before it is read, and is read when it is asked for") {
  const reference::EditionRef later = reference::EditionRef::built_in();
  REQUIRE(reference::built_in_edition() != nullptr);
  CHECK(later.id() == reference::built_in_edition()->id());
  CHECK(later.get() == reference::built_in_edition());
  CHECK(later.id() == reference::built_in_edition()->id());
  CHECK(reference::EditionRef().get() == nullptr);
  CHECK(reference::EditionRef(reference::built_in_edition()).get() == reference::built_in_edition());
}

TEST_CASE("bony tenderness, pulses, pressures and every answer of the history stay out of a group entry") {
  const reference::Edition* edition = reference::built_in_edition();
  REQUIRE(edition != nullptr);
  for (const char* name : {"knee.fibular_head_tender", "knee.patella_tender", "knee.bone_tender_elsewhere", "vessel.pulse_dorsalis_pedis",
                           "vessel.pressure_posterior_tibial", "history.steps_at_once", "gait.steps_now", "body.pregnancy", "general.temperature"}) {
    CHECK_MESSAGE(edition->item(model::ItemId{name})->safety, name);
  }
}

TEST_CASE("a norm printed toward the other end is turned, sign and limits") {
  for (const reference::NormRow& row : invented_edition().norms()) {
    if (row.row.text == "norm.knee.extension.passive.any.0-1.INVENTED2") {
      // Printed 20 short of straight, interval 19 to 22, limits 10 to 30.
      CHECK(row.toward == model::Word{"extension"});
      CHECK(row.mean->steps == -20000);
      CHECK(row.ci95_low->steps == -22000);
      CHECK(row.ci95_high->steps == -19000);
      CHECK(row.typical_low->steps == -30000);
      CHECK(row.typical_high->steps == -10000);
      return;
    }
  }
  FAIL("the row is not there");
}

TEST_CASE("each check of the catalogue fires on one planted bad row") {
  const auto items = &InventedTexts::items;
  const std::string first = R"("item":"knee.flexion_active","family")";
  const Planted planted[] = {
      {items, R"("item":"knee.mcmurray")", R"("item":"knee.lachman")", "json.duplicate_member", "/items/14/item"},
      {items, first, R"("item":"leg.flexion_active","family")", "value.disagrees", "/items/0/item"},
      {items, R"("region":"knee")", R"("region":"kneee")", "params.unknown_word", "/items/0/region"},
      {items, R"("sides":["left","right"])", R"("sides":[])", "params.missing", "/items/0/sides"},
      {items, R"("unit":"deg")", R"("unit":"mm")", "value.disagrees", "/items/0/unit"},
      {items, R"("refuse":[-30,170])", R"("refuse":[170,-30])", "value.out_of_range", "/items/0/refuse"},
      {items, R"("refuse":[-30,170],)", "", "params.missing", "/items/0/refuse"},
      {items, R"("confirm":[0,165])", R"("confirm":[165,0])", "value.out_of_range", "/items/0/confirm"},
      {items, R"("confirm":[0,165])", R"("confirm":[-40,165])", "value.out_of_range", "/items/0/confirm"},
      {items, R"("value":"answer",)", R"("value":"answer","refuse":[0,1],)", "item.not_applicable", "/items/15/refuse"},
      {items, R"("toward":"flexion",)", "", "params.missing", "/items/0/axis"},
      {items, R"("end":"high","toward":"flexion")", R"("end":"high","toward":"extension")", "value.disagrees", "/items/0/toward"},
      {items, R"("arc":{"low":"knee.extension_passive")", R"("arc":{"low":"knee.flexion_active")", "item.unknown", "/items/4/arc/low"},
      {items, R"("high":"knee.flexion_passive"})", R"("high":"knee.nothing"})", "item.unknown", "/items/4/arc/high"},
      {items, R"("of_trials":"mean",)", "", "value.disagrees", "/items/0/of_trials"},
      {items, R"("scale":"invented/power",)", R"("scale":"invented/colour",)", "params.unknown_word", "/items/13/scale"},
      {items, R"("scale":"invented/power",)", "", "value.disagrees", "/items/13/scale"},
      {items, R"("choices":["twist","fall"],)", "", "value.disagrees", "/items/16/choices"},
      {items, R"("concern.invented")", R"("invented")", "params.unknown_word", "/items/1/withheld_by"},
      {items, R"("sources":["INVENTED1"])", R"("sources":["UNLISTED"])", "params.unknown_word", "/items/0/sources/0"},
      {items, R"("sources":["INVENTED1"])", R"("sources":[])", "params.missing", "/items/0/sources"},
      {&InventedTexts::scales, R"("grade":"1")", R"("grade":"0")", "json.duplicate_member", "/scales/0/grades/1"},
      {&InventedTexts::scales, R"("scale":"invented/power")", R"("scale":"invented/looseness")", "json.duplicate_member", "/scales/2/scale"},
      {&InventedTexts::scales, R"(["INVENTED2"])", R"(["UNLISTED"])", "params.unknown_word", "/scales/0/sources/0"},
      {&InventedTexts::sources, "INVENTED2", "INVENTED1", "json.duplicate_member", "/sources/1/source"},
      {&InventedTexts::edition, "2001-01-01", "2001-02-30", "value.date", "/dated"},
  };
  for (const Planted& one : planted) {
    check_planted(one);
  }
}

TEST_CASE("each check of norms and errors fires on one planted bad row") {
  const auto norms = &InventedTexts::norms;
  const auto errors = &InventedTexts::errors;
  const Planted planted[] = {
      {norms, "male.45-69.INVENTED2", "male.20-44.INVENTED1", "json.duplicate_member", "/norms/2/row"},
      {norms, R"("age_low":20,"age_high":44)", R"("age_low":44,"age_high":20)", "value.out_of_range", "/norms/0/age_low"},
      {norms, R"("sd":10,"ci95_low")", R"("sd":10.2,"ci95_low")", "value.disagrees", "/norms/0/sd"},
      {norms, R"("ci95_low":98.04)", R"("ci95_low":100.5)", "value.out_of_range", "/norms/0/ci95_low"},
      {norms, R"("ci95_low":98.04,)", "", "params.missing", "/norms/0/ci95_low"},
      {norms, R"("typical_low":80,)", "", "params.missing", "/norms/0/typical_low"},
      {norms, R"("typical_low":80)", R"("typical_low":81)", "value.disagrees", "/norms/0/typical_low"},
      {norms, R"("typical_high":120)", R"("typical_high":125)", "value.disagrees", "/norms/0/typical_high"},
      {norms, R"("typical_low":80)", R"("typical_low":101)", "value.out_of_range", "/norms/0/typical_low"},
      {norms, R"("limits":"printed",)", "", "params.missing", "/norms/5/sd"},
      {norms, R"("sd":5)", R"("sd":0)", "value.out_of_range", "/norms/1/sd"},
      {norms, R"("family":"knee.flexion")", R"("family":"knee.flection")", "item.unknown", "/norms/0/family"},
      {norms, R"("toward":"flexion")", R"("toward":"rotation")", "params.unknown_word", "/norms/0/toward"},
      {norms, R"("position":"supine")", R"("position":"floating")", "value.position", "/norms/0/position"},
      {norms, R"("instrument":"goniometer_long")", R"("instrument":"ruler")", "value.instrument", "/norms/0/instrument"},
      {norms, R"("source":"INVENTED1")", R"("source":"UNLISTED")", "params.unknown_word", "/norms/0/source"},
      {norms, R"("seen":"invented")", R"("seen":"")", "value.empty", "/norms/0/seen"},
      {norms, R"("n":40,"preferred":false,"source":"INVENTED2","status":"memory")", R"("n":40,"preferred":true,"source":"INVENTED2","status":"read")",
       "value.disagrees", "/norms/3/preferred"},
      {norms, R"("n":40,"preferred":true)", R"("n":40,"confidence":"low","preferred":true)", "value.disagrees", "/norms/2/preferred"},
      {norms, R"("n":40,"preferred":true)", R"("n":40,"preferred":true,"described":true)", "value.disagrees", "/norms/2/preferred"},
      {norms, R"("age_high":44,"mean":100)", R"("age_high":44,"age_months_low":230,"mean":100)", "value.disagrees", "/norms/0/age_months_low"},
      {norms, R"("age_high":44,"mean":100)", R"("age_high":44,"default_ages":{"low":10,"high":44},"mean":100)", "value.out_of_range", "/norms/0/default_ages"},
      {norms, R"("age_high":44,"mean":100)", R"("age_high":44,"mean":100,"items":["knee.nothing"])", "item.unknown", "/norms/0/items"},
      {norms, R"("age_high":44,"mean":100)", R"("age_high":44,"mean":100,"unit":"mm","items":["knee.flexion_passive"])", "value.disagrees", "/norms/0/unit"},
      {norms, R"("position":"prone")", R"("position":"supine")", "value.disagrees", "/norms/9/preferred"},
      {errors, R"("mdc95":20)", R"("mdc95":0)", "value.out_of_range", "/errors/0/mdc95"},
      {errors, R"("instrument":"by_eye")", R"("instrument":"by_ear")", "value.instrument", "/errors/2/instrument"},
      {errors, R"("instrument":"by_eye")", R"("instrument":"inclinometer")", "value.disagrees", "/errors/2/instrument"},
      {errors, R"("region":"hip",)", R"("region":"hip","item":"knee.flexion_active",)", "value.all_or_one", "/errors/3/region"},
      {errors, R"("item":"knee.flexion_active")", R"("item":"knee.lachman")", "item.unknown", "/errors/4/item"},
      {errors, R"("source":"INVENTED1")", R"("source":"UNLISTED")", "params.unknown_word", "/errors/0/source"},
      {errors, R"("seen":"invented")", R"("seen":"")", "value.empty", "/errors/0/seen"},
      {errors, R"("mdc95":30,)", R"("mdc95":30,"mdc95_low":10,)", "params.missing", "/errors/2/mdc95_low"},
      {errors, R"("mdc95":30,)", R"("mdc95":30,"mdc95_low":40,"mdc95_high":30,)", "value.out_of_range", "/errors/2/mdc95_low"},
      {errors, R"("mdc95":30,)", R"("mdc95":20,"mdc95_low":10,"mdc95_high":30,)", "value.disagrees", "/errors/2/mdc95"},
      {errors, "error.default.by_eye", "error.default.inclinometer", "json.duplicate_member", "/errors/2/row"},
  };
  for (const Planted& one : planted) {
    check_planted(one);
  }
}

TEST_CASE("each check of figures fires on one planted bad row, and an edition without figures loads") {
  const auto figures = &InventedTexts::figures;
  const Planted planted[] = {
      {figures, "figure.hypermobile.INVENTED1", "figure.capsular_ratio.INVENTED1", "json.duplicate_member", "/figures/1/row"},
      {figures, R"("low":0.1,)", "", "params.missing", "/figures/0/low"},
      {figures, R"("low":0.1,"high":0.8)", R"("low":0.8,"high":0.1)", "value.out_of_range", "/figures/0/low"},
      {figures, R"("value":0.5)", R"("value":0.7)", "value.out_of_range", "/figures/3/value"},
      {figures, R"("item":"knee.lachman")", R"("item":"knee.nothing")", "item.unknown", "/figures/3/item"},
      {figures, R"("source":"INVENTED1")", R"("source":"UNLISTED")", "params.unknown_word", "/figures/0/source"},
      {figures, R"("seen":"invented")", R"("seen":"")", "value.empty", "/figures/0/seen"},
  };
  for (const Planted& one : planted) {
    check_planted(one);
  }
  InventedTexts texts = invented_texts();
  texts.figures.clear();
  const auto edition = reference::Edition::load(texts.view());
  REQUIRE(edition.has_value());
  CHECK((*edition)->figures().empty());
}

TEST_CASE("a fault of the facts names the row") {
  InventedTexts texts = invented_texts();
  spoil(texts.norms, R"("sd":10,"ci95_low")", R"("sd":10.2,"ci95_low")");
  const auto edition = reference::Edition::load(texts.view());
  REQUIRE(edition.has_error());
  CHECK(edition.error().faults.front().expected.find("norm.knee.flexion.passive.male.20-44.INVENTED1") != std::string::npos);
}
