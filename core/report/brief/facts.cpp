// Facts of the person: pregnant, on blood thinners, diabetes. Whoever reads of them among what is ordinary reads a no.
#include "core/report/brief/brief.hpp"

#include <algorithm>
#include <array>
#include <string_view>

namespace limbledger::report {

namespace {

// In the order in which they weigh on what is done next.
constexpr std::array<std::string_view, 15> weighty{"body.pregnancy",        "body.pregnancy_weeks",  "history.blood_thinners",    "history.bleeding_disorder",
                                                   "history.head_injury",  // beside what thins the blood: of one who takes it a blow decides what is done
                                                   "history.diabetes",      "history.leprosy",       "history.immune_suppressed", "history.steroids",
                                                   "history.cancer_active", "history.cancer_known",  "history.clot_before",       "history.kidney_failure",
                                                   "history.memory_poor",   "history.frail"};

[[nodiscard]] bool says_yes(const model::Finding& finding) {
  if (const auto* answer = std::get_if<model::Answer>(&finding.value)) {
    return answer->answer != model::AnswerWord::no;  // unsure weighs too
  }
  return std::holds_alternative<model::CountValue>(finding.value);
}

}  // namespace

bool is_lasting_fact(const PageView& view, const model::Finding& finding) {
  const model::Item* item = view.edition.item(finding.item);
  const bool looked_at = finding.item.text.starts_with("body.beighton_") || finding.item.text == "body.hypermobility";
  return item != nullptr && item->region.text == "body" && finding.side == model::Side::midline && !looked_at;
}

bool is_weighty_fact(const model::Finding& finding) {
  return std::find(weighty.begin(), weighty.end(), finding.item.text) != weighty.end() && says_yes(finding);
}

std::vector<std::string> weighty_facts(const PageView& view) {
  std::vector<std::string> parts;
  for (const std::string_view item : weighty) {
    for (const model::Finding* finding : view.findings) {
      if (finding->item.text == item && is_weighty_fact(*finding)) {
        parts.push_back(view.label(finding->item) + ": " + view.value(*finding));
      }
    }
  }
  return parts;
}

}  // namespace limbledger::report
