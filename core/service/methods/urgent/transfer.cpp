#include "core/service/methods/urgent/transfer.hpp"

#include "core/report/after/transfer_note.hpp"
#include "core/service/desk.hpp"
#include "core/service/methods/exam/exam.hpp"
#include "core/service/methods/exam/watch.hpp"
#include "core/service/methods/people/dates.hpp"
#include "core/service/methods/say/texts.hpp"
#include "core/wire/parse.hpp"
#include "core/wire/write.hpp"

namespace limbledger::service {

namespace {

// What is told of as done cannot lie ahead; a clock set wrong is asked about. The next check comes after the examination.
[[nodiscard]] Result<void> check_set_times(Context& context, const ExamTransferParams& params, const ledger::ExamRecord& record) {
  DateCheck dates(today_of(context, record.fold.exam.offset_min), params.confirmed);
  const auto performed = [&](const std::optional<model::Instant>& at, const std::string& path) {
    if (at) {
      dates.cared(*at, record, "/set" + path + "/at");
    }
  };
  if (params.set.vessel_check) {
    performed(params.set.vessel_check->at, "/vessel_check");
  }
  if (params.set.nerve_check) {
    performed(params.set.nerve_check->at, "/nerve_check");
  }
  for (std::size_t i = 0; params.set.given && i < params.set.given->size(); ++i) {
    performed((*params.set.given)[i].at, "/given" + wire::pointer_step(i));
  }
  for (std::size_t i = 0; params.set.called && i < params.set.called->size(); ++i) {
    performed((*params.set.called)[i].at, "/called" + wire::pointer_step(i));
  }
  if (params.set.next_check) {
    dates.follows(*params.set.next_check, record, "/set/next_check");
  }
  return dates.result();
}

[[nodiscard]] Result<report::Sheet> transfer_page(Context& context, const model::ExamId& id) {
  const report::Words* words = report::built_in_words();
  if (words == nullptr) {
    return wire::Fault{"internal.failure", "", "words that load"};
  }
  const auto record = exam_to_read(context, id);
  if (!record) {
    return record.error();
  }
  const ToJudge judged = exam_to_judge(context, **record);
  ExamAssessParams ask;
  ask.exam = id;
  ask.only = std::vector<wire::Name>{{"alerts"}};
  const auto assessment = exam_assess(context, ask);
  if (!assessment) {
    return assessment.error();
  }
  const auto read = exam_read(context, {id});
  if (!read) {
    return read.error();
  }
  report::PageNames names;
  names.banner = banner_of(context.desk->kind(), *words);
  names.now = now_if_right(context.desk->world().now());
  if (read->names) {
    take_names(*read->names, *words, names);
  }
  return report::transfer_sheet(judged.exam, judged.person, *assessment, *words, *context.edition, names, place_of_exam(context, judged.exam));
}

}  // namespace

Result<ExamTransferResult> exam_transfer(Context& context, const ExamTransferParams& params) {
  const auto record = exam_shown_to(context, params.exam, params.seen);
  if (!record) {
    return record.error();
  }
  ledger::NewOperation operation =
      operation_for(context, model::as_object(params.exam), ledger::ObjectType::exam, "transfer", params.request, params.seen);
  operation.replaces = seen_of((*record)->fold.transfer_heads, params.seen, (*record)->operations);
  operation.body_json = wire::write(model::TransferBody{params.set});
  operation.sign = (*record)->fold.exam.signed_.has_value();
  const auto written = write(context, {operation}, [&]() -> Result<void> {
    if (auto takes = exam_takes_additions(**record); !takes) {
      return takes;
    }
    if (auto free = nothing_came_since((*record)->fold.transfer_heads, operation.replaces); !free) {
      return free;
    }
    return check_set_times(context, params, **record);
  });
  if (!written) {
    return written.error();
  }
  const auto reply = exam_reply(context, params.exam, *written);
  if (!reply) {
    return reply.error();
  }
  const auto page = transfer_page(context, params.exam);
  if (!page) {
    return page.error();
  }
  const report::Words& words = *report::built_in_words();
  return ExamTransferResult{reply->exam, reply->revision, reply->repeat, {report::sheet_text(*page, words)}, {report::sheet_html(*page, words)}};
}

Result<TransferWriteResult> transfer_write(Context& context, const TransferWriteParams& params) {
  const auto words = words_in(params.language ? params.language : std::optional(model::Word{"en"}));
  if (!words) {
    return words.error();
  }
  const auto record = exam_to_read(context, params.exam);
  if (!record) {
    return record.error();
  }
  const model::Exam& exam = (*record)->fold.exam;
  if (!exam.transfer) {
    return wire::Fault{"exam.not_transferred", "/exam", "an exam that was stopped for transfer"};
  }
  const auto page = transfer_page(context, params.exam);
  if (!page) {
    return page.error();
  }
  return TransferWriteResult{{report::sheet_text(*page, **words)}, {report::sheet_html(*page, **words)}, exam.revision.value_or(std::vector<model::EntryId>{}), {"en"}};
}

}  // namespace limbledger::service
