#include "core/ledger/fold/exam_folder.hpp"

#include <algorithm>

namespace limbledger::ledger {

namespace {

[[nodiscard]] model::Side other_side(model::Side side) {
  switch (side) {
    case model::Side::left:
      return model::Side::right;
    case model::Side::right:
      return model::Side::left;
    case model::Side::midline:
      break;
  }
  return model::Side::midline;
}

[[nodiscard]] model::Origin origin_of(const model::Observation& observed) { return observed.origin.value_or(model::Origin::observed); }

}  // namespace

// Whoever leaves out how a value came about has observed it; conflict.settle writes that out.
bool same_observation(model::Observation a, const model::Observation& b) {
  a.side = b.side;
  a.origin = origin_of(a) == origin_of(b) ? b.origin : a.origin;
  return a == b;
}

// A side exchange turns what its writer had seen. An edit made elsewhere at the same time kept the side it was shown, so it
// is turned with the finding it edits; a new finding nobody had seen is left as it is and marked.
bool ExamFolder::swapped_by(std::size_t entry, std::size_t swap, bool& unseen) const {
  if (graph_.saw(swap, entry)) {
    return true;
  }
  if (graph_.saw(entry, swap)) {
    return false;
  }
  unseen = true;
  for (const std::size_t target : nodes_[entry].targets) {
    const model::Observation* old = observation(target);
    if (old != nullptr && old->side == observation(entry)->side) {
      return swapped_by(target, swap, unseen);
    }
  }
  return false;
}

model::Side ExamFolder::side_now(std::size_t entry) {
  model::Side side = observation(entry)->side;
  bool unseen = false;
  for (std::size_t i = 0; i < graph_.size(); ++i) {
    if (!nodes_[i].is_void && body<model::SwapSidesBody>(i) != nullptr && swapped_by(entry, i, unseen)) {
      side = other_side(side);
    }
  }
  if (unseen && side != model::Side::midline) {
    mark(entry, "side_exchange_unseen");
  }
  return side;
}

void ExamFolder::fill_findings() {
  side_now_.assign(graph_.size(), model::Side::midline);
  standing_.assign(graph_.size(), model::Standing::current);
  std::map<Slot, std::vector<std::size_t>> slots;
  for (std::size_t i = 0; i < graph_.size(); ++i) {
    if (nodes_[i].is_void || observation(i) == nullptr) {
      continue;
    }
    side_now_[i] = side_now(i);
    if (nodes_[i].replaced_by.empty()) {
      slots[{observation(i)->item, side_now_[i]}].push_back(i);
      out_.finding_heads[*finding_id(i)].push_back(graph_.at(i).entry());
    } else {
      const bool replaced = std::any_of(nodes_[i].replaced_by.begin(), nodes_[i].replaced_by.end(),
                                        [&](std::size_t by) { return body<model::WithdrawBody>(by) == nullptr; });
      standing_[i] = replaced ? model::Standing::replaced : model::Standing::withdrawn;
    }
  }
  weigh_findings();
  out_.exam.findings.emplace();
  for (const auto& [slot, heads] : slots) {
    fill_slot(slot, heads);
  }
  fill_history();
}

void ExamFolder::fill_slot(const Slot& slot, const std::vector<std::size_t>& heads) {
  std::vector<std::size_t> distinct;  // equal values collapse into the first of them
  for (const std::size_t head : heads) {
    const auto twin = std::find_if(distinct.begin(), distinct.end(), [&](std::size_t other) {
      return unseen_by_each_other(head, other) && same_observation(*observation(head), *observation(other));
    });
    if (twin == distinct.end()) {
      distinct.push_back(head);
    } else {
      mark(head, "same_value");
    }
  }
  std::vector<std::size_t> conflicting;
  for (const std::size_t head : distinct) {
    if (std::any_of(distinct.begin(), distinct.end(), [&](std::size_t other) { return other != head && unseen_by_each_other(head, other); })) {
      conflicting.push_back(head);
    }
  }
  if (!conflicting.empty()) {
    add_conflict("finding", conflicting, observation(conflicting.front()), slot.second);
  }
  for (const std::size_t head : distinct) {
    std::vector<std::size_t> withdrawals;
    for (std::size_t i = 0; i < graph_.size(); ++i) {
      const auto* withdraw = body<model::WithdrawBody>(i);
      if (!nodes_[i].is_void && withdraw != nullptr && withdraw->finding == finding_id(head) && unseen_by_each_other(i, head)) {
        withdrawals.push_back(i);
      }
    }
    if (!withdrawals.empty()) {
      withdrawals.push_back(head);
      add_conflict("withdrawal", withdrawals, observation(head), slot.second);
    }
    const bool in_conflict = !withdrawals.empty() || std::find(conflicting.begin(), conflicting.end(), head) != conflicting.end();
    standing_[head] = in_conflict ? model::Standing::in_conflict : model::Standing::current;
    out_.exam.findings->push_back(to_finding(head, standing_[head]));
  }
}

// Its writer saw it, or saw what it corrects without saying anything else of that leg.
bool ExamFolder::shown_to(std::size_t writer, std::size_t entry) const {
  if (graph_.saw(writer, entry)) {
    return true;
  }
  const model::Observation& here = *observation(entry);
  const auto& targets = nodes_[entry].targets;
  return std::any_of(targets.begin(), targets.end(), [&](std::size_t target) {
    const model::Observation* old = observation(target);
    return old != nullptr && old->value == here.value && origin_of(*old) == origin_of(here) && side_now_[target] == side_now_[entry] && shown_to(writer, target);
  });
}

// The values of one finding from the newest before this one back to that which its writer was shown; nothing where one of them spoke of
// another leg, or where they part.
std::vector<model::Value> ExamFolder::values_since_shown(std::size_t writer, std::size_t entry) const {
  std::vector<model::Value> values;
  std::size_t at = entry;
  while (!graph_.saw(writer, at)) {
    const auto& targets = nodes_[at].targets;
    if (targets.size() != 1 || observation(targets.front()) == nullptr || side_now_[targets.front()] != side_now_[entry]) {
      return {};
    }
    at = targets.front();
    values.push_back(observation(at)->value);
  }
  return values;
}

// Whoever answered an alert without knowledge of an exchange was shown it on the side where it then stood.
bool ExamFolder::swapped_since(std::size_t writer) const {
  bool turned = false;
  for (std::size_t swap = 0; swap < graph_.size(); ++swap) {
    turned = turned != (!nodes_[swap].is_void && body<model::SwapSidesBody>(swap) != nullptr && !graph_.saw(writer, swap));
  }
  return turned;
}

// Whose exam it then was, and is no more. One that was nobody's yet was of who sat there all the same.
bool ExamFolder::moved_since(std::size_t writer) const {
  std::optional<model::PersonId> then;
  for (std::size_t i = 0; i < graph_.size(); ++i) {
    if (nodes_[i].is_void || !graph_.saw(writer, i)) {
      continue;
    }
    if (const auto* move = body<model::MoveBody>(i)) {
      then = move->person;
    } else if (body<model::ExamBody>(i) != nullptr && !amends(i)) {
      then = body<model::ExamBody>(i)->person;
    }
  }
  return then && then != out_.exam.person;
}

// A side exchange turns what was said of a leg before it, as it does a finding; it is then asked again.
void ExamFolder::fill_alerts_handled() {
  for (std::size_t i = 0; i < graph_.size(); ++i) {
    const auto* body_of = body<model::AlertHandledBody>(i);
    if (nodes_[i].is_void || body_of == nullptr) {
      continue;
    }
    model::AlertHandled handled{body_of->alert, body_of->side, body_of->urgent, body_of->action, body_of->reason, graph_.at(i).operation().by,
                                wall_of(graph_.at(i).operation()), std::nullopt};
    std::vector<model::EntryId> unseen;
    std::vector<model::MeasuredAgain> again;
    for (std::size_t other = 0; other < graph_.size(); ++other) {
      const bool found = observation(other) != nullptr ? nodes_[other].replaced_by.empty() && !shown_to(i, other)
                                                       : body<model::AddendumBody>(other) != nullptr && !graph_.saw(i, other);
      if (nodes_[other].is_void || !found) {
        continue;
      }
      unseen.push_back(graph_.at(other).entry());
      if (observation(other) != nullptr) {
        if (auto values = values_since_shown(i, other); !values.empty()) {
          again.push_back({graph_.at(other).entry(), std::move(values)});
        }
      }
    }
    if (!unseen.empty()) {
      std::sort(unseen.begin(), unseen.end());
      handled.unseen = std::move(unseen);
    }
    if (!again.empty()) {
      handled.measured_again = std::move(again);
    }
    if (swapped_since(i)) {
      handled.corrected.emplace().push_back({"exam.sides"});
      handled.side = handled.side ? std::optional(other_side(*handled.side)) : std::nullopt;
    }
    if (moved_since(i)) {
      if (!handled.corrected) {
        handled.corrected.emplace();
      }
      handled.corrected->push_back({"exam.person"});
    }
    if (!out_.exam.alerts_handled) {
      out_.exam.alerts_handled.emplace();
    }
    out_.exam.alerts_handled->push_back(std::move(handled));
  }
}

void ExamFolder::fill_history() {
  for (std::size_t i = 0; i < graph_.size(); ++i) {
    if (observation(i) != nullptr && !nodes_[i].is_void) {
      out_.history.push_back(to_finding(i, standing_[i]));
    }
  }
}

model::Finding ExamFolder::to_finding(std::size_t entry, model::Standing standing) const {
  model::Finding finding = as_told(graph_.at(entry), *finding_id(entry), *observation(entry), out_.exam);
  finding.side = side_now_[entry];
  finding.standing = standing;
  tell_settled(entry, finding);
  if (!nodes_[entry].marks.empty()) {
    finding.marks = nodes_[entry].marks;
  }
  return finding;
}

model::Finding as_told(const Opened& opened, const model::FindingId& id, const model::Observation& seen, const model::Exam& exam) {
  const model::Operation& operation = opened.operation();
  model::Finding finding = model::as_finding(seen);
  finding.finding = id;
  finding.exam = exam.exam;
  finding.origin = origin_of(seen);
  const auto* written = std::get_if<model::FindingBody>(&opened.body());
  finding.examiner = written != nullptr && written->examiner ? written->examiner : operation.by;
  finding.examined_at = operation.examined_at ? operation.examined_at : exam.examined_at;
  finding.entry = opened.entry();
  finding.entered_at = wall_of(operation);
  finding.entered_by = operation.by;
  finding.standing = model::Standing::current;
  return finding;
}

}  // namespace limbledger::ledger
