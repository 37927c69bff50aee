# What people run, and what the tests test: -O2 with assertions kept.
# cmake -S . -B build -C .cmake/release.cmake -G Ninja
set(CMAKE_BUILD_TYPE Release CACHE STRING "")
set(CMAKE_CXX_FLAGS_RELEASE "-O2" CACHE STRING "")
set(LIMBLEDGER_DEV ON CACHE BOOL "")
set(LIMBLEDGER_TOGETHER ON CACHE BOOL "")
