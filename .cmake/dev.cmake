# For daily work: quick to build, with debug lines and every program and test.
# cmake -S . -B build/dev -C .cmake/dev.cmake -G Ninja
set(CMAKE_BUILD_TYPE Debug CACHE STRING "")
set(CMAKE_CXX_FLAGS_DEBUG "-O1 -g1" CACHE STRING "")
set(LIMBLEDGER_DEV ON CACHE BOOL "")
