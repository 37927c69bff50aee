// From findings to the rules of feet, of timed and counted tests and of joints that move far: what runs when, what is heard, what is
// named beside a result. The rules themselves are checked elsewhere over all their inputs. Sources: decision rules page, sections 17a to
// 23; clinical safety, C7.
#include "core/interpret/rules/body/hypermobility.hpp"
#include "core/interpret/rules/grouped.hpp"

#include "tests/unit/interpret/draw.hpp"
#include "tests/unit/interpret/support.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>

using namespace limbledger;
using namespace limbledger::interpret_test;
using interpret::Outcome;
using model::WhyNot;

namespace limbledger::feet_function {

Bench real_person(int born = 1954) {
  REQUIRE(reference::built_in_edition() != nullptr);
  Bench made(*reference::built_in_edition());
  made.exam.complaint = {"free"};
  made.exam.side.reset();
  made.exam.injured_on.reset();
  made.born(born, 3, 1);
  return made;
}

interpret::RuleResult said(const Bench& made, const std::string& rule, Side side = Side::midline) {
  for (const auto& one : made.assess().rules) {
    if (one.rule.text == "rule." + rule && one.side == side) {
      return one;
    }
  }
  return {};
}

std::string band_of(const interpret::RuleResult& rule) { return rule.band ? rule.band->text : ""; }
std::string gate_of(const interpret::RuleResult& rule) { return rule.gate ? rule.gate->text : ""; }

void timed(Bench& made, const std::string& item, Side side, std::int64_t tenths) {
  model::Duration time;
  time.s = model::Seconds{tenths};
  made.add(item, side, time);
}

// Both feet of a person with diabetes looked at, nothing found.
Bench feet() {
  Bench made = real_person();
  made.yes("history.diabetes", Side::midline);
  made.no("history.kidney_failure", Side::midline);
  for (const Side side : {Side::left, Side::right}) {
    for (const char* item : {"nerve.monofilament_great_toe", "nerve.monofilament_metatarsal_head_1", "nerve.monofilament_metatarsal_head_5"}) {
      made.add(item, side, model::CountValue{{3}});
    }
    for (const char* item : {"vessel.pulse_dorsalis_pedis", "vessel.pulse_posterior_tibial"}) {
      made.add(item, side, model::Grade{{"pulse/0-3"}, {"2"}, {}, {}, {}});
    }
    for (const char* item :
         {"skin.ulcer", "skin.redness_spreading", "skin.black_toe", "foot.hot_red_swollen", "foot.deformity", "history.foot_ulcer_before", "history.amputation_before"}) {
      made.no(item, side);
    }
    made.add("skin.callus", side, model::Choices{{{"none_of_these"}}});
    made.add("skin.gangrene", side, model::Choice{{"gangrene_none"}});
  }
  return made;
}

model::Finding& of_side(Bench& made, const std::string& item, Side side) {
  return *std::find_if(made.exam.findings->begin(), made.exam.findings->end(), [&](const auto& f) { return f.item.text == item && f.side == side; });
}
void say_yes(Bench& made, const std::string& item, Side side) { of_side(made, item, side).value = model::Answer{model::AnswerWord::yes}; }

const std::vector<std::string> signs_of_pairs{"body.beighton_little_finger", "body.beighton_thumb", "body.beighton_elbow", "body.beighton_knee"};

// As many signs as said, in the order of the list, the rest answered no.
Bench with_signs(int yes, int born) {
  Bench made = real_person(born);
  for (const std::string& item : signs_of_pairs) {
    for (const Side side : {Side::left, Side::right}) {
      made.answer(item, side, yes-- > 0 ? model::AnswerWord::yes : model::AnswerWord::no);
    }
  }
  made.answer("body.beighton_trunk", Side::midline, yes > 0 ? model::AnswerWord::yes : model::AnswerWord::no);
  return made;
}

void stand(Bench& made, Side side, const std::vector<std::string>& grades) {
  const std::vector<std::string> items{"talar_head", "malleolar_curves", "heel", "talonavicular", "arch", "forefoot"};
  for (std::size_t n = 0; n < grades.size(); ++n) {
    made.add("foot.posture_" + items[n], side, model::Grade{{"fpi6/2005"}, {grades[n]}, {}, {}, {}}).position = model::Word{"standing"};
  }
}

TEST_CASE("groups give the same as every combination of a sheet: outcome, points, what settles and what each answer gives") {
  using namespace limbledger::interpret;
  for (std::uint64_t seed = 1; seed <= 400; ++seed) {
    Draw draw(seed);
    std::vector<Classes> may_be;
    SheetGroups groups;
    groups.most = {SheetGroups::no_most, 1, SheetGroups::no_most};
    for (std::size_t i = 0; i < 6; ++i) {
      const std::size_t group = i < 3 ? 0 : (i < 5 ? 1 : 2);
      groups.of_input.push_back(group);
      groups.points.push_back(group == 0 ? std::vector<std::int64_t>{-1, 0, 2} : std::vector<std::int64_t>{0, 1, 1});
      may_be.push_back(static_cast<Classes>(1 + draw.below(7)));
    }
    const std::int64_t cut = static_cast<std::int64_t>(draw.below(5)) - 1;
    const SumsDecision decide = [&](std::span<const std::int64_t> sums) {
      const bool met = sums[0] + 2 * sums[1] >= cut + sums[2];
      return SheetAnswer{met ? Outcome::positive : Outcome::negative, sums[0] > 3 ? "high" : "low", {}, sums[0]};
    };
    const SheetCompleted quick = complete_groups(may_be, groups, decide);
    const SheetCompleted slow = complete_sheet(may_be, [&](std::span<const std::uint8_t> in) {
      std::array<std::int64_t, 3> sums{};
      for (std::size_t i = 0; i < in.size(); ++i) {
        sums[groups.of_input[i]] += groups.points[i][in[i]];
      }
      sums[1] = std::min<std::int64_t>(sums[1], 1);
      return decide(sums);
    });
    CAPTURE(seed);
    REQUIRE(quick.answer.same_as(slow.answer));
    REQUIRE(quick.answer.points == slow.answer.points);
    REQUIRE(quick.points_most == slow.points_most);
    REQUIRE(quick.settles == slow.settles);
    for (std::size_t i = 0; i < may_be.size(); ++i) {
      for (std::size_t c = 0; c < 3; ++c) {
        REQUIRE(quick.gives[i][c].has_value() == slow.gives[i][c].has_value());
        REQUIRE((!quick.gives[i][c] || quick.gives[i][c]->same_as(*slow.gives[i][c])));
      }
    }
  }
}

TEST_CASE("nice feet: a foot that was not looked at leaves the class open, and is what settles it") {
  CHECK(band_of(said(feet(), "nice_feet")) == "class_low");
  Bench open = feet();
  of_side(open, "foot.deformity", Side::right).value = model::NotDone{WhyNot::covered, std::nullopt};
  const auto rule = said(open, "nice_feet");
  CHECK(rule.outcome == Outcome::undetermined);
  CHECK(state_of(rule, "foot_deformity") == "covered");
  REQUIRE(rule.settle.size() == 1);
  CHECK(rule.settle[0].side == Side::right);
  CHECK(rule.settle[0].answers[0].band->text == "class_low");
  CHECK(rule.settle[0].answers[1].band->text == "class_moderate");
  say_yes(open, "foot.deformity", Side::left);
  CHECK(band_of(said(open, "nice_feet")) == "class_moderate");  // one foot is enough
}

TEST_CASE("nice feet: where the two tables differ both say so, and the shorter interval counts") {
  Bench deformed = feet();
  say_yes(deformed, "foot.deformity", Side::left);
  CHECK(band_of(said(deformed, "nice_feet")) == "class_moderate");
  CHECK(band_of(said(deformed, "foot_category")) == "category_0");
  CHECK(flagged(said(deformed, "nice_feet"), "rules_disagree"));
  CHECK(flagged(said(deformed, "foot_category"), "rules_disagree"));
  Bench numb = feet();
  of_side(numb, "nerve.monofilament_great_toe", Side::left).value = model::CountValue{{0}};
  CHECK(band_of(said(numb, "nice_feet")) == "class_moderate");
  CHECK(band_of(said(numb, "foot_category")) == "category_1");
  CHECK(flagged(said(numb, "foot_category"), "sooner_elsewhere"));
  of_side(numb, "skin.callus", Side::right).value = model::Choices{{{"callus_heel"}}};
  CHECK(band_of(said(numb, "nice_feet")) == "class_high");
  CHECK_FALSE(flagged(said(feet(), "foot_category"), "rules_disagree"));
}

TEST_CASE("nice feet: an active foot has no class, whatever else was found; rest pain makes it one beside narrowed arteries alone") {
  for (const char* item : {"skin.ulcer", "skin.redness_spreading", "skin.black_toe", "foot.hot_red_swollen"}) {
    Bench active = feet();
    say_yes(active, item, Side::right);
    CAPTURE(item);
    CHECK(gate_of(said(active, "nice_feet")) == "active_foot");
  }
  // Toes that are not black leave the heel open, where one of two answers was taken away: open, not a class.
  Bench heel = feet();
  of_side(heel, "skin.gangrene", Side::left).value = model::Choice{{"gangrene_dry"}};
  CHECK(gate_of(said(heel, "nice_feet")) == "active_foot");
  auto& findings = *heel.exam.findings;
  findings.erase(std::find_if(findings.begin(), findings.end(), [](const auto& f) { return f.item.text == "skin.gangrene" && f.side == Side::left; }));
  const interpret::RuleResult toes = said(heel, "nice_feet");
  CHECK(toes.outcome == interpret::Outcome::undetermined);
  REQUIRE(toes.settle.size() == 1);
  CHECK(toes.settle[0].item == model::ItemId{"skin.gangrene"});
  CHECK(toes.settle[0].side == Side::left);
  Bench rest = feet();
  rest.yes("history.rest_pain_over_2_weeks", Side::left);
  CHECK(band_of(said(rest, "nice_feet")) == "class_low");
  for (const char* item : {"vessel.pulse_dorsalis_pedis", "vessel.pulse_posterior_tibial"}) {
    of_side(rest, item, Side::left).value = model::Grade{{"pulse/0-3"}, {"0"}, {}, {}, {}};
  }
  CHECK(gate_of(said(rest, "nice_feet")) == "active_foot");
}

TEST_CASE("a foot known to be numb is still looked at: no deformity stands, no tenderness does not") {
  Bench numb = feet();
  numb.yes("body.feeling_lost", Side::left);
  CHECK(band_of(said(numb, "foot_category")) == "category_1");
  CHECK(band_of(said(numb, "nice_feet")) == "class_moderate");
}

TEST_CASE("hypermobility: a sign that cannot be tried is unknown, and one that is not there to be tried is not asked for") {
  CHECK(band_of(said(with_signs(5, 1976), "hypermobility")) == "met");
  Bench sore = with_signs(4, 1976);
  of_side(sore, "body.beighton_knee", Side::right).value = model::NotDone{WhyNot::pain, std::nullopt};
  const auto open = said(sore, "hypermobility");
  CHECK(open.outcome == Outcome::undetermined);
  CHECK(open.points->low.steps == 4);
  CHECK(open.points->high.steps == 5);
  CHECK(state_of(open, "knee") == "unable_pain");
  CHECK(settle_of(open) == "knee,palms_ever,thumb_ever,odd_shapes_as_child,out_of_place_twice,double_jointed");
  Bench gone = with_signs(4, 1976);
  gone.drop("body.beighton_knee");
  gone.no("body.beighton_knee", Side::left);
  gone.add("body.limb_level", Side::right, model::Choice{{"through_thigh"}});
  CHECK(settle_of(said(gone, "hypermobility")).find("knee") == std::string::npos);
}

TEST_CASE("hypermobility: two of five questions meet it one sign below the cut; puberty is asked of the young and of nobody from 18 on") {
  Bench below = with_signs(4, 1996);
  below.yes("history.palms_to_floor_ever", Side::midline);
  CHECK(said(below, "hypermobility").outcome == Outcome::undetermined);
  below.yes("history.double_jointed", Side::midline);
  CHECK(band_of(said(below, "hypermobility")) == "met");
  CHECK(state_of(said(below, "hypermobility"), "before_puberty") == "known_by_age");
  Bench young = with_signs(5, 2014);
  for (const char* item : {"palms_to_floor_ever", "thumb_to_forearm_ever", "odd_shapes_as_child", "out_of_place_twice", "double_jointed"}) {
    young.no(std::string("history.") + item, Side::midline);
  }
  CHECK(settle_of(said(young, "hypermobility")) == "before_puberty");
  young.yes("body.before_puberty", Side::midline);
  CHECK(band_of(said(young, "hypermobility")) == "not_met");
  Bench counted = real_person(1954);
  counted.count("body.hypermobility", 4);
  CHECK(band_of(said(counted, "hypermobility")) == "met");  // over 50: four
  CHECK(said(real_person(), "hypermobility").rule.text.empty());
}

TEST_CASE("foot posture: a missing item leaves a range, plus 6 and 7 are named as usual, and no band is more than a name") {
  Bench made = real_person();
  stand(made, Side::left, {"+1", "+1", "+1", "0", "0"});
  stand(made, Side::right, {"+1", "+1", "+1", "+1", "+1", "+1"});
  const auto left = said(made, "foot_posture", Side::left);
  CHECK(band_of(left) == "neutral");
  CHECK(left.points->low.steps == 1);
  CHECK(left.points->high.steps == 5);
  const auto right = said(made, "foot_posture", Side::right);
  CHECK(band_of(right) == "pronated");
  CHECK(right.outcome == Outcome::negative);
  CHECK(flagged(right, "usual_in_adults"));
  of_side(made, "foot.posture_heel", Side::right).position = model::Word{"seated"};
  CHECK(said(made, "foot_posture", Side::right).outcome == Outcome::undetermined);
  CHECK(state_of(said(made, "foot_posture", Side::right), "heel") == "not_standing");
  made.yes("body.chair_user", Side::midline);
  CHECK(gate_of(said(made, "foot_posture", Side::right)) == "cannot_stand");
}

TEST_CASE("fall tests: not done is not unable, unable is no missing value, and nobody younger is told that nothing was found") {
  Bench made = real_person();
  made.not_done("function.timed_up_and_go", Side::midline, WhyNot::no_time);
  CHECK(gate_of(said(made, "up_and_go")) == "not_done");
  made.find("function.timed_up_and_go").value = model::NotDone{WhyNot::unable, std::nullopt};
  CHECK(said(made, "up_and_go").outcome == Outcome::positive);
  CHECK(flagged(said(made, "up_and_go"), "unable"));
  Bench younger = real_person(1976);
  timed(younger, "function.timed_up_and_go", Side::midline, 119);
  CHECK(gate_of(said(younger, "up_and_go")) == "under_65");
  std::get<model::Duration>(younger.find("function.timed_up_and_go").value).s = model::Seconds{120};
  CHECK(said(younger, "up_and_go").outcome == Outcome::positive);
  CHECK(flagged(said(younger, "up_and_go"), "made_for_65"));
  Bench chair = real_person();
  chair.not_done("function.chair_stand_30s", Side::midline, WhyNot::unable);
  CHECK(said(chair, "chair_stand").outcome == Outcome::positive);
  Bench five = real_person();
  five.not_done("function.five_times_sit_to_stand", Side::midline, WhyNot::unable);
  CHECK(flagged(said(five, "five_stands"), "unable"));
  CHECK(said(real_person(), "five_stands").rule.text.empty());
}

TEST_CASE("chair stand: a count that is high enough waits for the answer whether arms were used") {
  Bench made = real_person();
  made.count("function.chair_stand_30s", 12);
  CHECK(settle_of(said(made, "chair_stand")) == "arms_used");
  made.yes("function.chair_stand_arms_used", Side::midline);
  CHECK(said(made, "chair_stand").outcome == Outcome::positive);
  CHECK(made.explain("rule.chair_stand").rows[0].row.text == "table.steadi_chair30/2017.count.male.70-74.1");
}

TEST_CASE("chair stand: arms that were used count as 0 also where no count was taken; without them a stand not done for a replaced joint concludes nothing") {
  Bench made = real_person();
  made.not_done("function.chair_stand_30s", Side::midline, WhyNot::implant);
  CHECK(said(made, "chair_stand").outcome == Outcome::not_applicable);
  CHECK(gate_of(said(made, "chair_stand")) == "not_done");
  made.yes("function.chair_stand_arms_used", Side::midline);
  CHECK(said(made, "chair_stand").outcome == Outcome::positive);
}

TEST_CASE("four stances: what comes after a stance that was not held was not reached; held after one that was not is contradicted") {
  Bench made = real_person();
  timed(made, "function.stance_side_by_side", Side::midline, 40);
  CHECK(said(made, "four_stances").outcome == Outcome::positive);
  CHECK(state_of(said(made, "four_stances"), "heel_to_toe") == "known_not_reached");
  timed(made, "function.stance_tandem", Side::midline, 100);
  CHECK(said(made, "four_stances").outcome == Outcome::negative);
  CHECK(flagged(said(made, "four_stances"), "contradicted"));
}

// Logic test of our own rules (an undetermined rule is settled by what it names): the findings are those of drawn exam 113959.
TEST_CASE("four stances: a stance held after one that was not shows that the test went on, and heel to toe is still to be tried") {
  Bench made = real_person();
  timed(made, "function.stance_semi_tandem", Side::midline, 100);
  CHECK(said(made, "four_stances").outcome == Outcome::undetermined);
  timed(made, "function.stance_side_by_side", Side::midline, 93);
  CHECK(said(made, "four_stances").outcome == Outcome::undetermined);
  CHECK(state_of(said(made, "four_stances"), "heel_to_toe") == "not_asked");
}

// Logic test of our own rules (unknown never yields more certainty): the findings are those of drawn exams 46551, 55987, 60935 and 74827.
TEST_CASE("four stances: under 65, heel to toe held after a stance that was not is unsettled, and neither a sign nor nothing") {
  const auto of = [](const Bench& made) { return said(made, "four_stances"); };
  Bench made = real_person(1984);
  timed(made, "function.stance_semi_tandem", Side::midline, 66);
  CHECK(of(made).outcome == Outcome::positive);
  CHECK(flagged(of(made), "made_for_65"));
  timed(made, "function.stance_tandem", Side::midline, 100);
  CHECK(of(made).outcome == Outcome::undetermined);
  CHECK(of(made).settle.empty());
  Bench held = real_person(1984);
  timed(held, "function.stance_semi_tandem", Side::midline, 100);
  timed(held, "function.stance_tandem", Side::midline, 100);
  CHECK(gate_of(of(held)) == "under_65");
  made.born(2012, 3, 1);
  CHECK(gate_of(of(made)) == "under_18");
  // The same of who lacks a leg: what was measured and is positive stands.
  made.born(1950, 3, 1);
  made.yes("body.prosthesis", Side::left);
  CHECK(of(made).outcome == Outcome::undetermined);
}

TEST_CASE("five stands: a time is held against the limit of the age, and under 60 against that of healthy adults, which is said") {
  Bench made = real_person(1991);
  timed(made, "function.five_times_sit_to_stand", Side::midline, 124);
  CHECK(said(made, "five_stands").outcome == Outcome::positive);
  CHECK(flagged(said(made, "five_stands"), "upper_limit_of_adults"));
  made.born(1954, 3, 1);
  CHECK(said(made, "five_stands").outcome == Outcome::negative);
  CHECK_FALSE(flagged(said(made, "five_stands"), "upper_limit_of_adults"));
}

TEST_CASE("heel rises: none on one leg asks for the calf squeeze, slope and flat floor are never mixed, and a leg that is gone compares nothing") {
  Bench made = real_person();
  made.add("function.heel_rise_count_incline", Side::left, model::CountValue{{20}});
  made.add("function.heel_rise_count_incline", Side::right, model::CountValue{{0}});
  CHECK(band_of(said(made, "heel_rise_sides", Side::right)) == "none_here");
  CHECK(band_of(said(made, "heel_rise_sides", Side::left)) == "none_there");
  Bench mixed = real_person();
  mixed.add("function.heel_rise_count_incline", Side::left, model::CountValue{{20}});
  mixed.add("ankle.heel_rise_count", Side::right, model::CountValue{{5}});
  CHECK(said(mixed, "heel_rise_sides", Side::left).outcome == Outcome::undetermined);
  Bench flat = real_person();
  flat.add("ankle.heel_rise_count", Side::left, model::CountValue{{20}});
  flat.add("ankle.heel_rise_count", Side::right, model::CountValue{{5}});
  CHECK(flagged(said(flat, "heel_rise_sides", Side::right), "error_from_slope"));
  flat.add("body.limb_level", Side::left, model::Choice{{"through_shin"}});
  CHECK(gate_of(said(flat, "heel_rise_sides", Side::right)) == "one_leg");
  CHECK(said(flat, "heel_rise_sides", Side::left).rule.text.empty());
}

TEST_CASE("a stance on one leg stands beside the figure of the age, with no limit, no pass and no fail (worked examples)") {
  // Means as printed for eyes open, best of three: SPRINGER2007. Heel rises on a slope: HEBERT2017_DEC.
  const auto beside = [](int born, const std::string& item, std::int64_t steps) {
    Bench made = real_person(born);
    if (item.find("rise") != std::string::npos) {
      made.add("function." + item, Side::left, model::CountValue{{steps}});
    } else {
      timed(made, "function." + item, Side::left, steps);
    }
    const auto statement = made.statement("motion.norm:function." + item + ":left");
    const bool judged = statement.verdict && *statement.verdict != interpret::Verdict::no_norm;
    const bool short_stance = !made.statement("function.short_stance:function." + item + ":left").statement.text.empty();
    return statement.params.json + (judged ? " judged" : "") + (short_stance ? " short" : "");
  };
  const std::string open = "single_leg_stance_eyes_open";
  CHECK(beside(1987, open, 450).starts_with(R"({"s":45,"mean":44.7,)"));
  CHECK(beside(1986, open, 450).starts_with(R"({"s":45,"mean":41.9,)"));  // the birthday of 40
  CHECK(beside(2009, open, 450).find("mean") == std::string::npos);        // 17
  CHECK(beside(1954, open, 49) == R"({"s":4.9,"mean":21.5,"why":"spread"} short)");
  CHECK(beside(1954, open, 50) == R"({"s":5,"mean":21.5,"why":"spread"})");
  CHECK(beside(1967, open, 49).ends_with(R"("why":"spread"})"));  // 59: the cut is for older people
  CHECK(beside(1954, "single_leg_stance_eyes_closed", 20).find("short") == std::string::npos);
  CHECK(beside(1981, "heel_rise_count_incline", 28).starts_with(R"({"count":28,"mean":28,)"));
  Bench made = real_person();
  timed(made, "function." + open, Side::right, 49);
  CHECK(made.explain("function.short_stance:function." + open + ":right").formula.text.find("from memory") != std::string::npos);
}

TEST_CASE("the working of these rules has the numbers that were held against each other, the side of what has two, and what would change it") {
  const auto holds = [](const Bench& made, const std::string& rule, const std::string& line) {
    const auto working = made.explain("rule." + rule);
    return std::any_of(working.lines.begin(), working.lines.end(), [&](const auto& one) { return one.text == line; });
  };
  Bench deformed = feet();
  say_yes(deformed, "foot.deformity", Side::left);
  CHECK(holds(deformed, "nice_feet", "deformity, left: yes"));
  CHECK(holds(deformed, "nice_feet", "deformity, right: no"));
  CHECK(deformed.explain("rule.nice_feet").rows.size() == 3);
  CHECK(holds(with_signs(4, 1954), "hypermobility", "points: 4"));
  CHECK(holds(with_signs(4, 1954), "hypermobility", "cut: 4, or 3 with two questions"));
  CHECK(with_signs(4, 1996).explain("rule.hypermobility").changes_if.size() == 5);
  Bench heels = real_person();
  heels.add("function.heel_rise_count_incline", Side::left, model::CountValue{{20}});
  heels.add("function.heel_rise_count_incline", Side::right, model::CountValue{{13}});
  CHECK(holds(heels, "heel_rise_sides:left", "at most 7 apart; over 6 is beyond the error"));
  Bench timed_up = real_person();
  timed(timed_up, "function.timed_up_and_go", Side::midline, 130);
  CHECK(holds(timed_up, "up_and_go", "time 13 s: 12.0 s or more"));
}

TEST_CASE("the rows that these rules name stand in the printed tables, and left and right exchanged exchange the answer") {
  Bench made = feet();
  stand(made, Side::left, {"+1", "+2", "+2", "0", "+2"});
  stand(made, Side::right, {"-1", "-1", "0", "0", "0", "0"});
  for (const char* item : {"function.timed_up_and_go", "function.stance_tandem", "function.five_times_sit_to_stand"}) {
    timed(made, item, Side::midline, 126);
  }
  made.count("function.chair_stand_30s", 9);
  made.yes("body.beighton_thumb", Side::left);
  made.no("body.beighton_thumb", Side::right);
  made.add("function.heel_rise_count_incline", Side::left, model::CountValue{{20}});
  made.add("function.heel_rise_count_incline", Side::right, model::CountValue{{4}});
  timed(made, "function.single_leg_stance_eyes_open", Side::right, 126);
  std::set<std::string> known;
  for (const auto& row : made.edition->tables()) {
    known.insert(row.row.text);
  }
  Bench turned = made;
  for (auto& finding : *turned.exam.findings) {
    finding.side = finding.side == Side::midline ? Side::midline : (finding.side == Side::left ? Side::right : Side::left);
  }
  int rules = 0;
  for (const std::string rule : {"nice_feet", "hypermobility", "foot_posture", "up_and_go", "chair_stand", "four_stances", "five_stands", "heel_rise_sides"}) {
    for (const Side side : {Side::left, Side::midline, Side::right}) {
      const auto one = said(made, rule, side);
      if (one.rule.text.empty()) {
        continue;
      }
      ++rules;
      CAPTURE(rule);
      for (const auto& row : made.explain("rule." + rule + ":" + std::string(side == Side::midline ? "midline" : (side == Side::left ? "left" : "right"))).rows) {
        CHECK_MESSAGE(known.count(row.row.text) == 1, row.row.text);
      }
      const auto other = said(turned, rule, side == Side::midline ? side : (side == Side::left ? Side::right : Side::left));
      CHECK(other.outcome == one.outcome);
      CHECK(band_of(other) == band_of(one));
      CHECK(other.settle.size() == one.settle.size());
      for (std::size_t i = 0; i < one.inputs.size(); ++i) {
        CHECK(other.inputs[i].state == one.inputs[i].state);
      }
    }
  }
  CHECK(rules == 10);
}

}  // namespace limbledger::feet_function
