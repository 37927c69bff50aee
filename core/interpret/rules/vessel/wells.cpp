#include "core/interpret/rules/vessel/wells.hpp"

#include "core/interpret/alerts/limits.hpp"
#include "core/interpret/params.hpp"
#include "core/interpret/rules/sheet_inputs.hpp"

#include <algorithm>
#include <array>

namespace limbledger::interpret {

namespace {

using model::Side;

constexpr std::size_t wells_first_point = 2, wells_bed = 4, wells_calf = 7, wells_before = 10, wells_other = 11;
enum class WellsGroup : std::size_t { age, pregnant, points };
constexpr std::array<std::int64_t, 2> wells_calf_limits{30, 31};
constexpr std::string_view calf_girth = "leg.calf_girth_10cm";

[[nodiscard]] std::int64_t wells_point(std::size_t input, std::uint8_t one) {
  return input == wells_other ? (one == sheet_yes ? -2 : 0) : (one >= 1 ? 1 : 0);
}

[[nodiscard]] std::int64_t wells_point_1997(std::size_t input, std::uint8_t one) {
  if (input == wells_before) {
    return 0;
  }
  return input == wells_calf ? (one == 2 ? 1 : 0) : wells_point(input, one);
}

[[nodiscard]] SheetAnswer wells_band(std::int64_t points) {
  return points >= wells_likely ? SheetAnswer{Outcome::positive, "two_or_more"} : SheetAnswer{Outcome::negative, "under_two"};
}

[[nodiscard]] SheetAnswer wells_band_1997(std::int64_t points) {
  if (points >= 3) {
    return {Outcome::positive, "high"};
  }
  return points >= 1 ? SheetAnswer{Outcome::positive, "moderate"} : SheetAnswer{Outcome::negative, "low"};
}

// Age and pregnancy each by itself, and the sum of the rest.
[[nodiscard]] SheetGroups wells_groups(std::int64_t (*point)(std::size_t input, std::uint8_t one)) {
  SheetGroups groups;
  groups.add(static_cast<std::size_t>(WellsGroup::age), {0, 1});
  groups.add(static_cast<std::size_t>(WellsGroup::pregnant), {0, 1});
  for (std::size_t i = 2; i < wells_inputs; ++i) {
    groups.add(static_cast<std::size_t>(WellsGroup::points), i == wells_calf ? std::vector{point(i, 0), point(i, 1), point(i, 2)} : std::vector{point(i, 0), point(i, 1)});
  }
  return groups;
}

[[nodiscard]] SheetAnswer decide_wells(std::span<const std::int64_t> sums, SheetAnswer (*band)(std::int64_t points)) {
  const std::int64_t points = sums[static_cast<std::size_t>(WellsGroup::points)];
  SheetAnswer answer = band(points);
  if (sums[static_cast<std::size_t>(WellsGroup::age)] == 0) {
    answer = {Outcome::not_applicable, {}, "age"};
  } else if (sums[static_cast<std::size_t>(WellsGroup::pregnant)] == 1) {
    answer = {Outcome::not_applicable, {}, "pregnancy"};
  }
  answer.points = points;
  return answer;
}

[[nodiscard]] Said says_only_yes(const model::Finding& finding, bool yes) {
  static_cast<void>(finding);
  return yes ? Said{std::uint8_t{2}, "known"} : Said{std::nullopt, "not_asked"};
}

[[nodiscard]] bool is_yes_answer(const model::Finding& finding) {
  const auto* answer = std::get_if<model::Answer>(&finding.value);
  return answer != nullptr && answer->answer == model::AnswerWord::yes;
}

// A cancer at any time says nothing of one that is active; none at all does.
[[nodiscard]] Said says_no_cancer(const model::Finding& finding) {
  const Said said = says_answer(finding);
  return said.bits == std::uint8_t{1} ? said : Said{std::nullopt, "not_asked"};
}

// Three days or twelve weeks, as the item asks, may be fewer than what the version of 1997 wants.
[[nodiscard]] Said says_bed_1997(const model::Finding& finding) {
  const Said said = says_answer(finding);
  return said.bits == std::uint8_t{2} ? Said{std::nullopt, "not_precise_enough"} : said;
}

void add_calf(const View& view, RuleSheet& sheet, Side side) {
  const MeasuredAt here = measure_at(view, calf_girth, side, sheet.findings);
  const MeasuredAt there = measure_at(view, calf_girth, other_side(side), sheet.findings);
  MeasuredAt difference;
  if (here.between && there.between) {
    difference.between = Between{here.between->low - there.between->high, here.between->high - there.between->low};
    difference.state = difference.between->low == difference.between->high ? "known" : "known_in_part";
    difference.reading = number_line(difference.between, 1) + " mm";
  } else {
    difference.state = here.between ? there.state : here.state;
  }
  add_number(sheet, "calf_thicker", "calf thicker than the other by", calf_girth, here.between ? other_side(side) : side, difference, wells_calf_limits,
             {"under 30 mm", "30 mm", "over 30 mm"});
}

// All that is answered, in the order of the sheet; the calf, which is measured, has its place between the whole leg and the pitting.
template <class Answered, class Calf>
void hear_wells(Side side, bool of_1997, const Answered& answered, const Calf& calf) {
  answered("cancer_active", "cancer under treatment or within six months", {{"history.cancer_active"}, {"history.cancer_known", &says_no_cancer}}, Side::midline);
  answered("leg_still", "leg paralysed, weak or lately in plaster",
           {{"history.leg_paralysed_or_plaster"},
            {"body.paralysis", [](const model::Finding& finding) { return says_only_yes(finding, is_yes_answer(finding)); }},
            {"body.cast", [](const model::Finding& finding) { return says_only_yes(finding, !choices_of(finding).empty()); }}},
           side);
  constexpr std::string_view bed = "history.immobile_or_surgery_recent";
  if (of_1997) {
    answered("bed_or_operation", "more than 3 days in bed, or a large operation within 4 weeks", {{bed, &says_bed_1997}}, Side::midline);
  } else {
    answered("bed_or_operation", "3 days or more in bed, or a large operation within 12 weeks", {{bed}}, Side::midline);
  }
  answered("vein_tender", "tender along the deep veins", {{"leg.calf_tender_vein"}}, side);
  answered("leg_swollen", "whole leg swollen",
           {{"vessel.whole_leg_swollen"},
            {"knee.look_swelling_spread",
             [](const model::Finding& finding) { return says_only_yes(finding, says_one_of(finding, {"whole_limb"}).bits == std::uint8_t{2}); }}},
           side);
  calf();
  answered("pitting_more", "pitting in this leg alone, or more", {{"vessel.oedema_more_this_side"}}, side);
  answered("new_veins", "surface veins that are new and not varicose", {{"vessel.veins_collateral"}}, side);
  answered("clot_before", "clot in a leg vein before", {{"history.clot_before"}}, Side::midline);
  answered("other_cause", "another cause at least as likely", {{"history.other_cause_as_likely"}}, side);
}

[[nodiscard]] RuleSheet wells_sheet(const View& view, Side side, bool of_1997) {
  RuleSheet sheet;
  sheet.rule = of_1997 ? wells_1997_rule : wells_rule;
  sheet.edition = of_1997 ? wells_1997_edition : wells_edition;
  sheet.side = side;
  sheet.counts = true;
  sheet.inputs.reserve(wells_inputs);
  constexpr std::array<std::int64_t, 1> adult{wells_from};
  add_number(sheet, "age", "age", {}, Side::midline, age_at_exam(view), adult, {"under 18", "18 or more"});
  const Told pregnant = tell_pregnancy(view, sheet.findings);
  add_known(sheet, "pregnant", "pregnant", pregnant.value, pregnant.state, "body.pregnancy", Side::midline);
  hear_wells(
      side, of_1997,
      [&](std::string_view input, std::string_view said, std::initializer_list<SheetSource> sources, Side on) {
        add_joined(view, sheet, input, said, SheetJoin::one_thing, sources, on);
      },
      [&] { add_calf(view, sheet, side); });
  if (of_1997) {
    sheet.inputs[wells_bed].item = {};  // asked again it would say no more
  }
  sheet.formula = of_1997 ? "1 point each, an earlier clot none; another cause at least as likely -2; calf over 30 mm; 3 or more high, 1 to 2 moderate"
                          : "1 point each; another cause at least as likely -2; calf 30 mm or more; 2 or more";
  sheet.rows.push_back({{of_1997 ? "table.wells_dvt/1997.calf" : "table.wells_dvt/2003.calf"},
                        {of_1997 ? "WELLS1997" : "WELLS2003"},
                        model::Status::read,
                        Params().figure(of_1997 ? "over_mm" : "from_mm", 30'000).raw()});
  return sheet;
}

[[nodiscard]] std::vector<Classes> classes_in(const RuleSheet& sheet) {
  std::vector<Classes> may_be;
  for (const SheetInput& input : sheet.inputs) {
    may_be.push_back(input.may_be);
  }
  return may_be;
}

[[nodiscard]] std::vector<JudgedRule> run_wells_as(const View& view, bool of_1997) {
  std::vector<JudgedRule> judged;
  for (const Side side : {Side::left, Side::right}) {
    if (clot_in_question(view, side)) {
      const RuleSheet sheet = wells_sheet(view, side, of_1997);
      judged.push_back(judge_completed(view, sheet, of_1997 ? wells_1997(classes_in(sheet)) : wells_2003(classes_in(sheet))));
      if (of_1997 && judged.back().result.outcome == Outcome::undetermined) {
        judged.pop_back();  // shown beside, it asks for nothing of its own
      } else if (!of_1997 && judged.back().result.outcome == Outcome::negative && view.says_yes("history.breathless", Side::midline)) {
        judged.back().result.flags.push_back({"contradicted"});
      }
    }
  }
  return judged;
}

}  // namespace

SheetCompleted wells_2003(std::span<const Classes> may_be) {
  static const SheetGroups groups = wells_groups(&wells_point);
  return complete_groups(may_be, groups, [](std::span<const std::int64_t> sums) { return decide_wells(sums, &wells_band); });
}

SheetCompleted wells_1997(std::span<const Classes> may_be) {
  static const SheetGroups groups = wells_groups(&wells_point_1997);
  return complete_groups(may_be, groups, [](std::span<const std::int64_t> sums) { return decide_wells(sums, &wells_band_1997); });
}

std::vector<JudgedRule> run_wells(const View& view) { return run_wells_as(view, false); }
std::vector<JudgedRule> run_wells_1997(const View& view) { return run_wells_as(view, true); }

// What the sheet would give for its points, without writing the sheet.
Tri wells_two_or_more(const View& view, Side side) {
  std::vector<const model::Finding*> heard;
  Between points;
  std::size_t input = wells_first_point;
  const auto count = [&](Classes may_be) {
    std::optional<Between> own;
    for (std::uint8_t one = 0; may_be >> one != 0; ++one) {
      if ((may_be >> one & 1U) != 0) {
        const std::int64_t point = wells_point(input, one);
        own = own ? Between{std::min(own->low, point), std::max(own->high, point)} : Between{point, point};
      }
    }
    points.low += own ? own->low : 0;
    points.high += own ? own->high : 0;
    ++input;
  };
  hear_wells(
      side, false,
      [&](std::string_view, std::string_view, std::initializer_list<SheetSource> sources, Side on) {
        count(classes_of(tell_joined(view, SheetJoin::one_thing, sources, on, heard).told.value));
      },
      [&] { count(classes_of(calf_difference(view, side, heard), wells_calf_limits)); });
  return points.low >= wells_likely ? Tri::yes : (points.high < wells_likely ? Tri::no : Tri::undetermined);
}

std::optional<Between> calf_difference(const View& view, Side side, std::vector<const model::Finding*>& findings) {
  const MeasuredAt here = measure_at(view, calf_girth, side, findings);
  const MeasuredAt there = measure_at(view, calf_girth, other_side(side), findings);
  if (!here.between || !there.between) {
    return std::nullopt;
  }
  return Between{here.between->low - there.between->high, here.between->high - there.between->low};
}

bool clot_in_question(const View& view, Side side) {
  const auto answered = [&](std::string_view item, Side on, model::AnswerWord word) {
    const Findings found = view.at(item, on);
    return std::any_of(found.begin(), found.end(), [&](const model::Finding* finding) {
      const auto* answer = std::get_if<model::Answer>(&finding->value);
      return answer != nullptr && answer->answer == word;
    });
  };
  constexpr std::string_view suspects = "history.examiner_suspects_clot";
  if (view.says_yes("leg.calf_swelling", side) || view.says_yes("vessel.whole_leg_swollen", side) ||
      (side_complained_of(view, side) && view.exam().side && view.says_yes(suspects, Side::midline))) {
    return true;
  }
  const Findings spread = view.at("knee.look_swelling_spread", side);
  if (std::any_of(spread.begin(), spread.end(), [](const auto* finding) { return says_one_of(*finding, {"whole_limb"}).bits == std::uint8_t{2}; })) {
    return true;
  }
  // That no clot is suspected explains two calves sore alike, and no leg that alone is tender.
  constexpr std::string_view vein = "leg.calf_tender_vein";
  if (view.says_yes(vein, side) && !(answered(suspects, Side::midline, model::AnswerWord::no) && view.says_yes(vein, other_side(side)))) {
    return true;
  }
  std::vector<const model::Finding*> girths;
  const auto difference = calf_difference(view, side, girths);
  return difference && difference->low >= calf_fuller_mm;
}

}  // namespace limbledger::interpret
