#include "core/service/methods/clinic/queue_line.hpp"

#include "core/report/text.hpp"
#include "core/service/methods/clinic/queue_words.hpp"
#include "core/service/methods/people/dates.hpp"
#include "core/wire/parse.hpp"
#include "core/wire/write.hpp"

#include <algorithm>

namespace limbledger::service {

namespace {

using report::Words;

constexpr std::size_t turned_named_max = 4;

[[nodiscard]] const model::Observation* observation_of(const ledger::Opened& written) {
  if (const auto* finding = std::get_if<model::FindingBody>(&written.body())) {
    return &finding->observation;
  }
  const auto* settle = std::get_if<model::SettleBody>(&written.body());
  return settle == nullptr ? nullptr : &settle->observation;
}

[[nodiscard]] std::string at_side(const Words& words, model::Side side) { return side == model::Side::midline ? std::string() : ", " + report::side_of(words, side); }

// A member of the opening, by its name and in words.
struct OpeningPart {
  std::string name;
  std::string text;
};
[[nodiscard]] std::vector<OpeningPart> parts_of(const model::ExamBody& body, const Words& words) {
  const auto said = [&](const auto& member, const auto& say) { return member ? say(*member) : words.say("msg.settled.not_said"); };
  const auto yes_or_no = [&](bool value) { return report::word_of(words, "value", value ? "yes" : "no"); };
  return {{"complaint", report::word_of(words, "complaint", body.complaint.text)},
          {"side", said(body.side, [&](model::Side side) { return report::side_of(words, side); })},
          {"setting", report::enum_word(words, "setting", body.setting)},
          {"place", said(body.place, [](const model::PlaceId& place) { return place.to_text(); })},
          {"offset_min", said(body.offset_min, [](const model::OffsetMinutes& offset) { return std::to_string(offset.steps); })},
          {"injured_on", said(body.injured_on, [](const model::PartialDate& day) { return day.to_text(); })},
          {"reviews", said(body.reviews, [](const model::ExamId& exam) { return exam.to_text(); })},
          {"supervised", said(body.supervised, yes_or_no)}};
}

[[nodiscard]] std::string named(const Words& words, const OpeningPart& part) { return report::word_of(words, "settled_about", part.name); }

[[nodiscard]] std::string ids(const std::vector<model::EntryId>& entries) {
  std::vector<std::string> all;
  for (const model::EntryId& one : entries) {
    all.push_back(one.to_text());
  }
  return report::joined(all);
}

// Of one member alone, where a record of a person was changed in several.
[[nodiscard]] bool gives(const model::PersonBody& body, const std::string& member) {
  return (member == "birth" && body.birth) || (member == "sex" && body.sex) || (member == "norm_sex" && body.norm_sex) || (member == "home" && body.home);
}

// One kind of thing: what stood before a finding is no exchange of sides.
[[nodiscard]] bool same_kind(const ledger::Opened& before, const ledger::Opened& after, const QueueRow& row) {
  if (const auto* person = std::get_if<model::PersonBody>(&before.body())) {
    return gives(*person, row.about.text);
  }
  if (row.about.text == "person") {
    return std::holds_alternative<model::MoveBody>(before.body()) || std::holds_alternative<model::ExamBody>(before.body());
  }
  const bool finding = observation_of(before) != nullptr;
  return finding ? (observation_of(after) != nullptr || std::holds_alternative<model::WithdrawBody>(after.body())) : before.body().index() == after.body().index();
}

[[nodiscard]] std::string entry_line(const QueueEntry& one, std::string_view seen, std::int64_t offset_min, const Words& words) {
  const std::string by = one.by_name ? one.by_name->text : words.say("msg.clinic.no_examiner");
  std::string what = one.text ? one.text->text : std::string();
  if (one.examined_at) {
    what += words.say("msg.clinic.found_at", {{"at", clock_in_words(*one.examined_at, offset_min, words), false, true}});
  }
  return words.say("msg.clinic.queue_entry", {{"by", by},
                                              {"at", clock_in_words(one.at, offset_min, words), false, true},
                                              {"what", what, false, true},
                                              {"seen", words.say(seen), false, true}});
}

// Without the end that its own sentence gives it.
[[nodiscard]] std::string unended(std::string text) {
  text.erase(text.find_last_not_of(". ") + 1);
  return text;
}

[[nodiscard]] std::string_view seen_words(const QueueRow& row, const QueueEntry& one) {
  return row.entries.size() < 2 ? "msg.clinic.queue_alone" : (one.had_seen.empty() ? "msg.clinic.queue_unseen" : "msg.clinic.queue_seen");
}

[[nodiscard]] std::string heading(const LineOf& line, const Words& words) {
  const QueueRow& row = line.row;
  std::string text = words.say("msg.clinic.queue_" + row.about.text);
  const std::string who = row.person && row.about.text != "person" ? person_in_words(*row.person, words) : std::string();
  if (line.exam != nullptr) {
    text += " " + words.say(who.empty() ? "msg.clinic.queue_of_visit" : "msg.clinic.queue_of", {{"person", who, false, true}, {"visit", visit_in_words(*line.exam, words), false, true}});
  } else if (!who.empty()) {
    text += " " + words.say("msg.clinic.queue_of_person", {{"person", who, false, true}});
  }
  return text;
}

}  // namespace

void RecordAtHand::add(const std::vector<model::EntryId>& entries, QueueRow& row) const {
  for (const model::EntryId& entry : entries) {
    const auto node = graph_.find(entry);
    if (!node) {
      continue;
    }
    QueueEntry out = told(*node, row);
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
  for (const std::size_t node : replaced_by_all(row.entries, row)) {
    if (!row.before) {
      row.before.emplace();
    }
    row.before->push_back(told(node, row));
  }
  if (words_ != nullptr && row.about.text == "exam") {
    for (QueueEntry& one : row.entries) {
      one.text = wire::LongText{said_of_opening(*graph_.find(one.entry), row)};
    }
  }
}

// What they corrected, each once, oldest first.
std::vector<std::size_t> RecordAtHand::replaced_by_all(const std::vector<QueueEntry>& entries, const QueueRow& row) const {
  std::vector<std::size_t> out;
  for (const QueueEntry& one : entries) {
    const auto writer = graph_.find(one.entry);
    for (const model::EntryId& target : graph_.at(*writer).operation().replaces) {
      const auto node = graph_.find(target);
      const bool listed = node && std::any_of(entries.begin(), entries.end(), [&](const QueueEntry& other) { return graph_.find(other.entry) == node; });
      if (node && !listed && same_kind(graph_.at(*node), graph_.at(*writer), row) && std::find(out.begin(), out.end(), *node) == out.end()) {
        out.push_back(*node);
      }
    }
  }
  std::sort(out.begin(), out.end());
  return out;
}

std::vector<QueueEntry> RecordAtHand::unseen_by(const model::EntryMark& mark) const {
  const std::string_view op = mark.mark.text == "side_exchange_unseen" || mark.mark.text == "exchanged_twice" ? "swap_sides" : (mark.mark.text == "withdrawal_unseen" ? "withdraw" : "sign");
  std::vector<QueueEntry> out;
  const auto writer = graph_.find(mark.entry);
  for (std::size_t i = 0; writer && i < graph_.size(); ++i) {
    const auto* withdrawn = std::get_if<model::WithdrawBody>(&graph_.at(i).body());
    const bool of_a_finding = withdrawn != nullptr && withdrawn->finding.has_value();
    if (graph_.at(i).operation().op.text == op && !of_a_finding && i != *writer && !graph_.saw(*writer, i)) {
      out.push_back(told(i, {}));
    }
  }
  return out;
}

std::vector<std::string> RecordAtHand::turned() const {
  std::vector<std::string> out;
  for (const model::Finding& one : fold_->exam.findings.value_or(std::vector<model::Finding>{})) {
    const auto node = graph_.find(*one.entry);
    const model::Observation* written = node ? observation_of(graph_.at(*node)) : nullptr;
    if (written != nullptr && written->side != one.side && !is_protected(context_, one.item)) {
      out.push_back(said(*node, {}));
    }
  }
  if (out.size() > turned_named_max) {
    const std::string others = words_->say("msg.clinic.queue_others", {{"count", std::to_string(out.size() - turned_named_max), true}});
    out.resize(turned_named_max);
    out.push_back(others);
  }
  return out;
}

std::vector<std::string> RecordAtHand::differing(const std::vector<QueueEntry>& versions) const {
  std::vector<std::string> out;
  std::vector<std::vector<OpeningPart>> all;
  for (const QueueEntry& one : versions) {
    if (const auto* body = std::get_if<model::ExamBody>(&graph_.at(*graph_.find(one.entry)).body())) {
      all.push_back(parts_of(*body, *words_));
    }
  }
  for (std::size_t part = 0; !all.empty() && part < all.front().size(); ++part) {
    if (std::any_of(all.begin(), all.end(), [&](const auto& other) { return other[part].text != all.front()[part].text; })) {
      out.push_back(named(*words_, all.front()[part]));
    }
  }
  return out;
}

QueueEntry RecordAtHand::told(std::size_t node, const QueueRow& row) const {
  const model::Operation& operation = graph_.at(node).operation();
  QueueEntry out;
  out.entry = graph_.at(node).entry();
  out.by = operation.by;
  if (operation.by) {
    out.by_name = wire::Remark{examiner_in_words(context_, *operation.by)};
  }
  out.at = {operation.at.wall_ms.steps};
  out.value = operation.body;
  if (observation_of(graph_.at(node)) != nullptr) {
    out.examined_at = operation.examined_at;
  }
  if (words_ != nullptr) {
    out.text = wire::LongText{said(node, row)};
  }
  return out;
}

std::string RecordAtHand::said(std::size_t node, const QueueRow& row) const {
  const ledger::Opened& written = graph_.at(node);
  if (fold_ != nullptr && observation_of(written) != nullptr) {
    const auto found = std::find_if(fold_->history.begin(), fold_->history.end(), [&](const model::Finding& one) { return one.entry == written.entry(); });
    if (found != fold_->history.end()) {
      return said_of_finding(written, *found, row);
    }
  }
  if (const auto* sign = std::get_if<model::SignBody>(&written.body()); sign != nullptr && fold_ != nullptr) {
    std::string text = words_->say("msg.clinic.wrote_sign", {{"read", sign->read_aloud.text}});
    const auto& impression = fold_->exam.impression;
    return text + (impression ? words_->say("msg.clinic.signed_with", {{"impression", impression->text.text}}) : words_->say("msg.clinic.signed_without"));
  }
  if (const auto* opening = std::get_if<model::ExamBody>(&written.body()); opening != nullptr && row.about.text == "person") {
    const auto person = opening->person ? listed_person(context_, {*opening->person}) : Result<ListedPerson>(ListedPerson{});
    return words_->say("msg.clinic.opened_for", {{"person", person ? person_in_words(*person, *words_) : std::string(), false, true}});
  }
  if (const auto* person = std::get_if<model::PersonBody>(&written.body()); person != nullptr && gives(*person, row.about.text)) {
    return row.about.text == "birth"  ? birth_in_words(*person->birth, *words_)
           : row.about.text == "sex"  ? report::enum_word(*words_, "sex", *person->sex)
           : row.about.text == "home" ? words_->say("msg.clinic.home", {{"home", person->home->text}})
                                      : entry_in_words(context_, written, *words_);
  }
  return entry_in_words(context_, written, *words_);
}

// As it was written, with the side that was written; where an exchange has turned it, that as well.
std::string RecordAtHand::said_of_finding(const ledger::Opened& written, const model::Finding& found, const QueueRow& row) const {
  const model::Side as_written = observation_of(written)->side;
  std::string text = report::item_label(*words_, *context_.edition, found.item) + at_side(*words_, as_written) + ": ";
  // With how it was found, where it may have to be recorded anew.
  text += row.about.text == "side_exchange_unseen" ? report::value_text(*words_, *context_.edition, found) : report::bare_value_text(*words_, *context_.edition, found);
  const auto* body = std::get_if<model::FindingBody>(&written.body());
  if (body != nullptr && body->examiner && body->examiner != written.operation().by) {
    text += words_->say("msg.clinic.found_by", {{"examiner", examiner_in_words(context_, *body->examiner)}});
  }
  if (as_written != found.side) {
    text += words_->say("msg.clinic.turned", {{"written", report::side_of(*words_, as_written), false, true}, {"now", report::side_of(*words_, found.side), false, true}});
  } else if (row.about.text == "side_exchange_unseen") {
    text += words_->say("msg.clinic.not_turned", {{"written", report::side_of(*words_, as_written), false, true}});
  }
  return text;
}

// What this version changed, and where it left what another changed.
std::string RecordAtHand::said_of_opening(std::size_t node, const QueueRow& row) const {
  const auto& body = std::get<model::ExamBody>(graph_.at(node).body());
  const std::vector<OpeningPart> now = parts_of(body, *words_);
  std::optional<std::vector<OpeningPart>> was;
  for (const QueueEntry& one : row.before.value_or(std::vector<QueueEntry>{})) {
    if (const auto* opening = std::get_if<model::ExamBody>(&graph_.at(*graph_.find(one.entry)).body())) {
      was = parts_of(*opening, *words_);
    }
  }
  if (!was) {
    return entry_in_words(context_, graph_.at(node), *words_);
  }
  const std::vector<std::string> open = differing(row.entries);
  std::vector<std::string> told;
  for (std::size_t i = 0; i < now.size(); ++i) {
    const std::string name = named(*words_, now[i]);
    if (now[i].text != (*was)[i].text) {
      told.push_back(words_->say("msg.clinic.part_changed", {{"part", name, false, true}, {"now", now[i].text, false, true}, {"was", (*was)[i].text, false, true}}));
    } else if (std::find(open.begin(), open.end(), name) != open.end()) {
      told.push_back(words_->say("msg.clinic.part_left", {{"part", name, false, true}, {"now", now[i].text, false, true}}));
    }
  }
  std::string text = report::joined(told, "; ");
  if (body.reason) {
    text += words_->say("msg.clinic.because", {{"reason", body.reason->text}});
  }
  return text;
}

std::string clock_in_words(model::Instant at, std::int64_t offset_min, const Words& words) {
  return model::can_be_right(at) ? report::local_time(at, offset_min) : words.say("msg.clinic.clock_doubtful");
}

std::string when_in_words(const ledger::ListedExam& exam, std::int64_t offset_min, const Words& words) {
  const model::When when = when_done(exam);
  if (when.at) {
    return report::local_time(*when.at, offset_min);
  }
  return when.day ? when.day->to_text() : words.say("msg.clinic.clock_doubtful");
}

std::string in_lines(const std::string& row, const std::string& number) {
  const std::string below = std::string(number.size(), ' ') + "- ";
  std::string text;
  for (std::size_t from = 0; from <= row.size();) {
    const std::size_t to = std::min(row.find('\n', from), row.size());
    text += report::wrapped(row.substr(from, to - from), from == 0 ? number : below);
    from = to + 1;
  }
  return text;
}

namespace {

// A member of what an entry wrote: its text, or as it stands there; nothing where it has none.
[[nodiscard]] std::optional<std::string> written_in(const QueueEntry& entry, std::string_view member) {
  if (!entry.value) {
    return std::nullopt;
  }
  const auto written = wire::parse(entry.value->json);
  const wire::Node* found = written ? written->child(written->root(), member) : nullptr;
  if (found == nullptr) {
    return std::nullopt;
  }
  return std::string(found->kind == wire::NodeKind::text ? found->text : found->raw);
}

[[nodiscard]] std::string persons_of(const ToldPair& pair, const Words& words) {
  std::vector<std::string> persons;
  for (const model::PersonId& one : pair.persons) {
    persons.push_back(one.to_text());
  }
  return words.say("msg.clinic.id_persons", {{"ids", report::joined(persons), false, true}});
}

// "gave the exam to Abena Nobody", without what is said of her: the name is whose id it is.
[[nodiscard]] std::string up_to_name(const QueueEntry& entry) {
  constexpr std::string_view name_ends = "\u2069";
  const std::string text = entry.text ? entry.text->text : std::string();
  const std::size_t end = text.find(name_ends);
  return end == std::string::npos ? text : text.substr(0, end + name_ends.size());
}

void add_ids(const QueueRow& row, const Words& words, std::vector<std::string>& parts) {
  for (const QueueEntry& one : row.entries) {
    if (const auto person = written_in(one, "person"); row.settle_by.text == "exam.move" && person) {
      parts.push_back(words.say("msg.clinic.id_value", {{"member", "person", false, true}, {"ids", *person, false, true}, {"what", up_to_name(one), false, true}}));
    }
  }
  if (row.about.text != "side_exchange_unseen" && row.about.text != "withdrawal") {
    return;
  }
  for (const QueueEntry& one : row.entries) {
    if (const auto finding = written_in(one, "finding")) {
      parts.push_back(words.say("msg.clinic.id_finding", {{"ids", *finding, false, true}}));
      return;
    }
  }
}

}  // namespace

// What conflict.put_off takes beside the ids that a line names already.
std::string ids_to_put_off(const QueueRow& row, const Words& words) {
  std::vector<std::string> parts{words.say("msg.clinic.id_about", {{"about", row.about.text, false, true}})};
  // Every other line of a pair names them before.
  if (row.about.text == "births_of_one") {
    parts.push_back(persons_of(*row.pair, words));
  }
  const std::vector<model::EntryId> entries = standing_on(row);
  parts.push_back(entries.empty() ? words.say("msg.clinic.id_entries_none") : words.say("msg.clinic.id_entries", {{"ids", ids(entries), false, true}}));
  if (row.pair && !row.pair->people.empty() && row.pair->people.front().revision) {
    parts.push_back(words.say("msg.clinic.id_seen", {{"ids", ids(*row.pair->people.front().revision), false, true}}));
  }
  return words.say("msg.clinic.queue_ids_put_off", {{"ids", report::joined(parts, "; "), false, true}});
}

std::string settled_in_words(const LineOf& line, const Words& words) {
  const QueueRow& row = line.row;
  std::string name = "msg.clinic.settle_" + row.about.text;
  if (!words.has(name)) {
    name = row.settle_by.text;
    std::replace(name.begin(), name.end(), '.', '_');
    name = "msg.clinic.settle_by_" + name;
  }
  // One that was unseen and is no finding has nothing that could be taken.
  if (row.about.text == "late" && !row.item) {
    name = "msg.clinic.settle_by_addendum_record";
  }
  const std::string side = row.side && *row.side != model::Side::midline ? report::side_of(words, *row.side) : std::string();
  std::string text = words.say(name, {{"side", side, false, true}, {"parts", report::joined(line.differing), false, true}});
  std::vector<std::string> parts;
  if (row.exam) {
    parts.push_back(words.say("msg.clinic.id_exam", {{"ids", row.exam->to_text(), false, true}}));
  }
  if (!row.exam && row.person && !row.person->persons.empty()) {
    parts.push_back(words.say("msg.clinic.id_person", {{"ids", row.person->persons.front().to_text(), false, true}}));
  }
  add_ids(row, words, parts);
  if (row.pair) {
    parts.push_back(persons_of(*row.pair, words));
  }
  for (const QueueEntry& one : row.settle_by.text == "conflict.settle" || row.about.text == "late" ? row.entries : std::vector<QueueEntry>{}) {
    if (written_in(one, "observation")) {
      // Without what is said of it in brackets.
      const std::string what = one.text ? one.text->text.substr(0, one.text->text.find(" (")) : std::string();
      parts.push_back(words.say("msg.clinic.id_value", {{"member", "take", false, true}, {"ids", one.entry.to_text(), false, true}, {"what", what, false, true}}));
    }
  }
  if (row.replaces) {
    parts.push_back(words.say("msg.clinic.id_replaces", {{"ids", ids(*row.replaces), false, true}}));
  }
  parts.push_back(row.revision.empty() ? words.say("msg.clinic.id_seen_none") : words.say("msg.clinic.id_seen", {{"ids", ids(row.revision), false, true}}));
  return text + "\n" + words.say("msg.clinic.queue_ids", {{"ids", report::joined(parts, "; "), false, true}}) + "\n" + ids_to_put_off(row, words);
}

std::string row_in_words(Context& context, const LineOf& line, const Words& words) {
  const QueueRow& row = line.row;
  std::string text = heading(line, words);
  if (line.exam != nullptr && (line.exam->examined_at || line.exam->examined_on)) {
    const std::string by = line.exam->examiner ? examiner_in_words(context, *line.exam->examiner) : words.say("msg.clinic.no_examiner");
    text += " " + words.say("msg.clinic.queue_examined", {{"at", when_in_words(*line.exam, line.offset_min, words), false, true}, {"by", by}});
  }
  for (const ListedAlert& one : row.alerts.value_or(std::vector<ListedAlert>{})) {
    const std::string side = one.side ? std::string(wire::type_of<model::Side>().words[static_cast<std::size_t>(*one.side)]) : std::string();
    const std::string id = one.alert.text + (side.empty() ? side : words.say("msg.clinic.id_alert_side", {{"side", side, false, true}}));
    text += "\n" + words.say("msg.clinic.queue_urgent", {{"alert", one.text ? unended(one.text->text) : one.alert.text, false, true},
                                                         {"id", id, false, true}});
  }
  for (const AnsweredAlert& one : row.answered.value_or(std::vector<AnsweredAlert>{})) {
    const std::string by = one.by_name ? one.by_name->text : words.say("msg.clinic.no_examiner");
    text += "\n" + words.say(one.action ? "msg.clinic.queue_acted_on" : "msg.clinic.queue_left_alone",
                             {{"alert", one.text ? unended(one.text->text) : one.alert.text, false, true}, {"by", by},
                              {"at", clock_in_words(one.at, line.offset_min, words), false, true}, {"what", unended((one.action ? one.action : one.reason).value_or(wire::Remark{}).text)}});
  }
  for (const QueueEntry& one : row.before.value_or(std::vector<QueueEntry>{})) {
    if (row.about.text != "exam") {
      text += "\n" + words.say("msg.clinic.queue_before", {{"entry", entry_line(one, "msg.clinic.queue_alone", line.offset_min, words), false, true}});
    }
  }
  const std::string& about = row.about.text;
  const bool of_two = about == "finding" || about == "impression" || about == "birth";
  if (!row.before && of_two) {
    text += "\n" + words.say("msg.clinic.queue_before_nothing");
  }
  for (const QueueEntry& one : row.entries) {
    text += "\n" + entry_line(one, seen_words(row, one), line.offset_min, words);
  }
  for (const QueueEntry& one : line.beside) {
    text += "\n" + entry_line(one, "msg.clinic.queue_alone", line.offset_min, words);
  }
  for (const std::string& one : line.more) {
    text += "\n" + one;
  }
  text += put_off_lines(row);
  return text + "\n" + settled_in_words(line, words);
}

std::string row_in_short(const LineOf& line, const Words& words) {
  const QueueRow& row = line.row;
  std::string text = words.say("msg.clinic.queue_" + row.about.text);
  for (const QueueEntry& one : row.entries) {
    text += " " + entry_line(one, seen_words(row, one), line.offset_min, words);
  }
  for (const QueueEntry& one : line.beside) {
    text += " " + entry_line(one, "msg.clinic.queue_alone", line.offset_min, words);
  }
  return words.say("msg.clinic.undecided", {{"what", text, false, true}});
}

}  // namespace limbledger::service
