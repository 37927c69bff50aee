#include "core/service/methods/clinic/queue.hpp"

#include "core/ledger/log/log.hpp"
#include "core/report/text.hpp"
#include "core/service/methods/clinic/queue_words.hpp"
#include "core/service/methods/people/dates.hpp"
#include "core/service/methods/say/texts.hpp"
#include "core/wire/write.hpp"

#include <algorithm>

namespace limbledger::service {

namespace {

constexpr std::int64_t queue_page = 100;

// One row, and where it stands among those of its harm. Who looks alike may be thousands: such a row is made when its page is asked for.
struct Queued {
  QueueRow row;
  std::int64_t order = 0;
  std::optional<match::PersonPair> to_make = std::nullopt;
};

[[nodiscard]] Harm harm_of(const model::Word& about, bool endangers) {
  const std::string& word = about.text;
  if (word == "person") {
    return Harm::wrong_person;
  }
  if (word == "side_exchange_unseen" || word == "exam") {  // of two versions of an exam the side is not known
    return Harm::wrong_side;
  }
  if (word == "finding" || word == "withdrawal") {
    return endangers ? Harm::danger : Harm::value;
  }
  if (word == "late" || word == "signature_unseen" || word == "withdrawal_unseen") {
    return Harm::after_signature;
  }
  return Harm::opinion;
}

[[nodiscard]] std::string_view settled_by(const model::Word& about, bool is_signed) {
  const std::string& word = about.text;
  if (word == "finding" || word == "withdrawal" || word == "side_exchange_unseen") {
    return "conflict.settle";
  }
  if (word == "person") {
    return "exam.move";
  }
  if (word == "became") {
    return "plan.follow";
  }
  if (word == "exam" && !is_signed) {
    return "exam.amend";
  }
  if (word == "impression" || word == "plan" || word == "consent") {
    return is_signed ? "addendum.record" : (word == "impression" ? "impression.record" : (word == "plan" ? "plan.record" : "consent.record"));
  }
  return "addendum.record";
}

// The entries of a row as they stand in the exam's record, with what each writer had seen of the others.
class RecordAtHand {
 public:
  RecordAtHand(Context& context, std::span<const ledger::Opened> operations, const ledger::ExamFold* fold, const report::Words* words)
      : context_(context), graph_(operations), fold_(fold), words_(words) {}

  void add(const std::vector<model::EntryId>& entries, QueueRow& row) const {
    for (const model::EntryId& entry : entries) {
      const auto node = graph_.find(entry);
      if (!node) {
        continue;
      }
      QueueEntry out = told(*node);
      for (const model::EntryId& other : entries) {
        const auto at = graph_.find(other);
        if (other != entry && at && graph_.saw(*node, *at)) {
          out.had_seen.push_back(other);
        }
      }
      row.entries.push_back(std::move(out));
    }
    // As the clocks claim, so that who reads finds the earlier first; which holds no clock decides.
    std::stable_sort(row.entries.begin(), row.entries.end(), [](const QueueEntry& a, const QueueEntry& b) { return a.at < b.at; });
  }
  // What the writer of a marked entry had not seen: the exchange of sides, the signature, the withdrawal of the exam.
  [[nodiscard]] std::vector<QueueEntry> unseen_by(const model::EntryMark& mark) const {
    const std::string_view op = mark.mark.text == "side_exchange_unseen" ? "swap_sides" : (mark.mark.text == "withdrawal_unseen" ? "withdraw" : "sign");
    std::vector<QueueEntry> out;
    const auto writer = graph_.find(mark.entry);
    for (std::size_t i = 0; writer && i < graph_.size(); ++i) {
      const auto* withdrawn = std::get_if<model::WithdrawBody>(&graph_.at(i).body());
      const bool of_a_finding = withdrawn != nullptr && withdrawn->finding.has_value();
      if (graph_.at(i).operation().op.text == op && !of_a_finding && !graph_.saw(*writer, i)) {
        out.push_back(told(i));
      }
    }
    return out;
  }

 private:
  [[nodiscard]] QueueEntry told(std::size_t node) const {
    const model::Operation& operation = graph_.at(node).operation();
    QueueEntry out;
    out.entry = graph_.at(node).entry();
    out.by = operation.by;
    if (operation.by) {
      out.by_name = wire::Remark{examiner_in_words(context_, *operation.by)};
    }
    out.at = {operation.at.wall_ms.steps};
    out.value = operation.body;
    if (words_ != nullptr) {
      out.text = wire::LongText{said(graph_.at(node))};
    }
    return out;
  }
  [[nodiscard]] std::string said(const ledger::Opened& written) const {
    if (fold_ != nullptr && !std::holds_alternative<model::WithdrawBody>(written.body())) {
      const model::EntryId& entry = written.entry();
      const auto found = std::find_if(fold_->history.begin(), fold_->history.end(), [&](const model::Finding& one) { return one.entry == entry; });
      if (found != fold_->history.end()) {
        return report::item_label(*words_, *context_.edition, found->item) + side_in_words(found->side) + ": " + report::bare_value_text(*words_, *context_.edition, *found);
      }
    }
    return entry_in_words(context_, written, *words_);
  }
  [[nodiscard]] std::string side_in_words(model::Side side) const { return side == model::Side::midline ? std::string() : ", " + report::side_of(*words_, side); }

  Context& context_;
  ledger::Graph graph_;
  const ledger::ExamFold* fold_;
  const report::Words* words_;
};

[[nodiscard]] std::string clock_in_words(model::Instant at, std::int64_t offset_min, const report::Words& words) {
  return model::can_be_right(at) ? report::local_time(at, offset_min) : words.say("msg.clinic.clock_doubtful");
}

// The first line of a row is numbered; what each wrote, and how it is settled, stand below it.
[[nodiscard]] std::string in_lines(const std::string& row, const std::string& number) {
  const std::string below = std::string(number.size(), ' ') + "- ";
  std::string text;
  for (std::size_t from = 0; from <= row.size();) {
    const std::size_t to = std::min(row.find('\n', from), row.size());
    text += report::wrapped(row.substr(from, to - from), from == 0 ? number : below);
    from = to + 1;
  }
  return text;
}

// How a line is settled, with the method that does it: msg.clinic.settle_by_conflict_settle ...
[[nodiscard]] std::string settled_in_words(const QueueRow& row, const report::Words& words) {
  // More than one method: it may hold, or not.
  if (row.about.text == "side_exchange_unseen" || row.about.text == "withdrawal") {
    return words.say("msg.clinic.settle_" + row.about.text);
  }
  std::string name = row.settle_by.text;
  std::replace(name.begin(), name.end(), '.', '_');
  return words.say("msg.clinic.settle_by_" + name);
}

// `beside`: what its writer had not seen, where no conflict names it. An exam of which it is open whose it is stands without a person:
// each entry says to whom it gave it.
[[nodiscard]] std::string row_in_words(const QueueRow& row, const ledger::ListedExam* exam, const std::vector<QueueEntry>& beside, const report::Words& words) {
  std::string text = words.say("msg.clinic.queue_" + row.about.text);
  const std::string who = row.person && row.harm != Harm::wrong_person ? person_in_words(*row.person, words) : std::string();
  std::int64_t offset_min = 0;
  if (exam != nullptr) {
    const std::string visit = visit_in_words(*exam, words);
    text += " " + words.say(who.empty() ? "msg.clinic.queue_of_visit" : "msg.clinic.queue_of", {{"person", who, false, true}, {"visit", visit, false, true}});
    offset_min = exam->offset_min ? exam->offset_min->steps : 0;
  } else if (!who.empty()) {
    text += " " + words.say("msg.clinic.queue_of_person", {{"person", who, false, true}});
  }
  const auto add = [&](const QueueEntry& one, std::string_view seen) {
    const std::string by = one.by_name ? one.by_name->text : words.say("msg.clinic.no_examiner");
    const std::string at = clock_in_words(one.at, offset_min, words);
    text += "\n" + words.say("msg.clinic.queue_entry", {{"by", by}, {"at", at, false, true}, {"what", one.text ? one.text->text : std::string(), false, true}, {"seen", words.say(seen), false, true}});
  };
  for (const QueueEntry& one : row.entries) {
    add(one, row.entries.size() < 2 ? "msg.clinic.queue_alone" : (one.had_seen.empty() ? "msg.clinic.queue_unseen" : "msg.clinic.queue_seen"));
  }
  for (const QueueEntry& one : beside) {
    add(one, "msg.clinic.queue_alone");
  }
  return text + "\n" + settled_in_words(row, words);
}

// A finding that an alert rests on, whichever of the two values it rests on.
[[nodiscard]] bool an_alert_rests_on(const JudgedVisit& visit, const std::vector<model::EntryId>& entries, const ledger::ExamFold& fold) {
  return std::any_of(fold.history.begin(), fold.history.end(), [&](const model::Finding& one) {
    return std::find(entries.begin(), entries.end(), *one.entry) != entries.end() && std::any_of(visit.alerts.begin(), visit.alerts.end(), [&](const interpret::Alert& alert) {
             return alert.state != interpret::AlertState::withdrawn_by_correction && std::find(alert.because.begin(), alert.because.end(), *one.finding) != alert.because.end();
           });
  });
}

[[nodiscard]] Result<void> add_exam(Context& context, const ledger::ListedExam& listed, const report::Words* words, std::vector<Queued>& queue) {
  const auto kept = context.desk->records().exam(listed.exam);
  if (!kept) {
    return kept.error();
  }
  const ledger::ExamRecord record = **kept;  // judging asks for others, and may let go of it
  auto person = listed_person(context, listed.persons);
  const auto visit = judge_visit(context, listed.exam);
  if (!person || !visit) {
    return !person ? person.error() : visit.error();
  }
  const RecordAtHand at_hand(context, record.operations, &record.fold, words);
  model::Exam told = record.fold.exam;
  leave_out_unseen(context, told);
  // What is kept apart is in nobody's queue but an examiner's, by whatever it is found.
  const auto is_kept_apart = [&](const std::vector<model::EntryId>& entries) {
    return !sees_protected(context) && std::any_of(record.fold.history.begin(), record.fold.history.end(), [&](const model::Finding& one) {
             return is_protected(context, one.item) && std::find(entries.begin(), entries.end(), *one.entry) != entries.end();
           });
  };
  const auto add = [&](const model::Word& about, const std::optional<model::ItemId>& item, const std::optional<model::Side>& side, const std::vector<model::EntryId>& entries,
                       const std::vector<QueueEntry>& beside) {
    if (is_kept_apart(entries)) {
      return;
    }
    QueueRow row;
    row.harm = harm_of(about, an_alert_rests_on(*visit, entries, record.fold));
    row.about = about;
    row.exam = listed.exam;
    row.person = *person;
    row.item = item;
    row.side = side;
    at_hand.add(entries, row);
    row.revision = record.fold.exam.revision.value_or(std::vector<model::EntryId>{});
    row.settle_by = model::Word{std::string(settled_by(about, record.fold.exam.signed_.has_value()))};
    if (words != nullptr) {
      row.text = wire::LongText{row_in_words(row, &listed, beside, *words)};
    }
    queue.push_back({std::move(row), -when_done(listed).in_order_ms});
  };
  for (const model::Conflict& one : told.conflicts.value_or(std::vector<model::Conflict>{})) {
    add(one.about, one.item, one.side, one.entries, {});
  }
  for (const model::EntryMark& mark : ledger::unseen_marks(record.fold, record.operations)) {
    const auto found = std::find_if(record.fold.history.begin(), record.fold.history.end(), [&](const model::Finding& one) { return one.entry == mark.entry; });
    const bool is_finding = found != record.fold.history.end();
    add(mark.mark, is_finding ? std::optional(found->item) : std::nullopt, is_finding ? std::optional(found->side) : std::nullopt, {mark.entry}, words != nullptr ? at_hand.unseen_by(mark) : std::vector<QueueEntry>{});
  }
  return {};
}

[[nodiscard]] Result<void> add_people(Context& context, const report::Words* words, std::vector<Queued>& queue) {
  const auto people = context.desk->records().persons_in_conflict();
  if (!people) {
    return people.error();
  }
  const std::vector<model::PersonId> ids((*people)->begin(), (*people)->end());
  for (const model::PersonId& id : ids) {
    const auto record = context.desk->records().person(id);
    if (!record) {
      return record.error();
    }
    if ((*record)->fold.conflicts.empty()) {
      continue;
    }
    const std::vector<ledger::Opened> operations = (*record)->operations;
    const ledger::PersonFold fold = (*record)->fold;
    const RecordAtHand at_hand(context, operations, nullptr, words);
    for (const model::Conflict& one : fold.conflicts) {
      QueueRow row;
      row.harm = Harm::about_person;
      row.about = one.about;
      const auto who = listed_person(context, {id});
      if (!who) {
        return who.error();
      }
      row.person = *who;
      at_hand.add(one.entries, row);
      row.revision = fold.person.revision.value_or(std::vector<model::EntryId>{});
      row.settle_by = model::Word{"person.amend"};
      if (words != nullptr) {
        row.text = wire::LongText{row_in_words(row, nullptr, {}, *words)};
      }
      queue.push_back({std::move(row), 0});
    }
  }
  return {};
}

[[nodiscard]] Harm harm_of_pair(bool decided) { return decided ? Harm::wrong_person : Harm::look_alike; }

[[nodiscard]] Result<QueueRow> row_of_pair(Context& context, const match::PersonPair& persons, bool decided, const report::Words* words) {
  auto told = tell_pair(context, persons);
  const auto first = listed_person(context, {persons.first});
  const auto second = listed_person(context, {persons.second});
  if (!told || !first || !second) {
    return !told ? told.error() : (!first ? first.error() : second.error());
  }
  QueueRow row;
  row.harm = harm_of_pair(decided);
  row.about = model::Word{decided ? "pair" : "look_alike"};
  row.revision = told->revision;
  row.settle_by = model::Word{"pair.decide"};
  if (words != nullptr) {
    std::vector<std::string> because;
    for (const WeighedField& one : told->working.value_or(std::vector<WeighedField>{})) {
      if (one.level.text != "missing") {
        because.push_back(report::word_of(*words, "clinic.field", wire::type_of<match::Field>().words[static_cast<std::size_t>(one.field)]) + ": " +
                          report::word_of(*words, "clinic.level", one.level.text));
      }
    }
    std::string text = words->say("msg.clinic.queue_" + row.about.text + "_of", {{"first", person_in_words(*first, *words), false, true},
                                                                                {"second", person_in_words(*second, *words), false, true},
                                                                                {"because", report::joined(because, "; "), false, true}});
    for (const model::Word& remark : told->remarks.value_or(std::vector<model::Word>{})) {
      text += " " + words->say("msg.clinic.remark_" + remark.text);
    }
    for (const DecidedPair& one : told->decided) {
      text += "\n" + words->say("msg.clinic.decided", {{"by", one.by_name ? one.by_name->text : words->say("msg.clinic.no_examiner")},
                                                      {"at", clock_in_words(one.at, 0, *words), false, true},
                                                      {"what", report::word_of(*words, "clinic.same", wire::type_of<model::SamePerson>().words[static_cast<std::size_t>(one.same)]), false, true}});
    }
    row.text = wire::LongText{text + "\n" + settled_in_words(row, *words)};
  }
  row.pair = std::move(*told);
  return row;
}

[[nodiscard]] Result<void> add_pairs(Context& context, bool look_alikes, std::vector<Queued>& queue) {
  const auto links = context.desk->records().links();
  if (!links) {
    return links.error();
  }
  const auto add = [&queue](const match::PersonPair& persons, bool decided, std::int64_t order) {
    queue.push_back({});
    queue.back().row.harm = harm_of_pair(decided);
    queue.back().order = order;
    queue.back().to_make = persons;
  };
  for (const auto& [persons, pair] : (*links)->pairs) {
    if (pair.in_conflict || pair.contradicted) {
      add(persons, true, 0);
    }
  }
  if (!look_alikes) {
    return {};
  }
  const auto undecided = undecided_pairs(context);
  if (!undecided) {
    return undecided.error();
  }
  std::int64_t order = 0;
  for (const match::PersonPair& persons : **undecided) {
    add(persons, false, ++order);
  }
  return {};
}

}  // namespace

Result<ConflictListResult> conflict_list(Context& context, const ConflictListParams& params) {
  const auto words = words_in(params.language);
  const auto listed = context.desk->records().exams();
  if (!words || !listed) {
    return !words ? words.error() : listed.error();
  }
  if (params.exam && !(*listed)->contains(*params.exam)) {
    return wire::Fault{"exam.unknown", "/exam", "the id of an exam"};
  }
  std::vector<ledger::ListedExam> rows;
  for (const auto& [id, row] : **listed) {
    const bool wanted = !params.exam || params.exam == id;
    // Of a withdrawn exam, only what somebody wrote into it without knowing that it was withdrawn.
    const bool disagrees = row.state != model::ExamState::withdrawn && row.in_conflict.value_or(false);
    if (wanted && (disagrees || row.unseen.value_or(false))) {
      rows.push_back(row);
    }
  }
  std::vector<Queued> queue;
  for (const ledger::ListedExam& row : rows) {
    if (auto added = add_exam(context, row, *words, queue); !added) {
      return added.error();
    }
  }
  if (!params.exam) {
    auto people = add_people(context, *words, queue);
    auto pairs = add_pairs(context, params.look_alikes.value_or(true), queue);
    if (!people || !pairs) {
      return !people ? people.error() : pairs.error();
    }
  }
  std::stable_sort(queue.begin(), queue.end(), [](const Queued& a, const Queued& b) {
    return a.row.harm == b.row.harm ? a.order < b.order : a.row.harm < b.row.harm;
  });
  ConflictListResult result;
  result.total.steps = static_cast<std::int64_t>(queue.size());
  const auto from = static_cast<std::size_t>(params.from ? params.from->steps : 0);
  const auto limit = static_cast<std::size_t>(params.limit ? params.limit->steps : queue_page);
  std::string text;
  if (!params.exam && params.look_alikes.value_or(true)) {
    result.looking = still_looking(context);
  }
  for (std::size_t i = from; i < queue.size() && i < from + limit; ++i) {
    if (queue[i].to_make) {
      auto made = row_of_pair(context, *queue[i].to_make, queue[i].row.harm != Harm::look_alike, *words);
      if (!made) {
        return made.error();
      }
      queue[i].row = std::move(*made);
    }
    if (*words != nullptr) {
      text += in_lines(queue[i].row.text->text, std::to_string(i + 1) + ". ");
    }
    result.queue.push_back(std::move(queue[i].row));
  }
  if (*words != nullptr) {
    const std::string title = (*words)->say(queue.empty() ? "msg.clinic.queue_none" : "msg.clinic.queue_title", {{"count", std::to_string(queue.size()), true}});
    if (!result.queue.empty() && result.queue.size() < queue.size()) {
      text += "\n" + report::wrapped((*words)->say("msg.clinic.queue_part", {{"first", std::to_string(from + 1), true},
                                                                             {"last", std::to_string(from + result.queue.size()), true},
                                                                             {"count", std::to_string(queue.size()), true}}));
    }
    if (result.looking) {
      text += "\n" + report::wrapped((*words)->say("msg.clinic.queue_looking", {{"compared", std::to_string(result.looking->compared.steps), false, true}, {"of", std::to_string(result.looking->of.steps), false, true}}));
    }
    const std::string banner = banner_of(context.desk->kind(), **words);
    result.text = wire::LongText{(banner.empty() ? "" : report::wrapped(banner)) + report::wrapped(title) + text +
                              (queue.empty() ? "" : "\n" + report::wrapped((*words)->say("msg.clinic.queue_end")))};
  }
  return result;
}

Result<ExamReply> conflict_settle(Context& context, const ConflictSettleParams& params) {
  const auto record = exam_shown_to(context, params.exam, params.seen);
  if (!record) {
    return record.error();
  }
  const ledger::ExamFold& fold = (*record)->fold;
  const auto taken = std::find_if(fold.history.begin(), fold.history.end(), [&](const model::Finding& one) { return one.entry == params.take; });
  if (taken == fold.history.end()) {
    return wire::Fault{"finding.unknown", "/take", "an entry of a finding of this exam"};
  }
  model::SettleBody body;
  body.finding = *taken->finding;
  body.observation = {taken->item, taken->side, taken->value, taken->instrument, taken->position, taken->end_feel, taken->pain, taken->quality, taken->origin, taken->despite, taken->remark};
  body.reason = params.reason;
  std::vector<model::EntryId> heads;
  for (const model::Finding& one : fold.history) {
    const bool stands = one.standing == model::Standing::current || one.standing == model::Standing::in_conflict;
    if (stands && one.item == taken->item && one.side == taken->side) {
      heads.push_back(*one.entry);
    }
  }
  ledger::NewOperation operation = operation_for(context, model::as_object(params.exam), ledger::ObjectType::exam, "settle", params.request, params.seen);
  operation.replaces = seen_of(heads, params.seen, (*record)->operations);
  operation.body_json = wire::write(body);
  operation.sign = true;
  const auto written = write(context, {operation}, [&]() -> Result<void> {
    if (auto takes = exam_takes_additions(**record); !takes) {
      return takes;
    }
    if (auto own = exam_takes_from_here(context, **record); !own) {
      return own;
    }
    if (params.reason.text.empty()) {
      return wire::Fault{"value.empty", "/reason", "why this value holds"};
    }
    return register_is_free(heads, operation.replaces, "/seen");
  });
  return written ? exam_reply(context, params.exam, *written) : Result<ExamReply>(written.error());
}

}  // namespace limbledger::service
