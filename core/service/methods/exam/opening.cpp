#include "core/ledger/log/log.hpp"
#include "core/service/admission.hpp"
#include "core/service/methods/exam/exam.hpp"
#include "core/service/methods/exam/watch.hpp"
#include "core/service/methods/people/changes.hpp"
#include "core/service/methods/people/dates.hpp"
#include "core/wire/parse.hpp"
#include "core/wire/write.hpp"

#include <algorithm>

namespace limbledger::service {

namespace {

[[nodiscard]] Result<void> check_place(Context& context, const model::PlaceId& place, const std::string& path) {
  const auto places = context.desk->records().places();
  if (!places) {
    return places.error();
  }
  if (std::none_of(places->begin(), places->end(), [&](const ledger::PlaceFold& fold) { return fold.place.place == place; })) {
    return wire::Fault{"place.unknown", path, "the id of a place"};
  }
  return {};
}

[[nodiscard]] Result<void> check_complaint(Context& context, const model::Word& complaint, const std::string& path) {
  std::string known;
  for (const model::Sequence& sequence : context.edition->sequences()) {
    if (sequence.complaint == complaint) {
      return {};
    }
    known += (known.empty() ? "" : ", ") + sequence.complaint.text;
  }
  return wire::Fault{"params.unknown_word", path, "one of: " + known};
}

[[nodiscard]] Result<void> check_new_dates(Context& context, const ExamOpenParams& params, const std::optional<model::Birth>& birth) {
  DateCheck dates(today_of(context, params.offset_min), params.confirmed);
  // The day is sure where the writer states it and no flat battery can have stamped it.
  const bool timed = params.examined_at && model::can_be_right(*params.examined_at);
  const bool sure = params.examined_on || timed;
  std::optional<Days> examined;
  if (params.examined_on) {
    examined = Days{params.examined_on->first_day(), params.examined_on->last_day()};
    dates.said_on(*params.examined_on, birth, params.injured_on, "/examined_on");
    const Days of_time = timed ? days_of(*params.examined_at, params.offset_min) : *examined;
    if (of_time.last < examined->first || of_time.first > examined->last) {
      return wire::Fault("value.date_order", "/examined_at", "a time of the day that is said, " + params.examined_on->to_text()).with("order", R"("exam_another_day")");
    }
  } else if (params.examined_at) {
    examined = days_of(*params.examined_at, params.offset_min);
    dates.performed(*params.examined_at, params.offset_min, "/examined_at");
  } else if (const auto today = today_of(context, params.offset_min)) {
    examined = Days{today->latest, today->latest};
  }
  if (examined && !params.examined_on) {
    dates.born_by(birth, *examined, sure, "/person");
  }
  if (params.injured_on) {
    dates.injured(*params.injured_on, params.examined_on ? std::nullopt : examined, sure, "/injured_on");
    dates.injured_after_birth(*params.injured_on, birth, true, "/injured_on");
  }
  return dates.result();
}

// The exam that is looked at again: an earlier one of the same person, not void, and only with the complaint review.
[[nodiscard]] Result<void> check_reviews(Context& context, const model::ExamId& reviews, const std::optional<model::ExamId>& by,
                                         const std::optional<model::PersonId>& person, const model::Word& complaint, const std::string& path) {
  const wire::Fault fault{"exam.not_reviewed", path, "an earlier exam of the same person, with the complaint review"};
  if (complaint.text != "review" || reviews == by) {
    return fault;
  }
  const auto record = context.desk->records().exam(reviews);
  if (!record) {
    return wire::Fault{"exam.unknown", path, "the id of an exam"};
  }
  const model::Exam& exam = (*record)->fold.exam;
  return exam.person == person && exam.state != model::ExamState::withdrawn ? Result<void>() : Result<void>(fault);
}

[[nodiscard]] Result<void> check_new_exam(Context& context, const ExamOpenParams& params) {
  std::optional<model::Birth> birth;
  if (params.person) {
    const auto person = context.desk->records().person(*params.person);
    if (!person) {
      return person.error();
    }
    birth = (*person)->fold.person.birth;
    if (auto named = check_identified(params.identified, (*person)->fold.person, params.confirmed); !named) {
      return named;
    }
  }
  if (auto dates = check_new_dates(context, params, birth); !dates) {
    return dates;
  }
  if (params.place) {
    if (auto place = check_place(context, *params.place, "/place"); !place) {
      return place;
    }
  }
  if (params.reviews) {
    if (auto reviews = check_reviews(context, *params.reviews, std::nullopt, params.person, params.complaint, "/reviews"); !reviews) {
      return reviews;
    }
  }
  return check_complaint(context, params.complaint, "/complaint");
}

// The openings that stood for a writer who was shown `seen`: what an amendment replaces, the same on every repeat.
[[nodiscard]] std::vector<const ledger::Opened*> openings_seen(const ledger::Graph& graph, const std::vector<model::EntryId>& seen) {
  const std::vector<bool> known = graph.closure(seen);
  std::vector<const ledger::Opened*> out;
  for (std::size_t i = 0; i < graph.size(); ++i) {
    if (!known[i] || !std::holds_alternative<model::ExamBody>(graph.at(i).body())) {
      continue;
    }
    bool amended = false;
    for (std::size_t other = 0; other < graph.size(); ++other) {
      const model::Operation& later = graph.at(other).operation();
      amended = amended || (known[other] && other != i && std::holds_alternative<model::ExamBody>(graph.at(other).body()) &&
                            std::any_of(later.replaces.begin(), later.replaces.end(), [&](const model::EntryId& entry) { return graph.find(entry) == i; }));
    }
    if (!amended) {
      out.push_back(&graph.at(i));
    }
  }
  return out;
}

// What stood, with the changes; a member that two amendments gave differently must be among the changes.
[[nodiscard]] Result<model::ExamBody> amended(const std::vector<const ledger::Opened*>& openings, const ExamAmendParams& params) {
  const ExamChanges& changes = params.changes;
  const std::vector<model::Word> not_known = params.not_known.value_or(std::vector<model::Word>{});
  if (openings.empty()) {
    return wire::Fault{"revision.unknown", "/seen", "a revision that holds the opening of the exam"};
  }
  const auto& first = std::get<model::ExamBody>(openings.front()->body());
  model::ExamBody body = first;
  std::vector<wire::Fault> faults;
  const auto take = [&](std::string_view name, auto member, const auto& change) {
    const bool agree = std::all_of(openings.begin(), openings.end(), [&](const ledger::Opened* opening) {
      return std::get<model::ExamBody>(opening->body()).*member == first.*member;
    });
    const bool unknown = std::find(not_known.begin(), not_known.end(), model::Word{std::string(name)}) != not_known.end();
    if (change && unknown) {
      faults.emplace_back("value.all_or_one", "/not_known", std::string(name) + " either here or in changes");
    } else if (change) {
      body.*member = *change;
    } else if (unknown) {
      body.*member = {};
    } else if (!agree) {
      faults.emplace_back("params.missing", "/changes/" + std::string(name), "which of the two values holds; where neither is known, its name in not_known");
    }
  };
  take("complaint", &model::ExamBody::complaint, changes.complaint);
  take("side", &model::ExamBody::side, changes.side);
  take("setting", &model::ExamBody::setting, changes.setting);
  take("place", &model::ExamBody::place, changes.place);
  take("offset_min", &model::ExamBody::offset_min, changes.offset_min);
  take("injured_on", &model::ExamBody::injured_on, changes.injured_on);
  // Who said no day contradicts nobody.
  for (const ledger::Opened* opening : openings) {
    const auto& said = std::get<model::ExamBody>(opening->body()).examined_on;
    if (!body.examined_on) {
      body.examined_on = said;
    } else if (said && !changes.examined_on && !(*said == *body.examined_on)) {
      faults.emplace_back("params.missing", "/changes/examined_on", "which of the two days holds");
      break;
    }
  }
  if (changes.examined_on) {
    body.examined_on = changes.examined_on;
  }
  take("reviews", &model::ExamBody::reviews, changes.reviews);
  take("supervised", &model::ExamBody::supervised, changes.supervised);
  for (std::size_t i = 0; i < not_known.size(); ++i) {
    if (not_known[i].text != "side" && not_known[i].text != "place" && not_known[i].text != "injured_on") {
      faults.emplace_back("params.unknown_word", "/not_known" + wire::pointer_step(i), "one of: side, place, injured_on");
    }
  }
  if (!faults.empty()) {
    return wire::Refusal(std::move(faults));
  }
  body.reason = params.reason;
  return body;
}

[[nodiscard]] Result<void> check_changes(Context& context, const ExamAmendParams& params, const model::Exam& exam, const model::ExamBody& body) {
  if (params.changes.complaint) {
    if (auto complaint = check_complaint(context, *params.changes.complaint, "/changes/complaint"); !complaint) {
      return complaint;
    }
  }
  if (params.changes.place) {
    if (auto place = check_place(context, *params.changes.place, "/changes/place"); !place) {
      return place;
    }
  }
  if (params.changes.reviews) {
    if (auto reviews = check_reviews(context, *params.changes.reviews, exam.exam, exam.person, body.complaint, "/changes/reviews"); !reviews) {
      return reviews;
    }
  }
  if (!params.changes.injured_on && !params.changes.examined_on) {
    return {};
  }
  const auto birth = birth_of(context, exam.person);
  if (!birth) {
    return birth.error();
  }
  DateCheck dates(today_of(context, body.offset_min), params.confirmed);
  if (params.changes.examined_on) {
    dates.said_on(*params.changes.examined_on, *birth, body.injured_on, "/changes/examined_on");
  }
  if (params.changes.injured_on) {
    model::Exam then = exam;
    then.offset_min = body.offset_min;
    then.examined_on = body.examined_on;
    // Against a day that is said with it stands said_on.
    dates.injured(*params.changes.injured_on, params.changes.examined_on ? std::nullopt : days_examined(then), body.examined_on.has_value(), "/changes/injured_on");
    dates.injured_after_birth(*params.changes.injured_on, *birth, true, "/changes/injured_on");
  } else if (exam.day_doubtful && !exam.examined_on && exam.examined_at && body.injured_on == date_of(*exam.examined_at, body.offset_min ? body.offset_min->steps : 0)) {
    dates.same_clock("/changes/examined_on", *body.injured_on);
  }
  return dates.result();
}

}  // namespace

Result<ExamReply> exam_open(Context& context, const ExamOpenParams& params) {
  const model::ObjectId object = context.desk->log().object_for(ledger::ObjectType::exam, params.request, 0);
  const model::ExamId exam{object.bytes};
  if (context.caller.scope == Scope::kiosk) {
    if (params.person || params.identified) {
      return wire::Fault{"token.scope", "/person", "an exam without a person; the examiner adds it"};
    }
    if (params.reviews || params.supervised) {
      return wire::Fault{"token.scope", params.reviews ? "/reviews" : "/supervised", "nothing that is between examiners"};
    }
    if (context.caller.exam ? *context.caller.exam != exam : context.desk->log().index().requests.contains(params.request)) {
      return wire::Fault{"exam.not_yours", "/request", "the exam of this token"};
    }
  }
  ledger::NewOperation operation = operation_for(context, object, ledger::ObjectType::exam, "exam", params.request, {});
  operation.examined_at = params.examined_at;
  if (!operation.examined_at) {
    // A repeat must not be another exam because time went on.
    const auto before = context.desk->records().exam(exam);
    operation.examined_at = before ? (*before)->fold.exam.examined_at : model::Instant{context.desk->world().now().wall_ms};
  }
  model::ExamBody body;
  body.person = params.person;
  body.complaint = params.complaint;
  body.side = params.side;
  body.setting = params.setting;
  body.place = params.place;
  body.offset_min = params.offset_min;
  body.injured_on = params.injured_on;
  body.identified = params.identified;
  body.reviews = params.reviews;
  body.supervised = params.supervised;
  body.examined_on = params.examined_on;
  operation.body_json = wire::write(body);
  const auto written = write(context, {operation}, [&] { return check_new_exam(context, params); });
  if (!written) {
    return written.error();
  }
  if (context.caller.scope == Scope::kiosk) {
    context.caller.exam = exam;
    if (context.admission != nullptr) {
      context.admission->bind(exam);
    }
  }
  auto reply = exam_reply(context, exam, *written);
  if (reply && reply->exam.day_doubtful && !reply->exam.examined_on) {
    reply->remarks = std::vector<model::Word>{{"clock_suspect"}};
  }
  return reply;
}

Result<ExamReply> exam_amend(Context& context, const ExamAmendParams& params) {
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
  if (!changes_anything(params.changes) && (!params.not_known || params.not_known->empty())) {
    return wire::Fault{"value.empty", "/changes", "at least one member, here or in not_known"};
  }
  const ledger::Graph graph((*record)->operations);
  const auto openings = openings_seen(graph, params.seen);
  const auto body = amended(openings, params);
  if (!body) {
    return body.error();
  }
  ledger::NewOperation operation =
      operation_for(context, model::as_object(params.exam), ledger::ObjectType::exam, "exam", params.request, params.seen);
  for (const ledger::Opened* opening : openings) {
    operation.replaces.push_back(opening->entry());
  }
  operation.body_json = wire::write(*body);
  const auto written = write(context, {operation}, [&]() -> Result<void> {
    if (auto open = exam_takes_changes(**record); !open) {
      return open;
    }
    for (const ledger::Opened* opening : openings) {
      if (opening->newer_parts()) {
        return wire::Fault{"format.newer", "/seen", "an opening that this edition can write whole"};
      }
    }
    if (auto free = nothing_came_since((*record)->fold.opening_heads, operation.replaces); !free) {
      return free;
    }
    if (stands_in_conflict((*record)->fold.exam, "exam") && (!params.reason || params.reason->text.empty())) {
      return wire::Fault{"value.empty", "/reason", "why this holds: two versions stand, and one that somebody wrote is not taken"};
    }
    if (auto good = check_changes(context, params, (*record)->fold.exam, *body); !good) {
      return good;
    }
    const ToJudge now = exam_to_judge(context, **record);
    ToJudge then = now;
    then.exam.complaint = body->complaint;
    then.exam.side = body->side;
    then.exam.injured_on = body->injured_on;
    then.exam.examined_on = body->examined_on;
    return check_ends_no_alert(context, now, then, params.confirmed, "/changes");
  });
  return written ? judged_reply(context, params.exam, *written, *sentences) : Result<ExamReply>(written.error());
}

}  // namespace limbledger::service
