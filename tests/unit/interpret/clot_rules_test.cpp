// Points for a clot, the route after them, and the alert that rests on them: what counts, what stays open, what is never read as no.
// Sources: decision rules page (wells_dvt, nice_dvt), red flags page (dvt), clinical safety C3. People are invented.
#include "tests/unit/interpret/alerts/bench.hpp"

#include <algorithm>

using namespace limbledger;
using namespace limbledger::interpret_test;

namespace {

std::optional<interpret::RuleResult> clot_rule(const Bench& made, const std::string& rule, Side side = Side::left) {
  for (const auto& one : made.assess().rules) {
    if (one.rule.text == "rule." + rule && one.side == side) {
      return one;
    }
  }
  return std::nullopt;
}

void calf_girths(Bench& made, std::int64_t left, std::int64_t right) {
  for (const auto& [side, mm] : {std::pair(Side::left, left), std::pair(Side::right, right)}) {
    model::Length length;
    length.mm = model::Millimetres{mm};
    made.add("leg.calf_girth_10cm", side, length);
  }
}

// A man of 60 with a swollen calf, everything else of the score answered no.
Bench swollen_calf(const std::string& complaint = "calf_pain") {
  Bench made = sore_knee();
  made.exam.complaint = {complaint};
  made.yes("leg.calf_swelling", Side::left);
  calf_girths(made, 360, 350);
  for (const char* item : {"history.cancer_active", "history.immobile_or_surgery_recent", "history.clot_before", "history.breathless"}) {
    made.no(item, Side::midline);
  }
  for (const char* item : {"history.leg_paralysed_or_plaster", "leg.calf_tender_vein", "vessel.whole_leg_swollen", "vessel.oedema_more_this_side",
                           "vessel.veins_collateral", "history.other_cause_as_likely"}) {
    made.no(item, Side::left);
  }
  return made;
}

void turn_yes(Bench& made, const std::string& item) { made.find(item).value = model::Answer{model::AnswerWord::yes}; }

// Red flags page, section 10: same_day, and with few points "raised at lower tier (D-dimer)".
bool asks_for_d_dimer(const Bench& made) {
  const auto line = alert(made, "dvt");
  return line && line->message.text == "msg.alert.dvt.under_two" && line->urgency == interpret::Urgency::same_day && !line->interrupts;
}

}  // namespace

TEST_CASE("wells: a point that nobody asked after is never a no: each leaves the score open and is what settles it") {
  for (const char* item : {"history.cancer_active", "history.immobile_or_surgery_recent", "history.clot_before", "history.leg_paralysed_or_plaster",
                           "vessel.whole_leg_swollen", "vessel.oedema_more_this_side", "vessel.veins_collateral"}) {
    CAPTURE(item);
    Bench made = swollen_calf();
    turn_yes(made, "leg.calf_tender_vein");
    REQUIRE(clot_rule(made, "wells_dvt")->band->text == "under_two");
    made.drop(item);
    const auto open = clot_rule(made, "wells_dvt");
    CHECK(open->outcome == interpret::Outcome::undetermined);
    REQUIRE(open->settle.size() == 1);
    CHECK(open->settle[0].item->text == item);
    CHECK(open->points->low.steps == 1);
    CHECK(open->points->high.steps == 2);
  }
}

TEST_CASE("wells: a calf 30 mm thicker is a point of 2003 and none of 1997, one of one leg alone is open, and the other leg has none") {
  Bench made = swollen_calf();
  made.drop("leg.calf_girth_10cm");
  calf_girths(made, 380, 350);
  CHECK(clot_rule(made, "wells_dvt")->points->low.steps == 1);
  CHECK(clot_rule(made, "wells_dvt_1997")->points->low.steps == 0);
  CHECK_FALSE(clot_rule(made, "wells_dvt", Side::right));
  made.drop("leg.calf_girth_10cm");
  calf_girths(made, 379, 350);
  CHECK(clot_rule(made, "wells_dvt")->points->high.steps == 0);
  made.exam.findings->pop_back();
  const auto open = clot_rule(made, "wells_dvt");
  CHECK(state_of(*open, "calf_thicker") == "not_asked");
  CHECK(open->points->high.steps == 1);
}

TEST_CASE("wells: what takes two points off is the examiner's own answer; the version of 1997 leaves days in bed open that it counts otherwise") {
  Bench made = swollen_calf();
  turn_yes(made, "leg.calf_tender_vein");
  turn_yes(made, "history.immobile_or_surgery_recent");
  CHECK(clot_rule(made, "wells_dvt")->band->text == "two_or_more");
  CHECK(state_of(*clot_rule(made, "wells_dvt_1997"), "bed_or_operation") == "not_precise_enough");
  made.drop("history.other_cause_as_likely");
  CHECK(clot_rule(made, "wells_dvt")->outcome == interpret::Outcome::undetermined);
  made.yes("history.other_cause_as_likely", Side::left);
  CHECK(clot_rule(made, "wells_dvt")->band->text == "under_two");
}

TEST_CASE("wells: under 18 and in pregnancy the points are not made for the person, which is never fewer than two") {
  Bench young = swollen_calf();
  young.born(2010, 1, 1);
  CHECK(clot_rule(young, "wells_dvt")->gate->text == "age");
  CHECK_FALSE(clot_rule(young, "clot_route"));
  Bench pregnant = swollen_calf();
  pregnant.born(1996, 1, 1);
  pregnant.person->sex = model::Sex::female;
  CHECK(clot_rule(pregnant, "wells_dvt")->settle[0].input.text == "pregnant");
  pregnant.yes("body.pregnancy", Side::midline);
  CHECK(clot_rule(pregnant, "wells_dvt")->gate->text == "pregnancy");
}

TEST_CASE("wells: the score is of a leg where something points to a clot, on whatever complaint, and swaps with the side") {
  Bench ordinary = sore_knee();
  ordinary.no("leg.calf_swelling", Side::left);
  ordinary.no("vessel.oedema_more_this_side", Side::left);
  CHECK_FALSE(clot_rule(ordinary, "wells_dvt"));
  for (const Side side : {Side::left, Side::right}) {
    Bench made = swollen_calf("chronic_knee");
    turn_yes(made, "leg.calf_tender_vein");
    turn_yes(made, "vessel.veins_collateral");
    for (auto& finding : *made.exam.findings) {
      finding.side = side == Side::right && finding.side != Side::midline ? interpret::other_side(finding.side) : finding.side;
    }
    CHECK(clot_rule(made, "wells_dvt", side)->band->text == "two_or_more");
    CHECK_FALSE(clot_rule(made, "wells_dvt", interpret::other_side(side)));
  }
}

// The examples of nice_dvt/NG158 (NICE_NG158).
TEST_CASE("clot route: the next action by points, scan and D-dimer; an unknown D-dimer settles it, a clot that was seen is treated") {
  Bench few = swollen_calf();
  CHECK(clot_rule(few, "clot_route")->settle[0].item->text == "general.lab_d_dimer");
  few.add("general.lab_d_dimer", Side::midline, model::Choice{{"lab_negative"}});
  CHECK(clot_rule(few, "clot_route")->band->text == "other_cause");
  few.find("general.lab_d_dimer").value = model::Choice{{"lab_positive"}};
  CHECK(clot_rule(few, "clot_route")->band->text == "scan_after_d_dimer");
  few.add("general.scan_leg_veins", Side::left, model::Choice{{"scan_no_clot_seen"}});
  CHECK(clot_rule(few, "clot_route")->band->text == "other_cause");
  Bench many = swollen_calf();
  turn_yes(many, "leg.calf_tender_vein");
  turn_yes(many, "vessel.veins_collateral");
  CHECK(clot_rule(many, "clot_route")->band->text == "scan_first");
  many.add("general.scan_leg_veins", Side::left, model::Choice{{"scan_no_clot_seen"}});
  const auto open = clot_rule(many, "clot_route");
  CHECK(open->outcome == interpret::Outcome::undetermined);
  CHECK(settle_of(*open) == "d_dimer");
  many.add("general.lab_d_dimer", Side::midline, model::Choice{{"lab_positive"}});
  CHECK(clot_rule(many, "clot_route")->band->text == "scan_again");
  many.find("general.scan_leg_veins").value = model::Choice{{"scan_clot_seen"}};
  CHECK(clot_rule(many, "clot_route")->band->text == "clot_seen");
}

TEST_CASE("clot route: while the points are open it says nothing, or with a test recorded plans as for two or more") {
  Bench made = swollen_calf();
  made.drop("history.clot_before");
  turn_yes(made, "leg.calf_tender_vein");
  CHECK_FALSE(clot_rule(made, "clot_route"));
  made.add("general.lab_d_dimer", Side::midline, model::Choice{{"lab_positive"}});
  CHECK(flagged(*clot_rule(made, "clot_route"), "planned_as_two_or_more"));
}

TEST_CASE("dvt: two points or more are the same day, fewer the same day for a D-dimer, open points a question (C3)") {
  Bench made = swollen_calf();
  turn_yes(made, "leg.calf_tender_vein");
  turn_yes(made, "vessel.veins_collateral");
  CHECK(alert(made, "dvt")->message.text == "msg.alert.dvt.points");
  made.find("vessel.veins_collateral").value = model::Answer{model::AnswerWord::no};
  CHECK(asks_for_d_dimer(made));
  made.drop("history.clot_before");
  CHECK(!alert(made, "dvt"));
  CHECK(question(made, "dvt"));
}

TEST_CASE("dvt: with fewer than two points a negative D-dimer takes the line away and a positive one is scanned") {
  Bench made = swollen_calf();
  REQUIRE(asks_for_d_dimer(made));
  made.add("general.lab_d_dimer", Side::midline, model::Choice{{"lab_negative"}});
  CHECK(!alert(made, "dvt"));
  made.find("general.lab_d_dimer").value = model::Choice{{"lab_positive"}};
  CHECK(alert(made, "dvt")->message.text == "msg.alert.dvt.d_dimer");
  made.find("general.lab_d_dimer").value = model::Choice{{"lab_not_done"}};
  CHECK(asks_for_d_dimer(made));
}

TEST_CASE("dvt: fewer than two points lower neither breathlessness, nor a suspicion, nor a pregnancy") {
  Bench chest = swollen_calf();
  turn_yes(chest, "history.breathless");
  CHECK(is_now(chest, "dvt"));
  Bench suspected = swollen_calf();
  suspected.yes("history.examiner_suspects_clot", Side::midline);
  CHECK(raised(suspected, "dvt"));
  suspected.find("history.examiner_suspects_clot").value = model::Answer{model::AnswerWord::no};
  CHECK(asks_for_d_dimer(suspected));  // suspicion only raises: the blood test is asked for all the same
  Bench seen = swollen_calf();
  seen.add("general.scan_leg_veins", Side::left, model::Choice{{"scan_clot_seen"}});
  CHECK(alert(seen, "dvt")->message.text == "msg.alert.dvt.seen");
}

TEST_CASE("S04: pregnant with one calf 25 mm thicker: the same day without points, and breathlessness is asked") {
  Bench made = sore_knee(1996);
  made.person->sex = model::Sex::female;
  made.exam.complaint = {"posterior_hip"};
  made.yes("body.pregnancy", Side::midline);
  calf_girths(made, 385, 360);
  CHECK(raised(made, "dvt"));
  CHECK(alert(made, "dvt")->message.text == "msg.alert.dvt.raised");
  const auto points = clot_rule(made, "wells_dvt");
  CHECK(points->outcome == interpret::Outcome::not_applicable);
  CHECK(points->gate->text == "pregnancy");
  CHECK(clot_rule(made, "wells_dvt_1997")->outcome == interpret::Outcome::not_applicable);
  CHECK_FALSE(clot_rule(made, "clot_route"));
}

TEST_CASE("HC-051: a calf 35 mm thicker and tender after plaster, under a stiff ankle: plaster and girth count, what was not asked is named") {
  Bench made = sore_knee(1980);
  made.exam.complaint = {"after_plaster"};
  calf_girths(made, 385, 350);
  made.yes("leg.calf_tender_vein", Side::left);
  made.yes("history.leg_paralysed_or_plaster", Side::left);
  const auto open = clot_rule(made, "wells_dvt");
  CHECK(open->points->low.steps == 1);  // three, and two off if something else explains it
  CHECK(state_of(*open, "leg_still") == "known");
  CHECK(state_of(*open, "calf_thicker") == "known");
  CHECK(state_of(*open, "clot_before") == "not_asked");
  CHECK(asks(made, "dvt", "history.other_cause_as_likely"));
  made.no("history.other_cause_as_likely", Side::left);
  CHECK(alert(made, "dvt")->message.text == "msg.alert.dvt.points");
}
