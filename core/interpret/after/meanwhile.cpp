#include "core/interpret/after/meanwhile.hpp"

#include "core/interpret/alerts/circumstances.hpp"

#include <algorithm>
#include <array>
#include <optional>
#include <string_view>
#include <variant>

namespace limbledger::interpret {

using model::Side;

namespace {

// What is done meanwhile for a native joint, for a replaced one, and there for who is ill.
struct OfReplaced {
  std::string_view native;
  std::string_view replaced;
  std::string_view ill;
};
constexpr std::array<OfReplaced, 2> of_replaced{
    {{"msg.meanwhile.fluid_first", "msg.meanwhile.fluid_first_replaced", "msg.meanwhile.fluid_first_replaced_ill"},
     {"msg.meanwhile.no_needle_by_program", "msg.meanwhile.no_needle_by_program_replaced", "msg.meanwhile.no_needle_by_program_replaced"}}};

// What is done instead where the place is known not to have what it takes; the first that fits. Not listed is unknown, and changes nothing.
struct OfPlace {
  std::string_view usual;
  std::string_view lacks;
  std::string_view instead;
};
constexpr std::array<OfPlace, 10> of_place{{{"msg.meanwhile.offload", "offloading", "msg.meanwhile.offload_none_here"},
                                           {"msg.meanwhile.offload", "crutches", "msg.meanwhile.offload_no_crutches"},
                                           {"msg.meanwhile.sample_then_antibiotic", "dressings", "msg.meanwhile.cover_then_antibiotic"},
                                           {"msg.meanwhile.film_shows_nothing_yet", "film", "msg.meanwhile.film_elsewhere"},
                                           {"msg.meanwhile.film_hip", "film", "msg.meanwhile.film_hip_elsewhere"},
                                           {"msg.meanwhile.film_both_hips", "film", "msg.meanwhile.film_both_hips_elsewhere"},
                                           {"msg.meanwhile.film_foot", "film", "msg.meanwhile.film_hip_elsewhere"},
                                           {"msg.meanwhile.film_heel", "film", "msg.meanwhile.film_heel_elsewhere"},
                                           {"msg.meanwhile.scan_route", "ultrasound", "msg.meanwhile.scan_elsewhere"},
                                           {"msg.meanwhile.pressures_where_had", "doppler", "msg.meanwhile.pressures_elsewhere"}}};

void fit_to_place(const model::Place* place, std::vector<model::MessageId>& meanwhile) {
  if (place == nullptr || !place->here) {
    return;
  }
  const auto lacks = [&](std::string_view what) {
    return std::any_of(place->here->begin(), place->here->end(), [&](const model::Here& one) { return one.what.text == what && one.there == model::YesNo::no; });
  };
  for (model::MessageId& message : meanwhile) {
    const auto at = std::find_if(of_place.begin(), of_place.end(), [&](const OfPlace& one) { return one.usual == message.text && lacks(one.lacks); });
    if (at != of_place.end()) {
      message.text = at->instead;
    }
  }
}

// Dry and dead: no moist dressing there before whoever treats the vessels has seen it; an open sore beside it is dressed as any other, and wet dead
// tissue is kept dry by nobody.
void fit_to_dead_tissue(const View& view, const std::optional<Side>& side, std::vector<model::MessageId>& meanwhile) {
  if (!side || view.at("skin.gangrene", *side).empty()) {
    return;
  }
  const auto chosen = [&](std::string_view item, std::string_view choice) {
    const auto held = view.at(item, *side);
    return std::any_of(held.begin(), held.end(), [&](const model::Finding* finding) {
      const auto* one = std::get_if<model::Choice>(&finding->value);
      const auto* several = std::get_if<model::Choices>(&finding->value);
      return (one != nullptr && one->choice.text == choice) ||
             (several != nullptr && std::find(several->choices.begin(), several->choices.end(), model::ChoiceId{std::string(choice)}) != several->choices.end());
    });
  };
  const auto put = [&](const char* usual, const char* instead) { std::replace(meanwhile.begin(), meanwhile.end(), model::MessageId{usual}, model::MessageId{instead}); };
  if (chosen("skin.gangrene", "gangrene_wet")) {
    std::erase(meanwhile, model::MessageId{"msg.meanwhile.dry_and_covered"});
    return;
  }
  if (!chosen("skin.gangrene", "gangrene_dry")) {
    return;
  }
  const bool sore = view.says_yes("skin.ulcer", *side) || chosen("skin.deep_wound", "wound_puncture") || chosen("skin.deep_wound", "wound_bite") || chosen("skin.deep_wound", "wound_body_left");
  put("msg.meanwhile.sample_then_antibiotic", sore ? "msg.meanwhile.sore_moist_then_antibiotic" : "msg.meanwhile.dry_then_antibiotic");
  if (sore) {
    put("msg.meanwhile.dry_and_covered", "msg.meanwhile.dead_part_dry");
  }
}

// Who is ill as a whole: after an injury it bleeds; where nothing says that it is an infection none is treated.
void fit_to_cause(std::string_view what, std::vector<model::MessageId>& meanwhile) {
  const model::MessageId sepsis{"msg.meanwhile.sepsis_by_protocol"};
  if (what == "shock" || what == "shock_bears") {
    std::replace(meanwhile.begin(), meanwhile.end(), sepsis, model::MessageId{"msg.meanwhile.bleeding_and_warmth"});
  } else if (what == "failing" || what == "alone" || what.starts_with("lung_clot") || what.starts_with("several")) {
    std::erase(meanwhile, sepsis);
  } else if (what == "cold" || what == "cold_same_day") {
    std::replace(meanwhile.begin(), meanwhile.end(), sepsis, model::MessageId{"msg.meanwhile.dry_and_warm"});
  }
  if (what.ends_with("same_day")) {
    std::erase(meanwhile, model::MessageId{"msg.meanwhile.call_and_move"});
  }
}

}  // namespace

// Replaced by any answer that stands: of two that disagree the one that keeps the needle away.
std::vector<model::MessageId> meanwhile_of(const View& view, const JudgedFlag& judged, const model::Place* place) {
  std::vector<model::MessageId> meanwhile = judged.row->meanwhile;
  if (judged.row->alert.text == "alert.acutely_ill") {
    fit_to_cause(judged.raised.what, meanwhile);
  }
  if (judged.raised.what.ends_with("under_two")) {  // the blood test comes first, and tells whether it is scanned (NICE_NG158)
    std::erase(meanwhile, model::MessageId{"msg.meanwhile.scan_route"});
  }
  if (judged.raised.what.starts_with("broke")) {  // what is broken is not spared from breaking
    std::replace(meanwhile.begin(), meanwhile.end(), model::MessageId{"msg.meanwhile.protect_from_break"}, model::MessageId{"msg.meanwhile.splint_as_is"});
  }
  if (judged.row->alert.text == "alert.fracture" && (judged.raised.what == "foot_carries_not" || judged.raised.what == "heel_carries_not")) {
    std::replace(meanwhile.begin(), meanwhile.end(), model::MessageId{"msg.meanwhile.nothing_by_mouth"},
                 model::MessageId{judged.raised.what == "heel_carries_not" ? "msg.meanwhile.film_heel" : "msg.meanwhile.film_foot"});
  }
  // A leg that is not moved, with tender bone of thigh or shin: a break until shown otherwise, and it is splinted.
  if (judged.row->alert.text == "alert.septic_child" && judged.raised.what.starts_with("not_moved") && judged.side &&
      bone_tender_at_shaft(Answers(view), *judged.side).is_yes()) {
    std::replace(meanwhile.begin(), meanwhile.end(), model::MessageId{"msg.meanwhile.position_of_comfort"}, model::MessageId{"msg.meanwhile.splint_as_is"});
  }
  // No crutches for what lies in the soft parts.
  if (judged.row->alert.text == "alert.tumour" && judged.raised.what.starts_with("lump")) {
    const Answers answers(view);
    const auto soft = [&](Side side) {
      return (answers.any_yes({"skin.lump"}, side).is_yes() || !answers.longer_than("skin.lump_size", side, 0).because.empty()) &&
             !answers.chosen("skin.lump_features", side, {"lump_on_bone"}).is_yes();
    };
    if (judged.side ? soft(*judged.side) : soft(Side::left) && soft(Side::right)) {
      std::erase(meanwhile, model::MessageId{"msg.meanwhile.protect_from_break"});
    }
  }
  if (judged.raised.what == "calf") {  // a muscle that bleeds is no joint
    std::replace(meanwhile.begin(), meanwhile.end(), model::MessageId{"msg.meanwhile.rest_joint"}, model::MessageId{"msg.meanwhile.calf_felt_again"});
    std::erase(meanwhile, model::MessageId{"msg.meanwhile.no_needle_by_program"});
  }
  if (judged.raised.what == "testis") {  // no film of a hip, and a surgeon
    meanwhile = {model::MessageId{"msg.meanwhile.nothing_by_mouth"}, model::MessageId{"msg.meanwhile.call_and_move"}};
  }
  // A foot without blood under a plaster: it is opened first (red flags page, section 4).
  if (judged.row->alert.text == "alert.ali" && judged.side &&
      Answers(view).chosen("body.cast", *judged.side, {"cast_hip", "cast_thigh", "cast_knee", "cast_shin", "cast_ankle", "cast_foot"}).is_yes()) {
    meanwhile.insert(meanwhile.begin(), model::MessageId{"msg.meanwhile.open_dressings"});
  }
  fit_to_dead_tissue(view, judged.side, meanwhile);
  fit_to_place(place, meanwhile);
  const std::string_view what = judged.raised.what;
  const std::string_view joint = what.starts_with("hip") ? "body.hip_replaced" : (what.starts_with("ankle") ? "body.ankle_replaced" : "body.knee_replaced");
  constexpr std::array both{Side::left, Side::right};
  const auto replaced = [&](Side side) { return (!judged.side || *judged.side == side) && view.says_yes(joint, side); };
  if (std::none_of(both.begin(), both.end(), replaced)) {
    return meanwhile;
  }
  for (model::MessageId& message : meanwhile) {
    const auto at = std::find_if(of_replaced.begin(), of_replaced.end(), [&](const OfReplaced& one) { return one.native == message.text; });
    if (at != of_replaced.end()) {
      message.text = what.ends_with("ill") ? at->ill : at->replaced;
    }
  }
  return meanwhile;
}

}  // namespace limbledger::interpret
