// A published decision rule: its name here, the version of the page it follows, and a pure function from what was found to
// its outcome, once a side. Every rule has a file of its own below rules/<region>; list.cpp has one line for each.
#pragma once

#include "core/interpret/statement.hpp"
#include "core/interpret/view.hpp"

#include <span>
#include <string_view>
#include <vector>

namespace limbledger::interpret {

struct Rule {
  std::string_view rule;     // rule.ottawa_knee
  std::string_view edition;  // okr/1995
  std::vector<JudgedRule> (*run)(const View& view);
  std::string_view film_for = {};  // the concern that a film would settle: concern.knee_fracture; empty where no film is advised
  std::string_view question = {};  // rules on one question are set against each other; those that advise a film by its concern
  bool refers = false;             // its outcome changes who is sent where, or how soon
};

[[nodiscard]] std::span<const Rule> all_rules();
// What a film that this rule advises looks for; empty where it advises none.
[[nodiscard]] std::string_view film_for(const model::RuleId& rule);
// Its outcome changes imaging or a referral: only then is a finding asked for that would settle it (C21).
[[nodiscard]] bool decides(const model::RuleId& rule);
// One rule alone; empty for a name that is not in the list.
[[nodiscard]] std::vector<JudgedRule> run_rule(const model::RuleId& rule, const View& view);
// The question it shares with others, or the film's concern; empty where it stands alone.
[[nodiscard]] std::string_view question_of(const model::RuleId& rule);

}  // namespace limbledger::interpret
