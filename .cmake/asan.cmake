# Memory errors and undefined behaviour: clang's sanitizers, and the first report ends the program.
set(CMAKE_CXX_COMPILER clang++-14 CACHE STRING "")
set(CMAKE_BUILD_TYPE Debug CACHE STRING "")
set(CMAKE_CXX_FLAGS_DEBUG
  "-O1 -g1 -fsanitize=address,undefined -fno-sanitize-recover=all -fno-omit-frame-pointer" CACHE STRING "")
set(LIMBLEDGER_DEV ON CACHE BOOL "")
set(LIMBLEDGER_TOGETHER ON CACHE BOOL "")
set(LIMBLEDGER_BENCH OFF CACHE BOOL "")
