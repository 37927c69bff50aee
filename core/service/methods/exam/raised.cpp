#include "core/service/methods/exam/raised.hpp"

#include "core/interpret/view.hpp"
#include "core/ledger/log/log.hpp"
#include "core/service/methods/exam/common.hpp"

#include <algorithm>
#include <array>
#include <iterator>
#include <map>
#include <set>
#include <string_view>
#include <utility>

namespace limbledger::service {

namespace {

using Heads = std::vector<model::EntryId>;
using Alerts = std::vector<OnceRaised::Alert>;

constexpr std::size_t exams_kept_max = 256;

[[nodiscard]] bool is_exchange(const model::Operation& operation) { return operation.op.text == "swap_sides"; }

// What alerts are judged by.
[[nodiscard]] bool is_judged(const model::Operation& operation) {
  const std::string& op = operation.op.text;
  return op == "finding" || op == "settle" || op == "withdraw" || op == "exam" || op == "move" || op == "consent";
}

[[nodiscard]] bool waits_for_entries(const ledger::ExamRecord& record) {
  const auto& marks = record.fold.exam.marks;
  return record.unopened != 0 || (marks && std::any_of(marks->begin(), marks->end(), [](const model::EntryMark& one) { return one.mark.text == "waits"; }));
}

// A state of the exam that somebody was shown, and the time by which its person is known: what came before it, or `with` it.
struct StateShown {
  Heads heads;
  ledger::Stamp at;
  bool with = false;
};

// What some writer was shown, newest first: the end of each call that something judged came with, and what a writer joined. Within a
// call nothing is shown.
[[nodiscard]] std::vector<StateShown> states_shown(const ledger::ExamRecord& record) {
  std::vector<StateShown> states;
  std::set<model::RequestId> calls;
  for (auto opened = record.operations.rbegin(); opened != record.operations.rend(); ++opened) {
    const model::Operation& operation = opened->operation();
    if (calls.insert(operation.request).second && is_judged(operation)) {
      states.push_back({{opened->entry()}, opened->stamp()});
    }
    if (operation.after.size() > 1) {
      states.push_back({operation.after, opened->stamp()});
      std::sort(states.back().heads.begin(), states.back().heads.end());
    }
  }
  return states;
}

// And the exam as it stood when something of its person was corrected, before it and with it.
void add_corrected(const ledger::ExamRecord& record, const PersonsKnown& persons, std::vector<StateShown>& states) {
  for (const ledger::Stamp& at : persons.corrections()) {
    std::vector<ledger::Opened> before;
    std::copy_if(record.operations.begin(), record.operations.end(), std::back_inserter(before), [&](const ledger::Opened& one) { return one.stamp() < at; });
    if (before.empty()) {
      continue;
    }
    Heads heads = ledger::Graph(before).heads();
    std::sort(heads.begin(), heads.end());
    states.push_back({heads, at, false});
    states.push_back({std::move(heads), at, true});
  }
  if (!persons.corrections().empty()) {
    std::stable_sort(states.begin(), states.end(), [](const StateShown& a, const StateShown& b) { return a.at == b.at ? a.with && !b.with : b.at < a.at; });
  }
}

// Alerts are judged by nothing that these say.
constexpr std::array<std::string_view, 7> passed_over{"alert_handled", "became", "disagree", "impression", "letter", "plan", "put_off"};

[[nodiscard]] bool is_passed_over(const model::Operation& operation) {
  return std::find(passed_over.begin(), passed_over.end(), operation.op.text) != passed_over.end();
}

[[nodiscard]] bool has_same_values(const model::Exam& exam) {
  return exam.marks && std::any_of(exam.marks->begin(), exam.marks->end(), [](const model::EntryMark& one) { return one.mark.text == "same_value"; });
}

// The exam at one entry after the other, as far as its alerts want it. Folding every state anew is quadratic in findings told one by one,
// so a state is grown from the one before it where all that came between is a finding, a correction or a withdrawal of one, or nothing
// that alerts are judged by; anywhere else (two writers joined, a conflict, a signature, an amended opening, sides exchanged) it is folded
// as ever. Its sides are those that it was shown with.
class GrownExams {
 public:
  GrownExams(Context& context, const model::ExamId& exam, const ledger::ExamRecord& record);

  // The exam as these entries alone tell it; nothing where they open none.
  [[nodiscard]] std::optional<model::Exam> folded(const std::vector<model::EntryId>& heads) const;
  // The same for judging alerts: what nobody judges of it may be older. Good until the next call; asked for oldest first.
  [[nodiscard]] const model::Exam* at(const std::vector<model::EntryId>& heads);
  // Of its findings those whose side was exchanged since.
  [[nodiscard]] std::vector<model::EntryId> turned_since(const model::Exam& exam) const;
  // Who was shown `later` had been shown all of `earlier`.
  [[nodiscard]] bool knew(const Heads& later, const Heads& earlier) const;

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
  return fold ? std::optional(std::move(fold->exam)) : std::nullopt;
}

std::vector<model::EntryId> GrownExams::turned_since(const model::Exam& exam) const {
  std::vector<model::EntryId> turned;
  for (const model::Finding& finding : *exam.findings) {
    const model::Finding* now = told_at(*finding.entry);
    if (now != nullptr && now->side != finding.side) {
      turned.push_back(*finding.entry);
    }
  }
  std::sort(turned.begin(), turned.end());
  return turned;
}

bool GrownExams::knew(const Heads& later, const Heads& earlier) const {
  const std::vector<bool> shown = graph_.closure(later);
  return std::all_of(earlier.begin(), earlier.end(), [&](const model::EntryId& entry) {
    const auto at = graph_.find(entry);
    return !at || shown[*at];
  });
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
  const auto* body = std::get_if<model::FindingBody>(&opened.body());
  const model::Finding* told = body != nullptr ? told_at(opened.entry()) : nullptr;
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
    findings.back().side = body->observation.side;
    findings.back().standing = model::Standing::current;
  }
  return true;
}

class History {
 public:
  History(Context& context, const ledger::ExamRecord& record, const PersonsKnown& persons, const interpret::View& now)
      : context_(context), record_(record), persons_(persons), now_(now), kept_(waits_for_entries(record) ? unkept_ : kept_of(context, now)) {
    const auto exchanges = static_cast<std::size_t>(
        std::count_if(record.operations.begin(), record.operations.end(), [](const ledger::Opened& one) { return is_exchange(one.operation()); }));
    if (kept_.exchanges != exchanges) {
      kept_ = {{}, exchanges, {}};
    }
  }

  // As judged already, or as judged now.
  [[nodiscard]] const Alerts& raised_now(const std::vector<interpret::JudgedFlag>* flags) {
    Heads heads = record_.fold.exam.revision.value_or(Heads{});
    std::sort(heads.begin(), heads.end());
    OnceRaised::State& state = kept_.states[std::move(heads)];
    read(state, now_.exam());
    const std::size_t known = place_of(now_.person());
    if (const Alerts* held = held_in(state, known)) {
      return *held;
    }
    return state.raised.emplace_back(known, alerts_of_flags(flags != nullptr ? *flags : interpret::judge_flags(now_), {})).second;
  }

  [[nodiscard]] const Alerts& raised_at(const StateShown& shown) {
    OnceRaised::State& state = kept_.states[shown.heads];
    const model::Exam* exam = nullptr;
    if (!state.read) {
      exam = exams().at(shown.heads);
      if (exam == nullptr) {
        return none_;
      }
      read(state, *exam);
    }
    const std::optional<model::Person>& person = persons_.at(state.person, shown.at, shown.with);
    const std::size_t known = place_of(person);
    if (const Alerts* held = held_in(state, known)) {
      return *held;
    }
    exam = exam != nullptr ? exam : exams().at(shown.heads);
    return state.raised.emplace_back(known, exam != nullptr ? raised_in(*exam, person) : Alerts{}).second;
  }

  // Of each state, in their order; judged oldest first, so that each grows from the one before it.
  [[nodiscard]] std::vector<const Alerts*> raised_at_all(const std::vector<StateShown>& newest_first) {
    std::vector<const Alerts*> all(newest_first.size());
    for (std::size_t i = newest_first.size(); i > 0; --i) {
      all[i - 1] = &raised_at(newest_first[i - 1]);
    }
    return all;
  }

  [[nodiscard]] bool knew(const StateShown& later, const StateShown& earlier) { return exams().knew(later.heads, earlier.heads); }

  [[nodiscard]] std::optional<interpret::KnownOtherwise> kept_at(const StateShown& shown, const StateShown* next) {
    OnceRaised::State& state = kept_.states[shown.heads];
    if (!state.exam) {
      state.exam = exams().folded(shown.heads);
    }
    if (!state.exam) {
      return std::nullopt;
    }
    return interpret::KnownOtherwise{*state.exam, persons_.at(state.person, shown.at, shown.with), corrected(shown, next), exams().turned_since(*state.exam)};
  }

 private:
  static OnceRaised& kept_of(Context& context, const interpret::View& now) {
    auto& all = context.desk->once_raised();
    if (all.size() >= exams_kept_max && all.count(*now.exam().exam) == 0) {
      all.erase(all.begin());
    }
    return all[*now.exam().exam];
  }

  static void read(OnceRaised::State& state, const model::Exam& exam) {
    if (!state.read) {
      state.read = true;
      state.person = exam.person;
      state.opening = {exam.complaint, exam.side, exam.injured_on, exam.who_spoke, exam.offset_min, exam.examined_on, exam.day_doubtful};
    }
  }

  [[nodiscard]] static const Alerts* held_in(const OnceRaised::State& state, std::size_t known) {
    const auto held = std::find_if(state.raised.begin(), state.raised.end(), [&](const auto& one) { return one.first == known; });
    return held == state.raised.end() ? nullptr : &held->second;
  }

  [[nodiscard]] std::size_t place_of(const std::optional<model::Person>& person) {
    if (&person == placed_) {
      return place_;
    }
    const auto held = std::find_if(kept_.known.begin(), kept_.known.end(), [&](const std::optional<model::Person>& one) {
      return one.has_value() == person.has_value() && what_differs(one, person).empty();
    });
    placed_ = &person;
    place_ = static_cast<std::size_t>(held - kept_.known.begin());
    if (held == kept_.known.end()) {
      kept_.known.push_back(person);
    }
    return place_;
  }

  // What was said otherwise between a state and the next one, or now; nothing where it was a finding.
  [[nodiscard]] std::vector<model::Word> corrected(const StateShown& shown, const StateShown* next) {
    const OnceRaised::State& before = kept_.states[shown.heads];
    OnceRaised::State now;
    read(now, now_.exam());
    const OnceRaised::State& after = next != nullptr ? kept_.states[next->heads] : now;
    const std::optional<model::Person>& then = persons_.at(before.person, shown.at, shown.with);
    std::vector<model::Word> all = what_differs(then, next != nullptr ? persons_.at(after.person, next->at, next->with) : now_.person());
    if (!all.empty() && before.person != after.person) {
      all = {{"exam.person"}};
    }
    const auto differs = [&](bool same, std::string_view word) {
      if (!same) {
        all.push_back({std::string(word)});
      }
    };
    differs(before.opening.complaint == after.opening.complaint, "exam.complaint");
    differs(before.opening.side == after.opening.side, "exam.side");
    differs(before.opening.injured_on == after.opening.injured_on, "exam.injured_on");
    differs(before.opening.examined_on == after.opening.examined_on && before.opening.day_doubtful == after.opening.day_doubtful, "exam.examined_on");
    differs(before.opening.who_spoke == after.opening.who_spoke, "exam.who_spoke");
    differs(before.opening.offset_min == after.opening.offset_min, "exam.offset_min");
    return all;
  }

  [[nodiscard]] GrownExams& exams() {
    if (!exams_) {
      exams_.emplace(context_, *now_.exam().exam, record_);
    }
    return *exams_;
  }

  [[nodiscard]] Alerts raised_in(const model::Exam& exam, const std::optional<model::Person>& person) {
    const interpret::View view(exam, person, *context_.edition, now_.as_of());
    return alerts_of_flags(interpret::judge_flags(view), kept_.exchanges > 0 ? exams().turned_since(exam) : std::vector<model::EntryId>{});
  }

  Context& context_;
  const ledger::ExamRecord& record_;
  const PersonsKnown& persons_;
  const interpret::View& now_;
  OnceRaised unkept_;  // an entry that is missing may come, and then a state holds more
  OnceRaised& kept_;
  std::optional<GrownExams> exams_;
  Alerts none_;
  const std::optional<model::Person>* placed_ = nullptr;  // nearly always the one of the state before
  std::size_t place_ = 0;
};

// What an addendum found has no id of its own.
[[nodiscard]] std::vector<model::FindingId> grounds_of(const interpret::JudgedFlag& flag) {
  std::vector<model::FindingId> grounds;
  for (const model::Finding* finding : flag.raised.clue.because.written()) {
    if (finding->finding) {
      grounds.push_back(*finding->finding);
    } else if (finding->entry) {
      grounds.push_back({finding->entry->bytes});
    }
  }
  return grounds;
}

}  // namespace

std::vector<OnceRaised::Alert> alerts_of_flags(const std::vector<interpret::JudgedFlag>& flags, const std::vector<model::EntryId>& turned) {
  const std::vector<const interpret::JudgedFlag*> listed = interpret::listed_alerts(flags);
  Alerts alerts;
  for (const interpret::JudgedFlag& flag : flags) {
    if (interpret::stands_as_alert(flag)) {
      alerts.push_back({flag.row, interpret::side_since(flag, turned), std::find(listed.begin(), listed.end(), &flag) != listed.end(), flag.raised.urgency,
                        flag.raised.what, grounds_of(flag)});
    }
  }
  return alerts;
}

ShownBefore shown_before(Context& context, const ledger::ExamRecord& record, const PersonsKnown& persons, const interpret::View& now,
                         const std::vector<interpret::JudgedFlag>* flags) {
  History history(context, record, persons, now);
  const Alerts stand = history.raised_now(flags);
  Alerts named = stand;
  ShownBefore out;
  std::vector<StateShown> states = states_shown(record);
  add_corrected(record, persons, states);
  const std::vector<const Alerts*> raised = history.raised_at_all(states);
  for (std::size_t i = 0; i < states.size(); ++i) {
    bool gone = false;
    for (const OnceRaised::Alert& alert : *raised[i]) {
      const auto same = [&](const OnceRaised::Alert& one) { return one.row == alert.row && one.side == alert.side; };
      if (alert.listed && std::none_of(named.begin(), named.end(), same)) {
        named.push_back(alert);
        gone = true;
      }
    }
    if (gone) {
      if (auto kept = history.kept_at(states[i], i > 0 ? &states[i - 1] : nullptr)) {
        out.while_raised.push_back(std::move(*kept));
      }
    }
  }
  for (std::size_t i = states.size(); i > 0; --i) {
    out.times.add(*raised[i - 1], [&](std::size_t earlier) { return history.knew(states[i - 1], states[states.size() - 1 - earlier]); });
  }
  out.times.add(stand, [](std::size_t) { return true; });
  return out;
}

}  // namespace limbledger::service
