#include "core/service/methods/clinic/day.hpp"

#include "core/report/text.hpp"
#include "core/service/methods/exam/care.hpp"
#include "core/service/methods/people/dates.hpp"
#include "core/service/methods/say/texts.hpp"

#include <algorithm>
#include <set>

namespace limbledger::service {

namespace {

[[nodiscard]] Result<DayVisit> day_visit(Context& context, const ledger::ListedExam& row, const report::Words* words) {
  auto person = listed_person(context, row.persons);
  const auto judged = judge_visit(context, row.exam);
  if (!person || !judged) {
    return !person ? person.error() : judged.error();
  }
  DayVisit out;
  out.exam = row.exam;
  out.person = std::move(*person);
  out.state = row.state;
  out.complaint = row.complaint;
  out.side = row.side;
  out.place = row.place;
  out.examiner = row.examiner;
  if (row.examiner) {
    out.examiner_name = wire::Remark{examiner_in_words(context, *row.examiner)};
  }
  out.examined_at = row.examined_at;
  out.examined_on = row.examined_on;
  if (row.state != model::ExamState::withdrawn) {
    out.left = row.state == model::ExamState::signed_ ? judged->exam.incomplete.value_or(std::vector<model::Word>{}) : what_is_left(context, row.exam);
    // Alerts are told by themselves, and without those that protect a person.
    out.left.erase(std::remove(out.left.begin(), out.left.end(), model::Word{"alerts"}), out.left.end());
    // As it is now: it may have been said since the signature.
    out.left.erase(std::remove(out.left.begin(), out.left.end(), model::Word{"day"}), out.left.end());
    if (!when_done(row).day) {
      out.left.push_back({"day"});
    }
    out.alerts = alerts_without_action(*judged, words);
    out.conflicts = row.in_conflict.value_or(false) && !judged->told_apart;
    if (judged->told_apart) {
      out.left.erase(std::remove(out.left.begin(), out.left.end(), model::Word{"conflicts"}), out.left.end());
    }
  }
  out.unseen = row.unseen.value_or(false);
  return out;
}

[[nodiscard]] bool is_open(const DayVisit& visit) { return visit.state == model::ExamState::open; }

void print_visit(const DayVisit& visit, const report::Words& words, std::string& text) {
  ledger::ListedExam row;
  row.complaint = visit.complaint;
  row.side = visit.side;
  const std::string state = words.say("msg.clinic.state_" + std::string(wire::type_of<model::ExamState>().words[static_cast<std::size_t>(visit.state)]));
  text += report::wrapped(words.say("msg.clinic.visit", {{"person", person_in_words(visit.person, words), false, true},
                                                         {"visit", visit_in_words(row, words), false, true},
                                                         {"state", state, false, true},
                                                         {"by", visit.examiner_name ? visit.examiner_name->text : words.say("msg.clinic.no_examiner")}}),
                          "- ");
  for (const ListedAlert& alert : visit.alerts) {
    text += report::wrapped(words.say(alert.call_back.value_or(false) ? "msg.clinic.call_back" : "msg.clinic.alert", {{"alert", alert.text->text, false, true}}), "    ");
  }
  if (visit.conflicts || visit.unseen) {
    text += report::wrapped(words.say("msg.clinic.to_settle"), "    ");
  }
  if (!visit.left.empty()) {
    std::vector<std::string> left;
    for (const model::Word& one : visit.left) {
      left.push_back(report::word_of(words, "incomplete", one.text));
    }
    text += report::wrapped(words.say("msg.clinic.left", {{"what", report::joined(left), false, true}}), "    ");
  }
}

[[nodiscard]] std::string day_page(const DayListResult& list, const report::Words& words, const std::string& banner) {
  std::string text = banner.empty() ? "" : report::wrapped(banner);
  text += report::wrapped(words.say("msg.clinic.day_title", {{"day", list.day.to_text(), false, true}}));
  const std::string beside = list.undated.empty() ? std::string() : " " + words.say("msg.clinic.day_beside", {{"exams", std::to_string(list.undated.size()), true}});
  text += report::wrapped(words.say("msg.clinic.day_counts", {{"came", std::to_string(list.came.steps), true},
                                                              {"visits", std::to_string(list.visits.size()), true},
                                                              {"open", std::to_string(list.open.steps), true},
                                                              {"alerts", std::to_string(list.with_alerts.steps), true}}) +
                          beside);
  for (const DayVisit& visit : list.visits) {
    print_visit(visit, words, text);
  }
  if (!list.undated.empty()) {
    text += "\n" + report::wrapped(words.say("msg.clinic.undated"));
    for (const DayVisit& visit : list.undated) {
      print_visit(visit, words, text);
    }
  }
  return text + "\n" + report::wrapped(words.say("msg.clinic.day_end"));
}

}  // namespace

Result<DayListResult> day_list(Context& context, const DayListParams& params) {
  const auto words = words_in(params.language);
  const auto listed = context.desk->records().exams();
  if (!words || !listed) {
    return !words ? words.error() : listed.error();
  }
  DayListResult result;
  result.day = params.day ? *params.day : today_at_hand(context);
  std::vector<ledger::ListedExam> rows;  // judging folds exams, and may move the list below it
  for (const auto& [id, row] : **listed) {
    const bool here = !params.place || row.place == params.place;
    if (here && may_be_within(row, result.day, result.day)) {
      rows.push_back(row);
    }
  }
  std::stable_sort(rows.begin(), rows.end(), [](const ledger::ListedExam& a, const ledger::ListedExam& b) { return when_done(a).in_order_ms < when_done(b).in_order_ms; });
  std::set<std::string> people;
  const auto of_the_day = [&](const ledger::ListedExam& row) {
    const auto day = when_done(row).day;
    return day && result.day.first_day() <= day->first_day() && day->last_day() <= result.day.last_day();
  };
  for (const ledger::ListedExam& row : rows) {
    auto visit = day_visit(context, row, *words);
    if (!visit) {
      return visit.error();
    }
    if (visit->state != model::ExamState::withdrawn && of_the_day(row)) {
      people.insert(visit->person.persons.empty() ? row.exam.to_text() : visit->person.persons.front().to_text());
      result.open.steps += is_open(*visit) ? 1 : 0;
      result.with_alerts.steps += visit->alerts.empty() ? 0 : 1;
    }
    (of_the_day(row) ? result.visits : result.undated).push_back(std::move(*visit));
  }
  result.came.steps = static_cast<std::int64_t>(people.size());
  if (*words != nullptr) {
    result.text = wire::LongText{day_page(result, **words, banner_of(context.desk->kind(), **words))};
  }
  return result;
}

}  // namespace limbledger::service
