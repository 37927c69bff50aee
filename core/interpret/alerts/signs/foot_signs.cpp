// What several dangers of the foot ask: tender bone below the hip, ill nerves, heat against the other foot, a wound and its infection.
#include "core/interpret/alerts/circumstances.hpp"
#include "core/interpret/alerts/limits.hpp"
#include "core/interpret/rules/foot/protective_sensation.hpp"

#include <algorithm>
#include <array>
#include <optional>

namespace limbledger::interpret {

using model::Side;

namespace {

// By the filament, the touch of toes or the fork: what its own rule makes of them. It settles whether the foot is numb, and no danger.
[[nodiscard]] Clue protective_feeling_lost(const Answers& answers, Side side) {
  Clue clue;
  const View& view = answers.view();
  FindingTrail tried;
  const auto with_remark = [](const model::Finding* one) { return one->quality && !one->quality->empty(); };
  static constexpr std::array<ItemKey, 8> tests{"nerve.monofilament_great_toe", "nerve.monofilament_metatarsal_head_1", "nerve.monofilament_metatarsal_head_5",
                                                "nerve.toe_touch_great", "nerve.toe_touch_third", "nerve.toe_touch_fifth", "nerve.tuning_fork_great_toe",
                                                "nerve.tuning_fork_ankle"};
  for (const ItemKey& item : tests) {
    tried.add(FindingTrail::of(view.trails().findings, view.named(item, side)));
  }
  if (tried.empty()) {
    return clue;
  }
  for (const JudgedRule& rule : run_protective_sensation(view)) {
    if (rule.result.side != side) {
      continue;
    }
    if (rule.result.outcome == Outcome::positive) {
      clue.value = Tri::yes;
      clue.because = tried;
    } else if (rule.result.outcome == Outcome::negative && rule.result.flags.empty() && !tried.any(with_remark)) {
      clue.value = Tri::no;
      clue.against = tried;
    }
    for (const Settle& settle : clue.value == Tri::undetermined ? rule.result.settle : std::vector<Settle>{}) {
      const model::Item* item = settle.item ? view.edition().item(*settle.item) : nullptr;
      if (item != nullptr && settle.side) {
        clue.ask.add({view.trails().asks, ToAsk{item, *settle.side}});
      }
    }
  }
  return clue;
}

[[nodiscard]] std::optional<std::int64_t> foot_heat(const View& view, Side side) {
  std::optional<std::int64_t> highest;
  for (const model::Finding* finding : view.named("vessel.skin_temperature_foot", side)) {
    const auto* heat = std::get_if<model::Temperature>(&finding->value);
    if (heat != nullptr && heat->cel && settles(*finding)) {
      highest = std::max(highest.value_or(heat->cel->steps), heat->cel->steps);
    }
  }
  return highest;
}

// Two degrees or more warmer than the other foot; less than that says nothing.
[[nodiscard]] Clue foot_warmer_by_thermometer(const Answers& answers, Side side) {
  Clue clue;
  const View& view = answers.view();
  const auto here = foot_heat(view, side);
  const auto other = foot_heat(view, other_side(side));
  if (here && other && *here - *other >= feet_differ_tenths) {
    clue.value = Tri::yes;
    clue.because = FindingTrail::of(view.trails().findings, view.at("vessel.skin_temperature_foot", side));
  }
  return clue;
}

}  // namespace

Clue bone_tender_at_ankle(const Answers& answers, Side side) {
  return answers.any_yes({"ankle.lateral_malleolus_tender", "ankle.medial_malleolus_tender"}, side);
}

Clue bone_tender_at_foot(const Answers& answers, Side side) {
  return answers.any_yes({"foot.fifth_metatarsal_base_tender", "foot.fifth_metatarsal_junction_tender", "foot.navicular_tender", "foot.navicular_dorsum_tender",
                          "foot.cuboid_tender", "foot.metatarsal_first_tender", "foot.metatarsal_second_tender", "foot.metatarsal_third_tender",
                          "foot.metatarsal_fourth_tender", "foot.metatarsal_fifth_tender", "foot.toe_bones_tender"},
                         side);
}

Clue bone_tender_at_shaft(const Answers& answers, Side side) {
  return answers.any_yes({"leg.thigh_shaft_tender", "leg.tibial_crest_tender", "leg.tibial_spot_tender", "leg.fibular_shaft_tender"}, side);
}

Clue bone_tender_at_pelvis(const Answers& answers, Side side) {
  return answers.any_yes({"pelvis.crest_tender", "pelvis.pubic_ramus_tender", "pelvis.asis_tender", "pelvis.psis_tender", "hip.ischial_tuberosity_tender"}, side);
}

Clue bone_often_tender(const Answers& answers, Side side) {
  return led_by(answers.positive("hip.trochanter_tender", side), {answers.positive("foot.calcaneal_squeeze", side)});
}

Clue numb_foot(const Answers& answers, Side side) {
  return answers.once(Known::numb, side, [&]() -> Clue {
    const Clue tested = protective_feeling_lost(answers, side);
    const Clue told = answers.yes("body.feeling_lost", side);
    Clue lead = tested.value != Tri::undetermined || !tested.ask.empty() ? tested : told;
    if (lead.value == Tri::undetermined && tested.ask.empty()) {
      lead.ask.add(answers.count_at_least("nerve.monofilament_great_toe", 0, side).ask);
    }
    return led_by(lead, {told, answers.yes("nerve.sensation_foot_reduced", side), answers.yes("history.leprosy"),
                         answers.count_at_least("history.diabetes_years", diabetes_long_years)});
  });
}

Clue foot_hot(const Answers& answers, Side side) {
  return answers.once(Known::foot_hot, side, [&]() -> Clue {
    return led_by(answers.yes("foot.hot_red_swollen", side),
                  {answers.yes("ankle.hot_red", side), answers.yes("vessel.foot_warm", side), foot_warmer_by_thermometer(answers, side)});
  });
}

Clue foot_wound(const Answers& answers, Side side) {
  return answers.once(Known::foot_wound, side, [&]() -> Clue {
    const Clue broken = answers.no("skin.intact", side);
    const Clue ulcer = answers.yes("skin.ulcer", side);
    const Clue gangrene = answers.chosen("skin.gangrene", side, {"gangrene_dry", "gangrene_wet"});
    return led_by(ulcer.value == Tri::undetermined && broken.is_no() ? broken : ulcer,
                  {broken, gangrene, answers.yes("skin.black_toe", side), answers.chosen("skin.between_toes", side, {"cleft_ulcer"}),
                   answers.chosen("skin.deep_wound", side, {"wound_puncture", "wound_bite", "wound_body_left"})});
  });
}

Clue wound_infected(const Answers& answers, Side side) {
  return answers.once(Known::wound_infected, side, [&]() -> Clue {
    const Clue signs = answers.several("skin.infection_signs", side, {"sign_redness", "sign_swelling", "sign_pain", "sign_warmth", "sign_pus"}, 2);
    return led_by(signs, {answers.yes("foot.hot_red_swollen", side), answers.yes("skin.redness_spreading", side),
                          answers.longer_than("skin.redness_margin", side, redness_mild_mm)});
  });
}

}  // namespace limbledger::interpret
