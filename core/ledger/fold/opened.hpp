// An operation as it was read from a sealed entry. It can only be made by opening a seal, which binds clinic, replica,
// sequence, header and key: what folds is never an entry as received. An operation that this edition cannot read is kept
// and counted; it never stops a fold. Source: ledger, items 26 to 34.
#pragma once

#include "core/ledger/chain.hpp"
#include "core/ledger/keys/seal.hpp"
#include "core/model/operation.hpp"

#include <cstdint>
#include <variant>

namespace limbledger::ledger {

using Body = std::variant<std::monostate, model::PersonBody, model::ExamBody, model::ConsentBody, model::FindingBody, model::WithdrawBody,
                          model::ImpressionBody, model::PlanBody, model::SignBody, model::AddendumBody, model::MoveBody, model::SwapSidesBody,
                          model::SettleBody, model::PlaceBody, model::AlertHandledBody, model::TransferBody, model::DisagreeBody,
                          model::BecameBody, model::OutcomeBody, model::CountersignBody, model::LetterBody, model::LinkBody, model::ExaminerNameBody,
                          model::PutOffBody, model::ReportBody>;

// Lives under the clinic's own object.
[[nodiscard]] inline bool is_of_clinic(const Body& body) {
  return std::holds_alternative<model::PlaceBody>(body) || std::holds_alternative<model::LinkBody>(body) || std::holds_alternative<model::ExaminerNameBody>(body);
}

class Opened {
 public:
  [[nodiscard]] const model::EntryId& entry() const { return entry_; }
  [[nodiscard]] const Hash& hash() const { return hash_; }
  [[nodiscard]] const model::ReplicaId& replica() const { return replica_; }
  [[nodiscard]] std::uint64_t seq() const { return seq_; }
  [[nodiscard]] const Stamp& stamp() const { return stamp_; }
  [[nodiscard]] const model::Operation& operation() const { return operation_; }
  [[nodiscard]] const Body& body() const { return body_; }
  // False: the envelope says a newer edition is needed, or the body is of a kind unknown here.
  [[nodiscard]] bool readable() const { return body_.index() != 0; }
  // Has members that this edition does not know.
  [[nodiscard]] bool newer_parts() const { return newer_parts_; }

 private:
  Opened() = default;
  friend Result<Opened> open_operation(const model::ClinicId& clinic, const ObjectKey& key, const Row& row);

  model::EntryId entry_;
  Hash hash_{};
  model::ReplicaId replica_;
  std::uint64_t seq_ = 0;
  Stamp stamp_;
  model::Operation operation_;
  Body body_;
  bool newer_parts_ = false;
};

// What is about to be written as the body of such an operation can be read back. Faults: those of its type (wire/read.hpp), the first of
// them, at the whole; limit.text of a letter that is too long.
[[nodiscard]] Result<void> check_body(std::string_view op, std::string_view body_json);
// Faults: entry.seal (does not open), entry.key (the operation names another object than its key), entry.format.
[[nodiscard]] Result<Opened> open_operation(const model::ClinicId& clinic, const ObjectKey& key, const Row& row);
[[nodiscard]] inline Result<Opened> open_operation(const model::ClinicId& clinic, const ObjectKey& key, const VerifiedEntry& entry) {
  return open_operation(clinic, key, entry.row());
}

}  // namespace limbledger::ledger
