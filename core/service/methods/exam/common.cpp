#include "core/service/methods/exam/common.hpp"

#include "core/interpret/after/private_remarks.hpp"
#include "core/ledger/log/log.hpp"
#include "core/service/desk.hpp"
#include "core/service/methods/exam/told.hpp"
#include "core/service/methods/say/assess.hpp"

#include <algorithm>
#include <span>

namespace limbledger::service {

std::string banner_of(const Desk& desk, const report::Words& words) {
  switch (desk.kind()) {
    case LedgerKind::clinic:
      return {};
    case LedgerKind::demonstration:
      return words.say("msg.page.demonstration");
    case LedgerKind::practice:
      return words.say("msg.page.practice");
  }
  return {};
}

Result<const ledger::ExamRecord*> exam_to_read(Context& context, const model::ExamId& exam) {
  if (context.caller.scope == Scope::kiosk && context.caller.exam != exam) {
    return wire::Fault{"exam.not_yours", "/exam", "the exam of this token"};
  }
  return context.desk->records().exam(exam);
}

bool sees_protected(const Context& context) { return context.caller.scope == Scope::examiner; }

bool is_protected(const Context& context, const model::ItemId& id) {
  const model::Item* item = context.edition == nullptr ? nullptr : context.edition->item(id);
  return item != nullptr && item->protected_.value_or(false);
}

void leave_out_protected(const Context& context, model::Exam& exam) {
  const auto erase_if = [](auto& list, const auto& goes) {
    if (list) {
      list->erase(std::remove_if(list->begin(), list->end(), goes), list->end());
    }
  };
  const auto of_item = [&](const auto& one) { return is_protected(context, one.item); };
  erase_if(exam.findings, of_item);
  // A protected letter is not there; of the others a kiosk knows nothing either.
  const bool kiosk = context.caller.scope == Scope::kiosk;
  erase_if(exam.letters, [&](const model::Letter& one) { return kiosk || one.protected_.value_or(false); });
  if (exam.letters && exam.letters->empty()) {
    exam.letters.reset();
  }
  erase_if(exam.conflicts, [&](const model::Conflict& one) { return one.item && is_protected(context, *one.item); });
  erase_if(exam.alerts_handled, [&](const model::AlertHandled& one) {
    const auto rows = context.edition == nullptr ? std::span<const reference::AlertRow>() : context.edition->alerts();
    return one.alert.text == "alert.protected" ||
           std::any_of(rows.begin(), rows.end(), [&](const reference::AlertRow& row) { return row.alert == one.alert && row.protected_.value_or(false); });
  });
  erase_if(exam.disagreed, [&](const model::Disagreed& one) {
    const reference::AlertRow* row = context.edition == nullptr ? nullptr : context.edition->alert({one.statement.text.substr(0, one.statement.text.find(':'))});
    return row != nullptr && row->protected_.value_or(false);
  });
  // Beside no alert that is told here, "alerts without an action" tells of the one that is not.
  erase_if(exam.incomplete, [](const model::Word& word) { return word.text == "alerts"; });
  if (!exam.conflicts || exam.conflicts->empty()) {
    erase_if(exam.incomplete, [](const model::Word& word) { return word.text == "conflicts"; });
  }
  if (exam.incomplete && exam.incomplete->empty()) {
    exam.incomplete.reset();
  }
  if (exam.countersigned) {
    for (model::Countersigned& one : *exam.countersigned) {
      erase_if(one.findings, of_item);
    }
  }
  if (exam.addenda) {
    for (model::Addendum& addendum : *exam.addenda) {
      erase_if(addendum.findings, of_item);
    }
  }
}

std::vector<model::ItemId> remarks_kept_apart(const Context& context, const model::Exam& exam) {
  // A kiosk is told its own answers alone, and as they were given: a word that vanished there would tell.
  if (context.edition == nullptr || context.caller.scope == Scope::kiosk) {
    return {};
  }
  const auto record = exam.person ? context.desk->records().person(*exam.person) : Result<const ledger::PersonRecord*>(wire::Fault{"person.unknown", ""});
  const std::optional<model::Person> person = record ? std::optional((*record)->fold.person) : std::nullopt;
  const model::PartialDate today = model::date_of({context.desk->world().now().wall_ms}, 0);
  return interpret::items_of_private_remarks(interpret::View(exam, person, *context.edition, day_of(exam, today)));
}

void leave_out_unseen(const Context& context, model::Exam& exam) {
  if (exam.alerts_handled) {
    for (model::AlertHandled& one : *exam.alerts_handled) {
      one.unseen.reset();  // worked out for the judgement; it names entries of what is kept apart too
      one.measured_again.reset();
    }
  }
  if (!sees_protected(context)) {
    interpret::take_out_remarks(remarks_kept_apart(context, exam), exam);
    leave_out_protected(context, exam);
  }
  if (context.caller.scope != Scope::kiosk) {
    return;
  }
  // A kiosk is told what its form needs and its own answers; whatever else a record comes to hold is not for the person to read alone.
  model::Exam told;
  told.exam = exam.exam;
  told.state = exam.state;
  told.complaint = exam.complaint;
  told.side = exam.side;
  told.setting = exam.setting;
  told.examined_at = exam.examined_at;
  told.offset_min = exam.offset_min;
  told.examined_on = exam.examined_on;
  told.day_doubtful = exam.day_doubtful;
  told.injured_on = exam.injured_on;
  told.edition = exam.edition;
  told.revision = exam.revision;
  for (model::Finding& finding : exam.findings.value_or(std::vector<model::Finding>{})) {
    if (is_answered_there(finding)) {
      if (!told.findings) {
        told.findings.emplace();
      }
      told.findings->push_back(std::move(finding));
    }
  }
  exam = std::move(told);
}

Result<void> exam_takes_changes(const ledger::ExamRecord& record) {
  // Which value a missing entry corrected, or whether it signed, cannot be known: nothing is built on such a record.
  if (record.unopened != 0) {
    return wire::Fault{"entry.seal", "/exam", "an exam whose entries all open"};
  }
  const auto state = record.fold.exam.state;
  if (state == model::ExamState::signed_) {
    return wire::Fault{"exam.signed", "/exam", "an open exam"};
  }
  if (state == model::ExamState::withdrawn) {
    return wire::Fault{"exam.withdrawn", "/exam", "an open exam"};
  }
  return {};
}

Result<const ledger::ExamRecord*> exam_shown_to(Context& context, const model::ExamId& exam, const std::vector<model::EntryId>& seen) {
  const auto record = exam_to_read(context, exam);
  if (!record) {
    return record.error();
  }
  if (auto known = check_seen(seen, (*record)->operations); !known) {
    return known.error();
  }
  return *record;
}

Result<void> exam_takes_additions(const ledger::ExamRecord& record) {
  if (record.unopened != 0) {
    return wire::Fault{"entry.seal", "/exam", "an exam whose entries all open"};
  }
  if (record.fold.exam.state == model::ExamState::withdrawn) {
    return wire::Fault{"exam.withdrawn", "/exam", "an exam that is not withdrawn"};
  }
  return {};
}

bool stands_in_conflict(const model::Exam& exam, std::string_view about) {
  const auto conflicts = exam.conflicts.value_or(std::vector<model::Conflict>{});
  return std::any_of(conflicts.begin(), conflicts.end(), [about](const model::Conflict& one) { return one.about.text == about; });
}

Result<void> exam_takes_from_here(const Context& context, const ledger::ExamRecord& record) {
  const model::Exam& exam = record.fold.exam;
  const bool waits = exam.supervised.value_or(false) && exam.state == model::ExamState::open && context.caller.scope == Scope::examiner;
  if (waits && exam.examiner && *exam.examiner != context.desk->examiner()) {
    return wire::Fault{"exam.not_closed", "/exam", "a signature of the exam's own examiner"};
  }
  return {};
}

std::vector<model::EntryId> seen_of(const std::vector<model::EntryId>& heads, const std::vector<model::EntryId>& seen,
                                    const std::vector<ledger::Opened>& operations) {
  const ledger::Graph graph(operations);
  const std::vector<bool> known = graph.closure(seen);
  std::vector<model::EntryId> out;
  for (const model::EntryId& head : heads) {
    if (const auto at = graph.find(head); at && known[*at]) {
      out.push_back(head);
    }
  }
  return out;
}

std::optional<ledger::ExamFold> exam_as_seen(Context& context, const model::ExamId& exam, const ledger::ExamRecord& record,
                                             const std::vector<model::EntryId>& seen) {
  const ledger::Graph graph(record.operations);
  const std::vector<bool> known = graph.closure(seen);
  std::vector<ledger::Opened> operations;
  for (std::size_t i = 0; i < graph.size(); ++i) {
    if (known[i]) {
      operations.push_back(graph.at(i));
    }
  }
  return fold_operations(context, exam, operations);
}

std::optional<ledger::ExamFold> fold_operations(Context& context, const model::ExamId& exam, const std::vector<ledger::Opened>& operations) {
  const ledger::Log& log = context.desk->log();
  const ledger::ExaminerKeys keys = [&log](const model::ExaminerId& who, const ledger::PublicKey& pub) { return log.knows_examiner(who, pub); };
  return ledger::fold_exam(exam, operations, keys, log.identity().clinic, [&context](const model::ItemId& id) { return is_protected(context, id); });
}

namespace {

// What stands, as one text; nothing where each of it was named.
[[nodiscard]] std::optional<std::string> what_was_not_named(const std::vector<model::EntryId>& heads, const std::vector<model::EntryId>& named) {
  const bool all_named = std::all_of(heads.begin(), heads.end(), [&](const model::EntryId& head) { return std::find(named.begin(), named.end(), head) != named.end(); });
  if (all_named) {
    return std::nullopt;
  }
  std::string all;
  for (const model::EntryId& head : heads) {
    all += (all.empty() ? "" : ", ") + head.to_text();
  }
  return all;
}

}  // namespace

Result<void> register_is_free(const std::vector<model::EntryId>& heads, const std::vector<model::EntryId>& replaces, const std::string& path) {
  const auto stands = what_was_not_named(heads, replaces);
  return stands ? Result<void>(wire::Fault{"finding.stale", path, "the entries that it replaces: " + *stands}) : Result<void>();
}

Result<void> nothing_came_since(const std::vector<model::EntryId>& heads, const std::vector<model::EntryId>& seen) {
  const auto stands = what_was_not_named(heads, seen);
  return stands ? Result<void>(wire::Fault{"revision.old", "/seen", "a revision that holds what stands: " + *stands}) : Result<void>();
}

std::optional<model::Place> place_of_exam(Context& context, const model::Exam& exam) {
  if (!exam.place) {
    return std::nullopt;
  }
  const auto places = context.desk->records().places();
  for (const ledger::PlaceFold& fold : places ? *places : std::vector<ledger::PlaceFold>{}) {
    if (fold.place.place == exam.place) {
      return fold.place;
    }
  }
  return std::nullopt;
}

std::optional<std::vector<model::LetterId>> stale_letters(const Context& context, const model::Exam& exam) {
  std::optional<std::vector<model::LetterId>> stale;
  if (context.caller.scope == Scope::kiosk) {
    return stale;
  }
  for (const model::Letter& letter : exam.letters.value_or(std::vector<model::Letter>{})) {
    if (letter.stale && !letter.corrected_by) {
      if (!stale) {
        stale.emplace();
      }
      stale->push_back(letter.letter);
    }
  }
  return stale;
}

Result<ExamReply> exam_reply(Context& context, const model::ExamId& exam, const Written& written) {
  const auto record = context.desk->records().exam(exam);
  if (!record) {
    return record.error();
  }
  ExamReply reply;
  reply.exam = (*record)->fold.exam;
  leave_out_unseen(context, reply.exam);
  reply.revision = written.revision;
  if (written.repeat) {
    reply.repeat = true;
  }
  reply.stale_letters = stale_letters(context, reply.exam);
  return reply;
}

}  // namespace limbledger::service
