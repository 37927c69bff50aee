// What cannot wait and what was done about it; which danger signs were asked after, and with what answer.
#include "core/interpret/alerts/alerts.hpp"
#include "core/report/page_parts.hpp"

#include <algorithm>

namespace limbledger::report {

namespace {

using interpret::FlagAnswer;
using model::Side;

// "septic_adult" of "alert.septic_adult" and of "flag.septic_adult".
[[nodiscard]] std::string_view after_dot(std::string_view name) {
  const auto dot = name.rfind('.');
  return dot == std::string_view::npos ? name : name.substr(dot + 1);
}

// For a person's protection by the row of its danger, raised or not: "flag.nai", "alert.nai".
[[nodiscard]] bool is_protected_danger(const PageView& view, std::string_view name) {
  const reference::AlertRow* row = view.edition.alert({"alert." + std::string(after_dot(name))});
  return row != nullptr && row->protected_.value_or(false) && view.names.protected_note != ProtectedNote::shown;
}

[[nodiscard]] bool is_hidden(const PageView& view, const interpret::Alert& alert) {
  return alert.audience == interpret::Audience::protected_ && view.names.protected_note != ProtectedNote::shown;
}

[[nodiscard]] std::string flag_label(const PageView& view, std::string_view flag) { return word_of(view.words, "flag", after_dot(flag)); }

[[nodiscard]] std::string rests_on(const PageView& view, const std::vector<model::FindingId>& ids) {
  std::vector<std::string> parts;
  for (const model::FindingId& id : ids) {
    for (const model::Finding* finding : view.findings) {
      if (finding->finding && *finding->finding == id) {
        parts.push_back(view.label(finding->item) + view.side_after(finding->side) + ": " + view.value(*finding));
      }
    }
  }
  return joined(parts, "; ");
}

[[nodiscard]] std::vector<std::string> labels_of(const PageView& view, const std::vector<interpret::Ask>& asks) {
  std::vector<std::string> labels;
  for (const interpret::Ask& ask : asks) {
    const std::string label = view.label(ask.item);
    if (std::find(labels.begin(), labels.end(), label) == labels.end()) {
      labels.push_back(label);
    }
  }
  return labels;
}

[[nodiscard]] bool is_hidden_flag(const PageView& view, const interpret::Flag& flag) {
  return is_protected_danger(view, flag.flag.text) ||
         std::any_of(view.assessment.alerts.begin(), view.assessment.alerts.end(), [&](const interpret::Alert& alert) {
           return is_hidden(view, alert) && after_dot(alert.alert.text) == after_dot(flag.flag.text);
         });
}

// Whether what is planned answers the alert, nobody but the examiner knows: both are shown, and neither is matched to the other.
[[nodiscard]] std::string plan_beside(const PageView& view, const std::optional<Side>& side) {
  std::vector<std::string> planned;
  for (const model::PlanItem& item : view.exam.plan ? *view.exam.plan : std::vector<model::PlanItem>{}) {
    const bool here = !side || !item.side || *item.side == Side::midline || *item.side == *side;
    if (here && item.became != model::Became::declined) {
      planned.push_back(view.say("page.planned", {{"kind", enum_word(view.words, "plan", item.kind), false, true}, {"text", item.text.text}}));
    }
  }
  return joined(planned, "; ");
}

[[nodiscard]] std::string answer_to(const PageView& view, const interpret::Alert& alert, std::string& said_before) {
  const auto& handled = alert.handled;
  if (handled && handled->action) {
    return view.say("page.alert_action", {{"text", handled->action->text}});
  }
  if (handled && handled->reason) {
    return view.say("page.alert_reason", {{"text", handled->reason->text}});
  }
  if (alert.state == interpret::AlertState::raised) {
    const std::string planned = plan_beside(view, alert.side);
    if (!planned.empty() && planned == said_before) {
      return view.say("page.alert_open_plan_again");
    }
    said_before = planned;
    if (!planned.empty()) {
      return view.say("page.alert_open_plan", {{"plan", planned, false, true}});
    }
  }
  return enum_word(view.words, "alert_state", alert.state);
}

void add_because(const PageView& view, const std::vector<model::FindingId>& findings, SheetSection& section) {
  const std::string why = rests_on(view, findings);
  if (!why.empty()) {
    section.under(view.say("page.alert_because", {{"findings", why, false, true}}) + ".");
  }
}

void add_meanwhile(const PageView& view, const std::vector<model::MessageId>& meanwhile, const Args& args, SheetSection& section) {
  std::vector<std::string> parts;
  for (const model::MessageId& message : meanwhile) {
    parts.push_back(view.words.say(message.text, args));
  }
  if (!parts.empty()) {
    section.under(view.say("page.until_then", {{"what", joined(parts, "; "), false, true}}) + ".");
  }
}

// Said in words, because a page without alerts would be read as one without danger.
void add_none_raised(const PageView& view, bool some_hidden, SheetSection& section) {
  const auto& alerts = view.assessment.alerts;
  const bool stands = std::any_of(alerts.begin(), alerts.end(), [&](const interpret::Alert& alert) {
    return !is_hidden(view, alert) && alert.state != interpret::AlertState::withdrawn_by_correction;
  });
  if (stands || view.assessment.flags.empty()) {
    return;
  }
  std::vector<std::string> open;
  for (const interpret::Flag& flag : view.assessment.flags) {
    const bool is_open = flag.answer == FlagAnswer::not_asked || flag.answer == FlagAnswer::cannot_answer;
    const std::string label = flag_label(view, flag.flag.text);
    if (is_open && !is_hidden_flag(view, flag) && std::find(open.begin(), open.end(), label) == open.end()) {
      open.push_back(label);
    }
  }
  const bool viewer = view.names.protected_note == ProtectedNote::absent;
  std::string text = view.say(viewer ? "page.no_alert_here" : (some_hidden ? "page.no_other_alert" : "page.no_alert"));
  text += open.empty() ? "." : "; " + view.say("page.no_alert_open", {{"flags", joined(open, "; "), false, true}}) + ".";
  section.plain(text);
}

// By name, those that wait behind the three that are shown.
[[nodiscard]] std::vector<std::string> further_questions(const PageView& view) {
  const interpret::View exam(view.exam, view.person, view.edition, view.assessment.as_of);
  const std::vector<interpret::JudgedFlag> flags = interpret::judge_flags(exam);
  const std::vector<const interpret::JudgedFlag*> asked = interpret::asked_flags(exam, flags);
  std::vector<std::string> names;
  const std::size_t shown = view.assessment.questions.size();
  if (asked.size() != shown + static_cast<std::size_t>(view.assessment.questions_more.steps)) {
    return names;  // judged otherwise than here; the count alone is said
  }
  for (std::size_t i = shown; i < asked.size(); ++i) {
    if (!is_protected_danger(view, asked[i]->row->alert.text)) {
      names.push_back(flag_label(view, asked[i]->row->alert.text) + (asked[i]->side ? " " + side_of(view.words, *asked[i]->side) : std::string()));
    }
  }
  return names;
}

}  // namespace

bool referral_prompt(std::string_view statement) { return statement.starts_with("referral."); }

// The messages of alerts say their class first, and the side in capitals.
SheetSection alerts_section(const PageView& view) {
  SheetSection section = view.section("page.cannot_wait");
  const auto side_of_it = [&](const std::optional<Side>& side) { return side ? side_of(view.words, *side) : std::string(); };
  bool some_hidden = view.holds_protected;
  std::string planned;  // said once, for the alerts that share it
  for (const interpret::Alert& alert : view.assessment.alerts) {
    if (is_hidden(view, alert)) {
      some_hidden = true;
      continue;
    }
    const Args args{{"side", side_of_it(alert.side), false, true}};
    section.bullet(view.words.say(alert.message.text, args) + ".");
    add_because(view, alert.because, section);
    section.under(answer_to(view, alert, planned));
    if (alert.state == interpret::AlertState::raised) {
      add_meanwhile(view, alert.meanwhile, args, section);
    }
  }
  // One line whatever their number, so that not even a count is told.
  if (some_hidden && view.names.protected_note == ProtectedNote::mentioned) {
    section.bullet(view.say("page.see_protected") + ".");
  }
  add_none_raised(view, some_hidden, section);
  for (const interpret::Statement& statement : view.assessment.statements) {
    if (referral_prompt(statement.statement.text)) {
      const Args args{{"side", side_of_it(statement.side), false, true}};
      section.bullet(view.words.say(statement.message.text, args) + ".");
      add_because(view, statement.findings, section);
      const std::string& id = statement.statement.text;
      const std::string_view danger = std::string_view(id).substr(0, id.find(':'));
      if (const reference::AlertRow* row = view.edition.alert({"alert." + std::string(after_dot(danger))}); row != nullptr) {
        add_meanwhile(view, row->meanwhile, args, section);
      }
    }
  }
  for (const interpret::Question& question : view.assessment.questions) {
    if (is_protected_danger(view, question.question.text)) {
      continue;
    }
    const Args args{{"side", side_of_it(question.side), false, true}, {"items", joined(labels_of(view, question.ask)), false, true}};
    section.bullet(view.say("page.question", {{"side", view.side_after(question.side), false, true},
                                              {"question", view.words.say(question.message.text, args), false, true}}) +
                   ".");
  }
  if (view.assessment.questions_more.steps > 0) {
    const std::vector<std::string> names = further_questions(view);
    Args args{{"count", wire::write_number(view.assessment.questions_more.steps, 1), true}, {"names", joined(names, "; "), false, true}};
    section.plain(view.say(names.empty() ? "page.questions_more" : "page.questions_more_named", args));
  }
  return section;
}

SheetSection next_section(const PageView& view) {
  SheetSection section = view.section("page.next_step");
  if (view.exam.signed_ || (view.exam.state && *view.exam.state != model::ExamState::open)) {
    return section;
  }
  for (const interpret::Step& step : view.assessment.steps) {
    std::vector<std::string> changes;
    for (const model::Word& change : step.changes) {
      const bool rule = view.words.has("msg." + change.text + ".name");
      changes.push_back(rule ? view.say(change.text + ".name") : flag_label(view, change.text));
    }
    const std::int64_t minutes = (step.seconds.steps + 59) / 60;
    section.plain(view.words.say(step.message.text, {{"item", view.label(step.step) + view.side_after(step.side), false, true},
                                                     {"minutes", wire::write_number(minutes, 1), true},
                                                     {"changes", joined(changes, "; "), false, true}}) +
                  ".");
  }
  if (section.lines.empty()) {
    const bool planned = view.exam.plan && !view.exam.plan->empty();
    const bool waiting = !view.assessment.questions.empty();
    section.plain(view.say(planned ? "step.plan_is_set" : (waiting ? "step.none_advised_now" : "step.none_would_change")) + ".");
  }
  return section;
}

SheetSection flags_section(const PageView& view) {
  SheetSection section = view.section("page.danger_signs");
  if (view.assessment.flags.empty()) {
    section.plain(view.say("page.no_flags"));
    return section;
  }
  for (const FlagAnswer answer : {FlagAnswer::raised, FlagAnswer::asked_no, FlagAnswer::not_asked, FlagAnswer::cannot_answer}) {
    // In the order of the assessment; the sides of one flag together.
    std::vector<std::pair<std::string, std::vector<Side>>> named;
    for (const interpret::Flag& flag : view.assessment.flags) {
      if (flag.answer != answer || is_hidden_flag(view, flag)) {
        continue;
      }
      const std::string label = flag_label(view, flag.flag.text);
      auto at = std::find_if(named.begin(), named.end(), [&](const auto& one) { return one.first == label; });
      if (at == named.end()) {
        at = named.insert(named.end(), {label, {}});
      }
      if (flag.side && *flag.side != Side::midline) {
        at->second.push_back(*flag.side);
      }
    }
    std::vector<std::string> parts;
    for (const auto& one : named) {
      std::vector<std::string> sides;
      for (const Side side : {Side::right, Side::left}) {
        if (std::find(one.second.begin(), one.second.end(), side) != one.second.end()) {
          sides.push_back(side_of(view.words, side));
        }
      }
      parts.push_back(joined({one.first, joined(sides, view.say("page.and"))}, " "));
    }
    if (!parts.empty()) {
      section.plain(view.say("page.flags_" + std::string(wire::type_of<FlagAnswer>().words[static_cast<std::size_t>(answer)]),
                             {{"flags", joined(parts, "; "), false, true}}));
    }
  }
  section.plain(view.say("page.flags_end"));
  return section;
}

}  // namespace limbledger::report
