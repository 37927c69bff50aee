#include "core/report/home/home.hpp"

#include "core/report/brief/brief.hpp"
#include "core/report/home/home_back.hpp"
#include "core/report/page_judged.hpp"

#include <algorithm>
#include <array>
#include <string_view>
#include <utility>

namespace limbledger::report {

namespace {

using model::PlanItem;
using model::PlanKind;

constexpr std::size_t things_to_do_max = 3;
constexpr std::size_t reasons_to_return_max = 5;  // with those that the examiner typed
constexpr std::size_t reasons_of_program_min = 2;

void blank_lines(const PageView& view, std::size_t count, SheetSection& section) {
  for (std::size_t i = 0; i < count; ++i) {
    section.plain(view.say("home.blank"));
  }
}

[[nodiscard]] std::string on_its_side(const PageView& view, const std::optional<model::Side>& side, const std::string& text) {
  // Two returns, here and below: GCC 12 takes the temporary of a conditional call for unset.
  if (!side || *side == model::Side::midline) {
    return text;
  }
  return view.say("home.on_side", {{"side", side_of(view.words, *side), false, true}, {"text", text, false, true}});
}

[[nodiscard]] std::string with_date(const PageView& view, std::string_view message, const std::string& text, const std::optional<model::PartialDate>& date) {
  if (!date) {
    return text;
  }
  return view.say(message, {{"text", text, false, true}, {"date", date->to_text(), false, true}});
}

[[nodiscard]] std::vector<PlanItem> planned(const PageView& view, std::initializer_list<PlanKind> kinds) {
  std::vector<PlanItem> items;
  // In the order of the kinds, so that what protects the leg stands before what is good for it.
  for (const PlanKind kind : kinds) {
    for (const PlanItem& item : view.exam.plan.value_or(std::vector<PlanItem>{})) {
      if (item.kind == kind && item.became != model::Became::declined) {
        items.push_back(item);
      }
    }
  }
  return items;
}

[[nodiscard]] SheetSection think_section(const PageView& view) {
  SheetSection section = view.section("home.think");
  if (view.exam.impression) {
    // What somebody thinks is not what is so: how sure stands with it.
    const model::Impression& impression = *view.exam.impression;
    const std::string thought = view.say(impression.certainty ? "home.thinks" : "home.thinks_perhaps", {{"text", on_its_side(view, impression.side, as_written(impression.text.text)), false, true}});
    section.plain(impression.certainty ? thought + " " + view.say("home.how_sure", {{"certainty", impression.certainty->text}}) : thought);
  } else {
    if (view.exam.side && *view.exam.side != model::Side::midline) {
      section.plain(view.say("home.side_only", {{"side", side_of(view.words, *view.exam.side), false, true}}));
    }
    blank_lines(view, 2, section);
  }
  return section;
}

// What alerts and prompts to refer say meanwhile, of that what is meant for the person, in their words; each once.
void add_until_seen(const PageView& view, SheetSection& section) {
  std::vector<std::string> parts;
  const auto add = [&](const std::vector<model::MessageId>& meanwhile) {
    constexpr std::string_view begins = "msg.meanwhile.";
    for (const model::MessageId& message : meanwhile) {
      const std::string name = "home_until." + message.text.substr(std::min(begins.size(), message.text.size()));
      const std::string said = view.words.has("msg." + name) ? view.say(name) : std::string();
      if (!said.empty() && std::find(parts.begin(), parts.end(), said) == parts.end()) {
        parts.push_back(said);
      }
    }
  };
  for (const interpret::Alert& alert : view.assessment.alerts) {
    if (alert_in_letter(view, alert, false)) {
      add(alert.meanwhile);
    }
  }
  for (const interpret::Statement& statement : view.assessment.statements) {
    const std::string danger = statement.statement.text.substr(0, statement.statement.text.find(':'));
    const reference::AlertRow* row = referral_prompt(danger) ? view.edition.alert({"alert." + std::string(after_dot(danger))}) : nullptr;
    if (row != nullptr && !is_protected_danger(view, danger)) {
      add(meanwhile_of_prompt(view, statement, *row));
    }
  }
  // "No weight on the leg" beside "no weight on the leg at all: carried" is the same line twice.
  const std::vector<std::string> said = parts;
  parts.erase(std::remove_if(parts.begin(), parts.end(), [&](const std::string& one) {
                return std::any_of(said.begin(), said.end(), [&](const std::string& other) { return other.size() > one.size() && other.starts_with(one); });
              }), parts.end());
  if (!parts.empty()) {
    section.plain(view.say("home.until_seen", {{"what", joined(parts, "; "), false, true}}) + ".");
  }
}

// The same urgency as on the letter, with its day.
[[nodiscard]] std::string how_soon_said(const PageView& view) {
  const HowSoon soon = how_soon(view);
  if (!soon.urgency) {
    return {};
  }
  const std::string day = due_day(view, *soon.urgency).value_or(std::string());
  const bool named = *soon.urgency == model::LetterUrgency::same_day || *soon.urgency == model::LetterUrgency::two_weeks;
  if (named && !day.empty() && view.has_passed(day) && !was_sent_on(view)) {
    return view.say("home.soon_passed", {{"day", day, false, true}});
  }
  const std::string_view undated = named && day.empty() ? "_undated" : "";
  return view.say("home.soon_" + std::string(wire::type_of<model::LetterUrgency>().words[static_cast<std::size_t>(*soon.urgency)]) + std::string(undated),
                  {{"day", day, false, true}});
}

[[nodiscard]] SheetSection do_section(const PageView& view, std::size_t& left_out) {
  SheetSection section = view.section("home.do");
  std::vector<PlanItem> items = planned(view, {PlanKind::limit, PlanKind::splint, PlanKind::medicine, PlanKind::exercise, PlanKind::advice});
  // A dose that was given is no thing to do: read as one, it is taken twice.
  const auto given_medicine = [](const PlanItem& item) {
    return item.kind == PlanKind::medicine && (item.became == model::Became::given || item.became == model::Became::done);
  };
  std::vector<std::string> given;
  for (const PlanItem& item : items) {
    if (given_medicine(item)) {
      given.push_back(view.say("home.given", {{"text", on_its_side(view, item.side, plan_words(view, item)), false, true}}));
    }
  }
  items.erase(std::remove_if(items.begin(), items.end(), given_medicine), items.end());
  // Typed by the examiner, perhaps of a third person: said so, once.
  const bool nothing_planned = items.empty();
  if (!nothing_planned) {
    section.plain(view.say("home.do_written"));
  }
  const std::size_t shown = std::min(items.size(), things_to_do_max);
  for (std::size_t i = 0; i < shown; ++i) {
    const std::string text = on_its_side(view, items[i].side, plan_words(view, items[i]));
    section.bullet(with_date(view, "home.until", text, items[i].by));
  }
  left_out = items.size() - shown;
  add_until_seen(view, section);
  if (section.lines.empty()) {
    blank_lines(view, things_to_do_max, section);
  } else if (nothing_planned) {
    blank_lines(view, 1, section);
  }
  for (const std::string& text : given) {
    section.plain(text);
  }
  return section;
}

// After an injury, and where something is put round the leg, everybody is told of the signs of lacking blood and of pressure.
[[nodiscard]] bool limb_injured_or_bound(const PageView& view) {
  const std::string_view complaint = view.exam.complaint.text;
  if (view.exam.injured_on || complaint == "ankle_injury" || complaint == "hip_after_fall" || !planned(view, {PlanKind::splint}).empty()) {
    return true;
  }
  constexpr std::array<std::string_view, 4> told{"history.fall_or_blow", "history.fall_recent", "history.rotational_trauma", "history.injury_severe_or_crush"};
  return std::any_of(view.findings.begin(), view.findings.end(), [&](const model::Finding* finding) {
    const auto* answer = std::get_if<model::Answer>(&finding->value);
    const auto* choice = std::get_if<model::Choice>(&finding->value);
    if (choice != nullptr && finding->item.text == "history.mechanism") {
      return choice->choice.text != "no_injury" && choice->choice.text != "not_known";
    }
    return answer != nullptr && answer->answer == model::AnswerWord::yes && std::find(told.begin(), told.end(), finding->item.text) != told.end();
  });
}

// The alerts that stand first, then what this complaint must not miss; what the examiner typed before both.
[[nodiscard]] std::vector<std::string> reasons_to_return(const PageView& view, std::size_t most, bool injured, ReturnSigns& signs) {
  // An alert's danger by the name that the sequences have for it.
  constexpr std::array<std::pair<std::string_view, std::string_view>, 14> dangers{
      {{"knee_disloc_vasc", "knee_dislocated"}, {"acs", "compartment"},           {"ali", "cold_limb"},          {"septic_adult", "joint_infection"},
       {"septic_child", "joint_infection"},     {"osteomyelitis", "joint_infection"}, {"dvt", "clot"},            {"ces", "cauda_equina"},
       {"scfe", "hip_slip"},                    {"hip_fx_old", "hip_fracture"},   {"ext_mech", "extensor_rupture"}, {"achilles", "achilles_rupture"},
       {"tumour", "tumour"},                    {"open_fx", "deep_wound"}}};
  std::vector<std::string> reasons;
  const auto add = [&](std::string_view danger) {
    const bool said_for_injury = danger == "knee_dislocated" || danger == "compartment" || danger == "cold_limb";
    if (injured && said_for_injury) {
      return;
    }
    if (reasons.size() >= most) {
      return;
    }
    if (const std::string said = signs.of(danger); !said.empty() && std::find(reasons.begin(), reasons.end(), said) == reasons.end()) {
      reasons.push_back(said);
    }
  };
  for (const interpret::Alert& alert : view.assessment.alerts) {
    if (alert.state == interpret::AlertState::withdrawn_by_correction || is_hidden(view, alert)) {
      continue;
    }
    for (const auto& one : dangers) {
      if (one.first == after_dot(alert.alert.text)) {
        add(one.second);
      }
    }
  }
  const model::Sequence* sequence = view.edition.sequence(view.exam.complaint);
  for (const model::MessageId& message : sequence != nullptr && sequence->not_to_miss ? *sequence->not_to_miss : std::vector<model::MessageId>{}) {
    add(after_dot(message.text));
  }
  return reasons;
}

[[nodiscard]] SheetSection back_section(const PageView& view) {
  SheetSection section = view.section("home.back");
  for (const PlanItem& item : planned(view, {PlanKind::safety_net})) {
    section.plain(view.say(says_come_back(item.text.text) ? "home.back_said" : "home.back_said_if", {{"text", on_its_side(view, item.side, as_written(item.text.text)), false, true}}));
  }
  const std::size_t written = section.lines.size();
  section.plain(view.say("home.back_if"));
  ReturnSigns signs(view);
  // Beside the others and not in their place.
  const bool injured = limb_injured_or_bound(view);
  if (injured) {
    section.bullet(signs.of_blood());
    section.bullet(view.say(planned(view, {PlanKind::splint}).empty() ? "home.back_pain_unbound" : "home.back_pain"));
  }
  const std::size_t most = written + reasons_of_program_min > reasons_to_return_max ? reasons_of_program_min : reasons_to_return_max - written;
  for (const std::string& reason : reasons_to_return(view, most, injured, signs)) {
    section.bullet(reason);
  }
  if (signs.some_are_there()) {
    section.bullet(view.say(ReturnSigns::is_child(view) ? "home.back_worse_child" : "home.back_worse"));
  }
  if (written == 0) {
    blank_lines(view, 1, section);
  }
  return section;
}

[[nodiscard]] SheetSection call_section(const PageView& view, const HomeAsk& ask) {
  SheetSection section = view.section("home.call");
  // By name alone: whoever is not known by one is not on the sheet.
  if (view.exam.examiner && view.names.examiners.find(*view.exam.examiner) != view.names.examiners.end()) {
    section.bullet(view.say("home.examiner", {{"examiner", view.examiner(*view.exam.examiner)}}));
  }
  const std::size_t named = section.lines.size();
  for (const model::Telephone& telephone : ask.telephones) {
    section.bullet(view.say("home.call_line", {{"who", telephone.who.text}, {"number", telephone.number.text}}));
  }
  if (section.lines.size() == named) {
    blank_lines(view, 1, section);
  }
  return section;
}

[[nodiscard]] SheetSection visit_section(const PageView& view) {
  SheetSection section = view.section("home.next");
  for (const PlanItem& item : planned(view, {PlanKind::review, PlanKind::referral, PlanKind::film})) {
    if (is_over(item)) {
      continue;  // nobody is sent to what is done
    }
    std::string text = as_written(item.text.text);
    const bool referral = item.kind == PlanKind::referral;
    if (item.who && referral) {
      // The place to go to first: what is written may be what is done there.
      text = view.say("home.sent_to_for", {{"who", item.who->text}, {"text", text, false, true}});
    } else if (referral) {
      text = view.say("home.sent_to", {{"text", text, false, true}});
    } else if (item.who) {
      text += " (" + as_written(item.who->text) + ")";
    }
    section.bullet(with_date(view, "home.visit", text, is_too_late(view, item) ? std::nullopt : item.by));
  }
  if (section.lines.empty()) {
    blank_lines(view, 1, section);
  }
  return section;
}

}  // namespace

HomeSheet home_sheet(const PageView& view, const HomeAsk& ask) {
  HomeSheet out;
  Sheet& sheet = out.sheet;
  sheet.look = SheetLook::home;
  sheet.banner = view.names.banner;
  sheet.title = view.say("home.title");
  std::vector<std::string> names;
  for (const model::PersonName& name : view.person && view.person->names ? *view.person->names : std::vector<model::PersonName>{}) {
    names.push_back(as_written(name.text.text));
  }
  sheet.who = names.empty() ? view.say("home.name_blank") : joined(names, " / ");
  sheet.examined = view.day_text();
  // Else "today" and "tomorrow" below have no place; and how soon before all that can be read.
  sheet.head.push_back(joined({view.say("home.seen_on", {{"day", view.day_text(), false, true}}), how_soon_said(view)}, ". "));
  const std::vector<PlanItem> sent = view.exam.plan.value_or(std::vector<PlanItem>{});
  // For the examiner alone: what is not settled yet is nothing to carry home.
  out.plan_later = std::any_of(sent.begin(), sent.end(), [&](const PlanItem& item) { return is_too_late(view, item); });
  if (!ask.reviewed) {
    sheet.head.push_back(view.say("home.for_review"));
  }
  for (const model::SidesExchanged& one : view.exam.sides_exchanged.value_or(std::vector<model::SidesExchanged>{})) {
    if (!one.written_before.empty()) {
      sheet.head.push_back(view.say("home.sides_exchanged", {{"at", view.local(one.at), false, true}}));
    }
  }
  sheet.sections = {think_section(view), do_section(view, out.left_out), back_section(view), call_section(view, ask), visit_section(view)};
  sheet.sections.push_back(view.section("page.about"));
  sheet.sections.back().plain(view.say("home.about"));
  return out;
}

}  // namespace limbledger::report
