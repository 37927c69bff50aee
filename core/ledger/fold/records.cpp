#include "core/ledger/fold/records.hpp"

#include "core/wire/read.hpp"
#include "core/wire/write.hpp"

#include <algorithm>

namespace limbledger::ledger {

namespace {

[[nodiscard]] ListedExam to_row(const model::ExamId& id, const ExamFold& fold, std::span<const Opened> operations) {
  ListedExam row;
  row.exam = id;
  row.persons = fold.persons;
  row.state = fold.exam.state.value_or(model::ExamState::open);
  row.complaint = fold.exam.complaint;
  row.side = fold.exam.side;
  row.place = fold.exam.place;
  row.examiner = fold.exam.examiner;
  row.examined_at = fold.exam.examined_at;
  row.examined_on = fold.exam.examined_on;
  row.day_doubtful = fold.exam.day_doubtful;
  row.offset_min = fold.exam.offset_min;
  row.findings.steps = fold.exam.findings ? static_cast<std::int64_t>(fold.exam.findings->size()) : 0;
  if (!open_conflicts(fold, operations).empty()) {
    row.in_conflict = true;
  }
  if (!unseen_marks(fold, operations).empty()) {
    row.unseen = true;
  }
  return row;
}

[[nodiscard]] PersonRow person_row(const PersonFold& fold) { return {fold.person, fold.conflicts.empty() ? std::nullopt : std::optional(true)}; }

[[nodiscard]] std::optional<ExamFold> fold_known(const Log& log, const model::ExamId& id, std::span<const Opened> operations,
                                                 const KeptApart& kept_apart = {}) {
  const ExaminerKeys keys = [&log](const model::ExaminerId& examiner, const PublicKey& pub) { return log.knows_examiner(examiner, pub); };
  return fold_exam(id, operations, keys, log.identity().clinic, kept_apart);
}

// Whether all of its operations could be taken into the fold as it is.
[[nodiscard]] bool grow(ExamRecord& record) {
  const std::span<const Opened> all(record.operations);
  while (record.folded < all.size() && grow_exam(record.fold, all.first(record.folded + 1))) {
    ++record.folded;
  }
  return record.folded > 0 && record.folded == all.size();
}

// Takes the one away that was not asked for the longest, where there are so many.
template <class Kept>
void make_room(Kept& kept, std::size_t max) {
  if (kept.size() >= max) {
    kept.erase(std::min_element(kept.begin(), kept.end(), [](const auto& a, const auto& b) { return a.second->used < b.second->used; }));
  }
}

}  // namespace

std::string list_row(const Log& log, const model::ObjectId& object, ObjectType type, std::span<const Opened> operations) {
  if (type == ObjectType::exam) {
    const model::ExamId id{object.bytes};
    const auto fold = fold_known(log, id, operations);
    return fold ? wire::write(to_row(id, *fold, operations)) : std::string();
  }
  if (type == ObjectType::report) {
    ReportRows rows;
    for (const ReportFold& one : fold_reports(operations)) {
      rows.reports.push_back({one.entry, one.said.from, one.said.to, one.said.place, one.said.report, one.said.after});
    }
    return rows.reports.empty() ? std::string() : wire::write(rows);
  }
  const auto fold = fold_person(model::PersonId{object.bytes}, operations);
  return fold ? wire::write(person_row(*fold)) : std::string();
}

Result<const ExamRecord*> Records::exam(const model::ExamId& id) {
  const auto kept = exams_.find(id);
  if (kept != exams_.end() && grow(*kept->second)) {
    kept->second->used = ++uses_;
    return kept->second.get();
  }
  auto record = kept != exams_.end() ? std::move(kept->second) : std::make_unique<ExamRecord>();
  if (kept != exams_.end()) {
    exams_.erase(kept);
  } else {
    auto operations = log_.operations(model::as_object(id), &record->unopened);
    if (!operations) {
      return operations.error();
    }
    record->operations = std::move(*operations);
  }
  auto fold = fold_known(log_, id, record->operations, kept_apart_);
  if (!fold) {
    return wire::Fault{"exam.unknown", "/exam", "the id of an exam"};
  }
  record->fold = std::move(*fold);
  record->folded = record->operations.size();
  if (record->unopened != 0) {
    if (!record->fold.exam.incomplete) {
      record->fold.exam.incomplete.emplace();
    }
    record->fold.exam.incomplete->push_back({"damaged_entries"});
  }
  make_room(exams_, kept_max);
  record->used = ++uses_;
  return (exams_[id] = std::move(record)).get();
}

Result<const PersonRecord*> Records::person(const model::PersonId& id) {
  if (const auto kept = persons_.find(id); kept != persons_.end()) {
    kept->second->used = ++uses_;
    return kept->second.get();
  }
  auto record = std::make_unique<PersonRecord>();
  auto operations = log_.operations(model::as_object(id));
  if (!operations) {
    return operations.error();
  }
  record->operations = std::move(*operations);
  auto fold = fold_person(id, record->operations);
  if (!fold) {
    return wire::Fault{"person.unknown", "/person", "the id of a person"};
  }
  record->fold = std::move(*fold);
  make_room(persons_, kept_max);
  record->used = ++uses_;
  return (persons_[id] = std::move(record)).get();
}

Result<std::vector<Opened>> Records::clinic_operations() { return log_.operations(log_.clinic_object()); }

Result<std::vector<PlaceFold>> Records::places() {
  const auto operations = clinic_operations();
  if (!operations) {
    return operations.error();
  }
  return fold_places(*operations);
}

Result<const LinkFold*> Records::links() {
  if (!links_) {
    auto links = links_by([](const Opened&) { return true; });
    if (!links) {
      return links.error();
    }
    links_ = std::move(*links);
  }
  return &*links_;
}

Result<LinkFold> Records::links_by(const HadReached& had) {
  auto operations = clinic_operations();
  if (!operations) {
    return operations.error();
  }
  std::erase_if(*operations, [&](const Opened& one) { return !had(one); });
  const ExaminerKeys keys = [this](const model::ExaminerId& examiner, const PublicKey& pub) { return log_.knows_examiner(examiner, pub); };
  return fold_links(*operations, keys, log_.identity().clinic);
}

Result<std::optional<ListedExam>> Records::exam_by(const model::ExamId& id, const HadReached& had) {
  auto operations = log_.operations(model::as_object(id));
  if (!operations) {
    return operations.error();
  }
  std::erase_if(*operations, [&](const Opened& one) { return !had(one); });
  const auto fold = fold_known(log_, id, *operations, kept_apart_);
  return fold ? std::optional(to_row(id, *fold, *operations)) : std::nullopt;
}

Result<std::vector<ListedReport>> Records::reports() {
  std::vector<ListedReport> out;
  for (const auto& [id, object] : log_.index().objects) {
    if (object.type != ObjectType::report) {
      continue;
    }
    if (object.row.empty()) {
      const auto operations = log_.operations(id);
      if (!operations) {
        return operations.error();
      }
      log_.set_row(id, list_row(log_, id, object.type, *operations));
    }
    if (auto rows = wire::read_text<ReportRows>(object.row)) {
      for (ReportRow& row : rows->reports) {
        out.push_back({id, std::move(row)});
      }
    }
  }
  return out;
}

Result<std::vector<ReportFold>> Records::report(const model::ObjectId& object) {
  const auto operations = log_.operations(object);
  if (!operations) {
    return operations.error();
  }
  return fold_reports(*operations);
}

Result<const ExaminerNames*> Records::examiners() {
  if (!examiners_) {
    const auto operations = clinic_operations();
    if (!operations) {
      return operations.error();
    }
    const ExaminerKeys keys = [this](const model::ExaminerId& examiner, const PublicKey& pub) { return log_.knows_examiner(examiner, pub); };
    examiners_ = fold_examiners(*operations, keys, log_.identity().clinic);
  }
  return &*examiners_;
}

void Records::changed(std::span<const Opened> operations) {
  for (const Opened& opened : operations) {
    const model::ObjectId& object = opened.operation().object;
    if (const auto kept = exams_.find(model::ExamId{object.bytes}); kept != exams_.end()) {
      kept->second->operations.push_back(opened);
    }
    const bool of_clinic = object == log_.clinic_object();
    if (std::holds_alternative<model::ReportBody>(opened.body())) {
      listed_.erase(object);
      continue;  // says nothing of an exam or a person
    }
    if (!of_clinic && !std::holds_alternative<model::ExamBody>(opened.body()) && exams_.find(model::ExamId{object.bytes}) == exams_.end()) {
      ++people_changes_;
    }
    if (of_clinic) {
      ++pair_changes_;
      links_.reset();
      examiners_.reset();
    }
    persons_.erase(model::PersonId{object.bytes});
    listed_.erase(object);
  }
}

void Records::forget(std::span<const model::ObjectId> objects) {
  // Whatever came may decide on a pair of records, or be of a person.
  if (!objects.empty()) {
    links_.reset();
    examiners_.reset();
    ++people_changes_;
    ++pair_changes_;
  }
  for (const model::ObjectId& object : objects) {
    exams_.erase(model::ExamId{object.bytes});
    persons_.erase(model::PersonId{object.bytes});
    listed_.erase(object);
  }
}

Result<void> Records::refresh_lists() {
  // A page asks for the lists with each of its rows.
  if (listed_.size() == log_.index().objects.size()) {
    return {};
  }
  std::vector<std::pair<model::ObjectId, std::string>> rows;
  for (const auto& [id, object] : log_.index().objects) {
    if (listed_.contains(id)) {
      continue;
    }
    if (object.type == ObjectType::clinic || object.type == ObjectType::report) {
      listed_.insert(id);  // of neither list, as long as nothing else comes of it
      continue;
    }
    const bool is_exam = object.type == ObjectType::exam;
    if (!object.row.empty()) {
      if (is_exam) {
        if (auto row = wire::read_text<ListedExam>(object.row)) {
          listed_exams_[model::ExamId{id.bytes}] = std::move(*row);
        }
      } else if (auto row = wire::read_text<PersonRow>(object.row)) {
        list(model::PersonId{id.bytes}, std::move(*row));
      }
      listed_.insert(id);
      continue;
    }
    if (is_exam) {
      const auto record = exam(model::ExamId{id.bytes});
      if (record) {
        const ListedExam row = to_row(model::ExamId{id.bytes}, (*record)->fold, (*record)->operations);
        rows.emplace_back(id, wire::write(row));
        listed_exams_[row.exam] = row;
      }
    } else if (const auto record = person(model::PersonId{id.bytes})) {
      const PersonRow row = person_row((*record)->fold);
      rows.emplace_back(id, wire::write(row));
      list(model::PersonId{id.bytes}, row);
    }
    listed_.insert(id);
  }
  for (auto& [id, row] : rows) {
    log_.set_row(id, std::move(row));
  }
  return {};
}

Result<const std::map<model::ExamId, ListedExam>*> Records::exams() {
  if (auto fresh = refresh_lists(); !fresh) {
    return fresh.error();
  }
  return &listed_exams_;
}

Result<const std::map<model::PersonId, model::Person>*> Records::persons() {
  if (auto fresh = refresh_lists(); !fresh) {
    return fresh.error();
  }
  return &listed_persons_;
}

Result<const std::set<model::PersonId>*> Records::persons_in_conflict() {
  if (auto fresh = refresh_lists(); !fresh) {
    return fresh.error();
  }
  return &persons_in_conflict_;
}

void Records::list(const model::PersonId& id, PersonRow row) {
  if (row.in_conflict.value_or(false)) {
    persons_in_conflict_.insert(id);
  } else {
    persons_in_conflict_.erase(id);
  }
  listed_persons_[id] = std::move(row.person);
}

Result<void> Records::save() {
  if (auto fresh = refresh_lists(); !fresh) {
    return fresh;
  }
  return log_.save_index();
}

}  // namespace limbledger::ledger
