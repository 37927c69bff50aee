#include "core/service/methods/exam/exam.hpp"

#include "core/service/methods/clinic/settled.hpp"
#include "core/service/methods/exam/told.hpp"
#include "core/service/methods/exam/watch.hpp"
#include "core/service/methods/people/dates.hpp"
#include "core/service/methods/people/group.hpp"
#include "core/service/methods/say/texts.hpp"
#include "core/wire/write.hpp"

#include <algorithm>

namespace limbledger::service {

namespace {

constexpr std::int64_t page_default = 50;

// A word of English that names a side; other languages come with their words.
[[nodiscard]] bool names_side(std::string_view text) {
  std::string word;
  const auto is_side = [&] { return word == "left" || word == "right"; };
  for (const char c : text) {
    const char lower = c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    if (lower >= 'a' && lower <= 'z') {
      word.push_back(lower);
      continue;
    }
    if (is_side()) {
      return true;
    }
    word.clear();
  }
  return is_side();
}

[[nodiscard]] std::vector<model::Word> texts_with_sides(const model::Exam& exam) {
  std::vector<model::Word> out;
  for (const model::Finding& finding : exam.findings.value_or(std::vector<model::Finding>{})) {
    const auto* words = std::get_if<model::Words>(&finding.value);
    const bool in_words = words != nullptr && names_side(words->text.text);
    if (in_words || (finding.remark && names_side(finding.remark->text))) {
      out.push_back({finding.finding->to_text()});
    }
  }
  const auto has_side = [](const std::optional<model::Side>& side) { return side && *side != model::Side::midline; };
  if (has_side(exam.side)) {
    out.push_back({"exam.side"});  // what was complained of stays as it was said; exam.amend corrects it
  }
  if (exam.impression && (has_side(exam.impression->side) || names_side(exam.impression->text.text))) {
    out.push_back({"impression"});
  }
  for (const model::Addendum& addendum : exam.addenda.value_or(std::vector<model::Addendum>{})) {
    if (addendum.findings || (addendum.text && names_side(addendum.text->text))) {
      out.push_back({addendum.entry.to_text()});
    }
  }
  for (const model::Transferred& one : exam.transfer.value_or(std::vector<model::Transferred>{})) {
    out.push_back({one.entry.to_text()});  // its checks are words about one leg
  }
  for (const model::OutcomeTold& one : exam.outcomes.value_or(std::vector<model::OutcomeTold>{})) {
    if (has_side(one.found.side) || names_side(one.found.text.text)) {
      out.push_back({one.entry.to_text()});
    }
  }
  for (const model::Countersigned& one : exam.countersigned.value_or(std::vector<model::Countersigned>{})) {
    out.push_back({one.entry.to_text()});
  }
  for (const model::PlanItem& item : exam.plan.value_or(std::vector<model::PlanItem>{})) {
    if (has_side(item.side) || names_side(item.text.text)) {
      out.push_back({item.plan_item->to_text()});
    }
  }
  return out;
}

// Newest first, then by id; the cursor is the last row's place in this order, so that writes in between shift nothing.
struct Place {
  std::int64_t ms = 0;
  std::string id;
  friend bool operator<(const Place& a, const Place& b) { return a.ms == b.ms ? a.id < b.id : a.ms > b.ms; }
};

[[nodiscard]] Place place_of(const ledger::ListedExam& row) { return {when_done(row).in_order_ms, row.exam.to_text()}; }

[[nodiscard]] std::optional<Place> read_cursor(const std::string& text) {
  const auto dot = text.find('.');
  if (dot == std::string::npos || dot == 0 || dot > 18) {
    return std::nullopt;
  }
  std::int64_t ms = 0;
  const bool negative = text.front() == '-';
  for (std::size_t i = negative ? 1 : 0; i < dot; ++i) {
    if (text[i] < '0' || text[i] > '9') {
      return std::nullopt;
    }
    ms = ms * 10 + (text[i] - '0');
  }
  return Place{negative ? -ms : ms, text.substr(dot + 1)};
}

[[nodiscard]] bool matches(const ledger::ListedExam& row, const ExamFindParams& wanted, const std::set<model::PersonId>& group) {
  if (wanted.person && !touches_group(row.persons, group)) {
    return false;
  }
  if (wanted.state && *wanted.state != row.state) {
    return false;
  }
  if (wanted.from || wanted.to) {
    return may_be_within(row, wanted.from, wanted.to);
  }
  return true;
}

[[nodiscard]] Result<ExamNames> names_in(Context& context, const model::Exam& exam) {
  ExamNames names;
  if (exam.place) {
    const auto places = context.desk->records().places();
    if (!places) {
      return places.error();
    }
    for (const ledger::PlaceFold& fold : *places) {
      if (fold.place.place == exam.place && fold.place.name) {
        names.places = std::vector<NamedPlace>{{*exam.place, *fold.place.name}};
      }
    }
  }
  std::vector<model::ExaminerId> examiners;
  const auto add = [&](const std::optional<model::ExaminerId>& examiner) {
    if (examiner && std::find(examiners.begin(), examiners.end(), *examiner) == examiners.end()) {
      examiners.push_back(*examiner);
    }
  };
  add(exam.examiner);
  for (const model::Finding& finding : exam.findings.value_or(std::vector<model::Finding>{})) {
    add(finding.examiner);
    add(finding.entered_by);
  }
  if (exam.signed_) {
    add(exam.signed_->by);
  }
  for (const model::Addendum& addendum : exam.addenda.value_or(std::vector<model::Addendum>{})) {
    add(addendum.by);
  }
  for (const model::Transferred& one : exam.transfer.value_or(std::vector<model::Transferred>{})) {
    add(one.by);
  }
  for (const model::Disagreed& one : exam.disagreed.value_or(std::vector<model::Disagreed>{})) {
    add(one.by);
  }
  for (const model::Countersigned& one : exam.countersigned.value_or(std::vector<model::Countersigned>{})) {
    add(one.by);
  }
  for (const model::SidesExchanged& one : exam.sides_exchanged.value_or(std::vector<model::SidesExchanged>{})) {
    add(one.by);
  }
  const auto add_settled = [&](const std::vector<model::Settled>& all) {
    for (const model::Settled& one : all) {
      add(one.by);
      for (const model::Weighed& weighed : one.among) {
        add(weighed.by);
      }
    }
  };
  for (const model::Finding& finding : exam.findings.value_or(std::vector<model::Finding>{})) {
    add_settled(finding.settled.value_or(std::vector<model::Settled>{}));
  }
  add_settled(exam.settled.value_or(std::vector<model::Settled>{}));
  add_settled(settled_of_person(context, exam));
  for (const model::ExaminerId& examiner : examiners) {
    if (auto named = name_of(context, examiner)) {
      if (!names.examiners) {
        names.examiners.emplace();
      }
      names.examiners->push_back(std::move(*named));
    }
  }
  return names;
}

}  // namespace

Result<ExamReadResult> exam_read(Context& context, const ExamReadParams& params) {
  const auto words = words_in(params.language);
  if (!words) {
    return words.error();
  }
  const auto record = exam_to_read(context, params.exam);
  if (!record) {
    return record.error();
  }
  ExamReadResult result;
  result.exam = (*record)->fold.exam;
  leave_out_unseen(context, result.exam);
  result.revision = result.exam.revision.value_or(std::vector<model::EntryId>{});
  if (*words != nullptr) {
    add_settled_texts(context, **words, result.exam);
  }
  const auto names = names_in(context, result.exam);
  if (!names) {
    return names.error();
  }
  if (names->places || names->examiners) {
    result.names = *names;
  }
  return result;
}

Result<ExamFindResult> exam_find(Context& context, const ExamFindParams& params) {
  const auto listed = context.desk->records().exams();
  if (!listed) {
    return listed.error();
  }
  std::optional<Place> after;
  if (params.cursor) {
    after = read_cursor(params.cursor->text);
    if (!after) {
      return wire::Fault{"params.wrong_type", "/cursor", "the cursor of the page before"};
    }
  }
  const std::set<model::PersonId> group = params.person ? group_of(context, *params.person) : std::set<model::PersonId>();
  std::vector<std::pair<Place, const ledger::ListedExam*>> rows;
  for (const auto& [id, row] : **listed) {
    if (matches(row, params, group) && (!after || *after < place_of(row))) {
      rows.emplace_back(place_of(row), &row);
    }
  }
  std::sort(rows.begin(), rows.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
  const auto limit = static_cast<std::size_t>(params.limit ? params.limit->steps : page_default);
  ExamFindResult result;
  for (std::size_t i = 0; i < rows.size() && i < limit; ++i) {
    result.exams.push_back(*rows[i].second);
    ledger::ListedExam& listed_exam = result.exams.back();
    // A row that holds findings is looked into; an exam that cannot be read is listed as it is known.
    const auto record = listed_exam.findings.steps > 0 ? context.desk->records().exam(listed_exam.exam) : Result<const ledger::ExamRecord*>(wire::Fault{"exam.unknown", ""});
    if (!record) {
      continue;
    }
    if (auto items = staff_calls(*context.edition, (*record)->fold.history); !items.empty()) {
      listed_exam.staff_called = std::move(items);
    }
    if (!sees_protected(context)) {
      const auto& findings = (*record)->fold.exam.findings;
      listed_exam.findings.steps -= findings ? std::count_if(findings->begin(), findings->end(), [&](const model::Finding& one) { return is_protected(context, one.item); }) : 0;
    }
  }
  if (rows.size() > limit) {
    const Place& last = rows[limit - 1].first;
    result.cursor = wire::Name{std::to_string(last.ms) + "." + last.id};
  }
  return result;
}

Result<ExamReply> exam_withdraw(Context& context, const ExamReasonParams& params) {
  const auto record = exam_to_read(context, params.exam);
  if (!record) {
    return record.error();
  }
  if (auto seen = check_seen(params.seen, (*record)->operations); !seen) {
    return seen.error();
  }
  const bool is_signed = (*record)->fold.exam.signed_.has_value();
  ledger::NewOperation operation =
      operation_for(context, model::as_object(params.exam), ledger::ObjectType::exam, "withdraw", params.request, params.seen);
  operation.body_json = wire::write(model::WithdrawBody{std::nullopt, params.reason});
  operation.sign = is_signed;
  const auto written = write(context, {operation}, [&]() -> Result<void> {
    if ((*record)->fold.exam.state == model::ExamState::withdrawn) {
      return wire::Fault{"exam.withdrawn", "/exam", "an exam that is not withdrawn"};
    }
    return check_leaves_no_alert(context, exam_to_judge(context, **record), params.confirmed, "/exam");
  });
  return written ? exam_reply(context, params.exam, *written) : Result<ExamReply>(written.error());
}

Result<ExamReply> exam_move(Context& context, const ExamMoveParams& params) {
  const auto sentences = Sentences::in(params.language);
  if (!sentences) {
    return sentences.error();
  }
  const auto record = exam_to_read(context, params.exam);
  if (!record) {
    return record.error();
  }
  if (auto seen = check_seen(params.seen, (*record)->operations); !seen) {
    return seen.error();
  }
  ledger::NewOperation operation =
      operation_for(context, model::as_object(params.exam), ledger::ObjectType::exam, "move", params.request, params.seen);
  operation.replaces = seen_of((*record)->fold.assignment_heads, params.seen, (*record)->operations);
  operation.body_json = wire::write(model::MoveBody{params.person, params.reason});
  operation.sign = true;
  const auto written = write(context, {operation}, [&]() -> Result<void> {
    if ((*record)->fold.exam.state == model::ExamState::withdrawn) {
      return wire::Fault{"exam.withdrawn", "/exam", "an exam that is not withdrawn"};
    }
    if (auto free = nothing_came_since((*record)->fold.assignment_heads, operation.replaces); !free) {
      return free;
    }
    const auto person = context.desk->records().person(params.person);
    if (!person) {
      return person.error();
    }
    // What is recorded does not change by moving it, so a birth that does not fit is asked back: another person may be meant.
    const model::Exam& exam = (*record)->fold.exam;
    const std::optional<model::Birth>& birth = (*person)->fold.person.birth;
    DateCheck dates(std::nullopt, params.confirmed);
    if (const auto examined = days_examined(exam)) {
      dates.born_by(birth, *examined, false, "/person");
    }
    if (exam.injured_on) {
      dates.injured_after_birth(*exam.injured_on, birth, false, "/person");
    }
    if (auto born = dates.result(); !born) {
      return born;
    }
    const ToJudge now = exam_to_judge(context, **record);
    ToJudge then = now;
    then.exam.person = params.person;
    then.person = (*person)->fold.person;
    return check_ends_no_alert(context, now, then, params.confirmed, "/person");
  });
  return written ? judged_reply(context, params.exam, *written, *sentences) : Result<ExamReply>(written.error());
}

Result<SwapSidesResult> exam_swap_sides(Context& context, const SwapSidesParams& params) {
  const auto sentences = Sentences::in(params.language);
  if (!sentences) {
    return sentences.error();
  }
  const auto record = exam_to_read(context, params.exam);
  if (!record) {
    return record.error();
  }
  if (auto seen = check_seen(params.seen, (*record)->operations); !seen) {
    return seen.error();
  }
  ledger::NewOperation operation =
      operation_for(context, model::as_object(params.exam), ledger::ObjectType::exam, "swap_sides", params.request, params.seen);
  operation.body_json = wire::write(model::SwapSidesBody{params.reason});
  operation.sign = (*record)->fold.exam.signed_.has_value();
  const auto written = write(context, {operation}, [&]() -> Result<void> {
    if ((*record)->fold.exam.state == model::ExamState::withdrawn) {
      return wire::Fault{"exam.withdrawn", "/exam", "an exam that is not withdrawn"};
    }
    // Twice by one form that was not shown the first is back where it began.
    const ledger::Graph graph((*record)->operations);
    for (std::size_t i = 0; i < graph.size(); ++i) {
      const bool shown = std::any_of(params.seen.begin(), params.seen.end(), [&](const model::EntryId& one) {
        const auto at = graph.find(one);
        return at && (*at == i || graph.saw(*at, i));
      });
      if (graph.at(i).operation().op.text == "swap_sides" && !shown) {
        return wire::Fault{"finding.stale", "/seen", "the exam as it stands: left and right were exchanged already"};
      }
    }
    const ToJudge now = exam_to_judge(context, **record);
    ToJudge then = now;
    if (then.exam.findings) {
      for (model::Finding& finding : *then.exam.findings) {
        finding.side = interpret::other_side(finding.side);
      }
    }
    return check_ends_no_alert(context, now, then, params.confirmed, "", true);
  });
  if (!written) {
    return written.error();
  }
  const auto reply = judged_reply(context, params.exam, *written, *sentences);
  if (!reply) {
    return reply.error();
  }
  SwapSidesResult result{reply->exam, reply->revision, reply->repeat, {}, texts_with_sides(reply->exam), reply->stale_letters, reply->alerts};
  for (const model::Finding& finding : reply->exam.findings.value_or(std::vector<model::Finding>{})) {
    if (finding.side != model::Side::midline) {
      result.exchanged.push_back({*finding.finding, finding.item, finding.side});
    }
  }
  return result;
}

}  // namespace limbledger::service
