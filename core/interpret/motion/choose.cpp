#include "core/interpret/motion/choose.hpp"

#include <algorithm>
#include <tuple>

namespace limbledger::interpret {

namespace {

using reference::LimitsKind;
using reference::NormRow;

struct Months {
  std::int64_t low = 0;
  std::int64_t high = 0;
};

// Where the row is a default: its own ages, or those it is the default for, which may lie above them where it stands in.
[[nodiscard]] Months months_of(const NormRow& row) {
  Months months{row.months_low(), row.months_high()};
  if (row.default_ages) {
    months.low = row.default_ages->low.steps * 12;
    months.high = row.default_ages->high.steps * 12 + 11;
  }
  return months;
}

// The smaller, the better. Of two rows in dispute the ages do not decide.
[[nodiscard]] auto standing_of(const NormRow& row, const NormQuestion& question, reference::Mode mode) {
  const int by_mode = row.mode == mode ? 0 : (row.mode == reference::Mode::unspecified ? 1 : 2);
  return std::tuple(by_mode, row.taught() ? 1 : 0, row.position && !question.positions.empty() ? 0 : 1, row.sex ? 0 : 1);
}

[[nodiscard]] auto rank_of(const NormRow& row, const NormQuestion& question, reference::Mode mode) {
  return std::tuple(standing_of(row, question, mode), row.months_high() - row.months_low(), std::string_view(row.row.text));
}

[[nodiscard]] bool same_sex(const NormRow& row, model::NormSex sex) { return !row.sex || *row.sex == sex || *row.sex == model::NormSex::unspecified; }

// A reading in another position is another quantity; one in no recorded position may be met where the item is done so, and says so.
[[nodiscard]] bool same_position(const NormRow& row, const std::set<std::string>& positions) {
  return !row.position || std::all_of(positions.begin(), positions.end(), [&](const std::string& position) { return position == row.position->text; });
}

}  // namespace

std::optional<Limits> limits_of(const NormRow& row, std::int64_t age_months) {
  const LimitsKind kind = row.limits.value_or(LimitsKind::printed);
  if (kind == LimitsKind::middle_half || kind == LimitsKind::arc_ends || kind == LimitsKind::none) {
    return std::nullopt;
  }
  Limits limits;
  const bool by_sd = row.mean && row.sd;
  const bool ends = kind != LimitsKind::observed;
  if (ends && row.typical_low) {
    limits.low = row.typical_low->steps;
  } else if (by_sd && !(ends && row.typical_high)) {
    limits.low = row.mean->steps - 2 * row.sd->steps;
  }
  if (ends && row.typical_high) {
    limits.high = row.typical_high->steps;
  } else if (by_sd && !(ends && row.typical_low)) {
    limits.high = row.mean->steps + 2 * row.sd->steps;
  }
  if (by_sd && (!row.limits || kind == LimitsKind::observed) && age_months >= wider_from_years * 12) {
    limits.low = row.mean->steps - wire::round_divide(5 * row.sd->steps, 2);
  }
  return limits == Limits{} ? std::nullopt : std::optional(limits);
}

std::string_view why_word(WhyNone why) {
  switch (why) {
    case WhyNone::none:
      return "";
    case WhyNone::motion:
      return "motion";
    case WhyNone::over_84:
      return "over_84";
    case WhyNone::age:
      return "age";
    case WhyNone::sex:
      return "sex";
    case WhyNone::position:
      return "position";
    case WhyNone::spread:
      return "spread";
  }
  return "";
}

NormChoice choose_norm(const reference::Edition& edition, const NormQuestion& question) {
  NormChoice choice;
  const auto candidates = edition.norms_of(*question.item);
  if (candidates.empty() || question.age_months >= (measured_to_years + 1) * 12) {
    choice.why = candidates.empty() ? WhyNone::motion : WhyNone::over_84;
    return choice;
  }
  const reference::Mode mode = mode_of(*question.item);
  choice.why = WhyNone::age;
  const auto later = [&](WhyNone why) { choice.why = std::max(choice.why, why); };
  const NormRow* best = nullptr;
  for (const NormRow* row : candidates) {
    const Months months = months_of(*row);
    if (question.age_months < months.low || question.age_months > months.high) {
      continue;
    }
    later(WhyNone::sex);
    if (!same_sex(*row, question.sex)) {
      continue;
    }
    later(WhyNone::position);
    if (!same_position(*row, question.positions)) {
      continue;
    }
    later(WhyNone::spread);
    const NormRow*& place = limits_of(*row, question.age_months) ? best : choice.shown;
    if (place == nullptr || rank_of(*row, question, mode) < rank_of(*place, question, mode)) {
      place = row;
    }
  }
  if (best == nullptr) {
    return choice;
  }
  choice.why = WhyNone::none;
  choice.shown = nullptr;
  choice.rows.push_back(best);
  for (const NormRow* row : candidates) {
    const Months months = months_of(*row);
    const bool beside = row != best && row->disputed.value_or(false) && best->disputed.value_or(false) && question.age_months >= months.low &&
                        question.age_months <= months.high && same_sex(*row, question.sex) && same_position(*row, question.positions) &&
                        limits_of(*row, question.age_months);
    // Of one standing but for the sex: a source that mixed the two is no less a source.
    if (beside && row->taught() == best->taught() && row->mode == best->mode) {
      choice.rows.push_back(row);
    }
  }
  std::sort(choice.rows.begin(), choice.rows.end(), [](const NormRow* a, const NormRow* b) { return a->row < b->row; });
  return choice;
}

const NormRow* norm_row(const reference::Edition& edition, const NormQuestion& question) {
  const NormChoice choice = choose_norm(edition, question);
  return choice.rows.empty() ? nullptr : choice.rows.front();
}

std::int64_t next_change(const reference::Edition& edition, const model::Item& item, std::int64_t age_months) {
  std::int64_t next = open_end;
  const auto take = [&](std::int64_t month) { next = month > age_months ? std::min(next, month) : next; };
  for (const NormRow* row : edition.norms_of(item)) {
    const Months months = months_of(*row);
    take(months.low);
    take(months.high + 1);
  }
  take(wider_from_years * 12);
  take((measured_to_years + 1) * 12);
  return next;
}

}  // namespace limbledger::interpret
