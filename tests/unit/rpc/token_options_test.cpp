// The command line of tokens: what is given at the start and what the command token takes, and that no token itself can be
// given there. Files of tokens: for the owner alone, taken away with their token, never in place of another file.
#include "rpc/program/network/given_files.hpp"
#include "rpc/program/folder.hpp"
#include "rpc/program/options.hpp"
#include "rpc/program/problem.hpp"
#include "tests/unit/rpc/scratch.hpp"
#include "tests/unit/service/desk_fixture.hpp"

#include <sys/stat.h>

#include <array>
#include <iostream>
#include <sstream>

namespace limbledger::rpc {

namespace {

using service::Scope;

std::optional<Options> token_options(std::vector<const char*> words) {
  words.insert(words.begin(), "limbledger");
  std::ostringstream nowhere;
  auto* out = std::cout.rdbuf(nowhere.rdbuf());
  auto* err = std::cerr.rdbuf(nowhere.rdbuf());
  int code = 0;
  auto options = read_options(static_cast<int>(words.size()), words.data(), code);
  std::cout.rdbuf(out);
  std::cerr.rdbuf(err);
  CHECK((options.has_value() || code == 2));
  return options;
}

int given_problem(const std::vector<GivenAtStart>& wanted, Tokens& tokens, ledger::World& world) {
  try {
    const GivenFiles files(wanted, tokens, world);
  } catch (const Problem& problem) {
    return static_cast<int>(problem.code());
  }
  return 0;
}

}  // namespace

TEST_CASE("a word that is no command is named, with the command that it may have been") {
  const auto told = [](const char* word) {
    const std::array<const char*, 2> words{"limbledger", word};
    std::ostringstream said;
    auto* err = std::cerr.rdbuf(said.rdbuf());
    int code = 0;
    CHECK_FALSE(read_options(2, words.data(), code).has_value());
    std::cerr.rdbuf(err);
    CHECK(code == 2);
    return said.str();
  };
  CHECK(told("serv") == "limbledger: serv is no command; perhaps serve\n  what to do: limbledger --help lists them\n");
  CHECK(told("elsewhere").find("elsewhere is no command\n") != std::string::npos);
  CHECK(told("--elsewhere").find("is no command") == std::string::npos);
}

TEST_CASE("tokens are given at the start each into a file, and made, listed and ended by a command; wrong words are refused") {
  const auto served = token_options({"serve", "--http", "0", "--give", "viewer=/x/v", "--give", "kiosk=/x/k=1"});
  REQUIRE(served.has_value());
  REQUIRE(served->give.size() == 2);
  CHECK((served->give[0].scope == Scope::viewer && served->give[0].file == "/x/v"));
  CHECK((served->give[1].scope == Scope::kiosk && served->give[1].file == "/x/k=1"));
  const auto made = token_options({"token", "make", "--ledger", "/l", "--scope", "kiosk", "--exam", "e", "--minutes", "30", "--label", "hall", "--once"});
  REQUIRE(made.has_value());
  CHECK((made->command == Command::token && made->deed == TokenDeed::make && made->scope == Scope::kiosk && made->exam == "e" && made->minutes == 30 && made->once));
  CHECK(token_options({"token", "list", "--ledger", "/l"})->deed == TokenDeed::list);
  CHECK(token_options({"token", "end", "3", "--ledger", "/l"})->number == 3);
  for (const auto& wrong : std::vector<std::vector<const char*>>{{"serve", "--http", "0", "--give", "viewer"},
                                                                  {"serve", "--http", "0", "--give", "nobody=/x"},
                                                                  {"serve", "--http", "0", "--give", "viewer="},
                                                                  {"serve", "--stdio", "lines", "--give", "viewer=/x"},
                                                                  {"token"},
                                                                  {"token", "make", "--once"},
                                                                  {"token", "make", "--scope", "viewer"},
                                                                  {"token", "make", "--scope", "viewer", "--once", "--to", "/x"},
                                                                  {"token", "make", "--scope", "viewer", "--once", "--minutes", "1441"},
                                                                  {"token", "end"},
                                                                  {"token", "end", "x"},
                                                                  {"token", "list", "--token", "x"},
                                                                  {"serve", "--http", "0", "--token", "x"}}) {
    CHECK_FALSE(token_options(wrong).has_value());
  }
}

TEST_CASE("a token given at the start is the owner's alone, is made anew in time, and goes with its token or at a clean stop") {
  const Scratch scratch;
  service::test::FixedWorld world;
  Tokens tokens(world);
  const std::string file = scratch.path("viewer");
  {
    GivenFiles files({{Scope::viewer, file}, {Scope::sync, scratch.path("sync")}}, tokens, world);
    const std::string first = read_file(file, 100).value_or("");
    struct stat state {};
    REQUIRE(::stat(file.c_str(), &state) == 0);
    CHECK((state.st_mode & 0777) == 0600);
    REQUIRE(first.size() == 44);
    const auto grant = tokens.find(first.substr(0, 43));
    REQUIRE(grant.has_value());
    CHECK(grant->caller.scope == Scope::viewer);
    CHECK(files.renew());
    CHECK(read_file(file, 100) == first);
    world.pass(token_ms / 2 + 1);
    CHECK(files.renew());
    const std::string second = read_file(file, 100).value_or("");
    CHECK(second.size() == 44);
    CHECK_FALSE(second == first);
    CHECK(tokens.find(first.substr(0, 43)).has_value());  // for whoever has read it already
    files.ended(tokens.find(second.substr(0, 43))->number);
    CHECK_FALSE(std::filesystem::exists(file));
    world.pass(token_ms);
    CHECK(files.renew());
    CHECK_FALSE(std::filesystem::exists(file));  // what was ended is not given again
    CHECK(std::filesystem::exists(scratch.path("sync")));
  }
  CHECK(std::filesystem::is_empty(scratch.path()));
  write_file(scratch.path("keyring"), "something else");
  std::filesystem::create_symlink(scratch.path("keyring"), scratch.path("link"));
  CHECK(given_problem({{Scope::viewer, scratch.path("keyring")}}, tokens, world) == 2);
  CHECK(given_problem({{Scope::viewer, scratch.path("link")}}, tokens, world) == 2);
  CHECK(given_problem({{Scope::viewer, scratch.path("none/there")}}, tokens, world) == 4);
  CHECK(read_file(scratch.path("keyring"), 100) == "something else");
  write_file(scratch.path("left"), std::string(43, 'A') + "\n");  // by a crash
  CHECK(given_problem({{Scope::viewer, scratch.path("left")}}, tokens, world) == 0);
}

}  // namespace limbledger::rpc
