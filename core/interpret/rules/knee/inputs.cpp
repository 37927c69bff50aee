#include "core/interpret/rules/knee/inputs.hpp"

#include "core/interpret/body.hpp"
#include "core/interpret/rules/ankle/series.hpp"

#include <algorithm>

namespace limbledger::interpret {

using model::Side;

namespace {

constexpr std::string_view exclusions_item = "history.knee_rule_exclusions";
constexpr std::array<std::string_view, 3> tender_items{"knee.fibular_head_tender", "knee.patella_tender", "knee.bone_tender_elsewhere"};

// Pregnancy is an exclusion of its own kind and is not counted here.
[[nodiscard]] Said says_excluded(const model::Finding& finding) {
  const std::vector<model::ChoiceId> named = choices_of(finding);
  if (named.empty() && !std::holds_alternative<model::Choices>(finding.value)) {
    return says_answer(finding);
  }
  const bool any = std::any_of(named.begin(), named.end(), [](const auto& c) { return !is_none(c) && !is_pregnancy(c); });
  return {static_cast<std::uint8_t>(any ? 2 : 1), "known"};
}

// Whether the knee is not there to examine: one item says no limb, and none of this side was examined.
[[nodiscard]] bool has_no_knee(const View& view, Side side) {
  bool said = false;
  for (const model::Finding* finding : view.findings()) {
    if (finding->side != side || !finding->item.text.starts_with("knee.")) {
      continue;
    }
    const auto* not_done = std::get_if<model::NotDone>(&finding->value);
    if (not_done == nullptr) {
      return false;
    }
    said = said || (not_done->reason == model::WhyNot::no_limb && settles(*finding));
  }
  return said;
}

[[nodiscard]] bool speaks_of_break(const View& view, Side side) {
  const auto films = at_side_or_midline(view, "history.film_result", side);
  const bool seen = std::any_of(films.begin(), films.end(), [](const model::Finding* film) {
    const auto* choices = std::get_if<model::Choices>(&film->value);
    return choices != nullptr && std::find(choices->choices.begin(), choices->choices.end(), model::ChoiceId{"knee_fracture_seen"}) != choices->choices.end();
  });
  return seen || std::any_of(beside_the_knee.begin(), beside_the_knee.end(), [&](std::string_view item) {
           const auto found = view.at(item, side);
           return std::any_of(found.begin(), found.end(), [](const model::Finding* finding) { return says_tender(*finding); });
         });
}

void hear_exclusions(const View& view, Side side, KneeHeard& heard) {
  heard.excluded = tell(view, exclusions_item, side, &says_excluded, heard.findings);
  const auto asked = at_side_or_midline(view, "general.answers_reliable", side);
  if (!asked.empty()) {
    const Tri reliable = tell(view, "general.answers_reliable", side, &says_answer, heard.findings).value;
    if (reliable != Tri::yes) {
      heard.unreliable = reliable == Tri::no;
      heard.excluded.value = or_(heard.excluded.value, not_(reliable));
      heard.excluded.state = heard.unreliable ? "known" : "not_reliable";
    }
  }
}

}  // namespace

KneeHeard hear_knee(const View& view, Side side) {
  KneeHeard heard{hear_injury(view, side, exclusions_item), false, false, false, false};
  const OpenBody* gate = view.bodies().gate("knee", side);
  const std::string_view why = gate == nullptr ? std::string_view() : std::string_view(gate->row->gate->text);
  heard.no_limb = why == "no_limb" || has_no_knee(view, side);
  heard.replaced = why == "implant";
  heard.fused = why == "fused";
  if (gate != nullptr) {
    heard.findings.push_back(gate->finding);
  }
  heard.against_no = speaks_of_break(view, side);
  hear_exclusions(view, side, heard);
  return heard;
}

std::vector<Side> injured_knees(const View& view) {
  std::vector<Side> sides;
  const auto& complaint = view.exam().side;
  const bool sided = complaint && *complaint != Side::midline;
  const std::string& why = view.exam().complaint.text;
  const bool of_knee = why == "acute_knee" || why == "chronic_knee";
  const model::Sequence* sequence = view.edition().sequence(view.exam().complaint);
  const bool below_knee = sequence != nullptr && sequence->part && (sequence->part->text == "ankle" || sequence->part->text == "foot" || sequence->part->text == "leg");
  bool any_input = view.exam().complaint.text == "acute_knee" || view.exam().injured_on.has_value();
  for (const model::Finding* finding : view.findings()) {
    any_input = any_input || std::find(tender_items.begin(), tender_items.end(), finding->item.text) != tender_items.end() ||
                finding->item.text == "history.steps_at_once" || finding->item.text == "gait.steps_now";
  }
  if (!any_input) {
    return sides;
  }
  for (const Side side : {Side::left, Side::right}) {
    const bool tender = std::any_of(tender_items.begin(), tender_items.end(), [&](std::string_view item) { return view.says_yes(item, side); });
    const auto& all = view.findings();
    // What the danger of a compartment asks (knee.stretch_pain_calf) is no knee examined, nor is a knee moved and found well above a hurt ankle.
    const bool examined = std::any_of(all.begin(), all.end(), [&](const auto* f) {
      const bool of_rule = std::find(tender_items.begin(), tender_items.end(), f->item.text) != tender_items.end();
      return f->side == side && (of_rule || (!below_knee && f->item.text.starts_with("knee.") && !f->item.text.starts_with("knee.stretch_pain")));
    });
    // Only a complaint of the knee says by itself which joint was hurt.
    if (tender || (sided ? *complaint == side && (of_knee || examined) : examined)) {
      sides.push_back(side);
    }
  }
  return sides;
}

}  // namespace limbledger::interpret
