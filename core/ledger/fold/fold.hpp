// A set of operations -> what they say now. The fold of an object is a function of the set, so order of arrival,
// repetition and grouping cannot matter: operations point at what they replace and at what their writer had seen, and
// clocks only order the display. Two values whose writers had not seen each other are both kept and shown as a conflict.
// Source: ledger, items 26 to 32.
#pragma once

#include "core/ledger/fold/opened.hpp"

#include <cstdint>
#include <functional>
#include <map>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

namespace limbledger::ledger {

// Whether a public key is that examiner's on some device of this clinic.
using ExaminerKeys = std::function<bool(const model::ExaminerId&, const PublicKey&)>;

// The time of the exam is the clock's own, to the minute: nobody stated it.
[[nodiscard]] bool is_stamped(const model::Operation& opening);

// Whether an item is kept apart from what lists and letters tell (C16). The log knows no catalogue, so it is handed in.
using KeptApart = std::function<bool(const model::ItemId&)>;

// Nodes of a graph by their places, as bits. Joined a word at a time: at every finding the sets of all that came before it are.
class NodeSet {
 public:
  NodeSet() = default;
  explicit NodeSet(std::size_t count) : words_((count + bits - 1) / bits) {}
  [[nodiscard]] bool has(std::size_t node) const { return (words_[node / bits] >> (node % bits) & 1U) != 0; }
  void add(std::size_t node) { words_[node / bits] |= std::uint64_t{1} << (node % bits); }
  void join(const NodeSet& other) {
    for (std::size_t i = 0; i < other.words_.size(); ++i) {
      words_[i] |= other.words_[i];
    }
  }

 private:
  static constexpr std::size_t bits = 64;
  std::vector<std::uint64_t> words_;
};

// The graph of one object's operations: repeats of one request folded into one, and what each writer had seen.
class Graph {
 public:
  explicit Graph(std::span<const Opened> operations);

  // In the order of display: stamp, then entry.
  [[nodiscard]] std::size_t size() const { return nodes_.size(); }
  [[nodiscard]] const Opened& at(std::size_t index) const { return *nodes_[index].opened; }
  // The node of an entry, also of one that was folded into another as its repeat.
  [[nodiscard]] std::optional<std::size_t> find(const model::EntryId& entry) const;
  // The writer of `later` had seen `earlier`.
  [[nodiscard]] bool saw(std::size_t later, std::size_t earlier) const { return nodes_[later].seen.has(earlier); }
  // Of what a writer was shown, what may be named as seen. Where something before an entry has not come yet, what is here of all before
  // it: who corrected a value must not turn out to have seen a signature that was not on the screen.
  [[nodiscard]] std::vector<model::EntryId> whole(std::span<const model::EntryId> shown) const;
  // Entries of `of` in order; entries not here are passed over.
  [[nodiscard]] std::vector<bool> closure(std::span<const model::EntryId> of) const;
  // What nobody had seen when writing: the record's revision.
  [[nodiscard]] std::vector<model::EntryId> heads() const;
  // One request with two contents.
  [[nodiscard]] const std::vector<model::Conflict>& request_conflicts() const { return request_conflicts_; }
  // Some entry names one in `after` or `replaces` that has not come yet.
  [[nodiscard]] bool waits(std::size_t index) const { return nodes_[index].waits; }
  // All entries of a request, those folded into one included.
  [[nodiscard]] std::vector<std::size_t> of_request(const model::RequestId& request) const;

 private:
  struct Node {
    const Opened* opened = nullptr;
    NodeSet seen;
    bool waits = false;
    bool lacks = false;  // waits, or something before it does
  };
  void fold_repeats(std::span<const Opened> operations);
  void see();

  std::vector<Node> nodes_;
  std::map<model::EntryId, std::size_t> index_;
  std::vector<model::Conflict> request_conflicts_;
};

// The hashes of all entries that a writer who was shown `of` had seen, over the set as it is stored (repeats included), for
// the examiner's signature. Nothing when one of them has not come yet.
[[nodiscard]] std::optional<std::vector<Hash>> seen_entries(std::span<const Opened> operations, std::span<const model::EntryId> of);

// Whether an operation about an object carries a signature that holds, by its own examiner and over all that its writer had seen of
// it. `operations` is all that is here of the object.
[[nodiscard]] bool signed_by_examiner(const Opened& opened, std::span<const Opened> operations, const ExaminerKeys& keys, const model::ClinicId& clinic);

// What is named as seen when something of the clinic is written. How examiners are called is left out: each says it of oneself, on many
// devices, and hundreds of them would stand in every such operation.
[[nodiscard]] std::vector<model::EntryId> clinic_revision(const Graph& graph);

struct ExamFold {
  model::Exam exam;
  std::vector<model::Finding> history;       // every finding entry, oldest first, with where it stands
  std::size_t entries = 0;                   // operations in the set
  std::size_t unread = 0;                    // operations that need a newer edition
  std::vector<model::EntryId> impression_heads;
  std::vector<model::EntryId> opening_heads;     // the opening as it was last amended
  std::vector<model::EntryId> assignment_heads;  // exam and move: who the exam is of
  std::map<model::PlanItemId, std::vector<model::EntryId>> plan_heads;      // what stands of it, and what became of it
  std::vector<model::EntryId> transfer_heads;
  std::map<model::FindingId, std::vector<model::EntryId>> finding_heads;  // not replaced and not void
  std::vector<model::EntryId> consent_heads;
  std::vector<model::PersonId> persons;      // one, or all that unseen moves name
  Hash digest{};                             // of all entries, sorted
  friend bool operator==(const ExamFold&, const ExamFold&) = default;
};

struct PersonFold {
  model::Person person;
  std::vector<model::Conflict> conflicts;
  std::vector<model::Settled> settled;  // of each member what holds, then what it undid
  std::vector<model::EntryMark> marks;
  std::vector<model::EntryId> value_heads;  // entries that still give a value
  std::size_t unread = 0;
};
struct PlaceFold {
  model::Place place;
  std::vector<model::Conflict> conflicts;
  std::vector<model::EntryId> value_heads;
};

// Somebody was asked about a line of what disagrees, and when to look again. All stand, whoever wrote them and knew of which: they
// settle nothing, and a later one does not take the earlier back.
struct PutOff {
  model::EntryId entry;
  std::optional<model::ExaminerId> by;
  model::Instant at;
  model::PutOffBody said;
  bool changed = false;  // of the line it is asked for: something stands there that it does not name
  bool again = false;    // its line was put off again by somebody who knew of it
};
// Those of one line, in the order of display. `entries`: what stands there now. Of a pair both `persons`, in the record of the lower id;
// else none, and those that name an entry which still stands.
[[nodiscard]] std::vector<PutOff> put_offs(std::span<const Opened> operations, std::string_view about, std::span<const model::EntryId> entries,
                                           const std::vector<model::PersonId>& persons);

// A count as it was reported, its operations joined.
struct ReportFold {
  model::EntryId entry;                 // the last: by it a report is named
  std::vector<model::EntryId> entries;  // with that of its repeat by a device that was put back, which names it as well
  std::optional<model::ExaminerId> by;
  model::Instant at;
  model::EditionId edition;
  model::ReportBody said;
  bool whole = true;                    // all of its operations are here and open

  [[nodiscard]] bool is_among(std::span<const model::EntryId> named) const;
};
// One, but where a device that was put back made the same request again and counted otherwise: then both, by entry.
[[nodiscard]] std::vector<ReportFold> fold_reports(std::span<const Opened> operations);

// Nothing when the set holds no operation that opens the record.
[[nodiscard]] std::optional<ExamFold> fold_exam(const model::ExamId& exam, std::span<const Opened> operations, const ExaminerKeys& keys,
                                                const model::ClinicId& clinic, const KeptApart& kept_apart = {});
// Takes the last of the operations into the fold of all before it, where that is a new finding whose writer had seen everything and
// nothing else of the exam hangs on it. False: nothing was changed, and the fold has to be made anew.
[[nodiscard]] bool grow_exam(ExamFold& fold, std::span<const Opened> operations);
// What was written without knowledge of what matters to it (a side exchange, a signature, a withdrawal of the exam) and still stands,
// unless somebody who had seen both signed, added or settled since: then it was looked at. A side is not looked at by a signature.
[[nodiscard]] std::vector<model::EntryMark> unseen_marks(const ExamFold& fold, std::span<const Opened> operations);
// The conflicts of a record but those on which, after the signature, an addendum was written by somebody who had seen all of it.
[[nodiscard]] std::vector<model::Conflict> open_conflicts(const ExamFold& fold, std::span<const Opened> operations);
[[nodiscard]] std::optional<PersonFold> fold_person(const model::PersonId& person, std::span<const Opened> operations);
// Places live under the clinic's own object.
[[nodiscard]] std::vector<PlaceFold> fold_places(std::span<const Opened> operations);

// H over the sorted entries nobody replaced and the open conflicts: equal for equal sets (ledger, section 2).
[[nodiscard]] Hash state_digest(const model::ObjectId& object, std::span<const Opened> operations);

}  // namespace limbledger::ledger
