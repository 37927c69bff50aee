#include "core/interpret/held.hpp"

#include "core/interpret/alerts/circumstances.hpp"
#include "core/interpret/rules/rule.hpp"

#include <algorithm>
#include <string_view>
#include <utility>

namespace limbledger::interpret {

using model::Side;

namespace {

// Positive, contradicted, or open where an answer may still make it positive.
[[nodiscard]] bool unsettled(const RuleResult& rule) {
  const bool contradicted = std::any_of(rule.flags.begin(), rule.flags.end(), [](const model::Word& flag) { return flag.text == "contradicted"; });
  const bool may_turn = std::any_of(rule.settle.begin(), rule.settle.end(), [](const Settle& settle) {
    return std::any_of(settle.answers.begin(), settle.answers.end(),
                       [](const SettleAnswer& answer) { return answer.gives == Outcome::positive || answer.gives == Outcome::undetermined; });
  });
  return rule.outcome == Outcome::positive || contradicted || (rule.outcome == Outcome::undetermined && may_turn);
}

void hold(std::vector<OpenConcern>& open, const model::Concern& concern, Side side, const std::string& by) {
  const auto found = std::find_if(open.begin(), open.end(), [&](const OpenConcern& one) { return one.concern == &concern && one.side == side; });
  OpenConcern& held = found != open.end() ? *found : open.emplace_back(OpenConcern{&concern, side});
  if (std::find(held.held_by.begin(), held.held_by.end(), model::Word{by}) == held.held_by.end()) {
    held.held_by.push_back({by});
  }
}

// Nobody stands or walks on one leg alone.
[[nodiscard]] bool of_both_legs(const model::Item& item) {
  const auto& positions = item.positions;
  const bool upright = positions && std::all_of(positions->begin(), positions->end(), [](const model::Word& position) {
                         return position.text == "standing" || position.text == "walking";
                       });
  return upright || item.sides == std::vector{Side::midline};
}

[[nodiscard]] bool touches(const model::Item& item, const std::optional<Side>& held, Side side) {
  return !held || *held == side || *held == Side::midline || side == Side::midline || of_both_legs(item);
}

}  // namespace

// A rule speaks of a break only where there was an injury: its age criterion alone opens nothing in a knee that wore out.
bool rules_may_hold(const View& view) {
  const Clue hurt = injured(Answers(view));
  const std::string& why = view.exam().complaint.text;
  return hurt.is_yes() || ((why == "acute_knee" || why == "ankle_injury") && !hurt.is_no());
}

std::vector<OpenConcern> open_concerns(const View& view, const std::vector<JudgedFlag>& flags, const std::vector<JudgedRule>& rules) {
  // The rules that leave a break open, each with what its film looks for.
  std::vector<std::pair<std::string_view, const JudgedRule*>> films;
  if (!rules.empty() && rules_may_hold(view)) {
    for (const JudgedRule& rule : rules) {
      const std::string_view looks_for = unsettled(rule.result) ? film_for(rule.result.rule) : std::string_view();
      if (!looks_for.empty()) {
        films.emplace_back(looks_for, &rule);
      }
    }
  }
  std::vector<OpenConcern> open = recorded_concerns(view);
  for (OpenConcern& one : open) {
    one.held_by.push_back({"recorded"});
  }
  for (const model::Concern& concern : view.edition().concerns()) {
    for (const Side side : {Side::left, Side::right}) {
      if (lifted(view, concern, side)) {
        continue;
      }
      for (const JudgedFlag& flag : flags) {
        if (!flag.raised.clue.is_yes() || (flag.side && *flag.side != side)) {
          continue;
        }
        const auto& opens = flag.row->opens;
        const auto& only = flag.raised.opens;
        const bool named = std::find(opens.begin(), opens.end(), concern.concern) != opens.end() &&
                           (only.empty() || std::find(only.begin(), only.end(), concern.concern.text) != only.end());
        if (named) {
          hold(open, concern, side, flag.row->alert.text);
        }
      }
      for (const auto& [looks_for, rule] : films) {
        if (looks_for == concern.concern.text && rule->result.side == side) {
          hold(open, concern, side, rule->result.rule.text);
        }
      }
    }
  }
  return open;
}

std::optional<Withholding> withheld(const model::Item& item, Side side, const std::vector<OpenConcern>& concerns, const std::vector<JudgedFlag>& flags) {
  for (const OpenConcern& open : concerns) {
    const bool named = item.withheld_by && std::find(item.withheld_by->begin(), item.withheld_by->end(), open.concern->concern) != item.withheld_by->end();
    if (named && touches(item, open.side, side)) {
      return Withholding{{open.concern->concern.text}, open.concern->until};
    }
  }
  for (const JudgedFlag& flag : flags) {
    const auto& stop = flag.row->stop;
    const bool stopped = flag.raised.clue.is_yes() && std::find(stop.begin(), stop.end(), item.item) != stop.end();
    if (stopped && touches(item, flag.side, side)) {
      return Withholding{flag.row->alert, {"msg.until.alert_answered"}};
    }
  }
  return std::nullopt;
}

}  // namespace limbledger::interpret
