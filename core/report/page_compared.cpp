// What was compared with published figures, the other side and last time: one row a motion, active and passive, both sides, and
// against what; then the statements that are no motion, as sentences.
#include "core/report/brief/added.hpp"
#include "core/report/page_judged.hpp"
#include "core/report/page_parts.hpp"

#include <algorithm>

namespace limbledger::report {

namespace {

using interpret::Statement;
using model::Side;

// "passive_seated" of knee.flexion and knee.flexion_passive_seated.
[[nodiscard]] std::string way_of(const PageView& view, const model::Item& item) {
  const std::string& name = item.item.text;
  const std::string& family = item.family.text;
  return name.size() > family.size() + 1 && name.starts_with(family) ? word_of(view.words, "motion_way", name.substr(family.size() + 1)) : view.label(item.item);
}

void add_way(std::vector<std::string>& lines, const std::string& begins, const std::string& more) {
  const auto at = std::find_if(lines.begin(), lines.end(), [&](const std::string& line) { return line.starts_with(begins); });
  if (at == lines.end()) {
    lines.push_back(begins + more);
  } else {
    *at += "; " + more;
  }
}

// Into the row of its motion; false where the statement has no short words.
[[nodiscard]] bool put_in_row(const PageView& view, const Statement& statement, SheetSection& section) {
  const std::string row = statement.message.text + ".row";
  if (!statement.statement.text.starts_with("motion.") || !statement.side || !view.words.has(row)) {
    return false;
  }
  const StatementWords said = statement_words(statement, view.exam, view.words, view.edition);
  const model::Item* item = view.edition.item(said.item);
  if (item == nullptr) {
    return false;
  }
  const std::string name = "motion_family." + item->family.text;
  const std::string label = view.words.has("msg." + name) ? view.say(name) : view.label(said.item);
  auto at = std::find_if(section.lines.begin(), section.lines.end(),
                         [&](const SheetLine& line) { return line.kind == LineKind::compared && line.text == label; });
  if (at == section.lines.end()) {
    // Rows stand together, before the sentences.
    const auto end = std::find_if(section.lines.begin(), section.lines.end(), [](const SheetLine& line) { return line.kind != LineKind::compared; });
    at = section.lines.insert(end, SheetLine{LineKind::compared, label, {}, {}, {}});
  }
  const std::string way = way_of(view, *item);
  std::string words = view.words.say(row, said.args);
  if (!said.remarks.empty()) {
    words += "; " + joined(said.remarks, "; ");
  }
  // A comparison with the other side has a source and no figures: it stands behind the sentence.
  if (said.compared.empty() && (said.people.empty() || said.interval.empty()) && !said.sources.empty()) {
    words += "; " + view.say("page.row_source", {{"sources", joined(said.sources), false, true}});
  }
  add_way(*statement.side == Side::right ? at->right : at->left, view.say("page.motion_reading", {{"way", way, false, true}, {"reading", said.reading, false, true}}) + " ", words);
  if (!said.sources.empty() || !said.compared.empty()) {
    std::vector<std::string> parts;
    const bool half = statement.message.text.ends_with(".shown_half");
    if (!said.people.empty() && !said.interval.empty()) {
      parts.push_back(view.say("page.motion_against", {{"interval", said.interval, false, true},
                                                       {"who", joined(said.people), false, true},
                                                       {"kind", half ? "half" : (said.taught ? "taught" : "read"), false, true}}));
      parts.push_back(view.say("page.motion_figures", {{"rows", joined(said.figures, "; "), false, true}}));
      if (!said.how.empty()) {
        parts.push_back(view.say("page.motion_read_with", {{"how", said.how, false, true}}));
      }
    } else if (!said.compared.empty()) {
      parts.push_back(view.words.say("msg.motion.compared_with", {{"rows", joined(said.compared, "; "), false, true}}));
    }
    if (parts.empty()) {
      return true;
    }
    if (!said.sources.empty()) {
      parts.push_back(joined(said.sources));
    }
    const std::string against = view.say("page.motion_of", {{"way", way, false, true}, {"against", joined(parts, "; "), false, true}});
    if (std::find(at->midline.begin(), at->midline.end(), against) == at->midline.end()) {
      at->midline.push_back(against);
    }
  }
  return true;
}

}  // namespace

bool said_by_another(const PageView& view, const Statement& statement) {
  constexpr std::string_view plain_side = "motion.side:";
  if (!statement.statement.text.starts_with(plain_side)) {
    return false;
  }
  std::string item = statement.statement.text.substr(plain_side.size());
  item = item.substr(0, item.rfind(':') + 1);
  return std::any_of(view.assessment.statements.begin(), view.assessment.statements.end(), [&](const Statement& other) {
    return other.comparator == interpret::Comparator::other_side &&
           (other.statement.text.starts_with("motion.extension_deficit:" + item) || other.statement.text.starts_with("motion.hyperextension:" + item));
  });
}

SheetSection compared_section(const PageView& view) {
  SheetSection section = view.section("page.compared");
  bool taught = false;
  for (const Statement& statement : view.assessment.statements) {
    if (referral_prompt(statement.statement.text) || said_by_another(view, statement)) {
      continue;  // stands among what cannot wait, or in a line that says more
    }
    if (!put_in_row(view, statement, section)) {
      // Two states of a body may say the same sentence: a reader needs it once.
      const std::string text = statement_text(statement, view.exam, view.words, view.edition);
      const bool said = std::any_of(section.lines.begin(), section.lines.end(), [&](const SheetLine& line) { return line.text == text; });
      if (!said) {
        section.bullet(text);
      }
    }
    taught = taught || statement.message.text.ends_with("_taught");
  }
  const auto end = std::find_if(section.lines.begin(), section.lines.end(), [](const SheetLine& line) { return line.kind != LineKind::compared; });
  if (end != section.lines.begin()) {
    section.lines.insert(end, SheetLine{LineKind::plain, view.say("page.in_brackets"), {}, {}, {}});
  }
  if (section.lines.empty()) {
    section.plain(view.say("page.nothing_compared"));
  }
  if (taught) {
    section.plain(view.say("page.taught"));
  }
  const auto& said = view.assessment.statements;
  if (std::none_of(said.begin(), said.end(), [](const Statement& one) { return one.comparator == interpret::Comparator::own_past; })) {
    section.plain(view.say("page.nothing_past"));
  }
  std::vector<model::FindingId> judged;
  for (const Statement& statement : view.assessment.statements) {
    judged.insert(judged.end(), statement.findings.begin(), statement.findings.end());
  }
  if (const std::string signed_alone = judged_as_signed(view, judged); !signed_alone.empty()) {
    section.lines.insert(section.lines.begin(), SheetLine{LineKind::plain, signed_alone, {}, {}, {}});
  }
  return section;
}

}  // namespace limbledger::report
