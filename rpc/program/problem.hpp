// What ends a command early, in plain words: what is wrong, where, what to do; and the exit code that says it to a script.
// Exit codes: contract, section 10. Thrown inside rpc/program only, and printed by main.
#pragma once

#include "core/wire/fault.hpp"

#include <exception>
#include <string>
#include <string_view>
#include <utility>

namespace limbledger::rpc {

enum class ExitCode : std::uint8_t {
  done = 0,
  bad_answer = 1,   // done, and the answer is bad: damage, a faulty file
  usage = 2,
  locked = 3,       // locked, or a wrong passphrase
  unavailable = 4,  // in use, read only, the disk
  internal = 5,
};

class Problem : public std::exception {
 public:
  Problem(ExitCode code, std::string text) : code_(code), text_(std::move(text)) {}
  [[nodiscard]] const char* what() const noexcept override { return text_.c_str(); }
  [[nodiscard]] ExitCode code() const { return code_; }

 private:
  ExitCode code_;
  std::string text_;
};

// A refusal of the core, said of a file or folder.
[[nodiscard]] Problem problem_of(const wire::Refusal& refusal, std::string_view where);

}  // namespace limbledger::rpc
