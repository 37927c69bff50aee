// pair.list and pair.decide: who may be registered twice, and what a person decided of it. The program lists and never joins: a pair is
// shown with each field's agreement and its weight, a person decides yes or no, and either can be undone. Nothing of the two
// records changes by it: while they are one, the exams of both are shown under one person, each still of the record it was
// entered for. Twins and a namesake a generation apart are said to be perhaps that. Source: ledger, items 13, 18 and 31.
#pragma once

#include "core/ledger/fold/links.hpp"
#include "core/match/register.hpp"
#include "core/service/methods/people/likeness.hpp"
#include "core/service/writing.hpp"

#include <array>
#include <optional>
#include <vector>

namespace limbledger::service {

struct DecidedPair {
  model::EntryId entry;
  model::SamePerson same{};
  model::PairReason reason{};
  std::optional<model::PersonId> shown_under;
  std::optional<model::ExaminerId> by;
  std::optional<wire::Remark> by_name;  // name and role, or in words that the name is not known here
  model::Instant at;
};
BOOST_DESCRIBE_STRUCT(DecidedPair, (), (entry, same, reason, shown_under, by, by_name, at))

struct ToldPair {
  std::vector<model::PersonId> persons;  // two, the lower id first
  std::vector<model::Person> people;     // in the same order, as far as they are here
  std::optional<Bits> weight;            // absent where one of them is not here
  std::optional<bool> strong;
  std::optional<std::vector<model::Word>> remarks;
  std::optional<std::vector<WeighedField>> working;
  std::optional<model::SamePerson> same;  // as it was decided
  std::vector<DecidedPair> decided;       // what stands; several where their writers had not seen each other
  std::vector<model::EntryId> revision;   // empty while nothing was decided
};
BOOST_DESCRIBE_STRUCT(ToldPair, (), (persons, people, weight, strong, remarks, working, same, decided, revision))
constexpr auto notes(const ToldPair*) {
  return std::array{wire::Note{"strong", "odds of nine to one or more where the weights hold; a person decides all the same"},
                    wire::Note{"remarks", "perhaps_twins, perhaps_parent_and_child, decided_differently (two deciders who had not seen each other), contradicted (a chain joins two who were "
                                          "decided not to be the same: nobody of it is shown as one)"}};
}

// Who looks alike is not known yet: the same call again goes on comparing.
struct Looking {
  wire::Count<0, 9007199254740991> compared;
  wire::Count<0, 9007199254740991> of;
};
BOOST_DESCRIBE_STRUCT(Looking, (), (compared, of))

struct PairListParams {
  std::optional<bool> decided;  // true: those that were decided, instead of those that wait
  std::optional<wire::Count<1, 500>> limit;
  std::optional<wire::Count<0, 1000000>> from;  // how many to pass over
  std::optional<FaultLanguage> language = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(PairListParams, (), (decided, limit, from, language))
constexpr auto notes(const PairListParams*) { return std::array{wire::Note{"language", fault_words_note}}; }
struct PairListResult {
  std::vector<ToldPair> pairs;     // decisions that stand against each other first, then the most weighty
  wire::Count<0, 1000000> total;
  wire::Count<0, 1000000> people;
  bool learnt = false;             // the weights were learnt from this clinic's people; else they are the stated starting ones
  std::optional<Looking> looking;  // present while pairs are left to compare: who looks alike is listed when it is gone
};
BOOST_DESCRIBE_STRUCT(PairListResult, (), (pairs, total, people, learnt, looking))
// Scope E V.
[[nodiscard]] Result<PairListResult> pair_list(Context& context, const PairListParams& params);

struct PairDecideParams {
  std::vector<model::PersonId> persons;
  model::SamePerson same{};
  model::PairReason reason{};
  std::optional<model::PersonId> shown_under;
  std::vector<model::EntryId> seen;
  model::RequestId request;
  std::optional<std::vector<wire::Name>> confirmed = std::nullopt;  // codes a person has answered for: value.unusual
  std::optional<FaultLanguage> language = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(PairDecideParams, (), (persons, same, reason, shown_under, seen, request, confirmed, language))
constexpr auto notes(const PairDecideParams*) {
  return std::array{wire::Note{"language", fault_words_note}, wire::Note{"persons", "needed: two"},
                    wire::Note{"same", "yes: of one person; no: of two; undo: nothing is decided after all, and both are as they were"},
                    wire::Note{"shown_under", "with yes: whose name and birth are shown for both; absent: the one with the lower id"},
                    wire::Note{"seen", "the pair's revision as it was shown; empty while nothing was decided of it"},
                    wire::Note{"confirmed", "codes a person has answered for: value.unusual, where the two are to be one and have two sexes on record"}};
}
struct PairDecideResult {
  ToldPair pair;
  std::vector<model::PersonId> group;  // all who are one with the first of them now
  std::optional<model::PersonId> shown_under;
  std::vector<model::EntryId> revision;
  std::optional<bool> repeat;
};
BOOST_DESCRIBE_STRUCT(PairDecideResult, (), (pair, group, shown_under, revision, repeat))
// Scope E; writes, signed by the examiner. Faults: person.unknown, value.empty (not two), pair.contradicts, pair.undecided, finding.stale (a
// decision that was not seen), value.unusual (asked back: two sexes), revision.unknown.
[[nodiscard]] Result<PairDecideResult> pair_decide(Context& context, const PairDecideParams& params);

// So many pairs of records are compared in one call (our convention): a tenth of a second where a tablet is slow.
inline constexpr std::size_t compared_a_call = 40'000;
// Goes on comparing, and gives all that is worth asking about and undecided, most weighty first; none while pairs are left to compare.
[[nodiscard]] Result<const std::vector<match::PersonPair>*> undecided_pairs(Context& context);
// How far that is; nothing once all are compared.
[[nodiscard]] std::optional<Looking> still_looking(Context& context);
// A pair as it is told: people, weights, what was decided.
[[nodiscard]] Result<ToldPair> tell_pair(Context& context, const match::PersonPair& persons);

}  // namespace limbledger::service
