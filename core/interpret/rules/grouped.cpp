#include "core/interpret/rules/grouped.hpp"

#include <algorithm>
#include <utility>

namespace limbledger::interpret {

namespace {

using Sums = std::vector<std::int64_t>;  // rising, each once

// What a group may come to, with or without one of its inputs.
[[nodiscard]] Sums sums_of(std::span<const Classes> may_be, const SheetGroups& groups, std::size_t group, std::size_t without) {
  Sums sums{0};
  for (std::size_t i = 0; i < may_be.size(); ++i) {
    if (groups.of_input[i] != group || i == without) {
      continue;
    }
    Sums next;
    for (std::size_t c = 0; c < groups.points[i].size(); ++c) {
      for (const std::int64_t sum : sums) {
        if ((may_be[i] >> c & 1U) != 0) {
          next.push_back(std::min(sum + groups.points[i][c], groups.most[group]));
        }
      }
    }
    std::sort(next.begin(), next.end());
    next.erase(std::unique(next.begin(), next.end()), next.end());
    sums = std::move(next);
  }
  return sums;
}

// Every sum of every group, each with the number of its answer among those that differ.
struct SumTable {
  std::vector<Sums> sums;
  std::vector<std::size_t> stride;
  std::vector<std::size_t> answer_at;
  std::vector<SheetAnswer> answers;

  [[nodiscard]] std::size_t place(std::size_t group, std::int64_t sum) const {
    const Sums& all = sums[group];
    return static_cast<std::size_t>(std::lower_bound(all.begin(), all.end(), sum) - all.begin()) * stride[group];
  }
  [[nodiscard]] std::size_t group_place(std::size_t n, std::size_t group) const { return n / stride[group] % sums[group].size(); }
};

[[nodiscard]] SumTable table_of(std::span<const Classes> may_be, const SheetGroups& groups, const SumsDecision& decide, SheetCompleted& completed) {
  SumTable table;
  std::size_t total = 1;
  for (std::size_t g = 0; g < groups.most.size(); ++g) {
    table.sums.push_back(sums_of(may_be, groups, g, may_be.size()));
    table.stride.push_back(total);
    total *= table.sums.back().size();
  }
  std::vector<std::int64_t> in(groups.most.size());
  std::int64_t least = 0;
  for (std::size_t n = 0; n < total; ++n) {
    for (std::size_t g = 0; g < in.size(); ++g) {
      in[g] = table.sums[g][table.group_place(n, g)];
    }
    const SheetAnswer answer = decide(in);
    least = n == 0 ? answer.points : std::min(least, answer.points);
    completed.points_most = n == 0 ? answer.points : std::max(completed.points_most, answer.points);
    const auto known = std::find_if(table.answers.begin(), table.answers.end(), [&](const SheetAnswer& one) { return one.same_as(answer); });
    table.answer_at.push_back(static_cast<std::size_t>(known - table.answers.begin()));
    if (known == table.answers.end()) {
      table.answers.push_back(answer);
    }
  }
  completed.answer = table.answers.size() == 1 ? table.answers.front() : SheetAnswer{};
  completed.answer.points = least;
  return table;
}

constexpr std::size_t none_yet = static_cast<std::size_t>(-1);
constexpr std::size_t differs = none_yet - 1;

// What one input gives, by its classes, over all that the others may be. Places are worked out once: this is done for each input.
void give_input(std::span<const Classes> may_be, const SheetGroups& groups, const SumTable& table, std::size_t input, SheetCompleted& completed) {
  const std::size_t group = groups.of_input[input];
  const std::vector<std::int64_t>& points = groups.points[input];
  std::vector<std::size_t> classes;
  for (std::size_t c = 0; c < points.size(); ++c) {
    if ((may_be[input] >> c & 1U) != 0) {
      classes.push_back(c);
    }
  }
  std::vector<std::size_t> places;
  for (const std::int64_t sum : sums_of(may_be, groups, group, input)) {
    for (const std::size_t c : classes) {
      places.push_back(table.place(group, std::min(sum + points[c], groups.most[group])));
    }
  }
  std::vector<std::size_t> gives(classes.size(), none_yet);
  bool settles = false;
  const std::size_t stride = table.stride[group];
  const std::size_t turn = stride * table.sums[group].size();
  for (std::size_t outer = 0; outer < table.answer_at.size(); outer += turn) {
    for (std::size_t n = outer; n < outer + stride; ++n) {
      for (std::size_t at = 0; at < places.size(); ++at) {
        const std::size_t c = at % classes.size();
        const std::size_t answer = table.answer_at[n + places[at]];
        settles = settles || answer != table.answer_at[n + places[at - c]];
        gives[c] = gives[c] == none_yet || gives[c] == answer ? answer : differs;
      }
    }
  }
  completed.settles[input] = settles;
  for (std::size_t c = 0; c < classes.size(); ++c) {
    completed.gives[input][classes[c]] = gives[c] == differs ? SheetAnswer{} : table.answers[gives[c]];
  }
}

}  // namespace

void SheetGroups::add(std::size_t group, std::vector<std::int64_t> of_classes, std::int64_t sum_stops_at) {
  of_input.push_back(group);
  points.push_back(std::move(of_classes));
  if (group == most.size()) {
    most.push_back(sum_stops_at);
  }
}

SheetCompleted complete_groups(std::span<const Classes> may_be, const SheetGroups& groups, const SumsDecision& decide) {
  SheetCompleted completed;
  completed.settles.resize(may_be.size());
  for (const std::vector<std::int64_t>& classes : groups.points) {
    completed.gives.emplace_back(classes.size());
  }
  if (std::any_of(may_be.begin(), may_be.end(), [](Classes one) { return one == 0; })) {
    return completed;
  }
  const SumTable table = table_of(may_be, groups, decide, completed);
  for (std::size_t i = 0; i < may_be.size(); ++i) {
    give_input(may_be, groups, table, i, completed);
  }
  return completed;
}

JudgedRule judge_groups(const View& view, const RuleSheet& sheet, const SheetGroups& groups, const SumsDecision& decide) {
  std::vector<Classes> may_be;
  std::transform(sheet.inputs.begin(), sheet.inputs.end(), std::back_inserter(may_be), [](const SheetInput& input) { return input.may_be; });
  return judge_completed(view, sheet, complete_groups(may_be, groups, decide));
}

void join_sides(JudgedRule& judged) {
  std::vector<RuleInput> joined;
  for (const RuleInput& input : judged.result.inputs) {
    const auto there = std::find_if(joined.begin(), joined.end(), [&](const RuleInput& one) { return one.input == input.input; });
    if (there == joined.end()) {
      joined.push_back(input);
    } else if (input.state.text != "known" && (there->state.text == "known" || input.state.text < there->state.text)) {
      there->state = input.state;
    }
  }
  Working& working = judged.working;
  judged.result.inputs = std::move(joined);
  working.inputs.clear();
  for (const RuleInput& input : judged.result.inputs) {
    working.inputs.push_back({std::nullopt, input.input, input.state, std::nullopt});
  }
  std::vector<model::MessageId>& changes = working.changes_if;
  std::sort(changes.begin(), changes.end(), [](const model::MessageId& a, const model::MessageId& b) { return a.text < b.text; });
  changes.erase(std::unique(changes.begin(), changes.end()), changes.end());
}

}  // namespace limbledger::interpret
