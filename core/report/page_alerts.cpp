#include "core/report/page_alerts.hpp"

#include "core/report/text.hpp"

#include <algorithm>

namespace limbledger::report {

namespace {

[[nodiscard]] Args side_arg(const std::optional<model::Side>& side, const Words& words) {
  return {{"side", side ? side_of(words, *side) : std::string(), false, true}};
}

[[nodiscard]] std::string count_of_flags(const interpret::Assessment& assessment, interpret::FlagAnswer answer) {
  const auto count = std::count_if(assessment.flags.begin(), assessment.flags.end(), [&](const interpret::Flag& flag) { return flag.answer == answer; });
  return std::to_string(count);
}

}  // namespace

std::vector<std::string> alert_lines(const interpret::Assessment& assessment, const Words& words) {
  std::vector<std::string> lines;
  for (const interpret::Alert& alert : assessment.alerts) {
    if (alert.audience == interpret::Audience::protected_) {
      continue;
    }
    std::string text = words.say(alert.message.text, side_arg(alert.side, words));
    if (alert.state == interpret::AlertState::withdrawn_by_correction) {
      lines.push_back(words.say("msg.page.alert_withdrawn", {{"text", text, false, true}}) + ".");
      continue;
    }
    if (alert.handled) {
      const auto& done = alert.handled->action ? alert.handled->action : alert.handled->reason;
      text = words.say("msg.page.alert_handled", {{"text", text, false, true}, {"answer", done ? done->text : std::string()}});
    }
    std::vector<std::string> meanwhile;
    for (const model::MessageId& message : alert.meanwhile) {
      meanwhile.push_back(words.say(message.text));
    }
    lines.push_back(text + ". " + words.say("msg.page.meanwhile", {{"what", joined(meanwhile, "; "), false, true}}) + ".");
  }
  return lines;
}

std::string flags_line(const interpret::Assessment& assessment, const Words& words, const reference::Edition& edition) {
  std::vector<std::string> open;
  for (const interpret::Question& question : assessment.questions) {
    for (const interpret::Ask& ask : question.ask) {
      const std::string label = item_label(words, edition, ask.item);
      if (std::find(open.begin(), open.end(), label) == open.end()) {
        open.push_back(label);
      }
    }
  }
  const std::string not_asked = count_of_flags(assessment, interpret::FlagAnswer::not_asked) + (open.empty() ? "" : " (" + joined(open) + ")");
  return words.say("msg.page.flags", {{"asked", count_of_flags(assessment, interpret::FlagAnswer::asked_no), true},
                                      {"not_asked", not_asked, false, true},
                                      {"cannot", count_of_flags(assessment, interpret::FlagAnswer::cannot_answer), true}});
}

bool is_referral(const interpret::Statement& statement) { return statement.statement.text.starts_with("referral."); }

std::string referral_text(const interpret::Statement& statement, const Words& words) {
  return words.say(statement.message.text, side_arg(statement.side, words)) + ".";
}

}  // namespace limbledger::report
