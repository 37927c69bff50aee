// A rule as a sheet of inputs, for rules that are a list, a count or a few branches: each input has the classes that the rule tells
// apart and those it may be in as heard; a pure decision takes one class of each. From that come the outcome over every completion
// of what is unknown, the points between their ends, what would settle it, and the working. Source: decision rules page, section 0.
#pragma once

#include "core/interpret/rules/injury.hpp"

#include <functional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace limbledger::interpret {

// What one completion gives. Bands and gates are words of the rule; points count only where the sheet says so.
struct SheetAnswer {
  Outcome outcome = Outcome::undetermined;
  std::string_view band = {};
  std::string_view gate = {};
  std::int64_t points = 0;

  // Points apart: two completions with the same answer agree.
  [[nodiscard]] bool same_as(const SheetAnswer& other) const { return outcome == other.outcome && band == other.band && gate == other.gate; }
};

using SheetDecision = std::function<SheetAnswer(std::span<const std::uint8_t> classes)>;

struct SheetCompleted {
  SheetAnswer answer;  // outcome undetermined where the completions differ; its points are the least
  std::int64_t points_most = 0;
  std::vector<bool> settles;
  // What an input gives alone, by class: undetermined where the others still matter, nothing where it cannot be.
  std::vector<std::vector<std::optional<SheetAnswer>>> gives;
};
// `may_be` has one set of classes (bits) for each input.
[[nodiscard]] SheetCompleted complete_sheet(std::span<const Classes> may_be, const SheetDecision& decide);

struct SheetInput {
  std::string_view input;                 // calf_difference
  std::string_view said;                  // for the working: "calf thicker than the other"
  std::vector<std::string_view> classes;  // "under 30 mm", "30 mm or more"; of an answer: no, yes
  std::string_view item = {};             // what to record; empty where it is no item (age)
  model::Side side = model::Side::midline;
  Classes may_be = 0;
  std::string state = "not_asked";
  std::string reading = {};  // "32 mm"; empty: the class says it
  bool in_part = false;  // more items of it are open: a no of this one alone settles nothing
};

struct RuleSheet {
  std::string_view rule;
  std::string_view edition;
  model::Side side = model::Side::midline;
  std::vector<SheetInput> inputs;
  bool counts = false;  // its points are shown
  std::string_view formula;
  std::vector<WorkingRow> rows;
  std::vector<const model::Finding*> findings;
};
// Flags are the rule's own affair: they are added to the result.
[[nodiscard]] JudgedRule judge_sheet(const View& view, const RuleSheet& sheet, const SheetDecision& decide);
// The same of what was completed in another way (grouped.hpp).
[[nodiscard]] JudgedRule judge_completed(const View& view, const RuleSheet& sheet, const SheetCompleted& completed);

inline constexpr std::uint8_t sheet_no = 0;
inline constexpr std::uint8_t sheet_yes = 1;

// An answer, a test or whatever `says` reads, with what it rests on added to the sheet's findings. The side of an item that has
// none is the person.
void add_answer(const View& view, RuleSheet& sheet, std::string_view input, std::string_view said, std::string_view item, model::Side side,
                const Says& says = &says_answer);
// A test as an answer: positive yes, negative no, anything else open. A negative that was guarded or badly felt is open.
[[nodiscard]] Said says_test(const model::Finding& finding);

// What was measured, in the item's own steps (0.1 degree toward the direction it is named for, mm, 0.1 s, mmHg, count): two that
// stand span what they span, an open conflict leaves it unknown, a bound is open on its side.
struct MeasuredAt {
  std::optional<Between> between;
  std::string state = "not_asked";
  std::string reading;  // "112 deg"
};
[[nodiscard]] MeasuredAt measure_at(const View& view, std::string_view item, model::Side side, std::vector<const model::Finding*>& findings);

// A number cut at rising limits: below the first, from the first to below the second ...
void add_number(RuleSheet& sheet, std::string_view input, std::string_view said, std::string_view item, model::Side side, const MeasuredAt& measured,
                std::span<const std::int64_t> limits, std::vector<std::string_view> classes);

// Completed years on the day of the exam.
[[nodiscard]] MeasuredAt age_at_exam(const View& view);

}  // namespace limbledger::interpret
