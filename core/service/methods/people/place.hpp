// place.read and place.amend: where exams are done, how far help is, whom to call, what is there today, the local protocol
// with its date. All places live under the clinic's own object, so `seen` is a revision of all of them together. What is
// not listed is unknown. Minutes of travel are whole minutes.
#pragma once

#include "core/model/exam/exam.hpp"
#include "core/service/writing.hpp"

#include <array>
#include <optional>
#include <vector>

namespace limbledger::service {

struct PlaceReadParams {
  std::optional<model::PlaceId> place;
  std::optional<FaultLanguage> language = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(PlaceReadParams, (), (place, language))
constexpr auto notes(const PlaceReadParams*) { return std::array{wire::Note{"language", fault_words_note}}; }
struct ShownPlace {
  model::Place place;
  std::optional<std::vector<model::Conflict>> conflicts;
  std::vector<model::EntryId> entries;  // those that give a value, for `replaces`
};
BOOST_DESCRIBE_STRUCT(ShownPlace, (), (place, conflicts, entries))
struct PlaceReadResult {
  std::vector<ShownPlace> places;        // by id
  std::vector<model::EntryId> revision;  // empty while there is nothing
};
BOOST_DESCRIBE_STRUCT(PlaceReadResult, (), (places, revision))
// Scope E V. Faults: place.unknown.
[[nodiscard]] Result<PlaceReadResult> place_read(Context& context, const PlaceReadParams& params);

struct PlaceChanges {
  std::optional<wire::Name> name;
  std::optional<std::vector<model::Travel>> travel;
  std::optional<std::vector<model::Telephone>> telephones;
  std::optional<std::vector<model::Here>> here;
  std::optional<std::vector<model::Protocol>> protocols;
  std::optional<std::vector<wire::Name>> endemic;
  std::optional<std::vector<model::ReviewedLanguage>> reviewed;
};
BOOST_DESCRIBE_STRUCT(PlaceChanges, (), (name, travel, telephones, here, protocols, endemic, reviewed))
struct PlaceAmendParams {
  std::optional<model::PlaceId> place;  // absent: a new one
  PlaceChanges changes;
  std::vector<model::EntryId> replaces;
  std::vector<model::EntryId> seen;  // may be empty for a new place
  model::RequestId request;
  std::optional<std::vector<wire::Name>> confirmed;  // codes a person has answered for: value.unusual
  std::optional<FaultLanguage> language = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(PlaceAmendParams, (), (place, changes, replaces, seen, request, confirmed, language))
constexpr auto notes(const PlaceAmendParams*) { return std::array{wire::Note{"language", fault_words_note}, wire::Note{"seen", "the revision that was shown; needed for a place that is there, empty for a new one"}}; }
struct PlaceAmendResult {
  std::vector<ShownPlace> places;  // the one that was written
  std::vector<model::EntryId> revision;
  std::optional<bool> repeat;
};
BOOST_DESCRIBE_STRUCT(PlaceAmendResult, (), (places, revision, repeat))
// Scope E; writes. Faults: place.unknown, value.empty, params.missing (name of a new one, seen), revision.unknown,
// format.newer, finding.stale.
[[nodiscard]] Result<PlaceAmendResult> place_amend(Context& context, const PlaceAmendParams& params);

}  // namespace limbledger::service
