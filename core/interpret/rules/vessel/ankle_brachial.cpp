#include "core/interpret/rules/vessel/ankle_brachial.hpp"

#include "core/interpret/body.hpp"
#include "core/interpret/params.hpp"

#include <algorithm>
#include <set>
#include <string>

namespace limbledger::interpret {

namespace {

using model::Side;

// What a cuff can read, as the catalogue takes it.
constexpr std::int64_t pressure_most = 350;
constexpr std::int64_t arm_least = 20;
constexpr std::int64_t low_to = 90;
constexpr std::int64_t borderline_to = 99;
constexpr std::int64_t expected_to = 140;
constexpr std::int64_t ischaemia_below = 40;  // BERNETTI2014; others take 0.50

constexpr std::array<std::string_view, index_input_count> pressure_names{"ankle_back_of_foot", "ankle_inner_side", "arm_right", "arm_left"};
constexpr std::array<std::string_view, index_input_count> pressure_items{"vessel.pressure_dorsalis_pedis", "vessel.pressure_posterior_tibial",
                                                                         "vessel.pressure_arm", "vessel.pressure_arm"};
constexpr std::array<std::string_view, 4> band_names{"low", "borderline", "expected", "noncompressible"};

[[nodiscard]] constexpr std::size_t spot(IndexInput input) { return static_cast<std::size_t>(input); }

// Whole numbers alone, so that a half always goes up.
[[nodiscard]] std::int64_t arm_index(std::int64_t ankle, std::int64_t arm) { return (200 * ankle + arm) / (2 * arm); }

[[nodiscard]] IndexBand band_of(std::int64_t hundredths) {
  if (hundredths <= low_to) {
    return IndexBand::low;
  }
  if (hundredths <= borderline_to) {
    return IndexBand::borderline;
  }
  return hundredths <= expected_to ? IndexBand::expected : IndexBand::noncompressible;
}

[[nodiscard]] Outcome outcome_of(IndexBand band) {
  switch (band) {
    case IndexBand::low:
      return Outcome::positive;
    case IndexBand::borderline:
    case IndexBand::expected:
      return Outcome::negative;
    case IndexBand::noncompressible:
      return Outcome::not_applicable;
  }
  return Outcome::undetermined;
}

[[nodiscard]] Between either_of(const Between& a, const Between& b) { return {std::max(a.low, b.low), std::max(a.high, b.high)}; }

struct Filled {
  std::array<Between, index_input_count> all;
  [[nodiscard]] Between ankle() const { return either_of(all[spot(IndexInput::dp)], all[spot(IndexInput::pt)]); }
  [[nodiscard]] Between arm() const { return either_of(all[spot(IndexInput::ra)], all[spot(IndexInput::la)]); }
};

[[nodiscard]] Filled fill(const AnklePressures& in) {
  Filled filled;
  for (std::size_t i = 0; i < index_input_count; ++i) {
    const bool arm = i >= spot(IndexInput::ra);
    filled.all[i] = in[i].value_or(Between{arm ? arm_least : 0, pressure_most});
  }
  return filled;
}

// The index rises with the ankle and falls with the arm: where both ends of one input give one band, so does all between.
[[nodiscard]] bool can_settle(const Filled& filled, std::size_t input) {
  const Between& own = filled.all[input];
  if (own.low == own.high) {
    return false;
  }
  const bool is_arm = input >= spot(IndexInput::ra);
  constexpr std::array<IndexInput, index_input_count> partners{IndexInput::pt, IndexInput::dp, IndexInput::la, IndexInput::ra};
  const std::size_t partner = spot(partners[input]);
  const std::int64_t beside = filled.all[partner].low;  // where it leaves the most to this one
  const std::int64_t least = std::max(own.low, beside);
  const std::int64_t most = std::max(own.high, beside);
  const Between against = is_arm ? filled.ankle() : filled.arm();
  for (std::int64_t other = against.low; other <= against.high; ++other) {
    const IndexBand first = is_arm ? band_of(arm_index(other, least)) : band_of(arm_index(least, other));
    const IndexBand last = is_arm ? band_of(arm_index(other, most)) : band_of(arm_index(most, other));
    if (first != last) {
      return true;
    }
  }
  return false;
}

struct PressuresHeard {
  AnklePressures leg;
  std::array<std::string, index_input_count> states;
  std::array<Side, index_input_count> sides{};
  std::array<bool, index_input_count> silent{};  // no signal at all
  std::set<std::string> positions;
  bool no_limb = false;
  std::vector<const model::Finding*> findings;
};

// Two readings hold the pressure between them; an open conflict leaves it unknown.
void hear_pressure(const View& view, std::size_t input, PressuresHeard& heard) {
  heard.states[input] = "not_asked";
  bool open = false;
  for (const model::Finding* finding : view.at(pressure_items[input], heard.sides[input])) {
    heard.findings.push_back(finding);
    const std::string_view why = unsettled_by(*finding);
    const auto* not_done = std::get_if<model::NotDone>(&finding->value);
    const auto* pressure = std::get_if<model::Pressure>(&finding->value);
    const bool in_conflict = finding->standing && *finding->standing == model::Standing::in_conflict;
    // A nought without the word that nothing was heard was not measured.
    const bool read = pressure != nullptr && (pressure->signal || (pressure->mm_hg && pressure->mm_hg->steps > 0));
    open = open || in_conflict;
    if (!why.empty() || !read) {
      const std::string state(!why.empty() ? why : (not_done != nullptr ? state_of(not_done->reason) : std::string_view("signal_not_said")));
      heard.states[input] = heard.leg[input] ? heard.states[input] : state;
      continue;
    }
    const std::int64_t value = pressure->signal ? 0 : pressure->mm_hg->steps;
    heard.silent[input] = value == 0 && (!heard.leg[input] || heard.silent[input]);
    Between& between = heard.leg[input] ? *heard.leg[input] : heard.leg[input].emplace(Between{value, value});
    between = {std::min(between.low, value), std::max(between.high, value)};
    heard.states[input] = between.low == between.high ? "known" : "known_in_part";
    if (finding->position) {
      heard.positions.insert(finding->position->text);
    }
  }
  if (open) {
    heard.leg[input].reset();
    heard.silent[input] = false;
    heard.states[input] = "in_conflict";
  }
}

[[nodiscard]] PressuresHeard hear_pressures(const View& view, Side side) {
  PressuresHeard heard;
  heard.sides = {side, side, Side::right, Side::left};
  for (std::size_t i = 0; i < index_input_count; ++i) {
    hear_pressure(view, i, heard);
  }
  const model::Item* item = view.edition().item(model::ItemId{std::string(pressure_items[0])});
  const OpenBody* body = item == nullptr ? nullptr : view.bodies().not_applicable(*item, side);
  heard.no_limb = body != nullptr && body->row->why_not == model::WhyNot::no_limb;
  return heard;
}

[[nodiscard]] bool no_pulse(const View& view, Side side, std::vector<const model::Finding*>& because) {
  bool none = false;
  for (const std::string_view item : {std::string_view("vessel.pulse_dorsalis_pedis"), std::string_view("vessel.pulse_posterior_tibial")}) {
    for (const model::Finding* finding : view.at(item, side)) {
      const auto* grade = std::get_if<model::Grade>(&finding->value);
      const auto* not_done = std::get_if<model::NotDone>(&finding->value);
      if ((grade != nullptr && grade->grade.text == "0") || (not_done != nullptr && not_done->reason == model::WhyNot::not_palpable)) {
        none = true;
        because.push_back(finding);
      }
    }
  }
  return none;
}

[[nodiscard]] std::vector<model::Word> index_flags(const View& view, Side side, const AnkleIndex& index, PressuresHeard& heard) {
  std::vector<model::Word> flags;
  const auto flag = [&](bool holds, std::string_view name) {
    if (holds) {
      flags.push_back({std::string(name)});
    }
  };
  const bool no_band = !index.band;
  const bool quiet = index.outcome == Outcome::negative && no_pulse(view, side, heard.findings);
  const bool stiff = view.says_yes("history.diabetes", Side::midline) || view.says_yes("history.kidney_failure", Side::midline);
  flag(quiet, "contradicted");
  flag(quiet, "pulse_absent");
  flag(!no_band && index.outcome != Outcome::positive && stiff, "vessels_may_be_stiff");
  flag(heard.silent[spot(IndexInput::dp)] && heard.silent[spot(IndexInput::pt)], "no_signal");
  flag(index.low && index.high && *index.low == *index.high && *index.low == borderline_to + 1, "borderline_in_europe");
  flag(index.high && *index.high < ischaemia_below, "below_040");
  flag(heard.positions.count("half_sitting") != 0 || heard.positions.size() > 1, "not_lying_flat");
  flag(std::count_if(heard.leg.begin() + 2, heard.leg.end(), [](const auto& arm) { return arm.has_value(); }) == 1, "one_arm_only");
  return flags;
}

// With both decimals, as an index is written.
[[nodiscard]] std::string in_hundredths(std::int64_t value) {
  const std::string digits = std::to_string(value % 100);
  return std::to_string(value / 100) + "." + (digits.size() < 2 ? "0" : "") + digits;
}

[[nodiscard]] std::string index_span(const AnkleIndex& index) {
  if (index.low && index.high) {
    return in_hundredths(*index.low) + (*index.low == *index.high ? "" : " to " + in_hundredths(*index.high));
  }
  return index.low ? "at least " + in_hundredths(*index.low) : (index.high ? "at most " + in_hundredths(*index.high) : "not known");
}

void explain_index(const PressuresHeard& heard, const AnkleIndex& index, const RuleResult& result, Working& working) {
  constexpr std::array<std::string_view, index_input_count> said{"artery on the back of the foot", "artery behind the ankle", "right arm", "left arm"};
  for (std::size_t i = 0; i < index_input_count; ++i) {
    const std::string reading = heard.silent[i] ? "no signal, counted as 0" : number_line(heard.leg[i], 1) + (heard.leg[i] ? " mmHg" : "");
    working.lines.push_back({std::string(said[i]) + ": " + reading});
    working.inputs.push_back({std::nullopt, model::Word{std::string(pressure_names[i])}, model::Word{heard.states[i]}, std::nullopt});
  }
  working.lines.push_back({"higher ankle artery over higher arm: " + index_span(index)});
  const AnklePressures& leg = heard.leg;
  if (leg[0] && leg[1] && leg[2] && leg[3]) {
    const Between arm = either_of(*leg[2], *leg[3]);
    const Between lower{std::min(leg[0]->low, leg[1]->low), std::min(leg[0]->high, leg[1]->high)};
    const std::int64_t from = arm_index(lower.low, arm.high);
    const std::int64_t to = arm_index(lower.high, arm.low);
    working.lines.push_back({"lower ankle artery over higher arm (beside it, finds more): " + in_hundredths(from) + (from == to ? "" : " to " + in_hundredths(to))});
  }
  working.statement = {result.rule.text + ":" + std::string(side_word(result.side))};
  const std::string what = result.band ? "band_" + result.band->text : std::string(wire::type_of<Outcome>().words[static_cast<std::size_t>(result.outcome)]);
  working.message = {"msg." + result.rule.text + "." + what};
  working.formula = {"higher ankle artery / higher arm, two decimals, half up; band from the rounded number"};
  working.rows.push_back({{"table.abi/aha2016.ABI.1"}, {"AHA_ACC2016"}, model::Status::read, Params().exact("low_to", 900).raw()});
  working.rows.push_back({{"table.abi/aha2016.ABI.2"}, {"AHA_ACC2016"}, model::Status::read, Params().exact("from", 910).exact("to", 990).raw()});
  working.rows.push_back({{"table.abi/aha2016.ABI.3"}, {"AHA_ACC2016"}, model::Status::read, Params().exact("from", 1000).exact("to", 1400).raw()});
  working.rows.push_back({{"table.abi/aha2016.ABI.4"}, {"AHA_ACC2016"}, model::Status::read, Params().exact("over", 1400).raw()});
  for (const Settle& settle : result.settle) {
    working.changes_if.push_back({"msg.change." + settle.input.text});
  }
}

[[nodiscard]] std::optional<RuleNumber> number_of(const std::optional<std::int64_t>& hundredths) {
  return hundredths ? std::optional(RuleNumber{*hundredths}) : std::nullopt;
}

[[nodiscard]] JudgedRule judge_index(const View& view, Side side) {
  PressuresHeard heard = hear_pressures(view, side);
  const AnkleIndex index = heard.no_limb ? AnkleIndex{Outcome::not_applicable, {}, {}, {}, {}} : ankle_brachial(heard.leg);
  JudgedRule judged;
  RuleResult& result = judged.result;
  result.rule = {std::string(ankle_brachial_rule)};
  result.edition = {std::string(ankle_brachial_edition)};
  result.side = side;
  result.outcome = index.outcome;
  if (index.outcome == Outcome::not_applicable) {
    result.gate = model::Word{heard.no_limb ? "no_limb" : "noncompressible"};
  }
  if (index.band) {
    result.band = model::Word{std::string(band_names[static_cast<std::size_t>(*index.band)])};
  }
  if (index.low || index.high) {
    result.value = RuleValue{number_of(index.low), number_of(index.high)};
  }
  for (std::size_t i = 0; i < index_input_count; ++i) {
    result.inputs.push_back({{std::string(pressure_names[i])}, {heard.states[i]}});
    if (index.settles[i] && heard.states[i] != "unable_limb_absent") {
      result.settle.push_back({{std::string(pressure_names[i])}, model::ItemId{std::string(pressure_items[i])}, heard.sides[i], {}});
    }
  }
  result.flags = index_flags(view, side, index, heard);
  result.findings = ids_of(heard.findings);
  explain_index(heard, index, result, judged.working);
  return judged;
}

}  // namespace

AnkleIndex ankle_brachial(const AnklePressures& in) {
  const Filled filled = fill(in);
  const Between ankle = filled.ankle();
  const Between arm = filled.arm();
  const std::int64_t low = arm_index(ankle.low, arm.high);
  const std::int64_t high = arm_index(ankle.high, arm.low);
  AnkleIndex index;
  if (band_of(low) == band_of(high)) {
    index.band = band_of(low);
    index.outcome = outcome_of(*index.band);
  }
  const auto known = [&](IndexInput input) { return in[spot(input)].has_value(); };
  if (known(IndexInput::ra) && known(IndexInput::la) && (known(IndexInput::dp) || known(IndexInput::pt))) {
    index.low = low;
  }
  if (known(IndexInput::dp) && known(IndexInput::pt) && (known(IndexInput::ra) || known(IndexInput::la))) {
    index.high = high;
  }
  for (std::size_t i = 0; i < index_input_count && !index.band; ++i) {
    index.settles[i] = can_settle(filled, i);
  }
  return index;
}

std::vector<JudgedRule> run_ankle_brachial(const View& view) {
  std::vector<JudgedRule> judged;
  for (const Side side : {Side::left, Side::right}) {
    bool measured = false;
    for (const std::string_view item : {pressure_items[0], pressure_items[1]}) {
      const Findings all = view.at(item, side);
      measured = measured || std::any_of(all.begin(), all.end(), [](const model::Finding* one) { return std::holds_alternative<model::Pressure>(one->value); });
    }
    if (measured) {
      judged.push_back(judge_index(view, side));
    }
  }
  return judged;
}

}  // namespace limbledger::interpret
