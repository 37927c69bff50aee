// What a letter leaves open, and what decision rules say; and how a list is folded without a name being lost.
#include "core/interpret/rules/rule.hpp"
#include "core/report/brief/brief.hpp"
#include "core/report/letter/letter_parts.hpp"
#include "core/report/page_judged.hpp"

#include <algorithm>
#include <array>
#include <string_view>

namespace limbledger::report {

namespace {

using model::Side;

constexpr std::array<std::string_view, 18> rules_that_bear{
      "rule.ottawa_knee",  "rule.pittsburgh_knee",      "rule.ottawa_ankle",  "rule.ottawa_midfoot", "rule.wells_dvt",     "rule.clot_route",
      "rule.knee_vessels", "rule.compartment_signs",    "rule.kocher",        "rule.caird",          "rule.singhal",       "rule.ankle_brachial",
      "rule.foot_category", "rule.protective_sensation", "rule.nice_feet",     "rule.laslett",        "rule.lowery",        "rule.nice_oa"};

// Of the other side what it found; that nothing is asked for there is no news.
[[nodiscard]] bool is_told(const PageView& view, const interpret::RuleResult& rule) {
  const bool settled = rule.outcome == interpret::Outcome::positive || rule.outcome == interpret::Outcome::negative;
  const bool wanted = rule.side == Side::midline || is_complained_of(view, rule.side) || rule.outcome == interpret::Outcome::positive;
  return settled && wanted && std::find(rules_that_bear.begin(), rules_that_bear.end(), rule.rule.text) != rules_that_bear.end();
}

}  // namespace

bool counts_in_points(const PageView& view, const model::Finding& finding) {
  return finding.finding && std::any_of(view.assessment.rules.begin(), view.assessment.rules.end(), [&](const interpret::RuleResult& rule) {
           return rule.points && is_told(view, rule) && std::find(rule.findings.begin(), rule.findings.end(), *finding.finding) != rule.findings.end();
         });
}

bool bears_on_raised(const PageView& view, const model::Finding& finding) {
  return finding.finding && std::any_of(view.assessment.flags.begin(), view.assessment.flags.end(), [&](const interpret::Flag& flag) {
           return printed_answer(view, flag) == interpret::FlagAnswer::raised && !is_hidden_flag(view, flag) &&
                  std::find(flag.findings.begin(), flag.findings.end(), *finding.finding) != flag.findings.end();
         });
}

void add_alike(std::vector<SaidAlike>& all, const std::string& label, const std::string& value) {
  auto at = std::find_if(all.begin(), all.end(), [&](const SaidAlike& one) { return one.value == value; });
  if (at == all.end()) {
    at = all.insert(all.end(), SaidAlike{value, {}});
  }
  at->labels.push_back(label);
}

std::string alike_text(const std::vector<SaidAlike>& all, bool answer_first) {
  std::vector<std::string> parts;
  for (const SaidAlike& one : all) {
    // Of several the answer comes first: a row of signs reads as found until its "no" is reached.
    parts.push_back(one.labels.size() == 1 || !answer_first ? joined(one.labels, " / ") + ": " + one.value : one.value + ": " + joined(one.labels, " / "));
  }
  return joined(parts, "; ");
}

std::string kept_where(const PageView& view, std::string_view title) {
  return view.say(record_stays(view) ? "letter.where_kept" : "letter.where", {{"where", view.say(title), false, true}});
}

// What the error of measurement or an answer not yet given leaves open; of sides alone, because a letter compares with no figures.
void add_unsettled(const PageView& view, int shortened, SheetSection& section) {
  const std::vector<std::string> names = within_error_named(view);
  if (!names.empty() && shortened < 1) {
    section.bullet(view.say("letter.within_error", {{"what", joined(within_error(view, true), "; "), false, true}}) + ".");
  } else if (!names.empty()) {
    section.bullet(view.say("letter.within_error_named", {{"what", joined(names, " / "), false, true}}) + ".");
  }
  if (const std::vector<std::string> open = rules_still_open(view, shortened < 6); !open.empty()) {
    section.bullet(view.say("letter.rules_open", {{"what", joined(open, "; "), false, true}}) + ".");
  }
}

// What decides whether a film, a scan or a surgeon is asked for, in one line each with its edition; counts of falls and of worn joints
// are of the note.
void add_rules(const PageView& view, int shortened, SheetSection& section) {
  constexpr std::size_t in_full = 3;
  std::vector<std::string> says;
  std::vector<std::string> names;
  bool no_film = false;
  for (const bool complained_of : {true, false}) {
    for (const interpret::RuleResult& rule : view.assessment.rules) {
      const bool here = rule.side == Side::midline || is_complained_of(view, rule.side);
      if (here != complained_of || !is_told(view, rule)) {
        continue;
      }
      const std::string name = view.say("letter.rule_named", {{"rule", view.say(rule.rule.text + ".name") + view.side_after(rule.side), false, true},
                                                              {"edition", rule_edition_named(view, rule), false, true}});
      std::string outcome = rule_short(rule, view.exam, view.words);
      outcome.erase(outcome.find_last_not_of('.') + 1);
      no_film = no_film || (rule.outcome == interpret::Outcome::negative && !interpret::film_for(rule.rule).empty());
      if (shortened < letter_shortest || says.size() < in_full) {
        const FilmsAsked films = film_by_alert(view, rule);
        if (!films.of_part.empty()) {
          outcome = view.say("letter.rule_film_by_alert", {{"says", outcome, false, true}, {"films", joined(films.of_part, "; "), false, true}});
        }
        if (!films.elsewhere.empty()) {
          outcome = view.say("letter.rule_film_elsewhere", {{"says", outcome, false, true}, {"films", joined(films.elsewhere, "; "), false, true}});
        }
        if (const std::string counted = rule_counted(rule, view.exam, view.person, view.assessment.as_of, view.words, view.edition); !counted.empty()) {
          outcome = view.say("letter.rule_counted", {{"says", outcome, false, true}, {"what", counted, false, true}});
        }
        if (const std::string met = rule_met(rule, view.exam, view.person, view.assessment.as_of, view.words, view.edition); !met.empty()) {
          outcome = view.say("letter.rule_met", {{"says", outcome, false, true}, {"what", met, false, true}});
        }
        says.push_back(name + ": " + outcome);
      } else {
        names.push_back(name);
      }
    }
  }
  if (!names.empty()) {
    says.push_back(view.say("letter.by_name", {{"where", kept_where(view, "page.rules"), false, true}, {"what", joined(names, "; "), false, true}}));
  }
  if (no_film) {
    says.push_back(view.say("letter.rule_again"));
  }
  if (!says.empty()) {
    section.bullet(view.say("letter.rules", {{"what", joined(says, "; "), false, true}}) + ".");
  }
}

}  // namespace limbledger::report
