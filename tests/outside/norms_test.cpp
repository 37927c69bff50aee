// The edition's norms, errors, rules and tables of motion against the printed figures. tests/outside/data/motion/{rom_norms,measurement_error,
// rom_rules,scales}.csv hold the rows as printed (publication in source_id); the intervals of SOUCIE2011 stand here a second time, typed
// from the table of the joint motion study (archive.cdc.gov/www_cdc_gov/ncbddd/jointrom; 45-69 years from a public transcription of the
// paper; 9-44 years are taught values).
#include "core/reference/edition.hpp"
#include "core/reference/embedded.hpp"
#include "tests/outside/csv.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cstdlib>
#include <string>

using namespace limbledger;
using reference::Figure;
using reference::NormRow;

namespace {

[[nodiscard]] const NormRow* norm(const std::string& name) {
  for (const NormRow& row : reference::built_in_edition()->norms()) {
    if (row.row.text == name) {
      return &row;
    }
  }
  return nullptr;
}

[[nodiscard]] std::int64_t figure(const std::string& text) {
  std::int64_t steps = 0;
  REQUIRE(wire::read_number(text, Figure::wire_rule.per_unit, steps).empty());
  return steps;
}

void same(const std::optional<Figure>& held, const std::string& printed, const std::string& row) {
  CHECK_MESSAGE(held.has_value() == !printed.empty(), row);
  if (held && !printed.empty()) {
    CHECK_MESSAGE(held->steps == figure(printed), row);
  }
}

// The built-in edition with other norms.
[[nodiscard]] auto load_with_norms(std::string_view norms) {
  reference::EditionTexts texts = reference::built_in_texts();
  texts.norms = {norms};
  return reference::Edition::load(texts);
}

// A printed figure as the item has it: the other end of the axis, an included angle less 180, centimetres as millimetres.
std::string changed(const std::string& printed, const std::string& change) {
  if (printed.empty() || change.empty()) {
    return printed;
  }
  std::int64_t steps = figure(printed);
  steps = change == "turned" ? -steps : (change == "minus180" ? steps - 180'000 : steps * 10);
  return wire::write_number(steps, 1000);
}

}  // namespace

TEST_CASE("every printed norm is held with every figure, and nothing else is held but what says why") {
  const auto rows = tests::read_csv("motion/rom_norms.csv");
  for (const tests::CsvRow& row : rows) {
    const std::string& name = row.at("row");
    const NormRow* held = norm(name);
    REQUIRE_MESSAGE(held != nullptr, name);
    CHECK_MESSAGE(held->source.text == row.at("source_id"), name);
    const std::string change = held->described.value_or(false) && row.at("change") == "turned" ? "" : row.at("change");
    const bool turned = change == "turned";
    // KOUYOUMDJIAN2012 prints means alone; the SD is that of ROACH1991, so the whole row is a taught value.
    const bool lent_sd = name.find("passive") != std::string::npos && held->source.text == "KOUYOUMDJIAN2012" && held->sd;
    same(held->mean, changed(row.at("mean_deg"), change), name);
    same(held->ci95_low, row.at("ci95_low"), name);
    same(held->ci95_high, row.at("ci95_high"), name);
    if (!lent_sd) {
      same(held->sd, change == "x10" ? changed(row.at("sd_deg"), change) : row.at("sd_deg"), name);
      const bool plate = !held->typical_low && held->limits == reference::LimitsKind::arc_ends;  // prints the two ends of the arc: no limits of its end
      same(held->typical_low, plate ? "" : changed(row.at(turned ? "typical_high" : "typical_low"), change), name);
      same(held->typical_high, plate ? "" : changed(row.at(turned ? "typical_low" : "typical_high"), change), name);
      CHECK_MESSAGE((held->status == model::Status::read) == (row.at("status") == "read"), name);
      CHECK_MESSAGE((held->status == model::Status::memory) == (row.at("status") == "memory"), name);
    } else {
      CHECK_MESSAGE(held->taught(), name);
    }
    CHECK_MESSAGE((held->n ? std::to_string(held->n->steps) : "") == row.at("n"), name);
    CHECK_MESSAGE((held->sex == model::NormSex::male) == (row.at("sex") == "male"), name);
    CHECK_MESSAGE((held->sex == model::NormSex::female) == (row.at("sex") == "female"), name);
    // 1.58 years are 19 months: the nearest one.
    CHECK_MESSAGE(std::abs(static_cast<double>(held->months_low()) / 12 - std::stod(row.at("age_from_years"))) < 0.05, name);
    const bool low = row.at("where_seen").find("low confidence") != std::string::npos;
    CHECK_MESSAGE((held->confidence == reference::Sureness::low) == low, name);
    CHECK_MESSAGE(!(low && held->preferred), name);
  }
  std::size_t own = 0;
  for (const NormRow& row : reference::built_in_edition()->norms()) {
    const bool printed = std::any_of(rows.begin(), rows.end(), [&](const tests::CsvRow& one) { return one.at("row") == row.row.text; });
    const bool of_table = row.row.text.starts_with("norm.function.") || row.row.text.starts_with("norm.ankle.heel_rise_count.");  // scales.csv
    const bool says_why = row.seen.text.starts_with("CONVENTION: ") || row.seen.text.find("DERIVED: one band") != std::string::npos;
    CHECK_MESSAGE((printed || of_table || says_why), row.row.text);
    own += printed ? 0 : 1;
  }
  CHECK(rows.size() == 347);
  CHECK(reference::built_in_edition()->norms().size() == rows.size() + own);
  MESSAGE("norms printed " << rows.size() << ", held " << reference::built_in_edition()->norms().size());
}

TEST_CASE("every printed error of measurement is held; without a smallest change it computes nothing") {
  const auto rows = tests::read_csv("motion/measurement_error.csv");
  const auto errors = reference::built_in_edition()->errors();
  CHECK(rows.size() == 115);
  CHECK(errors.size() == rows.size());
  for (const tests::CsvRow& row : rows) {
    const auto held = std::find_if(errors.begin(), errors.end(), [&](const reference::ErrorRow& one) { return one.row.text == row.at("row"); });
    REQUIRE_MESSAGE(held != errors.end(), row.at("row"));
    const std::string& printed = row.at("mdc95_deg");
    const std::string last = printed.substr(printed.rfind('-') == std::string::npos ? 0 : printed.rfind('-') + 1);
    if (!printed.empty()) {
      REQUIRE_MESSAGE(held->mdc95, row.at("row"));
      CHECK_MESSAGE(held->mdc95->steps == figure(last) * (row.at("units") == "cm" ? 10 : 1), row.at("row"));
    } else {
      CHECK_MESSAGE(held->described == true, row.at("row"));
    }
    const std::string& icc = row.at("icc");
    if (!icc.empty() && icc.find_first_not_of("0123456789.") == std::string::npos) {
      REQUIRE_MESSAGE(held->icc_low, row.at("row"));
      CHECK_MESSAGE((held->icc_low->steps == figure(icc) && held->icc_high->steps == figure(icc)), row.at("row"));
    }
    CHECK_MESSAGE(!(held->confidence == reference::Sureness::low && !held->described.value_or(false)), row.at("row"));
  }
  // Pooled over many studies: the larger of the two raters' figures, 1.9 cm.
  const auto* item = reference::built_in_edition()->item("ankle.dorsiflexion_lunge_distance");
  REQUIRE(item != nullptr);
  REQUIRE(reference::built_in_edition()->errors_of(*item).size() == 1);
  CHECK(reference::built_in_edition()->errors_of(*item).front()->mdc95->steps == figure("19"));
  MESSAGE("errors printed " << rows.size() << ", held " << errors.size());
}

TEST_CASE("every printed rule and every line of the printed tables is held") {
  const auto rules = tests::read_csv("motion/rom_rules.csv");
  const auto held_rules = reference::built_in_edition()->rules();
  CHECK(rules.size() == 126);
  CHECK(held_rules.size() == rules.size());
  for (const tests::CsvRow& row : rules) {
    const auto held = std::find_if(held_rules.begin(), held_rules.end(), [&](const reference::PrintedRule& one) { return one.row.text == row.at("row"); });
    REQUIRE_MESSAGE(held != held_rules.end(), row.at("row"));
    CHECK_MESSAGE((held->threshold ? held->threshold->text : "") == row.at("threshold"), row.at("row"));
    CHECK_MESSAGE((held->unit ? held->unit->text : "") == row.at("units"), row.at("row"));
    CHECK_MESSAGE((held->status == model::Status::read) == (row.at("status") == "read"), row.at("row"));
  }
  const auto tables = tests::read_csv("motion/scales.csv");
  const auto held_tables = reference::built_in_edition()->tables();
  CHECK(tables.size() == 274);
  CHECK(held_tables.size() == tables.size());
  for (const tests::CsvRow& row : tables) {
    const auto held = std::find_if(held_tables.begin(), held_tables.end(), [&](const reference::TableRow& one) { return one.row.text == row.at("row"); });
    REQUIRE_MESSAGE(held != held_tables.end(), row.at("row"));
    CHECK_MESSAGE(held->value.text == row.at("value_or_range"), row.at("row"));
    CHECK_MESSAGE((held->label ? held->label->text : "") == row.at("label"), row.at("row"));
    CHECK_MESSAGE(held->table.text == row.at("scale_id"), row.at("row"));
  }
  MESSAGE("rules printed " << rules.size() << ", held " << held_rules.size() << "; lines of tables printed " << tables.size() << ", held "
                           << held_tables.size());
}

TEST_CASE("SOUCIE2011, passive knee flexion: means and 95 % intervals by age and sex") {
  struct Printed {
    const char* band;
    const char* mean;
    const char* low;
    const char* high;
    bool read;  // else a taught value
  };
  const Printed table[] = {{"female.2-8", "152.6", "151.2", "154.0", true},    {"male.2-8", "147.8", "146.6", "149.0", true},
                           {"female.9-19", "142.3", "140.8", "143.8", false},  {"male.9-19", "142.2", "140.4", "144.0", false},
                           {"female.20-44", "141.9", "140.9", "142.9", false}, {"male.20-44", "137.7", "136.5", "138.9", false},
                           {"female.45-69", "137.8", "136.5", "139.1", true},  {"male.45-69", "132.9", "131.6", "134.2", true}};
  for (const Printed& printed : table) {
    const NormRow* row = norm("norm.knee.flexion.passive." + std::string(printed.band) + ".SOUCIE2011");
    REQUIRE_MESSAGE(row != nullptr, printed.band);
    CHECK(row->mean->steps == figure(printed.mean));
    CHECK(row->ci95_low->steps == figure(printed.low));
    CHECK(row->ci95_high->steps == figure(printed.high));
    CHECK((row->status == model::Status::read) == printed.read);
    CHECK(row->preferred);
    CHECK(row->toward == model::Word{"flexion"});
  }
  // A public model's documentation gives the mean of both sexes at 20 to 44 years: flexion 139.8, extension 1.3.
  CHECK(norm("norm.knee.flexion.passive.female.20-44.SOUCIE2011")->mean->steps + norm("norm.knee.flexion.passive.male.20-44.SOUCIE2011")->mean->steps ==
        2 * figure("139.8"));
  CHECK(norm("norm.knee.extension.passive.female.20-44.SOUCIE2011")->mean->steps + norm("norm.knee.extension.passive.male.20-44.SOUCIE2011")->mean->steps ==
        2 * figure("1.3"));
  // The group sizes add up to the published 361 women, 313 men and 674 people.
  std::int64_t women = 0;
  std::int64_t men = 0;
  for (const NormRow& row : reference::built_in_edition()->norms()) {
    if (row.source.text == "SOUCIE2011" && row.family.text == "knee.flexion") {
      (row.sex == model::NormSex::female ? women : men) += row.n->steps;
    }
  }
  CHECK(women == 361);
  CHECK(men == 313);
}

TEST_CASE("an SD worked by hand from an interval is accepted, one that is a tenth off is refused") {
  for (const tests::CsvRow& row : tests::read_csv("motion/sd_from_interval.csv")) {
    const std::string begin = R"({"norms":[{"row":"norm.example","family":"knee.flexion","toward":"flexion","mode":"passive","age_low":2,"age_high":8,"mean":)" +
                              row.at("mean") + R"(,"ci95_low":)" + row.at("low") + R"(,"ci95_high":)" + row.at("high") + R"(,"n":)" + row.at("n") + R"(,"sd":)";
    const std::string end = R"(,"preferred":false,"source":"SOUCIE2011","status":"derived","seen":"worked example"}]})";
    CHECK_MESSAGE(load_with_norms(begin + row.at("sd") + end).has_value(), row.at("what"));
    for (const std::int64_t off : {-110, 110}) {
      const std::string wrong = wire::write_number(figure(row.at("sd")) + off, Figure::wire_rule.per_unit);
      CHECK_MESSAGE(load_with_norms(begin + wrong + end).has_error(), row.at("what"));
    }
  }
}

TEST_CASE("the smallest change to believe is what the studies printed, or 2.7718 times their standard error") {
  const auto mdc = [](const std::string& name) -> std::int64_t {
    for (const reference::ErrorRow& row : reference::built_in_edition()->errors()) {
      if (row.row.text == name) {
        return row.mdc95->steps;
      }
    }
    return 0;
  };
  // HANCOCK2018: digital inclinometer 6, long goniometer 10, smartphone 12, visual estimate and short goniometer 14.
  CHECK(mdc("error.default.inclinometer") == figure("6"));
  CHECK(mdc("error.default.goniometer_long") == figure("10"));
  CHECK(mdc("error.default.smartphone") == figure("12"));
  CHECK(mdc("error.default.by_eye") == figure("14"));
  CHECK(mdc("error.default.goniometer_short") == figure("14"));
  const auto rows = tests::read_csv("motion/mdc_from_sem.csv");
  for (const tests::CsvRow& row : rows) {
    // The hand-worked figure lies within half a tenth of the printed one.
    CHECK_MESSAGE(std::abs(figure(row.at("mdc95")) - figure(row.at("printed"))) <= 50, row.at("what"));
  }
  CHECK(mdc("error.hip.goniometer_long") == figure(rows.at(1).at("printed")));
  CHECK(mdc("error.knee.flexion_active.smartphone.MEHTA2017") == figure(rows.at(2).at("printed")));
  // MEHTA2017: standard errors 3.41 (goniometer, flexion), 1.62 (goniometer, extension), 1.18 (smartphone, extension).
  CHECK(mdc("error.knee.flexion_active.goniometer_long.MEHTA2017") == figure("9.5"));
  CHECK(mdc("error.knee.extension_active.goniometer_long.MEHTA2017") == figure("4.5"));
  CHECK(mdc("error.knee.extension_active.smartphone.MEHTA2017") == figure("3.3"));
  // PUA2008: standard errors from 3.1 to 4.7, flexion of the hip 3.5.
  CHECK(mdc("error.hip.flexion_passive.goniometer_long.PUA2008") == figure(rows.at(0).at("printed")));
}

TEST_CASE("a range printed over devices is described and never computed with") {
  struct Printed {
    const char* row;
    const char* low;
    const char* high;
  };
  // KNEEEXT2024: same rater 2.0 to 3.5, two raters 3.7 to 10.4, measured again 2.6 to 5.4 degrees.
  const Printed table[] = {{"same_rater", "2", "3.5"}, {"other_rater", "3.7", "10.4"}, {"test_retest", "2.6", "5.4"}};
  for (const Printed& printed : table) {
    const auto errors = reference::built_in_edition()->errors();
    const auto row = std::find_if(errors.begin(), errors.end(), [&](const reference::ErrorRow& one) {
      return one.row.text == "error.knee.extension." + std::string(printed.row) + ".KNEEEXT2024";
    });
    REQUIRE_MESSAGE(row != errors.end(), printed.row);
    CHECK(row->mdc95_low->steps == figure(printed.low));
    CHECK(row->mdc95_high->steps == figure(printed.high));
    CHECK(row->described == true);
  }
}

