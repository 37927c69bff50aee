// What holds until the reader has seen the person: what the plan tells them and what an alert says meanwhile. Without it a reader
// learns neither that the leg carries nothing nor that the person came fasting.
#include "core/report/letter/letter_parts.hpp"
#include "core/report/page_judged.hpp"

#include <algorithm>

namespace limbledger::report {

namespace {

[[nodiscard]] bool holds_until_seen(const model::PlanItem& item) {
  const bool kind = item.kind == model::PlanKind::limit || item.kind == model::PlanKind::splint || item.kind == model::PlanKind::advice ||
                    item.kind == model::PlanKind::safety_net;
  return kind && item.became != model::Became::declined;
}

}  // namespace

SheetSection letter_until(const PageView& view) {
  SheetSection section = view.section("letter.until");
  std::vector<std::string> planned;
  std::vector<std::string> named;
  for (const model::PlanItem& item : view.exam.plan.value_or(std::vector<model::PlanItem>{})) {
    if (holds_until_seen(item)) {
      named.push_back(item.plan_item ? item.plan_item->to_text() : std::string());
      planned.push_back(view.say("letter.given", {{"plan", enum_word(view.words, "plan", item.kind) + view.side_after(item.side), false, true},
                                                  {"text", item.text.text}}));
    }
  }
  std::string says = view.say("letter.until_no_plan");
  if (!planned.empty()) {
    says = view.say("letter.until_plan", {{"what", joined(planned, "; "), false, true}});
    says += says.ends_with(".\u2069") ? "" : ".";  // what a person ended keeps its own end
  }
  // Two alerts may say the same; a reader needs it once.
  std::vector<std::string> meanwhile;
  for (const interpret::Alert& alert : view.assessment.alerts) {
    if (!alert_in_letter(view, alert, false)) {
      continue;
    }
    const Args args{{"side", alert.side ? side_of(view.words, *alert.side) : std::string(), false, true}};
    for (const model::MessageId& message : alert.meanwhile) {
      if (const std::string said = view.words.say(message.text, args); std::find(meanwhile.begin(), meanwhile.end(), said) == meanwhile.end()) {
        meanwhile.push_back(said);
      }
    }
  }
  if (!meanwhile.empty()) {
    says += " " + view.say("letter.until_alert", {{"what", joined(meanwhile, "; "), false, true}});
  }
  section.plain(says);
  add_exchanged_line(view, named, section);
  return section;
}

}  // namespace limbledger::report
