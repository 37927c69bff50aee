// form.describe: what to draw for a complaint, position by position, so that a form needs no knowledge of its own. Steps stand in
// the order that turns the person least. What somebody cannot do is replaced by the catalogue's alternative or named as left
// out; minutes leave out what is neither of the minimum set nor asked for safety. With an exam: the age, pregnancy, what is
// recorded already, and what open concerns withhold. Refused: complaints that are not in the edition. Nothing here stops
// recording (contract, section 9; C9, C20 to C22).
#pragma once

#include "core/interpret/held.hpp"
#include "core/service/context.hpp"
#include "core/wire/fault.hpp"

#include <optional>
#include <vector>

namespace limbledger::service {

enum class Cannot { lie_prone, lie_supine, lie_side, stand, walk, sit, reach_90, one_limb, no_instrument };
BOOST_DESCRIBE_ENUM(Cannot, lie_prone, lie_supine, lie_side, stand, walk, sit, reach_90, one_limb, no_instrument)

enum class Control { angle, number, grade, test, answer, choice, choices, text };
BOOST_DESCRIBE_ENUM(Control, angle, number, grade, test, answer, choice, choices, text)

struct FormDescribeParams {
  model::Word complaint;
  std::optional<wire::Count<1, 240>> minutes;
  std::optional<std::vector<Cannot>> cannot;
  std::optional<model::ExamId> exam;
  std::optional<model::Word> language = std::nullopt;
};
BOOST_DESCRIBE_STRUCT(FormDescribeParams, (), (complaint, minutes, cannot, exam, language))
constexpr auto notes(const FormDescribeParams*) {
  return std::array{wire::Note{"minutes", "leaves out what does not fit, but never the minimum set nor what is asked for safety"},
                    wire::Note{"cannot", "such steps are replaced, or named as left out; one_limb: nothing that takes two legs; no_instrument: hands and eyes alone"},
                    wire::Note{"exam", "gives the age, a pregnancy, the open concerns and what is recorded already, so that a form goes on where it stopped; with it the ledger must be unlocked"},
                    wire::Note{"language", "en, es or fr: adds the words of every name in this form; es and fr are labels for review by a clinician, and their sentences are English"}};
}

struct FormOption {
  std::optional<wire::Name> grade;
  std::optional<model::ChoiceId> choice;
  model::MessageId label;
  std::optional<bool> shades;
};
BOOST_DESCRIBE_STRUCT(FormOption, (), (grade, choice, label, shades))

struct FormWriteParams {
  model::Word complaint;
  std::optional<wire::Count<1, 240>> minutes;
  std::optional<std::vector<Cannot>> cannot;
  std::optional<model::Word> language;
};
BOOST_DESCRIBE_STRUCT(FormWriteParams, (), (complaint, minutes, cannot, language))
constexpr auto notes(const FormWriteParams*) {
  return std::array{wire::Note{"minutes", "as form.describe takes it"}, wire::Note{"cannot", "as form.describe takes it"},
                    wire::Note{"language", "en by default; es and fr are labels for review by a clinician, and say so on each sheet"}};
}

struct FormWriteResult {
  wire::Text<1'000'000, true> html;
  model::EditionId edition;
  model::Word language;
  std::optional<bool> for_review;
};
BOOST_DESCRIBE_STRUCT(FormWriteResult, (), (html, edition, language, for_review))
constexpr auto notes(const FormWriteResult*) {
  return std::array{wire::Note{"html", "a whole document, black on white, for A4; it loads nothing and runs nothing. What is entered from it later has origin from_paper and the time of the examination"}};
}

// What the exam holds of a step on one side already.
struct FormRecorded {
  model::Side side{};
  std::optional<std::vector<model::FindingId>> findings;
  std::optional<model::WhyNot> not_done;
  std::optional<bool> in_conflict;
  std::optional<model::ItemId> by;  // done by another item that stands for it
  std::optional<bool> to_confirm;
};
BOOST_DESCRIBE_STRUCT(FormRecorded, (), (side, findings, not_done, in_conflict, by, to_confirm))
constexpr auto notes(const FormRecorded*) {
  return std::array{wire::Note{"not_done", "recorded, with this reason for not having been done; no_time leaves the step open, since nobody looked"},
                    wire::Note{"by", "done by this other item, which may stand in its place"},
                    wire::Note{"to_confirm", "carried over, or reported by the person alone: the side is open until an examiner records it"}};
}

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
  std::optional<std::vector<FormRecorded>> recorded;
  std::optional<bool> done;
};
BOOST_DESCRIBE_STRUCT(FormStep, (),
                      (item, sides, control, value, axis, toward, orders, label, text, choices, scale, takes_mm, unit, refuse, confirm, positions, instruments,
                       trials_max, end_feels, why_not, seconds, discomfort, safety, minimum, minimum_under, late, instead, instead_of, recorded, done))
constexpr auto notes(const FormStep*) {
  return std::array{
      wire::Note{"value", "the kind of the value to send; an arc is sent as an angle with entered and one of orders, such as 5-0-130 and extension_zero_flexion"},
      wire::Note{"axis", "of an angle: named by its high end, the way toward which is more than zero; deg and trials count along it, so that a knee which stops 20 short of straight is deg 20 on flexion"},
      wire::Note{"toward", "of an angle: toward_deg counts in this direction; send deg or toward_deg, not both"},
      wire::Note{"orders", "of an arc: one of them is sent as order; it names the ends that the first and the last number belong to"},
      wire::Note{"choices", "of a grade: what to send as grade, with the scale; of a choice: what to send as choice or choices"},
      wire::Note{"takes_mm", "the grade may come with its millimetres"},
      wire::Note{"refuse", "lowest and highest that are taken, in the unit; of an angle along its axis"},
      wire::Note{"confirm", "what is outside is asked back (value.unusual); of an angle along its axis"},
      wire::Note{"positions", "one of them may be sent as position; where there are none, send none"},
      wire::Note{"instruments", "one of them may be sent as instrument; where there are none, send none"},
      wire::Note{"trials_max", "so many readings may be sent as trials; of an angle they count along its axis, and toward_deg goes with them: a knee read 10 and 12 short of straight is trials [10,12] and toward_deg -11 of an extension"},
      wire::Note{"why_not", "reasons to offer for not done; every other reason of the list is taken too"},
      wire::Note{"seconds", "an estimate for one side"},
      wire::Note{"safety", "asked because of what must not be missed"},
      wire::Note{"minimum", "of the minimum set"},
      wire::Note{"minimum_under", "of the minimum set under this age in years, where the age is not known"},
      wire::Note{"late", "only after the steps before it, and gently"},
      wire::Note{"instead", "what to examine where somebody cannot do this"},
      wire::Note{"instead_of", "stands here in the place of that item, for what cannot be done"},
      wire::Note{"recorded", "what the exam holds of this step already; a side that is not named is still open"},
      wire::Note{"done", "every side of this step is recorded, or a reason why not"}};
}

struct FormPosition {
  model::Word position;
  model::MessageId label;
  std::optional<model::MessageId> advice;
  std::vector<FormStep> steps;
};
BOOST_DESCRIBE_STRUCT(FormPosition, (), (position, label, advice, steps))
constexpr auto notes(const FormPosition*) {
  return std::array{wire::Note{"advice", "how to lie or sit, where something recorded asks for it"},
                    wire::Note{"steps", "in this order; each on both sides before the next"}};
}

struct WithheldStep {
  model::ItemId item;
  std::vector<model::Side> sides;
  model::Word by;  // concern.* or alert.*
  model::MessageId because;
  model::MessageId until;
  std::optional<model::ItemId> lifted_by;
  std::optional<model::ChoiceId> film_lifts;
  std::optional<bool> minimum;
  std::optional<model::MessageId> label;
  std::optional<std::vector<FormRecorded>> recorded;
  model::Word position;
  FormStep step;
};
BOOST_DESCRIBE_STRUCT(WithheldStep, (), (item, sides, by, because, until, lifted_by, film_lifts, minimum, label, recorded, position, step))
constexpr auto notes(const WithheldStep*) {
  return std::array{wire::Note{"item", "not advised now; a finding for it is asked back (item.withheld), and with despite is taken all the same"},
                    wire::Note{"by", "what speaks against it: a danger (alert.*), or what is not settled (concern.*), as a break is while a rule still asks for answers"},
                    wire::Note{"lifted_by", "the examiner's own no here lifts it"},
                    wire::Note{"film_lifts", "so does this choice of history.film_result; where there is none, a film does not lift it"},
                    wire::Note{"recorded", "what the exam holds of it already"},
                    wire::Note{"position", "where it would stand, with the heading of that position"},
                    wire::Note{"step", "the step as it would stand there, to draw it by where it was done all the same, or to go on with what is asked back about it; for these sides. The other sides, where "
                                       "there are any, still stand in positions"}};
}

enum class WhyLeft { no_minutes, cannot, pregnancy, no_instrument, age_unknown };
BOOST_DESCRIBE_ENUM(WhyLeft, no_minutes, cannot, pregnancy, no_instrument, age_unknown)

struct LeftStep {
  model::ItemId item;
  WhyLeft why{};
  std::optional<bool> minimum;
  std::optional<model::MessageId> label;
  std::optional<model::MessageId> loses;
};
BOOST_DESCRIBE_STRUCT(LeftStep, (), (item, why, minimum, label, loses))
constexpr auto notes(const LeftStep*) { return std::array{wire::Note{"loses", "what it would have told"}}; }

// What this body does not have, what is covered, or what is for younger children alone: not asked for, with the reason to record where somebody wants to.
struct BodyStep {
  model::ItemId item;
  std::vector<model::Side> sides;
  model::WhyNot reason{};
  model::MessageId because;
};
BOOST_DESCRIBE_STRUCT(BodyStep, (), (item, sides, reason, because))

struct OpenItem {
  model::ItemId item;
  model::Side side{};
};
BOOST_DESCRIBE_STRUCT(OpenItem, (), (item, side))

// A measure of the exam that is looked at again. Its value is left out: a reading is not to be led by the last one.
struct MeasuredBefore {
  model::ItemId item;
  model::Side side{};
  std::optional<model::Word> instrument;
  std::optional<model::Word> position;
  std::optional<model::Instant> examined_at;
};
BOOST_DESCRIBE_STRUCT(MeasuredBefore, (), (item, side, instrument, position, examined_at))

// What a name in a form says in the language that was asked for.
struct FormText {
  model::MessageId message;
  wire::LongText text;
  std::optional<bool> english;
};
BOOST_DESCRIBE_STRUCT(FormText, (), (message, text, english))
constexpr auto notes(const FormText*) { return std::array{wire::Note{"english", "nobody has translated it: it is said in English, with its mark"}}; }

struct FormDescribeResult {
  model::Word complaint;
  model::MessageId label;
  model::EditionId edition;
  std::optional<wire::Count<1, 120>> minutes;
  wire::Count<0, 1000000> seconds;
  wire::Count<0, 1000000> minimum_seconds;
  std::vector<FormPosition> positions;
  std::vector<WithheldStep> withheld;
  std::vector<LeftStep> left_out;
  std::vector<BodyStep> not_applicable;
  std::vector<model::ItemId> minimum;
  std::vector<model::MessageId> not_to_miss;
  std::optional<std::vector<OpenItem>> minimum_open;
  std::optional<model::ItemId> resume_at;
  std::optional<std::vector<MeasuredBefore>> again;
  std::optional<model::Word> language;
  std::optional<bool> for_review;
  std::optional<std::vector<FormText>> texts;
};
BOOST_DESCRIBE_STRUCT(FormDescribeResult, (),
                      (complaint, label, edition, minutes, seconds, minimum_seconds, positions, withheld, left_out, not_applicable, minimum, not_to_miss, minimum_open, resume_at,
                       again, language, for_review, texts))
constexpr auto notes(const FormDescribeResult*) {
  return std::array{wire::Note{"minutes", "a working figure of the trade for the focused examination of this complaint by a practised hand, not for every step below"},
                    wire::Note{"seconds", "the steps below that are not recorded yet, each side by itself, added up"},
                    wire::Note{"minimum_seconds", "of these, the minimum set alone"},
                    wire::Note{"not_applicable", "what this body does not have, what is covered, or what is for younger children alone; a finding for it is taken all the same"},
                    wire::Note{"minimum", "the whole minimum set for this person, also what is withheld or left out"},
                    wire::Note{"minimum_open", "with an exam: what of the minimum set is not recorded yet"},
                    wire::Note{"again", "of a review: what the exam that it reviews measured, with which tool and in which position; these come first, the same way"},
                    wire::Note{"resume_at", "with an exam: the first step that is not wholly recorded"},
                    wire::Note{"for_review", "no clinician has read the words of this language; every page that shows them says so"},
                    wire::Note{"texts", "with a language: every message that this form names (labels, how a step is done, what it is for, what counts as positive, what a yes and a no say, cautions, why a step is withheld), and the words of its sides, answers, results, reasons, how a step was done that is not advised, units and directions, positions, instruments and end feels: msg.side.left, msg.answer.yes, msg.result.positive, msg.why.pain, msg.despite.knowingly, msg.unit.deg, msg.toward.flexion, msg.position.supine, msg.instrument.hand, msg.end_feel.spasm"}};
}

struct RecordedSlot {
  const model::Item* item = nullptr;
  FormRecorded what;
};

struct FormAsk {
  const model::Sequence* sequence = nullptr;
  std::optional<std::int64_t> seconds;
  std::vector<Cannot> cannot;
  std::optional<model::AgeInterval> age;
  std::optional<model::AgeInterval> age_months;
  std::vector<interpret::OpenConcern> open;
  std::vector<interpret::JudgedFlag> flags;
  bool late_pregnancy = false;  // from about 20 weeks, or of unknown length
  bool without_protected = false;  // what is asked in private alone stands on no kiosk and on no paper
  bool told_alone = false;         // at a kiosk: what somebody can say, and nothing that is examined
  std::optional<std::vector<RecordedSlot>> recorded;
  std::vector<OpenItem> minimum_open;
  std::vector<BodyStep> not_applicable;
};

// The form of one sequence; a pure function of the edition and what is asked.
[[nodiscard]] FormDescribeResult lay_out_form(const reference::Edition& edition, const FormAsk& ask);
// The sequence of a complaint; fault params.unknown_word with those there are.
[[nodiscard]] Result<const model::Sequence*> find_sequence(const reference::Edition& edition, const model::Word& complaint);

}  // namespace limbledger::service
