// The rows of one edition while they are loaded and cross-checked; internal to reference, the door is edition.hpp.
// Faults carry the path of the row in its file and say what must hold.
#pragma once

#include "core/reference/edition.hpp"

#include <string>
#include <vector>

namespace limbledger::reference {

struct EditionLine {
  model::EditionId edition;
  model::PartialDate dated;
  std::optional<std::vector<model::Word>> regions;  // in the order of a page
};
BOOST_DESCRIBE_STRUCT(EditionLine, (), (edition, dated, regions))

struct Facts {
  EditionLine line;
  std::vector<model::Item> items;
  std::vector<model::Scale> scales;
  std::vector<model::Sequence> sequences;
  std::vector<NormRow> norms;
  std::vector<ErrorRow> errors;
  std::vector<FigureRow> figures;
  std::vector<PrintedRule> rules;
  std::vector<TableRow> tables;
  std::vector<Source> sources;
  std::vector<model::Concern> concerns;
  std::vector<AlertRow> alerts;
  std::vector<RuleRow> decision_rules;
  std::vector<BodyRow> bodies;

  [[nodiscard]] const model::Item* item(const model::ItemId& id) const;
  [[nodiscard]] const model::Scale* scale(const model::ScaleId& id) const;
  [[nodiscard]] bool has_concern(const model::ConcernId& id) const;
  [[nodiscard]] bool has_scale(const model::ScaleId& id) const;
  [[nodiscard]] bool has_source(const model::SourceId& id) const;
};

using Faults = std::vector<wire::Fault>;

// Items, scales, sequences, sources: names are used once and resolve, limits are in order and nested, units fit the kind.
void check_catalogue(const Facts& facts, Faults& faults);

// Sequences and concerns: steps in an order that turns the person least, the minimum set, what withholds what.
void check_sequences(const Facts& facts, Faults& faults);

// Alerts: what they stop, open and rest on is in the catalogue and the sources; three things at most are done meanwhile.
void check_alerts(const Facts& facts, Faults& faults);

// Decision rules: each once, with inputs whose items are in the catalogue, and sources of the list.
void check_decision_rules(const Facts& facts, Faults& faults);

// Bodies: what opens them and what they speak of is in the catalogue; a reason with what does not apply, comparators with what is uncompared.
void check_bodies(const Facts& facts, Faults& faults);
// The items that a row speaks of.
[[nodiscard]] BodyReach reach_of(const BodyRow& row, const std::vector<model::Item>& items);

// Norms, errors and figures: ages in order, figures in order, what is derived follows from what it is derived from.
void check_motion(const Facts& facts, Faults& faults);

// Rules and tables as printed: names once, sources of the list.
void check_printed(const Facts& facts, Faults& faults);

// Whether a norm may speak of an item at all: named by it, or of its family, direction, mode and position.
[[nodiscard]] bool speaks_of(const NormRow& row, const model::Item& item);
// For each item of the edition, in its order.
[[nodiscard]] std::vector<std::vector<const NormRow*>> norms_by_item(const std::vector<NormRow>& norms, const std::vector<model::Item>& items);
[[nodiscard]] std::vector<std::vector<const ErrorRow*>> errors_by_item(const std::vector<ErrorRow>& errors, const std::vector<model::Item>& items);

// Printed norms to the direction their motion is named for (sign, and low with high); faults where the motion is unknown.
void turn_norms(Facts& facts, Faults& faults);

}  // namespace limbledger::reference
