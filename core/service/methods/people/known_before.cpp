#include "core/service/methods/people/known_before.hpp"

#include "core/ledger/log/log.hpp"

#include <algorithm>
#include <iterator>
#include <utility>

namespace limbledger::service {

namespace {

// Whether it says anything of a person that alerts are judged by.
[[nodiscard]] bool is_of_judged(const ledger::Opened& opened) {
  const auto* body = std::get_if<model::PersonBody>(&opened.body());
  return body == nullptr || body->birth || body->sex || body->norm_sex || !opened.operation().replaces.empty();
}

}  // namespace

std::vector<model::Word> what_differs(const std::optional<model::Person>& before, const std::optional<model::Person>& now) {
  std::vector<model::Word> differs;
  const model::Person none;
  const model::Person& was = before ? *before : none;
  const model::Person& is = now ? *now : none;
  if (!(was.birth == is.birth)) {
    differs.push_back({"person.birth"});
  }
  if (!(was.sex == is.sex)) {
    differs.push_back({"person.sex"});
  }
  if (!(was.norm_sex == is.norm_sex)) {
    differs.push_back({"person.norm_sex"});
  }
  return differs;
}

PersonsKnown::PersonsKnown(Context& context, const ledger::ExamRecord& record) {
  if (record.operations.empty()) {
    return;
  }
  ledger::Stamp opened = record.operations.front().stamp();
  std::vector<model::PersonId> persons = record.fold.persons;
  for (const ledger::Opened& one : record.operations) {
    opened = std::min(opened, one.stamp());
    const auto* opening = std::get_if<model::ExamBody>(&one.body());
    const auto* move = std::get_if<model::MoveBody>(&one.body());
    const auto person = move != nullptr ? std::optional(move->person) : (opening != nullptr ? opening->person : std::nullopt);
    if (person && std::find(persons.begin(), persons.end(), *person) == persons.end()) {
      persons.push_back(*person);
    }
  }
  for (const model::PersonId& person : persons) {
    add(context, person, opened);
  }
  std::sort(corrections_.begin(), corrections_.end());
}

void PersonsKnown::add(Context& context, const model::PersonId& id, const ledger::Stamp& opened) {
  const auto held = context.desk->records().person(id);
  if (!held) {
    return;
  }
  std::vector<const ledger::Opened*> later;
  for (const ledger::Opened& one : (*held)->operations) {
    if (opened < one.stamp() && is_of_judged(one)) {
      later.push_back(&one);
    }
  }
  Known& known = known_.emplace_back();
  known.id = id;
  if (later.empty()) {
    known.versions.push_back({{}, (*held)->fold.person});
    return;
  }
  std::sort(later.begin(), later.end(), [](const ledger::Opened* a, const ledger::Opened* b) { return a->stamp() < b->stamp(); });
  const auto known_by = [&](const ledger::Stamp& stamp, bool with) -> std::optional<model::Person> {
    std::vector<ledger::Opened> until;
    std::copy_if((*held)->operations.begin(), (*held)->operations.end(), std::back_inserter(until),
                 [&](const ledger::Opened& one) { return one.stamp() < stamp || (with && one.stamp() == stamp); });
    const auto fold = ledger::fold_person(id, until);
    return fold ? std::optional(fold->person) : std::nullopt;
  };
  // Somebody who was registered after the exam was opened, or by a clock that is ahead, was known by what was written first.
  std::optional<model::Person> first = known_by(later.front()->stamp(), false);
  for (const ledger::Opened* change : later) {
    std::optional<model::Person> person = known_by(change->stamp(), true);
    if (!first) {
      first = person;
    }
    if (known.versions.empty()) {
      known.versions.push_back({{}, first});
    }
    if (!what_differs(known.versions.back().person, person).empty()) {
      known.versions.push_back({change->stamp(), std::move(person)});
      corrections_.push_back(change->stamp());
    }
  }
}

const std::optional<model::Person>& PersonsKnown::at(const std::optional<model::PersonId>& person, const ledger::Stamp& stamp, bool with) const {
  const auto known = std::find_if(known_.begin(), known_.end(), [&](const Known& one) { return person == one.id; });
  if (known == known_.end()) {
    return nobody_;
  }
  const Version* found = &known->versions.front();
  for (const Version& one : known->versions) {
    if (&one == found || one.from < stamp || (with && one.from == stamp)) {
      found = &one;
    }
  }
  return found->person;
}

}  // namespace limbledger::service
