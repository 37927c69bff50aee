// Infection that goes deep, and wounds that are small outside, by the red flags page (section 6, with its examples) and clinical
// safety C2 and C13. Deep signs: WSES2018, NSTI2021.
#include "tests/unit/interpret/alerts/story.hpp"

using namespace limbledger;
using namespace limbledger::interpret_test;

TEST_CASE("nsti: an infected skin with a numb patch is raised now and interrupts; with ordinary vital signs and pain in proportion it is not") {
  Bench bench = visit("wound_or_numb_foot", 1980, "skin.redness_spreading left yes");
  CHECK_FALSE(raised(bench, "nsti"));
  CHECK(asks(bench, "nsti", "skin.numb_patch"));
  Bench mild = bench;
  tell(mild, "skin.numb_patch left no; skin.dusky_or_blistered left no; skin.gas_crackle left no; skin.swelling_beyond_redness left no;"
             "history.pain_out_of_proportion left no; general.temperature 372; general.pulse_rate 84");
  CHECK_FALSE(raised(mild, "nsti"));
  CHECK(flag(mild, "nsti") == "asked_no");
  tell(bench, "skin.numb_patch left yes");
  CHECK(is_now(bench, "nsti"));
  CHECK(line_of(bench, "nsti") == "numb");
}

TEST_CASE("nsti: each deep sign raises it by its own line, and one sign that the whole body answers is enough where redness spreads") {
  const auto with = [](const std::string& sign) {
    Bench bench = visit("free", 1980, "skin.redness_spreading left yes");
    tell(bench, sign);
    CHECK(is_now(bench, "nsti"));
    return line_of(bench, "nsti");
  };
  CHECK(with("history.pain_out_of_proportion left yes") == "pain");
  CHECK(with("skin.swelling_beyond_redness left yes") == "swelling");
  CHECK(with("skin.dusky_or_blistered left yes") == "dead");
  CHECK(with("skin.gas_crackle left yes") == "gas");
  for (const char* sign : {"general.temperature 381", "general.temperature 359", "general.pulse_rate 91", "general.respiratory_rate 21",
                           "general.blood_pressure_systolic 89", "general.consciousness mind_new_confusion"}) {
    CAPTURE(sign);
    CHECK(with(sign) == "raised");
  }
  // At the limits themselves none holds.
  Bench at_limits = visit("free", 1980, "skin.redness_spreading left yes; general.temperature 380; general.pulse_rate 90; general.respiratory_rate 20; general.blood_pressure_systolic 91");
  CHECK_FALSE(raised(at_limits, "nsti"));
}

// NICE NG51 (2016): of 1 and 2 years, 40 breaths and a pulse of 140 are raised.
TEST_CASE("nsti: what is ordinary at two years is no sign that the body answers") {
  const auto at_two = [](const char* sign) { return visit("free", 2024, std::string("skin.redness_spreading left yes; general.temperature 375; ") + sign); };
  CHECK_FALSE(raised(at_two("general.pulse_rate 138"), "nsti"));
  CHECK_FALSE(raised(at_two("general.respiratory_rate 38"), "nsti"));
  CHECK_FALSE(raised(at_two("general.blood_pressure_systolic 86"), "nsti"));
  CHECK(is_now(at_two("general.pulse_rate 140"), "nsti"));
  CHECK(is_now(at_two("general.respiratory_rate 40"), "nsti"));
  CHECK(is_now(at_two("general.blood_pressure_systolic 73"), "nsti"));
}

TEST_CASE("nsti: gas and dead skin count without anybody having watched the redness; a fever, a numb foot or a great pain alone do not") {
  CHECK(is_now(visit("free", 1980, "skin.gas_crackle left yes"), "nsti"));
  CHECK(is_now(visit("free", 1980, "skin.dusky_or_blistered left yes"), "nsti"));
  for (const char* alone : {"general.temperature 392", "skin.numb_patch left yes", "history.pain_out_of_proportion left yes"}) {
    CAPTURE(alone);
    CHECK_FALSE(raised(visit("free", 1980, alone), "nsti"));
  }
  CHECK_FALSE(question(visit("free", 1980, "general.temperature 392"), "nsti"));
  Bench no_redness = visit("wound_or_numb_foot", 1980, "skin.redness_spreading left no; skin.infection_signs left none_of_these");
  CHECK(flag(no_redness, "nsti") == "asked_no");
}

TEST_CASE("C13: a puncture, a bite and something left inside are the same day; a sting or a snake is now, and none of them interrupts (C2)") {
  const std::vector<std::pair<const char*, const char*>> wounds{{"skin.deep_wound left wound_puncture", "raised"}, {"skin.deep_wound left wound_bite", "bite"},
                                                                {"skin.deep_wound left wound_body_left", "inside"}, {"skin.foreign_body left yes", "inside"},
                                                                {"skin.deep_wound left wound_sting_or_snake", "venom"},
                                                                {"history.compartment_causes left cause_snake", "venom"}};
  for (const auto& one : wounds) {
    CAPTURE(one.first);
    const Bench bench = visit("wound_or_numb_foot", 1990, one.first);
    const std::string line = one.second;
    CHECK(line_of(bench, "deep_wound") == line);
    CHECK(alert(bench, "deep_wound")->urgency == (line == "venom" ? interpret::Urgency::now : interpret::Urgency::same_day));
    CHECK_FALSE(alert(bench, "deep_wound")->interrupts);
    CHECK(meanwhile_says(bench, "deep_wound", "limb_still"));
  }
  CHECK(flag(visit("wound_or_numb_foot", 1990, "skin.deep_wound left none_of_these"), "deep_wound") == "asked_no");
  CHECK(flag(visit("wound_or_numb_foot", 1990), "deep_wound") == "not_asked");
  CHECK(flag(visit("wound_or_numb_foot", 1990, "skin.deep_wound left declined"), "deep_wound") == "cannot_answer");
}
