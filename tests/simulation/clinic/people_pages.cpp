// What people do besides filling in a form of an exam: registering and correcting persons, deciding about pairs of records; and what a
// program of later years leaves behind.
#include "tests/simulation/clinic/people.hpp"

#include "core/wire/write.hpp"

namespace limbledger::ledger::clinic_sim {

// As a program of later years would: an operation that needs it, or one with a member that this edition can read past.
void People::write_newer(Seat& seat, bool is_readable) {
  Form& form = *seat.form;
  Log& log = *seat.device->log;
  if (form.is_signed || form.is_withdrawn || seat.device->has_ended()) {
    return;
  }
  Act act;
  act.request = new_request();
  act.object = model::as_object(form.exam);
  act.seen = form.seen;
  act.deed = is_readable ? Deed::record : Deed::newer;
  act.by_newer_program = true;
  const ActId id = doings_.size();
  const auto free = std::find_if(slots.begin(), slots.end(), [&form](const std::string& slot) {
    return std::none_of(form.shown.begin(), form.shown.end(), [&slot](const Shown& shown) { return shown.slot == slot; });
  });
  if (is_readable && free == slots.end()) {
    return;
  }
  act.parts.push_back(is_readable ? finding_part(act, id, 0, *free) : Part{words_of(id, 0), "", "", {}});
  model::Operation written;
  written.v.steps = 99;
  written.min.steps = is_readable ? 1 : 99;
  written.op.text = is_readable ? "finding" : "gait_film";
  written.request = act.request;
  written.part.steps = 1;
  written.of.steps = 1;
  written.object = act.object;
  written.after = form.revision;
  written.by = seat.device->examiner;
  written.edition = the_edition;
  written.body.json = is_readable ? '{' + finding_json(act.parts.front()) + R"(,"tremor":3})" : R"({"frames":240})";
  const std::string json = wire::write(written);
  const auto known = log.index().objects.find(act.object);
  const auto leaf = log.index().leaves.find(seat.device->replica());
  if (known == log.index().objects.end() || known->second.keys.empty() || leaf == log.index().leaves.end()) {
    return;
  }
  const ObjectKey& object_key = known->second.keys.back();
  Joint joint = leaf->second.front();
  Header header = sealed_header(Kind::op, HybridClock(release_ms, log.index().newest).next(seat.device->world.now()), object_key, json.size());
  header.flags = flag_last_of_commit;
  Row row;
  row.header = header.to_bytes();
  row.body = *seal(object_key, {the_clinic(), seat.device->replica(), joint.seq + 1}, row.header, as_bytes(json));
  link(seat.device->replica(), joint, row);
  const Head head = sign_head(*seat.device->key, the_clinic(), seat.device->replica(), joint.seq, joint.hash);
  (void)doings_.add(std::move(act));
  if (seat.device->disk->append({&row, 1}, {&head, 1}, {})) {
    seat.device->catch_up();
    acknowledge(seat, id);
  }
  seat.form.reset();
}

void People::write_other_kind(Seat& seat) {
  if (seat.device->has_ended() || seat.device->is_dark()) {
    return;
  }
  Member own = seat.device->member();
  const auto rows = append_plain(own, {{static_cast<Kind>(42), [](const Position&) { return Bytes(40, 7); }}});
  if (!rows) {
    return;
  }
  seat.device->catch_up();
  Act act;
  act.deed = Deed::other_kind;
  act.request = new_request();
  act.place = Place{rows->front().replica, rows->front().seq, rows->front().hash};
  acknowledge(seat, doings_.add(std::move(act)));
}

void People::fill_person_page(Seat& seat, bool is_new) {
  const auto listed = seat.device->records->persons();
  if (!listed) {
    return;
  }
  Act act;
  act.request = new_request();
  const ActId id = doings_.size();
  const std::string words = words_of(id, 0);
  act.parts.push_back({words, "", "", {}});
  NewOperation one;
  if (is_new || (*listed)->empty()) {
    act.deed = Deed::enrol;
    act.object = object_of(the_clinic(), ObjectType::person, act.request, 0);
    act.home = words;
    act.birth = std::to_string(1930 + id % 80);
    one = operation(seat, act, "person", R"({"names":[{"text":")" + words + R"("}],"birth":{"date":")" + *act.birth + R"("},"home":")" + words + R"("})");
  } else {
    auto picked = (*listed)->begin();
    std::advance(picked, static_cast<std::ptrdiff_t>(dice_.roll((*listed)->size())));
    const auto record = seat.device->records->person(picked->first);
    if (!record) {
      return;
    }
    const PersonFold& fold = (*record)->fold;
    act.object = model::as_object(picked->first);
    act.seen = acts_in((*record)->operations);
    if (!fold.conflicts.empty() && dice_.one_in(2)) {
      act.deed = Deed::put_off;
      one = operation(seat, act, "put_off", R"({"about":)" + wire::write(fold.conflicts.front().about) + R"(,"entries":)" + wire::write(fold.value_heads) + R"(,"asked":")" + words + R"(","look_again":"2026-12-01"})");
    } else {
      act.deed = Deed::amend;
      if (dice_.one_in(3)) {
        act.birth = std::to_string(1930 + id % 80);
      } else {
        act.home = words;
      }
      one = operation(seat, act, "person_change", act.birth ? R"({"birth":{"date":")" + *act.birth + R"("}})" : R"({"home":")" + words + R"("})");
      one.replaces = fold.value_heads;
      for (const ActId seen : act.seen) {
        act.parts.front().replaces.insert(words_of(seen, 0));
      }
    }
    one.after = *fold.person.revision;
  }
  one.type = ObjectType::person;
  (void)doings_.add(std::move(act));
  seat.page = Sent{id, {std::move(one)}};
}

void People::fill_pair_page(Seat& seat) {
  const auto listed = seat.device->records->persons();
  const auto links = seat.device->records->links();
  const auto operations = seat.device->records->clinic_operations();
  if (!listed || !links || !operations || (*listed)->size() < 2) {
    return;
  }
  std::vector<model::PersonId> persons;
  for (const auto& [person, row] : **listed) {
    persons.push_back(person);
  }
  const std::size_t first = dice_.roll(persons.size() - 1);
  Act act;
  act.deed = Deed::decide;
  act.request = new_request();
  act.object = seat.device->log->clinic_object();
  act.pair = {persons[first], persons[first + 1]};
  act.same = static_cast<model::SamePerson>(dice_.roll(3));
  act.seen = acts_in(*operations);
  const ActId id = doings_.size();
  act.parts.push_back({words_of(id, 0), "", "", {}});
  NewOperation one = operation(seat, act, "link",
                               R"({"link":")" + object_of(the_clinic(), ObjectType::link, act.request, 0).to_text() + R"(","persons":[)" +
                                   quoted(act.pair.first.to_text()) + ',' + quoted(act.pair.second.to_text()) + R"(],"same":)" + wire::write(act.same) +
                                   R"(,"reason":"asked_person"})");
  one.type = ObjectType::clinic;
  one.sign = true;
  one.after = Graph(*operations).heads();
  if (const auto pair = (*links)->pairs.find(act.pair); pair != (*links)->pairs.end()) {
    for (const Decided& head : pair->second.heads) {
      one.replaces.push_back(head.entry);
      const auto opened = std::find_if(operations->begin(), operations->end(), [&](const Opened& other) { return other.entry() == head.entry; });
      act.parts.front().replaces.insert(words_of(*doings_.find(opened->operation().request), 0));
    }
  }
  (void)doings_.add(std::move(act));
  seat.page = Sent{id, {std::move(one)}};
}

void People::report(Seat& seat) {
  const auto listed = seat.device->records->reports();
  if (!listed) {
    return;
  }
  Act act;
  act.deed = Deed::report;
  act.request = new_request();
  act.object = object_of(the_clinic(), ObjectType::report, act.request, 0);
  const ActId id = doings_.size();
  model::ReportBody said;
  said.from = model::PartialDate{2026, 11, 0};
  said.to = said.from;
  said.report.steps = 1;
  said.as_of = model::PartialDate{2026, 12, 1};
  for (const ListedReport& one : *listed) {
    const Acts there = acts_in(*seat.device->log->operations(one.object));
    act.seen.insert(there.begin(), there.end());
    said.after.push_back(one.row.entry);
    said.report.steps = std::max(said.report.steps, one.row.report.steps + 1);
  }
  // All that was shown is named; there is room for so many.
  if (said.after.size() > 60) {
    return;
  }
  act.parts.push_back({words_of(id, 0), "", "", {}});
  act.parts.push_back({words_of(id, 1), "", "", {}});
  Sent sent{id, {}};
  said.counts.push_back({{"exams"}, model::Word{words_of(id, 0)}, {static_cast<std::int64_t>(id)}});
  sent.operations.push_back(operation(seat, act, "report", wire::write(said)));
  model::ReportBody more{said.from, said.to, std::nullopt, said.report, said.as_of, {}, {}, {}, {}};
  more.exams.push_back({{{0}}, {model::ExamId{act.object.bytes}}});
  sent.operations.push_back(operation(seat, act, "report", wire::write(more)));
  for (NewOperation& one : sent.operations) {
    one.type = ObjectType::report;
  }
  (void)doings_.add(std::move(act));
  (void)send(seat, std::move(sent), false);
}

}  // namespace limbledger::ledger::clinic_sim
