#include "core/interpret/rules/body/hypermobility.hpp"

#include "core/interpret/body.hpp"
#include "core/interpret/params.hpp"
#include "core/interpret/rules/grouped.hpp"
#include "core/wire/number.hpp"

#include <algorithm>
#include <array>
#include <utility>

namespace limbledger::interpret {

namespace {

using model::Side;

constexpr std::int64_t cut_before_puberty = 6;
constexpr std::int64_t cut_to_50 = 5;
constexpr std::int64_t cut_over_50 = 4;
constexpr std::int64_t questions_enough = 2;
constexpr std::int64_t grown_from = 18;  // our convention: nobody of that age is asked whether puberty has come
constexpr std::int64_t signs_most = 9;
constexpr std::string_view count_item = "body.hypermobility";
constexpr std::string_view puberty_item = "body.before_puberty";

struct SignOfNine {
  std::string_view input;
  std::string_view said;
  std::string_view item;
  Side side;
};
constexpr std::array<SignOfNine, 9> nine_signs{{{"little_finger", "little finger beyond 90", "body.beighton_little_finger", Side::left},
                                                {"little_finger", "little finger beyond 90", "body.beighton_little_finger", Side::right},
                                                {"thumb", "thumb on the forearm", "body.beighton_thumb", Side::left},
                                                {"thumb", "thumb on the forearm", "body.beighton_thumb", Side::right},
                                                {"elbow", "elbow beyond straight by more than 10", "body.beighton_elbow", Side::left},
                                                {"elbow", "elbow beyond straight by more than 10", "body.beighton_elbow", Side::right},
                                                {"knee", "knee beyond straight by more than 10", "body.beighton_knee", Side::left},
                                                {"knee", "knee beyond straight by more than 10", "body.beighton_knee", Side::right},
                                                {"trunk", "palms on the floor", "body.beighton_trunk", Side::midline}}};

struct QuestionOfFive {
  std::string_view input;
  std::string_view said;
  std::string_view item;
};
constexpr std::array<QuestionOfFive, 5> five_questions{{{"palms_ever", "palms on the floor ever", "history.palms_to_floor_ever"},
                                                        {"thumb_ever", "thumb on the forearm ever", "history.thumb_to_forearm_ever"},
                                                        {"odd_shapes_as_child", "odd shapes or the splits as a child", "history.odd_shapes_as_child"},
                                                        {"out_of_place_twice", "shoulder or kneecap out of place more than once in youth", "history.out_of_place_twice"},
                                                        {"double_jointed", "calls itself double-jointed", "history.double_jointed"}}};

struct HypermobilitySheet {
  RuleSheet sheet{hypermobility_rule, hypermobility_edition, Side::midline, {}, true, {}, {}, {}};
  SheetGroups groups;

  void add(HypermobilityGroup group, SheetInput input) {
    std::vector<std::int64_t> points(input.classes.size());
    for (std::size_t c = 0; c < points.size(); ++c) {
      points[c] = static_cast<std::int64_t>(c);
    }
    groups.of_input.push_back(static_cast<std::size_t>(group));
    groups.points.push_back(std::move(points));
    sheet.inputs.push_back(std::move(input));
  }
  void add_told(HypermobilityGroup group, std::string_view input, std::string_view said, std::string_view item, Side side, const Told& told) {
    add(group, {input, said, {"no", "yes"}, item, side, classes_of(told.value), told.state, {}});
  }
};

void add_signs(const View& view, HypermobilitySheet& all) {
  for (const SignOfNine& sign : nine_signs) {
    Told told = tell(view, sign.item, sign.side, &says_answer, all.sheet.findings);
    const model::Item* item = view.edition().item(sign.item);
    if (told.value == Tri::undetermined && item != nullptr && view.bodies().not_applicable(*item, sign.side) != nullptr) {
      told.state = "unable_limb_absent";
    }
    all.add_told(HypermobilityGroup::signs, sign.input, sign.said, sign.item, sign.side, told);
  }
}

// The number alone, where no sign was recorded by itself.
void add_count(const View& view, HypermobilitySheet& all) {
  const MeasuredAt counted = measure_at(view, count_item, Side::midline, all.sheet.findings);
  Classes may_be = 0;
  for (std::int64_t n = 0; n <= signs_most; ++n) {
    may_be = static_cast<Classes>(may_be | (!counted.between || (counted.between->low <= n && n <= counted.between->high) ? 1U << n : 0U));
  }
  all.add(HypermobilityGroup::signs, {"signs_counted", "signs of nine", {"0", "1", "2", "3", "4", "5", "6", "7", "8", "9"}, count_item, Side::midline, may_be, counted.state, {}});
}

[[nodiscard]] bool any_recorded(const View& view) {
  return std::any_of(nine_signs.begin(), nine_signs.end(), [&](const SignOfNine& sign) { return !view.at(sign.item, sign.side).empty(); });
}

[[nodiscard]] Told hear_puberty(const View& view, HypermobilitySheet& all) {
  const Told told = tell(view, puberty_item, Side::midline, &says_answer, all.sheet.findings);
  const std::optional<model::AgeInterval> age = view.age_on_exam();
  return told.state == "not_asked" && age && age->low >= grown_from ? Told{Tri::no, "known_by_age"} : told;
}

[[nodiscard]] std::int64_t hypermobility_cut(bool before_puberty, bool over_50) {
  return before_puberty ? cut_before_puberty : (over_50 ? cut_over_50 : cut_to_50);
}

// Where puberty and age are known, the cut they give.
void explain_cut(const RuleSheet& sheet, Working& working) {
  const Classes puberty = sheet.inputs[sheet.inputs.size() - 2].may_be;
  const Classes age = sheet.inputs.back().may_be;
  if (puberty != no_or_yes && age != no_or_yes) {
    const std::int64_t cut = hypermobility_cut(puberty == 2, age == 2);
    working.lines.push_back({"cut: " + wire::write_number(cut, 1) + ", or " + wire::write_number(cut - 1, 1) + " with two questions"});
  }
}

[[nodiscard]] std::vector<WorkingRow> hypermobility_rows() {
  const auto row = [](std::string_view name, std::int64_t cut) {
    return WorkingRow{{"table.beighton/2017-cutoffs." + std::string(name)}, {"MALFAIT2017"}, model::Status::read, Params().exact("at_least", cut * 1000).raw()};
  };
  return {row("total.1", cut_before_puberty), row("total.0-50.1", cut_to_50), row("total.51-.1", cut_over_50), row("one_below.1", questions_enough)};
}

}  // namespace

SheetAnswer decide_hypermobility(std::span<const std::int64_t> sums) {
  const auto of = [&](HypermobilityGroup group) { return sums[static_cast<std::size_t>(group)]; };
  const std::int64_t signs = of(HypermobilityGroup::signs);
  const std::int64_t cut = hypermobility_cut(of(HypermobilityGroup::before_puberty) > 0, of(HypermobilityGroup::over_50) > 0);
  const bool met = signs >= cut || (signs == cut - 1 && of(HypermobilityGroup::questions) >= questions_enough);
  return {met ? Outcome::positive : Outcome::negative, met ? "met" : "not_met", {}, signs};
}

std::vector<JudgedRule> run_hypermobility(const View& view) {
  const bool by_sign = any_recorded(view);
  if (!by_sign && view.at(count_item, Side::midline).empty()) {
    return {};
  }
  HypermobilitySheet all;
  all.groups.most = {SheetGroups::no_most, questions_enough, SheetGroups::no_most, SheetGroups::no_most};
  if (by_sign) {
    add_signs(view, all);
  } else {
    add_count(view, all);
  }
  for (const QuestionOfFive& question : five_questions) {
    all.add_told(HypermobilityGroup::questions, question.input, question.said, question.item, Side::midline,
                 tell(view, question.item, Side::midline, &says_answer, all.sheet.findings));
  }
  all.add_told(HypermobilityGroup::before_puberty, "before_puberty", "before puberty", puberty_item, Side::midline, hear_puberty(view, all));
  const MeasuredAt age = age_at_exam(view);
  RuleSheet with_age;
  add_number(with_age, "age", "age", {}, Side::midline, age, std::array<std::int64_t, 1>{51}, {"50 or under", "over 50"});
  all.add(HypermobilityGroup::over_50, std::move(with_age.inputs.front()));
  all.sheet.formula = "signs at least 6 before puberty, 5 to 50 years, 4 over 50; or one below with two of the five questions";
  all.sheet.rows = hypermobility_rows();
  JudgedRule judged = judge_groups(view, all.sheet, all.groups, &decide_hypermobility);
  join_sides(judged);
  explain_cut(all.sheet, judged.working);
  return {std::move(judged)};
}

}  // namespace limbledger::interpret
