#include "core/interpret/step/next_step.hpp"

#include "core/interpret/body.hpp"
#include "core/interpret/judged.hpp"
#include "core/interpret/step/tried.hpp"

#include <algorithm>
#include <iterator>
#include <set>
#include <string>

namespace limbledger::interpret {

using model::Side;

namespace {

constexpr std::size_t candidates_tried = 16;  // in their order; what comes later has waited for these

// What is decided: who is raised at which urgency, and what each rule says. "alert.scfe:left" -> "same_day".
using Decided = std::set<std::pair<std::string, std::string>>;

[[nodiscard]] std::string about(const std::string& name, const std::optional<Side>& side) {
  return name + (side ? ":" + std::string(side_word(*side)) : std::string());
}

[[nodiscard]] Decided decided(const std::vector<JudgedFlag>& flags, const std::vector<JudgedRule>& rules) {
  Decided out;
  for (const JudgedFlag& flag : flags) {
    if (flag.raised.clue.is_yes() && !flag.row->protected_.value_or(false)) {
      out.emplace(about(flag.row->alert.text, flag.side), std::to_string(static_cast<int>(flag.raised.urgency)));
    }
  }
  for (const JudgedRule& rule : rules) {
    out.emplace(about(rule.result.rule.text, rule.result.side), std::to_string(static_cast<int>(rule.result.outcome)) + (rule.result.band ? rule.result.band->text : std::string()));
  }
  return out;
}

[[nodiscard]] Decided decided_with(const View& view, model::Finding finding) {
  model::Exam exam = view.exam();
  if (!exam.findings) {
    exam.findings.emplace();
  }
  auto& all = *exam.findings;
  all.erase(std::remove_if(all.begin(), all.end(), [&](const model::Finding& held) { return held.item == finding.item && held.side == finding.side; }),
            all.end());
  all.push_back(std::move(finding));
  const View then(exam, view.person(), view.edition(), view.examined_on());
  const std::vector<JudgedFlag> flags = judge_flags(then);
  std::vector<JudgedRule> rules = run_rules(then);
  set_aside(flags, rules);
  return decided(flags, rules);
}

// What some answer would change, by name: alert.scfe, rule.ottawa_knee.
[[nodiscard]] std::vector<model::Word> changed_by(const View& view, const Decided& now, const model::Item& item, Side side) {
  std::set<std::string> names;
  for (model::Finding& finding : answers_to_try(item, side)) {
    const Decided then = decided_with(view, std::move(finding));
    std::set<std::pair<std::string, std::string>> differ;
    std::set_symmetric_difference(now.begin(), now.end(), then.begin(), then.end(), std::inserter(differ, differ.begin()));
    for (const auto& [name, value] : differ) {
      names.insert(name.substr(0, name.find(':')));
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

[[nodiscard]] std::vector<Candidate> candidates_of(const View& view, const std::vector<JudgedFlag>& flags, const std::vector<JudgedRule>& rules) {
  std::vector<Candidate> candidates;
  for (const JudgedFlag* flag : asked_flags(view, flags)) {
    std::vector<Candidate> of_flag;
    for (const ToAsk& ask : flag->raised.clue.ask.written()) {
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

[[nodiscard]] bool provokes(const model::Item& item) {
  return item.discomfort == model::Discomfort::some || item.discomfort == model::Discomfort::high || item.region.text == "gait";
}

[[nodiscard]] bool limb_in_alarm(const std::vector<JudgedFlag>& flags, Side side) {
  return std::any_of(flags.begin(), flags.end(), [&](const JudgedFlag& flag) {
    return flag.raised.clue.is_yes() && flag.raised.urgency != AlertClass::two_weeks && (!flag.side || side == Side::midline || *flag.side == side);
  });
}

}  // namespace

std::optional<Step> next_step(const View& view, const std::vector<JudgedFlag>& flags, const std::vector<JudgedRule>& rules,
                              const std::vector<OpenConcern>& concerns, std::optional<std::int64_t> seconds_left) {
  const bool planned = view.exam().plan && !view.exam().plan->empty();
  const bool over = view.exam().state && *view.exam().state != model::ExamState::open;
  if (planned || over) {
    return std::nullopt;
  }
  const Decided now = decided(flags, rules);
  std::size_t tried = 0;
  for (const Candidate& candidate : candidates_of(view, flags, rules)) {
    const model::Item& item = *candidate.item;
    const bool barred = was_tried(view, candidate) || view.bodies().not_applicable(item, candidate.side) != nullptr || withheld(item, candidate.side, concerns, flags) ||
                        (provokes(item) && limb_in_alarm(flags, candidate.side)) || (seconds_left && item.seconds.steps > *seconds_left);
    if (barred) {
      continue;
    }
    if (++tried > candidates_tried) {
      break;
    }
    std::vector<model::Word> changes = changed_by(view, now, item, candidate.side);
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

}  // namespace limbledger::interpret
