#include "core/reference/catalogue/row.hpp"

#include <algorithm>
#include <array>

namespace limbledger::reference {

namespace {

using Beginnings = std::optional<std::vector<model::Word>>;

constexpr std::array known_comparators{std::string_view("norm"), std::string_view("other_side")};
constexpr std::array known_cannot{std::string_view("lie_prone"), std::string_view("lie_supine"), std::string_view("stand"),
                                  std::string_view("walk"),      std::string_view("sit"),        std::string_view("one_limb")};

[[nodiscard]] bool begins(const model::Item& item, const Beginnings& beginnings) {
  return beginnings && std::any_of(beginnings->begin(), beginnings->end(), [&](const model::Word& one) { return item.item.text.starts_with(one.text); });
}

// A region without items yet may be named as a whole; anything else must meet an item.
void check_beginnings(const CheckedRow& row, const Beginnings& beginnings, std::string_view member, const Facts& facts) {
  for (std::size_t i = 0; beginnings && i < beginnings->size(); ++i) {
    const std::string& name = (*beginnings)[i].text;
    const bool region = name.ends_with('.');
    const bool met = std::any_of(facts.items.begin(), facts.items.end(), [&](const model::Item& item) { return item.item.text.starts_with(name); });
    row.need(met || region, "item.unknown", std::string(member) + wire::pointer_step(i), "how an item of the list begins");
  }
}

void check_words(const CheckedRow& row, const std::optional<std::vector<model::Word>>& words, std::span<const std::string_view> known, std::string_view member) {
  for (std::size_t i = 0; words && i < words->size(); ++i) {
    row.need(std::find(known.begin(), known.end(), (*words)[i].text) != known.end(), "params.unknown_word", std::string(member) + wire::pointer_step(i),
             "a word that a body can name");
  }
}

void check_opening(const CheckedRow& row, const BodyRow& body, const Facts& facts) {
  const model::Item* item = body.item ? facts.item(*body.item) : nullptr;
  row.need(!body.item || item != nullptr, "item.unknown", "/item", "an item of the list");
  row.need(body.item || body.age_from || body.age_under, "params.missing", "/item", "an item, or an age");
  if (item != nullptr) {
    const bool chosen = item->value == model::ValueKind::choice || item->value == model::ValueKind::choices;
    row.need(chosen || item->value == model::ValueKind::answer || item->value == model::ValueKind::count, "value.kind", "/item", "an answer, choices, or a count");
    row.need(chosen == body.choices.has_value(), "value.disagrees", "/choices", "choices where the item has them, and only there");
    row.need((item->value == model::ValueKind::count) == body.at_least.has_value(), "value.disagrees", "/at_least", "a number where the item counts, and only there");
    for (const model::ChoiceId& choice : body.choices.value_or(std::vector<model::ChoiceId>{})) {
      row.need(item->choices && std::find(item->choices->begin(), item->choices->end(), choice) != item->choices->end(), "params.unknown_word", "/choices",
               "a choice of the item");
    }
  }
  const model::Item* unless = body.unless ? facts.item(body.unless->item) : nullptr;
  row.need(!body.unless || (unless != nullptr && unless->value == model::ValueKind::count), "item.unknown", "/unless/item", "an item that counts");
  row.need(!body.age_from || !body.age_under || body.age_from->steps < body.age_under->steps, "value.out_of_range", "/age_under", "above age_from");
  row.need(body.opened_by_reason.has_value() == body.reason_region.has_value(), "value.all_or_one", "/reason_region", "a reason with its region, or neither");
}

void check_body(const CheckedRow& row, const BodyRow& body, const Facts& facts) {
  row.need(body.body.text.starts_with("body_state."), "value.disagrees", "/body", "a name that starts with body_state");
  check_opening(row, body, facts);
  check_beginnings(row, body.absent, "/absent", facts);
  check_beginnings(row, body.but, "/but", facts);
  check_beginnings(row, body.uncompared, "/uncompared", facts);
  check_beginnings(row, body.not_reliable, "/not_reliable", facts);
  check_words(row, body.comparators, known_comparators, "/comparators");
  check_words(row, body.cannot, known_cannot, "/cannot");
  row.need(body.absent.has_value() == body.why_not.has_value(), "params.missing", "/why_not", "a reason where items do not apply, and only there");
  row.need(!body.but || body.absent || body.not_reliable, "item.not_applicable", "/but", "only beside what does not apply or is not reliable");
  row.need(body.uncompared.has_value() == body.comparators.has_value(), "params.missing", "/comparators", "comparators with what is uncompared, or neither");
  row.need(!body.silent || body.uncompared, "item.not_applicable", "/silent", "only beside what is uncompared");
  row.need(body.gate.has_value() == body.gate_regions.has_value(), "params.missing", "/gate_regions", "a gate with its regions, or neither");
  check_sources(row, body.sources, facts);
}

}  // namespace

BodyReach reach_of(const BodyRow& row, const std::vector<model::Item>& items) {
  BodyReach reach;
  for (const model::Item& item : items) {
    reach.absent.push_back(begins(item, row.absent) && !begins(item, row.but));
    reach.uncompared.push_back(begins(item, row.uncompared));
    reach.not_reliable.push_back(begins(item, row.not_reliable) && !begins(item, row.but));
  }
  return reach;
}

void check_bodies(const Facts& facts, Faults& faults) {
  check_once(facts.bodies, "bodies", "/body", [](const BodyRow& one) -> const std::string& { return one.body.text; }, faults);
  for (std::size_t i = 0; i < facts.bodies.size(); ++i) {
    check_body({row_path("bodies", i), facts.bodies[i].body.text, faults}, facts.bodies[i], facts);
  }
}

}  // namespace limbledger::reference
