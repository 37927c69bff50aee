// Degrees and millimetres are counts of different things.
// refused with: no match for
#include "core/model/quantity.hpp"

namespace limbledger::model {

Degrees range(Degrees flexion, [[maybe_unused]] Millimetres circumference) {
#ifdef WRONG
  return flexion - circumference;
#else
  return flexion - Degrees{100};
#endif
}

}  // namespace limbledger::model
