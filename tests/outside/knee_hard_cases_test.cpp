// Hard cases on the motion, fluid and looseness of a knee (HC-...), invented people, as documents judged by the built-in edition.
// Figures: HANCOCK2018 (smallest change), SOUCIE2011 (norms), BEIGHTON1973 (10 beyond straight), VANECK2013 (guarding), FROBELL2007.
#include "core/wire/write.hpp"

#include "tests/outside/knee_document.hpp"

#include <doctest/doctest.h>

using namespace limbledger;
using interpret::StatementGrade;
using interpret::Verdict;
using tests::KneeVisit;

namespace {

const std::string straight = "motion.contracture:knee.extension_passive:";
const std::string lachman = "laxity.test:knee.lachman:";

[[nodiscard]] bool says(const interpret::Statement& statement, const std::string& piece) {
  return tests::unquoted(statement.params.json).find(piece) != std::string::npos;
}

}  // namespace

TEST_CASE("HC-001 as a document: 5-0-140 goes beyond straight by less than the error, and nothing is made of it") {
  KneeVisit visit;
  visit.add("knee.arc_passive left triple:5-0-140 goniometer_long");
  CHECK(says(visit.statement("motion.norm:knee.extension_passive:left"), "toward_deg:5"));
  CHECK(says(visit.statement("motion.norm:knee.flexion_passive:left"), "deg:140"));
  CHECK_FALSE(visit.has(straight + "left"));
  CHECK_FALSE(visit.has("motion.hyperextension:knee.extension_passive:left"));
}

TEST_CASE("HC-002 as a document: 0-20-110 lacks 20 of extension; never 0 to 110, never beyond straight") {
  KneeVisit visit;
  visit.add("knee.arc_passive right triple:0-20-110 goniometer_long");
  CHECK(visit.message(straight + "right") == "msg.motion.contracture_below");
  CHECK(says(visit.statement(straight + "right"), "toward_deg:-20"));
  CHECK(says(visit.statement("motion.norm:knee.flexion_passive:right"), "deg:110"));
  CHECK_FALSE(visit.has("motion.hyperextension:knee.extension_passive:right"));
}

TEST_CASE("HC-003 as a document: a bare -10 takes part in no statement but the one that asks what it means") {
  KneeVisit visit;
  visit.add("knee.extension_passive right entered:-10 goniometer_long");
  visit.add("knee.extension_passive left 0 goniometer_long");
  visit.add("knee.extension_active right -20 goniometer_long");
  CHECK(visit.message("motion.norm:knee.extension_passive:right") == "msg.motion.unresolved");
  CHECK_FALSE(visit.has(straight + "right"));
  CHECK_FALSE(visit.has("motion.lag:knee.extension_active:right"));
  CHECK_FALSE(visit.has("motion.extension_deficit:knee.extension_passive:left"));
}

TEST_CASE("HC-004 as a document: +5 beyond, then +5 short of straight: less by 10, both texts shown, the convention named") {
  KneeVisit visit;
  visit.add("then knee.extension_passive left entered:+5/extension inclinometer");
  visit.add("knee.extension_passive left entered:+5/flexion inclinometer");
  const auto statement = visit.statement("motion.past:knee.extension_passive:left");
  CHECK(statement.verdict == Verdict::below);
  CHECK(says(statement, "toward_deg:-5,other_deg:5,difference_deg:-10,needed_deg:6,conventions_differ:true,entered:+5,other_entered:+5"));
}

TEST_CASE("HC-005 as a document: a knee fused at 15 has no lag, no lack of extension, and its ligaments are not judged") {
  KneeVisit visit;
  visit.add("body.knee_fused left answer:yes");
  visit.add("knee.arc_passive left triple:0-15-15 goniometer_long");
  visit.add("knee.extension_passive right 0 goniometer_long");
  visit.add("knee.lachman left grade:0/firm hand");
  CHECK(visit.message("motion.norm:knee.extension_passive:left") == "msg.motion.no_norm_fused");
  CHECK_FALSE(visit.has(straight + "left"));
  CHECK_FALSE(visit.has("motion.extension_deficit:knee.extension_passive:left"));
  CHECK(visit.message(lachman + "left") == "msg.laxity.fused");
}

TEST_CASE("HC-006 as a document: active 125 and passive 110 is asked about; active 15 short with passive 0 is a lag of 15") {
  KneeVisit visit;
  visit.add_all("knee.flexion_active right 125 goniometer_long;knee.flexion_passive right 110 goniometer_long");
  const auto assessment = visit.assess();
  REQUIRE(assessment.contradictions.size() == 1);
  CHECK(assessment.contradictions[0].contradiction.text == "motion.active_beyond_passive:knee.flexion:right");
  KneeVisit lag;
  lag.add_all("knee.extension_active right -15 goniometer_long;knee.extension_passive right 0 goniometer_long");
  CHECK(lag.assess().contradictions.empty());
  CHECK(lag.message("motion.lag:knee.extension_active:right") == "msg.motion.lag_below");
  CHECK(says(lag.statement("motion.lag:knee.extension_active:right"), "difference_deg:-15"));
}

TEST_CASE("HC-013 as a document: more than 120 is no contradiction of 135, and is never read as 120") {
  KneeVisit visit;
  visit.add("then knee.flexion_passive left 135 goniometer_long");
  visit.add("knee.flexion_passive left entered:>120 goniometer_long");
  const auto statement = visit.statement("motion.past:knee.flexion_passive:left");
  CHECK(statement.verdict == Verdict::not_distinguishable);
  CHECK(says(statement, "deg_at_least:120,other_deg:135"));
  CHECK_FALSE(says(statement, "difference_deg"));
}

TEST_CASE("HC-018 as a document: in a replaced knee neither norms of other people nor tests of ligaments speak; a lag still does") {
  KneeVisit visit;
  visit.add("body.knee_replaced right answer:yes");
  visit.add("knee.lachman right grade:1/soft hand");
  visit.add("knee.flexion_passive right 105 goniometer_long");
  visit.add_all("knee.extension_active right -20 goniometer_long;knee.extension_passive right 0 goniometer_long");
  CHECK(visit.message(lachman + "right") == "msg.laxity.implant");
  CHECK(visit.statement(lachman + "right").grade == StatementGrade::cannot_tell);
  CHECK(visit.message("motion.norm:knee.flexion_passive:right") == "msg.motion.no_norm_implant");
  CHECK(visit.message("motion.lag:knee.extension_active:right") == "msg.motion.lag_below");
}

TEST_CASE("HC-022 as a document: a dancer, both knees 12 beyond straight, both Lachman 1 with a firm end") {
  KneeVisit visit;
  visit.sex = "female";
  for (const std::string side : {"left", "right"}) {
    visit.add("knee.arc_passive " + side + " triple:12-0-145 goniometer_long");
    visit.add("knee.lachman " + side + " grade:1/firm hand");
  }
  for (const std::string side : {"left", "right"}) {
    CHECK(visit.message("motion.hyperextension:knee.extension_passive:" + side) == "msg.motion.hyperextension_both_wide");
    CHECK(visit.message(lachman + side) == "msg.laxity.both_sides");
  }
  CHECK(visit.statement("motion.side:knee.extension_passive:left").verdict == Verdict::not_distinguishable);
  for (const auto& statement : visit.assess().statements) {
    CHECK_MESSAGE(statement.grade != StatementGrade::notable, statement.statement.text);
  }
}

TEST_CASE("HC-023 as a document: a limb that could not be held and a tape too short are reasons, from which nothing is concluded") {
  KneeVisit visit;
  visit.add("knee.lachman left not:cannot_hold");
  visit.add("leg.thigh_girth_10cm left not:beyond_instrument");
  for (const auto& statement : visit.assess().statements) {
    CHECK_MESSAGE(statement.statement.text.starts_with("measure.not_read:"), statement.statement.text);
  }
}

TEST_CASE("HC-028 as a document: one examiner positive, one negative: open, both kept") {
  KneeVisit visit;
  visit.add("knee.lachman left grade:2/soft hand");
  visit.add("knee.lachman left grade:0/firm hand");
  CHECK(visit.message(lachman + "left") == "msg.laxity.examiners_disagree");
  CHECK(visit.statement(lachman + "left").findings.size() == 2);
  CHECK(visit.statement(lachman + "left").grade == StatementGrade::cannot_tell);
}

TEST_CASE("HC-029 as a document: a negative Lachman through guarding tells nothing; in a drawer the better test is named") {
  KneeVisit visit;
  visit.add("knee.lachman left grade:0/firm hand", R"(,"quality":["guarded"])");
  CHECK(visit.message(lachman + "left") == "msg.laxity.guarded");
  KneeVisit drawer;
  drawer.add("knee.anterior_drawer left grade:0/firm hand", R"(,"quality":["guarded"])");
  CHECK(says(drawer.statement("laxity.test:knee.anterior_drawer:left"), "guarded:true,instead:knee.lachman"));
}

TEST_CASE("HC-030 as a document: dashboard injury, sag, drawer 10 mm, Lachman with a firm end: posterior ligament first") {
  KneeVisit visit;
  visit.add("knee.posterior_sag left test:positive");
  visit.add("knee.anterior_drawer left grade:2/firm hand");
  visit.add("knee.lachman left grade:2/firm hand");
  CHECK(visit.message("laxity.sag:knee.posterior_sag:left") == "msg.laxity.sag");
  for (const std::string test : {"knee.lachman", "knee.anterior_drawer"}) {
    const auto statement = visit.statement("laxity.test:" + test + ":left");
    CHECK(statement.message.text == "msg.laxity.posterior_sag");
    CHECK(statement.grade == StatementGrade::cannot_tell);
    CHECK(says(statement, "posterior_sag:true,instead:knee.posterior_drawer"));
  }
}

TEST_CASE("HC-031 as a document: 65 years, 100 and fluid on both sides: no difference, and both below the norm") {
  KneeVisit visit;
  visit.born = "1961-01-01";
  for (const std::string side : {"left", "right"}) {
    visit.add("knee.flexion_passive " + side + " 100 goniometer_long");
    visit.add("knee.effusion_stroke " + side + " grade:2+ hand");
  }
  CHECK(visit.statement("motion.side:knee.flexion_passive:left").grade == StatementGrade::unclear);
  for (const std::string side : {"left", "right"}) {
    CHECK(visit.statement("motion.norm:knee.flexion_passive:" + side).grade == StatementGrade::notable);
    CHECK(visit.message("effusion.sign:knee.effusion_stroke:" + side) == "msg.effusion.present");
  }
}

TEST_CASE("HC-036 as a document: locked at 40: the lack against the other side is a finding, and no test is read as negative") {
  KneeVisit visit;
  visit.add("knee.mcmurray left not:blocked");
  visit.add("knee.extension_passive left -40 goniometer_long", R"(,"end_feel":"springy_block")");
  visit.add("knee.extension_passive right 0 goniometer_long");
  const auto statement = visit.statement("motion.extension_deficit:knee.extension_passive:left");
  CHECK(statement.grade == StatementGrade::notable);
  CHECK(says(statement, "difference_deg:-40,needed_deg:10,end_feel:springy_block"));
}

TEST_CASE("S07 as a document: in the first days a guarded negative Lachman gives nothing, an unguarded one is weak") {
  KneeVisit visit;
  visit.born = "2011-01-01";
  visit.complaint = "acute_knee";
  visit.injured_on = "2026-11-24";
  visit.add("knee.lachman left grade:0/firm hand", R"(,"quality":["guarded"])");
  CHECK(visit.message(lachman + "left") == "msg.laxity.guarded");
  visit.now.clear();
  visit.add("knee.lachman left grade:0/firm hand");
  CHECK(visit.message(lachman + "left") == "msg.laxity.not_loose_weak");
  CHECK(says(visit.statement(lachman + "left"), "first_weeks:true"));
}
