#include "core/service/methods/clinic/queue_rows.hpp"

#include "core/report/page_judged.hpp"
#include "core/report/text.hpp"
#include "core/service/methods/clinic/queue_line.hpp"

#include <algorithm>

namespace limbledger::service {

namespace {

[[nodiscard]] Harm harm_of(const model::Word& about, bool endangers) {
  const std::string& word = about.text;
  if (word == "person") {
    return Harm::wrong_person;
  }
  if (word == "side_exchange_unseen" || word == "exchanged_twice" || word == "exam") {  // of two versions of an exam the side is not known
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
  if (word == "exchanged_twice" && !is_signed) {
    return "exam.swap_sides";
  }
  if (word == "exam" && !is_signed) {
    return "exam.amend";
  }
  if (word == "impression" || word == "plan" || word == "consent") {
    return is_signed ? "addendum.record" : (word == "impression" ? "impression.record" : (word == "plan" ? "plan.record" : "consent.record"));
  }
  return "addendum.record";
}

// A finding among these entries that the alert rests on.
[[nodiscard]] bool rests_on(const interpret::Alert& alert, const std::vector<model::EntryId>& entries, const ledger::ExamFold& fold) {
  return std::any_of(fold.history.begin(), fold.history.end(), [&](const model::Finding& one) {
    return std::find(entries.begin(), entries.end(), *one.entry) != entries.end() && std::find(alert.because.begin(), alert.because.end(), *one.finding) != alert.because.end();
  });
}

[[nodiscard]] bool an_alert_rests_on(const JudgedVisit& visit, const std::vector<model::EntryId>& entries, const ledger::ExamFold& fold) {
  return std::any_of(visit.alerts.begin(), visit.alerts.end(), [&](const interpret::Alert& alert) {
    return alert.state != interpret::AlertState::withdrawn_by_correction && rests_on(alert, entries, fold);
  });
}

// What hangs on a row: all of an exam of which it is open whose, of what or which side it is, or that was withdrawn; else what rests on one of
// the values.
void add_alerts_hanging_on(Context& context, const JudgedVisit& visit, const std::vector<model::EntryId>& entries, const ledger::ExamFold& fold, const report::Words* words, QueueRow& row) {
  const std::string& about = row.about.text;
  const bool all = about == "person" || about == "exam" || about == "side_exchange_unseen" || about == "exchanged_twice" || about == "withdrawal_unseen";
  for (const interpret::Alert& alert : visit.alerts) {
    if (alert.state == interpret::AlertState::withdrawn_by_correction || !(all || rests_on(alert, entries, fold))) {
      continue;
    }
    const std::optional<wire::LongText> text = words != nullptr ? std::optional(wire::LongText{report::alert_text(alert, *words)}) : std::nullopt;
    if (alert.state == interpret::AlertState::raised) {
      (row.alerts ? *row.alerts : row.alerts.emplace()).push_back({alert.alert, alert.side, alert.urgency, alert.call_back, text});
    } else if (alert.handled) {
      const model::AlertHandled& said = *alert.handled;
      const std::optional<wire::Remark> by = said.by ? std::optional(wire::Remark{examiner_in_words(context, *said.by)}) : std::nullopt;
      (row.answered ? *row.answered : row.answered.emplace()).push_back({alert.alert, alert.side, alert.urgency, said.action, said.reason, by, said.at, text});
    }
  }
}

// The person's other exams that stand, under whichever of the person's records.
[[nodiscard]] std::vector<ledger::ListedExam> other_exams(Context& context, const ledger::ListedExam& listed, const ListedPerson& person) {
  std::vector<ledger::ListedExam> out;
  const auto all = context.desk->records().exams();
  if (!all) {
    return out;
  }
  for (const auto& [id, row] : **all) {
    const bool of_person = std::any_of(row.persons.begin(), row.persons.end(), [&](const model::PersonId& one) { return std::find(person.persons.begin(), person.persons.end(), one) != person.persons.end(); });
    if (of_person && id != listed.exam && row.state != model::ExamState::withdrawn) {
      out.push_back(row);
    }
  }
  return out;
}

// What a line says beside its entries.
[[nodiscard]] std::vector<std::string> more_of(const QueueRow& row, const ledger::ListedExam& listed, const std::vector<ledger::ListedExam>& others, const RecordAtHand& at_hand,
                                               const report::Words& words) {
  std::vector<std::string> more;
  const std::string& about = row.about.text;
  const bool told_when = std::any_of(row.entries.begin(), row.entries.end(), [](const QueueEntry& one) { return one.examined_at.has_value(); });
  if (about == "finding" && !told_when) {
    more.push_back(words.say("msg.clinic.queue_times"));
  }
  if (about == "side_exchange_unseen") {
    more.push_back(words.say("msg.clinic.queue_exam_side", {{"visit", visit_in_words(listed, words), false, true}}));
    const std::vector<std::string> turned = at_hand.turned();
    more.push_back(turned.empty() ? words.say("msg.clinic.queue_turned_none") : words.say("msg.clinic.queue_turned", {{"findings", report::joined(turned, "; "), false, true}}));
  }
  if (about == "withdrawal_unseen" && others.empty()) {
    more.push_back(words.say("msg.clinic.queue_no_other_exam"));
  }
  for (const ledger::ListedExam& one : about == "withdrawal_unseen" ? others : std::vector<ledger::ListedExam>{}) {
    const auto day = when_done(one).day;
    more.push_back(words.say("msg.clinic.queue_other_exam", {{"visit", visit_in_words(one, words), false, true},
                                                             {"on", day ? day->to_text() : words.say("msg.clinic.day_unknown"), false, true},
                                                             {"id", one.exam.to_text(), false, true}}));
  }
  return more;
}

[[nodiscard]] std::int64_t offset_of(const ledger::ListedExam& exam) { return exam.offset_min ? exam.offset_min->steps : 0; }

}  // namespace

Result<void> add_exam(Context& context, const ledger::ListedExam& listed, const report::Words* words, Told how, std::vector<Queued>& queue) {
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
    if (row.settle_by.text == "impression.record") {
      row.replaces = record.fold.impression_heads;
    }
    add_put_offs(context, record.operations, listed.offset_min, words, row);
    add_alerts_hanging_on(context, *visit, entries, record.fold, words, row);
    const std::vector<ledger::ListedExam> others = about.text == "withdrawal_unseen" ? other_exams(context, listed, *person) : std::vector<ledger::ListedExam>{};
    for (const ledger::ListedExam& one : others) {
      if (!row.other_exams) {
        row.other_exams.emplace();
      }
      row.other_exams->push_back(one.exam);
    }
    if (words != nullptr) {
      LineOf line{row, &listed, offset_of(listed), beside, more_of(row, listed, others, at_hand, *words), at_hand.differing(row.entries)};
      if (how == Told::on_letter && about.text == "person") {
        row.entries.clear();
      }
      row.text = wire::LongText{how == Told::whole ? row_in_words(context, line, *words) : row_in_short(line, *words)};
    }
    queue.push_back({std::move(row), -when_done(listed).in_order_ms});
  };
  // A page keeps both; in the queue the addendum has ended it.
  const std::vector<model::Conflict> open = ledger::open_conflicts(record.fold, record.operations);
  for (const model::Conflict& one : told.conflicts.value_or(std::vector<model::Conflict>{})) {
    if (how == Told::whole && std::find(open.begin(), open.end(), one) == open.end()) {
      continue;
    }
    add(one.about, one.item, one.side, one.entries, {});
  }
  for (const model::EntryMark& mark : ledger::unseen_marks(record.fold, record.operations)) {
    const auto found = std::find_if(record.fold.history.begin(), record.fold.history.end(), [&](const model::Finding& one) { return one.entry == mark.entry; });
    const bool is_finding = found != record.fold.history.end();
    add(mark.mark, is_finding ? std::optional(found->item) : std::nullopt, is_finding ? std::optional(found->side) : std::nullopt, {mark.entry}, words != nullptr ? at_hand.unseen_by(mark) : std::vector<QueueEntry>{});
  }
  return {};
}

namespace {

// The local time that a line of a person is told in: of the person's newest exam, else of the newest of all.
[[nodiscard]] std::int64_t offset_at_hand(Context& context, const std::vector<model::PersonId>& persons) {
  const auto all = context.desk->records().exams();
  if (!all) {
    return 0;
  }
  const ledger::ListedExam* newest = nullptr;
  bool own = false;
  for (const auto& [id, row] : **all) {
    const bool of_person = std::any_of(row.persons.begin(), row.persons.end(), [&](const model::PersonId& one) { return std::find(persons.begin(), persons.end(), one) != persons.end(); });
    if (row.offset_min && (newest == nullptr || (of_person && !own) || (of_person == own && when_done(*newest).in_order_ms < when_done(row).in_order_ms))) {
      newest = &row;
      own = of_person;
    }
  }
  return newest == nullptr ? 0 : offset_of(*newest);
}

}  // namespace

Result<void> add_person(Context& context, const model::PersonId& id, const report::Words* words, Told how, std::vector<Queued>& queue) {
  const auto record = context.desk->records().person(id);
  if (!record) {
    return record.error();
  }
  if ((*record)->fold.conflicts.empty()) {
    return {};
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
    row.replaces = one.entries;
    row.settle_by = model::Word{"person.amend"};
    add_put_offs(context, operations, model::OffsetMinutes{offset_at_hand(context, {id})}, words, row);
    if (words != nullptr) {
      const LineOf line{row, nullptr, offset_at_hand(context, {id})};
      row.text = wire::LongText{how == Told::whole ? row_in_words(context, line, *words) : row_in_short(line, *words)};
    }
    queue.push_back({std::move(row), 0});
  }
  return {};
}

Result<void> add_people(Context& context, const report::Words* words, std::vector<Queued>& queue) {
  const auto people = context.desk->records().persons_in_conflict();
  if (!people) {
    return people.error();
  }
  const std::vector<model::PersonId> ids((*people)->begin(), (*people)->end());
  for (const model::PersonId& id : ids) {
    if (auto added = add_person(context, id, words, Told::whole, queue); !added) {
      return added;
    }
  }
  return {};
}

namespace {

// They lie in the record of the first.
[[nodiscard]] Result<void> add_put_offs_of_pair(Context& context, const match::PersonPair& persons, const report::Words* words, QueueRow& row) {
  const auto first = context.desk->records().person(persons.first);
  if (!first) {
    return first.error();
  }
  const std::vector<ledger::Opened> operations = (*first)->operations;
  add_put_offs(context, operations, model::OffsetMinutes{offset_at_hand(context, {persons.first, persons.second})}, words, row);
  return {};
}

// Whoever was decided to be one was born once: two days that cannot be one day are asked after.
[[nodiscard]] Result<void> add_births_of_one(Context& context, const match::PersonPair& persons, const report::Words* words, std::vector<Queued>& queue) {
  QueueRow row;
  std::vector<std::string> records;
  std::vector<model::PartialDate> births;
  for (const model::PersonId& id : {persons.first, persons.second}) {
    const auto record = context.desk->records().person(id);
    if (!record || !(*record)->fold.person.birth || !(*record)->fold.person.birth->date) {
      return {};
    }
    births.push_back(*(*record)->fold.person.birth->date);
  }
  if (births[0].first_day() <= births[1].last_day() && births[1].first_day() <= births[0].last_day()) {
    return {};
  }
  row.harm = Harm::about_person;
  row.about = model::Word{"births_of_one"};
  row.settle_by = model::Word{"person.amend"};
  auto who = listed_person(context, {persons.first});
  auto pair = tell_pair(context, persons);
  if (!who || !pair) {
    return !who ? who.error() : pair.error();
  }
  row.person = *who;
  row.pair = std::move(*pair);
  if (auto added = add_put_offs_of_pair(context, persons, words, row); !added) {
    return added;
  }
  if (words != nullptr) {
    std::vector<std::string> lines;
    for (const model::Person& one : row.pair->people) {
      const auto record = context.desk->records().person(*one.person);
      if (!record) {
        return record.error();
      }
      std::vector<std::string> heads;
      for (const model::EntryId& head : (*record)->fold.value_heads) {
        heads.push_back(head.to_text());
      }
      std::vector<std::string> seen;
      for (const model::EntryId& head : (*record)->fold.person.revision.value_or(std::vector<model::EntryId>{})) {
        seen.push_back(head.to_text());
      }
      const ListedPerson told{{*one.person}, one.names.value_or(std::vector<model::PersonName>{}), one.birth, std::nullopt};
      lines.push_back(words->say("msg.clinic.record_of", {{"person", person_in_words(told, *words), false, true},
                                                          {"id", one.person->to_text(), false, true},
                                                          {"replaces", report::joined(heads), false, true},
                                                          {"seen", report::joined(seen), false, true}}));
    }
    std::string text = words->say("msg.clinic.queue_births_of_one");
    for (const std::string& line : lines) {
      text += "\n" + line;
    }
    row.text = wire::LongText{text + put_off_lines(row) + "\n" + words->say("msg.clinic.settle_births_of_one") + "\n" + ids_to_put_off(row, *words)};
  }
  queue.push_back({std::move(row), 0});
  return {};
}

// One of them is among those of whom it is open whose an exam is.
[[nodiscard]] bool is_in_whose_exam(Context& context, const match::PersonPair& persons) {
  const auto all = context.desk->records().exams();
  return all && std::any_of((*all)->begin(), (*all)->end(), [&](const auto& listed) {
           const auto& of = listed.second.persons;
           return of.size() > 1 && listed.second.state != model::ExamState::withdrawn &&
                  std::any_of(of.begin(), of.end(), [&](const model::PersonId& one) { return one == persons.first || one == persons.second; });
         });
}

[[nodiscard]] Harm harm_of_pair(bool decided) { return decided ? Harm::wrong_person : Harm::look_alike; }

}  // namespace

Result<QueueRow> row_of_pair(Context& context, const match::PersonPair& persons, bool decided, const report::Words* words) {
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
  row.pair = *told;
  if (auto added = add_put_offs_of_pair(context, persons, words, row); !added) {
    return added.error();
  }
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
    if (is_in_whose_exam(context, persons)) {
      text += " " + words->say("msg.clinic.also_whose_exam");
    }
    for (const DecidedPair& one : told->decided) {
      text += "\n" + words->say("msg.clinic.decided", {{"by", one.by_name ? one.by_name->text : words->say("msg.clinic.no_examiner")},
                                                      {"at", clock_in_words(one.at, offset_at_hand(context, told->persons), *words), false, true},
                                                      {"what", report::word_of(*words, "clinic.same", wire::type_of<model::SamePerson>().words[static_cast<std::size_t>(one.same)]), false, true}});
    }
    row.text = wire::LongText{text + put_off_lines(row) + "\n" + settled_in_words(LineOf{row}, *words)};
  }
  return row;
}

Result<void> add_pair(Context& context, const match::PersonPair& persons, const report::Words* words, std::vector<Queued>& queue) {
  const auto links = context.desk->records().links();
  if (!links) {
    return links.error();
  }
  const auto found = (*links)->pairs.find(persons);
  const bool against = found != (*links)->pairs.end() && (found->second.in_conflict || found->second.contradicted);
  if (!against && found != (*links)->pairs.end() && found->second.same == model::SamePerson::yes) {
    return add_births_of_one(context, persons, words, queue);
  }
  const bool decided = (found != (*links)->pairs.end() && found->second.same) || (*links)->group_of(persons.first).contains(persons.second);
  if (!against && decided) {
    return {};
  }
  const auto alike = undecided_pairs(context);
  if (!alike) {
    return alike.error();
  }
  // While records are left to compare nobody knows who does not look alike.
  if (!against && !still_looking(context) && std::find((*alike)->begin(), (*alike)->end(), persons) == (*alike)->end()) {
    return {};
  }
  auto row = row_of_pair(context, persons, against, words);
  if (!row) {
    return row.error();
  }
  queue.push_back({std::move(*row), 0});
  return {};
}

Result<void> add_pairs(Context& context, bool look_alikes, const report::Words* words, std::vector<Queued>& queue) {
  std::vector<match::PersonPair> joined;
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
    } else if (pair.same == model::SamePerson::yes) {
      joined.push_back(persons);
    }
  }
  for (const match::PersonPair& persons : joined) {
    if (auto added = add_births_of_one(context, persons, words, queue); !added) {
      return added;
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

}  // namespace limbledger::service
