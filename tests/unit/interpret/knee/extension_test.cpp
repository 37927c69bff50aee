// A knee's motion beyond norm and other side, at its boundaries, with the invented edition: the inclinometer's smallest change
// is 5 (its error 5 / 2.772, so 1.96 errors are 3.535353...), the long goniometer's 20; the ratio of the pattern is 0.1 to 0.8.
#include "core/interpret/knee/extension.hpp"

#include "tests/unit/interpret/knee/bench.hpp"

#include <doctest/doctest.h>

using namespace limbledger;
using namespace limbledger::interpret_test;
using interpret::Comparator;
using interpret::StatementGrade;
using interpret::Tri;
using interpret::Verdict;

namespace {

const std::string lag = "motion.lag:knee.extension_active:left";
const std::string straight = "motion.contracture:knee.extension_passive:left";
const std::string beyond = "motion.hyperextension:knee.extension_passive:left";
const std::string deficit = "motion.extension_deficit:knee.extension_passive:left";
const std::string capsular = "motion.capsular:knee.flexion_passive:left";

KneeBench knee(std::int64_t active, std::int64_t passive) {
  KneeBench made;
  made.extends("active", active);
  made.extends("passive", passive);
  return made;
}

// Losses against a right knee that bends to 140 and extends to 0, in whole degrees.
KneeBench lost(std::int64_t flexion, std::int64_t extension) {
  KneeBench made;
  made.angle("knee.flexion_passive", Side::right, 1400, "inclinometer");
  made.angle("knee.flexion_passive", Side::left, 1400 - 10 * flexion, "inclinometer");
  made.extends("passive", 0, Side::right);
  made.extends("passive", -10 * extension);
  return made;
}

Tri deficit_of(const KneeBench& made, Side side) {
  const interpret::View view(made.exam, made.person, *made.edition, day(2026, 11, 24));
  return interpret::extension_deficit(view, interpret::read_motions(view), side).beyond_error;
}

}  // namespace

TEST_CASE("a lag is passive less active beyond the error, and not when it equals it") {
  CHECK(knee(-150, -100).statement(lag).verdict == Verdict::not_distinguishable);
  CHECK(knee(-151, -100).statement(lag).verdict == Verdict::below);
  CHECK(knee(-151, -100).statement(lag).grade == StatementGrade::notable);
  CHECK(knee(-151, -100).message(lag) == "msg.motion.lag_below");
  CHECK(knee(-151, -100).statement(lag).params.json ==
        R"({"toward":"extension","toward_deg":-15.1,"other_deg":-10,"difference_deg":-5.1,"needed_deg":5})");
  CHECK(knee(-151, -100).statement(lag).findings.size() == 2);
  CHECK(knee(-151, -100).line(lag, "-15.1 - (-10) = -5.1"));
  CHECK(knee(-151, -100).line(lag, "5.1 exceeds 5"));
}

TEST_CASE("HC-006: passive 0 and active 15 short is accepted without a query and called a lag of 15") {
  const KneeBench made = knee(-150, 0);
  CHECK(made.assess().contradictions.empty());
  CHECK(made.says(lag, "\"difference_deg\":-15"));
  CHECK(made.statement(lag).verdict == Verdict::below);
}

TEST_CASE("an active motion beyond the passive one is asked about, and no lag is claimed beside it") {
  const KneeBench made = knee(0, -100);
  REQUIRE(made.assess().contradictions.size() == 1);
  CHECK(made.assess().contradictions[0].contradiction.text == "motion.active_beyond_passive:knee.extension:left");
  CHECK_FALSE(made.has(lag));
}

TEST_CASE("a lag needs the instruments of both and one position") {
  KneeBench made = knee(-200, 0);
  made.exam.findings->front().position = model::Word{"seated"};
  CHECK(made.message(lag) == "msg.motion.lag_other_position");
  CHECK(made.statement(lag).grade == StatementGrade::cannot_tell);
  made = knee(-200, 0);
  made.exam.findings->front().instrument.reset();
  CHECK(made.message(lag) == "msg.motion.lag_needs_instrument");
  CHECK(made.statement(lag).missing[0].text == "instrument");
  made = knee(-200, 0);
  made.exam.findings->front().instrument = model::Word{"goniometer_long"};  // the larger change of the two counts, 20
  CHECK(made.statement(lag).verdict == Verdict::not_distinguishable);
  CHECK(made.says(lag, "\"methods_differ\":true"));
}

TEST_CASE("flexion that the person cannot use is said as less than passive") {
  KneeBench made;
  made.angle("knee.flexion_active", Side::left, 900, "inclinometer");
  made.angle("knee.flexion_passive", Side::left, 1000, "inclinometer");
  CHECK(made.message("motion.active:knee.flexion_active:left") == "msg.motion.active_below");
  CHECK_FALSE(made.has(lag));
}

TEST_CASE("straight: 1.96 errors of the reading decide, and a knee that reaches 0 is not spoken of") {
  CHECK(knee(0, -36).statement(straight).verdict == Verdict::below);  // -3.6 + 3.5353 < 0
  CHECK(knee(0, -36).line(straight, "-3.6 + 1.96 x 1.8 = -0.1, below 0"));
  CHECK(knee(0, -35).statement(straight).verdict == Verdict::not_distinguishable);
  CHECK(knee(0, -35).statement(straight).grade == StatementGrade::unclear);
  CHECK_FALSE(knee(0, 0).has(straight));
  CHECK_FALSE(knee(0, 30).has(straight));
  KneeBench made = knee(0, -200);
  made.exam.findings->back().end_feel = model::Word{"springy_block"};
  CHECK(made.says(straight, "\"end_feel\":\"springy_block\""));
  made.exam.findings->back().instrument.reset();
  CHECK(made.message(straight) == "msg.motion.contracture_needs_instrument");
}

TEST_CASE("a bound is compared by its bound alone: at most 20 short may be straight, at least 20 short is not") {
  KneeBench made = knee(0, -200);
  auto& angle = std::get<model::Angle>(made.exam.findings->back().value);
  angle.bound = model::Bound::at_least;  // toward extension: -20 or further
  CHECK(made.statement(straight).verdict == Verdict::not_distinguishable);
  angle.bound = model::Bound::at_most;
  CHECK(made.statement(straight).verdict == Verdict::below);
}

TEST_CASE("in the first year a lack of extension is left open") {
  KneeBench made = knee(0, -200);
  made.born(2026, 3, 1);
  CHECK(made.message(straight) == "msg.motion.contracture_first_year");
  CHECK(made.statement(straight).grade == StatementGrade::unclear);
  made.born(2025, 11, 24);  // one year old today
  CHECK(made.message(straight) == "msg.motion.contracture_below");
}

TEST_CASE("HC-022: both knees beyond straight alike: no side difference, and beyond the limit on both a hint at most") {
  KneeBench made = knee(0, 120);
  made.extends("passive", 110, Side::right);
  CHECK(made.message(beyond) == "msg.motion.hyperextension_both_wide");
  CHECK(made.statement(beyond).grade == StatementGrade::unclear);
  CHECK(made.statement(beyond).comparator == Comparator::other_side);
  CHECK(made.statement(beyond).rows.back().text == "figure.hypermobile.INVENTED1");
  CHECK(made.message("motion.hyperextension:knee.extension_passive:right") == "msg.motion.hyperextension_both_wide");
  std::get<model::Angle>(made.exam.findings->back().value).toward_deg = model::Degrees{70};  // not beyond 7
  CHECK(made.message(beyond) == "msg.motion.hyperextension_both");
}

TEST_CASE("one knee beyond straight more than the other by more than 10 is notable; alone it waits for the other") {
  KneeBench made = knee(0, 120);
  CHECK(made.message(beyond) == "msg.motion.hyperextension_alone");
  CHECK(made.statement(beyond).missing[0].text == "other_side");
  made.extends("passive", 20, Side::right);
  CHECK(made.message(beyond) == "msg.motion.hyperextension_both");  // 10 does not exceed 10
  std::get<model::Angle>(made.exam.findings->back().value).toward_deg = model::Degrees{19};
  CHECK(made.message(beyond) == "msg.motion.hyperextension_one_side");
  CHECK(made.statement(beyond).grade == StatementGrade::notable);
  CHECK_FALSE(made.has("motion.hyperextension:knee.extension_passive:right"));  // 1.9 lies within the error
}

TEST_CASE("a lack of extension against the other side needs the error of a difference and no more") {
  KneeBench made = knee(0, -50);
  made.extends("passive", 0, Side::right);
  CHECK(made.statement(deficit).verdict == Verdict::not_distinguishable);
  CHECK(deficit_of(made, Side::left) == Tri::no);
  std::get<model::Angle>(made.exam.findings->back().value).toward_deg = model::Degrees{1};
  CHECK(made.statement(deficit).verdict == Verdict::below);
  CHECK(made.message(deficit) == "msg.motion.extension_deficit_below");
  CHECK(deficit_of(made, Side::left) == Tri::yes);
  CHECK(deficit_of(made, Side::right) == Tri::no);
  // Other side differences keep their floor of 10.
  CHECK(made.statement("motion.side:knee.extension_passive:left").verdict == Verdict::not_distinguishable);
  CHECK_FALSE(made.has("motion.extension_deficit:knee.extension_passive:right"));
}

TEST_CASE("a lack of extension is open where it cannot be known, and active stands in where passive was not done") {
  KneeBench made = knee(-300, -300);
  CHECK(deficit_of(made, Side::left) == Tri::undetermined);  // no other side
  made.extends("active", 0, Side::right);
  CHECK(deficit_of(made, Side::left) == Tri::yes);
  CHECK(made.message("motion.extension_deficit:knee.extension_active:left") == "msg.motion.extension_deficit_below");
  made.yes("body.knee_replaced", Side::right);
  CHECK(deficit_of(made, Side::left) == Tri::undetermined);
}

TEST_CASE("the ratio of the pattern is exact at both ends and asked only where both losses exceed their error") {
  CHECK(lost(60, 6).statement(capsular).verdict == Verdict::within);   // 0.1
  CHECK(lost(61, 6).statement(capsular).verdict == Verdict::below);
  CHECK(lost(30, 24).statement(capsular).verdict == Verdict::within);  // 0.8
  CHECK(lost(30, 25).statement(capsular).verdict == Verdict::above);
  for (const int inside_its_error : {0, 2, 3, 5}) {
    CHECK_FALSE(lost(30, inside_its_error).has(capsular));
  }
  CHECK(lost(30, 10).statement(capsular).grade == StatementGrade::unclear);
  CHECK(lost(30, 10).statement(capsular).params.json ==
        R"({"flexion_loss_deg":30,"extension_loss_deg":10,"ratio":0.333,"ratio_low":0.1,"ratio_high":0.8})");
  CHECK(lost(30, 10).line(capsular, "10 / 30 = 0.333, inside 0.1 to 0.8"));
  CHECK_FALSE(lost(5, 10).has(capsular));
  CHECK(lost(6, 6).has(capsular));
  CHECK_FALSE(lost(30, 10).has("motion.capsular:knee.flexion_passive:right"));
}

TEST_CASE("HC-005: a fused knee has no lag, no fixed flexion and no lack against the other side") {
  KneeBench made = knee(-150, -150);
  made.extends("passive", 0, Side::right);
  made.yes("body.knee_fused", Side::left);
  for (const auto& statement : made.assess().statements) {
    const std::string& name = statement.statement.text;
    const bool told = name.find("motion.norm") != std::string::npos || name.starts_with("body.");
    CHECK_MESSAGE(!(statement.side == Side::left && !told), name);
  }
}

TEST_CASE("last time in another convention is named with both texts") {
  KneeBench then;
  then.extends("passive", 50);
  then.exam.examined_at = at_noon(2026, 10, 1);
  KneeBench now;
  now.extends("passive", -50);
  const auto write = [](KneeBench& made, const char* order) {
    auto& angle = std::get<model::Angle>(made.exam.findings->front().value);
    angle.entered = wire::Name{"+5"};
    angle.order = model::Word{order};
  };
  write(then, "extension");
  write(now, "flexion");
  now.earlier = {then.exam};
  const std::string past = "motion.past:knee.extension_passive:left";
  CHECK(now.statement(past).verdict == Verdict::below);
  CHECK(now.says(past, R"("difference_deg":-10,"needed_deg":5,"conventions_differ":true,"entered":"+5","other_entered":"+5")"));
  write(now, "extension");
  CHECK_FALSE(now.says(past, "conventions_differ"));
}

TEST_CASE("last time in another position is not compared, and both positions are named") {
  KneeBench then;
  then.extends("passive", 0).position = model::Word{"prone"};
  then.exam.examined_at = at_noon(2026, 10, 1);
  KneeBench now;
  now.extends("passive", -200);
  now.earlier = {then.exam};
  const std::string past = "motion.past:knee.extension_passive:left";
  CHECK(now.message(past) == "msg.motion.past_other_position");
  CHECK(now.says(past, R"("position":"supine","other_position":"prone")"));
}
