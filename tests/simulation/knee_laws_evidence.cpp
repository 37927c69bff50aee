#include "core/interpret/evidence/judge.hpp"
#include "core/wire/write.hpp"
#include "tests/simulation/knee_laws.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <map>
#include <set>
#include <string>

namespace limbledger::knee_laws {

namespace {

using interpret::Band;
using model::Side;

const reference::Edition& facts() { return *reference::built_in_edition(); }

// What an assessment says of hypotheses, without the rest of it.
std::vector<interpret::Hypothesis> hypotheses_of(const Bench& made) {
  const interpret::View view(made.exam, made.person, *made.edition, made.ask().as_of);
  std::vector<interpret::Hypothesis> said;
  for (auto& judged : interpret::judge_hypotheses(view, {})) {
    said.push_back(std::move(judged.result));
  }
  return said;
}

const reference::AccuracyRow* accuracy(const model::RowId& id) {
  for (const auto& row : facts().evidence().accuracy) {
    if (row.row == id) {
      return &row;
    }
  }
  return nullptr;
}

// Clinical safety, requirement 6, typed here a second time from the row's own columns.
bool may_compute(const reference::AccuracyRow& row, const Bench& made) {
  const bool figures = (row.sens && row.spec) || (row.lr_pos && row.lr_neg) || row.lr_pos || row.lr_neg || row.counts;
  const int year = made.person->birth->date->year;
  const int age_most = 2026 - year;
  return row.status == model::Status::read && figures && row.design != reference::Design::case_control && !row.range.value_or(false) &&
         row.confidence != reference::Confidence::d && row.confidence != reference::Confidence::low && row.age_low.steps <= age_most &&
         age_most >= 16;
}

bool has_interval(const reference::AccuracyRow& row) {
  return (row.sens_low && row.sens_high && row.spec_low && row.spec_high) || (row.lr_pos_low && row.lr_pos_high) ||
         (row.lr_neg_low && row.lr_neg_high) || row.counts.has_value();
}

// From "no" to "yes" in the item's own words; false where the finding says no such thing, or says it weakly.
bool turn_positive(model::Finding& finding) {
  if (finding.quality || (finding.origin && *finding.origin != model::Origin::observed && *finding.origin != model::Origin::from_paper)) {
    return false;
  }
  if (auto* test = std::get_if<model::Test>(&finding.value); test != nullptr && test->result == model::TestResult::negative) {
    test->result = model::TestResult::positive;
    return true;
  }
  if (auto* answer = std::get_if<model::Answer>(&finding.value); answer != nullptr && answer->answer == model::AnswerWord::no) {
    answer->answer = model::AnswerWord::yes;
    return true;
  }
  auto* grade = std::get_if<model::Grade>(&finding.value);
  const model::Item* item = facts().item(finding.item);
  if (grade != nullptr && item->counts && grade->grade.text == "0") {
    grade->grade = facts().scale(grade->scale)->grades.back().grade;
    finding.end_feel.reset();
    return true;
  }
  return false;
}

// Conditions for which an item speaks by its value, without those in which it spoils other tests.
const std::set<std::string>& conditions_of(const model::ItemId& item) {
  static const std::map<std::string, std::set<std::string>> all = [] {
    std::map<std::string, std::set<std::string>> found;
    for (const auto& condition : facts().evidence().groups) {
      for (const auto& group : condition.groups) {
        for (const auto& member : group.members) {
          for (const auto& part : member.parts) {
            if (std::find(part.yes.begin(), part.yes.end(), model::Word{"positive"}) != part.yes.end()) {
              found[part.item.text].insert(condition.condition.text);
            }
          }
        }
      }
      for (const auto& confounder : condition.confounders) {
        if (confounder.when.item) {
          found[confounder.when.item->text].erase(condition.condition.text);
        }
      }
    }
    return found;
  }();
  static const std::set<std::string> none;
  const auto at = all.find(item.text);
  return at == all.end() ? none : at->second;
}

const interpret::Hypothesis* find(const std::vector<interpret::Hypothesis>& said, const std::string& condition, Side side) {
  for (const auto& one : said) {
    if (one.hypothesis.text == condition && one.side == side) {
      return &one;
    }
  }
  return nullptr;
}

std::vector<std::pair<std::string, Side>> with_sides(const std::set<std::string>& conditions, Side side) {
  std::vector<std::pair<std::string, Side>> all;
  for (const std::string& condition : conditions) {
    for (const Side one : {Side::left, Side::right}) {
      if (side == Side::midline || side == one) {
        all.emplace_back(condition, one);
      }
    }
  }
  return all;
}

int rank(interpret::Support support) { return support == interpret::Support::against ? 0 : (support == interpret::Support::neither ? 1 : 2); }

// Why a hypothesis left this finding out; empty where it did not.
std::string left_out_because(const interpret::Hypothesis& said, const model::FindingId& id) {
  const auto at = std::find_if(said.left_out.begin(), said.left_out.end(), [&](const auto& left) { return left.finding == id; });
  return at == said.left_out.end() ? std::string() : at->because.text;
}

}  // namespace

std::uint64_t bands_from_good_rows(const Bench& made, const std::vector<interpret::Hypothesis>& hypotheses) {
  std::uint64_t bands = 0;
  for (const auto& one : hypotheses) {
    if (!one.bands) {
      if (one.range) {
        CHECK_FALSE(one.range.has_value());
      }
      continue;
    }
    ++bands;
    for (const auto& used : one.used) {
      const auto* row = accuracy(used.row);
      const bool strongly = std::find(one.bands->begin(), one.bands->end(), Band::strongly_favour) != one.bands->end();
      if (row == nullptr || !may_compute(*row, made) || (strongly && !has_interval(*row))) {
        CAPTURE(used.row.text);
        REQUIRE_MESSAGE(false, "a band from a row that may not compute");
      }
    }
  }
  return bands;
}

std::uint64_t positive_never_lowers(Bench& made, const std::vector<interpret::Hypothesis>& before) {
  std::uint64_t turned = 0;
  for (std::size_t i = 0; i < made.exam.findings->size(); ++i) {
    const model::Finding kept = (*made.exam.findings)[i];
    const std::set<std::string>& conditions = conditions_of(kept.item);
    // A hypothesis is of the side complained of; of both where none is. One of two values that disagree is no result by itself.
    const auto same_place = [&](const model::Finding& one) { return one.item == kept.item && one.side == kept.side; };
    const bool alone = std::count_if(made.exam.findings->begin(), made.exam.findings->end(), same_place) == 1;
    if (conditions.empty() || !alone || (kept.side != Side::midline && made.exam.side && kept.side != *made.exam.side) ||
        !turn_positive((*made.exam.findings)[i])) {
      continue;
    }
    const auto after = hypotheses_of(made);
    for (const auto& [condition, side] : with_sides(conditions, kept.side)) {
      const auto* one = find(before, condition, side);
      const auto* two = find(after, condition, side);
      if (one == nullptr || two == nullptr) {
        continue;
      }
      // Excepted by requirement 5: a tibia that has sagged back is felt to come forward.
      if (left_out_because(*two, *kept.finding) == "posterior_sag") {
        continue;
      }
      ++turned;
      // A negative that something hid told nothing. Its positive is a test added, which may take the place of a less trusted one of its
      // group: the upper end is kept, the lower may move.
      const std::string why = left_out_because(*one, *kept.finding);
      const bool hidden = !why.empty() && why != "same_group" && why != "direction_only" && why != "in_composite";
      const bool range_falls =
          one->range && two->range && ((!hidden && two->range->low.steps < one->range->low.steps) || two->range->high.steps < one->range->high.steps);
      if (range_falls || rank(two->support) < rank(one->support)) {
        CAPTURE(kept.item.text);
        CAPTURE(wire::write(*one));
        REQUIRE(wire::write(*two) == "no lower than before");
      }
    }
    (*made.exam.findings)[i] = kept;
  }
  return turned;
}

}  // namespace limbledger::knee_laws
