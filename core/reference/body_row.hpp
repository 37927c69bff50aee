// What one state of a body changes: which answer (or age) opens it, which items do not apply on that side and the reason to offer,
// which comparators are not valid, whether tests speak there, which answers are no longer reliable, by which gate rules of a region do
// not hold, which positions are not for this person, and what is said. Rows stand in data/bodies.json. Ages in completed years; items
// are named by the beginnings of their names, so that "foot." is a whole region.
#pragma once

#include "core/model/item.hpp"
#include "core/model/value.hpp"
#include "core/wire/type.hpp"

#include <optional>
#include <vector>

namespace limbledger::reference {

// The state does not hold while a count of this item is under the limit.
struct BodyUnless {
  model::ItemId item;
  wire::Count<1, 100> under;
};
BOOST_DESCRIBE_STRUCT(BodyUnless, (), (item, under))

struct BodyRow {
  model::Word body;                                   // body_state.knee_fused
  std::optional<model::ItemId> item;                  // opens it by yes, by one of `choices`, or by a count; absent: by age alone
  std::optional<std::vector<model::ChoiceId>> choices;
  std::optional<wire::Count<1, 100>> at_least;
  std::optional<wire::Count<0, 130>> age_from;
  std::optional<wire::Count<1, 130>> age_under;
  std::optional<BodyUnless> unless;
  std::optional<model::WhyNot> opened_by_reason;      // this reason, given for an item of `reason_region`, opens it too
  std::optional<model::Word> reason_region;
  std::optional<std::vector<model::Word>> absent;     // items that do not apply
  std::optional<std::vector<model::Word>> but;        // of those (or of not_reliable), the ones that hold all the same
  std::optional<model::WhyNot> why_not;               // the reason to offer for them
  std::optional<std::vector<model::Word>> uncompared; // items for which `comparators` are not valid
  std::optional<std::vector<model::Word>> comparators;  // norm, other_side
  std::optional<bool> silent;                         // tests of what is uncompared say nothing, in the one direction or the other
  std::optional<std::vector<model::Word>> not_reliable;  // items of which a no settles nothing
  std::optional<model::Word> gate;                    // why rules of these regions are not negative
  std::optional<std::vector<model::Word>> gate_regions;
  std::optional<std::vector<model::Word>> cannot;     // lie_prone, lie_supine, stand, sit
  model::MessageId message;
  std::vector<model::SourceId> sources;
  model::Status status{};
};
BOOST_DESCRIBE_STRUCT(BodyRow, (), (body, item, choices, at_least, age_from, age_under, unless, opened_by_reason, reason_region, absent, but, why_not, uncompared,
                                    comparators, silent, not_reliable, gate, gate_regions, cannot, message, sources, status))

// The items of the edition that one row speaks of, by their place in the catalogue.
struct BodyReach {
  std::vector<bool> absent;
  std::vector<bool> uncompared;
  std::vector<bool> not_reliable;
};

}  // namespace limbledger::reference
