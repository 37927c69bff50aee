// An answer that may be unknown. Unknown is never read as no: whatever is combined with it stays unknown unless the other
// part decides alone.
#pragma once

#include <cstdint>

namespace limbledger::interpret {

enum class Tri : std::uint8_t { no, yes, undetermined };

[[nodiscard]] constexpr Tri not_(Tri a) { return a == Tri::undetermined ? a : (a == Tri::yes ? Tri::no : Tri::yes); }
[[nodiscard]] constexpr Tri or_(Tri a, Tri b) {
  if (a == Tri::yes || b == Tri::yes) {
    return Tri::yes;
  }
  return a == Tri::undetermined || b == Tri::undetermined ? Tri::undetermined : Tri::no;
}
[[nodiscard]] constexpr Tri and_(Tri a, Tri b) {
  if (a == Tri::no || b == Tri::no) {
    return Tri::no;
  }
  return a == Tri::undetermined || b == Tri::undetermined ? Tri::undetermined : Tri::yes;
}
[[nodiscard]] constexpr Tri tri(bool known) { return known ? Tri::yes : Tri::no; }

}  // namespace limbledger::interpret
