// What was found out of the ordinary, by side, in the words of the findings and of the comparisons that are believed; nothing is
// judged beyond them. What counts as ordinary for a plain answer, choice or grade is told here; a test counts by its result.
#include "core/interpret/alerts/limits.hpp"
#include "core/interpret/missing.hpp"
#include "core/report/page_judged.hpp"
#include "core/report/page_parts.hpp"

#include <algorithm>
#include <array>
#include <utility>

namespace limbledger::report {

namespace {

using model::Side;
using Names = std::initializer_list<std::string_view>;

[[nodiscard]] bool one_of(std::string_view name, Names names) { return std::find(names.begin(), names.end(), name) != names.end(); }

// Looked at or felt, of whatever part: a yes is out of the ordinary, but for what is well when it is there.
[[nodiscard]] bool is_examined(std::string_view item) {
  constexpr std::array<std::string_view, 13> examined{"pelvis.", "hip.", "knee.", "leg.", "ankle.", "foot.", "skin.", "vessel.", "nerve.", "gait.", "function.", "general.", "body."};
  return std::any_of(examined.begin(), examined.end(), [&](std::string_view region) { return item.starts_with(region); });
}
// What was told of a side, a body's lasting state and a worry of the examiner are no look at it.
[[nodiscard]] bool is_look(std::string_view item) {
  return is_examined(item) && !item.starts_with("body.") && !item.starts_with("general.concern_");
}
[[nodiscard]] bool tells_by_no(std::string_view item) {
  return one_of(item, {"ankle.movement", "foot.toes_extension_active", "foot.toes_flexion_active", "nerve.toe_touch_great", "nerve.toe_touch_third",
                       "nerve.toe_touch_fifth", "vessel.doppler_arterial_audible", "vessel.doppler_venous_audible", "skin.intact",
                       "general.answers_reliable", "history.steps_at_once"});
}
// What was told counts where it is a sign; how it happened and what somebody takes do not.
[[nodiscard]] bool tells_by_yes(std::string_view item) {
  if (is_examined(item)) {
    return !tells_by_no(item) && !one_of(item, {"hip.thomas_pelvis_held", "pelvis.lumbar_pain_centralises"});
  }
  return one_of(item, {"history.pop", "history.giving_way", "history.locking", "history.swelling_noticed", "history.patella_dislocated",
                       "history.knee_dislocated", "history.pain_out_of_proportion", "history.fever", "history.unwell", "history.night_pain",
                       "history.night_pain_getting_worse", "history.weight_loss", "history.breathless", "history.back_pain",
                       "history.saddle_numbness", "history.bladder_bowel_change", "history.unexplained_bruises"});
}

// The catalogue's first choice is the one that finds nothing; not where a list only tells where or how deep, and a film or a scan
// that shows nothing is no sign.
[[nodiscard]] bool finds_nothing(std::string_view item, std::string_view choice, const model::Item* known) {
  if (choice == "not_known" || choice.ends_with("_not_seen") || one_of(item, {"nerve.saddle_offer"})) {
    return true;
  }
  if (item.starts_with("general.lab_") || item.starts_with("general.scan_")) {
    return !one_of(choice, {"lab_positive", "scan_clot_seen"});
  }
  if (one_of(item, {"skin.ulcer_site", "skin.ulcer_depth", "body.implant", "body.contracture", "body.cast"})) {
    return false;
  }
  return known != nullptr && known->choices && !known->choices->empty() && known->choices->front().text == choice;
}

[[nodiscard]] std::string_view ordinary_grade(std::string_view scale) {
  constexpr std::array<std::pair<std::string_view, std::string_view>, 4> ordinary{{{"mrc/", "5"}, {"pulse/", "2"}, {"reflex/", "2+"}, {"achilles/", "full"}}};
  const auto at = std::find_if(ordinary.begin(), ordinary.end(), [&](const auto& one) { return scale.starts_with(one.first); });
  return at == ordinary.end() ? "0" : at->second;
}

// Feeling is lost at a place with none or one of three touches right (the item's own words).
[[nodiscard]] bool counts_lost_feeling(std::string_view item, std::int64_t right) {
  return right < 2 && (item.starts_with("nerve.monofilament_") || item.starts_with("nerve.tuning_fork_"));
}

struct Unusual {
  std::string_view item;
  const model::Item* known;

  [[nodiscard]] bool operator()(const model::Test& v) const { return v.result == model::TestResult::positive; }
  [[nodiscard]] bool operator()(const model::Grade& v) const { return v.grade.text != ordinary_grade(v.scale.text) || v.shade; }
  [[nodiscard]] bool operator()(const model::Answer& v) const {
    return (v.answer == model::AnswerWord::yes && tells_by_yes(item)) || (v.answer == model::AnswerWord::no && tells_by_no(item));
  }
  [[nodiscard]] bool operator()(const model::Choice& v) const {
    return (is_examined(item) || item == "history.swelling_onset") && !finds_nothing(item, v.choice.text, known);
  }
  [[nodiscard]] bool operator()(const model::Choices& v) const {
    return std::any_of(v.choices.begin(), v.choices.end(), [&](const model::ChoiceId& one) {
      return is_examined(item) ? !finds_nothing(item, one.text, known) : one.text.ends_with("_seen") && !one.text.ends_with("_not_seen");
    });
  }
  [[nodiscard]] bool operator()(const model::CountValue& v) const {
    return (item == "gait.steps_now" && v.count.steps < 4) || counts_lost_feeling(item, v.count.steps);
  }
  [[nodiscard]] bool operator()(const model::Temperature& v) const { return v.cel && v.cel->steps >= interpret::fever_tenths; }
  template <class Other>
  [[nodiscard]] bool operator()(const Other&) const {
    return false;  // measured: the comparison says it
  }
};

[[nodiscard]] bool out_of_the_ordinary(const PageView& view, const model::Finding& finding) {
  const bool group_entry = finding.origin && *finding.origin == model::Origin::bulk_expected;
  return !group_entry && std::visit(Unusual{finding.item.text, view.edition.item(finding.item)}, finding.value);
}

// Also what lies beyond taught values by more than its error, said as that; and a hip that hurts. A description stays out.
[[nodiscard]] bool to_be_named(const interpret::Statement& statement) {
  const std::string& id = statement.statement.text;
  const bool beyond = statement.verdict == interpret::Verdict::below || statement.verdict == interpret::Verdict::above;
  return statement.grade == interpret::StatementGrade::notable || (beyond && id.starts_with("motion.norm:")) || id.starts_with("hip.");
}

// Comparisons that are believed, in the short words of the table of motions.
[[nodiscard]] std::vector<std::string> believed(const PageView& view, Side side) {
  std::vector<std::string> parts;
  std::string motion;
  for (const model::Finding* finding : view.findings) {
    std::vector<std::string> says;
    for (const interpret::Statement& statement : view.assessment.statements) {
      const std::string row = statement.message.text + ".row";
      if (finding->side != side || !to_be_named(statement) || statement.side != side || !view.words.has(row) ||
          said_by_another(view, statement)) {
        continue;
      }
      const StatementWords said = statement_words(statement, view.exam, view.words, view.edition);
      if (said.item == finding->item) {
        says.push_back(view.words.say(row, said.args));
        motion = view.say("page.found_motion", {{"what", view.label(said.item), false, true},
                                                {"reading", said.reading, false, true},
                                                {"says", joined(says, "; "), false, true}});
      }
    }
    if (!says.empty() && (parts.empty() || parts.back() != motion)) {
      parts.push_back(motion);
    }
  }
  return parts;
}

}  // namespace

SheetSection summary_section(const PageView& view) {
  SheetSection section = view.section("page.found");
  for (const Side side : {Side::right, Side::left, Side::midline}) {
    std::vector<std::string> parts;
    bool looked_at = false;
    for (const model::Finding* finding : view.findings) {
      if (finding->side != side || std::holds_alternative<model::NotDone>(finding->value)) {
        continue;
      }
      looked_at = looked_at || (is_look(finding->item.text) && !interpret::awaits_examiner(*finding));
      if (out_of_the_ordinary(view, *finding)) {
        parts.push_back(view.say("page.found_one", {{"what", view.label(finding->item), false, true},
                                                    {"value", bare_value_text(view.words, view.edition, *finding), false, true}}));
      }
    }
    const std::vector<std::string> motions = believed(view, side);
    parts.insert(parts.end(), motions.begin(), motions.end());
    if (side == Side::midline) {
      if (!parts.empty()) {
        section.bullet(view.say("page.found_person", {{"what", joined(parts, "; "), false, true}}));
      }
      continue;
    }
    const std::string what = !parts.empty() ? joined(parts, "; ") : view.say(looked_at ? "page.found_nothing" : "page.found_not_examined");
    section.bullet(view.say("page.found_side", {{"side", side_of(view.words, side), false, true}, {"what", what, false, true}}));
  }
  return section;
}

}  // namespace limbledger::report
