#include "core/reference/edition.hpp"

#include "core/reference/read_file.hpp"
#include "core/reference/embedded.hpp"
#include "core/reference/evidence/load.hpp"
#include "core/reference/facts.hpp"

#include <algorithm>
#include <array>
#include <bit>
#include <cstring>
#include <iterator>
#include <set>
#include <span>

namespace limbledger::reference {

namespace {

// One file holds one list, under the name that faults start with.
struct ItemFile {
  std::vector<model::Item> items;
};
BOOST_DESCRIBE_STRUCT(ItemFile, (), (items))
struct ScaleFile {
  std::vector<model::Scale> scales;
};
BOOST_DESCRIBE_STRUCT(ScaleFile, (), (scales))
struct SequenceFile {
  std::vector<model::Sequence> sequences;
};
BOOST_DESCRIBE_STRUCT(SequenceFile, (), (sequences))
struct NormFile {
  std::vector<NormRow> norms;
};
BOOST_DESCRIBE_STRUCT(NormFile, (), (norms))
struct ErrorFile {
  std::vector<ErrorRow> errors;
};
BOOST_DESCRIBE_STRUCT(ErrorFile, (), (errors))
struct FigureFile {
  std::vector<FigureRow> figures;
};
BOOST_DESCRIBE_STRUCT(FigureFile, (), (figures))
struct RuleFile {
  std::vector<PrintedRule> rules;
};
BOOST_DESCRIBE_STRUCT(RuleFile, (), (rules))
struct TableFile {
  std::vector<TableRow> tables;
};
BOOST_DESCRIBE_STRUCT(TableFile, (), (tables))
struct SourceFile {
  std::vector<Source> sources;
};
BOOST_DESCRIBE_STRUCT(SourceFile, (), (sources))

struct ConcernFile {
  std::vector<model::Concern> concerns;
};
BOOST_DESCRIBE_STRUCT(ConcernFile, (), (concerns))

struct AlertFile {
  std::vector<AlertRow> alerts;
};
BOOST_DESCRIBE_STRUCT(AlertFile, (), (alerts))

struct DecisionRuleFile {
  std::vector<RuleRow> decision_rules;
};
BOOST_DESCRIBE_STRUCT(DecisionRuleFile, (), (decision_rules))

struct BodyFile {
  std::vector<BodyRow> bodies;
};
BOOST_DESCRIBE_STRUCT(BodyFile, (), (bodies))

constexpr const char* where_asked = "seated";  // the position of an item that needs none

// The sequence for no complaint: every item, in its first position.
void fill_free(Facts& facts) {
  for (model::Sequence& sequence : facts.sequences) {
    if (sequence.complaint.text != "free" || !sequence.steps.empty()) {
      continue;
    }
    for (const model::Item& item : facts.items) {
      const bool positioned = item.positions && !item.positions->empty();
      sequence.steps.push_back({item.item, positioned ? item.positions->front() : model::Word{where_asked}, {}, {}, {}, {}, {}});
    }
  }
}

// The last sixteen bytes and the length: names are looked up a thousand times in one judgement, and their beginnings (knee., history.)
// tell them apart least. Where a name stands in the table is seen by nobody, so the order of bytes in a word does not matter. The
// factor is 2^64 divided by the golden ratio.
[[nodiscard]] std::uint64_t hash_of(std::string_view name) {
  constexpr std::uint64_t factor = 0x9e3779b97f4a7c15U;
  constexpr std::size_t word_size = sizeof(std::uint64_t);
  std::array<std::uint64_t, 2> words{};
  if (name.size() >= 2 * word_size) {
    std::memcpy(words.data(), name.data() + name.size() - 2 * word_size, 2 * word_size);
  } else {
    std::memcpy(words.data(), name.data(), name.size());
  }
  std::uint64_t hash = (name.size() ^ words[0]) * factor;
  hash = (hash ^ (hash >> 32U) ^ words[1]) * factor;
  return hash ^ (hash >> 32U);
}

[[nodiscard]] std::set<std::string_view> words_of(std::string_view name) {
  std::set<std::string_view> words;
  for (std::size_t at = 0; at <= name.size();) {
    const std::size_t end = std::min(name.find_first_of("._", at), name.size());
    words.insert(name.substr(at, end - at));
    at = end + 1;
  }
  return words;
}

// Of a name that is short of a word, or has its words in another order: those that hold all its words and the fewest others.
[[nodiscard]] std::string named_by_words(std::string_view name, std::span<const std::string_view> known) {
  constexpr std::size_t shown_max = 3;
  const std::set<std::string_view> asked = words_of(name);
  std::string out;
  std::size_t fewest = std::string_view::npos;
  std::size_t shown = 0;
  for (const std::string_view one : known) {
    const std::set<std::string_view> words = words_of(one);
    if (asked.size() < 2 || words.size() > fewest || !std::includes(words.begin(), words.end(), asked.begin(), asked.end())) {
      continue;
    }
    shown = words.size() < fewest ? 0 : shown;
    fewest = words.size();
    if (shown++ < shown_max) {
      out = (shown == 1 ? "" : out + ", ") + std::string(one);
    }
  }
  return out;
}

}  // namespace

const model::Item* Facts::item(const model::ItemId& id) const {
  const auto found = std::find_if(items.begin(), items.end(), [&](const model::Item& one) { return one.item == id; });
  return found == items.end() ? nullptr : &*found;
}

const model::Scale* Facts::scale(const model::ScaleId& id) const {
  const auto found = std::find_if(scales.begin(), scales.end(), [&](const model::Scale& one) { return one.scale == id; });
  return found == scales.end() ? nullptr : &*found;
}

bool Facts::has_scale(const model::ScaleId& id) const { return scale(id) != nullptr; }

bool Facts::has_concern(const model::ConcernId& id) const {
  return std::any_of(concerns.begin(), concerns.end(), [&](const model::Concern& one) { return one.concern == id; });
}

bool Facts::has_source(const model::SourceId& id) const {
  return std::any_of(sources.begin(), sources.end(), [&](const Source& one) { return one.source == id; });
}

Result<std::unique_ptr<const Edition>> Edition::load(const EditionTexts& texts) {
  Faults faults;
  Facts facts;
  facts.line = read_file<EditionLine>(texts.edition, faults);
  for (const std::string_view text : texts.items) {
    std::vector<model::Item> items = read_file<ItemFile>(text, faults).items;
    facts.items.insert(facts.items.end(), std::make_move_iterator(items.begin()), std::make_move_iterator(items.end()));
  }
  facts.scales = read_file<ScaleFile>(texts.scales, faults).scales;
  for (const std::string_view text : texts.sequences) {
    std::vector<model::Sequence> sequences = read_file<SequenceFile>(text, faults).sequences;
    facts.sequences.insert(facts.sequences.end(), std::make_move_iterator(sequences.begin()), std::make_move_iterator(sequences.end()));
  }
  fill_free(facts);
  for (const std::string_view text : texts.norms) {
    std::vector<NormRow> norms = read_file<NormFile>(text, faults).norms;
    facts.norms.insert(facts.norms.end(), std::make_move_iterator(norms.begin()), std::make_move_iterator(norms.end()));
  }
  facts.errors = read_file<ErrorFile>(texts.errors, faults).errors;
  if (!texts.figures.empty()) {
    facts.figures = read_file<FigureFile>(texts.figures, faults).figures;
  }
  if (!texts.rules.empty()) {
    facts.rules = read_file<RuleFile>(texts.rules, faults).rules;
  }
  if (!texts.tables.empty()) {
    facts.tables = read_file<TableFile>(texts.tables, faults).tables;
  }
  facts.sources = read_file<SourceFile>(texts.sources, faults).sources;
  facts.concerns = read_file<ConcernFile>(texts.concerns, faults).concerns;
  Evidence evidence = read_evidence(texts.evidence, faults);
  if (!texts.alerts.empty()) {
    facts.alerts = read_file<AlertFile>(texts.alerts, faults).alerts;
  }
  if (!texts.decision_rules.empty()) {
    facts.decision_rules = read_file<DecisionRuleFile>(texts.decision_rules, faults).decision_rules;
  }
  if (!texts.bodies.empty()) {
    facts.bodies = read_file<BodyFile>(texts.bodies, faults).bodies;
  }
  // What names nothing because its file did not read would only hide the first cause.
  if (faults.empty()) {
    check_catalogue(facts, faults);
    check_sequences(facts, faults);
    check_alerts(facts, faults);
    check_decision_rules(facts, faults);
    check_bodies(facts, faults);
    turn_norms(facts, faults);
    check_motion(facts, faults);
    check_printed(facts, faults);
    check_evidence(evidence, facts, faults);
  }
  if (!faults.empty()) {
    return wire::Refusal(std::move(faults));
  }
  std::unique_ptr<Edition> edition(new Edition());
  edition->id_ = std::move(facts.line.edition);
  edition->regions_ = facts.line.regions.value_or(std::vector<model::Word>{});
  edition->items_ = std::move(facts.items);
  edition->scales_ = std::move(facts.scales);
  edition->sequences_ = std::move(facts.sequences);
  edition->norms_ = std::move(facts.norms);
  edition->errors_ = std::move(facts.errors);
  edition->figures_ = std::move(facts.figures);
  edition->rules_ = std::move(facts.rules);
  edition->tables_ = std::move(facts.tables);
  edition->sources_ = std::move(facts.sources);
  edition->concerns_ = std::move(facts.concerns);
  edition->alerts_ = std::move(facts.alerts);
  edition->decision_rules_ = std::move(facts.decision_rules);
  edition->bodies_ = std::move(facts.bodies);
  for (const BodyRow& row : edition->bodies_) {
    edition->reaches_.push_back(limbledger::reference::reach_of(row, edition->items_));
  }
  edition->evidence_ = std::move(evidence);
  edition->norms_by_item_ = norms_by_item(edition->norms_, edition->items_);
  edition->errors_by_item_ = errors_by_item(edition->errors_, edition->items_);
  for (const NormRow& row : edition->norms_) {
    edition->norms_by_row_.push_back(&row);
  }
  std::sort(edition->norms_by_row_.begin(), edition->norms_by_row_.end(), [](const NormRow* a, const NormRow* b) { return a->row < b->row; });
  edition->items_by_name_.resize(std::bit_ceil(edition->items_.size() * 2 + 1));
  for (std::size_t i = 0; i < edition->items_.size(); ++i) {
    edition->items_by_name_[edition->slot_of(edition->items_[i].item.text)] = static_cast<std::uint32_t>(i + 1);
    edition->sorted_items_.push_back(&edition->items_[i]);
  }
  edition->items_by_key_.resize(edition->items_by_name_.size());
  for (const model::Item& item : edition->items_) {
    const std::uint64_t key = key_of(item.item.text);
    std::size_t slot = key & (edition->items_by_key_.size() - 1);
    while (edition->items_by_key_[slot].known) {
      slot = (slot + 1) & (edition->items_by_key_.size() - 1);
    }
    std::uint8_t sides = 0;
    for (const model::Side side : item.sides) {
      sides = static_cast<std::uint8_t>(sides | 1U << static_cast<unsigned>(side));
    }
    edition->items_by_key_[slot] = {key, static_cast<std::uint32_t>(edition->index(item)), sides, true};
  }
  std::sort(edition->sorted_items_.begin(), edition->sorted_items_.end(), [](const model::Item* a, const model::Item* b) { return a->item.text < b->item.text; });
  edition->ranks_.resize(edition->items_.size());
  for (std::size_t i = 0; i < edition->sorted_items_.size(); ++i) {
    edition->ranks_[edition->index(*edition->sorted_items_[i])] = i;
  }
  return std::unique_ptr<const Edition>(std::move(edition));
}

std::size_t Edition::slot_of(std::string_view name) const {
  const std::size_t mask = items_by_name_.size() - 1;
  std::size_t slot = hash_of(name) & mask;
  while (items_by_name_[slot] != 0 && items_[items_by_name_[slot] - 1].item.text != name) {
    slot = (slot + 1) & mask;
  }
  return slot;
}

const model::Item* Edition::item(std::string_view name) const {
  const std::uint32_t found = items_by_name_[slot_of(name)];
  return found == 0 ? nullptr : &items_[found - 1];
}

std::size_t Edition::rank_of(std::string_view name) const {
  const auto found = std::lower_bound(sorted_items_.begin(), sorted_items_.end(), name, [](const model::Item* one, std::string_view wanted) { return one->item.text < wanted; });
  return static_cast<std::size_t>(found - sorted_items_.begin());
}

const NormRow* Edition::norm(const model::RowId& row) const {
  const auto found = std::lower_bound(norms_by_row_.begin(), norms_by_row_.end(), row, [](const NormRow* one, const model::RowId& wanted) { return one->row < wanted; });
  return found == norms_by_row_.end() || !((*found)->row == row) ? nullptr : *found;
}

const model::Scale* Edition::scale(const model::ScaleId& id) const {
  const auto found = std::find_if(scales_.begin(), scales_.end(), [&](const model::Scale& one) { return one.scale == id; });
  return found == scales_.end() ? nullptr : &*found;
}

const model::Sequence* Edition::sequence(const model::Word& complaint) const {
  const auto found = std::find_if(sequences_.begin(), sequences_.end(), [&](const model::Sequence& one) { return one.complaint == complaint; });
  return found == sequences_.end() ? nullptr : &*found;
}

const AlertRow* Edition::alert(std::string_view name) const {
  const auto found = std::find_if(alerts_.begin(), alerts_.end(), [&](const AlertRow& one) { return one.alert.text == name; });
  return found == alerts_.end() ? nullptr : &*found;
}

const Source* Edition::source(const model::SourceId& id) const {
  const auto found = std::find_if(sources_.begin(), sources_.end(), [&](const Source& one) { return one.source == id; });
  return found == sources_.end() ? nullptr : &*found;
}

model::CatalogueView Edition::catalogue() const {
  model::CatalogueView view;
  view.item = [this](const model::ItemId& id) { return item(id); };
  view.scale = [this](const model::ScaleId& id) { return scale(id); };
  view.nearest_item = [this](const model::ItemId& id) {
    std::vector<std::string_view> known;
    for (const model::Item& one : items_) {
      known.push_back(one.item.text);
    }
    const std::string named = named_by_words(id.text, known);
    return named.empty() ? std::string(wire::nearest(id.text, known)) : named;
  };
  return view;
}

EditionTexts built_in_texts() {
  EditionTexts texts;
  texts.edition = embedded("edition.json");
  for (const char* region : {"knee", "hip", "pelvis", "leg", "ankle", "foot", "nerve", "vessel", "skin", "gait", "function", "history", "general", "body"}) {
    texts.items.push_back(embedded("items/" + std::string(region) + ".json"));
  }
  texts.scales = embedded("scales.json");
  for (const char* part : {"general", "knee", "hip", "child", "lower_leg", "nerve", "after"}) {
    texts.sequences.push_back(embedded("sequences/" + std::string(part) + ".json"));
  }
  for (const char* region : {"knee", "hip", "hip_rotation", "ankle", "foot", "alignment", "function"}) {
    texts.norms.push_back(embedded("motion/norms/" + std::string(region) + ".json"));
  }
  texts.errors = embedded("motion/errors.json");
  texts.figures = embedded("motion/figures.json");
  texts.rules = embedded("motion/rules.json");
  texts.tables = embedded("motion/tables.json");
  texts.sources = embedded("sources.json");
  texts.concerns = embedded("concerns.json");
  texts.alerts = embedded("alerts.json");
  texts.bodies = embedded("bodies.json");
  texts.decision_rules = embedded("decision_rules.json");
  texts.evidence.accuracy = embedded("evidence/accuracy.json");
  texts.evidence.pretest = embedded("evidence/pretest.json");
  texts.evidence.conditions = embedded("evidence/conditions.json");
  texts.evidence.settings = embedded("evidence/settings.json");
  texts.evidence.groups = embedded("evidence/groups.json");
  return texts;
}

const Edition* built_in_edition() {
  static const std::unique_ptr<const Edition> edition = [] {
    auto loaded = Edition::load(built_in_texts());
    return loaded ? std::move(*loaded) : nullptr;
  }();
  return edition.get();
}

const Edition* EditionRef::get() const {
  if (held_ == nullptr && later_) {
    held_ = built_in_edition();
  }
  return held_;
}

model::EditionId EditionRef::id() const {
  if (held_ != nullptr || !later_) {
    return held_ != nullptr ? held_->id() : model::EditionId{};
  }
  Faults ignored;
  return read_file<EditionLine>(embedded("edition.json"), ignored).edition;
}

}  // namespace limbledger::reference
