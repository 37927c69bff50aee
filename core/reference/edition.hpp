// One dated set of the facts: catalogue, norms, measurement error. Loaded from JSON texts, cross-checked as a whole (every
// name resolves, limits are in order, sources are listed, derived figures follow from their inputs), and then fixed.
// A row that fails is refused by its name. Where the figures come from stands in each row (source, status).
#pragma once

#include "core/model/check.hpp"
#include "core/reference/alert_row.hpp"
#include "core/reference/body_row.hpp"
#include "core/model/item.hpp"
#include "core/model/person.hpp"
#include "core/reference/edition_ref.hpp"
#include "core/reference/evidence/rows.hpp"
#include "core/reference/item_key.hpp"
#include "core/reference/motion/rows.hpp"
#include "core/reference/rule_row.hpp"

#include <cstdint>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace limbledger::reference {

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
  std::vector<std::string_view> norms{};  // {"norms":[...]} each
  std::string_view errors;     // {"errors":[...]}
  std::string_view sources;    // {"sources":[...]}
  std::string_view concerns;   // {"concerns":[...]}
  std::string_view alerts{};   // {"alerts":[...]}; empty: none is asked after
  EvidenceTexts evidence{};    // all empty: an edition without hypotheses
  std::string_view figures{};  // {"figures":[...]}; empty: none
  std::string_view bodies{};   // {"bodies":[...]}; empty: every body is read alike
  std::string_view rules{};    // {"rules":[...]} of motion, as printed; empty: none
  std::string_view tables{};   // {"tables":[...]} as printed; empty: none
  std::string_view decision_rules{};  // {"decision_rules":[...]}; empty: none is described
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
  // What is asked of every item that a judgement names, side by side: most of them are not recorded, and no more is read.
  struct Keyed {
    std::uint64_t key = 0;
    std::uint32_t index = 0;
    std::uint8_t sides = 0;  // that the item has: a bit for each
    bool known = false;
    [[nodiscard]] bool has(model::Side side) const { return (sides >> static_cast<unsigned>(side) & 1U) != 0; }
  };
  // One that is not known has no item.
  [[nodiscard]] const Keyed& keyed(const ItemKey& key) const {
    std::size_t slot = key.key() & (items_by_key_.size() - 1);
    while (items_by_key_[slot].known && items_by_key_[slot].key != key.key()) {
      slot = (slot + 1) & (items_by_key_.size() - 1);
    }
    return items_by_key_[slot];
  }
  [[nodiscard]] const model::Item* item_of(const Keyed& keyed) const { return keyed.known ? &items_[keyed.index] : nullptr; }
  [[nodiscard]] const model::Item* item_of(const ItemKey& key) const { return item_of(keyed(key)); }
  // Its place in items().
  [[nodiscard]] std::size_t index(const model::Item& of_this_edition) const { return static_cast<std::size_t>(&of_this_edition - items_.data()); }
  // How many names stand before its own, in the order of their letters; the same of a name that the edition does not have.
  [[nodiscard]] std::size_t rank(const model::Item& of_this_edition) const { return ranks_[index(of_this_edition)]; }
  [[nodiscard]] std::size_t rank_of(std::string_view name) const;
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
  [[nodiscard]] std::span<const PrintedRule> rules() const { return rules_; }
  [[nodiscard]] std::span<const TableRow> tables() const { return tables_; }
  [[nodiscard]] std::span<const RuleRow> decision_rules() const { return decision_rules_; }
  // The norms that may speak of an item, defaults only; and the errors that compute for it, exact ones first.
  [[nodiscard]] std::span<const NormRow* const> norms_of(const model::Item& of_this_edition) const { return norms_by_item_[index(of_this_edition)]; }
  [[nodiscard]] std::span<const ErrorRow* const> errors_of(const model::Item& of_this_edition) const { return errors_by_item_[index(of_this_edition)]; }
  [[nodiscard]] const NormRow* norm(const model::RowId& row) const;
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
  std::vector<PrintedRule> rules_;
  std::vector<TableRow> tables_;
  std::vector<Source> sources_;
  std::vector<model::Concern> concerns_;
  std::vector<AlertRow> alerts_;
  std::vector<RuleRow> decision_rules_;
  std::vector<BodyRow> bodies_;
  std::vector<BodyReach> reaches_;  // of bodies_, in its order
  Evidence evidence_;
  std::vector<std::vector<const NormRow*>> norms_by_item_;
  std::vector<std::vector<const ErrorRow*>> errors_by_item_;
  std::vector<const NormRow*> norms_by_row_;
  // Where a name stands, or would: the table is half empty, so that nearly every name is found at its first slot.
  [[nodiscard]] std::size_t slot_of(std::string_view name) const;
  std::vector<std::uint32_t> items_by_name_;  // index of items_ and one; 0 where no name stands
  std::vector<Keyed> items_by_key_;  // half empty too
  std::vector<const model::Item*> sorted_items_;  // by name
  std::vector<std::size_t> ranks_;                // of items_, in sorted_items_
};

// active, passive or neither, by the item's name.
[[nodiscard]] Mode mode_of(const model::Item& item);

// What is compiled into the library.
[[nodiscard]] EditionTexts built_in_texts();
// The edition made of it; null only if the library itself was built wrong.
[[nodiscard]] const Edition* built_in_edition();

}  // namespace limbledger::reference
