#include "core/interpret/rules/foot/foot_category.hpp"

#include "core/interpret/body.hpp"
#include "core/interpret/params.hpp"
#include "core/interpret/rules/foot/protective_sensation.hpp"
#include "core/interpret/rules/knee/inputs.hpp"
#include "core/interpret/rules/vessel/ankle_brachial.hpp"

#include <algorithm>
#include <string>
#include <utility>

namespace limbledger::interpret {

namespace {

using model::Side;

constexpr std::array<Side, 2> both_feet{Side::left, Side::right};
constexpr std::array<std::string_view, feet_input_count> foot_names{"ulcer_now", "protective_feeling", "narrowed_arteries", "foot_deformity",
                                                                    "ulcer_before", "amputation_before", "kidney_failure"};
constexpr std::array<std::string_view, feet_input_count> foot_items{
    "skin.ulcer",           "nerve.monofilament_great_toe", "vessel.pulse_dorsalis_pedis", "foot.deformity", "history.foot_ulcer_before",
    "history.amputation_before", "history.kidney_failure"};
// Feeling and arteries are concluded from several findings: their classes are no answer to the one item that is named.
constexpr std::array<std::array<std::string_view, 2>, feet_input_count> category_classes{
    {{"no", "yes"}, {"kept", "lost"}, {"not narrowed", "narrowed"}, {"no", "yes"}, {"no", "yes"}, {"no", "yes"}, {"no", "yes"}}};
constexpr std::array<std::string_view, 4> category_names{"category_0", "category_1", "category_2", "category_3"};
constexpr std::array<std::string_view, 2> pulse_items{"vessel.pulse_dorsalis_pedis", "vessel.pulse_posterior_tibial"};

[[nodiscard]] constexpr std::size_t foot_place(FeetInput input) { return static_cast<std::size_t>(input); }

[[nodiscard]] FootCategory decide_category(const std::array<std::uint8_t, feet_input_count>& in) {
  const auto is = [&](FeetInput input) { return in[foot_place(input)] == 1; };
  if (is(FeetInput::ulcer_now)) {
    return FootCategory::active;
  }
  const bool lops = is(FeetInput::lops);
  const bool pad = is(FeetInput::pad);
  if (!lops && !pad) {
    return FootCategory::zero;
  }
  if (is(FeetInput::hx_ulcer) || is(FeetInput::hx_amp) || is(FeetInput::esrd)) {
    return FootCategory::three;
  }
  return (lops && pad) || is(FeetInput::deform) ? FootCategory::two : FootCategory::one;
}

[[nodiscard]] Outcome outcome_of_category(FootCategory category) {
  switch (category) {
    case FootCategory::zero:
      return Outcome::negative;
    case FootCategory::one:
    case FootCategory::two:
    case FootCategory::three:
      return Outcome::positive;
    case FootCategory::active:
      return Outcome::not_applicable;
    case FootCategory::undetermined:
      return Outcome::undetermined;
  }
  return Outcome::undetermined;
}

[[nodiscard]] std::optional<model::Word> band_of_category(FootCategory category) {
  const auto at = static_cast<std::size_t>(category);
  return at < category_names.size() ? std::optional(model::Word{std::string(category_names[at])}) : std::nullopt;
}

struct FootOpen {
  Side side{};
  std::string item;
};

struct FeetHeard {
  FootHistory person{};
  std::array<std::string, feet_input_count> states;
  std::array<std::vector<FootOpen>, feet_input_count> open;  // where an input is not known
  std::vector<const model::Finding*> findings;
  std::vector<model::FindingId> of_rules;
};

struct OneFoot {
  Told told;
  std::string item;  // what to record where it is open
};

[[nodiscard]] bool foot_is_gone(const View& view, Side side) {
  const OpenBody* gate = view.bodies().gate("foot", side);
  return gate != nullptr && gate->row->gate->text == "no_limb";
}

[[nodiscard]] const RuleResult* result_at(const std::vector<JudgedRule>& rules, Side side) {
  const auto found = std::find_if(rules.begin(), rules.end(), [&](const JudgedRule& rule) { return rule.result.side == side; });
  return found == rules.end() ? nullptr : &found->result;
}

// A numb foot of any cause counts; a felt one that something contradicts stays open.
[[nodiscard]] OneFoot hear_numb(const View& view, Side side, const RuleResult* rule, FeetHeard& heard) {
  if (rule != nullptr) {
    heard.of_rules.insert(heard.of_rules.end(), rule->findings.begin(), rule->findings.end());
  }
  const auto said = view.at("body.feeling_lost", side);
  heard.findings.insert(heard.findings.end(), said.begin(), said.end());
  const bool numb = view.says_yes("body.feeling_lost", side) || (rule != nullptr && rule->outcome == Outcome::positive);
  const bool is_felt = !numb && rule != nullptr && rule->outcome == Outcome::negative && rule->flags.empty();
  const bool named = rule != nullptr && !rule->settle.empty() && rule->settle[0].item && rule->settle[0].side == side;
  const std::string item = named ? rule->settle[0].item->text : std::string(foot_items[foot_place(FeetInput::lops)]);
  if (numb || is_felt) {
    return {{tri(numb), "known"}, item};
  }
  return {{Tri::undetermined, rule == nullptr ? "not_asked" : "not_settled"}, item};
}

[[nodiscard]] Said says_pulse(const model::Finding& finding) {
  const auto* grade = std::get_if<model::Grade>(&finding.value);
  if (grade == nullptr) {
    return {std::nullopt, "unsure"};
  }
  return {static_cast<std::uint8_t>(grade->grade.text == "0" ? 2 : 1), "known"};
}

// No pulse at both arteries of one foot, or a low index. One pulse that is not felt happens in healthy feet: it leaves it open until an
// index stands beside it. An index above 1.40 leaves it open whatever is felt.
[[nodiscard]] OneFoot hear_arteries(const View& view, Side side, const RuleResult* index, FeetHeard& heard) {
  std::array<Tri, 2> absent{};
  OneFoot foot{{Tri::undetermined, "known"}, {}};
  for (std::size_t n = 0; n < pulse_items.size(); ++n) {
    const Heard pulse = hear(view.at(pulse_items[n], side), no_or_yes, &says_pulse);
    heard.findings.insert(heard.findings.end(), pulse.findings.begin(), pulse.findings.end());
    absent[n] = pulse.as_tri();
    if (absent[n] == Tri::undetermined && foot.item.empty()) {
      foot = {{Tri::undetermined, pulse.state}, std::string(pulse_items[n])};
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

[[nodiscard]] OneFoot hear_answer(const View& view, FeetInput input, Side side, FeetHeard& heard) {
  const std::string_view item = foot_items[foot_place(input)];
  Told told = tell(view, item, side, &says_answer, heard.findings);
  if (input == FeetInput::hx_amp) {
    for (const model::Finding* finding : view.at("body.limb_level", side)) {
      const auto* level = std::get_if<model::Choice>(&finding->value);
      if (level != nullptr && level->choice.text != "limb_whole") {
        told = {Tri::yes, "known"};
        heard.findings.push_back(finding);
      }
    }
  }
  return {told, std::string(item)};
}

void take_foot(FeetHeard& heard, FeetInput input, Side side, const OneFoot& foot) {
  const std::size_t at = foot_place(input);
  heard.person[at] = or_(heard.person[at], foot.told.value);
  if (foot.told.value == Tri::undetermined) {
    heard.open[at].push_back({side, foot.item});
    // Of two open feet the same reason stands whichever foot it is of.
    if (heard.open[at].size() == 1 || foot.told.state < heard.states[at]) {
      heard.states[at] = foot.told.state;
    }
  }
}

[[nodiscard]] FeetHeard hear_feet(const View& view) {
  FeetHeard heard;
  heard.person.fill(Tri::no);
  heard.states.fill("known");
  const std::vector<JudgedRule> sensation = run_protective_sensation(view);
  const std::vector<JudgedRule> index = run_ankle_brachial(view);
  for (const Side side : both_feet) {
    take_foot(heard, FeetInput::hx_amp, side, hear_answer(view, FeetInput::hx_amp, side, heard));
    take_foot(heard, FeetInput::hx_ulcer, side, hear_answer(view, FeetInput::hx_ulcer, side, heard));
    take_foot(heard, FeetInput::ulcer_now, side, hear_answer(view, FeetInput::ulcer_now, side, heard));
    if (foot_is_gone(view, side)) {
      continue;  // what is not there is neither felt nor numb
    }
    take_foot(heard, FeetInput::lops, side, hear_numb(view, side, result_at(sensation, side), heard));
    take_foot(heard, FeetInput::pad, side, hear_arteries(view, side, result_at(index, side), heard));
    take_foot(heard, FeetInput::deform, side, hear_answer(view, FeetInput::deform, side, heard));
  }
  take_foot(heard, FeetInput::esrd, Side::midline, hear_answer(view, FeetInput::esrd, Side::midline, heard));
  for (std::size_t i = 0; i < feet_input_count; ++i) {
    heard.states[i] = heard.person[i] == Tri::undetermined ? heard.states[i] : "known";
  }
  return heard;
}

[[nodiscard]] std::vector<model::Word> category_flags(const View& view, const FeetHeard& heard, FootCategory category) {
  std::vector<model::Word> flags;
  const auto is = [&](FeetInput input) { return heard.person[foot_place(input)] == Tri::yes; };
  const bool history = is(FeetInput::hx_ulcer) || is(FeetInput::hx_amp) || is(FeetInput::esrd);
  if (category == FootCategory::zero && history) {
    flags.push_back({"contradicted"});
    flags.push_back({"literal_0_with_history"});
  }
  if (category == FootCategory::zero && !history && is(FeetInput::deform)) {
    flags.push_back({"sooner_for_deformity"});
  }
  if (!view.says_yes("history.diabetes", Side::midline)) {
    flags.push_back({"made_for_diabetes"});
  }
  return flags;
}

void explain_category(const FeetHeard& heard, const RuleResult& result, Working& working) {
  constexpr std::array<std::string_view, feet_input_count> said{"open ulcer now", "loss of protective sensation, either foot", "narrowed arteries, either foot",
                                                                "deformity, either foot", "ulcer before", "amputation before", "end-stage kidney disease"};
  for (std::size_t i = 0; i < feet_input_count; ++i) {
    const Tri value = heard.person[i];
    working.lines.push_back({std::string(said[i]) + ": " + (value == Tri::undetermined ? "open" : (value == Tri::yes ? "yes" : "no"))});
    working.inputs.push_back({std::nullopt, model::Word{std::string(foot_names[i])}, model::Word{heard.states[i]}, std::nullopt});
  }
  working.statement = {result.rule.text + ":" + std::string(side_word(result.side))};
  const std::string what = result.band ? "band_" + result.band->text : std::string(wire::type_of<Outcome>().words[static_cast<std::size_t>(result.outcome)]);
  working.message = {"msg." + result.rule.text + "." + what};
  working.formula = {"0 neither loss nor narrowing; 1 one; 2 both, or one with deformity; 3 one with a history or kidney disease"};
  const std::array<std::pair<std::int64_t, std::int64_t>, 4> months{{{12000, 12000}, {6000, 12000}, {3000, 6000}, {1000, 3000}}};
  for (std::size_t n = 0; n < months.size(); ++n) {
    working.rows.push_back({{"table.iwgdf_risk/2019.category." + std::to_string(n + 1)},
                            {"IWGDF2019"},
                            model::Status::read,
                            Params().figure("months_from", months[n].first).figure("months_to", months[n].second).raw()});
  }
  for (const Settle& settle : result.settle) {
    working.changes_if.push_back({"msg.change." + settle.input.text});
  }
}

[[nodiscard]] JudgedRule judge_category(const View& view) {
  const FeetHeard heard = hear_feet(view);
  const auto completed = foot_category(heard.person);
  JudgedRule judged;
  RuleResult& result = judged.result;
  result.rule = {std::string(foot_category_rule)};
  result.edition = {std::string(foot_category_edition)};
  result.side = Side::midline;
  result.outcome = outcome_of_category(completed.outcome);
  result.band = band_of_category(completed.outcome);
  if (completed.outcome == FootCategory::active) {
    result.gate = model::Word{"ulcer_now"};
  }
  for (std::size_t i = 0; i < feet_input_count; ++i) {
    result.inputs.push_back({{std::string(foot_names[i])}, {heard.states[i]}});
    for (const FootOpen& open : completed.settles[i] ? heard.open[i] : std::vector<FootOpen>{}) {
      Settle settle{{std::string(foot_names[i])}, model::ItemId{open.item}, open.side, {}};
      for (std::size_t c = 0; c < 2; ++c) {
        // A no of one foot answers for both only where the other is known.
        const bool whole = c == 1 || heard.open[i].size() == 1;
        const FootCategory gives = whole ? completed.gives[i][c].value_or(FootCategory::undetermined) : FootCategory::undetermined;
        settle.answers.push_back({{std::string(category_classes[i][c])}, outcome_of_category(gives), band_of_category(gives)});
      }
      result.settle.push_back(std::move(settle));
    }
  }
  result.flags = category_flags(view, heard, completed.outcome);
  result.findings = ids_of(heard.findings);
  result.findings.insert(result.findings.end(), heard.of_rules.begin(), heard.of_rules.end());
  std::sort(result.findings.begin(), result.findings.end());
  result.findings.erase(std::unique(result.findings.begin(), result.findings.end()), result.findings.end());
  explain_category(heard, result, judged.working);
  return judged;
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

[[nodiscard]] bool made_for(const View& view) {
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

Completed<feet_input_count, FootCategory> foot_category(const FootHistory& in) {
  std::array<Classes, feet_input_count> may_be{};
  std::transform(in.begin(), in.end(), may_be.begin(), [](Tri value) { return classes_of(value); });
  return complete(may_be, &decide_category);
}

std::vector<JudgedRule> run_foot_category(const View& view) {
  std::vector<JudgedRule> judged;
  if (foot_examined(view) && made_for(view)) {
    judged.push_back(judge_category(view));
  }
  return judged;
}

}  // namespace limbledger::interpret
