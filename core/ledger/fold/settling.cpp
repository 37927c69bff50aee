#include "core/ledger/fold/settling.hpp"

#include <algorithm>
#include <iterator>
#include <utility>

namespace limbledger::ledger {

Settling::Settling(const Graph& graph, Values values) : graph_(graph), values_(std::move(values)) {
  for (const auto& [entry, corrected] : values_.corrects) {
    judge(entry);
  }
}

const std::optional<Decision>& Settling::judge(std::size_t entry) {
  if (const auto known = judged_.find(entry); known != judged_.end()) {
    return known->second;
  }
  judged_[entry] = std::nullopt;
  // An edit names all that it was shown to stand; what one of those had corrected itself stood no more.
  const std::vector<std::size_t>& named = values_.corrects.at(entry);
  std::vector<std::size_t> stood;
  std::copy_if(named.begin(), named.end(), std::back_inserter(stood), [&](std::size_t one) {
    return std::none_of(named.begin(), named.end(), [&](std::size_t other) {
      const std::vector<std::size_t>& by_other = values_.corrects.at(other);
      return std::find(by_other.begin(), by_other.end(), one) != by_other.end();
    });
  });
  std::set<std::size_t> among;
  bool against = false;
  bool again = false;
  for (const std::size_t one : stood) {
    const std::optional<Decision> before = judge(one);
    again = again || before.has_value();
    if (before) {
      among.insert(before->among.begin(), before->among.end());
    }
    if (!before || !before->taken) {
      among.insert(one);
    }
    against = against || std::any_of(stood.begin(), stood.end(), [&](std::size_t other) {
                return !graph_.saw(one, other) && !graph_.saw(other, one) && one != other && !values_.same(one, other);
              });
  }
  std::optional<std::size_t> taken;
  if (!values_.own(entry)) {
    auto equal = std::find_if(among.begin(), among.end(), [&](std::size_t one) { return values_.same(entry, one) && values_.names(entry, one); });
    if (equal == among.end()) {
      equal = std::find_if(among.begin(), among.end(), [&](std::size_t one) { return values_.same(entry, one); });
    }
    if (equal != among.end()) {
      taken = *equal;
    } else {
      taken = values_.earlier(entry);
    }
  }
  if (against || values_.decides(entry) || (again && taken)) {
    if (taken) {
      among.insert(*taken);
    }
    judged_[entry] = Decision{entry, taken, {among.begin(), among.end()}};
  }
  return judged_[entry];
}

std::vector<Decision> Settling::of(std::size_t entry) const {
  std::set<std::size_t, std::greater<>> found;
  std::vector<std::size_t> waiting{entry};
  while (!waiting.empty()) {
    const std::size_t one = waiting.back();
    waiting.pop_back();
    const auto judged = judged_.find(one);
    if (judged == judged_.end() || !judged->second || !found.insert(one).second) {
      continue;
    }
    const std::vector<std::size_t>& corrected = values_.corrects.at(one);
    waiting.insert(waiting.end(), corrected.begin(), corrected.end());
  }
  // What holds comes first, whatever the clocks said.
  std::vector<Decision> out;
  if (found.erase(entry) != 0) {
    out.push_back(*judged_.at(entry));
  }
  for (const std::size_t one : found) {
    out.push_back(*judged_.at(one));
  }
  return out;
}

std::vector<model::Settled> told(const Graph& graph, const std::vector<Decision>& decisions, std::string_view about, const ValueOf& value) {
  std::vector<model::Settled> out;
  for (const Decision& decision : decisions) {
    const model::Operation& operation = graph.at(decision.entry).operation();
    model::Settled settled;
    settled.about.text = std::string(about);
    settled.entry = graph.at(decision.entry).entry();
    settled.by = operation.by;
    settled.at = {operation.at.wall_ms.steps};
    settled.value = value(decision.entry);
    if (decision.taken) {
      settled.taken = graph.at(*decision.taken).entry();
    }
    for (const std::size_t one : decision.among) {
      const model::Operation& written = graph.at(one).operation();
      settled.among.push_back({graph.at(one).entry(), written.by, {written.at.wall_ms.steps}, value(one), std::nullopt});
    }
    if (!out.empty()) {
      settled.undone = true;
    }
    out.push_back(std::move(settled));
  }
  return out;
}

}  // namespace limbledger::ledger
