// catalogue.read: what can be examined, with techniques, limits, grades and sources, as message names and numbers.
// Without params everything of the edition; with a region or with names only those. Refused: names that are not there.
#pragma once

#include "core/model/item.hpp"
#include "core/service/context.hpp"
#include "core/wire/fault.hpp"

#include <optional>
#include <vector>

namespace limbledger::service {

struct CatalogueReadParams {
  std::optional<model::Word> region;
  std::optional<std::vector<model::ItemId>> items;
  std::optional<std::vector<model::ScaleId>> scales;
};
BOOST_DESCRIBE_STRUCT(CatalogueReadParams, (), (region, items, scales))

constexpr auto notes(const CatalogueReadParams*) {
  return std::array{wire::Note{"region", "only the items of this region, such as knee"},
                    wire::Note{"items", "only these items"},
                    wire::Note{"scales", "these scales; without it, those that the items use"}};
}

struct CatalogueReadResult {
  std::vector<model::Item> items;
  std::vector<model::Scale> scales;
  model::EditionId edition;
  std::vector<model::Word> complaints;
};
BOOST_DESCRIBE_STRUCT(CatalogueReadResult, (), (items, scales, edition, complaints))
constexpr auto notes(const CatalogueReadResult*) {
  return std::array{wire::Note{"complaints", "those that exam.open and form.describe take in this edition, whatever was asked for; their words are msg.complaint.<name>"}};
}

[[nodiscard]] Result<CatalogueReadResult> catalogue_read(Context& context, const CatalogueReadParams& params);

}  // namespace limbledger::service
