#include "core/service/methods/exam/alert.hpp"

#include "core/interpret/alerts/covered.hpp"
#include "core/interpret/step/next_step.hpp"
#include "core/service/methods/exam/watch.hpp"
#include "core/wire/write.hpp"

#include <algorithm>

namespace limbledger::service {

namespace {

[[nodiscard]] const interpret::Alert* alert_named(const interpret::Watched& watched, const AlertHandleParams& params) {
  const auto& all = watched.alerts.alerts;
  const auto found = std::find_if(all.begin(), all.end(), [&](const interpret::Alert& one) { return one.alert == params.alert && one.side == params.side; });
  return found == all.end() ? nullptr : &*found;
}

// Whether it was of class now when it was handled: as the exam stood for who sent it, so that a repeat says the same.
[[nodiscard]] bool was_urgent(Context& context, const ledger::ExamRecord& record, const AlertHandleParams& params, ToJudge judged) {
  if (const auto seen = exam_as_seen(context, params.exam, record, params.seen)) {
    judged.exam = seen->exam;
  }
  judged.known_otherwise.clear();
  const interpret::Watched watched = watch(context, judged, true);
  const interpret::Alert* alert = alert_named(watched, params);
  return alert != nullptr && alert->urgency == interpret::Urgency::now;
}

}  // namespace

Result<AlertHandleResult> alert_handle(Context& context, const AlertHandleParams& params) {
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
  if (params.action.has_value() == params.reason.has_value()) {
    return wire::Fault{"value.all_or_one", "", "exactly one of action and reason"};
  }
  const ToJudge judged = exam_to_judge(context, **record);
  ledger::NewOperation operation =
      operation_for(context, model::as_object(params.exam), ledger::ObjectType::exam, "alert_handled", params.request, params.seen);
  operation.body_json =
      wire::write(model::AlertHandledBody{params.alert, params.side, was_urgent(context, **record, params, judged), params.action, params.reason});
  const auto written = write(context, {operation}, [&]() -> Result<void> {
    if ((*record)->unopened != 0) {
      return wire::Fault{"entry.seal", "/exam", "an exam whose entries all open"};
    }
    if ((*record)->fold.exam.state == model::ExamState::withdrawn) {
      return wire::Fault{"exam.withdrawn", "/exam", "an exam that is not withdrawn"};
    }
    const interpret::Watched watched = watch(context, judged, true);
    if (alert_named(watched, params) == nullptr) {
      return wire::Fault{"alert.unknown", "/alert", "an alert of this exam, with its side"};
    }
    return {};
  });
  if (!written) {
    return written.error();
  }
  const auto now = context.desk->records().exam(params.exam);
  if (!now) {
    return now.error();
  }
  AlertHandleResult result;
  const interpret::Watched watched = watch(context, exam_to_judge(context, **now), true);
  if (const interpret::Alert* alert = alert_named(watched, params)) {
    std::vector<interpret::Alert> one{*alert};
    add_alert_texts((*now)->fold.exam, *sentences, *context.edition, one);
    result.alert = std::move(one.front());
  } else {
    result.alert.alert = params.alert;  // a repeat, after it was corrected away
    result.alert.side = params.side;
    result.alert.state = interpret::AlertState::withdrawn_by_correction;
  }
  result.revision = written->revision;
  if (written->repeat) {
    result.repeat = true;
  }
  return result;
}

Result<StepSuggestResult> step_suggest(Context& context, const StepSuggestParams& params) {
  const auto sentences = Sentences::in(params.language);
  if (!sentences) {
    return sentences.error();
  }
  const auto record = exam_to_read(context, params.exam);
  if (!record) {
    return record.error();
  }
  const ToJudge judged = exam_to_judge(context, **record);
  const interpret::View view(judged.exam, judged.person, *context.edition, judged.as_of);
  const interpret::Watched watched = interpret::watch(view);
  StepSuggestResult result;
  const std::optional<std::int64_t> seconds = params.minutes ? std::optional(params.minutes->steps * 60) : std::nullopt;
  if (auto step = interpret::next_step(view, watched.flags, watched.rules, watched.concerns, seconds)) {
    result.steps.push_back(std::move(*step));
  } else {
    const interpret::Covered covered = interpret::covered(*context.edition, view.exam().complaint);
    const bool nothing_speaks = !covered.rule && !covered.dangers;
    const bool planned = view.exam().plan && !view.exam().plan->empty();
    if (planned || nothing_speaks) {
      result.message = model::MessageId{planned ? "msg.step.plan_is_set" : "msg.step.not_covered"};
    } else {
      result.message = interpret::why_no_step(view, watched.flags, watched.concerns);
    }
    if (sentences->wanted()) {
      result.text = sentences->whole(sentences->words().say(result.message->text) + ".");
    }
  }
  add_step_texts(judged.exam, *sentences, *context.edition, result.steps);
  const model::Sequence* sequence = context.edition->sequence(view.exam().complaint);
  for (const model::SequenceStep& one : sequence != nullptr ? sequence->steps : std::vector<model::SequenceStep>{}) {
    const model::Item* item = context.edition->item(one.item);
    for (const model::Side side : item != nullptr ? item->sides : std::vector<model::Side>{}) {
      if (const auto by = interpret::withheld(*item, side, watched.concerns, watched.flags)) {
        result.withheld.push_back({item->item, side, by->by, by->until});
        if (sentences->wanted()) {
          const report::Words& words = sentences->words();
          result.withheld.back().text = sentences->whole(item_of_side(words, *context.edition, item->item, side) + ": " + withheld_text(words, *context.edition, by->by));
        }
      }
    }
  }
  return result;
}

}  // namespace limbledger::service
