#include "core/report/working/working_page.hpp"

#include "core/interpret/after/urgent_way.hpp"
#include "core/report/page_criteria.hpp"
#include "core/report/page_judged.hpp"

#include <algorithm>
#include <utility>

namespace limbledger::report {

namespace {

[[nodiscard]] const interpret::RuleResult* rule_of(const PageView& view, const interpret::Working& working) {
  const auto& rules = view.assessment.rules;
  const auto at = std::find_if(rules.begin(), rules.end(), [&](const auto& rule) { return interpret::statement_name(rule) == working.statement.text; });
  return at == rules.end() ? nullptr : &*at;
}

// An item by its label, an input of a rule in the rule's words, any other name as it is.
[[nodiscard]] std::string input_named(const PageView& view, const interpret::RuleResult* rule, const std::string& input) {
  if (view.edition.item(model::ItemId{input}) != nullptr) {
    return view.label(model::ItemId{input});
  }
  return rule != nullptr ? input_text(view.words, *rule, input) : word_of(view.words, "working_input", input);
}

[[nodiscard]] std::string input_line(const PageView& view, const interpret::RuleResult* rule, const interpret::WorkingInput& input) {
  std::vector<std::string> said;
  const auto found = std::find_if(view.findings.begin(), view.findings.end(), [&](const auto* one) { return input.finding && one->finding == input.finding; });
  if (found != view.findings.end()) {
    said.push_back(view.say("working.finding", {{"what", view.label((*found)->item) + view.side_after((*found)->side), false, true}, {"value", view.value(**found), false, true}}));
    if (input.input && input.input->text != (*found)->item.text) {
      said.push_back(view.say("working.counts_as", {{"input", input_named(view, rule, input.input->text), false, true}}));
    }
  } else {
    said.push_back(input.input ? input_named(view, rule, input.input->text) + view.side_after(input.side) : view.say("working.reading"));
    if (input.deg) {
      said.push_back(input.deg->to_text() + "°");
    }
    if (input.finding) {
      said.push_back(view.say("working.not_on_this_page"));
    }
  }
  if (input.state) {
    said.push_back(word_of(view.words, "working_state", input.state->text));
  }
  return joined(said, "; ");
}

[[nodiscard]] std::string numbers_of(const PageView& view, const wire::Raw& raw) {
  std::vector<std::string> numbers;
  for (const Arg& arg : args_of(raw)) {
    numbers.push_back(word_of(view.words, "working_number", arg.name) + " " + arg.text);
  }
  return joined(numbers);
}

// `begun`: a row of several sources is named once.
void add_row(const PageView& view, const interpret::WorkingRow& row, bool begun, SheetSection& section) {
  const std::string numbers = numbers_of(view, row.numbers);
  if (!begun) {
    section.bullet(numbers.empty() ? row.row.text : row.row.text + ": " + numbers);
  }
  const reference::Source* source = view.edition.source(row.source);
  const std::string_view status = wire::type_of<model::Status>().words[static_cast<std::size_t>(row.status)];
  section.under(view.say("working.source", {{"source", row.source.text, false, true},
                                            {"citation", source == nullptr ? view.say("working.source_not_listed") : source->citation.text, false, true},
                                            {"status", word_of(view.words, "working_status", status), false, true}}));
}

// An answer that stands above in words: "history.back_pain not_asked", "leg.tightness:left speaks_for_it".
[[nodiscard]] bool said_above(const PageView& view, const std::string& line) { return view.edition.item(model::ItemId{line.substr(0, line.find_first_of(": "))}) != nullptr; }

// What a rule read, where its working names the inputs alone.
void add_read_by_rule(const PageView& view, const interpret::RuleResult& rule, const interpret::Working& working, SheetSection& section) {
  for (const model::Finding* finding : view.findings) {
    const auto is_this = [&](const auto& id) { return finding->finding && finding->finding == id; };
    const bool read = std::any_of(rule.findings.begin(), rule.findings.end(), is_this);
    const bool named = std::any_of(working.inputs.begin(), working.inputs.end(), [&](const interpret::WorkingInput& input) { return is_this(input.finding); });
    if (read && !named) {
      section.bullet(view.say("working.finding", {{"what", view.label(finding->item) + view.side_after(finding->side), false, true}, {"value", view.value(*finding), false, true}}));
    }
  }
}

void add_names(SheetSection& section, const std::string& name, const std::optional<wire::LongText>& text) {
  section.bullet(name);
  if (text) {
    section.under(text->text);
  }
}

}  // namespace

Sheet working_sheet(const PageView& view, const interpret::Working& working) {
  Sheet sheet;
  sheet.banner = view.names.banner;
  sheet.title = view.say("working.title", {{"name", working.statement.text, false, true}});
  sheet.who = person_line(view);
  if (working.text) {
    sheet.head.push_back(working.text->text);
  }
  sheet.head.push_back(view.say("page.untested") + ".");

  const interpret::RuleResult* rule = rule_of(view, working);
  SheetSection rests = view.section("working.rests_on");
  for (const interpret::WorkingInput& input : working.inputs) {
    rests.bullet(input_line(view, rule, input));
  }
  if (rule != nullptr) {
    add_read_by_rule(view, *rule, working, rests);
  }
  SheetSection rows = view.section("working.figures");
  for (std::size_t i = 0; i < working.rows.size(); ++i) {
    add_row(view, working.rows[i], i > 0 && working.rows[i].row == working.rows[i - 1].row, rows);
  }
  SheetSection steps = view.section("working.steps");
  steps.plain(view.say("working.formula", {{"formula", working.formula.text, false, true}}));
  for (const wire::Name& line : working.lines) {
    if (!said_above(view, line.text)) {
      steps.bullet(line.text);
    }
  }
  SheetSection changes = view.section("working.changes_if");
  for (const wire::LongText& one : working.changes_if_text.value_or(std::vector<wire::LongText>{})) {
    changes.bullet(one.text);
  }
  for (SheetSection* section : {&rests, &rows, &steps, &changes}) {
    if (section->lines.empty()) {
      section->plain(view.say("working.none"));
    }
    sheet.sections.push_back(std::move(*section));
  }
  SheetSection about = view.section("page.about");
  about.plain(view.say("page.decision_support"));
  sheet.sections.push_back(std::move(about));
  return sheet;
}

Sheet names_sheet(const PageView& view) {
  Sheet sheet;
  sheet.banner = view.names.banner;
  sheet.title = view.say("working.names_title");
  sheet.who = person_line(view);
  sheet.head.push_back(view.say("page.untested") + ".");
  SheetSection dangers = view.section("working.dangers");
  std::vector<std::string> raised;
  for (const interpret::Alert& alert : view.assessment.alerts) {
    if (!is_hidden(view, alert)) {
      raised.push_back(interpret::statement_name(alert));
      add_names(dangers, raised.back(), alert.text);
    }
  }
  for (const interpret::Flag& flag : view.assessment.flags) {
    const std::string name = interpret::statement_name(flag);
    if (!is_hidden_flag(view, flag) && std::find(raised.begin(), raised.end(), name) == raised.end()) {
      add_names(dangers, name, flag.text);
    }
  }
  SheetSection rules = view.section("working.rules");
  for (const interpret::RuleResult& rule : view.assessment.rules) {
    add_names(rules, interpret::statement_name(rule), rule.text);
  }
  SheetSection hypotheses = view.section("working.hypotheses");
  for (const interpret::Hypothesis& hypothesis : view.assessment.hypotheses) {
    add_names(hypotheses, interpret::statement_name(hypothesis), hypothesis.text);
  }
  SheetSection statements = view.section("working.statements");
  for (const interpret::Statement& statement : view.assessment.statements) {
    add_names(statements, statement.statement.text, statement.text);
  }
  for (SheetSection* section : {&dangers, &rules, &hypotheses, &statements}) {
    if (!section->lines.empty()) {
      sheet.sections.push_back(std::move(*section));
    }
  }
  return sheet;
}

}  // namespace limbledger::report
