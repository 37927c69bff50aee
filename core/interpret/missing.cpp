#include "core/interpret/missing.hpp"

#include "core/interpret/body.hpp"

#include <algorithm>

namespace limbledger::interpret {

namespace {

// Of the minimum set at this age; where the age is not known, what a child would need is asked for too.
[[nodiscard]] bool needed(const View& view, const model::SequenceStep& step) {
  if (!step.minimum_under) {
    return step.minimum.value_or(false);
  }
  const auto age = view.age_on_exam();
  return !age || age->low < step.minimum_under->steps;
}

[[nodiscard]] bool filled(const View& view, const model::ItemId& item, model::Side side) {
  const Findings findings = view.at(item.text, side);
  return std::any_of(findings.begin(), findings.end(), [](const model::Finding* finding) { return !awaits_examiner(*finding); });
}

[[nodiscard]] bool has_record(const View& view, const model::Item& item, model::Side side) {
  const auto& instead = item.instead;
  return filled(view, item.item, side) ||
         (instead && std::any_of(instead->begin(), instead->end(), [&](const model::Instead& one) { return filled(view, one.item, side); }));
}

[[nodiscard]] bool only_no_time(const View& view, const model::Item& item, model::Side side) {
  const Findings findings = view.at(item, side);
  return !findings.empty() && std::all_of(findings.begin(), findings.end(), [](const model::Finding* finding) {
    const auto* not_done = std::get_if<model::NotDone>(&finding->value);
    return not_done != nullptr && not_done->reason == model::WhyNot::no_time;
  });
}

// A value that somebody found today.
[[nodiscard]] bool looked_at(const model::Finding& finding) {
  return !std::holds_alternative<model::NotDone>(finding.value) && !awaits_examiner(finding);
}

// A step of the first months stands in no minimum set by itself. At that age, and where one side was tried later, both sides belong to it:
// a hip that nobody tried is not read as one that went well.
[[nodiscard]] bool needed_on_both(const View& view, const model::SequenceStep& step, const model::Item& item) {
  if (!step.until_months || item.sides.size() < 2) {
    return false;
  }
  const auto months = view.age_months_on_exam();
  return (months && months->high < step.until_months->steps) || !view.at(item, model::Side::left).empty() || !view.at(item, model::Side::right).empty();
}

// An item that can be said of the person as a whole needs no sides.
[[nodiscard]] std::vector<model::Side> sides_needed(const model::Item& item) {
  const bool midline = std::find(item.sides.begin(), item.sides.end(), model::Side::midline) != item.sides.end();
  return midline ? std::vector{model::Side::midline} : item.sides;
}

[[nodiscard]] std::string_view why_missing(const View& view, const model::SequenceStep& step, const model::Item& item, model::Side side, bool no_time) {
  if (no_time && only_no_time(view, item, side)) {
    return "no_time";
  }
  if (!view.at(item, side).empty()) {
    return "to_confirm";
  }
  const auto& complaint = view.exam().side;
  if (step.minimum_under && !step.minimum.value_or(false)) {
    return "child";
  }
  const bool other = complaint && *complaint != model::Side::midline && side != model::Side::midline && side != *complaint;
  return other ? "other_side" : "minimum";
}

[[nodiscard]] bool region_applies(const View& view, const model::Word& region, model::Side side) {
  const auto items = view.edition().items();
  return std::any_of(items.begin(), items.end(), [&](const model::Item& item) {
    return item.region == region && std::find(item.sides.begin(), item.sides.end(), side) != item.sides.end() && view.bodies().not_applicable(item, side) == nullptr;
  });
}

[[nodiscard]] bool region_examined(const View& view, const model::Word& region, model::Side side) {
  return std::any_of(view.findings().begin(), view.findings().end(), [&](const model::Finding* finding) {
    return finding->side == side && finding->item.text.starts_with(region.text + ".") && looked_at(*finding);
  });
}

}  // namespace

bool awaits_examiner(const model::Finding& finding) {
  return finding.origin == model::Origin::carried_over || finding.origin == model::Origin::self_reported;
}

std::vector<MissingItem> missing_items(const View& view) {
  const model::Sequence* sequence = view.edition().sequence(view.exam().complaint);
  // Stopped for transfer: what was not done is no gap.
  return sequence == nullptr || view.exam().transfer ? std::vector<MissingItem>{} : missing_items(view, *sequence);
}

bool left_for_time(const View& view, const model::Sequence& sequence) {
  bool no_time = false;
  for (const model::SequenceStep& step : sequence.steps) {
    const model::Item* item = view.edition().item(step.item);
    if (item == nullptr || !needed(view, step)) {
      continue;
    }
    for (const model::Side side : {model::Side::left, model::Side::right, model::Side::midline}) {
      const Findings findings = view.at(*item, side);
      if (std::any_of(findings.begin(), findings.end(), [](const model::Finding* finding) { return looked_at(*finding); })) {
        return false;
      }
      no_time = no_time || only_no_time(view, *item, side);
    }
  }
  return no_time;
}

std::vector<MissingItem> missing_items(const View& view, const model::Sequence& sequence) {
  std::vector<MissingItem> missing;
  const bool no_time = left_for_time(view, sequence);
  for (const model::SequenceStep& step : sequence.steps) {
    const model::Item* item = view.edition().item(step.item);
    if (item == nullptr || (!needed(view, step) && !needed_on_both(view, step, *item))) {
      continue;
    }
    for (const model::Side side : sides_needed(*item)) {
      const bool on_a_side = side == model::Side::midline && item->sides.size() > 1 &&
                             (has_record(view, *item, model::Side::left) || has_record(view, *item, model::Side::right));
      // What this body does not have is no gap.
      const bool applies = view.bodies().not_applicable(*item, side) == nullptr;
      const bool left_out = no_time && only_no_time(view, *item, side);
      // What stands for it on the side that nobody tried is no answer beside a side that was tried by the test itself.
      const bool recorded = step.until_months ? filled(view, item->item, side) : has_record(view, *item, side);
      if (applies && (left_out || (!on_a_side && !recorded))) {
        missing.push_back({item->item, side, model::Word{std::string(why_missing(view, step, *item, side, no_time))}});
      }
    }
  }
  return missing;
}

std::vector<NotExamined> not_examined(const View& view) {
  std::vector<NotExamined> all;
  const model::Sequence* sequence = view.edition().sequence(view.exam().complaint);
  if (sequence == nullptr || !sequence->part) {
    return all;
  }
  // Stopped for transfer: no gap, and whoever takes over must know all the same where nobody looked.
  const bool stopped = view.exam().transfer.has_value();
  const auto add = [&](const model::Word& region, model::Side side, std::string_view why) {
    if (region_applies(view, region, side) && !region_examined(view, region, side)) {
      all.push_back({region, side, model::Word{std::string(stopped ? "transfer" : why)}});
    }
  };
  const auto& complaint = view.exam().side;
  const bool sided = complaint && *complaint != model::Side::midline;
  for (const model::Side side : {model::Side::right, model::Side::left}) {
    add(*sequence->part, side, sided && *complaint != side ? "other_side" : "complaint");
  }
  for (const model::Word& joint : sequence->joints_around.value_or(std::vector<model::Word>{})) {
    for (const model::Side side : {model::Side::right, model::Side::left}) {
      add(joint, side, "joint_around");
    }
  }
  return all;
}

}  // namespace limbledger::interpret
