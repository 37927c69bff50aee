#include "core/interpret/rules/sheet_inputs.hpp"

#include "core/interpret/body.hpp"

#include <algorithm>
#include <utility>

namespace limbledger::interpret {

using model::Side;

bool complaint_among(const View& view, std::initializer_list<std::string_view> complaints) {
  return std::find(complaints.begin(), complaints.end(), view.exam().complaint.text) != complaints.end();
}

bool side_complained_of(const View& view, Side side) {
  const auto& named = view.exam().side;
  return !named || *named == Side::midline || *named == side;
}

bool any_recorded(const View& view, Side side, std::initializer_list<std::string_view> items) {
  return std::any_of(items.begin(), items.end(), [&](std::string_view item) { return !view.at(item, side).empty(); });
}

std::string_view body_gate(const View& view, std::string_view region, Side side) {
  const OpenBody* gate = view.bodies().gate(region, side);
  return gate != nullptr ? std::string_view(gate->row->gate->text) : std::string_view();
}

Tri under_age(const View& view, std::int64_t years) {
  const auto age = view.age_on_exam();
  if (!age || (age->low < years && age->high >= years)) {
    return Tri::undetermined;
  }
  return tri(age->high < years);
}

Joined tell_joined(const View& view, SheetJoin join, std::initializer_list<SheetSource> sources, Side side, std::vector<const model::Finding*>& findings) {
  Tri value = join == SheetJoin::parts ? Tri::no : Tri::undetermined;
  Joined joined{{}, sources.begin()->item.name(), 0};
  std::string state;
  for (const SheetSource& source : sources) {
    Told told = tell(view, view.edition().item_of(source.item), source.item.name(), side, source.says, findings);
    if (join == SheetJoin::parts) {
      value = or_(value, told.value);
    } else {
      value = told.value == Tri::yes || value == Tri::undetermined ? told.value == Tri::undetermined ? value : told.value : value;
    }
    if (told.value == Tri::undetermined && ++joined.open == 1) {
      joined.item = source.item.name();
      state = std::move(told.state);
    }
  }
  joined.told = {value, value == Tri::undetermined ? std::move(state) : std::string("known")};
  return joined;
}

void add_joined(const View& view, RuleSheet& sheet, std::string_view input, std::string_view said, SheetJoin join,
                std::initializer_list<SheetSource> sources, Side side) {
  const Joined joined = tell_joined(view, join, sources, side, sheet.findings);
  sheet.inputs.push_back({input, said, {"no", "yes"}, joined.item, side, classes_of(joined.told.value), joined.told.state, {}});
  sheet.inputs.back().in_part = join == SheetJoin::parts && joined.open > 1;
}

void add_known(RuleSheet& sheet, std::string_view input, std::string_view said, Tri value, std::string_view state, std::string_view item, Side side) {
  sheet.inputs.push_back({input, said, {"no", "yes"}, item, side, classes_of(value), std::string(state), {}});
}

Said says_one_of(const model::Finding& finding, std::initializer_list<std::string_view> choices) {
  const std::vector<model::ChoiceId> named = choices_of(finding);
  if (named.empty() || named.front().text == "not_known") {
    return {std::nullopt, "unsure"};
  }
  const bool one = std::any_of(named.begin(), named.end(), [&](const model::ChoiceId& id) { return std::find(choices.begin(), choices.end(), id.text) != choices.end(); });
  return {static_cast<std::uint8_t>(one ? 2 : 1), "known"};
}

Said says_any_named(const model::Finding& finding) {
  const std::vector<model::ChoiceId> named = choices_of(finding);
  if (named.empty()) {
    return {std::nullopt, "unsure"};
  }
  return {static_cast<std::uint8_t>(std::all_of(named.begin(), named.end(), &is_none) ? 1 : 2), "known"};
}

Told tell_pregnancy(const View& view, std::vector<const model::Finding*>& findings) {
  Told told = tell(view, "body.pregnancy", Side::midline, &says_answer, findings);
  if (!view.at("body.pregnancy", Side::midline).empty()) {
    return told;
  }
  const bool male = view.person() && view.person()->sex == model::Sex::male;
  const auto age = view.age_on_exam();
  const bool cannot_be = male || (age && (age->high < 12 || age->low > 55));
  return cannot_be ? Told{Tri::no, "known"} : told;
}

}  // namespace limbledger::interpret
