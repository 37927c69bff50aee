// What holds until the reader has seen the person: what the plan tells them and what an alert says meanwhile. Without it a reader
// learns neither that the leg carries nothing nor that the person came fasting.
#include "core/report/brief/brief.hpp"
#include "core/report/letter/letter_parts.hpp"
#include "core/report/page_judged.hpp"

#include <algorithm>
#include <iterator>

namespace limbledger::report {

namespace {

[[nodiscard]] bool holds_until_seen(const model::PlanItem& item) {
  const bool kind = item.kind == model::PlanKind::limit || item.kind == model::PlanKind::splint || item.kind == model::PlanKind::advice ||
                    item.kind == model::PlanKind::safety_net;
  return kind && item.became != model::Became::declined;
}

// What was decided beside it: a reader who does not know that a film is ordered orders another.
[[nodiscard]] std::vector<std::string> decided(const PageView& view, const LetterAsk& ask) {
  std::vector<std::string> parts;
  for (const model::PlanItem& item : view.exam.plan.value_or(std::vector<model::PlanItem>{})) {
    const bool ordered = item.kind == model::PlanKind::film || item.kind == model::PlanKind::referral || item.kind == model::PlanKind::review;
    const bool care = item.kind == model::PlanKind::exercise || item.kind == model::PlanKind::medicine;
    const bool given = item.became == model::Became::given || item.became == model::Became::done;
    if (!ordered && !(care && !given)) {
      continue;  // what holds until seen stands above, what was given in its own section
    }
    std::vector<std::string> one{view.say("letter.given", {{"plan", enum_word(view.words, "plan", item.kind) + view.side_after(item.side), false, true},
                                                           {"text", plan_words(view, item), false, true}})};
    for (std::string& part : whom_and_when(view, item)) {
      one.push_back(std::move(part));
    }
    // A date beside "the same day" would be read as when it is due.
    one.push_back(later_than(view, item, ask.urgency));
    if (item.became) {
      const std::string became = enum_word(view.words, "became", *item.became);
      const bool by_letter = item.became == model::Became::arranged && !may_be_sent(view);
      one.push_back(by_letter ? view.say("letter.arranged_unsent", {{"became", became, false, true}}) : became);
    }
    parts.push_back(joined(one));
  }
  return parts;
}

// Who reads on has to know what the person knows.
[[nodiscard]] std::string with_told(const PageView& view, const model::PlanItem& item, const std::string& text) {
  const bool given = item.became == model::Became::given || item.became == model::Became::done;
  const bool splint = item.kind == model::PlanKind::splint;
  const std::string_view became = splint ? (given ? "letter.was_given" : "letter.not_given") : (given ? "letter.was_told" : "letter.not_told");
  if (given && !splint && item.said_back) {
    return view.say("letter.was_told_back", {{"what", text, false, true}, {"back", view.say("plan.said_back", {{"said", enum_word(view.words, "said_back", *item.said_back), false, true}}), false, true}});
  }
  return view.say(became, {{"what", text, false, true}});
}

}  // namespace

SheetSection letter_until(const PageView& view, const LetterAsk& ask, int shortened) {
  SheetSection section = view.section("letter.next");
  // What was decided leads: by whom and by which day is asked first.
  const std::vector<std::string> steps = decided(view, ask);
  const std::string decided_says = steps.empty() ? std::string() : view.say("letter.until_decided", {{"what", joined(steps, "; "), false, true}});
  if (const std::string says = joined({decided_says, not_planned(view)}, " "); !says.empty()) {
    section.plain(says);
  }
  std::vector<std::string> planned;
  std::vector<std::string> come_back;
  std::vector<std::string> named;
  for (const model::PlanItem& item : view.exam.plan.value_or(std::vector<model::PlanItem>{})) {
    if (item.became != model::Became::declined) {
      named.push_back(item.plan_item ? item.plan_item->to_text() : std::string());
    }
    if (item.kind == model::PlanKind::safety_net && holds_until_seen(item)) {
      come_back.push_back(with_told(view, item, come_back_words(view, item)));
    } else if (holds_until_seen(item)) {
      planned.push_back(with_told(view, item, view.say("letter.given", {{"plan", enum_word(view.words, "plan", item.kind) + view.side_after(item.side), false, true},
                                                                        {"text", item.text.text}})));
    }
  }
  std::string says = view.say("letter.until_no_plan");
  if (!planned.empty()) {
    says = view.say("letter.until", {{"what", joined(planned, "; "), false, true}}) + ".";
  }
  // Two alerts may say the same; a reader needs it once.
  constexpr int in_short_from = 6;
  std::vector<std::string> meanwhile;
  std::vector<std::string> done;
  const auto add_new = [](const std::vector<std::string>& from, std::vector<std::string>& to) {
    std::copy_if(from.begin(), from.end(), std::back_inserter(to), [&](const std::string& said) { return std::find(to.begin(), to.end(), said) == to.end(); });
  };
  const auto add_meanwhile_of = [&](const std::vector<model::MessageId>& messages, const std::optional<model::Side>& side) {
    // In short, what of it is on record stands in the plan and under what was found.
    const UntilSeen asked = until_seen(view, messages, side, shortened >= in_short_from);
    add_new(asked.left, meanwhile);
    add_new(asked.done, done);
  };
  for (const interpret::Alert& alert : view.assessment.alerts) {
    if (alert_in_letter(view, alert, false)) {
      add_meanwhile_of(alert.meanwhile, alert.side);
    }
  }
  // What waits two weeks is held as well: nobody forces a blocked knee straight in them.
  for (const interpret::Statement& statement : view.assessment.statements) {
    const std::string danger = statement.statement.text.substr(0, statement.statement.text.find(':'));
    if (!referral_prompt(danger) || is_protected_danger(view, danger)) {
      continue;
    }
    if (const reference::AlertRow* row = view.edition.alert({"alert." + std::string(after_dot(danger))}); row != nullptr) {
      add_meanwhile_of(meanwhile_of_prompt(view, statement, *row), statement.side);
    }
  }
  if (!meanwhile.empty()) {
    section.plain(says);
    says = view.say(shortened >= in_short_from ? "letter.until_alert_short" : "letter.until_alert", {{"what", joined(meanwhile, "; "), false, true}});
    says = joined({says, beside_limits(view)}, " ");
  }
  // The values stand under what was found.
  if (!done.empty() && shortened < in_short_from) {
    says += " " + view.say("page.until_recorded", {{"what", joined(done, "; "), false, true}});
  }
  // A paragraph of its own would cost a long letter what was found.
  section.plain(says + " " + (come_back.empty() ? come_back_none(view) : joined(come_back, "; ") + "."));
  add_exchanged_line(view, named, section);
  // Whoever receives the person does not try what the alerts advise against.
  constexpr std::size_t all = 1000;
  const std::size_t kept = shortened < 5 ? all : (shortened < 7 ? 6 : (shortened < 8 ? 4 : (shortened < letter_shortest ? 2 : 1)));
  std::vector<std::string> parts;
  for (const StoppedSteps& stopped : stopped_steps(view)) {
    if (!stopped.labels.empty()) {
      const std::string of_side = stopped.side ? view.side_before(stopped.side) : view.say("letter.whole_person") + ": ";
      const std::vector<std::string> rest(stopped.regions.begin() + static_cast<std::ptrdiff_t>(std::min(kept, stopped.regions.size())), stopped.regions.end());
      const std::string others = view.say("letter.others_of_parts", {{"parts", parts_named(view, rest), false, true}});
      parts.push_back(of_side + some_of(view, stopped.labels, kept, others, "page.cannot_wait"));
    }
  }
  if (!parts.empty()) {
    // "There" is where the plan sends the person to be seen.
    section.plain(view.say(refers(view) ? "letter.until_stop" : "letter.until_settled_stop", {{"steps", joined(parts, "; "), false, true}}));
  }
  return section;
}

}  // namespace limbledger::report
