// One dated set of the facts: catalogue, norms, measurement error. Loaded from JSON texts, cross-checked as a whole (every
// name resolves, limits are in order, sources are listed, derived figures follow from their inputs), and then fixed.
// A row that fails is refused by its name. Where the figures come from stands in each row (source, status).
#pragma once

#include "core/model/check.hpp"
#include "core/reference/alert_row.hpp"
#include "core/reference/body_row.hpp"
#include "core/model/item.hpp"
#include "core/model/person.hpp"
#include "core/reference/evidence/rows.hpp"

#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace limbledger::reference {

enum class Mode { active, passive, unspecified };
BOOST_DESCRIBE_ENUM(Mode, active, passive, unspecified)

// A figure with up to three decimals (thousandths), in degrees.
struct Figure {
  std::int64_t steps = 0;
  static constexpr wire::NumberRule wire_rule{-1000000, 1000000, 1000, ""};
  friend bool operator==(const Figure&, const Figure&) = default;
};

// One printed norm of a motion, turned to the item's named direction. Ages are completed years, both ends inclusive.
struct NormRow {
  model::RowId row;  // norm.knee.flexion.passive.male.20-44.SOUCIE2011
  model::FamilyId family;
  model::Word toward;
  Mode mode{};
  std::optional<model::NormSex> sex;  // absent: the two are mixed
  wire::Count<0, 130> age_low;
  wire::Count<0, 130> age_high;
  Figure mean;
  std::optional<Figure> sd;
  std::optional<Figure> ci95_low;
  std::optional<Figure> ci95_high;
  std::optional<Figure> typical_low;   // mean - 2 SD, or the limit the source printed
  std::optional<Figure> typical_high;
  std::optional<wire::Count<1, 1000000>> n;
  std::optional<model::Word> position;
  std::optional<model::Word> instrument;
  bool preferred = false;  // the default source for this motion, age and sex
  model::SourceId source;
  model::Status status{};
  wire::Remark seen;  // where each figure was seen
};
BOOST_DESCRIBE_STRUCT(NormRow, (), (row, family, toward, mode, sex, age_low, age_high, mean, sd, ci95_low, ci95_high, typical_low, typical_high, n,
                                    position, instrument, preferred, source, status, seen))

enum class Rater { same, other };
BOOST_DESCRIBE_ENUM(Rater, same, other)

// The smallest change to believe (95 %), by instrument, or for an exact item and instrument. A printed range has a low and a high
// end and is computed with at its high end. A described row is shown and never computed with.
struct ErrorRow {
  model::RowId row;  // error.default.goniometer_long
  std::optional<model::ItemId> item;
  std::optional<model::Word> region;
  model::Word instrument;  // `unnamed` where a described row does not tell
  std::optional<Rater> rater;
  Figure mdc95;
  std::optional<Figure> mdc95_low;
  std::optional<Figure> mdc95_high;
  std::optional<bool> described;
  model::SourceId source;
  model::Status status{};
  wire::Remark seen;
};
BOOST_DESCRIBE_STRUCT(ErrorRow, (), (row, item, region, instrument, rater, mdc95, mdc95_low, mdc95_high, described, source, status, seen))

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

struct Source {
  model::SourceId source;
  wire::Remark citation;
  std::optional<wire::Remark> seen_at;
  model::Status status{};
};
BOOST_DESCRIBE_STRUCT(Source, (), (source, citation, seen_at, status))

// The texts of one edition, by the kind of fact.
struct EditionTexts {
  std::string_view edition;    // {"edition":"facts.1","dated":"2026-11-24"}
  std::vector<std::string_view> items;  // {"items":[...]} each, in the order of the catalogue
  std::string_view scales;     // {"scales":[...]}
  std::vector<std::string_view> sequences{};  // each {"sequences":[...]}; `free` without steps holds every item
  std::string_view norms;      // {"norms":[...]}
  std::string_view errors;     // {"errors":[...]}
  std::string_view sources;    // {"sources":[...]}
  std::string_view concerns;   // {"concerns":[...]}
  std::string_view alerts{};   // {"alerts":[...]}; empty: none is asked after
  EvidenceTexts evidence{};    // all empty: an edition without hypotheses
  std::string_view figures{};  // {"figures":[...]}; empty: none
  std::string_view bodies{};   // {"bodies":[...]}; empty: every body is read alike
};

class Edition {
 public:
  // Faults name the row and what does not hold (paths such as /norms/3/typical_low).
  [[nodiscard]] static Result<std::unique_ptr<const Edition>> load(const EditionTexts& texts);

  [[nodiscard]] const model::EditionId& id() const { return id_; }
  // In the order of a page; one that is not named comes after them.
  [[nodiscard]] std::span<const model::Word> regions() const { return regions_; }
  [[nodiscard]] const model::Item* item(const model::ItemId& id) const { return item(std::string_view(id.text)); }
  [[nodiscard]] const model::Item* item(std::string_view name) const;
  // Its place in items().
  [[nodiscard]] std::size_t index(const model::Item& of_this_edition) const { return static_cast<std::size_t>(&of_this_edition - items_.data()); }
  [[nodiscard]] const model::Scale* scale(const model::ScaleId& id) const;
  [[nodiscard]] const Source* source(const model::SourceId& id) const;
  [[nodiscard]] std::span<const model::Item> items() const { return items_; }
  [[nodiscard]] std::span<const model::Scale> scales() const { return scales_; }
  [[nodiscard]] std::span<const model::Sequence> sequences() const { return sequences_; }
  [[nodiscard]] const model::Sequence* sequence(const model::Word& complaint) const;
  [[nodiscard]] std::span<const model::Concern> concerns() const { return concerns_; }
  [[nodiscard]] const AlertRow* alert(std::string_view name) const;
  [[nodiscard]] std::span<const AlertRow> alerts() const { return alerts_; }
  [[nodiscard]] std::span<const NormRow> norms() const { return norms_; }
  [[nodiscard]] std::span<const ErrorRow> errors() const { return errors_; }
  [[nodiscard]] std::span<const FigureRow> figures() const { return figures_; }
  [[nodiscard]] std::span<const BodyRow> bodies() const { return bodies_; }
  [[nodiscard]] const BodyReach& reach_of(const BodyRow& of_this_edition) const { return reaches_[static_cast<std::size_t>(&of_this_edition - bodies_.data())]; }
  [[nodiscard]] const Evidence& evidence() const { return evidence_; }
  [[nodiscard]] model::CatalogueView catalogue() const;

 private:
  Edition() = default;
  model::EditionId id_;
  std::vector<model::Word> regions_;
  std::vector<model::Item> items_;
  std::vector<model::Scale> scales_;
  std::vector<model::Sequence> sequences_;
  std::vector<NormRow> norms_;
  std::vector<ErrorRow> errors_;
  std::vector<FigureRow> figures_;
  std::vector<Source> sources_;
  std::vector<model::Concern> concerns_;
  std::vector<AlertRow> alerts_;
  std::vector<BodyRow> bodies_;
  std::vector<BodyReach> reaches_;  // of bodies_, in its order
  Evidence evidence_;
  std::vector<std::size_t> items_by_name_;  // indices of items_, by length and then by letters: most comparisons are of two numbers
};

// What is compiled into the library.
[[nodiscard]] EditionTexts built_in_texts();
// The edition made of it; null only if the library itself was built wrong.
[[nodiscard]] const Edition* built_in_edition();

}  // namespace limbledger::reference
