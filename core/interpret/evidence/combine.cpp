#include "core/interpret/evidence/combine.hpp"

#include "core/interpret/evidence/math.hpp"
#include "core/wire/number.hpp"

#include <algorithm>

namespace limbledger::interpret {

namespace {

using reference::AccuracyRow;
using reference::Measure;

[[nodiscard]] std::string real_text(double value) { return wire::write_number(to_steps(value, 1000), 1000); }
[[nodiscard]] std::string printed_text(const Measure& figure) { return wire::write_number(figure.steps, 10000); }

[[nodiscard]] double logit(double share) { return own_ln(share / (1 - share)); }

[[nodiscard]] std::optional<double> se_of_share(const std::optional<Measure>& low, const std::optional<Measure>& high) {
  if (!low || !high || low->steps <= 0 || high->steps >= 10000) {
    return std::nullopt;
  }
  return (logit(high->real()) - logit(low->real())) / (2 * z_95);
}

// How many people a printed share and its interval speak of: the variance of its logit is 1 / (n p (1 - p)).
[[nodiscard]] std::optional<double> people_behind(const std::optional<Measure>& share, const std::optional<double>& se) {
  if (!share || !se || *se <= 0 || share->steps <= 0 || share->steps >= 10000) {
    return std::nullopt;
  }
  return 1 / (*se * *se * share->real() * (1 - share->real()));
}

// Over several studies an interval speaks of their disagreement too, and not of so many people.
[[nodiscard]] bool of_few(const AccuracyRow& row) {
  if (row.n_people && row.n_people->steps < people_least) {
    return true;
  }
  std::optional<double> present;
  std::optional<double> absent;
  if (row.counts) {
    present = static_cast<double>(row.counts->tp.steps + row.counts->fn.steps);
    absent = static_cast<double>(row.counts->fp.steps + row.counts->tn.steps);
  } else if (row.design != reference::Design::meta_analysis) {
    present = people_behind(row.sens, se_of_share(row.sens_low, row.sens_high));
    absent = people_behind(row.spec, se_of_share(row.spec_low, row.spec_high));
  }
  return (present && *present < group_least) || (absent && *absent < group_least);
}

// The standard error of ln ratio, from the ratio's own interval or from those of both shares.
[[nodiscard]] std::optional<double> printed_error(const AccuracyRow& row, bool positive) {
  const auto& low = positive ? row.lr_pos_low : row.lr_neg_low;
  const auto& high = positive ? row.lr_pos_high : row.lr_neg_high;
  if (low && high && low->steps > 0) {
    return (own_ln(high->real()) - own_ln(low->real())) / (2 * z_95);
  }
  const auto sens_error = se_of_share(row.sens_low, row.sens_high);
  const auto spec_error = se_of_share(row.spec_low, row.spec_high);
  if (!row.sens || !row.spec || !sens_error || !spec_error) {
    return std::nullopt;
  }
  const double s = row.sens->real();
  const double c = row.spec->real();
  const double a = (positive ? 1 - s : s) * *sens_error;
  const double b = (positive ? c : 1 - c) * *spec_error;
  return own_root(a * a + b * b);
}

[[nodiscard]] Ratio from_counts(const reference::FourCells& cells, bool positive) {
  const bool zero = cells.tp.steps == 0 || cells.fn.steps == 0 || cells.fp.steps == 0 || cells.tn.steps == 0;
  const double add = zero ? 0.5 : 0.0;
  const double present_hit = static_cast<double>(positive ? cells.tp.steps : cells.fn.steps) + add;
  const double absent_hit = static_cast<double>(positive ? cells.fp.steps : cells.tn.steps) + add;
  const double present = static_cast<double>(cells.tp.steps + cells.fn.steps) + 2 * add;
  const double absent = static_cast<double>(cells.fp.steps + cells.tn.steps) + 2 * add;
  Ratio ratio;
  ratio.value = (present_hit / present) / (absent_hit / absent);
  ratio.se = own_root(1 / present_hit - 1 / present + 1 / absent_hit - 1 / absent);
  ratio.sum = "(" + real_text(present_hit) + " / " + real_text(present) + ") / (" + real_text(absent_hit) + " / " + real_text(absent) +
              ") = " + real_text(ratio.value) + (zero ? ", 0.5 added to each count" : "");
  return ratio;
}

[[nodiscard]] std::optional<Ratio> as_published(const AccuracyRow& row, bool positive) {
  const bool few = of_few(row);
  Ratio ratio;
  if (row.counts) {
    ratio = from_counts(*row.counts, positive);
    ratio.se = few ? std::max(ratio.se, stated_error) : ratio.se;
    ratio.stated = few;
    return ratio;
  }
  const auto& printed = positive ? row.lr_pos : row.lr_neg;
  if (printed) {
    ratio.value = printed->real();
    ratio.sum = printed_text(*printed) + " as printed";
  } else if (row.sens && row.spec && row.sens->steps > 0 && row.sens->steps < 10000 && row.spec->steps > 0 && row.spec->steps < 10000) {
    const double s = row.sens->real();
    const double c = row.spec->real();
    ratio.value = positive ? s / (1 - c) : (1 - s) / c;
    ratio.sum = (positive ? printed_text(*row.sens) + " / (1 - " + printed_text(*row.spec) + ")"
                          : "(1 - " + printed_text(*row.sens) + ") / " + printed_text(*row.spec)) +
                " = " + real_text(ratio.value);
  } else {
    return std::nullopt;
  }
  const auto error = printed_error(row, positive);
  // Of a few dozen people a printed interval holds less than it says: it is believed as far as a stated error is.
  ratio.se = error && few ? std::max(*error, stated_error) : error.value_or(stated_error);
  ratio.stated = !error || few;
  return ratio;
}

}  // namespace

double Ratio::ln() const { return own_ln(value); }

std::optional<Ratio> ratio_of(const AccuracyRow& row, bool positive) {
  std::optional<Ratio> ratio = as_published(row, positive);
  if (!ratio) {
    return std::nullopt;
  }
  if (row.design == reference::Design::case_control) {
    ratio->value = own_root(ratio->value);
    ratio->sum += "; case-control: its root, " + real_text(ratio->value);
    if (positive && row.spec && row.spec->steps == 10000 && ratio->value > ratio_most_case_control) {
      ratio->value = ratio_most_case_control;
      ratio->sum += ", held to 10";
    }
  }
  if (positive && row.lr_pos_cap && ratio->value > row.lr_pos_cap->real()) {
    ratio->value = row.lr_pos_cap->real();
    ratio->sum += ", held to " + printed_text(*row.lr_pos_cap);
  }
  return ratio;
}

Combined combine(const std::vector<Ratio>& ratios, double by) {
  Combined combined;
  std::vector<double> logs;
  std::vector<std::size_t> for_it;
  std::vector<std::size_t> against_it;
  double product = 0;
  for (std::size_t i = 0; i < ratios.size(); ++i) {
    logs.push_back(ratios[i].ln());
    product += logs.back();
    (logs.back() >= 0 ? for_it : against_it).push_back(i);
  }
  std::stable_sort(for_it.begin(), for_it.end(), [&](std::size_t a, std::size_t b) { return logs[a] > logs[b]; });
  std::stable_sort(against_it.begin(), against_it.end(), [&](std::size_t a, std::size_t b) { return logs[a] < logs[b]; });
  double variance = 0;
  double best = 0;
  for (const auto* side : {&for_it, &against_it}) {
    double weight = 1;
    for (const std::size_t i : *side) {
      combined.order.push_back(i);
      combined.weight.push_back(weight);
      combined.sum += weight * logs[i];
      variance += weight * weight * ratios[i].se * ratios[i].se;
      weight *= by;
    }
    // The strongest single finding, whichever way it points.
    if (!side->empty() && std::max(logs[side->front()], -logs[side->front()]) > std::max(best, -best)) {
      best = logs[side->front()];
    }
  }
  combined.se = own_root(variance);
  combined.point = own_exp(combined.sum);
  combined.best = own_exp(best);
  combined.product = own_exp(product);
  return combined;
}

double held(double ratio) { return std::min(std::max(ratio, ratio_least), ratio_most); }

double posterior(double prior, double ratio) {
  const double odds = prior / (1 - prior) * ratio;
  return odds / (1 + odds);
}

Chances chances(const PriorShare& prior, const Combined& combined) {
  const double least = std::min({held(combined.point), held(combined.best), held(combined.product)});
  const double most = std::max({held(combined.point), held(combined.best), held(combined.product)});
  return {posterior(prior.low, least), posterior(prior.best, held(combined.point)), posterior(prior.high, most)};
}

std::int64_t in_hundred(double chance) { return std::clamp<std::int64_t>(5 * to_steps(chance, 20), 5, 95); }

OutOf out_of_hundred(const Chances& chances) {
  OutOf out;
  out.low = {in_hundred(chances.low)};
  out.high = {in_hundred(chances.high)};
  // Where rounding leaves one figure, the fives around what it stands for: a lone figure claims what nobody knows.
  const std::int64_t figure = out.low.steps;
  if (out.low == out.high && figure > 5 && figure < 95) {
    const double exact = static_cast<double>(figure) / 100;
    out.low = {chances.low > exact ? figure : figure - 5};
    out.high = {chances.high < exact ? figure : figure + 5};
  }
  out.of = {100};
  return out;
}

std::vector<Band> bands_of(const OutOf& range, bool second_class) {
  const auto band = [](std::int64_t of_hundred) {
    if (of_hundred < 10) {
      return 0;
    }
    if (of_hundred <= 50) {
      return 1;
    }
    return of_hundred <= 80 ? 2 : 3;
  };
  const int low = band(range.low.steps);
  const int high = band(range.high.steps);
  if (high - low > 1) {
    return {Band::cannot_tell};
  }
  std::vector<Band> bands;
  for (int i = low; i <= high; ++i) {
    const Band named = static_cast<Band>(second_class && i == 3 ? 2 : i);
    if (bands.empty() || bands.back() != named) {
      bands.push_back(named);
    }
  }
  return bands;
}

RatioInterval interval_of(const Combined& combined) {
  const double width = z_95 * combined.se;
  return {own_exp(combined.sum - width), own_exp(combined.sum + width)};
}

bool tells_nothing(const Combined& combined) {
  const double width = z_95 * combined.se;
  return combined.sum - width <= 0 && combined.sum + width >= 0;
}

}  // namespace limbledger::interpret
