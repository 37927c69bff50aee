#include "tests/simulation/limb/laws.hpp"

#include "core/interpret/evidence/judge.hpp"
#include "core/interpret/judged.hpp"
#include "core/wire/write.hpp"
#include "tests/simulation/knee_laws.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <map>
#include <set>
#include <string>

namespace limbledger::limb_laws {

namespace {

using interpret::AlertState;
using interpret::FlagAnswer;
using interpret::Outcome;
using limb_exams::facts;
using model::Side;

template <class One, class Same>
const One* find_same(const std::vector<One>& all, const Same& same) {
  const auto at = std::find_if(all.begin(), all.end(), same);
  return at == all.end() ? nullptr : &*at;
}

// The joints that complaints are of, and those around them: what is found of one says nothing of the others.
const std::set<std::string>& joint_regions() {
  static const std::set<std::string> regions = [] {
    std::set<std::string> found;
    for (const model::Sequence& sequence : facts().sequences()) {
      if (sequence.part) {
        found.insert(sequence.part->text);
      }
      for (const model::Word& around : sequence.joints_around.value_or(std::vector<model::Word>{})) {
        found.insert(around.text);
      }
    }
    return found;
  }();
  return regions;
}

// Regions of the items that a condition's tests, and what spoils them, are read from.
const std::set<std::string>& regions_of(const model::Word& condition) {
  static const std::map<std::string, std::set<std::string>> all = [] {
    std::map<std::string, std::set<std::string>> found;
    for (const auto& groups : facts().evidence().groups) {
      std::set<std::string>& regions = found[groups.condition.text];
      const auto add = [&](const model::ItemId& item) { regions.insert(facts().item(item)->region.text); };
      for (const auto& group : groups.groups) {
        for (const auto& member : group.members) {
          for (const auto& part : member.parts) {
            add(part.item);
          }
        }
      }
      for (const auto& confounder : groups.confounders) {
        if (confounder.when.item) {
          add(*confounder.when.item);
        }
      }
    }
    return found;
  }();
  return all.at(condition.text);
}

bool is_unrelated(const interpret::Hypothesis& one, const model::Finding& finding) {
  const std::string& region = facts().item(finding.item)->region.text;
  const bool other_region = joint_regions().count(region) > 0 && regions_of(one.hypothesis).count(region) == 0;
  const bool other_side = one.side && finding.side != Side::midline && finding.side != *one.side;
  return other_region || other_side;
}

void check_unrelated(const model::Finding& finding, const Said& without, const Said& with, Met& met) {
  const auto compare = [&](const std::vector<interpret::Hypothesis>& these, const std::vector<interpret::Hypothesis>& others) {
    for (const auto& one : these) {
      if (!is_unrelated(one, finding)) {
        continue;
      }
      ++met.unrelated;
      const auto* other = find_same(others, [&](const auto& same) { return same.hypothesis == one.hypothesis && same.side == one.side; });
      const std::string before = wire::write(one);
      const std::string after = other == nullptr ? "nothing" : wire::write(*other);
      if (before != after) {
        CAPTURE(wire::write(finding));
        REQUIRE(after == before);
      }
    }
  };
  compare(without.hypotheses, with.hypotheses);
  compare(with.hypotheses, without.hypotheses);
}

// A second value in the place of one that is there is a contradiction, which nobody but a person settles.
bool shares_its_place(const Bench& made, const model::Finding& finding) {
  return std::any_of(made.exam.findings->begin(), made.exam.findings->end(), [&](const model::Finding& one) {
    return one.finding != finding.finding && one.item == finding.item && one.side == finding.side;
  });
}

// What may lower a danger though it corrects nothing. What is special about a body only ever takes claims away (core/interpret/body.hpp): a
// fused knee locks no more. How and when it began is a circumstance (clue.hpp): a joint that is hot after no known injury is another
// question than one after a twist. Pain beyond what was hurt raises a compartment while nobody said whether the limb is at risk; once it
// is not, stretching has to hurt as well (clinical safety, requirement 3).
bool takes_claims_away(const model::Finding& finding) {
  static const std::set<std::string> how_it_began{"history.mechanism", "history.fall_or_blow", "history.weeks_since_onset",
                                                  "history.pain_over_2_weeks", "history.injury_severe_or_crush"};
  const auto* not_done = std::get_if<model::NotDone>(&finding.value);
  const bool by_reason = not_done != nullptr && std::any_of(facts().bodies().begin(), facts().bodies().end(),
                                                            [&](const reference::BodyRow& row) { return row.opened_by_reason == not_done->reason; });
  return by_reason || facts().item(finding.item)->region.text == "body" || how_it_began.count(finding.item.text) > 0;
}

// What was raised stays raised. A no is answered by the sign that leads, so another sign, found later, may raise the danger or ask again:
// it is then seen to be open, and never gone from the list.
void check_dangers(const Bench& made, const model::Finding& finding, const Said& without, const Said& with, Met& met) {
  if (takes_claims_away(finding) || shares_its_place(made, finding)) {
    return;
  }
  for (const auto& flag : without.flags) {
    if (flag.answer != FlagAnswer::raised && flag.answer != FlagAnswer::asked_no) {
      continue;
    }
    ++(flag.answer == FlagAnswer::raised ? met.raised : met.answered);
    const auto* now = find_same(with.flags, [&](const auto& same) { return same.flag == flag.flag && same.side == flag.side; });
    const bool holds = now != nullptr && (now->answer == FlagAnswer::raised || flag.answer == FlagAnswer::asked_no);
    if (!holds) {
      CAPTURE(wire::write(finding));
      CAPTURE(wire::write(flag));
      CHECK((now == nullptr ? std::string("nothing") : wire::write(*now)) == "as it was");
    }
  }
}

// An input that is the lowest of several motions is known by one of them, and another may be lower: it is asked after no more.
bool may_be_lower(const model::Finding& finding) { return finding.item.text.find("flexion") != std::string::npos; }

// The place itself is named, or an input that was named became known by another item that tells it: a blow, by how it happened.
bool was_named(const interpret::RuleResult& before, const interpret::RuleResult* now, const model::Finding& finding) {
  return std::any_of(before.settle.begin(), before.settle.end(), [&](const interpret::Settle& settle) {
    const auto state_in = [&](const interpret::RuleResult& rule) {
      const auto* input = find_same(rule.inputs, [&](const auto& one) { return one.input == settle.input; });
      return input == nullptr ? std::string() : input->state.text;
    };
    const bool same_place = settle.item && *settle.item == finding.item && settle.side == finding.side;
    return same_place || (now != nullptr && state_in(before) != "known" && state_in(*now) == "known");
  });
}

void check_rules(const model::Finding& finding, const Said& without, const Said& with, Met& met) {
  for (const auto& rule : without.rules) {
    if (rule.outcome != Outcome::undetermined || knee_laws::joins_methods(rule) || may_be_lower(finding)) {
      continue;
    }
    ++met.open_rules;
    const auto* now = find_same(with.rules, [&](const auto& same) { return same.rule == rule.rule && same.side == rule.side; });
    if (now != nullptr && (now->outcome == Outcome::positive || now->outcome == Outcome::negative) && !was_named(rule, now, finding)) {
      CAPTURE(wire::write(finding));
      CAPTURE(wire::write(rule));
      CHECK(wire::write(*now) == "undetermined");
    }
  }
}

}  // namespace

Said said_of(const Bench& made, std::span<const model::Exam> before) {
  const interpret::View view(made.exam, made.person, *made.edition, made.ask().as_of);
  Said said;
  interpret::Watched watched = interpret::watch(view, {true, before});
  said.alerts = std::move(watched.alerts.alerts);
  said.flags = std::move(watched.alerts.flags);
  for (auto& rule : watched.rules) {
    said.rules.push_back(std::move(rule.result));
  }
  for (auto& judged : interpret::judge_hypotheses(view, {})) {
    said.hypotheses.push_back(std::move(judged.result));
  }
  return said;
}

std::uint64_t never_certain(const Said& said) {
  std::uint64_t ranges = 0;
  for (const auto& one : said.hypotheses) {
    if (one.range) {
      ++ranges;
      const std::int64_t low = one.range->low.steps;
      const std::int64_t high = one.range->high.steps;
      // The ends alone, "fewer than 5" and "more than 95", stand by themselves.
      const bool open = low > 0 && high < 100 && (low < high || (low == high && (low == 5 || low == 95)));
      if (!open) {
        REQUIRE(wire::write(one) == "a range that holds neither 0 nor 100");
      }
    }
  }
  return ranges;
}

void one_came(const Bench& made, const model::Finding& finding, const Said& without, const Said& with, Met& met) {
  check_unrelated(finding, without, with, met);
  check_dangers(made, finding, without, with, met);
  check_rules(finding, without, with, met);
}

void one_corrected(const Bench& made, const Said& before, std::size_t at, Draw& draw, Met& met) {
  Bench corrected = made;
  model::Finding& finding = (*corrected.exam.findings)[at];
  auto value = limb_exams::any_value(*facts().item(finding.item), draw, 6);
  if (!value) {
    return;
  }
  finding.value = std::move(*value);
  finding.quality.reset();
  const std::vector<model::Exam> shown{made.exam};
  const Said after = said_of(corrected, shown);
  for (const auto& alert : before.alerts) {
    const auto* now = find_same(after.alerts, [&](const auto& same) { return same.alert == alert.alert && same.side == alert.side; });
    if (now == nullptr) {
      // Inside a graver one it is not lost; by itself it would be.
      const auto* flag = find_same(after.flags, [&](const auto& same) { return same.flag == alert.alert && same.side == alert.side; });
      CAPTURE(wire::write(finding));
      CAPTURE(wire::write(alert));
      CHECK((flag != nullptr && flag->answer == FlagAnswer::raised));
    } else {
      met.withdrawn += now->state == AlertState::withdrawn_by_correction ? 1U : 0U;
    }
  }
}

}  // namespace limbledger::limb_laws
