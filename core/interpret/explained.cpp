#include "core/interpret/explained.hpp"

#include "core/interpret/after/urgent_way.hpp"

#include <algorithm>
#include <string>
#include <utility>
#include <vector>

namespace limbledger::interpret {

namespace {

void add_answers(const View& view, const FindingTrail& trail, std::string_view state, Working& working) {
  for (const model::Finding* finding : trail.written()) {
    working.inputs.push_back({finding->finding, model::Word{finding->item.text}, model::Word{std::string(state)}, std::nullopt});
    const model::Item* item = view.edition().item(finding->item);
    const std::string place = finding->side == model::Side::midline && (item == nullptr || item->sides.size() == 1) ? std::string() : ":" + std::string(side_word(finding->side));
    working.lines.push_back({finding->item.text + place + " " + std::string(state)});
  }
}

// Of a condition, the groups of tests of which nothing is recorded, each with its tests: a result there would speak beside the others.
[[nodiscard]] std::vector<std::string> groups_unheard(const reference::ConditionGroups& condition, const Working& working) {
  std::vector<std::string> out;
  for (const reference::EvidenceGroup& group : condition.groups) {
    const bool heard = std::any_of(group.members.begin(), group.members.end(), [&](const reference::GroupMember& member) {
      return std::any_of(working.inputs.begin(), working.inputs.end(), [&](const WorkingInput& input) { return input.input == member.test; });
    });
    if (!heard) {
      std::string line = "nothing recorded of " + group.group.text + ":";
      for (const reference::GroupMember& member : group.members) {
        line += " " + member.test.text;
      }
      out.push_back(line);
    }
  }
  return out;
}

[[nodiscard]] std::string class_word(const Raised& raised) {
  const std::string word = raised.urgency == AlertClass::now ? "now" : (raised.urgency == AlertClass::same_day ? "same_day" : "two_weeks");
  return "class " + word + (raised.interrupts ? ", interrupts" : "");
}

}  // namespace

Working explained(const View& view, const JudgedFlag& judged) {
  const Clue& clue = judged.raised.clue;
  const std::string name = judged.row->alert.text.substr(judged.row->alert.text.find('.') + 1);
  Working working;
  working.statement = {statement_name(judged)};
  working.message = {clue.is_yes() ? "msg.alert." + name + "." + std::string(judged.raised.what) : "msg.flag." + name};
  add_answers(view, clue.because, clue.is_yes() ? "speaks_for_it" : "points_to_it", working);
  add_answers(view, clue.against, "speaks_against_it", working);
  add_answers(view, clue.open, "no_answer", working);
  // What is asked now, and of what is open and nobody is asked for, what a page names as missing.
  const AskTrail& asked = waits_for(judged.raised).ask;
  const AskTrail open = asked.empty() && clue.value == Tri::undetermined ? judged.raised.would_settle : AskTrail{};
  for (const auto& [trail, state] : {std::pair(&asked, "not_asked"), std::pair(&open, "not_recorded")}) {
    for (const ToAsk& ask : trail->written()) {
      const std::string place = ask.side == model::Side::midline ? std::string() : ":" + std::string(side_word(ask.side));
      working.inputs.push_back({std::nullopt, model::Word{ask.item->item.text}, model::Word{state}, std::nullopt, ask.side});
      working.lines.push_back({ask.item->item.text + place + " " + state});
    }
  }
  working.lines.push_back({"time until harm " + std::to_string(judged.row->harm_minutes.steps) + " minutes, for the order among one class: " + judged.row->harm_from.text});
  for (const model::SourceId& source : judged.row->sources) {
    working.rows.push_back({model::RowId{judged.row->alert.text}, source, judged.row->status, wire::Raw{"{}"}});
  }
  if (clue.is_yes()) {
    working.formula = {"raised by recorded answers: all that speak for it are named"};
    working.lines.push_back({class_word(judged.raised)});
    working.changes_if.push_back({"msg.change.answer_corrected"});
  } else if (clue.is_no()) {
    working.formula = {"answered no by recorded answers"};
    working.changes_if.push_back({"msg.change.answer_corrected"});
  } else {
    working.formula = {"open: neither raised nor answered no by what is recorded"};
  }
  if (!asked.empty() || !open.empty()) {
    working.changes_if.push_back({"msg.change.answer_to_what_is_asked"});
  }
  return working;
}

void add_what_changes(const reference::Edition& edition, Working& working) {
  const auto& conditions = edition.evidence().groups;
  const std::string name = working.statement.text.substr(0, working.statement.text.find(':'));
  const auto condition = std::find_if(conditions.begin(), conditions.end(), [&](const reference::ConditionGroups& one) { return one.condition.text == name; });
  if (condition != conditions.end()) {
    for (std::string& line : groups_unheard(*condition, working)) {
      working.lines.push_back({std::move(line)});
      working.changes_if = {{"msg.change.test_of_group"}};
    }
  }
  if (working.changes_if.empty() || condition != conditions.end()) {
    working.changes_if.push_back({"msg.change.answer_corrected"});
  }
}

}  // namespace limbledger::interpret
