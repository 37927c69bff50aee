#include "core/reference/facts.hpp"
#include "core/wire/parse.hpp"

#include <algorithm>
#include <utility>

namespace limbledger::reference {

namespace {

// Printed figures are rounded to a tenth, so a figure derived from them may be off by half of that; in thousandths.
constexpr std::int64_t rounding = 50;
// Limits are printed to a tenth or to a whole degree.
constexpr std::int64_t rounding_of_limit = 100;

struct Row {
  std::string path;
  std::string name;
  Faults& faults;

  void need(bool holds, std::string_view code, std::string_view member, std::string_view must) const {
    if (!holds) {
      faults.emplace_back(code, path + std::string(member), name + ": " + std::string(must));
    }
  }
};

[[nodiscard]] bool uses_instrument(const Facts& facts, const model::Word& instrument) {
  return std::any_of(facts.items.begin(), facts.items.end(), [&](const model::Item& item) {
    return item.instruments && std::find(item.instruments->begin(), item.instruments->end(), instrument) != item.instruments->end();
  });
}

[[nodiscard]] bool uses_position(const Facts& facts, const model::Word& position) {
  return std::any_of(facts.items.begin(), facts.items.end(), [&](const model::Item& item) {
    return item.positions && std::find(item.positions->begin(), item.positions->end(), position) != item.positions->end();
  });
}

// SD = half the interval / 1.96 x sqrt(n). Squared, so that no root is needed: (1.96 SD)^2 lies around half^2 n.
[[nodiscard]] bool sd_follows(const NormRow& row) {
  const double half = static_cast<double>(row.ci95_high->steps - row.ci95_low->steps) / 2;
  const double exact = half * half * static_cast<double>(row.n->steps);
  const double low = 1.96 * static_cast<double>(std::max<std::int64_t>(row.sd->steps - rounding - 1, 0));
  const double high = 1.96 * static_cast<double>(row.sd->steps + rounding + 1);
  return low * low <= exact && exact <= high * high;
}

[[nodiscard]] bool near(std::int64_t a, std::int64_t b, std::int64_t by) { return a - b <= by && b - a <= by; }

void check_norm_figures(const Row& row, const NormRow& norm) {
  row.need(norm.ci95_low.has_value() == norm.ci95_high.has_value(), "params.missing", "/ci95_low", "both ends of the interval, or none");
  row.need(!norm.sd || norm.sd->steps > 0, "value.out_of_range", "/sd", "more than 0");
  row.need(norm.mean || norm.typical_low || norm.typical_high, "params.missing", "/mean", "a mean or a limit");
  if (norm.ci95_low && norm.ci95_high && norm.mean) {
    const bool ordered = norm.ci95_low->steps <= norm.mean->steps && norm.mean->steps <= norm.ci95_high->steps;
    row.need(ordered, "value.out_of_range", "/ci95_low", "low, mean, high in this order");
    if (ordered && norm.sd && norm.n) {
      row.need(sd_follows(norm), "value.disagrees", "/sd", "half the interval / 1.96 x sqrt(n)");
    }
  }
  const bool low = !norm.typical_low || !norm.mean || norm.typical_low->steps <= norm.mean->steps;
  const bool high = !norm.typical_high || !norm.mean || norm.mean->steps <= norm.typical_high->steps;
  const bool between = !norm.typical_low || !norm.typical_high || norm.typical_low->steps < norm.typical_high->steps;
  row.need(low && high && between, "value.out_of_range", "/typical_low", "low, mean, high in this order");
  if (norm.limits || (!norm.typical_low && !norm.typical_high)) {
    return;
  }
  row.need(norm.typical_low && norm.typical_high, "params.missing", "/typical_low", "both limits, or none");
  row.need(norm.sd && norm.mean, "params.missing", "/sd", "the SD that the limits come from");
  if (norm.sd && norm.mean && norm.typical_low && norm.typical_high) {
    const std::int64_t sd = norm.sd->steps;
    row.need(near(norm.typical_low->steps, norm.mean->steps - 2 * sd, rounding_of_limit), "value.disagrees", "/typical_low", "mean - 2 SD");
    row.need(near(norm.typical_high->steps, norm.mean->steps + 2 * sd, rounding_of_limit), "value.disagrees", "/typical_high", "mean + 2 SD");
  }
}

void check_norm(const Row& row, const NormRow& norm, const Facts& facts) {
  row.need(norm.months_low() <= norm.months_high(), "value.out_of_range", "/age_low", "the younger age first");
  row.need(!norm.age_months_low || norm.age_months_low->steps / 12 == norm.age_low.steps, "value.disagrees", "/age_months_low", "months of that year");
  row.need(!norm.age_months_high || norm.age_months_high->steps / 12 == norm.age_high.steps, "value.disagrees", "/age_months_high", "months of that year");
  if (norm.default_ages) {
    const auto& ages = *norm.default_ages;
    const bool within = norm.age_low.steps <= ages.low.steps && ages.high.steps <= norm.age_high.steps;
    const bool stands_in = norm.taught() && norm.age_high.steps < ages.low.steps;
    row.need(ages.low.steps <= ages.high.steps && (within || stands_in), "value.out_of_range", "/default_ages",
             "ages of the row, or of a taught value ages above them; the younger first");
  }
  row.need(!norm.preferred || !norm.described.value_or(false), "value.disagrees", "/preferred", "a described row is no default");
  row.need(!norm.preferred || norm.confidence != Sureness::low, "value.disagrees", "/preferred", "low confidence is no default");
  check_norm_figures(row, norm);
  row.need(!norm.instrument || uses_instrument(facts, *norm.instrument), "value.instrument", "/instrument", "an instrument of some item");
  row.need(!norm.position || uses_position(facts, *norm.position), "value.position", "/position", "a position of some item");
  row.need(facts.has_source(norm.source), "params.unknown_word", "/source", "a source of the list");
  row.need(!norm.seen.text.empty(), "value.empty", "/seen", "where each figure was seen");
  if (norm.items) {
    for (const model::ItemId& id : *norm.items) {
      const model::Item* item = facts.item(id);
      row.need(item != nullptr, "item.unknown", "/items", "items of the catalogue; not " + id.text);
      const bool same_unit = item == nullptr || (item->unit ? item->unit->text : "") == (norm.unit ? (norm.unit->text == "count" ? "" : norm.unit->text) : "deg");
      row.need(same_unit, "value.disagrees", "/unit", "the unit of " + id.text);
    }
  }
}

// Of the ages where a row is the default, in months.
[[nodiscard]] std::pair<std::int64_t, std::int64_t> default_months(const NormRow& row) {
  return row.default_ages ? std::pair(row.default_ages->low.steps * 12, row.default_ages->high.steps * 12 + 11)
                          : std::pair(row.months_low(), row.months_high());
}

[[nodiscard]] bool has_limits(const NormRow& row) {
  const bool shown_only = row.limits == LimitsKind::middle_half || row.limits == LimitsKind::arc_ends || row.limits == LimitsKind::none;
  return !shown_only && (row.sd || row.typical_low || row.typical_high);
}

// Both could be asked, and nothing in the rows says which stands first. Taught values stand behind read ones.
[[nodiscard]] bool clash(const NormRow& a, const NormRow& b) {
  const bool position = !a.position || !b.position || *a.position == *b.position;
  const bool same = a.mode == b.mode && a.sex == b.sex && position && a.taught() == b.taught() && has_limits(a) == has_limits(b);
  const auto [a_low, a_high] = default_months(a);
  const auto [b_low, b_high] = default_months(b);
  return same && a_low <= b_high && b_low <= a_high && !(a.disputed.value_or(false) && b.disputed.value_or(false));
}

// Where two rows of one motion could both be the default, nobody could say which one was used.
void check_preferred(const Facts& facts, Faults& faults) {
  std::vector<std::vector<bool>> speaks;  // of the preferred rows, by item
  std::vector<std::size_t> rows;
  for (std::size_t i = 0; i < facts.norms.size(); ++i) {
    if (!facts.norms[i].preferred) {
      continue;
    }
    std::vector<bool>& of = speaks.emplace_back(facts.items.size());
    for (std::size_t item = 0; item < facts.items.size(); ++item) {
      of[item] = speaks_of(facts.norms[i], facts.items[item]);
    }
    rows.push_back(i);
  }
  for (std::size_t at = 0; at < rows.size(); ++at) {
    for (std::size_t before = 0; before < at; ++before) {
      const NormRow& a = facts.norms[rows[at]];
      const NormRow& b = facts.norms[rows[before]];
      if (!clash(a, b)) {
        continue;
      }
      bool both = !a.items && !b.items && a.family == b.family;
      for (std::size_t item = 0; item < facts.items.size() && !both; ++item) {
        both = speaks[at][item] && speaks[before][item];
      }
      if (both) {
        const Row row{"/norms" + wire::pointer_step(rows[at]), a.row.text, faults};
        row.need(false, "value.disagrees", "/preferred", "one default for a motion, position, sex and age; also " + b.row.text);
        break;
      }
    }
  }
}

// The change that follows from the standard error at the high end, each printed to a tenth or a hundredth: 2.7718 x, without roots.
[[nodiscard]] bool mdc_follows(const ErrorRow& row) {
  if (!row.sem_high || !row.mdc95 || row.status != model::Status::derived) {
    return true;
  }
  return near(row.mdc95->steps, wire::round_divide(row.sem_high->steps * 27718, 10000), rounding + 1);
}

void check_error(const Row& row, const ErrorRow& error, const Facts& facts) {
  const bool described = error.described.value_or(false);
  row.need(described || error.mdc95, "params.missing", "/mdc95", "a smallest change to believe, or described");
  row.need(!error.mdc95 || error.mdc95->steps > 0, "value.out_of_range", "/mdc95", "more than 0");
  row.need(described || error.confidence != Sureness::low, "value.disagrees", "/described", "low confidence never computes");
  // "Above 0.90" has a low end alone.
  row.need(error.icc_low || !error.icc_high, "params.missing", "/icc_low", "the low end, or both");
  const std::int64_t icc_high = error.icc_high ? error.icc_high->steps : 1000;
  row.need(!error.icc_low || (error.icc_low->steps <= icc_high && icc_high <= 1000), "value.out_of_range", "/icc_low", "low, then high, up to 1");
  row.need(error.sem_low.has_value() == error.sem_high.has_value(), "params.missing", "/sem_low", "both ends, or none");
  row.need(mdc_follows(error), "value.disagrees", "/mdc95", "1.96 x sqrt(2) x the standard error");
  row.need(!(error.item && error.region), "value.all_or_one", "/region", "an item, or a region, or neither");
  row.need(described || uses_instrument(facts, error.instrument), "value.instrument", "/instrument", "an instrument of some item");
  row.need(error.mdc95_low.has_value() == error.mdc95_high.has_value(), "params.missing", "/mdc95_low", "both ends of the printed range, or none");
  if (error.mdc95_low && error.mdc95_high) {
    row.need(error.mdc95_low->steps > 0 && error.mdc95_low->steps < error.mdc95_high->steps, "value.out_of_range", "/mdc95_low", "low, then high");
    row.need(error.mdc95 == error.mdc95_high, "value.disagrees", "/mdc95", "the high end of the printed range");
  }
  row.need(facts.has_source(error.source), "params.unknown_word", "/source", "a source of the list");
  row.need(!error.seen.text.empty(), "value.empty", "/seen", "where the figure was seen");
  if (!error.item) {
    return;
  }
  const model::Item* item = facts.item(*error.item);
  const std::string unit = error.unit ? error.unit->text : "deg";
  row.need(item != nullptr && item->unit && item->unit->text == unit, "item.unknown", "/item", "an item measured in " + unit);
  if (item != nullptr && item->instruments && !described) {
    row.need(std::find(item->instruments->begin(), item->instruments->end(), error.instrument) != item->instruments->end(), "value.instrument",
             "/instrument", "an instrument of the item");
  }
}

void check_figure(const Row& row, const FigureRow& figure, const Facts& facts) {
  row.need(figure.low.has_value() == figure.high.has_value(), "params.missing", "/low", "both ends, or none");
  row.need(!figure.low || !figure.high || figure.low->steps < figure.high->steps, "value.out_of_range", "/low", "low, then high");
  if (figure.value && figure.low && figure.high) {
    row.need(figure.low->steps <= figure.value->steps && figure.value->steps <= figure.high->steps, "value.out_of_range", "/value",
             "low, value, high in this order");
  }
  row.need(!figure.item || facts.item(*figure.item) != nullptr, "item.unknown", "/item", "an item of the catalogue");
  row.need(facts.has_source(figure.source), "params.unknown_word", "/source", "a source of the list");
  row.need(!figure.seen.text.empty(), "value.empty", "/seen", "where the figure was seen");
}

}  // namespace

void check_motion(const Facts& facts, Faults& faults) {
  for (std::size_t i = 0; i < facts.norms.size(); ++i) {
    check_norm({"/norms" + wire::pointer_step(i), facts.norms[i].row.text, faults}, facts.norms[i], facts);
  }
  check_preferred(facts, faults);
  for (std::size_t i = 0; i < facts.errors.size(); ++i) {
    check_error({"/errors" + wire::pointer_step(i), facts.errors[i].row.text, faults}, facts.errors[i], facts);
    for (std::size_t j = 0; j < i && !facts.errors[i].described.value_or(false); ++j) {
      const ErrorRow& a = facts.errors[i];
      const ErrorRow& b = facts.errors[j];
      const Row row{"/errors" + wire::pointer_step(i), a.row.text, faults};
      row.need(!(a.item == b.item && a.region == b.region && a.unit == b.unit && a.instrument == b.instrument && !a.described.value_or(false) && !b.described.value_or(false)), "value.disagrees", "/instrument",
               "one error for an item or region and an instrument; also " + b.row.text);
    }
  }
  for (std::size_t i = 0; i < facts.figures.size(); ++i) {
    const Row row{"/figures" + wire::pointer_step(i), facts.figures[i].row.text, faults};
    check_figure(row, facts.figures[i], facts);
    for (std::size_t j = 0; j < i; ++j) {
      row.need(!(facts.figures[i].row == facts.figures[j].row), "json.duplicate_member", "/row", "a name stands once");
    }
  }
}

}  // namespace limbledger::reference
