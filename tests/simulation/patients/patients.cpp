#include "tests/simulation/patients/patients.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <set>

namespace limbledger::patients {

namespace {

using model::Side;
using reference::AccuracyRow;
using reference::GroupMember;

const reference::Edition& edition() { return *reference::built_in_edition(); }

// 1 / (1 - spec) x sens and its like, solved for the two shares; nothing where no shares give such ratios.
std::optional<std::pair<double, double>> shares_of(const AccuracyRow& row) {
  const auto positive = interpret::ratio_of(row, true);
  const auto negative = interpret::ratio_of(row, false);
  if (!positive || !negative || positive->value <= 1 || negative->value >= 1) {
    return std::nullopt;
  }
  const double spec = (positive->value - 1) / (positive->value - negative->value);
  return std::pair(positive->value * (1 - spec), spec);
}

// A value that the catalogue reads as this word.
std::optional<model::Finding> finding_saying(const model::Item& item, const std::string& word) {
  model::Finding finding;
  finding.item = item.item;
  switch (item.value) {
    case model::ValueKind::test:
      finding.value = model::Test{word == "positive" ? model::TestResult::positive : model::TestResult::negative, std::nullopt};
      return finding;
    case model::ValueKind::answer:
      finding.value = model::Answer{word == "positive" ? model::AnswerWord::yes : model::AnswerWord::no};
      return finding;
    case model::ValueKind::choice:
      finding.value = model::Choice{{word}};
      return finding;
    case model::ValueKind::grade:
      for (const model::Counts& counts : item.counts.value_or(std::vector<model::Counts>{})) {
        if ((counts.as == model::TestResult::positive) == (word == "positive") && counts.as != model::TestResult::equivocal) {
          const wire::Name grade = counts.grades ? counts.grades->back() : edition().scale(*item.scale)->grades.back().grade;
          finding.value = model::Grade{*item.scale, grade, std::nullopt, std::nullopt, std::nullopt};
          if (counts.end_feels) {
            finding.end_feel = counts.end_feels->front();
          }
          return finding;
        }
      }
      return std::nullopt;
    default:
      return std::nullopt;
  }
}

bool can_say(const GroupMember& member) {
  return std::all_of(member.parts.begin(), member.parts.end(), [](const reference::TestPart& part) {
    const model::Item* item = edition().item(part.item);
    return !part.of && !part.yes.empty() && !part.no.empty() && finding_saying(*item, part.yes.front().text) &&
           finding_saying(*item, part.no.front().text);
  });
}

Setup setup_of(const reference::EvidenceCondition& condition, bool acute) {
  Setup setup{condition.condition, acute, {}, 0};
  const auto* groups = edition().evidence().groups_of(condition.condition);
  if (groups == nullptr) {
    return setup;
  }
  std::set<std::string> taken;
  for (const auto& group : groups->groups) {
    const std::size_t before = setup.tests.size();
    for (const GroupMember& member : group.members) {
      const AccuracyRow* row = edition().evidence().default_row(condition.condition, member.test, acute);
      const bool overlaps = std::any_of(member.parts.begin(), member.parts.end(), [&](const auto& part) { return taken.count(part.item.text) > 0; });
      if (row == nullptr || overlaps || !can_say(member)) {
        continue;
      }
      const auto admitted = reference::admit(*row, condition, {model::AgeInterval{30, 30}, acute});
      const auto shares = shares_of(*row);
      if (admitted.row_class != reference::RowClass::none && shares) {
        setup.tests.push_back({&group, &member, row, shares->first, shares->second, admitted.row_class == reference::RowClass::second});
        for (const auto& part : member.parts) {
          taken.insert(part.item.text);
        }
      }
    }
    setup.groups += setup.tests.size() > before ? 1U : 0U;
  }
  return setup;
}

}  // namespace

double uniform(Draw& draw) {
  constexpr std::uint64_t whole = 1ULL << 52U;
  return (static_cast<double>(draw.below(whole)) + 0.5) / static_cast<double>(whole);
}

double normal(Draw& draw) {
  const double far = std::sqrt(-2 * std::log(uniform(draw)));
  return far * std::cos(6.283185307179586 * uniform(draw));
}

double below_normal(double x) { return 0.5 * std::erfc(-x / 1.4142135623730951); }

double normal_at(double share) {
  double low = -9;
  double high = 9;
  for (int n = 0; n < 60; ++n) {
    const double middle = (low + high) / 2;
    (below_normal(middle) < share ? low : high) = middle;
  }
  return (low + high) / 2;
}

double logit(double share) { return std::log(share / (1 - share)); }
double share_of(double value) { return 1 / (1 + std::exp(-value)); }

std::vector<Setup> all_setups() {
  std::vector<Setup> setups;
  for (const auto& condition : edition().evidence().conditions) {
    for (const bool acute : {false, true}) {
      Setup setup = setup_of(condition, acute);
      const bool same_as_before = !setups.empty() && setups.back().condition == setup.condition &&
                                  std::equal(setup.tests.begin(), setup.tests.end(), setups.back().tests.begin(), setups.back().tests.end(),
                                             [](const auto& a, const auto& b) { return a.row == b.row; });
      if (condition.computes && !setup.tests.empty() && !same_as_before) {
        setups.push_back(std::move(setup));
      }
    }
  }
  return setups;
}

Pattern draw_pattern(const Setup& setup, bool present, const Dependence& dependence, Draw& draw) {
  Pattern pattern;
  const double shared = normal(draw);
  const reference::EvidenceGroup* group = nullptr;
  double of_group = 0;
  for (const SimulatedTest& test : setup.tests) {
    if (test.group != group) {
      group = test.group;
      of_group = normal(draw);
    }
    const double latent = std::sqrt(dependence.between) * shared + std::sqrt(dependence.within - dependence.between) * of_group +
                          std::sqrt(1 - dependence.within) * normal(draw);
    const double positives = present ? test.sens : 1 - test.spec;
    const bool positive = below_normal(latent) > 1 - positives;
    const bool done = !draw.one_in(5);
    pattern.push_back(done ? static_cast<std::int8_t>(positive ? 1 : 0) : not_done);
  }
  return pattern;
}

Bench exam_of(const Setup& setup, const Pattern& pattern) {
  Bench made(edition());
  made.exam.complaint = {"free"};
  made.exam.injured_on = setup.acute ? interpret_test::day(2026, 11, 22) : interpret_test::day(2026, 10, 25);
  for (std::size_t i = 0; i < pattern.size(); ++i) {
    if (pattern[i] == not_done) {
      continue;
    }
    for (const auto& part : setup.tests[i].member->parts) {
      const model::Item& item = *edition().item(part.item);
      const bool sided = std::find(item.sides.begin(), item.sides.end(), Side::left) != item.sides.end();
      const auto& words = pattern[i] == 1 ? part.yes : part.no;
      const auto said = finding_saying(item, words.front().text);
      REQUIRE(said.has_value());
      model::Finding& finding = made.add(item.item.text, sided ? Side::left : Side::midline, said->value);
      finding.end_feel = said->end_feel;
    }
  }
  return made;
}

std::optional<interpret::JudgedHypothesis> judged(const Bench& made, const Setup& setup, const std::vector<interpret::TypedPrior>& priors) {
  const interpret::View view(made.exam, made.person, *made.edition, made.ask().as_of);
  for (auto& one : interpret::judge_hypotheses(view, priors)) {
    if (one.result.hypothesis == setup.condition) {
      return std::move(one);
    }
  }
  return std::nullopt;
}

std::vector<interpret::Ratio> ratios_used(const Setup& setup, const Pattern& pattern, const interpret::Hypothesis& said) {
  std::vector<interpret::Ratio> ratios;
  for (std::size_t i = 0; i < pattern.size(); ++i) {
    const bool used = std::any_of(said.used.begin(), said.used.end(), [&](const auto& one) { return one.row == setup.tests[i].row->row; });
    if (used) {
      ratios.push_back(*interpret::ratio_of(*setup.tests[i].row, pattern[i] == 1));
    }
  }
  return ratios;
}

double number_of_line(const interpret::Working& working, const std::string& begins) {
  for (const auto& line : working.lines) {
    if (line.text.starts_with(begins)) {
      return std::stod(line.text.substr(line.text.rfind("= ") + 2));
    }
  }
  FAIL("no line that begins with " << begins);
  return 0;
}

}  // namespace limbledger::patients
