// An edition that is at hand, or the built-in one, which is read when somebody first asks for it: a program that starts locked
// answers before that. Used like a pointer; of the built-in one null only where the library itself was built wrong.
#pragma once

#include "core/model/ids.hpp"

namespace limbledger::reference {

class Edition;

class EditionRef {
 public:
  EditionRef() = default;
  EditionRef(const Edition* edition) : held_(edition) {}  // NOLINT: taken wherever an edition is
  EditionRef(const Edition& edition) : held_(&edition) {}  // NOLINT
  [[nodiscard]] static EditionRef built_in() {
    EditionRef later;
    later.later_ = true;
    return later;
  }

  [[nodiscard]] const Edition* get() const;
  [[nodiscard]] const Edition* operator->() const { return get(); }
  operator const Edition*() const { return get(); }  // NOLINT
  // Known without reading the rest.
  [[nodiscard]] model::EditionId id() const;

 private:
  mutable const Edition* held_ = nullptr;
  bool later_ = false;
};

}  // namespace limbledger::reference
