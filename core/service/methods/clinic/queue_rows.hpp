// The rows of the queue: what disagrees of exams and people, and which pairs of records are asked after.
#pragma once

#include "core/service/methods/clinic/queue.hpp"

#include <algorithm>
#include <optional>
#include <tuple>
#include <vector>

namespace limbledger::service {

// One row, and where it stands among those of its harm. Who looks alike may be thousands: such a row is made when its page is asked for.
struct Queued {
  QueueRow row;
  std::int64_t order = 0;
  std::optional<match::PersonPair> to_make = std::nullopt;

  // Whom an alert calls for comes first, whatever else is open.
  [[nodiscard]] auto place() const {
    int urgent = 2;
    for (const ListedAlert& one : row.alerts.value_or(std::vector<ListedAlert>{})) {
      urgent = std::min(urgent, one.urgency == interpret::Urgency::now ? 0 : 1);
    }
    return std::tuple(urgent, row.harm, order);
  }
};

// Of a withdrawn exam, only what somebody wrote into it without knowing that it was withdrawn.
[[nodiscard]] inline bool is_queued(const ledger::ListedExam& row) {
  const bool disagrees = row.state != model::ExamState::withdrawn && row.in_conflict.value_or(false);
  return disagrees || row.unseen.value_or(false);
}

// In whole, or for a page of the exam.
enum class Told { whole, on_page, on_letter };

[[nodiscard]] Result<void> add_exam(Context& context, const ledger::ListedExam& listed, const report::Words* words, Told how, std::vector<Queued>& queue);
[[nodiscard]] Result<void> add_person(Context& context, const model::PersonId& id, const report::Words* words, Told how, std::vector<Queued>& queue);
[[nodiscard]] Result<void> add_people(Context& context, const report::Words* words, std::vector<Queued>& queue);
[[nodiscard]] Result<void> add_pairs(Context& context, bool look_alikes, const report::Words* words, std::vector<Queued>& queue);
// What is to be settled or asked of two records; nothing where it is decided.
[[nodiscard]] Result<void> add_pair(Context& context, const match::PersonPair& persons, const report::Words* words, std::vector<Queued>& queue);
// `decided`: both ways, and not only alike.
[[nodiscard]] Result<QueueRow> row_of_pair(Context& context, const match::PersonPair& persons, bool decided, const report::Words* words);

}  // namespace limbledger::service
