// What the person does not bear stands at the top of a page and beside every drug that is named on it: whoever reads the one may not
// come to the other. And what is done meanwhile, in whose lines drugs stand.
#include "core/report/brief/brief.hpp"

#include <algorithm>
#include <array>
#include <string_view>

namespace limbledger::report {

namespace {

// Those that name a drug; what only a protocol names is not known here.
constexpr std::array<std::string_view, 9> names_a_drug{"msg.meanwhile.fluid_first",       "msg.meanwhile.fluid_first_replaced",
                                                       "msg.meanwhile.fluid_first_replaced_ill", "msg.meanwhile.sepsis_protocol",
                                                       "msg.meanwhile.sample_then_antibiotic",   "msg.meanwhile.cover_then_antibiotic",
                                                       "msg.meanwhile.dry_then_antibiotic",      "msg.meanwhile.sore_moist_then_antibiotic",
                                                       "msg.meanwhile.sepsis_by_protocol"};

[[nodiscard]] int alarm_of(model::AnswerWord answer) {
  return answer == model::AnswerWord::yes ? 2 : answer == model::AnswerWord::unsure ? 1 : 0;
}

constexpr std::array<std::string_view, 5> of_medicines{"history.medicines", "history.blood_thinners", "history.steroids", "history.bone_drugs",
                                                       "history.quinolones"};

}  // namespace

bool is_of_medicines(const model::Finding& finding) { return std::find(of_medicines.begin(), of_medicines.end(), finding.item.text) != of_medicines.end(); }

bool medicines_asked(const PageView& view) {
  return std::any_of(view.findings.begin(), view.findings.end(), [](const model::Finding* finding) { return is_of_medicines(*finding); });
}

std::string allergies_told(const PageView& view) {
  std::vector<std::string> named;
  std::string open;
  std::optional<model::AnswerWord> known;  // of several that stand, the most alarming: "none" only where every answer says so
  const auto name = [&](const std::string& text) {
    if (std::find(named.begin(), named.end(), text) == named.end()) {
      named.push_back(text);
    }
  };
  for (const model::Finding* finding : view.findings) {
    const bool of_allergies = finding->item.text == "history.allergies" || finding->item.text == "history.allergy_known";
    if (!of_allergies) {
      continue;
    }
    if (const auto* words = std::get_if<model::Words>(&finding->value)) {
      name(as_written(words->text.text));
    } else if (const auto* answer = std::get_if<model::Answer>(&finding->value)) {
      known = !known || alarm_of(answer->answer) > alarm_of(*known) ? answer->answer : *known;
    } else {
      open = value_or_undone(view, *finding);
    }
  }
  for (const model::Transferred& one : view.exam.transfer.value_or(std::vector<model::Transferred>{})) {
    if (one.set.allergies) {
      name(as_written(one.set.allergies->text));
    }
  }
  if (!named.empty()) {
    return view.say("page.allergies", {{"what", joined(named, "; "), false, true}});
  }
  if (known == model::AnswerWord::no) {
    return view.say("page.allergies_none");
  }
  if (known) {
    return view.say(*known == model::AnswerWord::yes ? "page.allergies_unnamed" : "page.allergies_unsure");
  }
  // Two returns: GCC 12 takes the temporary of a conditional call for unset.
  if (!open.empty()) {
    return view.say("page.allergies_open", {{"why", open, false, true}});
  }
  return view.say("page.allergies_not_asked");
}

std::string beside_drug(const PageView& view, const std::string& text) {
  return view.say("page.beside_drug", {{"text", text, false, true}, {"allergies", allergies_told(view), false, true}});
}

std::string plan_words(const PageView& view, const model::PlanItem& item) {
  const std::string text = as_written(item.text.text);
  if (item.kind != model::PlanKind::medicine) {
    return text;
  }
  return beside_drug(view, text);
}

namespace {

// No record holds who follows a referral; who does the review is named as that.
[[nodiscard]] std::string with_follower(const PageView& view, const std::string& text) {
  for (const model::PlanItem& item : view.exam.plan.value_or(std::vector<model::PlanItem>{})) {
    if (item.kind == model::PlanKind::review && item.who && !is_over(item)) {
      return view.say("plan.follower_reviews", {{"what", text, false, true}, {"who", item.who->text}});
    }
  }
  return view.say("plan.follower_not_recorded", {{"what", text, false, true}});
}

}  // namespace

std::string meanwhile_text(const PageView& view, const model::MessageId& message, const std::optional<model::Side>& side) {
  // A roll that hurt too much is not tried again by whoever reads "one small roll".
  const bool undone = message.text == "msg.meanwhile.no_standing_trial" && std::any_of(view.findings.begin(), view.findings.end(), [&](const model::Finding* finding) {
    const auto* why = std::get_if<model::NotDone>(&finding->value);
    return finding->item.text == "hip.log_roll" && (!side || finding->side == *side) && why != nullptr && why->reason == model::WhyNot::pain;
  });
  const std::string text = view.words.say(undone ? message.text + ".roll_undone" : message.text, {{"side", side ? side_of(view.words, *side) : std::string(), false, true}});
  if (message.text == "msg.meanwhile.followed_until_seen") {
    return with_follower(view, text);
  }
  if (std::find(names_a_drug.begin(), names_a_drug.end(), message.text) == names_a_drug.end()) {
    return text;
  }
  return beside_drug(view, text);
}

}  // namespace limbledger::report
