# The release build together with the measurements of tests/bench.
include(${CMAKE_CURRENT_LIST_DIR}/release.cmake)
set(LIMBLEDGER_BENCH ON CACHE BOOL "")
