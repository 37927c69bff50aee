// Writers of one clinic, each with a device, a chain and a store of its own: what the fold must settle when they had not
// seen each other. Entries are sealed, chained and signed as in a ledger, and reach the other writer by `take`.
#pragma once

#include "core/ledger/fold/fold.hpp"
#include "core/ledger/log/log.hpp"
#include "core/store/memory.hpp"
#include "core/wire/write.hpp"
#include "tests/unit/ledger/support.hpp"
#include "tests/unit/service/desk_fixture.hpp"

#include <doctest/doctest.h>

namespace limbledger::ledger::fold_test {

using test::secret_of;

inline model::ClinicId test_clinic() { return clinic_of(SignKey(secret_of(1)).pub()); }

class DeviceWriter {
 public:
  explicit DeviceWriter(std::uint8_t number)
      : world_(number), examiner_key_(secret_of(static_cast<std::uint8_t>(100 + number))) {
    Identity identity{test_clinic(), SignKey(secret_of(static_cast<std::uint8_t>(10 + number))), {}, BlobKey(secret_of(3))};
    identity.epochs.emplace(1, BoxPair(secret_of(2)));
    examiner_.bytes.fill(number);
    introduce(identity);
    auto opened = Log::open(store_, world_, std::move(identity));
    log_ = std::move(*opened);
    REQUIRE(log_->introduce_examiner(examiner_, examiner_key_).has_value());
  }

  // One operation on the exam, by somebody who was shown `after`.
  Opened act(const model::ExamId& exam, std::string op, std::string body_json, std::vector<model::EntryId> after,
             std::vector<model::EntryId> replaces = {}, bool sign = false, std::optional<unsigned> request = std::nullopt) {
    world_.pass(1000);
    NewOperation operation;
    operation.object = model::as_object(exam);
    operation.op = std::move(op);
    operation.request = request_of(request.value_or(++requests_ + examiner_.bytes[0] * 10000U));
    operation.after = std::move(after);
    operation.replaces = std::move(replaces);
    operation.by = examiner_;
    operation.body_json = std::move(body_json);
    operation.sign = sign;
    auto appended = log_->append({&operation, 1}, model::EditionId{"facts.test"}, &examiner_key_);
    REQUIRE(appended.has_value());
    return appended->front();
  }

  // What the other has that this one has not, whole commits up to the newest head.
  void take_from(DeviceWriter& other) {
    const auto heads = other.store_.heads();
    REQUIRE(heads.has_value());
    for (const Head& head : heads->newest) {
      if (head.replica == log_->identity().replica()) {
        continue;
      }
      auto rows = other.store_.read(head.replica, 1, head.seq, 100000);
      REQUIRE(rows.has_value());
      const bool own = head.replica == other.log_->identity().replica();
      const PublicKey pub = own ? other.log_->identity().device_key.pub() : other.known_.at(head.replica);
      known_[head.replica] = pub;
      const auto taken = log_->take({test_clinic(), head.replica, pub}, std::move(*rows), head);
      REQUIRE_MESSAGE(taken.has_value(), (taken ? std::string() : taken.error().faults.front().code));
    }
  }

  [[nodiscard]] std::vector<Opened> operations(const model::ExamId& exam) { return *log_->operations(model::as_object(exam)); }
  [[nodiscard]] std::optional<ExamFold> fold(const model::ExamId& exam) { return fold_of(exam, operations(exam)); }
  [[nodiscard]] std::optional<ExamFold> fold_of(const model::ExamId& exam, std::span<const Opened> operations) const {
    const ExaminerKeys keys = [this](const model::ExaminerId& who, const PublicKey& pub) { return log_->knows_examiner(who, pub); };
    return fold_exam(exam, operations, keys, test_clinic());
  }
  [[nodiscard]] Log& log() { return *log_; }
  [[nodiscard]] store::MemoryStore& store() { return store_; }
  [[nodiscard]] service::test::FixedWorld& world() { return world_; }
  [[nodiscard]] const model::ExaminerId& examiner() const { return examiner_; }

  static model::RequestId request_of(unsigned number) {
    model::RequestId request;
    REQUIRE(model::RequestId::from_text(service::test::request_id(number), request).empty());
    return request;
  }

 private:
  // The first entry of every chain: without it a stored chain cannot be read again.
  void introduce(const Identity& identity) {
    Intro intro;
    intro.clinic = identity.clinic;
    intro.sign_pub = identity.device_key.pub();
    Row row;
    row.body = intro.to_bytes();
    Header header;
    header.kind = Kind::intro;
    header.flags = flag_last_of_commit;
    header.body_length = static_cast<std::uint32_t>(row.body.size());
    header.stamp = HybridClock(release_ms).next(world_.now());
    row.header = header.to_bytes();
    Joint joint = start_of({identity.clinic, identity.replica(), intro.sign_pub});
    link(identity.replica(), joint, row);
    const Head head = sign_head(identity.device_key, identity.clinic, identity.replica(), joint.seq, joint.hash);
    REQUIRE(store_.append({&row, 1}, {&head, 1}, {}).has_value());
  }

  store::MemoryStore store_;
  service::test::FixedWorld world_;
  SignKey examiner_key_;
  model::ExaminerId examiner_;
  std::unique_ptr<Log> log_;
  std::map<model::ReplicaId, PublicKey> known_;
  unsigned requests_ = 0;
};

inline model::ExamId exam_of(unsigned number) {
  return {object_of(test_clinic(), ObjectType::exam, DeviceWriter::request_of(number), 0).bytes};
}
inline model::FindingId finding_of(unsigned number) {
  return {object_of(test_clinic(), ObjectType::finding, DeviceWriter::request_of(number), 0).bytes};
}

inline const std::string open_body = R"({"complaint":"free","setting":"outreach"})";

// Flexion of a knee in whole degrees, as a stored finding.
inline std::string flexion(const model::FindingId& finding, int deg, std::string_view side = "left") {
  return R"({"finding":")" + finding.to_text() + R"(","observation":{"item":"knee.flexion_passive","side":")" + std::string(side) +
         R"(","value":{"kind":"angle","deg":)" + std::to_string(deg) + R"(,"toward":"flexion","toward_deg":)" + std::to_string(deg) + "}}}";
}

// What a fold says, in one text.
inline std::string said(const std::optional<ExamFold>& fold) { return fold ? wire::write(fold->exam) : std::string("nothing"); }

inline std::string standing_of(const ExamFold& fold, const model::EntryId& entry) {
  for (const model::Finding& finding : fold.history) {
    if (finding.entry == entry) {
      return wire::write(*finding.standing);
    }
  }
  return "absent";
}

inline bool has_mark(const ExamFold& fold, const model::EntryId& entry, std::string_view word) {
  if (fold.exam.marks) {
    for (const model::EntryMark& mark : *fold.exam.marks) {
      if (mark.entry == entry && mark.mark.text == word) {
        return true;
      }
    }
  }
  return false;
}

inline std::size_t conflicts_about(const ExamFold& fold, std::string_view about) {
  std::size_t count = 0;
  if (fold.exam.conflicts) {
    for (const model::Conflict& conflict : *fold.exam.conflicts) {
      count += conflict.about.text == about ? 1U : 0U;
    }
  }
  return count;
}

}  // namespace limbledger::ledger::fold_test
