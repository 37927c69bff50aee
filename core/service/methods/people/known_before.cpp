#include "core/service/methods/people/known_before.hpp"

#include "core/ledger/log/log.hpp"

#include <algorithm>

namespace limbledger::service {

namespace {

[[nodiscard]] std::vector<model::Word> what_differs(const std::optional<model::Person>& before, const std::optional<model::Person>& now) {
  std::vector<model::Word> differs;
  const model::Person none;
  const model::Person& was = before ? *before : none;
  const model::Person& is = now ? *now : none;
  if (!(was.birth == is.birth)) {
    differs.push_back({"person.birth"});
  }
  if (!(was.sex == is.sex)) {
    differs.push_back({"person.sex"});
  }
  if (!(was.norm_sex == is.norm_sex)) {
    differs.push_back({"person.norm_sex"});
  }
  return differs;
}

// Entries of two objects name nothing of each other: the stamps of the ledger's own clock order them.
[[nodiscard]] bool comes_before(const ledger::Opened& one, const ledger::Opened& other) { return one.stamp() < other.stamp(); }

class Before {
 public:
  Before(Context& context, const ledger::ExamRecord& record, const std::optional<model::Person>& now) : context_(context), record_(record), now_(now) {}

  // As it stood for who moved it, judged by the person whose it was.
  void add_moves(std::vector<interpret::KnownOtherwise>& all) {
    for (const ledger::Opened& move : record_.operations) {
      if (move.operation().op.text != "move") {
        continue;
      }
      const ledger::Graph graph(record_.operations);
      const std::vector<bool> known = graph.closure(move.operation().after);
      std::vector<ledger::Opened> seen;
      for (std::size_t i = 0; i < graph.size(); ++i) {
        if (known[i]) {
          seen.push_back(graph.at(i));
        }
      }
      auto exam = exam_of(seen);
      std::optional<model::Person> person;
      if (exam && exam->person) {
        const auto held = context_.desk->records().person(*exam->person);
        person = held ? std::optional((*held)->fold.person) : std::nullopt;
      }
      if (exam && !what_differs(person, now_).empty()) {
        all.push_back({std::move(*exam), std::move(person), {{"exam.person"}}});
      }
    }
  }

  // As it stood when the person was changed, judged by what was known of the person until then.
  void add_changes(std::vector<interpret::KnownOtherwise>& all) {
    const auto held = record_.fold.exam.person ? context_.desk->records().person(*record_.fold.exam.person) : Result<const ledger::PersonRecord*>(nullptr);
    if (!held || *held == nullptr) {
      return;
    }
    const std::vector<ledger::Opened>& of_person = (*held)->operations;
    for (const ledger::Opened& change : of_person) {
      if (change.operation().op.text != "person_change") {
        continue;
      }
      std::vector<ledger::Opened> seen;
      std::copy_if(record_.operations.begin(), record_.operations.end(), std::back_inserter(seen), [&](const ledger::Opened& one) { return comes_before(one, change); });
      if (seen.empty()) {
        continue;  // it was corrected before this exam was opened
      }
      const ledger::Graph graph(of_person);
      const std::vector<bool> known = graph.closure(change.operation().after);
      std::vector<ledger::Opened> until_then;
      for (std::size_t i = 0; i < graph.size(); ++i) {
        if (known[i]) {
          until_then.push_back(graph.at(i));
        }
      }
      const auto before = ledger::fold_person(*record_.fold.exam.person, until_then);
      std::vector<model::Word> corrected = before ? what_differs(before->person, now_) : std::vector<model::Word>{};
      auto exam = corrected.empty() ? std::nullopt : exam_of(seen);
      if (exam) {
        all.push_back({std::move(*exam), before->person, std::move(corrected)});
      }
    }
  }

 private:
  [[nodiscard]] std::optional<model::Exam> exam_of(const std::vector<ledger::Opened>& operations) {
    auto fold = fold_operations(context_, *record_.fold.exam.exam, operations);
    if (!fold) {
      return std::nullopt;
    }
    for (model::Finding& finding : *fold->exam.findings) {
      const auto& history = record_.fold.history;
      const auto at = std::find_if(history.begin(), history.end(), [&](const model::Finding& one) { return one.entry == finding.entry; });
      finding.side = at == history.end() ? finding.side : at->side;
    }
    return std::move(fold->exam);
  }

  Context& context_;
  const ledger::ExamRecord& record_;
  const std::optional<model::Person>& now_;
};

}  // namespace

std::vector<interpret::KnownOtherwise> known_before(Context& context, const ledger::ExamRecord& record, const std::optional<model::Person>& now) {
  std::vector<interpret::KnownOtherwise> all;
  Before before(context, record, now);
  before.add_changes(all);
  before.add_moves(all);
  return all;
}

}  // namespace limbledger::service
