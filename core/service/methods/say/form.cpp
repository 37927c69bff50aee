#include "core/service/methods/say/form.hpp"

#include "core/interpret/held.hpp"
#include "core/reference/edition.hpp"
#include "core/report/page_parts.hpp"
#include "core/service/methods/say/form_place.hpp"
#include "core/service/methods/say/form_step.hpp"
#include "core/service/methods/exam/told.hpp"

#include <algorithm>
#include <array>
#include <string_view>
#include <utility>

namespace limbledger::service {

namespace {

using model::Side;

constexpr std::int64_t grown_from_years = 16;  // C8, "the hip of a child"; the age our convention

class Form {
 public:
  Form(const reference::Edition& edition, const FormAsk& ask) : edition_(edition), ask_(ask) {}

  [[nodiscard]] FormDescribeResult make() {
    result_.complaint = ask_.sequence->complaint;
    result_.label = model::MessageId{"msg.complaint." + ask_.sequence->complaint.text};
    result_.edition = edition_.id();
    result_.minutes = ask_.sequence->minutes;
    result_.not_to_miss = ask_.sequence->not_to_miss.value_or(std::vector<model::MessageId>{});
    for (const model::SequenceStep& step : ask_.sequence->steps) {
      if (is_minimum(ask_, step) && (!ask_.told_alone || is_told(edition_, *edition_.item(step.item)))) {
        result_.minimum.push_back(step.item);
      }
    }
    Placing placing = place_steps(edition_, ask_);
    placed_ = std::move(placing.placed);
    result_.left_out = std::move(placing.left_out);
    result_.not_applicable = std::move(placing.not_applicable);
    leave_what_is_not_there();
    hip_before_knee();
    withhold();
    fit();
    for (const Placed& placed : placed_) {
      draw(placed);
    }
    if (ask_.recorded) {
      result_.minimum_open = ask_.minimum_open;
    }
    return std::move(result_);
  }

 private:
  [[nodiscard]] std::vector<FormRecorded> recorded_of(const model::Item& item) const {
    std::vector<FormRecorded> recorded;
    for (const RecordedSlot& slot : ask_.recorded.value_or(std::vector<RecordedSlot>{})) {
      if (slot.item == &item) {
        recorded.push_back(slot.what);
      }
    }
    return recorded;
  }
  // Every side is recorded; what may be said of the person as a whole or of each side needs one of the two.
  [[nodiscard]] static bool whole(const std::vector<FormRecorded>& recorded, const std::vector<Side>& sides) {
    const auto has = [&](Side side) {
      return std::any_of(recorded.begin(), recorded.end(), [&](const FormRecorded& one) { return one.side == side && !one.to_confirm.value_or(false) && one.not_done != model::WhyNot::no_time; });
    };
    const bool each = std::all_of(sides.begin(), sides.end(), [&](Side side) { return side == Side::midline || has(side); });
    const bool midline = std::find(sides.begin(), sides.end(), Side::midline) != sides.end();
    return midline ? has(Side::midline) || (sides.size() > 1 && each) : each;
  }
  [[nodiscard]] bool done(const Placed& placed) const { return ask_.recorded && whole(recorded_of(*placed.item), placed.sides); }

  // A small child with a sore knee may have a sore hip: in each position it is looked at first (HC-019; the age is our convention).
  void hip_before_knee() {
    constexpr std::int64_t small_under = 5;
    if (!ask_.age || ask_.age->high >= small_under || !ask_.sequence->complaint.text.ends_with("_knee")) {
      return;
    }
    const auto rank = [](const Placed& one) {
      return !one.item->positions ? 0 : (one.item->region.text == "hip" && !one.step.late.value_or(false) ? 1 : 2);
    };
    for (auto from = placed_.begin(); from != placed_.end();) {
      const auto to = std::find_if(from, placed_.end(), [&](const Placed& one) { return !(one.step.position == from->step.position); });
      std::stable_sort(from, to, [&](const Placed& a, const Placed& b) { return rank(a) < rank(b); });
      from = to;
    }
  }
  void leave_what_is_not_there() {
    for (const BodyStep& absent : ask_.not_applicable) {
      const auto placed = std::find_if(placed_.begin(), placed_.end(), [&](const Placed& one) { return one.item->item == absent.item; });
      if (placed == placed_.end()) {
        continue;
      }
      const auto there = [&](Side side) { return std::find(absent.sides.begin(), absent.sides.end(), side) == absent.sides.end(); };
      auto& sides = placed->sides;
      sides.erase(std::stable_partition(sides.begin(), sides.end(), there), sides.end());
      result_.not_applicable.push_back(absent);
    }
    placed_.erase(std::remove_if(placed_.begin(), placed_.end(), [](const Placed& one) { return one.sides.empty(); }), placed_.end());
  }
  // As at a finding that is recorded, and beside the next step: one judgement, side by side.
  void withhold() {
    std::vector<Placed> kept;
    for (Placed& placed : placed_) {
      std::vector<std::pair<interpret::Withholding, std::vector<Side>>> held;
      std::vector<Side> free;
      for (const Side side : placed.sides) {
        const auto by = interpret::withheld(*placed.item, side, ask_.open, ask_.flags);
        if (!by) {
          free.push_back(side);
          continue;
        }
        const auto same = std::find_if(held.begin(), held.end(), [&](const auto& one) { return one.first.by == by->by; });
        (same == held.end() ? held.emplace_back(*by, std::vector<Side>{}) : *same).second.push_back(side);
      }
      for (auto& [by, sides] : held) {
        withheld(placed, std::move(sides), by);
      }
      placed.sides = std::move(free);
      if (!placed.sides.empty()) {
        kept.push_back(std::move(placed));
      }
    }
    placed_ = std::move(kept);
  }
  void withheld(const Placed& placed, std::vector<Side> sides, const interpret::Withholding& by) {
    Placed here = placed;
    here.sides = sides;
    WithheldStep step{placed.item->item, std::move(sides), by.by, {"msg.flag." + std::string(report::after_dot(by.by.text))}, by.until, std::nullopt, std::nullopt, minimum_mark(ask_, placed.step),
                      placed.item->text.short_, std::nullopt, placed.step.position, drawn(here)};
    for (const model::Concern& concern : edition_.concerns()) {
      if (concern.concern.text == by.by.text) {
        step.because = concern.title;
        step.lifted_by = concern.answered_by;
        step.film_lifts = concern.film_lifts;
      }
    }
    std::vector<FormRecorded> recorded = recorded_of(*placed.item);
    if (!recorded.empty()) {
      step.recorded = std::move(recorded);
    }
    result_.withheld.push_back(std::move(step));
  }

  [[nodiscard]] static std::int64_t cost(const Placed& placed) { return placed.item->seconds.steps * static_cast<std::int64_t>(placed.sides.size()); }
  // The hip is examined for safety in a child; of a person known to be grown it may wait as anything else may.
  [[nodiscard]] bool for_safety(const Placed& placed) const {
    const bool grown = ask_.age && ask_.age->low >= grown_from_years;
    return placed.item->safety && !placed.step.drop && !(grown && placed.item->region.text == "hip");
  }
  [[nodiscard]] bool stays(const Placed& placed) const {
    return is_minimum(ask_, placed.step) || for_safety(placed) || (placed.step.minimum_under && !ask_.age) || done(placed);
  }
  // What the page says can wait goes first, then what comes late, then from the end.
  void fit() {
    if (!ask_.seconds) {
      return;
    }
    std::int64_t over = -*ask_.seconds;
    std::vector<std::size_t> may_go;
    for (std::size_t i = placed_.size(); i-- > 0;) {
      over += done(placed_[i]) ? 0 : cost(placed_[i]);
      if (!stays(placed_[i])) {
        may_go.push_back(i);
      }
    }
    const auto turn = [&](std::size_t i) {
      const model::SequenceStep& step = placed_[i].step;
      return step.drop ? step.drop->steps : (step.late.value_or(false) ? 10 : 11);
    };
    std::stable_sort(may_go.begin(), may_go.end(), [&](std::size_t a, std::size_t b) { return turn(a) < turn(b); });
    std::vector<bool> gone(placed_.size(), false);
    for (const std::size_t i : may_go) {
      if (over <= 0) {
        break;
      }
      over -= cost(placed_[i]);
      gone[i] = true;
      result_.left_out.push_back(left_step(ask_, *placed_[i].item, placed_[i].step, WhyLeft::no_minutes));
    }
    std::vector<Placed> kept;
    for (std::size_t i = 0; i < placed_.size(); ++i) {
      if (!gone[i]) {
        kept.push_back(std::move(placed_[i]));
      }
    }
    placed_ = std::move(kept);
  }

  [[nodiscard]] FormStep drawn(const Placed& placed) const {
    FormStep step = form_step(edition_, *placed.item);
    step.sides = placed.sides;
    step.minimum = minimum_mark(ask_, placed.step);
    if (!ask_.age) {
      step.minimum_under = placed.step.minimum_under;
    }
    step.late = placed.step.late;
    if (placed.instead_of != nullptr) {
      step.instead_of = placed.instead_of->item;
    }
    if (step.positions && std::find(step.positions->begin(), step.positions->end(), placed.step.position) == step.positions->end()) {
      step.positions->insert(step.positions->begin(), placed.step.position);
    }
    std::vector<FormRecorded> recorded = recorded_of(*placed.item);
    if (!recorded.empty()) {
      step.recorded = std::move(recorded);
    }
    if (done(placed)) {
      step.done = true;
    }
    return step;
  }
  void draw(const Placed& placed) {
    FormStep step = drawn(placed);
    if (!step.done) {
      result_.seconds.steps += cost(placed);
      result_.minimum_seconds.steps += step.minimum ? cost(placed) : 0;
      if (ask_.recorded && !result_.resume_at) {
        result_.resume_at = placed.item->item;
      }
    }
    position(placed.step.position).push_back(std::move(step));
  }
  [[nodiscard]] std::vector<FormStep>& position(const model::Word& word) {
    if (result_.positions.empty() || !(result_.positions.back().position == word)) {
      FormPosition next{word, model::MessageId{"msg.position_heading." + word.text}, std::nullopt, {}};
      if (word.text == "left_tilt") {
        next.advice = model::MessageId{"msg.form.lies_tilted"};
      }
      result_.positions.push_back(std::move(next));
    }
    return result_.positions.back().steps;
  }

  const reference::Edition& edition_;
  const FormAsk& ask_;
  std::vector<Placed> placed_;
  FormDescribeResult result_;
};

}  // namespace

FormDescribeResult lay_out_form(const reference::Edition& edition, const FormAsk& ask) { return Form(edition, ask).make(); }

Result<const model::Sequence*> find_sequence(const reference::Edition& edition, const model::Word& complaint) {
  const model::Sequence* sequence = edition.sequence(complaint);
  if (sequence != nullptr) {
    return sequence;
  }
  std::string known;
  for (const model::Sequence& one : edition.sequences()) {
    known += (known.empty() ? "" : ", ") + one.complaint.text;
  }
  return wire::Fault("params.unknown_word", "/complaint", known);
}

}  // namespace limbledger::service
