// The Fluent reader, and what no message may say. Syntax: the Fluent specification (projectfluent.org), the part that is used here.
#include "core/report/words/words.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cctype>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>
#include <vector>

using namespace limbledger;
using report::Words;

namespace {

Words words_of(std::string_view text) {
  const std::string_view files[] = {text};
  auto words = Words::read(files);
  REQUIRE(words.has_value());
  return std::move(*words);
}

bool refused(std::string_view text) {
  const std::string_view files[] = {text};
  return !Words::read(files).has_value();
}

std::string lower(std::string text) {
  std::transform(text.begin(), text.end(), text.begin(), [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
  return text;
}

bool letter(char c) { return std::isalpha(static_cast<unsigned char>(c)) != 0; }

// Where a word or phrase stands on its own.
std::vector<std::size_t> places_of(const std::string& text, const std::string& word) {
  std::vector<std::size_t> places;
  for (std::size_t at = text.find(word); at != std::string::npos; at = text.find(word, at + 1)) {
    const bool left = at == 0 || !letter(text[at - 1]);
    const bool right = at + word.size() == text.size() || !letter(text[at + word.size()]);
    if (left && right) {
      places.push_back(at);
    }
  }
  return places;
}

// Words that a message may never use; "not excluded" may stand.
std::vector<std::string> forbidden_in(const std::string& message) {
  const std::string text = lower(message);
  std::vector<std::string> found;
  for (const std::string word : {"excluded", "excludes", "ruled out", "rule out",    "rules out", "safe",        "clear",        "all clear",
                                 "normal",   "abnormal", "diagnosis", "diagnosed",   "confirmed", "no fracture", "no red flags", "improved",
                                 "unlikely", "rare",     "must",      "recommended", "take",      "forbidden"}) {
    for (const std::size_t at : places_of(text, word)) {
      const bool not_before = at >= 4 && text.compare(at - 4, 4, "not ") == 0;
      if (!(word == "excluded" && not_before)) {
        found.push_back(word);
      }
    }
  }
  return found;
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
  for (const auto& file : std::filesystem::directory_iterator(folder)) {
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
      for (const std::string& word : forbidden_in(said)) {
        // An item or a technique may say what an examiner takes hold of.
        const bool technique = line.starts_with("msg-item-") && (word == "take" || word == "clear");
        if (!technique) {
          FAIL_CHECK(file.path().filename().string() << ": \"" << word << "\" in: " << line);
        }
      }
      ++lines;
    }
  }
  CHECK(lines > 100);
}

TEST_CASE("the test of forbidden words finds each of them") {
  for (const char* line :
       {"Fracture excluded.", "A fracture is ruled out", "Knee normal", "All clear", "It is safe to walk", "Diagnosis: sprain", "Confirmed."}) {
    CHECK(!forbidden_in(line).empty());
  }
  CHECK(forbidden_in("Findings speak against it; not excluded").empty());
  CHECK(forbidden_in("unclear, unsafe").empty());
  CHECK(forbidden_in("Film not required by the Ottawa knee rule").empty());
}
