// Knee motion with the real edition, against worked figures that can be followed on paper.
// Sources: SOUCIE2011 (Soucie and others, Haemophilia 2011;17:500-507, doi 10.1111/j.1365-2516.2010.02399.x; means and intervals as on
// the CDC joint motion page), HANCOCK2018 (J Exp Orthop 2018;5:46, doi 10.1186/s40634-018-0161-5: smallest change to believe).
// Formulas: SD = half-width / 1.96 x sqrt(n); z = (value - mean) / SD.
#include "core/interpret/motion/norm.hpp"
#include "core/wire/write.hpp"

#include "tests/unit/interpret/support.hpp"

#include <doctest/doctest.h>

#include <cmath>

using namespace limbledger;
using namespace limbledger::interpret_test;
using interpret::StatementGrade;
using interpret::Verdict;

namespace {

const std::string norm_left = "motion.norm:knee.flexion_passive:left";
const std::string past_left = "motion.past:knee.flexion_passive:left";

Bench person_of(int age, model::Sex sex) {
  REQUIRE(reference::built_in_edition() != nullptr);
  Bench made(*reference::built_in_edition());
  made.person->sex = sex;
  made.person->norm_sex = sex == model::Sex::male ? model::NormSex::male : model::NormSex::female;
  made.born(2026 - age, 1, 1);
  return made;
}

const reference::NormRow& norm_row_of(const std::string& id) {
  for (const auto& row : reference::built_in_edition()->norms()) {
    if (row.row.text == id) {
      return row;
    }
  }
  FAIL("no row " << id);
  return reference::built_in_edition()->norms().front();
}

double sd_from_interval(double low, double high, int n) { return (high - low) / 2 / 1.96 * std::sqrt(n); }

}  // namespace

TEST_CASE("SOUCIE2011, knee flexion and extension by sex and age band, is what the edition holds and picks") {
  // Means, and mean - 2 SD to mean + 2 SD with the SD rebuilt from the printed interval.
  struct Printed {
    int age;
    model::Sex sex;
    const char* motion;
    double mean, ci_low, ci_high;
    int n;
  };
  using model::Sex;
  const Printed table[] = {
      {2, Sex::female, "flexion", 152.6, 151.2, 154.0, 39},   {8, Sex::male, "flexion", 147.8, 146.6, 149.0, 55},
      {9, Sex::female, "flexion", 142.3, 140.8, 143.8, 56},   {19, Sex::male, "flexion", 142.2, 140.4, 144.0, 48},
      {20, Sex::female, "flexion", 141.9, 140.9, 142.9, 143}, {44, Sex::male, "flexion", 137.7, 136.5, 138.9, 114},
      {45, Sex::female, "flexion", 137.8, 136.5, 139.1, 123}, {69, Sex::male, "flexion", 132.9, 131.6, 134.2, 96},
      {5, Sex::female, "extension", 5.4, 3.9, 6.9, 39},       {5, Sex::male, "extension", 1.6, 0.9, 2.3, 55},
      {30, Sex::female, "extension", 1.6, 1.1, 2.1, 143},     {30, Sex::male, "extension", 1.0, 0.6, 1.4, 114},
  };
  for (const Printed& printed : table) {
    const auto* item = reference::built_in_edition()->item(std::string("knee.") + printed.motion + "_passive");
    REQUIRE(item != nullptr);
    const auto sex = printed.sex == Sex::male ? model::NormSex::male : model::NormSex::female;
    const auto* row = interpret::norm_row(*reference::built_in_edition(), {item, sex, printed.age * 12, {"supine"}});
    CAPTURE(printed.motion);
    CAPTURE(printed.age);
    REQUIRE(row != nullptr);
    CHECK(row->source.text == "SOUCIE2011");
    CHECK(row->mean->steps == std::lround(printed.mean * 1000));
    const double sd = sd_from_interval(printed.ci_low, printed.ci_high, printed.n);
    REQUIRE(row->sd.has_value());
    CHECK(std::abs(static_cast<double>(row->sd->steps) / 1000 - sd) < 0.0501);
    const auto limits = interpret::limits_of(*row);
    REQUIRE(limits.has_value());
    CHECK(std::abs(static_cast<double>(limits->low) / 1000 - (printed.mean - 2 * sd)) < 0.11);
    CHECK(std::abs(static_cast<double>(limits->high) / 1000 - (printed.mean + 2 * sd)) < 0.11);
  }
}

TEST_CASE("SD from an interval: 151.2 to 154.0 with 39 people is 4.461, 129.4 to 132.8 with 55 is 6.432") {
  CHECK(sd_from_interval(151.2, 154.0, 39) == doctest::Approx(4.461).epsilon(0.0002));
  CHECK(sd_from_interval(129.4, 132.8, 55) == doctest::Approx(6.432).epsilon(0.0002));
  CHECK(norm_row_of("norm.knee.flexion.passive.female.2-8.SOUCIE2011").sd->steps == 4500);
}

TEST_CASE("a man of 30 who bends passively to 120 lies at z -2.708: undecided with the long goniometer, below with the inclinometer") {
  CHECK((120 - 137.7) / sd_from_interval(136.5, 138.9, 114) == doctest::Approx(-2.708).epsilon(0.0002));
  Bench made = person_of(30, model::Sex::male);
  made.angle("knee.flexion_passive", Side::left, 1200);
  CHECK(made.statement(norm_left).verdict == Verdict::not_distinguishable);  // 120 + 1.96 x 3.6 = 127.1, not below 124.7
  made.exam.findings->front().instrument = model::Word{"inclinometer"};
  CHECK(made.statement(norm_left).verdict == Verdict::below);         // 120 + 1.96 x 2.2 = 124.2, below 124.7
  CHECK(made.statement(norm_left).grade == StatementGrade::unclear);  // this row's interval was not read at its source
  CHECK(made.explain(norm_left).lines[1].text == "120 + 1.96 x 2.2 = 124.2, below 124.7");
}

TEST_CASE("a girl of 5 who stops 5 short of straight lies at z -2.176: undecided with the long goniometer") {
  CHECK((-5 - 5.4) / sd_from_interval(3.9, 6.9, 39) == doctest::Approx(-2.176).epsilon(0.0003));
  Bench made = person_of(5, model::Sex::female);
  made.angle("knee.extension_passive", Side::left, -50);
  const auto statement = made.statement("motion.norm:knee.extension_passive:left");
  CHECK(statement.verdict == Verdict::not_distinguishable);
  CHECK(statement.params.json == R"({"toward":"extension","toward_deg":-5,"low":-4.2,"high":15,"error_deg":3.6})");
}

TEST_CASE("118.5 in a man of 30 with the long goniometer: statement and working as on paper") {
  Bench made = person_of(30, model::Sex::male);
  made.angle("knee.flexion_passive", Side::left, 1185);
  const auto statement = made.statement(norm_left);
  const std::string id = made.exam.findings->front().finding->to_text();
  CHECK(wire::write(statement) ==
        R"({"statement":"motion.norm:knee.flexion_passive:left","side":"left","grade":"unclear","verdict":"not_distinguishable","comparator":"norm",)"
        R"("message":"msg.motion.not_distinguishable_taught","params":{"deg":118.5,"low":124.7,"high":150.7,"error_deg":3.6},"findings":[")" +
            id + R"("],"rows":["norm.knee.flexion.passive.male.20-44.SOUCIE2011","error.default.goniometer_long"],"missing":[]})");
  const auto working = made.explain(norm_left);
  CHECK(working.formula.text == "below if reading + 1.96 x error < low");
  REQUIRE(working.lines.size() >= 2);
  CHECK(working.lines[0].text == "10 / 2.772 = 3.6");
  CHECK(working.lines[1].text == "118.5 + 1.96 x 3.6 = 125.6, not below 124.7");
  CHECK(wire::write(working.rows[1]) == R"({"row":"error.default.goniometer_long","source":"HANCOCK2018","status":"read","numbers":{"mdc95":10}})");
}

TEST_CASE("above 74 nobody measured a man's knee, and above 83 nobody a woman's: no norm is an ordinary answer") {
  for (const auto& [age, sex] : {std::pair{75, model::Sex::male}, std::pair{84, model::Sex::female}}) {
    Bench made = person_of(age, sex);
    made.angle("knee.flexion_passive", Side::left, 1100);
    CHECK(made.statement(norm_left).verdict == Verdict::no_norm);
    CHECK(made.statement(norm_left).grade == StatementGrade::cannot_tell);
  }
}

TEST_CASE("HC-010: 110 then 118 by eye is no detectable change (14); by inclinometer (6) it increased") {
  for (const auto& [instrument, verdict] : {std::pair{"by_eye", Verdict::not_distinguishable}, std::pair{"inclinometer", Verdict::above}}) {
    Bench then = person_of(30, model::Sex::male);
    then.angle("knee.flexion_passive", Side::left, 1100, instrument);
    then.exam.examined_at = at_noon(2026, 11, 10);
    Bench now = person_of(30, model::Sex::male);
    now.angle("knee.flexion_passive", Side::left, 1180, instrument);
    now.earlier = {then.exam};
    CHECK(now.statement(past_left).verdict == verdict);
  }
}

TEST_CASE("HC-011: 100 by eye, then 112 by inclinometer: the larger threshold (14), and the method differs") {
  Bench then = person_of(30, model::Sex::male);
  then.angle("knee.flexion_passive", Side::left, 1000, "by_eye");
  then.exam.examined_at = at_noon(2026, 11, 10);
  Bench now = person_of(30, model::Sex::male);
  now.angle("knee.flexion_passive", Side::left, 1120, "inclinometer");
  now.earlier = {then.exam};
  CHECK(now.statement(past_left).verdict == Verdict::not_distinguishable);
  CHECK(now.statement(past_left).params.json == R"({"deg":112,"other_deg":100,"difference_deg":12,"needed_deg":14,"methods_differ":true})");
}

TEST_CASE("HC-031: 100 on both sides at 65: alike, and both below the norm, notable because it was read at its source") {
  Bench made = person_of(65, model::Sex::male);
  made.angle("knee.flexion_passive", Side::left, 1000);
  made.angle("knee.flexion_passive", Side::right, 1000);
  CHECK(made.statement("motion.side:knee.flexion_passive:left").grade == StatementGrade::unclear);
  for (const char* side : {"left", "right"}) {
    const auto statement = made.statement(std::string("motion.norm:knee.flexion_passive:") + side);
    CHECK(statement.verdict == Verdict::below);
    CHECK(statement.grade == StatementGrade::notable);
  }
}
