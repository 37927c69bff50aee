// What cannot wait and what was done about it; which danger signs were asked after, and with what answer.
#include "core/report/page_parts.hpp"

#include <algorithm>
#include <map>

namespace limbledger::report {

namespace {

using interpret::FlagAnswer;
using model::Side;

// "septic_adult" of "alert.septic_adult" and of "flag.septic_adult".
[[nodiscard]] std::string_view after_dot(std::string_view name) {
  const auto dot = name.rfind('.');
  return dot == std::string_view::npos ? name : name.substr(dot + 1);
}

[[nodiscard]] bool is_hidden(const PageView& view, const interpret::Alert& alert) {
  return alert.audience == interpret::Audience::protected_ && !view.names.with_protected;
}

[[nodiscard]] std::string flag_label(const PageView& view, std::string_view flag) {
  for (const std::string& name : {"msg." + std::string(flag) + ".name", "msg.flag." + std::string(after_dot(flag)), "msg." + std::string(flag)}) {
    if (view.words.has(name)) {
      return view.words.say(name);
    }
  }
  return word_of(view.words, "flag", after_dot(flag));
}

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

}  // namespace

SheetSection alerts_section(const PageView& view) {
  SheetSection section = view.section("page.alerts");
  bool some_hidden = false;
  for (const interpret::Alert& alert : view.assessment.alerts) {
    if (is_hidden(view, alert)) {
      some_hidden = true;
      continue;
    }
    const Args args{{"side", alert.side ? side_of(view.words, *alert.side) : std::string(), false, true}};
    section.bullet(enum_word(view.words, "urgency", alert.urgency) + view.side_after(alert.side) + ": " + view.words.say(alert.message.text, args));
    if (const std::string why = rests_on(view, alert.because); !why.empty()) {
      section.under(view.say("page.alert_because", {{"findings", why, false, true}}));
    }
    for (const model::MessageId& meanwhile : alert.meanwhile) {
      section.under(view.words.say(meanwhile.text, args));
    }
    section.under(enum_word(view.words, "alert_state", alert.state));
  }
  // One line whatever their number, so that not even a count is told.
  if (some_hidden) {
    section.bullet(view.say("page.see_protected"));
  }
  for (const interpret::Question& question : view.assessment.questions) {
    section.bullet(view.say("page.question", {{"question", view.words.say(question.message.text) + view.side_after(question.side), false, true}}));
  }
  if (view.assessment.questions_more.steps > 0) {
    section.plain(view.say("page.questions_more", {{"count", wire::write_number(view.assessment.questions_more.steps, 1), true}}));
  }
  return section;
}

SheetSection flags_section(const PageView& view) {
  SheetSection section = view.section("page.flags");
  if (view.assessment.flags.empty()) {
    section.plain(view.say("page.no_flags"));
    return section;
  }
  const auto is_protected = [&](const interpret::Flag& flag) {
    return std::any_of(view.assessment.alerts.begin(), view.assessment.alerts.end(), [&](const interpret::Alert& alert) {
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
  return section;
}

}  // namespace limbledger::report
