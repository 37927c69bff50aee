// Rows on how far joints move and how well it is measured: norms, errors, single figures, printed rules and printed tables.
// Figures are thousandths of the row's unit. How a norm is chosen for a person stands in data/README.md.
#pragma once

#include "core/model/item.hpp"
#include "core/model/person.hpp"
#include "core/wire/type.hpp"

#include <cstdint>
#include <optional>
#include <vector>

namespace limbledger::reference {

enum class Mode { active, passive, unspecified };
BOOST_DESCRIBE_ENUM(Mode, active, passive, unspecified)

// A figure with up to three decimals (thousandths), in degrees or in the unit its row names.
struct Figure {
  std::int64_t steps = 0;
  static constexpr wire::NumberRule wire_rule{-1000000, 1000000, 1000, ""};
  friend bool operator==(const Figure&, const Figure&) = default;
};

// What the two typical figures are. Absent: mean - 2 SD and mean + 2 SD. Observed ends and the middle half are shown, never a limit.
enum class LimitsKind { printed, observed, middle_half, arc_ends, none };
BOOST_DESCRIBE_ENUM(LimitsKind, printed, observed, middle_half, arc_ends, none)

enum class Sureness { high, moderate, low };
BOOST_DESCRIBE_ENUM(Sureness, high, moderate, low)

// Of a person's completed years, both ends inclusive: where the row is the default, though it was printed for more.
struct DefaultAges {
  wire::Count<0, 130> low;
  wire::Count<0, 130> high;
};
BOOST_DESCRIBE_STRUCT(DefaultAges, (), (low, high))

// One printed norm of a motion, turned to the item's named direction. Ages are completed years, both ends inclusive; where months
// are given they decide and the years are the ones they fall in.
struct NormRow {
  model::RowId row;  // norm.knee.flexion.passive.male.20-44.SOUCIE2011
  model::FamilyId family;
  std::optional<std::vector<model::ItemId>> items;  // these alone; absent: every item of the family it fits
  std::optional<model::Word> toward;                // of an angle
  Mode mode{};
  std::optional<model::NormSex> sex;  // absent: the two are mixed
  wire::Count<0, 130> age_low;
  wire::Count<0, 130> age_high;
  std::optional<wire::Count<0, 1600>> age_months_low;
  std::optional<wire::Count<0, 1600>> age_months_high;
  std::optional<DefaultAges> default_ages;
  std::optional<Figure> mean;
  std::optional<Figure> sd;
  std::optional<Figure> ci95_low;
  std::optional<Figure> ci95_high;
  std::optional<Figure> typical_low;
  std::optional<Figure> typical_high;
  std::optional<LimitsKind> limits;
  std::optional<model::Word> unit;  // absent: degrees
  std::optional<wire::Count<1, 1000000>> n;
  std::optional<model::Word> position;
  std::optional<model::Word> instrument;
  bool preferred = false;             // a default source for this motion, age and sex
  std::optional<bool> disputed;       // of one standing with another default: both are asked, and must agree
  std::optional<bool> compare_only;   // of one population where others differ: compared with, raises nothing
  std::optional<bool> described;      // held as printed; no item asks for it, or it may not be compared with
  std::optional<Sureness> confidence;
  model::SourceId source;
  model::Status status{};
  wire::Remark seen;  // where each figure was seen

  [[nodiscard]] std::int64_t months_low() const { return age_months_low ? age_months_low->steps : age_low.steps * 12; }
  [[nodiscard]] std::int64_t months_high() const { return age_months_high ? age_months_high->steps : age_high.steps * 12 + 11; }
  [[nodiscard]] bool taught() const { return status == model::Status::memory; }
};
BOOST_DESCRIBE_STRUCT(NormRow, (), (row, family, items, toward, mode, sex, age_low, age_high, age_months_low, age_months_high, default_ages, mean, sd,
                                    ci95_low, ci95_high, typical_low, typical_high, limits, unit, n, position, instrument, preferred, disputed, compare_only,
                                    described, confidence, source, status, seen))

enum class Rater { same, other };
BOOST_DESCRIBE_ENUM(Rater, same, other)

// The smallest change to believe (95 %), by instrument, or for an exact item and instrument. A printed range has a low and a high
// end and is computed with at its high end. A described row is shown and never computed with: agreement is no error.
struct ErrorRow {
  model::RowId row;  // error.default.goniometer_long
  std::optional<model::ItemId> item;
  std::optional<model::Word> region;
  model::Word instrument;  // `unnamed` where a described row does not tell
  std::optional<Rater> rater;
  std::optional<Figure> mdc95;
  std::optional<Figure> mdc95_low;
  std::optional<Figure> mdc95_high;
  std::optional<Figure> sem_low;  // standard error of one reading, as printed; both ends alike where one figure was
  std::optional<Figure> sem_high;
  std::optional<Figure> icc_low;
  std::optional<Figure> icc_high;
  std::optional<model::Word> unit;      // absent: degrees
  std::optional<wire::Remark> measure;  // what was measured, where no item says it
  std::optional<wire::Remark> people;
  std::optional<bool> described;
  std::optional<Sureness> confidence;
  model::SourceId source;
  model::Status status{};
  wire::Remark seen;
};
BOOST_DESCRIBE_STRUCT(ErrorRow, (), (row, item, region, instrument, rater, mdc95, mdc95_low, mdc95_high, sem_low, sem_high, icc_low, icc_high, unit,
                                     measure, people, described, confidence, source, status, seen))

// A published or agreed figure that a statement rests on and that is no norm and no error: a ratio, a limit, how far examiners
// agree. `about` says of what; with an item it speaks of that item alone. Never more than its row says: agreement computes nothing.
struct FigureRow {
  model::RowId row;  // figure.agreement.effusion_stroke.STURGILL2009
  model::Word about;
  std::optional<model::ItemId> item;
  std::optional<Figure> value;
  std::optional<Figure> low;
  std::optional<Figure> high;
  std::optional<wire::Count<1, 1000000>> n;
  model::SourceId source;
  model::Status status{};
  wire::Remark seen;
};
BOOST_DESCRIBE_STRUCT(FigureRow, (), (row, about, item, value, low, high, n, source, status, seen))

// A rule of the trade as it is printed: pattern, end feel, limit. For those who read and for judgements that name it; the row alone
// judges nothing.
struct PrintedRule {
  model::RowId row;  // motion.capsular.hip.CYRIAX1982
  model::Word kind;
  model::Word joint;
  wire::Remark says;
  std::optional<wire::Remark> threshold;  // as printed, several figures in their order
  std::optional<wire::Remark> unit;
  std::optional<model::Word> end_feel;
  std::optional<Sureness> confidence;
  std::vector<model::SourceId> sources;
  model::Status status{};
  wire::Remark seen;
};
BOOST_DESCRIBE_STRUCT(PrintedRule, (), (row, kind, joint, says, threshold, unit, end_feel, confidence, sources, status, seen))

// One line of a printed table of grades, points or limits. Grades that are recorded stand in scales.json, norms among the norms; this is
// what both can be held against.
struct TableRow {
  model::RowId row;  // table.heelrise/2017.reps.male.20-29
  wire::Remark table;
  wire::Remark of;
  wire::Remark value;
  std::optional<wire::Remark> label;
  std::optional<wire::Remark> means;
  std::optional<model::NormSex> sex;
  std::optional<wire::Count<0, 130>> age_low;
  std::optional<wire::Count<0, 130>> age_high;
  model::SourceId source;
  model::Status status{};
  wire::Remark seen;
};
BOOST_DESCRIBE_STRUCT(TableRow, (), (row, table, of, value, label, means, sex, age_low, age_high, source, status, seen))

}  // namespace limbledger::reference
