#include "core/service/methods/clinic/put_off.hpp"

#include "core/service/methods/clinic/queue_line.hpp"
#include "core/service/methods/clinic/queue_rows.hpp"
#include "core/service/methods/people/dates.hpp"
#include "core/wire/write.hpp"

#include <algorithm>
#include <set>

namespace limbledger::service {

namespace {

// By the clock of this device; one that cannot be right says of no day that it is still to come.
[[nodiscard]] bool has_come(Context& context, const model::PartialDate& day, const std::optional<model::OffsetMinutes>& offset_min) {
  const auto now = now_if_right(context.desk->world().now());
  return !now || day.first_day() <= days_of(*now, offset_min).last;
}

[[nodiscard]] std::string in_words(const ToldPutOff& one, const std::optional<model::OffsetMinutes>& offset_min, const report::Words& words) {
  const std::string by = one.by_name ? one.by_name->text : words.say("msg.clinic.no_examiner");
  std::string text = words.say("msg.clinic.put_off", {{"by", by},
                                                      {"at", clock_in_words(one.at, offset_min ? offset_min->steps : 0, words), false, true},
                                                      {"asked", one.asked.text},
                                                      {"day", one.look_again.to_text(), false, true}});
  if (one.again.value_or(false)) {
    text += " " + words.say("msg.clinic.put_off_again");
  } else if (one.due) {
    text += " " + words.say(one.changed ? "msg.clinic.put_off_changed" : "msg.clinic.put_off_due");
  }
  return text;
}

[[nodiscard]] ToldPutOff tell(Context& context, const ledger::PutOff& one, const std::optional<model::OffsetMinutes>& offset_min) {
  ToldPutOff out{one.entry, one.by, std::nullopt, one.at, one.said.asked, one.said.look_again};
  if (one.by) {
    out.by_name = wire::Remark{examiner_in_words(context, *one.by)};
  }
  out.changed = one.changed ? std::optional(true) : std::nullopt;
  out.again = one.again ? std::optional(true) : std::nullopt;
  out.due = !one.again && (one.changed || has_come(context, one.said.look_again, offset_min));
  return out;
}

// The record that a put-off lives in, and the rows that are lines of it.
struct AtHand {
  model::ObjectId object;
  ledger::ObjectType type{};
  std::vector<ledger::Opened> operations;
  std::vector<model::PersonId> persons;  // of a pair
};

[[nodiscard]] Result<AtHand> record_at_hand(Context& context, const ConflictPutOffParams& params) {
  if (params.exam.has_value() == params.persons.has_value()) {
    return wire::Fault{"value.all_or_one", "/exam", "either exam or persons"};
  }
  if (params.exam) {
    const auto record = exam_shown_to(context, *params.exam, params.seen);
    return record ? Result<AtHand>(AtHand{model::as_object(*params.exam), ledger::ObjectType::exam, (*record)->operations, {}}) : record.error();
  }
  std::vector<model::PersonId> persons = *params.persons;
  std::sort(persons.begin(), persons.end());
  if (persons.empty() || persons.size() > 2 || (persons.size() == 2 && persons.front() == persons.back())) {
    return wire::Fault{"value.empty", "/persons", "one person, or the two of a pair"};
  }
  for (std::size_t i = 0; i < params.persons->size(); ++i) {
    if (const auto known = context.desk->records().person((*params.persons)[i]); !known) {
      return wire::Fault{"person.unknown", "/persons/" + std::to_string(i), "the id of a person"};
    }
  }
  const auto record = context.desk->records().person(persons.front());
  if (!record) {
    return record.error();
  }
  if (auto known = check_seen(params.seen, (*record)->operations); !known) {
    return known.error();
  }
  return AtHand{model::as_object(persons.front()), ledger::ObjectType::person, (*record)->operations, persons.size() == 2 ? persons : std::vector<model::PersonId>{}};
}

[[nodiscard]] Result<std::vector<QueueRow>> lines_of(Context& context, const ConflictPutOffParams& params, const AtHand& at_hand) {
  std::vector<Queued> queue;
  if (params.exam) {
    const auto listed = context.desk->records().exams();
    if (!listed) {
      return listed.error();
    }
    const ledger::ListedExam row = (*listed)->at(*params.exam);  // judging may move the list below it
    if (is_queued(row)) {
      if (auto added = add_exam(context, row, nullptr, Told::whole, queue); !added) {
        return added.error();
      }
    }
  } else if (at_hand.persons.empty()) {
    if (auto added = add_person(context, params.persons->front(), nullptr, Told::whole, queue); !added) {
      return added.error();
    }
  } else if (auto added = add_pair(context, {at_hand.persons[0], at_hand.persons[1]}, nullptr, queue); !added) {
    return added.error();
  }
  std::vector<QueueRow> rows;
  for (Queued& one : queue) {
    rows.push_back(std::move(one.row));
  }
  return rows;
}

// A warning that nobody answered waits until tomorrow at most, and anything for a year: longer is asked back (our rule). Of a clock that
// cannot be right nothing is told.
[[nodiscard]] Result<void> check_wait(Context& context, const ConflictPutOffParams& params, const QueueRow& row, const std::optional<model::OffsetMinutes>& offset_min) {
  const auto now = now_if_right(context.desk->world().now());
  if (!now || confirms(params.confirmed, "value.unusual")) {
    return {};
  }
  const std::int64_t wait = params.look_again.last_day() - days_of(*now, offset_min).last;
  const bool warned = row.alerts && !row.alerts->empty();
  if (wait <= (warned ? 1 : 366)) {
    return {};
  }
  return wire::Fault("value.unusual", "/look_again", warned ? "tomorrow at the latest: a warning hangs on this line" : "a day within a year").with("order", warned ? R"("warned_wait")" : R"("long_wait")");
}

[[nodiscard]] Result<void> check_line(Context& context, const ConflictPutOffParams& params, const AtHand& at_hand, const std::optional<model::OffsetMinutes>& offset_min) {
  const auto rows = lines_of(context, params, at_hand);
  if (!rows) {
    return rows.error();
  }
  const std::set<model::EntryId> named(params.entries.begin(), params.entries.end());
  bool elsewise = false;
  for (const QueueRow& row : *rows) {
    const std::vector<model::EntryId> entries = standing_on(row);
    if (row.about != params.about) {
      continue;
    }
    if (std::set<model::EntryId>(entries.begin(), entries.end()) == named) {
      return check_wait(context, params, row, offset_min);
    }
    elsewise = elsewise || !at_hand.persons.empty() || std::any_of(entries.begin(), entries.end(), [&](const model::EntryId& one) { return named.contains(one); });
  }
  return elsewise ? wire::Fault{"finding.stale", "/entries", "what stands on this line now"} : wire::Fault{"conflict.unknown", "/about", "a line of conflict.list as it stands"};
}

[[nodiscard]] std::optional<model::OffsetMinutes> offset_of_line(Context& context, const ConflictPutOffParams& params) {
  const auto record = params.exam ? context.desk->records().exam(*params.exam) : Result<const ledger::ExamRecord*>(nullptr);
  return record && *record != nullptr ? (*record)->fold.exam.offset_min : std::nullopt;
}

}  // namespace

std::vector<model::EntryId> standing_on(const QueueRow& row) {
  std::vector<model::EntryId> out;
  for (const QueueEntry& one : row.entries) {
    out.push_back(one.entry);
  }
  for (const DecidedPair& one : row.pair ? row.pair->decided : std::vector<DecidedPair>{}) {
    out.push_back(one.entry);
  }
  return out;
}

void add_put_offs(Context& context, std::span<const ledger::Opened> operations, const std::optional<model::OffsetMinutes>& offset_min, const report::Words* words, QueueRow& row) {
  const std::vector<model::EntryId> entries = standing_on(row);
  for (const ledger::PutOff& one : ledger::put_offs(operations, row.about.text, entries, row.pair ? row.pair->persons : std::vector<model::PersonId>{})) {
    if (!row.put_off) {
      row.put_off.emplace();
    }
    row.put_off->push_back(tell(context, one, offset_min));
    if (words != nullptr) {
      row.put_off->back().text = wire::LongText{in_words(row.put_off->back(), offset_min, *words)};
    }
  }
}

void look_on(const model::PartialDate& as_of, const std::optional<model::OffsetMinutes>& offset_min, const report::Words* words, std::vector<ToldPutOff>& put_off) {
  for (ToldPutOff& one : put_off) {
    one.due = !one.again && (one.changed || one.look_again.first_day() <= as_of.last_day());
    if (words != nullptr) {
      one.text = wire::LongText{in_words(one, offset_min, *words)};
    }
  }
}

std::string put_off_lines(const QueueRow& row) {
  std::string text;
  for (const ToldPutOff& one : row.put_off.value_or(std::vector<ToldPutOff>{})) {
    text += "\n" + (one.text ? one.text->text : std::string());
  }
  return text;
}

Result<ConflictPutOffResult> conflict_put_off(Context& context, const ConflictPutOffParams& params) {
  const auto at_hand = record_at_hand(context, params);
  if (!at_hand) {
    return at_hand.error();
  }
  const auto offset_min = offset_of_line(context, params);
  model::PutOffBody body{params.about, params.entries, std::nullopt, params.asked, params.look_again};
  if (!at_hand->persons.empty()) {
    body.persons = at_hand->persons;
  }
  ledger::NewOperation operation = operation_for(context, at_hand->object, at_hand->type, "put_off", params.request, params.seen);
  operation.body_json = wire::write(body);
  const auto written = write(context, {operation}, [&]() -> Result<void> {
    if (params.asked.text.empty()) {
      return wire::Fault{"value.empty", "/asked", "whom you have asked, and what"};
    }
    const auto now = now_if_right(context.desk->world().now());
    if (now && params.look_again.last_day() < days_of(*now, offset_min).first) {
      return wire::Fault{"value.date_order", "/look_again", "today or a day after it"};
    }
    return check_line(context, params, *at_hand, offset_min);
  });
  if (!written) {
    return written.error();
  }
  // Told by what it names: a repeat may come when the line was settled.
  const auto operations = context.desk->log().operations(at_hand->object);
  if (!operations) {
    return operations.error();
  }
  for (const ledger::PutOff& one : ledger::put_offs(*operations, params.about.text, params.entries, at_hand->persons)) {
    if (one.entry == written->entries.front()) {
      ConflictPutOffResult result{tell(context, one, offset_min), written->revision, std::nullopt};
      if (written->repeat) {
        result.repeat = true;
      }
      return result;
    }
  }
  return wire::Fault{"conflict.unknown", "/about", "a line of conflict.list as it stands"};
}

}  // namespace limbledger::service
