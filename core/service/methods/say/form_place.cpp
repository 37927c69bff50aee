#include "core/service/methods/say/form_place.hpp"

#include "core/reference/edition.hpp"
#include "core/service/methods/exam/told.hpp"

#include <algorithm>
#include <string_view>

namespace limbledger::service {

namespace {

using model::Item;
using model::Word;

constexpr std::string_view supine = "supine";
constexpr std::string_view left_tilt = "left_tilt";
constexpr std::string_view half_sitting = "half_sitting";

[[nodiscard]] std::string_view hindrance_word(Cannot cannot) {
  switch (cannot) {
    case Cannot::lie_prone:
      return "cannot_lie_prone";
    case Cannot::lie_supine:
      return "cannot_lie_supine";
    case Cannot::lie_side:
      return "cannot_lie_side";
    case Cannot::stand:
      return "cannot_stand";
    case Cannot::walk:
      return "cannot_walk";
    case Cannot::sit:
      return "cannot_sit";
    case Cannot::reach_90:
      return "cannot_reach_90";
    case Cannot::one_limb:
      return "one_limb";
    case Cannot::no_instrument:
      return "no_instrument";
  }
  return {};
}

// Late in pregnancy nobody lies face down; flat on the back is another matter (tilted, in short turns).
[[nodiscard]] bool barred(Cannot cannot, std::string_view position) {
  switch (cannot) {
    case Cannot::lie_prone:
      return position == "prone";
    case Cannot::lie_supine:
      return position == supine || position == left_tilt;
    case Cannot::lie_side:
      return position == "side_lying";
    case Cannot::stand:
      return position == "standing" || position == "walking";
    case Cannot::walk:
      return position == "walking";
    case Cannot::sit:
      return position == "seated";
    case Cannot::reach_90:
    case Cannot::one_limb:
    case Cannot::no_instrument:
      return false;
  }
  return false;
}

[[nodiscard]] bool is_tool(const Word& instrument) { return instrument.text != "hand" && instrument.text != "by_eye"; }

[[nodiscard]] bool needs_tool(const Item& item) {
  return item.instruments && !item.instruments->empty() && std::all_of(item.instruments->begin(), item.instruments->end(), is_tool);
}

[[nodiscard]] bool names_instead(const Item& item, std::string_view when) {
  return item.instead && std::any_of(item.instead->begin(), item.instead->end(), [&](const model::Instead& one) { return one.when.text == when; });
}

// What somebody cannot do, as the catalogue says it, and as a form does.
struct Hindrance {
  std::string_view when;
  WhyLeft why = WhyLeft::cannot;
};

class Places {
 public:
  Places(const reference::Edition& edition, const FormAsk& ask) : edition_(edition), ask_(ask) {}

  [[nodiscard]] Placing make() {
    for (at_ = 0; at_ < ask_.sequence->steps.size(); ++at_) {
      const model::SequenceStep& step = ask_.sequence->steps[at_];
      const Item& item = *edition_.item(step.item);
      if (ask_.without_protected && item.protected_.value_or(false)) {
        continue;
      }
      if (ask_.told_alone && !is_told(edition_, item)) {
        continue;
      }
      if (!young_enough(item, step)) {
        continue;
      }
      Placed placed{&item, step, nullptr, item.sides};
      if (const auto hindered = hindrance(item)) {
        if (!replace(placed, *hindered)) {
          result_.left_out.push_back(left_step(ask_, item, step, hindered->why));
          continue;
        }
      } else {
        placed.step.position = *position_for(item, step.position);
      }
      placed.moved = !(placed.step.position == tilted(step.position));
      result_.placed.push_back(std::move(placed));
    }
    questions_follow();
    regroup();
    return std::move(result_);
  }

 private:
  // What harms beyond an age waits until the age is known to be below it.
  [[nodiscard]] bool young_enough(const Item& item, const model::SequenceStep& step) {
    if (!step.until_months || (ask_.age_months && ask_.age_months->high < step.until_months->steps)) {
      return true;
    }
    if (ask_.age_months && ask_.age_months->low >= step.until_months->steps) {
      result_.not_applicable.push_back({item.item, item.sides, model::WhyNot::other, model::MessageId{"msg.form.only_younger"}});
    } else {
      result_.left_out.push_back(left_step(ask_, item, step, WhyLeft::age_unknown));
    }
    return false;
  }
  [[nodiscard]] bool possible(std::string_view position) const {
    return std::none_of(ask_.cannot.begin(), ask_.cannot.end(), [&](Cannot cannot) { return barred(cannot, position); }) &&
           !(ask_.late_pregnancy && position == "prone");
  }
  [[nodiscard]] Word tilted(const Word& position) const {
    return ask_.late_pregnancy && position.text == supine ? Word{std::string(left_tilt)} : position;
  }
  [[nodiscard]] std::optional<Word> usable(const Word& position) const {
    const Word used = tilted(position);
    return possible(used.text) ? std::optional(used) : std::nullopt;
  }
  // A possible position of an item: the one wanted, else that of the step before, else its first possible one; a question is asked
  // in any.
  [[nodiscard]] std::optional<Word> position_for(const Item& item, const Word& wanted) const {
    if (const auto used = usable(wanted); used && model::takes_position(item, wanted)) {
      return used;
    }
    const Word* before = result_.placed.empty() ? nullptr : &result_.placed.back().step.position;
    if (!item.positions) {
      return before != nullptr ? *before : Word{std::string(half_sitting)};
    }
    if (before != nullptr && possible(before->text) && model::takes_position(item, *before)) {
      return *before;
    }
    // The one that the steps after it can stay in longest.
    std::optional<Word> best;
    std::size_t longest = 0;
    for (const Word& position : *item.positions) {
      const auto used = usable(position);
      if (const std::size_t stays = used ? stays_in(*used) : 0; stays > longest) {
        longest = stays;
        best = used;
      }
    }
    return best;
  }
  // How many steps from this one on can be done in a position before one cannot, or need not; this one counted.
  [[nodiscard]] std::size_t stays_in(const Word& position) const {
    const auto& steps = ask_.sequence->steps;
    std::size_t count = 1;
    for (std::size_t i = at_ + 1; i < steps.size(); ++i) {
      const Item& item = *edition_.item(steps[i].item);
      if (usable(steps[i].position) ? !(tilted(steps[i].position) == position) : !model::takes_position(item, position)) {
        break;
      }
      ++count;
    }
    return count;
  }
  [[nodiscard]] std::optional<Hindrance> hindrance(const Item& item) const {
    for (const Cannot cannot : ask_.cannot) {
      const std::string_view when = hindrance_word(cannot);
      if (cannot == Cannot::no_instrument) {
        if (needs_tool(item)) {
          return Hindrance{when, WhyLeft::no_instrument};
        }
      } else if ((cannot == Cannot::reach_90 || cannot == Cannot::one_limb) && names_instead(item, when)) {
        return Hindrance{when};
      }
    }
    if (!item.positions || std::any_of(item.positions->begin(), item.positions->end(), [&](const Word& one) { return usable(one).has_value(); })) {
      return std::nullopt;
    }
    for (const Cannot cannot : ask_.cannot) {
      if (std::any_of(item.positions->begin(), item.positions->end(), [&](const Word& one) { return barred(cannot, one.text); })) {
        return Hindrance{hindrance_word(cannot)};
      }
    }
    return Hindrance{hindrance_word(Cannot::lie_prone), WhyLeft::pregnancy};
  }
  [[nodiscard]] bool in_sequence(const model::ItemId& item) const {
    const auto& steps = ask_.sequence->steps;
    return std::any_of(steps.begin(), steps.end(), [&](const model::SequenceStep& step) { return step.item == item; });
  }
  [[nodiscard]] bool replace(Placed& placed, const Hindrance& hindered) const {
    for (const model::Instead& one : placed.item->instead.value_or(std::vector<model::Instead>{})) {
      const Item& other = *edition_.item(one.item);
      const bool there =
          std::any_of(result_.placed.begin(), result_.placed.end(), [&](const Placed& done) { return done.item == &other; });
      if (one.when.text != hindered.when || there || in_sequence(other.item) || hindrance(other)) {
        continue;
      }
      if (const auto position = position_for(other, placed.step.position)) {
        placed.instead_of = placed.item;
        placed.item = &other;
        placed.step.position = *position;
        placed.sides = other.sides;
        return true;
      }
    }
    return false;
  }

  // A question that had to move is asked where the next thing is done.
  void questions_follow() {
    for (std::size_t i = result_.placed.size(); i-- > 0;) {
      Placed& placed = result_.placed[i];
      if (placed.moved && !placed.item->positions && i + 1 < result_.placed.size()) {
        placed.step.position = result_.placed[i + 1].step.position;
      }
    }
  }
  void regroup() {
    std::vector<Placed>& all = result_.placed;
    for (std::size_t first = 0; first < all.size();) {
      std::size_t end = first;
      bool movable = true;
      for (; end < all.size() && all[end].step.position == all[first].step.position; ++end) {
        const bool stays = all[end].item->safety && is_minimum(ask_, all[end].step) && all[end].instead_of == nullptr;
        movable = movable && all[end].moved && !stays;
      }
      const auto later = std::find_if(all.begin() + static_cast<std::ptrdiff_t>(end), all.end(),
                                      [&](const Placed& one) { return one.step.position == all[first].step.position; });
      if (movable && later != all.end()) {
        std::rotate(all.begin() + static_cast<std::ptrdiff_t>(first), all.begin() + static_cast<std::ptrdiff_t>(end), later);
        continue;  // another run stands here now
      }
      first = end;
    }
  }

  const reference::Edition& edition_;
  const FormAsk& ask_;
  std::size_t at_ = 0;  // the step that is being placed
  Placing result_;
};

}  // namespace

bool is_minimum(const FormAsk& ask, const model::SequenceStep& step) {
  return step.minimum.value_or(false) || (step.minimum_under && ask.age && ask.age->low < step.minimum_under->steps);
}

std::optional<bool> minimum_mark(const FormAsk& ask, const model::SequenceStep& step) {
  return is_minimum(ask, step) ? std::optional(true) : std::nullopt;
}

LeftStep left_step(const FormAsk& ask, const Item& item, const model::SequenceStep& step, WhyLeft why) {
  return {item.item, why, minimum_mark(ask, step), item.text.short_, item.text.purpose};
}

Placing place_steps(const reference::Edition& edition, const FormAsk& ask) { return Places(edition, ask).make(); }

}  // namespace limbledger::service
