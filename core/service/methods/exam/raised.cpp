#include "core/service/methods/exam/raised.hpp"

#include "core/interpret/view.hpp"
#include "core/ledger/log/log.hpp"
#include "core/service/methods/exam/common.hpp"
#include "core/service/once_raised.hpp"

#include <algorithm>
#include <array>
#include <map>
#include <set>
#include <string_view>

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

// Alerts are judged by nothing that these say. An exchange of sides turns what came before it, and the sides are those of now.
constexpr std::array<std::string_view, 7> passed_over{"alert_handled", "became", "disagree", "impression", "letter", "plan", "swap_sides"};

[[nodiscard]] bool is_passed_over(const model::Operation& operation) {
  return std::find(passed_over.begin(), passed_over.end(), operation.op.text) != passed_over.end();
}

[[nodiscard]] bool has_same_values(const model::Exam& exam) {
  return exam.marks && std::any_of(exam.marks->begin(), exam.marks->end(), [](const model::EntryMark& one) { return one.mark.text == "same_value"; });
}

// The exam at one entry after the other, as far as its alerts want it. Folding every state anew is quadratic in findings told one by one,
// so a state is grown from the one before it where all that came between is a finding, a correction or a withdrawal of one, or nothing
// that alerts are judged by; anywhere else (two writers joined, a conflict, a signature, an amended opening) it is folded as ever.
class GrownExams {
 public:
  GrownExams(Context& context, const model::ExamId& exam, const ledger::ExamRecord& record);

  // The exam as these entries alone tell it, its findings on the sides of now; nothing where they open none.
  [[nodiscard]] std::optional<model::Exam> folded(const std::vector<model::EntryId>& heads) const;
  // The same for judging alerts: what nobody judges of it may be older. Good until the next call; asked for oldest first.
  [[nodiscard]] const model::Exam* at(const std::vector<model::EntryId>& heads);

 private:
  [[nodiscard]] const model::Exam* grown(std::size_t head);
  [[nodiscard]] bool grow(model::Exam& exam, std::size_t by) const;
  [[nodiscard]] const model::Finding* told_at(const model::EntryId& entry) const;

  Context& context_;
  model::ExamId exam_;
  ledger::Graph graph_;
  std::map<model::EntryId, const model::Finding*> told_;  // every finding of the record, by its entry
  bool repeats_ = false;                                  // one request came twice: which of them stands is the fold's affair
  std::map<std::size_t, model::Exam> ends_;               // what may be grown on, by the last entry that is in it
  std::optional<model::Exam> joined_;
};

GrownExams::GrownExams(Context& context, const model::ExamId& exam, const ledger::ExamRecord& record)
    : context_(context), exam_(exam), graph_(record.operations) {
  repeats_ = graph_.size() != record.operations.size();
  for (const model::Finding& finding : record.fold.history) {
    told_.emplace(*finding.entry, &finding);
  }
}

const model::Finding* GrownExams::told_at(const model::EntryId& entry) const {
  const auto found = told_.find(entry);
  return found == told_.end() ? nullptr : found->second;
}

std::optional<model::Exam> GrownExams::folded(const std::vector<model::EntryId>& heads) const {
  const std::vector<bool> known = graph_.closure(heads);
  std::vector<ledger::Opened> operations;
  for (std::size_t i = 0; i < graph_.size(); ++i) {
    if (known[i]) {
      operations.push_back(graph_.at(i));
    }
  }
  auto fold = fold_operations(context_, exam_, operations);
  if (!fold) {
    return std::nullopt;
  }
  for (model::Finding& finding : *fold->exam.findings) {
    const model::Finding* now = told_at(*finding.entry);
    finding.side = now != nullptr ? now->side : finding.side;
  }
  return std::move(fold->exam);
}

const model::Exam* GrownExams::at(const std::vector<model::EntryId>& heads) {
  const auto head = heads.size() == 1 && !repeats_ ? graph_.find(heads.front()) : std::nullopt;
  if (head) {
    return grown(*head);
  }
  joined_ = folded(heads);
  return joined_ ? &*joined_ : nullptr;
}

const model::Exam* GrownExams::grown(std::size_t head) {
  // Back to what is at hand, or to an entry that nothing is grown over.
  std::vector<std::size_t> steps;
  std::size_t from = head;
  while (ends_.count(from) == 0) {
    const model::Operation& operation = graph_.at(from).operation();
    const auto before = operation.after.size() == 1 ? graph_.find(operation.after.front()) : std::nullopt;
    const bool over = operation.op.text == "finding" || operation.op.text == "withdraw" || is_passed_over(operation);
    if (!over || !before || graph_.waits(from) || steps.size() > graph_.size()) {
      break;
    }
    steps.push_back(from);
    from = *before;
  }
  std::optional<model::Exam> exam;
  if (const auto end = ends_.find(from); end != ends_.end()) {
    if (steps.empty()) {
      return &end->second;
    }
    exam = std::move(end->second);
    ends_.erase(end);
  } else {
    exam = folded({graph_.at(from).entry()});
  }
  while (exam && !steps.empty() && grow(*exam, steps.back())) {
    steps.pop_back();
  }
  if (!exam || !steps.empty()) {
    exam = folded({graph_.at(head).entry()});
  }
  return exam ? &ends_.insert_or_assign(head, std::move(*exam)).first->second : nullptr;
}

// False, and the exam is of no use any more, where the fold might make something else of it.
bool GrownExams::grow(model::Exam& exam, std::size_t by) const {
  const ledger::Opened& opened = graph_.at(by);
  const model::Operation& operation = opened.operation();
  if (!opened.readable() || operation.replaces.size() > model::pointers_max) {
    return false;
  }
  if (is_passed_over(operation)) {
    return true;
  }
  const auto* withdraw = std::get_if<model::WithdrawBody>(&opened.body());
  const model::Finding* told = told_at(opened.entry());
  const auto of = withdraw != nullptr ? withdraw->finding : (told != nullptr ? told->finding : std::nullopt);
  // After a signature, or a withdrawal of the whole exam, what an entry does hangs on more than itself.
  if (!of || exam.state != model::ExamState::open || (!operation.replaces.empty() && has_same_values(exam))) {
    return false;
  }
  auto& findings = *exam.findings;
  for (const model::EntryId& entry : operation.replaces) {
    const auto old = std::find_if(findings.begin(), findings.end(), [&](const model::Finding& one) { return one.entry == entry; });
    if (old == findings.end() || old->finding != of || old->standing != model::Standing::current) {
      return false;
    }
    findings.erase(old);
  }
  if (withdraw == nullptr) {
    findings.push_back(*told);
    findings.back().standing = model::Standing::current;
  }
  return true;
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
      const model::Exam* exam = exams().at(heads);
      state->second.raised = exam != nullptr ? raised_in(*exam) : Alerts{};
    }
    return state->second.raised;
  }

  // Oldest first, so that each grows from the one before it.
  void judge(const std::vector<Heads>& newest_first) {
    for (auto heads = newest_first.rbegin(); heads != newest_first.rend(); ++heads) {
      static_cast<void>(raised_at(*heads));
    }
  }

  [[nodiscard]] std::optional<model::Exam> exam_kept(const Heads& heads) {
    OnceRaised::State& state = kept_.states[heads];
    if (!state.exam) {
      state.exam = exams().folded(heads);
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

  [[nodiscard]] GrownExams& exams() {
    if (!exams_) {
      exams_.emplace(context_, *now_.exam().exam, record_);
    }
    return *exams_;
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
  std::optional<GrownExams> exams_;
};

}  // namespace

std::vector<model::Exam> shown_while_raised(Context& context, const ledger::ExamRecord& record, const interpret::View& now,
                                            const std::vector<interpret::JudgedFlag>* flags) {
  History history(context, record, now);
  Alerts named = history.raised_now(flags);
  std::vector<model::Exam> out;
  const std::vector<Heads> states = states_shown(record);
  history.judge(states);
  for (const Heads& heads : states) {
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
