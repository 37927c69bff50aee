// The letters of an exam, and what has come since that a letter says otherwise: whatever its writer had not seen.
#include "core/ledger/fold/exam_folder.hpp"

#include <algorithm>

namespace limbledger::ledger {

namespace {

// A letter tells of what was given or ordered here and of what holds until its reader sees the person; how a film or a referral fares
// changes nothing that it says.
[[nodiscard]] bool told_in_letters(model::PlanKind kind) {
  return kind == model::PlanKind::splint || kind == model::PlanKind::limit || kind == model::PlanKind::exercise || kind == model::PlanKind::medicine ||
         kind == model::PlanKind::advice || kind == model::PlanKind::safety_net;
}

}  // namespace

// The word for what an operation changes of a letter; empty for what changes nothing.
std::string_view ExamFolder::change_of(std::size_t index) const {
  if (!graph_.at(index).readable()) {
    return "newer_edition";  // it may be a correction
  }
  if (nodes_[index].is_void) {
    return {};
  }
  if (observation(index) != nullptr) {
    return "finding";
  }
  if (const auto* withdraw = body<model::WithdrawBody>(index)) {
    return withdraw->finding ? "finding" : "withdraw";
  }
  if (const auto* plan = body<model::PlanBody>(index)) {
    return told_in_letters(plan->plan_item.kind) ? "plan" : "";
  }
  if (const auto* fate = body<model::BecameBody>(index)) {
    for (std::size_t i = 0; i < graph_.size(); ++i) {
      const auto* plan = body<model::PlanBody>(i);
      if (!nodes_[i].is_void && plan != nullptr && plan->plan_item.plan_item == std::optional(fate->plan_item) && told_in_letters(plan->plan_item.kind)) {
        return "plan";
      }
    }
    return {};
  }
  if (const auto* consent = body<model::ConsentBody>(index)) {
    return consent->consent && consent->consent->send && *consent->consent->send != model::ConsentWord::yes ? "consent" : "";
  }
  if (body<model::ImpressionBody>(index) != nullptr) {
    return "impression";
  }
  if (body<model::ExamBody>(index) != nullptr) {
    return "exam";
  }
  if (body<model::AddendumBody>(index) != nullptr) {
    return "addendum";
  }
  if (const auto* countersign = body<model::CountersignBody>(index)) {
    return finds_otherwise(*countersign) ? "countersigned" : "";
  }
  if (body<model::MoveBody>(index) != nullptr) {
    return "move";
  }
  return body<model::SwapSidesBody>(index) != nullptr ? "swap_sides" : "";
}

// Who supervised found something else, or what the signer had not looked at: a letter tells of neither.
bool ExamFolder::finds_otherwise(const model::CountersignBody& countersign) const {
  const std::vector<model::Finding> none;
  const std::vector<model::Finding>& held = out_.exam.findings ? *out_.exam.findings : none;
  const std::vector<model::Observation> seen = countersign.findings.value_or(std::vector<model::Observation>{});
  return std::any_of(seen.begin(), seen.end(), [&](const model::Observation& one) {
    const bool told = !kept_apart_ || !kept_apart_(one.item);
    return told && std::none_of(held.begin(), held.end(), [&](const model::Finding& finding) {
             return finding.item == one.item && finding.side == one.side && finding.value == one.value;
           });
  });
}

// Holds nothing but what an open letter never tells: were it marked for that, the mark would tell that there is something (C16).
bool ExamFolder::is_kept_apart(std::size_t index) const {
  if (!kept_apart_) {
    return false;
  }
  if (const model::Observation* found = observation(index)) {
    return kept_apart_(found->item);
  }
  if (const auto* withdraw = body<model::WithdrawBody>(index); withdraw != nullptr && withdraw->finding) {
    for (std::size_t i = 0; i < graph_.size(); ++i) {
      const model::Observation* found = observation(i);
      if (found != nullptr && finding_id(i) == withdraw->finding) {
        return kept_apart_(found->item);
      }
    }
  }
  const auto* addendum = body<model::AddendumBody>(index);
  return addendum != nullptr && !addendum->text && addendum->findings && !addendum->findings->empty() &&
         std::all_of(addendum->findings->begin(), addendum->findings->end(), [&](const model::Observation& one) { return kept_apart_(one.item); });
}

std::vector<model::Word> ExamFolder::changed_since(std::size_t letter) const {
  std::vector<model::Word> words;
  const bool open = !body<model::LetterBody>(letter)->protected_.value_or(false);
  for (std::size_t i = 0; i < graph_.size(); ++i) {
    const bool told = i == letter || graph_.saw(letter, i) || (open && is_kept_apart(i));
    const std::string_view word = told ? std::string_view() : change_of(i);
    if (!word.empty() && std::none_of(words.begin(), words.end(), [&](const model::Word& one) { return one.text == word; })) {
      words.push_back({std::string(word)});
    }
  }
  return words;
}

void ExamFolder::fill_letters() {
  std::vector<model::Letter> letters;
  for (std::size_t i = 0; i < graph_.size(); ++i) {
    const auto* written = body<model::LetterBody>(i);
    if (nodes_[i].is_void || written == nullptr) {
      continue;
    }
    const model::Operation& operation = graph_.at(i).operation();
    model::Letter letter;
    letter.letter = written->letter;
    letter.entry = graph_.at(i).entry();
    letter.by = operation.by;
    letter.at = wall_of(operation);
    letter.plan_item = written->plan_item;
    letter.corrects = written->corrects;
    if (written->protected_.value_or(false)) {
      letter.protected_ = true;
    } else {
      letter.to = written->to;
      letter.question = written->question;
      letter.urgency = written->urgency;
    }
    if (std::vector<model::Word> because = changed_since(i); !because.empty()) {
      letter.stale = true;
      letter.stale_because = std::move(because);
    }
    letters.push_back(std::move(letter));
  }
  if (letters.empty()) {
    return;
  }
  const std::vector<model::Followed> followed = out_.exam.followed.value_or(std::vector<model::Followed>{});
  for (model::Letter& letter : letters) {
    for (model::Letter& other : letters) {
      if (!letter.corrects || *letter.corrects != other.letter) {
        continue;
      }
      // An open letter and a sealed one do not name each other: whoever reads the open one must not learn of the other (C16).
      if (letter.protected_ == other.protected_) {
        other.corrected_by = letter.letter;
      } else {
        letter.corrects.reset();
      }
    }
    // A referral that a letter was written for is written, unless more is recorded of it. A sealed one says nothing there.
    if (letter.plan_item && out_.exam.plan && !letter.protected_) {
      for (model::PlanItem& item : *out_.exam.plan) {
        // Where two say differently what became of it, it stays open.
        const bool told = std::any_of(followed.begin(), followed.end(), [&](const model::Followed& one) { return item.plan_item == std::optional(one.plan_item); });
        if (item.plan_item == letter.plan_item && !item.became && !told) {
          item.became = model::Became::written;
        }
      }
    }
  }
  out_.exam.letters = std::move(letters);
}

}  // namespace limbledger::ledger
