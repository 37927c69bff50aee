#include "core/reference/catalogue/row.hpp"

#include <algorithm>
#include <array>
#include <set>

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

// Why a first choice does not suit; `cannot_` is what the person cannot do.
constexpr std::array reasons{std::string_view("heavy_thigh"), std::string_view("heavy_limb"), std::string_view("small_hands"),
                             std::string_view("one_hand"), std::string_view("guarding"), std::string_view("tense_effusion"),
                             std::string_view("posterior_sag"), std::string_view("medial_side_loose"), std::string_view("cannot_reach_90"),
                             std::string_view("cannot_lie_prone"), std::string_view("cannot_lie_supine"), std::string_view("cannot_lie_side"),
                             std::string_view("cannot_stand"), std::string_view("cannot_walk"), std::string_view("cannot_sit"),
                             std::string_view("one_limb"), std::string_view("too_young"), std::string_view("no_instrument")};

constexpr std::array known_positions{std::string_view("standing"),     std::string_view("walking"), std::string_view("seated"),
                                     std::string_view("half_sitting"), std::string_view("supine"),  std::string_view("left_tilt"),
                                     std::string_view("side_lying"),   std::string_view("prone"),   std::string_view("on_lap")};


[[nodiscard]] bool in_order(const std::vector<model::LimitNumber>& limits) {
  return limits.size() == 2 && limits.front().steps <= limits.back().steps;
}

void check_limits(const CheckedRow& row, const model::Item& item) {
  row.need(!(item.refuse || item.confirm) || is_number(item.value), "item.not_applicable", "/refuse", "limits only where a number is measured");
  row.need(item.refuse || !is_number(item.value), "params.missing", "/refuse", "limits where a number is measured");
  row.need(!item.refuse || in_order(*item.refuse), "value.out_of_range", "/refuse", "low, then high");
  row.need(!item.confirm || in_order(*item.confirm), "value.out_of_range", "/confirm", "low, then high");
  if (item.refuse && item.confirm && in_order(*item.refuse) && in_order(*item.confirm)) {
    row.need(item.confirm->front().steps >= item.refuse->front().steps && item.confirm->back().steps <= item.refuse->back().steps,
             "value.out_of_range", "/confirm", "inside the limits that refuse");
  }
}

void check_axis(const CheckedRow& row, const model::Item& item, const Facts& facts) {
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

// Whoever is told to do a test is told what counts, what goes wrong, and when not to do it.
void check_text(const CheckedRow& row, const model::Item& item) {
  const bool judged = item.value == ValueKind::test || item.counts;
  row.need(!judged || item.text.positive, "params.missing", "/text/positive", "what counts as positive, for a test");
  row.need(!judged || item.text.errors, "params.missing", "/text/errors", "what goes wrong often, for a test");
  row.need(!item.withheld_by || item.text.care, "params.missing", "/text/care", "when not, for what a concern withholds");
}

void check_instead(const CheckedRow& row, const model::Item& item, const Facts& facts) {
  const auto list = item.instead.value_or(std::vector<model::Instead>{});
  for (std::size_t i = 0; i < list.size(); ++i) {
    const model::Instead& one = list[i];
    const std::string member = "/instead" + wire::pointer_step(i);
    const model::Item* other = facts.item(one.item);
    row.need(other != nullptr && !(one.item == item.item), "item.unknown", member + "/item", "another item of the list");
    row.need(other == nullptr || other->sides == item.sides, "item.side", member + "/item", "an item with the same sides");
    row.need(std::find(reasons.begin(), reasons.end(), one.when.text) != reasons.end(), "params.unknown_word", member + "/when",
             "a reason why the first choice does not suit");
    row.need(one.measured.has_value() == (one.over.has_value() != one.under.has_value()), "value.all_or_one", member + "/measured",
             "what is measured with the limit it is over or under, or neither");
    row.need(!one.measured || one.source, "params.missing", member + "/source", "where the limit comes from");
    row.need(!one.source || facts.has_source(*one.source), "params.unknown_word", member + "/source", "a source of the list");
    if (one.measured) {
      const model::Item* measured = facts.item(*one.measured);
      const bool number = measured != nullptr && is_number(measured->value) && measured->refuse && in_order(*measured->refuse);
      row.need(number, "item.unknown", member + "/measured", "an item with a number");
      const std::int64_t limit = one.over ? one.over->steps : (one.under ? one.under->steps : 0);
      row.need(!number || (limit > measured->refuse->front().steps && limit < measured->refuse->back().steps), "value.out_of_range",
               member + "/measured", "a limit that can be measured");
    }
  }
}

void check_counts(const CheckedRow& row, const model::Item& item, const Facts& facts) {
  row.need(!item.counts || item.value == ValueKind::grade, "item.not_applicable", "/counts", "only where a grade is recorded");
  const model::Scale* scale = item.scale ? facts.scale(*item.scale) : nullptr;
  if (!item.counts || scale == nullptr) {
    return;
  }
  const auto known = [&](const wire::Name& grade) {
    return std::any_of(scale->grades.begin(), scale->grades.end(), [&](const model::ScaleGrade& one) { return one.grade == grade; });
  };
  for (std::size_t i = 0; i < item.counts->size(); ++i) {
    const model::Counts& one = (*item.counts)[i];
    const std::string member = "/counts" + wire::pointer_step(i);
    row.need(one.grades || one.end_feels, "params.missing", member, "grades, end feels, or both");
    const auto grades = one.grades.value_or(std::vector<wire::Name>{});
    row.need(std::all_of(grades.begin(), grades.end(), known), "params.unknown_word", member + "/grades", "grades of the scale");
    for (const model::Word& feel : one.end_feels.value_or(std::vector<model::Word>{})) {
      const bool there = item.end_feels && std::find(item.end_feels->begin(), item.end_feels->end(), feel) != item.end_feels->end();
      row.need(there, "params.unknown_word", member + "/end_feels", "end feels of the item");
    }
  }
  for (const model::ScaleGrade& grade : scale->grades) {
    const bool counted = std::any_of(item.counts->begin(), item.counts->end(), [&](const model::Counts& one) {
      return !one.end_feels && one.grades && std::find(one.grades->begin(), one.grades->end(), grade.grade) != one.grades->end();
    });
    row.need(counted, "params.missing", "/counts", "a row for grade " + grade.grade.text + " whatever the end feel");
  }
}

// Words of that kind of value, each once; none at all where every choice is worth naming.
void check_ordinary(const CheckedRow& row, const model::Item& item) {
  if (!item.ordinary) {
    return;
  }
  std::vector<std::string> words;
  if (item.value == ValueKind::answer) {
    words = {"yes", "no"};
  } else if (item.value == ValueKind::test) {
    words = {"positive", "negative"};
  }
  const bool chooses = item.value == ValueKind::choice || item.value == ValueKind::choices;
  for (const model::ChoiceId& choice : chooses && item.choices ? *item.choices : std::vector<model::ChoiceId>{}) {
    words.push_back(choice.text);
  }
  row.need(!words.empty(), "item.not_applicable", "/ordinary", "only for an answer, a test or a choice");
  row.need(words.empty() || chooses || !item.ordinary->empty(), "params.missing", "/ordinary", "at least one word, where nothing is chosen");
  for (std::size_t i = 0; !words.empty() && i < item.ordinary->size(); ++i) {
    const model::Word& one = (*item.ordinary)[i];
    const auto before = item.ordinary->begin() + static_cast<std::ptrdiff_t>(i);
    row.need(std::find(words.begin(), words.end(), one.text) != words.end(), "params.unknown_word", "/ordinary" + wire::pointer_step(i),
             "an answer, a result or a choice of the item");
    row.need(std::find(item.ordinary->begin(), before, one) == before, "json.duplicate_member", "/ordinary" + wire::pointer_step(i), "a word stands once");
  }
}

void check_ordinary(const CheckedRow& row, const model::Scale& scale) {
  const auto ordinary = scale.ordinary.value_or(std::vector<wire::Name>{});
  row.need(!scale.ordinary || !ordinary.empty(), "params.missing", "/ordinary", "at least one grade");
  for (std::size_t i = 0; i < ordinary.size(); ++i) {
    const bool known = std::any_of(scale.grades.begin(), scale.grades.end(), [&](const model::ScaleGrade& one) { return one.grade == ordinary[i]; });
    row.need(known, "params.unknown_word", "/ordinary" + wire::pointer_step(i), "a grade of the scale");
  }
}

// Bands in whole millimetres: they rise, leave no hole, and are open at the top.
void check_bands(const CheckedRow& row, const model::Scale& scale) {
  const bool any = std::any_of(scale.grades.begin(), scale.grades.end(), [](const auto& one) { return one.mm_low || one.mm_high; });
  row.need(!any || scale.takes_mm.value_or(false), "item.not_applicable", "/grades", "millimetres only where the scale has them");
  row.need(scale.takes_mm.value_or(false) == scale.mm_most.has_value(), "params.missing", "/mm_most", "where the scale has millimetres, and there alone");
  std::int64_t before = 0;
  for (std::size_t g = 0; any && g < scale.grades.size(); ++g) {
    const model::ScaleGrade& one = scale.grades[g];
    const std::string member = "/grades" + wire::pointer_step(g);
    row.need((g != 0) == one.mm_low.has_value(), "params.missing", member + "/mm_low", "open at the bottom of the first grade alone");
    row.need((g + 1 != scale.grades.size()) == one.mm_high.has_value(), "params.missing", member + "/mm_high", "open at the top of the last grade alone");
    row.need(!one.mm_low || !one.mm_high || one.mm_low->steps <= one.mm_high->steps, "value.out_of_range", member + "/mm_low", "low, then high");
    row.need(g == 0 || !one.mm_low || one.mm_low->steps == before + 1, "value.disagrees", member + "/mm_low",
             "one millimetre after the grade before");
    before = one.mm_high ? one.mm_high->steps : before;
  }
}

void check_item(const CheckedRow& row, const model::Item& item, const Facts& facts) {
  row.need(std::find(regions.begin(), regions.end(), item.region.text) != regions.end(), "params.unknown_word", "/region", "a region of the body");
  row.need(item.item.text.starts_with(item.region.text + "."), "value.disagrees", "/item", "the name starts with the region");
  row.need(!item.sides.empty(), "params.missing", "/sides", "at least one side");
  row.need((item.unit ? std::string_view(item.unit->text) : std::string_view()) == unit_of(item.value), "value.disagrees", "/unit",
           "the unit of this kind of value");
  row.need(item.trials_max.has_value() == item.of_trials.has_value(), "value.disagrees", "/of_trials",
           "how readings are summed, where several are taken");
  row.need(item.scale.has_value() == (item.value == ValueKind::grade), "value.disagrees", "/scale", "a scale for a grade, and only there");
  row.need(!item.scale || facts.has_scale(*item.scale), "params.unknown_word", "/scale", "a scale of the list");
  const bool chooses = item.value == ValueKind::choice || item.value == ValueKind::choices;
  row.need(item.choices.has_value() == chooses && (!chooses || !item.choices->empty()), "value.disagrees", "/choices",
           "choices where one is chosen, and only there");
  for (const auto& concern : item.withheld_by.value_or(std::vector<model::ConcernId>{})) {
    row.need(facts.has_concern(concern), "params.unknown_word", "/withheld_by", "a concern of the list");
  }
  for (const auto& position : item.positions.value_or(std::vector<model::Word>{})) {
    row.need(is_position(position), "value.position", "/positions", "a position of the list");
  }
  check_text(row, item);
  check_instead(row, item, facts);
  check_counts(row, item, facts);
  check_ordinary(row, item);
  check_limits(row, item);
  check_axis(row, item, facts);
  check_sources(row, item.sources, facts);
}

}  // namespace

void check_sources(const CheckedRow& row, const std::vector<model::SourceId>& sources, const Facts& facts) {
  row.need(!sources.empty(), "params.missing", "/sources", "at least one source");
  for (std::size_t i = 0; i < sources.size(); ++i) {
    row.need(facts.has_source(sources[i]), "params.unknown_word", "/sources" + wire::pointer_step(i), "a source of the list");
  }
}

bool is_position(const model::Word& position) {
  return std::find(known_positions.begin(), known_positions.end(), position.text) != known_positions.end();
}

void check_catalogue(const Facts& facts, Faults& faults) {
  check_once(
      facts.items, "items", "/item", [](const model::Item& one) -> const std::string& { return one.item.text; }, faults);
  std::set<std::uint64_t> keys;
  for (std::size_t i = 0; i < facts.items.size(); ++i) {
    CheckedRow{row_path("items", i), facts.items[i].item.text, faults}.need(keys.insert(key_of(facts.items[i].item.text)).second, "json.duplicate_member", "/item", "no other name has its key");
  }
  check_once(
      facts.scales, "scales", "/scale", [](const model::Scale& one) -> const std::string& { return one.scale.text; }, faults);
  check_once(
      facts.sources, "sources", "/source", [](const Source& one) -> const std::string& { return one.source.text; }, faults);
  check_once(
      facts.norms, "norms", "/row", [](const NormRow& one) -> const std::string& { return one.row.text; }, faults);
  check_once(
      facts.errors, "errors", "/row", [](const ErrorRow& one) -> const std::string& { return one.row.text; }, faults);
  for (std::size_t i = 0; i < facts.items.size(); ++i) {
    check_item({row_path("items", i), facts.items[i].item.text, faults}, facts.items[i], facts);
  }
  for (std::size_t i = 0; i < facts.scales.size(); ++i) {
    const model::Scale& scale = facts.scales[i];
    const CheckedRow row{row_path("scales", i), scale.scale.text, faults};
    row.need(!scale.grades.empty(), "params.missing", "/grades", "at least one grade");
    for (std::size_t g = 1; g < scale.grades.size(); ++g) {
      const auto before = scale.grades.begin() + static_cast<std::ptrdiff_t>(g);
      const bool again = std::any_of(scale.grades.begin(), before, [&](const model::ScaleGrade& one) { return one.grade == scale.grades[g].grade; });
      row.need(!again, "json.duplicate_member", "/grades" + wire::pointer_step(g), "a grade stands once");
    }
    check_bands(row, scale);
    check_ordinary(row, scale);
    check_sources(row, scale.sources, facts);
  }
}

}  // namespace limbledger::reference
