// Planted cases of people who took no steps before: steps that are not taken now are no danger there, and what shows one otherwise still is. Sources:
// the red flags page, section 12 ("unexplained loss of walking") and 8, and the words of the items; what stands for lost steps is our own rule.
// People and findings are invented.
#include "tests/unit/interpret/alerts/story.hpp"

using namespace limbledger;
using namespace limbledger::interpret_test;

namespace {

Bench of_no_side(const std::string& complaint, int born, const std::string& story) {
  Bench bench = visit(complaint, born, story);
  bench.exam.side.reset();
  return bench;
}
constexpr const char* no_steps[] = {"history.walks_usually walks_wheelchair; ", "history.walks_usually walks_bed; ", "body.chair_user yes; ",
                                    "history.weight_bearing both bears_never_walked; "};

}  // namespace

TEST_CASE("planted: of a person of no known age who takes no steps the line of the hip says nothing of how the leg lies") {
  for (const char* why : {"hip_groin", "diabetic_foot", "no_complaint"}) {
    CAPTURE(why);
    Bench bench = visit(why, 1940, "gait.steps_now 0; hip.log_roll left positive; history.walking_lost yes");
    bench.person.reset();
    CHECK(line_of(bench, "hip_fx_old") != "lies_so");
  }
}

// Section 12: its gate is an age, and unknown is not no (section 0). That lost steps by themselves tell of no age is our own rule.
TEST_CASE("planted: of a person of no known age steps that are not taken, and nothing else, raise neither an old hip nor a child's joint: the age is asked") {
  const auto of_no_age = [](const std::string& complaint, const std::string& story) {
    Bench bench = visit(complaint, 1940, story);
    bench.person->birth.reset();
    return bench;
  };
  const auto asks_age = [](const Bench& bench, const std::string& name) {
    const auto found = question(bench, name);
    return found && found->message.text == "msg.question." + name + ".age";
  };
  for (const char* why : {"forefoot_pain", "diabetic_foot", "free"}) {
    CAPTURE(why);
    const Bench bench = of_no_age(why, "history.mechanism no_injury; gait.steps_now 0; history.weeks_since_onset 0");
    for (const char* name : {"hip_fx_old", "septic_child", "limp_child"}) {
      CAPTURE(name);
      CHECK(line_of(bench, name) == "none");
    }
    CHECK(asks_age(bench, "hip_fx_old"));
    CHECK(asks_age(bench, "septic_child"));
    // Told to have stopped walking, fallen, or complaining of the hip it stays, and the line says that the age is open.
    CHECK(line_of(of_no_age(why, "gait.steps_now 0; history.walking_lost yes"), "hip_fx_old") == "age_open");
    CHECK(line_of(of_no_age(why, "gait.steps_now 0; history.fall_recent yes"), "hip_fx_old") == "age_open");
    CHECK(line_of(of_no_age(why, "gait.steps_now 0; history.walking_lost yes; history.frail yes"), "hip_fx_old") == "raised");
  }
  CHECK(line_of(of_no_age("hip_groin", "history.mechanism no_injury; gait.steps_now 0"), "hip_fx_old") == "age_open");
  CHECK(line_of(of_no_age("limping_child", "history.mechanism no_injury; gait.limp yes; gait.steps_now 0"), "septic_child") != "none");
  CHECK(line_of(visit("forefoot_pain", 1940, "history.mechanism no_injury; gait.steps_now 0"), "hip_fx_old") == "raised");
}

// Section 1 ("what suspects a break"); that such bones break without an injury is our own rule, as of the hip.
TEST_CASE("planted: a leg newly bent of who took no steps before is broken until a film shows otherwise, with an injury denied; an old bend and a walker's are not") {
  for (const char* before : no_steps) {
    CAPTURE(before);
    const std::string bent = "leg.look_deformity left yes; history.mechanism no_injury; ";
    CHECK(line_of(visit("limping_child", 2018, before + bent), "fracture") == "without_steps");
    CHECK_FALSE(is_now(visit("limping_child", 2018, before + bent), "fracture"));
    CHECK(line_of(visit("free", 1950, before + bent + "history.weeks_since_onset 30"), "fracture") == "none");
  }
  CHECK(line_of(visit("limping_child", 2018, "leg.look_deformity left yes; history.mechanism no_injury"), "fracture") == "none");
  // When the first steps were taken tells nothing of who sits or lies today.
  for (const char* now : {"body.chair_user yes; ", "history.walks_usually walks_bed; "}) {
    CAPTURE(now);
    CHECK(line_of(visit("free", 1950, std::string(now) + "history.walking_age_months 13; leg.look_deformity left yes; history.mechanism no_injury"), "fracture") == "without_steps");
  }
}

TEST_CASE("planted: no steps of who took none before call no broken hip; of who walked they do, and so does a hip that hurts when it is moved") {
  for (const char* before : no_steps) {
    CAPTURE(before);
    for (const char* why : {"diabetic_foot", "no_complaint", "hip_groin", "wound_or_numb_foot"}) {
      CAPTURE(why);
      const std::string story = std::string(before) + "gait.steps_now 0; ";
      CHECK(line_of(visit(why, 1934, story), "hip_fx_old") == "none");
      CHECK(line_of(of_no_side(why, 1934, story), "hip_fx_old") == "none");
    }
    // The danger shows otherwise: no fall is needed.
    for (const char* shows : {"hip.log_roll left positive", "hip.log_roll left pain", "hip.pain_passive_severe left yes", "hip.leg_attitude left attitude_short_turned_out",
                              "hip.heel_push left positive", "history.pain_severe_sudden yes; hip.log_roll left positive", "history.fall_recent yes; history.pain_site left site_groin",
                              "history.walking_lost yes", "gait.pattern will_not_walk"}) {
      CAPTURE(shows);
      CHECK(line_of(visit("hip_groin", 1934, std::string(before) + "gait.steps_now 0; " + shows), "hip_fx_old") != "none");
    }
    // A fall, and nobody who can tell of pain; a fall at sixty with the leg free and painless is asked after.
    CHECK(line_of(visit("hip_after_fall", 1934, std::string(before) + "gait.steps_now 0; history.fall_recent yes; history.memory_poor yes"), "hip_fx_old") == "raised");
    CHECK(asks(visit("hip_after_fall", 1934, std::string(before) + "gait.steps_now 0; history.fall_recent yes"), "hip_fx_old", "hip.log_roll"));
    CHECK(line_of(visit("hip_after_fall", 1976, std::string(before) + "gait.steps_now 0; history.fall_recent yes; hip.heel_push left positive"), "hip_fx_old") == "signs");
  }
  CHECK(line_of(visit("hip_groin", 1934, "history.walks_usually walks_bed; gait.steps_now 0; hip.log_roll left positive"), "hip_fx_old") == "without_steps");
  // A hip that has hurt for years; one that lies turned out like the other; and a walker who stopped.
  CHECK(line_of(visit("hip_groin", 1934, "history.walks_usually walks_wheelchair; gait.steps_now 0; hip.log_roll left positive; history.weeks_since_onset 150"), "hip_fx_old") == "none");
  CHECK(line_of(visit("no_complaint", 1934, "history.walks_usually walks_bed; gait.steps_now 0; hip.leg_attitude both attitude_turned_out"), "hip_fx_old") == "none");
  CHECK(line_of(of_no_side("hip_after_fall", 1934, "history.walks_usually walks_with_aid; gait.steps_now 0"), "hip_fx_old") == "raised");
  CHECK(line_of(of_no_side("no_complaint", 1934, "gait.steps_now 0"), "hip_fx_old") == "raised");
  // After an operation that nobody walks is explained, until walking is told to be lost or somebody fell.
  CHECK(line_of(of_no_side("after_operation", 1956, "gait.steps_now 0"), "hip_fx_old") == "none");
  CHECK(line_of(of_no_side("after_operation", 1956, "gait.steps_now 0; history.walking_lost yes"), "hip_fx_old") == "raised");
  CHECK(line_of(visit("after_operation", 1956, "gait.steps_now 0; history.fall_recent yes"), "hip_fx_old") == "raised");
}

TEST_CASE("planted: a child that does not walk yet is no irritable joint by its steps; a leg that is not moved, that hurts, or a fever is") {
  const std::string well = "gait.steps_now 0; history.fever no; history.unwell no; ";
  const std::string not_yet = "history.walks_usually walks_not_yet; ";
  for (const std::string& before : std::vector<std::string>{not_yet, "history.walks_usually walks_wheelchair; ", "body.chair_user yes; "}) {
    CAPTURE(before);
    CHECK(line_of(of_no_side("child_alignment", 2023, before + well), "septic_child") == "none");
    CHECK(line_of(of_no_side("limping_child", 2023, before + well), "septic_child") == "none");
    for (const char* shows : {"hip.leg_not_moved left yes", "history.child_not_moving_leg left yes", "hip.pain_passive_severe left yes", "history.refuses_weight left yes",
                              "hip.log_roll left positive; general.temperature 386"}) {
      CAPTURE(shows);
      CHECK(line_of(visit("limping_child", 2023, before + well + shows), "septic_child") != "none");
    }
  }
  // Crawling at fourteen months is no loss of walking; at three years the child may have walked before, and told to have walked it did.
  Bench crawls = of_no_side("child_alignment", 2025, well + "history.moves_about moves_crawls");
  crawls.born(2025, 9, 10);
  CHECK(line_of(crawls, "septic_child") == "none");
  CHECK(line_of(of_no_side("child_alignment", 2023, well + "history.moves_about moves_crawls"), "septic_child") == "raised");
  tell(crawls, "history.walking_lost yes");
  CHECK(line_of(crawls, "septic_child") == "raised");
  CHECK(line_of(of_no_side("limping_child", 2023, well), "septic_child") == "raised");
  // A paralysed leg is not moved anyway.
  CHECK(line_of(visit("child_alignment", 2017, "body.paralysis left yes; body.chair_user yes; hip.leg_not_moved left yes; " + well), "septic_child") == "none");
}

TEST_CASE("planted: bone that is tender after an injury is broken in who took no steps before: no step can show it") {
  for (const char* before : no_steps) {
    CAPTURE(before);
    CHECK(line_of(visit("whole_limb", 1992, std::string(before) + "history.mechanism fall; leg.thigh_shaft_tender left yes"), "fracture") == "carries_not");
    CHECK(line_of(visit("whole_limb", 1992, std::string(before) + "history.mechanism no_injury; leg.thigh_shaft_tender left yes"), "fracture") == "none");
    CHECK(line_of(visit("hip_after_fall", 1992, std::string(before) + "history.mechanism vehicle; pelvis.injury_pain yes"), "pelvic_fx") == "tender");
  }
  CHECK(line_of(visit("whole_limb", 1992, "history.mechanism fall; leg.thigh_shaft_tender left yes; gait.steps_now 4"), "fracture") == "none");
}

// Section 8 has "pain on movement" beside the limp, section 15 "acute severe pain"; that a knee which swells stands for the limp is our own rule.
TEST_CASE("planted: a child who never walks cannot limp: a swollen knee, or tender bone, with sudden severe pain is the same day, and no limp is asked") {
  for (const char* before : no_steps) {
    CAPTURE(before);
    const std::string chair = std::string(before) + "history.mechanism no_injury; history.fever no; history.unwell no; ";
    for (const char* found : {"knee.effusion_stroke left 2+; ", "knee.bone_tender_elsewhere left yes; "}) {
      CAPTURE(found);
      CHECK(line_of(visit("limping_child", 2014, chair + found + "history.pain_severe_sudden yes"), "limp_child") == "no_steps");
      CHECK(line_of(visit("limping_child", 2014, chair + found + "history.pain_severe_sudden no"), "limp_child") == "none");
    }
    CHECK(asks(visit("limping_child", 2014, chair + "history.pain_severe_sudden yes"), "septic_child", "hip.leg_not_moved"));
    CHECK_FALSE(asks(visit("limping_child", 2014, chair + "history.pain_severe_sudden yes"), "septic_child", "gait.limp"));
    CHECK(line_of(visit("limping_child", 2014, chair + "history.pain_severe_sudden yes"), "limp_child") == "none");
  }
  // Of who walks the limp is what is asked.
  CHECK(line_of(visit("limping_child", 2014, "history.mechanism no_injury; knee.effusion_stroke left 2+; history.pain_severe_sudden yes"), "limp_child") == "none");
}
