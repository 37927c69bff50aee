#include "core/interpret/evidence/judge.hpp"

#include "core/interpret/evidence/prior.hpp"
#include "core/interpret/evidence/working.hpp"
#include "core/interpret/missing.hpp"
#include "core/wire/type.hpp"

#include <algorithm>
#include <tuple>

namespace limbledger::interpret {

namespace {

using reference::EvidenceCondition;
using reference::RowClass;

// Usual words of the trade for a likelihood ratio: from 5 moderate, from 10 strong, and their inverses.
[[nodiscard]] Strength strength_of(double ratio) {
  const double away = ratio < 1 ? 1 / ratio : ratio;
  if (away >= 10) {
    return Strength::strong;
  }
  return away >= 5 ? Strength::moderate : Strength::weak;
}

[[nodiscard]] std::vector<Ratio> ratios_of(const std::vector<TestHeard>& heard, const std::vector<std::size_t>& kept) {
  std::vector<Ratio> ratios;
  for (const std::size_t at : kept) {
    ratios.push_back(*heard[at].ratio);
  }
  return ratios;
}

// A test that was replaced and agrees with what replaced it: where it alone would say more, its figure stays an end of the range.
[[nodiscard]] std::vector<Replaced> replaced_tests(const std::vector<TestHeard>& heard, const Choice& choice) {
  std::vector<Replaced> all;
  for (const auto& [at, because] : choice.left_out) {
    if (!heard[at].computes() || because != "same_group") {
      continue;
    }
    for (std::size_t k = 0; k < choice.kept.size(); ++k) {
      const TestHeard& keeper = heard[choice.kept[k]];
      if (keeper.group == heard[at].group) {
        std::vector<Ratio> ratios = ratios_of(heard, choice.kept);
        ratios[k] = *heard[at].ratio;
        all.push_back({&heard[at], &keeper, combine(ratios), *heard[at].positive == *keeper.positive});
      }
    }
  }
  for (const std::size_t at : choice.kept) {
    if (heard[at].member->parts.size() > 1 && heard[at].member->at_least.steps > 1) {
      const Choice other = choose(heard, heard[at].member);
      if (!other.kept.empty()) {
        all.push_back({nullptr, &heard[at], combine(ratios_of(heard, other.kept)), true});
      }
    }
  }
  return all;
}

// A negative test whose composite would have taken its place, had not one part of it been positive while another is open: the
// composite's negative says less, and a part that turned positive must not make the negative beside it weigh more.
void add_open_composites(const std::vector<TestHeard>& heard, const Choice& choice, std::vector<Replaced>& all) {
  for (std::size_t k = 0; k < choice.kept.size(); ++k) {
    const TestHeard& keeper = heard[choice.kept[k]];
    for (std::size_t at = 0; at < choice.kept[k] && !*keeper.positive; ++at) {
      if (heard[at].group == keeper.group && heard[at].if_negative) {
        std::vector<Ratio> ratios = ratios_of(heard, choice.kept);
        ratios[k] = *heard[at].if_negative;
        all.push_back({&heard[at], &keeper, combine(ratios), true});
      }
    }
  }
}

// A test of the same group that comes first and was set aside: had it counted it would have stood in the keeper's place, and what is not
// believed may not make the other one more certain. One that says otherwise is simply not believed.
void add_set_aside(const std::vector<TestHeard>& heard, const Choice& choice, std::vector<Replaced>& all) {
  for (std::size_t k = 0; k < choice.kept.size(); ++k) {
    const TestHeard& keeper = heard[choice.kept[k]];
    for (std::size_t at = 0; at < choice.kept[k]; ++at) {
      if (heard[at].group == keeper.group && heard[at].set_aside() && *heard[at].aside == *keeper.positive) {
        std::vector<Ratio> ratios = ratios_of(heard, choice.kept);
        ratios[k] = *heard[at].if_counted;
        all.push_back({&heard[at], &keeper, combine(ratios), true});
        break;
      }
    }
  }
}

void widen(Chances& chances_now, const PriorShare& prior, std::vector<Replaced>& replaced) {
  for (Replaced& one : replaced) {
    const Chances former = chances(prior, one.combined);
    one.point = former.point;
    if (!one.agrees) {
      continue;
    }
    if (one.set_aside()) {
      const bool lower = *one.keeper->positive;
      one.kept_as_end = lower ? former.low < chances_now.low : former.high > chances_now.high;
      chances_now.low = lower ? std::min(chances_now.low, former.low) : chances_now.low;
      chances_now.high = lower ? chances_now.high : std::max(chances_now.high, former.high);
      continue;
    }
    if (*one.keeper->positive && former.high > chances_now.high) {
      chances_now.high = former.high;
      one.kept_as_end = true;
    }
    if (one.open_composite()) {
      one.kept_as_end = former.high > chances_now.high;
      chances_now.high = std::max(chances_now.high, former.high);
      continue;  // nobody found it negative: it is no lower end
    }
    if (!*one.keeper->positive && former.low < chances_now.low) {
      chances_now.low = former.low;
      one.kept_as_end = true;
    }
  }
}

void use_findings(Hypothesis& result, const std::vector<TestHeard>& heard, const Choice& choice) {
  for (const std::size_t at : choice.kept) {
    for (const model::FindingId& id : ids_of(heard[at].findings)) {
      result.used.push_back({id, heard[at].group->group, heard[at].row->row});
    }
  }
  const auto used = [&](const model::FindingId& id) {
    return std::any_of(result.used.begin(), result.used.end(), [&](const Used& one) { return one.finding == id; });
  };
  const auto leave = [&](std::size_t at, const std::string& because) {
    for (const model::FindingId& id : ids_of(heard[at].findings)) {
      const bool listed = std::any_of(result.left_out.begin(), result.left_out.end(), [&](const LeftOut& one) { return one.finding == id; });
      if (!used(id) && !listed) {
        result.left_out.push_back({id, {because}});
      }
    }
  };
  for (const std::size_t at : choice.direction) {
    leave(at, "direction_only");
  }
  for (const auto& [at, because] : choice.left_out) {
    leave(at, because);
  }
  std::sort(result.left_out.begin(), result.left_out.end(), [](const LeftOut& a, const LeftOut& b) { return a.finding < b.finding; });
}

// Where nothing may compute: for or against if all groups agree; two that agree are moderate, never more.
void point_only(Hypothesis& result, const std::vector<TestHeard>& heard, const Choice& choice) {
  std::size_t yes = 0;
  for (const std::size_t at : choice.direction) {
    yes += *heard[at].positive ? 1U : 0U;
  }
  const std::size_t no = choice.direction.size() - yes;
  result.strength = (yes == 0 || no == 0) && yes + no > 1 ? Strength::moderate : Strength::weak;
  result.support = yes > 0 && no == 0 ? Support::for_ : (no > 0 && yes == 0 ? Support::against : Support::neither);
}

void name_hypothesis(JudgedHypothesis& judged, bool nothing) {
  Hypothesis& result = judged.result;
  std::string name = "msg.hypothesis.";
  if (result.bands) {
    for (std::size_t i = 0; i < result.bands->size(); ++i) {
      name += (i == 0 ? "" : "_or_") + std::string(wire::type_of<Band>().words[static_cast<std::size_t>((*result.bands)[i])]);
    }
  } else {
    const Support said = nothing ? Support::neither : result.support;
    name += "direction_" + std::string(wire::type_of<Support>().words[static_cast<std::size_t>(said)]);
  }
  result.message = {name};
  judged.working.message = result.message;
}

// Something was found that speaks, or would have spoken but for a named reason.
[[nodiscard]] bool worth_naming(const Choice& choice) {
  return !choice.kept.empty() || !choice.direction.empty() || std::any_of(choice.left_out.begin(), choice.left_out.end(), [](const auto& one) {
    constexpr std::string_view silent[] = {"incomplete", "not_counted", "not_asked", "in_prior", "pain_not_recorded"};
    return std::find(std::begin(silent), std::end(silent), one.second) == std::end(silent);
  });
}

// Of all that speaks against, nothing but negatives that cannot be told from their test now.
[[nodiscard]] bool all_weak(const std::vector<TestHeard>& heard, const Choice& choice) {
  const auto& kept = choice.kept;
  return std::any_of(kept.begin(), kept.end(), [&](std::size_t at) { return heard[at].weak; }) &&
         std::all_of(kept.begin(), kept.end(), [&](std::size_t at) { return heard[at].weak || heard[at].positive.value_or(true); });
}

[[nodiscard]] std::optional<JudgedHypothesis> judge_one(const View& view, const EvidenceCondition& condition, model::Side side,
                                                        const std::vector<TypedPrior>& priors, const std::vector<OpenConcern>& open) {
  Circumstances here = circumstances_of(view, side);
  for (const OpenConcern& one : open) {
    if (one.side == side || one.side == model::Side::midline) {
      here.open.push_back(one.concern->concern);
    }
  }
  const std::vector<TestHeard> heard = hear_tests(view, condition, side, here);
  const Choice choice = choose(heard);
  if (!worth_naming(choice)) {
    return std::nullopt;
  }
  JudgedHypothesis judged;
  Hypothesis& result = judged.result;
  result.hypothesis = condition.condition;
  result.side = side;
  result.in = {"study_clinics"};
  result.strength = Strength::weak;
  result.support = Support::neither;
  use_findings(result, heard, choice);
  judged.working.statement = {condition.condition.text + ":" + std::string(side_word(side))};
  Account account{&heard, &choice, {}, std::nullopt, {}, {}, false};
  bool nothing = false;  // the interval of the combined ratio holds 1
  if (choice.kept.empty()) {
    point_only(result, heard, choice);
  } else {
    account.combined = combine(ratios_of(heard, choice.kept));
    account.replaced = replaced_tests(heard, choice);
    add_open_composites(heard, choice, account.replaced);
    add_set_aside(heard, choice, account.replaced);
    account.prior = prior_of(view, condition.condition, here, priors);
    account.second_class =
        std::any_of(choice.kept.begin(), choice.kept.end(), [&](std::size_t at) { return heard[at].admission.row_class == RowClass::second; });
    // Its class stays where it was done and is not believed: what is left is not surer for it.
    account.second_class = account.second_class || std::any_of(heard.begin(), heard.end(), [](const TestHeard& one) {
                             return one.set_aside() && one.admission.row_class == RowClass::second;
                           });
    nothing = tells_nothing(account.combined);
    // The side to which it leans is kept, weakly, where the interval holds 1: else a positive result that computes could lower
    // what another test's bare direction had said before it.
    const double lean = account.combined.sum;
    result.support = lean > 0 ? Support::for_ : (lean < 0 ? Support::against : Support::neither);
    result.strength = nothing ? Strength::weak : strength_of(held(account.combined.point));
    if (account.prior) {
      account.chances = chances(account.prior->share, account.combined);
      widen(account.chances, account.prior->share, account.replaced);
      result.range = out_of_hundred(account.chances);
      result.bands = nothing ? std::vector<Band>{Band::cannot_tell} : bands_of(*result.range, account.second_class);
    } else if (result.support == Support::against && all_weak(heard, choice)) {
      // The sentence about the test says that it cannot be told from it now: where no figure carries it, neither is a direction.
      result.support = Support::neither;
      result.strength = Strength::weak;
    }
  }
  write_working(account, result, judged.working);
  name_hypothesis(judged, nothing);
  return judged;
}

[[nodiscard]] std::vector<model::Side> sides_of(const model::Exam& exam) {
  if (exam.side && *exam.side != model::Side::midline) {
    return {*exam.side};
  }
  return {model::Side::left, model::Side::right};
}

// Growing bones and joints hurt for other reasons.
[[nodiscard]] bool may_be_too_young(const EvidenceCondition& condition, const View& view) {
  const auto age = view.age_on_exam();
  return condition.age_from && age && age->low < condition.age_from->steps;
}

// A complaint of no part (a whole limb, a free visit) concerns all.
[[nodiscard]] bool concerns(const EvidenceCondition& condition, const model::Sequence* complaint) {
  if (complaint == nullptr || !complaint->part || !condition.parts) {
    return true;
  }
  if (condition.not_beside && std::find(condition.not_beside->begin(), condition.not_beside->end(), complaint->complaint) != condition.not_beside->end()) {
    return false;
  }
  return std::find(condition.parts->begin(), condition.parts->end(), *complaint->part) != condition.parts->end();
}

// "condition.acl" and "condition.acl_tear:left" ask for the ACL tear; "condition." asks for nothing by its name.
[[nodiscard]] bool asked_by_name(const EvidenceCondition& condition, const std::vector<TypedPrior>& priors, const std::vector<std::string>& names) {
  constexpr std::size_t all_of_them = std::string_view("condition.").size();
  const std::string& own = condition.condition.text;
  return std::any_of(priors.begin(), priors.end(), [&](const TypedPrior& one) { return one.condition == condition.condition; }) ||
         std::any_of(names.begin(), names.end(), [&](const std::string& name) {
           return name.size() > all_of_them && (own.starts_with(name) || name.starts_with(own));
         });
}

}  // namespace

std::vector<JudgedHypothesis> judge_hypotheses(const View& view, const std::vector<TypedPrior>& priors, const HypothesisAsk& ask) {
  const model::Sequence* complaint = view.edition().sequence(view.exam().complaint);
  std::vector<const EvidenceCondition*> conditions;
  for (const EvidenceCondition& condition : view.edition().evidence().conditions) {
    if (condition.computes && !may_be_too_young(condition, view) && (concerns(condition, complaint) || asked_by_name(condition, priors, ask.names))) {
      conditions.push_back(&condition);
    }
  }
  std::sort(conditions.begin(), conditions.end(), [](const EvidenceCondition* a, const EvidenceCondition* b) {
    return std::tuple(a->danger ? a->danger->steps : 9, a->condition.text) < std::tuple(b->danger ? b->danger->steps : 9, b->condition.text);
  });
  std::vector<JudgedHypothesis> all;
  for (const EvidenceCondition* condition : conditions) {
    for (const model::Side side : sides_of(view.exam())) {
      if (auto judged = judge_one(view, *condition, side, priors, ask.open)) {
        all.push_back(std::move(*judged));
      }
    }
  }
  return all;
}

bool minimum_recorded(const View& view, model::Side side) {
  bool any = false;
  const auto age = view.age_on_exam();
  for (const model::Sequence& sequence : view.edition().sequences()) {
    if (!(sequence.complaint == view.exam().complaint)) {
      continue;
    }
    for (const model::SequenceStep& step : sequence.steps) {
      // An age that is not known may be under the limit.
      const bool for_the_young = step.minimum_under && (!age || age->low < step.minimum_under->steps);
      if (!(step.minimum && *step.minimum) && !for_the_young) {
        continue;
      }
      any = true;
      const model::Item* item = view.edition().item(step.item);
      if (item == nullptr) {
        return false;
      }
      std::vector<model::ItemId> ends{step.item};
      if (item->arc) {
        ends = {item->arc->low, item->arc->high};
      }
      const bool sided = std::find(item->sides.begin(), item->sides.end(), side) != item->sides.end();
      for (const model::ItemId& end : ends) {
        const auto found = view.at(end.text, sided ? side : model::Side::midline);
        const bool recorded = std::any_of(found.begin(), found.end(),
                                          [](const model::Finding* finding) { return !std::holds_alternative<model::NotDone>(finding->value) && !awaits_examiner(*finding); });
        if (!recorded) {
          return false;
        }
      }
    }
  }
  return any;
}

}  // namespace limbledger::interpret
