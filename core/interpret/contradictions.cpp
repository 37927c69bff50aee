#include "core/interpret/contradictions.hpp"

#include "core/interpret/alerts/circumstances.hpp"
#include "core/interpret/alerts/limits.hpp"
#include "core/interpret/contradict/pair.hpp"
#include "core/interpret/params.hpp"

#include <algorithm>
#include <array>
#include <string>
#include <utility>

namespace limbledger::interpret {

using model::Side;

namespace {

[[nodiscard]] Clue pressure_heard(const Answers& answers, Side side) {
  return answers.hear_as("vessel.pressure_posterior_tibial", side, [](const model::Finding& finding) -> Said {
    const auto* pressure = std::get_if<model::Pressure>(&finding.value);
    if (pressure == nullptr) {
      return {std::nullopt, "unsure"};
    }
    return {static_cast<std::uint8_t>(pressure->signal ? 1 : 2), "known"};
  });
}

// Said of a knee on this side: that it is not there, or something found at it.
[[nodiscard]] Clue knee_is_there(const Answers& answers, Side side, bool there) {
  const View& view = answers.view();
  Clue clue;
  for (const model::Finding* finding : view.findings()) {
    const model::Item* item = view.edition().item(finding->item);
    if (item == nullptr || item->region.text != "knee" || finding->side != side || !settles(*finding)) {
      continue;
    }
    const auto* not_done = std::get_if<model::NotDone>(&finding->value);
    if (there ? not_done == nullptr : not_done != nullptr && not_done->reason == model::WhyNot::no_limb) {
      clue.value = Tri::yes;
      clue.because.add({view.trails().findings, finding});
    }
  }
  return clue;
}

[[nodiscard]] Clue is_male(const Answers& answers, Side) {
  const auto& person = answers.view().person();
  return fact(person && person->sex == model::Sex::male);
}

constexpr std::array pairs{
    Pair{"limb_and_findings", true, [](const Answers& a, Side s) { return knee_is_there(a, s, false); },
         [](const Answers& a, Side s) { return knee_is_there(a, s, true); }},
    Pair{"pregnancy_and_sex", false, [](const Answers& a, Side) { return a.yes("body.pregnancy"); }, &is_male},
    Pair{"effusion_large", true, [](const Answers& a, Side s) { return a.graded("knee.effusion_stroke", s, {"3+"}); },
         [](const Answers& a, Side s) { return negate(a.positive("knee.effusion_ballottement", s)); }},
    Pair{"pulse_and_pressure", true, [](const Answers& a, Side s) { return a.graded("vessel.pulse_posterior_tibial", s, {"0"}); }, &pressure_heard},
    Pair{"pulse_and_no_signal", true, [](const Answers& a, Side s) { return a.graded("vessel.pulse_posterior_tibial", s, {"1", "2", "3"}); },
         [](const Answers& a, Side s) { return negate(pressure_heard(a, s)); }},
    Pair{"gap_and_lift", true,
         [](const Answers& a, Side s) { return either({a.yes("knee.quadriceps_gap", s), a.yes("knee.patellar_tendon_gap", s)}); },
         [](const Answers& a, Side s) { return negate(a.positive("knee.straight_leg_raise_active", s)); }},
    Pair{"foot_drop_and_power", true, [](const Answers& a, Side s) { return a.yes("nerve.foot_drop", s); },
         [](const Answers& a, Side s) { return a.graded("nerve.power_ankle_dorsiflexion", s, {"4", "5"}); }},
    Pair{"foot_still_and_power", true, [](const Answers& a, Side s) { return negate(a.yes("ankle.movement", s)); },
         [](const Answers& a, Side s) { return a.graded("nerve.power_ankle_dorsiflexion", s, {"3", "4", "5"}); }},
    Pair{"steps_and_gait", false, [](const Answers& a, Side) { return a.count_at_least("gait.steps_now", 4); },
         [](const Answers& a, Side) { return walks_as(a, {"will_not_walk"}); }},
    Pair{"fall_and_mechanism", false, [](const Answers& a, Side) { return negate(a.yes("history.fall_or_blow")); },
         [](const Answers& a, Side) { return a.chosen("history.mechanism", Side::midline, {"fall", "direct_blow"}); }},
    Pair{"injury_day_and_weeks", false, [](const Answers& a, Side) { return fact(a.view().exam().injured_on.has_value() && hurt_lately(a).is_yes() && complains_of_something_recent(a.view())); },
         [](const Answers& a, Side) { return a.count_at_least("history.weeks_since_onset", lately_weeks + 1); }},
    Pair{"injury_and_mechanism", false, [](const Answers& a, Side) { return fact(a.view().exam().injured_on.has_value()); },
         [](const Answers& a, Side) { return a.chosen("history.mechanism", Side::midline, {"no_injury"}); }},
};

void ask_pair(const Answers& answers, const Pair& pair, std::vector<Contradiction>& found) {
  for (const Side side : {Side::left, Side::right}) {
    const Side on = pair.sided ? side : Side::midline;
    const Clue both = every({pair.first(answers, on), pair.second(answers, on)});
    if (both.is_yes()) {
      Contradiction one;
      one.contradiction = {"contradiction." + std::string(pair.name) + ":" + std::string(side_word(on))};
      one.side = on;
      one.message = {"msg.contradiction." + std::string(pair.name)};
      one.params = Params().raw();
      FindingTrail findings = both.because;
      findings.add(both.against);
      one.findings = ids_of(findings.written());
      found.push_back(std::move(one));
    }
    if (!pair.sided) {
      break;
    }
  }
}

// What a value of a few words says, for two of one item and side to be set against each other; of figures their own lines speak.
[[nodiscard]] std::string_view says_in_short(const model::Finding& finding) {
  if (const auto* answer = std::get_if<model::Answer>(&finding.value)) {
    return answer->answer == model::AnswerWord::yes ? "yes" : (answer->answer == model::AnswerWord::no ? "no" : "");
  }
  if (const auto* test = std::get_if<model::Test>(&finding.value)) {
    return test->result == model::TestResult::positive ? "positive" : (test->result == model::TestResult::negative ? "negative" : "");
  }
  const auto* grade = std::get_if<model::Grade>(&finding.value);
  return grade != nullptr ? std::string_view(grade->grade.text) : std::string_view();
}

// Two answers that both stand and differ: a danger is raised by the one that raises it, and here is asked which holds. A protected
// question is left out.
void ask_apart(const View& view, std::vector<Contradiction>& found) {
  for (const Side side : {Side::left, Side::right, Side::midline}) {
    std::vector<const model::Finding*> apart;
    for (const model::Finding* one : view.findings()) {
      const model::Item* item = view.edition().item(one->item);
      const std::string_view says = settles(*one) ? says_in_short(*one) : std::string_view();
      if (one->side != side || says.empty() || item == nullptr || item->protected_.value_or(false)) {
        continue;
      }
      const Findings slot = view.at(*item, side);
      const bool differs = slot.size() > 1 && std::any_of(slot.begin(), slot.end(), [&](const model::Finding* other) {
        const std::string_view told = settles(*other) ? says_in_short(*other) : std::string_view();
        return !told.empty() && told != says;
      });
      if (differs) {
        apart.push_back(one);
      }
    }
    if (!apart.empty()) {
      Contradiction one;
      one.contradiction = {"contradiction.two_answers:" + std::string(side_word(side))};
      one.side = side;
      one.message = {"msg.contradiction.two_answers"};
      one.params = Params().raw();
      one.findings = ids_of(apart);
      found.push_back(std::move(one));
    }
  }
}

// Said of one side against the other, by the items' own words: on both sides at once it cannot be.
void ask_more_on_both(const View& view, std::vector<Contradiction>& found) {
  constexpr std::array<std::string_view, 12> against_other{"vessel.foot_warm",     "hip.look_swelling",       "ankle.swelling_lateral", "ankle.swelling_medial",
                                                           "leg.calf_swelling",    "leg.thigh_wasting",       "leg.calf_wasting",       "ankle.achilles_thickened",
                                                           "hip.knee_height_lower", "hip.log_roll_free",      "hip.percussion_patellopubic",
                                                           "knee.external_rotation_recurvatum"};
  std::vector<const model::Finding*> both;
  for (const std::string_view item : against_other) {
    std::vector<const model::Finding*> more;
    std::size_t sides = 0;
    for (const Side side : {Side::left, Side::right}) {
      const std::size_t before = more.size();
      for (const model::Finding* finding : view.at(item, side)) {
        const std::string_view says = settles(*finding) ? says_in_short(*finding) : std::string_view();
        if (says == "yes" || says == "positive") {
          more.push_back(finding);
        }
      }
      sides += static_cast<std::size_t>(more.size() > before);
    }
    if (sides == 2) {
      both.insert(both.end(), more.begin(), more.end());
    }
  }
  if (!both.empty()) {
    Contradiction one;
    one.contradiction = {"contradiction.more_on_both:" + std::string(side_word(Side::midline))};
    one.side = Side::midline;
    one.message = {"msg.contradiction.more_on_both"};
    one.params = Params().raw();
    one.findings = ids_of(both);
    found.push_back(std::move(one));
  }
}

}  // namespace

std::vector<Contradiction> finding_contradictions(const View& view) {
  const Answers answers(view);
  std::vector<Contradiction> found;
  for (const Pair& pair : pairs) {
    ask_pair(answers, pair, found);
  }
  for (const Pair& pair : limb_pairs()) {
    ask_pair(answers, pair, found);
  }
  ask_apart(view, found);
  ask_more_on_both(view, found);
  return found;
}

}  // namespace limbledger::interpret
