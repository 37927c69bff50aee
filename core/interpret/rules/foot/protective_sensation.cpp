#include "core/interpret/rules/foot/protective_sensation.hpp"

#include "core/interpret/body.hpp"
#include "core/interpret/params.hpp"

#include <algorithm>
#include <string>
#include <utility>

namespace limbledger::interpret {

namespace {

using model::Side;
using ThreeNames = std::array<std::string_view, 3>;

constexpr ThreeNames filament_items{"nerve.monofilament_great_toe", "nerve.monofilament_metatarsal_head_1", "nerve.monofilament_metatarsal_head_5"};
constexpr ThreeNames fork_items{"nerve.tuning_fork_great_toe", "nerve.tuning_fork_ankle", "nerve.tuning_fork_tibial_tubercle"};
constexpr ThreeNames touch_items{"nerve.toe_touch_great", "nerve.toe_touch_third", "nerve.toe_touch_fifth"};
constexpr ThreeNames place_words{"great toe", "first metatarsal head", "fifth metatarsal head"};
constexpr std::array<std::string_view, sensation_input_count> sensation_names{"filament", "touch", "site_toe", "site_head_1", "site_head_5",
                                                                              "fork",     "toe_1", "toe_3",    "toe_5",       "toes_of_other_foot"};
constexpr ThreeNames felt_or_lost{"felt", "not felt", ""};
constexpr ThreeNames other_classes{"none not felt", "1 not felt", "2 or more not felt"};
constexpr std::int64_t right_needed = 2;
constexpr std::int64_t toes_needed = 2;

[[nodiscard]] constexpr std::size_t nth(SensationInput first, std::size_t n = 0) { return static_cast<std::size_t>(first) + n; }

[[nodiscard]] Outcome decide_sensation(const std::array<std::uint8_t, sensation_input_count>& in) {
  const auto lost = [&](SensationInput first, std::size_t n) { return in[nth(first, n)] == 1; };
  const bool touch = in[nth(SensationInput::touch)] == 1;
  const bool filament = in[nth(SensationInput::filament)] == 1 || !touch;
  bool any = in[nth(SensationInput::fork)] == 1;
  std::int64_t own = 0;
  for (std::size_t n = 0; n < 3; ++n) {
    any = any || (filament && lost(SensationInput::site_toe, n));
    own += lost(SensationInput::toe_1, n) ? 1 : 0;
  }
  any = any || (touch && own > 0 && own + in[nth(SensationInput::other)] >= toes_needed);
  return any ? Outcome::positive : Outcome::negative;
}

[[nodiscard]] std::array<Classes, sensation_input_count> sensation_classes(const ProtectiveSensation& in) {
  std::array<Classes, sensation_input_count> may_be{};
  may_be[nth(SensationInput::filament)] = classes_of(tri(in.filament));
  may_be[nth(SensationInput::touch)] = classes_of(tri(in.touch));
  may_be[nth(SensationInput::fork)] = classes_of(in.fork);
  for (std::size_t n = 0; n < 3; ++n) {
    may_be[nth(SensationInput::site_toe, n)] = classes_of(in.site[n]);
    may_be[nth(SensationInput::toe_1, n)] = classes_of(in.toe[n]);
  }
  may_be[nth(SensationInput::other)] = classes_of<2>(in.other, {1, toes_needed});
  return may_be;
}

// Slipped or not sure of the place: an answer that was felt does not count then.
[[nodiscard]] bool held_badly(const model::Finding& finding) {
  return finding.quality && std::any_of(finding.quality->begin(), finding.quality->end(), [](model::Quality quality) {
           return quality == model::Quality::poor_contact || quality == model::Quality::unsure_landmark;
         });
}

[[nodiscard]] Said says_lost(const model::Finding& finding) {
  std::optional<bool> lost;
  if (const auto* count = std::get_if<model::CountValue>(&finding.value)) {
    lost = count->count.steps < right_needed;
  } else if (const auto* answer = std::get_if<model::Answer>(&finding.value); answer != nullptr && answer->answer != model::AnswerWord::unsure) {
    lost = answer->answer == model::AnswerWord::no;
  }
  if (!lost) {
    return {std::nullopt, "unsure"};
  }
  if (!*lost && held_badly(finding)) {
    return {std::nullopt, "not_reliable"};
  }
  return {static_cast<std::uint8_t>(*lost ? 2 : 1), "known"};
}

struct SensationHeard {
  ProtectiveSensation foot;
  std::array<std::string, sensation_input_count> states;
  std::array<Side, sensation_input_count> sides{};
  std::array<std::string_view, sensation_input_count> items;
  bool fork_begun = false;
  bool no_limb = false;
  bool numb_elsewhere = false;
  bool out_of_reach = false;  // a place that is missing or covered
  std::vector<const model::Finding*> findings;
};

[[nodiscard]] bool begun(const View& view, const ThreeNames& items, Side side) {
  return std::any_of(items.begin(), items.end(), [&](std::string_view item) {
    const Findings all = view.at(item, side);
    return std::any_of(all.begin(), all.end(), [](const model::Finding* one) { return !std::holds_alternative<model::NotDone>(one->value); });
  });
}

[[nodiscard]] Tri hear_place(const View& view, std::string_view item, Side side, SensationHeard& heard, std::string& state) {
  const Heard one = hear(view.at(item, side), no_or_yes, &says_lost);
  heard.findings.insert(heard.findings.end(), one.findings.begin(), one.findings.end());
  state = one.state;
  return one.as_tri();
}

void hear_fork(const View& view, Side side, SensationHeard& heard) {
  const std::size_t place = nth(SensationInput::fork);
  heard.items[place] = fork_items[0];
  heard.fork_begun = begun(view, fork_items, side);
  if (!heard.fork_begun) {
    return;
  }
  // Lost farther up is lost at the toe; felt there says nothing of the toe.
  heard.foot.fork = hear_place(view, fork_items[0], side, heard, heard.states[place]);
  for (const std::string_view higher : {fork_items[1], fork_items[2]}) {
    std::string state;
    if (hear_place(view, higher, side, heard, state) == Tri::yes) {
      heard.foot.fork = Tri::yes;
      heard.states[place] = "known";
    }
  }
}

void hear_other_toes(const View& view, Side side, SensationHeard& heard) {
  const std::size_t place = nth(SensationInput::other);
  Between missed{0, 0};
  heard.states[place] = "known";
  heard.items[place] = touch_items[0];
  for (const std::string_view item : touch_items) {
    std::string state;
    const Tri lost = hear_place(view, item, other_side(side), heard, state);
    missed.low += lost == Tri::yes ? 1 : 0;
    missed.high += lost == Tri::no ? 0 : 1;
    if (lost == Tri::undetermined && heard.states[place] == "known") {
      heard.states[place] = state;
      heard.items[place] = item;
    }
  }
  heard.foot.other = missed;
}

// What beside the rule says that the foot does not feel.
[[nodiscard]] bool numb_beside(const View& view, Side side, SensationHeard& heard) {
  bool numb = view.says_yes("body.feeling_lost", side);
  constexpr ThreeNames beside{"nerve.monofilament_metatarsal_head_3", "nerve.touch_sole", "body.feeling_lost"};
  for (const std::string_view item : beside) {
    for (const model::Finding* finding : view.at(item, side)) {
      const auto* choice = std::get_if<model::Choice>(&finding->value);
      const auto* count = std::get_if<model::CountValue>(&finding->value);
      numb = numb || (choice != nullptr && choice->choice.text == "not_felt") || (count != nullptr && count->count.steps < right_needed);
      heard.findings.push_back(finding);
    }
  }
  return numb;
}

[[nodiscard]] SensationHeard hear_sensation(const View& view, Side side) {
  SensationHeard heard;
  heard.sides.fill(side);
  heard.sides[nth(SensationInput::other)] = other_side(side);
  heard.foot.touch = begun(view, touch_items, side);
  heard.foot.filament = begun(view, filament_items, side) || !heard.foot.touch;
  heard.states.fill("not_asked");
  for (std::size_t n = 0; n < 3; ++n) {
    heard.items[nth(SensationInput::site_toe, n)] = filament_items[n];
    heard.items[nth(SensationInput::toe_1, n)] = touch_items[n];
    heard.foot.site[n] = hear_place(view, filament_items[n], side, heard, heard.states[nth(SensationInput::site_toe, n)]);
    heard.foot.toe[n] = hear_place(view, touch_items[n], side, heard, heard.states[nth(SensationInput::toe_1, n)]);
  }
  hear_fork(view, side, heard);
  if (heard.foot.touch) {
    hear_other_toes(view, side, heard);
  }
  const OpenBody* gate = view.bodies().gate("foot", side);
  heard.no_limb = gate != nullptr && gate->row->gate->text == "no_limb";
  if (gate != nullptr) {
    heard.findings.push_back(gate->finding);
  }
  heard.numb_elsewhere = numb_beside(view, side, heard);
  heard.out_of_reach = std::any_of(heard.states.begin(), heard.states.end(),
                                   [](const std::string& state) { return state == "unable_limb_absent" || state == "covered"; });
  return heard;
}

[[nodiscard]] bool in_use(const SensationHeard& heard, std::size_t input) {
  if (input < nth(SensationInput::site_toe)) {
    return false;  // which method was used is no question
  }
  if (input == nth(SensationInput::fork)) {
    return heard.fork_begun;
  }
  return input < nth(SensationInput::fork) ? heard.foot.filament : heard.foot.touch;
}

void explain_sensation(const SensationHeard& heard, const RuleResult& result, Working& working) {
  const ProtectiveSensation& foot = heard.foot;
  const auto line = [&](const std::string& text, Tri lost) { working.lines.push_back({text + ": " + met_line(lost)}); };
  std::int64_t own_low = 0;
  std::int64_t own_high = 0;
  for (std::size_t n = 0; n < 3; ++n) {
    if (foot.filament) {
      line("filament not felt, " + std::string(place_words[n]), foot.site[n]);
    }
    own_low += foot.toe[n] == Tri::yes ? 1 : 0;
    own_high += foot.toe[n] == Tri::no ? 0 : 1;
  }
  if (heard.fork_begun) {
    line("tuning fork not felt at the great toe or farther up", foot.fork);
  }
  if (foot.touch) {
    const Between all{own_low + foot.other->low, own_high + foot.other->high};
    const Tri lost = own_low > 0 && all.low >= toes_needed ? Tri::yes : tri(false);
    const bool open = lost == Tri::no && own_high > 0 && all.high >= toes_needed;
    line("toes that do not feel a touch " + number_line(all, 1) + ", 2 or more of 6 and one of this foot", open ? Tri::undetermined : lost);
  }
  working.statement = {result.rule.text + ":" + std::string(side_word(result.side))};
  working.message = {"msg." + result.rule.text + "." + std::string(wire::type_of<Outcome>().words[static_cast<std::size_t>(result.outcome)])};
  working.formula = {"lost if any line is met; a method that was not begun is left out"};
  working.rows.push_back({{"lops/iwgdf"}, {"IWGDF_ADDENDUM"}, model::Status::read, Params().figure("right_needed", 2000).figure("of", 3000).raw()});
  working.rows.push_back({{"lops/iwgdf"}, {"FORK_RESTATED"}, model::Status::read, Params().figure("right_needed", 2000).figure("of", 3000).raw()});
  working.rows.push_back({{"lops/iwgdf"}, {"IPTT2020"}, model::Status::memory, Params().figure("toes_needed", 2000).figure("of", 6000).raw()});
  for (std::size_t i = 0; i < sensation_input_count; ++i) {
    if (in_use(heard, i)) {
      working.inputs.push_back({std::nullopt, model::Word{std::string(sensation_names[i])}, model::Word{heard.states[i]}, std::nullopt});
    }
  }
  for (const Settle& settle : result.settle) {
    working.changes_if.push_back({"msg.change." + settle.input.text});
  }
}

// A place that is not there settles nothing, however often it is asked for.
[[nodiscard]] bool can_be_tested(const std::string& state) { return state != "unable_limb_absent"; }

[[nodiscard]] JudgedRule judge_sensation(const View& view, Side side) {
  const SensationHeard heard = hear_sensation(view, side);
  const auto completed = protective_sensation(heard.foot);
  JudgedRule judged;
  RuleResult& result = judged.result;
  result.rule = {std::string(protective_sensation_rule)};
  result.edition = {std::string(protective_sensation_edition)};
  result.side = side;
  result.outcome = heard.no_limb ? Outcome::not_applicable : completed.outcome;
  if (heard.no_limb) {
    result.gate = model::Word{"no_limb"};
  }
  for (std::size_t i = 0; i < sensation_input_count; ++i) {
    if (!in_use(heard, i)) {
      continue;
    }
    result.inputs.push_back({{std::string(sensation_names[i])}, {heard.states[i]}});
    if (completed.settles[i] && !heard.no_limb && can_be_tested(heard.states[i])) {
      const ThreeNames& classes = i == nth(SensationInput::other) ? other_classes : felt_or_lost;
      result.settle.push_back(settle_by(view, sensation_names[i], heard.items[i], heard.sides[i], classes, completed.gives[i]));
      result.settle.back().side = heard.sides[i];
    }
  }
  if (result.outcome == Outcome::negative && heard.numb_elsewhere) {
    result.flags.push_back({"contradicted"});
    result.flags.push_back({"numb_elsewhere"});
  }
  if (result.outcome == Outcome::undetermined && heard.out_of_reach) {
    result.flags.push_back({"place_out_of_reach"});
  }
  result.findings = ids_of(heard.findings);
  explain_sensation(heard, result, judged.working);
  return judged;
}

[[nodiscard]] bool sensation_tried(const View& view, Side side) {
  for (const ThreeNames& items : {filament_items, fork_items, touch_items}) {
    if (std::any_of(items.begin(), items.end(), [&](std::string_view item) { return !view.at(item, side).empty(); })) {
      return true;
    }
  }
  return false;
}

}  // namespace

Completed<sensation_input_count> protective_sensation(const ProtectiveSensation& in) { return complete(sensation_classes(in), &decide_sensation); }

std::vector<JudgedRule> run_protective_sensation(const View& view) {
  std::vector<JudgedRule> judged;
  for (const Side side : {Side::left, Side::right}) {
    if (sensation_tried(view, side)) {
      judged.push_back(judge_sensation(view, side));
    }
  }
  return judged;
}

}  // namespace limbledger::interpret
