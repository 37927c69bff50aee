// How soon, because of which finding; and what was not examined.
#include "core/report/brief/brief.hpp"
#include "core/report/letter/letter_parts.hpp"
#include "core/report/ordinary.hpp"
#include "core/report/page_judged.hpp"

#include <algorithm>
#include <utility>

namespace limbledger::report {

namespace {

using model::Side;

// By which means a thing was not done says nothing where its own words are the reason.
[[nodiscard]] std::string undone_in_a_word(const PageView& view, const model::Finding& finding) {
  const bool in_own_words = !std::holds_alternative<model::NotDone>(finding.value) && !finding.remark;
  return in_own_words ? value_in_a_word(view, finding) : value_or_undone(view, finding);
}

// Where only some are kept, the sign that the danger is named for stands first, then what is out of the ordinary on its own side: a
// pulse of the other leg alone would say the wrong thing.
void add_grounds(const PageView& view, std::string_view danger, const std::vector<model::FindingId>& findings, const std::optional<Side>& side, std::size_t kept,
                 SheetSection& section) {
  std::vector<model::FindingId> ids = findings;
  if (ids.size() > kept) {
    const reference::AlertRow* row = view.edition.alert({"alert." + std::string(after_dot(danger))});
    // Then by their place in the catalogue: ids are drawn, and say nothing.
    const auto weight = [&](const model::FindingId& id) {
      for (std::size_t i = 0; i < view.findings.size(); ++i) {
        const model::Finding& one = *view.findings[i];
        if (one.finding != id) {
          continue;
        }
        const bool sign = row != nullptr && row->sign && std::find(row->sign->begin(), row->sign->end(), one.item) != row->sign->end();
        const bool here = one.side == side;
        const bool unusual = here && ordinary(view.edition, one) == Ordinary::unusual;
        const int first = sign && here ? 0 : (unusual && !blood_feeling_or_movement(one) ? 1 : (unusual ? 2 : (here ? 3 : 4)));
        return std::pair(first, i);
      }
      return std::pair(5, view.findings.size());
    };
    std::stable_sort(ids.begin(), ids.end(), [&](const model::FindingId& a, const model::FindingId& b) { return weight(a) < weight(b); });
  }
  std::vector<std::string> why;
  std::vector<SaidAlike> in_a_word;
  if (ids.size() <= kept) {
    why = findings_named(view, ids);
  } else {
    for (const model::FindingId& id : ids) {
      const std::vector<std::string> one = findings_named(view, {id});
      if (why.size() < kept) {
        why.insert(why.end(), one.begin(), one.end());
        continue;
      }
      for (const model::Finding* finding : one.empty() ? std::vector<const model::Finding*>{} : view.findings) {
        if (finding->finding == id) {
          const std::string value = left_undone(*finding) ? undone_in_a_word(view, *finding) : value_in_a_word(view, *finding);
          add_alike(in_a_word, view.label(finding->item) + (finding->side == side ? std::string() : view.side_after(finding->side)), value);
        }
      }
    }
  }
  // Each with its value in a word: not all of it is told again below.
  if (!in_a_word.empty() && kept < 2) {
    why.push_back(view.say("letter.because_others"));
  } else if (!in_a_word.empty()) {
    why.push_back(alike_text(in_a_word));
  }
  if (!why.empty()) {
    section.under(view.say("page.alert_because", {{"findings", joined(why, "; "), false, true}}) + ".");
  }
}

// Two at most in a word each, what was found before a no.
[[nodiscard]] std::string left_open_by(const PageView& view, const interpret::Flag& flag) {
  std::vector<SaidAlike> alike;
  std::size_t named = 0;
  for (const bool noes : {false, true}) {
    for (const model::Finding* finding : view.findings) {
      const auto* answer = std::get_if<model::Answer>(&finding->value);
      const bool is_no = answer != nullptr && answer->answer == model::AnswerWord::no;
      const bool of_flag = finding->finding && std::find(flag.findings.begin(), flag.findings.end(), *finding->finding) != flag.findings.end();
      if (of_flag && is_no == noes && named < 2) {
        add_alike(alike, view.label(finding->item) + (finding->side == flag.side ? std::string() : view.side_after(finding->side)),
                  left_undone(*finding) ? undone_in_a_word(view, *finding) : value_in_a_word(view, *finding));
        ++named;
      }
    }
  }
  return alike_text(alike, false);
}

// Asked after and not settled by the answer, or not asked after; a danger that is both on two sides was asked after.
[[nodiscard]] std::vector<std::string> open_signs(const PageView& view, const std::vector<std::string>& left, bool asked, bool by_name_alone) {
  std::vector<std::string> labels;
  std::vector<std::string> asked_labels;
  for (std::size_t i = 0; i < left.size(); ++i) {
    const interpret::Flag& flag = view.assessment.flags[i];
    if (!is_open_flag(view, flag) || is_hidden_flag(view, flag)) {
      continue;
    }
    // A no to one part of it stands above: what of it is open is said beside.
    std::string label = danger_named(view, flag);
    const bool cannot = printed_answer(view, flag) == interpret::FlagAnswer::cannot_answer;
    if (!left[i].empty() && !(cannot && by_name_alone)) {
      label = view.say("page.flag_rests", {{"flag", label, false, true}, {"findings", left[i], false, true}});
    }
    // Nothing is missing that would settle it: what leaves it open is named, with its answer; without one a no reads as a yes.
    if (cannot && (by_name_alone || left[i].empty())) {
      const std::string looks = left_open_by(view, flag);
      label = looks.empty() ? label : view.say("letter.open_after", {{"flag", label, false, true}, {"looks", looks, false, true}});
    }
    std::vector<std::string>& of = cannot ? asked_labels : labels;
    if (std::find(of.begin(), of.end(), label) == of.end()) {
      of.push_back(label);
    }
  }
  if (asked) {
    return asked_labels;
  }
  labels.erase(std::remove_if(labels.begin(), labels.end(), [&](const std::string& one) { return std::find(asked_labels.begin(), asked_labels.end(), one) != asked_labels.end(); }), labels.end());
  return labels;
}

// What was meant to be examined and was not, with the reason: the question may hang on it. One reason is said once, with all that it
// stands for; what shows blood, feeling and movement of the side complained of stands first.
void add_undone(const PageView& view, SheetSection& section) {
  std::vector<SaidAlike> alike;
  for (const bool complained_of : {true, false}) {
    for (const bool of_foot : {true, false}) {
      for (const model::Finding* finding : view.findings) {
        const bool whole = complained_of && blood_feeling_or_movement(*finding);
        if (!left_undone(*finding) || is_complained_of(view, finding->side) != complained_of || whole != of_foot || speaks_of_function(*finding)) {
          continue;  // what the person can do stands by itself
        }
        add_alike(alike, view.label(finding->item) + view.side_after(finding->side), undone_in_a_word(view, *finding));
      }
    }
  }
  if (!alike.empty()) {
    section.bullet(view.say("letter.undone", {{"what", alike_text(alike), false, true}}));
  }
}

// Of the minimum set, by side; the side complained of first, and what is open on both sides once. A joint that nobody looked at on a side
// is named above with all that belongs to it.
void add_minimum(const PageView& view, int shortened, SheetSection& section) {
  const AdvisedAgainst against(view);
  struct OfSides {
    std::string sides;
    std::vector<std::string> labels;
  };
  std::vector<OfSides> all;
  const std::string both_sides = side_of(view.words, Side::right) + view.say("page.and") + side_of(view.words, Side::left);
  const auto said_above = [&](const interpret::MissingItem& missing) {
    const model::Item* item = view.edition.item(missing.item);
    return item != nullptr && is_not_examined(view, item->region.text, missing.side);
  };
  for (const bool complained_of : {true, false}) {
    for (const interpret::MissingItem& missing : view.assessment.missing) {
      const auto on = [&](Side side) {
        return std::any_of(view.assessment.missing.begin(), view.assessment.missing.end(),
                           [&](const interpret::MissingItem& one) { return one.item == missing.item && one.side == side && !said_above(one) && !against.holds(one.item, one.side); });
      };
      if (against.holds(missing.item, missing.side)) {
        continue;
      }
      if (said_above(missing) || (is_complained_of(view, missing.side) || missing.side == Side::midline) != complained_of) {
        continue;
      }
      const bool both = on(Side::right) && on(Side::left);
      const std::string sides = both ? both_sides : (missing.side == Side::midline ? std::string() : side_of(view.words, missing.side));
      auto at = std::find_if(all.begin(), all.end(), [&](const OfSides& one) { return one.sides == sides; });
      if (at == all.end()) {
        at = all.insert(all.end(), OfSides{sides, {}});
      }
      std::vector<std::string> since;  // an addendum may hold what the signature left open
      for (const Side side : both ? std::vector<Side>{Side::right, Side::left} : std::vector<Side>{missing.side}) {
        if (const std::string one = view.added_for(missing.item, side); !one.empty()) {
          since.push_back(both ? view.side_before(side) + one : one);
        }
      }
      const std::string label = view.label(missing.item) + (since.empty() ? std::string() : " (" + joined(since, "; ") + ")");
      if (std::find(at->labels.begin(), at->labels.end(), label) == at->labels.end()) {
        at->labels.push_back(label);
      }
    }
  }
  // The reason that is known stands instead of one that is lacking.
  std::vector<std::string> held;
  for (const interpret::MissingItem& missing : view.assessment.missing) {
    const std::string label = view.label(missing.item) + view.side_after(missing.side);
    const bool said = shortened == letter_shortest && said_above(missing);
    if (!said && against.holds(missing.item, missing.side) && std::find(held.begin(), held.end(), label) == held.end()) {
      held.push_back(label);
    }
  }
  std::vector<std::string> parts;
  for (const OfSides& one : all) {
    const std::string what = joined(one.labels, " / ");
    if (one.sides.empty()) {
      parts.push_back(what);
    } else {
      parts.push_back(view.say("letter.minimum_of", {{"sides", one.sides, false, true}, {"what", what, false, true}}));
    }
  }
  if (!parts.empty()) {
    section.bullet(reason_lacking(view, view.say("page.minimum", {{"items", joined(parts, "; "), false, true}})) + ".");
  }
  if (!held.empty()) {
    section.bullet(view.say("page.minimum_held", {{"items", joined(held, " / "), false, true}}) + ".");
  }
}

// No word of urgency is no silence where the plan names a day. A sealed letter tells nothing of the plan.
[[nodiscard]] std::string by_plan(const PageView& view, bool private_letter) {
  const FirstDue first = private_letter ? FirstDue{} : first_due(view);
  if (first.day.empty()) {
    return view.say("letter.urgency_not_said");
  }
  const std::string planned =
      joined({view.say("letter.urgency_planned", {{"day", first.day, false, true}, {"what", joined(first.what, "; "), false, true}}), planned_day_passed(view, first)}, " ");
  // Of what was raised or not nothing is said here: a letter beside a protected note reads as one without.
  return urgency_found(view, false) != model::LetterUrgency::routine ? planned : joined({planned, beside_open_signs(view)}, " ");
}

}  // namespace

bool may_be_sent(const PageView& view) {
  const auto& consent = view.exam.consent;
  return consent && consent->send && *consent->send == model::ConsentWord::yes;
}

bool record_stays(const PageView& view) {
  const auto& consent = view.exam.consent;
  return consent && consent->send && *consent->send != model::ConsentWord::yes;
}

std::string some_of(const PageView& view, const std::vector<std::string>& parts, std::size_t kept, const std::string& others, std::string_view where) {
  if (parts.size() <= kept) {
    return joined(parts, "; ");
  }
  std::vector<std::string> shown(parts.begin(), parts.begin() + static_cast<std::ptrdiff_t>(kept));
  shown.push_back(view.say("letter.and_others", {{"others", others, false, true}, {"where", kept_where(view, where), false, true}}));
  return joined(shown, "; ");
}

SheetSection letter_urgency(const PageView& view, const LetterAsk& ask, int shortened) {
  constexpr std::size_t all_grounds = 1000;
  const std::size_t grounds = shortened < 4 ? all_grounds : (shortened < 6 ? 3 : (shortened < letter_shortest ? 2 : 1));
  SheetSection section = view.section("letter.urgency");
  // One word leads, the most urgent; the examiner's stands with the question that it was written for.
  const model::LetterUrgency found = urgency_found(view, ask.protected_);
  const bool found_leads = found != model::LetterUrgency::routine && (!ask.urgency || static_cast<int>(found) < static_cast<int>(*ask.urgency));
  if (found_leads) {
    section.plain(view.say("letter.urgency_found", {{"urgency", urgency_with_day(view, found), false, true}}));
  } else if (ask.urgency && found == *ask.urgency && found != model::LetterUrgency::routine) {
    section.plain(view.say("letter.urgency_both", {{"urgency", urgency_with_day(view, found), false, true}}));
  } else if (ask.urgency) {
    section.plain(view.say("letter.urgency_said", {{"urgency", urgency_with_day(view, *ask.urgency), false, true}}));
    if (*ask.urgency == model::LetterUrgency::routine && !ask.protected_ && !first_due(view).day.empty()) {
      section.plain(by_plan(view, false));
    }
  } else {
    section.plain(by_plan(view, ask.protected_));
  }
  for (const interpret::Alert& alert : view.assessment.alerts) {
    if (!alert_in_letter(view, alert, ask.protected_)) {
      continue;
    }
    section.bullet(view.say("letter.alert", {{"alert", alert_text(alert, view.words), false, true}}) + ".");
    if (!ask.protected_) {
      add_grounds(view, alert.alert.text, alert.because, alert.side, grounds, section);
    }
    if (const std::string done = alert.handled ? handled_words(view, *alert.handled) : std::string(); !done.empty()) {
      section.under(done);
    }
    add_handled_also(view, alert, section);
  }
  for (const interpret::Statement& statement : view.assessment.statements) {
    if (!ask.protected_ && referral_prompt(statement.statement.text)) {
      section.bullet(view.say("letter.alert", {{"alert", prompt_text(statement, view.words), false, true}}) + ".");
      add_grounds(view, statement.statement.text.substr(0, statement.statement.text.find(':')), statement.findings, statement.side, grounds, section);
    }
  }
  std::vector<std::string> last;
  const bool unanswered = std::any_of(view.assessment.alerts.begin(), view.assessment.alerts.end(), [&](const interpret::Alert& alert) {
    return alert_in_letter(view, alert, ask.protected_) && alert.state == interpret::AlertState::raised && !(alert.handled && (alert.handled->action || alert.handled->reason));
  });
  if (unanswered && !ask.protected_) {
    last.push_back(view.say(shortened < letter_shortest ? "letter.call_not_recorded" : "letter.call_not_recorded_short"));
  }
  if (found_leads || ask.urgency) {
    last.push_back(passed_text(view, found_leads ? found : *ask.urgency));
  }
  if (found_leads && ask.urgency) {
    last.push_back(view.say("letter.urgency_differs", {{"urgency", enum_word(view.words, "letter_urgency", *ask.urgency), false, true}}));
  }
  const std::string later = ask.protected_ ? std::string() : planned_later(view, ask.urgency);
  if (found_leads && !ask.urgency) {
    // The plan's day, where it is that of what was found, says nothing more.
    const FirstDue first = ask.protected_ ? FirstDue{} : first_due(view);
    const bool same_day = !first.day.empty() && first.day == due_day(view, found);
    last.push_back(!later.empty() ? view.say("letter.urgency_not_said") : (same_day ? std::string() : by_plan(view, ask.protected_)));
  }
  if (!later.empty()) {
    last.push_back(later);
  }
  if (const std::string said = joined(last, " "); !said.empty()) {
    section.plain(said);
  }
  return section;
}

// The other side, the joints above and below, the minimum set and the danger signs, each by name at every length, with the reason.
SheetSection letter_not_examined(const PageView& view, int shortened) {
  SheetSection section = view.section("page.not_examined");
  add_transfer_line(view, section);  // else a set that was cut short would read as one that is whole
  if (const std::vector<std::string> places = places_not_examined(view); !places.empty()) {
    section.bullet(joined(places, "; ") + ".");
  }
  if (const std::vector<std::string> barely = places_barely_examined(view); !barely.empty()) {
    section.bullet(joined(barely, " / ") + ".");
  }
  add_undone(view, section);
  add_minimum(view, shortened, section);
  const std::vector<std::string> left = left_of_asked(view, shortened < 1);
  if (const std::vector<std::string> asked = open_signs(view, left, true, shortened == letter_shortest); !asked.empty()) {
    section.bullet(view.say("letter.signs_cannot", {{"flags", joined(asked, "; "), false, true}}));
  }
  if (const std::vector<std::string> open = open_signs(view, left, false, shortened == letter_shortest); !open.empty()) {
    section.bullet(view.say("letter.signs_not_asked", {{"flags", joined(open, "; "), false, true}}) + danger_sides(view));
  }
  if (const std::string untold = untold_pain(view); !untold.empty()) {
    section.bullet(untold);
  }
  if (section.lines.empty()) {
    section.plain(view.say("letter.all_examined"));
  }
  return section;
}

}  // namespace limbledger::report
