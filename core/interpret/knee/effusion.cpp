#include "core/interpret/knee/effusion.hpp"

#include "core/interpret/knee/lines.hpp"

#include <array>

namespace limbledger::interpret {

namespace {

using model::TestResult;

constexpr std::string_view stroke_item = "knee.effusion_stroke";
constexpr std::string_view tap_item = "knee.effusion_ballottement";
constexpr std::string_view wave_item = "knee.effusion_fluctuation";
constexpr std::string_view tense_grade = "3+";

struct FluidTold {
  Verdict verdict = Verdict::not_distinguishable;
  StatementGrade grade = StatementGrade::cannot_tell;
  std::string_view message;
  std::string_view instead{};  // the item to do in its place
};

[[nodiscard]] FluidTold told_of_stroke(const Found& found) {
  if (!found.result) {
    return {Verdict::not_distinguishable, StatementGrade::cannot_tell, found.disagree ? "examiners_disagree" : "not_counted"};
  }
  if (found.is(TestResult::negative)) {
    return found.guarded ? FluidTold{Verdict::not_distinguishable, StatementGrade::cannot_tell, "felt_poorly"}
                         : FluidTold{Verdict::within, StatementGrade::as_expected, "no_wave"};
  }
  if (found.is(TestResult::equivocal)) {
    return {Verdict::not_distinguishable, StatementGrade::unclear, "trace"};
  }
  return {Verdict::above, StatementGrade::notable, grade_of(found) == tense_grade ? "tense" : "present"};
}

[[nodiscard]] FluidTold told_of_sign(const Found& found, const Found& stroke, std::string_view item) {
  const bool tense = grade_of(stroke) == tense_grade;
  if (!found.result) {
    return {Verdict::not_distinguishable, StatementGrade::cannot_tell, found.disagree ? "examiners_disagree" : "not_counted"};
  }
  if (found.is(TestResult::positive)) {
    return {Verdict::above, StatementGrade::notable, item == tap_item ? "tap_positive" : "fluctuation_positive"};
  }
  if (found.is(TestResult::equivocal)) {
    return {Verdict::not_distinguishable, StatementGrade::unclear, "sign_equivocal"};
  }
  if (found.guarded) {
    return {Verdict::not_distinguishable, StatementGrade::cannot_tell, "felt_poorly"};
  }
  if (item == tap_item && tense) {
    return {Verdict::not_distinguishable, StatementGrade::cannot_tell, "tap_tense", wave_item};
  }
  if (stroke.is(TestResult::positive) || stroke.is(TestResult::equivocal)) {
    return {Verdict::not_distinguishable, StatementGrade::cannot_tell, item == tap_item ? "tap_small" : "fluctuation_small"};
  }
  // Alone, a negative sign of larger effusions leaves a small one open.
  return {Verdict::not_distinguishable, StatementGrade::unclear, "sign_negative", stroke.any() ? std::string_view{} : stroke_item};
}

void judge_sign(const View& view, std::string_view item, model::Side side, std::vector<Judged>& all) {
  const Found found = found_at(view, item, side);
  if (!found.any()) {
    return;
  }
  const Found stroke = found_at(view, stroke_item, side);
  Judged judged = begin_knee("effusion.sign", {std::string(item)}, side, found);
  const bool is_stroke = item == stroke_item;
  const FluidTold told = is_stroke ? told_of_stroke(found) : told_of_sign(found, stroke, item);
  judged.statement.verdict = told.verdict;
  judged.statement.grade = told.grade;
  name_knee(judged, "effusion." + std::string(told.message));
  Params params;
  const std::string grade = grade_of(found);
  if (!grade.empty()) {
    params.word("grade", grade);
    judged.working.lines.push_back({"stroke test graded " + grade});
  }
  if (!is_stroke && stroke.any()) {
    const std::string beside = grade_of(stroke);
    if (!beside.empty()) {
      params.word("stroke_grade", beside);
      judged.working.lines.push_back({"beside a stroke test graded " + beside});
    }
    const std::vector<model::FindingId> also = ids_of(stroke.findings);
    judged.statement.findings.insert(judged.statement.findings.end(), also.begin(), also.end());
  }
  if (!told.instead.empty()) {
    params.word("instead", told.instead);
  }
  judged.statement.params = params.raw();
  judged.working.formula = {is_stroke ? "as the grade counts: trace is open, 1+ and more is fluid"
                                      : "a negative tells nothing beside fluid that hides it"};
  figure_rows(view, "agreement", item, judged);
  judged.working.changes_if.push_back({told.instead.empty() ? "msg.change.repeat_test" : "msg.change.other_test"});
  all.push_back(std::move(judged));
}

}  // namespace

std::vector<Judged> judge_effusion(const View& view) {
  std::vector<Judged> all;
  for (const model::Side side : {model::Side::left, model::Side::right}) {
    for (const std::string_view item : {stroke_item, tap_item, wave_item}) {
      judge_sign(view, item, side, all);
    }
  }
  return all;
}

std::vector<Contradiction> effusion_contradictions(const View& view) {
  std::vector<Contradiction> all;
  for (const model::Side side : {model::Side::left, model::Side::right}) {
    const Found stroke = found_at(view, stroke_item, side);
    for (const std::string_view item : {tap_item, wave_item}) {
      const Found sign = found_at(view, item, side);
      if (!stroke.is(TestResult::negative) || !sign.is(TestResult::positive)) {
        continue;
      }
      Contradiction found;
      found.contradiction = {"effusion.sign_without_wave:" + std::string(item) + ":" + std::string(side_word(side))};
      found.side = side;
      found.message = {"msg.contradiction.effusion_sign_without_wave"};
      found.params = {"{}"};
      std::vector<const model::Finding*> both = stroke.findings;
      both.insert(both.end(), sign.findings.begin(), sign.findings.end());
      found.findings = ids_of(both);
      all.push_back(std::move(found));
    }
  }
  return all;
}

}  // namespace limbledger::interpret
