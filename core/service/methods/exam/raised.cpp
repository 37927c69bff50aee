#include "core/service/methods/exam/raised.hpp"

#include "core/interpret/view.hpp"
#include "core/ledger/log/log.hpp"
#include "core/service/once_raised.hpp"

#include <algorithm>
#include <set>

namespace limbledger::service {

namespace {

using Heads = std::vector<model::EntryId>;
using Alerts = std::vector<OnceRaised::Alert>;

constexpr std::size_t exams_kept_max = 256;

[[nodiscard]] bool is_exchange(const model::Operation& operation) { return operation.op.text == "swap_sides"; }

// What alerts are judged by.
[[nodiscard]] bool is_judged(const model::Operation& operation) {
  const std::string& op = operation.op.text;
  return op == "finding" || op == "settle" || op == "withdraw" || op == "exam";
}

[[nodiscard]] bool waits_for_entries(const ledger::ExamRecord& record) {
  const auto& marks = record.fold.exam.marks;
  return record.unopened != 0 || (marks && std::any_of(marks->begin(), marks->end(), [](const model::EntryMark& one) { return one.mark.text == "waits"; }));
}

// What some writer was shown, newest first: the end of each call that something judged came with, and what a writer joined. Within a
// call nothing is shown.
[[nodiscard]] std::vector<Heads> states_shown(const ledger::ExamRecord& record) {
  std::vector<Heads> states;
  std::set<model::RequestId> calls;
  for (auto opened = record.operations.rbegin(); opened != record.operations.rend(); ++opened) {
    const model::Operation& operation = opened->operation();
    if (calls.insert(operation.request).second && is_judged(operation)) {
      states.push_back({opened->entry()});
    }
    if (operation.after.size() > 1) {
      states.push_back(operation.after);
      std::sort(states.back().begin(), states.back().end());
    }
  }
  return states;
}

class History {
 public:
  History(Context& context, const ledger::ExamRecord& record, const interpret::View& now)
      : context_(context), record_(record), now_(now), kept_(waits_for_entries(record) ? unkept_ : kept_of(context, now)) {
    const auto exchanges = static_cast<std::size_t>(
        std::count_if(record.operations.begin(), record.operations.end(), [](const ledger::Opened& one) { return is_exchange(one.operation()); }));
    if (kept_.person != now.person() || !(kept_.as_of == now.examined_on()) || kept_.exchanges != exchanges) {
      kept_ = {now.person(), now.examined_on(), exchanges, {}};
    }
  }

  // As judged already, or as judged now.
  [[nodiscard]] const Alerts& raised_now(const std::vector<interpret::JudgedFlag>* flags) {
    Heads heads = record_.fold.exam.revision.value_or(Heads{});
    std::sort(heads.begin(), heads.end());
    const auto [state, fresh] = kept_.states.try_emplace(std::move(heads));
    if (fresh) {
      state->second.raised = alerts_of_flags(flags != nullptr ? *flags : interpret::judge_flags(now_));
    }
    return state->second.raised;
  }

  [[nodiscard]] const Alerts& raised_at(const Heads& heads) {
    const auto [state, fresh] = kept_.states.try_emplace(heads);
    if (fresh) {
      const std::optional<model::Exam> exam = exam_at(heads);
      state->second.raised = exam ? raised_in(*exam) : Alerts{};
    }
    return state->second.raised;
  }

  [[nodiscard]] std::optional<model::Exam> exam_kept(const Heads& heads) {
    OnceRaised::State& state = kept_.states[heads];
    if (!state.exam) {
      state.exam = exam_at(heads);
    }
    return state.exam;
  }

 private:
  static OnceRaised& kept_of(Context& context, const interpret::View& now) {
    auto& all = context.desk->once_raised();
    if (all.size() >= exams_kept_max && all.count(*now.exam().exam) == 0) {
      all.erase(all.begin());
    }
    return all[*now.exam().exam];
  }

  [[nodiscard]] std::optional<model::Exam> exam_at(const Heads& heads) {
    if (!graph_) {
      graph_.emplace(record_.operations);
    }
    const std::vector<bool> known = graph_->closure(heads);
    std::vector<ledger::Opened> operations;
    for (std::size_t i = 0; i < graph_->size(); ++i) {
      if (known[i]) {
        operations.push_back(graph_->at(i));
      }
    }
    auto fold = fold_operations(context_, *now_.exam().exam, operations);
    if (!fold) {
      return std::nullopt;
    }
    for (model::Finding& finding : *fold->exam.findings) {
      finding.side = side_now(finding);
    }
    return std::move(fold->exam);
  }

  [[nodiscard]] model::Side side_now(const model::Finding& finding) const {
    const auto& all = record_.fold.history;
    const auto at = std::find_if(all.begin(), all.end(), [&](const model::Finding& one) { return one.entry == finding.entry; });
    return at == all.end() ? finding.side : at->side;
  }

  [[nodiscard]] Alerts raised_in(const model::Exam& exam) const {
    const interpret::View view(exam, now_.person(), *context_.edition, now_.examined_on());
    return alerts_of_flags(interpret::judge_flags(view));
  }

  [[nodiscard]] static Alerts alerts_of_flags(const std::vector<interpret::JudgedFlag>& flags) {
    const std::vector<const interpret::JudgedFlag*> listed = interpret::listed_alerts(flags);
    Alerts alerts;
    for (const interpret::JudgedFlag& flag : flags) {
      if (interpret::stands_as_alert(flag)) {
        alerts.push_back({flag.row, flag.side, std::find(listed.begin(), listed.end(), &flag) != listed.end()});
      }
    }
    return alerts;
  }

  Context& context_;
  const ledger::ExamRecord& record_;
  const interpret::View& now_;
  OnceRaised unkept_;  // an entry that is missing may come, and then a state holds more
  OnceRaised& kept_;
  std::optional<ledger::Graph> graph_;
};

}  // namespace

std::vector<model::Exam> shown_while_raised(Context& context, const ledger::ExamRecord& record, const interpret::View& now,
                                            const std::vector<interpret::JudgedFlag>* flags) {
  History history(context, record, now);
  Alerts named = history.raised_now(flags);
  std::vector<model::Exam> out;
  for (const Heads& heads : states_shown(record)) {
    bool gone = false;
    for (const OnceRaised::Alert& alert : history.raised_at(heads)) {
      const auto same = [&](const OnceRaised::Alert& one) { return one.row == alert.row && one.side == alert.side; };
      if (alert.listed && std::none_of(named.begin(), named.end(), same)) {
        named.push_back(alert);
        gone = true;
      }
    }
    if (!gone) {
      continue;
    }
    if (auto exam = history.exam_kept(heads)) {
      out.push_back(std::move(*exam));
    }
  }
  return out;
}

}  // namespace limbledger::service
