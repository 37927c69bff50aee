// What cannot wait and what was done about it; the questions that are open; the next step.
#include "core/interpret/alerts/alerts.hpp"
#include "core/interpret/alerts/covered.hpp"
#include "core/interpret/after/urgent_way.hpp"
#include "core/interpret/step/next_step.hpp"
#include "core/report/brief/brief.hpp"
#include "core/report/page_judged.hpp"
#include "core/report/page_parts.hpp"

#include <algorithm>

namespace limbledger::report {

namespace {

using model::Side;

[[nodiscard]] std::string all_named(const PageView& view, const std::vector<model::FindingId>& ids) { return joined(findings_named(view, ids), "; "); }

// Whether what is planned answers the alert, nobody but the examiner knows: what the plan above holds is named, and not matched to it. A
// reason to come back answers nothing; it is named where the plan holds nothing else.
[[nodiscard]] std::string plan_beside(const PageView& view, const std::optional<Side>& side) {
  std::vector<std::string> planned;
  std::vector<std::string> to_come_back;
  for (const model::PlanItem& item : view.exam.plan ? *view.exam.plan : std::vector<model::PlanItem>{}) {
    const bool here = !side || !item.side || *item.side == Side::midline || *item.side == *side;
    if (!here || item.became == model::Became::declined) {
      continue;
    }
    if (item.kind == model::PlanKind::safety_net) {
      to_come_back = {view.say("plan.reason_to_come_back")};
    } else if (const std::string kind = enum_word(view.words, "plan", item.kind); std::find(planned.begin(), planned.end(), kind) == planned.end()) {
      planned.push_back(kind);
    }
  }
  return joined(planned.empty() ? to_come_back : planned, "; ");
}

[[nodiscard]] std::string answer_to(const PageView& view, const interpret::Alert& alert, std::string& said_before) {
  const auto& handled = alert.handled;
  // What was done stands whatever became of the alert; that it is raised no more must not be hidden by it.
  std::string gone = alert.state == interpret::AlertState::withdrawn_by_correction ? enum_word(view.words, "alert_state", alert.state) + " " : std::string();
  if (alert.corrected) {
    std::vector<std::string> what;
    for (const model::Word& one : *alert.corrected) {
      what.push_back(view.say("corrected." + one.text));
    }
    gone += view.say("page.alert_corrected", {{"what", joined(what, "; "), false, true}}) + " ";
  }
  if (const std::string done = handled ? handled_words(view, *handled) : std::string(); !done.empty()) {
    return gone + done;
  }
  if (alert.state == interpret::AlertState::raised) {
    const std::string planned = plan_beside(view, alert.side);
    if (!planned.empty() && planned == said_before) {
      return view.say("page.alert_open_plan_again");
    }
    said_before = planned;
    if (!planned.empty()) {
      return view.say("page.alert_open_plan", {{"plan", planned, false, true}}) + ". " + view.say("page.alert_open_answer");
    }
  }
  if (!gone.empty()) {
    return gone.substr(0, gone.size() - 1);
  }
  return enum_word(view.words, "alert_state", alert.state);
}

void add_because(const PageView& view, const std::vector<model::FindingId>& findings, SheetSection& section) {
  const std::string why = all_named(view, findings);
  if (!why.empty()) {
    section.under(view.say("page.alert_because", {{"findings", why, false, true}}) + ".");
  }
}

// What raised it and has been told otherwise since, as it then stood.
void add_rested_on(const PageView& view, const std::vector<model::Finding>& findings, SheetSection& section) {
  std::vector<std::string> parts;
  for (const model::Finding& finding : findings) {
    parts.push_back(view.label(finding.item) + view.side_after(finding.side) + ": " + value_or_undone(view, finding));
  }
  if (!parts.empty()) {
    section.under(view.say("page.alert_rested_on", {{"findings", joined(parts, "; "), false, true}}) + ".");
  }
}

void add_meanwhile(const PageView& view, const std::vector<model::MessageId>& meanwhile, const std::optional<Side>& side, std::string_view title, SheetSection& section) {
  const UntilSeen asked = until_seen(view, meanwhile, side);
  if (!asked.left.empty()) {
    section.under(view.say(title, {{"what", joined(asked.left, "; "), false, true}}) + ".");
  }
  if (!asked.done.empty()) {
    section.under(view.say("page.until_recorded", {{"what", joined(asked.done, "; "), false, true}}));
  }
}

// What is to be referred within two weeks, by name.
[[nodiscard]] std::vector<std::string> prompted(const PageView& view) {
  std::vector<std::string> names;
  for (const interpret::Statement& statement : view.assessment.statements) {
    const std::string danger = statement.statement.text.substr(0, statement.statement.text.find(':'));
    if (referral_prompt(danger) && !is_protected_danger(view, danger)) {
      names.push_back(flag_label(view, danger) + (statement.side && *statement.side != Side::midline ? " " + side_of(view.words, *statement.side) : std::string()));
    }
  }
  return names;
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
  // Apart as they are named below: a number that is not found again there is not believed.
  const OpenSigns open = open_danger_signs(view);
  const bool viewer = view.names.protected_note == ProtectedNote::absent;
  std::string text = view.say(viewer ? "page.no_alert_here" : (some_hidden ? "page.no_other_alert" : "page.no_alert"));
  // Their names stand among the danger signs.
  const auto counted = [&](std::string_view message, const std::vector<std::string>& of) {
    return of.empty() ? std::string() : "; " + view.say(message, {{"count", wire::write_number(static_cast<std::int64_t>(of.size()), 1), true}});
  };
  text += counted("page.no_alert_open", open.not_asked) + counted("page.no_alert_unsettled", open.unsettled) + ".";
  // What is asked for comes first: "no alert" straight above a prompt reads as nothing to do.
  if (const std::string prompts = joined(prompted(view), "; "); !prompts.empty()) {
    text = view.say("page.prompt_alone", {{"flags", prompts, false, true}, {"none", text, false, true}});
  }
  // Whoever reads of no alert must not take it for an answer about a part that nothing here asks after.
  if (!view.exam.complaint.text.ends_with("_knee")) {
    text += " " + view.say("page.alerts_of_knee");
  }
  section.plain(text);
}

// What the alerts and prompts advise against, of the steps of this complaint by name.
void add_stopped(const PageView& view, SheetSection& section) {
  for (const StoppedSteps& stopped : stopped_steps(view)) {
    const Args args{{"side", view.side_after(stopped.side), false, true},
                    {"steps", joined(stopped.labels, "; "), false, true},
                    {"parts", parts_named(view, stopped.others), false, true}};
    if (!stopped.labels.empty()) {
      section.bullet(view.say(stopped.others.empty() ? "page.stopped" : "page.stopped_and_others", args));
    }
  }
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

// An alert that asks for something, or a prompt to refer, stands above.
[[nodiscard]] bool something_asked_above(const PageView& view) {
  const auto& alerts = view.assessment.alerts;
  const auto& statements = view.assessment.statements;
  return std::any_of(alerts.begin(), alerts.end(),
                     [&](const interpret::Alert& alert) { return alert.state == interpret::AlertState::raised && !is_hidden(view, alert); }) ||
         std::any_of(statements.begin(), statements.end(), [](const interpret::Statement& one) { return referral_prompt(one.statement.text); });
}

[[nodiscard]] bool question_above(const PageView& view) {
  const auto& questions = view.assessment.questions;
  return std::any_of(questions.begin(), questions.end(), [&](const interpret::Question& one) { return !is_protected_danger(view, one.question.text); });
}

// Why no step is named, and what stands nevertheless; of alerts and questions only what there is.
[[nodiscard]] std::string no_step(const PageView& view) {
  const bool alerts = something_asked_above(view);
  const bool questions = question_above(view);
  const bool planned = view.exam.plan && !view.exam.plan->empty();
  const std::optional<std::string> gap = planned ? std::nullopt : not_covered(view);
  // After an alert, "no further step" would be read as nothing left to do.
  if (alerts) {
    return joined({view.say(questions ? "page.step_next_both" : "page.step_next_alerts"), planned ? view.say("page.step_plan_beside") : std::string(), gap.value_or(std::string())}, "; ");
  }
  if (planned) {
    return joined({view.say("page.step_plan"), questions ? view.say("page.step_questions_open") : std::string()}, "; ");
  }
  const bool silent = gap && !questions && !interpret::covered(view.edition, view.exam.complaint).rule;
  const interpret::View exam(view.exam, view.person, view.edition, view.assessment.as_of);
  const std::vector<interpret::JudgedFlag> flags = interpret::judge_flags(exam);
  const model::MessageId none = interpret::why_no_step(exam, flags, interpret::open_concerns(exam, flags, {}));
  return joined({silent ? std::string() : view.words.say(none.text), gap.value_or(std::string())}, "; ");
}

}  // namespace

std::string alert_text(const interpret::Alert& alert, const Words& words) {
  return words.say(alert.message.text, {{"side", alert.side ? side_of(words, *alert.side) : words.say("msg.side.not_recorded"), false, true}});
}

std::string prompt_text(const interpret::Statement& prompt, const Words& words) {
  return words.say(prompt.message.text, {{"side", prompt.side ? side_of(words, *prompt.side) : words.say("msg.side.not_recorded"), false, true}});
}

std::string question_text(const interpret::Question& question, const Words& words, const reference::Edition& edition, std::size_t most) {
  // Under one side, what is to be looked at on the other or on both says so.
  std::vector<std::string> labels;
  for (const interpret::Ask& ask : question.ask) {
    std::vector<Side> sides;
    for (const interpret::Ask& other : question.ask) {
      if (other.item == ask.item && std::find(sides.begin(), sides.end(), other.side) == sides.end()) {
        sides.push_back(other.side);
      }
    }
    std::string label = item_label(words, edition, ask.item);
    if (sides.size() > 1) {
      label += ", " + side_of(words, Side::right) + words.say("msg.page.and") + side_of(words, Side::left);
    } else if (ask.side != Side::midline && question.side != ask.side) {
      label += ", " + side_of(words, ask.side);
    }
    if (std::find(labels.begin(), labels.end(), label) == labels.end()) {
      labels.push_back(label);
    }
  }
  std::string items = joined({labels.begin(), labels.begin() + static_cast<std::ptrdiff_t>(std::min(most, labels.size()))}, "; ");
  if (labels.size() > most) {
    items += words.say("msg.page.and_count", {{"count", wire::write_number(static_cast<std::int64_t>(labels.size() - most), 1), true}});
  }
  return words.say(question.message.text, {{"side", question.side ? side_of(words, *question.side) : std::string(), false, true}, {"items", items, false, true}});
}

void add_handled_also(const PageView& view, const interpret::Alert& alert, SheetSection& section) {
  for (const model::AlertHandled& one : alert.handled_also.value_or(std::vector<model::AlertHandled>{})) {
    if (!one.action && !one.reason) {
      continue;
    }
    const std::string of = one.alert == alert.alert ? std::string() : flag_label(view, one.alert.text);
    Args args{{"text", one.action ? one.action->text : one.reason->text}};
    if (!of.empty()) {
      args.push_back({"alert", of, false, true});
    }
    section.under(view.say(of.empty() ? "page.alert_also" : "page.alert_also_of", args));
  }
}

bool referral_prompt(std::string_view statement) { return statement.starts_with("referral."); }

SheetSection alerts_section(const PageView& view) {
  SheetSection section = view.section("page.cannot_wait");
  bool some_hidden = view.holds_protected;
  std::string planned;  // said once, for the alerts that share it
  for (const interpret::Alert& alert : view.assessment.alerts) {
    if (is_hidden(view, alert)) {
      some_hidden = true;
      continue;
    }
    section.bullet(alert_text(alert, view.words) + ".");
    if (alert.rested_on) {
      add_rested_on(view, *alert.rested_on, section);
    } else {
      add_because(view, alert.because, section);
    }
    section.under(answer_to(view, alert, planned));
    if (const auto& before = alert.handled_before; before && (before->action || before->reason)) {
      section.under(view.say("page.alert_before", {{"text", before->action ? before->action->text : before->reason->text}}));
    }
    add_handled_also(view, alert, section);
    if (alert.call_back.value_or(false)) {
      section.under(view.say("page.call_back"));
    }
    add_disagreed(view, interpret::statement_name(alert), section);
    // A call that was made carries nobody: what holds until then holds until the person was handed over.
    if (alert.state == interpret::AlertState::raised) {
      add_meanwhile(view, alert.meanwhile, alert.side, "page.until_then", section);
    } else if (alert.state == interpret::AlertState::handled && !was_handed_over(view)) {
      add_meanwhile(view, alert.meanwhile, alert.side, "page.until_seen", section);
    }
  }
  add_urgent(view, section);
  // One line whatever their number, so that not even a count is told.
  if (some_hidden && view.names.protected_note == ProtectedNote::mentioned) {
    section.bullet(view.say("page.see_protected") + "." + (view.holds_remarks_apart ? " " + view.say("page.remark_apart") + "." : ""));
  }
  add_none_raised(view, some_hidden, section);
  for (const interpret::Statement& statement : view.assessment.statements) {
    if (referral_prompt(statement.statement.text)) {
      section.bullet(prompt_text(statement, view.words) + ".");
      add_because(view, statement.findings, section);
      const std::string& id = statement.statement.text;
      const std::string_view danger = std::string_view(id).substr(0, id.find(':'));
      if (const reference::AlertRow* row = view.edition.alert({"alert." + std::string(after_dot(danger))}); row != nullptr) {
        add_meanwhile(view, meanwhile_of_prompt(view, statement, *row), statement.side, "page.until_then", section);
      }
    }
  }
  add_stopped(view, section);
  for (const interpret::Question& question : view.assessment.questions) {
    if (is_protected_danger(view, question.question.text)) {
      continue;
    }
    section.bullet(view.say("page.question", {{"side", view.side_after(question.side), false, true},
                                              {"question", question_text(question, view.words, view.edition), false, true}}) +
                   ".");
  }
  if (view.assessment.questions_more.steps > 0) {
    const std::vector<std::string> names = further_questions(view);
    Args args{{"count", wire::write_number(view.assessment.questions_more.steps, 1), true}, {"names", joined(names, "; "), false, true}};
    section.plain(view.say(names.empty() ? "page.questions_more" : "page.questions_more_named", args));
  }
  return section;
}

std::string step_text(const PageView& view, const interpret::Step& step, std::string_view message) {
  std::vector<std::string> changes;
  for (const model::Word& change : step.changes) {
    const bool rule = view.words.has("msg." + change.text + ".name");
    changes.push_back(rule ? view.say(change.text + ".name") : flag_label(view, change.text));
  }
  constexpr std::int64_t a_minute = 60;
  const std::int64_t seconds = step.seconds.steps;
  const bool short_one = seconds < a_minute;
  const std::string number = wire::write_number(short_one ? seconds : (seconds + a_minute - 1) / a_minute, 1);
  const std::string time = view.words.say("msg.value.unit", {{"value", number, true}, {"unit", word_of(view.words, "unit", short_one ? "s" : "min"), false, true}});
  return view.words.say(message, {{"item", view.label(step.step) + view.side_after(step.side), false, true},
                                  {"time", time, false, true},
                                  {"changes", joined(changes, "; "), false, true}});
}

SheetSection next_section(const PageView& view) {
  SheetSection section = view.section("page.next_step");
  if (view.exam.signed_ || (view.exam.state && *view.exam.state != model::ExamState::open)) {
    return section;
  }
  for (const interpret::Step& step : view.assessment.steps) {
    const bool after = section.lines.empty() && something_asked_above(view);
    section.plain(step_text(view, step, after ? "msg.page.step_after_alerts" : std::string_view(step.message.text)) + ".");
  }
  if (section.lines.empty()) {
    section.plain(no_step(view) + ".");
  }
  return section;
}

}  // namespace limbledger::report
