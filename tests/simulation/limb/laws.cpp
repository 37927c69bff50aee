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

using NamesOf = std::map<std::string, std::set<std::string>>;  // by condition

// What `add` takes from each part of a condition's tests.
template <class Add>
NamesOf from_parts(const Add& add) {
  NamesOf found;
  for (const auto& groups : facts().evidence().groups) {
    std::set<std::string>& names = found[groups.condition.text];
    for (const auto& group : groups.groups) {
      for (const auto& member : group.members) {
        for (const auto& part : member.parts) {
          add(part, names);
        }
      }
    }
  }
  return found;
}

// Regions of the items that a condition's tests, and what spoils them, are read from.
const std::set<std::string>& regions_of(const model::Word& condition) {
  static const NamesOf all = [] {
    NamesOf found = from_parts([](const auto& part, auto& regions) { regions.insert(facts().item(part.item)->region.text); });
    for (const auto& groups : facts().evidence().groups) {
      for (const auto& confounder : groups.confounders) {
        if (confounder.when.item) {
          found[groups.condition.text].insert(facts().item(*confounder.when.item)->region.text);
        }
      }
    }
    return found;
  }();
  return all.at(condition.text);
}

// Items that a condition of one leg reads on the other: the sound leg raised (`side` of a part).
const std::set<std::string>& read_across(const model::Word& condition) {
  static const NamesOf all = from_parts([](const auto& part, auto& items) {
    if (part.side && *part.side == reference::OnSide::other) {
      items.insert(part.item.text);
    }
  });
  return all.at(condition.text);
}

// Lengths that say how much a test can be trusted: the girth of a thigh too heavy to be held (`instead` of the item's row).
const std::set<std::string>& measured_for(const model::Word& condition) {
  static const NamesOf all = from_parts([](const auto& part, auto& items) {
    for (const model::Instead& one : facts().item(part.item)->instead.value_or(std::vector<model::Instead>{})) {
      if (one.measured) {
        items.insert(one.measured->text);
      }
    }
  });
  return all.at(condition.text);
}

bool is_unrelated(const interpret::Hypothesis& one, const model::Finding& finding) {
  const std::string& region = facts().item(finding.item)->region.text;
  if (read_across(one.hypothesis).count(finding.item.text) > 0) {
    return false;
  }
  const bool tells_of_test = measured_for(one.hypothesis).count(finding.item.text) > 0;
  const bool other_region = joint_regions().count(region) > 0 && regions_of(one.hypothesis).count(region) == 0 && !tells_of_test;
  // A grade that is a difference from the other leg is no "no" where that leg has it too.
  const model::Item& item = *facts().item(finding.item);
  const model::Scale* scale = item.scale ? facts().scale(*item.scale) : nullptr;
  const bool compared = scale != nullptr && scale->against_other_side.value_or(false);
  const bool other_side = one.side && finding.side != Side::midline && finding.side != *one.side && !compared;
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

// A second value in the place of one that is there is a contradiction, which nobody but a person settles. What is told of the person as a
// whole and of one leg is heard together: a leg that turns out beside an even gait.
bool shares_its_place(const Bench& made, const model::Finding& finding) {
  return std::any_of(made.exam.findings->begin(), made.exam.findings->end(), [&](const model::Finding& one) {
    const bool same_place = one.side == finding.side || one.side == Side::midline || finding.side == Side::midline;
    return one.finding != finding.finding && one.item == finding.item && same_place;
  });
}

// The only answers that may lower a danger by coming later, and they leave that it was raised (leaves_its_trace). What is special about a
// body only ever takes claims away (core/interpret/body.hpp): a fused knee locks no more. How and when it began is a circumstance
// (clue.hpp): a joint that is hot after no known injury is another question than one after a twist. Pain beyond what was hurt raises a
// compartment while nobody said whether the limb is at risk; once it is not, stretching has to hurt as well (clinical safety, requirement 3).
// Whether a leg turned cold suddenly, within two weeks, is when it began: the first gate of a limb without blood (red flags page, section 5).
// Whether a foot drop is new is the same gate of the nerves of the back (section 11). Who took no steps before has not lost them ("unexplained
// loss of walking": section 12).
const std::set<std::string>& how_it_began() {
  static const std::set<std::string> items{"history.mechanism", "history.fall_or_blow", "history.weeks_since_onset", "history.pain_over_2_weeks",
                                           "history.injury_severe_or_crush", "history.cold_pale_sudden", "history.foot_drop_new",
                                           "history.walks_usually", "history.moves_about", "history.weight_bearing"};
  return items;
}

bool completes_an_input(const model::Finding& finding) {
  const auto* not_done = std::get_if<model::NotDone>(&finding.value);
  const bool by_reason = not_done != nullptr && std::any_of(facts().bodies().begin(), facts().bodies().end(),
                                                            [&](const reference::BodyRow& row) { return row.opened_by_reason == not_done->reason; });
  return by_reason || facts().item(finding.item)->region.text == "body" || how_it_began().count(finding.item.text) > 0;
}

// A second value in the place of one that is there contradicts it, and then neither stands.
bool may_lower(const Bench& made, const model::Finding& finding) { return completes_an_input(finding) || shares_its_place(made, finding); }

// An alert that was listed before stays listed: raised, inside a graver one, or withdrawn with what it rested on. This looks at history:
// the exam as it stood before is handed over, as the ledger's methods do (their own part of it: recorded_test.cpp). Without history, as a
// document has none, what is raised follows from what stands alone, and the order of telling never matters (laws_test.cpp).
void leaves_its_trace(const Bench& made, const model::Finding& finding, const Bench& before, const Said& without, Met& met) {
  const std::vector<model::Exam> shown{before.exam};
  const Said now = said_of(made, shown);
  for (const auto& alert : without.alerts) {
    const auto* listed = find_same(now.alerts, [&](const auto& same) { return same.alert == alert.alert && same.side == alert.side; });
    const auto* flag = find_same(now.flags, [&](const auto& same) {
      return same.flag == alert.alert && (same.side == alert.side || (!same.side && same.answer == FlagAnswer::raised));
    });
    const bool raised = flag != nullptr && flag->answer == FlagAnswer::raised;
    const bool withdrawn = listed != nullptr && listed->state == AlertState::withdrawn_by_correction && !listed->interrupts;
    met.lowered += withdrawn ? 1U : 0U;
    CAPTURE(wire::write(finding));
    CAPTURE(wire::write(alert));
    CHECK((raised || withdrawn));
    CHECK((!withdrawn || listed->because == alert.because));
  }
}

// What says which of two things a sign is, and takes a danger away by being found (own rules, named in core/interpret/alerts). Each leaves the danger
// open, to be asked after, or another that is raised in its place; a full pulse alone may answer it.
//  - Blood of a foot (C2: "pulseless or cold limb", and an ordinary day does not interrupt): its pulse felt, or the other foot as cold or as slow
//    to fill, or that one without the pulse that is not felt here.
//  - An open break: an ulcer there, seen or told to be old, so that the wound may be old.
//  - A knee out of joint: a kneecap that is seen aside, which is then the danger by itself.
bool says_which(const model::Finding& finding, const interpret::Flag& flag, const interpret::Flag* now, const Said& with) {
  const auto* grade = std::get_if<model::Grade>(&finding.value);
  const auto* answer = std::get_if<model::Answer>(&finding.value);
  const auto* choice = std::get_if<model::Choice>(&finding.value);
  const bool here = flag.side == finding.side;
  const bool yes = answer != nullptr && answer->answer == model::AnswerWord::yes;
  const bool pulse = grade != nullptr && (finding.item.text == "vessel.pulse_dorsalis_pedis" || finding.item.text == "vessel.pulse_posterior_tibial");
  const bool open = now != nullptr && now->answer == FlagAnswer::not_asked;
  if (flag.flag.text == "alert.ali") {
    const bool full = pulse && here && (grade->grade.text == "2" || grade->grade.text == "3");
    const bool felt = pulse && here && grade->grade.text == "1";
    const bool there = flag.side && !here && finding.side != Side::midline;
    const bool alike = there && (((finding.item.text == "vessel.foot_cold" || finding.item.text == "vessel.capillary_refill_slow") && yes) || (pulse && grade->grade.text == "0"));
    return full || ((felt || alike) && open);
  }
  if (flag.flag.text == "alert.open_fx") {
    return here && (finding.item.text == "skin.ulcer" || finding.item.text == "history.foot_ulcer_over_2_weeks") && yes && open;
  }
  const bool aside = choice != nullptr && finding.item.text == "knee.look_patella_height" && choice->choice.text == "laterally_displaced";
  return flag.flag.text == "alert.knee_disloc_vasc" && here && aside && open &&
         find_same(with.flags, [&](const auto& one) { return one.flag.text == "alert.dislocation" && one.side == flag.side && one.answer == FlagAnswer::raised; }) != nullptr;
}

// What was raised stays raised. A no is answered by the sign that leads, so another sign, found later, may raise the danger or ask again:
// it is then seen to be open, and never gone from the list.
void check_dangers(const Bench& made, const model::Finding& finding, const Bench& before, const Said& without, const Said& with, Met& met) {
  const bool may = may_lower(made, finding);
  bool lowered = false;
  for (const auto& flag : without.flags) {
    if (flag.answer != FlagAnswer::raised && flag.answer != FlagAnswer::asked_no) {
      continue;
    }
    ++(flag.answer == FlagAnswer::raised ? met.raised : met.answered);
    const auto* now = find_same(with.flags, [&](const auto& same) { return same.flag == flag.flag && same.side == flag.side; });
    if (now == nullptr && !flag.side) {  // nobody had named a side, and what was found since gives it one
      now = find_same(with.flags, [&](const auto& same) { return same.flag == flag.flag && same.side && same.answer == FlagAnswer::raised; });
    }
    if (now == nullptr && flag.side && flag.answer == FlagAnswer::raised) {  // found on the other leg alike: one line of no side
      now = find_same(with.flags, [&](const auto& same) { return same.flag == flag.flag && !same.side && same.answer == FlagAnswer::raised; });
    }
    const bool raised = now != nullptr && now->answer == FlagAnswer::raised;
    lowered = lowered || (flag.answer == FlagAnswer::raised && !raised);
    const bool holds = now != nullptr && (raised || flag.answer == FlagAnswer::asked_no);
    if (!holds && !may && !says_which(finding, flag, now, with)) {
      CAPTURE(wire::write(finding));
      CAPTURE(wire::write(flag));
      CHECK((now == nullptr ? std::string("nothing") : wire::write(*now)) == "as it was");
    }
  }
  if (lowered) {
    leaves_its_trace(made, finding, before, without, met);
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
    // Known in part is known of it too: the days, by the weeks.
    return same_place || (now != nullptr && state_in(before) != state_in(*now) && state_in(*now).starts_with("known"));
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

void one_came(const Bench& made, const model::Finding& finding, const Bench& before, const Said& without, const Said& with, Met& met) {
  check_unrelated(finding, without, with, met);
  check_dangers(made, finding, before, without, with, met);
  check_rules(finding, without, with, met);
}

void one_completed(const Bench& before, const Said& without, Draw& draw, Met& met) {
  static const std::vector<limb_exams::Place> places = [] {
    std::vector<limb_exams::Place> found;
    for (const model::Item& item : facts().items()) {
      for (const Side side : item.sides) {
        // How it began decides more often than one state of a body.
        const std::size_t times = how_it_began().count(item.item.text) > 0 ? 6 : (item.region.text == "body" ? 1 : 0);
        found.insert(found.end(), times, {&item, side});
      }
    }
    return found;
  }();
  const limb_exams::Place& place = places[draw.below(places.size())];
  const auto& all = *before.exam.findings;
  auto value = limb_exams::any_value(*place.item, draw, 20);
  if (!value || std::any_of(all.begin(), all.end(), [&](const model::Finding& one) { return one.item == place.item->item && one.side == place.side; })) {
    return;
  }
  Bench made = before;
  const model::Finding finding = limb_exams::give(made, place, std::move(*value), draw, 30);
  check_dangers(made, finding, before, without, said_of(made), met);
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
