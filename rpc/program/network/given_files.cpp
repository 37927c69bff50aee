#include "rpc/program/network/given_files.hpp"

#include "rpc/program/folder.hpp"
#include "rpc/program/problem.hpp"

#include <sys/stat.h>
#include <unistd.h>

namespace limbledger::rpc {

namespace {

constexpr std::size_t token_characters = 43;  // 32 bytes as base64url

// A token and its line end, and nothing else.
[[nodiscard]] bool is_token_file(const std::string& path) {
  const auto text = read_file(path, token_characters + 1);
  return text && text->size() == token_characters + 1 && text->back() == '\n' &&
         text->find_first_not_of("ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_") == token_characters;
}

}  // namespace

GivenFiles::GivenFiles(const std::vector<GivenAtStart>& wanted, Tokens& tokens, ledger::World& world) : tokens_(tokens), world_(world) {
  for (const GivenAtStart& one : wanted) {
    struct stat state {};
    if (::lstat(one.file.c_str(), &state) == 0 && !(S_ISREG(state.st_mode) && is_token_file(one.file))) {
      throw Problem(ExitCode::usage, one.file + ": lies there already and is no token\n  what to do: name a file that is not there");
    }
  }
  for (const GivenAtStart& one : wanted) {
    given_.push_back({one, 0, 0, false});
    make(given_.back());
  }
}

GivenFiles::~GivenFiles() {
  for (const Given& one : given_) {
    if (one.there) {
      ::unlink(one.wanted.file.c_str());
    }
  }
}

void GivenFiles::make(Given& one) {
  const MadeToken made = tokens_.make({one.wanted.scope, std::nullopt});
  write_file(one.wanted.file, made.text + "\n");
  one.number = made.number;
  one.made_up_ms = world_.now().up_ms;
  one.there = true;
}

void GivenFiles::ended(std::uint64_t number) {
  for (Given& one : given_) {
    if (one.there && one.number == number) {
      ::unlink(one.wanted.file.c_str());
      one.there = false;
    }
  }
}

bool GivenFiles::renew() {
  bool good = true;
  for (Given& one : given_) {
    if (one.there && world_.now().up_ms - one.made_up_ms > token_ms / 2) {
      try {
        make(one);
      } catch (const Problem&) {
        good = false;
      }
    }
  }
  return good;
}

}  // namespace limbledger::rpc
