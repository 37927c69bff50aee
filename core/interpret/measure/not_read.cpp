#include "core/interpret/measure/not_read.hpp"

#include "core/interpret/body.hpp"

#include <algorithm>

namespace limbledger::interpret {

namespace {

using model::WhyNot;

[[nodiscard]] bool was_tried(WhyNot why) { return why == WhyNot::not_palpable || why == WhyNot::cannot_hold || why == WhyNot::beyond_instrument; }

// Another way that the catalogue names and nobody has done yet; leg length is told by blocks.
[[nodiscard]] std::string other_way(const View& view, const model::Item& item, model::Side side) {
  const auto open = [&](const std::string& name) {
    return view.edition().item(std::string_view(name)) != nullptr && view.at(name, side).empty() && view.at(name, model::Side::midline).empty();
  };
  for (const model::Instead& one : item.instead.value_or(std::vector<model::Instead>{})) {
    if (open(one.item.text)) {
      return one.item.text;
    }
  }
  const std::string blocks = "pelvis.block_height_standing";
  return item.family.text == "leg.length" && open(blocks) && !view.bodies().cannot("stand") ? blocks : std::string();
}

}  // namespace

std::vector<Judged> judge_not_read(const View& view) {
  std::vector<Judged> all;
  for (const model::Finding* finding : view.findings()) {
    const auto* not_done = std::get_if<model::NotDone>(&finding->value);
    const model::Item* item = not_done != nullptr && was_tried(not_done->reason) && settles(*finding) ? view.edition().item(finding->item) : nullptr;
    const Findings same = view.at(finding->item.text, finding->side);
    // Where somebody else read it, nothing is lost.
    const bool read = std::any_of(same.begin(), same.end(), [](const model::Finding* one) { return !std::holds_alternative<model::NotDone>(one->value); });
    if (item == nullptr || read || same.front() != finding) {
      continue;
    }
    Judged judged = begin_measure("not_read", Comparator::none, finding->item, finding->side, {finding});
    judged.working.formula = {"nothing is concluded from what was not read"};
    const std::string instead = other_way(view, *item, finding->side);
    Params params;
    params.word("reason", wire::type_of<WhyNot>().words[static_cast<std::size_t>(not_done->reason)]);
    if (!instead.empty()) {
      params.word("instead", instead);
      judged.working.changes_if.push_back({"msg.change.other_test"});
    }
    judged.statement.verdict.reset();
    judged.statement.params = params.raw();
    name_measure(judged, "not_read");
    all.push_back(std::move(judged));
  }
  return all;
}

}  // namespace limbledger::interpret
