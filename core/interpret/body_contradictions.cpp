#include "core/interpret/alerts/circumstances.hpp"
#include "core/interpret/body.hpp"
#include "core/interpret/motion/reading.hpp"
#include "core/interpret/params.hpp"

#include <algorithm>
#include <array>

namespace limbledger::interpret {

using model::Side;

namespace {

constexpr std::int64_t days_before_steps = 8 * 30;  // nobody walks alone before about eight months: our convention
constexpr std::array left_and_right_side{Side::left, Side::right};
constexpr std::int64_t beighton_signs = 9;
constexpr std::array<std::string_view, 4> signs_of_two_sides{"body.beighton_little_finger", "body.beighton_thumb", "body.beighton_elbow", "body.beighton_knee"};

[[nodiscard]] Contradiction ask_of(std::string_view name, Side side, std::vector<const model::Finding*> findings) {
  Contradiction one;
  one.contradiction = {"contradiction." + std::string(name) + ":" + std::string(side_word(side))};
  one.side = side;
  one.message = {"msg.contradiction." + std::string(name)};
  one.params = Params().raw();
  one.findings = ids_of(findings);
  return one;
}

[[nodiscard]] bool examined(const model::Finding& finding) { return settles(finding) && !std::holds_alternative<model::NotDone>(finding.value); }

// A pulse that was felt, and not one graded as absent.
[[nodiscard]] bool pulse_felt(const model::Finding& finding) {
  const auto* grade = std::get_if<model::Grade>(&finding.value);
  return finding.item.text.starts_with("vessel.pulse_") && grade != nullptr && grade->grade.text != "0";
}

[[nodiscard]] bool of_skin(const model::Finding& finding) {
  const std::string& name = finding.item.text;
  return name.starts_with("skin.") || name.find("look_skin") != std::string::npos || name.find("bruising") != std::string::npos ||
         name.find("open_wound") != std::string::npos;
}

// What was found at a place that is not there, or that nobody could see.
void places(const View& view, std::vector<Contradiction>& all) {
  if (view.bodies().open().empty()) {
    return;
  }
  for (const Side side : left_and_right_side) {
    std::vector<const model::Finding*> below;
    std::vector<const model::Finding*> covered;
    bool pulses = true;
    for (const model::Finding* finding : view.findings()) {
      const model::Item* item = finding->side == side && examined(*finding) ? view.edition().item(finding->item) : nullptr;
      const OpenBody* body = item == nullptr ? nullptr : view.bodies().not_applicable(*item, side);
      if (body == nullptr || body->finding == finding) {
        continue;
      }
      const bool no = std::holds_alternative<model::Answer>(finding->value) && !view.says_yes(finding->item.text, side);
      const bool pulse = finding->item.text.starts_with("vessel.pulse_");
      if (body->row->why_not == model::WhyNot::no_limb && !no && (!pulse || pulse_felt(*finding))) {
        pulses = pulses && pulse;
        below.push_back(finding);
        below.push_back(body->finding);
      } else if (body->row->why_not == model::WhyNot::covered && of_skin(*finding)) {
        covered.push_back(finding);
        covered.push_back(body->finding);
      }
    }
    if (!below.empty()) {
      all.push_back(ask_of(pulses ? "pulse_below_level" : "finding_below_level", side, below));
    }
    if (!covered.empty()) {
      all.push_back(ask_of("cast_and_skin", side, covered));
    }
  }
}

// Both ends of one plane, or two readings of one motion, further apart than their error.
void fused_but_moves(const View& view, std::vector<Contradiction>& all) {
  const bool any = std::any_of(view.bodies().open().begin(), view.bodies().open().end(),
                               [](const OpenBody& one) { return one.row->gate && one.row->gate->text == "fused"; });
  if (!any) {
    return;
  }
  const std::vector<Reading> readings = read_motions(view);
  for (const Reading& one : readings) {
    const OpenBody* body = view.bodies().silent(*one.item, one.side);
    if (body == nullptr || short_word(*body->row) != "fused" || one.readable != Readable::number || !one.exact()) {
      continue;
    }
    for (const Reading& other : readings) {
      const bool pair = other.side == one.side && other.item->axis == one.item->axis && other.item->region == one.item->region &&
                        mode_of(*other.item) == mode_of(*one.item) && other.readable == Readable::number && other.exact() && direction_of(*one.item) > 0 &&
                        direction_of(*other.item) < 0;
      if (!pair) {
        continue;
      }
      const auto precision = precision_of(view.edition(), {&one, &other});
      if (one.low + other.low <= (precision ? precision->mdc95 : contradicts_without_error * 100)) {
        continue;
      }
      std::vector<const model::Finding*> findings = one.findings;
      findings.insert(findings.end(), other.findings.begin(), other.findings.end());
      findings.push_back(body->finding);
      Contradiction found = ask_of("fused_and_motion", one.side, findings);
      found.contradiction = {"contradiction.fused_and_motion:" + one.item->item.text + ":" + std::string(side_word(one.side))};
      found.params = Params().figure("from_deg", -other.low).figure("to_deg", one.low).raw();
      all.push_back(std::move(found));
    }
  }
}

// The same part seen broken and seen whole, said of one side.
void films(const View& view, std::vector<Contradiction>& all) {
  constexpr std::string_view film = "history.film_result";
  for (const Side side : {Side::left, Side::right, Side::midline}) {
    std::vector<const model::Finding*> here;
    for (const model::Finding* finding : view.at(film, side)) {
      here.push_back(finding);
    }
    if (side != Side::midline && !here.empty()) {
      for (const model::Finding* finding : view.at(film, Side::midline)) {
        here.push_back(finding);
      }
    }
    const auto chose = [&](const std::string& choice) {
      return std::any_of(here.begin(), here.end(), [&](const model::Finding* finding) {
        const auto* choices = std::get_if<model::Choices>(&finding->value);
        return choices != nullptr && std::find(choices->choices.begin(), choices->choices.end(), model::ChoiceId{choice}) != choices->choices.end();
      });
    };
    const model::Item* item = here.empty() ? nullptr : view.edition().item(film);
    for (const model::ChoiceId& choice : item != nullptr && item->choices ? *item->choices : std::vector<model::ChoiceId>{}) {
      constexpr std::string_view unseen = "_not_seen";
      if (choice.text.ends_with(unseen) && chose(choice.text) && chose(choice.text.substr(0, choice.text.size() - unseen.size()) + "_seen")) {
        all.push_back(ask_of("film_both", side, here));
        break;
      }
    }
  }
}

[[nodiscard]] bool too_young_to_walk(const View& view) {
  const auto& person = view.person();
  if (!view.examined_on() || !person || !person->birth || !person->birth->date) {
    return false;
  }
  const std::int64_t oldest = view.examined_on()->last_day() - person->birth->date->first_day();
  return oldest >= 0 && oldest < days_before_steps;
}

void persons(const View& view, std::vector<Contradiction>& all) {
  const Answers answers(view);
  const auto pair = [&](std::string_view name, const Clue& first, const Clue& second) {
    const Clue both = every({first, second});
    if (both.is_yes()) {
      FindingTrail findings = both.because;
      findings.add(both.against);
      Contradiction one = ask_of(name, Side::midline, {});
      one.findings = ids_of(findings.written());
      all.push_back(std::move(one));
    }
  };
  if (!view.at("gait.steps_now", Side::midline).empty()) {
    pair("chair_and_steps", answers.yes("body.chair_user"), answers.count_at_least("gait.steps_now", 4));
    if (too_young_to_walk(view)) {
      pair("age_and_steps", fact(true), answers.count_at_least("gait.steps_now", 4));
    }
  }
  if (!view.at("body.pregnancy_weeks", Side::midline).empty()) {
    pair("weeks_without_pregnancy", negate(answers.yes("body.pregnancy")), answers.count_at_least("body.pregnancy_weeks", 1));
  }
}

// Nine answers, of which the count says another number.
void signs_and_count(const View& view, std::vector<Contradiction>& all) {
  std::vector<const model::Finding*> used;
  std::int64_t least = beighton_signs;
  std::int64_t most = 0;
  for (const model::Finding* finding : view.at("body.hypermobility", Side::midline)) {
    if (const auto* count = std::get_if<model::CountValue>(&finding->value)) {
      used.push_back(finding);
      least = std::min(least, count->count.steps);
      most = std::max(most, count->count.steps);
    }
  }
  if (used.empty()) {
    return;
  }
  if (least != most) {
    all.push_back(ask_of("counts_of_signs", Side::midline, used));
  }
  std::int64_t yes = 0;
  std::int64_t open = 0;
  const auto hear_sign = [&](std::string_view sign, Side side) {
    const Findings found = view.at(sign, side);
    // Two that say the same say it; two that differ leave it open.
    const auto says = [&](model::AnswerWord word) {
      return !found.empty() && std::all_of(found.begin(), found.end(), [&](const model::Finding* finding) {
        const auto* answer = std::get_if<model::Answer>(&finding->value);
        return answer != nullptr && answer->answer == word;
      });
    };
    used.insert(used.end(), found.begin(), found.end());
    yes += says(model::AnswerWord::yes) ? 1 : 0;
    open += says(model::AnswerWord::yes) || says(model::AnswerWord::no) ? 0 : 1;
  };
  for (const std::string_view sign : signs_of_two_sides) {
    hear_sign(sign, Side::left);
    hear_sign(sign, Side::right);
  }
  hear_sign("body.beighton_trunk", Side::midline);
  if (least < yes || most > yes + open) {
    all.push_back(ask_of("signs_and_count", Side::midline, used));
  }
}

// Who interprets and belongs to the family was told what is not told before family: a no there may be nobody's own (C17, S06).
void through_family(const View& view, std::vector<Contradiction>& all) {
  const auto& interpreter = view.exam().interpreter;
  if (!interpreter || (interpreter->kind != model::InterpreterKind::relative && interpreter->kind != model::InterpreterKind::child)) {
    return;
  }
  std::vector<const model::Finding*> told;
  for (const model::Finding* finding : view.findings()) {
    const auto* answer = std::get_if<model::Answer>(&finding->value);
    const model::Item* item = answer != nullptr && answer->answer == model::AnswerWord::no ? view.edition().item(finding->item) : nullptr;
    const bool sensitive = item != nullptr && (item->protected_.value_or(false) || item->item.text == "history.saddle_numbness" || item->item.text == "history.bladder_bowel_change");
    if (sensitive) {
      told.push_back(finding);
    }
  }
  if (!told.empty()) {
    all.push_back(ask_of("sensitive_through_family", Side::midline, told));
  }
}

void consent(const View& view, std::vector<Contradiction>& all) {
  const auto& given = view.exam().consent;
  const bool refused = given && given->record && *given->record != model::ConsentWord::yes;
  const bool any = std::any_of(view.findings().begin(), view.findings().end(), [](const model::Finding* finding) { return examined(*finding); });
  if (refused && any) {
    all.push_back(ask_of("consent_and_record", Side::midline, {}));
  }
}

// Nobody can say the day, or the birth does not fit it: asked, because no age and no time since anything is known until somebody says it.
void day_of_exam(const View& view, std::vector<Contradiction>& all) {
  const model::When when = model::when_done(view.exam());
  if (view.examined_on()) {
    return;
  }
  Contradiction one = ask_of(when.doubtful ? "examined_day" : "examined_and_birth", Side::midline, {});
  const std::int64_t offset = view.exam().offset_min ? view.exam().offset_min->steps : 0;
  const auto& clock = view.exam().examined_at;
  one.params = when.doubtful ? Params().word("clock", clock ? model::date_of(*clock, offset).to_text() : "").raw()
                             : Params().word("day", when.day.value_or(view.as_of()).to_text()).raw();
  all.push_back(std::move(one));
}

}  // namespace

std::vector<Contradiction> body_contradictions(const View& view) {
  std::vector<Contradiction> all;
  day_of_exam(view, all);
  if (!view.bodies().open().empty()) {
    places(view, all);
    fused_but_moves(view, all);
  }
  signs_and_count(view, all);
  films(view, all);
  persons(view, all);
  through_family(view, all);
  consent(view, all);
  return all;
}

}  // namespace limbledger::interpret
