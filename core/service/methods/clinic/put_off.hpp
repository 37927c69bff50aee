// conflict.put_off: a line of what disagrees cannot be decided now, and somebody was asked: whom and what, and when to look again. It
// settles nothing. The line stays where it is in the queue, says so, and is due again from that day; at once where something else came to
// stand there. What several devices put off all stands. It lives in the record that the line is of and goes when that is erased: of an
// exam, of a person, and of a pair in the record of its first person. A page that leaves the clinic says nothing of it.
#pragma once

#include "core/ledger/fold/fold.hpp"
#include "core/model/time.hpp"
#include "core/report/words/words.hpp"
#include "core/service/context.hpp"
#include "core/service/writing.hpp"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace limbledger::service {

struct QueueRow;

struct ToldPutOff {
  model::EntryId entry;
  std::optional<model::ExaminerId> by;
  std::optional<wire::Remark> by_name;     // name and role, or in words that the name is not known here
  model::Instant at;                       // when it was written, as that device's clock claimed
  wire::Remark asked;
  model::PartialDate look_again;
  bool due = false;
  std::optional<bool> changed = std::nullopt;
  std::optional<bool> again = std::nullopt;
  std::optional<wire::LongText> text = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(ToldPutOff, (), (entry, by, by_name, at, asked, look_again, due, changed, again, text))
constexpr auto notes(const ToldPutOff*) {
  return std::array{wire::Note{"asked", "whom, and what"}, wire::Note{"due", "its day has come by this device's clock, or that cannot be right, or something else came to stand there; never where it was put off again since"},
                    wire::Note{"changed", "true: something stands on this line that whoever put it off had not seen"},
                    wire::Note{"again", "true: somebody who knew of this one put the line off again"}};
}

struct ConflictPutOffParams {
  std::optional<model::ExamId> exam;
  std::optional<std::vector<model::PersonId>> persons;
  model::Word about;
  std::vector<model::EntryId> entries;
  wire::Remark asked;
  model::PartialDate look_again;
  std::vector<model::EntryId> seen;
  model::RequestId request;
  std::optional<std::vector<wire::Name>> confirmed = std::nullopt;  // codes a person has answered for: value.unusual
  std::optional<FaultLanguage> language = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(ConflictPutOffParams, (), (exam, persons, about, entries, asked, look_again, seen, request, confirmed, language))
constexpr auto notes(const ConflictPutOffParams*) {
  return std::array{wire::Note{"language", fault_words_note}, wire::Note{"exam", "of a line of an exam"},
                    wire::Note{"persons", "of a line without an exam: its person, or both of its pair"}, wire::Note{"about", "of the line"},
                    wire::Note{"entries", "those of the line, each `entry`; of a pair those in `decided`; empty where none stands there"},
                    wire::Note{"asked", "whom, and what"}, wire::Note{"look_again", "a day, not before today: from then on the line is due; where a warning hangs on the line, later than tomorrow is asked back, and of any line later than in a year"},
                    wire::Note{"confirmed", "codes a person has answered for: value.unusual"},
                    wire::Note{"seen", "needed: the line's `revision`; of a pair that of its first person, in `pair.people`"}};
}
struct ConflictPutOffResult {
  ToldPutOff put_off;
  std::vector<model::EntryId> revision;
  std::optional<bool> repeat;
};
BOOST_DESCRIBE_STRUCT(ConflictPutOffResult, (), (put_off, revision, repeat))
// Scope E; writes, also into a signed or a withdrawn exam. Faults: value.all_or_one (neither or both of exam and persons), value.empty
// (nobody named as asked), value.date_order (a day that has passed), value.unusual (asked back: a long wait), conflict.unknown (no line as it stands), finding.stale (a line at
// which something else stands), exam.unknown, person.unknown, revision.unknown.
[[nodiscard]] Result<ConflictPutOffResult> conflict_put_off(Context& context, const ConflictPutOffParams& params);

// What is put off of a row, from the operations of the record that it is of; with the sentence where there are words.
void add_put_offs(Context& context, std::span<const ledger::Opened> operations, const std::optional<model::OffsetMinutes>& offset_min, const report::Words* words, QueueRow& row);
// Anew as of the last of these days; `due` follows.
void look_on(const model::PartialDate& as_of, const std::optional<model::OffsetMinutes>& offset_min, const report::Words* words, std::vector<ToldPutOff>& put_off);
// The entries that a line stands on, for `entries` of the method.
[[nodiscard]] std::vector<model::EntryId> standing_on(const QueueRow& row);
// The sentences, each on a line of its own.
[[nodiscard]] std::string put_off_lines(const QueueRow& row);

}  // namespace limbledger::service
