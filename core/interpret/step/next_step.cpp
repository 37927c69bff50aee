#include "core/interpret/step/next_step.hpp"

#include "core/interpret/alerts/circumstances.hpp"
#include "core/interpret/body.hpp"
#include "core/interpret/rules/rule.hpp"
#include "core/interpret/step/spared.hpp"
#include "core/interpret/step/tried.hpp"

#include <algorithm>
#include <optional>
#include <set>
#include <string>

namespace limbledger::interpret {

using model::Side;

namespace {

constexpr std::size_t candidates_tried = 16;  // in their order; what comes later has waited for these

// What of one answer can change what is done: the dangers that ask for it, of those that take a limb within hours the ones that are asked after here, and the rules that it would settle where those decide on
// a film or a referral. Nothing else hears it.
struct Hearers {
  std::vector<const JudgedFlag*> flags;
  std::vector<const JudgedRule*> rules;
};

[[nodiscard]] Hearers hearers_of(const std::vector<JudgedFlag>& flags, const std::vector<const JudgedFlag*>& asked, const std::vector<JudgedRule>& rules, const model::Item& item,
                                 Side side) {
  Hearers hearers;
  for (const JudgedFlag& flag : flags) {
    const bool heard = flag.row->urgency != AlertClass::now || std::find(asked.begin(), asked.end(), &flag) != asked.end();
    const bool asks = heard && waits_for(flag.raised).ask.any([&](const ToAsk& ask) { return ask.item == &item && ask.side == side; });
    if (asks && !flag.row->protected_.value_or(false)) {
      hearers.flags.push_back(&flag);
    }
  }
  for (const JudgedRule& rule : rules) {
    const auto& settle = rule.result.settle;
    const bool settles_it = std::any_of(settle.begin(), settle.end(), [&](const Settle& one) { return one.item == item.item && one.side.value_or(Side::midline) == side; });
    if (settles_it && decides(rule.result.rule)) {
      hearers.rules.push_back(&rule);
    }
  }
  return hearers;
}

[[nodiscard]] bool raised_otherwise(const Raised& now, const Raised& then) {
  return now.clue.is_yes() != then.clue.is_yes() || (now.clue.is_yes() && now.urgency != then.urgency);
}

[[nodiscard]] bool answers_otherwise(const RuleResult& now, const std::vector<JudgedRule>& then) {
  const auto same = std::find_if(then.begin(), then.end(), [&](const JudgedRule& one) { return one.result.side == now.side; });
  return same == then.end() || same->result.outcome != now.outcome || same->result.band != now.band;
}

// Of these dangers, those that the exam with one more answer judges otherwise. Two answers that stand beside each other are judged as they were at first.
void add_raised_otherwise(const View& then, const std::vector<const JudgedFlag*>& flags, std::set<std::string>& names) {
  if (!then.may_hold_two()) {
    const Answers answers(then);
    for (const JudgedFlag* flag : flags) {
      if (raised_otherwise(flag->raised, flag->flag->judge(answers, flag->side.value_or(Side::midline)))) {
        names.insert(flag->row->alert.text);
      }
    }
    return;
  }
  const auto is_heard = [&](const reference::AlertRow& row) { return std::any_of(flags.begin(), flags.end(), [&](const JudgedFlag* one) { return one->row->alert == row.alert; }); };
  const std::vector<JudgedFlag> judged = judge_flags(then, is_heard);
  for (const JudgedFlag* flag : flags) {
    const auto now = std::find_if(judged.begin(), judged.end(), [&](const JudgedFlag& one) { return one.row == flag->row && one.side == flag->side; });
    if (now != judged.end() && raised_otherwise(flag->raised, now->raised)) {
      names.insert(flag->row->alert.text);
    }
  }
}

// What some answer would change, by name: alert.scfe, rule.ottawa_knee.
[[nodiscard]] std::vector<model::Word> changed_by(const View& view, const Hearers& hearers, const model::Item& item, Side side) {
  std::set<std::string> names;
  const std::vector<model::Finding> answers = answers_to_try(item, side);
  std::optional<View> then_kept;  // one for all of them: it is a copy of the exam's order
  for (const model::Finding& finding : answers) {
    if (then_kept) {
      then_kept->answer_instead(finding);
    } else {
      then_kept.emplace(view, finding);
    }
    const View& then = *then_kept;
    add_raised_otherwise(then, hearers.flags, names);
    for (const JudgedRule* rule : hearers.rules) {
      if (answers_otherwise(rule->result, run_rule(rule->result.rule, then))) {
        names.insert(rule->result.rule.text);
      }
    }
  }
  std::vector<model::Word> words;
  for (const std::string& name : names) {
    words.push_back({name});
  }
  return words;
}

struct Candidate {
  const model::Item* item = nullptr;
  Side side{};
};

void add(const View& view, const model::ItemId& id, Side side, std::vector<Candidate>& candidates) {
  const model::Item* item = view.edition().item(id);
  const bool known = item == nullptr || std::any_of(candidates.begin(), candidates.end(),
                                                    [&](const Candidate& one) { return one.item == item && one.side == side; });
  if (!known) {
    candidates.push_back({item, side});
  }
}

[[nodiscard]] std::vector<Candidate> candidates_of(const View& view, const std::vector<const JudgedFlag*>& asked, const std::vector<JudgedRule>& rules) {
  std::vector<Candidate> candidates;
  for (const JudgedFlag* flag : asked) {
    std::vector<Candidate> of_flag;
    for (const ToAsk& ask : waits_for(flag->raised).ask.written()) {
      add(view, ask.item->item, ask.side, of_flag);
    }
    std::stable_sort(of_flag.begin(), of_flag.end(), [](const Candidate& a, const Candidate& b) {
      return std::pair(a.item->discomfort, a.item->seconds.steps) < std::pair(b.item->discomfort, b.item->seconds.steps);
    });
    for (const Candidate& one : of_flag) {
      add(view, one.item->item, one.side, candidates);
    }
  }
  for (const JudgedRule& rule : rules) {
    for (const Settle& settle : rule.result.settle) {
      if (settle.item) {
        add(view, *settle.item, settle.side.value_or(Side::midline), candidates);
      }
    }
  }
  return candidates;
}

[[nodiscard]] bool was_tried(const View& view, const Candidate& candidate) {
  const auto held = view.at(candidate.item->item.text, candidate.side);
  return std::any_of(held.begin(), held.end(), [](const model::Finding* finding) { return settles(*finding); });
}

[[nodiscard]] bool limb_in_alarm(const std::vector<JudgedFlag>& flags, Side side) {
  return std::any_of(flags.begin(), flags.end(), [&](const JudgedFlag& flag) {
    return flag.raised.clue.is_yes() && flag.raised.urgency != AlertClass::two_weeks && (!flag.side || side == Side::midline || *flag.side == side);
  });
}

// Whether the smallest movement of a hip hurts is not tried where moving it was stopped by pain or hurts badly.
[[nodiscard]] bool hurts_already(const View& view, const model::Item& item, Side side) {
  return item.item.text == "hip.pain_passive_severe" &&
         hurts_badly_on(Answers(view), side, {"hip.log_roll", "hip.internal_rotation_passive_seated", "hip.internal_rotation_passive_supine", "hip.flexion_passive",
                                              "hip.external_rotation_passive_seated", "hip.external_rotation_passive_supine"})
             .is_yes();
}

}  // namespace

std::optional<Step> next_step(const View& view, const std::vector<JudgedFlag>& flags, const std::vector<JudgedRule>& rules,
                              const std::vector<OpenConcern>& concerns, std::optional<std::int64_t> seconds_left) {
  const bool planned = view.exam().plan && !view.exam().plan->empty();
  const bool over = view.exam().state && *view.exam().state != model::ExamState::open;
  if (planned || over) {
    return std::nullopt;
  }
  const model::ItemId steps_now{"gait.steps_now"};  // where none are asked for, no gait is watched for us either
  std::size_t tried = 0;
  const std::vector<const JudgedFlag*> asked = asked_flags(view, flags);
  for (const Candidate& candidate : candidates_of(view, asked, rules)) {
    const model::Item& item = *candidate.item;
    const bool barred = was_tried(view, candidate) || view.bodies().not_applicable(item, candidate.side) != nullptr || withheld(item, candidate.side, concerns, flags) ||
                        kept_off_the_feet(view, flags, item.region.text == "gait" ? steps_now : item.item) || (provokes(item) && limb_in_alarm(flags, candidate.side)) || hurts_already(view, item, candidate.side) || moves_limb_in_alarm(flags, item, candidate.side) || (seconds_left && item.seconds.steps > *seconds_left);
    if (barred) {
      continue;
    }
    if (++tried > candidates_tried) {
      break;
    }
    std::vector<model::Word> changes = changed_by(view, hearers_of(flags, asked, rules, item, candidate.side), item, candidate.side);
    if (changes.empty()) {
      continue;
    }
    Step step;
    step.step = item.item;
    step.side = candidate.side;
    step.changes = std::move(changes);
    step.seconds = item.seconds;
    step.discomfort = item.discomfort;
    step.message = {"msg.step.would_help_most"};
    step.instead = item.instead.value_or(std::vector<model::Instead>{});
    return step;
  }
  return std::nullopt;
}

model::MessageId why_no_step(const View& view, const std::vector<JudgedFlag>& flags, const std::vector<OpenConcern>& concerns) {
  const Spared spared(view, flags);
  bool asked = false;
  for (const JudgedFlag* flag : asked_flags(view, flags, spared)) {
    if (flag->row->protected_.value_or(false)) {
      continue;
    }
    asked = true;
    for (const Ask& ask : asks_now(view, spared, *flag, waits_for(flag->raised))) {
      const model::Item* item = view.edition().item(ask.item);
      if (item != nullptr && !withheld(*item, ask.side, concerns, flags)) {
        return {"msg.step.none_alone"};
      }
    }
  }
  return {asked ? "msg.step.none_advised_now" : "msg.step.none_would_change"};
}

}  // namespace limbledger::interpret
