// What is added to an exam beside its findings: that it was stopped for transfer and what goes with the person, what somebody
// disagrees with, what became of what was planned, what was found later, and the countersignature of who supervised. All of it is
// added and nothing is taken away; absent is "not asked", never no. Source: clinical safety, requirements 11, 14, 20, 24 and 25.
#pragma once

#include "core/model/exam/plan.hpp"

#include <optional>
#include <vector>

namespace limbledger::model {

// What was felt of vessels or nerves last, in the examiner's words.
struct LastCheck {
  wire::Remark text;
  std::optional<Instant> at;
  friend bool operator==(const LastCheck&, const LastCheck&) = default;
};
BOOST_DESCRIBE_STRUCT(LastCheck, (), (text, at))

// What was given or put on before the transfer, as the examiner wrote it.
struct GivenSoFar {
  wire::Remark what;
  std::optional<Instant> at;
  friend bool operator==(const GivenSoFar&, const GivenSoFar&) = default;
};
BOOST_DESCRIBE_STRUCT(GivenSoFar, (), (what, at))

struct WasCalled {
  wire::Name who;
  std::optional<wire::Name> number;
  std::optional<Instant> at;
  std::optional<wire::Remark> said;
  friend bool operator==(const WasCalled&, const WasCalled&) = default;
};
BOOST_DESCRIBE_STRUCT(WasCalled, (), (who, number, at, said))

// The set that travels with the person. Everything may be left out: one touch has to be enough.
struct TransferSet {
  std::optional<wire::Name> to;
  std::optional<wire::Remark> onset;
  std::optional<LastCheck> vessel_check;
  std::optional<LastCheck> nerve_check;
  std::optional<wire::Remark> allergies;
  std::optional<wire::Remark> last_meal;
  std::optional<wire::Remark> tetanus;
  std::optional<wire::Remark> blood_thinners;
  std::optional<wire::Remark> pregnancy;
  std::optional<std::vector<GivenSoFar>> given;
  std::optional<std::vector<WasCalled>> called;
  std::optional<Instant> next_check;  // of vessels and nerves, while the person waits
  friend bool operator==(const TransferSet&, const TransferSet&) = default;
};
BOOST_DESCRIBE_STRUCT(TransferSet, (), (to, onset, vessel_check, nerve_check, allergies, last_meal, tetanus, blood_thinners, pregnancy, given, called,
                                        next_check))
constexpr auto notes(const TransferSet*) {
  return std::array{wire::Note{"vessel_check", "the last look at pulse, colour and warmth, in words, and when"},
                    wire::Note{"nerve_check", "the last look at feeling and movement, in words, and when"},
                    wire::Note{"pregnancy", "as told: yes with weeks, no with the day of the last bleeding, not asked is left out"},
                    wire::Note{"next_check", "when vessels and nerves are looked at again while the person waits"}};
}

// The exam was stopped for transfer: what was not done is then no gap.
struct Transferred {
  EntryId entry;
  std::optional<ExaminerId> by;
  Instant at;
  TransferSet set;
  friend bool operator==(const Transferred&, const Transferred&) = default;
};
BOOST_DESCRIBE_STRUCT(Transferred, (), (entry, by, at, set))

// "I disagree, because": stands beside the statement and never takes it away.
struct Disagreed {
  EntryId entry;
  StatementId statement;
  wire::Remark because;
  std::optional<ExaminerId> by;
  Instant at;
  EditionId edition;  // that said it
  friend bool operator==(const Disagreed&, const Disagreed&) = default;
};
BOOST_DESCRIBE_STRUCT(Disagreed, (), (entry, statement, because, by, at, edition))

// One step of what became of a plan item: sent, then received, then answered ...
struct Followed {
  EntryId entry;
  PlanItemId plan_item;
  Became became{};
  std::optional<PartialDate> on;
  std::optional<wire::Remark> text;
  std::optional<ExaminerId> by;
  Instant at;
  friend bool operator==(const Followed&, const Followed&) = default;
};
BOOST_DESCRIBE_STRUCT(Followed, (), (entry, plan_item, became, on, text, by, at))

enum class LaterKind { film, operation, answer, impression, arrived, not_arrived, died };
BOOST_DESCRIBE_ENUM(LaterKind, film, operation, answer, impression, arrived, not_arrived, died)

// What was found out later about what this exam asked: a clinic can check itself against it.
struct FoundLater {
  LaterKind kind{};
  wire::Remark text;
  std::optional<Side> side;
  std::optional<PartialDate> on;
  std::optional<wire::Name> source;  // who says so
  friend bool operator==(const FoundLater&, const FoundLater&) = default;
};
BOOST_DESCRIBE_STRUCT(FoundLater, (), (kind, text, side, on, source))
constexpr auto notes(const FoundLater*) {
  return std::array{wire::Note{"kind", "what a film showed, what an operation found, what the other clinic answered, or what the treating clinician holds it for in the end; and of whoever was sent: arrived there, not_arrived (loop.list goes on asking), or died"},
                    wire::Note{"source", "who says so: a report, a letter, the person"}};
}

struct OutcomeTold {
  EntryId entry;
  FoundLater found;
  std::optional<ExaminerId> by;
  Instant at;
  friend bool operator==(const OutcomeTold&, const OutcomeTold&) = default;
};
BOOST_DESCRIBE_STRUCT(OutcomeTold, (), (entry, found, by, at))

// Left and right of every finding were exchanged; what people had written before that was not turned.
struct SidesExchanged {
  EntryId entry;
  std::optional<ExaminerId> by;
  Instant at;
  wire::Remark reason;
  std::vector<Word> written_before;
  friend bool operator==(const SidesExchanged&, const SidesExchanged&) = default;
};
BOOST_DESCRIBE_STRUCT(SidesExchanged, (), (entry, by, at, reason, written_before))
constexpr auto notes(const SidesExchanged*) {
  return std::array{wire::Note{"written_before", "impression, ids of plan items, entries of addenda, transfer sets, outcomes and countersignatures whose words had not seen the "
                                                 "exchange: read each side in them anew"}};
}

// Who supervised saw the signed exam, and says what they found and hold it for themselves. The signer's own stays as it was.
struct Countersigned {
  EntryId entry;
  ExaminerId by;
  Instant at;
  std::optional<std::vector<Observation>> findings;
  std::optional<Impression> impression;
  std::optional<wire::Remark> remark;
  friend bool operator==(const Countersigned&, const Countersigned&) = default;
};
BOOST_DESCRIBE_STRUCT(Countersigned, (), (entry, by, at, findings, impression, remark))

}  // namespace limbledger::model

// One table a type for the whole program, made in core/model/types.cpp: it is costly to make in every file.
namespace limbledger::wire {
extern template const Type& type_of<model::TransferSet>();
extern template const Type& type_of<model::Transferred>();
extern template const Type& type_of<model::Countersigned>();
}  // namespace limbledger::wire
