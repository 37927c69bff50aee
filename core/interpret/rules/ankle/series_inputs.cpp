#include "core/interpret/rules/ankle/series_inputs.hpp"

#include "core/interpret/body.hpp"
#include "core/interpret/rules/foot/protective_sensation.hpp"

#include <algorithm>

namespace limbledger::interpret {

using model::Side;

namespace {

constexpr std::string_view ankle_exclusions_item = "history.ankle_rule_exclusions";
constexpr std::array<std::string_view, 3> excluding{"superficial_only", "repeat_visit", "film_made_elsewhere"};
// The page: with these a "no" about tender bone is not known; the rule waits, it is not set aside.
constexpr std::array<std::string_view, 4> unsettling{"altered_consciousness", "feeling_reduced", "other_painful_injury", "swelling_hides_bone"};
constexpr std::array<FootInput, 3> felt{FootInput::zone, FootInput::first, FootInput::second};

template <std::size_t Count>
[[nodiscard]] bool names_one(const model::Finding& finding, const std::array<std::string_view, Count>& words) {
  const std::vector<model::ChoiceId> named = choices_of(finding);
  return std::any_of(named.begin(), named.end(),
                     [&](const model::ChoiceId& choice) { return std::find(words.begin(), words.end(), choice.text) != words.end(); });
}

[[nodiscard]] Said says_foot_excluded(const model::Finding& finding) {
  if (choices_of(finding).empty() && !std::holds_alternative<model::Choices>(finding.value)) {
    return says_answer(finding);
  }
  return {static_cast<std::uint8_t>(names_one(finding, excluding) ? 2 : 1), "known"};
}

// Feeling of this foot was found reduced, by touch or by the test of protective feeling.
[[nodiscard]] bool numb_when_tested(const View& view, Side side, FootHeard& heard) {
  if (view.says_yes("nerve.sensation_foot_reduced", side)) {
    const Findings said = view.at("nerve.sensation_foot_reduced", side);
    heard.findings.insert(heard.findings.end(), said.begin(), said.end());
    return true;
  }
  const std::vector<JudgedRule> sensation = run_protective_sensation(view);
  return std::any_of(sensation.begin(), sensation.end(),
                     [&](const JudgedRule& rule) { return rule.result.side == side && rule.result.outcome == Outcome::positive; });
}

// Whether a "no" counts today. One examiner who says that it does not is enough.
[[nodiscard]] bool no_counts_for_nothing(const View& view, Side side, FootHeard& heard) {
  const auto told = at_side_or_midline(view, ankle_exclusions_item, side);
  bool unsettled = std::any_of(told.begin(), told.end(), [](const auto* finding) { return settles(*finding) && names_one(*finding, unsettling); });
  if (!at_side_or_midline(view, "general.answers_reliable", side).empty()) {
    unsettled = tell(view, "general.answers_reliable", side, &says_answer, heard.findings).value != Tri::yes || unsettled;
  }
  return numb_when_tested(view, side, heard) || unsettled;
}

[[nodiscard]] bool has_no_foot(const View& view, Side side, const Series& series) {
  bool said = false;
  for (const FootInput input : felt) {
    for (const model::Finding* finding : view.at(series.item(input), side)) {
      const auto* not_done = std::get_if<model::NotDone>(&finding->value);
      if (not_done == nullptr) {
        return false;
      }
      said = said || (not_done->reason == model::WhyNot::no_limb && settles(*finding));
    }
  }
  return said;
}

[[nodiscard]] bool speaks_of_foot_break(const View& view, Side side, const Series& series) {
  const auto films = at_side_or_midline(view, "history.film_result", side);
  const bool seen = std::any_of(films.begin(), films.end(), [&](const model::Finding* film) { return names_one(*film, std::array{series.film}); });
  return seen || std::any_of(series.elsewhere.begin(), series.elsewhere.end(), [&](std::string_view item) {
           const auto found = view.at(item, side);
           return std::any_of(found.begin(), found.end(), [](const model::Finding* finding) { return says_tender(*finding); });
         });
}

[[nodiscard]] bool told_of_injury(const View& view, Side side) {
  return view.exam().injured_on || view.says_yes("history.fall_or_blow", side) || view.says_yes("history.fall_or_blow", Side::midline);
}

}  // namespace

FootHeard hear_foot(const View& view, Side side, const Series& series) {
  FootHeard heard{hear_injury(view, side, ankle_exclusions_item), {}, {}, false, false, false, false};
  const OpenBody* gate = view.bodies().gate(series.region, side);
  const std::string_view why = gate == nullptr ? std::string_view() : std::string_view(gate->row->gate->text);
  if (gate != nullptr) {
    heard.findings.push_back(gate->finding);
  }
  heard.no_limb = why == "no_limb" || has_no_foot(view, side, series);
  heard.replaced = why == "implant";
  heard.fused = why == "fused";
  heard.against_no = speaks_of_foot_break(view, side, series);
  heard.unreliable = no_counts_for_nothing(view, side, heard);
  const auto keep = [&](FootInput input, const Told& told) {
    heard.states[static_cast<std::size_t>(input)] = told.state;
    return told.value;
  };
  const auto take = [&](FootInput input) {
    Told told = tell(view, series.item(input), side, &says_answer, heard.findings);
    if (told.value == Tri::no && heard.unreliable) {
      told = {Tri::undetermined, "not_reliable"};
    }
    return keep(input, told);
  };
  FootInjury& in = heard.foot;
  in.age = heard.age;
  in.days = heard.days;
  in.steps = heard.steps;
  heard.states[static_cast<std::size_t>(FootInput::age)] = heard.age_state;
  heard.states[static_cast<std::size_t>(FootInput::days)] = heard.days_state;
  heard.states[static_cast<std::size_t>(FootInput::steps)] = heard.steps_state;
  in.zone = take(FootInput::zone);
  in.first = take(FootInput::first);
  in.second = take(FootInput::second);
  Told at_once = tell(view, series.item(FootInput::imm), side, &says_four_steps, heard.findings);
  // That steps were taken is remembered by who answers today.
  if ((at_once.value != Tri::undetermined && history_not_reliable(view)) || (at_once.value == Tri::yes && heard.unreliable)) {
    at_once = {Tri::undetermined, "not_reliable"};
  }
  in.imm = keep(FootInput::imm, at_once);
  heard.excluded = tell(view, ankle_exclusions_item, side, &says_foot_excluded, heard.findings);
  in.excl = keep(FootInput::excl, heard.excluded);
  in.pregnant = keep(FootInput::pregnant, heard.pregnant);
  return heard;
}

std::vector<Side> injured_feet(const View& view, const Series& series) {
  const std::string& why = view.exam().complaint.text;
  const bool of_ankle = why == "ankle_injury";
  const bool free = why == "free";
  const auto& complaint = view.exam().side;
  const bool sided = complaint && *complaint != Side::midline;
  std::vector<Side> sides;
  for (const Side side : {Side::left, Side::right}) {
    const bool hurt = of_ankle || told_of_injury(view, side);
    const bool painful = std::any_of(felt.begin(), felt.end(), [&](FootInput input) { return view.says_yes(series.item(input), side); });
    const bool asked = std::any_of(felt.begin(), felt.end(), [&](FootInput input) { return !view.at(series.item(input), side).empty(); });
    const bool here = sided ? *complaint == side && (of_ankle || asked) : asked;
    // Pain of long standing is no injury: outside a free visit tender bone alone starts nothing.
    const bool runs = (painful && (hurt || free)) || ((of_ankle || (free && view.exam().injured_on)) && here);
    if (runs && (of_ankle || !hear_injury(view, side, ankle_exclusions_item).no_injury)) {
      sides.push_back(side);
    }
  }
  return sides;
}

}  // namespace limbledger::interpret
