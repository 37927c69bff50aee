// What speaks for or against one danger, in three values: yes and no rest on recorded answers alone. While it is open it carries
// what would have to be asked, what already points to it, and what was asked and could not be answered. Source: red flags page,
// section 0.
#pragma once

#include "core/interpret/trail.hpp"
#include "core/interpret/tri.hpp"

#include <initializer_list>

namespace limbledger::interpret {

struct Clue {
  Tri value = Tri::undetermined;
  bool hinted = false;   // a yes that settles nothing (kiosk, carried over) points to it
  FindingTrail because;  // what says yes; also the parts that do while the whole is open
  FindingTrail against;  // what says no
  FindingTrail quiet;    // what counts and points to nothing; named once it is raised
  FindingTrail open;     // recorded, and no answer: refused, not sure, reported by the person alone
  AskTrail ask;          // what is not recorded, or only reported

  [[nodiscard]] bool is_yes() const { return value == Tri::yes; }
  [[nodiscard]] bool is_no() const { return value == Tri::no; }
  // Something already points to it.
  [[nodiscard]] bool warm() const { return !because.empty() || hinted; }
};

// Known without a finding: an age, a complaint.
[[nodiscard]] Clue fact(Tri value);
[[nodiscard]] inline Clue fact(bool known) { return fact(tri(known)); }
[[nodiscard]] Clue either(std::initializer_list<Clue> clues);
[[nodiscard]] Clue every(std::initializer_list<Clue> clues);
[[nodiscard]] Clue negate(Clue clue);
// Yes if any says yes, by all that do; else what the first says. Only the first is asked after.
[[nodiscard]] Clue led_by(const Clue& lead, std::initializer_list<Clue> others);
// Counts and is named once it is raised, but neither points to the danger nor is asked after, nor is its no an answer about the sign: an injury, a gait nobody
// looked at.
[[nodiscard]] Clue circumstance(Clue clue);
// Counts, points and is asked after; its no is no answer about the sign: a fever, a pregnancy, how long it has been.
[[nodiscard]] Clue bare_no(Clue clue);
// Counts and points, but is not asked after.
[[nodiscard]] Clue unasked(Clue clue);

}  // namespace limbledger::interpret
