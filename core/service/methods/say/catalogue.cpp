#include "core/service/methods/say/catalogue.hpp"

#include "core/model/exam/exam.hpp"
#include "core/reference/edition.hpp"
#include "core/service/methods/say/form_texts.hpp"
#include "core/service/methods/say/texts.hpp"
#include "core/wire/parse.hpp"

#include <algorithm>
#include <string_view>

namespace limbledger::service {

namespace {

template <class T>
[[nodiscard]] bool among(const std::vector<T>& list, const T& what) {
  return std::find(list.begin(), list.end(), what) != list.end();
}

[[nodiscard]] std::string regions_of(const reference::Edition& edition) {
  std::string out;
  std::string_view last;
  for (const model::Item& item : edition.items()) {
    if (item.region.text != last && out.find(item.region.text) == std::string::npos) {
      out += (out.empty() ? "" : ", ") + item.region.text;
    }
    last = item.region.text;
  }
  return out;
}

void check_names(const reference::Edition& edition, const CatalogueReadParams& params, std::vector<wire::Fault>& faults) {
  const auto in_region = [&](const model::Item& item) { return item.region == *params.region; };
  if (params.region && std::none_of(edition.items().begin(), edition.items().end(), in_region)) {
    faults.emplace_back("params.unknown_word", "/region", regions_of(edition));
  }
  if (params.items) {
    for (std::size_t i = 0; i < params.items->size(); ++i) {
      const model::ItemId& id = (*params.items)[i];
      if (edition.item(id) == nullptr) {
        const std::string near = edition.catalogue().nearest_item(id);
        faults.emplace_back("item.unknown", "/items" + wire::pointer_step(i), near.empty() ? "an item of the catalogue (nothing is near)" : "nearest: " + near);
      }
    }
  }
  if (params.scales) {
    for (std::size_t i = 0; i < params.scales->size(); ++i) {
      if (edition.scale((*params.scales)[i]) == nullptr) {
        faults.emplace_back("params.unknown_word", "/scales" + wire::pointer_step(i), "a scale of the catalogue");
      }
    }
  }
}

class Labelled {
 public:
  void add(std::string_view kind, std::string_view word) {
    LabelledWord one{model::Word{std::string(kind)}, model::Word{std::string(word)}, model::MessageId{"msg." + std::string(kind) + "." + std::string(word)}};
    if (std::none_of(words.begin(), words.end(), [&](const LabelledWord& known) { return known.label == one.label; })) {
      words.push_back(std::move(one));
    }
  }
  void add(std::string_view kind, const std::optional<model::Word>& word) {
    if (word) {
      add(kind, word->text);
    }
  }
  void add(std::string_view kind, const std::optional<std::vector<model::Word>>& list) {
    for (const model::Word& word : list.value_or(std::vector<model::Word>{})) {
      add(kind, word.text);
    }
  }
  template <class E>
  void add_all(std::string_view kind) {
    for (const std::string_view word : wire::type_of<E>().words) {
      add(kind, word);
    }
  }

  std::vector<LabelledWord> words;
};

[[nodiscard]] std::vector<LabelledWord> vocabulary(const reference::Edition& edition) {
  Labelled labelled;
  for (const model::Sequence& sequence : edition.sequences()) {
    labelled.add("complaint", sequence.complaint.text);
    for (const model::SequenceStep& step : sequence.steps) {
      labelled.add("position", step.position.text);
    }
  }
  for (const model::Item& item : edition.items()) {
    labelled.add("region", item.region.text);
    labelled.add("position", item.positions);
    labelled.add("instrument", item.instruments);
    labelled.add("end_feel", item.end_feels);
    labelled.add("toward", item.toward);
    labelled.add("unit", item.unit);
  }
  labelled.add_all<model::Setting>("setting");
  labelled.add_all<model::WhyNot>("why");
  labelled.add_all<model::Quality>("quality");
  labelled.add_all<model::Origin>("origin");
  labelled.add_all<model::Side>("side");
  return std::move(labelled.words);
}

}  // namespace

Result<CatalogueReadResult> catalogue_read(Context& context, const CatalogueReadParams& params) {
  if (context.edition == nullptr) {
    return wire::Fault("internal.failure", "");
  }
  const auto words = words_if_asked(params.language);
  if (!words) {
    return words.error();
  }
  const reference::Edition& edition = *context.edition;
  std::vector<wire::Fault> faults;
  check_names(edition, params, faults);
  if (!faults.empty()) {
    return wire::Refusal(std::move(faults));
  }
  CatalogueReadResult result;
  result.edition = edition.id();
  for (const model::Sequence& sequence : edition.sequences()) {
    result.complaints.push_back(sequence.complaint);
  }
  const bool scales_alone = params.scales && !params.items && !params.region;
  for (const model::Item& item : edition.items()) {
    const bool wanted = (!params.region || item.region == *params.region) && (!params.items || among(*params.items, item.item)) && !scales_alone;
    if (wanted) {
      result.items.push_back(item);
    }
  }
  for (const model::Scale& scale : edition.scales()) {
    const bool used = std::any_of(result.items.begin(), result.items.end(), [&](const model::Item& item) { return item.scale == scale.scale; });
    if (params.scales ? among(*params.scales, scale.scale) : used) {
      result.scales.push_back(scale);
    }
  }
  if (params.words && *params.words) {
    result.words = vocabulary(edition);
  }
  if (*words != nullptr) {
    result.texts = texts_named_in(**words, wire::type_of<CatalogueReadResult>(), &result);
  }
  return result;
}

}  // namespace limbledger::service
