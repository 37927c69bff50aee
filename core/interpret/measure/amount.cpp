#include "core/interpret/measure/amount.hpp"

#include "core/interpret/joint/printed.hpp"
#include "core/interpret/motion/difference.hpp"

#include <algorithm>
#include <array>

namespace limbledger::interpret {

namespace {

using model::Side;

struct AmountKind {
  std::string_view family;
  std::int64_t sides;  // between sides
  std::int64_t past;   // and between visits
  bool itself;         // believed from the figure on, else over it
  bool taught;
  std::string_view row;
  std::string_view past_row;

  [[nodiscard]] bool believes(std::int64_t by, std::int64_t figure) const { return itself ? by >= figure : by > figure; }
};
constexpr std::array amount_kinds{
    AmountKind{"leg.calf_girth", 6'000, 6'000, true, false, "motion_rule.girth_calf", "motion_rule.girth_calf"},
    AmountKind{"leg.thigh_girth", 10'000, 10'000, false, true, "motion_rule.girth_thigh", "motion_rule.girth_thigh"},
    AmountKind{"knee.girth", 10'000, 10'000, false, true, "motion_rule.girth_thigh", "motion_rule.girth_thigh"},
    AmountKind{"leg.ankle_girth", 10'000, 10'000, false, false, "table.edema/girth.ankle_girth_difference.1", "table.edema/girth.ankle_girth_difference.1"},
    AmountKind{"ankle.dorsiflexion_lunge", 15'000, 19'000, false, false, "motion_rule.side_ankle_02", ""},
};
constexpr std::string_view clot_item = "leg.calf_girth_10cm";
constexpr std::int64_t clot_from = 30'000;
constexpr std::string_view wall_family = "ankle.dorsiflexion_lunge";
constexpr std::int64_t wall_surely_over = 30'000;

[[nodiscard]] const AmountKind* amount_kind_of(const model::Item& item) {
  const auto found = std::find_if(amount_kinds.begin(), amount_kinds.end(), [&](const AmountKind& one) { return one.family == item.family.text; });
  return found == amount_kinds.end() || item.value != model::ValueKind::length ? nullptr : &*found;
}

// Apart by at least this much by every reading.
[[nodiscard]] std::int64_t apart_by(const Reading& here, const Reading& other) {
  if (here.low > other.high) {
    return here.low - other.high;
  }
  return other.low > here.high ? other.low - here.high : 0;
}

void pair_params(const Reading& here, const Reading& other, Params& params) {
  params.figure("mm", here.low).figure("other_mm", other.low).figure("difference_mm", distance_of(here.low, other.low));
}

[[nodiscard]] std::string_view way_of_amount(const Reading& here, const Reading& other) { return here.low < other.low ? "_less" : "_more"; }

void judge_amount_pair(const View& view, const AmountKind& kind, const Reading& here, const Reading& other, std::vector<Judged>& all) {
  const bool to_wall = kind.family == wall_family;
  Judged judged = begin_measure(to_wall ? "side" : "girth", Comparator::other_side, here.item->item, here.side, here.findings);
  beside_measure(judged, other);
  Params params;
  pair_params(here, other, params);
  const std::int64_t by = apart_by(here, other);
  const bool believed = kind.believes(by, kind.sides);
  params.figure("needed_mm", kind.sides);
  judged.working.formula = {to_wall ? "believed over 15 mm; sound people differ by up to 30"
                                    : "believed " + std::string(kind.itself ? "from " : "over ") + in_tenths(kind.sides) + " mm"};
  printed_rows(view, {kind.row}, judged);
  if (to_wall) {
    printed_rows(view, {"motion_rule.side_ankle_03"}, judged);
  }
  if (positions_differ(here, other)) {
    judged.working.changes_if.push_back({"msg.change.same_position"});
    name_measure(judged, to_wall ? "wall_other_position" : "girth_other_position");
    judged.statement.params = params.raw();
    all.push_back(std::move(judged));
    return;
  }
  judged.working.lines.push_back({in_tenths(here.low) + " against " + in_tenths(other.low) + ", apart by " + in_tenths(by) +
                                  (believed ? " is beyond " : " is not beyond ") + in_tenths(kind.sides)});
  judged.working.changes_if.push_back({"msg.change.repeat_reading"});
  const bool less = here.low < other.low;
  const std::string prefix = to_wall ? "wall" : "girth";
  if (!believed) {
    tell_measure(judged, Verdict::not_distinguishable, StatementGrade::unclear, prefix + "_within" + (kind.taught ? "_taught" : ""));
  } else if (!to_wall && here.item->item.text == clot_item && !less && by >= clot_from) {
    printed_rows(view, {"motion_rule.girth_dvt"}, judged);
    tell_measure(judged, Verdict::above, StatementGrade::notable, "girth_clot");
  } else {
    // A figure from memory, and what sound people show as well, raise nothing.
    const bool raises = to_wall ? by > wall_surely_over : !kind.taught;
    tell_measure(judged, less ? Verdict::below : Verdict::above, raises ? StatementGrade::notable : StatementGrade::unclear,
                 prefix + std::string(way_of_amount(here, other)) + (to_wall && !raises ? "_ordinary" : "") + (kind.taught ? "_taught" : ""));
  }
  judged.statement.params = params.raw();
  all.push_back(std::move(judged));
}

// The other side was measured at another level alone: that by itself explains a difference.
void judge_levels(const std::vector<Reading>& amounts, const Reading& here, std::vector<Judged>& all) {
  const auto there = std::find_if(amounts.begin(), amounts.end(), [&](const Reading& one) {
    return one.side == other_side(here.side) && one.item->family == here.item->family && one.item->value == model::ValueKind::length &&
           amount_at(amounts, one.item->item.text, here.side) == nullptr;
  });
  if (there == amounts.end()) {
    return;
  }
  Judged judged = begin_measure("girth", Comparator::none, here.item->item, here.side, here.findings);
  beside_measure(judged, *there);
  judged.working.formula = {"no comparison: the difference of levels alone explains one"};
  judged.working.changes_if.push_back({"msg.change.same_level"});
  judged.statement.missing.push_back({"other_side"});
  judged.statement.params = Params().word("other_item", there->item->item.text).raw();
  name_measure(judged, "girth_level");
  all.push_back(std::move(judged));
}

}  // namespace

std::vector<Judged> judge_amount_sides(const View& view, const std::vector<Reading>& amounts) {
  std::vector<Judged> all;
  for (const Reading& here : amounts) {
    const AmountKind* kind = amount_kind_of(*here.item);
    if (kind == nullptr || here.side == Side::midline || !asked_of_side(view, here.side)) {
      continue;
    }
    const Reading* other = amount_at(amounts, here.item->item.text, other_side(here.side));
    if (other == nullptr) {
      judge_levels(amounts, here, all);
    } else if (not_compared(view, *here.item, here.side, "other_side").empty() && not_compared(view, *other->item, other->side, "other_side").empty()) {
      judge_amount_pair(view, *kind, here, *other, all);
    }
  }
  return all;
}

std::vector<Judged> judge_amount_past(const View& view, const std::vector<Reading>& amounts, std::span<const model::Exam> earlier) {
  std::vector<Judged> all;
  const std::vector<const model::Exam*> past = exams_before(view, earlier);
  for (const Reading& here : amounts) {
    const AmountKind* kind = amount_kind_of(*here.item);
    if (kind == nullptr || here.side == Side::midline) {
      continue;
    }
    for (const model::Exam* exam : past) {
      const View then(*exam, view.person(), view.edition(), view.as_of());
      const std::vector<Reading> amounts_then = read_amounts(then);
      const Reading* other = amount_at(amounts_then, here.item->item.text, here.side);
      if (other == nullptr) {
        continue;
      }
      Judged judged = begin_measure("past", Comparator::own_past, here.item->item, here.side, here.findings);
      Params params;
      pair_params(here, *other, params);
      const bool to_wall = kind->family == wall_family;
      params.figure("needed_mm", kind->past);
      const std::int64_t by = apart_by(here, *other);
      if (to_wall) {
        if (const auto precision = precision_of(view.edition(), {&here, other})) {
          for (const reference::ErrorRow* row : precision->rows) {
            judged.statement.rows.push_back(row->row);
            judged.working.rows.push_back({row->row, row->source, row->status, Params().exact("mdc95", row->mdc95->steps).raw()});
          }
        }
      } else {
        printed_rows(view, {kind->past_row}, judged);
      }
      judged.working.formula = {"believed from the smallest change on"};
      judged.working.lines.push_back({in_tenths(here.low) + " against " + in_tenths(other->low) + " then, apart by " + in_tenths(by)});
      judged.working.changes_if.push_back({"msg.change.repeat_reading"});
      const std::string taught = kind->taught ? "_taught" : "";
      if (positions_differ(here, *other)) {
        name_measure(judged, "past_other_position");
      } else if (!kind->believes(by, kind->past)) {
        tell_measure(judged, Verdict::not_distinguishable, StatementGrade::unclear, "past_within" + taught);
      } else {
        tell_measure(judged, here.low < other->low ? Verdict::below : Verdict::above, kind->taught ? StatementGrade::unclear : StatementGrade::notable,
                     "past" + std::string(way_of_amount(here, *other)) + taught);
      }
      if (here.instruments != other->instruments) {
        params.yes("methods_differ");
      }
      judged.statement.params = params.raw();
      all.push_back(std::move(judged));
      break;
    }
  }
  return all;
}

}  // namespace limbledger::interpret
