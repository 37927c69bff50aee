#include "tests/unit/house_rules.hpp"

#include <doctest/doctest.h>

#include <string>
#include <vector>

namespace {

using namespace limbledger::house;

// All that a rule finds in the tree, one line each, so that a failing check names the places.
template <class Rule>
std::string all(const std::vector<std::string>& folders, Rule rule) {
  std::string lines;
  for (const Source& source : read_tree(folders)) {
    for (const std::string& complaint : rule(source)) {
      lines += complaint + "\n";
    }
  }
  return lines;
}

template <class Rule>
std::size_t fires(Rule rule, std::string path, std::string text) {
  return rule(make_source(std::move(path), std::move(text))).size();
}

}  // namespace

TEST_CASE("each folder includes only what stands below it") {
  CHECK(all({"core", "rpc"}, wrong_includes) == "");
}

TEST_CASE("the include rule fires on planted edges") {
  CHECK(fires(wrong_includes, "core/wire/a.cpp", "#include \"core/model/ids.hpp\"\n") == 1);
  CHECK(fires(wrong_includes, "core/ledger/a.cpp", "#include \"core/interpret/assess.hpp\"\n") == 1);
  CHECK(fires(wrong_includes, "core/interpret/a.cpp", "#include \"core/ledger/fold/fold.hpp\"\n") == 1);
  CHECK(fires(wrong_includes, "core/store/a.cpp", "#include \"core/ledger/fold/fold.hpp\"\n") == 1);
  CHECK(fires(wrong_includes, "core/service/a.cpp", "#include \"rpc/emit/files.hpp\"\n") == 1);
  CHECK(fires(wrong_includes, "rpc/protocol/a.cpp", "#include \"core/store/sqlite.hpp\"\n") == 1);
  CHECK(fires(wrong_includes, "core/wire/write.cpp", "#include <simdjson.h>\n") == 1);
  CHECK(fires(wrong_includes, "core/model/a.cpp", "#include <sodium.h>\n") == 1);
  CHECK(fires(wrong_includes, "core/model/a.cpp", "#include <iostream>\n#include <chrono>\n") == 2);
  CHECK(fires(wrong_includes, "core/model/a.cpp", "#include \"ids.hpp\"\n") == 1);
  CHECK(fires(wrong_includes, "core/drawer/a.cpp", "#include <string>\n") == 1);
  CHECK(fires(wrong_includes, "core/service/a.cpp", "#include \"core/ledger/fold/fold.hpp\"\n#include <string>\n") == 0);
  CHECK(fires(wrong_includes, "rpc/program/serve.cpp", "#include \"core/store/sqlite.hpp\"\n#include <spdlog/spdlog.h>\n") == 0);
}

TEST_CASE("core asks the world for nothing and never prints") {
  CHECK(all({"core"}, banned_calls) == "");
}

TEST_CASE("the rule on calls fires on each planted call, and not in comments or texts") {
  for (const char* bad : {"std::chrono::system_clock::now();", "auto t = time(nullptr);", "std::random_device d;", "int r = rand();",
                          "std::hash<int> h;", "std::unordered_map<int, int> m;", "std::cout << 1;", "printf(\"x\");", "std::getenv(\"X\");",
                          "std::locale l;", "long double d = 0;", "result.value();", "std::uniform_int_distribution<int> d;",
                          "throw 1;", "std::chrono::steady_clock::now();", "std::cerr << 1;"}) {
    INFO(bad);
    CHECK(fires(banned_calls, "core/model/a.cpp", std::string(bad) + "\n") >= 1);
  }
  CHECK(fires(banned_calls, "core/model/a.cpp", "// rand() and time( are banned\nauto s = \"std::cout\"; /* printf */\n") == 0);
  CHECK(fires(banned_calls, "core/model/a.cpp", "auto s = R\"(getenv)\"; entry.time(); along = 1'000;\n") == 0);
  CHECK(fires(banned_calls, "rpc/program/a.cpp", "std::cout << 1;\n") == 0);
}

TEST_CASE("no source is over 500 lines and no folder holds more than 24") {
  CHECK(all({"core", "rpc", "tests", "examples"}, too_long) == "");
  std::string crowded;
  for (const std::string& complaint : crowded_folders(read_tree({"core", "rpc", "tests"}))) {
    crowded += complaint + "\n";
  }
  CHECK(crowded == "");
}

TEST_CASE("the rules on size fire") {
  CHECK(fires(too_long, "core/model/a.cpp", std::string(501, '\n')) == 1);
  CHECK(fires(too_long, "core/model/a.cpp", std::string(500, '\n')) == 0);
  std::vector<Source> many;
  for (int i = 0; i < 25; ++i) {
    many.push_back(make_source("core/model/a" + std::to_string(i) + ".cpp", ""));
  }
  CHECK(crowded_folders(many).size() == 1);
}

TEST_CASE("no two headers give one name to two types") {
  std::string twice;
  for (const std::string& complaint : twice_named(read_tree({"core", "rpc", "tests"}))) {
    twice += complaint + "\n";
  }
  CHECK(twice == "");
  const std::string writer = "namespace limbledger::ledger {\nstruct Writer {};\n}\n";
  CHECK(twice_named({make_source("a.hpp", writer), make_source("b.hpp", writer)}).size() == 1);
  CHECK(twice_named({make_source("a.hpp", writer), make_source("b.hpp", "namespace limbledger::store {\nclass Writer {};\n}\n")}).empty());
}

TEST_CASE("nothing is left unfinished and nothing speaks of another place") {
  CHECK(all({"core", "rpc", "examples", "schemas"}, unfinished_words) == "");
  CHECK(all({"core", "rpc", "tests", "examples", "schemas", ".ci", ".cmake"}, foreign_words) == "");
}

TEST_CASE("the rules on words fire") {
  CHECK(fires(unfinished_words, "core/a.cpp", "// TO" "DO: more\n") == 1);
  CHECK(fires(unfinished_words, "core/a.cpp", "// a place" "holder\n") == 1);
  CHECK(fires(unfinished_words, "core/a.cpp", "// stubborn people\n") == 0);
  CHECK(fires(foreign_words, "core/a.cpp", "// see .." "/shared/x\n") == 1);
}

TEST_CASE("each header opens by saying what it is for") {
  CHECK(all({"core", "rpc"}, no_opening) == "");
  CHECK(fires(no_opening, "core/model/a.hpp", "#pragma once\n") == 1);
}

TEST_CASE("the namespace is the folder") {
  CHECK(all({"core", "rpc"}, wrong_namespace) == "");
  CHECK(fires(wrong_namespace, "core/model/a.hpp", "namespace limbledger::wire {}\n") == 1);
}

TEST_CASE("each fault that is raised stands in the table of codes") {
  CHECK(all({"core", "rpc"}, unknown_fault_codes) == "");
  CHECK(fires(unknown_fault_codes, "core/model/a.cpp", "return Fault(\"value.strange\", path);\n") == 1);
  CHECK(fires(unknown_fault_codes, "core/model/a.cpp", "return Fault{\"value.out_of_range\", path};\n") == 0);
}

TEST_CASE("no sentence for people promises what an examination cannot") {
  CHECK(all({"core/report"}, [](const Source& source) { return source.path.ends_with(".ftl") ? forbidden_output(source) : Complaints{}; }) == "");
  CHECK(fires(forbidden_output, "en.ftl", "msg-a = A fracture is excluded.\n") == 1);
  CHECK(fires(forbidden_output, "en.ftl", "msg-a = A fracture is not excluded.\n") == 0);
  CHECK(fires(forbidden_output, "en.ftl", "msg-a =\n    It is safe to go home.\n") == 1);
}
