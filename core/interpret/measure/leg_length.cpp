#include "core/interpret/measure/leg_length.hpp"

#include "core/interpret/body.hpp"
#include "core/interpret/joint/neutral.hpp"
#include "core/interpret/joint/printed.hpp"

#include <algorithm>
#include <array>
#include <optional>

namespace limbledger::interpret {

namespace {

using model::Side;

constexpr std::string_view true_length = "leg.length_true";
constexpr std::string_view apparent_length = "leg.length_apparent";
constexpr std::string_view block_height = "pelvis.block_height_standing";
constexpr std::int64_t possible_over = 5'000;   // BADII2014: definition of a difference
constexpr std::int64_t matters_from = 20'000;   // KNUTSON2005; the decision rules page holds it from memory
constexpr std::int64_t blocks_from = 10'000;    // rom page, conflict 16
constexpr std::array falsifies{std::string_view("hip.extension_passive_thomas"), std::string_view("hip.extension_passive_prone"),
                               std::string_view("hip.extension_passive_side_lying"), std::string_view("knee.extension_passive"),
                               std::string_view("hip.abduction_passive"), std::string_view("hip.adduction_passive")};

[[nodiscard]] bool read_twice(const Reading& reading) {
  std::size_t readings = 0;
  for (const model::Finding* finding : reading.findings) {
    const auto* length = std::get_if<model::Length>(&finding->value);
    readings += length != nullptr && length->trials ? std::max<std::size_t>(length->trials->size(), 1) : 1;
  }
  return readings >= 2;
}

// What makes the tape worthless, measured or recorded; on either leg.
[[nodiscard]] const model::Finding* falsified_by(const View& view, const model::Item& item, const std::vector<Reading>& motions) {
  for (const Side side : {Side::left, Side::right}) {
    if (const OpenBody* body = view.bodies().uncompared(item, side, "other_side"); body != nullptr && body->finding != nullptr) {
      return body->finding;
    }
  }
  for (const std::string_view name : falsifies) {
    for (const Side side : {Side::left, Side::right}) {
      const Reading* motion = number_at(motions, name, side);
      if (motion != nullptr && short_of_neutral(view, *motion) == Tri::yes) {
        return motion->findings.front();
      }
    }
  }
  return nullptr;
}

void offer_blocks(const View& view, Params& params, Judged& judged) {
  const bool done = !view.at(block_height, Side::left).empty() || !view.at(block_height, Side::right).empty();
  if (!done && view.edition().item(block_height) != nullptr && !view.bodies().cannot("stand")) {
    params.word("instead", block_height);
  }
  judged.working.changes_if.push_back({"msg.change.blocks"});
}

// Of one leg alone: the other is not there, could not be measured, or was not.
void judge_one_leg(const View& view, const Reading& here, std::vector<Judged>& all) {
  const Side there = other_side(here.side);
  const auto absent = not_applicable(view, *here.item, there);
  const Findings recorded = view.at(*here.item, there);
  const auto not_done = std::find_if(recorded.begin(), recorded.end(), [](const model::Finding* one) { return std::holds_alternative<model::NotDone>(one->value); });
  const bool no_limb = absent || (not_done != recorded.end() && std::get<model::NotDone>((*not_done)->value).reason == model::WhyNot::no_limb);
  Judged judged = begin_measure("leg_length", Comparator::none, here.item->item, here.side, here.findings);
  Params params;
  params.figure("mm", here.low);
  judged.working.formula = {"no comparison"};
  if (no_limb) {
    judged.statement.verdict = Verdict::no_norm;
    name_measure(judged, "length_no_limb");
  } else {
    judged.statement.missing.push_back({"other_side"});
    judged.working.changes_if.push_back({"msg.change.other_side"});
    name_measure(judged, "length_alone");
  }
  judged.statement.params = params.raw();
  all.push_back(std::move(judged));
}

// Whole thousandths of a millimetre; readings of one leg that differ leave a span.
struct LegSpan {
  std::int64_t least = 0;
  std::int64_t most = 0;
  std::optional<Side> shorter;  // where every reading agrees which
};

[[nodiscard]] LegSpan span_between(const Reading& left, const Reading& right) {
  const std::int64_t low = left.low - right.high;
  const std::int64_t high = left.high - right.low;
  LegSpan span;
  span.most = std::max(distance_of(low, 0), distance_of(high, 0));
  if (high < 0 || low > 0) {
    span.shorter = high < 0 ? Side::left : Side::right;
    span.least = std::min(distance_of(low, 0), distance_of(high, 0));
  }
  return span;
}

[[nodiscard]] std::string length_message(const LegSpan& span, bool twice) {
  const std::string once = twice ? "" : "_once";
  if (span.least >= matters_from) {
    return "length_likely" + once;
  }
  return span.most > possible_over ? "length_possible" + once : "length_within";
}

void judge_both_legs(const View& view, const Reading& left, const Reading& right, const std::vector<Reading>& motions, std::vector<Judged>& all) {
  const LegSpan span = span_between(left, right);
  const bool beyond = span.most > possible_over && span.shorter.has_value();
  const Side side = beyond ? *span.shorter : Side::midline;
  const Reading& here = side == Side::right ? right : left;
  const Reading& other = side == Side::right ? left : right;
  Judged judged = begin_measure("leg_length", Comparator::other_side, left.item->item, side, here.findings);
  beside_measure(judged, other);
  if (side == Side::midline) {
    std::vector<const model::Finding*> both = left.findings;  // of no side: in an order that does not depend on it
    both.insert(both.end(), right.findings.begin(), right.findings.end());
    judged.statement.findings = ids_of(both);
  }
  judged.working.formula = {"possible over 5 mm, likely to matter from 20 mm; one reading a leg is weak; no reading counts where a hip or knee is held bent or across"};
  Params params;
  if (beyond) {
    params.figure("mm", here.low).figure("other_mm", other.low);
  }
  params.figure("difference_mm", span.most);
  const model::Finding* falsified = falsified_by(view, *left.item, motions);
  const bool twice = read_twice(left) && read_twice(right);
  if (positions_differ(left, right)) {
    name_measure(judged, "length_other_position");
    judged.working.changes_if.push_back({"msg.change.same_position"});
  } else if (falsified != nullptr) {
    params.word("because_item", falsified->item.text);
    printed_rows(view, {"motion_rule.lld_false"}, judged);
    name_measure(judged, "length_falsified");
    offer_blocks(view, params, judged);
  } else {
    printed_rows(view, {"motion_rule.lld_5", "motion_rule.lld_20", "motion_rule.lld_method"}, judged);
    if (left.exact() && right.exact() && beyond) {
      judged.working.lines.push_back({in_tenths(other.low) + " - " + in_tenths(here.low) + " = " + in_tenths(span.most)});
    }
    judged.working.lines.push_back({in_tenths(span.most) + (span.most > possible_over ? " is over 5" : " is not over 5")});
    judged.working.lines.push_back({in_tenths(span.least) + (span.least >= matters_from ? " is 20 or more" : " is under 20")});
    judged.working.lines.push_back({twice ? "two readings a leg" : "one reading of a leg"});
    judged.working.lines.push_back({"the tape named the wrong leg in 7 of 20 (BADII2014)"});
    const bool likely = span.least >= matters_from;
    const bool notable = likely && twice;
    tell_measure(judged, notable ? Verdict::below : Verdict::not_distinguishable, notable ? StatementGrade::notable : StatementGrade::unclear,
                 length_message(span, twice));
    if (span.most > possible_over) {
      offer_blocks(view, params, judged);
    }
    if (!twice) {
      judged.working.changes_if.push_back({"msg.change.second_reading"});
    }
  }
  judged.statement.params = params.raw();
  all.push_back(std::move(judged));
}

// Alike by true length and not by apparent: the pelvis is tilted or a hip is held (SABHARWAL2008, from memory).
void judge_apparent_alone(const View& view, const std::vector<Reading>& amounts, std::vector<Judged>& all) {
  std::array<const Reading*, 4> four{amount_at(amounts, true_length, Side::left), amount_at(amounts, true_length, Side::right),
                                     amount_at(amounts, apparent_length, Side::left), amount_at(amounts, apparent_length, Side::right)};
  if (std::any_of(four.begin(), four.end(), [](const Reading* one) { return one == nullptr; })) {
    return;
  }
  const LegSpan of_true = span_between(*four[0], *four[1]);
  const LegSpan of_apparent = span_between(*four[2], *four[3]);
  if (of_true.most > possible_over || !of_apparent.shorter || of_apparent.least <= possible_over) {
    return;
  }
  const Reading& here = *of_apparent.shorter == Side::left ? *four[2] : *four[3];
  const Reading& other = *of_apparent.shorter == Side::left ? *four[3] : *four[2];
  Judged judged = begin_measure("leg_apparent", Comparator::other_side, here.item->item, *of_apparent.shorter, here.findings);
  beside_measure(judged, other);
  judged.working.formula = {"apparent over 5 mm while true is not"};
  judged.working.lines.push_back({"true differs by " + in_tenths(of_true.most) + ", apparent by " + in_tenths(of_apparent.most)});
  printed_rows(view, {"motion_rule.lld_true"}, judged);
  judged.statement.params = Params().figure("mm", here.low).figure("other_mm", other.low).figure("difference_mm", of_apparent.most).raw();
  tell_measure(judged, Verdict::not_distinguishable, StatementGrade::unclear, "length_apparent_taught");
  all.push_back(std::move(judged));
}

void judge_blocks(const View& view, const Reading& reading, std::vector<Judged>& all) {
  Judged judged = begin_measure("blocks", Comparator::other_side, reading.item->item, reading.side, reading.findings);
  judged.working.formula = {"spoken of from 10 mm, likely to matter from 20 mm"};
  judged.working.lines.push_back({in_tenths(reading.low) + (reading.low >= matters_from ? " is 20 or more" : (reading.low >= blocks_from ? " is 10 or more" : " is under 10"))});
  printed_rows(view, {"motion_rule.lld_5", "motion_rule.lld_20", "motion_rule.lld_method"}, judged);
  const bool likely = reading.low >= matters_from;
  const bool spoken = reading.high >= blocks_from;
  tell_measure(judged, likely ? Verdict::below : Verdict::not_distinguishable, likely ? StatementGrade::notable : StatementGrade::unclear,
               likely ? "blocks_likely" : (spoken ? "blocks_possible" : "blocks_small"));
  judged.statement.params = Params().figure("mm", reading.low).raw();
  all.push_back(std::move(judged));
}

}  // namespace

std::vector<Judged> judge_leg_length(const View& view, const std::vector<Reading>& amounts, const std::vector<Reading>& motions) {
  std::vector<Judged> all;
  for (const std::string_view item : {true_length, apparent_length}) {
    const Reading* left = amount_at(amounts, item, Side::left);
    const Reading* right = amount_at(amounts, item, Side::right);
    if (left != nullptr && right != nullptr) {
      judge_both_legs(view, *left, *right, motions, all);
    } else if (left != nullptr || right != nullptr) {
      judge_one_leg(view, left != nullptr ? *left : *right, all);
    }
  }
  judge_apparent_alone(view, amounts, all);
  for (const Side side : {Side::left, Side::right}) {
    if (const Reading* blocks = amount_at(amounts, block_height, side); blocks != nullptr && blocks->low > 0) {
      judge_blocks(view, *blocks, all);
    }
  }
  return all;
}

std::vector<Contradiction> leg_length_contradictions(const std::vector<Reading>& amounts) {
  std::vector<Contradiction> all;
  const Reading* left = amount_at(amounts, true_length, Side::left);
  const Reading* right = amount_at(amounts, true_length, Side::right);
  if (left == nullptr || right == nullptr) {
    return all;
  }
  const LegSpan tape = span_between(*left, *right);
  for (const Side side : {Side::left, Side::right}) {
    const Reading* blocks = amount_at(amounts, block_height, side);
    if (blocks == nullptr || blocks->low < blocks_from || !tape.shorter || *tape.shorter == side || tape.least <= possible_over) {
      continue;
    }
    Contradiction one;
    one.contradiction = {"contradiction.tape_and_blocks:" + std::string(side_word(side))};
    one.side = side;
    one.message = {"msg.contradiction.tape_and_blocks"};
    one.params = Params().figure("blocks_mm", blocks->low).figure("tape_mm", tape.most).raw();
    std::vector<const model::Finding*> used = blocks->findings;
    used.insert(used.end(), left->findings.begin(), left->findings.end());
    used.insert(used.end(), right->findings.begin(), right->findings.end());
    one.findings = ids_of(used);
    all.push_back(std::move(one));
  }
  return all;
}

}  // namespace limbledger::interpret
