#include "core/ledger/fold/exam_folder.hpp"

#include "core/ledger/keys/sign.hpp"

#include <algorithm>
#include <array>
#include <set>

namespace limbledger::ledger {

namespace {

// After a signature the record no longer changes; these add to it, or correct it by name under a signature of their own.
constexpr std::array<std::string_view, 13> allowed_after_signature{"addendum", "withdraw",    "move",   "swap_sides", "settle", "alert_handled",
                                                                   "disagree", "transfer", "countersign", "became", "outcome",    "letter", "put_off"};
constexpr std::array<std::string_view, 5> always_signed{"sign", "addendum", "settle", "move", "countersign"};
constexpr std::array<std::string_view, 4> signed_once_exam_is{"withdraw", "swap_sides", "transfer", "countersign"};

template <std::size_t Count>
[[nodiscard]] bool one_of(std::string_view word, const std::array<std::string_view, Count>& words) {
  return std::find(words.begin(), words.end(), word) != words.end();
}

}  // namespace

ExamFolder::ExamFolder(const model::ExamId& exam, std::span<const Opened> operations, const ExaminerKeys& keys, const model::ClinicId& clinic,
                       const KeptApart& kept_apart)
    : exam_(exam), operations_(operations), keys_(keys), kept_apart_(kept_apart), clinic_(clinic), graph_(operations), nodes_(graph_.size()) {}

std::optional<ExamFold> ExamFolder::fold() {
  judge_entries();
  judge_signatures();
  judge_after_signature();
  const auto root = find_root();
  if (!root) {
    return std::nullopt;
  }
  judge_pointers();
  fill_head(*root);
  fill_registers();
  fill_plan_of_addenda();
  fill_findings();
  fill_alerts_handled();
  fill_transfer();
  fill_disagreed();
  fill_followed();
  fill_outcomes();
  fill_countersigned();
  fill_addenda();
  fill_day(*root);
  fill_exchanged();
  fill_letters();
  fill_settled();
  finish();
  return std::move(out_);
}

void ExamFolder::judge_entries() {
  for (std::size_t i = 0; i < graph_.size(); ++i) {
    const Opened& opened = graph_.at(i);
    const model::Operation& operation = opened.operation();
    if (!opened.readable()) {
      mark(i, "newer_edition");
      nodes_[i].is_void = true;
      ++out_.unread;
      continue;
    }
    if (opened.newer_parts()) {
      mark(i, "newer_parts");
    }
    if (graph_.waits(i)) {
      mark(i, "waits");
    }
    if (operation.replaces.size() > model::pointers_max || operation.after.size() > model::pointers_max) {
      mark(i, "too_many_pointers");
      nodes_[i].is_void = true;
    }
  }
}

bool ExamFolder::signature_holds(std::size_t index) const {
  const model::Operation& operation = graph_.at(index).operation();
  if (!operation.sig || !operation.by || !keys_(*operation.by, operation.sig->key.bytes)) {
    return false;
  }
  auto covered = seen_entries(operations_, operation.after);
  if (!covered) {
    return false;
  }
  const Covered digest = cover(*covered);
  if (digest.digest != operation.sig->covers.bytes || digest.count != operation.sig->count.steps) {
    return false;
  }
  const SignedMatter matter{clinic_, model::as_object(exam_), *operation.by, std::move(*covered), as_bytes(operation.body.json)};
  return verify_matter(operation.sig->key.bytes, matter, operation.sig->signature.bytes);
}

void ExamFolder::judge_signatures() {
  for (std::size_t i = 0; i < graph_.size(); ++i) {
    if (nodes_[i].is_void) {
      continue;
    }
    const std::string_view op = graph_.at(i).operation().op.text;
    if (!one_of(op, always_signed)) {
      continue;
    }
    if (signature_holds(i)) {
      if (op == "sign") {
        signatures_.push_back(i);
      }
      continue;
    }
    // One that cannot be checked because an entry is missing still closes the exam to change; a forged one does not.
    const bool waits = !seen_entries(operations_, graph_.at(i).operation().after).has_value();
    signature_waits_ = signature_waits_ || (waits && op == "sign");
    mark(i, waits ? "signature_waits" : "signature_bad");
    nodes_[i].is_void = true;
  }
}

void ExamFolder::judge_after_signature() {
  for (std::size_t i = 0; i < graph_.size(); ++i) {
    if (nodes_[i].is_void) {
      continue;
    }
    const std::string_view op = graph_.at(i).operation().op.text;
    bool saw_signature = false;
    bool late = false;
    for (const std::size_t signature : signatures_) {
      saw_signature = saw_signature || graph_.saw(i, signature);
      late = late || (i != signature && !graph_.saw(i, signature) && !graph_.saw(signature, i));
    }
    if (saw_signature && op != "sign" && !one_of(op, allowed_after_signature)) {
      mark(i, "after_signature");
      nodes_[i].is_void = true;
    } else if (saw_signature && one_of(op, signed_once_exam_is) && !signature_holds(i)) {
      mark(i, "signature_bad");
      nodes_[i].is_void = true;
    } else if (late && !puts_off(i)) {
      mark(i, "late");
      nodes_[i].late = true;
    }
  }
}

std::optional<std::size_t> ExamFolder::find_root() const {
  for (std::size_t i = 0; i < graph_.size(); ++i) {
    if (!nodes_[i].is_void && body<model::ExamBody>(i) != nullptr && !amends(i)) {
      return i;
    }
  }
  return std::nullopt;
}

// A pointer works only between two values of one thing; anywhere else it is void and shown.
void ExamFolder::judge_pointers() {
  for (std::size_t i = 0; i < graph_.size(); ++i) {
    if (nodes_[i].is_void) {
      continue;
    }
    for (const model::EntryId& entry : graph_.at(i).operation().replaces) {
      const auto target = graph_.find(entry);
      if (!target) {
        continue;  // hides nothing until it comes
      }
      if (*target != i && !nodes_[*target].is_void && may_replace(i, *target)) {
        nodes_[*target].replaced_by.push_back(i);
        nodes_[i].targets.push_back(*target);
      } else {
        mark(i, "void_pointer");
      }
    }
  }
}

bool ExamFolder::may_replace(std::size_t by, std::size_t target) const {
  if (const auto* settle = body<model::SettleBody>(by)) {
    const model::Observation* old = observation(target);
    // The slot is the one the settling person saw: the same item, on the side it then stood on or stands on now.
    return old != nullptr && old->item == settle->observation.item;
  }
  if (const auto id = finding_id(by)) {
    const auto old = finding_id(target);
    return old && *old == *id && observation(target) != nullptr;
  }
  if (const auto* withdraw = body<model::WithdrawBody>(by)) {
    const auto old = finding_id(target);
    return withdraw->finding && old && *old == *withdraw->finding && observation(target) != nullptr;
  }
  if (body<model::MoveBody>(by) != nullptr) {
    return body<model::MoveBody>(target) != nullptr || body<model::ExamBody>(target) != nullptr;
  }
  if (body<model::ExamBody>(by) != nullptr) {
    return body<model::ExamBody>(target) != nullptr;
  }
  if (const auto* plan = body<model::PlanBody>(by)) {
    const auto* old = body<model::PlanBody>(target);
    const auto* fate = body<model::BecameBody>(target);
    return (old != nullptr && old->plan_item.plan_item == plan->plan_item.plan_item) ||
           (fate != nullptr && plan->plan_item.plan_item == std::optional(fate->plan_item));
  }
  if (const auto* fate = body<model::BecameBody>(by)) {
    const auto* old = body<model::BecameBody>(target);
    return old != nullptr && old->plan_item == fate->plan_item;
  }
  if (body<model::TransferBody>(by) != nullptr) {
    return body<model::TransferBody>(target) != nullptr;
  }
  return (body<model::ImpressionBody>(by) != nullptr && body<model::ImpressionBody>(target) != nullptr) ||
         (body<model::ConsentBody>(by) != nullptr && body<model::ConsentBody>(target) != nullptr);
}

const model::Observation* ExamFolder::observation(std::size_t index) const {
  if (const auto* finding = body<model::FindingBody>(index)) {
    return &finding->observation;
  }
  const auto* settle = body<model::SettleBody>(index);
  return settle != nullptr ? &settle->observation : nullptr;
}

std::optional<model::FindingId> ExamFolder::finding_id(std::size_t index) const {
  if (const auto* finding = body<model::FindingBody>(index)) {
    return finding->finding;
  }
  if (const auto* settle = body<model::SettleBody>(index)) {
    return settle->finding;
  }
  return std::nullopt;
}

void ExamFolder::mark(std::size_t index, std::string_view word) {
  out_marks_.push_back({graph_.at(index).entry(), model::Word{std::string(word)}});
  nodes_[index].marks.push_back(model::Word{std::string(word)});
}

bool ExamFolder::unseen_by_each_other(std::size_t a, std::size_t b) const { return !graph_.saw(a, b) && !graph_.saw(b, a); }

void ExamFolder::add_conflict(std::string_view about, std::vector<std::size_t> among, const model::Observation* slot, std::optional<model::Side> side) {
  model::Conflict conflict;
  conflict.about.text = std::string(about);
  if (slot != nullptr) {
    conflict.item = slot->item;
    conflict.side = side;
  }
  std::sort(among.begin(), among.end(), [&](std::size_t a, std::size_t b) { return graph_.at(a).entry() < graph_.at(b).entry(); });
  conflict.values.emplace();
  for (const std::size_t index : among) {
    conflict.entries.push_back(graph_.at(index).entry());
    conflict.values->push_back(graph_.at(index).operation().body);
  }
  conflicts_.push_back(std::move(conflict));
}

void ExamFolder::finish() {
  for (const model::Conflict& conflict : graph_.request_conflicts()) {
    conflicts_.push_back(conflict);
  }
  if (!conflicts_.empty()) {
    out_.exam.conflicts = std::move(conflicts_);
  }
  if (!out_marks_.empty()) {
    out_.exam.marks = std::move(out_marks_);
  }
  if (signature_waits_) {
    out_.exam.state = out_.exam.state == model::ExamState::withdrawn ? out_.exam.state : model::ExamState::signed_;
    if (!out_.exam.incomplete) {
      out_.exam.incomplete.emplace();
    }
    out_.exam.incomplete->push_back({"signature_waits"});
  }
  // What may be named as seen is settled when it is shown: by the time it is written what was missing may have come, and was on no screen.
  out_.exam.revision = graph_.whole(graph_.heads());
  out_.entries = operations_.size();
  out_.digest = digest_of(operations_);
}

Hash digest_of(std::span<const Opened> operations) {
  std::vector<Hash> hashes;
  hashes.reserve(operations.size());
  for (const Opened& opened : operations) {
    hashes.push_back(opened.hash());
  }
  return cover(std::move(hashes)).digest;
}

std::optional<ExamFold> fold_exam(const model::ExamId& exam, std::span<const Opened> operations, const ExaminerKeys& keys,
                                  const model::ClinicId& clinic, const KeptApart& kept_apart) {
  return ExamFolder(exam, operations, keys, clinic, kept_apart).fold();
}

std::optional<std::vector<Hash>> seen_entries(std::span<const Opened> operations, std::span<const model::EntryId> of) {
  std::map<model::EntryId, const Opened*> here;
  for (const Opened& opened : operations) {
    here[opened.entry()] = &opened;
  }
  std::vector<model::EntryId> waiting(of.begin(), of.end());
  std::set<model::EntryId> seen;
  std::vector<Hash> hashes;
  while (!waiting.empty()) {
    const model::EntryId entry = waiting.back();
    waiting.pop_back();
    if (!seen.insert(entry).second) {
      continue;
    }
    const auto found = here.find(entry);
    if (found == here.end()) {
      return std::nullopt;
    }
    hashes.push_back(found->second->hash());
    for (const auto* list : {&found->second->operation().after, &found->second->operation().replaces}) {
      waiting.insert(waiting.end(), list->begin(), list->end());
    }
  }
  return hashes;
}

}  // namespace limbledger::ledger
