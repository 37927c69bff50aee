#include "core/service/methods/clinic/listed.hpp"

#include "core/report/page_judged.hpp"
#include "core/report/text.hpp"
#include "core/service/methods/exam/watch.hpp"
#include "core/service/methods/people/dates.hpp"

#include <algorithm>
#include <set>

namespace limbledger::service {

Result<JudgedVisit> judge_visit(Context& context, const model::ExamId& exam) {
  const auto record = context.desk->records().exam(exam);
  if (!record) {
    return record.error();
  }
  const ToJudge judged = exam_to_judge(context, **record);
  JudgedVisit out{judged.exam, watch(context, judged, false).alerts.alerts};
  // What protects a person is in no list and no count, also where two values of it disagree; the queue of an examiner has it.
  const std::vector<model::Conflict> conflicts = (*record)->fold.exam.conflicts.value_or(std::vector<model::Conflict>{});
  out.told_apart = !conflicts.empty() && std::all_of(conflicts.begin(), conflicts.end(), [&](const model::Conflict& one) { return one.item && is_protected(context, *one.item); });
  add_call_backs(context, judged, false, out.alerts);
  out.alerts.erase(std::remove_if(out.alerts.begin(), out.alerts.end(), [](const interpret::Alert& one) { return one.audience == interpret::Audience::protected_; }),
                   out.alerts.end());
  return out;
}

Result<bool> has_protected_unanswered(Context& context, const model::ExamId& exam) {
  const auto record = context.desk->records().exam(exam);
  if (!record) {
    return record.error();
  }
  const ToJudge judged = exam_to_judge(context, **record);
  std::vector<interpret::Alert> alerts = watch(context, judged, true).alerts.alerts;
  add_call_backs(context, judged, true, alerts);
  return std::any_of(alerts.begin(), alerts.end(), is_protected_unanswered);
}

std::vector<ListedAlert> alerts_without_action(const JudgedVisit& visit, const report::Words* words) {
  std::vector<ListedAlert> out;
  for (const interpret::Alert& alert : visit.alerts) {
    if (alert.state != interpret::AlertState::raised || visit.exam.state == model::ExamState::withdrawn) {
      continue;
    }
    out.push_back({alert.alert, alert.side, alert.urgency, alert.call_back, std::nullopt});
    if (words != nullptr) {
      out.back().text = wire::LongText{report::alert_text(alert, *words)};
    }
  }
  return out;
}

Result<ListedPerson> listed_person(Context& context, const std::vector<model::PersonId>& persons) {
  const auto links = context.desk->records().links();
  const auto all = context.desk->records().persons();
  if (!links || !all) {
    return !links ? links.error() : all.error();
  }
  ListedPerson out;
  for (const model::PersonId& one : persons) {
    const auto under = (*links)->shown_under.find(one);
    std::vector<model::PersonId> records{under == (*links)->shown_under.end() ? one : under->second};
    for (const model::PersonId& other : (*links)->group_of(one)) {
      if (other != records.front()) {
        records.push_back(other);
      }
    }
    for (const model::PersonId& record : records) {
      if (std::find(out.persons.begin(), out.persons.end(), record) != out.persons.end()) {
        continue;
      }
      out.persons.push_back(record);
      const auto found = (*all)->find(record);
      if (found == (*all)->end()) {
        continue;
      }
      for (const model::PersonName& name : found->second.names.value_or(std::vector<model::PersonName>{})) {
        if (std::find(out.names.begin(), out.names.end(), name) == out.names.end()) {
          out.names.push_back(name);
        }
      }
      out.birth = out.birth ? out.birth : found->second.birth;
      out.home = out.home ? out.home : found->second.home;
    }
  }
  // Of an exam that was given to two people neither's birth stands for both.
  const std::set<model::PersonId> one = persons.empty() ? std::set<model::PersonId>{} : (*links)->group_of(persons.front());
  if (!std::all_of(persons.begin(), persons.end(), [&](const model::PersonId& id) { return one.contains(id); })) {
    out.birth.reset();
    out.home.reset();
  }
  return out;
}

model::PartialDate today_at_hand(Context& context) { return model::date_of({context.desk->world().now().wall_ms}, 0); }

std::string birth_in_words(const model::Birth& birth, const report::Words& words) {
  if (birth.date) {
    return words.say("msg.clinic.born", {{"date", birth.date->to_text(), false, true}});
  }
  return birth.age_years && birth.on ? words.say("msg.clinic.aged", {{"years", std::to_string(birth.age_years->steps), true}, {"on", birth.on->to_text(), false, true}}) : std::string();
}

std::string person_in_words(const ListedPerson& person, const report::Words& words) {
  std::vector<std::string> names;
  for (const model::PersonName& name : person.names) {
    names.push_back(name.text.text);
  }
  std::vector<std::string> parts{names.empty() ? words.say("msg.clinic.nobody") : words.say("msg.clinic.named", {{"names", report::joined(names, " / ")}})};
  if (const std::string birth = person.birth ? birth_in_words(*person.birth, words) : std::string(); !birth.empty()) {
    parts.push_back(birth);
  }
  if (person.home) {
    parts.push_back(words.say("msg.clinic.home", {{"home", person.home->text}}));
  }
  return report::joined(parts);
}

std::string visit_in_words(const ledger::ListedExam& row, const report::Words& words) {
  std::string text = report::word_of(words, "complaint", row.complaint.text);
  if (row.side && *row.side != model::Side::midline) {
    text += ", " + report::side_of(words, *row.side);
  }
  return text;
}

}  // namespace limbledger::service
