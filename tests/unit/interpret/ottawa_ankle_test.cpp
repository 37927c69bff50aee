// From findings to the two Ottawa rules of an injured ankle. The rules themselves are checked elsewhere over all their inputs; here
// it is what counts as an answer, for whom they are made, and what they hold open. Source: decision rules page, sections 3 and 4
// (STIELL1993, PLINT1999); clinical safety, C7.
#include "core/interpret/held.hpp"
#include "core/interpret/judged.hpp"
#include "core/report/page.hpp"
#include "core/report/words/words.hpp"
#include "tests/unit/interpret/support.hpp"

#include <doctest/doctest.h>

using namespace limbledger;
using namespace limbledger::interpret_test;
using interpret::Outcome;

namespace {

constexpr const char* ankle_rule = "rule.ottawa_ankle";
constexpr const char* midfoot = "rule.ottawa_midfoot";

// A sprained left ankle of a man of 30: pain in both zones, no bone tender, four steps at once and now.
Bench sprained() {
  Bench made(*reference::built_in_edition());
  made.exam.complaint = {"ankle_injury"};
  made.yes("ankle.pain_malleolar_zone", Side::left);
  made.no("ankle.lateral_malleolus_tender", Side::left);
  made.no("ankle.medial_malleolus_tender", Side::left);
  made.yes("foot.pain_midfoot_zone", Side::left);
  made.no("foot.fifth_metatarsal_base_tender", Side::left);
  made.no("foot.navicular_tender", Side::left);
  made.yes("history.steps_at_once", Side::midline);
  made.count("gait.steps_now", 4);
  made.add("history.ankle_rule_exclusions", Side::midline, model::Choices{{{"none_of_these"}}});
  return made;
}

void says(Bench& made, const std::string& item, model::AnswerWord word) { made.find(item).value = model::Answer{word}; }

bool speaks(const Bench& made, const std::string& name, Side side = Side::left) {
  const auto rules = made.assess().rules;
  return std::any_of(rules.begin(), rules.end(), [&](const auto& one) { return one.rule.text == name && one.side == side; });
}

interpret::RuleResult rule_of(const Bench& made, const std::string& name, Side side = Side::left) {
  for (const auto& one : made.assess().rules) {
    if (one.rule.text == name && one.side == side) {
      return one;
    }
  }
  FAIL_CHECK("no rule " << name);
  return {};
}

bool holds_open(const Bench& made, const std::string& concern) {
  const interpret::View view(made.exam, made.person, *made.edition, day(2026, 11, 24));
  const auto open = interpret::watch(view).concerns;
  return std::any_of(open.begin(), open.end(), [&](const auto& one) { return one.concern->concern.text == concern && one.side == Side::left; });
}

std::string ankle_page(const Bench& made) {
  std::string page = report::exam_page(made.exam, made.person, made.assess(), *report::built_in_words(), *made.edition);
  std::string out;
  for (const char letter : page) {
    const bool space = letter == ' ' || letter == '\n';
    if (!space || (!out.empty() && out.back() != ' ')) {
      out += space ? ' ' : letter;
    }
  }
  return out;
}

}  // namespace

TEST_CASE("an ankle with every criterion answered no is negative by both rules, asks for nothing and holds nothing open") {
  const Bench made = sprained();
  for (const char* name : {ankle_rule, midfoot}) {
    const auto rule = rule_of(made, name);
    CHECK(rule.outcome == Outcome::negative);
    CHECK(rule.settle.empty());
    CHECK(rule.flags.empty());
  }
  CHECK(rule_of(made, ankle_rule).edition.text == "oar/1993");
  CHECK(rule_of(made, midfoot).edition.text == "omr/1993");
  CHECK_FALSE(holds_open(made, "concern.ankle_fracture"));
  CHECK_FALSE(holds_open(made, "concern.foot_fracture"));
  CHECK_FALSE(speaks(made, "rule.ottawa_knee"));
}

TEST_CASE("ankle and midfoot rule: an empty slot is never no, and is the one that settles the rule") {
  const std::array<std::array<const char*, 3>, 7> left_out{{{"ankle.pain_malleolar_zone", ankle_rule, "zone"},
                                                            {"ankle.lateral_malleolus_tender", ankle_rule, "lat"},
                                                            {"ankle.medial_malleolus_tender", ankle_rule, "med"},
                                                            {"foot.fifth_metatarsal_base_tender", midfoot, "mt5"},
                                                            {"foot.navicular_tender", midfoot, "nav"},
                                                            {"history.ankle_rule_exclusions", ankle_rule, "excl"},
                                                            {"history.ankle_rule_exclusions", midfoot, "excl"}}};
  for (const auto& one : left_out) {
    Bench made = sprained();
    if (std::string(one[2]) == "zone") {
      says(made, "ankle.lateral_malleolus_tender", model::AnswerWord::yes);  // without pain the rule would be negative
    }
    made.drop(one[0]);
    CAPTURE(one[0]);
    CHECK(settle_of(rule_of(made, one[1])) == one[2]);
    CHECK(rule_of(made, one[1]).outcome == Outcome::undetermined);
  }
}

TEST_CASE("the two rules of an injured ankle do not depend on each other, and each holds its own concern open") {
  Bench made = sprained();
  says(made, "foot.navicular_tender", model::AnswerWord::yes);
  CHECK(rule_of(made, ankle_rule).outcome == Outcome::negative);
  CHECK(rule_of(made, midfoot).outcome == Outcome::positive);
  CHECK_FALSE(flagged(rule_of(made, ankle_rule), "rules_disagree"));
  CHECK(holds_open(made, "concern.foot_fracture"));
  CHECK_FALSE(holds_open(made, "concern.ankle_fracture"));
  says(made, "ankle.medial_malleolus_tender", model::AnswerWord::yes);
  CHECK(rule_of(made, ankle_rule).outcome == Outcome::positive);
  CHECK(holds_open(made, "concern.ankle_fracture"));
  CHECK_FALSE(holds_open(made, "concern.knee_fracture"));
  made.add("history.film_result", Side::left, model::Choices{{{"ankle_fracture_not_seen"}}});
  CHECK_FALSE(holds_open(made, "concern.ankle_fracture"));
}

TEST_CASE("C7: a negative ankle or midfoot rule beside steps that fail, tender bone or a film that shows a break is contradicted, and holds its concern open") {
  const auto contradicts = [](const char* name, const char* concern, const char* words, const auto& change) {
    Bench made = sprained();
    change(made);
    CAPTURE(words);
    CHECK(rule_of(made, name).outcome == Outcome::negative);
    CHECK(flagged(rule_of(made, name), "contradicted"));
    CHECK(holds_open(made, concern));
    const std::string page = ankle_page(made);
    CHECK_MESSAGE(page.find(std::string("contradicted by ") + words) != std::string::npos, page);
  };
  contradicts(ankle_rule, "concern.ankle_fracture", "cannot walk four steps now", [](Bench& made) { made.find("gait.steps_now").value = model::CountValue{{2}}; });
  contradicts(ankle_rule, "concern.ankle_fracture", "bone tender without pain in the zone", [](Bench& made) {
    says(made, "ankle.pain_malleolar_zone", model::AnswerWord::no);
    says(made, "ankle.lateral_malleolus_tender", model::AnswerWord::yes);
  });
  contradicts(ankle_rule, "concern.ankle_fracture", "other bone is tender", [](Bench& made) { made.yes("leg.fibular_neck_tender", Side::left); });
  contradicts(ankle_rule, "concern.ankle_fracture", "other bone is tender",
              [](Bench& made) { made.add("leg.fibula_squeeze", Side::left, model::Test{model::TestResult::positive, std::nullopt}); });
  contradicts(ankle_rule, "concern.ankle_fracture", "the film that shows a break",
              [](Bench& made) { made.add("history.film_result", Side::left, model::Choices{{{"ankle_fracture_seen"}}}); });
  contradicts(midfoot, "concern.foot_fracture", "other bone is tender", [](Bench& made) { made.yes("foot.cuboid_tender", Side::left); });
  contradicts(midfoot, "concern.foot_fracture", "bone tender without pain in the zone", [](Bench& made) {
    says(made, "foot.pain_midfoot_zone", model::AnswerWord::no);
    says(made, "foot.navicular_tender", model::AnswerWord::yes);
  });
}

TEST_CASE("a numb, drunk or much hurt person, or swelling that hides the bone, leaves a no about the ankle open; what is tender still counts") {
  for (const char* why : {"altered_consciousness", "feeling_reduced", "other_painful_injury", "swelling_hides_bone"}) {
    Bench made = sprained();
    made.find("history.ankle_rule_exclusions").value = model::Choices{{{why}}};
    CAPTURE(why);
    CHECK(rule_of(made, ankle_rule).outcome == Outcome::undetermined);
    CHECK(interpret_test::state_of(rule_of(made, ankle_rule), "lat") == "not_reliable");
    says(made, "ankle.pain_malleolar_zone", model::AnswerWord::no);
    CHECK(rule_of(made, ankle_rule).outcome == Outcome::undetermined);
    says(made, "ankle.pain_malleolar_zone", model::AnswerWord::yes);
    says(made, "ankle.lateral_malleolus_tender", model::AnswerWord::yes);
    CHECK(rule_of(made, ankle_rule).outcome == Outcome::positive);
  }
  Bench numb = sprained();
  numb.yes("body.feeling_lost", Side::left);
  CHECK(rule_of(numb, ankle_rule).outcome == Outcome::undetermined);
  Bench unreliable = sprained();
  unreliable.no("general.answers_reliable", Side::midline);
  CHECK(rule_of(unreliable, ankle_rule).outcome == Outcome::undetermined);
}

// Whole weeks, 0 within the first: of a complaint that is an injury they date it where nobody recorded its day.
TEST_CASE("an ankle hurt eleven weeks ago by its weeks alone is not for the rules, within the first week it is, and the second leaves the day open") {
  for (const char* name : {ankle_rule, midfoot}) {
    Bench made = sprained();
    made.exam.injured_on.reset();
    CHECK(rule_of(made, name).outcome == Outcome::undetermined);
    made.count("history.weeks_since_onset", 0);
    CHECK(rule_of(made, name).outcome == Outcome::negative);
    made.find("history.weeks_since_onset").value = model::CountValue{{1}};  // 7 to 13 days
    CHECK(rule_of(made, name).outcome == Outcome::undetermined);
    made.find("history.weeks_since_onset").value = model::CountValue{{11}};
    CHECK(rule_of(made, name).outcome == Outcome::not_applicable);
    CHECK(rule_of(made, name).gate->text == "days");
    made.yes("history.fall_recent", Side::midline);  // hurt anew
    CHECK(rule_of(made, name).outcome == Outcome::undetermined);
    made.find("history.fall_recent").value = model::Answer{model::AnswerWord::no};
    made.exam.injured_on = day(2026, 11, 23);  // a day that is recorded outranks the weeks
    CHECK(rule_of(made, name).outcome == Outcome::negative);
    made.exam.injured_on.reset();
    made.exam.complaint = {"heel_pain"};  // the weeks are those of the heel
    made.yes("history.fall_or_blow", Side::midline);
    CHECK(rule_of(made, name).outcome == Outcome::undetermined);
  }
}

TEST_CASE("the ankle and the midfoot rule are not made for a child under 2, an injury over 10 days old or the published exclusions, and name the gate") {
  for (const char* name : {ankle_rule, midfoot}) {
    const auto gate_of = [&](const Bench& made) {
      const auto rule = rule_of(made, name);
      return std::string(rule.outcome == Outcome::not_applicable && rule.gate ? rule.gate->text : "none");
    };
    Bench made = sprained();
    made.born(2024, 12, 1);
    CHECK(gate_of(made) == "age");
    made.born(2024, 11, 23);  // two years on the day of the injury
    CHECK(gate_of(made) == "none");
    CHECK(flagged(rule_of(made, name), "paediatric_extension"));
    made = sprained();
    made.exam.injured_on = day(2026, 11, 13);
    CHECK(gate_of(made) == "days");
    made.exam.injured_on = day(2026, 11, 14);  // ten days
    CHECK(gate_of(made) == "none");
    for (const char* why : {"superficial_only", "repeat_visit", "film_made_elsewhere"}) {
      made = sprained();
      made.find("history.ankle_rule_exclusions").value = model::Choices{{{why}}};
      CHECK(gate_of(made) == "exclusions");
    }
    made = sprained();
    made.yes("body.pregnancy", Side::midline);
    CHECK(gate_of(made) == "pregnancy");
  }
  Bench pregnant = sprained();
  pregnant.yes("body.pregnancy", Side::midline);
  says(pregnant, "ankle.lateral_malleolus_tender", model::AnswerWord::yes);
  CHECK(rule_of(pregnant, ankle_rule).outcome == Outcome::positive);
  CHECK(flagged(rule_of(pregnant, ankle_rule), "outside_derivation"));
  Bench replaced = sprained();
  replaced.yes("body.ankle_replaced", Side::left);
  CHECK(rule_of(replaced, ankle_rule).gate->text == "implant");
}

TEST_CASE("no film of an ankle that was not injured is advised: the rules of the ankle speak of an injury there and of nothing else") {
  Bench made = sprained();
  CHECK_FALSE(speaks(made, ankle_rule, Side::right));
  made.add("history.mechanism", Side::midline, model::Choice{{"no_injury"}});
  made.exam.injured_on.reset();
  CHECK(rule_of(made, ankle_rule).gate->text == "no_injury");
  // Pain of long standing in the heel or a bad knee: tender bone alone starts nothing.
  for (const char* complaint : {"heel_pain", "chronic_knee", "diabetic_foot"}) {
    Bench other = sprained();
    other.exam.complaint = {complaint};
    other.exam.injured_on.reset();
    says(other, "foot.navicular_tender", model::AnswerWord::yes);
    CAPTURE(complaint);
    CHECK_FALSE(speaks(other, ankle_rule));
    CHECK_FALSE(speaks(other, midfoot));
  }
  Bench knee(*reference::built_in_edition());
  knee.no("ankle.lateral_malleolus_tender", Side::left);
  CHECK_FALSE(speaks(knee, ankle_rule));
}

TEST_CASE("on a free visit with a day of injury the ankle rules speak of the places that were asked after, and beside a knee of those that hurt") {
  Bench made = sprained();
  made.exam.complaint = {"free"};
  CHECK(rule_of(made, ankle_rule).outcome == Outcome::negative);
  Bench nothing(*reference::built_in_edition());
  nothing.exam.complaint = {"free"};
  CHECK_FALSE(speaks(nothing, ankle_rule));
  nothing.exam.injured_on.reset();
  nothing.yes("foot.fifth_metatarsal_base_tender", Side::right);
  CHECK(rule_of(nothing, midfoot, Side::right).outcome == Outcome::undetermined);
  CHECK_FALSE(speaks(nothing, ankle_rule, Side::right));
  Bench knee(*reference::built_in_edition());
  knee.yes("ankle.pain_malleolar_zone", Side::left);
  knee.yes("ankle.lateral_malleolus_tender", Side::left);
  knee.add("history.ankle_rule_exclusions", Side::midline, model::Choices{{{"none_of_these"}}});
  CHECK(rule_of(knee, ankle_rule).outcome == Outcome::positive);
}

TEST_CASE("the working of the ankle rule names its criteria, its sources and what would change it") {
  Bench made = sprained();
  made.drop("ankle.pain_malleolar_zone");
  says(made, "ankle.lateral_malleolus_tender", model::AnswerWord::yes);
  const auto working = made.explain("rule.ottawa_ankle:left");
  CHECK(working.message.text == "msg.rule.ottawa_ankle.undetermined");
  REQUIRE(working.lines.size() == 5);
  CHECK(working.lines[0].text == "pain in the malleolar zone: open");
  CHECK(working.lines[1].text == "lateral malleolus tender: met");
  CHECK(working.lines[3].text == "four steps neither at once nor now: not met");
  CHECK(working.lines[4].text == "days since the injury 1, 10 or less: met");
  REQUIRE(working.rows.size() == 3);
  CHECK(working.rows[0].source.text == "STIELL1993");
  REQUIRE(working.changes_if.size() == 1);
  CHECK(report::built_in_words()->has(working.changes_if[0].text));
  CHECK(ankle_page(made).find("Cannot say yet: needs pain about the malleoli") != std::string::npos);
}

TEST_CASE("any sign of a torn midfoot contradicts a negative midfoot rule, and the page asks for films of both feet standing and no further stress (WYNTER2017)") {
  constexpr const char* both_feet = "no further stress; films of both feet standing, or treated as an injury where there are none";
  CHECK(ankle_page(sprained()).find(both_feet) == std::string::npos);
  for (const std::string sign : {"foot.plantar_bruise", "foot.lisfranc_line_tender", "foot.piano_key"}) {
    CAPTURE(sign);
    Bench made = sprained();
    made.yes(sign, Side::left);
    if (sign == "foot.piano_key") {
      made.find(sign).value = model::Test{model::TestResult::positive, {}};
    }
    const auto rule = rule_of(made, midfoot);
    CHECK(rule.outcome == Outcome::negative);
    REQUIRE(rule.flags.size() == 1);
    CHECK(rule.flags[0].text == "contradicted");
    const std::string page = ankle_page(made);
    CHECK_MESSAGE(page.find(both_feet) != std::string::npos, page);
    CHECK(page.find("Film not required") == std::string::npos);
    // Also while the rule waits for an answer; and a no to it does not say that no film is needed.
    made.drop("history.ankle_rule_exclusions");
    const std::string open = ankle_page(made);
    CHECK_MESSAGE(open.find(both_feet) != std::string::npos, open);
    CHECK(open.find("no gives negative by its letter and contradicted, unsettled") != std::string::npos);
    if (sign != "foot.piano_key") {
      says(made, sign, model::AnswerWord::no);
      CHECK(ankle_page(made).find(both_feet) == std::string::npos);
    }
  }
}

TEST_CASE("a tender upper fibula of a hurt ankle asks for a film of the whole lower leg, whether the ankle rule is negative or positive") {
  constexpr const char* whole_leg = "the whole lower leg on the film, and no twisting test before it (taught; not read at its source)";
  for (const char* bone : {"leg.fibular_neck_tender", "leg.fibular_shaft_tender"}) {
    Bench made = sprained();
    CHECK(ankle_page(made).find(whole_leg) == std::string::npos);
    made.yes(bone, Side::left);
    CHECK(ankle_page(made).find(whole_leg) != std::string::npos);
    says(made, "ankle.lateral_malleolus_tender", model::AnswerWord::yes);
    CHECK(rule_of(made, ankle_rule).outcome == Outcome::positive);
    CHECK(ankle_page(made).find(whole_leg) != std::string::npos);
  }
}

TEST_CASE("the page names the ankle rule's criteria that are met, and every word the two rules can say exists") {
  Bench made = sprained();
  says(made, "ankle.lateral_malleolus_tender", model::AnswerWord::yes);
  const std::string page = ankle_page(made);
  CHECK(page.find("Film of the ankle advised by the Ottawa ankle rule") != std::string::npos);
  CHECK_MESSAGE(page.find("pain about the malleoli; outer malleolus tender, back edge or tip") != std::string::npos, page);
  for (const std::string rule : {"ottawa_ankle", "ottawa_midfoot"}) {
    for (const std::string word : {"name", "positive", "negative", "negative_with_gaps", "negative_contradicted", "undetermined", "not_applicable", "contradicted_walk",
                                   "contradicted_film", "contradicted_bone", "contradicted_zone", "input_zone", "criterion_zone", "criterion_steps", "gate_age",
                                   "gate_days", "flag_paediatric_extension"}) {
      CHECK_MESSAGE(report::built_in_words()->has("msg.rule." + rule + "." + word), word);
    }
  }
  for (const std::string input : {"lat", "med", "mt5", "nav"}) {
    CHECK(report::built_in_words()->has("msg.change." + input));
  }
  for (const std::string answer : {"under_2", "2_or_more", "10_or_less", "more_than_10"}) {
    CHECK(report::built_in_words()->has("msg.if." + answer));
  }
}
