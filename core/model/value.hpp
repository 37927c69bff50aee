// What a finding can hold. `kind` is the tag; each kind of quantity is its own alternative; a reason why something was not
// done is a value like any other. "Not asked" is an empty slot and has no value. Source: contract, section 5.
#pragma once

#include "core/model/ids.hpp"
#include "core/model/quantity.hpp"

#include <optional>
#include <variant>
#include <vector>

namespace limbledger::model {

enum class OfTrials { mean, best, last };
BOOST_DESCRIBE_ENUM(OfTrials, mean, best, last)

enum class Bound { at_least, at_most };
BOOST_DESCRIBE_ENUM(Bound, at_least, at_most)

// How a text that is not a plain number reads: with no agreed meaning, as "full", or as "the same as the other side".
enum class Reads { unresolved, full, same_as_other_side };
BOOST_DESCRIBE_ENUM(Reads, unresolved, full, same_as_other_side)

enum class Shade { minus, plus };
BOOST_DESCRIBE_ENUM(Shade, minus, plus)

enum class TestResult { negative, positive, equivocal };
BOOST_DESCRIBE_ENUM(TestResult, negative, positive, equivocal)

enum class Reproduces { familiar, other };
BOOST_DESCRIBE_ENUM(Reproduces, familiar, other)

enum class AnswerWord { yes, no, unsure };
BOOST_DESCRIBE_ENUM(AnswerWord, yes, no, unsure)

enum class Signal { absent };
BOOST_DESCRIBE_ENUM(Signal, absent)

enum class WhyNot {
  declined,
  pain,
  blocked,
  unable,
  baseline_unable,
  no_limb,
  fused,
  implant,
  covered,
  not_palpable,
  cannot_hold,
  beyond_instrument,
  no_instrument,
  not_reliable,
  cannot_answer,
  withheld,
  no_time,
  other
};
BOOST_DESCRIBE_ENUM(WhyNot, declined, pain, blocked, unable, baseline_unable, no_limb, fused, implant, covered, not_palpable, cannot_hold,
                    beyond_instrument, no_instrument, not_reliable, cannot_answer, withheld, no_time, other)

// An angle on the axis of its joint plane (positive is flexion, dorsiflexion, abduction ...). Input gives exactly one of
// deg, toward_deg, entered; stored and shown are deg, toward, toward_deg and what was entered.
struct Angle {
  static constexpr std::string_view kind = "angle";
  std::optional<Degrees> deg;
  std::optional<Word> toward;
  std::optional<Degrees> toward_deg;
  std::optional<std::vector<Degrees>> trials;
  std::optional<OfTrials> of_trials;
  std::optional<wire::Name> entered;
  std::optional<Word> order;
  std::optional<Bound> bound;
  std::optional<Reads> reads;
  friend bool operator==(const Angle&, const Angle&) = default;
};
BOOST_DESCRIBE_STRUCT(Angle, (), (deg, toward, toward_deg, trials, of_trials, entered, order, bound, reads))

struct Length {
  static constexpr std::string_view kind = "length";
  std::optional<Millimetres> mm;
  std::optional<std::vector<Millimetres>> trials;
  std::optional<OfTrials> of_trials;
  std::optional<wire::Name> entered;
  friend bool operator==(const Length&, const Length&) = default;
};
BOOST_DESCRIBE_STRUCT(Length, (), (mm, trials, of_trials, entered))

struct Duration {
  static constexpr std::string_view kind = "time";
  std::optional<Seconds> s;
  std::optional<std::vector<Seconds>> trials;
  std::optional<OfTrials> of_trials;
  std::optional<wire::Name> entered;
  friend bool operator==(const Duration&, const Duration&) = default;
};
BOOST_DESCRIBE_STRUCT(Duration, (), (s, trials, of_trials, entered))

struct Force {
  static constexpr std::string_view kind = "force";
  std::optional<Newtons> n;
  std::optional<std::vector<Newtons>> trials;
  std::optional<OfTrials> of_trials;
  std::optional<wire::Name> entered;
  friend bool operator==(const Force&, const Force&) = default;
};
BOOST_DESCRIBE_STRUCT(Force, (), (n, trials, of_trials, entered))

struct Pressure {
  static constexpr std::string_view kind = "pressure";
  std::optional<MillimetresOfMercury> mm_hg;
  std::optional<std::vector<MillimetresOfMercury>> trials;
  std::optional<OfTrials> of_trials;
  std::optional<wire::Name> entered;
  std::optional<Signal> signal;
  friend bool operator==(const Pressure&, const Pressure&) = default;
};
BOOST_DESCRIBE_STRUCT(Pressure, (), (mm_hg, trials, of_trials, entered, signal))

struct Temperature {
  static constexpr std::string_view kind = "temperature";
  std::optional<Celsius> cel;
  std::optional<std::vector<Celsius>> trials;
  std::optional<OfTrials> of_trials;
  std::optional<wire::Name> entered;
  friend bool operator==(const Temperature&, const Temperature&) = default;
};
BOOST_DESCRIBE_STRUCT(Temperature, (), (cel, trials, of_trials, entered))

struct Mass {
  static constexpr std::string_view kind = "mass";
  std::optional<Kilograms> kg;
  std::optional<std::vector<Kilograms>> trials;
  std::optional<OfTrials> of_trials;
  std::optional<wire::Name> entered;
  friend bool operator==(const Mass&, const Mass&) = default;
};
BOOST_DESCRIBE_STRUCT(Mass, (), (kg, trials, of_trials, entered))

struct CountValue {
  static constexpr std::string_view kind = "count";
  wire::Count<0, 100000> count;
  friend bool operator==(const CountValue&, const CountValue&) = default;
};
BOOST_DESCRIBE_STRUCT(CountValue, (), (count))

struct Grade {
  static constexpr std::string_view kind = "grade";
  ScaleId scale;
  wire::Name grade;  // text of the scale: "2+", "4"
  std::optional<Shade> shade;
  std::optional<wire::Name> word;
  std::optional<Millimetres> mm;
  friend bool operator==(const Grade&, const Grade&) = default;
};
BOOST_DESCRIBE_STRUCT(Grade, (), (scale, grade, shade, word, mm))

struct Test {
  static constexpr std::string_view kind = "test";
  TestResult result{};
  std::optional<Reproduces> reproduces;
  friend bool operator==(const Test&, const Test&) = default;
};
BOOST_DESCRIBE_STRUCT(Test, (), (result, reproduces))

struct Answer {
  static constexpr std::string_view kind = "answer";
  AnswerWord answer{};
  friend bool operator==(const Answer&, const Answer&) = default;
};
BOOST_DESCRIBE_STRUCT(Answer, (), (answer))

struct Choice {
  static constexpr std::string_view kind = "choice";
  ChoiceId choice;
  friend bool operator==(const Choice&, const Choice&) = default;
};
BOOST_DESCRIBE_STRUCT(Choice, (), (choice))

struct Choices {
  static constexpr std::string_view kind = "choices";
  std::vector<ChoiceId> choices;
  friend bool operator==(const Choices&, const Choices&) = default;
};
BOOST_DESCRIBE_STRUCT(Choices, (), (choices))

// Own words; never interpreted.
struct Words {
  static constexpr std::string_view kind = "text";
  wire::LongText text;
  friend bool operator==(const Words&, const Words&) = default;
};
BOOST_DESCRIBE_STRUCT(Words, (), (text))

struct NotDone {
  static constexpr std::string_view kind = "not_done";
  WhyNot reason{};
  std::optional<wire::Remark> detail;
  friend bool operator==(const NotDone&, const NotDone&) = default;
};
BOOST_DESCRIBE_STRUCT(NotDone, (), (reason, detail))

using Value = std::variant<Angle, Length, Duration, Force, Pressure, Temperature, Mass, CountValue, Grade, Test, Answer, Choice, Choices, Words, NotDone>;

// The tag of the alternative that is held: "angle", "not_done" ...
[[nodiscard]] inline std::string_view kind_of(const Value& value) {
  return std::visit([](const auto& held) { return std::string_view(held.kind); }, value);
}

}  // namespace limbledger::model

// One table a type for the whole program, made in core/model/types.cpp: it is costly to make in every file.
namespace limbledger::wire {
extern template const Type& type_of<model::Value>();
}  // namespace limbledger::wire
