#include "core/interpret/rules/points.hpp"

#include <vector>

namespace limbledger::interpret {

namespace {

constexpr std::uint8_t points_classes = 8;
constexpr int points_offset = 16;
constexpr int points_bits = 64;

// Which sums can come out: bit (sum + offset).
using PointSums = std::uint64_t;

[[nodiscard]] bool may(Classes classes, std::uint8_t one) { return (classes >> one & 1U) != 0; }

[[nodiscard]] PointSums moved(PointSums sums, std::int64_t by) { return by >= 0 ? sums << by : sums >> -by; }

// Of all inputs behind the gates but `without`.
[[nodiscard]] PointSums point_sums_of(std::span<const Classes> may_be, const PointsDecision& decision, std::size_t without) {
  PointSums sums = PointSums{1} << points_offset;
  for (std::size_t i = decision.gates; i < may_be.size(); ++i) {
    if (i == without) {
      continue;
    }
    PointSums next = 0;
    for (std::uint8_t one = 0; one < points_classes; ++one) {
      next |= may(may_be[i], one) ? moved(sums, decision.points(i, one)) : 0;
    }
    sums = next;
  }
  return sums;
}

[[nodiscard]] std::vector<std::vector<std::uint8_t>> point_gates_of(std::span<const Classes> may_be, std::size_t gates) {
  std::vector<std::vector<std::uint8_t>> all{{}};
  for (std::size_t i = 0; i < gates; ++i) {
    std::vector<std::vector<std::uint8_t>> next;
    for (const std::vector<std::uint8_t>& so_far : all) {
      for (std::uint8_t one = 0; one < points_classes; ++one) {
        if (may(may_be[i], one)) {
          next.push_back(so_far);
          next.back().push_back(one);
        }
      }
    }
    all = std::move(next);
  }
  return all;
}

// The answers of every sum, joined: nothing yet, one, or open.
class JoinedPoints {
 public:
  void add(const SheetAnswer& answer) {
    if (!first_) {
      first_ = answer;
    } else if (!first_->same_as(answer)) {
      differ_ = true;
    }
  }
  [[nodiscard]] bool differ() const { return differ_; }
  [[nodiscard]] std::optional<SheetAnswer> answer() const { return differ_ ? std::optional(SheetAnswer{}) : first_; }

 private:
  std::optional<SheetAnswer> first_;
  bool differ_ = false;
};

void add_point_sums(JoinedPoints& joined, PointSums sums, const std::optional<SheetAnswer>& gate, const PointsDecision& decision) {
  for (int bit = 0; bit < points_bits; ++bit) {
    if ((sums >> bit & 1U) != 0) {
      joined.add(gate ? *gate : decision.band(bit - points_offset));
    }
  }
}

}  // namespace

SheetAnswer decide_points(std::span<const std::uint8_t> classes, const PointsDecision& decision) {
  std::int64_t points = 0;
  for (std::size_t i = decision.gates; i < classes.size(); ++i) {
    points += decision.points(i, classes[i]);
  }
  SheetAnswer answer = decision.gate(classes.first(decision.gates)).value_or(decision.band(points));
  answer.points = points;
  return answer;
}

SheetCompleted complete_points(std::span<const Classes> may_be, const PointsDecision& decision) {
  SheetCompleted completed;
  completed.settles.resize(may_be.size());
  completed.gives.assign(may_be.size(), std::vector<std::optional<SheetAnswer>>(points_classes));
  const auto gates = point_gates_of(may_be, decision.gates);
  const PointSums sums = point_sums_of(may_be, decision, may_be.size());
  if (sums == 0 || gates.empty()) {
    return completed;
  }
  std::vector<std::optional<SheetAnswer>> gated;
  JoinedPoints all;
  for (const auto& one : gates) {
    gated.push_back(decision.gate(one));
    add_point_sums(all, sums, gated.back(), decision);
  }
  completed.answer = *all.answer();
  int low = 0;
  while ((sums >> low & 1U) == 0) {
    ++low;
  }
  int high = points_bits - 1;
  while ((sums >> high & 1U) == 0) {
    --high;
  }
  completed.answer.points = low - points_offset;
  completed.points_most = high - points_offset;
  for (std::size_t i = 0; i < may_be.size(); ++i) {
    const bool is_gate = i < decision.gates;
    const PointSums others = is_gate ? sums : point_sums_of(may_be, decision, i);
    for (std::uint8_t one = 0; one < points_classes; ++one) {
      if (!may(may_be[i], one)) {
        continue;
      }
      JoinedPoints given;
      for (std::size_t g = 0; g < gates.size(); ++g) {
        if (!is_gate || gates[g][i] == one) {
          add_point_sums(given, is_gate ? others : moved(others, decision.points(i, one)), gated[g], decision);
        }
      }
      completed.gives[i][one] = given.answer();
    }
    // Some completion of the others leaves it to this one.
    for (std::size_t g = 0; g < gates.size() && !completed.settles[i]; ++g) {
      for (int bit = 0; bit < points_bits && !completed.settles[i]; ++bit) {
        if ((others >> bit & 1U) == 0) {
          continue;
        }
        JoinedPoints by_class;
        for (std::uint8_t one = 0; one < points_classes; ++one) {
          if (!may(may_be[i], one)) {
            continue;
          }
          if (!is_gate) {
            by_class.add(gated[g] ? *gated[g] : decision.band(bit - points_offset + decision.points(i, one)));
            continue;
          }
          std::vector<std::uint8_t> other = gates[g];
          other[i] = one;
          by_class.add(decision.gate(other).value_or(decision.band(bit - points_offset)));
        }
        completed.settles[i] = by_class.differ();
      }
    }
  }
  return completed;
}

}  // namespace limbledger::interpret
