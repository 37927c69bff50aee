#include "core/interpret/measure/blood.hpp"

#include "core/interpret/joint/printed.hpp"
#include "core/interpret/knee/lines.hpp"

#include <algorithm>
#include <array>

namespace limbledger::interpret {

namespace {

using model::Side;

constexpr std::string_view refill_item = "vessel.capillary_refill_great_toe";
constexpr std::string_view pitting_item = "vessel.oedema_pitting";

struct RefillLimit {
  std::int64_t from_years;
  std::int64_t to_years;
  std::optional<model::NormSex> sex;
  std::int64_t limit;  // thousandths of a second: prolonged above
  bool at_foot;
  std::string_view row;
};
constexpr std::array refill_limits{
    RefillLimit{0, 17, std::nullopt, 4'000, true, "table.crt.foot_or_chest.0-17.1"},
    RefillLimit{18, 61, model::NormSex::male, 2'000, false, "table.crt.finger.male.18-61.1"},
    RefillLimit{18, 61, model::NormSex::female, 2'900, false, "table.crt.finger.female.18-61.1"},
    RefillLimit{62, 130, std::nullopt, 4'500, false, "table.crt.finger.62-.1"},
};
constexpr std::int64_t newborn_days = 7;

[[nodiscard]] bool newborn(const View& view) {
  const auto& person = view.person();
  const bool dated = person && person->birth && person->birth->date;
  return dated && view.examined_on() && view.examined_on()->first_day() - person->birth->date->last_day() <= newborn_days;
}

// Every limit that may apply to this person.
[[nodiscard]] std::vector<const RefillLimit*> limits_for(const View& view) {
  std::vector<const RefillLimit*> all;
  const auto age = view.age_on_exam();
  if (!age || newborn(view)) {
    return all;
  }
  const model::NormSex sex = view.person()->norm_sex;
  for (const RefillLimit& one : refill_limits) {
    const bool aged = age->high >= one.from_years && age->low <= one.to_years;
    if (aged && (!one.sex || sex == model::NormSex::unspecified || *one.sex == sex)) {
      all.push_back(&one);
    }
  }
  return all;
}

// The grade that a depth stands for on the scale, or empty.
[[nodiscard]] std::string grade_of_depth(const View& view, std::int64_t mm) {
  const model::Item* item = view.edition().item(pitting_item);
  const model::Scale* scale = item != nullptr && item->scale ? view.edition().scale(*item->scale) : nullptr;
  for (const model::ScaleGrade& grade : scale != nullptr ? scale->grades : std::vector<model::ScaleGrade>{}) {
    const auto thousandths = [](const model::Millimetres& one) { return one.steps * 1000 / model::Millimetres::wire_rule.per_unit; };
    const bool from = !grade.mm_low || mm >= thousandths(*grade.mm_low);
    if (from && (!grade.mm_high || mm <= thousandths(*grade.mm_high))) {
      return grade.grade.text;
    }
  }
  return {};
}

void judge_one_refill(const View& view, const Reading& reading, std::vector<Judged>& all) {
  Judged judged = begin_measure("refill", Comparator::none, reading.item->item, reading.side, reading.findings);
  const std::vector<const RefillLimit*> limits = limits_for(view);
  Params params;
  params.figure("s", reading.low);
  judged.working.formula = {"slow above the limit of this age, sex and place"};
  if (limits.empty()) {
    judged.statement.verdict = Verdict::no_norm;
    name_measure(judged, "refill_no_limit");
    if (!view.age_on_exam()) {
      judged.statement.missing.push_back({std::string(view.age_lacks())});
    }
    judged.statement.params = params.raw();
    all.push_back(std::move(judged));
    return;
  }
  bool all_slow = true;
  bool all_within = true;
  std::int64_t least = limits.front()->limit;
  std::int64_t most = least;
  for (const RefillLimit* one : limits) {
    printed_rows(view, {one->row}, judged);
    all_slow = all_slow && reading.low > one->limit;
    all_within = all_within && reading.high <= one->limit;
    least = std::min(least, one->limit);
    most = std::max(most, one->limit);
    judged.working.lines.push_back({in_tenths(reading.low) + (reading.low > one->limit ? " is over " : " is not over ") + in_tenths(one->limit)});
  }
  const bool at_foot = std::all_of(limits.begin(), limits.end(), [](const RefillLimit* one) { return one->at_foot; });
  judged.statement.comparator = Comparator::norm;
  params.figure("limit_s", all_slow ? most : least);
  const std::string place = at_foot ? "" : "_finger";
  if (all_slow) {
    tell_measure(judged, Verdict::above, at_foot ? StatementGrade::notable : StatementGrade::unclear, "refill_slow" + place);
  } else if (all_within) {
    tell_measure(judged, Verdict::within, at_foot ? StatementGrade::as_expected : StatementGrade::unclear, "refill_within" + place);
  } else {
    params.figure("to_s", most);
    tell_measure(judged, Verdict::not_distinguishable, StatementGrade::unclear, "refill_open");
  }
  judged.working.changes_if.push_back({"msg.change.repeat_reading"});
  judged.statement.params = params.raw();
  all.push_back(std::move(judged));
}

// The grade that all examiners name, and whether there is a pit.
struct Pitting {
  Found found;
  std::string grade;
  std::optional<std::int64_t> mm;

  [[nodiscard]] bool there() const { return !grade.empty() && grade != "0"; }
};

[[nodiscard]] Pitting pitting_at(const View& view, Side side) {
  Pitting pitting;
  for (const model::Finding* finding : view.at(pitting_item, side)) {
    const auto* grade = std::get_if<model::Grade>(&finding->value);
    if (grade == nullptr || !settles(*finding)) {
      continue;
    }
    pitting.found.findings.push_back(finding);
    pitting.mm = grade->mm ? std::optional(grade->mm->steps * 1000 / model::Millimetres::wire_rule.per_unit) : pitting.mm;
  }
  pitting.grade = grade_of(pitting.found);
  return pitting;
}

}  // namespace

std::int64_t refill_limit(const View& view) {
  const std::vector<const RefillLimit*> own = limits_for(view);
  std::int64_t longest = 0;
  for (const RefillLimit& one : refill_limits) {
    const bool may_be = own.empty() || std::find(own.begin(), own.end(), &one) != own.end();
    longest = may_be ? std::max(longest, one.limit) : longest;
  }
  return longest;
}

std::vector<Judged> judge_refill(const View& view, const std::vector<Reading>& amounts) {
  std::vector<Judged> all;
  for (const Side side : {Side::left, Side::right}) {
    if (const Reading* reading = amount_at(amounts, refill_item, side)) {
      judge_one_refill(view, *reading, all);
    }
  }
  return all;
}

std::vector<Judged> judge_pitting(const View& view) {
  std::vector<Judged> all;
  for (const Side side : {Side::left, Side::right}) {
    const Pitting here = pitting_at(view, side);
    const Pitting other = pitting_at(view, other_side(side));
    if (!here.there()) {
      continue;
    }
    Judged judged = begin_measure("pitting", Comparator::other_side, {std::string(pitting_item)}, side, here.found.findings);
    judged.working.formula = {"over 0 to 2 mm 1+, to 4 mm 2+, to 6 mm 3+, more 4+"};
    Params params;
    params.word("grade", here.grade);
    if (here.mm) {
      params.figure("mm", *here.mm);
      judged.working.lines.push_back({in_tenths(*here.mm) + " mm, graded " + here.grade});
      // Asked back when it was recorded, and kept as it is.
      if (const std::string by_depth = grade_of_depth(view, *here.mm); !by_depth.empty() && by_depth != here.grade) {
        params.word("by_depth", by_depth);
        judged.working.lines.push_back({in_tenths(*here.mm) + " mm is graded " + by_depth});
      }
    }
    const std::vector<model::FindingId> also = ids_of(other.found.findings);
    judged.statement.findings.insert(judged.statement.findings.end(), also.begin(), also.end());
    printed_rows(view, {"table.edema/default-edges.pit_depth.1", "table.edema/ebm.pit_depth.2"}, judged);
    if (other.there()) {
      tell_measure(judged, Verdict::not_distinguishable, StatementGrade::unclear, "pitting_both");
    } else if (other.grade == "0") {
      tell_measure(judged, Verdict::above, StatementGrade::notable, "pitting_one_side");
    } else {
      judged.statement.comparator = Comparator::none;
      judged.statement.missing.push_back({"other_side"});
      judged.working.changes_if.push_back({"msg.change.other_side"});
      name_measure(judged, "pitting_alone");
    }
    judged.statement.params = params.raw();
    all.push_back(std::move(judged));
  }
  return all;
}

}  // namespace limbledger::interpret
