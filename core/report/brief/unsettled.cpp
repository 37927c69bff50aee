// What was measured or asked and is not settled by it, in a line each: a reader takes what is not named for settled.
#include "core/report/brief/brief.hpp"
#include "core/report/page_judged.hpp"

#include <algorithm>
#include <utility>

namespace limbledger::report {

namespace {

using interpret::Comparator;
using interpret::Statement;

[[nodiscard]] std::string within_error_words(const PageView& view, const Statement& statement, const StatementWords& said) {
  const std::string row = statement.message.text + ".row";
  if (!view.words.has(row)) {
    return view.words.say(statement.message.text, said.args);
  }
  return view.say("page.found_motion", {{"what", view.label(said.item) + view.side_after(statement.side), false, true},
                                        {"reading", said.reading, false, true},
                                        {"says", view.words.say(row, said.args), false, true}});
}

}  // namespace

std::vector<std::string> within_error(const PageView& view, bool sides_alone) {
  std::vector<std::string> texts;
  std::vector<std::pair<model::ItemId, Comparator>> said_of;
  // The side that is complained of first: what two sides differ by is one thing.
  for (const bool complained_of : {true, false}) {
    for (const Statement& statement : view.assessment.statements) {
      const bool here = (statement.side == view.exam.side) == complained_of;
      // A hip that hurts is found whatever its angle, and a pattern describes.
      const bool compared = statement.comparator != Comparator::none && statement.grade != interpret::StatementGrade::notable &&
                            !statement.statement.text.starts_with("hip.") && statement.message.text.find("capsular") == std::string::npos;
      const bool wanted = compared && (!sides_alone || statement.comparator == Comparator::other_side);
      if (!here || !wanted || statement.verdict != interpret::Verdict::not_distinguishable || said_by_another(view, statement)) {
        continue;
      }
      const StatementWords said = statement_words(statement, view.exam, view.words, view.edition);
      const bool of_two_sides = statement.comparator == Comparator::other_side;
      const auto same = [&](const auto& one) { return one.first == said.item && one.second == statement.comparator; };
      if (of_two_sides && std::any_of(said_of.begin(), said_of.end(), same)) {
        continue;
      }
      said_of.emplace_back(said.item, statement.comparator);
      if (std::string text = within_error_words(view, statement, said); std::find(texts.begin(), texts.end(), text) == texts.end()) {
        texts.push_back(std::move(text));
      }
    }
  }
  return texts;
}

std::vector<std::string> rules_still_open(const PageView& view, bool with_needs) {
  std::vector<std::string> open;
  for (const interpret::RuleResult& rule : view.assessment.rules) {
    if (rule.outcome == interpret::Outcome::undetermined) {
      const std::string name = view.say(rule.rule.text + ".name") + view.side_after(rule.side);
      if (!with_needs) {
        open.push_back(name);
        continue;
      }
      std::string says = rule_lines(rule, view.exam, view.person, view.assessment.as_of, view.words, view.edition).front();
      says.erase(says.find_last_not_of('.') + 1);
      open.push_back(name + ": " + says);
    }
  }
  return open;
}

SheetSection unsettled_section(const PageView& view) {
  SheetSection section = view.section("page.unsettled");
  if (const std::vector<std::string> measured = within_error(view, false); !measured.empty()) {
    section.bullet(view.say("page.unsettled_measured", {{"what", joined(measured, "; "), false, true}}) + ".");
  }
  if (const std::vector<std::string> open = rules_still_open(view, true); !open.empty()) {
    section.bullet(view.say("page.unsettled_rules", {{"what", joined(open, "; "), false, true}}) + ".");
  }
  return section;
}

}  // namespace limbledger::report
