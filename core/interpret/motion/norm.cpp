#include "core/interpret/motion/norm.hpp"

#include "core/interpret/motion/lines.hpp"

#include <algorithm>
#include <tuple>

namespace limbledger::interpret {

namespace {

// 1.96 / 2.772 = 70 / 99 exactly, so that the comparison needs no rounding.
constexpr std::int64_t error_times = 70;
constexpr std::int64_t error_over = 99;

struct Asked {
  const reference::NormRow* row = nullptr;
  Verdict verdict = Verdict::no_norm;
};

// Every row that may apply to this person, each once, in a fixed order; a null row where an age or sex has none.
[[nodiscard]] std::vector<Asked> ask_rows(const View& view, const Reading& reading, const model::AgeInterval& age) {
  std::vector<Asked> asked;
  const model::NormSex sex = view.person()->norm_sex;
  for (const model::NormSex each : {model::NormSex::male, model::NormSex::female}) {
    if (sex != model::NormSex::unspecified && sex != each) {
      continue;
    }
    for (std::int64_t years = age.low; years <= age.high; ++years) {
      const reference::NormRow* row = norm_row(view.edition(), {reading.item, each, years, reading.positions});
      const bool known = std::any_of(asked.begin(), asked.end(), [&](const Asked& a) { return a.row == row; });
      if (!known) {
        asked.push_back({row, Verdict::no_norm});
      }
    }
  }
  return asked;
}

void compare_lines(const Reading& reading, std::int64_t mdc95, const Asked& asked, Working& working) {
  const Limits limits = *limits_of(*asked.row);
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

void conclude(Judged& judged, Verdict verdict, bool taught) {
  Statement& statement = judged.statement;
  statement.verdict = verdict;
  judged.working.formula = {std::string(formula_of(verdict))};
  // A figure taught but not read at its source is compared with and described; it raises nothing.
  const std::string suffix = taught ? "_taught" : "";
  switch (verdict) {
    case Verdict::below:
    case Verdict::above:
      statement.grade = taught ? StatementGrade::unclear : StatementGrade::notable;
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
      name_message(judged, "norms_disagree" + suffix);
      judged.working.changes_if.push_back({"msg.change.age_or_sex"});
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
      const Limits limits = *limits_of(*one.row);
      widest = {std::min(widest.low, limits.low), std::max(widest.high, limits.high)};
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
  const auto age = view.age_on_exam();
  if (!age) {
    return refuse(std::move(judged), reading, Verdict::no_norm, "needs_age", "birth");
  }
  std::vector<Asked> asked = ask_rows(view, reading, *age);
  const bool any = std::any_of(asked.begin(), asked.end(), [](const Asked& a) { return a.row != nullptr; });
  if (!any) {
    return refuse(std::move(judged), reading, Verdict::no_norm, "no_norm", "");
  }
  const auto precision = precision_of(view.edition(), {&reading});
  bool taught = false;
  for (Asked& one : asked) {
    if (one.row == nullptr) {
      continue;
    }
    const Limits limits = *limits_of(*one.row);
    one.verdict = precision ? against_norm(reading.low, reading.high, precision->mdc95, limits) : Verdict::not_distinguishable;
    judged.statement.rows.push_back(one.row->row);
    Params numbers;
    numbers.exact("mean", one.row->mean.steps);
    if (one.row->sd) {
      numbers.exact("sd", one.row->sd->steps);
    }
    if (limits.low > -open_end) {
      numbers.exact("low", limits.low);
    }
    if (limits.high < open_end) {
      numbers.exact("high", limits.high);
    }
    judged.working.rows.push_back({one.row->row, one.row->source, one.row->status, numbers.raw()});
    taught = taught || one.row->status == model::Status::memory;
    if (one.row->position && reading.positions.empty()) {
      judged.statement.missing = {{"position"}};
    }
  }
  norm_params(reading, asked, precision ? precision->mdc95 : 0, judged.statement);
  if (!precision) {
    name_message(judged, "needs_instrument");
    judged.statement.missing.push_back({"instrument"});
    judged.working.formula = {"no error without an instrument"};
    judged.working.changes_if.push_back({"msg.change.instrument"});
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
  conclude(judged, agree ? asked.front().verdict : Verdict::norms_disagree, taught);
  if (taught) {
    judged.working.lines.push_back({"taught value: the norm was not read at its source, so it raises nothing"});
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

std::optional<Limits> limits_of(const reference::NormRow& row) {
  Limits limits;
  if (row.typical_low) {
    limits.low = row.typical_low->steps;
  } else if (row.sd) {
    limits.low = row.mean.steps - 2 * row.sd->steps;
  }
  if (row.typical_high) {
    limits.high = row.typical_high->steps;
  } else if (row.sd) {
    limits.high = row.mean.steps + 2 * row.sd->steps;
  }
  if (limits.low == -open_end && limits.high == open_end) {
    return std::nullopt;
  }
  return limits;
}

const reference::NormRow* norm_row(const reference::Edition& edition, const NormQuestion& question) {
  const model::Item& item = *question.item;
  const reference::Mode mode = mode_of(item);
  const auto rank = [&](const reference::NormRow& row) {
    return std::tuple(row.mode == mode ? 0 : 1, row.status == model::Status::memory ? 1 : 0, row.position && !question.positions.empty() ? 0 : 1,
                      row.sex ? 0 : 1, row.age_high.steps - row.age_low.steps, row.row.text);
  };
  const reference::NormRow* best = nullptr;
  for (const reference::NormRow& row : edition.norms()) {
    const bool same_motion = row.family == item.family && (!item.toward || row.toward == *item.toward);
    // A row that does not say how the motion was made is asked only where no row does.
    const bool same_mode = row.mode == mode || row.mode == reference::Mode::unspecified;
    const bool same_sex = !row.sex || *row.sex == question.sex || *row.sex == model::NormSex::unspecified;
    const bool same_age = question.age_years >= row.age_low.steps && question.age_years <= row.age_high.steps;
    // A reading in another position is another quantity; one in no recorded position may be met where the item is done so, and says so.
    const bool done_so =
        !row.position || !item.positions || std::find(item.positions->begin(), item.positions->end(), *row.position) != item.positions->end();
    const bool same_position = done_so && (!row.position || std::all_of(question.positions.begin(), question.positions.end(),
                                                            [&](const std::string& position) { return position == row.position->text; }));
    if (row.preferred && same_motion && same_mode && same_sex && same_age && same_position && limits_of(row) &&
        (best == nullptr || rank(row) < rank(*best))) {
      best = &row;
    }
  }
  return best;
}

std::vector<Judged> judge_norms(const View& view, const std::vector<Reading>& readings) {
  std::vector<Judged> judged;
  for (const Reading& reading : readings) {
    judged.push_back(judge_norm(view, reading));
  }
  return judged;
}

}  // namespace limbledger::interpret
