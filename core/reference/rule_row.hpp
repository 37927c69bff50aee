// What is known of one decision rule besides its logic: the published version, what it asks and by which item, for whom it was made,
// and where that comes from. Rows stand in data/decision_rules.json; the logic is in core/interpret/rules. Source: decision rules page.
#pragma once

#include "core/model/item.hpp"
#include "core/wire/type.hpp"

#include <optional>
#include <vector>

namespace limbledger::reference {

struct RuleAsks {
  model::Word input;                  // as results name it: calf_difference
  std::vector<model::ItemId> items;   // what records it; empty where it is no item (age, days since the injury)
};
BOOST_DESCRIBE_STRUCT(RuleAsks, (), (input, items))

struct RuleRow {
  model::RuleId rule;         // rule.wells_dvt
  model::EditionId edition;   // wells_dvt/2003-2level
  std::vector<RuleAsks> asks;
  wire::Remark made_for;      // in whom it was made or tested
  std::vector<model::SourceId> sources;
  model::Status status{};
  std::optional<wire::Remark> remark;  // what is disputed, or taken from memory
};
BOOST_DESCRIBE_STRUCT(RuleRow, (), (rule, edition, asks, made_for, sources, status, remark))

}  // namespace limbledger::reference
