#include "core/reference/facts.hpp"
#include "core/wire/parse.hpp"

#include <algorithm>
#include <array>
#include <map>

namespace limbledger::reference {

namespace {

using model::ValueKind;

constexpr std::array regions{std::string_view("history"), std::string_view("general"), std::string_view("body"),     std::string_view("pelvis"),
                             std::string_view("hip"),     std::string_view("knee"),    std::string_view("leg"),      std::string_view("ankle"),
                             std::string_view("foot"),    std::string_view("gait"),    std::string_view("function"), std::string_view("nerve"),
                             std::string_view("vessel"),  std::string_view("skin"),    std::string_view("examiner")};

// The unit a kind of value is measured in; empty for the kinds without one.
[[nodiscard]] std::string_view unit_of(ValueKind kind) {
  switch (kind) {
    case ValueKind::angle:
    case ValueKind::arc:
      return "deg";
    case ValueKind::length:
      return "mm";
    case ValueKind::time:
      return "s";
    case ValueKind::force:
      return "n";
    case ValueKind::pressure:
      return "mm_hg";
    case ValueKind::temperature:
      return "cel";
    case ValueKind::mass:
      return "kg";
    default:
      return {};
  }
}

[[nodiscard]] bool is_number(ValueKind kind) { return kind == ValueKind::count || (kind != ValueKind::arc && !unit_of(kind).empty()); }

struct Row {
  std::string path;
  std::string name;
  Faults& faults;

  void fault(std::string_view code, std::string_view member, std::string_view must) const {
    faults.emplace_back(code, path + std::string(member), name + ": " + std::string(must));
  }
  void need(bool holds, std::string_view code, std::string_view member, std::string_view must) const {
    if (!holds) {
      fault(code, member, must);
    }
  }
};

[[nodiscard]] std::string at(std::string_view list, std::size_t index) { return "/" + std::string(list) + wire::pointer_step(index); }

// Names that stand more than once.
template <class T, class Get>
void check_once(const std::vector<T>& rows, std::string_view list, std::string_view member, Get get, Faults& faults) {
  std::map<std::string, std::size_t> seen;
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const std::string& name = get(rows[i]);
    if (!seen.emplace(name, i).second) {
      Row{at(list, i), name, faults}.fault("json.duplicate_member", member, "a name stands once");
    }
  }
}

void check_sources(const Row& row, const std::vector<model::SourceId>& sources, const Facts& facts) {
  row.need(!sources.empty(), "params.missing", "/sources", "at least one source");
  for (std::size_t i = 0; i < sources.size(); ++i) {
    row.need(facts.has_source(sources[i]), "params.unknown_word", "/sources" + wire::pointer_step(i), "a source of the list");
  }
}

[[nodiscard]] bool in_order(const std::vector<model::LimitNumber>& limits) {
  return limits.size() == 2 && limits.front().steps <= limits.back().steps;
}

void check_limits(const Row& row, const model::Item& item) {
  row.need(!(item.refuse || item.confirm) || is_number(item.value), "item.not_applicable", "/refuse", "limits only where a number is measured");
  row.need(item.refuse || !is_number(item.value), "params.missing", "/refuse", "limits where a number is measured");
  row.need(!item.refuse || in_order(*item.refuse), "value.out_of_range", "/refuse", "low, then high");
  row.need(!item.confirm || in_order(*item.confirm), "value.out_of_range", "/confirm", "low, then high");
  if (item.refuse && item.confirm && in_order(*item.refuse) && in_order(*item.confirm)) {
    row.need(item.confirm->front().steps >= item.refuse->front().steps && item.confirm->back().steps <= item.refuse->back().steps, "value.out_of_range",
             "/confirm", "inside the limits that refuse");
  }
}

void check_axis(const Row& row, const model::Item& item, const Facts& facts) {
  if (item.value == ValueKind::angle) {
    const bool whole = item.axis && item.end && item.toward;
    row.need(whole, "params.missing", "/axis", "axis, end and toward");
    if (whole) {
      row.need((*item.toward == *item.axis) == (*item.end == model::AxisEnd::high), "value.disagrees", "/toward",
               "the axis is named for its high end, and only for that");
    }
  }
  row.need(item.arc.has_value() == (item.value == ValueKind::arc), "item.not_applicable", "/arc", "two ends for an arc, and only there");
  if (!item.arc) {
    return;
  }
  const model::Item* low = facts.item(item.arc->low);
  const model::Item* high = facts.item(item.arc->high);
  row.need(low != nullptr && low->end == model::AxisEnd::low && low->axis == item.axis && low->sides == item.sides, "item.unknown", "/arc/low",
           "the low end of the same axis");
  row.need(high != nullptr && high->end == model::AxisEnd::high && high->axis == item.axis && high->sides == item.sides, "item.unknown", "/arc/high",
           "the high end of the same axis");
}

void check_item(const Row& row, const model::Item& item, const Facts& facts) {
  row.need(std::find(regions.begin(), regions.end(), item.region.text) != regions.end(), "params.unknown_word", "/region", "a region of the body");
  row.need(item.item.text.starts_with(item.region.text + "."), "value.disagrees", "/item", "the name starts with the region");
  row.need(!item.sides.empty(), "params.missing", "/sides", "at least one side");
  row.need((item.unit ? std::string_view(item.unit->text) : std::string_view()) == unit_of(item.value), "value.disagrees", "/unit",
           "the unit of this kind of value");
  row.need(item.trials_max.has_value() == item.of_trials.has_value(), "value.disagrees", "/of_trials", "how readings are summed, where several are taken");
  row.need(item.scale.has_value() == (item.value == ValueKind::grade), "value.disagrees", "/scale", "a scale for a grade, and only there");
  row.need(!item.scale || facts.has_scale(*item.scale), "params.unknown_word", "/scale", "a scale of the list");
  const bool chooses = item.value == ValueKind::choice || item.value == ValueKind::choices;
  row.need(item.choices.has_value() == chooses && (!chooses || !item.choices->empty()), "value.disagrees", "/choices",
           "choices where one is chosen, and only there");
  for (const auto& instead : item.instead.value_or(std::vector<model::Instead>{})) {
    row.need(facts.item(instead.item) != nullptr, "item.unknown", "/instead", "an item of the list");
  }
  for (const auto& concern : item.withheld_by.value_or(std::vector<model::ConcernId>{})) {
    row.need(concern.text.starts_with("concern."), "params.unknown_word", "/withheld_by", "a concern");
  }
  check_limits(row, item);
  check_axis(row, item, facts);
  check_sources(row, item.sources, facts);
}

void check_sequence(const Row& row, const model::Sequence& sequence, const Facts& facts) {
  for (std::size_t i = 0; i < sequence.steps.size(); ++i) {
    const model::SequenceStep& step = sequence.steps[i];
    const model::Item* item = facts.item(step.item);
    const std::string member = "/steps" + wire::pointer_step(i);
    row.need(item != nullptr, "item.unknown", member + "/item", "an item of the list");
    if (item != nullptr && item->positions) {
      row.need(std::find(item->positions->begin(), item->positions->end(), step.position) != item->positions->end(), "value.position", member + "/position",
               "a position of the item");
    }
  }
  if (sequence.complaint.text == "free") {
    const bool all = std::equal(sequence.steps.begin(), sequence.steps.end(), facts.items.begin(), facts.items.end(),
                                [](const model::SequenceStep& step, const model::Item& item) { return step.item == item.item; });
    row.need(all, "value.disagrees", "/steps", "every item, in the order of the catalogue");
  }
  check_sources(row, sequence.sources, facts);
}

}  // namespace

void check_catalogue(const Facts& facts, Faults& faults) {
  check_once(facts.items, "items", "/item", [](const model::Item& one) -> const std::string& { return one.item.text; }, faults);
  check_once(facts.scales, "scales", "/scale", [](const model::Scale& one) -> const std::string& { return one.scale.text; }, faults);
  check_once(facts.sources, "sources", "/source", [](const Source& one) -> const std::string& { return one.source.text; }, faults);
  check_once(facts.sequences, "sequences", "/complaint", [](const model::Sequence& one) -> const std::string& { return one.complaint.text; }, faults);
  check_once(facts.norms, "norms", "/row", [](const NormRow& one) -> const std::string& { return one.row.text; }, faults);
  check_once(facts.errors, "errors", "/row", [](const ErrorRow& one) -> const std::string& { return one.row.text; }, faults);
  for (std::size_t i = 0; i < facts.items.size(); ++i) {
    check_item({at("items", i), facts.items[i].item.text, faults}, facts.items[i], facts);
  }
  for (std::size_t i = 0; i < facts.scales.size(); ++i) {
    const model::Scale& scale = facts.scales[i];
    const Row row{at("scales", i), scale.scale.text, faults};
    row.need(!scale.grades.empty(), "params.missing", "/grades", "at least one grade");
    for (std::size_t g = 1; g < scale.grades.size(); ++g) {
      const auto before = scale.grades.begin() + static_cast<std::ptrdiff_t>(g);
      const bool again = std::any_of(scale.grades.begin(), before, [&](const model::ScaleGrade& one) { return one.grade == scale.grades[g].grade; });
      row.need(!again, "json.duplicate_member", "/grades" + wire::pointer_step(g), "a grade stands once");
    }
    check_sources(row, scale.sources, facts);
  }
  for (std::size_t i = 0; i < facts.sequences.size(); ++i) {
    check_sequence({at("sequences", i), facts.sequences[i].complaint.text, faults}, facts.sequences[i], facts);
  }
}

}  // namespace limbledger::reference
