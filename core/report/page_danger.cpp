// Which danger signs were asked after and with what answer; and what the sections about dangers share.
#include "core/interpret/alerts/alerts.hpp"
#include "core/interpret/alerts/covered.hpp"
#include "core/interpret/step/spared.hpp"
#include "core/report/brief/brief.hpp"
#include "core/report/ordinary.hpp"
#include "core/report/page_parts.hpp"

#include <algorithm>
#include <array>
#include <iterator>

namespace limbledger::report {

namespace {

using interpret::FlagAnswer;
using model::Side;

// Three at most, which is what is read: of what is open, the sign that was found before the noes beside it.
[[nodiscard]] std::string no_rests_on(const PageView& view, const interpret::Flag& flag) {
  std::vector<model::FindingId> ids = flag.findings;
  const auto found = std::stable_partition(ids.begin(), ids.end(), [&](const model::FindingId& id) {
    return flag.answer != FlagAnswer::cannot_answer || std::none_of(view.findings.begin(), view.findings.end(), [&](const model::Finding* one) {
             const auto* answer = std::get_if<model::Answer>(&one->value);
             return one->finding && *one->finding == id && answer != nullptr && answer->answer == model::AnswerWord::no;
           });
  });
  std::vector<std::string> named = findings_named(view, {ids.begin(), found}, flag.side);
  const std::vector<std::string> noes = findings_named(view, {found, ids.end()}, flag.side);
  named.insert(named.end(), noes.begin(), noes.end());
  named.resize(std::min<std::size_t>(named.size(), 3));
  return joined(named, "; ");
}

// What it is named for was found on that side, though something else asked with it speaks against.
[[nodiscard]] bool sign_found(const PageView& view, const interpret::Flag& flag) {
  const reference::AlertRow* row = view.edition.alert("alert." + std::string(after_dot(flag.flag.text)));
  if (row == nullptr || !row->sign) {
    return false;
  }
  return std::any_of(view.findings.begin(), view.findings.end(), [&](const model::Finding* finding) {
    const bool here = finding->side == Side::midline || !flag.side || *flag.side == finding->side;
    return here && std::find(row->sign->begin(), row->sign->end(), finding->item) != row->sign->end() &&
           ordinary(view.edition, *finding) == Ordinary::unusual;
  });
}

// Which of the noes it is: the sign was found, something speaks for it, it was looked at alone, or it was asked after.
[[nodiscard]] bool is_of_row(const PageView& view, const interpret::Flag& flag, bool found, bool spoken, bool looked) {
  if (sign_found(view, flag)) {
    return found;
  }
  if (!speaking_for(view, flag).empty()) {
    return spoken;
  }
  return !found && !spoken && looks_alone(view, flag).empty() != looked;
}

// Asked and answered, and open all the same: an angle within its error, or an answer that speaks for something else.
[[nodiscard]] bool left_open_by_measure(const PageView& view, const interpret::Flag& flag) {
  const auto answers = [&](const model::Finding& finding) {
    const auto* test = std::get_if<model::Test>(&finding.value);
    const auto* answer = std::get_if<model::Answer>(&finding.value);
    if (left_undone(finding) || (answer != nullptr && answer->answer == model::AnswerWord::unsure) ||
        (test != nullptr && test->result == model::TestResult::equivocal)) {
      return false;
    }
    return std::holds_alternative<model::Angle>(finding.value) || ordinary(view.edition, finding) != Ordinary::described;
  };
  return std::any_of(view.findings.begin(), view.findings.end(), [&](const model::Finding* finding) {
    return finding->finding && answers(*finding) &&
           std::find(flag.findings.begin(), flag.findings.end(), *finding->finding) != flag.findings.end();
  });
}

// "Knee went out of joint: no" beside "not asked: a knee out of joint" reads as a contradiction: of these the page says what is open.
struct ReadsAs {
  std::string_view item;
  std::string_view danger;
};
constexpr std::array<ReadsAs, 9> reads_as{{{"history.knee_dislocated", "knee_disloc_vasc"},
                                           {"history.patella_dislocated", "dislocation"},
                                           {"history.pain_out_of_proportion", "acs"},
                                           {"history.cold_pale_sudden", "ali"},
                                           {"history.bleeding_disorder", "bleed_joint"},
                                           {"history.saddle_numbness", "ces"},
                                           {"history.bladder_bowel_change", "ces"},
                                           {"history.locking", "locked_knee"},
                                           {"foot.hot_red_swollen", "charcot"}}};

// What would have to be asked or looked at, by name, of dangers that no question above names already.
class StillToAsk {
 public:
  explicit StillToAsk(const PageView& view)
      : view_(view), exam_(view.exam, view.person, view.edition, view.assessment.as_of), judged_(interpret::judge_flags(exam_)), spared_(exam_, judged_) {}
  StillToAsk(const StillToAsk&) = delete;
  StillToAsk& operator=(const StillToAsk&) = delete;

  // One of the few questions that the program puts to the examiner.
  [[nodiscard]] bool is_asked(const interpret::Flag& flag) const {
    const auto& questions = view_.assessment.questions;
    return std::any_of(questions.begin(), questions.end(), [&](const interpret::Question& one) { return after_dot(one.question.text) == after_dot(flag.flag.text) && one.side == flag.side; });
  }

  [[nodiscard]] std::string of(const interpret::Flag& flag) const {
    if (is_asked(flag)) {
      return asked_in_part(flag) ? view_.say("page.flag_asked_above") : std::string();
    }
    return missing(flag);
  }

  // The question that reads as the danger itself was answered no, though it takes more than that.
  [[nodiscard]] bool asked_in_part(const interpret::Flag& flag) const {
    return std::any_of(view_.findings.begin(), view_.findings.end(), [&](const model::Finding* finding) {
      const auto* answer = std::get_if<model::Answer>(&finding->value);
      const bool here = !flag.side || finding->side == Side::midline || *flag.side == Side::midline || finding->side == *flag.side;
      return here && answer != nullptr && answer->answer == model::AnswerWord::no && finding->origin != model::Origin::bulk_expected &&
             std::any_of(reads_as.begin(), reads_as.end(), [&](const ReadsAs& one) { return one.item == finding->item.text && one.danger == after_dot(flag.flag.text); });
    });
  }

  [[nodiscard]] std::string missing(const interpret::Flag& flag) const {
    const auto same = [&](std::string_view name, const std::optional<Side>& side) {
      return after_dot(name) == after_dot(flag.flag.text) && side == flag.side;
    };
    // What an alert or the plan keeps off the feet is named as that, where nothing else is missing.
    std::vector<model::ItemId> now;
    std::vector<model::ItemId> kept;
    bool settled = false;
    const auto add = [&](const model::ItemId& item, std::vector<model::ItemId>& to) {
      if (std::find(to.begin(), to.end(), item) == to.end()) {
        to.push_back(item);
      }
    };
    for (const interpret::JudgedFlag& judged : judged_) {
      if (!same(judged.row->alert.text, judged.side)) {
        continue;
      }
      settled = judged.raised.clue.is_no();
      for (const interpret::Ask& ask : interpret::asks_now(exam_, spared_, judged, judged.raised.clue)) {
        add(ask.item, now);
      }
      for (const interpret::ToAsk& ask : judged.raised.clue.ask.written()) {
        if (spared_.holds(ask, judged)) {
          add(ask.item->item, kept);
        }
      }
    }
    if (now.empty() && kept.empty() && !settled) {
      now = would_settle(flag);
    }
    if (!now.empty()) {
      return view_.say("page.flag_asks", {{"items", few(now), false, true}});
    }
    if (!kept.empty()) {
      return view_.say("page.flag_asks_kept", {{"items", few(kept), false, true}});
    }
    return settled ? view_.say("page.flag_circumstance") : std::string();
  }

 private:
  // What nobody is asked for, but would settle it: a danger that is open names something.
  [[nodiscard]] std::vector<model::ItemId> would_settle(const interpret::Flag& flag) const {
    std::vector<model::ItemId> items;
    for (const interpret::JudgedFlag& judged : judged_) {
      const bool same = after_dot(judged.row->alert.text) == after_dot(flag.flag.text) && judged.side == flag.side;
      for (const interpret::ToAsk& ask : same ? judged.raised.would_settle.written() : std::vector<interpret::ToAsk>{}) {
        if (std::find(items.begin(), items.end(), ask.item->item) == items.end()) {
          items.push_back(ask.item->item);
        }
      }
    }
    return items;
  }
  // A joint that is not complained of is not named for one that is: "kneecap tender" says nothing to whoever reads of a foot.
  [[nodiscard]] bool of_another_joint(const model::ItemId& item) const {
    constexpr std::array<std::string_view, 6> joints{"hip", "knee", "ankle", "foot", "pelvis", "leg"};
    const model::Sequence* sequence = view_.edition.sequence(view_.exam.complaint);
    const model::Item* known = view_.edition.item(item);
    return sequence != nullptr && sequence->part && known != nullptr && known->region != *sequence->part &&
           std::find(joints.begin(), joints.end(), known->region.text) != joints.end();
  }
  [[nodiscard]] std::vector<std::string> labels_of_part(const std::vector<model::ItemId>& items) const {
    std::vector<std::string> labels;
    bool bone = false;
    for (const model::ItemId& item : items) {
      if (of_another_joint(item)) {
        bone = bone || item.text.ends_with("_tender") || item.text.find("bone_tender") != std::string::npos;
        continue;
      }
      if (const std::string label = view_.label(item); std::find(labels.begin(), labels.end(), label) == labels.end()) {
        labels.push_back(label);
      }
    }
    if (bone) {
      labels.insert(labels.begin(), view_.say("page.flag_asks_bone", {{"part", part_named(view_), false, true}}));
    }
    if (labels.empty()) {  // nothing of the part would settle it: what would is named wherever it lies
      for (const model::ItemId& item : items) {
        labels.push_back(view_.label(item));
      }
    }
    return labels;
  }
  [[nodiscard]] std::string few(const std::vector<model::ItemId>& items) const {
    std::vector<std::string> labels = labels_of_part(items);
    constexpr std::size_t shown = 3;
    const bool more = labels.size() > shown;
    labels.resize(std::min(labels.size(), shown));
    return joined(labels, ", ") + (more ? view_.say("page.and_more") : std::string());
  }

  const PageView& view_;
  interpret::View exam_;
  std::vector<interpret::JudgedFlag> judged_;
  interpret::Spared spared_;
};

}  // namespace

bool is_open_flag(const PageView& view, const interpret::Flag& flag) {
  const FlagAnswer answer = printed_answer(view, flag);
  if (answer == FlagAnswer::cannot_answer || speaks_for_alone(view, flag)) {
    return true;
  }
  const reference::AlertRow* row = view.edition.alert("alert." + std::string(after_dot(flag.flag.text)));
  const auto& questions = view.assessment.questions;
  const bool is_question = std::any_of(questions.begin(), questions.end(),
                                       [&](const interpret::Question& one) { return after_dot(one.question.text) == after_dot(flag.flag.text); });
  return answer == FlagAnswer::not_asked && (row == nullptr || is_question || interpret::belongs_to(view.edition, *row, view.exam.complaint));
}

std::vector<std::string> left_of_asked(const PageView& view, bool of_questions) {
  const StillToAsk still(view);
  std::vector<std::string> left;
  for (const interpret::Flag& flag : view.assessment.flags) {
    const bool open = printed_answer(view, flag) == FlagAnswer::cannot_answer;
    left.push_back(open || still.asked_in_part(flag) || (of_questions && still.is_asked(flag)) ? still.missing(flag) : std::string());
  }
  return left;
}

std::vector<model::FindingId> speaking_for(const PageView& view, const interpret::Flag& flag) {
  std::vector<model::FindingId> ids;
  // One pulse that is felt settles a danger; the other, that is weak, is not among what the no rests on, and speaks all the same.
  std::vector<std::string> kinds;
  for (const model::Finding* finding : view.findings) {
    const std::string& item = finding->item.text;
    const bool of_nerve_or_vessel = item.starts_with("vessel.") || item.starts_with("nerve.");
    if (of_nerve_or_vessel && finding->finding && std::find(flag.findings.begin(), flag.findings.end(), *finding->finding) != flag.findings.end()) {
      kinds.push_back(item.substr(0, item.find('_')));
    }
  }
  const auto bears_on = [&](const model::Finding& finding) {
    const std::string& item = finding.item.text;
    const bool of_kind = item != "vessel.foot_warm" && std::find(kinds.begin(), kinds.end(), item.substr(0, item.find('_'))) != kinds.end();  // warm speaks for no lack of blood
    return of_kind || std::find(flag.findings.begin(), flag.findings.end(), *finding.finding) != flag.findings.end();
  };
  for (const model::Finding* finding : view.findings) {
    const bool here = finding->side == Side::midline || !flag.side || *flag.side == Side::midline || *flag.side == finding->side;
    if (here && finding->finding && bears_on(*finding) && !left_undone(*finding) && ordinary(view.edition, *finding) == Ordinary::unusual) {
      ids.push_back(*finding->finding);
    }
  }
  return ids;
}

std::string for_and_against(const PageView& view, const interpret::Flag& flag, const std::string& named) {
  const std::vector<model::FindingId> speaking = speaking_for(view, flag);
  std::vector<model::FindingId> others;
  std::copy_if(flag.findings.begin(), flag.findings.end(), std::back_inserter(others),
               [&](const model::FindingId& id) { return std::find(speaking.begin(), speaking.end(), id) == speaking.end(); });
  const std::string for_it = joined(findings_named(view, speaking, flag.side), "; ");
  const std::string against = joined(findings_named(view, others, flag.side), "; ");
  return view.say("page.flag_for_and_against",
                  {{"flag", named, false, true}, {"for", for_it, false, true}, {"against", against, false, true}});
}

std::optional<std::string> not_covered(const PageView& view) {
  const interpret::Covered covered = interpret::covered(view.edition, view.exam.complaint);
  if (covered.rule && covered.dangers) {
    return std::nullopt;
  }
  const std::string_view what = covered.rule ? "page.no_dangers_for" : (covered.dangers ? "page.no_rule_for" : "page.not_covered");
  return view.say(what, {{"part", part_named(view), false, true}});
}

std::string part_named(const PageView& view) {
  const model::Sequence* sequence = view.edition.sequence(view.exam.complaint);
  // Two returns: at some levels GCC 12 takes the temporary of a conditional call for unset.
  if (sequence == nullptr || !sequence->part) {
    return view.say("page.this_complaint");
  }
  return view.say("page.the_part", {{"part", word_of(view.words, "joint", sequence->part->text), false, true}});
}

std::string_view after_dot(std::string_view name) {
  const auto dot = name.rfind('.');
  return dot == std::string_view::npos ? name : name.substr(dot + 1);
}

bool is_protected_danger(const PageView& view, std::string_view name) {
  const reference::AlertRow* row = view.edition.alert({"alert." + std::string(after_dot(name))});
  return row != nullptr && row->protected_.value_or(false) && view.names.protected_note != ProtectedNote::shown;
}

bool is_hidden(const PageView& view, const interpret::Alert& alert) {
  return alert.audience == interpret::Audience::protected_ && view.names.protected_note != ProtectedNote::shown;
}

bool hides_an_alert(const PageView& view) {
  const auto& alerts = view.assessment.alerts;
  return std::any_of(alerts.begin(), alerts.end(), [&](const interpret::Alert& alert) { return is_hidden(view, alert) && alert.state != interpret::AlertState::withdrawn_by_correction; });
}

std::string flag_label(const PageView& view, std::string_view flag) { return word_of(view.words, "flag", after_dot(flag)); }

std::string value_or_undone(const PageView& view, const model::Finding& finding) {
  const auto* undone = std::get_if<model::NotDone>(&finding.value);
  if (undone == nullptr) {
    return undone_without_reason(finding) ? reason_lacking(view, view.value(finding)) : view.value(finding);
  }
  return view.say(undone->reason == model::WhyNot::pain ? "page.undone_pain" : "page.undone", {{"why", view.value(finding), false, true}});
}

std::vector<std::string> findings_named(const PageView& view, const std::vector<model::FindingId>& ids, const std::optional<Side>& said) {
  // In the order of the body: ids are drawn, and a page that followed them would differ from one entry of the same findings to the next.
  std::vector<const model::Finding*> named;
  std::copy_if(view.findings.begin(), view.findings.end(), std::back_inserter(named),
               [&](const model::Finding* one) { return one->finding && std::find(ids.begin(), ids.end(), *one->finding) != ids.end(); });
  // Beside one of the other side, none is left without its own.
  const bool of_one_side = std::all_of(named.begin(), named.end(), [&](const model::Finding* one) { return one->side == Side::midline || said == one->side; });
  std::vector<std::string> parts;
  for (const model::Finding* finding : named) {
    parts.push_back(view.label(finding->item) + (of_one_side ? std::string() : view.side_after(finding->side)) + ": " + value_or_undone(view, *finding));
  }
  return parts;
}

bool is_hidden_flag(const PageView& view, const interpret::Flag& flag) {
  return is_protected_danger(view, flag.flag.text) ||
         std::any_of(view.assessment.alerts.begin(), view.assessment.alerts.end(), [&](const interpret::Alert& alert) {
           return is_hidden(view, alert) && after_dot(alert.alert.text) == after_dot(flag.flag.text);
         });
}

// A no that rests on nothing recorded, on how long ago it began alone, or on what speaks for it is nobody's answer against the sign.
interpret::FlagAnswer printed_answer(const PageView& view, const interpret::Flag& flag) {
  const auto tells_nothing = [&](const model::FindingId& id) {
    return std::any_of(view.findings.begin(), view.findings.end(), [&](const model::Finding* finding) {
      return finding->finding && *finding->finding == id && finding->item.text == "history.weeks_since_onset";
    });
  };
  const bool of_nothing = std::all_of(flag.findings.begin(), flag.findings.end(), tells_nothing);
  return flag.answer == FlagAnswer::asked_no && (of_nothing || speaks_for_alone(view, flag)) ? FlagAnswer::not_asked : flag.answer;
}

bool speaks_for_alone(const PageView& view, const interpret::Flag& flag) {
  if (flag.answer != FlagAnswer::asked_no || sign_found(view, flag)) {
    return false;
  }
  const std::vector<model::FindingId> speaking = speaking_for(view, flag);
  return !speaking.empty() &&
         std::all_of(flag.findings.begin(), flag.findings.end(), [&](const model::FindingId& id) { return std::find(speaking.begin(), speaking.end(), id) != speaking.end(); });
}

std::string illness_open(const PageView& view) {
  constexpr std::string_view name = "acutely_ill";
  const auto flag = std::find_if(view.assessment.flags.begin(), view.assessment.flags.end(), [&](const interpret::Flag& one) { return after_dot(one.flag.text) == name; });
  if (flag == view.assessment.flags.end() || is_hidden_flag(view, *flag)) {
    return {};
  }
  if (flag->answer != interpret::FlagAnswer::cannot_answer) {
    const auto& questions = view.assessment.questions;
    const bool asked = std::any_of(questions.begin(), questions.end(), [&](const interpret::Question& one) { return after_dot(one.question.text) == name; });
    return asked ? view.say("page.how_soon_asked", {{"flag", flag_label(view, name), false, true}}) : std::string();
  }
  std::vector<model::FindingId> measured, warmth;
  for (const model::Finding* finding : view.findings) {
    const bool named = finding->finding && std::find(flag->findings.begin(), flag->findings.end(), *finding->finding) != flag->findings.end();
    if (named && finding->item.text.starts_with("general.")) {
      (finding->item.text == "general.temperature" ? warmth : measured).push_back(*finding->finding);
    }
  }
  const std::string signs = joined(findings_named(view, measured.empty() ? warmth : measured, std::nullopt), "; ");
  return signs.empty() ? std::string() : view.say("page.how_soon_open", {{"flag", flag_label(view, name), false, true}, {"findings", signs, false, true}});
}

SheetSection flags_section(const PageView& view) {
  SheetSection section = view.section("page.danger_signs");
  if (view.assessment.flags.empty()) {
    section.plain(view.say("page.no_flags"));
    return section;
  }
  struct Row {
    FlagAnswer answer;
    std::string_view title;
    bool found = false;     // the sign itself, though something else is a no
    bool measured = false;  // and the measurement does not settle it
    bool spoken = false;    // something that was found speaks for it
    bool looked = false;    // by a look alone
  };
  constexpr std::array<Row, 8> rows{{{FlagAnswer::raised, "page.flags_raised"},
                                     {FlagAnswer::asked_no, "page.flags_found_but", true},
                                     {FlagAnswer::asked_no, "page.flags_no_but", false, false, true},
                                     {FlagAnswer::cannot_answer, "page.flags_not_settled", false, true},
                                     {FlagAnswer::asked_no, "page.flags_asked_no"},
                                     {FlagAnswer::asked_no, "page.flags_looked", false, false, false, true},
                                     {FlagAnswer::not_asked, "page.flags_not_asked"},
                                     {FlagAnswer::cannot_answer, "page.flags_cannot_answer"}}};
  const StillToAsk still(view);
  for (const Row& row : rows) {
    const FlagAnswer answer = row.answer;
    // In the order of the assessment; the sides of one flag together where they rest on the same.
    struct Named {
      std::string label;
      std::string findings;
      std::vector<Side> sides;
    };
    std::vector<Named> named;
    for (const interpret::Flag& flag : view.assessment.flags) {
      const FlagAnswer printed = printed_answer(view, flag);
      if (printed != answer || is_hidden_flag(view, flag) || (printed == FlagAnswer::asked_no && !is_of_row(view, flag, row.found, row.spoken, row.looked)) ||
          (printed == FlagAnswer::cannot_answer && left_open_by_measure(view, flag) != row.measured) ||
          (printed == FlagAnswer::not_asked && !is_open_flag(view, flag))) {
        continue;
      }
      const std::string label = flag_label(view, flag.flag.text);
      if (row.spoken) {
        const std::string named_side = flag.side && *flag.side != Side::midline ? label + " " + side_of(view.words, *flag.side) : label;
        named.push_back({for_and_against(view, flag, named_side), {}, {}});
        continue;
      }
      std::string findings = (answer == FlagAnswer::asked_no || row.measured) && !row.spoken ? no_rests_on(view, flag) : std::string();
      if (answer == FlagAnswer::cannot_answer) {
        // "Still open" alone does not say what would settle it.
        findings = joined({findings, still.missing(flag)}, "; ");
        if (const std::string rests = findings.empty() ? no_rests_on(view, flag) : std::string(); !rests.empty()) {
          findings = view.say("page.flag_not_settled_by", {{"findings", rests, false, true}});
        }
      }
      if (answer == FlagAnswer::not_asked) {
        const bool by_time = flag.answer == FlagAnswer::asked_no && !flag.findings.empty();  // how long ago alone
        findings = speaks_for_alone(view, flag) ? view.say("page.flag_for_alone", {{"for", no_rests_on(view, flag), false, true}})
                   : by_time                    ? view.say("page.flag_circumstance")
                                                : still.of(flag);
      }
      auto at = std::find_if(named.begin(), named.end(), [&](const Named& one) { return one.label == label && one.findings == findings; });
      if (at == named.end()) {
        at = named.insert(named.end(), Named{label, findings, {}});
      }
      if (flag.side && *flag.side != Side::midline) {
        at->sides.push_back(*flag.side);
      }
    }
    std::vector<std::string> parts;
    for (const Named& one : named) {
      std::vector<std::string> sides;
      for (const Side side : {Side::right, Side::left}) {
        if (std::find(one.sides.begin(), one.sides.end(), side) != one.sides.end()) {
          sides.push_back(side_of(view.words, side));
        }
      }
      const std::string flag = joined({one.label, joined(sides, view.say("page.and"))}, " ");
      parts.push_back(one.findings.empty() ? flag : view.say("page.flag_rests", {{"flag", flag, false, true}, {"findings", one.findings, false, true}}));
    }
    if (!parts.empty()) {
      section.plain(view.say(row.title, {{"flags", joined(parts, "; "), false, true}}));
    }
  }
  if (!interpret::covered(view.edition, view.exam.complaint).dangers) {
    section.plain(view.say("page.no_dangers_for", {{"part", part_named(view), false, true}}) + ".");
  }
  if (const std::string untold = untold_pain(view); !untold.empty()) {
    section.plain(untold);
  }
  section.plain(view.say("page.flags_end"));
  return section;
}

}  // namespace limbledger::report
