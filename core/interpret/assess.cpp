#include "core/interpret/assess.hpp"

#include "core/interpret/after/urgent_way.hpp"
#include "core/interpret/body.hpp"
#include "core/interpret/contradict/named_side.hpp"
#include "core/interpret/contradictions.hpp"
#include "core/interpret/evidence/judge.hpp"
#include "core/interpret/explained.hpp"
#include "core/interpret/function/short_stance.hpp"
#include "core/interpret/knee/beside.hpp"
#include "core/interpret/knee/effusion.hpp"
#include "core/interpret/knee/extension.hpp"
#include "core/interpret/knee/laxity.hpp"
#include "core/interpret/joint/joint.hpp"
#include "core/interpret/judged.hpp"
#include "core/interpret/measure/measure.hpp"
#include "core/interpret/missing.hpp"
#include "core/interpret/motion/difference.hpp"
#include "core/interpret/motion/norm.hpp"
#include "core/interpret/step/next_step.hpp"

#include <algorithm>
#include <iterator>
#include <list>
#include <string_view>

namespace limbledger::interpret {

namespace {

struct All {
  Watched watched;
  std::vector<Judged> statements;
  std::vector<JudgedHypothesis> hypotheses;
  std::vector<Contradiction> contradictions;
};

template <class T>
void take_all(std::vector<T>& all, std::vector<T> part) {
  all.insert(all.end(), std::move_iterator(part.begin()), std::move_iterator(part.end()));
}

// Alerts first, then what the findings say, then the rules, then the evidence: a rule never lowers an alert.
[[nodiscard]] All judge_all(const View& view, std::span<const model::Exam> earlier, const AssessAsk& ask) {
  All all;
  all.watched = watch(view, {ask.protected_, ask.before_corrections, ask.place ? &*ask.place : nullptr, ask.known_otherwise});  // alerts, rules, concerns
  const std::vector<Reading> readings = read_motions(view);
  take_all(all.statements, judge_bodies(view));
  take_all(all.statements, judge_norms(view, readings));
  take_all(all.statements, judge_sides(view, readings));
  take_all(all.statements, judge_past(view, readings, earlier));
  take_all(all.statements, judge_knee_motion(view, readings));
  take_all(all.statements, judge_joint_motion(view, readings));
  take_all(all.statements, judge_effusion(view));
  take_all(all.statements, judge_laxity(view));
  take_all(all.statements, judge_beside(view));
  take_all(all.statements, judge_measures(view, readings, earlier));
  take_all(all.statements, judge_short_stance(view));
  all.contradictions = motion_contradictions(view, readings);
  take_all(all.contradictions, effusion_contradictions(view));
  take_all(all.contradictions, finding_contradictions(view));
  take_all(all.contradictions, body_contradictions(view));
  take_all(all.contradictions, measure_contradictions(view));
  auto other_knee = signs_on_the_other_knee(view);
  take_all(all.contradictions, named_side_contradictions(view, all.watched.flags, other_knee.has_value()));
  if (other_knee) {
    all.contradictions.push_back(std::move(*other_knee));
  }
  return all;
}

// Who learns closes the own impression first (clinical safety, C25).
[[nodiscard]] bool bands_held_back(const model::Exam& exam) { return exam.supervised.value_or(false) && !exam.signed_; }

[[nodiscard]] bool wanted(const AssessAsk& ask, std::string_view list, std::string_view name) {
  return ask.only.empty() ||
         std::any_of(ask.only.begin(), ask.only.end(), [&](const std::string& only) { return only == list || name.starts_with(only); });
}

// The sides on which bands may be shown by themselves (C20): those whose minimum set is recorded.
[[nodiscard]] std::vector<model::Side> complete_sides(const View& view) {
  std::vector<model::Side> sides;
  for (const model::Side side : {model::Side::left, model::Side::right}) {
    if (minimum_recorded(view, side)) {
      sides.push_back(side);
    }
  }
  return sides;
}

// Bands come after the minimum set, or when they are asked for; before that nothing is worked out.
void give_hypotheses(const View& view, const AssessAsk& ask, const std::vector<OpenConcern>& open, std::vector<Hypothesis>& given) {
  constexpr std::string_view beginning = "condition.";
  const bool asked = std::any_of(ask.only.begin(), ask.only.end(), [&](const std::string& only) {
    return only == "hypotheses" || only.starts_with(beginning) || beginning.starts_with(only);
  });
  const std::vector<model::Side> complete = ask.only.empty() ? complete_sides(view) : std::vector<model::Side>{};
  if (!asked && complete.empty()) {
    return;
  }
  for (JudgedHypothesis& judged : judge_hypotheses(view, ask.priors, {ask.only, open})) {
    const bool shown = asked || std::find(complete.begin(), complete.end(), *judged.result.side) != complete.end();
    if (shown && wanted(ask, "hypotheses", judged.result.hypothesis.text)) {
      given.push_back(std::move(judged.result));
    }
  }
}

}  // namespace

Assessment assess(const model::Exam& exam, const std::optional<model::Person>& person, std::span<const model::Exam> earlier,
                  const reference::Edition& edition, const AssessAsk& ask) {
  const View view(exam, person, edition, ask.as_of);
  All all = judge_all(view, earlier, ask);
  Assessment assessment;
  assessment.edition = edition.id();
  assessment.as_of = ask.as_of;
  assessment.saw = ask.saw;
  if (wanted(ask, "steps", "step")) {
    if (auto step = next_step(view, all.watched.flags, all.watched.rules, all.watched.concerns)) {
      assessment.steps.push_back(std::move(*step));
    }
  }
  for (Alert& alert : all.watched.alerts.alerts) {
    if (wanted(ask, "alerts", alert.alert.text)) {
      assessment.alerts.push_back(std::move(alert));
    }
  }
  if (wanted(ask, "questions", "question")) {
    assessment.questions = std::move(all.watched.alerts.questions);
    assessment.questions_more.steps = static_cast<std::int64_t>(all.watched.alerts.questions_more);
  }
  for (Flag& flag : all.watched.alerts.flags) {
    if (wanted(ask, "flags", flag.flag.text)) {
      assessment.flags.push_back(std::move(flag));
    }
  }
  assessment.statements.reserve(all.watched.alerts.prompts.size() + all.statements.size());
  for (Judged& judged : all.watched.alerts.prompts) {
    if (wanted(ask, "statements", judged.statement.statement.text)) {
      assessment.statements.push_back(std::move(judged.statement));
    }
  }
  if (wanted(ask, "missing", "missing")) {
    assessment.missing = missing_items(view);
    assessment.not_examined = not_examined(view);
  }
  for (JudgedRule& judged : all.watched.rules) {
    if (wanted(ask, "rules", judged.result.rule.text)) {
      assessment.rules.push_back(std::move(judged.result));
    }
  }
  for (Judged& judged : all.statements) {
    if (wanted(ask, "statements", judged.statement.statement.text)) {
      assessment.statements.push_back(std::move(judged.statement));
    }
  }
  for (const model::Disagreed& one : exam.disagreed.value_or(std::vector<model::Disagreed>{})) {
    const reference::AlertRow* row = edition.alert({one.statement.text.substr(0, one.statement.text.find(':'))});
    // Its name would tell what an alert that is kept apart hides.
    if (ask.protected_ || row == nullptr || !row->protected_.value_or(false)) {
      if (!assessment.disagreed) {
        assessment.disagreed.emplace();
      }
      assessment.disagreed->push_back(one);
    }
  }
  if (bands_held_back(exam)) {
    assessment.held_back = true;
  } else {
    give_hypotheses(view, ask, all.watched.concerns, assessment.hypotheses);
  }
  for (Contradiction& contradiction : all.contradictions) {
    if (wanted(ask, "contradictions", contradiction.contradiction.text)) {
      assessment.contradictions.push_back(std::move(contradiction));
    }
  }
  return assessment;
}

Result<Working> explain(const model::Exam& exam, const std::optional<model::Person>& person, std::span<const model::Exam> earlier,
                        const reference::Edition& edition, const AssessAsk& ask, const model::StatementId& statement) {
  const View view(exam, person, edition, ask.as_of);
  All all = judge_all(view, earlier, ask);
  if (!bands_held_back(exam)) {
    all.hypotheses = judge_hypotheses(view, ask.priors, {{statement.text}, all.watched.concerns});
  }
  std::vector<Working*> found;
  for (Judged& judged : all.statements) {
    if (judged.statement.statement == statement) {
      found.push_back(&judged.working);
    }
  }
  for (Judged& judged : all.watched.alerts.prompts) {
    if (judged.statement.statement == statement) {
      found.push_back(&judged.working);
    }
  }
  for (JudgedRule& judged : all.watched.rules) {
    if (judged.working.statement == statement || judged.result.rule.text == statement.text) {
      found.push_back(&judged.working);
    }
  }
  for (JudgedHypothesis& judged : all.hypotheses) {
    if (judged.working.statement == statement || judged.result.hypothesis.text == statement.text) {
      found.push_back(&judged.working);
    }
  }
  std::list<Working> dangers;
  for (const JudgedFlag& judged : all.watched.flags) {
    const bool shown = ask.protected_ || !judged.row->protected_.value_or(false);
    if (shown && (statement_name(judged) == statement.text || judged.row->alert.text == statement.text)) {
      found.push_back(&dangers.emplace_back(explained(view, judged)));
    }
  }
  if (found.size() == 1) {
    add_what_changes(edition, *found.front());
    return std::move(*found.front());
  }
  if (found.empty()) {
    return wire::Fault{"statement.unknown", "/statement", "a statement, rule, hypothesis or danger of this assessment"};
  }
  return wire::Fault{"statement.unknown", "/statement", "the name with its side, such as " + found.front()->statement.text};
}

}  // namespace limbledger::interpret
