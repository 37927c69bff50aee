// What a replica remembers of its ledger between two starts, so that opening does not undo every seal again: which objects
// there are and under which keys, which request made which object, who examines, and one short row an exam, person or
// report for the lists. Local, sealed under the shelf key, never exchanged and never trusted: it is tagged with the fold's version
// and the leaves it covers, and anything that does not fit is thrown away and folded anew. Source: ledger, item 37.
#pragma once

#include "core/ledger/chain.hpp"
#include "core/ledger/keys/seal.hpp"
#include "core/model/exam/day.hpp"
#include "core/model/person.hpp"

#include <map>
#include <optional>
#include <vector>

namespace limbledger::ledger {

// Raised whenever a fold of the same entries would say something else.
inline constexpr std::uint16_t fold_version = 6;

struct ListedExam {
  model::ExamId exam;
  std::vector<model::PersonId> persons;
  model::ExamState state{};
  model::Word complaint;
  std::optional<model::Side> side;
  std::optional<model::PlaceId> place;
  std::optional<model::ExaminerId> examiner;
  std::optional<model::Instant> examined_at;
  std::optional<model::OffsetMinutes> offset_min;
  wire::Count<0, 1000000> findings;
  std::optional<bool> in_conflict;
  std::optional<bool> unseen = std::nullopt;  // holds what was written without knowing what matters to it, and nobody has looked since
  std::optional<std::vector<model::ItemId>> staff_called = std::nullopt;  // never stored: what calls the staff is for the edition at hand
  std::optional<model::PartialDate> examined_on = std::nullopt;           // the day as a person said it
  std::optional<bool> day_doubtful = std::nullopt;                        // as of an exam
};
BOOST_DESCRIBE_STRUCT(ListedExam, (),
                      (exam, persons, state, complaint, side, place, examiner, examined_at, offset_min, findings, in_conflict, unseen, staff_called,
                       examined_on, day_doubtful))
constexpr auto notes(const ListedExam*) {
  return std::array{wire::Note{"staff_called", "of exam.find alone: what was answered at a kiosk in this exam so that its person was asked to call the staff, also where it was changed or taken over since"}};
}

[[nodiscard]] inline model::When when_done(const ListedExam& row) {
  return model::when_done(row.examined_on, row.examined_at, row.offset_min, row.day_doubtful.value_or(false));
}

struct Examiner {
  model::ExaminerId examiner;
  PublicKey pub{};
};

class Index {
 public:
  struct Object {
    ObjectType type = ObjectType::clinic;  // as far as its first operation told; clinic until then
    std::vector<ObjectKey> keys;           // the last is the one to write under
    std::string row;                       // JSON of the list row, empty when it must be folded first
  };

  std::map<model::ReplicaId, std::vector<Joint>> leaves;  // what this index covers
  std::map<model::ReplicaId, Origin> origins;
  std::map<model::ObjectId, Object> objects;
  std::map<model::KeyId, model::ObjectId> object_of;
  std::map<model::RequestId, model::ObjectId> requests;
  std::vector<Examiner> examiners;
  std::uint64_t entry_count = 0;
  Stamp newest;

  [[nodiscard]] Bytes to_bytes() const;
  [[nodiscard]] static std::optional<Index> from_bytes(View bytes);
};

}  // namespace limbledger::ledger
