// Children, clot, cauda equina, tumour, protection: by the red flags page (sections 10 to 17), clinical safety C3 and C16, and the
// hard cases named.
#include "tests/unit/interpret/alerts/bench.hpp"

using namespace limbledger;
using namespace limbledger::interpret_test;

TEST_CASE("HC-049: thirteen with a painful knee: the hip is asked for; reduced inward rotation is the same day, and now when not walking") {
  Bench bench = sore_knee(2013);
  CHECK(asks(bench, "scfe", "hip.internal_rotation_passive_seated"));
  inward(bench, Side::left, 5);
  inward(bench, Side::right, 40);
  CHECK(raised(bench, "scfe"));
  CHECK(!is_now(bench, "scfe"));
  const auto stopped = alert(bench, "scfe")->stop;
  CHECK(std::any_of(stopped.begin(), stopped.end(), [](const auto& item) { return item.text == "hip.internal_rotation_passive_seated"; }));
  bench.count("gait.steps_now", 0);
  CHECK(is_now(bench, "scfe"));
  Bench both_same = sore_knee(2013);
  inward(both_same, Side::left, 40);
  inward(both_same, Side::right, 42);
  CHECK(flag(both_same, "scfe") == "asked_no");
}

TEST_CASE("scfe: a leg that turns out in walking raises it on its side; will not walk on that leg makes it now") {
  Bench bench = sore_knee(2013);
  choice(bench, "gait.pattern", Side::left, "turned_out");
  CHECK(raised(bench, "scfe"));
  CHECK(!is_now(bench, "scfe"));
  Bench cannot = sore_knee(2013);
  inward(cannot, Side::left, 5);
  inward(cannot, Side::right, 40);
  choice(cannot, "gait.pattern", Side::left, "will_not_walk");
  CHECK(is_now(cannot, "scfe"));
  Bench other = sore_knee(2013);
  choice(other, "gait.pattern", Side::right, "even");
  CHECK(!raised(other, "scfe"));
}

TEST_CASE("scfe is not for a man of sixty; his stiff hip raises none") {
  Bench bench = sore_knee();
  inward(bench, Side::left, 5);
  inward(bench, Side::right, 40);
  CHECK(!alert(bench, "scfe"));
  CHECK(flag(bench, "scfe") == "no flag");
}

TEST_CASE("perthes: a child of seven with weeks of pain, less rotation, cool and walking is a referral") {
  Bench bench = sore_knee(2019);
  bench.count("history.weeks_since_onset", 4);
  inward(bench, Side::left, 15);
  inward(bench, Side::right, 45);
  temperature(bench, 368);
  bench.no("history.fever", Side::midline);
  bench.count("gait.steps_now", 4);
  CHECK(referred(bench, "perthes"));
}

TEST_CASE("perthes: only the hip's rotation answers no; a fever, legs that do not carry and a short time do not") {
  Bench bench = sore_knee(2019);
  bench.yes("history.fever", Side::midline);
  CHECK(flag(bench, "perthes") == "not_asked");
  bench.count("gait.steps_now", 0);
  bench.count("history.weeks_since_onset", 1);
  CHECK(flag(bench, "perthes") == "not_asked");
  inward(bench, Side::left, 45);
  inward(bench, Side::right, 45);
  CHECK(flag(bench, "perthes") == "asked_no");
}

TEST_CASE("how long it has been, and that nobody is pregnant, answer no danger with no") {
  Bench short_time = sore_knee();
  short_time.count("history.weeks_since_onset", 1);
  CHECK(flag(short_time, "joint_over_2_weeks") == "not_asked");
  Bench long_time = sore_knee();
  long_time.count("history.weeks_since_onset", 160);
  CHECK(flag(long_time, "locked_knee") == "not_asked");
  long_time.no("history.locking", Side::left);
  CHECK(flag(long_time, "locked_knee") == "asked_no");
  Bench woman = sore_knee(1996);
  woman.person->sex = model::Sex::female;
  woman.no("body.pregnancy", Side::midline);
  woman.no("history.breathless", Side::midline);
  CHECK(flag(woman, "dvt") == "not_asked");
}

TEST_CASE("HC-021: at 85, walking with a stick after a slip from the bed, a hip that hurts when turned is raised; steps do not settle it") {
  Bench bench = injured_knee();
  bench.born(1941, 1, 1);
  bench.count("gait.steps_now", 4);
  bench.yes("history.steps_at_once", Side::midline);
  CHECK(flag(bench, "hip_fx_old") == "not_asked");
  CHECK(!raised(bench, "hip_fx_old"));
  test(bench, "hip.log_roll", Side::left, true);
  REQUIRE(raised(bench, "hip_fx_old"));
  const auto found = alert(bench, "hip_fx_old");
  CHECK(found->urgency == interpret::Urgency::same_day);
  CHECK(!found->interrupts);
  CHECK(std::find(found->stop.begin(), found->stop.end(), model::ItemId{"gait.steps_now"}) != found->stop.end());
  Bench free_of_pain = injured_knee();
  free_of_pain.born(1941, 1, 1);
  test(free_of_pain, "hip.log_roll", Side::left, false);
  CHECK(flag(free_of_pain, "hip_fx_old") == "asked_no");
  Bench young = injured_knee();
  test(young, "hip.log_roll", Side::left, true);
  CHECK(flag(young, "hip_fx_old") == "no flag");
}

// Red flags page, section 12: a fall and "cannot bear weight"; of a knee that was twisted it is asked (our own rule).
TEST_CASE("S05: fallen two days ago and not a step: the hip is raised beside the knee; twisted, the hip is asked after and raised where it hurts when it is turned") {
  Bench bench = injured_knee();
  bench.born(1942, 1, 1);
  bench.count("gait.steps_now", 0);
  Bench fallen = bench;
  choice(fallen, "history.mechanism", Side::midline, "fall");
  CHECK(raised(fallen, "hip_fx_old"));
  CHECK(!raised(bench, "hip_fx_old"));
  CHECK(asks(bench, "hip_fx_old", "hip.log_roll"));
  inward(bench, Side::left, 20);
  bench.exam.findings->back().pain = model::Pain{};
  bench.exam.findings->back().pain->score = wire::Count<0, 10>{5};
  CHECK(raised(bench, "hip_fx_old"));
}

TEST_CASE("limp_child: a limp with night pain is raised, unless an injury explains it") {
  Bench bench = sore_knee(2018);
  bench.yes("gait.limp", Side::midline);
  CHECK(!raised(bench, "limp_child"));
  bench.yes("history.night_pain", Side::midline);
  CHECK(raised(bench, "limp_child"));
  bench.exam.injured_on = day(2026, 11, 23);
  CHECK(!raised(bench, "limp_child"));
}

TEST_CASE("C3: a clot needs a swollen or unexplained tender calf or suspicion; an open score is a question, and a likely one is raised") {
  Bench strain = injured_knee();
  strain.yes("leg.calf_tender_vein", Side::left);
  strain.no("leg.calf_swelling", Side::left);
  strain.no("history.examiner_suspects_clot", Side::midline);
  CHECK(!raised(strain, "dvt"));
  CHECK(!question(strain, "dvt"));  // a recorded injury explains it
  Bench bench = sore_knee();
  bench.yes("leg.calf_swelling", Side::left);
  CHECK(!raised(bench, "dvt"));
  CHECK(asks(bench, "dvt", "history.immobile_or_surgery_recent"));
  bench.yes("history.examiner_suspects_clot", Side::midline);
  CHECK(raised(bench, "dvt"));
  bench.yes("history.breathless", Side::midline);
  CHECK(is_now(bench, "dvt"));
}

TEST_CASE("HC-051: calf fuller and tender after plaster: the clot is asked after whatever the complaint, and pregnancy needs no score") {
  Bench bench = sore_knee();
  bench.yes("leg.calf_swelling", Side::left);
  bench.yes("leg.calf_tender_vein", Side::left);
  bench.yes("history.leg_paralysed_or_plaster", Side::left);
  REQUIRE(question(bench, "dvt"));
  CHECK(asks(bench, "dvt", "history.examiner_suspects_clot"));
  bench.yes("body.pregnancy", Side::midline);
  CHECK(raised(bench, "dvt"));
}

// NICE_NG158: operation, plaster and an earlier clot are a point each; a birth in the last weeks needs no score, as pregnancy does.
TEST_CASE("dvt: plaster and an earlier clot count beside an operation when they were answered; a birth in the last weeks needs no score") {
  Bench bench = sore_knee();
  bench.yes("leg.calf_swelling", Side::left);
  bench.yes("leg.calf_tender_vein", Side::left);
  bench.yes("history.immobile_or_surgery_recent", Side::midline);
  bench.yes("history.leg_paralysed_or_plaster", Side::left);
  CHECK(!raised(bench, "dvt"));  // something else may still explain it
  bench.yes("history.clot_before", Side::midline);
  CHECK(raised(bench, "dvt"));
  Bench mother = sore_knee(1996);
  mother.yes("leg.calf_swelling", Side::left);
  CHECK(!raised(mother, "dvt"));
  mother.yes("history.childbirth_recent", Side::midline);
  CHECK(raised(mother, "dvt"));
}

TEST_CASE("C3: both legs sore is no cauda equina; numb between the legs is raised now; a changed bladder counts with back pain") {
  Bench bench = sore_knee();
  bench.yes("nerve.sensation_foot_reduced", Side::left);
  bench.yes("nerve.sensation_foot_reduced", Side::right);
  bench.no("history.back_pain", Side::midline);
  CHECK(!raised(bench, "ces"));
  CHECK(!question(bench, "ces"));
  bench.find("history.back_pain").value = model::Answer{model::AnswerWord::yes};
  CHECK(is_now(bench, "ces"));
  Bench bladder = sore_knee();
  bladder.yes("history.bladder_bowel_change", Side::midline);
  CHECK(!raised(bladder, "ces"));
  CHECK(asks(bladder, "ces", "history.back_pain"));
  bladder.yes("history.back_pain", Side::midline);
  CHECK(is_now(bladder, "ces"));
  Bench saddle = sore_knee();
  saddle.yes("history.saddle_numbness", Side::midline);
  CHECK(is_now(saddle, "ces"));
}

TEST_CASE("C3: night pain that turning ends is not raised; night pain alone is a question; in the young it is the same day") {
  Bench bench = sore_knee();
  bench.yes("history.night_pain", Side::midline);
  CHECK(asks(bench, "tumour", "history.night_pain_relieved_by_turning"));
  bench.yes("history.night_pain_relieved_by_turning", Side::midline);
  bench.no("history.night_pain_getting_worse", Side::midline);
  bench.no("history.weight_loss", Side::midline);
  CHECK(!referred(bench, "tumour"));
  bench.find("history.night_pain_relieved_by_turning").value = model::Answer{model::AnswerWord::no};
  CHECK(referred(bench, "tumour"));
  CHECK(!alert(bench, "tumour"));
  bench.born(2011, 1, 1);
  CHECK(raised(bench, "tumour"));
}

TEST_CASE("HC-052: at fifteen a firm swelling for six weeks is filmed; the injury story and no night pain do not cancel it") {
  Bench bench = sore_knee(2011);
  bench.find("history.mechanism").value = model::Choice{{"direct_blow"}};
  choice(bench, "knee.look_swelling_spread", Side::left, "local");
  bench.no("history.night_pain", Side::midline);
  bench.count("history.weeks_since_onset", 5);
  CHECK(!raised(bench, "tumour"));
  bench.find("history.weeks_since_onset").value = model::CountValue{{6}};
  CHECK(raised(bench, "tumour"));
}

TEST_CASE("HC-058: a baby with tender bone points to protection: masked unless asked for, and in no flag, question or print") {
  Bench bench = injured_knee();
  bench.born(2026, 4, 20);
  bench.yes("knee.bone_tender_elsewhere", Side::left);
  CHECK(!alert(bench, "nai"));
  REQUIRE(alert(bench, "protected"));
  const auto masked = *alert(bench, "protected");
  CHECK(masked.message.text == "msg.alert.see_protected_note");
  CHECK(masked.because.empty());
  CHECK(masked.sources.empty());
  CHECK(masked.stop.empty());
  CHECK(flag(bench, "nai") == "no flag");
  CHECK(!question(bench, "nai"));
  interpret::AssessAsk ask = bench.ask();
  ask.protected_ = true;
  const auto opened = interpret::assess(bench.exam, bench.person, {}, *bench.edition, ask);
  CHECK(std::any_of(opened.alerts.begin(), opened.alerts.end(), [](const auto& one) {
    return one.alert.text == "alert.nai" && one.audience == interpret::Audience::protected_ && !one.because.empty();
  }));
}

TEST_CASE("HC-057: words in a note raise nothing and settle nothing") {
  Bench bench = sore_knee();
  const std::string before = flag(bench, "tumour");
  bench.add("history.own_words", Side::midline, model::Words{{"lost 9 kg since Easter, sweats at night"}});
  CHECK(flag(bench, "tumour") == before);
  CHECK(bench.assess().alerts.empty());
}
