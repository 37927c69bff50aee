#include "core/report/page.hpp"

#include "core/interpret/after/urgent_way.hpp"
#include "core/interpret/rules/ankle/series.hpp"
#include "core/interpret/rules/rule.hpp"
#include "core/interpret/alerts/covered.hpp"
#include "core/report/brief/added.hpp"
#include "core/report/brief/brief.hpp"
#include "core/report/brief/settled.hpp"
#include "core/report/page_evidence.hpp"
#include "core/report/page_judged.hpp"
#include "core/report/page_parts.hpp"

#include <algorithm>
#include <array>
#include <iterator>
#include <utility>
#include <vector>

namespace limbledger::report {

namespace {

using model::Side;

// Whether any test that may compute is done at the part complained of; a complaint of no part leaves it to the findings.
[[nodiscard]] bool bands_speak_of(const PageView& view) {
  const model::Sequence* sequence = view.edition.sequence(view.exam.complaint);
  if (sequence == nullptr || !sequence->part) {
    return true;
  }
  const std::string region = sequence->part->text + ".";
  const auto of_region = [&](const reference::TestPart& part) { return part.item.text.starts_with(region); };
  for (const reference::ConditionGroups& condition : view.edition.evidence().groups) {
    for (const reference::EvidenceGroup& group : condition.groups) {
      for (const reference::GroupMember& member : group.members) {
        if (std::any_of(member.parts.begin(), member.parts.end(), of_region)) {
          return true;
        }
      }
    }
  }
  return false;
}

// The six tests count where the pain does not draw in: a band beside a positive count says that the question is open.
void add_count_without_gate(const PageView& view, const interpret::Hypothesis& hypothesis, SheetSection& section) {
  if (hypothesis.hypothesis.text != "condition.sacroiliac_pain") {
    return;
  }
  for (const interpret::RuleResult& rule : view.assessment.rules) {
    const bool open = std::any_of(rule.flags.begin(), rule.flags.end(), [](const model::Word& flag) { return flag.text == "drawing_in_not_asked"; });
    if (rule.rule.text == "rule.laslett" && rule.outcome == interpret::Outcome::positive && open && (!hypothesis.side || *hypothesis.side == rule.side)) {
      section.under(rule_lines(rule, view.exam, view.person, view.assessment.as_of, view.words, view.edition).back());
      return;
    }
  }
}

[[nodiscard]] bool one_sided(const PageView& view) { return view.exam.side && *view.exam.side != Side::midline; }

// What of the minimum set keeps the bands back: of the side complained of alone, each with its side.
[[nodiscard]] std::vector<std::string> gaps(const PageView& view) {
  std::vector<std::string> labels;
  const AdvisedAgainst against(view);
  for (const Side side : {Side::right, Side::left}) {
    if (one_sided(view) && *view.exam.side != side) {
      continue;
    }
    for (const interpret::MissingItem& missing : minimum_missing(view, side)) {
      const std::string label = gap_label(view, missing) + view.side_after(missing.side);
      // What is lacking reads as what to do next.
      const bool held = against.holds(missing.item, missing.side);
      const std::string said = held ? view.say("page.no_hypothesis_item_held", {{"item", label, false, true}}) : label;
      if (std::find(labels.begin(), labels.end(), said) == labels.end()) {
        labels.push_back(said);
      }
    }
  }
  return labels;
}

// What of it was tried or left, and has no value: it keeps the bands back as what nobody recorded does, and is no gap.
[[nodiscard]] std::vector<std::string> minimum_not_done(const PageView& view) {
  std::vector<std::string> labels;
  const model::Sequence* sequence = view.edition.sequence(view.exam.complaint);
  for (const model::SequenceStep& step : sequence != nullptr ? sequence->steps : std::vector<model::SequenceStep>{}) {
    if (!step.minimum.value_or(false)) {
      continue;
    }
    for (const Side side : {Side::right, Side::left, Side::midline}) {
      bool tried = false, valued = false;
      for (const model::Finding* finding : view.findings) {
        const bool here = finding->item == step.item && finding->side == side;
        const bool not_done = std::holds_alternative<model::NotDone>(finding->value);
        tried = tried || (here && not_done);
        valued = valued || (here && !not_done);
      }
      if (tried && !valued && (side == Side::midline || !one_sided(view) || side == *view.exam.side)) {
        labels.push_back(view.label(step.item) + view.side_after(side));
      }
    }
  }
  return labels;
}

[[nodiscard]] bool other_side_lacks(const PageView& view) {
  return one_sided(view) && std::any_of(view.assessment.missing.begin(), view.assessment.missing.end(), [&](const interpret::MissingItem& one) {
           return one.side != *view.exam.side && one.side != Side::midline;
         });
}

[[nodiscard]] SheetSection hypotheses_section(const PageView& view) {
  SheetSection section = view.section("page.hypotheses");
  std::vector<model::FindingId> judged;
  for (const interpret::Hypothesis& hypothesis : view.assessment.hypotheses) {
    std::transform(hypothesis.used.begin(), hypothesis.used.end(), std::back_inserter(judged), [](const interpret::Used& one) { return one.finding; });
  }
  if (const std::string signed_alone = judged_as_signed(view, judged); !signed_alone.empty()) {
    section.plain(signed_alone);
  }
  bool figures = false;
  for (const interpret::Hypothesis& hypothesis : view.assessment.hypotheses) {
    section.bullet(hypothesis_text(hypothesis, view.words, view.edition));
    std::vector<model::FindingId> used;
    std::transform(hypothesis.used.begin(), hypothesis.used.end(), std::back_inserter(used), [](const interpret::Used& one) { return one.finding; });
    if (const std::vector<std::string> by = findings_named(view, used, hypothesis.side); !by.empty()) {
      section.under(view.say("page.hypothesis_by", {{"findings", joined(by, "; "), false, true}}) + ".");
    }
    figures = figures || hypothesis.range;
    add_count_without_gate(view, hypothesis, section);
    add_disagreed(view, interpret::statement_name(hypothesis), section);
  }
  if (!view.assessment.hypotheses.empty()) {
    section.plain(view.say(figures ? "page.not_exclusive" : "page.not_exclusive_directions"));
    if (view.exam.impression) {
      section.plain(view.say("page.not_weighed"));
    }
    if (gaps(view).empty() && other_side_lacks(view)) {
      section.plain(view.say("page.bands_though_other"));
    }
    return section;
  }
  if (view.assessment.held_back.value_or(false)) {
    section.plain(view.say("page.no_hypothesis_supervised"));
    return section;
  }
  // Of a part that no figures speak of, no minimum set would give a band.
  if (!bands_speak_of(view)) {
    section.plain(view.say("page.no_hypothesis_for", {{"part", part_named(view), false, true}}) + ".");
    return section;
  }
  // Bands come only after the minimum set, so a page without them says why.
  const std::vector<std::string> missing = gaps(view);
  if (missing.empty()) {
    const std::vector<std::string> not_done = minimum_not_done(view);
    section.plain(not_done.empty() ? view.say("page.no_hypothesis") : view.say("page.no_hypothesis_not_done", {{"items", joined(not_done, "; "), false, true}}));
    return section;
  }
  const bool raised = !raised_beside(view).empty();
  section.plain(joined({view.say("page.no_hypothesis_yet", {{"items", joined(missing, "; "), false, true}}), raised ? view.say("page.raised_all_the_same") : std::string()}, " "));
  if (other_side_lacks(view)) {
    section.plain(view.say("page.gap_other_side"));
  }
  return section;
}

// A film that a rule advises, beside what was decided about one: side by side, and nothing is asked for.
void add_film_planned(const PageView& view, const interpret::RuleResult& rule, SheetSection& section) {
  if (rule.outcome != interpret::Outcome::positive || interpret::film_for(rule.rule).empty()) {
    return;
  }
  std::vector<std::string> films;
  for (const model::PlanItem& item : view.exam.plan.value_or(std::vector<model::PlanItem>{})) {
    if (item.kind == model::PlanKind::film && (!item.side || *item.side == rule.side || *item.side == Side::midline)) {
      const bool declined = item.became == model::Became::declined;
      films.push_back(view.say(declined ? "page.film_declined" : "page.film_planned", {{"text", item.text.text}}));
    }
  }
  section.under(view.say("page.film_in_plan", {{"films", films.empty() ? view.say("page.film_none") : joined(films, "; "), false, true}}) + ".");
}

// One of the rules that are shown asks something of the part complained of.
[[nodiscard]] bool shown_rule_asks_part(const PageView& view) {
  const model::Sequence* sequence = view.edition.sequence(view.exam.complaint);
  const auto described = view.edition.decision_rules();
  return sequence != nullptr && sequence->part && std::any_of(described.begin(), described.end(), [&](const reference::RuleRow& row) {
           const auto& shown = view.assessment.rules;
           const bool is_shown = std::any_of(shown.begin(), shown.end(), [&](const interpret::RuleResult& one) { return one.rule == row.rule; });
           return is_shown && std::any_of(row.asks.begin(), row.asks.end(), [&](const reference::RuleAsks& ask) {
                    return std::any_of(ask.items.begin(), ask.items.end(), [&](const model::ItemId& item) { return item.text.starts_with(sequence->part->text + "."); });
                  });
         });
}

[[nodiscard]] SheetSection rules_section(const PageView& view) {
  SheetSection section = view.section("page.rules");
  std::vector<model::FindingId> judged;
  for (const interpret::RuleResult& rule : view.assessment.rules) {
    judged.insert(judged.end(), rule.findings.begin(), rule.findings.end());
  }
  if (const std::string signed_alone = judged_as_signed(view, judged); !signed_alone.empty()) {
    section.plain(signed_alone);
  }
  for (const interpret::RuleResult& rule : view.assessment.rules) {
    const std::string head = view.say(rule.rule.text + ".name") + view.side_after(rule.side) + " (" + rule_edition_named(view, rule) + ")";
    const std::vector<std::string> lines = rule_lines(rule, view.exam, view.person, view.assessment.as_of, view.words, view.edition);
    // Who stops reading at "not required" has read that one is asked for.
    const FilmsAsked films = film_by_alert(view, rule);
    const auto said = [&](const char* message, const std::vector<std::string>& which) {
      return which.empty() ? std::string() : view.say(message, {{"films", joined(which, "; "), false, true}}) + " ";
    };
    const std::string first = said("page.film_by_alert", films.of_part) + said("page.film_elsewhere", films.elsewhere);
    section.bullet(head + ": " + first + lines.front());
    for (std::size_t i = 1; i < lines.size(); ++i) {
      section.under(lines[i]);
    }
    add_film_planned(view, rule, section);
    add_disagreed(view, interpret::statement_name(rule), section);
  }
  if (!interpret::covered(view.edition, view.exam.complaint).rule && !shown_rule_asks_part(view)) {
    section.plain(view.say("page.no_rule_for", {{"part", part_named(view), false, true}}) + ".");
  } else if (view.assessment.rules.empty()) {
    section.plain(view.say("page.no_rule"));
  }
  return section;
}

// The question whether somebody was asked alone, or what rests on a protected answer: read by whoever stands beside the page.
[[nodiscard]] bool is_protected_contradiction(const PageView& view, const interpret::Contradiction& contradiction) {
  if (view.names.protected_note == ProtectedNote::shown) {
    return false;
  }
  const std::vector<model::Finding>& all = findings_of(view.exam);
  return contradiction.contradiction.text.starts_with("contradiction.sensitive_through_family") ||
         std::any_of(all.begin(), all.end(), [&](const model::Finding& finding) {
           const model::Item* item = view.edition.item(finding.item);
           return item != nullptr && item->protected_.value_or(false) && finding.finding &&
                  std::find(contradiction.findings.begin(), contradiction.findings.end(), *finding.finding) != contradiction.findings.end();
         });
}

[[nodiscard]] SheetSection not_fitting_section(const PageView& view) {
  SheetSection section = view.section("page.not_fitting");
  for (const interpret::Contradiction& contradiction : view.assessment.contradictions) {
    if (is_protected_contradiction(view, contradiction)) {
      continue;
    }
    section.bullet(contradiction_text(contradiction, view.words));
  }
  return section;
}

}  // namespace

namespace {

// The film of a hip is none of the joints that these rules look at, nor is that of a foot one of the knee.
[[nodiscard]] bool films_another_part(const interpret::RuleResult& rule, std::string_view danger, std::string_view message) {
  constexpr std::array<std::string_view, 5> of_hip{"hip_fx_old", "scfe", "bone_stress_hip", "hip_disloc", "perthes"};
  const bool of_foot = message.ends_with(".film_foot") || message.ends_with(".film_heel") || message.ends_with(".film_heel_elsewhere");
  return std::find(of_hip.begin(), of_hip.end(), danger) != of_hip.end() || (of_foot && interpret::series_of(rule.rule.text) == nullptr);
}

}  // namespace

std::vector<model::MessageId> meanwhile_of_prompt(const PageView& view, const interpret::Statement& prompt, const reference::AlertRow& row) {
  std::vector<model::MessageId> meanwhile = row.meanwhile;
  const bool on_bone = std::any_of(view.findings.begin(), view.findings.end(), [](const model::Finding* finding) {
    const auto* several = std::get_if<model::Choices>(&finding->value);
    return finding->item.text == "skin.lump_features" && several != nullptr &&
           std::find(several->choices.begin(), several->choices.end(), model::ChoiceId{"lump_on_bone"}) != several->choices.end();
  });
  if (prompt.message.text.starts_with("msg.referral.tumour.lump") && !on_bone) {
    std::erase(meanwhile, model::MessageId{"msg.meanwhile.protect_from_break"});
  }
  return meanwhile;
}

// "Film not required" by a rule, while an alert or a prompt to refer of that side asks for one: said in the same line.
FilmsAsked film_by_alert(const PageView& view, const interpret::RuleResult& rule) {
  if (rule.outcome != interpret::Outcome::negative || interpret::film_for(rule.rule).empty()) {
    return {};
  }
  FilmsAsked films;
  const auto add = [&](std::string_view danger, const std::optional<Side>& side, const std::vector<model::MessageId>& meanwhile) {
    for (const model::MessageId& message : meanwhile) {
      const bool here = !side || *side == Side::midline || *side == rule.side;
      if (here && message.text.starts_with("msg.meanwhile.film")) {
        (films_another_part(rule, danger, message.text) ? films.elsewhere : films.of_part).push_back(view.words.say(message.text, {{"side", side ? side_of(view.words, *side) : std::string(), false, true}}));
      }
    }
  };
  for (const interpret::Alert& alert : view.assessment.alerts) {
    if (!is_hidden(view, alert) && alert.state != interpret::AlertState::withdrawn_by_correction) {
      add(after_dot(alert.alert.text), alert.side, alert.meanwhile);
    }
  }
  for (const interpret::Statement& statement : view.assessment.statements) {
    const std::string danger = statement.statement.text.substr(0, statement.statement.text.find(':'));
    const reference::AlertRow* row = referral_prompt(danger) ? view.edition.alert({"alert." + std::string(after_dot(danger))}) : nullptr;
    if (row != nullptr && !is_protected_danger(view, danger)) {
      add(after_dot(danger), statement.side, meanwhile_of_prompt(view, statement, *row));
    }
  }
  return films;
}

// The published version; where its name holds a word that a page does not use of a person, in words.
std::string rule_edition_named(const PageView& view, const interpret::RuleResult& rule) {
  std::string name = "rule_edition." + rule.edition.text;
  std::replace(name.begin(), name.end(), '/', '.');
  return view.words.has("msg." + name) ? view.say(name) : rule.edition.text;
}

Sheet exam_sheet(const model::Exam& exam, const std::optional<model::Person>& person, const interpret::Assessment& assessment, const Words& words,
                 const reference::Edition& edition, const PageNames& names) {
  const PageView view(exam, person, assessment, words, edition, names);
  Sheet sheet;
  sheet.banner = names.banner;
  sheet.title = view.say("page.title");
  sheet.who = person_line(view);
  sheet.examined = view.say("page.examined_day", {{"day", view.day_text(), false, true}});
  sheet.head = head_lines(view);
  sheet.head.insert(sheet.head.begin(), names.undecided.begin(), names.undecided.end());
  const auto add = [&](SheetSection section, bool also_empty = true) {
    if (also_empty || !section.lines.empty()) {
      sheet.sections.push_back(std::move(section));
    }
  };
  SheetSection impression = impression_section(view);
  if (const std::string raised = raised_beside(view); !raised.empty()) {
    impression.plain(raised);
  }
  add(std::move(impression));
  add(summary_section(view));
  add(plan_section(view));
  add(after_section(view), false);
  add(told_section(view));
  add(by_transfer_section(view), false);
  add(letters_section(view), false);
  add(alerts_section(view), false);
  add(unsettled_section(view), false);  // after what cannot wait: an open rule of the knee stands above no broken hip
  // Before what figures say: whoever stops reading half-way knows what nobody looked at.
  add(not_done_section(view));
  add(not_examined_section(view));
  add(next_section(view), false);
  add(hypotheses_section(view));
  add(rules_section(view));
  add(not_fitting_section(view), false);
  add(found_section(view));
  add(settled_section(view), false);
  add(compared_section(view));
  add(disagreed_section(view), false);
  add(flags_section(view));
  add(consent_section(view));
  add(signature_section(view));
  add(added_section(view), false);
  add(about_section(view));
  return sheet;
}

std::string exam_page(const model::Exam& exam, const std::optional<model::Person>& person, const interpret::Assessment& assessment,
                      const Words& words, const reference::Edition& edition, const PageNames& names) {
  return sheet_text(exam_sheet(exam, person, assessment, words, edition, names), words);
}

}  // namespace limbledger::report
