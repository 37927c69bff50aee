#include "core/model/operation.hpp"
#include "core/service/call.hpp"
#include "rpc/emit/files.hpp"
#include "rpc/program/examples/examples.hpp"

#include <doctest/doctest.h>

#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <set>
#include <string>
#include <vector>

namespace {

using namespace limbledger;

const std::filesystem::path schema_folder = std::filesystem::path(LIMBLEDGER_SOURCE_DIR) / "schemas";

std::map<std::string, std::string> printed() {
  std::vector<rpc::StoredShape> stored;
  for (const model::StoredType& type : model::stored_types()) {
    stored.push_back({type.op.empty() ? "operation" : std::string(type.op), type.type});
  }
  return rpc::schema_files(service::methods(), stored, rpc::held_talk().examples);
}

// What is missing, other or too much in the folder, one line each.
std::string differences(const std::map<std::string, std::string>& files) {
  std::string lines;
  for (const auto& [name, text] : files) {
    std::ifstream file(schema_folder / name, std::ios::binary);
    if (!file) {
      lines += name + " is missing\n";
    } else if (std::string(std::istreambuf_iterator<char>(file), {}) != text) {
      lines += name + " is stale\n";
    }
  }
  for (const auto& entry : std::filesystem::recursive_directory_iterator(schema_folder)) {
    const std::string name = std::filesystem::relative(entry.path(), schema_folder).generic_string();
    if (entry.is_regular_file() && name != "ledger-format.md" && !files.contains(name)) {
      lines += name + " is not printed by the program\n";
    }
  }
  return lines;
}

}  // namespace

TEST_CASE("schemas/ is what the method table says") {
  CHECK(differences(printed()) == "");
}

TEST_CASE("a stale, a missing and a left-over schema are each noticed") {
  auto files = printed();
  const std::string whole = differences(files);
  const std::string first = files.begin()->first;
  files[first] += " ";
  CHECK(differences(files).size() > whole.size());
  files = printed();
  files["Another.schema.json"] = "{}";
  CHECK(differences(files).size() > whole.size());
  files = printed();
  files.erase(first);
  CHECK(differences(files).size() > whole.size());
}
