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
  model::MessageId label;
  model::ItemText text;
  std::optional<std::vector<FormOption>> choices;
  std::optional<model::ScaleId> scale;
  std::optional<bool> takes_mm;
  std::optional<model::Word> unit;
  std::optional<std::vector<model::LimitNumber>> refuse;
  std::optional<std::vector<model::LimitNumber>> confirm;
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
                      (item, sides, control, label, text, choices, scale, takes_mm, unit, refuse, confirm, instruments, trials_max, end_feels,
                       why_not, seconds, discomfort, safety, minimum, minimum_under, late, instead, instead_of))

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
