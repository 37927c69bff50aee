#include "core/interpret/step/spared.hpp"

#include "core/interpret/alerts/limits.hpp"

#include <algorithm>
#include <array>
#include <initializer_list>
#include <string>
#include <string_view>

namespace limbledger::interpret {

using model::Side;

namespace {

// Done on the feet alone.
[[nodiscard]] bool on_the_feet(const model::Item& item) {
  return item.positions && std::all_of(item.positions->begin(), item.positions->end(),
                                       [](const model::Word& position) { return position.text == "standing" || position.text == "walking"; });
}

// Nobody walks in the first year, and some are told not to walk yet, or not before this: no steps are asked of them (the first year is a convention).
[[nodiscard]] bool not_walking_yet(const View& view) {
  const auto months = view.age_months_on_exam();
  if (months && months->high < walks_not_before_months) {
    return true;
  }
  const auto told = [&](std::string_view item, std::initializer_list<std::string_view> choices) {
    const Findings all = view.at(item, Side::midline);
    return !all.empty() && std::all_of(all.begin(), all.end(), [&](const model::Finding* finding) {
      const auto* how = std::get_if<model::Choice>(&finding->value);
      return how != nullptr && std::find(choices.begin(), choices.end(), how->choice.text) != choices.end();
    });
  };
  return told("history.moves_about", {"moves_not_yet", "moves_rolls", "moves_crawls"}) || told("history.walks_usually", {"walks_wheelchair", "walks_bed", "walks_not_yet"});
}

// At the age of a slip, with the hip behind the complaint not settled, the hip is looked at before anybody walks for us (exam sequence
// page, section 4: walking is blocked where a slip is suspected).
[[nodiscard]] bool slip_unsettled(const View& view, const std::vector<JudgedFlag>& flags) {
  return std::any_of(flags.begin(), flags.end(), [&](const JudgedFlag& flag) {
    const auto& asked_in = flag.row->asked_in;
    return flag.row->alert.text == "alert.scfe" && flag.raised.applies == Tri::yes && flag.raised.clue.value == Tri::undetermined &&
           std::find(asked_in.begin(), asked_in.end(), view.exam().complaint) != asked_in.end() && flag.side && of_interest(view, *flag.side);
  });
}

}  // namespace

bool kept_off_the_feet(const View& view, const std::vector<JudgedFlag>& flags, const model::ItemId& id) {
  const model::Item* item = view.edition().item(id);
  if (item == nullptr || !on_the_feet(*item)) {
    return false;
  }
  // A limp is seen as the child comes in, and is no walking for us.
  if (not_walking_yet(view) || (id.text != "gait.limp" && slip_unsettled(view, flags))) {
    return true;
  }
  const auto& plan = view.exam().plan;
  const bool planned = plan && std::any_of(plan->begin(), plan->end(), [](const model::PlanItem& one) {
                         return (one.kind == model::PlanKind::limit || one.kind == model::PlanKind::splint) && one.became != model::Became::declined;
                       });
  return planned || std::any_of(flags.begin(), flags.end(), [&](const JudgedFlag& flag) {
           return flag.raised.clue.is_yes() && std::find(flag.row->stop.begin(), flag.row->stop.end(), id) != flag.row->stop.end();
         });
}

bool provokes(const model::Item& item) {
  return item.discomfort == model::Discomfort::some || item.discomfort == model::Discomfort::high || item.region.text == "gait";
}

// A gentle roll of the hip is left out: by it a break of the hip is told beside a hurt foot.
bool moves_or_squeezes(const model::Item& item) {
  const std::string_view name = item.item.text;
  const bool motion = item.value == model::ValueKind::angle || item.value == model::ValueKind::arc;
  constexpr std::array<std::string_view, 6> by_hand{"squeeze", "matles", "knee_height", "turns_out_in_flexion", "ortolani", "barlow"};
  return (motion && name.find("_passive") != std::string_view::npos) ||
         std::any_of(by_hand.begin(), by_hand.end(), [&](std::string_view what) { return name.find(what) != std::string_view::npos; });
}

bool moves_limb_in_alarm(const std::vector<JudgedFlag>& flags, const model::Item& item, Side side) {
  // A knee that blocks, and bone pain or a lump, are no reason not to turn a child's hip; bone that broke is (red flags page, sections 13, 17 and 20).
  const auto bears_it = [](const JudgedFlag& flag) {
    const std::string& name = flag.row->alert.text;
    return name == "alert.locked_knee" || (name == "alert.tumour" && !flag.raised.what.starts_with("broke"));
  };
  return moves_or_squeezes(item) && std::any_of(flags.begin(), flags.end(), [&](const JudgedFlag& flag) {
           return stands_as_alert(flag) && flag.side && (side == Side::midline || side == *flag.side) && !bears_it(flag);
         });
}

Spared::Spared(const View& view, const std::vector<JudgedFlag>& flags) : view_(view), flags_(flags) {
  raised_ = std::any_of(flags.begin(), flags.end(), [](const JudgedFlag& flag) { return flag.raised.clue.is_yes(); });
  if (raised_) {
    concerns_ = open_concerns(view, flags, {});
  }
}

// What threatens within minutes to hours is told by its own sign, such as the pain of stretched muscles beside a break: only a stop list
// speaks against that (our own rule).
bool Spared::provoked(const ToAsk& ask, Side moved, const JudgedFlag& by) const {
  if (by.row->urgency == AlertClass::now) {
    return false;
  }
  return moves_limb_in_alarm(flags_, *ask.item, ask.side) || moves_limb_in_alarm(flags_, *ask.item, moved) ||
         (provokes(*ask.item) && std::any_of(flags_.begin(), flags_.end(), [&](const JudgedFlag& flag) {
            return stands_as_alert(flag) && flag.side && (ask.side == Side::midline || ask.side == *flag.side);
          }));
}

bool Spared::holds(const ToAsk& ask, const JudgedFlag& by) const {
  if (kept_off_the_feet(view_, flags_, ask.item->item)) {
    return true;
  }
  // Of a leg that must not be moved the other one is no comparison, while nothing of its own was read.
  const bool for_comparison = by.side && ask.side != Side::midline && ask.side != *by.side && view_.at(*ask.item, *by.side).empty();
  const Side moved = for_comparison ? *by.side : ask.side;
  return raised_ && (withheld(*ask.item, moved, concerns_, flags_).has_value() || withheld(*ask.item, ask.side, concerns_, flags_).has_value() || provoked(ask, moved, by));
}

}  // namespace limbledger::interpret
