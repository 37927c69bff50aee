#include "tests/simulation/clinic/people.hpp"

#include "core/wire/read.hpp"
#include "core/wire/write.hpp"

namespace limbledger::ledger::clinic_sim {

namespace {

std::string slot_of(const model::ItemId& item, model::Side side) { return wire::write(item) + wire::write(side); }

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

// What is on the screen with all that its writer had seen: of the rest the page says that it waits for what has not come.
Acts People::whole_acts_in(std::span<const Opened> operations) const {
  const Acts there = acts_in(operations);
  Acts out;
  std::copy_if(there.begin(), there.end(), std::inserter(out, out.end()), [&](ActId act) {
    return std::includes(there.begin(), there.end(), doings_.at(act).seen.begin(), doings_.at(act).seen.end());
  });
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
  form.seen = whole_acts_in(page.operations);
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
  } else if (conflicting != form.shown.end() && wish < 8) {
    act.deed = Deed::put_off;
    act.parts.push_back({words, "", "", {}});
    std::vector<model::EntryId> standing;
    for (const Shown& old : form.shown) {
      if (old.slot == conflicting->slot) {
        standing.push_back(old.entry);
      }
    }
    one.op = "put_off";
    one.body_json = R"({"about":"finding","entries":)" + wire::write(standing) + R"(,"asked":")" + words + R"(","look_again":"2026-12-01"})";
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
    } else if (wish == 23) {
      report(seat);
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
  // What settles between two findings names the heads of both, or it would say nothing of its own any more.
  std::vector<model::EntryId> replaces;
  const auto name = [&replaces](const model::EntryId& entry) {
    if (std::find(replaces.begin(), replaces.end(), entry) == replaces.end()) {
      replaces.push_back(entry);
    }
  };
  for (const model::EntryId& old : operation.replaces) {
    const auto was = std::find_if(page.exam->history.begin(), page.exam->history.end(), [&old](const model::Finding& one) { return one.entry == old; });
    const auto heads = was == page.exam->history.end() ? page.exam->finding_heads.end() : page.exam->finding_heads.find(*was->finding);
    if (heads == page.exam->finding_heads.end()) {
      name(old);
      continue;
    }
    for (const model::EntryId& head : heads->second) {
      name(head);
    }
  }
  operation.replaces = std::move(replaces);
}

void People::acknowledge(Seat& seat, ActId act) {
  Device& device = *seat.device;
  const Joint& end = device.log->index().leaves.at(device.replica()).front();
  device.promised.acts.insert(act);
  device.promised.own[act] = Place{device.replica(), end.seq, end.hash};
  ++acknowledged_;
}

bool People::holds_reports(Device& device, const NewOperation& report) {
  const auto said = wire::read_text<model::ReportBody>(report.body_json);
  const auto listed = device.records->reports();
  return listed && std::all_of(said->after.begin(), said->after.end(), [&](const model::EntryId& entry) {
    return std::any_of(listed->begin(), listed->end(), [&](const ListedReport& one) {
      const auto folds = device.records->report(one.object);
      return std::any_of(folds->begin(), folds->end(), [&](const ReportFold& fold) { return fold.is_among({&entry, 1}); });
    });
  });
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
  if (sent.operations.front().op == "report" && !holds_reports(device, sent.operations.front())) {
    return false;
  }
  if (!sent.operations.front().after.empty() && Graph(*held).heads() != sent.operations.front().after) {
    ++overtaken_;
  }
  if (planted_ == Planted::form_overtaken) {
    for (NewOperation& one : sent.operations) {
      overtake(seat, one);
    }
  }
  if (!held) {
    return false;
  }
  // As the program's own methods do.
  for (NewOperation& one : sent.operations) {
    one.after = one.type == ObjectType::exam ? Graph(*held).whole(one.after) : one.after;
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
