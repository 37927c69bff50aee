#include "core/ledger/log/log.hpp"

#include "core/ledger/fold/fold.hpp"

#include "core/wire/write.hpp"

#include <algorithm>

namespace limbledger::ledger {

// What one commit is made of until the store has taken it.
struct Log::Commit {
  Joint joint;
  HybridClock clock;
  Reading reading;
  std::vector<Row> rows;
  std::vector<std::pair<std::size_t, const ObjectKey*>> sealed;  // rows that are operations, and under which key
  std::vector<Opened> opened;                             // of these, as far as opened yet
  std::map<model::ObjectId, ObjectKey> fresh_keys;
  std::map<model::ObjectId, model::EntryId> newest;  // of the objects written so far
};

const ObjectKey& Log::key_to_write(const NewOperation& operation, Commit& commit) {
  const auto known = index_.objects.find(operation.object);
  if (known != index_.objects.end() && !known->second.keys.empty()) {
    return known->second.keys.back();
  }
  if (const auto fresh = commit.fresh_keys.find(operation.object); fresh != commit.fresh_keys.end()) {
    return fresh->second;
  }
  Secret32 secret;
  world_.random(secret.room());
  Secret32 ephemeral;
  world_.random(ephemeral.room());
  const ObjectKey& key = commit.fresh_keys.emplace(operation.object, ObjectKey(secret, operation.object)).first->second;
  Row row;
  row.body = identity_.sealed_to ? wrap(key, identity_.sealed_to->first, identity_.sealed_to->second, ephemeral).to_bytes()
                                 : wrap(key, identity_.epochs.rbegin()->first, identity_.epochs.rbegin()->second.pub(), ephemeral).to_bytes();
  Header header;
  header.kind = Kind::key;
  header.body_length = static_cast<std::uint32_t>(row.body.size());
  header.stamp = commit.clock.next(commit.reading);
  header.kid = key.kid();
  row.header = header.to_bytes();
  link(identity_.replica(), commit.joint, row);
  commit.rows.push_back(std::move(row));
  return key;
}

Result<model::Operation> Log::describe(const NewOperation& wanted, std::size_t part, std::size_t of, const model::EditionId& edition,
                                       const SignKey* examiner_key, Commit& commit) {
  model::Operation operation;
  operation.v.steps = model::operation_version;
  operation.min.steps = 1;
  operation.op.text = wanted.op;
  operation.request = wanted.request;
  operation.part.steps = static_cast<std::int64_t>(part);
  operation.of.steps = static_cast<std::int64_t>(of);
  operation.object = wanted.object;
  operation.after = wanted.after;
  if (const auto earlier = commit.newest.find(wanted.object); earlier != commit.newest.end()) {
    operation.after = {earlier->second};  // which itself names what the writer was shown
  }
  operation.replaces = wanted.replaces;
  operation.by = wanted.by;
  operation.examined_at = wanted.examined_at;
  operation.at.wall_ms.steps = commit.reading.wall_ms;
  operation.at.up_ms.steps = commit.reading.up_ms;
  operation.at.boot.bytes = commit.reading.boot;
  operation.at.clock = static_cast<model::ClockWord>(commit.reading.clock);
  operation.edition = edition;
  operation.body.json = wanted.body_json;
  if (operation.after.size() > model::pointers_max || operation.replaces.size() > model::pointers_max) {
    return wire::Fault{"limit.pointers", "", "at most 64 pointers"};
  }
  if (!wanted.sign) {
    return operation;
  }
  if (examiner_key == nullptr || !wanted.by) {
    return wire::Fault{"ledger.locked", "", "a ledger unlocked by an examiner's passphrase"};
  }
  auto all = operations(wanted.object);
  if (!all) {
    return all.error();
  }
  if (auto done = open_sealed(commit); !done) {
    return done.error();
  }
  all->insert(all->end(), commit.opened.begin(), commit.opened.end());
  auto covered = seen_entries(*all, operation.after);
  if (!covered) {
    return wire::Fault{"revision.unknown", "/seen", "a revision of this record"};
  }
  const Covered digest = cover(*covered);
  const SignedMatter matter{identity_.clinic, wanted.object, *wanted.by, std::move(*covered), as_bytes(operation.body.json)};
  model::ExaminerSignature signature;
  signature.key.bytes = examiner_key->pub();
  signature.count.steps = digest.count;
  signature.covers.bytes = digest.digest;
  signature.signature.bytes = sign_matter(*examiner_key, matter);
  operation.sig = signature;
  return operation;
}

Result<void> Log::write_operation(const model::Operation& operation, const NewOperation& wanted, bool last, Commit& commit) {
  const ObjectKey& key = key_to_write(wanted, commit);
  const std::string json = wire::write(operation);
  if (json.size() > plaintext_size_max) {
    return wire::Fault{"limit.size", "", "at most 64 KiB an operation", std::to_string(json.size())};
  }
  Header header = sealed_header(Kind::op, commit.clock.next(commit.reading), key, json.size());
  header.flags = last ? flag_last_of_commit : std::uint8_t{0};
  Row row;
  row.header = header.to_bytes();
  auto body = seal(key, {identity_.clinic, identity_.replica(), commit.joint.seq + 1}, row.header, as_bytes(json));
  if (!body) {
    return body.error();
  }
  row.body = std::move(*body);
  link(identity_.replica(), commit.joint, row);
  commit.newest[wanted.object] = entry_id(row.hash);
  commit.sealed.emplace_back(commit.rows.size(), &key);
  commit.rows.push_back(std::move(row));
  return {};
}

// What was sealed is opened again, so that what folds is what is kept: after the store has it, unless a signature needs it before.
Result<void> Log::open_sealed(Commit& commit) {
  for (std::size_t i = commit.opened.size(); i < commit.sealed.size(); ++i) {
    auto opened = open_operation(identity_.clinic, *commit.sealed[i].second, commit.rows[commit.sealed[i].first]);
    if (!opened) {
      return opened.error();
    }
    commit.opened.push_back(std::move(*opened));
  }
  return {};
}

Result<void> Log::keep(Commit& commit) {
  const Head head = sign_head(identity_.device_key, identity_.clinic, identity_.replica(), commit.joint.seq, commit.joint.hash);
  if (auto stored = store_.append(commit.rows, {&head, 1}, {}); !stored) {
    return stored;
  }
  joint_ = commit.joint;
  if (auto done = open_sealed(commit); !done) {
    damage_.push_back(done.error().faults.front());  // memory that does not hold what was put into it: nothing more is written
    return done;
  }
  clock_ = commit.clock;
  index_.leaves[identity_.replica()] = {joint_};
  index_.newest = clock_.last();
  index_.entry_count += commit.rows.size();
  unsaved_ += commit.rows.size();
  for (const auto& [object, key] : commit.fresh_keys) {
    index_.objects[object].keys.push_back(key);
    index_.object_of[key.kid()] = object;
  }
  for (const Opened& opened : commit.opened) {
    note(opened);
  }
  return {};
}

Result<std::vector<Opened>> Log::append(std::span<const NewOperation> operations, const model::EditionId& edition, const SignKey* examiner_key) {
  if (!damage_.empty()) {
    return damage_.front();
  }
  Commit commit{joint_, clock_, world_.now(), {}, {}, {}, {}, {}};
  for (std::size_t i = 0; i < operations.size(); ++i) {
    const auto operation = describe(operations[i], i + 1, operations.size(), edition, examiner_key, commit);
    if (!operation) {
      return operation.error();
    }
    if (auto written = write_operation(*operation, operations[i], i + 1 == operations.size(), commit); !written) {
      return written.error();
    }
  }
  if (auto kept = keep(commit); !kept) {
    return kept.error();
  }
  return std::move(commit.opened);
}

Result<void> Log::introduce_examiner(const model::ExaminerId& examiner, const SignKey& key) {
  if (knows_examiner(examiner, key.pub())) {
    return {};
  }
  Commit commit{joint_, clock_, world_.now(), {}, {}, {}, {}, {}};
  const ExaminerBody body = prove_examiner(key, identity_.clinic, identity_.replica(), examiner);
  Row row;
  row.body = body.to_bytes();
  Header header;
  header.kind = Kind::examiner;
  header.flags = flag_last_of_commit;
  header.body_length = static_cast<std::uint32_t>(row.body.size());
  header.stamp = commit.clock.next(commit.reading);
  row.header = header.to_bytes();
  link(identity_.replica(), commit.joint, row);
  commit.rows.push_back(std::move(row));
  if (auto kept = keep(commit); !kept) {
    return kept;
  }
  index_.examiners.push_back({examiner, key.pub()});
  return {};
}

Result<std::vector<Opened>> Log::operations(const model::ObjectId& object, std::size_t* unopened) {
  std::vector<Opened> out;
  const auto found = index_.objects.find(object);
  if (found == index_.objects.end()) {
    return out;
  }
  for (const ObjectKey& key : found->second.keys) {
    const auto rows = store_.read_kid(key.kid());
    if (!rows) {
      return rows.error();
    }
    for (const Row& row : *rows) {
      const auto header = Header::from_bytes(row.header);
      if (!header || header->kind != Kind::op || row.state != RowState::whole) {
        continue;
      }
      auto opened = open_operation(identity_.clinic, key, row);
      if (opened) {
        out.push_back(std::move(*opened));
      } else if (unopened != nullptr) {
        ++*unopened;
      }
    }
  }
  return out;
}

void Log::note(const Opened& opened) {
  const model::Operation& operation = opened.operation();
  Index::Object& object = index_.objects[operation.object];
  const bool of_whichever = std::holds_alternative<model::PutOffBody>(opened.body());  // tells nothing of the record that it lives in
  if (std::holds_alternative<model::PersonBody>(opened.body())) {
    object.type = ObjectType::person;
  } else if (std::holds_alternative<model::ReportBody>(opened.body())) {
    object.type = ObjectType::report;
  } else if (opened.readable() && !is_of_clinic(opened.body()) && !of_whichever) {
    object.type = ObjectType::exam;
  }
  object.row.clear();
  index_.requests.emplace(operation.request, operation.object);
}

model::ObjectId Log::object_for(ObjectType type, const model::RequestId& request, std::uint16_t index) const {
  return object_of(identity_.clinic, type, request, index);
}

bool Log::knows_examiner(const model::ExaminerId& examiner, const PublicKey& pub) const {
  return std::any_of(index_.examiners.begin(), index_.examiners.end(),
                     [&](const Examiner& known) { return known.examiner == examiner && known.pub == pub; });
}

bool Log::is_examiner(const model::ExaminerId& examiner) const {
  return std::any_of(index_.examiners.begin(), index_.examiners.end(), [&](const Examiner& known) { return known.examiner == examiner; });
}

void Log::set_row(const model::ObjectId& object, std::string row_json) {
  index_.objects[object].row = std::move(row_json);
}

}  // namespace limbledger::ledger
