// Statements on a knee through document.assess with the built-in edition, against tests/outside/data/knee_statements.csv, whose verdicts
// were worked outside the program from printed figures (sources in its head and in each row), and the agreement figures
// against tests/outside/data/knee_agreement.csv as they were printed.
#include "core/service/methods/say/document.hpp"
#include "core/service/methods/say/explain.hpp"
#include "core/wire/read.hpp"
#include "core/wire/write.hpp"

#include "tests/outside/csv.hpp"
#include "tests/outside/knee_document.hpp"

#include <doctest/doctest.h>

#include <set>

using namespace limbledger;

TEST_CASE("every worked statement on a knee comes out of document.assess with its verdict, its words and its figures") {
  std::set<std::string> sources;
  std::size_t checks = 0;
  for (const tests::CsvRow& row : tests::read_csv("knee_statements.csv")) {
    tests::KneeVisit visit;
    visit.born = row.at("born");
    visit.sex = row.at("sex");
    visit.add_all(row.at("findings"));
    const interpret::Statement statement = visit.statement(row.at("statement"));
    INFO(row.at("check") << " " << row.at("source") << ": " << row.at("findings"));
    CHECK(wire::write(statement.verdict) == "\"" + row.at("verdict") + "\"");
    CHECK(statement.message.text == row.at("message"));
    CHECK_MESSAGE(tests::unquoted(statement.params.json).find(row.at("params")) != std::string::npos, statement.params.json);
    sources.insert(row.at("source"));
    ++checks;
  }
  CHECK(checks >= 150);
  CHECK(sources.size() >= 10);
}

TEST_CASE("the working of a statement on a knee can be followed on paper") {
  tests::KneeVisit visit;
  visit.add_all("knee.extension_active left -25 goniometer_long;knee.extension_passive left -5 goniometer_long");
  // HANCOCK2018, long goniometer 10; MEHTA2017, active extension 2.7718 x 1.62 = 4.5: the larger counts.
  const auto lag = visit.working("motion.lag:knee.extension_active:left");
  CHECK(tests::line(lag, "-25 - (-5) = -20"));
  CHECK(tests::line(lag, "20 exceeds 10"));
  REQUIRE(lag.rows.size() == 2);
  CHECK(lag.rows[0].source.text == "HANCOCK2018");
  CHECK(lag.rows[1].source.text == "MEHTA2017");
  // 10 / 2.772 = 3.6 (3.6075), 1.96 x 3.6075 = 7.07: 5 short of straight cannot be told from straight.
  const auto contracture = visit.working("motion.contracture:knee.extension_passive:left");
  CHECK(tests::line(contracture, "-5 + 1.96 x 3.6 = 2.1, not below 0"));
  // The bands of IKDC2000 for grade 1, and how far examiners agreed (DECARY2016REL 0.42 to 0.81).
  visit.add_all("knee.lachman left grade:1/soft hand");
  const auto laxity = visit.working("laxity.test:knee.lachman:left");
  CHECK(tests::line(laxity, "grade 1, from 3 mm, to 5 mm, end soft: counts as positive"));
  bool named = false;
  for (const auto& row : laxity.rows) {
    named = named ||
            wire::write(row) ==
                R"({"row":"figure.agreement.lachman.DECARY2016REL","source":"DECARY2016REL","status":"read","numbers":{"low":0.42,"high":0.81}})";
  }
  CHECK(named);
}

TEST_CASE("the figures behind the statements are the printed ones") {
  const auto number = [](const std::optional<reference::Figure>& figure) { return figure ? wire::write_number(figure->steps, 1000) : std::string(); };
  std::size_t seen = 0;
  for (const tests::CsvRow& row : tests::read_csv("knee_agreement.csv")) {
    for (const reference::FigureRow& held : reference::built_in_edition()->figures()) {
      if (held.row.text != row.at("row")) {
        continue;
      }
      ++seen;
      INFO(held.row.text);
      CHECK(number(held.value) == row.at("value"));
      CHECK(number(held.low) == row.at("low"));
      CHECK(number(held.high) == row.at("high"));
      CHECK((held.n ? wire::write_number(held.n->steps, 1) : std::string()) == row.at("n"));
      CHECK(held.source.text == row.at("source"));
      // A mean and its spread in other units, worked into limits, are derived.
      CHECK(held.status == (held.row.text.starts_with("figure.apart.") ? model::Status::derived : model::Status::read));
    }
  }
  CHECK(seen == reference::built_in_edition()->figures().size());
}
