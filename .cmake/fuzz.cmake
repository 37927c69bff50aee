# Bytes that nobody wrote: the programs of tests/fuzz (clang's libFuzzer) under its sanitizers; `tests/fuzz/run` uses them.
# cmake -S . -B build/fuzz -C .cmake/fuzz.cmake -G Ninja && cmake --build build/fuzz --target fuzz
set(CMAKE_CXX_COMPILER clang++-14 CACHE STRING "")
set(CMAKE_BUILD_TYPE Debug CACHE STRING "")
set(CMAKE_CXX_FLAGS_DEBUG
  "-O1 -g1 -fsanitize=fuzzer-no-link,address,undefined -fno-sanitize-recover=all -fno-omit-frame-pointer" CACHE STRING "")
set(LIMBLEDGER_DEV ON CACHE BOOL "")
set(LIMBLEDGER_TESTS OFF CACHE BOOL "")
set(LIMBLEDGER_BENCH OFF CACHE BOOL "")
set(LIMBLEDGER_FUZZ ON CACHE BOOL "")
set(LIMBLEDGER_TOGETHER ON CACHE BOOL "")
