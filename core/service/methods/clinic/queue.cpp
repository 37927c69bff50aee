#include "core/service/methods/clinic/queue.hpp"

#include "core/report/text.hpp"
#include "core/service/methods/clinic/queue_line.hpp"
#include "core/service/methods/clinic/queue_rows.hpp"
#include "core/service/methods/exam/watch.hpp"
#include "core/service/methods/say/texts.hpp"
#include "core/wire/write.hpp"

#include <algorithm>

namespace limbledger::service {

namespace {

constexpr std::int64_t queue_page = 100;

// Whoever decides on a side has to have been shown that the sides were exchanged.
[[nodiscard]] bool has_unseen_exchange(const ledger::ExamRecord& record, const std::vector<model::EntryId>& seen) {
  const ledger::Graph graph(record.operations);
  const std::vector<bool> known = graph.closure(seen);
  for (std::size_t i = 0; i < graph.size(); ++i) {
    if (!known[i] && std::holds_alternative<model::SwapSidesBody>(graph.at(i).body())) {
      return true;
    }
  }
  return false;
}

}  // namespace

Result<ConflictListResult> conflict_list(Context& context, const ConflictListParams& params) {
  const auto words = words_in(params.language);
  const auto listed = context.desk->records().exams();
  if (!words || !listed) {
    return !words ? words.error() : listed.error();
  }
  if (params.exam && !(*listed)->contains(*params.exam)) {
    return wire::Fault{"exam.unknown", "/exam", "the id of an exam"};
  }
  std::vector<ledger::ListedExam> rows;
  for (const auto& [id, row] : **listed) {
    const bool wanted = !params.exam || params.exam == id;
    if (wanted && is_queued(row)) {
      rows.push_back(row);
    }
  }
  std::vector<Queued> queue;
  for (const ledger::ListedExam& row : rows) {
    if (auto added = add_exam(context, row, *words, Told::whole, queue); !added) {
      return added.error();
    }
  }
  if (!params.exam) {
    auto people = add_people(context, *words, queue);
    auto pairs = add_pairs(context, params.look_alikes.value_or(true), *words, queue);
    if (!people || !pairs) {
      return !people ? people.error() : pairs.error();
    }
  }
  std::stable_sort(queue.begin(), queue.end(), [](const Queued& a, const Queued& b) { return a.place() < b.place(); });
  ConflictListResult result;
  result.total.steps = static_cast<std::int64_t>(queue.size());
  const auto from = static_cast<std::size_t>(params.from ? params.from->steps : 0);
  const auto limit = static_cast<std::size_t>(params.limit ? params.limit->steps : queue_page);
  std::string text;
  if (!params.exam && params.look_alikes.value_or(true)) {
    result.looking = still_looking(context);
  }
  for (std::size_t i = from; i < queue.size() && i < from + limit; ++i) {
    if (queue[i].to_make) {
      auto made = row_of_pair(context, *queue[i].to_make, queue[i].row.harm != Harm::look_alike, *words);
      if (!made) {
        return made.error();
      }
      queue[i].row = std::move(*made);
    }
    if (*words != nullptr) {
      text += in_lines(queue[i].row.text->text, std::to_string(i + 1) + ". ");
    }
    result.queue.push_back(std::move(queue[i].row));
  }
  if (*words != nullptr) {
    const std::string title = (*words)->say(queue.empty() ? "msg.clinic.queue_none" : "msg.clinic.queue_title", {{"count", std::to_string(queue.size()), true}});
    if (!result.queue.empty() && result.queue.size() < queue.size()) {
      text += "\n" + report::wrapped((*words)->say("msg.clinic.queue_part", {{"first", std::to_string(from + 1), true},
                                                                             {"last", std::to_string(from + result.queue.size()), true},
                                                                             {"count", std::to_string(queue.size()), true}}));
    }
    if (result.looking) {
      text += "\n" + report::wrapped((*words)->say("msg.clinic.queue_looking", {{"compared", std::to_string(result.looking->compared.steps), false, true}, {"of", std::to_string(result.looking->of.steps), false, true}}));
    }
    const std::string banner = banner_of(context.desk->kind(), **words);
    result.text = wire::LongText{(banner.empty() ? "" : report::wrapped(banner)) + report::wrapped(title) + text +
                              (queue.empty() ? "" : "\n" + report::wrapped((*words)->say("msg.clinic.queue_end")))};
  }
  return result;
}

std::vector<std::string> undecided_of(Context& context, const model::Exam& exam, const report::Words& words, bool leaves_the_clinic) {
  std::vector<Queued> queue;
  const Told how = leaves_the_clinic ? Told::on_letter : Told::on_page;
  const auto listed = context.desk->records().exams();
  const auto row = listed && exam.exam ? (*listed)->find(*exam.exam) : std::map<model::ExamId, ledger::ListedExam>::const_iterator{};
  if (!listed || !exam.exam || row == (*listed)->end()) {
    return {};
  }
  const ledger::ListedExam here = row->second;  // judging may move the list below it
  if (here.in_conflict.value_or(false) || here.unseen.value_or(false)) {
    if (!add_exam(context, here, &words, how, queue)) {
      return {};
    }
  }
  if (exam.person && !add_person(context, *exam.person, &words, how, queue)) {
    return {};
  }
  std::vector<std::string> out;
  for (const Queued& one : queue) {
    const std::string& about = one.row.about.text;
    const bool said_where_it_stands = about == "finding" || about == "impression" || about == "plan" || about == "became" || about == "transfer" || about == "request";
    if (!said_where_it_stands && one.row.text) {
      out.push_back(one.row.text->text);
    }
  }
  return out;
}

Result<ExamReply> conflict_settle(Context& context, const ConflictSettleParams& params) {
  const auto sentences = Sentences::in(params.language);
  if (!sentences) {
    return sentences.error();
  }
  const auto record = exam_shown_to(context, params.exam, params.seen);
  if (!record) {
    return record.error();
  }
  const ledger::ExamFold& fold = (*record)->fold;
  const auto taken = std::find_if(fold.history.begin(), fold.history.end(), [&](const model::Finding& one) { return one.entry == params.take; });
  if (taken == fold.history.end()) {
    return wire::Fault{"finding.unknown", "/take", "an entry of a finding of this exam"};
  }
  model::SettleBody body;
  body.finding = *taken->finding;
  body.observation = {taken->item, taken->side, taken->value, taken->instrument, taken->position, taken->end_feel, taken->pain, taken->quality, taken->origin, taken->despite, taken->remark};
  body.reason = params.reason;
  std::vector<model::EntryId> heads;
  for (const model::Finding& one : fold.history) {
    const bool stands = one.standing == model::Standing::current || one.standing == model::Standing::in_conflict;
    if (stands && one.item == taken->item && one.side == taken->side) {
      heads.push_back(*one.entry);
    }
  }
  ledger::NewOperation operation = operation_for(context, model::as_object(params.exam), ledger::ObjectType::exam, "settle", params.request, params.seen);
  operation.replaces = seen_of(heads, params.seen, (*record)->operations);
  operation.body_json = wire::write(body);
  operation.sign = true;
  const auto written = write(context, {operation}, [&]() -> Result<void> {
    if (auto takes = exam_takes_additions(**record); !takes) {
      return takes;
    }
    if (auto own = exam_takes_from_here(context, **record); !own) {
      return own;
    }
    if (params.reason.text.empty()) {
      return wire::Fault{"value.empty", "/reason", "why this value holds"};
    }
    if (has_unseen_exchange(**record, params.seen)) {
      return wire::Fault{"finding.stale", "/seen", "a revision that holds the exchange of left and right"};
    }
    if (auto free = register_is_free(heads, operation.replaces, "/seen"); !free) {
      return free;
    }
    const ToJudge now = exam_to_judge(context, **record);
    return check_ends_no_alert(context, now, without(now, heads, {body.observation}), params.confirmed, "/take");
  });
  return written ? judged_reply(context, params.exam, *written, *sentences) : Result<ExamReply>(written.error());
}

}  // namespace limbledger::service
