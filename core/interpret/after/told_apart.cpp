#include "core/interpret/after/told_apart.hpp"

#include "core/interpret/after/handling.hpp"

#include <algorithm>
#include <cstddef>
#include <utility>
#include <variant>

namespace limbledger::interpret {

namespace {

using ToldApart = std::vector<const model::Finding*>;  // of one item and side, each another value

// A danger that asks for few of them is judged by every choice; one that asks for many goes the most alarming way first, and to its end.
constexpr std::size_t judgings_most = 64;
constexpr std::size_t judgings_each = 4;

[[nodiscard]] std::vector<ToldApart> told_apart(const View& view) {
  std::vector<ToldApart> apart;
  if (!view.may_hold_two()) {
    return apart;
  }
  const auto& all = view.findings();  // those of one item and side lie together
  for (std::size_t first = 0, after = 1; first < all.size(); first = after, ++after) {
    while (after < all.size() && all[after]->side == all[first]->side && all[after]->item == all[first]->item) {
      ++after;
    }
    if (after - first == 1) {
      continue;
    }
    ToldApart values;
    for (std::size_t next = first; next < after; ++next) {
      const auto same = [&](const model::Finding* one) { return one->value == all[next]->value; };
      if (settles(*all[next]) && !std::holds_alternative<model::NotDone>(all[next]->value) && std::none_of(values.begin(), values.end(), same)) {
        values.push_back(all[next]);
      }
    }
    if (values.size() > 1) {
      apart.push_back(std::move(values));
    }
  }
  return apart;
}

// What a clue of another view of the same exam points at, kept by this one.
[[nodiscard]] Clue kept_by(const View& view, const Clue& other) {
  Clue clue;
  clue.value = other.value;
  clue.hinted = other.hinted;
  clue.because = FindingTrail::of(view.trails().findings, other.because.written());
  clue.against = FindingTrail::of(view.trails().findings, other.against.written());
  clue.open = FindingTrail::of(view.trails().findings, other.open.written());
  for (const ToAsk& ask : other.ask.written()) {
    clue.ask.add({view.trails().asks, ask});
  }
  return clue;
}

// One danger, and the choices among what it asks for.
class Chosen {
 public:
  Chosen(const View& kept, const std::vector<ToldApart>& apart, JudgeAsTold as_told, const reference::AlertRow& row, std::vector<JudgedFlag>& judged)
      : kept_(kept), apart_(apart), judge_(as_told), row_(row), judged_(judged), left_(judgings_most + judgings_each * apart.size()) {}

  void judge_all() {
    const Judging first = judge(kept_);
    if (first.next != nullptr) {
      choose(kept_, *first.next);
    }
  }

 private:
  struct Judging {
    int alarm = 0;
    const ToldApart* next = nullptr;  // what it asked for first, and is still told apart
  };

  [[nodiscard]] Judging judge(const View& view) {
    --left_;
    const View listening(view, View::Listens{});
    std::vector<JudgedFlag> flags = judge_(listening, [&](const reference::AlertRow& row) { return &row == &row_; });
    Judging out;
    for (JudgedFlag& flag : flags) {
      const Clue& clue = flag.raised.clue;
      constexpr int raised_now = 4;
      constexpr int raised = 3;
      out.alarm += clue.is_yes() ? (flag.raised.urgency == AlertClass::now ? raised_now : raised) : (clue.is_no() ? 0 : (clue.warm() ? 2 : 1));
      if (clue.is_yes()) {
        add(std::move(flag));
      }
    }
    out.next = next_of(listening);
    return out;
  }

  [[nodiscard]] const ToldApart* next_of(const View& view) const {
    const auto open_in = [&](const ToldApart& one) {
      const Findings there = view.at(one.front()->item.text, one.front()->side);
      return there.size() > 1;
    };
    // What a body is like decides of every item, whether it was asked for or not.
    const std::vector<const model::Item*> heard = view.heard();
    for (const ToldApart& one : apart_) {
      if (one.front()->item.text.starts_with("body.") && open_in(one)) {
        return &one;
      }
    }
    for (const model::Item* item : heard) {
      for (const ToldApart& one : apart_) {
        if (one.front()->item == item->item && open_in(one)) {
          return &one;
        }
      }
    }
    return nullptr;
  }

  void choose(const View& view, const ToldApart& apart) {
    std::vector<std::pair<const model::Finding*, Judging>> ways;
    for (const model::Finding* one : apart) {
      if (left_ == 0) {
        return;
      }
      ways.emplace_back(one, judge(View(view, *one)));
    }
    std::stable_sort(ways.begin(), ways.end(), [](const auto& a, const auto& b) { return a.second.alarm > b.second.alarm; });
    for (const auto& way : ways) {
      if (way.second.next != nullptr) {
        choose(View(view, *way.first), *way.second.next);
      }
    }
  }

  void add(JudgedFlag flag) {
    flag.raised.clue = kept_by(kept_, flag.raised.clue);
    if (flag.raised.graver) {
      flag.raised.graver = kept_by(kept_, *flag.raised.graver);
    }
    AskTrail settle;
    for (const ToAsk& ask : flag.raised.would_settle.written()) {
      settle.add({kept_.trails().asks, ask});
    }
    flag.raised.would_settle = settle;
    const auto same = std::find_if(judged_.begin(), judged_.end(), [&](const JudgedFlag& one) { return one.flag == flag.flag && one.side == flag.side; });
    if (same == judged_.end()) {
      judged_.push_back(std::move(flag));
    } else if (!same->raised.clue.is_yes() || flag.raised.urgency < same->raised.urgency ||
               (flag.raised.urgency == same->raised.urgency && gravity_of(row_, flag.raised.what) > gravity_of(row_, same->raised.what))) {
      *same = std::move(flag);
    }
  }

  const View& kept_;
  const std::vector<ToldApart>& apart_;
  JudgeAsTold judge_;
  const reference::AlertRow& row_;
  std::vector<JudgedFlag>& judged_;
  std::size_t left_;
};

}  // namespace

bool tells_apart(const View& view) { return !told_apart(view).empty(); }

void add_more_alarming(const View& view, JudgeAsTold judge, const WantedRows& wanted, std::vector<JudgedFlag>& judged) {
  const std::vector<ToldApart> apart = told_apart(view);
  if (apart.empty()) {
    return;
  }
  for (const reference::AlertRow& row : view.edition().alerts()) {
    if (!wanted || wanted(row)) {
      Chosen(view, apart, judge, row, judged).judge_all();
    }
  }
}

}  // namespace limbledger::interpret
