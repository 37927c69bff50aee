#include "core/interpret/measure/lines.hpp"

#include <algorithm>

namespace limbledger::interpret {

Judged begin_measure(std::string_view kind, Comparator comparator, const model::ItemId& item, model::Side side,
                     const std::vector<const model::Finding*>& findings) {
  Judged judged;
  Statement& statement = judged.statement;
  statement.statement = {"measure." + std::string(kind) + ":" + item.text + ":" + std::string(side_word(side))};
  if (side != model::Side::midline) {
    statement.side = side;
  }
  statement.grade = StatementGrade::cannot_tell;
  statement.verdict = Verdict::not_distinguishable;
  statement.comparator = comparator;
  statement.params = {"{}"};
  statement.findings = ids_of(findings);
  judged.working.statement = statement.statement;
  for (const model::Finding* finding : findings) {
    WorkingInput input;
    input.finding = finding->finding;
    input.input = model::Word{finding->item.text.substr(finding->item.text.find('.') + 1)};
    input.state = model::Word{std::holds_alternative<model::NotDone>(finding->value) ? "not_done" : "measured"};
    judged.working.inputs.push_back(std::move(input));
  }
  return judged;
}

void name_measure(Judged& judged, std::string_view what) {
  judged.statement.message = {"msg.measure." + std::string(what)};
  judged.working.message = judged.statement.message;
}

void tell_measure(Judged& judged, Verdict verdict, StatementGrade grade, std::string_view what) {
  judged.statement.verdict = verdict;
  judged.statement.grade = grade;
  name_measure(judged, what);
}

void beside_measure(Judged& judged, const Reading& other) {
  const std::vector<model::FindingId> others = ids_of(other.findings);
  judged.statement.findings.insert(judged.statement.findings.end(), others.begin(), others.end());
  const Judged begun = begin_measure("pair", Comparator::none, other.item->item, other.side, other.findings);
  judged.working.inputs.insert(judged.working.inputs.end(), begun.working.inputs.begin(), begun.working.inputs.end());
}

const Reading* amount_at(const std::vector<Reading>& amounts, std::string_view item, model::Side side) {
  const auto found = std::find_if(amounts.begin(), amounts.end(), [&](const Reading& one) { return one.side == side && one.item->item.text == item; });
  return found == amounts.end() ? nullptr : &*found;
}

bool asked_of_side(const View& view, model::Side side) {
  const auto& complaint = view.exam().side;
  return !complaint || *complaint == model::Side::midline || *complaint == side;
}

bool positions_differ(const Reading& a, const Reading& b) { return !a.positions.empty() && !b.positions.empty() && a.positions != b.positions; }

std::int64_t distance_of(std::int64_t a, std::int64_t b) { return a < b ? b - a : a - b; }

}  // namespace limbledger::interpret
