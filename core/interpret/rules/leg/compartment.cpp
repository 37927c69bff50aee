#include "core/interpret/rules/leg/compartment.hpp"

#include "core/interpret/alerts/circumstances.hpp"
#include "core/interpret/alerts/red_flag.hpp"
#include "core/interpret/params.hpp"
#include "core/interpret/rules/sheet_inputs.hpp"

#include <algorithm>

namespace limbledger::interpret {

namespace {

using model::Side;

// A snake bite and hard exertion are no recognised danger by themselves (the page's second step), nor are they none.
[[nodiscard]] Said says_any_cause(const model::Finding& finding) {
  if (says_one_of(finding, {"cause_snake", "cause_exertion"}).bits == std::uint8_t{2}) {
    return {std::nullopt, "not_settled"};
  }
  return says_any_named(finding);
}

// In danger by anything that says so; not, once neither a severe injury nor another cause was named.
void add_danger(const View& view, RuleSheet& sheet, const Clue& danger, Side side) {
  for (const model::Finding* finding : danger.because.written()) {
    sheet.findings.push_back(finding);
  }
  add_joined(view, sheet, "limb_in_danger", "limb in danger", SheetJoin::parts,
             {{"history.injury_severe_or_crush"}, {"history.compartment_causes", &says_any_cause}}, side);
  if (danger.is_yes()) {
    sheet.inputs.back().may_be = 2;
    sheet.inputs.back().state = "known";
  } else if (!danger.is_no() && sheet.inputs.back().may_be == 1) {  // an old plaster leaves it open
    sheet.inputs.back().may_be = no_or_yes;
    sheet.inputs.back().state = "not_settled";
  }
}

// Each group of muscles has a stretch of its own; one that nobody stretched is open. The calf's at the knee is that of the back.
void add_stretches(const View& view, RuleSheet& sheet, Side side) {
  std::vector<const model::Finding*> heard;
  const bool calf = tell(view, "knee.stretch_pain_calf", side, &says_answer, heard).value != Tri::undetermined;
  const bool back = tell(view, "leg.stretch_pain_back", side, &says_answer, heard).value != Tri::undetermined;
  const SheetSource front{"leg.stretch_pain_front"};
  const SheetSource outer{"leg.stretch_pain_outer"};
  const SheetSource deep{"leg.stretch_pain_deep"};
  if (calf && back) {
    add_joined(view, sheet, "stretch_pain", "pain on stretch", SheetJoin::parts, {{"knee.stretch_pain_calf"}, {"leg.stretch_pain_back"}, front, outer, deep}, side);
  } else {
    const SheetSource behind{std::string_view(back ? "leg.stretch_pain_back" : "knee.stretch_pain_calf")};
    add_joined(view, sheet, "stretch_pain", "pain on stretch", SheetJoin::parts, {behind, front, outer, deep}, side);
  }
}

// The absence of pain is an answer only of who can tell of it.
void doubt_noes(SheetInput& input) {
  if (input.may_be == 1) {
    input.may_be = no_or_yes;
    input.state = "not_reliable";
  }
}

[[nodiscard]] JudgedRule judge_compartment(const View& view, const Answers& answers, Side side) {
  RuleSheet sheet;
  sheet.rule = compartment_rule;
  sheet.edition = compartment_edition;
  sheet.side = side;
  add_danger(view, sheet, compartment_in_danger(answers, side), side);
  add_answer(view, sheet, "pain_beyond", "pain beyond what the hurt explains", "history.pain_out_of_proportion", side);
  add_stretches(view, sheet, side);
  const bool can_tell = !cannot_tell_of_pain(answers, side).is_yes();
  for (std::size_t at = 1; at < sheet.inputs.size() && !can_tell; ++at) {
    doubt_noes(sheet.inputs[at]);
  }
  const auto value = [&](std::size_t at) { return sheet.inputs[at].may_be == no_or_yes ? Tri::undetermined : tri(sheet.inputs[at].may_be == 2); };
  const CompartmentIn in{value(0), value(1), value(2), can_tell, Tri::undetermined};
  add_known(sheet, "cannot_tell", "cannot tell of pain", tri(!in.can_tell), "known", "general.answers_reliable", Side::midline);
  sheet.inputs.push_back({"compartment_pressure", "diastolic less compartment pressure", {"not measured", "30 or more", "below 30"}, {}, side, 1, "not_available", {}});
  const auto classes = compartment_classes(in);
  for (std::size_t i = 0; i < classes.size(); ++i) {
    sheet.inputs[i].may_be = classes[i];
  }
  sheet.formula = "as the page's order: pain in a limb in danger, both pains, pressure below 30, cannot tell, hourly";
  sheet.rows.push_back({{"table.acs/boast2014.pressure"}, {"BOAST_ACS_SUM"}, model::Status::read, Params().figure("below_mm_hg", 30'000).raw()});
  JudgedRule judged = judge_sheet(view, sheet, &decide_compartment);
  RuleResult& result = judged.result;
  if (!can_tell) {  // nobody is asked after a pain that cannot be told
    const auto of_pain = [](const Settle& one) { return one.input.text == "pain_beyond" || one.input.text == "stretch_pain"; };
    result.settle.erase(std::remove_if(result.settle.begin(), result.settle.end(), of_pain), result.settle.end());
  }
  // Pain beyond the hurt is positive though nobody asked after the danger; a no to one cause leaves open what is open otherwise.
  for (Settle& settle : result.settle) {
    if (settle.input.text == "limb_in_danger" && settle.item && danger_stays_open(answers, side, settle.item->text)) {
      settle.answers.front().gives = Outcome::undetermined;
    }
    if (settle.input.text == "pain_beyond" && in.in_danger == Tri::undetermined) {
      settle.answers.back().gives = Outcome::positive;
    }
  }
  const bool other_sign = view.says_yes("leg.tense_compartment", side) || view.says_yes("nerve.sensation_foot_reduced", side) ||
                          view.says_yes("history.numb_or_tingling", side) || view.says_yes("nerve.foot_drop", side) || in.beyond == Tri::yes;
  if (result.outcome == Outcome::negative && other_sign) {
    result.flags.push_back({"contradicted"});
  }
  if (pulse_absent(answers, "vessel.pulse_dorsalis_pedis", side).is_yes() || pulse_absent(answers, "vessel.pulse_posterior_tibial", side).is_yes()) {
    result.flags.push_back({"pulse_absent"});
  }
  return judged;
}

}  // namespace

std::array<Classes, 5> compartment_classes(const CompartmentIn& in) {
  // Not asked whether it is in danger: pain beyond the hurt is judged as if it were.
  const Classes danger = in.in_danger == Tri::undetermined && in.beyond == Tri::yes ? Classes{2} : classes_of(in.in_danger);
  Classes pressure = 1;
  if (in.pressure_low != Tri::undetermined) {
    pressure = in.pressure_low == Tri::yes ? 4 : 2;
  } else if (!in.can_tell) {
    pressure = 6;
  }
  return {danger, classes_of(in.beyond), classes_of(in.stretch), static_cast<Classes>(in.can_tell ? 1 : 2), pressure};
}

SheetAnswer decide_compartment(std::span<const std::uint8_t> classes) {
  const bool danger = classes[0] == sheet_yes;
  const bool beyond = classes[1] == sheet_yes;
  const bool stretch = classes[2] == sheet_yes;
  if ((danger && (beyond || stretch)) || (beyond && stretch) || classes[4] == 2) {
    return {Outcome::positive};
  }
  if (classes[3] == sheet_yes && danger) {
    return {Outcome::undetermined};
  }
  return danger ? SheetAnswer{Outcome::negative, "hourly"} : SheetAnswer{Outcome::negative};
}

std::vector<JudgedRule> run_compartment(const View& view) {
  std::vector<JudgedRule> judged;
  if (!complaint_among(view, {"acute_knee", "ankle_injury", "calf_pain", "after_operation", "after_plaster", "whole_limb", "free"})) {
    return judged;
  }
  const Answers answers(view);
  for (const Side side : {Side::left, Side::right}) {
    const bool sign = view.says_yes("history.pain_out_of_proportion", side) || view.says_yes("knee.stretch_pain_calf", side) ||
                      view.says_yes("leg.stretch_pain_front", side) || view.says_yes("leg.stretch_pain_outer", side) ||
                      view.says_yes("leg.stretch_pain_back", side) || view.says_yes("leg.stretch_pain_deep", side) || view.says_yes("leg.tense_compartment", side);
    // A limb in danger on the side complained of, once one of the two pains was asked after.
    const bool asked = any_recorded(view, side, {"history.pain_out_of_proportion", "knee.stretch_pain_calf", "leg.stretch_pain_back"});
    if (sign || (asked && side_complained_of(view, side) && compartment_in_danger(answers, side).is_yes())) {
      judged.push_back(judge_compartment(view, answers, side));
    }
  }
  return judged;
}

}  // namespace limbledger::interpret
