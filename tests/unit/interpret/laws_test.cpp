// Laws of the interpretation over seeded random exams (4,000; 10,000 in the full tier): the order of findings does not matter,
// exchanging sides exchanges the answer and nothing else, and unknown never yields more certainty.
#include "core/interpret/rules/knee/ottawa_knee.hpp"
#include "core/wire/write.hpp"

#include "tests/unit/interpret/draw.hpp"
#include "tests/unit/interpret/support.hpp"
#include "tests/unit/invented/edition.hpp"

#include <doctest/doctest.h>

#include <cstdlib>
#include <initializer_list>
#include <string_view>

using namespace limbledger;
using namespace limbledger::interpret_test;
using interpret::Outcome;

namespace {

// Active extension, fluid and looseness, from a stream of their own.
void add_tests(Bench& made, std::uint64_t seed) {
  Draw draw(seed + 40'000);
  const auto grade = [&](const char* item, Side side, const char* scale, std::initializer_list<const char*> grades) {
    if (draw.one_in(2)) {
      return;
    }
    model::Grade value;
    value.scale = {scale};
    value.grade = {*(grades.begin() + draw.below(grades.size()))};
    auto& finding = made.add(item, side, value);
    if (draw.one_in(2)) {
      finding.end_feel = model::Word{draw.one_in(2) ? "soft" : "firm"};
    }
    if (draw.one_in(6)) {
      finding.quality = std::vector{static_cast<model::Quality>(draw.below(4))};
    }
    if (draw.one_in(8)) {
      finding.origin = static_cast<model::Origin>(draw.below(5));
    }
  };
  for (const Side side : {Side::left, Side::right}) {
    for (const char* item : {"knee.lachman", "knee.lachman", "knee.anterior_drawer", "knee.posterior_drawer", "knee.valgus_30", "knee.pivot_shift"}) {
      grade(item, side, "invented/looseness", {"0", "1", "2"});
    }
    grade("knee.effusion_stroke", side, "invented/wave", {"0", "trace", "1+", "3+"});
    for (const char* item : {"knee.effusion_ballottement", "knee.posterior_sag"}) {
      if (draw.one_in(2)) {
        made.add(item, side, model::Test{static_cast<model::TestResult>(draw.below(3)), std::nullopt});
      }
    }
    if (draw.one_in(3)) {
      made.angle("knee.extension_active", side, static_cast<std::int64_t>(draw.below(300)) - 200, draw.one_in(4) ? "" : "inclinometer");
    }
    if (draw.one_in(3)) {
      model::Length girth;
      girth.mm = model::Millimetres{static_cast<std::int64_t>(400 + draw.below(200)) * model::Millimetres::wire_rule.per_unit};
      made.add("leg.invented_girth", side, girth);
    }
  }
}

Bench random_exam(std::uint64_t seed) {
  Draw draw(seed);
  Bench made(invented_edition());
  made.exam.side.reset();
  if (!draw.one_in(3)) {
    made.exam.side = draw.one_in(2) ? Side::left : Side::right;
  }
  made.person->sex = draw.one_in(2) ? model::Sex::male : model::Sex::female;
  made.person->norm_sex = static_cast<model::NormSex>(draw.below(3));
  made.born(1930 + static_cast<int>(draw.below(95)), 1 + static_cast<int>(draw.below(12)), 1 + static_cast<int>(draw.below(28)));
  if (draw.one_in(4)) {
    made.person->birth->date->day = 0;
    made.person->birth->date->month = 0;
  }
  made.exam.injured_on = day(2026, 11, 10 + static_cast<int>(draw.below(15)));
  const auto word = [&] { return static_cast<model::AnswerWord>(draw.below(3)); };
  for (const Side side : {Side::left, Side::right}) {
    for (const char* item : {"knee.fibular_head_tender", "knee.patella_tender", "knee.bone_tender_elsewhere"}) {
      for (std::uint64_t n = draw.below(3); n > 0; --n) {
        made.answer(item, side, draw.one_in(2) ? model::AnswerWord::no : word()).origin =
            static_cast<model::Origin>(draw.one_in(5) ? draw.below(5) : 0);
      }
    }
    for (const char* item : {"knee.flexion_active", "knee.flexion_passive", "knee.extension_passive"}) {
      if (draw.one_in(3)) {
        continue;
      }
      const bool extension = std::string(item).find("extension") != std::string::npos;
      auto& finding =
          made.angle(item, side, extension ? static_cast<std::int64_t>(draw.below(300)) - 200 : 700 + static_cast<std::int64_t>(draw.below(700)),
                     draw.one_in(3) ? "by_eye" : "inclinometer");
      if (draw.one_in(8)) {
        std::get<model::Angle>(finding.value).bound = static_cast<model::Bound>(draw.below(2));
      }
      if (draw.one_in(10)) {
        finding.value = model::NotDone{static_cast<model::WhyNot>(draw.below(17)), std::nullopt};
      }
    }
    if (draw.one_in(12)) {
      made.yes("body.knee_replaced", side);
    }
  }
  if (!draw.one_in(4)) {
    made.answer("history.steps_at_once", Side::midline, word());
  }
  if (!draw.one_in(4)) {
    made.count("gait.steps_now", static_cast<std::int64_t>(draw.below(5)));
  }
  if (!draw.one_in(4)) {
    made.add("history.knee_rule_exclusions", Side::midline, model::Choices{{{draw.one_in(6) ? "paraplegia" : "none_of_these"}}});
  }
  if (draw.one_in(3)) {
    made.answer("body.pregnancy", Side::midline, word());
  }
  add_tests(made, seed);
  for (auto& finding : *made.exam.findings) {
    finding.standing = draw.one_in(9) ? model::Standing::in_conflict : model::Standing::current;
  }
  return made;
}

// The parts of an assessment as text, in an order of their own.
std::vector<std::string> parts_of(const interpret::Assessment& assessment, bool swapped) {
  std::vector<std::string> parts;
  for (const auto& one : assessment.rules) {
    parts.push_back(wire::write(one));
  }
  for (const auto& one : assessment.statements) {
    parts.push_back(wire::write(one));
  }
  for (const auto& one : assessment.contradictions) {
    parts.push_back(wire::write(one));
  }
  for (std::string& part : parts) {
    part = swapped ? exchange_words(part) : part;
  }
  std::sort(parts.begin(), parts.end());
  return parts;
}

// Fewer where an instrumented build says so.
const std::uint64_t exams = [] {
  if (const char* wanted = std::getenv("LIMBLEDGER_EXAMS")) {
    return static_cast<std::uint64_t>(std::strtoull(wanted, nullptr, 10));
  }
  const char* tier = std::getenv("LIMBLEDGER_TIER");
  return std::uint64_t{tier != nullptr && std::string_view(tier) == "full" ? 10'000U : 4'000U};
}();

// Without the next step, which asks every answer again and has laws of its own.
interpret::Assessment said_of(const Bench& made) {
  interpret::AssessAsk ask = made.ask();
  ask.only = {"alerts", "questions", "flags", "rules", "statements", "missing", "contradictions"};
  return interpret::assess(made.exam, made.person, made.earlier, *made.edition, ask);
}

interpret::RuleResult rule_of(const Bench& made) {
  for (const auto& result : said_of(made).rules) {
    if (result.side == Side::left) {
      return result;
    }
  }
  return {};
}

}  // namespace

TEST_CASE("the order in which findings were entered does not change one byte of the assessment") {
  std::uint64_t rules = 0;
  std::uint64_t statements = 0;
  for (std::uint64_t seed = 1; seed <= exams; ++seed) {
    Bench made = random_exam(seed);
    const auto assessment = said_of(made);
    rules += assessment.rules.size();
    statements += assessment.statements.size();
    const std::string before = wire::write(assessment);
    Draw draw(seed + 77);
    auto& findings = *made.exam.findings;
    for (std::size_t i = findings.size(); i > 1; --i) {
      std::swap(findings[i - 1], findings[draw.below(i)]);
    }
    if (wire::write(said_of(made)) != before) {
      CAPTURE(seed);
      REQUIRE(wire::write(said_of(made)) == before);
    }
  }
  CHECK(rules > exams);  // the exams are not empty
  CHECK(statements > 3 * exams);
}

TEST_CASE("exchanging left and right exchanges the answer and nothing else") {
  for (std::uint64_t seed = 1; seed <= exams; ++seed) {
    Bench made = random_exam(seed);
    const auto before = parts_of(said_of(made), true);
    for (auto& finding : *made.exam.findings) {
      finding.side = finding.side == Side::left ? Side::right : (finding.side == Side::right ? Side::left : Side::midline);
    }
    if (made.exam.side) {
      made.exam.side = *made.exam.side == Side::left ? Side::right : Side::left;
    }
    const auto after = parts_of(said_of(made), false);
    if (after != before) {
      CAPTURE(seed);
      REQUIRE(after == before);
    }
  }
}

TEST_CASE("taking an answer away never makes a rule's answer another certain one") {
  // Flexion is the lowest of what was recorded, so that taking one of its two motions away is another question.
  std::uint64_t opened = 0;
  for (std::uint64_t seed = 1; seed <= exams; ++seed) {
    Bench made = random_exam(seed);
    made.exam.side = Side::left;
    auto& findings = *made.exam.findings;
    for (auto& finding : findings) {
      finding.standing.reset();
    }
    const auto before = rule_of(made);
    Draw draw(seed + 5);
    if (findings.empty()) {
      continue;
    }
    auto& taken = findings[draw.below(findings.size())];
    const std::string item = taken.item.text;
    const auto twins = std::count_if(findings.begin(), findings.end(), [&](const auto& f) { return f.item == taken.item && f.side == taken.side; });
    if (item.starts_with("knee.flexion") || twins > 1) {
      continue;
    }
    taken.value = model::NotDone{model::WhyNot::declined, std::nullopt};
    const auto after = rule_of(made);
    const bool same = after.outcome == before.outcome;
    opened += !same && after.outcome == Outcome::undetermined ? 1U : 0U;
    if (!same && after.outcome != Outcome::undetermined) {
      CAPTURE(seed);
      CAPTURE(item);
      REQUIRE(after.outcome == before.outcome);
    }
  }
  CHECK(opened > exams / 200);
}

TEST_CASE("an unknown input of the knee rule gives what both answers give, or nothing") {
  for (std::uint64_t seed = 1; seed <= exams; ++seed) {
    Draw draw(seed);
    const auto tri = [&] { return static_cast<interpret::Tri>(draw.below(3)); };
    interpret::OttawaKnee in;
    in.age = interpret::Between{static_cast<std::int64_t>(draw.below(70)), 70};
    in.days = interpret::Between{static_cast<std::int64_t>(draw.below(9)), 9};
    in.fib = tri();
    in.pat = tri();
    in.other = tri();
    in.flex = interpret::Between{600 + static_cast<std::int64_t>(draw.below(600)), 1300};
    in.imm = tri();
    in.steps = interpret::Between{static_cast<std::int64_t>(draw.below(5)), 4};
    in.excl = tri();
    in.pregnant = tri();
    interpret::Tri* chosen[] = {&in.fib, &in.pat, &in.other, &in.imm, &in.excl, &in.pregnant};
    interpret::Tri& one = *chosen[draw.below(6)];
    one = interpret::Tri::undetermined;
    const Outcome open = interpret::ottawa_knee(in).outcome;
    one = interpret::Tri::no;
    const Outcome if_no = interpret::ottawa_knee(in).outcome;
    one = interpret::Tri::yes;
    const Outcome if_yes = interpret::ottawa_knee(in).outcome;
    const bool holds = open == (if_no == if_yes ? if_no : Outcome::undetermined);
    if (!holds) {
      CAPTURE(seed);
      REQUIRE(holds);
    }
  }
}
