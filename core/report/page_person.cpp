// Who was examined, by whom and with whose consent; the examiner's impression and plan; the signature; what the page is.
#include "core/report/brief/added.hpp"
#include "core/report/brief/brief.hpp"
#include "core/report/brief/settled.hpp"
#include "core/report/page_parts.hpp"

#include <algorithm>

namespace limbledger::report {

namespace {

using model::Side;

// What was allowed, by whom.
[[nodiscard]] std::string consent_line(const PageView& view) {
  const model::Consent none;
  const model::Consent& consent = view.exam.consent ? *view.exam.consent : none;
  const auto answer = [&](const std::optional<model::ConsentWord>& word) {
    return word ? enum_word(view.words, "value", *word) : view.say("consent.not_asked");
  };
  std::vector<std::string> parts{view.say("consent.line", {{"examine", answer(consent.examine), false, true},
                                                           {"record", answer(consent.record), false, true},
                                                           {"send", answer(consent.send), false, true}})};
  if (consent.by) {
    parts.push_back(view.say("consent.by", {{"by", consent.by->text}}));
  }
  if (consent.capacity) {
    parts.push_back(view.say("consent.capacity", {{"capacity", enum_word(view.words, "capacity", *consent.capacity), false, true}}));
  }
  // Nothing can be consented to anew under a signature; who takes it back is in an addendum.
  if (view.exam.addenda && !view.exam.addenda->empty()) {
    parts.push_back(view.say("consent.as_signed"));
  }
  return joined(parts, " ");
}

[[nodiscard]] std::string interpreter_words(const PageView& view, const model::Interpreter& interpreter) {
  std::string kind = enum_word(view.words, "interpreter", interpreter.kind);
  if (interpreter.name) {
    kind += " (" + as_written(interpreter.name->text) + ")";
  }
  return view.say("consent.interpreter", {{"interpreter", kind, false, true}});
}

[[nodiscard]] bool not_to_be_sent(const model::Exam& exam) {
  return exam.consent && exam.consent->send && *exam.consent->send != model::ConsentWord::yes;
}

[[nodiscard]] bool asked_to_send(const model::Exam& exam) { return exam.consent && exam.consent->send; }

// What is told to the person, not handed over.
[[nodiscard]] bool is_told(const model::PlanItem& item) {
  return item.became == model::Became::given &&
         (item.kind == model::PlanKind::limit || item.kind == model::PlanKind::advice || item.kind == model::PlanKind::safety_net);
}

[[nodiscard]] bool is_words_for_the_person(const model::PlanItem& item) {
  return item.kind == model::PlanKind::advice || item.kind == model::PlanKind::safety_net;
}

// That an alert stands which is not told here; a viewer is not told that either.
[[nodiscard]] std::string see_note(const PageView& view) {
  const bool told_of = hides_an_alert(view) && view.names.protected_note != ProtectedNote::absent;
  return told_of ? view.say("page.how_soon_see_note") : std::string();
}

// Raised once, and withdrawn by a correction: "nothing was raised" would be untrue.
[[nodiscard]] bool one_went(const PageView& view) {
  return std::any_of(view.assessment.alerts.begin(), view.assessment.alerts.end(), [&](const interpret::Alert& alert) {
    return alert.state == interpret::AlertState::withdrawn_by_correction && !is_hidden(view, alert);
  });
}

// The same as on the letter and on the sheet for the person.
[[nodiscard]] std::string how_soon_line(const PageView& view) {
  const HowSoon soon = how_soon(view);
  const FirstDue first = first_due(view);
  // That it can wait its turn takes no day of the plan back.
  const bool can_wait = soon.urgency == model::LetterUrgency::routine && !first.day.empty();
  if (!soon.urgency || can_wait) {
    const std::string said = view.say(first.day.empty() ? "page.how_soon_not_recorded" : "page.how_soon_planned",
                                      {{"day", first.day, false, true}, {"what", joined(first.what, "; "), false, true}});
    const std::string none = hides_an_alert(view) ? see_note(view) : view.say(one_went(view) ? "page.how_soon_none_stands" : (first.day.empty() ? "page.how_soon_none_raised" : "page.how_soon_none_sooner"));
    return joined({said, planned_day_passed(view, first), can_wait ? view.say("page.how_soon_can_wait") : std::string(), none, first.day.empty() ? std::string() : beside_open_signs(view), illness_open(view)}, " ");
  }
  // Two weeks are asked for by a prompt to refer, which is no alert.
  const bool by_prompt = *soon.urgency == model::LetterUrgency::two_weeks;
  const std::string_view by_alert = soon.written ? "page.how_soon_both" : "page.how_soon_found";
  std::string line = view.say(soon.found ? (by_prompt ? "page.how_soon_prompt" : by_alert) : "page.how_soon_said",
                              {{"urgency", urgency_with_day(view, *soon.urgency), false, true}, {"due", passed_text(view, *soon.urgency), false, true}});
  line.erase(line.find_last_not_of(' ') + 1);
  return joined({line, see_note(view), planned_later(view)}, " ");
}

// Made is not sent: what became of a letter is known by the referral it was written for, and else is not recorded.
[[nodiscard]] std::string letter_fate(const PageView& view, const model::Letter& letter) {
  for (const model::PlanItem& item : view.exam.plan.value_or(std::vector<model::PlanItem>{})) {
    const auto& became = item.became;
    const bool of_letter = became == model::Became::sent || became == model::Became::received || became == model::Became::seen ||
                           became == model::Became::answered || became == model::Became::lost;
    if (of_letter && letter.plan_item && item.plan_item == letter.plan_item) {
      return view.say("page.letter_became", {{"became", enum_word(view.words, "became", *became), false, true}});
    }
  }
  if (not_to_be_sent(view.exam)) {
    return view.say("page.letter_own_hand");
  }
  return view.say(asked_to_send(view.exam) ? "page.letter_not_sent" : "page.letter_not_asked");
}

[[nodiscard]] std::string sentence(std::string text) {
  // A sentence a person ended keeps its own end.
  return text.empty() || text.ends_with(".") || text.ends_with(".\u2069") ? text : text + ".";
}

}  // namespace

std::string person_line(const PageView& view) {
  std::vector<std::string> names;
  if (view.person && view.person->names) {
    for (const model::PersonName& name : *view.person->names) {
      names.push_back(as_written(name.text.text));
    }
  }
  const auto& open = view.exam.conflicts;
  const bool of_two = open && std::any_of(open->begin(), open->end(), [](const model::Conflict& one) { return one.about.text == "person"; });
  std::vector<std::string> who{names.empty() ? view.say(of_two ? "page.whose_undecided" : "page.no_name") : joined(names, " / ")};
  if (const interpret::Ages ages = interpret::ages_at(view.exam, view.person, view.assessment.as_of); ages.years) {
    constexpr std::int64_t said_in_months_under = 2;  // years; of an infant they tell nothing
    const bool in_months = ages.years->high < said_in_months_under && ages.months;
    const model::AgeInterval& said = in_months ? *ages.months : *ages.years;
    // Of a day that nobody can say the birth tells how old at most.
    const bool at_most = !view.day() && said.low != said.high;
    const std::string high = wire::write_number(said.high, 1);
    const std::string span = said.low == said.high || at_most ? high : wire::write_number(said.low, 1) + "-" + high;
    const std::string unit = in_months ? "months" : "years";
    std::string told = view.say("page." + unit, {{unit, span, true}});
    if (at_most) {
      told = view.say("page.age_at_most", {{"age", told, true}});
    }
    who.push_back(std::move(told));
  } else {
    who.push_back(view.say(view.person && view.person->birth && !view.day() ? "page.age_of_no_day" : "page.age_unknown"));
  }
  if (view.person) {
    who.push_back(enum_word(view.words, "sex", view.person->sex));
  }
  return joined(who);
}

std::string who_answers(const PageView& view) {
  std::vector<std::string> parts;
  if (view.exam.interpreter && view.exam.interpreter->kind != model::InterpreterKind::none) {
    parts.push_back(interpreter_words(view, *view.exam.interpreter));
  }
  const auto& consent = view.exam.consent;
  if (consent && consent->capacity && *consent->capacity != model::Capacity::yes) {
    parts.push_back(view.say("consent.capacity", {{"capacity", enum_word(view.words, "capacity", *consent->capacity), false, true}}));
    if (consent->by) {
      parts.push_back(view.say("consent.given_by", {{"by", consent->by->text}}));
    }
  }
  return joined(parts, " ");
}

std::string identity_line(const PageView& view) {
  std::vector<std::string> known;
  std::vector<std::string> lacking;
  if (view.person && view.person->birth && view.person->birth->date) {
    known.push_back(view.say("page.born", {{"date", view.person->birth->date->to_text(), false, true}}));
  } else {
    lacking.push_back(view.say("page.not_known_birth"));
  }
  if (view.person && view.person->identifiers && !view.person->identifiers->empty()) {
    for (const model::Identifier& one : *view.person->identifiers) {
      known.push_back(as_written(one.issuer.text) + ": " + as_written(one.text.text));
    }
  } else {
    lacking.push_back(view.say("page.not_known_number"));
  }
  if (view.person && view.person->home) {
    known.push_back(view.say("page.home", {{"home", view.person->home->text}}));
  } else {
    lacking.push_back(view.say("page.not_known_home"));
  }
  // Two people of one name are told apart by these: what is not there is said.
  if (!lacking.empty()) {
    known.push_back(view.say("page.not_known", {{"what", joined(lacking), false, true}}));
  }
  return joined(known, ". ");
}

std::vector<std::string> head_lines(const PageView& view) {
  const model::Exam& exam = view.exam;
  std::vector<std::string> lines;
  // Whoever is about to hand the page on reads this first.
  if (not_to_be_sent(exam)) {
    lines.push_back(view.say("consent.not_to_send", {{"send", enum_word(view.words, "value", *exam.consent->send), false, true}, {"care", care_goes_on(view), false, true}}));
  } else if (!asked_to_send(exam)) {
    lines.push_back(view.say("consent.send_not_asked", {{"care", care_goes_on(view), false, true}}));
  }
  lines.push_back(identity_line(view));
  std::vector<std::string> when{view.say("page.examined", {{"when", view.when_text(), false, true}})};
  if (exam.place) {
    const auto at = view.names.places.find(*exam.place);
    when.push_back(view.say("page.place", {{"place", at == view.names.places.end() ? exam.place->to_text() : at->second}}));
  }
  if (exam.examiner) {
    when.push_back(view.say("page.examiner", {{"examiner", view.examiner(*exam.examiner)}}));
  }
  if (exam.signed_) {
    when.push_back(signed_words(view));
  } else {
    when.push_back(view.say("page.not_signed"));
  }
  lines.push_back(joined(when, ". "));
  if (const std::string since = settled_since_signed(view); !since.empty()) {
    lines.push_back(since);
  }
  if (const std::string exchanged = exchanged_head(view); !exchanged.empty()) {
    lines.push_back(exchanged);
  }
  if (const std::string added = added_head(view); !added.empty()) {
    lines.push_back(added);
  }
  std::vector<std::string> why{view.say(
      "page.complaint", {{"complaint", word_of(view.words, "complaint", exam.complaint.text) + view.side_after(exam.side), false, true}})};
  why.push_back(view.say("page.setting", {{"setting", enum_word(view.words, "setting", exam.setting), false, true}}));
  if (exam.injured_on) {
    why.push_back(view.say("page.injured", {{"date", exam.injured_on->to_text(), false, true}}));
  }
  lines.push_back(joined(why, ". "));
  std::vector<std::string> told;
  if (const std::vector<std::string> facts = weighty_facts(view); !facts.empty()) {
    told.push_back(view.say("page.facts_of_person", {{"facts", joined(facts, "; "), false, true}}));
  }
  told.push_back(allergies_told(view));
  if (!medicines_asked(view)) {
    told.push_back(view.say("page.medicines_not_asked"));
  }
  lines.push_back(joined(told, ". ") + ".");
  lines.push_back(consent_line(view));
  if (exam.exam) {
    lines.push_back(view.say("page.exam_id", {{"exam", exam.exam->to_text(), false, true}}));
  }
  if (exam.reviews) {
    lines.push_back(view.say("page.reviews", {{"exam", exam.reviews->to_text(), false, true}}));
  }
  if (exam.supervised.value_or(false)) {
    lines.push_back(view.say("page.supervised"));
  }
  if (exam.withdrawn) {
    lines.push_back(view.say("page.withdrawn", {{"reason", exam.withdrawn->reason.text}}));
  }
  lines.push_back(view.say("page.read_end"));
  return lines;
}

SheetSection impression_section(const PageView& view) {
  SheetSection section = view.section("page.impression");
  std::optional<model::ExaminerId> by = view.exam.signed_ ? std::optional(view.exam.signed_->by) : view.exam.examiner;
  if (const auto writer = impression_writer(view.exam)) {
    by = writer;
  }
  if (by) {
    section.title += " (" + as_written(view.examiner(*by)) + ")";
  }
  if (const std::vector<std::string> undecided = impressions_undecided(view); !undecided.empty()) {
    section.plain(view.say("settled.impressions_undecided", {{"impressions", joined(undecided, " / "), false, true}}));
    return section;
  }
  if (!view.exam.impression) {
    section.plain(view.say("page.none_written"));
    return section;
  }
  const model::Impression& impression = *view.exam.impression;
  section.plain(view.side_before(impression.side) + as_written(impression.text.text));
  section.plain(impression.certainty ? view.say("page.certainty", {{"certainty", impression.certainty->text}}) : view.say("page.certainty_not_said"));
  if (impression.alternatives && !impression.alternatives->empty()) {
    std::vector<std::string> alternatives;
    for (const wire::Remark& alternative : *impression.alternatives) {
      alternatives.push_back(as_written(alternative.text));
    }
    section.plain(view.say("page.alternatives", {{"alternatives", joined(alternatives, "; "), false, true}}));
  }
  if (impression.code) {
    section.plain(view.say("page.code", {{"code", impression.code->text}}));
  }
  add_exchanged_line(view, {"impression"}, section);
  return section;
}

// A calm impression is read first: what was raised beside it is named with it.
std::string raised_beside(const PageView& view) {
  std::vector<std::string> raised;
  for (const interpret::Flag& flag : view.assessment.flags) {
    if (printed_answer(view, flag) == interpret::FlagAnswer::raised && !is_hidden_flag(view, flag)) {
      const bool of_side = flag.side && *flag.side != Side::midline;
      raised.push_back(flag_label(view, flag.flag.text) + (of_side ? " " + side_of(view.words, *flag.side) : std::string()));
    }
  }
  return raised.empty() ? std::string() : view.say("page.raised_beside", {{"flags", joined(raised, "; "), false, true}});
}

SheetSection plan_section(const PageView& view) {
  SheetSection section = view.section("page.plan");
  section.plain(how_soon_line(view));
  if (how_soon(view).found && !was_handed_over(view)) {
    section.plain(joined({view.say("page.todo_below"), beside_limits(view)}, " "));
  }
  if (!view.exam.plan || view.exam.plan->empty()) {
    section.plain(view.say("page.none_written"));
    return section;
  }
  const std::size_t heads = section.lines.size();
  std::vector<std::string> named;
  for (const model::PlanItem& item : *view.exam.plan) {
    if (is_words_for_the_person(item)) {
      continue;
    }
    named.push_back(item.plan_item ? item.plan_item->to_text() : std::string());
    std::string kind = enum_word(view.words, "plan", item.kind) + view.side_after(item.side);
    if (is_told(item)) {
      kind = view.say("plan.told", {{"plan", kind, false, true}});
    }
    std::vector<std::string> parts{kind + ": " + plan_words(view, item)};
    for (std::string& one : whom_and_when(view, item)) {
      parts.push_back(std::move(one));
    }
    parts.push_back(later_than(view, item));
    if (item.kind == model::PlanKind::limit && !item.became) {
      parts.push_back(view.say("plan.not_told_yet"));
    } else if (!is_told(item)) {
      parts.push_back(item.became ? enum_word(view.words, "became", *item.became) : view.say("plan.open"));
    }
    parts.push_back(decided_after_signature(view, item));
    std::erase(parts, std::string());
    section.bullet(joined(parts, "; "));
  }
  add_exchanged_line(view, named, section);
  if (section.lines.size() == heads) {
    section.plain(view.say("plan.only_told"));
  }
  if (const std::string lacking = not_planned(view); !lacking.empty()) {
    section.plain(lacking);
  }
  return section;
}

// Advice and safety net, by what the plan holds; a line to write on where it holds none.
SheetSection told_section(const PageView& view) {
  SheetSection section = view.section("page.told");
  std::vector<std::string> named;
  std::size_t untold = 0;
  for (const model::PlanItem& item : view.exam.plan.value_or(std::vector<model::PlanItem>{})) {
    if (!is_words_for_the_person(item)) {
      continue;
    }
    untold += item.became ? 0U : 1U;
    named.push_back(item.plan_item ? item.plan_item->to_text() : std::string());
    const std::string became = item.became == model::Became::given || item.became == model::Became::done
                                   ? view.say("plan.was_told")
                                   : (item.became ? enum_word(view.words, "became", *item.became) : view.say("plan.not_told_yet"));
    std::vector<std::string> parts{item.kind == model::PlanKind::safety_net
                                       ? come_back_words(view, item)
                                       : enum_word(view.words, "plan", item.kind) + view.side_after(item.side) + ": " + as_written(item.text.text)};
    if (item.who) {
      parts.push_back(as_written(item.who->text));
    }
    parts.push_back(became);
    if (item.said_back) {
      parts.push_back(view.say("plan.said_back", {{"said", enum_word(view.words, "said_back", *item.said_back), false, true}}));
    }
    section.bullet(joined(parts, "; "));
  }
  add_exchanged_line(view, named, section);
  const bool nothing = section.lines.empty();
  if (nothing) {
    section.plain(view.say("page.told_nothing"));
  }
  if (!names_come_back(view)) {
    section.plain(come_back_none(view));
  }
  if (nothing) {
    return section;
  }
  // Of a child it is the others who have to know.
  std::vector<std::string> others;
  for (const wire::Name& other : view.exam.company && view.exam.company->others ? *view.exam.company->others : std::vector<wire::Name>{}) {
    others.push_back(as_written(other.text));
  }
  if (!others.empty()) {
    // Whoever was in the room is not told by having been there.
    const std::string_view there = untold == 0 ? "page.told_there" : (untold == named.size() ? "page.told_there_not" : "page.told_there_in_part");
    section.plain(view.say(there, {{"others", joined(others), false, true}}));
  }
  return section;
}

// What left the clinic, and whether it still says what the record says. Of a sealed letter a page tells nothing by default.
SheetSection letters_section(const PageView& view) {
  SheetSection section = view.section("page.letters");
  for (const model::Letter& letter : view.exam.letters.value_or(std::vector<model::Letter>{})) {
    std::vector<std::string> parts;
    if (letter.protected_.value_or(false)) {
      if (view.names.protected_note != ProtectedNote::shown) {
        continue;
      }
      parts.push_back(view.say("page.letter_sealed", {{"at", view.local(letter.at), false, true}}));
    } else {
      Args args{{"at", view.local(letter.at), false, true}, {"to", view.say("page.letter_nobody"), false, true}, {"question", {}}};
      if (letter.to) {
        args[1] = {"to", letter.to->text};
      }
      if (letter.question) {
        args[2].text = letter.question->text;
      }
      parts.push_back(view.say("page.letter", args));
      parts.push_back(letter_fate(view, letter));
    }
    if (letter.stale) {
      std::vector<std::string> because;
      for (const model::Word& one : letter.stale_because.value_or(std::vector<model::Word>{})) {
        because.push_back(word_of(view.words, "letter_changed", one.text));
      }
      parts.push_back(view.say("page.letter_stale", {{"because", joined(because), false, true}}));
      parts.push_back(view.say(letter.corrected_by ? "page.letter_corrected" : "page.letter_not_corrected"));
    }
    section.bullet(joined(parts, "; "));
  }
  return section;
}

SheetSection consent_section(const PageView& view) {
  SheetSection section = view.section("page.consent");
  const model::Exam& exam = view.exam;
  std::vector<std::string> parts;
  if (exam.company && exam.company->chaperone) {
    std::string chaperone = enum_word(view.words, "chaperone", *exam.company->chaperone);
    if (exam.company->chaperone_name) {
      chaperone += " (" + as_written(exam.company->chaperone_name->text) + ")";
    }
    parts.push_back(view.say("consent.chaperone", {{"chaperone", chaperone, false, true}}));
  } else {
    parts.push_back(view.say("consent.chaperone", {{"chaperone", view.say("consent.not_asked"), false, true}}));
  }
  if (exam.company && exam.company->others) {
    std::vector<std::string> others;
    for (const wire::Name& other : *exam.company->others) {
      others.push_back(as_written(other.text));
    }
    parts.push_back(view.say("consent.others", {{"others", joined(others), false, true}}));
  }
  if (exam.who_spoke) {
    const auto& reliable = exam.who_spoke->reliable;
    parts.push_back(view.say("consent.spoke", {{"who", exam.who_spoke->who.text},
                                               {"reliable", reliable ? enum_word(view.words, "value", *reliable) : view.say("consent.not_asked"), false, true}}));
  }
  if (exam.interpreter) {
    parts.push_back(interpreter_words(view, *exam.interpreter));
  }
  section.plain(joined(parts, " "));
  return section;
}

SheetSection signature_section(const PageView& view) {
  SheetSection section = view.section("page.signature");
  const model::Exam& exam = view.exam;
  if (exam.signed_) {
    section.plain(signed_words(view));
  } else {
    section.plain(view.say("page.not_signed"));
  }
  if (const std::string since = settled_since_signed(view); !since.empty()) {
    section.plain(since);
  }
  if (const std::string what = left_incomplete(view); !what.empty()) {
    section.plain(view.say("page.incomplete", {{"what", what, false, true}}));
  }
  add_countersigned(view, section);
  return section;
}

SheetSection about_section(const PageView& view) {
  SheetSection section = view.section("page.about");
  section.plain(sentence(view.say("page.decision_support")));
  section.plain(sentence(view.say("page.intended_use")));
  section.plain(view.say("page.facts", {{"edition", view.assessment.edition.text, false, true}, {"as_of", view.assessment.as_of.to_text(), false, true}}));
  // A later edition may judge otherwise than the one the examiner saw.
  if (view.exam.edition && !(*view.exam.edition == view.assessment.edition)) {
    section.plain(view.say("page.other_edition", {{"edition", view.exam.edition->text, false, true}}));
  }
  return section;
}

}  // namespace limbledger::report
