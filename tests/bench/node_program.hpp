// A script of Node beside the measurement, which answers a line with a line and ends with its input.
#pragma once

#include "tests/bench/bench.hpp"

#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <functional>
#include <string>
#include <vector>

namespace limbledger::bench {

class NodeProgram {
 public:
  // `first` runs in the new process, before Node.
  explicit NodeProgram(std::vector<std::string> arguments, const std::function<void()>& first = [] {}) {
    std::array<int, 2> in{};
    std::array<int, 2> out{};
    if (::pipe(in.data()) != 0 || ::pipe(out.data()) != 0) {
      fail("pipe");
    }
    arguments.insert(arguments.begin(), "node");
    child_ = ::fork();
    if (child_ == 0) {
      ::dup2(in[0], 0);
      ::dup2(out[1], 1);
      for (const int end : {in[0], in[1], out[0], out[1]}) {
        ::close(end);
      }
      first();
      std::vector<char*> words;
      for (std::string& argument : arguments) {
        words.push_back(argument.data());
      }
      words.push_back(nullptr);
      ::execvp("node", words.data());
      std::perror("node");
      ::_exit(127);
    }
    ::close(in[0]);
    ::close(out[1]);
    to_ = in[1];
    from_ = out[0];
  }
  ~NodeProgram() {
    ::close(to_);
    ::close(from_);
    ::waitpid(child_, nullptr, 0);
  }
  NodeProgram(const NodeProgram&) = delete;
  NodeProgram& operator=(const NodeProgram&) = delete;

  [[nodiscard]] pid_t process() const { return child_; }
  [[nodiscard]] std::string next_line() {
    std::string line;
    for (char c = 0; c != '\n'; line += c) {
      if (::read(from_, &c, 1) != 1) {
        fail("a script of Node ended");
      }
    }
    return line;
  }
  void tell(const std::string& line) {
    const std::string whole = line + "\n";
    if (::write(to_, whole.data(), whole.size()) != static_cast<ssize_t>(whole.size())) {
      fail("a script of Node takes nothing");
    }
  }
  [[nodiscard]] std::string ask(const std::string& line) {
    tell(line);
    return next_line();
  }

 private:
  [[noreturn]] static void fail(const char* what) {
    std::perror(what);
    std::exit(1);
  }

  pid_t child_ = 0;
  int to_ = -1;
  int from_ = -1;
};

}  // namespace limbledger::bench
