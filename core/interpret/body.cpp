#include "core/interpret/body.hpp"

#include "core/interpret/params.hpp"

#include <algorithm>

namespace limbledger::interpret {

using model::Side;
using reference::BodyRow;

namespace {

constexpr std::string_view state_prefix = "body_state.";
constexpr std::string_view of_body = "body.";  // as a view: its length is not counted again at each of some hundred findings

[[nodiscard]] bool age_fits(const View& view, const BodyRow& row) {
  if (!row.age_from && !row.age_under) {
    return true;
  }
  const auto age = view.age_on_exam();
  return age && (!row.age_from || age->low >= row.age_from->steps) && (!row.age_under || age->high < row.age_under->steps);
}

[[nodiscard]] bool counts_under(const View& view, const reference::BodyUnless& unless) {
  const Findings found = view.at(unless.item.text, Side::midline);
  return std::any_of(found.begin(), found.end(), [&](const model::Finding* finding) {
    const auto* count = std::get_if<model::CountValue>(&finding->value);
    return count != nullptr && count->count.steps < unless.under.steps;
  });
}

[[nodiscard]] bool names(const BodyRow& row, const model::ChoiceId& choice) {
  return std::find(row.choices->begin(), row.choices->end(), choice) != row.choices->end();
}

// Whether this finding, of the row's own item, opens it.
[[nodiscard]] bool opens(const BodyRow& row, const model::Finding& finding) {
  if (const auto* answer = std::get_if<model::Answer>(&finding.value)) {
    return answer->answer == model::AnswerWord::yes;
  }
  if (const auto* count = std::get_if<model::CountValue>(&finding.value)) {
    return row.at_least && count->count.steps >= row.at_least->steps;
  }
  if (const auto* choice = std::get_if<model::Choice>(&finding.value)) {
    return row.choices && names(row, choice->choice);
  }
  const auto* choices = std::get_if<model::Choices>(&finding.value);
  return choices != nullptr && row.choices &&
         std::any_of(choices->choices.begin(), choices->choices.end(), [&](const model::ChoiceId& one) { return names(row, one); });
}

[[nodiscard]] bool gives_reason(const View& view, const BodyRow& row, const model::Finding& finding) {
  const auto* not_done = std::get_if<model::NotDone>(&finding.value);
  if (not_done == nullptr || row.opened_by_reason != not_done->reason) {
    return false;
  }
  const model::Item* item = view.edition().item(finding.item);
  return item != nullptr && item->region == *row.reason_region;
}

[[nodiscard]] bool lists(const std::optional<std::vector<model::Word>>& list, std::string_view word) {
  return list && std::any_of(list->begin(), list->end(), [&](const model::Word& one) { return one.text == word; });
}

}  // namespace

Bodies::Bodies(const View& view) : edition_(view.edition()) {
  // Only these can open a state, and in most exams there are none.
  std::vector<const model::Finding*> telling;
  for (const model::Finding* finding : view.findings()) {
    const auto* not_done = std::get_if<model::NotDone>(&finding->value);
    const bool reason = not_done != nullptr && (not_done->reason == model::WhyNot::fused || not_done->reason == model::WhyNot::implant);
    if (reason || (not_done == nullptr && finding->item.text.compare(0, of_body.size(), of_body) == 0)) {
      telling.push_back(finding);
    }
  }
  for (const BodyRow& row : edition_.bodies()) {
    const bool told = !row.item || !telling.empty();
    if (!told || !age_fits(view, row) || (row.unless && counts_under(view, *row.unless))) {
      continue;
    }
    if (!row.item) {
      open_.push_back({&row, Side::midline, nullptr});
      continue;
    }
    for (const Side side : {Side::left, Side::right, Side::midline}) {
      const auto found = std::find_if(telling.begin(), telling.end(), [&](const model::Finding* finding) {
        return finding->side == side && ((finding->item == *row.item && opens(row, *finding)) || gives_reason(view, row, *finding));
      });
      if (found != telling.end()) {
        open_.push_back({&row, side, *found});
      }
    }
  }
  any_limb_missing_ = std::any_of(open_.begin(), open_.end(), [](const OpenBody& one) { return one.row->why_not == model::WhyNot::no_limb; });
}

template <class Holds>
const OpenBody* Bodies::first(Side side, const Holds& holds) const {
  for (const OpenBody& one : open_) {
    if ((one.side == side || one.side == Side::midline) && holds(*one.row)) {
      return &one;
    }
  }
  return nullptr;
}

const OpenBody* Bodies::not_applicable(const model::Item& item, Side side) const {
  const std::size_t at = edition_.index(item);
  return first(side, [&](const BodyRow& row) { return edition_.reach_of(row).absent[at]; });
}

const OpenBody* Bodies::uncompared(const model::Item& item, Side side, std::string_view comparator) const {
  const std::size_t at = edition_.index(item);
  return first(side, [&](const BodyRow& row) { return edition_.reach_of(row).uncompared[at] && lists(row.comparators, comparator); });
}

const OpenBody* Bodies::silent(const model::Item& item, Side side) const {
  const std::size_t at = edition_.index(item);
  const auto says_nothing = [&](const BodyRow& row) { return row.silent.value_or(false) && edition_.reach_of(row).uncompared[at]; };
  // Of a joint that was both fused and replaced, the later speaks.
  const OpenBody* replaced = first(side, [&](const BodyRow& row) { return says_nothing(row) && row.gate && row.gate->text == "implant"; });
  return replaced != nullptr ? replaced : first(side, says_nothing);
}

const OpenBody* Bodies::not_reliable(std::string_view item, Side side) const {
  if (open_.empty()) {
    return nullptr;
  }
  const model::Item* known = edition_.item(item);
  if (known == nullptr) {
    return nullptr;
  }
  const std::size_t at = edition_.index(*known);
  return first(side, [&](const BodyRow& row) { return edition_.reach_of(row).not_reliable[at]; });
}

const OpenBody* Bodies::gate(std::string_view region, Side side) const {
  const auto gated = [&](const BodyRow& row) { return lists(row.gate_regions, region); };
  const OpenBody* replaced = first(side, [&](const BodyRow& row) { return gated(row) && row.gate->text == "implant"; });
  return replaced != nullptr ? replaced : first(side, gated);
}

bool Bodies::cannot(std::string_view what) const {
  return std::any_of(open_.begin(), open_.end(), [&](const OpenBody& one) { return lists(one.row->cannot, what); });
}

std::string_view state_word(const BodyRow& row) {
  // The message's own last part, which several rows share.
  const std::string_view message = row.message.text;
  const auto dot = message.rfind('.');
  return dot == std::string_view::npos ? std::string_view(row.body.text).substr(state_prefix.size()) : message.substr(dot + 1);
}

std::string_view short_word(const BodyRow& row) { return row.gate ? std::string_view(row.gate->text) : state_word(row); }

std::optional<NotApplicable> not_applicable(const View& view, const model::Item& item, Side side) {
  const OpenBody* body = view.bodies().not_applicable(item, side);
  if (body == nullptr) {
    return std::nullopt;
  }
  return NotApplicable{*body->row->why_not, body->row->message, body->finding};
}

std::vector<Judged> judge_bodies(const View& view) {
  std::vector<Judged> all;
  for (const OpenBody& one : view.bodies().open()) {
    const BodyRow& row = *one.row;
    Judged judged;
    Statement& statement = judged.statement;
    const std::string about = row.item ? row.item->text : std::string("age");
    statement.statement = {"body." + std::string(state_word(row)) + ":" + about + ":" + std::string(side_word(one.side))};
    const bool said = std::any_of(all.begin(), all.end(), [&](const Judged& before) { return before.statement.statement == statement.statement; });
    // Late pregnancy names all that pregnancy does for lying; several covered parts are one plaster.
    if (said) {
      continue;
    }
    if (one.side != Side::midline) {
      statement.side = one.side;
    }
    statement.grade = StatementGrade::cannot_tell;
    statement.comparator = Comparator::none;
    statement.message = row.message;
    Params params;
    if (one.finding != nullptr) {
      statement.findings = ids_of({one.finding});
      judged.working.inputs.push_back({one.finding->finding, std::nullopt, std::nullopt, std::nullopt});
      if (const auto* count = std::get_if<model::CountValue>(&one.finding->value)) {
        params.figure("count", count->count.steps * 1000);
      }
    }
    statement.params = params.raw();
    judged.working.statement = statement.statement;
    judged.working.message = statement.message;
    judged.working.formula = {"as the row of this state says; nothing is computed"};
    for (const model::SourceId& source : row.sources) {
      judged.working.rows.push_back({{row.body.text}, source, row.status, {"{}"}});
    }
    all.push_back(std::move(judged));
  }
  return all;
}

}  // namespace limbledger::interpret
