// The part complained of and the joints around it, by side, where nobody looked: for the head of what was found and for a letter.
#include "core/report/brief/brief.hpp"

#include <algorithm>

namespace limbledger::report {

std::vector<std::string> places_not_examined(const PageView& view) {
  const model::Sequence* sequence = view.edition.sequence(view.exam.complaint);
  const std::string part = sequence != nullptr && sequence->part ? sequence->part->text : std::string();
  std::vector<std::string> places;
  const auto name = [&](const std::string& joint) {
    std::vector<std::string> sides;
    for (const model::Side side : {model::Side::right, model::Side::left}) {
      const auto& open = view.assessment.not_examined;
      if (std::any_of(open.begin(), open.end(), [&](const interpret::NotExamined& one) { return one.joint.text == joint && one.side == side; })) {
        sides.push_back(side_of(view.words, side));
      }
    }
    if (!sides.empty()) {
      places.push_back(view.say("page.joint", {{"joint", word_of(view.words, "joint", joint), false, true},
                                               {"sides", joined(sides, view.say("page.and")), false, true}}));
    }
  };
  if (!part.empty()) {
    name(part);
  }
  for (const model::Word& joint : sequence != nullptr && sequence->joints_around ? *sequence->joints_around : std::vector<model::Word>{}) {
    name(joint.text);
  }
  return places;
}

bool places_without_reason(const PageView& view) {
  if (view.exam.transfer && !view.exam.transfer->empty()) {
    return false;
  }
  const auto& open = view.assessment.not_examined;
  return std::none_of(view.findings.begin(), view.findings.end(), [&](const model::Finding* finding) {
    const model::Item* item = view.edition.item(finding->item);
    return item != nullptr && std::holds_alternative<model::NotDone>(finding->value) &&
           std::any_of(open.begin(), open.end(), [&](const interpret::NotExamined& one) { return one.joint == item->region && one.side == finding->side; });
  });
}

}  // namespace limbledger::report
