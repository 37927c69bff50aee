// form.describe: what to draw for a complaint, position by position, so that a form needs no knowledge of its own. Steps stand in
// the order that turns the person least. What somebody cannot do is replaced by the catalogue's alternative or named as left
// out; minutes leave out what is neither of the minimum set nor asked for safety. With an exam: the age, and what open concerns
// withhold. Refused: complaints that are not in the edition. Nothing here stops recording (contract, section 9; C9, C20 to C22).
#pragma once

#include "core/interpret/concerns.hpp"
#include "core/service/context.hpp"
#include "core/wire/fault.hpp"

#include <optional>
#include <vector>

namespace limbledger::service {

enum class Cannot { lie_prone, lie_supine, stand, sit, reach_90 };
BOOST_DESCRIBE_ENUM(Cannot, lie_prone, lie_supine, stand, sit, reach_90)

enum class Control { angle, number, grade, test, answer, choice, choices, text };
BOOST_DESCRIBE_ENUM(Control, angle, number, grade, test, answer, choice, choices, text)

struct FormDescribeParams {
  model::Word complaint;
  std::optional<wire::Count<1, 240>> minutes;
  std::optional<std::vector<Cannot>> cannot;
  std::optional<model::ExamId> exam;
};
BOOST_DESCRIBE_STRUCT(FormDescribeParams, (), (complaint, minutes, cannot, exam))
constexpr auto notes(const FormDescribeParams*) {
  return std::array{wire::Note{"minutes", "leaves out what does not fit, but never the minimum set nor what is asked for safety"},
                    wire::Note{"cannot", "steps in such positions are replaced, or named as left out"},
                    wire::Note{"exam", "gives the age and the open concerns"}};
}

struct FormOption {
  std::optional<wire::Name> grade;
  std::optional<model::ChoiceId> choice;
  model::MessageId label;
  std::optional<bool> shades;
};
BOOST_DESCRIBE_STRUCT(FormOption, (), (grade, choice, label, shades))

struct FormStep {
  model::ItemId item;
  std::vector<model::Side> sides;
  Control control{};
  model::ValueKind value{};
  std::optional<model::Word> axis;
  std::optional<model::Word> toward;
  std::optional<std::vector<model::Word>> orders;  // of an arc
  model::MessageId label;
  model::ItemText text;
  std::optional<std::vector<FormOption>> choices;
  std::optional<model::ScaleId> scale;
  std::optional<bool> takes_mm;
  std::optional<model::Word> unit;
  std::optional<std::vector<model::LimitNumber>> refuse;
  std::optional<std::vector<model::LimitNumber>> confirm;
  std::optional<std::vector<model::Word>> positions;
  std::optional<std::vector<model::Word>> instruments;
  std::optional<wire::Count<1, 20>> trials_max;
  std::optional<std::vector<model::Word>> end_feels;
  std::vector<model::WhyNot> why_not;
  wire::Count<0, 3600> seconds;
  model::Discomfort discomfort{};
  bool safety = false;
  std::optional<bool> minimum;
  std::optional<wire::Count<1, 130>> minimum_under;  // where the age is not known
  std::optional<bool> late;
  std::optional<std::vector<model::Instead>> instead;
  std::optional<model::ItemId> instead_of;
};
BOOST_DESCRIBE_STRUCT(FormStep, (),
                      (item, sides, control, value, axis, toward, orders, label, text, choices, scale, takes_mm, unit, refuse, confirm, positions, instruments,
                       trials_max, end_feels, why_not, seconds, discomfort, safety, minimum, minimum_under, late, instead, instead_of))
constexpr auto notes(const FormStep*) {
  return std::array{
      wire::Note{"value", "the kind of the value to send; an arc is sent as an angle with entered and one of orders, such as 5-0-130 and extension_zero_flexion"},
      wire::Note{"axis", "of an angle: deg counts along it, so that a knee which stops 20 short of straight is deg 20 on flexion"},
      wire::Note{"toward", "of an angle: toward_deg counts in this direction; send deg or toward_deg, not both"},
      wire::Note{"orders", "of an arc: one of them is sent as order; it names the ends that the first and the last number belong to"},
      wire::Note{"choices", "of a grade: what to send as grade, with the scale; of a choice: what to send as choice or choices"},
      wire::Note{"takes_mm", "the grade may come with its millimetres"},
      wire::Note{"refuse", "lowest and highest that are taken, in the unit; of an angle along its axis"},
      wire::Note{"confirm", "what is outside is asked back (value.unusual); of an angle along its axis"},
      wire::Note{"positions", "one of them may be sent as position; where there are none, send none"},
      wire::Note{"instruments", "one of them may be sent as instrument; where there are none, send none"},
      wire::Note{"trials_max", "so many readings may be sent as trials, in place of the value; of an angle along its axis"},
      wire::Note{"why_not", "reasons to offer for not done; every other reason of the list is taken too"},
      wire::Note{"seconds", "an estimate for one side"},
      wire::Note{"safety", "asked because of what must not be missed"},
      wire::Note{"minimum", "of the minimum set"},
      wire::Note{"minimum_under", "of the minimum set under this age in years, where the age is not known"},
      wire::Note{"late", "only after the steps before it, and gently"},
      wire::Note{"instead", "what to examine where somebody cannot do this"},
      wire::Note{"instead_of", "stands here in the place of that item, for what cannot be done"}};
}

struct FormPosition {
  model::Word position;
  std::vector<FormStep> steps;
};
BOOST_DESCRIBE_STRUCT(FormPosition, (), (position, steps))

struct WithheldStep {
  model::ItemId item;
  std::vector<model::Side> sides;
  model::ConcernId by;
  model::MessageId because;
  model::MessageId until;
  std::optional<bool> minimum;
};
BOOST_DESCRIBE_STRUCT(WithheldStep, (), (item, sides, by, because, until, minimum))

enum class WhyLeft { no_minutes, cannot };
BOOST_DESCRIBE_ENUM(WhyLeft, no_minutes, cannot)

struct LeftStep {
  model::ItemId item;
  WhyLeft why{};
  std::optional<bool> minimum;
};
BOOST_DESCRIBE_STRUCT(LeftStep, (), (item, why, minimum))

struct FormDescribeResult {
  model::Word complaint;
  model::EditionId edition;
  std::optional<wire::Count<1, 120>> minutes;  // the estimate of the sequence
  wire::Count<0, 1000000> seconds;             // of the steps below, each side by itself
  std::vector<FormPosition> positions;
  std::vector<WithheldStep> withheld;
  std::vector<LeftStep> left_out;
  std::vector<model::ItemId> minimum;  // the whole minimum set for this person, also what is withheld or left out
  std::vector<model::MessageId> not_to_miss;
};
BOOST_DESCRIBE_STRUCT(FormDescribeResult, (), (complaint, edition, minutes, seconds, positions, withheld, left_out, minimum, not_to_miss))

struct FormAsk {
  const model::Sequence* sequence = nullptr;
  std::optional<std::int64_t> seconds;
  std::vector<Cannot> cannot;
  std::optional<model::AgeInterval> age;
  std::vector<interpret::OpenConcern> open;
};

// The form of one sequence; a pure function of the edition and what is asked.
[[nodiscard]] FormDescribeResult lay_out_form(const reference::Edition& edition, const FormAsk& ask);
// The sequence of a complaint; fault params.unknown_word with those there are.
[[nodiscard]] Result<const model::Sequence*> find_sequence(const reference::Edition& edition, const model::Word& complaint);

}  // namespace limbledger::service
