#include "core/service/methods/say/form.hpp"

#include "core/reference/edition.hpp"
#include "core/service/methods/say/form_step.hpp"

#include <algorithm>
#include <array>
#include <string_view>

namespace limbledger::service {

namespace {

using model::Side;

struct Placed {
  const model::Item* item = nullptr;
  model::SequenceStep step;
  const model::Item* instead_of = nullptr;
  std::vector<Side> sides;
};

[[nodiscard]] std::string_view word_of(Cannot cannot) {
  switch (cannot) {
    case Cannot::lie_prone:
      return "cannot_lie_prone";
    case Cannot::lie_supine:
      return "cannot_lie_supine";
    case Cannot::stand:
      return "cannot_stand";
    case Cannot::sit:
      return "cannot_sit";
    case Cannot::reach_90:
      return "cannot_reach_90";
  }
  return {};
}

[[nodiscard]] bool barred(Cannot cannot, std::string_view position) {
  switch (cannot) {
    case Cannot::lie_prone:
      return position == "prone";
    case Cannot::lie_supine:
      return position == "supine";
    case Cannot::stand:
      return position == "standing" || position == "walking";
    case Cannot::sit:
      return position == "seated";
    case Cannot::reach_90:
      return false;
  }
  return false;
}

class Form {
 public:
  Form(const reference::Edition& edition, const FormAsk& ask) : edition_(edition), ask_(ask) {}

  [[nodiscard]] FormDescribeResult make() {
    result_.complaint = ask_.sequence->complaint;
    result_.edition = edition_.id();
    result_.minutes = ask_.sequence->minutes;
    result_.not_to_miss = ask_.sequence->not_to_miss.value_or(std::vector<model::MessageId>{});
    place();
    leave_what_is_not_there();
    withhold();
    fit();
    for (const Placed& placed : placed_) {
      draw(placed);
    }
    return std::move(result_);
  }

 private:
  [[nodiscard]] bool in_sequence(const model::ItemId& item) const {
    const auto& steps = ask_.sequence->steps;
    return std::any_of(steps.begin(), steps.end(), [&](const model::SequenceStep& step) { return step.item == item; });
  }
  [[nodiscard]] bool possible(std::string_view position) const {
    return std::none_of(ask_.cannot.begin(), ask_.cannot.end(), [&](Cannot cannot) { return barred(cannot, position); });
  }
  // A possible position of an item: the one wanted, else its first possible one; a question is asked in any.
  [[nodiscard]] std::optional<model::Word> position_for(const model::Item& item, const model::Word& wanted) const {
    if (possible(wanted.text) && (!item.positions || std::find(item.positions->begin(), item.positions->end(), wanted) != item.positions->end())) {
      return wanted;
    }
    if (!item.positions) {
      return model::Word{"half_sitting"};
    }
    for (const model::Word& position : *item.positions) {
      if (possible(position.text)) {
        return position;
      }
    }
    return std::nullopt;
  }
  [[nodiscard]] bool needs_what_is_missing(const model::Item& item, const model::Word& wanted, std::string_view& when) const {
    for (const Cannot cannot : ask_.cannot) {
      const auto list = item.instead.value_or(std::vector<model::Instead>{});
      const bool named = std::any_of(list.begin(), list.end(), [&](const model::Instead& one) { return one.when.text == word_of(cannot); });
      if ((cannot == Cannot::reach_90 && named) || (barred(cannot, wanted.text) && !position_for(item, wanted))) {
        when = word_of(cannot);
        return true;
      }
    }
    return false;
  }
  // Of the minimum set: of every person, or below an age; an unknown age may be below it.
  [[nodiscard]] bool is_minimum(const model::SequenceStep& step) const {
    return step.minimum.value_or(false) || (step.minimum_under && ask_.age && ask_.age->low < step.minimum_under->steps);
  }
  [[nodiscard]] std::optional<bool> minimum_mark(const model::SequenceStep& step) const {
    return is_minimum(step) ? std::optional(true) : std::nullopt;
  }

  void place() {
    for (const model::SequenceStep& step : ask_.sequence->steps) {
      const model::Item& item = *edition_.item(step.item);
      if (is_minimum(step)) {
        result_.minimum.push_back(step.item);
      }
      Placed placed{&item, step, nullptr, item.sides};
      std::string_view when;
      if (needs_what_is_missing(item, step.position, when)) {
        if (!replace(placed, when)) {
          result_.left_out.push_back({step.item, WhyLeft::cannot, minimum_mark(step)});
          continue;
        }
      } else {
        placed.step.position = *position_for(item, step.position);
      }
      placed_.push_back(std::move(placed));
    }
  }
  [[nodiscard]] bool replace(Placed& placed, std::string_view when) const {
    for (const model::Instead& one : placed.item->instead.value_or(std::vector<model::Instead>{})) {
      const model::Item& other = *edition_.item(one.item);
      const model::Word wanted = other.positions ? other.positions->front() : placed.step.position;
      const auto position = position_for(other, wanted);
      std::string_view also;
      const bool there = std::any_of(placed_.begin(), placed_.end(), [&](const Placed& done) { return done.item == &other; });
      if (one.when.text == when && position && !there && !in_sequence(other.item) && !needs_what_is_missing(other, wanted, also)) {
        placed.instead_of = placed.item;
        placed.item = &other;
        placed.step.position = *position;
        placed.sides = other.sides;
        return true;
      }
    }
    return false;
  }

  void leave_what_is_not_there() {
    for (const BodyStep& absent : ask_.not_applicable) {
      const auto placed = std::find_if(placed_.begin(), placed_.end(), [&](const Placed& one) { return one.item->item == absent.item; });
      if (placed == placed_.end()) {
        continue;
      }
      auto& sides = placed->sides;
      sides.erase(std::remove_if(sides.begin(), sides.end(), [&](Side side) { return std::find(absent.sides.begin(), absent.sides.end(), side) != absent.sides.end(); }),
                  sides.end());
      result_.not_applicable.push_back(absent);
    }
    placed_.erase(std::remove_if(placed_.begin(), placed_.end(), [](const Placed& one) { return one.sides.empty(); }), placed_.end());
  }

  // Nobody stands, walks or is turned on one leg alone.
  [[nodiscard]] static bool whole_body(const Placed& placed) {
    const std::string& position = placed.step.position.text;
    return position == "standing" || position == "walking" || placed.item->sides == std::vector{Side::midline};
  }
  void withhold() {
    std::vector<Placed> kept;
    for (Placed& placed : placed_) {
      const auto by = placed.item->withheld_by.value_or(std::vector<model::ConcernId>{});
      for (const interpret::OpenConcern& open : ask_.open) {
        if (placed.sides.empty() || std::find(by.begin(), by.end(), open.concern->concern) == by.end()) {
          continue;
        }
        std::vector<Side> held;
        std::vector<Side> free;
        for (const Side side : placed.sides) {
          const bool reached = whole_body(placed) || open.side == Side::midline || side == open.side || side == Side::midline;
          (reached ? held : free).push_back(side);
        }
        if (!held.empty()) {
          result_.withheld.push_back(
              {placed.item->item, held, open.concern->concern, open.concern->title, open.concern->until, minimum_mark(placed.step)});
          placed.sides = std::move(free);
        }
      }
      if (!placed.sides.empty()) {
        kept.push_back(std::move(placed));
      }
    }
    placed_ = std::move(kept);
  }

  [[nodiscard]] static std::int64_t cost(const Placed& placed) { return placed.item->seconds.steps * static_cast<std::int64_t>(placed.sides.size()); }
  void fit() {
    if (!ask_.seconds) {
      return;
    }
    const auto always = [&](const Placed& placed) {
      return is_minimum(placed.step) || placed.item->safety || (placed.step.minimum_under && !ask_.age);
    };
    std::int64_t left = *ask_.seconds;
    for (const Placed& placed : placed_) {
      left -= always(placed) ? cost(placed) : 0;
    }
    std::vector<Placed> kept;
    for (Placed& placed : placed_) {
      if (always(placed)) {
        kept.push_back(std::move(placed));
      } else if (cost(placed) <= left) {
        left -= cost(placed);
        kept.push_back(std::move(placed));
      } else {
        result_.left_out.push_back({placed.item->item, WhyLeft::no_minutes, std::nullopt});
      }
    }
    placed_ = std::move(kept);
  }

  void draw(const Placed& placed) {
    FormStep step = form_step(edition_, *placed.item);
    step.sides = placed.sides;
    step.minimum = minimum_mark(placed.step);
    if (!ask_.age) {
      step.minimum_under = placed.step.minimum_under;
    }
    step.late = placed.step.late;
    if (placed.instead_of != nullptr) {
      step.instead_of = placed.instead_of->item;
    }
    if (result_.positions.empty() || !(result_.positions.back().position == placed.step.position)) {
      result_.positions.push_back({placed.step.position, {}});
    }
    result_.positions.back().steps.push_back(std::move(step));
    result_.seconds.steps += cost(placed);
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
