#include "core/service/methods/after/follow.hpp"

#include "core/interpret/after/urgent_way.hpp"
#include "core/interpret/assess.hpp"
#include "core/ledger/log/log.hpp"
#include "core/service/methods/exam/judge.hpp"
#include "core/service/methods/people/dates.hpp"
#include "core/wire/write.hpp"

#include <algorithm>

namespace limbledger::service {

namespace {

constexpr std::array of_referrals_alone{model::Became::written, model::Became::sent, model::Became::received, model::Became::seen,
                                        model::Became::answered, model::Became::lost};

[[nodiscard]] ledger::NewOperation addition(Context& context, const model::ExamId& exam, std::string op, const model::RequestId& request,
                                            const std::vector<model::EntryId>& seen) {
  return operation_for(context, model::as_object(exam), ledger::ObjectType::exam, std::move(op), request, seen);
}

[[nodiscard]] Result<void> day_fits(Context& context, const ledger::ExamRecord& record, const std::optional<model::PartialDate>& on,
                                    const std::optional<std::vector<wire::Name>>& confirmed, const std::string& path) {
  DateCheck dates(today_of(context, record.fold.exam.offset_min), confirmed);
  if (on) {
    dates.happened(*on, record, path);
  }
  return dates.result();
}

// What is said of an exam is said of what its writer was shown: what has come since is shown first, as before a signature.
[[nodiscard]] Result<void> all_was_shown(const ledger::ExamRecord& record, const std::vector<model::EntryId>& seen) {
  const std::vector<model::EntryId> heads = record.fold.exam.revision.value_or(std::vector<model::EntryId>{});
  return nothing_came_since(heads, seen_of(heads, seen, record.operations));
}

}  // namespace

Result<ExamReply> statement_disagree(Context& context, const StatementDisagreeParams& params) {
  const auto record = exam_shown_to(context, params.exam, params.seen);
  if (!record) {
    return record.error();
  }
  ledger::NewOperation operation = addition(context, params.exam, "disagree", params.request, params.seen);
  operation.body_json = wire::write(model::DisagreeBody{params.statement, params.because});
  const auto written = write(context, {operation}, [&]() -> Result<void> {
    if (auto takes = exam_takes_additions(**record); !takes) {
      return takes;
    }
    if (auto shown = all_was_shown(**record, params.seen); !shown) {
      return shown;
    }
    // Named lists, so that what is held until the minimum set is recorded can be disagreed with once it was asked for.
    ExamAssessParams ask;
    ask.exam = params.exam;
    ask.only = std::vector<wire::Name>{{"alerts"}, {"rules"}, {"statements"}, {"hypotheses"}, {"contradictions"}};
    ask.protected_ = true;
    const auto assessment = exam_assess(context, ask);
    if (!assessment) {
      return assessment.error();
    }
    if (!interpret::holds_statement(*assessment, params.statement)) {
      return wire::Fault{"statement.unknown", "/statement", "a statement, rule, hypothesis or alert of this assessment, with its side"};
    }
    return {};
  });
  return written ? exam_reply(context, params.exam, *written) : Result<ExamReply>(written.error());
}

Result<ExamReply> plan_follow(Context& context, const PlanFollowParams& params) {
  const auto record = exam_shown_to(context, params.exam, params.seen);
  if (!record) {
    return record.error();
  }
  const model::Exam& exam = (*record)->fold.exam;
  std::vector<model::EntryId> steps;
  for (const model::Followed& one : exam.followed.value_or(std::vector<model::Followed>{})) {
    if (one.plan_item == params.plan_item) {
      steps.push_back(one.entry);
    }
  }
  const auto heads = (*record)->fold.plan_heads.find(params.plan_item);
  const auto stands = [&](const model::EntryId& entry) {
    return heads != (*record)->fold.plan_heads.end() && std::find(heads->second.begin(), heads->second.end(), entry) != heads->second.end();
  };
  steps.erase(std::remove_if(steps.begin(), steps.end(), [&](const model::EntryId& entry) { return !stands(entry); }), steps.end());
  ledger::NewOperation operation = addition(context, params.exam, "became", params.request, params.seen);
  operation.replaces = seen_of(steps, params.seen, (*record)->operations);
  operation.body_json = wire::write(model::BecameBody{params.plan_item, params.became, params.on, params.text});
  const auto written = write(context, {operation}, [&]() -> Result<void> {
    if (auto takes = exam_takes_additions(**record); !takes) {
      return takes;
    }
    const std::vector<model::PlanItem> plan = exam.plan.value_or(std::vector<model::PlanItem>{});
    const auto item = std::find_if(plan.begin(), plan.end(), [&](const model::PlanItem& one) { return one.plan_item == std::optional(params.plan_item); });
    if (item == plan.end()) {
      return wire::Fault{"plan.unknown", "/plan_item", "a plan item of this exam"};
    }
    const bool of_referral = std::find(of_referrals_alone.begin(), of_referrals_alone.end(), params.became) != of_referrals_alone.end();
    if (of_referral && item->kind != model::PlanKind::referral) {
      return wire::Fault{"params.unknown_word", "/became", "one of: arranged, given, done, declined; the others are of a referral"};
    }
    if (auto free = nothing_came_since(steps, operation.replaces); !free) {
      return free;
    }
    return day_fits(context, **record, params.on, params.confirmed, "/on");
  });
  return written ? exam_reply(context, params.exam, *written) : Result<ExamReply>(written.error());
}

Result<ExamReply> outcome_record(Context& context, const OutcomeRecordParams& params) {
  const auto record = exam_shown_to(context, params.exam, params.seen);
  if (!record) {
    return record.error();
  }
  ledger::NewOperation operation = addition(context, params.exam, "outcome", params.request, params.seen);
  operation.body_json = wire::write(model::OutcomeBody{params.found});
  const auto written = write(context, {operation}, [&]() -> Result<void> {
    if (auto takes = exam_takes_additions(**record); !takes) {
      return takes;
    }
    if (auto shown = all_was_shown(**record, params.seen); !shown) {
      return shown;
    }
    return day_fits(context, **record, params.found.on, params.confirmed, "/found/on");
  });
  return written ? exam_reply(context, params.exam, *written) : Result<ExamReply>(written.error());
}

}  // namespace limbledger::service
