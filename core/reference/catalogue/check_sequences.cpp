#include "core/reference/catalogue/row.hpp"

#include <algorithm>
#include <set>

namespace limbledger::reference {

namespace {

// A list of what not to miss is short, or it is not read.
constexpr std::size_t not_to_miss_least = 3;
constexpr std::size_t not_to_miss_most = 5;

[[nodiscard]] bool in_minimum(const model::SequenceStep& step) { return step.minimum.value_or(false); }

void check_step(const CheckedRow& row, const model::SequenceStep& step, const std::string& member, const Facts& facts) {
  const model::Item* item = facts.item(step.item);
  row.need(item != nullptr, "item.unknown", member + "/item", "an item of the list");
  const bool fits = item == nullptr || model::takes_position(*item, step.position);
  row.need(fits && is_position(step.position), "value.position", member + "/position", "a position of the item");
  row.need(!(in_minimum(step) && step.minimum_under), "value.all_or_one", member + "/minimum_under", "of the minimum set for all, or below an age");
  row.need(!(step.late.value_or(false) && (in_minimum(step) || step.minimum_under)), "value.disagrees", member + "/late",
           "what comes late is not of the minimum set");
  row.need(!(step.drop && (in_minimum(step) || step.minimum_under)), "value.disagrees", member + "/drop", "what is left out first is not of the minimum set");
  row.need(!(step.until_months && (in_minimum(step) || step.minimum_under)), "value.disagrees", member + "/until_months",
           "what ends with an age is not of the minimum set");
}

// A person is turned once into each position, and at most once back into one.
[[nodiscard]] bool turns_little(const model::Sequence& sequence) {
  std::set<std::string> distinct;
  std::size_t turns = 0;
  for (std::size_t i = 0; i < sequence.steps.size(); ++i) {
    distinct.insert(sequence.steps[i].position.text);
    if (i == 0 || !(sequence.steps[i].position == sequence.steps[i - 1].position)) {
      ++turns;
    }
  }
  return turns <= distinct.size() + 1;
}

void check_complaint(const CheckedRow& row, const model::Sequence& sequence) {
  row.need(turns_little(sequence), "value.disagrees", "/steps", "the steps of a position together, one return at most");
  row.need(std::any_of(sequence.steps.begin(), sequence.steps.end(), in_minimum), "params.missing", "/steps", "a minimum set");
  const std::size_t count = sequence.not_to_miss ? sequence.not_to_miss->size() : 0;
  row.need(count >= not_to_miss_least && count <= not_to_miss_most, "value.out_of_range", "/not_to_miss", "three to five conditions not to miss");
}

void check_sequence(const CheckedRow& row, const model::Sequence& sequence, const Facts& facts) {
  std::set<std::string> seen;
  for (std::size_t i = 0; i < sequence.steps.size(); ++i) {
    const std::string member = "/steps" + wire::pointer_step(i);
    check_step(row, sequence.steps[i], member, facts);
    row.need(seen.insert(sequence.steps[i].item.text).second, "json.duplicate_member", member + "/item", "a step stands once");
  }
  if (sequence.complaint.text == "free") {
    const bool all = std::equal(sequence.steps.begin(), sequence.steps.end(), facts.items.begin(), facts.items.end(),
                                [](const model::SequenceStep& step, const model::Item& item) { return step.item == item.item; });
    row.need(all, "value.disagrees", "/steps", "every item, in the order of the catalogue");
  } else {
    check_complaint(row, sequence);
  }
  const auto is_region = [&](const model::Word& word) {
    return std::any_of(facts.items.begin(), facts.items.end(), [&](const model::Item& item) { return item.region == word; });
  };
  row.need(!sequence.part || is_region(*sequence.part), "params.unknown_word", "/part", "a region of some item");
  const std::vector<model::Word> around = sequence.joints_around.value_or(std::vector<model::Word>{});
  row.need(std::all_of(around.begin(), around.end(), is_region), "params.unknown_word", "/joints_around", "regions of some item");
  check_sources(row, sequence.sources, facts);
}

void check_concern(const CheckedRow& row, const model::Concern& concern, const Facts& facts) {
  row.need(concern.concern.text.starts_with("concern."), "value.disagrees", "/concern", "a name that starts with concern");
  const model::Item* answer = facts.item(concern.answered_by);
  row.need(answer != nullptr && answer->value == model::ValueKind::answer, "item.unknown", "/answered_by", "an item with an answer");
  const model::Item* film = facts.item(model::ItemId{"history.film_result"});
  const auto shown = [&](const std::optional<model::ChoiceId>& choice) {
    return !choice || (film != nullptr && film->choices && std::find(film->choices->begin(), film->choices->end(), *choice) != film->choices->end());
  };
  row.need(shown(concern.film_opens), "params.unknown_word", "/film_opens", "a choice of history.film_result");
  row.need(shown(concern.film_lifts), "params.unknown_word", "/film_lifts", "a choice of history.film_result");
  row.need(!concern.film_lifts || concern.film_opens, "params.missing", "/film_opens", "what a film that lifts it opens it with");
  const bool withholds = std::any_of(facts.items.begin(), facts.items.end(), [&](const model::Item& item) {
    return item.withheld_by && std::find(item.withheld_by->begin(), item.withheld_by->end(), concern.concern) != item.withheld_by->end();
  });
  row.need(withholds, "params.missing", "/concern", "an item that it withholds");
  check_sources(row, concern.sources, facts);
}

}  // namespace

void check_sequences(const Facts& facts, Faults& faults) {
  check_once(
      facts.sequences, "sequences", "/complaint", [](const model::Sequence& one) -> const std::string& { return one.complaint.text; }, faults);
  check_once(
      facts.concerns, "concerns", "/concern", [](const model::Concern& one) -> const std::string& { return one.concern.text; }, faults);
  for (std::size_t i = 0; i < facts.sequences.size(); ++i) {
    check_sequence({row_path("sequences", i), facts.sequences[i].complaint.text, faults}, facts.sequences[i], facts);
  }
  for (std::size_t i = 0; i < facts.concerns.size(); ++i) {
    check_concern({row_path("concerns", i), facts.concerns[i].concern.text, faults}, facts.concerns[i], facts);
  }
}

}  // namespace limbledger::reference
