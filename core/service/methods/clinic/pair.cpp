#include "core/service/methods/clinic/pair.hpp"

#include "core/ledger/log/log.hpp"
#include "core/service/desk.hpp"
#include "core/service/kept_register.hpp"
#include "core/service/methods/say/names.hpp"
#include "core/wire/write.hpp"

#include <algorithm>
#include <set>

namespace limbledger::service {

namespace {

constexpr std::int64_t pairs_a_page = 50;

[[nodiscard]] DecidedPair tell_decided(Context& context, const ledger::Decided& one) {
  DecidedPair out{one.entry, one.same, one.reason, one.shown_under, one.by, std::nullopt, one.at};
  if (one.by) {
    out.by_name = wire::Remark{examiner_in_words(context, *one.by)};
  }
  return out;
}

// What was decided and stands; against each other, or against what joins them otherwise, first of all.
[[nodiscard]] bool stands_against(const ledger::PairFold& pair) { return pair.in_conflict || pair.contradicted; }

[[nodiscard]] Result<std::set<match::PersonPair>> decided_as(Context& context, std::optional<model::SamePerson> same) {
  const auto links = context.desk->records().links();
  if (!links) {
    return links.error();
  }
  std::set<match::PersonPair> out;
  for (const auto& [persons, pair] : (*links)->pairs) {
    if (same ? pair.same == same : (pair.same.has_value() || pair.in_conflict)) {
      out.insert(persons);
    }
  }
  return out;
}

[[nodiscard]] std::vector<model::EntryId> heads_of_pair(const ledger::LinkFold& links, const ledger::PersonPair& persons) {
  std::vector<model::EntryId> heads;
  if (const auto found = links.pairs.find(persons); found != links.pairs.end()) {
    for (const ledger::Decided& one : found->second.heads) {
      heads.push_back(one.entry);
    }
  }
  return heads;
}

// Whether the two would stand against what was decided of others: a yes that joins two who are not the same, a no inside a group.
[[nodiscard]] bool contradicts(const ledger::LinkFold& links, const ledger::PersonPair& persons, model::SamePerson same) {
  const std::set<model::PersonId> first = links.group_of(persons.first);
  const std::set<model::PersonId> second = links.group_of(persons.second);
  if (same == model::SamePerson::no) {
    // Reached by this pair's own yes alone it is no contradiction: the no takes its place.
    const auto own = links.pairs.find(persons);
    const bool by_itself = own != links.pairs.end() && own->second.same == model::SamePerson::yes && first.size() == 2;
    return first.contains(persons.second) && !by_itself;
  }
  if (same == model::SamePerson::undo) {
    return false;
  }
  return std::any_of(links.pairs.begin(), links.pairs.end(), [&](const auto& row) {
    const ledger::PairFold& pair = row.second;
    const bool across = (first.contains(pair.persons.first) && second.contains(pair.persons.second)) ||
                        (first.contains(pair.persons.second) && second.contains(pair.persons.first));
    return across && pair.persons != persons && pair.same == model::SamePerson::no;
  });
}

[[nodiscard]] Result<void> check_decision(Context& context, const PairDecideParams& params, const ledger::PersonPair& persons) {
  for (std::size_t i = 0; i < params.persons.size(); ++i) {
    if (const auto known = context.desk->records().person(params.persons[i]); !known) {
      return wire::Fault{"person.unknown", "/persons/" + std::to_string(i), "the id of a person"};
    }
  }
  if (params.shown_under && (params.same != model::SamePerson::yes ||
                             std::find(params.persons.begin(), params.persons.end(), *params.shown_under) == params.persons.end())) {
    return wire::Fault{"person.unknown", "/shown_under", "one of the two, where they are the same"};
  }
  const auto links = context.desk->records().links();
  if (!links) {
    return links.error();
  }
  const auto found = (*links)->pairs.find(persons);
  const std::vector<model::EntryId> heads = heads_of_pair(**links, persons);
  for (std::size_t i = 0; i < params.seen.size(); ++i) {
    const bool known = found != (*links)->pairs.end() && std::any_of(found->second.history.begin(), found->second.history.end(),
                                                                     [&](const ledger::Decided& one) { return one.entry == params.seen[i]; });
    if (!known) {
      return wire::Fault{"revision.unknown", "/seen/" + std::to_string(i), "a decision about these two"};
    }
  }
  for (const model::EntryId& head : heads) {
    if (std::find(params.seen.begin(), params.seen.end(), head) == params.seen.end()) {
      return wire::Fault{"finding.stale", "/seen", "the decisions that stand about these two", head.to_text()};
    }
  }
  if (params.same == model::SamePerson::undo &&
      (found == (*links)->pairs.end() || (!found->second.same && !found->second.in_conflict))) {
    return wire::Fault{"pair.undecided", "/same", "yes or no"};
  }
  if (contradicts(**links, persons, params.same)) {
    return wire::Fault{"pair.contradicts", "/same", "what fits the other decisions about these people"};
  }
  if (params.same == model::SamePerson::yes && !confirms(params.confirmed, "value.unusual")) {
    std::set<model::Sex> sexes;  // of all who are one with either
    for (const model::PersonId& id : {persons.first, persons.second}) {
      for (const model::PersonId& one : (*links)->group_of(id)) {
        const auto record = context.desk->records().person(one);
        sexes.insert(record ? (*record)->fold.person.sex : model::Sex::unknown);
      }
    }
    if (sexes.contains(model::Sex::female) && sexes.contains(model::Sex::male)) {
      return wire::Fault("value.unusual", "/same", "no: one record says female, another male").with("order", R"("two_sexes")");
    }
  }
  return {};
}

// Made ready, and compared no further.
[[nodiscard]] Result<const match::Register*> register_at_hand(Context& context) {
  KeptRegister& kept = context.desk->kept_register();
  ledger::Records& records = context.desk->records();
  if (kept.people != nullptr && kept.of_changes == records.people_changes()) {
    return kept.people.get();
  }
  const auto people = records.persons();
  if (!people) {
    return people.error();
  }
  kept = {std::make_unique<match::Register>(**people), records.people_changes(), std::nullopt, {}};
  return kept.people.get();
}

}  // namespace

Result<const std::vector<match::PersonPair>*> undecided_pairs(Context& context) {
  const auto made = register_at_hand(context);
  const auto one = decided_as(context, model::SamePerson::yes);
  const auto two = decided_as(context, model::SamePerson::no);
  const auto decided = decided_as(context, std::nullopt);
  const auto links = context.desk->records().links();
  if (!made || !one || !two || !decided || !links) {
    return !made ? made.error() : (!one ? one.error() : (!two ? two.error() : (!decided ? decided.error() : links.error())));
  }
  KeptRegister& kept = context.desk->kept_register();
  const std::uint64_t now = context.desk->records().pair_changes();
  const std::size_t before = kept.people->done();
  const bool all = kept.people->compare_more(compared_a_call);
  // Learning takes as long as comparing half a call's pairs: after more than that it is left to the next call.
  const bool is_tired = kept.people->done() - before > compared_a_call / 2;
  if (!all || (is_tired && !kept.of_pair_changes)) {
    kept.undecided.clear();
  } else if (kept.of_pair_changes != now) {
    kept.people->learn_from(*one, *two);
    kept.undecided.clear();
    for (const match::Candidate& candidate : kept.people->candidates(*decided)) {
      // Joined by a third record already: there is nothing to ask.
      if (!(*links)->group_of(candidate.pair.first).contains(candidate.pair.second)) {
        kept.undecided.push_back(candidate.pair);
      }
    }
    kept.of_pair_changes = now;
  }
  return &kept.undecided;
}

std::optional<Looking> still_looking(Context& context) {
  const KeptRegister& kept = context.desk->kept_register();
  if (kept.people == nullptr || kept.of_pair_changes) {
    return std::nullopt;
  }
  return Looking{{static_cast<std::int64_t>(kept.people->done())}, {static_cast<std::int64_t>(kept.people->to_compare())}};
}

Result<ToldPair> tell_pair(Context& context, const match::PersonPair& persons) {
  const auto people = register_at_hand(context);
  const auto links = context.desk->records().links();
  const auto all = context.desk->records().persons();
  if (!people || !links || !all) {
    return !people ? people.error() : (!links ? links.error() : all.error());
  }
  ToldPair out;
  out.persons = {persons.first, persons.second};
  for (const model::PersonId& id : out.persons) {
    if (const auto found = (*all)->find(id); found != (*all)->end()) {
      out.people.push_back(found->second);
    }
  }
  std::vector<model::Word> remarks;
  if (const auto candidate = (*people)->of(persons.first, persons.second)) {
    out.weight = to_bits(candidate->weight);
    out.strong = candidate->strong;
    out.working.emplace();
    for (const match::FieldWeight& one : candidate->working) {
      out.working->push_back({one.field, one.level, to_bits(one.weight)});
    }
    if (candidate->perhaps_twins) {
      remarks.push_back({"perhaps_twins"});
    }
    if (candidate->perhaps_kin) {
      remarks.push_back({"perhaps_parent_and_child"});
    }
  }
  if (const auto found = (*links)->pairs.find(persons); found != (*links)->pairs.end()) {
    out.same = found->second.same;
    for (const ledger::Decided& one : found->second.heads) {
      out.decided.push_back(tell_decided(context, one));
      out.revision.push_back(one.entry);
    }
    if (found->second.in_conflict) {
      remarks.push_back({"decided_differently"});
    }
    if (found->second.contradicted) {
      remarks.push_back({"contradicted"});
    }
  }
  if (!remarks.empty()) {
    out.remarks = std::move(remarks);
  }
  return out;
}

Result<PairListResult> pair_list(Context& context, const PairListParams& params) {
  const auto links = context.desk->records().links();
  if (!links) {
    return links.error();
  }
  std::vector<match::PersonPair> wanted;
  for (const bool against : {true, false}) {
    for (const auto& [persons, pair] : (*links)->pairs) {
      const bool listed = stands_against(pair) || (params.decided.value_or(false) && pair.same.has_value());
      if (stands_against(pair) == against && listed) {
        wanted.push_back(persons);
      }
    }
  }
  if (!params.decided.value_or(false)) {
    const auto undecided = undecided_pairs(context);
    if (!undecided) {
      return undecided.error();
    }
    wanted.insert(wanted.end(), (*undecided)->begin(), (*undecided)->end());
  }
  const auto people = register_at_hand(context);
  const auto all = context.desk->records().persons();
  if (!people || !all) {
    return !people ? people.error() : all.error();
  }
  PairListResult result;
  result.total.steps = static_cast<std::int64_t>(wanted.size());
  result.people.steps = static_cast<std::int64_t>((*all)->size());
  result.learnt = (*people)->model().learnt;
  if (!params.decided.value_or(false)) {
    result.looking = still_looking(context);
  }
  const auto from = static_cast<std::size_t>(params.from ? params.from->steps : 0);
  const auto limit = static_cast<std::size_t>(params.limit ? params.limit->steps : pairs_a_page);
  for (std::size_t i = from; i < wanted.size() && i < from + limit; ++i) {
    auto told = tell_pair(context, wanted[i]);
    if (!told) {
      return told.error();
    }
    result.pairs.push_back(std::move(*told));
  }
  return result;
}

Result<PairDecideResult> pair_decide(Context& context, const PairDecideParams& params) {
  if (params.persons.size() != 2 || params.persons[0] == params.persons[1]) {
    return wire::Fault{"value.empty", "/persons", "two different people"};
  }
  const ledger::PersonPair persons = std::minmax(params.persons[0], params.persons[1]);
  ledger::Log& log = context.desk->log();
  model::LinkBody body;
  body.link = model::LinkId{log.object_for(ledger::ObjectType::link, params.request, 0).bytes};
  body.persons = {persons.first, persons.second};
  body.same = params.same;
  body.reason = params.reason;
  body.shown_under = params.shown_under;
  ledger::NewOperation operation = operation_for(context, log.clinic_object(), ledger::ObjectType::clinic, "link", params.request, params.seen);
  operation.replaces = params.seen;
  operation.body_json = wire::write(body);
  operation.sign = true;
  const auto written = write(context, {operation}, [&] { return check_decision(context, params, persons); });
  if (!written) {
    return written.error();
  }
  const auto told = tell_pair(context, persons);
  const auto links = context.desk->records().links();
  if (!told || !links) {
    return !told ? told.error() : links.error();
  }
  PairDecideResult result;
  result.pair = *told;
  for (const model::PersonId& one : (*links)->group_of(params.persons[0])) {
    result.group.push_back(one);
  }
  if (const auto under = (*links)->shown_under.find(params.persons[0]); under != (*links)->shown_under.end()) {
    result.shown_under = under->second;
  }
  result.revision = written->revision;
  if (written->repeat) {
    result.repeat = true;
  }
  return result;
}

}  // namespace limbledger::service
