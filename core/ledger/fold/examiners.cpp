#include "core/ledger/fold/examiners.hpp"

#include <algorithm>
#include <iterator>
#include <set>

namespace limbledger::ledger {

ExaminerNames fold_examiners(std::span<const Opened> clinic_operations, const ExaminerKeys& keys, const model::ClinicId& clinic) {
  // A word names as seen nothing but earlier words, so that thousands of decisions about pairs need not be walked through for each.
  std::vector<Opened> words;
  std::copy_if(clinic_operations.begin(), clinic_operations.end(), std::back_inserter(words),
               [](const Opened& one) { return std::holds_alternative<model::ExaminerNameBody>(one.body()); });
  const Graph graph(words);
  std::map<model::ExaminerId, std::vector<const Opened*>> said;
  for (std::size_t i = 0; i < graph.size(); ++i) {
    const Opened& opened = graph.at(i);
    if (signed_by_examiner(opened, words, keys, clinic)) {
      said[*opened.operation().by].push_back(&opened);
    }
  }
  ExaminerNames out;
  for (const auto& [examiner, all] : said) {
    std::set<model::EntryId> replaced;
    for (const Opened* one : all) {
      replaced.insert(one->operation().replaces.begin(), one->operation().replaces.end());
    }
    std::vector<SaidName>& names = out[examiner];
    for (const Opened* one : all) {
      if (!replaced.contains(one->entry())) {
        names.push_back({one->entry(), std::get<model::ExaminerNameBody>(one->body())});
      }
    }
    std::sort(names.begin(), names.end(), [](const SaidName& a, const SaidName& b) { return a.entry < b.entry; });
  }
  return out;
}

}  // namespace limbledger::ledger
