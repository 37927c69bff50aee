#include "core/interpret/knee/beside.hpp"

#include "core/interpret/alerts/circumstances.hpp"
#include "core/interpret/knee/lines.hpp"

#include <algorithm>
#include <array>

namespace limbledger::interpret {

namespace {

using model::Side;
using model::TestResult;

constexpr std::array<std::string_view, 3> hip_items{"hip.internal_rotation_passive_seated", "hip.internal_rotation_passive_supine", "hip.log_roll"};
constexpr std::size_t signs_least = 2;

[[nodiscard]] bool hurts(const model::Finding& finding) {
  const auto* test = std::get_if<model::Test>(&finding.value);
  const auto* not_done = std::get_if<model::NotDone>(&finding.value);
  const bool scored = finding.pain && finding.pain->score && finding.pain->score->steps > 0;
  return scored || (test != nullptr && test->result == TestResult::positive) || (not_done != nullptr && not_done->reason == model::WhyNot::pain);
}

[[nodiscard]] Found settled_at(const View& view, std::string_view item, Side side) {
  Found found;
  for (const model::Finding* finding : view.at(item, side)) {
    if (settles(*finding)) {
      found.findings.push_back(finding);
    }
  }
  return found;
}

// A test or grade by what the catalogue counts it as; a question by its answer, where all that was answered agrees.
[[nodiscard]] Found sign_at(const View& view, const model::Item& item, Side side) {
  if (item.value != model::ValueKind::answer) {
    return found_at(view, item.item.text, side);
  }
  Found found = settled_at(view, item.item.text, side);
  for (const model::Finding* finding : found.findings) {
    const auto* answer = std::get_if<model::Answer>(&finding->value);
    const bool yes = answer != nullptr && answer->answer == model::AnswerWord::yes;
    const bool no = answer != nullptr && answer->answer == model::AnswerWord::no;
    const TestResult result = yes ? TestResult::positive : (no ? TestResult::negative : TestResult::equivocal);
    found.result = !found.result || *found.result == result ? result : TestResult::equivocal;
  }
  return found;
}

struct Sign {
  const model::Item* item = nullptr;
  Found found;
};

// Of an answer whose yes is the ordinary one a yes is no sign.
[[nodiscard]] bool yes_is_ordinary(const model::Item& item) {
  const auto& ordinary = item.ordinary;
  return ordinary && std::any_of(ordinary->begin(), ordinary->end(), [](const auto& word) { return word.text == "yes"; });
}

// What was found at each item of the part complained of, on one side; findings come by item and side.
[[nodiscard]] std::vector<Sign> signs_of(const View& view, Side side) {
  std::vector<Sign> signs;
  const model::Sequence* sequence = view.edition().sequence(view.exam().complaint);
  const std::string part = (sequence != nullptr && sequence->part ? sequence->part->text : "knee") + ".";
  for (const model::Finding* finding : view.findings()) {
    const bool seen = !signs.empty() && signs.back().item->item == finding->item;
    if (finding->side != side || seen || !finding->item.text.starts_with(part)) {
      continue;
    }
    if (const model::Item* item = view.edition().item(finding->item); item != nullptr && !yes_is_ordinary(*item)) {
      signs.push_back({item, sign_at(view, *item, side)});
    }
  }
  return signs;
}

[[nodiscard]] std::optional<Judged> judge_hip(const View& view, const Answers& answers, Side side) {
  const bool lost = hip_rotation_lost(answers, side).is_yes();
  for (const std::string_view item : hip_items) {
    const Found found = settled_at(view, item, side);
    const bool painful = std::any_of(found.findings.begin(), found.findings.end(), [](const model::Finding* finding) { return hurts(*finding); });
    // A log roll tells of pain alone.
    const bool little = lost && found.any() && item != hip_items.back();
    if (!painful && !little) {
      continue;
    }
    Judged judged = begin_knee("hip.above_knee", {std::string(item)}, side, found);
    judged.statement.grade = lost ? StatementGrade::notable : StatementGrade::unclear;
    judged.working.formula = {"turns inward by 10 or less, or less than the other hip by more than the error of a difference, or hurts when turned"};
    name_knee(judged, lost ? (painful ? "hip.lost_and_painful" : "hip.lost") : "hip.painful");
    return judged;
  }
  return std::nullopt;
}

// The force of a jump or a fall goes through heels, hips and back as well; said where it took the walking (our convention, HC-045).
[[nodiscard]] std::optional<Judged> judge_axial(const View& view, const Answers& answers) {
  if (view.exam().complaint.text != "acute_knee") {
    return std::nullopt;
  }
  const Clue landed = answers.chosen("history.mechanism", Side::midline, {"jump_or_landing", "fall"});
  if (!landed.is_yes() || !cannot_walk(answers).is_yes()) {
    return std::nullopt;
  }
  Judged judged = begin_knee("injury.axial", {"history.mechanism"}, Side::midline, settled_at(view, "history.mechanism", Side::midline));
  judged.statement.side.reset();
  judged.statement.grade = StatementGrade::unclear;
  judged.working.formula = {"a jump, a landing or a fall, and fewer than four steps now"};
  name_knee(judged, "injury.axial");
  return judged;
}

}  // namespace

std::vector<Judged> judge_beside(const View& view) {
  std::vector<Judged> all;
  const std::string& complaint = view.exam().complaint.text;
  if (complaint != "acute_knee" && complaint != "chronic_knee") {
    return all;
  }
  const Answers answers(view);
  if (auto axial = judge_axial(view, answers)) {
    all.push_back(std::move(*axial));
  }
  const auto& recorded = view.findings();
  if (std::none_of(recorded.begin(), recorded.end(), [](const model::Finding* finding) { return finding->item.text.starts_with("hip."); })) {
    return all;
  }
  const auto& complained_of = view.exam().side;
  for (const Side side : {Side::left, Side::right}) {
    if (complained_of && *complained_of != Side::midline && *complained_of != side) {
      continue;
    }
    if (auto judged = judge_hip(view, answers, side)) {
      all.push_back(std::move(*judged));
    }
  }
  return all;
}

std::optional<Contradiction> signs_on_the_other_knee(const View& view) {
  const auto& side = view.exam().side;
  if (!side || *side == Side::midline) {
    return std::nullopt;
  }
  const std::vector<Sign> there = signs_of(view, other_side(*side));
  std::vector<const model::Finding*> findings;
  std::size_t signs = 0;
  for (const Sign& here : signs_of(view, *side)) {
    if (!here.found.is(TestResult::negative)) {
      if (here.found.result) {
        return std::nullopt;
      }
      continue;
    }
    const auto same = std::find_if(there.begin(), there.end(), [&](const Sign& sign) { return sign.item == here.item; });
    if (same != there.end() && same->found.is(TestResult::positive)) {
      ++signs;
      findings.insert(findings.end(), here.found.findings.begin(), here.found.findings.end());
      findings.insert(findings.end(), same->found.findings.begin(), same->found.findings.end());
    }
  }
  if (signs < signs_least) {
    return std::nullopt;
  }
  Contradiction found;
  found.contradiction = {"contradiction.complaint_side:" + std::string(side_word(*side))};
  found.side = *side;
  found.message = {"msg.contradiction.complaint_side"};
  found.params = Params().raw();
  found.findings = ids_of(findings);
  return found;
}

}  // namespace limbledger::interpret
