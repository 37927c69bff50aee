#include "core/service/methods/exam/judge.hpp"

#include "core/interpret/after/urgent_way.hpp"
#include "core/ledger/log/log.hpp"
#include "core/service/methods/exam/watch.hpp"
#include "core/service/methods/people/group.hpp"
#include "core/service/methods/say/texts.hpp"

#include <algorithm>

namespace limbledger::service {

namespace {

constexpr std::size_t earlier_max = 50;  // the newest of the earlier exams; more than any person's comparison needs

struct Gathered : ToJudge {
  std::vector<model::Exam> earlier;  // oldest first, none withdrawn
  std::string digest;
};

[[nodiscard]] Result<Gathered> gather(Context& context, const model::ExamId& exam) {
  const auto record = exam_to_read(context, exam);
  if (!record) {
    return record.error();
  }
  Gathered out{exam_to_judge(context, **record), {}, {}};
  out.digest = model::Hex<32>{(*record)->fold.digest}.to_text();
  if (!out.exam.person) {
    return out;
  }
  const auto listed = context.desk->records().exams();
  if (!listed) {
    return listed.error();
  }
  const std::set<model::PersonId> group = group_of(context, *out.exam.person);
  std::vector<std::pair<std::int64_t, model::ExamId>> before;
  const model::When now = model::when_done(out.exam);
  for (const auto& [id, row] : **listed) {
    const bool same_person = row.persons.size() == 1 && group.contains(row.persons.front());
    const model::When then = when_done(row);
    if (same_person && id != exam && row.state != model::ExamState::withdrawn && model::is_before(then, now)) {
      before.emplace_back(then.in_order_ms, id);
    }
  }
  std::sort(before.begin(), before.end());
  for (std::size_t i = before.size() > earlier_max ? before.size() - earlier_max : 0; i < before.size(); ++i) {
    if (const auto other = context.desk->records().exam(before[i].second)) {
      out.earlier.push_back((*other)->fold.exam);
    }
  }
  return out;
}

[[nodiscard]] interpret::AssessAsk ask_for(const Gathered& gathered, const std::optional<std::vector<wire::Name>>& only,
                                           const std::optional<std::vector<interpret::TypedPrior>>& priors) {
  interpret::AssessAsk ask = make_ask(gathered.as_of, only, priors);
  ask.place = gathered.place;
  ask.known_otherwise = gathered.known_otherwise;
  ask.saw = wire::Name{gathered.digest};
  return ask;
}

}  // namespace

Result<interpret::Assessment> exam_assess(Context& context, const ExamAssessParams& params) {
  const auto gathered = gather(context, params.exam);
  if (!gathered) {
    return gathered.error();
  }
  std::vector<wire::Fault> faults = check_priors(*context.edition, params.priors);
  for (wire::Fault& fault : check_only(*context.edition, params.only)) {
    faults.push_back(std::move(fault));
  }
  if (!faults.empty()) {
    return wire::Refusal(std::move(faults));
  }
  const auto sentences = Sentences::in(params.language);
  if (!sentences) {
    return sentences.error();
  }
  const bool examiner = context.caller.scope == Scope::examiner;
  interpret::AssessAsk ask = ask_for(*gathered, params.only, params.priors);
  ask.protected_ = examiner && params.protected_.value_or(false);
  interpret::Assessment assessment = interpret::assess(gathered->exam, gathered->person, gathered->earlier, *context.edition, ask);
  gathered->times_raised.mark(assessment.alerts);
  const bool alerts_wanted = ask.only.empty() || std::any_of(ask.only.begin(), ask.only.end(), [](const std::string& only) { return only == "alerts"; });
  if (alerts_wanted) {
    add_call_backs(context, *gathered, ask.protected_, assessment.alerts);
  }
  if (!examiner) {
    // Who only looks on is not even told that there is a protected note.
    std::vector<interpret::Alert>& alerts = assessment.alerts;
    alerts.erase(std::remove_if(alerts.begin(), alerts.end(), [](const interpret::Alert& one) { return one.audience == interpret::Audience::protected_; }),
                 alerts.end());
  }
  if (alerts_wanted) {
    assessment.urgent = interpret::urgent_way(assessment.alerts, gathered->place, *context.edition);
  }
  add_texts(gathered->exam, *sentences, *context.edition, assessment);
  return assessment;
}

Result<interpret::Working> statement_explain(Context& context, const StatementExplainParams& params) {
  if (params.exam.has_value() == params.document.has_value()) {
    return wire::Fault{"value.all_or_one", "", "exactly one of exam and document"};
  }
  if (params.document) {
    return explain_document(context, params);
  }
  if (context.desk != nullptr) {
    context.desk->wake_if_asleep();
  }
  if (context.desk == nullptr || context.desk->locked()) {
    return wire::Fault{"ledger.locked", "/exam", "an unlocked ledger"};
  }
  context.desk->touch();  // the table cannot tell it from the explaining of a document, which reads no record
  const auto gathered = gather(context, *params.exam);
  if (!gathered) {
    return gathered.error();
  }
  std::vector<wire::Fault> faults = check_priors(*context.edition, params.priors);
  if (!faults.empty()) {
    return wire::Refusal(std::move(faults));
  }
  return explain_in_words(context, params, gathered->exam, gathered->person, gathered->earlier, ask_for(*gathered, std::nullopt, params.priors));
}

}  // namespace limbledger::service
