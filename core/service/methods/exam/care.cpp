#include "core/service/methods/exam/care.hpp"

#include "core/interpret/missing.hpp"
#include "core/ledger/log/log.hpp"
#include "core/model/check.hpp"
#include "core/service/methods/exam/watch.hpp"
#include "core/service/methods/people/dates.hpp"
#include "core/service/methods/people/likeness.hpp"
#include "core/wire/parse.hpp"
#include "core/wire/write.hpp"

#include <algorithm>

namespace limbledger::service {

namespace {

// The exam, ready to take an operation that was based on `seen`.
[[nodiscard]] Result<const ledger::ExamRecord*> exam_to_write(Context& context, const model::ExamId& exam, const std::vector<model::EntryId>& seen) {
  const auto record = exam_to_read(context, exam);
  if (!record) {
    return record.error();
  }
  if (auto known = check_seen(seen, (*record)->operations); !known) {
    return known.error();
  }
  return *record;
}

[[nodiscard]] ledger::NewOperation exam_operation(Context& context, const model::ExamId& exam, std::string op, const model::RequestId& request,
                                                  const std::vector<model::EntryId>& seen) {
  return operation_for(context, model::as_object(exam), ledger::ObjectType::exam, std::move(op), request, seen);
}

// What the form left out stays as the writer was shown it.
template <class T>
[[nodiscard]] std::optional<T> kept(const std::optional<T>& sent, const std::optional<T>& held) {
  return sent ? sent : held;
}

[[nodiscard]] model::Consent merged(const model::Consent& sent, const model::Consent& held) {
  return {kept(sent.examine, held.examine), kept(sent.record, held.record), kept(sent.send, held.send), kept(sent.by, held.by),
          kept(sent.capacity, held.capacity)};
}

[[nodiscard]] Result<void> check_plan_dates(Context& context, const ledger::ExamRecord& record, const std::vector<model::PlanItem>& items,
                                            const std::optional<std::vector<wire::Name>>& confirmed) {
  DateCheck dates(today_of(context, record.fold.exam.offset_min), confirmed);
  for (std::size_t i = 0; i < items.size(); ++i) {
    const std::string path = "/plan_items" + wire::pointer_step(i);
    const model::PlanItem& item = items[i];
    if (item.by) {
      dates.due(*item.by, record, path + "/by");
    }
    if (item.became_on) {
      dates.happened(*item.became_on, record, path + "/became_on");
    }
  }
  return dates.result();
}

struct Left {
  std::vector<model::Word> missing;  // one line each to answer or to leave; signing is never refused for them
  bool protected_note = false;       // of what stands there nothing was recorded; no list says so, so the signer is asked
};

[[nodiscard]] Left what_is_missing(Context& context, const ledger::ExamRecord& record) {
  const model::Exam& exam = record.fold.exam;
  Left left;
  const auto add = [&](bool absent, std::string_view word) {
    if (absent) {
      left.missing.push_back({std::string(word)});
    }
  };
  add(!exam.person, "person");
  add(!exam.consent || exam.consent->examine != model::ConsentWord::yes || exam.consent->record != model::ConsentWord::yes, "consent");
  add(!exam.findings || exam.findings->empty(), "findings");
  add(!exam.impression, "impression");
  add(exam.conflicts.has_value(), "conflicts");
  add(record.unopened != 0, "damaged_entries");
  const ToJudge judged = exam_to_judge(context, record);
  const interpret::View view(judged.exam, judged.person, *context.edition, judged.as_of);
  add(!view.examined_on(), "day");
  add(!interpret::missing_items(view).empty(), "minimum_set");
  const model::Sequence* sequence = context.edition->sequence(judged.exam.complaint);
  add(sequence != nullptr && !exam.transfer && interpret::left_for_time(view, *sequence), "not_examined");
  const interpret::Watched watched = watch(context, judged, true);
  const auto& alerts = watched.alerts.alerts;
  add(std::any_of(alerts.begin(), alerts.end(), [](const interpret::Alert& one) { return one.state == interpret::AlertState::raised; }), "alerts");
  left.protected_note = std::any_of(alerts.begin(), alerts.end(), is_protected_unanswered);
  return left;
}

// Its words tell no more than the line "See protected note" on the examiner's own screen.
[[nodiscard]] Result<void> ask_for_protected_note(const ExamSignParams& params) {
  constexpr std::string_view code = "note.protected";
  if (confirms(params.confirmed, code)) {
    return {};
  }
  return wire::Fault{code, "/exam"};
}

// A no that becomes a yes is the person's to say: a slip, or the word of somebody else, would send a record on against their will.
[[nodiscard]] Result<void> ask_of_turned_no(const std::optional<model::Consent>& held, const std::optional<model::Consent>& now, const Confirmed& confirmed) {
  constexpr std::string_view code = "consent.turned";
  const auto turned = [](const std::optional<model::ConsentWord>& was, const std::optional<model::ConsentWord>& is) {
    return was && *was != model::ConsentWord::yes && is == model::ConsentWord::yes;
  };
  if (!held || !now || confirms(confirmed, code)) {
    return {};
  }
  for (const auto& [was, is, path] : {std::tuple(held->examine, now->examine, "/consent/examine"), std::tuple(held->record, now->record, "/consent/record"), std::tuple(held->send, now->send, "/consent/send")}) {
    if (turned(was, is)) {
      return wire::Fault{code, path, "no, as the person said before"};
    }
  }
  return {};
}

}  // namespace

std::vector<model::Word> what_is_left(Context& context, const model::ExamId& exam) {
  const auto record = context.desk->records().exam(exam);
  return record ? what_is_missing(context, **record).missing : std::vector<model::Word>{};
}

Result<ExamReply> consent_record(Context& context, const ConsentRecordParams& params) {
  const auto sentences = Sentences::in(params.language);
  if (!sentences) {
    return sentences.error();
  }
  const auto record = exam_to_write(context, params.exam, params.seen);
  if (!record) {
    return record.error();
  }
  const auto shown = exam_as_seen(context, params.exam, **record, params.seen);
  ledger::NewOperation operation = exam_operation(context, params.exam, "consent", params.request, params.seen);
  operation.replaces = seen_of((*record)->fold.consent_heads, params.seen, (*record)->operations);
  model::ConsentBody body{params.consent, params.company, params.who_spoke, params.interpreter, std::nullopt};
  if (shown && !shown->consent_heads.empty()) {
    const model::Exam& held = shown->exam;
    if (params.consent && held.consent) {
      body.consent = merged(*params.consent, *held.consent);
    }
    body.consent = kept(body.consent, held.consent);
    body.company = kept(body.company, held.company);
    body.who_spoke = kept(body.who_spoke, held.who_spoke);
    body.interpreter = kept(body.interpreter, held.interpreter);
  }
  body.reason = params.reason;
  operation.body_json = wire::write(body);
  const auto written = write(context, {operation}, [&]() -> Result<void> {
    if (auto open = exam_takes_changes(**record); !open) {
      return open;
    }
    // Between two records of what a person allowed, one of which may allow more than the person did.
    if (stands_in_conflict((*record)->fold.exam, "consent") && operation.replaces.size() > 1 && (!params.reason || params.reason->text.empty())) {
      return wire::Fault{"value.empty", "/reason", "how it is known what the person allows: two records of it stand"};
    }
    if (auto asked = ask_of_turned_no((*record)->fold.exam.consent, body.consent, params.confirmed); !asked) {
      return asked;
    }
    if (!params.who_spoke) {
      return {};
    }
    const ToJudge now = exam_to_judge(context, **record);
    ToJudge then = now;
    then.exam.who_spoke = body.who_spoke;
    return check_ends_no_alert(context, now, then, params.confirmed, "/who_spoke");
  });
  return written ? judged_reply(context, params.exam, *written, *sentences) : Result<ExamReply>(written.error());
}

Result<ExamReply> impression_record(Context& context, const ImpressionRecordParams& params) {
  const auto record = exam_to_write(context, params.exam, params.seen);
  if (!record) {
    return record.error();
  }
  ledger::NewOperation operation = exam_operation(context, params.exam, "impression", params.request, params.seen);
  operation.replaces = params.replaces;
  operation.body_json = wire::write(model::ImpressionBody{params.impression, params.reason});
  const auto written = write(context, {operation}, [&]() -> Result<void> {
    if (auto open = exam_takes_changes(**record); !open) {
      return open;
    }
    if (auto own = exam_takes_from_here(context, **record); !own) {
      return own;
    }
    if (auto free = register_is_free((*record)->fold.impression_heads, params.replaces, "/replaces"); !free) {
      return free;
    }
    // What one examiner judged is not taken: the other reads why.
    if (stands_in_conflict((*record)->fold.exam, "impression") && (!params.reason || params.reason->text.empty())) {
      return wire::Fault{"value.empty", "/reason", "why this one holds: two impressions stand, and one is not taken"};
    }
    return {};
  });
  return written ? exam_reply(context, params.exam, *written) : Result<ExamReply>(written.error());
}

Result<PlanRecordResult> plan_record(Context& context, const PlanRecordParams& params) {
  const auto record = exam_to_write(context, params.exam, params.seen);
  if (!record) {
    return record.error();
  }
  if (params.plan_items.empty()) {
    return wire::Fault{"params.missing", "/plan_items", "at least one plan item"};
  }
  const ledger::ExamFold& fold = (*record)->fold;
  std::vector<ledger::NewOperation> operations;
  for (std::size_t i = 0; i < params.plan_items.size(); ++i) {
    model::PlanItem item = params.plan_items[i];
    ledger::NewOperation operation = exam_operation(context, params.exam, "plan", params.request, params.seen);
    if (!item.plan_item) {
      item.plan_item = model::PlanItemId{
          context.desk->log().object_for(ledger::ObjectType::plan_item, params.request, static_cast<std::uint16_t>(i)).bytes};
    } else {
      const auto heads = fold.plan_heads.find(*item.plan_item);
      if (heads == fold.plan_heads.end()) {
        return wire::Fault{"plan.unknown", "/plan_items" + wire::pointer_step(i) + "/plan_item", "a plan item of this exam"};
      }
      operation.replaces = seen_of(heads->second, params.seen, (*record)->operations);
    }
    operation.body_json = wire::write(model::PlanBody{item});
    operations.push_back(std::move(operation));
  }
  const auto written = write(context, std::move(operations), [&]() -> Result<void> {
    if (auto open = exam_takes_changes(**record); !open) {
      return open;
    }
    return check_plan_dates(context, **record, params.plan_items, params.confirmed);
  });
  if (!written) {
    return written.error();
  }
  const auto reply = exam_reply(context, params.exam, *written);
  if (!reply) {
    return reply.error();
  }
  PlanRecordResult result{reply->exam, reply->revision, reply->repeat, {}};
  for (const model::PlanItem& item : reply->exam.plan.value_or(std::vector<model::PlanItem>{})) {
    if (!item.became) {
      result.open_loops.push_back(item);
    }
  }
  return result;
}

Result<ExamSignResult> exam_sign(Context& context, const ExamSignParams& params) {
  const auto words = words_if_asked(params.language);
  if (!words) {
    return words.error();
  }
  const auto record = exam_to_write(context, params.exam, params.seen);
  if (!record) {
    return record.error();
  }
  ledger::NewOperation operation = exam_operation(context, params.exam, "sign", params.request, params.seen);
  operation.sign = true;
  model::SignBody body{params.read_aloud, params.identified, params.shown, std::nullopt};
  const bool repeated = context.desk->log().index().requests.contains(params.request);
  const Left left = repeated ? Left{(*record)->fold.exam.incomplete.value_or(std::vector<model::Word>{})} : what_is_missing(context, **record);
  const std::vector<model::Word>& missing = left.missing;
  if (!missing.empty()) {
    body.incomplete = missing;
  }
  operation.body_json = wire::write(body);
  const auto written = write(context, {operation}, [&]() -> Result<void> {
    if ((*record)->fold.unread != 0) {
      return wire::Fault{"format.newer", "/exam", "an exam that this edition can read whole"};
    }
    if (auto open = exam_takes_changes(**record); !open) {
      return open;
    }
    if (auto own = exam_takes_from_here(context, **record); !own) {
      return own;
    }
    if (const auto& person = (*record)->fold.exam.person) {
      const auto known = context.desk->records().person(*person);
      if (!known) {
        return known.error();
      }
      if (auto named = check_identified(params.identified, (*known)->fold.person, params.confirmed); !named) {
        return named;
      }
    }
    // A signature covers what its signer was shown; what has come since is shown first.
    const std::vector<model::EntryId> heads = (*record)->fold.exam.revision.value_or(std::vector<model::EntryId>{});
    if (auto same = nothing_came_since(heads, seen_of(heads, params.seen, (*record)->operations)); !same) {
      return same;
    }
    return left.protected_note ? ask_for_protected_note(params) : Result<void>();
  });
  if (!written) {
    return written.error();
  }
  const auto reply = exam_reply(context, params.exam, *written);
  if (!reply) {
    return reply.error();
  }
  if (!reply->exam.signed_) {
    return wire::Fault{"internal.failure", "/exam", "a signature that holds"};
  }
  ExamSignResult result{*reply->exam.signed_, missing, reply->revision, reply->repeat};
  if (*words != nullptr) {
    result.incomplete_text.emplace();
    for (const model::Word& one : missing) {
      result.incomplete_text->push_back({(*words)->say("msg.incomplete." + one.text)});
    }
  }
  return result;
}

namespace {

[[nodiscard]] Result<void> check_day_said(Context& context, const model::Exam& exam, const AddendumRecordParams& params) {
  const auto birth = birth_of(context, exam.person);
  if (!birth) {
    return birth.error();
  }
  DateCheck dates(today_of(context, exam.offset_min), params.confirmed);
  dates.said_on(*params.examined_on, *birth, exam.injured_on, "/examined_on");
  return dates.result();
}

}  // namespace

Result<AddendumRecordResult> addendum_record(Context& context, const AddendumRecordParams& params) {
  const auto sentences = Sentences::in(params.language);
  if (!sentences) {
    return sentences.error();
  }
  const auto record = exam_to_write(context, params.exam, params.seen);
  if (!record) {
    return record.error();
  }
  const bool has_findings = params.findings && !params.findings->empty();
  const bool has_plan = params.plan_items && !params.plan_items->empty();
  // What is corrected is a value as often as a word: a correction may hold both.
  const bool lacks_findings = params.kind == model::AddendumKind::findings && !has_findings;
  const bool holds_nothing = !params.text && !has_findings && !params.examined_on && !has_plan;
  if (lacks_findings || holds_nothing || (params.kind == model::AddendumKind::text && has_findings)) {
    return wire::Fault{"addendum.kind", "/kind", "kind findings: findings; kind text: a text, examined_on or plan_items; kind correction: a text, findings, examined_on or plan_items, also together"};
  }
  model::AddendumBody body{params.kind, params.reason, params.text, std::nullopt, params.examined_on};
  std::vector<wire::Fault> faults;
  for (std::size_t i = 0; has_findings && i < params.findings->size(); ++i) {
    std::vector<std::string> confirmed;
    for (const wire::Name& code : (*params.findings)[i].confirmed.value_or(std::vector<wire::Name>{})) {
      confirmed.push_back(code.text);
    }
    model::Checked checked =
        model::check(observation_of((*params.findings)[i]), context.edition->catalogue(), confirmed, "/findings" + wire::pointer_step(i));
    faults.insert(faults.end(), checked.faults.begin(), checked.faults.end());
    const std::vector<wire::Fault> not_kept = faults_of_what_is_not_kept((*params.findings)[i], context.desk->examiner(), "/findings" + wire::pointer_step(i));
    faults.insert(faults.end(), not_kept.begin(), not_kept.end());
    if (!body.findings) {
      body.findings.emplace();
    }
    body.findings->insert(body.findings->end(), checked.observations.begin(), checked.observations.end());
  }
  if (!faults.empty()) {
    return wire::Refusal(std::move(faults));
  }
  for (std::size_t i = 0; has_plan && i < params.plan_items->size(); ++i) {
    model::PlanItem item = (*params.plan_items)[i];
    if (item.plan_item) {
      return wire::Fault{"plan.unknown", "/plan_items" + wire::pointer_step(i) + "/plan_item", "nothing: a new item; of one that stands plan.follow says what became of it"};
    }
    item.plan_item = model::PlanItemId{context.desk->log().object_for(ledger::ObjectType::plan_item, params.request, static_cast<std::uint16_t>(i)).bytes};
    (body.plan_items ? *body.plan_items : body.plan_items.emplace()).push_back(std::move(item));
  }
  ledger::NewOperation operation = exam_operation(context, params.exam, "addendum", params.request, params.seen);
  operation.sign = true;
  operation.body_json = wire::write(body);
  const auto written = write(context, {operation}, [&]() -> Result<void> {
    // Into a withdrawn exam, only words on what somebody wrote who did not know that it was withdrawn: nothing else could look at that.
    const bool looks_at_unseen = !has_findings && !has_plan && (*record)->fold.exam.state == model::ExamState::withdrawn && !ledger::unseen_marks((*record)->fold, (*record)->operations).empty();
    if ((*record)->fold.exam.state == model::ExamState::withdrawn && !looks_at_unseen) {
      return wire::Fault{"exam.withdrawn", "/exam", "an exam that is not withdrawn; into one that is, only words (kind text, without plan_items) on what somebody wrote who did not know of it"};
    }
    if (!(*record)->fold.exam.signed_ && !looks_at_unseen) {
      return wire::Fault{"exam.not_signed", "/exam", "a signed exam"};
    }
    if (auto days = check_plan_dates(context, **record, body.plan_items.value_or(std::vector<model::PlanItem>{}), params.confirmed); !days) {
      return days;
    }
    return params.examined_on ? check_day_said(context, (*record)->fold.exam, params) : Result<void>();
  });
  if (!written) {
    return written.error();
  }
  const auto reply = exam_reply(context, params.exam, *written);
  if (!reply) {
    return reply.error();
  }
  for (const model::Addendum& addendum : reply->exam.addenda.value_or(std::vector<model::Addendum>{})) {
    if (addendum.entry == written->entries.front()) {
      AddendumRecordResult result{addendum, reply->revision, reply->repeat, reply->stale_letters.value_or(std::vector<model::LetterId>{})};
      if (auto later = call_backs_of(context, params.exam, *sentences); !later.empty()) {
        result.call_backs = std::move(later);
      }
      return result;
    }
  }
  return wire::Fault{"internal.failure", "/exam", "the addendum that was written"};
}

}  // namespace limbledger::service
