// person.register, person.amend, person.find, person.read. A person may be one name and nothing else. Names and numbers
// are kept code point for code point but for spaces around them; a number belongs to its issuer. Look-alikes are shown
// with the reasons, and nobody is merged. Unknown stays unknown: an amended member must name what it replaces.
#pragma once

#include "core/interpret/statement.hpp"
#include "core/ledger/log/index.hpp"
#include "core/model/exam/exam.hpp"
#include "core/service/methods/people/likeness.hpp"
#include "core/service/writing.hpp"

#include <array>
#include <optional>
#include <vector>

namespace limbledger::service {

// The alerts of one exam of a person, as on the reply to a finding.
struct ExamAlerts {
  model::ExamId exam;
  std::vector<interpret::Alert> alerts;
};
BOOST_DESCRIBE_STRUCT(ExamAlerts, (), (exam, alerts))

struct PersonReply {
  model::Person person;
  std::optional<std::vector<model::Conflict>> conflicts;
  std::optional<std::vector<model::EntryMark>> marks;
  std::vector<model::EntryId> revision;
  std::optional<bool> repeat;
  std::vector<LookAlike> look_alikes;
  std::optional<std::vector<ExamAlerts>> exams = std::nullopt;
  std::optional<std::vector<model::Word>> remarks = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(PersonReply, (), (person, conflicts, marks, revision, repeat, look_alikes, exams, remarks))
constexpr auto notes(const PersonReply*) {
  return std::array{wire::Note{"remarks", "norm_sex_unspecified: the sex is recorded and norm_sex is not, so readings are compared with the norms of women and of men, and where these differ nothing is "
                                          "concluded; ask, and say it with person.amend"},
                    wire::Note{"exams", "after a change of birth, sex or norm_sex: of each open exam of this person that has alerts all of them as of now, of each signed one "
                                        "those that came after its signature (call_back) or went by a correction since"}};
}

struct PersonRegisterParams {
  std::vector<model::PersonName> names;
  std::optional<model::Birth> birth;
  model::Sex sex{};
  std::optional<model::NormSex> norm_sex;
  std::optional<wire::Name> home;
  std::optional<std::vector<model::Identifier>> identifiers;
  model::RequestId request;
  std::optional<std::vector<wire::Name>> confirmed;  // codes a person has answered for: value.unusual
  std::optional<FaultLanguage> language = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(PersonRegisterParams, (), (names, birth, sex, norm_sex, home, identifiers, request, confirmed, language))
constexpr std::string_view norm_sex_note = "whose norms readings are compared with; it is not taken from sex, and without it (unspecified) both are compared with, and where they differ nothing is concluded";
constexpr auto notes(const PersonRegisterParams*) { return std::array{wire::Note{"language", fault_words_note}, wire::Note{"norm_sex", norm_sex_note}, wire::Note{"names", "needed: at least one"}, wire::Note{"confirmed", confirmed_note}}; }
// Scope E; writes. Faults: value.empty, value.all_or_one (birth), value.unusual (a birth in the future), request.reused.
[[nodiscard]] Result<PersonReply> person_register(Context& context, const PersonRegisterParams& params);

struct PersonAmendParams {
  model::PersonId person;
  model::PersonBody changes;
  std::vector<model::EntryId> replaces;
  std::vector<model::EntryId> seen;
  model::RequestId request;
  std::optional<std::vector<wire::Name>> confirmed;
  std::optional<model::Word> language = std::nullopt;
  std::optional<wire::Remark> reason = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(PersonAmendParams, (), (person, changes, replaces, seen, request, confirmed, language, reason))
constexpr auto notes(const PersonAmendParams*) {
  return std::array{wire::Note{"replaces", "the entries whose values of the changed members no longer hold: every one that stands"},
                    wire::Note{"reason", "why, or how it is known: kept, and printed where values stood against each other; needed where it decides between such"}, wire::Note{"seen", seen_note}, wire::Note{"confirmed", confirmed_note}, wire::Note{"language", sentences_note}};
}
// Scope E; writes. Faults besides: person.unknown, revision.unknown, format.newer, finding.stale (a value that stands and
// was not named), value.unusual (a birth after an exam of this person), alert.would_end (asked back: an alert of one of the exams would go), value.empty (no reason, where values of birth, sex, norm_sex or home
// stand against each other). Names and identifiers add to those that stand unless they replace their entry.
[[nodiscard]] Result<PersonReply> person_amend(Context& context, const PersonAmendParams& params);

struct PersonFindParams {
  std::optional<wire::Name> text;  // words of a name, or a number; all must be found
  std::optional<model::PartialDate> birth;
  std::optional<wire::Name> home;
  std::optional<wire::Count<1, 500>> limit;
  std::optional<model::PersonId> cursor;
  std::optional<FaultLanguage> language = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(PersonFindParams, (), (text, birth, home, limit, cursor, language))
constexpr auto notes(const PersonFindParams*) { return std::array{wire::Note{"language", fault_words_note}}; }
struct FoundPerson {
  model::Person person;
  std::vector<model::Word> because;  // name, similar_name, look_alike_letters, identifier, birth, home
  std::optional<model::PersonId> shown_under = std::nullopt;  // of one who has several records, as it was decided
};
BOOST_DESCRIBE_STRUCT(FoundPerson, (), (person, because, shown_under))
struct PersonFindResult {
  std::vector<FoundPerson> people;        // by id
  std::optional<model::PersonId> cursor;  // the last one shown, when there are more
};
BOOST_DESCRIBE_STRUCT(PersonFindResult, (), (people, cursor))
// Where two births or homes of a record stand against each other it is found by either. Scope E V. Faults: value.empty.
[[nodiscard]] Result<PersonFindResult> person_find(Context& context, const PersonFindParams& params);

struct PersonReadParams {
  model::PersonId person;
  std::optional<FaultLanguage> language = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(PersonReadParams, (), (person, language))
constexpr auto notes(const PersonReadParams*) { return std::array{wire::Note{"language", fault_words_note}}; }
struct PersonReadResult {
  model::Person person;
  std::optional<std::vector<model::Conflict>> conflicts;
  std::optional<std::vector<model::EntryMark>> marks;
  std::vector<model::EntryId> revision;
  std::vector<ledger::ListedExam> exams;  // newest first; of all who are one with this person, each with the record it was entered for
  std::vector<LookAlike> look_alikes;
  std::optional<std::vector<model::Person>> linked;      // the other records of this person, as it was decided (pair.decide)
  std::optional<model::PersonId> shown_under;            // of them all
  std::optional<std::vector<model::Settled>> settled;    // of each member that was decided between what holds, then what it undid
};
BOOST_DESCRIBE_STRUCT(PersonReadResult, (), (person, conflicts, marks, revision, exams, look_alikes, linked, shown_under, settled))
// Scope E V. Faults: person.unknown.
[[nodiscard]] Result<PersonReadResult> person_read(Context& context, const PersonReadParams& params);

}  // namespace limbledger::service
