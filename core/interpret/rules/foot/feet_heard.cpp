#include "core/interpret/rules/foot/feet_heard.hpp"

#include "core/interpret/body.hpp"
#include "core/interpret/rules/foot/protective_sensation.hpp"
#include "core/interpret/rules/vessel/ankle_brachial.hpp"

#include <algorithm>

namespace limbledger::interpret {

using model::Side;

namespace {

constexpr std::array<std::string_view, 2> pulse_items{"vessel.pulse_dorsalis_pedis", "vessel.pulse_posterior_tibial"};

[[nodiscard]] const RuleResult* result_at(const std::vector<JudgedRule>& rules, Side side) {
  const auto found = std::find_if(rules.begin(), rules.end(), [&](const JudgedRule& rule) { return rule.result.side == side; });
  return found == rules.end() ? nullptr : &found->result;
}

[[nodiscard]] Said says_pulse(const model::Finding& finding) {
  const auto* grade = std::get_if<model::Grade>(&finding.value);
  if (grade == nullptr) {
    return {std::nullopt, "unsure"};
  }
  return {static_cast<std::uint8_t>(grade->grade.text == "0" ? 2 : 1), "known"};
}

[[nodiscard]] bool foot_examined(const View& view) {
  const auto& all = view.findings();
  return std::any_of(all.begin(), all.end(), [](const model::Finding* finding) {
    const std::string& item = finding->item.text;
    return item.starts_with("nerve.monofilament_") || item.starts_with("nerve.toe_touch_") || item.starts_with("nerve.tuning_fork_") ||
           item == "foot.deformity" || item == "skin.ulcer" || item == "history.foot_ulcer_before" || item == "vessel.pressure_dorsalis_pedis" ||
           item == "vessel.pressure_posterior_tibial";
  });
}

[[nodiscard]] bool made_for_feet(const View& view) {
  if (view.says_yes("history.diabetes", Side::midline)) {
    return true;
  }
  const std::vector<JudgedRule> sensation = run_protective_sensation(view);
  return std::any_of(both_feet.begin(), both_feet.end(), [&](Side side) {
    const RuleResult* rule = result_at(sensation, side);
    return view.says_yes("body.feeling_lost", side) || (rule != nullptr && rule->outcome == Outcome::positive);
  });
}

}  // namespace

FeetHearing::FeetHearing(const View& of) : view(of), sensation(run_protective_sensation(of)), index(run_ankle_brachial(of)) {}

std::vector<model::FindingId> FeetHearing::all_findings() const {
  std::vector<model::FindingId> all = ids_of(findings);
  all.insert(all.end(), of_rules.begin(), of_rules.end());
  std::sort(all.begin(), all.end());
  all.erase(std::unique(all.begin(), all.end()), all.end());
  return all;
}

bool foot_is_gone(const View& view, Side side) {
  const OpenBody* gate = view.bodies().gate("foot", side);
  return gate != nullptr && gate->row->gate->text == "no_limb";
}

OneFoot hear_numb(FeetHearing& heard, Side side) {
  const RuleResult* rule = result_at(heard.sensation, side);
  if (rule != nullptr) {
    heard.of_rules.insert(heard.of_rules.end(), rule->findings.begin(), rule->findings.end());
  }
  const auto said = heard.view.at("body.feeling_lost", side);
  heard.findings.insert(heard.findings.end(), said.begin(), said.end());
  const bool numb = heard.view.says_yes("body.feeling_lost", side) || (rule != nullptr && rule->outcome == Outcome::positive);
  const bool is_felt = !numb && rule != nullptr && rule->outcome == Outcome::negative && rule->flags.empty();
  const bool named = rule != nullptr && !rule->settle.empty() && rule->settle[0].item && rule->settle[0].side == side;
  const std::string item = named ? rule->settle[0].item->text : std::string("nerve.monofilament_great_toe");
  if (numb || is_felt) {
    return {{tri(numb), "known"}, item};
  }
  return {{Tri::undetermined, rule == nullptr ? "not_asked" : "not_settled"}, item};
}

OneFoot hear_arteries(FeetHearing& heard, Side side) {
  const RuleResult* index = result_at(heard.index, side);
  std::array<Tri, 2> absent{};
  OneFoot foot{{Tri::undetermined, "known"}, {}};
  for (std::size_t n = 0; n < pulse_items.size(); ++n) {
    const Heard pulse = hear(heard.view.at(pulse_items[n], side), no_or_yes, &says_pulse);
    heard.findings.insert(heard.findings.end(), pulse.findings.begin(), pulse.findings.end());
    absent[n] = pulse.as_tri();
    if (absent[n] == Tri::undetermined && foot.item.empty()) {
      foot = {{Tri::undetermined, std::string(pulse.state)}, std::string(pulse_items[n])};
    }
  }
  if (index != nullptr) {
    heard.of_rules.insert(heard.of_rules.end(), index->findings.begin(), index->findings.end());
  }
  const bool low = index != nullptr && index->outcome == Outcome::positive;
  const bool expected = index != nullptr && index->band && index->band->text == "expected" && index->outcome == Outcome::negative;
  const bool stiff = index != nullptr && index->outcome == Outcome::not_applicable;
  const bool is_felt = absent[0] == Tri::no && absent[1] == Tri::no;
  const bool one_felt = absent[0] == Tri::no || absent[1] == Tri::no;
  const bool none_absent = absent[0] != Tri::yes && absent[1] != Tri::yes;
  if (low || (absent[0] == Tri::yes && absent[1] == Tri::yes)) {
    foot.told = {Tri::yes, "known"};
  } else if (!stiff && (is_felt || (expected && (one_felt || none_absent)))) {
    foot.told = {Tri::no, "known"};
  } else if (foot.item.empty()) {
    foot = {{Tri::undetermined, "not_settled"}, stiff ? "vessel.pressure_toe" : "vessel.pressure_dorsalis_pedis"};
  }
  return foot;
}

OneFoot hear_foot(FeetHearing& heard, std::string_view item, Side side, const Says& says) {
  return {tell(heard.view, item, side, says, heard.findings), std::string(item)};
}

OneFoot hear_amputation(FeetHearing& heard, Side side) {
  OneFoot foot = hear_foot(heard, "history.amputation_before", side);
  for (const model::Finding* finding : heard.view.at("body.limb_level", side)) {
    const auto* level = std::get_if<model::Choice>(&finding->value);
    if (level != nullptr && level->choice.text != "limb_whole") {
      foot.told = {Tri::yes, "known"};
      heard.findings.push_back(finding);
    }
  }
  return foot;
}

bool feet_are_judged(const View& view) { return foot_examined(view) && made_for_feet(view); }

}  // namespace limbledger::interpret
