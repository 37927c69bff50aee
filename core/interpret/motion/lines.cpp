#include "core/interpret/motion/lines.hpp"

namespace limbledger::interpret {

Judged begin_motion(std::string_view kind, Comparator comparator, const Reading& reading) {
  Judged judged;
  Statement& statement = judged.statement;
  statement.statement = {std::string(kind) + ":" + reading.item->item.text + ":" + std::string(side_word(reading.side))};
  statement.side = reading.side;
  statement.grade = StatementGrade::cannot_tell;
  statement.verdict = Verdict::not_distinguishable;
  statement.comparator = comparator;
  statement.params = {"{}"};
  statement.findings = ids_of(reading.findings);
  judged.working.statement = statement.statement;
  for (const model::Finding* finding : reading.findings) {
    const auto* angle = std::get_if<model::Angle>(&finding->value);
    WorkingInput input;
    input.finding = finding->finding;
    if (angle != nullptr && !angle->reads && angle->deg) {
      input.deg = angle->deg;
    } else if (angle != nullptr && !angle->reads && angle->toward_deg) {
      input.deg = model::Degrees{direction_of(*reading.item) * angle->toward_deg->steps};
    } else if (angle != nullptr) {
      input.state = model::Word{"unresolved"};
    }
    judged.working.inputs.push_back(std::move(input));
  }
  return judged;
}

void reading_params(const Reading& reading, Params& params) {
  if (reading.item->value != model::ValueKind::angle) {
    params.figure(reading.item->unit ? reading.item->unit->text : "count", reading.low);
    if (!reading.exact()) {
      params.figure("to", reading.high);
    }
    return;
  }
  const bool positive = direction_of(*reading.item) > 0;
  if (!positive && reading.item->toward) {
    params.word("toward", reading.item->toward->text);
  }
  const std::string name = positive ? "deg" : "toward_deg";
  if (reading.exact()) {
    params.figure(name, reading.low);
    return;
  }
  if (reading.low > -open_end) {
    params.figure(name + "_at_least", reading.low);
  }
  if (reading.high < open_end) {
    params.figure(name + "_at_most", reading.high);
  }
}

void error_rows(const Precision& precision, Judged& judged) {
  for (const reference::ErrorRow* row : precision.rows) {
    judged.statement.rows.push_back(row->row);
    judged.working.rows.push_back({row->row, row->source, row->status, Params().exact("mdc95", row->mdc95->steps).raw()});
  }
}

std::string reading_text(std::int64_t low, std::int64_t high) {
  if (low == high) {
    return in_tenths(low);
  }
  if (high >= open_end) {
    return low <= -open_end ? "no number" : "at least " + in_tenths(low);
  }
  return low <= -open_end ? "at most " + in_tenths(high) : in_tenths(low) + " to " + in_tenths(high);
}

void name_message(Judged& judged, std::string_view what) {
  judged.statement.message = {"msg.motion." + std::string(what)};
  judged.working.message = judged.statement.message;
}

}  // namespace limbledger::interpret
