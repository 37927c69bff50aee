#include "core/service/methods/people/person.hpp"

#include "core/ledger/log/log.hpp"
#include "core/service/kept_register.hpp"
#include "core/service/methods/exam/watch.hpp"
#include "core/service/methods/people/changes.hpp"
#include "core/service/methods/people/dates.hpp"
#include "core/service/methods/people/group.hpp"

#include <algorithm>
#include <utility>

namespace limbledger::service {

namespace {

void trim(wire::Name& name) { name.text = trimmed(name.text); }

[[nodiscard]] model::PersonBody tidied(model::PersonBody body) {
  if (body.names) {
    for (model::PersonName& name : *body.names) {
      trim(name.text);
    }
  }
  if (body.identifiers) {
    for (model::Identifier& identifier : *body.identifiers) {
      trim(identifier.issuer);
      trim(identifier.text);
    }
  }
  if (body.home) {
    trim(*body.home);
  }
  return body;
}

void check_birth(const model::Birth& birth, const std::string& path, std::vector<wire::Fault>& faults) {
  if (birth.date.has_value() == birth.age_years.has_value()) {
    faults.push_back({"value.all_or_one", path, "date, or age_years with on"});
  } else if (birth.age_years && !birth.on) {
    faults.push_back({"params.missing", path + "/on", "the day the age was true"});
  } else if (birth.date && (birth.plus_minus || birth.on)) {
    faults.push_back({"value.all_or_one", path, "date alone, or age_years with on"});
  }
}

[[nodiscard]] Result<void> check_body(const model::PersonBody& body, const std::string& path) {
  std::vector<wire::Fault> faults;
  const auto filled = [&](const wire::Name& name, const std::string& where) {
    if (name.text.empty()) {
      faults.push_back({"value.empty", where, "at least one character"});
    }
  };
  if (body.names) {
    if (body.names->empty()) {
      faults.push_back({"value.empty", path + "/names", "at least one name"});
    }
    for (std::size_t i = 0; i < body.names->size(); ++i) {
      filled((*body.names)[i].text, path + "/names/" + std::to_string(i) + "/text");
    }
  }
  if (body.birth) {
    check_birth(*body.birth, path + "/birth", faults);
  }
  if (body.home) {
    filled(*body.home, path + "/home");
  }
  if (body.identifiers) {
    for (std::size_t i = 0; i < body.identifiers->size(); ++i) {
      filled((*body.identifiers)[i].issuer, path + "/identifiers/" + std::to_string(i) + "/issuer");
      filled((*body.identifiers)[i].text, path + "/identifiers/" + std::to_string(i) + "/text");
    }
  }
  if (!faults.empty()) {
    return wire::Refusal(std::move(faults));
  }
  return {};
}

// By the rules in words; what was decided of a pair is heeded.
[[nodiscard]] Result<std::vector<LookAlike>> alike_at_hand(Context& context, const model::PersonId& id, const model::Person& person) {
  const auto all = context.desk->records().persons();
  if (!all) {
    return all.error();
  }
  const auto links = context.desk->records().links();
  if (!links) {
    return links.error();
  }
  // By what was last learnt of the clinic's people, where somebody asked for it; learning takes seconds and no form waits for it.
  const KeptRegister& kept = context.desk->kept_register();
  std::vector<LookAlike> alike = look_alikes_of(id, person, **all, kept.people != nullptr ? kept.people->model() : match::starting_model((*all)->size()));
  // One with this person is no look-alike; decided not to be stays one, and says so.
  const std::set<model::PersonId> group = (*links)->group_of(id);
  alike.erase(std::remove_if(alike.begin(), alike.end(), [&](const LookAlike& one) { return group.contains(one.person); }), alike.end());
  for (LookAlike& one : alike) {
    const auto found = (*links)->pairs.find(std::minmax(id, one.person));
    if (found != (*links)->pairs.end() && found->second.same == model::SamePerson::no) {
      one.because.push_back({"decided_not_the_same"});
    }
  }
  return alike;
}

[[nodiscard]] Result<PersonReply> reply_of(Context& context, const model::PersonId& id, const Written& written) {
  const auto record = context.desk->records().person(id);
  if (!record) {
    return record.error();
  }
  const ledger::PersonFold fold = (*record)->fold;
  auto alike = alike_at_hand(context, id, fold.person);
  if (!alike) {
    return alike.error();
  }
  PersonReply reply;
  reply.person = fold.person;
  if (!fold.conflicts.empty()) {
    reply.conflicts = fold.conflicts;
  }
  if (!fold.marks.empty()) {
    reply.marks = fold.marks;
  }
  reply.revision = written.revision;
  if (written.repeat) {
    reply.repeat = true;
  }
  reply.look_alikes = std::move(*alike);
  const bool sexed = fold.person.sex == model::Sex::male || fold.person.sex == model::Sex::female;
  if (sexed && fold.person.norm_sex == model::NormSex::unspecified) {
    reply.remarks = std::vector<model::Word>{{"norm_sex_unspecified"}};
  }
  return reply;
}

// Of this person, withdrawn ones left out.
[[nodiscard]] Result<std::vector<std::pair<model::ExamId, model::ExamState>>> exams_of(Context& context, const model::PersonId& person) {
  const auto listed = context.desk->records().exams();
  if (!listed) {
    return listed.error();
  }
  std::vector<std::pair<model::ExamId, model::ExamState>> out;
  for (const auto& [id, row] : **listed) {
    if (row.state != model::ExamState::withdrawn && std::find(row.persons.begin(), row.persons.end(), person) != row.persons.end()) {
      out.emplace_back(id, row.state);
    }
  }
  return out;
}

// Whoever corrects a birth date is told at once what it raises: of a signed exam what nobody was shown when it was signed.
[[nodiscard]] Result<std::vector<ExamAlerts>> alerts_of_exams(Context& context, const model::PersonId& person, const Sentences& sentences) {
  const auto exams = exams_of(context, person);
  if (!exams) {
    return exams.error();
  }
  std::vector<ExamAlerts> out;
  for (const auto& one : *exams) {
    auto alerts = alerts_of(context, one.first, sentences);
    if (!alerts) {
      continue;  // one that does not open is found by ledger.verify
    }
    if (one.second == model::ExamState::signed_) {
      const auto shown = [](const interpret::Alert& alert) { return !alert.call_back.value_or(false) && !alert.corrected; };
      alerts->erase(std::remove_if(alerts->begin(), alerts->end(), shown), alerts->end());
    }
    if (!alerts->empty()) {
      out.push_back({one.first, std::move(*alerts)});
    }
  }
  return out;
}

[[nodiscard]] std::vector<std::size_t> person_nodes(const ledger::Graph& graph) {
  std::vector<std::size_t> nodes;
  for (std::size_t i = 0; i < graph.size(); ++i) {
    if (std::holds_alternative<model::PersonBody>(graph.at(i).body())) {
      nodes.push_back(i);
    }
  }
  return nodes;
}

// An exam's day may rest on a clock that was wrong, so a birth after it is asked back and not refused.
[[nodiscard]] Result<void> check_amended_birth(Context& context, const PersonAmendParams& params) {
  const auto exams = context.desk->records().exams();
  if (!exams) {
    return exams.error();
  }
  DateCheck dates(today_of(context), params.confirmed);
  dates.birth(*params.changes.birth, "/changes/birth");
  for (const auto& [id, row] : **exams) {
    const bool of_person = std::find(row.persons.begin(), row.persons.end(), params.person) != row.persons.end();
    if (const auto examined = days_examined(row); of_person && dates.faults().empty() && examined) {
      dates.born_by(params.changes.birth, *examined, false, "/changes/birth");
    }
  }
  return dates.result();
}

// An age or a sex is what some warnings rest on, in every exam of the person.
[[nodiscard]] Result<void> check_amended_alerts(Context& context, const PersonAmendParams& params, const model::PersonBody& changes) {
  const auto exams = exams_of(context, params.person);
  if (!exams) {
    return exams.error();
  }
  for (const auto& one : *exams) {
    const auto record = context.desk->records().exam(one.first);
    if (!record) {
      continue;  // one that does not open is found by ledger.verify
    }
    const ToJudge now = exam_to_judge(context, **record);
    if (!now.person) {
      continue;
    }
    ToJudge then = now;
    then.person->birth = changes.birth ? changes.birth : now.person->birth;
    then.person->sex = changes.sex.value_or(now.person->sex);
    then.person->norm_sex = changes.norm_sex.value_or(now.person->norm_sex);
    if (auto ends = check_ends_no_alert(context, now, then, params.confirmed, "/changes"); !ends) {
      return ends;
    }
  }
  return {};
}

[[nodiscard]] Result<void> check_amendment(Context& context, const PersonAmendParams& params, const model::PersonBody& changes) {
  const auto record = context.desk->records().person(params.person);
  if (!record) {
    return record.error();
  }
  const std::vector<ledger::Opened>& operations = (*record)->operations;
  if (auto seen = check_seen(params.seen, operations); !seen) {
    return seen;
  }
  if (!changes_anything(changes)) {
    return wire::Fault{"value.empty", "/changes", "at least one member"};
  }
  if (changes.reason) {
    return wire::Fault{"params.unknown_member", "/changes/reason", "the reason beside changes"};
  }
  if (auto good = check_body(changes, "/changes"); !good) {
    return good;
  }
  if (auto known = check_replaces(params.replaces, operations); !known) {
    return known;
  }
  const ledger::Graph graph(operations);
  if (auto named = values_are_named(graph, person_nodes(graph), changes, params.replaces,
                                    [](std::string_view member) { return member == "names" || member == "identifiers"; });
      !named) {
    return named;
  }
  const auto decides = [&changes](const model::Conflict& one) {
    const std::string& about = one.about.text;
    return (about == "birth" && changes.birth) || (about == "sex" && changes.sex) || (about == "norm_sex" && changes.norm_sex) || (about == "home" && changes.home);
  };
  const auto& conflicts = (*record)->fold.conflicts;
  if (std::any_of(conflicts.begin(), conflicts.end(), decides) && (!params.reason || params.reason->text.empty())) {
    return wire::Fault{"value.empty", "/reason", "how it is known: two values stand, and one that somebody wrote is not taken"};
  }
  if (auto good = changes.birth ? check_amended_birth(context, params) : Result<void>(); !good) {
    return good;
  }
  return changes.birth || changes.sex || changes.norm_sex ? check_amended_alerts(context, params, changes) : Result<void>();
}

}  // namespace

Result<PersonReply> person_register(Context& context, const PersonRegisterParams& params) {
  const model::PersonBody body = tidied({params.names, params.birth, params.sex, params.norm_sex, params.home, params.identifiers, std::nullopt});
  if (auto good = check_body(body, ""); !good) {
    return good.error();
  }
  const model::ObjectId object = context.desk->log().object_for(ledger::ObjectType::person, params.request, 0);
  ledger::NewOperation operation = operation_for(context, object, ledger::ObjectType::person, "person", params.request, {});
  operation.body_json = wire::write(body);
  const auto written = write(context, {operation}, [&]() -> Result<void> {
    DateCheck dates(today_of(context), params.confirmed);
    if (body.birth) {
      dates.birth(*body.birth, "/birth");
    }
    return dates.result();
  });
  if (!written) {
    return written.error();
  }
  return reply_of(context, model::PersonId{object.bytes}, *written);
}

Result<PersonReply> person_amend(Context& context, const PersonAmendParams& sent) {
  PersonAmendParams params = sent;
  if (const auto record = context.desk->records().person(sent.person)) {
    params.replaces = values_named(sent.person, sent.replaces, (*record)->operations);
  }
  const auto sentences = Sentences::in(params.language);
  if (!sentences) {
    return sentences.error();
  }
  const model::PersonBody changes = tidied(params.changes);
  const model::ObjectId object = model::as_object(params.person);
  ledger::NewOperation operation = operation_for(context, object, ledger::ObjectType::person, "person_change", params.request, params.seen);
  operation.replaces = params.replaces;
  model::PersonBody body = changes;
  body.reason = params.reason;
  operation.body_json = wire::write(body);
  const auto written = write(context, {operation}, [&] { return check_amendment(context, params, changes); });
  if (!written) {
    return written.error();
  }
  auto reply = reply_of(context, params.person, *written);
  if (reply && (changes.birth || changes.sex || changes.norm_sex)) {
    auto exams = alerts_of_exams(context, params.person, *sentences);
    if (!exams) {
      return exams.error();
    }
    if (!exams->empty()) {
      reply->exams = std::move(*exams);
    }
  }
  return reply;
}

Result<PersonReadResult> person_read(Context& context, const PersonReadParams& params) {
  const auto record = context.desk->records().person(params.person);
  if (!record) {
    return record.error();
  }
  const ledger::PersonFold fold = (*record)->fold;
  const auto exams = context.desk->records().exams();
  if (!exams) {
    return exams.error();
  }
  PersonReadResult result;
  result.person = fold.person;
  if (!fold.conflicts.empty()) {
    result.conflicts = fold.conflicts;
  }
  if (!fold.marks.empty()) {
    result.marks = fold.marks;
  }
  if (!fold.settled.empty()) {
    result.settled = fold.settled;
  }
  result.revision = fold.person.revision.value_or(std::vector<model::EntryId>{});
  const auto links = context.desk->records().links();
  const auto everybody = context.desk->records().persons();
  if (!links || !everybody) {
    return !links ? links.error() : everybody.error();
  }
  const std::set<model::PersonId> group = (*links)->group_of(params.person);
  for (const model::PersonId& one : group) {
    if (const auto found = (*everybody)->find(one); found != (*everybody)->end() && one != params.person) {
      if (!result.linked) {
        result.linked.emplace();
      }
      result.linked->push_back(found->second);
    }
  }
  if (const auto under = (*links)->shown_under.find(params.person); under != (*links)->shown_under.end()) {
    result.shown_under = under->second;
  }
  for (const auto& [id, exam] : **exams) {
    if (touches_group(exam.persons, group)) {
      result.exams.push_back(exam);
    }
  }
  std::stable_sort(result.exams.begin(), result.exams.end(), [](const ledger::ListedExam& a, const ledger::ListedExam& b) {
    return when_done(b).in_order_ms < when_done(a).in_order_ms;
  });
  auto alike = alike_at_hand(context, params.person, fold.person);
  if (!alike) {
    return alike.error();
  }
  result.look_alikes = std::move(*alike);
  return result;
}

}  // namespace limbledger::service
