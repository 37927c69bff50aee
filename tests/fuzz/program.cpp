// libFuzzer's door to one target, which the build names.
#include "tests/fuzz/targets.hpp"

#include <cstddef>
#include <cstdint>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  limbledger::fuzz::LIMBLEDGER_FUZZ_TARGET({reinterpret_cast<const char*>(data), size});
  return 0;
}
