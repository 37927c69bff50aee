#include "core/interpret/judged.hpp"
#include "core/wire/write.hpp"
#include "tests/simulation/knee_laws.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>
#include <string>

namespace limbledger::knee_laws {

namespace {

using interpret::Outcome;
using model::Side;

// What an assessment says of rules, without the rest of it.
std::vector<interpret::RuleResult> rules_of(const Bench& made) {
  const interpret::View view(made.exam, made.person, *made.edition, made.ask().as_of);
  std::vector<interpret::RuleResult> said;
  for (auto& judged : interpret::watch(view).rules) {
    said.push_back(std::move(judged.result));
  }
  return said;
}

const interpret::RuleResult* find(const std::vector<interpret::RuleResult>& said, const interpret::RuleResult& same) {
  for (const auto& one : said) {
    if (one.rule == same.rule && one.side == same.side) {
      return &one;
    }
  }
  return nullptr;
}

// A wound or a joint out of place comes before any rule, and an open rule is then not used.
bool set_aside(const interpret::RuleResult& rule) { return rule.gate && rule.gate->text == "red_flag"; }

// A negative that other findings contradict counts as unsettled (clinical safety, requirement 7): a stance held after one that was not.
bool contradicted(const interpret::RuleResult& rule) {
  return rule.outcome == Outcome::negative &&
         std::any_of(rule.flags.begin(), rule.flags.end(), [](const model::Word& flag) { return flag.text == "contradicted"; });
}

// A gate that is a remark while nobody can answer it: the page counts without it (Laslett: six tests, and where the pain draws in the
// count does not stand). The result then names the gate as not known, which is no more certainty; one that does not name it is.
bool says_what_it_lacks(const interpret::RuleResult& without, const interpret::RuleResult& rule) {
  const bool aside = rule.outcome == Outcome::not_applicable && rule.gate && rule.gate->text == "pain_draws_in";
  return aside && std::find(without.flags.begin(), without.flags.end(), model::Word{"drawing_in_not_asked"}) != without.flags.end();
}

// A value of this item that falls in the class which the rule named; none where it is not a value of an item.
std::optional<model::Value> value_in(const model::ItemId& item, const std::string& named) {
  const model::Item* known = reference::built_in_edition()->item(item);
  if (named == "yes" || named == "no") {
    if (known->value == model::ValueKind::choices) {
      const auto& all = *known->choices;
      const auto first = std::find_if(all.begin(), all.end(), [](const model::ChoiceId& one) { return one.text != "none_of_these" && one.text != "pregnancy"; });
      return model::Choices{{named == "no" ? model::ChoiceId{"none_of_these"} : *first}};
    }
    if (known->value == model::ValueKind::test) {
      return model::Test{named == "yes" ? model::TestResult::positive : model::TestResult::negative, std::nullopt};
    }
    if (known->value != model::ValueKind::answer && known->value != model::ValueKind::count) {
      return std::nullopt;  // a choice or a number of its own classes
    }
    // A yes to a grade or a pulse is no value of it.
    return known->value == model::ValueKind::answer
               ? std::optional<model::Value>(model::Answer{named == "yes" ? model::AnswerWord::yes : model::AnswerWord::no})
               : std::nullopt;
  }
  if (named == "3 or fewer" || named == "4") {
    return model::CountValue{{named == "4" ? 4 : 3}};
  }
  if (named == "below 90" || named == "90 or more") {
    model::Angle angle;
    angle.deg = angle.toward_deg = model::Degrees{named == "below 90" ? 899 : 900};
    angle.toward = known->toward;
    return angle;
  }
  return std::nullopt;
}

// Taking these away is no loss of an answer: each only warns or says whose leg it is, and is not asked of everybody.
bool warns_only(const model::Finding& finding) {
  return finding.item.text == "general.answers_reliable" || finding.item.text.starts_with("body.");
}

}  // namespace

// Any one of several methods finds a numb foot, and one that was not begun asks nothing: with the method that found it taken away,
// the others answer by themselves.
// The same of what several items tell alike: a click or the pain of one test, a danger by any of its causes, the higher of two pressures.
bool joins_methods(const interpret::RuleResult& rule) {
  const std::set<std::string> several{"rule.protective_sensation", "rule.foot_category", "rule.compartment_signs", "rule.knee_vessels", "rule.wells_dvt",
                                      "rule.wells_dvt_1997", "rule.clot_route", "rule.lowery", "rule.eular_knee_oa", "rule.nice_oa"};
  return several.count(rule.rule.text) != 0;
}

std::uint64_t settled_by_what_is_named(Bench& made, const std::vector<interpret::RuleResult>& rules) {
  std::uint64_t settled = 0;
  for (const auto& rule : rules) {
    for (const auto& settle : rule.settle) {
      REQUIRE(rule.outcome == Outcome::undetermined);
      // What examiners disagree on, or answers that are not reliable, are not settled by one more answer.
      const bool open = std::any_of(rule.inputs.begin(), rule.inputs.end(),
                                    [&](const auto& one) { return one.input == settle.input && one.state.text == "not_asked"; });
      // A rule of both feet has one state for the two; what was already answered there is not asked again.
      const bool answered = settle.item && std::any_of(made.exam.findings->begin(), made.exam.findings->end(), [&](const model::Finding& finding) {
                              return rule.side == Side::midline && finding.item == *settle.item && finding.side == settle.side;
                            });
      if (!open || !settle.item || answered) {
        continue;
      }
      for (const auto& answer : settle.answers) {
        const auto value = value_in(*settle.item, answer.if_.text);
        if (!value) {
          continue;
        }
        made.add(settle.item->text, *settle.side, *value);
        const auto after = rules_of(made);
        made.exam.findings->pop_back();
        const auto* got = find(after, rule);
        if (got == nullptr || set_aside(*got)) {
          continue;
        }
        ++settled;
        if (got->outcome != answer.gives) {
          CAPTURE(wire::write(rule));
          CAPTURE(settle.input.text);
          CAPTURE(answer.if_.text);
          REQUIRE(wire::write(got->outcome) == wire::write(answer.gives));
        }
      }
    }
  }
  return settled;
}

Taken unknown_is_never_more_certain(Bench& made, const std::vector<interpret::RuleResult>& rules) {
  Taken taken;
  std::set<model::FindingId> used;
  for (const auto& rule : rules) {
    if (rule.outcome != Outcome::undetermined) {
      used.insert(rule.findings.begin(), rule.findings.end());
    }
  }
  auto& findings = *made.exam.findings;
  for (std::size_t i = 0; i < findings.size(); ++i) {
    const bool flexion = findings[i].item.text.find("flexion") != std::string::npos;  // the lowest of two: another question without one
    if (used.count(*findings[i].finding) == 0 || flexion || warns_only(findings[i]) || std::holds_alternative<model::NotDone>(findings[i].value)) {
      continue;
    }
    const model::Finding kept = findings[i];
    findings.erase(findings.begin() + static_cast<std::ptrdiff_t>(i));
    const auto after = rules_of(made);
    findings.insert(findings.begin() + static_cast<std::ptrdiff_t>(i), kept);
    for (const auto& rule : rules) {
      const auto* without = find(after, rule);
      // ALTMAN1991 lets bending stand in where no rate was taken: another question by its letter, not the same one less known.
      const bool bends = rule.rule.text == "rule.acr_hip_oa" && kept.item.text == "general.lab_esr";
      // The highest warmth of the week as it was told answers where no thermometer does today: another answer, not the same one less known.
      const bool told = (rule.rule.text == "rule.kocher" || rule.rule.text == "rule.caird") && kept.item.text == "general.temperature";
      const bool stands_in = bends || told;
      if (stands_in || rule.outcome == Outcome::undetermined || contradicted(rule) || without == nullptr || set_aside(rule) || set_aside(*without) ||
          joins_methods(rule)) {
        continue;
      }
      ++taken.away;
      taken.opened += rule.outcome != without->outcome ? 1U : 0U;
      // A test that was not done concludes nothing, no more than one that is open: arms that were used at a chair nobody rose from.
      const bool nothing = without->outcome == Outcome::undetermined || (without->gate && without->gate->text == "not_done");
      if (rule.outcome != without->outcome && !nothing && !says_what_it_lacks(*without, rule)) {
        CAPTURE(kept.item.text);
        CAPTURE(wire::write(rule));
        REQUIRE(wire::write(*without) == wire::write(rule.outcome));
      }
    }
  }
  return taken;
}

}  // namespace limbledger::knee_laws
