#include "core/interpret/rules/foot/nice_ng19.hpp"

#include "core/interpret/params.hpp"
#include "core/interpret/rules/foot/feet_heard.hpp"
#include "core/interpret/rules/foot/foot_category.hpp"
#include "core/interpret/rules/grouped.hpp"

#include <algorithm>
#include <array>
#include <utility>

namespace limbledger::interpret {

namespace {

using model::Side;

[[nodiscard]] Said says_any_choice(const model::Finding& finding) {
  const std::vector<model::ChoiceId> named = choices_of(finding);
  if (named.empty()) {
    return {std::nullopt, "unsure"};
  }
  const bool none = std::all_of(named.begin(), named.end(), [](const model::ChoiceId& one) { return is_none(one) || one.text == "gangrene_none"; });
  if (none && badly_examined(finding)) {
    return {std::nullopt, "not_reliable"};
  }
  return {static_cast<std::uint8_t>(none ? 1 : 2), "known"};
}

struct NiceSheet {
  RuleSheet sheet{nice_feet_rule, nice_feet_edition, Side::midline, {}, false, {}, {}, {}};
  SheetGroups groups;

  void add(NiceGroup group, std::string_view input, std::string_view said, std::string_view item, Side side, const Told& told,
           std::vector<std::string_view> classes = {"no", "yes"}) {
    sheet.inputs.push_back({input, said, std::move(classes), item, side, classes_of(told.value), told.state, {}});
    groups.of_input.push_back(static_cast<std::size_t>(group));
    groups.points.push_back({0, 1});
  }
};

// A black toe is dead tissue; toes that are not black leave the rest of the foot to be looked at.
[[nodiscard]] OneFoot hear_dead_tissue(FeetHearing& heard, Side side) {
  const OneFoot toe = hear_foot(heard, "skin.black_toe", side);
  const OneFoot tissue = hear_foot(heard, "skin.gangrene", side, &says_any_choice);
  return toe.told.value == Tri::yes ? toe : tissue;
}

[[nodiscard]] std::string_view item_to_ask(std::string_view heard) {
  constexpr std::array<std::string_view, 4> feeling{"nerve.monofilament_great_toe", "nerve.monofilament_metatarsal_head_1", "nerve.monofilament_metatarsal_head_5",
                                                    "nerve.toe_touch_great"};
  constexpr std::array<std::string_view, 4> arteries{"vessel.pulse_dorsalis_pedis", "vessel.pulse_posterior_tibial", "vessel.pressure_toe", "vessel.pressure_dorsalis_pedis"};
  for (const auto& items : {feeling, arteries}) {
    const auto found = std::find(items.begin(), items.end(), heard);
    if (found != items.end()) {
      return *found;
    }
  }
  return feeling.front();
}

void add_foot(NiceSheet& nice, FeetHearing& heard, Side side) {
  const auto answer = [&](NiceGroup group, std::string_view input, std::string_view said, std::string_view item, const Says& says = &says_answer) {
    nice.add(group, input, said, item, side, hear_foot(heard, item, side, says).told);
  };
  answer(NiceGroup::history, "ulcer_before", "ulcer before", "history.foot_ulcer_before");
  nice.add(NiceGroup::history, "amputation_before", "amputation before", "history.amputation_before", side, hear_amputation(heard, side).told);
  answer(NiceGroup::active, "ulcer_now", "open ulcer now", "skin.ulcer");
  answer(NiceGroup::active, "redness_spreading", "redness that spreads", "skin.redness_spreading");
  if (foot_is_gone(heard.view, side)) {
    return;
  }
  answer(NiceGroup::active, "hot_red_swollen", "hot, red and swollen foot", "foot.hot_red_swollen");
  const OneFoot dead = hear_dead_tissue(heard, side);
  nice.add(NiceGroup::active, "dead_tissue", "black toe or dead tissue", "skin.gangrene", side, dead.told);
  answer(NiceGroup::rest_pain, "rest_pain_long", "rest pain for over two weeks", "history.rest_pain_over_2_weeks");
  const OneFoot numb = hear_numb(heard, side);
  nice.add(NiceGroup::numb, "protective_feeling", "protective sensation", item_to_ask(numb.item), side, numb.told, {"kept", "lost"});
  const OneFoot arteries = hear_arteries(heard, side);
  nice.add(NiceGroup::narrowed, "narrowed_arteries", "arteries", item_to_ask(arteries.item), side, arteries.told, {"not narrowed", "narrowed"});
  answer(NiceGroup::deformity, "foot_deformity", "deformity", "foot.deformity");
  answer(NiceGroup::callus, "callus", "callus", "skin.callus", &says_any_choice);
}

[[nodiscard]] std::vector<WorkingRow> nice_rows() {
  constexpr std::array<std::array<std::int64_t, 2>, 3> months{{{12000, 12000}, {3000, 6000}, {1000, 2000}}};
  std::vector<WorkingRow> rows;
  for (std::size_t n = 0; n < months.size(); ++n) {
    rows.push_back({{"table.nice_ng19.class." + std::to_string(n + 1)},
                    {"NG19_TRAINING"},
                    model::Status::read,
                    Params().figure("months_from", months[n][0]).figure("months_to", months[n][1]).raw()});
  }
  return rows;
}

}  // namespace

SheetAnswer decide_nice_feet(std::span<const std::int64_t> groups) {
  const auto any = [&](NiceGroup group) { return groups[static_cast<std::size_t>(group)] > 0; };
  const bool numb = any(NiceGroup::numb);
  const bool narrowed = any(NiceGroup::narrowed);
  if (any(NiceGroup::active) || (narrowed && any(NiceGroup::rest_pain))) {
    return {Outcome::not_applicable, {}, "active_foot"};
  }
  const bool shape = any(NiceGroup::deformity) || any(NiceGroup::callus);
  if (any(NiceGroup::history) || (numb && narrowed) || ((numb || narrowed) && shape)) {
    return {Outcome::positive, "class_high"};
  }
  if (numb || narrowed || any(NiceGroup::deformity)) {
    return {Outcome::positive, "class_moderate"};
  }
  return {Outcome::negative, "class_low"};
}

std::vector<JudgedRule> run_nice_feet(const View& view) {
  if (!feet_are_judged(view)) {
    return {};
  }
  NiceSheet nice;
  nice.groups.most.assign(static_cast<std::size_t>(NiceGroup::history) + 1, 1);
  FeetHearing heard(view);
  for (const Side side : both_feet) {
    add_foot(nice, heard, side);
  }
  nice.add(NiceGroup::history, "kidney_failure", "end-stage kidney disease", "history.kidney_failure", Side::midline,
           hear_foot(heard, "history.kidney_failure", Side::midline).told);
  nice.sheet.formula = "high: a history, or numb with narrowed, or either with callus or deformity; moderate: one of numb, narrowed, deformity; else low";
  nice.sheet.rows = nice_rows();
  JudgedRule judged = judge_groups(view, nice.sheet, nice.groups, &decide_nice_feet);
  judged.result.findings = heard.all_findings();
  join_sides(judged);
  if (!view.says_yes("history.diabetes", Side::midline)) {
    judged.result.flags.push_back({"made_for_diabetes"});
  }
  return {std::move(judged)};
}

}  // namespace limbledger::interpret
