// The Fluent reader, and what no message may say. Syntax: the Fluent specification (projectfluent.org), the part that is used here.
#include "core/report/words/words.hpp"

#include "tests/unit/report/forbidden.hpp"

#include <doctest/doctest.h>

#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>
#include <vector>

using namespace limbledger;
using report::Words;
using report_test::forbidden_in;

namespace {

Words words_of(std::string_view text) {
  const std::string_view files[] = {text};
  auto words = Words::read(files);
  REQUIRE(words.has_value());
  return std::move(*words);
}

// The names of variables are not said.
std::string without_variables(std::string text) {
  for (auto at = text.find("{ $"); at != std::string::npos; at = text.find("{ $", at)) {
    const auto end = text.find_first_of(" }", at + 3);
    text.erase(at, end == std::string::npos ? end : end - at);
  }
  return text;
}

bool refused(std::string_view text) {
  const std::string_view files[] = {text};
  return !Words::read(files).has_value();
}

}  // namespace

TEST_CASE("a message takes variables, and isolates names but not numbers") {
  const Words words = words_of("hello-there = Dear { $name }, { $count } readings\n");
  CHECK(words.say("hello.there", {{"name", "Wulan"}, {"count", "3", true}}) == "Dear \u2068Wulan\u2069, 3 readings");
  CHECK(words.say("hello.there", {{"count", "3", true}}) == "Dear {$name}, 3 readings");
}

TEST_CASE("a select takes the exact key, then the plural, then the default") {
  const Words words = words_of("n = { $n ->\n    [0] none\n    [one] one reading\n   *[other] { $n } readings\n } taken\n");
  CHECK(words.say("n", {{"n", "0", true}}) == "none taken");
  CHECK(words.say("n", {{"n", "1", true}}) == "one reading taken");
  CHECK(words.say("n", {{"n", "2.5", true}}) == "2.5 readings taken");
}

TEST_CASE("attributes, terms, references, quoted texts and several lines read as the specification says") {
  const Words words = words_of(
      "# a comment\n-brand = ledger\n\nitem = Item\n    .short = Short { \"{\" }{ -brand }{ \"}\" }\n    .how = How\nlong =\n    first line\n    "
      "second { item }\n\n    "
      "after a gap\nlast = { item.how }\n");
  CHECK(words.say("item.short") == "Short {ledger}");
  CHECK(words.say("long") == "first line\nsecond Item\n\nafter a gap");
  CHECK(words.say("last") == "How");
  CHECK(words.has("item.how"));
  CHECK(!words.has("item.none"));
  CHECK(words.say("no.such.name") == "no.such.name");
}

TEST_CASE("what is not Fluent is refused, and a message that stands twice too") {
  CHECK(refused("no equals\n"));
  CHECK(refused("a = { $x\n"));
  CHECK(refused("a = { $x ->\n    [one] 1\n }\n"));  // no default
  CHECK(refused("a = 1\na = 2\n"));
  CHECK(refused("  indented = 1\n"));
  CHECK(refused("a = { NUMBER($x) }\n"));
}

TEST_CASE("a message that refers to itself comes to an end") {
  const Words words = words_of("a = x{ a }\n");
  CHECK(words.say("a").size() < 100);
}

TEST_CASE("the built-in words load") {
  REQUIRE(report::built_in_words() != nullptr);
  CHECK(report::built_in_words()->has("msg.motion.within"));
  CHECK(report::built_in_words()->has("msg.page.decision_support"));
  CHECK(report::built_in_words()->has("msg.item.knee_flexion_passive.short"));
}

TEST_CASE("no message in any language says what a finding does not earn") {
  const std::filesystem::path folder = std::filesystem::path(LIMBLEDGER_SOURCE_DIR) / "core/report/words";
  std::size_t lines = 0;
  for (const auto& file : std::filesystem::recursive_directory_iterator(folder)) {
    if (file.path().extension() != ".ftl") {
      continue;
    }
    std::ifstream in(file.path());
    for (std::string line; std::getline(in, line);) {
      if (line.starts_with("#")) {
        continue;
      }
      // The names of messages and variants are not said.
      const auto equals = line.find(" = ");
      const std::string said = equals == std::string::npos ? line : line.substr(equals + 3);
      for (const std::string& word : forbidden_in(without_variables(said))) {
        // An item or a technique may say what an examiner takes hold of.
        const bool technique = line.starts_with("msg-item-") && (word == "take" || word == "clear" || word == "likely");
        if (!technique) {
          FAIL_CHECK(file.path().filename().string() << ": \"" << word << "\" in: " << line);
        }
      }
      ++lines;
    }
  }
  CHECK(lines > 100);
}

TEST_CASE("what must be done now is said without possible, may or consider") {
  std::size_t seen = 0;
  for (const std::string& name : report::built_in_words()->names()) {
    if (!name.starts_with("msg-alert-") && !name.starts_with("msg-alert_state-")) {
      continue;
    }
    ++seen;
    const std::string text = report::built_in_words()->say(name);
    for (const char* word : {"possible", "possibly", "may", "consider"}) {
      CHECK_MESSAGE(report_test::places_of(report_test::lower(text), word).empty(), name << ": " << word);
    }
  }
  CHECK(seen >= 2);
}

TEST_CASE("the test of forbidden words finds each of them") {
  for (const char* line :
       {"Fracture excluded.", "A fracture is ruled out", "Knee normal", "All clear", "It is safe to walk", "Diagnosis: sprain", "Confirmed.", "A score of 5", "30 %", "probably not, unlikely"}) {
    CHECK(!forbidden_in(line).empty());
  }
  CHECK(forbidden_in("Findings speak against it; not excluded").empty());
  CHECK(forbidden_in("unclear, unsafe").empty());
  CHECK(forbidden_in("Film not required by the Ottawa knee rule").empty());
}
