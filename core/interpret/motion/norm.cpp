#include "core/interpret/motion/norm.hpp"

#include "core/interpret/motion/lines.hpp"

#include <algorithm>

namespace limbledger::interpret {

namespace {

// 1.96 / 2.772 = 70 / 99 exactly, so that the comparison needs no rounding.
constexpr std::int64_t error_times = 70;
constexpr std::int64_t error_over = 99;

struct Asked {
  const reference::NormRow* row = nullptr;
  Limits limits;
  Verdict verdict = Verdict::no_norm;
};

struct AskedNorms {
  std::vector<Asked> rows;  // each once, in a fixed order; a null row where an age or sex has none
  std::vector<const reference::NormRow*> shown;
  bool sources_differ = false;  // two of one standing
  WhyNone why = WhyNone::none;  // of the first age and sex without a row
};

void add_choice(AskedNorms& asked, const NormChoice& choice, std::int64_t months) {
  asked.sources_differ = asked.sources_differ || choice.rows.size() > 1;
  for (const reference::NormRow* row : choice.rows) {
    const Limits limits = *limits_of(*row, months);
    const bool known = std::any_of(asked.rows.begin(), asked.rows.end(), [&](const Asked& a) { return a.row == row && a.limits == limits; });
    if (!known) {
      asked.rows.push_back({row, limits, Verdict::no_norm});
    }
  }
  if (!choice.rows.empty()) {
    return;
  }
  if (asked.why == WhyNone::none) {
    asked.why = choice.why;
    asked.rows.push_back({});
  }
  if (choice.shown != nullptr && std::find(asked.shown.begin(), asked.shown.end(), choice.shown) == asked.shown.end()) {
    asked.shown.push_back(choice.shown);
  }
}

// Every row that may apply to this person.
[[nodiscard]] AskedNorms ask_rows(const View& view, const Reading& reading, const model::AgeInterval& months) {
  AskedNorms asked;
  const model::NormSex sex = view.person()->norm_sex;
  for (const model::NormSex each : {model::NormSex::male, model::NormSex::female}) {
    if (sex != model::NormSex::unspecified && sex != each) {
      continue;
    }
    for (std::int64_t month = months.low; month <= months.high; month = next_change(view.edition(), *reading.item, month)) {
      add_choice(asked, choose_norm(view.edition(), {reading.item, each, month, reading.positions}), month);
    }
  }
  return asked;
}

void compare_lines(const Reading& reading, std::int64_t mdc95, const Asked& asked, Working& working) {
  const Limits limits = asked.limits;
  const std::int64_t width = wire::round_divide(mdc95 * error_times, error_over);
  const std::string error = in_tenths(wire::round_divide(mdc95 * 1000, 2772));
  const auto line = [&](std::int64_t from, std::string_view sign, std::string_view relation, std::int64_t limit) {
    const std::int64_t end = sign == "+" ? from + width : from - width;
    working.lines.push_back({in_tenths(from) + " " + std::string(sign) + " 1.96 x " + error + " = " + in_tenths(end) + ", " + std::string(relation) +
                             " " + in_tenths(limit)});
  };
  const bool has_low = limits.low > -open_end && reading.high < open_end;
  const bool has_high = limits.high < open_end && reading.low > -open_end;
  const bool clears_low = error_over * (reading.low - limits.low) >= error_times * mdc95;
  const bool clears_high = error_over * (limits.high - reading.high) >= error_times * mdc95;
  switch (asked.verdict) {
    case Verdict::below:
      line(reading.high, "+", "below", limits.low);
      break;
    case Verdict::above:
      line(reading.low, "-", "above", limits.high);
      break;
    case Verdict::within:
      line(reading.low, "-", "not below", limits.low);
      line(reading.high, "+", "not above", limits.high);
      break;
    default:
      if (has_low && !clears_low) {
        line(reading.high, "+", "not below", limits.low);
      }
      if (has_high && !clears_high) {
        line(reading.low, "-", "not above", limits.high);
      }
      break;
  }
}

[[nodiscard]] std::string_view formula_of(Verdict verdict) {
  switch (verdict) {
    case Verdict::above:
      return "above if reading - 1.96 x error > high";
    case Verdict::within:
      return "within if reading - 1.96 x error >= low and reading + 1.96 x error <= high";
    default:
      return "below if reading + 1.96 x error < low";
  }
}

void conclude(Judged& judged, Verdict verdict, bool taught, bool raises, bool sources_differ) {
  Statement& statement = judged.statement;
  statement.verdict = verdict;
  judged.working.formula = {std::string(formula_of(verdict))};
  // A figure taught but not read at its source is compared with and described; it raises nothing.
  const std::string suffix = taught ? "_taught" : "";
  switch (verdict) {
    case Verdict::below:
    case Verdict::above:
      statement.grade = raises ? StatementGrade::notable : StatementGrade::unclear;
      name_message(judged, (verdict == Verdict::below ? "below" : "above") + suffix);
      judged.working.changes_if.push_back({"msg.change.repeat_reading"});
      break;
    case Verdict::within:
      statement.grade = StatementGrade::as_expected;
      name_message(judged, "within" + suffix);
      break;
    case Verdict::not_distinguishable:
      statement.grade = StatementGrade::unclear;
      name_message(judged, "not_distinguishable" + suffix);
      judged.working.changes_if.push_back({"msg.change.repeat_reading"});
      break;
    case Verdict::norms_disagree:
      statement.grade = StatementGrade::unclear;
      name_message(judged, (sources_differ ? "sources_disagree" : "norms_disagree") + suffix);
      judged.working.changes_if.push_back({sources_differ ? "msg.change.other_side" : "msg.change.age_or_sex"});
      break;
    case Verdict::no_norm:
      statement.grade = StatementGrade::cannot_tell;
      name_message(judged, "no_norm");
      break;
  }
}

void norm_params(const Reading& reading, const std::vector<Asked>& asked, std::int64_t mdc95, Statement& statement) {
  Params params;
  reading_params(reading, params);
  Limits widest{open_end, -open_end};
  for (const Asked& one : asked) {
    if (one.row != nullptr) {
      widest = {std::min(widest.low, one.limits.low), std::max(widest.high, one.limits.high)};
    }
  }
  if (widest.low > -open_end && widest.low < open_end) {
    params.figure("low", widest.low);
  }
  if (widest.high > -open_end && widest.high < open_end) {
    params.figure("high", widest.high);
  }
  if (mdc95 > 0) {
    params.figure("error_deg", wire::round_divide(mdc95 * 1000, 2772));
  }
  statement.params = params.raw();
}

// No comparison with other people, for a reason that is named.
[[nodiscard]] Judged refuse(Judged judged, const Reading& reading, Verdict verdict, std::string_view message, std::string_view missing) {
  Params params;
  if (reading.readable == Readable::number) {
    reading_params(reading, params);
  }
  judged.statement.params = params.raw();
  judged.statement.verdict = verdict;
  judged.statement.comparator = Comparator::none;
  name_message(judged, message);
  judged.working.formula = {"no comparison"};
  if (!missing.empty()) {
    judged.statement.missing.push_back({std::string(missing)});
    judged.working.changes_if.push_back({"msg.change." + std::string(missing)});
  }
  return judged;
}

// What the row is and of whom, for the working: the same that a page says in words.
[[nodiscard]] std::string compared_with(const reference::NormRow& row) {
  const auto part = [](const std::string& text) { return text.empty() ? std::string() : ", " + text; };
  const bool months = row.age_months_low || row.age_months_high;
  const std::string ages = months ? std::to_string(row.months_low()) + " to " + std::to_string(row.months_high()) + " months"
                                  : std::to_string(row.age_low.steps) + " to " + std::to_string(row.age_high.steps) + " years";
  const std::string sex = !row.sex || *row.sex == model::NormSex::unspecified ? "both sexes" : (*row.sex == model::NormSex::male ? "male" : "female");
  const std::string mode = row.mode == reference::Mode::unspecified ? "" : (row.mode == reference::Mode::active ? "active" : "passive");
  return "compared with " + row.source.text + part(sex) + part(ages) + part(mode) + part(row.position ? row.position->text : "position not named") +
         part(row.instrument ? row.instrument->text : "instrument not named");
}

void name_row(const reference::NormRow& row, const Limits& limits, Judged& judged) {
  judged.statement.rows.push_back(row.row);
  Params numbers;
  if (row.mean) {
    numbers.exact("mean", row.mean->steps);
  }
  if (row.sd) {
    numbers.exact("sd", row.sd->steps);
  }
  if (limits.low > -open_end) {
    numbers.exact("low", limits.low);
  }
  if (limits.high < open_end) {
    numbers.exact("high", limits.high);
  }
  judged.working.rows.push_back({row.row, row.source, row.status, numbers.raw()});
}

// Figures without limits are put beside the reading and judge nothing.
[[nodiscard]] Judged show(Judged judged, const Reading& reading, const std::vector<const reference::NormRow*>& rows) {
  Params params;
  reading_params(reading, params);
  const reference::NormRow& first = *rows.front();
  const bool half = first.limits == reference::LimitsKind::middle_half && first.typical_low && first.typical_high;
  for (const reference::NormRow* row : rows) {
    name_row(*row, {}, judged);
    judged.working.lines.push_back({compared_with(*row)});
  }
  if (rows.size() == 1 && half) {
    params.figure("low", first.typical_low->steps).figure("high", first.typical_high->steps);
  } else if (rows.size() == 1 && first.mean) {
    params.figure("mean", first.mean->steps);
  }
  judged.statement.params = params.word("why", "spread").raw();
  judged.statement.verdict = Verdict::no_norm;
  judged.working.formula = {"no comparison"};
  name_message(judged, rows.size() > 1 ? "shown_several" : (half ? "shown_half" : "shown"));
  return judged;
}

// The rows, each with its verdict; true where one of them is a taught value.
[[nodiscard]] bool ask_each(const Reading& reading, const std::optional<Precision>& precision, std::vector<Asked>& asked, Judged& judged) {
  bool taught = false;
  for (Asked& one : asked) {
    if (one.row == nullptr) {
      continue;
    }
    one.verdict = precision ? against_norm(reading.low, reading.high, precision->mdc95, one.limits) : Verdict::not_distinguishable;
    name_row(*one.row, one.limits, judged);
    taught = taught || one.row->taught();
    if (one.row->position && reading.positions.empty()) {
      judged.statement.missing = {{"position"}};
    }
  }
  return taught;
}

[[nodiscard]] Judged judge_norm(const View& view, const Reading& reading) {
  Judged judged = begin_motion("motion.norm", Comparator::norm, reading);
  if (reading.readable != Readable::number) {
    const bool unresolved = reading.readable == Readable::unresolved;
    return refuse(std::move(judged), reading, Verdict::not_distinguishable, unresolved ? "unresolved" : "words_only",
                  unresolved ? "meaning" : "number");
  }
  const std::string_view other = not_compared(view, *reading.item, reading.side, "norm");
  if (other == "fused" || other == "implant") {
    return refuse(std::move(judged), reading, Verdict::no_norm, other == "fused" ? "no_norm_fused" : "no_norm_implant", "");
  }
  if (!other.empty()) {
    judged = refuse(std::move(judged), reading, Verdict::no_norm, "no_norm_body", "");
    Params params;
    reading_params(reading, params);
    judged.statement.params = params.word("state", other).raw();
    return judged;
  }
  const auto months = view.age_months_on_exam();
  if (!months) {
    return refuse(std::move(judged), reading, Verdict::no_norm, "needs_age", view.age_lacks());
  }
  AskedNorms norms = ask_rows(view, reading, *months);
  std::vector<Asked>& asked = norms.rows;
  const bool any = std::any_of(asked.begin(), asked.end(), [](const Asked& a) { return a.row != nullptr; });
  if (!any && !norms.shown.empty()) {
    return show(std::move(judged), reading, norms.shown);
  }
  if (!any) {
    judged = refuse(std::move(judged), reading, Verdict::no_norm, "no_norm", "");
    Params params;
    reading_params(reading, params);
    judged.statement.params = params.word("why", why_word(norms.why)).raw();
    return judged;
  }
  const auto precision = precision_of(view.edition(), {&reading});
  const bool taught = ask_each(reading, precision, asked, judged);
  norm_params(reading, asked, precision ? precision->mdc95 : 0, judged.statement);
  if (!precision) {
    const bool named = !reading.instrument_missing;
    name_message(judged, named ? "no_error" : "needs_instrument");
    judged.working.formula = {named ? "no comparison without an error" : "no error without an instrument"};
    if (!named) {
      judged.statement.missing.push_back({"instrument"});
      judged.working.changes_if.push_back({"msg.change.instrument"});
    }
    return judged;
  }
  error_rows(*precision, judged);
  judged.working.lines.push_back(
      {wire::write_number(precision->mdc95, 1000) + " / 2.772 = " + in_tenths(wire::round_divide(precision->mdc95 * 1000, 2772))});
  for (const Asked& one : asked) {
    if (one.row != nullptr) {
      compare_lines(reading, precision->mdc95, one, judged.working);
    }
  }
  const bool agree = std::all_of(asked.begin(), asked.end(), [&](const Asked& a) { return a.verdict == asked.front().verdict; });
  const bool local = std::any_of(asked.begin(), asked.end(), [](const Asked& a) { return a.row != nullptr && a.row->compare_only.value_or(false); });
  conclude(judged, agree ? asked.front().verdict : Verdict::norms_disagree, taught, !taught && !local, norms.sources_differ);
  if (local) {
    judged.working.lines.push_back({"measured in one population, others differ: compared with, raises nothing"});
  }
  if (taught) {
    judged.working.lines.push_back({"taught value: the norm was not read at its source, so it raises nothing"});
  }
  for (const Asked& one : asked) {
    if (one.row != nullptr) {
      judged.working.lines.push_back({compared_with(*one.row)});
    }
  }
  return judged;
}

}  // namespace

Verdict against_norm(std::int64_t reading_low, std::int64_t reading_high, std::int64_t mdc95, const Limits& limits) {
  const std::int64_t width = error_times * mdc95;
  if (error_over * (limits.low - reading_high) > width) {
    return Verdict::below;
  }
  if (error_over * (reading_low - limits.high) > width) {
    return Verdict::above;
  }
  const bool low_inside = error_over * (reading_low - limits.low) >= width;
  const bool high_inside = error_over * (limits.high - reading_high) >= width;
  return low_inside && high_inside ? Verdict::within : Verdict::not_distinguishable;
}

std::vector<Judged> judge_norms(const View& view, const std::vector<Reading>& motions) {
  std::vector<Judged> judged;
  for (const Reading& reading : motions) {
    judged.push_back(judge_norm(view, reading));
  }
  for (const Reading& reading : read_measures(view)) {
    judged.push_back(judge_norm(view, reading));
  }
  return judged;
}

}  // namespace limbledger::interpret
