#include "core/interpret/alerts/clue.hpp"

#include <algorithm>

namespace limbledger::interpret {

namespace {

template <class T>
void join(std::vector<T>& to, const std::vector<T>& from) {
  for (const T& one : from) {
    const bool known = std::any_of(to.begin(), to.end(), [&](const T& held) {
      if constexpr (std::is_same_v<T, Ask>) {
        return held.item == one.item && held.side == one.side;
      } else {
        return held == one;
      }
    });
    if (!known) {
      to.push_back(one);
    }
  }
}

void join_open(Clue& to, const Clue& from) {
  join(to.ask, from.ask);
  join(to.open, from.open);
  to.hinted = to.hinted || from.hinted;
}

}  // namespace

Clue fact(Tri value) {
  Clue clue;
  clue.value = value;
  return clue;
}

Clue either(std::initializer_list<Clue> clues) {
  Clue out = fact(Tri::no);
  for (const Clue& clue : clues) {
    out.value = or_(out.value, clue.value);
  }
  for (const Clue& clue : clues) {
    if (out.is_no()) {
      join(out.against, clue.against);
    } else if (clue.value == out.value) {
      join(out.because, clue.because);
      if (out.value == Tri::undetermined) {
        join_open(out, clue);
      }
    }
  }
  return out;
}

Clue every(std::initializer_list<Clue> clues) {
  Clue out = fact(Tri::yes);
  for (const Clue& clue : clues) {
    out.value = and_(out.value, clue.value);
  }
  for (const Clue& clue : clues) {
    if (out.is_no()) {
      if (clue.is_no()) {
        join(out.against, clue.against);
      }
      continue;
    }
    join(out.because, clue.because);
    if (clue.value == Tri::undetermined) {
      join_open(out, clue);
    }
  }
  return out;
}

Clue negate(Clue clue) {
  clue.value = not_(clue.value);
  if (clue.value != Tri::undetermined) {
    std::swap(clue.because, clue.against);
  }
  clue.hinted = false;
  return clue;
}

Clue led_by(const Clue& lead, std::initializer_list<Clue> others) {
  Clue out = lead;
  if (!lead.is_yes()) {
    for (const Clue& other : others) {
      if (other.is_yes()) {
        out = out.is_yes() ? out : fact(Tri::yes);
        join(out.because, other.because);
      }
    }
  }
  if (out.value == Tri::undetermined) {
    for (const Clue& other : others) {
      out.hinted = out.hinted || other.hinted;
    }
  }
  return out;
}

Clue circumstance(Clue clue) {
  clue.because.clear();
  clue.against.clear();
  clue.ask.clear();
  clue.hinted = false;
  return clue;
}

Clue unasked(Clue clue) {
  clue.ask.clear();
  return clue;
}

}  // namespace limbledger::interpret
