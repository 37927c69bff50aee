// The steps of folding one exam, in the order they run. Private to the fold; fold.hpp is what others include.
#pragma once

#include "core/ledger/fold/fold.hpp"
#include "core/ledger/fold/settling.hpp"

namespace limbledger::ledger {

// When the device claims that it was written.
[[nodiscard]] inline model::Instant wall_of(const model::Operation& operation) { return {operation.at.wall_ms.steps}; }

// A finding as its entry tells it, on the side on which it was entered, and current; `exam` gives its id and time.
[[nodiscard]] model::Finding as_told(const Opened& opened, const model::FindingId& id, const model::Observation& seen, const model::Exam& exam);
// What was observed, whoever wrote it and of whichever side: equal ones in one slot are one value.
[[nodiscard]] bool same_observation(model::Observation a, const model::Observation& b);
// H over all entries, sorted.
[[nodiscard]] Hash digest_of(std::span<const Opened> operations);

class ExamFolder {
 public:
  ExamFolder(const model::ExamId& exam, std::span<const Opened> operations, const ExaminerKeys& keys, const model::ClinicId& clinic,
             const KeptApart& kept_apart);
  [[nodiscard]] std::optional<ExamFold> fold();

 private:
  struct Node {
    bool is_void = false;
    bool late = false;  // its writer and a signer had not seen each other
    std::vector<std::size_t> replaced_by;
    std::vector<std::size_t> targets;
    std::vector<model::Word> marks;
  };
  using Slot = std::pair<model::ItemId, model::Side>;

  void judge_entries();
  void judge_signatures();
  void judge_after_signature();
  void judge_pointers();
  [[nodiscard]] std::optional<std::size_t> find_root() const;
  [[nodiscard]] bool signature_holds(std::size_t index) const;
  [[nodiscard]] bool may_replace(std::size_t by, std::size_t target) const;

  // exam_record.cpp
  void fill_head(std::size_t root);
  void fill_opening(std::size_t root);
  [[nodiscard]] bool amends(std::size_t index) const;
  void fill_registers();
  void fill_assignment();
  void fill_consent();
  void fill_impression();
  void fill_plan();
  void fill_plan_of_addenda();
  void fill_withdrawal();
  void fill_addenda();
  void fill_day(std::size_t root);
  void fill_alerts_handled();

  // exam_after.cpp
  void fill_transfer();
  void fill_disagreed();
  void fill_followed();
  void fill_outcomes();
  void fill_countersigned();
  [[nodiscard]] bool swap_saw(std::size_t index) const;
  void fill_exchanged();

  // exam_letters.cpp
  void fill_letters();
  [[nodiscard]] std::vector<model::Word> changed_since(std::size_t letter) const;
  [[nodiscard]] std::string_view change_of(std::size_t index) const;
  [[nodiscard]] bool is_kept_apart(std::size_t index) const;
  [[nodiscard]] bool finds_otherwise(const model::CountersignBody& body) const;

  // exam_settled.cpp
  void weigh_findings();
  void tell_settled(std::size_t entry, model::Finding& finding) const;
  void fill_settled();
  void fill_taken_back();
  template <class Body, class Value>
  void fill_settled_of(Value Body::*member, std::string_view about);
  void complete_settled(std::vector<model::Settled>& all, const std::vector<Decision>& decisions) const;
  [[nodiscard]] std::optional<std::size_t> taken_earlier(std::size_t settle) const;

  void finish();
  template <class T>
  [[nodiscard]] std::vector<std::size_t> heads_of() const;

  // exam_findings.cpp
  void fill_findings();
  [[nodiscard]] bool swapped_by(std::size_t entry, std::size_t swap, bool& unseen) const;
  [[nodiscard]] model::Side side_now(std::size_t entry);
  void fill_slot(const Slot& slot, const std::vector<std::size_t>& heads);
  void fill_history();
  [[nodiscard]] bool shown_to(std::size_t writer, std::size_t entry) const;
  [[nodiscard]] std::vector<model::Value> values_since_shown(std::size_t writer, std::size_t entry) const;
  [[nodiscard]] bool swapped_since(std::size_t writer) const;
  [[nodiscard]] bool moved_since(std::size_t writer) const;
  [[nodiscard]] model::Finding to_finding(std::size_t entry, model::Standing standing) const;

  template <class T>
  [[nodiscard]] const T* body(std::size_t index) const {
    return std::get_if<T>(&graph_.at(index).body());
  }
  [[nodiscard]] const model::Observation* observation(std::size_t index) const;
  [[nodiscard]] std::optional<model::FindingId> finding_id(std::size_t index) const;
  [[nodiscard]] bool unseen_by_each_other(std::size_t a, std::size_t b) const;
  // Says nothing of the person: what its writer had not seen does not matter to it.
  [[nodiscard]] bool puts_off(std::size_t index) const { return body<model::PutOffBody>(index) != nullptr; }
  void mark(std::size_t index, std::string_view word);
  void add_conflict(std::string_view about, std::vector<std::size_t> among, const model::Observation* slot = nullptr,
                    std::optional<model::Side> side = std::nullopt);

  model::ExamId exam_;
  std::span<const Opened> operations_;
  const ExaminerKeys& keys_;
  const KeptApart& kept_apart_;
  model::ClinicId clinic_;
  Graph graph_;
  std::vector<Node> nodes_;
  std::vector<std::size_t> signatures_;
  bool signature_waits_ = false;
  std::vector<model::Side> side_now_;
  std::vector<model::Standing> standing_;
  std::optional<Settling> settling_;  // of findings, where any was decided between
  std::vector<model::Conflict> conflicts_;
  std::vector<model::EntryMark> out_marks_;
  ExamFold out_;
};

template <class T>
std::vector<std::size_t> ExamFolder::heads_of() const {
  std::vector<std::size_t> heads;
  for (std::size_t i = 0; i < graph_.size(); ++i) {
    if (!nodes_[i].is_void && body<T>(i) != nullptr && nodes_[i].replaced_by.empty()) {
      heads.push_back(i);
    }
  }
  return heads;
}

}  // namespace limbledger::ledger
