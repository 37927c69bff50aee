#include "core/reference/facts.hpp"
#include "core/wire/parse.hpp"

#include <algorithm>

namespace limbledger::reference {

namespace {

// Printed figures are rounded to a tenth, so a figure derived from them may be off by half of that; in thousandths.
constexpr std::int64_t rounding = 50;
// Limits are printed to a tenth or to a whole degree.
constexpr std::int64_t rounding_of_limit = 100;
// Said in `seen` where the two limits are the source's own and not the mean with two SD to either side.
constexpr std::string_view limits_as_printed = "typical limits as printed";

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

void check_norm(const Row& row, const NormRow& norm, const Facts& facts) {
  row.need(norm.age_low.steps <= norm.age_high.steps, "value.out_of_range", "/age_low", "the younger age first");
  row.need(norm.ci95_low.has_value() == norm.ci95_high.has_value(), "params.missing", "/ci95_low", "both ends of the interval, or none");
  row.need(norm.typical_low.has_value() == norm.typical_high.has_value(), "params.missing", "/typical_low", "both limits, or none");
  row.need(!norm.sd || norm.sd->steps > 0, "value.out_of_range", "/sd", "more than 0");
  if (norm.ci95_low && norm.ci95_high) {
    const bool ordered = norm.ci95_low->steps <= norm.mean.steps && norm.mean.steps <= norm.ci95_high->steps;
    row.need(ordered, "value.out_of_range", "/ci95_low", "low, mean, high in this order");
    if (ordered && norm.sd && norm.n) {
      row.need(sd_follows(norm), "value.disagrees", "/sd", "half the interval / 1.96 x sqrt(n)");
    }
  }
  if (norm.typical_low && norm.typical_high) {
    row.need(norm.typical_low->steps <= norm.mean.steps && norm.mean.steps <= norm.typical_high->steps, "value.out_of_range", "/typical_low",
             "low, mean, high in this order");
    if (norm.seen.text.find(limits_as_printed) == std::string::npos) {
      row.need(norm.sd.has_value(), "params.missing", "/sd", "the SD that the limits come from");
      const std::int64_t sd = norm.sd ? norm.sd->steps : 0;
      row.need(!norm.sd || near(norm.typical_low->steps, norm.mean.steps - 2 * sd, rounding_of_limit), "value.disagrees", "/typical_low", "mean - 2 SD");
      row.need(!norm.sd || near(norm.typical_high->steps, norm.mean.steps + 2 * sd, rounding_of_limit), "value.disagrees", "/typical_high",
               "mean + 2 SD");
    }
  }
  row.need(!norm.instrument || uses_instrument(facts, *norm.instrument), "value.instrument", "/instrument", "an instrument of some item");
  row.need(!norm.position || uses_position(facts, *norm.position), "value.position", "/position", "a position of some item");
  row.need(facts.has_source(norm.source), "params.unknown_word", "/source", "a source of the list");
  row.need(!norm.seen.text.empty(), "value.empty", "/seen", "where each figure was seen");
}

// Where two rows of one motion could both be the default, nobody could say which one was used.
void check_preferred(const Facts& facts, Faults& faults) {
  for (std::size_t i = 0; i < facts.norms.size(); ++i) {
    for (std::size_t j = 0; j < i; ++j) {
      const NormRow& a = facts.norms[i];
      const NormRow& b = facts.norms[j];
      const bool position = !a.position || !b.position || *a.position == *b.position;
      const bool same = a.preferred && b.preferred && a.family == b.family && a.mode == b.mode && a.sex == b.sex && position;
      const bool overlap = a.age_low.steps <= b.age_high.steps && b.age_low.steps <= a.age_high.steps;
      const Row row{"/norms" + wire::pointer_step(i), a.row.text, faults};
      row.need(!(same && overlap), "value.disagrees", "/preferred", "one default for a motion, position, sex and age; also " + b.row.text);
    }
  }
}

void check_error(const Row& row, const ErrorRow& error, const Facts& facts) {
  row.need(error.mdc95.steps > 0, "value.out_of_range", "/mdc95", "more than 0");
  row.need(!(error.item && error.region), "value.all_or_one", "/region", "an item, or a region, or neither");
  const bool described = error.described.value_or(false);
  row.need(described || uses_instrument(facts, error.instrument), "value.instrument", "/instrument", "an instrument of some item");
  row.need(error.mdc95_low.has_value() == error.mdc95_high.has_value(), "params.missing", "/mdc95_low", "both ends of the printed range, or none");
  if (error.mdc95_low && error.mdc95_high) {
    row.need(error.mdc95_low->steps > 0 && error.mdc95_low->steps < error.mdc95_high->steps, "value.out_of_range", "/mdc95_low", "low, then high");
    row.need(error.mdc95 == *error.mdc95_high, "value.disagrees", "/mdc95", "the high end of the printed range");
  }
  row.need(facts.has_source(error.source), "params.unknown_word", "/source", "a source of the list");
  row.need(!error.seen.text.empty(), "value.empty", "/seen", "where the figure was seen");
  if (!error.item) {
    return;
  }
  const model::Item* item = facts.item(*error.item);
  row.need(item != nullptr && item->value == model::ValueKind::angle, "item.unknown", "/item", "an item measured in degrees");
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
    for (std::size_t j = 0; j < i; ++j) {
      const ErrorRow& a = facts.errors[i];
      const ErrorRow& b = facts.errors[j];
      const Row row{"/errors" + wire::pointer_step(i), a.row.text, faults};
      row.need(!(a.item == b.item && a.region == b.region && a.instrument == b.instrument && !a.described && !b.described), "value.disagrees", "/instrument",
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
