// What was answered no: dangers, dangers that only a look speaks against, and what a reader would ask back.
#include "core/report/brief/brief.hpp"
#include "core/report/letter/letter_parts.hpp"
#include "core/report/ordinary.hpp"

#include <algorithm>
#include <array>
#include <iterator>
#include <string_view>

namespace limbledger::report {

namespace {

using model::Finding;

// Looked at and described, as how a leg lies; a wound that is not there is what was asked after.
[[nodiscard]] bool described_by_eye(const PageView& view, const Finding& finding) {
  if (!std::holds_alternative<model::Choice>(finding.value) && !std::holds_alternative<model::Choices>(finding.value)) {
    return false;
  }
  if (finding.instrument) {
    return finding.instrument->text == "by_eye";
  }
  const model::Item* item = view.edition.item(finding.item);
  return item != nullptr && item->instruments && item->instruments->size() == 1 && item->instruments->front().text == "by_eye";
}

// Raised, and shown inside a graver alert or by no alert of its own: named all the same.
[[nodiscard]] std::vector<std::string> raised_unnamed(const PageView& view) {
  std::vector<std::string> labels;
  for (const interpret::Flag& flag : view.assessment.flags) {
    const std::string_view danger = after_dot(flag.flag.text);
    const auto& alerts = view.assessment.alerts;
    const auto& said = view.assessment.statements;
    const bool named = std::any_of(alerts.begin(), alerts.end(), [&](const interpret::Alert& one) { return after_dot(one.alert.text) == danger; }) ||
                       std::any_of(said.begin(), said.end(), [&](const interpret::Statement& one) {
                         return referral_prompt(one.statement.text) && after_dot(one.statement.text.substr(0, one.statement.text.find(':'))) == danger;
                       });
    if (printed_answer(view, flag) != interpret::FlagAnswer::raised || is_hidden_flag(view, flag) || named) {
      continue;
    }
    if (const std::string label = danger_named(view, flag); std::find(labels.begin(), labels.end(), label) == labels.end()) {
      labels.push_back(label);
    }
  }
  return labels;
}

struct AnsweredNo {
  std::vector<std::string> asked;
  std::vector<std::string> only_looked;  // of one side at least
  std::vector<std::string> spoken_for;   // something that was found speaks for it
};

[[nodiscard]] AnsweredNo answered_no(const PageView& view) {
  AnsweredNo no;
  std::vector<std::string> looked_labels;
  std::vector<std::string> labels;
  for (const interpret::Flag& flag : view.assessment.flags) {
    if (printed_answer(view, flag) != interpret::FlagAnswer::asked_no || is_hidden_flag(view, flag)) {
      continue;
    }
    const std::string label = danger_named(view, flag);
    if (std::find(labels.begin(), labels.end(), label) == labels.end()) {
      labels.push_back(label);
    }
    if (!speaking_for(view, flag).empty()) {
      looked_labels.push_back(label);
      no.spoken_for.push_back(for_and_against(view, flag, label));
      continue;
    }
    const std::vector<std::string> looks = looks_alone(view, flag);
    if (!looks.empty() && std::find(looked_labels.begin(), looked_labels.end(), label) == looked_labels.end()) {
      looked_labels.push_back(label);
      no.only_looked.push_back(view.say("letter.not_suggested_by", {{"flag", label, false, true}, {"looks", joined(looks, "; "), false, true}}));
    }
  }
  std::copy_if(labels.begin(), labels.end(), std::back_inserter(no.asked), [&](const std::string& label) {
    return std::find(looked_labels.begin(), looked_labels.end(), label) == looked_labels.end();
  });
  return no;
}

// What a reader would ask back by telephone, though it was answered no. A head that was not struck comes first: of somebody with blood
// thinners it decides what is done.
constexpr std::array<std::string_view, 17> noes_told{
    "history.head_injury",         "history.fever",           "history.unwell",                 "history.breathless",
    "history.numb_or_tingling",    "history.saddle_numbness", "history.bladder_bowel_change",   "history.cold_pale_sudden",
    "history.knee_dislocated",     "history.patella_dislocated", "history.pain_out_of_proportion", "history.pain_severe_sudden",
    "history.bleeding_disorder",   "history.diabetes",        "history.immune_suppressed",      "history.cancer_known",
    "body.pregnancy"};

// What the complaint turns on, and what the points for a clot are counted from: their noes stand as far as the page holds them.
constexpr std::array<std::string_view, 13> noes_that_decide{
    "history.locking",           "history.giving_way",        "history.cancer_active",    "history.leg_paralysed_or_plaster", "history.immobile_or_surgery_recent",
    "history.clot_before",       "history.other_cause_as_likely", "history.night_pain",     "history.weight_loss",              "history.claudication",
    "history.rest_pain_foot",    "history.family_hip", "history.night_pain_getting_worse"};
constexpr int without_deciding_noes = 8;

// Today, or what was taken over from an earlier exam and asked of nobody today.
[[nodiscard]] std::vector<std::string> asked_by_name(const PageView& view, int shortened, bool today) {
  std::vector<std::string> parts;
  std::vector<std::string_view> items(noes_told.begin(), noes_told.end());
  items.insert(items.end(), noes_that_decide.begin(), noes_that_decide.end());
  for (const std::string_view item : items) {
    for (const Finding* finding : view.findings) {
      const auto* answer = std::get_if<model::Answer>(&finding->value);
      if (finding->item.text != item || answer == nullptr || answer->answer != model::AnswerWord::no || ordinary(view.edition, *finding) == Ordinary::unusual) {
        continue;
      }
      const bool decides = std::find(noes_that_decide.begin(), noes_that_decide.end(), item) != noes_that_decide.end();
      if (decides && shortened >= without_deciding_noes && !counts_in_points(view, *finding) && !bears_on_raised(view, *finding)) {
        continue;
      }
      if (finding->origin == model::Origin::bulk_expected) {
        continue;  // entered for a group: nobody asked after it alone
      }
      if ((finding->origin == model::Origin::carried_over) == today) {
        continue;
      }
      const bool observed = !today || !finding->origin || *finding->origin == model::Origin::observed;
      const std::string label = view.label(finding->item) + view.side_after(finding->side);
      parts.push_back(observed ? label : label + " (" + enum_word(view.words, "origin", *finding->origin) + ")");
    }
  }
  return parts;
}

}  // namespace

std::vector<std::string> looks_alone(const PageView& view, const interpret::Flag& flag) {
  std::vector<std::string> labels;
  for (const Finding* finding : view.findings) {
    if (!finding->finding || std::find(flag.findings.begin(), flag.findings.end(), *finding->finding) == flag.findings.end()) {
      continue;
    }
    if (!described_by_eye(view, *finding)) {
      return {};
    }
    if (const std::string label = view.label(finding->item); std::find(labels.begin(), labels.end(), label) == labels.end()) {
      labels.push_back(label);
    }
  }
  return labels;
}

std::string danger_named(const PageView& view, const interpret::Flag& flag) {
  const std::string label = flag_label(view, flag.flag.text);
  const bool differs = std::any_of(view.assessment.flags.begin(), view.assessment.flags.end(), [&](const interpret::Flag& one) {
    return one.side != flag.side && flag_label(view, one.flag.text) == label && printed_answer(view, one) != printed_answer(view, flag);
  });
  // Where one side is complained of, a label without a side is of that one.
  const bool one_side = view.exam.side && *view.exam.side != model::Side::midline;
  const bool of_other = one_side && flag.side && *flag.side != model::Side::midline && *flag.side != *view.exam.side;
  return differs || of_other ? label + view.side_after(flag.side) : label;
}

std::string danger_sides(const PageView& view) {
  const bool one_side = view.exam.side && *view.exam.side != model::Side::midline;
  return one_side ? " " + view.say("letter.danger_sides", {{"side", side_of(view.words, *view.exam.side), false, true}}) : std::string();
}

void add_noes(const PageView& view, int shortened, SheetSection& section) {
  for (const bool today : {true, false}) {
    if (const std::vector<std::string> by_name = asked_by_name(view, shortened, today); !by_name.empty()) {
      section.bullet(view.say(today ? "letter.asked_by_name" : "letter.carried_by_name", {{"what", joined(by_name, "; "), false, true}}) + ".");
    }
  }
  if (const std::vector<std::string> raised = raised_unnamed(view); !raised.empty()) {
    section.bullet(view.say("letter.raised_besides", {{"flags", joined(raised, "; "), false, true}}));
  }
  const AnsweredNo no = answered_no(view);
  if (!no.spoken_for.empty()) {
    section.bullet(view.say("page.flags_no_but", {{"flags", joined(no.spoken_for, "; "), false, true}}));
  }
  if (!no.only_looked.empty()) {
    section.bullet(view.say("letter.not_suggested", {{"flags", joined(no.only_looked, "; "), false, true}}) + ".");
  }
  if (!no.asked.empty()) {
    section.bullet(view.say("letter.asked_no", {{"flags", joined(no.asked, "; "), false, true}}) + danger_sides(view));
  }
}

}  // namespace limbledger::report
