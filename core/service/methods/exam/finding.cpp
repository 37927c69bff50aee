#include "core/service/methods/exam/finding.hpp"

#include "core/interpret/after/private_remarks.hpp"
#include "core/ledger/log/log.hpp"
#include "core/model/check.hpp"
#include "core/service/fault_texts.hpp"
#include "core/service/methods/clinic/settled.hpp"
#include "core/service/methods/exam/spread.hpp"
#include "core/service/methods/exam/watch.hpp"
#include "core/service/methods/people/dates.hpp"
#include "core/service/methods/exam/told.hpp"
#include "core/service/methods/say/texts.hpp"
#include "core/wire/parse.hpp"
#include "core/wire/write.hpp"

#include <algorithm>
#include <iterator>
#include <span>

namespace limbledger::service {

namespace {

// What one call would write, with where each part came from.
struct Planned {
  model::Observation observation;
  const NewFinding* from = nullptr;
  std::size_t position = 0;  // in the call
};

[[nodiscard]] std::string path_of(std::size_t position) { return "/findings" + wire::pointer_step(position); }

void check_all(Context& context, const std::vector<NewFinding>& findings, std::vector<Planned>& planned, std::vector<wire::Fault>& faults) {
  const model::CatalogueView catalogue = context.edition->catalogue();
  for (std::size_t i = 0; i < findings.size(); ++i) {
    std::vector<std::string> confirmed;
    for (const wire::Name& code : findings[i].confirmed.value_or(std::vector<wire::Name>{})) {
      confirmed.push_back(code.text);
    }
    model::Observation observation = observation_of(findings[i]);
    if (context.caller.scope == Scope::kiosk) {
      observation.origin = model::Origin::self_reported;  // until the examiner takes it over
      if (findings[i].examiner) {
        faults.emplace_back("token.scope", path_of(i) + "/examiner", "no examiner: it is the person's own word");
      }
      if (const model::Item* item = context.edition->item(findings[i].item); item != nullptr && !is_told(*context.edition, *item)) {
        faults.emplace_back("item.hands_on", path_of(i) + "/item", "an item of the kiosk's form");
        continue;
      }
    }
    model::Checked checked = model::check(observation, catalogue, confirmed, path_of(i));
    if (auto apart = spread_fault(*context.edition, observation, confirmed, path_of(i))) {
      checked.faults.push_back(std::move(*apart));
    }
    for (model::Observation& one : checked.observations) {
      planned.push_back({std::move(one), &findings[i], i});
    }
    for (wire::Fault& fault : checked.faults) {
      faults.push_back(std::move(fault));
    }
    if (findings[i].examined_at) {
      DateCheck dates(today_of(context), findings[i].confirmed);
      dates.performed(*findings[i].examined_at, std::nullopt, path_of(i) + "/examined_at");
      faults.insert(faults.end(), dates.faults().begin(), dates.faults().end());
    }
  }
}

// The finding whose entries are corrected; a fault when they are not all of one finding of this exam.
[[nodiscard]] Result<std::optional<model::FindingId>> corrected(const ledger::ExamFold& fold, const Planned& plan) {
  std::optional<model::FindingId> id;
  for (std::size_t i = 0; i < plan.from->replaces.size(); ++i) {
    const auto entry = std::find_if(fold.history.begin(), fold.history.end(),
                                    [&](const model::Finding& finding) { return finding.entry == plan.from->replaces[i]; });
    const std::string path = path_of(plan.position) + "/replaces" + wire::pointer_step(i);
    if (entry == fold.history.end() || entry->item != plan.observation.item) {
      if (plan.from->replaces.size() > 1 && entry != fold.history.end()) {
        continue;  // the other end of an arc is corrected by its own part
      }
      return wire::Fault{"finding.unknown", path, "an entry of this item in this exam"};
    }
    if (entry->marks && std::find(entry->marks->begin(), entry->marks->end(), model::Word{"newer_parts"}) != entry->marks->end()) {
      return wire::Fault{"format.newer", path, "an entry that this edition can write whole"};
    }
    if (id && *id != *entry->finding) {
      return wire::Fault{"finding.several", path, "entries of one finding"};
    }
    id = entry->finding;
  }
  return id;
}

[[nodiscard]] std::vector<model::EntryId> replaced_by(const ledger::ExamFold& fold, const Planned& plan) {
  std::vector<model::EntryId> out;
  for (const model::EntryId& entry : plan.from->replaces) {
    const bool same_item = std::any_of(fold.history.begin(), fold.history.end(), [&](const model::Finding& finding) {
      return finding.entry == entry && finding.item == plan.observation.item;
    });
    if (same_item) {
      out.push_back(entry);
    }
  }
  return out;
}

// Whether one of the replaced entries is an earlier or the present value of that finding.
[[nodiscard]] bool corrects(const ledger::ExamFold& fold, const std::vector<model::EntryId>& replaces, const model::FindingId& finding) {
  return std::any_of(fold.history.begin(), fold.history.end(), [&](const model::Finding& entry) {
    return entry.finding == finding && std::find(replaces.begin(), replaces.end(), *entry.entry) != replaces.end();
  });
}

// Of one place the writer must have been shown what stands beside the value that is corrected; what two did not know of each other is
// settled by nobody's correction.
class Slots {
 public:
  Slots(const ledger::ExamRecord& record, const std::vector<model::EntryId>& seen) : fold_(record.fold), graph_(record.operations), seen_(graph_.closure(seen)) {}

  // A filled place that the writer did not name is answered with all its values, whatever came in behind the open form.
  [[nodiscard]] Result<void> check(const std::vector<Planned>& planned) const {
    for (std::size_t i = 0; i < planned.size(); ++i) {
      const Planned& plan = planned[i];
      const bool beside = plan.from->beside.value_or(false);
      if (auto free = check_held(plan, beside); !free) {
        return free;
      }
      if (beside) {
        continue;
      }
      const auto same_place = [&](const Planned& other) {
        const bool correct_two = !plan.from->replaces.empty() && !other.from->replaces.empty() && plan.from->replaces != other.from->replaces;
        return other.observation.item == plan.observation.item && other.observation.side == plan.observation.side && !correct_two;
      };
      if (std::any_of(planned.begin(), planned.begin() + static_cast<std::ptrdiff_t>(i), same_place)) {
        return wire::Fault{"finding.stale", path_of(plan.position), "beside, for a second finding of one place in one call"};
      }
    }
    return {};
  }

 private:
  [[nodiscard]] bool was_shown(const model::EntryId& entry) const {
    const auto at = graph_.find(entry);
    return at && seen_[*at];
  }
  // Beside what stands, one that corrects names the present value of its own finding all the same.
  [[nodiscard]] Result<void> check_held(const Planned& plan, bool beside) const {
    const std::vector<model::EntryId> replaces = replaced_by(fold_, plan);
    if (beside && replaces.empty()) {
      return {};
    }
    std::vector<const model::Finding*> others;  // of this place, and of the finding that is corrected
    std::vector<const model::Finding*> named;
    bool shown = true;
    for (const model::Finding& held : fold_.exam.findings ? std::span<const model::Finding>(*fold_.exam.findings) : std::span<const model::Finding>()) {
      const bool same_finding = corrects(fold_, replaces, *held.finding);
      if (!same_finding && !(held.item == plan.observation.item && held.side == plan.observation.side)) {
        continue;
      }
      if (std::find(replaces.begin(), replaces.end(), *held.entry) != replaces.end()) {
        named.push_back(&held);
      } else {
        others.push_back(&held);
        shown = shown && !same_finding && (beside || (held.standing == model::Standing::current && was_shown(*held.entry)));
      }
    }
    if (others.empty() || (shown && !named.empty())) {
      return {};
    }
    wire::Refusal refusal(wire::Fault{"finding.stale", path_of(plan.position), "replaces or beside", others.front()->entry->to_text()});
    refusal.held_json = wire::write(*others.front());
    others.insert(others.end(), named.begin(), named.end());
    std::string also;
    for (std::size_t i = 1; i < others.size(); ++i) {
      also += (also.empty() ? "[" : ",") + wire::write(*others[i]);
    }
    if (!also.empty()) {
      refusal.held_also_json = also + "]";
    }
    refusal.sent_json = wire::write(plan.observation);
    return refusal;
  }
  const ledger::ExamFold& fold_;
  ledger::Graph graph_;
  std::vector<bool> seen_;
};

// A kiosk changes what was reported at a kiosk, never what an examiner found.
[[nodiscard]] Result<void> kiosk_may_change(const Context& context, const ledger::ExamFold& fold, const model::EntryId& entry) {
  const auto held = std::find_if(fold.history.begin(), fold.history.end(), [&](const model::Finding& one) { return one.entry == entry; });
  if (context.caller.scope == Scope::kiosk && held != fold.history.end() && !is_answered_there(*held)) {
    return wire::Fault{"exam.not_yours", "/findings", "an answer given at the kiosk"};
  }
  return {};
}

[[nodiscard]] CheckedFault to_row(const wire::Fault& fault) {
  const wire::FaultCode* code = wire::find_fault_code(fault.code);
  CheckedFault row{{fault.code}, {fault.path}, std::nullopt, std::nullopt, {code != nullptr ? std::string(code->hint) : std::string()}, std::nullopt};
  if (!fault.text.empty()) {
    row.text = wire::LongText{fault.text};
  }
  if (!fault.expected.empty()) {
    row.expected = wire::Remark{fault.expected};
  }
  if (!fault.got.empty()) {
    row.got = wire::Remark{fault.got};
  }
  return row;
}

[[nodiscard]] std::vector<AtPath> at_paths(const std::vector<Planned>& planned) {
  std::vector<AtPath> out;
  for (const Planned& plan : planned) {
    // A correction was asked about when it was first recorded.
    if (plan.from->replaces.empty()) {
      const auto& confirmed = plan.from->confirmed;
      const bool checked = confirmed && std::find(confirmed->begin(), confirmed->end(), wire::Name{"finding.contradicts"}) != confirmed->end();
      out.push_back({&plan.observation, path_of(plan.position), checked});
    }
  }
  return out;
}

// One who writes over values that stand against each other decides between them, as conflict.settle does.
[[nodiscard]] Result<void> check_decides_no_alert(Context& context, const ledger::ExamRecord& record, const std::vector<Planned>& planned) {
  std::optional<ToJudge> now;
  for (const Planned& plan : planned) {
    const std::vector<model::EntryId> replaces = replaced_by(record.fold, plan);
    const bool decides = record.fold.exam.findings && std::any_of(record.fold.exam.findings->begin(), record.fold.exam.findings->end(), [&](const model::Finding& one) {
      return one.standing == model::Standing::in_conflict && std::find(replaces.begin(), replaces.end(), *one.entry) != replaces.end();
    });
    if (!decides) {
      continue;
    }
    now = now ? std::move(now) : exam_to_judge(context, record);
    if (auto ends = check_ends_no_alert(context, *now, without(*now, replaces, {plan.observation}), plan.from->confirmed, path_of(plan.position)); !ends) {
      return ends;
    }
  }
  return {};
}

// What is asked back by what the exam holds already.
[[nodiscard]] std::vector<wire::Fault> asked_by_exam(Context& context, const ledger::ExamRecord& record, const std::vector<Planned>& planned) {
  const std::vector<AtPath> paths = at_paths(planned);
  std::vector<wire::Fault> faults = withheld_faults(context, record, paths);
  std::vector<wire::Fault> absent = absent_part_faults(context, record, paths);
  faults.insert(faults.end(), std::make_move_iterator(absent.begin()), std::make_move_iterator(absent.end()));
  return faults;
}

[[nodiscard]] bool is_question(const wire::Fault& fault) {
  const wire::FaultCode* code = wire::find_fault_code(fault.code);
  return code != nullptr && code->number == wire::FaultClass::asked_back;
}

}  // namespace

std::vector<wire::Fault> faults_of_what_is_not_kept(const NewFinding& finding, const model::ExaminerId& signer, const std::string& path) {
  std::vector<wire::Fault> faults;
  const auto refuse = [&](bool sent, std::string_view member, std::string_view expected) {
    if (sent) {
      faults.emplace_back("finding.not_kept", path + "/" + std::string(member), std::string(expected));
    }
  };
  refuse(finding.examiner && *finding.examiner != signer, "examiner", "no examiner, or the one who signs");
  refuse(finding.examined_at.has_value(), "examined_at", "no time of its own");
  refuse(!finding.replaces.empty(), "replaces", "nothing: what was signed stays as it is");
  refuse(finding.beside.value_or(false), "beside", "nothing: it stands beside by itself");
  return faults;
}

model::Observation observation_of(const NewFinding& finding) {
  return {finding.item, finding.side,    finding.value,  finding.instrument, finding.position, finding.end_feel,
          finding.pain, finding.quality, finding.origin, finding.despite,    finding.remark};
}

Result<FindingRecordResult> finding_record(Context& context, const FindingRecordParams& params) {
  const auto sentences = Sentences::in(params.language);
  if (!sentences) {
    return sentences.error();
  }
  const auto record = exam_to_read(context, params.exam);
  if (!record) {
    return record.error();
  }
  if (params.findings.empty() || params.findings.size() > findings_a_call_max) {
    return wire::Fault("limit.items", "/findings", "1 to 100 findings", std::to_string(params.findings.size())).with("items", std::to_string(findings_a_call_max));
  }
  if (auto seen = check_seen(params.seen, (*record)->operations); !seen) {
    return seen.error();
  }
  std::vector<Planned> planned;
  std::vector<wire::Fault> faults;
  check_all(context, params.findings, planned, faults);
  if (!faults.empty()) {
    return wire::Refusal(std::move(faults));
  }
  const ledger::ExamFold& fold = (*record)->fold;
  std::vector<ledger::NewOperation> operations;
  std::vector<model::FindingId> ids;
  for (std::size_t i = 0; i < planned.size(); ++i) {
    const auto known = corrected(fold, planned[i]);
    if (!known) {
      return known.error();
    }
    const model::ObjectId fresh =
        context.desk->log().object_for(ledger::ObjectType::finding, params.request, static_cast<std::uint16_t>(i));
    ids.push_back(*known ? **known : model::FindingId{fresh.bytes});
    ledger::NewOperation operation =
        operation_for(context, model::as_object(params.exam), ledger::ObjectType::exam, "finding", params.request, params.seen);
    operation.replaces = replaced_by(fold, planned[i]);
    operation.examined_at = planned[i].from->examined_at;
    operation.body_json = wire::write(model::FindingBody{ids.back(), planned[i].observation, planned[i].from->examiner});
    operations.push_back(std::move(operation));
  }
  const auto written = write(context, std::move(operations), [&]() -> Result<void> {
    if (auto open = exam_takes_changes(**record); !open) {
      return open;
    }
    if (auto own = exam_takes_from_here(context, **record); !own) {
      return own;
    }
    for (const Planned& plan : planned) {
      if (plan.from->examiner && !context.desk->log().is_examiner(*plan.from->examiner)) {
        return wire::Fault{"examiner.unknown", path_of(plan.position) + "/examiner", "an examiner of this clinic"};
      }
      const bool waits = fold.exam.supervised.value_or(false) && fold.exam.examiner;
      if (waits && plan.from->examiner && *plan.from->examiner != *fold.exam.examiner) {
        return wire::Fault{"exam.not_closed", path_of(plan.position) + "/examiner", "the exam's own examiner"};
      }
      for (const model::EntryId& entry : plan.from->replaces) {
        if (auto own = kiosk_may_change(context, fold, entry); !own) {
          return own;
        }
      }
    }
    if (auto free = Slots(**record, params.seen).check(planned); !free) {
      return free;
    }
    auto asked = asked_by_exam(context, **record, planned);
    return asked.empty() ? check_decides_no_alert(context, **record, planned) : Result<void>(wire::Refusal(std::move(asked)));
  });
  if (!written) {
    return written.error();
  }
  FindingRecordResult result;
  for (std::size_t i = 0; i < ids.size(); ++i) {
    result.recorded.push_back({ids[i], written->entries[i]});
  }
  result.revision = written->revision;
  if (written->repeat) {
    result.repeat = true;
  }
  const bool dangerous = std::any_of(planned.begin(), planned.end(), [&](const Planned& plan) {
    return interpret::calls_staff(*context.edition, plan.observation.item, plan.observation.value);
  });
  if (context.caller.scope == Scope::kiosk && dangerous) {
    result.tell_staff = true;
    context.staff_called = params.exam;
  }
  auto alerts = alerts_of(context, params.exam, *sentences);
  if (!alerts) {
    return alerts.error();
  }
  result.alerts = std::move(*alerts);
  if (const auto after = context.desk->records().exam(params.exam)) {
    result.stale_letters = stale_letters(context, (*after)->fold.exam);
  }
  return result;
}

Result<FindingCheckResult> finding_check(Context& context, const FindingCheckParams& params) {
  if (params.exam) {
    if (const auto record = exam_to_read(context, *params.exam); !record) {
      return record.error();
    }
  }
  if (params.findings.empty() || params.findings.size() > findings_a_call_max) {
    return wire::Fault("limit.items", "/findings", "1 to 100 findings", std::to_string(params.findings.size())).with("items", std::to_string(findings_a_call_max));
  }
  const auto words = words_if_asked(params.language);
  if (!words) {
    return words.error();
  }
  std::vector<Planned> planned;
  std::vector<wire::Fault> faults;
  check_all(context, params.findings, planned, faults);
  FindingCheckResult result;
  add_fault_texts(*words, *context.edition, faults, false);
  for (const wire::Fault& fault : faults) {
    (is_question(fault) ? result.confirm : result.faults).push_back(to_row(fault));
  }
  if (params.exam && result.faults.empty()) {
    const auto record = exam_to_read(context, *params.exam);
    if (!record) {
      return record.error();
    }
    std::vector<wire::Fault> asked = asked_by_exam(context, **record, planned);
    add_fault_texts(*words, *context.edition, asked, false);
    for (const wire::Fault& fault : asked) {
      result.confirm.push_back(to_row(fault));
    }
  }
  return result;
}

Result<FindingWithdrawResult> finding_withdraw(Context& context, const FindingWithdrawParams& params) {
  const auto sentences = Sentences::in(params.language);
  if (!sentences) {
    return sentences.error();
  }
  const auto record = exam_to_read(context, params.exam);
  if (!record) {
    return record.error();
  }
  if (auto seen = check_seen(params.seen, (*record)->operations); !seen) {
    return seen.error();
  }
  const ledger::ExamFold& fold = (*record)->fold;
  const auto heads = fold.finding_heads.find(params.finding);
  ledger::NewOperation operation =
      operation_for(context, model::as_object(params.exam), ledger::ObjectType::exam, "withdraw", params.request, params.seen);
  if (heads != fold.finding_heads.end()) {
    operation.replaces = seen_of(heads->second, params.seen, (*record)->operations);
  }
  operation.body_json = wire::write(model::WithdrawBody{params.finding, params.reason});
  const auto written = write(context, {operation}, [&]() -> Result<void> {
    if (heads == fold.finding_heads.end()) {
      return wire::Fault{"finding.unknown", "/finding", "a finding of this exam that stands"};
    }
    if (auto open = exam_takes_changes(**record); !open) {
      return open;
    }
    if (auto own = exam_takes_from_here(context, **record); !own) {
      return own;
    }
    for (const model::EntryId& entry : heads->second) {
      if (auto own = kiosk_may_change(context, fold, entry); !own) {
        return own;
      }
    }
    if (auto free = nothing_came_since(heads->second, operation.replaces); !free) {
      return free;
    }
    const ToJudge now = exam_to_judge(context, **record);
    return check_ends_no_alert(context, now, without(now, {heads->second.begin(), heads->second.end()}), params.confirmed, "/finding");
  });
  if (!written) {
    return written.error();
  }
  FindingWithdrawResult result{params.finding, written->entries.front(), written->revision, std::nullopt, {}};
  if (written->repeat) {
    result.repeat = true;
  }
  auto alerts = alerts_of(context, params.exam, *sentences);
  if (!alerts) {
    return alerts.error();
  }
  result.alerts = std::move(*alerts);
  if (const auto after = context.desk->records().exam(params.exam)) {
    result.stale_letters = stale_letters(context, (*after)->fold.exam);
  }
  return result;
}

Result<FindingHistoryResult> finding_history(Context& context, const FindingHistoryParams& params) {
  const auto words = words_in(params.language);
  if (!words) {
    return words.error();
  }
  const auto record = exam_to_read(context, params.exam);
  if (!record) {
    return record.error();
  }
  FindingHistoryResult result;
  if (!sees_protected(context) && is_protected(context, params.item)) {
    return result;  // as of an item that nothing was recorded for
  }
  const std::vector<model::ItemId> apart = sees_protected(context) ? std::vector<model::ItemId>{} : remarks_kept_apart(context, (*record)->fold.exam);
  for (const model::Finding& finding : (*record)->fold.history) {
    if (finding.item == params.item && (!params.side || *params.side == finding.side)) {
      result.findings.push_back(finding);
      interpret::take_out_remark(apart, result.findings.back());
      if (*words != nullptr) {
        add_settled_texts(context, **words, (*record)->fold.exam, result.findings.back());
      }
    }
  }
  return result;
}

}  // namespace limbledger::service
