#include "core/store/sqlite.hpp"
#include "rpc/program/commands.hpp"

#include <csignal>

#include <sys/prctl.h>
#include <sys/resource.h>
#include <sys/stat.h>

#include <exception>
#include <iostream>

namespace limbledger::rpc {

namespace {

// The sanitizers look into the process from outside, which an undumpable one forbids.
#if defined(__SANITIZE_ADDRESS__)
constexpr bool sanitized = true;
#elif defined(__has_feature)
constexpr bool sanitized = __has_feature(address_sanitizer);
#else
constexpr bool sanitized = false;
#endif

// What is made is the owner's alone, and a crash leaves no memory behind: it would hold keys and people.
void keep_to_ourselves() {
  ::umask(077);
  ::signal(SIGXFSZ, SIG_IGN);  // a file that may not grow is a full disk, and is answered as one
  const rlimit none{0, 0};
  ::setrlimit(RLIMIT_CORE, &none);
  if constexpr (!sanitized) {
    ::prctl(PR_SET_DUMPABLE, 0, 0, 0, 0);
  }
}

[[nodiscard]] ExitCode run(const Options& options) {
  switch (options.command) {
    case Command::new_ledger:
      return make_new_ledger(options);
    case Command::serve:
      return serve(options);
    case Command::token:
      return manage_tokens(options);
    case Command::verify:
      return verify(options);
    case Command::schemas:
      return write_schemas(options);
    case Command::rules:
      return list_rules(options);
    case Command::assess:
      return assess(options);
    case Command::clinic_list:
      return print_list(options);
    case Command::hub:
      return run_hub(options);
    case Command::join:
      return join_clinic(options);
    case Command::exchange:
      return exchange_with_hub(options);
    case Command::parcel_write:
      return write_parcel_file(options);
    case Command::parcel_read:
      return read_parcel_file(options);
  }
  return ExitCode::usage;
}

}  // namespace

}  // namespace limbledger::rpc

int main(int count, char** words) {
  using namespace limbledger::rpc;
  keep_to_ourselves();
  limbledger::store::SqliteStore::count_no_memory();
  int code = 0;
  try {
    const auto options = read_options(count, words, code);
    if (options) {
      code = static_cast<int>(run(*options));
    }
    // What was printed to a full disk or a closed pipe was not printed.
    if (!std::cout.flush()) {
      throw Problem(ExitCode::unavailable, "what was to be printed could not be written\n  what to do: make room, or give it another place to be written to");
    }
    return code;
  } catch (const Problem& problem) {
    std::cerr << "limbledger: " << problem.what() << "\n";
    return static_cast<int>(problem.code());
  } catch (const std::exception&) {
    std::cerr << "limbledger: failed inside\n  what to do: try again; if it stays, report it with the command that you gave\n";
    return static_cast<int>(ExitCode::internal);
  }
}
