// What a letter tells of function, of what was given, of medicines and allergies, and what a protected one holds.
#include "core/report/brief/added.hpp"
#include "core/report/brief/brief.hpp"
#include "core/report/letter/letter_parts.hpp"
#include "core/report/ordinary.hpp"
#include "core/report/page_judged.hpp"

#include <algorithm>
#include <array>
#include <string_view>

namespace limbledger::report {

namespace {

using model::Finding;

constexpr std::array<std::string_view, 8> of_function{"history.function_reduced", "history.weight_bearing", "history.refuses_weight", "history.walking_lost",
                                                      "history.walks_usually",    "history.can_reach_feet", "history.moves_about",    "history.steps_at_once"};
constexpr std::array<std::string_view, 2> of_allergies{"history.allergy_known", "history.allergies"};
constexpr std::array<std::string_view, 4> of_treatment{"history.given_so_far", "history.painkiller_last_6h", "history.painkiller_what",
                                                       "history.joint_put_back"};

template <std::size_t Count>
[[nodiscard]] bool one_of_items(const Finding& finding, const std::array<std::string_view, Count>& items) {
  return std::find(items.begin(), items.end(), finding.item.text) != items.end();
}

// An activity's name is its text; how well it goes stands behind it.
[[nodiscard]] std::string activity_line(const PageView& view, const Finding& named) {
  const auto* words = std::get_if<model::Words>(&named.value);
  for (const Finding* finding : view.findings) {
    const auto* count = std::get_if<model::CountValue>(&finding->value);
    if (words != nullptr && count != nullptr && finding->item.text == named.item.text + "_ability") {
      return view.say("letter.activity", {{"activity", words->text.text}, {"ability", wire::write_number(count->count.steps, 1), true}});
    }
  }
  if (words == nullptr) {
    return view.value(named);
  }
  return view.say("letter.activity_alone", {{"activity", words->text.text}});
}


// Walking was lost at some time; what can be done now is told beside it.
[[nodiscard]] bool walking_was_lost(const PageView& view, const Finding& finding) {
  const std::string_view item = finding.item.text;
  return (item == "history.steps_at_once" || item == "history.walking_lost" || item == "history.weight_bearing" || item == "history.refuses_weight") &&
         !left_undone(finding) && ordinary(view.edition, finding) == Ordinary::unusual;
}

}  // namespace

bool speaks_of_function(const Finding& finding) {
  const std::string_view item = finding.item.text;
  // How somebody walks is found by a look; how many steps are taken is what can be done.
  return item.starts_with("function.") || item == "gait.steps_now" || one_of_items(finding, of_function);
}

bool stands_elsewhere(const Finding& finding) {
  return speaks_of_function(finding) || is_of_medicines(finding) || one_of_items(finding, of_allergies) || one_of_items(finding, of_treatment);
}

std::string with_label(const PageView& view, const Finding& finding) {
  return view.label(finding.item) + view.side_after(finding.side) + ": " + value_or_undone(view, finding);
}

SheetSection letter_function(const PageView& view, int shortened) {
  SheetSection section = view.section("letter.function");
  std::vector<std::string> parts;
  std::vector<std::string> then;
  std::optional<std::string> now;
  std::vector<std::string> can;
  bool steps_lost = false;
  for (const Finding* finding : view.findings) {
    const auto* undone = std::get_if<model::NotDone>(&finding->value);
    const bool unable = undone != nullptr && (undone->reason == model::WhyNot::unable || undone->reason == model::WhyNot::baseline_unable);
    if (!speaks_of_function(*finding) && unable && !finding->item.text.starts_with("history.")) {
      parts.push_back(with_label(view, *finding));  // tried and not possible is what can no longer be done
      continue;
    }
    if (!speaks_of_function(*finding) || finding->item.text.ends_with("_ability")) {
      continue;
    }
    if (walking_was_lost(view, *finding)) {
      steps_lost = steps_lost || finding->item.text == "history.steps_at_once";
      then.push_back(with_label(view, *finding));
      continue;
    }
    if (finding->item.text == "gait.steps_now") {
      now = with_label(view, *finding);
      if (!left_undone(*finding) && ordinary(view.edition, *finding) == Ordinary::ordinary) {
        can.push_back(*now);
        continue;
      }
      parts.push_back(*now);
      continue;
    }
    if (finding->item.text.starts_with("function.activity_") && !left_undone(*finding)) {
      parts.push_back(activity_line(view, *finding));
    } else if (left_undone(*finding) || ordinary(view.edition, *finding) != Ordinary::ordinary) {
      parts.push_back(with_label(view, *finding));
    } else {
      can.push_back(with_label(view, *finding));
    }
  }
  if (!then.empty() && (now || steps_lost)) {
    // Then and now stand together and first, so that neither is read for the other.
    parts.erase(std::remove(parts.begin(), parts.end(), now.value_or(std::string())), parts.end());
    section.plain(view.say("letter.then", {{"what", joined(then, "; "), false, true}}) + ". " +
                  view.say("letter.now", {{"what", now.value_or(view.say("letter.now_not_recorded")), false, true}}) + ".");
    if (parts.empty()) {
      return section;
    }
  } else {
    parts.insert(parts.begin(), then.begin(), then.end());
  }
  constexpr std::size_t all = 1000;
  if (parts.empty() && !can.empty()) {
    // Asked, and nothing was lost: "not recorded" would be untrue.
    section.plain(view.say("letter.function_kept", {{"what", some_of(view, can, shortened < 4 ? all : 3, view.say("letter.others_of_function"), "page.findings"), false, true}}));
    return section;
  }
  const bool walk_seen = std::any_of(view.findings.begin(), view.findings.end(), [](const Finding* finding) {
    return finding->item.text.starts_with("gait.") && !speaks_of_function(*finding) && !left_undone(*finding);
  });
  if (parts.empty() && walk_seen) {
    section.plain(view.say("letter.function_walk_below"));
    return section;
  }
  section.plain(parts.empty() ? view.say("letter.function_not_recorded") : some_of(view, parts, shortened < 4 ? all : (shortened < 6 ? 6 : 3), view.say("letter.others_of_function"), "page.findings") + ".");
  return section;
}

SheetSection letter_treatment(const PageView& view) {
  SheetSection section = view.section("letter.treatment");
  std::vector<std::string> parts;
  std::vector<std::string> named;
  for (const model::PlanItem& item : view.exam.plan.value_or(std::vector<model::PlanItem>{})) {
    const bool given = item.became == model::Became::given || item.became == model::Became::done;
    // Limits and splints hold until seen, and stand there.
    const bool is_care = item.kind == model::PlanKind::splint || item.kind == model::PlanKind::exercise || item.kind == model::PlanKind::medicine;
    if (given && item.kind == model::PlanKind::splint) {
      parts.push_back(view.say("letter.splint_above", {{"plan", enum_word(view.words, "plan", item.kind) + view.side_after(item.side), false, true}}));
    } else if (given && is_care) {
      named.push_back(item.plan_item ? item.plan_item->to_text() : std::string());
      parts.push_back(view.say("letter.given", {{"plan", enum_word(view.words, "plan", item.kind) + view.side_after(item.side), false, true},
                                                {"text", plan_words(view, item), false, true}}));
    }
  }
  for (const Finding* finding : view.findings) {
    if (one_of_items(*finding, of_treatment)) {
      parts.push_back(with_label(view, *finding));
    }
  }
  if (parts.empty()) {
    section.plain(view.say("letter.nothing_given"));
  } else {
    section.plain(joined(parts, "; ") + ". " + view.say("letter.response"));
  }
  add_exchanged_line(view, named, section);
  return section;
}

SheetSection letter_medicines(const PageView& view) {
  SheetSection section = view.section("letter.medicines");
  std::vector<std::string> medicines;
  for (const Finding* finding : view.findings) {
    if (is_of_medicines(*finding)) {
      medicines.push_back(with_label(view, *finding));
    }
  }
  section.plain(medicines.empty() ? view.say("letter.medicines_not_asked") : joined(medicines, "; ") + ".");
  return section;
}

SheetSection letter_private(const PageView& view) {
  SheetSection section = view.section("letter.private");
  for (const interpret::Alert& alert : view.assessment.alerts) {
    if (alert.audience == interpret::Audience::protected_) {
      section.bullet(alert_text(alert, view.words) + ".");
    }
  }
  for (const Finding* finding : view.findings) {
    const model::Item* item = view.edition.item(finding->item);
    if ((item != nullptr && item->protected_.value_or(false)) || view.has_remark_apart(*finding)) {
      section.bullet(with_label(view, *finding));
    }
  }
  for (const std::string& line : added_apart(view)) {
    section.bullet(line);
  }
  if (section.lines.empty()) {
    section.plain(view.say("page.nothing"));
  }
  return section;
}

}  // namespace limbledger::report
