#include "core/interpret/alerts/clue.hpp"

#include <utility>

namespace limbledger::interpret {

namespace {

void join_open(Clue& to, const Clue& from) {
  to.ask.add(from.ask);
  to.open.add(from.open);
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
  if (out.is_no()) {
    for (const Clue& clue : clues) {
      out.against.add(clue.against);
    }
    return out;
  }
  for (const Clue& clue : clues) {
    if (clue.value == out.value) {
      out.because.add(clue.because);
      out.quiet.add(clue.quiet);
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
  if (out.is_no()) {
    for (const Clue& clue : clues) {
      if (clue.is_no()) {
        out.against.add(clue.against);
      }
    }
    return out;
  }
  for (const Clue& clue : clues) {
    out.because.add(clue.because);
    out.quiet.add(clue.quiet);
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
  for (const Clue& other : others) {
    if (other.is_yes()) {
      out = out.is_yes() ? out : fact(Tri::yes);
      out.because.add(other.because);
      out.quiet.add(other.quiet);
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
  if (clue.is_yes()) {
    clue.quiet.add(clue.because);
  }
  clue.because.clear();
  clue.against.clear();
  clue.ask.clear();
  clue.hinted = false;
  return clue;
}

Clue bare_no(Clue clue) {
  clue.against.clear();
  return clue;
}

Clue unasked(Clue clue) {
  clue.ask.clear();
  return clue;
}

}  // namespace limbledger::interpret
