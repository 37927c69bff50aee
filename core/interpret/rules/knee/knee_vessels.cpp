#include "core/interpret/rules/knee/knee_vessels.hpp"

#include "core/interpret/alerts/limits.hpp"
#include "core/interpret/alerts/red_flag.hpp"
#include "core/interpret/params.hpp"
#include "core/interpret/rules/sheet_places.hpp"

#include <algorithm>
#include <array>

namespace limbledger::interpret {

namespace {

constexpr std::int64_t stiff_hundredths = 140;

using model::Side;

constexpr std::uint8_t foot_felt = 1, foot_weaker = 2, foot_none = 4, foot_any = 7;
constexpr std::array<std::string_view, 2> foot_pulses{"vessel.pulse_dorsalis_pedis", "vessel.pulse_posterior_tibial"};

[[nodiscard]] int strength_of(const model::Finding& finding) {
  const auto* grade = std::get_if<model::Grade>(&finding.value);
  const std::string text = grade != nullptr ? grade->grade.text : std::string();
  return text.size() == 1 && text[0] >= '0' && text[0] <= '3' ? text[0] - '0' : -1;
}

// Weaker: faint, or fainter than the same artery of the other foot.
[[nodiscard]] Heard hear_foot_pulse(const View& view, std::string_view item, Side side) {
  int other = -1;
  for (const model::Finding* finding : view.at(item, other_side(side))) {
    other = std::max(other, settles(*finding) ? strength_of(*finding) : -1);
  }
  return hear(view.at(item, side), foot_any, [other](const model::Finding& finding) -> Said {
    const int here = strength_of(finding);
    if (here < 0) {
      return {std::nullopt, "unsure"};
    }
    return {here == 0 ? foot_none : (here == 1 || here < other ? foot_weaker : foot_felt), "known"};
  });
}

// No pulse: at neither artery. At one of them alone it is a weaker foot.
[[nodiscard]] Classes both_arteries(Classes first, Classes second) {
  Classes out = 0;
  for (const Classes one : {foot_felt, foot_weaker, foot_none}) {
    for (const Classes two : {foot_felt, foot_weaker, foot_none}) {
      if ((first & one) != 0 && (second & two) != 0) {
        const bool none = one == foot_none && two == foot_none;
        out = static_cast<Classes>(out | (none ? foot_none : (one == foot_felt && two == foot_felt ? foot_felt : foot_weaker)));
      }
    }
  }
  return out;
}

// The higher of those that were measured.
[[nodiscard]] MeasuredAt higher_of(const MeasuredAt& a, const MeasuredAt& b) {
  if (!a.between || !b.between) {
    return a.between || a.state == "in_conflict" ? a : (b.between || a.state == "not_asked" ? b : a);
  }
  MeasuredAt higher = a.between->high >= b.between->high ? a : b;
  higher.between = Between{std::max(a.between->low, b.between->low), std::max(a.between->high, b.between->high)};
  return higher;
}

[[nodiscard]] RuleSheet vessels_sheet(const View& view, Side side) {
  RuleSheet sheet;
  sheet.rule = knee_vessels_rule;
  sheet.edition = knee_vessels_edition;
  sheet.side = side;
  add_joined(view, sheet, "hard_signs", "cold foot, growing or beating swelling, bleeding, murmur or thrill", SheetJoin::parts,
             {{"vessel.foot_cold"}, {"vessel.haematoma_expanding"}, {"vessel.bleeding_active"}, {"vessel.bruit_popliteal"}, {"vessel.thrill"}}, side);
  const Heard dorsal = hear_foot_pulse(view, foot_pulses[0], side);
  const Heard tibial = hear_foot_pulse(view, foot_pulses[1], side);
  for (const Heard* one : {&dorsal, &tibial}) {
    sheet.findings.insert(sheet.findings.end(), one->findings.begin(), one->findings.end());
  }
  const bool dorsal_open = !dorsal.bits;
  const Classes pulse = both_arteries(dorsal.bits.value_or(foot_any), tibial.bits.value_or(foot_any));
  const bool known = (pulse & (pulse - 1U)) == 0;
  sheet.inputs.push_back({"foot_pulses", "pulses of the foot", {"felt", "weaker", "not felt"}, foot_pulses[dorsal_open ? 0 : 1], side, pulse,
                          std::string(known ? "known" : (dorsal_open ? dorsal.state : tibial.state)), {}});
  sheet.inputs.back().in_part = !dorsal.bits && !tibial.bits;
  const auto pressure = [&](std::string_view item, Side on) { return measure_at(view, item, on, sheet.findings); };
  const MeasuredAt ankle = higher_of(pressure("vessel.pressure_posterior_tibial", side), pressure("vessel.pressure_dorsalis_pedis", side));
  const MeasuredAt arm = higher_of(pressure("vessel.pressure_arm", Side::left), pressure("vessel.pressure_arm", Side::right));
  const bool ankle_open = !ankle.between;
  SheetInput ratio{"pressure_ratio",
                   "ankle pressure to arm pressure",
                   {"0.90 or more", "below 0.90"},
                   ankle_open ? std::string_view("vessel.pressure_posterior_tibial") : std::string_view("vessel.pressure_arm"),
                   side,
                   classes_of(knee_pressure_low(ankle.between, arm.between)),
                   "known",
                   {}};
  if (ankle.between && arm.between) {
    ratio.reading = ankle.reading + " to " + arm.reading;
    ratio.state = ratio.may_be == no_or_yes ? "known_in_part" : "known";
  } else {
    ratio.state = ankle_open ? ankle.state : arm.state;
  }
  sheet.inputs.push_back(std::move(ratio));
  sheet.formula = "hard sign or no pulse; else weaker pulse, or 10 x ankle < 9 x arm; else watched";
  sheet.rows.push_back({{"table.kd_abi/2004.limit"}, {"MILLS2004"}, model::Status::read, Params().exact("below", 900).figure("knees", 38'000).raw()});
  return sheet;
}

}  // namespace

SheetAnswer decide_knee_vessels(std::span<const std::uint8_t> classes) {
  if (classes[0] == sheet_yes || classes[1] == 2) {
    return {Outcome::positive, "emergency"};
  }
  return classes[1] == 1 || classes[2] == 1 ? SheetAnswer{Outcome::positive, "imaging_now"} : SheetAnswer{Outcome::negative, "watched"};
}

Tri knee_pressure_low(const std::optional<Between>& ankle, const std::optional<Between>& arm) {
  if (!ankle || !arm || arm->low <= 0) {
    return Tri::undetermined;
  }
  if (ankle->high * 100 < arm->low * abi_hundredths) {
    return Tri::yes;
  }
  // Above 1.40 the arteries do not yield to the cuff, and the ratio says nothing (AHA_ACC2016; clinical safety, part B).
  const bool may_be_stiff = ankle->high * 100 > arm->low * stiff_hundredths;
  return ankle->low * 100 >= arm->high * abi_hundredths && !may_be_stiff ? Tri::no : Tri::undetermined;
}

KneeVessels hear_knee_vessels(const View& view, Side side) {
  const RuleSheet sheet = vessels_sheet(view, side);
  const auto told = [&](std::size_t input) {
    const Classes may_be = sheet.inputs[input].may_be;
    return may_be == no_or_yes ? Tri::undetermined : tri(may_be == 2);
  };
  return {told(0), sheet.inputs[1].may_be, told(2)};
}

std::vector<JudgedRule> run_knee_vessels(const View& view) {
  std::vector<JudgedRule> judged;
  if (!complaint_among(view, {"acute_knee", "free", "whole_limb", "review"})) {
    return judged;
  }
  const Answers answers(view);
  for (const Side side : {Side::left, Side::right}) {
    if (!view.has_side(side) || !dislocated_knee(answers, side).clue.is_yes()) {
      continue;
    }
    judged.push_back(judge_sheet(view, vessels_sheet(view, side), &decide_knee_vessels));
    RuleResult& result = judged.back().result;
    const Findings back = view.at("history.joint_put_back", side);
    const bool still_out = std::any_of(back.begin(), back.end(), [](const auto* finding) { return says_answer(*finding).bits == std::uint8_t{1}; });
    if (still_out && result.band && result.band->text == "imaging_now") {
      result.flags.push_back({"measure_again_when_back"});
    }
    const bool one_arm = view.at("vessel.pressure_arm", Side::left).empty() != view.at("vessel.pressure_arm", Side::right).empty();
    if (one_arm) {
      result.flags.push_back({"one_arm_only"});
    }
  }
  return judged;
}

}  // namespace limbledger::interpret
