#include "tests/unit/model/support.hpp"

using namespace limbledger;
using tests::check_json;
using tests::recorded;
using tests::value_for;

TEST_CASE("HC-001: 5-0-140 goes five beyond straight and bends to 140") {
  const auto checked = check_json(R"({"item":"knee.arc_passive","side":"left","value":{"kind":"angle","entered":"5-0-140","order":"extension_zero_flexion"},"instrument":"goniometer_long","position":"supine"})");
  REQUIRE(checked.faults.empty());
  REQUIRE(checked.observations.size() == 2);
  CHECK(wire::write(checked.observations[0]) ==
        R"({"item":"knee.extension_passive","side":"left","value":{"kind":"angle","deg":-5,"toward":"extension","toward_deg":5,"entered":"5-0-140","order":"extension_zero_flexion"},"instrument":"goniometer_long","position":"supine"})");
  CHECK(wire::write(checked.observations[1]) ==
        R"({"item":"knee.flexion_passive","side":"left","value":{"kind":"angle","deg":140,"toward":"flexion","toward_deg":140,"entered":"5-0-140","order":"extension_zero_flexion"},"instrument":"goniometer_long","position":"supine"})");
}

TEST_CASE("HC-002: 0-20-110 moves from 20 to 110, in either order of the text") {
  const std::string ends =
      R"({"kind":"angle","deg":20,"toward":"extension","toward_deg":-20,"entered":"0-20-110","order":"extension_zero_flexion"} )"
      R"({"kind":"angle","deg":110,"toward":"flexion","toward_deg":110,"entered":"0-20-110","order":"extension_zero_flexion"})";
  CHECK(recorded(value_for("knee.arc_passive", R"({"kind":"angle","entered":"0-20-110","order":"extension_zero_flexion"})", "right")) == ends);
  const auto turned = check_json(value_for("knee.arc_passive", R"({"kind":"angle","entered":"110-20-0","order":"flexion_zero_extension"})", "right"));
  REQUIRE(turned.observations.size() == 2);
  CHECK(std::get<model::Angle>(turned.observations[0].value).deg->steps == 200);
  CHECK(std::get<model::Angle>(turned.observations[1].value).deg->steps == 1100);
}

TEST_CASE("HC-003: a bare minus ten is kept as written and has no number") {
  CHECK(recorded(value_for("knee.extension_passive", R"({"kind":"angle","entered":"-10"})", "right")) ==
        R"({"kind":"angle","entered":"-10","reads":"unresolved"})");
  // So does a plus, and a plain number: both readings of it are in daily use at this end of the axis.
  CHECK(recorded(value_for("knee.extension_passive", R"({"kind":"angle","entered":"+10"})")) ==
        R"({"kind":"angle","entered":"+10","reads":"unresolved"})");
  CHECK(recorded(value_for("knee.extension_passive", R"({"kind":"angle","entered":"10"})")) ==
        R"({"kind":"angle","entered":"10","reads":"unresolved"})");
  CHECK(recorded(value_for("knee.extension_passive", R"({"kind":"angle","entered":"0"})")) ==
        R"({"kind":"angle","deg":0,"toward":"extension","toward_deg":0,"entered":"0"})");
  // The same of a triple whose order nobody wrote down: two ends, no numbers.
  CHECK(recorded(value_for("knee.arc_passive", R"({"kind":"angle","entered":"0-20-110"})")) ==
        R"({"kind":"angle","entered":"0-20-110","reads":"unresolved"} {"kind":"angle","entered":"0-20-110","reads":"unresolved"})");
}

TEST_CASE("HC-004: the same +5 in two declared conventions is -5 and 5, and the convention stays with the text") {
  CHECK(recorded(value_for("knee.extension_passive", R"({"kind":"angle","entered":"+5","order":"extension"})")) ==
        R"({"kind":"angle","deg":-5,"toward":"extension","toward_deg":5,"entered":"+5","order":"extension"})");
  CHECK(recorded(value_for("knee.extension_passive", R"({"kind":"angle","entered":"+5","order":"flexion"})")) ==
        R"({"kind":"angle","deg":5,"toward":"extension","toward_deg":-5,"entered":"+5","order":"flexion"})");
  CHECK(recorded(value_for("knee.extension_passive", R"({"kind":"angle","entered":"+5","toward":"flexion"})")) ==
        R"({"kind":"angle","deg":5,"toward":"extension","toward_deg":-5,"entered":"+5","order":"flexion"})");
  CHECK(recorded(value_for("knee.extension_passive", R"({"kind":"angle","entered":"+5","order":"abduction"})")) == "params.unknown_word@/value/order");
}

TEST_CASE("HC-005: a fused knee has both ends at 15, and that is a value") {
  const auto checked = check_json(value_for("knee.arc_passive", R"({"kind":"angle","entered":"0-15-15","order":"extension_zero_flexion"})"));
  REQUIRE(checked.observations.size() == 2);
  CHECK(std::get<model::Angle>(checked.observations[0].value).deg->steps == 150);
  CHECK(std::get<model::Angle>(checked.observations[1].value).deg->steps == 150);
  const auto not_done = check_json(value_for("knee.arc_active", R"({"kind":"not_done","reason":"fused"})"));
  REQUIRE(not_done.observations.size() == 2);
  CHECK(not_done.observations[0].item.text == "knee.extension_active");
  CHECK(not_done.observations[1].item.text == "knee.flexion_active");
}

TEST_CASE("HC-012: 13.5 is taken, 168 is asked back once, 1350 and 190 are refused with the limit named") {
  CHECK(recorded(value_for("knee.flexion_active", R"({"kind":"angle","deg":13.5})")) ==
        R"({"kind":"angle","deg":13.5,"toward":"flexion","toward_deg":13.5})");
  CHECK(recorded(value_for("knee.flexion_active", R"({"kind":"angle","deg":1350})")) == "value.out_of_range@/value/deg");
  const auto refused = check_json(value_for("knee.flexion_active", R"({"kind":"angle","deg":190})"), {"value.unusual"});
  REQUIRE(refused.faults.size() == 1);
  CHECK(refused.faults[0].code == "value.out_of_range");
  CHECK(refused.faults[0].expected == "-30 to 170");
  CHECK(refused.faults[0].got == "190");
  const auto asked = check_json(value_for("knee.flexion_active", R"({"kind":"angle","deg":168})"));
  REQUIRE(asked.faults.size() == 1);
  CHECK(asked.faults[0].code == "value.unusual");
  CHECK(asked.faults[0].path == "/findings/0/value/deg");
  CHECK(asked.faults[0].expected == "0 to 165");
  CHECK(asked.faults[0].got == "168");
  REQUIRE(asked.faults[0].params.size() == 2);
  CHECK(asked.faults[0].params[0].json == "0");
  CHECK(asked.faults[0].params[1].json == "165");
  CHECK(recorded(value_for("knee.flexion_active", R"({"kind":"angle","deg":168})"), {"value.unusual"}) ==
        R"({"kind":"angle","deg":168,"toward":"flexion","toward_deg":168})");
  // The edges themselves are inside: 162 was measured in girls, 165 and 0 are not asked back, 170 and -30 are not refused.
  for (const char* deg : {"0", "162", "165"}) {
    CHECK(check_json(value_for("knee.flexion_passive", R"({"kind":"angle","deg":)" + std::string(deg) + "}")).faults.empty());
  }
  for (const char* deg : {"-30", "-0.1", "165.1", "170"}) {
    CHECK(recorded(value_for("knee.flexion_passive", R"({"kind":"angle","deg":)" + std::string(deg) + "}")) == "value.unusual@/value/deg");
  }
  for (const char* deg : {"-30.1", "170.1"}) {
    CHECK(recorded(value_for("knee.flexion_passive", R"({"kind":"angle","deg":)" + std::string(deg) + "}")) == "value.out_of_range@/value/deg");
  }
  CHECK(recorded(value_for("knee.flexion_active", R"({"kind":"angle","entered":"1350"})")) == "value.out_of_range@/value/entered");
}

TEST_CASE("HC-013: an inequality, a word and a comparison stay what they are") {
  CHECK(recorded(value_for("knee.flexion_active", R"({"kind":"angle","entered":">120"})")) ==
        R"({"kind":"angle","deg":120,"toward":"flexion","toward_deg":120,"entered":">120","bound":"at_least"})");
  CHECK(recorded(value_for("knee.flexion_passive", R"({"kind":"angle","entered":"full"})")) == R"({"kind":"angle","entered":"full","reads":"full"})");
  CHECK(recorded(value_for("knee.flexion_passive", R"({"kind":"angle","entered":"equal to other side"})")) ==
        R"({"kind":"angle","entered":"equal to other side","reads":"same_as_other_side"})");
  // A word of another language, with what the examiner says it means; and one that means nothing agreed.
  CHECK(recorded(value_for("knee.flexion_passive", R"({"kind":"angle","entered":"frei","reads":"full"})")) ==
        R"({"kind":"angle","entered":"frei","reads":"full"})");
  CHECK(recorded(value_for("knee.flexion_passive", R"({"kind":"angle","entered":"so-so"})")) ==
        R"({"kind":"angle","entered":"so-so","reads":"unresolved"})");
  CHECK(recorded(value_for("knee.flexion_passive", R"({"kind":"angle","entered":"120","reads":"full"})")) == "value.disagrees@/value/reads");
}

TEST_CASE("HC-014: another mode or position is another item of the same family, and neither overwrites the other") {
  const reference::Edition* edition = reference::built_in_edition();
  const model::Item* active = edition->item(model::ItemId{"knee.flexion_active"});
  const model::Item* passive = edition->item(model::ItemId{"knee.flexion_passive"});
  CHECK(active->family == passive->family);
  CHECK(!(active->item == passive->item));
}

TEST_CASE("degrees toward the named direction are turned on to the axis, and limits are shown turned too") {
  CHECK(recorded(value_for("knee.extension_passive", R"({"kind":"angle","toward_deg":5})")) ==
        R"({"kind":"angle","deg":-5,"toward":"extension","toward_deg":5})");
  CHECK(recorded(value_for("knee.extension_passive", R"({"kind":"angle","deg":20})")) ==
        R"({"kind":"angle","deg":20,"toward":"extension","toward_deg":-20})");
  const auto asked = check_json(value_for("knee.extension_passive", R"({"kind":"angle","toward_deg":20})"));
  REQUIRE(asked.faults.size() == 1);
  CHECK(asked.faults[0].path == "/findings/0/value/toward_deg");
  CHECK(asked.faults[0].expected == "-60 to 15");
  CHECK(asked.faults[0].got == "20");
}

TEST_CASE("exactly one way of giving an angle") {
  for (const char* value : {R"({"kind":"angle"})", R"({"kind":"angle","deg":20,"toward_deg":-20})", R"({"kind":"angle","deg":20,"entered":"20"})",
                            R"({"kind":"angle","toward_deg":20,"entered":"20"})", R"({"kind":"angle","of_trials":"mean"})",
                            R"({"kind":"angle","reads":"full"})"}) {
    CHECK_MESSAGE(recorded(value_for("knee.extension_passive", value)).starts_with("value.all_or_one@/value"), value);
  }
  CHECK(recorded(value_for("knee.arc_passive", R"({"kind":"angle","deg":20})")) == "value.all_or_one@/value");
}

TEST_CASE("what was given out can be sent back as it is, and only as it is") {
  for (const char* value :
       {R"({"kind":"angle","deg":20,"toward":"extension","toward_deg":-20,"entered":"0-20-110","order":"extension_zero_flexion"})",
        R"({"kind":"angle","deg":5,"toward":"extension","toward_deg":-5,"entered":"+5","order":"flexion"})",
        R"({"kind":"angle","deg":12,"toward":"extension","toward_deg":-12,"trials":[11,13],"of_trials":"mean"})",
        R"({"kind":"angle","entered":"0-20-110","reads":"unresolved"})"}) {
    CHECK(recorded(value_for("knee.extension_passive", value)) == value);
  }
  CHECK(recorded(value_for("knee.extension_passive", R"({"kind":"angle","deg":20,"toward":"extension","toward_deg":20})")) ==
        "value.disagrees@/value/toward_deg");
  CHECK(recorded(value_for("knee.extension_passive", R"({"kind":"angle","deg":20,"toward":"flexion","toward_deg":20})")) ==
        "value.disagrees@/value/toward");
  CHECK(recorded(value_for("knee.extension_passive",
                           R"({"kind":"angle","deg":20,"toward":"extension","toward_deg":-20,"entered":"0-30-110","order":"extension_zero_flexion"})")) ==
        "value.disagrees@/value/entered");
}

TEST_CASE("readings are summed as the item says, and a value sent beside them must agree") {
  CHECK(recorded(value_for("knee.flexion_active", R"({"kind":"angle","trials":[111,113]})")) ==
        R"({"kind":"angle","deg":112,"toward":"flexion","toward_deg":112,"trials":[111,113],"of_trials":"mean"})");
  // 118 and 119.1 make 118.55, which rounds away from zero to 118.6; minus 3.05 likewise to minus 3.1.
  CHECK(recorded(value_for("knee.flexion_active", R"({"kind":"angle","trials":[118,119.1]})")).find(R"("deg":118.6,)") != std::string::npos);
  CHECK(recorded(value_for("knee.extension_active", R"({"kind":"angle","trials":[-3,-3.1]})"), {"value.sign"}).find(R"("deg":-3.1,)") != std::string::npos);
  CHECK(recorded(value_for("knee.flexion_active", R"({"kind":"angle","deg":112,"trials":[111,113]})")).find(R"("deg":112,)") != std::string::npos);
  CHECK(recorded(value_for("knee.flexion_active", R"({"kind":"angle","deg":113,"trials":[111,113]})")) == "value.disagrees@/value/deg");
  CHECK(recorded(value_for("knee.flexion_active", R"({"kind":"angle","trials":[111,113],"of_trials":"best"})")) == "value.disagrees@/value/of_trials");
  CHECK(recorded(value_for("knee.flexion_active", R"({"kind":"angle","trials":[]})")) == "value.trials@/value/trials");
  CHECK(recorded(value_for("knee.flexion_active", R"({"kind":"angle","trials":[1,2,3,4,5,6]})")) == "value.trials@/value/trials");
  CHECK(recorded(value_for("knee.flexion_active", R"({"kind":"angle","trials":[111,311]})")) == "value.out_of_range@/value/trials/1");
}

TEST_CASE("an order that does not fit the arc is refused and both orders that do are named") {
  const auto wrong = check_json(value_for("knee.arc_passive", R"({"kind":"angle","entered":"40-0-15","order":"external_rotation_zero_internal_rotation"})"));
  REQUIRE(wrong.faults.size() == 1);
  CHECK(wrong.faults[0].code == "value.neutral_zero");
  CHECK(wrong.faults[0].expected == "extension_zero_flexion or flexion_zero_extension");
  CHECK(recorded(value_for("knee.arc_passive", R"({"kind":"angle","entered":"5-10-140","order":"extension_zero_flexion"})")) ==
        "value.neutral_zero@/value/entered");
  // A triple on one end would lose the other end.
  CHECK(recorded(value_for("knee.extension_passive", R"({"kind":"angle","entered":"0-20-110","order":"extension_zero_flexion"})")) ==
        "value.neutral_zero@/value/entered");
  CHECK(recorded(value_for("knee.arc_passive", R"({"kind":"angle","entered":"0-20-190","order":"extension_zero_flexion"})")) ==
        "value.out_of_range@/value/entered");
}

TEST_CASE("readings of an extension that can be meant either way are asked back, and said with their direction they are not, or are refused") {
  const auto extension = [](const std::string& members, const std::vector<std::string>& confirmed = {}) {
    return recorded(value_for("knee.extension_active", R"({"kind":"angle",)" + members + "}"), confirmed);
  };
  // Ten short of straight, by who counts toward extension; 11 beyond straight as it stands.
  const auto asked = check_json(value_for("knee.extension_active", R"({"kind":"angle","trials":[-10,-12]})"));
  REQUIRE(asked.faults.size() == 1);
  CHECK(asked.faults[0].code == "value.sign");
  CHECK(asked.faults[0].path == "/findings/0/value/trials");
  CHECK(asked.faults[0].params.front().json == "11");
  CHECK(extension(R"("trials":[10,12])") == "value.sign@/value/trials");
  CHECK(extension(R"("trials":[10,12],"toward":"extension")") == "value.sign@/value/trials");
  CHECK(extension(R"("trials":[10,12],"toward_deg":-11)").find(R"("deg":11,"toward":"extension","toward_deg":-11,)") != std::string::npos);
  CHECK(extension(R"("trials":[-10,-12],"toward_deg":-11)") == "value.disagrees@/value/toward_deg");
  CHECK(extension(R"("trials":[-10,-12])", {"value.sign"}).find(R"("toward_deg":11,)") != std::string::npos);
  CHECK(extension(R"("trials":[0,0])").find(R"("deg":0,)") != std::string::npos);
  // The end that the axis is named for has one meaning.
  CHECK(recorded(value_for("knee.flexion_active", R"({"kind":"angle","trials":[10,12]})")).find(R"("toward_deg":11,)") != std::string::npos);
  // Forty toward plantar flexion cannot be forty the other way.
  CHECK(recorded(value_for("ankle.plantarflexion_active_knee_bent", R"({"kind":"angle","trials":[-40,-42]})")).find(R"("toward_deg":41,)") != std::string::npos);
}

// A knee that is read 12 and 14 beyond straight: on the axis of flexion that is less than zero, toward extension it is more.
TEST_CASE("readings and a direction that differ by their sign are refused with what each of them says, and both faults say what to turn") {
  const auto refused = check_json(value_for("knee.extension_active", R"({"kind":"angle","trials":[-12,-14],"toward_deg":-13})"));
  REQUIRE(refused.faults.size() == 1);
  const wire::Fault& fault = refused.faults[0];
  CHECK(fault.code == "value.disagrees");
  CHECK(fault.got == "-13");
  CHECK(fault.expected == "toward_deg 13: the readings are -13 along the axis, on which the way toward flexion is more than zero and that toward extension less");
  for (const char* code : {"value.disagrees", "value.sign"}) {
    CHECK(wire::find_fault_code(code)->hint.find("turn the sign of the readings, or of toward_deg") != std::string_view::npos);
    CHECK(wire::find_fault_code(code)->hint.find("readings alone") == std::string_view::npos);
  }
  // What the hints say is taken.
  CHECK(recorded(value_for("knee.extension_active", R"({"kind":"angle","trials":[12,14],"toward_deg":-13})")).find(R"("toward_deg":-13,)") != std::string::npos);
  CHECK(recorded(value_for("knee.extension_active", R"({"kind":"angle","trials":[-12,-14],"toward_deg":13})")).find(R"("toward_deg":13,)") != std::string::npos);
}

TEST_CASE("millimetres beside a grade have an upper limit, also where the grade has none") {
  const auto lachman = [](const std::string& mm) {
    return recorded(value_for("knee.lachman", R"({"kind":"grade","scale":"laxity/difference","grade":"3","mm":)" + mm + "}"), {"finding.contradicts"});
  };
  CHECK(lachman("50").find("\"mm\":50") != std::string::npos);
  CHECK(lachman("51") == "value.out_of_range@/value/mm");
  CHECK(lachman("100000") == "value.out_of_range@/value/mm");
}
