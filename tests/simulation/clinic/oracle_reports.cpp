#include "tests/simulation/clinic/oracle.hpp"

#include <algorithm>
#include <map>
#include <string>
#include <vector>

namespace limbledger::ledger::clinic_sim {

void judge_reports(Device& hub, const Doings& doings) {
  std::map<ActId, std::vector<ReportFold>> written;
  for (const auto& [object, known] : hub.log->index().objects) {
    if (known.type != ObjectType::report) {
      continue;
    }
    const auto operations = hub.log->operations(object);
    const auto act = doings.find(operations->front().operation().request);
    const auto folds = hub.records->report(object);
    written[*act].insert(written[*act].end(), folds->begin(), folds->end());
  }
  Acts last;
  Acts shown;
  std::vector<ReportFold> all;
  for (const auto& one : written) {
    const ActId act = one.first;
    const std::vector<ReportFold>& folds = one.second;
    if (folds.size() != 1) {
      throw Complaint{folds.empty() ? "lost" : "doubled", "the report of act " + std::to_string(act) + " is there " + std::to_string(folds.size()) + " times"};
    }
    const model::ReportBody& said = folds.front().said;
    if (!folds.front().whole || said.counts.size() != 1 || said.counts.front().of->text != doings.at(act).parts.front().words || said.exams.size() != 1) {
      throw Complaint{"torn", "the report of act " + std::to_string(act) + " does not read as it was written"};
    }
    all.push_back(folds.front());
    if (std::none_of(written.begin(), written.end(), [&](const auto& later) { return doings.at(later.first).seen.contains(act); })) {
      last.insert(act);
    }
  }
  for (const auto& [act, folds] : written) {
    const ReportFold& report = folds.front();
    if (std::none_of(all.begin(), all.end(), [&report](const ReportFold& later) { return report.is_among(later.said.after); })) {
      shown.insert(act);
    }
  }
  if (shown != last) {
    throw Complaint{"settled", std::to_string(last.size()) + " reports are the last, and " + std::to_string(shown.size()) + " are shown as such"};
  }
}

}  // namespace limbledger::ledger::clinic_sim
