#include "core/interpret/knee/lines.hpp"

#include <algorithm>

namespace limbledger::interpret {

namespace {

using model::TestResult;

[[nodiscard]] bool fits(const std::vector<wire::Name>& names, const std::string& text) {
  return std::any_of(names.begin(), names.end(), [&](const wire::Name& name) { return name.text == text; });
}

// As the item's row says: the first rule whose grades and end feels both hold.
[[nodiscard]] std::optional<TestResult> counts_as(const model::Item& item, const model::Finding& finding) {
  if (const auto* test = std::get_if<model::Test>(&finding.value)) {
    return test->result;
  }
  const auto* grade = std::get_if<model::Grade>(&finding.value);
  if (grade == nullptr || !item.counts) {
    return std::nullopt;
  }
  for (const model::Counts& rule : *item.counts) {
    const bool end_fits = !rule.end_feels ||
                          (finding.end_feel && std::find(rule.end_feels->begin(), rule.end_feels->end(), *finding.end_feel) != rule.end_feels->end());
    if (end_fits && (!rule.grades || fits(*rule.grades, grade->grade.text))) {
      return rule.as;
    }
  }
  return std::nullopt;
}

[[nodiscard]] bool felt_poorly(const model::Finding& finding) { return finding.quality && !finding.quality->empty(); }

}  // namespace

void figure_rows(const View& view, std::string_view about, std::string_view item, Judged& judged) {
  for (const reference::FigureRow& row : view.edition().figures()) {
    if (row.about.text != about || (row.item && row.item->text != item)) {
      continue;
    }
    Params numbers;
    if (row.value) {
      numbers.exact("value", row.value->steps);
    }
    if (row.low && row.high) {
      numbers.exact("low", row.low->steps).exact("high", row.high->steps);
    }
    if (row.n) {
      numbers.exact("n", row.n->steps * 1000);
    }
    judged.statement.rows.push_back(row.row);
    judged.working.rows.push_back({row.row, row.source, row.status, numbers.raw()});
  }
}

const reference::FigureRow* figure_of(const View& view, std::string_view about, std::string_view item) {
  for (const reference::FigureRow& row : view.edition().figures()) {
    if (row.about.text == about && (!row.item || row.item->text == item)) {
      return &row;
    }
  }
  return nullptr;
}

bool pair_lines(const Reading& reading, const Reading& other, const Difference& difference, std::string_view prefix, Params& params, Judged& judged) {
  const std::vector<model::FindingId> others = ids_of(other.findings);
  judged.statement.findings.insert(judged.statement.findings.end(), others.begin(), others.end());
  for (WorkingInput& input : begin_motion("motion.pair", Comparator::none, other).working.inputs) {
    judged.working.inputs.push_back(std::move(input));
  }
  reading_params(reading, params);
  if (other.exact()) {
    params.figure("other_deg", other.low);
  }
  if (difference.comparable == Comparable::needs_instrument) {
    judged.statement.missing.push_back({"instrument"});
    judged.working.changes_if.push_back({"msg.change.instrument"});
    name_message(judged, std::string(prefix) + "needs_instrument");
    return false;
  }
  if (difference.comparable == Comparable::other_position) {
    judged.working.changes_if.push_back({"msg.change.same_position"});
    name_message(judged, std::string(prefix) + "other_position");
    return false;
  }
  error_rows(difference.precision, judged);
  if (difference.exact()) {
    params.figure("difference_deg", difference.low);
  }
  params.figure("needed_deg", difference.needed);
  if (difference.methods_differ) {
    params.yes("methods_differ");
    judged.working.changes_if.push_back({"msg.change.same_instrument"});
  }
  const bool real = difference.below() || difference.above();
  if (reading.exact() && other.exact()) {
    const std::string second = in_tenths(other.low);
    judged.working.lines.push_back(
        {in_tenths(reading.low) + " - " + (other.low < 0 ? "(" + second + ")" : second) + " = " + in_tenths(difference.low)});
  } else {
    judged.working.lines.push_back({reading_text(reading.low, reading.high) + " against " + reading_text(other.low, other.high)});
  }
  const std::string size = difference.exact() ? in_tenths(difference.low < 0 ? -difference.low : difference.low) : "the difference";
  judged.working.lines.push_back({size + (real ? " exceeds " : " does not exceed ") + in_tenths(difference.needed)});
  judged.working.changes_if.push_back({"msg.change.repeat_reading"});
  return true;
}

Found found_at(const View& view, std::string_view item, model::Side side) {
  Found found;
  const model::Item* row = view.edition().item(item);
  if (row == nullptr) {
    return found;
  }
  bool first = true;
  for (const model::Finding* finding : view.at(item, side)) {
    const bool read = std::holds_alternative<model::Test>(finding->value) || std::holds_alternative<model::Grade>(finding->value);
    if (!read || !settles(*finding)) {
      continue;
    }
    const std::optional<TestResult> result = counts_as(*row, *finding);
    found.disagree = found.disagree || (!first && result != found.result);
    found.result = result;
    found.guarded = found.guarded || felt_poorly(*finding);
    found.findings.push_back(finding);
    first = false;
  }
  if (found.disagree) {
    found.result.reset();
  }
  return found;
}

std::string grade_of(const Found& found) {
  std::string grade;
  for (const model::Finding* finding : found.findings) {
    const auto* held = std::get_if<model::Grade>(&finding->value);
    if (held == nullptr || (!grade.empty() && grade != held->grade.text)) {
      return {};
    }
    grade = held->grade.text;
  }
  return grade;
}

Judged begin_knee(std::string_view kind, const model::ItemId& item, model::Side side, const Found& found) {
  Judged judged;
  Statement& statement = judged.statement;
  statement.statement = {std::string(kind) + ":" + item.text + ":" + std::string(side_word(side))};
  statement.side = side;
  statement.grade = StatementGrade::cannot_tell;
  statement.verdict = Verdict::not_distinguishable;
  statement.comparator = Comparator::none;
  statement.params = {"{}"};
  statement.findings = ids_of(found.findings);
  judged.working.statement = statement.statement;
  for (const model::Finding* finding : found.findings) {
    WorkingInput input;
    input.finding = finding->finding;
    input.input = model::Word{finding->item.text.substr(finding->item.text.find('.') + 1)};
    const auto* test = std::get_if<model::Test>(&finding->value);
    input.state = model::Word{test == nullptr ? "graded" : std::string(wire::type_of<TestResult>().words[static_cast<std::size_t>(test->result)])};
    judged.working.inputs.push_back(std::move(input));
  }
  return judged;
}

void name_knee(Judged& judged, std::string_view what) {
  judged.statement.message = {"msg." + std::string(what)};
  judged.working.message = judged.statement.message;
}

}  // namespace limbledger::interpret
