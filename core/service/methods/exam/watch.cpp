#include "core/service/methods/exam/watch.hpp"

#include "core/interpret/after/open_loops.hpp"
#include "core/interpret/body.hpp"
#include "core/interpret/view.hpp"
#include "core/ledger/log/log.hpp"
#include "core/report/text.hpp"
#include "core/service/methods/exam/raised.hpp"
#include "core/service/methods/people/known_before.hpp"
#include "core/service/methods/say/assess.hpp"

#include <algorithm>
#include <deque>
#include <iterator>
#include <utility>

namespace limbledger::service {

namespace {

void mark_damaged(model::Exam& exam) {
  for (model::Finding& finding : *exam.findings) {
    if (!finding.marks) {
      finding.marks.emplace();
    }
    finding.marks->push_back({std::string(interpret::mark_record_damaged)});
  }
}

[[nodiscard]] bool may_be_withheld(const reference::Edition& edition, const model::Observation& observation) {
  const model::Item* item = edition.item(observation.item);
  const auto rows = edition.alerts();
  return (item != nullptr && item->withheld_by) || std::any_of(rows.begin(), rows.end(), [&](const reference::AlertRow& row) {
           return std::find(row.stop.begin(), row.stop.end(), observation.item) != row.stop.end();
         });
}

// As if it stood in its place.
void put(model::Exam& exam, const model::Observation& observation, const std::optional<model::EntryId>& entry = std::nullopt) {
  if (!exam.findings) {
    exam.findings.emplace();
  }
  auto& findings = *exam.findings;
  findings.erase(std::remove_if(findings.begin(), findings.end(),
                                [&](const model::Finding& held) { return held.item == observation.item && held.side == observation.side; }),
                 findings.end());
  findings.push_back(model::as_finding(observation));
  findings.back().entry = entry;
}

[[nodiscard]] bool misses_an_entry(const ledger::ExamRecord& record) {
  const auto& marks = record.fold.exam.marks;
  return record.unopened != 0 || (marks && std::any_of(marks->begin(), marks->end(), [](const model::EntryMark& one) { return one.mark.text == "waits"; }));
}

[[nodiscard]] std::optional<model::Person> person_examined(Context& context, const model::Exam& exam) {
  if (exam.person) {
    if (const auto person = context.desk->records().person(*exam.person)) {
      return (*person)->fold.person;
    }
  }
  return std::nullopt;
}

// Only an exam without a time of its own is judged by today.
[[nodiscard]] model::PartialDate judged_as_of(Context& context, const model::Exam& exam) {
  return day_of(exam, model::date_of({context.desk->world().now().wall_ms}, 0));
}

// What is judged at every finding is read where it lies: an exam is long, and it is copied only where something of it is to be marked.
class ExamAtHand {
 public:
  ExamAtHand(Context& context, const ledger::ExamRecord& record)
      : folded_(record.fold.exam), person_(person_examined(context, folded_)), view_(exam_of(record), person_, *context.edition, judged_as_of(context, folded_)) {}
  [[nodiscard]] const interpret::View& view() const { return view_; }

 private:
  [[nodiscard]] const model::Exam& exam_of(const ledger::ExamRecord& record) {
    if (!misses_an_entry(record) || !folded_.findings) {
      return folded_;
    }
    marked_ = folded_;
    mark_damaged(*marked_);
    return *marked_;
  }

  const model::Exam& folded_;
  std::optional<model::Exam> marked_;
  std::optional<model::Person> person_;
  interpret::View view_;
};

// A judged exam with observations in their places, one laid over the other.
class Laid {
 public:
  explicit Laid(const interpret::View& base) : top_(&base) {}
  void lay(const model::Observation& observation) {
    findings_.push_back(model::as_finding(observation));
    top_ = &views_.emplace_back(*top_, findings_.back());
  }
  [[nodiscard]] const interpret::View& view() const { return *top_; }

 private:
  std::deque<model::Finding> findings_;
  std::deque<interpret::View> views_;
  const interpret::View* top_;
};

[[nodiscard]] bool has_additions(const model::Exam& exam) {
  const auto finds = [](const auto& one) { return one.findings && !one.findings->empty(); };
  return (exam.addenda && std::any_of(exam.addenda->begin(), exam.addenda->end(), finds)) ||
         (exam.countersigned && std::any_of(exam.countersigned->begin(), exam.countersigned->end(), finds));
}

// What was added after the signature was judged by the exam, and by what was known of its person, as they stood then. Newest first.
void add_since_signature(Context& context, const ledger::ExamRecord& record, const PersonsKnown& persons, const ledger::Stamp& signed_at, ToJudge& out) {
  std::vector<std::pair<ledger::Stamp, bool>> ends;  // with what came at that time, or before it
  for (const ledger::Opened& one : record.operations) {
    ends.emplace_back(one.stamp(), true);
  }
  for (const ledger::Stamp& at : persons.corrections()) {
    ends.emplace_back(at, false);
  }
  ends.erase(std::remove_if(ends.begin(), ends.end(), [&](const auto& end) { return !(signed_at < end.first); }), ends.end());
  std::sort(ends.begin(), ends.end(), [](const auto& a, const auto& b) { return b < a; });
  for (const auto& end : ends) {
    std::vector<ledger::Opened> until;
    std::copy_if(record.operations.begin(), record.operations.end(), std::back_inserter(until),
                 [&](const ledger::Opened& one) { return one.stamp() < end.first || (end.second && one.stamp() == end.first); });
    auto then = fold_operations(context, *record.fold.exam.exam, until);
    if (!then || !has_additions(then->exam)) {
      continue;
    }
    const auto& person = persons.at(then->exam.person, end.first, end.second);
    std::vector<model::Word> corrected = what_differs(person, out.person);
    if (!corrected.empty() && then->exam.person != out.exam.person) {
      corrected = {{"exam.person"}};
    }
    out.since_signature.push_back({std::move(then->exam), person, std::move(corrected)});
  }
}

// The first signature that holds, and whether anything came that its signer had not seen: of the exam, or of its person.
void add_signature(Context& context, const ledger::ExamRecord& record, const PersonsKnown& persons, ToJudge& out) {
  const auto& closed = record.fold.exam.signed_;
  if (!closed) {
    return;
  }
  const auto sign = std::find_if(record.operations.begin(), record.operations.end(), [&](const ledger::Opened& opened) {
    const model::Operation& operation = opened.operation();
    return operation.op.text == "sign" && operation.by == closed->by && operation.at.wall_ms.steps == closed->at.ms;
  });
  if (sign == record.operations.end()) {
    return;
  }
  const ledger::Graph graph(record.operations);
  const std::vector<bool> seen = graph.closure(sign->operation().after);
  const bool came = std::count(seen.begin(), seen.end(), false) > 1;
  const auto& known_then = persons.at(out.exam.person, sign->stamp());
  if (!came && what_differs(known_then, out.person).empty()) {
    return;
  }
  if (auto shown = exam_as_seen(context, *record.fold.exam.exam, record, sign->operation().after)) {
    const std::optional<model::PersonId> of = shown->exam.person;
    out.at_signature = interpret::KnownOtherwise{std::move(shown->exam), persons.at(of, sign->stamp()), {}};
  }
  if (has_additions(out.exam)) {
    add_since_signature(context, record, persons, sign->stamp(), out);
  }
}

// As it stands, without its history.
[[nodiscard]] ToJudge exam_as_it_stands(Context& context, const ledger::ExamRecord& record) {
  ToJudge out;
  out.exam = record.fold.exam;
  if (misses_an_entry(record) && out.exam.findings) {
    mark_damaged(out.exam);
  }
  out.person = person_examined(context, out.exam);
  out.as_of = judged_as_of(context, out.exam);
  return out;
}

}  // namespace

ToJudge exam_to_judge(Context& context, const ledger::ExamRecord& record) {
  ToJudge out = exam_as_it_stands(context, record);
  const PersonsKnown persons(context, record);
  out.place = place_of_exam(context, out.exam);
  add_signature(context, record, persons, out);
  ShownBefore before = shown_before(context, record, persons, interpret::View(out.exam, out.person, *context.edition, out.as_of));
  out.known_otherwise = std::move(before.while_raised);
  out.times_raised = std::move(before.times);
  return out;
}

interpret::Watched watch(Context& context, const ToJudge& judged, bool protected_too) {
  const interpret::View view(judged.exam, judged.person, *context.edition, judged.as_of);
  interpret::Watched watched = interpret::watch(view, {protected_too, {}, judged.place ? &*judged.place : nullptr, judged.known_otherwise});
  judged.times_raised.mark(watched.alerts.alerts);
  return watched;
}

namespace {

constexpr std::string_view would_end = "alert.would_end";

[[nodiscard]] bool is_asked_about(const Context& context, const Confirmed& confirmed) {
  return !confirms(confirmed, would_end) && context.caller.scope != Scope::kiosk;
}

[[nodiscard]] wire::Fault asked_back(const std::vector<std::string>& ended, const std::string& path) { return {would_end, path, "a decision by which these stand", report::joined(ended, ", ")}; }

}  // namespace

ToJudge without(ToJudge judged, const std::vector<model::EntryId>& entries, const std::vector<model::Observation>& instead) {
  std::vector<model::Finding> findings = std::move(judged.exam.findings).value_or(std::vector<model::Finding>{});
  std::erase_if(findings, [&](const model::Finding& one) { return std::find(entries.begin(), entries.end(), *one.entry) != entries.end(); });
  for (const model::Observation& one : instead) {
    findings.push_back(model::as_finding(one));
  }
  judged.exam.findings = std::move(findings);
  return judged;
}

Result<void> check_ends_no_alert(Context& context, const ToJudge& now, const ToJudge& then, const Confirmed& confirmed, const std::string& path, bool turned) {
  if (!is_asked_about(context, confirmed)) {
    return {};
  }
  const auto stands = [](const interpret::Alert& one) { return one.state != interpret::AlertState::withdrawn_by_correction; };
  const std::vector<interpret::Alert> after = watch(context, then, false).alerts.alerts;
  std::vector<std::string> ended;
  for (const interpret::Alert& one : watch(context, now, false).alerts.alerts) {
    const std::optional<model::Side> side = turned && one.side ? interpret::other_side(*one.side) : one.side;
    const bool stays = one.audience == interpret::Audience::protected_ || std::any_of(after.begin(), after.end(), [&](const interpret::Alert& other) {
      return stands(other) && other.alert == one.alert && other.side == side && other.urgency <= one.urgency;
    });
    if (stands(one) && !stays) {
      ended.push_back(one.alert.text);
    }
  }
  return ended.empty() ? Result<void>() : asked_back(ended, path);
}

Result<void> check_leaves_no_alert(Context& context, const ToJudge& now, const Confirmed& confirmed, const std::string& path) {
  if (!is_asked_about(context, confirmed)) {
    return {};
  }
  std::vector<interpret::Alert> alerts = watch(context, now, false).alerts.alerts;
  add_call_backs(context, now, false, alerts);
  // The lines of loop.list that would go with it.
  const interpret::Visit visit{&now.exam, alerts};
  std::vector<std::string> left;
  for (const interpret::OpenLoop& loop : interpret::open_loops({&visit, 1}, now.as_of)) {
    if (loop.alert) {
      left.push_back(loop.alert->text);
    }
  }
  return left.empty() ? Result<void>() : asked_back(left, path).with("what", R"("leaves")");
}

bool is_protected_unanswered(const interpret::Alert& alert) {
  return alert.audience == interpret::Audience::protected_ && alert.state == interpret::AlertState::raised;
}

namespace {

// What an addendum says was found is added to nothing; but it may not wait either. So may not what only the supervisor found.
[[nodiscard]] model::Exam with_additions(const model::Exam& exam) {
  model::Exam with = exam;
  for (const model::Addendum& addendum : exam.addenda.value_or(std::vector<model::Addendum>{})) {
    for (const model::Observation& observation : addendum.findings.value_or(std::vector<model::Observation>{})) {
      put(with, observation, addendum.entry);
    }
  }
  for (const model::Countersigned& closed : exam.countersigned.value_or(std::vector<model::Countersigned>{})) {
    for (const model::Observation& observation : closed.findings.value_or(std::vector<model::Observation>{})) {
      put(with, observation);
    }
  }
  return with;
}

[[nodiscard]] bool is_same(const interpret::Alert& one, const interpret::Alert& other) { return one.alert == other.alert && one.side == other.side; }

}  // namespace

void add_call_backs(Context& context, const ToJudge& judged, bool protected_too, std::vector<interpret::Alert>& alerts) {
  if (!judged.at_signature) {
    return;
  }
  const auto alerts_when = [&](const model::Exam& exam, const std::optional<model::Person>& person) {
    const interpret::View view(exam, person, *context.edition, judged.as_of);
    return interpret::raised_alerts(view, interpret::judge_flags(view), {protected_too, {}, judged.place ? &*judged.place : nullptr});
  };
  const auto holds = [](const std::vector<interpret::Alert>& all, const interpret::Alert& alert, bool gone_too) {
    return std::any_of(all.begin(), all.end(), [&](const interpret::Alert& one) {
      return is_same(one, alert) && (gone_too || one.state != interpret::AlertState::withdrawn_by_correction);
    });
  };
  const model::Exam with = with_additions(judged.exam);
  std::vector<interpret::Alert> added = alerts_when(with, judged.person);
  added.erase(std::remove_if(added.begin(), added.end(), [&](const interpret::Alert& one) { return holds(alerts, one, false); }), added.end());
  // What an addition once raised, and raises no more; one that stands inside a graver one is not gone.
  const interpret::View view(with, judged.person, *context.edition, judged.as_of);
  const std::vector<interpret::JudgedFlag> flags = judged.since_signature.empty() && added.empty() ? std::vector<interpret::JudgedFlag>{} : interpret::judge_flags(view);
  if (!added.empty()) {
    TimesRaised times;
    const auto all_known = [](std::size_t) { return true; };
    for (auto then = judged.since_signature.rbegin(); then != judged.since_signature.rend(); ++then) {
      const model::Exam then_with = with_additions(then->exam);
      times.add(alerts_of_flags(interpret::judge_flags(interpret::View(then_with, then->person, *context.edition, judged.as_of)), {}), all_known);
    }
    times.add(alerts_of_flags(flags, {}), all_known);
    times.mark(added);
    alerts.insert(alerts.end(), std::make_move_iterator(added.begin()), std::make_move_iterator(added.end()));
  }
  for (const interpret::KnownOtherwise& then : judged.since_signature) {
    const std::vector<interpret::Alert> without = alerts_when(then.exam, then.person);
    for (interpret::Alert& alert : alerts_when(with_additions(then.exam), then.person)) {
      const bool stands = std::any_of(flags.begin(), flags.end(), [&](const interpret::JudgedFlag& one) {
        return one.row->alert == alert.alert && one.side == alert.side && interpret::stands_as_alert(one);
      });
      if (stands || holds(alerts, alert, true) || holds(without, alert, true)) {
        continue;
      }
      alert.state = interpret::AlertState::withdrawn_by_correction;
      alert.interrupts = false;
      if (!then.corrected.empty() && alert.audience != interpret::Audience::protected_) {
        alert.corrected = then.corrected;
      }
      alerts.push_back(std::move(alert));
    }
  }
  interpret::mark_call_backs(alerts_when(judged.at_signature->exam, judged.at_signature->person), alerts);
  std::stable_sort(alerts.begin(), alerts.end(), [](const interpret::Alert& a, const interpret::Alert& b) {
    return std::pair(a.state, a.urgency) < std::pair(b.state, b.urgency);
  });
}

std::vector<interpret::Alert> call_backs_of(Context& context, const model::ExamId& exam, const Sentences& sentences) {
  const auto record = context.desk->records().exam(exam);
  if (!record) {
    return {};
  }
  ToJudge judged = exam_as_it_stands(context, **record);
  judged.place = place_of_exam(context, judged.exam);
  const PersonsKnown persons(context, **record);
  add_signature(context, **record, persons, judged);
  judged.times_raised = shown_before(context, **record, persons, interpret::View(judged.exam, judged.person, *context.edition, judged.as_of)).times;
  std::vector<interpret::Alert> alerts = watch(context, judged, false).alerts.alerts;
  add_call_backs(context, judged, false, alerts);
  alerts.erase(std::remove_if(alerts.begin(), alerts.end(), [](const interpret::Alert& one) { return !one.call_back.value_or(false); }), alerts.end());
  add_alert_texts(judged.exam, sentences, *context.edition, alerts);
  return alerts;
}

Result<std::vector<interpret::Alert>> alerts_of(Context& context, const model::ExamId& exam, const Sentences& sentences) {
  if (context.caller.scope == Scope::kiosk) {
    return std::vector<interpret::Alert>{};
  }
  const auto record = context.desk->records().exam(exam);
  if (!record) {
    return record.error();
  }
  if ((*record)->fold.exam.signed_) {
    const ToJudge judged = exam_to_judge(context, **record);
    std::vector<interpret::Alert> alerts = watch(context, judged, false).alerts.alerts;
    add_call_backs(context, judged, false, alerts);
    add_alert_texts(judged.exam, sentences, *context.edition, alerts);
    return alerts;
  }
  const ExamAtHand judged(context, **record);
  const std::vector<interpret::JudgedFlag> flags = interpret::judge_flags(judged.view());
  // Read from the log each time: so only where something of it is said.
  const bool any = std::any_of(flags.begin(), flags.end(), [](const interpret::JudgedFlag& one) { return one.raised.clue.is_yes(); });
  const std::optional<model::Place> place = any ? place_of_exam(context, judged.view().exam()) : std::nullopt;
  const PersonsKnown persons(context, **record);
  const ShownBefore before = shown_before(context, **record, persons, judged.view(), &flags);
  std::vector<interpret::Alert> alerts = interpret::raised_alerts(judged.view(), flags, {false, {}, place ? &*place : nullptr, before.while_raised});
  before.times.mark(alerts);
  add_alert_texts(judged.view().exam(), sentences, *context.edition, alerts);
  return alerts;
}

Result<ExamReply> judged_reply(Context& context, const model::ExamId& exam, const Written& written, const Sentences& sentences) {
  auto reply = exam_reply(context, exam, written);
  if (!reply) {
    return reply;
  }
  auto alerts = alerts_of(context, exam, sentences);
  if (!alerts) {
    return alerts.error();
  }
  reply->alerts = std::move(*alerts);
  return reply;
}

std::vector<wire::Fault> withheld_faults(Context& context, const ledger::ExamRecord& record, const std::vector<AtPath>& observations) {
  std::vector<wire::Fault> faults;
  if (context.caller.scope == Scope::kiosk) {
    return faults;
  }
  std::vector<bool> may(observations.size());
  std::vector<const model::Item*> items;  // of what is done without saying that it is done all the same
  for (std::size_t i = 0; i < observations.size(); ++i) {
    const model::Observation& observation = *observations[i].observation;
    may[i] = may_be_withheld(*context.edition, observation);
    const model::Item* item = context.edition->item(observation.item);
    const bool done = !std::holds_alternative<model::NotDone>(observation.value) && observation.origin != model::Origin::self_reported;
    if (may[i] && item != nullptr && done && !observation.despite) {
      items.push_back(item);
    }
  }
  if (items.empty()) {
    return faults;
  }
  const ExamAtHand stands(context, record);
  Laid before(stands.view());
  for (std::size_t i = 0; i < observations.size(); ++i) {
    if (!may[i]) {
      before.lay(*observations[i].observation);
    }
  }
  const interpret::Withholders without = interpret::withholders_of(before.view(), items);
  Laid after(stands.view());
  std::optional<interpret::Withholders> with;  // most steps are not withheld, and then nobody asks
  for (const AtPath& one : observations) {
    const model::Observation& observation = *one.observation;
    const model::Item* item = context.edition->item(observation.item);
    if (item == nullptr || std::find(items.begin(), items.end(), item) == items.end() || observation.despite ||
        std::holds_alternative<model::NotDone>(observation.value) || observation.origin == model::Origin::self_reported) {
      continue;
    }
    const auto by = interpret::withheld(*item, observation.side, without.concerns, without.flags);
    if (!by) {
      continue;
    }
    if (!with) {
      for (const AtPath& each : observations) {
        after.lay(*each.observation);
      }
      with = interpret::withholders_of(after.view(), items);
    }
    if (interpret::withheld(*item, observation.side, with->concerns, with->flags)) {
      faults.emplace_back("item.withheld", one.path, "despite {how, because}, where it was done all the same", by->by.text);
    }
  }
  return faults;
}

std::vector<wire::Fault> absent_part_faults(Context& context, const ledger::ExamRecord& record, const std::vector<AtPath>& observations) {
  std::vector<wire::Fault> faults;
  const auto& held = record.fold.exam.findings;
  const bool any = held && std::any_of(held->begin(), held->end(), [](const model::Finding& one) { return one.item.text == "body.limb_level"; });
  if (!any || context.caller.scope == Scope::kiosk) {
    return faults;
  }
  const ExamAtHand stands(context, record);
  for (const AtPath& one : observations) {
    const model::Item* item = context.edition->item(one.observation->item);
    if (item == nullptr || one.checked || std::holds_alternative<model::NotDone>(one.observation->value)) {
      continue;
    }
    const auto gone = interpret::not_applicable(stands.view(), *item, one.observation->side);
    if (gone && gone->why == model::WhyNot::no_limb) {
      faults.emplace_back("finding.contradicts", one.path, "a part that was not taken off, as this exam records of that side");
    }
  }
  return faults;
}

}  // namespace limbledger::service
