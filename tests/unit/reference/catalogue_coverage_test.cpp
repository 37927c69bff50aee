// Every line of the pages "examination sequence", "knee tests" and "hip and ankle tests" against the catalogue
// (tests/unit/reference/data/coverage.csv), every sequence with its minimum set against the same pages and "clinical safety"
// (coverage_sequences.csv), and that the check itself sees what is taken away, in an invented edition.
#include "tests/outside/csv.hpp"
#include "tests/unit/reference/coverage.hpp"
#include "tests/unit/reference/planted.hpp"

#include "core/report/words/words.hpp"

#include <doctest/doctest.h>

#include <map>
#include <set>
#include <string>
#include <vector>

using namespace limbledger;

namespace {

constexpr const char* lines_file = "../../unit/reference/data/coverage.csv";
constexpr const char* sequences_file = "../../unit/reference/data/coverage_sequences.csv";

[[nodiscard]] std::string joined(const std::vector<std::string>& parts) {
  std::string out;
  for (const std::string& part : parts) {
    out += (out.empty() ? "" : "; ") + part;
  }
  return out;
}

[[nodiscard]] HasWords built_in() {
  return [](const std::string& name) { return report::built_in_words()->has(name); };
}

// The sections a page has: a file from which a whole test was dropped would else be silent.
[[nodiscard]] std::set<std::string> sections_of(const std::string& page) {
  std::set<std::string> out;
  const auto counted = [&](const std::string& letter, int last) {
    for (int i = 1; i <= last; ++i) {
      out.insert(letter + std::to_string(i));
    }
  };
  if (page == "examination sequence") {
    out = {"0.2", "0.3", "0.4", "0.5", "B", "E", "F", "G", "5"};
    counted("A", 9);
    counted("C", 8);
    counted("D", 8);
  } else if (page == "knee tests") {
    out = {"0", "0.1", "6.1", "6.2", "6.3", "6.4", "7", "8", "9", "10", "11", "12", "5"};
    counted("1.", 5);
    counted("2.", 3);
    counted("3.", 3);
    counted("4.", 6);
    counted("5.", 3);
  } else {
    out = {"1.1", "1.2", "1.3", "2"};
    counted("H", 30);
    counted("A", 23);
  }
  return out;
}

// The invented edition with one item that has all; each spoiling takes one thing away.
[[nodiscard]] InventedTexts whole_texts() {
  InventedTexts texts = invented_texts();
  spoil(texts.items, R"("how":"msg.item.knee_lachman_prone.how",)",
        R"("how":"msg.item.knee_lachman_prone.how","purpose":"msg.item.knee_lachman_prone.purpose",)");
  spoil(texts.items, R"("errors":"msg.item.knee_lachman_prone.errors"})",
        R"("errors":"msg.item.knee_lachman_prone.errors","otherwise":"msg.item.knee_lachman_prone.otherwise"})");
  return texts;
}

[[nodiscard]] std::string lacks(const InventedTexts& texts, const std::string& items, const std::string& silent = "") {
  const auto edition = reference::Edition::load(texts.view());
  if (!edition) {
    return "refused";
  }
  return joined(lacking(CoverageLine{"a line", items}, **edition, [&](const std::string& name) { return name != silent; }));
}

}  // namespace

TEST_CASE("every line of the pages has its items in the catalogue, each with all that is needed to do it") {
  const reference::Edition* edition = reference::built_in_edition();
  REQUIRE(edition != nullptr);
  for (const tests::CsvRow& row : tests::read_csv(lines_file)) {
    const std::string where = row.at("page") + " " + row.at("section") + ", " + row.at("named");
    const std::vector<std::string> missing = lacking(CoverageLine{row.at("named"), row.at("items")}, *edition, built_in());
    CHECK_MESSAGE(missing.empty(), where << ": " << joined(missing));
  }
}

TEST_CASE("every item of the catalogue says how, what for, and how else where it is done lying alone") {
  const reference::Edition* edition = reference::built_in_edition();
  REQUIRE(edition != nullptr);
  for (const model::Item& item : edition->items()) {
    const std::vector<std::string> missing = lacking(item, *edition, built_in());
    CHECK_MESSAGE(missing.empty(), joined(missing));
  }
}

TEST_CASE("the lines of the pages leave out no numbered section, and no line stands twice") {
  std::map<std::string, std::set<std::string>> found;
  std::set<std::string> lines;
  for (const tests::CsvRow& row : tests::read_csv(lines_file)) {
    found[row.at("page")].insert(row.at("section"));
    CHECK_MESSAGE(lines.insert(row.at("page") + row.at("section") + row.at("named")).second, row.at("named"));
  }
  for (const std::string page : {"examination sequence", "knee tests", "hip and ankle tests"}) {
    CHECK_MESSAGE(found[page] == sections_of(page), page);
  }
  CHECK(found.size() == 3);
}

TEST_CASE("every sequence of the pages is there and asks its minimum set") {
  const reference::Edition* edition = reference::built_in_edition();
  REQUIRE(edition != nullptr);
  for (const tests::CsvRow& row : tests::read_csv(sequences_file)) {
    if (row.at("complaint") == "free") {
      const model::Sequence* free = edition->sequence(model::Word{"free"});
      CHECK((free != nullptr && free->steps.size() == edition->items().size()));
      continue;
    }
    const std::vector<std::string> missing = lacking_minimum(row.at("complaint"), row.at("any_of"), *edition);
    CHECK_MESSAGE(missing.empty(), row.at("named") << ": " << joined(missing));
  }
}

TEST_CASE("an item, its technique, purpose, grades, caution, alternative or source that is taken away is seen") {
  const InventedTexts whole = whole_texts();
  CHECK(lacks(whole, "knee.lachman_prone").empty());
  CHECK(lacks(whole, "knee.lachman_prone knee.lachman_sideways") == "knee.lachman_sideways");
  CHECK(lacks(whole, "") == "a line: no item");
  CHECK(lacks(whole, "history.mechanism=twist", "msg.item.history_mechanism.how") == "history.mechanism how; history.mechanism purpose");
  CHECK(lacks(whole, "history.mechanism=glide") == "history.mechanism=glide; history.mechanism purpose");
  CHECK(lacks(whole, "knee.lachman_prone", "msg.item.knee_lachman_prone.how") == "knee.lachman_prone how");
  CHECK(lacks(whole, "knee.lachman_prone", "msg.item.knee_lachman_prone.positive") == "knee.lachman_prone positive");
  CHECK(lacks(whole, "knee.lachman_prone", "msg.item.knee_lachman_prone.otherwise") == "knee.lachman_prone instead or otherwise");
  CHECK(lacks(whole, "knee.lachman_prone", "msg.scale.invented_looseness.1") == "knee.lachman_prone grade 1");
  CHECK(lacks(whole, "knee.lachman_prone", "msg.item.knee_lachman_prone.care") == "knee.lachman_prone care");
  // What stands in the rows: an item renamed, an alternative or a purpose dropped, an answer to provocation without a caution.
  struct Taken {
    std::string from;
    std::string to;
    std::string missing;
  };
  const Taken taken[] = {
      {R"({"item":"history.pop","family":"history.pop")", R"({"item":"history.puff","family":"history.pop")", "history.pop"},
      {R"(,"otherwise":"msg.item.knee_lachman_prone.otherwise")", "", "knee.lachman_prone instead or otherwise"},
      {R"("purpose":"msg.item.knee_lachman_prone.purpose",)", "", "knee.lachman_prone purpose"},
      {R"("sources":["INVENTED1"])", R"("sources":[])", "refused"},
      {R"("how":"msg.item.knee_lachman_prone.how",)", "", "refused"},
  };
  for (const Taken& one : taken) {
    InventedTexts texts = whole;
    spoil(texts.items, one.from, one.to);
    CHECK_MESSAGE(lacks(texts, one.missing == "history.pop" ? "history.pop" : "knee.lachman_prone") == one.missing, one.from);
  }
}

TEST_CASE("a sequence, its minimum set, or what the set must hold that is taken away is seen") {
  InventedTexts texts = invented_texts();
  const auto seen = [&](const std::string& complaint, const std::string& any_of) {
    const auto edition = reference::Edition::load(texts.view());
    REQUIRE(edition.has_value());
    return joined(lacking_minimum(complaint, any_of, **edition));
  };
  CHECK(seen("invented_complaint", "knee.lachman").empty());
  CHECK(seen("invented_complaint", "knee.mcmurray knee.lachman").empty());
  CHECK(seen("invented_complaint", "").empty());
  CHECK(seen("another_complaint", "knee.lachman") == "another_complaint");
  CHECK(seen("invented_complaint", "knee.mcmurray") == "invented_complaint minimum: knee.mcmurray");
  spoil(texts.sequences, R"({"item":"knee.lachman","position":"supine","minimum":true})", R"({"item":"knee.lachman","position":"supine"})");
  CHECK(seen("invented_complaint", "knee.lachman") == "invented_complaint minimum: knee.lachman");
}
