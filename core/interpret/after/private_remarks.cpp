#include "core/interpret/after/private_remarks.hpp"

#include "core/interpret/alerts/alerts.hpp"
#include "core/wire/read.hpp"
#include "core/wire/write.hpp"

#include <algorithm>
#include <optional>

namespace limbledger::interpret {

namespace {

template <class T, class Do>
void in_each(std::optional<std::vector<T>>& all, const Do& act) {
  if (all) {
    std::for_each(all->begin(), all->end(), act);
  }
}

class TakesOut {
 public:
  explicit TakesOut(const std::vector<model::ItemId>& items) : items_(items) {}
  [[nodiscard]] bool any() const { return any_; }

  template <class Found>
  void from(Found& found) {
    if (found.remark && std::binary_search(items_.begin(), items_.end(), found.item)) {
      found.remark.reset();
      any_ = true;
    }
  }
  template <class Found>
  void from_all(std::optional<std::vector<Found>>& all) {
    in_each(all, [&](Found& one) { from(one); });
  }
  // What was weighed stands as it was written.
  void from_settled(std::optional<std::vector<model::Settled>>& all) {
    in_each(all, [&](model::Settled& one) {
      if (one.about.text != "finding" && one.about.text != "withdrawal") {
        return;
      }
      from_written(one.value);
      for (model::Weighed& weighed : one.among) {
        from_written(weighed.value);
      }
    });
  }

 private:
  void from_written(std::optional<wire::Raw>& value) {
    if (!value) {
      return;
    }
    auto seen = wire::read_text<model::Observation>(value->json, wire::Unknown::ignore);
    if (seen && seen->remark) {
      from(*seen);
      value->json = wire::write(*seen);
    }
  }

  const std::vector<model::ItemId>& items_;
  bool any_ = false;
};

}  // namespace

std::vector<model::ItemId> items_of_private_remarks(const View& view) {
  const View listening(view, View::Listens{1});
  const std::vector<JudgedFlag> flags = judge_flags(listening, [](const reference::AlertRow& row) { return row.protected_.value_or(false); });
  std::vector<model::ItemId> items;
  if (std::none_of(flags.begin(), flags.end(), stands_as_alert)) {
    return items;
  }
  for (const model::Item* item : listening.heard()) {
    items.push_back(item->item);
  }
  std::sort(items.begin(), items.end());
  items.erase(std::unique(items.begin(), items.end()), items.end());
  return items;
}

void take_out_remark(const std::vector<model::ItemId>& items, model::Finding& finding) {
  TakesOut out(items);
  out.from(finding);
  out.from_settled(finding.settled);
}

bool take_out_remarks(const std::vector<model::ItemId>& items, model::Exam& exam) {
  TakesOut out(items);
  out.from_all(exam.findings);
  out.from_settled(exam.settled);
  in_each(exam.findings, [&](model::Finding& one) { out.from_settled(one.settled); });
  in_each(exam.addenda, [&](model::Addendum& one) { out.from_all(one.findings); });
  in_each(exam.countersigned, [&](model::Countersigned& one) { out.from_all(one.findings); });
  return out.any();
}

}  // namespace limbledger::interpret
