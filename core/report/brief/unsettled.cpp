// What was measured or asked and is not settled by it, in a line each: a reader takes what is not named for settled.
#include "core/report/brief/added.hpp"
#include "core/report/brief/brief.hpp"
#include "core/report/page_judged.hpp"

#include <algorithm>
#include <string>
#include <utility>
#include <vector>

namespace limbledger::report {

namespace {

using interpret::Comparator;
using interpret::Statement;

// One reading, and all that is not told of it.
struct UnsettledReading {
  std::string name;
  std::string what;  // label, side and reading; empty where the statement is a sentence of its own
  std::vector<std::string> says;
};

void add_unsettled_reading(const PageView& view, const Statement& statement, const StatementWords& said, std::vector<UnsettledReading>& readings) {
  const std::string row = statement.message.text + ".row";
  const bool short_words = view.words.has(row);
  const std::string what = short_words ? view.label(said.item) + view.side_after(statement.side) + " " + said.reading : std::string();
  const std::string says = view.words.say(short_words ? row : statement.message.text, said.args);
  auto at = std::find_if(readings.begin(), readings.end(), [&](const UnsettledReading& one) { return one.what == what; });
  if (at == readings.end()) {
    at = readings.insert(readings.end(), UnsettledReading{view.label(said.item), what, {}});
  }
  if (std::find(at->says.begin(), at->says.end(), says) == at->says.end()) {
    at->says.push_back(says);
  }
}

// At the edge of published figures: its span stands in the table of comparisons, and is not said twice. One without its instrument is at no edge.
[[nodiscard]] bool at_the_edge(const Statement& statement) { return statement.statement.text.starts_with("motion.norm:") && !statement.message.text.ends_with("needs_instrument"); }

enum class OfReadings { sides, all_but_edges, edges };

[[nodiscard]] std::vector<UnsettledReading> readings_within_error(const PageView& view, OfReadings which) {
  std::vector<UnsettledReading> readings;
  std::vector<std::pair<model::ItemId, Comparator>> said_of;
  // The side that is complained of first: what two sides differ by is one thing.
  for (const bool complained_of : {true, false}) {
    for (const Statement& statement : view.assessment.statements) {
      const bool here = (statement.side == view.exam.side) == complained_of;
      // A hip that hurts is found whatever its angle, and a pattern describes.
      const bool compared = statement.comparator != Comparator::none && statement.grade != interpret::StatementGrade::notable &&
                            !statement.statement.text.starts_with("hip.") && statement.message.text.find("capsular") == std::string::npos;
      const bool of_kind = which == OfReadings::sides ? statement.comparator == Comparator::other_side : at_the_edge(statement) == (which == OfReadings::edges);
      const bool wanted = compared && of_kind;
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
      add_unsettled_reading(view, statement, said, readings);
    }
  }
  return readings;
}

}  // namespace

std::vector<std::string> within_error_named(const PageView& view) {
  std::vector<std::string> names;
  for (const UnsettledReading& one : readings_within_error(view, OfReadings::sides)) {
    names.push_back(one.name);
  }
  return names;
}

std::vector<std::string> within_error(const PageView& view, bool sides_alone) {
  std::vector<std::string> texts;
  for (const UnsettledReading& one : readings_within_error(view, sides_alone ? OfReadings::sides : OfReadings::all_but_edges)) {
    const std::string says = joined(one.says, "; ");
    texts.push_back(one.what.empty() ? says : one.what + ": " + says);
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
  std::vector<model::FindingId> judged;
  for (const Statement& statement : view.assessment.statements) {
    if (statement.verdict == interpret::Verdict::not_distinguishable) {
      judged.insert(judged.end(), statement.findings.begin(), statement.findings.end());
    }
  }
  for (const interpret::RuleResult& rule : view.assessment.rules) {
    if (rule.outcome == interpret::Outcome::undetermined) {
      judged.insert(judged.end(), rule.findings.begin(), rule.findings.end());
    }
  }
  const std::string signed_alone = judged_as_signed(view, judged);
  if (const std::vector<std::string> measured = within_error(view, false); !measured.empty()) {
    section.bullet(view.say("page.unsettled_measured", {{"what", joined(measured, "; "), false, true}}) + ".");
  }
  std::vector<std::string> edges;
  for (const UnsettledReading& one : readings_within_error(view, OfReadings::edges)) {
    edges.push_back(one.what.empty() ? joined(one.says, "; ") : one.what);
  }
  if (!edges.empty()) {
    section.bullet(view.say("page.unsettled_edge", {{"what", joined(edges, "; "), false, true}}) + ".");
  }
  if (const std::vector<std::string> open = rules_still_open(view, true); !open.empty()) {
    section.bullet(view.say("page.unsettled_rules", {{"what", joined(open, "; "), false, true}}) + ".");
  }
  if (!section.lines.empty() && !signed_alone.empty()) {
    section.lines.insert(section.lines.begin(), SheetLine{LineKind::plain, signed_alone, {}, {}, {}});
  }
  return section;
}

}  // namespace limbledger::report
