#include "core/service/methods/after/supervise.hpp"

#include "core/ledger/log/log.hpp"
#include "core/model/check.hpp"
#include "core/report/text.hpp"
#include "core/service/methods/exam/watch.hpp"
#include "core/service/methods/people/dates.hpp"
#include "core/service/methods/say/texts.hpp"
#include "core/wire/parse.hpp"
#include "core/wire/write.hpp"

#include <algorithm>

namespace limbledger::service {

namespace {

[[nodiscard]] Result<std::vector<model::Observation>> checked_findings(Context& context, const std::vector<NewFinding>& findings) {
  std::vector<model::Observation> out;
  std::vector<wire::Fault> faults;
  for (std::size_t i = 0; i < findings.size(); ++i) {
    std::vector<std::string> confirmed;
    for (const wire::Name& code : findings[i].confirmed.value_or(std::vector<wire::Name>{})) {
      confirmed.push_back(code.text);
    }
    model::Checked checked = model::check(observation_of(findings[i]), context.edition->catalogue(), confirmed, "/findings" + wire::pointer_step(i));
    faults.insert(faults.end(), checked.faults.begin(), checked.faults.end());
    const std::vector<wire::Fault> not_kept = faults_of_what_is_not_kept(findings[i], context.desk->examiner(), "/findings" + wire::pointer_step(i));
    faults.insert(faults.end(), not_kept.begin(), not_kept.end());
    out.insert(out.end(), checked.observations.begin(), checked.observations.end());
  }
  if (!faults.empty()) {
    return wire::Refusal(std::move(faults));
  }
  return out;
}

// By this examiner, and with every addendum in sight.
[[nodiscard]] bool countersigned_already(const ledger::ExamRecord& record, const model::ExaminerId& examiner) {
  const ledger::Graph graph(record.operations);
  for (const model::Countersigned& one : record.fold.exam.countersigned.value_or(std::vector<model::Countersigned>{})) {
    const auto at = graph.find(one.entry);
    const std::vector<model::Addendum> addenda = record.fold.exam.addenda.value_or(std::vector<model::Addendum>{});
    const bool saw_all = at && std::all_of(addenda.begin(), addenda.end(), [&](const model::Addendum& addendum) {
                           const auto added = graph.find(addendum.entry);
                           return !added || graph.saw(*at, *added);
                         });
    if (one.by == examiner && saw_all) {
      return true;
    }
  }
  return false;
}

[[nodiscard]] std::string agreement_text(const interpret::Agreement& one, const report::Words& words) {
  if (!one.agree) {
    return words.say("msg.agreement.no_pairs") + ".";
  }
  const report::Arg commonest{"commonest", one.commonest->text};
  std::int64_t same = 0;
  for (const interpret::AgreementCell& cell : one.table) {
    same += cell.first == cell.second ? cell.count.steps : 0;
  }
  const std::string raw = words.say("msg.agreement.raw", {{"same", wire::write_number(same, 1), true},
                                                          {"pairs", wire::write_number(one.pairs.steps, 1), true},
                                                          {"agree", wire::write_number(one.agree->steps, 10), true}});
  if (!one.kappa) {
    return raw + ". " + words.say("msg.agreement.no_kappa", {commonest}) + ".";
  }
  return raw + ". " +
         words.say("msg.agreement.kappa",
                   {{"kappa", wire::write_number(one.kappa->steps, 100), true}, {"of", wire::write_number(one.commonest_of->steps, 10), true}, commonest}) +
         ".";
}

[[nodiscard]] bool is_within(const ledger::ListedExam& row, const AgreementReadParams& params) {
  if (row.state == model::ExamState::withdrawn) {
    return false;
  }
  return may_be_within(row, params.from, params.to);
}

}  // namespace

Result<ExamCountersignResult> exam_countersign(Context& context, const ExamCountersignParams& params) {
  const auto sentences = Sentences::in(params.language);
  if (!sentences) {
    return sentences.error();
  }
  const auto record = exam_shown_to(context, params.exam, params.seen);
  if (!record) {
    return record.error();
  }
  model::CountersignBody body{std::nullopt, params.impression, params.remark};
  if (params.findings && !params.findings->empty()) {
    auto findings = checked_findings(context, *params.findings);
    if (!findings) {
      return findings.error();
    }
    body.findings = std::move(*findings);
  }
  ledger::NewOperation operation =
      operation_for(context, model::as_object(params.exam), ledger::ObjectType::exam, "countersign", params.request, params.seen);
  operation.sign = true;
  operation.body_json = wire::write(body);
  const auto written = write(context, {operation}, [&]() -> Result<void> {
    if (auto takes = exam_takes_additions(**record); !takes) {
      return takes;
    }
    const model::Exam& exam = (*record)->fold.exam;
    if (!exam.signed_) {
      return wire::Fault{"exam.not_signed", "/exam", "an exam that its examiner has signed"};
    }
    if (exam.signed_->by == context.desk->examiner()) {
      return wire::Fault{"examiner.own", "/exam", "an exam that another examiner has signed"};
    }
    if ((*record)->fold.unread != 0) {
      return wire::Fault{"format.newer", "/exam", "an exam that this edition can read whole"};
    }
    if (countersigned_already(**record, context.desk->examiner())) {
      return wire::Fault{"exam.countersigned", "/exam", "an exam that you have not countersigned, or to which an addendum came since"};
    }
    // A countersignature covers what it was shown; what has come since is shown first.
    const std::vector<model::EntryId> heads = exam.revision.value_or(std::vector<model::EntryId>{});
    return nothing_came_since(heads, seen_of(heads, params.seen, (*record)->operations));
  });
  if (!written) {
    return written.error();
  }
  const auto reply = exam_reply(context, params.exam, *written);
  if (!reply) {
    return reply.error();
  }
  for (const model::Countersigned& one : reply->exam.countersigned.value_or(std::vector<model::Countersigned>{})) {
    if (one.entry == written->entries.front()) {
      ExamCountersignResult result{one, interpret::differences(reply->exam, one), reply->revision, reply->repeat};
      if (auto later = call_backs_of(context, params.exam, *sentences); !later.empty()) {
        result.call_backs = std::move(later);
      }
      return result;
    }
  }
  return wire::Fault{"internal.failure", "/exam", "the countersignature that was written"};
}

Result<AgreementReadResult> agreement_read(Context& context, const AgreementReadParams& params) {
  const auto words = words_in(params.language);
  if (!words) {
    return words.error();
  }
  for (std::size_t i = 0; params.items && i < params.items->size(); ++i) {
    if (context.edition->item((*params.items)[i]) == nullptr) {
      return wire::Fault{"item.unknown", "/items" + wire::pointer_step(i), "an item of this edition"};
    }
  }
  const auto listed = context.desk->records().exams();
  if (!listed) {
    return listed.error();
  }
  std::vector<model::ExamId> ids;
  for (const auto& [id, row] : **listed) {
    if (is_within(row, params)) {
      ids.push_back(id);
    }
  }
  AgreementReadResult result;
  std::vector<interpret::DoubledItem> all;
  for (const model::ExamId& id : ids) {
    const auto record = context.desk->records().exam(id);
    if (!record) {
      continue;  // one that does not open is found by ledger.verify
    }
    ++result.exams.steps;
    const model::Exam* exam = &(*record)->fold.exam;
    for (interpret::DoubledItem& one : interpret::doubled_findings({&exam, 1})) {
      const bool asked = !params.items || std::find(params.items->begin(), params.items->end(), one.item) != params.items->end();
      if (!asked || is_protected(context, one.item)) {
        continue;
      }
      const auto at = std::find_if(all.begin(), all.end(), [&](const interpret::DoubledItem& held) { return held.item == one.item; });
      if (at == all.end()) {
        all.push_back(std::move(one));
      } else {
        at->pairs.insert(at->pairs.end(), one.pairs.begin(), one.pairs.end());
      }
    }
  }
  std::sort(all.begin(), all.end(), [](const interpret::DoubledItem& a, const interpret::DoubledItem& b) { return a.item < b.item; });
  for (const interpret::DoubledItem& one : all) {
    ItemAgreement item{one.item, interpret::agreement_of(one.pairs), std::nullopt};
    if (*words != nullptr) {
      item.text = wire::LongText{agreement_text(item.agreement, **words)};
    }
    result.items.push_back(std::move(item));
  }
  return result;
}

}  // namespace limbledger::service
