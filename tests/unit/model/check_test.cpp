#include "tests/unit/invented/edition.hpp"
#include "tests/unit/model/support.hpp"

using namespace limbledger;
using tests::check_json;
using tests::recorded;
using tests::value_for;

namespace {

// The same against the invented catalogue.
[[nodiscard]] std::string invented(std::string_view item, std::string_view value, std::string_view side = "left") {
  const auto checked = model::check(tests::observation_of(value_for(item, value, side)), invented_edition().catalogue(), {}, "");
  if (!checked.faults.empty()) {
    return checked.faults.front().code + "@" + checked.faults.front().path;
  }
  return wire::write(checked.observations.front().value);
}

std::string nearest_to(const std::string& item) { return check_json(value_for(item, R"({"kind":"angle","deg":110})")).faults.at(0).expected; }

}  // namespace

TEST_CASE("an unknown item is refused with the nearest name, a side it does not have with its sides") {
  const auto unknown = check_json(value_for("knee.flexon_active", R"({"kind":"angle","deg":110})"));
  REQUIRE(unknown.faults.size() == 1);
  CHECK(unknown.faults[0].code == "item.unknown");
  CHECK(unknown.faults[0].path == "/findings/0/item");
  CHECK(unknown.faults[0].expected == "nearest: knee.flexion_active");
  CHECK(unknown.faults[0].got.empty());
  // Short of a word, or the words in another order; and where no name is near, none is spoken of.
  CHECK(nearest_to("knee.flexion") == "nearest: knee.flexion_active, knee.flexion_passive");
  CHECK(nearest_to("vessel.cold_foot") == "nearest: vessel.foot_cold");
  CHECK(nearest_to("knee.flexion").find("knee.extension") == std::string::npos);
  CHECK(nearest_to("moon.rises") == "an item of the catalogue (nothing is near)");
  CHECK(recorded(value_for("knee.flexion_active", R"({"kind":"angle","deg":110})", "midline")) == "item.side@/side");
  CHECK(recorded(value_for("gait.steps_now", R"({"kind":"count","count":4})", "left")) == "item.side@/side");
}

TEST_CASE("all independent faults of one finding come at once") {
  CHECK(recorded(R"({"item":"knee.flexion_active","side":"midline","value":{"kind":"angle","deg":190},"instrument":"ruler","position":"floating","end_feel":"soft","origin":"observed"})") ==
        "item.side@/side value.instrument@/instrument value.position@/position item.not_applicable@/end_feel value.out_of_range@/value/deg");
}

TEST_CASE("the kind of value is the item's, or a reason why not") {
  CHECK(recorded(value_for("knee.flexion_active", R"({"kind":"length","mm":110})")) == "value.kind@/value/kind");
  CHECK(recorded(value_for("knee.lachman", R"({"kind":"test","result":"positive"})")) == "value.kind@/value/kind");
  for (const model::Item& item : reference::built_in_edition()->items()) {
    const char* side = item.sides.front() == model::Side::midline ? "midline" : "left";
    CHECK(check_json(value_for(item.item.text, R"({"kind":"not_done","reason":"no_time"})", side)).faults.empty());
  }
}

TEST_CASE("a reason of its own needs its words") {
  CHECK(recorded(value_for("knee.mcmurray", R"({"kind":"not_done","reason":"other"})")) == "value.why@/value/detail");
  CHECK_FALSE(wire::read_text<model::Value>(R"({"kind":"not_done","reason":"other","detail":""})").has_value());
  CHECK_FALSE(wire::read_text<model::Value>("{\"kind\":\"not_done\",\"reason\":\"other\",\"detail\":\" \u00a0\u200b\"}").has_value());
  CHECK(recorded(value_for("knee.mcmurray", R"({"kind":"not_done","reason":"other","detail":"dressing"})")) ==
        R"({"kind":"not_done","reason":"other","detail":"dressing"})");
  CHECK(recorded(value_for("knee.mcmurray", R"({"kind":"not_done","reason":"blocked","detail":"locked at 40"})")) ==
        R"({"kind":"not_done","reason":"blocked","detail":"locked at 40"})");
}

TEST_CASE("HC-007: centimetres and millimetres meet in millimetres, and the text stays") {
  // 87.5 cm is 875 mm.
  CHECK(recorded(value_for("leg.thigh_girth_10cm", R"({"kind":"length","entered":"87.5 cm"})", "right")) == R"({"kind":"length","mm":875,"entered":"87.5 cm"})");
  CHECK(recorded(value_for("leg.thigh_girth_10cm", R"({"kind":"length","entered":"865 mm"})")) == R"({"kind":"length","mm":865,"entered":"865 mm"})");
  CHECK(recorded(value_for("leg.thigh_girth_10cm", R"({"kind":"length","entered":"0.865 m"})")) == R"({"kind":"length","mm":865,"entered":"0.865 m"})");
  CHECK(recorded(value_for("leg.thigh_girth_10cm", R"({"kind":"length","mm":865,"entered":"86.5 cm"})")) == R"({"kind":"length","mm":865,"entered":"86.5 cm"})");
  CHECK(recorded(value_for("leg.thigh_girth_10cm", R"({"kind":"length","mm":864,"entered":"86.5 cm"})")) == "value.disagrees@/value/mm");
  CHECK(recorded(value_for("leg.thigh_girth_10cm", R"({"kind":"length","entered":"86.55 cm"})")) == "value.step@/value/entered");
  CHECK(recorded(value_for("leg.thigh_girth_10cm", R"({"kind":"length","entered":"86,5 cm"})")) == "params.wrong_type@/value/entered");
  CHECK(recorded(value_for("leg.thigh_girth_10cm", R"({"kind":"length","entered":"34 in"})")) == "params.wrong_type@/value/entered");
}

TEST_CASE("HC-008: a number without a unit is not guessed, and 870 cm is refused with the unit that was perhaps meant") {
  CHECK(recorded(value_for("leg.thigh_girth_10cm", R"({"kind":"length","entered":"870"})", "right")) == "value.unit_missing@/value/entered");
  CHECK(recorded(value_for("leg.thigh_girth_10cm", R"({"kind":"length","entered":"86.5"})")) == "value.unit_missing@/value/entered");
  const auto refused = check_json(value_for("leg.thigh_girth_10cm", R"({"kind":"length","entered":"870 cm"})", "right"));
  REQUIRE(refused.faults.size() == 1);
  CHECK(refused.faults[0].code == "value.out_of_range");
  CHECK(refused.faults[0].expected == "80 to 1500; did you mean 870 mm?");
}

TEST_CASE("other quantities take their units, their readings and their limits") {
  CHECK(recorded(value_for("general.temperature", R"({"kind":"temperature","entered":"36.8 \u00b0C"})", "midline")) ==
        "{\"kind\":\"temperature\",\"cel\":36.8,\"entered\":\"36.8 \u00b0C\"}");
  CHECK(recorded(value_for("general.temperature", R"({"kind":"temperature","entered":"98.6 F"})", "midline")) == "params.wrong_type@/value/entered");
  CHECK(recorded(value_for("general.temperature", R"({"kind":"temperature","cel":98.6})", "midline")) == "value.out_of_range@/value/cel");
  CHECK(recorded(value_for("general.temperature", R"({"kind":"temperature","cel":42.5})", "midline")) == "value.unusual@/value/cel");
  CHECK(recorded(value_for("general.body_mass", R"({"kind":"mass","entered":"3400 g"})", "midline")) == R"({"kind":"mass","kg":3.4,"entered":"3400 g"})");
  CHECK(recorded(value_for("general.body_mass", R"({"kind":"mass","entered":"3450 g"})", "midline")) == "value.step@/value/entered");
  CHECK(recorded(value_for("function.single_leg_stance_eyes_open", R"({"kind":"time","trials":[12.4,30,21]})")) ==
        R"({"kind":"time","s":30,"trials":[12.4,30,21],"of_trials":"best"})");
  CHECK(recorded(value_for("function.single_leg_stance_eyes_open", R"({"kind":"time","entered":"1.5 min"})")) ==
        R"({"kind":"time","s":90,"entered":"1.5 min"})");
  CHECK(recorded(value_for("nerve.strength_knee_extension", R"({"kind":"force","trials":[210,250,240]})")) ==
        R"({"kind":"force","n":250,"trials":[210,250,240],"of_trials":"best"})");
  CHECK(invented("nerve.invented_push", R"({"kind":"force","trials":[210,250,240]})") ==
        R"({"kind":"force","n":240,"trials":[210,250,240],"of_trials":"last"})");
  CHECK(recorded(value_for("nerve.strength_knee_extension", R"({"kind":"force"})")) == "value.all_or_one@/value");
  CHECK(recorded(value_for("vessel.pressure_arm", R"({"kind":"pressure","entered":"140 mmHg"})", "right")) ==
        R"({"kind":"pressure","mm_hg":140,"entered":"140 mmHg"})");
}

TEST_CASE("no sound is not a pressure of nothing, and a pressure of nothing without saying so is asked back") {
  CHECK(recorded(value_for("vessel.pressure_posterior_tibial", R"({"kind":"pressure","mm_hg":0,"signal":"absent"})")) ==
        R"({"kind":"pressure","mm_hg":0,"signal":"absent"})");
  CHECK(recorded(value_for("vessel.pressure_posterior_tibial", R"({"kind":"pressure","signal":"absent"})")) ==
        R"({"kind":"pressure","signal":"absent"})");
  CHECK(recorded(value_for("vessel.pressure_posterior_tibial", R"({"kind":"pressure","mm_hg":60,"signal":"absent"})")) == "value.disagrees@/value/signal");
  CHECK(recorded(value_for("vessel.pressure_posterior_tibial", R"({"kind":"pressure","mm_hg":0})")) == "value.unusual@/value/mm_hg");
}

TEST_CASE("a grade is of the item's scale, with a shade only where the scale has shades") {
  CHECK(recorded(value_for("knee.effusion_stroke", R"({"kind":"grade","scale":"effusion/stroke","grade":"2+"})")) ==
        R"({"kind":"grade","scale":"effusion/stroke","grade":"2+"})");
  CHECK(recorded(value_for("knee.effusion_stroke", R"({"kind":"grade","scale":"effusion/stroke","grade":"2"})")) == "value.grade@/value/grade");
  CHECK(recorded(value_for("knee.effusion_stroke", R"({"kind":"grade","scale":"mrc/1976","grade":"2"})")) == "value.grade@/value/scale");
  CHECK(recorded(value_for("nerve.power_knee_extension", R"({"kind":"grade","scale":"mrc/1976","grade":"4","shade":"minus"})")) ==
        R"({"kind":"grade","scale":"mrc/1976","grade":"4","shade":"minus"})");
  CHECK(recorded(value_for("nerve.power_knee_extension", R"({"kind":"grade","scale":"mrc/1976","grade":"5","shade":"plus"})")) == "value.grade@/value/shade");
  CHECK(recorded(value_for("nerve.power_knee_extension", R"({"kind":"grade","scale":"mrc/1976","grade":"4","mm":3})")) == "value.grade@/value/mm");
  const auto lachman = check_json(R"({"item":"knee.lachman","side":"left","value":{"kind":"grade","scale":"laxity/difference","grade":"2","mm":7},"end_feel":"soft","quality":["guarded"],"position":"supine"})");
  CHECK(lachman.faults.empty());
  CHECK(recorded(R"({"item":"knee.lachman","side":"left","value":{"kind":"grade","scale":"laxity/difference","grade":"2"},"end_feel":"springy_block"})") ==
        "params.unknown_word@/end_feel");
}

// Bands of the knee tests page, IKDC2000: 0 to 2, 3 to 5, 6 to 10, more than 10 mm.
TEST_CASE("a looseness in millimetres outside the band of its grade is asked back") {
  const auto lachman = [](const std::string& grade, int mm, const std::vector<std::string>& confirmed = {}) {
    return recorded(value_for("knee.lachman", R"({"kind":"grade","scale":"laxity/difference","grade":")" + grade + R"(","mm":)" + std::to_string(mm) + "}"),
                    confirmed);
  };
  const std::string asked = "finding.contradicts@/value/mm";
  const std::pair<int, const char*> edges[] = {{0, "0"}, {2, "0"}, {3, "1"}, {5, "1"}, {6, "2"}, {10, "2"}, {11, "3"}, {25, "3"}};
  for (const auto& edge : edges) {
    for (const char* grade : {"0", "1", "2", "3"}) {
      CAPTURE(edge.first);
      CAPTURE(grade);
      CHECK((lachman(grade, edge.first) == asked) == (std::string(grade) != edge.second));
    }
  }
  CHECK(lachman("0", 12, {"finding.contradicts"}) == R"({"kind":"grade","scale":"laxity/difference","grade":"0","mm":12})");
  CHECK(check_json(value_for("knee.lachman", R"({"kind":"grade","scale":"laxity/difference","grade":"3","mm":4})")).faults[0].expected ==
        "11 or more mm with this grade");
}

TEST_CASE("a negative test that reproduces a pain contradicts itself and is asked back") {
  const std::string negative = R"({"kind":"test","result":"negative","reproduces":"familiar"})";
  CHECK(recorded(value_for("knee.mcmurray", negative)) == "finding.contradicts@/value/reproduces");
  CHECK(recorded(value_for("knee.mcmurray", R"({"kind":"test","result":"negative","reproduces":"other"})")) == "finding.contradicts@/value/reproduces");
  CHECK(recorded(value_for("knee.mcmurray", negative), {"finding.contradicts"}) == negative);
  CHECK(recorded(R"({"item":"knee.mcmurray","side":"left","value":{"kind":"test","result":"negative"},"pain":{"familiar":true}})") ==
        "finding.contradicts@/pain/familiar");
  CHECK(check_json(value_for("knee.mcmurray", R"({"kind":"test","result":"positive","reproduces":"familiar"})")).faults.empty());
  CHECK(check_json(value_for("knee.mcmurray", R"({"kind":"test","result":"equivocal","reproduces":"other"})")).faults.empty());
  CHECK(check_json(value_for("knee.mcmurray", R"({"kind":"test","result":"negative"})")).faults.empty());
}

TEST_CASE("choices are the item's own, each once, and none of these stands alone") {
  CHECK(recorded(value_for("history.mechanism", R"({"kind":"choice","choice":"twist"})", "midline")) == R"({"kind":"choice","choice":"twist"})");
  CHECK(recorded(value_for("history.mechanism", R"({"kind":"choice","choice":"avalanche"})", "midline")) == "params.unknown_word@/value/choice");
  CHECK(recorded(value_for("history.knee_rule_exclusions", R"({"kind":"choices","choices":["none_of_these"]})", "midline")) ==
        R"({"kind":"choices","choices":["none_of_these"]})");
  CHECK(recorded(value_for("history.knee_rule_exclusions", R"({"kind":"choices","choices":["paraplegia","none_of_these"]})", "midline")) ==
        "value.disagrees@/value/choices/1");
  CHECK(recorded(value_for("history.knee_rule_exclusions", R"({"kind":"choices","choices":["paraplegia","paraplegia"]})", "midline")) ==
        "value.disagrees@/value/choices/1");
  CHECK(recorded(value_for("history.knee_rule_exclusions", R"({"kind":"choices","choices":[]})", "midline")) == "value.empty@/value/choices");
}

TEST_CASE("steps are counted to four") {
  CHECK(recorded(value_for("gait.steps_now", R"({"kind":"count","count":4})", "midline")) == R"({"kind":"count","count":4})");
  CHECK(recorded(value_for("gait.steps_now", R"({"kind":"count","count":5})", "midline")) == "value.out_of_range@/value/count");
}

TEST_CASE("a group entry never covers what safety rests on") {
  CHECK(recorded(R"({"item":"knee.patella_tender","side":"left","value":{"kind":"answer","answer":"no"},"origin":"bulk_expected"})") ==
        "item.not_applicable@/origin");
  CHECK(recorded(R"({"item":"vessel.pulse_dorsalis_pedis","side":"left","value":{"kind":"grade","scale":"pulse/0-3","grade":"2"},"origin":"bulk_expected"})") ==
        "item.not_applicable@/origin");
  CHECK(check_json(R"({"item":"knee.mcmurray","side":"left","value":{"kind":"test","result":"negative"},"origin":"bulk_expected"})").faults.empty());
  CHECK(check_json(R"({"item":"knee.patella_tender","side":"left","value":{"kind":"answer","answer":"no"},"origin":"self_reported"})").faults.empty());
}

TEST_CASE("own words are kept as they are, and nothing at all is not recorded") {
  CHECK(recorded(value_for("history.own_words", R"({"kind":"text","text":"it went out when I turned"})", "midline")) ==
        R"({"kind":"text","text":"it went out when I turned"})");
  const auto empty = wire::read_text<model::Value>(R"({"kind":"text","text":""})");
  REQUIRE_FALSE(empty.has_value());
  CHECK(empty.error().faults.front().code == "value.empty");
}

TEST_CASE("what is recorded once is recorded the same when it is sent again") {
  for (const char* json : {
           R"({"item":"leg.thigh_girth_10cm","side":"left","value":{"kind":"length","entered":"47.5 cm","trials":[474,476]}})",
           R"({"item":"knee.extension_active","side":"left","value":{"kind":"angle","trials":[2,4],"toward_deg":-3}})",
           R"({"item":"knee.flexion_active","side":"left","value":{"kind":"angle","entered":">120"}})",
           R"({"item":"vessel.pressure_arm","side":"left","value":{"kind":"pressure","mm_hg":140}})"}) {
    const auto once = check_json(json);
    REQUIRE(once.observations.size() == 1);
    const auto twice = model::check(once.observations.front(), reference::built_in_edition()->catalogue(), {}, "");
    REQUIRE_MESSAGE(twice.observations.size() == 1, json);
    CHECK(twice.observations.front() == once.observations.front());
  }
}
