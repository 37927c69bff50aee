// What the catalogue says can be examined: an item, the scale it is graded on, and the sequence it stands in. All of it is
// data (core/reference/data); the words are message names. Limits are in the item's unit. Source: contract, section 2.
#pragma once

#include "core/model/exam/finding.hpp"

#include <optional>
#include <vector>

namespace limbledger::model {

enum class ValueKind {
  angle,
  arc,  // taken in as neutral-zero text, recorded as the two end items
  length,
  time,
  force,
  pressure,
  temperature,
  mass,
  count,
  grade,
  test,
  answer,
  choice,
  choices,
  text
};
BOOST_DESCRIBE_ENUM(ValueKind, angle, arc, length, time, force, pressure, temperature, mass, count, grade, test, answer, choice, choices, text)

enum class AxisEnd { high, low };
BOOST_DESCRIBE_ENUM(AxisEnd, high, low)

enum class Discomfort { none, low, some, high };
BOOST_DESCRIBE_ENUM(Discomfort, none, low, some, high)

enum class Status { read, memory, derived, common_practice, convention };
BOOST_DESCRIBE_ENUM(Status, read, memory, derived, common_practice, convention)

// Tenths of the item's unit.
struct LimitNumber {
  std::int64_t steps = 0;
  static constexpr wire::NumberRule wire_rule{-1000000, 1000000, 10, ""};
  friend bool operator==(const LimitNumber&, const LimitNumber&) = default;
};

struct ItemText {
  MessageId short_;                   // the label on a form
  MessageId how;                      // position, how it is done, what is felt or measured
  std::optional<MessageId> purpose;   // what it is for
  std::optional<MessageId> positive;  // what counts as positive
  std::optional<MessageId> care;      // when not, and what to look for first
  std::optional<MessageId> errors;    // what goes wrong often
  std::optional<MessageId> otherwise; // how else, for small hands, a heavy limb, or who cannot lie, stand or bend
  std::optional<MessageId> yes;       // what a yes or a positive says, in a few words: printed beside it
  std::optional<MessageId> no;        // and a no or a negative
  friend bool operator==(const ItemText&, const ItemText&) = default;
};
BOOST_DESCRIBE_STRUCT(ItemText, (), (short_, how, purpose, positive, care, errors, otherwise, yes, no))

// Another item to use, and when. Where a measured length decides, it is over or under a printed limit in the unit of that item.
struct Instead {
  Word when;
  ItemId item;
  std::optional<ItemId> measured;
  std::optional<LimitNumber> over;
  std::optional<LimitNumber> under;
  std::optional<SourceId> source;
  friend bool operator==(const Instead&, const Instead&) = default;
};
BOOST_DESCRIBE_STRUCT(Instead, (), (when, item, measured, over, under, source))

// How a grade counts as a test result: the first row whose named grades and end feels both hold. No row holds: no result.
struct Counts {
  TestResult as{};
  std::optional<std::vector<wire::Name>> grades;
  std::optional<std::vector<Word>> end_feels;
  friend bool operator==(const Counts&, const Counts&) = default;
};
BOOST_DESCRIBE_STRUCT(Counts, (), (as, grades, end_feels))

// The two ends that a neutral-zero triple is recorded as.
struct ArcEnds {
  ItemId low;
  ItemId high;
  friend bool operator==(const ArcEnds&, const ArcEnds&) = default;
};
BOOST_DESCRIBE_STRUCT(ArcEnds, (), (low, high))

struct Item {
  ItemId item;
  FamilyId family;
  Word region;
  std::vector<Side> sides;
  ValueKind value{};
  std::optional<Word> axis;     // joint plane, named by its positive direction: flexion
  std::optional<AxisEnd> end;   // which end of the axis this motion is
  std::optional<Word> toward;   // the direction the item is named for: flexion, extension
  std::optional<ArcEnds> arc;
  std::optional<Word> unit;     // deg, mm, s, n, mm_hg, cel, kg
  std::optional<std::vector<LimitNumber>> refuse;   // low, high: impossible outside
  std::optional<std::vector<LimitNumber>> confirm;  // low, high: asked back outside
  std::optional<ScaleId> scale;
  std::optional<std::vector<ChoiceId>> choices;
  // What is no finding to name: words of an answer, a test or the choices. Without it a no, a negative, and what the scale says;
  // a choice is then a description, and what somebody told (region history) is told.
  std::optional<std::vector<Word>> ordinary;
  std::optional<std::vector<Word>> positions;
  std::optional<std::vector<Word>> instruments;
  std::optional<wire::Count<1, 20>> trials_max;
  std::optional<OfTrials> of_trials;
  std::optional<std::vector<Word>> end_feels;
  std::optional<std::vector<Counts>> counts;
  wire::Count<0, 3600> seconds;
  Discomfort discomfort{};
  bool safety = false;  // pulses, sensation, bony tenderness, flags: never taken from "rest as expected"
  std::optional<std::vector<ConcernId>> withheld_by;
  std::optional<bool> protected_;  // asked for a person's protection: never on a page that may be seen over a shoulder, whatever was answered
  ItemText text;
  std::optional<std::vector<Instead>> instead;
  std::vector<SourceId> sources;
  Status status{};
  friend bool operator==(const Item&, const Item&) = default;
};
BOOST_DESCRIBE_STRUCT(Item, (), (item, family, region, sides, value, axis, end, toward, arc, unit, refuse, confirm, scale, choices, ordinary, positions,
                                 instruments, trials_max, of_trials, end_feels, counts, seconds, discomfort, safety, withheld_by, protected_, text, instead, sources, status))

// Whether something can be examined in a position: it is listed, or it is a way to lie or sit in one that is. Somebody late in
// pregnancy lies on the back tilted to the left; a small child is examined on a lap where others sit or lie on the back.
[[nodiscard]] bool takes_position(const Item& item, const Word& position);

struct ScaleGrade {
  wire::Name grade;
  MessageId means;
  std::optional<bool> shades;  // minus and plus are used with this grade
  // The whole millimetres that a measured displacement of this grade has; an open end is not written.
  std::optional<Millimetres> mm_low;
  std::optional<Millimetres> mm_high;
  friend bool operator==(const ScaleGrade&, const ScaleGrade&) = default;
};
BOOST_DESCRIBE_STRUCT(ScaleGrade, (), (grade, means, shades, mm_low, mm_high))

struct Scale {
  ScaleId scale;
  MessageId title;
  std::vector<ScaleGrade> grades;
  std::optional<bool> takes_mm;  // a measured displacement may stand beside the grade
  std::optional<Millimetres> mm_most;  // more than this is refused
  std::optional<bool> against_other_side;  // a grade is a difference from the other side
  std::optional<std::vector<wire::Name>> ordinary;  // grades that are no finding to name; without it a grade is a description
  std::vector<SourceId> sources;
  Status status{};
  friend bool operator==(const Scale&, const Scale&) = default;
};
BOOST_DESCRIBE_STRUCT(Scale, (), (scale, title, grades, takes_mm, mm_most, against_other_side, ordinary, sources, status))

// Each complaint has one sequence of steps; `free` holds every item in the catalogue's order.
struct SequenceStep {
  ItemId item;
  Word position;
  std::optional<bool> minimum;                         // without it the record is incomplete
  std::optional<wire::Count<1, 130>> minimum_under;    // of the minimum set below this age in completed years
  std::optional<bool> late;                            // only after the steps before it, and gently
  std::optional<wire::Count<1, 240>> until_months;     // only below this age in completed months; not offered where that is not known
  std::optional<wire::Count<1, 9>> drop;               // left out before the others where minutes are short, 1 first
  friend bool operator==(const SequenceStep&, const SequenceStep&) = default;
};
BOOST_DESCRIBE_STRUCT(SequenceStep, (), (item, position, minimum, minimum_under, late, until_months, drop))

struct Sequence {
  Word complaint;
  std::optional<Word> part;                              // the region complained of
  std::optional<std::vector<Word>> joints_around;        // regions of the joints above and below it
  std::optional<wire::Count<1, 120>> minutes;            // a working estimate for one examiner and a cooperative adult
  std::optional<std::vector<MessageId>> not_to_miss;     // three to five, without numbers, by how dangerous they are to miss
  std::vector<SequenceStep> steps;
  std::vector<SourceId> sources;
  Status status{};
  friend bool operator==(const Sequence&, const Sequence&) = default;
};
BOOST_DESCRIBE_STRUCT(Sequence, (), (complaint, part, joints_around, minutes, not_to_miss, steps, sources, status))

// What may be open and then withholds items (`withheld_by` of the item), and what settles it.
struct Concern {
  ConcernId concern;
  MessageId title;
  MessageId until;                      // what is waited for
  ItemId answered_by;                   // the examiner opens (yes) and lifts (no) it here
  std::optional<ChoiceId> film_opens;   // results of a film (history.film_result); where a film that shows nothing does not
  std::optional<ChoiceId> film_lifts;   // settle it, nothing stands here and the examiner lifts it
  std::vector<SourceId> sources;
  Status status{};
  friend bool operator==(const Concern&, const Concern&) = default;
};
BOOST_DESCRIBE_STRUCT(Concern, (), (concern, title, until, answered_by, film_opens, film_lifts, sources, status))

}  // namespace limbledger::model

// One table a type for the whole program, made in core/model/types.cpp: it is costly to make in every file.
namespace limbledger::wire {
extern template const Type& type_of<model::Item>();
extern template const Type& type_of<model::Scale>();
extern template const Type& type_of<model::Sequence>();
}  // namespace limbledger::wire
