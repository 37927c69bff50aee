# The second compiler: everything must build without a warning there too.
set(CMAKE_CXX_COMPILER clang++-14 CACHE STRING "")
set(CMAKE_BUILD_TYPE Debug CACHE STRING "")
set(CMAKE_CXX_FLAGS_DEBUG "-O1" CACHE STRING "")
set(LIMBLEDGER_DEV ON CACHE BOOL "")
