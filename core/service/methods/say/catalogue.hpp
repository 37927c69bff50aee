// catalogue.read: what can be examined, with techniques, limits, grades and sources, as message names and numbers.
// Without params everything of the edition; with a region or with names only those. Refused: names that are not there.
#pragma once

#include "core/model/item.hpp"
#include "core/service/context.hpp"
#include "core/service/methods/say/form.hpp"
#include "core/wire/fault.hpp"

#include <optional>
#include <vector>

namespace limbledger::service {

struct CatalogueReadParams {
  std::optional<model::Word> region;
  std::optional<std::vector<model::ItemId>> items;
  std::optional<std::vector<model::ScaleId>> scales;
  std::optional<bool> words;
  std::optional<model::Word> language = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(CatalogueReadParams, (), (region, items, scales, words, language))

constexpr auto notes(const CatalogueReadParams*) {
  return std::array{wire::Note{"region", "only the items of this region, such as knee"},
                    wire::Note{"items", "only these items"},
                    wire::Note{"scales", "these scales; without it, those that the items use"},
                    wire::Note{"words", "true: also the label of each word of the vocabulary that this edition uses"},
                    wire::Note{"language", "en, es or fr: adds the words of every message that the answer names; es and fr are labels for review by a clinician, and their sentences are English"}};
}

// A word of the vocabulary and the message that says it to people.
struct LabelledWord {
  model::Word kind;
  model::Word word;
  model::MessageId label;
};
BOOST_DESCRIBE_STRUCT(LabelledWord, (), (kind, word, label))
constexpr auto notes(const LabelledWord*) {
  return std::array{wire::Note{"kind", "complaint, region, position, instrument, end_feel, toward, unit, setting, why, quality, origin or side"}};
}

struct CatalogueReadResult {
  std::vector<model::Item> items;
  std::vector<model::Scale> scales;
  model::EditionId edition;
  std::vector<model::Word> complaints;
  std::optional<std::vector<LabelledWord>> words;
  std::optional<std::vector<FormText>> texts = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(CatalogueReadResult, (), (items, scales, edition, complaints, words, texts))
constexpr auto notes(const CatalogueReadResult*) {
  return std::array{wire::Note{"complaints", "those that exam.open and form.describe take in this edition, whatever was asked for; their words are msg.complaint.<name>"}};
}

[[nodiscard]] Result<CatalogueReadResult> catalogue_read(Context& context, const CatalogueReadParams& params);

}  // namespace limbledger::service
