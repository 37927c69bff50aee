#include "core/service/methods/exam/form.hpp"

#include "core/interpret/body.hpp"
#include "core/interpret/judged.hpp"
#include "core/service/methods/exam/common.hpp"
#include "core/service/methods/say/assess.hpp"

#include <algorithm>

namespace limbledger::service {

namespace {

// What this body does not have, and the positions that are not for it.
void ask_body(const interpret::View& view, FormAsk& ask) {
  if (view.bodies().open().empty()) {
    return;
  }
  for (const model::SequenceStep& step : ask.sequence->steps) {
    const model::Item* item = view.edition().item(step.item);
    for (const model::Side side : item != nullptr ? item->sides : std::vector<model::Side>{}) {
      const auto absent = interpret::not_applicable(view, *item, side);
      if (!absent) {
        continue;
      }
      const bool again = !ask.not_applicable.empty() && ask.not_applicable.back().item == item->item && ask.not_applicable.back().because == absent->because;
      if (again) {
        ask.not_applicable.back().sides.push_back(side);
      } else {
        ask.not_applicable.push_back({item->item, {side}, absent->why, absent->because});
      }
    }
  }
  const auto& words = wire::type_of<Cannot>().words;
  for (const Cannot cannot : {Cannot::lie_prone, Cannot::lie_supine, Cannot::stand, Cannot::sit}) {
    const bool asked = std::find(ask.cannot.begin(), ask.cannot.end(), cannot) != ask.cannot.end();
    if (!asked && view.bodies().cannot(words[static_cast<std::size_t>(cannot)])) {
      ask.cannot.push_back(cannot);
    }
  }
}

// The age and what is open, of the exam as it stands.
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
  ask_body(view, ask);
  const interpret::Watched watched = interpret::watch(view);
  for (const interpret::OpenConcern& open : watched.concerns) {
    // A rule that merely waits for its answers withholds nothing from the sheet that asks for them.
    const bool waits = !open.held_by.empty() && std::all_of(open.held_by.begin(), open.held_by.end(), [&](const model::Word& by) {
      return std::any_of(watched.rules.begin(), watched.rules.end(), [&](const interpret::JudgedRule& rule) {
        return rule.result.rule.text == by.text && rule.result.side == open.side && rule.result.outcome == interpret::Outcome::undetermined;
      });
    });
    if (!waits) {
      ask.open.push_back(open);
    }
  }
  return {};
}

}  // namespace

Result<FormDescribeResult> form_describe(Context& context, const FormDescribeParams& params) {
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
  if (context.caller.scope == Scope::kiosk) {
    form.not_to_miss.clear();
    form.withheld.clear();
  }
  return form;
}

}  // namespace limbledger::service
