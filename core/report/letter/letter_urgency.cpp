// How soon, because of which finding; and what was not examined.
#include "core/report/letter/letter_parts.hpp"
#include "core/report/page_judged.hpp"

#include <algorithm>

namespace limbledger::report {

namespace {

using model::Side;

// The examiner's word against the most urgent alert: 0 now, 1 same day, 2 later.
[[nodiscard]] int how_soon(model::LetterUrgency urgency) { return static_cast<int>(urgency); }

// Where only some are kept, those of its own side stand first: a pulse of the other leg alone would say the wrong thing.
void add_grounds(const PageView& view, const std::vector<model::FindingId>& findings, const std::optional<Side>& side, std::size_t kept, SheetSection& section) {
  std::vector<model::FindingId> ids = findings;
  if (ids.size() > kept) {
    std::stable_partition(ids.begin(), ids.end(), [&](const model::FindingId& id) {
      return std::any_of(view.findings.begin(), view.findings.end(), [&](const model::Finding* one) { return one->finding == id && one->side == side; });
    });
  }
  std::vector<std::string> why = findings_named(view, ids);
  why.resize(std::min(why.size(), kept));
  if (!why.empty()) {
    section.under(view.say("page.alert_because", {{"findings", joined(why, "; "), false, true}}) + ".");
  }
}

[[nodiscard]] std::vector<std::string> open_signs(const PageView& view) {
  std::vector<std::string> labels;
  for (const interpret::Flag& flag : view.assessment.flags) {
    const std::string label = flag_label(view, flag.flag.text);
    if (is_open_flag(view, flag) && !is_hidden_flag(view, flag) && std::find(labels.begin(), labels.end(), label) == labels.end()) {
      labels.push_back(label);
    }
  }
  return labels;
}

}  // namespace

std::string some_of(const PageView& view, const std::vector<std::string>& parts, std::size_t kept) {
  if (parts.size() <= kept) {
    return joined(parts, "; ");
  }
  std::vector<std::string> shown(parts.begin(), parts.begin() + static_cast<std::ptrdiff_t>(kept));
  shown.push_back(view.say("letter.more", {{"count", wire::write_number(static_cast<std::int64_t>(parts.size() - kept), 1), true}}));
  return joined(shown, "; ");
}

bool alert_in_letter(const PageView& view, const interpret::Alert& alert, bool private_letter) {
  const bool is_private = alert.audience == interpret::Audience::protected_;
  return alert.state != interpret::AlertState::withdrawn_by_correction && is_private == private_letter && (private_letter || !is_hidden(view, alert));
}

SheetSection letter_urgency(const PageView& view, const LetterAsk& ask, int shortened) {
  constexpr std::size_t all_grounds = 1000;
  const std::size_t grounds = shortened < 5 ? all_grounds : (shortened < 6 ? 3 : (shortened < 7 ? 2 : 1));
  SheetSection section = view.section("letter.urgency");
  if (ask.urgency) {
    section.plain(view.say("letter.urgency_said", {{"urgency", enum_word(view.words, "letter_urgency", *ask.urgency), false, true}}));
  } else {
    section.plain(view.say("letter.urgency_not_said"));
  }
  int soonest = how_soon(model::LetterUrgency::routine);
  for (const interpret::Alert& alert : view.assessment.alerts) {
    if (!alert_in_letter(view, alert, ask.protected_)) {
      continue;
    }
    soonest = std::min(soonest, how_soon(alert.urgency == interpret::Urgency::now ? model::LetterUrgency::now : model::LetterUrgency::same_day));
    section.bullet(view.say("letter.alert", {{"alert", alert_text(alert, view.words), false, true}}) + ".");
    if (!ask.protected_) {
      add_grounds(view, alert.because, alert.side, grounds, section);
    }
    if (alert.handled && alert.handled->action) {
      section.under(view.say("page.alert_action", {{"text", alert.handled->action->text}}));
    }
  }
  for (const interpret::Statement& statement : view.assessment.statements) {
    if (!ask.protected_ && referral_prompt(statement.statement.text)) {
      soonest = std::min(soonest, how_soon(model::LetterUrgency::two_weeks));
      section.bullet(view.say("letter.alert", {{"alert", prompt_text(statement, view.words), false, true}}) + ".");
      add_grounds(view, statement.findings, statement.side, grounds, section);
    }
  }
  if (ask.urgency && soonest < how_soon(*ask.urgency)) {
    section.plain(view.say("letter.urgency_differs"));
  }
  return section;
}

// The other side, the joints above and below, the minimum set and the danger signs: nothing else is named.
SheetSection letter_not_examined(const PageView& view, int shortened) {
  constexpr std::size_t all = 1000;
  const std::size_t kept = shortened < 1 ? all : (shortened < 3 ? 6 : (shortened < 5 ? 4 : (shortened < 6 ? 2 : 1)));
  SheetSection section = view.section("page.not_examined");
  add_transfer_line(view, section);  // else a set that was cut short would read as one that is whole
  const model::Sequence* sequence = view.edition.sequence(view.exam.complaint);
  const std::string part = sequence != nullptr && sequence->part ? sequence->part->text : std::string();
  std::vector<std::string> places;
  const auto name = [&](const std::string& joint) {
    std::vector<std::string> sides;
    for (const Side side : {Side::right, Side::left}) {
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
  if (!places.empty()) {
    section.bullet(joined(places, "; ") + ".");
  }
  std::vector<std::string> minimum;
  for (const interpret::MissingItem& missing : view.assessment.missing) {
    const std::string label = view.label(missing.item) + view.side_after(missing.side);
    if (std::find(minimum.begin(), minimum.end(), label) == minimum.end()) {
      minimum.push_back(label);
    }
  }
  if (!minimum.empty()) {
    section.bullet(view.say("page.minimum", {{"items", some_of(view, minimum, kept), false, true}}) + ".");
  }
  if (const std::vector<std::string> open = open_signs(view); !open.empty()) {
    section.bullet(view.say("letter.signs_not_asked", {{"flags", some_of(view, open, shortened < 4 ? all : (shortened < 5 ? 6 : (shortened < 6 ? 4 : (shortened < 7 ? 2 : 1)))), false, true}}));
  }
  if (section.lines.empty()) {
    section.plain(view.say("letter.all_examined"));
  }
  return section;
}

}  // namespace limbledger::report
