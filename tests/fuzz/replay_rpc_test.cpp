// What the fuzzing programs kept, and every input that ever broke something, once more in every build: nothing crashes, nothing
// leaks, and what must hold of every input holds (a violation ends the process).
#include "tests/fuzz/targets.hpp"

#include <doctest/doctest.h>

#include <fstream>
#include <string>
#include <vector>

namespace limbledger::fuzz {

namespace {

int digit_of(char c) { return c <= '9' ? c - '0' : c - 'a' + 10; }

// As tests/fuzz/keep.py writes them.
std::vector<std::string> kept_inputs(const std::string& name) {
  std::ifstream file(std::string(LIMBLEDGER_SOURCE_DIR) + "/tests/fuzz/corpus/" + name, std::ios::binary);
  std::vector<std::string> out;
  for (std::string line; std::getline(file, line);) {
    std::string bytes;
    for (std::size_t i = 0; i < line.size(); ++i) {
      if (line[i] != '\\') {
        bytes += line[i];
      } else if (line.at(i + 1) == '\\') {
        bytes += line[++i];
      } else {
        bytes += static_cast<char>(digit_of(line.at(i + 2)) * 16 + digit_of(line.at(i + 3)));
        i += 3;
      }
    }
    out.push_back(std::move(bytes));
  }
  return out;
}

}  // namespace

TEST_CASE("every kept input of the fuzzing programs is answered, refused or passed over, and what must hold of it holds") {
  for (const Target& target : targets()) {
    const std::string name(target.name);
    CAPTURE(name);
    const auto inputs = kept_inputs(name);
    CHECK(inputs.size() >= 20);
    for (const std::string& input : inputs) {
      target.run(input);
    }
  }
}

TEST_CASE("a kept input comes back as the bytes it was written from") {
  const auto frames_kept = kept_inputs("frames");
  bool has_line_end = false;
  for (const std::string& input : frames_kept) {
    has_line_end = has_line_end || input.find('\n') != std::string::npos;
  }
  CHECK(has_line_end);
}

}  // namespace limbledger::fuzz
