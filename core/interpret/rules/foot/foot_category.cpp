#include "core/interpret/rules/foot/foot_category.hpp"

#include "core/interpret/params.hpp"
#include "core/interpret/rules/foot/feet_heard.hpp"

#include <algorithm>
#include <string>
#include <utility>

namespace limbledger::interpret {

namespace {

using model::Side;

constexpr std::array<std::string_view, feet_input_count> foot_names{"ulcer_now", "protective_feeling", "narrowed_arteries", "foot_deformity",
                                                                    "ulcer_before", "amputation_before", "kidney_failure"};
// Feeling and arteries are concluded from several findings: their classes are no answer to the one item that is named.
constexpr std::array<std::array<std::string_view, 2>, feet_input_count> category_classes{
    {{"no", "yes"}, {"kept", "lost"}, {"not narrowed", "narrowed"}, {"no", "yes"}, {"no", "yes"}, {"no", "yes"}, {"no", "yes"}}};
constexpr std::array<std::string_view, 4> category_names{"category_0", "category_1", "category_2", "category_3"};

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
  explicit FeetHeard(const View& view) : hearing(view) {}

  FeetHearing hearing;
  FootHistory person{};
  std::array<std::string, feet_input_count> states;
  std::array<std::vector<FootOpen>, feet_input_count> open;  // where an input is not known
};

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
  FeetHeard heard(view);
  FeetHearing& hearing = heard.hearing;
  heard.person.fill(Tri::no);
  heard.states.fill("known");
  for (const Side side : both_feet) {
    take_foot(heard, FeetInput::hx_amp, side, hear_amputation(hearing, side));
    take_foot(heard, FeetInput::hx_ulcer, side, hear_foot(hearing, "history.foot_ulcer_before", side));
    take_foot(heard, FeetInput::ulcer_now, side, hear_foot(hearing, "skin.ulcer", side));
    if (foot_is_gone(view, side)) {
      continue;  // what is not there is neither felt nor numb
    }
    take_foot(heard, FeetInput::lops, side, hear_numb(hearing, side));
    take_foot(heard, FeetInput::pad, side, hear_arteries(hearing, side));
    take_foot(heard, FeetInput::deform, side, hear_foot(hearing, "foot.deformity", side));
  }
  take_foot(heard, FeetInput::esrd, Side::midline, hear_foot(hearing, "history.kidney_failure", Side::midline));
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
  if (category == FootCategory::one || category == FootCategory::two || category == FootCategory::three) {
    flags.push_back({"sooner_elsewhere"});  // the class of NICE NG19 for such feet has the shorter interval, always
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

// What is treated now has no category to wait in: dead tissue, redness that spreads, a hot red swollen foot.
[[nodiscard]] std::vector<const model::Finding*> treated_now(const View& view) {
  std::vector<const model::Finding*> because;
  for (const Side side : both_feet) {
    for (const std::string_view item : {std::string_view("skin.black_toe"), std::string_view("skin.redness_spreading"), std::string_view("foot.hot_red_swollen")}) {
      if (view.says_yes(item, side)) {
        const Findings said = view.at(item, side);
        because.insert(because.end(), said.begin(), said.end());
      }
    }
    for (const model::Finding* finding : view.at("skin.gangrene", side)) {
      const auto* seen = std::get_if<model::Choice>(&finding->value);
      if (seen != nullptr && seen->choice.text != "gangrene_none") {
        because.push_back(finding);
      }
    }
  }
  return because;
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
  result.findings = heard.hearing.all_findings();
  const std::vector<const model::Finding*> now = treated_now(view);
  if (!now.empty() && completed.outcome != FootCategory::active) {
    result.outcome = Outcome::not_applicable;
    result.gate = model::Word{"active_foot"};
    result.band.reset();
    result.settle.clear();
    const std::vector<model::FindingId> because = ids_of(now);
    result.findings.insert(result.findings.end(), because.begin(), because.end());
    std::sort(result.findings.begin(), result.findings.end());
  }
  explain_category(heard, result, judged.working);
  return judged;
}

}  // namespace

Completed<feet_input_count, FootCategory> foot_category(const FootHistory& in) {
  std::array<Classes, feet_input_count> may_be{};
  std::transform(in.begin(), in.end(), may_be.begin(), [](Tri value) { return classes_of(value); });
  return complete(may_be, &decide_category);
}

std::vector<JudgedRule> run_foot_category(const View& view) {
  std::vector<JudgedRule> judged;
  if (feet_are_judged(view)) {
    judged.push_back(judge_category(view));
  }
  return judged;
}

}  // namespace limbledger::interpret
