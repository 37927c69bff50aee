#include "core/interpret/knee/laxity.hpp"

#include "core/interpret/knee/weaken.hpp"
#include "core/interpret/motion/reading.hpp"

#include <algorithm>

namespace limbledger::interpret {

namespace {

using model::TestResult;

// Graded against the other knee in millimetres, or the pivot shift, which is graded against it too.
[[nodiscard]] bool grades_looseness(const View& view, const model::Item& item) {
  if (item.region.text != "knee" || item.value != model::ValueKind::grade || !item.scale) {
    return false;
  }
  const model::Scale* scale = view.edition().scale(*item.scale);
  return item.item.text == "knee.pivot_shift" || (scale != nullptr && scale->takes_mm.value_or(false));
}

void tell(Judged& judged, Verdict verdict, StatementGrade grade, std::string_view message) {
  judged.statement.verdict = verdict;
  judged.statement.grade = grade;
  name_knee(judged, "laxity." + std::string(message));
}

// The band of the grade as the scale prints it, and the end that was felt.
void grade_params(const View& view, const model::Item& item, const Found& found, Params& params, Judged& judged) {
  const std::string grade = grade_of(found);
  if (grade.empty()) {
    return;
  }
  params.word("grade", grade);
  std::string line = "grade " + grade;
  for (const model::ScaleGrade& row : view.edition().scale(*item.scale)->grades) {
    if (row.grade.text != grade) {
      continue;
    }
    if (row.mm_low) {
      params.figure("mm_low", row.mm_low->steps * 1000 / model::Millimetres::wire_rule.per_unit);
      line += ", from " + in_tenths(row.mm_low->steps * 1000 / model::Millimetres::wire_rule.per_unit) + " mm";
    }
    if (row.mm_high) {
      params.figure("mm_high", row.mm_high->steps * 1000 / model::Millimetres::wire_rule.per_unit);
      line += ", to " + in_tenths(row.mm_high->steps * 1000 / model::Millimetres::wire_rule.per_unit) + " mm";
    }
  }
  std::string feel;
  bool same = true;
  for (const model::Finding* finding : found.findings) {
    const std::string one = finding->end_feel ? finding->end_feel->text : std::string();
    same = same && (finding == found.findings.front() || one == feel);
    feel = one;
  }
  if (same && !feel.empty()) {
    params.word("end_feel", feel);
    line += ", end " + feel;
  }
  const std::string as = found.result ? std::string(wire::type_of<TestResult>().words[static_cast<std::size_t>(*found.result)]) : "nothing";
  judged.working.lines.push_back({line + ": counts as " + as});
}

[[nodiscard]] bool loose_or_open(const Found& found) { return found.is(TestResult::positive) || found.is(TestResult::equivocal); }

void add_findings(const std::vector<const model::Finding*>& findings, Judged& judged) {
  for (const model::FindingId& id : ids_of(findings)) {
    auto& all = judged.statement.findings;
    if (std::find(all.begin(), all.end(), id) == all.end()) {
      all.push_back(id);
    }
  }
}

// What the grade says by itself and beside the other knee; the confounders come after.
void judge_grade(const Found& found, const Found& other, Judged& judged) {
  if (found.disagree) {
    return tell(judged, Verdict::not_distinguishable, StatementGrade::cannot_tell, "examiners_disagree");
  }
  if (!found.result) {
    return tell(judged, Verdict::not_distinguishable, StatementGrade::cannot_tell, "not_counted");
  }
  if (loose_or_open(found) && loose_or_open(other)) {
    judged.statement.comparator = Comparator::other_side;
    add_findings(other.findings, judged);
    return tell(judged, Verdict::not_distinguishable, StatementGrade::unclear, "both_sides");
  }
  switch (*found.result) {
    case TestResult::positive:
      return tell(judged, Verdict::above, StatementGrade::notable, "loose");
    case TestResult::equivocal:
      return tell(judged, Verdict::not_distinguishable, StatementGrade::unclear, "open");
    case TestResult::negative:
      return tell(judged, Verdict::within, StatementGrade::as_expected, "not_loose");
  }
}

void weaken(const View& view, const model::Item& item, const Found& found, const std::vector<Weakened>& reasons, Params& params, Judged& judged) {
  const bool negative = found.is(TestResult::negative);
  std::string instead;
  for (const Weakened& reason : reasons) {
    params.yes(reason.because);
    add_findings(reason.findings, judged);
    judged.working.lines.push_back({"weakened: " + reason.because});
    instead = instead.empty() ? reason.instead : instead;
    if (reason.because == "heavy_thigh" || reason.because == "small_hands") {
      const auto& rows = judged.statement.rows;
      const bool first = std::none_of(rows.begin(), rows.end(), [](const model::RowId& row) { return row.text.starts_with("figure.hold"); });
      if (first) {
        figure_rows(view, "hold", item.item.text, judged);
        figure_rows(view, "hold_no_relation", item.item.text, judged);
      }
    }
    if (reason.because == "first_weeks") {
      figure_rows(view, "acute_laxity", item.item.text, judged);
      judged.working.changes_if.push_back({"msg.change.two_weeks"});
    }
  }
  if (!instead.empty()) {
    params.word("instead", instead);
    judged.working.changes_if.push_back({"msg.change.other_test"});
  }
  const auto silent = std::find_if(reasons.begin(), reasons.end(), [](const Weakened& reason) { return reason.silences; });
  if (silent != reasons.end()) {
    tell(judged, Verdict::not_distinguishable, StatementGrade::cannot_tell, silent->because);
  } else if (!reasons.empty() && negative) {
    tell(judged, Verdict::not_distinguishable, StatementGrade::unclear, "not_loose_weak");
  }
}

void judge_test(const View& view, const model::Item& item, model::Side side, std::vector<Judged>& all) {
  const Found found = found_at(view, item.item.text, side);
  if (!found.any()) {
    return;
  }
  Judged judged = begin_knee("laxity.test", item.item, side, found);
  judged.working.formula = {"as grade and end feel count in the item's row, beside the other knee and what weakens it"};
  Params params;
  grade_params(view, item, found, params, judged);
  if (!not_native(view, item, side).empty()) {
    tell(judged, Verdict::no_norm, StatementGrade::cannot_tell, not_native(view, item, side) == "fused" ? "fused" : "implant");
    judged.statement.params = params.raw();
    all.push_back(std::move(judged));
    return;
  }
  const bool reference = not_native(view, item, other_side(side)).empty();
  const Found other = reference ? found_at(view, item.item.text, other_side(side)) : Found{};
  judge_grade(found, other, judged);
  if (!reference) {
    params.yes("no_reference");  // the grade is a difference, and the other knee is no measure
  } else if (!other.any()) {
    judged.working.changes_if.push_back({"msg.change.other_side"});
  }
  if (found.result) {
    weaken(view, item, found, weakened_by(view, item, side, found), params, judged);
  }
  figure_rows(view, "agreement", item.item.text, judged);
  judged.working.changes_if.push_back({"msg.change.repeat_test"});
  judged.statement.params = params.raw();
  all.push_back(std::move(judged));
}

// A tibia that sagged: said by itself, because every test that pulls forward starts from it.
void judge_sag(const View& view, model::Side side, std::vector<Judged>& all) {
  const model::ItemId item{"knee.posterior_sag"};
  const Found found = found_at(view, item.text, side);
  const model::Item* row = view.edition().item(item);
  if (!found.is(TestResult::positive) || row == nullptr || !not_native(view, *row, side).empty()) {
    return;
  }
  Judged judged = begin_knee("laxity.sag", item, side, found);
  const bool both = found_at(view, item.text, other_side(side)).is(TestResult::positive);
  tell(judged, Verdict::above, StatementGrade::notable, both ? "sag_both_sides" : "sag");
  judged.working.formula = {"positive: the step in front of the condyles is less than on the other side"};
  judged.working.changes_if.push_back({"msg.change.step_restored"});
  all.push_back(std::move(judged));
}

}  // namespace

std::vector<Judged> judge_laxity(const View& view) {
  std::vector<Judged> all;
  for (const model::Side side : {model::Side::left, model::Side::right}) {
    judge_sag(view, side, all);
    for (const model::Item& item : view.edition().items()) {
      if (grades_looseness(view, item)) {
        judge_test(view, item, side, all);
      }
    }
  }
  return all;
}

}  // namespace limbledger::interpret
