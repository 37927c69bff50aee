// The examiner's impression, in their words (the program never fills, ranks or changes it), and what was decided.
#pragma once

#include "core/model/exam/finding.hpp"

#include <optional>
#include <vector>

namespace limbledger::model {

struct Impression {
  wire::Remark text;
  std::optional<Side> side;
  std::optional<wire::Name> certainty;
  std::optional<std::vector<wire::Remark>> alternatives;
  std::optional<wire::Name> code;
  friend bool operator==(const Impression&, const Impression&) = default;
};
BOOST_DESCRIBE_STRUCT(Impression, (), (text, side, certainty, alternatives, code))

enum class PlanKind { film, referral, splint, limit, exercise, medicine, advice, safety_net, review };
BOOST_DESCRIBE_ENUM(PlanKind, film, referral, splint, limit, exercise, medicine, advice, safety_net, review)

enum class Became { arranged, given, done, declined, written, sent, received, seen, answered, lost };
BOOST_DESCRIBE_ENUM(Became, arranged, given, done, declined, written, sent, received, seen, answered, lost)

// Whether the person said in their own words what they had been told.
enum class SaidBack { yes, partly, not_done };
BOOST_DESCRIBE_ENUM(SaidBack, yes, partly, not_done)

struct PlanItem {
  std::optional<PlanItemId> plan_item;  // absent for a new one
  PlanKind kind{};
  wire::Remark text;
  std::optional<Side> side;
  std::optional<wire::Name> who;
  std::optional<PartialDate> by;
  std::optional<Became> became;  // absent: open
  std::optional<PartialDate> became_on = std::nullopt;
  std::optional<SaidBack> said_back = std::nullopt;  // of what was told: advice, a limit, a safety net
  friend bool operator==(const PlanItem&, const PlanItem&) = default;
};
BOOST_DESCRIBE_STRUCT(PlanItem, (), (plan_item, kind, text, side, who, by, became, became_on, said_back))

}  // namespace limbledger::model

// One table a type for the whole program, made in core/model/types.cpp: it is costly to make in every file.
namespace limbledger::wire {
extern template const Type& type_of<model::Impression>();
extern template const Type& type_of<model::PlanItem>();
}  // namespace limbledger::wire
