#include "tests/simulation/clinic/people.hpp"

#include "core/wire/write.hpp"

namespace limbledger::ledger::clinic_sim {

namespace {

const model::EditionId the_edition{"facts.test"};

std::string words_of(ActId act, std::size_t part) { return "a" + std::to_string(act) + "." + std::to_string(part); }

std::string slot_of(const model::ItemId& item, model::Side side) { return wire::write(item) + wire::write(side); }

// Four slots, so that people meet.
const std::array<std::string, 4> slots{R"("knee.flexion_passive""left")", R"("knee.flexion_passive""right")", R"("knee.extension_passive""left")",
                                       R"("knee.extension_passive""right")"};

std::string quoted(const std::string& text) { return '"' + text + '"'; }

}  // namespace

model::RequestId People::new_request() {
  model::RequestId out;
  put_integer(out.bytes.data(), ++requests_, 8);
  put_integer(out.bytes.data() + 8, dice_.next(), 8);
  return out;
}

Acts People::acts_in(std::span<const Opened> operations) const {
  Acts out;
  for (const Opened& one : operations) {
    if (const auto act = doings_.find(one.operation().request)) {
      out.insert(*act);
    }
  }
  return out;
}

NewOperation People::operation(const Seat& seat, const Act& act, std::string op, std::string body_json) const {
  NewOperation out;
  out.object = act.object;
  out.op = std::move(op);
  out.request = act.request;
  out.by = seat.device->examiner;
  out.body_json = std::move(body_json);
  return out;
}

Part People::finding_part(const Act& act, ActId id, std::size_t number, const std::string& slot) {
  Part out;
  out.words = words_of(id, number);
  out.slot = slot;
  out.finding = object_of(the_clinic(), ObjectType::finding, act.request, static_cast<std::uint16_t>(number)).to_text();
  return out;
}

std::string People::finding_json(const Part& part) {
  const std::size_t cut = part.slot.find("\"\"") + 1;
  const std::string deg = std::to_string(dice_.roll(100));
  return R"("finding":")" + part.finding + R"(","observation":{"item":)" + part.slot.substr(0, cut) + R"(,"side":)" + part.slot.substr(cut) +
         R"(,"value":{"kind":"angle","deg":)" + deg + R"(,"toward":"flexion","toward_deg":)" + deg + R"(},"remark":")" + part.words + R"("})";
}

void People::open_exam(Seat& seat) {
  Act act;
  act.deed = Deed::open;
  act.request = new_request();
  act.object = object_of(the_clinic(), ObjectType::exam, act.request, 0);
  const ActId id = doings_.size();
  Sent sent{id, {}};
  sent.operations.push_back(operation(seat, act, "exam", R"({"complaint":"free","setting":"outreach"})"));
  act.parts.push_back({words_of(id, 0), "", "", {}});
  const std::size_t findings = 1 + dice_.roll(2);
  for (std::size_t i = 1; i <= findings; ++i) {
    act.parts.push_back(finding_part(act, id, i, slots[i - 1]));
    sent.operations.push_back(operation(seat, act, "finding", '{' + finding_json(act.parts.back()) + '}'));
  }
  (void)doings_.add(std::move(act));
  (void)send(seat, std::move(sent), false);
}

bool People::open_form(Seat& seat) {
  std::vector<model::ExamId> exams;
  const auto listed = seat.device->records->exams();
  if (!listed) {
    return false;
  }
  for (const auto& [exam, row] : **listed) {
    exams.push_back(exam);
  }
  if (exams.empty()) {
    return false;
  }
  Form form;
  form.exam = exams[dice_.roll(exams.size())];
  const Page page = seat.device->page(form.exam);
  if (!page.exam) {
    return false;
  }
  const model::Exam& exam = page.exam->exam;
  form.seen = acts_in(page.operations);
  form.revision = *exam.revision;
  form.is_signed = exam.state == model::ExamState::signed_;
  form.is_withdrawn = exam.state == model::ExamState::withdrawn;
  form.may_sign = page.exam->unread == 0 && !exam.incomplete;
  for (const model::Finding& finding : *exam.findings) {
    const auto has = [&finding](std::string_view word) {
      return finding.marks && std::any_of(finding.marks->begin(), finding.marks->end(), [&](const model::Word& one) { return one.text == word; });
    };
    form.shown.push_back({finding.remark->text, *finding.entry, *finding.finding, slot_of(finding.item, finding.side),
                          finding.standing == model::Standing::in_conflict, has("newer_parts")});
  }
  for (const model::EntryId& head : page.exam->impression_heads) {
    form.impressions.push_back(head);
    const auto opened = std::find_if(page.operations.begin(), page.operations.end(), [&](const Opened& one) { return one.entry() == head; });
    form.impression_words.insert(words_of(*doings_.find(opened->operation().request), 0));
  }
  seat.form = std::move(form);
  return true;
}

void People::write_in_form(Seat& seat) {
  Form& form = *seat.form;
  Act act;
  act.request = new_request();
  act.object = model::as_object(form.exam);
  act.seen = form.seen;
  const ActId id = doings_.size();
  const std::string words = words_of(id, 0);
  std::vector<Shown> left = form.shown;  // what the person has before them afterwards
  NewOperation one = operation(seat, act, "", "");
  one.after = form.revision;
  const auto replace = [&](const Shown& old) {
    act.parts.front().replaces.insert(old.words);
    one.replaces.push_back(old.entry);
    std::erase_if(left, [&old](const Shown& other) { return other.entry == old.entry; });
  };
  const auto conflicting = std::find_if(form.shown.begin(), form.shown.end(), [](const Shown& shown) { return shown.in_conflict; });
  const std::uint64_t wish = dice_.roll(20);
  if (conflicting != form.shown.end() && wish < 5) {
    act.deed = Deed::settle;
    act.parts.push_back(finding_part(act, id, 0, conflicting->slot));
    for (const Shown& old : form.shown) {
      if (old.slot == conflicting->slot) {
        replace(old);
      }
    }
    one.op = "settle";
    one.body_json = '{' + finding_json(act.parts.front()) + R"(,"reason":"measured again"})";
    one.sign = true;
  } else if (form.is_signed) {
    act.deed = Deed::add;
    act.parts.push_back({words, "", "", {}});
    one.op = "addendum";
    one.body_json = R"({"kind":"text","reason":"more","text":")" + words + R"("})";
    one.sign = true;
  } else if (form.is_withdrawn) {
    seat.form.reset();
    return;
  } else if (wish < 7 && form.may_sign) {
    act.deed = Deed::sign;
    act.parts.push_back({words, "", "", {}});
    one.op = "sign";
    one.body_json = R"({"read_aloud":")" + words + R"("})";
    one.sign = true;
    form.is_signed = true;
  } else if (wish == 8 && dice_.one_in(3)) {
    act.deed = Deed::withdraw;
    act.parts.push_back({words, "", "", {}});
    one.op = "withdraw";
    one.body_json = R"({"reason":")" + words + R"("})";
    form.is_withdrawn = true;
  } else if (wish < 10) {
    act.deed = Deed::impress;
    act.parts.push_back({words, "", "", form.impression_words});
    one.op = "impression";
    one.body_json = R"({"impression":{"text":")" + words + R"("}})";
    one.replaces = form.impressions;
  } else {
    const std::string& slot = slots[dice_.roll(slots.size())];
    const auto shown = std::find_if(form.shown.begin(), form.shown.end(), [&slot](const Shown& old) { return old.slot == slot; });
    act.parts.push_back(finding_part(act, id, 0, slot));
    one.op = "finding";
    if (shown == form.shown.end()) {
      act.deed = Deed::record;
    } else if (shown->by_newer_program) {
      return;  // it may not be replaced by a program that does not know all of it
    } else {
      const bool takes_back = dice_.one_in(6);
      act.deed = takes_back ? Deed::take_back : Deed::correct;
      act.parts.front().finding = shown->finding.to_text();
      const Shown old = *shown;
      for (const Shown& same : form.shown) {
        if (same.finding == old.finding) {
          replace(same);
        }
      }
      if (takes_back) {
        one.op = "withdraw";
        one.body_json = R"({"finding":)" + quoted(act.parts.front().finding) + R"(,"reason":")" + words + R"("})";
      }
    }
    if (one.op == "finding") {
      one.body_json = '{' + finding_json(act.parts.front()) + '}';
    }
  }
  const Part part = act.parts.front();
  const Deed deed = act.deed;
  (void)doings_.add(std::move(act));
  if (!send(seat, {id, {one}}, false)) {
    seat.form.reset();
    return;
  }
  // The answer names the own entry alone, and the person goes on from what they had before them.
  const model::EntryId own = entry_id(seat.device->promised.own.at(id).hash);
  form.revision = {own};
  form.seen.insert(id);
  form.shown = std::move(left);
  if (!part.slot.empty() && deed != Deed::take_back) {
    model::FindingId finding;
    (void)model::FindingId::from_text(part.finding, finding);
    form.shown.push_back({part.words, own, finding, part.slot, false, false});
  } else if (deed == Deed::impress) {
    form.impressions = {own};
    form.impression_words = {part.words};
  }
}

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
    act.deed = Deed::amend;
    act.object = model::as_object(picked->first);
    act.seen = acts_in((*record)->operations);
    if (dice_.one_in(3)) {
      act.birth = std::to_string(1930 + id % 80);
    } else {
      act.home = words;
    }
    one = operation(seat, act, "person_change", act.birth ? R"({"birth":{"date":")" + *act.birth + R"("}})" : R"({"home":")" + words + R"("})");
    one.after = *(*record)->fold.person.revision;
    one.replaces = (*record)->fold.value_heads;
    for (const ActId seen : act.seen) {
      act.parts.front().replaces.insert(words_of(seen, 0));
    }
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

void People::begin_day(Seat& seat) {
  for (int i = 0; i < 2; ++i) {
    open_exam(seat);
    fill_person_page(seat, true);
    (void)send(seat, std::move(*seat.page), false);
    seat.page.reset();
  }
}

void People::work(Seat& seat) {
  if (seat.device->is_dark() || seat.device->has_ended()) {
    return;
  }
  const std::uint64_t wish = dice_.roll(24);
  const auto exams = seat.device->records->exams();
  if (!exams) {
    return;
  }
  // Few exams, so that people meet in them.
  if ((*exams)->size() < 2 ? wish < 8 : wish == 0) {
    open_exam(seat);
  } else if (wish < 6) {
    if (seat.page && dice_.one_in(2)) {
      Sent sent = std::move(*seat.page);
      seat.page.reset();
      (void)send(seat, std::move(sent), false);
    } else if (dice_.one_in(2)) {
      fill_person_page(seat, dice_.one_in(8));
    } else {
      fill_pair_page(seat);
    }
  } else if ((seat.form && !dice_.one_in(4)) || open_form(seat)) {
    if (wish == 6) {
      write_newer(seat, dice_.one_in(2));
    } else if (wish < 20) {
      write_in_form(seat);
    }
    // Else it lies open, and something may come in behind it.
  }
}

void People::overtake(Seat& seat, NewOperation& operation) {
  const Page page = seat.device->page(model::ExamId{operation.object.bytes});
  if (!page.exam || operation.op == "exam") {
    return;
  }
  operation.after = *page.exam->exam.revision;
  for (const model::EntryId& old : std::vector<model::EntryId>(operation.replaces)) {
    const auto was = std::find_if(page.exam->history.begin(), page.exam->history.end(), [&old](const model::Finding& one) { return one.entry == old; });
    const auto heads = was == page.exam->history.end() ? page.exam->finding_heads.end() : page.exam->finding_heads.find(*was->finding);
    if (heads != page.exam->finding_heads.end()) {
      operation.replaces = heads->second;
    }
  }
}

void People::acknowledge(Seat& seat, ActId act) {
  Device& device = *seat.device;
  const Joint& end = device.log->index().leaves.at(device.replica()).front();
  device.promised.acts.insert(act);
  device.promised.own[act] = Place{device.replica(), end.seq, end.hash};
  ++acknowledged_;
}

bool People::send(Seat& seat, Sent sent, bool again) {
  Device& device = *seat.device;
  if (device.is_dark() || device.has_ended()) {
    return false;
  }
  if (again) {
    ++repeats_;
    if (planted_ == Planted::retry_is_new) {
      const model::RequestId request = new_request();
      doings_.also(request, sent.act);
      for (NewOperation& one : sent.operations) {
        one.request = request;
      }
    } else if (device.log->index().requests.contains(sent.operations.front().request)) {
      device.promised.acts.insert(sent.act);
      return true;
    }
  }
  // A form that names what this device does not hold (any more) is opened anew.
  const auto held = device.log->operations(sent.operations.front().object);
  for (const model::EntryId& entry : sent.operations.front().after) {
    if (!held || std::none_of(held->begin(), held->end(), [&entry](const Opened& one) { return one.entry() == entry; })) {
      return false;
    }
  }
  if (!sent.operations.front().after.empty() && Graph(*held).heads() != sent.operations.front().after) {
    ++overtaken_;
  }
  if (planted_ == Planted::form_overtaken) {
    for (NewOperation& one : sent.operations) {
      overtake(seat, one);
    }
  }
  device.world.pass(static_cast<std::int64_t>(1000 + dice_.roll(60000)));
  const auto written = device.log->append(sent.operations, the_edition, &device.examiner_key);
  if (!written) {
    const std::string code = written.error().faults.front().code;
    if (device.is_dark()) {
      seat.unanswered.push_back(std::move(sent));
    } else if (code != "replica.forked" && code != "revision.unknown") {
      throw Complaint{"refused", "a write on device " + std::to_string(device.number) + ": " + code};
    }
    return false;
  }
  device.records->changed(*written);
  seat.recent.push_back(sent);
  if (seat.recent.size() > 4) {
    seat.recent.erase(seat.recent.begin());
  }
  if (dice_.one_in(14)) {
    // The answer is lost on its way to the screen.
    seat.unanswered.push_back(std::move(sent));
    return false;
  }
  acknowledge(seat, sent.act);
  return true;
}

void People::send_again(Seat& seat) {
  const std::vector<Sent> waiting = std::move(seat.unanswered);
  seat.unanswered.clear();
  for (const Sent& one : waiting) {
    (void)send(seat, one, true);
  }
}

void People::repeat_recent(Seat& seat) {
  const std::vector<Sent> recent = seat.recent;
  for (const Sent& one : recent) {
    (void)send(seat, one, true);
  }
}

}  // namespace limbledger::ledger::clinic_sim
