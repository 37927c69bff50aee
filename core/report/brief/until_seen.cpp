// What an alert asks for until the person is seen, beside what of it the record holds: matched by kind of plan item and by item, never by
// what somebody wrote, save that a referral whose words name a film is not said to hold none.
#include "core/report/brief/brief.hpp"
#include "core/report/letter/letter_parts.hpp"
#include "core/report/ordinary.hpp"

#include <algorithm>
#include <array>
#include <string_view>

namespace limbledger::report {

namespace {

using model::Side;

// What stands on record for a line of an alert: a splint of the plan for its first part, findings whose item begins so for its last.
// `whole`: recorded on both sides it is done.
struct OnRecord {
  std::string_view message;
  bool splint = false;
  std::array<std::string_view, 3> items{};
  bool whole = false;
};
constexpr std::array<OnRecord, 11> on_record{{{"measure_calves", false, {"leg.calf_girth_10cm"}, true},
                                              {"hip_in_comfort", true, {"vessel.pulse_", "nerve.sensation_", "ankle.movement"}},
                                              {"straight_splint", true},
                                              {"splint_rest", true},
                                              {"splint_slightly_bent", true},
                                              {"splint_as_is", true, {"vessel.pulse_", "nerve.sensation_", "ankle.movement"}},
                                              {"splint_toes_down", true},
                                              {"foot_held_up", true},
                                              {"offload", true, {"vessel.pulse_"}},
                                              {"margin_and_general", false, {"general.temperature", "general.pulse_rate", "general.respiratory_rate"}},
                                              {"temperature_and_whole_child", false, {"general.temperature"}}}};

[[nodiscard]] bool is_here(const std::optional<Side>& of, const std::optional<Side>& side) {
  return !side || *side == Side::midline || !of || *of == Side::midline || *of == *side;
}

[[nodiscard]] std::string planned(const PageView& view, const model::PlanItem& item) {
  return view.say("letter.given", {{"plan", enum_word(view.words, "plan", item.kind) + view.side_after(item.side), false, true},
                                   {"text", item.became ? enum_word(view.words, "became", *item.became) : view.say("plan.open"), false, true}});
}

[[nodiscard]] bool names_a_film(std::string text) {
  std::transform(text.begin(), text.end(), text.begin(), [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
  return text.find("film") != std::string::npos || text.find("x-ray") != std::string::npos;
}

[[nodiscard]] bool open_sore(const PageView& view, const std::optional<Side>& side) {
  return std::any_of(view.findings.begin(), view.findings.end(), [&](const model::Finding* finding) {
    const auto* answer = std::get_if<model::Answer>(&finding->value);
    return finding->item.text == "skin.ulcer" && is_here(finding->side, side) && answer != nullptr && answer->answer == model::AnswerWord::yes;
  });
}

// A line in its parts, what is on record behind the part that it is of: behind the line it would be read as an answer to all of it.
class LineParts {
 public:
  explicit LineParts(const std::string& text) {
    constexpr std::string_view between = "; ";
    std::size_t from = 0;
    for (std::size_t at = text.find(between); at != std::string::npos; at = text.find(between, from)) {
      parts_.push_back(text.substr(from, at - from));
      from = at + between.size();
    }
    parts_.push_back(text.substr(from));
  }
  [[nodiscard]] std::string& first() { return parts_.front(); }
  [[nodiscard]] std::string& last() { return parts_.back(); }
  [[nodiscard]] std::string text() const { return joined(parts_, "; "); }

 private:
  std::vector<std::string> parts_;
};

void add_record(const PageView& view, const std::vector<std::string>& by, std::string& part) {
  if (!by.empty()) {
    part = view.say("page.until_part", {{"what", part, false, true}, {"by", joined(by, "; "), false, true}});
  }
}

[[nodiscard]] std::string with_film(const PageView& view, const std::string& text, const std::optional<Side>& side) {
  bool in_referral = false;
  std::vector<std::string> films;
  for (const model::PlanItem& item : view.exam.plan.value_or(std::vector<model::PlanItem>{})) {
    if (item.kind == model::PlanKind::film && is_here(item.side, side)) {
      films.push_back(planned(view, item));
    }
    in_referral = in_referral || (item.kind == model::PlanKind::referral && item.became != model::Became::declined && names_a_film(item.text.text));
  }
  LineParts parts(text);
  add_record(view, films, parts.first());
  if (films.empty() && !in_referral) {
    parts.first() = view.say("page.until_no_film", {{"what", parts.first(), false, true}});
  }
  return parts.text();
}

// What of it was found, by name with its value; what was told, taken over or entered for a group is no look.
void add_found(const PageView& view, const OnRecord& row, const std::optional<Side>& side, std::vector<std::string>& found, std::size_t& sides) {
  std::vector<SaidAlike> alike;
  for (const model::Finding* finding : view.findings) {
    const bool looked = !finding->origin || *finding->origin == model::Origin::observed || *finding->origin == model::Origin::from_paper;
    const bool asked = std::any_of(row.items.begin(), row.items.end(), [&](std::string_view item) { return !item.empty() && finding->item.text.starts_with(item); });
    if (asked && looked && !left_undone(*finding) && (row.whole || is_here(finding->side, side))) {
      const std::string of_side = finding->side == side ? std::string() : view.side_after(finding->side);
      add_alike(alike, row.whole ? side_of(view.words, finding->side) : view.label(finding->item) + of_side, value_in_a_word(view, *finding));
      ++sides;
    }
  }
  if (!alike.empty()) {
    found.push_back(alike_text(alike, false));
  }
}

}  // namespace

std::string beside_limits(const PageView& view) {
  const std::vector<model::PlanItem> plan = view.exam.plan.value_or(std::vector<model::PlanItem>{});
  const bool limits = std::any_of(plan.begin(), plan.end(), [](const model::PlanItem& item) {
    return (item.kind == model::PlanKind::limit || item.kind == model::PlanKind::splint) && item.became != model::Became::declined;
  });
  return limits ? view.say("page.beside_limits") : std::string();
}

UntilSeen until_seen(const PageView& view, const std::vector<model::MessageId>& messages, const std::optional<Side>& side, bool by_name_alone) {
  constexpr std::string_view begins = "msg.meanwhile.";
  UntilSeen out;
  for (const model::MessageId& message : messages) {
    // Beside a moist dressing of an open sore "dry" is said of what is dead, as where both were recorded.
    const bool of_dead_part = message.text == "msg.meanwhile.dry_and_covered" && open_sore(view, side);
    const std::string text = of_dead_part ? view.say("meanwhile.dead_part_if") : meanwhile_text(view, message, side);
    const std::string_view name = std::string_view(message.text).substr(std::min(begins.size(), message.text.size()));
    if (name.starts_with("film")) {
      out.left.push_back(by_name_alone ? text : with_film(view, text, side));
      continue;
    }
    const auto row = std::find_if(on_record.begin(), on_record.end(), [&](const OnRecord& one) { return one.message == name; });
    if (row == on_record.end()) {
      out.left.push_back(text);
      continue;
    }
    std::vector<std::string> splints;
    for (const model::PlanItem& item : view.exam.plan.value_or(std::vector<model::PlanItem>{})) {
      const bool there = item.became == model::Became::given || item.became == model::Became::done || item.became == model::Became::arranged;
      if (row->splint && item.kind == model::PlanKind::splint && there && is_here(item.side, side)) {
        splints.push_back(planned(view, item));
      }
    }
    std::size_t sides = 0;
    std::vector<std::string> found;
    add_found(view, *row, side, found, sides);
    if (row->whole && sides > 1) {
      out.done.push_back(view.say("page.until_done", {{"what", text, false, true}, {"by", joined(found, "; "), false, true}}));
      continue;
    }
    LineParts parts(text);
    if (!row->whole) {
      add_record(view, splints, parts.first());
      add_record(view, found, parts.last());
    }
    out.left.push_back(by_name_alone ? text : parts.text());
  }
  return out;
}

}  // namespace limbledger::report
