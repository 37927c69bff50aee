// One line of the queue as a person reads it, who was at none of the visits: what stood before, what each wrote and changed, as it was
// written; what had not reached the device it was written on; what urgent hangs on it; how it is settled, and with which ids.
#pragma once

#include "core/ledger/fold/fold.hpp"
#include "core/service/methods/clinic/queue.hpp"

#include <span>
#include <string>
#include <vector>

namespace limbledger::service {

// The entries of a row as they stand in a record, with what each writer had seen of the others.
class RecordAtHand {
 public:
  // `fold`: of an exam; none of a person.
  RecordAtHand(Context& context, std::span<const ledger::Opened> operations, const ledger::ExamFold* fold, const report::Words* words)
      : context_(context), graph_(operations), fold_(fold), words_(words) {}

  // Entries, what stood before, and of whom or what they speak.
  void add(const std::vector<model::EntryId>& entries, QueueRow& row) const;
  // What the writer of a marked entry had not seen: the exchange of sides, the signature, the withdrawal of the exam.
  [[nodiscard]] std::vector<QueueEntry> unseen_by(const model::EntryMark& mark) const;
  // Findings that an exchange of sides turned, in words.
  [[nodiscard]] std::vector<std::string> turned() const;
  // Of versions of an opening: the members in which they differ.
  [[nodiscard]] std::vector<std::string> differing(const std::vector<QueueEntry>& versions) const;

 private:
  [[nodiscard]] QueueEntry told(std::size_t node, const QueueRow& row) const;
  [[nodiscard]] std::string said(std::size_t node, const QueueRow& row) const;
  [[nodiscard]] std::string said_of_finding(const ledger::Opened& written, const model::Finding& found, const QueueRow& row) const;
  [[nodiscard]] std::string said_of_opening(std::size_t node, const QueueRow& row) const;
  [[nodiscard]] std::vector<std::size_t> replaced_by_all(const std::vector<QueueEntry>& entries, const QueueRow& row) const;

  Context& context_;
  ledger::Graph graph_;
  const ledger::ExamFold* fold_;
  const report::Words* words_;
};

// What the words of a row need beside it.
struct LineOf {
  const QueueRow& row;
  const ledger::ListedExam* exam = nullptr;  // none of a person
  std::int64_t offset_min = 0;               // the local time that all instants are told in
  std::vector<QueueEntry> beside = {};       // what its writer had not seen, where no conflict names it
  std::vector<std::string> more = {};        // sentences of their own
  std::vector<std::string> differing = {};
};
[[nodiscard]] std::string row_in_words(Context& context, const LineOf& line, const report::Words& words);
// The heading with the entries alone, for a page of the exam.
[[nodiscard]] std::string row_in_short(const LineOf& line, const report::Words& words);
// The last lines of a row: how it is settled, and the ids for that.
[[nodiscard]] std::string settled_in_words(const LineOf& line, const report::Words& words);
[[nodiscard]] std::string ids_to_put_off(const QueueRow& row, const report::Words& words);
[[nodiscard]] std::string clock_in_words(model::Instant at, std::int64_t offset_min, const report::Words& words);
[[nodiscard]] std::string when_in_words(const ledger::ListedExam& exam, std::int64_t offset_min, const report::Words& words);
// The first line of a row is numbered; what each wrote, and how it is settled, stand below it.
[[nodiscard]] std::string in_lines(const std::string& row, const std::string& number);

}  // namespace limbledger::service
