// libFuzzer's door to one target, which the build names.
#include "tests/fuzz/targets.hpp"

#include <cstddef>
#include <cstdint>

extern "C" int LLVMFuzzerInitialize(int* count, char*** words);
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);

// What is made once takes seconds under the sanitizers and is no input that hangs.
extern "C" int LLVMFuzzerInitialize(int* /*count*/, char*** /*words*/) {
  limbledger::fuzz::LIMBLEDGER_FUZZ_TARGET("");
  return 0;
}

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  limbledger::fuzz::LIMBLEDGER_FUZZ_TARGET({reinterpret_cast<const char*>(data), size});
  return 0;
}
