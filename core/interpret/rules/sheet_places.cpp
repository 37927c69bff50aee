#include "core/interpret/rules/sheet_places.hpp"

#include <algorithm>

namespace limbledger::interpret {

using model::Side;

bool complains_at(const View& view, Side side, std::initializer_list<std::string_view> complaints, std::initializer_list<std::string_view> sites) {
  if (complaint_among(view, complaints)) {
    return side_complained_of(view, side);
  }
  if (!complaint_among(view, {"free", "whole_limb", "review", "no_complaint"})) {
    return false;
  }
  const Findings told = view.at("history.pain_site", side);
  return std::any_of(told.begin(), told.end(), [&](const model::Finding* finding) {
    const std::vector<model::ChoiceId> named = choices_of(*finding);
    return std::any_of(named.begin(), named.end(), [&](const model::ChoiceId& site) {
      return std::any_of(sites.begin(), sites.end(), [&](std::string_view one) { return site.text.starts_with(one); });
    });
  });
}

MeasuredAt measure_any(const View& view, std::initializer_list<std::string_view> items, Side side, std::vector<const model::Finding*>& findings) {
  MeasuredAt all;
  for (const std::string_view item : items) {
    const MeasuredAt one = measure_at(view, item, side, findings);
    if (one.state == "in_conflict") {
      return one;
    }
    if (!one.between) {
      all.state = all.between || all.state != "not_asked" ? all.state : one.state;
      continue;
    }
    if (all.between) {
      all.between = Between{std::min(all.between->low, one.between->low), std::max(all.between->high, one.between->high)};
      all.reading += all.reading == one.reading ? "" : " / " + one.reading;
    } else {
      all.between = one.between;
      all.reading = one.reading;
    }
    all.state = all.between->low == all.between->high ? "known" : "known_in_part";
  }
  return all;
}

}  // namespace limbledger::interpret
