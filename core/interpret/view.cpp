#include "core/interpret/view.hpp"

#include "core/wire/write.hpp"

#include <algorithm>
#include <string>
#include <utility>

namespace limbledger::interpret {

View::View(const model::Exam& exam, const std::optional<model::Person>& person, const reference::Edition& edition, const model::PartialDate& as_of)
    : exam_(exam), person_(person), edition_(edition), examined_on_(as_of) {
  if (exam.examined_at) {
    examined_on_ = model::date_of(*exam.examined_at, exam.offset_min ? exam.offset_min->steps : 0);
  }
  if (!exam.findings) {
    return;
  }
  std::vector<std::pair<std::string, const model::Finding*>> keyed;
  for (const model::Finding& finding : *exam.findings) {
    const model::Standing standing = finding.standing ? *finding.standing : model::Standing::current;
    if (standing == model::Standing::current || standing == model::Standing::in_conflict) {
      const std::string id = finding.finding ? finding.finding->to_text() : std::string();
      // Two of one id differ by their entries; only what has none is told apart by all it says.
      const std::string rest = finding.entry ? finding.entry->to_text() : wire::write(finding);
      keyed.emplace_back(finding.item.text + '\n' + std::string(side_word(finding.side)) + '\n' + id + '\n' + rest, &finding);
    }
  }
  std::sort(keyed.begin(), keyed.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
  for (const auto& [key, finding] : keyed) {
    findings_.push_back(finding);
  }
}

std::optional<model::AgeInterval> View::age_on_day(const model::PartialDate& day) const {
  return person_ && person_->birth ? model::age_on(*person_->birth, day) : std::nullopt;
}

std::vector<const model::Finding*> View::at(std::string_view item, model::Side side) const {
  std::vector<const model::Finding*> found;
  for (const model::Finding* finding : findings_) {
    if (finding->item.text == item && finding->side == side) {
      found.push_back(finding);
    }
  }
  return found;
}

bool View::says_yes(std::string_view item, model::Side side) const {
  const auto found = at(item, side);
  return std::any_of(found.begin(), found.end(), [](const model::Finding* finding) {
    const auto* answer = std::get_if<model::Answer>(&finding->value);
    return answer != nullptr && answer->answer == model::AnswerWord::yes;
  });
}

bool of_damaged_record(const model::Finding& finding) {
  return finding.marks && std::any_of(finding.marks->begin(), finding.marks->end(),
                                      [](const model::Word& mark) { return mark.text == mark_record_damaged; });
}

bool settles(const model::Finding& finding) {
  if (of_damaged_record(finding)) {
    return false;
  }
  return !finding.origin || *finding.origin == model::Origin::observed || *finding.origin == model::Origin::from_paper;
}

std::string_view side_word(model::Side side) {
  switch (side) {
    case model::Side::left:
      return "left";
    case model::Side::right:
      return "right";
    case model::Side::midline:
      return "midline";
  }
  return "midline";
}

model::Side other_side(model::Side side) {
  if (side == model::Side::midline) {
    return side;
  }
  return side == model::Side::left ? model::Side::right : model::Side::left;
}

std::vector<model::FindingId> ids_of(const std::vector<const model::Finding*>& findings) {
  std::vector<model::FindingId> ids;
  for (const model::Finding* finding : findings) {
    if (finding->finding) {
      ids.push_back(*finding->finding);
    }
  }
  std::sort(ids.begin(), ids.end());
  ids.erase(std::unique(ids.begin(), ids.end()), ids.end());
  return ids;
}

}  // namespace limbledger::interpret
