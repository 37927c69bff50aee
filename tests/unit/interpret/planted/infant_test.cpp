// Planted cases of a child that is ill as a whole: an infant that nobody measured, one of which nobody knows the age, and a fever with a rash; each
// with the neighbour that stays quiet. Sources: NICE NG51 (under three months 38.0 or more is high risk); the red flags page, sections 0 and 8.
// How many signs make which class is our own rule. People and findings are invented; the day is 2026-11-24.
#include "tests/unit/interpret/alerts/story.hpp"

using namespace limbledger;
using namespace limbledger::interpret_test;

namespace {

Bench born_on(const std::string& complaint, int year, int month, int day, const std::string& story) {
  Bench bench = visit(complaint, year, story);
  bench.born(year, month, day);
  return bench;
}
Bench of_no_known_age(const std::string& complaint, const std::string& story) {
  Bench bench = visit(complaint, 2026, story);
  bench.person.reset();
  return bench;
}
std::string asked_as(const Bench& bench) {
  const auto asked = question(bench, "acutely_ill");
  return asked ? asked->message.text : "nothing";
}
bool asked_first(const Bench& bench) {
  const auto assessment = bench.assess();
  return !assessment.questions.empty() && assessment.questions.front().question.text == "alert.acutely_ill";
}

}  // namespace

TEST_CASE("planted: of an infant under three months who is unwell the temperature is asked first; measured, well or older it is not") {
  for (const char* complaint : {"infant_hip", "limping_child", "free"}) {
    CAPTURE(complaint);
    const Bench unwell = born_on(complaint, 2026, 11, 3, "history.unwell yes");
    CHECK(asked_first(unwell));
    CHECK(asked_as(unwell) == "msg.question.acutely_ill.newborn");
    CHECK(asks(unwell, "acutely_ill", "general.temperature"));
    Bench no_thermometer = born_on(complaint, 2026, 11, 3, "history.unwell yes");
    no_thermometer.not_done("general.temperature", Side::midline, model::WhyNot::no_instrument);
    CHECK(asks(no_thermometer, "acutely_ill", "general.temperature"));
    CHECK(asks(born_on(complaint, 2026, 11, 3, "history.unwell yes; general.child_at_play play_quiet"), "acutely_ill", "general.temperature"));
    CHECK(line_of(born_on(complaint, 2026, 11, 3, "history.unwell yes; general.temperature 380"), "acutely_ill") == "newborn");
    CHECK(asked_as(born_on(complaint, 2026, 11, 3, "history.unwell yes; general.temperature 371")) == "nothing");
    CHECK(asked_as(born_on(complaint, 2026, 11, 3, "history.unwell no")) == "nothing");
    CHECK(asked_as(born_on(complaint, 2026, 11, 3, "")) == "nothing");
    CHECK(asked_as(born_on(complaint, 2026, 6, 3, "history.unwell yes")) == "nothing");
  }
}

// The red flags page, section 8: now if toxic or infant. That no thermometer is waited for is our own rule.
TEST_CASE("planted: an infant under three months who is unwell and pale, or will not move, is now before anybody measured; one of either is not") {
  for (const char* complaint : {"infant_hip", "free"}) {
    for (const char* look : {"general.pallor yes; ", "general.child_at_play play_will_not_move; ", "vessel.capillary_refill_slow both yes; "}) {
      CAPTURE(look);
      const std::string warm = std::string(look) + "general.temperature 368; ";
      CHECK(line_of(born_on(complaint, 2026, 10, 20, std::string(look) + "history.unwell yes"), "acutely_ill") == "pale");
      CHECK(is_now(born_on(complaint, 2026, 10, 20, warm + "history.unwell yes"), "acutely_ill"));
      CHECK(is_now(of_no_known_age(complaint, std::string("history.moves_about moves_rolls; history.unwell yes; ") + look), "acutely_ill"));
      CHECK(line_of(born_on(complaint, 2026, 10, 20, warm + "history.unwell no"), "acutely_ill") == "none");
      CHECK(line_of(born_on(complaint, 2026, 10, 20, look), "acutely_ill") == "none");
      // Older ones are measured first.
      const Bench older = born_on(complaint, 2025, 10, 20, std::string(look) + "history.unwell yes");
      CHECK(line_of(older, "acutely_ill") == "none");
      CHECK(asks(older, "acutely_ill", "general.temperature"));
    }
  }
}

TEST_CASE("planted: of no known age, who does not move about yet may be a newborn on any page; brought as a child, hot or cold, the age is asked") {
  for (const char* complaint : {"infant_hip", "limping_child", "child_alignment", "free"}) {
    for (const char* moves : {"history.moves_about moves_not_yet; ", "history.moves_about moves_rolls; "}) {
      CAPTURE(complaint);
      CHECK(line_of(of_no_known_age(complaint, std::string(moves) + "general.temperature 382"), "acutely_ill") == "newborn");
      CHECK(line_of(of_no_known_age(complaint, std::string(moves) + "history.unwell yes; general.temperature 353"), "acutely_ill") == "newborn_cold");
      CHECK(asked_as(of_no_known_age(complaint, std::string(moves) + "history.unwell yes")) == "msg.question.acutely_ill.newborn");
      CHECK(line_of(of_no_known_age(complaint, std::string(moves) + "general.temperature 372"), "acutely_ill") == "none");
    }
    CHECK(line_of(of_no_known_age(complaint, "history.moves_about moves_cruises; general.temperature 382"), "acutely_ill") == "none");
  }
  for (const char* complaint : {"limping_child", "child_alignment"}) {
    for (const char* sign : {"general.temperature 382", "history.fever yes", "general.temperature 353"}) {
      CAPTURE(sign);
      const Bench bench = of_no_known_age(complaint, sign);
      CHECK(asked_first(bench));
      CHECK(asked_as(bench) == "msg.question.acutely_ill.how_old");
      CHECK(asks(bench, "acutely_ill", "history.moves_about"));
      for (const char* older : {"history.moves_about moves_walks; ", "gait.steps_now 4; ", "gait.limp yes; ", "history.walks_usually walks_alone; "}) {
        CHECK(asked_as(of_no_known_age(complaint, std::string(older) + sign)) != "msg.question.acutely_ill.how_old");
      }
    }
    CHECK(asked_as(of_no_known_age(complaint, "general.temperature 372")) == "nothing");
  }
  CHECK(asked_as(of_no_known_age("free", "general.temperature 382")) == "nothing");
  // Too young to walk is said of the youngest too.
  CHECK(line_of(of_no_known_age("free", "history.walks_usually walks_not_yet; history.unwell yes; general.temperature 384"), "acutely_ill") == "newborn");
  CHECK(line_of(of_no_known_age("free", "history.walks_usually walks_not_yet; history.moves_about moves_crawls; general.temperature 384"), "acutely_ill") == "none");
}

TEST_CASE("planted: a child with a fever, a rash and two of cold feet, sore legs and looking ill is now; with one the others are asked, and a cold is quiet") {
  const std::string hot = "history.mechanism no_injury; general.temperature 396; history.rash yes; ";
  const std::string cold = "vessel.foot_cold both yes; ", sore = "history.leg_pain_both yes; ", unwell = "history.unwell yes; ";
  for (const char* complaint : {"limping_child", "chronic_knee", "free"}) {
    CAPTURE(complaint);
    for (const std::string& two : {cold + sore, cold + unwell, sore + unwell}) {
      CAPTURE(two);
      CHECK(is_now(visit(complaint, 2023, hot + two), "acutely_ill"));
      CHECK(line_of(visit(complaint, 2023, "history.mechanism no_injury; history.fever yes; history.rash yes; " + two), "acutely_ill") == "rash");
      // No rash, no fever, a grown person.
      CHECK(line_of(visit(complaint, 2023, "history.mechanism no_injury; general.temperature 396; history.rash no; " + two), "acutely_ill") != "rash");
      CHECK(line_of(visit(complaint, 2023, "history.mechanism no_injury; general.temperature 370; history.fever no; history.rash yes; " + two), "acutely_ill") == "none");
      CHECK(line_of(visit(complaint, 1983, hot + two), "acutely_ill") != "rash");
    }
    CHECK(asks(visit(complaint, 2023, hot + unwell), "acutely_ill", "history.leg_pain_both"));
    CHECK(line_of(visit(complaint, 2023, hot + unwell + "vessel.foot_cold both no; history.leg_pain_both no"), "acutely_ill") == "none");
    CHECK(line_of(visit(complaint, 2023, hot + "history.unwell no"), "acutely_ill") == "none");
    CHECK(asked_as(visit(complaint, 2023, hot + unwell + "vessel.foot_cold both no; history.leg_pain_both no")) == "nothing");
  }
  // What is kept from the page chooses nothing here: the line is the same without it, and does not rest on it.
  Bench told = visit("limping_child", 2023, hot + cold + sore + "history.unexplained_bruises yes");
  CHECK(line_of(told, "acutely_ill") == "rash");
  const auto rests_on = alert(told, "acutely_ill")->because;
  CHECK(rests_on.size() == 5);  // rash, warmth, two feet, both legs
  CHECK(std::find(rests_on.begin(), rests_on.end(), *told.find("history.unexplained_bruises").finding) == rests_on.end());
}

// The weight and the weeks are conventions of limits.hpp.
TEST_CASE("planted: of no known age, too young to walk beside what no infant has is no infant, and the age is asked first; beside an infant's weight it stays one") {
  const std::string hot = "history.walks_usually walks_not_yet; general.temperature 381; ";
  for (const char* older : {"history.diabetes_years 20", "history.weeks_since_onset 20", "body.pregnancy yes", "history.childbirth_recent yes", "history.frail yes"}) {
    CAPTURE(older);
    const Bench bench = of_no_known_age("chronic_knee", hot + older);
    CHECK(line_of(bench, "acutely_ill") == "none");
    CHECK(asked_as(bench) == "msg.question.acutely_ill.which_age");
    CHECK(asked_first(bench));
  }
  Bench spoke = of_no_known_age("chronic_knee", hot);
  spoke.exam.who_spoke = model::WhoSpoke{{"self"}, std::nullopt};
  CHECK(line_of(spoke, "acutely_ill") == "none");
  constexpr std::int64_t heaviest = 120;  // tenths of a kg
  for (const std::int64_t tenths : {std::int64_t{62}, heaviest, heaviest + 1, std::int64_t{800}}) {
    CAPTURE(tenths);
    Bench weighed = of_no_known_age("chronic_knee", hot);
    model::Finding mass;
    mass.finding = id_of(999);
    mass.item = {"general.body_mass"};
    mass.side = Side::midline;
    model::Mass kg;
    kg.kg = model::Kilograms{tenths};
    mass.value = kg;
    weighed.exam.findings->push_back(mass);
    CHECK((line_of(weighed, "acutely_ill") == "newborn") == (tenths <= heaviest));
  }
  CHECK(line_of(of_no_known_age("chronic_knee", hot), "acutely_ill") == "newborn");
  CHECK(line_of(of_no_known_age("chronic_knee", hot + "history.weeks_since_onset 2"), "acutely_ill") == "newborn");
}
