// What next, in the words of note and letter: a reason to come back under words that make it read as one; by whom and by which day.
#include "core/report/brief/brief.hpp"

#include <algorithm>
#include <array>

namespace limbledger::report {

bool says_come_back(std::string_view text) {
  std::string words = " ";
  for (const char c : text) {
    const bool upper = c >= 'A' && c <= 'Z';
    const bool letter = upper || (c >= 'a' && c <= 'z') || static_cast<unsigned char>(c) >= 0x80;
    words += upper ? static_cast<char>(c - 'A' + 'a') : (letter ? c : ' ');
  }
  words += ' ';
  constexpr std::array<std::string_view, 10> said{" if ", " when ", " whenever ", " should ", " come ", " comes ", " return ", " call ", " unless ", " in case "};
  return std::any_of(said.begin(), said.end(), [&](std::string_view one) { return words.find(one) != std::string::npos; });
}

std::string come_back_words(const PageView& view, const model::PlanItem& item) {
  return view.say(says_come_back(item.text.text) ? "plan.come_back" : "plan.come_back_if", {{"side", view.side_after(item.side), false, true}, {"text", item.text.text}});
}

bool names_come_back(const PageView& view) {
  const std::vector<model::PlanItem> plan = view.exam.plan.value_or(std::vector<model::PlanItem>{});
  return std::any_of(plan.begin(), plan.end(), [](const model::PlanItem& item) { return item.kind == model::PlanKind::safety_net && item.became != model::Became::declined; });
}

std::string not_planned(const PageView& view) {
  const std::vector<model::PlanItem> plan = view.exam.plan.value_or(std::vector<model::PlanItem>{});
  const auto holds = [&](model::PlanKind kind) {
    return std::any_of(plan.begin(), plan.end(), [&](const model::PlanItem& item) { return item.kind == kind && item.became != model::Became::declined; });
  };
  std::vector<std::string> lacking;
  if (!holds(model::PlanKind::referral)) {
    lacking.push_back(enum_word(view.words, "plan", model::PlanKind::referral));
  }
  if (!holds(model::PlanKind::review)) {
    lacking.push_back(view.say("plan.review_here"));
  }
  return lacking.empty() ? std::string() : view.say("plan.not_planned", {{"what", joined(lacking), false, true}});
}

bool is_over(const model::PlanItem& item) {
  const auto& became = item.became;
  return became == model::Became::declined || became == model::Became::done || became == model::Became::given || became == model::Became::seen ||
         became == model::Became::answered;
}

std::vector<std::string> whom_and_when(const PageView& view, const model::PlanItem& item) {
  std::vector<std::string> parts;
  const bool goes = item.kind == model::PlanKind::referral || item.kind == model::PlanKind::film || item.kind == model::PlanKind::review;
  const bool asks = goes && !is_over(item);
  if (item.who) {
    parts.push_back(as_written(item.who->text));
  } else if (asks) {
    parts.push_back(view.say(item.by ? "plan.whom_not_recorded" : "plan.whom_and_when_not_recorded"));
  }
  if (item.by) {
    parts.push_back(view.say("plan.by", {{"date", item.by->to_text(), false, true}}));
  } else if (asks && item.who) {
    parts.push_back(view.say("plan.when_not_recorded"));
  }
  // A film whom nobody follows, by the record: neither a referral nor a review says who looks at it.
  if (asks && item.kind == model::PlanKind::film) {
    const std::vector<model::PlanItem> plan = view.exam.plan.value_or(std::vector<model::PlanItem>{});
    const bool followed = std::any_of(plan.begin(), plan.end(), [](const model::PlanItem& one) {
      return (one.kind == model::PlanKind::referral || one.kind == model::PlanKind::review) && one.became != model::Became::declined;
    });
    if (!followed) {
      parts.back() = view.say("plan.film_reader_not_recorded", {{"by", parts.back(), false, true}});
    }
  }
  return parts;
}

std::string come_back_none(const PageView& view) {
  const bool moved_on = view.exam.transfer && !view.exam.transfer->empty();
  return view.say(moved_on ? "page.come_back_transfer" : "page.come_back_none");
}

}  // namespace limbledger::report
