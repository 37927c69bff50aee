#include "core/service/methods/exam/form.hpp"

#include "core/interpret/body.hpp"
#include "core/interpret/judged.hpp"
#include "core/interpret/missing.hpp"
#include "core/service/methods/exam/common.hpp"
#include "core/report/text.hpp"
#include "core/service/desk.hpp"
#include "core/service/methods/say/assess.hpp"
#include "core/service/methods/letter/paper.hpp"
#include "core/service/methods/say/form_paper.hpp"
#include "core/service/methods/say/form_texts.hpp"
#include "core/service/methods/exam/told.hpp"

#include <algorithm>

namespace limbledger::service {

namespace {

using model::Side;

// Labels of a form alone, which nobody has read as a clinician yet.
[[nodiscard]] bool is_for_review(const model::Word& language) {
  const auto all = report::languages();
  return std::any_of(all.begin(), all.end(), [&](const report::Language& one) { return one.code == language.text && one.form_alone; });
}

// What this body does not have, and the positions that are not for it.
void ask_body(const interpret::View& view, FormAsk& ask) {
  const interpret::Bodies& bodies = view.bodies();
  if (bodies.open().empty()) {
    return;
  }
  ask.late_pregnancy = bodies.cannot("lie_prone");  // of the states, pregnancy alone
  for (const model::Item& item : view.edition().items()) {
    for (const Side side : item.sides) {
      const auto absent = interpret::not_applicable(view, item, side);
      if (!absent) {
        continue;
      }
      const bool again = !ask.not_applicable.empty() && ask.not_applicable.back().item == item.item && ask.not_applicable.back().because == absent->because;
      if (again) {
        ask.not_applicable.back().sides.push_back(side);
      } else {
        ask.not_applicable.push_back({item.item, {side}, absent->why, absent->because});
      }
    }
  }
  const auto& words = wire::type_of<Cannot>().words;
  for (const Cannot cannot : {Cannot::lie_supine, Cannot::stand, Cannot::walk, Cannot::sit, Cannot::one_limb}) {
    const bool asked = std::find(ask.cannot.begin(), ask.cannot.end(), cannot) != ask.cannot.end();
    if (!asked && bodies.cannot(words[static_cast<std::size_t>(cannot)])) {
      ask.cannot.push_back(cannot);
    }
  }
}

// At a kiosk what the person answered is done; on an examiner's form it is still to be taken over.
[[nodiscard]] FormRecorded recorded_at(interpret::Findings findings, Side side, bool kiosk) {
  FormRecorded recorded;
  recorded.side = side;
  // What an examiner recorded is no question any more; what it was, the person alone does not learn.
  if (kiosk && !std::all_of(findings.begin(), findings.end(), [](const model::Finding* finding) { return is_answered_there(*finding); })) {
    return recorded;
  }
  std::vector<model::FindingId> ids;
  for (const model::Finding* finding : findings) {
    if (finding->finding) {
      ids.push_back(*finding->finding);
    }
    if (const auto* not_done = std::get_if<model::NotDone>(&finding->value)) {
      recorded.not_done = not_done->reason;
    }
    if (finding->standing == model::Standing::in_conflict) {
      recorded.in_conflict = true;
    }
  }
  // A value beside it is what was found.
  if (std::any_of(findings.begin(), findings.end(), [](const model::Finding* finding) { return !std::holds_alternative<model::NotDone>(finding->value); })) {
    recorded.not_done.reset();
  }
  if (!ids.empty()) {
    recorded.findings = std::move(ids);
  }
  if (!kiosk && std::all_of(findings.begin(), findings.end(), [](const model::Finding* finding) { return interpret::awaits_examiner(*finding); })) {
    recorded.to_confirm = true;
  }
  return recorded;
}

// What stands recorded of the steps of a sequence, and of what may stand for them: another item, or the two ends of an arc.
[[nodiscard]] std::vector<RecordedSlot> recorded_slots(const interpret::View& view, bool kiosk) {
  std::vector<RecordedSlot> slots;
  for (const model::Item& item : view.edition().items()) {
    for (const Side side : {Side::left, Side::right, Side::midline}) {
      if (const auto findings = view.at(item, side); !findings.empty()) {
        slots.push_back({&item, recorded_at(findings, side, kiosk)});
        continue;
      }
      if (item.arc && !view.at(item.arc->low.text, side).empty() && !view.at(item.arc->high.text, side).empty()) {
        FormRecorded recorded = recorded_at(view.at(item.arc->low.text, side), side, kiosk);
        recorded.by = item.arc->low;
        slots.push_back({&item, std::move(recorded)});
        continue;
      }
      for (const model::Instead& one : item.instead.value_or(std::vector<model::Instead>{})) {
        if (const auto findings = view.at(one.item.text, side); !findings.empty()) {
          FormRecorded recorded = recorded_at(findings, side, kiosk);
          recorded.by = one.item;
          slots.push_back({&item, std::move(recorded)});
          break;
        }
      }
    }
  }
  return slots;
}

// The age, what is recorded, and what is open, of the exam as it stands.
[[nodiscard]] Result<void> ask_exam(Context& context, const model::ExamId& exam, FormAsk& ask) {
  if (context.desk == nullptr || context.desk->locked()) {
    return wire::Fault{"ledger.locked", "/exam", "an unlocked ledger"};
  }
  const auto record = exam_to_read(context, exam);
  if (!record) {
    return record.error();
  }
  const model::Exam& read = (*record)->fold.exam;
  std::optional<model::Person> person;
  if (read.person) {
    if (const auto known = context.desk->records().person(*read.person)) {
      person = (*known)->fold.person;
    }
  }
  // Only an exam without a time of its own is judged by today.
  const model::PartialDate today = model::date_of({context.desk->world().now().wall_ms}, 0);
  const interpret::View view(read, person, *context.edition, day_of(read, today));
  ask.age = view.age_on_exam();
  ask.age_months = view.age_months_on_exam();
  ask_body(view, ask);
  ask.recorded = recorded_slots(view, context.caller.scope == Scope::kiosk);
  for (const interpret::MissingItem& one : interpret::missing_items(view, *ask.sequence)) {
    if (!ask.told_alone || is_told(*context.edition, *context.edition->item(one.item))) {
      ask.minimum_open.push_back({one.item, one.side});
    }
  }
  // A kiosk asks and examines nothing: no step is withheld there (contract, section 9).
  if (context.caller.scope != Scope::kiosk) {
    interpret::Watched watched = interpret::watch(view);
    ask.open = std::move(watched.concerns);
    ask.flags = std::move(watched.flags);
  }
  return {};
}

}  // namespace

namespace {

[[nodiscard]] bool is_measured(const model::Finding& finding) {
  return !std::holds_alternative<model::NotDone>(finding.value) && !std::holds_alternative<model::Words>(finding.value) &&
         (finding.instrument || std::holds_alternative<model::Angle>(finding.value) || std::holds_alternative<model::Length>(finding.value) ||
          std::holds_alternative<model::Duration>(finding.value) || std::holds_alternative<model::CountValue>(finding.value));
}

// What the reviewed exam measured, in the order of the catalogue.
[[nodiscard]] std::optional<std::vector<MeasuredBefore>> measured_before(Context& context, const model::ExamId& review) {
  const auto record = exam_to_read(context, review);
  if (!record || !(*record)->fold.exam.reviews) {
    return std::nullopt;
  }
  const auto before = context.desk->records().exam(*(*record)->fold.exam.reviews);
  if (!before) {
    return std::nullopt;
  }
  std::vector<MeasuredBefore> out;
  for (const model::Item& item : context.edition->items()) {
    for (const model::Finding& finding : (*before)->fold.exam.findings.value_or(std::vector<model::Finding>{})) {
      const bool hidden = item.protected_.value_or(false) && !sees_protected(context);
      if (finding.item == item.item && finding.standing == model::Standing::current && is_measured(finding) && !hidden) {
        out.push_back({finding.item, finding.side, finding.instrument, finding.position, finding.examined_at});
      }
    }
  }
  return out;
}

[[nodiscard]] Result<FormDescribeResult> describe(Context& context, const FormDescribeParams& params, bool without_protected) {
  if (context.edition == nullptr) {
    return wire::Fault("internal.failure", "");
  }
  const auto sequence = find_sequence(*context.edition, params.complaint);
  if (!sequence) {
    return sequence.error();
  }
  FormAsk ask;
  ask.sequence = *sequence;
  ask.cannot = params.cannot.value_or(std::vector<Cannot>{});
  ask.without_protected = without_protected;
  ask.told_alone = context.caller.scope == Scope::kiosk;
  if (params.minutes) {
    ask.seconds = params.minutes->steps * 60;
  }
  if (params.exam) {
    const auto asked = ask_exam(context, *params.exam, ask);
    if (!asked) {
      return asked.error();
    }
  }
  FormDescribeResult form = lay_out_form(*context.edition, ask);
  if (params.exam && context.caller.scope != Scope::kiosk) {
    form.again = measured_before(context, *params.exam);
  }
  return form;
}

}  // namespace

Result<FormDescribeResult> form_describe(Context& context, const FormDescribeParams& params) {
  const bool kiosk = context.caller.scope == Scope::kiosk;
  // Of an exam, also a viewer's form is without them: what is recorded there would show.
  auto form = describe(context, params, kiosk || (params.exam && !sees_protected(context)));
  if (form && kiosk) {
    form->not_to_miss.clear();
    form->withheld.clear();
  }
  if (form && params.language) {
    const auto words = language_known(params.language);
    if (!words) {
      return words.error();
    }
    // A person reads this form alone: not in words that no clinician has read.
    if (kiosk && is_for_review(*params.language)) {
      const auto reviewed = context.desk == nullptr ? Result<bool>(false) : language_reviewed(context, params.language->text);
      if (!reviewed || !*reviewed) {
        return wire::Fault{"language.not_reviewed", "/language", "a language whose texts a named clinician has read"};
      }
    }
    add_form_texts(**words, *form);
  }
  return form;
}

Result<ToldBefore<FormDescribeResult>> form_told(Context& context, const FormDescribeParams& params) {
  const bool for_anybody = !params.exam && !params.minutes && !params.language && (!params.cannot || params.cannot->empty());
  const bool kept = for_anybody && context.desk != nullptr && context.edition == &context.desk->edition();
  const std::string name = "form.describe " + std::string(context.caller.scope == Scope::kiosk ? "kiosk " : "") + params.complaint.text;
  // A form with its words is made anew: what a kiosk may read can change.
  if (kept) {
    if (const auto known = context.desk->answers().find(name); known != context.desk->answers().end()) {
      return ToldBefore<FormDescribeResult>{known->second};
    }
  }
  const auto form = form_describe(context, params);
  if (!form) {
    return form.error();
  }
  ToldBefore<FormDescribeResult> written{wire::write(*form)};
  if (kept) {
    context.desk->answers().emplace(name, written.text);
  }
  return written;
}

Result<FormWriteResult> form_write(Context& context, const FormWriteParams& params) {
  if (context.edition == nullptr) {
    return wire::Fault("internal.failure", "");
  }
  const auto words = language_known(params.language);
  if (!words) {
    return words.error();
  }
  const auto form = describe(context, {params.complaint, params.minutes, params.cannot, std::nullopt, std::nullopt}, true);
  if (!form) {
    return form.error();
  }
  std::vector<std::string> banner;
  if (context.desk != nullptr) {
    banner.push_back(banner_of(*context.desk, **words));
  }
  FormWriteResult result{{}, form->edition, {(*words)->language()}, std::nullopt};
  // On each sheet: whoever fills it in must know that nobody has checked these words.
  if (is_for_review(result.language)) {
    banner.push_back((*words)->say("msg.language.for_review"));
    banner.push_back((*words)->say("msg.language.sentences_english"));
    result.for_review = true;
  }
  result.html.text = form_paper(*context.edition, *form, **words, report::joined(banner, " \u00b7 "));
  return result;
}

}  // namespace limbledger::service
