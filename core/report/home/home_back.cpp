#include "core/report/home/home_back.hpp"

#include "core/report/brief/brief.hpp"
#include "core/report/ordinary.hpp"

#include <algorithm>
#include <array>
#include <utility>

namespace limbledger::report {

namespace {

using model::Finding;

constexpr std::int64_t child_below_years = 12;

// Dangers whose signs are also told clause by clause, where one of them is there already; the others are one sentence each.
struct DangerSigns {
  std::string_view danger;
  std::array<std::string_view, 3> parts;
};
constexpr std::array<DangerSigns, 14> in_clauses{{{"joint_infection", {"joint_hot", "fever"}},
                                                  {"knee_fracture", {"no_weight", "no_bend"}},
                                                  {"extensor_rupture", {"no_lift"}},
                                                  {"hip_slip", {"walks_harder", "turns_out", "carries_not"}},
                                                  {"clot", {"calf", "breath"}},
                                                  {"hip_fracture", {"stands_not", "lifts_not", "shorter"}},
                                                  {"pelvis_fracture", {"stands_not", "turns_in_bed"}},
                                                  {"ankle_fracture", {"steps_not", "no_better"}},
                                                  {"syndesmosis", {"steps_not", "no_better"}},
                                                  {"child_fracture", {"child_stands_not", "child_touched"}},
                                                  {"foot_infection", {"foot_red", "foot_wet", "fever"}},
                                                  {"charcot", {"foot_hot", "foot_shape"}},
                                                  {"tumour", {"night", "lump"}},
                                                  {"cold_limb", {"cold_pale", "numb", "rest_pain"}}}};

// A sign by the items that show it, where it is found by a look out of the ordinary.
struct SignItems {
  std::string_view part;
  std::array<std::string_view, 4> items;
};
constexpr std::array<SignItems, 16> shown_by{
    {{"joint_hot", {"knee.look_skin_hot_red", "ankle.hot_red"}},
     {"fever", {"history.fever", "history.unwell", "general.temperature"}},
     {"no_weight", {"gait.steps_now", "history.walking_lost", "history.refuses_weight"}},
     {"carries_not", {"gait.steps_now", "history.walking_lost", "history.refuses_weight"}},
     {"stands_not", {"gait.steps_now", "history.walking_lost", "history.refuses_weight"}},
     {"steps_not", {"gait.steps_now", "history.walking_lost", "history.refuses_weight"}},
     {"child_stands_not", {"gait.steps_now", "history.walking_lost", "history.refuses_weight"}},
     {"no_lift", {"knee.straight_leg_raise_active"}},
     {"lifts_not", {"hip.straight_leg_lift", "knee.straight_leg_raise_active"}},
     {"shorter", {"hip.leg_attitude"}},
     {"turns_out", {"hip.leg_attitude"}},
     {"calf", {"leg.calf_swelling", "vessel.whole_leg_swollen", "vessel.oedema_more_this_side"}},
     {"foot_red", {"skin.infection_signs", "foot.hot_red_swollen", "ankle.hot_red"}},
     {"foot_hot", {"foot.hot_red_swollen", "ankle.hot_red", "vessel.foot_warm"}},
     {"cold_pale", {"vessel.foot_cold"}},
     {"numb", {"nerve.sensation_foot_reduced", "nerve.monofilament_great_toe", "body.feeling_lost", "nerve.monofilament_metatarsal_head_1"}}}};

// Of the side complained of, or of the person.
[[nodiscard]] bool of_complaint(const PageView& view, const Finding& finding) {
  const bool one_side = view.exam.side && *view.exam.side != model::Side::midline;
  return finding.side == model::Side::midline || !one_side || finding.side == *view.exam.side;
}

[[nodiscard]] bool found_unusual(const PageView& view, std::string_view part) {
  return std::any_of(view.findings.begin(), view.findings.end(), [&](const Finding* finding) {
    return of_complaint(view, *finding) && std::any_of(shown_by.begin(), shown_by.end(), [&](const SignItems& sign) {
      return sign.part == part && std::find(sign.items.begin(), sign.items.end(), finding->item.text) != sign.items.end() &&
             !left_undone(*finding) && ordinary(view.edition, *finding) == Ordinary::unusual;
    });
  });
}

// What is told or measured in another way than by a look.
[[nodiscard]] bool told_or_measured(const PageView& view, std::string_view part) {
  constexpr std::int64_t bends_tenths = 900;
  if (part == "calf" && view.exam.complaint.text == "calf_pain") {
    return true;
  }
  return std::any_of(view.findings.begin(), view.findings.end(), [&](const Finding* finding) {
    const auto* answer = std::get_if<model::Answer>(&finding->value);
    const auto* choice = std::get_if<model::Choice>(&finding->value);
    const auto* angle = std::get_if<model::Angle>(&finding->value);
    const std::string_view item = finding->item.text;
    if (!of_complaint(view, *finding)) {
      return false;
    }
    return (part == "night" && item == "history.night_pain_relieved_by_turning" && answer != nullptr && answer->answer == model::AnswerWord::no) ||
           (part == "turns_out" && item == "gait.pattern" && choice != nullptr && choice->choice.text.find("turned_out") != std::string::npos) ||
           (part == "no_bend" && item.starts_with("knee.flexion_") && angle != nullptr && angle->deg && angle->deg->steps < bends_tenths);
  });
}

// An alert or a prompt keeps the leg off the ground: whoever shall not walk does not find that walking gets harder.
[[nodiscard]] bool shall_not_walk(const PageView& view) {
  const auto keeps_off = [](const std::vector<model::MessageId>& meanwhile) {
    return std::any_of(meanwhile.begin(), meanwhile.end(), [](const model::MessageId& one) {
      return one.text.starts_with("msg.meanwhile.no_weight") || one.text.starts_with("msg.meanwhile.offload") || one.text == "msg.meanwhile.no_standing_trial";
    });
  };
  for (const interpret::Alert& alert : view.assessment.alerts) {
    if (alert_in_letter(view, alert, false) && keeps_off(alert.meanwhile)) {
      return true;
    }
  }
  return false;
}

[[nodiscard]] bool cannot_be(const PageView& view, std::string_view part) {
  const auto age = view.age();
  const bool infant = age && age->high < 1;
  return (infant || shall_not_walk(view)) && (part == "child_stands_not" || part == "no_weight" || part == "carries_not" || part == "stands_not" || part == "steps_not" || part == "walks_harder");
}

}  // namespace

bool ReturnSigns::is_child(const PageView& view) {
  const auto age = view.age();
  return age && age->high < child_below_years;
}

std::string ReturnSigns::said(const std::vector<std::string_view>& parts, std::string_view whole) {
  const bool child = is_child(view_);
  bool all = true;
  std::vector<std::string> clauses;
  for (const std::string_view part : parts) {
    if (part.empty()) {
      continue;
    }
    const bool is_there = found_unusual(view_, part) || told_or_measured(view_, part);
    some_are_there_ = some_are_there_ || is_there;
    if (is_there || cannot_be(view_, part)) {
      all = false;
      continue;
    }
    const std::string name = "home_sign." + std::string(part);
    const bool of_child = child && view_.words.has("msg." + name + "_child");
    all = all && !of_child;
    clauses.push_back(view_.say(of_child ? name + "_child" : name));
  }
  if (all) {
    return view_.say(whole);
  }
  return joined(clauses, view_.say("home.or"));
}

std::string ReturnSigns::of(std::string_view danger) {
  const auto age = view_.age();
  constexpr std::int64_t grown_years = 18;
  if (danger == "hip_slip" && age && age->low >= grown_years) {
    return {};  // the growing hip of a child
  }
  const std::string name = "home_back." + std::string(danger);
  for (const DangerSigns& one : in_clauses) {
    if (one.danger == danger) {
      return said({one.parts.begin(), one.parts.end()}, name);
    }
  }
  return view_.words.has("msg." + name) ? view_.say(name) : std::string();
}

std::string ReturnSigns::of_blood() { return said({"cold_pale_blue", "numb", "moves_not"}, "home.back_blood"); }

}  // namespace limbledger::report
