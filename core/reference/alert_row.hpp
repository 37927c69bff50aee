// What is known of one danger besides the judgement: how soon it harms, what is done meanwhile, what is stopped, what it opens,
// and where that comes from. Rows stand in data/alerts.json; the judgement is in core/interpret/alerts. Source: red flags page.
#pragma once

#include "core/model/item.hpp"
#include "core/wire/type.hpp"

#include <optional>
#include <vector>

namespace limbledger::reference {

enum class AlertClass { now, same_day, two_weeks };
BOOST_DESCRIBE_ENUM(AlertClass, now, same_day, two_weeks)

struct AlertRow {
  model::Word alert;  // alert.septic_adult
  AlertClass urgency{};
  wire::Count<1, 100000> harm_minutes;  // time to harm, for the order among one class
  wire::Remark harm_from;               // where that figure comes from
  std::vector<model::Word> asked_in;    // complaints in which it is asked after though nothing points to it
  std::vector<model::MessageId> meanwhile;      // three at most
  std::vector<model::ItemId> stop;
  std::vector<model::ConcernId> opens;
  std::vector<model::ItemId> tell_staff;        // a yes given at a kiosk calls the staff
  std::optional<std::vector<model::Word>> inside;  // shown inside these while one of them is raised on that side
  std::optional<std::vector<model::Word>> graver;  // which of its sentences are graver than the others of its class, the gravest last
  std::optional<std::vector<model::ItemId>> sign;  // the sign it is named for: where that was found, nobody answered no to it
  std::optional<bool> protected_;
  std::vector<model::SourceId> sources;
  model::Status status{};
};
BOOST_DESCRIBE_STRUCT(AlertRow, (), (alert, urgency, harm_minutes, harm_from, asked_in, meanwhile, stop, opens, tell_staff, inside, graver, sign, protected_, sources, status))

}  // namespace limbledger::reference
