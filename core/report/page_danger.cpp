// What cannot wait and what was done about it; which danger signs were asked after, and with what answer.
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

// Flags that are for a person's protection by their name alone, raised or not.
constexpr std::string_view protected_flag = "nai";

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

}  // namespace

bool referral_prompt(std::string_view statement) { return statement.starts_with("referral."); }

// The messages of alerts say their class first, and the side in capitals.
SheetSection alerts_section(const PageView& view) {
  SheetSection section = view.section("page.cannot_wait");
  const auto side_of_it = [&](const std::optional<Side>& side) { return side ? side_of(view.words, *side) : std::string(); };
  bool some_hidden = view.holds_protected;
  for (const interpret::Alert& alert : view.assessment.alerts) {
    if (is_hidden(view, alert)) {
      some_hidden = true;
      continue;
    }
    const Args args{{"side", side_of_it(alert.side), false, true}};
    section.bullet(view.words.say(alert.message.text, args) + ".");
    if (const std::string why = rests_on(view, alert.because); !why.empty()) {
      section.under(view.say("page.alert_because", {{"findings", why, false, true}}) + ".");
    }
    const std::optional<wire::Remark> done = alert.handled && alert.handled->action ? alert.handled->action : (alert.handled ? alert.handled->reason : std::nullopt);
    section.under(done ? view.say(alert.handled->action ? "page.alert_action" : "page.alert_reason", {{"text", done->text}})
                       : enum_word(view.words, "alert_state", alert.state));
    std::vector<std::string> meanwhile;
    for (const model::MessageId& message : alert.meanwhile) {
      meanwhile.push_back(view.words.say(message.text, args));
    }
    if (!meanwhile.empty() && alert.state == interpret::AlertState::raised) {
      section.under(view.say("page.until_then", {{"what", joined(meanwhile, "; "), false, true}}) + ".");
    }
  }
  // One line whatever their number, so that not even a count is told.
  if (some_hidden && view.names.protected_note == ProtectedNote::mentioned) {
    section.bullet(view.say("page.see_protected") + ".");
  }
  for (const interpret::Statement& statement : view.assessment.statements) {
    if (referral_prompt(statement.statement.text)) {
      section.bullet(view.words.say(statement.message.text, {{"side", side_of_it(statement.side), false, true}}) + ".");
    }
  }
  for (const interpret::Question& question : view.assessment.questions) {
    if (after_dot(question.question.text) == protected_flag && view.names.protected_note != ProtectedNote::shown) {
      continue;
    }
    const Args args{{"side", side_of_it(question.side), false, true}, {"items", joined(labels_of(view, question.ask)), false, true}};
    section.bullet(view.say("page.question", {{"side", view.side_after(question.side), false, true},
                                              {"question", view.words.say(question.message.text, args), false, true}}) +
                   ".");
  }
  if (view.assessment.questions_more.steps > 0) {
    section.plain(view.say("page.questions_more", {{"count", wire::write_number(view.assessment.questions_more.steps, 1), true}}));
  }
  return section;
}

SheetSection flags_section(const PageView& view) {
  SheetSection section = view.section("page.danger_signs");
  if (view.assessment.flags.empty()) {
    section.plain(view.say("page.no_flags"));
    return section;
  }
  const auto is_protected = [&](const interpret::Flag& flag) {
    return (after_dot(flag.flag.text) == protected_flag && view.names.protected_note != ProtectedNote::shown) ||
           std::any_of(view.assessment.alerts.begin(), view.assessment.alerts.end(), [&](const interpret::Alert& alert) {
      return is_hidden(view, alert) && after_dot(alert.alert.text) == after_dot(flag.flag.text);
    });
  };
  for (const FlagAnswer answer : {FlagAnswer::raised, FlagAnswer::asked_no, FlagAnswer::not_asked, FlagAnswer::cannot_answer}) {
    // In the order of the assessment; the sides of one flag together.
    std::vector<std::pair<std::string, std::vector<Side>>> named;
    for (const interpret::Flag& flag : view.assessment.flags) {
      if (flag.answer != answer || is_protected(flag)) {
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
