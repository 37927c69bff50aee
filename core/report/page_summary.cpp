// What was found out of the ordinary, by side, in the words of the findings and of the comparisons that are believed; nothing is
// judged beyond them. What is ordinary the catalogue says; where it says nothing of a value, a side is not called ordinary.
#include "core/report/brief/brief.hpp"
#include "core/report/ordinary.hpp"
#include "core/report/page_judged.hpp"
#include "core/report/page_parts.hpp"

#include <algorithm>

namespace limbledger::report {

namespace {

using model::Side;
// Also what lies beyond taught values by more than its error, said as that; and a hip that hurts. A description stays out.
[[nodiscard]] bool to_be_named(const interpret::Statement& statement) {
  const std::string& id = statement.statement.text;
  const bool beyond = statement.verdict == interpret::Verdict::below || statement.verdict == interpret::Verdict::above;
  return statement.grade == interpret::StatementGrade::notable || (beyond && (id.starts_with("motion.norm:") || id.starts_with("measure.girth:"))) || id.starts_with("hip.");
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
        // A block is told from a stiff joint by what was felt at its end.
        const std::string feel = finding->end_feel ? view.words.say("msg.value.end_feel", {{"feel", word_of(view.words, "end_feel", finding->end_feel->text), false, true}}) : std::string();
        motion = view.say("page.found_motion", {{"what", view.label(said.item), false, true},
                                                {"reading", joined({said.reading, feel, view.added_since(*finding)}), false, true},
                                                {"says", joined(says, "; "), false, true}});
      }
    }
    if (!says.empty() && (parts.empty() || parts.back() != motion)) {
      parts.push_back(motion);
    }
  }
  return parts;
}

// A comparison that finds it within, or that is named above. One that nothing can be told from is none.
[[nodiscard]] bool is_compared(const PageView& view, const model::Finding& finding) {
  return std::any_of(view.assessment.statements.begin(), view.assessment.statements.end(), [&](const interpret::Statement& statement) {
    if (!statement.verdict || !view.words.has(statement.message.text + ".row")) {
      return false;
    }
    // The other of two girths that are compared is no value without a figure.
    if (statement.side != finding.side) {
      return statement.statement.text.starts_with("measure.girth:") && finding.finding &&
             std::find(statement.findings.begin(), statement.findings.end(), *finding.finding) != statement.findings.end();
    }
    const bool ordinary = *statement.verdict == interpret::Verdict::within || *statement.verdict == interpret::Verdict::not_distinguishable;
    return (ordinary || to_be_named(statement)) && statement_words(statement, view.exam, view.words, view.edition).item == finding.item;
  });
}

// What nobody looked at today says so wherever it stands.
[[nodiscard]] std::string value_with_origin(const PageView& view, const model::Finding& finding) {
  const std::string value = joined({bare_value_text(view.words, view.edition, finding), view.other_side_unseen(finding), view.added_since(finding)});
  const bool of_today = !finding.origin || (*finding.origin != model::Origin::carried_over && *finding.origin != model::Origin::self_reported);
  return of_today ? value : joined({value, enum_word(view.words, "origin", *finding.origin)});
}

// Two values of one item stand under its name in the findings; here the first.
[[nodiscard]] bool is_described(const std::vector<std::string>& described, const std::string& label) {
  return std::any_of(described.begin(), described.end(), [&](const std::string& one) { return one.starts_with(label + ": "); });
}

struct OfSide {
  std::vector<std::string> parts;
  bool examined = false;
  std::vector<std::string> untold;     // done on the side complained of, and it tells nothing either way
  std::vector<std::string> described;  // what the catalogue does not call ordinary or not, and no comparison does
};

[[nodiscard]] OfSide found_on(const PageView& view, Side side) {
  OfSide here;
  for (const model::Finding* finding : view.findings) {
    if (finding->side != side || left_undone(*finding) || is_weighty_fact(*finding)) {
      continue;  // what weighs of the person stands in the head
    }
    const Ordinary is = ordinary(view.edition, *finding);
    const bool looked = is_look(*finding);
    here.examined = here.examined || looked;
    if (stands_out(view.edition, *finding)) {
      here.parts.push_back(view.say("page.found_one", {{"what", view.label(finding->item), false, true},
                                                       {"value", value_with_origin(view, *finding), false, true}}));
    }
    const std::string label = view.label(finding->item);
    if (is == Ordinary::ordinary && looked && view.exam.side == side && tells_nothing(view, *finding)) {
      here.untold.push_back(view.say("page.found_one", {{"what", label, false, true}, {"value", value_with_origin(view, *finding), false, true}}));
    }
    if (!stands_out(view.edition, *finding) && is == Ordinary::described && looked && !is_compared(view, *finding) && !is_described(here.described, label)) {
      here.described.push_back(view.say("page.found_one", {{"what", label, false, true}, {"value", value_with_origin(view, *finding), false, true}}));
    }
  }
  const std::vector<std::string> motions = believed(view, side);
  here.parts.insert(here.parts.end(), motions.begin(), motions.end());
  return here;
}

// Of the part complained of nobody looked at this side: what was looked at elsewhere on it does not speak for the part.
[[nodiscard]] std::string part_not_examined(const PageView& view, Side side) {
  const model::Sequence* sequence = view.edition.sequence(view.exam.complaint);
  if (sequence == nullptr || !sequence->part) {
    return {};
  }
  const auto& unseen = view.assessment.not_examined;
  const bool is_unseen = std::any_of(unseen.begin(), unseen.end(), [&](const interpret::NotExamined& one) { return one.joint == *sequence->part && one.side == side; });
  return is_unseen ? view.say("page.found_part_not_examined", {{"part", word_of(view.words, "joint", sequence->part->text), false, true}}) : std::string();
}

[[nodiscard]] std::vector<std::string> looked_at(const PageView& view, Side side) {
  std::vector<std::string> labels;
  for (const model::Finding* finding : view.findings) {
    const std::string label = view.label(finding->item);
    const bool here = finding->side == side && !left_undone(*finding) && is_look(*finding);
    if (here && std::find(labels.begin(), labels.end(), label) == labels.end()) {
      labels.push_back(label);
    }
  }
  return labels;
}

}  // namespace

SheetSection summary_section(const PageView& view) {
  SheetSection section = view.section("page.found");
  for (const Side side : {Side::right, Side::left, Side::midline}) {
    OfSide here = found_on(view, side);
    const bool nothing = here.parts.empty();
    if (!here.untold.empty()) {
      here.parts.push_back(view.say("page.found_untold", {{"items", joined(here.untold, "; "), false, true}}));
    }
    if (!here.described.empty()) {
      here.parts.push_back(view.say("page.found_described", {{"items", joined(here.described, "; "), false, true}}));
    }
    if (side == Side::midline) {
      if (!here.parts.empty()) {
        section.bullet(view.say("page.found_person", {{"what", joined(here.parts, "; "), false, true}}));
      }
      continue;
    }
    const std::string unseen = part_not_examined(view, side);
    if (nothing && here.described.empty() && here.examined && !unseen.empty()) {
      here.parts.push_back(unseen);
      here.parts.push_back(view.say("page.found_nothing_in", {{"items", joined(looked_at(view, side)), false, true}}));
    } else if (nothing && here.described.empty()) {
      here.parts.push_back(view.say(here.examined ? "page.found_nothing" : "page.found_not_examined"));
    }
    section.bullet(view.say("page.found_side", {{"side", side_of(view.words, side), false, true}, {"what", joined(here.parts, "; "), false, true}}));
  }
  // Whoever reads no further than this knows where nobody looked.
  if (const std::vector<std::string> places = places_not_examined(view); !places.empty()) {
    section.bullet(view.say("page.found_unseen", {{"places", joined(places, "; "), false, true}}) + ".");
  }
  return section;
}

}  // namespace limbledger::report
