#include "core/service/methods/clinic/loops.hpp"

#include "core/interpret/after/open_loops.hpp"
#include "core/report/page_judged.hpp"
#include "core/report/text.hpp"
#include "core/service/methods/clinic/queue_rows.hpp"
#include "core/service/methods/say/texts.hpp"

#include <algorithm>
#include <map>

namespace limbledger::service {

namespace {

[[nodiscard]] LoopWord loop_word(interpret::LoopKind kind) {
  switch (kind) {
    case interpret::LoopKind::alert_without_action:
      return LoopWord::alert_without_action;
    case interpret::LoopKind::call_back:
      return LoopWord::call_back;
    case interpret::LoopKind::urgent_without_outcome:
      return LoopWord::urgent_without_outcome;
    case interpret::LoopKind::planned_after_signature:
      return LoopWord::planned_after_signature;
    case interpret::LoopKind::referral_past_day:
      return LoopWord::referral_past_day;
    case interpret::LoopKind::review_overdue:
      return LoopWord::review_overdue;
    case interpret::LoopKind::third_visit_without_impression:
      return LoopWord::third_visit_without_impression;
  }
  return LoopWord::alert_without_action;
}

// Now before the same day, then in the order of the words.
[[nodiscard]] int weight_of_loop(const ListedLoop& loop) {
  const int urgent = loop.urgency == interpret::Urgency::now ? 0 : 100;
  return (loop.urgency ? urgent : 200) + static_cast<int>(loop.loop);
}

[[nodiscard]] std::string loop_text(const ListedLoop& loop, const std::string& alert, const report::Words& words) {
  const std::string name = "msg.clinic.loop_" + std::string(wire::type_of<LoopWord>().words[static_cast<std::size_t>(loop.loop)]) + (loop.reason ? "_reason" : "");
  const std::string side = loop.side && *loop.side != model::Side::midline ? ", " + report::side_of(words, *loop.side) : std::string();
  return words.say(name, {{"alert", alert, false, true},
                          {"on", loop.examined_on ? loop.examined_on->to_text() : words.say("msg.clinic.day_unknown"), false, true},
                          {"plan", loop.plan ? loop.plan->text : std::string()},
                          {"action", loop.action ? loop.action->text : std::string()},
                          {"reason", loop.reason ? loop.reason->text : std::string()},
                          {"side", side, false, true},
                          {"by", loop.by ? loop.by->to_text() : words.say("msg.clinic.day_unknown"), false, true}});
}

// By somebody whom its withdrawal had not reached; an addendum on that does not examine the person.
[[nodiscard]] bool was_written_into(Context& context, const model::ExamId& exam) {
  const auto record = context.desk->records().exam(exam);
  const std::vector<model::EntryMark> marks = record ? (*record)->fold.exam.marks.value_or(std::vector<model::EntryMark>{}) : std::vector<model::EntryMark>{};
  return std::any_of(marks.begin(), marks.end(), [](const model::EntryMark& one) { return one.mark.text == "withdrawal_unseen"; });
}

// Opened, and nobody has found, concluded or signed anything in it.
[[nodiscard]] bool is_blank(const ledger::ListedExam& row, const model::Exam& exam) {
  return row.state == model::ExamState::open && row.findings.steps == 0 && !exam.impression;
}

// Of all lines of an exam that disagree; how many of them nobody was asked about stays in the queue.
[[nodiscard]] Result<std::vector<ToldPutOff>> put_off_of(Context& context, const ledger::ListedExam& listed, const model::PartialDate& as_of, const report::Words* words) {
  std::vector<Queued> queue;
  if (auto added = add_exam(context, listed, nullptr, Told::whole, queue); !added) {
    return added.error();
  }
  std::vector<ToldPutOff> out;
  for (const Queued& one : queue) {
    if (one.row.item && is_protected(context, *one.row.item)) {
      continue;  // whom an examiner asked about it stands in the queue alone
    }
    for (const ToldPutOff& here : one.row.put_off.value_or(std::vector<ToldPutOff>{})) {
      // Who put it off again said whom to ask now; and what was one line may be two since.
      const bool is_told = std::any_of(out.begin(), out.end(), [&](const ToldPutOff& other) { return other.entry == here.entry; });
      if (!is_told && !here.again.value_or(false)) {
        out.push_back(here);
      }
    }
  }
  look_on(as_of, listed.offset_min, words, out);
  return out;
}

// Visits of one person, oldest first.
using VisitRows = std::vector<ledger::ListedExam>;

[[nodiscard]] Result<OpenPerson> loops_of(Context& context, const VisitRows& rows, const model::PartialDate& as_of, const report::Words* words) {
  OpenPerson out;
  auto person = listed_person(context, rows.front().persons);
  if (!person) {
    return person.error();
  }
  out.person = std::move(*person);
  std::vector<JudgedVisit> judged;
  for (const ledger::ListedExam& row : rows) {
    auto one = judge_visit(context, row.exam);
    if (!one) {
      return one.error();
    }
    judged.push_back(std::move(*one));
  }
  std::vector<interpret::Visit> visits;
  for (std::size_t i = 0; i < rows.size(); ++i) {
    visits.push_back({&judged[i].exam, judged[i].alerts, is_blank(rows[i], judged[i].exam)});
  }
  const auto row_of = [&](const std::optional<model::ExamId>& exam) {
    return static_cast<std::size_t>(std::find_if(rows.begin(), rows.end(), [&](const ledger::ListedExam& row) { return row.exam == exam; }) - rows.begin());
  };
  const auto add = [&](ListedLoop loop, const std::string& alert) {
    loop.examined_on = when_done(rows[row_of(loop.exam)]).day;
    if (words != nullptr) {
      loop.text = wire::LongText{loop_text(loop, alert, *words)};
    }
    out.loops.push_back(std::move(loop));
  };
  for (const interpret::OpenLoop& open : interpret::open_loops(visits, as_of)) {
    ListedLoop loop;
    loop.loop = loop_word(open.loop);
    loop.exam = *open.exam;
    loop.alert = open.alert;
    loop.side = open.side;
    loop.plan_item = open.plan_item;
    loop.by = open.by;
    const JudgedVisit& visit = judged[row_of(open.exam)];
    std::string alert;
    if (open.loop == interpret::LoopKind::urgent_without_outcome) {
      const auto at = std::find_if(visit.alerts.begin(), visit.alerts.end(), [&](const interpret::Alert& one) { return open.alert == one.alert && open.side == one.side; });
      loop.urgency = at->urgency;
      loop.action = at->handled->action;
      loop.reason = at->handled->action ? std::nullopt : at->handled->reason;
      alert = words != nullptr ? report::alert_text(*at, *words) : std::string();
    }
    for (const ListedAlert& one : alerts_without_action(visit, words)) {
      if (open.alert == one.alert && open.side == one.side) {
        loop.urgency = one.urgency;
        alert = one.text ? one.text->text : std::string();
      }
    }
    for (const model::PlanItem& item : visit.exam.plan.value_or(std::vector<model::PlanItem>{})) {
      if (open.plan_item && item.plan_item == open.plan_item) {
        loop.plan = item.text;
      }
    }
    add(std::move(loop), alert);
  }
  bool alone = true;
  for (std::size_t i = 0; i < rows.size(); ++i) {
    alone = alone && (rows[i].state == model::ExamState::withdrawn || is_blank(rows[i], judged[i].exam));
  }
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const ledger::ListedExam& row = rows[i];
    const auto day = when_done(row).day;
    ListedLoop loop;
    loop.exam = row.exam;
    const bool withdrawn = row.state == model::ExamState::withdrawn;
    if ((!withdrawn && row.in_conflict.value_or(false) && !judged[i].told_apart) || row.unseen.value_or(false)) {
      loop.loop = LoopWord::in_conflict;
      auto put_off = put_off_of(context, row, as_of, words);
      if (!put_off) {
        return put_off.error();
      }
      ListedLoop waiting = loop;
      if (!put_off->empty()) {
        waiting.put_off = std::move(*put_off);
      }
      add(std::move(waiting), {});
    }
    if (withdrawn && alone && was_written_into(context, row.exam)) {
      loop.loop = LoopWord::withdrawn_alone;
      add(loop, {});
    }
    if (row.state == model::ExamState::open && (!day || day->last_day() < as_of.first_day())) {
      loop.loop = LoopWord::unsigned_exam;
      add(loop, {});
    }
  }
  std::stable_sort(out.loops.begin(), out.loops.end(), [](const ListedLoop& a, const ListedLoop& b) { return weight_of_loop(a) < weight_of_loop(b); });
  return out;
}

// Of a person's exams those with a protected note of which nothing is recorded, oldest first: neither what it says nor how urgent it is.
[[nodiscard]] Result<OpenPerson> protected_notes_of(Context& context, const VisitRows& rows, const report::Words* words) {
  OpenPerson out;
  for (const ledger::ListedExam& row : rows) {
    if (row.state == model::ExamState::withdrawn) {
      continue;
    }
    const auto unanswered = has_protected_unanswered(context, row.exam);
    if (!unanswered) {
      return unanswered.error();
    }
    if (*unanswered) {
      ListedLoop loop;
      loop.loop = LoopWord::protected_note;
      loop.exam = row.exam;
      loop.examined_on = when_done(row).day;
      if (words != nullptr) {
        loop.text = wire::LongText{loop_text(loop, {}, *words)};
      }
      out.loops.push_back(std::move(loop));
    }
  }
  auto person = listed_person(context, rows.front().persons);
  if (!person) {
    return person.error();
  }
  out.person = std::move(*person);
  return out;
}

[[nodiscard]] std::string loop_page(const LoopListResult& list, const report::Words& words, const std::string& banner) {
  std::string text = banner.empty() ? "" : report::wrapped(banner);
  text += report::wrapped(words.say("msg.clinic.loops_title", {{"day", list.as_of.to_text(), false, true}}));
  text += report::wrapped(words.say("msg.clinic.loops_count", {{"people", std::to_string(list.people.size()), true}}));
  for (const OpenPerson& one : list.people) {
    text += report::wrapped(person_in_words(one.person, words), "- ");
    for (const ListedLoop& loop : one.loops) {
      text += report::wrapped(loop.text->text, "    ");
      // Of several lines of the exam that were put off in the same words these stand once.
      std::vector<std::string> told;
      for (const ToldPutOff& put_off : loop.put_off.value_or(std::vector<ToldPutOff>{})) {
        if (std::find(told.begin(), told.end(), put_off.text->text) == told.end()) {
          told.push_back(put_off.text->text);
          text += report::wrapped(told.back(), "      ");
        }
      }
    }
  }
  return text + "\n" + report::wrapped(words.say("msg.clinic.loops_end"));
}

}  // namespace

Result<LoopListResult> loop_list(Context& context, const LoopListParams& params) {
  const bool of_protected = params.protected_.value_or(false);
  if (of_protected && !sees_protected(context)) {
    return wire::Fault{"token.scope", "/protected", "a token of the scope examiner"};
  }
  const auto words = words_in(params.language);
  const auto listed = context.desk->records().exams();
  const auto links = context.desk->records().links();
  if (!words || !listed || !links) {
    return !words ? words.error() : (!listed ? listed.error() : links.error());
  }
  // By who is one; an exam of nobody, or of two by unseen moves, stands by itself.
  std::map<std::string, VisitRows> of_person;
  for (const auto& [id, row] : **listed) {
    const std::string who = row.persons.size() == 1 ? (*links)->group_of(row.persons.front()).begin()->to_text() : id.to_text();
    of_person[who].push_back(row);
  }
  LoopListResult result;
  result.as_of = params.as_of ? *params.as_of : today_at_hand(context);
  for (auto& of_one : of_person) {
    VisitRows& rows = of_one.second;
    const auto is_here = [&](const ledger::ListedExam& row) { return !params.place || row.place == params.place; };
    if (std::none_of(rows.begin(), rows.end(), is_here)) {
      continue;
    }
    std::stable_sort(rows.begin(), rows.end(), [](const ledger::ListedExam& a, const ledger::ListedExam& b) { return when_done(a).in_order_ms < when_done(b).in_order_ms; });
    auto open = of_protected ? protected_notes_of(context, rows, *words) : loops_of(context, rows, result.as_of, *words);
    if (!open) {
      return open.error();
    }
    // Judged with the visits elsewhere, where an answer may stand; told are those of here.
    std::erase_if(open->loops, [&](const ListedLoop& loop) {
      return std::none_of(rows.begin(), rows.end(), [&](const ledger::ListedExam& row) { return row.exam == loop.exam && is_here(row); });
    });
    if (!open->loops.empty()) {
      result.people.push_back(std::move(*open));
    }
  }
  std::stable_sort(result.people.begin(), result.people.end(),
                   [](const OpenPerson& a, const OpenPerson& b) { return weight_of_loop(a.loops.front()) < weight_of_loop(b.loops.front()); });
  if (*words != nullptr && !of_protected) {
    result.text = wire::LongText{loop_page(result, **words, banner_of(context.desk->kind(), **words))};
  }
  return result;
}

}  // namespace limbledger::service
