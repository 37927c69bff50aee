// What is special about this body, as far as anybody recorded it: the one place that is asked which items do not apply on a side,
// which comparator is not valid, whether tests speak, which no settles nothing, and by which gate a region's rules do not hold. The
// facts stand in data/bodies.json. Any yes opens a state, also one that settles nothing else: it only ever takes claims away.
#pragma once

#include "core/interpret/statement.hpp"
#include "core/interpret/view.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace limbledger::interpret {

struct OpenBody {
  const reference::BodyRow* row = nullptr;
  model::Side side{};  // midline: the person as a whole
  const model::Finding* finding = nullptr;  // what opened it; null: the age
};

class Bodies {
 public:
  explicit Bodies(const View& view);

  [[nodiscard]] const std::vector<OpenBody>& open() const { return open_; }
  // A limb, or a part of one, was taken off: asked at every question of every alert, and in most exams there is none.
  [[nodiscard]] bool any_limb_missing() const { return any_limb_missing_; }
  // Each answers null where nothing special was recorded. A midline item of the person is touched by states of the person alone.
  [[nodiscard]] const OpenBody* not_applicable(const model::Item& item, model::Side side) const;
  [[nodiscard]] const OpenBody* uncompared(const model::Item& item, model::Side side, std::string_view comparator) const;
  [[nodiscard]] const OpenBody* silent(const model::Item& item, model::Side side) const;
  [[nodiscard]] const OpenBody* not_reliable(std::string_view item, model::Side side) const;
  [[nodiscard]] const OpenBody* gate(std::string_view region, model::Side side) const;
  [[nodiscard]] bool cannot(std::string_view what) const;  // lie_prone, stand ...

 private:
  template <class Holds>
  [[nodiscard]] const OpenBody* first(model::Side side, const Holds& holds) const;

  const reference::Edition& edition_;
  std::vector<OpenBody> open_;  // in the order of the rows
  bool any_limb_missing_ = false;
};

// The state's own word: hypermobile, knee_fused; and the short one that messages use: fused, implant, no_limb.
[[nodiscard]] std::string_view state_word(const reference::BodyRow& row);
[[nodiscard]] std::string_view short_word(const reference::BodyRow& row);

// Why an item does not apply on a side, and what opened it.
struct NotApplicable {
  model::WhyNot why{};
  model::MessageId because;
  const model::Finding* finding = nullptr;
};
[[nodiscard]] std::optional<NotApplicable> not_applicable(const View& view, const model::Item& item, model::Side side);

// What each open state changes, said once.
[[nodiscard]] std::vector<Judged> judge_bodies(const View& view);
// Findings that do not fit with such a body, or with the age; recording after consent was refused or taken back.
[[nodiscard]] std::vector<Contradiction> body_contradictions(const View& view);

}  // namespace limbledger::interpret
