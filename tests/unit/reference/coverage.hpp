// What an item of the catalogue must have before a page's line counts as held: technique, purpose, what the result means, when not,
// how else, and a source. Our own demand (the plan of the examination), no publication.
#pragma once

#include "core/reference/edition.hpp"

#include <algorithm>
#include <functional>
#include <sstream>
#include <string>
#include <string_view>
#include <vector>

namespace limbledger {

// Whether a message has words.
using HasWords = std::function<bool(const std::string&)>;

// One line of a page: the items that hold it; `item=choice` asks for a choice of that item.
struct CoverageLine {
  std::string named;
  std::string items;
};

// Whoever cannot lie down so can be told nothing by such a position.
[[nodiscard]] inline bool lying_alone(const model::Item& item) {
  constexpr std::string_view lying[] = {"supine", "half_sitting", "left_tilt", "prone"};
  const auto lies = [&](const model::Word& position) { return std::find(std::begin(lying), std::end(lying), position.text) != std::end(lying); };
  return item.positions && std::all_of(item.positions->begin(), item.positions->end(), lies);
}

inline void lacks_words(const std::optional<model::MessageId>& message, const std::string& what, const HasWords& says,
                        std::vector<std::string>& out) {
  if (!message || !says(message->text)) {
    out.push_back(what);
  }
}

inline void lacks_meaning(const model::Item& item, const reference::Edition& edition, const HasWords& says, std::vector<std::string>& out) {
  const std::string name = item.item.text;
  if (item.value == model::ValueKind::test || item.counts) {
    lacks_words(item.text.positive, name + " positive", says, out);
  }
  for (const model::ChoiceId& choice : item.choices.value_or(std::vector<model::ChoiceId>{})) {
    lacks_words(model::MessageId{"msg.choice." + choice.text}, name + " choice " + choice.text, says, out);
  }
  const model::Scale* scale = item.scale ? edition.scale(*item.scale) : nullptr;
  if (item.scale && scale == nullptr) {
    out.push_back(name + " scale");
  }
  for (const model::ScaleGrade& grade : scale == nullptr ? std::vector<model::ScaleGrade>{} : scale->grades) {
    lacks_words(grade.means, name + " grade " + grade.grade.text, says, out);
  }
}

// What an item lacks, named; empty where it has all.
[[nodiscard]] inline std::vector<std::string> lacking(const model::Item& item, const reference::Edition& edition, const HasWords& says) {
  std::vector<std::string> out;
  const std::string name = item.item.text;
  const bool provokes = item.discomfort == model::Discomfort::some || item.discomfort == model::Discomfort::high;
  lacks_words(item.text.how, name + " how", says, out);
  lacks_words(item.text.purpose, name + " purpose", says, out);
  lacks_meaning(item, edition, says, out);
  if (item.withheld_by || provokes) {
    lacks_words(item.text.care, name + " care", says, out);
  }
  if (lying_alone(item) && !(item.instead && !item.instead->empty())) {
    lacks_words(item.text.otherwise, name + " instead or otherwise", says, out);
  }
  const auto known = [&](const model::SourceId& source) { return edition.source(source) != nullptr; };
  if (item.sources.empty() || !std::all_of(item.sources.begin(), item.sources.end(), known)) {
    out.push_back(name + " source");
  }
  return out;
}

// What a line of a page lacks in this edition.
[[nodiscard]] inline std::vector<std::string> lacking(const CoverageLine& line, const reference::Edition& edition, const HasWords& says) {
  std::vector<std::string> out;
  std::istringstream names(line.items);
  std::size_t count = 0;
  for (std::string wanted; names >> wanted; ++count) {
    const std::size_t equals = wanted.find('=');
    const model::Item* item = edition.item(wanted.substr(0, equals));
    if (item == nullptr) {
      out.push_back(wanted);
      continue;
    }
    const auto choices = item->choices.value_or(std::vector<model::ChoiceId>{});
    if (equals != std::string::npos && std::find(choices.begin(), choices.end(), model::ChoiceId{wanted.substr(equals + 1)}) == choices.end()) {
      out.push_back(wanted);
    }
    const std::vector<std::string> of_item = lacking(*item, edition, says);
    out.insert(out.end(), of_item.begin(), of_item.end());
  }
  if (count == 0) {
    out.push_back(line.named + ": no item");
  }
  return out;
}

// What a sequence lacks: it itself, a minimum set, or in it any of these items.
[[nodiscard]] inline std::vector<std::string> lacking_minimum(const std::string& complaint, const std::string& any_of,
                                                              const reference::Edition& edition) {
  const model::Sequence* sequence = edition.sequence(model::Word{complaint});
  if (sequence == nullptr) {
    return {complaint};
  }
  std::vector<std::string> names;
  std::istringstream in(any_of);
  for (std::string name; in >> name;) {
    names.push_back(name);
  }
  const bool held = std::any_of(sequence->steps.begin(), sequence->steps.end(), [&](const model::SequenceStep& step) {
    const bool minimum = step.minimum.value_or(false) || step.minimum_under;
    return minimum && (names.empty() || std::find(names.begin(), names.end(), step.item.text) != names.end());
  });
  return held ? std::vector<std::string>{} : std::vector<std::string>{complaint + " minimum: " + any_of};
}

}  // namespace limbledger
