// What the system itself says of locked memory (proc(5): VmLck in /proc/self/status), and what happens without it.
#include "tests/unit/ledger/support.hpp"

#include "core/ledger/keys/secret.hpp"

#include <doctest/doctest.h>

#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <fstream>
#include <memory>

using namespace limbledger::ledger;
using namespace limbledger::ledger::test;

namespace {

long locked_kib() {
  std::ifstream status("/proc/self/status");
  for (std::string line; std::getline(status, line);) {
    if (line.starts_with("VmLck:")) {
      return std::stol(line.substr(6));
    }
  }
  return -1;
}

// The sanitizers answer mlock themselves, and an emulator's own memory is counted in.
bool system_locks() {
  rlimit room{};
  ::getrlimit(RLIMIT_MEMLOCK, &room);
#if defined(__SANITIZE_ADDRESS__)
  return false;
#elif defined(__has_feature)
  if constexpr (__has_feature(address_sanitizer)) {
    return false;
  }
#endif
  return room.rlim_cur >= 64 * 1024 && locked_kib() >= 0;
}

}  // namespace

TEST_CASE("a locked secret is held in memory that does not go to the swap space, and is let go with it") {
  const long before = locked_kib();
  auto secret = std::make_unique<LockedSecret32>(secret_of(7));
  if (system_locks()) {
    CHECK(locked_kib() > before);
  }
  CHECK(*secret == LockedSecret32(secret_of(7)));
  LockedSecret32 copy(*secret);
  copy.room()[0] ^= 1U;
  CHECK_FALSE(copy == *secret);  // a secret of its own
  secret.reset();
  copy = LockedSecret32(secret_of(8));
  CHECK(copy == LockedSecret32(secret_of(8)));
}

TEST_CASE("where nothing may be locked the secret is kept all the same") {
  const pid_t child = ::fork();
  if (child == 0) {
    const rlimit none{0, 0};
    ::setrlimit(RLIMIT_MEMLOCK, &none);
    if (::geteuid() == 0 && ::setresuid(65534, 65534, 65534) != 0) {
      ::_exit(2);
    }
    const LockedSecret32 secret(secret_of(7));
    ::_exit(secret == LockedSecret32(secret_of(7)) ? 0 : 1);
  }
  int status = 0;
  ::waitpid(child, &status, 0);
  CHECK(WIFEXITED(status));
  CHECK(WEXITSTATUS(status) == 0);
}
