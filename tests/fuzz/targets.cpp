#include "tests/fuzz/targets.hpp"

#include <array>
#include <cstdlib>
#include <iostream>

namespace limbledger::fuzz {

std::span<const Target> targets() {
  static constexpr std::array table{
      Target{"request", &request}, Target{"finding", &finding}, Target{"entry", &entry},
      Target{"frames", &frames},   Target{"network", &network},
  };
  return table;
}

void broken(std::string_view what) {
  std::cerr << "does not hold: " << what << std::endl;
  std::abort();
}

}  // namespace limbledger::fuzz
