// Recorded answers as clues. A group entry, a carried-over value and what the person alone reported give neither yes nor no;
// a reason why something was not done gives neither; two that disagree give neither. What was examined with a held-back or doubtful hand
// (any `quality`) gives a yes and no no, nor does the no about pain of who cannot tell of it. Angles in 0.1 degree.
#pragma once

#include "core/interpret/alerts/clue.hpp"
#include "core/interpret/motion/reading.hpp"
#include "core/interpret/rules/input.hpp"

#include <array>
#include <cstdint>
#include <functional>
#include <initializer_list>
#include <list>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

namespace limbledger::interpret {

using reference::ItemKey;

// What several dangers ask: worked out once a side.
enum class Known : std::uint8_t {
  injured,
  of_short_history,
  over_two_weeks,
  cannot_walk,
  cannot_stand,
  limps,
  took_no_steps_before,
  swollen,
  tender,
  bone_tender,
  restricted,
  severe_pain_on_passive,
  hip_rotation_lost,
  numb,
  foot_hot,
  foot_wound,
  wound_infected,
  hurt_lately,
  fever,
  unable_to_speak_for_pain,
  body_fails,
  untold_pain,
  fever_of_child,
  pelvis_broken,
  whole_body
};
inline constexpr std::size_t known_count = static_cast<std::size_t>(Known::whole_body) + 1;

class Answers {
 public:
  explicit Answers(const View& view) : view_(view), age_(view.age_on_exam()) {}
  [[nodiscard]] const View& view() const { return view_; }
  // The reading of a motion on this side, or null; only where it is a number. Read when first asked for.
  [[nodiscard]] const Reading* motion(const ItemKey& item, model::Side side) const;
  [[nodiscard]] const Reading* motion(const model::Item& item, model::Side side) const;

  [[nodiscard]] Clue yes(const ItemKey& item, model::Side side = model::Side::midline) const;
  // Where the no is the alarming answer: yes for a no, however it was examined.
  [[nodiscard]] Clue no(const ItemKey& item, model::Side side = model::Side::midline) const;
  [[nodiscard]] Clue positive(const ItemKey& item, model::Side side) const;
  [[nodiscard]] Clue chosen(const ItemKey& item, model::Side side, std::initializer_list<std::string_view> choices) const;
  [[nodiscard]] Clue graded(const ItemKey& item, model::Side side, std::initializer_list<std::string_view> grades) const;
  // At least so many of these choices.
  [[nodiscard]] Clue several(const ItemKey& item, model::Side side, std::initializer_list<std::string_view> choices, std::ptrdiff_t least) const;
  // Yes with all that say yes; else nothing is said, and nothing asked.
  [[nodiscard]] Clue any_yes(std::initializer_list<ItemKey> items, model::Side side) const;
  // What led_by makes of these behind an empty lead: yes with all that say yes; else nothing is said but hinted, and nothing asked.
  [[nodiscard]] Clue any_graded(std::span<const ItemKey> items, model::Side side, std::initializer_list<std::string_view> grades) const;
  [[nodiscard]] Clue any_chosen(std::span<const ItemKey> items, model::Side side, std::initializer_list<std::string_view> choices) const;
  [[nodiscard]] Clue count_at_least(const ItemKey& item, std::int64_t least, model::Side side = model::Side::midline) const;
  [[nodiscard]] Clue count_below(const ItemKey& item, std::int64_t less_than, model::Side side = model::Side::midline) const;
  [[nodiscard]] Clue longer_than(const ItemKey& item, model::Side side, std::int64_t mm) const;
  [[nodiscard]] Clue pressure_below(const ItemKey& item, std::int64_t mm_hg) const;
  // Tenths of a degree Celsius.
  [[nodiscard]] Clue warm_at_least(std::int64_t tenths) const;
  [[nodiscard]] Clue colder_than(std::int64_t tenths) const;
  [[nodiscard]] Clue warmest_at_least(std::int64_t tenths) const;  // the highest of the last seven days
  // Tried, and stopped by one of these reasons: yes. Done: no.
  [[nodiscard]] Clue stopped(const ItemKey& item, model::Side side, std::initializer_list<model::WhyNot> reasons) const;
  // What each tried finding says; any yes decides, and what is not recorded says nothing and is not asked after.
  [[nodiscard]] Clue tried(const ItemKey& item, model::Side side, const std::function<Tri(const model::Finding&)>& says) const;
  [[nodiscard]] Clue hear_as(const ItemKey& item, model::Side side, const Says& says) const;

  // Completed years on the day of the exam: at least `low` and at most `high`.
  [[nodiscard]] Tri aged(std::int64_t low, std::int64_t high) const;
  [[nodiscard]] Tri child() const;
  // Something is known of the age, and it may be as high.
  [[nodiscard]] bool may_be_from(std::int64_t years) const { return age_ && age_->high >= years; }

  template <class Make>
  [[nodiscard]] Clue once(Known what, model::Side side, const Make& make) const {
    std::optional<Clue>& kept = kept_[static_cast<std::size_t>(what)][static_cast<std::size_t>(side)];
    if (!kept) {
      kept = make();
    }
    return *kept;
  }

 private:
  [[nodiscard]] Clue yes_recorded(const ItemKey& item, model::Side side) const;
  [[nodiscard]] Clue heat_at_least(const ItemKey& item, std::int64_t tenths) const;

  const View& view_;
  std::optional<model::AgeInterval> age_;
  mutable std::list<Reading> motions_;  // those that were asked for
  mutable std::array<std::array<std::optional<Clue>, 3>, known_count> kept_;
};

// What was answered no about pain, by who cannot tell of it for a reason that no finding names (pain_untold_by); in their order.
[[nodiscard]] std::vector<const model::Finding*> untold_noes(const Answers& answers);

}  // namespace limbledger::interpret
